/** Learnt from the rules and learnt parts of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const weights: Weights = weightsFrom(`
-28 ~^_her
-26 level
-25 =courtesy:S0
-24 ?talk7 pages tooth
-23 ?talk6 ~?_it ~n_all
-22 large legs ~!_did ~,_who ~more_O ~you_done
-21 =emergency:guess judges santa ~,_put ~K_say ~get_down ~going_, ~it_! ~n_w ~said_you ~you_n
-20 #words0 easter flight results serious ~V_y ~^_$ ~for_you ~like_mine ~she_was ~then_we ~there_,
-19 =acknowledge =choose:S2 =courtesy =courtesy:some =quiet:S3 corner cry dishwasher draw fair
goals lives page post rain wedding ~,_a ~._you ~P_a ~V_she ~are_you ~at_K ~been_c ~could_have
~he_K ~out_there ~that_O ~was_d ~was_still ~will_S ~yet_S
-18 =acknowledge:phrase ?talk5 ?talk8 april bakers calories carvery dum eights ever exam front
gentlemen greedy jigsaw pies poor sent shuts sugars unread ~!_get ~,_here ~,_with ~,_you ~?_n
~S_was ~at_ours ~mine_$ ~no_he ~no_i ~on_U ~she_did ~she_never ~they_n ~to_her ~took_d ~w_for
~would_put ~yes_i
-17 #heard0 =acknowledge:S1 =courtesy:phrase =emergency:S0 =report-reading:S3 banana barbecue
bottle breathing buffet carves chefs chicken drives effect galway hello innings perfect pin
pool proposed raffle roll sweetie swimming toy years youngest yourselves ~!_no ~,_second ~._no
~P_, ~P_about ~all_done ~at_P ~at_U ~did_U ~do_my ~done_P ~goes_, ~had_in ~i_says ~mine_i ~not_mine
~put_you ~said_c ~shall_we ~to_your ~was_, ~was_i ~y_and ~you_get ~you_to
-16 =acknowledge:few =affirm:S2 =deny:S2 answer argument august blight blow caterers cats coats
crying damp day deirdre divorce greenhouse ham honey lady loo lows maisie marathon phoenix
politics pudding speaker talks try ~!_it ~,_ours ~?_then ~K_about ~K_y ~^_he ~about_her ~and_some
~are_your ~as_if ~at_theirs ~d_a ~get_your ~got_there ~have_you ~he_$ ~he_did ~her_, ~i_too
~is_yours ~it_there ~second_on ~she_still ~tell_her ~them_a ~they_had ~they_let ~they_took
~to_his ~took_hers ~took_us ~was_no ~we_there ~why_do ~why_is ~with_c ~y_i ~y_with ~you_going
-15 =acknowledge:guess =courtesy:all =courtesy:guess =emergency:all ?heard0:guess arms arrival
asked average bathroom bucks camping caravan crumb darling days delicious ears east essay flowers
funnier g ladder lasted letters limit lisbon locked mijo name ordered owe parking pipes quiz
restaurant sandwiches sends seville small soled suitcase tax television wash ~,_says ~,_there
~?_ok ~?_yes ~O_had ~P_did ~S_would ~U_till ~^_these ~after_me ~all_down ~am_n ~an_O ~any_O
~are_about ~at_her ~c_your ~first_P ~he_c ~her_off ~hers_out ~how_did ~me_put ~no_but ~not_yours
~of_you ~says_here ~she_n ~their_U ~there_you ~they_O ~they_did ~they_put ~they_said ~up_about
~was_when ~what_an ~who_did ~you_up ~you_will
-14 <y> =acknowledge:S0 =deny:S1 =deny:S3 =note-guest:to-reading =quiet:guess =start-over:S1
?heard0 birth blackbirds book bulb choosing clocked clockwork coach college cooking counted
crispy death dollar euros february given group handle hollis inches jack july jumper keith
lemons linda lorcan lucky machine magazine manager marble ordering pass photo prices pub referee
reindeer roof sausage saw scallops scary science serves sheila shh sign skewer sticking tank
tenner tenth texting ward whites work ~,_is ~?_for ~V_ago ~already_on ~and_that ~another_one
~are_for ~at_his ~but_she ~c_but ~c_where ~did_hers ~does_his ~done_till ~first_O ~goes_off
~have_another ~here_already ~here_is ~him_if ~how_he ~in_here ~in_these ~is_about ~it_by ~it_she
~no_they ~not_had ~of_all ~or_the ~or_till ~over_, ~said_hers ~said_never ~says_in ~says_take
~since_he ~tell_him ~than_yours ~there_yet ~they_$ ~to_us ~will_get ~you_, ~you_do ~you_should
~your_P ~yours_V
-13 ?talk4 bacon bedroom beer booked boot burns caller camera channel child contact contestants
court crewe crossword cuts diwali dress dublin ella feeling filled film fold fun girl heard
hill hitting kings lake laundry liked local lorna lotto meter morning nails naughty nico oi
orange owned passport pavement popcorn porch pumpkin rent rosie served shocking sold spain
spent strikes surgeon suspect tens terrible turkey vet weather wide worked wrap year ~!_out
~,_after ~,_out ~,_yours ~._done ~._get ~?_are ~O_! ~O_are ~O_if ~O_said ~O_then ~O_your ~P_or
~P_why ~S_go ~U_are ~^_our ~^_so ~and_said ~and_was ~another_$ ~are_these ~before_a ~c_till
~c_w ~can_U ~could_be ~d_and ~do_is ~do_mine ~do_theirs ~does_he ~done_! ~done_, ~done_? ~done_her
~for_his ~g_for ~got_now ~he_goes ~he_still ~here_i ~here_we ~here_you ~him_n ~his_do ~i_will
~in_may ~is_never ~is_you ~it_too ~may_$ ~me_! ~me_thanks ~me_would ~my_O ~n_a ~n_could ~n_n
~never_S ~of_your ~out_U ~out_in ~say_when ~says_no ~she_O ~should_get ~since_O ~some_O ~still_in
~t_and ~than_me ~there_. ~those_are ~to_w ~was_an ~we_had ~we_went ~where_they ~who_? ~would_have
~would_never ~y_is ~you_all ~you_on ~you_so
-12 <t:550> =choose:guess =courtesy:S1 =courtesy:few =emergency:few =report-out:S3 =set-doneness:S3
angle apartment army batteries belt biscuit blink blue born capital career carpet centimetres
chapter charcoal chips complains credit died drew drinking esky fireworks fixed gingerbread
highs homework jam kickoff listen listening lucas mass match meeting mick mine mooing mortgage
nav nonna once opens owes panto parrot pints points potluck programme project queen raining
reckons rich school scream season semi server service sleep smoking squares steak sun swear
tablet taking taste theirs truth tub van wearing week whisk ~,_g ~,_she ~,_that ~?_have ~?_he
~?_is ~?_we ~K_never ~K_your ~O_, ~O_too ~P_for ~P_let ~P_this ~P_where ~P_you ~S_? ~U_i ~U_than
~U_took ~V_was ~^_more ~^_their ~^_those ~after_you ~are_this ~at_hers ~c_he ~c_out ~d_w ~do_,
~do_S ~does_her ~down_S ~down_this ~from_her ~get_, ~go_, ~gone_a ~got_more ~had_c ~had_theirs
~had_w ~have_they ~he_V ~he_put ~her_K ~her_yet ~him_, ~if_n ~it_i ~like_K ~me_done ~mine_,
~my_first ~never_got ~not_he ~off_out ~on_their ~ours_V ~out_a ~over_there ~put_out ~said_in
~she_had ~she_went ~some_more ~tell_your ~that_S ~that_to ~that_will ~these_K ~they_say ~till_O
~to_yours ~was_mine ~was_t ~what_K ~who_was ~with_U ~with_his ~yet_P ~your_K ~your_V ~yours_,
-11 =deny:some =start-over:S3 ?heard2:guess awful beat benches biscuits bowled breaking brian
brothers burner camp carol cent charge chef chewed cooks deposit except expecting fainted feeds
fire firm glossy goat grandad heating joke knee march marriage nerves north offside oh petrol
porridge regarding robbery rupees score seen soul sponge spoon stank starts stayed stole tandoor
taught toaster towels turn utility watched watching weep white written yours ~!_S ~,_her ~,_let
~,_now ~._take ~._they ~._yes ~?_can ~K_over ~K_you ~O_O ~O_out ~P_! ~P_any ~U_you ~V_put ~^_and
~^_shall ~am_already ~am_done ~am_never ~am_the ~and_have ~at_mine ~be_the ~be_up ~by_$ ~c_?
~c_since ~can_P ~d_S ~did_, ~does_hers ~down_when ~get_some ~go_by ~had_his ~had_that ~he_S
~he_U ~hers_. ~i_$ ~in_first ~in_off ~in_since ~into_a ~is_why ~is_your ~n_been ~n_or ~not_take
~not_that ~of_V ~on_in ~on_that ~or_not ~other_$ ~say_you ~says_, ~says_they ~she_V ~she_took
~still_does ~still_will ~take_V ~then_K ~then_if ~this_U ~this_for ~those_U ~till_c ~w_the
~was_like ~when_the ~who_had ~will_all ~with_those ~would_all ~y_U
-10 #O3 #U3 <n:999> =affirm:few =undo:S1 abroad adverts banister ben bottles brendan bride
burnt bus closer cloudy curdled curtains december dough drinks drove dusted falling fortieth
frying function funeral graduation ground hat he hi horse housewarming imagine karaoke khichdi
la lasagne licking load look loved mama moon myself nearly nicked nights office particular
passing phones pizza practice quid retired reunion ring sad shoes shoulder sit sky smells sourdough
speaking stain stops street tall tense these traffic truck vegetarians waiter wed wrist your
~!_O ~!_that ~,_had ~,_have ~,_he ~,_off ~,_since ~._because ~?_V ~?_that ~?_the ~K_a ~O_on
~O_still ~P_got ~P_it ~S_! ~S_, ~S_could ~S_gone ~S_y ~U_already ~U_hers ~U_now ~^_she ~^_they
~all_P ~all_gone ~all_in ~all_it ~and_at ~and_goes ~and_him ~and_our ~and_still ~another_S
~at_S ~at_my ~before_P ~before_V ~c_in ~d_with ~did_n ~do_n ~done_when ~done_your ~goes_for
~going_S ~got_any ~had_no ~has_P ~have_done ~have_this ~he_was ~he_went ~her_P ~hers_in ~him_.
~him_U ~his_V ~in_U ~in_me ~is_for ~is_was ~like_at ~me_up ~more_in ~my_S ~n_can ~n_from ~n_to
~no_we ~not_now ~ok_U ~on_hers ~one_was ~said_P ~said_now ~say_S ~says_$ ~says_d ~says_my ~says_that
~she_U ~should_K ~since_n ~so_a ~so_this ~take_a ~thanks_$ ~their_V ~them_S ~them_about ~them_for
~there_S ~there_were ~they_K ~this_the ~up_K ~up_a ~us_like ~w_when ~we_did ~we_were ~went_and
~were_$ ~were_K ~were_n ~what_they ~when_$ ~who_K ~yes_V ~yes_from ~you_are ~you_have ~yours_now
-9 <n:200> =acknowledge:all =ask-options:S2 =ask-substitute:S2 =lack:frame =report-out:S2 =set-guests:frame
=set-timer:S3 =start-over:guess =unclear:most anyone asleep bonnet box broken brunch build
captain card chair cheap chemist cost expected face find fitz fly fridays fur furious guy him
home hours jeez king leeds lemonade lettuce live means melt movie needing ninth penalty percent
pickle place plays presents read ref rewind seat sell soap song south spell spit split taxi
team tender ticking tomato video whole win worries ~!_the ~,_can ~,_me ~,_said ~,_their ~,_which
~,_your ~._the ~?_K ~?_S ~?_not ~K_had ~K_me ~O_till ~P_d ~P_with ~S_got ~S_that ~U_do ~U_w
~V_any ~V_first ~^_. ~^_ours ~^_you ~a_yes ~ago_V ~all_went ~already_got ~and_, ~and_got ~and_let
~and_she ~and_take ~and_went ~another_K ~any_U ~as_c ~because_S ~been_taken ~but_n ~by_y ~c_us
~d_! ~did_a ~did_c ~did_you ~do_y ~does_your ~goes_up ~going_since ~got_my ~got_some ~he_said
~here_like ~him_S ~i_like ~if_i ~in_his ~in_or ~is_t ~it_goes ~let_him ~let_it ~like_U ~me_take
~me_when ~mine_to ~mine_was ~n_S ~n_as ~n_was ~never_went ~no_P ~no_U ~of_him ~on_P ~on_him
~one_, ~one_in ~one_put ~other_one ~out_he ~put_U ~put_your ~said_do ~said_there ~say_$ ~say_K
~says_a ~she_should ~should_we ~take_O ~take_your ~tell_U ~tell_us ~that_one ~the_O ~the_U
~the_one ~their_K ~them_since ~then_the ~there_O ~there_all ~there_i ~to_this ~too_O ~too_how
~was_a ~we_c ~were_at ~what_would ~who_V ~who_let ~will_put ~you_$
-8 #P3 <t:200> =ask-how:few =choose:S1 =pause:S1 =repeat:S3 =report-reading:guess =report-reading:to-reading
=set-doneness:frame =set-guests:S3 =undo:to-step ?heard2:frame added baby bank beach bite boy
bridge bridges bring burn carols champion class closing clutch complaining cool cork council
cover crowd dal delayed dev dollars episode expenses finn fizz foot french garden gin goes
happy hide highway holidays hymn knife madam maths mention mother mum nose number older ours
parcel patient pick picking picture platform playlist postcode quit rates raw recorded row
sam saturdays shopping shouts simple stew stitches switch tamsin third those tight tonight
tyler understand walks weekend wool yourself zip ~!_and ~,_done ~,_never ~._down ~._where ~?_no
~K_P ~K_ours ~O_$ ~O_U ~O_got ~O_n ~O_put ~O_them ~O_were ~O_y ~U_did ~U_had ~U_n ~U_since
~V_other ~V_take ~^_of ~all_got ~all_out ~already_out ~am_S ~am_all ~and_this ~at_us ~be_there
~but_S ~but_my ~c_of ~did_he ~did_the ~do_for ~done_the ~done_you ~go_U ~going_up ~got_, ~had_n
~her_n ~here_are ~here_if ~hers_has ~i_P ~if_he ~in_my ~in_your ~is_, ~it_take ~me_O ~must_U
~no_? ~no_because ~not_they ~now_S ~now_my ~ok_K ~on_i ~one_with ~our_O ~out_! ~out_V ~over_at
~over_that ~put_$ ~put_me ~said_no ~said_not ~said_the ~said_to ~says_i ~says_the ~she_does
~so_then ~t_over ~tell_them ~than_the ~that_P ~them_in ~then_. ~then_they ~there_$ ~there_K
~there_with ~they_V ~those_K ~to_him ~to_the ~up_for ~up_if ~up_in ~us_? ~w_? ~was_there ~we_let
~went_V ~were_d ~what_he ~when_P ~why_are ~with_O ~with_him ~would_get ~y_we ~yes_. ~yes_to
~you_must ~yours_is
-7 #S3 #expecting:false:few #guess:S3 <t:100> =acknowledge:S2 =ask-next:S1 =ask-temperature:to-guests
=emergency =pause:guess =report-not-done:to-guests =report-setup:S3 =report-trouble:guess =resume:S1
=set-serving-time:S1 =set-timer:S2 =unclear =undo:frame ?heard0:frame ?heard0:phrase ?heard4:guess
absolute according ambulance apparently bach badly bedlam bench block boils boots breath bro
buzzer call candle charger chickens chill cholesterol chooks cigarettes circumstances classic
colette comedian corkscrew costs custard deck dig drains dream drop each favourite fellow filthy
fruit ghost goalie hand her hers hugo hurts husband instructions january june last lbw lift
lived lottery men needs never new news niamh noodles notice nought nut offer opener overtime
peanuts peru pip plumber presenter previously pune puree remote repeat ringing room seriously
shakes she shoe smoker socks soda solicitor stir stomach struggling temperature thirtieth throw
trev turning turnip wake wear weeks wheat wifi winds wiped wood wow you ~!_$ ~,_but ~,_must
~,_some ~,_where ~._on ~._your ~?_U ~?_d ~K_after ~K_to ~O_or ~O_was ~P_does ~P_how ~P_i ~P_she
~S_from ~S_never ~U_$ ~U_, ~U_? ~U_a ~U_after ~U_by ~U_get ~U_her ~U_never ~U_or ~V_goes ~V_or
~V_were ~V_your ~V_yours ~^_his ~^_the ~^_why ~after_that ~all_S ~already_? ~am_at ~am_going
~and_here ~and_in ~and_n ~are_$ ~as_that ~because_U ~c_never ~c_not ~could_K ~d_would ~did_they
~do_they ~does_a ~done_S ~done_this ~done_yet ~down_would ~first_c ~for_d ~for_that ~go_and
~going_K ~gone_on ~had_were ~have_c ~he_does ~her_O ~her_S ~her_and ~hers_at ~how_was ~i_about
~i_c ~into_V ~is_it ~is_what ~it_, ~it_let ~it_put ~like_$ ~like_an ~like_that ~mine_out ~more_than
~n_! ~n_P ~n_are ~n_because ~n_second ~never_U ~no_the ~not_do ~not_go ~not_you ~off_i ~off_you
~on_about ~one_? ~or_c ~or_shall ~other_V ~out_by ~put_that ~says_you ~she_$ ~she_S ~she_c
~she_put ~so_how ~so_out ~some_U ~theirs_V ~then_you ~there_by ~they_c ~to_$ ~was_gone ~was_so
~we_should ~went_$ ~when_did ~where_are ~who_put ~will_O ~will_they ~would_P ~y_$ ~yes_, ~yes_a
~yes_we ~you_O ~you_but ~you_c ~you_still
-6 #O2 #U2 #expecting:true:most =add-dish:S3 =choose:few =help:few =quiet:S2 =report-done:S2
=report-trouble:S2 =resume:few =set-doneness:S2 =set-guests:to-reading =shift-serving:S3 ?heard1
amazing barn bedrooms begging better bike billing blanket boiler bread broke burning carried
chance chap chest christening christmas couch crisps dies disgrace drummers dry ellie ends
every fall found fourth gates glove goa had hair haircut hanna hear hog hurdles insist invites
island jet joe knew ladle left length lent lords lovely lunch may medicine metro mince mitts
mummy music next odile oona our outside panels panic pipers posted postie prawns preheated
question questions quiet quite radiator reach rosa rotten roundabout roux saoirse shade shattered
shot sirloin skins skipped solar spring sweater telly they time toilet top ups vegan vents
village voicemail ways weighed wet who worth ~,_at ~,_first ~,_n ~,_our ~,_up ~,_we ~._she
~._that ~._who ~?_O ~?_what ~?_with ~?_you ~K_! ~K_did ~O_? ~O_a ~O_after ~O_he ~O_is ~O_says
~P_. ~P_still ~S_about ~S_her ~S_him ~S_put ~S_said ~U_here ~U_my ~U_say ~U_still ~U_there
~U_y ~V_him ~^_go ~^_say ~^_take ~^_then ~^_yes ~all_O ~and_then ~are_into ~at_O ~at_y ~at_you
~be_no ~been_K ~but_they ~by_d ~by_it ~c_has ~c_is ~c_that ~can_i ~d_or ~did_P ~does_O ~first_one
~for_O ~for_c ~for_me ~for_y ~gone_$ ~gone_n ~gone_up ~got_n ~he_O ~her_$ ~her_i ~here_$ ~him_off
~how_are ~i_get ~if_the ~in_i ~is_like ~it_about ~it_could ~it_over ~let_her ~me_, ~me_about
~me_to ~might_do ~more_i ~n_O ~n_already ~n_for ~n_he ~on_, ~out_? ~out_and ~out_i ~out_of
~put_O ~said_that ~says_is ~says_on ~second_V ~she_got ~she_said ~so_U ~still_did ~take_these
~that_U ~that_your ~the_other ~them_P ~them_with ~there_must ~they_do ~they_go ~those_n ~till_it
~w_n ~was_at ~went_to ~were_off ~where_did ~where_the ~will_do ~will_tell ~with_no ~would_be
~y_, ~y_in
-5 #heard3 =affirm:S3 =ask-guests:some =ask-status:S2 =courtesy:S2 =have:few =quiet:frame =report-started:to-reading
=running-behind:S2 =set-doneness:S1 =set-doneness:most =set-guests:guess =set-guests:to-guests
=set-serving-time:S2 =set-serving-time:to-serving-time =start-over:most ?heard1:guess ?heard1:phrase
?talk3 afraid allowed another any apples ate bake beautifully best beta bowls brick brings
bye cake candles canteen cleaning club coffee country craic cup cupboard decent did double
e elbows euro excuse ferry figures flat fryer gale gerald girls gluten hallway his honestly
hook hot hotel inch join kevin kilometres laid language laughed leaf liv ma'am man marquee
married microwave mike moved nan neighbour ollie online paper pavlova physio pinch potato pressure
rabbit reads resigned ruined sat shush sideboard sister snags speech standing substitute sunshine
surprise sweating talk target tea text till torchlight trampoline travels true vicar welcome
wonders worst writing yuh ~,_V ~,_and ~,_get ~,_go ~,_i ~K_what ~K_who ~O_like ~O_you ~P_K
~P_never ~S_do ~S_in ~S_of ~S_since ~S_they ~U_can ~U_me ~U_us ~V_O ~V_P ~V_another ~V_before
~^_second ~a_y ~and_get ~and_go ~and_not ~and_were ~at_V ~at_your ~because_P ~because_we ~been_O
~c_S ~c_c ~c_what ~could_P ~d_if ~did_$ ~do_O ~do_V ~does_it ~done_n ~down_$ ~down_? ~down_to
~down_your ~for_those ~from_my ~from_y ~gone_and ~gone_c ~has_he ~have_an ~have_no ~he_has
~he_is ~his_K ~his_in ~how_you ~i_at ~i_said ~in_n ~in_that ~is_. ~is_P ~is_another ~is_mine
~is_so ~it_here ~it_says ~it_took ~it_with ~may_be ~me_P ~me_w ~must_not ~n_? ~n_over ~n_would
~now_on ~now_over ~of_my ~of_w ~on_V ~on_his ~one_has ~one_is ~or_was ~our_V ~ours_at ~over_n
~put_it ~put_us ~said_, ~say_, ~say_i ~second_K ~second_O ~she_has ~she_would ~since_the ~so_K
~so_and ~so_his ~still_got ~take_n ~thanks_O ~that_ok ~them_at ~then_it ~there_in ~they_got
~they_were ~this_with ~up_before ~w_and ~was_my ~was_n ~was_w ~we_S ~we_all ~went_out ~where_he
~which_S ~who_do ~who_has ~with_d ~would_O ~yet_? ~you_been ~you_can ~you_it ~you_take ~you_too
-4 ! #O1 #P2 #S2 <n:40> =ask-next:S3 =ask-next:guess =ask-options:frame =ask-options:some =ask-status:guess
=cancel-timer:S1 =correct:S1 =correct:some =have:S1 =lack:S2 =lack:guess =pause:S2 =report-done:frame
=report-not-done:some =report-out:guess =report-setup:few =report-started:S1 =start-over:phrase
?heard2 age airport alfie allow basting break cards careful carve changing chin course doing
downstairs drama drumming dryer duck es flames flash flatmate flour frock gate get gran hands
hard high hip je joking ketchup kitchen log marcus money nell opening operation otto overnight
ow packed paid pancakes papers perth pharmacy piet piping plums prescription priya puts radio
recipe rest ribeye rubbish rung said sets settee shame shed shouting sinker spelling stocks
story suis take taxis thousand thread tip today tried tu twice typical undo used walt wanted
was whoever why wickets wore ~,_from ~,_no ~,_say ~,_tell ~,_then ~,_this ~,_were ~,_why ~._is
~?_P ~?_c ~?_there ~K_there ~K_was ~O_before ~O_down ~O_get ~O_has ~O_it ~O_never ~O_to ~P_$
~P_no ~P_to ~S_$ ~S_P ~S_you ~U_U ~U_go ~U_one ~U_says ~U_they ~U_was ~V_does ~V_our ~V_their
~V_theirs ~^_but ~^_here ~^_too ~^_when ~^_your ~after_the ~already_$ ~and_U ~and_a ~and_if
~and_on ~and_out ~are_all ~as_i ~at_yours ~been_going ~before_$ ~before_O ~before_c ~but_if
~but_then ~by_O ~by_U ~c_U ~c_before ~d_all ~did_S ~do_if ~do_to ~do_you ~first_d ~for_more
~from_your ~get_it ~get_me ~get_out ~got_up ~got_you ~had_K ~have_at ~have_put ~have_we ~he_could
~he_do ~here_, ~him_$ ~him_he ~his_U ~how_do ~in_a ~in_an ~in_d ~is_still ~is_this ~is_where
~it_done ~it_on ~let_me ~mine_in ~more_, ~more_K ~must_have ~n_c ~n_if ~n_ok ~n_out ~n_thanks
~never_had ~no_do ~no_one ~not_$ ~of_a ~of_here ~off_when ~or_mine ~ours_$ ~over_my ~put_mine
~said_O ~said_U ~said_her ~should_take ~since_we ~still_U ~still_went ~that_already ~that_is
~that_up ~the_S ~them_$ ~them_, ~them_down ~then_c ~there_for ~they_can ~they_never ~they_would
~till_your ~to_U ~to_a ~up_P ~up_that ~was_c ~we_O ~went_K ~went_O ~went_into ~were_still ~which_O
~who_is ~why_. ~y_S ~yes_P ~yet_, ~you_go ~your_O ~your_c ~your_go
-3 #words12 =add-dish:S1 =ask-why:S1 =cancel-timer:most =describe-roast:S3 =quiet:most =quiet:some
=repeat:frame =report-out:few =report-setup:S2 =report-started:guess =resume:phrase =set-serving-time:few
=set-timer:guess =set-units:S1 =start-over:S2 =start-over:all =unclear:S0 ?heard1:frame actor
add again allergic arrived arse ban basted bea bins blocking brisket called cancelled caterer
ceiling charging choir chokes cinema colleague comes county crash cut dad department depends
dizzy door driving drops drums engagement fairy floors gentle glad google goose grandmother
halfway hallelujah hens here jory junction kicks lads lamb lands late laugh lights looking
love milk nae nursery options order other over party password pat people phew plane plank plug
pop pride printer promise ranch remember remove road rocks rubber says separate shall shelf
shop skips smell starving steam thanks there through thumb toes tops trays tumble tyre unbelievable
volcano washing winter yeast yes ~!_K ~!_you ~,_U ~,_down ~,_over ~,_should ~,_took ~._P ~._at
~?_how ~K_the ~O_about ~O_does ~O_done ~O_here ~P_go ~S_before ~S_over ~S_says ~S_to ~U_any
~U_at ~U_got ~U_he ~U_let ~U_on ~V_S ~V_in ~V_my ~V_off ~V_says ~V_these ~V_they ~V_this ~^_first
~^_my ~^_that ~^_theirs ~a_K ~ago_, ~all_i ~and_never ~another_c ~any_V ~are_going ~are_they
~as_V ~as_they ~at_c ~be_c ~been_n ~but_c ~c_there ~c_y ~can_c ~could_V ~d_O ~did_V ~did_she
~did_your ~do_U ~done_and ~down_for ~down_now ~first_was ~for_n ~from_O ~get_V ~get_there ~go_on
~going_out ~gone_O ~gone_in ~got_an ~got_at ~got_d ~got_no ~got_us ~had_at ~has_got ~he_must
~he_never ~he_took ~her_V ~him_at ~him_with ~how_to ~i_can ~i_might ~i_would ~in_on ~is_d ~it_a
~it_me ~it_no ~mine_V ~mine_is ~n_and ~n_at ~n_down ~never_O ~never_get ~not_out ~now_c ~off_$
~off_P ~off_him ~off_is ~on_! ~on_all ~on_your ~one_$ ~or_U ~ours_in ~out_S ~out_for ~out_on
~out_y ~put_another ~say_this ~she_says ~so_for ~still_S ~still_on ~t_with ~take_the ~thanks_P
~that_, ~that_V ~that_had ~the_$ ~the_P ~these_O ~they_U ~this_, ~this_O ~too_V ~us_on ~w_$
~was_S ~was_going ~we_V ~what_it ~what_my ~when_i ~where_it ~with_K ~with_your ~would_i ~y_so
~y_the ~yes_so ~you_S ~your_S
-2 #P1 #expecting:true:few #guess:S2 <t:150> <t:300> =add-hands:S3 =affirm:frame =ask-next:most
=ask-status:frame =ask-substitute:most =ask-time-left:S2 =cook-away:some =deny:phrase =describe-roast:guess
=drop-dish:S3 =drop-dish:some =emergency:S3 =emergency:most =help:guess =report-done:S3 =report-not-done:few
=report-not-done:guess =report-oven:frame =report-oven:guess =report-reading:S2 =report-setup:S1
=report-trouble:few =resume:some =set-guests:some =set-units:guess =shift-serving:most =undo:most
adelaide afternoon aunty bakery barbie beers boat boiling both breakfast brine bronagh bucket
came cancel cashews cat cheats cheese clean cleared climb closed counter crore crunch curry
de delivered devil disaster done dropped even exit feel finished fortnight fudge gets gordon
grape grilled groom help helpings hiding interested kind knees letter liam long lot minister
my neighbours nice nobody old orla piece promotion put reminds retirement rice roasted sausages
sawing say scored seared see settings shook singing sisters start started stop sugar sure swap
telling then told type useless watch way weighs wins woman wooden yards zone ~,_an ~,_as ~,_his
~,_it ~,_those ~._S ~._V ~._it ~._now ~?_who ~K_in ~K_on ~K_t ~O_and ~O_at ~O_by ~O_goes ~O_going
~O_in ~O_w ~P_and ~P_can ~P_was ~S_by ~S_his ~S_then ~S_with ~U_all ~U_to ~V_, ~V_K ~V_an ~V_can
~V_get ~V_n ~V_since ~V_there ~V_up ~V_w ~^_P ~^_a ~^_am ~^_does ~a_V ~about_a ~all_the ~am_off
~and_did ~and_into ~and_it ~and_took ~and_you ~and_your ~another_O ~are_there ~at_it ~be_U
~be_on ~but_you ~by_c ~c_this ~c_to ~c_you ~d_at ~did_it ~do_not ~done_a ~done_with ~down_with
~for_S ~for_U ~for_it ~from_K ~going_off ~got_U ~got_another ~had_O ~had_the ~have_to ~him_V
~i_be ~i_did ~if_she ~in_O ~in_her ~is_$ ~is_K ~is_c ~is_done ~is_down ~is_me ~it_c ~it_from
~it_n ~it_out ~it_was ~like_the ~me_the ~me_with ~mine_. ~more_S ~my_other ~n_U ~n_going ~n_more
~n_of ~n_we ~n_were ~never_V ~no_S ~no_not ~no_you ~not_at ~not_so ~not_the ~now_? ~now_V ~of_the
~of_them ~off_, ~off_since ~off_that ~on_S ~one_more ~or_am ~out_after ~over_from ~said_he
~said_so ~says_his ~so_who ~some_K ~still_, ~still_not ~than_they ~the_second ~them_O ~then_S
~there_? ~there_was ~those_S ~to_O ~to_me ~to_n ~too_K ~took_out ~up_after ~up_some ~up_there
~was_U ~was_V ~we_, ~we_U ~were_O ~were_in ~were_the ~when_they ~where_does ~who_U ~who_got
~would_V ~y_for ~you_V ~you_or
2 #K3 #P0 #S0 #U0 #frame:S2 #phrase:S1 #phrase:S2 #words6 #words8 <c> <d> <n:100> <n:150> =ask-amount:phrase
=ask-guests:phrase =ask-how:S3 =ask-how:all =ask-options:most =ask-status =ask-temperature:phrase
=ask-time-left =correct:to-reading =drop-dish:S0 =drop-dish:phrase =lack =lack:most =note-guest:S2
=pause:few =repeat:all =report-done:some =report-not-done =report-not-done:S0 =report-not-done:to-step
=report-reading =report-started:S3 =running-behind:some =set-doneness:to-doneness =set-guests
=set-serving-time =set-timer:most =shift-serving:to-confirmation =watch:S3 ?heard3:guess action
after astrid away b barely beef borrow brother brown but cabin can car caught chairs cheddar
chop collapsed coming cutting d'you daddy dance dawn diet doorstep eats end fallen farm favour
fern fete following football full good goodness guests handful hardly how idea incredible jean
judge knackered lenny loaded lovers marco maria medium met misspoke murder night not october
off ohio option papa platter pour preheat press rack raised ray reheat reporting rested rough
run sale self sherry side size skin slate snow souls soup special station stays straight t
table talked teach thae though timer timing tongs towel want wasabi what whisking ~!_what ~,_,
~,_O ~,_be ~,_did ~,_to ~._c ~._got ~._have ~._t ~._will ~?_if ~?_out ~K_S ~K_could ~K_for
~K_into ~K_of ~K_were ~O_not ~O_there ~P_S ~S_be ~S_did ~S_is ~S_ok ~S_the ~S_what ~S_your
~U_could ~V_U ~V_be ~V_been ~V_but ~V_down ~V_got ~V_had ~V_me ~V_on ~V_one ~V_that ~V_the
~V_them ~V_then ~V_till ~V_to ~^_O ~^_how ~^_in ~about_V ~about_an ~about_it ~about_to ~about_with
~already_by ~already_have ~already_now ~already_so ~an_K ~and_K ~and_P ~and_by ~and_for ~and_so
~are_. ~as_you ~at_g ~at_how ~at_n ~at_which ~be_, ~be_ok ~be_when ~because_he ~before_and
~but_do ~but_that ~by_? ~c_. ~c_as ~c_would ~d_she ~d_when ~did_too ~do_in ~do_we ~down_i ~for_V
~for_after ~for_all ~get_from ~get_up ~go_off ~go_over ~goes_down ~going_on ~gone_out ~has_a
~has_gone ~has_it ~have_, ~have_with ~here_so ~him_on ~his_O ~i_S ~i_V ~i_is ~if_S ~in_? ~in_already
~in_it ~is_been ~is_got ~is_i ~is_too ~is_who ~it_V ~it_down ~it_is ~it_w ~it_went ~it_when
~it_would ~like_and ~like_i ~me_$ ~me_by ~me_for ~me_it ~me_which ~must_go ~must_the ~my_V
~n_on ~n_y ~never_have ~no_that ~not_O ~not_a ~not_any ~not_have ~now_with ~of_U ~of_his ~off_?
~off_and ~off_by ~ok_do ~ok_if ~on_after ~on_with ~one_. ~one_the ~put_? ~put_him ~said_it
~said_n ~said_they ~say_to ~says_V ~second_n ~should_not ~so_. ~so_P ~so_V ~so_can ~so_d ~some_V
~take_? ~take_her ~tell_when ~thanks_. ~that_still ~theirs_at ~them_i ~them_will ~then_, ~these_V
~they_, ~this_to ~those_, ~to_be ~too_$ ~took_a ~up_V ~up_on ~up_to ~us_, ~us_with ~w_, ~was_in
~we_got ~were_you ~what_? ~what_P ~when_does ~when_must ~who_have ~will_be ~with_the ~would_not
~you_may
3 #K1 #O0 #frame:most #phrase:some / <n:25> <n:300> <n:80> =affirm =ask-how:S0 =ask-next =ask-options
=ask-plan:phrase =ask-slice:all =ask-status:S3 =ask-substitute =ask-substitute:phrase =ask-substitute:to-step
=ask-temperature:S0 =ask-time-left:S0 =ask-time-left:to-step =ask-why =choose:S0 =deny:few
=describe-roast:S0 =describe-roast:few =emergency:phrase =have =have:phrase =lack:some =pause
=quiet:few =report-guests:frame =report-guests:some =report-oven:all =report-reading:frame
=report-setup =report-started:frame =resume =resume:frame =set-guests:all =set-serving-time:most
=set-serving-time:phrase =set-timer =set-timer:S1 =set-timer:to-confirmation =set-units:to-roast
=skip-step:to-step =unclear:frame =unclear:to-choice ?heard3:frame ?heard5 about abuela anywhere
aoife aside ask backwards battery be beaten bed before being blood boiled bowl boys brilliant
carrying children choose cloves could covered crazy cricket crisp crisping crunchy dijon doctor
dried drive ear empty esme everywhere feels folk fore forget fuse goal grocer half has herb
ingredients insists jess joost joy jumped kaput knows laughing leather lucy made marigold meet
mhm mill mixed more mouth normal notch november oven pan panicking past pastry patels pink
pinker poison probe puffed reaches repair rising roast rock rolled sack salt sandwich sean
selling serving settled shave shirt should shower simplify sleeping somebody sour spooning
squeezed starter straining streaming survive tablespoon teddy tell than tin underdone w wants
war weans whistles windows wipe yams ~!_first ~!_we ~,_or ~,_too ~._. ~._U ~._go ~._say ~?_in
~K_$ ~K_. ~K_by ~K_does ~K_take ~K_them ~O_already ~O_but ~O_should ~P_will ~S_K ~S_a ~S_and
~S_at ~S_till ~U_! ~U_about ~U_does ~U_his ~U_of ~U_t ~U_this ~V_and ~V_are ~V_because ~V_done
~V_mine ~V_second ~V_than ~V_why ~^_S ~^_V ~^_let ~^_mine ~^_should ~after_K ~ago_K ~all_$
~all_can ~already_what ~an_U ~and_S ~and_should ~and_the ~and_them ~another_V ~are_after ~are_done
~as_$ ~as_, ~as_in ~at_for ~at_their ~be_O ~be_S ~be_with ~because_of ~before_. ~before_you
~but_he ~c_a ~c_i ~c_n ~can_tell ~can_that ~could_do ~d_can ~d_into ~d_tell ~do_it ~do_the
~do_them ~done_before ~done_c ~done_on ~down_the ~for_a ~for_in ~for_the ~g_the ~get_off ~go_?
~goes_to ~gone_into ~got_before ~got_is ~got_me ~got_on ~have_n ~have_taken ~he_say ~her_in
~her_up ~i_have ~i_may ~if_a ~in_y ~is_V ~is_by ~is_in ~is_put ~is_up ~it_going ~it_said ~it_this
~it_y ~let_them ~like_d ~may_as ~me_her ~me_out ~me_that ~might_have ~must_c ~my_P ~n_$ ~n_V
~n_off ~no_she ~not_. ~not_K ~not_all ~not_n ~not_there ~now_K ~now_and ~now_d ~now_the ~of_it
~off_V ~ok_in ~on_a ~on_from ~on_it ~on_n ~on_then ~one_i ~or_are ~or_at ~our_U ~out_$ ~out_at
~out_like ~over_the ~say_d ~says_and ~should_U ~since_$ ~since_U ~since_a ~so_do ~so_the ~still_?
~than_n ~that_c ~that_d ~that_they ~them_V ~them_can ~them_have ~them_out ~then_she ~there_goes
~these_$ ~till_V ~to_c ~to_put ~up_what ~us_in ~was_never ~was_not ~we_K ~we_might ~went_d
~what_V ~what_is ~what_must ~what_to ~which_V ~why_? ~will_c ~with_a ~would_K ~yes_n ~yet_K
~yet_and ~you_about ~you_say
4 #K2 #expecting:false:most #expecting:false:some #frame:S0 #frame:some #phrase:few #words4
=add-dish:phrase =add-dish:some =ask-how =ask-how:S1 =ask-next:all =ask-options:S0 =ask-plan:S3
=ask-shopping:all =ask-shopping:few =ask-shopping:guess =ask-slice:S0 =ask-status:S0 =ask-temperature:guess
=ask-time-left:all =ask-time-left:some =cancel-timer =cook-away:guess =cook-away:to-step =correct
=describe-roast =describe-roast:phrase =drop-dish =drop-dish:to-confirmation =forget-kitchen:most
=help =lack:S0 =lack:to-step =note-guest:S1 =quiet:S1 =report-done =report-guests:S3 =report-guests:all
=report-out =report-oven =report-oven:S0 =report-reading:S0 =report-setup:most =report-started
=report-started:most =report-thermometer:S0 =report-thermometer:all =report-thermometer:most
=report-trouble =report-trouble:S0 =report-trouble:S3 =report-trouble:some =set-doneness:few
=set-guests:few =set-guests:to-choice =set-method:S2 =set-units =shift-serving =shift-serving:S0
=shift-serving:phrase =skip-step:all =skip-step:few =skip-step:some =start-over:some ?heard4:frame
?heard5:frame ?heard5:phrase ?heard7:guess ?talk2 ago ahead alert anymore babe babysitter bad
bath bear beeping believe beside beth bishop borrowed bothered bunged celsius cleaned coat
concert creme crosses crushed dark dave dear die disregard dumb eating eejit everything faffing
fan felt fill fionnuala fired first flaky fraiche free freezing friend gently gideon glazed
grandparents green head helps herself hey house hurt jerry lad landing latter line little lou
lying magic mate matters might million missing mom n need now oat otis overran palm passes
peas peel planned plate plates playing port potatoes priest pulled quarter reached resting
returned reverse roadworks root round ruth salad salsa saving seeing sense sidewalk sir slits
smashing smoked sofa something status stiff strip stuffed thermostat tiny us vegetable verde
warming wei wi wobbly yesterday ~,_because ~._K ~._all ~._or ~._out ~._which ~?_say ~K_V ~K_are
~K_be ~K_but ~K_c ~K_his ~K_if ~K_is ~K_like ~K_up ~O_. ~O_S ~O_from ~O_of ~O_say ~O_they ~P_U
~P_in ~P_that ~P_up ~S_can ~S_down ~S_n ~S_w ~U_like ~U_should ~V_! ~V_all ~V_by ~V_do ~V_has
~V_have ~V_he ~V_t ~V_those ~V_went ~^_get ~^_have ~^_over ~^_t ~^_taken ~^_thanks ~a_c ~after_?
~after_going ~after_n ~all_we ~already_at ~already_but ~am_K ~am_c ~and_has ~and_tell ~and_w
~are_n ~are_we ~at_and ~be_if ~be_more ~be_off ~before_it ~before_my ~but_a ~but_let ~by_now
~c_did ~c_the ~c_they ~can_do ~could_O ~d_but ~d_no ~d_of ~d_they ~do_and ~do_at ~do_these
~does_K ~does_P ~does_not ~down_! ~down_or ~first_U ~for_how ~for_our ~from_S ~go_. ~goes_out
~got_O ~got_V ~got_going ~had_d ~had_not ~has_c ~has_his ~has_now ~has_to ~have_V ~have_got
~have_the ~here_to ~hers_S ~i_K ~i_U ~i_now ~i_should ~i_went ~in_now ~is_a ~is_going ~is_now
~is_of ~is_since ~is_to ~it_more ~it_since ~it_the ~it_to ~may_i ~me_c ~me_i ~mine_at ~more_c
~my_K ~n_have ~n_that ~n_then ~n_with ~no_K ~no_V ~no_and ~not_V ~not_and ~not_in ~now_, ~now_at
~now_in ~now_she ~now_when ~now_you ~of_K ~of_n ~off_or ~off_so ~ok_but ~on_one ~or_has ~or_must
~or_we ~our_c ~out_as ~out_c ~over_V ~over_a ~over_so ~put_d ~put_her ~put_my ~said_? ~says_to
~second_? ~she_goes ~she_is ~should_the ~since_and ~so_are ~some_S ~still_be ~taken_it ~taken_over
~tell_S ~tell_you ~that_and ~that_in ~that_the ~that_yet ~the_K ~the_first ~then_O ~then_U
~then_how ~then_i ~then_my ~then_tell ~there_like ~there_will ~this_is ~this_n ~this_on ~till_what
~to_K ~to_V ~too_. ~too_c ~up_by ~up_not ~up_since ~us_U ~us_for ~was_K ~was_on ~we_get ~we_have
~we_never ~we_will ~what_did ~what_in ~when_he ~when_it ~which_can ~which_do ~who_can ~will_never
~with_? ~with_V ~with_them ~with_this ~with_what ~would_like ~would_w ~yes_! ~yes_and ~yes_c
~you_not
5 # #expecting:false:all #heard1 #phrase:S3 #phrase:most <t:25> =acknowledge:most =add-hands:S1
=add-hands:all =affirm:S0 =affirm:S1 =affirm:some =affirm:to-confirmation =ask-amount =ask-next:phrase
=ask-options:phrase =ask-plan:S1 =ask-plan:most =ask-safety =ask-safety:S2 =ask-safety:few
=ask-safety:some =ask-shopping:S0 =ask-slice =ask-slice:phrase =ask-slice:some =ask-status:some
=ask-temperature =ask-temperature:most =ask-temperature:some =ask-time-left:few =cook-away
=cook-away:most =describe-roast:some =describe-roast:to-roast =drop-dish:few =drop-dish:frame
=forget-kitchen:S1 =help:S0 =note-guest:few =note-guest:phrase =repeat:phrase =report-done:S0
=report-out:frame =report-oven:S3 =report-oven:most =report-oven:some =report-reading:phrase
=report-setup:phrase =report-started:S0 =report-thermometer =report-thermometer:S1 =report-thermometer:phrase
=report-trouble:most =running-behind:phrase =set-guests:S0 =set-guests:most =set-timer:S0 =set-timer:frame
=set-timer:phrase =skip-step =undo =watch:S0 =watch:few ? ?heard6 accident adding against also
anybody apart appointment arra assembled baked bitter bone bonfire boxed brought builders buns
burners cap carving clear control cooked cow creamed degrees dental dragon eaters electric
ended faint fish fit fix flashing flip foil from grab grease grown grows hauns hon hungry inform
instant-read jim job jodie jumps killed kilo know knowing ladies lena leo lie lifting light
loops lumpy mashed meanwhile melting minutes ml most mustard note obviously oiled olu otherwise
pay paying peeled pepper person plus position prefer preheating present pretend prime quantity
queue rajiv rolling rubbed scalloped scissors scraped seems serve shops silverside siobhan
spoil spud staring string stuff surely sweet system tail taken tash teenagers thickest tidy
tomasz toronto track train twine under units upstairs visitors wall warn whisked wilted wish
won worry yorkshire ~,_P ~,_already ~,_does ~,_mine ~,_still ~,_they ~,_w ~._he ~._i ~._me
~._ok ~._still ~._what ~._why ~K_K ~K_and ~K_been ~K_going ~K_have ~K_it ~K_n ~K_that ~K_till
~K_too ~K_we ~K_with ~O_my ~O_she ~O_t ~O_the ~O_when ~O_will ~P_what ~S_O ~S_S ~S_it ~S_out
~S_when ~U_be ~U_into ~U_it ~U_the ~U_them ~U_when ~V_about ~V_did ~V_from ~V_here ~V_hers
~V_i ~V_it ~V_must ~V_should ~V_thanks ~V_where ~V_yet ~^_has ~^_might ~^_one ~^_this ~a_d
~a_first ~about_the ~ago_$ ~ago_i ~all_for ~all_is ~already_put ~am_$ ~and_now ~any_. ~any_more
~are_, ~are_down ~are_the ~as_O ~as_a ~as_n ~at_, ~be_V ~be_it ~by_S ~by_this ~c_K ~c_P ~c_do
~c_down ~c_if ~can_K ~can_we ~could_not ~d_$ ~d_ago ~d_c ~d_i ~d_is ~d_not ~do_me ~do_on ~does_all
~done_in ~done_what ~down_, ~down_by ~first_and ~from_c ~get_O ~get_on ~goes_on ~going_to ~gone_all
~gone_off ~got_a ~got_his ~had_a ~had_my ~has_n ~have_O ~have_his ~he_can ~he_got ~him_to ~how_V
~how_am ~how_the ~i_go ~if_it ~in_S ~in_there ~is_as ~is_he ~is_taken ~is_us ~is_y ~it_U ~it_as
~it_be ~it_go ~it_off ~it_then ~let_a ~like_V ~me_down ~me_if ~might_as ~more_? ~my_c ~n_K
~n_before ~n_let ~n_till ~n_when ~no_. ~no_tell ~not_be ~not_like ~now_. ~now_O ~now_not ~now_so
~now_then ~of_S ~of_mine ~of_that ~off_first ~ok_? ~on_? ~on_at ~on_g ~on_yet ~or_do ~or_what
~or_will ~ours_is ~out_already ~out_my ~out_the ~out_this ~put_K ~said_. ~say_that ~second_one
~second_so ~shall_V ~she_be ~should_i ~so_it ~so_they ~still_V ~t_. ~t_the ~taken_out ~than_K
~thanks_for ~that_about ~that_it ~that_on ~that_take ~them_and ~them_c ~them_up ~there_not
~they_be ~they_still ~this_K ~this_S ~till_K ~till_d ~till_n ~to_g ~to_go ~to_that ~up_? ~up_c
~up_the ~us_after ~us_and ~us_down ~us_will ~w_V ~was_done ~went_, ~were_S ~what_a ~what_about
~what_goes ~what_should ~when_? ~when_S ~when_we ~where_have ~where_would ~which_K ~will_V
~will_the ~with_i ~y_V ~yet_$ ~yet_so ~you_? ~you_K ~you_got ~you_were ~your_U
6 #phrase:S0 . <t:12> =add-dish =add-dish:most =add-hands:guess =affirm:all =ask-amount:S0
=ask-amount:all =ask-guests =ask-how:S2 =ask-how:guess =ask-how:some =ask-next:S0 =ask-next:some
=ask-options:guess =ask-safety:phrase =ask-slice:most =ask-substitute:few =ask-temperature:S1
=ask-why:S0 =ask-why:guess =ask-why:some =cancel-timer:phrase =choose:S3 =cook-away:S1 =cook-away:phrase
=correct:S0 =correct:S3 =deny:to-confirmation =describe-roast:S1 =drop-dish:S2 =forget-kitchen
=forget-kitchen:S0 =forget-kitchen:phrase =have:all =help:all =note-guest =pause:frame =report-done:guess
=report-done:most =report-done:phrase =report-not-done:frame =report-not-done:most =report-out:all
=report-oven:phrase =report-reading:to-confirmation =running-behind =running-behind:all =set-doneness:S0
=set-doneness:all =set-doneness:guess =set-method:all =set-method:frame =set-serving-time:S0
=set-serving-time:frame =set-units:frame =set-units:phrase ?heard4:phrase ?heard7:frame absent
aisle alex alongside arm balls bang become beeped bend bigger blew body bothering bram browned
brussel brussels business butter butterflied butternut care carked chuck circling claims closes
cookie crank crawling cylinder delete dem destroyed di diabetic dialled dog don'tcha ducking
dyou else everyone exists fat fewer fillet fingers flicked flickered fried gang gie grill groceries
hanging hazard headlines hearty heck hole holler hung hurling ideas internal into joss jump
kai kept kill kit landlord law leg loin lump mac meantime measure meat meera mixer mouldy move
mute napkins neeps netted niece nor noticed notify och ottoline outta pans pause pen pencil
popped pouring prep pretty processor pull putting reasoning rental rescued rib righty roar
rolls rory roughed roughly ruin rump same sauces scrape seawater shelves shove shoved show
shown shredded sleeps sooner sorry space stood strained stupid suggestions sunset sweetheart
tepid tilly tins toast together touching tray typed voice wait water wine wondering word wreck
write yank yogurt yorkshires youll ~,_S ~,_d ~,_has ~,_how ~,_of ~,_take ~._are ~._did ~._then
~._would ~?_mine ~K_O ~K_do ~K_down ~K_go ~K_our ~K_says ~K_shall ~K_took ~O_do ~O_his ~O_that
~O_yet ~P_had ~P_so ~S_like ~S_who ~U_d ~U_first ~U_how ~U_more ~U_said ~U_your ~V_d ~V_into
~V_never ~V_out ~V_took ~^_could ~^_n ~^_took ~a_go ~about_$ ~about_K ~about_S ~about_U ~about_what
~after_d ~all_? ~already_d ~am_i ~and_could ~and_done ~and_me ~and_no ~are_P ~are_not ~are_now
~are_up ~as_K ~at_? ~at_some ~be_all ~been_out ~before_, ~before_that ~but_the ~by_for ~c_will
~can_O ~can_he ~can_the ~d_are ~d_now ~d_that ~did_not ~do_be ~do_d ~done_K ~down_as ~down_d
~down_on ~first_$ ~for_K ~for_my ~from_n ~g_. ~g_she ~get_S ~go_$ ~go_in ~go_to ~goes_in ~goes_with
~gone_down ~gone_to ~got_? ~got_her ~had_V ~had_and ~has_V ~has_the ~have_a ~have_me ~have_still
~have_them ~he_have ~he_should ~here_! ~here_on ~how_c ~i_done ~i_took ~if_K ~if_so ~if_your
~in_$ ~in_K ~in_V ~in_when ~into_his ~is_U ~is_but ~is_here ~is_not ~it_after ~it_d ~it_one
~me_K ~me_all ~me_an ~me_at ~me_now ~me_ok ~more_are ~must_it ~n_it ~n_up ~n_who ~never_been
~not_tell ~not_too ~now_is ~now_that ~now_to ~now_would ~of_O ~of_before ~off_O ~off_d ~off_in
~off_this ~off_till ~ok_S ~ok_so ~on_d ~on_us ~one_you ~or_? ~or_V ~or_there ~out_K ~out_O
~out_d ~out_we ~put_S ~put_the ~say_O ~says_. ~says_but ~should_do ~should_there ~since_V ~since_y
~so_he ~so_put ~so_take ~so_what ~so_you ~some_d ~some_of ~still_ok ~t_what ~tell_c ~than_V
~that_down ~that_out ~that_you ~the_g ~the_now ~them_? ~them_d ~them_n ~them_so ~then_$ ~there_another
~there_now ~they_are ~those_V ~till_the ~to_, ~to_do ~to_for ~too_U ~took_S ~took_her ~up_does
~up_now ~up_or ~up_till ~us_it ~w_K ~was_it ~went_in ~went_up ~were_all ~what_have ~what_on
~what_shall ~what_the ~what_you ~why_can ~with_which ~yes_yes ~you_P ~you_did
7 #expecting:true:all #frame:S3 #frame:few #words3 =add-hands =add-hands:frame =add-hands:phrase
=ask-how:most =ask-how:to-roast =ask-plan:S0 =ask-shopping =ask-substitute:S0 =ask-substitute:some
=ask-temperature:all =ask-time-left:guess =ask-why:to-choice =deny:most =drop-dish:most =feed-public:some
=forget-kitchen:all =forget-kitchen:some =have:S0 =lack:phrase =note-guest:S0 =note-guest:most
=quiet:all =quiet:to-confirmation =repeat:S1 =repeat:few =repeat:most =report-done:S1 =report-done:all
=report-guests =report-guests:S0 =report-guests:phrase =report-not-done:all =report-out:S0
=report-out:phrase =report-oven:to-step =report-setup:S0 =report-setup:some =report-started:all
=report-started:phrase =report-thermometer:some =report-trouble:phrase =running-behind:S1 =running-behind:most
=set-guests:phrase =set-method:S0 =set-method:some =set-serving-time:to-confirmation =set-units:few
=shift-serving:guess =watch =watch:phrase ?heard6:phrase ?heard7 ?heard7:phrase ?heard8:frame
absolutely air alone approximately arrive aunt banging bat batch beginning billowing bird bits
blank blind browning bumped cabbage carrots catch check checked chocolate coeliac cold connection
counts cracking cranked dauphinoise different differently dining ditch doneness dreadful dump
earth eat ex exactly expect failure fell flask flipped folks forever forward freezer fundraiser
furniture game gauge ghee grey handed happen haud heaven hendersons isla juice knob layered
leave-in littlies looked make margarine menu metric mint morag much must mutton nadia near
none nonsense nora offered offering ok ones overdoing overdone own paolo parboil pig ping possess
raising ran reaching required rests rinse roasting rugby sadly salmon sanjay sauce schedule
scrubbed share shiny sieve skipping slid slimy so son squash step stones stopped stuffing suit
swore thicken thinner tips toddlers toss totally trick trussing very waylaid wilf wire wireless
yard yer ~!_V ~!_how ~!_is ~,_do ~,_went ~,_yes ~._could ~._how ~._my ~._second ~K_done ~K_got
~K_has ~K_how ~K_no ~K_now ~K_or ~K_w ~K_will ~O_another ~O_for ~O_me ~P_O ~P_must ~P_on ~P_we
~S_U ~S_all ~S_are ~S_has ~S_me ~S_now ~S_should ~U_K ~U_O ~U_but ~U_done ~U_from ~V_? ~V_if
~V_like ~V_so ~V_too ~^_K ~^_at ~^_since ~^_there ~about_in ~after_all ~after_we ~ago_and ~ago_n
~all_are ~all_my ~already_i ~and_do ~and_gone ~and_will ~another_d ~any_c ~are_off ~as_we ~at_d
~be_at ~be_d ~be_in ~because_i ~been_U ~been_a ~but_K ~but_U ~but_no ~by_K ~c_for ~c_how ~c_over
~c_says ~c_still ~d_K ~d_it ~d_off ~d_over ~do_. ~do_about ~do_all ~do_i ~do_this ~does_$ ~does_this
~done_put ~down_and ~down_before ~down_so ~for_another ~g_$ ~g_it ~g_now ~get_K ~get_why ~go_K
~go_O ~go_out ~going_but ~have_? ~have_S ~have_U ~have_here ~have_not ~he_had ~hers_V ~him_for
~his_S ~his_must ~how_must ~how_should ~if_that ~if_they ~in_after ~in_and ~in_this ~in_w ~into_it
~is_? ~is_S ~is_after ~is_from ~it_? ~it_and ~it_for ~it_how ~it_must ~like_how ~like_what
~like_you ~me_. ~must_take ~my_in ~n_go ~n_has ~n_the ~n_they ~no_it ~no_more ~not_get ~not_going
~of_us ~off_c ~ok_V ~ok_the ~ok_to ~on_$ ~on_do ~on_is ~one_says ~or_down ~or_my ~other_in
~other_n ~out_what ~over_K ~second_it ~second_of ~she_have ~so_why ~still_have ~t_at ~taken_V
~taken_the ~that_can ~that_do ~that_we ~the_c ~their_O ~then_what ~there_U ~there_and ~this_.
~this_here ~this_one ~to_P ~to_it ~too_, ~up_and ~up_as ~up_d ~up_do ~up_i ~us_O ~us_S ~us_V
~us_c ~us_get ~us_have ~w_O ~w_but ~w_no ~was_$ ~was_me ~we_do ~we_go ~we_going ~we_up ~what_$
~what_, ~what_for ~what_now ~what_was ~what_will ~when_is ~when_to ~when_will ~which_U ~which_is
~why_it ~why_so ~why_you ~will_a ~with_S ~would_a ~would_take ~would_the ~yet_it ~you_had
8 <g> =add-dish:S0 =add-dish:all =add-hands:to-step =ask-amount:few =ask-amount:some =ask-options:all
=ask-options:few =ask-plan =ask-safety:S0 =ask-shopping:S2 =ask-shopping:most =ask-shopping:phrase
=ask-slice:S1 =cancel-timer:S0 =cancel-timer:some =cook-away:frame =correct:few =describe-roast:all
=drop-dish:all =feed-public:S3 =have:most =note-guest:all =repeat:S2 =report-guests:most =report-not-done:to-reading
=report-thermometer:S2 =report-trouble:S1 =report-trouble:frame =running-behind:guess =set-method
=set-method:most =set-method:phrase =set-timer:some =skip-step:frame =skip-step:most =watch:all
=watch:most ?heard8:guess ?heard8:phrase ?talk1 accent acting ages anyway arrives arsed balloon
barnaby basket bin blanched bother braised brush building buttered buying bypass carries center
cents climbing clue complete conked correction count cracked crackling crept crew daft date
daughter declan delivery docks doubtful drink dripping electrics everythings fella fetch fever
fine foggiest forerib fork forks fort fridge friends ft gives giving glass golden grain granny
gym ha halved happening hauled helping ho horseradish immune include inside instant instead
intolerant kids killing kilos kindly known lang lard laws learned likes longer maybe mercy
messages mister momma naked neighbors nuts officer pace parents park parsley parsnips paste
per poisoning postpone problem proofing puppy recall record regular rescue revert ribs scratch
sear seconds separator shake shrimp sick sides silver skinny slide smelling snug sort sprouts
steaks stepping stove swim switched syrup tastes test tickets tie tied tongue tossed trains
tv twist unit upside version vinegar volunteered wallpaper wey which whipping wind worse wrapped
wren yell yelling yoghurt ~!_n ~,_going ~,_if ~,_my ~,_on ~,_so ~._$ ~._do ~._like ~?_$ ~?_they
~K_? ~K_U ~K_all ~K_first ~K_should ~K_thanks ~K_when ~K_would ~O_because ~O_him ~O_how ~O_so
~O_would ~P_has ~P_he ~S_on ~S_our ~S_still ~S_too ~U_down ~U_where ~U_will ~V_already ~V_his
~V_how ~V_over ~V_what ~V_yes ~^_can ~^_done ~^_ok ~^_put ~^_says ~^_was ~about_that ~after_P
~after_i ~all_. ~all_and ~all_at ~all_on ~all_put ~all_taken ~already_in ~am_from ~am_no ~and_what
~another_n ~any_S ~are_so ~are_too ~as_S ~as_it ~at_a ~at_up ~at_when ~be_a ~be_an ~be_by ~be_so
~be_this ~been_d ~before_U ~before_i ~but_P ~but_V ~but_we ~by_that ~by_the ~by_then ~c_here
~c_tell ~c_was ~c_why ~c_with ~can_be ~can_it ~can_my ~can_put ~d_? ~d_about ~d_for ~d_we ~do_after
~do_one ~do_which ~does_S ~done_too ~down_a ~down_all ~down_will ~first_the ~first_then ~for_him
~from_V ~from_you ~g_and ~get_$ ~get_c ~get_this ~goes_$ ~goes_the ~going_as ~gone_? ~gone_for
~gone_that ~got_K ~got_and ~he_will ~her_the ~here_K ~here_O ~here_d ~here_with ~him_a ~how_$
~how_i ~i_had ~i_n ~i_still ~i_take ~in_by ~in_what ~into_S ~is_already ~is_any ~is_first ~is_more
~it_before ~it_can ~it_has ~it_that ~it_till ~it_up ~it_where ~like_, ~like_c ~me_but ~me_d
~me_from ~more_U ~more_V ~more_to ~must_K ~n_. ~n_be ~n_but ~n_how ~n_is ~never_going ~no_c
~no_to ~not_c ~not_d ~not_done ~not_gone ~not_me ~not_taken ~now_if ~of_in ~of_those ~of_what
~on_her ~on_our ~on_since ~on_t ~on_them ~on_there ~on_those ~on_you ~one_K ~one_V ~one_on
~one_second ~one_that ~one_yet ~or_any ~or_it ~our_P ~ours_was ~out_or ~over_an ~over_w ~put_them
~say_. ~say_he ~says_he ~says_her ~says_n ~second_$ ~she_K ~should_be ~should_it ~since_it
~so_c ~so_when ~still_no ~t_, ~t_V ~t_in ~t_is ~t_out ~t_too ~tell_to ~tell_what ~that_me ~that_my
~the_no ~the_of ~them_on ~then_another ~there_P ~there_be ~this_$ ~this_c ~up_from ~up_n ~us_K
~us_do ~us_go ~was_that ~went_for ~were_V ~what_could ~what_do ~when_can ~when_should ~where_to
~which_c ~who_S ~who_are ~why_must ~will_it ~will_no ~with_$ ~with_all ~with_her ~would_S ~you_U
9 #phrase:all <t:80> =ask-guests:most =ask-next:frame =ask-safety:most =ask-status:few =ask-status:phrase
=ask-substitute:all =ask-substitute:guess =ask-temperature:to-doneness =ask-time-left:S3 =ask-why:frame
=cancel-timer:all =cook-away:few =correct:all =feed-public:S1 =help:some =lack:all =note-guest:guess
=pause:phrase =pause:some =report-not-done:to-roast =report-out:some =report-reading:few =report-trouble:all
=set-units:S0 =set-units:most =set-units:some =undo:phrase ?heard6:frame ?heard8 ?talk0 account
aiming allergy american amount anchovies appetite ara arguing attention auntie ayuh baste beans
bet between bit black blade bloody board boner bottom broccoli btw bubbling budge bum buttons
calling carved cauliflower church climbs completed consider cooler core d'ye dae dan dat deb
deep deglaze deglazed difference dished doon doorbell drawer dropping egg emre fahrenheit falls
fed flag floor flower forgive freeze gap glazing gold grams grand grandfather grandpa grate
greased grilling growing gwen haan hal heads heat ice id jain jo jug kavi keep kidney kidneys
lactose lead lose lost lumps mammy manage mandoline mark mash measured messing mrs nagging
neither nephew noo nudged onwards ounces overcooked overshot overview packet persons prayer
proving reading remaining remind removing rosemary rundown runs seasoned send sharp shout silly
smoke soaking sock sounded sounds sous sprout starters steeping sticker talking teenager tek
thick think thought timetable topped torch tough tractor treat trifle trip typo understanding
vegetarian wan wheesht whoa wicked worktop yapping yusuf ~!_U ~,_. ~,_am ~,_like ~,_may ~,_one
~,_when ~,_y ~._and ~._does ~K_d ~K_goes ~K_off ~K_ok ~K_one ~K_said ~K_where ~K_yes ~O_one
~P_her ~P_here ~P_him ~P_says ~P_took ~S_had ~U_because ~U_goes ~U_we ~U_with ~V_. ~V_am ~V_more
~V_some ~V_which ~^_after ~^_by ~^_c ~^_out ~^_some ~^_them ~a_w ~about_my ~about_yet ~after_S
~after_V ~after_c ~all_K ~all_V ~all_they ~already_K ~am_here ~am_in ~an_c ~and_my ~and_there
~and_where ~at_our ~at_t ~be_gone ~been_on ~c_go ~c_me ~c_one ~c_put ~c_we ~can_a ~can_get
~could_i ~d_before ~d_so ~d_there ~d_to ~do_us ~done_. ~done_but ~done_they ~down_. ~down_from
~down_in ~first_, ~first_n ~for_now ~for_what ~g_V ~get_to ~go_up ~goes_it ~going_in ~going_ok
~got_that ~got_them ~has_had ~have_$ ~have_K ~have_any ~have_that ~her_to ~here_now ~him_and
~his_at ~i_all ~i_already ~i_never ~i_shall ~i_was ~in_. ~in_from ~in_them ~in_till ~in_yet
~into_the ~is_off ~is_ok ~is_went ~it_all ~it_should ~let_us ~like_this ~me_like ~mine_does
~more_and ~more_or ~n_about ~n_d ~n_do ~n_since ~n_tell ~n_will ~n_yes ~n_you ~never_K ~not_U
~not_got ~not_here ~not_on ~now_till ~of_her ~of_now ~ok_$ ~on_. ~on_K ~on_no ~on_not ~on_second
~or_a ~or_no ~out_first ~out_it ~over_here ~said_and ~said_d ~says_S ~second_. ~second_c ~second_is
~second_would ~should_have ~so_i ~so_my ~so_yes ~still_K ~still_O ~still_n ~take_them ~take_this
~tell_if ~tell_me ~than_what ~that_a ~that_going ~that_too ~that_with ~the_go ~their_S ~them_or
~then_a ~there_before ~there_is ~there_it ~there_n ~there_what ~this_? ~till_y ~to_take ~took_it
~up_already ~us_what ~w_all ~w_not ~was_out ~we_put ~we_shall ~went_on ~what_with ~when_do
~where_V ~which_of ~why_U ~will_let ~with_. ~with_us ~would_go ~would_that ~y_K ~yes_or ~you_and
~you_i ~you_one ~you_tell
10 #words1 #words2 =add-dish:guess =add-hands:most =ask-guests:few =ask-how:frame =ask-next:S2
=ask-shopping:some =ask-status:to-reading =ask-substitute:S1 =ask-substitute:S3 =ask-temperature:S2
=deny:S0 =drop-dish:S1 =drop-dish:guess =emergency:some =feed-public:S0 =help:most =quiet:phrase
=report-out:to-step =report-oven:S2 =report-setup:all =resume:S3 =running-behind:S0 =set-serving-time:all
=set-serving-time:to-choice =skip-step:S3 =skip-step:phrase =start-over:few =undo:guess actual
adjust around backs becomes becoming beep blast blown boned bones border brake buy buzz c cauli
chopped chopper close completely cooling cremated crook crowds dead deadly des dinner drained
drank drowning eggs extra far florrie floss folding frenched fresh gotcha graham granddad gratin
haul heats helper hockey hop hospital hotter huh ill joan keeping knots kosher lack lagging
land lino loosely marnie matter melted moaning muffin na neighbor noah obliged onto overwhelmed
pale panicked parboiling petra plated poked popovers possible powder public purple purpose
pushing removed report ricer right rocked rub salvage sauna scene screaming searing seats settle
shallots short shut sizzling smashed snowed sorted sprig stage stall steaming stirring storm
studded supper support suppose supposed sushi swells tailed tasted tested texted theo thickens
thyme ticket timeline total touched tracking turned tying uncovered unless waited waiting warm
warmed whipped whistle working ~,_thanks ~._can ~K_before ~K_can ~K_get ~K_she ~K_so ~O_c ~O_more
~P_P ~P_are ~P_if ~S_how ~S_this ~U_have ~U_she ~U_what ~U_why ~V_going ~V_not ~V_still ~V_will
~^_, ~^_U ~^_any ~^_as ~^_be ~^_because ~^_for ~^_from ~^_going ~^_not ~^_would ~after_a ~ago_S
~ago_now ~all_about ~all_d ~all_over ~already_, ~am_a ~am_now ~am_up ~an_V ~and_all ~and_be
~and_can ~are_here ~are_in ~are_like ~as_done ~at_me ~at_now ~at_that ~be_for ~because_it ~been_done
~before_? ~before_K ~before_d ~before_n ~but_it ~c_are ~c_does ~c_now ~c_she ~could_go ~could_you
~d_. ~d_because ~d_in ~d_n ~d_then ~d_what ~do_$ ~do_before ~do_have ~do_like ~do_now ~done_that
~down_V ~down_after ~down_c ~first_K ~for_, ~for_them ~from_now ~from_where ~go_down ~go_with
~going_and ~gone_, ~gone_from ~had_$ ~have_now ~have_said ~have_theirs ~how_K ~how_U ~how_about
~how_they ~i_got ~if_there ~in_for ~in_our ~in_she ~in_they ~in_which ~in_with ~is_she ~is_with
~it_. ~it_S ~it_if ~it_now ~it_ok ~it_tell ~it_we ~let_in ~like_O ~like_P ~me_V ~me_a ~me_and
~me_in ~me_why ~mine_says ~must_V ~n_i ~n_now ~n_she ~n_too ~never_c ~no_what ~now_for ~now_how
~now_it ~of_these ~of_where ~off_. ~off_S ~off_n ~off_now ~off_on ~off_where ~ok_, ~ok_done
~on_let ~on_we ~or_does ~or_should ~out_all ~out_do ~out_since ~out_till ~out_with ~over_to
~said_i ~say_V ~says_because ~says_one ~second_and ~shall_be ~she_do ~so_if ~so_on ~so_she
~so_tell ~so_there ~so_we ~t_on ~take_K ~take_out ~tell_$ ~than_we ~that_at ~there_on ~there_still
~there_to ~they_went ~till_my ~till_we ~to_those ~up_. ~up_S ~up_we ~us_n ~us_now ~w_. ~w_on
~w_with ~was_off ~we_? ~what_am ~what_c ~what_if ~when_she ~which_all ~why_V ~why_c ~why_does
~why_i ~why_in ~why_n ~why_we ~will_K ~with_is ~with_it ~would_do ~would_it ~would_we ~yes_did
~yes_put ~yet_V ~you_. ~yours_$
11 =ask-next:to-step =ask-options:to-doneness =ask-shopping:S1 =ask-temperature:S3 =choose:frame
=cook-away:S2 =deny:to-choice =describe-roast:frame =help:frame =pause:S0 =report-guests:S1
=report-guests:guess =report-not-done:S3 =set-serving-time:S3 accidentally aluminium ancient
available bean beg bells bertie blower boneless brb bump bums buttermilk button callum capers
cares celery celiac checking cider click code commands continue correct counting crap cups
dentist diabetes display driveway dying earlier electricity enough entry eye few fits food
forgot former fully gas great grub hairdresser halal hames heading hour juices kettle later
leftovers lend life loaf lord lordship louder low lowered luck main makes marisol mates mess
message method minding misheard mouths nervous normally o oclock onion onions opened parboiled
parked po proceed progress rather reducing regardless rid robot roots rosé salted salting salty
saying scraping seem sevens simmering sitting slice somehow spinning splitting spot stopping
store stragglers sufficient sulk supermarket suzanne tenderloin thaw thermometers tom topping
topside tripped truss trusted trying tummy twins unpause urgent walk warmer wee whacked whatsoever
while whip wife words ~!_so ~._not ~._too ~._we ~._when ~K_as ~K_because ~K_must ~K_they ~K_which
~O_did ~O_first ~P_n ~P_out ~S_them ~U_has ~U_if ~U_so ~V_g ~^_all ~^_with ~after_it ~after_this
~all_too ~already_the ~am_U ~am_d ~am_gone ~am_with ~an_w ~and_would ~and_yes ~another_go ~are_still
~as_is ~as_of ~at_. ~at_this ~at_what ~been_put ~but_O ~but_not ~c_about ~c_her ~c_ok ~c_or
~c_so ~c_when ~can_$ ~d_already ~d_down ~d_on ~d_till ~d_will ~do_any ~do_that ~does_that ~done_$
~done_V ~done_d ~done_i ~done_so ~down_K ~for_is ~for_not ~from_there ~get_n ~go_so ~going_O
~going_V ~got_S ~got_it ~had_been ~have_already ~her_out ~here_. ~here_till ~him_down ~his_has
~how_can ~how_would ~i_going ~i_on ~if_c ~in_as ~in_so ~in_to ~is_hers ~is_second ~it_another
~it_are ~it_have ~it_so ~it_yet ~let_the ~like_? ~like_it ~like_to ~me_S ~me_some ~me_till
~me_what ~n_ago ~n_so ~n_this ~no_second ~not_been ~not_to ~now_t ~of_$ ~of_this ~off_my ~ok_or
~on_me ~on_now ~or_off ~out_here ~over_. ~over_? ~over_is ~over_it ~over_with ~put_a ~put_at
~said_before ~say_me ~says_U ~says_another ~since_d ~since_i ~so_like ~take_$ ~take_off ~taken_a
~that_$ ~that_. ~that_? ~that_be ~that_i ~the_d ~the_w ~them_. ~there_can ~this_up ~those_$
~those_what ~to_let ~to_no ~too_and ~up_so ~us_a ~us_be ~us_not ~we_like ~we_ok ~we_say ~were_c
~were_not ~what_all ~when_would ~where_do ~why_the ~with_me ~with_you ~would_n ~y_. ~yes_K
~yet_i ~yet_in ~yet_to ~you_the
12 =add-dish:S2 =add-hands:S2 =ask-guests:S0 =ask-guests:all =ask-plan:all =ask-temperature:frame
=ask-time-left:frame =ask-why:to-step =correct:to-confirmation =help:phrase =report-started:to-step
=set-method:few =set-method:guess =set-units:S2 =start-over:frame =undo:all =watch:guess able
adults aff almost ankle awake band bar batter blinking blush bouncing breaker bridie bugger
bust busy buzzing change chewing chilly chucking clicked colander cookies customers dare dial
ding dong draining easy edge edges element eta f faff feeding figure firehouse forgotten frenching
further garlic gave gnawing grandkids grater greasy guess guts harm hearing herbs hopping host
inverter invite invited joint keeps kicked knock lamp laps lemon lies lines lorry lower mashing
meant metres mushrooms necessary nix nowhere numb ought parish passed patted patting peace
peek pieces possibilities prepone pressed price puddings pure quick quicker rail ravi refuse
ripper rise roommate runny scrub shape shows soft spare spinach sticky strain sub such sunflower
tae tarragon tells thin thinners transplant turns update voted walking wean winning woke writes
wrote youd young ~!_now ~,_before ~,_by ~,_other ~,_till ~._if ~K_i ~K_my ~O_am ~O_d ~O_since
~O_us ~P_c ~P_down ~S_as ~S_get ~S_my ~S_no ~S_took ~U_as ~U_not ~V_ok ~V_say ~V_tell ~^_down
~^_g ~^_got ~^_till ~^_which ~about_d ~all_up ~already_n ~am_after ~am_that ~and_after ~and_are
~and_how ~and_say ~and_when ~any_K ~are_me ~are_no ~be_here ~be_now ~been_at ~been_there ~c_after
~c_any ~c_d ~c_it ~can_go ~d_U ~did_i ~did_we ~done_to ~down_n ~down_till ~first_? ~first_or
~for_. ~for_some ~for_to ~from_U ~from_this ~go_S ~go_from ~gone_U ~gone_V ~got_for ~got_to
~has_$ ~her_at ~hers_$ ~hers_, ~his_out ~how_S ~i_put ~i_to ~if_V ~if_you ~in_no ~is_g ~is_yet
~it_do ~it_got ~it_had ~like_a ~me_after ~me_my ~me_so ~me_t ~n_like ~n_should ~n_which ~no_no
~not_more ~not_my ~now_P ~now_do ~of_me ~off_for ~off_we ~ok_. ~ok_it ~ok_that ~on_or ~on_they
~on_too ~on_what ~one_do ~one_for ~or_can ~out_another ~over_i ~over_what ~put_n ~put_on ~second_ago
~second_from ~should_V ~should_he ~since_S ~since_c ~since_my ~so_let ~some_c ~still_$ ~t_it
~taken_their ~tell_V ~than_it ~than_you ~that_all ~that_for ~that_has ~that_no ~that_would
~them_K ~then_and ~these_. ~they_will ~this_d ~to_? ~to_have ~to_i ~to_tell ~to_you ~took_V
~w_of ~was_from ~was_too ~we_$ ~we_n ~went_down ~what_does ~what_i ~where_was ~will_go ~with_these
~yes_go ~yes_what ~yet_. ~yet_still ~you_a à
13 =ask-amount:S2 =ask-amount:guess =ask-guests:guess =cancel-timer:few =deny:all =note-guest:to-guests
=pause:S3 =report-started:S2 =report-trouble:to-step =resume:all =set-guests:to-confirmation
=set-guests:to-roast =set-method:S1 =shift-serving:some =undo:S0 =undo:some adult afresh alcohol
allergies alternatives announcements asparagus aunties ay betcha beyond bhaiya blocked boil
boss breather cable calibrate carryover choice clever climbed clove collect crackle crime crust
dangerous dishwater distracted dressed dripped drunk either error examples fighting flickering
follow grated happened happens hate headcount higher hush imperial ingrid jar jelly label latest
leaving living losing mad meal mi miss mo monster mush needed nursing odd ordinary oregano
patience peeler peeling plain plenty plot plow pregnant properly push rate refrigerator reminding
replace rightly rose saddle scorched scrap seated setting sink sits skimmed slow slowly soggy
squeaky squeamish stephen stock style sunk tablespoons tension tf themselves throat ticks timings
trivet underneath vegetables wanting wedged wha wise wrecked wrong ~,_are ~,_more ~._O ~K_am
~K_than ~O_which ~P_put ~S_already ~S_have ~S_he ~^_been ~^_before ~^_me ~^_us ~^_y ~a_no ~a_second
~ago_. ~ago_at ~and_down ~and_his ~and_put ~any_other ~are_S ~are_already ~at_all ~be_that
~but_$ ~but_there ~but_what ~c_by ~c_can ~c_like ~c_off ~c_up ~d_after ~d_more ~do_? ~do_his
~do_what ~down_at ~down_yet ~for_t ~for_us ~get_here ~got_P ~got_as ~got_here ~has_no ~have_P
~have_i ~have_off ~he_says ~here_but ~here_it ~hers_K ~hers_is ~how_on ~how_we ~i_let ~i_must
~i_not ~in_t ~in_their ~is_them ~it_P ~it_but ~it_get ~it_he ~it_not ~like_S ~me_U ~my_n ~n_what
~never_said ~no_done ~no_go ~no_thanks ~no_yes ~not_up ~not_what ~now_U ~of_d ~of_there ~off_K
~off_it ~on_but ~on_by ~or_S ~or_he ~other_K ~other_O ~out_now ~out_so ~put_, ~put_V ~said_K
~say_? ~say_a ~second_, ~she_can ~she_will ~should_she ~so_S ~some_$ ~still_like ~still_to
~take_that ~than_i ~than_my ~that_are ~that_there ~that_what ~there_any ~there_has ~there_since
~this_out ~to_what ~up_my ~us_. ~us_d ~w_c ~w_so ~w_we ~we_be ~went_S ~what_and ~where_i ~where_should
~which_one ~why_$ ~will_i ~will_we ~would_U ~yes_the ~yet_or ~yet_there ~you_there
14 =add-hands:S0 =ask-next:few =ask-plan:some =ask-safety:frame =ask-why:few =ask-why:to-confirmation
=cancel-timer:frame =choose:to-choice =feed-public =feed-public:S2 =feed-public:phrase =shift-serving:few
=watch:S1 =watch:S2 acceptable adrift aim bairns baking began birds blasting bleeding bless
blowing breathe choices chopping cinders conventional cooker corn cuppa da dairy digital dishes
doors duty evening everybody faster finger finishing fixing freaking froze gloves gratins greens
greta grid guest hang heavens himself hit hives hollering icebox ignore kiddies knack laying
lily lodger looks lukewarm max meaning minds missed missus mob nipping notion nuh omit pal
palaver panel parchment peppered poke pro propped risk saignant save scalded sea shaken shedding
showed shy situation skillet sleeves sliced slipped snapped speed state staying steady strike
strung teeth thickened thrown thx tipped tomek trimmed trussed underway walkabout weak whether
ya ~!_can ~,_would ~?_my ~K_already ~K_gone ~K_this ~O_can ~O_up ~O_went ~P_do ~S_but ~S_going
~S_so ~S_will ~^_off ~^_to ~^_went ~ago_it ~all_n ~all_of ~all_so ~already_with ~am_so ~are_on
~as_before ~as_the ~be_? ~be_out ~be_too ~but_why ~by_me ~by_t ~c_have ~c_than ~c_then ~can_V
~can_they ~from_me ~g_from ~go_for ~goes_K ~going_down ~gone_S ~has_S ~has_t ~her_. ~here_the
~how_it ~if_P ~in_! ~in_all ~in_but ~in_some ~is_there ~like_in ~may_V ~me_? ~n_no ~n_where
~not_before ~not_y ~now_or ~ok_what ~on_so ~one_out ~one_so ~out_they ~out_to ~out_when ~out_yet
~over_this ~said_what ~say_in ~say_the ~say_they ~says_it ~says_t ~t_more ~that_off ~that_went
~this_at ~to_my ~too_for ~up_here ~up_like ~up_when ~w_it ~we_is ~we_must ~what_O ~what_like
~when_am ~who_does ~why_would ~will_you ~yes_? ~yes_do ~yet_the ~you_for ~you_let ~you_never
~you_what ~you_when
15 =affirm:to-step =ask-how:to-reading =ask-options:to-choice =report-guests:few =report-trouble:to-confirmation
=set-timer:to-step abby aid aperitif bailed beauty begin blender blunt bout bunch bung butterfinger
colder cope countdown creeping crisis cross current dine directly explain fierce footy glaze
holding idk iron jus kip leftover lifted managed measuring nap noise nudge pitch portions pot
r rang risky roaring scoring shaking slices slush sound splash stabbed starting stick stringy
suggest tbh thoughts thumbs tiles trouble u un veggie weeds weights wresting ~._so ~?_? ~?_or
~K_not ~K_yet ~O_all ~P_from ~P_get ~P_were ~S_because ~S_here ~S_not ~U_off ~U_then ~^_already
~^_must ~^_still ~after_$ ~ago_not ~all_U ~all_here ~all_that ~are_a ~be_done ~be_had ~before_the
~before_we ~but_how ~but_i ~c_said ~can_take ~could_it ~d_like ~d_since ~d_the ~d_too ~did_that
~do_so ~does_V ~first_at ~goes_at ~goes_n ~goes_over ~gone_K ~have_hers ~how_does ~i_after
~into_O ~is_him ~is_over ~like_we ~me_or ~more_before ~more_for ~more_n ~no_$ ~not_? ~now_where
~off_to ~one_S ~said_$ ~said_first ~says_K ~says_w ~still_at ~still_going ~than_c ~that_w ~that_was
~there_are ~there_d ~this_or ~up_her ~w_a ~we_still ~what_S ~when_V ~which_would ~why_K ~why_did
~will_U ~with_their ~yes_$ ~you_over ~you_said
16 =ask-options:S3 =ask-plan:guess =cancel-timer:S2 =report-not-done:to-confirmation =set-timer:to-reading
=shift-serving:S2 along altogether begun besides bev bored boyfriend breadcrumbs burned changed
crack crumble delay doll drying feet final finishes frail fussy fyi glasses grandson hovering
ignited ji joining kev kumara mains maud nip nos nutmeg others pardon part plating poorly preparation
racket readings readout reason reminders replacement rings roaster sesame shazza sheet silence
slicing smoky soy speeches spoons spots steamed stretch strings swapped teaspoons tenderised
tented ticked timers understood vanished vote whack wired worried ~,_? ~,_gone ~,_shall ~,_will
~._d ~K_any ~P_but ~U_no ~V_ours ~^_another ~^_up ~after_what ~am_on ~and_hers ~and_is ~as_my
~at_$ ~be_to ~because_my ~can_she ~d_out ~do_c ~done_no ~for_P ~for_this ~gone_d ~has_U ~her_c
~is_w ~it_O ~it_been ~it_what ~it_you ~more_$ ~must_i ~n_my ~n_there ~no_how ~not_i ~now_what
~out_but ~say_about ~so_is ~still_too ~t_that ~that_from ~the_in ~their_P ~them_is ~then_?
~there_V ~to_and ~to_our ~to_t ~up_this ~us_take ~we_P ~we_on ~we_take ~why_not ~why_that ~with_hers
~would_my ~y_it ~yes_O ~you_be
17 =ask-plan:frame =cook-away:S3 =correct:to-choice =deny:guess =feed-public:few =lack:S3 =note-guest:frame
=note-guest:to-doneness =running-behind:few alternative asking banjaxed bay chemo chief cloth
company convection covers cube cubes diamonds dun fi hood hope itself lending liar licked lit
marks meets months nattering negative nicely oldies pescatarian picked pounds reset rn roles
sec shellfish silent slipping soon spreading stands tablets tent thawed whichever whirring
works wrapper yoke ~!_! ~K_put ~O_as ~O_this ~O_what ~S_i ~U_went ~V_would ~^_never ~about_them
~ago_when ~am_out ~and_her ~and_who ~and_why ~as_U ~c_! ~c_be ~c_no ~done_all ~first_so ~got_from
~here_by ~here_n ~i_say ~in_too ~it_were ~me_be ~me_how ~more_it ~n_why ~no_n ~no_still ~now_n
~now_we ~on_to ~other_. ~out_n ~said_w ~say_we ~so_n ~so_that ~thanks_be ~that_should ~them_U
~there_c ~this_be ~to_d ~up_where ~we_at ~we_can ~y_c
18 =affirm:most =ask-next:to-choice =ask-options:S1 =ask-plan:S2 =cook-away:all =correct:guess
=report-guests:to-confirmation =resume:guess ajar app autocorrect bare became bell blackout
cast chewy chilling cornflour diaper dogs drippings enamel english gob hen indeed instruction
jaysus least less letting misread monkeys pete phone pipe practically scale silverskin slips
speak spitting stuck subtract tinfoil using ~K_here ~O_let ~P_at ~S_ago ~am_about ~be_what
~did_get ~do_first ~down_is ~for_$ ~goes_V ~got_put ~here_and ~is_an ~me_of ~n_still ~n_yet
~ok_i ~out_she ~say_n ~say_what ~that_by ~there_a ~this_second ~us_this ~what_were ~where_we
~would_say ~yes_that
19 =skip-step:S1 assisted behaving chew diets flu germs jumping kid lowest masel necks olive
pulling rarer rephrase rosy screen sing ~,_$ ~K_then ~O_these ~S_d ~U_gone ~^_gone ~after_U
~done_here ~go_at ~going_for ~here_for ~is_when ~now_he ~out_P ~so_, ~so_no ~than_she ~that_n
~to_so ~when_d ~when_n ~why_am
20 =repeat:to-confirmation =resume:S2 =set-timer:few brining chasing girlfriend hospice including
lock needle pending pet planning real righto rob sake trimming ~^_had ~already_and ~has_K ~have_her
~her_down ~it_or ~it_t ~no_other ~not_we ~or_did ~or_more ~say_so ~them_off ~till_i ~will_take
21 =add-hands:few auld chimney eyes fintan hob reckon slower thereabouts washed ~P_who ~^_were
~all_going ~and_thanks ~is_our ~who_would
22 =note-guest:S3 =resume:most belly flame moment shifted ~O_no ~S_or ~or_so
23 beast kicking mistake tap things tick unlucky ~there_or
24 =start-over:S0
25 =affirm:guess
27 horses`);

/** Words that have been said to the helper. */
export const familiar: ReadonlySet<string> = new Set(
  `a aa aaand aag abby abeg abi abide ablaze able abort about abouts above abroad absent absolute
absolutely abuela accent acceptable accident accidentally accompaniment according account accounted
accurate achieng achieve aching acorn across act acting action actual add added adding adjust
adjustment adrenaline adrift adult adults advice advise aff affirmative afraid afresh after
afternoon afters again against age aged agenda ages agnes ago agreed agrees ahead ahent ahint
ahmed aid aim aiming ain air airport aisle ajar al alarm alcohol alec alert alex algernon alight
alive all allergic allergies allergy allow allowed allyuh alma almonds almost alone along alongside
already also alternative alternatives altitude altogether aluminium aluminum always am amandine
amazing ambrose ambulance amelia amend american amiss among amount amy an ana anaemic anchovies
ancient and anew anil animals ankle anna announcements announcing another anselm answer answering
answers ant anticipate antipasto any anybody anymore anyone anything anyway anyways anywhere
aoife apart aperitif apologies app apparently appearing appetite appetites appetizer apple
apples appointment approx approximately apricot apricots apron ara araminta are arguing arjun
ark arm arms army around arra arrah arrears arrival arrivals arrive arrived arrives arriving
arrowroot arse arsed arseways arthritis arthur as aside ask asked asking asks asleep asparagus
assembled assign assist assisted assumes asthma astrid at ate attack attempted attention augustin
auld aunt auntie aunties aunty aurelio autocorrect ava available average aw awake away awful
awfy awright axed ay ayuh b bab babak babby babe baby babysitter bach back backlog backofen
backs backside backward backwards bacon bacteria bad badly bag bags bailed bails bairbre bairn
bairns bake baked baker bakery baking ball ballet balloon balloons ballpark balls band bands
bang banged bangin banging banjaxed bank banquet bar barbecue barbie bare barely bark barn
barnabas barnaby barney bartholomew base basil basket baste basted baster basting bat batch
bate bath bathing bathroom batoned batter batteries batters battery battle bay baz bc be bea
beach beaf bean beans bear beast beastie beat beaten beating beats beautiful beautifully beauty
became because become becomes becoming bed bedlam bee beef been beep beeped beeper beeping
beer beers beetroot beets before beforehand beg began begged begging begin beginner beginning
begun behaves behaving behind beige being belay believe bell bells belly below ben bench benches
bend benefit benji bent bernadette bernard bert bertie beside besides best bet beta betcha
beth beto better between bev beyond bhai bhaiya biblical bide biding big bigger bilal bile
bill billowing bin binned binning bins bird birds birthday biscuits bishop bit bite biters
bits bitten bitter black blackened blackout blade blame blanch blanched blank blankets blast
blasted blasting blather blaze blazing bleach bleeding bleeds blended blender bless blethering
blew blind blinked blinking blipping blister blistered blistering blitzed block blocked blocks
bloke blood bloody blow blower blowing blown blowtorch blue bluetooth blunt blush board boarding
boat bob bodies body boeuf boil boiled boiler boiling boils bone boned boneless boner bones
bonfire bonjour bonnet bonnie bonny booking boot boots border bored borrow borrowed borrowing
boss bossy both bother bothered bothering bottle bottom bought bouillon bouncing bout bowl
box boxed boy boyfriend boys brain braised braising brake bram bramleys branch brand brb bread
breadcrumbs breads break breaker breakfast breaking breaks breath breathe breather breathing
bred brendan brents brew brian brick bridge bridie brilliant brine brined bring bringing brings
brining briny brisket bro broc broccoli broccolis broil broiler broke broken bronwen brother
brothers brought brown browned browner browning brownout browns bruh brush brussel brussels
brute bryony btw bub bubbeleh bubbling bucket bucks budge budged budget buena bugger builders
building built bullseye bum bump bumped bums bun bunch bunches bung bunged buns burn burned
burner burners burning burns burnt bus business bust busy but butcher butchers butter buttered
butterfinger butterflied buttering buttermilk butternut button buttons buy buying buys buzz
buzzer buzzing by bye bypass c cab cabbage cabin cable cactus cafe cake cal caleb calibrate
calibrated call called caller calling calls callum calmer came can cancel canceled cancelled
cancels candle candles canteen cap capers captain car caramel caramelised caravan carbonised
carbs carcass card cards care careful cares carked carload carnage carnivore carol carried
carries carrots carry carryin carrying carryover cars carton carve carved carver carving carvings
cashew cashews caspian cass casserole cast castlebar cat catch catched catches catching cater
catered catering cau caught cauli cauliflower cautious cayenne cba ceiling celeriac celery
celeste celiac cellar celsius cement centah center centre cents cerys chainsaw chair chairs
chance change changed changes changing chaos chap chapel chappin charcoal charge charity charring
chasing chat chatter chatterbox cheap cheaper cheapest cheaters cheats check checked checking
cheddar cheers cheese cheesecake cheesy chef chefs chemo chemotherapy cher chest chestnuts
chew chewing chewy chicken chickens chicory chief child children chill chilled chiller chilling
chilly chimney chine chip chips chocolate choice choices choir choking chooks choose choosing
chop chopped chopper chopping chowder chris christ christmas chronic chuck chucked chucking
chunk church chutney chz cider ciggies cinder cinders circling circulation circumstances civilised
claims clammy clay clean cleaned cleaning cleanly clear cleared clement clever click clicked
clicking clicks client clients climb climbed climbing climbs cling clingfilm clock clocks clogs
close closed closes closing cloth clouds clove cloves club clue coast coasted coat coats cob
cobber cocked cocktails coconut codding code coeliac coffee coffees coil colander cold colder
colette collapsed collapsing collard collards colleague collect collie colm colour coloured
come comers comes coming commandeered commands commenced commercial commit community company
compared complaining complete completed completely compound concert condition confused congealed
conked conker connected connection connies cons consider considering constant continental continue
contraption control controversial convection conventional convert cook cooked cooker cookie
cookies cooking cooks cooktop cool cooled cooler cooling cools copacetic cope copy cord core
cored cores cork corkscrew corkscrews corn cornbread cornelius corner cornered corners cornflour
cornstarch corporate corps correct correction corwin cosmo cost cosy cottage cottons couch
cough coughing could count countdown counted counter countertop counting country counts county
couples course cousin cousins cover covered covering covers cow cowped cows crab crack cracked
cracking crackle crackling crackly craic craig cranberry crank cranked cranking cranky crap
crash crawled crawling crazy cream creamed creamy creature credit creep creeping cremate cremated
creme crept cressida crew cricket cried crimbo crime crisis crisp crisped crisping crisps crispy
criss crook cross crossed crosses crossing crowd crowds crud crude crumble crumbs crunch crunchy
crush crushed crushes crust cry crying crème ctrl cube cubes cup cupboard cupboards cupful
cuppa cups curdled curious currant current curry curtain custard customers cut cutlery cuts
cutted cutting cyaan cycles cylinder célia côte d'ya d'ye d'you da dabbed dad daddy dads dae
daft dairy dale dan dana dance dancing danger dangerous dangerously dans dare dark darl darlin
darling dash dashes dashiell dat date dates daughter dauphinoise dave dawn day daycare days
de dead deadly deaf deal dealt dear dearie dears death deb decent decide decided deciding deck
declan dee deep deepa deepest deglaze deglazed deglazing degrees delay delayed delaying delays
delegate delete delgados delivery delphine dem demanded den denner dennis dental dente dentist
department depending depends derek des descend describe desh dessert destroy destroyed destroying
detector detectors dev devices devils dey di diabetes diabetic diabetics dial dialled diamonds
diaper dibs dick did die died dies diet dietary diets difference different differently difficult
dig digging digit digital digits dijon dilip dimmed dine diner diners ding dining dinkum dinner
dinnertime dipped direction directly dis disagree disaster discard disciples disclosure disgrace
disgusting dish dished dishes dishwasher dishwater dismiss display disposable disregard distance
distracted disturb ditch ditched dive divil divorce dizzy dmytro do doable dock docks doctor
dod dodgy does dog doggy dogs doh doing doll dominic don'tcha dona done doneness dong doon
door doorbell doorman doors doorstep dora dorothea dot double doubt doubtful dough down downstairs
downtown dozed drabs dragged dragging dragon drags drained draining dramas dramatic drank draped
drat draw drawer drawers dreadful dream dress dressed dressing dribs dried drink drinkers drinking
drinks dripped dripping drippings drippins drips drive driver driveway driving drop dropped
dropping drops drowned drowning drum drunk dry dryer drying duck ducking due dug duh dull duluth
dumb dump dun dusted dusty dutch duty dying dyou dyslexic e e3 each ear earlier earliest early
ears earshot earth earthly ease eased easier easiest easter easy eat eatable eaten eaters eating
eats edge edges ee eejit eek eff egbert egg eggs eggy eilidh either elastic elbow elbows elderly
eldest electric electrical electricity electrics element elements elias ella ellen ellie else
embarrassing emlyn emm empty emre enamel end ended ends energy english enough enter entered
entertain entire entirely entry entrées eoin epipen erase error escapes esky esme essen et
eta etc european evander evangeline evaporated eve even evening events ever every everybody
everyone everything everythings everywhere ewan ex exact exactly exaggerating examples except
exchange excuse exist exists expect expecting expert explain explains explanation extinguisher
extra extracted extractor eye eyebrows eyeing eyes ezra f f2 face fact faff faffed faffing
fahrenheit fail failure faint fainted faints fair fairy fall fallback fallen falling falls
false family fan fancy far farid faring farm farmers farouk fashioned fast faster fat father
fatima fats fatter fattest fatty fault favour fear feasible feck fed feed feeding feeds feel
feeling feels feet felix fell fella fellas fellowship felt fenella fennel feral ferdinand fergal
fergus fern feroz ferry fetch fetched fete fever few fewer fi fiddled fiddling fiddly fierce
fight fighting figure figured figures fill fillet fillets filling film final find finding fine
finger fingered fingers fingertip finish finished finishes finishing finito finn fintan fionnuala
fire fired firehouse firing first fish fished fit fits fix fixed fixing fizz flag flake flaky
flame flames flapping flared flash flashing flask flat flatmate flatmates flavour flew flick
flicked flicker flickered flickering flickers flight flip flipped float floor flopped flopping
florence florets florrie floss flour floured flourish flower flowing flu fluke flure fly flying
foaming fogged foggiest foggy foil folded folding folk folks follow following follows food
foodwise fool foot football footy for forced forcemeat fore forerib forever forget forgive
forgo forgot forgotten fork forks form former fort forth forties forward found fourth fraction
fragile fraiche frail france frankly fraser frayed frazzled fraîche freaking free freeze freezer
freezing french frenched frenching frenchman fresh fretting freya fridge fried friend friends
frock frog from front froze frozen fruitcake fry fryer frying ft full fully fumbled fumes fun
functioning functions fundraiser funny fur furious furniture furry further fuse fusspot fussy
fyi gabbing gadget gaein gain gained game gander gang gap gaping garage garden gareth garlic
garlics gary gas gash gashed gasping gate gatineau gauge gaun gave gawking gawping gaya gayi
geelong general generally generations generator generous gentle gently gents german germs gerry
get gets getting ghee ghost ghosts gideon gie gifts gig gigot gil gin ginormous girl girlfriend
girls gis give given gives giving gizmo glass glasses glaze glazed glazing glens glory gloss
glove gloves glow glue glut gluten gnaw gnawing go goal gob god godfrey gods goer goes going
gold golden golf gon gone goner good goodness goodnight gooey goose gorgeous got gotcha gout
grab grabbed grabbing grace grade graham grain grainy grams gran grand granda grandad grandbaby
granddad granddads granddaughter grandfather grandkids grandma grandmas grandmother grandmothers
grandpa grandparents grandpas grandson granny grape grate grated grater gratin gratins grave
gravy grease greased greasing greasy great greek green greengrocer greens greet greeting greets
greg greta grew grey greying grid griddle grill grilling gristle gristly gritter grocer groceries
gross ground grounded group grow growing grown grownups grows grr grub grudge gruyère guard
guess guest guests guidance guide gull gun guns gus guts gutted guy gwen gym ha haan hacked
hacking had hadad hafta hair hairdresser hal halal half halfway hall hallelujah halt halved
hame hames hamish hana hand handed handful handheld handle hands handy hang hanging hangs hank
hanna hannah happen happened happening happens happily happy hard hardly hardship hardware
haricots harm harmful hart has hasselback hassle hat hate hates hats haud haul hauled hauns
have having haywire hazard haze hazel hazy he head headache headcount headed heading headlines
heads heah healthy heaped hear heard hearing heart hearth hearty heat heater heathens heating
heats heave heaven heavens heaving heavy heck hedgehog heid held hello help helped helper helpers
helpfully helping helps hen hendersons hens her herb herbs here hers herself hettie hetty hey
hi hiding high higher hilarious hilde hill hills him himself hinge hint hip his hissing history
hit hitchhiker hits hitting hives ho hoarse hob hockey hogget hoicked hoiked hold holding hole
holiday holidays hollandaise holler hollering holy holyhead home homeless homemade hon honest
honestly honey hoo hood hook hooked hoose hoover hop hope hoping hopping hordes horror horseradish
horses hortensia hospice hospital host hosted hosting hot hotter hour hours house household
housemates hovering how hubby huff huge hugo huh humming hums hundreds hung hungry hurling
hurry hurt hurts husband husbands hush hyacinth hydro hypothetically i ice icebox iced icicle
icy id idea ideas idiot idk if iftar ignatius ignited igniter ignore ill immune immunity immunocompromised
imogen imperial important imran in inch inches incinerated include includes including increasing
incredible indeed india indian induction inedible ines inform infused infusing ing ingredients
ingrid inherited injection inn inner insane inside insist insisting insists instant instant-read
instead instructed instruction instructions insulin intend interchangeable interior intern
internal interstate into intolerant inverter invitation invite invited invoice involved ireland
iron is ishaan isla issue it italy items itself jabbed jaccarded jaggery jain jam jamie jammed
jar jarred jars jasper javi jaw jaysus jean jeez jelly jemima jen jenny jerry jess jesus jet
jew ji jiffy jiggle jiggled jim jimmy jislaaik jo joan joanie job jobbies jobs jodie joe joel
johnsons join joined joining joins joint jokes joking jonah jonas joneses joost jory jose joss
jot joy judge judgment jug juice juices jump jumped jumping jumps junction juno jus just-now
justify kai kaput kaputt karen kasper kate kavi kaylas kayleigh keeled keen keep keeping keeps
kegs keith kelly kept kerala kern kernel keto kettle kev kevin kick kicked kicking kickoff
kicks kid kiddies kiddo kidney kidneys kids kill killed killing kilo kilos kind kinder kindly
kip kiri kirra kit kitchen kitna kiwi knack knackered knee knees knew knife knifes knitting
knives knob knock knocked knocking knot knots know knowing known knows knuckle kofi koro kosher
kowalskis kraków kristy kumara kūmara la label lachie lack lacking lactose lad ladder ladies
ladle lads lady ladyship lag lagging laid lamb lamberts lambs lammkeule lamp land landed landing
landlord lands lang langar language lap laps lard larder lasagna lasagne lash lass last latch
late later latest latter laugh laughing law laws lay layered laying layla lazy lead leadville
leaflet leah leaking leander leaned leaning learned learning learnt least leather leave leave-in
leaves leaving leeds leeks left leftover leftovers leg legit legs leif lemon lemons lena lend
lending length lenny lent leo leopold less let letting lettuce levels liam liar lick licked
licking lid lie lieke lies lieu life lift lifted lifting light lighting lights like liked likely
likes liking lily lime limit limits linda line lined lines lineup lino lips liquid lisa list
listen listening lit little littlies liv live living lizard ll lmk load loaded loads loaf lobbed
local lock lodge lodged lodger loft log logic loin loins long longer loo look looked looking
looks loops loose loosely loosened lorcan lord lordship lorry lose losing lost lot lots lotte
lottie lou loud louder lounge love loved lovely lovers low lower lowered lowest lowing luca
lucas lucia lucinda luck lucy ludmila lukewarm lump lumps lumpy lunch luncheon lupin lying
lysander läuft ma ma'am mabel mac macaroni machine macleans mad madam made madre magda maggie
magic magnus main mains mair majesty make makes makeup making malt mama mamma mammy man manage
managed managing mandolin mandoline manual many march marching marco marcus mardy margarine
marge marguerite maria marigold marina marinade marisol mark market marks marlene marmite marnie
married marta masel mash mashed masher mashing mass massive match mate mates matter matters
maud maureen mavis max maxed may maybe me meal mean meaning means meant meantime meanwhile
measure measured measurement measurements measures measuring meat mechanically medium mediums
meemaw meera meet meets mei mek melon melt meltdown melted melting melts memaw members membrane
men mended mention mentioned menu mercy mess message messages messed messing met metal meter
method metres metric mhm mi mia mice mick microwave mid middle middles might mike mile miles
milk milking milks mill million mince mind minding minds mine minibus minimum mint minus minutes
miracle miracles mirela miscounted misheard mislaid misprint misread miss missed misses missing
misspoke missus mistake mister mitt mitts mixed mixer ml mo moaning mob mode model moira moist
moly mom moment momma mommy moms money monkeys monster month months moo mooing moppin mopping
morag more morn morning mosque most mother motorbike motorway mouldy mountain mountains mousse
mouth mouths move moved moves movie moving mr mrs msg much muck mucking muffin mum mumbled
mummy mummys murder museum mush mushrooms must mustard mustards mustardy mute mutton my myself
mía n n1 na naas nada nadia nae nag nagging nail nailed nails naked name names nan nana nap
napkins napped narrower nary nattering ne'er near nearer nearly neat necessary neck necks need
needed needing needle needs neep neeps negative neighbor neighbors neighbour neighbours neil
neither nelly nelson nephew nerves nervous netball netted netting never new newly news next
ngl ngozi niamh nibbles nice nicely nicht nick nicked niece night nightmare nil nip nipped
nipping nips nisha nix no noah nobody nobodyll noche noise non none nonna nonsense noo noor
nor nora normal normally nos not notch note notebook noted notes nothing notice noticed notifications
notify notion nought november now nowadays nowhere nuala nudge nudged nuh nuisance nuke numb
number numbers nursery nursing nut nutmeg nuts nyam o oan oat obliged obviously ocean och oclock
octavia october odd odds odile of ofen off offer offered offering office officer offie offset
offy often oh ohio oi oil oiled oils ok okok oksana old oldest oldies olive ollie olu olwen
omar omit on once one ones onion onions online onto onwards oona opa opal open opened opening
operations opinions opposed opposite option options or orange order orders ordinary oregano
original orla other others otherwise otis ottilie otto ottoline ought oughta ounces our ours
ourselves out outage outside outta oven ovens over overall overcooked overdoing overdone overlong
overnight overran overs oversalted overshoot overshot overslept overtime overview overwhelmed
ow owen owls own owned ox oyelarans oysters pa pace pacing pack package packed packet paid
paining pains paint pair pal palaver pale palm palms paloma pam pan pancake pancakes panel
panic panicked panicking pans paolo papa paper paperwork paprika par parboil parboiled parboiling
parcel parchment pardon parents parish park parked parking parse parsley parsnip parsnips part
partial particular partly partner party pass passed passes passing past paste pastor pastry
pat patels patience patient patients patted patting pauline pause pausing pav pavement paws
pay paying peace peak peaked peaks pealed peanut peanuts pear peas peck peek peeked peeking
peel peeled peeler peeling peels peep pees peg pen penalties pencil pending people peoples
pepper peppercorns peppered peppermill per percent perched percival percy perfect perished
perk permitting perpetua perrin person persons pescatarian pestle pet petal pete petra petrol
pettibone phew philomena phone phoned photos physio pick picked picking pickup picture pictures
pie piece pieces pig pigs piked pills pilot pilots pin pinch ping pinged pink pinker pinny
pint pints pipe pippa pitch pitching pity pizza place places plain plan plane plank planned
planning plans plasters plastic plate plated plates plating platter play playing pleased plenty
plonked plot plow plows plug plugged plumber plunge plus pm po podded pods point pointer pointing
pointless poison poisoning poisonous poke poked pokes polish polished pool poor poorly pop
popovers popped popping porch pork porks porky port portion portions position positive posses
possess possibilities possibility possible postman postpone pot potato potatoes pots potty
pounds pour poured pouring powder power practically practice prawn prawns prayed prayer praying
pre preacher prefer preference prefers pregnant preheat preheated preheating prep preparation
prepare prepared prepone present presents press pressed pressure pretend pretty previous price
pricked pride priest prime primrose print printed prioritise priti private priya priyanka pro
probe probed probes problem procedure proceed processor professional program programme progress
project promise promised proofed proofing propane proper properly proportions propose propped
propping pros proud proved proving ptolemy pub public puck pucker pudding puddings puddins
puddles puffed puja pull pulled pulling pumping pumpkin punter puppy pups purchase purchased
pure puree purple purpose purée push pushed pushing put puts putted putting q quantity quarter
quarters queer question questions queue quick quicker quickest quickly quid quiet quieten quillon
quirks quit quite quote r rack racket radek radiant radicchio radio radish ragnar rail rain
rainwater raised raising raita raj rajiv ralph rammed rampant ran ranch random rang range rare
rarer rash rate rather ratio ravenous ravi raw ray rayburn rcd reach reached reaches reaching
reacting reaction reacts read reading readings readout reads ready real reason reasoning recalibrated
recall recipe recked reckon reckoned reckons recommend record recruit red redcurrant reduce
reduced reducing reduction reed reek reflection refreeze refrigerated refrigerator refuse refuses
reg regardless regiment regular reheat reheated reheating reinforcements relations relatives
relax reliable relight religion religious relit remain remaining remedy remember remind reminder
reminders reminding reminds remove removed removing rendering rental repair repaired repeat
rephrase replace replaced replacement report reporting requested required requiring rescue
rescued rescuing resembles reservoir reset residents responding rest restart restaurant rested
resting restore restored restriction restrictions rests resume resuming retard return returned
rev reverse revert reweighed rewind rib ribeye ribs rice riced ricer rich rid right rightly
righto righty rim rimmed rind ring ringer ringing rings rinse rinsed riot rip ripper ripping
rise risen rising risk risky rite riz rn road roads roadworks roar roaring roast roasted roaster
roasting rob robot rock rocked rocks roderick rohini rohit roles roll rolled rolling rolls
ron room roommate roommates root roots rope roped roping rory rosa rosamund rosary rose rosemary
rosy rosé rotate rotten rough roughed roughly round roux row rub rubbed rubber rubbish ruby
rude rugby ruin ruined ruining rule rump run rundown rung runner running runny runs rupa rush
rusted ruth s'pose sack sad saddle sadly safe safely safer safest safetys sage said saignant
sake sal salad salads sale salmon salon salsa salt salted salting salts salty salvage sam same
sandwich sandwiches sanjana sanjay sank saoirse sardines saskia sat saturdays sauce sauces
sauna sausage savage save saveable saved saves saving saw sawdust say saying says scalded scalding
scale scalloped scared scene schedule scheduled schmest school scissors scooped scorched scorching
score scored scoring scotch scout scrambled scrap scrape scraped scraping scratch scream screaming
screams screeching screen scroll scrub scrubbed sea seal sean sear searched seared searing
searings seasoned seasoning seated seating seats seawater sec second seconds secret section
see seeds seeing seem seems seen sees seh self sell selling send sends senior seniors sense
sensible sensor sent separate separated separating separator sequence serious seriously serve
served service serviced serving servo sesame set setting settle settled settles sevens shade
shake shaken shaker shaking shall shallot shallots shallow shambles shanelle shank shape shaped
shards share shares sharons sharp sharpened shattered shave shazza she shears shed shedding
sheet sheets shelf shell shelled shellfish shelter shelves sherry shh shift shifted shiny shirt
shit shock shoe shoes shook shoot shop shopping shops short shortly shot should shoulder shout
shouting shove shoved show showed shower showing shown shows shredded shrimp shrivelled shucking
shunt shush shut shy sick sid side sideboard sides sidetracked sidewalk sideways sieve sigh
sight sign signal signed silence silent silly silver silverside silverskin simmer simmered
simmering simmers simple simplify since sing singed singers singing single sink sinking siobhan
sir sirloin sister sisters sit sitrep sits sitted sitting situation size sizzle sizzling skelped
skewer skewers skidded skillet skimmed skin skinny skins skip skipped skipping sky slack slantways
slap slate sleep sleeping sleeps sleeve sleeves slice sliced slicer slices slicing slid slide
slightly slimy sling slip slipped slippers slipping slips slits slivers slosh slot slow slower
slowing slowly slumped slush smaddy small smallest smart smash smashed smashing smeared smell
smelling smells smidge smithereens smiths smoke smoked smokes smoking smoko smoky smooth smouldering
smudged snags snail snap snapped snatched sniffs snow snowed snowing snuck snug so soaking
sock sodium sofa soft softened softening soggy sold sole soles solid solitary solo solution
some somebody somehow someone something somewhere somewheres son soon sooner soonest sooo sorry
sort sorta sorted sorting soufflé souls sound sounded sounding sounds soup soups sour sous
soy space spaced spare spark sparks spat speak speaking speaks spears special speck speckled
specs speech speeches speed spell spices spilling spilt spinach spinning spins spitting splash
splashed splat split splitting spoil spoils spoilt spoke spoon spooning spoons spot spots spouts
spreading sprig sprigs sprout sprouts sprt spud square squash squeak squeaking squeaky squealing
squeamish squeeze squeezed squint squinted sry stab stabbed stabby stage stains stairs stale
stalk stall stalled stan stand standard standing stands stank stare staring start started starter
starters starting starts starve starving state station status stay stayed staying stays stead
steady steak steaks steam steamed steaming steeped steeping step stepdad stephen stepmum stepping
steps steve stewed stfu stick sticker sticking stickler sticks sticky stiff still stinkin stinks
stinky stir stirred stirring stitch stitches stock stockpot stole stomach stone stones stood
stool stop stopped stopping stopwatch store stored stories storm story stove stragglers straight
strain strained straining strait stranger strangers strawberries strawberry strays streaming
street stretch strictly strike strikes striking string strings stringy strip striploin stripped
stroller strong strongly strop struan struggling strung stuck studded students stuff stuffed
stuffing stuffings stupid style sub substitute subtract such sudden suddenly sudha suet suffer
suffers sufficient sugar sugared suggest suggestion suggestions suit sulk sulphites summarise
summer sun suncream sunflower sung sunil sunk sunniva sunset supermarket superstition superstitious
suppah supper support suppose supposed supposing sure surely surprise survive sushi suspend
suspicious suzanne swallow swallowing swamped swap swapped swear swears sweated sweating swede
swedes sweet sweetheart swell swelling swells swerve swim swimming swinging switch switched
switching swole swollen swore sworn sylvester syrup system systems t table tables tablespoon
tablespoons tablet tablets tackle tad tadhg tae tagging tail tailed tailing tails tak take
takeaway taken takes taking tale talk talked talking tally tama tamales tamsin tap tar target
tariq tarragon tartare tash tasks taste tasted tastes tasting taught taxi taxis tbh tea teach
teacher team tear tearing tears teaspoon teaspoons technique teddy teen teenage teenager teenagers
teeth teetotal tek telephone telephoned tell telling tells telly temperature tempering temple
tender tenderised tenderloin tenderstem tenner tens tension tent tented tenting tents tepid
tess test tested testing text texted tf thae than thank thanks that thatll thaw thawed thawing
the their theirs them themselves then theo theodora there thereabouts thermometer thermometers
thermostat these they thick thicken thickened thickens thickest thin thing things thingy think
thinking thinks thinner thinners third this thon those though thought thoughts thousand thread
threshold threw throat through throw thrown thru thumb thumbs thx thyme tibor tick ticked ticket
ticketed tickets ticking ticks tidy tidying tie tied tight tiles till tilly tim time timeline
timer timers times timetable timing timings tin tinfoil ting tinkle tinned tins tiny tip tipped
tips tired tit tita tmep to toast toaster toasting tobias tod today toddler toddlers together
told tom tomasz tomek ton tongs tongue tonight tons too took top topped topping tops topside
torch torchlight torn toronto toss tossed total totally touch touched touches touching tough
tow toward towel towels town toxic track tracked tracking tractor traditional traffic tragic
train trains transplant transposed trapped trash travelling tray trays treacle treat trev trevor
tribe trick trickle trickling tried trifle trim trimmed trimming trip triple tripped tripping
trivet trolley trouble truck true truss trussed trussing trust trusted trusting truth trying
tub tube tuck tucked tucking tumble tummy turkey turn turned turning turnip turns tv twas twice
twine twins twist twixt tying tyler type typed types typical typo tyre tết u ugh ulric un unannounced
uncle unconscious uncovered under undercook undercooked underdone underneath understand understanding
understood underway undo undressed undue unfinished uni unit units unlearn unless unlucky unpause
unreal unsay unset unsuitable untented untouched untying unusable unwaxed unwrapped up update
upper ups upshot upside upstairs upwards urgent us usable use used useful usefully using usual
usually utility uy vacuum valmera van vanished vanishes various vegan vegetable vegetables
vegetarian vegetarians veggie ventilator vera veranda verde verna version versus very vet veterans
vi vicar vicars victim view vikram village vinegar vinegary visitor visitors voice volume volunteered
vote voted vs w waan wafted wains wait waited waiting waits wake wakes waking walk walkabout
walked walking wall wallpaper walls walnuts walt wan wandered wandering want wanted wanting
wants war ward warm warmed warmer warming warn warning was wasabi wash washed washing watch
watching water watercress watery waxy way waylaid ways we weak wean weans weave wedding wedged
wee weeds week weeks weel weep wei weigh weighed weighs weight weights weird weirdo well welp
welts wendy went were wet wey wha whack whacked whadda whaddya what whatcha whatever whatevers
whatsits whatsoever wheat wheelchair wheesht wheezing when whenever where whereabouts wherefore
wherever whether which whichever whichevers while whinge whip whipped whipping whirlin whirring
whisht whisk whisked whisking whisper whistle whistles white who whoa whoever whole whoo whoosh
whopper whose why whys wi wicked wide wife wifell wifi wiggle wiggled wild wilf will wilma
wilsons wilted wilting wim win winced wind window windows windowsill wine wines winging winnin
winning wins winter wipe wiped wir wire wired wireless wis wise wish wisnae wisps with within
without wits wives wobble wobbles wobbly wojtek wok woke wolves woman won wonder wondering
wood woohoo word words work working works worktop world worried worries worry worse worth wot
would wouldja wound wow wrack wrangle wrangling wrap wrapped wrapper wrapping wreck wrecked
wren wrest wresting wrestle wriggle wrist wrists write writes writing written wrong wrote wyatt
wystan x1 x2 y ya yael yams yank yanked yanking yapping yard yarn ye year years yeast yell
yelling yer yersel yes yesterday yet yew yippee yoghurt yogurt yoke yon york yorks yorkshire
yorkshires yorkshre you youd youll young youngest your yours yourself yuh yusuf z zadie zebedee
zelda zero zeros zhoo ziggy zip zones`.split(/\s+/),
);
