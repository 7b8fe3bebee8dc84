/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-22 fair
-21 =emergency:guess =report-trouble:guess ?talk5 ?talk6 ~more_O
-20 =courtesy =courtesy:phrase eights ~,_a ~at_K ~here_we ~with_U
-19 #words0 ?talk7 counted morning pages ~,_put ~,_you ~O_had ~^_$ ~^_her ~get_down ~like_mine
~some_more ~that_will ~you_n
-18 =set-guests:guess blight draw group pass pin remember restaurant smoking wedding ~K_say
~any_O ~going_, ~is_for ~n_all
-17 #heard0 <y> =courtesy:S0 =deny:some =emergency:all =set-serving-time:S2 apparently barbecue
ladder loo mine poor tooth ~let_it ~n_w ~on_U ~out_in ~says_here ~thanks_P ~to_him ~yes_i ~you_get
~you_to ~your_K
-16 =courtesy:some asked caravan cats deck due frying holidays level loads lows number park
sandwiches small speaker yourselves ~,_after ~,_who ~,_with ~?_it ~K_y ~O_to ~O_we ~V_y ~is_why
~not_that ~second_on ~she_did ~tell_them ~that_U ~them_about ~then_you ~they_O ~this_for ~will_U
-15 <n:200> =affirm:S3 =choose:guess =deny:to-reading =note-guest:to-reading =report-reading:to-reading
=undo:frame ?heard0 argument bathroom blue booked box day dollar goalie hello highs jumper
line loud magazine neighbour never paid parking pub roll week whoever work ~!_get ~,_here ~,_off
~,_say ~O_they ~and_by ~and_got ~and_not ~and_still ~and_that ~i_$ ~n_n ~n_over ~no_i ~says_d
~she_V ~that_to ~then_the ~there_you ~they_had ~to_a ~took_d ~were_n ~what_they ~why_is ~y_and
~you_have ~you_on
-14 #O3 =correct:S3 =courtesy:S1 =report-trouble:few =resume:some =start-over:S1 career dress
dublin feeling hide large linda lovely page picking pudding quiet rice sends shoe speaking
starter sun swears talks touch white years yourself ~,_and ~?_is ~?_the ~?_yes ~O_says ~U_P
~U_till ~V_she ~^_shall ~^_those ~all_done ~am_n ~could_be ~do_my ~does_he ~for_you ~gone_out
~may_$ ~out_a ~said_no ~shall_we ~that_it ~up_with ~was_S ~was_i ~went_to ~who_did ~y_U
-13 =acknowledge =acknowledge:phrase =emergency:S2 =report-out:S2 ?talk4 ?talk8 asleep carvery
channel cloudy coach dollars drinking ends essay flight gingerbread he judges legs lives machine
meeting petrol phoenix pie pool post pressure queen salmon see seriously served shuts spain
sugar taking teacher text vet wanted window wonder ~!_did ~,_ours ~,_your ~._your ~?_you ~K_never
~O_like ~O_out ~P_this ~S_, ~U_out ~at_U ~at_you ~by_y ~can_P ~did_it ~do_if ~get_a ~goes_,
~got_n ~had_K ~have_another ~have_done ~he_does ~her_and ~i_P ~in_these ~is_down ~mine_i ~my_S
~n_or ~n_was ~n_when ~not_it ~on_in ~one_, ~over_that ~put_your ~says_take ~she_said ~that_O
~this_the ~to_us ~took_us ~up_in ~was_w ~we_U ~y_we ~yet_, ~you_$ ~you_i ~you_should
-12 =acknowledge:S0 =choose:S2 =report-reading:S2 =set-timer:guess =shift-serving:S3 banana
beta chef chefs dishwasher dum dusted every fancy film funny goal grab hair hi lights million
mortgage owe pizza radio rain service shot stir surgeon tea these yours ~,_said ~,_she ~K_about
~K_he ~K_was ~O_! ~O_O ~P_did ~P_for ~U_to ~U_would ~^_he ~about_to ~am_the ~and_go ~are_about
~at_, ~before_V ~c_but ~c_w ~did_you ~do_they ~does_O ~does_a ~he_put ~her_P ~hers_at ~is_never
~n_then ~not_you ~said_the ~said_to ~say_K ~says_$ ~since_O ~still_, ~the_U ~the_y ~then_we
~there_was ~there_yet ~they_put ~this_U ~went_O ~were_d ~yes_! ~you_U ~you_done ~your_V
-11 #guess:S3 #heard3 <n:40> <t:200> =acknowledge:few =add-hands:S3 =ask-options:frame =ask-status:S2
=choose:most =correct:few added ate bacon big birth biscuit boiling boot born bottles breaking
broken burn chairs chestnuts corner couch crying damp died even except excuse fixed found fourth
front lady manager moved nose online paper pumpkin quarter remove road scary season sold taxi
third thousand wifi young your ~!_i ~,_have ~,_that ~,_their ~?_can ~O_were ~P_K ~U_after ~U_do
~U_n ~V_him ~^_our ~all_in ~am_never ~and_let ~are_for ~at_your ~could_have ~d_! ~d_S ~done_the
~he_has ~him_, ~it_goes ~my_first ~n_would ~never_U ~never_got ~not_so ~now_i ~off_V ~off_at
~on_, ~on_P ~one_has ~out_by ~over_, ~over_at ~she_was ~still_does ~take_a ~tell_P ~they_were
~was_d ~were_at ~where_is ~yes_a ~you_do
-10 #expecting:false:few =deny:frame =quiet:guess =report-not-done:S2 =report-not-done:few
=report-out:guess =set-serving-time:S1 again alarm beat believe breakfast bridge bus caller
changing clutch coats college crispy daddy darling episode grandad heating her him hot hours
lisbon march may milk mummy myself news office party play porridge potato roof saw sleep song
starts suitcase swimming tender thread thumb try weighs you ~,_must ~,_says ~,_then ~?_U ~K_P
~O_n ~P_got ~P_or ~S_? ~U_? ~U_in ~U_there ~U_you ~V_first ~^_ours ~^_second ~^_too ~after_the
~am_done ~another_O ~are_d ~at_P ~be_the ~been_K ~c_if ~c_y ~d_a ~d_would ~did_the ~done_,
~done_it ~for_c ~for_me ~from_O ~get_there ~go_and ~going_$ ~had_V ~have_an ~his_O ~how_did
~if_n ~if_the ~in_on ~it_! ~it_already ~it_over ~it_when ~like_$ ~me_up ~mine_V ~more_than
~my_O ~n_O ~n_P ~n_as ~n_can ~n_from ~of_a ~on_his ~one_was ~other_$ ~other_V ~ours_at ~out_U
~put_me ~put_you ~she_still ~so_how ~tell_him ~than_me ~thanks_$ ~there_$ ~there_any ~to_the
~to_w ~was_still ~where_the ~who_V ~will_do ~yes_, ~you_, ~yours_V
-9 =acknowledge:all =ask-safety:guess =ask-status:S3 =cancel-timer:S2 =correct:some =deny:S3
=emergency:some =lack:to-confirmation =report-reading:S3 =report-started:S3 =report-trouble:S3
=undo:S2 afraid allergic bags baker bank boiler capital card carol charge choir cost cupboard
curtains did door ella fall flip goals gorgeous gran hall high homework honestly jack kick
kickoff lift load lock meter mooing nana oh our plumber points politics preheated prices question
queue quite recipe reduced rewind ring row rupees sausage scallops sent shade team theirs towels
walks wore zip ~,_did ~,_his ~,_never ~,_no ~,_t ~._U ~K_she ~K_you ~O_at ~O_got ~O_said ~O_y
~P_, ~P_never ~S_him ~S_me ~S_would ~U_get ~U_now ~U_or ~U_was ~V_S ~V_was ~^_his ~after_you
~all_i ~an_O ~and_do ~and_in ~are_these ~can_U ~can_i ~get_it ~got_her ~got_more ~her_, ~him_n
~i_could ~i_do ~i_like ~i_will ~in_since ~in_your ~is_about ~is_his ~is_this ~is_your ~it_by
~it_done ~it_too ~it_took ~like_that ~me_, ~mine_in ~n_a ~not_like ~of_you ~ok_K ~our_O ~out_V
~out_there ~over_here ~she_would ~should_get ~since_n ~so_his ~still_U ~still_on ~that_S ~the_O
~then_i ~there_, ~these_K ~they_U ~those_K ~too_K ~w_? ~we_could ~we_had ~when_did ~where_are
~will_they ~y_$ ~yet_? ~you_up ~your_S ~your_go
-8 #U2 =acknowledge:S3 =add-dish:S3 =ask-how:some =ask-next:S1 =cancel-timer:guess =set-doneness:S3
=set-guests:to-guests =undo:few army batteries belt boat cap chips club contestants corkscrew
country cuts da delicious drawer face funnier hand hers june left look nav nothing ours price
raining ruined sat scored secret seville she shoulder sirloin sister thanks usual ways worth
~,_can ~,_let ~?_how ~K_a ~K_did ~K_from ~O_$ ~O_a ~O_have ~O_i ~O_it ~O_your ~P_$ ~P_i ~P_let
~P_we ~U_$ ~U_U ~V_any ~^_so ~^_w ~^_where ~^_why ~and_if ~and_some ~and_we ~and_you ~any_V
~are_all ~are_at ~are_you ~as_c ~be_c ~been_c ~before_$ ~but_it ~but_she ~c_what ~do_mine ~done_yet
~for_U ~for_that ~from_there ~get_your ~go_, ~he_is ~her_$ ~here_if ~here_is ~him_at ~his_U
~in_? ~in_his ~is_another ~is_it ~is_t ~is_yours ~it_c ~it_i ~me_P ~me_about ~more_, ~n_U ~n_and
~n_till ~n_to ~never_V ~off_you ~on_her ~or_the ~other_K ~our_U ~out_for ~over_n ~put_out ~put_that
~said_d ~she_took ~so_c ~so_for ~than_the ~that_down ~that_ok ~the_n ~the_one ~then_he ~then_she
~was_at ~was_like ~we_did ~went_off ~which_S ~with_O ~y_V ~yes_V ~you_like ~you_must ~you_say
~your_O ~your_P ~yours_$
-7 ! <n:999> <t:40> =affirm:few =courtesy:few =emergency:S0 =lack:S2 =quiet:frame =repeat:guess
=undo:S1 ?heard4:guess across average baby calls closed cut expenses fill fryer grill iron
lid lounge mother music notice penalty percent rolling room rung say seat sheila shift spelling
swear though threw traffic turkey used warning why ~!_no ~!_that ~!_you ~,_, ~,_all ~,_our
~,_y ~,_yours ~?_that ~O_before ~O_does ~O_her ~O_now ~O_on ~O_would ~P_said ~P_you ~S_O ~S_off
~S_there ~U_says ~V_does ~V_your ~after_that ~ago_, ~c_that ~d_? ~d_at ~did_$ ~do_for ~does_your
~done_and ~going_off ~got_$ ~got_my ~has_a ~have_d ~have_had ~have_to ~have_you ~he_O ~he_U
~he_V ~her_K ~here_already ~hers_in ~him_$ ~how_do ~in_$ ~in_U ~is_so ~it_a ~it_on ~it_take
~like_U ~me_with ~mine_out ~must_U ~must_be ~n_are ~n_c ~n_not ~not_go ~now_on ~of_this ~off_a
~one_with ~or_is ~other_U ~out_! ~over_there ~say_$ ~say_to ~she_has ~should_take ~so_. ~still_in
~them_$ ~these_V ~till_c ~up_if ~us_on ~w_and ~when_$ ~when_does ~with_that ~would_V ~yes_P
~you_are ~yours_now
-6 #O1 #expecting:true:most #guess:S1 =affirm:frame =ask-amount:S1 =ask-amount:S3 =ask-safety:S1
=ask-temperature:S1 =choose:S1 =deny:S1 =describe-roast:guess =drop-dish:some =emergency =help:guess
=lack:frame =quiet:most =set-doneness:frame =set-serving-time:guess ?heard0:phrase ?heard1:frame
?heard1:guess ?heard3:guess answer aunty bedrooms bob bread break burnt bye calling careful
carve colour council cover date does e each find freezing goose handle home horse la last leaves
lot mashed maths mum name next notch older over pair pick press read rotten run shakes sit
skip sofa stay stew there time wash weeks who yaar ~,_is ~,_now ~,_ok ~,_on ~,_to ~K_into ~O_,
~O_K ~O_and ~O_are ~O_say ~P_and ~P_c ~U_, ~U_her ~V_O ~V_are ~V_or ~V_who ~^_am ~^_these ~^_they
~a_K ~already_? ~am_still ~are_my ~are_this ~as_i ~been_at ~c_of ~c_put ~c_your ~did_U ~do_not
~does_hers ~gone_in ~had_n ~have_this ~hers_V ~him_in ~his_P ~in_d ~is_d ~is_mine ~it_going
~it_out ~let_him ~like_an ~me_when ~n_already ~n_for ~not_for ~on_i ~one_more ~other_one ~our_K
~out_and ~put_my ~say_, ~says_a ~still_S ~take_it ~that_for ~that_is ~then_, ~they_V ~they_did
~this_, ~to_O ~up_till ~us_at ~we_, ~we_V ~we_went ~what_K ~what_you ~who_was ~why_are ~you_in
~yours_is
-5 #O2 #expecting:true:few #expecting:true:some #guess:all =ask-amount:all =ask-why:S2 =emergency:S1
=report-done:S2 =report-oven:frame =set-timer:S2 =shift-serving:S1 ?heard0:frame ?heard5:guess
allowed alone best book cake carpet caught cent cheap chemist chill come coming cooking cutting
days decent divorce done drummers everywhere gate get getting greenhouse grey half his hitting
husband ice judge late leeds lemon lords melt minister needs pay people pipers programme radiator
reindeer remote roundabout says shop since slice standing staying steak still stone switch
they toast truck turn undo vents waiter was whole yet ~,_O ~,_could ~?_and ~K_his ~K_still
~K_that ~K_them ~K_to ~K_your ~O_down ~S_down ~U_got ~U_is ~U_us ~U_y ~U_your ~V_U ~V_all ~V_can
~V_for ~V_my ~V_other ~V_since ~V_these ~^_d ~^_of ~^_she ~^_the ~^_yes ~^_you ~any_U ~at_c
~be_there ~c_about ~could_V ~d_and ~d_of ~do_n ~first_V ~first_was ~for_your ~from_U ~gone_and
~have_gone ~have_never ~he_S ~he_can ~he_says ~her_the ~him_out ~how_are ~in_here ~in_n ~into_a
~is_S ~is_what ~it_n ~me_now ~me_on ~mine_$ ~mine_was ~n_? ~n_been ~n_the ~no_S ~now_for ~of_here
~off_$ ~off_is ~ok_U ~one_$ ~over_$ ~say_when ~says_S ~she_c ~she_will ~take_O ~take_your ~tell_her
~them_in ~this_is ~till_n ~to_c ~to_your ~too_U ~took_out ~up_V ~w_, ~was_K ~was_n ~when_the
~why_do ~with_this ~you_take
-4 #guess:most #guess:some <t:100> =ask-shopping:guess =ask-status:frame =ask-substitute:S2
=ask-why:all =ask-why:most =help:S1 =lack:guess =report-not-done:phrase =report-reading:S1
=report-started:few =set-guests:some =set-serving-time:some =start-over:S2 ?talk3 another apple
awful between bucket but call cards carry chance chicken classic coast course dear delayed
dish drop dryer easter goes gone hotel kettle kitchen lbw letters listen lived many marathon
meet other outside pavlova pies plus point raw rent rest rough seen shopping soda spell street
takeaway through too top tumble ugh use water way weighed ~,_U ~,_V ~,_an ~,_like ~,_my ~,_there
~?_V ~?_n ~K_one ~K_t ~K_were ~O_was ~O_will ~S_$ ~S_what ~U_all ~U_me ~V_off ~V_there ~V_this
~V_us ~V_you ~^_and ~^_my ~^_their ~at_V ~been_O ~by_the ~c_in ~c_the ~did_a ~do_O ~do_a ~do_it
~down_$ ~down_and ~down_to ~first_and ~for_V ~for_y ~go_U ~go_to ~goes_off ~gone_up ~has_not
~he_must ~he_was ~her_U ~his_K ~how_was ~i_? ~in_c ~in_that ~is_K ~is_any ~it_at ~it_says ~more_K
~n_, ~n_S ~not_do ~now_K ~on_it ~on_them ~on_your ~out_? ~out_K ~put_it ~said_it ~she_U ~she_says
~should_K ~some_O ~tell_your ~that_one ~the_second ~their_O ~us_$ ~w_$ ~was_the ~will_c ~would_take
~would_you ~yes_yes ~you_P ~you_can ~you_did ~you_will ~you_would
-3 #P2 #words12 #words7 <n:300> <t:550> =ask-guests:S1 =ask-how:phrase =ask-status:all =ask-time-left:most
=cancel-timer:most =choose =choose:few =correct:S1 =drop-dish:S3 =emergency:S3 =lack:some =pause:frame
=repeat:some =report-oven:guess =resume:S0 =set-doneness:most =set-doneness:to-doneness =set-guests:S1
=set-serving-time:few =shift-serving:most =start-over:all =start-over:some ?heard1 ?heard2:guess
?heard3:frame add bag bins blanket block bowl burning called church climb craic dry duck else
folks garden ham help honest hook january knee lands laundry leather likes marcus married night
nursery nut options password past pause peel prep put reads ref ribeye robot school second
shirt sick side sign spoon takes tank then times towel understand weather weekend weigh welcome
yards yes ~,_in ~,_should ~K_me ~O_from ~O_is ~O_or ~O_she ~P_has ~P_would ~S_before ~S_of
~U_S ~U_as ~U_his ~V_K ~V_another ~V_had ~V_in ~V_no ~V_where ~^_does ~^_go ~^_take ~^_tell
~^_who ~all_the ~am_at ~an_K ~an_U ~and_he ~and_take ~at_a ~be_S ~be_a ~been_on ~been_taken
~but_no ~by_V ~c_, ~c_c ~c_is ~c_says ~could_do ~d_, ~did_he ~did_ours ~do_V ~do_to ~do_you
~down_, ~down_for ~first_, ~for_the ~had_it ~have_K ~he_K ~he_goes ~he_never ~he_say ~he_will
~here_V ~here_i ~here_the ~him_off ~how_to ~i_get ~i_said ~in_O ~in_S ~in_this ~is_, ~is_going
~is_that ~it_in ~it_will ~me_i ~n_! ~n_he ~n_here ~no_O ~not_yet ~now_? ~of_V ~of_c ~of_the
~of_your ~off_, ~on_O ~on_V ~on_and ~one_is ~so_it ~so_we ~some_K ~take_these ~that_at ~there_?
~these_O ~these_c ~they_K ~they_have ~they_say ~till_O ~to_n ~to_tell ~too_V ~took_a ~us_c
~was_V ~was_t ~we_O ~we_should ~with_him ~with_your ~would_K ~would_O ~yes_we ~you_had
-2 #S2 #U1 #U3 #frame:S2 #guess:S2 <n:12> <w> =affirm:some =ask-how:S1 =ask-next:most =ask-why:S1
=emergency:few =emergency:most =quiet:S2 =report-started:frame =set-doneness =set-doneness:S1
=set-doneness:few =skip-step:guess ?heard2 all and any b back because bed better boss boy burned
chair chapter chin count cow crisp curry dad down eats ever exit expecting fish flat foot for
garage given gluten hill hold island leo loose marriage men microwave money no nursing order
passing pat peru platform previously pull roads rush safe salt screen set showing socks somebody
temperature that to upstairs want warn weight were yesterday ~!_$ ~,_g ~,_he ~,_i ~,_n ~,_not
~,_second ~,_tell ~,_where ~K_in ~K_over ~K_says ~O_has ~O_him ~P_S ~P_have ~P_n ~S_at ~U_O
~U_off ~V_goes ~V_n ~V_then ~V_up ~^_be ~^_no ~^_when ~^_your ~a_U ~all_, ~and_all ~and_i ~and_so
~and_then ~and_they ~are_the ~c_a ~c_at ~can_tell ~did_too ~do_this ~does_the ~done_you ~down_.
~going_on ~gone_off ~has_been ~have_still ~he_said ~here_$ ~how_you ~i_c ~i_got ~in_may ~is_the
~is_was ~it_, ~it_S ~it_with ~me_done ~me_it ~no_more ~no_you ~not_a ~not_get ~now_V ~now_c
~of_n ~ok_so ~on_that ~on_the ~or_U ~or_not ~out_of ~said_never ~say_that ~says_V ~second_$
~so_and ~so_what ~t_$ ~that_. ~that_P ~that_now ~the_other ~then_it ~there_were ~they_get ~those_V
~to_$ ~up_, ~up_on ~was_a ~went_V ~what_would ~will_be ~would_have ~y_,
2 #U0 #phrase:S1 #words5 <c> =affirm:S2 =affirm:phrase =affirm:to-confirmation =ask-amount:few
=ask-amount:some =ask-how =ask-options:most =ask-safety:few =ask-substitute =ask-substitute:S3
=ask-time-left:phrase =ask-why =deny:phrase =describe-roast =pause:few =report-done:S3 =report-not-done:most
=report-out:some =report-reading =report-reading:phrase =resume =running-behind:guess =running-behind:some
=set-guests:S3 =set-guests:to-roast =set-serving-time:to-roast =set-timer:S1 =set-timer:all
=undo actual afternoon altogether am as away bad beautifully bird button christmas cooks cool
drinks eating either fewer finish finished fire full give glazed golden granny held idea jar
jim knows lay leave light list listening lumpy matter medium missing more nail nervous new
not note of option otherwise present problem rate reminds runs score serving shush smoke soft
sounds strip sure target teddy tell toddler together tonight wait walk watch what word year
~,_the ~,_which ~K_. ~K_after ~K_is ~K_too ~K_took ~K_went ~O_P ~O_by ~O_then ~P_it ~S_! ~S_.
~S_since ~U_down ~U_the ~U_this ~V_from ~V_over ~V_than ~V_that ~V_the ~V_w ~^_S ~^_V ~^_i
~^_say ~a_d ~all_at ~all_this ~already_$ ~and_O ~and_his ~and_n ~and_the ~are_. ~are_K ~at_this
~been_U ~by_d ~c_K ~c_as ~c_they ~could_not ~d_down ~does_it ~for_$ ~for_O ~from_K ~from_c
~got_no ~have_been ~here_? ~how_would ~i_am ~if_we ~in_and ~in_as ~in_it ~in_now ~is_V ~is_at
~is_like ~is_on ~is_put ~it_U ~it_V ~it_be ~it_is ~it_till ~like_K ~no_the ~not_let ~now_you
~off_O ~ok_? ~on_n ~on_this ~on_we ~put_them ~should_V ~should_do ~should_the ~still_ok ~that_V
~they_took ~took_S ~took_me ~took_the ~up_P ~up_at ~us_and ~was_in ~we_are ~we_got ~what_P
~what_V ~when_it ~who_has ~with_K ~with_the ~you_about
3 #K1 #K2 #K3 #O0 #frame:S0 #frame:most #guess:few #phrase:some #words4 <d> =add-dish:guess
=affirm =affirm:S0 =ask-next =ask-plan:S0 =ask-safety:S2 =ask-substitute:all =ask-temperature:some
=ask-time-left =ask-time-left:S0 =correct =describe-roast:phrase =drop-dish =drop-dish:S0 =help:all
=lack =note-guest:S0 =note-guest:most =pause:most =repeat:S0 =repeat:S1 =repeat:all =report-done:all
=report-out =report-reading:frame =report-started:guess =set-guests =set-guests:S0 =set-timer
=skip-step:some about absolutely adding anywhere arrived bear bin building by centre code colander
core creamed dan dark deep dried drive early extractor flicked forks french gets go god grain
grandpa have heard holding jess life looking love lying middle might missus nobody none oven
parents piece plan popovers potatoes rack reached regular repeat sack saving shape sherry simplify
sir slide slipper someone soup sous station status sweet telly today update upside when wins
~!_V ~,_K ~,_but ~,_or ~?_no ~K_U ~K_before ~K_my ~K_on ~K_out ~K_with ~O_in ~P_says ~S_U ~S_are
~S_c ~S_can ~S_will ~U_and ~U_by ~U_on ~U_when ~V_ago ~V_because ~V_been ~V_get ~V_her ~V_said
~^_but ~^_let ~^_will ~about_with ~after_this ~am_U ~and_it ~any_more ~as_the ~at_n ~because_of
~been_out ~by_O ~by_a ~by_me ~c_and ~c_you ~could_O ~d_in ~d_on ~does_not ~done_with ~down_the
~g_, ~gone_O ~got_a ~got_for ~had_my ~have_V ~his_S ~i_V ~i_still ~i_took ~in_my ~in_the ~in_with
~is_done ~it_from ~it_was ~more_will ~my_U ~n_V ~n_at ~n_down ~n_of ~never_K ~not_V ~now_$
~now_at ~of_O ~of_her ~ok_that ~on_at ~on_you ~out_$ ~out_. ~out_before ~over_a ~said_. ~said_n
~second_? ~second_V ~so_let ~take_that ~that_in ~their_K ~them_V ~then_V ~this_$ ~this_K ~till_it
~us_, ~w_c ~w_n ~was_on ~we_have ~went_on ~were_U ~what_could ~what_is ~when_we ~will_have
~with_it ~would_i
4 #expecting:false:some #frame:S1 #frame:some <n:150> =add-dish:frame =add-dish:most =add-hands:most
=ask-next:frame =ask-shopping:S0 =ask-shopping:all =ask-status =ask-status:S1 =ask-temperature:guess
=ask-temperature:phrase =ask-time-left:all =ask-why:S0 =ask-why:guess =ask-why:to-step =choose:phrase
=cook-away:frame =cook-away:guess =describe-roast:S3 =describe-roast:all =drop-dish:S2 =help:some
=note-guest:S1 =note-guest:some =pause:all =repeat =report-done =report-done:phrase =report-guests:S1
=report-guests:frame =report-oven:some =report-reading:some =report-started =running-behind:S1
=set-doneness:S2 =set-doneness:guess =set-guests:few =set-serving-time:S3 =set-serving-time:most
=skip-step:S0 ?heard3:phrase ?heard4 ?heard5 ?talk2 above after anymore bath birthday c cancelled
cat catch center checking choose conventional cook correction could cranked creme cry daughter
dishes doing earth error feel fix fraiche from grand handful hard hear helps holler inform
into ji knock knowing lit looked minds minimum nan nearly now odd parcel popped rested rolled
sheet sleeping smell staring starving thickest tin tom tray units vinegar washing yogurt ~,_P
~,_first ~._no ~?_i ~K_$ ~K_has ~K_of ~K_shall ~K_there ~K_would ~O_S ~O_U ~O_with ~P_does
~P_in ~S_as ~S_do ~U_! ~U_. ~U_about ~V_a ~V_an ~V_but ~V_go ~V_it ~V_mine ~V_out ~V_should
~V_so ~V_with ~^_do ~^_on ~^_one ~about_$ ~after_V ~all_$ ~all_taken ~already_V ~am_going ~and_put
~another_V ~are_$ ~are_going ~as_a ~be_$ ~be_, ~be_? ~be_O ~c_off ~c_out ~d_K ~do_K ~for_those
~g_$ ~get_U ~get_from ~get_in ~get_the ~get_to ~go_. ~go_off ~gone_for ~gone_to ~had_a ~has_the
~have_no ~have_not ~have_we ~here_for ~how_c ~i_U ~i_let ~i_must ~i_put ~is_a ~is_her ~is_in
~it_like ~it_now ~it_or ~it_said ~like_S ~like_i ~me_. ~me_K ~me_like ~me_out ~me_that ~me_to
~n_K ~n_after ~n_be ~n_by ~n_that ~n_we ~not_c ~not_out ~off_for ~or_V ~our_V ~out_d ~out_to
~put_d ~say_V ~she_does ~since_U ~so_O ~some_V ~still_at ~take_K ~taken_their ~than_V ~than_n
~the_go ~their_V ~them_out ~there_in ~this_O ~this_d ~till_y ~to_? ~to_have ~up_$ ~up_to ~was_O
~was_it ~we_took ~what_goes ~who_can ~will_not ~will_the ~with_them ~would_like ~yet_V ~you_the
5 #expecting:false:most #heard1 #phrase:S2 #words3 <n:100> =add-dish:S2 =add-dish:all =ask-amount:most
=ask-next:some =ask-options:S0 =ask-safety:all =ask-safety:phrase =ask-shopping =ask-status:guess
=choose:all =correct:S0 =describe-roast:S1 =help:few =lack:most =note-guest =note-guest:guess
=note-guest:phrase =quiet =quiet:S0 =quiet:all =repeat:S2 =report-done:S0 =report-guests:few
=report-guests:most =report-not-done:frame =report-out:few =report-out:phrase =report-oven
=report-oven:S0 =report-reading:S0 =report-reading:few =report-started:S0 =report-started:S1
=report-started:all =report-trouble =report-trouble:S0 =running-behind =running-behind:phrase
=set-guests:all =set-serving-time:frame =set-timer:S0 =set-timer:some =set-units:S0 =skip-step
=watch:S0 =watch:frame =watch:some ?heard4:frame ?heard5:phrase appointment arriving be beautiful
beginning below bluetooth broke bubbling bung butter coat complete consider cookies crowd drained
egg fast fierce fine floor food football forever freeze game gas gin glasses goodness grandma
gravy hanging heat hungry instant-read job kill lard latter laws lower lucy make malt margarine
maria message metric mixed move nagging parsley picture pink pop probe processor pulled quantity
rare ray reheat roasting round ruin sam seats separator shallots shouting snow somewhere sour
start sticker stop straight table tailed told tractor type us vegan weights which yank yell
~,_if ~,_w ~._V ~K_K ~K_O ~K_V ~K_and ~K_be ~K_got ~K_we ~O_. ~O_after ~O_you ~P_she ~P_so
~P_to ~P_with ~S_S ~S_from ~S_in ~S_like ~S_ok ~U_at ~U_does ~U_from ~U_took ~V_before ~V_did
~V_do ~V_me ~V_some ~V_till ~V_too ~V_what ~^_U ~^_a ~^_n ~^_was ~^_with ~a_y ~after_we ~ago_$
~am_off ~and_S ~and_out ~are_in ~are_out ~as_of ~be_K ~be_an ~be_at ~been_S ~by_now ~c_O ~c_V
~c_it ~can_go ~d_not ~did_not ~do_, ~do_be ~do_i ~done_U ~first_K ~for_it ~goes_in ~going_O
~have_c ~have_it ~he_got ~hers_K ~him_. ~how_should ~if_it ~if_that ~if_there ~is_now ~is_to
~it_K ~it_and ~me_at ~n_$ ~n_but ~n_like ~n_off ~n_tell ~no_, ~not_S ~not_at ~of_S ~of_his
~of_us ~off_K ~one_you ~or_S ~or_what ~out_, ~so_V ~so_go ~take_them ~tell_me ~tell_you ~than_K
~that_, ~the_K ~the_first ~them_off ~them_on ~they_are ~this_S ~to_K ~to_U ~to_V ~to_g ~to_it
~too_. ~up_as ~up_now ~us_d ~us_for ~us_not ~w_of ~we_put ~we_said ~were_O ~what_did ~when_is
~which_K ~who_does ~will_an ~with_V ~would_S ~you_. ~you_?
6 #expecting:false:all #phrase:most <n:25> <t:12> =add-dish =add-dish:some =add-hands =add-hands:frame
=affirm:all =ask-how:S0 =ask-how:all =ask-options =ask-options:all =ask-shopping:some =ask-status:S0
=ask-time-left:few =ask-time-left:some =cancel-timer =cancel-timer:all =cancel-timer:phrase
=choose:some =drop-dish:frame =have:most =help:S0 =lack:S0 =pause =quiet:S1 =report-done:S1
=report-oven:S2 =report-oven:all =report-oven:most =report-setup:S1 =report-setup:some =report-started:most
=report-started:some =report-trouble:S1 =running-behind:few =set-guests:frame =shift-serving:few
=skip-step:all ? ?heard4:phrase ?heard6 ago behind bigger bill boys bums celiac celsius chopped
clue counting cracking crunchy dauphinoise degrees double earlier fever fingers fit flame forgotten
glass groceries hats hole horseradish ingredients keeping later leave-in letting little main
manage mass match messages na need negative netted niece nor onto overview packet ping planned
plenty pounds reaching roar sense shed should slices spinach supposed tablets tent thermometer
tight town train trussing trust twine typo very wake whacked whisk wire wireless ~,_before
~,_for ~,_from ~,_gone ~,_it ~,_this ~,_what ~._O ~._why ~?_S ~K_! ~K_are ~K_goes ~K_no ~K_now
~K_take ~O_for ~O_goes ~O_t ~O_this ~P_P ~S_on ~S_put ~S_says ~U_a ~U_so ~U_than ~U_what ~V_already
~V_could ~V_have ~V_second ~V_them ~^_c ~^_can ~^_going ~^_ok ~^_there ~ago_and ~all_? ~all_we
~am_a ~am_in ~and_c ~and_when ~are_U ~are_c ~as_U ~as_you ~be_my ~before_. ~c_d ~c_do ~c_like
~c_t ~c_then ~can_K ~can_c ~could_K ~could_i ~d_ago ~d_are ~do_c ~does_K ~done_V ~down_is ~down_with
~first_U ~for_S ~for_another ~from_n ~get_K ~get_for ~go_O ~go_from ~going_for ~gone_$ ~gone_U
~got_here ~got_that ~have_said ~have_taken ~here_U ~how_V ~how_am ~how_i ~how_the ~i_be ~i_go
~in_, ~in_. ~is_had ~is_how ~it_all ~it_as ~it_d ~it_off ~me_c ~me_so ~more_V ~n_have ~n_who
~no_U ~no_V ~of_now ~of_those ~of_w ~off_and ~ok_the ~out_what ~out_with ~so_S ~still_K ~t_.
~t_V ~tell_when ~that_d ~that_on ~them_have ~then_U ~there_and ~there_are ~to_this ~too_, ~w_O
~was_c ~we_do ~went_up ~were_V ~what_have ~what_should ~what_to ~when_should ~where_did ~which_V
~why_can ~will_i ~will_it ~will_we ~would_U ~yes_or
7 #S3 #phrase:S0 =add-dish:few =add-dish:phrase =ask-how:most =ask-next:few =ask-options:to-choice
=ask-plan:phrase =ask-shopping:most =ask-temperature =cancel-timer:S0 =cook-away =cook-away:some
=deny:S0 =help =help:frame =quiet:few =repeat:phrase =report-guests:some =report-oven:S3 =report-oven:to-reading
=report-setup:S0 =report-setup:phrase =report-started:phrase =set-doneness:all =set-method:all
=set-method:few =set-method:frame =set-timer:phrase =set-units:all =set-units:most =set-units:phrase
=set-units:some =shift-serving:S0 adults alert amazing amount aunt bean beep ben bet bits blast
bones bother car care carrying cloves cold commands completely cooked cream dave dead dine
dripping enamel everything faffing fan fell fella ferry few frenched frozen grandmother happens
having heading herself hit include instead kept kevin kindly lent market meaning mixer murder
near nowhere oiled ok onions ounces peeled pet pretend reverse roaster root roughly rubbed
shoes shops shove shoved slow so sorry stick stove swap system theo think tops turns vegetable
volunteered warming whisking wish ~,_S ~,_be ~,_some ~,_take ~,_was ~._. ~K_do ~K_here ~K_n
~K_when ~S_has ~S_n ~S_you ~U_are ~U_it ~V_by ~V_d ~V_still ~V_when ~^_K ~^_get ~^_in ~^_put
~^_would ~a_c ~about_that ~am_V ~am_after ~am_all ~and_now ~and_there ~are_after ~are_they
~at_g ~before_d ~before_it ~by_n ~c_because ~c_or ~can_do ~can_it ~can_my ~can_not ~d_$ ~d_can
~d_now ~do_now ~do_the ~do_with ~done_$ ~down_n ~first_$ ~first_n ~from_my ~g_. ~get_O ~get_V
~go_K ~go_in ~got_V ~got_d ~got_in ~got_me ~had_c ~has_it ~has_me ~has_t ~have_$ ~have_put
~how_it ~in_y ~is_here ~is_since ~it_up ~like_, ~like_V ~like_the ~me_a ~more_are ~more_n ~n_go
~never_going ~no_not ~no_second ~now_and ~now_n ~now_we ~off_in ~off_my ~ok_V ~ok_at ~ok_to
~on_with ~one_says ~or_n ~said_, ~say_a ~should_be ~should_i ~so_K ~so_U ~so_the ~so_you ~still_c
~taken_the ~that_$ ~the_c ~the_d ~them_, ~they_do ~this_. ~this_V ~till_K ~to_do ~to_that ~to_you
~up_? ~up_the ~us_V ~us_get ~us_have ~w_V ~went_, ~what_a ~what_am ~what_will ~when_will ~will_V
~will_that ~with_a ~you_O
8 <g> =add-dish:S0 =add-hands:all =add-hands:few =add-hands:some =ask-guests:guess =ask-guests:phrase
=ask-safety =ask-shopping:phrase =ask-substitute:S0 =ask-substitute:few =ask-substitute:some
=ask-substitute:to-step =ask-temperature:S0 =ask-temperature:all =cancel-timer:few =choose:frame
=correct:to-confirmation =deny:to-confirmation =drop-dish:few =have =have:phrase =lack:phrase
=note-guest:all =pause:S0 =repeat:few =report-guests:guess =report-out:S0 =report-oven:phrase
=report-setup:most =report-trouble:some =running-behind:S0 =set-guests:S2 =set-method =set-method:S0
=set-method:S1 =set-method:most =set-method:phrase =set-serving-time:all =skip-step:S2 =skip-step:to-step
=undo:all =watch =watch:all =watch:phrase ?heard5:frame ?heard6:frame ?heard6:phrase accidentally
alex also assisted auntie beef begin blank bought braised brown brussels carrots carving clear
cross dairy decided delete delivery dental dialled ditch drink ear everybody fetch flatmate
forget friend garlic good halal halfway happen hearing herb internal misheard much mute parsnips
per poked powder reckons resting rolls rope salting scissors sea shows sing son sounded squash
steeping step taken talking their thick topped vegetables wanting weird whether won ya yoke
yusuf ~,_as ~,_they ~,_yes ~._$ ~._d ~._n ~._the ~._w ~K_S ~K_does ~K_it ~K_ok ~K_should ~K_yes
~O_another ~O_over ~O_w ~S_does ~S_now ~S_so ~U_that ~U_who ~V_and ~V_as ~V_going ~V_says ~V_theirs
~^_, ~^_could ~^_done ~^_now ~^_says ~^_which ~about_V ~about_the ~ago_. ~ago_it ~all_U ~am_not
~an_V ~and_my ~another_d ~are_already ~are_down ~are_not ~as_is ~as_it ~at_me ~be_for ~been_n
~before_we ~but_the ~c_down ~c_not ~could_we ~could_you ~done_by ~for_them ~go_$ ~gone_d ~got_U
~got_it ~had_the ~has_n ~has_no ~have_already ~have_n ~here_and ~here_to ~him_to ~his_V ~i_should
~i_was ~in_i ~in_when ~into_the ~is_there ~is_too ~it_first ~it_ok ~me_in ~my_P ~n_. ~n_because
~n_if ~not_, ~not_going ~not_got ~not_take ~now_S ~of_K ~of_U ~of_what ~off_n ~on_a ~on_g ~out_already
~out_it ~over_the ~put_K ~put_the ~second_from ~second_it ~since_d ~so_he ~take_this ~then_O
~there_. ~this_one ~to_put ~us_go ~was_U ~we_will ~what_? ~where_V ~with_you ~would_be ~yes_K
~you_a ~you_c ~you_put ~you_said
9 #expecting:true:all . =add-hands:S0 =ask-amount:S0 =ask-amount:S2 =ask-guests =ask-guests:all
=ask-next:S0 =ask-plan:all =ask-time-left:S3 =cook-away:S1 =cook-away:phrase =deny:to-choice
=describe-roast:some =drop-dish:S1 =drop-dish:most =have:S0 =have:all =note-guest:frame =repeat:most
=report-done:most =report-guests =report-out:all =report-setup =report-trouble:phrase =resume:S1
=running-behind:frame =set-guests:to-confirmation =set-method:some =set-serving-time:S0 =set-units
=shift-serving:S2 =skip-step:most =watch:most ?heard7 ?heard8 ?heard8:phrase ?talk0 ?talk1
air alongside alternatives anyway backs bare beeped black boil bone business buttered butternut
convection cooler cooling counter cup dinner display doorbell driving electric element enough
everyone fallen feed flag freezer fussy gratin head hendersons hens holiday hotter house ideas
immune joint making neither nuts overcooked pale peace peas persons pipe plate plates position
possibilities postpone preheating properly puddings pure remaining rescue rising roped salty
same show showed shower sink slipped solid soon sooner sorted sound split spoons steps thank
tiny toddlers touches trick trimmed turned worry ye ~,_how ~._how ~K_? ~K_am ~K_as ~K_can ~K_go
~K_how ~K_w ~K_will ~O_up ~P_. ~P_U ~P_on ~P_put ~S_and ~S_here ~S_your ~U_c ~U_of ~U_went
~V_. ~V_c ~^_did ~^_since ~^_took ~^_us ~^_were ~a_S ~a_w ~after_it ~all_here ~all_too ~am_on
~and_U ~are_off ~are_on ~are_still ~as_my ~at_? ~at_t ~be_on ~but_why ~by_U ~c_before ~c_how
~c_n ~c_over ~c_this ~c_we ~c_when ~can_be ~d_before ~d_c ~d_more ~d_off ~did_that ~done_.
~first_then ~from_now ~go_? ~goes_$ ~got_S ~has_to ~have_S ~have_some ~have_theirs ~here_.
~in_V ~is_an ~it_O ~it_went ~it_yet ~like_you ~me_V ~me_and ~me_the ~mine_is ~must_i ~my_in
~n_more ~n_on ~no_no ~no_thanks ~not_K ~not_any ~not_be ~not_have ~not_tell ~now_. ~now_till
~off_. ~off_now ~ok_$ ~on_$ ~on_let ~one_V ~or_no ~our_S ~out_they ~over_it ~say_. ~she_goes
~she_is ~so_do ~some_U ~still_n ~t_now ~that_yet ~then_$ ~there_another ~there_is ~this_? ~till_we
~to_take ~up_. ~up_U ~up_for ~up_i ~w_K ~was_my ~we_be ~we_c ~what_O ~what_all ~what_for ~who_are
~why_V ~with_S ~with_their ~would_c ~you_be ~you_when
10 #phrase:all #words1 <t:25> =add-hands:phrase =ask-safety:most =ask-status:phrase =ask-temperature:most
=choose:to-choice =deny:few =deny:to-step =describe-roast:to-roast =pause:S2 =report-done:guess
=report-guests:S0 =report-guests:phrase =report-not-done:S1 =report-setup:all =report-setup:frame
=report-trouble:most =running-behind:most =skip-step:phrase =undo:phrase ?heard7:phrase ?heard8:guess
allergies arrive beans beg behaving being bench bumped cable calibrate climbing coeliac collect
completed current drops eta evening fahrenheit forerib free ghee granddad heads hop hope huh
hush invite itself joining knocked know lend lie longer loosely lowest lumps man meal mint
minutes mister moment nudge offered overdone peeler pressed push putting record rental replace
resume rib risen rock rubbish salad sauces sauna scrap scraping short sizzling skipped slicing
speed squeaky stabbed stuff tail talk teenagers temple test trimming turning uncovered unless
vegetarian waiting walked wind worried worse wrote yorkshire ~?_$ ~K_first ~O_me ~O_the ~O_them
~P_are ~S_it ~S_or ~S_that ~U_be ~U_hers ~U_if ~U_like ~U_will ~V_say ~V_took ~V_will ~^_gone
~^_has ~^_me ~^_not ~after_U ~after_a ~after_d ~all_V ~already_, ~am_O ~are_up ~as_we ~be_U
~before_i ~before_the ~but_not ~d_from ~d_n ~did_i ~does_n ~done_for ~from_me ~going_as ~going_in
~got_the ~got_to ~had_no ~have_any ~have_her ~her_at ~here_it ~how_on ~i_K ~in_her ~is_y ~it_has
~it_still ~let_us ~like_my ~me_$ ~me_O ~me_till ~n_is ~n_too ~no_n ~not_U ~not_in ~not_now
~of_d ~ok_, ~on_? ~on_second ~on_till ~on_yet ~or_a ~put_on ~second_U ~shall_be ~she_can ~should_U
~should_it ~so_n ~so_why ~still_O ~t_on ~that_should ~theirs_at ~them_down ~there_will ~they_said
~they_will ~to_P ~took_her ~up_like ~us_in ~was_out ~we_$ ~we_like ~we_must ~we_up ~we_would
~what_U ~what_do ~what_now ~when_V ~when_d ~will_K ~with_$ ~with_P ~with_d ~would_the ~yes_it
~you_got ~you_let ~you_were
11 =ask-guests:most =ask-next:all =ask-options:few =ask-plan =ask-plan:guess =ask-substitute:S1
=cancel-timer:S1 =cancel-timer:some =report-not-done:guess =resume:S2 =set-guests:phrase =set-method:guess
=set-units:S2 =set-units:frame =skip-step:S1 =start-over:few =undo:S0 =watch:guess ?heard7:frame
?heard8:frame aiming alternative baste bit blender board bringing brining brother browning
cabbage conked cremated crust dial dog dropping faff floss forgot forward fresh fuse giving
gratins happening helper helping himself imperial jump kilos lactose ladies least loin low
mark miles misread miss motorway napkins neighbors obviously others overnight overwhelmed packed
planning plated poke popping practically reading rests ribs ringing saying sear sharp sitting
skillet skipping strained string telling thin thought throw timeline topside under unpause
using ~,_. ~,_am ~,_are ~._and ~K_off ~K_our ~O_can ~O_do ~P_get ~P_he ~P_will ~S_this ~U_any
~U_has ~U_said ~V_? ~V_am ~V_be ~V_got ~V_here ~V_like ~V_our ~V_take ~V_why ~^_down ~^_from
~^_never ~^_some ~^_t ~after_n ~all_. ~all_going ~am_K ~and_can ~and_took ~and_what ~any_S
~at_that ~before_? ~but_V ~d_after ~d_already ~d_is ~d_or ~do_. ~do_? ~do_us ~done_in ~down_a
~going_V ~going_to ~how_K ~i_on ~if_i ~in_K ~into_it ~is_after ~is_ok ~is_she ~is_with ~me_for
~me_if ~more_$ ~n_about ~no_it ~not_say ~of_it ~off_so ~off_the ~ok_P ~on_d ~on_then ~should_have
~so_, ~so_no ~so_take ~so_they ~some_of ~them_are ~those_$ ~to_S ~we_? ~were_not ~what_if ~what_must
~with_n ~would_go ~would_say ~yet_. ~you_S ~you_tell
12 #words2 =ask-next:guess =ask-options:phrase =ask-safety:some =ask-temperature:S2 =cancel-timer:frame
=cook-away:S2 =deny:guess =drop-dish:all =drop-dish:guess =note-guest:to-doneness =note-guest:to-guests
=quiet:some =report-not-done:to-step =report-setup:S3 =report-setup:guess =report-started:S2
=report-trouble:all =set-guests:most =set-units:guess =shift-serving:guess =skip-step:frame
beeping bottom brb browned choices clock counts dangerous delay edge edges electricity f father
fyi gang headcount hob including inside instruction jo killing lifted lose luck mhm mind mouths
mustard onion overshot own parchment peek pending places pot prepone proper ran roaring schedule
scratch silence sleeves slid slowly steady tenderloin total touching walking whisht wipe working
worktop wrapped yorkshires ~,_d ~,_of ~?_my ~K_but ~K_down ~K_her ~K_like ~K_not ~K_this ~K_yet
~O_went ~P_can ~S_V ~S_the ~S_with ~U_K ~U_but ~U_have ~V_! ~V_his ~V_not ~V_one ~^_another
~^_any ~^_at ~^_before ~^_got ~^_should ~^_y ~all_K ~already_the ~am_c ~be_gone ~because_the
~but_i ~c_. ~c_me ~c_with ~can_$ ~can_V ~can_we ~do_$ ~do_about ~down_at ~for_is ~for_t ~g_now
~go_with ~have_got ~he_c ~her_O ~hers_, ~him_V ~i_take ~in_some ~is_P ~is_more ~is_no ~it_.
~it_have ~it_how ~like_a ~me_? ~me_how ~me_my ~me_some ~no_? ~not_. ~not_O ~not_before ~not_done
~of_that ~on_my ~on_now ~out_do ~out_when ~say_? ~says_U ~says_it ~says_n ~should_he ~so_yes
~t_, ~taken_it ~taken_out ~that_off ~them_. ~they_c ~to_go ~to_t ~up_and ~up_n ~w_not ~we_shall
~we_take ~what_S ~what_were ~when_she ~would_n ~y_at
13 =ask-status:few =ask-temperature:frame =ask-why:frame =quiet:phrase =report-setup:few =set-units:S1
=set-units:few =shift-serving:some along app aunties bailed buy buzz cast checked chemo company
continue crack crept drowning eat eye frenching girl girlfriend hate heavens herbs intolerant
kev law leaving leftovers mad missed mistake month notify oil opened picked range rather reason
reminders required reset roots scrubbed sec shout smelling speak stage stepping store tented
themselves throat ticked wants weak wise wrong ~,_because ~,_mine ~,_so ~,_will ~._what ~K_d
~K_or ~O_all ~O_that ~P_took ~P_who ~S_for ~U_up ~U_we ~V_t ~V_their ~after_all ~all_over ~all_they
~already_K ~am_d ~any_K ~are_here ~be_in ~before_, ~c_will ~d_U ~d_for ~do_we ~does_that ~from_V
~from_this ~get_here ~has_$ ~is_. ~is_U ~it_down ~it_go ~it_should ~it_so ~like_to ~must_V
~n_in ~no_$ ~not_on ~now_it ~now_what ~ok_what ~on_me ~on_or ~over_to ~put_a ~so_i ~than_i
~that_from ~that_went ~this_out ~this_up ~to_my ~up_by ~up_from ~us_O ~us_a ~us_do ~us_now
~we_go ~went_in ~yes_do ~yes_so ~yet_i ~yet_to ~you_no ~you_what
14 #frame:few =add-hands:S2 =ask-guests:S0 =ask-how:S2 =ask-how:frame =ask-options:guess =ask-plan:frame
=ask-plan:most =choose:S3 =help:S2 =help:phrase =pause:phrase =report-guests:S3 =report-setup:S2
=running-behind:S2 =undo:some afresh aim asking bang beauty begun blade breath brought changed
control dentist doneness em extra fat frail fridge grams grated guest hang keeps killed kip
label lads marks menu mo muffin nipping nora nudged parked pepper phone pouring prime quick
real remind removed rid righto rosemary sage setting softening squeamish stands suggest tap
thinking thyme timers tongs tripped un veggie whipped ~._K ~K_have ~K_so ~O_d ~P_do ~P_down
~U_done ~V_after ~V_if ~^_for ~^_g ~^_still ~a_n ~all_of ~am_here ~any_other ~be_done ~because_it
~been_put ~c_S ~d_. ~down_d ~for_? ~goes_over ~gone_, ~gone_from ~has_V ~have_a ~here_now ~how_can
~how_we ~i_had ~in_all ~is_and ~is_w ~it_to ~me_U ~n_it ~n_there ~n_with ~no_how ~not_put ~now_t
~out_since ~said_$ ~say_it ~says_t ~says_w ~second_, ~t_U ~take_$ ~that_can ~that_n ~then_a
~till_the ~to_no ~us_K ~us_n ~w_with ~what_$ ~where_do ~where_i ~why_am ~why_so ~will_go ~will_you
~y_.
15 =ask-plan:S2 =ask-substitute:guess =ask-why:some =cook-away:all =cook-away:few =note-guest:S3
=report-out:frame =undo:guess bairns batter boneless carved cauliflower chopping cope exactly
eyes feeding gave grace hon hood juice kids lowered needed nip olive person pete right salted
screaming seasoned shellfish something spot strike stuck supper switched tie tied twins wine
~,_$ ~K_done ~K_i ~U_d ~V_hers ~V_how ~V_would ~^_all ~after_$ ~after_i ~already_n ~are_a ~c_i
~does_V ~does_this ~down_c ~for_this ~for_to ~go_for ~has_U ~i_never ~is_when ~it_do ~it_the
~it_y ~it_you ~like_we ~me_d ~n_d ~n_has ~n_i ~n_so ~not_? ~not_gone ~ok_i ~on_. ~on_to ~says_to
~since_c ~so_put ~that_i ~that_was ~there_V ~there_a ~up_when ~up_where ~we_at ~we_can ~we_going
~when_can ~when_do ~why_does ~why_must ~yes_go ~you_K
16 =add-hands:S1 =ask-options:some =correct:all =correct:guess =deny:all =lack:all =report-guests:all
=report-started:to-step allergy almost beast chuck cooker crumble dare great ill looks makes
mash months needle peeling pulling rise serve simmering story suggestions transplant trussed
voted washed while works ~,_by ~._i ~K_if ~U_how ~^_have ~^_off ~^_to ~all_n ~all_that ~are_n
~at_$ ~at_all ~at_what ~be_d ~do_in ~for_him ~for_how ~for_now ~going_up ~gone_V ~i_S ~is_already
~is_my ~like_it ~me_what ~n_this ~n_where ~off_it ~still_$ ~this_at ~w_. ~was_that ~we_on ~what_does
~what_i ~where_should ~why_K ~why_n ~yes_$ ~you_for
17 =ask-amount:guess =ask-how:guess =ask-plan:S1 =ask-plan:some =ask-safety:S0 =ask-safety:frame
=help:most =report-trouble:frame =set-timer:few =set-timer:frame =watch:S1 ages bloody boned
change correct fed final hovering ignore jus latest neighbours part preheat rosy seared such
texted trivet truss ~!_! ~,_thanks ~,_would ~K_already ~P_at ~S_i ~V_about ~am_out ~by_c ~down_yet
~for_P ~for_us ~n_still ~not_what ~off_to ~on_for ~other_O ~out_yet ~us_. ~with_my
18 <t:80> =ask-time-left:guess =report-not-done:all blackout boots clean countdown horses less
pardon passed searing tenderised tough tying warm ~,_too ~K_till ~O_but ~^_had ~her_out ~how_does
~is_off ~it_for ~n_my ~not_i ~out_now ~till_i ~w_all ~was_not ~we_still ~which_O
19 =pause:some boyfriend explain far kosher stock things tick winning ~P_was ~S_out ~do_that
~i_say ~in_yet ~me_of ~no_do ~so_$ ~so_that
20 =ask-next:S2 =report-not-done:to-confirmation flu invited pregnant reckon teaspoons tins
wee ~V_into ~and_on ~c_now ~d_too ~have_i ~not_we ~where_we ~why_that
21 =affirm:most =lack:S3 duty wife ~that_the ~took_it
22 =ask-options:S1 =resume:guess =resume:most ~will_take
23 ~are_S ~why_not
24 =affirm:guess =ask-status:most =resume:all
25 =start-over:S0 ~yes_that
27 =ask-why:few`;

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
slices slicing slid slide slimy slipped slipper slipping slips slow slower slowly small smashing
smeared smell smelling smells smoke smokes smoking smoky snow so sock sodium sofa soft softening
soggy sold solid some somebody somehow someone something somewhere son soon sooner soonest
sorry sort sorted soufflé sound sounded sounds soup sour sous space spare spark speak speaking
special speckled speed spell spices spilling spinach splashed split splitting spoils spoke
spoon spoons spot spots spreading sprigs sprout sprouts spud squash squeaky squeamish squeeze
stabbed stage stairs stale stand standing stands staring start started starting starts starving
state station status stay staying stays steady steak steam steamed steaming steeping step stepping
steps steve stick sticker still stir stirring stitches stock stone stop stopped stopwatch store
story stove straight strained straining strait strays streaming street stretch strike string
strip stroller strong struggling strung stuck stuff stuffed sub substitute such sugar suggest
suggestion suggestions suit sulk summarise sunflower sunk supermarket superstition superstitious
supper support suppose supposed sure surely suspend swap swear swears sweet swell swelling
swells swimming switch switched swore system table tablespoon tablet tablets tackle tad tail
tailed take taken takes taking talk talked talking tap target tariq tasks taste tasted tastes
tea teach team tearing tears teaspoon teaspoons technique teddy teenagers teeth telephoned
tell telling telly temperature temple tenderised tenderloin tent tented tenting tents test
text texted than thank thanks that thaw the their theirs them themselves then theo there thereabouts
thermometer these they thick thicken thickened thickens thickest thin thing things think thinking
third this those though thought thoughts thread threw throat through throw thumb thyme tick
ticked ticking ticks tidying tie tied tight til tiles till tilly tim time timeline timer timers
times timetable timing timings tin tinfoil tinkle tins tiny tip tips tit to today toddler toddlers
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
