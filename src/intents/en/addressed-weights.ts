/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-26 =emergency:S0
-22 =courtesy:S0 =emergency:guess ~any_O ~get_down ~n_all
-21 ?talk6 dishwasher draw hair restaurant serious ~you_n
-20 ?talk7 chips level loo ~!_did ~,_who ~what_they
-19 #words0 =affirm:S2 group judges jumper mine poor yours ~,_a ~,_off ~,_put ~K_say ~V_y ~^_$
~^_her ~and_that ~is_for ~that_U ~that_will ~then_the ~they_had ~was_d
-18 #heard3 <y> =add-hands:S3 =courtesy =courtesy:phrase =set-serving-time:S2 coffee counted
day dum large lows number petrol question touch ~,_here ~,_said ~K_y ~^_shall ~all_done ~here_we
~is_never ~not_that ~out_in ~shall_we ~thanks_P ~was_i ~you_to
-17 #heard0 =courtesy:some ?talk5 hello page pages park pressure tooth ~after_me ~another_one
~going_, ~like_mine ~n_from ~n_w ~no_i ~not_it ~on_U ~on_in ~out_a ~said_no ~says_here ~that_down
~this_for ~to_him ~went_to ~where_is ~with_U
-16 #O3 =correct:few =deny:some =repeat:S3 apparently colour eights jack linda loads pass ring
roll sandwiches scored sends served shuts sugars wedding ~,_there ~K_never ~O_had ~^_these
~am_done ~c_your ~for_you ~him_, ~i_$ ~n_P ~n_or ~n_second ~some_more ~to_her ~who_V ~y_and
~you_done ~you_get
-15 =acknowledge =acknowledge:phrase =emergency:all =shift-serving:S3 =start-over:S1 ?heard0
asked barbecue build caravan carvery chapter couch fair found frying goals greenhouse holidays
home pin raining service shoe work ~!_i ~,_with ~,_you ~._U ~?_it ~?_the ~K_P ~U_got ~U_till
~V_she ~^_he ~and_not ~at_K ~c_w ~do_my ~get_out ~goes_, ~got_U ~got_n ~have_another ~hers_at
~in_these ~it_a ~more_O ~n_n ~out_U ~she_took ~that_to ~took_d ~we_could ~were_at ~were_n ~you_$
~you_do ~your_K
-14 =correct:S3 =deny:S2 =note-guest:to-reading =report-trouble:guess =set-guests:S3 blight
book bus cats channel coach crewe delicious dress ella excuse feeling gingerbread hill lives
morning mortgage myself neighbour oh pudding radio remember speaking spent starter vicar waiter
week wonder years yourselves ~,_after ~,_first ~,_get ~,_out ~?_yes ~K_he ~O_till ~P_did ~U_get
~V_first ~and_still ~at_her ~could_be ~do_they ~had_in ~he_said ~in_on ~is_his ~is_you ~my_O
~my_S ~n_over ~second_on ~since_O ~take_O ~that_it ~they_let ~they_were ~those_K ~was_S ~what_an
~will_U ~you_it ~you_on ~yours_V
-13 <n:200> =acknowledge:few =emergency:few =report-not-done:S2 =report-out:guess =report-started:S3
=resume:some =set-timer:guess =undo:frame ?heard0:guess bathroom batteries belt big biscuit
biscuits blue breaking child cost crisp died gates glove goalie hand limit loud magazine march
ours paid pipes politics post rain rice scary sent shh small spain stew street tender third
~,_and ~,_have ~._your ~?_U ~?_is ~O_will ~P_K ~U_after ~U_here ~U_to ~V_was ~^_those ~^_too
~about_to ~and_let ~and_some ~are_for ~can_P ~could_have ~did_hers ~did_it ~got_there ~have_d
~is_t ~is_why ~is_yours ~my_first ~n_as ~on_P ~one_has ~or_the ~our_O ~she_V ~she_did ~that_O
~then_he ~there_yet ~there_you ~this_the ~to_a ~to_w ~who_did ~why_is ~y_U ~y_we ~you_, ~you_should
-12 =acknowledge:S0 =acknowledge:S1 =ask-status:S2 =choose:S2 =choose:most =quiet:guess =report-not-done:few
=report-out:S2 =report-oven:guess ?talk4 afraid argument arms ate bacon beat birth booked buzzer
career chefs corner damp dollar dusted ends filled film fixed fizz fourth handle heating her
hide hip hook inch kickoff legs lovely manager owe parking pool quiet rent row sheila sign
speaker starts sugar swimming talks taxi whoever ~,_says ~,_then ~,_your ~P_, ~P_for ~P_i ~P_that
~S_that ~U_S ~^_ours ~and_by ~and_go ~and_this ~are_about ~are_you ~been_c ~d_a ~do_if ~get_,
~gone_out ~have_this ~he_has ~her_K ~it_! ~it_on ~may_$ ~n_O ~n_was ~not_go ~not_you ~off_V
~off_at ~ours_at ~put_you ~says_in ~says_take ~she_said ~should_get ~so_O ~there_, ~these_K
~to_his ~to_us ~to_your ~took_us ~was_w ~will_they ~yes_i ~you_U ~you_up ~your_S ~your_go
-11 <t:200> =affirm:few =deny:frame =report-reading:S2 =set-doneness:to-reading ?heard7:guess
allergic blink boiler box card centimetres chairs chestnuts cloudy cupboard daddy dear drawer
except fancy he hi innings ladder milk office passing phoenix pub pumpkin quarter reindeer
roof soled sweetheart taking these towels traffic turn used white your yourself ~,_his ~,_let
~,_must ~,_she ~,_yours ~._you ~K_about ~K_me ~K_was ~O_O ~O_like ~O_out ~O_said ~O_them ~O_y
~P_let ~P_or ~P_this ~S_, ~U_i ~U_out ~U_over ~U_says ~U_since ~U_there ~^_our ~all_in ~and_get
~and_got ~and_in ~another_O ~at_your ~can_i ~does_hers ~down_now ~for_U ~going_$ ~going_off
~got_more ~had_K ~he_put ~her_P ~her_off ~how_did ~i_P ~i_will ~if_n ~in_may ~is_down ~is_your
~it_n ~like_$ ~me_up ~mine_i ~n_U ~n_down ~n_would ~never_got ~one_was ~other_$ ~other_V ~out_there
~over_at ~over_that ~put_that ~said_to ~than_me ~the_U ~then_you ~they_put ~they_say ~till_c
~was_like ~we_U ~went_O ~where_the ~y_$ ~you_have ~you_like ~yours_$
-10 #expecting:false:few #expecting:true:most #guess:S3 =affirm:S3 =correct:S2 =emergency =emergency:some
=report-reading:to-reading =set-guests:guess =undo:S1 ?heard1:guess ?talk8 average baby baker
beautifully bedroom beta broke chef coats court crying dublin essay every expected flight gorgeous
highs horse kick lay lemon may million moved mum never nice north nothing notice oi online
physio potato queen rough scallops science shade song spoon steak tense tenth underdone weighs
who wifi you ~,_can ~,_never ~?_and ~?_can ~?_how ~K_your ~O_! ~O_at ~O_i ~O_was ~O_would ~O_your
~P_a ~S_was ~U_would ~U_you ~V_goes ~^_and ~^_his ~ago_, ~ago_V ~am_S ~am_n ~am_the ~at_, ~at_P
~be_c ~but_she ~c_us ~d_would ~did_$ ~did_U ~does_O ~does_he ~does_your ~done_, ~done_it ~get_your
~go_and ~got_$ ~has_P ~he_was ~her_, ~his_O ~i_like ~in_U ~is_it ~it_took ~me_put ~mine_V ~mine_in
~more_, ~more_than ~no_we ~on_i ~or_not ~over_there ~put_out ~says_$ ~says_d ~so_his ~still_does
~still_in ~still_on ~tell_U ~the_one ~then_we ~there_i ~there_was ~this_U ~went_V ~were_d ~which_S
~yes_, ~yes_P ~yet_? ~you_so ~your_O ~your_P
-9 #P2 <n:999> =acknowledge:S2 =acknowledge:all =ask-options:frame =ask-status:S3 =choose:S1
=courtesy:S1 =deny:S1 =repeat:guess =set-guests:to-guests =set-serving-time:S1 added bags banana
beer bridge broken burns caller changing cheers chicken choir club clutch course crispy cutting
days dough due face find fish him homework keith lady left lift listen lounge machine marriage
meeting men moon name nav nose order paper pavlova perfect picking pie pies practice prices
recipe road ruined salmon season seville sister soda sofa spell tea teacher thousand thread
threw thumb weeks ~!_get ~!_you ~,_is ~,_ours ~,_say ~,_second ~?_that ~K_did ~O_$ ~O_are ~O_it
~S_him ~S_said ~U_n ~V_any ~V_you ~^_so ~an_O ~and_do ~and_if ~are_these ~at_U ~before_V ~by_y
~done_P ~done_and ~for_c ~gone_up ~got_O ~got_my ~have_done ~he_O ~he_is ~here_is ~hers_in
~him_n ~his_U ~i_? ~in_first ~in_since ~is_about ~is_so ~it_goes ~it_going ~it_when ~like_an
~n_c ~n_he ~n_not ~n_we ~no_they ~not_do ~of_V ~of_a ~off_you ~out_! ~over_n ~put_your ~said_d
~so_how ~still_U ~t_and ~tell_P ~thanks_$ ~that_ok ~them_for ~there_O ~they_did ~to_tell ~to_the
~we_did ~will_do ~will_put ~would_P ~yes_a ~yes_to ~your_V
-8 #U2 #guess:S2 <n:40> =ask-guests:S1 =ask-next:S1 =ask-options:S3 =ask-status:frame =ask-temperature:few
=choose:guess =quiet:frame =report-done:S2 =report-trouble:few =resume:few =set-serving-time:few
=set-serving-time:guess =set-timer:S3 =skip-step:guess =undo:few ?heard2:guess benches blow
boils both calling calls capital carol charge class cut cuts darling dollars door easter episode
even fortnight glossy grandad high hitting honestly lick line meter mooing nana next once overs
pizza play points queue reduced remove sausage secret seen seriously shakes smells sold suspect
theirs times toast try upstairs vegetarians walks weather window ~,_, ~,_that ~,_we ~,_where
~._no ~?_n ~?_no ~K_a ~K_to ~O_, ~O_got ~O_has ~O_to ~O_were ~P_c ~P_we ~P_you ~U_$ ~U_P ~U_U
~U_do ~U_now ~U_t ~U_was ~V_your ~^_the ~^_why ~^_you ~after_you ~all_i ~already_? ~and_take
~as_c ~at_my ~be_the ~be_there ~c_but ~c_the ~can_have ~d_and ~did_you ~does_a ~done_this ~done_yet
~first_V ~for_me ~from_O ~get_there ~had_V ~had_n ~has_a ~has_got ~have_to ~here_, ~here_already
~him_at ~how_do ~if_the ~in_here ~it_by ~it_take ~me_, ~me_with ~mine_$ ~n_for ~n_they ~n_to
~never_S ~of_you ~off_out ~one_with ~other_one ~out_V ~out_by ~over_here ~said_she ~she_was
~since_n ~so_. ~take_a ~take_n ~tell_them ~tell_your ~thanks_for ~the_O ~the_n ~them_about
~then_i ~then_she ~there_were ~they_O ~they_U ~up_for ~up_with ~w_? ~was_, ~was_n ~was_still
~we_had ~went_off ~what_would ~why_do ~with_O ~with_this ~yes_V ~yet_, ~you_can ~yours_is
-7 ! #guess:S1 =affirm:S1 =ask-how:some =ask-why:S1 =courtesy:few =drop-dish:some =lack:frame
=report-reading:guess =set-doneness:frame answer baked bird blackbirds bob born caught chemist
chocolate contestants cooking council craic did divorce fall fill front given hard hate hot
hotel hours january june lid lisbon look marco mother music our percent place plumber porridge
rolling seat see she shopping sirloin smoking suitcase surgeon text thanks time vet weighed
wore worth ~!_no ~,_V ~,_her ~,_no ~,_our ~K_his ~K_you ~O_does ~O_have ~P_$ ~P_and ~P_got
~P_never ~S_at ~S_there ~U_, ~U_O ~U_as ~V_does ~V_other ~V_put ~V_since ~V_who ~^_am ~^_she
~^_yes ~an_U ~and_you ~are_there ~at_V ~at_g ~before_n ~by_V ~c_this ~c_what ~did_a ~for_that
~for_y ~g_for ~get_a ~go_, ~had_my ~have_an ~her_and ~him_in ~i_do ~in_his ~in_your ~it_, ~it_?
~let_it ~like_that ~me_take ~might_do ~more_K ~must_be ~n_can ~n_then ~n_when ~not_so ~now_i
~now_on ~of_my ~of_your ~off_O ~off_is ~on_his ~one_$ ~one_, ~one_is ~our_K ~put_me ~say_when
~says_S ~second_K ~she_had ~she_still ~she_would ~so_for ~some_O ~tell_her ~them_in ~these_V
~they_K ~they_get ~till_n ~was_at ~when_$ ~why_are ~would_take ~you_must ~you_would
-6 #O1 #guess:most =acknowledge:S3 =add-dish:S3 =ask-amount:S1 =ask-next:S3 =ask-time-left:S2
=ask-why:most =correct:most =describe-roast:guess =emergency:S2 =set-doneness:S1 =undo:S2 =undo:to-step
?heard0:frame ?heard0:phrase ?heard1 amazing another army bag bath best bottles boy break breakfast
business bye careful carry cent college corkscrew cover drummers each eats folks funnier garage
gate get goal grill hall iron last laugh leaves lights liked likes lords numbers older options
orange people pipers preheated quite reads repeat rotten rupees saw shelf split spud standing
stood sun through warning why zip ~,_n ~,_t ~?_V ~?_who ~O_now ~O_say ~S_$ ~S_? ~S_down ~S_me
~S_since ~V_P ~V_S ~V_in ~^_of ~^_take ~^_w ~^_where ~a_K ~am_going ~am_never ~am_off ~and_a
~and_so ~are_all ~before_O ~but_it ~c_c ~c_that ~do_a ~do_mine ~down_? ~first_, ~go_to ~goes_off
~gone_and ~have_some ~he_does ~he_goes ~he_never ~her_V ~him_out ~his_P ~how_was ~i_could ~is_d
~is_this ~it_already ~let_me ~like_my ~me_i ~mine_was ~n_out ~never_U ~no_U ~of_c ~of_here
~of_this ~ok_K ~on_her ~over_, ~put_my ~said_V ~say_$ ~say_, ~say_K ~she_put ~so_and ~that_P
~there_$ ~till_O ~to_$ ~to_c ~too_$ ~up_if ~us_on ~w_, ~w_and ~we_, ~when_does ~when_the ~where_it
~with_him ~with_that ~would_V ~yes_! ~yours_now
-5 #words12 <t:100> =affirm:frame =ask-substitute:S2 =correct:some =help:S1 =lack:guess =report-trouble:S2
=set-doneness:S3 =set-serving-time:to-serving-time =set-timer:S2 =skip-step:S2 ?heard1:frame
?heard3:guess across again alone arrived asleep boat boiling breathing burnt cake cancel carpet
coming crowd de drinking dryer end expecting freezing fryer getting glass grab late loaf match
melt noah nursery other ovens pay peeking penalty point price priya pull remote rest rewind
roundabout rung second set shift shoulder sleep started stay story stuffed tank there top track
understand usual weekend were year yes ~!_that ~,_could ~K_she ~K_that ~O_a ~O_and ~O_down
~O_we ~S_before ~S_off ~S_to ~U_? ~U_all ~U_go ~U_off ~U_or ~U_your ~V_O ~V_before ~V_my ~V_or
~^_second ~^_they ~about_it ~after_the ~all_got ~am_still ~and_have ~as_i ~but_n ~c_as ~c_at
~c_if ~c_in ~d_! ~d_? ~d_S ~did_he ~did_n ~do_, ~do_not ~down_. ~first_and ~for_n ~got_her
~have_never ~have_you ~her_$ ~here_if ~him_off ~in_O ~in_from ~in_n ~into_a ~is_K ~is_all ~is_mine
~it_c ~it_over ~it_says ~it_with ~let_him ~me_when ~must_U ~n_S ~n_a ~n_and ~now_V ~off_a ~on_V
~out_for ~put_it ~she_c ~she_has ~still_, ~take_it ~that_a ~that_c ~the_P ~there_now ~they_have
~took_out ~up_V ~up_at ~us_c ~was_a ~we_went ~what_my ~what_you ~when_i ~why_. ~why_did ~would_do
-4 #O2 #guess:all #guess:some =add-hands:guess =ask-how:phrase =ask-time-left:S3 =cancel-timer:S2
=correct:S1 =courtesy:S2 =deny:S3 =report-not-done:phrase =report-reading:S3 =report-setup:S1
=report-setup:frame =report-started:guess ?heard2:frame ?heard6:guess awful believe bins bottle
bucks butcher call climb closed country crisps curtains da dad date doctor does done drop duck
expenses finn garden hers hold instructions join kettle kitchen lamb leeds letters lived lock
meet mummy new party programme put quid radiator raw read ref rested ribeye robot room say
says shop shot shut simple since spelling stone switch take takeaway tall they today tom too
truck tumble vents wanted was wash way whites ~!_$ ~,_ok ~,_on ~,_should ~,_to ~?_S ~?_i ~K_from
~K_t ~K_them ~O_K ~O_n ~O_on ~O_they ~P_would ~S_K ~U_his ~U_us ~U_y ~V_U ~V_another ~V_had
~V_these ~V_this ~^_d ~^_out ~^_when ~am_at ~an_K ~and_we ~any_U ~are_this ~at_you ~be_$ ~been_O
~been_in ~but_they ~c_a ~c_about ~c_is ~can_U ~can_c ~can_tell ~d_, ~did_the ~down_$ ~for_a
~from_the ~get_for ~get_it ~gone_O ~gone_in ~got_any ~had_O ~has_it ~have_had ~he_K ~he_V ~if_we
~in_d ~in_my ~in_our ~is_any ~is_done ~it_done ~it_too ~me_P ~mine_out ~my_U ~n_! ~n_been ~n_the
~never_did ~not_n ~now_? ~now_K ~off_$ ~ok_U ~on_, ~one_in ~or_n ~our_V ~out_before ~out_of
~put_$ ~said_never ~say_that ~says_a ~so_P ~t_in ~take_your ~tell_him ~than_the ~that_V ~that_at
~the_second ~then_V ~there_in ~they_took ~up_in ~up_till ~us_$ ~us_? ~us_the ~was_from ~we_V
~we_all ~what_K ~when_you ~where_are ~where_does ~who_was ~would_K ~would_have ~y_, ~yes_we
~you_take
-3 #S3 #U1 #expecting:true:few #phrase:S3 <n:12> <t:550> =ask-how:S1 =ask-status:some =choose
=choose:few =choose:some =cook-away:some =lack:S2 =report-out:S1 =report-out:most =resume:S0
=start-over:all ?heard1:phrase ?heard2 alarm and apple ask aunty bedrooms blanket boot burn
burned but carve casserole cheap check chill classic come cow cup decent deck delayed drove
ever exit finish fold foot for funny goose ham help honest husband island knee la lbw loose
many marcus married maths mike minister money needs night ninth outside password past peel
peru pick plates power previously problem reach safe said salad sam sat school screen shelves
shoes sides skip spit still stir telly temperature turkey twice unbelievable use ways welcome
whatever whenever yet ~,_U ~._it ~K_at ~K_had ~K_in ~K_still ~K_were ~O_V ~O_her ~O_him ~O_she
~S_S ~V_K ~V_done ~V_down ~V_for ~V_is ~V_up ~^_go ~^_my ~^_we ~^_who ~after_K ~all_, ~and_V
~are_my ~are_we ~at_c ~can_, ~did_they ~do_V ~do_for ~do_it ~do_n ~does_the ~done_? ~first_was
~for_your ~got_up ~has_not ~he_S ~he_U ~he_must ~her_U ~how_are ~i_might ~i_said ~i_tell ~if_S
~in_? ~in_her ~is_another ~is_was ~is_what ~it_if ~it_out ~let_her ~like_K ~like_U ~me_on ~n_,
~n_you ~not_$ ~not_for ~on_and ~on_the ~on_your ~one_more ~or_K ~or_U ~out_? ~put_some ~says_V
~second_one ~some_K ~take_V ~take_the ~tell_the ~that_? ~that_for ~that_one ~that_your ~the_other
~them_$ ~then_it ~these_c ~they_would ~to_O ~to_put ~w_$ ~was_K ~was_the ~we_O ~what_it ~where_he
~with_n ~with_your ~y_at ~you_are ~you_did ~you_had ~you_will
-2 #S2 #expecting:true:some #words7 <n:300> =add-hands:all =ask-safety:S1 =ask-status:all =ask-temperature:S1
=ask-time-left:most =ask-time-left:to-step =ask-why:all =drop-dish:S3 =report-oven:frame =report-reading:S1
=report-reading:most =report-started:frame =resume:S3 =resume:phrase =set-doneness =set-doneness:most
=set-guests:S1 =shift-serving:most =undo:most ?heard4:guess ?talk3 ambulance b bank bread brine
brisket bucket candle cards charger chin chucked dropped drums early ellie flat french goes
google green grilled ground guests happy hey his ice idea jumped laundry leather leo letter
light marathon mean no officer ones pause pinch prep red ringing salt sandwich shirt side sit
slice socks somewhere staying tail them those till well wet where whole yaar ~,_not ~,_now
~,_over ~,_was ~?_we ~K_by ~K_over ~K_since ~O_after ~P_is ~S_O ~S_a ~U_V ~V_are ~V_at ~V_him
~V_let ~V_off ~V_us ~^_O ~^_are ~^_no ~^_that ~^_then ~after_that ~and_K ~and_at ~any_V ~are_at
~are_d ~be_a ~been_at ~been_taken ~by_the ~c_U ~c_says ~d_w ~did_ours ~do_this ~done_the ~done_you
~from_U ~go_on ~have_still ~he_can ~he_took ~her_the ~here_i ~i_O ~i_can ~in_$ ~in_i ~is_c
~is_the ~is_up ~it_$ ~it_said ~my_V ~n_goes ~n_till ~never_V ~no_, ~no_. ~no_P ~no_S ~not_a
~not_get ~not_now ~not_yet ~now_for ~of_the ~ok_for ~ok_in ~ok_so ~on_it ~or_is ~said_that
~should_take ~so_there ~take_these ~that_, ~the_V ~their_K ~there_? ~these_O ~they_V ~this_is
~to_get ~to_n ~too_K ~too_V ~took_a ~took_c ~took_my ~took_n ~was_c ~who_do ~will_c ~will_get
~yes_O ~you_O ~you_P
2 #K3 #U0 #frame:most #phrase:S1 <d> =add-dish:guess =ask-amount =ask-amount:few =ask-guests:some
=ask-how =ask-plan:S0 =ask-temperature:guess =ask-why =choose:S0 =cook-away:few =correct:phrase
=drop-dish:S0 =pause:S1 =quiet:S0 =quiet:all =repeat =repeat:some =report-oven:S2 =report-oven:S3
=report-reading:frame =report-reading:some =report-started:few =running-behind:S0 =running-behind:S1
=running-behind:most =set-doneness:guess =set-doneness:some =set-serving-time =set-serving-time:phrase
=set-serving-time:some =skip-step:S0 =skip-step:few =skip-step:to-step =start-over ?heard2:phrase
?heard3 ?heard3:phrase above am bad beautiful bluetooth bonfire building button can catch consider
cool cousin cry dishes everywhere fire frankly game glasses glazed golden grandpa ha have held
hits i jess laid let listening lou love lucy mashed meat news nil not note old pat peas pink
plenty potatoes press rare rate round sauce send shallots single slide station status team
teeth touched went what when wins woman writing ~!_V ~,_P ~,_an ~,_for ~,_which ~K_any ~K_has
~K_is ~K_they ~K_would ~O_for ~O_says ~O_then ~O_there ~P_S ~P_to ~S_c ~S_what ~U_my ~V_already
~V_an ~V_i ~V_over ~V_said ~V_second ~V_till ~V_why ~^_P ~^_V ~^_tell ~after_, ~all_S ~all_on
~and_did ~and_his ~and_she ~are_out ~before_. ~c_? ~c_V ~c_on ~c_to ~c_up ~c_when ~could_do
~d_from ~d_in ~d_that ~do_? ~down_after ~down_and ~first_U ~for_her ~for_w ~from_n ~get_from
~get_to ~go_U ~goes_to ~gone_c ~got_me ~had_the ~have_with ~hers_K ~his_V ~how_would ~i_c ~i_have
~in_, ~in_a ~in_for ~into_V ~is_S ~is_no ~is_out ~more_will ~n_after ~n_tell ~now_, ~of_n ~off_now
~out_$ ~out_but ~put_them ~said_, ~says_no ~since_y ~so_go ~so_it ~some_U ~thanks_. ~them_V
~them_n ~them_out ~those_V ~took_the ~up_on ~was_O ~was_that ~we_are ~went_up ~were_U ~what_,
~what_P ~what_could ~what_is ~when_we ~which_is ~y_K ~you_could ~you_say
3 #K1 #K2 #O0 #frame:S0 #frame:S3 #frame:some #guess:S0 #phrase:S2 #phrase:some <c> <n:150>
<n:80> =add-dish:some =ask-amount:some =ask-next:phrase =ask-next:to-step =ask-options:S0 =ask-substitute
=ask-substitute:S0 =ask-substitute:phrase =ask-temperature:some =ask-time-left =ask-time-left:S1
=ask-why:guess =correct =describe-roast =describe-roast:S1 =describe-roast:all =drop-dish =drop-dish:S2
=drop-dish:to-step =emergency:phrase =lack =lack:S1 =lack:few =lack:some =note-guest:phrase
=pause:all =repeat:S2 =report-done:frame =report-done:to-step =report-guests:some =report-not-done:frame
=report-not-done:most =report-out:some =resume:S2 =running-behind =set-doneness:S0 =set-doneness:all
=set-doneness:to-doneness =set-timer:all =start-over:frame about adding afternoon altogether
any appointment arriving back bed bless bought bowl browned callum cancelled cap carrying chilling
cold complete cranked decided degrees dining dry drying easy eggs everything fewer fierce floor
forever forks freeze gap gluten grain heavy herb holler instead ji kevin kindly knows land
lost lying maybe minimum minutes need nephew otherwise packet plan possible rack regular running
sake sherry sick simplify soft sour straight tablets than tin upside wall water whisking ~,_done
~,_got ~,_still ~,_this ~?_she ~K_going ~K_of ~K_out ~K_took ~O_S ~O_with ~P_P ~P_has ~P_she
~U_at ~U_has ~U_than ~V_go ~V_has ~V_have ~V_on ~V_the ~V_then ~V_when ~^_a ~^_do ~^_i ~^_their
~all_$ ~and_c ~and_it ~are_K ~at_the ~be_, ~be_O ~be_n ~by_now ~c_, ~c_of ~c_t ~c_then ~c_they
~could_K ~d_K ~d_ago ~for_, ~from_this ~get_in ~go_V ~gone_off ~gone_to ~got_for ~got_no ~had_c
~has_me ~have_put ~here_$ ~how_the ~i_V ~i_still ~if_i ~in_that ~is_V ~is_a ~is_y ~it_be ~it_is
~me_. ~me_to ~n_K ~n_are ~n_at ~n_that ~n_y ~no_V ~no_the ~not_V ~not_there ~now_$ ~now_or
~ok_? ~put_on ~said_yes ~says_the ~second_O ~she_will ~should_K ~should_the ~so_S ~so_V ~so_what
~still_V ~t_K ~to_? ~to_K ~took_S ~up_as ~us_and ~us_for ~us_in ~we_got ~we_took ~went_out
~were_the ~what_was ~when_it ~where_did ~will_an ~with_the ~with_them ~yes_it ~you_about ~you_c
4 #expecting:false:some #guess:few #words4 =add-hands:few =affirm:all =affirm:to-confirmation
=ask-how:all =ask-next =ask-next:to-reading =ask-options:all =ask-safety:phrase =ask-shopping:all
=ask-substitute:some =ask-why:S0 =choose:frame =describe-roast:most =describe-roast:phrase
=drop-dish:frame =note-guest:S0 =note-guest:few =note-guest:most =quiet =quiet:S1 =quiet:few
=repeat:phrase =report-done =report-done:all =report-done:few =report-done:phrase =report-guests:S2
=report-out:few =report-oven:some =report-reading:phrase =report-started =report-started:some
=running-behind:few =running-behind:some =set-guests =set-guests:most =set-guests:to-roast
=set-method:few =set-serving-time:to-roast =set-timer =skip-step =skip-step:all =start-over:S2
?heard5 absolutely ago anymore anywhere beginning blew bung c cauli chop christmas coat colander
comes correction counting creamed creme dried drops fan feet ferry fever flicked forget fraiche
from frozen go good hanging hats heads hear helps incredible inform instant-read kill lard
latter lodger looking manage margarine meal miss nobody now nursing ok option oven peeled picture
ping popped preheat quantity ravi reached resting roar roasted ruin show size sleeping solid
sous stop sure swears thickest timing together town train trust units vinegar wait weights
wreck yogurt ~,_all ~,_it ~,_or ~,_the ~,_they ~,_what ~,_when ~._why ~K_$ ~K_V ~K_after ~K_be
~K_with ~O_. ~O_he ~O_off ~O_since ~O_t ~P_in ~P_n ~S_! ~S_. ~S_by ~S_in ~S_ok ~S_you ~U_.
~U_had ~U_so ~U_when ~U_with ~V_and ~V_where ~^_here ~^_in ~^_this ~a_y ~about_with ~after_we
~all_taken ~all_the ~am_V ~an_S ~and_there ~and_they ~are_O ~are_c ~are_me ~as_U ~be_? ~be_V
~be_here ~but_my ~by_U ~c_d ~c_down ~c_for ~c_how ~c_or ~c_you ~can_not ~could_O ~d_$ ~d_down
~d_i ~d_on ~does_not ~done_U ~done_with ~for_K ~from_K ~go_in ~has_gone ~have_V ~he_says ~her_in
~here_? ~how_V ~how_should ~in_. ~in_when ~in_y ~it_K ~it_S ~it_now ~me_now ~mine_is ~my_c
~n_$ ~n_now ~n_on ~never_a ~no_not ~not_O ~not_let ~not_they ~now_at ~of_O ~of_her ~on_at ~on_then
~or_down ~other_K ~out_, ~out_at ~over_a ~over_to ~put_d ~said_. ~she_does ~still_ok ~take_that
~than_V ~than_n ~that_can ~that_in ~the_c ~their_V ~there_and ~they_, ~this_O ~till_K ~to_g
~up_or ~us_get ~w_V ~was_V ~were_O ~were_we ~what_have ~what_the ~where_were ~will_the ~with_V
5 #expecting:false:most #heard1 =add-dish:most =add-hands =ask-how:S0 =ask-next:few =ask-next:guess
=ask-next:some =ask-options =ask-options:most =ask-plan:phrase =ask-safety:few =ask-status
=ask-temperature =ask-time-left:all =ask-time-left:few =cook-away:phrase =correct:S0 =note-guest
=note-guest:S1 =pause:S2 =pause:most =repeat:few =report-done:S0 =report-done:most =report-done:some
=report-guests:guess =report-guests:most =report-oven =report-oven:all =report-oven:most =report-oven:to-step
=report-reading:S0 =report-setup =report-setup:S2 =report-started:all =report-started:most
=report-trouble =report-trouble:S3 =set-guests:few =set-units:all =shift-serving:S0 =shift-serving:frame
=start-over:few =start-over:most ? ?heard3:frame ?heard4 ?heard5:frame ?heard5:phrase ?talk2
alert already anyway asks babysitter be beef bigger celsius center children cooked core could
crust dave doing earth empty feed fix foil frenched gas gin god gravy happening having heading
heat hendersons hour knowing landed lent lies looked make microwave mixer notify patels pop
position pure reminds rolled rubbish scissors seated shouting sir smoke softening spoil substitute
supermarket teddy trev walk warming warn whacked wood yell ~,_mine ~,_take ~,_w ~K_K ~K_O ~K_before
~K_for ~K_my ~K_take ~O_before ~O_by ~O_c ~O_over ~O_so ~O_you ~P_? ~P_it ~S_do ~S_your ~U_about
~U_c ~U_the ~U_took ~U_what ~V_as ~V_been ~V_by ~V_it ~V_me ~V_mine ~V_their ~V_we ~V_with
~^_be ~^_did ~^_if ~^_let ~^_n ~about_$ ~about_the ~after_this ~all_this ~already_$ ~already_V
~am_i ~am_in ~and_put ~are_$ ~are_on ~as_you ~be_U ~be_on ~before_it ~by_O ~c_tell ~can_take
~could_V ~d_at ~d_not ~did_not ~do_K ~do_i ~do_us ~done_in ~down_a ~down_the ~first_K ~for_those
~get_O ~get_V ~go_. ~go_K ~goes_out ~going_V ~going_for ~gone_$ ~gone_U ~got_an ~got_d ~have_it
~have_not ~have_said ~have_we ~he_will ~here_U ~here_it ~his_S ~how_i ~i_must ~i_put ~if_he
~if_it ~in_and ~is_now ~is_she ~is_since ~it_d ~it_was ~like_V ~more_? ~n_if ~n_off ~no_c ~not_S
~not_at ~not_be ~of_his ~off_and ~off_in ~off_with ~ok_that ~on_you ~or_S ~or_V ~or_a ~our_U
~out_what ~says_, ~second_? ~should_i ~so_do ~so_let ~so_we ~some_V ~still_at ~still_c ~still_not
~tell_me ~that_. ~the_K ~the_go ~them_down ~there_is ~they_do ~this_$ ~this_K ~to_take ~to_this
~up_like ~up_now ~up_the ~was_done ~we_have ~we_put ~what_should ~what_will ~which_K ~who_can
~will_V ~will_i ~will_it ~will_not ~with_no ~would_S ~would_i ~yet_V ~you_. ~you_? ~you_S ~you_in
~you_the
6 #expecting:false:all #phrase:most #words3 <g> <n:100> <n:25> =add-dish:frame =add-hands:most
=affirm:S0 =ask-next:frame =ask-safety:some =ask-shopping:S0 =ask-substitute:S3 =ask-substitute:all
=ask-substitute:few =ask-time-left:S0 =ask-why:S2 =cancel-timer:all =describe-roast:S2 =help:frame
=help:some =pause =quiet:S2 =repeat:S1 =report-out:S0 =report-out:all =report-out:phrase =report-oven:S0
=report-reading:few =report-setup:guess =report-trouble:most =set-guests:to-confirmation =set-method:all
=set-method:guess =set-serving-time:frame =set-units:S0 ?heard4:frame adults after bay beep
bill birthday blood boil bothering boys bringing brush butter cleared cloves conventional cookies
cooler dead ditch dripping egg english everythings fat father feel fella few flag fridge further
girl grandma grandmother handful headlines later letting main making maria matters message
metric middle mixed nagging negative overnight parsley pastry planned present processor pulled
putting ray rope runs scoring separator shape sheet sleeves sounds sprout staring suppose system
tablespoon taken talking us vegetable wake yusuf zero ~,_S ~,_did ~,_why ~._. ~._O ~._V ~._so
~?_you ~K_. ~K_U ~K_are ~K_it ~K_now ~S_as ~S_for ~S_on ~S_so ~S_will ~V_because ~V_c ~V_d
~V_do ~V_her ~V_should ~V_some ~V_than ~V_yes ~^_as ~^_ok ~^_on ~^_with ~after_V ~ago_$ ~already_,
~am_U ~and_can ~and_how ~are_after ~are_n ~are_not ~are_the ~as_of ~be_my ~been_S ~been_off
~before_, ~by_a ~by_n ~c_with ~c_y ~d_are ~do_. ~do_in ~do_the ~done_V ~first_$ ~for_O ~g_,
~g_. ~get_U ~go_from ~go_off ~gone_for ~got_S ~got_a ~had_a ~has_the ~have_$ ~he_got ~how_$
~in_as ~into_it ~into_the ~is_to ~is_too ~it_all ~it_like ~like_, ~like_? ~more_V ~n_go ~not_c
~now_we ~now_you ~of_K ~off_K ~off_since ~off_the ~on_with ~on_yet ~put_the ~say_. ~should_be
~since_U ~so_K ~so_he ~take_them ~taken_their ~than_K ~them_off ~them_on ~they_are ~this_d
~to_S ~to_V ~to_me ~to_say ~to_that ~to_you ~up_a ~us_have ~was_in ~was_on ~we_be ~we_c ~we_will
~what_for ~when_he ~when_is ~when_should ~when_will ~where_V ~why_can ~would_U ~you_put
7 #phrase:S0 <t:12> <t:25> =add-dish =add-dish:all =add-hands:phrase =affirm:guess =ask-amount:S2
=ask-amount:most =ask-guests:phrase =ask-next:all =ask-shopping =ask-shopping:some =ask-status:S0
=ask-time-left:some =cancel-timer =choose:S3 =cook-away =deny:to-choice =describe-roast:S3
=have:all =help:few =help:guess =report-done:S3 =report-setup:phrase =report-started:S0 =report-trouble:S0
=running-behind:phrase =set-guests:all =set-serving-time:all =set-timer:S0 =set-units:phrase
=watch:all ?heard6 ?heard6:phrase air allowed amount aunt away bairns bear begin behind black
blast bother brussels bums buttered car carving commands cooling counter covered cracking crunchy
daughter dauphinoise dialled dine faffing full grid groceries guide helping keep know luck
mass meantime menu minds mute near niece nudge popovers postpone powder pretend properly rescue
reverse roads roasting ruth sauces seats shops shove son sorry sounded squeaky starting steeping
supposed swap thank thinking throw touches tractor trick trussing type under wants whether
wish ~,_before ~,_does ~,_up ~._K ~._w ~K_and ~K_w ~O_should ~P_on ~S_P ~S_but ~S_like ~U_!
~U_a ~U_does ~V_a ~V_going ~V_more ~V_still ~V_take ~V_what ~^_K ~^_any ~^_can ~^_get ~^_might
~^_now ~^_put ~^_was ~a_n ~all_. ~all_U ~am_not ~an_V ~and_all ~another_d ~are_done ~are_in
~at_all ~at_that ~been_n ~but_how ~by_me ~by_that ~c_K ~c_O ~c_because ~c_can ~c_like ~c_out
~can_$ ~can_K ~could_i ~d_now ~do_O ~do_be ~do_now ~do_with ~for_all ~go_$ ~go_O ~goes_in ~going_as
~got_his ~has_to ~have_U ~have_got ~have_her ~have_taken ~have_theirs ~he_c ~if_they ~in_V
~is_U ~is_here ~is_second ~it_U ~like_the ~me_if ~might_as ~more_are ~must_i ~n_have ~n_like
~not_out ~now_and ~now_then ~of_now ~ok_to ~on_? ~one_you ~out_already ~out_they ~over_V ~put_V
~said_n ~says_n ~says_one ~second_it ~she_is ~should_U ~since_d ~t_, ~that_yet ~the_in ~then_U
~there_will ~this_V ~up_. ~up_P ~us_go ~w_O ~went_on ~will_we ~with_S ~with_a ~with_d ~with_hers
~y_V ~you_i
8 #frame:few =add-dish:S0 =add-dish:phrase =add-hands:S1 =ask-amount:S0 =ask-how:frame =ask-how:most
=ask-next:S2 =ask-safety:guess =ask-status:S1 =ask-temperature:all =ask-time-left:guess =cancel-timer:S0
=cancel-timer:frame =cancel-timer:phrase =cook-away:guess =deny:S0 =deny:few =deny:to-confirmation
=describe-roast:some =describe-roast:to-roast =drop-dish:S1 =drop-dish:few =lack:phrase =note-guest:all
=pause:S0 =report-done:S1 =report-guests =report-oven:phrase =report-oven:to-reading =report-trouble:S1
=report-trouble:phrase =report-trouble:some =resume:S1 =set-doneness:S2 =set-guests:phrase
=set-method:S1 =set-method:frame =set-method:most =set-serving-time:S0 =set-timer:some =set-units:most
=undo:all =watch:S0 =watch:phrase ?heard4:phrase ?heard7 ?heard8:guess alongside bare bean
before bin bubbling carked carrots celiac centre chopped clock coast current deep delete dial
driving everyone failure fed feeding fell forerib freezer garlic grand gratin herself hit holiday
horseradish immune imperial internal inverter joining juice knock lad law leftovers lie longer
low mad method missing month netted none oiled onions overdone probe rang record reheat replace
ribs rolls roots salty scraping screaming shed should sing smelling so sooner spinach spoons
sprouts step steps thought tops topside touching tray twine uncovered very waiting walking
which wire worse ya young ~,_been ~,_has ~,_took ~._what ~K_? ~K_does ~K_done ~K_go ~K_goes
~K_n ~K_should ~K_so ~O_all ~P_get ~P_so ~S_are ~S_can ~S_put ~S_with ~S_would ~U_down ~U_from
~V_ago ~V_could ~V_his ~V_like ~V_out ~V_went ~^_U ~^_has ~^_should ~^_since ~^_there ~a_S
~a_w ~about_V ~ago_and ~all_? ~all_over ~already_K ~am_all ~and_S ~and_now ~and_when ~another_n
~at_? ~at_me ~at_t ~be_at ~be_with ~because_of ~before_d ~but_why ~c_it ~c_n ~c_not ~do_c ~does_K
~does_this ~from_my ~from_there ~get_K ~get_n ~going_to ~got_here ~got_that ~has_t ~have_already
~he_say ~here_to ~hers_S ~how_it ~i_after ~i_should ~i_took ~if_so ~if_there ~is_P ~is_her
~is_them ~it_as ~it_has ~it_in ~it_ok ~like_you ~me_an ~me_and ~me_c ~me_so ~me_till ~n_. ~n_because
~not_more ~not_tell ~now_. ~on_S ~on_d ~on_that ~on_we ~one_says ~out_it ~out_with ~say_? ~second_from
~so_the ~so_this ~so_yes ~still_to ~t_. ~t_over ~take_$ ~take_this ~them_, ~them_have ~there_any
~they_said ~up_to ~us_not ~w_K ~was_U ~was_it ~we_do ~were_V ~were_not ~what_O ~what_a ~when_they
~which_V ~who_are ~who_does ~will_that ~with_it ~with_their ~would_c ~you_be
9 #expecting:true:all #words1 =ask-amount:guess =ask-guests =ask-options:guess =ask-plan =ask-safety
=ask-safety:all =ask-shopping:phrase =ask-temperature:S0 =cook-away:S1 =cook-away:frame =cook-away:most
=drop-dish:guess =drop-dish:most =emergency:S1 =help:all =lack:to-step =repeat:most =report-not-done:S1
=report-setup:S0 =report-started:phrase =set-guests:S0 =set-method =set-method:S0 =set-timer:phrase
=set-units =set-units:S2 =set-units:guess =set-units:some =watch =watch:guess =watch:most ?heard6:frame
?heard7:frame ?heard8 ?heard8:phrase ?talk0 backs bailed baste beans beeped beg bet better
blank bone braised brother bumped butternut buy care clear climbed code cremated dairy dental
dog drained either eta evening everybody fallen fergal fetch fit forward grocer halal happen
head heavens holding hotter hungry hush jar job laws leave-in loin lumps man matter meaning
messages miles mint misread moment mouths move much neighbors odd packed per pipe poked possibilities
rail reaching reason rock root salting scrap shoved shower skipping sock squash stand stick
teenagers tenderloin test think ticking tiny toddlers totally ugh vegetarian volunteered wipe
won worry yorkshire ~,_be ~,_so ~,_yes ~._how ~K_S ~K_no ~K_ok ~O_another ~O_this ~P_. ~S_U
~S_and ~S_does ~S_yet ~U_already ~U_how ~U_who ~V_. ~V_he ~^_another ~^_could ~^_done ~^_t
~^_up ~^_us ~after_a ~after_d ~all_K ~am_O ~and_U ~and_took ~are_here ~as_a ~be_an ~be_gone
~but_not ~can_go ~could_you ~d_already ~d_can ~d_is ~did_that ~done_. ~down_n ~first_n ~go_?
~goes_over ~got_in ~has_n ~have_any ~her_S ~here_. ~how_K ~how_U ~i_K ~i_S ~i_be ~i_let ~it_and
~it_first ~it_off ~it_still ~it_up ~like_to ~me_at ~me_in ~me_my ~more_n ~my_P ~my_in ~n_be
~n_who ~n_with ~no_? ~no_still ~not_any ~not_put ~not_say ~of_U ~of_that ~of_us ~off_d ~ok_V
~on_$ ~on_a ~on_g ~on_let ~on_second ~or_more ~out_d ~out_now ~over_it ~over_the ~over_w ~should_it
~so_my ~still_n ~t_V ~taken_the ~that_$ ~that_d ~then_$ ~then_n ~there_d ~too_. ~up_U ~up_by
~us_K ~us_now ~w_c ~w_not ~w_of ~we_$ ~we_going ~we_must ~what_about ~what_goes ~what_must
~what_to ~when_d ~with_$ ~would_the ~you_a ~you_tell ~you_were
10 #phrase:all . =add-dish:S2 =add-hands:S0 =add-hands:some =ask-next:S0 =ask-options:few =ask-safety:S2
=ask-safety:most =ask-shopping:S1 =ask-status:to-reading =ask-temperature:most =cancel-timer:S1
=cancel-timer:few =correct:to-confirmation =deny:guess =have:most =note-guest:frame =repeat:frame
=report-done:guess =report-guests:S0 =report-guests:few =report-not-done:to-step =set-method:phrase
=set-units:frame =watch:S2 ?heard7:phrase ?heard8:frame ?talk1 accident afresh along being
ben bits bridie browning buzz cable clue collect completed counts dark delivery display doorbell
ear edges error floss flour football gave granddad happens hearing helper herbs hop huh ideas
ingredients invite keeping kev kidney knocked ladies market missus napkins necessary neither
nor nowhere och offered onto ounces peace persons pete plate pounds preheating puddings reading
remaining rib rise risen rob roommate roped roughly sauna serve setting sizzling slicing slipped
stage stepping store their thermometer topped turns typo un vegan voted wireless working worktop
yank ~,_. ~,_d ~,_gone ~,_too ~._$ ~?_$ ~K_can ~K_her ~K_how ~K_when ~K_yes ~O_can ~O_up ~P_can
~P_from ~P_who ~S_V ~S_us ~U_hers ~U_that ~U_them ~V_! ~V_? ~V_am ~V_hers ~V_how ~V_says ~V_theirs
~V_took ~^_, ~^_all ~^_c ~^_from ~^_going ~^_not ~^_says ~^_some ~^_were ~^_which ~^_y ~a_c
~a_no ~after_U ~ago_. ~all_V ~all_so ~all_too ~all_we ~am_after ~and_my ~as_K ~be_d ~be_out
~be_too ~been_a ~been_out ~but_K ~by_c ~c_over ~d_after ~d_before ~down_would ~for_another
~for_is ~for_t ~goes_$ ~going_out ~had_no ~has_U ~has_V ~have_c ~her_out ~here_but ~how_am
~how_you ~if_you ~in_K ~is_. ~is_more ~is_ok ~is_over ~is_with ~it_got ~it_how ~let_the ~me_$
~me_O ~me_V ~me_for ~me_some ~more_$ ~n_in ~n_there ~never_going ~no_more ~no_thanks ~not_before
~of_d ~of_it ~of_those ~of_what ~off_. ~off_n ~on_me ~on_till ~one_. ~our_S ~out_do ~put_in
~second_U ~she_goes ~so_U ~so_like ~so_you ~t_now ~take_K ~taken_it ~than_that ~that_be ~their_O
~theirs_at ~them_c ~then_O ~then_a ~they_will ~to_do ~to_it ~to_no ~to_our ~us_O ~was_my ~was_out
~we_go ~we_shall ~what_? ~when_can ~where_to ~would_that ~yes_or
11 =ask-guests:all =ask-guests:guess =ask-how:S2 =ask-plan:S1 =ask-plan:all =ask-substitute:to-step
=have =have:S0 =have:phrase =pause:phrase =report-started:S2 =shift-serving:some =skip-step:most
=skip-step:phrase =undo:S0 =undo:phrase aiming arrive aunties balls behaving bit bones cauliflower
chopping chuck coeliac company conked continue cried drive earlier eat fahrenheit friend giving
grated happened hope house include including itself killing lend lifted lit mhm mister motorway
na nervous nuts onion overwhelmed palaver parchment parsnips patting pending practically quick
ran reminders resume roaring rub saying schedule sear shall sink slow somehow something sorted
speech speed stabbed stands temple tent theo timeline tyre walked wanting wrong yesterday yoke
yorkshires ~,_do ~._and ~._the ~K_! ~K_as ~K_but ~K_down ~K_got ~K_here ~K_i ~K_not ~K_off
~K_we ~O_do ~O_goes ~P_do ~P_took ~P_with ~S_n ~S_says ~U_up ~U_went ~V_did ~V_got ~^_them
~about_that ~after_it ~all_here ~all_they ~already_and ~another_V ~are_up ~as_it ~as_the ~before_?
~before_the ~c_by ~can_my ~d_or ~do_about ~does_n ~down_c ~down_d ~from_me ~g_now ~got_V ~got_to
~has_no ~have_S ~have_a ~her_. ~hers_, ~him_to ~how_we ~i_was ~in_some ~is_an ~it_. ~it_down
~it_have ~it_should ~it_so ~it_to ~it_went ~it_where ~it_y ~me_a ~more_to ~n_has ~n_how ~not_.
~not_going ~not_got ~now_S ~off_so ~ok_P ~ok_do ~on_my ~out_. ~say_it ~says_on ~shall_i ~so_i
~so_they ~so_why ~some_of ~still_K ~t_on ~that_off ~them_is ~there_. ~there_V ~there_are ~this_.
~till_we ~to_have ~up_does ~up_from ~up_i ~us_, ~us_V ~us_a ~us_do ~w_it ~we_at ~we_like ~what_U
~what_all ~what_do ~what_now ~what_were ~why_V ~why_it ~will_let ~with_P ~you_said ~you_when
12 #words2 =affirm:most =ask-options:to-choice =ask-status:phrase =ask-substitute:guess =ask-time-left:frame
=cancel-timer:some =deny:to-step =help =help:S0 =help:phrase =report-not-done:guess =report-out:frame
=running-behind:all =set-method:some =set-serving-time:most =set-timer:frame =set-units:S1
battery bench bloody brb cabbage calibrate carved choices climbing cope crept dangerous dare
drink drinks e electricity f faff far fresh fussy fyi grams guest halfway inside jo jump kiddies
life loosely lose lowest mains mark most murder needed nip nudged obviously oil opened overcooked
overshot own pale picked places planning plated popping pour prime range required saving sharp
shows silence soon sound sticker strained stuff tailed themselves thin tied tongs trimming
turned vegetables wind works worried ~,_are ~,_of ~,_will ~K_d ~K_do ~K_first ~K_have ~O_me
~O_that ~P_are ~P_he ~S_now ~U_be ~U_have ~U_if ~U_will ~V_if ~V_t ~^_still ~ago_it ~am_a ~any_K
~are_down ~as_is ~as_we ~be_in ~because_it ~before_that ~c_have ~could_we ~d_n ~do_$ ~do_we
~done_for ~down_is ~first_then ~for_S ~for_how ~from_now ~get_here ~goes_V ~going_O ~going_down
~gone_d ~gone_from ~got_the ~how_can ~how_on ~how_they ~i_done ~i_go ~in_w ~is_been ~let_us
~like_c ~me_how ~must_V ~n_is ~n_too ~no_no ~not_U ~not_gone ~now_n ~now_what ~ok_, ~ok_the
~ok_what ~on_now ~on_so ~or_no ~or_should ~out_to ~put_a ~say_a ~say_they ~says_U ~second_of
~she_can ~should_he ~so_no ~some_S ~still_O ~that_from ~that_i ~that_n ~the_d ~they_c ~this_?
~this_out ~to_go ~to_t ~too_, ~took_it ~up_? ~up_and ~up_n ~us_n ~went_for ~what_S ~what_am
~what_if ~what_on ~why_does ~would_it ~yes_K
13 =add-hands:frame =ask-next:to-choice =ask-options:phrase =ask-plan:S3 =ask-shopping:most
=ask-substitute:S1 =ask-temperature:frame =choose:all =choose:to-choice =drop-dish:all =note-guest:to-doneness
=quiet:phrase =repeat:to-confirmation =report-not-done:to-reading =report-setup:few =report-trouble:all
=set-units:few =shift-serving:guess =watch:frame accidentally alex allergies assisted beeping
board boneless breath brought brown completely control cross deglaze dinner dropping drowning
fast fingers flames fuse girlfriend joint keeps makes misheard mo mustard neighbours nipping
olive others peeler peeling pepper pouring proper racket rather real rental reset rid sec squeamish
steady strike suggestions switched talk telling ticked timers total trussed unpause using ~,_thanks
~._that ~?_my ~K_already ~K_our ~K_will ~O_from ~O_w ~O_went ~O_what ~P_put ~S_has ~S_it ~S_this
~U_before ~U_but ~U_d ~U_we ~V_after ~V_into ~V_not ~V_will ~^_g ~^_me ~^_took ~am_on ~and_her
~are_still ~as_before ~be_done ~but_O ~c_S ~c_me ~c_will ~can_it ~can_we ~d_off ~does_that
~done_$ ~down_at ~for_? ~for_him ~go_c ~her_at ~here_and ~here_now ~hers_$ ~i_had ~in_all ~is_after
~is_g ~it_the ~it_you ~like_we ~n_about ~n_it ~no_n ~no_second ~not_? ~not_K ~not_in ~not_on
~not_take ~now_t ~now_till ~off_my ~ok_$ ~on_this ~one_V ~one_second ~out_when ~say_n ~says_t
~says_w ~second_. ~shall_be ~should_have ~so_put ~so_take ~that_and ~that_went ~this_up ~those_$
~to_P ~to_my ~w_all ~was_off ~we_? ~went_in ~when_she ~where_i ~why_must ~will_a ~with_my ~would_be
~yet_i
14 =add-hands:S2 =ask-guests:most =ask-status:few =cook-away:S2 =cook-away:S3 =note-guest:guess
=quiet:some =report-guests:phrase =report-out:to-step =report-setup:all =report-trouble:frame
=set-timer:to-reading =shift-serving:S2 =skip-step:S1 =undo:some =watch:some able alternatives
asking batter blade cooker electric enough exactly extra eye final forgotten gratins headcount
hood kilos leaving mistake nap pardon peek removed right sage saignant salted scrubbed shout
sitting skin slices slid stove string such supper tap tiles twins wine winning wrapped ~,_$
~,_by ~K_like ~O_but ~P_will ~S_here ~U_K ~U_said ~V_one ~V_our ~^_because ~^_down ~^_for ~^_got
~^_have ~after_$ ~after_i ~already_n ~already_the ~am_c ~and_on ~any_other ~are_already ~are_off
~at_$ ~c_we ~d_. ~d_for ~d_more ~down_yet ~for_them ~for_to ~get_why ~go_with ~gone_, ~have_i
~i_on ~i_take ~in_c ~it_O ~it_or ~it_yet ~me_? ~me_what ~n_where ~no_do ~now_it ~ok_it ~on_or
~one_i ~or_what ~other_O ~put_S ~say_so ~says_it ~second_, ~since_c ~that_should ~there_another
~us_. ~was_not ~we_can ~we_up ~where_do ~why_so ~will_you ~would_n ~y_. ~yes_so ~you_for ~you_let
~you_what
15 <t:80> =ask-options:some =ask-plan:guess =ask-why:to-step =cook-away:all =note-guest:to-guests
=report-guests:S3 =report-setup:S3 =undo:guess =watch:S1 auntie beauty boned brining checked
convection delay dentist edge food forgot frail gang hang hob hon kosher label lactose lagging
looks lowered missed muffin noise nora pet pot push rarer remind rests righto rosy same seared
shellfish skillet speak suggest tented transplant turning unless warm whip wise ye ~,_because
~,_one ~K_am ~K_if ~K_or ~K_till ~K_yet ~S_than ~U_done ~U_like ~^_gone ~all_n ~all_of ~all_that
~am_d ~at_what ~but_V ~c_. ~can_V ~d_U ~d_like ~for_this ~going_in ~got_it ~has_$ ~how_does
~i_never ~in_no ~in_she ~is_there ~is_w ~it_do ~me_d ~n_this ~no_$ ~not_me ~not_what ~off_it
~on_for ~on_to ~out_since ~said_$ ~say_V ~says_to ~so_$ ~still_$ ~t_U ~that_w ~there_a ~this_at
~till_the ~till_they ~took_her ~up_my ~w_. ~w_so ~w_with ~we_take ~what_does ~what_i ~where_should
~why_am ~you_K
16 =add-dish:few =ask-guests:S0 =ask-options:S2 =ask-plan:frame =ask-plan:some =correct:all
=correct:guess =help:most =pause:some =report-guests:all =report-started:to-step =resume:guess
aim app bang correct countdown doneness eyes great instruction intolerant killed kip lads marks
mash person prepone pressed pulling seasoned short showed simmering texted tie trifle trimmed
wife wrote ~,_am ~O_d ~P_down ~S_the ~V_about ~V_here ~V_say ~V_would ~^_at ~^_to ~^_would
~after_all ~after_n ~all_going ~am_here ~and_what ~any_S ~as_my ~be_for ~can_be ~did_i ~done_all
~going_up ~i_already ~is_my ~is_off ~is_when ~it_t ~it_that ~like_it ~me_of ~n_i ~n_my ~not_done
~not_have ~not_i ~should_not ~than_i ~them_. ~up_when ~up_where ~we_on ~when_V ~when_do ~why_K
~why_n ~will_go ~yet_. ~you_no
17 =ask-plan:S2 =ask-why:frame =deny:all =lack:all =note-guest:S3 =running-behind:S2 =set-timer:few
=skip-step:frame allergy alternative begun bleeding bottom changed element free frenching himself
ill jus latest lower part poke rosemary scratch searing slowly spot tins veggie while whipped
~!_K ~,_would ~P_was ~S_i ~S_out ~^_off ~before_i ~c_i ~does_V ~for_now ~for_us ~from_V ~in_yet
~is_already ~like_a ~never_put ~no_it ~ok_i ~so_, ~so_n ~so_that ~that_the ~there_has ~till_i
~we_still ~would_go ~would_say ~yes_do ~yet_to
18 =ask-plan:most =ask-safety:S0 =ask-safety:frame =lack:S3 =report-not-done:all ages boyfriend
cast change chemo crack crumble grace hovering kids least months passed phone thick thyme tough
tripped tying washed wee whisht ~!_! ~K_this ~P_U ~P_at ~^_never ~am_out ~are_a ~because_the
~before_we ~do_that ~i_say ~n_so ~no_how ~on_. ~that_was ~what_$ ~why_that ~yes_go
19 =ask-how:guess =ask-options:S1 blackout duty horses less state stuck things truss ~c_now
~d_too ~done_here ~gone_V ~n_d ~not_we ~out_so ~out_yet ~which_O
20 =ask-why:some clean ignore tenderised tick ~^_had ~for_P ~it_for ~n_still ~off_to ~where_we
~yes_$
21 =ask-status:guess beast explain needle reckon teaspoons ~._i ~go_for
22 =report-not-done:to-confirmation =resume:most invited ~but_i
23 =ask-status:most =ask-why:few pregnant stock ~yes_that
24 =resume:all =start-over:S0 flu ~why_not
26 ~will_take
27 ~are_S`;

function read(): Weights {
  const weights = new Map<string, number>();
  let weight = 0;
  for (const entry of learnt.split(/\s+/))
    if (/^-?\d+$/.test(entry)) weight = Number(entry) / 20;
    else if (entry) weights.set(entry, weight);
  return weights;
}

export const weights: Weights = read();

/** Words that have been said to the helper. */
export const familiar: ReadonlySet<string> = new Set(
  `a abeg able abort about abouts above absent absolutely abuela accent acceptable accident accidentally
accompaniment achieve act acting actual add added adding adults advise afraid afresh after
afternoon again against age aged ages ago agrees ahead ahmed aid aim aiming air airport aisle
aiyah ajar alarm alcohol alert alex alight all allergic allergies allergy allowed almost alone
along alongside already also alternative alternatives altogether always am amandine amazing
american amount amy an ana anchovies ancient and anil announcements announcing another any
anybody anymore anyone anything anyway anywhere aperitif app apparently appointment approximately
apricots apron are arguing arm around arra arrive arrived arriving arrowroot arse arseways
as ask asked asking asks asleep assembled assign assisted assumes at ate aunt auntie aunties
aunty autocorrect ava available average away awful ay b bab baby babysitter back backofen backs
bad badly bag bailed bairn bairns bake bakery baking ballet ballpark balls bang banging banjaxed
bank bar barbecue bare basket baste basting batch bath bathing batter battery battle bay be
bea bean beans bear beast beat beautiful beautifully beauty became because become becomes becoming
bed bedlam beef been beep beeped beeping beer beets before beforehand beg began begged begging
begin beginning begun behaves behaving behind being belay believe bell belly below ben bench
benefit benji bent bert besides best bet beth better between beyond bhaiya big bigger bill
billowing bin binning bins bird birds birthday bit bits black blackout blade blank blast blather
blazing bleeding bleeds blender bless blethering blew blinking blistering block blocked blood
bloody blowing blown blue bluetooth board boat bob boeuf boil boiling bone boned boneless bones
bonfire boot boots border bored borrow boss bossy both bother bothered bothering bottle bottom
bought bout bowl box boxed boy boyfriend boys braised brb bread breads break breaker breath
breathe breather bridie bring bringing brining broke broken brother brought brown browned browning
brush brussel brussels btw bubbling bucket bucks budged building built bum bump bumped bums
bunch bung bunged burn burned burning burns burnt bus business bust busy but butcher butter
buttered butterflied buttering butternut button buy buying buzz buzzer buzzing by bye bypass
c cabbage cable cake caleb calibrate call called callum calmer came can cancel canceled cancelled
candles cap car caramel caramelised care careful carked carload carol carries carrots carry
carrying carryover carton carve carved carving casserole cast cat catch catched caught cauli
cauliflower cautious celiac celsius center centre cerys chair chance change changed changing
charge chasing chatter cheap check checked checking cheddar cheers cheese cheesecake chef chemo
chest chewing chewy children chill chilling chimney chip choice choices choking chooks choose
choosing chop chopped chopping chris christmas chronic chuck chucked church cider ciggies circulation
circumstances claims clay clean cleaning clear cleared clever clicked climb climbed climbing
clock clogs close closed cloves clue coast coat coats cobber cocked code coeliac coffees colander
cold colder collapsed collapsing collect come comes coming commands commenced commit company
complete completed completely compound conked connected cons consider continental continue
control convection conventional convert cook cooked cooker cookies cooking cooks cool cooler
cooling cools cope cord core corkscrews corn corner cornered cornflour correct correction could
count countdown counter countertop counting counts course cousin cousins cover covered cow
crack cracked cracking crackling craic craig cranberry crank cranked cranking cranky crap crawled
cream creamed creamy creeping cremated creme crept crew cried crimbo crime crisp crispy cross
crowd crowds crumble crunchy crust cry crying crème ctrl cube cubes cup cupboards cups curdled
curious currant current cut cutted cutting cylinder célia côte d'ye d'you da dad daft dairy
dan dangerous dans dare dark darling daughter dauphinoise dave day days de dead dealt dear
decent decided deciding deck declan deep deepest deglaze deglazing degrees delay delayed delete
delivery demanded dental dentist department derek detector dev dey diabetes diabetic dial dialled
diamonds diaper did died dietary difference different differently digging dijon dine diner
ding dining dinner dinnertime disaster disclosure dish dishes dishwasher dishwater display
disposable disregard distracted disturb ditch ditched do doable doctor does dog dogs doing
dona done doneness door doorbell doors dot double doubtful dough down dragging dragon drained
draining drank draped draw drawer dressed dried drink drinkers drinking drinks dripping drippings
drips drive driveway driving drop dropped dropping drops drowning drum drunk dry drying duck
ducking due dusted dusty duty dying e each ear earlier earliest early earshot earth easiest
easy eat eating eats edge edges egg eggs either elbow electric electricity electrics element
elias ellen ellie else embarrassing empty enamel end ends english enough entire entirely entry
epipen error essen et eta european even evening events ever every everybody everyone everything
everythings everywhere ex exactly examples except exchange excuse exist expect expecting explain
extinguisher extra extracted extractor eye eyeing eyes f face faff faffed faffing fahrenheit
failure fainted fair fall fallen family fan fancy far fast fat father fatima favour fear fed
feed feeding feel feels feet fell fella fergal ferry fetch fever few fewer fierce fight fighting
figure fill fillet filling film final find finding fine finger fingers finish finished finishes
finn fire firehouse first fit fits fix flag flame flames flash flashing flat flatmate flatmates
flick flicked flickered flight flip flipped floor floss flour flu foil folks following food
fool foot football footy for forerib forever forget forgot forgotten forks former fort forward
found fraiche frail frankly fraîche free freeze freezer french frenched frenching fresh fridge
friend friends from front frozen fruitcake frying full fully fumes fun funny furniture furry
further fuse fussy fyi gabbing game gander gang gap garage garden garlic gary gas gash gatineau
gauge gave geelong generous gents german get gets getting ghee ghosts gifts gil gin girl girlfriend
give given gives giving gizmo glass glasses glazed glazing glory glove gluten gnaw gnawing
go gob god goes going golden gone good goodness goose gorgeous got grab grabbed grace grain
grams gran grand granda grandad granddad granddads granddaughter grandma grandmas grandmother
grandmothers grandpa grandparents grandpas granny grape grate grated gratin gratins gravy grease
greased great greek green greet greg greta grey grid grill grocer groceries growing grown grownups
grows gruyère guess guest guests guidance guide guy gym ha had hadad hair halal half halfway
hall halved hamish hana hand handed handful handheld handle hands hang hanging hannah happen
happened happening happens happy hard harm has hassle hate hates hats hauled have having hazard
he head headcount heading headlines heads heaped hear heard hearing heat heathens heating heats
heavens heavy held hello help helped helper helping helps hen hendersons hens her herb herbs
here hers herself hey hi high hilarious him himself his hit hits hitting hives hob hoicked
hold holding hole holiday holler holyhead home homemade hon honest honestly hood hook hoover
hop hope hopping horror horseradish horses host hot hotter hour hours house household hovering
how huh hundreds hungry hunnerd hurt husband hush i ice icebox id idea ideas idiot if ignatius
ignited ignore ill immune immunity imperial important imran in inch include including incredible
india ines inform ingredients ingrid injection inner inserted inside insisting insists instant
instant-read instead instructed instruction instructions interchangeable internal into intolerant
inverter invitation invite invited involved iron is it items itself jaccarded jaggery jam jar
jaysus jean jeez jelly jenny jess jesus jet ji jiffy jim jo joan job jobs jodie joe johnsons
join joined joining joint jonah joneses jose joy judge juice jump jumped jumping jus just-now
justify karen kate keen keep keeping keeps kegs kelly kept kern kernel kettle kev kevin kick
kiddies kidney kidneys kids kill killed killing kilo kilos kind kindly kip kiri kitchen knife
knitting knives knob knock knocked knot knots know knowing known knows kosher kowalskis kumara
la label lack lactose lad ladies lads lagging lah laid lamb lammkeule land landed lands laps
lard larder lasagna last late later latest latter laughing law laws lay laying leaflet leah
leaning least leather leave leave-in leaves leaving leeds left leftovers leg lemon lend lending
length lent leo less let letting levels lick licked lid lie lies lieu life lift lifted lifting
light lights like likely likes lily line lino lips lisa list listen listening lit little littlies
live living lizard load loaf lodger logic loin long longer loo look looked looking looks loops
loose loosely lorry lose losing lost lot lottie lou loud louder lounge love lovely lovers low
lower lowered lowest lucia luck lucy lumps lumpy lunch lying läuft mad made main mains make
makes making malt mama man manage mandoline manual many marching marco marcus margarine marge
marguerite maria marinade mark market marks marta mash mashed mass match mate mates matter
matters mavis max may maybe me meal mean meaning meant meantime meanwhile measure measurement
measurements measuring meat mechanically medium mediums meets mei melt melting members mention
mentioned menu mess message messages messing met metal method metric mhm mick microwave middle
might mile miles milk milks mill mind minding minds mine minimum mint minutes miracle miracles
misheard misprint misread miss missed missing missus mistake mister mitt mixed mixer ml mo
mob mode model moira mom moment mommy moms money monkeys monster month months mooing mopping
more most mother motorway mouldy mouth mouths move moved moves movie moving mrs much muffin
mum mummy murder must mustard mute mutton my myself n na nadia nagging nail name names nan
nana nap napkins napped ne'er near nearly neat necessary necks need needed needle needs negative
neighbor neighbors neighbour neighbours neither nelly nephew nervous netted never new news
next nice niece night nil nip nipped nipping no noah nobody noise none nor nora normal normally
not notch note nothing notice notifications notify notion now nowhere nudge nudged nuisance
numb number numbers nursing nut nuts o oat obviously och oclock odd of ofen off offer offered
offering offie oh oil oiled ok oksana old olive omar omit on once one ones onion onions online
onto onwards opal open opened opposed option options or order orders oregano original other
others otherwise ought ounces our ours out outside outta oven ovens over overcooked overdoing
overdone overnight overshot overview overwhelmed ow owen own owned pace pacing package packed
packet pains pair pal palaver pale palm palms pan panel panicked pans paper paperwork parboil
parboiled parcel parchment pardon parents parked parking parsley parsnips part party pass passed
passes passing past pastry pat patels patient patients patted patting pauline pause paws paying
peace peaked peaks peanut peas peek peel peeled peeler peeling pen pencil pending people peoples
pepper peppered per perched person persons pescatarian pet petal pete petra phew phone pick
picked picking picture piece pieces pills pin pinch ping pinged pink pinker pipe pitch pitching
place placed places plain plan plane planned planning plans plate plated plates plating platter
play plenty plot plumber plus pm point pointing pointless poisoning poke poked pop popovers
popped popping pork porky portion portions position posses possess possibilities possible postpone
pot potato potatoes pounds pour poured pouring powder power practically practice prayer pre
prefer preference prefers pregnant preheat preheated preheating prep preparation prepared prepone
present presents press pressed pretend pretty price prime print printed priya probe problem
procedure proceed processor progress proper properly proportions propped propping pros proved
proving pub pudding puddings puffed pull pulled pulling pumping pumpkin purchase pure purpose
push pushed put puts putted putting quantity quarter quick quicker quickly quid quiet quieten
quite rack racket radiant rail raised raj ran rang range rare rarer rate rather ratio ravi
raw ray reach reached reaches reaching reaction read reading readings reads ready real reason
reasoning recall reckon reckons recommend record recruit red reduce reduced reducing reduction
reed reflection refreeze refrigerated refuse regular reheat relatives relight religion remain
remaining remember remind reminder reminders reminding reminds remove removed rental repeat
rephrase replace replaced replacement report requested required requiring rescue reset rest
rested resting restore rests resume retard reverse revert rewind rib ribeye ribs rich rid right
righto rimmed ring ringing rings rise risen rising risk rite road roads roar roaring roast
roasted roaster roasting rob rock rocked rocks roles roll rolled rolling rolls ron room roommate
root roots rope roped rose rosemary rosy rosé rotten rough roughed roughly round roux rub rubbed
rubbish ruin ruined rump run rundown rung running runny runs rush rusted ruth sack sad sadly
safe safely safest safetys sage said saignant sake salad salon salsa salt salted salting salty
salvage sam same sanjay sat sauce sauces sauna save saving saw say saying says scalded scalding
scale scalloped schedule schmest school scissors score scored scoring scotch scout scrambled
scrap scraped scraping scratch screaming screen scrubbed sea sear searched seared searing seasoned
seasoning seated seats seawater sec second see seeing seem seems send sends sense separator
sequence serious serve served serving sesame set setting settle shaken shaking shall shallots
shallow shape shaped share shares sharp shave shazza she shed sheet shelf shell shellfish shelves
sherry shh shift shirt shit shoes shoot shop shopping shops short shortly shot should shout
shouting shove shoved show showed shower showing shown shows shredded shush shut shy sick side
sides sieve sigh sign silence silver silverside silverskin simmering simple simplify since
sing single sink sinking siobhan sir sirloin sister sit sitrep sits sitting situation size
sizzling skillet skimmed skin skip skipped skipping slack slate sleeping sleeps sleeve sleeves
slice sliced slices slicing slid slide slimy slipped slipping slips slow slower slowly small
smashing smeared smell smelling smells smoke smokes smoking smoky snow so sock sodium sofa
soft softening soggy sold soles solid some somebody somehow someone something somewhere son
soon sooner soonest sorry sort sorted soufflé sound sounded sounds soup sour sous space spare
spark speak speaking special speckled speech speeches speed spell spices spilling spinach splashed
split splitting spoil spoils spoke spoon spoons spot spots spreading sprigs sprout sprouts
spud squash squeaky squeamish squeeze stabbed stage stairs stale stand standing stands staring
start started starters starting starts starving state station status stay staying stays steady
steak steam steamed steaming steeping step stepping steps steve stewed stick sticker still
stir stirring stitches stock stone stood stop stopped stopwatch store story stove straight
strained straining strait strays streaming street stretch strictly strike string strip stripped
stroller strong struggling strung stuck stuff stuffed sub substitute such sugar suggest suggestion
suggestions suit sulk summarise summer sunflower sunk supermarket superstition superstitious
supper support suppose supposed sure surely suspend swap swear swears sweet swell swelling
swells swimming switch switched system table tablespoon tablet tablets tackle tad tail tailed
take taken takes taking talk talked talking tama tap target tariq tasks taste tasted tastes
tea teach team tearing tears teaspoon teaspoons technique teddy teenagers teeth telephoned
tell telling tells telly temperature temple tenderised tenderloin tent tented tenting tents
test text texted than thank thanks that thaw the their theirs them themselves then theo there
thereabouts thermometer these they thick thicken thickened thickens thickest thin thing things
think thinking third this those though thought thoughts thread threw throat through throw thumb
thyme tick ticked ticking ticks tidying tie tied tight til tiles till tilly tim time timeline
timer timers times timetable timing timings tin tinfoil tinkle tins tiny tip tips tit to today
toddler toddlers together told tom tomasz tongs tonight too took top topped topping tops topside
total totally touch touched touches touching tough toward towel towels town track tractor traffic
tragic train transplant trash travelling tray trays treat trev tribe trick trickle trifle trim
trimmed trimming trip tripped trivet trouble truss trussed trussing trust trusted trying turn
turned turning turns twas twice twine twins tying type typed typo tyre ugh un uncle uncovered
under undercooked underneath understand understanding understood underway undo undue unfinished
units unless unpause unsay unset unusable up update ups upside upstairs urgent us use used
useful using usual usually various vegan vegetable vegetables vegetarian vegetarians veggie
verde versus very vi vinegar visitor visitors volume volunteered vote voted wait waiting wake
walk walkabout walked walking wall want wanted wanting wants war warm warmed warmer warming
warn warning was wasabi wash washed washing watch watching water way ways we weak wean weans
wedding wee weeds week weeks weigh weighed weighs weight weights weird weirdo well wendy went
were whack whacked whadda whaddya what whatcha whatever whatsoever wheat when whenever where
whereabouts wherefore whether which whichever whichevers while whip whipped whisht whisk whisked
whisking whistle white who whole whoosh whopper why wife wiggled wilf will wilsons wilted winced
wind wine winning wins wipe wire wired wireless wise wish with without wobbly woke woman won
wonder wondering wood word words work working works worktop worried worry worse worth would
wouldja wrack wrangle wrap wrapped wreck wrecked wresting wrestle wrist wrists writing wrong
wrote y ya yaar yank yapping ye year years yeast yell yes yesterday yet yoghurt yogurt yoke
yorkshire yorkshires yorkshre you young your yourself yusuf z zero zeros zhoo zip`.split(/\s+/),
);
