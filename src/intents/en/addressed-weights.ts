/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-25 fair
-23 =set-serving-time:S2
-22 pass
-21 him
-20 =acknowledge =acknowledge:phrase =courtesy =courtesy:phrase =report-trouble:few pudding
~get_down ~that_will
-19 #frame:S3 #words0 =emergency:frame pizza smoking ~,_you ~^_$ ~for_U ~is_for ~on_U
-18 <y> channel dishwasher drink film goose mine ~let_it ~more_O ~some_more ~to_us
-17 =set-timer:S2 ?talk6 apparently wonder ~O_had ~O_we ~at_K ~for_you ~i_$ ~n_all ~out_in
~that_U ~with_U ~yes_, ~you_get ~your_K
-16 #O3 <n:200> =courtesy:S1 =courtesy:some draw drawer hand hole level lights morning quid
talks these wedding ~U_there ~V_him ~V_or ~V_y ~it_a ~not_that ~or_not ~said_no ~was_i
-15 #heard0 =start-over:S1 argument barbecue cost fill garden gorgeous neighbour scored shot
spain sun wash ~,_their ~?_is ~O_are ~U_you ~V_she ~^_her ~and_S ~any_O ~had_K ~have_another
~like_mine ~n_U ~n_can ~no_i ~not_it ~says_d ~so_U ~there_yet ~those_K ~who_V ~with_O ~you_have
~you_n
-14 =choose:S1 =report-not-done:few ?talk5 ?talk7 bathroom beer carvery feeling mouth moved
music number or pages queue remove small starts stir takes tooth whatever you yours ~,_a ~K_y
~K_you ~O_O ~O_n ~U_? ~U_t ~^_shall ~are_O ~could_V ~i_like ~n_from ~n_then ~n_w ~our_O ~shall_we
~so_c ~take_a ~that_O ~till_c ~was_w ~you_do ~you_on ~your_S
-13 #expecting:true:most =acknowledge:S1 =affirm:some =set-doneness:S1 ?heard0 ?heard0:phrase
across birth booked broken bus bye doctor door even grandad he left loo never other owe pumpkin
remember restaurant roll starter towel your ~,_says ~?_it ~K_a ~K_say ~O_says ~P_and ~S_of
~and_some ~could_be ~does_a ~going_$ ~her_K ~it_done ~n_or ~n_was ~say_K ~there_any ~to_him
~up_in ~was_a ~we_U ~y_we ~you_, ~your_V
-12 #expecting:false:few #words12 <n:40> =deny:S1 =deny:some =quiet:frame =report-trouble:S2
=resume:some ?talk4 boiling break breaking caravan cats due excuse hot judges lovely nana paid
parking pressure road sake served shuts sit smells sugar taxi window ~K_P ~K_into ~O_K ~O_has
~P_got ~U_y ~V_O ~V_first ~^_their ~are_this ~did_you ~do_if ~do_my ~does_O ~going_off ~hers_at
~in_since ~is_down ~it_c ~like_$ ~may_$ ~mine_V ~n_c ~n_when ~not_go ~off_O ~ok_K ~on_, ~on_P
~put_that ~she_V ~she_says ~still_U ~then_the ~they_had ~to_this ~was_d ~were_at ~were_n ~where_did
~yes_i ~you_done ~you_like
-11 =acknowledge:S0 =ask-amount:S1 =pause:frame =report-out:S2 ?talk8 again baby believe charge
chef did died dusted ends fancy half hall handle hello home loud may packet rice something
turn ~,_here ~O_have ~S_U ~S_in ~S_was ~^_he ~^_his ~am_n ~and_got ~and_let ~at_V ~d_and ~get_your
~goes_, ~he_has ~he_is ~he_put ~his_O ~i_get ~is_his ~is_your ~it_on ~me_, ~my_O ~n_n ~n_over
~never_V ~off_V ~other_$ ~over_that ~says_, ~says_here ~says_take ~so_it ~their_O ~why_is ~would_have
-10 ! =acknowledge:few =cancel-timer:frame =report-started:S3 chairs crispy days each easter
every front hey hungry ladder loads lows messages mum row ruined shop sister swimming theirs
week ~,_can ~,_have ~,_no ~,_put ~,_who ~,_with ~O_out ~U_P ~U_U ~^_so ~all_done ~are_at ~are_d
~c_of ~can_i ~done_, ~done_and ~done_yet ~get_there ~he_can ~her_$ ~here_is ~i_will ~in_these
~is_K ~it_by ~it_goes ~it_took ~n_O ~n_P ~of_w ~ok_U ~or_n ~out_! ~put_me ~put_your ~say_to
~tell_P ~the_O ~the_other ~then_you ~these_K ~were_d ~will_U ~you_are ~you_should ~yours_is
-9 #O1 #O2 #frame:S2 =choose:few =choose:most =lack:S1 =report-not-done:S1 =report-reading:to-reading
=set-guests:frame ?heard0:frame ?heard1:frame answer bed boat boiler boys burning caught coach
cut found fourth grandmother her lift lot oh poor room school she shirt shoes shoulder swears
third touch wall worth years ~,_let ~,_never ~,_your ~?_U ~K_never ~O_$ ~O_is ~O_now ~O_so
~O_they ~P_K ~P_i ~S_it ~U_i ~U_in ~U_we ~V_are ~V_my ~^_these ~^_they ~all_in ~am_done ~am_still
~and_he ~are_the ~did_$ ~do_not ~does_your ~for_that ~go_and ~gone_up ~got_$ ~has_a ~have_gone
~have_to ~have_you ~her_P ~hers_V ~i_could ~is_it ~is_yours ~it_already ~me_on ~me_up ~n_not
~never_U ~of_you ~on_O ~out_? ~should_get ~thanks_$ ~that_it ~the_U ~they_O ~was_S ~yes_P ~you_$
~your_O ~yours_$
-8 =correct:some =describe-roast:frame =set-serving-time:few boss carve chuck church cross
delicious forward highs husband line money nothing phoenix pick recipe sent sprouts taking
time tom turkey wanted ~K_or ~O_S ~O_from ~O_on ~P_c ~P_have ~P_this ~U_, ~U_before ~U_is ~V_does
~V_there ~^_you ~at_U ~c_U ~c_a ~did_the ~for_O ~gone_in ~got_U ~have_done ~he_V ~his_U ~i_P
~is_this ~me_n ~n_for ~no_O ~not_for ~not_you ~on_and ~on_that ~one_has ~other_V ~other_one
~says_$ ~second_$ ~she_would ~so_what ~still_on ~the_P ~there_$ ~too_K ~w_of ~when_does ~would_K
~would_you ~yours_now
-7 #U2 =ask-amount:all =ask-options:frame =ask-safety:most =ask-status:S2 =ask-temperature:few
=correct:most =lack:frame =report-done:S3 =report-reading:S2 =resume:few =set-serving-time:S1
baker because chicken choir college corkscrew cover cuts drive funny get heating hook iron
late many meter million news older percent picking pretend question quite season seat sides
sirloin someone station street surgeon there those town usual yes yourself ~,_done ~,_my ~,_then
~?_can ~O_say ~O_to ~P_never ~P_would ~U_would ~V_was ~^_as ~^_go ~^_mine ~already_? ~an_K
~and_in ~been_K ~but_it ~c_y ~do_V ~got_more ~got_n ~he_O ~her_S ~in_c ~in_her ~in_here ~it_out
~n_the ~n_would ~said_she ~she_U ~she_said ~she_was ~since_n ~that_P ~to_a ~to_be ~was_at ~we_had
~what_would ~when_$ ~y_$ ~yours_V
-6 #U3 #frame:S1 <n:999> <t:100> =ask-time-left:most =drop-dish:some =repeat:frame =set-guests:all
=undo:few =undo:frame alarm allergic appointment broke card cent cousins da day does done duck
e eats else goes hers lid like lived manager men mooing page preheated prep raining salt says
shift sofa somebody song spell spoon telly thousand toast understand was washing weight whole
why year zip ~!_$ ~,_we ~K_did ~K_that ~K_was ~O_said ~P_in ~P_let ~U_to ~V_U ~V_who ~V_your
~^_no ~^_second ~^_the ~^_why ~^_your ~after_K ~and_she ~are_these ~at_it ~c_with ~d_at ~do_it
~for_n ~for_your ~gone_O ~he_K ~him_at ~how_do ~how_to ~in_U ~in_d ~in_for ~is_mine ~must_be
~my_U ~n_to ~not_do ~now_? ~of_V ~on_his ~on_your ~or_K ~out_V ~out_and ~over_there ~say_$
~says_the ~second_V ~so_we ~take_V ~they_were ~we_did ~we_should ~what_V ~when_the ~who_was
~will_do ~you_O ~you_U ~you_will ~your_go
-5 <t:200> <t:550> =ask-guests:S1 =report-started:frame =set-doneness:most ate away cake called
calls club coats double feet first flight folks for hair high his hold meeting move mummy next
pat pink points potato power prices put reduced rest sauce save shoe size standing thanks traffic
weather weighs ~!_no ~,_O ~,_did ~,_go ~,_is ~,_t ~,_that ~K_over ~K_there ~O_U ~O_with ~O_y
~P_$ ~P_is ~U_his ~U_on ~U_this ~V_all ~V_n ~^_and ~^_first ~^_that ~^_too ~a_K ~and_we ~are_all
~are_you ~at_that ~be_a ~before_n ~by_the ~c_to ~does_the ~for_c ~for_the ~go_, ~has_got ~have_this
~her_U ~i_can ~is_d ~is_t ~is_was ~it_! ~mine_out ~mine_was ~more_than ~n_is ~n_till ~not_c
~not_like ~now_on ~out_, ~over_n ~said_the ~second_K ~she_has ~take_it ~tell_her ~than_me ~them_$
~they_K ~they_V ~they_put ~too_U ~took_d ~up_V ~w_$ ~w_, ~we_V ~when_i ~where_is ~why_do ~would_V
~your_P
-4 #P2 #frame:all #frame:most <n:300> =ask-plan:few =emergency:few =repeat:S1 =report-done:S2
=report-oven:S1 =report-oven:frame =report-reading:S1 =report-started:few =set-timer:most ?heard1
another bag better birthday blue butcher call christmas coat cooking goals gone homework hotel
leo machine married motorway needs no our point press remote ring score seen side spelling
still telling they through till watch yet ~,_do ~,_his ~,_said ~,_she ~,_yours ~K_from ~K_got
~K_me ~K_still ~K_to ~K_were ~K_would ~O_. ~O_a ~O_down ~O_up ~U_all ~U_for ~U_off ~V_is ~V_off
~V_this ~V_we ~^_are ~^_she ~^_tell ~^_who ~a_S ~already_$ ~an_O ~an_U ~and_V ~and_a ~at_a
~be_V ~been_in ~can_do ~d_V ~do_O ~does_hers ~first_V ~for_me ~g_, ~go_V ~his_S ~if_that ~in_$
~in_your ~is_n ~it_at ~it_over ~it_with ~mine_$ ~n_! ~n_and ~now_i ~of_U ~of_them ~on_in ~our_U
~out_on ~put_it ~second_O ~she_took ~t_in ~take_your ~the_second ~then_it ~this_, ~to_U ~to_the
~up_a ~was_like ~with_K ~you_say ~you_take
-3 #P1 #phrase:few <n:12> =affirm:few =ask-safety:frame =ask-status:frame =ask-substitute:phrase
=ask-why:S1 =ask-why:frame =describe-roast:S2 =note-guest:S2 =note-guest:few =quiet:most =report-not-done:phrase
=report-not-done:some =report-oven:few =report-reading:S3 =report-started:S1 =set-doneness:phrase
=set-guests:S2 =start-over:phrase =start-over:some =undo:most ?heard5:frame ?heard6:frame ahead
and bad basting best bins book burn button chair come dryer football french give idea jumper
kettle kitchen lady last let letters lunch market mate meant party pay people roasted said
salty sat second serving shade stay stop sure tank team tumble twice way were ~,_take ~,_y
~K_U ~K_like ~K_says ~K_your ~O_, ~O_it ~O_off ~U_$ ~U_O ~U_hers ~U_if ~U_when ~V_at ~V_for
~V_of ~V_went ~^_am ~^_if ~^_it ~^_of ~a_V ~about_to ~am_off ~and_i ~any_more ~at_c ~be_there
~by_O ~c_the ~d_, ~first_n ~for_my ~from_there ~get_it ~had_n ~have_some ~him_$ ~him_, ~him_off
~i_O ~i_said ~in_our ~is_all ~it_O ~me_when ~now_it ~of_your ~on_K ~out_K ~over_, ~put_in ~put_my
~said_, ~said_n ~take_the ~take_these ~tell_your ~that_one ~these_O ~us_c ~us_the ~was_n ~went_off
-2 #words7 #words8 =affirm:S0 =ask-how:phrase =ask-how:some =ask-status:all =ask-substitute:some
=ask-time-left:S1 =ask-why:most =choose:phrase =courtesy:few =deny:few =deny:frame =describe-roast:S0
=drop-dish:few =emergency:S0 =help:S1 =repeat:some =report-out:frame =resume:S0 =resume:phrase
=running-behind:some =set-doneness:few =watch:some bless box capital car check coming cool
dan dish dropped fryer grand grill if imagine in instructions jim knee knife lbw look meal
mean myself option pan peru quiet reached reads say saying steak takeaway tea that though too
waiting water weekend with without ~,_U ~,_and ~,_still ~,_the ~K_, ~K_by ~K_on ~O_another
~O_by ~O_you ~P_S ~U_about ~U_at ~U_out ~U_over ~U_yet ~U_your ~V_as ~V_those ~V_yet ~^_O ~^_does
~^_out ~^_say ~^_w ~^_would ~a_y ~about_it ~could_not ~d_to ~did_ours ~down_? ~down_for ~for_S
~get_a ~have_V ~have_it ~he_said ~i_U ~i_did ~i_do ~in_O ~in_a ~in_it ~in_that ~is_S ~is_about
~is_not ~is_the ~it_, ~let_the ~me_now ~n_? ~n_S ~n_a ~n_ok ~no_K ~no_P ~not_n ~not_the ~not_there
~of_n ~of_us ~off_, ~ok_in ~one_$ ~one_more ~other_K ~over_to ~the_S ~they_get ~was_K ~was_V
~which_U ~who_is ~you_put
2 #U0 #phrase:some <c> <t:300> =ask-how =ask-options:S0 =ask-substitute =choose =cook-away:most
=correct =correct:S0 =describe-roast =describe-roast:all =note-guest:most =repeat =repeat:S0
=report-done:S0 =report-done:phrase =report-done:some =report-not-done:most =report-reading
=report-setup:some =report-started:some =resume:frame =running-behind:S1 =set-guests =set-serving-time:some
=set-timer =shift-serving:all ?heard7:frame alone an bread burnt came can cat checking children
dead eggs fell finished glass has hitting ingredients leave leg life long lost margarine me
pair past peas plate problem rack rang read shape shopping then tray undo well woman would
~!_V ~,_n ~._n ~K_at ~O_he ~O_in ~P_she ~S_, ~S_can ~S_me ~U_V ~U_had ~V_but ~V_from ~V_now
~^_how ~^_let ~^_on ~^_will ~a_d ~ago_, ~and_K ~and_there ~at_n ~at_this ~be_for ~by_n ~c_,
~can_the ~do_i ~done_the ~for_it ~has_not ~have_K ~have_an ~how_V ~how_you ~in_the ~into_the
~is_an ~is_at ~is_still ~is_too ~like_the ~me_about ~me_if ~me_that ~more_K ~n_of ~never_c
~not_out ~of_a ~on_at ~on_n ~on_this ~should_the ~some_of ~they_are ~to_O ~to_get ~up_, ~up_i
~us_V ~us_and ~w_n ~we_are ~what_is ~where_are ~which_K ~will_have ~with_this ~yet_$ ~you_would
3 #K1 #K2 #O0 #expecting:false:some #frame:S0 #heard3 <d> =ask-how:S0 =ask-how:all =ask-next:S1
=ask-next:most =ask-next:some =ask-plan:S0 =ask-status:some =ask-time-left:phrase =cook-away:S0
=cook-away:some =deny:phrase =describe-roast:few =drop-dish =lack =lack:most =note-guest:phrase
=pause:most =report-done =report-done:all =report-done:most =report-not-done:S0 =report-reading:all
=report-reading:phrase =report-started =running-behind:phrase =set-timer:phrase =shift-serving
=shift-serving:few ?heard3:phrase ?heard4 actual am any anyone babysitter been both comes conventional
core creamed darling delayed down dripping everywhere fingers fire flour food getting go green
have himself jess kill knock know lit mashed middle milk mother nearly nuts ours place pull
roast round sack some son soup start step stick straight strip train use vinegar warn ~,_,
~,_g ~,_ok ~K_after ~K_goes ~K_n ~K_no ~K_should ~P_has ~S_does ~S_will ~U_. ~U_by ~U_c ~U_here
~U_me ~V_in ~V_that ~V_they ~V_would ~^_P ~^_here ~^_ok ~^_was ~a_P ~are_K ~as_a ~c_V ~c_is
~d_i ~d_on ~for_d ~from_U ~go_in ~got_my ~had_the ~have_we ~here_already ~here_the ~i_still
~i_was ~is_$ ~is_done ~is_no ~is_since ~it_be ~it_says ~like_to ~me_i ~my_K ~n_, ~n_are ~n_if
~n_on ~n_y ~not_U ~not_going ~now_$ ~now_at ~of_her ~of_that ~ok_? ~on_a ~on_the ~put_$ ~put_them
~said_that ~second_n ~should_have ~tell_me ~tell_you ~that_, ~that_V ~us_a ~we_K ~we_were ~we_will
~what_a ~when_we ~why_are ~you_?
4 #S1 #phrase:S1 #words4 =add-dish:most =ask-guests:phrase =ask-next:frame =ask-options:all
=ask-safety =ask-status =ask-time-left =cancel-timer:all =cook-away:frame =correct:S1 =note-guest:all
=quiet =repeat:all =report-out =report-oven =report-reading:few =report-started:all =report-trouble:S0
=report-trouble:most =running-behind =running-behind:all =set-guests:S0 =set-serving-time:most
=set-serving-time:phrase =undo:S1 ?heard5 ?heard6 ?talk2 as be beautiful before bringing butter
buy center chucked clock cracking cranked cremated crying dear few free good gratins hear held
holler horseradish jo knocked landed meat more own potatoes probe reverse sheet shelf sick
softening sounds switch than us what wire ~,_K ~?_no ~K_$ ~K_V ~K_went ~K_when ~P_so ~S_$ ~S_and
~U_are ~U_was ~V_? ~V_already ~V_before ~V_can ~V_could ~V_it ~V_the ~V_theirs ~^_S ~^_i ~a_U
~ago_and ~am_a ~and_P ~are_my ~be_K ~be_an ~by_now ~c_we ~do_in ~do_with ~down_the ~for_her
~from_n ~get_n ~going_for ~got_K ~have_not ~here_to ~i_am ~i_have ~i_would ~if_they ~into_V
~is_now ~is_on ~is_to ~it_and ~it_so ~like_V ~me_the ~n_at ~no_U ~out_d ~over_$ ~said_V ~second_it
~should_do ~so_P ~still_O ~taken_their ~than_the ~the_d ~their_K ~their_V ~them_are ~those_U
~to_g ~to_have ~us_at ~we_must ~what_U ~what_did ~what_should ~what_to ~when_it ~y_at
5 #K3 #expecting:false:most #heard1 =add-hands:S1 =add-hands:all =affirm:to-confirmation =ask-how:most
=ask-safety:S0 =ask-shopping:most =ask-shopping:some =ask-substitute:all =ask-temperature:phrase
=ask-time-left:S3 =ask-time-left:all =ask-time-left:few =cook-away:S2 =describe-roast:phrase
=emergency:S2 =emergency:some =note-guest =note-guest:S0 =pause:S0 =pause:all =quiet:S1 =report-done:few
=report-oven:most =report-reading:some =running-behind:few =set-doneness:S0 =set-timer:S1 =set-units:S0
=set-units:some =shift-serving:S0 =shift-serving:most ?heard4:phrase adding ago alternatives
arrived beautifully behind bother care celsius could count cousin end faffing fat fine girlfriend
help helper instant-read internal kilos listen loose love lumpy now odd onions play pork preheating
processor ribs ruin running sauna shed shops shower since skipping slices solid sorry table
tent track warming ways white working ~,_S ~,_all ~,_like ~,_on ~,_should ~,_tell ~,_w ~,_would
~._$ ~K_c ~K_for ~K_is ~K_now ~K_t ~O_and ~O_of ~O_w ~S_at ~U_what ~V_do ~V_has ~V_me ~V_on
~^_be ~^_with ~about_V ~after_we ~ago_$ ~all_$ ~and_it ~and_now ~and_the ~any_K ~are_$ ~are_out
~be_$ ~c_on ~can_it ~could_K ~d_U ~d_ago ~do_? ~do_K ~do_n ~down_$ ~first_K ~for_$ ~for_a ~g_$
~go_K ~goes_$ ~gone_$ ~have_all ~have_any ~have_put ~i_V ~i_should ~i_tell ~in_, ~in_V ~is_O
~is_V ~it_K ~it_n ~it_ok ~n_$ ~n_more ~n_who ~not_V ~not_got ~now_, ~one_says ~our_K ~so_the
~still_at ~still_got ~still_in ~t_K ~the_K ~them_V ~then_$ ~till_K ~till_it ~to_V ~to_do ~to_you
~up_the ~up_to ~us_$ ~w_O ~w_c ~was_that ~we_$ ~we_get ~went_on ~what_P ~what_have ~who_has
~will_that ~with_it ~would_not ~yes_V ~yet_V
6 #expecting:false:all #phrase:S2 #phrase:S3 #words3 . <n:150> =add-dish:S1 =add-dish:some
=add-hands:phrase =ask-guests =ask-next =ask-next:phrase =ask-options =ask-options:most =ask-plan:phrase
=ask-safety:S1 =ask-temperature:S0 =ask-why =cancel-timer =cook-away =note-guest:S1 =pause:S1
=pause:few =report-not-done:frame =report-oven:S0 =report-started:S0 =report-started:S2 =report-trouble
=set-method:all =set-serving-time:all =set-timer:S0 =shift-serving:phrase =skip-step:S0 =skip-step:S2
=skip-step:phrase =undo:S0 =watch:S0 ?heard6:phrase ?heard8:frame alex assisted beef brb brother
cancel carrots clear creme dauphinoise dried feed forks fraiche frenched game glasses golden
grace grandpa heard helps herb inform joining leave-in letting maria must offered oil ok packed
parsley pot reaching roasting scrap shall should shove smoke sooner starving supper thing think
toddler took trussing yell ~,_c ~,_get ~,_gone ~K_K ~K_are ~K_be ~K_before ~K_has ~K_out ~K_so
~K_up ~K_we ~K_with ~S_to ~U_S ~U_from ~U_not ~U_says ~U_so ~U_some ~V_, ~V_down ~V_her ~V_over
~V_said ~^_can ~^_did ~^_g ~^_like ~^_there ~^_where ~about_$ ~ago_it ~all_V ~am_d ~another_n
~are_U ~are_in ~are_off ~are_on ~be_on ~be_the ~before_$ ~c_are ~c_for ~can_K ~could_you ~d_from
~do_a ~done_for ~get_the ~goes_in ~gone_d ~has_gone ~has_it ~have_been ~have_n ~he_got ~her_V
~here_V ~his_V ~how_are ~i_must ~i_put ~is_P ~is_a ~is_like ~it_d ~it_up ~n_be ~n_tell ~now_we
~out_before ~put_on ~take_K ~that_$ ~that_ok ~the_in ~this_$ ~this_O ~this_V ~till_we ~what_all
~what_was ~when_will ~who_can ~why_am ~will_K ~will_it ~with_V ~would_n ~you_about ~you_go
~you_said
7 #phrase:S0 #phrase:most <g> =add-dish:all =add-hands:S0 =ask-next:S0 =ask-shopping:S0 =ask-shopping:phrase
=ask-time-left:S0 =ask-time-left:frame =ask-why:phrase =cancel-timer:S0 =cook-away:phrase =correct:to-confirmation
=describe-roast:S1 =have:S1 =have:most =help:phrase =pause =report-out:S0 =report-out:few =report-out:phrase
=report-oven:S2 =report-oven:phrase =report-reading:S0 =report-setup:S0 =report-started:phrase
=running-behind:frame =set-units:all =shift-serving:some =skip-step:some =start-over:all =undo
=watch:frame ?heard7 ?talk1 afternoon beginning blood cancelled carry centre chopped cook cooked
crept delete far feeding fuse gran hang hanging happening heat herself kindly later lay matter
metric mixed month months mouths niece ones options oven parsnips person pet present priya
rests rising runs slice so sous swap talk thick today tonight trimmed trust wanting ~,_mine
~,_second ~K_. ~K_and ~K_done ~K_go ~U_does ~U_has ~V_an ~V_his ~V_not ~V_should ~V_some ~V_than
~^_U ~^_could ~^_d ~^_n ~^_not ~all_K ~am_O ~and_then ~as_we ~been_on ~been_out ~before_the
~c_O ~c_then ~can_not ~could_i ~d_$ ~d_before ~for_him ~for_is ~go_O ~had_no ~have_got ~have_her
~i_c ~i_took ~if_it ~is_here ~is_put ~it_$ ~me_at ~mine_is ~more_V ~my_P ~n_K ~n_has ~n_have
~not_put ~now_K ~now_U ~now_and ~off_at ~off_the ~ok_$ ~ok_for ~ok_so ~on_g ~on_with ~than_V
~those_O ~took_out ~up_$ ~up_n ~us_in ~was_on ~we_got ~we_have ~were_we ~what_O ~what_for ~what_now
~where_were ~why_does ~why_so ~will_you ~with_d ~your_U
8 #expecting:true:all =add-hands =ask-amount:some =ask-plan =ask-safety:few =ask-shopping =ask-temperature
=cancel-timer:most =deny:S0 =describe-roast:some =emergency:phrase =have =have:S0 =have:phrase
=note-guest:frame =repeat:phrase =report-done:frame =report-guests:few =report-oven:all =report-setup:S1
=report-setup:most =set-doneness:all =set-doneness:some =set-method:S1 =set-method:frame =set-units:most
=watch:phrase ?heard5:phrase ?heard8 ?heard8:phrase add allergies alongside anything bairns
bath battery ben blast boneless bubbling buttered c careful cheap cloves cold collect commands
cream dave electricity enough expecting forerib gets groceries had instead jumped main miss
na near night parents pipe planned popped reading resting rock screaming serve short shout
show skillet split steps store stuffed supposed taken test their themselves touches twins vegetarian
yoke ~,_P ~,_how ~,_there ~,_what ~._w ~K_? ~K_down ~K_ok ~K_since ~O_goes ~O_then ~P_P ~S_is
~U_my ~U_than ~U_up ~V_. ~V_and ~V_another ~V_d ~^_K ~^_any ~^_going ~all_, ~and_put ~any_U
~any_other ~are_here ~as_V ~as_it ~at_the ~be_gone ~because_of ~but_the ~d_K ~d_now ~do_about
~do_now ~done_V ~done_with ~down_, ~for_K ~from_K ~gone_, ~gone_for ~got_it ~has_t ~her_O ~how_would
~in_my ~it_all ~it_as ~it_will ~let_us ~must_i ~n_V ~n_because ~n_too ~on_$ ~on_to ~one_V ~put_K
~said_it ~since_c ~since_d ~so_take ~still_c ~t_, ~take_that ~thanks_. ~that_n ~the_c ~there_is
~this_K ~those_$ ~till_i ~to_K ~us_have ~was_O ~went_V ~went_in ~went_up ~what_can ~what_do
~when_is ~when_you ~which_V ~with_$ ~with_n ~yet_,
9 #words2 =add-dish:phrase =add-hands:most =ask-how:frame =ask-shopping:all =ask-substitute:most
=ask-temperature:all =ask-temperature:some =ask-why:S0 =choose:S0 =choose:some =cook-away:S1
=deny:to-confirmation =have:all =lack:S0 =lack:S2 =lack:phrase =note-guest:to-doneness =repeat:most
=report-oven:to-reading =report-setup:phrase =report-started:most =resume:S1 =running-behind:S0
=set-units:S1 =set-units:phrase =skip-step:most =watch =watch:all ?heard7:phrase ?talk0 anymore
aunt auntie bean butternut buzz carving climbing conked correction doorbell earlier electric
evening everything fan find floor forgotten frozen full girl gluten happens hard helping jus
ladies list lying mute need neighbours order overwhelmed part persons ping quantity quick rare
remaining rolls salad see showing shush slowly speak spinach staying stays stepping stuff theo
thickest told total turned vegetables walk walked which yorkshire ~,_$ ~,_they ~,_where ~?_$
~K_as ~K_do ~K_will ~O_for ~P_he ~S_so ~U_said ~U_will ~V_S ~V_did ~V_like ~V_says ~V_t ~V_with
~^_a ~^_another ~^_put ~^_some ~^_took ~all_too ~an_V ~and_my ~are_going ~are_not ~at_t ~be_here
~before_d ~but_n ~by_d ~c_K ~c_c ~c_n ~could_we ~did_i ~do_the ~does_n ~g_now ~going_O ~gone_c
~got_a ~have_had ~how_can ~i_be ~i_had ~if_i ~in_and ~in_some ~is_ok ~is_over ~it_off ~it_till
~me_my ~must_V ~not_K ~not_have ~now_n ~now_what ~of_it ~ok_what ~on_now ~our_V ~out_$ ~out_for
~put_d ~say_, ~says_n ~she_is ~should_i ~so_that ~so_yes ~there_another ~this_one ~to_go ~up_at
~us_, ~us_it ~we_c ~we_can ~we_do ~what_am ~what_must ~where_do ~will_V ~would_say ~would_the
~you_can ~you_could
10 #phrase:all #words1 <n:80> =add-dish =add-dish:S0 =affirm:all =ask-guests:frame =ask-plan:all
=ask-plan:frame =ask-substitute:S1 =ask-why:some =cook-away:few =drop-dish:S1 =help =note-guest:S3
=quiet:all =report-guests:some =report-out:some =report-setup:all =report-trouble:phrase =set-doneness:frame
=set-method =set-method:S0 =set-method:most =set-serving-time:S0 =set-units =set-units:few
=shift-serving:S2 =undo:all arrive bake bit blank bone choices coeliac convection dairy dine
doing everyone fahrenheit father finish freezer gas giving granny gratin gravy guest hob hour
hush job killed la lads less likes little making mash message mint missing moment nan nor opened
overcooked practically ready reset rib ringing rubbish sage scratch seats sharp sitting somewhere
stabbed stage starting thought upstairs vegan walking wants where wipe ~K_O ~K_going ~K_it
~K_not ~K_our ~K_w ~O_P ~O_me ~P_on ~P_will ~S_K ~U_K ~U_and ~V_going ~V_have ~V_how ~V_what
~V_where ~V_will ~^_which ~a_w ~after_it ~am_going ~am_on ~another_V ~are_c ~are_we ~at_g ~before_i
~before_it ~c_in ~can_my ~did_that ~do_U ~down_n ~from_now ~gone_V ~has_U ~has_to ~have_$ ~hers_K
~i_K ~i_got ~i_take ~in_K ~in_at ~is_after ~is_me ~is_she ~is_there ~it_go ~n_. ~n_about ~n_i
~off_to ~ok_at ~ok_to ~put_the ~so_V ~so_n ~so_no ~some_U ~still_K ~take_n ~taken_it ~tell_when
~that_should ~theirs_at ~there_will ~till_n ~to_that ~us_do ~w_K ~was_$ ~was_U ~we_O ~we_like
~what_does ~when_d ~with_the ~would_be ~would_go
11 <n:100> =add-hands:some =ask-amount:most =ask-shopping:S1 =ask-shopping:frame =ask-temperature:most
=deny:most =drop-dish:most =help:frame =help:most =report-guests:all =report-guests:phrase
=report-setup =set-guests:to-roast =set-method:phrase =set-method:some =start-over:frame air
alert backs bailed beans bones bought cable cooks counter crust daughter dinner early eta fallen
fed final friend garlic heads joint latest leftovers loin longer looks low miles minutes napkins
neither nip overnight parcel peek pounds push ran reach remind reminders rung salted salting
seasoned substitute switched throw touching under using winning won wrote ~,_he ~,_yes ~K_does
~K_have ~O_all ~O_the ~U_but ~U_it ~U_went ~V_about ~V_more ~V_say ~V_till ~^_never ~^_t ~am_K
~and_c ~are_up ~be_my ~been_n ~c_and ~can_V ~can_we ~done_here ~for_y ~get_here ~going_in ~got_V
~have_a ~i_say ~it_said ~it_still ~it_the ~me_and ~more_$ ~n_by ~not_be ~not_in ~of_d ~of_those
~off_and ~off_n ~on_me ~on_then ~out_already ~over_it ~says_U ~should_be ~so_$ ~still_n ~t_now
~t_on ~them_K ~they_said ~to_t ~was_out ~what_are ~why_not ~would_U ~you_tell
12 #frame:few =add-dish:few =add-dish:frame =ask-guests:all =ask-guests:most =ask-next:all
=ask-options:S1 =ask-safety:phrase =cancel-timer:some =choose:frame =cook-away:all =describe-roast:to-roast
=drop-dish:frame =help:S0 =note-guest:to-guests =quiet:few =report-done:S1 =report-guests =report-guests:S0
=set-guests:phrase =set-units:S2 =set-units:frame =skip-step after anyway beeped bumped catch
completed correct degrees grandma least light listening mark mhm mistake much nephew old pale
plates postpone proper repeat replace same sear squash suggest thermometer tick timeline timers
topped uncle wake wise ~._. ~K_d ~K_first ~K_here ~P_are ~P_says ~S_V ~S_on ~U_down ~U_that
~V_by ~V_here ~V_hers ~V_if ~V_so ~V_when ~^_c ~^_down ~^_me ~^_now ~^_should ~^_y ~after_i
~all_U ~and_U ~are_already ~are_still ~be_d ~be_in ~by_c ~c_it ~c_not ~can_U ~down_at ~down_d
~first_$ ~first_then ~get_V ~get_to ~go_for ~going_to ~have_taken ~if_you ~is_off ~is_y ~it_S
~like_a ~me_K ~no_, ~of_K ~ok_P ~on_d ~out_now ~should_it ~so_they ~still_$ ~t_V ~w_V ~we_at
~when_do ~why_K ~will_not ~with_my ~you_be ~you_got
13 <t:25> =add-hands:frame =ask-safety:all =ask-status:most =cancel-timer:phrase =deny:all
=drop-dish:all =report-guests:most =report-started:to-reading =running-behind:S2 =running-behind:most
=set-doneness:S2 =set-timer:some adults aim altogether batter begun bloody cabbage cast continue
delay display fix holding including label lowest make mind misread nowhere oiled onto outside
pepper picked poke popping properly puddings real risen setting shellfish steady strike string
tenderloin toddlers topside twine veggie warm wrapped ya ~,_but ~,_got ~,_too ~P_get ~P_put
~U_have ~U_how ~V_a ~V_still ~^_at ~^_get ~^_had ~^_says ~^_still ~after_$ ~all_over ~already_K
~and_on ~another_d ~are_a ~are_down ~at_me ~but_not ~c_at ~c_i ~c_me ~d_after ~down_a ~down_c
~for_now ~go_with ~gone_and ~got_that ~has_n ~have_U ~how_K ~i_S ~is_her ~it_has ~me_$ ~me_some
~me_to ~my_in ~n_but ~n_in ~n_this ~n_with ~not_a ~out_the ~said_$ ~say_it ~says_w ~shall_be
~taken_the ~they_will ~to_c ~we_take ~you_K
14 =ask-amount:S0 =ask-guests:S0 =ask-plan:most =ask-safety:some =ask-substitute:frame =ask-temperature:frame
=ask-time-left:some =choose:to-choice =correct:frame =help:all =report-guests:S1 =report-not-done:to-step
=report-setup:frame =report-trouble:S1 =report-trouble:all =set-guests:few =skip-step:all =watch:most
beeping begin boil brought chance dial edge everybody extra faff forgot fridge head hit lifted
lowered made nut overdone pardon peeled phone plus prime silence slicing sorted thank things
trick trimming works ~._and ~K_i ~K_off ~K_they ~O_but ~P_U ~V_after ~^_, ~^_have ~a_n ~after_all
~all_going ~already_n ~are_S ~at_$ ~c_d ~d_is ~do_we ~down_yet ~for_to ~go_$ ~got_to ~has_V
~have_no ~how_does ~it_down ~it_went ~me_how ~n_we ~no_no ~ok_V ~on_let ~one_is ~out_to ~so_i
~that_c ~that_on ~to_S ~to_take ~took_it ~us_now ~we_shall ~what_$ ~yes_$ ~yes_it
15 =ask-options:phrase =ask-status:S1 =choose:all =deny:to-choice =describe-roast:S3 =pause:some
=report-not-done:all =undo:phrase =watch:S1 along also baste bottom clean cooker cope counting
dog duty eat eye family fast flu fresh horses inside intolerant jar keep lactose laws looking
makes menu mo passed rather reason removed scrubbed sec sink thyme trussed very wait wife wine
wrong ~,_it ~._K ~K_already ~K_can ~O_t ~V_c ~V_one ~^_gone ~all_that ~been_U ~but_i ~does_V
~does_not ~done_$ ~for_this ~from_V ~gone_to ~had_a ~he_U ~in_there ~in_this ~is_my ~me_V ~no_$
~no_V ~no_more ~no_n ~not_done ~on_yet ~says_t ~t_U ~then_a ~to_me ~up_and ~w_with ~we_still
~were_V ~who_does
16 <t:80> =add-hands:S2 =ask-plan:S1 =ask-plan:some =ask-status:phrase =note-guest:some =report-done:to-step
=report-guests:frame =report-trouble:some =set-guests:most afresh aiming b board change changed
chopping dropping frail frenching god hovering ill kip looked mustard peeling prepone reckon
simmering stands stuck tying washed ~,_so ~K_if ~O_d ~S_out ~S_the ~V_them ~^_all ~^_for ~^_got
~^_in ~c_. ~d_for ~for_P ~got_here ~got_the ~in_yet ~is_c ~it_U ~n_d ~not_i ~now_t ~ok_i ~there_V
~us_go ~w_not ~we_go ~we_on ~what_i ~yes_do
17 =ask-next:S2 =lack:all =quiet:phrase =report-setup:S2 =report-setup:few =skip-step:S1 allergy
dark explain ignore invited mixer rosemary schedule seared shows shut slid stock tap tied truss
while whipped yorkshires ~,_thanks ~K_am ~K_this ~P_at ~U_of ~^_us ~a_c ~and_no ~at_all ~be_at
~do_$ ~is_already ~it_for ~it_to ~me_a ~me_in ~n_now ~out_yet ~over_the ~put_a ~they_c ~you_what
18 <t:12> =deny:to-step =skip-step:frame brown eyes kids needle nipping pause places right
target tented thin wee zero ~K_S ~P_can ~V_! ~^_done ~^_off ~^_to ~am_U ~am_out ~and_n ~have_O
~in_all ~me_U ~n_so ~not_yet ~on_for ~that_was ~to_say
19 =repeat:few =undo:some bin boned checked chemo man pregnant searing soon spot stove tenderised
tie ~K_but ~K_yet ~U_with ~V_no ~c_now ~have_i ~her_out ~me_d ~me_what ~no_it ~no_thanks ~on_it
~say_V ~where_we ~yes_go
20 =ask-temperature:S1 =correct:all carved house ~are_n ~is_w ~like_it ~no_do ~was_not
21 =report-not-done:to-confirmation ~U_d ~d_too ~do_that ~us_n
22 =affirm:most =pause:phrase having
23 =ask-why:few =resume:all =start-over:S0 law texted
24 =resume:most ~V_go
25 boyfriend ~will_take ~yes_that`;

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
  `a about above absolutely acting actual add adding adults afraid afresh after afternoon again
ago ahead ahmed aid aim aiming air alarm alert alex alight all allergic allergies allergy almost
alone along alongside already also alternative alternatives altogether always am amazing american
amount amy an anchovies and announcements announcing another any anybody anymore anyone anything
anyway anywhere apricots are arm around arrive arrived as ask asks assisted at ate aunt auntie
ava away b baby babysitter back backofen backs bad badly bailed bairns bake bang banjaxed bare
baste basting bath batter battery be bean beans bear beast beautiful beautifully beauty because
become bedlam beef been beep beeped beeping before begin beginning begun behaving behind belay
believe belly ben best bet between bhaiya big billowing bin bit bits black blackout blade blank
blast bleeding bleeds blistering block blood bloody blown blue bluetooth board bob boil boiling
bone boned boneless bones boots bored boss both bother bothered bottle bottom bought bout boxed
boy boyfriend boys braised brb bread breath breathe bridie bring bringing broke broken brother
brought brown browned brush brussels btw bubbling built bump bumped bums bung bunged burned
burning burns burnt but butcher butter buttered butterflied buttering butternut buy buzz by
c cabbage cable cake call called came can cancel canceled cancelled cap car caramelised care
careful carked carrots carry carrying carryover carve carved carving cast cat catch catched
caught celiac celsius center centre chance change changed charge chasing chatter cheap check
checked checking chef chemo chest chewy children chilling chimney chip choice choices choking
choose chopped chopping chris christmas chronic chuck chucked church ciggies circulation clean
clear cleared clever climbed climbing clock clogs closed cloves coats cocked coeliac cold colder
collapsed collect come comes coming commands completed completely conked connected continue
control convection conventional cook cooked cooker cooking cooks cool cooler cooling cope core
correct correction could count countdown counter counting course cousin cousins cover covered
crack cracking craic cranked cranking cranky crap crawled cream creamed creeping cremated creme
crept crimbo crisp crispy cross crowd crumble crunchy crust crying cube cut cutted da dad daft
dairy dan dangerous dans dare dark darling daughter dauphinoise dave day dead dear deep deepest
degrees delay delayed delete demanded dentist detector diabetes dial dialled did died dietary
digging dijon dine diner ding dining dinner dinnertime dish display do does dog doing done
door doorbell down drained dressed dried drink drinks dripping drop dropped dropping drowning
drunk dry dusted duty e each earlier earliest early eat eating eats edge edges eggs either
electric electricity ellie else embarrassing enamel end english enough epipen essen eta even
evening events every everybody everyone everything everywhere excuse expecting explain extra
eye eyes f face faff faffed faffing fahrenheit fainted fall fallen family fan fancy far fast
fat father fatima fed feed feeding fell fever few fewer fierce fighting fill fillet final find
fine finger fingers finish finished fire first fix flame flames flat flicked flight flip floor
flour flu foil folks food football for forerib forget forgot forgotten forks forward found
fraiche frail free freeze freezer french frenched frenching fresh fridge friend friends from
front frozen full fun fuse fussy fyi gabbing game gander gang garden garlic gary gas gave gents
get gets getting ghee girl girlfriend give gives giving glass glasses glazed glazing glove
gluten go gob god goes going golden gone good goodness got grabbed grace grain grams gran grand
grandad granddaughters grandma grandpa grandparents grandpas granny grated gratin gratins grattan
gravy grease great greek green grey grid groceries growing guest guests had hair halal half
halfway hall halved hand handle hands hang hanging hannah happen happening happens hard has
hassle hats hauled have having he head headcount heading heads hear heard heat heathens heating
held hello help helped helper helping helps hendersons her herb herbs here hers herself hey
hi high him himself his hit hits hitting hives hob hold holding holler hon honestly hood hoover
hopping horseradish horses hot hotter hour house hovering how huh hungry husband hush i ice
idea ideas idiot if ignore ill immune immunity imperial imran in including incredible ines
inform ingredients inserted inside instant instant-read instead instruction instructions internal
into intolerant invitation invite invited iron is it itself jaccarded jar jean jess jesus ji
jim jo job joe joining joint jonah joneses jump jumped jumping jus kate keep keeping kept kern
kernel kev kevin kiddies kids kill killed kilo kilos kindly kip kitchen knife knock knocked
knots know la label lack lactose lad ladies lads lagging laid lamb lammkeule landed laps lard
last late later latest law laws lay laying least leave leave-in leaves leaving left leftovers
leg lent leo less let letting licked lid lie lies life lifted light lights like likes lily
lips lisa list listen listening lit little loin long longer longs look looked looking looks
loose loosely lose losing lost lot love lovely low lower lowered lowest luck lucy lumpy lunch
lying läuft made main mains make makes making man manage mandoline many marcus margarine marge
maria mark marks mash mashed mass match mate mates matter maybe me meal mean meaning meant
meantime meanwhile measuring meat mechanically medium mei melt members menu message messages
metric mhm middle might miles milk mind mine mint minutes miracle misheard misread miss missed
missing missus mistake mister mitt mixed mixer mo mom moment mommy moms money monkeys month
months mooing mopping more mother motorway mouths move moves much muffin mum murder must mustard
mute mutton my myself na nagging name nan nap napkins near nearly necks need needle needs negative
neighbors neighbour neighbours neither nephew nervous netted never new news next nice niece
night nip nipped nipping no nobody none nor not notch nothing notify now nowhere nudge numb
number numbers nut nuts obviously odd of ofen off offered oh oil oiled ok old olive omar on
once one ones onions onto open opened option options or order other others otherwise ought
ounces our ours out outside oven over overcooked overdone overnight overshot overview overwhelmed
ow own package packed pains pair palaver pale palm palms pan panicked parcel pardon parents
parking parsley parsnips part party pass passed passes past pause paws peaked peas peek peel
peeled peeling pending people peoples pepper peppered per person persons pet petal pete phew
phone pick picked picking piece pills ping pinged pink pipe place placed places plan planned
planning plans plate plated plates platter play plenty plot plus pm point pointing poke poked
popped popping pork portions possible postpone pot potato potatoes pounds poured pouring power
practically prefer pregnant preheated preheating prep preparation prepared prepone present
press pressed prime priya probe problem processor proper properly puddings puffed pull pulled
pulling pumpkin push put putting quantity quick quiet quite rack rail raised ran rang range
rare rarer rather raw ray reach reached reaches reaching reaction read reading readings reads
ready real reason reckon reckons red reduced reed refreeze refrigerated regular remaining remind
reminders remove removed repeat replace rescue reset rest rested resting rests resume reverse
rib ribeye ribs rid right ring ringing rise risen rising road roar roaring roast roasted roaster
roasting rob rock roles rolled rolls room root roots roped rose rosemary rosé round rubbed
rubbish ruin ruined run rundown rung running runs sack sad safe safely sage said salad salsa
salt salted salting salty salvage sam same sanjay sat sauce sauna saving say saying says scalded
scalding scalloped schedule school scrap scraped scratch screaming scrubbed sear seared searing
seasoned seated seats seawater sec second see seems separator serve served serving sesame set
setting settle shall shape sharp she shed sheet shelf shell shellfish shift shit shop shopping
shops short should shout shouting shove shoved show shower showing shown shows shredded shush
shut sick side sides silence silverside silverskin simmering since sink sinking siobhan sir
sirloin sister sit sitting situation sizzling skillet skip skipped skipping slate sleeve slice
sliced slices slicing slid slimy slipped slow slower slowly small smashing smeared smelling
smoke smokes smoking so sock softening sold solid some somebody somehow someone something somewhere
son soon sooner sorry sort sorted soufflé sound sounds soup sour sous spare speak speaking
speed spinach splashed split spot spots sprouts squash squeaky squeamish stabbed stage stand
standing stands start started starting starving state station status stay staying stays steady
steak steeping step stepping steps steve stick sticker still stir stirring stock stone stop
store story stove straight strained strays streaming street strike string strip strung stuck
stuff stuffed substitute such sugar suggest suggestions suit sulk sunk supermarket supper supposed
sure swap swears swelling swells swimming switch switched swore system table tablets tail tailed
take taken taking talk talking tap target tariq tea tearing telephoned tell telling telly temperature
temple tenderised tenderloin tent tented test texted than thank thanks that the their theirs
them themselves then theo there thermometer they thick thickened thickest thin thing things
think thinking third this those though thought throat through throw thumb thyme tick ticked
ticks tie tied til tiles till time timeline timer timers timing tin tinkle tins tiny to today
toddler toddlers told tom tongs tonight too took top topped topping tops topside total totally
touch touched touches touching tough towel track traffic train transplant tray trick trim trimmed
trimming tripped trouble truss trussed trussing trust turn turned turning turns twas twice
twine twins tying type typo tyre ugh un uncle uncovered under undercooked understand undo undue
unpause up update upstairs us use used using usual vegan vegetable vegetables vegetarian vegetarians
veggie verde very vinegar volunteered wait waiting wake walk walkabout walked walking want
wanted wanting wants warm warmed warmer warming warn warning was wash washed washing watch
watching water way ways we weak wean wee weighed weighs weight weights weird weirdo well wendy
went were whacked what when whenever where wherefore which while whipped whisht whisk whisked
white who whole whopper why wife wiggled will wilsons wilted wind wine winning wipe wire wired
wireless wise wish with without woke woman won word work working works worried worth would
wrapped wreck wrecked wresting wrestle wrist wrong wrote ya yapping ye year yell yes yet yoghurt
yogurt yoke yorkshire yorkshires yorkshre you your yusuf zero zip`.split(/\s+/),
);
