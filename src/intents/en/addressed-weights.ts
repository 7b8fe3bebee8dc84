/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-24 =acknowledge
-23 dishwasher ~on_U ~some_more
-22 =acknowledge:S0 fair pass
-21 =emergency:S0
-20 <y> =courtesy =courtesy:phrase =emergency:frame =report-trouble:few ~n_all
-19 #words0 =acknowledge:phrase ?talk7 restaurant ~,_a ~^_$ ~is_for ~more_O ~were_n ~with_U
-18 hide level loo ~K_never ~O_we ~any_O ~at_K ~get_down ~n_then ~n_was ~not_that ~out_in
-17 apparently linda park roll wedding ~?_is ~O_had ~and_still ~let_it ~there_yet ~was_i
-16 #O3 =acknowledge:all =acknowledge:frame door draw fourth loads music pages phoenix tooth
~O_says ~for_you ~get_your ~like_mine ~said_no ~says_$ ~says_d ~was_S ~you_get ~you_n
-15 #heard0 <n:200> =report-reading:S2 ?talk8 across argument asked bathroom chef him hole
mine morning pizza question small smoking sun talks yourselves ~,_in ~,_you ~K_P ~K_y ~V_y
~^_her ~have_another ~it_done ~my_S ~n_over ~n_w ~not_it ~that_O ~to_him ~who_V ~you_do ~you_have
~your_K
-14 =courtesy:S1 =set-serving-time:S1 =set-timer:S2 ?talk4 ?talk5 ?talk6 booked breaking caravan
cup due gorgeous hot ladder may owe remember roof sends sit starter yours ~,_here ~,_put ~,_say
~,_their ~O_O ~U_S ~but_she ~c_y ~goes_, ~hers_at ~i_$ ~in_U ~n_P ~no_i ~not_you ~says_here
~that_will ~there_were ~those_K ~was_w ~yes_, ~you_$ ~you_on ~your_V
-13 =cancel-timer:frame =choose:few =courtesy:some =emergency:all =report-done:to-choice =report-trouble:S2
?heard0 ?heard0:phrase barbecue beat bed episode excuse feeling film folks hello lows meeting
mouth neighbour pudding sausage school shade turkey wonder years your ~,_can ~,_his ~?_U ~O_!
~U_there ~U_to ~^_shall ~^_your ~could_be ~do_my ~does_O ~done_yet ~it_took ~may_$ ~my_O ~n_U
~or_not ~say_K ~shall_we ~she_was ~that_U ~they_O ~they_V ~will_U ~you_like ~you_should
-12 <n:40> =deny:some bus coats did duck garden goals goose hair he home hungry judges lift
maths number paid pressure pumpkin served shoe spain sugar surgeon touch ~,_let ~,_says ~,_your
~?_it ~O_are ~O_out ~O_so ~P_this ~U_P ~V_she ~c_of ~did_you ~going_off ~i_P ~n_n ~n_or ~on_,
~put_me ~said_the ~she_did ~tell_P ~to_us ~up_in ~was_d ~were_d ~where_did ~would_you ~y_$
~y_we ~your_S
-11 #expecting:false:few =acknowledge:S3 =deny:S1 =emergency:few =report-not-done:few =report-reading:to-reading
=set-doneness:S1 =start-over:S1 allergic believe birth carvery channel cheese drawer every
funny left lovely never nothing oh remove sofa starts swears these threw wall window you yourself
~,_no ~,_with ~?_can ~K_me ~K_say ~O_have ~O_they ~U_was ~^_so ~all_done ~and_got ~and_he ~and_in
~been_K ~do_if ~does_a ~down_now ~got_U ~her_K ~how_did ~i_like ~is_his ~it_a ~like_$ ~mine_out
~not_go ~off_V ~ok_K ~ok_U ~on_your ~there_$ ~was_a ~we_U ~were_at ~where_is ~why_is ~with_O
~you_i
-10 #frame:S3 <t:200> =acknowledge:S1 =acknowledge:most =ask-guests:S1 =ask-status:frame =cancel-timer:some
=choose:S2 =quiet:S2 =set-serving-time:S2 answer baker broken cats choir cuts each fancy grandad
highs kick lisbon million nana page pat poor road scored season shuts sister suitcase wanted
week white worth year yesterday ~,_and ~,_is ~,_said ~,_y ~K_a ~K_you ~O_$ ~O_K ~O_has ~O_on
~O_say ~P_got ~V_first ~all_in ~are_d ~as_i ~at_V ~be_a ~c_if ~done_and ~for_y ~get_there ~going_,
~had_K ~he_O ~he_has ~he_put ~in_that ~in_these ~is_down ~it_by ~it_c ~it_goes ~it_on ~me_now
~me_up ~mine_V ~n_can ~n_to ~on_P ~one_, ~other_$ ~over_that ~put_that ~she_V ~she_took ~should_get
~still_on ~take_a ~thanks_$ ~that_it ~the_S ~then_the ~then_you ~these_K ~they_put ~to_w ~up_,
~why_do ~yours_is
-9 ! =affirm:some =ask-amount:S1 =ask-temperature:S1 =emergency:some =quiet:frame =report-trouble:S3
?heard0:frame ate baby better boiling boss carve chairs course cut dad darling day died dusted
ends essay fill handle her high homework horse lid look lounge meter online other parking queue
quid quiet recipe reduced rice roundabout sent shift sirloin song stir taking theirs through
times towel towels used weigh ~,_have ~,_never ~O_got ~P_$ ~P_K ~S_. ~U_in ~U_is ~V_you ~^_and
~^_who ~am_still ~and_i ~are_this ~at_U ~been_c ~before_V ~c_but ~c_the ~do_for ~does_your
~done_, ~for_that ~have_done ~her_P ~i_will ~if_she ~if_the ~is_your ~it_already ~me_on ~n_when
~not_like ~one_has ~our_O ~put_your ~says_take ~she_said ~so_how ~the_O ~the_one ~there_any
~till_c ~too_K ~what_would ~yes_i ~you_will ~your_go ~yours_$
-8 #expecting:true:most =acknowledge:few =ask-next:S3 =courtesy:few =set-guests:S1 =set-serving-time:few
boiler bye calls caught corkscrew crispy delicious divorce done even found front hand hours
lot loud melt mummy peas quite rotten salt says see swimming text there toast usual wash work
~,_t ~,_then ~K_was ~O_at ~O_it ~O_said ~P_and ~P_c ~P_i ~U_! ~U_after ~U_will ~V_are ~V_or
~^_he ~^_out ~^_these ~^_they ~already_? ~an_K ~and_she ~and_some ~as_c ~at_it ~c_a ~c_that
~d_! ~go_and ~got_$ ~has_a ~him_$ ~him_off ~how_do ~i_get ~if_that ~in_O ~in_n ~in_since ~is_it
~is_this ~is_yours ~me_, ~n_O ~not_for ~not_there ~on_his ~one_with ~or_the ~other_V ~out_!
~out_? ~out_V ~over_, ~put_in ~said_she ~say_to ~still_U ~them_$ ~then_, ~they_had ~to_a ~to_the
~was_at ~we_had ~when_$ ~yes_P ~you_, ~you_done ~you_would ~your_O
-7 #O1 #O2 #frame:S2 =choose:S1 =drop-dish:few =report-out:S2 =running-behind:S3 ?heard1:frame
again break coach cost cover flat heating hers lady leeds like lived manager next outside pick
prep raining she shot shoulder street takes taxi thanks they though thousand turn twice washing
were whole ~!_no ~,_go ~,_my ~,_who ~K_got ~K_my ~K_over ~O_to ~O_your ~P_says ~U_all ~U_now
~U_over ~U_y ~V_U ~V_does ~V_him ~V_off ~V_there ~V_was ~V_who ~^_second ~^_why ~am_n ~and_let
~are_these ~d_at ~did_$ ~does_the ~for_V ~for_c ~for_n ~from_O ~get_a ~get_it ~gone_O ~gone_in
~got_n ~have_K ~he_is ~her_$ ~her_U ~him_at ~his_O ~is_K ~it_! ~it_with ~n_for ~n_not ~n_would
~never_V ~not_at ~not_do ~off_O ~put_$ ~she_says ~she_would ~should_K ~take_it ~tell_her ~the_second
~these_U ~this_, ~till_O ~to_have ~too_U ~took_d ~us_at ~was_n ~we_V ~we_did ~we_went ~when_does
~when_i ~you_the
-6 <n:999> <t:550> =ask-amount:all =ask-how:some =ask-why:S1 =correct:most =emergency =lack:S2
=report-started:S1 =resume:some =set-guests:frame =set-guests:to-guests ?heard1 added alarm
aunty because big birthday blue burn burning butcher carol centre charge cousins doctor goes
hear hey instructions leaves lights lock many milk mooing news percent play prices puts read
row sake shopping sold those traffic was who ~,_did ~,_her ~,_that ~K_did ~K_into ~K_to ~K_were
~O_, ~O_y ~P_, ~S_$ ~S_O ~S_a ~S_it ~U_? ~^_the ~a_K ~are_all ~at_c ~be_there ~been_O ~c_U
~can_i ~could_not ~first_and ~go_, ~goes_on ~gone_up ~he_V ~here_, ~in_$ ~in_c ~is_c ~is_out
~is_t ~it_at ~it_out ~n_! ~n_already ~n_and ~n_c ~n_the ~now_on ~over_n ~over_there ~tell_the
~than_me ~than_the ~that_S ~they_were ~went_off ~would_K ~yours_now
-5 #P2 #words12 =ask-temperature:few =correct:some =set-timer:most belt bins boat box cleaning
college cousin days does drop dropped easter feet get hold iron letters machine mum name older
or packet party picking programme rest rewind ring seat second shoes spelling spoon stay still
tank too weekend yes ~,_, ~,_yours ~O_does ~O_is ~O_n ~O_will ~O_with ~P_let ~P_never ~S_before
~S_from ~S_of ~U_$ ~U_his ~U_so ~U_would ~V_O ~V_all ~V_done ~V_now ~V_up ~^_am ~^_his ~^_mine
~^_take ~^_too ~^_you ~a_O ~about_to ~and_a ~are_at ~are_there ~but_it ~c_on ~did_the ~do_V
~done_it ~first_V ~going_$ ~got_more ~has_got ~have_you ~here_is ~in_a ~in_d ~in_her ~is_so
~it_i ~me_P ~me_about ~mine_$ ~more_than ~my_first ~n_a ~n_till ~no_O ~on_V ~on_and ~other_one
~say_$ ~says_V ~should_V ~since_n ~then_it ~this_U ~w_, ~you_are ~you_take ~your_P
-4 #U2 #expecting:true:few #frame:S1 =affirm:few =ask-amount:S3 =ask-how:phrase =ask-next:few
=ask-substitute:S2 =ask-time-left:most =ask-why:most =cancel-timer:S1 =choose:most =drop-dish:some
=emergency:S3 =pause:most =report-not-done:phrase =report-oven:frame =report-reading:S1 =report-started:few
=resume:few =set-doneness:few =set-guests:some =shift-serving:all ?heard2:phrase ?heard4:frame
?talk3 ahead and another appointment card cent chair closed double e else grey half hall hook
hotel ice kettle marriage married over potato pull put room ruined score seen shakes side someone
standing tea third time update weather weighed weight yet zip ~,_O ~,_n ~,_to ~,_we ~,_when
~K_there ~K_your ~O_and ~O_down ~O_now ~O_off ~O_or ~P_S ~P_does ~S_U ~U_, ~U_. ~V_in ~V_my
~^_go ~^_our ~^_she ~^_this ~^_yes ~am_done ~at_a ~been_in ~c_to ~did_he ~do_you ~does_hers
~first_n ~for_U ~for_your ~gone_out ~have_this ~he_K ~he_say ~here_i ~his_U ~i_said ~in_S ~is_mine
~is_n ~is_the ~it_going ~me_when ~no_not ~not_$ ~now_you ~of_the ~or_K ~or_n ~out_and ~put_it
~so_we ~so_what ~take_V ~take_these ~tell_your ~the_P ~these_O ~they_K ~this_is ~up_V ~was_like
~we_were ~what_V ~when_the ~will_have ~with_K ~with_him ~with_that ~would_V ~you_U ~you_put
~yours_V
-3 #P1 #S2 #words7 <t:40> =ask-status:all =choose:frame =help:S1 =note-guest:S2 =note-guest:few
=repeat:frame =report-oven:few =set-doneness:phrase =set-guests:S2 =set-serving-time:frame
=shift-serving:S1 =undo:frame ?heard1:phrase alone awful bread capital church come cool dryer
for french going gone grill honestly husband imagine jim jumper kitchen late long loose lunch
marathon money moved needs pay point points power pulled reads remote ringing rough salty seville
shall sides sign soup spell stop today tumble units way weighs weird word ~!_$ ~!_V ~,_do ~K_U
~K_from ~O_by ~O_c ~O_was ~P_we ~S_, ~U_for ~U_i ~V_S ~V_at ~V_is ~V_this ~V_your ~^_first
~^_of ~^_one ~^_their ~^_we ~after_K ~after_that ~and_out ~and_then ~be_c ~d_and ~d_i ~did_i
~do_not ~from_there ~go_on ~had_n ~have_gone ~he_does ~he_said ~her_S ~here_and ~him_, ~in_?
~in_my ~in_your ~is_all ~is_going ~is_not ~is_that ~it_over ~like_V ~me_the ~mine_was ~n_more
~n_ok ~no_P ~of_V ~on_? ~out_K ~second_O ~second_V ~she_has ~so_c ~so_it ~some_O ~take_your
~that_V ~that_one ~the_U ~the_other ~there_, ~they_took ~too_V ~took_a ~us_c ~with_your ~would_O
~yes_we
-2 #U3 #frame:all #frame:most #heard3 #phrase:few <n:12> <t:100> <w> =ask-how:S1 =ask-shopping:frame
=ask-status:S0 =cancel-timer =describe-roast:S0 =drop-dish:S0 =lack:some =report-reading:S3
=resume:S0 =set-doneness:most =set-doneness:to-doneness =set-timer:frame =start-over:phrase
?heard2 anything basting bless book but cake check christmas club coast coat coming cooking
eats everywhere fryer hi his in knee last nearly old our pan peru plus preheated price sam
sat sauce save shirt shut somebody sure takeaway temperature that them to understand undo up
why woman ~,_not ~,_she ~,_still ~,_the ~K_c ~K_too ~O_from ~P_have ~S_? ~U_her ~U_out ~U_the
~U_yet ~V_K ~V_V ~V_for ~V_i ~V_us ~V_we ~V_went ~^_O ~^_no ~about_it ~and_tell ~and_we ~before_n
~by_the ~c_in ~can_you ~d_, ~d_S ~d_V ~d_to ~did_ours ~do_it ~for_my ~go_V ~got_d ~have_the
~he_can ~he_was ~his_P ~his_S ~how_you ~i_can ~i_could ~is_about ~is_d ~is_was ~it_n ~let_me
~me_n ~n_? ~now_? ~of_a ~of_them ~of_you ~of_your ~off_, ~on_in ~one_more ~over_to ~second_$
~she_U ~so_P ~that_is ~their_O ~to_n ~w_$ ~was_K ~we_should ~what_K ~who_was ~you_say
2 #S1 #U0 #expecting:false:some #frame:some #phrase:S1 <t:150> =ask-guests:some =ask-how =ask-next:frame
=ask-shopping:S0 =ask-shopping:all =ask-temperature:most =ask-temperature:phrase =ask-why:all
=ask-why:frame =cook-away:frame =correct =drop-dish =emergency:phrase =note-guest:S0 =quiet:all
=repeat:all =report-done =report-done:S2 =report-done:frame =report-guests:S2 =report-not-done:most
=report-out:S1 =report-out:few =report-started:all =report-started:some =start-over =undo:most
anyone anywhere bottle burnt can core creamed crisp delayed drink eating fewer fingers finish
food football glazed glove go have how jess match meal mean move not now off ought pair past
pork rack roast rolled root run sheet sick sing skip starving stays ticking turns vinegar warning
ways when will ~,_done ~,_ok ~,_w ~K_O ~K_all ~K_by ~K_must ~K_shall ~K_went ~K_would ~O_S
~O_in ~O_of ~P_V ~P_she ~S_does ~V_another ~V_be ~V_do ~V_that ~V_these ~V_w ~^_V ~^_i ~^_if
~^_let ~^_like ~after_V ~after_d ~an_U ~any_more ~are_after ~at_n ~be_K ~be_V ~be_for ~be_the
~c_, ~c_and ~c_down ~c_is ~d_can ~do_? ~do_i ~down_$ ~down_V ~down_the ~down_with ~from_$ ~from_U
~from_here ~get_in ~go_O ~have_been ~have_put ~her_O ~here_the ~here_to ~i_did ~i_have ~in_here
~in_with ~is_at ~it_or ~like_K ~me_that ~n_tell ~of_O ~of_w ~ok_? ~on_this ~one_$ ~one_you
~put_them ~said_V ~said_that ~second_U ~second_n ~since_U ~so_put ~still_got ~still_in ~t_$
~t_K ~that_K ~the_first ~then_U ~they_are ~they_have ~too_. ~us_. ~we_are ~went_out ~what_P
~what_a ~when_should ~who_is ~with_this ~would_like ~would_not ~yet_$
3 #K1 #K2 #O0 #frame:S0 #words4 =ask-how:most =ask-next:S2 =ask-options:S0 =ask-safety:S1 =ask-status
=ask-substitute:all =ask-substitute:phrase =ask-temperature =ask-time-left =ask-why =ask-why:phrase
=choose:phrase =deny:phrase =describe-roast =describe-roast:all =lack:few =lack:frame =note-guest:most
=note-guest:phrase =repeat:most =report-done:S1 =report-done:few =report-done:phrase =report-guests:S1
=report-out:some =report-reading:phrase =resume =running-behind:all =set-guests =set-serving-time
=set-timer:all =shift-serving ?heard2:frame ?heard4 adding afraid afternoon already altogether
am an bake beautifully black braised broke cat cold cooks creme crunchy down dried fraiche
getting good grain happening heard held lard lay leave lit little main mashed mass meat middle
missus more netted onto open parcel popped preheating processor rested roads running runs shed
shower size start staying strip timer tonight trust weights what whether wire worse ~,_K ~,_now
~,_or ~K_$ ~K_after ~K_for ~K_is ~K_of ~K_we ~K_when ~O_up ~P_in ~S_V ~S_can ~S_down ~S_says
~U_my ~U_took ~V_an ~V_and ~V_can ~V_from ~V_me ~V_too ~^_S ~^_d ~^_how ~^_there ~^_w ~^_when
~after_the ~all_at ~are_my ~are_the ~be_? ~before_. ~can_K ~can_it ~does_it ~from_the ~g_$
~get_from ~had_no ~has_gone ~have_c ~have_n ~have_not ~here_V ~here_on ~how_would ~i_am ~i_still
~is_a ~is_ok ~it_K ~it_take ~like_, ~me_i ~more_K ~my_K ~n_from ~n_go ~no_K ~no_V ~now_it ~of_n
~off_K ~on_at ~out_at ~out_d ~say_when ~second_K ~should_the ~so_K ~still_O ~still_V ~tell_you
~this_$ ~those_U ~to_? ~to_K ~to_O ~to_V ~up_to ~us_in ~us_not ~w_n ~w_of ~was_O ~was_on ~we_get
~what_could ~which_K ~will_the ~with_V ~would_U ~yet_,
4 #heard1 <d> =add-dish:S1 =ask-how:S0 =ask-next:some =ask-options:all =ask-safety:few =ask-time-left:S0
=ask-time-left:all =ask-time-left:frame =ask-time-left:phrase =cook-away =cook-away:all =cook-away:some
=correct:S0 =describe-roast:S2 =describe-roast:few =describe-roast:phrase =describe-roast:some
=help:all =lack:S1 =note-guest =repeat =repeat:S1 =report-done:S0 =report-out:most =report-oven:S2
=report-oven:most =report-reading:all =report-setup:some =report-started =running-behind =running-behind:frame
=set-doneness:some =set-serving-time:some =set-timer:S0 ?heard5 ?heard6 ?heard7:frame bad before
beginning best burned button buy by c chucked consider count cranked dear driving few flour
forget from grab green hands has ideas ji keeping knocked mad margarine matter messages nobody
otherwise parsley plan plenty potatoes present ready red roar safe shops shove showed slow
smoke snow some stand tent tiles total town train warn went ~,_all ~._O ~._w ~K_V ~K_it ~K_no
~K_out ~O_after ~O_another ~O_can ~P_it ~S_at ~S_me ~S_ok ~U_should ~V_P ~V_as ~V_till ~V_to
~V_yet ~^_P ~^_after ~^_can ~^_was ~ago_, ~am_U ~am_off ~and_it ~are_O ~are_on ~as_the ~be_$
~been_out ~before_we ~by_n ~by_now ~c_then ~c_with ~could_K ~d_on ~do_K ~do_the ~for_d ~from_K
~go_from ~gone_$ ~got_me ~got_my ~have_U ~hers_K ~i_O ~i_U ~i_V ~i_be ~i_must ~i_tell ~i_took
~in_, ~in_at ~in_now ~in_the ~is_P ~is_in ~is_put ~is_since ~it_? ~it_U ~it_V ~it_and ~it_be
~it_d ~it_first ~it_ok ~it_so ~n_V ~never_got ~not_out ~now_, ~now_at ~ok_to ~on_K ~or_what
~out_$ ~out_already ~over_a ~says_it ~some_U ~still_ok ~than_K ~that_, ~their_K ~to_g ~too_$
~too_c ~took_out ~was_c ~was_that ~was_the ~we_$ ~we_K ~we_put ~we_up ~went_V ~what_is ~when_it
~when_we ~when_will ~where_are ~will_it ~yet_V ~you_c
5 #K3 #expecting:false:most <g> <n:25> <n:80> =add-dish:all =add-dish:most =add-dish:some =ask-next
=ask-shopping =ask-status:most =ask-status:some =ask-substitute =ask-substitute:few =ask-substitute:some
=ask-temperature:frame =ask-time-left:few =cancel-timer:all =choose:S0 =choose:some =emergency:S1
=note-guest:some =pause:S0 =pause:S1 =quiet =report-done:all =report-out =report-oven =report-reading:some
=running-behind:phrase =set-doneness:S0 =set-serving-time:most =set-timer:phrase =set-units:S0
=shift-serving:S0 =shift-serving:phrase =skip-step:most =watch:S0 ? ?heard3:frame ?heard8:frame
?talk2 any anyway arrived be bluetooth boy bring called center chopped conventional cook correction
crack cracking error expecting fell forever golden granny had herself holler instant-read job
kept leaving lend lie list manage maria medium metric miles motorway night odd options ours
oven overshot packed piece pressed regular roasting roughly round rung sack saying scrap shelf
since slipped solid sous step straight table tablets thing tractor type typo where yorkshire
~,_. ~,_P ~,_get ~,_i ~,_on ~,_should ~K_are ~K_be ~K_has ~K_his ~K_n ~P_he ~S_K ~S_c ~U_this
~V_, ~V_any ~V_before ~V_by ~V_down ~V_her ~V_it ~V_t ~V_the ~^_as ~^_but ~^_ok ~about_$ ~after_this
~after_we ~ago_$ ~am_a ~and_P ~and_put ~any_other ~at_that ~been_n ~been_on ~c_we ~can_my ~could_i
~could_we ~do_O ~do_about ~done_the ~down_. ~for_$ ~for_K ~for_S ~get_n ~going_for ~gone_c
~gone_d ~gone_for ~got_a ~had_the ~have_S ~i_let ~i_should ~i_would ~is_, ~is_S ~is_V ~is_now
~is_on ~is_still ~is_to ~it_still ~it_till ~it_yet ~like_U ~me_out ~my_P ~n_$ ~n_S ~n_of ~n_off
~now_. ~now_K ~now_S ~now_U ~of_her ~of_that ~on_. ~our_S ~over_$ ~second_it ~should_do ~so_O
~so_why ~still_at ~t_. ~that_ok ~the_K ~took_her ~up_at ~us_V ~w_c ~was_in ~we_said ~what_do
~what_have ~what_should ~who_has ~why_V ~why_so ~would_i ~yes_V ~your_U
6 #expecting:false:all #phrase:S0 #phrase:S2 #words3 <n:150> =add-hands:S0 =add-hands:all =ask-how:all
=ask-options =ask-plan:S0 =ask-status:few =ask-substitute:S0 =ask-substitute:most =ask-temperature:all
=cook-away:S0 =deny:S0 =lack:S0 =note-guest:all =quiet:few =report-done:some =report-oven:S0
=report-reading:S0 =report-started:S2 =report-trouble =set-method:all =set-serving-time:phrase
=shift-serving:S2 =shift-serving:most =skip-step:phrase =undo =undo:all =watch:frame ?heard5:phrase
?heard7 about alongside babysitter battery beer bill bringing bubbling careful choose cloves
code could cream cross crying dauphinoise dine empty feed fierce flicked floor freeze frenched
glasses gran grandpa hard horseradish inform kevin kindly knife lifted listening lost mate
message month mouths must ok ones parsnips pipe possibilities probe problem quantity range
rare ray reminders removed required reverse sage should sounds suggestions switch team tom
took touches trussing twine upstairs use vegetable walk warming yell ~,_gone ~,_it ~,_second
~,_would ~K_and ~K_goes ~K_here ~K_like ~K_should ~K_up ~O_then ~O_you ~P_has ~P_put ~P_so
~U_at ~U_by ~U_does ~U_if ~U_what ~U_where ~V_. ~V_d ~V_not ~V_on ~V_said ~V_what ~^_n ~^_on
~^_with ~a_w ~about_V ~about_the ~am_d ~are_done ~be_an ~been_U ~been_V ~but_the ~by_O ~by_d
~c_? ~c_V ~c_have ~can_do ~can_not ~could_do ~d_ago ~d_are ~d_from ~do_a ~do_c ~got_K ~got_any
~he_got ~her_V ~here_$ ~how_V ~i_K ~if_you ~it_has ~like_a ~mine_is ~more_, ~more_V ~my_c ~n_K
~not_V ~not_be ~of_us ~on_my ~on_till ~our_K ~out_before ~out_it ~put_d ~says_U ~some_of ~take_K
~tell_me ~than_V ~that_d ~the_go ~their_V ~them_V ~them_down ~till_it ~till_n ~till_we ~up_i
~up_the ~us_a ~w_O ~w_V ~we_do ~went_on ~went_up ~were_V ~what_are ~where_i ~why_am ~why_are
~will_that ~with_a ~you_can
7 #phrase:most <n:100> <t:12> =add-dish:frame =add-hands:most =affirm:S1 =affirm:to-confirmation
=ask-next:all =ask-next:most =ask-next:phrase =ask-safety:phrase =ask-shopping:some =ask-substitute:S1
=ask-why:S0 =deny:to-confirmation =have:most =help =help:S0 =help:few =help:some =lack =lack:phrase
=pause:few =report-not-done:frame =report-out:phrase =report-oven:phrase =report-setup:S0 =report-setup:S1
=report-setup:most =report-started:phrase =report-trouble:most =set-guests:most =set-method:S0
=set-method:most =set-serving-time:all =set-timer:some =set-units:all =set-units:most =set-units:phrase
=skip-step:S0 =start-over:all =watch =watch:phrase ?heard6:phrase ?heard7:phrase after ago
alert bench blast block boots brb browned butter cabbage car celsius choices clock commands
conked delete doorbell dripping egg electricity flame garlic girlfriend gratins gravy hang
heat himself hob hon instead joining joint kill knock knowing leave-in letting loin lumpy lying
minimum mixed nagging nan onion onions overdone person persons planned reason record ribeye
rolls roped sauna saving showing skipping so soft soon sooner sorry sprouts stabbed starting
steps stuff thickest think tough trick trimmed us vegan water ~,_what ~._V ~._n ~K_? ~K_K ~K_before
~K_now ~K_with ~K_yes ~O_w ~S_and ~U_says ~U_than ~U_with ~V_did ~V_got ~V_hers ~V_should ~V_then
~V_where ~V_would ~^_K ~^_U ~^_g ~^_which ~a_S ~all_$ ~all_V ~am_all ~an_V ~as_a ~as_we ~at_my
~at_t ~at_the ~be_U ~be_here ~before_? ~but_V ~c_up ~c_what ~d_$ ~d_K ~d_before ~d_now ~do_.
~do_in ~done_V ~done_with ~down_, ~first_K ~from_n ~from_your ~go_K ~go_in ~got_here ~has_$
~has_U ~has_no ~has_to ~have_all ~hers_V ~him_. ~how_U ~how_are ~how_can ~in_our ~into_V ~is_me
~is_too ~is_with ~it_$ ~it_O ~it_now ~it_said ~my_U ~n_be ~n_have ~n_who ~n_y ~no_U ~no_more
~not_U ~not_going ~not_in ~not_say ~off_at ~on_g ~our_V ~so_U ~so_i ~so_the ~t_V ~taken_their
~that_. ~that_? ~the_in ~this_K ~this_V ~this_one ~to_do ~to_get ~up_n ~we_? ~we_will ~were_we
~where_were ~which_S ~who_are ~who_can ~will_we ~with_n ~would_n
8 #expecting:true:all . =add-dish =add-dish:phrase =ask-amount:S2 =ask-plan:phrase =choose:all
=deny:most =describe-roast:S1 =drop-dish:frame =have =have:phrase =note-guest:S1 =pause =report-guests:few
=report-guests:most =report-guests:phrase =report-setup:phrase =report-started:S0 =set-method
=set-method:frame =set-method:phrase =set-units =set-units:some =undo:S0 =watch:all ?heard8
?talk0 alex allergies alternatives amount anymore bag bairns bean beautiful ben blank bother
brussels butternut carrots chopping clear dairy daughter degrees doing drowning dry earlier
edge enamel exactly faffing fed ferry free full fuse game ghee goodness grandmother guest hanging
herb ill jo jump lagging leftovers love low making meant meantime napkins near need neighbours
niece nor numbers opened order overcooked overview parents ping possible postpone ran reach
rescue reset ribs right roaster rubbed salting shellfish speed spinach squeaky swap tailed
talking thin track tray vegetables vegetarian wanting which worried ~,_if ~,_take ~,_tell ~._$
~K_since ~P_will ~P_with ~S_now ~S_to ~U_a ~U_from ~U_has ~U_hers ~U_your ~V_have ~V_his ~V_out
~V_theirs ~^_be ~^_could ~^_from ~^_put ~^_took ~a_U ~a_y ~about_that ~after_i ~ago_and ~ago_it
~all_, ~all_S ~am_V ~and_all ~and_there ~another_n ~are_c ~are_not ~are_we ~as_of ~as_you ~be_gone
~been_S ~but_no ~c_as ~c_do ~c_me ~do_be ~do_now ~down_so ~for_is ~for_it ~get_the ~go_off
~goes_in ~going_in ~has_it ~has_n ~has_t ~he_U ~here_. ~how_it ~if_it ~is_over ~it_up ~let_us
~like_that ~me_. ~n_at ~n_because ~n_with ~not_S ~not_any ~now_we ~of_what ~off_it ~on_O ~out_what
~put_the ~said_it ~should_i ~since_d ~still_, ~still_K ~still_S ~t_, ~that_i ~that_should ~them_.
~them_K ~there_another ~this_? ~to_go ~up_by ~us_go ~w_K ~was_U ~we_be ~we_like ~what_for ~what_it
~what_you ~when_she ~when_you ~will_not ~with_it ~you_tell
9 #words1 =add-dish:S0 =add-hands =add-hands:few =add-hands:frame =add-hands:phrase =affirm:all
=affirm:frame =ask-amount:most =ask-guests:frame =ask-guests:phrase =ask-plan =ask-plan:all
=ask-substitute:S3 =ask-temperature:S0 =ask-why:some =cancel-timer:few =cook-away:phrase =drop-dish:most
=have:S0 =have:all =pause:all =repeat:phrase =report-guests:some =report-out:S0 =report-oven:all
=report-setup =report-started:most =report-trouble:S0 =report-trouble:phrase =running-behind:most
=set-guests:S0 =set-guests:phrase =skip-step:S2 =skip-step:some =watch:most ?heard4:phrase
?heard8:phrase as asking assisted aunt auntie bailed being bits boil bone both breath bums
carry collect counter fallen fetch fine fix forerib forgotten frozen gets glass grandma gratin
hearing herbs imperial instruction internal jumped kilos knots know la ladies later miss much
muffin na neither none offered oil ounces own pause phone priya quick resting risen rock ruin
seats short shout stage steeping sticker strained substitute taken test thick topped twins
won zero ~,_d ~,_where ~K_down ~K_not ~K_so ~K_w ~K_what ~O_P ~O_before ~P_. ~P_U ~P_up ~U_it
~U_off ~U_went ~V_? ~V_about ~V_more ~V_second ~V_take ~V_with ~^_a ~^_any ~^_before ~^_down
~^_get ~^_in ~^_now ~after_a ~am_after ~am_c ~and_S ~and_U ~and_no ~any_K ~are_going ~as_V
~as_it ~be_at ~be_my ~be_when ~before_it ~c_n ~c_will ~did_that ~do_with ~done_$ ~down_at ~down_c
~down_n ~first_O ~first_then ~for_? ~for_another ~from_my ~get_here ~go_. ~go_to ~going_to
~gone_, ~gone_and ~has_S ~have_a ~have_any ~have_said ~here_already ~his_V ~how_K ~in_V ~in_and
~in_i ~in_some ~in_yet ~is_her ~is_what ~it_, ~it_as ~it_off ~me_till ~more_$ ~must_i ~n_in
~not_get ~not_got ~now_n ~now_what ~of_d ~of_those ~off_. ~off_and ~ok_V ~ok_for ~ok_what ~on_now
~one_V ~one_says ~or_V ~other_O ~out_do ~out_to ~put_S ~put_on ~say_, ~say_it ~says_, ~says_n
~should_have ~so_take ~tell_when ~that_$ ~that_n ~the_c ~there_is ~till_K ~to_S ~to_take ~to_that
~us_do ~we_c ~we_can ~we_have ~what_can ~what_to ~will_K ~will_V ~with_the ~would_the ~you_be
~you_said
10 #frame:few #phrase:S3 #phrase:all <t:25> =ask-amount:S0 =ask-guests =ask-next:S0 =ask-options:most
=ask-options:some =ask-plan:some =ask-safety =ask-safety:S2 =ask-shopping:phrase =ask-substitute:frame
=correct:to-confirmation =deny:few =deny:to-choice =drop-dish:S1 =note-guest:to-guests =report-guests:S0
=report-setup:all =resume:S2 =resume:frame =running-behind:S0 =set-doneness:all =set-method:S1
=set-method:some =set-units:S2 =shift-serving:some =skip-step =start-over:frame ?talk1 absolutely
adults aiming ask bit bones bought boys brought bumped cancel cancelled catch cheap climbing
cooked crust current dangerous dave display end evening everybody fahrenheit fan father fit
freezer fresh friend gang gluten help helper holding jar landed light longer misread obviously
others overwhelmed peek pending picked plate poked pouring push rib righto rosemary scratch
sear sharp slice slowly something split squash tail their totally turned uncovered wake walked
warm whacked wise working yoke yusuf ~,_there ~,_they ~._. ~?_V ~K_d ~K_done ~K_first ~K_our
~K_will ~O_all ~O_i ~P_P ~S_in ~S_was ~U_but ~U_down ~U_or ~U_said ~U_some ~V_because ~V_our
~V_some ~V_when ~^_, ~^_another ~^_c ~^_some ~^_t ~ago_. ~all_U ~all_here ~all_too ~am_K ~am_going
~am_out ~and_my ~another_d ~are_still ~as_U ~be_O ~be_d ~be_on ~because_the ~before_the ~but_not
~c_S ~c_d ~could_you ~d_after ~d_is ~for_him ~for_t ~from_now ~g_now ~get_K ~goes_$ ~have_her
~here_for ~i_go ~i_had ~i_was ~is_an ~is_like ~it_all ~it_go ~it_how ~like_an ~like_the ~like_to
~like_you ~me_if ~more_n ~must_V ~n_after ~n_has ~n_is ~n_that ~n_there ~n_we ~of_K ~off_the
~on_a ~on_d ~on_let ~on_me ~one_is ~out_since ~out_the ~shall_be ~since_c ~so_, ~so_do ~so_yes
~that_on ~the_d ~then_$ ~there_will ~they_said ~those_$ ~us_, ~us_K ~what_all ~why_does ~will_go
~with_S ~you_O ~you_let
11 =ask-amount:frame =ask-temperature:some =choose:to-choice =cook-away:S2 =deny:all =describe-roast:S3
=describe-roast:to-roast =help:S2 =help:phrase =lack:all =report-guests =report-guests:all
=report-not-done:S3 =running-behind:S2 =set-serving-time:S0 able air amazing backs beans beeped
bloody board bob boneless brother buzz cable carving continue convection dinner earth electric
everyone everything f forgot gas grace grand happen happens hate heads helping helps hit huh
including ingredients likes looks market mash mistake negative nowhere nudge nut oiled olive
part peace plated plates pounds prepone puddings reading reheat remaining repeat rests rising
salted same screaming seasoned silence sitting skipped slicing softening somewhere speak stands
station steady thermometer throw thyme timeline toddler toddlers turning uncle under using
volunteered wants wipe ya ye ~,_c ~,_like ~,_mine ~?_$ ~K_if ~K_or ~O_U ~O_goes ~O_me ~P_get
~S_are ~S_the ~V_a ~V_after ~V_could ~V_has ~V_here ~V_say ~V_their ~^_did ~^_had ~^_never
~a_n ~after_it ~all_K ~am_on ~any_V ~are_S ~are_already ~are_down ~are_here ~are_off ~are_up
~at_g ~before_d ~before_i ~by_c ~c_K ~c_from ~can_$ ~can_we ~does_n ~does_not ~down_d ~first_$
~get_V ~going_O ~got_that ~had_a ~have_had ~have_no ~have_we ~here_now ~i_got ~i_take ~in_for
~in_y ~it_. ~it_have ~me_$ ~me_K ~me_a ~me_and ~me_at ~me_so ~n_by ~n_so ~no_, ~no_? ~not_K
~not_on ~not_put ~off_n ~ok_at ~ok_it ~on_$ ~other_. ~out_c ~over_it ~she_goes ~she_is ~so_V
~so_no ~still_n ~t_now ~t_on ~that_from ~that_went ~them_are ~to_c ~up_for ~us_have ~w_. ~we_at
~we_got ~we_must ~went_in ~what_O ~what_now ~when_d ~will_i ~with_$ ~you_about ~you_got
12 =ask-guests:all =ask-guests:most =ask-options:few =ask-plan:frame =ask-safety:S0 =ask-safety:all
=ask-safety:some =cancel-timer:most =drop-dish:all =lack:most =quiet:S1 =report-setup:S3 =report-setup:frame
=report-trouble:S1 =undo:phrase aim bath batter begin begun blade buttered chuck coeliac control
drained early em eye fast gave grams grated groceries hotter hush intolerant jus lactose lads
lower mark mhm mind mint nip overnight pet pot practically prime reaching real rub rubbish
sauces sec show shush sink skillet sorted sound store string supper tap telling tenderloin
thought tie topside touching wine winning wrapped ~,_how ~,_thanks ~K_. ~K_does ~K_go ~K_have
~K_ok ~O_for ~O_t ~O_the ~P_on ~S_on ~S_so ~S_with ~U_K ~U_about ~U_and ~V_c ~V_one ~V_them
~^_going ~^_still ~^_would ~a_c ~after_U ~after_all ~already_K ~and_c ~another_V ~by_U ~c_it
~c_not ~c_out ~can_U ~d_U ~do_we ~does_V ~does_this ~go_$ ~goes_over ~going_V ~gone_from ~got_V
~got_it ~have_$ ~have_taken ~is_. ~is_after ~is_off ~is_she ~is_there ~is_when ~it_you ~me_in
~me_some ~no_no ~not_a ~not_have ~of_it ~off_for ~off_so ~ok_P ~or_a ~she_will ~so_$ ~so_they
~take_$ ~then_V ~they_c ~this_O ~to_you ~up_. ~us_now ~w_with ~was_$ ~was_out ~what_$ ~what_U
~what_am ~what_if ~what_must ~what_will ~which_V ~with_d ~would_say ~yes_do ~you_could ~you_go
13 #words2 =ask-how:S2 =ask-options:phrase =ask-plan:S2 =ask-safety:most =cancel-timer:phrase
=help:most =note-guest:S3 =note-guest:to-doneness =pause:S2 =report-guests:frame =report-not-done:S2
=report-not-done:all =report-out:all =report-oven:to-reading =resume:S1 =set-doneness:S2 =set-doneness:frame
=skip-step:S1 =skip-step:all =skip-step:to-step =start-over:few ages allergy arrive cast completed
counting crept deglaze delay faff feeding girl hats head hendersons keep kids killed label
latest looking make notify pale peeled poke popping pretend proper properly rather resume setting
stepping stock switched themselves tops trimming unpause walking while wrote ~,_$ ~,_but ~,_this
~,_will ~K_S ~O_d ~P_took ~S_for ~S_here ~U_no ~V_how ~V_so ~^_all ~^_gone ~^_got ~^_me ~^_not
~^_says ~after_$ ~all_that ~and_now ~because_of ~but_n ~c_. ~c_i ~can_V ~d_off ~do_what ~done_so
~for_P ~for_to ~go_for ~got_to ~has_not ~how_does ~if_i ~in_K ~is_no ~is_y ~it_down ~it_the
~it_went ~it_will ~like_S ~me_U ~me_for ~me_to ~my_in ~n_about ~not_O ~not_yet ~now_t ~ok_,
~ok_i ~ok_the ~on_with ~said_, ~should_be ~some_V ~still_c ~than_i ~there_a ~to_t ~up_from
~we_O ~we_on ~we_shall ~when_do ~when_is ~with_my ~would_be ~you_for
14 =add-dish:few =add-hands:S1 =add-hands:S2 =ask-options:S1 =cook-away:few =pause:some =quiet:phrase
=report-setup:S2 =set-guests:few =set-timer:few =set-units:few afresh beep bottom browning
craic dark dial eat enough extra great headcount hood kip laws less lose lowest mo moment mute
nipping parchment pepper salad schedule seared shows strike theo tick ticked timers trussed
un veggie wait whipped whisht yorkshires ~,_S ~,_got ~,_so ~._d ~K_as ~K_do ~K_i ~O_. ~U_c
~U_have ~U_we ~V_am ~V_go ~V_still ~^_y ~all_n ~all_of ~already_n ~am_O ~be_done ~but_i ~d_or
~done_. ~done_for ~down_a ~has_V ~like_it ~me_c ~n_. ~n_but ~n_d ~n_this ~not_what ~on_then
~said_$ ~says_w ~should_it ~so_n ~still_$ ~taken_it ~taken_the ~that_was ~up_and ~up_like ~up_where
~w_not ~was_not ~we_take ~we_would ~what_does ~where_do ~why_K ~would_c ~yes_it ~yes_yes ~you_K
~you_what
15 =ask-safety:frame =ask-shopping:most =pause:phrase =report-guests:S3 =report-not-done:to-step
=report-trouble:some =resume:most =set-units:S1 =set-units:frame =skip-step:frame =watch:S1
also baste checked correct dog fat final fyi halfway ignore inside itself menu minutes missed
nephew peeling places replace roots serve spot spots suggest tied tongs tying washed ~._K ~K_can
~K_going ~O_but ~O_that ~P_can ~V_going ~V_if ~^_at ~^_should ~^_to ~all_over ~all_this ~and_what
~at_$ ~at_me ~by_me ~c_now ~d_c ~d_for ~do_$ ~done_here ~for_how ~for_us ~for_what ~go_with
~i_never ~i_say ~is_U ~it_S ~me_d ~me_my ~n_i ~no_$ ~not_, ~not_. ~not_? ~not_the ~off_to ~ok_$
~on_to ~on_yet ~out_now ~so_that ~t_U ~that_off ~theirs_at ~then_a ~there_V ~they_will ~till_i
~to_say ~up_$ ~who_does ~would_go
16 <t:80> =ask-plan:most =ask-status:S1 =ask-status:phrase =correct:all =quiet:some =report-setup:few
=report-trouble:all bare behaving bin changed clean countdown dropping far horses hovering
least lowered luck missing mustard passed puffed remind scrubbed simmering stove target truss
wee works wrong ~,_by ~K_already ~K_off ~K_this ~K_yet ~S_out ~U_of ~U_up ~V_like ~^_done ~^_have
~^_us ~all_going ~am_here ~and_n ~and_on ~are_U ~are_a ~at_all ~be_in ~d_. ~d_n ~for_now ~for_this
~get_to ~got_the ~have_O ~me_how ~n_it ~no_it ~no_n ~not_done ~on_for ~or_U ~out_they ~put_a
~say_V ~that_by ~to_me ~to_my ~took_it ~what_i ~why_not ~will_you ~you_were
17 =add-hands:some =ask-how:frame =ask-plan:S1 =lack:S3 =report-done:to-step =report-started:to-reading
=running-behind:few =start-over:S0 =undo:some bang beeping boned brown cooker eta frail frenching
giving house makes man mixer pardon rid searing slid talk tenderised told very wife ~._and
~K_but ~K_they ~U_those ~V_! ~^_off ~because_it ~c_at ~down_yet ~gone_V ~her_out ~i_S ~in_all
~is_already ~it_to ~n_my ~n_now ~n_too ~no_do ~so_he ~take_that ~w_all ~we_go ~where_we ~yes_go
18 =ask-guests:S0 =ask-time-left:some =note-guest:frame along carved change chemo cope flu
fridge months needle putting reckon texted thank ~,_too ~P_at ~V_will ~^_for ~already_the ~at_what
~from_V ~in_there ~is_my ~me_V ~me_what ~on_it ~over_the ~that_the ~this_. ~yes_$ ~yet_.
19 =resume:all duty eyes having invited rise tented ~,_yes ~are_n ~c_because ~gone_to ~is_here
~not_i ~out_yet ~says_t ~us_n
20 =ask-shopping:S1 =correct:frame law looked tins ~U_d ~do_that ~it_for ~which_O ~will_take
21 =report-not-done:to-confirmation god ~K_am ~have_i ~we_still
22 =ask-why:few boyfriend explain pregnant stuck things ~is_w
23 =repeat:few ~K_till ~no_thanks
24 ~yes_that
25 =affirm:most ~d_too`;

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
  `a able abort about abouts above absolutely accidentally act acting actual add added adding
adults afraid afresh after afternoon again against age ages ago agrees ahead ahmed aid aim
aiming air airport aisle alarm alcohol alert alex alight all allergic allergies allergy allowed
almost alone along alongside already also alternative alternatives altogether always am amandine
amazing american amount amy an ana anchovies ancient and announcements announcing another any
anybody anymore anyone anything anyway anywhere app approximately apricots are arguing arm
around arra arrive arrived arrowroot arse as ask asked asking asks asleep assembled assisted
assumes at ate aunt auntie aunty autocorrect ava available away awful b baby babysitter back
backofen backs bad badly bag bailed bairns bake baking ballet bang banging banjaxed bare basket
baste basting batch bath batter battery battle bay be bean beans bear beast beautiful beautifully
beauty because become becomes becoming bed bedlam beef been beep beeped beeping beer before
beg began begin beginning begun behaving behind being belay believe bell belly ben bench benefit
benji bert besides best bet better between beyond bhaiya big bill billowing bin binning bird
birthday bit bits black blackout blade blank blast blather blazing bleeding bleeds blender
bless blew blinking blistering block blocked blood bloody blown blue bluetooth board boat bob
boil boiling bone boned boneless bones bonfire boot boots bored boss bossy both bother bothered
bottle bottom bought bout box boxed boy boyfriend boys braised brb bread break breaker breath
breathe breather bridie bring bringing brining broke broken brother brought brown browned browning
brush brussels btw bubbling bucket budged building built bump bumped bums bunch bung bunged
burn burned burning burns burnt bus business bust but butcher butter buttered butterflied buttering
butternut button buy buzz buzzing by bypass c cabbage cable cake calibrate call called callum
calmer came can cancel canceled cancelled candles cap car caramel caramelised care careful
carked carol carries carrots carry carrying carryover carve carved carving cast cat catch catched
caught cautious celiac celsius center centre chance change changed charge chasing chatter cheap
check checked checking cheese chef chemo chest chewy children chill chilling chimney chip choice
choices choking choose chopped chopping chris christmas chronic chuck chucked church cider
ciggies circulation circumstances clean cleaning clear cleared clever climb climbed climbing
clock clogs closed cloves clue coat coats cobber cocked code coeliac colander cold colder collapsed
collapsing collect come comes coming commands company complete completed completely compound
conked connected consider continental continue control convection conventional convert cook
cooked cooker cooking cooks cool cooler cooling cools cope cord core cornflour correct correction
could count countdown counter countertop counting course cousin cousins cover covered cow crack
cracked cracking craic cranberry crank cranked cranking cranky crap crawled cream creamed creeping
cremated creme crept crew crimbo crisp crispy cross crowd crumble crunchy crust crying ctrl
cube cup cupboards curious currant current cut cutted cutting cylinder d'you da dad daft dairy
dan dangerous dans dare dark darling daughter dauphinoise dave day dead dealt dear decided
deep deepest deglaze deglazing degrees delay delayed delete delivery demanded dentist department
detector diabetes dial dialled diamonds diaper did died dietary difference digging dijon dine
diner ding dining dinner dinnertime disaster dish dishes dishwasher dishwater display disregard
distracted disturb ditch ditched do doable does dog doing done doneness door doorbell doors
doubtful dough down drained draining drank draw dressed dried drink drinks dripping drips drive
driving drop dropped dropping drops drowning drunk dry ducking due dusted duty e each ear earlier
earliest early earth easiest eat eating eats edge edges egg eggs either electric electricity
element elias ellie else em embarrassing empty enamel end english enough entirely entry epipen
error essen eta european even evening events ever every everybody everyone everything everywhere
ex exactly examples excuse expect expecting explain extinguisher extra extractor eye eyeing
eyes f face faff faffed faffing fahrenheit fainted fair fall fallen family fan fancy far fast
fat father fatima fear fed feed feeding feel feels fell fella ferry fetch fever few fewer fierce
fighting fill fillet final find fine finger fingers finish finished finishes fire first fit
fix flag flame flames flat flatmates flicked flickered flight flip floor flour flu foil folks
following food fool foot football footy for forerib forever forget forgot forgotten forks former
fort forward found fraiche frail frankly free freeze freezer french frenched frenching fresh
fridge friend friends from front frozen frying full fun fuse fussy fyi gabbing game gander
gang garden garlic gary gas gash gave geelong generous gents german get gets getting ghee ghosts
girl girlfriend give gives giving gizmo glass glasses glazed glazing glove gluten go gob god
goes going golden gone good goodness goose gorgeous got grab grabbed grace grain grams gran
grand granda grandad granddad granddaughter grandma grandmas grandmother grandpa grandparents
grandpas granny grate grated gratin gratins grattan gravy grease great greek green greet grey
grid grill grocer groceries growing guest guests guidance guide had hadad hair halal half halfway
hall halved hana hand handheld handle hands hang hanging hannah happen happening happens happy
hard has hassle hate hats hauled have having hazard he head headcount heading heads heaped
hear heard hearing heat heathens heating heats heavens held hello help helped helper helping
helps hendersons her herb herbs here hers herself hey hi high him himself his hit hits hitting
hives hob hold holding holler homemade hon honestly hood hoover hop hope hopping horseradish
horses hot hotter hour hours house household hovering how huh hungry hunnerd hurt husband hush
i ice idea ideas idiot if ignited ignore ill immune immunity imperial important imran in inch
include including incredible india ines inform ingredients inserted inside insisting instant
instant-read instead instructed instruction instructions internal into intolerant inverter
invitation invite invited iron is it items itself jaccarded jar jaysus jean jelly jess jesus
ji jim jo joan job jobs joe johnsons joined joining joint jonah joneses jose juice jump jumped
jumping jus justify kate keep keeping keeps kegs kept kern kernel kettle kev kevin kick kiddies
kidney kids kill killed kilo kilos kind kindly kip kitchen knife knob knock knocked knots know
knowing kosher la label lack lactose lad ladies lads lagging laid lamb lammkeule landed laps
lard larder last late later latest latter law laws lay laying leaning least leave leave-in
leaves leaving leeds left leftovers leg lemon lend lending lent leo less let letting licked
lid lie lies life lifted lifting light lights like likes lily line lips lisa list listen listening
lit little living load loaf lodger loin long longer look looked looking looks loops loose loosely
lose losing lost lot lou loud louder lounge love lovely lovers low lower lowered lowest luck
lucy lumps lumpy lunch lying läuft mad made main mains make makes making malt man manage mandoline
manual many marching marcus margarine marge maria marinade mark market marks marta mash mashed
mass match mate mates matter may maybe me meal mean meaning meant meantime meanwhile measure
measurements measuring meat mechanically medium meets mei melt melting members menu message
messages messing met metal method metric mhm middle might miles milk mind minding minds mine
minimum mint minutes miracle miracles misheard misread miss missed missing missus mistake mister
mitt mixed mixer ml mo mob model mom moment mommy moms money monkeys monster month months mooing
mopping more most mother motorway mouth mouths move moved moves moving mrs much muffin mum
murder must mustard mute mutton my myself n na nadia nagging name nan nana nap napkins napped
ne'er near nearly necks need needed needle needs negative neighbors neighbour neighbours neither
nelly nephew nervous netted never new news next nice niece night nip nipped nipping no nobody
noise none nor nora normally not notch note nothing notice notifications notify notion now
nowhere nudge nudged numb number numbers nursing nut nuts o oat obviously och oclock odd of
ofen off offer offered oh oil oiled ok old olive omar omit on once one ones onion onions online
onto opal open opened option options or order orders oregano other others otherwise ought ounces
our ours out outside outta oven over overcooked overdone overnight overshot overview overwhelmed
ow own owned pace pacing package packed packet pains pair pal palaver pale palm palms pan panel
panicked paper parboil parboiled parcel parchment pardon parents parked parking parsley parsnips
part party pass passed passes past pastry pat patted patting pause paws paying peace peaked
peaks peanut peas peek peel peeled peeler peeling pen pencil pending people peoples pepper
peppered per perched person persons pet petal pete phew phone pick picked picking picture piece
pieces pills pin ping pinged pink pipe place placed places plan plane planned planning plans
plate plated plates platter play plenty plot plumber plus pm point pointing pointless poisoning
poke poked popovers popped popping pork porky portions position possess possibilities possible
postpone pot potato potatoes pounds pour poured pouring powder power practically prefer prefers
pregnant preheat preheated preheating prep preparation prepared prepone present press pressed
pretend pretty price prime print printed priya probe problem proceed processor proper properly
proving pudding puddings puffed pull pulled pulling pumpkin purchase purpose push put puts
putting quantity quarter quick quicker quickly quiet quieten quite rack radiant rail raised
ran rang range rare rarer rather ratio raw ray reach reached reaches reaching reaction read
reading readings reads ready real reason reasoning reckon reckons record red reduce reduced
reed refreeze refrigerated regular reheat religion remaining remind reminder reminders reminding
remove removed rental repeat replace replaced replacement required rescue reset rest rested
resting restore rests resume retard reverse revert rewind rib ribeye ribs rich rid right righto
ring ringing rise risen rising risk rite road roads roar roaring roast roasted roaster roasting
rob rock rocked roles roll rolled rolling rolls room root roots roped rose rosemary rosy rosé
rotten rough roughed roughly round roux rub rubbed rubbish ruin ruined rump run rundown rung
running runs rush rusted ruth sack sad sadly safe safely safest sage said saignant salad salsa
salt salted salting salty salvage sam same sanjay sat sauce sauces sauna save saving say saying
says scalded scalding scale scalloped schedule school score scored scoring scotch scrap scraped
scraping scratch screaming screen scrubbed sear seared searing seasoned seated seats seawater
sec second see seeing seems send sends sense separator sequence serve served serving sesame
set setting settle shaken shall shallots shape shaped share sharp shave she shed sheet shelf
shell shellfish sherry shift shit shoes shoot shop shopping shops short shortly shot should
shout shouting shove shoved show showed shower showing shown shows shredded shush shut shy
sick side sides sign silence silverside silverskin simmering simple simplify since sing single
sink sinking siobhan sir sirloin sister sit sitrep sitting situation size sizzling skillet
skimmed skip skipped skipping slate sleeping sleeve sleeves slice sliced slices slicing slid
slide slimy slipped slips slow slower slowly small smashing smeared smell smelling smells smoke
smokes smoking snow so sock soft softening sold solid some somebody somehow someone something
somewhere son soon sooner soonest sorry sort sorted soufflé sound sounded sounds soup sour
sous spare spark speak speaking special speckled speed spell spices spinach splashed split
splitting spoils spoke spoon spoons spot spots spreading sprigs sprout sprouts spud squash
squeaky squeamish stabbed stage stale stand standing stands start started starting starts starving
state station status stay staying stays steady steak steam steamed steeping step stepping steps
steve stick sticker still stir stirring stitches stock stone stop stopped stopwatch store story
stove straight strained straining strait strays streaming street strike string strip struggling
strung stuck stuff stuffed sub substitute such sugar suggest suggestion suggestions suit sulk
summarise sunk supermarket superstitious supper supposed sure surely suspend swap swears sweet
swell swelling swells swimming switch switched swore system table tablespoon tablet tablets
tackle tail tailed take taken takes taking talk talking tap target tariq tasks tastes tea teach
team tearing teaspoon teenagers teeth telephoned tell telling telly temperature temple tenderised
tenderloin tent tented tenting test text texted than thank thanks that thaw the their theirs
them themselves then theo there thereabouts thermometer these they thick thickened thickest
thin thing things think thinking third this those though thought thoughts thread threw throat
through throw thumb thyme tick ticked ticking ticks tie tied tight til tiles till tim time
timeline timer timers times timetable timing timings tin tinfoil tinkle tins tiny tip to today
toddler toddlers together told tom tongs tonight too took top topped topping tops topside total
totally touch touched touches touching tough toward towel towels town track tractor traffic
train transplant trash travelling tray trays treat trick trickle trim trimmed trimming tripped
trivet trouble truss trussed trussing trust trying turn turned turning turns twas twice twine
twins tying type typo tyre ugh un uncle uncovered under undercooked underneath understand undo
undue units unless unpause unsay unset unusable up update upside upstairs urgent us use used
useful using usual vegan vegetable vegetables vegetarian vegetarians veggie verde very vi vinegar
visitor visitors volume volunteered vote voted wait waiting wake walk walkabout walked walking
want wanted wanting wants war warm warmed warmer warming warn warning was wash washed washing
watch watching water way ways we weak wean weans wee week weigh weighed weighs weight weights
weird weirdo well wendy went were whacked whadda what whatcha whatever whatsoever when whenever
where whereabouts wherefore whether which whichever while whip whipped whisht whisk whisked
whisking whistle white who whole whoosh whopper why wife wiggled wilf will wilsons wilted wind
wine winning wipe wire wired wireless wise wish with without wobbly woke woman won wood word
words work working works worktop worried worry worse worth would wouldja wrangle wrapped wreck
wrecked wresting wrestle wrist wrong wrote y ya yank yapping ye year years yeast yell yes yesterday
yet yoghurt yogurt yoke yorkshire yorkshires yorkshre you young your yourself yusuf z zero
zeros zip`.split(/\s+/),
);
