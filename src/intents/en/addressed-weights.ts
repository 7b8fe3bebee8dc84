/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const weights: Weights = weightsFrom(`
-25 ~get_down
-24 ~^_her
-23 =courtesy:S0 ~,_put
-22 ?talk6 served ~,_with ~K_say ~here_we
-21 ?talk5 eights level tooth yours ~any_O ~are_you ~no_i ~you_do
-20 #words0 =choose:S2 ?talk7 dishwasher judges moved pages serious ~,_a ~?_it ~^_$ ~at_K ~like_mine
~out_in ~that_will ~with_U ~yet_S
-19 =emergency:guess ?heard0:guess boot cost fair funnier hello large myself page post work
~!_did ~,_second ~,_who ~,_your ~K_y ~and_that ~go_U ~he_went ~is_yours ~it_there ~n_all ~n_w
~said_no ~some_more ~was_i ~you_it
-18 =courtesy =courtesy:phrase =courtesy:some =emergency:S0 ?heard1:guess apparently barbecue
blight draw glove shuts ~O_had ~V_y ~at_P ~going_, ~it_a ~shall_we ~then_K ~to_her ~to_him
~was_d ~you_to
-17 #heard0 =emergency =note-guest:to-reading =set-timer:S3 answer book counted dress found
group hair linda lisbon loads loo lows number pin pudding restaurant small speaking years ~,_off
~?_yes ~K_never ~O_like ~and_let ~be_there ~could_have ~more_O ~n_over ~says_take ~then_the
~were_at ~y_and ~you_get
-16 =acknowledge =acknowledge:few =acknowledge:phrase =emergency:all =report-reading:S3 =set-serving-time:S2
=undo:S1 asked bathroom blue damp ella ends essay goals hi kickoff ladder licking mooing pipes
rain shh spain vicar wedding ~S_? ~all_done ~as_if ~at_ours ~did_V ~he_$ ~is_never ~is_you
~it_here ~n_or ~no_he ~not_you ~put_that ~put_you ~says_the ~second_on ~she_never ~take_a ~that_down
~they_did ~they_had ~this_for ~was_mine ~were_n ~who_V ~you_U ~you_n
-15 <y> =choose:guess =start-over:S1 =unclear =unclear:most ?heard0 biscuit brings caravan
cats chairs closer coffee cookie divorce dollar fly greenhouse handle highs jumper lasted morning
orange paid politics poor programme quit scream smoking spit sugars swimming tender thermostat
tub yourself ~,_here ~,_said ~?_not ~O_said ~S_me ~U_got ~U_i ~V_was ~after_me ~after_you ~am_done
~and_some ~c_us ~could_be ~for_c ~for_you ~got_there ~had_K ~her_off ~him_. ~n_second ~of_this
~of_you ~or_till ~other_V ~out_there ~put_your ~says_here ~she_did ~she_had ~tell_your ~would_have
~you_$ ~you_done ~you_on
-14 <n:200> =add-hands:S3 =deny:some =repeat:guess =report-trouble:guess =set-guests:guess
?talk4 baker benches boils booked bottle bus card career carpet channel child college crying
daddy dum feeling fourth gingerbread holidays home legs limit lives manager meter nose oi pass
pressure pumpkin roll seriously sets shot sleep stocks these third yourselves ~,_have ~,_there
~?_is ~K_about ~O_your ~P_a ~S_could ~^_so ~all_in ~been_c ~before_they ~but_n ~c_to ~goes_,
~got_now ~have_they ~he_said ~her_, ~hers_at ~in_these ~is_for ~is_his ~is_why ~me_put ~n_he
~on_U ~one_, ~take_O ~thanks_P ~them_a ~then_you ~there_, ~those_K ~to_your ~took_us ~was_still
~what_they ~you_have ~you_should ~yours_$
-13 =acknowledge:S0 =affirm:S2 =affirm:few =cancel-timer:guess =emergency:most =repeat:S3 =report-not-done:S2
=resume:to-step =undo:frame argument bank birth chefs chicken cloudy coach contestants day
dollars film hill lettuce lottery march million owe place question remember season sends sent
service sweetie tall taxi tense week wide ~,_must ~,_she ~,_their ~,_you ~?_U ~K_P ~O_! ~O_O
~O_too ~P_, ~P_this ~S_. ~S_of ~U_get ~U_out ~U_there ~V_she ~^_he ~^_too ~and_this ~c_till
~c_w ~d_a ~d_with ~did_it ~do_if ~does_O ~does_hers ~done_it ~done_till ~got_O ~have_another
~have_this ~he_put ~hers_in ~him_, ~i_too ~is_this ~is_was ~it_! ~may_$ ~mine_to ~my_O ~n_P
~n_U ~no_but ~not_go ~of_a ~out_a ~put_out ~says_d ~still_in ~tell_U ~tell_them ~them_about
~they_got ~they_let ~they_took ~to_w ~took_d ~was_a ~was_an ~we_there ~went_O ~went_V ~went_to
~what_would ~why_is ~would_P ~would_never ~yes_. ~you_up
-12 #O3 =choose:S1 =deny:S1 =report-out:S2 allow asleep bacon beach beer beta biscuits build
burns carvery chapter chef chemist chips clutch coats corner couch crispy cry easter fixed
hand hitting homework lovely name nav neighbour ours parking petrol picking prices pub ring
roof scallops scary science scored shade sheila song speaker stayed sun taking thousand tomato
vet wash weighed year ~!_out ~,_ours ~,_says ~,_that ~,_then ~._P ~._no ~._you ~._your ~K_he
~P_did ~S_! ~U_says ~^_more ~am_n ~and_got ~and_still ~are_about ~are_for ~at_my ~but_S ~c_my
~c_your ~can_have ~do_, ~does_he ~does_his ~done_her ~done_you ~first_P ~gone_out ~have_done
~have_you ~he_did ~her_$ ~here_i ~in_first ~in_on ~is_t ~it_by ~it_goes ~it_going ~like_$ ~n_was
~not_had ~not_so ~on_! ~on_P ~or_the ~ours_at ~said_to ~she_got ~she_was ~should_get ~should_we
~so_O ~some_O ~still_U ~still_does ~tell_P ~tell_her ~that_U ~that_to ~the_one ~then_they ~there_for
~there_were ~there_you ~to_us ~was_w ~we_could ~what_an ~what_she ~where_are ~who_did ~will_U
~will_put ~yes_, ~you_like ~your_O ~your_P ~your_V
-11 <t:550> =affirm:S3 =courtesy:S1 =describe-roast:guess =lack:frame =quiet:S2 =quiet:frame
average bags bakers ball banana blow boiler calling captain chestnuts chocolate choir crewe
deck died dublin es even except excuse fizz gran he heating him jack je keith king magazine
news notice numbers park party phoenix photo pool practice quiet rewind salmon sandwiches sausage
saw skins spell spent starts sugar suis tank tens tu whites whoever worth ~,_and ~,_g ~,_let
~,_say ~K_me ~O_, ~O_at ~O_we ~O_were ~U_? ~U_since ~^_his ~^_take ~^_these ~ago_V ~all_it
~am_the ~at_, ~at_her ~c_but ~c_that ~do_they ~does_your ~done_the ~get_your ~goes_off ~going_K
~going_S ~got_n ~had_in ~he_V ~her_P ~here_is ~his_U ~i_$ ~i_P ~in_here ~in_may ~is_what ~me_would
~mine_in ~mine_was ~my_first ~n_as ~n_down ~n_to ~never_S ~not_that ~on_i ~one_with ~out_U
~out_by ~over_, ~over_that ~say_$ ~says_in ~since_O ~since_n ~so_his ~t_and ~tell_him ~the_U
~them_with ~they_O ~they_put ~to_a ~to_the ~where_the ~will_do ~would_V ~y_we ~you_, ~you_not
~your_K
-10 #guess:S3 =acknowledge:S1 =acknowledge:S3 =ask-substitute:S2 =report-reading:guess =report-started:S3
?talk8 ate batteries beat blink breaking bridge buzzer camping chair charge colour court days
de delicious depends dies door dough fold frying gates growing ham her honey horse inch kid
left live load local moon mortgage mummy nights noah oh older pharmacy pies prescription price
queen raining reach rice row score seen serves smells sold surgeon sweetheart talks teacher
thinner thread traffic truth village waiter weeks who ~!_no ~,_after ~,_her ~,_never ~,_out
~._U ~?_ok ~?_the ~K_them ~O_and ~O_he ~O_if ~O_now ~O_out ~O_was ~P_let ~P_or ~P_that ~P_we
~P_you ~S_, ~S_was ~U_go ~U_n ~U_now ~U_till ~U_was ~^_shall ~^_those ~all_got ~and_go ~and_in
~and_not ~another_O ~are_these ~at_O ~at_U ~before_V ~can_i ~did_hers ~do_for ~do_mine ~done_?
~get_there ~he_does ~he_has ~him_n ~how_did ~how_he ~i_will ~if_n ~in_U ~in_my ~is_your ~it_too
~it_when ~me_done ~mine_$ ~my_S ~no_they ~of_your ~on_in ~one_was ~or_are ~over_at ~over_here
~over_n ~put_me ~said_now ~say_K ~says_no ~she_c ~that_S ~there_i ~there_yet ~till_c ~to_his
~was_at ~why_do ~will_tell ~y_U ~yes_V ~your_go ~yours_V
-9 #expecting:false:few #guess:S2 =acknowledge:all =courtesy:few =emergency:S1 =emergency:few
=emergency:phrase =lack:S2 =report-not-done:few =resume:few =resume:some =set-doneness:S3 ?heard0:frame
allergic apple army badly bedroom believe cake capital colette course cover deirdre dressing
dusted filled flight fun getting given goose honestly hotel innings lady lights liked line
listen look machine may mine mum new niamh once online ordering passing pavlova physio pizza
priya read seat shop steak stew stir theirs towels turkey vegetarians weekend weighs white
wifi wiped wow your zip ~!_you ~,_first ~,_our ~._done ~?_can ~K_was ~K_your ~O_$ ~O_done ~O_going
~P_K ~U_$ ~U_here ~U_to ~V_there ~V_who ~^_and ~^_you ~all_O ~am_never ~and_at ~and_if ~at_your
~c_about ~can_P ~did_, ~did_you ~do_my ~down_now ~going_up ~got_more ~had_his ~he_K ~he_U ~here_,
~i_like ~in_since ~in_that ~is_about ~is_down ~it_could ~it_n ~let_it ~me_take ~more_than ~n_O
~n_a ~n_from ~n_not ~n_would ~never_U ~not_do ~of_V ~of_my ~off_out ~on_his ~other_$ ~our_V
~out_V ~out_for ~over_there ~said_U ~said_d ~said_she ~said_they ~she_V ~she_said ~she_still
~she_would ~so_. ~so_for ~than_me ~than_the ~that_O ~that_one ~the_O ~then_we ~these_K ~they_say
~up_for ~us_? ~was_S ~we_did ~we_had ~we_were ~went_$ ~who_was ~will_get ~will_they ~yes_a
~yes_i ~you_so ~you_would
-8 #guess:all <t:200> =affirm:S1 =ask-status:S2 =ask-why:S2 =quiet:guess =quiet:most =report-done:S2
=set-doneness:frame =shift-serving:S3 ?heard3:guess allowed ambulance arms arrival bag baked
best bite blackbirds boots born both boys breakfast burn casserole caught cent charger club
corkscrew council cutting did episode every finished flour front gorgeous grease hall hip honest
kick lemon lorna milk ollie opener opening paper pay perfect sage see shelf shift shoes shopping
single soda soled started suspect tea thanks threw time used walks warning whose worries you
~!_get ~,_all ~,_can ~,_he ~._she ~?_V ~?_no ~?_that ~K_did ~O_are ~O_say ~O_took ~P_got ~P_i
~P_the ~S_her ~S_you ~U_you ~V_any ~V_before ~^_second ~^_they ~^_why ~about_U ~am_going ~an_O
~and_take ~be_up ~because_we ~but_my ~but_then ~c_at ~can_S ~can_c ~d_and ~d_if ~d_then ~did_$
~did_a ~done_, ~done_P ~down_this ~for_me ~get_up ~go_, ~go_and ~has_P ~here_already ~is_it
~is_mine ~it_took ~me_up ~me_when ~me_with ~might_do ~n_been ~n_n ~n_the ~n_we ~never_V ~or_do
~our_O ~says_$ ~says_O ~second_K ~since_we ~so_how ~take_your ~thanks_$ ~them_for ~then_he
~then_she ~there_$ ~there_. ~these_V ~this_the ~too_O ~up_after ~us_on ~w_for ~was_like ~went_off
~what_K ~when_did ~when_i ~where_is ~with_O ~y_in ~you_all ~your_S
-7 #U2 #heard3 <t:100> =add-dish:S3 =ask-options:frame =ask-status:S3 =deny:S2 =report-not-done:to-guests
=report-reading:to-reading =set-serving-time:few =set-serving-time:guess =set-timer:guess =set-units:guess
=undo:few ?heard1:frame across around awful baby below belt big bird box bread buffet carol
carols changing cooking cool cuts drinking dry east eats ever everywhere ferry fortnight garden
gentlemen grandad hide ladies lounge meeting mother needs next nico nursery october odile office
officer our outside owned packed pair peeking percent preheated quarter quite radiator reads
road rolling sandwich semi settings shakes she shoe sit skips snow sofa standing summer tenth
there tight turn understand whenever ~,_no ~,_where ~,_yours ~._, ~._V ~._take ~._yes ~K_had
~K_what ~K_you ~O_before ~O_have ~O_says ~P_for ~P_have ~S_P ~U_, ~U_S ~U_U ~U_after ~U_as
~U_her ~U_over ~V_O ~V_P ~V_does ~V_first ~V_other ~^_our ~^_the ~after_the ~already_on ~am_still
~and_here ~another_one ~as_i ~at_V ~been_K ~been_taken ~before_O ~but_she ~c_what ~could_K
~d_would ~do_V ~done_this ~first_V ~for_U ~for_n ~g_for ~gone_up ~got_any ~he_O ~he_is ~her_K
~how_are ~is_, ~is_like ~it_like ~it_says ~like_that ~me_, ~mine_, ~n_S ~n_because ~n_can ~n_then
~no_. ~no_U ~off_$ ~ok_K ~on_V ~one_? ~one_has ~or_c ~or_not ~or_shall ~said_never ~said_the
~says_a ~second_O ~she_took ~should_take ~so_she ~so_then ~still_not ~that_now ~the_S ~they_have
~they_would ~till_O ~up_if ~were_d ~who_do ~who_let ~with_no ~y_$ ~yes_O ~yet_, ~yet_? ~you_about
~you_must
-6 #O1 #expecting:true:most =acknowledge:S2 =ask-next:S1 =ask-status:frame =cancel-timer:some
=choose:most =correct:most =deny:frame =help:guess =set-guests:to-reading =set-serving-time:S1
?heard2:guess ?heard4:guess again banister bea begging burnt call caller centimetres cheers
colleague cooks dad darling dev expenses face fern find finish fork goal goalie hands imagine
instructions january joe june lock match maths men music nana nice north order piece platform
play points queue quid raw reduced roundabout sam say secret shame shoot sign sirloin smoker
south stood suitcase temperature toast tonight top towel voicemail was ~,_V ~,_could ~,_n ~,_now
~,_ok ~,_up ~._now ~?_d ~?_we ~?_who ~K_a ~K_still ~O_has ~O_it ~O_on ~O_or ~O_them ~U_t ~U_than
~U_us ~V_S ~V_c ~V_goes ~V_or ~^_am ~^_over ~^_where ~after_that ~ago_, ~all_gone ~all_i ~am_all
~am_off ~an_U ~and_by ~and_d ~and_she ~and_you ~any_U ~at_g ~at_us ~be_a ~be_the ~but_no ~by_O
~by_y ~d_, ~did_they ~does_a ~have_O ~have_an ~he_S ~here_if ~him_$ ~him_at ~him_in ~his_O
~how_do ~if_i ~in_d ~in_his ~is_another ~is_me ~it_already ~let_me ~me_about ~mine_is ~must_U
~must_be ~n_c ~n_for ~not_he ~off_? ~on_and ~one_put ~other_one ~out_on ~put_my ~put_some ~say_,
~she_will ~still_S ~the_P ~them_in ~till_your ~to_U ~to_c ~up_in ~we_, ~we_c ~what_my ~when_$
~when_does ~why_are ~will_all ~with_him ~with_those ~with_your ~would_K ~yes_! ~you_too ~yours_is
~yours_now
-5 #O2 #S2 #frame:S2 #guess:S1 #words12 <n:40> =ask-guests:S1 =ask-how:S1 =ask-time-left:S3
=choose:few =deny:S3 =pause:S1 =report-reading:S2 =report-setup:S1 =report-started:S1 =report-trouble:S2
=running-behind:S3 =set-guests:frame =set-timer:S2 =skip-step:S2 =undo:most =undo:to-step ?heard2:frame
billing bottles brine broke bucket bucks bye candle carry champion cheap classic crisp da doctor
drop each expected favourite fish gale gate get goes ha happy hard help hours husband kicked
knife la laid lands last leeds lid melt mind never ninth other parcel penalty peru pick plumber
point porridge potato reindeer rotten says school send spelling stand stop street team they
today wanted ways wear welcome why wore ~,_done ~,_should ~._O ~._he ~?_how ~K_his ~K_of ~K_to
~O_does ~O_down ~O_got ~O_is ~O_one ~O_till ~O_would ~P_$ ~P_O ~S_we ~U_P ~U_all ~U_do ~U_does
~U_goes ~U_never ~U_off ~U_your ~V_are ~V_for ~V_put ~V_these ~V_you ~^_go ~^_ours ~^_she ~^_w
~^_who ~^_yes ~already_? ~an_K ~and_he ~and_i ~are_all ~at_it ~d_! ~d_O ~did_she ~done_yet
~from_O ~gone_and ~got_some ~got_up ~had_n ~had_not ~has_got ~have_all ~have_d ~have_had ~he_goes
~he_was ~her_U ~her_and ~hers_out ~how_to ~i_can ~i_might ~i_tell ~in_before ~in_n ~in_your
~is_any ~is_so ~it_on ~it_take ~it_with ~let_her ~like_K ~like_an ~n_here ~n_that ~no_we ~not_for
~now_on ~off_you ~on_, ~on_them ~one_i ~or_is ~out_! ~put_them ~she_has ~so_K ~still_, ~take_it
~take_n ~thanks_for ~that_V ~that_is ~that_ok ~the_n ~they_V ~too_$ ~too_K ~took_out ~up_at
~us_$ ~was_, ~we_said ~we_should ~we_would ~when_you ~where_does ~with_that ~would_get ~yes_n
~yes_to ~you_are ~you_take ~you_will
-4 ! #P2 #S3 #U3 <n:999> =affirm:frame =ask-next:S3 =ask-plan:few =correct:some =report-not-done:guess
=report-trouble:few =resume:S3 =set-doneness:S1 =set-doneness:most =set-guests:to-guests =set-serving-time:to-serving-time
=set-units:all =shift-serving:S1 ?heard0:phrase ?heard1 ?talk3 amazing anyone arriving ask
bins bob boiling boy broken brunch called chance chin climb craic cupboard cut delayed does
done drove eating fancy feel fit french haircut high highway hot ingredients kitchen late lbw
leaves lick lift log marcus nothing overs phew proper puts recipe ref remove ribeye ringing
robot room rung seville since skipped socks soft spoon stairs story swap swear takeaway teeth
through told town try tumble weight were whisk winter write ~,_U ~,_at ~,_get ~,_if ~,_is ~._we
~._who ~?_he ~K_were ~O_her ~O_will ~P_c ~P_in ~P_never ~P_where ~U_and ~U_his ~U_or ~U_w ~V_him
~V_in ~V_up ~V_your ~^_d ~all_, ~and_out ~are_there ~at_you ~be_c ~before_K ~before_you ~c_$
~c_as ~c_if ~c_of ~c_on ~c_you ~d_w ~do_to ~done_now ~done_with ~down_V ~down_with ~for_V ~for_d
~for_that ~for_y ~g_and ~get_a ~go_off ~go_on ~have_gone ~have_never ~have_put ~he_would ~her_V
~here_$ ~him_out ~how_is ~how_was ~i_do ~i_would ~if_the ~if_we ~in_S ~is_he ~is_where ~it_,
~it_done ~it_no ~it_out ~it_over ~it_said ~let_him ~mine_V ~mine_out ~n_, ~n_and ~of_w ~off_O
~off_V ~off_i ~on_all ~on_with ~out_. ~out_K ~out_he ~out_of ~out_y ~said_V ~said_it ~say_to
~so_and ~that_c ~the_other ~them_, ~them_P ~there_O ~they_n ~they_were ~those_U ~up_$ ~up_V
~up_till ~us_at ~us_the ~w_$ ~was_V ~was_the ~we_S ~we_V ~when_the ~where_it ~which_S ~would_not
~would_you ~you_can ~you_had ~you_in
-3 #guess:most <t:40> =ask-amount:S3 =ask-temperature:S1 =ask-time-left:S2 =ask-time-left:to-step
=ask-why:most =choose =correct:S1 =drop-dish:some =emergency:S2 =report-out:few =report-oven:frame
=report-trouble:S3 =resume:S0 =skip-step:guess ?heard5:guess ?heard6:guess added ahead alone
as blanket blood boat breathing burner business cap cards carve charcoal cheddar chooks class
country covered crisps curry curtains die drummers dryer duck due ellie exit fighting for freezing
fryer glossy google grab ground hanna heart his island ketchup landed laugh laughed laundry
letters lived lords marathon marriage married mean meet nut or password pipers power previously
put radio rate remote rent rested rising rupees solicitor split stay staying telly thumb till
toddler unbelievable underdone use vents volcano weather weigh well wonder yes ~!_$ ~!_i ~,_O
~,_but ~,_got ~,_on ~,_we ~?_and ~?_n ~K_does ~K_from ~K_in ~K_on ~O_a ~O_i ~O_n ~O_to ~O_y
~P_if ~S_a ~S_now ~S_off ~S_said ~U_a ~U_still ~U_they ~U_what ~U_y ~V_U ~V_my ~V_since ~V_us
~^_my ~^_on ~a_K ~about_to ~am_S ~and_a ~are_at ~are_my ~are_now ~as_c ~at_hers ~because_the
~been_O ~been_in ~before_$ ~before_it ~can_U ~can_tell ~could_V ~d_of ~did_he ~did_n ~do_it
~do_not ~does_the ~done_and ~down_$ ~down_for ~down_to ~first_O ~first_and ~first_c ~first_one
~for_more ~get_it ~gone_off ~had_O ~had_c ~he_must ~he_never ~he_still ~he_took ~her_the ~him_a
~him_he ~him_off ~his_K ~in_i ~in_there ~into_a ~is_O ~is_still ~it_at ~it_c ~me_to ~more_K
~n_up ~never_got ~no_, ~no_you ~not_$ ~not_a ~not_it ~now_, ~now_? ~now_for ~now_over ~of_c
~of_here ~of_the ~off_in ~off_this ~off_when ~ok_U ~on_c ~one_more ~our_K ~ours_in ~over_my
~put_$ ~say_it ~should_V ~since_the ~so_what ~take_these ~that_P ~that_at ~their_V ~them_V
~then_V ~then_what ~there_in ~these_O ~this_S ~to_O ~took_a ~took_c ~took_my ~was_on ~went_out
~were_you ~with_this ~yes_U ~you_P ~you_S ~you_one
-2 #P1 #guess:some <n:12> <t:300> =affirm:phrase =ask-amount:S1 =ask-how:few =ask-options:some
=ask-time-left:S1 =ask-why:all =describe-roast:few =help:S1 =help:S2 =lack:guess =note-guest:some
=repeat:S0 =repeat:some =report-done:frame =report-out:guess =resume:phrase =set-doneness:S2
=shift-serving:most ?heard2 alfie and another anything arrived b bath bedrooms bell blowing
burning butcher buying cancel christening closed cousins cream crowd dear drawer drums fire
fired flames folks foot game grilled here hook hospital hour jess join knocked lay length light
list mama minister no offer papers people piet pushed ready refreeze rough sale second seconds
shirt sleeping somebody still stuffing substitute swears them times trying undo upstairs wet
where whole without yards ~!_that ~,_not ~,_over ~,_tell ~._is ~K_over ~K_up ~O_? ~O_U ~O_V
~O_him ~P_? ~P_she ~U_my ~U_on ~U_one ~U_she ~V_K ~V_at ~V_done ~V_have ~V_no ~V_off ~V_then
~V_too ~V_yet ~^_are ~^_like ~^_no ~^_now ~^_of ~^_tell ~^_thanks ~^_theirs ~^_we ~a_V ~already_V
~and_V ~and_have ~and_so ~and_we ~are_c ~are_this ~at_c ~but_they ~by_V ~by_a ~c_V ~c_c ~c_in
~c_says ~c_where ~did_U ~do_you ~down_, ~down_? ~first_was ~get_them ~go_by ~going_off ~has_it
~have_still ~have_to ~he_can ~he_will ~here_S ~him_U ~his_V ~i_c ~i_could ~i_get ~in_O ~in_her
~in_till ~is_K ~is_c ~is_d ~it_off ~like_i ~me_P ~me_n ~me_the ~n_! ~n_at ~n_by ~n_off ~no_P
~no_one ~not_let ~not_yet ~now_U ~now_i ~now_then ~ok_P ~ok_for ~on_O ~out_? ~put_it ~said_that
~second_V ~she_S ~so_V ~so_there ~some_K ~t_$ ~tell_you ~the_second ~then_it ~there_? ~this_,
~to_n ~took_n ~w_, ~w_n ~was_t ~went_up ~what_you ~where_he ~who_K ~who_has ~why_. ~will_c
~with_K ~with_his ~with_them ~y_at ~y_the ~yes_we ~you_got
2 #K3 #U0 #frame:most #frame:some #phrase:S1 #phrase:few #words5 <d> <t:150> =affirm =affirm:some
=ask-amount:most =ask-how =ask-shopping:guess =ask-temperature:phrase =ask-time-left:phrase
=choose:S0 =describe-roast =describe-roast:S1 =drop-dish:S0 =drop-dish:phrase =note-guest:S0
=note-guest:S2 =note-guest:phrase =pause:few =quiet =repeat =report-not-done:S0 =report-not-done:S1
=report-reading:all =report-setup:S2 =report-setup:frame =set-doneness:guess =set-doneness:to-roast
=set-guests:to-roast =set-serving-time =set-serving-time:S3 =set-serving-time:to-roast =set-units:S1
=shift-serving =shift-serving:guess =shift-serving:phrase =skip-step:to-step =start-over:phrase
?heard5:frame against any anybody away basting bear bits but calls can cancelled cloves cousin
crank different drops easy eggs everything extractor fierce fill forever garage glasses glazed
golden got half happening has having heading helps hen hey hold i incredible kettle knee knob
leave little loose losing lot love lumpy lunch menu miles mouth must nephew nil not off onions
packet pan patels peel plan press pure putting ray reaches roads roasted sack safe sauce sell
sense shelves smelling start straight streaming sure sweet table tail this though timer trust
what whisked ~,_an ~,_c ~,_did ~,_when ~,_which ~._w ~?_c ~?_you ~K_if ~K_one ~O_P ~O_in ~O_t
~O_then ~P_V ~P_up ~S_by ~S_for ~S_what ~U_the ~U_with ~V_ago ~V_been ~V_down ~V_her ~V_me
~V_must ~V_says ~V_should ~V_to ~V_where ~^_V ~^_a ~^_first ~^_i ~^_out ~^_put ~^_their ~^_your
~a_O ~a_P ~a_S ~all_on ~all_this ~am_not ~an_S ~and_P ~and_U ~and_my ~are_. ~as_V ~at_n ~at_the
~be_K ~be_O ~be_V ~be_on ~been_V ~but_U ~but_it ~c_and ~c_before ~c_is ~c_they ~can_K ~can_get
~can_not ~can_the ~d_ago ~d_down ~d_from ~done_U ~down_after ~first_$ ~for_O ~for_the ~from_here
~get_for ~get_from ~get_the ~get_to ~got_for ~got_my ~had_a ~has_n ~has_now ~have_been ~have_we
~here_at ~here_the ~i_V ~if_she ~in_! ~is_all ~is_and ~is_at ~is_no ~is_put ~is_y ~it_$ ~it_K
~it_till ~like_V ~me_out ~my_K ~my_c ~n_already ~n_now ~n_on ~n_tell ~no_more ~no_the ~not_.
~not_V ~not_the ~of_O ~off_is ~ok_? ~on_second ~on_then ~one_. ~out_as ~over_a ~said_n ~said_yes
~so_P ~so_c ~so_when ~t_in ~take_? ~them_can ~there_now ~they_get ~to_do ~to_say ~up_there
~us_in ~was_c ~were_O ~were_the ~what_V ~what_it ~will_an ~with_V ~with_a ~with_my ~would_like
~yes_P ~yet_$ ~you_V ~you_say
3 #K1 #K2 #O0 #expecting:false:some #frame:S0 #guess:few #phrase:S2 #phrase:some <c> <n:100>
<n:25> <n:80> =add-dish:S1 =ask-amount:phrase =ask-amount:some =ask-next =ask-next:few =ask-next:phrase
=ask-options =ask-options:S0 =ask-plan:S0 =ask-shopping:all =ask-shopping:few =ask-status:S1
=ask-substitute:most =ask-temperature:some =ask-time-left:all =ask-why =choose:all =correct
=help:all =lack =repeat:S2 =report-done:S3 =report-done:few =report-guests:frame =report-out:S1
=report-oven:few =report-oven:some =report-started:few =report-started:some =set-doneness:all
=set-guests =set-serving-time:phrase =set-timer =set-timer:all =shift-serving:S0 =start-over:S2
?heard3 ?heard4 afraid airport altogether baking before ben black browned bung carrying chilling
clear colander complete cow cranked crew degrees dijon disaster dried ear fan foil frankly
give good grandma hate head ji lard latter leather leg loaf lost lucy marco margarine mass
maybe message mike minimum more nail oat ones ovens pause pink playing popped prefer pressed
pulled rack reheat repeat rescue round salad sean shower sick sister smoked sous supermarket
system tablespoon teddy text touch units us very warming window wood writing ~,_S ~,_as ~,_his
~,_still ~K_! ~K_is ~K_us ~K_would ~O_can ~P_n ~S_take ~S_there ~U_by ~U_if ~U_of ~V_and ~V_be
~V_had ~V_mine ~V_now ~V_said ~V_that ~V_them ~V_we ~^_S ~^_after ~^_did ~^_one ~^_should ~already_$
~am_K ~am_V ~am_at ~and_can ~and_do ~and_on ~and_tell ~are_K ~are_after ~are_we ~as_n ~as_you
~be_, ~been_on ~by_K ~by_it ~by_n ~c_? ~c_can ~c_how ~c_this ~could_O ~d_but ~d_we ~do_the
~do_with ~down_from ~for_K ~for_w ~from_c ~get_n ~goes_on ~gone_a ~gone_c ~gone_to ~got_? ~got_K
~had_it ~have_K ~have_no ~have_with ~i_have ~i_now ~in_this ~in_y ~is_S ~is_V ~is_done ~is_not
~is_now ~is_second ~it_first ~it_from ~it_is ~it_now ~it_the ~it_we ~it_will ~me_down ~me_it
~must_the ~n_V ~n_are ~n_before ~n_this ~n_what ~not_O ~not_S ~not_they ~now_or ~of_U ~of_n
~off_and ~off_d ~off_since ~off_the ~off_with ~ok_so ~on_it ~one_$ ~or_after ~or_can ~out_d
~out_it ~out_the ~over_. ~says_S ~should_the ~still_ok ~thanks_. ~that_can ~that_going ~that_it
~the_first ~they_, ~they_U ~they_do ~this_V ~till_n ~to_? ~to_that ~took_S ~up_the ~w_? ~was_U
~was_so ~we_have ~went_and ~were_we ~what_P ~what_are ~what_is ~when_he ~when_is ~when_it ~when_must
~where_were ~which_i ~why_did ~would_a ~yet_it ~yet_still ~you_could
4 #phrase:S3 #words4 =add-dish:most =add-dish:some =affirm:to-confirmation =ask-how:S0 =ask-how:to-reading
=ask-next:most =ask-plan:phrase =ask-safety:phrase =ask-status =ask-substitute =ask-substitute:phrase
=ask-time-left =cook-away:frame =correct:S0 =describe-roast:all =describe-roast:phrase =drop-dish
=forget-kitchen:S0 =lack:some =pause:S2 =pause:frame =quiet:all =report-done =report-done:guess
=report-not-done:to-step =report-out =report-oven =report-oven:S0 =report-oven:S1 =report-oven:S2
=report-oven:most =report-oven:to-reading =report-reading:S0 =report-reading:phrase =report-setup
=set-doneness:few =set-guests:S3 =skip-step:S0 =start-over:most ?heard3:phrase ?heard5 ?heard7:guess
?talk2 adding after air alert also bad be beef beginning beth bonfire bother bought burned
butter candles cat celsius chewing clue consider cremated creme cross date dental dropping
drying else empty everybody family fella flicked flip forks fraiche from gluten gold graham
grain grand hanging heat hotter hungry instant-read into jean job liam loud lying matters mixed
movie nervous netted now parsnips pork pour present pretend reached risen roast rolls ruth
screaming separator should shut smell solid son sour stays takes talking teach thickest tilly
timing tin together tomasz walking wall whether wipe wreck ~,_do ~,_mine ~,_the ~._all ~._are
~?_? ~K_$ ~K_. ~K_V ~K_all ~K_and ~K_are ~K_no ~K_or ~K_says ~K_shall ~K_she ~K_which ~O_.
~O_S ~O_by ~O_of ~O_since ~P_go ~P_of ~S_K ~S_O ~S_at ~S_but ~S_ok ~S_or ~S_put ~U_ok ~U_should
~V_a ~V_as ~V_it ~V_on ~V_ours ~V_some ~V_till ~^_get ~^_here ~^_if ~^_let ~^_n ~about_$ ~after_K
~all_$ ~all_S ~all_the ~am_O ~and_does ~and_they ~are_on ~are_out ~as_S ~as_in ~at_this ~be_if
~be_n ~be_this ~been_S ~before_n ~by_c ~c_K ~c_than ~can_, ~can_you ~d_in ~d_or ~d_that ~did_not
~do_in ~does_not ~done_by ~down_and ~for_him ~for_my ~for_what ~g_$ ~get_S ~go_. ~go_O ~going_for
~got_U ~has_a ~here_? ~him_V ~how_V ~i_go ~if_so ~in_and ~in_at ~is_a ~is_going ~is_here ~is_out
~is_since ~is_that ~it_be ~it_i ~it_more ~like_S ~me_ok ~more_to ~n_in ~never_K ~never_a ~no_c
~not_till ~now_V ~now_how ~ok_the ~on_her ~on_my ~out_from ~out_with ~put_in ~put_the ~said_,
~said_. ~says_on ~so_it ~so_now ~so_the ~t_, ~that_says ~the_K ~them_? ~then_U ~this_$ ~this_U
~this_one ~to_g ~took_me ~up_. ~w_no ~was_done ~was_in ~we_K ~were_still ~what_U ~what_could
~what_on ~which_K ~which_do ~would_S ~y_? ~y_K ~yes_no
5 #expecting:false:most #heard1 =add-dish:frame =add-dish:phrase =add-hands:most =affirm:S0
=ask-amount =ask-next:frame =ask-options:most =ask-options:to-choice =ask-shopping:S0 =ask-status:guess
=ask-substitute:all =ask-substitute:few =cancel-timer:most =correct:S2 =describe-roast:frame
=note-guest =note-guest:S1 =note-guest:few =quiet:S1 =quiet:some =repeat:frame =report-done:S0
=report-done:S1 =report-done:all =report-done:to-step =report-guests:some =report-not-done:frame
=report-oven:phrase =report-started =report-started:most =report-thermometer:all =resume:S1
=resume:S2 =running-behind:phrase =set-doneness:S0 =set-guests:S0 =set-guests:most =set-timer:some
=shift-serving:frame =skip-step =skip-step:few =start-over:frame ? ?heard4:phrase accent ago
already anymore appointment bubbling bump c came carving checking children church correction
could counting dan dark dave earth error eta fall feed feels fell fever fix flashing floss
gin go god granny grey halved herself hole holler inform instead joost kept leave-in listening
longer maria mashed mate minutes missing mixer near nearer need ok oven peas person ping places
potatoes pouring prime problem quantity ricer rolled roughed rubbed ruin ruined salty shallots
shed simplify slide speech sprout staring starter steps suggestions suppose thing train truck
vegetable vinegar wake wasabi watching weights word yoghurt ~,_P ~,_for ~,_they ~,_went ~,_what
~?_then ~K_K ~K_be ~K_for ~K_going ~K_it ~K_like ~K_take ~K_took ~K_with ~O_another ~O_the
~O_they ~P_. ~P_it ~P_to ~S_c ~S_says ~U_had ~U_hers ~V_because ~V_ok ~V_went ~V_with ~^_as
~^_be ~^_does ~^_was ~^_with ~a_y ~about_V ~about_with ~after_, ~after_U ~all_? ~am_i ~and_O
~and_c ~and_get ~been_off ~before_. ~by_d ~by_me ~by_now ~by_that ~c_or ~c_with ~could_do ~could_not
~d_it ~d_not ~do_? ~down_by ~first_, ~for_, ~for_her ~from_n ~g_. ~go_$ ~goes_with ~got_me
~have_taken ~hers_$ ~hers_V ~i_U ~i_after ~if_S ~if_your ~it_U ~it_does ~like_O ~like_d ~like_my
~me_i ~me_like ~n_$ ~n_K ~n_be ~n_go ~no_? ~no_V ~not_done ~not_in ~not_too ~now_. ~of_K ~of_those
~off_, ~ok_it ~on_? ~on_S ~on_no ~one_says ~or_V ~ours_$ ~out_, ~out_already ~out_at ~out_what
~over_V ~put_n ~second_it ~she_is ~she_put ~should_K ~should_be ~should_i ~so_go ~still_V ~t_K
~that_a ~that_about ~that_in ~that_would ~the_go ~them_n ~then_n ~they_went ~till_i ~up_P ~up_a
~up_already ~up_now ~us_V ~w_V ~were_U ~when_to ~when_will ~will_the ~would_U ~yes_but ~yes_so
~you_put ~you_the ~you_were
6 #expecting:false:all <t:25> =add-dish =add-hands:guess =affirm:all =ask-guests:phrase =ask-how:guess
=ask-next:S0 =ask-next:to-step =ask-safety:few =ask-shopping:some =ask-temperature =ask-temperature:S0
=ask-time-left:guess =ask-time-left:some =ask-why:S0 =cook-away =cook-away:S2 =cook-away:phrase
=deny:few =describe-roast:S2 =drop-dish:S2 =forget-kitchen =forget-kitchen:phrase =have:all
=lack:S0 =lack:few =lack:to-step =pause =quiet:S0 =report-done:most =report-done:phrase =report-not-done:most
=report-out:all =report-out:most =report-setup:phrase =report-thermometer =report-thermometer:S0
=report-thermometer:S1 =report-thermometer:most =report-thermometer:phrase =report-trouble
=running-behind:all =set-guests:all =set-timer:phrase =set-units =skip-step:all =start-over:some
=watch:guess ?heard6 account actual adults asks aunty bay behind birthday blast boss bothering
brisket brought care carked centre cleared coast commands cooked creamed d'you ditch drinks
dripping egg faffing fallen few fine flag forgot fridge friend frozen full further ghee groceries
headlines hung insists inverter jumping kill knowing law lena lenny lent metric miss needed
nobody overcooked pace parboiled parents pastry picture popovers probe processor reckons regular
resting rope shove sir slicing spinach spoil squash starting steam strip thank thought throw
ticking tiny toddlers topped touching trussing twine water which wireless yell yogurt yorkshire
young ~,_be ~,_been ~,_before ~,_from ~,_more ~,_my ~._. ~._d ~._there ~._what ~._why ~?_she
~K_any ~K_down ~O_for ~O_from ~S_it ~S_w ~U_we ~U_who ~V_by ~V_d ~V_theirs ~V_took ~^_K ~^_could
~^_has ~^_ok ~^_this ~a_n ~about_it ~after_V ~after_d ~after_we ~all_of ~all_taken ~and_did
~and_now ~another_n ~any_more ~are_O ~are_done ~are_me ~are_not ~as_a ~as_of ~at_me ~be_at
~but_the ~but_we ~c_a ~c_out ~c_t ~c_tell ~c_y ~d_$ ~d_are ~d_at ~d_can ~d_is ~did_that ~do_.
~do_i ~done_in ~done_that ~down_at ~for_another ~go_K ~gone_U ~got_S ~got_no ~have_got ~have_not
~have_said ~he_c ~her_S ~here_d ~here_for ~here_to ~how_the ~in_when ~in_with ~is_U ~is_of
~is_too ~is_up ~it_go ~it_got ~it_y ~like_U ~me_$ ~more_$ ~more_are ~must_i ~n_but ~n_have
~n_is ~n_ok ~n_you ~no_not ~not_c ~not_got ~not_take ~now_P ~of_in ~of_now ~of_us ~off_K ~ok_V
~on_at ~on_d ~on_for ~on_you ~one_in ~one_on ~other_K ~put_on ~say_. ~says_V ~second_so ~she_goes
~so_they ~so_we ~some_V ~t_over ~take_K ~take_out ~take_them ~taken_the ~than_V ~than_n ~than_that
~than_we ~that_. ~that_d ~that_on ~that_yet ~the_c ~the_in ~the_of ~them_i ~them_off ~then_P
~there_is ~there_will ~they_said ~they_still ~this_. ~this_d ~those_V ~till_K ~to_V ~to_tell
~to_this ~took_her ~up_as ~up_n ~us_d ~us_for ~was_that ~were_all ~what_, ~what_a ~will_K ~with_their
~you_i
7 #frame:S3 #frame:few #phrase:S0 #phrase:most =add-dish:S0 =add-hands:phrase =ask-amount:S0
=ask-options:all =ask-options:phrase =ask-safety:all =ask-shopping =ask-status:S0 =ask-substitute:S0
=ask-temperature:all =ask-temperature:guess =ask-time-left:S0 =cook-away:guess =drop-dish:frame
=drop-dish:most =forget-kitchen:some =help =help:few =note-guest:most =pause:S3 =quiet:few
=repeat:S1 =repeat:most =repeat:phrase =report-guests:S0 =report-guests:S1 =report-guests:all
=report-guests:most =report-out:S0 =report-out:some =report-oven:S3 =report-oven:all =report-oven:guess
=report-reading:few =report-started:S0 =report-thermometer:some =report-trouble:S0 =report-trouble:most
=report-trouble:some =running-behind:S1 =set-guests:phrase =set-method:S1 =set-method:all =set-method:few
=set-method:frame =set-serving-time:S0 =set-serving-time:all =set-timer:S0 =start-over:few
=watch:S0 =watch:all ?heard5:phrase ?heard6:phrase ?heard7:phrase amount babysitter bare bean
becoming bless bone braised bums cares catch cauli center code company core crust cup dauphinoise
deb decided delete drained eaters everyone failure floor forget forward frenched friends gap
grid grill grocer guest hats herb hurt hush ice ideas immune keeping kindly know knows later
lie lies likes lodger ma'am main make meal messages mince mint motorway noticed notify obviously
oil oiled per pinker pop position pot preheat properly ribs roar root salvage scrubbed seats
shape sides so sorry sound stuff talk teenagers temple thermometer thickened tie tractor under
wait wins won worry written yelling yusuf ~,_like ~,_may ~,_took ~,_w ~._can ~._how ~._second
~K_O ~K_U ~K_before ~K_but ~K_go ~K_goes ~K_got ~K_has ~K_ok ~K_should ~K_so ~K_there ~K_they
~K_we ~O_be ~O_w ~P_on ~P_so ~P_with ~S_are ~S_can ~S_do ~S_does ~S_the ~U_. ~U_c ~U_has ~U_that
~U_took ~V_? ~V_after ~V_go ~V_into ~V_out ~V_why ~^_might ~^_mine ~^_some ~ago_$ ~all_U ~all_too
~already_and ~am_U ~an_V ~and_K ~and_when ~are_in ~are_n ~are_still ~are_too ~be_? ~be_more
~been_a ~but_K ~by_U ~by_t ~c_up ~can_go ~can_take ~could_i ~d_already ~d_on ~do_K ~do_about
~do_first ~done_i ~down_! ~down_the ~for_all ~for_those ~get_K ~get_O ~go_from ~go_up ~goes_$
~going_to ~got_a ~got_his ~has_V ~he_got ~her_out ~here_a ~hers_S ~him_as ~how_should ~how_would
~i_took ~if_you ~in_K ~in_V ~in_as ~into_it ~into_the ~is_already ~is_she ~it_down ~it_never
~let_the ~like_, ~might_as ~mine_at ~more_or ~must_it ~never_said ~no_second ~not_, ~not_get
~now_and ~off_now ~ok_that ~on_g ~on_me ~on_one ~one_that ~one_you ~or_S ~or_down ~ours_was
~over_to ~say_the ~she_have ~should_U ~should_have ~since_U ~so_he ~so_put ~some_S ~still_n
~taken_their ~tell_me ~tell_what ~that_take ~that_you ~them_d ~them_have ~then_O ~to_put ~too_.
~up_and ~up_or ~us_and ~us_will ~w_K ~was_K ~was_from ~we_U ~we_got ~we_will ~went_, ~what_O
~what_all ~what_should ~what_to ~what_will ~who_can ~will_it ~yes_it ~you_.
8 #words3 . <g> =add-dish:all =ask-guests =ask-how:most =ask-next:all =ask-plan =ask-safety:some
=ask-shopping:S1 =ask-shopping:S3 =deny:S0 =deny:to-confirmation =describe-roast:some =describe-roast:to-roast
=drop-dish:few =lack:phrase =note-guest:all =report-out:phrase =report-started:all =report-started:phrase
=running-behind =set-method =set-method:S0 =set-serving-time:frame =set-timer:frame =set-units:S0
=set-units:phrase =skip-step:frame =watch:frame =watch:some ?heard7 about approximately backs
baste beans become bench brussels bumped butternut button buy cabbage carrots clicked coat
cooling counter crackling daughter dialled dining dog don'tcha fat fuse fussy garlic glass
goodness grace hendersons hope horseradish include instant learned lit luck malt mark market
month moving much nagging negative neither nudged odd onto otherwise overshot overview panicked
peeled postpone pretty progress puffed record rental reverse roasting roughly rubbish schedule
scrap sear shops slice sounded sounds sprouts sticky tailed test think thinking touched touches
walked walls weird win wish worried worse yesterday ~!_K ~,_does ~._not ~._ok ~?_$ ~K_S ~K_do
~K_first ~K_n ~K_now ~K_w ~O_this ~P_P ~S_that ~S_your ~U_about ~U_already ~V_. ~V_going ~V_has
~V_his ~V_still ~V_take ~V_their ~V_will ~^_U ~^_c ~^_can ~^_done ~^_in ~^_up ~a_w ~about_the
~all_. ~all_K ~all_over ~am_a ~am_so ~and_all ~another_V ~at_all ~at_t ~be_U ~be_an ~be_in
~been_U ~been_at ~been_out ~but_that ~c_by ~c_do ~c_for ~c_n ~could_you ~d_for ~d_off ~did_get
~do_c ~do_what ~does_K ~done_$ ~done_. ~done_V ~down_on ~first_n ~first_the ~from_me ~go_c
~goes_V ~goes_in ~going_as ~gone_for ~has_U ~has_me ~have_a ~here_but ~i_K ~i_S ~i_let ~if_they
~in_now ~is_them ~it_P ~it_all ~it_has ~it_up ~it_went ~like_? ~like_the ~me_? ~me_an ~me_c
~me_now ~more_n ~not_any ~not_be ~not_going ~not_gone ~not_more ~not_on ~not_say ~not_tell
~now_at ~of_his ~of_what ~ok_to ~on_$ ~on_to ~or_no ~out_O ~out_they ~put_her ~said_do ~says_to
~so_S ~so_U ~so_my ~so_why ~some_of ~still_K ~t_. ~t_V ~t_on ~t_out ~take_$ ~taken_out ~their_O
~them_is ~them_on ~then_a ~there_another ~they_are ~to_S ~to_it ~up_so ~us_a ~us_c ~us_get
~w_but ~w_c ~went_in ~went_on ~were_S ~what_? ~what_do ~what_for ~what_have ~what_if ~what_must
~when_should ~which_V ~why_V ~why_can ~will_V ~with_S ~with_hers ~with_you ~y_V ~yes_K ~yes_or
~yes_yes ~yet_. ~you_?
9 #expecting:true:all #words1 =add-hands =add-hands:S0 =add-hands:some =ask-guests:all =ask-how:frame
=ask-options:guess =ask-safety =ask-shopping:phrase =ask-slice =ask-slice:S0 =ask-slice:phrase
=ask-substitute:some =ask-temperature:most =ask-why:guess =cook-away:S3 =deny:guess =have:S1
=help:S0 =help:most =help:some =pause:phrase =report-guests =report-setup:S0 =report-setup:S3
=report-trouble:S1 =report-trouble:phrase =running-behind:S0 =set-method:guess =set-method:most
=set-method:phrase =undo:all =watch =watch:phrase ?heard4:frame ?heard8:frame ?talk1 alongside
anywhere auntie aunties bairns balls bang battery beeped being bit blank board bones breaker
brown buttered callum cauliflower chopped climbing clock coeliac conked cookies cracking deep
dinner dishes display doorbell dying earlier enough everythings feeding fetch fewer fingers
footy forerib freeze fresh granddad gratin grown guess happen happens hearing holiday internal
joining keep laws lifted living looked low lumps man misheard misread mister murder neighbors
nora nudge opened ounces overdone overwhelmed palaver past peace pepper persons plate possess
powder preheating ravi reaching remaining rib rise roommate roped roux runs scissors screen
serve sherry shown silverside sitting skipping sleeves slid sock sooner steeping step stirring
stove switched taken telling tent tickets tiles tongs topside trick trimming ups woke working
wrong ~,_? ~,_because ~,_d ~,_why ~,_yes ~._$ ~K_as ~K_said ~K_yet ~O_all ~O_off ~O_with ~P_can
~P_he ~S_U ~S_V ~S_and ~S_be ~S_get ~U_d ~U_how ~V_get ~V_one ~V_what ~^_, ~^_must ~^_not ~^_says
~^_since ~^_there ~^_to ~^_took ~^_which ~about_that ~after_a ~after_this ~all_they ~all_we
~already_i ~already_the ~am_gone ~and_how ~and_put ~and_there ~are_like ~be_gone ~be_here ~be_when
~been_n ~before_the ~but_O ~but_not ~but_why ~c_because ~c_d ~c_not ~c_was ~c_will ~can_my
~can_we ~d_now ~d_so ~d_the ~d_there ~do_$ ~do_be ~do_one ~do_them ~does_n ~done_for ~down_d
~for_S ~for_them ~from_there ~g_now ~get_out ~go_in ~goes_out ~going_O ~going_and ~got_it ~got_to
~has_not ~have_n ~he_say ~here_! ~here_O ~how_K ~how_U ~how_i ~i_be ~i_is ~in_. ~in_to ~is_an
~it_S ~it_and ~it_had ~it_how ~it_in ~it_ok ~it_where ~it_would ~let_us ~me_if ~more_V ~my_P
~n_who ~n_with ~not_K ~now_would ~now_you ~of_it ~of_that ~off_. ~on_a ~on_till ~one_for ~one_second
~or_a ~our_S ~out_like ~out_too ~over_U ~say_V ~says_. ~says_she ~second_$ ~second_, ~second_.
~shall_be ~since_c ~so_like ~still_did ~tell_S ~than_K ~that_all ~that_do ~theirs_at ~them_out
~there_not ~to_P ~to_go ~us_K ~w_O ~we_put ~we_up ~were_V ~what_was ~where_i ~will_i ~will_let
~will_we ~would_i ~yes_ok ~you_be ~you_tell
10 #phrase:all <t:12> =ask-options:few =ask-why:to-confirmation =cancel-timer:few =choose:frame
=have =have:phrase =note-guest:frame =repeat:few =report-not-done:S3 =report-reading:to-confirmation
=report-setup:few =report-started:S2 =running-behind:frame =running-behind:most =set-method:some
=set-units:S2 =skip-step:phrase =undo:phrase =undo:some =watch:S2 ?heard7:frame ?heard8 ?heard8:phrase
?talk0 absolutely accidentally aunt beg bet blew bloody breath bridie brother browning brush
carved climbs comes conventional crept crunchy deglaze dentist drowning f fast figure filling
final gas gave herbs holding hop huh hurts ingrid jar jo kev kids killing knock known lad life
lino meant measured minds moment most mustard napkins necessary none normal own parsley pending
planned possible pounds quick rail replacement roaring roots rose scraping sing sizzling slipped
softening something speed sticker supposed their tops turned turns tyre ugh wanting wants whatever
whisking wire ~,_of ~,_one ~._c ~._so ~._that ~._which ~K_? ~K_done ~K_how ~K_yes ~O_already
~O_that ~P_will ~S_n ~U_from ~U_so ~V_am ~V_how ~V_like ~V_yes ~^_. ~^_another ~^_down ~^_from
~about_my ~after_P ~ago_. ~ago_and ~all_V ~already_, ~already_n ~and_is ~another_d ~are_$ ~are_U
~as_it ~be_with ~before_? ~but_P ~but_there ~c_are ~c_down ~c_me ~c_over ~can_she ~d_K ~d_before
~do_now ~do_us ~done_they ~done_what ~down_a ~down_in ~first_U ~for_t ~from_V ~from_this ~go_?
~gone_$ ~got_here ~has_t ~have_U ~have_theirs ~he_says ~her_down ~here_with ~hers_, ~hers_K
~how_S ~i_done ~i_put ~i_say ~i_was ~in_she ~in_w ~is_her ~is_my ~is_ok ~it_as ~it_d ~it_for
~it_still ~it_yet ~like_this ~like_to ~me_at ~me_d ~me_in ~n_. ~n_since ~n_too ~never_going
~no_no ~now_S ~now_it ~now_the ~now_we ~of_d ~of_her ~off_it ~or_more ~out_or ~over_w ~put_S
~said_there ~says_n ~second_of ~so_$ ~so_if ~so_let ~still_at ~that_has ~then_$ ~there_still
~till_we ~to_t ~to_you ~up_by ~up_from ~up_i ~up_my ~up_to ~us_go ~us_have ~was_it ~was_my
~we_do ~we_going ~went_for ~what_were ~where_to ~who_are ~why_c ~will_go ~with_it ~would_go
~you_a
11 #words2 =add-dish:few =add-dish:guess =add-hands:all =ask-next:S2 =ask-plan:S1 =ask-plan:all
=ask-substitute:to-step =ask-time-left:few =ask-why:frame =cancel-timer:all =cancel-timer:phrase
=correct:to-choice =deny:to-step =drop-dish:S1 =have:S0 =have:most =note-guest:to-guests =pause:some
=report-oven:to-step =report-trouble:all =report-trouble:frame =set-serving-time:most =skip-step:most
=watch:most ?heard6:frame afresh along aluminium arrive beautiful blender brb brussel buzz
climbed cold completed cooler cope delivery directly drive edges electricity fed fillet food
football freezer fully girlfriend giving halal hit inside invite iron kind lagging laying leftover
lend loin mains manage matter mouths na pipe planning possibilities range reading required
rosemary salted same sauces seared seasoned sheet simmering sorted steaks stick stopped string
tablets tenderloin tied tough tray trouble type vegetables waiting weak winning ya yorkshires
~!_V ~,_will ~._my ~?_my ~K_have ~K_here ~K_my ~K_our ~K_will ~O_she ~O_so ~P_get ~S_so ~S_this
~U_! ~U_K ~U_like ~U_them ~U_went ~U_when ~V_were ~^_already ~^_any ~^_y ~a_c ~all_here ~all_n
~and_S ~and_what ~at_? ~at_now ~at_that ~be_done ~be_for ~because_it ~been_put ~before_d ~before_that
~c_it ~c_we ~c_when ~can_it ~could_we ~d_because ~did_i ~down_as ~down_c ~down_n ~first_K ~from_U
~go_down ~goes_up ~going_down ~gone_, ~has_the ~has_to ~have_$ ~have_her ~her_. ~her_in ~here_.
~here_it ~here_n ~his_at ~how_it ~how_they ~i_never ~i_still ~in_from ~in_some ~is_there ~it_O
~it_should ~it_to ~like_c ~like_we ~me_V ~me_a ~me_for ~n_ago ~n_has ~n_like ~n_no ~never_did
~no_$ ~no_do ~no_n ~not_U ~not_have ~not_put ~now_is ~now_n ~now_she ~off_my ~off_n ~off_we
~ok_$ ~ok_do ~ok_what ~on_K ~on_so ~or_should ~out_since ~out_to ~over_it ~over_the ~put_V
~put_d ~say_a ~say_they ~says_U ~says_her ~should_he ~so_yes ~so_you ~still_c ~still_to ~t_now
~take_that ~that_$ ~that_? ~that_off ~that_out ~there_any ~there_it ~they_will ~this_? ~to_me
~to_our ~to_take ~took_it ~up_does ~us_do ~us_not ~w_not ~w_of ~we_be ~we_go ~we_must ~what_am
~when_they ~why_does ~why_must ~with_$ ~y_. ~yes_? ~yet_V ~yet_i ~yet_the ~you_K ~you_when
12 =add-hands:frame =ask-amount:all =ask-guests:most =ask-plan:guess =ask-safety:S2 =ask-shopping:most
=ask-slice:some =ask-status:most =ask-substitute:S1 =ask-substitute:S3 =ask-substitute:guess
=ask-temperature:frame =deny:to-choice =help:frame =quiet:phrase =report-not-done:to-reading
=report-started:to-step =report-trouble:to-step =running-behind:guess =set-units:most almost
anyway bar batter beep begin bin boil bothered bringing celiac chewy chuck completely cylinder
dare dial dine eat either fergal forgotten grams gratins hang helping hovering imperial including
intolerant itself jump kiddies lactose making meaning nap neighbor nicely nor passed pat patting
plated plow poked puddings rang reminders replace right rock scoring showed sink slices spoons
stepping tasted texted thawed theo thick thyme timeline total understood unpause whacked whip
wise worktop yank yoke ~!_! ~,_has ~K_her ~K_not ~K_put ~K_when ~O_d ~O_do ~O_me ~P_from ~P_took
~P_were ~S_here ~S_on ~S_over ~S_with ~U_him ~U_then ~V_did ~V_here ~V_hers ~V_if ~^_before
~^_g ~^_us ~^_would ~after_all ~all_going ~already_have ~am_after ~and_are ~are_here ~as_U
~as_is ~as_we ~because_of ~before_, ~by_S ~c_have ~can_be ~d_after ~d_i ~for_is ~for_this ~gone_V
~gone_d ~gone_from ~got_the ~had_my ~have_S ~have_any ~have_some ~here_so ~him_to ~how_am ~how_you
~i_must ~i_on ~if_V ~in_all ~in_for ~in_no ~in_yet ~is_been ~is_more ~is_over ~it_another ~me_my
~me_so ~me_till ~me_what ~mine_does ~more_for ~must_V ~n_how ~n_there ~n_where ~no_go ~now_not
~off_so ~on_we ~or_? ~out_here ~out_so ~put_a ~put_him ~says_t ~should_it ~so_do ~so_i ~so_take
~still_$ ~take_this ~there_d ~this_up ~to_have ~to_my ~us_O ~w_so ~we_$ ~we_at ~we_ok ~we_shall
~what_goes ~what_now ~when_do ~why_so ~will_that ~would_be ~would_c ~yes_do ~you_over
13 =add-dish:S2 =add-hands:few =ask-safety:S0 =ask-status:phrase =ask-status:to-reading =correct:to-confirmation
=drop-dish:all =note-guest:to-doneness =pause:S0 =report-guests:S3 =running-behind:S2 =set-units:few
=set-units:some ?heard8:guess aiming alex alternatives arse asparagus assisted ay beauty bleeding
boned boneless bottom brining bunch cast collect counts crap dairy draining drippings e edge
enamel evening eye eyes faff gang grandmother headcount heads instruction joint killed kosher
latest leaving leftovers loosely lowest measuring nip pale peeler peeling ran reason reset
resume rub saying shaking skillet skin slow soon speak stabbed stage store strings themselves
tom veggie voted wife wine ~,_am ~,_are ~,_by ~,_so ~,_too ~._and ~._when ~?_or ~K_already
~K_can ~K_than ~O_but ~O_no ~O_should ~O_up ~P_U ~P_but ~P_do ~P_put ~S_has ~U_no ~U_will ~V_he
~V_more ~^_at ~^_because ~^_have ~^_still ~^_them ~^_were ~about_them ~after_i ~after_it ~ago_it
~all_that ~any_other ~are_already ~are_down ~are_they ~are_up ~as_my ~be_d ~c_then ~c_yet ~d_like
~do_have ~does_that ~down_so ~down_yet ~for_. ~for_? ~from_now ~get_here ~got_V ~have_now ~her_at
~how_can ~i_already ~i_take ~in_too ~is_. ~is_g ~is_off ~is_taken ~is_w ~is_with ~it_. ~it_or
~it_that ~like_you ~me_be ~more_? ~my_in ~n_d ~n_they ~not_what ~now_so ~now_t ~of_S ~ok_done
~or_what ~out_do ~over_? ~said_w ~says_w ~second_from ~since_d ~so_is ~so_no ~still_no ~taken_it
~than_i ~that_and ~that_be ~that_i ~that_should ~that_too ~there_V ~there_are ~they_c ~this_out
~up_U ~up_like ~w_it ~w_with ~we_? ~we_can ~we_like ~what_S ~when_can ~where_should ~who_does
~would_n ~would_that ~would_the ~you_said
14 =add-hands:S2 =ask-amount:S2 =ask-amount:guess =ask-guests:S0 =ask-guests:guess =ask-safety:frame
=ask-safety:most =ask-temperature:S2 =ask-why:to-step =cancel-timer:S1 =choose:to-choice =cook-away:S1
=drop-dish:guess =report-guests:phrase =report-out:to-step ages allergies allergy begun blade
change clean continue convection countdown doneness drink flickered free grated gwen helper
himself hood kilos lose mad marks mash missus mo muffin niece nuts offered onion pete racket
rather reckon rundown sadly salting save sesame short shout situation smoke somehow strike
strong sub tins totally typo vegetarian wind wrote ~,_gone ~K_am ~K_d ~K_off ~O_goes ~O_let
~P_had ~S_as ~U_before ~U_but ~U_have ~U_said ~V_not ~V_t ~^_going ~^_got ~^_never ~^_till
~^_went ~am_up ~any_K ~are_off ~at_what ~c_. ~c_like ~c_now ~can_$ ~can_O ~d_. ~d_U ~d_more
~does_this ~first_then ~have_already ~here_and ~here_now ~i_had ~if_there ~it_not ~it_so ~me_and
~me_some ~n_will ~no_thanks ~not_? ~not_me ~not_out ~now_that ~ok_i ~on_now ~other_O ~out_but
~said_$ ~say_? ~say_in ~since_i ~still_O ~that_w ~the_d ~them_. ~there_has ~till_they ~us_.
~us_n ~us_now ~when_d ~where_V ~where_do ~why_K ~why_it ~why_n ~with_me ~yes_did ~you_let ~your_U
15 <t:80> =ask-next:to-choice =ask-safety:guess =ask-why:some =cancel-timer:frame =report-guests:few
=report-not-done:all =resume:all =resume:guess =running-behind:few =set-guests:to-confirmation
=set-timer:to-reading =set-units:frame =skip-step:S1 =undo:S0 able accident asking bigger calibrate
control correct current dangerous fahrenheit far frail frenching fyi great hon keeps letting
looks lowered missed move neighbours nowhere och pardon picked poke practically remind removed
rests rid searing silence slowly squeamish supper tap tented transplant trip truss trussed
twins uncovered volunteered warm whatsoever works ~,_me ~,_would ~K_i ~K_then ~P_are ~S_d ~S_will
~V_already ~V_our ~V_would ~^_for ~^_off ~about_d ~after_n ~already_K ~already_in ~am_d ~as_K
~but_V ~but_i ~c_O ~can_V ~down_is ~for_how ~go_out ~go_with ~going_in ~going_out ~has_$ ~have_i
~how_on ~i_got ~it_do ~like_a ~no_it ~now_till ~now_what ~ok_, ~on_let ~out_now ~out_when ~say_n
~that_went ~there_a ~this_at ~those_$ ~to_no ~up_this ~w_. ~was_off ~what_about ~what_i ~why_am
~yes_go ~you_what à
16 =ask-options:S1 =ask-plan:frame =ask-plan:most =ask-plan:some =ask-temperature:to-doneness
=help:phrase =report-done:to-choice =report-setup:all =set-timer:few =shift-serving:some =undo:guess
bout cable cube delay diaper duty electric element exactly extra halfway house jus lads lower
meets popping prepone rarer risky scratch setting shellfish shoved shows sleeps squeaky steady
tenderised trifle vegan ye ~,_thanks ~K_till ~P_down ~P_was ~P_who ~S_than ~V_! ~V_about ~^_me
~^_t ~after_$ ~am_c ~am_here ~and_her ~are_a ~as_before ~before_we ~d_out ~do_that ~does_V
~done_here ~first_at ~goes_over ~here_till ~how_we ~it_have ~me_how ~n_yet ~never_put ~not_i
~not_we ~on_. ~on_this ~or_did ~or_so ~other_. ~out_yet ~since_y ~t_U ~that_from ~till_the
~too_, ~up_? ~up_when ~was_out ~we_still ~what_does ~when_V ~will_you ~would_it ~would_say
~yes_$ ~yet_to ~you_for
17 =add-hands:S1 =ask-plan:S2 =ask-status:few =ask-time-left:frame =cook-away:all =cook-away:few
=correct:all =deny:all =lack:S3 =note-guest:S3 =repeat:to-confirmation =watch:S1 aim behaving
changed chemo choices cried english noise olive pet pulling real rosy saignant sec shy spot
strained such trivet tying using whipped whisht wrapped ~,_$ ~K_this ~O_what ~S_out ~V_say
~^_all ~^_gone ~a_second ~c_i ~for_now ~is_after ~like_it ~n_about ~n_my ~n_why ~no_still ~one_out
~out_till ~say_so ~she_can ~so_that ~us_this ~we_take ~when_she
18 =ask-how:S3 =report-not-done:to-confirmation blackout chopping creeping ill kip label mistake
needle nipping parchment peek push silent sliced stands suggest ticked timers trimmed turning
washed while ~,_. ~._i ~S_ago ~at_$ ~d_too ~done_all ~for_P ~for_us ~it_you ~still_going ~that_n
~that_the ~was_not ~why_not ~why_that ~you_no
19 =ask-options:S2 =shift-serving:S2 beast beeping cooker crack happened ignore less pregnant
righto rob teaspoons thin things tripped un wee ~am_out ~any_S ~be_too ~before_i ~has_K ~it_t
~n_i ~no_how ~not_before ~on_or ~up_where ~we_on ~what_$ ~which_O ~will_take
20 =affirm:most =lack:all app bailed bored boyfriend crumble explain hob least necks others
phone slower state stock stuck tick ~am_on ~d_n ~how_does ~n_so ~says_it ~so_, ~that_was
21 =ask-how:S2 =pause:most invited part ~P_at ~S_i ~me_of ~n_still ~off_to ~so_n ~yes_that
22 =affirm:guess =start-over:S0 horses months ~go_for ~where_we
23 thereabouts ~^_had ~is_when
24 =ask-why:few =note-guest:guess
25 =correct:guess =resume:most flu ~are_S`);

/** Words that have been said to the helper. */
export const familiar: ReadonlySet<string> = new Set(
  `a abeg abide able abort about abouts above absent absolutely abuela accent acceptable accident
accidentally accompaniment account achieve act acting actual add added adding adjust adults
advise afraid afresh after afternoon again against age aged ages ago agrees ahead ahmed aid
aim aiming air airport aisle ajar alarm alcohol alert alex alight all allergic allergies allergy
allowed almost alone along alongside already also alternative alternatives altitude altogether
aluminium always am amandine amazing american amount amy an ana anchovies ancient and anil
anna announcements announcing another answering any anybody anymore anyone anything anyway
anywhere aperitif app apparently apple appointment approximately apricot apricots apron are
arguing arm around arra arrival arrive arrived arrives arriving arrowroot arse arseways as
aside ask asked asking asks asleep asparagus assembled assign assisted assumes at ate attention
aunt auntie aunties aunty autocorrect ava available average aw away awful awfy ay ayuh b bab
babak baby babysitter back backofen backs bad badly bag bailed bairn bairns bake bakery baking
ballet ballpark balls band bands bang banging banjaxed bank bar barbecue bare barnaby basket
baste basted basting batch bath bathing batter battery battle bay be bea bean beans bear beast
beat beautiful beautifully beauty became because become becomes becoming bed bedlam bee beef
been beep beeped beeping beer beets before beforehand beg began begged begging begin beginning
begun behaves behaving behind being belay believe bell belly below ben bench benefit benji
bent bernard bert beside besides best bet beth better between bev beyond bhaiya big bigger
bill billowing bin binning bins bird birds birthday bit bits black blackout blade blanched
blank blast blather blazing bleeding bleeds blender bless blethering blew blinked blinking
blistering block blocked blood bloody blowing blown blue bluetooth board boat bob boeuf boil
boiled boiling boils bone boned boneless bones bonfire bonjour boot boots border bored borrow
boss bossy both bother bothered bothering bottle bottom bought bouillon bout bowl box boxed
boy boyfriend boys braised brand brb bread breads break breaker breath breathe breather bred
brents brew bridie brined bring bringing brining brisket broiler broke broken brother brought
brown browned browning brush brussel brussels btw bubbling bucket bucks budged bugger building
built bum bump bumped bums bunch bung bunged burn burned burner burners burning burns burnt
bus business bust busy but butcher butter buttered butterflied buttering buttermilk butternut
button buy buying buzz buzzer buzzing by bye bypass c cabbage cable cake caleb calibrate call
called calls callum calmer came can cancel canceled cancelled candles cap car caramel caramelised
card care careful cares carked carload carol carries carrots carry carrying carryover cars
carton carve carved carving casserole cast cat catch catched caught cauli cauliflower cautious
celiac celsius center centre cerys chair chance change changed changes changing charcoal charge
chasing chatter cheap cheats check checked checking cheddar cheers cheese cheesecake chef chemo
chemotherapy cher chest chew chewing chewy children chill chilling chimney chip choice choices
choking chooks choose choosing chop chopped chopper chopping chris christmas chronic chuck
chucked church chutney cider ciggies circling circulation circumstances claims clay clean cleaned
cleaning clear cleared clever clicked climb climbed climbing climbs clock clogs close closed
cloves clue coast coat coats cobber cocked code coeliac coffees colander cold colder colette
collapsed collapsing collard colleague collect colour come comes coming commands commenced
commit company compared complete completed completely compound conked connected connection
cons consider continental continue control convection conventional convert cook cooked cooker
cookies cooking cooks cool cooler cooling cools cope cord core cores cork corkscrews corn cornbread
corner cornered cornflour cornstarch correct correction couch could count countdown counted
counter countertop counting country counts course cousin cousins cover covered cow crack cracked
cracking crackling crackly craic craig cranberry crank cranked cranking cranky crap crawled
crawling cream creamed creamy creeping cremated creme crept crew cried crimbo crime crisp crispy
cross crowd crowds crumble crunchy crust cry crying crème ctrl cube cubes cup cupboard cupboards
cups curdled curious currant current cut cutted cutting cylinder célia côte d'ye d'you da dad
daddy daft dairy dale dan dana dang dangerous dans dare dark darling date dates daughter dauphinoise
dave day days de dead dealt dear deb decent decided deciding deck declan deep deepest deglaze
deglazing degrees delay delayed delaying delete delivery demanded den dental dentist department
depends derek des detector dev dey diabetes diabetic dial dialled diamonds diaper did died
dietary difference different differently digging digit dijon dine diner ding dining dinner
dinnertime direction directly disagree disaster disclosure disgusting dish dishes dishwasher
dishwater display disposable disregard distracted disturb ditch ditched do doable doctor does
dog dogs doing don'tcha dona done doneness door doorbell doors dot double doubtful dough down
dragging dragon drained draining drank draped draw drawer dressed dried drink drinkers drinking
drinks dripping drippings drips drive driveway driving drop dropped dropping drops drowning
drum drunk dry dryer drying duck ducking due duluth dusted dusty duty dying e e3 each ear earlier
earliest early earshot earth ease easiest easter easy eat eaters eating eats edge edges egg
eggs either elastic elbow electric electricity electrics element elias ellen ellie else embarrassing
empty emre enamel end ends english enough entire entirely entry epipen error essen et eta european
eve even evening events ever every everybody everyone everything everythings everywhere ex
exactly examples except exchange excuse exist exists expect expecting explain explanation extinguisher
extra extracted extractor eye eyeing eyes f face faff faffed faffing fahrenheit failure fainted
fair fall fallen family fan fancy far farouk fast fat father fatima favour fear fed feed feeding
feel feels feet fell fella fellas fergal fern feroz ferry fetch fever few fewer fierce fight
fighting figure fill fillet filling film final find finding fine finger fingers finish finished
finishes finn fire firehouse first fit fits fix fixing flag flame flames flash flashing flask
flat flatmate flatmates flew flick flicked flickered flickers flight flip flipped floor flopped
floss flour flower flu foil folks follow following food fool foot football footy for forerib
forever forget forgot forgotten fork forks form former fort forward found fraiche frail frankly
fraîche free freeze freezer french frenched frenching fresh freya fridge friend friends frog
from front frozen fruitcake frying ft full fully fumes fun functions funny furniture furry
further fuse fussy fyi gabbing gain game gander gang gap garage garden garlic gary gas gash
gasping gatineau gauge gave geelong generous gents german get gets getting ghee ghosts gifts
gil gin girl girlfriend give given gives giving gizmo glass glasses glaze glazed glazing glory
glove gluten gnaw gnawing go gob god goes going gold golden gone good goodness goose gorgeous
got grab grabbed grace graham grain grams gran grand granda grandad granddad granddads granddaughter
grandma grandmas grandmother grandmothers grandpa grandparents grandpas granny grape grate
grated gratin gratins grave gravy grease greased great greek green greens greet greg greta
grew grey grid grill grocer groceries ground growing grown grownups grows gruyère guess guest
guests guidance guide gun guy gwen gym ha haan had hadad hair hairdresser halal half halfway
hall halved hamish hana hand handed handful handheld handle hands hang hangin hanging hank
hanna hannah happen happened happening happens happy hard harm has hassle hate hates hats hauled
have having hazard he head headcount heading headlines heads heah heaped hear heard hearing
heart heat heathens heating heats heavens heavy heck held hello help helped helper helping
helps hen hendersons hens her herb herbs here hers herself hey hi high higher hilarious him
himself his hit hits hitting hives hob hoicked hold holding hole holiday holler holyhead home
homemade hon honest honestly hood hook hoover hop hope hopping horror horseradish horses host
hot hotter hour hours house household hovering how huh hundreds hung hungry hunnerd hurt hurts
husband hush i ice icebox icy id idea ideas idiot if ignatius ignited ignore ill immune immunity
imperial important imran in inch include including incredible india ines inform infused ingredients
ingrid injection inner inside insisting insists instant instant-read instead instructed instruction
instructions interchangeable internal interstate into intolerant inverter invitation invite
invited involved iron is it items itself jaccarded jaggery jam jar jaysus jean jeez jelly jenny
jerry jess jesus jet ji jiffy jim jo joan joanie job jobs jodie joe johnsons join joined joining
joint jonah joneses joost jose joy judge juice jump jumped jumping jumps jus just-now justify
kaput kaputt karen kasper kate keen keep keeping keeps kegs kelly kept kern kernel kettle kev
kevin kick kid kiddies kidney kidneys kids kill killed killing kilo kilos kind kindly kip kiri
kit kitchen knee knife knitting knives knob knock knocked knot knots know knowing known knows
kosher kowalskis kumara la label lack lacks lactose lad ladies lads lagging laid lamb lamberts
lammkeule land landed lands laps lard larder lasagna last late later latest latter laughing
law laws lay laying layla leadville leaflet leah leaning learned least leather leave leave-in
leaves leaving leeds left leftover leftovers leg lemon lena lend lending length lenny lent
leo less let letting levels liam lick licked lid lie lieke lies lieu life lift lifted lifting
light lights like liked likely likes lily line lino lips lisa list listen listening lit little
littlies live living lizard load loads loaf lodger log logic loin long longer loo look looked
looking looks loops loose loosely lord lorry lose losing lost lot lottie lou loud louder lounge
love lovely lovers low lower lowered lowest lucia luck lucy lumps lumpy lunch lying läuft ma'am
mac mad made madre maggie main mains make makes making malt mama man manage mandoline manual
many marching marco marcus margarine marge marguerite maria marinade marisol mark market marks
marta mash mashed mashing mass match mate mates matter matters maureen mavis max may maybe
me meal mean meaning means meant meantime meanwhile measure measured measurement measurements
measuring meat mechanically medium mediums meets mei melt melting members mention mentioned
menu mess message messages messing met metal method metric mhm mick microwave middle might
mike mile miles milk milking milks mill mince mind minding minds mine minimum mint minutes
miracle miracles misheard misprint misread miss missed misses missing missus mistake mister
mitt mixed mixer ml mo mob mode model moira mom moment mommy moms money monkeys monster month
months mooing mopping more morning most mother motorway mouldy mountains mouth mouths move
moved moves movie moving mrs much mucking muffin mum mummy mummys murder mush must mustard
mute mutton my myself mía n n1 na nadia nagging nail name names nan nana nap napkins napped
ne'er near nearer nearly neat necessary necks need needed needle needs negative neighbor neighbors
neighbour neighbours neil neither nelly nephew nervous netted netting never new news next ngozi
niamh nice nicely niece night nil nip nipped nipping no noah nobody noise none nor nora normal
normally not notch note nothing notice noticed notifications notify notion now nowhere nudge
nudged nuisance numb number numbers nursing nut nuts o oat obviously och oclock odd of ofen
off offer offered offering office offie oh oil oiled ok oksana old oldest oldies olive ollie
omar omit on once one ones onion onions online onto onwards opal open opened opposed option
options or order orders oregano original orla other others otherwise otis ottilie ought ounces
our ours out outside outta oven ovens over overcooked overdoing overdone overnight overshot
overview overwhelmed ow owen own owned ox pace pacing package packed packet pains pair pal
palaver pale palm palms pan panel panic panicked pans papa paper paperwork parboil parboiled
parboiling parcel parchment pardon parents parked parking parsley parsnips part party pass
passed passes passing past pastor pastry pat patels patient patients patted patting pauline
pause paws pay paying peace peaked peaks peanut peas peek peel peeled peeler peeling pen pencil
pending people peoples pepper peppered per perched perfect person persons pescatarian pet petal
pete petra petrol phew phone pick picked picking picture pie piece pieces pills pin pinch ping
pinged pink pinker pipe pitch pitching place places plain plan plane planned planning plans
plate plated plates plating platter play playing plenty plot plow plumber plus pm point pointing
pointless poisoning poke poked polish poorly pop popovers popped popping pork porky port portion
portions position posses possess possibilities possibility possible postpone pot potato potatoes
pounds pour poured pouring powder power practically practice prayer pre prefer preference prefers
pregnant preheat preheated preheating prep preparation prepared prepone present presents press
pressed pretend pretty price prime print printed priya probe probed problem procedure proceed
processor progress proofing proper properly proportions propped propping pros proved proving
pub pudding puddings puffed pull pulled pulling pumping pumpkin purchase pure purple purpose
push pushed put puts putted putting quantity quarter question quick quicker quickly quid quiet
quieten quite rack racket radiant radio rail raised raj rajiv ran rang range rare rarer rate
rather ratio ravi raw ray reach reached reaches reaching reaction read reading readings reads
ready real reason reasoning recall recipe recked reckon reckons recommend record recruit red
reduce reduced reducing reduction reed reflection refreeze refrigerated refuse regular reheat
relatives relight religion remain remaining remember remind reminder reminders reminding reminds
remove removed rendering rental repeat rephrase replace replaced replacement report requested
required requiring rescue reset rest rested resting restore rests resume retard returned reverse
revert rewind rib ribeye ribs rice ricer rich rid right righto rimmed ring ringing rings ripper
rise risen rising risk risky rite road roads roar roaring roast roasted roaster roasting rob
rock rocked rocks roles roll rolled rolling rolls ron room roommate root roots rope roped rory
rosa rose rosemary rosy rosé rotten rough roughed roughly round roux rub rubbed rubbish ruin
ruined rump run rundown rung running runny runs rush rusted ruth s'pose sack sad sadly safe
safely safer safest safetys sage said saignant sake sal salad salon salsa salt salted salting
salts salty salvage sam same sandwiches sanjay sat saturdays sauce sauces sauna save saving
saw say saying says scalded scalding scale scalloped schedule schmest school scissors score
scored scoring scotch scout scrambled scrap scrape scraped scraping scratch screaming screen
scrubbed sea sean sear searched seared searing seasoned seasoning seated seats seawater sec
second see seeing seem seems seen sell send sends sense separate separator sequence serious
serve served service serving sesame set setting settle settled shake shaken shaking shall shallots
shallow shape shaped share shares sharons sharp shave shazza she shed sheet shelf shell shellfish
shelves sherry shh shift shifted shirt shit shoe shoes shoot shop shopping shops short shortly
shot should shoulder shout shouting shove shoved show showed shower showing shown shows shredded
shush shut shy sick side sides sidetracked sidewalk sieve sigh sign silence silent silver silverside
silverskin simmer simmering simmers simple simplify since sing single sink sinking siobhan
sir sirloin sister sit sitrep sits sitting situation size sizzling skillet skimmed skin skip
skipped skipping slack slate sleep sleeping sleeps sleeve sleeves slice sliced slices slicing
slid slide slimy slipped slipping slips slow slower slowly small smashing smeared smell smelling
smells smoke smoked smokes smoking smoky snow so soaking sock sodium sofa soft softening soggy
sold soles solid some somebody somehow someone something somewhere son soon sooner soonest
sorry sort sorted soufflé sound sounded sounds soup sour sous space spare spark speak speaking
special speckled speech speeches speed spell spices spilling spinach spitting splashed split
splitting spoil spoils spoke spoon spoons spot spots spouts spreading sprigs sprout sprouts
spud squash squeaky squeamish squeeze stabbed stage stairs stale stand standing stands staring
start started starter starters starting starts starving state station status stay stayed staying
stays steady steak steaks steam steamed steaming steeping step stepping steps steve stewed
stick sticker sticky still stir stirred stirring stitches stock stone stones stood stop stopped
stopwatch store story stove straight strain strained straining strait strays streaming street
stretch strictly strike string strings strip striploin stripped stroller strong strongly struggling
strung stuck stuff stuffed stuffing sub substitute such sugar suggest suggestion suggestions
suit sulk summarise summer sun sunflower sunk supermarket superstition superstitious supper
support suppose supposed sure surely sushi suspend swap swear swears sweet sweetheart swell
swelling swells swimming switch switched switching swollen system systems table tablespoon
tablet tablets tackle tad tail tailed take taken takes taking talk talked talking tama tap
target tariq tarragon tasks taste tasted tastes taxi tea teach team tearing tears teaspoon
teaspoons technique teddy teenagers teeth telephone telephoned tell telling tells telly temperature
temple tenderised tenderloin tent tented tenting tents tepid tess test tested text texted than
thank thanks that thaw thawed the their theirs them themselves then theo there thereabouts
thermometer thermometers these they thick thicken thickened thickens thickest thin thing things
think thinking thinners third this those though thought thoughts thousand thread threw throat
through throw thumb thyme tick ticked ticket tickets ticking ticks tidying tie tied tight til
tiles till tilly tim time timeline timer timers times timetable timing timings tin tinfoil
tinkle tins tiny tip tips tit to today toddler toddlers together told tom tomasz tomek tongs
tonight tons too took top topped topping tops topside toronto total totally touch touched touches
touching tough tow toward towel towels town track tractor traffic tragic train transplant trash
travelling tray trays treat trev tribe trick trickle trifle trim trimmed trimming trip tripped
trivet trouble truck truss trussed trussing trust trusted truth trying turn turned turning
turns twas twice twine twins tying type typed typo tyre ugh un uncle uncovered under undercooked
underdone underneath understand understanding understood underway undo undue unfinished units
unless unpause unsay unset unusable up update upper ups upside upstairs urgent us use used
useful using usual usually valmera various vegan vegetable vegetables vegetarian vegetarians
veggie ventilator verde verna versus very vi vinegar visitor visitors volume volunteered vote
voted wait waited waiting wake walk walkabout walked walking wall walls want wanted wanting
wants war warm warmed warmer warming warn warning was wasabi wash washed washing watch watching
water way ways we weak wean weans wedding wee weeds week weeks weigh weighed weighs weight
weights weird weirdo well wendy went were wet whack whacked whadda whaddya what whatcha whatever
whatsoever wheat when whenever where whereabouts wherefore whether which whichever whichevers
while whip whipped whisht whisk whisked whisking whistle white who whole whoosh whopper why
wicked wife wiggled wilf will wilsons wilted wim win winced wind window windows wine winning
wins wipe wiped wire wired wireless wise wish with without wobbly wojtek woke woman won wonder
wondering wood word words work working works worktop worried worries worry worse worth would
wouldja wrack wrangle wrap wrapped wreck wrecked wresting wrestle wrist wrists write writing
written wrong wrote y ya yank yapping yarn ye year years yeast yell yelling yes yesterday yet
yoghurt yogurt yoke yorkshire yorkshires yorkshre you young your yourself yusuf z zero zeros
zhoo zip`.split(/\s+/),
);
