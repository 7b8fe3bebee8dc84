/** Learnt from the rules and learnt parts of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const weights: Weights = weightsFrom(`
-30 ~^_her
-28 ~?_it
-27 ?talk7
-26 ?talk6 ~n_all
-25 large ~K_say ~at_ours
-24 =courtesy:S0 dum level ~get_down ~it_! ~of_you
-23 =deny:S3 dishwasher pages ~and_that ~out_there ~says_here ~they_put
-22 booked serves ~!_did ~that_will ~was_i ~was_still
-21 #words0 =quiet:S3 carvery fair gingerbread goals judges lotto wave ~!_no ~,_put ~P_a ~^_$
~at_his ~done_you ~have_you ~like_mine ~no_i ~of_c ~with_U ~y_i ~yes_a
-20 =choose:S2 =repeat:S3 breathing brigade buffet easter guy harold penalty pin points ref
santa waiter worst ~!_and ~?_V ~O_said ~does_your ~for_you ~in_out ~me_put ~on_U ~or_not ~says_in
~she_did ~she_had ~them_a ~took_d ~you_n ~you_to
-19 =acknowledge:guess =courtesy:all =courtesy:some =note-guest:to-reading ?talk5 ?talk8 caterers
credit cry eights exam film hymn imagine legs nav results snoring spend steak sugars sweetie
tooth yards ~!_it ~,_you ~P_or ~all_after ~at_P ~got_there ~have_this ~he_K ~is_yours ~it_i
~she_c ~she_never ~tell_them ~that_O ~you_done
-18 #heard0 =emergency:guess =report-out:S3 alan april bingo caller carpet dollar drives gentlemen
hay jack lasted lawyer linda lives lows lucky martha meeting poor programme sent serious spring
stir tank tax tense toilet wear years yourselves ~!_get ~,_here ~,_never ~O_had ~U_or ~^_their
~are_never ~at_her ~c_where ~could_have ~d_a ~had_in ~he_goes ~her_K ~i_were ~not_! ~ours_V
~said_on ~say_you ~says_d ~she_was ~they_took ~up_who ~will_S ~you_all ~you_up
-17 =acknowledge =acknowledge:all =quiet:guess attic blow cab calories captain chains chefs
chips davie divorce effect ella february garbage greedy history jigsaw ketchup kings kisses
ladder mortgage naughty offside owe parties pipes prices proposed rains rent rooms sausage
shame soap tall television texting welcome ~,_said ~,_since ~,_which ~?_are ~?_is ~?_then ~?_yes
~U_now ~V_y ~after_you ~been_c ~c_that ~does_he ~does_his ~going_, ~he_, ~he_did ~he_put ~is_why
~not_how ~put_you ~that_P ~there_at ~there_by ~they_n ~was_, ~with_O ~would_have ~yet_S ~you_on
-16 =acknowledge:some =deny:S1 apartment bakers balloons banana better blight buddy burn burner
calendar chip chorus clutch college customs damp delhi euros flies forwards funnier games group
highs holidays homework lipstick locked loo maisie mite mondays nights pass pearl penny potato
potluck radiator server shirts speaker sponge sticking talks tender tenerife therapist tractor
trousers wedding weeks whites worse ~._get ~._your ~O_you ~U_her ~about_her ~and_him ~and_our
~at_U ~at_y ~c_us ~do_mine ~for_no ~he_$ ~hers_at ~hers_out ~him_if ~i_, ~i_like ~i_too ~me_one
~mine_i ~n_take ~no_P ~not_that ~out_a ~since_that ~then_it ~there_yet ~till_he ~to_w ~were_K
~with_that ~y_and ~yet_P ~you_will
-15 =courtesy =courtesy:guess =emergency:S0 =set-timer:S2 argument beat bike biryani blows
boy brothers burns buzzer bye camera capital case clockwork coffee collarbone court crewe crispy
crossword crumb delicious draw east essay flowers fold g glove greenhouse hollis honour horse
hose jail jumper kebab lake laundry letter magazine mention morning noodles page parking perfect
phones question race raffle raining rates sends seville shona socks soled strikes swimming
tenth toy travels woke yours zosia ~,_a ~,_after ~,_with ~?_n ~?_we ~?_you ~K_ours ~K_y ~K_your
~O_if ~O_too ~P_, ~P_about ~U_n ~U_was ~U_when ~^_he ~^_ours ~all_done ~all_down ~are_about
~as_if ~at_theirs ~been_taken ~but_where ~could_be ~did_hers ~did_his ~do_theirs ~g_for ~goes_off
~going_. ~gone_a ~he_went ~him_S ~him_n ~his_do ~his_on ~i_P ~if_n ~in_these ~is_never ~is_was
~it_by ~let_him ~like_me ~more_the ~not_he ~out_in ~said_a ~said_c ~said_to ~said_you ~says_i
~says_she ~second_on ~she_O ~she_n ~she_still ~she_took ~tell_$ ~than_a ~them_the ~then_we
~these_K ~they_$ ~they_had ~they_were ~to_his ~us_by ~us_or ~y_with ~you_c ~yours_. ~yours_V
-14 =acknowledge:S1 =undo:frame ?heard0 adelaide august bananas batteries bedroom beer bites
bowled budgie carves cloudy coach contact courses cows deposit drains dublin ducks fag favourite
fence galway gate glitter glossy grass hear insurance keys lady lawyers lucas marry mijo nails
nicked owned parrot pea picking pill popcorn post pram printer reindeer scallops singed solicitor
stump tablet taught thanked tomato treadmill turkey used van voicemail weatherman weighing
~!_out ~,_that ~,_took ~._, ~S_go ~U_about ~^_his ~am_never ~and_some ~are_for ~are_gone ~are_these
~are_this ~are_you ~because_you ~before_he ~c_your ~could_P ~do_is ~done_her ~done_till ~down_this
~get_your ~gone_off ~got_all ~got_now ~got_over ~had_c ~have_another ~have_they ~her_P ~here_we
~hers_has ~how_did ~is_, ~might_do ~never_went ~no_but ~of_is ~on_their ~over_there ~put_O
~put_out ~says_on ~says_take ~some_more ~still_in ~still_will ~take_S ~them_n ~there_, ~they_do
~they_say ~this_P ~those_U ~those_n ~took_us ~was_d ~was_like ~was_no ~was_when ~we_did ~we_there
~were_n ~with_those ~yes_i ~yes_she ~you_y
-13 =ask-guests:S3 =ask-options:S2 =courtesy:phrase angle answer bake barn beach billing bulb
carol chairs chap chemist chewed chinese comedian cries dave deirdre delayed detective diwali
dress elbow ezra fern fireworks flight forehead goodbye heard helpings hill hitting housewarming
howay innings june kevin lambs lands lemonade letters limit load local ma'am mads marathon
marble means military money mummy once phoenix pig politics presenter pride quiz resigned roll
roof school scoot scored scream season shouts smoking spit stinks sunset terrible west whom
worked year ~!_U ~,_from ~,_your ~._because ~._done ~._no ~?_do ~?_for ~?_have ~?_he ~?_on
~O_are ~P_? ~P_for ~P_that ~P_you ~S_these ~S_would ~U_till ~^_and ~after_me ~ago_and ~am_,
~am_done ~and_here ~another_S ~any_O ~before_P ~but_like ~but_she ~c_do ~d_and ~d_w ~done_P
~from_P ~get_some ~get_them ~got_more ~got_my ~have_what ~he_U ~he_still ~her_, ~here_like
~here_yes ~hers_in ~how_he ~i_might ~i_says ~in_U ~in_first ~in_may ~is_said ~is_this ~it_about
~it_goes ~it_there ~like_K ~may_$ ~me_thanks ~me_would ~mine_to ~never_, ~never_got ~no_they
~not_about ~not_as ~not_had ~not_she ~not_yours ~now_S ~of_him ~one_has ~one_was ~one_with
~or_the ~other_U ~out_he ~said_P ~said_never ~say_S ~say_c ~says_you ~she_said ~since_he ~so_this
~still_U ~t_? ~take_a ~the_with ~then_his ~there_O ~there_were ~they_did ~they_got ~they_let
~they_said ~they_would ~to_us ~too_how ~took_hers ~what_an ~what_to ~who_did ~why_is ~yes_P
~your_K ~your_S
-12 #P3 <t:200> =acknowledge:S2 =acknowledge:few =acknowledge:phrase =affirm:few =ask-why:S3
=emergency:all =pause:guess ?heard1:guess ?talk4 aeroplane anybody apparently aunty barb bear
birth blink blue broken candle centimetres closes closing contestants counted crackers deer
descant dies excuse feeds feelings french fry highest honestly jam jokes joking lime manager
mass melted men metro minister minnow netball ordering pasta petrol postie presents pudding
pump reckons referee restaurant reunion rich rough seat sell served shocking signal skewer
sleep sold spain stinking stole suitcase taste text thousand throwing toes torchlight unread
vet wheel ~!_O ~,_an ~,_him ~,_second ~._as ~?_no ~K_me ~O_U ~O_was ~O_we ~O_were ~P_where
~S_says ~U_already ~V_other ~^_. ~^_those ~all_gone ~and_he ~and_was ~another_$ ~are_your ~at_K
~at_S ~at_mine ~at_yours ~before_and ~c_he ~c_his ~c_since ~d_P ~did_U ~did_a ~did_he ~do_y
~does_she ~done_? ~for_U ~from_that ~goes_, ~goes_to ~had_his ~he_V ~he_get ~her_yet ~him_c
~him_i ~i_$ ~i_will ~if_she ~in_here ~in_his ~in_you ~is_what ~is_you ~it_could ~it_said ~let_them
~more_O ~n_out ~n_w ~never_get ~no_he ~now_since ~of_my ~ok_now ~on_your ~put_$ ~said_hers
~said_in ~say_when ~says_is ~she_V ~should_get ~should_we ~t_and ~t_to ~thanks_, ~that_S ~them_done
~them_since ~then_at ~then_i ~then_if ~there_you ~till_c ~to_her ~us_went ~was_an ~was_mine
~when_your ~who_K ~who_V ~would_all ~you_get ~you_going
-11 <y> =acknowledge:S0 =courtesy:S1 =help:guess =start-over:S1 across adverts asked asks ben
build buried canal card caterer channel chapter choosing christmas colleague corner cost cracker
crossing cuts dale died dough drew drongo drops dug ellie envelope fall fever fitz fryer google
hall heating hook important invite ironing kickoff koro lemons lorcan mama mart medicine mooing
moon newspaper ninth nose opener outdone owes paddle palm parade photo physio postcode pulls
quid raisins refreeze remote retired robbery rosie scary scones screwed seen semi shade shaz
shelves shifts shook sign soul stank stayed teaching tens thirds thread together tonight tortoise
trying utility visa waits whiskey wow ~!_he ~,_ours ~,_there ~,_who ~,_yours ~?_c ~?_that ~?_the
~?_who ~?_with ~K_him ~K_you ~P_! ~P_too ~P_would ~S_never ~S_one ~S_we ~S_y ~U_by ~U_hers
~U_say ~U_t ~U_went ~V_their ~^_here ~^_more ~^_so ~^_then ~a_y ~about_O ~about_y ~am_n ~and_got
~and_in ~and_those ~and_went ~are_it ~be_off ~be_up ~c_all ~c_but ~c_who ~can_U ~d_with ~did_$
~did_this ~done_! ~done_yet ~go_and ~go_which ~had_mine ~he_never ~here_K ~here_already ~here_is
~here_with ~him_the ~i_be ~in_or ~in_since ~is_do ~is_your ~it_she ~it_too ~me_done ~me_this
~mine_was ~my_first ~never_$ ~never_S ~never_let ~no_! ~now_O ~of_P ~off_is ~off_out ~ok_U
~on_S ~on_hers ~on_up ~one_put ~or_shall ~over_a ~said_no ~said_there ~says_the ~she_does ~since_K
~so_a ~so_then ~t_for ~tell_your ~than_her ~than_me ~the_y ~theirs_is ~them_for ~them_to ~there_$
~there_. ~there_must ~these_U ~those_are ~till_K ~till_O ~to_him ~to_mine ~to_your ~up_now
~us_that ~was_over ~was_t ~who_was ~why_do ~would_put ~y_we ~yes_from ~yours_,
-10 <t:550> =quiet:frame =set-timer:S3 =unclear:most ?heard1 ?heard3:guess adult amazing ambulance
animal army banister bank bathroom belt bitter blackbirds boot brendan brunch bubbles camp
cards career cash cats charcoal choir cinema cricket curdled den dollars drove dude earl ends
eyebrows failed filthy fly fridays giblets glad ground hair hello hide hiding inferno insert
jackets kick knee la language laughed lift lisbon listening loss man mayor mushroom nico north
oh options pal pancakes parcel passport peace pear phew pinch pizza porridge preacher pressure
priya promotion puts rain rained read rick ring ron rosary saturdays shaped shattered sheets
sheila shuts singing squares stain starts stocks studio towels try unbelievable video weather
wet wide work youngest your ~,_another ~,_g ~,_going ~,_have ~,_is ~,_let ~,_off ~._if ~._who
~._with ~._you ~?_P ~?_U ~K_P ~K_does ~O_! ~O_has ~O_have ~O_thanks ~O_to ~O_took ~P_can ~P_d
~P_did ~P_i ~P_never ~P_this ~P_why ~S_him ~S_was ~U_U ~U_all ~U_out ~U_took ~V_she ~after_S
~all_in ~already_on ~and_go ~and_take ~before_O ~before_V ~c_till ~d_! ~did_she ~did_they ~did_you
~does_her ~does_hers ~done_when ~down_S ~first_P ~first_one ~from_her ~go_, ~goes_the ~going_K
~had_n ~have_done ~he_say ~here_from ~here_you ~his_in ~how_was ~i_before ~in_a ~into_V ~it_take
~it_took ~me_! ~mine_V ~n_a ~n_been ~never_U ~of_U ~or_it ~or_mine ~our_V ~says_U ~says_so
~second_U ~shall_we ~she_should ~since_O ~some_O ~still_does ~still_went ~take_these ~tell_him
~than_yours ~the_one ~their_O ~their_V ~then_she ~there_all ~they_go ~us_U ~us_like ~w_P ~we_were
~went_$ ~went_to ~what_K ~what_your ~with_or ~you_should ~you_so ~your_P ~your_go ~yours_is
-9 =ask-next:S3 =ask-temperature:to-guests =courtesy:S2 =courtesy:few =deny:some =set-guests:to-guests
actor arm average bails beautifully benches blinked blocks brian bubble bus canapés caravan
carols champion charger chef chin clocked cooks cover dazza dig dish downstairs drama drink
duck dunny dusted feeling flag foreign fortune front gin graduation hallway ham hand handle
he interest internet jesus jolene kills kilometres licking lorna machine marriage mine movie
myself nikhil nonna number officer panto patience play point posted practice prawns pushed
races roger rotten shauna skips small solo south starch stitches sunshine surgery tables tamsin
tandoor taxi theirs tinned tub tubes tyler ute walks watched wearing wild win wonder wool worries
~!_K ~!_i ~!_who ~,_get ~,_tell ~._they ~?_she ~O_like ~O_then ~O_till ~P_K ~S_? ~S_t ~U_go
~U_he ~U_me ~U_says ~V_yours ~all_P ~already_it ~an_O ~are_P ~as_i ~at_my ~be_U ~be_no ~be_the
~be_there ~because_we ~been_O ~by_V ~by_y ~c_get ~could_K ~d_from ~did_S ~do_a ~does_P ~done_,
~done_this ~first_c ~for_y ~get_K ~get_it ~get_there ~go_U ~goes_up ~got_any ~got_n ~had_done
~had_theirs ~has_K ~has_P ~have_had ~have_my ~here_P ~him_. ~him_he ~him_it ~him_out ~him_that
~i_at ~if_he ~in_my ~into_a ~is_d ~is_gone ~it_we ~like_he ~me_do ~my_O ~my_S ~n_as ~now_says
~of_that ~on_about ~on_all ~on_like ~one_it ~other_$ ~other_one ~our_first ~ours_$ ~put_U ~said_yes
~says_that ~says_they ~she_U ~so_. ~so_his ~so_now ~so_out ~that_to ~them_were ~they_O ~this_c
~those_K ~too_O ~up_for ~up_if ~w_when ~was_gone ~we_c ~we_had ~we_went ~were_U ~what_they
~what_would ~when_did ~who_has ~who_let ~why_we ~will_all ~will_tell ~y_, ~y_is ~you_, ~you_do
~you_take ~you_then ~your_O
-8 #O3 #U3 =add-dish:S3 =correct:S1 =courtesy:S3 =report-oven:guess =report-setup:S3 =report-trouble:guess
=resume:S1 =set-guests:frame =set-method:S3 =start-over:S3 =unclear =undo:to-step ?heard0:guess
?heard2:frame ?heard2:guess age airline amen arrival baby bedtime bertha bigger bluetooth body
book boys break brussels buck bucks calf camping chance cleaning coast complains corners cousins
creek day days decent ditch dressing drowning engine eoin feel field finn fortieth found fourth
furious gold halloween happy highway hip hugo hurts icy insist interview july karen knew lasagne
leak leeds lettuce licence lived look lottery luck melt mick mother name neighbours odile offer
oona orange ordered oslo outside panels pants patient period perth place plants pool pour red
robbo row rupees saw science ship sis slide smashing smells solar stairs steer sunny sweets
switch taking taxis tea thermostat these thinking toaster tried walt wash ways weekend weigh
weighed wiped wonky ~,_go ~,_in ~,_now ~,_ok ~,_out ~,_their ~,_then ~?_ok ~K_could ~O_, ~O_O
~O_done ~O_is ~O_put ~O_where ~P_go ~P_how ~P_let ~S_, ~U_before ~U_going ~U_them ~V_any ~^_our
~^_she ~^_theirs ~^_these ~a_t ~am_not ~and_said ~and_this ~and_your ~as_, ~as_that ~at_hers
~at_w ~at_your ~be_c ~by_$ ~by_us ~c_is ~can_a ~d_if ~did_the ~do_O ~do_my ~down_when ~down_would
~for_those ~g_, ~go_off ~goes_S ~got_out ~had_S ~had_no ~had_that ~had_the ~had_were ~he_does
~he_was ~her_and ~hers_. ~him_U ~if_V ~in_P ~in_n ~it_me ~it_over ~it_says ~it_still ~me_now
~mine_$ ~mine_out ~n_U ~n_are ~n_can ~no_? ~no_U ~not_mine ~not_take ~now_then ~of_a ~on_P
~on_that ~or_O ~out_after ~over_n ~said_not ~said_that ~said_the ~say_, ~she_put ~since_we
~some_for ~that_K ~the_O ~these_O ~they_K ~those_S ~to_them ~took_out ~up_about ~up_in ~w_for
~was_so ~was_this ~when_P ~when_the ~where_did ~where_he ~where_would ~who_had ~will_do ~will_get
~will_they ~would_S ~would_get ~y_U ~y_do ~you_$ ~you_O ~you_some ~yours_? ~yours_now
-7 #expecting:false:few =affirm:S2 =ask-why:most =help:S3 =start-over:most ?heard1:phrase ?heard2
?heard4:guess ae alexandra apples ate badly ball barbie broke bug cheese chicken child chooks
circumstances classic colette coming convert costs crooked cupboard custard drinks drip driving
drummer dry each episode es ever except expected expecting face fellow figures filled flash
flat freezing frying gallon gates gently goat golf grocery haircut hattie hot hotel hush iftar
je join junction khichdi leo lords marquee maths mum niamh october opens outta overs password
pee pickle plane poked pumpkin receipt recipe service shakes sheba shoe shoes skipped sofa
song sourdough speaking starving station suis sweating tenner their third tu turn turnip vegetarians
vincent walls wanda watching watchman wore zip ~!_not ~,_must ~,_she ~._down ~._take ~?_not
~?_too ~K_had ~K_hers ~O_$ ~O_? ~O_an ~O_does ~O_he ~O_on ~O_who ~P_we ~S_at ~S_if ~S_said
~U_$ ~U_, ~U_never ~U_no ~U_since ~U_there ~U_why ~V_him ~V_said ~V_was ~V_who ~^_shall ~^_they
~a_yes ~about_now ~about_your ~all_i ~all_went ~am_all ~and_then ~and_us ~another_one ~any_U
~as_c ~because_i ~been_since ~before_c ~but_n ~but_they ~c_can ~c_the ~c_took ~can_P ~can_tell
~do_if ~do_in ~for_O ~for_how ~for_more ~for_that ~from_the ~gone_out ~had_me ~has_me ~has_t
~have_never ~he_S ~he_can ~he_said ~he_would ~him_V ~i_about ~i_get ~is_or ~it_a ~it_into ~let_all
~let_it ~let_your ~like_an ~like_at ~me_why ~mine_, ~n_because ~n_going ~n_n ~n_or ~n_till
~not_till ~off_before ~off_i ~ok_K ~on_! ~on_, ~on_i ~one_? ~or_i ~or_would ~out_V ~over_,
~put_another ~put_it ~put_off ~said_they ~say_$ ~say_K ~since_the ~so_put ~still_t ~take_to
~thanks_$ ~that_had ~that_says ~that_your ~theirs_V ~then_. ~then_U ~there_! ~to_the ~too_K
~up_this ~us_with ~was_n ~was_your ~we_let ~were_d ~who_put ~with_an ~would_never ~y_$ ~y_to
~yes_we ~your_V ~yours_for
-6 <n:200> =ask-status:S2 =choose:guess =deny:S2 =lack:S2 =report-not-done:few =report-reading:to-reading
=set-serving-time:to-serving-time =shift-serving:frame ?heard0:frame ?heard0:phrase ?heard2:phrase
affirmative bags barbecue base believe bill blown bonnet boots born bottles bowls breaking
bridge broadband bucket burst butler calling calls cholesterol cigarettes clink council crying
curry cut doing drummers dryer dust e explodes fae find finds fixed foot force ghost goalie
goes goose grandad handwriting her him humming hurdles invites island january jerry joe karaoke
ladle lamb leaf left lovely mall marco maureen maximum move naebody navy net never new nice
nothing ours papa pastor peoples pipers promise pune queen recorded rewind s sam sandwich see
she sherry shop shoulder simmer simple skillet slipper smoker snags somewhere spell spelling
steps sticks struggling supper surf sweater tail teacher throws timetable trampoline twice
vicar ward whipping whisk wish wrap ya you ~!_that ~,_? ~,_U ~,_but ~,_done ~,_down ~,_he ~?_d
~?_i ~K_his ~K_never ~K_there ~O_at ~O_one ~O_or ~P_and ~P_any ~P_say ~S_before ~S_do ~S_than
~U_? ~U_into ~V_O ~V_an ~V_take ~V_your ~^_are ~^_but ~^_why ~about_it ~after_O ~am_at ~and_at
~and_d ~and_let ~and_should ~at_their ~at_us ~be_K ~but_do ~but_what ~by_it ~c_here ~c_him
~c_one ~can_i ~do_till ~do_was ~does_O ~done_the ~first_d ~go_by ~goes_for ~gone_c ~gone_in
~got_some ~had_their ~has_got ~have_me ~he_must ~her_off ~here_are ~here_if ~him_K ~his_U ~i_would
~in_on ~is_$ ~is_for ~is_from ~is_his ~it_, ~it_had ~it_let ~it_this ~it_with ~like_this ~me_take
~me_when ~more_c ~more_i ~more_in ~no_we ~not_for ~not_they ~now_on ~of_V ~on_and ~one_. ~or_d
~or_till ~other_V ~ours_at ~out_! ~out_then ~over_from ~put_your ~said_, ~said_do ~said_her
~says_. ~says_no ~take_the ~taken_it ~tell_the ~than_the ~that_c ~that_ok ~the_$ ~the_S ~the_U
~them_about ~them_another ~them_with ~then_down ~they_V ~till_you ~to_U ~up_before ~up_till
~up_y ~w_the ~was_a ~went_O ~were_$ ~were_the ~what_he ~which_n ~who_will ~will_have ~with_c
~with_d ~with_his ~y_so ~yes_, ~yes_V ~yes_it ~yet_, ~you_are ~you_have ~your_c
-5 #O2 #U2 =ask-how:few =ask-safety:S3 =emergency:few =pause:S1 =pause:all =quiet:S2 =report-out:S2
=resume:some =set-doneness:S3 =shift-serving:S3 =undo:S2 ?heard5:guess ?talk3 abroad aid airport
alarm allergic anyone auntie beats bedrooms begging below boiler boned bottle box burnt business
cashews cat charge chickens climb closer cocoa cooking county dean denise department depends
disgusting divine engagement euro expenses falling false fancy fell fire floors follow frog
fun funeral fur get gluten granules hamish harbour having holiday home induction janet jump
juniper keith latter lbw liked listen married martin mince neighbour office oma our overnight
past peeking picture platform playlist plums pouring previously quarter ranges reads robbing
rosa roy sad sale score sets shopping shush sir somebody songs spanish spent stand sure swear
tama telly temperature thru time tiny tires tops traffic tumble typical umbrella week wheat
who wi wing wood world ~!_you ~,_as ~,_can ~,_first ~,_it ~,_like ~,_our ~,_says ~,_those ~,_to
~,_where ~._put ~._that ~._the ~?_K ~?_and ~?_can ~?_tell ~K_a ~K_about ~K_to ~K_was ~K_who
~O_been ~O_got ~O_n ~O_still ~O_will ~P_take ~P_the ~S_after ~S_that ~S_up ~U_after ~U_can
~U_goes ~U_you ~V_before ~V_or ~V_our ~^_am ~^_my ~^_over ~^_too ~^_you ~a_n ~after_, ~all_O
~already_got ~and_, ~and_S ~and_goes ~and_n ~and_she ~and_still ~are_they ~at_him ~been_K ~by_S
~c_at ~c_more ~c_out ~c_w ~d_S ~d_but ~did_and ~do_you ~does_, ~does_a ~does_it ~done_with
~down_? ~down_and ~down_with ~first_K ~first_was ~for_d ~for_me ~get_off ~gone_n ~got_, ~got_d
~he_go ~he_took ~her_the ~him_$ ~him_and ~his_P ~how_we ~i_said ~i_still ~if_S ~in_your ~is_P
~is_about ~is_he ~it_here ~it_on ~it_would ~like_U ~me_i ~me_up ~mine_. ~n_at ~n_for ~n_second
~n_to ~never_n ~no_that ~no_the ~not_like ~not_tell ~not_y ~now_over ~of_here ~off_O ~off_this
~off_you ~on_in ~one_is ~one_more ~our_K ~our_O ~out_U ~out_i ~out_of ~out_y ~over_S ~over_by
~say_how ~says_, ~says_your ~second_O ~second_V ~should_take ~since_n ~still_me ~take_your
~tell_us ~that_V ~the_other ~them_P ~they_get ~they_have ~they_still ~this_the ~this_with ~to_yours
~up_P ~w_? ~w_of ~went_V ~who_? ~who_is ~who_says ~with_P ~with_my ~with_your ~would_take ~y_S
~you_too
-4 #O1 #P2 =ask-amount:S3 =ask-guests:most =ask-guests:some =ask-safety:S1 =ask-why:S2 =correct:guess
=emergency:most =report-reading:guess =report-started:S3 =set-timer:all =undo:S1 ?heard1:frame
afraid altar arms around arrive awful bacon beers best bhabhi blocked boats bowling bridges
broccoli butcher cake call car care cattle charged christ clive clown couch crash crazy daylight
deck delays did drums due every fetch fizz flatmate fore fortnight frozen fruit goa gran hedge
heifers hers hi his hon honeymoon italy jo keeping knife lad lane lay live lunatic ma marnie
milk mister neck nerves next nipped particular passing percent peru piet pints plank played
plays portugal preheated prescription pub queue quiet quite rabbit ray repeat rest river roundabout
rung sandwiches saoirse sausages says sevens shelf shouting showing single sit skins smaller
snows spoon spot standing stood stuffed sunscreen takeaway tape thanks themselves they thirtieth
through throw tight till tip towel track truth twins twist warehouse wed well whistling white
wifi window wonders words wren writing young ~!_to ~,_had ~,_i ~,_mine ~,_n ~,_this ~,_we ~._yes
~?_how ~O_a ~O_because ~O_out ~O_take ~O_your ~P_O ~P_with ~S_$ ~S_c ~S_got ~S_take ~S_tell
~S_to ~U_are ~U_get ~V_first ~^_as ~^_now ~^_say ~^_take ~a_V ~about_U ~am_like ~and_we ~are_d
~are_into ~at_V ~before_a ~before_they ~but_c ~c_going ~c_never ~c_no ~c_of ~c_t ~c_to ~can_have
~could_O ~d_so ~did_P ~did_it ~do_S ~done_S ~done_on ~first_U ~for_at ~for_c ~for_his ~for_your
~get_, ~go_c ~going_in ~gone_$ ~gone_S ~gone_up ~had_w ~has_been ~has_d ~has_he ~he_c ~he_has
~he_is ~her_i ~her_n ~here_, ~hers_and ~him_from ~him_on ~his_K ~how_P ~how_S ~if_i ~if_the
~in_goes ~is_another ~me_, ~me_hers ~mine_has ~mine_in ~more_K ~n_! ~n_? ~n_P ~n_S ~n_could
~n_down ~n_thanks ~never_have ~no_c ~not_it ~not_put ~off_if ~on_V ~on_it ~one_$ ~one_, ~out_for
~put_me ~put_mine ~put_some ~put_too ~say_me ~say_to ~says_a ~she_would ~so_are ~some_K ~still_on
~take_O ~tell_, ~than_that ~than_you ~that_does ~that_one ~then_K ~then_P ~then_the ~this_O
~this_S ~this_and ~those_, ~till_your ~to_S ~to_let ~up_all ~up_that ~us_on ~we_get ~we_took
~were_at ~what_P ~when_you ~where_does ~which_O ~which_is ~with_these ~would_V ~would_no ~y_about
~yes_but ~yes_c ~yes_so ~you_S ~you_go
-3 ! #words12 <n:999> =affirm:S1 =ask-next:few =ask-next:most =ask-status:guess =ask-temperature:few
=ask-time-left:some =correct:most =drop-dish:some =emergency =have:few =quiet:all =repeat:guess
=report-out:guess =report-started:to-reading =report-trouble:S2 =resume:few =set-serving-time:S1
=set-serving-time:S2 ?heard3 ?heard4 added alfie apologise border bread bring cayenne changing
charging choked chokes church colander counter cousin crowd curtain d'ya death drinking drumming
ears elspeth exit extractor fifth florida garden glazed green groom ha had half halfway heavy
here herself honey hosting josh kaput kitchens lap legend length loads loose love luca march
marcus melts mixer ne nearly nought odette operation panic pantry papers pat peanuts pies piping
poking pond porch puree put regarding retirement rice rows ruined sean send serve shed shower
sister soda spud star starter step stoked sugar sun suspect swore talk though thumb tide tom
ton took train tuition turning undo vat village volcano was way weans weighs wendell were wherever
whoever whole why wickets within wrist yer yes yourself ~!_$ ~!_P ~!_off ~!_the ~,_V ~,_and
~,_no ~,_should ~._in ~._on ~._what ~?_O ~?_what ~?_when ~K_U ~K_after ~K_her ~K_she ~K_the
~K_went ~O_V ~O_after ~O_me ~O_yes ~P_$ ~P_got ~S_she ~U_! ~U_K ~U_a ~U_from ~U_than ~V_my
~V_these ~V_till ~^_, ~^_of ~^_the ~^_when ~^_who ~^_yes ~a_O ~after_d ~after_the ~ago_! ~all_the
~already_took ~am_already ~am_off ~and_a ~and_if ~and_off ~and_out ~any_$ ~as_K ~at_c ~be_that
~because_the ~been_a ~been_going ~before_or ~by_d ~c_, ~c_and ~c_because ~c_y ~could_not ~d_at
~did_V ~did_your ~do_. ~do_not ~done_n ~down_you ~for_n ~from_here ~from_y ~g_and ~got_U ~had_K
~had_O ~had_at ~have_at ~have_been ~have_c ~have_gone ~he_could ~him_off ~his_V ~how_do ~in_d
~in_her ~is_O ~is_and ~is_her ~is_so ~it_U ~it_at ~it_from ~it_then ~let_that ~may_be ~me_to
~me_w ~me_y ~more_? ~must_have ~must_put ~n_and ~n_goes ~never_O ~never_going ~no_do ~not_going
~not_you ~now_? ~now_my ~now_the ~of_O ~of_your ~off_P ~off_at ~off_him ~ok_P ~on_him ~on_his
~or_was ~out_? ~out_on ~put_us ~second_one ~t_with ~take_V ~take_me ~take_w ~tell_P ~that_,
~that_U ~that_already ~that_could ~then_S ~they_c ~to_get ~up_on ~up_there ~us_a ~was_U ~was_w
~we_, ~were_O ~when_are ~with_her ~with_no ~y_at ~yes_the ~you_U ~you_been ~you_did ~you_like
~you_or
-2 #S2 #U1 #expecting:true:most <n:40> <n:550> <t:100> <t:40> =acknowledge:S3 =ask-amount:S2
=ask-guests:guess =ask-shopping:few =ask-why:phrase =cook-away:S0 =describe-roast:S3 =drop-dish:S3
=emergency:S3 =have:S1 =report-done:to-step =report-oven:S3 =report-reading:S3 =report-setup:few
=report-started:guess =report-trouble:few =resume:frame =set-timer:guess =unclear:S0 absolute
accept aff american ask been beep billion birthday biscuit blocking bob boils both bride bro
bronte burning buses cancelled candles carve chimney cork cup daddy dal darling dawn des dev
devil donal door dull esi fahrenheit fella filling finished flaming flour frank furnace garage
gentle girl gordon greet hairdryer handles hard hens husband joost kheer kid landed last line
long looking lunch madam mean microwave motorway moving mullet nan nani napkins needs news
nobody oi one option oughta ovens park patels pavlova pence pick piece playing police pork
prop reverse ribeye roar rock rubbish said sandra sangeet sawing say scrambled secret seriously
set settings sharp sick sinker sirloin slept soaked spread start storm story sushi t take them
then threw touches tram twelves unreal usual want winds woolshed yous ~!_do ~,_S ~,_all ~,_c
~,_or ~,_up ~,_were ~._is ~._tell ~?_there ~K_gone ~K_over ~O_K ~O_P ~O_and ~O_before ~O_her
~O_in ~O_say ~O_says ~O_since ~O_that ~P_. ~P_but ~P_no ~P_still ~S_a ~S_about ~S_in ~S_is
~S_who ~U_ago ~U_and ~U_could ~U_first ~U_for ~U_i ~U_still ~U_were ~V_, ~V_P ~V_U ~V_at ~V_but
~V_c ~V_in ~V_says ~V_this ~V_us ~V_yes ~^_P ~^_it ~^_second ~^_that ~^_w ~^_what ~^_where
~^_your ~a_P ~a_U ~after_. ~after_that ~ago_, ~already_V ~already_and ~am_S ~am_still ~an_K
~and_i ~and_it ~and_now ~and_they ~any_V ~are_not ~at_it ~at_you ~be_with ~because_P ~because_they
~before_she ~but_that ~c_? ~c_U ~c_n ~c_so ~c_were ~can_he ~did_too ~do_V ~done_his ~done_your
~down_$ ~down_to ~first_V ~from_my ~goes_V ~going_n ~going_out ~going_up ~gone_with ~had_so
~had_to ~have_d ~have_put ~her_O ~here_in ~how_are ~i_can ~i_do ~in_an ~in_at ~in_i ~is_already
~is_down ~is_t ~it_$ ~it_already ~it_no ~it_was ~let_her ~let_me ~like_$ ~like_do ~me_about
~mine_for ~more_, ~more_on ~my_n ~n_, ~n_O ~n_about ~n_c ~n_ok ~n_over ~n_would ~no_S ~no_one
~not_a ~not_be ~not_do ~not_out ~now_she ~of_them ~off_the ~ok_for ~on_this ~or_K ~or_after
~or_there ~ours_in ~out_her ~over_that ~put_him ~said_U ~said_so ~says_my ~should_S ~since_U
~so_for ~still_S ~t_, ~t_now ~take_other ~that_now ~that_out ~the_P ~the_second ~their_K ~them_$
~then_you ~there_with ~these_in ~they_all ~they_already ~this_? ~this_V ~those_O ~till_y ~to_or
~to_y ~up_V ~up_at ~up_his ~us_another ~was_V ~was_in ~we_all ~we_say ~went_out ~were_still
~what_she ~when_$ ~when_i ~where_are ~where_she ~which_V ~who_O ~who_got ~who_took ~will_$
~will_put ~y_for ~y_in ~yes_. ~you_V ~you_can ~you_must ~you_would
2 #P0 #S0 #U0 #frame:some #phrase:S2 #words5 #words7 #words8 <n:80> =add-dish:S2 =add-dish:all
=add-dish:frame =add-hands:S2 =add-hands:all =add-hands:guess =affirm =affirm:phrase =ask-guests:S1
=ask-how:guess =ask-how:most =ask-next =ask-next:phrase =ask-options =ask-options:guess =ask-options:some
=ask-plan:phrase =ask-safety:few =ask-safety:guess =ask-shopping:S3 =ask-status:to-roast =ask-substitute:S3
=ask-substitute:phrase =ask-temperature:S1 =ask-temperature:phrase =ask-time-left =ask-time-left:S0
=cancel-timer:some =choose:phrase =cook-away:guess =correct:S2 =correct:phrase =deny:few =describe-roast:few
=lack =lack:most =lack:some =note-guest:few =pause =pause:few =quiet:S0 =report-guests:guess
=report-not-done =report-not-done:phrase =report-out:S1 =report-reading:frame =report-reading:most
=report-reading:to-roast =report-setup:S2 =report-started:some =report-trouble =resume:all
=running-behind:most =set-doneness:S2 =set-guests:few =set-guests:to-roast =set-serving-time:some
=set-timer:to-choice =set-units:S1 =shift-serving:S0 =shift-serving:all =shift-serving:to-confirmation
=unclear:frame =unclear:to-choice =watch:some ?heard4:frame ?heard5 ?heard6:guess ?talk2 about
above after afternoon afters all among an animals anything anywhere as baker balloon be beautiful
behaves behind bird block boil bonjour bringing budget but can cass chill choking clementine
clicks collapsed comes cool could count craic dads dae deeper dessert dipped dishes down dream
driver early ended esme everything expert extra fallen ferry flames football forgetting funny
gideon gifts girlfriend good guts hames harriet has have held hey how idea inch isla issue
jim joke joss judge kit lasts lined list liv lobby longer looked lotte loved lyle manage marek
may me middle miguel million missing mums nightmare nobbut not off oven overdoing overdone
overtime packed pain paper parents passes person plate progress quarters rail raised rajiv
ranch reach ready regular rests room rope run runny ruth scale sees shove sleeves smell snow
softening someone spare spooning stab staying straining strength sudden survive temple tent
thinks tie times tin touched treacle tv uncle vegan wan warn washing watch wedge what which
wim woman worm yogurt ~!_S ~!_first ~,_some ~._V ~._all ~._at ~._i ~._n ~._now ~._off ~._should
~._then ~._will ~?_out ~?_put ~?_should ~K_$ ~K_? ~K_S ~K_of ~K_out ~O_now ~O_of ~O_with ~P_c
~P_done ~P_he ~P_took ~S_are ~S_hers ~S_i ~S_over ~S_w ~U_. ~U_do ~U_said ~U_the ~U_y ~V_ago
~V_and ~V_done ~V_on ~V_that ~V_there ~V_when ~V_with ~^_V ~^_could ~^_d ~^_first ~^_this ~a_w
~about_with ~ago_V ~ago_the ~all_$ ~already_all ~already_but ~and_does ~and_were ~and_with
~another_V ~are_all ~are_by ~are_c ~are_my ~are_now ~are_so ~are_up ~are_w ~at_O ~at_the ~at_what
~be_when ~because_U ~because_if ~because_mine ~c_a ~c_there ~d_before ~d_still ~do_at ~do_for
~does_the ~first_and ~for_, ~for_her ~for_the ~get_c ~go_S ~go_V ~go_about ~gone_K ~gone_O
~got_me ~had_been ~had_it ~has_all ~have_on ~have_the ~her_c ~her_in ~her_or ~here_to ~how_V
~i_V ~i_could ~i_up ~in_from ~in_that ~is_me ~is_more ~is_over ~is_still ~it_first ~it_go ~it_is
~it_more ~me_her ~me_if ~me_yes ~more_S ~more_U ~my_other ~n_K ~n_V ~n_already ~n_before ~n_go
~n_who ~never_c ~never_had ~no_go ~not_S ~not_here ~not_let ~now_$ ~now_but ~off_, ~off_when
~ok_, ~on_after ~on_from ~one_i ~one_that ~or_c ~other_? ~ours_is ~out_$ ~over_and ~over_with
~put_c ~put_in ~put_that ~said_K ~say_at ~says_his ~second_how ~second_n ~she_has ~should_$
~should_go ~since_and ~so_does ~so_should ~so_the ~still_, ~still_all ~t_or ~take_? ~thanks_for
~them_by ~them_i ~then_V ~there_now ~there_will ~they_be ~this_. ~this_for ~till_n ~till_what
~to_$ ~to_V ~to_say ~too_. ~too_so ~took_a ~took_the ~up_$ ~up_from ~w_is ~w_n ~was_. ~was_what
~we_could ~went_, ~went_down ~went_off ~what_? ~what_V ~what_a ~what_are ~what_was ~when_can
~which_i ~who_are ~will_that ~with_? ~with_V ~with_him ~with_them ~y_. ~y_V ~yes_done
3 #K1 #K2 #O0 #S3 #frame:all #frame:few #phrase:S1 #words4 / <n:150> <n:25> <n:300> =add-dish:guess
=add-dish:to-roast =affirm:S3 =affirm:to-confirmation =ask-amount:most =ask-amount:phrase =ask-how
=ask-how:S0 =ask-next:guess =ask-next:to-reading =ask-options:S1 =ask-plan:few =ask-plan:some
=ask-safety =ask-safety:S2 =ask-safety:phrase =ask-safety:some =ask-shopping:all =ask-slice:S0
=ask-slice:some =ask-status:S0 =ask-temperature:S2 =ask-temperature:guess =ask-temperature:some
=ask-why:S1 =choose:S3 =correct:few =describe-roast:S0 =describe-roast:most =drop-dish:phrase
=lack:S1 =note-guest:phrase =quiet:S1 =repeat =repeat:some =report-done:S1 =report-done:guess
=report-not-done:some =report-not-done:to-step =report-oven =report-oven:S0 =report-oven:most
=report-oven:some =report-reading =report-reading:S0 =report-setup:to-roast =report-started
=report-started:S2 =report-started:most =report-thermometer:S0 =report-thermometer:all =report-thermometer:most
=report-trouble:S1 =report-trouble:all =running-behind:frame =set-doneness =set-doneness:S1
=set-doneness:guess =set-guests:S1 =set-guests:S3 =set-serving-time =set-serving-time:phrase
=set-timer =set-timer:to-confirmation =shift-serving =skip-step:S0 =skip-step:few =skip-step:to-step
=start-over:frame =watch:frame =watch:to-reading ?heard6:frame ?heard7:guess absolutely aoife
arse ashet aunt away back bag bea before bet beth bite blind bloke boiling bone bonny borrowed
breaks breath bridie brings calm careful carried catch caught centre cheats club core cracking
côte decided di dripping drips end event fainted farm feral fete fill firm floor fresh from
gained going hal hearty help honest ines jar jas knackered know learn leg lovers makes mandoline
market mary medium mhm mike mines misspoke morag needle nil non ohio ourselves overcooked pay
peeled perched pink pinny pit pop pulled rack randoms remember remind reporting resumes roast
romantic rosemary sank saying scissors seared seating sense shave simplify sits slits smooth
solid spaniel spilled starters state status stay strip stuffing style substitute summer sunniva
tackle takes talked tears teeth timer upon us very watercress weight weird whacked wind x1
x2 yorkshires zadie zeb ~!_now ~!_we ~,_already ~,_not ~._P ~._can ~._second ~._w ~K_. ~K_K
~K_V ~K_because ~K_too ~K_up ~O_another ~O_not ~O_over ~O_should ~O_would ~P_said ~P_she ~P_tell
~P_up ~S_S ~S_any ~S_done ~S_his ~S_not ~S_of ~S_say ~S_since ~S_some ~S_your ~U_S ~U_did ~U_it
~U_like ~U_where ~U_who ~V_already ~V_are ~V_as ~V_can ~V_from ~V_had ~V_how ~V_i ~V_let ~V_may
~V_me ~V_no ~V_put ~V_them ~V_too ~^_can ~^_will ~a_go ~about_what ~already_now ~am_O ~am_U
~am_going ~and_P ~and_c ~and_there ~and_till ~another_of ~are_U ~at_how ~at_which ~at_with
~be_$ ~be_if ~be_more ~been_. ~been_V ~been_on ~been_what ~but_no ~by_? ~by_when ~c_in ~c_on
~can_get ~can_not ~can_that ~d_ago ~d_can ~d_they ~did_put ~do_K ~do_the ~done_in ~down_after
~down_from ~down_your ~first_O ~first_go ~first_then ~for_an ~from_what ~get_for ~get_this
~going_S ~gone_U ~got_and ~got_another ~got_c ~had_a ~have_it ~have_that ~he_got ~her_U ~here_V
~here_a ~here_so ~him_at ~his_O ~his_S ~how_to ~i_have ~i_may ~i_never ~in_, ~in_them ~into_his
~is_? ~is_by ~is_i ~is_like ~is_the ~is_up ~is_who ~it_c ~it_for ~it_shall ~like_d ~like_with
~may_as ~me_$ ~me_an ~me_ok ~might_have ~mine_is ~more_will ~must_the ~n_off ~n_say ~n_she
~n_that ~n_when ~never_in ~no_K ~no_O ~no_V ~no_you ~not_V ~not_after ~not_all ~not_say ~not_yet
~now_, ~now_c ~now_it ~now_not ~now_tell ~now_there ~now_would ~of_n ~off_a ~off_and ~off_since
~ok_at ~on_for ~on_n ~one_you ~or_they ~other_c ~out_first ~out_put ~over_$ ~over_here ~put_?
~put_over ~put_them ~say_this ~she_must ~should_not ~should_of ~so_he ~so_it ~so_she ~so_why
~some_V ~still_? ~still_how ~still_the ~t_$ ~t_in ~t_so ~take_d ~taken_over ~tell_when ~than_n
~that_and ~that_d ~the_n ~them_V ~them_down ~there_and ~there_for ~there_says ~this_is ~those_V
~to_be ~up_since ~up_with ~us_up ~w_, ~w_V ~was_$ ~was_K ~was_me ~was_never ~was_the ~we_might
~we_never ~went_into ~what_did ~when_it ~where_is ~who_can ~why_$ ~why_. ~why_S ~why_can ~will_not
~with_a ~yes_! ~yet_and ~you_at ~you_for ~you_not ~you_still
4 #expecting:false:most #expecting:false:some #frame:S0 #frame:S3 #frame:most #phrase:S3 #phrase:few
#phrase:some #words6 % <c> <d> =add-hands:most =ask-guests:S0 =ask-next:frame =ask-options:S3
=ask-options:phrase =ask-plan:guess =ask-slice =ask-slice:all =ask-slice:phrase =ask-status:most
=ask-substitute =ask-substitute:S0 =ask-substitute:most =ask-temperature =ask-temperature:most
=ask-why:S0 =choose:S0 =choose:all =cook-away =cook-away:S1 =cook-away:phrase =correct:to-reading
=describe-roast =describe-roast:guess =describe-roast:phrase =describe-roast:to-roast =drop-dish
=drop-dish:most =emergency:S1 =emergency:phrase =forget-kitchen:S0 =have =have:phrase =lack:phrase
=note-guest:S1 =pause:S3 =quiet:most =quiet:some =repeat:S0 =repeat:few =report-done =report-done:S0
=report-done:to-reading =report-guests:some =report-not-done:S1 =report-not-done:most =report-out
=report-oven:frame =report-reading:S1 =report-reading:all =report-setup =report-setup:guess
=report-setup:phrase =report-setup:some =report-started:S0 =report-thermometer:S2 =report-trouble:S3
=report-trouble:most =report-trouble:some =running-behind:S0 =set-doneness:S0 =set-doneness:phrase
=set-guests =set-guests:guess =set-guests:most =set-guests:some =set-timer:frame =set-timer:most
=shift-serving:some =skip-step:S3 =start-over =start-over:S2 =watch:S0 =watch:to-choice ? ?heard4:phrase
?heard6 abuela advise ago ahead apart awkward basting bc becky bed bench bertie blazing boss
breads breakfast brennans brisket builders bunged buttons buzz cabin chair check chucked clean
cleaned clock coal compound cookies course creme crisping curtains d'you dance dash delegate
destroyed dog doorstep drain dried dump eater everybody exchange eyeing favour feet fergus
first flaky forget fraiche fridge fried fuse gets girls grab grace grandparents greta grownups
guests guys hole hoose hop host huge insists instant-read jess jory kidney kilo kind knock
knocked leather lick lids losing magic marigold meera mikes missed mixed more music nail names
nearer neighbors nor notify now ofen officially older onion opinions order ow pastry peeler
pictures plastic plumber position prep press pretend puffed q rash reaches ribs ride road ruining
sanjay sauna scalloped scraped scraping sea separate short shown sideboard signed sleeps soup
space speech squeezed stalled steve stopped stove straight supposed table tablespoon than theo
thing tilly tomasz totally treat tummy ugh unchanged useless vik voted waiting warning wasabi
wean whistles wobbly worry wrapped y yesterday ~!_go ~,_do ~,_her ~,_his ~,_may ~,_of ~,_still
~,_t ~._S ~._c ~._like ~._or ~._still ~._why ~?_all ~?_say ~K_another ~K_before ~K_did ~K_for
~K_from ~K_going ~K_if ~K_our ~K_till ~K_were ~K_when ~O_be ~O_but ~O_it ~O_us ~O_when ~P_be
~P_of ~P_ok ~S_O ~S_V ~S_can ~S_ok ~S_our ~S_what ~U_done ~U_they ~U_to ~U_up ~V_all ~V_be
~V_because ~V_by ~V_going ~V_got ~V_it ~V_mine ~V_now ~V_over ~V_so ~V_then ~V_they ~V_we ~^_out
~^_put ~^_should ~^_thanks ~a_S ~after_K ~after_i ~all_out ~all_over ~already_so ~and_O ~and_another
~and_must ~and_never ~and_tell ~and_the ~another_K ~another_U ~another_d ~are_, ~are_. ~are_O
~are_me ~are_still ~as_$ ~as_it ~at_a ~at_and ~at_our ~be_before ~because_it ~been_let ~before_i
~but_the ~but_then ~c_my ~c_this ~can_do ~can_the ~can_we ~d_$ ~d_tell ~did_go ~do_one ~do_them
~do_we ~does_$ ~does_all ~does_this ~done_they ~down_all ~down_ok ~first_but ~first_off ~for_K
~from_K ~from_c ~g_V ~g_i ~g_the ~get_n ~go_. ~go_for ~goes_on ~goes_out ~going_$ ~going_V
~got_down ~got_the ~had_not ~had_them ~has_a ~has_c ~has_now ~has_put ~has_the ~have_O ~have_n
~have_with ~her_on ~here_on ~him_in ~if_we ~in_K ~in_says ~is_V ~is_a ~is_got ~is_how ~is_no
~is_to ~it_? ~it_does ~it_has ~it_in ~it_never ~it_the ~it_when ~it_will ~it_you ~like_i ~me_K
~me_for ~me_it ~me_which ~might_as ~might_be ~must_S ~n_$ ~n_here ~n_if ~n_in ~n_let ~n_must
~never_a ~never_been ~not_K ~not_by ~not_g ~not_too ~now_shall ~now_so ~off_S ~off_already
~off_in ~ok_do ~ok_what ~on_before ~on_one ~on_yet ~on_you ~one_on ~one_says ~or_any ~or_my
~or_n ~or_on ~out_as ~put_K ~put_d ~said_and ~said_it ~said_she ~say_that ~says_he ~second_?
~second_so ~she_K ~she_be ~she_got ~she_is ~should_be ~should_i ~so_d ~so_has ~still_c ~still_did
~t_. ~tell_how ~that_got ~that_put ~that_still ~that_the ~that_yet ~the_K ~the_no ~the_will
~them_? ~them_are ~them_till ~then_O ~then_c ~then_tell ~there_i ~to_K ~to_by ~to_take ~took_her
~took_me ~took_my ~up_after ~up_d ~up_some ~up_to ~us_and ~us_the ~w_U ~was_S ~was_for ~was_that
~we_will ~went_K ~what_can ~what_do ~when_he ~where_they ~why_? ~will_V ~will_c ~will_to ~will_you
~would_K ~would_c ~would_like ~yes_no ~yet_$ ~you_could ~you_in ~you_it
5 #expecting:false:all #heard1 #phrase:most #words3 . <n:100> =add-dish =add-dish:S1 =add-dish:most
=add-dish:phrase =add-dish:some =add-hands =add-hands:S1 =add-hands:frame =affirm:S0 =ask-amount
=ask-how:all =ask-how:frame =ask-next:S0 =ask-plan =ask-plan:S0 =ask-plan:S1 =ask-plan:S2 =ask-plan:to-confirmation
=ask-shopping:guess =ask-temperature:S0 =ask-time-left:S2 =ask-time-left:all =ask-time-left:to-step
=correct:S0 =deny:to-choice =describe-roast:some =emergency:S2 =feed-public:S1 =forget-kitchen:S1
=forget-kitchen:some =have:all =help:most =lack:S0 =note-guest =note-guest:S2 =pause:S0 =report-guests
=report-guests:S0 =report-guests:S1 =report-guests:frame =report-not-done:S2 =report-not-done:frame
=report-out:all =report-out:few =report-out:frame =report-out:some =report-reading:phrase =report-thermometer
=report-thermometer:phrase =report-trouble:S0 =running-behind =running-behind:guess =running-behind:phrase
=set-guests:S0 =set-guests:S2 =set-guests:to-serving-time =set-method:frame =set-serving-time:S0
=set-timer:S0 =set-timer:to-step =set-units =set-units:phrase =shift-serving:phrase =undo =undo:phrase
=watch:phrase ?heard5:phrase ?heard6:phrase alert ambrose anew appointment bach bas begins
bernadette bo bonfire bothering budge carked carving caspian checking chore colour crackle
creep cressida crushed cutting declan dialled dijon dining drive dyou eats electrics everyone
fact faffing fasting feeding flask flopped folk fool fork full gale game gil give giving gloves
gorgeous gratins gravy great groceries hank haul heads helps holler hoovers immune inform instead
joan jumping keto killed king kip knifes kofi lass leaking learned leif lena logic making maria
mark miles mutton near need negotiable nervous niece note ok otto parsley pax peaks ping planned
plumb prayed preheat prepare prepared prime probe probes proceeding resume risen rolls round
salt sauce sentences settee shake should shut sleeping smoked son sorry sour stiff stripped
suet sulking suzanne talking tariq tarragon team thermo thermometer thickest think thyme toronto
tough triple true v vegans visitors voice wake wei wey winning won written yam yams yanking
yorkshire zone ~!_how ~,_because ~,_on ~,_w ~._does ~._ok ~._t ~._which ~._would ~K_and ~K_c
~K_is ~K_it ~K_n ~K_or ~O_. ~O_goes ~P_has ~P_have ~S_! ~S_P ~S_down ~S_he ~S_should ~S_where
~U_be ~U_because ~V_goes ~V_he ~V_his ~V_one ~V_than ~^_S ~^_after ~^_another ~^_at ~^_because
~^_have ~^_let ~^_n ~a_second ~about_V ~after_V ~after_how ~after_so ~all_V ~all_for ~all_my
~all_ok ~all_this ~am_$ ~am_down ~am_i ~am_in ~am_up ~and_them ~and_why ~another_c ~as_in ~at_,
~at_to ~been_up ~but_O ~c_. ~c_be ~c_has ~c_not ~c_off ~c_tell ~can_K ~can_O ~d_he ~d_of ~d_over
~d_to ~do_d ~do_i ~do_with ~does_V ~done_after ~done_d ~done_so ~done_too ~down_, ~down_by
~down_so ~first_you ~for_V ~for_them ~from_you ~g_. ~get_from ~going_? ~gone_on ~got_K ~got_O
~got_her ~have_? ~have_V ~have_a ~have_an ~he_will ~her_with ~here_O ~here_i ~hers_, ~hers_S
~hers_on ~him_with ~his_must ~how_will ~i_S ~i_did ~in_V ~in_c ~in_for ~in_how ~into_U ~into_the
~is_U ~is_now ~it_K ~it_V ~it_down ~it_got ~it_like ~it_off ~it_up ~let_V ~let_a ~like_O ~like_it
~like_we ~me_S ~me_after ~me_in ~me_n ~me_out ~me_over ~more_and ~more_are ~more_to ~must_be
~must_go ~my_K ~n_more ~no_$ ~no_have ~not_c ~not_done ~now_and ~now_are ~now_i ~now_to ~now_when
~now_you ~of_ours ~off_so ~off_where ~off_your ~ok_n ~ok_ok ~ok_so ~on_c ~on_then ~or_am ~or_what
~other_O ~our_U ~out_because ~out_if ~over_. ~over_V ~say_d ~say_not ~says_do ~she_goes ~she_have
~since_y ~since_you ~so_$ ~so_U ~so_V ~so_to ~so_where ~still_V ~still_be ~still_can ~still_not
~t_at ~t_what ~take_them ~that_all ~the_c ~theirs_, ~them_S ~them_c ~then_n ~there_? ~there_can
~there_to ~there_what ~this_n ~those_c ~those_on ~till_d ~till_when ~to_all ~to_for ~to_g ~to_me
~to_who ~too_U ~took_S ~took_n ~up_, ~up_and ~up_by ~up_so ~us_if ~w_in ~w_no ~w_not ~was_his
~was_on ~we_have ~we_would ~went_d ~went_in ~were_we ~were_you ~what_must ~when_S ~where_were
~which_do ~why_i ~will_there ~yes_n ~you_now ~you_put
6 # #phrase:S0 =add-dish:S0 =add-dish:to-confirmation =add-hands:some =affirm:some =ask-amount:S0
=ask-amount:frame =ask-amount:some =ask-how:S3 =ask-how:phrase =ask-how:some =ask-next:S2 =ask-next:some
=ask-options:S0 =ask-shopping =ask-shopping:S0 =ask-slice:most =ask-status:few =ask-why:to-choice
=cancel-timer:phrase =correct:all =deny:to-confirmation =describe-roast:S1 =describe-roast:to-confirmation
=forget-kitchen:all =lack:S3 =note-guest:to-confirmation =repeat:phrase =report-done:phrase
=report-out:S0 =report-out:to-reading =report-oven:phrase =report-reading:few =report-setup:all
=report-started:phrase =report-thermometer:few =running-behind:some =set-doneness:few =set-method:S2
=set-method:most =set-method:some =set-serving-time:to-confirmation =set-serving-time:to-guests
=set-timer:phrase =set-units:S0 =set-units:to-roast =shift-serving:guess =skip-step:S2 =skip-step:all
?heard8:frame according adding allow audience bark baster batch batter beef beeped being belay
blowtorch blush bowl bruh butterflied butternut bypass carrots cent cents charred chasing chest
christening clear cloves concert crank creamed crept crisp crunch dare dear devils dials disaster
don'tcha drawer dumb eased eat eaters eating ee egg empty exactly facts fan fillet finger finish
fit forced fully gary goal god goodness gosh grandmother grandson grater greying handful hang
health heaven hired hotter hunk hurling include inside jodie kai keep kidneys kindly landlord
law lie life lifting likes lit lobbed lodger mabel marinade marinate meat menu minutes moaning
most much mute n ngozi nick obviously onwards opposite outdoors overview overwhelmed ox pan
panicked parked party pause plan plenty popping potatoes praise priscilla priyanka proofing
proper quantity rather reaching reasoning religious resting right rise rolled roommate rump
runs safe salmon salvage screaming sensible shiny siobhan sitted size skinny slab smidge snug
so something splitting spoke stage store strictly stupid sulk supply swamped test tobin tolvo
torch tow trussing tucked type unwrapped vegetable wait walk war warmer watery waylaid wee
weep whatever wheesht zero ~!_is ~!_what ~,_any ~,_d ~,_hers ~,_me ~,_my ~,_so ~,_take ~,_y
~._$ ~._are ~._do ~._for ~._it ~._we ~._y ~K_are ~K_be ~K_by ~K_he ~K_like ~K_now ~K_off ~K_says
~K_should ~K_take ~O_S ~O_can ~O_d ~O_from ~O_our ~O_tell ~O_the ~O_which ~P_U ~S_all ~S_and
~S_more ~S_no ~S_now ~S_on ~S_them ~U_not ~U_should ~V_? ~V_about ~V_another ~V_been ~V_down
~V_get ~V_hers ~V_into ~V_out ~V_second ~V_should ~^_K ~^_like ~^_taken ~^_would ~about_K ~about_in
~ago_at ~ago_i ~ago_on ~all_K ~all_she ~already_put ~already_what ~am_no ~an_c ~and_like ~and_not
~are_$ ~are_out ~as_U ~as_no ~as_she ~as_they ~be_. ~be_V ~be_all ~be_at ~be_by ~be_here ~be_so
~been_put ~but_K ~but_it ~but_we ~by_the ~c_O ~c_got ~c_now ~c_she ~c_up ~c_with ~c_yet ~d_O
~d_about ~d_are ~d_for ~did_but ~do_after ~do_n ~do_on ~do_us ~done_O ~done_that ~done_what
~down_d ~down_in ~first_? ~for_? ~for_us ~for_w ~g_to ~get_you ~go_$ ~go_out ~go_to ~goes_when
~going_but ~gone_from ~got_$ ~got_? ~got_before ~got_on ~had_, ~has_to ~he_should ~here_S ~here_all
~him_to ~his_at ~how_$ ~how_, ~how_K ~how_c ~how_my ~i_K ~i_now ~if_my ~in_$ ~in_down ~in_go
~in_off ~in_t ~in_their ~in_y ~is_S ~is_in ~is_mine ~is_taken ~is_took ~it_P ~it_S ~it_after
~it_not ~it_to ~like_a ~like_and ~me_P ~me_U ~me_by ~me_that ~more_for ~more_of ~more_with
~my_P ~n_ago ~n_but ~n_first ~n_it ~n_the ~no_there ~not_U ~not_been ~not_now ~not_there ~now_.
~now_in ~now_or ~now_that ~of_in ~of_who ~off_c ~off_till ~ok_done ~ok_the ~on_g ~on_he ~on_my
~on_there ~on_us ~or_? ~or_V ~or_does ~or_is ~out_S ~out_all ~out_can ~over_at ~put_at ~said_we
~say_on ~second_it ~shall_i ~she_$ ~should_the ~so_all ~so_let ~so_take ~so_they ~so_we ~some_are
~some_have ~still_ok ~t_i ~t_it ~t_you ~take_my ~tell_you ~thanks_. ~that_$ ~that_. ~that_they
~that_too ~the_how ~the_of ~them_from ~them_have ~then_another ~there_in ~there_is ~there_like
~there_not ~they_are ~they_can ~this_in ~to_go ~to_no ~to_tell ~to_this ~up_does ~up_not ~up_we
~us_, ~us_after ~w_c ~went_. ~what_U ~what_should ~what_the ~when_will ~why_V ~why_must ~will_it
~with_it ~would_it ~would_not ~y_after ~yes_ok ~yes_yes ~yet_so ~you_? ~you_but
7 #expecting:true:all #words1 =ask-amount:S1 =ask-amount:all =ask-options:most =ask-substitute:S1
=ask-substitute:guess =ask-substitute:to-step =ask-why:all =ask-why:some =cancel-timer =cancel-timer:S0
=cancel-timer:guess =cancel-timer:most =choose:frame =cook-away:few =cook-away:to-step =correct:to-guests
=describe-roast:S2 =describe-roast:all =feed-public:S3 =have:S0 =note-guest:most =pause:S2
=report-done:all =report-done:most =report-not-done:all =report-out:phrase =report-started:all
=resume:to-step =running-behind:few =set-guests:phrase =set-method =set-method:phrase =set-timer:S1
=set-units:S2 =set-units:frame =skip-step =skip-step:guess =skip-step:phrase =watch =watch:most
?heard5:frame ?heard7 ?heard7:frame ?talk1 acting action actual adults ajar alex alight anjali
ansel anymore app appetite apple arra arsed assembled b basted beside binning blank browning
budged bun buttered buy cafe carries carved ceiling celiac chop circling climbs compared connection
cookie cooler cutted date deep degrees dem detector dinner dogs drank ear earth easier eilidh
exists ferdinand fix flicked flip foggiest forever forward friends fundraiser gas glue graham
grams grilling gwen headlines heat herb ho hog homemade horace house hung ill ingredients jaz
jiggled joint jonty kate kill kilos kiwi land leave-in leftovers lemon lenny light limits liza
lord lost make mashed mate meantime measured mercy messages minding miss mrs must nae nix numbers
oiled oversalted own paolo pausing peppercorns perrin persons pieces pinker possibilities preheating
r range reached reading recycling reheated remove rescue righty rim roughed safer salsa sauces
sear seeing settled seventies sieve silver silverside simmering skipping smoke smug sock sooner
sounded spice spoiled squash stare stick stockpot streets sufficient swapped target telephone
tied tobias today tongue trev trip unannounced ups verde version w wandering whilst whisked
wilted winks wire wondering wooden word wound wrapping wrong yell younger ~!_there ~,_by ~,_could
~,_has ~,_if ~._let ~._my ~._not ~._say ~._so ~?_in ~K_go ~K_goes ~K_took ~O_about ~O_his ~O_she
~P_n ~P_to ~S_for ~S_into ~S_n ~S_or ~S_out ~S_then ~S_there ~S_will ~U_c ~U_does ~V_d ~V_took
~V_will ~^_down ~^_took ~^_us ~a_d ~a_must ~all_are ~all_now ~all_so ~all_they ~an_S ~an_w
~and_my ~and_which ~as_a ~at_for ~be_a ~be_going ~before_, ~before_K ~but_U ~but_let ~but_with
~by_for ~by_how ~by_this ~c_K ~c_still ~c_than ~can_S ~can_be ~can_they ~could_do ~d_K ~d_by
~d_or ~did_, ~do_all ~do_me ~do_then ~do_this ~does_S ~down_. ~down_as ~down_before ~down_off
~down_will ~first_$ ~first_like ~for_who ~from_V ~from_n ~g_is ~g_that ~g_when ~get_and ~get_to
~get_why ~go_O ~go_in ~goes_n ~going_all ~going_as ~gone_? ~gone_into ~got_S ~got_an ~got_going
~got_their ~had_U ~has_not ~have_here ~have_not ~have_now ~hers_V ~how_am ~how_must ~i_done
~i_must ~i_put ~if_it ~in_? ~in_now ~in_yet ~is_have ~is_my ~is_y ~it_he ~it_how ~it_say ~let_S
~let_us ~like_that ~may_i ~me_O ~me_have ~me_t ~more_or ~must_take ~my_c ~n_. ~n_is ~n_since
~no_a ~not_gone ~not_n ~now_K ~now_d ~now_for ~now_is ~now_t ~of_before ~of_now ~of_w ~off_my
~off_there ~ok_V ~ok_if ~ok_that ~on_$ ~on_. ~on_as ~on_at ~on_me ~on_no ~on_till ~one_for
~one_yet ~or_S ~or_will ~or_you ~other_n ~ours_was ~out_already ~out_the ~put_S ~said_about
~said_he ~said_i ~say_. ~say_for ~says_V ~says_never ~second_, ~second_i ~she_can ~should_have
~should_there ~since_$ ~since_i ~since_it ~since_when ~so_S ~so_can ~so_there ~so_you ~some_d
~still_n ~t_is ~take_her ~tell_to ~than_K ~than_mine ~that_down ~that_go ~that_has ~that_take
~that_was ~the_d ~the_now ~theirs_at ~them_U ~them_off ~then_do ~there_a ~there_goes ~this_on
~this_one ~till_it ~till_we ~to_those ~too_$ ~up_U ~up_i ~up_n ~up_or ~up_should ~up_the ~us_all
~us_do ~us_go ~us_have ~us_now ~us_what ~w_so ~was_done ~we_S ~we_for ~we_put ~we_said ~went_up
~were_V ~were_done ~what_and ~what_for ~what_might ~what_on ~what_other ~when_should ~when_that
~where_the ~where_you ~who_S ~who_does ~who_have ~with_hers ~y_K ~yes_or ~yet_no ~yet_still
~yet_the ~you_about ~you_let ~yours_$
8 <g> <t:25> <t:80> =acknowledge:most =add-hands:phrase =affirm:all =ask-amount:to-roast =ask-guests:few
=ask-safety:S0 =ask-safety:frame =ask-safety:to-doneness =ask-shopping:phrase =ask-status:S3
=ask-status:phrase =ask-substitute:few =ask-temperature:all =ask-time-left:S3 =cook-away:frame
=correct:S3 =deny:guess =emergency:some =lack:all =report-guests:phrase =report-oven:few =report-reading:to-choice
=report-setup:S0 =report-setup:most =report-thermometer:S1 =report-trouble:frame =report-trouble:phrase
=resume:S3 =set-doneness:all =set-guests:all =set-guests:to-choice =set-method:S0 =set-method:all
=skip-step:some =start-over:all ?heard7:phrase ?heard8:guess ?heard8:phrase adjust ages agreed
ahint aiming aisle along alongside altitude amit ancient answers appetites aroha arriving attack
aunts available ay bacteria bad baking barnaby basil batters bean beauty beeping beg beginning
beryl billowing blanched blanket blood bloody bothered boxes braised brussel building burned
bust butchers cabbage carvers carvings cheap climbed climbing clocks code cold control cremated
deadly difference doable drained edges elbows embarrassing everywhere failure far felt fired
flashing florrie foil food fooling forgot form furniture fuss glazing golden grain grandpas
grid grill hats head headcount hearing heaving himself hives hoover hoss human hungry hurt
instant interchangeable internal intolerant items jimmy job jude juicy keen kerry kids knows
kosher ladies landing laughing lead loops loosely lose lowering lump lumpy mad melting mess
ml mucking nadia nonsense nora nudged nuts olu open ottoline parboiled peel pen pepper pip
plantain plates plunge poll possibly pricked priest processor proved purchase push pushing
quit radio rammed recap refuse rested revert rib roasting roughly ruthie sadly scrubbed seated
seawater separator sideways siobhán sky slice sliced slimy slowly socket soon souls sprouts
squeamish sticker strained superb swing system tablecloth tash tess thinner tidy touching trim
trimmed truss visit walking wandered warm whether whipped whisking wreck yuh ~!_so ~,_! ~,_are
~,_be ~,_before ~,_did ~,_does ~,_went ~._? ~._K ~._any ~._first ~._go ~._one ~._she ~._too
~?_$ ~K_been ~K_get ~K_got ~K_have ~K_i ~O_do ~P_S ~P_are ~P_does ~P_get ~P_must ~S_but ~S_does
~S_this ~S_till ~S_went ~S_which ~S_with ~U_she ~U_what ~U_your ~V_. ~V_has ~V_more ~^_c ~^_ok
~^_says ~^_to ~a_first ~after_a ~after_n ~ago_$ ~ago_now ~all_, ~all_got ~already_. ~am_K ~and_all
~and_done ~and_her ~another_n ~are_after ~are_done ~are_like ~as_before ~at_? ~at_when ~be_,
~be_any ~be_d ~be_ok ~before_$ ~before_d ~but_a ~but_you ~c_done ~c_from ~c_i ~c_it ~c_yes
~can_and ~can_put ~could_tell ~d_. ~d_? ~d_because ~d_then ~d_till ~d_was ~d_yes ~do_any ~do_be
~do_now ~do_they ~does_not ~done_U ~done_by ~down_it ~for_our ~for_to ~for_why ~from_now ~g_on
~g_she ~get_S ~get_a ~get_up ~go_K ~go_so ~going_to ~going_with ~got_V ~had_$ ~had_V ~has_O
~has_V ~has_an ~have_K ~have_all ~her_a ~here_by ~hers_$ ~him_for ~his_still ~how_about ~how_should
~how_they ~i_O ~i_n ~i_not ~i_should ~if_c ~if_you ~in_. ~in_already ~is_as ~is_going ~is_put
~is_then ~is_there ~it_as ~it_one ~it_till ~like_, ~like_P ~like_S ~like_V ~like_you ~me_at
~me_but ~mine_S ~more_P ~must_it ~n_d ~n_has ~n_how ~n_then ~n_yes ~n_you ~no_more ~not_so
~now_V ~now_if ~of_all ~of_where ~off_V ~off_first ~ok_? ~ok_with ~on_already ~on_her ~on_let
~on_them ~or_at ~or_down ~or_so ~our_P ~our_S ~ours_are ~out_or ~out_too ~out_when ~over_?
~over_on ~over_the ~put_down ~said_n ~say_V ~says_K ~says_n ~should_it ~so_i ~so_yes ~still_K
~still_O ~t_V ~tell_me ~than_i ~that_? ~that_about ~that_going ~that_he ~that_it ~that_no ~that_on
~that_second ~them_, ~them_how ~then_a ~then_how ~there_going ~these_. ~they_S ~they_U ~this_$
~this_be ~this_d ~those_$ ~till_my ~to_have ~to_in ~to_it ~to_their ~too_and ~took_V ~took_it
~us_out ~w_O ~w_S ~w_a ~w_if ~was_going ~we_do ~we_up ~what_have ~what_shall ~when_they ~which_all
~which_it ~which_we ~who_said ~why_it ~will_O ~will_this ~with_i ~with_what ~would_to ~yes_K
~yes_did ~yes_to ~yet_. ~you_ok
9 #phrase:all #words2 <t:12> =affirm:guess =ask-amount:guess =ask-next:to-step =ask-safety:all
=ask-shopping:S1 =ask-slice:S1 =ask-substitute:some =ask-why:frame =ask-why:guess =cancel-timer:all
=feed-public:S0 =have:S2 =help:S1 =help:some =pause:frame =report-guests:S2 =report-oven:S2
=report-setup:frame =report-started:to-step =running-behind:S1 =set-method:S1 =set-method:few
=set-serving-time:all =set-serving-time:frame =set-units:most =skip-step:most =undo:all =watch:S3
=watch:all ?heard8 ?talk0 absent accent accidentally afresh allergy almonds also amount apologies
arrived article babys backwards battle become bend bernard bev bf binned bit blond blower bok
bottom brilliant brine bugger cable carcass cellar chatting chilled chocolate chopped choy
click close coat condo conked constant cook cooled cracked cranked crisped crunchy curious
dan dancing dat delete diabetes differently dishwater display dong dressed dutch emre erase
estate fail faints faye fewer fight fine fingers fionnuala flickered flooded forerib freezer
frenched gives granddads grease grocer gus haan halal hallelujah halved handheld hat hauled
hearth hilarious hit hockey holding horseradish hours hums ideas ins juices kay kelly kev kicked
knots laugh layered likely lorry loud low magnus margarine maybe metric mill mina mint missus
monkeys muffin mushrooms muslim mustard nap necessary neil none normal nursing odd oliver omit
online ordinary pencil plaster plus poison popovers possible postpone present pretty priti
problems puddings puppy purple putting quick rationale reduce reeking refrigerator repair roadworks
rose safest salad salads scene selling servo share shell shh show shrimp sitting smashed smiling
speaks spinach starve stays steady steam stragglers strung sunflower supermarket support suppose
swedes switched tailed tf thicken tim topped trumpet twine typo underdone unit upside useful
versus visitor volunteered wallpaper whirring willing wipe yapping youll ~!_can ~K_but ~K_d
~K_has ~K_more ~K_must ~K_ok ~K_said ~K_these ~O_all ~O_how ~O_ok ~O_so ~P_P ~P_them ~S_gone
~S_had ~S_how ~S_it ~S_so ~S_took ~U_P ~U_down ~U_how ~V_if ~V_went ~V_were ~^_an ~^_by ~^_has
~^_on ~^_them ~^_which ~about_a ~ago_n ~all_. ~all_can ~all_d ~all_too ~already_K ~already_U
~am_d ~am_now ~and_are ~and_could ~and_going ~and_into ~and_put ~and_say ~and_since ~and_when
~and_would ~as_O ~as_done ~as_n ~at_i ~at_t ~at_that ~be_? ~be_an ~be_for ~be_like ~be_now
~because_there ~been_off ~been_out ~before_? ~before_y ~but_he ~by_me ~c_P ~c_says ~c_when
~c_will ~c_would ~can_c ~can_my ~d_it ~d_off ~did_not ~do_$ ~do_it ~do_so ~done_$ ~done_a ~done_no
~first_, ~first_at ~for_before ~for_is ~for_t ~for_what ~from_me ~g_$ ~g_it ~go_now ~going_O
~got_his ~got_it ~had_an ~had_d ~has_his ~have_S ~have_her ~have_out ~he_O ~here_d ~here_it
~how_U ~i_ok ~i_take ~i_was ~in_but ~in_there ~in_w ~in_was ~in_when ~into_it ~is_g ~is_here
~is_since ~it_w ~it_went ~it_yet ~like_how ~like_what ~mine_at ~mine_says ~must_V ~n_have ~n_so
~n_up ~no_and ~no_my ~no_she ~not_got ~not_my ~not_on ~not_t ~now_too ~of_her ~of_me ~of_us
~off_n ~ok_$ ~on_not ~or_no ~other_in ~out_. ~out_d ~out_since ~out_they ~over_an ~over_it
~over_w ~put_my ~said_O ~said_done ~says_but ~says_her ~she_get ~so_c ~so_if ~so_off ~still_it
~still_no ~taken_out ~tell_c ~tell_n ~than_it ~that_i ~that_us ~that_yes ~then_what ~there_P
~there_the ~this_to ~to_do ~too_? ~took_them ~up_c ~up_like ~up_what ~us_O ~us_down ~w_K ~was_out
~was_too ~what_about ~what_all ~what_goes ~when_do ~when_she ~when_to ~which_U ~which_can ~which_of
~who_$ ~why_so ~will_let ~with_. ~with_t ~with_you ~would_n ~would_the ~would_w ~yes_put ~yet_V
~yet_in ~you_may ~you_were
10 =ask-guests:phrase =ask-shopping:most =choose:to-choice =deny:S0 =drop-dish:all =drop-dish:to-confirmation
=drop-dish:to-step =forget-kitchen =forget-kitchen:phrase =have:most =note-guest:all =pause:phrase
=quiet:phrase =repeat:frame =repeat:most =report-oven:to-step =report-reading:to-step =resume:guess
=set-method:guess =set-serving-time:to-choice =skip-step:frame =undo:S0 =undo:some achieve
advance alcohol almost altogether anna backs baked bang beaten began bert biscuits bones bother
bouillon browned brush bubba bubbling bunch busy c callum cauli choices choose chopper chutney
closed clove collect commands completed confused counting counts covers cow crack creature
dairy darl darlene delivery dental disagree dizzy doorbell eggs either eta ewes fat finishing
flakes forks free gareth gave given glens glowing gotcha grade grand grandkids grandpa grate
grated grey gross grow guest guidance gym hacking hairdresser hanging hauns headache headed
heats helping hendersons hubby id ioro jumps juno ken lagging laid laws laying liam loaf lordship
lukewarm mash max met mile miracle mix months nagging nay negative nisha noah noo november
numb onto otherwise ought outstanding panel panicking parsnip paste patted patting pavlo paying
per phone places plain plated platter pot prayer prepone price rate ravenous readout reg reminding
rephrase rescued returned ribber rinsed rocked roots rotate salty savage schedule scotch scrape
scraps screeching seem serving shambles sitter slate sleeve slippers slips slot slow soaking
sod soy spoil spreading sprout squeaking steaming stomach strings striploin stuck sub suggestions
swears tablespoons tearing teenagers tegan tek tells tepid tickets timeline toast tod toddlers
tossed trains turned tying uncovered uninvited unlucky vegetarian victim vinegar vs wade warming
wedged wilf wired wireless wolves workers wrecked write wrote ~!_, ~,_when ~,_yes ~._U ~._and
~._but ~._out ~._those ~K_all ~K_do ~K_done ~K_first ~K_how ~K_one ~K_so ~K_will ~K_yet ~O_him
~O_this ~P_at ~P_then ~S_as ~S_get ~S_her ~S_me ~S_too ~U_gone ~U_his ~U_one ~U_that ~U_this
~U_will ~U_with ~V_gone ~V_like ~V_never ~V_thanks ~V_what ~^_U ~^_might ~^_never ~^_till ~after_we
~all_and ~all_do ~all_on ~all_put ~all_still ~all_up ~am_on ~and_do ~and_to ~and_w ~another_at
~any_c ~are_already ~are_here ~are_in ~are_on ~as_your ~at_all ~at_here ~at_this ~been_U ~been_at
~been_d ~but_since ~but_when ~by_now ~by_that ~c_after ~c_you ~can_it ~could_we ~d_is ~d_when
~did_i ~did_then ~do_and ~done_K ~done_V ~done_now ~down_V ~down_at ~down_how ~down_yet ~for_.
~for_my ~get_? ~get_O ~get_here ~go_you ~goes_U ~goes_in ~going_ok ~gone_V ~got_them ~got_till
~has_n ~have_, ~have_U ~have_any ~have_off ~have_still ~he_says ~her_to ~i_go ~i_is ~i_shall
~i_took ~if_so ~if_they ~in_and ~in_because ~in_by ~in_no ~in_other ~in_this ~in_with ~is_us
~is_with ~it_and ~it_if ~it_so ~it_that ~it_they ~me_V ~me_as ~me_can ~me_d ~me_from ~me_he
~me_some ~mine_does ~more_is ~must_i ~n_never ~n_should ~n_tell ~n_what ~not_. ~not_in ~not_to
~of_S ~off_. ~off_K ~off_are ~off_by ~off_d ~ok_O ~ok_c ~ok_or ~on_d ~on_is ~on_since ~one_K
~one_at ~one_second ~out_from ~out_it ~out_like ~put_n ~put_on ~said_d ~said_put ~say_in ~says_t
~second_c ~second_would ~shall_V ~shall_be ~she_may ~should_? ~should_V ~since_d ~so_w ~some_U
~still_$ ~still_for ~still_have ~t_after ~taken_the ~tell_it ~tell_what ~that_any ~that_off
~that_there ~the_g ~them_d ~them_so ~there_U ~there_any ~there_before ~till_then ~to_put ~to_you
~too_, ~up_already ~us_K ~us_here ~us_not ~us_they ~us_will ~w_. ~w_or ~w_with ~we_? ~were_not
~what_c ~when_am ~when_is ~where_V ~where_have ~where_to ~why_K ~will_a ~will_we ~with_$ ~with_all
~yes_? ~yes_you ~yet_do ~you_and ~you_be
11 2nd =add-dish:few =add-hands:to-step =ask-next:all =ask-shopping:S2 =ask-shopping:some =ask-temperature:to-doneness
=cancel-timer:frame =drop-dish:S1 =drop-dish:few =forget-kitchen:most =note-guest:guess =report-done:S3
=report-guests:all =report-guests:few =report-not-done:to-reading =resume:most =set-timer:some
=set-units:all acceptable alive ana anyway arguing asking awright bagged bairns ballpark basket
beans becoming begun beyond bits blade blame blokes borrow bout breaker bump burners calibrate
canteen cap carbonised cares changed changes cheddar complaining consider covid dangerous dark
dauphinoise deglaze dial directly draining driveway eighth element everythings faint fed fingered
flick flickering flower foggy freeze further gaya gratin hack hai hemi hospital hour jean jelly
joneses juice jumped kasimo kavi kiri knot lack lard later leaned lied log lola mair mammy
masala mates matter meant measures measuring messing middles mode netted nibbles nicely nuala
nuh ol oregano otis overshot packet pale parsnips penalties peppered percy picked plonked plow
plug pm popped poured practically pressed pure purpose recall reckon remain rental requests
restored roaster robot rolling rory rub rubber rule rundown sal same scales seasoned seats
separated sesame shallots sheep shot shout shows shredded shucking sid sight sink squeaky steaks
steamed steeping stepping suits tad tastes tbh teach teaspoons tested thermometers thickened
tired topside translate tray trays trifle tripped trusted typed underway vi weights welly whistle
wife wine yard yoghurt ~,_am ~,_got ~,_too ~,_was ~._how ~K_am ~K_not ~K_shall ~K_thanks ~K_w
~K_we ~K_where ~K_which ~O_first ~P_him ~P_says ~P_so ~P_was ~S_already ~S_yes ~S_you ~U_O
~U_but ~U_has ~U_here ~V_ok ~V_those ~^_be ~about_P ~about_my ~about_that ~after_$ ~after_?
~after_going ~after_it ~ago_it ~all_c ~all_n ~all_of ~all_taken ~already_! ~already_in ~already_with
~am_so ~an_V ~and_before ~and_down ~and_for ~any_. ~any_K ~any_S ~are_a ~as_of ~as_w ~at_.
~at_first ~at_now ~be_it ~be_to ~because_my ~before_the ~but_there ~c_could ~c_does ~c_how
~c_put ~c_should ~c_them ~c_too ~c_was ~can_? ~d_already ~d_i ~d_into ~d_out ~did_that ~do_before
~do_have ~do_tell ~do_those ~does_and ~done_put ~down_a ~down_or ~for_S ~for_another ~g_in
~go_? ~go_from ~go_with ~goes_down ~goes_over ~goes_with ~going_at ~going_down ~going_for ~gone_,
~got_P ~has_had ~has_it ~have_already ~have_and ~have_i ~have_said ~have_taken ~have_them ~her_so
~here_! ~here_. ~here_or ~here_the ~him_down ~him_how ~how_and ~how_on ~i_to ~in_after ~in_all
~in_as ~in_before ~in_she ~in_so ~in_then ~is_been ~is_of ~is_off ~is_ok ~is_second ~is_w ~is_went
~it_. ~it_all ~it_been ~it_d ~it_have ~let_in ~let_the ~like_if ~me_c ~me_get ~must_$ ~must_K
~n_me ~n_will ~never_K ~no_tell ~no_to ~not_before ~not_d ~not_first ~not_have ~now_like ~now_n
~of_an ~of_those ~of_what ~off_down ~off_or ~off_with ~ok_it ~ok_to ~on_but ~on_our ~on_second
~on_those ~on_too ~on_where ~on_which ~one_in ~or_in ~or_must ~or_should ~or_we ~out_another
~out_do ~out_here ~out_this ~out_till ~over_d ~put_her ~put_his ~said_$ ~said_what ~says_to
~second_and ~shall_K ~should_do ~since_my ~so_like ~so_t ~so_tell ~so_who ~some_. ~some_c ~still_d
~still_going ~take_for ~take_over ~tell_V ~than_V ~than_c ~thanks_V ~that_are ~that_can ~that_me
~the_till ~theirs_S ~them_at ~them_is ~them_out ~then_he ~there_still ~these_$ ~they_is ~to_P
~to_our ~to_that ~up_is ~up_t ~us_for ~us_get ~w_but ~w_on ~was_P ~was_and ~we_must ~we_ok
~went_n ~were_all ~what_could ~what_i ~what_if ~what_in ~when_V ~when_would ~where_i ~which_they
~why_you ~will_go ~with_, ~would_go ~would_there ~yes_and ~yes_go ~you_had ~you_one
12 =add-hands:few =ask-options:few =ask-temperature:frame =deny:all =describe-roast:frame =drop-dish:guess
=feed-public =feed-public:phrase =forget-kitchen:S2 =quiet:to-confirmation =report-guests:to-step
=report-thermometer:some =shift-serving:S2 =undo:S3 =watch:guess aboard accident against approximately
ara assisted ayuh banging bathing beeper beforehand bhaiya bisi blinking boneless boxed brain
breather calculate center chewing childs chilly cider cinder completely cried crime cross current
customers d'ye daughter dentist diabetic divil docks doug duh earlier ed error expect faces
falls faring feels flatmates floss foils folding follows footy former fudge fyi gain gander
gap glass glasses gnawing guid hana happens herbs hoicked husbands ignited ignore indian joining
joy kernel killing leftover less letting lino lowered massive meal meets mi mid misheard moans
monster moves na naturally neep nephew normally offering overshoot pace paw philomena pint
planning port portion possess possibility powder prawn quickest reckoning record remaining
reminder removed request required rid riz root rosé rubbed ruby rugby ruin saignant scratch
scrub searing sheet shoved shy sin sizzling slicing slipped slower somehow sounds soups sprigs
square stands starting steamer sticky sums syrup tear teenager thickens thrown tiles tins tips
tongs tonights travelling truly tucking understanding unsay wah whoa windows wis wise yelling
~!_n ~,_about ~,_been ~,_other ~._a ~._could ~._me ~?_! ~K_as ~K_my ~K_than ~K_yes ~O_let ~O_more
~O_these ~P_do ~P_if ~P_out ~S_d ~S_have ~S_still ~U_then ~U_we ~V_g ~V_must ~V_theirs ~V_which
~^_before ~^_g ~^_got ~^_still ~about_yet ~after_P ~all_about ~and_hers ~and_what ~and_yes
~are_down ~as_we ~at_me ~been_done ~before_. ~before_n ~before_was ~but_$ ~by_K ~by_says ~by_t
~by_was ~c_are ~c_have ~c_then ~c_we ~c_why ~can_$ ~can_or ~could_go ~d_am ~d_n ~d_on ~d_too
~d_we ~d_will ~do_? ~do_about ~do_his ~do_like ~do_that ~do_which ~done_before ~down_K ~down_O
~down_that ~down_till ~first_S ~first_so ~for_him ~for_in ~for_now ~from_all ~from_d ~get_U
~goes_$ ~going_U ~gone_and ~gone_down ~got_here ~got_that ~had_said ~has_, ~have_P ~have_their
~here_can ~hers_K ~i_already ~i_got ~i_let ~if_that ~if_there ~if_your ~in_! ~in_some ~in_yes
~into_S ~is_after ~is_first ~is_them ~it_O ~it_another ~it_can ~it_must ~it_ok ~it_should ~it_were
~like_. ~me_a ~me_my ~me_of ~more_. ~more_d ~n_get ~n_now ~n_they ~n_too ~n_were ~never_did
~no_second ~not_O ~off_now ~off_to ~on_t ~on_we ~one_S ~one_no ~put_this ~put_to ~said_before
~said_first ~say_what ~says_because ~says_can ~second_what ~since_S ~since_a ~so_? ~so_n ~so_on
~still_. ~still_has ~t_more ~t_over ~t_too ~take_that ~than_what ~thanks_be ~that_be ~the_go
~them_. ~them_K ~them_and ~then_, ~then_? ~there_be ~there_it ~there_since ~there_that ~they_went
~they_will ~this_here ~this_second ~till_now ~till_the ~to_t ~up_when ~us_. ~us_c ~us_to ~w_all
~we_done ~we_go ~we_shall ~we_still ~went_on ~what_like ~what_now ~what_then ~what_will ~what_you
~where_do ~where_should ~why_U ~why_c ~why_he ~will_U ~will_no ~with_S ~y_how ~yes_do ~yet_K
~yet_i ~you_P ~you_never
13 =affirm:most =ask-how:to-step =ask-why:few =pause:most =repeat:S2 =report-done:to-confirmation
=report-guests:to-confirmation =report-reading:to-confirmation =report-started:to-confirmation
=running-behind:all =set-serving-time:S3 =shift-serving:to-choice alternative alternatives
ankle attention bailed balcony balls banes baste bay bells birds blackout blasted board brining
btw bums buttermilk calibrated cauliflower change chat children civilised claims clever commenced
complete cope cowboys crackling crawling crumble cube cubes dears deb deglazed diet dis distracted
doubtful dripped drippings duty earliest eejit eldest english entry european f fashioned figure
folks fort fragile frenching froze gang gauge ghee goodnight grinder grows happen hate hates
hazard heading helpers hope household huh icebox ignatius including joins jun jus knees knob
knocking label lacks lactose laps latest lend liking managed mechanically meet method minus
mob naked neighbor neither nos notion nut nutmeg often ounces part peeling pots pounds praties
proving quicker racket ravi reason regardless removing restless roles rude scrap shape shedding
shellfish sisters skimmed slid slip sorted sous spinning stabbed stall staring stopping strangers
suit tempering terrell thereabouts thumbs thx ticking tomek tools uni unless unpause update
upper vegetables wat weeds while wrack wrapper wresting yanked yorks yusuf ~,_. ~,_shall ~,_would
~._when ~?_if ~K_can ~K_here ~K_then ~O_did ~O_here ~O_my ~S_were ~U_him ~U_off ~U_us ~U_yet
~V_am ~V_not ~V_some ~^_done ~^_from ~^_must ~^_not ~^_some ~about_S ~after_c ~after_what ~ago_S
~all_at ~already_O ~already_n ~am_that ~am_with ~and_am ~and_gone ~and_how ~are_S ~are_and
~are_off ~are_there ~be_gone ~be_out ~be_too ~been_there ~before_me ~before_we ~but_for ~but_this
~by_then ~c_by ~c_me ~c_over ~can_n ~could_you ~d_after ~d_no ~d_not ~d_up ~does_K ~done_but
~done_c ~done_to ~first_is ~for_not ~for_some ~from_there ~go_but ~go_over ~goes_! ~gone_to
~got_w ~had_got ~have_$ ~have_hers ~her_. ~her_at ~his_out ~how_this ~how_would ~in_do ~in_they
~in_to ~it_do ~like_? ~like_in ~like_to ~me_because ~me_what ~mine_O ~more_n ~n_be ~n_did ~n_do
~n_my ~n_where ~no_n ~not_and ~not_more ~not_taken ~of_d ~of_it ~of_these ~off_what ~on_to
~on_yes ~one_V ~or_for ~or_he ~other_K ~out_O ~out_my ~out_now ~out_was ~put_already ~say_U
~say_the ~say_they ~says_O ~second_$ ~second_. ~should_she ~since_c ~some_S ~still_and ~still_do
~still_i ~still_to ~t_on ~take_off ~taken_their ~than_we ~that_at ~that_do ~that_goes ~that_w
~the_in ~their_S ~then_and ~then_for ~there_another ~till_i ~to_before ~to_d ~us_but ~us_then
~us_this ~was_about ~we_may ~were_c ~were_going ~what_, ~what_n ~what_we ~when_, ~when_? ~which_?
~which_was ~which_would ~who_all ~who_would ~why_am ~why_did ~why_n ~with_which ~would_U ~would_a
~would_do ~would_say ~yes_O ~yet_or ~you_i ~you_that ~you_the
14 =add-hands:S0 =affirm:to-step =ask-guests:all =ask-how:S2 =ask-status:to-reading =cook-away:S2
=lack:to-step =pause:some =repeat:to-choice =running-behind:S3 =shift-serving:few =watch:S1
=watch:S2 agree aim anchovies arrives backside bare barszcz blast blitzed blowing bumped buns
buying carrying cars carver chappin chart chined cinders continue conventional correction creeping
crew croquettes cylinder damage decide digital dished doneness drags drunk dumplings edge entered
fellas fenella fetched few final fingertip fintan firehouse forgive frankly fussy glaze greens
guess handed haud heart heck higher holy hood instructed interrupt iron ishaan jain kiddies
knowing lazy lily lines liquid lottie mac masel measure message metres miscounted mitts mouldy
mustards noise o obliged och oclock overran peaked peanut pescatarian pitch portions presumably
real remains report sack salon save scorched screen seal setting shortly showed signs silly
silverskin situation skye slipping sliver snowing spark special splash sprig stead stirring
stock stones stopwatch strain swede swells swim tenderised tenderloin tented ticks trussed
tunde turnips turns using usually walnut walnuts wanting washed whip wines working yank youd
zuli ~,_gone ~,_more ~,_will ~._O ~._have ~?_? ~K_put ~K_this ~O_they ~P_down ~P_had ~S_ago
~S_could ~S_my ~S_their ~S_when ~U_put ~U_those ~U_too ~V_shall ~V_why ~V_would ~^_all ~^_already
~^_one ~^_since ~after_all ~ago_. ~all_we ~already_the ~am_after ~am_here ~am_yet ~and_after
~and_can ~and_me ~and_who ~another_go ~any_other ~as_the ~as_you ~be_in ~because_that ~but_i
~but_is ~but_not ~but_why ~by_his ~c_! ~c_about ~c_d ~can_V ~d_c ~d_down ~d_have ~d_more ~d_there
~did_c ~do_or ~do_to ~does_be ~done_my ~down_P ~down_is ~down_n ~first_the ~for_P ~for_all
~from_$ ~from_S ~from_U ~from_where ~g_from ~g_now ~get_done ~get_my ~go_n ~goes_at ~goes_it
~have_w ~her_down ~here_before ~here_second ~here_till ~how_can ~how_i ~how_n ~i_all ~i_went
~if_not ~in_too ~in_which ~is_an ~is_yet ~it_are ~it_but ~it_now ~like_c ~me_and ~me_so ~me_till
~mine_K ~more_$ ~must_to ~n_after ~n_i ~n_put ~n_t ~never_put ~no_done ~no_still ~not_P ~not_w
~now_P ~now_at ~off_it ~off_we ~ok_she ~on_K ~on_by ~on_do ~on_now ~one_what ~or_how ~or_put
~out_what ~out_yes ~over_K ~over_her ~over_so ~said_S ~say_a ~say_he ~second_is ~so_when ~still_like
~t_out ~t_the ~take_all ~take_this ~taken_V ~tell_a ~tell_if ~that_by ~that_in ~the_w ~there_so
~they_take ~this_done ~this_or ~this_out ~to_? ~to_i ~us_be ~was_from ~was_off ~we_be ~we_can
~went_for ~went_the ~what_S ~when_d ~where_we ~which_one ~why_in ~why_that ~with_me ~with_this
~yet_U ~yet_how ~yet_it ~yet_there ~you_when
15 =ask-guests:S2 =ask-options:to-serving-time =ask-plan:all =ask-temperature:S3 =ask-time-left:frame
=ask-why:to-confirmation =cancel-timer:S2 =cancel-timer:few =cook-away:S3 =cook-away:all =drop-dish:to-choice
=note-guest:to-doneness =note-guest:to-serving-time =report-trouble:to-confirmation =set-timer:to-reading
=skip-step:S1 abide air al aluminium appears autocorrect batt bee beetroot biters blasting
boner brb bung cactus carryover chives circulating coeliac commit dinkum disturb don doors
dora dragging dun dying enough examples exist flying fogged forgotten frail ft german germs
gizmo greasy heavens helper highchair hob hopping imperial ingrid inverter itself knack kūmara
leopold lies lio littlies loretta lumps matters mia mom moment momma mouths netting noticed
nudge olwen op opened orders parboil parchment passed peek pet poisoning replacement reweighed
risk saddle salted scoring seconds shearers similar sing slush snowed sort spoilt subtract
suspend telephoned testing texted thingy timers total transplant vote walkabout whatcha whatsoever
whys wicked ~,_$ ~?_they ~K_would ~O_as ~O_c ~O_shall ~O_there ~P_here ~P_will ~S_be ~S_because
~S_goes ~V_say ~V_still ~V_t ~V_tell ~^_? ~^_me ~^_off ~about_, ~ago_when ~all_U ~all_here
~all_that ~all_there ~already_i ~am_a ~as_S ~at_up ~be_had ~be_what ~c_any ~c_like ~could_S
~d_now ~done_all ~done_like ~down_! ~for_this ~for_when ~from_it ~gone_all ~gone_d ~has_S ~her_up
~him_so ~how_? ~how_you ~i_? ~i_say ~if_K ~if_P ~in_till ~is_but ~is_other ~it_tell ~it_y ~me_who
~more_it ~n_no ~n_still ~no_w ~no_what ~now_U ~now_till ~now_where ~of_this ~off_our ~ok_but
~ok_go ~on_so ~one_do ~one_so ~other_. ~out_that ~out_with ~over_is ~over_what ~put_, ~put_V
~said_? ~says_another ~says_c ~says_one ~says_what ~second_from ~second_of ~she_will ~some_$
~still_too ~t_when ~take_K ~that_my ~that_we ~them_here ~there_K ~there_V ~there_c ~there_then
~this_i ~to_what ~too_for ~us_at ~us_take ~we_at ~went_S ~were_my ~what_does ~what_with ~why_would
~will_K ~will_i ~y_it ~you_said ~you_there ~you_what
16 =ask-how:to-reading =ask-options:to-choice =ask-why:to-step =help:phrase =report-not-done:to-confirmation
=report-not-done:to-roast =report-trouble:to-reading =report-trouble:to-step =set-guests:to-confirmation
abby asparagus auld awake banjaxed beast begin besides blender breathe catching chemo chine
cloth colm cooling crap crisis crossed crowds crust danger digits electricity faster fatty
finishes fionn fixing garlic glory gobi grave greased guide happening heathens hinge invited
jug least linoleum mains marisol mashing meemaw mentioned metal mo mountain needed nipping
nowhere others palaver pans pinged plating poke postman pregnant problem proceed racing rings
rosy runner shaking sharpened shifted specs spots stephen strike studded such sucker sum tablets
tae thaw thoughts throwaway tipped tucker tyre u underneath wal warmed whack worktop ~,_till
~._did ~?_my ~P_were ~U_as ~U_w ~V_ours ~^_about ~^_been ~^_going ~^_up ~^_with ~about_$ ~about_d
~after_this ~all_? ~all_is ~and_has ~are_no ~at_d ~at_some ~be_done ~be_this ~because_V ~but_how
~by_my ~c_said ~c_say ~can_go ~can_take ~could_i ~did_get ~do_first ~do_here ~does_that ~done_.
~done_already ~done_not ~done_she ~from_this ~get_$ ~go_at ~go_down ~go_the ~going_and ~has_$
~have_theirs ~here_now ~here_yet ~hers_is ~how_goes ~how_the ~i_U ~in_what ~is_she ~it_what
~it_where ~me_how ~more_before ~more_they ~more_your ~n_like ~no_how ~no_other ~not_? ~not_no
~of_$ ~off_for ~off_yet ~on_what ~on_with ~one_out ~our_c ~out_n ~say_about ~should_he ~so_,
~still_at ~t_off ~than_my ~than_she ~that_from ~that_n ~that_went ~that_what ~them_or ~there_d
~there_has ~those_off ~to_my ~up_it ~up_where ~up_yet ~us_d ~us_n ~w_i ~was_with ~we_is ~we_like
~we_take ~when_n ~with_us ~yes_$ ~yes_what
17 =ask-how:to-roast =ask-options:to-doneness =correct:to-confirmation =note-guest:to-guests
=pause:to-step =set-guests:to-doneness =set-units:S3 =start-over:S0 =watch:few agenda announcements
anyhow araminta band brined button buzzing cast choice chucking cocktail cocktails convection
cornflour correct crud cups dey different ding doll doubt drying dyslexic elements evening
goner happened harmful hen hobs hospice hovering igniter lamp liar licked lifted living lizard
mamma maud meaning mirka misread nattering necks ned neville petra po program properly propped
pulling quickly replace ricer rinse ripper smoko soggy sole sound sunk supposing surely swung
tasted tenting ticketed tinfoil topping toss tribe trivet un ~!_! ~K_any ~K_tell ~O_am ~O_went
~P_her ~S_U ~S_here ~^_gone ~^_y ~ago_not ~am_out ~an_n ~and_had ~and_where ~as_is ~as_my ~at_$
~be_y ~before_you ~c_go ~c_ok ~c_or ~d_that ~done_here ~down_c ~first_or ~going_by ~got_put
~got_to ~has_her ~her_out ~here_but ~here_n ~his_has ~is_him ~is_when ~it_before ~like_on ~me_?
~me_then ~never_said ~no_no ~no_yes ~not_at ~not_get ~not_i ~now_how ~of_our ~off_on ~or_a
~or_more ~other_S ~out_so ~over_this ~put_a ~second_ago ~she_at ~since_V ~t_O ~t_that ~taken_a
~there_n ~this_at ~too_n ~up_a ~up_my ~we_in ~which_c ~with_their ~would_my ~would_that ~would_we
~you_a à
18 =feed-public:S2 =feed-public:few =resume:S2 =start-over:few =start-over:guess abeg allergies
amend aperitif aunties belly blunt bored breadcrumbs broiler brownout chew clue cuppa detectors
diamonds diaper diets disregard dot exact explain fault felix flu freaking generator ji jobs
justify kettle kicking leaving lending louder marks members minds moira moms mush neeps offered
olive permitted pokes poorly prefers public reek reset risky rn saving seems sia slices smokes
snapped sparks stink stretch suggestion tagging tap thinners throat tick ticked trouble understood
whichever worried ~,_one ~K_already ~P_from ~S_going ~U_so ~^_went ~am_about ~am_from ~am_gone
~are_too ~d_U ~first_of ~first_that ~for_$ ~going_too ~gone_that ~had_her ~he_had ~here_and
~here_goes ~i_after ~into_O ~it_or ~may_V ~more_at ~n_yet ~not_me ~not_what ~now_be ~now_do
~or_can ~or_did ~or_off ~out_but ~second_S ~that_how ~that_you ~their_P ~them_it ~this_up ~those_what
~till_they ~to_so ~up_her ~we_on ~what_were ~where_was ~y_c ~y_not ~you_over
19 =ask-next:to-choice =correct:to-choice =feed-public:most =set-timer:few adrift assist bar
became beets behaving benna betcha bless boyfriend bub chopping company couples deaf delay
dermot dine dodgy ducking electric flipped following grub harm heated idk jose leeks lock lower
lowest main meanwhile nip noted oldies pardon pav plot propose rainwater settle shaken shazza
shoot silent speak speeches spitting stringy suggest summarise thought trimming wiggle x ~U_d
~^_had ~d_like ~d_since ~d_what ~did_we ~do_what ~got_for ~into_K ~is_our ~n_says ~n_why ~now_what
~or_go ~out_she ~say_? ~so_is ~there_ok ~up_here ~w_it ~we_n ~when_K ~why_not ~yes_that
20 =ask-time-left:to-serving-time =help:frame =note-guest:S3 becomes clicked corn doon enamel
feasible fi fits halt hollering instruction kumara parboiling pete pipe reducing righto rob
salting scalded sec sry vanished wha works ~O_no ~P_who ~^_was ~^_were ~about_them ~and_be
~and_thanks ~could_it ~d_the ~done_i ~done_is ~here_for ~how_does ~i_going ~it_t ~n_this ~of_there
~said_w ~says_w ~second_the ~so_no ~that_should ~them_on ~yes_d ~yet_to
21 =ask-plan:frame =ask-time-left:few =note-guest:frame bell bleeding colder cooker da eyes
indeed keeps lang liao notes pointing smoky thawing yoke ~a_no ~all_going ~and_is ~d_you ~has_U
~how_it ~me_or ~n_there ~not_is ~now_we ~of_mine ~ok_i ~or_let ~out_P ~say_so ~so_that ~there_or
~will_take
22 able bram countdown mistake pending reminders roaring silence things ~._d ~P_not ~can_she
~him_? ~me_be ~not_we ~out_yet ~say_n ~say_we ~that_would ~you_no
23 chatter fierce jaysus jonas muna sentence tracking ~and_his ~now_he ~that_a ~this_going
~to_and
24 =repeat:to-confirmation chief flame readings rightly
25 =undo:guess chewy ~has_no
26 rarer
27 ~says_it
29 horses`);

/** Words that have been said to the helper. */
export const familiar: ReadonlySet<string> = new Set(
  `a aa aaand aag abandon abby abe abeg abel abi abide ablaze able aboard abort about abouts above
abroad absent absolute absolutely abuela accent accept acceptable accident accidentally accompaniment
accompaniments accompanying accomplished according accordingly account accounted accurate achieng
achieve aching acorn acoustically across act acting action actual add added adding adjourn
adjust adjustment adrenaline adrift adult adults advance advanced advice advise ae aerial af
aff affair affirmative afore afraid afresh after afternoon afters aga again against age aged
agenda ages agnes ago agony agree agreed agrees aha ahead ahent ahint ahmed aid aight aim aiming
ain air airport aisle ajar ajwain ako al alarm alba alcohol aldente ale alec alert alex alexander
alf algernon alight alive all allergic allergies allergy allow allowed allspice allyuh alma
almonds almost alone along alongside aloo aloud alr alrdy already also alter alternative alternatives
although altitude altogether aluminium aluminum always am ama amandine amara amazing ambrose
ambulance amelia amen amend american amiss amit among amount amy an ana anaemic anaphylactic
anaphylaxis anchovies ancient and anders anew angela angle anil animals anjali anke ankle ann
anna announcements announcing anot another ansel anselm answer answering answers ant anti anticipate
antipasto any anya anybody anyhow anymore anyone anyones anything anyway anyways anywhere aoife
apart aperitif apologies apologises apostles app apparently appearing appears appetite appetites
appetizer apple apples applied appointment apprentice approx approximately appétit apricot
apricots apron ara araminta archies are arguing argument arjun ark arm arms army aroha around
arra arrah arrears arrey arrival arrivals arrive arrived arrives arriving arrowroot arse arsed
arseways arthritis arthur article as asha ashdown ashet aside ask asked asking asks asleep
asparagus assembled assign assigned assignment assist assisted assumes asthma astray astrid
at ate ating attack attained attains attempted attention audience augustin auld aunt auntie
aunties aunts aunty aurelio autocorrect ava available ave average aw await awaiting awake away
awesome awful awfy awkward awright axed ay ayuh b b4 bab baba babak babby babe babies baby
babys babysitter bach back backbone backed backlog backofen backs backside backward backwards
bacon bacteria bad badger badly bag bagged bags bahn bahu bailed baileys bails bairbre bairn
bairns bake baked baker bakery baking balcony baler ball ballet balloon balloons ballpark balls
band bands bane banes bang banged bangin banging banjaxed bank banquet bar barbarians barbecue
barbie bare barely barest bark barn barnabas barnaby barney barszcz bartholomew barty bas base
bash bashed basil basket baste basted baster bastes basting bat batch bate bath bathing bathroom
batoned batt batter batteries batters battery battle bay baz bc be bea beach beaf bean beans
bear beast beastie beat beaten beater beating beatrix beats beautiful beautifully beauty became
because becky become becomes becoming bed bedlam bedtime bee beef been beep beeped beeper beeping
beer beers beetroot beets before beforehand beg began begged begging begin beginner beginning
begins begun behave behaves behaving behind beige being belay believe believing bell bells
belly belong below ben bench benches bend benefit benji benna bent bernadette bernard bert
bertha bertie beryl beside besides best bestie bet beta betcha beth beto bette better betty
between bev beyond bf bhabhi bhai bhaiya biblical bide biding big bigger bijli bilal bile bilin
bill billion billowing billy bin bind binding binned binning bins bird birds birthday biscuit
biscuits bishop bishops bisi bit bite biters bits bitten bitter bk black blackened blackout
blade bladed blame blanch blanched blank blanket blankets blast blasted blasting blather blaze
blazing bleach bleeding bleeds blended blender blenders bless blethering blew blind blinked
blinking blipping blister blistered blistering blisters blitzed block blocked blocks bloke
blokes blond blood bloodier bloody blow blower blowing blown blows blowtorch blue bluetooth
blunder blunt blush bo board boarding boat boats bob bobs bodies body boeuf boil boiled boiler
boiling boils bok bollocks bombay bon bone boned boneless boner bones boney bonfire bongani
boning bonjour bonnet bonnie bonny boo book booking books boom boost boot boots border bored
born borrow borrowed borrowing borscht boss bossy both bother bothered bothering bottle bottled
bottlo bottom bottoms bought bouillon bouncing bound bout bow bowed bowl bowling bowls box
boxed boxes boy boyfriend boyo boys bp brain braised braising brake bram bramleys branch branches
brand bratenschnur brb bread breadcrumbs breads break breaker breakfast breaking breaks breastfeeding
breath breathe breather breathing bred breed brendan brendas brennans brents brew brian brick
bricks brid bride bridge bridie brilliant brine brined bring bringing brings brining briny
brisket bro broc broccoli broccolis broil broiler broke broken bronagh bronwen brother brothers
brought brown browned browner browning brownout browns bruh brush brussel brussels brute bryn
bryony btw bub bubba bubbeleh bubble bubbles bubbling buck bucket bucks budge budged budget
budgets buena buenas buffet bug bugger buggered buggers bugs builders building built buits
bulbs bullet bullets bullseye bum bummer bump bumped bums bun bunch bunches bung bunged buns
burn burned burner burners burning burns burnt burst bus bush bushie business bust busted busy
but butcher butchering butchers butter buttered butterfinger butterflied buttering buttermilk
butternut button buttons buy buying buys buzz buzzer buzzing by bye bypass c ca cab cabbage
cabin cable cactus cafe cafeteria cake cal calculate caleb calf calibrate calibrated call called
caller calling calls callum calm calmer came campaign camper camping can canadian canapés cancel
canceled cancelled cancels candace candle candles canteen cap capers captain captains car cara
caramel caramelised caravan carbonised carbs carcass card cardboard cards care careful cares
carked carks carlas carload carnage carnicero carnivore carol carpe carried carries carrots
carry carryin carrying carryover cars carton carve carved carver carvers carves carving carvings
case cashew cashews caspian cass casserole cast castlebar cat catch catched catches catching
cater catered catering cathy cats cattle cau caught cauld cauli cauliflower cauliflowers cautious
cayenne cba ceiling celeriac celery celeste celiac cellar celsius cement cent centah center
centre cents ceramic cereal certain cerys chacha chainsaw chair chairs chalo chance change
changed changes changing channel chaos chap chapel chappin charcoal charge charity charm charred
charring chart chasing chat chatter chatterbox chatting cheap cheaper cheapest cheat cheaters
cheats check checked checking cheddar cheerio cheers cheese cheesecake cheesy chef chefs chemo
chemotherapy cher chest chestnuts chew chewing chews chewy chhado chicken chickens chicory
chief child children childrens childs chill chilled chiller chilling chilly chimney chine chined
chionggg chip chips chives chockers chocolate choice choices choir choking chook chooks choose
choosing chop chopped chopper chopping chore chosen chowder choy chris christ christening christmas
chronic chuck chucked chucking chunk chup church chutney chz ciao ciara cider ciggies cinder
cinders circling circulating circulation circumstance circumstances civilised claims clammy
clan class clay clean cleaned cleaning cleanly clear cleared clearing clem clement clementine
cleo cletus clever click clicked clicking clicks client clients climb climbed climbing climbs
cling clingfilm clive clock clocks clogs close closed closer closes closing cloth clouds clove
cloves club clue cm co coal coarse coast coasted coasting coat coats cob cobber cocked cocktail
cocktails coconut codding code coeliac coeliacs coffee coffees coil colander cold colder coleslaw
colette collapsed collapsing collard collards colleague collect collie colm colonel colour
coloured colours colt combine come comers comes coming commandeered commands commenced commercial
commit community company compared comparison complain complaining complete completed completely
compliments compound compromised concentrating concerned concert condition condo confession
confirm confused congealed congratulations conked conker conks connected connection connies
conniption connors conor cons consider considering constant container continental continue
contraption control controversial convect convection conventional convert cook cooked cooker
cookie cookies cooking cooks cooktop cool cooled cooler cooling cools copacetic cope copy cord
core cored cores cork corkscrew corkscrews cormac corn cornbread cornelius corner cornered
corners cornflour cornstarch corporate corps correct correctamundo correcting correction corwin
cosmo cost cosy cottage cottons couch cough coughing could count countdown counted counter
countertop counting country counts county couples course couscous cousin cousins cover covered
covering covers covid cow cowboys cowped cows crab crack cracked crackers cracking crackle
crackled crackling crackly craic craig cranberry crank cranked cranking cranky crap crash crawled
crawling crayfish crazy cream creamed creamy creature credit creep creeping cremate cremated
cremation creme crept cressida crew cricket cried cries crimbo crime crisis crisp crisped crisping
crisps crispy criss crook crooked croquettes cross crossed crosses crossing crowd crowds crud
crude crumble crumbs crunch crunching crunchy crush crushed crushes crust crutches cry crying
crystals crème ctrl cube cubes cup cupboard cupboards cupful cuppa cups curdled curious currant
current curry curtain curtains custard custom customers cut cuthbert cutlery cuts cutted cutters
cutting cuz cy cyaan cycles cylinder célia côte d'ya d'ye d'you da dabbed dad daddy dadgum
dads dae daft dairy dal dale damage dan dana dance dancing danger dangerous dangerously dans
daphne dare dark darl darlene darlin darling darn dash dashes dashiell dashing dat date dated
dates daughter daughters dauphinoise dave davo dawn day daycare days dazza de dead deadly deaf
deal dealt dear dearest dearie dears death deb debate december decent decide decided decidedly
deciding decision deck declan dee deep deepa deeper deepest default definite defrosted deglaze
deglazed deglazing degrees deirdre delay delayed delaying delays delegate delete delgados deli
delicate delivery delphine dem demanded den denmark denner dennis dental dente dentist denver
department depending depends derek dermot des descend descending describe deserted desh dessert
destroy destroyed destroying detailed detector detectors dev devices devils dey di diabetes
diabetic diabetics dial dialled dials diamonds diaper dibs dick did die died diem dies diet
dietary diets difference different differently difficult dig digging digit digital digits dijon
dilip dimmed dine diner diners dines ding dinged dining dinkum dinner dinnertime dinr dipped
direct direction directly dis disagree disaster discard disciples disclosure discontinue disgrace
disgusting dish dished dishes dishwasher dishwashers dishwater dismiss dispatch dispense display
disposable disregard distance distracted distrust disturb ditch ditched dive divil divine divorce
dizzy dmytro do doable doc dock docket docks doctor dod dodgy does dog doggy dogs doh doing
doke doll dolly dominic don don'tcha dona donal done doneness dong donna doon door doorbell
doorman doors doorstep dora dorothea dot double doubling doubt doubtful doug dough down downstairs
downtown dozed dr drabs dragged dragging dragon drags drain drained draining drama dramas dramatic
drank draped drat draw drawer drawers dreadful dream dreamt dredge dress dressed dressing dribs
dried drifted drink drinkers drinking drinks drip dripped dripping drippings drippins drips
drive driver driveway driving drongo drop dropped dropping drops drowned drowning drum drunk
dry dryer drying duck ducked ducking dud due duff dug duh dull duluth dumb dump dumped dumplings
dun dunked dunt dust dusted dusty dutch duty dwayne dying dympna dyou dyslexic e e3 each ear
earbuds earl earlier earliest early earned ears earshot earth earthly ease eased easier easiest
easily easter easy eat eatable eaten eater eaters eating eats ed edge edges edible ee eejit
eek eff effie egbert egg eggs eggy eighth eilidh either elastic elbow elbows elderly eldest
electric electrical electricity electrics element elements elevenses eleventy eli elias ella
ellen ellie ellis elodie else elsewhere elsie embarrassing emergency emlyn emm empty emre enamel
end ended endorsed ends energy english enough enter entered entertain entire entirely entry
entrées eoin epipen erase error errors escapes esi esky esme essen estate estimate et eta etc
europe european eva evander evangeline evaporated eve even evening event events ever every
everybody everyone everything everythings everywhere ew ewan ewes ex exact exactly exaggerates
exaggerating examples except exchange excuse exercise exist existing exists expect expected
expecting expensive experience expert explain explains explanation exploding export extinguished
extinguisher extra extracted extractor eye eyebrows eyeing eyes eyesight ezra f f2 fabulous
face faces facing fact factory facts fading faff faffed faffing fahrenheit fail failed failing
failure faint fainted faints fair fairies fairy fall fallback falled fallen falling falls false
family fan fancy fanned far farid faring farm farmers farouk fashioned fast faster fasting
fat father fatima fats fatter fattest fatty fault favour fay faye fays fear feasible feck feckin
fed feed feeding feeds feel feeling feels feet felix fell fella fellas fellowship felt femi
fenella fennel feral ferdinand fergal fergus fern ferns feroz ferry fetch fetched fetching
fete fever few fewer fi fib fiddled fiddling fiddly field fierce fifth fight fighting figure
figured figures fill filled fillet fillets filling film filthy final find finding fine finger
fingered fingers fingertip finish finished finishes finishing finito finn fintan fionn fionnuala
fire fired firehouse fires firing firm first fish fished fishing fist fistful fit fits fitzroys
fiver fix fixed fixing fizz flag flagging flake flakes flaky flame flames flapping flared flash
flashing flask flat flatmate flatmates flavour flecks flesh flew flick flicked flicker flickered
flickering flickers flight flights fling flip flipped float flooded floor flopped flopping
florence florets florist florrie floss flour floured flourish flours flower flowing flown flu
fluke flure fly flying foaming focaccia fogged foggiest foggy foil foiled foils fold folded
folding folk folks follow following follows fond food foodwise fool fooling foot football footy
for forced forcemeat fore foreign forerib forever forget forgetting forgive forgo forgot forgotten
fork forks form former fort forth forties fortune forward forwards fosters found fourth fower
fraction fragile fraiche frail fran france frank frankly fraser frayed frazzled fraîche freaking
fred free freed freeze freezer freezing french frenched frenching frenchman fresh fret frets
fretting freya fridge fried friend friends fries fright frock frog from front froze frozen
fruitcake fry fryer frying fs ft fudge fuel fugit full fully fumbled fumes fun function functioning
functions fundraiser funny fur furious furniture furry further fuse fuss fusspot fussy fyi
gabbing gadget gaein gain gained gajar galah gale galloping galore game gander gang gap gaping
garage garden gareth garlic garlics garnish gary gas gash gashed gasping gate gatineau gauge
gaun gave gawking gawping gaya gayi ged gee geelong geez gen general generally generations
generator generous genius gentle gently gents geoff geometric gerald german germs gerry get
gets getting ghee ghost ghosts giblets gideon gie gifts gig gigot gil gillians gin gina ginormous
girl girlfriend girls gis gissa give given gives giving gizmo glass glasses glassy glaze glazed
glazing glens glory gloss glove gloves glow glowing glue glut gluten gnaw gnawing go goal gob
gobi god godfather godfrey gods goer goes going gold golden golf gon gone goner good good'un
goodness goodnight gooey goose gorgeous gosh got gotcha gout grab grabbed grabbing grace grade
graham grain grainy gramps grams gran grand granda grandad grandads grandbaby granddad granddads
granddaughter grandfather grandkids grandma grandmas grandmother grandmothers grandpa grandparents
grandpas grandson granny granules grape grate grated grateful grater gratin gratins grave gravel
gravied gravies gravy grease greased greasing greasy great greek green greengrocer greens greet
greeting greets greg greta gretel grew grey greyer greying grid griddle grill grilling grim
grind grinder grinding gristle gristly gritter grocer groceries grocery gross ground grounded
grounds group grow growing grown grownups grows grr grub grudge grumble grumpy gruyère guard
guess guessed guest guests guid guidance guide gull gun guns gurdwara gus gushing guts gutted
guy guys gwen gwendy gym ha haan habits hack hacked hacking had hadad hae haein hafta hai hair
hairdresser hairdressers hal halal hale half halfway hall hallelujah hallorans halt halve halved
ham hame hames hamish hana hand handed handful handheld handle handles hands handy hang hanging
hangry hangs hank hanna hannah hape happen happened happening happens happily happit happy
hapt hard hardest hardly hardship hardware haricots harjit harm harmful harms harold harpers
harriet harriets harrys hart has hasselback hassle hat hate hates hats hattie haud haul hauled
haun hauns have having hay haywire hazard haze hazel hazy he head headache headcount headed
heading headlines heads heah health healthy heaped heaps hear heard hearing heart hearth hearty
heat heated heater heathens heating heats heave heaven heavens heaving heavy heck hed hedgehog
heh heid height held hello help helped helper helpers helpfully helping helps hemi hen hendersons
hens her herb herbs here hers herself hettie hetty hey hi hiding high highchair higher highest
hilarious hilde hill hills him himself hing hinge hinges hint hip hips hired hiroshi his hissing
history hit hitchhiker hits hitting hive hives ho hoarse hob hobs hockey hoeing hog hogget
hoicked hoik hoiked hold holding holds hole holiday holidays holland hollandaise holler hollered
hollering holy holyhead home homeless homemade hon honest honestly honey hoo hood hooded hook
hooked hoose hoover hoovers hop hope hoping hopping hor horace hordes horns horrible horror
horseradish horses hortensia hospice hospital hoss host hosted hosting hot hotter hottest hour
hours house household housekeeper housemates hovering how howay however hubby huff huge hugo
huh hum human humidity humming hums hundreds hung hungry hunk hunting hurling hurray hurry
hurt hurts husband husbands hush hut huw hyacinth hydro hygiene hypothetically i ian ice icebox
iced icicle icy id idea ideas idiot idk if iftar iggy ignatius ignited igniter ignition ignore
ill imagine immune immunity immunocompromised immunosuppressants imogen impatient imperial
importance important imran in inch inches incinerated incl include includes including incorrect
increasing incredible indecision indeed india indian induction inedible ines infant info inform
infused infusing ing ingredients ingrid ingvild inherited injection inn inner ins insane insert
inserted inside insist insisting insists instant instant-read instead instructed instruction
instructions insulin intae intend interchangeable interfered interior intern internal interrupt
interstate intimate into intol intolerances intolerant inventory inverter invitation invite
invited invoice involved iolo ioro ireland irish iron ironing is is't ishaan isla isolde issue
it italy item items itself jab jabbed jaccarded jackets jacks jaggery jain jam jamie jammed
janey jar jare jarred jars jas jasper javi jaw jaya jaysus jaz jean jed jeeto jeez jelly jemima
jen jenny jerry jess jest jesus jet jew jewish jezza ji jiffy jiggle jiggled jigglin jim jimmy
jislaaik jo joan joanie job jobbies jobs jodie joe joel joes johns johnsons join joined joining
joins joint joke jokes joking jollof jonah jonas joneses jonty joost jory jose josh joss jot
joy joyce joyces jude judge judgment jug juice juices juicy jump jumped jumping jumps jun junction
juniper juno jus just-now justify jörg kaccha kai kaput kaputt karen kasia kasimo kasper kate
kavi kay kaylas kayleigh keeled keen keep keeping keeps kegs keith kelly ken kept kerala kern
kernel kerntemp kerry keto kettle kev kevin keyboard keys khana kia kick kicked kicking kickoff
kicks kid kiddies kidding kiddo kidney kidneys kids kill killed killing kilo kilos kind kinder
kindly kinds king kingdom kip kiri kirra kirstys kit kitchen kitna kiwi knack knackered knee
knees knew knife knifes knitting knives knob knock knocked knocking knocks knot knots know
knowing known knows knuckle kofi koro kosher kowalskis kraków kristy kumara kylie kūmara la
label labelled lachie lack lacking lacks lactose lad ladder ladies ladle lads lady ladyship
lag lagging laid lake lamb lamberts lambs lammkeule lamp land landed landing landlady landlord
lands lane lang langar language lap laps lard larder large lark lars lasagna lasagne lash lass
last lasted lasts latch late latecomer later latest latter laugh laughable laughing laundry
law laws lay layered laying layla lazy lead leadville leaf leaflet leah leaking leaks leander
leaned leaning learn learned learning learnt least leather leathery leave leave-in leaves leaving
leceh lecs leeds leek leeks left leftover leftovers leg legit legs leif lemon lemons lena lend
lending length lenny lent leo leopold less let letter letting lettuce level levels liadan liam
liao liar liars lick licked licking lid lidded lids lie lied lieke lies lieu life lifespan
lift lifted lifting liftoff light lighted lighting lights like liked likely likes likewise
liking lil lily lime limit limits linda line lined lines lineup lino linoleum lio lionel lips
liquid lisa list listed listen listening lit little littlies liv live lively lives living liza
lizard ll lmk lo load loaded loads loaf lobbed lobby local lock lodge lodged lodger loft log
logic loin loins lola long longer loo look looked looking lookout looks loops loose loosely
loosen loosened lorcan lord lordship lordy loretta lorry lose losing loss lost lot lots lotta
lotte lottie lou loud louder lounge lounging love loved lovely lovers loving low lowdown lower
lowered lowering lowest lowing lowkey luca lucas lucia lucian lucinda luck lucy ludmila ludo
luka lukewarm lump lumps lumpy lunch lunchbox luncheon lupin lurgy lying lyle lynched lyon
lysander läuft m ma ma'am mabel mac macaroni machine mack macleans mad madam made madre magda
maggie magic magnus mags main mains mair maisie majesty mak makan make maker makes makeup making
malachi malarkey male mali mallow malt mama mamma mammy mams man manage managed managing mandolin
mandolina mandoline manner manpreet manual many march marching marco marcus marcy mardy marek
marg margarine marge margery margos margot marguerite maria marie marigold marina marinade
marinate marisol marit mark market marks marlene marnie married marta mary masala masel mash
mashed masher mashing masiji mass massaged massive match mate mates matt matter matters maud
maureen maurice mavis maw max maxed maximum may maybe mayo mcallisters me meal mean meaning
means meant meantime meanwhile measure measured measurement measurements measures measuring
meat meatballs meath mechanically med medium mediumish mediums medwell mee meemaw meemaws meera
meet meeting meets meg mei mek melon melt meltdown melted melting melts memaw members membrane
memo memory men mended mention mentioned menu mercy merrick mess message messages messed messing
met metal meter method metres metric mette mhm mi mia mice micht mick microwave mid middle
middles midway might migraine miguel mike mikes mile miles milk milking milks mill million
milo mina mince minced mind minding minds mine mines minging minibus minimum minits mint minus
minutes miracle miracles mirela mirka miscounted misheard mislaid misprint misread miss missed
misses missing mission misspoke misspoken missus mistake mistakes mister mistook mitt mitts
mix mixed mixer ml mo moaning moans mob mode model moi moira moist moly mom moment momma mommy
moms mondays money monitor monkeys monster month months moo mooing moppin mopping morag more
morn morning morra mortar mosque moss most moth mother mothers motorbike motorway mouldy mountain
mountains mousse mouth mouthful mouths move moved moves movie moving mr mrs msg much muck mucker
mucking muddle muffin mum mumbled mummy mummys mums muna murder murdered museum mush mushroom
mushrooms music muslim must mustard mustards mustardy mute mutter mutton my myself myth mía
n n1 na naan naas nada nadia nae naebody nag nagging nahi nail nailed nails naked name names
nan nana nani nans nap napkins napped napping nappy narky narrower nary nasties nattering naturally
nay ne ne'er near nearer nearly neat necessary neck necks ned need needed needing needle needles
needs neep neeps negative negotiable neighbor neighbors neighbour neighbours neil neither neivefu
nell nelly nelson nephew nerve nerves nervous net netball netted netting never nevermind neville
new newborn newly news next ngaire ngl ngozi niamh nibble nibbles nice nicely nicht nick nicked
nicking niece nieces nigel night nightmare nights nikhil nil nina nineties nip nipped nipping
nips nisha nix nixing no noah nobbut nobody nobodyll noche noise non none nonna nonsense noo
noor nor nora normal normally nos noses not notch note notebook noted notes nothing nothings
notice noticed notifications notify notion nought november now nowadays nowaks nowhere nuala
nudge nudged nuh nuisance nuke null numb number numbers nummer nurse nursery nursing nut nutmeg
nuts nvm nyam o oan oat object objective obliged obscene obviously occurring ocean och oclock
octavia october odd odds odette odhran odile of ofen off offer offered offering office officer
officially offie offset offy often oh ohio oi oil oiled oils ok okok oksana ol old old'n older
oldest oldies olive oliver ollie olly olu olwen omar omit on once one ones onion onions online
onto onwards ony onything oo oona oonagh oor op opa opal open opened opening opens operations
opinion opinions opposed opposite option options or ora orange order ordered orders ordinary
oreb oregano original orla otg other others otherwise otis ottilie otto ottoline ouch ought
oughta ounces our ours ourselves out outage outdoors outer outside outstanding outta oven ovens
over overall overcook overcooked overdoing overdone overflowing overheard overlap overlong
overnight overnighting overran overruns overs oversalted overshoot overshoots overshot overslept
overtime overview overwhelmed ow owen ower owernight owls own owned ox oya oyelarans oyster
oysters pa pace pacing pack package packaging packed packet pad page paid pain painful paining
pains paint pair pal palaver pale palm palms paloma pam pams pan pancake pancakes paneer panel
panic panicked panicking pans pantry paolo papa paper paperwork paprika par parat parboil parboiled
parboiling parcel parchment pardon parents parin parish park parked parking parlour parse parsley
parsleys parsnip parsnips parson part partial particular partly partner partners party pass
passable passed passes passing past paste pastor pastry pat patels path patience patient patients
patted patting pauline pause pausing pav pavel pavement pavlo paw paws pax pay paying peace
peaed peak peaked peaks pealed peanut peanuts pear peas pecan pecans peck pee peek peeked peeking
peel peeled peeler peeling peels peep peeped pees peg pen penalties pencil pending penny pension
pensioners people peoples pepol pepper peppercorns peppered peppermill per perce percent perched
percival percy perfect perished perk permissible permission permitted permitting perpetua perrin
person persons pescatarian pestle pesto pet petal pete petra petrol pettibone pettifers pharmacy
phew phil philomena phone phoned photos physio piano pick picked picking pickup pickups picky
picture pictures pie piece pieces pierogi pies pig pigs piked pills pilot pilots pin pinch
pinched ping pinged pink pinker pinkness pinny pint pints pip pipe pippa pips pit pitch pitching
pity pizza place places plain plan plane plank planned planning plans plant plantain plants
plaster plasters plastic plate plated plates plating platter play playing pleased plenty plonked
plot plow plows plug plugged plumb plumber plump plunge pluribus plus pm po podded pods point
pointer pointing pointless points poison poisoning poisonous poke poked poker pokes poking
poky polenta polish polished poll pool pooling poor poorly pop popes popovers popped popping
poppy porch pork porks porky port portion portions position positioned positive posses possess
possibilities possibility possible possibly post postman postpone pot potato potatoes pots
potty pounding pounds pour poured pouring powder power practically practice praise praties
prawn prawns prayed prayer praying pre preacher preachers precisely prefer preference prefers
preggers preggo pregnant preheat preheated preheating preheats prep preparation prepare prepared
prepone present presents press pressed pressure presumably pretend pretty previous price pricked
pride priest prime primrose print printed prioritise priscilla priti private priya priyanka
pro probe probed probes problem problems procedure proceed proceeding proceedings processor
professional program programme progress project projected promise promised proofed proofing
prop propane proper properly proportions propose propped propping pros proud proved provided
proving ps ptolemy pub public puck pucker puckle pud pudding puddings puddins puddles puffed
puja pull pulled pulling pumping pumpkin pumpkins pune punter punters pupils puppy pups purchase
purchased pure puree purple purpose purty purée push pushed pushing put puts puttar putted
putting pyrexy q quantity quarreled quarter quarters queer question questions queue quick quicker
quickest quickly quid quiet quieten quillon quirks quit quite quivering quiz quote r rabba
rabbiting races racing rack racket radek radiant radicchio radio radish rae ragnar ragù rail
rain rainwater raised raising raita raj rajiv ralph ramble ramil rammed rampant ran ranch random
randoms rang range ranges ransom rar rare rarer rash rate rather ratio rationale rattle ravenous
ravi raw ray rayburn rcd reach reached reaches reaching reacting reaction reacts read reading
readings readout reads ready real realised realistically reason reasoning reasons reassure
recalibrated recall recap recipe recked reckon reckoned reckoning reckons recommend record
recovered recruit recycling red redcurrant redo reduce reduced reducing reduction reed reek
reeking ref reflection refreeze refrigerated refrigerator refuse refuses reg regardless regiment
regret regular rehearsal rehearse reheat reheated reheating rein reinforcements rejection relations
relatives relax relaxes reliable relieves relight religion religious relit remain remaining
remains remedy remember remind reminder reminders reminding reminds remove removed removing
remy rendering rental repair repaired repairman repeat rephrase replace replaced replacement
report reporting reports request requested requests required requiring rescue rescued rescuing
resembles reservoir reset residents residual responding rest restart restaurant restaurants
rested resting restless restore restored restriction restrictions rests result resume resumes
resuming retard return returned rev reverse reversed revert reweighed rewind rhona rib ribber
ribeye ribs rice riced ricer rich richt rid ride ridiculously right rightio rightly righto
righty rim rimmed rind ring ringed ringer ringing rings rinse rinsed riot rip ripper ripping
rise risen rising risk risky rite riz rn road roads roadworks roar roaring roast roasted roaster
roasting rob robins robot rock rocked rocks rod roderick roger rohini rohit role roles rolfe
roll rolled rolling rollo rolls romantic ron rona roof room roommate roommates root roots rope
roped ropes roping rory ros rosa rosalind rosamund rosary rose rosemary rosie rosies rosy rosé
rotate rotating rotten rough roughed roughly round roux row rows roy rub rubbed rubber rubbing
rubbish ruby rude rug rugby ruin ruined ruining ruko rule rules rump run rundown rung runner
running runny runs rupa rupert rush rusted ruth ruthie róisín s s'pose sabine sable sack sad
saddle sadie sadly safe safely safer safest safety safetys sage said saignant sair sake sal
salad salads sale sally salmon salon salsa salt salted salting salts salty salvage salvageable
sam same sandra sandwich sandwiches sane sangue sanity sanjana sanjay sank santa saoirse sardines
saskia sat saturdays sauce sauces sauna sausage savage savages save saveable saved saves saving
saw sawdust sawed sax say sayang saying says scald scalded scalding scale scales scalloped
scared scarpered scary scene schedule scheduled schmest schnippels school scissors scoff scooped
scoot scorched scorching score scored scoring scotch scout scrambled scran scrap scrape scraped
scraping scraps scratch scream screaming screams screeching screen scroll scrub scrubbed scruffy
sea seal sean sear search searched searching seared searing searings season seasoned seasoning
seat seated seating seats seawater sec second seconds secret section see seeds seeing seem
seems seen sees seeven seh self sell selling sells selves send sends senior seniors sense sensible
sensor sent sentence sentences separate separated separating separator sequence serial serious
seriously serve served service serviced serving servo sesame set settee setting settle settled
settles sevens seventh seventies shade shairpened shake shaken shaker shaking shall shallot
shallots shallow shambles shanelle shank shape shaped shards share sharer shares sharons sharp
sharpened sharpener sharpening shattered shauna shave shaved shaz shazza she shearers shears
shed shedding sheep sheet sheets sheila shelf shelfs shell shelled shellfish shelter shelves
sherry shh shift shifted shiny shirins shirt shit shock shocking shoe shoes shona shook shoot
shoots shop shopping shops short shortly shosemary shot should shoulder shout shouting shove
shoved show showed shower showing shown shows shredded shredding shrimp shrimps shrinks shrivelled
shucking shukar shunt shush shut shuts shy shying sia sick sickness sid side sideboard sides
sidetracked sidewalk sideways sieve sigh sight sign signal signed signs silence silent silly
silver silverbeet silverside silverskin similar simmer simmered simmering simmers simon simple
simplify simply simran sin since sinead sing singed singers singing single sink sinking sinner
siobhan siobhán sir sirloin sis sister sisters sit sitrep sits sitted sitter sitting situation
sixes size sizzle sizzling skelped skewer skewers skidded skillet skillets skills skimmed skin
skinned skinny skins skip skipped skipping sky skye slab slack slammed slantways slap slate
slavering slaw sleep sleeping sleeps sleeve sleeves slept slice sliced slicer slices slicing
slid slide slides sliding slightly slimy sling slip slipped slippers slipping slips slits sliver
slivers slosh sloshing slot slow slower slowing slowly slowpoke slumped slurp slush slyce smack
smaddy small smaller smallest smart smash smashed smashing smeared smell smelling smells smidge
smiling smithereens smiths smoke smoked smokes smoking smoko smoky smooth smothered smouldering
smudged smug snags snail snap snapped snapping snatched snaw sneak sniff sniffles sniffs snipped
snow snowed snowing snuck snug so soaked soaking soaks soap sober sock socket sod sodium sofa
soft soften softened softening soggy sold soldier sole soles solid solids solitary solo solution
solveig some somebody somehow someone something sometimes somewhat somewhere somewheres son
soon sooner soonest soons sooo sorry sort sorta sorted sorting soufflé souls sound sounded
sounding sounds soup soups sour source sous soy soya soz space spaced spain spaniel spanish
spare spark sparks sparrows spat speak speaking speaks spears special specifically speck speckled
specs speech speeches speed spell spice spices spicy spilled spilling spilt spin spinach spinning
spins spite spitting splash splashed splat spleen split splitting spoil spoiled spoils spoilt
spoke spoon spooning spoons spot spots spouts spread spreading sprig sprigs spring sprinkled
sprout sprouted sprouts sprt spud squallin square squash squeak squeaking squeaky squealing
squeamish squeeze squeezed squint squinted squinting sry ssst stab stabbed stabby stabilized
stage stains stair stairs stakes stale stalk stall stalled stalls stan stand standalone standard
standing stands standstill stank starch stare staring start started starter starters starting
starts starve starving state static station status stay stayed staying stays stead steady steak
steaks steam steamed steamer steaming steel steeped steeping steer stellan step stepdad stephen
stepmum stepping steps steve stew stewed stfu stick sticker sticking stickler sticks sticky
stiff still sting stinging stink stinkin stinking stinks stinky stir stirred stirring stitch
stitches stock stockpot stocks stoked stole stolen stomach stone stones stood stool stop stopped
stopping stops stopwatch storage store stored stores stories storm stormed story stout stove
stovies stragglers straight strain strained straining strait stranger strangers strapped strapping
strawberries strawberry strays stream streaming street streets strength stress stretch strictly
strike strikes striking string strings stringy strip striploin stripped stroller strong strongly
strop struan struck struggling strung stuck studded student students stuff stuffed stuffing
stuffings stupid style sub substitute subtract such sucker sudden suddenly sudha suet suffer
suffers sufficient sugar sugared suggest suggestion suggestions suit suits sulk sulking sulks
sulphites sum summarise summer sums sun suncream sundays sunflower sung sunil sunita sunk sunniva
sunog sunset sup superb supermarket superstition superstitious suppah supper supping supply
support supports suppose supposed supposing sure surely surgeon surprise survive sushi suspects
suspend suspicious suya suzanne sven swallow swallowing swami swamped swap swappable swapped
swear swearing swears sweated sweating sweaty swede swedes swedish sweet sweetheart sweets
swell swelled swelling swells swerve swim swimming swing swinging swiss switch switched switching
swole swollen swore sworn swung syllable sylvester syrup system systems t tabao table tablecloth
tables tablespoon tablespoons tablet tablets tackle tad tadhg tadka tae tagging tahlia tail
tailed tailing tails tak take takeaway taken takes taking tale talk talked talking talks tally
tama tamales tamsin tap tar target tariq tarragon tartare tash task tasks taste tasted tastes
tasting tate taties taught taxi taxis tayo tbh tbsp tea teach teacher team tear tearing tears
teaspoon teaspoons technically technician technique teddy teds tee teen teenage teenager teenagers
tees teeth teeths teetotal tegan tek telephone telephoned television tell telling tells telly
temperature tempering temple tempus tender tenderised tenderloin tenderstem tenner tens tension
tent tented tenting tents tepid terence terok terrell tess tessa test tested testing text texted
tf thae than thank thanks that thatll thaw thawed thawing the their theirs them themselves
then theo theodora there thereabouts thereto thermo thermometer thermometers thermos thermostat
these they thick thicken thickened thickening thickens thickest thin thing things thingy think
thinking thinks thinner thinners third this thon those though thought thoughts thousand thread
threads threshold threw throat throats through throw throwaway throwing thrown thru thumb thumbs
thx thyme tibor tick ticked ticket ticketed tickets ticking ticks tide tidy tidying tie tied
ties tight tightly tilda tile tiles till tilly tim time timeline timer timers times timetable
timewise timing timings tin tinfoil ting tink tinkle tinned tins tiny tip tipped tips tired
tiresomely tirty tit tita tmep tmr to toast toaster toasting tobias tobin toby tock tod today
toddler toddlers together told tolerate tolvo tom tomasz tomb tomek ton tongs tongue tonight
tonights tons too toodle took tools toot top topped topping tops topside torch torchlight tore
torn toronto torture toss tossed total totally touch touched touches touching tough tove toves
tow toward towards towel towels town toxic tq track tracked tracking tractor traditional traffic
tragic train trains translate transplant transposed trapped trash travelling tray trays treacle
treat trenches trev trevor tribe trick trickle trickling tried trifle trifles trigger trim
trimmed trimming trip triple tripped tripping trivet trix trolley troops trouble truck trudy
true truly trumpet truss trussed trussing trust trusted trusting truth truths try trying tub
tube tubes tubs tuck tucked tucker tucking tuition tumble tummies tummy tunde tune tuppence
turbo turkey turn turned turning turnip turnips turns tv twas twelves twice twine twins twist
twitchy twixt tying tyler type typed types typical typing typo tyre tết u ugh ulric uma un
unannounced unchanged uncle uncleji uncles unconscious uncovered undecided under undercook
undercooked underdone underneath underside understand understanding understood underway undo
undressed undue unfinished unfit unflavoured unfreeze unfrenched unfrozen uni uninvited unit
units unlearn unless unlucky unmade unpause unreal unsay unset unsuitable untented untouched
untrimmed untying unusable unwaxed unwind unwrapped up update upon upper ups upshot upside
upstairs upwards urgent us usable use used useful usefully useless using usual usually utility
uwe uy v vacuum valmera valve van vanished vanishes variant various vat vegan vegans vegetablarian
vegetable vegetables vegetarian vegetarians veggie vent ventilator vents vera veranda verandah
verde verna version versus very vessel vessels vet veterans vi vicar vicars victim video view
vik vikram village vincent vinegar vinegary violently visit visitor visitors voice volume volunteered
vote voted votes vs w waan wad wade wafted wah wains wait waited waiting waits wake wakes waking
wal walk walkabout walked walker walkin walking wall wallpaper walls walnut walnuts walt wan
wanda wandered wandering want wanted wanting wants war ward warehouse warm warmed warmer warming
warn warning warped warum was wasabi wash washed washhouse washing wasted wat watch watching
water watercress watery watter waxy way waylaid ways we weak wean weans wear weather weave
wed wedding wedge wedged wee weeds week weekdays weeks weel weep wei weigh weighed weighing
weighs weight weights weird weirdo well welly welp welts wen wendell wendy wenona went were
weres wes wet wey wha whack whacked whadda whaddya whanau what whatcha whatever whatevers whatll
whatsits whatsoever wheat wheel wheelchair wheesht wheezing when whenever where whereabouts
wherefore wherever whether which whichaway whichever whichevers while whilst whine whinge whip
whipped whipping whirlin whirring whisht whisk whisked whisker whiskey whisking whisper whistle
whistles whistling white who whoa whoever whole wholegrain whom whoo whoosh whopper whose why
whys whānau wi wicked wid wide wider wife wifell wifi wiggle wiggled wild wilf wilhelmina will
willing wills wilma wilsons wilted wilting wim win winced wind winded window windows windowsill
windy wine wines wing winging winks winnin winning wins winter wipe wiped wiping wir wire wired
wireless wiremu wires wis wise wish wishes wisht wisnae wisps witch with withdrawn within without
wits wives wobble wobbles wobbly wojtek wok woke wolves woman won wonder wondering wonky wood
wooden woof woohoo woolshed worcester worcestershire word words work workers working works
worktop world worm worried worries worry worse worth wot would wouldja wouldya wound wow wrack
wrangle wrangling wrap wrapped wrapper wrapping wreck wrecked wrecking wren wrest wresting
wrestle wrestling wriggle wrist wrists write writes writing written wrong wrongly wrote wuh
wusses wut wyatt wyn wystan x x1 x2 xanthe y ya yael yam yams yank yanked yankin yanking yapping
yard yarn yay ye year years yeast yell yelled yelling yer yerra yersel yes yessir yesterday
yet yew yippee yo yoghurt yogurt yoke yon york yorkie yorks yorkshire yorkshires yorkshre you
youd youll young young'uns younger youngest your yours yourself yous yuh yusuf yvette z zacs
zadie zap zara ze zeb zebedee zelda zero zeros zhoo ziggy zip zoe zone zones zuli zuri`.split(
    /\s+/,
  ),
);
