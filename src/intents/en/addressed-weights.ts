/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-33 #heard0
-25 =courtesy =courtesy:phrase
-23 #expecting:false:few =acknowledge =acknowledge:phrase left
-22 you ~O_at
-21 =report-trouble:few he
-20 <n:40> across him ~^_he ~^_you
-19 =courtesy:S1 =courtesy:some did fair ~O_it ~U_in ~he_is ~n_all ~not_that
~we_U ~your_K
-18 <n:200> <y> lovely mine ring time ~S_, ~V_O ~on_U
-17 #O1 car door ice never number page pizza remove served steak there
~O_V ~U_y ~V_has ~for_n ~no_U ~some_more ~yes_P ~you_do
-16 =resume:frame bye film get hungry quid run your ~O_$ ~O_had ~P_i ~P_would
~U_for ~V_was ~^_as ~at_K ~c_is ~could_be ~did_you ~not_it ~to_him ~up_the
~when_i ~with_O ~yes_,
-15 =affirm:few =deny:some =emergency =emergency:phrase =set-serving-time:S2
cake channel chef cuts dryer feeling flight heating messages pages queue
school she shuts small years yours yourself ~K_P ~K_or ~O_S ~P_let ~V_those
~^_if ~all_in ~in_U ~is_for ~like_mine ~n_for ~no_O ~no_i ~out_on ~that_O
~with_U ~you_have ~your_O
-14 #words12 =acknowledge:S0 bus dish drawer due find goose hey home neighbour
pudding serve side smells their those top wall wash year ~,_here ~O_U ~U_are
~V_my ~^_after ~^_and ~^_her ~c_to ~for_U ~get_down ~have_another ~if_that
~my_O ~n_O ~out_, ~she_said ~they_O ~up_, ~yes_i ~your_P
-13 #words0 <n:25> =acknowledge:few =ask-status:frame =deny:S1 =emergency:S1
big break breaking check cross died ends for last line listening morning
other question remember somebody spell whatever ~,_a ~,_my ~K_a ~K_me ~K_the
~O_n ~O_we ~S_U ~V_y ~^_$ ~d_and ~for_your ~get_it ~have_you ~he_has ~i_could
~in_n ~into_the ~n_or ~never_V ~or_K ~she_V ~should_V ~so_what ~that_U
~that_will ~the_other ~those_U ~was_d ~will_do ~would_V ~you_are ~your_V
-12 #words8 =ask-amount:S1 =choose:few =drop-dish:some =pause:S1 =report-reading:to-reading
answer believe drink each fancy full hand hear hello kitchen ladder lived
meter moved neighbours pass pulled recipe roll second sister someone still
stir tumble week ~,_she ~,_that ~K_that ~O_with ~U_than ~U_you ~V_is ~V_n
~V_up ~^_do ~^_so ~^_their ~d_at ~go_and ~gone_up ~his_U ~n_a ~n_then ~says_take
~their_O ~those_K ~up_at ~with_that ~you_put
-11 #O2 #frame:most =affirm:S1 =pause:frame =resume:some =running-behind:some
anyone bathroom battery bed blood cut feed flat hall hotel into knife paid
potato restaurant road room scored shade shoulder these wanted ~,_take
~,_you ~K_say ~O_K ~O_so ~S_was ~U_already ~U_had ~V_we ~V_you ~^_too ~a_O
~after_the ~all_done ~do_you ~does_O ~it_goes ~me_on ~n_n ~n_was ~one_$
~other_U ~say_$ ~says_d ~still_V ~the_S ~they_U ~they_put ~till_c ~w_of
~was_a ~who_V ~you_n ~you_will
-10 #expecting:true:few =ask-why:S1 =repeat:S1 =report-done:S1 =set-doneness:S2
a about ate best birth booked broken caravan carve choir coming fire goes
got her judges like or pick pressure thousand through when ~,_let ~K_over
~O_now ~O_say ~O_was ~U_but ~^_his ~any_more ~at_V ~been_V ~by_O ~did_the
~does_the ~down_for ~first_V ~got_$ ~hers_V ~i_get ~in_these ~is_K ~is_d
~is_not ~is_this ~it_c ~me_, ~mine_V ~n_P ~n_the ~of_V ~of_those ~our_O
~over_there ~said_no ~say_K ~says_here ~second_K ~she_says ~the_O ~they_V
~this_$ ~to_this ~were_at ~would_have ~would_not ~you_should
-9 =affirm:some =choose:S0 =emergency:some =pause:few =report-not-done:S2
=set-doneness:most another ask barbecue calls cook cooking crispy eats
enough fourth grey letters lid lift may mooing packet ran reads seat serving
shot song they this till turkey turn watch wedding ~,_no ~,_their ~,_who
~O_to ~U_about ~U_of ~V_V ~V_does ~V_this ~^_no ~^_take ~^_that ~am_done
~and_it ~at_U ~by_n ~can_i ~do_not ~does_a ~done_and ~get_the ~he_O ~him_,
~if_she ~if_you ~in_it ~is_going ~is_n ~like_U ~more_O ~put_your ~take_a
~their_K ~there_any ~they_K ~this_, ~this_is ~were_n ~where_is ~you_like
~you_on ~yours_is
-8 #U2 #expecting:true:most =ask-status:all =correct:most =report-started:few
=resume =set-guests:S2 =start-over:frame all burning but come course else
fingers half hands horseradish loo no not point shift something starts
talks tea tray up whole ~K_still ~K_to ~O_and ~O_has ~O_have ~U_c ~U_i
~U_to ~U_yet ~V_K ~about_to ~am_n ~an_K ~are_$ ~d_i ~does_your ~get_your
~had_K ~have_done ~him_at ~i_O ~in_your ~is_his ~is_it ~is_t ~it_out ~it_took
~like_$ ~on_O ~or_not ~out_in ~put_me ~says_$ ~so_it ~still_U ~that_K ~they_were
~to_get ~what_did ~who_is ~why_is ~you_say ~yours_now
-7 =drop-dish:S0 =quiet:frame =report-done:most =report-not-done:some =resume:S0
=undo:frame basting better between butcher cat christmas day does drive
drop forget gas grand grandmother handle hole in mean meat music nana people
preheated press put round sign started sun touch ~,_can ~,_second ~K_from
~K_into ~K_never ~O_, ~O_up ~P_K ~P_and ~U_me ~U_we ~V_at ~V_or ~V_your
~^_are ~^_go ~^_they ~and_K ~and_some ~are_all ~be_a ~been_K ~but_it ~but_the
~do_V ~do_it ~for_V ~for_my ~going_$ ~got_more ~had_n ~has_a ~have_some
~he_can ~he_put ~her_K ~is_yours ~like_a ~n_U ~never_U ~not_you ~on_K ~she_U
~tell_P ~to_us ~you_$ ~you_get
-6 #K0 #phrase:S3 #words7 <n:300> <t:40> <t:550> =affirm =ask-amount =ask-amount:all
=ask-amount:phrase =ask-substitute:S0 =choose:phrase =choose:some =deny:few
=describe-roast:most =report-started:frame =running-behind:S1 =set-doneness:to-doneness
apparently away birthday bless carvery cool cost days even every funny
grandad hot milk mummy myself name new nobody raw red rolled sauce save
see spoon takes told understand water without wonder work ~,_now ~,_said
~K_your ~O_a ~O_down ~P_, ~S_$ ~U_him ~U_is ~U_off ~U_us ~V_they ~V_us
~^_mine ~a_U ~am_O ~and_a ~are_at ~did_that ~do_O ~down_$ ~for_a ~for_that
~he_K ~in_my ~is_mine ~is_still ~it_at ~may_$ ~not_U ~on_, ~out_V ~she_has
~that_it ~the_P ~the_second ~there_$ ~these_U ~they_had ~too_K ~was_O ~was_like
~we_O ~we_had ~we_should ~when_is ~you_take ~yours_$
-5 #O3 #expecting:true:some #frame:S2 #frame:all #heard2 =ask-how:phrase
=ask-time-left:most =ask-why:all =choose =drop-dish:phrase =lack:all =lack:frame
=note-guest:S0 =report-not-done:S1 =report-reading:S2 =resume:S1 =set-doneness:few
=set-guests:frame =shift-serving:S2 came chairs easter eating front garden
grill high iron job little lot mate meeting money nothing one open out
owe picking prices rubbish said says size than toast want weight would
~K_of ~K_was ~O_are ~O_said ~U_$ ~U_hers ~U_on ~U_one ~U_what ~V_did ~V_went
~^_does ~^_this ~^_your ~a_K ~are_you ~at_a ~done_, ~got_K ~got_n ~him_$
~i_do ~i_said ~in_d ~in_our ~is_down ~is_your ~it_in ~it_says ~let_me ~like_K
~mine_$ ~n_till ~off_K ~put_it ~said_the ~take_it ~tell_her ~the_V ~this_V
~to_a ~to_go ~was_n ~when_the ~who_was ~would_you ~y_, ~you_U ~you_would
-4 #P1 #U1 <n:12> =affirm:frame =ask-how:S1 =drop-dish =quiet:all =shift-serving:most
at boat boys bread capital checked club doctor dry duck feet final finished
hair hold love needs percent peru pink plate pretend roasted season shoe
shoes sick son spelling take test third was way were who ~,_on ~K_would
~O_y ~U_P ~U_a ~U_all ~V_U ~V_are ~^_get ~^_of ~^_our ~^_second ~about_the
~am_off ~and_he ~at_c ~before_n ~d_U ~for_me ~going_off ~he_V ~i_U ~it_on
~it_over ~n_not ~no_not ~of_n ~off_the ~on_V ~one_has ~one_more ~out_before
~second_V ~take_n ~to_be ~to_the ~w_$ ~we_were
-3 #frame:S1 =ask-how =ask-options:all =ask-temperature:most =ask-time-left:S1
=choose:most =correct:S1 =deny =quiet:S1 =report-reading:most =resume:few
=set-doneness =set-doneness:S0 =set-serving-time:S1 =set-timer:most =start-over:S1
=start-over:most =undo:most alarm and appointment bag call centre coast
dead do give here i is man men on option party pat play pull quiet seen
sold spain taxi that to twice window ~K_, ~K_all ~K_t ~K_were ~O_off ~O_out
~O_says ~O_your ~P_have ~U_out ~U_there ~U_up ~U_your ~V_$ ~V_to ~^_she
~^_the ~c_, ~d_, ~had_the ~have_V ~his_P ~how_do ~in_for ~in_since ~is_a
~is_out ~me_the ~not_n ~put_$ ~second_O ~t_in ~this_O ~to_n ~w_,
-2 #P0 #S0 #heard3 <w> =affirm:phrase =ask-how:S0 =ask-how:all =ask-substitute:phrase
=ask-temperature:frame =correct:some =deny:frame =deny:phrase =describe-roast:S0
=report-done:few =report-done:phrase =report-reading:S1 =set-doneness:phrase
=set-serving-time:few always bins bring brought button chicken coat down
ingredients knee leave leg lights lumpy manager market move place rack
shall short standing station tablets train yes ~,_never ~K_V ~K_too ~K_up
~O_O ~O_d ~P_is ~P_put ~U_before ~U_does ~U_now ~U_the ~U_would ~V_done
~V_too ~V_will ~^_V ~^_first ~^_never ~^_tell ~^_when ~^_who ~^_will ~and_O
~c_$ ~d_to ~did_not ~down_to ~for_$ ~for_O ~has_been ~have_got ~he_said
~his_O ~how_is ~how_to ~i_did ~i_would ~in_$ ~is_about ~is_the ~it_a ~it_n
~it_was ~n_, ~not_$ ~on_your ~out_U ~out_and ~put_in ~so_U ~take_these
~take_your ~tell_your ~that_is ~that_one ~the_U ~the_n ~these_O ~those_O
~y_$
2 #K2 #phrase:some #words5 , <n:80> =ask-options =ask-safety:all =ask-status
=ask-substitute =ask-temperature =describe-roast:S2 =report-reading:phrase
=report-setup:S1 =report-setup:some =report-started:S2 =running-behind
=set-guests =set-serving-time:some =shift-serving:all =shift-serving:few
=undo:few again an are before by count foil go gran grandpa has hitting
law mind more mum nearly oh overcooked power rest stay too we weighs which
why ~K_has ~K_n ~P_$ ~U_V ~V_before ~V_for ~V_here ~V_in ~V_over ~^_on
~^_which ~^_why ~about_it ~all_U ~all_the ~and_we ~at_that ~can_you ~from_n
~got_V ~here_, ~i_can ~is_in ~it_first ~me_about ~my_U ~not_V ~now_V ~on_my
~this_U ~too_$ ~was_K ~we_V ~we_are ~what_a ~what_is ~when_we ~y_at ~you_V
3 #K1 #O0 <n:999> =affirm:all =ask-next:S0 =ask-next:phrase =ask-temperature:S0
=ask-why =ask-why:phrase =note-guest:few =repeat:some =report-out:few =report-oven:some
=report-reading =report-started =report-started:S1 =resume:phrase =set-doneness:S1
=set-serving-time =set-timer:frame =start-over already buy checking core
earlier forward jess kids knock later leftovers let off order saying shut
skip so stop swimming the tin use washing yorkshires ~,_we ~K_. ~K_U ~K_on
~P_. ~P_V ~U_down ~U_this ~V_? ~a_second ~am_not ~are_K ~are_V ~are_this
~can_my ~d_K ~for_K ~has_gone ~is_$ ~is_on ~is_to ~is_too ~off_$ ~should_the
~tell_when ~to_U ~up_P ~us_a ~was_V ~went_on ~why_am ~why_do ~will_be ~will_have
~you_go
4 #P2 #expecting:false:some #frame:S3 =affirm:S0 =affirm:to-confirmation
=ask-plan:most =describe-roast =describe-roast:phrase =note-guest =note-guest:phrase
=report-reading:some =set-doneness:frame =set-method:all =set-serving-time:all
=set-serving-time:phrase =shift-serving =shift-serving:S0 =undo:S0 backs
beautifully creamed dad glazed green had hush light looks lost middle nuts
onions oven potatoes shop sit slow some spinach split step table taking
theirs thermometer today uncle wake well went ~,_, ~,_and ~,_what ~K_are
~K_says ~U_and ~U_from ~U_some ~V_P ~V_an ~V_can ~V_than ~V_what ~^_any
~^_can ~^_is ~^_yes ~all_V ~am_U ~an_U ~and_they ~at_n ~been_in ~before_it
~can_do ~can_the ~could_K ~go_, ~have_O ~have_to ~here_and ~i_had ~i_took
~in_, ~in_the ~it_all ~it_yet ~not_be ~now_$ ~now_? ~off_, ~should_i ~them_are
~till_n ~to_O ~took_it ~was_U ~was_at ~was_out ~you_,
5 #phrase:S2 =ask-shopping:some =ask-temperature:phrase =pause:S0 =pause:most
=repeat:phrase =report-guests:all =report-guests:some =report-out:phrase
=report-reading:all =report-reading:few =report-started:S0 =report-started:some
=set-guests:S0 =set-guests:few =shift-serving:S1 =shift-serving:phrase
church could cranked everything fine getting good have heat honestly how
it kindly life night peas peel plates roast smoking start stuff talk talking
thank tonight warm warn ~,_all ~K_$ ~K_be ~K_before ~U_with ~V_another
~V_do ~V_now ~V_that ~V_w ~^_did ~^_my ~^_not ~^_w ~^_what ~^_would ~^_y
~are_on ~are_the ~as_V ~be_K ~could_we ~for_d ~have_$ ~have_been ~his_V
~i_am ~i_be ~if_they ~in_a ~in_and ~is_now ~is_there ~it_$ ~it_take ~me_V
~me_when ~my_K ~no_K ~no_V ~no_no ~not_in ~now_at ~still_O ~t_$ ~tell_me
~the_d ~then_$ ~was_the ~we_$ ~will_not ~yet_$
6 #frame:some <t:150> =add-dish:some =ask-next =ask-status:some =cook-away:most
=describe-roast:some =lack:S1 =report-done:S0 =report-done:S2 =report-done:frame
=report-oven:few =report-started:all =report-trouble:S0 =set-guests:S1
=set-guests:most =set-serving-time:to-serving-time =set-timer =set-timer:phrase
=undo:all ? afternoon alert am b beef dear everyone fresh friend goodness
happens joining mash of outside pan pipe prepone sack stays throw undo
what yet zero ~K_off ~O_by ~O_w ~U_d ~U_has ~U_if ~U_my ~U_w ~U_when ~V_his
~V_off ~^_could ~^_out ~be_V ~be_at ~been_U ~by_d ~c_then ~c_y ~do_K ~done_with
~for_P ~gone_and ~i_will ~it_up ~n_K ~n_if ~not_going ~on_d ~out_d ~take_the
~that_P ~went_out ~you_be ~you_tell
7 #phrase:S1 #words3 =add-dish:all =ask-amount:most =ask-guests:some =ask-safety:most
=ask-substitute:S1 =choose:S1 =cook-away:few =cook-away:frame =cook-away:some
=correct:to-confirmation =report-not-done:S0 =report-oven:most =report-trouble:phrase
=set-units:most allergic as bought children folks forgot hits knocked lads
mashed mustard phone processor roasting sorry them using ~!_$ ~K_K ~K_already
~P_he ~S_can ~U_at ~U_by ~V_by ~V_on ~V_the ~V_where ~^_P ~^_g ~^_how ~^_took
~before_$ ~c_n ~d_V ~do_a ~does_it ~first_K ~for_c ~gone_d ~had_a ~have_had
~have_not ~have_the ~here_to ~i_K ~i_got ~i_have ~in_K ~is_O ~is_c ~it_said
~me_now ~more_K ~not_got ~over_, ~put_K ~that_V ~to_g ~what_should ~what_to
~why_K ~will_U ~with_it ~would_K
8 #U3 =add-dish:most =ask-status:S1 =cancel-timer:S0 =cancel-timer:some
=describe-roast:few =help =lack =pause:some =quiet =report-done:some =report-setup:phrase
=report-trouble:S2 =running-behind:few =skip-step:some =start-over:some
=undo any arrive bother burned butter cabbage cancelled celsius cold conventional
cooked covered darling delayed fell gave glasses house know match next
nipping priya probe running same shopping sooner straight switch taken
things timeline touching traffic wait white ~,_they ~,_w ~K_goes ~K_one
~K_went ~O_another ~O_me ~U_said ~V_after ~V_all ~V_but ~V_hers ~V_no ~^_S
~^_have ~^_n ~ago_$ ~ago_it ~are_still ~at_all ~be_gone ~been_on ~d_from
~did_i ~down_the ~for_you ~goes_in ~got_the ~have_U ~have_gone ~have_i
~is_all ~is_at ~it_, ~it_? ~it_U ~it_till ~me_in ~my_P ~n_$ ~no_the ~of_U
~said_n ~say_, ~she_is ~us_V ~what_i ~what_now ~where_do ~will_K ~with_my
9 ! #expecting:false:most <d> =add-dish:S1 =add-hands:S1 =add-hands:all
=add-hands:phrase =ask-guests:all =ask-shopping:all =ask-shopping:most
=correct:S0 =help:S1 =report-done:all =report-started:phrase =running-behind:S0
=set-guests:phrase =set-method:frame =set-timer:S1 =skip-step:phrase =watch:phrase
air be blue cancel cast convection eggs fallen going helping holler jo
joint medium pounds quick ready set shelf stand then thing us ~,_K ~K_as
~K_c ~S_V ~U_says ~^_be ~am_going ~are_here ~before_d ~d_before ~do_about
~do_we ~first_$ ~first_U ~get_n ~gone_for ~if_it ~is_here ~is_up ~it_O
~it_went ~more_$ ~n_be ~on_then ~out_$ ~so_they ~some_K ~some_U ~the_K
~there_is ~to_V ~when_it ~will_V ~with_d ~would_n ~yet_, ~your_U
10 <g> <t:25> =ask-next:S1 =ask-safety:S1 =ask-safety:S2 =ask-shopping:S0
=ask-why:some =deny:most =describe-roast:S1 =report-out:all =report-oven
=report-oven:S0 =report-oven:S1 =report-oven:to-reading =report-reading:S0
=report-setup:S2 =set-serving-time:most =set-units:some =start-over:phrase
=watch:S0 add also anyway begin burnt cousin doing end fed garlic gravy
groceries keep list meant message miss mistake oil options parents pepper
piece push remind sam shout smoke timer while with yorkshire ~,_like ~K_go
~K_not ~P_are ~U_? ~U_K ~V_, ~V_. ~V_c ~V_have ~V_if ~^_d ~^_where ~and_P
~and_the ~are_my ~c_on ~do_the ~down_d ~g_$ ~get_here ~have_no ~in_V ~in_there
~is_over ~is_put ~me_$ ~me_at ~n_! ~n_? ~n_is ~ok_i ~on_now ~out_the ~say_V
~says_U ~second_U ~shall_be ~so_that ~the_first ~to_do ~to_take ~us_do
~went_in ~what_was ~with_K
11 #expecting:false:all #heard1 =ask-amount:some =ask-safety:some =ask-shopping
=ask-shopping:phrase =cook-away:S2 =deny:to-choice =drop-dish:frame =note-guest:to-guests
=report-out:S1 =report-oven:all =running-behind:all =set-units:all arrived
carry center daughter dauphinoise dave fan gone ignore laws loin mother
read sear sec shops squash switched thick thickest tom total vegetarian
where yell ~,_S ~K_do ~K_got ~K_now ~K_we ~K_y ~O_for ~O_the ~S_is ~V_me
~^_c ~^_gone ~^_now ~a_n ~all_K ~and_V ~another_d ~be_d ~c_V ~d_ago ~down_at
~go_$ ~have_K ~have_a ~how_V ~i_put ~i_say ~is_V ~is_done ~not_c ~of_O
~on_$ ~on_a ~over_n ~put_the ~till_K ~w_O ~was_that ~we_c ~we_go ~what_U
~what_do ~with_n
12 <n:150> <t:12> =add-dish:frame =ask-options:most =ask-plan:S1 =ask-plan:few
=ask-status:few =ask-status:most =lack:phrase =report-guests =report-setup
=report-started:most =running-behind:frame =set-doneness:all =set-serving-time:S0
ago aiming board delay doorbell early evening few finish floor god maria
need neither poke ruin seasoned should steady tying upstairs ~,_mine ~O_P
~O_t ~V_down ~V_it ~V_says ~V_so ~V_t ~^_done ~^_there ~are_going ~are_n
~are_out ~c_not ~d_$ ~for_y ~from_the ~has_V ~if_i ~in_yet ~it_be ~let_us
~n_with ~no_n ~now_, ~of_them ~on_g ~out_for ~out_now ~said_that ~second_n
~should_be ~since_c ~so_the ~t_U ~take_K ~we_do
13 #frame:few #phrase:most =add-hands:most =ask-guests:S0 =ask-substitute:frame
=cancel-timer:S1 =cancel-timer:phrase =describe-roast:all =drop-dish:S1
=quiet:some =repeat:S0 =report-guests:S0 =report-setup:most =report-started:to-reading
=report-trouble =report-trouble:frame =skip-step:S0 =skip-step:most =watch:all
after boneless dial dine electricity forerib fridge help longer low part
puddings rare reaching safe salt salted scrubbed shove simmering since
sorted stuck telly trussing twine warming works ~,_d ~,_he ~,_it ~,_would
~K_and ~K_our ~O_of ~P_can ~U_U ~^_a ~at_$ ~by_c ~do_now ~from_V ~going_to
~has_t ~in_this ~is_since ~n_more ~n_on ~no_, ~off_at ~on_for ~the_in ~there_will
~they_are ~till_we ~too_V ~what_are ~with_the
14 #phrase:S0 =add-dish:few =add-hands =ask-safety:S0 =cancel-timer:all
=cook-away =cook-away:phrase =help:phrase =report-oven:phrase =report-setup:frame
=report-trouble:most =set-units:S0 =set-units:S1 =set-units:phrase anything
change choices dog frenching gets grandma likes makes must now ok old once
packed plan plus prime rising schedule store swap wine won ~,_but ~K_?
~K_done ~K_have ~V_d ~V_with ~^_let ~^_ok ~^_say ~^_some ~am_d ~am_out
~and_n ~are_in ~c_. ~c_d ~can_not ~down_c ~got_to ~he_U ~is_already ~is_no
~it_K ~me_K ~me_a ~must_V ~n_of ~n_y ~now_what ~still_K ~then_a ~they_will
~w_K ~w_n ~w_not ~why_does ~yes_it
15 #expecting:true:all =add-hands:S0 =add-hands:frame =ask-guests:most
=ask-next:all =ask-plan:S0 =ask-plan:all =note-guest:to-doneness =report-trouble:S1
=set-method:some =set-timer:S0 =watch =watch:most brown cream eye gratin
invited lunch minutes nephew trimmed walked ~,_c ~K_at ~K_d ~P_U ~U_it
~V_! ~am_i ~any_K ~are_d ~d_too ~do_$ ~done_yet ~first_n ~from_now ~got_a
~got_here ~has_not ~have_any ~how_are ~it_has ~on_it ~over_$ ~so_V ~to_say
~us_n ~we_like ~we_will ~went_up
16 =ask-how:most =ask-plan:phrase =ask-safety:few =cancel-timer =help:S0
=report-done:to-step =running-behind:most =set-method:S0 =set-method:most
=set-method:phrase =set-units =undo:S1 =watch:S1 bit brother butternut
continue eat fahrenheit hang having looking made misread persons rosemary
scratch sitting tenderloin thyme turned wants ~K_down ~K_w ~V_from ~^_K
~^_in ~^_t ~all_over ~is_U ~is_after ~n_so ~no_it ~so_n ~we_have ~what_can
~when_do
17 #words1 =add-dish:S0 =add-dish:phrase =ask-how:frame =ask-next:some
=ask-temperature:some =cook-away:all =quiet:S0 =report-out =report-out:some
=report-setup:all =set-timer:all =undo:some buttered carved dairy family
internal long remaining rib right runs tenderised trust under ~,_$ ~K_O
~K_with ~U_n ~V_more ~^_all ~already_K ~are_not ~at_t ~c_it ~in_at ~n_i
~say_that ~that_was ~they_c
18 . =ask-guests =ask-guests:phrase =ask-plan =describe-roast:to-roast
=lack:S0 =report-out:most =set-guests:to-guests =set-method =skip-step:S1
=watch:frame leave-in mint rolls showing think wife wrong ~K_i ~V_them
~already_$ ~another_V ~c_in ~can_we ~is_w ~n_but ~n_d ~no_$ ~of_K ~of_us
~says_t ~so_$ ~so_we ~that_,
19 =add-dish =ask-temperature:all =ask-why:S0 =cook-away:S1 =lack:most
=report-guests:phrase =report-setup:S0 =skip-step:all bone carrots food
hit inside instead show truss ~,_so ~,_thanks ~._$ ~V_a ~V_and ~^_at ~^_got
~am_V ~done_$ ~it_down ~it_to ~n_too ~not_have ~says_n
20 <t:80> =ask-safety =ask-safety:phrase =deny:to-confirmation =drop-dish:most
=note-guest:S2 =pause:phrase =report-guests:most =report-out:frame =report-trouble:all
=skip-step:frame beans make peeled reached searing shows trimming ~K_it
~V_till ~and_no ~have_put ~n_now ~not_done ~up_to
21 #phrase:all <n:100> =help:all =skip-step batter bones texted tied ~a_w
~me_how ~n_in ~not_K ~yes_go
22 =ask-substitute:most =choose:all =deny:all =quiet:most =report-not-done:all
=start-over:S0 =undo:phrase behind much ~,_P ~K_yet ~d_for ~with_V ~yes_that
23 #words2 =report-out:S0 pregnant reading ~yes_$
24 =ask-next:frame =choose:to-choice =quiet:phrase =resume:all dinner ~like_it
25 =report-trouble:some
26 =ask-amount:S0 =ask-options:phrase =ask-status:phrase =drop-dish:all
=note-guest:all pause
28 =affirm:most ~?_$
29 =shift-serving:some
30 =correct:all
31 ~do_i`;

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
  `a about acting add adding afraid afresh after afternoon again ago ahead
aid aiming air alarm alert alex alight all allergic allergies allergy already
also alternatives altogether always am amount an anchovies and another
any anymore anything anyway are arm arrive arrived as asks at ate away
b baby back backs bad bairns banjaxed baste basting bath batter be bean
beans beautifully bedlam beef been beeped before begin beginning behind
belay ben billowing bin bit blade blank bleeding blistering bloody blue
board bone boneless bones bother bothered bottle bought bout boys braised
bread bring bringing broken brother brought brown brussels bumped bung
bunged burned burning burns burnt but butcher butter buttered butternut
buy by c cabbage call called came can cancel canceled cancelled carked
carrots carry carve carved carving cast cat celsius center centre change
chasing cheap check checked checking chef chemo children chimney chip choices
chopped christmas chronic chucked church clean clever climbing clock clogs
cloves cocked coeliac cold come comes coming commands completed conked
continue convection conventional cooked cooker cooking cool cope core correction
could count countdown counting course cousin cousins cover covered crack
cracking craic cranked crap cream creamed creme crimbo crumble crunchy
crust cut cutted dad dairy dangerous dark darling daughter dauphinoise
dave day dead dear degrees delay delayed dial did died dine diner dining
dinner display do does dog doing done door doorbell down dried drop dropped
earlier early eat eating eats eggs electricity else end enough even evening
everybody everyone everything extra eye eyes faff faffing fahrenheit fall
fallen family fan far fast fat father fed feed fell few fewer fine finger
fingers finish finished fire first fix flames floor foil folks food for
forerib forget forgot forward fraiche frail freeze french frenched frenching
fresh fridge friend from fun garlic gas gave get gets getting ghee girl
girlfriend give glasses glazed gluten go gob god goes going gone good goodness
got grabbed grace gran grandad grandma grandpa granny gratin grattan gravy
grease green groceries guest guests had hair half hand handle hang happening
happens hard has have having he head heat hello help helped helping helps
her here hers hey high his hit hits hitting hold holler hon honestly horseradish
hot house how husband hush i idiot if ignore in including inform ingredients
inside instant instead internal invitation invite invited iron is it jess
jim jo job joining joint jumping keep kept kernel kiddies kids kill kilos
kindly kip kitchen knife knock knocked know lads lagging laid lamb last
late later law laws leave leave-in left leftovers leg leo less let letting
life lifted light lights like likes list lit little loin long longer look
looked looking looks lost lot love low lucy lumpy lunch made mains make
makes man many margarine marge maria marks mash mashed match mate matter
me mean meaning meant meat mechanically medium members message metric middle
milk mind mine mint minutes misread miss mistake mixer moment mommy money
monkeys mooing more mother mouths move mr much mum must mustard mute my
myself nagging nan near nearly necks need needle needs neighbour neither
nephew never new next night nipped nipping no nobody none nor not now number
nut nuts of off offered oh oil ok old on once one ones onions open opened
option options order other ought our out outside oven over overcooked overdone
overnight overview overwhelmed own package packed palaver palm pan pardon
parents parsnips part party past pause paws peas peek peel peeled peeling
pending people pepper person persons petal phone pick picking piece ping
pink pipe place placed plan planned plates plus pm point poke popped popping
pork portions postpone potato potatoes pounds power pregnant preheated
prepone prime priya probe processor proper puddings pull pulled push put
quick quiet quite rack rail rang range rare raw reached reaching read reading
readings reads ready reckon red reed remaining remind repeat replace rest
resting resume rib right ringing rising roast roasted roasting roles rolled
rolls root roots rose rosemary round ruin run rung running runs sack safe
sage said salt salted sam same sat sauce say saying says scalded schedule
scrap scratch scrubbed sear seared searing seasoned sec second seems serve
served serving set setting shall sharp she shelf shit shop shopping shops
short should shout shouting shove show shower showing shows shush shut
silence simmering since sir sister sit sitting skillet skip skipped sliced
slow smashing smeared smoke smokes smoking so some somebody somehow someone
something somewhere son sooner sorry sorted sour spinach splashed split
spot sprouts squash stabbed stand standing start started stay stays steady
steeping step still stock stop store stove straight street strike string
strip strung stuck stuff sugar supper swap swears swimming switch switched
table tail take taken taking talk talking target tea tearing telephoned
tell telly temperature tenderised tenderloin tented texted than thank thanks
that the theirs them then there thermometer they thick thickened thickest
thing things think third this those through throw thumb thyme tick tie
tied till time timeline timer timers tin tinkle to today toddler tom tonight
too took top topped topside total touches touching track traffic train
trick trim trimmed trimming truss trussed trussing trust turn turned twine
tying type typo ugh un uncle under understand undo undue up upstairs us
use used using vegan vegetables vegetarian wait wake walk walked walking
want wanted wanting wants warm warmer warming warn warning was washing
water way we weak weighs weight weights weird well went were what when
where wherefore which while whisht white who whole why wife will wind wine
with without won work working works would wrecked wrong ya year yell yes
yet yoke yorkshire yorkshires yorkshre you your zero`.split(/\s+/),
);
