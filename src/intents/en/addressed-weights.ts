/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-26 ?talk6
-23 =courtesy:S0
-22 dishwasher tooth ~,_who
-21 =emergency:S0 ~,_off ~,_with ~O_had ~^_her ~any_O ~get_down ~no_i ~that_will
-20 =emergency draw serious ~,_a ~,_says ~,_your ~K_say ~at_K ~is_for ~n_all ~shall_we ~they_had
-19 #words0 =emergency:guess ?talk7 pin poor yours ~,_put ~^_$ ~going_, ~like_mine ~not_you
~you_get
-18 =choose:guess =courtesy =courtesy:phrase ?heard2:guess ?talk5 fair hello judges level loads
pages sugars work ~!_did ~?_it ~and_that ~c_to ~put_that ~some_more ~was_i ~with_U ~you_on
~you_to
-17 #heard0 =choose:S1 =courtesy:some =report-reading:S3 =set-serving-time:S2 answer apparently
bus dress eights glove large linda page park post smoking swimming years yourself ~?_yes ~K_y
~and_not ~and_some ~is_you ~out_by ~says_d ~says_here ~that_U ~that_down ~they_put ~this_for
~to_him ~you_U ~you_done
-16 =describe-roast:guess =emergency:most =note-guest:to-reading =report-not-done:S2 =set-guests:guess
biscuit book booked coffee cookie dublin found funnier group petrol pudding rain service waiter
wedding ~,_here ~O_said ~V_y ~and_get ~for_you ~got_there ~have_you ~he_said ~he_went ~how_did
~it_! ~may_$ ~on_U ~or_the ~out_in ~put_you ~she_never ~then_the ~they_did ~to_her ~where_is
~y_and ~yes_P ~you_do ~you_n
-15 #O3 #guess:S3 =acknowledge =acknowledge:phrase =deny:some ?heard0 argument bathroom blight
boot box brings carpet cats cloudy day feeling hair lives lows million mine number pipes politics
pressure restaurant roll sends served spain speaker speaking taxi yourselves ~,_second ~,_there
~?_U ~K_never ~O_! ~P_did ~S_of ~U_got ~after_me ~all_done ~as_if ~at_her ~at_ours ~do_my ~do_they
~for_c ~had_K ~here_we ~i_$ ~is_was ~is_yours ~n_or ~n_w ~said_no ~she_did ~there_you ~they_let
~took_d ~was_like ~were_n ~y_U ~y_we ~you_$ ~you_have ~you_like
-14 <n:200> <y> =choose:S2 =deny:S1 =quiet:guess =repeat:S3 =start-over:S1 =undo:frame ?talk4
asked child coach college cost counted crying damp essay holidays jack kickoff lisbon loo orange
parking pass programme pumpkin rice scallops scored sent shade spent stir thermostat vicar
whites whoever ~!_you ~,_and ~,_out ~,_then ~,_you ~K_P ~O_are ~P_i ~P_this ~S_, ~S_me ~U_get
~U_since ~V_she ~^_those ~after_you ~all_in ~am_done ~and_let ~and_still ~are_about ~are_for
~at_, ~c_till ~c_w ~could_be ~d_a ~goes_, ~goes_off ~have_another ~it_goes ~like_$ ~my_O ~n_as
~of_this ~out_there ~take_a ~tell_them ~that_O ~them_about ~those_K ~was_d ~went_O ~were_at
~who_V ~will_U
-13 #heard3 =affirm:S2 =correct:S3 =emergency:all =report-not-done:few =report-trouble:guess
=resume:to-step bacon bags baker bank barbecue beach bedroom boils breaking caravan channel
corner daddy dear ella fourth greenhouse heating ladder legs loud march name nose owe paid
perfect porridge question remember shh shuts sugar surgeon tense turn vet village window ~,_must
~,_never ~,_she ~,_their ~?_is ~O_i ~O_out ~^_too ~about_to ~at_P ~been_c ~c_us ~c_your ~can_P
~do_if ~does_O ~does_his ~done_till ~done_you ~gone_out ~got_O ~got_my ~here_i ~him_, ~is_never
~mine_i ~my_first ~n_from ~n_n ~n_second ~not_go ~not_it ~not_so ~on_! ~out_U ~put_your ~says_take
~second_on ~she_had ~she_took ~so_his ~still_in ~then_K ~was_mine ~went_V ~what_an ~what_they
~who_did ~will_get ~yes_a ~you_should
-12 =acknowledge:S0 =acknowledge:S1 =acknowledge:few =add-hands:S3 =affirm:S3 =set-timer:S3
=undo:S1 ?heard0:frame ?talk8 apple batteries blink bridge burns carvery chef couch crewe dum
ends fixed fold frying gentlemen grease hand her home liked limit look lovely manager meter
mooing morning myself neighbour oi phoenix physio pies pizza radio raining recipe rewind row
scary science seen shift sleep stuffing tender these third towels walks week ~!_no ~!_out ~,_ours
~._you ~O_, ~O_O ~O_it ~P_a ~P_for ~S_was ~U_i ~U_there ~U_you ~^_and ~and_by ~does_hers ~done_it
~going_K ~got_d ~her_, ~her_K ~her_P ~in_here ~is_his ~is_t ~more_O ~my_S ~n_P ~n_he ~n_over
~or_till ~out_a ~over_that ~put_out ~say_$ ~says_in ~she_was ~should_get ~since_O ~thanks_P
~the_U ~there_, ~this_the ~to_us ~to_w ~w_for ~was_still ~was_w ~where_the ~who_was ~yes_to
~you_up ~your_O ~yours_$
-11 =correct:few =resume:some ?heard0:guess ?heard1:frame allergic blow blue bye career chefs
choosing contestants died divorce dough drinking easter excuse filled gates gingerbread goals
he hi him horse innings jumper keith lady live load marriage moved mum oh pool queen sandwiches
song starts stayed talks thousand thread who your ~,_after ~,_have ~._P ~._take ~K_did ~O_like
~O_now ~O_we ~O_your ~P_, ~P_K ~P_let ~U_out ~U_says ~V_was ~^_he ~am_n ~am_never ~am_the ~an_O
~and_go ~and_got ~and_here ~and_if ~and_in ~and_take ~and_this ~at_O ~be_there ~before_V ~but_n
~by_y ~c_but ~do_, ~do_mine ~does_he ~done_P ~done_her ~down_now ~in_first ~in_these ~it_a
~it_too ~like_K ~me_done ~me_put ~more_, ~n_U ~never_got ~no_they ~not_S ~of_you ~one_was ~over_,
~over_at ~said_do ~she_said ~then_you ~they_n ~till_O ~till_c ~to_his ~up_in ~was_a ~we_c ~went_to
~will_put ~would_have ~your_K ~your_V
-10 #expecting:false:few =emergency:few =emergency:phrase =report-out:S2 =resume:few =set-serving-time:few
baked beer belt birth blackbirds bottle cheers chestnuts choir cutting dollar except face flight
garden left machine magazine mortgage mummy needs notice online ours pick points quiet ring
roof seriously sheila steak sweetheart taking tens tenth try used wash worth you ~,_can ~,_let
~._U ~?_the ~K_was ~S_? ~U_? ~U_S ~U_after ~U_would ~V_first ~V_who ~^_ours ~are_this ~are_you
~at_your ~but_it ~c_you ~could_have ~did_it ~did_you ~got_more ~got_n ~had_his ~have_d ~here_is
~hers_in ~him_. ~his_U ~in_on ~in_that ~is_why ~it_by ~mine_$ ~n_would ~never_S ~never_U ~of_a
~on_P ~on_i ~one_, ~other_$ ~other_V ~she_c ~so_how ~tell_U ~thanks_for ~then_he ~there_$ ~these_V
~they_O ~to_the ~was_an ~we_could ~we_had ~went_and ~why_is ~would_P ~yet_? ~your_P
-9 <t:200> =ask-options:frame =ask-status:S3 =courtesy:S1 =deny:S2 =lack:frame =report-out:guess
=report-started:S3 =set-guests:S3 ?heard3:guess added arms bag bath beat beautifully benches
beta big boiler breakfast buzzer calling captain card centimetres chairs chapter chemist chocolate
club coats course crispy cry darling days deirdre delayed dollars door dusted es expected fun
gran grandad handle hide highs je lay leeds listen may meeting moon north ollie ovens paper
passing plumber prices quid reindeer remove sat saw season seat small soft spoon spud stew
suis sun tank theirs tu turkey warning white wide ~,_, ~,_that ~K_your ~O_$ ~O_at ~O_he ~O_say
~O_till ~O_were ~P_or ~P_that ~U_$ ~U_do ~U_n ~U_over ~V_before ~^_his ~ago_, ~because_we ~been_taken
~c_my ~can_i ~d_and ~did_hers ~done_? ~done_yet ~down_i ~get_there ~go_and ~gone_up ~had_in
~have_this ~he_K ~he_S ~he_U ~he_did ~he_has ~he_is ~her_off ~hers_at ~is_what ~it_going ~me_,
~me_up ~mine_in ~mine_was ~more_than ~n_O ~n_because ~n_been ~n_c ~n_down ~n_was ~of_my ~of_your
~off_out ~ok_K ~on_his ~on_in ~or_shall ~our_O ~said_she ~said_to ~say_it ~says_no ~she_V ~she_still
~she_would ~so_O ~still_U ~take_O ~tell_your ~that_to ~them_for ~then_we ~there_yet ~they_U
~they_would ~those_U ~up_V ~up_for ~we_did ~what_would ~where_are ~why_do ~would_V ~y_in ~yes_V
~yes_i ~you_so ~you_would ~your_S
-8 #guess:S1 #guess:all <n:999> =acknowledge:S2 =acknowledge:all =choose:most =courtesy:few
=repeat:guess =report-setup:S1 =running-behind:S3 army ate biscuits boys bread broke broken
build caller carol changing chips classic climb clutch colour crisp deck delicious did each
even fizz fortnight front goose hall ham hitting honestly honey inch kick lounge nav nearly
never niamh nice older order owned peeking practice price quite rough salmon she shoulder sign
south spell standing suitcase teacher text thanks time weighs ~,_all ~,_her ~,_our ~,_say ~,_was
~,_we ~._he ~._your ~?_that ~K_about ~K_from ~O_and ~O_going ~O_one ~O_was ~P_$ ~P_c ~P_she
~P_the ~P_you ~S_. ~S_down ~S_you ~U_P ~U_go ~U_now ~U_t ~U_to ~U_w ~U_was ~V_any ~V_put ~V_your
~^_our ~^_take ~^_these ~^_why ~^_you ~after_the ~all_i ~already_? ~am_S ~am_off ~and_you ~another_O
~are_at ~are_these ~at_V ~but_she ~can_have ~d_would ~did_$ ~did_V ~do_for ~done_, ~done_this
~first_, ~from_O ~had_V ~has_P ~he_was ~him_at ~him_in ~i_P ~i_do ~i_like ~i_will ~in_my ~is_your
~it_on ~it_over ~it_took ~me_i ~must_U ~must_be ~n_to ~no_U ~now_on ~of_V ~our_K ~out_! ~out_V
~out_for ~over_there ~say_K ~since_n ~so_for ~some_O ~still_does ~t_and ~tell_her ~than_me
~that_ok ~that_one ~the_O ~the_n ~there_i ~these_K ~they_took ~to_a ~to_c ~to_tell ~too_O ~took_us
~us_the ~was_S ~we_, ~we_were ~were_d ~what_she ~will_they ~with_no ~would_K ~y_$ ~yes_, ~you_,
~you_must ~your_go ~yours_is
-7 #O2 #S3 #U2 #expecting:true:most <n:40> =affirm:few =ask-why:S2 =cook-away:some =quiet:frame
=report-trouble:few =set-doneness:frame =set-guests:to-guests =shift-serving:S3 =undo:few =undo:to-step
another average ball banana bite born burnt careful chair corkscrew council court da de drop
episode every everywhere expenses find finished getting gorgeous high hip hotel new nights
nursery pavlova percent point reach rupees shopping smells sofa sold soled somebody spit tall
through vegetarians weight whenever why worries year zip ~!_get ~,_n ~,_no ~._, ~._no ~?_can
~K_to ~K_you ~O_them ~O_would ~S_said ~U_, ~U_O ~U_or ~V_other ~V_you ~^_she ~^_so ~^_they
~^_where ~^_yes ~all_got ~am_still ~and_does ~any_more ~are_there ~as_i ~at_U ~be_c ~c_in ~c_that
~c_what ~can_U ~does_a ~for_me ~going_$ ~has_got ~have_done ~he_V ~he_does ~he_put ~here_already
~in_U ~in_his ~in_since ~is_down ~is_it ~is_so ~it_n ~it_take ~it_when ~let_it ~like_that ~me_about
~me_take ~me_when ~me_with ~n_can ~n_the ~no_we ~not_do ~not_that ~on_V ~on_and ~one_has ~or_U
~or_do ~or_not ~other_one ~put_me ~put_my ~put_them ~says_$ ~so_. ~thanks_$ ~the_S ~then_she
~there_O ~there_were ~they_K ~they_V ~they_have ~to_your ~us_on ~was_at ~we_went ~when_does
~when_you ~where_does ~with_this ~would_get ~yet_, ~you_can ~you_not ~yours_V
-6 #P2 #frame:S2 =acknowledge:S3 =affirm:S1 =ask-guests:S1 =ask-status:frame =ask-substitute:S2
=choose:few =correct:S1 =emergency:S1 =emergency:S2 =report-out:S3 =report-oven:few =report-oven:guess
=report-reading:to-reading =set-doneness:most =set-timer:guess =shift-serving:most ?heard4:guess
ambulance around ask baby believe best boots both break bucks business called candle capital
cent chicken class cooking done dressing ferry film given goalie guy hook hours january june
kid lemon lick men mother moving music nana ninth once other pay penalty pharmacy prescription
queue radiator raw reads rotten say secret sets seville shakes shelf shop simple sirloin skips
sweet threw toast today top traffic understand weekend whisk wifi wore ~,_first ~,_g ~,_he
~,_his ~,_now ~,_where ~._she ~?_V ~K_a ~K_had ~K_me ~K_them ~O_does ~O_down ~O_have ~O_n ~S_S
~S_c ~U_U ~U_here ~U_in ~U_off ~U_till ~U_us ~V_S ~V_can ~V_does ~V_which ~^_am ~^_are ~^_w
~already_on ~am_all ~am_going ~are_now ~as_c ~be_the ~been_K ~before_O ~but_they ~by_V ~c_at
~can_S ~down_? ~down_V ~for_U ~for_y ~get_a ~get_your ~go_, ~going_up ~got_any ~had_n ~her_$
~her_V ~how_do ~how_was ~in_d ~in_n ~is_about ~is_all ~is_me ~is_mine ~it_said ~let_me ~me_on
~might_do ~n_a ~n_here ~n_when ~never_V ~not_for ~off_$ ~ok_U ~on_, ~said_d ~said_the ~says_S
~says_V ~second_K ~she_put ~the_one ~there_? ~there_now ~they_were ~this_, ~too_K ~up_at ~us_?
~when_the ~will_do ~with_those ~with_your ~would_never ~you_are
-5 ! #O1 #words12 <t:100> <t:550> =add-dish:S3 =add-hands:guess =ask-next:S3 =ask-status:S2
=ask-temperature:S1 =ask-time-left:S2 =ask-time-left:S3 =cancel-timer:guess =correct:some =deny:frame
=help:S1 =pause:guess =report-setup:guess =set-doneness:S3 =set-serving-time:S1 =set-serving-time:to-serving-time
?heard1 ?heard5:guess account again billing bluetooth bob bottles cancel champion cover cupboard
cuts doctor end ever flat gate get glossy goal goes hard homework honest idea imagine knife
late lbw leaves lid lift mama melt milk noah nothing opener party piece potato pub quarter
reduced rent ringing rolling room ruined sausage see shoes soda spelling swear team temperature
there truck tumble underdone was washing weeks weigh were ~!_i ~,_V ~,_could ~,_is ~,_ok ~,_said
~,_tell ~,_yours ~?_d ~?_how ~?_who ~?_you ~K_his ~K_were ~O_a ~O_after ~O_got ~O_is ~O_on
~O_took ~O_will ~U_at ~U_y ~V_are ~V_there ~V_up ~^_of ~^_the ~^_who ~a_K ~after_that ~all_O
~an_K ~and_a ~another_one ~any_V ~are_all ~at_us ~be_a ~been_on ~c_as ~c_c ~d_, ~d_at ~did_a
~do_V ~does_your ~done_the ~have_gone ~her_U ~here_, ~here_if ~hers_out ~him_n ~his_O ~his_P
~how_are ~i_? ~i_said ~if_n ~if_that ~if_the ~in_O ~in_your ~is_any ~is_this ~it_, ~like_S
~n_S ~n_already ~n_and ~n_not ~n_then ~n_they ~not_$ ~of_c ~of_the ~our_V ~out_on ~over_n ~said_never
~said_that ~says_O ~says_a ~says_the ~she_will ~so_she ~still_S ~tell_P ~that_P ~that_c ~that_now
~they_say ~took_out ~up_after ~was_, ~was_from ~we_O ~we_should ~went_off ~what_K ~when_i ~who_do
~why_are ~with_that ~would_take ~yes_! ~yes_U ~you_got ~you_had ~you_in ~you_take ~you_will
~yours_now
-4 =affirm:frame =ask-status:all =ask-substitute:most =ask-why:all =choose =choose:some =drop-dish:some
=emergency:some =report-done:S2 =report-out:S1 =report-reading:S2 =resume:S3 =set-guests:frame
=set-serving-time:guess =skip-step:S2 across allowed because boy brine brisket burn carve caught
cheap check country cousins curry does drawer dropped drums duck finish fire fish folks garage
highway husband joe join judge ketchup kitchen last laugh leave leo lights lock married mean
notch officer our overs packed people picking rested ribeye robot rocks roundabout says send
split stood tea teeth they times toddler tom ugh use wanted winter yes ~,_U ~,_to ~?_no ~K_in
~K_on ~K_t ~O_since ~O_to ~O_y ~P_O ~S_$ ~S_off ~S_to ~U_all ~U_d ~U_your ~V_O ~V_P ~V_for
~V_in ~V_my ~V_or ~^_my ~^_say ~^_second ~^_up ~^_we ~a_P ~and_have ~at_g ~at_you ~be_S ~be_up
~been_O ~before_K ~before_it ~by_a ~c_a ~c_about ~c_the ~can_do ~d_! ~d_w ~do_O ~done_and ~done_with
~down_$ ~down_. ~first_V ~first_one ~for_that ~g_for ~had_O ~had_c ~has_not ~have_all ~have_an
~have_to ~him_off ~him_out ~i_would ~if_i ~in_$ ~in_before ~is_, ~is_another ~is_d ~it_if ~it_says
~let_him ~like_an ~me_P ~n_, ~no_, ~no_O ~now_? ~of_here ~off_O ~off_a ~off_in ~off_you ~one_put
~out_? ~out_he ~over_$ ~put_it ~say_when ~still_, ~still_not ~still_on ~take_n ~that_is ~the_P
~the_other ~them_$ ~them_in ~then_i ~then_what ~they_get ~to_O ~up_with ~w_$ ~w_and ~we_V ~what_the
~when_$ ~where_it ~why_did ~will_c ~yes_O ~yes_n ~you_P
-3 #guess:S2 #guess:most #guess:some <n:12> =affirm:some =ask-amount:S1 =ask-guests:some =ask-how:S1
=ask-options:some =ask-status:some =ask-time-left:S1 =ask-why:most =cancel-timer:S2 =cook-away:S0
=deny:S3 =pause:S1 =report-reading:guess =report-setup:all =report-trouble:S3 =resume:S0 =set-guests:some
=set-guests:to-reading =shift-serving:few =shift-serving:guess =skip-step:guess =unclear =unclear:S0
=unclear:most ?heard0:phrase amazing and arriving as bedrooms below bird blanket boat breathing
bring bucket cake call cards carry chance charge charger chill chooks closed cooked craic crisps
curtains decent drove drummers eats ellie freezing french google ground help his hot instructions
jess knee lands letters light line lived lords marathon marcus maths money move outside pair
papers peru pipers place play preheated priya put puts red remote repeat road roasted sam sandwich
second since single sister skipped solicitor starving staying stone story street switch takeaway
thumb till vents weighed welcome whole wonder yet ~!_that ~,_but ~,_on ~,_should ~,_took ~?_n
~K_by ~K_he ~K_still ~K_that ~K_us ~O_K ~O_c ~O_or ~O_says ~O_that ~P_in ~P_never ~P_we ~U_his
~U_me ~U_one ~V_K ~V_U ~V_at ~V_done ~V_goes ~V_since ~^_does ~^_go ~^_like ~^_no ~^_shall
~all_, ~and_V ~and_he ~and_i ~and_out ~and_she ~any_U ~been_in ~c_and ~c_of ~can_c ~could_K
~could_not ~d_if ~did_U ~did_he ~did_n ~did_she ~did_they ~do_it ~do_not ~down_from ~down_to
~first_O ~first_and ~for_your ~go_by ~got_$ ~got_up ~he_must ~he_took ~her_and ~her_the ~him_$
~him_a ~how_is ~how_to ~i_could ~i_get ~i_might ~in_a ~in_her ~in_i ~in_may ~into_V ~is_the
~it_already ~it_does ~it_out ~it_will ~like_U ~me_n ~mine_V ~mine_out ~my_V ~n_! ~n_we ~n_you
~off_and ~on_c ~one_more ~put_some ~second_V ~she_U ~she_says ~should_take ~so_and ~t_$ ~take_the
~take_these ~take_your ~tell_the ~tell_when ~that_V ~the_second ~there_for ~these_O ~this_is
~too_V ~took_my ~w_n ~was_n ~we_said ~when_did ~who_has ~with_him ~would_you ~y_, ~y_at ~yes_we
-2 #P1 #U1 #expecting:true:few #words7 <n:550> <t:40> =ask-amount:S3 =ask-how:some =ask-next:most
=ask-plan:few =ask-time-left:most =ask-time-left:to-step =cancel-timer:most =correct:most =describe-roast:S1
=drop-dish:S3 =lack:S1 =note-guest:S2 =report-started:frame =report-started:to-reading =resume:phrase
=set-doneness:S1 =shift-serving:S1 =start-over:all ?heard2 ?talk3 alarm alfie all anyone anything
bins boiled boiling chin christening coming cut exit fancy first flip foot for fryer grab guests
hands happening happy hill hits in island kettle knocked la laundry long m mate meet minister
next no options or password pig platform previously pushed ref rung said sale saving set shirt
showing shut sick socks someone son straight substitute sure thing tip to told too touch twice
unbelievable undo up upstairs usual weather went wet ~,_O ~,_got ~,_over ~?_and ~?_i ~K_one
~K_she ~K_up ~O_has ~O_her ~O_him ~P_says ~S_a ~S_from ~U_for ~V_V ~V_had ~V_let ~V_n ~V_of
~V_us ~^_P ~^_d ~^_thanks ~^_that ~^_when ~a_V ~after_K ~ago_V ~and_O ~are_d ~are_the ~as_the
~at_c ~at_it ~because_the ~by_the ~c_$ ~c_if ~c_says ~c_where ~could_V ~d_S ~do_this ~do_you
~does_the ~done_his ~down_for ~first_U ~first_was ~for_V ~for_a ~for_d ~from_here ~go_V ~going_off
~going_on ~got_me ~has_a ~have_had ~have_never ~have_still ~he_O ~he_had ~here_$ ~here_S ~here_V
~i_O ~i_can ~in_S ~in_there ~in_till ~is_how ~is_y ~it_at ~it_done ~me_that ~n_? ~n_by ~n_for
~n_of ~n_up ~n_y ~no_. ~no_P ~no_more ~no_you ~not_get ~not_yet ~now_U ~now_for ~now_i ~of_w
~ok_for ~on_that ~on_the ~on_them ~one_with ~or_K ~ours_at ~out_before ~out_of ~over_my ~said_it
~say_that ~says_you ~so_c ~t_in ~take_it ~tell_him ~that_S ~that_at ~that_your ~their_V ~then_V
~then_it ~there_and ~this_S ~took_a ~took_c ~w_, ~w_? ~where_he ~you_O ~you_it
2 #U0 #frame:some #phrase:S1 #words5 <d> <n:300> =ask-amount:most =ask-amount:phrase =ask-amount:some
=ask-plan:S0 =ask-safety:few =ask-shopping:all =ask-substitute:phrase =ask-temperature:phrase
=ask-why =ask-why:phrase =cook-away:frame =correct =describe-roast =describe-roast:most =drop-dish
=help:guess =note-guest:S0 =quiet =quiet:all =repeat:all =repeat:some =report-guests:S1 =report-not-done:guess
=report-out =report-oven:S0 =report-reading =report-reading:some =report-setup =report-started:few
=report-started:guess =report-started:some =running-behind:guess =running-behind:some =set-doneness:S2
=set-doneness:few =set-guests =set-serving-time =set-serving-time:S3 =set-serving-time:phrase
=shift-serving =shift-serving:S0 =shift-serving:phrase =start-over:S2 =undo:S2 ?heard3:phrase
above against also am american any asleep bad bake block bonfire bowl butcher can cap cook
counting crank dan dave dead different easy eggs everything father fill frankly glass glazed
golden gravy has hear heard hers hold hole how i ice inform jim like likes loaf lumpy manage
must nobody note numbers oat off ones open packet peel plates plus pop pull rare reheat round
sack show smell stand start stop table takes tell telly thought towel units wait what will
~,_did ~,_in ~,_more ~,_y ~K_any ~K_out ~K_there ~O_t ~O_the ~P_S ~P_it ~P_said ~P_to ~S_in
~S_up ~U_has ~U_than ~U_the ~U_with ~V_could ~V_her ~V_off ~V_on ~V_them ~V_too ~V_we ~V_where
~V_yet ~^_a ~^_how ~^_i ~^_will ~a_O ~a_d ~a_no ~about_$ ~all_this ~an_U ~and_they ~and_took
~are_. ~at_n ~at_the ~at_which ~be_V ~but_my ~but_the ~by_K ~by_O ~c_? ~c_can ~can_you ~could_O
~down_, ~down_after ~down_with ~for_her ~for_my ~for_w ~from_n ~from_your ~goes_to ~got_? ~has_had
~have_it ~have_put ~have_the ~here_? ~i_V ~i_am ~i_have ~if_S ~is_V ~is_at ~is_no ~is_on ~is_put
~it_$ ~it_? ~it_V ~it_d ~it_is ~it_more ~it_we ~me_out ~my_U ~my_c ~n_V ~n_after ~n_ok ~not_let
~of_U ~of_n ~off_K ~off_for ~one_$ ~one_? ~or_after ~other_K ~out_, ~out_K ~should_K ~since_y
~so_P ~so_U ~so_go ~some_U ~still_ok ~tell_what ~that_a ~that_in ~that_it ~them_K ~this_K ~those_V
~to_$ ~too_$ ~up_$ ~us_, ~was_$ ~was_done ~was_it ~we_are ~we_took ~were_O ~were_the ~which_V
~will_not ~with_d ~would_a ~y_K ~yet_it ~you_say
3 #K1 #K2 #K3 #O0 #frame:S0 #frame:S3 <c> <n:150> <n:80> <t:150> =ask-amount =ask-how =ask-how:all
=ask-next:to-step =ask-options =ask-options:most =ask-substitute =ask-temperature:few =ask-temperature:some
=ask-time-left =ask-time-left:all =choose:phrase =deny:guess =drop-dish:to-step =forget-kitchen
=forget-kitchen:S0 =forget-kitchen:phrase =lack =lack:guess =note-guest:few =note-guest:phrase
=quiet:few =repeat =report-not-done:frame =report-out:some =report-oven =report-setup:most
=set-doneness:S0 =set-guests:most =set-guests:to-roast =set-serving-time:to-roast =set-timer
=set-timer:all ?heard3:frame ?heard4 ?talk2 adding b baking beef bless browned cleared colander
complete connection consider could creamed crust cup degrees double forever forks frozen girl
glasses gluten granny having heading herb hey hour hungry ji kept mashed message microwave
might mind nursing nut oil option ought overnight pan patels patient pink plan pork rack size
station system taste this touched uncle update upside which whisking wins zero ~,_do ~,_it
~,_or ~,_which ~?_c ~K_V ~K_is ~K_with ~O_P ~O_done ~P_? ~P_have ~P_on ~P_up ~S_can ~S_on ~U_does
~U_if ~U_when ~V_from ~V_get ~V_over ~V_should ~V_some ~V_still ~V_than ~V_till ~^_V ~^_now
~^_out ~^_put ~^_tell ~a_S ~a_n ~after_this ~already_V ~and_K ~and_did ~as_n ~at_this ~be_K
~been_off ~before_$ ~by_now ~c_, ~c_K ~c_on ~c_they ~c_y ~d_K ~d_that ~d_we ~do_K ~do_in ~for_,
~get_O ~get_V ~get_from ~go_. ~goes_on ~going_V ~gone_$ ~gone_to ~got_K ~got_to ~had_the ~has_gone
~have_V ~have_c ~have_with ~here_for ~his_S ~i_tell ~if_he ~in_this ~into_the ~is_in ~it_c
~it_off ~it_was ~me_. ~me_K ~me_now ~me_ok ~more_K ~n_be ~n_more ~n_tell ~never_K ~never_a
~not_on ~not_there ~not_they ~now_$ ~now_V ~now_or ~now_then ~off_since ~ok_? ~on_S ~on_my
~on_with ~out_with ~should_the ~so_S ~so_the ~so_there ~still_V ~t_over ~taken_out ~than_n
~that_K ~that_can ~theirs_at ~them_out ~then_U ~they_, ~this_$ ~this_V ~to_K ~to_get ~to_that
~took_me ~was_c ~was_in ~we_U ~we_have ~were_all ~were_we ~what_, ~what_P ~what_could ~what_have
~when_it ~where_were ~will_K ~will_an ~with_n ~with_the ~would_like ~y_? ~yes_it ~yet_still
~you_V ~you_one ~you_put ~your_U
4 #expecting:false:some #phrase:some #words4 <n:100> <t:300> =add-dish:frame =add-hands:most
=affirm:S0 =affirm:to-confirmation =ask-how:few =ask-next =ask-options:S0 =ask-safety:some
=ask-shopping:S0 =ask-status =ask-substitute:S3 =ask-why:S0 =choose:S0 =choose:all =describe-roast:S3
=describe-roast:phrase =lack:S0 =note-guest:some =pause:few =quiet:S0 =repeat:S1 =repeat:most
=repeat:phrase =report-guests:most =report-guests:some =report-out:few =report-oven:some =report-reading:S0
=report-reading:phrase =report-started =resume:S2 =running-behind:all =set-doneness:to-roast
=skip-step =skip-step:S0 =start-over =start-over:most adults air already altogether anymore
anyway begging beginning bought bump bums bung burned calls cancelled carked carving cauli
checked chilling cloves core cracking creme date dining doing dried drying fella fern fever
fit fix flag flashing fraiche good graham grain grand hats heat helps holler incredible into
jumped knows lard latter letting looking lying ma'am margarine maria middle minimum minutes
more nail nearer need nephew now oven per pie popovers popped potatoes prefer present quantity
reckons risen roads roast ron rubbish rush sense shelves shove solid sour sprout staring status
tin trev under us vinegar written ~,_S ~,_an ~,_for ~,_from ~,_my ~,_the ~,_what ~._all ~._there
~._why ~K_! ~K_$ ~K_for ~K_going ~K_took ~O_U ~O_of ~O_off ~O_then ~P_does ~P_n ~S_P ~S_by
~S_ok ~S_will ~U_it ~U_on ~U_she ~U_up ~V_and ~V_as ~V_been ~V_c ~V_it ~V_me ~V_must ~V_no
~V_says ~V_that ~V_with ~^_do ~^_first ~^_get ~^_let ~^_n ~^_this ~a_y ~about_V ~about_it ~am_at
~and_P ~and_on ~are_in ~as_you ~been_V ~before_. ~before_n ~c_for ~c_t ~c_tell ~c_then ~can_K
~can_take ~could_do ~d_ago ~d_from ~d_on ~did_not ~did_that ~do_? ~does_not ~done_U ~done_V
~done_by ~down_like ~first_K ~from_K ~g_$ ~get_for ~go_O ~got_an ~have_K ~have_got ~have_no
~have_not ~he_will ~in_and ~into_a ~is_a ~is_of ~it_U ~it_now ~it_the ~it_till ~my_K ~n_are
~n_now ~no_V ~no_the ~not_, ~not_O ~not_V ~not_like ~not_take ~now_at ~now_we ~now_you ~of_now
~off_, ~off_is ~off_with ~on_second ~on_you ~or_V ~out_and ~out_it ~over_a ~over_here ~said_.
~second_U ~so_what ~so_you ~some_V ~tell_me ~that_, ~that_on ~the_K ~the_c ~then_, ~they_do
~this_O ~this_one ~to_? ~to_do ~to_it ~took_S ~up_P ~us_and ~went_up ~what_V ~what_is ~when_must
~which_i ~will_it ~will_never ~with_them ~yes_yes
5 #expecting:false:most #heard1 #phrase:S2 <t:25> =ask-amount:few =ask-how:to-reading =ask-plan:phrase
=ask-safety:phrase =ask-shopping:some =ask-status:S0 =ask-temperature:guess =ask-why:S1 =ask-why:guess
=cook-away =correct:S0 =deny:few =lack:to-step =pause:frame =report-done =report-done:S0 =report-done:phrase
=report-guests:guess =report-not-done:to-step =report-out:all =report-reading:to-roast =report-started:all
=report-trouble:most =running-behind =running-behind:S1 =running-behind:phrase =set-doneness:all
=set-guests:S0 =set-guests:few =set-units:all =shift-serving:frame ? ?heard1:guess ?heard5
absolutely alert appointment asks away babysitter battery bay be become bed before between
bits black brought brush butter buttered center checking code correction cow cranked deb decided
deep dental dish drinks driving dropping drops earth extractor faffing fan feet fierce from
further fuse gap go gold goodness ha hen ingredients instant-read knowing lies little looked
lou lucy main market matters mike mince mixer negative office pace parcel parsley pepper picture
ping problem putting rate roar ruin running sauce separator shallots silverside sleeves slide
sous spinach starter starting stuff supermarket tablets teddy thickest together town train
vegetable very wake weights weird whether yoghurt young ~,_P ~,_be ~,_before ~,_how ~,_take
~,_they ~,_this ~._O ~._V ~K_. ~K_K ~K_and ~K_be ~K_does ~K_it ~K_should ~O_. ~O_before ~O_by
~O_for ~P_so ~S_put ~S_that ~S_would ~U_about ~U_took ~V_ago ~V_all ~V_ok ~V_out ~V_why ~^_here
~^_mine ~^_was ~^_with ~after_we ~am_V ~am_c ~an_S ~and_U ~are_out ~as_of ~be_, ~be_? ~be_here
~be_this ~c_V ~c_because ~c_how ~can_not ~d_because ~d_not ~do_c ~do_first ~do_i ~done_that
~down_by ~down_on ~for_it ~get_to ~go_$ ~goes_$ ~goes_with ~got_U ~got_for ~has_me ~have_n
~have_said ~he_c ~here_and ~how_V ~how_the ~i_S ~if_we ~in_with ~is_here ~is_now ~is_out ~is_she
~is_since ~is_to ~is_up ~it_from ~me_at ~me_if ~more_or ~must_the ~n_$ ~n_K ~n_but ~n_go ~n_if
~n_no ~n_what ~not_any ~not_say ~of_his ~off_d ~on_at ~or_a ~or_n ~ours_was ~out_. ~out_d ~out_the
~over_to ~put_in ~put_on ~put_the ~said_, ~second_it ~should_i ~since_U ~so_it ~tell_you ~than_V
~than_we ~thanks_. ~that_you ~the_y ~their_O ~till_K ~to_g ~to_this ~up_now ~up_the ~us_V ~us_d
~us_for ~us_get ~w_of ~we_K ~we_got ~were_U ~what_are ~what_did ~what_goes ~what_should ~when_is
~when_to ~who_can ~will_V ~will_the ~with_P ~with_a ~would_S ~y_V ~you_.
6 #expecting:false:all #frame:few #phrase:most =add-dish:most =add-hands =add-hands:few =ask-guests:phrase
=ask-how:S0 =ask-next:frame =ask-options:all =ask-shopping =ask-temperature:all =ask-time-left:some
=cook-away:guess =cook-away:most =cook-away:phrase =describe-roast:frame =drop-dish:frame =help:all
=help:some =note-guest =note-guest:most =quiet:S1 =repeat:S2 =repeat:few =report-done:S1 =report-done:all
=report-not-done:S1 =report-oven:S1 =report-oven:phrase =report-started:most =report-trouble
=report-trouble:S0 =running-behind:most =set-timer:some =set-units:S0 =skip-step:all =start-over:few
=start-over:frame ?heard4:frame ?heard5:frame ?heard6 ?heard6:phrase actual ago alex bare begin
bigger bother brown c callum care carrying chop christmas coat commands cremated crunchy ditch
drained empty error family feel few flicked football frenched fridge garlic gas grocer hanging
heart instead leather lent longer lost make malt metric missing mixed near netted niece notify
oiled ok onions peeled position preheat pressed processor puffed ray reaching record reminds
rolls root roughed same seats serve sherry softening sorry sounds soup spoil stays steps suggestions
suppose swap teenagers test thinking tilly topside touches walk wasabi won wreck yogurt ~,_are
~,_been ~,_mine ~,_up ~._. ~._K ~._so ~?_? ~K_O ~K_after ~K_all ~K_but ~K_goes ~K_now ~K_ok
~K_take ~O_she ~P_P ~S_K ~S_as ~S_at ~S_do ~S_does ~S_for ~S_w ~U_be ~U_of ~U_who ~V_a ~V_by
~V_went ~V_what ~^_, ~^_could ~^_done ~^_if ~^_ok ~about_with ~all_we ~am_a ~am_gone ~am_in
~and_S ~and_all ~another_d ~are_c ~are_me ~are_n ~as_S ~as_U ~at_all ~be_in ~be_n ~but_we ~by_U
~by_me ~c_are ~c_this ~c_was ~d_$ ~d_are ~d_now ~do_. ~do_now ~do_us ~do_with ~first_$ ~for_all
~for_what ~g_, ~go_K ~gone_U ~gone_for ~had_a ~had_my ~had_no ~he_say ~here_at ~here_the ~how_should
~i_should ~if_it ~if_so ~if_they ~in_. ~in_V ~in_now ~it_P ~it_all ~it_be ~it_have ~like_,
~like_d ~must_i ~n_on ~no_? ~no_not ~not_U ~not_out ~now_and ~now_is ~of_in ~of_us ~ok_that
~on_? ~on_me ~or_down ~out_they ~over_the ~she_goes ~she_is ~should_V ~so_he ~t_, ~the_go ~the_of
~them_d ~them_have ~then_$ ~there_is ~this_d ~to_V ~up_a ~up_like ~up_or ~us_O ~w_V ~went_on
~what_am ~what_for ~what_was ~when_will ~which_K ~which_do ~will_i ~with_their ~would_i ~you_i
7 #guess:few #phrase:S0 #words3 <n:25> =add-dish =add-dish:S0 =add-dish:S1 =add-dish:S2 =add-dish:all
=add-dish:phrase =affirm:all =ask-amount:S0 =ask-next:S0 =ask-status:S1 =ask-substitute:S0
=ask-substitute:all =ask-temperature =ask-time-left:S0 =ask-time-left:guess =cancel-timer =cancel-timer:S0
=cancel-timer:all =cancel-timer:phrase =correct:S2 =deny:to-confirmation =describe-roast:to-roast
=drop-dish:most =help:few =lack:few =lack:phrase =note-guest:S1 =pause =report-done:to-step
=report-guests:S2 =report-oven:to-reading =report-reading:to-confirmation =report-setup:S0
=report-setup:S2 =report-setup:phrase =report-started:S0 =report-started:phrase =report-trouble:phrase
=report-trouble:some =running-behind:S0 =set-doneness:guess =set-method:S1 =set-method:few
=set-serving-time:S0 =set-serving-time:frame =set-timer:S0 =set-timer:phrase =set-units:most
=set-units:phrase =skip-step:few =start-over:some =undo:all =watch:S2 =watch:all ?heard4:phrase
?heard5:phrase about aunty baste basting bear beep behind bet birthday blast bone brussel butternut
carrots carved cauliflower centre clicked daughter dauphinoise doorbell draining dripping drive
ear fall fed feed fell foil forget friend full fussy grandma grill groceries horseradish hotter
immune juice kill kindly knob know leftover luck mass matter meal nagging neither onto pounds
pour properly rescue ribs rope runs salty shape should sides sir sounded spoons squash step
summer talking teach ticking toddlers trick trussing walking wants warming warn whatever wish
yell yesterday yusuf ~,_does ~,_has ~._can ~._d ~._second ~K_U ~K_are ~K_go ~K_got ~K_n ~K_so
~K_they ~O_all ~O_they ~O_this ~P_. ~S_it ~U_. ~U_already ~U_are ~U_can ~U_ok ~V_? ~V_now ~V_theirs
~^_K ~^_U ~^_after ~^_as ~^_be ~^_did ~^_should ~^_there ~^_which ~about_the ~after_, ~after_d
~ago_$ ~ago_and ~all_over ~am_K ~an_V ~and_c ~are_$ ~are_after ~are_on ~are_still ~are_they
~as_a ~be_O ~been_S ~been_at ~been_n ~been_out ~but_why ~by_n ~c_down ~c_n ~c_or ~c_out ~c_there
~c_up ~c_with ~can_go ~can_tell ~could_you ~do_n ~do_the ~done_in ~from_my ~g_. ~get_K ~get_n
~goes_in ~goes_out ~going_to ~got_S ~have_U ~have_taken ~her_S ~here_a ~hers_S ~in_as ~in_at
~in_she ~in_when ~is_P ~it_down ~it_y ~like_my ~me_a ~me_c ~me_the ~more_to ~n_in ~not_c ~not_done
~not_got ~not_more ~not_too ~of_K ~of_it ~off_the ~ok_P ~ok_the ~ok_to ~on_$ ~on_d ~on_g ~on_it
~on_no ~one_for ~one_in ~one_says ~one_that ~one_you ~out_already ~out_what ~over_V ~put_K
~says_n ~should_be ~so_my ~so_put ~so_why ~still_n ~take_K ~than_K ~than_what ~that_do ~the_in
~them_on ~then_O ~there_in ~there_will ~they_said ~to_take ~too_. ~up_as ~up_to ~us_K ~w_K
~we_$ ~we_put ~went_, ~were_S ~what_about ~what_do ~what_will ~you_be ~you_tell ~you_the
8 =add-dish:some =ask-amount:S2 =ask-guests =ask-next:some =ask-options:guess =ask-safety =ask-safety:S2
=ask-safety:all =ask-status:guess =ask-substitute:to-step =ask-temperature:S0 =ask-time-left:few
=ask-why:to-step =cancel-timer:S1 =deny:S0 =describe-roast:S2 =describe-roast:some =help =help:S0
=note-guest:all =pause:S3 =repeat:frame =report-done:guess =report-done:most =report-out:S0
=report-oven:most =report-reading:few =resume:S1 =set-guests:all =set-method:S0 =set-method:all
=set-method:frame =set-method:guess =set-method:most =set-method:phrase =set-timer:frame =skip-step:frame
=watch:S0 =watch:phrase ?heard6:frame ?heard7 ?heard7:phrase after afternoon alongside anywhere
arrive being blank blender boil boss bothering braised bubbling button buy chopped cookies
cooks cooler counter cross dishes display drippings ducking egg everybody failure fallen fat
feeding fergal fewer floss freeze gin grid grown headlines hearing hop imperial include instant
jean job kind lad listening low man match meaning meant measured minds mint misread mute neighbors
odd ounces overcooked overdone overshot parboiled peace planned poked postpone pouring proper
reason regular replace reverse rolled rub ruth salting sauces scrap sear shall shed sheet simplify
slicing so sock sooner speech strong supposed taken thank their thermometer throw touching
twine ups walked wanting watching yelling yorkshire ~._c ~._the ~._which ~K_before ~K_my ~K_said
~K_w ~O_should ~O_so ~S_U ~S_but ~S_says ~S_your ~U_any ~U_down ~V_already ~V_d ~V_do ~V_going
~V_his ~V_like ~V_take ~^_c ~^_can ~^_has ~^_might ~^_not ~about_that ~after_P ~after_U ~all_$
~all_? ~all_K ~all_here ~all_taken ~all_the ~and_how ~and_there ~and_when ~are_not ~at_me ~at_t
~be_at ~be_my ~but_K ~but_not ~c_do ~can_my ~could_i ~do_about ~do_be ~do_what ~down_in ~for_those
~from_this ~go_from ~go_in ~going_for ~got_a ~got_his ~got_no ~has_n ~have_already ~he_got
~her_in ~her_out ~here_till ~here_to ~hers_$ ~how_would ~how_you ~i_after ~is_U ~is_been ~is_too
~it_got ~it_up ~like_V ~me_for ~might_as ~more_V ~more_are ~must_it ~n_have ~not_at ~not_be
~not_in ~ok_it ~on_for ~one_on ~or_S ~over_U ~put_V ~say_they ~second_, ~should_have ~since_d
~so_K ~so_do ~so_this ~so_we ~some_S ~some_of ~t_. ~t_K ~t_out ~taken_the ~taken_their ~tell_S
~that_d ~that_yet ~them_V ~there_not ~this_. ~till_i ~to_put ~took_it ~up_. ~up_from ~us_go
~w_c ~w_no ~we_be ~we_will ~what_O ~what_must ~what_to ~when_he ~when_should ~will_we ~with_$
~with_S ~with_hers ~would_c ~yes_or ~you_?
9 #expecting:true:all #words1 . =add-dish:few =add-hands:phrase =ask-how:most =ask-shopping:phrase
=ask-status:to-reading =ask-temperature:most =ask-why:to-confirmation =cancel-timer:few =cancel-timer:frame
=cook-away:S3 =have =have:all =have:phrase =help:S2 =help:frame =pause:phrase =report-done:S3
=report-not-done:most =report-thermometer:S1 =report-thermometer:most =set-guests:phrase =set-method
=set-method:some =set-serving-time:all =set-units =set-units:S2 =undo:some =watch:most ?heard8:phrase
accidentally along ben browning bumped buzz cabbage climbing clue completed conventional covered
dare delete delivery dial dialled earlier electricity eta f fast figure final fine forward
gave ghee granddad helping herself holiday hush ideas inverter ladies law laws laying leave-in
lifted lino misheard mister motorway much napkins needed overview patting peas persons plate
powder pretend required roasting roommate roughly sage sauna schedule scissors screaming shops
sing skipping smelling sound steeping telling theo think tops tractor volunteered waiting worse
ya ~!_V ~,_w ~,_why ~,_yes ~._$ ~._that ~?_$ ~K_do ~K_done ~K_has ~K_her ~K_no ~K_off ~K_yes
~O_w ~O_went ~P_get ~S_O ~S_are ~S_or ~U_c ~U_we ~U_went ~V_. ~V_he ~V_here ~V_more ~^_says
~^_some ~^_took ~a_w ~after_a ~ago_. ~all_. ~already_K ~am_O ~am_after ~and_put ~another_V
~another_n ~are_U ~are_done ~as_K ~at_that ~be_U ~be_an ~be_gone ~been_a ~but_O ~by_that ~c_by
~c_it ~c_we ~d_already ~d_in ~d_it ~d_off ~done_$ ~done_for ~done_they ~down_d ~for_? ~for_is
~for_t ~g_and ~goes_V ~going_as ~got_the ~has_t ~have_theirs ~her_. ~here_it ~how_$ ~i_U ~i_let
~if_you ~in_from ~into_it ~it_first ~it_has ~it_like ~it_ok ~it_went ~it_where ~let_us ~like_?
~me_an ~me_in ~my_P ~n_is ~n_who ~n_with ~never_going ~no_second ~not_going ~not_tell ~now_n
~now_the ~off_now ~ok_V ~on_a ~over_it ~said_n ~says_. ~should_it ~so_let ~so_yes ~still_K
~t_U ~t_V ~t_now ~take_$ ~take_out ~that_off ~then_n ~there_. ~they_still ~to_you ~up_n ~us_have
~us_in ~we_do ~went_for ~were_not ~what_all ~where_i ~who_are ~why_can ~why_it ~would_U ~you_S
10 #phrase:all =add-dish:guess =add-hands:S1 =ask-how:frame =ask-options:phrase =ask-plan =ask-plan:all
=ask-substitute:some =choose:frame =cook-away:S1 =drop-dish:S1 =drop-dish:guess =report-guests
=report-out:phrase =report-setup:few =report-thermometer =report-thermometer:phrase =skip-step:phrase
=watch ?heard8 ?heard8:frame ?heard8:guess ?talk0 balls beans bit blew bones brb brussels children
choices coeliac cold collect conked crackling cylinder dairy dinner drink edges evening everyone
eyes feels forerib forgot grams gratin grey happen hope house huh internal invite keep later
lie messages moment most n nap necessary nudge nudged overwhelmed pastry person progress puddings
rang remaining resting rib rise rock rosy scraping screen slid somehow sprouts switched temple
tie tiny turned vegetables voted whatsoever wireless wood working worried wrong ~,_am ~,_d
~,_gone ~,_of ~,_so ~K_? ~K_S ~K_as ~K_down ~K_like ~K_will ~O_already ~O_another ~O_from ~O_what
~P_can ~P_with ~S_V ~S_and ~S_so ~U_by ~U_hers ~U_how ~U_so ~U_them ~V_because ~V_how ~V_took
~V_were ~^_from ~^_till ~ago_it ~all_of ~already_n ~am_not ~and_now ~are_O ~are_here ~as_is
~at_now ~c_like ~c_not ~d_for ~d_i ~did_get ~do_$ ~do_one ~done_all ~done_what ~down_! ~down_c
~down_n ~for_S ~from_me ~from_there ~go_up ~goes_over ~going_O ~gone_O ~gone_d ~gone_from ~got_V
~got_her ~has_V ~has_to ~have_any ~have_some ~here_with ~how_am ~i_K ~i_be ~i_took ~in_to ~in_w
~in_yet ~is_. ~is_more ~it_and ~it_go ~it_how ~it_would ~like_c ~like_the ~like_this ~me_V
~my_in ~n_. ~n_out ~n_since ~never_said ~no_c ~not_K ~now_. ~now_it ~of_d ~of_her ~off_. ~off_n
~ok_do ~ok_what ~on_K ~on_now ~on_till ~on_we ~or_? ~or_should ~or_what ~put_n ~say_a ~shall_i
~since_c ~so_i ~so_like ~still_did ~take_them ~take_this ~than_that ~that_should ~the_d ~their_S
~them_down ~them_off ~they_are ~they_will ~this_? ~to_S ~to_me ~up_so ~w_O ~we_going ~we_like
~we_shall ~went_in ~what_? ~what_i ~what_now ~what_were ~where_to ~why_V ~with_it ~would_the
~y_. ~yes_? ~yes_K ~yes_no ~you_were
11 <g> =add-hands:S0 =ask-amount:all =ask-guests:all =ask-how:guess =ask-status:phrase =ask-substitute:few
=cancel-timer:some =choose:to-choice =have:S0 =have:most =quiet:some =report-guests:S0 =report-oven:S3
=report-oven:to-step =report-trouble:S1 =skip-step:most =undo:phrase ?heard7:frame ?talk1 afresh
aiming allergies amount assisted aunt aunties beeped beg calibrate celiac celsius clock coast
comes cooling cope current dine enough everythings fillet flames footy fresh fully fyi grandpa
heads helper hit holding inside jar joining keeping kev killing knock lend loin lose lowest
lumps mains mark mash miles mustard none nuts obviously own pending picked planning possibilities
possible preheating prime quick rather ravi reading reckon roots saying scrubbed shoved shower
slow something soon stabbed stick talk tenderloin tins tongs trimming type uncovered walls
woke worry yank ye yorkshires ~!_K ~._how ~._not ~._w ~K_first ~K_have ~K_our ~K_then ~K_yet
~O_S ~O_do ~O_goes ~O_me ~S_n ~S_yet ~U_no ~V_go ~V_got ~V_if ~V_one ~V_their ~^_all ~^_in
~^_us ~a_c ~after_V ~all_V ~all_they ~already_and ~already_the ~and_my ~any_K ~as_in ~be_for
~because_it ~because_of ~before_d ~before_that ~but_P ~c_me ~c_when ~can_it ~could_we ~d_can
~d_n ~d_so ~does_K ~does_n ~done_. ~down_at ~first_n ~get_out ~go_c ~have_$ ~have_her ~he_says
~her_at ~hers_, ~his_at ~how_on ~how_they ~i_done ~i_go ~i_had ~i_never ~if_there ~in_K ~is_an
~is_my ~is_ok ~is_over ~is_second ~it_as ~it_in ~it_not ~it_still ~like_to ~me_$ ~n_d ~n_too
~never_did ~no_n ~no_thanks ~not_. ~not_? ~not_have ~not_put ~of_S ~of_that ~on_let ~on_then
~out_do ~out_to ~over_w ~said_there ~say_. ~second_$ ~she_does ~so_$ ~so_they ~still_to ~t_on
~them_O ~them_can ~them_is ~there_any ~there_are ~there_it ~till_my ~to_go ~to_our ~to_t ~took_her
~up_i ~us_a ~us_not ~w_not ~were_V ~when_d ~when_do ~who_does ~why_does ~why_must ~will_that
~would_n ~you_a ~you_when
12 #words2 =add-hands:some =ask-safety:guess =ask-substitute:guess =ask-temperature:S2 =deny:to-step
=drop-dish:all =help:phrase =note-guest:to-doneness =report-not-done:to-reading =set-serving-time:most
=set-units:few =set-units:frame =set-units:guess =set-units:some =undo:S0 =watch:frame =watch:guess
allergy aluminium approximately arse becoming bench bin breath bridie brining brother clean
climbed completely continue e eat element fetch fingers flickered gang girlfriend grace grandmother
guest halal happens hendersons hovering including instruction itself jo keeps kilos knots lactose
life living lowered mad method mhm miss murder nervous nowhere onion palaver pale pat pipe
plated range reset rob rose sea silence sizzling skillet slices slipped sorted sticker store
stove tent thin timeline topped typo whip wife wipe wire ~,_because ~,_thanks ~._and ~._my
~K_already ~K_if ~K_not ~K_or ~K_we ~K_when ~O_with ~P_do ~P_took ~P_were ~S_this ~U_K ~U_before
~U_from ~U_that ~U_will ~V_after ~V_am ~V_not ~^_already ~^_another ~^_any ~^_before ~^_since
~^_them ~^_y ~after_all ~after_i ~after_it ~all_that ~all_too ~am_d ~are_already ~are_down
~are_off ~as_it ~as_my ~at_? ~be_out ~c_O ~c_have ~c_now ~can_be ~can_we ~d_before ~d_is ~d_like
~d_more ~did_i ~do_U ~do_we ~down_a ~down_as ~down_is ~for_another ~for_this ~going_out ~got_here
~got_it ~has_the ~have_S ~here_. ~here_but ~here_d ~hers_K ~how_K ~how_this ~how_we ~i_put
~i_still ~i_take ~is_her ~is_them ~is_with ~it_for ~it_or ~it_should ~it_so ~it_to ~let_the
~like_O ~like_a ~me_so ~me_till ~more_$ ~n_how ~n_like ~no_do ~no_no ~not_gone ~now_what ~of_what
~off_so ~on_to ~one_i ~or_did ~or_no ~our_S ~out_like ~out_since ~over_? ~put_d ~second_. ~second_from
~shall_be ~so_is ~so_no ~so_take ~still_$ ~still_c ~that_. ~that_and ~that_has ~there_V ~there_another
~they_c ~this_at ~this_out ~till_they ~till_we ~to_P ~to_have ~to_my ~up_and ~up_by ~was_not
~was_that ~we_go ~we_up ~what_if ~when_can ~when_they ~where_V ~will_go ~will_let ~would_go
~yes_do ~yet_. ~yet_V ~you_said à
13 =ask-guests:S0 =ask-guests:most =ask-plan:S1 =ask-plan:guess =ask-safety:most =correct:to-confirmation
=deny:to-choice =note-guest:frame =pause:S0 =pause:some =report-out:to-step =report-started:to-step
=report-trouble:frame =running-behind:S2 =set-units:S1 able ay backs bailed bang bean blade
bloody boned boneless crept cried deglaze dog doneness faff fahrenheit food forgotten hang
herbs joint lagging leaving lit makes making mouths na neighbours nip nor nora offered parchment
parsnips plow poke practically ran roaring roped rosemary seared sec sharp shellfish shoot
showed shows sink sitting situation smoke speak speed squeaky steady strike thyme tied tough
tray turns vegan whacked wine worktop ~,_. ~,_as ~,_by ~,_too ~,_will ~K_can ~K_here ~K_i ~O_but
~O_can ~O_d ~O_up ~P_who ~S_has ~S_with ~U_have ~U_like ~V_did ~V_our ~V_yes ~^_at ~^_going
~^_still ~^_to ~after_$ ~already_, ~am_U ~and_are ~as_we ~been_U ~before_, ~before_the ~by_S
~d_. ~down_would ~first_then ~for_how ~for_them ~from_now ~g_now ~get_here ~gone_, ~have_a
~here_now ~how_it ~i_is ~i_was ~is_taken ~it_. ~it_S ~me_how ~must_V ~n_has ~n_there ~n_where
~no_go ~not_i ~not_me ~now_t ~of_those ~off_my ~ok_$ ~on_so ~one_second ~out_when ~put_a ~said_$
~say_n ~says_U ~says_on ~says_t ~says_w ~second_of ~since_i ~taken_it ~that_$ ~that_i ~that_was
~then_a ~there_d ~this_up ~those_$ ~to_no ~up_does ~us_do ~w_it ~w_with ~was_off ~we_must ~we_take
~when_V ~when_she ~where_do ~yes_so ~yet_i ~yet_the
14 =add-hands:S2 =add-hands:frame =ask-amount:guess =ask-guests:guess =ask-how:S3 =ask-next:S2
=ask-next:all =ask-safety:frame =ask-shopping:S1 =ask-shopping:most =ask-substitute:S1 =ask-why:frame
=note-guest:to-guests =quiet:phrase =repeat:to-confirmation =report-guests:few =report-guests:phrase
=set-guests:to-confirmation =skip-step:S1 =watch:some accident aim asking auntie bairns batter
beautiful behaving bottom bringing cast change chopping delay dentist edge electric extra eye
far gratins hood intolerant kiddies kip leftovers missus peeling pete rail rarer remind reminders
rental right scratch setting skin sleeps squeamish stage stopped strained ticked tiles timers
trussed tyre unpause wind wise wrapped yoke ~,_me ~._what ~._when ~?_my ~K_am ~K_d ~K_how ~O_let
~P_U ~P_he ~P_put ~P_will ~S_here ~S_over ~S_than ~S_the ~U_but ~V_hers ~V_into ~V_will ~^_for
~^_g ~^_never ~^_would ~a_second ~after_n ~all_going ~all_n ~am_up ~and_what ~are_a ~are_up
~be_too ~before_? ~but_V ~c_. ~c_d ~c_over ~c_will ~d_after ~d_the ~do_that ~does_V ~does_this
~first_at ~going_in ~gone_V ~has_$ ~has_U ~him_to ~i_got ~i_must ~i_on ~i_say ~in_no ~in_some
~is_after ~is_w ~it_O ~it_had ~it_yet ~like_it ~like_we ~like_you ~me_d ~me_my ~me_some ~me_what
~no_$ ~not_what ~now_so ~off_it ~on_this ~other_. ~other_O ~out_now ~say_? ~say_in ~say_so
~that_be ~that_n ~that_w ~that_went ~there_a ~there_has ~us_n ~w_so ~was_my ~we_? ~we_can ~what_does
~why_n ~would_be ~would_that ~yes_go ~you_what
15 =ask-options:few =ask-plan:frame =ask-temperature:frame =ask-time-left:frame =cook-away:S2
=correct:to-choice =help:most =report-guests:S3 =resume:guess =running-behind:frame =set-timer:few
=set-timer:to-reading =shift-serving:some =watch:S1 alternatives beauty board control convection
countdown drowning frail frenching friends giving great headcount himself iron latest marks
meets missed mistake muffin nipping part peeler pot prepone rests rid salted searing shout
simmering spot stands stepping string supper tailed themselves thick total trifle twins using
veggie ~K_till ~P_are ~P_but ~P_down ~P_from ~S_out ~U_! ~^_down ~^_off ~^_t ~any_S ~any_other
~at_$ ~be_d ~be_done ~been_put ~can_$ ~can_V ~d_U ~does_that ~done_here ~down_yet ~for_now
~for_us ~from_V ~how_can ~i_already ~in_all ~is_g ~is_off ~it_that ~it_you ~me_? ~n_it ~not_before
~now_till ~ok_, ~on_or ~or_so ~say_V ~says_to ~should_he ~still_O ~that_all ~them_. ~till_the
~too_, ~up_? ~us_. ~w_. ~we_ok ~what_S ~which_O ~would_it ~you_K
16 <t:12> =affirm:guess =ask-plan:most =ask-plan:some =ask-status:few =correct:all =deny:all
=note-guest:S3 =report-trouble:all chemo chuck cooker correct dangerous free jus kids killed
label lads looks mo och others passed peek pet places pulling racket resume righto saignant
seasoned short sliced suggest tap tenderised tented totally trimmed truss turning un vegetarian
warm whisht winning ~P_was ~U_said ~V_t ~^_have ~^_me ~about_d ~am_here ~am_on ~and_her ~for_to
~has_K ~in_their ~it_do ~me_and ~me_of ~n_about ~n_so ~no_it ~now_S ~out_yet ~put_S ~should_not
~so_, ~so_n ~that_from ~up_my ~us_this ~was_out ~we_at ~where_should ~why_K ~why_so ~you_no
17 <t:80> =ask-options:to-choice =ask-safety:S0 =report-guests:all =report-not-done:all =running-behind:few
alternative app begun blackout bleeding cable creeping either exactly explain grated halfway
happened hon loosely lower noise olive opened popping removed slower slowly such texted tripped
tying whipped ~!_! ~,_$ ~,_one ~._i ~P_at ~V_! ~^_got ~as_before ~at_what ~before_i ~but_i
~go_out ~go_with ~have_i ~is_already ~n_my ~n_this ~never_put ~not_we ~ok_i ~says_it ~she_can
~that_the ~us_now ~would_say ~yes_$ ~yet_to ~you_for
18 =ask-how:S2 =ask-next:to-choice =ask-options:S2 =ask-plan:S2 =ask-why:some =lack:all =undo:guess
ages beeping bout duty hob ill least months pardon pregnant real while ~d_too ~is_there ~no_how
~on_. ~out_so ~so_that ~still_at ~than_i ~up_when ~what_$ ~why_am ~why_that
19 =ask-next:guess =ask-options:S1 =cook-away:few =pause:most =shift-serving:S2 changed crumble
jump stuck tick washed works wrote ~,_would ~K_this ~V_about ~V_say ~^_were ~already_in ~am_out
~before_we ~how_does ~it_t ~up_where
20 =affirm:most =cook-away:all =start-over:S0 horses ignore phone things ~V_would ~^_gone ~^_had
~c_i ~for_P ~is_when ~n_i ~we_on ~we_still ~where_we ~why_not ~will_you
21 =note-guest:guess =report-not-done:to-confirmation boyfriend crack english flu kosher push
shy stock ~go_for ~n_still ~off_to
22 =ask-status:most =correct:guess beast invited less wee ~S_i
23 =lack:S3 needle ~will_take
24 ~are_S
25 =resume:all =resume:most ~yes_that
28 =ask-why:few`;

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
  `a abeg abide able abort about abouts above absent absolutely abuela accent acceptable accident
accidentally accompaniment achieve act acting actual add added adding adjust adults advise
afraid afresh after afternoon again against age aged ages ago agrees ahead ahmed aid aim aiming
air airport aisle ajar alarm alcohol alert alex alight all allergic allergies allergy allowed
almost alone along alongside already also alternative alternatives altitude altogether aluminium
always am amandine amazing american amount amy an ana anchovies ancient and anil announcements
announcing another answering any anybody anymore anyone anything anyway anywhere aperitif app
apparently apple appointment approximately apricots apron are arguing arm around arra arrive
arrived arrives arriving arrowroot arse arseways as aside ask asked asking asks asleep asparagus
assembled assign assisted assumes at ate attention aunt auntie aunties aunty autocorrect ava
available average aw away awful awfy ay ayuh b bab babak baby babysitter back backofen backs
bad badly bag bailed bairn bairns bake bakery baking ballet ballpark balls bang banging banjaxed
bank bar barbecue bare basket baste basting batch bath bathing batter battery battle bay be
bea bean beans bear beast beat beautiful beautifully beauty became because become becomes becoming
bed bedlam beef been beep beeped beeping beer beets before beforehand beg began begged begging
begin beginning begun behaves behaving behind being belay believe bell belly below ben bench
benefit benji bent bernard bert beside besides best bet beth better between bev beyond bhaiya
big bigger bill billowing bin binning bins bird birds birthday bit bits black blackout blade
blank blast blather blazing bleeding bleeds blender bless blethering blew blinked blinking
blistering block blocked blood bloody blowing blown blue bluetooth board boat bob boeuf boil
boiling boils bone boned boneless bones bonfire bonjour boot boots border bored borrow boss
bossy both bother bothered bothering bottle bottom bought bout bowl box boxed boy boyfriend
boys braised brb bread breads break breaker breath breathe breather bred brew bridie bring
bringing brining broiler broke broken brother brought brown browned browning brush brussel
brussels btw bubbling bucket bucks budged building built bum bump bumped bums bunch bung bunged
burn burned burner burners burning burns burnt bus business bust busy but butcher butter buttered
butterflied buttering butternut button buy buying buzz buzzer buzzing by bye bypass c cabbage
cable cake caleb calibrate call called calls callum calmer came can cancel canceled cancelled
candles cap car caramel caramelised care careful cares carked carload carol carries carrots
carry carrying carryover carton carve carved carving casserole cast cat catch catched caught
cauli cauliflower cautious celiac celsius center centre cerys chair chance change changed changing
charge chasing chatter cheap cheats check checked checking cheddar cheers cheese cheesecake
chef chemo cher chest chewing chewy children chill chilling chimney chip choice choices choking
chooks choose choosing chop chopped chopping chris christmas chronic chuck chucked church chutney
cider ciggies circling circulation circumstances claims clay clean cleaned cleaning clear cleared
clever clicked climb climbed climbing climbs clock clogs close closed cloves clue coast coat
coats cobber cocked code coeliac coffees colander cold colder collapsed collapsing collect
colour come comes coming commands commenced commit company compared complete completed completely
compound conked connected connection cons consider continental continue control convection
conventional convert cook cooked cooker cookies cooking cooks cool cooler cooling cools cope
cord core cores cork corkscrews corn corner cornered cornflour correct correction couch could
count countdown counted counter countertop counting country counts course cousin cousins cover
covered cow crack cracked cracking crackling crackly craic craig cranberry crank cranked cranking
cranky crap crawled cream creamed creamy creeping cremated creme crept crew cried crimbo crime
crisp crispy cross crowd crowds crumble crunchy crust cry crying crème ctrl cube cubes cup
cupboards cups curdled curious currant current cut cutted cutting cylinder célia côte d'ye
d'you da dad daddy daft dairy dale dan dang dangerous dans dare dark darling date dates daughter
dauphinoise dave day days de dead dealt dear deb decent decided deciding deck declan deep deepest
deglaze deglazing degrees delay delayed delaying delete delivery demanded den dental dentist
department derek des detector dev dey diabetes diabetic dial dialled diamonds diaper did died
dietary difference different differently digging dijon dine diner ding dining dinner dinnertime
direction directly disaster disclosure dish dishes dishwasher dishwater display disposable
disregard distracted disturb ditch ditched do doable doctor does dog dogs doing don'tcha dona
done doneness door doorbell doors dot double doubtful dough down dragging dragon drained draining
drank draped draw drawer dressed dried drink drinkers drinking drinks dripping drippings drips
drive driveway driving drop dropped dropping drops drowning drum drunk dry dryer drying duck
ducking due duluth dusted dusty duty dying e each ear earlier earliest early earshot earth
easiest easter easy eat eaters eating eats edge edges egg eggs either elbow electric electricity
electrics element elias ellen ellie else embarrassing empty emre enamel end ends english enough
entire entirely entry epipen error essen et eta european even evening events ever every everybody
everyone everything everythings everywhere ex exactly examples except exchange excuse exist
expect expecting explain explanation extinguisher extra extracted extractor eye eyeing eyes
f face faff faffed faffing fahrenheit failure fainted fair fall fallen family fan fancy far
farouk fast fat father fatima favour fear fed feed feeding feel feels feet fell fella fellas
fergal fern ferry fetch fever few fewer fierce fight fighting figure fill fillet filling film
final find finding fine finger fingers finish finished finishes finn fire firehouse first fit
fits fix flag flame flames flash flashing flask flat flatmate flatmates flew flick flicked
flickered flight flip flipped floor floss flour flower flu foil folks following food fool foot
football footy for forerib forever forget forgot forgotten fork forks former fort forward found
fraiche frail frankly fraîche free freeze freezer french frenched frenching fresh freya fridge
friend friends frog from front frozen fruitcake frying full fully fumes fun funny furniture
furry further fuse fussy fyi gabbing gain game gander gang gap garage garden garlic gary gas
gash gasping gatineau gauge gave geelong generous gents german get gets getting ghee ghosts
gifts gil gin girl girlfriend give given gives giving gizmo glass glasses glazed glazing glory
glove gluten gnaw gnawing go gob god goes going gold golden gone good goodness goose gorgeous
got grab grabbed grace graham grain grams gran grand granda grandad granddad granddads granddaughter
grandma grandmas grandmother grandmothers grandpa grandparents grandpas granny grape grate
grated gratin gratins gravy grease greased great greek green greet greg greta grew grey grid
grill grocer groceries ground growing grown grownups grows gruyère guess guest guests guidance
guide gun guy gym ha haan had hadad hair halal half halfway hall halved hamish hana hand handed
handful handheld handle hands hang hangin hanging hannah happen happened happening happens
happy hard harm has hassle hate hates hats hauled have having hazard he head headcount heading
headlines heads heaped hear heard hearing heart heat heathens heating heats heavens heavy heck
held hello help helped helper helping helps hen hendersons hens her herb herbs here hers herself
hey hi high hilarious him himself his hit hits hitting hives hob hoicked hold holding hole
holiday holler holyhead home homemade hon honest honestly hood hook hoover hop hope hopping
horror horseradish horses host hot hotter hour hours house household hovering how huh hundreds
hungry hunnerd hurt husband hush i ice icebox id idea ideas idiot if ignatius ignited ignore
ill immune immunity imperial important imran in inch include including incredible india ines
inform ingredients ingrid injection inner inside insisting insists instant instant-read instead
instructed instruction instructions interchangeable internal interstate into intolerant inverter
invitation invite invited involved iron is it items itself jaccarded jaggery jam jar jaysus
jean jeez jelly jenny jess jesus jet ji jiffy jim jo joan job jobs jodie joe johnsons join
joined joining joint jonah joneses jose joy judge juice jump jumped jumping jumps jus just-now
justify kaputt karen kate keen keep keeping keeps kegs kelly kept kern kernel kettle kev kevin
kick kiddies kidney kidneys kids kill killed killing kilo kilos kind kindly kip kiri kitchen
knife knitting knives knob knock knocked knot knots know knowing known knows kosher kowalskis
kumara la label lack lacks lactose lad ladies lads lagging laid lamb lamberts lammkeule land
landed lands laps lard larder lasagna last late later latest latter laughing law laws lay laying
layla leadville leaflet leah leaning learned least leather leave leave-in leaves leaving leeds
left leftover leftovers leg lemon lend lending length lent leo less let letting levels liam
lick licked lid lie lieke lies lieu life lift lifted lifting light lights like liked likely
likes lily line lino lips lisa list listen listening lit little littlies live living lizard
load loaf lodger log logic loin long longer loo look looked looking looks loops loose loosely
lord lorry lose losing lost lot lottie lou loud louder lounge love lovely lovers low lower
lowered lowest lucia luck lucy lumps lumpy lunch lying läuft ma'am mad made madre main mains
make makes making malt mama man manage mandoline manual many marching marco marcus margarine
marge marguerite maria marinade marisol mark market marks marta mash mashed mass match mate
mates matter matters maureen mavis max may maybe me meal mean meaning means meant meantime
meanwhile measure measured measurement measurements measuring meat mechanically medium mediums
meets mei melt melting members mention mentioned menu mess message messages messing met metal
method metric mhm mick microwave middle might mike mile miles milk milking milks mill mince
mind minding minds mine minimum mint minutes miracle miracles misheard misprint misread miss
missed misses missing missus mistake mister mitt mixed mixer ml mo mob mode model moira mom
moment mommy moms money monkeys monster month months mooing mopping more morning most mother
motorway mouldy mouth mouths move moved moves movie moving mrs much mucking muffin mum mummy
murder mush must mustard mute mutton my myself mía n na nadia nagging nail name names nan nana
nap napkins napped ne'er near nearer nearly neat necessary necks need needed needle needs negative
neighbor neighbors neighbour neighbours neither nelly nephew nervous netted never new news
next ngozi niamh nice niece night nil nip nipped nipping no noah nobody noise none nor nora
normal normally not notch note nothing notice notifications notify notion now nowhere nudge
nudged nuisance numb number numbers nursing nut nuts o oat obviously och oclock odd of ofen
off offer offered offering office offie oh oil oiled ok oksana old oldest olive omar omit on
once one ones onion onions online onto onwards opal open opened opposed option options or order
orders oregano original orla other others otherwise ought ounces our ours out outside outta
oven ovens over overcooked overdoing overdone overnight overshot overview overwhelmed ow owen
own owned ox pace pacing package packed packet pains pair pal palaver pale palm palms pan panel
panic panicked pans papa paper paperwork parboil parboiled parcel parchment pardon parents
parked parking parsley parsnips part party pass passed passes passing past pastor pastry pat
patels patient patients patted patting pauline pause paws pay paying peace peaked peaks peanut
peas peek peel peeled peeler peeling pen pencil pending people peoples pepper peppered per
perched person persons pescatarian pet petal pete petra phew phone pick picked picking picture
pie piece pieces pills pin pinch ping pinged pink pinker pipe pitch pitching place places plain
plan plane planned planning plans plate plated plates plating platter play plenty plot plow
plumber plus pm point pointing pointless poisoning poke poked polish poorly pop popovers popped
popping pork porky portion portions position posses possess possibilities possible postpone
pot potato potatoes pounds pour poured pouring powder power practically practice prayer pre
prefer preference prefers pregnant preheat preheated preheating prep preparation prepared prepone
present presents press pressed pretend pretty price prime print printed priya probe probed
problem procedure proceed processor progress proofing proper properly proportions propped propping
pros proved proving pub pudding puddings puffed pull pulled pulling pumping pumpkin purchase
pure purple purpose push pushed put puts putted putting quantity quarter quick quicker quickly
quid quiet quieten quite rack racket radiant rail raised raj rajiv ran rang range rare rarer
rate rather ratio ravi raw ray reach reached reaches reaching reaction read reading readings
reads ready real reason reasoning recall recked reckon reckons recommend record recruit red
reduce reduced reducing reduction reed reflection refreeze refrigerated refuse regular reheat
relatives relight religion remain remaining remember remind reminder reminders reminding reminds
remove removed rental repeat rephrase replace replaced replacement report requested required
requiring rescue reset rest rested resting restore rests resume retard reverse revert rewind
rib ribeye ribs rice rich rid right righto rimmed ring ringing rings ripper rise risen rising
risk rite road roads roar roaring roast roasted roaster roasting rob rock rocked rocks roles
roll rolled rolling rolls ron room roommate root roots rope roped rory rose rosemary rosy rosé
rotten rough roughed roughly round roux rub rubbed rubbish ruin ruined rump run rundown rung
running runny runs rush rusted ruth s'pose sack sad sadly safe safely safest safetys sage said
saignant sake salad salon salsa salt salted salting salty salvage sam same sandwiches sanjay
sat sauce sauces sauna save saving saw say saying says scalded scalding scale scalloped schedule
schmest school scissors score scored scoring scotch scout scrambled scrap scraped scraping
scratch screaming screen scrubbed sea sean sear searched seared searing seasoned seasoning
seated seats seawater sec second see seeing seem seems seen send sends sense separate separator
sequence serious serve served service serving sesame set setting settle shake shaken shaking
shall shallots shallow shape shaped share shares sharons sharp shave shazza she shed sheet
shelf shell shellfish shelves sherry shh shift shirt shit shoe shoes shoot shop shopping shops
short shortly shot should shout shouting shove shoved show showed shower showing shown shows
shredded shush shut shy sick side sides sidetracked sidewalk sieve sigh sign silence silent
silver silverside silverskin simmering simmers simple simplify since sing single sink sinking
siobhan sir sirloin sister sit sitrep sits sitting situation size sizzling skillet skimmed
skin skip skipped skipping slack slate sleep sleeping sleeps sleeve sleeves slice sliced slices
slicing slid slide slimy slipped slipping slips slow slower slowly small smashing smeared smell
smelling smells smoke smokes smoking smoky snow so soaking sock sodium sofa soft softening
soggy sold soles solid some somebody somehow someone something somewhere son soon sooner soonest
sorry sort sorted soufflé sound sounded sounds soup sour sous space spare spark speak speaking
special speckled speech speeches speed spell spices spilling spinach splashed split splitting
spoil spoils spoke spoon spoons spot spots spouts spreading sprigs sprout sprouts spud squash
squeaky squeamish squeeze stabbed stage stairs stale stand standing stands staring start started
starter starters starting starts starving state station status stay stayed staying stays steady
steak steam steamed steaming steeping step stepping steps steve stewed stick sticker still
stir stirring stitches stock stone stones stood stop stopped stopwatch store story stove straight
strained straining strait strays streaming street stretch strictly strike string strings strip
striploin stripped stroller strong strongly struggling strung stuck stuff stuffed stuffing
sub substitute such sugar suggest suggestion suggestions suit sulk summarise summer sun sunflower
sunk supermarket superstition superstitious supper support suppose supposed sure surely sushi
suspend swap swear swears sweet swell swelling swells swimming switch switched switching swollen
system table tablespoon tablet tablets tackle tad tail tailed take taken takes taking talk
talked talking tama tap target tariq tasks taste tasted tastes tea teach team tearing tears
teaspoon teaspoons technique teddy teenagers teeth telephone telephoned tell telling tells
telly temperature temple tenderised tenderloin tent tented tenting tents tepid test tested
text texted than thank thanks that thaw the their theirs them themselves then theo there thereabouts
thermometer these they thick thicken thickened thickens thickest thin thing things think thinking
third this those though thought thoughts thousand thread threw throat through throw thumb thyme
tick ticked ticket ticking ticks tidying tie tied tight til tiles till tilly tim time timeline
timer timers times timetable timing timings tin tinfoil tinkle tins tiny tip tips tit to today
toddler toddlers together told tom tomasz tomek tongs tonight too took top topped topping tops
topside toronto total totally touch touched touches touching tough toward towel towels town
track tractor traffic tragic train transplant trash travelling tray trays treat trev tribe
trick trickle trifle trim trimmed trimming trip tripped trivet trouble truss trussed trussing
trust trusted trying turn turned turning turns twas twice twine twins tying type typed typo
tyre ugh un uncle uncovered under undercooked underdone underneath understand understanding
understood underway undo undue unfinished units unless unpause unsay unset unusable up update
upper ups upside upstairs urgent us use used useful using usual usually valmera various vegan
vegetable vegetables vegetarian vegetarians veggie verde verna versus very vi vinegar visitor
visitors volume volunteered vote voted wait waited waiting wake walk walkabout walked walking
wall walls want wanted wanting wants war warm warmed warmer warming warn warning was wasabi
wash washed washing watch watching water way ways we weak wean weans wedding wee weeds week
weeks weigh weighed weighs weight weights weird weirdo well wendy went were wet whack whacked
whadda whaddya what whatcha whatever whatsoever wheat when whenever where whereabouts wherefore
whether which whichever whichevers while whip whipped whisht whisk whisked whisking whistle
white who whole whoosh whopper why wicked wife wiggled wilf will wilsons wilted winced wind
wine winning wins wipe wiped wire wired wireless wise wish with without wobbly wojtek woke
woman won wonder wondering wood word words work working works worktop worried worries worry
worse worth would wouldja wrack wrangle wrap wrapped wreck wrecked wresting wrestle wrist wrists
writing written wrong wrote y ya yank yapping ye year years yeast yell yelling yes yesterday
yet yoghurt yogurt yoke yorkshire yorkshires yorkshre you young your yourself yusuf z zero
zeros zhoo zip`.split(/\s+/),
);
