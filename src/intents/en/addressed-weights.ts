/** Learnt from the rules half of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import type { Weights } from '../addressed.ts';

/** A weight in twentieths, then the cues that have it. */
const learnt = `
-26 fair
-23 =courtesy =courtesy:phrase
-22 him pass
-21 <y> =acknowledge =acknowledge:phrase =report-reading:S2 ~is_for ~with_U
-20 ~O_had ~for_U
-19 dishwasher mine parking wedding ~V_y ~not_that
-18 #words0 <n:200> =emergency:frame =report-trouble:few =set-doneness:S1 =set-serving-time:S2
fancy quid school ~^_$ ~get_down ~you_have
-17 =courtesy:S1 =courtesy:some =resume:some ?talk7 apparently channel film left loo pizza
pudding scored ~O_has ~O_we ~i_$ ~more_O ~n_U ~n_all ~n_then ~or_not ~some_more ~that_will
~was_i
-16 #words12 <n:40> =emergency:few ?talk6 ladder number other phoenix roll talks yours ~,_you
~U_U ~V_him ~^_her ~at_K ~like_mine ~says_d ~you_get
-15 #heard0 =start-over:S1 drink hair lovely moved queue remember remove shot shuts sit spain
wash ~,_a ~,_their ~K_never ~K_y ~O_says ~any_O ~have_another ~n_can ~n_was ~on_O ~said_no
~to_him ~yes_, ~you_do ~you_n
-14 #U3 #expecting:true:most #frame:S3 ?talk5 barbecue bye caravan cats delicious ends every
feeling goose half home hot mean mouth or road served stir you ~K_P ~K_into ~K_say ~U_you ~^_as
~^_shall ~are_O ~may_$ ~not_it ~on_that ~says_here ~shall_we ~who_V ~with_O ~you_will ~your_O
-13 #O3 =acknowledge:S0 =choose:S1 =set-serving-time:few ?talk8 bad bathroom beer died doctor
door due even front garden hand he morning neighbour paid restaurant sugar swimming these wanted
year ~K_you ~U_in ~U_there ~U_y ~V_or ~V_she ~^_these ~d_and ~he_O ~he_is ~her_K ~i_like ~let_it
~my_O ~n_the ~no_i ~on_U ~there_yet ~they_O ~those_K ~till_c ~where_did ~will_U ~you_are
-12 #expecting:false:few =deny:some =emergency:all ?heard0 ?heard0:phrase argument baby because
believe birth bus carvery fourth gorgeous grandad hall hello lights may never owe packet prep
smells starts touch turn wall ~U_had ~^_and ~all_in ~at_V ~c_n ~c_the ~did_you ~does_O ~had_K
~he_put ~hers_at ~i_get ~like_$ ~mine_V ~n_P ~off_V ~our_O ~put_that ~say_K ~she_says ~that_O
~the_other ~these_K ~to_a ~us_the ~yes_i ~you_on ~your_V
-11 =acknowledge:few =affirm:some =report-reading:S3 =set-guests:frame =shift-serving:S2 chairs
charge corkscrew else fingers fire leo pages seat sides small sold somebody through worth your
~,_have ~,_here ~,_let ~K_a ~K_would ~O_, ~O_are ~O_n ~O_now ~O_they ~V_was ~^_second ~^_so
~all_done ~am_done ~are_this ~c_y ~could_V ~do_if ~got_$ ~has_a ~is_his ~it_already ~n_O ~n_not
~n_or ~n_would ~say_to ~second_V ~that_U ~that_it ~they_V ~this_, ~was_a ~was_d ~we_U ~your_K
~your_S
-10 #O1 =drop-dish:some =quiet:frame =report-not-done:S1 ?heard0:frame again booked boss break
college crispy did drawer dusted each easter handle hey hole judges lived lot meter pick pink
pressure recipe ruined she shoes shoulder sister smoking sun taxi week yourself ~,_now ~,_who
~K_over ~K_were ~O_have ~O_so ~O_up ~P_and ~S_was ~U_i ~V_are ~V_is ~V_my ~^_their ~and_got
~could_be ~did_$ ~get_your ~going_off ~gone_up ~got_n ~he_can ~her_P ~in_c ~is_your ~it_a ~it_c
~it_on ~it_out ~me_, ~me_up ~n_for ~n_over ~never_U ~never_V ~not_you ~on_, ~other_V ~out_and
~says_$ ~says_take ~she_V ~should_get ~so_what ~take_V ~their_O ~there_$ ~they_had ~up_in ~was_at
~where_is ~why_is ~you_$ ~you_like ~you_should
-9 =ask-why:S1 =set-serving-time:S1 bed boys cost drive flight found get goes hitting hold
ice line mum question room season taking tea telling there were whatever ~,_is ~O_$ ~O_K ~O_O
~O_S ~O_is ~O_out ~P_K ~U_before ~U_we ~V_O ~V_but ~V_there ~V_too ~^_he ~^_they ~are_d ~c_to
~does_a ~done_and ~down_, ~first_V ~for_V ~got_it ~have_we ~have_you ~he_has ~is_P ~is_all
~is_this ~it_by ~it_goes ~me_on ~no_O ~or_n ~out_V ~out_in ~put_me ~second_U ~so_U ~thanks_$
~the_O ~to_this ~when_i ~why_do ~yes_P
-8 #O2 =ask-amount:S1 =ask-amount:all =correct:most =lack:S1 =report-reading:to-reading =report-started:few
=set-guests:S2 ?talk4 answer beautifully broken cake course cousins funny hungry messages money
oh pretend quite rice sirloin spell spoon thousand weight ~,_no ~K_from ~O_say ~P_has ~P_have
~P_i ~P_let ~S_in ~U_O ~U_c ~U_to ~V_does ~V_us ~V_your ~^_his ~^_mine ~am_n ~and_in ~and_we
~can_i ~d_at ~do_V ~do_you ~for_you ~got_U ~her_$ ~his_O ~i_will ~in_it ~is_$ ~is_K ~is_down
~is_it ~like_K ~like_U ~n_when ~on_P ~one_has ~over_there ~she_U ~so_it ~still_U ~there_any
~they_put ~too_K ~we_should ~were_n ~who_was ~you_O ~you_would
-7 #frame:S1 #frame:S2 <t:200> =choose:most any boiling breaking carve caught chef choir cover
cuts day days duck forward her homework husband knife like motorway news nothing rested shirt
side sure takes team thanks third time understand without ~,_never ~K_did ~K_that ~O_V ~O_from
~O_to ~P_$ ~P_V ~P_this ~P_would ~V_U ~V_who ~^_am ~^_first ~^_go ~^_the ~an_K ~and_c ~are_at
~are_the ~before_n ~do_O ~done_, ~for_your ~go_and ~going_$ ~gone_off ~have_done ~have_to ~hers_V
~i_P ~i_can ~i_could ~i_said ~in_for ~is_t ~is_yours ~it_took ~me_n ~not_n ~of_V ~on_his ~say_when
~she_said ~tell_P ~that_P ~to_be ~to_us ~w_$ ~we_went ~would_K ~would_V ~y_$ ~you_, ~you_say
~yours_$ ~yours_now
-6 #frame:most =deny:frame =report-trouble:frame =resume:few =start-over:most across ate call
calls car coming cool delayed goals grandma grandmother high kettle late loud machine move
music next page percent preheated press roasted shade song theirs till whole why window wonder
yes ~,_go ~,_my ~,_not ~,_she ~K_still ~K_there ~K_to ~K_was ~O_a ~P_never ~U_P ~U_is ~U_w
~V_as ~V_this ~V_those ~^_are ~^_that ~^_why ~a_O ~am_U ~am_still ~and_i ~are_these ~at_U ~at_it
~be_a ~been_K ~but_n ~by_the ~d_, ~do_not ~for_n ~for_that ~for_the ~get_it ~get_there ~got_more
~have_K ~have_this ~her_S ~him_$ ~how_to ~i_U ~if_she ~in_$ ~in_O ~in_her ~is_d ~it_, ~my_U
~n_already ~n_n ~not_do ~on_and ~on_your ~said_she ~says_the ~she_would ~still_on ~t_in ~take_it
~them_$ ~then_$ ~up_V ~we_had ~were_at ~which_U ~would_have ~would_you ~yours_is
-5 <t:40> =ask-guests:S1 =ask-safety:frame =ask-time-left:most =choose:few =emergency:S2 =pause:S1
=pause:frame =repeat:frame =report-out:S1 =resume:S0 alarm allergic fat first folks for french
lift look manager mate meeting people picking plate raining salt salty save says score seen
shop sofa spelling sprouts starving toast turkey watch work ~,_S ~,_i ~,_take ~,_that ~K_your
~O_down ~O_said ~U_$ ~U_all ~U_at ~U_this ~^_here ~^_no ~^_she ~a_K ~about_to ~and_a ~and_he
~and_some ~are_all ~are_you ~be_V ~did_that ~did_the ~does_your ~done_the ~for_my ~has_been
~he_K ~he_V ~him_at ~his_U ~in_d ~in_our ~in_since ~in_your ~n_c ~not_c ~not_there ~of_the
~on_in ~on_this ~out_, ~put_your ~said_the ~second_O ~she_has ~take_a ~tell_her ~the_P ~the_S
~they_get ~too_U ~was_like ~will_do ~your_P
-4 #expecting:true:few #frame:all #phrase:few <w> =affirm:S1 =ask-guests:some =ask-safety:most
=ask-status:all =ask-why:all =ask-why:frame =ask-why:most =correct:some =note-guest:S2 =repeat:S1
=report-done:to-step =report-not-done:some =report-reading:S1 =report-started:frame =set-doneness:most
?heard4:frame ?heard5:frame ahead appointment better blue boat broke called cent christmas
coat cut does dropped dryer foil give hook hotel jumper match myself new point prices put quiet
reads remote run second shoe size something stone they tumble up was white years zip ~K_or
~O_U ~O_it ~P_in ~S_$ ~U_his ~U_off ~V_at ~V_for ~V_off ~^_O ~^_of ~after_K ~an_O ~an_U ~and_V
~any_more ~at_c ~be_K ~c_and ~do_it ~for_c ~go_, ~have_gone ~is_mine ~is_n ~is_that ~it_over
~it_says ~it_with ~let_me ~of_your ~off_K ~out_at ~put_it ~say_$ ~second_K ~since_n ~that_K
~the_first ~they_K ~to_the ~w_, ~what_K ~when_does ~with_K ~you_take
-3 #P1 #words7 #words8 <n:12> <n:300> <t:100> =ask-how:phrase =ask-how:some =ask-status:frame
=deny:S1 =note-guest:frame =report-not-done:phrase =report-trouble:S2 =resume =set-doneness:few
=set-doneness:to-doneness =set-guests:all =start-over:phrase =start-over:some =undo:frame ?heard2:phrase
and bag bins birthday bless capital club cooking drop eats feet gone grill heating his if knock
mummy nana needs no pat peru raw rubbish same sauce shift sign slow still tom too top town
~,_U ~,_all ~,_and ~,_c ~K_U ~K_in ~K_on ~K_says ~O_off ~O_with ~P_it ~U_a ~U_out ~U_would
~V_S ~^_does ~^_our ~^_tell ~^_too ~^_your ~am_i ~been_in ~by_O ~c_with ~does_the ~for_O ~for_me
~gone_O ~gone_in ~had_n ~has_got ~have_some ~he_said ~how_do ~how_is ~i_O ~i_did ~i_do ~if_that
~in_these ~into_the ~is_about ~is_going ~is_out ~is_was ~mine_$ ~must_be ~n_and ~not_$ ~now_it
~of_them ~or_K ~put_in ~take_the ~take_your ~that_is ~that_one ~the_V ~they_were ~those_O ~to_n
~was_c ~was_n ~was_t ~we_were ~what_V ~when_the ~will_V ~y_at ~you_put
-2 #expecting:true:some =add-hands:frame =affirm:few =ask-amount =ask-amount:phrase =ask-how:most
=ask-next:S2 =ask-time-left:frame =drop-dish:S0 =note-guest:most =quiet:some =report-oven:S1
=resume:phrase =set-serving-time:to-serving-time ?heard6:frame a alone another book but butcher
button chair coast cross dish done fed final grand grey hers imagine in let letters many market
men party pay plan pull said say serving steak street then to used way would yet ~,_O ~,_said
~K_, ~O_y ~O_your ~S_, ~U_if ~U_me ~U_yet ~U_your ~V_K ~V_all ~V_now ~V_up ~V_yet ~^_it ~^_who
~^_would ~^_yes ~^_you ~a_V ~about_the ~already_V ~but_it ~c_, ~c_is ~down_for ~had_the ~have_V
~have_it ~here_and ~him_, ~in_the ~is_in ~me_when ~n_till ~now_for ~of_us ~on_V ~one_more ~over_n
~take_these ~tell_your ~there_, ~these_O ~till_n ~too_$ ~took_a ~us_at ~was_K ~was_V ~we_c
~what_would ~yet_$
2 #K2 #heard2 #phrase:some <t:150> =affirm:frame =ask-options:S0 =ask-safety:few =ask-status:S0
=ask-substitute:all =ask-substitute:phrase =ask-time-left:all =cook-away:frame =correct:phrase
=deny:phrase =describe-roast:most =emergency:most =help:frame =pause:few =quiet:S0 =repeat:S0
=report-done:all =report-done:frame =report-done:most =report-oven:some =report-reading =report-reading:frame
=report-reading:some =shift-serving:most ? ?heard3:frame ?heard4 afternoon as blood bringing
dripping few fine forget glazed going guests have how iron it jess kill kitchen leg long lucy
meat middle milk more mother nearly nobody not nuts of on open over pair past place pork power
pulled rang safe serve shopping skip standing talking twice ~._V ~K_. ~K_all ~K_of ~K_out ~K_should
~P_so ~S_can ~U_V ~U_as ~U_what ~V_$ ~V_down ~V_w ~^_i ~^_what ~a_d ~am_V ~c_$ ~down_V ~from_U
~from_the ~get_V ~go_V ~here_, ~here_the ~his_K ~i_am ~in_at ~in_here ~in_n ~into_V ~is_an
~is_had ~is_no ~it_? ~it_K ~it_d ~it_first ~it_is ~my_K ~n_are ~n_ok ~no_K ~no_U ~ok_in ~on_at
~our_K ~said_that ~should_K ~t_$ ~tell_me ~tell_you ~that_V ~the_second ~they_have ~took_the
~up_i ~us_V ~was_that ~we_will ~were_V ~what_a ~what_to ~what_was ~where_are ~with_a
3 #K1 #O0 #expecting:false:some #frame:S0 #heard3 <d> <n:550> =add-hands =affirm:S0 =affirm:to-confirmation
=ask-options:all =ask-temperature:phrase =ask-time-left =ask-why:phrase =cook-away:S0 =cook-away:most
=describe-roast:S1 =describe-roast:phrase =emergency =help:some =lack:frame =lack:some =note-guest:S0
=pause:all =quiet =repeat =report-done =report-out:frame =report-reading:phrase =report-started
=report-started:S0 =report-trouble:S1 =running-behind =running-behind:S1 =set-doneness:all
=set-guests:S0 =set-serving-time:phrase =set-timer =shift-serving:phrase =shift-serving:some
=skip-step:most =undo:S1 ?heard5 an back be brought butter buy checking core could cracking
crisp darling finished flat good hear job leave night potatoes rack roast sam sheet switch
tablets took train wire ~!_$ ~,_V ~,_on ~K_after ~K_c ~K_is ~K_no ~O_and ~O_for ~S_me ~U_now
~V_it ~V_me ~V_went ~^_after ~all_at ~am_S ~am_off ~and_they ~are_$ ~be_an ~be_at ~can_it ~d_U
~do_with ~for_$ ~for_d ~got_K ~had_no ~has_gone ~here_to ~how_are ~i_have ~i_still ~i_took
~i_was ~is_U ~is_put ~it_was ~mine_is ~n_, ~n_more ~n_of ~n_on ~not_going ~not_out ~off_the
~out_$ ~over_$ ~over_it ~say_that ~some_of ~still_O ~still_in ~take_that ~than_the ~the_n ~their_K
~them_are ~this_K ~up_P ~up_a ~up_by ~w_n ~we_are ~we_must ~what_do ~will_be ~would_like ~y_,
~you_V ~you_tell
4 #phrase:S1 #words4 =ask-how:all =ask-next:most =ask-options =ask-safety =choose:frame =cook-away:some
=correct:S0 =correct:to-confirmation =deny:S0 =describe-roast:S2 =emergency:S1 =help:S1 =note-guest
=report-done:phrase =report-guests:S0 =report-out:few =report-out:most =report-out:some =report-oven:S2
=report-oven:most =report-reading:all =report-started:all =report-trouble =set-doneness:frame
=set-guests:S1 =set-timer:phrase =shift-serving:S1 =shift-serving:few ?heard7:frame ?talk2
assisted beef beginning big burnt celsius center clear conventional covered cranked crying
dead dear dried fell from girlfriend green heat held inform knocked mashed mouths niece oil
overcooked probe processor ruin shall shelf short stand station strip test thank warn washing
what ~,_P ~,_can ~,_the ~K_goes ~K_n ~O_of ~S_does ~U_about ~U_for ~U_some ~V_before ~V_by
~V_could ~V_from ~V_that ~^_d ~^_g ~^_how ~^_on ~^_say ~^_when ~^_where ~a_P ~are_my ~been_V
~but_the ~by_now ~can_K ~can_the ~did_not ~down_the ~for_a ~g_$ ~gone_out ~her_V ~i_should
~i_would ~if_you ~is_at ~is_since ~it_be ~it_so ~it_up ~me_about ~n_if ~now_at ~of_U ~of_a
~of_it ~off_and ~ok_so ~ok_what ~on_n ~over_, ~second_n ~should_have ~so_we ~still_V ~still_at
~take_K ~that_n ~the_K ~the_d ~those_U ~till_we ~to_g ~to_you ~took_it ~took_out ~w_U ~w_of
~was_the ~what_did ~when_it ~who_can ~why_am ~will_not ~with_it ~yet_, ~you_about
5 ! #K3 #S1 #expecting:false:most #frame:some #heard1 #words3 <g> <n:150> <n:999> =add-dish:most
=ask-plan:S0 =ask-safety:S0 =ask-shopping:some =ask-substitute:S0 =ask-temperature:S0 =cancel-timer:S0
=correct =describe-roast:all =help:S0 =lack:most =note-guest:phrase =pause =pause:most =quiet:S1
=report-done:S2 =report-done:some =report-not-done:S0 =report-out =report-out:all =report-started:S1
=report-trouble:S0 =report-trouble:most =set-guests:most =set-timer:S0 =shift-serving:S0 =skip-step:S0
=skip-step:phrase ago ask bother can carrots carving children chopped cook dad game gets holler
horseradish letting little lumpy near own quick read runs sack see shout shove shower sick
than think whipped working ~,_K ~,_second ~,_should ~,_w ~K_$ ~K_V ~K_are ~K_be ~K_for ~K_has
~K_ok ~K_one ~O_me ~O_the ~S_K ~U_does ~U_than ~U_the ~V_an ~V_another ~V_did ~V_if ~V_should
~V_the ~V_will ~^_can ~^_let ~^_this ~^_was ~a_S ~about_$ ~after_$ ~ago_$ ~ago_it ~all_$ ~am_a
~and_S ~are_out ~as_a ~at_g ~be_n ~been_out ~c_for ~d_K ~d_ago ~d_before ~do_i ~down_to ~get_the
~go_in ~gone_$ ~has_it ~have_not ~i_V ~i_tell ~if_they ~is_here ~it_done ~like_V ~like_to ~me_if
~me_the ~n_$ ~n_at ~not_V ~now_we ~of_w ~still_got ~tell_when ~that_$ ~they_are ~till_K ~till_it
~to_t ~us_in ~w_V ~went_on ~what_have ~what_is ~what_should ~when_is ~when_we ~who_has ~will_you
~yet_V ~you_go ~your_U
6 #expecting:false:all #phrase:S2 =add-dish:all =add-dish:some =add-hands:all =ask-guests:phrase
=ask-next:phrase =ask-shopping:S1 =ask-shopping:phrase =ask-temperature =ask-time-left:S1 =help
=report-guests:frame =report-oven =report-reading:few =set-doneness:some =set-method:all =set-units:S0
=set-units:all =set-units:most =undo:S0 =watch:phrase ?heard4:phrase ?heard6 ?heard7 anyone
arrived beautiful bring c cancel chucked clean cold cooked correction count counter cream dry
eggs enough find forerib glasses grandpa had jo know leave-in metric nipping now onions oven
present priya push reverse ringing roasting shops sorry squash stays stuff supper thickest
tonight warming yell ~,_like ~K_K ~K_O ~K_am ~K_go ~K_with ~P_, ~S_at ~U_here ~U_that ~V_P
~V_go ~V_her ~V_in ~V_on ~V_t ~^_U ~^_be ~^_now ~^_with ~a_U ~am_d ~and_put ~and_the ~as_we
~at_this ~be_on ~c_K ~could_K ~could_we ~d_$ ~do_K ~go_to ~have_an ~have_been ~his_V ~if_it
~in_V ~is_now ~is_on ~is_too ~it_$ ~it_n ~me_i ~more_V ~n_have ~n_to ~not_got ~of_that ~on_g
~on_with ~our_V ~out_d ~put_d ~say_, ~take_n ~that_, ~this_V ~this_one ~to_K ~to_O ~up_to ~us_$
~us_a ~we_K ~went_V ~what_O ~why_are ~will_K ~will_have ~will_that ~with_$ ~with_d
7 #phrase:S0 #phrase:most =ask-guests:frame =ask-next:S0 =ask-plan:phrase =ask-shopping =ask-shopping:S0
=ask-shopping:all =ask-status =ask-substitute =ask-substitute:S1 =ask-substitute:most =ask-time-left:phrase
=cook-away =lack =quiet:all =repeat:phrase =report-out:phrase =report-oven:S0 =report-oven:phrase
=report-setup:S0 =report-setup:S1 =report-started:most =running-behind:S0 =set-doneness:S0
=set-serving-time:all =set-timer:most =undo =watch:S0 =watch:all ?heard5:phrase ?heard7:phrase
alternatives before blast brother comes cooks dog end feeding friend go hands instant-read
listening love offered pause peas piece sauna scrap show showing slice smoke sooner store swap
talk toddler told trust very zero ~,_d ~K_before ~K_since ~K_up ~K_we ~K_went ~O_then ~P_.
~P_on ~U_are ~V_can ~V_do ~V_than ~^_K ~^_could ~^_have ~^_n ~and_it ~and_then ~another_n ~are_on
~at_the ~be_$ ~be_the ~can_my ~could_i ~could_you ~d_from ~did_i ~done_for ~done_with ~done_yet
~for_him ~get_here ~have_any ~have_n ~have_put ~how_V ~in_, ~is_V ~more_K ~never_c ~not_have
~now_what ~off_, ~on_a ~out_before ~so_$ ~so_the ~t_K ~than_c ~that_should ~there_another ~this_O
~to_V ~to_go ~we_do ~we_get ~what_P ~what_U ~when_will ~will_it ~with_n
8 #phrase:S3 <n:100> =add-hands:S1 =add-hands:some =affirm:all =ask-guests =ask-next =ask-shopping:most
=ask-why:S0 =cancel-timer:some =choose:some =correct:S1 =emergency:some =have:S1 =have:all
=lack:phrase =note-guest:S1 =note-guest:all =report-done:S1 =report-not-done:frame =report-oven:to-reading
=report-reading:S0 =report-setup:phrase =report-started:phrase =resume:S1 =set-serving-time:most
=set-units:frame =set-units:some =start-over:frame =undo:all =watch =watch:some ?heard8 add
allergies anything auntie battery beeped bought cat church clock creamed evening faffing fahrenheit
forgotten full gas grace granny hang hard helps instead joining killed ladies loin month months
options outside person planned popped problem rare reached repeat running scrubbed sear so
some son speak steady stepping table their today uncle using ~,_mine ~,_where ~K_do ~K_done
~K_have ~K_not ~K_now ~O_d ~O_goes ~U_down ~U_has ~U_took ~V_, ~V_. ~V_after ~V_c ~V_here ~V_his
~V_like ~V_says ~V_what ~^_a ~^_there ~am_going ~another_V ~any_K ~be_gone ~before_$ ~c_it
~c_we ~d_on ~do_about ~done_V ~down_$ ~for_K ~g_now ~get_n ~got_a ~her_out ~i_had ~i_put ~in_K
~in_and ~is_ok ~it_all ~it_ok ~let_us ~me_K ~n_? ~n_K ~n_V ~no_no ~now_n ~ok_$ ~ok_for ~ok_i
~should_i ~still_c ~the_in ~to_that ~went_out ~would_not
9 #expecting:true:all #words2 <t:12> <t:25> =ask-amount:S0 =ask-guests:all =ask-options:most
=ask-plan =cancel-timer:all =cancel-timer:phrase =choose:all =describe-roast:some =have =have:phrase
=help:all =repeat:most =report-guests:some =report-started:some =set-doneness:S2 =set-method:S1
=set-method:frame =set-serving-time:S0 =set-timer:some =start-over:all =watch:most ?heard8:phrase
?talk0 ?talk1 anyway behind ben boneless cancelled catch coeliac convection dairy dauphinoise
dave doorbell earlier everything everywhere expecting extra fan feed gluten gran happens help
herb inside internal joint jus later lay list minutes need opened order parents part plus pounds
quantity ready rests rib risen since sorted spinach steps trussing upstairs vegetables which
yorkshire ~,_he ~,_tell ~,_what ~K_? ~K_d ~K_our ~S_is ~S_will ~U_S ~U_from ~V_about ~V_going
~V_have ~^_in ~^_which ~a_w ~all_V ~all_too ~any_U ~are_K ~are_here ~are_in ~are_we ~c_O ~can_U
~do_now ~first_then ~for_y ~from_now ~goes_in ~going_O ~gone_and ~gone_d ~here_V ~i_K ~is_still
~it_U ~it_off ~it_said ~must_i ~my_P ~n_be ~n_too ~n_with ~not_a ~not_in ~of_d ~ok_at ~on_d
~on_to ~one_is ~out_for ~some_U ~still_$ ~there_is ~this_$ ~to_do ~up_$ ~w_K ~w_O ~was_O ~was_out
~we_$ ~we_have ~went_in ~went_up ~were_we ~what_can ~what_must ~what_now ~where_do ~where_were
~why_does ~with_my ~would_n
10 <n:80> =ask-amount:some =ask-options:phrase =ask-status:S1 =cancel-timer =choose:S0 =cook-away:few
=cook-away:phrase =emergency:phrase =lack:S0 =lack:S2 =note-guest:to-doneness =pause:S0 =report-guests
=report-oven:all =report-setup =report-setup:all =set-method:S0 =set-method:some =set-units:phrase
=skip-step =skip-step:frame =skip-step:some ?heard2:frame ?heard6:phrase aiming alongside anymore
arrive backs bath careful carry climbing cope doing father frenched garlic girl kilos landed
leaving making mind mixed must neighbours packed parcel parsnips pepper postpone rather real
reckon reminders reset seasoned shellfish should shush skillet sounds stabbed strike thick
total vegetarian walk wipe ~K_and ~K_down ~K_first ~K_here ~K_so ~O_P ~O_t ~O_w ~P_put ~U_but
~U_said ~U_up ~U_with ~V_over ~^_did ~^_get ~^_had ~^_like ~^_some ~a_n ~about_V ~all_K ~an_V
~as_V ~as_it ~at_t ~before_d ~before_i ~do_a ~goes_$ ~going_to ~has_t ~have_$ ~have_a ~i_be
~if_i ~is_she ~it_O ~it_still ~me_$ ~me_my ~must_V ~n_about ~n_so ~no_, ~not_done ~not_yet
~now_K ~off_at ~on_$ ~out_already ~put_on ~put_the ~said_it ~since_c ~so_that ~still_K ~there_will
~up_at ~we_at ~what_am ~what_i ~why_so ~would_be
11 #phrase:all #words1 <t:300> =add-dish:S0 =add-dish:phrase =ask-amount:most =ask-next:all
=ask-next:frame =ask-next:some =ask-plan:all =ask-safety:phrase =ask-shopping:frame =ask-temperature:all
=ask-temperature:some =cook-away:S1 =cook-away:all =drop-dish:frame =drop-dish:most =help:phrase
=report-guests:phrase =report-oven:few =report-setup:most =report-trouble:all =running-behind:all
=set-guests:few =set-guests:phrase =set-method =set-method:most =set-method:phrase =set-units
=set-units:S1 =set-units:few adults after air alert bean beans bit bone bones brown bumped
buttered continue crust degrees dine dinner everyone faff far finish forgot goodness gravy
into kindly life low mark mash menu miles plates pot reaching remaining removed resting rising
rock salad split stage throw timeline topped touches trimmed trussed turned under whacked ~K_as
~K_it ~P_he ~U_my ~V_has ~V_not ~V_one ~V_when ~^_any ~^_going ~^_never ~^_out ~^_put ~^_t
~a_y ~all_U ~are_already ~before_it ~can_we ~first_K ~first_c ~for_is ~have_U ~have_all ~i_go
~i_say ~i_take ~in_my ~is_over ~is_there ~it_S ~it_and ~it_till ~more_$ ~not_U ~of_K ~since_d
~some_K ~taken_it ~they_said ~those_$ ~till_i ~up_and ~us_have ~we_like ~what_does ~what_for
~when_you ~why_not ~yes_do ~you_be
12 . =add-dish =add-dish:frame =add-hands:phrase =ask-plan:some =ask-safety:all =ask-status:S2
=ask-substitute:some =cancel-timer:S1 =deny:to-choice =deny:to-confirmation =report-out:S0
=running-behind:S2 =running-behind:most =set-timer:S1 batter beeping butternut centre cheap
choices correct cousin dial floor food freezer gratin heard intolerant lactose less light likes
lowered made message mint mistake mute nan nephew nip overnight ping properly ran reading setting
tick waiting warm where wise ~,_$ ~,_they ~K_can ~K_i ~S_V ~U_and ~U_went ~V_more ~V_still
~V_where ~^_says ~^_should ~and_U ~are_going ~are_up ~at_me ~been_on ~c_i ~c_not ~c_then ~can_not
~do_the ~does_n ~does_not ~get_U ~go_with ~have_had ~he_U ~it_the ~like_a ~me_and ~me_at ~my_in
~n_i ~no_do ~not_be ~of_those ~off_n ~ok_to ~on_me ~put_K ~she_is ~should_be ~should_it ~so_i
~so_they ~t_U ~t_V ~us_go ~was_U ~we_O ~we_can ~who_does
13 =ask-guests:most =ask-next:few =ask-plan:most =ask-temperature:most =ask-time-left:some
=deny:all =deny:most =help:most =lack:all =note-guest:to-guests =report-done:few =report-setup:S2
=report-trouble:phrase =watch:S1 afresh cabbage cast closed commands daughter early electricity
eye fresh guest head helping huh hush including kip leftovers looking oiled ok old ones peek
pipe poke prepone rosemary rubbed stands taken thermometer thought timers trimming wake walked
wife ~?_$ ~K_but ~K_w ~K_will ~O_all ~P_can ~U_says ~V_a ~V_and ~^_another ~^_at ~^_not ~^_ok
~^_y ~all_over ~am_K ~and_on ~c_on ~d_is ~done_$ ~down_d ~gone_V ~gone_c ~gone_for ~got_my
~had_a ~has_U ~has_n ~how_can ~i_got ~is_off ~is_y ~it_has ~me_how ~me_in ~me_some ~n_this
~no_the ~off_to ~ok_V ~out_K ~out_now ~shall_be ~so_yes ~to_take ~we_still ~what_are ~with_V
~yes_$ ~you_can
14 =add-dish:S1 =ask-options:S1 =ask-plan:S1 =ask-safety:some =ask-status:some =ask-substitute:frame
=ask-temperature:S1 =describe-roast:to-roast =drop-dish:S1 =note-guest:some =report-not-done:to-step
=report-started:to-reading =skip-step:all =watch:frame along b blank bloody boned display groceries
lifted lit longer miss mo moment much neither overdone popping proper remind rolls rung salted
scratch silence stock switched things thyme touching twine winning ~,_would ~K_already ~K_off
~P_c ~P_says ~U_d ~V_d ~V_so ~V_with ~^_me ~^_off ~^_took ~after_all ~already_K ~already_n
~am_O ~and_n ~be_d ~by_n ~c_d ~c_me ~d_after ~do_we ~down_yet ~go_$ ~go_for ~have_no ~how_K
~i_S ~it_went ~me_V ~no_more ~now_t ~one_V ~out_the ~out_yet ~says_n ~so_V ~then_a ~they_will
~to_S ~to_U ~was_$ ~we_shall ~you_got
15 =add-dish:few =ask-guests:S0 =ask-why:some =drop-dish:all =quiet:phrase =report-not-done:all
=running-behind:frame =start-over:few =undo:phrase =undo:some aim allergy also baste begin
bin carved completed eyes fallen fix frail happening hit keep kids lads laws looks lowest make
makes misread passed peeling persons puddings schedule seats shows somewhere string tenderloin
works ~,_so ~._$ ~K_this ~O_but ~P_are ~P_will ~U_how ~V_! ~^_done ~^_still ~all_going ~am_on
~are_not ~been_U ~by_c ~c_. ~does_V ~down_at ~gone_to ~got_here ~in_this ~me_U ~me_what ~n_but
~n_now ~n_y ~not_K ~on_now ~on_then ~on_yet ~to_me ~to_say ~w_not ~w_with ~we_go ~when_d ~why_K
~yes_it ~you_what
16 =ask-next:S1 =ask-plan:frame =report-trouble:some begun checked delay fridge man peeled
prime sitting slid stuck topside yorkshires ~,_but ~K_if ~V_hers ~a_c ~all_that ~another_d
~are_still ~at_$ ~at_all ~c_in ~can_V ~down_c ~got_V ~got_the ~in_there ~is_already ~is_c ~it_down
~no_V ~no_it ~over_the ~says_t ~so_no ~taken_the ~to_c ~us_now ~we_take ~when_do ~with_the
~yes_go
17 <t:80> =ask-how:frame =ask-temperature:frame =pause:some =skip-step:S1 board bottom change
chemo counting edge flu god ignore law looked reason right simmering suggest target tied truss
vegan wait won ~,_it ~K_they ~S_out ~U_K ~U_by ~U_of ~V_no ~^_for ~^_to ~am_out ~for_now ~from_V
~get_to ~got_to ~has_to ~in_yet ~is_my ~it_for ~me_a ~me_to ~no_$ ~no_n ~on_for ~out_to ~said_$
~so_n ~we_on ~you_c ~you_said
18 #frame:few =add-hands:S2 =choose:to-choice =report-guests:all =report-setup:few =report-setup:frame
beast changed cooker duty explain frenching invited mustard phone seared soon spot thin tie
tying wrong ~P_at ~U_it ~V_them ~^_gone ~^_us ~d_for ~got_that ~me_that ~n_d ~not_i ~say_it
~they_c ~us_do ~what_$
19 =ask-status:phrase =quiet:few =repeat:few =report-guests:few boyfriend eat fast pardon tenderised
~K_yet ~V_till ~^_all ~^_got ~and_no ~are_n ~do_$ ~how_does ~is_S ~is_after ~n_in ~say_V
20 =correct:all =pause:phrase =report-guests:S1 everybody places pregnant sec texted ~K_S ~do_that
~for_P ~for_this ~me_d ~now_, ~on_it
21 =report-not-done:to-confirmation searing shut ~d_too ~have_O ~it_to ~like_it ~that_was ~us_n
22 =affirm:most =ask-status:most =correct:frame family house stove ~,_thanks ~have_i ~was_not
23 having while ~is_w ~where_we
24 =ask-why:few ~has_V ~yes_that
25 =resume:all =start-over:S0
26 ~will_take
30 =resume:most`;

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
ago ahead aid aim aiming air alarm alert alex alight all allergic allergies allergy almost
alone along alongside already also alternative alternatives altogether always am amazing amount
amy an anchovies and announcements announcing another any anybody anymore anyone anything anyway
anywhere are arm arrive arrived as ask asks assisted at ate auntie ava away b baby back backs
bad badly bailed bairns bake bang banjaxed bare baste basting bath batter battery be bean beans
bear beast beautiful beautifully beauty because bedlam beef been beep beeped beeping before
begin beginning begun behaving behind belay believe belly ben best bet between big billowing
bin bit bits black blackout blade blank blast bleeding bleeds blistering block blood bloody
blown blue bluetooth board bob boil boiling bone boned boneless bones boots bored boss bother
bothered bottle bottom bought bout boxed boyfriend boys braised brb bread breath breathe bring
bringing broke broken brother brought brown browned brussels bubbling bumped bums bung bunged
burned burning burns burnt but butcher butter buttered butternut buy buzz by c cabbage cable
call called came can cancel canceled cancelled cap car careful carked carrots carry carryover
carve carved carving cast cat catch caught celsius center centre chance change changed charge
chasing chatter cheap check checked checking chef chemo chest chewy children chilling chimney
chip choice choices choking choose chopped chopping chris christmas chronic chucked church
ciggies clean clear clever climbed climbing clock clogs closed cloves coats cocked coeliac
cold collapsed collect come comes coming commands completed conked continue control convection
conventional cook cooked cooker cooking cooks cool cooler cope core correct correction could
count countdown counter counting course cousin cousins cover covered crack cracking craic cranked
crap crawled cream creamed creeping cremated creme crept crimbo crisp crispy cross crumble
crunchy crust crying cube cut cutted dad daft dairy dan dangerous dare dark darling daughter
dauphinoise dave day dead dear deepest degrees delay delayed delete demanded detector diabetes
dial dialled did died dietary dine diner ding dining dinner dish display do does dog doing
done door doorbell down drained dressed dried drink dripping drop dropped dropping drowning
drunk dry dusted duty each earlier early eat eating eats edge eggs either electric electricity
ellie else enamel end enough eta even evening events every everybody everyone everything everywhere
excuse expecting explain extra eye eyes face faff faffed faffing fahrenheit fainted fall fallen
family fan fancy far fast fat father fed feed feeding fell few fewer fighting fill find fine
finger fingers finish finished fire first fix flame flames flat flicked flight flip floor flour
flu foil folks food for forerib forget forgot forgotten forward found fraiche frail free freeze
freezer french frenched frenching fresh fridge friend friends from front frozen full fun fuse
fussy game gander gang garden garlic gary gas gave gents get gets getting ghee girl girlfriend
give gives giving glass glasses glazed glazing glove gluten go gob god goes going golden gone
good goodness got grabbed grace grams gran grandad grandma grandpa granny grated gratin grattan
gravy grease green grey grid groceries growing guest guests had hair halal half halfway hall
halved hand handle hands hang hanging hannah happen happening happens hard has hauled have
having he head heading heads hear heard heat heathens heating held hello help helped helper
helping helps her herb herbs here hers hey high him his hit hits hitting hives hob hold holding
holler hon honestly hood hoover horseradish horses hot hotter hour house hovering how huh husband
hush i ice ideas idiot if ignore ill immunity imperial in including inform ingredients inserted
inside instant instant-read instead instruction instructions internal into intolerant invitation
invite invited iron is it itself jaccarded jar jean jess jesus jim jo job joining joint joneses
jump jumped jumping jus kate keep keeping kept kern kernel kev kiddies kids kill killed kilos
kindly kip kitchen knife knock knocked knots know la label lack lactose ladies lads lagging
laid lamb landed lard last late later latest law laws lay laying least leave leave-in leaving
left leftovers leg leo less let letting licked lid lie lies life lifted light lights like likes
lily lips lisa list listening lit little loin long longer look looked looking looks loosely
lose losing lost lot love lovely low lower lowered lowest luck lucy lumpy lunch lying made
mains make makes making man manage mandoline many margarine marge maria mark marks mash mashed
match mate matter me meal mean meaning meant meantime meanwhile measuring meat mechanically
medium members menu message metric middle might miles milk mind mine mint minutes miracle misheard
misread miss missed missing mistake mitt mixed mixer mo moment mommy money monkeys month months
mooing mopping more mother motorway mouths move moves much mum murder must mustard mute my
myself nagging name nan nap napkins near nearly necks need needle needs negative neighbour
neighbours neither nephew never new next nice niece night nip nipped nipping no nobody none
nor not nothing now nowhere nudge numb number numbers nut nuts obviously odd of off offered
oh oil oiled ok old olive omar on once one ones onions onto open opened option options or order
other others ought ounces our ours out outside oven over overcooked overdone overnight overshot
overview overwhelmed ow own package packed pains pair palaver pale palm pan parcel pardon parents
parsley parsnips part party pass passed passes past pause paws peas peek peel peeled peeling
pending people pepper peppered per person persons petal pete phone pick picked picking piece
ping pinged pink pipe place placed places plan planned planning plans plate plated plates platter
play plenty plot plus pm point pointing poke poked popped popping pork portions possible postpone
pot potato potatoes pounds power practically prefer pregnant preheated preheating prep preparation
prepared prepone present prime priya probe problem processor proper properly puddings puffed
pull pulled push put putting quantity quick quiet quite rack rail raised ran rang range rare
rarer rather raw reached reaches reaching reaction read reading readings reads ready real reason
reckon reckons red reed refreeze regular remaining remind reminders remove removed repeat replace
rescue reset rest resting rests resume reverse rib rid right ring ringing rise risen rising
roast roasted roaster roasting rob rock roles rolled rolls room root roots roped rose rosemary
rosé round rubbed ruin ruined run rundown rung running runs sack sad safe safely sage said
salad salsa salt salted salting salty salvage sam same sanjay sat sauce sauna saving say saying
says scalded schedule school scrap scraped scratch screaming scrubbed sear seared searing seasoned
seated seats seawater sec second see seems separator serve served serving set setting settle
shall sharp she sheet shelf shellfish shift shit shop shopping shops short should shout shouting
shove shoved show shower showing shown shows shredded shush shut sick side sides silence silverskin
simmering since sink sinking sir sirloin sister sit sitting sizzling skillet skip skipped skipping
slate sleeve slice sliced slicing slid slipped slow slower slowly small smashing smeared smelling
smoke smokes smoking so sock softening solid some somebody somehow someone something somewhere
son soon sooner sorry sort sorted soufflé sound sounds sour spare speak speaking speed spinach
splashed split spot sprouts squash squeaky squeamish stabbed stage stand standing stands start
started starting starving state station status stay staying stays steady steak steeping step
stepping steps steve stick still stir stirring stock stone stop store story stove straight
strays street strike string strip strung stuck stuff substitute sugar suggest suggestions sulk
sunk supermarket supper supposed sure swap swears swelling swells swimming switch switched
table tablets tail tailed take taken taking talk talking tap target tariq tea tearing telephoned
tell telling telly temperature tenderised tenderloin tent tented test texted than thank thanks
that the their theirs them themselves then theo there thermometer they thick thickened thickest
thin thing things think thinking third this those thought throat through throw thumb thyme
tick ticked ticks tie tied til tiles till time timeline timer timers timing tin tinkle tins
tiny to today toddler toddlers told tom tongs tonight too took top topped topping tops topside
total touch touched touches touching tough towel track traffic train transplant tray trick
trim trimmed trimming tripped trouble truss trussed trussing trust turn turned turning turns
twice twine tying type typo tyre ugh un uncle uncovered under understand undo undue unpause
up update upstairs us use used using vegan vegetable vegetables vegetarian vegetarians veggie
verde very wait waiting wake walk walkabout walked walking want wanted wanting wants warm warmed
warmer warming warn warning was wash washed washing watch water way ways we weak wee weighs
weight weights weird well wendy went were whacked what when where wherefore which while whipped
whisht whisk whisked white who whole whopper why wife will wilsons wilted wind wine winning
wipe wire wired wireless wise wish with without woke woman won word work working works worried
worth would wrapped wreck wrecked wrestle wrist wrong wrote ya yapping year yell yes yet yoghurt
yoke yorkshire yorkshires yorkshre you your zero zip`.split(/\s+/),
);
