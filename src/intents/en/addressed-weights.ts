/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-24 =quiet:guess
-23 =report-trouble:guess ~more_O
-22 =courtesy =courtesy:phrase ?talk6 ~some_more
-21 fair park
-20 =acknowledge =acknowledge:S0 =acknowledge:phrase dishwasher ~,_a ~,_you ~K_never ~O_had
~for_you ~is_for ~on_U
-19 #words0 =choose:guess ?talk7 mine morning remember ~U_there ~^_$ ~any_O ~not_that ~out_in
~with_U ~you_done
-18 =emergency:guess apparently daddy home level pass smoking wedding ~,_put ~?_it ~K_y ~get_down
~going_, ~my_O ~n_all ~that_will ~were_n ~who_V
-17 #heard0 <y> asked bathroom deck film magazine pages restaurant sandwiches towel ~,_their
~at_U ~n_was ~that_U ~that_to ~you_to
-16 =courtesy:S1 ?talk5 counted lows spain sugar yourselves ~?_U ~?_the ~O_like ~^_her ~done_,
~here_we ~let_it ~like_mine ~n_over ~n_when ~not_it ~the_y ~they_had ~to_him ~y_U ~you_i
-15 #O3 <n:200> <n:40> ?heard0 argument booked born draw excuse feeling heating hello linda
neighbour paid roll sent surgeon wifi window years yours ~!_did ~,_with ~?_is ~V_she ~V_y ~at_K
~d_a ~do_my ~hers_at ~i_like ~is_why ~n_w ~no_i ~other_V ~says_d ~then_we ~y_and ~yes_, ~you_do
~you_have
-14 =correct:S3 =courtesy:some boy capital caravan carvery chef funny hide hole honestly jack
judges loo marriage owe pumpkin roof shot speaking starter tooth touch ~,_here ~,_ok ~?_yes
~O_! ~O_says ~O_we ~S_, ~^_shall ~are_for ~could_be ~goes_, ~had_K ~i_$ ~is_down ~it_done ~n_n
~n_then ~not_you ~off_O ~said_the ~says_here ~second_on ~shall_we ~she_did ~since_O ~still_on
~tell_him ~that_O ~that_S ~there_yet ~they_O ~was_i ~we_U ~you_$ ~you_get ~your_K
-13 =add-dish:S3 =choose:few =emergency:all =resume:some =undo:frame ?talk8 ate beat beer breaking
chairs chestnuts cloudy couch did drawer duck found hair he him hot ladder lives loads maths
meter news poor pressure pudding season sleep speaker talks these white wonder ~!_get ~!_i
~,_is ~,_say ~,_that ~P_for ~P_have ~P_this ~U_out ~U_till ~U_to ~V_first ~^_he ~and_got ~c_of
~could_have ~down_now ~have_another ~him_off ~i_P ~in_these ~like_$ ~ok_K ~said_no ~still_U
~take_a ~then_he ~then_the ~these_K ~this_the ~was_w ~will_U ~with_O ~y_we ~you_n ~you_on
-12 =ask-options:frame =deny:some =report-trouble:few =set-serving-time:S1 ?talk4 believe charge
coach divorce dollar ends episode goals gorgeous holidays lift lounge may outside row sit small
stew suitcase swears taxi thousand threw ~K_them ~O_are ~S_me ~U_S ~U_get ~^_as ~all_done ~and_do
~are_d ~are_this ~at_your ~did_$ ~did_you ~does_a ~done_yet ~get_your ~go_and ~going_off ~him_$
~is_yours ~it_c ~may_$ ~me_, ~me_up ~mine_in ~n_U ~now_i ~on_your ~one_, ~over_that ~put_you
~she_was ~tell_P ~their_O ~then_you ~there_you ~till_c ~to_us ~took_us ~up_in ~was_S ~was_still
~went_O ~why_is ~yes_P ~you_should ~yours_V
-11 ! #expecting:false:few =report-reading:S2 =set-guests:S3 =set-guests:guess across added
bacon barbecue big biscuit boiler channel colour contestants cutting day dollars door fancy
fourth frying heavy her hi highs june lisbon loud lovely meeting million mouth nose number
pie pizza rice ruined scored sends seriously shuts swear swimming theirs wall wanted whoever
work your ~,_did ~,_have ~,_in ~,_no ~,_says ~O_O ~O_c ~O_will ~O_y ~P_got ~U_after ~U_was
~U_you ~V_he ~^_so ~^_their ~all_in ~and_some ~been_c ~d_would ~do_for ~does_O ~does_he ~get_there
~had_n ~have_done ~he_O ~he_does ~in_U ~is_about ~is_his ~it_a ~it_took ~n_P ~off_V ~out_U
~put_$ ~say_K ~than_me ~there_were ~to_w ~y_$ ~yours_$
-10 #guess:S3 <t:200> =affirm:some =correct:few allergic answer army blue boat boiling broken
calls cats college cut cuts died due dusted feet fill front garden handle homework lights look
mummy nav oh older potato queue raining remove rent ring road roundabout scallops starts turn
walks week worth zip ~!_that ~,_his ~,_never ~,_said ~,_then ~._your ~K_a ~K_about ~K_say ~O_have
~P_i ~U_P ~^_mine ~and_take ~as_you ~be_a ~before_V ~d_! ~d_in ~do_if ~do_they ~done_the ~for_that
~gone_in ~got_more ~he_K ~he_has ~in_a ~it_goes ~it_when ~me_P ~mine_V ~mine_out ~more_than
~n_or ~other_$ ~our_O ~put_me ~put_your ~says_$ ~she_says ~she_took ~should_get ~so_for ~that_it
~the_one ~there_$ ~those_K ~to_a ~to_the ~we_could ~were_d ~will_they ~yes_i ~your_V
-9 <t:550> =choose:S2 =quiet:S2 =report-started:S3 =set-doneness:S3 ?heard0:frame ?heard2:guess
another bath box breakfast cap caught choir coats corkscrew corner cost da doctor dum essay
even fall goose grandad kickoff lock office online page programme sake sister soda song stir
there try turkey you ~!_you ~,_can ~,_we ~,_who ~,_your ~K_P ~K_from ~K_he ~K_to ~K_you ~O_a
~O_got ~O_say ~O_they ~O_to ~P_, ~P_or ~S_off ~U_now ~V_off ~^_his ~^_second ~^_these ~am_n
~and_in ~and_still ~as_c ~as_i ~been_K ~but_she ~c_but ~can_i ~d_and ~for_V ~for_c ~from_O
~get_a ~got_$ ~got_my ~has_a ~have_d ~he_never ~he_put ~he_says ~her_P ~him_, ~i_will ~if_n
~if_the ~is_never ~is_your ~it_! ~it_going ~it_i ~like_my ~me_on ~mine_was ~n_O ~n_not ~n_till
~never_V ~ok_U ~on_P ~one_has ~or_the ~out_V ~over_n ~says_take ~she_V ~so_how ~take_O ~the_S
~then_, ~too_K ~we_did ~we_had ~we_were ~were_at ~what_would ~where_is ~which_S ~you_are ~your_go
-8 #expecting:true:few #expecting:true:most #guess:S1 #guess:all =acknowledge:S3 =add-hands:S3
=affirm:S3 =ask-next:S3 =ask-status:S3 =ask-temperature:S1 =ask-temperature:guess =deny:S3
=drop-dish:some =emergency:S2 =lack:frame =quiet:most =report-reading:to-reading =set-serving-time:guess
=set-timer:guess =start-over:S1 =undo:S2 ?heard1:frame ?heard5:guess again baby bags baker
bed best beta birth blanket bread break but cheese chips crispy delicious dublin goal hers
left lid lot marco microwave mortgage moved music nothing penalty phoenix porridge prep question
quiet quite recipe remote rewind rupees sausage says score served steak taking team tender
toast towels waiter weigh yourself ~,_, ~,_all ~,_and ~?_V ~?_that ~K_was ~O_$ ~O_K ~O_does
~O_so ~O_your ~P_K ~S_S ~U_in ~V_are ~V_him ~V_your ~^_our ~^_out ~^_they ~after_that ~am_still
~an_O ~and_you ~are_at ~but_it ~c_U ~c_if ~can_be ~d_of ~do_n ~done_it ~get_it ~going_$ ~got_her
~have_never ~he_V ~he_is ~her_$ ~her_, ~her_K ~his_U ~into_a ~is_another ~is_it ~is_t ~it_already
~it_by ~it_says ~it_too ~my_first ~n_a ~n_and ~n_can ~n_from ~n_would ~not_at ~not_do ~not_for
~on_her ~on_his ~one_is ~one_with ~ours_at ~out_on ~over_, ~put_in ~put_it ~said_she ~she_said
~take_V ~thanks_$ ~they_put ~they_were ~till_O ~too_U ~up_, ~was_at ~what_the ~where_did ~why_do
~with_that ~would_have ~yes_! ~yes_V ~you_S ~you_U ~you_like ~your_P ~your_S ~yours_now
-7 #O1 #S2 =ask-why:S1 =courtesy:few =deny:frame =drop-dish:S3 =pause:frame =report-not-done:few
=set-doneness:S1 =set-guests:S2 =set-guests:to-guests aunty belt better bottles bus bye card
care classic each gingerbread given hand high horse kick kitchen lived machine melt never our
parking peel percent platform put reduced rotten salmon sat see service shoes shopping shoulder
skip sofa sold spelling still sun text thanks though weighs ~,_could ~,_go ~,_let ~,_must ~?_can
~K_did ~K_were ~O_and ~O_he ~O_said ~P_$ ~S_a ~S_before ~S_him ~S_of ~S_would ~U_? ~U_is ~V_or
~V_who ~^_am ~^_and ~am_done ~and_i ~and_that ~are_there ~at_you ~be_the ~been_at ~c_a ~c_c
~c_put ~c_to ~c_y ~did_a ~did_the ~done_and ~for_U ~for_n ~for_y ~go_, ~gone_O ~gone_up ~have_gone
~have_to ~have_you ~her_S ~her_U ~here_is ~him_at ~him_n ~his_O ~how_did ~how_do ~i_could ~i_said
~if_she ~in_O ~in_n ~in_your ~is_this ~me_about ~n_? ~n_c ~no_O ~not_$ ~not_like ~not_so ~not_there
~now_on ~of_you ~on_i ~or_is ~or_not ~our_U ~over_there ~put_that ~said_to ~say_to ~second_$
~she_would ~still_S ~tell_the ~than_the ~that_down ~the_O ~then_it ~there_any ~they_V ~took_d
~when_did ~when_does ~will_do ~would_not ~yes_a ~you_the ~you_will ~you_would ~your_O ~yours_is
-6 #P2 #U3 #guess:some =acknowledge:few =affirm:frame =ask-how:some =ask-temperature:few =choose:S1
=choose:most =emergency:S0 =emergency:some =report-done:to-step =report-trouble:S2 =set-serving-time:S3
=set-timer:S2 ?heard0:phrase ?heard4:guess afraid alarm cake carve cooking course decent does
done e ever every expecting flight folks half hill hotel hours judge loose manager mum name
passing points prices radiator reads ref room rough school secret seville she shoe sides somebody
spell standing stone third traffic wash whole year ~,_to ~,_when ~,_y ~,_yours ~?_you ~K_that
~O_it ~O_out ~O_she ~P_and ~P_c ~S_. ~U_$ ~U_. ~U_over ~U_would ~V_U ~V_all ~V_my ~V_other
~V_since ~V_this ~V_up ~^_are ~^_does ~^_she ~^_the ~^_too ~ago_, ~already_? ~am_U ~at_V ~at_it
~at_this ~be_S ~by_the ~c_in ~c_that ~d_? ~d_at ~do_to ~down_and ~first_and ~go_U ~got_n ~have_an
~he_goes ~hers_V ~him_in ~how_was ~i_get ~in_$ ~in_c ~in_since ~is_K ~is_that ~it_does ~it_on
~like_V ~mine_i ~n_already ~n_for ~n_the ~no_P ~not_go ~off_a ~one_was ~other_K ~other_one
~put_out ~since_n ~so_P ~so_c ~the_U ~them_$ ~them_in ~to_have ~w_and ~was_d ~was_like ~were_O
~when_$ ~when_he ~who_was ~would_V ~you_, ~you_must ~you_take
-5 #O2 =ask-status:frame =ask-substitute:S2 =correct:some =deny:S1 =emergency =report-oven:frame
=report-trouble:S3 =resume:S3 =set-serving-time:S2 ?heard1 ?heard1:guess boss butcher cancelled
carol cent centre chicken cleaning club come count curtains darling drive dryer ella find freezing
gate get good hall ham hitting hour instructions jim letters lunch married nil once paper party
pavlova peas picking pies quarter run said salt say seen shade shift staying stitches tank
they through too truck understand was weather weekend yes ~!_no ~,_g ~,_n ~,_t ~?_how ~?_n
~K_your ~O_, ~O_at ~O_down ~O_n ~P_let ~S_at ~U_all ~U_got ~U_his ~U_i ~V_O ~V_does ~V_there
~^_go ~^_of ~^_where ~a_K ~a_O ~after_K ~and_go ~and_if ~and_let ~are_all ~are_these ~been_O
~but_no ~c_says ~c_what ~d_S ~does_hers ~does_your ~down_for ~first_V ~got_U ~have_this ~he_said
~her_and ~how_is ~i_c ~i_can ~if_they ~in_for ~in_his ~it_n ~me_when ~n_here ~n_off ~n_to ~now_?
~of_the ~on_, ~on_? ~on_in ~one_more ~or_n ~out_! ~out_? ~said_yes ~second_O ~she_has ~should_V
~some_O ~take_it ~take_your ~tell_her ~that_for ~that_is ~the_P ~the_n ~there_, ~they_K ~took_a
~us_c ~was_in ~was_n ~we_V ~we_went ~went_off ~would_K ~would_take ~yes_yes ~you_P ~you_say
-4 #words12 <n:300> <n:999> <t:100> =add-dish:S1 =add-hands:few =ask-amount:S1 =ask-amount:all
=ask-time-left:most =correct:most =help:guess =lack:S2 =quiet:S0 =repeat:guess =report-done:S3
=report-oven:guess =report-reading:guess =report-started:guess =set-serving-time:few =set-serving-time:to-serving-time
=start-over:S2 ?heard0:guess against ahead because book chair climb country craic date drinks
dropped easter eats end exit fingers flour for fryer goes going iron jumper lady lands leeds
milk mooing moving nearly next nice other pair preheated price rest ribeye rolling seat shakes
sirloin stay street take takeaway takes times top tumble undo used weighed were yet ~!_$ ~,_she
~?_and ~K_his ~K_me ~K_over ~O_up ~P_never ~P_would ~S_O ~S_from ~U_! ~U_, ~U_O ~U_y ~U_yet
~V_K ~V_another ~V_now ~V_was ~V_we ~V_you ~^_that ~^_why ~^_you ~about_to ~already_$ ~an_K
~and_a ~any_U ~are_on ~are_the ~at_c ~be_there ~but_n ~c_about ~c_is ~can_U ~did_it ~do_V ~do_it
~do_you ~for_me ~for_your ~from_there ~goes_on ~gone_out ~here_, ~here_for ~in_? ~in_S ~in_her
~is_O ~is_mine ~is_out ~it_, ~it_if ~let_the ~me_done ~mine_$ ~must_U ~must_be ~n_! ~of_V ~of_your
~off_, ~on_and ~on_n ~on_since ~out_for ~said_it ~say_, ~says_a ~so_what ~tell_your ~than_that
~that_ok ~these_V ~they_get ~this_, ~to_your ~took_out ~w_, ~w_? ~was_K ~was_a ~was_it ~with_your
~would_you ~y_, ~you_had
-3 #U2 #heard3 #words7 =affirm:few =ask-guests:S1 =ask-how:S1 =ask-how:phrase =ask-time-left:S1
=emergency:S3 =report-done:S2 =report-out:S2 =report-reading:S3 =report-started:S1 =running-behind:S3
=set-doneness:phrase =set-guests:S1 =set-guests:some =start-over:some ?heard6:guess alone ambulance
and bins bowl burned burnt called careful chill chin christmas church coast coming dad double
else fish garage grab grill happy hey his holding idea inch island knee laundry like line listen
marathon march meet minister money mother nana needs nut oat or otherwise over pan pay play
previously pulled quid raw robot sauce saw shallots shirt side single socks spit spoon temperature
that time tom twice water weight welcome word yards yorkshire ~,_her ~,_like ~,_should ~._it
~K_got ~K_in ~K_like ~K_one ~O_from ~O_has ~O_now ~O_on ~O_or ~O_was ~S_K ~S_was ~U_as ~U_do
~V_get ~V_in ~V_no ~V_they ~^_O ~^_yes ~about_it ~and_he ~are_K ~at_a ~be_c ~c_K ~c_have ~c_the
~did_U ~did_he ~does_the ~for_a ~g_, ~gone_c ~gone_down ~has_been ~has_got ~he_say ~he_was
~hers_in ~i_U ~i_do ~i_put ~in_d ~in_it ~in_my ~in_with ~is_, ~is_over ~is_so ~is_the ~it_at
~it_over ~like_U ~me_now ~of_a ~off_$ ~on_V ~out_. ~out_K ~said_V ~so_we ~some_K ~t_in ~take_these
~that_. ~that_one ~the_second ~there_? ~there_in ~these_O ~they_took ~this_is ~those_O ~to_O
~too_V ~up_V ~up_till ~us_the ~w_$ ~was_V ~what_P ~what_V ~when_i ~who_is ~with_him
-2 #P1 #U1 #frame:S3 <n:12> <t:40> =affirm:S1 =ask-status:all =ask-time-left:S3 =ask-time-left:guess
=ask-why:most =help:S1 =pause:few =report-not-done:phrase =report-oven:S1 =report-reading:S1
=report-reading:most =report-started:few =resume:S0 =resume:phrase =set-doneness =set-doneness:most
=set-method:S1 =set-method:guess =shift-serving:S3 =start-over:phrase ?heard1:phrase awful
been between blood bucket celsius cheap check chucked cousin cousins cry days delayed dish
driving drop gran grey honest hook imagine jar knock land last late lbw many mate maybe might
my new no ours pat peru pick point pool power rang reached reminds roads roasted salty second
sign smells someone soup telly those to units up update watch way who writing yesterday ~,_O
~,_V ~,_an ~,_but ~,_get ~,_my ~._U ~K_U ~K_what ~O_V ~O_him ~O_is ~P_V ~P_n ~P_we ~U_U ~U_n
~U_on ~V_S ~V_at ~V_i ~V_is ~V_some ~^_it ~^_my ~^_no ~^_tell ~^_who ~^_your ~all_the ~all_this
~and_she ~and_we ~another_n ~any_more ~be_n ~before_n ~by_V ~c_as ~could_do ~d_to ~did_i ~did_ours
~does_not ~down_to ~from_your ~go_on ~goes_to ~got_an ~have_U ~have_V ~her_the ~if_there ~in_may
~in_that ~in_this ~is_me ~is_n ~is_was ~like_K ~more_K ~my_S ~no_you ~now_K ~of_O ~of_c ~of_my
~said_never ~say_$ ~says_the ~says_to ~second_? ~she_U ~so_it ~that_P ~that_V ~that_now ~then_i
~to_it ~to_me ~to_n ~up_at ~us_d ~we_should ~when_the ~will_c ~would_O ~y_?
2 #K2 #S1 #U0 #frame:S2 #phrase:some #words4 =ask-how:most =ask-options:S0 =ask-safety:few
=ask-shopping:S0 =ask-temperature =ask-temperature:most =ask-time-left =correct:S0 =deny:few
=deny:phrase =describe-roast:guess =drop-dish =drop-dish:S0 =emergency:S1 =emergency:most =note-guest:S0
=quiet:frame =repeat =repeat:S1 =repeat:S2 =repeat:all =report-done:frame =report-not-done:most
=report-out:some =report-reading =resume =set-doneness:some =set-guests =set-timer =shift-serving
?heard8:guess ?talk3 allowed already an beautifully before bigger bird bring by can creamed
crying dead dental either fire first french glazed hens hungry ice jess kept lay mashed me
meat night nobody not nuts of option peeled pink preheating present priya read ready sam scoring
sea sherry size sleeping slice soft sous table them this till timer track when with ~,_the
~,_there ~K_V ~K_all ~K_must ~K_out ~K_shall ~O_of ~P_S ~S_down ~S_you ~U_me ~U_my ~U_when
~V_an ~V_going ~V_her ~V_over ~V_theirs ~V_to ~V_us ~^_i ~^_one ~^_w ~a_d ~about_the ~after_d
~after_the ~all_at ~and_P ~and_now ~and_the ~be_at ~be_for ~been_U ~been_in ~by_U ~could_not
~do_? ~do_i ~down_$ ~down_, ~first_n ~for_her ~for_the ~from_K ~go_O ~go_in ~had_it ~have_all
~here_? ~here_to ~i_am ~i_might ~if_he ~in_the ~into_V ~into_the ~is_in ~is_still ~is_too ~it_?
~it_d ~it_first ~it_like ~it_must ~it_now ~it_out ~it_said ~me_out ~more_V ~n_if ~n_out ~no_V
~not_let ~now_$ ~now_, ~of_U ~ok_? ~on_O ~on_at ~our_V ~over_$ ~says_U ~should_do ~so_you ~still_,
~that_? ~these_c ~they_are ~till_n ~too_. ~us_and ~us_it ~was_c ~we_are ~what_was ~will_be
~with_V ~yet_,
3 #K1 #O0 #expecting:false:some #frame:S0 #frame:most #frame:some #guess:few #phrase:S2 <d>
<n:25> <n:80> =add-dish:all =add-dish:frame =affirm:phrase =ask-amount:phrase =ask-how:S0 =ask-next:some
=ask-status:S2 =ask-substitute:frame =ask-temperature:all =ask-temperature:phrase =ask-time-left:S0
=ask-time-left:phrase =ask-time-left:some =ask-why:all =choose:phrase =choose:some =cook-away:S1
=correct =deny:guess =describe-roast =describe-roast:all =emergency:phrase =help:all =help:some
=lack:guess =lack:some =note-guest:few =report-done:phrase =report-oven:to-reading =report-reading:all
=report-reading:few =report-started:all =report-started:some =report-trouble =set-serving-time
=set-serving-time:frame =set-timer:S1 =shift-serving:S0 =shift-serving:few =shift-serving:frame
?heard2:frame ?heard4 ?heard5 actual adding amazing anymore anything ask away b back bang bear
braised broke carrying coat code covered creme cup dear family fast feel fella fewer finish
flicked forks forward fraiche freeze from grain granny green has hats held holler knows lard
list lit lower lying making manage margarine medium message messages minimum nail netted ok
packet parsley piece plates plenty potatoes ray risen roasting rolled round sack shape sheet
sick starting sure than then tin together type upside use voted warn warning weights well ~,_K
~,_P ~,_i ~,_this ~,_what ~K_$ ~K_goes ~K_has ~K_on ~K_says ~K_still ~K_went ~O_? ~O_off ~P_is
~P_it ~P_so ~S_does ~U_and ~U_can ~U_had ~U_the ~U_this ~U_with ~V_, ~V_as ~V_be ~V_than ~V_w
~^_P ~^_like ~^_there ~^_when ~^_will ~after_we ~am_not ~and_out ~be_? ~before_we ~by_d ~c_O
~c_and ~c_at ~d_, ~d_can ~d_from ~do_K ~do_O ~for_$ ~for_S ~from_U ~get_for ~get_from ~got_d
~got_no ~had_no ~have_put ~he_got ~i_V ~i_after ~i_still ~is_$ ~is_at ~it_or ~it_so ~it_was
~like_S ~me_that ~more_, ~n_V ~n_ok ~n_on ~n_tell ~n_y ~now_at ~now_it ~now_you ~on_. ~on_that
~or_what ~out_, ~second_K ~should_K ~should_the ~so_let ~still_ok ~take_that ~tell_me ~tell_you
~thanks_. ~their_K ~then_O ~this_one ~to_? ~to_take ~too_$ ~too_c ~up_as ~up_to ~us_$ ~us_get
~w_c ~w_n ~was_$ ~was_on ~was_that ~we_K ~we_up ~we_will ~what_could ~what_is ~will_i ~with_K
~you_V ~you_about ~you_put
4 #K3 #frame:S1 #phrase:S1 #phrase:S3 =ask-amount =ask-guests:most =ask-next:frame =ask-next:guess
=ask-options =ask-plan:few =ask-shopping:all =ask-shopping:guess =ask-why =ask-why:phrase =describe-roast:S2
=describe-roast:few =describe-roast:phrase =drop-dish:frame =lack:S1 =note-guest:all =note-guest:phrase
=pause:S0 =quiet:all =repeat:S0 =report-done:some =report-out:phrase =report-oven:S3 =report-oven:most
=report-reading:phrase =report-setup:some =report-started =report-started:S2 =report-trouble:S1
=resume:frame =running-behind:all =set-serving-time:most =set-serving-time:some =set-timer:S0
=shift-serving:most =shift-serving:phrase =skip-step:S0 =skip-step:S2 about alongside any be
beef beginning blank boil butter cat center choose chopped cooks cranked cross crunchy dauphinoise
dishes dried error feeding fever floor had hanging horseradish instant-read ji made main maria
mixer must now options plan popped processor reason regular removed root shed shops showed
slipped slow sprouts step stick system talking told tonight took town trick trust ways went
what whether wire without yell ~,_or ~,_w ~._V ~K_. ~K_are ~K_as ~K_of ~K_they ~K_up ~K_would
~O_with ~P_she ~P_with ~S_ok ~S_up ~U_by ~U_from ~U_so ~U_went ~U_your ~V_. ~V_already ~V_before
~V_by ~V_had ~V_where ~V_with ~^_after ~^_before ~^_can ~^_was ~after_V ~all_i ~already_V ~and_c
~as_a ~at_the ~be_$ ~be_K ~be_V ~because_of ~been_out ~before_$ ~c_V ~c_are ~c_down ~c_n ~c_then
~can_K ~can_it ~can_not ~could_we ~d_K ~d_U ~from_this ~g_$ ~get_the ~go_V ~gone_for ~got_a
~had_the ~have_O ~have_it ~he_can ~here_the ~how_would ~i_must ~if_you ~in_at ~is_like ~it_V
~it_in ~it_take ~let_me ~n_$ ~n_after ~n_at ~n_of ~n_who ~not_tell ~of_w ~off_and ~ok_so ~ok_that
~on_let ~on_this ~or_a ~out_d ~put_them ~says_, ~since_U ~so_. ~so_K ~so_this ~so_why ~taken_their
~the_c ~their_V ~them_V ~there_was ~they_do ~this_S ~till_it ~to_g ~up_$ ~up_a ~us_K ~us_not
~was_the ~we_get ~we_would ~went_on ~were_all ~what_did ~what_will ~where_are ~why_V ~why_are
~will_the ~would_U ~yes_K ~yet_V ~you_c
5 #heard1 #words3 =add-dish:guess =add-hands:all =affirm:to-confirmation =ask-guests =ask-how:guess
=ask-next =ask-substitute:all =ask-substitute:phrase =ask-time-left:all =cancel-timer:S1 =cancel-timer:most
=choose:all =cook-away:phrase =lack:few =lack:most =note-guest =note-guest:most =report-done
=report-done:S0 =report-guests:S0 =report-not-done:frame =report-oven =report-oven:some =report-reading:S0
=resume:S1 =running-behind:phrase =set-doneness:S0 =set-doneness:all =set-guests:frame =set-timer:phrase
=skip-step:to-step =start-over:all =start-over:frame =undo =watch:S0 =watch:frame ? ?heard7:guess
after alert alex alternatives anyone appointment as assisted aunt bluetooth bringing c clear
cloves cold conventional core could cover crack daughter degrees delivery empty faffing ferry
fine finished football forget frenched friend full gets go golden grandma grandpa gratins herself
hits keeps knowing lend lent little looked loosely love mass metric missus more niece odd open
order oven packed picture poked pop pork push quantity rare red roar salad scrap seasoned should
shout shove smell son steps straight tailed teeth thing topped total very wake ~,_got ~,_if
~,_it ~,_now ~._n ~K_O ~K_after ~K_and ~K_be ~K_for ~K_should ~K_we ~O_. ~O_i ~O_me ~P_has
~P_on ~S_c ~S_put ~S_will ~U_V ~V_and ~V_it ~V_out ~V_should ~V_that ~V_the ~^_with ~a_w ~about_that
~after_this ~ago_$ ~all_$ ~and_put ~and_when ~are_my ~be_my ~before_? ~before_i ~c_me ~c_up
~can_c ~can_do ~d_$ ~do_, ~do_c ~done_U ~done_V ~done_by ~done_for ~done_with ~for_K ~from_me
~get_in ~get_n ~go_. ~go_K ~gone_d ~have_got ~his_V ~i_be ~i_go ~i_tell ~in_, ~is_V ~is_a ~is_now
~it_S ~it_from ~it_still ~it_yet ~me_. ~me_i ~me_n ~more_n ~my_c ~never_a ~never_did ~never_got
~not_be ~not_out ~now_. ~off_K ~off_at ~ok_to ~on_$ ~on_my ~our_S ~out_at ~put_K ~second_it
~still_at ~t_V ~than_K ~that_, ~the_K ~the_go ~this_$ ~this_. ~to_V ~to_that ~up_U ~up_i ~up_the
~us_V ~us_in ~w_O ~was_O ~what_for ~what_should ~when_should ~when_will ~who_has ~why_so ~will_it
~you_tell
6 #expecting:false:all #expecting:false:most #phrase:S0 <g> <n:150> <t:12> =add-dish:few =add-dish:most
=add-hands:S0 =add-hands:frame =affirm:S2 =ask-how:all =ask-next:phrase =ask-options:some =ask-plan:S0
=ask-status:some =ask-substitute =ask-substitute:S0 =cancel-timer:all =cancel-timer:frame =deny:S0
=deny:to-confirmation =describe-roast:some =drop-dish:few =have:most =help:S0 =repeat:few =repeat:most
=report-done:all =report-not-done:S1 =report-not-done:S2 =report-out =report-out:most =report-reading:some
=report-trouble:most =set-doneness:guess =set-guests:few =set-serving-time:phrase =set-units:S0
=set-units:all =shift-serving:some =skip-step:all =watch:some ?heard4:frame ?heard4:phrase
?heard5:frame ?heard8:frame afternoon airport anyway arrived bake bean behind bet board button
buy carrots colander correction cracking deep dripping earth edge egg fell fetch fierce food
goodness himself job joint leave low meal mixed move near neighbours nor nowhere onions onto
ought overdone overview pet ping planned plate probe pull reading roughly running saving scissors
snow so starving taken thermometer thickest timeline tiny trussing turning twine typo vegetable
volunteered whacked which ~,_. ~,_before ~,_they ~,_will ~._O ~K_K ~K_now ~K_or ~K_till ~O_after
~O_can ~O_w ~P_are ~S_U ~S_has ~S_in ~S_n ~U_c ~U_does ~U_has ~U_should ~U_what ~V_? ~V_could
~V_do ~V_down ~V_me ~V_say ~V_them ~V_took ~^_but ~^_n ~^_now ~^_would ~a_U ~ago_and ~am_a
~am_all ~am_off ~an_V ~and_there ~are_after ~are_c ~are_we ~at_my ~be_gone ~been_S ~before_it
~but_the ~c_or ~d_after ~d_ago ~d_now ~did_not ~do_about ~do_the ~down_so ~down_with ~first_K
~from_my ~get_U ~go_from ~goes_in ~going_O ~gone_$ ~got_K ~got_me ~has_$ ~has_gone ~have_c
~have_some ~her_O ~him_. ~how_V ~how_are ~how_it ~i_let ~i_should ~i_took ~i_would ~in_there
~is_to ~like_, ~like_the ~me_in ~me_the ~me_till ~my_P ~n_K ~n_be ~n_that ~n_we ~no_, ~now_for
~of_her ~of_that ~off_for ~on_d ~on_till ~on_we ~out_what ~over_a ~should_i ~since_d ~so_go
~t_. ~take_K ~that_d ~the_first ~there_are ~this_K ~those_U ~to_U ~to_do ~to_get ~to_say ~we_$
~we_said ~went_up ~what_O ~will_not ~with_d ~would_i
7 #expecting:true:all #phrase:most . <n:100> =add-dish =add-dish:phrase =add-dish:some =ask-guests:phrase
=ask-options:S2 =ask-plan:phrase =ask-safety:phrase =ask-shopping =ask-shopping:S3 =ask-shopping:some
=ask-status =ask-status:few =ask-temperature:S0 =ask-temperature:some =cancel-timer =cancel-timer:S0
=cancel-timer:phrase =cook-away:S0 =deny:all =lack =lack:S0 =note-guest:S1 =pause =pause:S1
=report-done:S1 =report-oven:S0 =report-oven:S2 =report-started:S0 =report-started:most =report-started:phrase
=resume:S2 =running-behind:S1 =set-method =set-serving-time:all =set-timer:some =shift-serving:S2
=skip-step ?heard5:phrase ?heard6 absolutely ago along also asking beauty bit boot breath buttered
car choices collect consider cream dave drained dry earlier evening few fit foil glasses gravy
hard helps including inform instead keep kindly leave-in loin longer middle mouths obviously
offered onion parents pause persons pounds quick ribs rubbed sauces scratch scrubbed soon spinach
split stabbed stand start station suggestions supposed tablets tent think tops touches under
upstairs us warming weeks where won working young ~,_gone ~,_over ~,_yes ~._$ ~._. ~K_? ~K_before
~K_first ~K_it ~K_no ~K_not ~K_when ~O_another ~O_goes ~O_t ~O_then ~P_he ~P_in ~P_up ~S_and
~S_for ~U_are ~U_down ~U_if ~U_it ~U_who ~V_a ~V_d ~V_go ~V_have ~V_more ~V_said ~V_second
~V_when ~^_, ~^_K ~^_U ~^_c ~^_get ~^_ok ~^_took ~about_V ~after_U ~all_K ~all_V ~am_in ~any_other
~are_not ~as_it ~at_what ~be_O ~be_an ~before_. ~by_O ~by_n ~c_S ~c_out ~can_my ~d_off ~first_then
~for_is ~for_it ~from_n ~get_K ~get_V ~got_any ~have_already ~have_not ~have_we ~how_you ~i_K
~in_and ~in_our ~is_her ~is_she ~is_since ~it_and ~it_has ~like_to ~must_i ~n_because ~n_with
~no_more ~not_U ~not_V ~not_get ~now_S ~now_U ~now_we ~ok_P ~ok_the ~on_g ~on_now ~other_O
~our_K ~out_$ ~out_already ~out_to ~said_that ~say_it ~says_it ~so_he ~some_U ~still_V ~than_V
~them_, ~them_out ~then_U ~then_V ~this_V ~till_y ~to_S ~to_put ~us_. ~w_K ~was_U ~was_my ~we_?
~we_at ~we_do ~we_got ~what_have ~who_are ~will_V ~will_we ~with_$ ~with_it ~with_the ~would_c
~you_O ~you_a ~you_could ~you_in
8 =affirm:all =ask-amount:S0 =ask-plan:S2 =ask-plan:all =ask-shopping:phrase =ask-substitute:S1
=ask-substitute:most =ask-time-left:few =ask-why:S0 =cancel-timer:few =cook-away =correct:S1
=help =help:frame =repeat:phrase =report-done:most =report-guests =report-guests:some =report-out:all
=report-oven:all =report-oven:phrase =report-setup:S0 =report-setup:S1 =report-setup:most =report-setup:phrase
=report-trouble:S0 =running-behind =running-behind:S0 =running-behind:S2 =running-behind:frame
=running-behind:most =set-guests:most =set-guests:phrase =set-guests:to-confirmation =set-method:frame
=set-units:most =set-units:phrase =skip-step:most =undo:S0 =undo:all =watch =watch:all =watch:phrase
?heard6:phrase ?heard7 ?heard7:phrase ?talk0 ?talk2 app backs bank beautiful beep blast bubbling
cabbage clock coeliac counter counting dark doing everywhere flag forerib forever free gas
groceries heard hearing heat herb internal kill know later laws letting lifted mad man muffin
mustard na nagging need negative nephew oiled overcooked pressed pretend proper reckons resting
reverse right rising rolls roped ruin rung sear showing shut sing sitting skipped slide sooner
sorry steeping stuff tail test turns vegetables walking wanting watching ye yusuf ~,_take ~K_done
~K_i ~K_n ~K_our ~K_w ~K_with ~K_yes ~O_P ~S_it ~U_off ~U_or ~V_after ~V_any ~V_has ~V_not
~V_till ~^_be ~^_in ~^_put ~^_which ~a_y ~about_$ ~ago_it ~all_over ~already_, ~am_c ~and_n
~and_took ~another_V ~any_V ~are_O ~are_going ~are_up ~as_of ~as_we ~at_g ~at_me ~at_t ~at_that
~be_here ~before_d ~c_d ~could_K ~could_U ~could_i ~d_are ~do_. ~do_be ~do_now ~do_with ~first_$
~for_P ~from_now ~go_off ~goes_$ ~going_in ~got_that ~got_to ~has_S ~has_t ~has_to ~have_$
~have_any ~in_K ~in_V ~in_y ~is_an ~it_down ~it_ok ~let_us ~me_K ~me_at ~n_. ~n_more ~no_U
~not_K ~not_any ~not_going ~not_in ~not_put ~now_n ~of_K ~of_those ~on_a ~on_then ~one_says
~one_you ~or_S ~out_it ~put_d ~put_on ~so_V ~so_i ~so_n ~so_the ~still_O ~still_c ~t_, ~that_on
~the_d ~theirs_at ~there_and ~there_is ~took_her ~us_have ~we_be ~were_we ~what_are ~what_do
~where_were ~why_K ~with_P ~yes_do
9 #words1 =add-hands =add-hands:guess =add-hands:most =ask-amount:S2 =ask-amount:few =ask-amount:most
=ask-guests:all =ask-next:S0 =ask-options:most =ask-plan:guess =ask-safety =ask-safety:some
=ask-substitute:few =ask-time-left:S2 =cook-away:all =cook-away:few =correct:to-confirmation
=deny:to-choice =describe-roast:S1 =drop-dish:most =have =have:phrase =note-guest:some =note-guest:to-doneness
=report-done:guess =report-guests:S3 =report-out:few =report-setup:S3 =report-trouble:some
=set-guests:S0 =skip-step:phrase =undo:some =watch:most ?heard7:frame ?heard8 ?heard8:phrase
?talk1 accidentally auntie behaving bone brussels butternut cable chopping cooked dairy everyone
flame freezer fresh fuse fyi game gang gave girl glass grace grandmother gratin happen hob
imperial itself joining keeping kids killing knots leaving lie looking motorway much mute neither
nudge overshot parcel part person postpone properly record rib rock rub sage schedule seats
slicing slowly smelling smoke sounds squash sticker swap tented thick thin thought toddlers
trimmed walk worried ya zero ~,_be ~,_c ~,_of ~,_where ~._w ~?_i ~?_no ~K_does ~K_so ~O_for
~P_P ~P_put ~P_says ~S_like ~S_says ~U_K ~U_have ~U_of ~U_than ~V_c ~V_on ~V_their ~V_then
~^_could ~^_going ~^_y ~all_here ~all_too ~am_V ~and_my ~another_d ~are_out ~as_my ~be_on ~been_n
~by_c ~c_like ~c_with ~d_before ~do_we ~down_n ~get_here ~go_with ~going_V ~going_for ~going_out
~going_to ~had_to ~has_it ~has_n ~has_no ~have_S ~have_had ~have_said ~have_taken ~hers_K ~if_i
~is_after ~is_y ~it_as ~it_off ~it_the ~it_up ~like_a ~me_and ~me_if ~more_$ ~n_now ~no_n ~not_got
~not_say ~now_and ~of_d ~of_us ~ok_$ ~ok_at ~say_V ~she_is ~should_be ~so_, ~so_O ~so_do ~that_n
~then_$ ~there_will ~till_K ~too_, ~up_and ~up_like ~us_a ~w_. ~w_of ~we_have ~we_like ~were_V
~what_can ~what_if ~what_must ~what_now ~which_K ~which_V ~who_can ~will_K ~will_go ~with_this
~would_n ~yes_it ~you_got ~you_let
10 #phrase:all <t:25> =add-dish:S0 =add-hands:phrase =ask-safety:S2 =ask-status:guess =cancel-timer:some
=choose:to-choice =cook-away:guess =cook-away:most =describe-roast:to-roast =have:S0 =note-guest:to-guests
=pause:all =report-guests:frame =report-guests:phrase =report-out:S0 =report-setup =report-setup:guess
=set-doneness:S2 =set-method:S0 =set-method:all =set-method:phrase =set-units =set-units:some
=skip-step:some =watch:guess ?heard6:frame aunties beans beeped ben bill bits bother bottle
bought boys brother cancel carry carving chuck crust current dine dinner display drink ear
em everything father forgotten giving grand hate head heads help helper hon hotter hush inside
invite jo jump knocked looks luck market mint mister napkins none notify ounces parked parsnips
picked pot prepone prime ran real reheat reset resume ringing same sauna short shows something
sorted sound squeaky stage teenagers their throw tiles topside turned uncovered vegan wind
wine yoke ~,_S ~,_because ~,_d ~,_how ~,_so ~._i ~?_$ ~K_d ~K_down ~K_go ~K_here ~K_ok ~K_will
~O_all ~O_the ~P_took ~P_will ~S_is ~U_about ~U_like ~U_will ~V_here ~V_into ~V_our ~V_says
~V_take ~V_what ~V_would ~^_a ~^_any ~^_from ~^_says ~after_a ~all_U ~am_d ~am_on ~am_out ~are_$
~are_still ~c_from ~c_it ~c_we ~did_that ~do_in ~does_n ~down_at ~down_c ~first_O ~for_t ~gone_from
~has_not ~have_her ~he_U ~here_already ~how_can ~i_was ~into_it ~is_here ~is_what ~is_with
~it_. ~it_all ~me_to ~mine_is ~n_as ~n_but ~n_has ~n_have ~n_in ~n_is ~not_have ~not_on ~off_n
~off_so ~off_the ~ok_what ~out_since ~over_V ~over_the ~put_the ~shall_be ~so_no ~t_now ~take_$
~tell_when ~that_$ ~this_? ~this_O ~those_$ ~till_we ~to_c ~up_by ~up_for ~us_, ~what_? ~what_to
~why_am ~why_does ~with_my ~with_n ~would_the ~y_at ~you_said ~you_were
11 #words2 =ask-amount:S3 =ask-how:S2 =ask-options:few =ask-plan =ask-safety:guess =ask-safety:most
=ask-substitute:guess =ask-why:S2 =cook-away:S2 =deny:most =describe-roast:S3 =drop-dish:S1
=have:all =help:few =lack:phrase =note-guest:frame =pause:S2 =report-not-done:S3 =report-not-done:to-step
=report-setup:frame =report-trouble:all =running-behind:guess =set-method:some =set-serving-time:S0
=set-timer:few =set-units:frame =undo:guess aiming allergies arrive bailed bare begun being
bench bones both bottom browning bumped buzz continue control dangerous dog electric electricity
everybody extra fallen fan forgot frozen garlic ghee girlfriend grams happens herbs hit hope
huh immune kettle kevin kilos likes lumps makes matter miles mind month nip oil olive others
overnight own pale pipe places planning plated rather reaching reminders required rests roots
rubbish saying sec shellfish show shower shush skillet skipping solid stands store stove strained
tenderloin thinking thyme touching unpause winning ~,_do ~,_for ~K_S ~K_am ~K_can ~K_if ~K_off
~P_can ~P_get ~S_are ~S_my ~S_now ~S_so ~U_hers ~V_like ~V_one ~V_t ~^_at ~^_not ~^_t ~a_n
~after_it ~ago_. ~all_n ~all_of ~am_K ~any_K ~are_here ~as_U ~as_V ~before_the ~c_because ~c_do
~c_will ~can_V ~can_we ~could_you ~for_how ~for_us ~got_here ~here_. ~here_and ~how_K ~in_i
~is_there ~it_O ~it_how ~me_$ ~me_d ~me_so ~my_in ~n_are ~n_like ~n_there ~no_? ~no_no ~not_the
~now_what ~of_it ~ok_it ~on_for ~on_me ~one_out ~out_they ~out_when ~over_it ~she_goes ~so_take
~so_yes ~still_K ~still_n ~t_on ~taken_it ~taken_the ~that_i ~that_went ~their_S ~them_down
~us_go ~w_not ~was_out ~what_all ~what_am ~when_is ~when_she ~will_that ~with_S ~with_their
~would_go ~you_be
12 =add-hands:S2 =add-hands:some =ask-next:all =ask-safety:all =drop-dish:all =drop-dish:guess
=help:most =quiet:few =report-out:frame =report-setup:all =set-units:S1 =set-units:guess adults
afresh bairns batter blade bob brb bums climbing completed conked convection delete dropping
f fahrenheit far fat fridge gluten headcount house ideas ingredients instruction intolerant
lactose lads lagging mash minutes misread nipping parchment peek popping practically range
remind repeat rescue salting shouting sink theo ticked tie tractor trimming trussed twins using
vegetarian wants yorkshires ~,_mine ~,_thanks ~._and ~._d ~K_have ~K_since ~K_yet ~O_d ~S_V
~U_but ~U_those ~V_am ~V_his ~V_how ~V_ok ~V_so ~^_did ~^_g ~^_gone ~^_me ~^_still ~after_all
~all_going ~am_after ~and_can ~are_off ~be_d ~be_in ~c_. ~c_not ~d_c ~do_what ~gone_, ~got_it
~have_a ~how_this ~i_got ~i_had ~is_P ~is_ok ~like_an ~like_we ~like_you ~me_c ~me_for ~me_some
~must_V ~n_about ~n_by ~not_, ~not_O ~not_a ~not_before ~of_what ~ok_, ~ok_V ~on_it ~on_yet
~other_. ~out_do ~out_now ~says_n ~so_put ~that_from ~that_should ~them_. ~them_are ~there_V
~to_go ~to_my ~to_you ~up_from ~up_n ~w_with ~we_c ~we_can ~we_shall ~where_do ~where_i ~who_does
~would_be ~would_say ~you_what
13 #frame:few =add-dish:S2 =ask-plan:most =ask-plan:some =ask-shopping:most =ask-temperature:frame
=ask-why:some =help:phrase =report-guests:few =report-guests:most =set-timer:frame =start-over:few
=watch:S1 aim air begin boneless boots browned catch cooler delay doorbell drowning exactly
eyes helping hood label ladies latest least lose lowest make mhm missed moment peace pepper
pouring puddings rosemary safe salted seared serve setting steady supper talk themselves tick
timers tough weak wipe wrapped ~,_as ~K_do ~O_but ~O_that ~P_. ~P_U ~S_with ~U_said ~V_about
~V_got ~V_still ~^_some ~after_$ ~and_what ~be_U ~be_done ~but_i ~but_not ~c_this ~can_$ ~d_.
~d_is ~d_n ~done_$ ~down_a ~for_? ~for_him ~g_now ~goes_over ~gone_and ~gone_to ~got_c ~have_no
~in_some ~is_off ~it_go ~it_went ~me_V ~me_a ~me_what ~not_yet ~off_it ~on_to ~on_with ~one_V
~or_no ~out_c ~she_will ~should_it ~so_they ~some_of ~that_off ~there_a ~there_another ~they_will
~to_t ~us_O ~us_do ~we_go ~we_still ~went_in ~what_$ ~what_U ~what_does ~yes_$ ~you_K
14 =add-hands:S1 =affirm:guess =ask-how:frame =ask-plan:frame =lack:S3 =lack:all =pause:phrase
=quiet:S1 =report-trouble:phrase =set-units:S2 =undo:phrase bag bin bloody brought brown carved
cast commands cremated crept eat enough eye fed frail god guest having kip leftovers miss mistake
mo opened pending pete replace righto roaring sharp silence spot spots stepping tongs un uncle
walked wee whipped works wrong wrote ~._K ~K_already ~P_down ~U_some ~V_hers ~V_will ~^_another
~^_got ~^_never ~all_that ~already_K ~already_n ~already_the ~be_when ~before_, ~d_for ~d_or
~down_d ~for_this ~got_V ~had_a ~has_U ~has_V ~here_now ~i_never ~i_on ~i_say ~i_take ~in_yet
~is_. ~is_U ~is_my ~is_when ~it_have ~like_it ~n_d ~n_where ~no_do ~not_. ~not_done ~now_t
~ok_i ~put_a ~says_w ~second_, ~should_have ~since_c ~than_i ~then_a ~they_c ~they_said ~up_where
~us_n ~us_now ~we_O ~we_must ~we_on ~we_take ~when_d ~when_do ~which_O ~yes_go ~you_for
15 <t:80> =ask-amount:guess =ask-options:S1 =ask-options:phrase =ask-safety:S0 =ask-status:phrase
=report-not-done:all =report-not-done:guess =report-setup:S2 =report-setup:few =resume:most
=skip-step:frame able baste change chemo cooker dial early faff hendersons jus law less overwhelmed
passed peeling poke remaining rise screaming slid speak stock strike tap thank tied tins warm
wife wise ~,_by ~S_the ~U_we ~V_! ~^_all ~^_off ~^_should ~^_us ~am_O ~am_here ~are_already
~because_it ~but_V ~by_me ~does_V ~does_this ~down_yet ~go_$ ~go_for ~got_the ~is_already ~it_U
~it_y ~me_how ~me_my ~n_it ~n_so ~off_to ~or_V ~said_, ~so_$ ~that_by ~that_was
16 =ask-plan:S1 =ask-safety:frame =ask-shopping:S2 =report-guests:S1 =report-trouble:frame
=set-units:few allergy clean cope correct eta frenching grated hang hovering ill killed mark
putting rid searing simmering string suggest switched truss tying while whisht ~,_$ ~,_too
~,_would ~S_here ~U_d ~V_if ~and_on ~are_a ~are_down ~are_n ~do_$ ~for_to ~how_does ~it_for
~n_i ~n_this ~or_U ~out_yet ~says_t ~still_$ ~up_. ~will_you
17 =ask-options:guess =ask-status:S1 =choose:frame =skip-step:S1 ages boned changed checked
final great halfway ignore lowered menu needle phone reckon such washed ~S_out ~^_down ~^_for
~^_had ~^_have ~^_to ~after_i ~are_S ~at_$ ~because_the ~have_i ~her_out ~in_all ~n_my ~no_$
~not_? ~not_what ~t_U ~was_not ~why_not
18 =correct:all =pause:some =running-behind:few months pardon target things veggie ~P_at ~P_was
~^_done ~at_all ~c_i ~do_that ~done_here ~from_V ~gone_V ~i_S ~it_you ~n_too ~no_it ~not_i
~said_$ ~till_i ~took_it ~w_all ~what_i
19 =ask-guests:S0 =correct:guess =note-guest:S3 =quiet:phrase =start-over:S0 countdown explain
flu invited missing pulling stuck tenderised ~are_U ~for_now ~it_to ~no_thanks ~so_that ~that_the
~this_at ~where_we
20 =resume:all beeping boyfriend ~K_but ~c_now ~get_to
21 =ask-shopping:S1 =ask-why:few horses texted ~K_this ~U_up ~is_w ~will_take
22 =ask-status:most =resume:guess pregnant
23 =note-guest:guess =pause:guess =report-not-done:to-confirmation
24 =affirm:most ~yes_that
26 ~d_too`;

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
  `a able abort about abouts above absolutely accent accidentally act acting actual add added
adding adults afraid afresh after afternoon again against age ages ago agrees ahead ahmed aid
aim aiming air airport aisle alarm alcohol alert alex alight all allergic allergies allergy
allowed almost alone along alongside already also alternative alternatives altogether always
am amandine amazing american amount amy an ana anchovies ancient and announcements announcing
another any anybody anymore anyone anything anyway anywhere app appointment approximately apricots
are arguing arm around arra arrive arrived arrowroot arse as ask asked asking asks asleep assembled
assisted assumes at ate aunt auntie aunties aunty autocorrect ava available away awful b baby
babysitter back backofen backs bad badly bag bailed bairns bake baking ballet bang banging
banjaxed bank bare basket baste basting batch bath batter battery battle bay be bean beans
bear beast beat beautiful beautifully beauty because become becomes becoming bed bedlam beef
been beep beeped beeping beer before beg began begin beginning begun behaving behind being
belay believe bell belly ben bench benefit benji bert besides best bet better between beyond
bhaiya big bigger bill billowing bin binning bins bird birthday bit bits black blackout blade
blank blast blather blazing bleeding bleeds blender bless blew blinking blistering block blocked
blood bloody blown blue bluetooth board boat bob boil boiling bone boned boneless bones bonfire
boot boots bored boss bossy both bother bothered bottle bottom bought bout bowl box boxed boy
boyfriend boys braised brb bread break breaker breath breathe breather bridie bring bringing
brining broke broken brother brought brown browned browning brush brussels btw bubbling bucket
bucks budged building built bump bumped bums bunch bung bunged burn burned burning burns burnt
bus business bust busy but butcher butter buttered butterflied buttering butternut button buy
buying buzz buzzing by bypass c cabbage cable cake calibrate call called callum calmer came
can cancel canceled cancelled candles cap car caramel caramelised care careful carked carload
carol carries carrots carry carrying carryover carve carved carving cast cat catch catched
caught cautious celiac celsius center centre chance change changed charge chasing chatter cheap
check checked checking cheese chef chemo chest chewing chewy children chill chilling chimney
chip choice choices choking choose chopped chopping chris christmas chronic chuck chucked church
cider ciggies circulation circumstances clean cleaning clear cleared clever climb climbed climbing
clock clogs closed cloves clue coat coats cobber cocked code coeliac coffees colander cold
colder collapsed collapsing collect come comes coming commands company complete completed completely
compound conked connected consider continental continue control convection conventional convert
cook cooked cooker cooking cooks cool cooler cooling cools cope cord core corkscrews cornered
cornflour correct correction could count countdown counter countertop counting course cousin
cousins cover covered cow crack cracked cracking craic cranberry crank cranked cranking cranky
crap crawled cream creamed creeping cremated creme crept crew crimbo crisp crispy cross crowd
crumble crunchy crust cry crying ctrl cube cup cupboards curious currant current cut cutted
cutting cylinder d'you da dad daft dairy dan dangerous dans dare dark darling daughter dauphinoise
dave day days dead dealt dear decent decided deep deepest deglaze deglazing degrees delay delayed
delete delivery demanded dental dentist department derek detector diabetes dial dialled diamonds
diaper did died dietary difference digging dijon dine diner ding dining dinner dinnertime disaster
disclosure dish dishes dishwasher dishwater display disregard distracted disturb ditch ditched
do doable does dog doing done doneness door doorbell doors doubtful dough down dragon drained
draining drank draw dressed dried drink drinks dripping drips drive driving drop dropped dropping
drops drowning drum drunk dry ducking due dusted dusty duty e each ear earlier earliest early
earth easiest eat eating eats edge edges egg eggs either elbow electric electricity element
elias ellie else em embarrassing empty enamel end english enough entirely entry epipen error
essen eta european even evening events ever every everybody everyone everything everywhere
ex exactly examples excuse expect expecting explain extinguisher extra extractor eye eyeing
eyes f face faff faffed faffing fahrenheit fainted fair fall fallen family fan fancy far fast
fat father fatima fear fed feed feeding feel feels fell fella fergal ferry fetch fever few
fewer fierce fight fighting fill fillet filling final find finding fine finger fingers finish
finished finishes fire firehouse first fit fix flag flame flames flat flatmates flicked flickered
flight flip floor floss flour flu foil folks following food fool foot football footy for forerib
forever forget forgot forgotten forks former fort forward found fraiche frail frankly free
freeze freezer french frenched frenching fresh fridge friend friends from front frozen fruitcake
frying full fumes fun fuse fussy fyi gabbing game gander gang garden garlic gary gas gash gave
geelong generous gents german get gets getting ghee ghosts gifts gin girl girlfriend give given
gives giving gizmo glass glasses glazed glazing glory glove gluten gnaw go gob god goes going
golden gone good goodness goose gorgeous got grab grabbed grace grain grams gran grand granda
grandad granddad granddaughter grandma grandmas grandmother grandmothers grandpa grandparents
grandpas granny grate grated gratin gratins grattan gravy grease great greek green greet grey
grid grill grocer groceries growing grows guess guest guests guidance guide had hadad hair
halal half halfway hall halved hana hand handed handful handheld handle hands hang hanging
hannah happen happening happens happy hard has hassle hate hats hauled have having hazard he
head headcount heading headlines heads heaped hear heard hearing heat heathens heating heats
heavens held hello help helped helper helping helps hendersons hens her herb herbs here hers
herself hey hi high him himself his hit hits hitting hives hob hold holding holler homemade
hon honest honestly hood hook hoover hop hope hopping horseradish horses hot hotter hour hours
house household hovering how huh hundreds hungry hunnerd hurt husband hush i ice idea ideas
idiot if ignited ignore ill immune immunity imperial important imran in inch include including
incredible india ines inform ingredients injection inserted inside insisting instant instant-read
instead instructed instruction instructions internal into intolerant inverter invitation invite
invited iron is it items itself jaccarded jar jaysus jean jelly jess jesus jet ji jim jo joan
job jobs joe johnsons joined joining joint jonah joneses jose judge juice jump jumped jumping
jus justify kate keep keeping keeps kegs kept kern kernel kettle kev kevin kick kiddies kidney
kidneys kids kill killed killing kilo kilos kind kindly kip kitchen knife knob knock knocked
knots know knowing known knows kosher la label lack lactose lad ladies lads lagging laid lamb
lammkeule landed lands laps lard larder lasagna last late later latest latter law laws lay
laying leaning least leave leave-in leaves leaving leeds left leftovers leg lemon lend lending
lent leo less let letting licked lid lie lies life lifted lifting light lights like likes lily
line lips lisa list listen listening lit little littlies living load loaf lodger loin long
longer look looked looking looks loops loose loosely lose losing lost lot lou loud louder lounge
love lovely lovers low lower lowered lowest luck lucy lumps lumpy lunch lying läuft mad made
main mains make makes making malt man manage mandoline manual many marching marcus margarine
marge maria marinade mark market marks marta mash mashed mass match mate mates matter may maybe
me meal mean meaning meant meantime meanwhile measure measurements measuring meat mechanically
medium meets mei melt melting members menu message messages messing met metal method metric
mhm middle might miles milk mind minding minds mine minimum mint minutes miracle miracles misheard
misread miss missed missing missus mistake mister mitt mixed mixer ml mo mob model mom moment
mommy moms money monkeys monster month months mooing mopping more most mother motorway mouth
mouths move moved moves moving mrs much muffin mum murder must mustard mute mutton my myself
n na nadia nagging nail name nan nana nap napkins napped ne'er near nearly necks need needed
needle needs negative neighbor neighbors neighbour neighbours neither nelly nephew nervous
netted never new news next nice niece night nil nip nipped nipping no nobody noise none nor
nora normal normally not notch note nothing notice notifications notify notion now nowhere
nudge nudged numb number numbers nursing nut nuts o oat obviously och oclock odd of ofen off
offer offered offering oh oil oiled ok old olive omar omit on once one ones onion onions online
onto opal open opened option options or order orders oregano other others otherwise ought ounces
our ours out outside outta oven over overcooked overdone overnight overshot overview overwhelmed
ow own owned pace pacing package packed packet pains pair pal palaver pale palm palms pan panel
panicked paper parboil parboiled parcel parchment pardon parents parked parking parsley parsnips
part party pass passed passes past pastry pat patted patting pause paws paying peace peaked
peaks peanut peas peek peel peeled peeler peeling pen pencil pending people peoples pepper
peppered per perched person persons pet petal pete phew phone pick picked picking picture piece
pieces pills pin ping pinged pink pipe place placed places plan plane planned planning plans
plate plated plates platter play plenty plot plumber plus pm point pointing pointless poisoning
poke poked pop popovers popped popping pork porky portions position possess possibilities possible
postpone pot potato potatoes pounds pour poured pouring powder power practically prefer prefers
pregnant preheat preheated preheating prep preparation prepared prepone present presents press
pressed pretend pretty price prime print printed priya probe problem proceed processor proper
properly proving pudding puddings puffed pull pulled pulling pumping pumpkin purchase purpose
push put puts putting quantity quarter quick quicker quickly quid quiet quieten quite rack
radiant rail raised ran rang range rare rarer rather ratio raw ray reach reached reaches reaching
reaction read reading readings reads ready real reason reasoning reckon reckons record red
reduce reduced reed refreeze refrigerated regular reheat religion remaining remember remind
reminder reminders reminding reminds remove removed rental repeat replace replaced replacement
required rescue reset rest rested resting restore rests resume retard reverse revert rewind
rib ribeye ribs rich rid right righto ring ringing rise risen rising risk rite road roads roar
roaring roast roasted roaster roasting rob rock rocked roles roll rolled rolling rolls room
root roots roped rose rosemary rosy rosé rotten rough roughed roughly round roux rub rubbed
rubbish ruin ruined rump run rundown rung running runs rush rusted ruth sack sad sadly safe
safely safest sage said saignant sake salad salsa salt salted salting salty salvage sam same
sanjay sat sauce sauces sauna save saving say saying says scalded scalding scale scalloped
schedule school scissors score scored scoring scotch scout scrap scraped scraping scratch screaming
screen scrubbed sea sear seared searing seasoned seated seats seawater sec second see seeing
seem seems send sends sense separator sequence serious serve served serving sesame set setting
settle shaken shaking shall shallots shape shaped share sharp shave she shed sheet shelf shell
shellfish sherry shift shit shoes shoot shop shopping shops short shortly shot should shout
shouting shove shoved show showed shower showing shown shows shredded shush shut shy sick side
sides sign silence silverside silverskin simmering simple simplify since sing single sink sinking
siobhan sir sirloin sister sit sitrep sitting situation size sizzling skillet skimmed skip
skipped skipping slate sleeping sleeve sleeves slice sliced slices slicing slid slide slimy
slipped slips slow slower slowly small smashing smeared smell smelling smells smoke smokes
smoking smoky snow so sock soft softening sold solid some somebody somehow someone something
somewhere son soon sooner soonest sorry sort sorted soufflé sound sounded sounds soup sour
sous spare spark speak speaking special speckled speed spell spices spinach splashed split
splitting spoils spoke spoon spoons spot spots spreading sprigs sprout sprouts spud squash
squeaky squeamish stabbed stage stale stand standing stands staring start started starting
starts starving state station status stay staying stays steady steak steam steamed steeping
step stepping steps steve stick sticker still stir stirring stitches stock stone stop stopped
stopwatch store story stove straight strained straining strait strays streaming street strike
string strip struggling strung stuck stuff stuffed sub substitute such sugar suggest suggestion
suggestions suit sulk summarise sunk supermarket superstitious supper supposed sure surely
suspend swap swears sweet swell swelling swells swimming switch switched swore system table
tablespoon tablet tablets tackle tail tailed take taken takes taking talk talking tap target
tariq tasks tastes tea teach team tearing tears teaspoon teenagers teeth telephoned tell telling
telly temperature temple tenderised tenderloin tent tented tenting test text texted than thank
thanks that thaw the their theirs them themselves then theo there thereabouts thermometer these
they thick thicken thickened thickest thin thing things think thinking third this those though
thought thoughts thread threw throat through throw thumb thyme tick ticked ticking ticks tie
tied tight til tiles till tim time timeline timer timers times timetable timing timings tin
tinfoil tinkle tins tiny tip to today toddler toddlers together told tom tongs tonight too
took top topped topping tops topside total totally touch touched touches touching tough toward
towel towels town track tractor traffic train transplant trash travelling tray trays treat
trick trickle trifle trim trimmed trimming tripped trivet trouble truss trussed trussing trust
trying turn turned turning turns twas twice twine twins tying type typo tyre ugh un uncle uncovered
under undercooked underneath understand undo undue units unless unpause unsay unset unusable
up update upside upstairs urgent us use used useful using usual vegan vegetable vegetables
vegetarian vegetarians veggie verde very vi vinegar visitor visitors volume volunteered vote
voted wait waiting wake walk walkabout walked walking want wanted wanting wants war warm warmed
warmer warming warn warning was wash washed washing watch watching water way ways we weak wean
weans wee weeds week weeks weigh weighed weighs weight weights weird weirdo well wendy went
were whacked whadda what whatcha whatever whatsoever when whenever where whereabouts wherefore
whether which whichever while whip whipped whisht whisk whisked whisking whistle white who
whole whoosh whopper why wife wiggled wilf will wilsons wilted wind wine winning wipe wire
wired wireless wise wish with without wobbly woke woman won wood word words work working works
worktop worried worry worse worth would wouldja wrangle wrap wrapped wreck wrecked wresting
wrestle wrist writing wrong wrote y ya yank yapping ye year years yeast yell yes yesterday
yet yoghurt yogurt yoke yorkshire yorkshires yorkshre you young your yourself yusuf z zero
zeros zip`.split(/\s+/),
);
