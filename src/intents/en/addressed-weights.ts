/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-22 =report-trouble:guess ~more_O ~some_more
-21 =emergency:S0 ?talk6 fair
-20 =courtesy =courtesy:phrase =emergency:guess ?talk5 ?talk7 pages restaurant wedding ~,_a
~^_her ~with_U
-19 #words0 draw group ~,_after ~,_put ~K_say ~O_had ~^_$ ~get_down ~like_mine ~you_get ~you_to
-18 =courtesy:S0 counted loo poor ~,_here ~,_you ~any_O ~going_, ~here_we ~my_S ~n_all ~that_will
~you_done
-17 #heard0 =courtesy:some =set-guests:guess =set-serving-time:S2 asked drinking eights jumper
mine morning neighbour question remember smoking tooth ~,_your ~?_it ~U_P ~V_she ~V_y ~and_got
~and_still ~for_you ~is_for ~n_n ~no_i ~that_down ~the_y ~what_they ~why_is ~you_on
-16 <y> apparently cats day deck dress level number park pin roll sandwiches shoe speaker sun
week ~,_with ~P_this ~and_that ~at_, ~at_K ~hers_at ~i_P ~is_why ~let_it ~not_that ~thanks_P
~that_O ~to_him ~went_O ~went_to ~y_U ~you_i
-15 <n:40> =deny:some =emergency:all =emergency:few ?heard0 believe blight box caravan career
daddy due fancy hello judges ladder linda moved pub pudding rice small starter swears swimming
tender whoever yours ~,_ours ~,_says ~K_y ~O_like ~U_out ~U_till ~^_shall ~after_you ~goes_,
~i_$ ~n_then ~n_w ~on_U ~out_in ~say_K ~says_here ~shall_we ~that_U ~that_to ~then_the ~there_you
~they_O ~they_put ~this_for ~who_V ~y_and ~y_we ~you_n
-14 <n:200> =acknowledge =choose:S2 =choose:guess =courtesy:S1 =report-reading:to-reading =start-over:S1
=undo:frame ?talk4 barbecue booked chairs couch cupboard dollars dublin frying goals hair holidays
lady large lives loud lovely meeting mortgage never owe parking petrol pressure queen speaking
talks teacher thousand window work years ~!_did ~,_off ~,_who ~?_is ~?_the ~?_yes ~K_never
~O_! ~O_to ~O_y ~^_he ~am_done ~am_the ~and_by ~and_not ~c_w ~do_my ~done_it ~get_there ~got_n
~his_O ~may_$ ~n_over ~not_you ~on_, ~one_, ~over_that ~second_on ~tell_them ~them_about ~there_yet
~to_a ~were_n ~yes_a ~yes_i ~you_should ~your_K
-13 #O3 #heard3 =acknowledge:S0 =acknowledge:phrase =add-hands:S3 =affirm:S3 =report-out:S2
?talk8 bathroom birth blue born carvery ella ends except film fixed goalie gorgeous he heating
loads lows machine outside page paid pass phoenix picking pie taking taxi these third touch
try vet wonder yourself ~,_and ~._U ~._your ~?_U ~K_about ~O_they ~P_did ~P_for ~S_, ~U_get
~U_n ~V_first ~am_n ~can_P ~did_you ~do_if ~does_O ~gone_out ~her_and ~in_these ~my_first ~n_would
~says_d ~she_V ~that_it ~the_U ~then_we ~this_the ~was_S ~you_$ ~you_U ~you_like ~yours_V
-12 =ask-options:frame =cancel-timer:guess =choose:most =describe-roast:to-reading =resume:some
=shift-serving:S3 ate boiling breaking channel chef damp essay feeling found grab hi hide lights
magazine manager meter music nose pizza politics pool pumpkin radio rain row salmon scary sends
sent service shot sold spain tea text wanted your ~!_get ~!_i ~!_you ~,_say ~,_she ~,_their
~?_that ~K_P ~K_was ~O_out ~O_says ~P_never ~U_after ~U_to ~all_done ~are_about ~at_P ~could_be
~d_S ~does_a ~does_he ~get_a ~get_your ~had_K ~have_another ~have_done ~he_does ~he_put ~her_$
~her_P ~him_, ~it_goes ~it_when ~mine_i ~n_as ~n_from ~n_or ~never_got ~not_so ~our_U ~put_your
~said_to ~says_$ ~says_take ~she_did ~since_O ~still_, ~there_$ ~there_was ~they_were ~to_us
~took_us ~was_d ~was_i ~were_at ~you_have ~your_V ~your_go
-11 #guess:S3 =correct:S3 =deny:S3 =emergency:S2 =note-guest:to-reading =report-not-done:few
=report-reading:S2 =report-trouble:S3 =set-serving-time:S1 =set-timer:guess ?heard0:guess ?heard3:guess
argument bacon breakfast bus charge chestnuts clutch dishwasher dusted excuse gingerbread highs
jack legs march office porridge post remove road roof see seriously shuts sleep starts steak
sugar thumb weather weighs white wifi young yourselves ~K_he ~O_O ~O_said ~U_you ~^_these ~^_those
~^_why ~about_to ~and_go ~at_U ~c_but ~c_if ~c_y ~d_! ~d_a ~did_it ~from_O ~go_and ~got_$ ~had_V
~he_has ~him_$ ~him_n ~i_like ~in_on ~is_down ~is_his ~is_never ~it_! ~it_too ~me_up ~mine_V
~more_than ~n_was ~n_when ~never_U ~not_it ~off_V ~on_P ~on_in ~or_the ~out_U ~out_by ~over_,
~said_no ~said_the ~she_said ~so_how ~tell_P ~these_K ~they_U ~they_had ~this_U ~to_w ~took_d
~up_in ~was_w ~we_U ~when_did ~who_did ~yet_, ~yet_? ~your_S
-10 #expecting:false:few =ask-status:S2 =correct:few =correct:some =lack:to-confirmation =repeat:guess
=report-out:guess =report-started:S3 =report-trouble:few =set-guests:to-guests =undo:few afraid
asleep baker bottles bridge choosing coach college crying died divorce dollar door every flight
fourth gran grandad her kick lift load look lounge may milk nana notice oh party potato quiet
reduced sausage scored season served sister song surgeon towels worth you ~!_no ~,_did ~,_have
~,_let ~,_never ~,_that ~,_then ~K_did ~K_she ~O_i ~O_n ~O_took ~O_we ~O_your ~P_i ~P_said
~P_you ~S_would ~U_? ~U_in ~U_now ~U_there ~U_would ~^_second ~^_too ~after_the ~am_never ~and_let
~and_some ~and_you ~are_for ~at_your ~been_K ~been_c ~before_V ~could_have ~did_the ~done_,
~done_the ~down_now ~got_more ~his_U ~how_did ~is_yours ~it_already ~it_by ~like_$ ~me_, ~my_O
~n_P ~n_U ~n_till ~n_to ~of_a ~on_his ~other_$ ~out_V ~out_there ~over_at ~put_out ~put_you
~says_S ~so_his ~than_me ~thanks_$ ~the_O ~them_$ ~to_the ~were_d ~when_the ~where_is ~will_U
~yes_, ~yes_P ~you_are ~you_do
-9 <t:200> =acknowledge:S3 =acknowledge:all =acknowledge:few =add-dish:S3 =affirm:few =deny:frame
=emergency =report-not-done:S2 added again allergic allowed banana beat big biscuit boat boiler
broken caller capital carol chefs cloudy colour contestants cost cut did drawer dum episode
even goal grill him homework honestly hot hours kickoff line lisbon million mooing mummy online
points prices quite raining say scallops seat she shoulder team thanks used who ~,_said ~?_can
~K_a ~K_you ~O_$ ~O_at ~O_does ~O_got ~O_were ~P_$ ~P_K ~P_let ~P_we ~S_? ~S_there ~U_$ ~U_U
~V_him ~^_his ~and_do ~and_in ~another_O ~are_at ~are_d ~are_there ~are_these ~at_my ~be_the
~before_$ ~c_as ~can_i ~d_? ~do_they ~done_yet ~first_and ~for_U ~for_me ~from_there ~go_,
~he_U ~he_is ~i_will ~if_n ~in_his ~in_your ~is_about ~is_this ~is_your ~it_a ~it_i ~it_over
~it_took ~like_that ~me_with ~mine_in ~n_O ~n_are ~now_i ~off_at ~off_you ~other_V ~our_O ~put_me
~she_took ~should_get ~so_for ~take_a ~that_S ~the_n ~the_one ~there_, ~there_any ~they_did
~those_K ~to_your ~up_with ~we_had ~went_off ~would_V ~y_$ ~y_V ~yes_! ~yes_V ~you_, ~you_up
~your_O ~your_P
-8 =affirm:S1 =ask-next:S1 =ask-options:S3 =ask-status:S3 =ask-status:frame =emergency:some
=help:S1 =report-reading:S3 =set-doneness:frame =undo:S2 across army baby bags bank beta cap
careful club crispy cuts da delicious fall fryer funnier greenhouse june lock mum myself nav
our ours paper percent price queue read recipe rewind ring room rung rupees sat secret shade
sirloin spell spud suitcase ugh walks zip ~!_that ~,_all ~,_his ~,_must ~,_no ~,_y ~,_yours
~?_how ~K_me ~O_a ~O_have ~O_it ~O_on ~P_, ~P_got ~S_him ~S_me ~V_S ~V_was ~^_our ~^_so ~after_that
~an_O ~and_if ~are_you ~as_c ~be_c ~but_it ~but_she ~by_y ~can_U ~d_at ~d_would ~did_$ ~done_and
~for_c ~going_$ ~going_off ~have_this ~have_to ~he_O ~her_K ~here_if ~hers_in ~him_at ~i_could
~i_do ~if_the ~in_U ~in_since ~into_a ~is_it ~is_so ~it_c ~it_done ~it_on ~me_about ~must_U
~n_a ~n_c ~not_for ~not_go ~not_like ~of_you ~off_a ~on_i ~one_was ~out_a ~out_for ~said_d
~said_that ~say_$ ~she_has ~she_still ~she_would ~tell_him ~then_he ~these_V ~up_if ~was_like
~we_could ~we_did ~we_went ~went_V ~where_are ~where_the ~will_do ~will_they ~with_this ~you_must
~yours_$ ~yours_now
-7 #U2 <n:999> =affirm:frame =ask-how:some =ask-safety:guess =ask-substitute:S2 =cancel-timer:S2
=courtesy:few =lack:frame =quiet:frame =set-doneness:S3 =set-guests:S3 =undo:S1 answer batteries
bob calls changing chips choir come corkscrew corner darling expenses face find flip freezing
front funny garden getting hall hand high home horse news next nothing rotten sheila shop swear
theirs traffic turkey ways why ~,_O ~,_our ~,_there ~O_, ~O_her ~O_now ~O_would ~P_or ~S_O
~S_off ~U_S ~U_do ~U_or ~U_was ~V_U ~V_does ~V_who ~^_am ~^_ours ~^_w ~^_where ~all_in ~already_?
~am_still ~and_we ~any_V ~as_i ~at_you ~been_at ~c_about ~c_of ~c_put ~c_that ~d_of ~did_U
~do_for ~do_mine ~first_, ~for_that ~get_it ~go_U ~gone_up ~got_my ~had_my ~have_an ~have_d
~have_you ~he_V ~her_, ~here_V ~his_P ~i_can ~in_d ~in_here ~is_t ~it_n ~like_U ~like_an ~me_now
~n_already ~n_and ~n_been ~n_can ~of_this ~ok_K ~on_her ~one_has ~one_with ~other_K ~ours_at
~out_! ~out_c ~over_here ~over_there ~say_to ~she_will ~since_n ~still_does ~still_on ~than_the
~that_is ~then_i ~then_she ~till_O ~too_K ~us_c ~w_? ~was_at ~was_n ~was_still ~when_$ ~which_S
~would_take ~yours_is
-6 ! #O1 #expecting:true:most #guess:all =deny:S1 =describe-roast:guess =drop-dish:some =help:guess
=lack:S2 =lack:guess =resume:few =set-serving-time:guess ?heard0:phrase alarm bag calling card
coats country cover curtains each fill goes hook iron january la last leeds lid mashed name
needs over pavlova play plumber preheated run saw says shakes shopping sign skip sofa spelling
standing stay staying stew temperature thread threw usual vents wash weeks whole wore ~,_,
~,_can ~,_is ~,_now ~?_V ~K_from ~K_them ~O_will ~P_put ~S_what ~U_, ~U_all ~U_says ~V_O ~V_any
~V_can ~V_had ~V_or ~V_other ~V_these ~V_your ~^_does ~^_they ~^_who ~ago_, ~all_i ~are_my
~at_V ~c_what ~does_hers ~first_V ~for_O ~for_y ~had_it ~had_n ~have_had ~have_never ~he_S
~he_never ~her_U ~here_is ~him_in ~how_do ~in_$ ~it_going ~it_take ~me_P ~me_when ~mine_out
~more_, ~must_be ~n_not ~not_do ~or_is ~our_K ~out_K ~over_n ~put_my ~put_that ~say_, ~says_a
~she_was ~so_. ~still_U ~take_O ~then_you ~this_is ~till_c ~to_O ~to_c ~w_, ~w_and ~we_, ~we_V
~why_are ~with_O ~with_that ~you_will
-5 #O2 #expecting:true:few #expecting:true:some #guess:S1 #guess:S2 =ask-amount:S1 =ask-amount:all
=ask-guests:S1 =ask-safety:S1 =ask-temperature:S1 =ask-temperature:guess =ask-time-left:S1
=ask-time-left:most =choose:S1 =quiet:S2 =report-done:S2 ?heard0:frame ?heard1:guess ?heard5:guess
aunty average bedrooms best book bread but cake carpet carve cent classic cleaning closed coming
cooking council course date decent dryer e everywhere football garage gate gone goose handle
help hitting late leaves left leo likes made melt mother older people pick programme quarter
radiator raw reindeer rent ribeye seen seville sick sit still stir stone sweet switch there
they time toast truck warning yet ~,_V ~,_could ~,_ok ~,_on ~,_t ~,_to ~?_n ~K_his ~K_were
~K_your ~O_and ~O_say ~O_was ~P_and ~S_K ~U_her ~U_us ~U_y ~U_your ~V_all ~V_my ~V_since ~V_you
~^_out ~^_take ~^_the ~^_yes ~^_you ~a_K ~am_at ~any_U ~are_this ~at_c ~be_there ~c_your ~did_a
~do_a ~do_n ~do_not ~does_your ~down_and ~first_was ~for_V ~for_your ~goes_off ~has_a ~has_not
~have_gone ~he_can ~he_says ~him_out ~his_K ~i_? ~in_n ~is_S ~is_all ~is_d ~it_at ~it_out ~it_says
~me_i ~mine_$ ~mine_was ~more_K ~n_? ~n_S ~n_for ~never_V ~no_O ~now_K ~now_on ~of_V ~of_here
~off_is ~other_one ~out_? ~say_when ~she_c ~should_take ~so_c ~some_O ~still_S ~still_in ~take_it
~take_your ~tell_her ~that_for ~the_second ~them_in ~there_were ~too_$ ~too_U ~up_V ~up_till
~us_on ~who_was ~why_. ~would_you ~you_in ~you_take
-4 #P2 <t:100> <t:40> <t:550> =ask-how:phrase =ask-why:S1 =drop-dish:S3 =quiet:most =report-oven:guess
=report-started:few =set-doneness:few =set-serving-time:few =start-over:all =undo:guess =undo:most
?heard1:frame ?heard2:frame ?heard2:guess ?talk3 add another apple ask b break burn burned
bye call called carry chemist chicken chill climb cup cutting days dish does done drop drummers
easter get grey half his hotel kettle kitchen knee lands lemon letters lords marco marcus maths
meet microwave minister nursing other pay penalty pies pipers place remote rest robot roundabout
set shift sides slice spoon starting through too tumble turn use waiter was way weekend weighed
~,_U ~,_like ~,_second ~,_should ~K_got ~K_one ~K_still ~K_to ~O_K ~O_are ~O_down ~S_$ ~S_before
~S_down ~U_me ~U_off ~V_are ~V_for ~V_off ~V_there ~V_went ~^_d ~^_of ~^_she ~^_their ~^_when
~a_P ~and_he ~are_all ~at_a ~be_a ~been_O ~by_the ~c_c ~c_says ~could_V ~do_V ~got_her ~he_goes
~he_must ~he_was ~her_the ~here_already ~him_off ~how_to ~how_was ~in_O ~in_that ~is_K ~is_another
~is_c ~is_going ~is_mine ~is_still ~let_him ~me_on ~n_, ~no_S ~now_? ~now_for ~of_c ~off_$
~ok_U ~on_and ~on_your ~one_$ ~other_U ~out_and ~out_of ~over_$ ~said_it ~second_$ ~should_K
~take_these ~tell_your ~that_ok ~their_O ~then_, ~these_O ~they_get ~this_, ~to_tell ~took_a
~took_out ~us_$ ~w_$ ~was_V ~we_O ~we_should ~when_does ~will_c ~with_him ~would_K ~you_P ~you_did
~you_say
-3 #U3 #guess:most #guess:some #words12 #words7 <n:12> <n:300> =ask-amount:S3 =ask-shopping:guess
=ask-status:some =ask-why:S2 =cancel-timer:S1 =cancel-timer:most =emergency:phrase =report-not-done:S0
=report-not-done:phrase =report-oven:frame =report-setup:frame =report-trouble:S2 =resume:S0
=set-doneness:S1 =set-guests:some =shift-serving:S1 =shift-serving:most ?heard2 any belt bowl
boy burnt butcher cards catch caught chair cheap coast count cow craic delayed duck eats family
fish given ham happy judge lbw leather listen lived many marathon marriage married night nursery
options order pair password pat peel peru plus point prep put ref rough said second side soda
street takeaway tank then though top towel understand undo watching welcome yards yes ~,_he
~,_we ~?_and ~K_that ~O_is ~O_or ~U_as ~V_K ~V_another ~V_down ~V_in ~V_n ~V_no ~V_they ~V_this
~V_too ~V_up ~V_us ~^_and ~^_my ~^_that ~^_your ~all_, ~an_K ~and_a ~and_all ~and_so ~and_take
~and_then ~are_the ~before_n ~by_V ~c_at ~c_in ~c_is ~c_the ~d_, ~d_and ~did_he ~do_it ~do_to
~down_$ ~down_for ~down_to ~for_the ~going_on ~he_K ~he_say ~here_i ~how_are ~how_is ~in_?
~in_S ~in_c ~is_any ~is_not ~it_S ~like_my ~n_here ~n_the ~of_the ~off_, ~on_V ~on_since ~one_more
~or_U ~put_it ~she_U ~so_and ~some_K ~take_V ~that_P ~that_at ~the_other ~they_K ~they_V ~they_say
~till_n ~to_have ~us_at ~was_K ~what_would ~what_you ~when_i ~why_do ~will_be ~with_your ~would_O
~y_? ~you_can ~you_would
-2 #P1 #U1 #frame:S2 #heard2 =ask-status:all =ask-why:all =choose =correct:S1 =emergency:S3
=lack:some =pause:frame =report-guests:S2 =report-reading:S1 =set-doneness =set-doneness:most
=set-guests:S1 =set-serving-time:some =set-timer:S2 =skip-step:S2 ?heard1 ?heard1:phrase ?heard4:guess
?heard6:guess ahead all alone an and awful beer bins blanket boss bucket burning cancel chapter
chin crisp curry dear doctor down dry else end exit expecting finn foot for gluten guests halfway
hands heavy hers honest husband island laundry loose lot men nice no notch once or platform
previously pull quid reads rising rush screen send shelf shirt showing since socks stays takes
that times to weigh yaar yesterday ~,_an ~,_g ~,_go ~,_i ~,_in ~K_at ~K_in ~K_into ~K_since
~K_up ~O_from ~O_him ~O_of ~O_she ~P_have ~P_n ~P_would ~S_at ~U_O ~U_got ~U_his ~U_over ~V_goes
~V_is ~^_no ~^_tell ~^_this ~and_i ~been_taken ~c_$ ~c_a ~can_tell ~did_ours ~did_too ~do_O
~do_this ~do_you ~does_the ~done_you ~down_? ~go_to ~gone_and ~gone_in ~has_been ~have_K ~have_all
~he_said ~he_will ~her_V ~i_O ~i_said ~in_a ~in_may ~in_this ~is_n ~is_was ~is_what ~it_, ~it_does
~n_! ~n_he ~n_y ~no_c ~no_more ~no_you ~not_a ~not_get ~not_the ~of_your ~on_it ~one_is ~or_not
~said_never ~said_she ~second_O ~she_says ~tell_the ~that_one ~then_it ~there_? ~these_c ~they_took
~those_V ~up_, ~up_on ~us_it ~was_a ~was_t ~was_the ~went_out ~what_a ~what_can ~would_have
~yes_we ~you_had
2 #U0 #frame:S1 #frame:S3 #frame:most #phrase:S1 #words5 <n:80> =affirm =affirm:phrase =ask-amount:few
=ask-amount:some =ask-guests:some =ask-next:phrase =ask-plan:S0 =ask-substitute:most =ask-time-left
=cancel-timer:all =describe-roast =help:all =lack:most =note-guest:most =pause:guess =pause:most
=repeat =report-oven:S1 =report-reading =report-reading:frame =report-setup:most =report-started:S1
=running-behind:all =running-behind:some =set-doneness:guess =set-serving-time:phrase =set-serving-time:to-serving-time
=shift-serving =shift-serving:frame =shift-serving:phrase =start-over:most =start-over:phrase
=undo ?heard4:frame ?heard8:guess actual altogether am anything arrived as away bad basting
bath battery beautifully before both button cancelled cool dan dishes drinks drive empty ever
fewer fine finish finished first forks full gin give heard held hits i instructions jess knife
leave list little mate medium might missus more moving nail near not of off old pan plan popovers
rang reach reached repeat rub sack sauce saving serving shape shush single someone sounded
stairs status tablets target teddy tell this timer tonight wait when ~,_do ~,_if ~,_still ~,_the
~,_when ~?_i ~K_after ~K_all ~K_going ~K_has ~K_is ~K_took ~K_went ~K_with ~O_? ~O_over ~O_then
~S_! ~S_since ~S_was ~U_down ~U_for ~U_my ~U_the ~V_because ~V_been ~V_but ~V_her ~V_over ~V_than
~V_that ~V_the ~^_V ~^_after ~^_let ~a_d ~a_no ~ago_V ~already_V ~and_P ~and_his ~and_how ~and_n
~and_out ~as_a ~at_the ~been_U ~been_out ~but_n ~c_? ~c_they ~c_you ~can_do ~could_O ~does_not
~for_my ~from_K ~get_the ~go_V ~got_no ~had_a ~have_no ~here_? ~here_for ~here_the ~i_am ~i_have
~i_still ~if_we ~if_you ~in_as ~in_our ~in_with ~is_V ~is_at ~is_like ~is_put ~it_if ~let_the
~like_K ~me_done ~me_n ~more_will ~my_U ~n_V ~n_of ~not_V ~not_there ~now_you ~of_my ~of_them
~off_K ~off_O ~off_now ~ok_? ~on_n ~on_this ~out_$ ~second_? ~should_do ~so_S ~so_go ~so_let
~still_ok ~take_that ~thanks_. ~the_in ~their_K ~them_V ~took_S ~up_P ~up_at ~us_and ~was_it
~we_are ~we_get ~we_have ~were_U ~were_all ~what_, ~what_P ~what_V ~what_are ~what_is ~which_V
~with_the ~yet_$ ~you_? ~you_the
3 #K1 #K2 #K3 #O0 #frame:S0 #guess:few #phrase:some #words4 <d> <t:300> =add-dish:guess =add-hands:most
=affirm:S0 =affirm:S2 =affirm:to-confirmation =ask-how =ask-options:most =ask-shopping:all
=ask-temperature:few =ask-time-left:all =ask-time-left:frame =ask-time-left:phrase =correct
=describe-roast:phrase =drop-dish =lack =lack:S0 =lack:few =note-guest:S0 =repeat:S2 =report-done:S0
=report-done:S3 =report-oven:all =report-reading:phrase =resume =set-doneness:all =set-guests
=set-guests:to-roast =set-serving-time:most =set-serving-time:to-roast =set-timer =set-timer:all
?heard4 adding already anyway anywhere bird by cheese christmas clock colander cook core could
creamed crowd dried eating either extractor feet flat flicked glazed golden goodness gravy
handful have helps land love match minimum note open parcel parents picture popped pork potatoes
powder present problem regular runs sake sense shoes simplify somewhere sour sous start station
stop sure till tray update upside walk what word ~,_K ~,_done ~,_first ~,_over ~._no ~K_. ~K_for
~K_of ~K_on ~K_out ~K_shall ~K_there ~K_too ~K_would ~O_U ~O_off ~S_c ~U_by ~U_when ~U_with
~V_get ~V_some ~V_w ~V_with ~^_as ~^_do ~^_will ~about_$ ~about_with ~after_V ~after_this ~all_taken
~already_$ ~and_it ~are_$ ~are_. ~are_going ~as_the ~at_n ~at_this ~be_, ~be_? ~be_O ~be_V
~be_at ~been_done ~before_. ~by_d ~c_K ~c_V ~c_and ~c_up ~d_not ~d_on ~done_by ~for_$ ~from_U
~from_c ~get_U ~go_off ~got_a ~got_for ~have_O ~have_it ~how_would ~i_V ~i_let ~if_that ~in_at
~in_it ~in_the ~in_when ~is_$ ~is_done ~is_her ~is_over ~is_up ~it_and ~it_from ~it_in ~it_like
~it_now ~it_was ~me_K ~me_that ~me_the ~me_to ~my_K ~n_down ~never_K ~never_a ~no_the ~not_at
~off_for ~on_at ~on_we ~on_you ~our_V ~out_at ~out_the ~over_a ~says_, ~second_V ~should_the
~so_O ~take_K ~taken_their ~that_K ~that_in ~their_V ~this_K ~to_U ~us_, ~w_n ~was_in ~we_got
~what_could ~when_it ~with_it ~y_at ~you_. ~you_about
4 #S3 #expecting:false:some #frame:some #phrase:S2 <n:150> <n:25> =add-dish:frame =ask-how:S0
=ask-next =ask-next:some =ask-safety:all =ask-substitute =ask-substitute:S3 =ask-temperature:all
=ask-time-left:S0 =cancel-timer =choose:some =cook-away:guess =describe-roast:S3 =describe-roast:all
=note-guest:few =pause:all =quiet:S0 =repeat:S0 =report-done =report-done:all =report-done:phrase
=report-not-done:most =report-out =report-out:few =report-out:some =report-oven:S0 =report-reading:some
=report-started:guess =running-behind:guess =running-behind:phrase =set-doneness:some =set-guests:S0
=set-serving-time:S3 =set-serving-time:frame =skip-step:S0 =skip-step:few =skip-step:some =watch:frame
=watch:some ?heard3:phrase ?heard5 ?talk2 about absolutely anymore babysitter bear between
bluetooth building bung c center centre choose clue consider correction cranked creme cry daughter
decided deep driving early feel fierce fix flame fraiche freeze french go god grain grand grandmother
grandpa granny holding holler hungry idea instant-read into jar ji latter leaving lumpy lying
malt maria matter middle minds mixer nobody none oven packet piece rare ray reminds rested
separator shed sheet sherry shouting sir sounds sprout staring thickest ticking together tom
uncle upstairs vinegar wake which wins wireless yogurt ~,_P ~,_S ~,_or ~?_no ~K_$ ~K_V ~K_my
~K_now ~O_. ~O_in ~P_U ~P_does ~P_says ~P_so ~P_up ~S_do ~S_you ~U_. ~U_about ~U_on ~U_took
~V_ago ~V_an ~V_before ~V_it ~V_said ~V_says ~V_should ~^_S ~^_but ~^_on ~^_say ~^_was ~all_$
~all_we ~am_off ~and_O ~and_S ~be_$ ~be_here ~because_of ~by_O ~by_now ~c_d ~c_it ~c_or ~c_to
~can_go ~d_K ~done_U ~done_with ~g_$ ~g_, ~get_K ~get_from ~gone_O ~got_U ~have_V ~have_been
~here_U ~his_S ~how_c ~i_after ~i_go ~i_must ~i_took ~i_would ~in_and ~into_it ~is_in ~is_on
~it_V ~it_be ~it_must ~n_K ~n_at ~n_off ~no_V ~not_, ~not_let ~now_$ ~now_at ~of_his ~ok_that
~out_, ~out_d ~put_the ~said_. ~say_V ~so_V ~so_he ~so_it ~so_you ~than_n ~that_. ~the_first
~the_go ~them_out ~there_in ~they_are ~this_$ ~till_it ~till_y ~to_? ~to_P ~to_V ~to_g ~too_.
~us_for ~us_not ~w_c ~w_of ~was_O ~we_put ~went_on ~went_up ~when_we ~will_not ~with_them ~would_U
5 #expecting:false:all #expecting:false:most #heard1 #words3 <n:100> =add-dish:all =add-dish:most
=add-dish:some =ask-how:all =ask-next:frame =ask-options:S0 =ask-safety:phrase =ask-shopping
=ask-shopping:S0 =ask-status =ask-substitute:all =ask-temperature:S0 =ask-temperature:most
=ask-temperature:phrase =ask-temperature:some =choose:phrase =describe-roast:S1 =drop-dish:S2
=help:few =help:most =note-guest =note-guest:S1 =note-guest:phrase =note-guest:some =quiet
=repeat:all =report-guests:frame =report-guests:guess =report-guests:most =report-oven =report-oven:some
=report-started =report-trouble =running-behind =running-behind:S1 =set-units:S0 =skip-step:to-step
=watch:S0 ?heard5:phrase above be beginning bin birthday broke cat checking conventional convert
dead degrees dine doing everything fast ferry fever flames food forever from gets hard heading
heads hear heat ingredients knock lay lucy make margarine mass message nan nearly now parsley
peeled pink pop processor pulled quantity rack reheat rolled round ruin seats shallots shows
sleeping slide smoke tablespoon tin told train twine type units us vegan washing weights whisk
yell zero ~,_before ~,_how ~,_w ~._V ~._why ~K_K ~K_O ~K_U ~K_and ~K_be ~K_it ~O_after ~P_she
~S_as ~S_ok ~S_on ~U_! ~U_at ~V_a ~V_could ~V_did ~V_me ~V_out ~V_second ~V_so ~^_a ~^_in ~^_n
~^_put ~^_with ~a_y ~after_we ~am_U ~am_going ~am_in ~and_c ~and_put ~another_V ~are_c ~as_U
~as_of ~be_K ~be_my ~been_S ~by_a ~c_like ~can_K ~d_ago ~d_i ~did_not ~do_K ~do_be ~do_i ~do_now
~down_the ~down_with ~first_K ~for_S ~for_another ~for_it ~for_those ~get_O ~go_. ~go_O ~go_from
~goes_in ~going_O ~gone_for ~have_not ~he_got ~her_S ~him_. ~how_U ~how_the ~i_be ~i_put ~if_there
~in_my ~in_now ~is_a ~is_how ~is_now ~it_K ~it_d ~it_or ~like_, ~like_S ~like_V ~me_a ~me_out
~more_V ~more_are ~my_c ~n_$ ~n_tell ~not_c ~not_out ~of_O ~one_you ~or_what ~out_. ~out_what
~put_d ~put_in ~she_does ~since_U ~since_the ~still_at ~still_c ~take_this ~them_, ~then_U
~till_K ~to_K ~to_me ~to_this ~up_$ ~up_as ~up_now ~up_the ~us_get ~we_said ~we_took ~were_O
~what_am ~what_did ~what_goes ~what_to ~where_did ~will_an ~will_the
6 =add-dish =add-hands =affirm:all =ask-amount:most =ask-next:few =ask-options:all =ask-status:S0
=ask-status:S1 =ask-status:guess =ask-substitute:some =ask-temperature =ask-why:S0 =choose:all
=correct:S0 =drop-dish:frame =help =help:some =pause =quiet:all =quiet:few =repeat:few =repeat:most
=report-done:guess =report-not-done:frame =report-oven:S2 =report-oven:most =report-reading:S0
=report-setup:some =report-started:S0 =report-started:all =report-started:most =report-started:phrase
=report-trouble:S0 =running-behind:few =set-doneness:S2 =set-guests:all =set-guests:few =set-method:S1
=set-method:all =set-timer:S0 =set-timer:some =skip-step:all ? ?heard4:phrase ?heard7:guess
after ago appointment arriving backs beautiful beep behind bigger blank blast bubbling bums
butter carving coat complete completely cookies cream dauphinoise dave dental ditch double
electric fell fella few fit flour grandma hanging hens herself horseradish hush instead job
kindly lard laws letting lowest main manage mixed nagging need negative netted niece nor nuts
odd offer ping plenty poked pounds practice press roasting root rubbed sam sea should shoved
slow smell spinach table tailed thank tight today town tractor trussing trust typo very whacked
whether wish yusuf ~,_but ~,_gone ~,_it ~._. ~._O ~._the ~K_are ~K_no ~O_P ~O_for ~O_goes ~O_t
~O_you ~P_with ~S_U ~S_can ~S_has ~S_in ~S_n ~S_put ~S_so ~S_will ~U_does ~U_hers ~U_should
~U_what ~V_by ~V_d ~V_going ~V_have ~V_till ~^_be ~^_can ~^_here ~^_ok ~^_there ~^_were ~about_the
~ago_$ ~am_a ~am_all ~and_when ~are_in ~as_you ~at_g ~at_me ~be_with ~before_it ~c_how ~c_off
~c_then ~can_not ~could_K ~could_do ~could_i ~d_$ ~d_are ~d_now ~do_, ~does_K ~done_V ~first_U
~first_n ~from_n ~get_for ~go_K ~gone_$ ~gone_U ~got_here ~had_c ~has_no ~have_said ~have_taken
~have_we ~his_V ~how_V ~how_i ~i_U ~i_on ~if_it ~in_. ~is_to ~it_U ~it_all ~it_as ~it_off ~like_the
~me_at ~n_be ~n_go ~n_that ~n_we ~no_, ~no_not ~not_take ~not_they ~of_her ~of_now ~of_us ~ok_the
~ok_to ~on_yet ~or_S ~out_with ~said_n ~say_a ~should_i ~since_d ~so_the ~t_. ~tell_me ~than_K
~than_V ~that_$ ~that_, ~that_on ~the_K ~the_d ~they_, ~this_. ~this_O ~this_S ~this_d ~to_it
~too_, ~up_? ~up_to ~us_d ~w_O ~w_V ~was_c ~what_should ~when_should ~why_can ~will_it ~would_S
~would_i ~yes_or ~yet_V ~you_a
7 #phrase:S0 #phrase:most <t:12> =add-dish:phrase =add-hands:frame =ask-amount:S2 =ask-next:to-step
=ask-options =ask-plan:phrase =ask-safety:most =ask-shopping:most =ask-substitute:S0 =ask-substitute:few
=ask-substitute:to-step =cook-away =cook-away:frame =correct:to-confirmation =deny:S0 =deny:few
=have:all =have:most =repeat:phrase =report-guests:S1 =report-guests:few =report-out:phrase
=report-oven:to-reading =report-reading:few =report-setup =report-started:some =set-guests:S2
=set-method:few =set-method:frame =set-serving-time:all =set-timer:phrase =set-units:phrase
=shift-serving:S0 =shift-serving:few =skip-step =watch:all ?heard6 alert aunt beeped begin
below bits black bother business car care carrots carrying celsius clear cloves code commands
cooked counting covered cracking crunchy earlier error faffing fingers flatmate floor frenched
game gas ghee glasses granddad happening happens hats herb hit hotter inform itself kept kill
later leave-in lent looked making market messages oiled ok onto patting pet probe pure resting
reverse roar rolls roped same shove show stabbed starving stick sticker supposed swap taken
tent theo thermometer think trick vegetable warming wire ~,_be ~,_they ~,_this ~,_was ~._n
~?_S ~K_before ~K_can ~K_do ~K_here ~K_ok ~K_take ~K_we ~O_w ~O_with ~P_P ~P_in ~P_to ~S_from
~S_now ~U_are ~U_it ~U_so ~U_than ~U_that ~V_already ~V_and ~V_do ~V_go ~V_mine ~V_still ~V_what
~^_K ~^_U ~^_before ~^_c ~^_get ~^_now ~^_would ~about_that ~after_U ~after_a ~ago_. ~ago_and
~all_? ~am_V ~am_after ~are_they ~be_an ~before_d ~but_the ~by_me ~by_n ~c_O ~c_are ~c_t ~c_this
~can_c ~can_it ~could_we ~did_i ~do_the ~first_$ ~g_. ~get_to ~goes_out ~going_V ~going_for
~got_d ~got_me ~has_had ~has_it ~has_t ~have_already ~have_c ~have_put ~him_to ~how_should
~in_, ~in_y ~is_since ~is_too ~me_. ~me_if ~n_by ~n_have ~n_on ~not_S ~of_K ~of_w ~of_what
~off_and ~off_in ~ok_V ~one_says ~or_V ~out_they ~second_from ~so_K ~some_U ~t_V ~take_them
~taken_the ~tell_you ~the_c ~them_off ~them_on ~there_and ~there_are ~they_do ~to_that ~to_you
~was_so ~we_be ~we_do ~we_up ~went_, ~what_? ~what_U ~what_have ~when_is ~when_will ~where_V
~which_K ~who_can ~will_V ~will_we ~you_O
8 =add-hands:few =ask-amount:S0 =ask-guests:phrase =ask-how:most =ask-next:S0 =ask-next:all
=ask-options:few =ask-safety =ask-shopping:some =ask-time-left:few =ask-time-left:some =ask-why:guess
=cancel-timer:S0 =cancel-timer:phrase =choose:frame =cook-away:some =describe-roast:some =help:S0
=note-guest:all =pause:S0 =report-done:S1 =report-done:most =report-guests:some =report-oven:S3
=report-oven:phrase =report-trouble:some =resume:S1 =running-behind:S0 =set-guests:frame =set-method
=set-method:S0 =set-units:all =set-units:most =set-units:some =skip-step:most ?heard6:frame
?heard6:phrase adults air alongside amazing amount assisted bean beef bought braised brussels
butternut cooling dairy dark delete delivery dripping egg enamel everybody everyone fallen
forget frozen good grams halal happen head include knowing life method motorway overview per
planned plate possibilities rental rescue risen roaster sauces scissors slicing slipped so
son soon sorry squash squeaky stove stuff toddlers turns volunteered whisking woke worse yoke
~,_am ~,_as ~,_d ~,_from ~,_take ~,_what ~._$ ~._d ~K_does ~K_goes ~K_how ~K_n ~K_should ~K_w
~K_when ~O_S ~O_them ~O_this ~S_does ~S_says ~U_a ~U_be ~V_theirs ~V_when ~V_why ~^_could ~^_says
~^_since ~a_S ~a_c ~after_d ~ago_it ~all_U ~am_not ~am_on ~an_V ~and_now ~are_U ~are_not ~are_on
~as_is ~as_it ~at_? ~be_U ~before_? ~before_we ~c_because ~c_do ~c_down ~c_out ~c_over ~could_you
~d_before ~d_can ~d_n ~d_off ~d_or ~did_that ~do_c ~do_with ~down_is ~for_them ~from_me ~go_$
~go_in ~goes_over ~gone_from ~got_S ~got_it ~got_that ~has_V ~has_me ~has_n ~has_to ~have_$
~here_. ~here_it ~here_to ~how_am ~how_you ~in_V ~in_i ~is_with ~is_y ~it_O ~it_first ~it_ok
~it_still ~it_up ~me_c ~me_in ~me_so ~me_till ~more_n ~n_but ~n_if ~n_like ~never_going ~no_U
~no_second ~not_going ~now_. ~now_and ~now_n ~now_till ~now_we ~of_those ~off_. ~on_? ~on_a
~on_g ~or_more ~our_S ~out_already ~out_it ~out_to ~over_to ~put_on ~second_U ~second_it ~should_be
~so_why ~tell_when ~than_that ~them_down ~then_$ ~there_. ~there_another ~this_V ~to_do ~us_V
~us_go ~us_have ~us_in ~what_do ~what_for ~where_to ~who_are ~why_V ~will_K ~will_that ~with_V
~with_a ~would_be ~you_c ~you_put
9 #expecting:true:all . <g> <t:25> =add-dish:S0 =add-hands:S0 =add-hands:some =ask-guests =ask-next:guess
=ask-shopping:phrase =ask-time-left:S3 =cook-away:S2 =deny:guess =deny:to-choice =deny:to-confirmation
=pause:S2 =quiet:S1 =report-guests =report-not-done:S1 =report-out:S0 =report-out:all =report-setup:S0
=report-setup:phrase =report-trouble:S1 =report-trouble:most =report-trouble:phrase =running-behind:frame
=set-method:guess =set-method:most =set-method:phrase =set-method:some =set-serving-time:S0
=set-units =set-units:frame =undo:S0 =watch =watch:phrase ?heard8 ?heard8:phrase ?talk0 bare
baste beg being ben bet bill bone bones boys brining brown bumped buttered buzz calibrate chopped
completed counter counts cross current dialled dinner display earth eta evening forerib freezer
friend fussy garlic glass gratin helping hendersons hole hop hope joint jump leftovers lie
longer loosely meal meaning mouths much murder mute neighbors neither onions ounces packed
pale peas persons plates position postpone pretend puddings putting reckons record remaining
rib rope salad salting showed slices solid sooner sound steeping step steps tail talking teenagers
their thick topped touches vegetables waiting won worried worry ya yank ye ~,_some ~K_? ~K_as
~K_first ~K_go ~K_yes ~O_another ~O_can ~P_. ~P_on ~S_that ~S_your ~U_from ~U_has ~V_them ~V_took
~V_were ~^_, ~^_going ~^_has ~^_some ~^_which ~a_w ~about_V ~after_it ~and_can ~and_took ~another_d
~are_after ~are_already ~are_off ~as_my ~at_t ~be_on ~be_when ~been_n ~but_not ~but_why ~by_U
~c_before ~c_by ~c_not ~can_be ~can_my ~d_down ~d_from ~d_is ~done_$ ~done_. ~down_n ~for_is
~from_my ~from_now ~go_? ~going_to ~gone_to ~got_V ~got_in ~had_no ~had_the ~has_S ~has_the
~have_n ~her_O ~here_and ~hers_, ~hers_V ~how_can ~how_it ~how_on ~i_should ~if_so ~in_her
~into_the ~is_here ~is_there ~it_went ~me_and ~must_i ~my_P ~n_. ~n_in ~n_more ~n_who ~not_be
~not_got ~not_now ~not_tell ~now_S ~of_d ~on_let ~on_then ~on_with ~or_a ~or_n ~say_. ~she_is
~should_U ~still_K ~still_n ~that_a ~that_d ~that_yet ~then_O ~there_is ~they_will ~this_?
~this_one ~to_take ~up_. ~up_U ~up_does ~up_for ~w_K ~we_will ~what_O ~what_all ~with_d ~with_their
~would_c ~would_the ~yes_it ~you_tell ~you_were
10 #phrase:all =add-hands:phrase =ask-guests:all =ask-plan:all =ask-plan:guess =choose:to-choice
=cook-away:S1 =cook-away:phrase =describe-roast:to-roast =drop-dish:S1 =drop-dish:few =drop-dish:most
=have =have:S0 =have:phrase =help:frame =lack:phrase =report-guests:phrase =report-not-done:guess
=set-guests:most =set-guests:phrase =set-guests:to-confirmation =shift-serving:S2 =skip-step:phrase
=start-over:few =undo:all ?heard7 ?heard7:phrase ?talk1 accidentally allergies also alternatives
beans bench bit boil brother cabbage climbing coeliac cold conked convection cremated dentist
doorbell ear edges element enough fahrenheit father feed flag floss forward free fuse groceries
having hearing heavens hob huh ideas immune invite kevin killing know ladies lend lifted loin
lower mad mint minutes mister napkins nowhere nudge oil overdone own parsnips peek places planning
popping preheating properly push replace ribs ringing roughly rubbish salty scrap shops sing
sizzling smelling snow spoons strong temple throw timeline tiny total turning uncovered under
vegetarian walked walking wanting weird yorkshire ~,_will ~._w ~?_$ ~?_my ~K_! ~K_S ~K_our
~K_will ~O_all ~O_c ~O_the ~O_up ~P_can ~P_took ~S_and ~S_for ~U_of ~U_who ~U_will ~V_. ~V_?
~V_as ~V_c ~V_like ~V_our ~^_did ~^_done ~^_from ~^_me ~^_not ~^_t ~all_. ~all_K ~all_V ~and_U
~and_my ~and_there ~and_what ~are_down ~at_that ~before_the ~c_me ~c_n ~c_with ~d_after ~do_.
~do_about ~done_for ~down_a ~first_then ~get_here ~goes_$ ~going_as ~gone_d ~got_the ~have_any
~have_theirs ~how_K ~i_was ~in_K ~in_all ~in_for ~in_some ~is_after ~it_has ~let_us ~me_$ ~n_about
~n_because ~n_is ~n_there ~n_too ~no_? ~no_n ~not_K ~not_any ~of_S ~of_that ~off_my ~off_the
~ok_it ~on_$ ~on_now ~one_V ~over_it ~over_the ~put_K ~says_U ~she_can ~she_goes ~should_it
~so_, ~t_now ~t_on ~taken_it ~that_should ~they_said ~to_S ~up_by ~w_not ~was_U ~we_$ ~we_c
~we_would ~were_not ~what_were ~when_d ~who_is ~with_$ ~with_S ~would_n ~would_say ~you_be
~you_said
11 #words1 =add-dish:few =add-hands:all =ask-options:S2 =ask-options:phrase =ask-plan =ask-substitute:S1
=ask-why:frame =cancel-timer:few =note-guest:frame =quiet:phrase =report-guests:S0 =report-guests:S3
=report-started:S2 =report-trouble:all =running-behind:most =set-units:S1 =watch:guess ?heard5:frame
?heard7:frame ?heard8:frame afresh app auntie blender board bringing buy cable cooler dare
drained drink dropping drowning em forgot fyi girl grated hate helper holiday imperial instruction
internal jo keeping luck lumps man miles misheard misread moment nap obviously onion plated
pouring proper reaching reading required reset resume sauna schedule sear silence slid speak
speed stage string telling tenderloin test topside trimming turned un using visitor working
works wrapped wrote ~,_are ~,_yes ~._what ~K_am ~K_her ~O_me ~O_went ~P_down ~P_get ~S_V ~S_or
~S_this ~S_with ~U_any ~U_c ~U_went ~V_am ~V_not ~V_take ~V_will ~^_any ~^_took ~all_here ~all_too
~already_K ~am_O ~any_S ~are_up ~as_we ~be_gone ~been_off ~before_i ~c_was ~c_when ~d_already
~d_more ~do_? ~does_n ~done_? ~done_in ~for_? ~g_now ~get_V ~got_to ~have_her ~have_some ~her_at
~if_i ~is_U ~is_an ~is_more ~it_how ~it_should ~it_yet ~me_O ~me_V ~mine_is ~my_in ~no_no ~no_thanks
~not_U ~not_done ~not_have ~of_U ~off_n ~off_since ~ok_$ ~on_my ~on_till ~out_since ~over_V
~put_S ~put_a ~said_, ~says_it ~shall_be ~so_U ~so_do ~so_they ~so_yes ~still_O ~t_, ~theirs_at
~to_my ~to_put ~took_her ~up_i ~us_O ~was_out ~we_? ~we_must ~were_V ~what_S ~what_must ~what_now
~where_i ~who_does ~with_P ~with_n ~with_you ~would_go ~you_S ~you_got ~you_what ~you_when
12 =ask-guests:guess =ask-guests:most =ask-options:some =ask-safety:some =ask-status:few =ask-status:phrase
=cancel-timer:frame =cancel-timer:some =drop-dish:all =drop-dish:guess =quiet:some =report-not-done:to-step
=report-setup:all =resume:S2 =set-units:S2 =set-units:few =shift-serving:some =skip-step:frame
=undo:phrase =watch:most aiming alex bailed bang brb browning choices collect deglaze dial
dog electricity extra fetch forgotten fresh girlfriend gratins guest house including joining
lagging mark metric mind miss mistake month na nora overshot peace pending pepper pipe pot
pressed reason rests roaring rock saying scraping sink sitting skipping sleeves split themselves
thin touching wind yorkshires ~,_. ~,_for ~,_of ~,_so ~K_down ~K_have ~K_like ~K_off ~O_do
~P_will ~S_it ~U_but ~U_have ~U_if ~V_! ~V_be ~V_here ~V_one ~V_t ~V_their ~V_would ~^_g ~^_us
~^_y ~all_of ~all_over ~all_they ~already_, ~am_K ~am_d ~any_K ~be_done ~be_in ~c_. ~c_we ~c_will
~can_V ~d_. ~do_what ~does_that ~done_so ~down_at ~for_how ~for_t ~from_this ~going_out ~has_$
~have_got ~hers_K ~him_V ~is_. ~is_P ~is_no ~is_ok ~is_she ~is_when ~it_down ~it_have ~it_y
~like_to ~like_you ~me_? ~me_some ~must_V ~n_with ~not_in ~not_on ~not_put ~of_it ~off_it ~or_no
~out_do ~says_n ~should_have ~so_no ~some_of ~take_$ ~taken_out ~that_i ~that_n ~them_are ~them_have
~there_will ~those_$ ~till_we ~up_from ~up_like ~us_do ~us_now ~we_can ~we_go ~we_like ~y_.
~yes_K ~you_no
13 #frame:few #words2 =ask-guests:S0 =ask-how:frame =ask-plan:S2 =ask-temperature:S2 =choose:S3
=report-started:to-step along aunties beauty begun blade bottom browned cast celiac chopping
continue control crept crust drops eat frenching gang inside kev kip knocked lose low mhm mustard
notify nudged numbers offered others overnight parchment poke prepone range real remind removed
scrubbed sec setting shower something strained strike suggest system thought tiles tops trimmed
twins unpause voted weak wipe ~!_! ~,_because ~,_mine ~._K ~._how ~K_d ~K_not ~K_or ~K_so ~O_that
~P_do ~P_he ~S_here ~U_K ~U_how ~U_said ~U_we ~V_his ~V_if ~^_another ~^_at ~^_got ~^_should
~^_to ~after_all ~all_going ~all_that ~any_other ~are_here ~because_it ~because_the ~c_S ~can_we
~d_U ~do_$ ~does_this ~down_c ~for_this ~get_why ~go_with ~have_S ~have_a ~he_c ~here_now ~i_K
~i_take ~is_and ~it_. ~it_do ~it_go ~it_to ~like_a ~me_U ~me_for ~more_$ ~n_has ~no_it ~not_gone
~now_it ~off_to ~ok_, ~ok_P ~ok_what ~on_d ~on_me ~out_when ~say_? ~says_t ~says_to ~since_c
~so_i ~so_n ~so_put ~that_from ~that_off ~that_went ~they_c ~this_out ~this_up ~till_the ~to_no
~to_t ~up_where ~us_a ~was_my ~we_at ~we_going ~we_take ~went_in ~what_if ~when_she ~yes_do
~yet_. ~yet_i ~you_let
14 =ask-options:guess =ask-plan:some =ask-why:to-step =note-guest:to-guests =report-setup:S2
=report-setup:S3 =report-setup:few =shift-serving:guess =skip-step:S1 =undo:some asking batter
boned boots brought cauliflower company crack dangerous doneness eye f faff fat giving hang
headcount himself hovering juice kids killed kilos label lactose law lit muffin nipping overcooked
parked peeling person phone picked practically prime pulling quick rather reminders rid right
rosy sage salted scratch screaming seared sharp shellfish shout sorted squeamish stands state
steady stuck talk thinking ticked tie timers tough wants whipped wrong ~,_by ~._and ~K_i ~O_d
~P_are ~U_d ~V_got ~V_say ~^_because ~^_for ~^_had ~^_off ~^_still ~after_$ ~already_n ~already_the
~am_c ~are_still ~been_put ~before_, ~but_i ~can_$ ~d_for ~do_us ~do_we ~done_here ~down_d
~for_to ~gone_, ~has_U ~it_so ~it_the ~like_we ~me_d ~me_what ~n_d ~no_$ ~not_. ~not_O ~not_say
~not_what ~now_t ~now_what ~on_second ~said_$ ~says_w ~should_he ~so_take ~t_U ~than_i ~them_.
~there_V ~this_at ~to_go ~up_and ~up_when ~us_K ~w_with ~we_shall ~why_am ~why_so ~will_go
~will_you ~yes_go ~yes_so ~yet_to ~you_K
15 =ask-amount:guess =ask-how:S2 =ask-options:to-choice =ask-plan:frame =ask-plan:most =ask-temperature:frame
=ask-why:some =cook-away:all =cook-away:few =correct:all =help:S2 =help:phrase =note-guest:to-doneness
=pause:phrase =report-setup:guess =running-behind:S2 arrive behaving breath changed chemo delay
ducking edge exactly eyes gave grace herbs hood lads least looks makes mash menu months needed
olive opened overwhelmed part ran roots rosemary seasoned short simmering skillet slowly softening
story suggestions supper switched throat thyme tied trussed unless while wine wise worktop
~,_$ ~,_would ~U_up ~V_after ~^_gone ~a_n ~after_i ~after_n ~are_n ~at_$ ~at_all ~at_what ~be_for
~c_i ~how_we ~i_had ~is_my ~is_w ~it_that ~me_my ~n_i ~n_it ~n_still ~no_how ~not_before ~off_so
~ok_i ~other_O ~so_$ ~that_can ~there_a ~up_n ~us_n ~we_on ~what_will ~when_can ~when_do ~where_do
~where_should ~why_does ~why_must ~yes_$
16 =add-hands:S2 =ask-plan:S1 =report-guests:all =set-timer:frame =set-units:guess bairns beeping
change checked correct countdown fed feeding frail fridge ill keeps latest marks missed nip
passed preheat rise serve store tap tented tongs tripped trivet warm ~,_too ~K_done ~K_this
~K_till ~K_yet ~P_from ~S_i ~S_the ~U_done ~V_about ~V_hers ~^_all ~^_never ~all_n ~are_a ~be_d
~do_in ~does_V ~for_him ~from_V ~going_in ~going_up ~gone_V ~how_does ~i_S ~is_already ~like_it
~me_how ~n_this ~not_? ~on_for ~on_or ~out_now ~say_it ~still_$ ~then_a ~us_. ~w_. ~what_$
~what_does ~when_V ~why_K ~why_n ~will_i ~with_my
17 =add-hands:S1 =ask-how:guess =deny:all =report-trouble:frame =set-timer:few ages boneless
carved chuck hon ignore intolerant jus mo needle righto stepping transplant truss veggie washed
whisht ~,_thanks ~K_already ~K_but ~K_if ~P_was ~P_who ~S_out ~U_like ~V_how ~^_have ~am_here
~and_on ~but_V ~down_yet ~for_P ~for_us ~i_never ~in_yet ~is_off ~it_you ~n_so ~n_where ~out_so
~second_, ~w_all ~was_that ~we_still ~what_i ~which_O
18 <t:80> =ask-safety:S0 =correct:guess =lack:all =note-guest:S3 =watch:S1 aim cooker great
horses less peeler spot stock such teaspoons tenderised winning ~._i ~O_but ~^_down ~am_out
~by_c ~for_now ~go_for ~her_out ~me_of ~n_my ~no_do ~not_i ~on_. ~on_to ~that_was ~till_i ~took_it
~was_not
19 =ask-next:S2 =ask-substitute:guess =pause:some allergy alternative bloody duty explain far
final flu kosher lowered neighbours pete searing texted tying ~P_at ~have_i ~out_yet ~so_that
~why_that
20 =affirm:most =ask-safety:frame =report-not-done:all =resume:guess blackout crumble tins
wee ~c_now ~it_for ~not_we ~you_for
21 =lack:S3 =resume:most beast clean pardon reckon things ~V_into ~i_say ~that_the ~where_we
22 =report-not-done:to-confirmation =report-out:frame =resume:all boyfriend pregnant ~d_too
~do_that
23 =ask-options:S1 =ask-status:most =start-over:S0 tick
24 invited wife ~are_S ~why_not
25 ~yes_that
27 =ask-why:few ~will_take
28 =affirm:guess`;

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
  `a able abort about abouts above absent absolutely abuela accent acceptable accident accidentally
accompaniment achieve act acting actual add added adding adults advise afraid afresh after
afternoon again against age aged ages ago agrees ahead ahmed aid aim aiming air airport aisle
alarm alcohol alert alex alight all allergic allergies allergy allowed almost alone along alongside
already also alternative alternatives altogether always am amandine amazing american amount
amy an ana anchovies ancient and anil announcements announcing another any anybody anymore
anyone anything anyway anywhere app appointment approximately apricots apron are arguing arm
around arra arrive arrived arriving arrowroot arse arseways as ask asked asking asks asleep
assembled assign assisted assumes at ate aunt auntie aunties aunty autocorrect ava available
average away awful ay b baby babysitter back backofen backs bad badly bag bailed bairns bake
bakery baking ballet ballpark bang banging banjaxed bank bare basket baste basting batch bath
bathing batter battery battle bay be bea bean beans bear beast beat beautiful beautifully beauty
because become becomes becoming bed bedlam beef been beep beeped beeping beer beets before
beforehand beg began begged begging begin beginning begun behaves behaving behind being belay
believe bell belly below ben bench benefit benji bent bert besides best bet beth better between
beyond bhaiya big bigger bill billowing bin binning bins bird birds birthday bit bits black
blackout blade blank blast blather blazing bleeding bleeds blender bless blew blinking blistering
block blocked blood bloody blown blue bluetooth board boat bob boil boiling bone boned boneless
bones bonfire boot boots bored borrow boss bossy both bother bothered bothering bottle bottom
bought bout bowl box boxed boy boyfriend boys braised brb bread break breaker breath breathe
breather bridie bring bringing brining broke broken brother brought brown browned browning
brush brussel brussels btw bubbling bucket bucks budged building built bum bump bumped bums
bunch bung bunged burn burned burning burns burnt bus business bust busy but butcher butter
buttered butterflied buttering butternut button buy buying buzz buzzing by bye bypass c cabbage
cable cake caleb calibrate call called callum calmer came can cancel canceled cancelled candles
cap car caramel caramelised care careful carked carload carol carries carrots carry carrying
carryover carton carve carved carving cast cat catch catched caught cauli cauliflower cautious
celiac celsius center centre chair chance change changed changing charge chasing chatter cheap
check checked checking cheddar cheese cheesecake chef chemo chest chewing chewy children chill
chilling chimney chip choice choices choking choose choosing chopped chopping chris christmas
chronic chuck chucked church cider ciggies circulation circumstances claims clay clean cleaning
clear cleared clever clicked climb climbed climbing clock clogs close closed cloves clue coat
coats cobber cocked code coeliac coffees colander cold colder collapsed collapsing collect
come comes coming commands commenced commit company complete completed completely compound
conked connected cons consider continental continue control convection conventional convert
cook cooked cooker cookies cooking cooks cool cooler cooling cools cope cord core corkscrews
corn corner cornered cornflour correct correction could count countdown counter countertop
counting counts course cousin cousins cover covered cow crack cracked cracking craic cranberry
crank cranked cranking cranky crap crawled cream creamed creamy creeping cremated creme crept
crew crimbo crime crisp crispy cross crowd crowds crumble crunchy crust cry crying crème ctrl
cube cubes cup cupboards cups curdled curious currant current cut cutted cutting cylinder d'ye
d'you da dad daft dairy dan dangerous dans dare dark darling daughter dauphinoise dave day
days dead dealt dear decent decided deciding deep deepest deglaze deglazing degrees delay delayed
delete delivery demanded dental dentist department derek detector dev diabetes diabetic dial
dialled diamonds diaper did died dietary difference different differently digging dijon dine
diner ding dining dinner dinnertime disaster disclosure dish dishes dishwasher dishwater display
disposable disregard distracted disturb ditch ditched do doable doctor does dog dogs doing
done doneness door doorbell doors dot double doubtful dough down dragging dragon drained draining
drank draped draw drawer dressed dried drink drinkers drinking drinks dripping drippings drips
drive driveway driving drop dropped dropping drops drowning drum drunk dry drying duck ducking
due dusted dusty duty dying e each ear earlier earliest early earshot earth easiest easy eat
eating eats edge edges egg eggs either elbow electric electricity element elias ellen ellie
else em embarrassing empty enamel end english enough entirely entry epipen error essen eta
european even evening events ever every everybody everyone everything everythings everywhere
ex exactly examples exchange excuse exist expect expecting explain extinguisher extra extracted
extractor eye eyeing eyes f face faff faffed faffing fahrenheit fainted fair fall fallen family
fan fancy far fast fat father fatima favour fear fed feed feeding feel feels feet fell fella
fergal ferry fetch fever few fewer fierce fight fighting figure fill fillet filling film final
find finding fine finger fingers finish finished finishes finn fire firehouse first fit fits
fix flag flame flames flash flat flatmate flatmates flick flicked flickered flight flip floor
floss flour flu foil folks following food fool foot football footy for forerib forever forget
forgot forgotten forks former fort forward found fraiche frail frankly fraîche free freeze
freezer french frenched frenching fresh fridge friend friends from front frozen fruitcake frying
full fully fumes fun furniture furry fuse fussy fyi gabbing game gander gang gap garage garden
garlic gary gas gash gauge gave geelong generous gents german get gets getting ghee ghosts
gifts gil gin girl girlfriend give given gives giving gizmo glass glasses glazed glazing glory
glove gluten gnaw gnawing go gob god goes going golden gone good goodness goose gorgeous got
grab grabbed grace grain grams gran grand granda grandad granddad granddads granddaughter grandma
grandmas grandmother grandmothers grandpa grandparents grandpas granny grape grate grated gratin
gratins grattan gravy grease great greek green greet greta grey grid grill grocer groceries
growing grownups grows gruyère guess guest guests guidance guide guy gym had hadad hair halal
half halfway hall halved hamish hana hand handed handful handheld handle hands hang hanging
hannah happen happened happening happens happy hard harm has hassle hate hates hats hauled
have having hazard he head headcount heading headlines heads heaped hear heard hearing heat
heathens heating heats heavens heavy held hello help helped helper helping helps hen hendersons
hens her herb herbs here hers herself hey hi high hilarious him himself his hit hits hitting
hives hob hoicked hold holding hole holiday holler home homemade hon honest honestly hood hook
hoover hop hope hopping horror horseradish horses host hot hotter hour hours house household
hovering how huh hundreds hungry hunnerd hurt husband hush i ice idea ideas idiot if ignatius
ignited ignore ill immune immunity imperial important imran in inch include including incredible
india ines inform ingredients ingrid injection inserted inside insisting instant instant-read
instead instructed instruction instructions interchangeable internal into intolerant inverter
invitation invite invited involved iron is it items itself jaccarded jaggery jar jaysus jean
jelly jenny jess jesus jet ji jiffy jim jo joan job jobs joe johnsons joined joining joint
jonah joneses jose joy judge juice jump jumped jumping jus justify kate keen keep keeping keeps
kegs kept kern kernel kettle kev kevin kick kiddies kidney kidneys kids kill killed killing
kilo kilos kind kindly kip kitchen knife knives knob knock knocked knot knots know knowing
known knows kosher kowalskis la label lack lactose lad ladies lads lagging laid lamb lammkeule
land landed lands laps lard larder lasagna last late later latest latter law laws lay laying
leaning least leather leave leave-in leaves leaving leeds left leftovers leg lemon lend lending
length lent leo less let letting levels licked lid lie lies lieu life lift lifted lifting light
lights like likes lily line lino lips lisa list listen listening lit little littlies live living
lizard load loaf lodger logic loin long longer loo look looked looking looks loops loose loosely
lose losing lost lot lottie lou loud louder lounge love lovely lovers low lower lowered lowest
lucia luck lucy lumps lumpy lunch lying läuft mad made main mains make makes making malt man
manage mandoline manual many marching marco marcus margarine marge marguerite maria marinade
mark market marks marta mash mashed mass match mate mates matter matters mavis max may maybe
me meal mean meaning meant meantime meanwhile measure measurement measurements measuring meat
mechanically medium mediums meets mei melt melting members mention mentioned menu message messages
messing met metal method metric mhm microwave middle might mile miles milk milks mill mind
minding minds mine minimum mint minutes miracle miracles misheard misprint misread miss missed
missing missus mistake mister mitt mixed mixer ml mo mob mode model mom moment mommy moms money
monkeys monster month months mooing mopping more most mother motorway mouldy mouth mouths move
moved moves movie moving mrs much muffin mum murder must mustard mute mutton my myself n na
nadia nagging nail name names nan nana nap napkins napped ne'er near nearly neat necks need
needed needle needs negative neighbor neighbors neighbour neighbours neither nelly nephew nervous
netted never new news next nice niece night nil nip nipped nipping no noah nobody noise none
nor nora normal normally not notch note nothing notice notifications notify notion now nowhere
nudge nudged numb number numbers nursing nut nuts o oat obviously och oclock odd of ofen off
offer offered offering offie oh oil oiled ok oksana old olive omar omit on once one ones onion
onions online onto onwards opal open opened opposed option options or order orders oregano
other others otherwise ought ounces our ours out outside outta oven over overcooked overdoing
overdone overnight overshot overview overwhelmed ow owen own owned pace pacing package packed
packet pains pair pal palaver pale palm palms pan panel panicked paper paperwork parboil parboiled
parcel parchment pardon parents parked parking parsley parsnips part party pass passed passes
passing past pastry pat patients patted patting pause paws paying peace peaked peaks peanut
peas peek peel peeled peeler peeling pen pencil pending people peoples pepper peppered per
perched person persons pescatarian pet petal pete petra phew phone pick picked picking picture
piece pieces pills pin pinch ping pinged pink pinker pipe pitch pitching place placed places
plain plan plane planned planning plans plate plated plates plating platter play plenty plot
plumber plus pm point pointing pointless poisoning poke poked pop popovers popped popping pork
porky portion portions position posses possess possibilities possible postpone pot potato potatoes
pounds pour poured pouring powder power practically practice prayer pre prefer preference prefers
pregnant preheat preheated preheating prep preparation prepared prepone present presents press
pressed pretend pretty price prime print printed priya probe problem procedure proceed processor
progress proper properly proportions propping pros proving pub pudding puddings puffed pull
pulled pulling pumping pumpkin purchase pure purpose push pushed put puts putting quantity
quarter quick quicker quickly quid quiet quieten quite rack racket radiant rail raised ran
rang range rare rarer rate rather ratio raw ray reach reached reaches reaching reaction read
reading readings reads ready real reason reasoning reckon reckons recommend record recruit
red reduce reduced reducing reduction reed reflection refreeze refrigerated refuse regular
reheat relatives relight religion remaining remember remind reminder reminders reminding reminds
remove removed rental repeat rephrase replace replaced replacement report requested required
requiring rescue reset rest rested resting restore rests resume retard reverse revert rewind
rib ribeye ribs rich rid right righto rimmed ring ringing rise risen rising risk rite road
roads roar roaring roast roasted roaster roasting rob rock rocked rocks roles roll rolled rolling
rolls room roommate root roots rope roped rose rosemary rosy rosé rotten rough roughed roughly
round roux rub rubbed rubbish ruin ruined rump run rundown rung running runny runs rush rusted
ruth sack sad sadly safe safely safest safetys sage said saignant sake salad salsa salt salted
salting salty salvage sam same sanjay sat sauce sauces sauna save saving saw say saying says
scalded scalding scale scalloped schedule schmest school scissors score scored scoring scotch
scout scrambled scrap scraped scraping scratch screaming screen scrubbed sea sear searched
seared searing seasoned seasoning seated seats seawater sec second see seeing seem seems send
sends sense separator sequence serious serve served serving sesame set setting settle shaken
shaking shall shallots shallow shape shaped share shares sharp shave shazza she shed sheet
shelf shell shellfish sherry shift shit shoes shoot shop shopping shops short shortly shot
should shout shouting shove shoved show showed shower showing shown shows shredded shush shut
shy sick side sides sieve sign silence silverside silverskin simmering simple simplify since
sing single sink sinking siobhan sir sirloin sister sit sitrep sits sitting situation size
sizzling skillet skimmed skip skipped skipping slack slate sleeping sleeve sleeves slice sliced
slices slicing slid slide slimy slipped slipping slips slow slower slowly small smashing smeared
smell smelling smells smoke smokes smoking smoky snow so sock sodium sofa soft softening soggy
sold solid some somebody somehow someone something somewhere son soon sooner soonest sorry
sort sorted soufflé sound sounded sounds soup sour sous space spare spark speak speaking special
speckled speed spell spices spilling spinach splashed split splitting spoils spoke spoon spoons
spot spots spreading sprigs sprout sprouts spud squash squeaky squeamish squeeze stabbed stage
stairs stale stand standing stands staring start started starting starts starving state station
status stay staying stays steady steak steam steamed steaming steeping step stepping steps
steve stick sticker still stir stirring stitches stock stone stop stopped stopwatch store story
stove straight strained straining strait strays streaming street stretch strike string strip
stroller strong struggling strung stuck stuff stuffed sub substitute such sugar suggest suggestion
suggestions suit sulk summarise sunflower sunk supermarket superstition superstitious supper
support suppose supposed sure surely suspend swap swear swears sweet swell swelling swells
swimming switch switched system table tablespoon tablet tablets tackle tad tail tailed take
taken takes taking talk talked talking tap target tariq tasks taste tasted tastes tea teach
team tearing tears teaspoon teaspoons technique teddy teenagers teeth telephoned tell telling
telly temperature temple tenderised tenderloin tent tented tenting tents test text texted than
thank thanks that thaw the their theirs them themselves then theo there thereabouts thermometer
these they thick thicken thickened thickens thickest thin thing things think thinking third
this those though thought thoughts thread threw throat through throw thumb thyme tick ticked
ticking ticks tidying tie tied tight til tiles till tilly tim time timeline timer timers times
timetable timing timings tin tinfoil tinkle tins tiny tip tips tit to today toddler toddlers
together told tom tomasz tongs tonight too took top topped topping tops topside total totally
touch touched touches touching tough toward towel towels town track tractor traffic tragic
train transplant trash travelling tray trays treat trick trickle trifle trim trimmed trimming
trip tripped trivet trouble truss trussed trussing trust trusted trying turn turned turning
turns twas twice twine twins tying type typed typo tyre ugh un uncle uncovered under undercooked
underneath understand understanding underway undo undue unfinished units unless unpause unsay
unset unusable up update upside upstairs urgent us use used useful using usual various vegan
vegetable vegetables vegetarian vegetarians veggie verde versus very vi vinegar visitor visitors
volume volunteered vote voted wait waiting wake walk walkabout walked walking wall want wanted
wanting wants war warm warmed warmer warming warn warning was wash washed washing watch watching
water way ways we weak wean weans wee weeds week weeks weigh weighed weighs weight weights
weird weirdo well wendy went were whack whacked whadda whaddya what whatcha whatever whatsoever
wheat when whenever where whereabouts wherefore whether which whichever while whip whipped
whisht whisk whisked whisking whistle white who whole whoosh whopper why wife wiggled wilf
will wilsons wilted winced wind wine winning wins wipe wire wired wireless wise wish with without
wobbly woke woman won wonder wondering wood word words work working works worktop worried worry
worse worth would wouldja wrack wrangle wrap wrapped wreck wrecked wresting wrestle wrist wrists
writing wrong wrote y ya yaar yank yapping ye year years yeast yell yes yesterday yet yoghurt
yogurt yoke yorkshire yorkshires yorkshre you young your yourself yusuf z zero zeros zhoo zip`.split(
    /\s+/,
  ),
);
