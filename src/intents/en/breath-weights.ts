/** Learnt from the rules and learnt parts of the corpus by scripts/train-breaths.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const breathWeights: Weights = weightsFrom(`
-51 |,
-49 it|THING_N:core
-46 medium|well
-45 till|
-44 medium|rar
-43 all|N:few |than
-42 |so_far
-41 and_then| can_you| i|could |in_her
-40 befor|i on|my |any_mor |yet
-39 every| |i_should |myself |now_and
-38 next|door not_even| on|N:some roast|DISH very| |and_in_th |anymor |into |it_is_$ |past
|this_year
-37 N:few|in_th Nduration_back|it or| than| |els |fre
-36 Nduration|to ^_m|and ^_would_you| all|right and|why ar_you| caught|fir could_you| count|th
fan|oven for|medium_rar gon|Nduration in|a is|half reach|N:core |as_a |tonight |when_w
-35 @108.0| N:core|already N:oven|now ^_Nduration_ago| a_good| all_over|th and|how at|what
dinner|Nduration how_com| if| on|your send| suppos| that_is_what| us|THING what|can when|i
|for_her |for_this |it_and |overnight |part |timer_for_th |would_b |year
-34 DISH_out|th DISH|go N:core|in_th Ndegrees:core|insid Nduration|after ^_at_Nclock| ^_i_meant|
^_i_said| after|Nduration am|i another| back|on com|back eat|THING help|m how_much_longer|
is_already| is|vegan it_THING|N:core it_is|Nweight let_m| no|sear on|a oven|door small| so|no_DISH
ther_is|N:few took| top|oven wer| with|N:few would_b| |and_ti |at_this |everywher |extra |fi
|i_think_$ |it_is_own |last_year |through |wis
-33 DISH|roll N:few|bon Ndegrees:core|in Nduration|befor P|U_is ^_Nduration_back| ^_medium|rar
^_you_can| all|this back_in|N:some com|in do|w how_THING| it|first it|look littl| mak_that|
poor| th_wrong| this|oven th|N:few_of what_all| what_els| |@3.2 |U_with |altogether |can_go
|do_not_eat |in_ther |is_fin |it_up |it_with |ok_for |or_no_$ |start_now |together |week |when_th
|yourself
-32 DISH_DISH|out N:core|for U|in ^_N:few_mor| ^_is_ther| ^_my_oven| ^_m|P ^_th_oven| and|put
and|stop anyth|i as|well at_N:few|Ndate at|N:some at|Ngas-mark a| down|a giv_th_DISH| got_N:few|
how_you| is_on|N:core is|DISH it|mak it|now i|never look|lik medium_not| mi| no|fan on|DISH_$
reason| remind_m| say|N:oven set|Nduration sinc| so|w start|th throw| timer|go when_you| your|P
|@9.0 |as_of |as_well |at_all |in_march |in_that |is_ther_$ |it_i |person |th_whol_way |till_i
|to_a |with_this
-31 DISH|THING_$ DISH|and_DISH N:few|mor N:oven|on_th N:some|to Nclock|on_th P|can_not ^_DISH|hav
^_Nduration|i ^_tell_m| ^_turn_out| a_N:few_bon| and| besid| b|N:some could| did|you giv_m|
how_pink| how|you includ| in|our in|this is|N:core_now it|rar i|reckon m_on| minc| not|N:some
of_us|THING on|Ngas-mark on|fir on|her on|top out|Nduration_ago out|on rest|a show|N:core tabl|salt
tent|on th_hot| that|step too|hot what|can_i you|can you|hav you|tell |a_miss |abov |at_tabl
|below |caught |chair |di |fast |has_not_budg |in_it_$ |in_this_hous |is_U |is_com |it_so |my_THING_$
|so_much |th_oven_$ |to_finish |walk_in |yesterday
-30 DISH_in|ther DISH|is_not N:core|to Nweight|of P|and_P P|eat U_in| U_no|th ^_U|no ^_roast|DISH
^_so|what ^_th_U| and_sorry| and|cancel and|giv and|set at_N:few|instead at_N:oven|for at|half
can_not_hav| celsius|and_kilo chuck| clos|th com|on count_down|Nduration dav| did_you| dinner|roll
don|with eat|Nduration fetch| first|guest fi| for_th_next| fresh|THING f|th had_to| half|th
hang| hav_not_don| how_far| i_already| i_said|it is_bring| is|ok is|what i|look keep_it| know|what
leave-in|THING left|th let_us| lift| lik_it|medium low|and_slow my|guest never| no_on| not|start
ok|so on|hold on|tabl other|half oven|run oven|set past|N:core pull|th rib|roast r|DISH say|N:core
shop|list so|medium ta| th_gam| th_grey| th_whol| that_is|how that|is_it th|cor timer|off to|Ngas-mark
up|with what|did when|you with_N:few| you|reckon you|wer |ago |alongsid |already_and |club
|do_for |each |from_N:few |got_to |him |instead |is_how |is_over |last_night |roast_Nweight
|sinc_Nduration |th_DISH_th |th_i |till_th |when_h
-29 @105.7| DISH|finish DISH|now_$ N:core|now_$ N:few|to Nduration|sooner P|hav THING|is_THING
THING|on_it U|with ^_U|DISH ^_^_first| ^_first| ^_mak_it| a_Nduration| actual| add_DISH|DISH
all|THING all|that and_a| and|h and|nobody and|so and|wher at|my back_in|Nduration bon|ar b|N:few_of
can_not_do| check|th door|is do|N:few do|next eat|Nclock grab| guest|hav has|N:few hot|fat
how|i i_hav_gon| i_must| into| in|boil in|boil_water is_eat| is_no| is_too| is|N:oven is|drop
is|start it_off|at it_that| it|Nduration_ago it|Nduration_sooner it|go i|skip kept| kill| knock|th
leav| lik|a listen|to margarin| measur| mention| might| no_DISH|for no_not| not|se not|stop
of_this| onc|it oven|Nduration prim|rib ran| ready|when roast|DISH_in roll|in r|win second|oven
should_it| smok|alarm th_oven|door ther_is_N:few| to_b|N:few too|much up|on w_did| was|N:core
went_in|Nclock what_DISH| what_th| what_you| whatever|you what|could when|w will_it| wonder|
w|never you|go you|look |@114.6 |@34.5 |Nduration_what |THING_N:some |and_rest |down_and |ever
|faff |first_or |first_then |fit |foot |for_it |halfway |happen |hav_cancell |hear |her_and
|is_Nduration |is_not_com |it_for |m_up |month |next_door |now_so |of |on_your |order |out_ther
|oven_and |rather_than |suppos_to |ta |th_THING_and |ther_is_too |this_morn |us_to |was_on
|would_i |you_i
-28 DISH|cream N:core|i_want N:core|insid N:core|is_what N:few_bon|rib N:few_is| N:few|P_$
N:few|guest N:some|in_th N:some|peopl Ndate|dinner Nduration|mor THING_m| THING|for_th THING|was
^_^_already| ^_already| ^_how_com| ^_medium|well ^_no|mor ^_th_P| ^_th_dog| and_is| and|dinner
and|mak and|tak and|when and|when_do and|you ar_on|th ar|w bar| befor_i| befor|w bon|rib butter|is
b|Nduration_$ b|medium can_it| com_up| com|out cut|it d'you| did|w different| down|Nclock down|on
drop|th feed| feel| fell| first|N:few first|or for|N:core for|N:oven gon|Nduration_$ goos|fat
had_N:few| hav_her| hav|DISH hav|w hav|you hold|th hot|oven how_i| how_lat| i_open| i_said|N:core
if_it| ill| instead|of in|U_$ in|fahrenheit is_on|fir is|fin is|shut is|th_N:few is|ti is|turn
it_is|N:some i|THING i|can kick| let_it| lik|my lit|th mak|DISH many_DISH| my_THING|on m|and_my
not|N:core_$ not|mov no|THING off|for off|in off|th of|N:core on_is| on|then oven|set_to over|N:core
over|at plat|ar pound|for raw|THING said|N:few said|N:some sam_is_on| set|th shall| should|i
sinc|th sit|ther skip_that|on so_now| som|DISH so|h still_in|th stop|th tabl|is taxi| tell_your_P|
th_DISH|out thes|DISH timer|on told|m too|lat to|start to|tell wait_on| want_DISH_DISH| want_her|
want|medium was_not| what_would_you| what|did_i what|i_am what|is_it what|sh whol_th|back would|
you|would |@122.4 |@17.3 |@64.3 |@71.5 |DISH_so |DISH_would |Nduration_ago_and |THING_b |THING_say_N:oven
|against |all_over |and_DISH_$ |back_to |collaps |corn |dark |different |first_and |for_DISH
|for_N:some |for_THING |for_th_P |for_th_crust |forward |her_N:few |in_th_hous |is_off |is_run
|is_too |it_at |it_off |it_on |itself |mak_it_$ |man |on_her |put_in |short |so_far_$ |styl
|to_do |to_it |to_m |w_eat_$ |when_sh |with_my |with_th_DISH |your_THING
-27 @3.0| DISH|to N:core_you| N:core|even N:core|with_th N:few|r N:some_so| N:some|for_th Nduration|behind
Nduration|early Nduration|from_now Nduration|or P|with P|would THING_left|in THING|THING_N:core
THING|timer U|ther ^_DISH|and ^_DISH|don ^_THING|DISH ^_it_say| ^_it|THING ^_no|no ^_th_THING|
a_THING|in a_joint| a_whol| and_do| and_gon| and_my_P| and_th_oven| and_you| and|could and|oven
and|run and|start and|tell an| at|N:core_in b_N:few|sit behind|schedul bon|off cam|back can_b|
chang|th cor|temperatur count_m_down| did|not dinner_Ndate|at dinner|Ndate dinner|is dinner|tim
don|for down|for down|with do|that do|they du| enough|for ever| fat|is forget|i fresh|DISH
fridg|cold from| gap|of get|a get|th giv|th go|medium guess| hav_put|DISH hav_you|got hav|i_got
hav|no her|P her|in honestly|i hot|enough how_many_minut| how_warm| i_thought| if_i| if_th|
if|i in|N:few_$ in|her in|som in|to is_U|th is_after| is_everyth| is_on|N:some is_this| is|N:core_over
is|Ndate is|help is|run is|set it_is_all| it_mak| it_out|Nduration it|without i|keep i|must
i|set i|tak kilo|is left|it lik_her| m_U| mad|at mad|it mak_dinner| many_minut| medium|for
much|go much|go_on must| my_U| my_lot| my|THING_is no_mor| no_no|no not|N:oven not|mak_it not|ready
no|DISH_for no|n of_them|ar on|N:core on|all on|everyth_$ on|th_stov out_in| out|at out|for
out|th_oven oven|THING_say peel|th pick_up|th pur| rar|for rar|is right|in room|temperatur
rub| run|Nduration_lat say|N:some say|Nduration say|they sent| sinc|Nclock sinc|Nduration slid|
so|do so|it so|that_is so|they speak|celsius stay|in stood| stov|is th_DISH|DISH th_Nduration|N:few
th_good| th_next|th think|i thos|DISH th|DISH_hav th|oven_is th|soup ticket| to_b_don| told|you
to|Nclock to|put to|stop under|th_THING up_in| up|in_th w_U| wait|on want_it|medium weigh|Nweight
well|don what_com| whatever|that what|ar_w what|i_said when| when|can when|it_is which_sid|
whil_it| with|my work|in would_it| w|did you|ar you|ask you|count you|do you|to |P_hav |THING_Nduration
|THING_can |THING_h |THING_so |U_ar |a_day |a_sec |aff |again_and |already |and_U_$ |and_kilo
|as_i |as_it_is |at_half |by_Nclock |fell |for_you |how_it |in_his |in_oven |is_burn |is_fre
|is_her |is_sort |is_that_$ |is_when |it_N:few |it_all |it_in |it_th |it_to |left_in |loud
|mean |metr |moo |now_not |odd |on_m_$ |or_N:few |oven_in |oven_no |percent |piec |pull_up
|rn |rung |saw |slip |so_long |stood |th_edg |th_oven_to |th_step |th_wrong |thicken |till_Nclock
|to |to_N:some |up_th |whil |whil_i |will_eat |with_his
-26 DISH|boil DISH|don_$ N:core|at_Nclock N:core|fan N:few_so| N:few|fewer N:few|now_$ N:few|nut
N:few|so_w N:oven|Nduration_ago N:some|on Nduration|earlier Nduration|lat Nweight_N:few|bon
P_th| P|com THING_THING|in THING_U|i THING|b THING|for_N:few THING|lik THING|th_tabl THING|too
U_so| U|U_is U|i_hav U|out U|say ^_DISH|butter ^_N:core|now ^_N:few|THING ^_Nduration|timer
^_could_you| ^_cut|th ^_do_it| ^_hav_you| ^_right|that a_few| about|th across|th after|all
after|th_rest already_and| and_th_THING| and|N:core and|U and|can and|forget and|i and|let
and|ok and|say ar_already| as_a| at|Nweight a|Nweight bar|th befor|Nduration behind|on boil|water
br|th can|tell cut_it| cut|m degre| did_w| don|in door|was down|at excus|m fin|for for_N:few|peopl
for|N:some fridg|at glass| got_th_oven| greas| green|DISH h_is_not| had_no| has_th| has|got
has|th hat| hav_all| hav_it|medium hav_put_on| held| her|own her|with him|in his_P|so how_is|
how_many_DISH| how_much_THING| h| i_don| if_it_is| if|w in_N:few|go insid_is| invit| in|his
in|now is_N:few_bon| is_Ndegrees:few| is_on|Ngas-mark is_read|N:core is_th_way| is|N:core_near
is|N:core_on is|get is|medium is|pur is|shot it_is|Nduration it_still| it|must it|n it|pink
it|sit it|this i|U i|cut i|did i|drop i|got i|kill i|pull_it i|put i|start i|tell last|tim
list|of lost| m_Nduration|on mak_a| miss|that much_THING| my| m|how m|onc nick| not_bother|
not_hav|th not|Nclock not|turn nowher|near now|at no|THING_THING no|no_no no|power no|r offer|to
off|to on_it|is onc_th| onc|it_is on|Ndegrees:oven outsid|th oven|at oven|was paid| paus|everyth
pitch| plan|for plus| pull_it|at put_th_oven| rest|in rest|on revers|sear say_it_is| say_th|
sear_it|first sear|is set_Nduration|for shoot| show|m skip|th slic|look smok|is so_it| so|sh
so|that start|THING_$ strik| supper_at|Nclock tak_m| tell|you temperatur_in| th_DISH|n th_THING|pan
th_best| th_low| th_rar| that_and| that_is|N:few that|number ther_ar| ther|is this|th this|tim
th|DISH_has th|Nduration_timer th|weight tim_th_roll| timer|for tim|to to|hold to|medium to|pull
to|se to|turn unless| up|next w_DISH| w_ar_on| wait|for watch|th water|test well|so what_colour|
what|all what|hav what|i_told what|if what|is_that what|it what|siz what|would whether| will_that|
wip| with|you would_rather| would|i wrong_it_is| w|could w|got you_put| you_to| you_will| your|
you|giv you|said you|tak |@117.0 |@12.3 |@137.3 |@60.3 |@65 |@66 |@8.0 |@97 |DISH_to |THING_her
|U_i_do |after_all_$ |and_climb |and_oil |answer |as_w |at_N:few_and |at_a |at_our |becom |bit_is
|buck |can_not_eat |crowd |cub |down_th |fac |film |for_N:oven |for_him_$ |from_now_on |go_th
|good_or |half_of_it |has_got |hat |heart |hot_i |i_us |in_N:core |in_th_pan |inch |is_dead
|is_shut |it_Nduration |it_Nweight |it_U |it_as |it_back |it_now |keep_THING |laid |longer
|ma |off_in |on_in |on_on |on_th_DISH |on_top |pi |plac |quid |remain |right_now |right_now_$
|right_this |ris |scor |seen |sinc |sit_in |sit_ther |snap |stand_in |still_$ |still_$_$ |stink
|tak_$ |tak_$_$ |teeth |th_DISH_for |th_oven_now |th_temperatur |ther_Nduration |this_tim_$
|up |wash_up |we |went |whether |work |you_N:few
-25 @4.11| DISH|DISH_in DISH|DISH_it DISH|in_Nduration N:core_oven| N:core_th| N:core|after
N:few_in| N:few_i| Nclock|for_th Nclock|sharp Ndate_lunch|at Ndegrees:core|in_th Ndegrees:some|in
Nduration_timer|go Nduration|sinc Ngas-mark|now Nweight|rib P_is|N:core P_lik_his| P|eat_at
P|got THING_back| THING_in|my THING|THING_in THING|in_a U_at| U_it_is| U_that| U_what| U|or
U|then ^_DISH|THING ^_P_say| ^_^_fyi| ^_^_insid| ^_^_reckon| ^_^_too| ^_add|N:few ^_after_Nduration|
^_fyi| ^_insid| ^_ok|i ^_ok|it ^_out|it ^_reckon| ^_th_roast| ^_th_roll| ^_this_THING| ^_too|
^_will_you| a_full| a_hot| a_lovely| add|N:few all|N:few_of all|th_way am_THING|for an_extra|
and_DISH|DISH and_N:core| and_P| and_THING_THING| and_go| and_it_is| and_now| and_ok| and_so|
and_start| and_still| and_tell_m| and_that| and|P and|any and|how_long and|i_would and|nudg
and|sam and|sh and|thank and|ther and|what and|who ar_all| as_you| ask|m as|a at|Nclock_Ndate
at|her at|your a|U a|littl a|whol b_th| back_on|at back|N:some back|to barely| been_rest_for|
befor|you behind|th_plan believ|it between_N:few| between_N:few|and blink| boil|at burnt|my
by|Nclock by|mistak b|back b|ok can_w| canteen| can|i can|i_hav can|tak can|w channel| chip|pan
clock_is| clos_th| cold_and| com|off cook|for cream|is crispy| did_i| dinner_back| do_a| do_i_know|
do_water| door|to down|low do|a do|next_$ early|to enough|to even|th first|tim for_N:few|at
forward|Nduration for|N:few for|dinner from|fridg fus| gav_m| go_and| go_th| got|no grand|so
grey_r| h_will| hall|all_of has_not| hav_already| hav_got_N:few| hav_mad| her|back her|for
her|well_don him|at his| hot|then how_much_salt| how|thick i_THING| i_us_THING| if|it if|ther_is
insid|when into|th in|b in|kilo in|their is_N:few_month| is_at|N:core is_show|N:core is_that|th
is_ther|anyth is_turn| is_what|w is|N:few_bon is|broken is|correct is|dinner is|good is|my
it_look_lik| it_said|N:core it_to|N:core it|don it|if it|say it|tak it|with i|hav_not i|heard
i|knock i|mak i|put_it i|stuck i|turn joint_of_THING| kev| know|how know|th lat|with lik_a|
lik_it|rar look|for lord| m_through| mak_it|N:core mak_it|Nclock my_P_say| my_P|U my|DISH m|Nduration_$
night|shift no_THING|for no_do_not| no_it_is| not|com not|cook not|run not|tak not|tell not|too
now_is| no|pink no|tent no|tim nudg|th of|N:some of|Nduration ok|th on_hold| on_your| on|in
on|th_left option|N:few or_is| or|no oven_no| pack| peel|th_DISH per| pig| pull_at_N:core|
put_N:few| rar|or rest|now roast|at say|Nweight say|m say|no say|so_$ serv_it| se|th shelf|it_is
shop|list_$ so_no|DISH so|no_THING so|tak stand|in start|Nduration step|away storm| stuck|in
stuck|th talk|fahrenheit tell_m|how tell|when temperatur|in temperatur|is th_DISH|from th_DISH|got
th_bit| th_door|for th_old| th_oven|now th_quick| th_roast_DISH| th_roll|timer th_tabl|for
thank|you_$ that_is_N:core| that_is|Nduration that_i| that_on|is that|last that|timer them|in_th
them|out then_th| ther_is|no ther|anyth ther|was this|THING_is this|her this|menu th|DISH_ar
th|THING_has th|display th|good th|half th|power th|you till_th| till|th timer_th| to_N:oven|at
to_help|m too_much|go too|many to|giv to|say turn_out| up_with| us|all us|celsius_$ w_all|
w_n| want_it|well water|boil way|of way|th way|too wear| went_on|at what_happen| what_is_it|
what_number| what|DISH what|is_medium what|should what|temperatur what|will whol| will|you
with_DISH|and worth| would_that| w|do_not yer| yet_and| you_ever| you|call you|should |. |@117.5
|@127.2 |@18.5 |@25.0 |@27.2 |@40.2 |@55.1 |@59.5 |@95.0 |N:core_th |Nclock_w |P_so |P_with
|THING_to |a_DISH |a_THING_$ |a_miss_$ |a_whil |all_this |all_up |and_can_not |and_eat |and_then_it
|anywher |ar_off |at_U |at_onc |at_th_back |at_th_tabl |bail |band |bar_th |befor_N:few |blaz
|bon_in_rib |burner |cak |can_not_do |com_N:few |crawl |do_to |don_in |down_for |enough_for
|finish_at |flicker |for_Ndate |for_a_whil |for_th_green |for_th_roast |for_them |from_her
|grandmother |has_a |has_to |her_in |idea |in_th_end |in_th_night |into_th |is_away |is_bring
|is_broken |is_coeliac |is_do |is_don |is_not_finish |is_tak |is_that_ok |is_vegetarian |it_DISH
|it_first |it_how |it_or |it_right |it_that |kind |lady |lat |lick |luck |m_for |march |need
|o |of_it |of_str |of_that |on_N:few |per |possibility |possibl |pressur |reach |show_up |sign
|song |soy |spoon |strong |tak_his |th_DISH_in |th_leftover |th_oven_on |th_roast_DISH |th_wall
|that_door |them |tim_i |to_stop |turn_up |understand |up_and |want |when_it_get |wher_w |will_go
|winter
-24 @1.4| DISH|Nduration_timer DISH|powder DISH|scrub DISH|want N:core_not| N:core_to| N:core|last
N:few|day N:few|less N:oven_in| N:oven_so| N:some_at| N:some_quid| Nclock_th| Ndate|w Ndegrees:core|on
Nduration_is| Nduration|N:few_$ Nduration|ago Nduration|later P_has_gon| P_hav| P_it_is| P_want_her|
P|els P|n THING_THING|is THING_say| THING_was| THING|N:oven THING|THING_N:few THING|THING_and
THING|THING_over THING|at_Nclock THING|for_a THING|in_at THING|is_not THING|leg THING|over
U_god| U_th|DISH U_to| ^_DISH|scrub ^_N:core|at ^_^_bon| ^_^_final| ^_bon| ^_final| ^_finish|th
^_green_DISH| ^_how_long| ^_i_mad| ^_i_reckon| ^_i_think| ^_it_was| ^_let_us| ^_no_mor| ^_no|THING
^_no|bon ^_ok|so a_fan| about|my add|Nduration all_gon| all|b all|medium already|got and_N:few|P
and_it| and_put| and|DISH_is and|N:few and|N:some and|THING_is and|everyth and|power and|sit
and|sorry and|switch and|w_ar and|w_will and|what_do and|what_is arriv|at arriv|in ar|th as_th|
ask|th_THING as|th at_N:oven|now at_N:oven|so at_m|in a|DISH a|N:few a|medium a|no back_th|
back|from back|in bath|th becam| been_rest| befor_you| befor|THING brb| bump| by|N:oven b|DISH
b|N:core can_P| can|go can|keep can|you car_is| car|is cast_iron|THING chang|my cold|THING
com_and| could_i| cream|in cut_into_it| did|it did|th dinner_at|N:oven dinner_to|N:oven do_not|get
do_not|mak do_not|tell do_w| don|yet doorbell_that_is| down|as do|i do|you dun| enough|THING_for
every_last| exist| fair| fan|on fat|in finish_THING| fold|in for_a| for_medium|rar from_her|
get_a| giv_him| giv_us| go_on|th go_over| go_up| gon_off|so gon|out good|for got_no| got|any
go|back_in go|medium_rar go|with guest|will had_a| had_th| hav_lost| hav_no| hav_w| hav|any
her|out his|P hit|N:core hit|N:some hold|dinner hold|your_hors hot|now how_THING|a how_long|can
how_thick| how_th| i_DISH| i_do|next i_finish| i_hav|N:few ic|in idea|how if_that_is| if_they_ar|
if|you in_U|w in_a| in_i| insid|th_THING internal| in|U_w in|fridg in|my in|th_U in|th_small
in|th_whol in|tim in|traffic iron|THING is_N:core|in is_how| is_it|ok is_now| is_on|th is_out|and
is_still| is_under| is|ask is|boil is|giv is|grey is|medium_rar is|mov is|th_way is|very it_at|N:oven
it_go|to it_mark| it_say|N:core it_so| it_what| it|Nduration_later it|every it|hot it|keep
it|want i| i|check i|forgot i|giv i|pull i|switch i|talk joint|is keep_th| keep|th kilo|for
last_tim| lat|to learn| left|oven let|th level| littl_on|eat lit|th_oven long|can lunch|Ndate
mad|a meet| middl|shelf misread_it_is| mor|will_it must_i| must|i my_P|say my_THING|ar my_guest|
m|Nduration m|do m|when_you m|why m|with next_job| next|to no_THING|in no_th_other| not_say|
not|brown not|go not|look not|put not|say not|ti not|turn_th not|wak now_i| now|N:core_$ no|current
off_and| off_in| off|with of|N:few ok|THING_is ok|ok_i on_m|it on_track| on|at_N:few on|or
on|second or_is_it| or_th| or|is or|is_it out_on| out|ther oven|for over_at| over|her over|to
pass|th peopl|ar pop_up| prim_rib|Nweight put_her| put_it|back put_m| put_th_DISH| question|N:few
rar|THING readout| reckon_th| reckon|th reckon|w rest|in_th rest|under roughly| run|N:some
run|hot r|N:core said_th| said|no salt|and_THING say_i| say_what| say|a say|sh serv|Nduration
set|Nduration_for should| show|N:oven shut|th_door sh| sh|put sit_down|Nclock sit|at smok|com
so_do_not| so_it_is| so_lik| so| so|THING so|it_is stand_in| stand_on| stand|on step|away_for
still|got stuck|at tabl_is| tabl|at tak_over|th tell_them| th_DISH|go th_P_is| th_THING_no|
th_THING|out th_U|is th_i| th_we| thank|for them|DISH them|off then|low ther_was| ther|ar ther|wer
they_want| this|morn this|or this|second thought|i th|DISH_went th|back_a th|doorbell th|gas
th|oven_up th|roast_is till|i tim_i| tim_th| tim_to| timer|N:some_$ tim|th_DISH tim|you to_a|
to_hav| to_m|in to_stop| took_m| too|far to|Ndegrees:core to|mov trim|th turn|th up_on| up_th|
up_to|N:core up|for up|from up|her us_a| us|for us|to want_a| was_N:core|Nduration was|not
well_don|all what_a| what_it| what|colour what|do what|do_w when_i| when|do when|it wher_th|
wher| wher|i which_is| who_is| whoever| whos| will_not|stop with_a| with_no| with|DISH would_hav|
would_lik_it| would_th| w|DISH w|mak w|tak yet_th| you_could| you_don| you_do|th you|se you|so
you|th_DISH |@110 |@110.5 |@47.5 |@49.1 |@73.3 |@73.6 |@79.1 |@99.6 |@99.7 |DISH_P |DISH_in_ther
|DISH_instead_of |N:oven_how |Ndate_so |Nduration_can |Nduration_off |Nduration_out |Nduration_so
|THING_by |THING_not |THING_off |a_roast |again |alight |all_THING_$ |all_night |all_right_$
|and_all_$ |and_chill |and_got_N:core |any_mor_$ |ar_all |ar_ready |at_N:few_so |at_Nweight
|at_it |both_end |bother |brin |btw |by_N:some |by_th_THING |canteen |celsius_i |charg |claim
|decid |dinner_is_$ |do_i_want |down_a |down_at |drawer |eat_it |for_a_bit |for_m_$ |for_sid
|for_th_sear |gadget |grey_$ |grey_$_$ |grill |guest_$ |guest_$_$ |h_is_help |ham |hang_open
|has_not_reduc |help_us |her_a |her_out |her_what |hotter |i_hav_kept |in_N:oven |in_all |in_ic
|in_it_is |in_my_THING |in_th_fat |in_th_garag |in_th_hall |is_N:core_and |is_Nclock |is_already
|is_chop |is_complet |is_delay |is_drop |is_get |is_lot |is_mor |is_show |is_still |is_this_on
|it_again |it_don |it_is_now |it_lik |it_yet |jar |kniv |last_$ |last_$_$ |laugh |let_it_go
|light_off |lik_it |m_on |m_till |mad_at |meant_to |mia |mov_to |necessary |nicely |noth_$
|noth_$_$ |of_N:core |of_N:few |of_N:some |off_my |ok_in |on_and |on_hold |on_or |on_th_U |on_th_middl
|on_th_oven |on_them |on_us |onto |otherwis_$ |otherwis_$_$ |out_and |out_in_th |outta |over_N:core
|park |play |powder |put_on |r_THING |rather |reason |rock |say_Nduration |set_$ |set_$_$ |sid
|so_early |so_early_$ |solid |split |stand_on |step_$ |step_$_$ |swear |talk_to_you |th_$ |th_$_$
|th_DISH_and |th_DISH_cream |th_DISH_out |th_THING_or |th_driv |th_insid |th_other_oven |th_oven_off
|th_plac |th_whol_tim |ther_and |thingy |this_Nduration |this_minut_$ |this_second |throat
|timer_and |to_her |to_you |ton |w_say |was_N:some |what_it |what_you |when_i |will_com |word
|would_suit |you_said_$ |your_hors
-23 ,| @134.4| @38.8| DISH_DISH|all DISH_DISH|in DISH_cream|w DISH_hav_gon| DISH|DISH_n DISH|at_Nclock
DISH|get DISH|in_at DISH|th_bon DISH|timer_$ DISH|will_not N:core_i_hav| N:core_is| N:core_now|insid
N:core_say| N:core|at_th N:core|under N:few_DISH|U N:few_that_is| N:few|month N:few|person
N:few|steady N:oven_THING|N:core N:oven|by N:some_not| N:some|after N:some|behind Nclock_my|
Ndate_so| Ndate_th| Ndate|for Ndegrees:core_and| Ndegrees:core_th| Nduration_and| Nduration|i_will
Nduration|in_th Nduration|now_$ Nduration|so Ngas-mark_and| Nweight_th| P_is_on| P|did P|f
P|so_plus P|was THING_ar| THING_by| THING_b| THING_is|N:core THING|THING_Ndegrees:few THING|so_$
THING|th_edg U_i| U_they_ar| U_why| U|N:few_$ U|to ^_DISH_roll| ^_DISH|U ^_DISH|peel ^_DISH|will
^_N:few|guest ^_Ndate|dinner ^_Nduration_lat| ^_Nweight|on ^_^_fan| ^_^_list| ^_^_on| ^_all_N:few|
^_can_you| ^_did_not| ^_fan| ^_hav|i ^_hot|THING ^_i_told| ^_i_was| ^_is_that| ^_list| ^_mak_that|
^_medium|for ^_no|on ^_ok|th ^_on| ^_s_out| ^_show_m| ^_w_eat| a_Nweight| a_THING|with a_proper|
a_right| a_roll| adult|and after|it after|w again|in alway_has|been and_him| and_right| and_th_roast|
and_when| and|Nweight and|com and|did and|giv_m and|got and|hold and|my and|remind and|remind_m
and|salt and|step and|they and|us and|w_want and|what_can another|N:few another|Nduration any_other|
anymor_th| ar_N:few|for ar_not_do| ar_they| ar|N:some ar|U ar|start as|i at_a| at|N:core_fan
at|N:few at|a at|th_THING a|tent a|we b_Nduration|lat b_don|next b_on| back_and| back_in|N:few
back|a back|at beat| becom| been_in|Nduration befor_th| begin|with boil|Nduration bon_is| borrow|
bout| burn|my by|N:some b|Nclock b|Nduration_behind b|THING b|honest b|us can|get can|mak can|sh
catch_that| celsius|obviously cheap| cold|on com_over| com|along com|with cooker|is cor_is|
dial|is did|sh did|they dinner_is|Nclock dinner_slip| dinner|Ndate_at dinner|they_ar di|on
do_it|hav do_not_b| do_you| don|lik door_is| down_Nduration|for down_on| down_th| do|my eat_by|
end_is| enough_to| extra|tim fat|cap first_then| flight_delay| fold_in| for_Nduration|to forget|th_old
for|DISH for|Nclock for|th_N:few fresh|out fresh|out_of from_now|till full|hous get_m| get_th|
giv_m|th giv|N:core_$ go_in|th go_on|then god|help gon|off gon|straight got_a| got|DISH go|ahead
go|in go|off go|straight greas|fir great| green|DISH_ar grey|band h_say|it had_it_is| had_to_go|
had|th happy|with has_N:few| has|no hav_DISH|DISH hav_don| hav|com hear|you heat|at help_m|in
her_and| her_is| her_to| her_well| her|at high|th his|THING hold|dinner_for hold|everyth hot_i|
hot|is hot|pan how_high| how_hot|is how_many_THING| how_much|DISH how|w hush|now h|put i_DISH|th
i_check| i_got_to| i_go| i_hav_N:few| i_hav_U| i_hav_already| i_should| i_tak_THING| i_think|it
i_will| i_would_rather| id| if_w| if|th in_Nduration|now in_fact| includ_N:few_DISH| invit_themselv|so
in|Nduration_i in|c in|th_N:few in|th_top is_a_bit| is_as| is_happen| is_h| is_it| is_not|N:core
is_not|ready is_over|N:core is_pregnant|by is_your| is|Ndegrees:core is|Nduration_$ is|P_is
is|hold is|lost is|nearly is|never is|not_th is|put_th is|roll is|sear_now is|stuck it_and|
it_do| it_in|th it_keep| it_show| it|U_$ it|and_it it|at_Nclock it|beep it|dry it|in it|is_Nweight
it|medium it|medium_$ it|rar_$ it|run it|should it|was i|DISH i|crank i|drop_th i|finish i|go
i|should i|think joint|out kindly| know|if know|when left|th_oven lettuc| lik|U lip| list|for
li|down lock| long|is_it los|th lot|of low|first m_and| m_in| m_why| mak_DISH|DISH mak|dinner
many_THING| mean_by| meant|N:core melt|down middl|is_N:core mor|N:few mov|my much|DISH my|oven
m|now n_a| nak| night|befor no_i_meant| nois_at_N:core| not_to| not|DISH_it not|N:few not|a
not|count not|cut not|let not|sur not|talk not|to now_and| no|bon_in no|flam no|hang no|hang_on
no|i_did number_is| nut|allergy n|N:few of_THING|THING off|at_th off|now_$ off|schedul off|your
of|THING_is of|my on_and| on_it_is| onto| on|again on|end on|out on|paus_$ on|say_N:core on|th_oven
on|th_sid on|to on|with our| out_it_is| out|a out|befor out|this oven|THING_N:oven oven|off
oven|run_hot over|with ow|i pink|THING pound_for| practically| pretend| pretty|good put_oven_on|
quick|THING raw_THING| ready|when_you reckon|it rest_at| rib|on right|P roast|DISH_ar roll|ar
rop_in| run_Ndegrees:some| run|Nduration_behind r|DISH_is said|that say_in| say_on_th| say|N:core_$
say|medium_$ say|they_ar scrap|th sear|at set|N:oven se|you sh_will_do| shoot_for| should_hav|
show|N:some sit|in sleev| so_you| sold| soy| so|count so|non start|to stop|talk stuck_in| sur|i_hav
tabl|for_Nclock tak_N:few|off th_Nduration| th_P|is th_THING|board th_THING|h th_blu| th_cut|
th_fan| th_first|N:few th_fridg|at th_full| th_raw| th_salt|on th_top|oven th_way|th than_it|
thank_for| that_by_m| that_in| that_is_not| that_last| that|Nduration that|in that|is_th themselv|so
then_i| ther_is_not| ther_wer| ther_will_b| ther|a ther|b ther|in they_ar|run they_can_not|
they_do| they| they|do this|old th|Nclock th|U_is th|babysitter th|bottom_of th|dial th|extractor
th|guest th|low till|Nclock timer|her tim|Nduration_for tim|for tim|th_roll to_DISH|th to_N:core|would
to_N:oven|about to_se| too_far| too|long too|low to|Ngas-mark_$ to|do to|help to|look to|you
to|your turn_out|it under|N:some up|or us|this vegetarian_no_THING| w_can| w_got| w_had| w_hav|no
w_on| w_put| w_still| want|N:core want|th warm|th_plat was_N:core|at was_th| was|a weigh| went_in_at|
what_go| what_temperatur| what_tim| what|am what|am_i what|can_you what|do_i what|should_i
when_do| when|h when|is wher|th which_THING| which_way| which|temperatur whil|w whol|family
why_U| why_ar_w| will|that with_th_oven| without|DISH without|THING would_i| w|can w|put w|would
year|old you_can|tell you_talk| you_th| you_tim| your_oven| your|coat you|must you|remember
you|set you|tell_m you|when_it |@0.2 |@105.2 |@105.6 |@110.0 |@111.1 |@130.1 |@133.1 |@14.3
|@17.2 |@28.6 |@3.0 |@38.7 |@73.4 |@87 |DISH_DISH_U |DISH_nobody |N:few_i_hav |N:few_that |N:oven_for
|N:oven_i |Nduration_left |THING_is_it |THING_it_is |THING_lik |THING_sh |U_out |a_leg |a_second
|about |after_Nduration_$ |after_it |air |ajar |all_day |all_right_for |all_th_way |all_that
|and_a_half |and_frail |and_ris |and_sad |ar_com |ar_her |ar_join |ar_on |as_anyth |at_hom
|at_th_bottom |at_th_moment |at_your |back_Nduration |back_th |bon_and |cam |can_do |can_eat
|can_not_hav |can_wait |chat |click |com_so |counter |crisp |did_not_ris |dinner_by |do_not_do
|doon |down_on |drunk |end_N:core |enough_to |faint |fella |for_Nduration |for_after |for_all
|for_now |for_th_U |for_th_butter |for_th_dinner |for_th_next |for_today |from_N:oven |gently
|go_in |go_off |hair |has_been |has_gon |has_not_been |hav_caught |hav_you_got |her_with |holiday
|if_h |if_ther_is |in_Nduration_$ |in_by |in_th_thickest |in_tim |insid_$ |insid_$_$ |is_DISH
|is_dark |is_empty |is_lik |is_my |is_not_happen |is_out |is_pull |is_put |is_say |is_ther_in
|is_vegan |it_N:core |it_a |it_from |it_last |it_what |kept |key |lik_you |lik_you_said |look_U
|m_that |measur |my_arm |not_N:few_i |now_U |of_this |on_at |on_by |on_oven |on_th_dial |on_what
|or_DISH_it |or_U |or_do_that |out_what |over |present |ribey |right_through_$ |ring |salty
|say_N:some |scrap_of |sh_go |sharp |should_i_buy |shov_in |so_THING |so_and |still_U |suppos_to_b
|team |tell_you |temperatur_for |th_DISH_bas |th_Nclock |th_list |th_night |th_plan_$ |th_roast_in
|th_roll_Nduration |th_steam |th_to |th_water |th_window |th_you |that_i |that_it |themselv
|thes_day |this_THING_$ |threw |tim_for |to_DISH |to_N:few |to_keep |to_mov |to_pick |to_roast
|to_your |too_and |top_$ |top_$_$ |vs |was_a |was_it_$ |what_i_said |with_THING_$ |with_it_$
|with_that_$ |would_you_th |you_to
-22 .| @144.3| @21.4| @97.0| DISH_DISH|ar DISH_DISH|hav DISH_DISH|on DISH_do| DISH_in|a DISH_in|at
DISH_it|alon DISH_it|out DISH_m| DISH_on|at DISH_was| DISH|DISH_has DISH|DISH_out DISH|P_$
DISH|already DISH|off DISH|out_th DISH|split DISH|too_$ DISH|took DISH|without N:core_over|N:core
N:core_that| N:core|P_$ N:core|and_climb N:core|year N:few_a| N:few_bon|roast N:few_on|th N:few_sound|
N:few_with| N:few|extra N:few|peopl N:few|sharp N:few|short N:few|sound N:few|week N:few|year
N:oven_on| N:oven|metr N:oven|th_whol N:some_th| N:some|dinner N:some|hot N:some|mor Nclock_let_us|
Nclock|it_was Nclock|then_$ Ndate|without Ndegrees:core_in| Ndegrees:few|in Nduration_off|schedul
Nduration_what| Nduration_with| Nduration|for_m Nduration|of Nduration|timer_$ P_n_to| P_would|
P|is_N:core P|set P|to THING_THING|with THING_do| THING_is_not| THING_is_show| THING_show|
THING_so|th THING_with| THING|THING_U THING|after THING|befor THING|cub THING|floor THING|is_ther
THING|left THING|to_b THING|up U_call| U_h_is| U_how| U_not|bleed U_this| U_you| U|THING_$
U|now U|off U|on_th U|ther_is ^_DISH|roll ^_Nduration|in ^_Nweight|THING ^_THING|should ^_THING|timer
^_U_DISH| ^_U|can ^_U|w ^_^_blu| ^_^_both| ^_^_gon| ^_^_ready| ^_^_to| ^_blu| ^_both| ^_count_down|
^_gon| ^_hot_fat| ^_hot|fat ^_i_did| ^_my_lot| ^_ready| ^_right|you ^_r|DISH ^_salt|it ^_shall_i|
^_shush|Nduration ^_so|you ^_th_DISH| ^_th_guest| ^_that_was| ^_to| ^_turn_off| ^_what_all|
^_what|a ^_yes|so a_final| a_for_N:some| abov_th| adult|and_N:few after|Nduration_$ again_and|
again_it_is| all_right|for alway|N:some am_run| american| and_THING| and_at| and_eat| and_got|
and_h_is| and_nobody| and_oven| and_why| and|DISH and|Nduration and|can_i and|chill and|dinner_is
and|go and|hav and|i_hav and|no_DISH and|scrap and|sear and|talk and|tell_m and|th_oven and|turn
and|when_is any|THING any|other ar_too| ar|all as_w| ask|for asleep|in as|my as|you at_N:few|U
at_Ndegrees:core|let at_my| at_this| at|N:core_on at|N:oven_now at|tabl at|their away|in a|N:some
a|Nduration a|half a|read a|roast a|shout b_at|Nclock back_in|U back|door bail|so bang_on|
beep|m befor|dinner behind|schedul_$ bit_and| bon_ar| bon_in|rib bon_th| bon|for bon|roast
brisket| brought|a br| butter|on_th by_N:oven| by|Nduration b|back_in b|rest call|out can_U|
can_not|mak can_w_eat| can| can|manag centr_is| chemo|so chok|on cliv| clock|is clos_th_door|
com_th| com|Nduration_later com|out_of com|over com|to_th cor|N:core_$ could_b| could_not_hav|
could|i crap| cri| cri|off current| cut|in cut|my cut|off dead|centr did_they| differenc| dinner_back|Nduration
dinner_by| dinner_on| dinner|on display|say do_not_believ| do_not|U do_not|ask do_not|you do_water|boil
dog_is| don|her door|open door|shut down_it_is| down_with| down|Nclock_$ down|Nduration_ago
do|N:core do|THING do|after do|anyth do|everyth do|his do|if do|not drop_to| eat|DISH eat|N:oven
eat|a eat|th_DISH end_th| fan|set fat|sid figur|Nduration_lat fir_in| for_N:some|dinner for_a_final|
forget|th_DISH for|medium_$ for|th_P found|th fre|THING from|N:few from|my f|N:few giv_m|N:few
go_down| go_to|N:core good_and| good|boy got| go|out go|straight_to go|well grandmother|is
grandson_is| grav| guest_th_U| guest|ar guest|count h_can_not| h_has| had| had|no half_a| half|
half|a hang_on|Nduration has_P| has_got| has|com has|got_a hav_noth| hav_said| hav|Nduration
hav|rub heard|you hello|P her_th| her_with| her|second her|till her|to him|out hit| hold|everyth_$
honestly_i| hous|is hous|now how_long|do how_much|THING how_pink|is how|can how|do how|do_i
how|hot how|is_it how|it how|th i_P| i_cook| i_could| i_hav_DISH| i_left| i_lik| i_want_it|
if_dinner| if|h in_and| in_it|go in_our| in_that_is| in_ther|now in_what| in_your| insid_th|
insid|temperatur insist|on in|it_$ in|out in|rib in|th in|top is_alway| is_back|on is_her_now|
is_it|th is_no_longer| is_not|ti is_out|of is_run|Nduration is_set| is_tell_m| is_this_th|
is_up|next is_what|i is|N:core_already is|Ndegrees:some is|better is|boneless is|burn is|burnt
is|complet is|cut is|do_th is|no is|our is|sort is|soup is|temperatur is|this_on is|well it_is|Ndegrees:few
it_is|boneless it_is|that it_i| it_out|at it_right| it_th| it_with|THING it|all it|alon it|climb
it|is_medium it|sat i|P i|could_not i|get i|meant i|put_th i|said_th i|se i|set_th i|stop i|tak_it
i|turn_th i|would join|th kilo|and_celsius kindly|cancel lat_th| lat|on let_th| let_us|eat
let| lid|on lik_DISH| lik_my| long|do long|is look|U los| lunch|at_Nclock m_onc| mad|and_it
mark|N:core measur|N:core medium_for| method|for middl|that_is mind|you mom| mov|dinner much|THING
much|salt my_grandson_is| my|P_U my|U my|good m|THING_$ m|hav m|in_th m|till m|when_it next|door_is
no_DISH_for| nobody|will non_of_that| non|of not_don|yet not|Nclock_$ not|bleed not|do not|hold
not|hot not|peel not|shut not|start_th now_th| no|DISH_$ no|P_i no|light no|mak no|th_oven
no|thank of_THING|is of_a| of_them|hav of_us|will of_what| off_and_ti| off_at| off_my| off_on|
off|th_DISH off|this of|DISH of|U of|my_P of|oven of|what of|you ok|for ok|th_THING on_end|
onc|mor on|at_Nclock on|his on|low on|m_$ open|Nduration open|on open|on_th or|can other|oven
out_befor| out|Nduration out|and_rest out|sinc oven_for| oven_it_is| oven_on|for oven_to|N:oven
oven|is_now over_i| over|N:core_$ over|is_that over|th_THING pan_is| parchment| past|Nduration
pink|in plan_on| plus|N:few power|cut prefer| push|dinner push|th put_a| put|DISH_on put|a
p|m quarter|to r_DISH|so radio| rar_U| reckon_it_is| rest|it_$ right|for roast_is|Nweight roast_no_bon|
roast|Nweight roast|in roast|is roast|out room|for run_N:some| run|out said_Nduration| said|Nclock
salt|in salt|on_th say_N:oven|U say_that| say|again sell| serv_it_at| set_m| sh_is_a| shelf|of
shift|th should_i| shush|Nduration sinc_th| sinc|N:few sit_down|to sit_in| sit_on| sit|down
sit|on slic_at| smell| so_is| so_th| sorry|what so|N:few_mor so|N:oven so|Nclock so|P so|mak
so|w_ar start|at step|N:few step|out ston|cold straight|in strik_th_DISH| stuck_th_THING| such|
suppos_to_b| tabl|Nclock tak_it|medium tak_that| temperatur_is| temperatur_is|N:core temperatur_i|
th_Nduration|timer th_P|ar th_U|THING th_fast| th_fat|cap th_green|DISH th_joint|out th_last|Nduration
th_night|befor th_plat|and th_wash| than_th| thank|a that_Nduration| that_is_all| that_is_her|
that_is|what that_lot| that|mak them_and| them|hav them|on then|i thermostat|is they_com|Nduration
this|dinner this|minut this|on th|DISH_DISH th|DISH_it th|airport th|bit th|bottom th|dinner
th|doctor th|electric th|fir th|i_told th|lin th|middl_is th|oven_at th|phon th|phon_is th|pub
th|sam_$ th|school th|sear th|snow till_i| till|N:few tim_and| tim_it| timer|for_th tim|do
ti|this to_N:core_and| to_N:few|now to_do|next to_pick| took_th_DISH| took_th_THING| too|soon
touch|th to|N:oven_$ to|chang to|go to|my to|pick to|tak try| under|it_$ us|celsius us|now
us|will w_hav|N:core w_hit|N:core wait_it_is| wait_i| want_it_at| warm|for was_at| was_a| was|Nduration_lat
was|out was|read was|still was|th water|on way|through well_don|for well|cook what_did| what_do_it|
what_siz| what|i when_h| when_it|THING when|can_i when|is_it wher|w wher|you which| whil|you
whol|THING why_do| why_is| why_i| why|do why|it will_hav| will_th| will_w| will|let will|w
without|th with|that would_Nclock| would_do| would|not wrong|THING w|all w|go_$ w|hav_not w|run
w|skip ya_what| yes_i| yes|THING_$ yet_do_not| you_believ|it you_can|manag you_giv_m| you_must|
you_se| your|U you|a you|get you|in you|say |@105.3 |@118.1 |@123.1 |@133.2 |@137.6 |@33.1
|@42.4 |@47.2 |@51.4 |@64.5 |@74.4 |@91.1 |@97.0 |DISH_b |DISH_is_cut |DISH_till |N:core_to
|N:few_bon_off |N:few_now |N:few_th |N:oven_N:few |Ndegrees:core_and |Nduration_N:core |Nduration_for_m
|Nduration_is_it |Nduration_sinc_$ |P_h |P_is_U |THING_com |THING_eater |THING_i_hav |THING_is_THING
|THING_th_tabl |THING_this |U_THING |U_m |U_this |a_lot |a_sid |a_th |a_we |a_word |adult |already_$
|already_$_$ |already_th |am_i_miss |american |and_pound |and_salt |and_spit |ar_in_th |as
|as_w_speak |at_N:oven_$ |at_N:oven_that |at_Nclock_Ndate |back_i |backward |becam |befor |befor_THING
|blok |break |butter_and |by_N:oven |by_a_mil |calory |can_not_mak |cancell |caught_fir |celsius_and
|chang_th |cook_for |cooler |corner |dash |dinner_and |dinner_for_Nduration |don_for |duty
|early_to |everyth_for |figur_$ |figur_$_$ |for_N:few_and |for_som |for_your |from_Nclock |from_scratch
|from_start |gnaw |go_i |good_for |got_her |had_N:few |happy_with |has_di |has_th_DISH |hav_been_in
|hav_com |hav_gon |hav_to_rest |hav_turn_up |heat |her_back_to |her_it_is |herself |hom |i_am_afraid
|i_am_talk |i_talk |in_at_N:few |in_kilo |in_middl |in_no |in_real |in_th_back |in_th_moment
|in_this_plac |instruction_$ |instruction_$_$ |is_N:core_now |is_alway |is_as |is_back |is_better
|is_boil |is_full |is_hav |is_not_ther |is_open |is_oven |is_shot |is_up |is_vanish |is_way
|it_N:oven |it_look_lik |it_over |it_smell_amaz |it_through |it_was_$ |it_without |know |lead
|leather |left_on |left_th_oven |liao |lost_with |m_down |m_to |medium_rar_at |min_$ |min_$_$
|mix |mor_than |neck |never_cam |not_do_it |now_th_THING |nurs |of_Nduration |of_a |of_min
|off_at |off_i |off_th_menu |offer |on_P |on_dinner |on_is |on_th_board |on_th_bottom |oven_sinc
|over_her |over_that |pack_in |pink_$ |pink_$_$ |plus_N:few_$ |point |pull_in |rest_now |run_Ndegrees:some
|saf_for |said_N:core |santa |shap |sinc_Nclock_$ |snow_in |spit |start_$ |start_$_$ |start_now_$
|stay_in |stretch |tap |tell_m_to |th_DISH_timer |th_and |th_block |th_door_$ |th_fir |th_freezer
|th_hall |th_heat_$ |th_hob |th_is |th_porch |th_trim |that_N:few |that_P |then_a |then_low_$
|thes_DISH |this_th_$ |this_up |till_N:few_$ |to_Nclock |to_Nduration |to_Ngas-mark |to_b_had
|to_boil |to_carv |to_com |to_help |to_peel |to_say |to_that |to_their |to_us |toast |today
|today_$ |today_$_$ |too_long |truck |turkey |very_much |w_get |was_don |was_ther |wear |weekend
|wer_not |will_carv |will_hav |with_Nduration |with_th_lid |would_hav |you_P
-21 @110.3| @111.5| @37.1| @46.0| @57.6| @79.4| @85.2| @85.4| DISH_DISH_on| DISH_DISH|from
DISH_DISH|has DISH_DISH|with DISH_as|well DISH_a| DISH_got| DISH_has_gon| DISH_r| DISH_th|DISH
DISH|DISH_don DISH|DISH_i DISH|THING_say DISH|after DISH|been DISH|do_i DISH|is_chop DISH|it_out
DISH|our DISH|stand DISH|twic DISH|went N:core_U| N:core_a| N:core_dead| N:core_it| N:core_my|
N:core_was| N:core|about N:core|and_steady N:core|and_still N:core|too N:core|whil N:few_THING|th
N:few_adult|and N:few_can| N:few_high|in N:few_off|th N:few_steady| N:few_too| N:few|U_$ N:few|U_of
N:few|and_Nduration N:few|at_th N:few|for_N:few N:few|for_th N:few|hungry N:few|littl N:oven_it_is|
N:oven_what| N:oven|feet N:oven|for_a N:some_and| N:some_is| N:some|of Nclock_N:few| Nclock|U_it
Ndate_without| Ndegrees:few|too Ndegrees:some_in| Ndegrees:some|hot Nduration_oven| Nduration_then|
Nduration|now_i Nduration|rest Nduration|too_lat Nduration|would_you Nweight_U| Nweight_and|
Nweight_of| P_brought| P_eat_Ndate| P_on| P|alway P|help P|jean P|sh_do P|took THING_THING|ok
THING_all| THING_at|Nclock THING_hav| THING_in|it THING_it|and THING_lik| THING_my| THING_stuff|
THING_th|THING THING_what| THING|a_moment THING|ar THING|clock THING|in_my THING|pan THING|stuck
THING|will_not U_a| U_is_not| U_my| U_on|th U_said| U_then| U_was| U|call U|look U|well_don
^_DISH|for ^_DISH|got ^_N:core|still ^_N:few|P ^_N:few|is ^_U_th| ^_U|N:few ^_U|com ^_^_all|
^_^_away| ^_^_bit| ^_^_bottom| ^_^_everyth| ^_^_go| ^_^_last| ^_^_our| ^_^_peel| ^_^_say| ^_^_season|
^_^_shut| ^_all| ^_ar_you| ^_away| ^_bit| ^_boil_water| ^_bottom| ^_call_it| ^_everyth| ^_excus|m
^_giv_it| ^_go_to| ^_good|new ^_go| ^_how_far| ^_how_much| ^_how_pink| ^_i_tak| ^_is_not| ^_last|
^_mind|th ^_no|fan ^_our| ^_out_it| ^_peel| ^_quick|th ^_salt|is ^_say| ^_sear|last ^_season|
^_shut| ^_sit_down| ^_still|N:core ^_them_DISH| ^_this_is| ^_went_in| ^_what|i ^_what|you a_THING|pan
a_boneless| a_cool| a_new| a_nic| a_rest|will a_roast| a_slic| a_we| about| add|another add|roast
add|roast_DISH against|th ago_th| ahead|of alarm_for| alarm_i| all_and| all_on| allergic|to
all|don all|sid already|in alway_say| am_after| am_i|after am_not_don| am_slow_today| am|i_go
am|nip am|pop an_old| and_N:few| and_can| and_h| and_say| and_th_th| and_th| and_us| and_w_ar|
and|N:few_of and|Ngas-mark and|P_want and|THING and|cor and|half and|how_much and|it_has and|let_us
and|no_THING and|not and|pop and|repeat and|roll and|shout and|sit_down and|stuck and|ther_will
and|w_hav and|why_do and|would any_idea| ar_after| ar_a| ar_back|on ar_my_choic| ar_th_DISH|
arriv_th| arriv_to| ar|ask ar|look ar|ther as_in| as|anyth as|it at_N:few|or at|N:core_and
at|N:oven_it at|Ngas-mark_$ at|all_and away_and| away_th| away|from away|to a|good a|lovely
b_back| b_too| back|N:few back|Nduration back|from_th bakery| band| battery_is| battery|is
been_on| been| beep|at befor_it| befor_w| befor|it_go befor|they beg| behind_th| ben| bf| bin|th
board|now_$ bon_rib|roast bon|and_roll bon|rib_roast br_th| butter_and| by_th_tim| by|th b|hav
b|ok_$ b|put b|ready b|too call_for| cam|out can_i| can_not_eat| can_th| cancel_DISH| cancel_DISH|my
can|do can|help can|start careful|with carryover| carv|when center|is chanc_i| chang_th| check|it
check|th_THING chop|th christma|dinner clock_on| coat|ar com_Nduration| com_out|in com|at com|from
com|straight com|too com|up cooker_is| cor|at could|you count_th| count|as cover|in cream|w
cut_in| cut_th| cut|th_DISH davo| dial|THING did_P| did|you_hear dinner_at|th dinner|at dinner|at_Nclock
dinner|by dinner|to ditch|th do_N:core| do_b| do_this_th| dog_got| dog|got don_th| don|and_dust
down|in_Nduration down|on_th down|till do|i_n do|well drank| drop|th_DISH early|on eat_Ndate|at
eat_at|N:oven eat|Nclock_$ eat|anyth end|up every_tim|i everyth_is_go| everyth_is| everyth_i|
everyth|in everyth|is everyth|tak explain|th fahrenheit|and_pound family|is fan|now fat|finger
fierc| finger_is_bleed| finger|on finish_and| finish|already finish|with_th fir_on| first|guest_ar
fir|what fir|what_do flag| for_N:few|hungry for_Nduration_N:few| for_m|P for_temperatur| for_your|
forget_everyth| forget|th_Nduration forgiv| for|N:few_of from_now|on fully|cook gas|bottl get|my
ghe| giv| giv|my gluten|fre go_i| god_help| god|bless gon|vegan good|girl good|new good|to
got_any| got_enough| got_th| got|my go|down grey|r gus| h_will_not| halal|THING hang_on|th
happen|if has_gon|out has_gon|vegan has_now| hav_a| hav_been| hav_got_it| hav_i| hav_not|put
hav_now| hav_remov| hav|THING_THING hav|it_is hav|never hav|not_so heat|do help|with her_at|
her_can| her_in|th her_what| high|in high|in_boil him_in|th him|get hold_th| hold_your_hors|
holler|when hop|that hop|that_is hous_th| how_do_i| how_long|i how_much_DISH| how_to| how|is
how|thin how|this how|would hypothetically| h|will i_am_after| i_am_run| i_am|pop i_b| i_got_N:core|
i_hav_her| i_hav_it| i_hav_not| i_hav_remov| i_meant|N:core i_said|to i_skip| i_will_tak| ic_water|test
ic|water idea_of| if|dinner if|it_is if|they in_it_is| in_my| in_som| in_th_shop| into_it|and
in|N:some_$ in|Nduration_now in|THING_$ in|celsius in|fact in|flam in|ic in|march in|mind in|th_freezer
in|ther is_P|is is_at|Nclock is_delay|so is_get| is_in|my is_jump| is_non| is_not_even| is_not|don
is_offer|to is_off|now is_our| is_pink|THING is_show|Ndegrees:core is_someth| is_so| is_th_N:few|
is_th_middl| is_ther|a is_ther|any is_water| is|N:few_month is|away is|bad is|blister is|com
is|empty is|everyth is|expect is|hav is|jump is|mind is|next is|not is|not_N:core is|not_don
is|nowher is|plat is|plenty is|preheat is|push is|read is|rest is|serv is|taken is|tell is|tick
is|tough it_cross| it_is_on| it_is_sit| it_is|THING it_is|blister it_is|grey it_is|read it_pass|
it_r|N:core it_want| it_you| it|after_all it|another it|br it|could it|get it|hit it|is_N:some
it|uncover it|when it|will it|will_not i|count i|did_not i|do i|knock_it i|lost i|say i|tast
i|took i|turn_it i|weigh jesus| job|don jump|in keep|THING keep|go keep|watch know_it_is| know|how_long
land|on last|night lat_and| leav_it| left_on| left_oven| left_th_door| left|at let_us_do| let_us|do
lik_well| lik|her lik|you listen_to| load|of long_befor| louder| low|at m_for| m_it| m_what|
mac| mad_th_oven| mad|for main| mak_it_N:core| mak_it|Nduration mak_it|after mak_m| man_is|
man|com medium_rar|for medium_well|for medium|and_that medium|in medium|rar_is middl_is| mind|your
misread|th miss_out| mor_and| mov|it much_DISH| much|tim my_P_no| my_choic| my_roommat| my|P
my|P_in my|P_want my|palm my|peopl my|roast m|don m|oven m|oven_is m|up never|got never|mind
next|job no_N:core|not nobody_has| nor| not_a| not_hav|any not_my| not_salt|it not_tell| not|N:core_N:core
not|ask not|do_it not|got not|hang not|it_$ not|lik not|m not|pull not|remember not|rest not|right
not|ruin not|sit not|speak not|wait not|well now_DISH| now_THING| now|if no|DISH_after no|DISH_in
no|blood no|lid nudg_th| nurs| of_all| of_us|now off_a| off_shift| off_that| off|th_bon off|th_pac
of|Nweight_$ of|guest of|min of|pink of|this ok_for_P| ok|i_am old| on_Nduration|ago on_a_second|
on_a| on_i| on_let_m| on_on| on|Ngas-mark_$ on|bottom on|us on|will open_to| or_did| or|DISH
or|ar other|THING out_a| out_it| out_so| outta| out|already out|from out|now_$ out|of out|on_th
out|with oven_off|Nduration oven_on|now oven_out|in oven|at_Nclock oven|on_N:oven over|a pal|as
pan|handl pass_m| pavement| pencil_in| peopl|cancel phon|call pick|th pick|up pink|for pink|ok
plan|is play| plenty|of plus_th| powder| preheat|to preparation| puff_up| put| put|Nduration
put|Nduration_on put|her ran_dry| rang_is_at| reach|N:core_$ ready|by ready|for ready|in reckon|N:core
remind_m|what remind| rest_it| rest|at rest|is rib_is| rib|is right|with roar| roast_at| roast|DISH_$
roommat| run_Ndegrees:few| run|in r|th said_it| said_to| salt|U sam|as sam|temperatur sat|in
say_do_not| say|Nweight_$ say|w say|you school|run seem| set_off| set|N:few set|Nduration_$
sh_put| shall_i|put sheila| shop_back_in| shout_in| show|N:core_$ show|Ndegrees:core_$ shut|th_oven
sh|did sid|Nduration sit|already skip|that slic|my slip|and_half snap|and so_do| so_medium|
so_th|THING sol| so|noth so|push so|th_henderson so|what_can spec| stand|rib start|Nclock start|th_DISH
steep| still_lik| still|has stop_ther| stov_is| stov|for straight|out suppos_w| sur|how tabl|Nclock_$
tabl|at_Nclock tak_back| tak_th| teenager| tell_you|it tell_you|th tell|ya temperatur|N:core_$
temperatur|th tent|is th_DISH_nobody| th_DISH|cover th_DISH|roll th_THING|at th_THING|it th_U_is|
th_bathroom| th_ic_water| th_ic| th_long| th_oven|on th_wet_floor| th_year| thank|god than|th
that_is|P that_is|my that_mak| that_to| that|alarm that|bit that|should then_a| then|a ther_ar|N:few
ther_is_no| ther|any ther|is_not they_ar_N:few| they_had| they_keep| they_would| this_THING|is
this|siz through|th_DISH through|th_door th|DISH_no th|P_want th|THING_say th|THING_show th|best
th|blu th|current th|electricity th|grey th|knob th|leave-in th|lid th|littl th|pink th|power_is
th|quick th|rest_ar th|rub th|run th|tent th|win tim_U| tim_for| timer|of tim|ar tim|ar_w ti|back
ti|up toddler|eat took|th too|early top_oven|is totally| to|DISH to|a to|count to|fix to|get
to|salt to|serv to|set train|is turn_out|my turn|that under|a up_a| up_i| up_not| up_on_m|
up_when_th| up|in_flam up|lik us_it_is| us_th| us|Nduration us|at_N:few us|in_th w_hav_DISH|
w_hav_it| w_is_not| w_n|DISH wak_m|when walk|th want_th| want|medium_rar warm_and| was_N:core|in
wash_th_THING| was|Nweight water|in_th way_of| way|to wean| well_and| well|for wer_N:few| wet_floor|
wet| what_about| what_hav| what_tim_is| what_tim|ar what_will| whatever|i whatever|that_is
what|P what|i_must when_Nduration| when_th| when|will wher_i| wher_you| wher|is whil_th| who_hav_not|
whol_th_back| why_can_not| why_do_not| why_is_it| why_it| why| why|i will_THING| will_b| will|go
will|hold will|no will|tak will|th will|ya with_my| without|m with|mushroom with|this would_N:core|
would_THING| would_go| would|you writ|N:core w| w|fix w|sit w|skip_th w|start w|wer year|is
you_and| you_even| you_hav|got you_in| you_it| you_still| you_tim|Nduration your_hors| your|DISH
your|THING your|oven you|had you|want |@103.1 |@26.6 |@3.8 |@4.12 |@47 |@62.5 |@86.3 |DISH_after
|DISH_and_i |DISH_do |DISH_is_ready |DISH_my_P |DISH_then |DISH_tonight |DISH_without |N:core_do_not
|N:core_i_want |N:core_so |N:core_w |N:core_which |N:few_go |N:few_h |N:few_mor_$ |N:few_off
|N:few_tim |N:some_th |Nduration_ago_DISH |Nduration_already |Nduration_can_w |P_what |THING_P
|THING_THING_underneath |THING_cub |THING_in_it |THING_left |THING_over_a |THING_say_in |THING_th_edg
|THING_tonight |a_leg_of |a_pan |a_plat |a_rib_$ |a_slic |about_that |after_N:few |again_th
|all_DISH |alway_run |and_a_bit |and_cover |and_dust |and_find |and_stuff |at_N:core_and |at_Nclock_befor
|at_Ngas-mark |at_all_$ |at_m |at_th_U |away_$ |away_$_$ |away_from |away_i |back_N:core |back_and
|back_by |back_it |barbecu |beep_it |befor_Nduration |bigger |bill |bird |blink |born |bottom_$
|bottom_$_$ |breakfast |by_m |can_not_go |cancel_$ |cancel_$_$ |check_it |clu |cold |cor_$
|cor_$_$ |could_hav |count_as |cousin |cut_th_bon |diet |dinner_they |do_in |dodgy |dollar
|down_i |down_in |down_to_Ngas-mark |drop_out |dryer |early_and |eat_lik |eaten |enamel |euro
|even |exist |flat_$ |flat_$_$ |for |for_U_and |for_ag |for_it_$ |for_m |for_th_oven |for_that_$
|forever |from |from_m |from_oven |from_start_to |froz |gideon |go_at |go_on_th |gon_out |got_$
|got_$_$ |got_them |guest_is |h_say_it |halfway_through |hall |has_arriv |has_com |her_$ |her_$_$
|her_at |her_up |hook |hot_N:oven |i_am_way |i_drop_it |i_saw_N:core |in_Nduration_and |in_for
|in_from |in_i |in_th_bottom |in_th_loung |in_ther_$ |in_this_rental |instead_$ |instead_$_$
|instead_of_THING |is_N:core_$ |is_N:oven_now |is_allergic |is_an |is_at_N:few |is_becom |is_cancell
|is_caught |is_eat |is_go |is_lukewarm |is_no |is_not_even |is_not_well |is_on |is_on_$ |is_right
|is_sak |is_set |is_split |is_stuck |is_ther_for |it_P |it_has_N:core |it_if |it_no |it_say_$
|it_say_on |it_they |it_this |it_wrong |join |keep_$ |keep_$_$ |light_on |lik_DISH |lik_a_U
|lik_his |m_N:core |m_THING |m_at |m_till_it |m_what |margarin |meet |money |mov_$ |mov_$_$
|my_THING_on |my_hous |my_last |my_list |nak |new_th |not_com |now_would |of_an |of_oven |of_salt
|of_th |off_this |on_for |on_his |on_i |on_no |on_so |on_th_left |on_th_list |on_tim |onto_th
|open_$ |open_$_$ |or_N:core |or_near |or_so_$ |out_back |out_it_is |out_of_you |out_so |out_they
|oven_Nduration |oven_on_N:oven |over_at |overran |own |panel |parent |pick_up_th |pig |portion
|pregnant |r_and |ran_over |reminder |roast_$ |roast_$_$ |roast_N:few |salt_do |say_and |say_to
|sear_and |sec |second_timer |set_and |settl |sinc_Ndate |smoker |so_long_$ |so_low |so_non_of
|so_sh_is |so_slow |someth_$ |someth_$_$ |sooner |spain |speak_celsius |squeez |stag |stop_$
|stop_$_$ |stov |str_$ |str_$_$ |straight_off |t |tak_THING |temperatur_i |temperatur_or |th_P_down
|th_THING_at |th_THING_out |th_babysitter |th_bin |th_board |th_bridg |th_chair |th_cream |th_dinner
|th_follow |th_fridg |th_garag |th_hen |th_hot |th_lower |th_menu |th_pac |th_paper |th_right
|th_roll_timer |th_school |th_stair |th_truss |th_warm |th_win |that_timer |that_work |ther_U
|ther_for |ther_is_any |they_ar_don |this_dinner |this_on_$ |ti_up |timer_i |tir |to_begin
|to_begin_with |to_carv_$ |to_pull |to_serv |too_hot |totally |tub |under_a |underneath |up_a
|up_for |van |w_go |w_hav_DISH |w_will_eat |wander |was_out |wash_th |went_off |what_they |when_you_say
|wher_i_should |wher_it_is |which_th_$ |who_will |with_everyth |with_fork |with_her |with_th_str
|with_them |without_DISH |would_say |wrong_it |wrong_it_is |yet_th |you_DISH |your_coat
-20 @40.4| @48.4| @5.5| @78.4| @92.1| DISH_DISH|too DISH_N:few| DISH_all| DISH_in_THING| DISH_in_at|
DISH_powder| DISH_them| DISH_they_ar| DISH_th|THING DISH_to| DISH_would_go| DISH_would| DISH_you|
DISH|DISH DISH|anymor DISH|ar DISH|in_a DISH|is_THING DISH|is_mad DISH|on_Nduration DISH|ready
DISH|so_$ N:core_N:few| N:core_THING| N:core_befor| N:core_i| N:core_say|so N:core_whil| N:core|i_said
N:core|or_N:core N:few_adult_N:few| N:few_away| N:few_it|is N:few_my| N:few_that| N:few_to|N:few
N:few|U_N:few N:few|from N:few|roll N:few|with_th N:oven_all| N:oven_i| N:oven_th| N:some_i|
N:some_no| N:some_on| N:some|next N:some|on_th N:some|year Nclock_at| Nclock_not| Nclock|h
Ndate_and| Ndate_i| Ndate_night|at Ndegrees:core|cor Ndegrees:few|in_Nduration Nduration_after|w
Nduration_behind|schedul Nduration_do_not| Nduration_it_is| Nduration_later|would Nduration_rest|
Nduration_that| Nduration_th|THING Nduration|THING_trip Nduration|already Nduration|back Ngas-mark_now|instead
Ngas-mark_th| Nweight_all| Nweight_i| Nweight_not| Nweight_no| Nweight|stand Nweight|stand_rib
P_U|is P_alway| P_com| P_is|THING P_mad| P_of| P_say|it P_so| P_that| P|Nclock P|U_$ P|go P|had
P|no_shellfish P|of P|said P|will_not THING_THING_on| THING_gav_m| THING_hand| THING_in_at|
THING_is_insid| THING_is_it| THING_is|Ndegrees:few THING_is|P THING_it_is| THING_i| THING_out|th
THING_over|it THING|N:few_$ THING|THING_her THING|and_ther THING|burn THING|get THING|saf THING|this_$
U_has| U_th|THING U_th|oven U_w_ar| U_will| U|why ^_DISH|all ^_DISH|timer ^_N:few_extra| ^_N:few|ar
^_N:few|peopl ^_Ndate|i ^_Ndegrees:core|is ^_Nduration|start ^_Nduration|th ^_Ngas-mark|now
^_P|say ^_U|will ^_^_display| ^_^_element| ^_^_kindly| ^_^_off| ^_^_over| ^_^_stick| ^_^_still|
^_^_suppos| ^_^_their| ^_^_tim| ^_^_top| ^_ar_th| ^_ar_w| ^_at_N:core| ^_did_you| ^_display|
^_element| ^_for_m| ^_h_say| ^_has_it| ^_i_cut| ^_i_thought| ^_is_N:core| ^_kick_off| ^_kindly|
^_never_mind| ^_not_on| ^_not|N:few ^_no|thank ^_off| ^_ok_U| ^_oven|i ^_over| ^_r_DISH| ^_remind_m|
^_sorry|what ^_stick| ^_still| ^_suppos| ^_tell_P| ^_th_number| ^_th_other| ^_that|DISH ^_their|
^_this_oven| ^_tim| ^_too_much| ^_top| ^_what_tim| ^_yes|yes ^_you_hav| a_Nclock| a_THING_up|
a_cold|oven a_fan|oven a_fresh| a_good|Nduration a_grey| abov|th absent| add|DISH_$ add|a adult_N:few|
adult_and_N:few| after_all|that after_that| afternoon|look after|it_is after|rest again_i|
again_th| again|and_it ago|i_put ago|it_said aim|for alarm|in_Nduration alex| all_in|th all_w|
all|th_DISH already|ti alway|run am_off| am|put and_for| and_i_hav| and_i_want| and_if| and_is_it|
and_i| and_let_us| and_medium|rar and_noth| and_stop| and_sur| and_that_is| and_they| and_th|THING
and|U_is and|aim and|all and|ar_w and|can_w and|cancel_th and|count and|delet and|ditch and|ditch_th
and|do and|golden and|how_many and|i_do and|i_will and|look and|medium and|my_P and|never and|oven_is
and|p and|p_m and|roast and|sam_is and|serv and|sh_is and|skip and|supper and|th_THING and|ther_is
and|this and|this_is and|what_tim and|will and|yes anyth|pink any|U an|old ar_her_U| ar_lat|Nduration
ar_no_longer| ar_out|now ar_run| ar_up_to| ar_w_on| ar_warm|now ar_w|look ar|both ar|ready
ar|run ar|run_lat as|sh at_N:core|fan at_N:few_th| at_N:few|sharp at_Nclock|instead at_Nclock|sharp
at_least|Nduration at_th|start at|N:core_it at|N:oven_THING at|Ndegrees:core at|th a|Nweight_N:few
a|P a|fair a|flat a|low a|power a|th a|timer_for b_N:few_U| b_Nduration|behind b_at|N:oven
b_that| babysitter| back_to| back_up| back|in_th back|with bad|new bark_at_m| bath_th| bath|th_P
been_out|Nduration befor|N:few_$ began| behind_and| behind|with bell_in| berti|is bin|out bit_dark|
bit|lost bit|of bon_roast|Nweight bon_sid| bon|on bother_with| both|th bought|a brid| bug|
bung| burnt_th| burnt|my_THING butter_all| butter|step buy_THING|THING by_a| by|then b|N:core_$
b|U call_it|N:oven cam|U can_not_i| can|U can|drop can|drop_th can|hav can|i_swap can|not_keep
can|se can|us can|wait carv_and| cast| caught|fir_$ celsius_i| chang|Nduration cheap|THING
chip_pan| chuck_th_DISH| coat|on cold|in collaps|in collect_P| collect_P|back colour_is| colt|
com_THING| com_that| completely|forgot com|Nduration_after com|at_N:few com|down com|first
cook|now cor|is_N:core could_not|hav could|w count_as| cover_it_with| crank| cream|for cream|in_th
cross_th| cut_it_open| cut_th_bon| day|w dial|to did_sh| did_th| did|i dinner_and| dinner|N:oven
dinner|back din|at display_say| do_it|go do_i|set do_not_start| do_not_talk| do_not|car do_not|count
do_not|hold do_to| dog|is don_w| don|by don|th_butter don|to door|hang down_and| down_in| do|any
do|first do|roast do|roast_DISH draw| driv|m drop_it|to dry|brin dry|it dry|th duck|out eat_th|
eat|Nduration_sooner eat|by eat|ok els|could end|piec enough_for| everyth_in| everywher_and|
extractor| faff|with fahrenheit_and| fan|is fat|off find_in| finger|and_it finish|at_N:few
first_at| first_th| fit_in| fit|in flight| folk|ar for_DISH|so for_Nduration|then for_medium|well
for_us|medium forget|everyth forgiv|m for|Ndegrees:core for|Nweight for|THING for|all for|how_long
for|that for|this for|your found|it fridg|is from|Nclock full|of f|at get_my| get|N:few given_up|
giv|you gi| go_for| gon_all| gon|all gon|hom good|Nduration got_that| got|N:core_in got|U go|away
go|for go|up grey|all grey|right guest|they gwen| h_is_on| h_still| had_it| half_th| half|THING
has_gon|hom hav_N:few| hav_burnt| hav_got|Nduration hav_not|i hav_set_it| hav|been_on hav|burnt
hav|knock hav|slic_my hav|start hav|th_N:few hav|you_got head| heat|for her_go| her_it_is|
her_it| her_i| her_out|now her|already her|new her|or her|yes him_and| himself_is| him|on his_medium|
hob|has hold_th_THING| holler_at_m| honestly_th| hot|start hous|has how_com|w how_did| how_do|
how_do|i how_long_befor| how_long|hav how_many_pound| how_much| how_thin| how|THING h|never
h|would i_am_off| i_am|put i_ever| i_get| i_hav_don| i_hav_no| i_hav|burnt i_hav|knock i_hav|never
i_hav|no i_keep| i_last_look| i_r| i_salt_it| i_swap| i_will_b| i_will_do| i_work| idea_what|
idea|what if_THING| if_ther| if|nobody in_N:some|for in_Nduration|ago in_at|N:oven in_law|ar
indian| insid_it| insist_on| internal_temperatur| in|DISH_$ in|Nduration_and in|at in|celsius_$
in|it_go in|lat in|pound in|real in|th_bottom in|th_pan in|th_sink in|too in|top_oven in|with
is_N:core|too is_N:few|DISH is_THING|in is_all|i is_and| is_an| is_boneless| is_down|to is_for|
is_given_up| is_in|a is_it|N:few is_it|a is_it|still is_i| is_lat|so is_m|don is_not_tak| is_not|finish
is_not|so is_not|th is_on|for is_with| is|N:few_rib is|a_Nweight is|alway is|brown is|chop
is|correct_$ is|family is|finish is|help_$ is|knock is|min is|next_$ is|not_in is|not_pound
is|outsid is|pink is|rar is|right is|roar is|shift is|talk is|th_U is|th_roast is|too is|vegetarian
is|whol it_back|Nduration it_is_N:oven| it_is_a| it_is_boneless| it_is_under| it_is|alway it_is|serv
it_jump| it_must| it_on|paus it_was|N:few it_was|th it_will_b| it_with|DISH it|Nduration_earlier
it|as it|by it|grey it|has_not it|onc it|out it|over it|shoot it|was_th it|weigh_Nweight i|DISH_it
i|choos i|hav_to i|miss i|nearly i|pok i|pull_th i|salt i|sent i|thought i|throw i|will jar|of
jess_is_on| job|in joint_in| joint|do join|us judg| keep| keep|warm kilo_is|not know|ther_is
know|this kyli| land_at| later|would lat|her lat|or lat|put_th law|ar least|Nduration leg_THING_Nweight|
let_them| let_us|skip light|is light|went lik_to| lik|his lik|this list_of| list_th| long|enough
long|hav look|th lunch|and m_do| m_her| m_is| m_out| m_to_do| mad_at| mak_it|N:few mak| mak|N:few
many_pound| many| medium_my| meet_at| metric|so met| middl_is|N:core min_is| missus| mor_than|
mor_th| mov_th| mov|to much_tim| much|smok must_hav| my_THING_is| my_ear| my_finger|and my_last|
my|THING my|THING_THING my|last my|oven_is m|Nduration_on m|as m|everyth m|finish m|how_to
m|in_celsius m|out m|th_THING m|till_it n_Nduration| n_to_pick| needl_is| neep| new|P next|U
night_and| no_bon|in no_fan_on| no_it| non_of_them| not_a_THING| not_b|right not_catch_that|
not_eat|DISH not_get| not_let_m| not_salt| noth|on noth|to not|been not|begun not|car not|catch
not|eat not|find not|finish not|got_a not|keep not|mind not|salt not|set now_it_is| now_it|
now_you| now|on_$ now|then now|what_$ no|clu no|french no|i_am no|idea no|ma'am no|rest no|us
number_on| oat|THING of_N:oven| of_THING_now| of_oven| of_water| off_for| off_i| off|at_N:few
off|dinner off|on_th off|th_oven of| of|Nweight of|salt ok_th| ok_th|THING old|DISH on_DISH|ar
on_lik| onc_it_is| onto|th on|DISH_and on|DISH_duty on|chemo on|th_plat on|th_roll on|th_telly
on|what_was open|and_it open|th_door open|to option|N:few_$ or_DISH|it or_can| or_it| or|did
or|it or|will other|sid our|oven out_and| out_at|N:core out_that| out|another out|at_N:core
out|at_Nclock out|to_th oven_alway| oven_down|Nduration oven_do| oven_it| oven_off|now oven_th|
oven|beep oven|is_not oven|to over_and| over_to| pardon|m pass_on| pat_it| pat_it|dry peopl_ar_her|
peopl|hav peopl|in phon_di| phon|is pink_U|not pink_in| pink|all plac|is plat_ar| plat|at position|
preacher| pull|temperatur put_DISH|on put|N:few put|THING put|th_roast p|Ndegrees:core quit|badly
r_DISH|ther rar_is| rar_i| rar_th| ravi|is raw|in real| reason|w reduc|for remain| rest_a|
rest|under_THING right_it_is| right_th| right|back right|they roast_DISH|back roast_and| roast|i_hav
roux_is| roux|is run|Ndegrees:some run|a r|on salt_on|th salt|go salt|i sam_heat| sam|THING
say_to| say|in say|not scratch|that sear_and| sear_it|at sear|it_first second|half serv|N:few
serv|Nduration_later set_a| set_m|Nduration set_to| set|this sh_eat| sh_is_go| sh_is_not| sh_say_so|
shall|i shelf|it shift_th| shop_had| short|of should_THING| should_i_b| show_N:few| show_m|th
show|Ndegrees:core sid|is sinc_it_is| sinc_last_night| sinc|Nduration_$ sinc|i sit_at| sit|out
sleep|in sleep|in_th slic|for smok|hot snow|in so_go| som_of_them| someth|i sorry_i| soup|at
so|N:few so|add so|cross so|now so|ther so|they_ar so|well so|well_don speak|with spoil| start|again
stick|thos still_DISH|in still_on|th still|lik stop_stop| story| straight|off str|after str|after_all
str|ar stuck_behind| stuck|it suppos_to| tabl|now tak_a| tak_his| tak| tak|DISH tak|Nduration
tak|his tak|your talk|to teach_m| tell| tell|her temperatur|Ndegrees:core_$ text_m| th_THING|get
th_THING|say th_U|on th_bin|out th_butter|step th_cabl| th_high| th_job|in th_joint_is| th_last_on|
th_oven_at| th_oven|Nduration th_oven|at th_oven|off th_restaurant| th_roast|out th_r|DISH
th_second|half th_toddler| th_way|through than|i that_is_a| that_is_how| that_roast| that_timer|it
that_will_b| that_wreck| that|THING_$ that|at that|off that|was their| then_it| ther_and| ther_b|
ther_is_smok| ther|or they_hav_all| they_hav| think|my third_on| this_step| this|THING this|lot
this|oven_run thos|bon through|it thumb|open th|DISH_n th|DISH_not th|THING_ar th|THING_over
th|bakery th|bon_in th|cook th|cut th|fat th|follow th|headcount th|lord th|plat th|plat_ar
th|rar th|rest_of th|roast th|skin th|steam th|tabl_at th|we th|wean th|wrong tick|that till_i_can|
till_it_is| till_it| till|it timer_Nduration|THING timer|Nduration_THING ti|a to_N:few|for
to_N:oven_DISH| to_THING|th to_chang|Nduration to_collect_P| to_do|th to_eat|Nduration to_know|when
to_look_lik| to_medium|well tonight|so too_lat|to too_much|salt too|quick top|oven_is touch_it|if
touch|N:core to|N:core_and to|Nclock_$ to|com to|cook to|cut to|finish to|mak to|tak_it to|th
to|turn_th trim_and| turn_up|Nduration turn|to t| under|THING_$ under|th under|th_truth under|whatever
upstair_to_chang| up|at up|early up|lovely up|now up|th_DISH up|when us_do| us_go|medium us_up|
us|skip us|that us|when vegan|now very_THING|THING vs| w_ar_not| w_cook| w_could| w_do_it|
w_eat|ok w_hav_lost| w_hav|N:few w_hav|U w_in| w_never| w_want_it| w_wer| w_will| w_would|
walk|in want_his| want_it|Nduration want|DISH_DISH warm|now was_N:core|then was_in| was|N:oven
was|i was|my was|so water|in way_that| weather| well_i| went_on|Nduration we| what_U| what_ar_w|
what_do|medium what_is_a| what_is| what_tim|is what|ar what|ar_th what|can_w what|ingredient
what|sid what|wer wheat| when_i_tak| when_is| when_it_THING| when_they| when_to| when|sh wher_do|
wher_is| wher_would_you| wher|do whil_it|rest whil_i| who_eat| who_left| who_will| why_it_is|
why_not|DISH why_th| why|is why|w wilf| will_arriv| will_hav_it| will_i| will_not_hav| will_not|mak
will| will|com will|start with|everyth with|his with|your work|for work|is would|tak w|do_it
w|look w|ok w|say w|sit_down year_th| yes|or_no you_ar_on| you_call| you_can|drop you_i| you_mind|
you_put_in| your_sho| your|P_is you|at you|lik you|look_at you|mak you|stop you|talk you|watch
|@101.1 |@109.3 |@118.3 |@127.3 |@134.4 |@135.0 |@14.1 |@22.0 |@45.2 |@48.8 |@54.1 |@61.0 |@7.2
|@71.6 |@97.2 |@98.1 |DISH_DISH_so |DISH_after_all |DISH_ar_nowher |DISH_duty |DISH_from_th
|DISH_over |DISH_tak |DISH_they |DISH_would_go |N:core_flat |N:core_how |N:few_Nweight |N:few_and_th
|N:few_bon_not |N:few_my |N:few_peopl_not |N:few_set |N:few_sh |N:few_this |N:few_what |N:oven_w
|N:some_dollar |Nclock_th |Nduration_after_$ |Nduration_ago_how |Nduration_it_is |Nduration_th
|P_DISH |THING_DISH_is |THING_THING_$ |THING_THING_U |THING_THING_and |THING_can_not |THING_h_is
|THING_is_caught |THING_it_$ |THING_my |THING_no |THING_of_THING |THING_sinc |THING_th_DISH
|THING_ther |THING_trip |THING_would |THING_yes_or |THING_you |U_not |a_list |a_new |about_th
|again_it |ahead |all_medium |all_th_timer |altogether_$ |altogether_$_$ |an_oven |and_N:few_THING
|and_N:few_other |and_THING_$ |and_down |and_everyth_$ |and_help |and_on_th |and_ounc |and_pass
|and_sh |and_went |ar_a |ar_my |ar_not_com |ar_up |as_per |ask_$ |ask_$_$ |at_their |away_th
|b_U |b_a |b_at |back_$ |back_$_$ |back_N:some |back_from |battery_is |befor_they |bet |better_than
|beyond |bug |butter_in |butter_is_not |button |by_Nduration |by_th_tim |can_help |can_mak
|channel |chest |com_$ |com_$_$ |com_at |com_out_$ |cook_it_at |cut_$ |cut_$_$ |delay_$ |delay_$_$
|do_$ |do_$_$ |do_b |do_i_believ |do_w_hav |don_my |down_as |down_by |drank |eat_U |eat_th
|end_is |fenella |few |find |for_P_who |for_a_U |for_dinner_$ |for_eat |for_his |for_ic |for_medium
|for_temperatur |for_us_$ |forward_Nduration |from_that |gin |got_load |grand_$ |grand_$_$
|grid |guest_and |h_eat |has_had |has_th_THING |hav_Nduration |hav_been |hav_been_at |her_down
|high |hit_N:some |host |hous |how_th |i_am_yet |i_hav_Nduration |icy |if_that |in_DISH_$ |in_N:some
|in_degre_c |in_her_$ |in_ic_water |in_is |in_th_driv |in_your |insid_th_oven |is_N:core_what
|is_N:few_$ |is_Ndegrees:few |is_Ndegrees:some |is_P_is |is_allergic_to |is_at |is_bad |is_clos
|is_down |is_giv |is_in |is_jump |is_mak |is_nearly |is_not_in |is_not_tak |is_ready |is_rubbish
|is_slic |is_stand |is_start |is_stop |is_th_old |is_throat |is_trim |is_under |is_when_w |is_with
|is_wrong |it_$ |it_$_$ |it_N:some |it_by |it_in_th |it_out_$ |it_well |it_will_not |jun |know_how
|left_$ |left_$_$ |left_in_th |letter |lik_Nduration |lik_Nduration_ago |lik_her |lik_what
|lot |lukewarm |lumpy |luncheon |mak_a_DISH |mak_th_DISH |mess |moment |mor |my_family |my_god
|new_year |no_longer |no_power |no_shellfish_sh |not_all |not_reach |now_Nduration |now_in
|now_w |now_what_do |of_U |of_cream |of_my_P |of_peel |of_you |off_THING |off_a |off_it_$ |off_yet
|on_DISH_ar |on_ar |on_thank |orang |ought_to |out_a |out_again |out_at_N:few |out_cold |out_from
|out_of_N:few |oven_her |oven_so |oven_th |over_to |pain |photo |pizza |plac_it |po |pok_it_$
|prefer |pretty_good |put_th_in |quick_th |rat |report |rib_with |right_down |roast_and |run_behind
|rush |say_no |sh_com |shall_b |should_b |sia |simmer |sinc_N:few_$ |sit_$ |sit_$_$ |sit_and
|sit_on |smok_$ |smok_$_$ |so_THING_is |soggy |sol |start_it |start_to |stay |still_to |stool
|straight_away |street |suit |sulk |surviv |swell_up |temperatur_th |ten |tender |th_DISH_bless
|th_DISH_from |th_DISH_they |th_bon_$ |th_bottom |th_car_$ |th_corner |th_cousin |th_cow |th_doorbell
|th_edg_$ |th_floor |th_high |th_hous |th_low |th_moment |th_nut |th_oven_N:few |th_oven_and
|th_oven_down |th_oven_duck |th_oven_th |th_pan |th_pi |th_plan |th_rest_$ |th_roll_$ |th_spoon
|th_timer |th_top_oven |th_wash |than_th |that_again |that_back |that_bit_$ |that_down |that_far
|that_out |that_roast |their_at |them_DISH |ther_a |ther_or |this_in |this_morn_$ |this_siz
|this_step |this_year_$ |through_it |thumb |till |tim_it |to_N:oven_about |to_cut |to_finish_$
|to_go |to_him |to_his |to_hurry |to_hurry_it |to_mak |to_my |to_put |to_se |to_warm |too_early
|too_much_salt |tq |troubl |unannounc |unit_and |up_N:few_$ |up_Nduration |up_already |updat
|us_THING |us_in |us_it_is |us_up |vanish |was_Nduration_lat |was_finish |was_for |was_i |was_run
|was_still |wean |went_on |wet |whil_w |whistl |who_do_not |who_eat |wilf |will_want |wis_$
|wis_$_$ |with_paper |with_their |without_$ |without_$_$ |worry |would_b_nic |would_you_i |yet_and
|you_in |you_lik |you_understand_$
-19 ,|N:core @110.5| @131.3| @135.5| @27.2| @34.8| @38.4| @67.2| @7.3| @88.5| DISH_DISH|still
DISH_THING_and| DISH_back| DISH_butter_all| DISH_b| DISH_cream|is DISH_how| DISH_i| DISH_no|th
DISH_on|with DISH_over| DISH_so_it| DISH_they| DISH_want| DISH_what| DISH|DISH_U DISH|DISH_as
DISH|DISH_can DISH|DISH_mad DISH|DISH_nobody DISH|DISH_so DISH|DISH_too DISH|after_all DISH|alarm
DISH|and_stuff DISH|as DISH|away DISH|cook DISH|dress DISH|hav_to DISH|in_N:few DISH|in_my
DISH|m_alon DISH|n DISH|no_n DISH|so_no DISH|them N:core_after| N:core_for|Nduration N:core_i_am|
N:core_ok| N:core_on| N:core_too_low| N:core|about_Nduration N:core|and_frail N:core|captain
N:core|final N:core|flat N:core|let_m N:core|peopl N:few_and| N:few_at| N:few_extra|peopl N:few_foot|
N:few_peopl|cancel N:few_rib|on N:few|DISH_THING N:few|and_ther N:few|down N:few|heat N:few|is_when
N:few|of_them N:few|plat_$ N:oven_and| N:oven_not| N:oven|ft N:oven|is_what N:some_in_th| N:some_what|
N:some|now N:some|of_us Nclock_U|it Nclock_and| Nclock|or Ndate_dinner_at| Ndate_for| Ndate_roast|
Ndegrees:few_in| Ndegrees:few_too| Ndegrees:some|in_Nduration Nduration_befor|w Nduration_do|
Nduration_earlier|th Nduration_in|U Nduration_it| Nduration_later|P Nduration_lat|so Nduration_lat|they
Nduration_left|on Nduration_of| Nduration_timer|for Nduration|N:few_th Nduration|in_$ Nduration|till
Ngas-mark|for Nweight_on| Nweight|THING_THING P_DISH| P_U_is| P_and| P_help|m P_is|oven P_i|
P_lik_her| P_not| P_us_to| P_who| P|at P|n_to P|took_th P|want THING_N:core|Nduration THING_THING_N:few|
THING_after| THING_and| THING_as| THING_a| THING_cut| THING_is_ready| THING_sh_is| THING|Ndegrees:few
THING|THING_i THING|THING_no THING|THING_sorry THING|a_THING THING|again THING|hit_th THING|in_and
THING|it_$ THING|show_N:core THING|stand THING|stuck_in THING|th_block THING|to_th THING|yet
U_and| U_cancell|so U_can| U_for| U_my_P| U_thos| U_up| U|DISH_$ U|ar_out U|at_th U|away U|god
U|lovely U|no_th U|of ^_DISH_still| ^_N:core|it ^_N:some|i ^_Nduration|rest ^_Ngas-mark|it
^_Nweight_on| ^_THING|now ^_U_com| ^_U_god| ^_^_bin| ^_^_bless| ^_^_crust| ^_^_dial| ^_^_door|
^_^_left| ^_^_new| ^_^_nobody| ^_^_number| ^_^_pan| ^_^_pass| ^_^_plan| ^_^_them| ^_^_this|
^_bin| ^_bless| ^_bottom|oven ^_can_i| ^_careful|with ^_crust| ^_dial| ^_do_i| ^_do_you| ^_door|
^_hav_w| ^_hello|P ^_how_lat| ^_how_soon| ^_i_hav| ^_i_know| ^_i_n| ^_i_set| ^_i_want| ^_in_Nduration|
^_is_it| ^_i|crank ^_left| ^_look_at| ^_my_DISH| ^_my_boss| ^_my_kne| ^_new_oven| ^_new| ^_nobody|
^_not|quit ^_no|tent ^_number| ^_ok|U ^_ow|i ^_pan| ^_pass| ^_plan| ^_pull|th ^_put|DISH ^_right_THING|
^_right|they ^_sam_heat| ^_sh_said| ^_smok_alarm| ^_smok|alarm ^_so|it ^_th_light| ^_th_str|
^_th_train| ^_that|THING ^_them| ^_this| ^_was_that| ^_well|i ^_what_els| ^_which_sid| ^_why_not|
a_DISH_in| a_U|U a_fair| a_glass| a_great| a_jar|of a_leave-in| a_leave-in|THING a_medium_rar|
a_nut| a_pregnant| a_r_DISH| a_second_oven| a_touch| abeg| about|DISH about|Nduration about|right
abov| absolut| add|th after_th| after|i after|this aim|for_N:few alarm_clock_on| alarm_in|
alert|at all_THING|th all_it| all_land| allow|to all|day all|gon all|her all|night all|th_THING
all|th_heat already_in| already_i| already_th| already|in_th alway|do am_i_look| am_on| am|
am|U am|th and_DISH|ar and_Nweight| and_U|is and_ar| and_can_you| and_do_not| and_do|i and_it|THING
and_kilo|is and_my| and_now|th and_run| and_som| and_tuck|in and_who| and|N:oven and|anyth
and|burn and|burnt and|butter and|can_you and|drop and|flat and|hang and|holler and|how_do
and|i_am and|no_no and|power_is and|pull and|right and|shout_when and|show and|skip_th and|som
and|stop_th and|supper_is and|th_in and|thank_you and|that and|that_is and|then and|turn_th
and|wak and|wak_m and|what_should and|which any_U| any_way| an|U an|oven ar_N:few|peopl ar_Nduration|
ar_THING_so| ar_ask| ar_do| ar_eat|at ar_look_at| ar_not_com| arriv_and| arriv_at| arriv|to
ar|N:core ar|N:few_for ar|N:few_person ar|sit as_it| as_i| as_well|so asleep|in_th as|finish
as|my_P at_N:few_U| at_N:oven|feet at_N:oven|in at_Ngas-mark|and at_half| at|N:core_is at|N:oven_in
at|Nclock_i at|Ndegrees:few at|U_is at|all_is at|how at|onc at|which a|N:core a|boneless a|new
a|run a|sack a|second a|tabl b_N:few|U b_U| b_a| b_gon| b_medium| b_mor| bab| back_at| back_has_gon|
back_in|at back_i| back_what| back|after_Nduration back|i_reckon bag|of baker| bast|it bath_is|
been_THING| been_go| been_in|th beep|so beep|so_it befor|th begin_again| behind|her between|th
bigger| bin|th_DISH bit|off bless|her blok| board|at board|with bottl_of| bottom|shelf brought_th|
bubbl|away burn|at butter_in| butter_is| butter_on| butter|with butter|with_DISH buy|DISH buy|a
by|N:core by|Nclock_$ by|Ndegrees:few by|a b|bast b|for b|help b|if b|so c_so| call|from call|m
cam_off| can_i_do| can_my| can_not_b| can_not|get can_not|turn cancel_th_roll| can|b can|stop
can|w_do can|w_eat carry|a caterer| celsius_not| celsius|not centr|is chanc|i_am charg_of_th|
chop|th_DISH clean|forgot clear|th click|and clock_on|Nduration clock|for coat|off cold|in_th
com_N:few| com_at| com|after conventional|now cook_and| cook|this could_P| count_them| count_to|
counter|Nduration count|to crack|N:core cream_for| cream_is| cream|on cross|th cut|my_finger
cut|on day|go degre_celsius| delay_so| dessert| did_U| did_not_catch| did_not|turn did_that|
did|i_say dinner|for dinner|was ditch_th| do_her| do_i_cut| do_i_tell| do_it_in| do_not_tell|
do_not|chang do_not|let do_not|mind do_not|put do_not|they do_your| don_and| don_for|P don_i_hav|
don_in| don_it_is| don_i| don|with_th door|for_N:few door|now down_Nduration_after| down_at|
down_for| down|and_ar down|now do|DISH_$ do|i_put do|this do|with do|you_reckon earlier|th
earlier|th_P eat_it_at| eaten| eat|Ndate eat|at_Nclock eat|early eat|halal eat|this everyth_and|
everyth_back| everyth_in_th| everyth|to everyth|you explain_to_m| extra|peopl ex| f_at| fahrenheit|for
family_is| fan_off|so fan|off far_along| fat_sid| fat|this feed_th| figur| find| find|th finish|at_N:core
first_on| first|on first|then_down fir|on flam|com flip|it floor_and| for_Nduration_th| for_Nduration|and
for_Nduration|would forget|i_said forgot_th| forgot|th for|Nduration_i for|U_and for|after
for|bast for|roll french|is fresh|DISH_$ from_her|on from|wher from|zero f|at_Nclock gain|
gav_m|N:few get_that| get_your| get| get|out get|your gideon| giv_it|a giv_my| giv_th| gnaw|
go_past| go_to_do| go_to_n| god|help_us gon_cold|on gon_up|in gon|ston gon|ston_cold gon|vegetarian
good_Nduration|behind good|or got_THING|to got_it_at| got_my_P| got_to| got|N:core_$ got|THING
got|go got|m got|th go|ok granddad| grandmother_is| green|DISH_$ grey_and| grocery| guest_at|
guest|at h_at| h_n| h_would| had_her| happen|at happen|when hardly| has_allergy| has_a| has_di|on
has_gon|in has_gon|vegetarian has_had| has_to_b| has_to| has| has|N:core haul| hav_any|THING
hav_fallen| hav_not_even| hav_reach_N:core| hav_th_oven| hav_th| hav_to_run| hav|P hav|been
hav|don hav|i_forgotten hav|knock_it hav|not hav|put hav|put_th hav|ti heat_N:few| heat_th|
heat|up help|in help|m_now help|ther help|ther_is her_second| her_so| her|P_is her|in_th her|now_$
her|plat him_on| hold|at hot_and| hot_th| hotel| hot|finish hot|in_her hot|to hous_so| how_THING_hand|
how_far_along| how_it| how_much|butter how_this| how|THING_hand how|ar how|did h|got i_am_on|
i_am|U i_am|nip i_am|th i_fancy| i_got|N:core i_mak_it| i_season| i_se| i_think|i i_told|you
i_want|N:core i_would_sooner| ic_so| if_i_tak| if_th|THING if_you| if|P if|sh if|so igniter|
ignor|th in_Nduration|tell in_Nduration|to in_U|and in_do| in_his| in_law_is| in_on| inform_m|at
instant-read|say instant-read|say_N:core instead_and| inverter| in|Nduration in|Nduration_$
in|Nduration_for in|as in|befor in|cold in|from in|front in|th_garag in|th_hot in|th_lower
in|th_old in|th_plan iron|pan is_N:oven| is_THING|for is_allergic|to is_a| is_blood| is_bubbl_away|
is_cut| is_half| is_in|their is_it_look| is_left|in is_lot|hav is_my| is_not|great is_not|ther
is_not|well is_on|chemo is_on|now is_on|tim is_out|for is_th_fat| is_th_temperatur| is_well|
is|N:few_mor is|N:few_not is|N:oven_$ is|Nduration_lat is|U_in is|back_in is|du is|enough is|go
is|mor is|non is|not_it is|plan is|ready is|set_to is|starv is|th_DISH is|th_best is|th_fat
is|that_all is|thin is|tough_as it_N:few| it_at|Nclock it_can| it_com_to| it_hav| it_in_Nduration|
it_in_it| it_is_m| it_is_that| it_is|lik it_is|preheat it_is|rest it_n| it_on|at it_ready|
it_to|Ngas-mark it_to|rest it_was_N:few| it_was_hot| it_was_on| it_weigh|Nweight it_will| it_without|
it_with|th it_w| it|at_N:core it|at_th it|befor it|brown it|burn it|for it|had it|is_THING
it|is_cold it|is_own it|jump_Ndegrees:some it|last_night it|loosely it|on_th it|out_or it|r
it|will_b it|wrong_$ it|yet i|burnt i|chuck i|hear i|let i|lower i|not i|speak jar|is jump_Ndegrees:some|in
keep_up|Nduration kept_insid| kick|off kilo_and| knock_th| knock|on know|when_it last|year
lat_on| lat_so| lat_to| later|P later|than lat|for lat|with_th law_is| learn|th left_THING|
left_in|th left|on_my lend| let_m|forget let_us_get| light|off light|on light|out lik_th| lik|P
lik|butter lik|on list_i| littl_N:few|eat li|on load_with_DISH| long_do_it| long_is_it| long_is_left|
long_it| look_at|th look|good lost_my| lost|th lower_to|N:oven low|oven m_THING|th m_from|
m_hav| m_i_am| m_my| m_to| mad_a| mad_you| madam| mad|and_in mad|you mak_you| mak|a man|is
marg| mean_th| mean_to| medium_is| medium|rar_for messag|when method_for| middl|of mind|that
min|is miss_th| miss|out mor_minut| mor|for mor|guest mor|or mor|peopl_ar mor|slowly mov_to|
mov|on_$ much_salt|do much|butter murder|a mushroom_and| my_P|P my_P|help my_THING|in my_cooker|
my_oven|is my_peopl| my_pregnant| my_pregnant|P my|P_lik my|P_say my|THING_ar my|bad my|phon
my|read my|roommat m|a m|again m|at m|da m|fahrenheit m|forget m|som m|start m|straight n_another_Nduration|
n_mor| n_to_b| n_to_do| nearly|ther new|oven next_to| next|on nip| no_THING_so| no_bon_in|
no_th| nobody_is_eat| nobody_is| nobody_will| nobody|is nobody|lik non|of_them not_and| not_any_THING|
not_catch| not_cut| not_eat|THING not_fit| not_hav|a not_i|am not_lik| not_mean| not_speak|
not_what| noth_U| not|N:core_it not|N:oven_$ not|N:some_$ not|believ not|chang not|clean not|do_that
not|even not|for not|great not|put_it not|salt_it not|ther_yet not|understand not|us now_at|
now_i_do| now_not| now|i now|it_is no|DISH no|N:few_peopl no|butter no|gluten no|longer no|n_to
no|th_green number|N:core och_th| odd| of_everyth| of_it_is| of_my_P| of_roast| of_them|is
off_it_is| off_so| off|and_ti off|by off|our of|DISH_is of|THING_over of|th_THING oil_and|
ok_ready| ok_to| ok|ready ok|w old_DISH| on_N:some|at on_my| on_th_middl| on|convection on|fan
on|fir_$ on|is_for on|is_out on|th on|th_bathroom on|th_boil on|th_bon on|th_go on|th_hob on|th_roast
on|th_way on|that on|wash_up open_it| open_th_oven| open|a or_am_i| or_ar| or_is_that| or_is_ther|
or_no| ordinary| or|i or|th or|ther ought| our_own| out_at|Nclock out_not| out_what| outsid_th|
out|U out|b_back out|in_hiv oven_down|in oven_has_been| oven_in| oven_i| oven_on_N:some| oven|down
oven|in_th oven|is_hot oven|will_not over_th| over_what| overdon_it_is| over|Nweight over|on_th
pan_THING| pan_and| pan_of| pan|of pass|on past|it peopl_in| pick_at| piec|of pink|U_not pink|in_th
plac_is| plan|of point_at| pok_m| pop_th| pound|and_fahrenheit pound|and_ounc prick| pull|th_roast
pull|up push_dinner_back| push_it|back push|it_back put_it_in| put_th_roast| put_that| put|DISH_cream
put|insid put|th_THING quarter|past quick|on quid|a r_win| rar_what| rar|if rar|if_you raw_in|
raw|in_th reach_N:core|captain ready|to reckon|it_is regular|bak remov|it remov|th_THING rest_it_is|
restaurant|THING rest|on_th ribey|roast right|down right|this road|Nduration road|ar roar_at|
roast_DISH|ar roast|DISH_hav roast|at_Nclock roast|do roll_ar_out| roll|is roll|rib rop| rough|
run_through| run|Ndegrees:few said_Nweight| said_that| salt_is| salt|do_i salt|go_on salt|th
salt|to salvag| sat|down sat|ther say_N:core|U say_and| say_it|is say_medium| say|N:oven_$
say|Ndegrees:core say|h_will scrap_th| scratch|th scrub_th| se_that| sear_at| sear|at_th sear|it_$
sear|keep sear|keep_it sear|last sear|now second|thought senior| sens_in| serv_it_pink| serv|at
sesam| set_this| set|m sh_has| sh_lik| sh_want| sh_was| shav| shelf|N:few_from shelf|is should_know|
should|not shout|if shout|when shov| show|Ndegrees:few sho|leather shut_that| sh|can sid_THING|
sid_and| silver| singl| sit_down|at sky| slic_for| slow_n| small_oven|set smok_and| smok|alarm_is
smok|off smok|off_th so_count| so_dinner| so_i_am| so_i| so_us| someth|is sorry_not| sorry_th|
sorry|say sound|good soup_at| so|Nclock_$ so|THING_is so|do_not so|my so|sh_is so|us so|what
stand_rib_roast| stand|by start|count start|now start|sear stay|on step_out|b step|back step|by_step
still_U| still_can| still_got| still|THING still|do still|saf stop_to| stor|what straight|away
straight|to strain_th_DISH| stretch_to| strong_heat| str|in stuck|behind stuff|with such|a
supper_N:some| supper_is_at| supper|at supper|at_Nclock support| suppos_i| suspend| swell_up|sh
swell|up switch_off|th tablespoon| tak_Nduration| tak_it_to| tak_off|N:few tak_th_THING| tak_this|
tak|THING tak|that target_cor|Ndegrees:core teach| teddy| teddy|is tell_m|straight temperatur|do
terrell| th_DISH|after th_DISH|again th_DISH|cream th_DISH|get th_DISH|stand th_DISH|to th_DISH|want
th_N:few|hav th_P_hav| th_P|hav th_THING_over| th_THING|floor th_and| th_beast| th_board|at
th_board|with th_boat| th_clock|for th_dinner|Nduration th_electricity| th_element| th_farm|
th_follow| th_glass| th_handl| th_igniter| th_lad| th_oven_it| th_oven_this| th_oven|this th_pull|
th_roast_is| th_sear|a th_second|it th_sens_in| th_timer|on th_wean| thank|P that_DISH| that_on|out
that_ther| that|door that|finish that|is_what that|out that|plac that|will_do them|back then|turn
then|turn_it ther_for| ther_go| ther_is_non| ther_i| ther|will they_ar_hav| they_ar|hav they_ar|not
they_can| they_n| they|keep they|reckon think_i_hav| thin|as this_and| this_for| this_go| this|DISH
this|fat this|needl this|oven_is this|step this|tabl through_it| thrown| th|DISH_a th|N:oven
th|THING_at th|THING_was th|barbi th|bin th|boil th|can th|chang th|go th|ground th|hot_THING
th|lift th|medium th|needl th|oven_down th|oven_i th|power_has th|read th|salt th|sam_as th|screen
th|sink th|taxi th|third th|whol th|young tick|off till|N:core tim_Nduration|for tim_m| tim_th_DISH|
timer_and| tim|Nduration_start tim|in to_N:oven|now to_f|th to_mak|DISH to_miss| to_n| to_play|
to_put| to_say|it to_th| to_th|P to_ti_it| today|is tonight_and| too_and| too_many| took_th|
took|Nduration too|high total_N:few_person| touch| town| to|begin to|br to|carv to|help_$ to|hit_N:core
to|my_P to|r to|sit to|sit_down to|wait train_is_delay| translat| trim|th_fat trip|switch tuck|in
turn_that| turn_to| twic_as_long| under_a| under|control unit|and up_and| up|Nduration up|Nduration_down
up|and_down up|and_in up|that up|to up|when_it us_THING|DISH us_a_bell| us_do_DISH| us_eat_at|
us_for| us_get| us_it|is us_i| us_not| us|eat_at us|it_$ u| w_ar_a| w_can_not| w_liv| w_sit|down
wait|ther walk|off want|THING want|U want|dinner was_Nduration_lat| was_U| was_hot| was_hot|it
was_th_last| was|U was|finish was|it water_and| water_boil|at way_th| way|out_$ weight|in weigh|Nweight_$
welcom| well_don_for| well_that|is went_and| went_in_Nduration| went_to| went|to wer_at| wer_th|
what_do| what_happen_if| what_heat| what_sid| what_was_th| what_will|i what_w| what|com what|could_i
what|did_you what|hav_i what|i_n what|it_is what|other what|temperatur_is what|was_that when_is|th
when_th|THING when_w| when|they wher_is|th wher_it| which|is who_has| who|hav who|is_ther why_do|i
why|ar why|is_it why|th will_b|N:few will|do will|giv will|wash window|open win|is with_salt|and
without|bon with|DISH_DISH with|P with|a_U with|th with|th_butter with|their with|which work_is|
work_that_is| would_not_b| would_sooner| would_tak| would_th_THING| would_w| would_you_ever|
would|do w|good w|in w|jump w|se w|turn yank_it|out year_and| yes|to yet_to| yet|so_they yet|th_oven
you_can|not you_giv| you_tak| you|about you|ar_th you|back you|could you|do_not you|heard you|keep
you|still |@100.0 |@11.2 |@111.5 |@114.1 |@131.1 |@133 |@147.4 |@15.5 |@21.5 |@51.3 |@55.4
|@57.2 |@66.5 |@68.3 |@72.2 |@74.2 |@84.1 |@91.0 |@99.1 |DISH_DISH_th |DISH_U_$ |DISH_boat
|DISH_is_fin |DISH_w_ar |N:core_say |N:core_that |N:core_ther |N:few_Ndate |N:few_from_bottom
|N:few_in_th |N:few_plac |N:oven_all |N:oven_sharp |N:some_Nduration |Nclock_what |Ndate_N:few
|Ndate_for |Ndate_night |Ndate_without |Nduration_and_P |Nduration_and_what |Nduration_my |Nduration_not_N:some
|Nduration_still |Nduration_th_THING |P_U_$ |P_ar_join |P_is_$ |P_turn |THING_THING_on |THING_any
|THING_at_th |THING_is_don |THING_out_of |THING_tell |THING_th_block |THING_w_ar |THING_yet
|U_Ndate |U_for |U_is_at |U_th_dial |U_up |a_Nduration |a_THING_pan |a_hair |a_li |a_number
|a_saddl |a_takeaway |abov_th |again_i |again_in |against_th |all_THING_and |all_i |all_through
|alway_run_N:some |an_THING_$ |and_N:few_$ |and_N:some |and_ar_ey |and_climb_$ |and_don |and_eat_at
|and_golden |and_hungry |and_let_them |and_mov |and_sizzl |ar_already |ar_past |ar_still |ar_stuck
|around_th |arriv_at |as_sh |as_you_lik |at_N:core_in |at_N:core_what |at_N:few_Ndate |at_N:few_is
|at_N:oven_and |at_N:oven_how |at_Ngas-mark_$ |at_easter |at_half_tim |at_th_door |at_th_stor
|at_work |b_Nduration_behind |ball |banana |bar |bat |been_go |befor_dinner |birthday |blanket
|block |boil_$ |boil_$_$ |bon_Nweight |bowl |build |bulb |business |butter_w |butter_with |butter_with_DISH
|by |by_N:few |by_step |call_for |cam_out |can_$ |can_$_$ |can_not_com |car_is |carol |carv_and
|cas |celery |cellar |christma |clock_$ |clock_$_$ |com_U |com_on_$ |condo |cook_now |crust
|cut_in |day |december |deck |diall_it |dinner_back |dinner_to_N:oven |divorc |do_not_tak |don_i
|down |down_on_th |eat_with |enter |everyth_and |everyth_back |ew |faff_with |fahrenheit_and
|fan_oven_and |fat_$ |fat_$_$ |fierc |fin_i |finish_at_N:few |finish_it |first_so |flower |football
|for_$ |for_$_$ |for_N:few_at |for_P_nor |for_a_sid |for_bast |for_cream |for_help |for_now_$
|for_th_sid |for_thos |for_to |forgiv |forgiv_m |french_th |from_a |from_th_fridg |from_th_plan
|from_this |from_zero |ft |further_$ |further_$_$ |gav |get_anyth |go_down |go_out |goal |good_shap
|got_in |grandparent |guest_ar_already |h_is_off |had_a_go |had_it |half_tim |has |has_gon_dark
|has_gon_hom |has_gon_vegetarian |hav_DISH |hav_arriv |hav_to_b |hav_turn |help_m_$ |help_us_$
|her_DISH |her_THING_on |her_on |her_plat |her_so |her_to |hill |him_h |hip |hot_and |hot_now
|how_this |i_am_about |i_do_$ |i_do_with |i_forgotten |i_heard_you |i_meant_to |i_want_thos
|if_someth |in_N:few_$ |in_Nclock |in_THING |in_from_th |in_hiv |in_pound |in_set |in_th_N:few
|in_th_center |in_th_drawer |in_to |in_w |inform_$ |inform_$_$ |is_N:core_already |is_N:core_in
|is_N:core_over |is_THING_$ |is_after |is_asleep |is_bar |is_beep |is_blood |is_burnt |is_call
|is_cold |is_cut |is_do_th |is_gon |is_good |is_insid |is_lactos |is_lactos_intolerant |is_need
|is_not_brown |is_not_ready |is_out_for |is_out_too |is_outsid |is_own |is_possibl_$ |is_pregnant
|is_pur |is_so |is_taken |is_talk |is_turn |is_was |it_climb |it_down |it_dry |it_every |it_is_heat
|it_pink |it_then |it_ther |it_was_N:few |it_whil |it_will_tak |jump_Ndegrees:some |karaok
|knock_off |knot |languag |lap |lard |last_and |lat_Nduration |later_is |learn |less_than |lik_i
|likely |lip |list_for |long_enough |m_alon |m_in_Nduration |m_pound |m_through |many |mark
|meal |medium_and_that |medium_rar_in |mention |mil |mushroom |my_mind |my_own |n_to_b |nap
|negotiabl |new_$ |new_$_$ |next_year |nic_$ |nic_$_$ |not_Ndate |not_ask |not_been |not_brown
|not_for |not_mov |not_they |now_P |nowher_near_ready |numb |number_$ |number_$_$ |of_THING
|of_blood |of_butter |of_her |of_my |of_them_$ |of_what |on_DISH_$ |on_hot |on_lik |on_th_joint
|on_th_r |on_th_sid |on_th_stair |on_till |onlin |open_th_door |open_that |or_N:oven |other_THING
|out_her |out_on |out_on_th |out_overnight |out_to |out_with |outta_th |oven_N:few |oven_for
|oven_out |over_my |over_ther |pac |pass_th |pastry |patient |peopl_$ |peopl_$_$ |peopl_at
|perch |pick_at |plat_what |position |post |r_$ |r_$_$ |r_or |recip |reckon_N:core |requir
|rest_a |rest_yet |return |ribey_roast |ric_$ |ric_$_$ |right_this_second |right_to |road |roast_Nweight_$
|roommat |rop |roux_$ |roux_$_$ |ruin_$ |ruin_$_$ |run_Nduration_lat |sak |salt_for |say_Nweight
|school_$ |school_$_$ |seawater |sent_it |shirt |should_not |should_th |shoulder |shout_at_th
|shrimp |shuck |silverskin |sinc_Nduration_$ |sit_already |sit_down_Nduration |slic_for |slid_off
|slower_$ |slower_$_$ |so_ther |spin |start_Nduration_ago |still_climb |still_got |stuck_in_her
|stuck_in_traffic |stuff_it |sunflower |sunflower_THING |tablet |tagg |tagg_along |task |teenager
|th_DISH_a |th_DISH_get |th_DISH_to |th_N:few_about |th_THING_go |th_THING_to |th_barbecu |th_boil
|th_bowl |th_counter |th_crust |th_curtain |th_door |th_film |th_french |th_front |th_glass
|th_grey |th_ground |th_guest_$ |th_last_of |th_mark |th_no |th_oven_yet |th_r_road |th_radio
|th_rub |th_sear_$ |th_small_oven |th_tabl |th_tim_$ |that_and |that_at |that_it_is |that_wrong
|them_Nduration |them_on |then_down |then_down_low |ther_P |ther_is_THING |thin_as |this_out
|this_song |through_th |till_N:few |to_N:oven_now |to_eat |to_f |to_fahrenheit |to_fetch |to_hold
|to_look |to_m_$ |to_m_i |to_medium |to_th_THING |to_thos |to_us_$ |tonight_$ |tonight_$_$
|too_N:few |too_i |too_salty |truss |truth |undo_that_$ |up_her |up_now |up_on |vent |w_U |w_all
|w_ar_us |w_go_$ |want_his |was_U |was_in |was_so |water_is |water_on |way |well_don_my |what_i_am
|what_i_gav |what_w |whatsoever |when_i_tak |when_they |wher_i |whil_you |why_i |will_b |will_tak
|will_you_i |with |with_th_fan |with_th_whol |won |worm |wreck |y |yet_i |you_can_get |you_how
|you_learn |you_so |youngest |your_teeth
-18 @120.0| @5.0| @86.3| DISH_another_Nduration| DISH_ar_up| DISH_ar|nowher DISH_can| DISH_caught|
DISH_did| DISH_dinner| DISH_is|U DISH_is|all DISH_it|is DISH_never| DISH_or| DISH_peel|every
DISH_so|scratch DISH_th_THING| DISH_that| DISH_th|oven DISH_timer|Nduration DISH_under| DISH_will|
DISH_w| DISH|DISH_on DISH|THING_DISH DISH|THING_as DISH|ar_THING DISH|ar_in DISH|ar_not DISH|at_N:core
DISH|butter DISH|can_go DISH|for_DISH DISH|i_mean DISH|in_it DISH|is_finish DISH|is_ready DISH|is_still
DISH|not_ready DISH|or_th DISH|out_$ DISH|so_DISH DISH|they_can DISH|under N:core_and|no N:core_by_N:few|
N:core_can| N:core_do| N:core_then|N:core N:core_ther| N:core_this| N:core_without| N:core|medium
N:core|over_N:core N:core|would N:core|you_tell N:few_all| N:few_b| N:few_cook|now N:few_for_N:few|
N:few_if| N:few_left| N:few_mor|guest N:few_not|N:few N:few_or| N:few_plac| N:few_roast| N:few_r|on
N:few_they_ar| N:few_will| N:few_you| N:few|adult N:few|at_tabl N:few|away N:few|bum N:few|bum_on
N:few|cook N:few|gas N:few|hav_turn N:few|high N:few|kniv N:few|nil N:few|past N:few|peopl_N:few
N:few|rib_Nweight N:few|seat N:few|shy N:few|step N:few|still N:few|ston N:oven_is| N:oven_it|
N:oven_right| N:oven_with| N:oven|for_dinner N:oven|mor N:oven|or_N:oven N:oven|sharp N:some_DISH_peel|
N:some_for| N:some_hot|turn N:some_under| N:some|even N:some|lat N:some|off N:some|or N:some|percent
N:some|person Nclock_U| Nclock_U|th Nclock_in| Nclock_it_is| Nclock_i| Nclock_so| Nclock_w_want|
Ndate_dinner| Ndate|in Ndate|in_th Ndate|roast Ndegrees:few|high Ndegrees:oven_and| Nduration_THING|is
Nduration_ago_i| Nduration_ago|sorry Nduration_alarm| Nduration_at| Nduration_start| Nduration_th_THING|
Nduration_w| Nduration_you| Nduration|and_a Nduration|back_$ Nduration|front Nduration|front_door
Nduration|i_would Nduration|they_will Nduration|timer Nduration|to_get Ngas-mark|now_$ Nweight_THING|
Nweight_THING|THING Nweight|near Nweight|near_enough P_P|is P_ar| P_ask| P_at| P_b|back P_got|
P_go| P_i_am| P_in_law| P_insist|on P_is_P| P_is_help| P_is|P P_is|not P_it| P_left| P_put|
P_said| P_to| P|U_want P|down P|gav P|jo P|left P|say_th P|us THING_N:core|at THING_Ndegrees:few|
THING_THING|for THING_U|no THING_any| THING_can| THING_hang_on| THING_has| THING_how| THING_if|
THING_is_caught| THING_is|Nweight THING_must_b| THING_or| THING_out|oven THING_over|th THING_said|
THING_sh| THING_tell| THING_th_DISH| THING_then| THING_th|tabl THING_when| THING_w| THING_yes|or
THING|DISH_instead THING|THING_Nweight THING|all_right THING|at_N:few THING|back THING|count
THING|for_Nduration THING|full THING|in_ic THING|say THING|slip THING|test THING|till THING|would_b
U_U|is U_go| U_is_hav| U_is|P U_of_th| U_over|th U_th|N:few U_w| U|bit U|keep U|not U|on_DISH
U|r U|th_Nduration U|th_P U|that_green ^_DISH|hit ^_DISH|is ^_DISH|it ^_N:core_U| ^_N:core|N:oven
^_N:core|insid ^_N:few_no| ^_N:few|oven ^_Ndate|w ^_Ndegrees:core|it ^_P_is| ^_P|and ^_THING_has|
^_THING_m| ^_THING|on ^_^_after| ^_^_anyth| ^_^_burn| ^_^_by| ^_^_cook| ^_^_cover| ^_^_found|
^_^_fus| ^_^_has| ^_^_hob| ^_^_internal| ^_^_load| ^_^_lost| ^_^_mov| ^_^_noth| ^_^_open| ^_^_remember|
^_^_scratch| ^_^_somewher| ^_^_stand| ^_^_stuff| ^_^_tabl| ^_^_warm| ^_^_whatever| ^_^_whos|
^_after| ^_anyth| ^_burn| ^_by| ^_cancel_DISH| ^_convection|is ^_cook| ^_cor|is ^_cover| ^_did_P|
^_found| ^_fus| ^_got_a| ^_h_said| ^_has_P| ^_has| ^_help|ther ^_hob| ^_hold|th ^_how_THING|
^_how_hot| ^_i_don| ^_i_got| ^_i_never| ^_i_stuck| ^_internal| ^_is_N:few| ^_is|P ^_it_THING|
^_it|weigh ^_i|reckon ^_i|weigh ^_kilo|is ^_knock|th ^_load| ^_look_lik| ^_lost| ^_lunch|Ndate
^_mak_dinner| ^_mov| ^_my_cooker| ^_m|oven ^_noth| ^_nowher_near| ^_no|n ^_ok|P ^_ok|THING
^_open| ^_preheat|is ^_remember_when| ^_remember| ^_scratch| ^_sh_is| ^_shall_w| ^_skip|that
^_somewher| ^_so|my ^_stand| ^_start|THING ^_stop|count ^_stuff| ^_tabl| ^_th_butter| ^_th_last|
^_that_DISH| ^_that_THING| ^_warm| ^_what_do| ^_whatever| ^_whos| ^_would_it| ^_w|could ^_w|skip
^_you_heard| a_U|for a_bad| a_bit_raw| a_bit|of a_drop| a_gas| a_list| a_low| a_nois| a_pregnant|woman
a_shout_in| a_shout|when a_timer|for a_we_bit| abl_to| about|my_oven about|that absolutely|not
add_Nduration|to add|Nduration_to after| after|that_$ again|i_had again|ther ago_i| ago|it_was
ago|sorry ajar|for alarm_in|Nduration alarm_is| alarm|for alert|at_N:core all_b| all_i| all_my_THING|
all_right|in all_sort|on all_th|sam allergic_to| all|in_th all|out already_i_mad| already_ti|
already|peel alway_run| alway|has am_Nduration|off am_i|wait am_tell|you am_th| am_us| ambulanc|
amount| am|head am|pull am|put_th am|skip am|skip_th an_alarm_for| and_N:few_mor| and_THING|THING
and_ar_w| and_cook| and_did| and_get| and_hav| and_how_long| and_i_did| and_it_was| and_mak|
and_no_no| and_not|N:few and_no| and_no|DISH and_on|th and_slow|then and_th_U| and_th_number|
and_they_ar| and_th|DISH and|DISH_DISH and|DISH_ar and|P_is and|ar and|b_quiet and|cut and|did_i
and|do_not and|guest and|h_is and|if and|is_it and|new and|noth and|rar and|reckon and|roast_DISH
and|should and|th_P and|that_was and|they_ar and|well ankl| anyth_i| any|good any|mor ar_N:few|cook
ar_N:few|short ar_boil|away ar_go| ar_her|U ar_lik| ar_on|N:core ar_th|run ar|N:few_$ ar|com
ar|leav ar|look_at ar|mak ar|starv as_my| ask|you_$ ask|your ask|your_P as| as|w at_N:core_so|
at_N:core|for at_N:few_so| at_N:oven|ft at_Nclock_th| at_th| at_th|half at|N:core_or at|N:oven
at|N:oven_metr at|Ndegrees:oven at|my_P at|th_DISH at|th_half at|this away_i| away|with a|THING_is
a|body a|decent a|list a|pan a|power_cut a|right a|stick a|taxi a|timer a|touch b_hav| b_her|till
b_saf| back_it| back_w| back|down back|in_a back|up bad_it_is| bang_on|N:core been_at_it| been|Nduration
been|go befor_th_phon| befor_that| befor|Nduration_$ befor|th_DISH beg|pardon behind_at| behind|th_THING
besid|th between|N:few between|N:few_and bit_is| bit_i| bit_of_gristl| bit_of_sirloin| bit_over|
bit_raw| block|and blood|pressur boil|away bon_and| bon_i| bon|Nweight_still bon|in_Nweight
born|in born|in_a boss|is bother|with both|sid bottom|oven br_it_to| brb_Nduration|front brought_th|oven
brought|N:few brown_it|first bum| burnt|th butter_U| butter_can| butter|was by_N:few|should
by_Nduration|th by|N:few_$ by|Nduration_$ b|Nduration_or b|careful b|don b|eat b|gon b|gon_Nduration
b|pink call_off| call|for call|out_N:core cam|off can_not|remember can_not|stand can_not|w
cancel|th_roll cancel|that can|P can|i_DISH can|my can|th_P can|throw carol| carri| carry_a|
carry|a_pen carry|th carv_with| carv|with chang_my| chang_to| chang|to check|Nduration check|Nduration_ago
check|with check|with_th chew|it chok_on| chuck_out| clock_for|Nduration clock|for_th cold_i|
cold|on_th colour_on| com_first| com_in|Nduration com_to_N:core| com_up_at| com_w| com|again
com|through convection|is conventional_heat| cook_in| cor_of| cor|of could_w| count_m| count|Nduration
cousin|ar cross_out| cut|them d_dong| day|N:few dead|it_will degre_c_so| dev_is| dey| dial|say
did_not|catch did_th_THING| did|h did|her did|that dinner_at|N:few dinner_is_at| dinner|Nduration_later
dinner|for_Nclock din|at_Nclock disregard| di|and_th do_and| do_everyth| do_in| do_not_bother|
do_not_w| do_not|do do_not|speak do_not|start do_not|tak do_th_roast| do_this|th do_us| dock|
dog|i_will dog|out don_all| don_it|is don_with|th dong| don|w_U don|with_that door_at| door_with|
door|at door|on down_as| down_by| down_is| down_to| down|at_Nclock down|by down|from down|is_N:oven
down|to down|to_Ngas-mark down|to_th do|b do|dinner do|for do|i_cover do|not_b do|pink do|th_DISH
do|us do|you_think do|your drink_in| drop_to|N:core drop|that drop|to dry|as duty_and| early_and|
earth| eat_and| eat_lik| eat|Nduration_later eat|it_$ eat|lat electricity|is end_and| end_i|
enough_and| enough|for_N:few everyth_on| everyth_tak_m| every|Nduration expect_so_mind| explain_m|
explain| e| fac|is fahrenheit|i_do fallen|down far_off| fat_THING|U fetch|th finger_off| finish|by
finish|your fin|by fin|by_m fir_and| fir_up| first_and| first_guest| first_lot| fix_to| flatmat|
flower| folk_say| for_N:few|of for_Nduration|whil for_P|who for_a_Nclock| for_m|U forget_th|Nduration
forgot_to|tell for| for|P_$ for|his for|lunch for|som found|a fourth| french|th fridg_is| from_my|
from|N:oven from|you gav_it| gav_th| gav| gav|you get_to| giv_m|Nduration glass|on go_to_DISH|
go_well| go_with| god_P| god|ther god|ther_is gon_to| gon|U gon|in gon|walkabout got|no_DISH
go|on_th go|to grab|th great|P green_DISH|my grey_band| grey|right_through gristl| grow| h_can|
h_got| h_want| had_slip| had|not halfway| half|DISH half|DISH_in half|th_DISH happen_if_i|
happen_if| has_been_on| has_com_over| has_fallen|down has_gon|off has_it| has_no| has_reach|N:core
has|a has|been has|crept has|gon_to hav_U_th| hav_chang| hav_got|DISH hav_had| hav_it_on| hav_left|
hav_remov|th hav_taken| hav|N:core_in hav|her hav|no_THING hav|not_i hav|put_DISH hav|roast
hav|set hav|set_it hav|shov hav|shov_th hav|that hav|w_got headcount|has hear|th heat_to| heat|no_sear
help_and| help_in| help_m|out help|yourself her_already| her|THING_is her|down her|down_to
her|turn high|do high|heat himself|is him|a his_P|is his_medium_well| his_new_P| hit_N:core_and|
hit|N:core_$ hit|th hold|on holler_at|N:core hot_is| hot|dog hot|for hot|turn hot|turn_out
how_com|th how_do_this| how_far_off| how_hot_is| how_is_it| how_long_it| how_long|is how_many_kilo|
how_old| how|should hurt| h|say i_THING_th| i_am_th| i_am_us| i_am|pull i_am|skip i_bast| i_burnt|
i_burn| i_drop| i_even| i_gav|you i_go_to| i_hav_mad| i_hav|set i_hav|shov i_look|at i_mean_th|
i_peel| i_pull| i_put_in| i_say|N:core i_switch| i_talk| i_ti| i_want_th| i_want|th i_wash|
idea|of if_that| ill_b| in_DISH_DISH| in_N:some_and| in_Nduration|back in_is| in_not| in_th|middl
in_th|small inform|m insid_it_is| insid|temperatur_is insid|th_oven insist_on|DISH instead_of|
instruction_for| internal_is| internal_is|N:core internal|temperatur in|a_good in|at_Nclock
in|for in|onc in|sh_go in|th_THING in|th_car in|th_end in|th_left in|th_roast is_N:core|medium
is_N:core|over is_N:few_off| is_N:few|bon is_THING|is is_a_N:few| is_a_fan| is_all_go| is_at|N:few
is_a|vegan is_back|in is_back|to is_becom| is_bring|a is_com|too is_cover|in is_fall| is_hav_it|
is_help_m| is_her_U| is_hot_DISH| is_in|flam is_it_com| is_it_on| is_it|tim is_mak| is_medium|rar
is_not|U is_not|cook is_not|even is_not|got is_nowher| is_over_N:core| is_peel| is_pink_THING|
is_pink|ok is_roll| is_sh| is_th_DISH| is_that_th| is_that|a is_that|ok is_th| is_was| is_way|
isla_is| isla|is is|Nclock_and is|U_and is|U_th is|an is|any is|ask_for is|asleep is|back is|bon
is|boneless_Nweight is|do_a is|doabl is|fix is|gon is|gorgeous is|got is|land is|lik is|look
is|mind_th is|my_P is|no_longer is|not_at is|not_finish is|not_out is|open is|out_for is|overcook
is|pend is|pour is|pull is|read_N:core is|salt is|scream is|slic is|stand is|still is|ston
is|tak_N:few is|that is|took is|us is|vanish is|warm is|when_it is|wher is|your it_all_right|
it_all| it_alway| it_at|N:few it_back|in it_by| it_down|a it_every| it_for_Nduration| it_in_too|
it_is_already| it_is_back| it_is_too| it_is|Ndate it_is|go it_is|mad it_is|thin it_is|too it_look|
it_rest|now it_slic| it_stand| it_to|N:oven it_was|N:core it_went| itself|off it|and_then it|and_yell
it|at_N:some it|been it|cam it|go_$ it|in_a it|is_not it|look_lik it|rain it|ready it|show
it|then_$ it|to_rest it|twic it|went it|wer i|ask i|buy i|can_not i|cook i|crank_it i|do_it
i|do_not i|do_that i|don i|hold i|lik i|misread i|peel i|promis i|salt_it i|switch_off i|typ
i|us i|whack i|wonder i|wrot i|yank joan_is| joan|is joint_do| joint|in joint|to jump|Ndegrees:some
jump|over keep_warm| keep_watch| keep|go_$ keep|her kick_in| kilo_for| knock_off| knock|it
know_how| know_th| kumara| ladl| land|at last|Nduration_$ later_and| later_what| lat|as lat|they
leav|th left_and| left|in_this less|than let_him| let_it_go| let_it|rest let_us|go let_us|not
let|th_cat li_on| light|ar likely| lik|sho lik|ston lik|well lik|you_said liv|room long_hav_you|
long|to look_and| look_lik|w look|at_that look|lik_$ loosely|in los_th| lot_and| lot|ar lov|
lower_it_to| lower|oven low|heat lumpy|as lunch_Ndate|at lunch|Ndate_Nclock m_DISH| m_at| m_a|
m_down|Nduration m_i| m_know_when| m_when|N:core m_with| mac|and mac|and_DISH mak_N:few|DISH
mak_it|medium mak_that_Nduration| mak_that|N:few mak_with| mak|th mak|that mammy| many_kilo|
many|DISH may|i meant_to_b| meant|N:core_$ mean|by medium_rar|is medium_rar|or medium_sh| menu_tonight|besid
middl|when minut_on| minut|on mor_guest|com mor|Nclock mor|lat mor|minut mor|peopl most|of
mov_it_up| much|r must_away_for| my_P_do| my_P|do my_THING_on| my_THING|do my_first| my_next|
my_old| my|DISH_is my|DISH_split my|P_has my|half my|mind my|oven_run m|back m|fahrenheit_$
m|finger m|lik_i m|onc_it m|then m|to_do m|when n_that| near|th needl|is nevill| new_dinner|tim
new_th| next_door|is next|weekend nix| nix|th no_Nweight| no_Nweight|not no_P|i no_THING_for|
no_THING_no| no_THING|or no_fan|on no_fresh| no_i_said| no_that_is| no_tim|to nobody|can nobody|eat
not_Nduration| not_hav_th| not_hav|DISH not_trust_this| noth_to| noth|is notion| not|breath
not|cover not|don not|light not|mad not|manag not|pull_it not|stand not|tak_it not|that_on
not|want now_or| now_w| no|DISH_tonight no|mor_$ no|str nut_and| n|Nduration n|THING n|m n|th
of_DISH_in| of_DISH|do of_DISH|in of_DISH|w of_gristl| of_min| of_them|got off_conventional_heat|
off_our| off_this| off_to|N:oven off|conventional off|gluten off|it_$ off|w_go of|all of|blood
of|gas of|it_is of|roast of|str of|that ok_P| ok_so|N:core ok|so_it ok|what old|THING on_all|
on_at| on_do| on_eat_at| on_th|N:some onc|and on|N:core_and on|N:few_$ on|THING_$ on|about
on|ar on|at_last on|target on|th_THING on|th_back on|th_cooker on|th_dial on|th_floor on|th_joint
on|th_list on|th_porch on|thos open_and| open_th| or_a| or_do_i| or_do| or_i| or_som| oreb|
or|do or|is_ther or|no_$ or|so or|what_$ other_on|is other|half_is out_by_mistak| out_i| out_our|
out_th_THING| out_they_ar| out_th| out_th|THING out_to| outta_th| out|befor_it out|cold out|her
out|it_com out|oven_is out|th_fridg out|yet oven_and| oven_has_gon| oven_not| oven_off|to oven_say|
oven_was| oven|Ndegrees:oven oven|Nduration_back oven|THING_hang oven|alway oven|and_N:few
oven|b oven|back_on oven|dial oven|display oven|for_th oven|has oven|light oven|show oven|took_ag
overcook|it_$ over|Nduration over|from over|th_top over|what ow|my pan|now pan|on park|at pay_m|
peel_and| peel_i| pencil_in|DISH pencil| peopl_ar_com| peopl_is| peopl|is person|is petrol|
phon|to pictur|th plac_and| plac_it| plan|on plat_and| plus|th possibl_to| pour_out| pregnant|woman
preheat|to_N:oven proper|DISH proper|THING pull_at| pull_at|N:core pull_for|medium pull_it|this
pull_th_THING| purchas| push|dinner_back put_N:few|timer put_him| put_it| put|th_P put|th_oven
queu| r_N:core|in rar_or| rar|and_medium rar|as_you rather_than| raw|DISH raw|insid read_th|
ready_and| read|you reckon|you ref| remember_m| remember_when| remind_m_what| remind_us| remov|it_$
repair| repeat|that rest_and| rest_on| rest_under| rib_N:few|bon ric_cooker| right_for| right_that|
right|at right|now_$ right|on_th right|through risk| roast_DISH_ar| roast_DISH|in roast_N:few|
roast|on rock_solid| roll_back| roll|up rop|in ruin|it_$ r|or saf_for| saf|for salt_do| salt_go_on|
salt_it|last sam_as| sam|tim sat_in| sat_out| sat|at sat|on sat|out say_N:core_and| say|someth
schedul|green schedul|green_DISH school_and| scor|in scratch_th| se_th| se_what| sear_it|is
second|oven_is second|timer seen|th sens| set_a|timer sh_is|not sh_will| shall_w| shelf_is|
shelf_of| shell| shop_Nduration|top shop|for should_b_ready| should_hav_seen| should_i_do|
should_sh| shov_it| shov_th_DISH| show_m|fahrenheit show_m|how shuck| sh|say sid|THING sid|too
sinc|Nclock_$ sit_ther| sit|down_Nduration slow|then slump_over| smok_alarm_is| smok_is| smok_pour_out|
smok|com_out so_P| so_and| so_call_it| so_h| so_mind| so_noth| so_th_THING| soon|as sorry_and|
sorry|P sorry|i_meant sorry|to sort_th| sort|on sort|on_that sound_lik| sound|lik so|N:core_$
so|N:core_in so|go so|good_$ so|h_is so|i_can so|it_went so|mak_it so|scratch so|scratch_that
spark| special| start_and| start_to| starter_at| stick| still_at| still_cold| still|wait still|wait_on
stopwatch|for stopwatch|for_th stop|count stop|talk_$ storm_knock_th| storm|knock storm|knock_th
straight|in_th strik|th strung| str|is stuff_it_with| stuff_th| sub| such_a| suppos|w sur_you|
sur|you s|out tabl_it_is| tabl|and_help tabl|at_N:few tabl|yusuf taken|out taken|th tak|N:few
tak|back talk|m tall| tap|run tap|run_$ teach|m tell_m|what tell_th| tell|N:core tell|N:few
tell|him temperatur_do| temperatur|for temperatur|has temperatur|is_N:core th_DISH_it| th_DISH|alarm
th_DISH|off th_Nclock| th_THING_at| th_THING_b| th_U|bit th_bottom|shelf th_box| th_cook| th_cousin|ar
th_crew| th_dial|to th_dog|out th_fan|set th_ferry| th_first_th| th_gas| th_good_THING| th_green|
th_helper| th_hot|THING th_joint|to th_littl| th_lower| th_middl|when th_oven|b th_oven|sinc
th_oven|was th_read| th_r| th_shop_list| th_shop|list th_tabl|yusuf th_tap|run th_timer|off
th_tim|w th_under| than_i| that_THING|THING that_is|a that_is|all that_is|doabl that_no| that_was_N:core|
that|ok that|w_hav their|N:few their|N:few_of them|got them|got_her them|off_$ then_and| then|N:core
then|h ther_in| ther_is_a| ther_is|non ther|Nduration_ago ther|w_go ther|will_b thes| they_call|
they_hav_a| they_hav_got| they_reckon| they_still| they|got they|lost they|want they|will thickest|
think_it_is| think_it| third|on this_i| this|b this|for this|out thought_i| through|no_sear
th|DISH th|DISH_Nduration th|DISH_cream th|DISH_you th|Nduration_N:few th|P_has th|bell th|biscuit
th|boss th|bottom_shelf th|county th|fan th|first_N:few th|gas_has th|glass th|hang th|instant-read
th|list th|littl_on th|loo th|middl_shelf th|other th|oven_has th|oven_pack th|quick_on th|r
th|roast_has th|run_lat th|sear_is th|step th|tabl_is th|temperatur th|thickest_part th|to
th|window th|with tim_you| timelin| timer_it_is| timer|for_Nduration timer|never timer|never_mind
timer|on_th tim|for_th tim|out ti|back_on to_N:core|in to_N:oven|on to_begin|with to_check|
to_go|so to_salt|it toddler_eat| tom|is tonight|at tonight|at_N:few tonight|besid tonight|besid_th
too|full too|quick_$ too|salty top_and| top|and_tail total|N:few touch|anyth touch|that to|
to|Ndegrees:oven to|begin_with to|cry to|fahrenheit to|hav to|her to|let to|m_i to|medium_well
to|pull_it to|rest to|salt_it to|tent to|th_P to|their to|this to|ti to|wash trim_th_fat| trim|it_$
trust_this| turn_on|th turn|over ty_it|is under_whatever| unless|it unless|it_is up_at|Nclock
up_to|N:few up_to|N:some up_what| up|already up|th_wall us_all| us_and| us_my| us|eat_Nduration
us|go vet| w_ar_all| w_ar_at| w_ar|Nduration w_do_not| w_do|not w_eat|Nduration w_eat|lat w_mak|
w_open| w_will_hav| w_will|DISH wait_for| wait|now wak_m_in| wander| want_his_medium| want_m|
want_to_mak| warn_m| was_N:core_in| was_Nduration| was_behind| was_finish| wash|up was| was|N:core_$
was|wrong water_on| way_and| way_out| way|th_DISH we_bit| weigh|in well_so| well_th| well|th_rest
went_for| went_in|at went_in|th wer|not what_ar| what_differenc| what_ingredient| what_i| what_temperatur|is
what_tim|do what_would| what|a_faff what|ar_you what|degre what|h what|happen what|if_w what|is_ther
what|oclock what|you_understand when_folk_say| when_is_it| when_th_THING| when|will_it wher|it
which_timer| which_timer|never which|bit whil|i_was whol|th who| who|ar who|do why_ar| why|would
will_b|th will_do_without| will_do|th will_handl| will_no| will_sit_down| will|carv will|it
will|se win|in wip_it|all wireless| wis| with_no_DISH| with_that|w without_DISH_so| without_th_DISH|
without|a without|fan with|fork with|her with|medium with|salt with|th_U with|th_str work_and|
work_on_this| would_you|look would|that wrong|number w|carv w|eat_at w|get w|let w|mov w|on_track
yes_so| yes_that_is| yet_i| yet_my| you_at| you_can|get you_do_th| you_get| you_hav_got| you_hav_to|
you_keep| you_look| you_r| you_said_Nduration| you_se_what| you_should| youd| your_P_is| your_hair|
your|plan your|sho your|turn you|add you|go_$ you|hav_to you|mind you|never you|now |@0.4 |@1.5
|@119.1 |@120.3 |@122.5 |@125.7 |@13.4 |@136.3 |@141.5 |@18 |@18.2 |@22.4 |@32.4 |@35.3 |@37.3
|@38.8 |@5.5 |@53.0 |@58.3 |@59.8 |@71.3 |@78.4 |@79.4 |@83.1 |@85.4 |@89.0 |@90.4 |@92.0 |@94.5
|@94.6 |DISH_DISH_on |DISH_DISH_to |DISH_THING_$ |DISH_add |DISH_ar_boil |DISH_ar_ready |DISH_into
|DISH_into_th |DISH_sh |DISH_should |DISH_twic |DISH_with_it |N:core_and_N:few |N:core_and_what
|N:core_has |N:core_whil |N:core_yet |N:few_dinner |N:few_less_$ |N:few_short |N:few_so |N:few_sorry
|N:few_step |N:few_that_is |N:some_for_th |N:some_less |Nclock_so |Ndegrees:some_under |Nduration_after
|Nduration_ago |Nduration_lat_and |Nduration_traffic |Nweight_still_U |Nweight_what |P_i_am
|P_is_eat |P_us |THING_N:few_high |THING_Nweight_$ |THING_THING_it |THING_U_i |THING_after
|THING_anywher |THING_hang |THING_is_split |THING_sorry |THING_to_b |U_P_$ |U_THING_$ |U_did
|U_is_expect |U_it_up |U_of_her |a_N:some |a_bit_$ |a_chanc |a_cold |a_faff |a_fair |a_no |a_notch
|a_pen |a_plat_$ |a_right |a_tick |about_it |after_all_so |after_this_$ |ag_$ |ag_$_$ |again_N:core
|again_from_th |ahead_$ |ahead_$_$ |alarm_i |am_i_get |amount_of |an_U |and_DISH_yes |and_THING_and
|and_a |and_heat |and_rest_$ |and_tail |another_plac |ansel |any_$ |any_$_$ |any_pink |ar_don
|ar_fin |ar_lik |ar_look |ar_on_th |ar_out_now |ar_peel |ar_w_look |around |as_if_i |asid |at_N:core_for
|at_N:few_on |at_Nclock_P |at_Nclock_on |at_Ndegrees:oven |at_Ndegrees:some |at_THING |at_last_low
|at_th_bon |at_th_centr |at_th_shop |at_th_wall |b_don |b_for |b_ok |b_saf |b_with |back_in_U
|back_in_at |back_that_last |bedroom |befor_N:core |befor_i_carv |befor_th |befor_w_eat |behind_P
|best_$ |best_$_$ |bit_$ |bit_$_$ |blank |board_$ |board_$_$ |bottl_of |br_it_to |brok |brown_on
|burn_$ |burn_$_$ |bust |by_Ndate |by_Nduration_$ |by_now_$ |cam_off_th |can_not_tak |can_tak
|card |carv |chas |chuck_out |coeliac |com_Nduration |com_at_N:few |com_out_in |com_over |com_th
|cooker |cork |cornstarch |countdown |cream_do |cream_in |cri |cross_th |custard |cut_up |daft
|dal |deal |dey |dinner_N:oven |do_i_slic |do_not_it |do_you_want |don_P |don_all |don_now
|door_at |down_$ |down_$_$ |down_P |down_i_can |down_till |down_with |downstair |dramatic |drop_th_whol
|drum |dry_$ |dry_$_$ |eat_$ |eat_$_$ |enough_DISH |even_mean |every_Ndate |every_slic |everyth_you
|everywher_$ |everywher_$_$ |f_N:few |f_th |family_$ |family_$_$ |fat_and |feel_$ |feel_$_$
|finish_that |fionn |first_colour |fool |for_dinner_and |for_th_second |for_today_$ |fresh_DISH
|from_U |from_scratch_$ |from_th_record |from_work |front_door |fryer |full_of |funny_$ |funny_$_$
|get_f |get_her |get_on |glass_THING |go_it |go_to_b |gon_Nduration_and |got_a_THING |got_for
|got_left |grac_$ |grac_$_$ |gram |greasy |green_DISH_U |h_get |h_is_not |had |had_no |had_th
|had_to_go |half_is |has_to_b |hav_$ |hav_$_$ |hav_not_been |hav_not_gon |hav_shown |hav_taken
|hav_walk |hav_walk_in |heat_no |her_Nduration |her_own |him_at |his_nam |hoover |hot_finish
|i_gav |i_hav_$ |i_slic |i_took_out |in_Nduration_it |in_Nduration_that |in_Nduration_what
|in_Nduration_would |in_Nweight |in_and |in_butter |in_fridg |in_it_and |in_m |in_now |in_on
|in_th_freezer |in_th_warm |insid_and |instead_and |iron |is_N:oven_$ |is_a_lot |is_and |is_bleed
|is_blunt |is_bon |is_bring_a |is_bubbl |is_chok |is_expect |is_for_th |is_fre_from |is_gorgeous
|is_grey |is_heat |is_hold |is_join |is_lazy |is_lit |is_min |is_mov |is_not_go |is_not_on
|is_not_th |is_out_of |is_pend |is_smok |is_someth_i |is_stay |is_still_at |is_ston |is_th_fat
|is_th_number |is_that_in |is_vegetarian_$ |is_veggi |is_went |it_Ndate |it_at_Nclock |it_at_all
|it_go_$ |it_grey |it_is_bleed |it_is_driv |it_is_pain |it_is_smok |it_loosely |it_medium |it_not
|it_open |it_show_N:few |it_sinc |it_stay |it_up_$ |lack |lat_my |lawyer |least |lik_in_th
|lin_$ |lin_$_$ |littl_THING |load_$ |load_$_$ |look_N:core |look_befor |lotti |low_$ |low_$_$
|m_Nduration |m_again |m_so |m_someth |m_th_THING |mak_U |mash |mat |match |meant_to_b |must_th
|my_THING_ther |my_glass_$ |my_phon |n_m |neither |never_mind_get |no_N:some |no_show |nos
|not_look |not_ready_yet |not_tell |not_w |not_well |now_at_N:oven |now_m |nowher_to |number_for
|number_is |nut_$ |nut_$_$ |oclock |of_$ |of_$_$ |of_Nclock |of_Nweight |of_it_$ |of_rib |of_roast
|of_thos |of_water |off_DISH |off_at_Nclock |off_in_th |off_it_is |off_th_DISH |off_th_heat
|off_your |ok_instead |ok_instead_of |ok_or |on_N:some |on_Nduration_ago |on_all |on_at_th
|on_by_Nduration |on_everyth_$ |on_night |on_not |on_th_boil |on_th_counter |on_th_fat |on_th_instant-read
|on_th_pan |on_th_sticker |on_th_timer |on_that_front |on_this_th |on_to |on_yet |onc_th |open_for
|or_DISH_whatever |or_THING |or_thereabout |other_way |ought_to_b |ounc |out_N:few |out_Nduration
|out_hot |out_lik |out_of_this |out_this |oven_from |oven_how |oven_is_alway |oven_is_fre |oven_it
|oven_will |over_i |over_what |overnight_$ |overnight_$_$ |pass_out |past_th |peel_and |pend
|peopl_in |pink_for |port |proceed |programm |purchas |put_$ |put_$_$ |rang |rar_U |rar_i |rar_th
|rar_what |rest_th |rib_of |right_for |roaster |rop_in |rubbish |run_back |run_back_in |s_out
|sat |say_it_again |se_th |second_th |sentenc |set_fir |set_fir_to |sh_must |sherry |sho_$
|sho_$_$ |shop_$ |shop_$_$ |should_i_panic |shredd |silent |sinc_last |sinc_th_U |sink |sit_on_th
|sit_ther_$ |sky |sleep |slow_$ |slow_$_$ |slush |so_h_is |so_much_$ |so_slid |sp |spoil |spr
|start_at_N:few |start_th_sear |steer |still_has |stomach |storm_knock |storm_knock_th |stream
|summer |swallow |switch_on |tak_N:few_tim |tell_what |telly |temperatur_all |temperatur_all_th
|temperatur_th_whol |temperatur_to |tenderis |th_DISH_P |th_DISH_so |th_DISH_this |th_DISH_w
|th_N:core |th_Nduration_N:few |th_P_to |th_THING_of |th_U_for |th_couch |th_county |th_cupboard
|th_dairy |th_day_befor |th_dead |th_dog_$ |th_fat_$ |th_green_N:few |th_headcount |th_kettl
|th_knob |th_left_$ |th_morn |th_motorway |th_next |th_next_step |th_night_befor |th_on_th
|th_option |th_oven_glov |th_oven_sinc |th_plat_$ |th_pub |th_rar |th_rest_do |th_roast_out
|th_sam_$ |th_sea |th_second_it |th_skin |th_street |th_stuff |th_way_through |th_worktop |that_a
|that_by |that_go |that_off |that_out_$ |that_to |that_up |thaw_$ |thaw_$_$ |them_and |them_back
|then_and |ther_go |ther_in |ther_now_$ |ther_on |ther_was |they_still |this_U |this_go |this_old_girl
|this_rental |this_second_$ |this_tim |this_week |till_Ndate_$ |tim_U |tim_to |to_N:core |to_N:oven_how
|to_br |to_dinner |to_end |to_giv |to_hav |to_medium_well |to_my_P |to_preheat |to_stand |to_start
|to_tak |to_th_DISH |toilet |too_high |too_low |took_a |took_ag |tractor |trifl |trip_and |trivet
|turn_around |ty_th |under_N:core |under_it_$ |up_flam |up_i |up_in |up_it |up_lik |up_ther
|up_w |vot |w_ar_eat |w_go_th |w_in |w_said_$ |w_skip |w_still |wait_now |walkabout |wall |warm
|was_N:oven |weather |well_and |went_in_at |what_exactly |what_h |what_i |when_N:core |when_i_slic
|when_it_hit |when_you_se |whil_it_rest |whip |whol_tim |will_b_THING |wink |with_him |with_it_is
|with_th_P |with_th_fat |with_us |without |without_a |without_fan |without_m |without_th |would_do
|would_eat |written |yard |you_a |you_and |you_back |you_i_am |you_th |your_oven |your_plan
-17 @1.0| @102.2| @108.5| @134.1| @137.8| @141.2| @28.6| @42.5| @48.1| @52.5| @64.6| @79.2|
@8.2| @81.7| @94.6| @99.2| DISH_DISH|went DISH_N:few_DISH| DISH_U|with DISH_and|i DISH_ar_all|
DISH_by| DISH_from| DISH_hav_not| DISH_instead|of DISH_look| DISH_my| DISH_m|alon DISH_on|Nduration
DISH_out|of DISH_roll|ar DISH_so|DISH DISH_so|i DISH_tast| DISH_whil| DISH|DISH_all DISH|DISH_for
DISH|DISH_no DISH|DISH_still DISH|U_with DISH|ar_burn DISH|ar_peel DISH|cam DISH|from DISH|go_in
DISH|hav_caught DISH|hit DISH|hit_th DISH|in_yet DISH|is_all DISH|is_lumpy DISH|is_on DISH|it_alon
DISH|n_to DISH|of DISH|start_now DISH|this DISH|went_in DISH|with_it DISH|would_go N:core_DISH|
N:core_and_DISH| N:core_and|DISH N:core_for|ag N:core_how_long| N:core_is_that| N:core_is_what|
N:core_last| N:core_too| N:core_under| N:core_when| N:core_which| N:core_will| N:core_w| N:core|and_N:core
N:core|and_a N:core|lik_Nduration N:core|lik_th N:core|medium_rar N:core|on N:core|s N:core|s_out
N:core|well_ill N:core|when_w N:few_Nduration_ago| N:few_THING_th| N:few_about| N:few_bon|from
N:few_bon|on N:few_do_not| N:few_do| N:few_for|dinner N:few_good| N:few_hungry| N:few_i_am|
N:few_i_hav| N:few_in|th N:few_littl| N:few_low|fyi N:few_medium| N:few_my_P| N:few_sh| N:few_sit|down
N:few_what|is N:few|Ndate_$ N:few|THING_of N:few|ar_her N:few|below N:few|boner N:few|burner
N:few|letter N:few|or_Nclock N:few|rib N:few|teaspoon N:few|too_much N:oven_is_that| N:oven_or|
N:oven_w| N:oven|Ndate N:oven|Nduration N:oven|in_ther N:oven|lik N:oven|mor_or N:oven|sinc
N:some_on|th N:some|DISH_peel N:some|a N:some|cover N:some|from N:some|sia N:some|with Nclock_befor|
Nclock_for| Nclock_it_was| Nclock_what| Nclock|by Nclock|is_what Nclock|latest Ndate_Nclock|sam
Ndate|dinner_at Ndegrees:core_it_is| Ndegrees:core_on| Ndegrees:core|insid_th Ndegrees:core|now
Ndegrees:few|under Nduration_after|P Nduration_ago_and| Nduration_dinner| Nduration_hav| Nduration_i_am|
Nduration_in|th Nduration_is_it| Nduration_is|th Nduration_i| Nduration_i|reckon Nduration_lat_and|
Nduration_lat|with Nduration_my|P Nduration_not| Nduration_set| Nduration_th_match| Nduration_th|P
Nduration_to| Nduration|after_th Nduration|approximately Nduration|at_N:oven Nduration|back_i
Nduration|back_it Nduration|down Nduration|for_ric Nduration|over Nduration|start_now Nduration|start_th
Nduration|they Nduration|to_th Nduration|top Ngas-mark_for| Nweight_it| Nweight|leg Nweight|leg_of
Nweight|not_N:some Nweight|prim Nweight|prim_rib Nweight|still_U P_can| P_get| P_is_plac| P_is_start|
P_is|N:some P_is|ask P_is|start P_is|still P_is|vegan P_open| P_say_it| P_say|th P_sh_is| P_tell|
P_th_THING| P_that_is| P_turn| P_will_eat| P_will_not| P_will| P|brought P|dot P|for P|has
P|is P|is_THING P|pat P|set_th P|sh_can THING_all_over| THING_anywher|in THING_back|Nduration
THING_clock| THING_do_not| THING_for|U THING_in|Nduration THING_is_still| THING_mak| THING_m|th
THING_not| THING_of| THING_saf| THING_say_th| THING_ther| THING_th|DISH THING_th|quick THING_under|th
THING|don THING|from_th THING|go_in THING|hang THING|insid THING|is_N:few THING|is_off THING|m_th
THING|man THING|no_sear THING|on_my THING|out_$ THING|rar THING|say_N:core THING|say_N:oven
THING|sinc THING|smell THING|stuff THING|th_tim THING|to_finish THING|went U_P|is U_THING_is|
U_b| U_do_not| U_drop| U_hav| U_i_hav| U_is_lot| U_is_sort| U_on|DISH U_sh| U_th_DISH| U_th_dial|
U_well|don U_went| U_with|th U|i_am U|is_N:few U|left U|my_god U|r_DISH U|th_DISH U|th_whol
U|timer_N:few ^_DISH_th| ^_DISH|has ^_DISH|n ^_N:core_not| ^_N:core|in ^_N:core|on ^_N:few|her
^_Ndate|at ^_Nweight|rib ^_P|ar ^_THING_leg| ^_U_say| ^_U|and ^_^_any| ^_^_better| ^_^_brb|
^_^_chang| ^_^_delay| ^_^_did| ^_^_electricity| ^_^_folk| ^_^_for| ^_^_full| ^_^_heat| ^_^_jo|
^_^_mark| ^_^_now| ^_^_oven| ^_^_plat| ^_^_pop| ^_^_raw| ^_^_revers| ^_^_ric| ^_^_start| ^_^_target|
^_^_thos| ^_^_un| ^_^_visitor| ^_^_well| ^_^_without| ^_^_yer| ^_^_your| ^_a_Nweight| ^_absolutely|not
^_alert|m ^_am_i| ^_and|that ^_any| ^_better| ^_brb| ^_call_m| ^_can_P| ^_can_not| ^_can_w|
^_carry_on| ^_chang| ^_check|th ^_convection_is| ^_cor|N:core ^_cor|temperatur ^_could_P| ^_cut|my
^_delay| ^_did| ^_did|P ^_electricity| ^_fir|in ^_folk| ^_for| ^_found_out| ^_full| ^_giv_us|
^_got|N:few ^_green|DISH ^_h_is| ^_hav|put ^_heat| ^_hold|at ^_how_thin| ^_how|did ^_ic_water|
^_if_i| ^_in_U| ^_in_this| ^_in|U ^_in|my ^_is_N:oven| ^_is_P| ^_is_now| ^_is|N:few ^_it_r|
^_it|would ^_i|mad ^_i|slic ^_jo| ^_left_it| ^_look|at ^_m_P| ^_mark| ^_medium_for| ^_no_not|
^_no_on| ^_not|to ^_now| ^_now|is ^_no|sear ^_oven| ^_oven|THING ^_pass_us| ^_plat| ^_pop_up|
^_pop| ^_preheat|to ^_raw| ^_revers| ^_ric| ^_roast_DISH| ^_second|oven ^_serv|Nduration ^_serv|it
^_so_you| ^_start_it| ^_start| ^_stuck|th ^_target| ^_tell|P ^_th_cat| ^_th_door| ^_th_pan|
^_th_plan| ^_th_we| ^_thos| ^_timer|off ^_un| ^_visitor| ^_well| ^_what_th| ^_who_is| ^_why_is|
^_without| ^_yer| ^_you_ar| ^_you_would| ^_your| a_DISH_and| a_THING|THING a_THING|on a_THING|will
a_U|when a_bell| a_bit|pink a_blackout|her a_fir| a_grand| a_li_down| a_nut|allergy a_rib|roast
a_slow| a_stand| a_warn| a_yell| about_my| about_th|DISH across_th| add_roast| add_roast|DISH
add|green add|green_DISH after|P after|th_DISH again_in| ago_and| ahead|or ahead|or_behind
alert_at| all_DISH| all_N:few|of all_carv|up all_cut| all_got| all_in|THING all_medium| all_off|
all_off|Nduration all_right_for| all|go all|good almost| already_i_hav| already|mad alway|run_N:some
am_Nduration| am_do_this| am_hav| am_i|aim am_miss| am_not|do am_not|don am_on_m| am_suppos_to|
am|gon am|leav am|nip_next am|run am|tak an_even| and_DISH|in and_Nduration| and_Nduration|for
and_THING|is and_U_is| and_any| and_call| and_can_i| and_found| and_himself| and_look| and_not|
and_pull| and_sh_still| and_smok| and_tell| and_th_N:few| and_ther_is| and_ther| and_turn_out|
and_went| and_what_tim| and_w| and|Ndegrees:core and|chang and|enough and|get and|half_of and|her
and|is and|is_ther and|knock and|lunch and|mak_it and|medium_rar and|no and|now_it and|pass
and|plus and|shut and|slic and|so_what and|sur and|tent and|th_DISH and|th_guest and|ti and|took
and|top and|w_eat and|wher_do and|wrap any_of| anyth_els| anyth_i_can| anyth_with| anyth|with
anywher|in any|DISH any|idea an|THING ar_N:few_peopl| ar_N:few|person ar_Nduration_off| ar_on|convection
ar_peel|and ar_say| ar_still| ar_stuck_behind| ar_th|DISH ar_w|fin ar_w|on ar_you_N:few| around_th|
around|th ar|THING_on ar|after ar|bang ar|do ar|fresh ar|hav ar|no ar|nowher ar|serv ar|stuck
ar|stuck_on ar|tell as_w|speak ask|how ask|you at_N:core_what| at_N:core|or at_N:few|to at_N:oven_so|
at_Nclock|to at_U|is at_it|all at|N:oven_and at|N:oven_ft at|N:oven_that at|Nclock_N:few at|Nclock_in
at|Nclock_on at|Nclock_sharp at|Nduration_$ at|Nduration_later at|half_past at|now at|th_N:few
at|th_U away|out a|DISH_DISH a|DISH_in a|N:few_bon a|Nduration_timer a|THING a|bit a|chicken
a|gas a|list_of a|miss a|pen a|plat a|proper a|r a|roll a|saddl a|small a|start a|start_on
a|window b_Nduration|ago b_Nduration|or b_at|th b_back_in| b_for| b_out| b_ther_in| b_ther|in
b_to| back_Nduration_th| back_after|Nduration back_they| back|for back|in_Nduration back|in_U
back|is back|to_lif back|to_th bad|idea bad|is bad|new_th bast|this bear_with_m| been_a| been_sit|
been|U been|rest beetroot| began_THING| bell|at bin|it bit_of| bit_sooner| bit_sooner|Nduration
bit_that| bit|again bit|first bit|pink blackout|her blad| blast_it| bless_her| blister|already
board|at_Nclock boil|th bon_Nweight_and| bon_Nweight|still bon_for| bon_it_is| bon|clean bon|on_it
borrow_a_THING| both_th| bother_sear| br_it_forward| bring_N:few| bring_her_P| bring_th| bring|th
bung_th| burn_and| burn_th| burn|my_THING bust|so butter_it| butter_i| butter_was| buy_a| buy|anyth
by_Nduration|approximately by_mistak|put by|now b|Nduration_later b|a b|all b|all_right b|found
b|medium_cook b|mor b|patient b|quiet b|saf b|set b|set_to b|this call_them|i call|DISH call|about
call|that cam|out_at can_hav| can_keep| can_not_find| can_not|breath can_not|i can_not|se can_not|tak
can_sh| can_tak| can_w_add| can_w|br can_you|imagin cancel|all cancel|what cancel|what_i can|not
can|sit can|they can|w_hav capital| carry_a|pen carry|on carv|up car|of car|pull cast_iron|pan
cast|iron caught_they_ar| caught|they caught|they_ar celsius_th| center|when center|when_w
centr|it centr|it_is check_in| check|in christma| chuck_th| church|Nduration clean|out climb|to
cold_on| cold|water collect| colour| colour|on com_Nduration|too com_at|N:few com_for| com_out|
com_out|th com|and_find com|her convection_is| convert| cook_THING| cook_medium_well| cook_th|
cook|th cor_at| could_go| could_hav| could_it| could_not|get could_you_tim| could|w_eat counter|smell
counter|smell_amaz count|down count|down_Nduration cover_and| cover|with crack_on| crack_th|
crack|th crispy|DISH cross_off| crust|is cut_off_it| cut_what| cut|myself cut|off_and cut|up
day_and| day_i| dead|center dead|on delay|Nduration delay|dinner delet_what| detector| dial_is_in|
did_a| did_not|say did|a did|put din_at| dinner_is_mov| dinner_they_ar| dinner_w| dinner|at_N:few
dinner|at_th dinner|b dinner|back_Nduration dinner|go dinner|tim_$ display_is| display|is ditch|th_DISH
di|on_m do_DISH|and do_i_carv| do_i|cut do_i|hold do_i|tell do_i|throw do_not_get| do_not_lik|
do_not_speak| do_not|go do_not|talk do_on| do_on|th do_th_oven| do_th|oven do_without|th do_you|reckon
doctor_say| doctor|is dog|has dog|walk don_i_am| don_my| don|after door_and| door_befor| door_befor|Nclock
door_to| door|N:few door|ajar door|on_th door|will dot|is down_in|Nduration down_to|N:few down|Nduration
down|is_N:few down|now_$ down|to_N:some down|wak down|wak_m down|will down|will_you do|fahrenheit
do|i_say do|i_turn do|i_want do|in_plac do|not_U do|not_go do|not_keep do|not_lik do|not_touch
do|sear do|someth do|th_THING do|their drop|her drop|out d| early_to| early|bird eas| eat_THING|rar
eat|N:few_$ eat|Nduration_early eat|at eat|her eat|that end_up| end|for error|cod even|do even|mean
everyth_back|Nduration everyth_go| everyth|tak_m exactly|do explain_th| extra|for f_at|Nclock
f_th| fahrenheit|for_th fan_in| fan|i fat_and| fat_is| fat|end fin_i| finger_and| finger_on_th|
finish_at| finish_at|N:core finish_th| fintan| fin|wher fin|wher_it fir_up|th fir|alarm flam_is|
flam|com_out folk_ar| for_Nclock_and| for_Nclock|on for_his| for_medium_rar| for_th|first for_th|second
for_what| forerib_joint| forerib_joint|Nweight forever_U| forget_what| forgot_to_buy| forgot|to
fork|in for|N:few_adult for|N:few_at for|a for|ag for|dinner_at for|how_many for|m_and for|sid
for|th_U freak| freak|out french_and| fridg_at| from_th_stov| from_wher| from|U from|a from|oven
front_then| gas|is gas|mark gas|oven gav_him| gav_you| get_in|th get_to|N:core giv_it| giv_m|N:some
glass_on| go_all| go_at| go_at|N:oven go_in|at go_now| go_through| go_to_tak| gon_for| gon_up_to|
gon|and_drop gon|cold gon|dark gon|i_am gon|on gon|to got_N:few_P| got_a_DISH| got_befor| got_my|
got_on| got|N:few_THING got|N:some got|a got|a_Nweight got|tabl go|again go|low greas|fir_$
grown| guest_and| guest_ar_lat| guest|seat guid| h_do_not| h_is_off| h_is| hack| had_N:some|
had_THING| had_in| had_that| had_to_THING| had|a had|it half|and happen|when_$ happy_with|
has_U| has_com|down has_gon|U has_gon|on has_gon|walkabout has|Ndegrees:core has|allergy has|crept_up
has|his hav_any|DISH hav_burn| hav_forgotten| hav_got|no hav_had_a| hav_it_is| hav_mad|th hav_miss|
hav_m| hav_not_peel| hav_noth|lik hav_not|got hav_rop_in| hav_shown|up hav_that| hav_them|
hav_this| hav_to_b| hav_you_don| hav|N:few_oven hav|all hav|cut hav|cut_myself hav|drop hav|got
hav|got_it hav|lost_my hav|pull hav|pull_th hav|put_it hav|slic hav|start_th hav|switch hav|th_DISH
head_out|to hear_th| heat_and| heat_for| heat_up_to| heat|out help|now help|us her_DISH| her_down_to|
her_way| her|again her|lip her|so_far high_th| him_get| him_in_th| his_own| his|medium hob|is
hold_at| hold|at_N:core honestly|let honestly|let_us hot_then| hot_to| hotter_than| hot|THING_fell
hot|THING_on hot|by hover| how_bad| how_bad|is how_com|it how_long_is| how_will| how| how|am
how|am_i how|ar_w how|d'you how|far how|soon hush|up h|can h|do h|eat h|still i_am_Nduration|
i_am_hav| i_am_miss| i_am|gon i_am|leav i_am|tak i_bought| i_cover| i_cut|my i_did|not i_did|put
i_expect| i_gav_you| i_go|and i_hav_burnt| i_hav_burn| i_hav_forgotten| i_hav|THING i_hav|pull
i_hav|slic i_hav|start i_mak| i_meant_th| i_nearly| i_not| i_open|th i_salt| i_set|it i_start|
i_think_so| i_think_th| i_us|DISH i_was|go i_was|look i_will_hav| i_wonder| i_would_lik| i_would|
if_P| if_th_THING| if_ther_is| if|that if|this if|this_is in_N:few_plac| in_Nduration_to| in_befor|
in_ic|water in_m| in_sinc| in_th|bottom in_th|loung in_th|old in_to| includ|DISH inform_m|when
insid_and| insid_th|THING insid_what| instruction|for into_th|hot in|N:few in|N:some_and in|a_THING
in|charg in|from_th in|old in|old_money in|on in|sinc in|th_cupboard in|th_fridg in|th_hous
in|th_loung in|th_water in|town in|yet is_N:few_THING| is_N:few|off is_P_is| is_THING|as is_a_good|
is_allergic_to| is_at_Ndegrees:core| is_at|Ndegrees:core is_bust|so is_down_at| is_down_to|
is_do| is_finish|and is_first| is_hot|now is_it_a| is_it|hav is_it|saf is_lik|th is_medium_rar|
is_mix|and is_my_next| is_nearly| is_not|com is_not|mad is_not|on is_not|tak is_offer_to| is_off|by
is_pain| is_salty| is_swell| is_th_THING| is_th_roast| is_th_third| is_th_tim| is_ther_anyth|
is_th|middl is_turn_up| is_up_to| is_what|th is|N:core_DISH is|N:core_U is|N:core_insid is|N:core_what
is|N:few_over is|N:some is|Nduration_later is|Nweight_not is|THING_at is|a is|bubbl is|cook
is|cry is|cry_$ is|dead is|don is|first is|flam is|his is|hot is|lactos is|load is|miss is|no_THING
is|not_even is|not_ther is|nowher_near is|pac is|pink_THING is|r is|raw is|rest_under is|show
is|smear is|someth is|still_on is|ston_cold is|stuff is|tent is|th_fan is|th_third is|well_don
is|wrong it_N:core|in it_all_off| it_as| it_at|all it_a| it_cam|out it_forward| it_giv| it_had|
it_has|got it_in|Nduration it_in|too it_is_cook| it_is_go| it_is_heat| it_is|Ndegrees:core
it_is|all it_is|do it_is|drop it_is|hold it_is|hot it_mak_it| it_must_b| it_off|with it_out_at|
it_stay| it_tak| it_this| it_too| it_to|medium it_under| it_was|not it|N:few_$ it|N:few_bon
it|cold it|hit_N:core it|hit_th it|is_N:few it|is_hot it|is_pink it|is_smok it|lumpy it|on_Nduration
it|out_of it|said it|smell_amaz it|stay it|th_day it|till it|to it|warm it|was_at i|THING_N:core
i|aim i|aim_for i|am_stuck i|at i|bast i|burn_my i|call i|carv i|chuck_th i|com i|cover_it
i|drop_it i|feel i|flip i|flip_it i|forgot_to i|gav i|hav i|know i|mak_it i|mean i|open i|said
i|shut i|shut_th i|stick i|swear i|took_th i|wait jar|of_DISH job|don_$ kettl|on kill_th_THING|
kilo_i| kindly|inform knock|th_oven know_i| know_what|i know|onc land_on| land|in last_car|
last_i| last|th lat|so lay_it| lay| leave-in|THING_is leftover|ar leftover|keep left|U less_than_it|
let_us|start li_down|wak lift_th| lift|th lik_it|lumpy lik_it|pink lik_on| lik|an lit_th| lit_th|oven
li|ther long_has_it| long_is| longer|do long|hav_w lost_a| lot_hav| low_w| lower_it| lowest|
low|fyi m_a_Nweight| m_again| m_everyth| m_it_is| m_know|onc m_som| m_sort| m_th| m_what|i
m_when_it| mad_THING| mad_i| mad_th| mad_th|DISH mad|yet magazin| mak_a_nois| mak_dinner|N:oven
mak_it|N:some mak_it|well mak|DISH_DISH mak|U mak|you many_mor_minut| marni_is| mass_back_in|
meant_th| meant_to| mean|N:core medium_and| medium_in| medium_rar_at| medium|instead messag|when_it
mind_that| mind_th| mind|th_step minut_left|on mistak|put mistak|put_it moment_i| mor|than
mor|tim mor|to mor|your mouldy| mov|th much_i| much_longer| much|in must_DISH| must_b_Nduration|
must_b|th must_it| must_th| my_P_alway| my_feet| myself|on_th my|N:few my|P_is my|boss my|glass
my|lad my|next my|next_job my|oven_has m|Nduration_behind m|U_my m|after_Nduration m|an m|down
m|plus m|sort m|tod n_Nduration|start n_th_timer| n_to| nam_is| nell| never_got| new|dinner
next|Nduration_$ next|step next|tim nic|U nic|and no_N:few_peopl| no_i| no_mor|DISH no_no|strik
no_n|of no_second| nobody_at| nobody|at not_Nweight| not_bother_sear| not_carv| not_do_th|
not_hav|it not_hold| not_know_what| not_look| not_read| not_remember| not_start_th| not_start|th
not_th|DISH not_trust_that| noth_is| noth_with| noth|els not|Ndate_$ not|befor not|keep_up
not|know not|let_it not|let_m not|read not|risen not|so_much not|th not|th_DISH not|touch not|turn_it
not|your now_do| now_for| now_h| now_is|N:core now_till| now|get_th now|is_N:core no|DISH_butter
no|DISH_w no|THING_is no|cream no|fresh no|no no|oven no|r_win nudg|m nudg|th_whol number_on|th
number|is_rubbish nut|again nut|again_$ n|N:some n|Nduration_$ n|a n|of oat_THING| of_DISH|now
of_THING|in of_THING|now of_THING|on of_th_guest| of_them|can of_us_all| of_us|all off_at|Nclock
off_is| off_it|N:few off_it|is off_th| off_your| offer_to| offic| off|again off|and_on off|befor
off|my_list off|on_m off|shift off|so_no off|with_th of|Nclock of|THING of|cours of|r of|th_P
of|your ok_in| ok_i| ok|turn ok|turn_it old|is old|school on_DISH|till on_N:core|now on_at|N:core
on_at|N:oven on_it_at| on_low| on_m|tod on_not| on_tim_m| on_was| on_with| on_w| on|N:oven_now
on|U_$ on|cours on|got_N:core on|it_$ on|moment on|on_th on|our on|out_$ on|schedul on|th_DISH
on|th_N:some on|th_menu on|till on|with_DISH open_for| open_on| open_on|th open_that| open_th|P
open|that_door or_ther| or_w| orang| orla| otto| oughta| our_oven_is| our_oven| our|guest out_at|N:few
out_at|N:oven out_for| out_is| out_of_you| out_on_th| out_th_fridg| outsid_is| outta|th out|at_N:few
out|first out|first_$ out|now out|till out|w_do oven_Nduration| oven_at_N:some| oven_b|set
oven_door|U oven_down|to oven_glov| oven_has| oven_is_a| oven_is|preheat oven_show| oven_temperatur|
oven_will_not| oven|floor oven|is_N:oven oven|now_$ oven|pack oven|still oven|temperatur_$
oven|too overdon_it|is over|in park_it| par| pass_th| pass_us| pass|m past_th| pat|it pat|it_dry
paus|for pay| pay|customer peel_that| peel|took peel|took_forever peopl_i| peopl|i person|will
phon_is| pick_up| pick_up|P pick|at pink_so| pink|all_th pip_down|will plan|N:few plan|b plan|b_$
plan|got_in plat|down plug| point_of| pop| possibl|to pound_not| pour|out prefer_to| preheat_and|
preheat_light| preheat|th press_N:few| press| press|N:few pretend|i priya|is proceed| pull|at
put_THING| put_my| put_th| put|U put|in put|my put|that quick_on|got quick|shower quid_a| r_DISH|is
ran|dry rar_and| rar_as| rar_at| rar_this| rar|and_b rar|to raw_THING_in| raw|THING_in read_it|
ready_in| ready_i| reduc|to remember|how reminder| remind|m remov_it|from remov_th_roast| remov|th_roast
repeat|that_$ rest_is| rib_and| right_off| right|now_at roast_DISH_on| roast_in_at| roast|DISH_w
roast|from_th roll_THING| roll|back room_for| run_Nduration|behind run_at| run_a| run|at run|away
run|that_by r|for r|m s_out|when saf_for|th said_and| said_it_is| said_no| said|N:oven salt_for|
salt_it|th salt|is_not sat_at| sat_on| sausag| sav|a say_N:oven_U| say_a| say_do| say_on| say_on|th
say_they_ar| say|N:core_and say|N:core_in say|N:few_$ say|about say|grac scrap|it scratch|
scrub|th sear_i| second_it| set_and| set_th_THING| set|it set|m_Nduration se|how se|it se|that
sh_do| sh_is_N:some| sh_is_up| sh_is|go sh_still| sh_went| sh_will_b| shar| shop|had should_b|N:core
should_b|medium should_th_oven| should_th| should|i_put should|i_turn should|sh shout|at shout|in
shout|when_it shown|up show|N:core_now shut|it shy_of| sh|can_not sh|will sid_DISH| sid_it_is|
sinc|N:few_$ sink_is| siobhan| sit_down_is| skip|th_DISH slic_look| slic|at slic|b slic|th
slit| slow_as| slowly_i| small|oven smok_detector| so_THING| so_cross| so_do_i| so_mak_it|
so_noth_with| so_tick| so_w_will| sold_to| solid|still som_roast_DISH| someth|in someth|to
som|roast som|roast_DISH soon_as_th| soon_as| sorry_it_is| so|far so|keep so|warn so|warn_m
so|you_no spark|and speak|to spot|on stand_rib_N:few| stand_rib|with stand|ther start_at|Nclock
start_it_hot| start_on| start_th| starter|at start|a start|at_Nclock step_can| step|off stick|DISH
stick|Nduration still_raw_in| still_raw|in still_wait_on| still|DISH_solid still|climb still|no
still|ok still|on stir|th stop_th| stor_what| stor|was straight_off| straight|from strik|N:few
stuck_behind|a stuck_it|and stuck_th| stuck|a stuck|on stuff_it| supermarket| supper|Nduration
sur_i| sur|w sur|w_will swear_by| switch_th|oven tabl|laid tabl|wait_$ tak_a_shower| tak_her|
tak_th_DISH| tak|a talk_in| talk_m_through| taxi_is| tell_m_that| tell|a_li tell|what temperatur_for|
temperatur_is_at| temperatur_of| temperatur_to| temperatur|Ndegrees:core temperatur|or th_DISH_is|
th_DISH|has th_DISH|start th_N:few_rib| th_N:few|wher th_THING_that| th_THING_to| th_THING_under|
th_THING|Nduration th_THING|has th_THING|insid th_THING|man th_THING|off th_U_ar| th_U|in th_afternoon|look
th_bird| th_biscuit| th_bon|clean th_butter|on th_center|when th_chip| th_church|Nduration
th_counter|smell th_current| th_dairy| th_day|i th_dial|THING th_doctor_said| th_dog_is| th_door_and|
th_door_befor| th_door|N:few th_fat|end th_fat|is th_fat|off th_flat| th_floor_and| th_front|
th_grandmother| th_heat|out th_list_i| th_list|of th_lot|of th_middl|of th_middl|shelf th_nam|of
th_needl| th_new|P th_number_on| th_number|for th_other|sid th_oven|floor th_oven|to th_plan|got
th_roast|at th_roast|from th_roast|is th_stov|for th_stuff| th_tabl|now th_thick|bit th_th|in
th_to| th_way|my th_way|to th_with| th_young| thank|a_million than|N:few that_DISH|timer that_at|
that_a| that_is|not that_it| that_should| that|DISH_timer that|boy that|can_not that|down that|last_th
that|on_out that|temperatur their_at| their|THING them_th| them|Nduration_ago them|anyway them|i_want
then_it_is| then_you| ther_Nduration| ther_anyth| ther_is|flam ther|for ther|yet thes|day they_ar_on|
they_ar|N:few they_ar|starv they_eat| they_wer| they|would thick|bit thick|end thin_as| think_no|
think_th| this_THING_it| this_THING|for this_can| this_old| this_oven|run this_up| this_what|
this_with| this|rental this|roast this|very thos|ar thought_th| throat_is| throat|is th| th|DISH_go
th|DISH_on th|DISH_out th|DISH_what th|N:few th|N:few_from th|Ndate th|P_eat th|P_in th|THING_N:core
th|THING_board th|THING_go th|THING_hit th|THING_on th|THING_out th|U_and th|ar th|at th|bath
th|battery th|bottom_oven th|chicken th|cooker th|crew th|current_has th|cylinder th|dial_to
th|fan_is th|fat_is th|first_th th|flat th|goos th|guest_hav th|hot th|i_should th|kettl th|label
th|loung th|n th|oven th|oven_to th|paper th|plastic th|porch th|power_went th|radio th|rain
th|right th|roll th|roll_ar th|rugby th|say th|stat th|str th|thick_end th|train th|truth th|very
th|whol_th th|worktop ti_and| till|Nclock_$ till|it_is tim_do| tim_do|th tim_it_is| tim_m|N:few
tim_what| tim_with| tim_w| timer|go_$ timer|of_Nduration timer|off_$ tim|did tip|th ti|a_roast
ti|it to_DISH|it to_N:core|whil to_THING|no to_ask| to_b_careful| to_buy|DISH to_b|a to_b|found
to_carv|and to_com|out to_help|with to_hit| to_keep| to_m_in| to_preheat| to_reheat| to_rest_it|
to_rest|it to_r| to_tak| to_their| told_th| too_lat_to| too_much|in too|fast top_off| top|shelf
total_N:few| total|N:few_person touch|bon tough|as to|N:few_$ to|N:oven to|N:oven_and to|N:oven_now
to|N:oven_on to|N:oven_what to|driv to|his to|m to|miss to|nip to|preheat to|run to|sear to|turn_it
to|walk to|walk_th to|whoever traffic|Nduration_$ traffic|is train_is| train_is|delay trim_it|is
trip_over| trip_over|th trip|and trust_that| turn_out|w turn_th| turn_th|oven turn|around twin_n|
typ_it| typ|it ty|it_$ ty|it_up under_th| understand|th under|that undo|that un| up_for| up_front_then|
up_it_is| up_that| up_to|Ngas-mark up_when| up_w| upsid| upsid|down upstair|to_chang up|N:some_so
up|after_th up|again up|as up|at_Nclock up|if up|so us_at| us|a us|a_U us|down us|if us|now_$
us|start us|you vot| w_add| w_add|DISH w_ar_up| w_ar|serv w_at|Nduration w_had_THING| w_shall|
w_still_on| w_tak| w_will_not| wad| wait_what|is wait|Nduration wait|what walk|th_dog wall_N:few|
want_another| want_it|rar want_th_THING| want_th_crust| want_their| want_to_do| want|Nduration
want|a want|another want|her want|his want|it warm_th| warm|up warn|m was_at|N:core was_don|
was_mil| was_on|what wash_th| wash|th_THING was|look was|run watch_th| water_for| water_is|
water|is_boil water|so water|so_it way_do_i| way_to| way|is way|my we_bit_sooner| we_on|is
well_don|no well_do| well_it_is| well_what| well|th_light well|w_say went_out|at went_out|on
went_up_to| went|hom wer|N:few what_all_is| what_ar_th| what_can| what_could| what_gas_mark|
what_in| what_is|next what_on_this| what_should| what_th|i what_tim|did whatever_you|set whatever|you_call
what|P_$ what|go what|good what|good_do what|i_do what|is what|must what|must_i what|was what|will_i
what|you_say when_is_th| when_th_cor| when_th_roast| when|it_has when|it_say when|th_DISH when|to
wher|ar wher|did wher|should wher|would which_bit| which_job| which|job which|sid whil_th|oven
whil|you_wer whisk|th whisk|th_DISH who_want| whol|DISH whol|street who|hav_not who|is who|will
why_in| why_w| why|do_it why|not why|you will_U| will_a| will_giv| will_hav_th| will_not_bother|
will_sear| will_th_DISH| will_want| will|b_back will|eat will|forget will|get will|keep will|put
win_is| wink| wink|Nduration wip_it_all| wip|it with_DISH_cream| with_DISH|DISH with_all_this|
with_his| with_th_work| with_th|oven with_your| without|turn with|celsius with|m with|th_THING
with|th_roast word|i work_on| work|i_hav work|on work|th worri| would_lik| would_suit| would_th|THING
would_you|do would|Nclock would|hav would|th would|w wrap|up wrong_it| w|br w|cook w|fin w|fix_$
w|hav_no w|hav_to w|keep w|lost w|push w|sear w|sear_it w|speak w|tak_it w|talk w|took w|wait
yer_man| yes_and| yes_th| yes|that_on yet_Nduration|i yet|do yet|do_not you_com| you_cut| you_f|
you_on| you_said|Nduration you_tim_Nduration| you_want|to you_what|P you|allow you|allow_$
you|explain you|for you|giv_m you|imagin you|tak_it yuh| |@11.4 |@115.2 |@116.4 |@119.4 |@12.0
|@121.6 |@131.3 |@136.4 |@15.1 |@21 |@26.4 |@37 |@37.1 |@41.1 |@5.0 |@62.6 |@63.6 |@65.5 |@66.6
|@71.1 |@77.1 |@77.3 |@81.3 |@89.4 |DISH_anymor |DISH_if |DISH_in_this |DISH_lik_$ |DISH_noth
|DISH_off_th |DISH_peel_every |DISH_so_that |N:core_for |N:core_giv_m |N:core_i_am |N:core_is_it
|N:core_tell |N:core_what_is |N:core_without |N:few_do |N:few_high |N:few_tonight |N:few_wher
|N:few_you |N:oven_put |N:oven_that_is |N:oven_to |N:some_at_Nclock |N:some_for |N:some_hot
|N:some_is |N:some_with |Nclock_instead |Nclock_would |Ndegrees:few_$ |Ndegrees:few_$_$ |Ndegrees:few_less
|Nduration_ago_not |Nduration_and_th |Nduration_in_th |Nduration_lat_so |Nduration_later_and
|Nduration_on_for |Nduration_stop |P_of |P_sit |P_w |THING_THING_th |THING_and |THING_eater_$
|THING_enough |THING_fell_on |THING_from_th |THING_is_com |THING_is_hav |THING_is_stay |THING_left_in
|THING_of_DISH |THING_ok_$ |THING_on_it |THING_on_my |THING_rather |THING_rather_than |THING_should
|THING_test |THING_th_quick |THING_what_do |THING_with |THING_without |U_Nweight |U_away |U_from_th
|U_giv |U_my_back |U_so_N:few |a_ball |a_bell |a_bit |a_degre |a_disaster |a_jar |a_messag
|a_million |a_prayer |a_proper_THING |a_rest |a_tent |a_timer |a_touch |a_warn |a_window |abl
|about_$ |about_$_$ |about_it_$ |accident |adrift |after_it_is |after_th_nut |again_it_is |all_over_$
|all_they |all_w |am_i_wait |am_stuck |an_inch |and_N:some_$ |and_P_hav |and_b_don |and_find_m
|and_it_com |and_kilo_is |and_left_th |and_rough |and_rough_up |and_then |and_will_not |anymor_$
|anymor_$_$ |anyth_about |anyth_with |ar_N:some |ar_arriv |ar_burn |ar_hav |ar_nowher |ar_out
|ar_sit |ar_w_at |as_is |as_it_was |as_of_now |as_well_$ |at |at_N:core_DISH |at_N:few |at_N:few_N:few
|at_N:few_what |at_N:oven_i |at_Nclock_for |at_Nclock_sharp |at_easter_$ |at_it_$ |at_m_$ |at_onc_$
|at_tabl_$ |at_this_rat |at_when |at_without |awful |b_$ |b_$_$ |b_Nclock |b_help |b_us |back_N:few
|back_for |back_from_th |back_to_N:oven |backward_$ |backward_$_$ |bag |bak |bathroom |been_don
|been_open |beep_it_is |befor_$ |befor_$_$ |befor_it_go |befor_or |befor_th_DISH |behind_a
|believ |berti_is |better_$ |better_$_$ |between |board_now |bok |bok_choy |bon_up |boner |bother_$
|bother_$_$ |box |br_th_DISH |brown_on_top |burnt_on |busy |butter_for |call_$ |call_$_$ |call_from
|cam_out_at |can_do_th |can_i_ask |can_pitch |can_pitch_in |car_of |carv_it |catch_that |chanc_i
|charcoal |charg_of |chatter |chocolat |class |climb_to |climb_to_N:core |clock_for |clos_$
|clos_$_$ |cod |com_along |com_now |com_with_Nduration |cooler_than |could_eat |cover_$ |cover_$_$
|cow |cream_left |da_i |dead_$ |dead_$_$ |dead_center |dial_$ |dial_$_$ |did_a |digit |dinner_back_Nduration
|dinner_by_Nduration |do_i_hav |do_not_buy |do_or |do_this |do_with |don_U |don_to |down_so
|down_to_a |dry_it |dry_th |dumpl |earlier |early_can |eat_THING |eat_th_DISH |eater_$ |eater_$_$
|end |every_tim_i |everyth_at |expect_$ |expect_$_$ |fat_THING |fat_i |fat_this |finger_it
|for_N:few_of |for_N:some_$ |for_Nclock_and |for_Nduration_it |for_Nweight |for_P_$ |for_everyth
|for_medium_rar |for_new |for_new_year |for_ric |for_th_littl |for_them_$ |for_this_crowd |for_tonight
|for_you_$ |forgotten |fort |freak |freak_out |freezer_$ |freezer_$_$ |fresh_THING |fret |from_now_$
|from_th_market |from_ther |gang |get_DISH |get_THING |get_it_$ |get_to |giv_you |given |glov
|go_U |go_off_$ |good_do |got_DISH |got_N:few_r |got_in_early |green_DISH_$ |guest_count |hal
|hang_on_th |harm |has_drop |has_gon_and |has_gon_on |has_got_a |has_no |hav_P |hav_all |hav_burnt
|hav_reach |hav_told |heat_N:few |heat_th |heat_to |her_at_N:oven |her_immun |her_immun_system
|her_nam |her_now |her_yet |him_get |his_P_$ |his_own |hit_th_tabl |hold_$ |hold_$_$ |hors
|hotter_than |how_you |hungry_$ |hungry_$_$ |i_$ |i_$_$ |i_can_ask |i_com |i_n_from |i_ruin
|i_said_wrong |i_want_$ |ic_in |if_i_am |if_i_us |if_someth_is |if_that_is |in_N:core_$ |in_THING_and
|in_celsius_would |in_it_now |in_th_last |in_th_lower |in_th_other |in_that_$ |in_this_THING
|in_traffic |in_when |in_whol |instead_of_fresh |instead_of_th |is_N:few_sharp |is_N:some_in
|is_Ndegrees:core |is_a_U |is_banjax |is_by |is_enough |is_even |is_hungry |is_in_charg |is_it_for
|is_kaput |is_lat |is_lost |is_lumpy |is_mind |is_not_$ |is_not_don |is_not_mad |is_our |is_pac
|is_plat |is_r |is_read |is_ring |is_roll |is_run_Nduration |is_saf |is_salty |is_sat |is_shap
|is_shift |is_sit |is_stuff |is_tell |is_temperatur |is_th_grey |is_ti |is_to |is_tough |is_volunteer
|is_whol |it_Nclock |it_alon |it_away |it_com_out |it_first_$ |it_for_m |it_got |it_hot |it_is_Ndegrees:core
|it_is_mad |it_mov |it_on_th |it_onc |it_out_yet |it_rar |it_tim |it_uncover |it_w |it_warm
|jain |jelly |job_$ |job_$_$ |joint_Nweight |jumper |kaput |keep_tell |kind_$ |kind_$_$ |kne
|knew |land_on |lang |last_week_$ |later |latest |lift_th |lik_i_am |long_$ |long_$_$ |look_good
|look_lik_$ |low_at |low_to |lower_than |lunch_$ |lunch_$_$ |m_N:some |m_about |m_from |m_how
|m_it |m_why |mad_a |mad_and |mak_$ |mak_$_$ |mak_DISH_DISH |mak_th |man_is |may_$ |may_$_$
|mean_in |medium_cook |medium_in |melt_down |middl_is_at |minut_on |moan |mor_DISH |motorway
|my_choic |my_fault |my_lif |my_parent |my_way |my_work |n_$ |n_$_$ |near_th_end |never_own_a
|never_turn |night |nonsens |not_do |not_peel |not_run |not_start_$ |not_tak |not_that_ther
|now_DISH |now_for |now_instead |now_oven |nut_DISH |of_THING_over |of_a_th |of_pink |of_str_$
|of_th_THING |off_for_th |off_shift |off_th_list |off_th_pan |off_th_r |off_th_tabl |off_what
|on_$ |on_$_$ |on_U_$ |on_about |on_fir |on_has |on_it_and |on_it_at |on_low |on_m_i |on_now
|on_on_th |on_or_off |on_our |on_target |on_th_plat |on_th_th |on_thos |on_wash |onto_th_board
|or_N:few_$ |or_Nclock |or_against |or_bad |or_behind |or_mor |or_th_THING |or_w |out_befor
|out_in_hiv |out_not |out_of_a |out_sinc |out_that |oven_$ |oven_$_$ |oven_set_to |oven_sinc_Nclock
|oven_that |oven_will_not |over_$ |over_$_$ |over_a |over_th_top |oyster |pack_up |pair |pair_of
|pardon_$ |pardon_$_$ |part_$ |part_$_$ |peel_every |peel_every_last |peopl_ar_join |pick_up_$
|pink_at |pink_w |plat_at |porch |power_$ |power_$_$ |praty |preheat_$ |preheat_$_$ |preparation
|press_$ |press_$_$ |prim_rib_$ |rar_P |rar_h |rar_this |read_th |read_was |ready_for |reek
|refus |reheat |rental |rescu |rest_and |rest_it_$ |result |rib_for |rib_with_N:few |right_at
|right_at_th |right_back |rub_th |run_Ndegrees:some_hot |run_away |runner |said_Nduration |salt_in
|sausag |sav_$ |sav_$_$ |say_$ |say_$_$ |say_DISH |say_N:core_P |say_N:core_and |say_N:oven_$
|say_medium |say_on |say_on_th |say_rar |scream |scream_$ |scream_$_$ |second_of |sh_still
|shad |show_on |show_on_th |shut_$ |shut_$_$ |sid_up |similar |sinc_i |situation |sleev |slic_is
|slowly_i |small_$ |small_$_$ |small_P |smear |smell_a |smell_incredibl |so_good_$ |so_i_will
|so_knock |so_let |so_no_DISH |so_w_would |soft |somehow |somehow_$ |somehow_$_$ |soon |soon_$
|soon_$_$ |stall |start_and |start_fresh |start_then |station |still_U_froz |still_at |still_b
|still_in_th |stop_to |strik_that_from |stuck_at |stuck_in_it |sum |sunniva |system |tablespoon
|tak_th_THING |telephon |tell_N:few |temperatur_$ |temperatur_$_$ |temperatur_U |temperatur_of
|test_$ |test_$_$ |th_Ndate_w |th_P_hav |th_THING_behav |th_THING_floor |th_THING_in |th_U_N:core
|th_alternativ |th_b |th_back |th_bridg_is |th_cellar |th_center |th_chang |th_colour |th_deck
|th_door_of |th_door_on |th_drawer |th_fan_set |th_fat_cap |th_fat_off |th_finger |th_first_$
|th_first_th |th_flick |th_heart |th_heat_and |th_it |th_last_th |th_lino |th_loung |th_n |th_order
|th_oven_back |th_oven_for |th_oven_what |th_plastic |th_queu |th_raw |th_record |th_road |th_roast_from
|th_scor |th_shop_back |th_siz_of |th_station |th_tablet |th_tap |th_whol_plan |th_window_$
|th_with_th |th_yard |th_year |that_N:core |that_by_m |that_much |that_no |that_ther |then_is
|ther_yet |thes_$ |thes_$_$ |they_get |thick_$ |thick_$_$ |think_it |this_afternoon |this_fat
|this_for |this_what |through_U |till_Nclock_$ |till_serv |till_w |tim_$ |tim_$_$ |tim_if |timer_N:few_wrong
|timer_it |timer_it_is |tip_th |to_THING |to_celsius |to_chang_Nduration |to_church |to_count
|to_death |to_get_$ |to_lif |to_nut |to_salt |to_sit |to_th_P |to_ti |to_ti_it |to_walk |to_walk_th
|to_wash |to_work |tod |told_m |tonight_and |total_$ |total_$_$ |touch |trampolin |translat
|travell |try_to |turn_to |turn_up_early |under_that |under_whatever |up_as |up_from_th |us_it_$
|us_when |w_ar_$ |walk_$ |walk_$_$ |walk_off |want_THING |want_it_well |want_medium |was_Nweight
|wash_THING |wash_it |wedd_$ |wedd_$_$ |well_don_and |well_ill |well_ill_b |went_$ |went_$_$
|went_and |what_P |what_i_n |whatever_i |wheat |when_P |when_i_pull |when_w_cut |whil_it_sit
|whil_you_wer |whol_family |why_th |wiggl |will_get |will_it_climb |will_n_to |will_not_eat
|will_not_hav |will_se |with_U |with_it |with_roast |with_salt |with_th_roast |without_tell
|worktop |would_go |wrot |y_$ |y_$_$ |you_ar_$ |you_at |you_for |you_go_$ |you_h |you_now |you_that
|your_back |your_clock |your_finger |your_own |your_sho |yourself_$ |yourself_$_$
-16 @0.5| @10.3| @100.4| @11.0| @145.3| @52.4| @63.2| @66.0| @81.4| @98.0| DISH_DISH_no| DISH_U|for
DISH_ar|THING DISH_bas| DISH_butter_and| DISH_butter|don DISH_butter|for DISH_butter|is DISH_cam|
DISH_for| DISH_giv| DISH_has_been| DISH_i_am| DISH_i_hav| DISH_in_oven| DISH_is_run| DISH_is|run
DISH_it|b DISH_it|on DISH_n_another| DISH_n| DISH_on_Nduration| DISH_r|DISH DISH_shiny| DISH_to|roast
DISH_will_not| DISH_with| DISH|DISH_hav DISH|DISH_is DISH|DISH_th DISH|DISH_w DISH|ar_all DISH|ar_burnt
DISH|ar_cook DISH|ar_still DISH|at_N:few DISH|boat DISH|can_stay DISH|for_m DISH|grow DISH|hav_gon
DISH|idea DISH|in_ther DISH|is_assembl DISH|is_bubbl DISH|is_burnt DISH|is_in DISH|is_lik DISH|is_strain
DISH|it_as DISH|lik_in DISH|on_with DISH|sid DISH|so_scratch DISH|ther_will N:core_U|i N:core_and|N:few
N:core_at| N:core_by| N:core_b| N:core_in|Nduration N:core_not|N:core N:core_put| N:core_with_th|
N:core|after_rest N:core|as N:core|fan_$ N:core|in_ther N:core|is_my N:core|let N:core|quid
N:core|rather N:core|yet N:few_Nclock| N:few_THING|THING N:few_blam| N:few_blam|th N:few_bon|off
N:few_burner|on N:few_by| N:few_hav| N:few_h| N:few_let| N:few_peopl|cancell N:few_person|is
N:few_plus| N:few_sharp|U N:few_step| N:few_th_U| N:few_that|is N:few_tim_what| N:few_to|go
N:few_well_don| N:few_w| N:few_year|old N:few|DISH_N:few N:few|THING_th N:few|a_sid N:few|bon_Nweight
N:few|cook_now N:few|has N:few|later N:few|oven_and N:few|peopl_and N:few|plac N:few|quarter
N:few|work N:oven_DISH| N:oven_U|it N:oven_at| N:oven_how| N:oven_in_th| N:oven_sinc| N:oven_to|N:oven
N:oven|for_Nduration N:oven|on_accident N:oven|or_so N:some_at|Nclock N:some_in|th N:some|dollar
N:some|later N:some|month N:some|off_th N:some|point N:some|they_hav N:some|with_th Nclock_after|
Nclock_dinner| Nclock_or| Nclock|Ndate Nclock|tonight Ndate_N:few| Ndate_at| Ndate_at|Nclock
Ndate_it| Ndate_roast|Ndate Ndate_w| Ndate|at_N:core Ndate|night Ndate|not_Ndate Ndegrees:core|at
Ndegrees:core|at_th Ndegrees:few_in|Nduration Ndegrees:few_it_is| Ndegrees:few_mor| Ndegrees:few|low
Ndegrees:few|mor Ndegrees:some_and| Ndegrees:some|under Nduration_P|is Nduration_ago_th| Nduration_at|N:oven
Nduration_behind_and| Nduration_earlier|if Nduration_lat_th| Nduration_later_th| Nduration_later|than
Nduration_mor|early Nduration_my| Nduration_on|DISH Nduration_or| Nduration_sinc|i Nduration_th|oven
Nduration_too| Nduration_traffic| Nduration|U_$ Nduration|adrift Nduration|at_least Nduration|behind_schedul
Nduration|behind_th Nduration|on_DISH Ngas-mark|to Nweight_bon| Nweight_bon|in Nweight_without|
Nweight_without|bon Nweight|all_in Nweight|forerib Nweight|of_DISH Nweight|with_N:few P_and_i|
P_ar_join| P_a| P_f| P_gav| P_h_is| P_had| P_has_fallen| P_h| P_is_DISH| P_is|sit P_it|is P_lik|
P_n| P_swear| P_tak| P_up|i P_well|don P_what| P|from P|help_$ P|in_law P|is_ask P|is_eat P|is_still
P|mad P|never P|on P|tak THING_N:core|i THING_N:few_too| THING_N:few|too THING_THING_for| THING_THING|has
THING_THING|to THING_a_joint| THING_and_i| THING_and|no THING_butter| THING_butter|on THING_com|
THING_do_i| THING_enamel| THING_into_th| THING_is_N:few| THING_it|jump THING_man| THING_nobody|
THING_off|on THING_of|DISH THING_on|a THING_out|for THING_sinc| THING_th_tabl| THING_th|edg
THING_w_hav| THING_will| THING_with_th| THING|N:few_and THING|N:oven_$ THING|THING THING|THING_anywher
THING|a_leg THING|after_all THING|again_$ THING|as_rock THING|at THING|board_now THING|brok
THING|cream_$ THING|first THING|i_think THING|in_$ THING|in_this THING|is_Nweight THING|is_a
THING|is_don THING|is_now THING|last THING|lead THING|must THING|must_b THING|near THING|no_signal
THING|of_DISH THING|off_th THING|tim THING|under_it U_DISH|DISH U_N:few| U_P_is| U_by| U_from_th|
U_h| U_is|N:core U_is|U U_is|do U_is|don U_it|is U_look| U_not|th U_of| U_on_th| U_sh_is| U_sit|
U_ther_is| U_they| U_th|P U_th|dial U|back U|do_i U|down U|in_with U|is_N:core U|mak_DISH U|out_of
U|said U|th_roast U|tim ^_DISH_all| ^_DISH_got| ^_DISH|DISH ^_DISH|ar ^_DISH|in ^_N:few_for|
^_N:few|bon ^_N:few|for ^_N:few|hav ^_N:some|in ^_Nduration_rest| ^_Nduration|for ^_Nduration|on
^_Nweight_N:few| ^_Nweight|of ^_P_you| ^_THING_for| ^_THING|ar ^_THING|show ^_THING|went ^_U_on|
^_U|P ^_U|god ^_U|has ^_U|not ^_^_ask| ^_^_at| ^_^_befor| ^_^_bell| ^_^_boil| ^_^_clock| ^_^_count|
^_^_eat| ^_^_enough| ^_^_fair| ^_^_fat| ^_^_green| ^_^_halal| ^_^_himself| ^_^_is| ^_^_joint|
^_^_lik| ^_^_lord| ^_^_minc| ^_^_old| ^_^_onc| ^_^_outsid| ^_^_put| ^_^_p| ^_^_silenc| ^_^_simmer|
^_^_sirloin| ^_^_som| ^_^_soup| ^_^_stov| ^_^_s| ^_^_toddler| ^_^_tonight| ^_^_toss| ^_^_watch|
^_^_weight| ^_^_when| ^_^_whichever| ^_^_who| ^_^_with| ^_^_you| ^_^_y| ^_add|roast ^_and_then|
^_ask| ^_at| ^_back|in ^_befor| ^_bell| ^_boil| ^_call_off| ^_clock| ^_count| ^_did_i| ^_dog_got|
^_eat_at| ^_eat| ^_enough| ^_fair| ^_fat_trim| ^_fat| ^_full_hous| ^_gas|bottl ^_good|even
^_green| ^_h_was| ^_had_a| ^_halal| ^_hav|w ^_help|m ^_himself| ^_hold|dinner ^_i_burn| ^_i_heard|
^_is_all| ^_is| ^_it|do ^_i|burnt ^_i|heard ^_i|switch ^_i|tak ^_jaysus|th ^_joint| ^_kindly_tell|
^_leg_THING| ^_let_it| ^_let_m| ^_lik| ^_lit|th ^_lord| ^_lunch|at ^_middl|shelf ^_minc| ^_mind|your
^_no_you| ^_nobody_eat| ^_not_to| ^_no|cream ^_no|way ^_number|N:few ^_ok|turn ^_old| ^_onc|
^_outsid| ^_out|and ^_pan_is| ^_pass_on| ^_push_it| ^_put| ^_p| ^_roast|out ^_serv_it| ^_sh_say|
^_shop|list ^_silenc| ^_simmer| ^_sirloin| ^_som| ^_soup| ^_so|w ^_stov| ^_suppos_w| ^_s| ^_tak_back|
^_th_display| ^_th_element| ^_th_joint| ^_th_middl| ^_th_next| ^_th_plat| ^_ther_ar| ^_toddler|
^_tonight| ^_toss| ^_trim|th ^_turn_it| ^_w_had| ^_w_lik| ^_w_n| ^_w_want| ^_watch| ^_weight|
^_well|th ^_what|could ^_when| ^_whichever| ^_who| ^_with| ^_would_a| ^_w|put ^_yes_and| ^_your_P|
^_you| ^_you|heard ^_y| a_THING|of a_bit_of| a_bit|longer a_bit|off a_blush| a_board| a_break|
a_breather| a_b| a_chair| a_cut| a_list|of a_long| a_messag| a_power| a_smok|Nduration a_ston|
a_vegan|com a_whil|i abl| abl|to about_a| about|a add|Nduration_$ after_a| after|this_$ again_i_was|
again_it| again_what| against| again|look alert_at|N:core alert_m| alight|onc alight|onc_mor
all_behind_Nduration| all_it|is all_right_i| all_right|or all|ar all|cut all|good_$ all|sat
all|sort along_by_N:some| already_got| alway_N:some| am_N:few| am_THING_for| am_THING|a am_about_to|
am_a| am_cut| am_get| am_i_do| am_so| am|N:few am|N:some am|Nduration_behind am|cut am|gon_for
am|not am|so an_extra|Nduration and_DISH|hav and_N:core_year| and_brown| and_can_not| and_chang|
and_do_i| and_flam| and_giv_m| and_has| and_his| and_how| and_is_N:core| and_is_ther| and_it_THING|
and_i|do and_not_a| and_roll|N:few and_step| and_then_th| and|DISH_has and|DISH_hav and|anyth_i
and|brown and|correct and|drop_th and|gon and|half_th and|his and|how_ar and|i_turn and|let_m
and|now and|plus_N:few and|temperatur and|th_roll and|walk and|what_temperatur another_whil|they
another|Nduration_$ anyth|i_can ar_THING|on ar_at| ar_a|no ar_feed| ar_go_in| ar_hav|DISH ar_hav|prim
ar_mak| ar_out|of ar_past| ar_run|Nduration ar_stuck|behind ar_wrong_i| ar_w|go ar_w|ok around|
arriv|at_Nclock ar| ar|N:few_peopl ar|not_don ar|not_in ar|off ar|w_on as_per| as|in as|it_is
as|long as|w_speak at_N:core_U| at_N:core|Ndate at_N:core|no at_N:core|now at_N:few_and| at_N:oven_U|
at_N:oven|metr at_N:oven|sharp at_N:some|in at_th_cut| at|N:core_already at|N:core_i at|N:few_dinner
at|N:few_is at|N:oven_DISH at|Nclock_N:some at|Ndegrees:core_$ at|Ndegrees:some at|how_many
at|least at|what_temperatur away_with| away|N:some_$ awful| a|drop a|glass a|green a|green_DISH
a|holler a|holler_at a|long a|medium_rar a|nightmar a|rest a|shop a|vegetarian b_N:few|for
b_gon|Nduration b_help| b_in| b_my| b_ready|for b_rest| back_by| back_for| back_is| back_on_th|
back_to_th| back|in_N:few bast_back| bast_in| beat_m| been_in_for| been_off| been_sat| been|Nduration_$
beep_it_is| beep|at_m beep|m_in befor|N:few began|THING begin|again behind_Nduration|at behind|by_Nduration
belly_com| belly_com|U besid|th_THING best_befor| between_rar| between_rar|and bin|that bit|behind
bit|dark bit|longer blam|th_in bleed|a bleed|a_lot blender|is board_U_not| boil_and| boil_point|
boil_th| boil_water|test boil|point boil|th_DISH bon_it| bon_not| bon_what| boneless_rib_THING|
boneless_rib| boneless_rib|THING bon|in bon|in_$ bon|in_rib bon|it_is bon|sid breather| bring|N:few
brought_a| brown_on| brown|on bum_on| bung|th burn_at| burn_by| burn_i| burner|on burn|in burn|in_th
burn|th_DISH butter_is|out butter|by butter|by_th butter|don butter|for butter|so_no buzz_m_at|
by_N:some|they by_mistak|i by_rar|so by_th| bypass| by|THING by|th_THING b|on b|out b|r calf|in
call_is| call_out_N:core| call_them|in call_th| call|it_medium cam_U| cam_out|Nduration cam|off_th
can_a| can_help| can_i_hav| can_i_tak| can_miss_that| can_not|com can_not|keep can_not|talk
can_you_put| can_you|explain cancel_th|DISH cancell_so| cancell|so cancel|th can|a can|do_th
can|i_put can|stir can|w_mak cat_is| caught|and caught|th cayenn|and cayenn|and_DISH celsius_my|
celsius_not|fahrenheit celsius|not_fahrenheit center_is| chanc_i|am channel|N:core cheap_THING|
check_th| check|again chip|pan_is chop_and| chuck_som| chuck|out clear_th| clear|all clear|all_th
clear|it click_and| click| clock|N:core clock|so clock|so_i club_roast_Nweight| coat_ar| com_Nduration_after|
com_from| com_it| com_out_th| com_out|THING com_to_th| com|for_help com|out_in consider| cook_for|
cook_it_at| cook_it|at cook|through cor_is_at| cor_is|N:core correction|N:core correction|N:core_$
could_us| could|not count|them crack|on cream_on|th crust_is| cut_th_DISH| d_dong|N:core da_i|
dark_and| day_in| day_w| day|i_am decent| decid_against| degre_is| delet_th| dev|is di_and|
di_on| diall| dial|at diaper| did_i_put| did_i|say did_not_hav| did_not_hear| did_th_U| did_you_do|
did_you_get| did_you_se| did_y| did| did|N:few did|U dinner_go| dinner|at_N:oven dinner|tim_is
do_about_it| do_i_ask| do_i_bast| do_i_tak| do_i_ti| do_it_Nduration| do_it_n| do_i|turn do_i|us
do_my| do_not_car| do_not_chang| do_not_go| do_not_hold| do_not|b do_not|believ do_not|buy
do_not|hav do_not|know do_not|want do_roast| do_roast|DISH do_that|DISH do_th| do_th|THING
do_timer| do_timer|and do_truss| do_with| do_you_even| dog_back_in| don_w|U dong|N:core dong|N:core_on
don|and_in don|by_N:few don|for_P door_did_not| door_for| door_of|oven door_on| door|did door|hang_open
down_back_in| down_i| down_to|N:some down_to|Ngas-mark down|th_shop do|DISH_and do|i_go do|it_look
do|not_ask do|not_buy do|not_chang do|not_tell do|not_they do|not_you do|th_french do|w_hav
do|what_now drap| dress|th dress|th_DISH drink_in|THING drop|to_N:core dry_th| duck|out_for
earlier_and| earlier|if early_on| eat_Nduration_mor| eat_my| eat_with| eat|them eat|with_us
edg|to edg|to_edg els|can els|is empty_oven| enamel|roaster end_for| end_keep_her| end_of_th|
end_th|count end|of end|of_th enough_THING|for eta|on everyth_for| everyth|U everyth|back explain_th|revers
extractor_is| extra|Nduration f_and| fahrenheit_i| fallen_Nduration_off| fallen|behind far|out
fat_THING_U| fat_trim| fay| feck| feed_at| feed|th felix| final|answer finger|off finger|with
finger|with_th finish_THING|th finish|THING_th first_colour| first_so| first|this first|this_tim
fix_th| fix|th flag|N:core flash|N:few flat_out_her| flight_is| flight_is|delay floor_is| floor|sh
for_DISH_so| for_N:few_at| for_N:oven| for_a_smok| for_it|is for_my| for_th_day| for_th_first|
for_th_whol| for_th| forever_U|th forget_i_said| forget_th| forget|U forget|U_keep forgot_to|say
forgot|th_DISH forgot|to_tell forward| forward|Nduration_$ for|N:oven_$ for|Ndate for|Nduration_to
for|cream for|eat for|her for|m for|temperatur freez_th_plan| freez_th| freez_th|plan french|th_bon
fresh_out_of| fresh|on fre|for fridg_and| fridg_th| from_a| from_th| from_your| from|DISH from|N:oven_$
from|scratch f|N:few_$ gas_bottl| gas_is| gav|m get_DISH| get_away| get_f| get|anyth giv_it_m|
giv_m_a| giv_us|th given_up|it giv|him go_back| go_by| go_for_th| go_for|medium go_it| go_out_Nduration|
go_out_at| go_th|THING god|help_m gon|down good|even got_a_vegan| got_it_on| got_m|a got_no|DISH
got_to_that| got|N:few_P got|befor go|alongsid go|back_to go|by go|off_$ go|ok_or go|out_at
go|over go|too gram| green_DISH|on green| grey|and_sad grill| guest_ar|Nduration guest_hav|
guest_is| guest_lat| guest_lat|Nduration guest_to| guest|list h_do| h_drop| h_is|N:few had_THING_U|
had_said| had|her half_DISH| half_DISH|in half_ar| half|and_half half|ar hang_open_th| has_been_sat|
has_com|to has_gon|cold has_gon|down has_gon|ston has_gon|to has_got|N:few has_his| has|been_on
has|gon_way has|not_reduc haul_it_out| hav_another| hav_an| hav_cut| hav_got_no| hav_got|my
hav_it|is hav_miss|th hav_not|finish hav_not|turn hav_put|on hav_salt| hav_ti| hav_to_DISH|
hav_to| hav|a hav|a_Nweight hav|finish hav|fish hav|got_a hav|miss hav|no_DISH hav|prim hav|prim_rib
hav|som hav|turn_it head_out| headcount_has| heat|no_blow heat|to help_m|now helper|it helper|it_is
help|from henderson|ar her_P| her_THING_on| her_U|my her_at|N:core her_a| her_chair| her_down|to
her_in_th| her_w| her|Nduration_after her|and_still her|immun her|immun_system her|steady her|throat
him_at| him_a| him|at_th him|off his|plat his|well his|well_don hit_N:core|lik hob_is| hold_at|N:core
hold_on|a hold|that hold|that_thought hom_and| homeless| hotter| hottest| hot|THING_$ hous_and|
hous_a| hous|at how_com_th| how_do|you how_is|sh how_long_do| how_long|will how_many_mor| how_much|did
how_w| how|ar_you how|is_everyth how|is_th how|it_was how|pink how|should_i how|warm how|will
hush_up| h|cut i_THING|N:core i_after| i_alway| i_am_N:few| i_am_a| i_am_cut| i_am_get| i_am_so|
i_am|N:few i_am|N:some i_am|cut i_am|not i_am|run i_am|so i_call| i_carv_it| i_clean| i_cook|at
i_count| i_hav_cut| i_hav_lost| i_hav_salt| i_hav|chang i_hav|cut i_hav|drop i_hav|got i_hav|put
i_hav|switch i_kill| i_know_i| i_know|celsius i_mean_not| i_n_a| i_order| i_remov_it| i_said_N:few|
i_said|N:few i_saw|N:core i_slic_it| i_still| i_stuck| i_tak_it| i_turn_on| i_wait| i_warm|
i_will_go| i_will|tell i_would_P| ic_water|THING if_THING|DISH if_sh| if_they| if_w_ar| if_w_at|
if_you_would| if|i_hav if|th_THING if|th_oven if|they_ar ignor_th| in_DISH|DISH in_THING|N:few
in_at|N:few in_belly_com| in_boil| in_boil|water in_for|Nduration in_front| in_her_chair| in_her|throat
in_law|pull in_law|sh in_plac| in_pound| in_set| in_th_fat| in_this|flat in_this|rental in_th|thickest
in_with| inform|what inform|what_is into|my in|N:few_plac in|THING_and in|a_U in|at_N:core
in|between in|charg_of in|december in|degre in|it_now in|my_lif in|plac in|th_back in|th_centr
in|th_shop in|that_$ in|ther_now in|till ioro| is_N:core_too| is_N:core|near is_N:few_blam|
is_N:few_sharp| is_Nweight|in is_U_th| is_a_thick| is_about| is_alight|onc is_all_gon| is_all|
is_all|w is_ask_for| is_a|vegetarian is_boneless|Nweight is_bring_th| is_carv|it is_dark_and|
is_delay_so| is_empty_oven| is_fan| is_fir| is_fir|in is_flam| is_flam|in is_gon| is_go| is_grey|and
is_heat|no is_her|to is_him| is_his| is_hover| is_how|w is_in|at is_in|between is_in|th is_it_N:few|
is_it_all| is_it_out| is_it|you is_lat|they is_left|on is_lukewarm| is_my_THING| is_not_brown|
is_not_eat| is_not_got| is_not|N:few is_not|go is_not|hav is_not|right is_out_THING| is_overdon|
is_pull| is_pur| is_rar|fin is_rest|in is_rest|under is_roar| is_sear| is_someth|i is_start|THING
is_starv|let is_stuck|in is_stuff|with is_taken| is_th_first| is_th_grey| is_that_on| is_that|
is_ther_a| is_up_at| is_vegan|now is_what|they is_when| is_without| is|N:few_$ is|N:few_DISH
is|N:few_THING is|U is|U_com is|after is|becom is|bedlam is|behind is|bleed is|cover is|cut_th
is|diabetic is|do_DISH is|eat is|giv_m is|help_m is|hit is|join is|lot is|ly is|not_a is|not_cook
is|not_great is|not_ti is|noth is|off_to is|preheat_to is|rest_on is|sak is|sit is|smell is|spit
is|start_THING is|th_good is|th_grey is|th_old is|ther_in is|turn_th is|wash is|way is|weak
is|with is|written it_after|all it_all_in| it_another| it_beep|so it_b|ready it_com|to it_first_then|
it_first|this it_get_to| it_get| it_go|U it_has_been| it_has_gon| it_has|N:core it_hit| it_how|
it_h| it_in|N:few it_is_Ndegrees:some| it_is_don| it_is_sear| it_is_still| it_is_stuck| it_is|N:oven
it_is|a it_is|bedlam it_is|bleed it_is|burnt it_is|medium it_is|my it_is|nearly it_is|stuck
it_is|tent it_is|ti it_medium|well it_m|in it_off|Nduration it_on|a it_out|on it_right|now
it_say|Ndegrees:core it_this_THING| it_took| it_was_not| it_was_th| it_was|N:some it_well|
it_wer| it|a_bit it|again_$ it|all_$ it|all_over it|already it|away it|can_not it|finish it|is
it|is_grey it|is_hold it|is_nearly it|lik_that it|medium_well it|mor it|through it|up it|upsid
it|upsid_down it|was_not it|writ i|ask_for i|begin i|bought i|burn i|burnt_th i|crank_th i|cut_my
i|forget i|found i|grab i|grab_th i|n i|n_to i|never_did i|season i|slic_my i|stuck_th i|stuff
i|to i|was jaysus|th jump|in_th keep_her|steady keep_your| keep|in keep|it_warm keep|your kept_at|
kettl|is kevin| kindly_inform_m| kindly_inform|what kindly_tell| knew| knock_it_down| knock_on|
knock_th_oven| knock|off know_about| know_at| know_so| know_what_DISH| know_when_Nduration|
know|celsius label_say| label|say lack|a land|on_th last_th|you last| last|Ndate last|bit last|car
last|look lat_for| lat_it_is| lat_i| lat_on_tonight| later_is| later_my| later_th| lat|they_text
law|pull law|pull_up law|sh leave-in_on|say left_at| left|on_th left|over leg_THING| leg_THING|Nweight
less_than| let_th_cat| let_us_not| let_us|DISH let_us|get let_us|mak let_us|tak let|it let|m
li_it_is| lick|th lif|is light_is| lik_a_THING| lik_an| lik_her|well lik_in| lik_that|is lik|i_am
lik|th_sea list|all list|all_th list|th_alternativ lit_it_at| littl|oven_is lit|it_at load_of|
long_do| long_mor|will longer_is| long|again long|befor long|can_th long|hav_i long|will look_Nduration|
lost_th_THING| lost|N:few lost|my lost|power low_at| low_to| low|to lucy|can lucy|can_not lunch_at|Nclock
m_N:few|tim m_Nduration_on| m_all| m_all|th m_at|Nduration m_a|holler m_b| m_down| m_forever_U|
m_forget|U m_in|Nduration m_lik| m_so| mad_and| mak_it_after| mak_th| many_mor| marco|sit marco|sit_down
marni| mean_not| meant|to medium|rar_$ medium|rar_and medium|rar_at messag_when| mi_U| middl_and|
middl_i| middl_of_th| middl|b middl|is_at mind|get mind|get_rid minut_till| minut|to miss_out|th
miss|th mistak|i mi|U mor|early mor|or_less most|of_them much_as| much|blood much|did murder_a|
must_th_THING| must|b must|hav my_DISH|is my_N:few| my_P|can my_P|did my_P|will my_THING_THING|
my_THING_th| my_THING|THING my_U_is| my_ex| my_finger_off| my_good| my_parent| my|P_th my|THING_has
my|ear my|list my|mistak my|old m|if m|in_Nduration m|na m|pound m|someth m|th_next m|th_second
m|th_whol m|when_sh n_Nduration_befor| n_another| n_feed_at| n_to_DISH| nagg_it_is| nam|of
near|ready never_cam| never_did| never_got_th| never_mind_that| never_mind| never_mind|get
never_mind|that never_turn| never_us| never|did new|THING next_door_is| next_on| night_i| nix_th|
no_THING|THING no_fresh|DISH no_n|to no_pink|for nobody|her non_to_b| not_any|THING not_b_ready|
not_been| not_bother_with| not_brown| not_car| not_chang| not_forget| not_gon| not_got_THING|
not_i_am| not_know|th not_let_it| not_medium| not_ready|yet not_run| not_sit| not_so| not_stop|bleed
not_talk|for not_that|ther not_trust| not_want_to| not_want|th not_want|to noth|with notion|how
not|any not|at_N:core not|buy not|clos not|exist not|fahrenheit not|feel not|hav not|put_a
not|put_th not|reach not|ris now_N:core|it now_P|is now_at|N:core now_how| now_oven| now_that|
nowher_near|ready now|i_do now|th_band no|N:core_not no|THING_for no|THING_or no|U no|electric
no|heat no|no_strik no|show no|to number_am_i| number_i| number|on oclock_do| of_all|th of_butter|by
of_th_even| of_th|DISH of_top| of_top|THING of_us|this off_Nduration|ago off_by| off_in_N:few|
off_no| off_or| off_to_get| off_what| off_with| off|in_th off|th_Nduration off|th_list off|th_r
off|to_N:oven of|Nduration_$ of|everyth of|roll of|th_N:few of|th_U of|th_guest ok_THING| ok_i_am|
ok_so_N:core| ok_so|i ok|dial ok|dial_is ok|thx ok|to old_folk| old_is| old|U olly|is on_by|
on_earth| on_hot| on_how| on_i_hav| on_in|th on_our| on_th_cabl| on_that_is| on_th| on_th|back
on_th|bottom on_th|dial on_th|middl on_tonight|Nclock on_track|or onc_it| on|DISH_till on|N:oven_and
on|all_sid on|mor on|mor_tim on|my_THING on|th_bench on|th_clock on|th_counter on|th_phon on|th_r
on|th_tabl on|then_$ on|to_boil on|today on|track_or on|yet open_a| open_for|Nduration open_on_th|
open|for_Nduration open|it or_DISH_it| or_DISH|whatever or_do_it| or|DISH_it or|h or|should
ottolin| our_THING| our_at| our_guest| out_Nduration|i out_back| out_befor|it out_do| out_or|
out_they| out_this| out_th|DISH out_too_much| out_w| out|again out|again_$ out|i_was out|th_back
out|this_minut oven_at|Nclock oven_befor| oven_door|hang oven_down_in| oven_from_N:oven| oven_i|put
oven_run| oven_to|Ndegrees:oven oven_w| oven|THING_w oven|door_is oven|glov oven|is_N:some
oven|is_banjax oven|lit oven|on_for oven|pack_up oven|stand oven|th_THING over_a| over_it|is
over_with| over|N:core_do over|and_don over|in_th own|THING own|a own|a_THING packag| pan_is_in|
pan|with park|at_th pass_m|th pass_through| pass_us|th pass|N:core past_well_don| paus|everyth_$
peak_at| peak_at|N:core peek| peopl_at| peopl|cancell per_THING| per|THING pet|is pick_it|
pick_up|a piec_of| piec_of|THING pink_and| pink_for| pink_is| pink|at pink|not pitch|in plan_on|N:few
plat_what| plat|and_th plat|ar_warm point|at pok|m poor|th pop_is| pound_do| practic_that_is|
pregnant_is| preheat_to| present_and| present_and|correct present|and present|and_correct press_N:few_for|
press_N:few|for press_it_with| press_someth|or priest| priya|will priya|will_do pull_for| pull_th|
pull|in push_it_in| put_Nduration| put_it_to| put_som| put_th_bin| put_your| put_you| put|DISH_DISH
put|m put|oven_on quick_th| quiet|P quiet|now r_DISH|with r_THING| r_at| rar_it| rar_so_rar|
rar_so| rar|fin rar|so_rar raw_THING|and read_of| read_of|N:core ready_for_th| ready_for| ready_to|
ready|for_th ready|in_tim ready|or ready|yet read|was reason_w| reckon_i| reckon_th|oven reckon|th_oven
reckon|w_ar reckon|you_could reduc_for| reheat|th remember|that remind|us reset|everyth reset|everyth_$
rest_of_th| rest|Nduration_already rest|ar rest|do rest|of rest|will_you rib_THING| rib_with|
ribey_roast|no rib|of ric| ric|cooker right_this| right_this|second right|or right|over right|to
road_ar| roast_DISH|on roast_Nweight|no roast_at|Nclock roast_for| roast_has| roast|DISH_go
roast|DISH_on roast|Ndate roast|Ndate_Nclock roast|is_Nweight roast|no roast|no_bon roll_DISH|
roll_and| roll_is| roll|out roll|start rough_up|in roughly|how run_N:some|hot run_Ndegrees:some|hot
run_back_in| run_m_through| run|th_dog salt_U| salt_it|so salt_i| salt_th| salt_to| salt|for
salt|it_last salt|so salt|so_early sat_ther| sav|this saw| saw|N:core say_N:core_P| say_Nweight|
say_h| say_someth|onc say_your| say|N:some_$ say|it_was say|that_again school|and scor_in|
scrap_that| scrap|that sear_at|all seat|and seat|and_hungry second|THING second|on seen_th|
seen|my serv_Nduration|later serv_at_N:core| serv_at| serv_at|Nclock serv|at_Nclock set_for|
set_th| set|a set|for set|on sh_had| sh_is_read| sh_is|Nweight sh_is|U sh_is|allergic sh_is|run
sh_would| shall_eat_at| sharp|U_th shav_Nduration| shav_Nduration|off shaz| shelf_it| shelf_it|is
shift|everyth shift|everyth_by shiny| shop_for|Nduration shop_had|no shop_is| shop|run short_of|
should_hav_been| should|THING should|do should|hav show_th| sho|off shut_it_off| shut_th| shut|up
sh|do sh|got sh|said sh|was sid_is| sid|and_i sid|down silenc| simpl| sinc|it_is sit|down_to
skin|on skip_th_THING| slic_and| slic_is| slic|is slid|th slow_today|Nduration slow|go slump|
smok_com_out| smok_com| smok|Nduration smok|detector smok|everywher smok|in so_DISH|it so_N:core|in
so_do|not so_much_as| so_much| so_noth|with so_rar|it so_th|DISH so_what|do so_you|no someth_is_in|
someth|onc someth|onc_it som|tim sorry_it| sous| so|dinner so|i_pok so|long so|nobody so|tak_it
so|what_ar so|which speak_celsius| split_and| squint| stab| stag|ar stag|ar_w stand_in_for|
stand| stand|by_$ stand|rib_N:few start_Nduration| start_all_over| start_at| start_a| start_it|hot
starter_is|at start|again_from start|from starv|let starv|let_us steady|oven stick_Nduration|
stick_thos| still_on|for still|can still|crunchy still|mak still|not stink| stir|th_DISH stop_at|
stop|bleed stop|for stop|to str_ar| straight_out| straight|on street|is_dark stuck_at| stuck_on|
stuck_on|N:core stuck|th_THING stuff_is_in| stuff|it supper|club supper|is swap|th swear|by
swear|it swed| swell_up|h switch_it| switch_on|th switch|th swor_by_rar| ta_th| tabl_at|Nclock
tabl_i| tabl_laid| tabl|fork tabl|tonight tak_it_off| tak_it|back tak_th_bin| taken_th_roast|
taken_th| tak|bath tak|for tak|m talk|in talk|m_through talk|to_th target_N:core| target|N:core
tast_lik| teaspoon| teddy_is| tell_m|my tell_m|to tell_you_about| tell|N:core_$ temperatur|of
temperatur|th_whol temperatur|to tent_and| text_m|when th_DISH_U| th_DISH_at| th_DISH_boil|
th_DISH_hav| th_DISH_i| th_DISH_want| th_DISH|anymor th_DISH|idea th_DISH|on th_DISH|sid th_N:few|
th_N:few|P th_N:oven| th_P_eat| th_THING_board| th_THING_man| th_THING_run| th_THING_say| th_THING_so|
th_THING|Nclock th_THING|b th_THING|check th_THING|of th_U|has th_babysitter| th_butter|so
th_center|is th_clock|so th_counter|Nduration th_dinner_on| th_door|shut th_even| th_even|w
th_extractor| th_fridg_at| th_henderson|ar th_it| th_joint|is th_liv| th_liv|room th_middl_and|
th_middl|b th_on| th_on|th th_other|oven th_phon_to| th_phon|to th_plan_of| th_plan|of th_roll_and|
th_roll|out th_roll|start th_run| th_r|win th_salt_on| th_say| th_second_it| th_sid|too th_slic|look
th_tabl|Nclock th_tabl|at th_tabl|fork th_thick|end th_tim_you| th_timer|for th_tim|you th_trip|
th_trip|switch th_weather| thank|b thank|b_to that_Nduration|i that_for| that_go| that_is_him|
that_is_my| that_is|it that_it_is| that_will| that_with| that|is_all that|lad that|phon that|sound
that|with_th their_coat| them_THING| them_i| them_on| them|on_th then|sh then|what ther_a|
ther_is_fir| ther_is_flam| ther|anyth_i ther|is_N:few ther|is_THING ther|now_$ ther|to ther|with
thes_fahrenheit| thes_fahrenheit|i they_hav|a they|b they|eat they|hav think_it|is third|and_N:few
this_for_th| this_oven|is this_whol| this|dinner_$ this|flat this|is_for this|song this|up
this|year throat|clos through_and| through_th| throwaway| th|DISH_bin th|DISH_or th|P th|P_can
th|P_n th|THING_that th|THING_with th|bon th|bon_is th|bon_off th|butter_is th|cabl th|candl
th|celsius th|chook th|count_down th|dairy th|dentist th|dog_Nduration th|dog_and th|door th|driv
th|edg th|element th|extractor_is th|fridg th|green th|helper th|hour th|insid th|lad th|latest
th|long th|man th|middl_of th|next th|old_folk th|on th|on_th th|orang th|oven_N:oven th|oven_door
th|peeler th|plan th|press th|public th|pull th|quiz th|raw th|restaurant th|revers th|rib
th|roast_DISH th|roast_at th|roast_out th|roast_went th|schedul th|sherry th|slic th|stand
th|street th|tabl_DISH th|thickest th|tip th|toddler th|top th|traffic th|us th|wedd ti_with|
till_Nclock|what till_th_P| till|th_P till|when tim_in| tim_what|you timer_U| timer_for|Nduration
timer_never_mind| timer_you| timer|on_for tim|out_$ to_N:oven|Nduration to_N:oven|to to_Nduration|
to_b_N:some| to_b_Nduration| to_bast_in| to_buy|anyth to_fix| to_get_in| to_hear| to_it|h to_know_what|
to_know|what to_mak|th to_mass| to_m|lik to_room| to_room|temperatur to_run|th to_salt_it|
to_thos| to_th|next to_warm|th today|Nduration_behind together|with told_P| told|th tonight|Nclock
too_i| took_it|out too|THING top_THING|i to|N:core_kindly to|N:some_$ to|ask to|eat to|get_in
to|get_th to|hit to|pick_up to|put_th to|set_th to|stand to|tak_th to|ti_it track|or trick|
trim_it_is| trim|them truss_and| turn_down| turn|up twic|as ty_it_is| ty_it|up ty_th| undo|th
unsay| up_Nduration| up_all| up_and_it| up_at|N:oven up_do| up_flam| up_front| up_is| up_it|
up_so| up_ther| up_to_it| up|after up|at_N:few up|front up|on_a up|th_THING us_eat| us_finish|
us_go_medium| us_hav_it| us_hav| us_that| us_this| us_what| us|THING_$ us|a_THING us|c us|get
us|not_bother us|tak us|will_b vegan|com vegetarian|sinc volunteer| w_ar_down| w_ar_do| w_ar|THING
w_ar|mak w_go_th| w_got_on| w_hav_no| w_hav|got w_wait|for w_will_sear| w_will_sit| wait|with
walk|in_and want_for| want_supper| want|for want|in want|medium_well warehous| warm|drawer
was_N:core_and| was_N:core|when was_go_to| was_look_at| was_on|th was_still| wash|your was|N:core_not
was|Nclock was|behind was|in was|lik was|look_at was|my_P was|off was|talk was|talk_to was|ther
watch|it water|THING_test water|boil_at way_out|do way|down way|out_do wedd| weigh_Nweight|and
weight_of_DISH| well_do|DISH well_it| welly| well|don_what went_fly| went_into| went_off|so
went_on|th went_out_at| went|off wer_Nduration_behind| wer_at|N:core wer_not| wer|you wet_floor|sh
what_DISH|ther what_do_you| what_els|could what_for| what_go_on| what_hav|i what_heat|do what_if|
what_is|Nweight what_oclock_do| what_on| what_stag| what_stag|ar what_they| what_way| whatever_is|
what|do_it what|do_they what|els what|exactly what|is_th what|should_it what|tim what|w_want
what|you_learn when_P| when_ar| when_can_i| when_do_i| when_do|i when_folk| when_is|THING when_it|
when_th_middl| when|do_i when|you_ar wher_did| wher_it_say| wher|do_i which_th| which|THING
whil_i_am| whil_you| whip|it whip|it_out whol_family| whol_ribey_roast| whol|gang who|did who|eat
who|has why_is_th| why_is|th why_not_DISH| why|am why|am_i why|ar_w why|so will_b_a| will_b_gon|
will_b_hav| will_b|N:some will_do|it will_hav_a| will_not_eat| will_not_go| will_not|do will_not|go
will_sit| will|DISH will|THING will|not will|pass will|tell will|want win_in| wink|Nduration_$
wis_N:few_bon| wish|i with_a_THING| with_all| with_her|so with_it_is| with_th|second without_a|
without_th| without| without|tell with|no_DISH with|th_P with|th_lid with|what wonder_if_THING|
word|of work_th| would_a| would_lik_to| would_not_mind| would_not|b would_you_mind| would_y|
would|N:core would|a would|kill would|say would|th_THING wrong_it|is wrong|button w|do w|eat
w|hav w|shall w|still w|turn_it w|will w|win yank_it_out| year|it yell|at yes_to| yes_w| yes|i_am
yet_do| yet_do|not you_can_not| you_carv| you_did| you_do_not| you_do_timer| you_got|a you_i_hav|
you_it|is you_reckon|it you_say|it you_set| you_th_DISH| you_turn| you_when| your|phon you|carv
you|could_hav you|cut you|don you|ever you|help you|think you|will_hav |@104.0 |@106.2 |@107.5
|@109.6 |@110.1 |@117.2 |@130.4 |@130.8 |@134.0 |@134.5 |@139.5 |@143.1 |@18.0 |@24.4 |@28.8
|@29.3 |@36.0 |@4.17 |@61.2 |@62.3 |@64.6 |@70.4 |@78 |@78.0 |@84.0 |@85.1 |@86.1 |@87.1 |@9.5
|@90.1 |DISH_DISH_it |DISH_DISH_with |DISH_again |DISH_already |DISH_at_th |DISH_back |DISH_cook
|DISH_first |DISH_from |DISH_it_is |DISH_nobody_is |DISH_on_th |DISH_th |DISH_ther_is |DISH_this_year
|DISH_yet |N:core_N:some |N:core_and_do |N:core_in_Nduration |N:core_last |N:core_let |N:core_let_m
|N:core_lik |N:core_say_so |N:core_tell_m |N:core_was |N:core_year_old |N:few_about |N:few_and_N:few
|N:few_bon_rib |N:few_down |N:few_it |N:few_less_than |N:few_month_pregnant |N:few_peopl_in
|N:few_they_ar |N:few_tonight_$ |N:oven_already |N:oven_at |N:oven_not |N:some_U |N:some_percent
|Nclock_and_th |Nclock_befor |Ndate_no |Ndegrees:few_over |Nduration_already_$ |Nduration_and_then
|Nduration_away |Nduration_could |Nduration_how |Nduration_is_th |Nduration_is_that |Nduration_lat_th
|Nduration_sooner_than |Nduration_too |Nduration_would |Ngas-mark_now_$ |Nweight_DISH |Nweight_i
|P_get |P_go |P_has_arriv |P_i_will |P_sh_is |P_up |THING_THING_to |THING_after_all |THING_ar_smok
|THING_as_nail |THING_back_Nduration |THING_cry |THING_for_Nduration |THING_for_U |THING_hang_on
|THING_if |THING_in_my |THING_in_this |THING_is_$ |THING_is_that |THING_oven_is |THING_show_Ndegrees:few
|THING_ther_is |THING_under_it |THING_why |U_ar_out |U_cut |U_hav |U_in |U_no_$ |U_of_it |U_over
|U_th_gam |a_THING_in |a_THING_is |a_bag |a_bit_off |a_bit_pink |a_chicken |a_decent |a_disaster_$
|a_go |a_list_of |a_loaf |a_nightmar |a_not |a_nut |a_proper |a_stick |a_week |abl_to |about_DISH
|about_right |account |after_i |after_w |ag_ago_$ |again_N:few |all_about |all_b |all_can |all_it
|all_right_to |all_sat_THING |all_sat_down |all_th_DISH |all_th_step |all_this_$ |alon_for
|already_so |already_what |alway_do |alway_lat |am_i_do |am_i_suppos |amaz |an_alarm |an_old
|and_DISH_all |and_cook |and_correct |and_cut |and_don_with |and_left |and_noth |and_oil_$
|and_slow |and_still_behind |and_th_lik |and_this_is |and_ti_them |animal |any_DISH |any_circumstanc
|anymor_th |anyth_w |appear |ar_a_no |ar_at_th |ar_away |ar_back |ar_boil |ar_burnt |ar_clean
|ar_cook |ar_in_$ |ar_park |ar_say |ar_start |ar_too |ar_w_do |ar_want |ars |as_rock |ask_how
|assembl |at_N:core_or |at_N:few_or |at_N:oven |at_N:oven_for |at_N:oven_w |at_Nclock_THING
|at_Nclock_can |at_Nclock_not |at_Nclock_to |at_Ndegrees:oven_$ |at_som |at_th |at_th_edg |at_th_school
|at_th_stov |aw |b_all |b_all_right |b_eat |b_gon_Nduration |b_r |b_th |b_to |b_to_god |back_it_was
|banjax |beauty |bedlam |beep_$ |beep_$_$ |befor_N:few_$ |befor_Nclock_$ |befor_th_phon |befor_w_sit
|began |behind_at |behind_with |bench |between_$ |between_$_$ |bit_i |bit_no |bleed_$ |bleed_$_$
|blood_$ |blood_$_$ |bloody |blush |boat |boil_water_$ |bon_i |bonfir |bought_it |br_him |bring
|brought_a |bugger |butter_$ |butter_$_$ |butter_for_th |butter_i |by_accident |by_th_U |can_get
|can_not_abid |can_stay |catch_$ |catch_$_$ |chanc_i_am |clock_for_Nduration |colour_$ |colour_$_$
|com_from |com_that |com_too |continental |convection_$ |convection_$_$ |cook_this |cream_on
|cri_off |crispy_DISH |crook |cycl |dangerous |davo |day_$ |day_$_$ |delay_so |dessert |detector
|did_$ |did_$_$ |did_you_hav |differenc |dinner_$ |dinner_$_$ |dishwater |display_has |do_Ndate
|do_i_stick |do_if |do_is |do_well |dog_$ |dog_$_$ |dog_Nduration |don_how |don_lik |don_no
|door_$ |door_$_$ |door_it |down_Nduration_for |down_THING |down_is |down_to_N:some |drink_$
|drink_$_$ |driver |drop_it_$ |drop_out_$ |drummer |early |eat_and |enough |enough_i |everywher_and
|exactly_do |f_N:few_$ |fan_and |feed_at |fight |fin_wher |fin_wher_it |finger_$ |finger_$_$
|fir_what |first_P |flash_N:few |for_Ndegrees:core |for_Nduration_th |for_Nduration_what |for_THING_$
|for_a |for_m_and |for_m_th |for_th_day |for_th_last |for_th_lot |for_th_whol |for_your_P |forgot_to_buy
|fridg_and |from_$ |from_$_$ |from_Nclock_$ |from_THING |from_th_stov |from_you |garag |gas_mark
|get_on_with |glow |gluten_$ |gluten_$_$ |go_again |go_away |go_back_in |go_from |go_sh |golf
|gon_off |gon_so |gon_straight |goos_fat_$ |grandmother_is |green_$ |green_$_$ |green_on |guest_it
|gun |h_$ |h_$_$ |hack |had_chemo |halal_$ |halal_$_$ |happen_at |has_N:core |has_becom |has_caught
|has_crept |has_gon_$ |has_gon_out |has_gon_up |has_gon_vegan |has_not_thicken |hav_don |hav_it_is
|hav_it_rar |hav_m |hav_mad |hav_not_start |hav_start |hav_taken_their |heat_up |her_N:oven
|her_already |her_lik |him_in |him_on |his |hit_th_oven |hom_$ |hom_$_$ |hous_th |hover |how_it_is
|how_it_was |how_long_i |i_am_so |i_ask_for |i_go_and |i_got_N:core |i_hav_slip |i_pok_it |i_reckon
|i_said_$ |i_should_hav |i_stop |i_would_do |ic |ic_so |important |in_Nclock_$ |in_a_bit |in_a_tick
|in_and_it |in_at_N:oven |in_befor |in_fahrenheit |in_kilo_and |in_phoenix |in_rib |in_so |in_th_door
|in_th_queu |in_th_roast |in_th_whol |in_they_ar |in_tim_$ |in_too |in_w_hav |internal_temperatur
|into_it |intolerant |invit_themselv |is_$ |is_$_$ |is_N:core_U |is_N:few_bon |is_N:some_$
|is_U_$ |is_U_in |is_alight |is_all_i |is_assembl |is_at_N:core |is_at_N:oven |is_at_N:some
|is_bring_th |is_bust |is_complet_$ |is_cook |is_di |is_du |is_european |is_finish_and |is_first
|is_fix |is_from |is_full_$ |is_go_to |is_her_to |is_how_many |is_it_till |is_keep |is_load
|is_m |is_mad_and |is_my_magic |is_not_great |is_not_requir |is_on_N:oven |is_on_fir |is_pain
|is_park |is_plan |is_plenty |is_pour |is_push |is_raw_in |is_rest |is_sak_$ |is_slip |is_soup
|is_ston_cold |is_strain |is_swell |is_volunteer_for |is_your_P |it_after |it_again_$ |it_already_$
|it_another |it_at_th |it_away_$ |it_back_$ |it_befor |it_com_$ |it_dinner |it_do_$ |it_hav_to
|it_in_a |it_is_sleep |it_last_night |it_m |it_my |it_over_$ |it_rest |it_shoot |it_should
|it_straight |it_they_ar |it_touch |it_well_don |it_with_th |itself_$ |itself_$_$ |itself_off
|jump_Ndegrees:some_in |kavi |ketchup |keto |kidney |know_what |l |ladder |land_in |lasagn
|last_i_look |last_th |lat_or |later_and |lean |leave-in_on |lend |less |less_$ |less_$_$ |less_now
|lick_th |light_$ |light_$_$ |lik_a_THING |lik_sho |loaf |lost_N:few |low_heat |lump_$ |lump_$_$
|m_a |m_an |m_at_N:core |m_do |m_i_said |m_my |m_onc |m_through_th |mad_DISH |mad_you |mak_with
|math |month_$ |month_$_$ |mor_tim |morn_$ |morn_$_$ |mouldy |mouth_now |much |my_P_i |my_THING_it
|n |n_Nduration_they |n_another |n_th |n_to_eat |need_$ |need_$_$ |never_said |new_THING |next_door_is
|next_on |night_and |no_DISH_for |no_blow |no_signal |not_Ndate_$ |not_chang |not_don_$ |not_fahrenheit
|not_find |not_forget |not_great |not_reduc |not_right |not_say |not_se |not_stop |not_wak
|now_insid |now_instead_of |number_i |october |of_P |of_fresh |of_god |of_th_day |of_thes |of_tim
|of_us |off |off_N:few |off_and_it |off_is |off_on |off_or |off_th_bon |offset |ok_to_eat |ok_with_th
|old_THING |old_school |on |on_DISH_and |on_DISH_till |on_P_$ |on_accident |on_again_th |on_bottom
|on_do |on_how |on_m |on_m_it |on_my_end |on_out |on_th_bathroom |on_th_door |on_th_menu |on_th_plan
|on_th_scal |on_th_stick |on_th_stov |on_then |on_to_boil |open_Nduration |open_and |operation
|or |or_along |or_am |or_am_i |or_lid |or_someth |or_what_$ |order_$ |order_$_$ |other_$ |other_$_$
|ounc_$ |ounc_$_$ |out_Nclock |out_Nduration_ago |out_do |out_i_was |out_of_ther |out_overnight_$
|out_th_DISH |out_too |out_yet |over_th |overwhelm |pan_$ |pan_$_$ |pan_no |pan_with |pay_for
|penalty |peopl_Nclock |peopl_THING |peopl_and |peopl_hav |peopl_not |pin |pink_is |pool |possibl_to
|pour_out |power_in |preacher |prep_$ |prep_$_$ |pretty |pric |pull_at |pull_in_th |put_away
|put_them_down |put_you |quiet_$ |quiet_$_$ |r_th |rais |rar_at |rar_so |read_you |remain_$
|remain_$_$ |remember_how |requir_remov |rest_$ |rest_$_$ |rest_U |rest_for |rib_roast_$ |right_on
|right_with |risen_yet |roar_$ |roar_$_$ |roast_is_Nweight |roast_so |rock_up |roll_up |room_$
|room_$_$ |rosy_$ |rosy_$_$ |run_N:some_hot |run_in |said_N:core_$ |said_it |say_N:core_U |say_Nweight_$
|say_do |say_h_will |say_yesterday |scald_my_arm |school_and |se_to |separat |servic |set_N:few
|set_for_th |shap_$ |shap_$_$ |sheila |shelf |shell |shoot_for |shop_had |short_of |should_it_go
|shrimp_$ |shrimp_$_$ |sid_it |sid_it_is |sinc_Nduration_ago |sit_it |skip_that_bit |slic_$
|slic_$_$ |slic_and |slic_at |slid_off_th |small_on |so_N:few_mor |so_rar_it |so_scratch |so_scratch_that
|so_that_on |so_w_hav |somewher_$ |somewher_$_$ |soon_as |spac |spaniel |squint |stand_in_for
|still_park |stood_on |stop_at |str_in |straight_into |straight_into_my |strain |stuck_$ |stuck_$_$
|surgeon |sweat |tabl_DISH |tak_bath |tak_over |takeaway |target_$ |target_$_$ |temperatur_is_Ndegrees:core
|text_$ |text_$_$ |th_DISH_Nduration |th_DISH_can |th_DISH_sh |th_DISH_that |th_DISH_what |th_DISH_yet
|th_Nweight |th_P_of |th_THING_a |th_THING_am |th_THING_b |th_THING_no |th_THING_pan |th_alternativ_for
|th_band |th_band_overran |th_bast |th_baster |th_begin |th_bench |th_biscuit |th_bon_in |th_bon_off
|th_bottom_of |th_bottom_oven |th_butter_step |th_candl |th_card |th_cast |th_centr |th_cold
|th_cousin_ar |th_do |th_dog_THING |th_door_it |th_end_of |th_go |th_heat_out |th_heat_up |th_interstat
|th_joint_out |th_joint_to |th_label_$ |th_last_entry |th_left_oven |th_lord |th_meal |th_middl_$
|th_middl_shelf |th_money |th_number_$ |th_number_for |th_old_folk |th_oven_as |th_oven_flam
|th_oven_in |th_oven_shelf |th_oven_up |th_pass |th_pictur |th_plug |th_quiz |th_roast_went
|th_roll_they |th_sam |th_sam_as |th_say |th_shop_Nduration |th_sid_$ |th_sofa |th_stov_$ |th_sun
|th_tim |th_top |th_top_$ |th_w |th_whatsit |than_i |that_DISH_timer |that_back_$ |that_in
|that_last_th |that_ther_is |that_thought |them_in |ther_b |ther_on_th |ther_to |thes_day_$
|they_hav_hit |this_DISH |this_and |thos_$ |thos_$_$ |thos_bon |till_N:few_then |tim_N:few
|tim_would |timer_$ |timer_$_$ |timer_go |timer_how |timer_i_am |timer_they |timer_you |to_N:oven_and
|to_N:oven_at |to_N:oven_put |to_bon |to_edg |to_fetch_P |to_get_ic |to_help_$ |to_know |to_next
|to_peel_$ |to_purchas |to_reheat |to_rest |to_salt_it |to_shop |to_th_floor |to_th_match |to_th_tabl
|today_Nduration |together_with |tong |too_$ |too_$_$ |too_quick |too_soon |touch_anyth |track_or
|trust |tuck |turn_on |under |under_th_tabl |up_DISH |up_Ndate |up_P |up_again |up_if |up_is
|up_th_wall |up_what |upstair_$ |upstair_$_$ |usual |very_much_$ |very_sick |w_$ |w_$_$ |w_do_th
|w_hav_$ |w_se |w_speak |wait_for_them |wait_it |wait_it_is |waiter |want_her_well |was_lik
|wash_up_$ |way_too_early |weigh_Nweight_$ |welly |went_in_Nduration |went_into |went_out |what_P_$
|what_it_claim |whatsit |when_w_eat |whil_P |whil_i_was |whil_w_wait |why_w |will_no |will_not_touch
|with_N:few_rib |with_a_U |with_celsius |with_no_DISH |with_th_THING |with_you_$ |without_turn
|wok |would_tak |would_you_do |wrap_and |writ_N:core |year_and |yet_so_they |you_could_yell
|you_explain |you_figur |you_learn_about |you_mak |you_on |you_say_$ |you_told |you_when |your_hair
|your_list |z |zon
-15 @1.6| @107.2| @110.1| @131.0| @134.6| @137.2| @2.1| @25.6| @35.3| @36.3| @5.3| @62.2| @62.6|
@66.5| @70.2| @80.1| @99.0| DISH_DISH_so| DISH_all_right| DISH_and|DISH DISH_and|it DISH_ar_not|
DISH_ar|not DISH_cover|or DISH_cream|on DISH_get| DISH_go|in DISH_in|it DISH_in|now DISH_in|yet
DISH_is_that| DISH_is_th| DISH_is_too| DISH_is|DISH DISH_is|burnt DISH_it|in DISH_m_alon| DISH_my_P|
DISH_on|th DISH_ready| DISH_ready|they DISH_sh_is| DISH_solid|still DISH_so|scrap DISH_that_bit|
DISH_timer|dead DISH_w_ar| DISH|DISH_anymor DISH|DISH_how DISH|DISH_to DISH|DISH_with DISH|N:few_DISH
DISH|all_right DISH|alongsid DISH|another DISH|ar_boil DISH|ar_nowher DISH|ar_trim DISH|butter_hav
DISH|duty DISH|go_$ DISH|got_$ DISH|has_gon DISH|hav_all DISH|in DISH|is_don DISH|is_for DISH|is_too
DISH|over DISH|ris DISH|so_scrap DISH|solid DISH|then DISH|till_Nclock DISH|train DISH|underway
DISH|whil DISH|will_b N:core_U_i| N:core_and_is| N:core_and_still| N:core_and|it N:core_at|Nclock
N:core_for_th| N:core_giv_m| N:core_has| N:core_inform| N:core_inform|m N:core_in| N:core_is_it|
N:core_on|th N:core_or| N:core_right|now N:core_should| N:core_sh| N:core_stop| N:core_tell|
N:core_to|N:core N:core_what|do N:core|, N:core|after_Nduration N:core|and_s N:core|for_th
N:core|is_right N:core|not_N:some N:core|right N:core|right_now N:core|under_th N:core|when_you
N:core|wink N:few_P_under| N:few_bon_i| N:few_burner|work N:few_early| N:few_for|N:few N:few_for|th
N:few_from| N:few_green| N:few_how| N:few_mor|peopl N:few_of_th| N:few_peopl_N:few| N:few_piec|
N:few_rib_and| N:few_rib_on| N:few_small| N:few_steady|temperatur N:few_surpris| N:few_they|
N:few_well|don N:few|DISH_U N:few|Ndate_and N:few|THING_$ N:few|THING_tonight N:few|and_w N:few|bon_on
N:few|confirm N:few|confirm_com N:few|foot N:few|inch N:few|lat N:few|or_N:few N:few|piec N:few|point
N:few|rather N:few|show_up N:few|till N:few|wrong N:oven_U|i N:oven_and_th| N:oven_by| N:oven_for|Nduration
N:oven_in|th N:oven_it|is N:oven_they| N:oven_up_to| N:oven|reach N:some_and_th| N:some_dollar|
N:some_it| N:some_next| N:some_off| N:some_with| N:some_with|th N:some|mouth N:some|of_them
N:some|over N:some|past N:some|quid N:some|under Nclock_befor_th| Nclock_can| Nclock_is| Nclock_it|
Nclock_tell_m| Nclock|not_Nclock Nclock|w_want Ndegrees:core_i| Ndegrees:core_you| Ndegrees:core|let
Ndegrees:core|let_m Ndegrees:core|on_this Ndegrees:few_it| Ndegrees:few_it|is Ndegrees:few_low|
Ndegrees:few|too_much Ndegrees:oven_hold| Ndegrees:oven_hold|steady Ndegrees:some_in|Nduration
Nduration_N:few_th| Nduration_ago_what| Nduration_ago|ther Nduration_and_th| Nduration_back|i
Nduration_behind|on Nduration_behind|sorry Nduration_behind|with Nduration_break| Nduration_break|i
Nduration_can_w| Nduration_can|w Nduration_down|on Nduration_early_and| Nduration_for|ric Nduration_if|
Nduration_in_U| Nduration_on|dinner Nduration_still| Nduration_till| Nduration_to_that| Nduration_warn|
Nduration|after_w Nduration|bell Nduration|is_delay Nduration|mayb Nduration|off_schedul Nduration|on_for
Nduration|th_bridg Nduration|top_$ Nduration|whil_i Ngas-mark|it Nweight_no|bon Nweight_on|N:few
Nweight_with| Nweight|rib_roast P_P_is| P_ar_in| P_back_in| P_eat_at| P_gon| P_has| P_has|got
P_i_hav| P_is_turn| P_is|expect P_is|turn P_lik|it P_marek| P_on|th P_open|th P_or| P_press|
P_say_th| P_th_DISH| P_th|THING P_tonight| P_tonight|so P_under| P_want| P_will_hav| P_w| P|ask
P|drank P|is_down P|jim P|jo_will P|lik_her P|marek P|nor P|nor_money P|open P|swear P|want_her
P|will THING_THING_over| THING_THING|Nweight THING_THING|ar THING_U|is THING_at|N:core THING_at|all
THING_a|THING THING_could| THING_cream| THING_do_th| THING_fir| THING_floor| THING_from_th|
THING_from| THING_go|in THING_h_is| THING_half| THING_has_com| THING_in_this| THING_is_at|
THING_is_hav| THING_is| THING_is|N:few THING_is|a THING_is|not THING_is|th THING_is|ther THING_number|
THING_out_for| THING_over|a THING_roll| THING_th|P THING_to|my THING|DISH_non THING|N:few_high
THING|THING_$ THING|and_w THING|anywher THING|at_N:oven THING|at_all THING|bag THING|caught
THING|in_already THING|is_Ndegrees:few THING|is_ready THING|is_split THING|or_alcohol THING|out_for
THING|over_it THING|said THING|th_$ THING|to_my THING|tonight THING|truck THING|with_them U_a_DISH|
U_ag| U_eat|halal U_from| U_his| U_i_do| U_if| U_in_th| U_is_bring| U_is|N:few U_or| U_should|
U_th|Nduration U_timer| U_w_do| U|P_can U|clos U|for_m U|had_to U|in_th U|is_in U|is_on U|kind
U|nip_and U|rar U|th_dial U|they U|want U|went ^_DISH_and| ^_DISH|boil ^_DISH|finish ^_N:core_for|
^_N:core_that| ^_N:few_P| ^_N:few_ar| ^_N:few_steady| ^_N:few|DISH ^_N:few|rib ^_N:few|steady
^_Nclock|on ^_Ndate_dinner| ^_Nweight_rib| ^_Nweight|near ^_P_sit| ^_P|lik ^_THING_in| ^_THING|is
^_THING|it ^_U|on ^_^_am| ^_^_aw| ^_^_beet| ^_^_between| ^_^_burnt| ^_^_cancel| ^_^_cooker|
^_^_dav| ^_^_delet| ^_^_dog| ^_^_doneness| ^_^_do| ^_^_explain| ^_^_flat| ^_^_forgot| ^_^_got|
^_^_guess| ^_^_his| ^_^_kickoff| ^_^_knob| ^_^_leg| ^_^_lowest| ^_^_low| ^_^_much| ^_^_must|
^_^_option| ^_^_platter| ^_^_pretend| ^_^_run| ^_^_show| ^_^_that| ^_^_till| ^_^_very| ^_^_wash|
^_^_wind| ^_^_work| ^_^_writ| ^_a_N:few| ^_a_THING| ^_add|green ^_all|th ^_am| ^_and|a ^_and|h
^_aw| ^_been_rest| ^_beet| ^_between| ^_bon_ar| ^_burnt| ^_b|back ^_cancel| ^_can|th ^_careful_with|
^_chang_th| ^_com|her ^_cook_it| ^_cooker| ^_cor_is| ^_cross_off| ^_cut|it ^_dav| ^_delet|
^_dial_is| ^_did_th| ^_dinner_roll| ^_dinner|Ndate ^_dinner|roll ^_dog| ^_doneness| ^_don|and
^_don|w ^_door_open| ^_down_to| ^_do| ^_do|i ^_explain| ^_fir_up| ^_first_lot| ^_flat| ^_forget_everyth|
^_forgot| ^_gas_bottl| ^_giv_m| ^_go_for| ^_good|morn ^_got| ^_guess| ^_happy_birthday| ^_has_not|
^_her|P ^_his_P| ^_his| ^_hold|on ^_i_burnt| ^_i_lik| ^_if_th| ^_insid|it ^_is_everyth| ^_is_pink|
^_it|run ^_i|cook ^_i|set ^_jump|in ^_kickoff| ^_knob| ^_leftover_ar| ^_leftover|ar ^_leg|
^_lowest| ^_low| ^_much| ^_must| ^_my_P| ^_my_THING| ^_my_U| ^_my|DISH ^_m|da ^_no_cream| ^_now_is|
^_now|what ^_no|str ^_ok_P| ^_ok_th| ^_ok|dial ^_option| ^_option|N:few ^_out_at| ^_oven_is|
^_oven|on ^_pan_THING| ^_paus|for ^_platter| ^_pop_th| ^_power_went| ^_pretend| ^_pull|it ^_pull|temperatur
^_rar|if ^_revers|sear ^_right_th| ^_run| ^_set|Nduration ^_show| ^_so_P| ^_so|P ^_start|Nduration
^_steady_heat| ^_stop|th ^_tak_it| ^_th_Nduration| ^_th_crust| ^_th_electricity| ^_th_lad|
^_th_new| ^_th_shop| ^_thank|for ^_that| ^_ther_is| ^_th|current ^_th|rest ^_till| ^_us|th
^_very| ^_w_did| ^_wash| ^_went_to| ^_what_about| ^_what_temperatur| ^_whatever_you| ^_which_timer|
^_which_way| ^_wind| ^_work| ^_would_THING| ^_writ| ^_w|go ^_yes|officer ^_you|what a_DISH|THING
a_N:few|rib a_Nduration_warn| a_Nduration|bell a_Nweight_N:few| a_Nweight_topsid| a_THING_is|
a_THING_on| a_THING|for a_THING|truck a_THING|up a_call| a_drink_in| a_drink|in a_final|N:core
a_hair| a_helper_today| a_number| a_pizza| a_rump| a_second|oven a_shop| a_singl| a_sit| a_timer_for|
a_timer|on a_top| a_vegetarian| a_wet| a_whil_got| a_whil_i| about_it|is about|right_$ abov|N:core
add_a| afternoon|look_$ after|go after|put after|put_th ag_Nduration| ag_Nduration|U ag_and|
again_it|is against_th| again|slower_$ ago_what| ago|ther ag|N:few aim_for_a| aim_for| aim|for_N:core
all_go|to all_mad| all_right|to all_th_heat| allergy|for allergy|not all|N:few_$ all|my_stuff
all|over all|right_i all|seat all|wrong already|com am_Nduration_lat| am_at| am_away_out| am_call|DISH
am_go_to| am_i_miss| am_i|miss am_lat|with am_not_do| am_out| am_put| am_run|Nduration am_stay|
am_stay|put am_talk| am_way_behind| am|Nduration am|Nduration_back am|ask am|bin am|bin_th
am|fix am|fix_to am|i_get am|lagg am|lagg_by am|look am|stuck am|tak_it am|walk an_THING_on|
an_extra|N:few and_N:oven| and_Nduration|on and_P|is and_burnt| and_cancel| and_cor| and_dinner_is|
and_find| and_forget| and_guest| and_had| and_how_many| and_i_will| and_it_say| and_let| and_look_at|
and_m_with| and_m|with and_oven|is and_pet| and_sear| and_sh| and_tak| and_th|oven and_ti|back
and_turn_th| and_w_want| and_well_don| and_what_do| and_will| and_w|sit and|N:few_mor and|Nclock
and|Nduration_for and|Nduration_on and|P_has and|b and|check and|hav_not and|help and|himself
and|his_P and|how_is and|it and|sizzl and|steady and|still and|th_N:few and|th_roast and|then_it
and|w and|what_ar and|who_is and|you_ar another_N:few|plat anyth_on| anywher|in_th any| apart|from
ar_burnt|at ar_not|ready ar_no| ar_run_Nduration| ar_start| ar_us_celsius| ar_want| ar_w|talk
ar_w|win ar_you|N:few arriv_at_Nclock| ar|Nduration_behind ar|Nduration_too ar|clean ar|do_it
ar|don ar|feed ar|fin ar|go ar|lik ar|my ar|peel ar|sit_down ar|stuck_behind ar|too as_of_Nduration|
ask_about| as|U as|well_P at_N:core_and| at_N:few_w| at_N:oven_and| at_Nclock_THING| at_Nclock_it|
at_Nclock|latest at_right| at_th|DISH at_what|temperatur at_without| at|N:core_$ at|N:core_DISH
at|N:core_do at|N:core_for at|N:core_will at|N:oven_U at|N:oven_feet at|Nclock at|Nclock_DISH
at|Nclock_U at|Nclock_at at|Nclock_for at|all_$ at|at at|at_Nclock at|hom at|th_cut away_out|to
away_to| a|THING_THING a|THING_on a|U_it a|blackout a|boot a|breather a|cak a|call a|duck a|few
a|great a|helper a|nic a|not a|nudg a|revers a|rib_roast a|shout_at a|takeaway a|top b_N:few_sit|
b_N:few|of b_i| b_nic|U b_pink| b_sit_down| b_spoon| b_upstair_for| b_us| back_in_at| back_to|N:core
back|N:some_$ back|a_bit back|at_Nclock back|i_saw back|of back|of_th back|on_th bad_it| bag|of_DISH
baker_is| bang| bang|on barnaby| bast_this| bast|timer battery| bear|with bear|with_m been_at|
been|open been|trim beep_at|m befor_b| befor_b|so befor_they| befor_th|phon befor|w_sit behind_it_is|
behind_on|th behind|at behind|on_everyth bell_at| bell_at|N:core bell|at_N:core bell|when berti_is|
bert| besid_th| beth_is| better_than| better|than between|a bid| bit|lat bit|mor bit|out bit|over
blad_tenderis|by blad|tenderis blast|at blast|it board_THING|enough board_and| board|under
boat| boil_th|DISH boil|now bon_and_roll| bon_w| bon|off_and bon|roast_Nweight bon|up both_th_DISH|
bother_tim| bother_tim|th bother|sear both|th_DISH bottom_of_th| bottom_oven|is bottom_they_ar|
bottom|oven_$ bought_a| bout|Nduration breaker|trip bridg|is bring_her|P brought|th_oven brown_yet|
brown|at brown|at_th brown|enough brown|on_top bum_on|seat bum|on bung_th|DISH burner|work
burnt|at burnt|at_th burnt|on burn|to bus_is| business_i| bus|is butter_is_not| butter_w_hav|
butter|all_over butter|in_th butter|left buy|THING buy|THING_THING buzz|m by_Nduration_and|
by_Nduration_th| by| by|N:few by|m b|N:some_$ b|do b|nic b|out_of b|quiet_now b|sit b|sit_down
b|well b|well_don calibrat|a calibrat|a_THING call_it|N:few call_m_back| call_m|back call_m|when
call|DISH_finish cam_out_at| cam|out_of can_i_DISH| can_i_put| can_it_b| can_it|b can_not|
can_not|cop can_not|do can_not|put can_se| can_w_still| cancel_th|roll can|eat can|i_do can|it_sit
can|not_abid can|you_believ can|you_tell car|troubl catch_that|th chang_it_to| chang_their_mind|
check|it_N:core chemo|so_sh church_for| church_for|Nduration climb|another climb|another_N:few
climb|to_N:core clock|on coat|ar_off coat|in coat|in_th coeliac_so| cold_by| cold_th| cold|by_N:some
cold|insid cold|whil colour_of| colour|is com_down_to| com_out_in| com_so| com_to|help com_to|th
com_with| company_is| com|back_on com|off_$ com|to_help continental| conventional_heat|N:oven
cook_at| cook|it_at cor_temperatur|Ndegrees:core cor|temperatur_is could_dinner| could_i_hav|
could_not|find count_m|Nduration count_to|N:few count|m count|to_N:few count|wrong cours_for|
cover_with| cover|or cover|or_a crank_her| cream_do| cream_i| cream|on_th cross_it| cross_it|off
cross|out cut_board_THING| cut_board| cut_is| cut_myself|with cut|into cut|th_oven c|and_kilo
da_is| dairy|fre da|is decid| delay_of_Nduration| dental| dial_at| did_N:few| did_h| did_i|forget
did_not_mean| did_not|U did_not|do did|i_go did|i_tell did|you_hav din_at|Nclock dinner_for|
dinner_is|Nduration dinner_is|mov dinner|in dinner|in_Nduration dinner|is_Nclock dinner|mov_to
dinner|roll_ar dinner|slip dinner|to_N:oven display|has_gon ditch_th_DISH| do_DISH|with do_N:few|
do_i_warm| do_if| do_it|n do_it|tak do_i|carv do_i|pull do_i|put do_medium| do_not_buy| do_not_it|
do_not_put| do_not_support| do_not_think| do_not_trust| do_not|understand do_sear| do_th_afternoon|
do_their| do_well| do_without_th| doctor|told don_w_U| doon_ta| door_of_th| door_of| doorbell|they_ar
door|will_not down_a| down_for|Nduration down_from| down_it|is down|Nduration_after down|at_N:few
down|at_th down|with_th do|all do|first_$ do|gluten do|h do|her do|it_go do|it_want do|not_car
do|not_find do|not_put do|not_want do|th do|you_know do|you_want driv_m| driv_that_is| drop_out|U
drop_th_THING| drop_th| drop|th_roast drown| dry|THING earlier_they| eat_Nduration| eat|Nduration_befor
eat|THING_rar eat|r els_is| end|say end|say_N:core enough_DISH| eta_on| every_tim_i| everyth_is|go
everyth|look every|singl extra|N:few extra|for_th f_N:few|THING faff_about_it| fan_and| fan_i|
fan|and fat_this| fat|THING_$ fat|in_th fat|on fat|over fat|over_it feed|N:few fella|is fergal|
fetch_th| fewer_los_th| fill_m| fill_m|in fill| fill|m fill|m_in final|N:core finger_it|is
finger_on| finger_on|th finger|on_th finish_DISH| finish_THING_th| finish_it| finish_they|
finish|boss finish|truss finish|yet fir_alarm| firehous|fundraiser first_at|Nclock first|N:few_$
first|cours flat|as flight|delay flight|land flip_th| for_N:few_hungry| for_Nduration_and|
for_P|nor for_a|U for_dinner|at for_help| for_is| for_it_is| for_it_or| for_my_pregnant| for_salt|
for_th_last| forget|that forgotten|anybody forgot|it fork_in| for|N:core_$ for|N:core_in for|N:some_$
for|Nduration for|P_who for|a_U for|do for|help for|ic for|medium_well for|ric for|th_first
for|th_littl for|what found_th| freezer|still freezer|still_DISH freez| french_is| fridg|sinc
from|N:core from|start from|that full_of| full|cook f|and_pound f|them gadget| gam|is generator_kick_in|
get_THING| get_for| get_off| get_out| get_past_N:core| get_up_to| get|f get|in get|it get|m
get|rid get|rid_of giv|it giv|m_N:few giv|m_th giv|that giv|them go_in_at| go_to_hit| go_to|DISH
go_to|tak go_with_th| go_with|medium god_help|us gon_and_drop| gon_for|Nduration gon_in|oven
gon_vegan| gon|and gon|lumpy gon|to_get gon|up good_do| good_to| good|do goos|fat_$ got_burn|
got_th|oven got|N:few_of got|my_P go|at_N:oven go|for_th go|in_at go|now go|on_then go|on_to
go|through grab_th_handl| gram_of| great_P| grey_all| grey|all_th ground_so_no| guest_ar_already|
guest_ar| guest|ar_already guest|will_not h_cut| h_has_been| h_has_got| h_is_a| h_is_cut| h_must|
h_never| h_put| had|Nduration had|chemo had|that hair| half_DISH_in| half_and| half_and|half
half_th|DISH half|tim hang_in_th| hang|fir happy_birthday| has_been_off| has_been_rest| has_com_out|
has_com|back has_com|over has_gon_vegan| has_gon|lumpy has_gon|up has_got_th| has|U has|gon
has|gon_$ has|gon_hom has|got_U has|not_been has|not_budg hav_THING|without hav_decid| hav_finish|th
hav_gon| hav_got_her| hav_his| hav_it|later hav_it|out hav_ne'er| hav_ne'er|a hav_never| hav_not_any|
hav_not_ti| hav_not|start hav_pull| hav_put|at hav_run| hav_salt_th| hav_salt|th hav_slic|m
hav_tim| hav_to_do| hav_to_get| hav_to_start| hav_told| hav_volunteer_for| hav_with_it| hav_you|
hav| hav|DISH_DISH hav|N:few_of hav|U_$ hav|a_THING hav|burn hav|chang hav|dairy hav|drop_th
hav|got_N:few hav|got_THING hav|his hav|not_finish hav|noth hav|put_at hav|roast_DISH hav|salt
heard|you_$ heat_do| heat_no|blow heat|and_left heat|from heat|to_N:oven heaven|help heaven|help_us
help_m_out| help_what| helper_i| help|m_and her_N:few_to| her_Nduration_after| her_Nduration|
her_P|so her_it|is her_lip| her_now|and her|U_$ her|medium her|then her|way his_well| his_well|don
hit_th| hiv|from hold_dinner| hold|steady hom_th| homeless_shelter| hop|in hop|in_th hot_pan|
hot|THING_splash hot|now_$ hous_is| hous|at_all hous|for hous|for_Nduration how_d'you| how_hot|
how_is|th how_long_can| how_many_slic| how_many| how_many|DISH how_much_mor| how|can_w how|com
how|do_you how|it_is how|long how|they how|was h|can_not h|go h|n h|sold i_DISH_it| i_am_at|
i_am_out| i_am_put| i_am_stay| i_am_talk| i_am| i_am|Nduration i_am|ask i_am|bin i_am|fix i_am|lagg
i_am|look i_am|stuck i_am|walk i_ask|th i_burnt|th i_can| i_count|wrong i_cover_it| i_destroy|
i_do|not i_forget| i_forgotten|anybody i_forgot|it i_found| i_giv| i_had_it| i_hav_a| i_hav_fallen|
i_hav_pull| i_hav_said| i_hav|been i_hav|burn i_hav|rub i_hav|salt i_hav|turn i_hear|you i_keep_hear|
i_know_when| i_lost| i_lower| i_measur| i_must_DISH| i_never_did| i_press| i_put_it| i_put_on|
i_remov| i_said_N:core| i_said_it| i_shut| i_spok| i_stop| i_stuff| i_suppos_to| i_tell|you
i_think|th i_took| i_us| i_want_a| i_want|a i_weigh| i_whack| ic_Nduration| ic_back_in| ic|cream
if_i_hav| if_i_us| if_nobody| if_that|is if|nobody_is immun_system| immun_system|is important|
in_Nduration_that| in_ag_Nduration| in_and_th| in_at_th| in_at|th in_door| in_fat| in_for|th
in_kilo|U in_lat| in_law|run in_metric|so in_my_P| in_put| in_their| in_they_ar| in_they| in_th|N:few
in_th|P in_th|driv in_th|fridg in_top| in_you| includ_N:few| includ_N:few|DISH induction| insid_i|
insid_right| insid_right|now insid|it_is insid|right insid|right_now insid|when_i instead_of_dry|
instead|of_fresh in|N:few_go in|Nduration_after in|Nduration_what in|alongsid in|degre_c in|fahrenheit_$
in|jun in|metric in|now_do in|oven_Nduration in|sinc_N:few in|th_DISH in|th_bag in|th_drawer
in|th_driv in|th_middl in|th_other in|th_press in|th_shower in|ther_i in|this_hous iron|THING_$
is_N:core_DISH| is_N:few_to| is_N:few|month is_N:few|mor is_N:few|now is_Ndegrees:core|in is_Nduration|lat
is_a_Nweight| is_a_cold| is_a_fir| is_a_vegetarian| is_bubbl|away is_burn|to is_by_Nclock|
is_by| is_coeliac_so| is_cold| is_com_to| is_cut|th is_do_th| is_family| is_got| is_hav_a|
is_heat_no| is_her_i| is_hot_th| is_in_at| is_in_metric| is_insist_on| is_it|nearly is_it|ruin
is_keep| is_left_for| is_left|th is_long| is_never| is_no_str| is_not_answer| is_not_a| is_not_on|
is_not_th| is_not|a is_not|at is_not|brown is_not|your is_now_Ndegrees:core| is_no|second is_off_to|
is_off|conventional is_out|now is_out|on is_past| is_preheat|to is_put| is_read_N:few| is_roll|and
is_sit|at is_sleep|in is_smell| is_smok|lik is_smok|someth is_snap|and is_still_at| is_still_raw|
is_still|DISH is_ston| is_stuck|at is_th_best| is_th_day| is_th_fan| is_th_oven| is_th_point|
is_that_your| is_that|normal is_ther|in is_ther|someth is_thin|as is_throat| is_to_b| is_told|
is_trim| is_under|N:core is_water_boil| is_wher| is_with|th is_work| is| is|N:few_and is|N:few_extra
is|N:few_to is|N:some_$ is|N:some_and is|N:some_in is|Ndate_lunch is|Ndegrees:core_$ is|Nweight_and
is|Nweight_in is|THING_as is|THING_for is|a_vegan is|all_gon is|another is|bust is|chewy is|clos
is|coeliac is|com_on is|cool is|delay_Nduration is|flam_com is|fre is|grey_all is|half_a is|hold_it
is|how_many is|it_still is|kaput is|lit is|lukewarm is|m is|m_and is|no_str is|outta is|own
is|possibl is|season is|slow is|smok is|still_raw is|stuck_on is|th_lot is|th_number is|th_oven
is|th_point is|that_THING is|trim is|vegan_now is|veggi is|whip is|wrap it_a_bit| it_at|N:some
it_b|if it_com|out it_for_N:few| it_for_th| it_for| it_has_fallen| it_i_am| it_in|a it_is_Ndegrees:few|
it_is_cold| it_is_for| it_is_roll| it_is_th| it_is|Ndegrees:some it_is|brown it_is|burn it_is|chewy
it_is|cool it_is|fin it_is|finish it_is|hit it_is|our it_is|overcook it_is|own it_is|show it_is|sit
it_is|still it_is|tell it_is|what it_is|your it_jump|Ndegrees:some it_medium|instead it_mov|
it_my| it_not| it_off|th it_ok_to| it_out|befor it_oven| it_over|at it_say_on| it_say|N:some
it_set| it_show|N:core it_straight| it_to_th| it_touch| it_to|th it_was_at| it|all_in it|alway
it|at it|at_N:oven it|b it|br_him it|com_out it|don_$ it|down it|for_th it|if_it it|in_boil
it|is_Ndate it|is_bleed it|is_lik it|is_what it|jump_Ndegrees:few it|later it|matter it|nak
it|nearly it|ok_to it|on_a it|ruin it|show_N:few it|sinc it|this_THING it|under it|with_THING
i|DISH_out i|allow i|alway i|am i|cover i|destroy i|do_hav i|do_th i|do_with i|ever i|expect
i|hav_a i|hav_it i|hav_no i|left i|left_it i|prefer i|r i|should_hav i|was_not i|whack_it i|will_not
jar_is| jaysus_th| jiggl| jo_will_handl| job_finish| job_finish|boss join_th| jump_Ndegrees:some_in|
jump_past| keep_hear| keep|tell keep|watch_for kept_th| kev_lik| kick_off|is kick|in kill_th_bast|
kill|th kilo|U kilo|U_degre kilo|is_not kindly_includ_N:few| knock_it_to| know_at|N:core know_if_it|
know_it| know_onc| know|at know|at_N:core know|how_to know|if_it know|onc_it lad_ar| lady_and|
lad|ar last_Nduration| last_and| last_look|N:core last|entry last|i_look lat_do| lat_my| lat|so_add
law|run law|run_Nduration lay_th| lay_th|tabl lay|th leave-in|on left_for| left_th_THING| left_th|
leftover_ar| left|for lend|a lend|a_THING less|now less|th let_us_hav| let_us_tak| let_us|los
let|us lick|th_spoon lift_out| light_th| light_went|out light|ar_back light|has lik_P| lik_it_medium|
lik_i| lik|dishwater lik|forget lik|forget_th lik|this_$ lik|your list|for_th littl|U littl|oven
liv_at| load_shedd_start| lock_th| long_Nduration_later| long_can_it| long_can| long_to| longer_than_you|
look_at|it look_at|m look_it| look|befor lord|will lost_Nduration|to lost_my|helper lost_track|
lost_with| los|th_DISH lot_ar| lot_of| lovely|THING lower| low|sinc lukewarm| lunch_at| lunch|Ndate_at
m_Nduration|behind m_alon| m_as| m_at|N:core m_a|nudg m_down_Nduration| m_in|N:some m_know_onc|
m_of_th| m_onc_it| m_through|th m_twic_what| m_twic| m_up_at| m_when_Nduration| m_w| mak_DISH|cream
mak_dinner_Nduration| mak_of| mak|dinner_Nduration mak|it_beep mak|m mak|th_DISH many_DISH|for
many_slic| marco_sit_down| mass|back mass|back_in mean| medium_i| medium_rar_U| medium_rar_and|
medium_rar_is| metric|so_do middl_at| middl_of| middl_shelf_THING| middl|at middl|even mind_what|
mind|what minut|left miss_that_on| mistak_put_it| mix|and mom_lik| mom_lik|forget moment|i
momma_is| momma| mor_it| mor_peopl| mor_your| mo| mrs| mrs|U much_mor| much_salt|in much|longer
must_DISH|th must_b| must_b|Nduration must|eat must|th my_P_on| my_P_tonight| my_P|never my_THING_it|
my_boss| my_cousin| my_god|ther my_own| my_read| my_tail_Nduration| my_tongu| myself_and| my|P_brought
my|P_did my|P_i my|THING_say my|choic my|elbow my|feet my|first my|helper my|timer my|toddler
m|a_N:few m|a_Nweight m|and_pet m|by m|forget_th m|if_it m|look m|what_to m|when_N:core n_th|
n_to_rest| n_to|run nam_is|U nam_of| nam|is ne'er| ne'er|a near|enough never|DISH never|mind_that
never|turn next_job_finish| next_step|my next|on_th next|to_th next|week nic_U| nic| nic|U_i
night_at| night_befor_b| no_DISH|after no_DISH|in no_P_th| no_THING|left no_idea|how no_on_is|
no_power| no_r| no_salt| no_str|in no_str|to no_th_DISH| no_tim_to| no_to| no_w| nobody_can|
nobody_is_in| nora| not_DISH|it not_a_drop| not_answer| not_at| not_bother_tim| not_bother|sear
not_brown_yet| not_buy| not_don|it not_do|gluten not_do|this not_eat_anyth| not_finish|yet
not_got| not_go|to not_hav|dairy not_let_th| not_manag| not_mean_to| not_pull| not_ready|for
not_shut|properly not_support| not_sur| not_think| not_th|oven not_tim| not_ti|it noth_lik|
not|call not|cop not|cover_it not|do_th not|fit not|hear not|heat not|now not|out not|pound
not|quit_$ not|reduc not|thicken not|warm now_N:core_and| now_Ndegrees:core|insid now_at|N:oven
now_do_not| now_in| now_what|do nowher|to now|and_sh no|THING_U no|THING_in no|U_th no|blender
no|blow no|less no|luca no|mor_reminder no|second_oven no|str_to no|thank_$ no|timer nudg_m|
number_for| number_say| number|am number|am_i n|feed of_DISH_and| of_DISH_th| of_Nduration|ago
of_THING_N:few| of_THING_and| of_THING_in| of_a_DISH| of_dry| of_dry|THING of_my| of_our| of_r|
of_th|P of_th|real of_us_and| of_us_at| of_whatever_you| of_your| off_DISH| off_dinner| off_i_hav|
off_our_own| off_th|THING off_to_work| off_w| off|N:few_guest off|already off|conventional_heat
off|for_th off|th_menu of|DISH_and of|N:core_on of|N:oven of|butter of|m of|oven_is of|thes
of|thos of|tim ok_for| ok_it| ok_look| ok_look|N:core ok_so|it ok_w| ok|or ok|what_els on_DISH_DISH|
on_DISH_and| on_N:core_and| on_N:oven|for on_about| on_at|Nclock on_chemo|so on_for| on_for|Nduration
on_has| on_i_was| on_mor| on_mor|tim on_or| on_th_Ndegrees:oven| on_th_boil| on_them|DISH on_th|list
on_to_th| on_to| on_what|is on_whil_i| on_with_th| onto_th| on|N:core_now on|N:few_peopl on|N:few_rib
on|N:some_$ on|hold_for on|in_th on|it_and on|now_$ on|seat on|sid on|th_bottom on|th_platter
on|th_second on|th_til on|th_wall on|them on|this_stov on|without oona| or_can_i| or_can|i
or_do|i or_must| or_will| or|N:few or|can_i or|do_that or|is_that or|should_i otherwis_so|
otherwis_so|buzz other|ar other|on other|way ought_to_b| out_N:few| out_U| out_by| out_of_a|
out_too|much out|N:oven_so out|Nclock out|U_of out|and_on out|at_N:some out|of_DISH out|sh_com
out|th_other oven_N:few| oven_THING_N:some| oven_THING| oven_as| oven_at|N:core oven_by| oven_light|
oven_run_N:some| oven_so| oven_th_THING| oven_that| oven_what_do| oven|N:oven_$ oven|di oven|door_was
oven|down_to oven|go oven|is oven|is_a oven|is_beep oven|is_go oven|li oven|off_to oven|run_N:some
over_N:core|do over_at|N:oven overnight_salt|is over|a_THING over|by over|my_arm ow_my| own_a|THING
own|U pac|with pan_with| panic|over pantry| pan|THING_ar pan|no_THING pan|went park|it part|i
part|i_do paus_for| paus|it peanut|allergy peek|and peel_th|DISH peeler|took peeler|took_a
peel|anyth peopl_ar| peopl_drop_out| peopl_hav| peopl_not| perch| person|will_b pick_th| pick|it
pictur_th| pink_all| pink_as| pink_in_th| pip|down plan_N:few|it plan_of| plan_w| plat_down|
platter|is plus_N:few|confirm plus_a| plus|N:some pok_it_with| pop_th_DISH| powder|in power_went|
preheat_to|N:oven preheat|to_N:some press|N:few_for pretend_i| prop| pull|this push_dinner|back
push_it|in put_DISH|DISH put_THING|on put_in|th put_m_Nduration| put_m|Nduration put_oven|
put_th_dinner| put_th_joint| put_us| put|THING_on put|at put|on put|som put|th put|you put|your
r_is| r_th_bell| r_th| rang|is rang|is_at rar|for_th rar|thank raw|as read_N:few| ready_by|
ready_it| ready|they_n remind_m_in| remov_th_timer| remov_what| reset| rest_it|Nduration rest_th|
rest|Nduration_so rest|of_us rib_it| rib|roast_Nweight right_N:core| right_go| right_in| right_i|
right_to| right|at_th right|that right|that_is right|this_second right|way risen|yet road|Nduration_earlier
road|is roast_DISH|hav roast_DISH|too roast_is|ti roast_scal_said| roast|has roast|hit roast|in_a
roast|is_not roast|on_th roast|went roast|went_in rock|up roll_ar_not| roll_went_in| roll|ar_out
roll|burn room|with rop_in|th roughly|when roughly|when_can rubbish_it| run_a_bit| run_at|N:oven
r|N:core_$ saf_to| salt_go| salt|in_th sam_temperatur| sam|is_help sav_a| sav| say|N:few say|e
say|her say|to scal_said| scal_said|Nweight school| scor|th scor|th_fat scrap_of| scrap| scrap|th_DISH
se_you_in| sear_is| sear_th| sear|is_finish sear|it_at sear|on_all sear|this sear|this_tim
second_oven|is second_th| second|of serv_N:few|later sesam|allergy set_at| set_at|N:oven set|a_timer
set|your sh_at| sh_can_not| sh_get_to| sh_hav| sh_is|N:some sh_is|hav sh_is|hot sh_is|rest
shall_b| shedd_start| shelf_THING| shellfish|allergy shelter| sho_off| shop|is should_it|b
should_i|turn should|b shout_at| shout_in|Nduration shout_m| shout|m show|up shut_th_oven|
shut|properly sh|go sh|must sh|still sh|would sid_and_i| sid|up sinc|N:oven sirloin|joint sit_on|N:core
sit|down_is sit|on_N:core siz_of_a| siz_of| skip|it skip|that_on slic_went| slic|m slic|my_thumb
slid_th| slip|and slow|as slump|over small_oven|on smell_a| smok|lik smok|lik_a smok|pour smok|someth
smok|someth_U snap|and_it so_N:few|fewer so_N:few|mor so_N:some| so_THING_is| so_count_m| so_i_can|
so_keep| so_no|luca so_serv_N:few| so_ther| so_w| so_you_no| sold|out som_of_th| som| som|green
som|green_DISH soon_as_it| sooner|than sorry|i sorry|that so|N:few_extra so|N:some so|buzz
so|buzz_m so|everyth so|how_do so|knock so|no so|scrap so|watch splash| split_th| spok| spot|on_$
stand|U start_on|th starter|is start|THING_it start|at_N:few start|on start|th_clock star|at
stay_on| stay|put steady|temperatur step_by| step|my_THING step|out_for stick_of| stick|Nduration_on
still_DISH_in| still_at|N:oven still_do| still_has| still_not| still|U still|good still|moo
still|ok_to still|pal still|raw ston_cold|insid stood|on stop_for| stop_that|timer stop_with_th|
stop|at stop|ther stop|with stop|with_th str_is_snap| straight_on| straight_to| straight|from_th
street|is strik_th| strik|that str|how str|how_do str|in_th str|to str|to_ti stuck_in|traffic
stuck|at_N:core stuck|in_traffic stuff|is sunflower| sunflower|THING swell_up|after switch_th_oven|
switch_th| switch|off system|is s|out_$ tabl_at| tagg| tagg|along tail_Nduration| tail|her
tak_DISH| tak_THING|at tak_it_that| tak_it|that taken| tak|out tak|th_first talk_to| taught|
tell_her| tell_m_what| tell_m|na tell_m|when tell|m tell|m_and temperatur_U| temperatur|do_i
tenderis|by tenderis|by_th test_cam_out| th_DISH_N:few| th_DISH_ready| th_DISH|N:oven th_DISH|boil
th_DISH|dress th_DISH|train th_Ndate|w th_Ndegrees:oven| th_Ndegrees:oven|THING th_THING_and|
th_THING_back| th_THING_off| th_THING_of| th_THING|go th_THING|under th_THING|went th_at| th_back|of
th_bakery| th_bast|timer th_begin| th_board_and| th_board_with| th_board|under th_bon_and|
th_bon|off th_cream_for| th_dry| th_family| th_firehous|fundraiser th_freezer|still th_fridg_and|
th_fridg|sinc th_go_with| th_green_DISH| th_green|N:few th_guest_com| th_guest|they th_homeless_shelter|
th_hous_and| th_hous_so| th_hous|at th_hous|for th_it_is| th_joint|in th_last_Nduration| th_last|on
th_left|oven th_list|for th_middl_at| th_middl_of| th_middl|at th_middl|even th_missus| th_morn|
th_n|m th_other|on th_oven_and| th_oven_as| th_oven_is| th_oven_i| th_oven_th| th_pan|handl
th_plat|ar th_plug| th_point_of| th_point| th_preacher| th_preheat| th_r_win| th_reason| th_recip|
th_rest|ar th_rest|of th_road|Nduration th_roast_and| th_roast|in th_roll|burn th_show| th_small|
th_stat| th_tabl_and| th_timer|which th_trim_part| th_very| th_visitor| th_you| thank_you|very
thank|very thank|very_much thank|you thank|you_so that_THING|is that_U|is that_bit|out that_b|
that_far| that_is_enough| that_is|when that_last|bit that_oven|is that_phon| that_was_my| that_was|my
that_will|do that_with_th| that_your| that_you| that|THING that|THING_is that|all that|at_Nclock
that|fella that|is that|is_N:few that|is_P that|is_not that|is_that that|normal that|normal_$
that|up that|was_th that|work their_mind| them_all| them|ar_her them|down then_what| theo_want|
ther_is|any ther_you| ther|in_th ther|is_pink ther|on ther|someth ther|with_th thes_otherwis_so|
they_alway| they_ar_Nduration| they_ar|all they_b| they_com_Nduration| they_got| they_hav_gon|
they|com they|get they|reckon_Nduration they|say they|tell they|wer thick_end|say think_i|
think|th this_DISH| this_THING_is| this_at| this_needl| this|THING_$ this|second_$ this|whol
through_no| through_th_DISH| throw_th| thumb_it_is| th|DISH_N:oven th|DISH_THING th|DISH_all
th|DISH_don th|DISH_in th|DISH_that th|P_and th|THING_THING th|THING_U th|THING_fell th|THING_under
th|U_N:core th|U_U th|alarm th|beep th|bus th|car th|cat th|corner th|count th|door_of th|farm
th|final th|freezer th|french th|gam th|greas th|hen th|henderson th|igniter th|jar th|job
th|lady th|littl_N:few th|lower th|meter th|new_P th|next_step th|out th|outsid th|oven_on
th|oven_this th|oven_was th|plug th|prawn th|preheat th|r_DISH th|real th|ric th|roll_Nduration
th|second_on th|smok th|stat_of th|stick th|tap th|wash th|whol_street ti_it|with tick_that|off
till_N:few_th| tim_do_th| tim_th|roll tim_what_you| tim_would_b| timer_i| timer_on|for timer_on|th
timer|can_go timer|dead timer|on_Nduration timer|which timer|which_i tim|in_th tim|is_it ti|with
to_N:few|peopl to_N:oven_THING| to_N:oven_at| to_THING_th| to_b_THING| to_bath| to_bath|th
to_buy|THING to_b|careful to_b|ready to_collect| to_do|a to_do|this to_driv| to_eat_at| to_eat|Nclock
to_fetch| to_f|N:few to_hurry_it| to_i| to_know|if to_mass|back to_scor| to_sear| to_serv|it
to_set_th| to_tak_it| to_tak_this| to_ti|this to_wash| to_work|so today_is| today_m| told|them
tom_can_not| tom|can tom|can_not tonight_so| tonight|so_N:few too_hot_to| too_hot|to took_a|
took_her_out| took_m|Nduration took|m top|out toss_th_DISH| touch_th| tough_as| to|DISH_it
to|N:core_i to|N:core_under to|N:oven_put to|THING to|celsius to|eat_at to|giv_m to|go_$ to|hear
to|look_lik to|mak_it to|metric to|next to|run_to train_is_lat| trick_to| trim_and|ti trim_part|
trim_part|i tripl_digit| tripl_digit|N:core turn_it_on| turn_it_to| turn_it| turn_it|off turn_th_oven|
turn| turn|out turn|them twic_what| twic_what|you twic|as_long up_after| up_to_N:few| up_when|th
upstair|for upstair|to up|N:some up|all up|from_th us_down| us_do|DISH us_tak| us|Nduration_$
us|los us|los_th us|skip_th us|that_is vegan|at vegan|at_th very|THING visitor|ar visitor|com_with
volunteer_for| w_add_DISH| w_ar_mak| w_b| w_din|at w_do|th w_eat_at| w_eat_it| w_go_to| w_hav_a|
w_hav_not| w_know| w_let| w_lost| w_miss_out| w_miss| w_skip| w_want|th w_will|hold w_will|sit
wait_it| wait_it|is wait_on|th wait|what_is wak|m walk_off| wander|off want_DISH|with want_N:core|in
want_her|medium want_his|rar want_m_on| want| want|eat want|her_well warm_for| warm_th|roll
warm|plat was_my| was_on| was_on|N:core was|that watch_it| water_in| water_it| water|down way_down|
way_is| way_too_much| way|behind way|do we_on_is| weigh_in| weight_in| weight|of weigh|it well_N:few|
well_w| well|do went|fly went|out what_am| what_am|i what_ar_you| what_good_do| what_good|
what_good|do what_h| what_i_am| what_is|th what_i|hav what_number|am what_should_b| what_temperatur_is|
what_temperatur|should what_th_can| what_tim_do| what_to| what_will_it| what|could_w what|do_water
what|do_you what|instead what|instead_of what|th_DISH what|was_it what|way what|weight what|will_it
what|you_told when_N:core| when_w|cut when|ar when|is_th when|sh_is wher_do|i wher_exactly|
wher_it|is wher_to| wher_w| wher|ar_w which|i whil_got| whil_i_was| whil_w| whil|P whil|i whil|w_wait
who_hav| who_is_eat| who_was| whol_THING| whol_street|is whol|bon whol|bon_in whol|tim why_do_it|
why|can why|can_not why|must wilf|is will_DISH_th| will_b_at| will_b_her| will_b_th| will_b|Nduration
will_get| will_hav_to| will_it_go| will_not|hav will_pass|on will_sear|first will|U will|a
will|arriv will|do_it will|do_th will|hav_it will|hold_dinner will|sear_it will|serv will|serv_it
will|sit wip_th| wish_i| with_DISH| with_it|now with_number| with_number|N:few with_th| with_th|U
with_what| with| with|N:few_bon with|Nduration_left with|THING with|a_thumb with|medium_well
with|roast with|str with|th_oven with|us wok| word_i| work|on_this work|so_h would_P| would_b_a|
would_b|N:oven would_it_look| would_you|put would|suit would|think wrong_i|hav w|can_not w|had
w|know w|liv w|pull w|said w|set w|should w|still_on ya_and| year_it| year_not| year|th yell_at_m|
yell_at| yell_at|N:core yell|when yell|when_it yes_a| yes_i_hav| yes|officer yes|so_it yet_i_am|
yet_it_is| yet_still| you_about| you_ar_go| you_ar_not| you_a| you_can|do you_do|not you_hav|been
you_hold| you_how| you_i_am| you_mak| you_plan_on| you_put_th| you_stop| you_want_to| you_want|th
your|list your|own you|ask_m you|call_m you|can_not you|dar you|eat you|imagin_$ you|n you|put
you|r you|say_th you|set_it you|very you|very_much zip|it |,_N:core |@1.4 |@109.7 |@11.0 |@130.0
|@134.1 |@138.0 |@140.0 |@141.3 |@19.3 |@2.3 |@21.3 |@26.0 |@37.2 |@45.7 |@5.2 |@61 |@72.4
|@77.4 |@96.1 |DISH_ar_glaz |DISH_been |DISH_cam |DISH_cam_out |DISH_duty_$ |DISH_for_N:few
|DISH_for_a |DISH_got_$ |DISH_how_many |DISH_in_yet |DISH_is_still |DISH_it_alon |DISH_must_b
|DISH_non |DISH_non_to |DISH_w |N:core_and_frail |N:core_go |N:core_i_can |N:core_insid_$ |N:core_put
|N:core_too |N:core_under |N:core_under_th |N:few_THING_of |N:few_and_it |N:few_by |N:few_guest_th
|N:few_has |N:few_instead |N:few_keep |N:few_keep_th |N:few_lat |N:few_later |N:few_mat |N:few_piec
|N:oven_oven |N:oven_so_THING |N:oven_stop |N:some_do |N:some_not_N:some |N:some_they |Nclock_P
|Nclock_after |Nclock_can |Nclock_i_hav |Nclock_would_it |Ndegrees:few_high_$ |Ndegrees:few_mor
|Ndegrees:few_too |Ndegrees:some_hot |Nduration_ago_th |Nduration_and_how |Nduration_back_th
|Nduration_giv_m |Nduration_lat_it |Nduration_lat_what |Nduration_off_$ |Nduration_set |Nduration_so_far
|Nduration_tell |Nduration_tell_m |Ngas-mark_P |Nweight_U |P_els_$ |P_f |P_is_N:few |P_is_still
|P_th_THING |P_this |THING_Ndegrees:few_under |THING_THING_in |THING_THING_sorry |THING_U_is
|THING_and_how |THING_burn |THING_butter |THING_butter_on |THING_by_th |THING_cream_$ |THING_do
|THING_duty |THING_duty_$ |THING_full |THING_is_broken |THING_is_for |THING_last |THING_mak
|THING_or_alcohol |THING_rar |THING_right |THING_roast_Nweight |THING_saf |THING_sh_is |THING_splash
|THING_they |THING_whatever |THING_whatever_you |THING_will_not |U_DISH_$ |U_Nduration |U_b
|U_degre |U_degre_in |U_th_N:few |a_Ndate |a_bag_of |a_barn |a_bit_of |a_bon_$ |a_breather
|a_faff_$ |a_fresh |a_lot_$ |a_low |a_nic |a_peeler |a_rib_roast |a_rock |a_roll |a_tad |a_thumb
|a_thumb_and |a_treat |a_treat_$ |a_wet |a_whil_i |accord |accord_to |accord_to_th |adult_and_N:few
|afresh |after_th_rest |ag_ago |again_P |again_at |ago_i |aim_for_Nclock |all_THING_th |all_go
|allow_to |along |alway_say |am_i_allow |and_climb_fast |and_degre |and_degre_c |and_pet_ar
|and_slow_$ |and_slow_then |and_then_noth |another_$ |another_$_$ |another_N:few_so |answer_$
|answer_$_$ |any_THING |ar_N:core |ar_N:few |ar_after |ar_ask |ar_at |ar_both |ar_charcoal
|ar_kill |ar_not_even |ar_not_in |ar_on_$ |ar_trim |ar_w_up |ar_warm |argu |arm_with |arm_with_th
|arriv_from |as_a_THING |as_far |as_far_as |as_finish |ask_th |assist |at_N:core_no |at_N:core_th
|at_N:few_in |at_N:oven_so |at_N:some |at_Nduration |at_again_$ |at_my_P |at_onc_i |at_right
|at_th_DISH |at_th_ars |at_th_half |at_this_heat |august |away_THING |away_out |away_to |b_Nduration_or
|b_by |b_do |b_gon |b_my |b_ready_for |back_N:some_th |back_door |bacon |bar_hand |barn |bath_Nduration
|bath_th |been_out_Nduration |befor_Nduration_$ |befor_th_next |behind_her |behind_schedul
|belly |bend |bert |blister_$ |blister_$_$ |blow_$ |blow_$_$ |blunt |boil_Nduration |boiler
|bon_and_roll |bon_in_it |bon_on_it |bon_th |born_in |born_in_a |boss_is |bottom_oven_$ |br_him_out
|break_i |break_i_am |breather |bridg |brilliant |bullet |butter_hav |butter_hav_to |by_Nclock_$
|by_Ndegrees:few |by_THING |by_itself |by_m_$ |c |call_that |can_hav |can_help_till |can_i_put
|can_not_hear |can_tell |can_throw |careful_with_her |cark |cark_it |carv_so |carv_so_N:few
|cast |catch_up |chang_$ |chang_$_$ |chemo_so |chok_on |choos_from_$ |cinder |circumstanc |cold_$
|cold_$_$ |cold_N:few |cold_on |cold_water |com_then |commenc |confirm_com |confirm_com_so
|conventional_heat |cook_THING |cook_and |cop |could_go |cours_$ |cours_$_$ |cream_$ |cream_$_$
|cream_in_th |crud |dairy_fre |danc |dar |dead |degre_f |degre_wis |delay_by |delay_by_Nduration
|descend |devil |di_and |diabetic |dial_and |did_not_$ |did_w |din |dinner_has |dinner_has_to
|dinner_they_ar |do_and |do_anyth |do_first |do_for_it |do_hav |do_i_ask |do_in_plac |do_it_Nduration
|do_next |do_not_car |do_not_understand |do_to_us |do_you_know |don_by |doon_ta |door_Nduration
|door_you |down_N:few |down_Nclock |down_all |down_at_th |down_from |down_my |drop_$ |drop_$_$
|dry_and |dry_brin |dy |e |earth |eat_N:few |eat_Ndate |eat_a |eat_this |edg |electricity_has_gon
|els_$ |els_$_$ |enamel_roaster |end_and |enough_so |entry |error_cod |everyth_P |everyth_P_is
|everyth_by |everyth_by_N:some |everyth_to |f_$ |f_$_$ |faff_with_th |fast_$ |fast_$_$ |fat_THING_$
|fat_down |fat_off |feck |ferry |finger_and |finish_and |folk_$ |folk_$_$ |for_Nduration_$
|for_Nduration_and |for_Nduration_i |for_Nduration_then |for_Nduration_whil |for_P |for_dinner
|for_dinner_at |for_my_pregnant |for_noth |for_roll |for_th |fork |fre_$ |fre_$_$ |french_it
|fresh_$ |fresh_$_$ |from_N:few_$ |from_N:few_to |from_her_on |from_oven_$ |from_th_bottom
|full_$ |full_$_$ |fun |function |fundraiser |further |gash |get_her_Nduration |giv_$ |giv_$_$
|glu |go_out_at |goat |gon_and |gon_hom |gon_whol |good_THING |gorgeous_$ |gorgeous_$_$ |got_N:few_THING
|got_N:some |got_left_$ |got_tabl |grab_th_handl |guest_hav_reach |guy |h_is_$ |had_slip |had_their
|hand |has_U |has_allergy |has_com_out |has_crept_up |has_gon_blank |has_gon_everywher |has_got_U
|has_got_th |has_had_it |has_reach |has_th_flu |hav_N:few |hav_Nweight |hav_U |hav_all_gon
|hav_it_out |hav_never |hav_th |hav_their |hav_them |hav_this |help_till |help_with |henderson
|her_can |her_down_to |her_sh |her_then |high_heat |his_fac |his_mouth |hit_th |hob |hol |hold_for
|hom_th |homework_$ |homework_$_$ |hot_fat_$ |hot_for |hot_in |hot_this |hurry_it |i_b |i_carv
|i_crank_it |i_do_about |i_do_this |i_left_it |i_look_$ |i_pok |i_put_DISH |i_put_instead |i_ruin_it
|i_se |i_should_b |i_suppos |i_suppos_to |i_tak_it |i_think_so |i_want_for |i_warm |ic_Nduration
|if_nobody_is |igniter |in |in_$ |in_$_$ |in_DISH_DISH |in_Nduration_for |in_P |in_ag |in_aid
|in_aid_of |in_already |in_as |in_my_lif |in_not |in_now_$ |in_onc |in_out |in_th_cold |in_th_cor
|in_th_left |in_th_market |in_th_meantim |in_th_morn |in_th_plac |in_th_plan |in_th_press |in_their
|in_ther_and |in_thos |in_top |in_yet |insid_i |insid_when |insist |is_N:core_i |is_Nweight_N:few
|is_Nweight_not |is_THING_is |is_a |is_a_no |is_about |is_at_th |is_begun |is_bring_her |is_cark
|is_cark_it |is_coeliac_$ |is_cover |is_cri |is_cri_off |is_dark_$ |is_don_$ |is_down_to |is_expect_so
|is_family |is_fan |is_fin_$ |is_her_now |is_hot_now |is_hover |is_in_th |is_it_at |is_it_in
|is_land |is_medium_$ |is_murder |is_nam |is_not_at |is_not_pound |is_nowher |is_off_th |is_offer
|is_on_DISH |is_on_again |is_on_th |is_order |is_plac |is_saf_for |is_sleep |is_spit |is_starv
|is_still_on |is_stuck_in |is_tak_N:few |is_th_day |is_th_last |is_th_next |is_way_too |is_what_in
|is_worth |it_Nduration_ago |it_against |it_against_th |it_along |it_already |it_and_it |it_b
|it_beep_after |it_cold |it_down_to |it_first_then |it_get |it_i_am |it_mor |it_off_$ |it_out_at
|it_out_now |it_out_this |it_oven |it_rain |it_stand |it_till |it_to_th |it_too |it_under |it_wher
|jar_is |jim |jo_will |join_th |joint_$ |joint_$_$ |judg |jump_Ndegrees:few |keep_THING_$ |know_wher
|label_say |langar |last_year_$ |lat_and |lat_in |lat_th |later_$ |later_$_$ |later_than |lazy
|leav_it_in |leftover_$ |leftover_$_$ |leftover_stay |let_m_forget |lift_it |lift_off |lik_P
|lik_a |lik_butter |lik_dishwater |lik_th_sea |lik_them |limit |littl_devil |loo |look_and
|look_th |loosely_in |lot_hav |loud_$ |loud_$_$ |lover |luck_$ |luck_$_$ |m_DISH |m_N:core_$
|m_THING_$ |m_again_$ |m_and_i |m_back |m_h |m_sort |m_then |m_twic |m_twic_as |mad_for |mad_that
|mak_DISH |mak_it_N:core |mak_it_after |marathon |marek |market |marriag |melt |missus |moo_$
|moo_$_$ |mor_and |mor_ar |mor_reminder |mor_th |mov_my |much_r |music |my_THING_in |my_sid
|my_stuff |my_stuff_is |my_word |n_DISH |n_mor |never_get |new_P |night_at |nip_and |nip_and_that
|no_power_in |nois |non_of_th |nor_money |nos_$ |nos_$_$ |not_Nduration |not_abid |not_at_N:core
|not_budg |not_car |not_cover |not_cover_it |not_gon |not_mean |not_ready_for |not_ruin |not_speak
|not_want |notch |noth_to |now_N:core_and |now_go |now_till |now_w_ar |now_what_is |number_N:core
|nut_and |of_DISH_and |of_DISH_in |of_everyth |of_m |of_th_oven |of_them_and |of_them_how |of_thos_$
|of_your |off_P |off_U |off_again |off_and_ti |off_befor |off_by |off_for_Nduration |off_no
|off_schedul |off_so |off_th_number |off_to_N:oven |off_with_th |offer_to |offic |on_Ndegrees:oven
|on_all_sid |on_fan |on_it_i |on_m_ston |on_plat |on_speaker |on_th_back |on_th_bench |on_th_hob
|on_th_motorway |on_th_porch |on_th_telly |on_that_$ |on_them_DISH |on_this_stov |on_top_$
|on_was |on_with_$ |on_with_DISH |on_without |open_on |open_on_th |open_th_window |opinion
|or_DISH |or_a_lot |or_alcohol |or_alcohol_for |or_not |our_THING |out_again_$ |out_all |out_already
|out_for_m |out_is |out_our |out_sh_is |out_th |outsid_$ |outsid_$_$ |oven_Nduration_befor
|oven_befor |oven_off_to |over_by |over_her_$ |over_in |over_it_$ |overdon |overshoot |pack_up_$
|pan_no_THING |pan_now |panel_and |pass_out_at |past_$ |past_$_$ |peel |peel_that |peopl_not_N:few
|pictur_$ |pictur_$_$ |pink_THING_$ |pint |pitch |plan_$ |plan_$_$ |plan_w |plug |point_$ |point_$_$
|powder_in |preheat_light |press_someth |problem |prop |properly_$ |properly_$_$ |pull_$ |pull_$_$
|pun |put_a_THING |put_in_$ |put_insid |put_oven |quit_$ |quit_$_$ |r_win_$ |rac |rain_$ |rain_$_$
|rar_and_medium |rar_for_all |rar_that |reach_N:core |read_it |ready_they |ready_to |reckon_Nduration
|remov_th_roast |repair |rest_it_is |rest_of_th |rib_THING |rib_of_THING |rid |rid_of |right_over
|riot |rn_$ |rn_$_$ |roll_THING |roll_and_ti |roll_ar_warm |rub_yet |run_Nduration_behind |rundown
|saf |salt_it_so |salt_so |salt_so_early |say_N:oven_and |say_e |say_in |say_so |scal_$ |scal_$_$
|sea |sear_first_$ |sear_th |second_on_$ |sh_$ |sh_$_$ |sh_eat |sh_go_$ |sh_got |sh_hav |sh_hit
|sh_hit_N:core |sh_is_hot |shar |shelf_$ |shelf_$_$ |should_$ |should_$_$ |should_do |sick_$
|sick_$_$ |sid_is |sinc_$ |sinc_$_$ |sinc_easter |sit_out |siz_joint |slit |slump |smok_com
|smooth |so_DISH_it |so_add_Nduration |so_do_it |so_noth |so_scrap |sofa |som_tim_$ |someth_U
|soon_as_it |sound_good |stand_on_th |stand_ther |steak |step_back |stick_of |still_good |stov_is
|str_to |str_to_ti |suggestion |supper_N:some |supper_back |supper_back_N:some |swell |tabl_$
|tabl_$_$ |tablespoon_of |tak_it_$ |tak_m_N:few |taken_out |taught |tell_a |temperatur_for_th
|temperatur_has |temperatur_in_th |temperatur_is_at |th_DISH_$ |th_DISH_all |th_DISH_at |th_DISH_giv
|th_DISH_how |th_DISH_whil |th_Nduration_th |th_P_Nduration |th_THING_N:core |th_THING_N:few
|th_THING_get |th_THING_how |th_THING_over |th_THING_so |th_THING_under |th_THING_what |th_U_in
|th_back_of |th_bank |th_bathroom_scal |th_bottl |th_burner |th_button |th_can |th_centr_still
|th_chop |th_coast |th_com |th_cor_$ |th_count |th_dial_and |th_dishwasher |th_door_open |th_finish
|th_fir_$ |th_holiday |th_hot_blast |th_i_hav |th_joint_$ |th_lid_off |th_loo |th_lowest |th_nam
|th_other_$ |th_other_room |th_outsid_$ |th_oven_b |th_platter |th_rang |th_reason_for |th_rest_they
|th_restaurant |th_schedul_$ |th_second_shelf |th_shelf |th_sherry |th_shop_$ |th_shower |th_start
|th_story |th_tabl_DISH |th_tabl_Nclock |th_tabl_tonight |th_tent |th_tip |th_tong |th_top_on
|th_traffic |th_trim_$ |th_truth_$ |th_wall_$ |th_weight_in |than_N:few |than_plan |than_that
|than_you |that_Nduration |that_ar |that_door_$ |that_long |that_lot |that_now |that_off_$
|that_th |that_you |their_coat |them_$ |them_$_$ |then_th_DISH |ther_$ |ther_$_$ |ther_that
|thes |they_$ |they_$_$ |they_can |they_n_heat |they_said_$ |this_b |this_bit |this_hous |this_plac
|this_stov |this_whol |thread |throat_$ |throat_$_$ |through_and |through_th_door |throw_it
|throwaway |ti_it_with |tick_$ |tick_$_$ |tick_over |till_N:few_th |till_Nclock_what |till_dinner
|till_i_get |till_th_DISH |tim_Nclock |tim_in |timelin |timer_DISH |timer_U |timer_on |timer_on_for
|to_$ |to_$_$ |to_DISH_$ |to_N:oven_Nduration |to_N:oven_P |to_N:oven_is |to_N:oven_lik |to_N:oven_what
|to_Ndegrees:core |to_Ngas-mark_$ |to_b_a |to_b_found |to_boil_for |to_borrow |to_com_$ |to_dinner_$
|to_fix |to_god |to_heat |to_nip |to_plan |to_set |to_th |to_th_U |to_what |toast_$ |toast_$_$
|too_high_$ |took_a_U |took_out |touch_that |track_$ |track_$_$ |turn_$ |turn_$_$ |turn_th_knob
|twin |under_what |up_$ |up_$_$ |up_N:some |up_at_N:core |up_early |up_her_$ |up_it_is |up_sh
|up_wher |upstair_to |us_for |us_if |us_on |us_w |vegan_$ |vegan_$_$ |w_do_$ |w_go_again |w_got_on
|w_know |w_said |w_talk |walk_in_$ |wall_N:few |walt |want_a |want_their |warm_th |warmer |was_N:core_then
|was_Nduration_ago |was_behind |was_hot |was_raw |was_th_DISH |water |water_and |way_past |weigh_Nweight_and
|well_$ |well_$_$ |went_cold |went_into_th |what_i_told |whatever_that |when_sh_get |when_sh_hit
|when_th_THING |when_w_ar |which_i |whil_th |who_know |whol_road |whol_road_is |will_b_eat
|will_hav_their |will_look |will_not_heat |will_not_light |will_not_mak |win_i |wink_Nduration
|with_$ |with_$_$ |with_c |with_m |with_my_work |with_str |with_th_sear |with_th_second |without_a_THING
|without_th_DISH |would_think |would_w |wreck_th |wrong_N:core |wrong_N:core_$ |wrong_th |ya_and
|year_old |yet_so |yet_still |you_allow |you_believ |you_can_do |you_eat |you_know |you_so_much
|you_still |you_told_m |you_want_m |you_would |your_THING_$ |your_feet
-14 @103.4| @107.5| @138.2| @144.7| @18.0| @2.5| @4.2| @47.2| @57.7| @70.5| DISH_DISH_ar| DISH_DISH_is|
DISH_DISH_it| DISH_DISH_still| DISH_DISH_th| DISH_DISH|can DISH_DISH|it DISH_DISH|to DISH_THING|as
DISH_U|ar DISH_after| DISH_and|what DISH_ar| DISH_ar|burnt DISH_ar|trim DISH_at_th| DISH_at|N:core
DISH_can_i| DISH_cross| DISH_is_all| DISH_is_still| DISH_is|THING DISH_is|chop DISH_is|not
DISH_n_Nduration| DISH_not|m DISH_n|Nduration DISH_off|th DISH_on_th| DISH_oven| DISH_th_oven|
DISH_w_lik| DISH_want_a| DISH_wer| DISH_with|it DISH|DISH_from DISH|DISH_off DISH|and_all DISH|and_they
DISH|ar_charcoal DISH|ar_glaz DISH|ar_nic DISH|ar_overdon DISH|ar_ready DISH|butter_$ DISH|butter_for
DISH|by DISH|cover_or DISH|has_been DISH|has_split DISH|i_hav DISH|in_THING DISH|in_and DISH|in_oven
DISH|is_U DISH|is_wilt DISH|it_b DISH|it_in DISH|n_another DISH|no_off DISH|off_th DISH|on_at
DISH|powder_in DISH|roll_ar DISH|sinc DISH|sinc_Nclock DISH|too_i DISH|yet N:core_P_is| N:core_P|is
N:core_all| N:core_and_no| N:core_and_th| N:core_if| N:core_in|ther N:core_is|right N:core_must|
N:core_oven|N:oven N:core_peopl| N:core_th_DISH| N:core_th|DISH N:core_th|oven N:core_well|
N:core_what_is| N:core_whil|it N:core_without|tell N:core_year|old N:core|at N:core|for_ag
N:core|in_phoenix N:core|now_insid N:core|to_N:core N:core|too_low N:core|whil_rest N:core|without_tell
N:core|you N:few_U| N:few_and_a| N:few_bon_on| N:few_bon|i N:few_bon|in N:few_burner_N:few|
N:few_for_th| N:few_gas| N:few_in_th| N:few_my|P N:few_of|th N:few_peopl_at| N:few_peopl_in|
N:few_peopl|drop N:few_peopl|in N:few_sh_is| N:few_short_U| N:few_should| N:few_want| N:few_with_th|
N:few_would| N:few|THING_not N:few|behind N:few|bon_i N:few|coeliac N:few|fewer_$ N:few|low_fyi
N:few|off_$ N:few|other N:few|peopl_Nclock N:few|peopl_in N:few|percent N:few|rib_roast N:few|so_keep
N:few|to_f N:oven_U_i| N:oven_i_hav| N:oven_on|th N:oven_stop| N:oven_that| N:oven|already_$
N:oven|at_N:oven N:oven|now_$ N:some_after| N:some_for_th| N:some_h| N:some_oven| N:some|in
N:some|less N:some|w Nclock_befor|th Nclock_do| Nclock_how| Nclock_instead|of Nclock_not|Nclock
Nclock_to| Nclock|it Nclock|meal Ndate_eat_at| Ndate_eat|at Ndate|roast_Ndate Ndegrees:core_on_this|
Ndegrees:core_w| Ndegrees:core|on_th Ndegrees:few_in_Nduration| Ndegrees:few_too|low Ndegrees:few|cool
Ndegrees:few|less Ndegrees:few|over Nduration_THING|trip Nduration_U_is| Nduration_after_th|
Nduration_ago_it| Nduration_ago|i Nduration_befor_w| Nduration_behind|so Nduration_earlier_and|
Nduration_earlier_th| Nduration_front| Nduration_front|door Nduration_h| Nduration_i_hav| Nduration_i_was|
Nduration_is_that| Nduration_lat_put| Nduration_later_and| Nduration_lat|get Nduration_let|
Nduration_on|th Nduration_sooner|than Nduration_stop| Nduration_tell_m| Nduration_timer_and|
Nduration_timer|can Nduration_to_check| Nduration_walk_th| Nduration_whil| Nduration|P_is Nduration|after_$
Nduration|ago_and Nduration|ago_i Nduration|ar_up Nduration|diaper Nduration|diaper_chang Nduration|i_am
Nduration|is_it Nduration|left_on Nduration|on_them Nduration|tell_m Nduration|that_i Nduration|timer_go
Nweight_all|in Nweight_i_hav| Nweight_of_top| Nweight_of|DISH Nweight_with_th| Nweight|or Nweight|or_thereabout
P_THING| P_bert| P_can_i| P_can_not| P_do_not| P_do|not P_fell| P_for| P_help_m| P_if| P_insist_on|
P_in|th P_is_N:core| P_is_moan| P_is|DISH P_is|U P_is|cut P_is|starv P_is|taken P_is|vegetarian
P_noth| P_set| P_this| P_will_b| P|U_eat P|ar_join P|b P|bea P|bert P|fell P|is_N:few P|is_not
P|is_old P|is_plac P|is_sat P|is_starv P|lik_his P|lik_it P|mak P|us_to THING_N:few|low THING_Ndate|
THING_Nweight_and| THING_Nweight_bon| THING_THING_Ndegrees:few| THING_THING_to| THING_THING|Ndegrees:few
THING_U_is| THING_and_THING| THING_and_it| THING_ar_smok| THING_at_th| THING_at|N:oven THING_at|Ndegrees:core
THING_at|th THING_cut|th THING_do|not THING_do|th THING_fan| THING_for_th| THING_for|N:few
THING_has_been| THING_hav_not| THING_hit| THING_hit|th THING_how_many| THING_i_do| THING_in_ic|
THING_in_my| THING_in|a THING_is_Ndegrees:few| THING_is_act| THING_is_over| THING_is_th| THING_is|N:some
THING_is|THING THING_is|finish THING_is|ready THING_it_jump| THING_it|tak THING_i|do THING_on_it|
THING_on|DISH THING_oven|is THING_pan|is THING_say_in| THING_show|N:core THING_smok| THING_so_th|
THING_they_ar| THING_this| THING_went_in| THING_which| THING_would| THING|N:core_by THING|N:few_keep
THING|N:few_low THING|Ndegrees:few_high THING|THING_ok THING|U_no THING|all_over THING|and_THING
THING|at_N:core THING|do_in THING|handl THING|is THING|is_begun THING|is_blunt THING|is_for
THING|is_go THING|is_in THING|is_insid THING|is_ly THING|is_on THING|is_say THING|is_show THING|is_stuck
THING|it_tak THING|left_in THING|number_say THING|ok THING|or_along THING|seem THING|seem_broken
THING|show THING|th_bend THING|trip THING|up_at THING|with_THING THING|with_a U_about| U_as|
U_at_th| U_do|i U_get| U_is|in U_is|not U_is|ther U_it_was| U_that_was| U_ther|is U_timer|N:few
U|THING_without U|about U|by U|is_at U|is_bring U|is_don U|is_expect U|over U|they_ar U|up
U|walk U|work ^_DISH_for| ^_DISH_i| ^_DISH_timer| ^_DISH|as ^_DISH|cream ^_N:core_dead| ^_N:core_i|
^_N:core_on| ^_N:core|for ^_N:few|burner ^_N:few|less ^_Nclock|for ^_Nduration_on| ^_Nduration_start|
^_Nduration|behind ^_Nduration|from ^_Nweight_no| ^_P_at| ^_P_fell| ^_P|fell ^_THING_at| ^_THING|THING
^_THING|has ^_THING|m ^_THING|number ^_THING|pan ^_U_my| ^_U_that| ^_U_w| ^_^_another| ^_^_a|
^_^_brown| ^_^_bump| ^_^_bun| ^_^_clear| ^_^_climb| ^_^_cross| ^_^_dinner| ^_^_ditch| ^_^_feed|
^_^_flight| ^_^_id| ^_^_ioro| ^_^_lad| ^_^_littl| ^_^_luca| ^_^_maisi| ^_^_neep| ^_^_pag| ^_^_peanut|
^_^_peopl| ^_^_phon| ^_^_pick| ^_^_press| ^_^_prim| ^_^_reset| ^_^_scrap| ^_^_shall| ^_^_shazza|
^_^_shoot| ^_^_shout| ^_^_slic| ^_^_smell| ^_^_step| ^_^_stir| ^_^_swap| ^_^_tick| ^_^_undo|
^_^_wer| ^_^_we| ^_^_whack| ^_^_whil| ^_^_whisk| ^_^_why| ^_^_will| ^_^_yank| ^_^_yell| ^_add_roast|
^_and|now ^_and|th ^_and|then ^_another_Nduration| ^_another| ^_ar|you ^_at_th| ^_a| ^_b_quiet|
^_back|up ^_bad|new ^_brought_th| ^_brown| ^_bump| ^_bun| ^_butter|is ^_can_b| ^_can_my| ^_chuck_som|
^_clear| ^_climb| ^_cooker_is| ^_crank_her| ^_cross| ^_d_dong| ^_dinner_is| ^_dinner| ^_ditch|
^_do_th| ^_drop|it ^_everyth_in| ^_feed| ^_flight| ^_for_th| ^_forget|th ^_french|is ^_fridg|cold
^_get|th ^_h_drop| ^_hav_put| ^_hav|you ^_himself_is| ^_hot_THING| ^_how_did| ^_how|i ^_h|drop
^_i_can| ^_i_shut| ^_i_slic| ^_id| ^_if_it| ^_in_our| ^_in_th| ^_insid_it| ^_ioro| ^_is_th|
^_it_do| ^_it_run| ^_it_weigh| ^_i|pull ^_i|thought ^_i|took ^_lad| ^_lit_th| ^_littl| ^_luca_is|
^_luca| ^_maisi| ^_medium_i| ^_min_is| ^_mov_dinner| ^_nearly|ther ^_neep| ^_no_th| ^_no_tim|
^_not|that ^_now|N:core ^_no|tim ^_ok_THING| ^_our_oven| ^_outsid_is| ^_oven_now| ^_pag| ^_pan|THING
^_peanut| ^_peopl| ^_phon| ^_pick_up| ^_pick| ^_pink_U| ^_pink|U ^_pound|and ^_press| ^_prim|
^_prim|rib ^_rar|for ^_read|is ^_remov|th ^_reset| ^_right|so ^_roll|went ^_run|Nduration ^_say_someth|
^_scrap| ^_scratch_th| ^_serv_Nduration| ^_set_a| ^_shall| ^_shazza| ^_shoot| ^_shout| ^_shut|th
^_skip|th ^_slic| ^_smell| ^_step| ^_stick_Nduration| ^_stir| ^_stop|that ^_swap| ^_tak_a|
^_tak_off| ^_target_N:core| ^_th_fan| ^_th_green| ^_th_overnight| ^_th_toddler| ^_thank_for|
^_ther|ar ^_they_had| ^_this|THING ^_th|THING ^_th|display ^_th|second ^_tick| ^_tom|is ^_turn_down|
^_undo| ^_up_to| ^_us|celsius ^_w_could| ^_w_din| ^_w_got| ^_walk_th| ^_well_shoot| ^_well|shoot
^_wer| ^_we| ^_whack| ^_what_can| ^_what_did| ^_what_is| ^_what_number| ^_what_siz| ^_what_will|
^_what|th ^_when_do| ^_when_it| ^_when_th| ^_whil| ^_whisk| ^_who_left| ^_who_want| ^_why_ar|
^_why| ^_why|U ^_will| ^_would_not| ^_w|did ^_w|should ^_yank| ^_yell| ^_yes|to a_DISH|in a_DISH|instead
a_N:few|bon a_Nduration|timer a_cast_iron| a_dat| a_dat|so a_fat| a_fat|THING a_few_DISH| a_gas|oven
a_go| a_helper| a_medium|rar a_no| a_nudg|at a_proper|THING a_shout|in a_sit|down a_thick_grey|
a_thick| a_thick|grey a_thumb| a_thumb|and a_yell_at| about_Nduration| about_an_inch| about|th_THING
across|th_THING add_th| after_all_and| after_all_so| after|all_so after|th_break after|w_sit
again_at| against_th|THING ago_it| ag|Nduration ag|Nduration_U ahead|of_us aim|for_Nclock alarm|is
alert|m_at alex_can| alex|can all_com| all_in_th| all_my| all_so| all_th|THING allergic_to_THING|
allow_to| all|about all|grey all|guest all|mad all|of_them all|sid_$ alon|for already_in_th|
already_peel| alway_Ndegrees:some| alway_run_N:some| alway_run|N:some am_away|from am_away|to
am_get|N:core am_gon| am_i_on| am_in_th| am_i|ok am_off_to| am_sorry|to am_stand| am_that_far|
am_well_behind| am_well| am_yet| am_yet|to am|N:some_behind am|behind_by am|don am|lost am|never
am|not_go am|off_to am|pull_th am|sorry am|stand am|still am|well an_early| and_DISH_DISH|
and_DISH|for and_N:few|THING and_N:few|other and_Ndegrees:core| and_THING_is| and_a|THING and_a|half
and_burn| and_butter| and_call_it| and_can|w and_dinner|is and_don| and_eat_at| and_got|N:core
and_half_th| and_hit| and_hold|dinner and_how_is| and_how_pink| and_if_you| and_in_th| and_let_them|
and_my|THING and_never| and_not|a and_no|THING and_oven_is| and_pass| and_p| and_p|m and_reckon|
and_remind_m| and_roast| and_sh_is| and_slow_then| and_stuck| and_th_dog| and_then_it| and_th|P
and_th|dog and_th|roast and_th|th and_ti_them| and_took_it| and_turn| and_w_eat| and_w_hav|
and_walk| and_well|don and_wer| and_what_can| and_what_is| and_what|can and_what|if and_what|should
and_wher| and|N:few_peopl and|THING_THING and|a and|call and|celsius and|cover and|for and|giv_us
and|has and|hit and|hold_dinner and|i_can and|it_is and|it_say and|it_was and|look_at and|mov
and|nobody_is and|not_N:few and|peel and|rough and|rough_up and|smok and|start_over and|th
and|th_joint and|turn_it and|turn_out and|well_don and|wer and|what_if another_Nduration|on
any_other_way| anymor_P_is| anymor_and| anyth|els anyth|want an|DISH an|Nweight an|early ar_Nduration|too
ar_all|in ar_com_and| ar_do_it| ar_do_th| ar_go_to| ar_her|N:few ar_in_this| ar_in_th| ar_in|th
ar_in|this ar_look| ar_not_brown| ar_not_even| ar_not|com ar_not|don ar_not|warm ar_nowher|near
ar_off|gluten ar_roll| ar_smok| ar_smok|badly ar_swell|up ar_tell| ar_way| arm|with arm|with_th
arriv|Nduration ar|N:few_not ar|a ar|all_her ar|arriv ar|boil ar|burn ar|burnt ar|cook ar|cut
ar|eat ar|feed_th ar|fussy ar|not ar|not_ready ar|preheat ar|still ar|trim ar|w_fin ar|way
ar|you as_U| as_far_as| as_my|P as_of| as_soon_as| as_soon| as_soon|as as_well_so| ask_th|
asleep_in| as|a_U as|if at_N:core_no| at_N:core|already at_N:oven_DISH| at_N:oven_in| at_N:oven_th|
at_Nclock_i| at_Nclock|Ndate at_onc|and at_th_half| at_th_till| at_their| at_th|N:few at_th|THING
at_th|bottom at_th|very at|N:core at|N:core_U at|N:few_N:few at|N:few_and at|N:few_or at|N:few_so
at|N:oven_so at|N:oven_th at|Nclock_N:core at|Nclock_it at|Nclock_tonight at|all_it away_from|
away_to_mass| away|from_th a|U_of a|bath a|bon a|crack a|day a|deep a|drop_of a|hot a|hot_oven
a|jar a|loaf a|mess a|messag a|nut a|sho a|ston a|vegan a|yell b_all| b_all|right b_bother|french
b_do_with| b_found|in b_her|for b_medium|cook b_quiet| b_with| back_at|Nclock back_in_door|
back_in_for| back_i|reckon back_of_th| back_to|Ngas-mark back_to|th back_with| back|Nduration_th
back|i back|in_at back|in_for bag_of| bag_of|DISH bang|on_N:core bath_Nduration| bath_Nduration|i
beast_is| beast_is|in beat|m been_in_ag| been_open| been|sit beet| befor_or| befor|th_phon
befor|w_eat begin|from begun|it behind_a| behind_by| behind_schedul|and behind_so| behind|a_tractor
behind|on_th behind|or behind|so_serv behind|with_th best|befor between_th| between|rar between|rar_and
bin|them bishop| bit_lost| bleed_and| blender_is| bless|him_$ bless|them blood_thinner| blood_thinner|and
blood|on blunt_DISH| board_at| board_at|Nclock board_with| bob|is boil|and boil|and_rough bon_i_think|
bon_on|it boneless|rib boneless|rib_THING bon|down bon|i_think bother_ty| bother_ty|it bother|french
bother|french_it both|THING bottl|of bottom|they bottom|they_ar br_him_out| br_it| br_it|forward
bram|is brb_Nduration_front| brb|N:few breath|ther breath|ther_is bring_a| brown_it_off| brown_it|at
brown|it_first br|my buck|N:few bump_th| bung_som| bung_th_roast| burn_to| burner_N:few| burnt_myself|
burnt_on| burnt_th|DISH burn|by business|with business|with_th butter_w| butter|U butter|for_th
butter|is_all butter|is_not buzz_m| by_N:few_and| by_a|power by_for_th| by_for| by_step| by|N:some_$
by|Ndate by|step by|th_way b|N:few b|N:oven_$ b|Nduration_ago b|at b|had b|ready_$ b|ther b|when
b|with calf| call_it|medium cam_off|th can_do|th can_hear| can_i_swap| can_i_tell| can_i|freez
can_i|put can_mak| can_not_put| can_not_remember| can_not|abid can_not|eat can_not|hav can_sh_hav|
can_w|add can_w|mak can_you_tim| can_you|put cancel_all| cancel|my can|giv can|giv_m can|i_say
can|i_talk can|it_b can|not_go can|not_hav can|not_stand can|not_tak can|sh_hav can|th_leftover
can|w_still can|you_explain capital_of| carry_on_without| cat|got cat|got_th celsius_and| chang_it|
chang_my|mind chang|Nduration_$ chang|my_mind charg_of| check_with| check_with|th check|DISH
chew_a| chill|it chill|th chok|h chok|h_can chop_th| chop|for chuck|th church|for church|hall
clean_forgot_to| clean|out_of clear_it| clos|th_door clos|up coat_on|th coat|a coat|a_spoon
coat|on_th cold_N:few| cold_whil| com_it_is| com_i| com|after_all com|again_$ com|out_$ com|up_at
cooker|is_Ndegrees:some cook|it cook|right cook|right_through cook|them cook|to cor|N:core_oven
cor|has could|b counter|it counter|it_is count|m_down cover_in| cover|in_THING cow|is cow|is_tail
cream_in|th crisp_th_outsid| cut_and| cut_off|and cut_or_ti| cut|board cut|th cut|th_heat darlen|
dat|so day_N:few| da|i delay_by| delay_by|Nduration delay_so|let delet| delet|timer dental|floss
dial_is_at| dial_is|in diall_it| dial|say_N:oven did_i_ever| did_not_shut| did_not| did_not|ris
did_not|salt did_not|shut did_th|DISH did_you|put did|i_ever did|i_put did|you_do dinner_b_at|
dinner_for|Nduration dinner_is|N:oven dinner_they|ar dinner_up| dinner|up direction| do_after|
do_all| do_i_go| do_i_hav| do_i_mak| do_i_pull| do_i_set| do_it_th| do_it|do do_it|finish do_it|look
do_it|matter do_it|rest do_i| do_i|go do_i|tak do_not_let| do_not_tak| do_not| do_not|eat do_not|find
do_not|lik do_th_THING| doctor_is| doctor_told| dog_THING| dog_THING|th dog_has_had| dog_has|
dog|THING dog|THING_th don_Nduration| don_all_th| don_by| don_to| don|already don|no don|th_DISH
door_for|Nduration door_of_oven| door_open|Nclock door_was| door_will_not| door|Nduration door|did_not
door|of dough|is dough|is_shap down_Nduration|ago down_at_th| down_at|N:oven down_it| down_on|th
down_so| down_till| down_to|N:core down|my down|th_road down|yet do|DISH do|fahrenheit_celsius
do|hav do|i_DISH do|i_bast do|i_pull do|i_set do|i_wash do|not_eat do|not_get do|not_it do|not_know
do|not_start do|not_tak do|roll do|truss drank|it dress|giv dress|giv_m drink|in driv_m_THING|
driv|th drop_back|to drop_th_heat| drop_th_whol| drop|Ndegrees:few drop|back drop|th_timer
drop|th_whol dry_and| earlier_th| earlier_th|P eat_Nduration|early eat_a| eat_it| eat_th|DISH
eat|at_N:few eat|dairy eat|nut eat|pink electricity_is| electric|is enamel|N:few enamel|THING
end_not_th| end_of|th end|not_th enough_to_coat| entry_by_mistak| eras| even_th| everyth_U|
everyth_to| everyth_under| everyth_under|control everyth|P everyth|P_is every|last every|tim
exactly|do_th except| expect|N:some expect|N:some_for extra_for| extractor|is ey| ey|th fac_is|
faff_about| faff|about fallen|down_to fall|apart fan_oven_and| far_as| fat_has| fat_in| fat_i|
fat_over| fat_over|it fat|down fat|has ferry_is| fetch|P few_DISH| fin_for| find|a find|a_THING
find|in finger_it_is| finish|roast fir_on_r| first_then_down| first|and fir|up fit|both fix|to
flam_and| flam_at| flam_at|all flam_com|out flam_in| flam_in|th flam|lid flam|lid_on flat_as|
flat_out| flatmat_invit_themselv| flight_is_lat| flip_th|DISH flip|th floor_i| floor|i flu_and|
fool| for_Nclock|for for_Nduration|diaper for_a_THING| for_bath_Nduration| for_help_in| for_r|
for_th_finish| for_this|crowd for_th|U for_tonight|at for_to| for_what_reason| forever|U forget_i|
forget|what forgot_to_tell| forward_by| for|N:few_hungry for|N:few_peopl for|Nclock_$ for|Nduration_do
for|U_$ for|all_of for|help_m for|is_th for|it_or for|th_THING for|th_sid for|th_whol for|thos
for|who for|who_know for|you_$ for|your_P found_a| found|in found|in_this found|th_str fre_for|
freezer_still| freezer_still|DISH french_th| french_th|bon fre|from fridg_i| fridg|at_Ndegrees:some
from_N:few_to| from_N:few|to from_this| from_th|bottom from|Nclock_$ from|m from|th from|th_THING
from|your front|door front|then f|th_P gain_Ndegrees:few| gang_is| gat|open get_N:few| get_away_with|
get_away|with get_dress| get_dress|giv get_her|Nduration get_her|at get_in_th| get|N:core get|THING
get|hot giv_her| giv_m_th| giv_m|my giv_that| giv_us_a| giv|m giv|us_th glass|THING go_back_to|
go_back|in go_medium|rar go_on|to go_to_th| go_to_trim| go_too| go_to|mak gon_and| gon_inverter_run|
gon_off_so| gon_on| gon_over|on gon_vegetarian| gon|U_$ gon|way gon|way_past good_or| good|morn
good|with got_N:few|P got_N:few|out got_at| got_in| got_th_butter| got_th_roast| got_that|finish
got_to_b| got|N:few got|Nweight got|an got|enough got|for got|no_THING got|power got|that got|them
go|soggy go|upstair go|which go|which_is go|with_th grac|said green_ar_in| green|DISH_hit green|DISH_on
grey_right| grocery_list| guest_at|N:few guest_will| guest|at_N:few guest|cam guest|to h_at|th
h_has_had| h_is_chok| h_is|N:some h_will_do| had|my had|no_DISH had|slip had|to halfway|through
hamish|is handl|bar handl|bar_hand hang_in| hang|open happen|so happen|so_on has_been|Nduration
has_com_down| has_drop| has_gon_on| has_gon_to| has_gon_vegetarian| has_gon|and has_got_a|
has_got_no| has_it_with| has_not_been| has_touch| has|N:few_bon has|arriv has|gon_dark has|gon_on
has|gon_vegan has|now has|th_THING haul|th hav_N:few|oven hav_ask| hav_been_in| hav_chang_my|
hav_got|Nweight hav_got|power hav_help| hav_help|now hav_it|rar hav_kept_at| hav_kept_th| hav_kept|
hav_left|U hav_not|pull hav_not|ti hav_put_th| hav_roast|DISH hav_rub_th| hav_set| hav_slic_m|
hav_to|run hav_walk| hav|Ndegrees:core hav|THING_without hav|chang_my hav|complet hav|m hav|mad
hav|not_N:few hav|plenty hav|pull_it hav|run hav|salt_th hav|told heat_in| heat_is| heat_i|
heat|at_th heaven|is held_up| help_from| help_in|THING help_th| henderson_ar_her| her_THING|is
her_at_N:oven| her_befor_N:few| her_turn| her|U_my her|cremat her|lot her|nam her|then_$ her|up
her|well her|yet hey_i_am| hey|w hey|w_hav him_h| him_off|that him_out|in his_lip| his_steak|
his_steak|medium his|P_is his|own hit_by_a| hob_has| hob|has_N:few hold_that| hold_that|thought
hold|up hom_that_is| hood_was_on| hospital| host| hot_by| hot_oven_first| hotter_than_sh| hot|blast
how_ar|you how_com_w| how_is_everyth| how_is_th| how_is_your| how_long_hav| how_long_till|
how_long|befor how_long|w how_many|ar how_many|minut how_much_butter| how_much_did| how_much|salt
how_thick_a| how_would| how|U how|U_do how|long_yet h|get h|think h|will_not i_DISH_th| i_am_gon|
i_am_stand| i_am_well| i_am_yet| i_am|don i_am|lost i_am|never i_am|sorry i_am|stand i_am|still
i_am|well i_burn|my i_can_not| i_can_us| i_can|tak i_clean|forgot i_could_us| i_cut_it| i_do_it|
i_do|hav i_forgot_to| i_got|to i_had_th| i_had|my i_hav_help| i_hav_never| i_hav_set| i_hav_taken|
i_hav_th| i_hav_to| i_hav|complet i_hold| i_is_not| i_know|when i_last| i_left_th| i_mak_th|
i_meant_to| i_meant|Nduration i_n_to| i_never|did i_on| i_overcook| i_pok| i_prefer_to| i_prefer|
i_put|THING i_said_to| i_said|N:some i_salt|it i_shall_b| i_slip| i_swap_in| i_think_it| i_thought_i|
i_told| i_took_it| i_touch| i_to| i_us|THING i_want_DISH| i_want|thos i_wash|th i_was|talk
i_will|giv i_will|put ic_in| idea_how| if_dinner|was if_ther|is if_th|oven if|that_is if|you_can
if|you_do ignor| ignor|that_$ ill|b in_Nduration_and| in_Nduration|already in_ag|Nduration
in_door|shut in_god| in_her|for in_kilo_and| in_law_run| in_th_liv| in_th_lower| in_this|Nduration
in_th|U inform_m_when| insid|th instead_of_N:oven| instead_what| instead|of_DISH into_my| inverter_run|
inverter_run|th in|DISH_powder in|N:oven in|Nduration_tell in|Nduration_that in|Nduration_to
in|ag in|at_N:few in|at_N:some in|butter_$ in|by in|front_of in|half in|ic_water in|kilo_and
in|my_freezer in|oven_sinc in|phoenix in|th_bowl in|th_butter in|th_dishwasher in|th_front
in|th_moment in|th_oven in|th_steamer in|th_supermarket in|th_warm in|this_Nduration in|to_warm
is_N:core_so| is_N:core|on is_N:few|fewer is_N:few|over is_N:oven_now| is_N:some|in is_Ndate_lunch|
is_THING_at| is_THING|at is_U|clos is_a_gas| is_a_lot| is_a_proper| is_act| is_all|grey is_another|
is_ask| is_at|N:some is_a|Nweight is_bring_N:few| is_bring|th is_brought| is_burn_to| is_butter|
is_chok|h is_chok|on is_com|to is_do|DISH is_fall|apart is_fre|from is_from| is_full|of is_giv_m|
is_half_a| is_help|m is_her|and is_her|sh is_hit| is_hold| is_how_w| is_in_th| is_it_saf| is_it_too|
is_it|U is_it|too is_left_th| is_left|for is_lik_chew| is_lik|chew is_long|wind is_lot_hav|
is_lot|ar is_mad_and| is_mind| is_mind|th is_miss| is_moan| is_no_second| is_not_at| is_not|out
is_off_by| is_off|to is_on_N:oven| is_on|a is_out_for| is_out|too is_peel_th| is_pend| is_raw|in
is_rest|Nduration is_rest|on is_rock| is_rubbish_it| is_sat|and is_set_at| is_simmer|away is_sit_on|
is_slip| is_still_U| is_still|soup is_ston|cold is_stuck_in| is_tak_over| is_tent|loosely is_th_knack|
is_th_last| is_that_a| is_that|go is_ther_for| is_ther_someth| is_th|N:few is_th|doorbell is_took|
is_very| is_what|it is_wher_i| is_whisk_and| is_with_th| is|N:core is|N:core_th is|N:core_too
is|N:few is|N:few_fewer is|Ndegrees:few_under is|P_$ is|P_U is|about is|all is|allergic is|bar
is|bleed_a is|blood is|butter is|call is|com_too is|dry is|even is|fan is|flash is|from is|full
is|go_$ is|go_on is|hav_to is|her_U is|her_i is|hit_N:core is|how is|insid is|it_you is|lactos_intolerant
is|mad is|need is|not_com is|not_eat is|not_ready is|not_so is|not_your is|now is|off is|on_again
is|on_tim is|out_N:core is|pain is|plac is|pur_vegetarian is|raw_in is|reduc is|roll_and is|saf
is|sh_com is|smok_everywher is|swell is|tak_over is|tent_loosely is|th_cor is|th_day is|that_th
is|ther_a is|throat is|top is|under is|vegetarian_$ is|what_i is|your_P it_Nclock|instead it_Nduration|
it_Nduration|sooner it_and_i| it_at_N:few| it_back_to| it_back|N:some it_both| it_could| it_down_to|
it_for_m| it_for|th it_go|in it_has|been it_has|gon it_hit|N:core it_if| it_in|kilo it_is_after|
it_is_an| it_is_fall| it_is_nearly| it_is_our| it_is_tent| it_is|an it_is|don it_is|in it_is|lost
it_is|out it_is|ready it_is|roll it_is|ston it_lift_out| it_on_th| it_open| it_open|and it_out_and|
it_out_befor| it_out_of| it_out|for it_out|of it_saf| it_th|DISH it_up_front| it_up|N:few it_was_N:some|
it_was_a| it_was|on it_will_go| it_with_DISH| it_with_a| it_with_th| it_with|everyth it_would|
it|at_N:few it|claim it|cook_$ it|cross it|do_$ it|finish_$ it|forward it|halfway it|has it|has_N:core
it|if_ther it|in_Nduration it|in_th it|is_Ndegrees:few it|is_alway it|is_an it|is_blister it|is_lost
it|is_now it|is_sat it|is_tell it|is_too it|is_your it|n_to it|off it|off_th it|on it|out_at
it|out_now it|pass it|should_b it|stuck it|to_th it|tonight it|touch it|twic_$ it|was_N:few
it|whil i|THING_it i|already i|am_in i|am_leav i|clean i|clean_forgot i|could_us i|fancy i|freez
i|get_th i|got_th i|had i|hav_burn i|kept i|kill_it i|look_at i|meant_N:core i|measur i|nudg
i|nudg_it i|ok i|ok_$ i|overcook i|panic i|panic_$ i|put_DISH i|put_instead i|remov i|scald
i|scald_my i|skip_th i|slic i|still i|suppos i|suppos_to i|tell_you i|ti i|trim i|trim_th i|want
i|wash_my i|would_th i|yank_it job_is| join_us|that joint_is|out joint|slid keel| keel|over
keep_an_THING| keep_go_off| keep_him_off| keep_up|with kept|insid kill_th_DISH| kill|th_heat
knack| knock|that know_th_second| know_when|it lack_a| lad_hav| lad_is| lad|is lagg_by| lagg_by|Nduration
lak| land_in| langar| last_bit|again last_low_flam| last_night_i| last|clear last|clear_out
last|read last|week lat_or| lat_put| lat_put|th later|th_P later|would_you lat|P_swor lat|get_start
lat|in lat|they_will law_has_com| law_run| law_run|Nduration lay|N:few lay|th_tabl learn_th|
leave-in_THING|is leav|it left|open leg_with_th| leopold| less|faff less|it less|it_say less|now_$
let_it|go let_us_begin| let_us_eat| let_us|begin let|it_go let|them li_i| lid|off lift_th_THING|
light_went_out| light|hav lik_chew_a| lik_chew| lik_her|cremat lik_to_eat| lik_to_know| lik|DISH_r
lik|Nduration lik|Nduration_ago lik|chew lik|it_lumpy lik|it_medium lik|it_rar lik|sho_leather
list_and| list_at| list_at|all list|i list|th list|ther list|ther_$ littl_on| littl|N:few lock|th
long_enough|to long_hav| long_hav|i long_till| longer_than| longer_they_ar| long|do_i long|do_it
long|w long|way long|wind look|again loretta| los_th|DISH lost_track_of| lot_w| lovely_THING|
lovely_and| low_flam| low_flam|lid lump|lik lunch_and| m_a_shout| m_after|Nduration m_and_N:few|
m_a|timer m_forget|th m_how_long| m_i_hav| m_i_said| m_i|hav m_know_at| m_know|when m_lik|i
m_otherwis|do m_oven_is| m_th_second| m_up_when| m_up|in m_when| m_when|it m_when|th magic|number
maisi_can| maisi_can|giv mak_it_Nduration| mak_it| mak|DISH_cream mak|it manag| many_DISH|do
many_THING_in| many_gram_of| many_mor|minut many|ar many|ar_w many|minut many|th man|in marta_tak_over|
may_i| ma| meant|Nduration meant|Nduration_not medium_rar_for| medium_rar|sam medium|cook medium|rar_in
medium|rar_or medium|well_for meemaw| metric_so| middl_get_to| might_b| mik| mind_a_DISH| mind_about|
mind|th_DISH minut_to| mistak|i_hav momma|is mor_for| mor_to| morn_so| mov_dinner_up| mov_dinner|to
mov_dinner|up mov_my| mov|dinner_to mov|in mov|up much_butter| much_did| much_go| much_go|on
much|salt_$ must_hav_been| must|DISH my_DISH|split my_P_has| my_P_will| my_P|b my_P|no my_P|set
my_THING_ar| my_finger|off my_hair| my_lat| my_lat|P my_oven_is| my_phon|is my_slic| my_thumb|open
my_wrist_on| myself_on| my|P_and my|P_can my|cheap my|cheap_THING my|flatmat my|list_$ my|phon_is
my|stomach m|U_ther m|an_alarm m|at_N:core m|at_Ndegrees:core m|how_long m|in_fahrenheit m|missus
m|now_$ m|that_$ m|what n_THING| n_for| n_not| n_to_know| nearer| nearly|set nearly|set_fir
never_mind|th never|get new_oven| new|dinner_$ next_i| next_week| night|in nip_out_back| no_DISH_in|
no_DISH|butter no_THING_U| no_THING_and| no_THING_at| no_flam_at| no_i_hav| no_mor|THING no_n_to|
no_on|is no_sear_N:few| no_second|oven no_th_oven| no_that|is no_w_ar| nobody_lik|it nobody_told|
nobody|has nois_at| non_of_th| non|of_th not_N:few|i not_a|N:few not_breath|ther not_b|ready
not_don|with not_do|fahrenheit not_do|roll not_eat_it| not_eat| not_eat|anyth not_eat|dairy
not_eat|nut not_exist| not_find|a not_fit|both not_gon|in not_happen|so not_know_th| not_let|
not_put_that| not_so_much| noth_has|been not|N:core not|N:few_$ not|N:few_N:few not|U_$ not|abid
not|after not|at not|b not|breath_$ not|carv not|finish_$ not|get_a not|gon not|got_THING not|hav_a
not|i_open not|in not|requir not|talk_to not|ti_it not|till not|tim not|today not|what_i now_and_it|
now_and_what| now_i|do now_my_P| now_my| now_my|P now_sh| now_what_is| nowher_to| now|N:core
now|Ndegrees:core now|at_N:core now|i_must no|bon_Nweight no|cream_left no|electricity no|electricity_sinc
no|fresh_DISH no|shellfish no|way nudg_in| nudg_in|Nduration nudg_m|at nudg|at nudg|at_N:some
number_N:few_is| number_do| number|N:few number|say n|another n|that odett| of_DISH|or of_N:oven|is
of_THING_i| of_THING_over| of_an| of_a|THING of_fresh| of_my_finger| of_my|P of_roast|DISH
of_str| of_th_roast| of_them|has of_th|N:few of_th|fridg of_th|snow off_N:few| off_befor| off_do|
off_for|Nduration off_in|th off_th_Nduration| off_th|DISH off_th|list off_th|r off_to|pick
off|Nduration off|th_tabl off|th_timer off|that_$ off|till off|to_th of|DISH_DISH of|P of|THING_THING
of|THING_on of|a of|fahrenheit of|it of|our of|roast_DISH of|th of|th_DISH ok_and| ok_do| ok_that|is
ok|look on_DISH|duty on_N:oven|fan on_at|all on_blood_thinner| on_cours| on_for_th| on_got|
on_is_out| on_on|th on_oven| on_r| on_r|N:few on_thank| on_this|stov on_th|go on_th|radio on_with_DISH|
on_without|m onc|and_i onto_th|board onto|th_board on|a_Ndate on|earth on|holiday on|night
on|or_off on|th_b on|th_door on|th_fridg on|th_leave-in on|th_lino on|th_lowest on|th_radio
on|th_trivet on|their on|this_on on|this_th on|tonight on|track_$ open_that|door open_what|
open|Nclock or_do|it or_is|ther or_less|it or_near| or_ti| or_ti|anyth or|N:some or|a or|how
or|not or|w or|wait other_way_THING| otherwis|do otherwis|do_not our_P| our|oven_is out_befor_it|
out_for|Nduration out_it_was| out_lik| out_my| out_now|and out_of|a out_on|th out_sinc| out_ther_is|
out_ther|is out_to_get| out_w_do| out_way_too| out_whil| outsid|onc outsid|onc_it out|at_th
out|of_that out|of_ther out|of_you out|th_butter out|th_truss out|to_walk out|too out|whol_road
oven_THING|N:oven oven_THING|N:some oven_and_th| oven_dial_is| oven_dial| oven_door|open oven_first|
oven_first|then oven_has_com| oven_how| oven_is_Ndegrees:some| oven_is_now| oven_is| oven_is|go
oven_run_Ndegrees:few| oven_took_ag| oven_to|Ndegrees:core oven_went| oven|Nduration_ago oven|at_N:core
oven|dial_is oven|from oven|i_hav oven|is_ston oven|shelf oven|to_N:oven over_in| over_is|
over_my| over_on| over_on|th overnight|salt_is over|at_som over|by_th over|it_$ over|my over|th
over|th_floor over|th_plac over|ther own_a| p_m|at pack|in pac|her pag| pair| pal_and| pal_as|
pan_THING_ar| pan|is_in pan|under parchment_is| parent_and| park_th| park|th_car pass_th|DISH
pay|m peel_th| peel|a pencil_in_DISH| pend| peopl_ar_sit| peopl_in|total peopl|drop peopl|drop_out
person_how| person|how phon|is_ring pick|th_P pink_THING| pink_THING|saf pink_all|th pink_at|
pink|as pink|ok_for plac_of_th| plan_for| plan|for_Nclock pok|it_$ poorly| pop_it| pop_out|for
pop_out|to practic_till_whatever| praty| preacher_is_long| pregnant|P_$ priya_is| proper_THING_on|
puff| pull|at_N:core pull|it_this push_th| put_DISH_DISH| put_Nduration|on put_THING_on| put_them|down
put_th|DISH put_th|dinner put_th|oven put_th|roast put|THING_over put|him put|th_in put|us
p|m_in quantity| r_DISH|too r_and| r_for| r_you| r_you|back rar_and|medium rar_for| rar_in|
rar_that_is| rar_that| rar|ok rar|ok_for rar|sam rar|sam_for rather|than ravi_is| raw_THING|in
raw_in_th| read_was| ready_it_is| ready|to_go reckon_it|is reckon_w_ar| reckon_w|ar reckon_you|
reckon|Nduration remember|m remind_m|how rest_in| rest_it|is rest_they_ar| rest_under|THING
restor|th restor|th_old rest|now_$ revers|it revers|sear_$ rib_of| right_THING| right_it_has|
right_on_th| right_that_is| right|back_to right|so roast_DISH|go roast_in|oven roast_is| roast_i|
roast_out|Nduration roast_what| roast|hit_N:core roll_ar| roll|and_net roll|n rol|ar rol|ar_in
rubbish_i| rub|th run_Ndegrees:few|cool run_Nduration|lat run_hot_by| run_lat_Nduration| run_th|
run|at_N:oven run|behind run|hot_by run|out_of run|th_light run|through r|DISH_too r|in r|th_bell
said_it|wrong said|sh said|sh_would salmon| salt_in| salty_i| sam|heat sam|is sat_at|N:core
sat_down|at sat|and sat|at_N:core sav_a|plat sav|a_plat say_do|not say_e| say_in|Nduration
say_well| say_well|don say_yesterday| say_you| say|N:core_P say|N:core_U say|that say|that_$
scald|my schedul_and| school_canteen| school|canteen scrap_th_lot| scrap|th_roll se_you|in
sear_N:few| sear_on| sear_on|all sear|com sear|com_last seat_and| seat_i| second_THING| seen_my|
self|rais sell_to| serv|it_pink set_it_on| set_it|to set_th_oven| set|N:oven_get set|th_oven
set|to set|us sh_brought| sh_can| sh_is_bring| sh_is|N:few sh_is|a sh_is|in sh_say|to shall|i_put
shazza| shelf_and| shellfish_not_that| shoot|ther shoot|ther_is shop_is_U| should_b_medium|
should_w| should|it should|th_oven shout_at|N:core shout|at_N:core shout|in_Nduration shov_dinner|
shov_it_back| show_N:core|now show_N:few|too show_on| show_on|th show_up|early show|N:few show|m_th
shut_th|oven shy|of sh|at sign|up simmer|away sinc_Nduration|ago sinc_i_last| sinc_i| sinc_last|
sinc|w sirloin_Nweight|or sirloin|Nweight_$ sit_and| sit_it| sit|at_Nclock sit|in_th sit|out_$
sit|ther_$ skip_th_next| skip|that_$ slic_m| slic| slow_then| small|P smash| smok_in| smok_pour|
smok|and smok|badly snow_is| so_add| so_cross_it| so_i_will| so_lay| so_lay|N:few so_my| so_push|
so_put_them| so_tak| so_th_DISH| so_what_do| so_what|ar so_w|eat sofa| som_DISH|DISH som_green|
som_green|DISH som_roast| som_roast|DISH someth_is| someth_i| som|roll soon_as|it sooner_and|
sorry|to_say sound_lik_a| sound| sound|right soup|go so|N:few_$ so|call so|call_it so|lik so|low
so|non_of so|r so|sh_say so|slid so|tick so|w_will so|which_bit split|and start_a|timer start_from|
start_th|DISH starter_is_at| starter|go start|Nduration_ago start|fresh start|over start|temperatur
steady_heat_no| steady|heat steak_medium_rar| step_by_step| step_by|step step_i| stick_DISH|
stick|th still_b| still_on_th| still_on|track still_rock| still|DISH_in still|hav still|n still|no_sign
still|soup stood_at| stood_on| stop|nagg stor_was| storm_knock| storm_knock|th stov_and| str_is|
straight_on|th straight|on_th strain_th| strain_th|DISH strain|th strain|th_DISH stretch_it|
stretch|to strik|th_DISH stuck_in_her| stuck|in_it stuck|on_N:core stuck|on_th summaris| sun|
supper_Nduration_later| supper_back| supper_back|N:some swap_in| swap_in|DISH swap_th_cream|
swap_th| switch_it|off switch_m| switch_on_th| switch_to|metric switch|m s| tabl_and| tabl_and|help
tabl|by tak_THING_at| tak_his_steak| tak_m_N:few| tak_m_twic| tak_m|N:few tak_th|THING tak|her
tak|th tak|this talk_for| talk_to|you talk|too talk|too_much target|cor teaspoon_of| teaspoon_of|salt
tell_m_when| tell_what| tell|m_straight tell|m_th tell|your temperatur_has| temperatur|am temperatur|am_i
temperatur|in_th tent_is| tent|loosely th_DISH_after| th_DISH_caught| th_DISH_get| th_DISH_this|
th_DISH_what| th_DISH|this th_DISH|timer th_Nduration|th th_P|down th_P|eat th_P|of th_P|want
th_THING_U| th_THING_it| th_THING_show| th_THING_with| th_THING|handl th_THING|hav th_THING|stand
th_THING|was th_back|a th_board_at| th_bon_is| th_bon_th| th_bottom|they th_brown|at th_butter|is
th_can|i th_capital_of| th_cat_is| th_cat|got th_chip|pan th_colour| th_cooker_is| th_cooker|is
th_counter|it th_cream|for th_crowd| th_crust|is th_dial|say th_dinner|on th_dog_THING| th_dog_has|
th_dog|THING th_dog|has th_door|on th_door|open th_end_and| th_end_th| th_end|of th_finish|roast
th_floor_is| th_freezer_still| th_grocery_list| th_guest_hav| th_guest| th_hang| th_high_heat|
th_hol| th_hot|blast th_i_am| th_i_hav| th_in|law th_kettl|on th_knack| th_lad_hav| th_last|clear
th_left_oven| th_leftover| th_leg| th_light|hav th_list|i th_list|ther th_lot_and| th_lot_w|
th_medium| th_nam_of| th_new| th_number_for| th_number_is| th_old_folk| th_on_th| th_outsid|onc
th_oven_no| th_oven|down th_oven|for th_pac|her th_rest_and| th_roast|hit th_roast|went th_roll|ar
th_rol|ar th_sear_a| th_sear|is th_second|on th_shop|for th_sid|THING th_slic| th_smok_alarm|
th_smok|alarm th_stov_is| th_stov|is th_sun| th_tabl|is th_till| th_timer_on| th_timer|any
th_top_off| th_twin| th_visitor|ar th_way_th| th_what| th_whol|th than_i_can| than_sh| thank|you_very
than|it that_DISH_is| that_P| that_step|off that_ther_is| that_th| that|U_$ that|again that|for
that|go_to that|green that|green_DISH that|is_N:core that|is_N:some that|is_a that|lot that|oven
that|right that|thought that|was_not that|was_wrong their|P them_ar_off| them_ar| them_can|
them_in_th| them_on_th| them_on|th them_what| themselv|so_lay them|back_on them|has them|has_drop
then_down|low then|i_will theo_is| ther_is_someth| ther_is| ther_is|THING ther_is|not ther_it|
ther_or| ther_someth| ther_th| ther_w| ther|ar_N:few ther|is_a ther|is_blood ther|is_someth
ther|on_th they_ar_all| they_ar|fussy they_ar|off they_ar|out they_ar|still they_hav_left|
they_reckon|Nduration they|can they|n thick_a_grey| thick_a| thick_grey| thick|grey think_i|hav
think|so_it thinner|and_N:core thin|end this_THING|THING this_in| this_is|a this_th|run this|afternoon
this|bit this|crowd this|hous this|stov this|whol_tim throat_clos|up through|th_day throw_in_som|
throw_in| thumb|and_took th|DISH_U th|DISH_can th|DISH_giv th|DISH_i th|DISH_roll th|DISH_split
th|DISH_will th|N:few_r th|N:few_wher th|THING th|THING_all th|THING_how th|THING_man th|THING_now
th|bast th|baster th|beast th|begin th|boiler th|breaker th|brown th|cak th|can_i th|com th|cor_is
th|corkscrew th|crackl th|curtain th|custard th|dinner_Nduration th|dog_back th|dog_i th|doorbell_they
th|electricity_has th|fat_cap th|finish th|flu th|from th|green_N:few th|guest_they th|hob
th|in th|lad_is th|leave-in_say th|leftover_$ th|list_of th|lot_of th|lower_oven th|menu th|middl
th|morn th|n_m th|nam th|old_on th|other_th th|oven_THING th|peopl th|roast_cam th|roll_in
th|say_N:core th|second_half th|sh th|story th|stuff th|tabl_for th|trick th|turkey th|twin
th|under th|vet th|visitor th|weather th|wood th|yard ti_a| ti_a|roast ti_back|on ti_them|
ti_them|back ti_this| tick_over| tick|over till_Nclock_what| till_whatever| till_whatever|gon
till|now til|and tim_is_it| tim_is|N:few timer_DISH| timer_Nduration|DISH timer_for| timer|N:few_wrong
timer|Nduration_$ timer|and_th timer|any_mor tim|do_it tim|if tim|is_N:few tim|m tim|will tip_th|
ti|anyth to_DISH_th| to_N:core_in| to_N:core_whil| to_N:core|under to_N:oven_and| to_N:oven_th|
to_N:oven|already to_N:oven|fan to_N:oven|lik to_THING|off to_bast| to_boil| to_br| to_b|DISH
to_b|N:some to_b|had to_catch| to_check|DISH to_chill| to_chill|th to_coat| to_coat|a to_eat_Nduration|
to_get_dress| to_get|a to_hav_it| to_let| to_m_U| to_put_th| to_put|th to_tent| to_trim| to_trim|it
to_whoever| today_Nduration| together_and| told_m|U told|wrong tom_is| tomasz| too_much_go|
too_salty_i| took_ag| took_her| took_her|out took_m_Nduration| took|a top_of_th| top_of| touch_N:core_and|
touch_raw_THING| touch|N:core_$ touch|it to|N:core_at to|N:oven_P to|N:oven_U to|N:oven_fan
to|boil to|bon to|catch to|celsius_$ to|church to|do_a to|god to|hurry to|hurry_it to|nut to|plan
to|purchas to|shop to|tak_a to|temperatur to|temperatur_sh to|th_THING track_of| trim|and_ti
trim|is trim|is_complet truss|a trust_that|THING trust_this|THING turn_around| turn_up_th|
turn_up|early turn|th_oven under|what_it undo|th_last undo|that_$ unsay|that up_U| up_a_Nweight|
up_all|th up_as| up_at|N:few up_for_a| up_front|then up_lik| up_or| up_sh| upper| up|Ndate
up|a up|at_N:core up|i_am up|in_Nduration up|till up|to_N:oven us_a_THING| us_a|shout us_begin|
us_by| us_in|th us_up_all| us_w| us|DISH_$ us|after us|after_all us|and_N:few us|begin us|do_it
us|f us|hav us|hav_it us|mak_dinner us|up vegetarian_and| volum| w_ar_miss| w_ar|N:some w_ar|all
w_ar|eat w_ar|feed w_ar|preheat w_becom| w_do|it w_go|to w_hav| w_hav|DISH w_hav|hit w_hav|lost
w_is| w_is|not w_mov| w_run| w_sell_to| w_wait_for| w_will|sear wait_on_th| wak_m_otherwis|
wak_m_up| walk|m want_for_th| want_her|well want_medium|rar want_medium|well want|N:core_in
want|dinner_at want|m want|supper want|thos warm|th warn_m_when| was_N:core_i| was_for| was_hang_open|
was_left| was_left|open was_lik| was_read| was_read|th was_so| was|N:core_in was|U_$ was|at
was|gorgeous water_down| water_not| water|for way_do| way_is|th way_i| way_th_DISH| way_too|salty
way|do_i way|is_th way|my_folk way|too_much weigh_it_on| weight_of| weight|in_pound well_behind|
well_don_it| well_don|i well_past| well_shoot| well|don_$ well|don_it well|shoot went_into_th|
went|cold went|for went|straight wer_Nduration| wer|Nduration whack_it_down| what_all|is what_ar|you
what_did|i what_do|they what_do|w what_for|is what_happen|if what_happen|when what_is_th| what_i|must
what_number_do| what_on|this what_other| what_reason_w| what_reason| what_should_it| what_sh|
what_temperatur_do| what_temperatur|am what_tim|will what_you|reckon whatever_i| whatever|gon
whatever|gon_Nduration what|all_is what|do_th what|gas what|gas_mark what|i_gav what|number_am
what|would_you when_Nduration|ar when_can|i when_do_th| when_i_am| when_i_was| when_i|tak when_sh_is|
when_th|DISH when_th|middl when_will| when|folk when|it_THING when|th when|w_ar wher_do_i|
wher_do_th| wher_exactly|do wher_is_my| wher_is_th| wher_should| wher|it_is wher|to which_direction|
which_number| which_of| which_way|do which|all which|guest whil_i|am whil_you|wer whil| whisk_and|
who_did| who_do| who_want_to| whol_THING|THING who|was why_am| why_am|i why_do_w| why_is|it
why_that| why_you| why|U_$ why|salt why|that wilf_is| will_do|that will_go|which will_not_fit|
will_not|shut will_n| will_put| will_ther_b| will_ther| will_ther|b will|THING_salt will|handl
will|hav will|look will|mak will|never will|sit_down will|ther will|ther_b win|in_th wip|th
with_DISH_i| with_Nduration|left with_a_thumb| with_medium| with_no|DISH with_th_lid| with_this|THING
without_a|THING without_roast| without_roast|DISH without_turn| without|roast without|roast_DISH
without|tell_m without|th_DISH with|DISH_and with|a_peeler with|all with|bon with|him with|paper
with|someth with|th_whol work_in| work_on|this would_get| would_lik|DISH would_lik|th would_never|
would|DISH would|THING_THING would|eat would|never would|ya wrap_and| wreck_th| wrist_on| wrist_on|th
w|add w|add_DISH w|eat_lat w|go_to w|good_$ w|hav_a w|hit w|hit_N:core w|is w|is_not w|mov_it
w|must w|sell w|took_it yank|it_out year_w| yes_it| yes_it|is yes|so yes|w you_add| you_ar|
you_ar|th you_call|that you_could_hav| you_count| you_explain| you_had| you_hav_been| you_hav|to
you_i|hav you_not| you_n| you_pass| you_run| you_seen| you_set_it| you_th_wrong| you_will_hav|
your_list_at| your_plan| your|boot your|clock you|call_that you|can_tell you|hold you|lik_$
you|on_speaker you|plan you|put_DISH you|put_in you|run you|tak_th you|th_wrong zip|it_$ |,_$
|,_$_$ |@107.0 |@11 |@121.4 |@124.3 |@126.3 |@127 |@129.2 |@139.7 |@146.0 |@146.1 |@17.5 |@25.6
|@28.2 |@28.7 |@30.3 |@36.1 |@42.2 |@44.0 |@56.1 |@56.3 |@61.1 |@7.0 |@70.6 |@75.1 |DISH_DISH_my
|DISH_DISH_off |DISH_DISH_too |DISH_Ndate |DISH_a_miss |DISH_all_right |DISH_alongsid |DISH_fin
|DISH_for_m |DISH_forget |DISH_get |DISH_hav_caught |DISH_in_my |DISH_is_U |DISH_left |DISH_powder_it
|DISH_stand |DISH_th_THING |DISH_till_Nclock |DISH_too_i |DISH_us |DISH_w_will |DISH_with_that
|N:core_Ndate |N:core_about |N:core_b |N:core_befor |N:core_by_Nclock |N:core_even |N:core_for_Nduration
|N:core_i_will |N:core_medium_rar |N:core_right_now |N:core_serv |N:core_should_i |N:core_to_N:core
|N:core_when_you |N:core_wink |N:few_P_$ |N:few_THING_THING |N:few_and |N:few_and_ther |N:few_and_what
|N:few_behind |N:few_could |N:few_good |N:few_how |N:few_i |N:few_left |N:few_low_$ |N:few_mor_plac
|N:few_on |N:few_peopl_$ |N:few_plat_$ |N:few_sh_is |N:few_should |N:few_teaspoon |N:few_which
|N:few_wrong_THING |N:few_year_old |N:oven_and_i |N:oven_get |N:oven_get_N:oven |N:oven_i_am
|N:oven_they |N:oven_w_ar |N:some_even |N:some_for_dinner |N:some_i_am |N:some_in |N:some_it
|N:some_oven |N:some_with_th |Nclock_U_it |Nclock_befor_th |Nclock_do |Nclock_how |Nclock_i_am
|Nclock_in |Nclock_it |Nclock_no |Nclock_sh |Ndate |Ndate_U |Ndate_and |Ndate_it |Ndegrees:core_now
|Ndegrees:few_less_than |Nduration_adrift |Nduration_after_P |Nduration_ago_befor |Nduration_and
|Nduration_behind_and |Nduration_early_$ |Nduration_from_now |Nduration_hav |Nduration_later_would
|Nduration_my_P |Nduration_now |Nduration_off_th |Nduration_sooner_P |Nduration_th_bridg |Nduration_th_oven
|Nduration_to_dinner |Nduration_too_lat |Nduration_what_do |Nduration_whil |Nduration_yes |Ngas-mark_to
|Nweight_of_THING |P_from |P_is_P |P_is_go |P_is_old |P_let |P_mak |P_swear |P_swor |P_swor_by
|P_tak |P_w_ar |P_would |THING_DISH_$ |THING_N:core_by |THING_N:few_too |THING_N:oven |THING_Ndate
|THING_Nweight_bon |THING_P_$ |THING_THING_anywher |THING_a |THING_again |THING_am |THING_am_i
|THING_and_a |THING_and_th |THING_caught |THING_clock |THING_cut |THING_for_DISH |THING_for_th
|THING_is_th |THING_man |THING_near |THING_no_mor |THING_not_N:few |THING_out_by |THING_run
|THING_saf_$ |THING_salt_work |THING_sit |THING_tent |THING_till |THING_whol |THING_whol_Nweight
|THING_with_th |THING_without_DISH |THING_without_grill |U_over_th |U_sit |U_walk |a |a_DISH_in
|a_Nduration_timer |a_THING_for |a_THING_with |a_U_it |a_blush |a_body |a_boot |a_chair |a_coeliac
|a_cow |a_crack |a_fever |a_few_minut |a_fir |a_grey |a_medium |a_night |a_problem |a_rock_and
|a_sec_$ |a_second_tim |a_shop |a_sit |a_start |a_start_on |a_taxi |a_tim |a_toddler |a_tractor
|a_whol_THING |abid |about_mak |about_now |about_right_$ |about_th_DISH |about_th_THING |advert
|afraid |afresh_$ |afresh_$_$ |after_Nduration |after_a |after_all_and |after_th_DISH |afternoon_$
|afternoon_$_$ |again_P_$ |again_and_it |again_ther |ago_and |ajar_for |all_com |all_it_is
|all_land |all_over_th |all_so |all_wrong |allergic_to |am_i_after |am_i_look |am_in |am_leav
|an_extra_Nduration |and_down_th |and_gon |and_had |and_i_will |and_kilo_i |and_net |and_on
|and_stuck |ankl |another_Nduration_$ |any_THING_$ |any_of |anyth_i_can |anywher_$ |anywher_$_$
|ar |ar_THING |ar_U_$ |ar_cut |ar_down |ar_feed |ar_glaz |ar_in_and |ar_in_it |ar_look_at |ar_mak
|ar_nic |ar_nic_and |ar_off_$ |ar_overdon |ar_park_$ |ar_ready_$ |ar_run |ar_starv |ar_stuck_behind
|ar_tell |ar_w_get |ar_you_for |arriv_at_Nclock |as_a_boot |as_well_P |ask_th_THING |asleep_$
|asleep_$_$ |at_$ |at_$_$ |at_N:core_$ |at_N:core_already |at_N:core_it |at_N:core_would |at_N:few_it
|at_N:few_to |at_N:some_past |at_Nclock_DISH |at_Nclock_instead |at_Ndegrees:core_$ |at_U_is
|at_a_tim |at_again |at_all_is |at_all_it |at_hom_th |at_right_about |at_th_pub |away_to_th
|b_in |b_in_th |b_medium |b_put |b_ready |back_N:some_$ |back_Nduration_and |back_of |back_of_th
|back_to_N:core |back_to_th |back_with |baster |bath_is |bathroom_$ |bathroom_$_$ |been_in_th
|befor_Nclock |begg |begin_$ |begin_$_$ |begin_again_from |begun_$ |begun_$_$ |behind_$ |behind_$_$
|behind_and |behind_it |behind_with_everyth |between_a |bill_$ |bill_$_$ |bishop |bit_and |bit_first
|blast_$ |blast_$_$ |blender_$ |blender_$_$ |boil_for |bon_$ |bon_$_$ |bon_N:core |bon_N:few
|bon_what |bottl_$ |bottl_$_$ |breakfast_$ |breakfast_$_$ |brick |brown_enough |brown_enough_$
|bubbl_$ |bubbl_$_$ |by_N:some_$ |by_for |bypass |calf |call_it_$ |can_and |can_carv |can_i_say
|can_not_i |can_start |cap_$ |cap_$_$ |car_pull_in |caught_th |celsius_not_fahrenheit |centr
|cheap_THING_alway |cheesecak |chicken_$ |chicken_$_$ |choir |chop |christen |clean_out |clear_out
|client |coast |cold_and |cold_by |cold_oven |colleg |com_first |com_from_th |com_last |com_last_for
|com_off_$ |com_straight |complain |conk |conk_out |cook_them |cool |cooler_than_th |could_us
|cover_it_$ |cover_or |cover_or_a |crack_th |cream |cream_w |cremat_$ |cremat_$_$ |curry |cut_up_and
|da_is |deb |department |di_on |dial_THING |dial_is_in |dial_say |dial_say_N:oven |diaper_chang
|did_it_$ |dinner_N:few |dinner_b |dinner_tim_$ |dishwasher |do_about_th |do_her |do_i_get
|do_my |do_not_lik |do_not_think |do_now |do_pink |do_th_oven |do_their |dock |dodgy_$ |dodgy_$_$
|dog_back |dog_back_in |dog_i |don_Nduration |don_all_th |don_her |don_her_$ |don_i_am |don_it_is
|don_that |don_what_is |don_yet |door_on |down_it |down_low |drop_Ndegrees:few |drop_of |drop_out_U
|drop_th_bast |drop_th_roast |earlier_than |eat_THING_rar |eat_halal |eat_her |eat_it_$ |eat_pink
|eat_them |electric_$ |electric_$_$ |electricity_sinc |electricity_sinc_Nclock |emergency |end_for
|end_piec |enough_THING_for |enough_for_th |esky |ex |extra_for |f |f_at |fahrenheit_celsius
|fallen |fan_in |feet |fell_on |fever |fewer_$ |fewer_$_$ |finger_N:core |finish_i |first_then_low
|flight_is_lat |flight_land |floss |for_DISH_$ |for_N:few_hungry |for_help_in |for_her_$ |for_is
|for_lunch |for_medium_$ |for_r |for_smok |for_th_first |for_th_meal |for_us |forgot_$ |forgot_$_$
|fridg_sinc |from_th_garag |from_th_list |from_your |front_of |gav_m |get_N:few |get_her_at
|get_off |get_start |get_start_myself |get_that |gig |girl |go_all |go_in_$ |go_through |go_to_DISH
|go_to_go |god_$ |god_$_$ |god_it |gon_on |gon_vegan |got_N:core_$ |got_a_new |got_go |got_long
|got_th_butter |granul |green_DISH_nobody |grey_r |had_said |happen_$ |happen_$_$ |has_$ |has_$_$
|has_been_out |has_drop_out |has_gon_cold |has_gon_in |has_gon_off |has_gon_to |has_left |has_split
|hat_$ |hat_$_$ |hav_N:core |hav_a_full |hav_been_on |hav_burn |hav_chang |hav_decid |hav_fallen
|hav_fish |hav_got |hav_had |hav_his |hav_it_pink |hav_land |hav_lost_my |hav_ne'er |hav_ne'er_a
|hav_rock |hav_rock_up |hav_shown_up |hav_their_at |hav_to_go |heat_i |heat_now |help_from
|helper_i |her_U_$ |her_for |her_from |her_i_can |her_lif |her_lif_$ |her_sleev |her_turn |himself_$
|himself_$_$ |his_nos |hit_th_floor |hiv |hob_has |hood |hospital |hot_in_her |how_do_th |how_many_person
|how_to |how_to_us |hurt_$ |hurt_$_$ |i_bast |i_cover |i_cover_it |i_do_that |i_expect |i_forgotten_anybody
|i_giv |i_hav_press |i_mad |i_mak_th |i_misread_it |i_must_go |i_n_for |i_ought |i_ought_to
|i_peel |i_r |i_rest |i_rest_it |i_stick |i_talk_normally |i_wreck |i_wreck_it |ill_$ |ill_$_$
|in_N:few |in_Ndate |in_Nduration_DISH |in_Nduration_about |in_Nduration_ago |in_at_th |in_charg
|in_do |in_god |in_half |in_i_am |in_law_$ |in_th_dishwasher |in_th_sink |in_th_water |in_that_is
|in_this |in_till |in_total |in_town |includ |instead_of_dry |invit_themselv_so |is |is_N:few_not
|is_N:few_over |is_a_bit |is_a_must |is_already_N:core |is_any |is_ask |is_at_Nclock |is_beep_it
|is_behind |is_brown |is_butter |is_carv |is_collaps |is_com_after |is_do_a |is_fall |is_for
|is_full_of |is_giv_m |is_given |is_given_up |is_go_in |is_his |is_i |is_in_flam |is_in_it
|is_it_look |is_knock |is_leak |is_left |is_left_th |is_lik_a |is_lot_hav |is_ly |is_mind_th
|is_mix |is_my_P |is_not_for |is_not_heat |is_not_out |is_not_your |is_nowher_near |is_offer_to
|is_old |is_on_N:some |is_on_at |is_outta_ther |is_pack |is_peel |is_read_N:core |is_ready_$
|is_reduc |is_remain |is_ring_$ |is_roar |is_roll_up |is_sat_and |is_sat_on |is_say_N:core
|is_shap_N:few |is_sleep_$ |is_stuff_with |is_tail |is_th_N:few |is_th_plan |is_th_temperatur
|is_that_near |is_thin |is_thin_as |is_under_th |is_very |is_wash |is_weak |is_wher |is_whip
|is_wilt |is_wrap |is_wrap_and |it_Nduration_$ |it_Nduration_back |it_as_it |it_at_N:core |it_at_N:few
|it_both |it_brown |it_com_to |it_for_th |it_from_th |it_good |it_h |it_has_to |it_is_cool
|it_is_do |it_is_medium |it_is_past |it_is_ready |it_is_smell |it_lumpy |it_nak |it_put |it_roll
|it_saf |it_this_THING |it_to_N:core |it_touch_N:core |it_twic_$ |it_when |it_whil_i |jam |jo_will_handl
|joint_do |keel |keel_over |kick_in |knock_on_th |know_if |lactos_intolerant |last_bit |laugh_$
|laugh_$_$ |leather_$ |leather_$_$ |leave-in_on_say |leek |left_at |left_on_th |left_to |leg_$
|leg_$_$ |legend |lend_a |lend_a_THING |li_down |lif |lif_$ |lif_$_$ |lift_out |lik_a_frog
|lik_golf |lik_golf_ball |lik_sho_leather |lik_that_is |lik_to |lik_to_know |long_it |long_yet
|longer_than |loo_$ |loo_$_$ |look_at_$ |look_at_it |lost_a |low_fyi |lunch_and |m_N:few_for
|m_all |m_all_th |m_as |m_b |m_her |m_how_to |m_is |m_out |m_som |m_straight |m_th_next |m_when
|m_with |mad_and_in |mak_N:core |mak_N:few |mak_dinner_N:few |mak_it_N:few |mammy |manag_it
|mark_$ |mark_$_$ |mass_$ |mass_$_$ |matter_$ |matter_$_$ |medium_my |medium_rar_ok |medium_rar_sam
|medium_what |messag_when_it |met |microwav |minut_$ |minut_$_$ |minut_still |mistak_$ |mistak_$_$
|mitt |mor_ar_com |mor_it |mor_to |mouth_$ |mouth_$_$ |much_smok |murder |must_it_rest |must_th_THING
|my_P_and |my_arm_$ |my_charger |my_folk |my_folk_will |my_freezer |my_freezer_so |my_list_$
|my_pregnant |my_pregnant_P |my_sho |my_sho_$ |my_thumb_it |my_toddler |my_wrist_on |n_feed
|n_it |n_longer |n_longer_$ |n_m_$ |n_to_go |nadia |nagg |nap_$ |nap_$_$ |net |next_so |nip_out_for
|no_flam |no_off |no_off_th |no_win |normally |not_$ |not_$_$ |not_b_join |not_believ |not_bloody
|not_bloody_$ |not_catch |not_eat |not_gon_in |not_happen |not_hold |not_know |not_manag |not_no
|not_ready |not_remember |not_stand |not_turn |not_understand |not_wait |now_$ |now_$_$ |now_and_i
|now_and_what |now_on |nudg_it |nudg_it_to |number_am |number_am_i |number_say |number_say_N:core
|of_DISH_DISH |of_DISH_is |of_Nduration_$ |of_Nweight_$ |of_THING_in |of_a_DISH |of_guest |of_our
|of_r |of_roll |of_smok |of_ther |of_us_and |off_Nduration |off_conventional |off_dinner |off_i_hav
|off_till |ok_for_th |old_on |on_DISH_DISH |on_N:core_and |on_for_th |on_paus |on_say |on_schedul_$
|on_th |on_th_b |on_th_button |on_th_cabl |on_th_cooker |on_th_lino |on_th_phon |on_th_til
|on_th_wall |on_th_wet |on_them_$ |on_ther |on_this |on_tonight |on_wash_up |open_that_door
|or_THING_$ |or_after |or_nay |or_nay_$ |or_off |other_way_THING |out_P |out_at_th |out_b |out_first
|out_first_$ |out_for_Nduration |out_for_a |out_her_$ |out_no |out_oven |out_th_back |out_th_fridg
|out_whol |outsid |oven_at_Nclock |oven_befor_Nduration |oven_can |oven_for_th |oven_glov |oven_in_th
|oven_is_too |oven_it_is |oven_off_$ |over_by_th |over_from |over_th_DISH |overshot_it |own_THING
|panick |password |past_N:core |past_medium |peep |peopl_ar_her |peopl_cancel |phoenix |piec_$
|piec_$_$ |pink_THING_saf |pink_and |plac_and |plat_$ |plat_$_$ |plow |poison |possibl_$ |possibl_$_$
|postpon_th |postpon_th_dinner |pound_and_ounc |preacher_is |press_someth_or |puff |pump |push_it_in
|put_DISH_DISH |put_at |put_instead |put_it_in |r_win_in |rar_N:few |rar_THING |rarer |raw_DISH
|reach_$ |reach_$_$ |ready_Nduration |ready_and |ready_yet |record |rent |rib_Nweight_$ |right_on_th
|right_way |rim |roast_Ndate |roast_Ndate_Nclock |roll_go |room |rubbish_$ |rubbish_$_$ |ruin_it
|ruin_it_$ |run_cold |said_Nclock |said_it_is |said_no |salt_and |salt_th_THING |sam_for |sam_for_th
|sat_at |sav_it |say_N:core |say_Ndegrees:core |say_grac |say_that_$ |say_to_th |scor_in |sear_a
|sear_at |sear_do |second_half |seem_broken |sens |set_off |set_on |set_th_tabl |sh_com_along
|sh_got_th |shambl |sharp_$ |sharp_$_$ |shelf_of |ship |should_b_N:core |shov_it |show_N:core_$
|show_N:core_in |show_N:few_too |show_up_early |shown |sid_and |sinc_Nclock |sinc_breakfast
|sinc_it |sinc_last_night |sit_in_th |sleep_$ |sleep_$_$ |slic_my_finger |slimy |smell_amaz_in
|smok_com_out |smok_in |so_everyth |so_far_and |so_go |so_keep_his |so_knock_N:few |so_low_$
|so_no_THING |so_on |so_on_to |so_serv |so_serv_N:few |soft_$ |soft_$_$ |solo |som_DISH_DISH
|someth_i |someth_or |spar_$ |spar_$_$ |spread |squeaky |stag_$ |stag_$_$ |stay_on |step_my
|step_off |stick_th |stor_what |stuff_th |sucker |swap_th |swear_by |swim |switch_it_off |ta_th
|tabl_Nclock |tablet_$ |tablet_$_$ |tak_her |tak_it_off |tak_longer |tak_so |tak_them |teaspoon_of
|teaspoon_of_salt |tell_it |templ |tension |tent_loosely |th_DISH_N:few |th_DISH_after |th_DISH_again
|th_DISH_don |th_DISH_dress |th_DISH_got |th_DISH_now |th_DISH_off |th_DISH_stand |th_DISH_you
|th_N:few_from |th_THING_DISH |th_THING_from |th_THING_insid |th_afternoon |th_ar |th_at |th_beep_$
|th_bend |th_blast |th_break |th_breaker |th_caravan |th_chemo |th_cupboard_$ |th_custard |th_dial_$
|th_even |th_floor_$ |th_flu_$ |th_football |th_front_room |th_full |th_heat_in |th_hous_$
|th_igniter |th_jar |th_latest |th_list_$ |th_lot_and |th_lower_third |th_messag |th_middl
|th_old_dinner |th_oven_N:oven |th_oven_Nduration |th_oven_go |th_pan_$ |th_peeler |th_record_$
|th_refrigerator |th_road_$ |th_run |th_scal |th_secret |th_snow |th_steamer |th_str_$ |th_thickest
|th_til |th_tim_you |th_trick |th_trivet |th_wedd |than_it |than_m |that_Nweight |that_from
|that_i_look |that_is_another |that_is_fin |that_on_out |that_on_th |that_step_off |that_temperatur
|that_timer_$ |that_w |their_P |them_by |ther_i |ther_i_hav |ther_i_was |ther_in_th |ther_with
|thereabout |they_b |they_eat |think_i |think_it_is |this_at |this_dinner_$ |this_menu |this_or
|this_tabl |thought_i |through_no |ti_with |till_N:few_i |tim_do |tim_th_DISH |tim_they |tim_with
|tim_you |to_N:core_under |to_N:oven |to_Nclock_$ |to_b_THING |to_bast |to_buy |to_carv_and
|to_cry |to_driv |to_i |to_it_$ |to_mass |to_metric |to_miss |to_plan_$ |to_play |to_r |to_sear
|to_sit_in |to_that_$ |today_m |together_what |tomasz |tomato |too_quick_$ |tooth |top_oven_$
|traffic_$ |traffic_$_$ |trim_$ |trim_$_$ |trim_th_DISH |turn_it_over |turn_th_DISH |turn_up_Nduration
|twic_as |ty |unconscious |up_again_$ |up_already_$ |up_lik_a |up_not |up_that |up_when |ups
|us_at |us_that |villag |w_fin |w_fix |w_fix_$ |w_hav_another |w_keep |w_push |w_turn |want_DISH
|want_dinner |want_his_well |want_to |warm_$ |warm_$_$ |warm_th_roll |was |was_left |was_left_open
|was_read |was_that_pal |water_now |way_to |weigh_$ |weigh_$_$ |well_cook |well_for |well_so
|went_hom |went_to |went_up |wer_N:some |what_i_was |when_sh_is |when_you_think |wher_th |which_bit_hav
|which_is_N:some |whil_i_fetch |whil_it |whil_rest |whol_THING |will_arriv |will_b_Nduration
|will_do |will_eat_$ |will_eat_it |will_not_fit |will_wash |wireless |with_Nduration_left |with_a_THING
|with_medium |with_salt_and |with_th_prep |with_them_$ |without_DISH_so |without_tell_m |wok_up
|wood_$ |wood_$_$ |work_in |work_on |would_b_N:oven |would_rather |would_you_b |wreck_$ |wreck_$_$
|wrong_i |ya_what |yap |yet_$ |yet_$_$ |yet_P |yok_$ |yok_$_$ |you_add |you_dar |you_do_timer
|you_get |you_giv |you_i_hav |you_not |you_ther |you_very |you_very_much |your_$ |your_$_$
-13 @109.3| @114.1| @13.8| @132.0| @26.3| @32.6| @43.1| @43.2| @47.0| @49.7| @51.0| @53.5|
@59.3| @69.5| @76.1| @87.0| @88.2| @90.2| DISH_DISH_my| DISH_N:few|DISH DISH_THING_DISH| DISH_after|all
DISH_and|took DISH_another| DISH_ar_off| DISH_ar_still| DISH_ar|boil DISH_ar|peel DISH_at|N:few
DISH_been| DISH_bless_her| DISH_boat| DISH_boil|and DISH_bubbl|away DISH_butter_is| DISH_butter|mad
DISH_cam|out DISH_caught|and DISH_com| DISH_cream_is| DISH_cream_on| DISH_did_not| DISH_do_i|
DISH_for_a| DISH_forget| DISH_has| DISH_has|not DISH_hav| DISH_how_many| DISH_in_my| DISH_into_th|
DISH_in|this DISH_is_a| DISH_is_not| DISH_is| DISH_is|rest DISH_is|th DISH_is|wilt DISH_it_b|
DISH_n_mor| DISH_nobody_eat| DISH_nobody_lik| DISH_non|to DISH_no|n DISH_n|another DISH_of|
DISH_on_with| DISH_our| DISH_sh| DISH_snap| DISH_snap|and DISH_so_no| DISH_so|put DISH_so|that
DISH_they_can| DISH_till| DISH_top| DISH_top|and DISH_went_off| DISH|DISH_P DISH|U_ar DISH|U_for
DISH|ar_go DISH|ar_on DISH|ar_out DISH|ar_scrub DISH|at DISH|cam_out DISH|caught DISH|countdown
DISH|gon DISH|gon_in DISH|halv_$ DISH|in_$ DISH|is_mix DISH|is_out DISH|is_stand DISH|is_whisk
DISH|n_longer DISH|off_$ DISH|pop DISH|roll_$ DISH|tak DISH|th_hous DISH|that_bit DISH|timer_it
DISH|today DISH|tonight DISH|too_my DISH|will_do DISH|with_this DISH|yes_w N:core_Nduration|
N:core_about_Nduration| N:core_about| N:core_after|Nduration N:core_after|rest N:core_and_Nduration|
N:core_and|Nduration N:core_and|how N:core_and|i N:core_and|steady N:core_and|what N:core_giv|
N:core_i|think N:core_lik|Nduration N:core_my_P| N:core_now_and| N:core_on_th| N:core_s| N:core_s|out
N:core_tak| N:core_that_is| N:core_what_do| N:core_what|is N:core_wher| N:core_whil_w| N:core_whil|i
N:core_with| N:core|Nduration_ago N:core|com N:core|in N:core|instead N:core|not_N:core N:core|ok
N:core|will_ya N:few_Ndate_and| N:few_Nduration|ago N:few_P|under N:few_P|will N:few_and_i|
N:few_can_not| N:few_count| N:few_extra|for N:few_for|DISH N:few_her_N:few| N:few_instead|of
N:few_month|pregnant N:few_mor|com N:few_of|N:few N:few_of|thos N:few_oven|and N:few_peopl_and|
N:few_person_is| N:few_point| N:few_r_work| N:few_this| N:few_th|U N:few_timer|of N:few_tim|what
N:few_us| N:few_well| N:few_wher| N:few|THING_no N:few|U_and N:few|bon_N:few N:few|bon_and
N:few|bon_not N:few|box N:few|do_not N:few|for_DISH N:few|guest_$ N:few|hav_shown N:few|her_N:few
N:few|in_this N:few|instead N:few|low_$ N:few|mat N:few|nam_off N:few|of_N:few N:few|of_th
N:few|of_thos N:few|of_us N:few|oven_$ N:few|peopl_cancell N:few|rather_than N:few|steady_temperatur
N:few|surpris_visitor N:few|tim_what N:few|tonight_$ N:oven_Nduration| N:oven_a| N:oven_can|
N:oven_do| N:oven_for| N:oven_get| N:oven_get|N:oven N:oven_i_am| N:oven_in|ther N:oven_lik|
N:oven_on_th| N:oven_put| N:oven|U N:oven|U_i N:oven|afternoon N:oven|afternoon_f N:oven|for_m
N:oven|instead N:oven|reach_$ N:oven|that_is N:some_do| N:some_for|th N:some_from| N:some_it|is
N:some_lat|on N:some_or| N:some_over_th| N:some_they_ar| N:some_they| N:some_would| N:some_w|
N:some|after_Nduration N:some|for Nclock_after|th Nclock_and_not| Nclock_by| Nclock_let| Nclock_on|th
Nclock_that_is| Nclock_w_will| Nclock_what_do| Nclock|for Nclock|instead Ndate_Nclock|and Ndate_in|
Ndate_in|th Ndate|i Ndegrees:core_insid_th| Ndegrees:core_is| Ndegrees:core_on|th Ndegrees:core|insid_i
Ndegrees:few|insid Nduration_THING_is| Nduration_after_w| Nduration_ago_befor| Nduration_and|DISH
Nduration_back_i| Nduration_do|not Nduration_for| Nduration_from_now| Nduration_h_is| Nduration_is_th|
Nduration_is|it Nduration_lat_i| Nduration_lat_so| Nduration_lat|put Nduration_let_us| Nduration_on_that|
Nduration_on| Nduration_over| Nduration_to|go Nduration_why| Nduration|ago_N:core Nduration|ago_how
Nduration|and_tell Nduration|behind_P Nduration|behind_and Nduration|hav_gon Nduration|later_and
Nduration|later_than Nduration|of_U Nduration|off_$ Nduration|on_th Nduration|on_that Nduration|sinc_i
Nduration|till_serv Nduration|would_ya Nduration|yell Nduration|yell_DISH Ngas-mark_it| Ngas-mark_i|
Ngas-mark_to| Ngas-mark|it_is Nweight_N:few|rib Nweight_forerib|on Nweight_for| Nweight_in|
Nweight_not|N:few Nweight_of|THING Nweight_prim| Nweight_prim|rib Nweight_stand| Nweight_stand|rib
Nweight_still| Nweight_with|bon Nweight|N:oven Nweight|U Nweight|of_THING Nweight|rib_of Nweight|topsid
P_U_eat| P_ar|set P_eat|Ndate P_has_been| P_has_got| P_i_do| P_in|law P_is_ask| P_is_bring|
P_is_cut| P_is_get| P_is_old| P_is|help P_is|in P_is|knock P_is|moan P_is|old P_is|plac P_is|plus
P_left|th P_lik|her P_open_that| P_salt_them| P_set|th P_sh| P_still| P_took| P_want_supper|
P|ar_feral P|ar_starv P|at_th P|bridi P|has_it P|is_N:some P|is_collaps P|is_moan P|is_sleep
P|jim_do P|jud_can P|on_th P|open_th P|rang P|salt P|salt_them P|simpl P|simpl_as P|under P|up
P|vot P|want_a THING_DISH_non| THING_DISH|is THING_N:core_and| THING_N:few|bon THING_THING_with|
THING_am| THING_am|i THING_at| THING_board|now THING_butter_on| THING_fan|oven THING_for_a|
THING_for|th THING_get_to| THING_giv|m THING_hand_m| THING_hav|Ndegrees:core THING_hop| THING_hop|that
THING_h| THING_i_am| THING_in|at THING_is_a| THING_is|begun THING_is|for THING_it_say| THING_my|P
THING_near| THING_no|problem THING_of_water| THING_off_th| THING_off|th THING_on|hom THING_out_th|
THING_out|by THING_right|now THING_r| THING_say|N:oven THING_say|th THING_sit| THING_slip_and|
THING_they| THING_th|lad THING_to|th THING_up|at THING_went| THING_what_do| THING_with_a| THING_without|
THING|N:core_already THING|THING_caught THING|THING_trim THING|THING_whol THING|THING_would
THING|anywher_in THING|ar_smok THING|ar_stream THING|counter THING|do_$ THING|drop THING|drop_Ndegrees:few
THING|enamel THING|hang_in THING|has_caught THING|has_gon THING|has_left THING|hav_Ndegrees:core
THING|is_load THING|is_still THING|mak_yusuf THING|now THING|of_THING THING|on_$ THING|out_th
THING|pan_$ THING|piec THING|rather THING|rather_than THING|saf_$ THING|should_b THING|slip_and
THING|splash THING|went_in U_do|not U_i_will| U_is_it| U_is|lot U_it| U_it|in U_it|was U_plan|
U_plan|dinner U_r| U_r|DISH U_sh_has| U_will_not| U|collaps U|had U|hav_flu U|is_P U|is_go
U|is_hav U|it_in U|not_th U|of_it U|still U|thos U|want_to U|when_th ^_DISH_is| ^_DISH_what|
^_DISH|gon ^_DISH|want ^_N:few_is| ^_N:few|r ^_N:some_in| ^_Ndate_i| ^_Ndate_w| ^_Ndegrees:core|in
^_Nduration|back ^_Ngas-mark_and| ^_Nweight_it| ^_Nweight|forerib ^_P|eat ^_P|will ^_THING_is|
^_THING_show| ^_THING_went| ^_THING|leg ^_U|say ^_^_almost| ^_^_ar| ^_^_bout| ^_^_bram| ^_^_consider|
^_^_convert| ^_^_dan| ^_^_dead| ^_^_d| ^_^_end| ^_^_e| ^_^_family| ^_^_flick| ^_^_from| ^_^_granddad|
^_^_grandmother| ^_^_guest| ^_^_h| ^_^_ic| ^_^_it| ^_^_i| ^_^_keep| ^_^_lid| ^_^_marni| ^_^_mom|
^_^_my| ^_^_never| ^_^_nudg| ^_^_school| ^_^_scor| ^_^_set| ^_^_slow| ^_^_someth| ^_^_steady|
^_^_taken| ^_^_tell| ^_^_text| ^_^_th| ^_^_total| ^_^_unless| ^_^_whip| ^_^_wish| ^_add|Nduration
^_after_th| ^_all_right| ^_all_th| ^_all|my ^_almost| ^_already_i| ^_already|i ^_and_th| ^_any_idea|
^_ar| ^_back_up| ^_bang_on| ^_beep_at| ^_beep|at ^_behind_by| ^_bless|you ^_blood|everywher
^_bout| ^_bram_is| ^_bram| ^_burnt_th| ^_burnt|th ^_burn|th ^_b|quiet ^_can_th| ^_check|again
^_clear_th| ^_consider| ^_convert| ^_could_i| ^_could_w| ^_cover_it| ^_cut|myself ^_dan| ^_dead|
^_dinner|n ^_ditch_th| ^_do_a| ^_dog|got ^_don_w| ^_drop_th| ^_drop|th ^_d| ^_end| ^_everyth_is|
^_e| ^_family| ^_fan|oven ^_first_car| ^_flick| ^_forget|everyth ^_forgot_to| ^_for|what ^_french_is|
^_from| ^_got_th| ^_granddad| ^_grandmother| ^_guest_ar| ^_guest| ^_guest|seat ^_h_can| ^_half_th|
^_has|P ^_hold_th| ^_hold_your| ^_how_do| ^_how_is| ^_how_thick| ^_how|should ^_how|thin ^_h|
^_i_am| ^_i_had| ^_i_overcook| ^_i_put| ^_ic| ^_in_it| ^_instead_of| ^_is|N:core ^_it_go| ^_it_is|
^_it_went| ^_it| ^_it|beep ^_i| ^_i|do ^_i|don ^_i|mak ^_i|remov ^_i|stuck ^_i|turn ^_i|us
^_jaysus_th| ^_joint_is| ^_keep| ^_knock|it ^_kumara_is| ^_leg|THING ^_lid| ^_look|lik ^_m_and|
^_mak|dinner ^_marni| ^_mom| ^_morag_is| ^_my| ^_my|U ^_never| ^_no_idea| ^_nobody_is| ^_non|of
^_not|rest ^_now|i ^_no|fresh ^_no|idea ^_no|pink ^_nudg| ^_off_to| ^_ok_look| ^_out_and| ^_out|sh
^_oven_i| ^_oven|temperatur ^_park_it| ^_pass_th| ^_peel|DISH ^_platter_is| ^_platter|is ^_priya|is
^_put_Nduration| ^_put_it| ^_reckon|i ^_rib_roast| ^_rib|roast ^_r|a ^_salt_is| ^_sam|heat
^_school| ^_school|run ^_scor| ^_scratch|th ^_scrub_th| ^_second_oven| ^_set| ^_should_it|
^_should_i| ^_shut_that| ^_slow| ^_so_i| ^_so_th| ^_so_what| ^_someth_is| ^_someth| ^_so|do
^_so|they ^_start_Nduration| ^_start_a| ^_steady| ^_step_out| ^_stick|Nduration ^_taken| ^_tell|
^_temperatur_is| ^_temperatur|is ^_text| ^_th_chip| ^_th_doctor| ^_th_heat| ^_th_recip| ^_th_smok|
^_th_stov| ^_th_visitor| ^_them|DISH ^_they_want| ^_they_will| ^_third_on| ^_th| ^_th|DISH
^_th|Nduration ^_th|middl ^_th|old ^_th|plat ^_tom|can ^_too_many| ^_total| ^_turn_that| ^_turn_th|
^_turn_up| ^_unless| ^_visitor|com ^_w_go| ^_w_hav| ^_w_skip| ^_wait_i| ^_wait|what ^_wak_m|
^_warn_m| ^_what_com| ^_what_hav| ^_what_heat| ^_when_w| ^_when|th ^_wher|did ^_whip| ^_whol|THING
^_why_did| ^_why_do| ^_will_it| ^_wish_i| ^_wish| ^_would_N:core| ^_w|sit ^_yer_man| ^_yes_to|
^_your_man| a_N:few_rib| a_N:few| a_Nweight|with a_THING_fan| a_bath|can a_bit_cold| a_bit|raw
a_block| a_bonfir| a_bon| a_buzz_in| a_cut_board| a_decent| a_fan_assist| a_fir|in a_holler_at|
a_hot|finish a_lat| a_list_of| a_look_Nduration| a_lot|of a_monkey| a_monkey|P a_nois_at| a_proper_rar|
a_revers| a_roast|for a_shellfish| a_shout_at| a_shout|at a_small| a_tad_earlier| abid| about_that|on
about_th| about_th|THING about_with| about|it_is about|mak about|th_DISH accord| accord|to
accord|to_th across_th_THING| add| add|th_green adult_N:few|P after_all_that| after_put| after_put|th
after_th|DISH after_w| after|a after|th after|w_start again_i|was again_look| again_look|N:core
again_mor| again_thank| again|thank ago_befor| ago_it_said| ag|ago ag|to aim_for|N:core aim_for|Nclock
aim_to| alcohol| alert_at|Ndegrees:core alert|m alex_can|stir all_THING_th| all_ar| all_can|
all_right_to| all_sat|down allergic|reaction allergy|at allergy|at_th all|com all|don_her all|of
all|on all|right_for all|sit all|sit_down all|sort_$ all|th_timer all|that_faff all|this_$
all|told alon|for_Nduration already_got|DISH already|th_DISH alway_Ndegrees:some|under alway|lat
alway|on am_N:some|behind am_Nduration|back am_away|behind am_fix_to| am_go| am_i_after| am_i|allow
am_i|get am_i|on am_not|go am_run_Nduration| am_stuck| am_tak|it amaz|in amaz|in_her am|Nduration_down
am|THING am|THING_for am|a am|a_good am|afraid am|do am|go am|hav am|hav_a am|look_at am|miss
am|new am|not_don am|se am|slow am|talk am|tell am|us an_THING|out an_alarm| an_extra_Nduration|
and_DISH|has and_DISH|yes and_Nduration_on| and_aim| and_call|it and_can_w| and_can|i and_can|you
and_could| and_did_i| and_did|i and_down|th and_drop_th| and_drop|th and_everyth_in| and_giv|
and_go_to| and_i_think| and_is|ther and_i|did and_i|go and_i|turn and_i|would and_left|th and_lunch|
and_my_THING| and_my|P and_new| and_now_th| and_on_th| and_pink|not and_plus_N:few| and_put_th|
and_put|th and_roast|DISH and_show| and_sh|still and_sit|down and_supper| and_switch| and_th_guest|
and_th_other| and_then|th and_th|N:few and_th|U and_th|guest and_ti|them and_w_will| and_what|do
and_which| and_will_not| and_w|eat and|back and|bob and|bob_is and|cook and|don and|eat and|hot
and|how_pink and|it_THING and|rest and|sh_will and|then_th and|they_hav and|what_would and|yell
another_Nduration_on| another|plac any_THING|left anyth_i|can anyth_want| anyth_w| anyth| any|way
an|inch apart_from| ar_N:few_for| ar_all|sit ar_at|N:core ar_both| ar_bring| ar_expect|N:some
ar_in_and| ar_in|and ar_in|b ar_in|their ar_leav| ar_not|brown ar_off|th ar_sat|down ar_split|
ar_split|th ar_start_to| ar_start|to ar_still_lik| ar_stuck|on ar_up|to ar_w_do| ar_w|at ar_w|nearly
arm_on| arm_on|th arm|on arm|on_th arriv_at|Nclock ar|N:some_lat ar|eat_at ar|golden ar|kill
ar|miss ar|not_do ar|not_hav ar|nowher_near ar|pal ar|ready_$ ar|roll ar|sat ar|set ar|set_th
ar|ston ar|ston_cold ar|w_look as_a_THING| as_far| as_far|as as_you|lik ask_how| asleep_in|th
as|butter as|look as|look_at as|you_wer at_N:core_will| at_N:core|i at_N:few|rather at_N:oven|that
at_Nclock_and| at_Nclock_at| at_Nclock|U at_Nclock|tonight at_all_and| at_all_it| at_at| at_it_sinc|
at_what_temperatur| at_what|oclock at_with| at|N:core_no at|N:core_right at|N:few_on at|N:few_sharp
at|N:few_to at|N:few_w at|N:some_$ at|Nclock_THING at|Nclock_befor at|Nclock_can at|Nclock_th
at|Nclock_to at|Ndegrees:oven_$ at|Ngas-mark_and at|a_tim at|half_tim at|m at|th_bon at|th_shop
at|th_stor at|work away|N:some away|behind away|behind_th away|for a|Nduration_bell a|THING_of
a|THING_pan a|b a|bad a|chanc a|disaster a|fan a|joint a|leave-in a|leave-in_THING a|liar a|look
a|mo a|nap a|number a|peek a|pizza a|power_failur a|rib a|right_way a|second_oven a|shellfish_allergy
a|singl a|sit a|slic a|slow a|smidg a|star a|warn a|wet b_Nduration|later b_a_monkey| b_an|
b_at_N:oven| b_at|N:few b_away| b_her_for| b_honest|with b_mak| b_much| b_much|longer b_nic_U|
b_ready_by| b_right_N:core| b_this| b_to|god b_want| b_want|DISH back_from| back_in_th| back_on_at|
back|Nduration_and back|in_N:core back|to_N:core bad_it|is bail_so| baker_is|N:few baker|is
barely_a| bath|can bath|can_you beach| bear_that_in| becom|N:some been_at_th| been_brais| been_brais|Nduration
been_in_sinc| been_in_th| been|don been|on_sinc beep_m_in| befor_it_is| begin_again|from begun_it|smell
behind|in_her believ|this believ|this_THING besid_th|THING best| bin_that| bin_th| birthday_girl_want|
bit_cold| bit_cold|Ndegrees:few bit_of|THING bit|of_THING bit|raw bleed|quit bleed|quit_a bless_her|U
block_and| board_U| board_U|not board|THING_enough bob_is| bob|is_your bok| bok|choy bon|ar_french
bon|in_it bon|off_$ bottl_is| bout_Nduration| br_dinner_forward| br_him| brais| brais|Nduration
bram_is| brb|Nduration break|out bring|DISH brought|N:few_mat brown|enough_$ brown|it br|dinner
br|dinner_forward br|my_P budg|for budg|for_ag bump_everyth_back| bump_up| bump_up|N:some bung_som|roast
bung_th_DISH| bung_th|roast bung|th_DISH burn_by_hot| burn_by|hot burnt_myself|on burnt|to
burnt|to_a bush| business|i bust_so| bus| butter_for| butter_is|whip butter_so| butter_with|
butter_with|DISH butter_w|hav butter|don_and butter|is_mad butter|mad_and buy|Ndate buzz_in|
buzz_in|Nduration by_for|th by_hot| by_hot|THING by|accident by|hot by|hot_THING by|us b|N:few_for
b|Nduration b|by b|get b|get_on b|go_for b|her b|right_N:core c_and| call_DISH| call_about|
call_m| call|it_N:few call|off can_and| can_get| can_i_get| can_i_se| can_i|DISH can_i|get
can_manag| can_not_abid| can_not_go| can_not_tak| can_not_w| can_smell| can_tell| can_us| can_w_mak|
can_you_hold| can_you|wak cancel_that|timer cancel_th|timer cancel_what| cancel_what|i cancell|so_N:few
cancell|that cancell|that_is cancel|DISH cancel|all_timer can|carv can|help_till can|manag_it
can|not_se can|stir_th can|you_do can|you_imagin can|you_put careful_with_pink| careful_with|
carry_th| carv_it|straight carv_so| carv_so|N:few carv|it carv|it_$ catch_my| catch_my|breath
catch_that_th| cat|is cat|knock cat|knock_th caught|and_it caught|light centr_it_is| centr|still
centr|still_N:few chair|and_th chang_of| chang_of|plan chang_their| chang_their|mind chang|their
chang|their_mind check_and| check_with_th| chew|on chill_th_DISH| chip_pan_is| choos|from chuck_a|
chuck_it_on| church|for_Nduration clean_forgot|to clean| clear|out clock_for_th| clock_i_am|
clock_i| coeliac_my_P| cold_by|N:some cold_in| cold|Ndegrees:few cold|on_us collaps_in| collect_th|
com_back| com_down|to com_for_help| com_from_th| com_out_of| com_up|N:core com_with|Nduration
com|down_to com|in_Nduration com|out_THING com|sh com|sh_got com|to_N:core confirm| consider|th
consider|th_DISH convert_th_lot| cooker_work| cooker|hood cooker|work cook|it_through cook|no_r
cooler_than_th| cop_i| cor_N:core_oven| could_i|do could_w_eat| could_w|go could|P could|do
could|i_hav count_m|down cover_in|THING cover_it|with cover_loosely| crank_it_to| crank_th|
crank_th|oven crank_to| crank_to|N:oven cream|is_mad cream|is_not cream|left cremat|it crisp_it_up|
crisp|th customer|at customer|at_th cut_board|THING cut_on| cut_th|oven daft|number dangerous_to|
dangerous|to day_sh| dead_it| dead_i| degre_in| degre|c degre|is delay_add| delay_add|Nduration
delay_of| delay_of|Nduration delay|by delay|by_Nduration di_on|m dial_and| dial_say| dial|THING_show
did_i_go| did_not_finish| did_not_salt| did_not_say| did_th|U did_you|get did|i_ruin did|y
did|you_say did|you_se dinner_Nclock_and| dinner_Nduration|sooner dinner_forward| dinner_forward|Nduration
dinner_is_plan| dinner_is|plan dinner|Nduration_sooner dinner|by_Nduration dinner|has dinner|tim_would
dinner|w din|at_N:few display_has| display|has do_a_roast| do_about_th| do_any| do_for| do_his|
do_i_DISH| do_i_cover| do_instead| do_instead|of do_it_want| do_it|lik do_i|ask do_i|bast do_i|hav
do_i|mak do_i|say do_not_and| do_not_mak| do_not_own| do_not|look do_not|think do_not|touch
do_not|worry do_th_brown| do_that_DISH| do_with_know| do_with_th| doctor|said dog_out_for|
dog_out| dog|out_$ don_h| don_i|hav don_no|pink don_so| don_that| don|so_far doon|ta door_is|shut
door_it| door|befor door|befor_Nclock door|of_oven down_at|Nclock down_for_th| down_that| down_to|N:oven
down|a_notch down|at_N:oven down|for_th down|lik do| do|DISH_with do|dairy do|hav_a do|i_believ
do|i_cut do|i_still do|i_us do|i_warm do|it_matter do|it_n do|next_P do|not_and do|not_believ
do|not_do do|not_n do|not_speak do|right do|this_$ do|w_do do|w_tak do|without dress_giv_m|
drop_Ndegrees:few| drop_it_to| drop|back_to drop|th_THING dry|as_a dyslexic| earlier_than|
earlier|Nduration early_can_w| early_can| earth_do| eas_th| eas_th|oven eat_Ndate_at| eat_at|N:few
eat_it|otherwis eat|Ndate_at eat|Nduration_mor eat|befor eat|it eat|it_otherwis eat|it_pink
edg_to| edg_to|edg electricity_has| electricity|has els_can| end_not| end|th_count eta|on_th
even|look even|look_at everyth_all_right| everyth_by| everyth_by|N:some everyth| everyth|for
everyth|go every|Ndate exactly_do_th| exactly_do| exampl| explain|how extra_Nduration_on| extra_Nduration|
ex|is ey_th| f_them| faff_about|it faff_with| fahrenheit_how| family_has| far_and| far|as fat_is_on|
fat|on_my feed|N:some feel_lik| few|minut fiddl_with_th| fiddl_with| fiddl_with|th fiddl| fiddl|with
fiddl|with_th find_m|should finish_with| finish|scrap finish|scrap_thos finish|th_trim fir_in_th|
fir_it| fir_up_th| fir_what| first_P| first_car| flam|at flam|at_all flat|out flat|tyr flick_th|
flick_th|oven flight_is_delay| flight_land| flight|is flip|th_DISH float| float|an float|an_THING
fold|chair folk|say for_N:few_adult| for_N:few|mor for_N:few|person for_N:few|surpris for_Nduration_i|
for_Nduration|walk for_P_and| for_U_and| for_a|Nclock for_dinner_and| for_how| for_m_i| for_my_german|
for_my|P for_pay_customer| for_th|N:few for_th|P for_th|whol for_what|reason for_yusuf| for_yusuf|mak
forerib|on forerib|on_th forever| forget_about_th| forget_th_Nduration| forget_th|old forget|
forgiv_m|otherwis forgot_to|put for|Ndegrees:core_$ for|Nduration_and for|Nduration_it for|P_nor
for|him for|m_P for|my for|new for|new_year for|noth for|th for|th_butter for|th_day for|th_second
for|this_crowd for|us found_out_U| freez|everyth freez|th freez|th_plan fridg_hav| from_N:core_to|
from_now_till| from|N:few_to from|this from|zero_$ front_of| front_room| front|room full|cook_no
gary| gas_has|run gash| gas|has_run gav|m_N:few gav|th generator|kick generator|kick_in german|visitor
get_her_at| get_on| get_th|DISH get|DISH get|N:oven get|that gi_m| girl_want| girl_want|supper
giv_daft| giv_daft|number giv_it_a| giv_it|another giv_m_som| giv_m|fahrenheit giv_m|som giv|m_fahrenheit
go_alongsid| go_in|now go_it_with| go_on_to| go_over|N:core go_steady_no| go_steady| go_steady|no
go_straight| go_th_THING| go_to_bother| go_to|go go_to|hav go_to|look god_it_is| god_ther_is|
god|it_has golden_as| golf| gon_to_get| gon_to_th| gon_to|N:core gon| gon|to_th good_N:some_lat|
good|THING good|on got_THING_to| got_all| got_guest_to| got_held_up| got_their_coat| got_th|DISH
got|N:few_r got|Nweight_of got|her got|it got|th_DISH got|th_oven got|up go|back_$ go|for_N:few
go|in_th go|to_plan go|to_th go|to_walk grab_th_hot| grac_of_god| greas_is_on| greas|and green_N:few|
grey_as_a| grocery|list guest_ar_Nduration| guest_com_Nduration| guest_com|Nduration guest_to|N:few
guest_to|greet guest|rang h_has_gon| h_is_U| h_is|U h_is|cut h_is|not h_will_b| hack_into|
had_it|is had_no|DISH had|in had|it_is halal_for_yusuf| half_of|it half_th_DISH| half_th|guest
half|th_guest hand_m| hand_m|a handl_my| handl_my|palm handl_th| handl|cam handl|cam_off handl|it
handl|th hand| happen_at| has_a_nut| has_a|shellfish has_been_brais| has_been_sit| has_com|out
has_gon_and| has_gon|dark has_got|U has_left| has_not|been has_not|got has_not|reduc has|been_off
has|been_out has|gon_and has|got_th has|run has|run_out hatti| haul_th|roast hav_DISH_as| hav_N:core|
hav_Nduration|of hav_been_at| hav_bought| hav_bung_th| hav_caught|they hav_di| hav_di|and hav_eas_th|
hav_got|her hav_got|th hav_had|N:few hav_hit| hav_hoick_th| hav_it|on hav_i|got hav_ne'er_a|
hav_not_th| hav_noth_lik| hav_not|any hav_pull|it hav_remov_it| hav_roast| hav_slic| hav_start|th
hav_taken_th| hav_th_DISH| hav_th|DISH hav_th|THING hav_th|oven hav_to_eat| hav_you_seen| hav|another
hav|any_DISH hav|any_THING hav|brought hav|bung hav|bung_th hav|burnt_my hav|cancell hav|gon
hav|got_my hav|got_th hav|it_out hav|land hav|lift hav|lost hav|mercy hav|miss_th hav|no_idea
hav|not_don hav|not_th hav|nut hav|rub_th hav|said hav|th_oven hear_myself| hear_myself|think
heat_at_th| heat_put_m| heat_to|N:oven heat_up|to heat|th_whol heaven_is| heaven|is_sak held_up|i
help_with| help|m_out her_P|is her_at|N:oven her_chair|and her|again_$ her|at_N:few her|at_N:oven
her|lif her|lif_$ her|out_now her|sleev her|to_help him_i| him|in_th his_P_so| his_at| his|medium_rar
hit_m| hit_th_tabl| hit_th|tabl hit|N:core_and hoick_th| hoick_th|THING hold_dinner_for| hold_up|a
hold_your| hold|on_a hold|th_THING holler_at| holler_when| homeless|shelter honest|with honest|with_m
hors_for| hors_for|Nduration hot_THING|splash hot_by|N:some hot_this| hour|by hour|by_hour
hous_for| hous_for|Nduration how_THING_a| how_can| how_long_to| how_many_person| how_pink_is|
how_should| how_they| how_would_i| how|com_w how|many how|much how|old hurry|it h|drop h|said
h|was i_U|want i_am_go| i_am_stuck| i_am|THING i_am|a i_am|afraid i_am|do i_am|go i_am|hav
i_am|miss i_am|new i_am|se i_am|slow i_am|talk i_am|tell i_am|us i_buy| i_clean_forgot| i_cut|into
i_do|with i_drop|it i_feel| i_get_it| i_get_th| i_hav_an| i_hav_bought| i_hav_slic| i_hav|bung
i_hav|finish i_hav|lost i_hav|not i_hit_th| i_last|look i_let| i_lift_it| i_look|for i_look|th
i_lower_it| i_n_for| i_n|th i_pull|it i_put_THING| i_put_already| i_put| i_put|my i_put|th
i_said|that i_set|th i_shut|th i_swap_THING| i_swap_th| i_swap|th i_tak|THING i_tak|th i_think_i|
i_took_th| i_trim| i_trim|th i_turn_th| i_want|P i_was_go| i_was_not| i_will_get| i_will|carv
i_will|forget i_will|se i_would|P i_wrangl_th| i_yank_it| ic_water_THING| if_i_am| if_i_had|
if_th_oven| if_this_is| if_you|can if_you|do if_you|would if|THING if|i_am if|it_cam ignor|it
immun| immun|system immun|system_is in_N:few|plac in_Nduration_i| in_Nduration|yell in_a_THING|
in_a|U in_by| in_charg_of| in_front_of| in_law_ar| in_law_has| in_law|tak in_oven|sinc in_pound|and
in_som_DISH| in_th_front| in_th_supermarket| in_ther_i| in_this|hous in_th| in_th|bin in_th|cor
in_th|door in_th|kettl in_th|oven in_till| in_whol| inform_m_at| inform|m_when instead|of_THING
internal_temperatur_is| internal|temperatur_is into|th_DISH in|DISH_DISH in|N:some_i in|Nduration_DISH
in|Nduration_about in|Nduration_already in|at_N:oven in|at_th in|flam_$ in|law in|metric_so
in|order in|pound_and in|th_bin in|th_driveway in|th_hall in|th_last in|th_market in|th_plac
in|th_thickest in|their_chair in|their_coat in|ther_th is_N:core_not| is_N:core|now is_N:few|rib
is_N:oven|in is_Ndegrees:core_in| is_THING|anyth is_U_and| is_U_up| is_all|go is_already|N:core
is_alway_Ndegrees:some| is_a|good is_a|liar is_begun_it| is_behind| is_bleed|a is_bleed|quit
is_bring_a| is_burn_by| is_bust_so| is_cancell_so| is_com_after| is_com| is_com|Nduration is_com|after
is_cook_to| is_cook|to is_cover_in| is_dead_it| is_don_it| is_don_i| is_down|at is_eat|what
is_finish_and| is_giv_daft| is_giv|m is_go_on| is_go|on is_hav_his| is_hav| is_her_to| is_her|till
is_hit|N:core is_hold_it| is_hold|it is_how_many| is_in_DISH| is_in|charg is_in|metric is_it_still|
is_it|all is_join|th is_lactos| is_lactos|intolerant is_lat_so| is_mad|it is_my|next is_not_great|
is_noth| is_not|for is_not|what is_now_at| is_now|Ndegrees:core is_old| is_on_at| is_on|again
is_on|plat is_on|wash is_pink_ok| is_plan|for is_raw|as is_right|U is_roll_up| is_saf| is_sat_and|
is_sh_com| is_shap_N:few| is_smok_someth| is_smok|com is_smok|pour is_starv| is_stuff_with|
is_th_go| is_that_THING| is_that_in| is_that|THING is_ther_any| is_th|DISH is_th|THING is_th|first
is_th|grey is_th|oven is_th|roast is_tough|as is_to| is_up|at is_vegetarian_and| is_well|don
is_went| is_wrong| is|N:core_medium is|N:few_now is|Ndegrees:core_in is|Ndegrees:oven is|P
is|P_N:few is|a_U is|all_her is|already is|another_N:few is|beep is|begun is|bring is|burn_th
is|cold is|com_up is|dark is|fall is|fir is|fir_in is|flam_in is|hover is|in_charg is|it_a
is|it_dangerous is|it_go is|it_look is|it_ok is|it_th is|knock_it is|leak is|left_th is|medium_$
is|moan is|nam is|not_U is|not_yet is|old is|on_DISH is|order is|out_THING is|out_now is|outta_ther
is|plan_for is|plus is|plus_N:few is|ready_$ is|ring is|roll_up is|salty is|shap is|sit_at
is|someth_i is|still_soup is|stuck_at is|tell_m is|th_last is|th_rest is|th_tim is|ther_$ is|ther_any
is|ther_anyth is|ther_someth is|this_th is|too_much is|way_too is|what_w is|wilt is|worth it_N:few|rib
it_Nduration|back it_U| it_alon|for it_and_th| it_and_what| it_at_th| it_back|to it_been| it_com_up|
it_forward|Nduration it_for|Nduration it_good| it_has_got| it_has|becom it_if_ther| it_in_N:few|
it_in_th| it_is_alway| it_is_driv| it_is_hold| it_is|N:few it_is|com it_is|cover it_is|dead
it_is|m it_is|raw it_is|smok it_is|warm it_is|way it_look|lik it_on_at| it_on_a| it_out_Nduration|
it_out|this it_put| it_say|THING it_sinc| it_sit| it_smell| it_they_ar| it_till| it_to|Nclock
it_up|front it_up|right it_w_ar| it_well|don it_will|tak it|Nclock it|Nclock_instead it|against
it|against_th it|all_go it|alon_for it|at_all it|for_N:few it|for_m it|is_N:oven it|is_Nclock
it|is_all it|is_fin it|is_loud it|is_serv it|is_stuck it|li it|look_$ it|must_b it|off_$ it|off_and
it|otherwis it|out_on it|r_N:core it|rest_for it|said_N:core it|straight_away it|this_minut
it|till_N:core it|touch_N:core it|went_in it|with_th i|allow_to i|am_U i|am_ask i|am_lat i|am_sorry
i|am_walk i|b i|burnt_my i|can_smell i|can_tak i|hat i|hav_N:few i|hav_THING i|hav_begun i|hav_complet
i|hav_don i|hav_put i|hit i|hit_th i|is i|is_not i|let_it i|never_got i|on i|set_it i|still_n
i|swap i|swap_th i|ti_it i|wash i|will_tell i|work jess_is| jo_will| job|is_a joint|in_th joint|went
joint|went_in join|th_party jo|is jump_past|th justify| keep_his| keep_it|warm keep|ask keep|ask_m
kettl_on_tim| kickoff_is| kill_my_P| kill_th|Nduration kilo_is_so| kindly|inform_m kindly|remov
knock_it|off knock_th|oven knock|that_timer know_in| know_in|Nduration know_ther_is| know_when_it|
know|about know|if_this know|when_Nduration kumara_is| label_say|Nweight label|say_Nweight
lactos|intolerant last_car|pull last_clear| last_clear|out last_look|it last_of_th| last_of|th
last_on|out last|car_pull last|messag last|number last|on lat_by| lat_it| lat_put_th| lat_that_is|
lat_with| later_than| later_would|you lat|on_my lat|put law_ar| law_has| law_tak_over| law|ar_after
law|is_N:few law|is_pregnant law|tak learn_about| left_in_th| left_th|oven leftover_sit| leftover_sit|out
left|off left|off_$ leg_of| leg_of|THING leg|THING leg|THING_Nweight leg|of leg|of_THING let_us_DISH|
let_us_start| li_it| li_it|is lift_it|out lif|is_too light_hav_di| light|di light|went_off
lik_DISH|r lik_P_eat| lik_a_bonfir| lik_his|medium lik_sho|leather lik_th_THING| lik|a_U lik|her_well
lik|th_th lik|that_$ lip|ar lip|ar_swell littl_U|is littl_on|will littl|THING liv_at|N:oven
liv|at long_can|th long_do_th| long_i| longer|than long|enough_to long|has_it long|mor long|w_got
look_Nduration|mayb look_th| look|at_th look|it_was look|th_DISH lord_hav| lord_hav|mercy lost_track|of
lost|a lost|with lot|to lot|to_th low_sinc| low_to|tak lower|than lump_lik| m_N:few_tim| m_U|hold
m_a_N:few| m_at|Ndegrees:core m_da| m_how| m_in_fahrenheit| m_in|N:few m_know_in| m_know|at
m_som|choic m_th_next| m_th|P m_to|do m_to|turn m_up|at m_what_i| m_when_th| mad_for| mad_th|oven
mad|it_to mad|th_oven mak_DISH| mak_a|not mak_that|Nclock mak|this many_person| many_person|is
marni|is medium_well_for| medium_what| medium|rar_N:few medium|rar_what medium|well_$ medium|well_th
melt_down| menu_and| method|for_green middl|get middl|get_to might|b minc|pi mind_about_that|
mind_your| mind|th mind|th_tim minus| minut_left| misread_th| miss_in| miss_in|th miss|in miss|in_th
miss|out_th moment_it| monkey|P monster|of monster|of_a month|pregnant morag_is| mor|com mouth|now
mov_it_to| much_as|look much_in| much_longer|do much_salt|go must_eat| must|it must|th_THING
mut|yourself my_P|bridi my_P|jud my_P|simpl my_back| my_blood| my_blood|pressur my_finger_on|
my_finger|on my_german| my_german|visitor my_grandson| my_half| my_oven|li my_phon_is| my_sleev|
my_way| my_wrist|on myself_on|th myself|think my|P_$ my|P_P my|P_on my|P_will my|breath my|breath_$
my|charger my|cooker my|cousin my|ex my|family my|mind_$ my|own my|sleev m|THING_th m|again_$
m|na_$ m|option m|should m|should_it m|th_plan m|then_$ n_a_bath| n_for_th| n_to_eat| n_to|do
ne'er_a| near_th| neep|ar never_forgiv_m| never_mind_th| never_own| never|cam never|said never|us
new|year next_door_for| next|year nibbl| nic_U|i nic_and_pink| nix_th_Nduration| nix_th|Nduration
no_DISH|w no_cream|left no_fancy| no_flam|at no_i_am| no_i_told| no_it|is no_n|for no_other|
no_pink|at no_sign_of| no_that| no_th|DISH nobody_her| nobody_is_THING| nobody_want| nobody|els
nobody|her_eat nois_at|N:core non_of| non|to non|to_b not_N:few|in not_a_singl| not_abid| not_b_mak|
not_believ|it not_believ|this not_bother|m not_brown|enough not_budg|for not_catch|that not_com|sh
not_cop_i| not_don|th not_do|dairy not_do|that not_eat|r not_even|look not_find|th not_finish|scrap
not_got_th| not_great| not_hear_myself| not_hear|you not_know|how not_know|if not_medium|rar
not_out|yet not_own| not_plan_N:few| not_ready_for| not_tak|it not_talk_for| not_talk|to not_touch|THING
not_touch|it not_trust|th not_want_th| noth_has| noth|green noth|green_on noth|has noth|in
not|N:few_and not|a_N:few not|com_on not|don_th not|don_with not|eat_DISH not|eat_r not|happen
not|hav_it not|listen not|n_to not|on_yet not|open not|pound_$ not|ready_$ not|say_that not|ther_$
not|think not|well_sh not|worry now_Nduration| now_and_how| now_go| now_kindly| now_kindly|remov
now_they| now_th|THING now_what|is now|Ndegrees:core_insid now|it no|THING_and no|THING_at
no|U_$ no|bon_$ no|later no|mor_DISH no|mor_talk no|on_is no|pink_at no|problem no|sear_$ no|tim_to
no|win no|worry nudg_m_in| nudg|in nudg|in_Nduration number_do_i| number_do|i number|has n|
n|for_th n|not n|th_DISH n|th_Nduration n|to_catch oclock| oclock|do of_THING_is| of_god|it
of_guest| of_peel| of_plan_no| of_th_P| of_them_and| of_them_ar| of_them|walk of_us|non off_at|N:few
off_for_Nduration| off_no_flam| off_on|th off_th_board| off_th_bon| off_th_guest| off|N:few
off|again_$ off|th_pan off|yet of|THING_now of|an of|god of|peel of|plan of|rest of|th_other
ok_ok_i| ok_that_is| ok_that| ok|with old|girl olly_is| on_again_thank| on_again_th| on_again|thank
on_at_th| on_earth_do| on_his| on_my|arm on_say| on_sid|fewer on_th_greas| on_this|U on_this|th
on_th|DISH on_th|bench on_th|door on_th|oven on_th|porch on_th|roll on_th|stick on_tim|m on_which|
on_with_whil| onc_it|is onc_i| onlin_tonight| on|N:oven_for on|a_THING on|a_few on|back on|dinner_they
on|for_N:few on|hom on|m_i on|out_i on|speaker on|th_board on|th_cabl on|th_fat on|th_instant-read
on|th_middl on|th_motorway on|th_scal on|th_shelf on|th_sofa on|th_stick on|th_sticker on|track_for
on|whil open|th_window or_am| or_am|i or_a|THING or_h| or_is|it or_is|that or_should_i| order_onlin_tonight|
or|THING or|must or|som other_ar| our_kev| our|at out_Nduration|ago out_U|P out_and|i out_b|back
out_from| out_hav| out_i_hav| out_of_U| out_of|N:few out_on|m out_oven| out_th_butter| out_th|oven
out_till| out_w|do outsid|is_burn out|by_mistak out|for_a out|for_m out|of_my out|of_th out|on_m
out|overnight out|sinc_N:few out|th_P out|whil oven_THING|hang oven_b|at oven_is|N:some oven_is|Ndegrees:some
oven_mak| oven_run_hot| oven_run|N:some oven_sinc| oven_stand| oven_still| oven_th|THING oven_up_to|
oven|Nduration_befor oven|THING_N:some oven|and_it oven|at_N:oven oven|back_to oven|befor_Nduration
oven|dead oven|door_open oven|is_Ndegrees:some oven|is_at oven|is_conk oven|is_work oven|switch
oven|switch_itself oven|up oven|what_do oven|with over_it_is| ow_i| ow|i_touch p_m_at| p_m_in|
p_m|in pack_up|on pair|of pan_THING|ar pan_went| pan|my_THING parish| park_at| party|of pass_on|that
pass_out|on pass|on_that pass|th_DISH past_N:core_say| past_N:core|i past_well|don past|N:core_$
past|sav pay_customer|at peanut|kill peanut|kill_my peel|and_cut peopl_and| peopl_ar_start|
peopl_not|N:few peopl|ar_her perch_it_on| person_is| person|is_it pet_ar_split| pet_is_on|
pet_is| phon_to| phon|di pick_up_th| piec|of_THING pink_it| pink|THING_saf pink|at_all pink|bit
plan_no| plan_no|DISH plan|dinner plan|dinner_roll plat_down_at| plat_down|Nclock plenty_of|
plenty|of_it plus_N:few|mor plus_theo_is| pok_it| pok|m_in pop_out_for| pop|th postpon_th_dinner|
pound|and power_is|out press|someth pretend_i|never pretend|i_did priya_will_do| priyanka_is|
priyanka_is|vegetarian proper_THING|THING proper_rar| proper_rar|roast pull| pull|th_THING
pull|this_at pur|vegetarian push_it_to| push|it_in put_THING|in put_already| put_already|th
put_m_down| put_oven|on put_th|in put_you|on put|th_bin put|them p| quick|updat quid_for| r_work_on|
r_work|on ran_out_of| ran|out rar_it|is rar_roast| rar_to| rar|roast_this raw|THING_and read_you|
ready_in|tim ready_it|is ready_when| read|N:few reason_for| reckon_in_th| reckon_it| reckon_w|
reckon_you|could reckon|i reckon|it_will rehearsal| remember_how| remind_m_to| remov_th| remov|th_timer
requir_now_kindly| rest_on|th rest|do_not rest|for rest|it_Nduration rest|now_th revers|th
revers|th_last rib_on| rib|for right_at| right_down| right_it| right_it|is right_now_at| right_over|
right_that|is right_with| right|U right|U_th right|or_should rim| rins|it roast_DISH_w| roast_cam|
roast_cam|out roast_has_been| roast_in_oven| roast_is_not| roast_is_on| roast_is|out roast_is|season
roast_it_is| roast|cam roast|has_left rock|THING roll_and|ti roll_out| roll_went| roll|and_ti
roll|is_not roll|n_Nduration roll|went room_for_N:few| room_with| rop_in_th| run_hot|by run_out_of|
run|Ndegrees:some_hot run|a_bit run|lat run|m run|m_through run|order r|and r|you r|you_back
said_they| said_to_th| said_you| said|N:core salt_go|on salt_per| salt_them| salt_them|DISH
salt|it_so salt|it_twic salt|th_THING sam_heat|th sat_and| sat_out|Nduration sav|it say_N:few|
say_N:some|in say_my| say_when| say|N:few_mor say|Ndegrees:core_on say|grac_$ say|it_again
say|on say|on_th say|when_it scald|my_arm school_pick| school_pick|up school|pick school|pick_up
scor_th| scor_th|fat scrap_th|DISH scrap|of scream_th| se_tripl_digit| sear_a| sear_keep| sear_keep|it
sear|is_mad sear|now_$ season|it second_on_th| sell|plat serv_at|N:core serv|it_at sesam_allergy|at
set_N:oven_get| set_on| set_to|N:oven set|an set|another set|another_plac set|fir set|fir_to
set|th_number se|you_in sh_com|along sh_do_not| sh_get_up| sh_got| sh_has_been| sh_has_got|
sh_is_after| sh_is_on| shap_N:few| shap_N:few|roll sharp_U| shav_N:few| shav_N:few|off shellfish|not
shellfish|not_that shellfish|sh_swell shop_for| shop_had_no| shop_is|shut should_b|get should_hav_said|
should|w shout_if| shout_when|th shov_it|back shov_th| shower_giv_m| show|N:some_so shut_th|door
shut|off shut|off_th sh|eat sh|is_not sh|look sh|will_not sid|fewer sid|fewer_los sign_of|
simpl_DISH| simpl_DISH|will sinc|N:oven_$ sinc|Ndate sirloin|on sit_at_N:core| sit_at|N:core
sit_at|Nclock sit_down_at| sit_down_to| sit|on_a sit|on_th skim_and| skim_and|bob skip_th|
skip_th|DISH skip_th|french skip|th_ic skip|th_ty skip|this slic_th| slic|it_$ slic|my_finger
slid_by| slid_by|Nduration slimy| slip_by| slip_by|Nduration slip_on| slip_on|th slow|then_blast
slow|today smell_amaz|in smell|lik smok_someth| smok_someth|U smok|com_from smok|detector_scream
smok|pour_out snap|and_peel snow|is so_N:few|her so_do_it| so_do|i so_far_and| so_i|am so_let|
so_lik|th so_nobody| so_no| so_no|THING so_rar_it| so_shav_N:few| so_that|is so_ther_is| so_they|
so_w_eat| so_watch| so_what_is| so_what|is so_when| soft_as| soft_as|butter som_DISH|roll som_of|th
someth_in| someth_no| someth_no|electric someth_to| someth|U som|DISH_DISH som|choic sooner_P|
sooner_P|ar soon|as_it sorry_miss| sorry_miss|that sound_right_to| sound|lik_a so|DISH_it so|N:few_her
so|careful so|careful_with so|count_m so|cross_it so|do_i so|much so|noth_with so|plus so|plus_N:few
so|put_them so|slow so|ther_is spark|and_flam speak_to| speak|up splash|of split|th_job sp|this
sp|this_up stand_on_th| stand|in_for stand|on_th star_at| start_a_Nduration| start_temperatur|
start_then| start|afresh start|all start|on_th starv_let_us| stay|out steady_no| steady_no|sear
steady|no steady|no_sear step_away| step_out_b| step_out| step|out_b stick_it| stick_som|green
stick_th| stick|DISH_on stick|th_THING still_at_th| still_good| still_in|ther still_raw|insid
still_rock|THING still_wait| still_wait|on still|b still|cold still|park stir_th| stir| stop_with|
stop_with|th stop|that_timer stor| stov_for| str_in| str_to_ti| straight|to_THING strain_skim_and|
strik_N:few|nam stuck_a| stuck_behind_a| stuck|behind_a stuff_i| stuff_with| suggest| supper|Nduration_sooner
supper|back supper|back_N:some sur| swap_THING| swear_it| swear|it_is switch_off_th| switch_to|
swor| tabl_by| tabl_fork| tabl_for| tabl_that_is| tablespoon_of| tablespoon|of tabl|wait tad_earlier|
tad_earlier|Nduration tak_it|out tak_m_THING| tak_your| taken_it| taken_it|out taken|it taken|it_out
tak|off talk|rubbish talk|to_you tamsin| target|cor_Ndegrees:core tast|lik taxi|is tell_N:few|
tell_P| tell_him| tell_m_and| tell_m_how| tell_you_it| tell_you|about tell|them tell|you_it
tell|your_P temperatur_am_i| temperatur_do_i| temperatur_has_reach| temperatur_of_th| temperatur_of|th
temperatur_th| temperatur|all temperatur|all_th temperatur|is_medium temperatur|of_N:core temperatur|sh
temperatur|sh_is temperatur|wis tent|is_off tent|it th_DISH_bubbl| th_DISH_to| th_DISH_up|
th_DISH_you| th_DISH|bas th_DISH|countdown th_DISH|pop th_DISH|that th_N:few_from| th_N:few_r|
th_N:few|from th_Ndate| th_P_ar| th_P|from th_P|in th_THING_ar| th_THING_cut| th_THING_has|
th_THING_right| th_THING_what| th_THING|bag th_THING|counter th_THING|till th_and_it| th_bishop|
th_board_U| th_bon_ar| th_bon|ar th_bridg|is th_cat|knock th_centr|still th_choic| th_cooker_work|
th_cooker|hood th_cooker|work th_cream_i| th_cream| th_dog_and| th_dog_out| th_dog|is th_door_on|
th_door|befor th_door|now th_door|so th_end_not| th_extractor_is| th_family_has| th_fat_is|
th_first| th_fridg_hav| th_front_room| th_front|room th_good|THING th_greas| th_greas|and th_green_N:few|
th_guest|hav th_guest|list th_handl|it th_heat|to th_homeless| th_homeless|shelter th_hors_for|
th_hot|oven th_hous_for| th_i|am th_joint|went th_label_say| th_last_clear| th_last|th th_light|went
th_list_of| th_lot|to th_lowest| th_menu_and| th_middl_is| th_middl|get th_next|step th_number_i|
th_number|has th_orang| th_outsid|is th_oven_N:few| th_oven_Nduration| th_oven_befor| th_oven_light|
th_oven|di th_oven|light th_pan_went| th_pink|bit th_plastic| th_pull|temperatur th_queu| th_reason_for|
th_rest|do th_rib_with| th_roast|DISH th_roll_out| th_roll|n th_run|order th_sh| th_simpl_DISH|
th_sirloin| th_strong| th_supermarket| th_tabl_at| th_tabl_by| th_tabl_fork| th_tabl|by th_tabl|wait
th_timer_and| th_warm|drawer th_way_and| th_way_no| th_way|i th_with|th th_wrong|THING th_wrong|th
than_i|can thank_a| thank_b_to| than|you that_can| that_faff_about| that_how| that_i_look|
that_in|mind that_is_join| that_is_th| that_is|right that_is|wher that_on_a| that_say| that_timer_on|
that_was|N:core that_went| that_went|in that_with|th that_would| that|DISH that|all_right that|b
that|from that|is_my that|is_wher that|last_bit that|now that|ok_$ that|out_$ that|phon_call
that|saf that|to their_at|Nclock their_coat|off their|mind them_back|on them_do| them_i_want|
them_in|th them_off|already them_w| them|DISH_twic them|again them|by them|hav_turn them|walk
them|walk_in then_a_hot| then_th|DISH theo_is|P theo|want ther_any| ther_is_DISH| ther_is|DISH
ther_is|a ther_is|blood ther_is|fir ther_is|too ther|any_sav ther|has thes|fahrenheit thes|fahrenheit_i
they_ar_bring| they_ar_run| they_ar|don they_ar|in they_ar|no they_ar|pal they_ar|sat they_can|not
they_keep|ask they_lost| they_want_another| they_will_b| they_will_not| they|call they|did
they|had they|still thick_a|grey think_my| think|i_hav this_b| this_for|th this_is_right| this_out|
this_oven_run| this_whol|tim this|THING_for this|U_stov this|at this|for_th this|with this|work
thread| through_th|whol throw_in|som th|DISH_and th|DISH_bless th|DISH_bubbl th|DISH_butter
th|DISH_get th|DISH_must th|DISH_now th|DISH_sh th|DISH_timer th|DISH_up th|DISH_was th|DISH_with
th|P_$ th|P_ar th|P_had th|P_to th|THING_DISH th|THING_counter th|THING_insid th|THING_into
th|THING_or th|U_th th|app th|at_onc th|bairn th|barbecu th|bathroom th|bench th|blast th|bon_ar
th|butter th|button th|choic th|chop th|clock th|clock_on th|coat th|counter th|dial_and th|divorc
th|door_shut th|finger th|fir_$ th|first_guest th|flight th|football th|fourth th|garag th|grav
th|green_DISH th|guest_ar th|hot_oven th|lad_ar th|lid_on th|light th|lino th|lowest th|magic
th|magic_number th|main th|match th|middl_b th|motorway th|nut th|oven_as th|oven_th th|plat_and
th|pub_$ th|r_win th|rang th|rest_and th|roast_in th|roll_and th|shop_list th|show th|sirloin
th|soup_$ th|stor th|tabl th|tablet th|tim th|timer_off th|tong th|top_of th|whatsit th|win_$
th|world till_N:few_and| till_it|is till_i|can till_when| tim_ar_w| tim_for_a| tim_for_th|
tim_for|th tim_hav| tim_if| tim_is_your| tim_ther_is| tim_they| tim_th|DISH timer_can| timer|anymor
tim|do_th tim|for_a tim|hav tim|left tim|m_N:few tim|should tim|should_i tim|they tim|what_you
ti|it_with ti|it_yet ti|them ti|them_back to_N:oven_Nduration| to_N:oven_U| to_THING_on| to_b_a|
to_b_in| to_borrow| to_bother| to_b|THING to_carv|it to_church_for| to_church|for to_collect_th|
to_do_a| to_flip_th| to_flip| to_get_th| to_get_to| to_get|th to_go|in to_his| to_it| to_my|
to_serv_it| to_set| to_shellfish|not to_shop| to_th_tabl| to_that|phon today_everyth| today_everyth|tak
together_with| told_you|about told|him too_low_to| too_much_in| took_th|DISH took|it took|out
top|of top|off toss|th toss|th_DISH touch_th_pan| touch|THING tough|as_old to|N:core_in to|N:core_whil
to|THING_up to|b_N:some to|bast to|check to|do_th to|eat_Nclock to|eat_Nduration to|edg to|greet
to|jump to|jump_in to|know to|peel to|reheat to|th_DISH to|thos to|us track|of traffic_is|
train|is_delay trim|and trim|th_DISH trip_and| trip_someth_no| trust|th try|to turn_out_ther|
turn_out_w| turn_that_down| turn_them_off| turn_up_and| turn|off turn|th_DISH ty_it_up| under_N:core|
understand_th| understand| unit_and| unit_f| unless_it_is| unless_it| unless_it|is up_again_look|
up_by| up_from_th| up_from| up_i_am| up_it|is up_on|th up_th_cooker| up_th|DISH upstair_for|
upstair_for|Nduration upstair_to| up|N:few_sinc up|a_spell up|at_N:oven up|on_m up|on_th up|or_down
up|right_at us_and_N:few| us_at|Nclock us_begin_again| us_eat_Nduration| us_go_steady| us_go|straight
us_how| us_if| us_start| us_that_is| us|DISH_out us|a_bell us|by us|finish us|non us|skip_it
us|you_$ w_ar_expect| w_ar_feed| w_ar_out| w_ar_run| w_ar|a w_ar|do w_ar|sit w_at_with| w_can|not
w_eat_Nduration| w_get_to| w_get|to w_got|N:few w_hav|not w_hav|plenty w_jump| w_left|off w_miss|out
w_push| w_should| w_skip_th| w_took_it| w_want_th| w_want|it w_will_DISH| w_will|serv wait_what_is|
wait_with| wait|for_th wait|on_th wait|with_th walk|m_through want_dinner| want_it_well| want_supper|Nduration
want_to_know| want_to| want_to|THING want|DISH_with want|P want|P_eat want|m_on want|supper_at
want|that want|their warm_it| warm|oven was_N:core_at| was_N:core_when| was_N:oven| was_Nweight|
was_my_P| was_not|listen was_that_th| wash| was|N:core_and was|N:core_at was|Nduration_ago
was|a_THING was|don was|on water_THING|test water_is|boil way_THING|this way_do|i way_it| way_no|
way_out_do| way_through_no| way_th|DISH way_to_get| way_too|early way|THING way|over we_N:few|
weight_in|kilo weight|in_kilo well_for| well_how| well_it|is well_th_rest| well|don_all went_in|Nduration
went_on_at| went_out_on| went|on wer_back| wer_us| wer|Nduration_behind wer|th wer|us whack_it|down
what_ar|w what_can|sh what_did_th| what_do_medium| what_do_water| what_do_w| what_do|it what_els|can
what_go_in| what_hav_you| what_heat_do| what_is_Ndegrees:core| what_is_medium| what_is_ther|
what_is_up| what_is|a what_i|said what_must| what_must|i what_oclock| what_oclock|do what_temperatur|do
what_tim|should what_will_i| whatever_you|call what|about what|can_sh what|differenc what|exactly_$
what|for_is what|hav_w what|oclock_do what|order what|reason what|would_th what|you_reckon
when_Nduration|hav when_am_i| when_can| when_folk|say when_it_com| when_it_say| when_it|hit
when_you_think| when|do_th when|i_am wher_w_left| wher_would| wher|did_i wher|do_th wher|is_th
wher|it_say which_guest| which_i| which_way_do| which|direction which|i_hav whil_P| whil_w|wait
whil_you_wer| whil|it_rest whil|th_oven whip_it_out| who_ar| who_do_not| who_is_for| who_is|ther
who_left_th| whol_joint| whol|THING_THING who|can who|left why_did| why_do|w why_salt| wifi|
wiggl| will_b_in| will_b_want| will_b|THING will_b|go will_b|hav will_handl_th| will_handl|th
will_hav|th will_it|b will_it|go will_i|b will_n_to| will_never| will_not_touch| will_se_you|
will_th_THING| will_you|say will|giv_th will|hav_their will|look_after will|n_to will|not_stop
will|not_touch will|pass_on will|se_you will|sear will|stop will|y win_i| wireless|THING wireless|THING_is
with_P| with_THING_and| with_all|th with_it|DISH with_know| with_pink| with_pink|THING with_th|whol
with_whil| without|DISH_$ with|DISH_i with|N:few_rib with|Nduration_of with|THING_and with|a_drink
with|all_this with|c with|th_DISH with|th_quick wonder_how_much| wonder|how work_for| work_on|th
work_so| work|again work|on_it would_DISH| would_THING|THING would_lik_DISH| would_lik_th|
would_not| would_not|mind would_th_grey| would_th|grey would_you_th| would_you|ever would_you|mind
would_you|say would|P would|THING would|b would|it would|you_look wrangl_th| wrangl_th|THING
wrangl| wrist|on wrist|on_th writ_it|down wrong|number_$ w|ar_lat w|at_with w|jump_past w|los
w|n w|nearly w|nearly_ther w|open w|will_n yell| yes_i_am| yes_yes_i| yes|i yes|it yes|it_is
yet_DISH| yet_i_hav| yet_i|am you_U| you_ar_th| you_ar|not you_ask|m you_can_manag| you_help|
you_h| you_learn_about| you_never| you_put|DISH you_seen|my you_tell| you_that| you_think|it
you_th|DISH you_want_m| you_want|m you_watch|th your_P|and your_man| your_own| your|feet your|finger
you|ar_go you|ar_not you|check you|could_yell you|do_th you|even you|figur you|hav_got you|hear
you|learn you|pass you|reckon_$ you|wak you|wak_m you|what_$ you|what_P yusuf|mak yusuf|mak_a
|@113.0 |@119.2 |@124.4 |@13.9 |@132.2 |@139.2 |@139.6 |@141 |@143 |@144.7 |@149.2 |@2.4 |@31.1
|@41 |@42.5 |@44.4 |@5.3 |@54.3 |@62.2 |@63.1 |@64.0 |@68.4 |@71.4 |@79 |@79.2 |@83.2 |DISH_DISH_$
|DISH_add_DISH |DISH_all_over |DISH_am |DISH_at_N:few |DISH_bless |DISH_crunchy |DISH_each
|DISH_everyth |DISH_giv_m |DISH_go_at |DISH_hav_to |DISH_i_mean |DISH_i_will |DISH_in_a |DISH_n_to
|DISH_ok |DISH_th_bon |DISH_that_bit |DISH_timer |DISH_timer_$ |DISH_tonight_$ |DISH_took |DISH_want
|DISH_water |DISH_with |N:core_Nduration |N:core_about_Nduration |N:core_how_long |N:core_i_misread
|N:core_instead |N:core_medium |N:core_stop |N:core_what |N:core_whil_w |N:core_with |N:core_without_tell
|N:few_P_under |N:few_all |N:few_away |N:few_boner |N:few_heat |N:few_i_am |N:few_littl |N:few_mat_unannounc
|N:few_mor_than |N:few_nam |N:few_plat |N:few_rib_on |N:few_sinc |N:few_sinc_it |N:few_ston
|N:few_th_U |N:few_they |N:few_to_f |N:few_would |N:oven_N:few_$ |N:oven_already_$ |N:oven_by
|N:oven_instead |N:oven_on_accident |N:oven_sinc |N:some_and_th |N:some_it_is |N:some_so |N:some_what
|Nclock_after_th |Nclock_and_w |Nclock_it_was |Nclock_last |Nclock_latest |Nclock_or |Nclock_then_$
|Nclock_w_eat |Nclock_w_want |Ndate_Nclock_and |Ndate_w_ar |Ndegrees:core_insid_i |Ndegrees:core_let
|Ndegrees:core_let_m |Ndegrees:core_you |Ndegrees:few_so |Nduration_about |Nduration_about_th
|Nduration_ago_ther |Nduration_befor_th |Nduration_behind_so |Nduration_bell |Nduration_mor_early
|Nduration_of_delay |Nduration_ok |Nduration_on_DISH |Nduration_that_is |Nduration_timer_anymor
|Nduration_to_get |Nduration_why |Nweight_no |P_eat_by |P_help |P_is_allergic |P_is_help |P_is_vegetarian
|P_nor |P_nor_money |P_open |P_set |P_took_th |P_us_to |P_was |P_who |P_will_not |THING_N:core_at
|THING_THING_her |THING_THING_would |THING_along |THING_and_DISH |THING_and_N:few |THING_and_no
|THING_and_what |THING_at_all |THING_befor |THING_counter |THING_do_i |THING_fan |THING_for_a
|THING_giv |THING_in_already |THING_insid |THING_into |THING_into_th |THING_is_P |THING_is_leak
|THING_is_ly |THING_later |THING_must |THING_must_b |THING_no_$ |THING_no_problem |THING_so_$
|THING_stand |THING_th |THING_th_$ |THING_th_tim |THING_then |THING_tim |THING_tonight_$ |THING_was_touch
|THING_will_th |THING_with_a |U_P |U_insid |U_is_N:few |U_of |U_of_th |U_still |U_stov |U_with_th
|a_DISH_DISH |a_N:few_rib |a_THING_on |a_bell_at |a_brick |a_call |a_clu |a_drink |a_drop_of
|a_fan |a_few_DISH |a_full |a_half |a_hot |a_long |a_mo |a_pair |a_party |a_plan |a_r |a_rest_$
|a_roast_$ |a_shout |a_spell |a_spell_$ |a_stand |a_timer_for |a_vegan |a_we_bit |about_my_oven
|about_th_oven |about_th_roll |about_with |adult_and |afternoon_f |afternoon_f_that |again_what
|ago_$ |ago_$_$ |ago_N:core |ago_it |ago_th |ahead_or |ahead_or_behind |aim_for_$ |all_N:few_of
|all_THING_U |all_at |all_got |all_in |all_mad |all_seat |all_th_sam |all_timer |alon_for_Nduration
|alongsid_$ |alongsid_$_$ |am_U |am_ask |am_lat |am_out_till |am_sorry |am_walk |an |an_DISH
|an_alarm_for |an_extra_N:few |and_a_U |and_flam_behind |and_go |and_hungry_all |and_net_$
|and_ounc_for |and_th_dog |and_tuck |and_wrap |and_yell_at |another_way |any_DISH_$ |any_other_way
|any_sav |anybody |anyth_pink |anyth_yet |anywher_in |ar_THING_so |ar_away_$ |ar_back_on |ar_boil_away
|ar_com_$ |ar_feral |ar_french |ar_in |ar_jain |ar_kill_m |ar_not |ar_scrub |ar_smok |ar_smok_badly
|ar_stream |ar_stuck_on |ar_swell |army |arriv_and |arriv_in |arriv_th |arriv_to |as_N:few
|as_of_Nduration |as_old |as_that |ask_about |ask_you |at_N:core_Ndate |at_N:core_how |at_N:few_dinner
|at_N:few_i |at_N:few_tonight |at_N:oven_fan |at_N:oven_feet |at_Nclock_N:core |at_Nclock_N:some
|at_Nclock_U |at_Nclock_w |at_at_N:few |at_half_past |at_now |at_som_point |at_th_firehous
|at_with |availabl |away_from_th |b_N:few |b_THING |b_at_th |b_rest |b_so |b_ther |b_too |b_when
|back_Nduration_$ |back_Nduration_th |back_after_Nduration |back_i_saw |back_is |back_on_th
|bad_N:few |bag_$ |bag_$_$ |bairn |beast_$ |beast_$_$ |been_U |been_in |been_off_sinc |beep_so
|beep_so_it |beer |beet |behind_Nduration |behind_on |behind_th_THING |behind_th_cow |bit |bit_dark
|blitz |blood |bloody_$ |bloody_$_$ |body |boil_and |boil_now |bon_it |bon_not |bon_sid |boot_$
|boot_$_$ |both_$ |both_$_$ |bother_with |bought_$ |bought_$_$ |bought_a_topsid |brush |bung_th_roast
|burn_U |burn_i |burn_in |burn_in_th |bus_$ |bus_$_$ |butter_THING |butter_all |buy_a |buy_anyth
|buy_for |by_N:core |by_Nduration_th |by_hour |by_mistak |by_now |by_step_$ |calibrat_a |calibrat_a_THING
|call_about |call_th |can_i_b |can_i_even |can_not_stand |can_stir |can_you_spar |cancell_$
|cancell_$_$ |carv_with |carvery |celsius_and_kilo |celsius_not |cent |chew_on |chewy |chill_it
|chimney |choy |clean_forgot_to |click_and |clos_th |coat_$ |coat_$_$ |colour_on |com_P |com_for
|com_it |com_out_th |com_to_th |com_up_to |conventional_heat_N:oven |cook_no_r |cooker_is_Ndegrees:some
|could_w_hav |could_yell |could_yell_at |count_m_Nduration |cours_for |cover_and |cover_it_with
|crisp_th |crispy |cut_m |dairy_$ |dairy_$_$ |dash_$ |dash_$_$ |day_and |death |detector_scream
|did_N:few |did_her |did_not_U |did_not_say |dinner_forward |dinner_happen |dinner_i |dinner_roll_homemad
|dinner_they_hav |direction |do_DISH_DISH |do_everyth |do_h |do_i_pull |do_instead |do_it_do
|do_next_P |do_not_hav |do_not_w |do_not_want |do_now_$ |do_you_do |doctor_say |dog_i_will
|don_and_in |don_th_DISH |door_was_ajar |door_with |down_N:some |down_Nclock_$ |down_lik |down_now
|drap |dress_$ |dress_$_$ |driv_th |drop_Ndegrees:few_after |dust_$ |dust_$_$ |early_can_w
|eat_P |eat_by |eat_it_pink |eat_lat |eat_my |eat_what |eat_with_us |edg_to |edg_to_edg |els_is
|end_$ |end_$_$ |even_N:few |every_Nduration_$ |f_at_Nclock |faff_about |fahrenheit_and_pound
|feel_lik |fewer_los |fewer_los_th |field |finish_at_N:core |finish_they |fir_alarm |fir_and
|fir_to |fir_what_do |first_$ |first_$_$ |for_N:oven_$ |for_a_THING |for_all_of |for_everyth_$
|for_green |for_green_DISH |for_is_th |for_it_is |for_it_or |for_m_i |for_r_win |for_th_crumbl
|for_th_finish |fork_$ |fork_$_$ |fre_THING |fresh_DISH_$ |fresh_on |fridg_is_bust |fridg_it
|from_N:oven_$ |from_THING_$ |from_her_$ |from_noth |from_noth_$ |from_rugby |from_station
|from_station_Nduration |from_th_begin |from_th_shop |funeral |gang_is |gas_$ |gas_$_$ |gas_has_been
|german |get_$ |get_$_$ |get_away |get_for |get_her_$ |get_hot |glass_of |go_N:core |go_alongsid
|go_at_N:oven |go_for_bath |go_ok_or |go_over_N:core |go_to |go_to_mak |go_to_plan |go_to_tak
|go_up_to |gon_down |gon_to_th |gon_up |good_THING_$ |got_a_cold |got_a_vegan |got_befor |got_her_$
|got_no |got_on |grat |green_on_th |guest_ar_com |guest_they_com |hack_into |had_a_second |had_in
|had_to_THING |haircut |half_now |halfway_or |halfway_or_DISH |halv_$ |halv_$_$ |hang_in |hang_in_th
|has_Ndegrees:core |has_been_Nduration |has_caught_fir |has_com_$ |has_gon_walkabout |has_it_with
|has_left_th |has_run |has_run_out |has_touch |hav_Ndegrees:core |hav_U_$ |hav_a_THING |hav_any
|hav_begun |hav_complet |hav_flu |hav_had_th |hav_her |hav_lost |hav_no_THING |hav_not_a |hav_roast
|hav_said |hav_tim |hav_to_collect |hav_to_do |heat_from |heat_in |help_and |help_from_Nclock
|help_m_in |help_till_N:few |her_eat |her_eat_pink |her_go |her_how |her_in_th |her_lot |her_no
|high_th |higher |him_a |him_and |him_at_th |him_out |hit_N:core_whil |hold_on_THING |hom_and
|hot_DISH |hot_it |hot_it_is |hous_a |how_long_$ |how_to_truss |hungry |i_am_count |i_begin
|i_believ |i_believ_$ |i_destroy |i_did_$ |i_forgot_it |i_freez_what |i_get_th |i_hav_burn
|i_know_when |i_last_look |i_lift |i_lift_it |i_mean_not |i_n_$ |i_nap |i_reckon_$ |i_speak
|i_stick_th |i_still_n |i_ti |i_to |i_touch_th |i_wait |i_will_not |i_will_se |ic_$ |ic_$_$
|ic_water |idea_of |if |if_P |if_it_go |if_you_n |in_N:few_go |in_Nduration_th |in_and_i |in_any
|in_between |in_charg_of |in_cold |in_lat |in_law_is |in_law_will |in_sinc |in_th_DISH |in_th_belly
|in_th_bin |in_th_hot |in_th_kettl |in_th_pantry |in_th_supermarket |in_th_top |in_ther_now
|in_yet_th |insist_on |instead_of_butter |into_th_DISH |is_N:core_near |is_N:core_so |is_N:few_THING
|is_N:few_and |is_N:few_of |is_N:some_and |is_Ndate_$ |is_Ndegrees:core_and |is_Nduration_lat
|is_Nweight_in |is_P_$ |is_aff |is_all_w |is_asleep_$ |is_back_in |is_back_on |is_blister |is_blu
|is_bring_N:few |is_bubbl_away |is_burn_$ |is_cancell_so |is_carv_it |is_chair |is_chok_THING
|is_chok_on |is_coeliac_so |is_cool |is_correct |is_correct_$ |is_cry |is_cry_$ |is_dead_$
|is_finish |is_flash |is_go_again |is_go_off |is_grey_all |is_happen |is_help_$ |is_how_w |is_in_$
|is_insid_$ |is_it_out |is_knock_off |is_load_with |is_loud |is_miss |is_moan |is_need_$ |is_no_longer
|is_not_N:core |is_not_cook |is_not_up |is_not_yet |is_noth |is_off_$ |is_off_now |is_on_tim
|is_out_$ |is_over_$ |is_overcook |is_pack_in |is_preheat |is_read_N:few |is_ready_it |is_run_$
|is_salt |is_show_$ |is_show_N:core |is_simmer |is_sit_at |is_snap |is_ston_dead |is_tail_$
|is_th_best |is_th_fan |is_th_third |is_th_trick |is_th_way |is_too_much |is_too_short |is_touch
|is_vegan_now |is_what_it |is_whisk |is_whisk_and |is_wilt_$ |is_work |is_work_again |is_yet
|it_N:core_$ |it_Nclock_$ |it_P_$ |it_all_over |it_back_N:some |it_back_Nduration |it_claim
|it_dangerous |it_doon |it_doon_ta |it_down_$ |it_h_is |it_halfway |it_has_touch |it_in_too
|it_is_blister |it_is_jump |it_is_my |it_is_shap |it_is_thin |it_matter |it_matter_$ |it_now_$
|it_ok |it_open_and |it_otherwis |it_out_for |it_out_it |it_out_of |it_out_th |it_past |it_rar_$
|it_ready |it_right_now |it_set |it_should_b |it_sit_ther |it_slic |it_to_N:oven |it_to_rest
|it_twic |it_w_ar |it_will_go |it_with_THING |it_with_a |it_yet_$ |jim_do |jim_do_not |job
|job_in |jok |jud_can |jud_can_help |k |kill_for |kill_for_a |kill_my |kill_my_P |knock_N:few
|knock_N:few_off |knock_it_to |knock_th_whol |know_$ |know_$_$ |know_it |lad_is_brought |land_$
|land_$_$ |last_entry |last_night_i |lat_do |lat_for |lat_how |law |left_and |left_to_do |leftover_keep
|li |li_ther |lift_it_out |lift_out_and |light_th |lik_it_medium |lino |lip_ar |lip_ar_swell
|list_and |list_i |liv_$ |liv_$_$ |liv_at |lodger |long_enough_to |look_N:core_$ |look_after
|look_after_th |look_at_m |lost_$ |lost_$_$ |lost_Nduration_$ |m_an_alarm |m_at_Ndegrees:core
|m_by |m_in_N:some |m_sh |m_through_it |m_through_what |m_when_th |m_when_you |magazin |magic_number
|mak_yusuf |mak_yusuf_is |manag |mean_by |medium_and |medium_instead |mercy |metric_so |metric_so_do
|middl_b |miss_$ |miss_$_$ |miss_in |miss_in_th |mor_Nclock |mor_guest |mor_talk |morn_so |mouth_to
|mouth_to_f |must_eat |my_P_from |my_THING_burn |my_elbow |my_ex |my_finger_$ |my_god_ther
|my_half |my_leg |my_mind_$ |my_option |my_sous |my_sous_THING |my_thumb |my_thumb_$ |my_work_$
|myself_$ |myself_$_$ |n_N:some |n_feed_at |n_to_buy |nam_off |nam_off_th |near_to |next_P
|nobody_is_eat |not_N:few_in |not_b |not_get |not_go_near |not_got_to |not_hang |not_hav |not_her
|not_i_open |not_light |not_mak |not_mak_it |not_n |not_open_th |not_put |not_rest_it |not_ris
|not_shut |not_stop_bleed |not_thicken |not_touch_THING |not_trust |noth_lik |noth_with |now
|now_P_is |now_ready |now_ready_for |now_that |number_on |oclock_do |of_DISH |of_DISH_now |of_N:few_$
|of_THING_THING |of_THING_is |of_a_THING |of_butter_$ |of_fahrenheit |of_gas |of_ic |of_it_is
|of_them_in |of_them_so |of_us_at |off_at_th |ohio |ok_for_P |on_N:oven_and |on_N:oven_for
|on_Nduration_$ |on_THING_is |on_at_last |on_earth |on_her_$ |on_th_N:some |on_th_Ndegrees:oven
|on_th_THING |on_th_sofa |on_their |on_what_is |on_will |on_yet_$ |onc_i |option_again |option_again_$
|or_against_$ |or_down |other_oven |oughta |out_another |out_as |out_b_back |out_my |out_on_m
|out_th_butter |out_th_truss |out_till |out_to_th |out_w |out_what_do |out_whil |outta_ther
|oven_U |oven_and_it |oven_as |oven_by |oven_glov_$ |oven_is_Ndegrees:some |oven_is_fan |oven_run_Ndegrees:some
|oven_show |oven_too |oven_w |over_N:core_$ |over_in_th |over_it_is |over_on |over_th_THING
|over_th_U |over_what_it |over_with |overcook_$ |overcook_$_$ |overcook_it |own_a |own_a_THING
|pack_up_and |packet |pair_of_THING |pan |pan_and |park_$ |park_$_$ |party_$ |party_$_$ |pass_N:core
|past_Nduration |peanut_allergy |peel_a |peopl_cancell |peopl_in_total |phon_$ |phon_$_$ |phon_to
|pink_at_all |pink_ok |plac_$ |plac_$_$ |plan_is |plan_of |plus_N:few_has |point_of |politic
|pound_do |power_failur |prefer_to |preheat_and |present_$ |present_$_$ |present_and |present_and_correct
|pretty_$ |pretty_$_$ |proper_DISH |put_THING |put_her |put_oven_on |quit |quit_a |quit_a_bit
|r_DISH_with |r_N:core |r_work |rang_$ |rang_$_$ |reaction |read_$ |read_$_$ |read_N:few |ready_by
|ready_in_tim |reminder_$ |reminder_$_$ |rest_it_for |rib_it |rib_on |rib_roast_Nweight |right_go
|right_now_at |right_yes |roadwork |roast_DISH_on |roast_is_still |roast_this |roast_this_year
|roll_ar_not |roll_timer |room_with |rop_in_th |rub_$ |rub_$_$ |rubbish_i |run_N:some_cold
|run_cold_by |sad |said_N:few |said_that |said_they |said_what |salt_it_twic |salt_no |salt_on
|salt_on_th |salt_them |salt_them_DISH |salty_$ |salty_$_$ |sam_as_befor |sank |sat_down_at
|sat_on |sat_ther |say_N:oven |say_they_ar |say_you |scorch |scrap_thos |scrap_thos_bon |scrub_and
|sear_at_all |sear_keep |sear_keep_it |seat_$ |seat_$_$ |seat_i |sell |set_at |sh_had |sh_swell
|sh_swell_up |shatter |shelter |shot |should_know |show_$ |show_$_$ |show_Ndegrees:core |show_Ndegrees:few
|shower_Nduration |sid_down |sinc_N:oven |sinc_w |sirloin_joint |sit_at_th |sit_out_$ |slid_by
|slid_by_Nduration |slip_and |slow_and |slump_over |small_on_$ |smell_it |smidg |so_let_us
|so_much_as |so_ther_is |sold_out |som_roast |som_roast_DISH |som_roll |sooner_$ |sooner_$_$
|sorry_N:core |sorry_and |speaker |spin_$ |spin_$_$ |stand_$ |stand_$_$ |steady_temperatur
|steam_$ |steam_$_$ |step_i |stick_$ |stick_$_$ |still_N:few_rib |still_n_from |still_n_to
|still_rock |still_rock_THING |still_soup |still_to_com |street_$ |street_$_$ |stretch_to |strong_heat
|stuck_in |stuff_is |stuff_with |supermarket |support |sur_you |surpris_visitor |switch_itself
|switch_itself_off |system_is |tak_THING_$ |tak_it_medium |tak_over_th |tak_th_DISH |tak_th_bin
|tak_this |talk_for |talk_in |taught_m |television |tell_N:core |tell_P |tell_m_and |tell_th_THING
|temperatur_Ndegrees:core |temperatur_i_hav |th_DISH_U |th_DISH_anymor |th_DISH_go |th_DISH_must
|th_DISH_roll |th_DISH_up |th_P_up |th_P_us |th_THING_$ |th_THING_all |th_THING_back |th_THING_counter
|th_THING_first |th_THING_giv |th_THING_now |th_and_it |th_bag_$ |th_block_Nduration |th_bon_from
|th_bottl_o |th_butter_so |th_cast_iron |th_celsius |th_clock_so |th_count_down |th_curtain_$
|th_day_$ |th_dial_to |th_dishwasher_$ |th_dog_i |th_driveway |th_fridg_at |th_front_$ |th_gat
|th_go_$ |th_hall_all |th_handl |th_hen_Nduration |th_hous_for |th_i_should |th_last_Nduration
|th_leftover_$ |th_lid_on |th_market |th_match_$ |th_middl_and |th_next_th |th_number_of |th_order_of
|th_oven_floor |th_oven_meant |th_pac_her |th_party |th_peel_$ |th_platter_$ |th_plot |th_plow
|th_press_$ |th_pull |th_reminder |th_remot |th_roast_and |th_roll_in |th_roll_start |th_salt_on
|th_schedul |th_sear |th_shop_for |th_sid_too |th_slic_$ |th_smell |th_soup_$ |th_stair_$ |th_supermarket
|th_tabl_and |th_tabl_at |th_tabl_for |th_target |th_timer_$ |th_timer_which |th_top_off |th_ty_$
|th_under |th_vent |th_water_$ |th_way_$ |th_way_no |th_whol_day |th_wood |th_word |that_again_$
|that_again_i |that_bit_out |that_faff |that_faff_about |that_finish |that_for |that_long_$
|that_number_again |that_phon |that_timer_on |that_work_$ |that_would_you |that_yet |their_at_Nclock
|their_chair |their_coat_in |their_mind |them_Nduration_ago |them_out |them_w |them_what |then_blast
|then_blast_it |ther_any |ther_anyth |ther_long |ther_someth |ther_th |ther_th_THING |ther_yet_Nduration
|they_com_$ |think |think_no |think_so |this_THING_it |this_can |this_crowd |this_minut_how
|this_th |this_up_$ |this_whol_tim |through_$ |through_$_$ |thrown |ti_back |ti_this |till_i_say
|till_serv_buy |till_th_P |tim_it_is |tim_ther |tim_ther_is |tim_w |tim_what_you |tim_would_b
|timer_they_ar |to_N:core_$ |to_N:core_and |to_N:oven_on |to_N:oven_when |to_a_crisp |to_b
|to_b_$ |to_chill |to_chill_th |to_f_N:few |to_go_$ |to_god_$ |to_her_$ |to_let |to_mak_th
|to_mass_back |to_th_metric |to_th_next |to_turn |to_work_$ |to_you_$ |today_N:few |today_everyth
|today_everyth_tak |together_and |told_them |told_wrong |tongu |too_low_$ |too_my |track_for
|transplant |tri |tri_it |tri_it_in |trim_and |trip |trip_$ |trip_$_$ |turn_on_th |ty_it_is
|typ_N:core |uncover |under_N:some |underway_$ |underway_$_$ |up_after |up_and_down |up_and_it
|up_by |up_do |up_front |up_in_th |up_lovely |up_so |up_th_DISH |up_when_it |upsid |upsid_down
|upstair_to_chang |us_DISH |us_Nduration |us_after |us_after_all |us_i |us_of |us_of_th |us_what
|volum |w_at |w_eat_it |w_go_to |w_look |w_open |w_put |w_sit_$ |w_win |walk_in_and |wander_off
|want_N:core |want_another |want_eat |want_for_th |want_medium_rar |want_th |warm_for |warm_up
|was_$ |was_$_$ |was_Nclock |was_befor |was_gorgeous |was_my |was_on_what |was_that_$ |wash_th_THING
|water_it |water_test |way_THING |way_and |way_that |way_through |weight_in_pound |well_sh
|well_sh_will |went_in_th |wer |wer_th |what_exactly_$ |when_N:core_$ |when_Nduration |when_th_centr
|wher_w_left |whol_day |will_b_an |will_do_it |will_forget |will_giv |will_handl |will_i_b
|will_look_after |will_never |will_put |will_sit |will_tell |wilt |win_in_th |wink_Nduration_$
|with_everyth_$ |with_m_a |with_someth |with_th_kiddy |work_for |work_on_this |world |worri
|would_it_b |wrist |yell_DISH |yell_DISH_$ |yes_w_should |yesterday_$ |yesterday_$_$ |yet_they
|you_$ |you_$_$ |you_believ_it |you_don |you_ever |you_hold |you_imagin |you_look_at |you_say
|you_seen |you_want_th |zon_$ |zon_$_$
-12 @103.0| @113.2| @122.4| @126.0| @127.2| @132.4| @140.4| @27.9| @3.7| @32.4| @38.1| @6.1|
@74.4| @75.5| @81| @86.1| DISH_DISH_nobody| DISH_DISH_not| DISH_DISH_w| DISH_DISH|off DISH_N:core|
DISH_Nduration|timer DISH_P|is DISH_THING|is DISH_THING|say DISH_and_th| DISH_and|how DISH_ar|all
DISH_ar|nic DISH_ar|ready DISH_ar|ston DISH_at|th DISH_butter|on DISH_can|go DISH_cook| DISH_cream_DISH|
DISH_giv_m| DISH_go_at| DISH_grow| DISH_has|been DISH_hav_been| DISH_hav|not DISH_h| DISH_i_will|
DISH_in_th| DISH_is_it| DISH_is_lik| DISH_is_whisk| DISH_is|bubbl DISH_is|nowher DISH_is|out
DISH_is|still DISH_is|that DISH_let| DISH_miracl| DISH_miracl|happen DISH_must| DISH_my|P DISH_now|
DISH_no|off DISH_roll_ar| DISH_should| DISH_ther_is| DISH_this|very DISH_th|bon DISH_too_my|
DISH_w_hav| DISH_went| DISH_w|hav DISH_yes|w DISH|P_it DISH|a_miss DISH|and_th DISH|ar_cremat
DISH|ar_don DISH|ar_ston DISH|as_well DISH|bas DISH|cook_so DISH|cream_on DISH|cream_whisk
DISH|crisp DISH|from_Nclock DISH|from_m DISH|has DISH|i_took DISH|is_cut DISH|is_nowher DISH|is_rest
DISH|is_run DISH|is_simmer DISH|is_split DISH|knock DISH|not_m DISH|on_$ DISH|still_U DISH|th_DISH
DISH|th_oven DISH|to_com DISH|us DISH|want_a N:core_and_i| N:core_and|w N:core_as| N:core_call|
N:core_could| N:core_do_not| N:core_from| N:core_from|th N:core_go| N:core_how| N:core_in_th|
N:core_in|phoenix N:core_it|is N:core_let_m| N:core_near| N:core_so|N:core N:core_th|THING
N:core_too|high N:core_too|low N:core_would| N:core_you|tell N:core|accord N:core|accord_to
N:core|and_i N:core|as_w N:core|bottl N:core|bottl_of N:core|by_Nclock N:core|dead N:core|it_reckon
N:core|say_so N:core|too_high N:core|when N:few_P|is N:few_THING|of N:few_at|tabl N:few_bon_and|
N:few_bon_not| N:few_calibrat| N:few_calibrat|a N:few_com| N:few_could| N:few_guest_th| N:few_guest|less
N:few_hungry|peopl N:few_in_this| N:few_i|hav N:few_mat|unannounc N:few_mor|person N:few_nobody|
N:few_not| N:few_on_th| N:few_peopl|ar N:few_person|will N:few_sinc_it| N:few_then|h N:few_through|
N:few_through|th N:few_to_flip| N:few_to|f N:few_to|giv N:few_which| N:few_with|th N:few|any
N:few|any_mor N:few|bon_$ N:few|bon_off N:few|bon_rib N:few|extra_plat N:few|mil N:few|mor_$
N:few|mor_th N:few|of N:few|of_our N:few|peopl_$ N:few|peopl_THING N:few|peopl_at N:few|peopl_how
N:few|peopl_not N:few|so_far N:few|temperatur N:few|till_N:few N:few|to_go N:few|w_will N:few|want
N:few|wrong_THING N:oven_Nduration|ago N:oven_that_is| N:oven|and_it N:oven|instead_of N:oven|lik_you
N:oven|or N:oven|to_N:oven N:oven|to_hurry N:some_hot|so N:some_i_hop| N:some_off_th| N:some_of|us
N:some_so_it| N:some|U N:some|about N:some|cold N:some|hot_alway N:some|peopl_$ Nclock_and_my|
Nclock_and|it Nclock_at|N:oven Nclock_is_what| Nclock_let|us Nclock_oven| Nclock_tell| Nclock_tell|m
Nclock_that| Nclock_w| Nclock|instead_$ Nclock|it_stood Nclock|w_will Nclock|would Ndate_at|N:core
Ndate_at|N:few Ndate_w_ar| Ndate|lunch Ndate|night_at Ndegrees:core_it|is Ndegrees:core_on|this
Ndegrees:core|it Ndegrees:few_so| Ndegrees:some_hot_and| Ndegrees:some|shy Ndegrees:some|shy_of
Nduration_DISH|is Nduration_N:few|any Nduration_ago_DISH| Nduration_ago_how| Nduration_ago_not|
Nduration_and_DISH| Nduration_and_is| Nduration_and_it| Nduration_and_then| Nduration_and_what|
Nduration_and|what Nduration_back_th| Nduration_befor_th| Nduration_behind_so| Nduration_behind_th|
Nduration_hav|gon Nduration_how| Nduration_in_th| Nduration_is|delay Nduration_later|preacher
Nduration_my_P| Nduration_not|N:few Nduration_of|delay Nduration_on_th| Nduration_sh| Nduration_so_now|
Nduration_sooner_and| Nduration_sooner|P Nduration_start|now Nduration_they| Nduration_what_can|
Nduration_when| Nduration_whil_i| Nduration|about Nduration|about_th Nduration|ago_th Nduration|back_th
Nduration|behind_sorry Nduration|break Nduration|break_i Nduration|countdown Nduration|earlier_than
Nduration|early_$ Nduration|if Nduration|instead Nduration|instead_of Nduration|is_up Nduration|lat_i
Nduration|lat_they Nduration|later_would Nduration|on_dinner Nduration|so_now Nduration|sooner_$
Nduration|to_go Nduration|warn Ngas-mark_as| Nweight_and_th| Nweight_forerib_N:few| Nweight_how|
Nweight_it|is Nweight_rib_roast| Nweight_topsid|for Nweight|N:few_$ Nweight|enough P_brought_a|
P_drank| P_got_her| P_has|com P_how| P_is_eat| P_is_in| P_is_still| P_is_tak| P_is|pur P_i|am
P_left_th| P_lik_it| P_never| P_non| P_no|shellfish P_n|feed P_n|to P_put_th| P_put|th P_sit|
P_took|th P_us_up| P_want_his| P_want|dinner P_what|is P_will|not P|U_swell P|alway_did P|ar_eat
P|b_back P|chang P|chang_th P|com_with P|from_th P|has_been P|has_got P|is_asleep P|is_at P|is_chok
P|is_get P|is_in P|is_taken P|left_th P|rang_h P|ray P|want_dinner P|who P|will_b P|will_eat
THING_N:core|already THING_N:core|by THING_THING_caught| THING_THING_is| THING_THING|caught
THING_after|all THING_and_put| THING_and_what| THING_and_w| THING_and|DISH THING_and|w THING_cam|
THING_cam|out THING_can_w| THING_can|w THING_do_metric| THING_do|in THING_enamel|THING THING_get|
THING_hang_in| THING_has_becom| THING_has_left| THING_in|ic THING_in|th THING_is_com| THING_is_load|
THING_is_stuck| THING_is|don THING_is|ly THING_is|out THING_it_tak| THING_it| THING_it|is THING_last|
THING_not|ready THING_of_roast| THING_on_th| THING_on|my THING_pan_with| THING_pan|with THING_piec|
THING_piec|w THING_say|N:core THING_seem| THING_seem|broken THING_should| THING_stand| THING_th_tim|
THING_that|is THING_th|bend THING_th|block THING_to_th| THING|N:core_i THING|and_a THING|and_all
THING|ar_cover THING|as_nail THING|back_Nduration THING|do_celsius THING|eater_$ THING|fell
THING|has_been THING|hat THING|is_N:some THING|is_broken THING|is_full THING|is_giv THING|is_lik
THING|is_out THING|later THING|no_mor THING|out_by THING|pan_THING THING|salt_work THING|say_in
THING|smok THING|solo THING|solo_now THING|tent THING|till_N:few THING|underneath THING|with_bar
THING|with_her U_U_is| U_and_th| U_and|i U_a|DISH U_cancell| U_for_th| U_for|th U_is_U| U_is_at|
U_is_ther| U_is|hav U_is|it U_i|do U_keep| U_mak_DISH| U_my|P U_of|th U_out|of U_start| U_th_P|
U_th_oven| U_that|was U_timer_N:few| U_what|i U_when| U_who| U_w|do U|a_DISH U|has_gon U|is_knock
U|is_lot U|it_up U|th U|th_$ U|w U|w_ar ^_DISH_n| ^_DISH_will| ^_N:core_at| ^_N:few_DISH| ^_N:oven|for
^_Nclock_i| ^_Nclock|i ^_Ndegrees:few_too| ^_Ndegrees:few|too ^_Nduration_i| ^_Nduration_th|
^_Nduration|sooner ^_Nweight_THING| ^_P_ar| ^_P_want| ^_P_will| ^_P|com ^_P|ray ^_THING_gav|
^_THING_it| ^_THING_of| ^_THING|fell ^_THING|for ^_THING|i ^_THING|up ^_U|U ^_U|collaps ^_U|is
^_U|keep ^_U|ther ^_^_about| ^_^_as| ^_^_been| ^_^_brought| ^_^_bung| ^_^_buzz| ^_^_call| ^_^_can|
^_^_carry| ^_^_diall| ^_^_dress| ^_^_flip| ^_^_gain| ^_^_gary| ^_^_gav| ^_^_great| ^_^_ill|
^_^_in| ^_^_job| ^_^_kumara| ^_^_lagg| ^_^_lift| ^_^_lower| ^_^_minut| ^_^_park| ^_^_plus|
^_^_roughly| ^_^_sesam| ^_^_shellfish| ^_^_sinc| ^_^_speak| ^_^_strik| ^_^_tak| ^_^_thes| ^_^_twin|
^_^_us| ^_^_warehous| ^_^_was| ^_^_water| ^_^_weigh| ^_^_what| ^_^_whoever| ^_^_wip| ^_^_would|
^_a_bit| ^_about| ^_add_a| ^_alert_m| ^_alert|at ^_already_got| ^_and_that| ^_any_way| ^_as_soon|
^_as| ^_been| ^_bottom_oven| ^_brought| ^_bum_on| ^_bung| ^_burn_th| ^_butter_is| ^_buzz_m|
^_buzz| ^_call| ^_cancel_all| ^_can| ^_carry| ^_com|again ^_could|P ^_could|i ^_delay_dinner|
^_diall| ^_dial|N:oven ^_did_that| ^_ditch|th ^_down|to ^_do|you ^_dress_th| ^_dress| ^_dress|th
^_electricity_has| ^_eta_on| ^_eta|on ^_everyth_under| ^_finish_th| ^_finish|truss ^_flick_th|
^_flip_th| ^_flip| ^_for_what| ^_forget_th| ^_forget_what| ^_gain| ^_gary| ^_gav| ^_go_with|
^_got_m| ^_got_that| ^_greas|fir ^_great| ^_guest_lat| ^_half|th ^_hav_i| ^_hav_to| ^_hav|not
^_heat|th ^_hold_at| ^_hold|up ^_how_i| ^_how|would ^_i_alway| ^_i_do| ^_i_fancy| ^_i_forgot|
^_i_left| ^_i_pull| ^_i_slip| ^_i_us| ^_ill| ^_in_my| ^_in| ^_in|Nduration ^_in|our ^_in|th
^_is_this| ^_is|a ^_is|everyth ^_is|th ^_it_cam| ^_it_show| ^_it|show ^_i|keep ^_i|lik ^_i|overcook
^_i|shut ^_job| ^_keep|watch ^_kindly|tell ^_kumara| ^_lagg| ^_left_th| ^_lift_th| ^_lift|
^_light_went| ^_lower| ^_mind_th| ^_minut| ^_min|is ^_my_grandson| ^_my|flatmat ^_my|phon ^_no_fresh|
^_not|finish ^_now|it ^_now|then ^_ok_DISH| ^_ok_i| ^_ok|look ^_outsid|is ^_oven|now ^_oven|set
^_ow_i| ^_park| ^_pencil_in| ^_plus| ^_power_is| ^_preheat_is| ^_priya|can ^_priya|will ^_push_dinner|
^_push|dinner ^_put_DISH| ^_put_a| ^_put_th| ^_put_your| ^_quick_on| ^_quick|on ^_reckon_it|
^_remember|when ^_roast_is| ^_roughly| ^_run_Nduration| ^_sam_is| ^_scald|my ^_scrap_that|
^_sear|is ^_serv_at| ^_serv|up ^_sesam| ^_set_it| ^_set_to| ^_shellfish| ^_shut|that ^_sinc|
^_sit|down ^_smok|is ^_sorry_miss| ^_speak| ^_stop_th| ^_strik| ^_s|out ^_tabl_is| ^_tak_th|
^_tak| ^_target|N:core ^_th_bus| ^_th_fir| ^_th_littl| ^_th_sear| ^_th_th| ^_th_whol| ^_thes|
^_they_do| ^_they_hav| ^_th|N:few ^_th|U ^_th|cor ^_th|dog ^_th|element ^_th|new ^_th|oven
^_th|smok ^_th|vet ^_tick_that| ^_to_th| ^_tough|as ^_traffic|is ^_twin| ^_ugh|ezra ^_us| ^_w_can|
^_w_do| ^_w_should| ^_w_would| ^_warehous| ^_was| ^_water| ^_weigh| ^_well_i| ^_what_ar| ^_what_way|
^_what| ^_what|hav ^_when_is| ^_when_i| ^_wher_do| ^_who_hav| ^_whoever| ^_wip| ^_with_DISH|
^_would| ^_yes_i| ^_you|can ^_you|should ^_you|would a_DISH|DISH a_Nduration|warn a_Nweight|leg
a_Nweight|topsid a_P_with| a_P|com a_P|with a_THING_and| a_THING_with| a_U|out a_bit|later
a_bottl| a_conventional_oven| a_cut|board a_delay_of| a_drop_of| a_drop|of a_good_Ndegrees:some|
a_go|at a_hot|oven a_li|down a_nightmar|for a_nudg|in a_pair| a_peanut| a_peanut|allergy a_plan|
a_power|failur a_right_way| a_roar| a_roast_for| a_rock_and| a_singl|DISH a_tablespoon_of|
a_tad| a_timer|of a_whol_THING| a_whol|DISH about_th|roll about_to|cry accord_to| accord_to|th
act|weird add_th_green| add|that advis| advis|m after_Nduration_DISH| after_how| after_i| after_that|what
afternoon| after|all_and against|th_THING again|from ago_DISH| ago_how| ago_not| ago|i ahead_of|
aid| aim_to|eat alarm_for_th| alarm_w| alarm_w|set alarm|is_go alarm|w alarm|w_set alert_m|if
alert|at_Ndegrees:core aliv| aliv|again all_at| all_behind|lik all_don|her all_guest| all_guest|ar
all_sat_THING| all_sit| all_sit|down all_th| all_th|DISH all_th|guest allergy|for_mark all|P
all|THING_$ all|THING_U all|guest_ar all|peel all|peel_every all|right_$ all|right_in all|th_butter
all|th_step all|through all|timer all|up already_in|th already_i|hav already_i|mad already_so|
already_what| alway| alway|Ndegrees:some alway|say am_THING|solo am_after|put am_all| am_bin|
am_bin|th am_call_DISH| am_deaf_on| am_deaf| am_do|this am_gon_for| am_hav_a| am_i_allow| am_i_hav|
am_i_meant| am_i_wait| am_i|go am_i|look am_never| am_not_in| am_not|her am_not|in am_out_for|
am_slow|today am_that| am_up_to| am_watch| am_way| am_way|behind am_well|behind amount|of am|Nduration_lat
am|all am|back am|count am|get am|i_behind am|i_do am|i_miss am|i_wait am|new_to am|off am|run_lat
am|starv am|watch an_THING| an_alarm|in and_DISH_ar| and_DISH_is| and_DISH_yes| and_THING_and|
and_U| and_ar|w and_b|quiet and_climb|fast and_cut| and_don|with and_do|not and_enough| and_half|th
and_how_do| and_how|ar and_i_do| and_is|it and_is|th and_it_com| and_i|hav and_i|will and_left_th|
and_let_m| and_look|at and_nudg| and_sam| and_should| and_so|what and_temperatur| and_th_DISH|
and_th_whol| and_ther|is and_th|lowest and_th|power and_what_if| and_what_temperatur| and_what|is
and_what|temperatur and|DISH_in and|N:few_bon and|at and|call_it and|do_i and|eat_at and|found
and|guest_ar and|i_did and|i_n and|i_want and|left and|m and|my_THING and|put_th and|sad and|th_U
and|th_dog and|th_other and|th_th and|ther_ar and|will_not another_pair_of| anymor_P| anymor_P|is
anyth_about| anyth_want|do anyth|about anyth|i_n anyth|i_should any|DISH_$ any|circumstanc
any|harm ar_Nduration_behind| ar_at_N:oven| ar_bang| ar_b| ar_com|after ar_don|already ar_down_to|
ar_do|th ar_her_th| ar_join|us ar_look|at ar_my| ar_m| ar_m|option ar_nowher_near| ar_on_th|
ar_on|to ar_out_and| ar_out_of| ar_sell_plat| ar_sit_down| ar_sit|at ar_sit|too ar_w_go| ar_w_up|
ar_w|still arriv_in| arriv|so arriv|so_far ar|N:few_short ar|THING_$ ar|away ar|back ar|expect
ar|hav_it ar|her ar|her_w ar|hungry ar|nic ar|nic_and ar|not_com ar|starv_$ ar|still_pal ar|us
ar|us_celsius ar|w_win ar|wrong as_long|as as_tabl| as_tabl|salt ask_your| ask_your|P asleep_in_th|
assist_can_not| assist|oven as|you_lik at_N:core_in| at_N:core|will at_N:few_P| at_N:few_on|
at_N:oven_it| at_N:oven|instead at_Nclock_befor| at_Nclock_for| at_Nclock_not| at_Nclock_on|
at_Nclock_to| at_Nclock|then at_Ndegrees:core_and| at_Ndegrees:oven_and| at_at|Nclock at_hom_th|
at_it_all| at_it|sinc at_last|low at_m|onc at_right|now at_th_THING| at_th_U| at_this_rat|
at_this|rat at_th|cut at_th|stor at_which| at| at|N:core_how at|N:core_th at|N:core_what at|N:core_would
at|N:few_$ at|N:few_i at|N:few_in at|N:few_th at|N:few_what at|N:oven_instead at|N:oven_w at|Nclock_not
at|Nclock_sh at|Nclock_they at|it_$ at|it_all at|it_and at|onc_$ at|onc_i at|this_rat at|what_oclock
availabl| away|to_th a|Nclock a|U_U a|barn a|bell a|bit_of a|blackout_her a|brick a|cheesecak
a|coeliac a|cool a|cow a|disaster_$ a|go a|greas a|greas_fir a|grey a|hair a|must a|no_show
a|notch a|nut_allergy a|peeler a|second_tim a|set a|set_for a|shout_when a|sit_down a|spoon
a|stand a|tad a|temperatur a|tick b_N:core| b_N:few_for| b_N:some|person b_an_extra| b_and|
b_at_N:few| b_befor| b_befor|it b_in|th b_it| b_on_th| b_on|th b_r| b_so| b_strain| b_strain|th
b_touch| b_touch|bon b_water|in back_a| back_i_saw| back_in|for back_it|was back|N:some_th
back|by back|to_N:oven bad|off bad|off_th bang|and bang|and_then barely|a bast|in becom|very
been_on_th| been_put| been|put beep_after_Nduration| beep_m| beep_m|in befor_b_so| befor_th|next
befor|th_next begin_from| begin|again_$ begun|it_smell begun|peel begun|peel_th behav| behind_by|Nduration
behind_it| behind_it|is behind_so|serv behind|lik behind|lik_th behind|with_everyth bell|in
ben|can ben|can_not best_way_to| between_rar_and| bin_th|DISH bird_wer_drop| birthday|girl
birthday|girl_want bit_off| bit|is_sort bit|later blast_at| block|sink blood_everywher_th|
blood_on| blood|everywher blunt_DISH|THING board_under| board|U board|U_not boil|for bon_N:few|
bon_and|roll bon_from_th| bon_in|it bon_not|N:few bonfir|night bon|rib_Nweight born_in_a| both_th|DISH
bout|Nduration_back br_dinner| br_dinner|forward br_m| br_th|DISH break_i| break_i|am break|N:core
break|up bridg_is| brin| brought_N:few_mat| brought_a_dat| brown_all| brown_and| brown_at|
brown_it|all brown_on|top brown_yet|leav brown|it_all brown|it_at br|it br|it_forward buck_N:few|
bump_everyth| bump_it_up| bump|th burn_in_th| burn_my| burn_pretty_bad| burnt_my| burn|it burst_figur|
burst_figur|Nduration bus_is_lat| butter_don|and butter_is|all butter|is_whip by_N:oven|in
by_th|U by|N:few_and by|Ndegrees:some by|a_mil by|for b|N:some_person b|for_th b|if_i b|in_th
b|ly b|mak b|quiet_for b|right_$ b|silent b|when_i call_DISH|finish call|and call|and_they
call|it_Nduration cam_off_th| cam_out_N:oven| cam_outsid_befor| can_i_even| can_it|sit can_i|se
can_i|tell can_th_P| can_th|leftover can_w_go| can_w|go can_w|jump can_you|hold cancel_all|timer
cancel_my| cancel|DISH_my can|eat_Nduration can|hear can|i_b can|i_get can|i_tell can|not_b
can|not_cop can|not_eat can|not_i can|not_turn can|you_get can|you_mak can|you_talk cap_scor_in|
cap|scor cap|scor_in cark| cark|it carv|it_yet car|pull_in catch|m catch|m_up cat| cat|in caught_th|
celsius_would| chanc_i_am| chang_of_plan| chang_to|medium chang|it_to cheap|THING_of check_again|
check_it| chemo_h_is| chemo_so| chip_pan|is chok|on_a chop_th|DISH chop|and chuck_corn_on|
chuck_it|on chuck_th|DISH chuck|a chuck|it clean|forgot_to climb|fast clock_for| clock_i|am
clock|for_Nduration clock|on_th clos_up| clos|full clos|full_someth club| cold_in_th| cold_on_th|
cold_on|th cold_oven| collect_my_P| com_after| com_out_at| com_out|way com|Nduration_too com|THING_Ndate
com|from_th com|it_is com|stuff com|stuff_th com|that com|up_to com|with_a conk| conk|out consider_th_DISH|
constant| cook_so| cook_to| cooker_work|now cook|THING corn_on| corn_on|th cor|is_at could_dinner_happen|
could_dinner|b could_do| could_not_hear| could_not|call could_not|hear could_w_do| could_w_push|
could_w|eat could_w|push could|hav could|i_do could|us could|w_do cousin_ar_com| cover|loosely
cow_is| cow_is|tail crank|it cream_DISH| cream|enough cream|enough_$ credit| credit|it cressida|
cub| cut_th_heat| cut_th_oven| cut_th|bon cut|board_THING cut|into_it cut|th_trim cut|what
da_will| dat|so_that da| dead|centr_$ deaf_on| deaf_on|left decid|against degre_for| degre_has|
delay_dinner| delay|it delay|it_by delay|so_let detector|scream dial_say|N:oven dial|N:oven_real
dial|is_in did_her| did_i_forget| did_i_wreck| did_not|get did_you_ever| did_you|say did|get
did|i_miss did|not_catch did|not_hear did|not_mean did|th_DISH did|th_U din_at|N:few dinner_Ndate_at|
dinner_for_tonight| dinner_for|Nclock dinner_happen| dinner_happen|Nduration dinner_i| dinner_mov_to|
dinner_tim|is dinner_tim|would dinner|N:oven_$ dinner|Nclock_and dinner|back_N:some dinner|forward
dinner|has_to dinner|is_$ dinner|is_mov dinner|n dinner|n_to display_has_gon| display|is_blank
do_N:few_calibrat| do_a|DISH do_i_get| do_i_hold| do_it| do_i|DISH do_i|b do_i|cover do_i|stick
do_i|still do_metric| do_metric|so do_not|P do_not|feel do_not|keep do_not|n do_or| do_th|DISH
do_th|french do_w|tak do_you_DISH| do_you|mak doctor|say dog_and| dog|has_had don_all|th don_i|am
don_th|butter don_took| don_what|is don_with|that don_your| door_N:few| door_was_left| door_will|
door_will|not door_you| doorbell_that|is door|has door|is_shut down_all| down_back| down_my|
down_so_text| down_wak_m| down_with_th| down|lik_a down|to_N:core do|N:core_sound do|about_th
do|i_ask do|i_begin do|i_throw do|leftover do|not_bother do|not_hav do|not_hold do|not_let
do|not_think do|not_understand do|now do|th_brown do|th_roast do|w_n do|you_do dress_th| dress_th|DISH
drop_back_to| drop_of| drop_th_timer| drop_that_alarm| drop_th|DISH drop_th|whol drop_to|N:oven
drop|it_$ drop|it_to drop|of drop|out_$ drop|th_oven drop|to_N:oven dry_it| duck_out_for| duck_out|
earlier|than early_can|w early_so| early|today earth|do eas_it_down| eas_th_oven| eat_Nduration|befor
eat_Nduration|earlier eat_Nduration|sooner eat_a_bit| eat_early|today eat_i_am| eat_without|
electric_is_back| electric|keep electric|keep_go els_could_i| enough_for_th| enough_so| enough|for_th
enough|out enough|out_of enough|reminder enough|reminder_$ even_look_at| even|in even|start
everyth_in|th everyth|at everyth|back_Nduration everywher_th| everywher_th|THING everywher_when|
expect_so| expect_so|mind expect|so_mind explain_to| explain|th_revers extra|N:few_at f_th|chook
fahrenheit_for| fahrenheit_for|th fahrenheit_giv_it| fahrenheit|i fallen_Nduration| fallen_Nduration|off
fallen_behind| fallen_down|to family_want_to| family| family|has fan_assist|oven fancy|do fan|assist
far_out| far|off fat_on_my| fat_on| fat|finger_$ feet|ar fella_is| ferry|is few_roast_DISH|
figur_Nduration| figur_Nduration|lat find_a| find_a|THING find_th| find|th_THING finger_is|
finger_is|bleed finger|is finger|is_bleed finish_and|it finish_by| finish_shop| finish_th|DISH
fir_in|th fir_on|r fir_what_do| fir_what|do first|lot first|slic fix_to_f| fix| flam_in_th|
flat_tyr_Nduration| flat|tyr_Nduration flick|th flick|th_oven flip_it|halfway flip|it_halfway
for_N:core_after| for_N:core|after for_Nduration_whil| for_a|second for_how|long for_is|th
for_m_th| for_th|DISH for_th|THING for_th|old for_th|roll for_us|Nduration forerib_N:few| forever|U_th
forgot_th|DISH forgot_to_put| forward|N:some for|Nclock_and for|Nduration_U for|Nduration_whil
for|m_i for|now for|r for|th_roll for|what_reason found|out freezer|so freezer|so_cross fresh_out|
fre|from_N:few fridg_at|Ndegrees:some fridg_it| from_N:oven|to from_start| from_th|fridg from_th|list
from|rugby from|start_to from|ther full|set fus|box f|N:few_THING gain|Ndegrees:few gam|plan
gam|timer gang_is|all gap_of| gas_has_run| gaug_must_b| gav|him gently| get_anyth| get_ic|back
get_m|start get_up|to get|her giv_it|m giv_m_my| giv_us_th| giv_us|Nduration giv|her giv|m_option
giv|m_som giv|us glass_of| glass|of go_abov| go_abov|N:core go_back|to go_for|th go_off| go_ok|
go_out|at go_sh| go_to| go_to|do go_up_to| goal| god_it_look| god_it| god_it|is god|P gon_cold_on|
gon_in_oven| gon_in_th| gon_lumpy| gon_so| gon_ston| gon_ston|cold gon_straight| gon_ther_is|
gon_to|get gon|blank gon|for gon|in_th gon|off_$ gon|over good_Ndegrees:some| good_Ndegrees:some|hot
good|Nduration_behind got_N:few|THING got_a_leave-in| got_a|Nweight got_her|Nduration got_it|on
got_m_a| got_my_THING| got_their| got_to_run| got|all got|in got|load got|to go|U go|abov go|abov_N:core
go|again_$ go|back go|careful go|hom go|steady go|steady_no go|to_b go|to_hav go|to_look grab_th|
grab_th|hot gram|of grandson|is green_DISH_U| green_DISH|U green_DISH|ar green_DISH|underway
grey_all|th grey_right|through grey|as grey|as_a ground|so ground|so_no guest_they_com| guest_th|
guest_th|U guest_will_b| guest|hav_com guest|less guest|they_com h_can|not h_get| h_has|been
h_has|got h_is_after| h_is_hav| h_is_stay| h_is|don h_is|in h_is|weak h_say_it| h_sold| had_THING|U
had_a_go| had_a|blackout had_a|look had_a|second had|N:some had|said halal|for halal|for_yusuf
half_is| half_now| half_now|N:core half|is half|past handl_cam_off| handl|without handl|without_a
hang_in|th hang_on_i| happen|Nduration happen|Nduration_sooner has_been_a| has_been_put| has_been|
has_been|put has_caught| has_gon_lumpy| has_gon|blank has_gon|over has_got|no has_had_th| has_left|th
has_not|mov has_run| has_run|out has_th|DISH has|becom has|been_rest has|gon_vegetarian has|got_N:few
has|land has|not_mov haul_th| haul|it haul|it_out hav_all_gon| hav_already|got hav_arriv|so
hav_begun|peel hav_bought_a| hav_bought|a hav_drop| hav_fallen_Nduration| hav_gon_to| hav_got_THING|
hav_got_a| hav_got_my| hav_got_th| hav_got|THING hav_got|a hav_it|pink hav_kept_for| hav_lift_it|
hav_lift| hav_lost_a| hav_lost|Nduration hav_not_carv| hav_not_gon| hav_not_got| hav_not_mad|
hav_not_start| hav_not|don hav_not|mad hav_no|DISH hav_prim| hav_prim|rib hav_run_out| hav_run|out
hav_to|start hav_to|walk hav_truss| hav_truss|th hav_volunteer| hav_volunteer|for hav_w_got|
hav|DISH_$ hav|N:few_mouth hav|begun hav|bought hav|bought_a hav|burn_my hav|fallen hav|forgotten
hav|got_Nduration hav|help hav|help_now hav|hit hav|ne'er hav|ne'er_a hav|not_a hav|plenty_of
hav|run_out hav|seen hav|taken hav|th hav|turn heat_no|sear heat|at_all heat|do_th heat|in_half
heaven_help| heaven_help|us help_m_in| help_my| help_my|P help_m|with helper|today help|m_with
help|till help|till_N:few her_THING_is| her_back|to her_for|a her_how| her_lik|a her_nam_is|
her_or| her_sh| her_sleev| her_till| her_to|help her|Nduration_ago her|P_so her|U her|at_N:core
her|for_another her|now_and her|rar hey| high_do| high_heat|at high_i| hir| his|P_$ his|rar_$
hit_N:core_lik| hit_m_up| hit_th_bon| hiv_from| hob_has_N:few| hold_at_N:core| hold_it_is|
hold| holler|at hom|that hom|that_is honestly_let_us| hop_that_is| hop|nobody hop|nobody_is
hors|for hot_THING|on hot_THING|with hot_for| hot_handl_my| hot_in| hot_it_is| hot_oven|first
hotter|than hous_has| how_ar| how_com_i| how_com|i how_is_sh| how_long_has| how_long_will|
how_long|has how_long|mor how_many_ar| how_many|kilo how_much_of| how_much|longer how_pink|will
how_pink|would how_thick_do| how_to_get| how_to_us| how_warm|should how|bad how|bad_is how|com_it
how|high how|hot_is how|lat how|many_pound how|warm_should hungry|peopl hurry_it| hush_now|
h|is_not i_DISH|it i_THING_it| i_THING|th i_allow| i_allow|to i_am_all| i_am_bin| i_am_deaf|
i_am_never| i_am_that| i_am_watch| i_am_way| i_am|all i_am|back i_am|count i_am|get i_am|off
i_am|starv i_am|watch i_can_hear| i_can_smell| i_can|hear i_can|not i_cover|it i_do_DISH| i_do|that
i_fancy|do i_fetch| i_get_away| i_go_by| i_got_th| i_got|tim i_go|by i_had_a| i_hav_drop| i_hav_truss|
i_hav|Nduration i_hav|begun i_hav|bought i_hav|don i_hav|forgotten i_hav|help i_hop| i_hop|nobody
i_is| i_is|not i_knock| i_left|th i_meant|to i_measur|N:core i_miss| i_n_th| i_never|got i_n|
i_open_th| i_said_th| i_said|wrong i_think_in| i_think|my i_thought|i i_throw| i_told|them
i_trim_th| i_us_DISH| i_want|it i_was_on| i_was|lay i_will_mak| i_will_put| i_will_tell| i_will|do
i_will|mak ic|back ic|back_in id_say| id_say|they if_dinner_was| if_h| if_i_pull| if_you_ar|
if_you|ar if|i_pull if|someth if|w_ar if|you_ar ignor_that| immun_system_is| in_DISH_is| in_DISH|is
in_Nduration_it| in_Nduration_th| in_Nduration_would| in_Nduration|about in_Nduration|so in_Nduration|what
in_any| in_coat_on| in_for_a| in_for_th| in_for|a in_from| in_half_now| in_half| in_her_and|
in_how| in_it_and| in_it|now in_law|will in_my_freezer| in_oven|Nduration in_plac_of| in_plac|of
in_sinc|N:oven in_som|mac in_so| in_th_P| in_th_market| in_th_other| in_ther_and| in_th|DISH
in_th|back in_th|freezer in_th|garag in_th|morn in_th|press in_th|sink in_th|thick in_th|whol
in_with_th| in_yet_th| ingredient|do insid_when| insist|on_DISH instead_of_fresh| instead_of_th|
instead_roll| instead_roll|and instead|of_N:few instead|of_butter invit_themselv_so| in|Nduration_yell
in|any_circumstanc in|diamond in|for_th in|her_chair in|number in|plac_of in|sinc_Nclock in|th_cor
in|th_kettl in|th_morn in|th_pantry in|th_queu in|th_thick in|ther_$ in|ther_say in|this_plac
in|troubl in|troubl_$ is_N:core_in| is_N:core_i| is_N:core|already is_N:core|insid is_N:few_and|
is_N:few|high is_N:few|low is_N:oven_in| is_N:some_and| is_Ndegrees:core_and| is_Ndegrees:oven|
is_Ndegrees:some| is_Nduration|later is_Nweight_not| is_Nweight|enough is_P_U| is_THING_for|
is_THING_in| is_THING_is| is_U|up is_a_P| is_a_hot| is_act|weird is_all_THING| is_at|a is_a|U
is_a|greas is_a|must is_a|no is_begun|it is_burst_figur| is_com|out is_enough|out is_expect_so|
is_flam_com| is_for_th| is_full_of| is_go|again is_ground| is_ground|so is_happen|at is_hav|a
is_hav|it is_help_with| is_help|with is_her|out is_him|in is_it_at| is_it_past| is_it_ready|
is_it|N:some is_it|look is_it|on is_it|ready is_keel| is_keel|over is_knock| is_leak| is_left_on|
is_lik_th| is_load|with is_look|so is_lot_ar| is_lot| is_no_mor| is_not_availabl| is_not|answer
is_not|clos is_not|heat is_not|in is_off|P is_on|stir is_outta| is_pack| is_pack|in is_pass|
is_past|N:core is_peel|DISH is_point_at| is_preheat_to| is_rar_fin| is_rar| is_rest_under|
is_sat_at| is_sit_at| is_sit|in is_sit|on is_smear| is_smok_pour| is_smok|in is_someth_i| is_still_DISH|
is_ston_cold| is_strain_skim| is_stuck_at| is_tail|her is_th_full| is_th_good| is_that|in is_that|your
is_ther|for is_th|U is_th|best is_th|good is_th|knack is_th|rest is_touch| is_turn_th| is_up|to
is_water|boil is_way|too is_what_in| is_what_i| is_what_th| is_what_w| is_whisk| is_whisk|and
is_work|again is|N:core_$ is|N:few_her is|N:few_low is|N:oven_now is|N:some_ml is|Nweight is|Nweight_enough
is|THING_and is|a_THING is|a_vegetarian is|aff is|alight is|all_grey is|all_i is|at_N:some
is|banjax is|chok is|coeliac_so is|don_and is|down_to is|driv is|expect_so is|finish_$ is|go_to
is|heat is|her_sh is|hungry is|ignit is|in_a is|it_com is|it_nearly is|it_on is|it_past is|it_ready
is|it_saf is|it_too is|knock_off is|lazy is|m_now is|margarin is|margarin_ok is|my_THING is|no_mor
is|not_answer is|not_go is|not_got is|not_up is|not_well is|over is|park is|remain is|rest_in
is|rubbish is|sat_and is|set_at is|sh_look is|spread is|still_THING is|stuck_in is|stuff_with
is|tail is|taken_it is|th_full is|th_knack is|th_sens is|that_a is|ti_$ is|told is|up_at is|wher_i
is|wrap_and it_against_th| it_all|go it_and_it| it_break| it_break|N:core it_br| it_burn|in
it_b|a it_com|stuff it_dinner| it_down_a| it_down|yet it_do|not it_forward|N:some it_from|
it_go_abov| it_go|abov it_has_had| it_has_not| it_has|crept it_i_hav| it_if_it| it_is_N:few|
it_is_Nduration| it_is_com| it_is_ston| it_is_up| it_is|N:core it_is|after it_is|cold it_is|cook
it_is|dry it_is|for it_is|pink it_is|spread it_is|whol it_i|am it_i|hav it_jump|Ndegrees:few
it_last|night it_lik|that it_look|good it_out|yet it_pink_in| it_saf_to| it_show_N:few| it_so|i
it_stood_at| it_this|THING it_till|N:core it_tim_to| it_touch|N:core it_touch|Ndegrees:core
it_up|to it_will|not it_with_salt| it_would_b| it|a_rest it|again it|another_Nduration it|back_N:some
it|burn_in it|com_to it|com_up it|doon it|doon_ta it|down_a it|down_to it|first_$ it|first_then
it|has_had it|in_too it|is_brown it|is_burn it|is_dead it|is_m it|is_rest it|is_sear it|is_spread
it|is_ti it|is_under it|is_warm it|lift it|lift_out it|m_in it|mak_it it|medium_instead it|off_with
it|out_th it|out_yet it|pink_in it|run_a it|run_cold it|saf_to it|show_N:core it|still it|tim_to
it|was_N:some it|whil_i i|U_want i|am_call i|am_com i|am_cut i|am_don i|am_hav i|am_head i|am_her
i|am_nip i|am_on i|am_pull i|am_run i|am_so i|am_that i|am_us i|bast_it i|bought_a i|can_ask
i|check_it i|clos i|cut_it i|do_about i|get_it i|go_by i|go_to i|hav_Nweight i|hav_been i|hav_burnt
i|hav_cut i|hav_fallen i|hav_had i|hav_perch i|heard_you i|hoover i|hop i|last i|lift i|lift_it
i|look_$ i|misread_it i|open_th i|order i|rest i|rest_it i|said_N:some i|say_to i|shut_it i|stab
i|stab_it i|stick_th i|think_th i|told_them i|want_a i|will_forget i|will_get i|wonder_how
i|would_say jar_of_DISH| jar_of| jar|of_THING jo_will|handl job|finish job|finish_boss joint_is|in
joint_to| jump_all_over| jump_in| jump|Ndegrees:few jump|Ndegrees:some_in kaput_it_mak| kat|
kat|is kat|is_coeliac kavi_is| kavi_is|do kavi|is kavi|is_do keep_him| keep_in| keep_up_Nduration|
kept_for| kept|th kerry| kettl_is| kettl|is_on kill_for| kill_for|a kill_th|THING kilo|is_so
kindly|remind kindly|tell knob_to| knob|to knock_N:few| knock_N:few|off knock_it| knock|it_down
know_if| know_it|is know_onc_it| know_ther| know_ther|is know|in know|in_Nduration lack_a_cut|
lad|hav landlord| lasagn| last_i|look last_of| last_on|back last|DISH last|low last|low_flam
last|of_them lat_by|Nduration lat_get| lat_it|is lat_so_add| lat_so|add later|preacher later|preacher_is
lat|so_everyth law|will lean| leav_th| leave-in_say| leave-in_say|N:core leave-in|say leave-in|say_N:core
leftover_stay| leftover|ar_away leftover|stay lend_a| lend_a|THING leo|has leo|has_a let_us|N:oven
liam| lick_th| lif_is| lift_out|and lift|it lift|out light_ar| light_has| light_hav| light_went|off
light|has_gon lik_Nduration| lik_Nduration|ago lik_w| lik_you| lik|a_frog lik|th_THING list_for|
list_nobody| littl_N:few| littl_U_is| littl_on_eat| load_shedd| load_shedd|start load|shedd
load|with load|with_DISH long_as| long_can_th| long_do_i| long_do|i long_do|th long_has| long_till_th|
long_will| longer_for| longer_on| longer_on|th longer_w| long|as long|can_it long|has look_at_th|
look_so_i| look|don look|so look|so_i loosely_in| lost_th| lost|Nduration_$ lost|Nduration_to
los|it lot_ar|her lot_hav_arriv| lot|hav low_and| lower|it low|flam luca_is_ground| lunch|shall
lunch|shall_b m_THING_th| m_a_timer| m_a_yell| m_about_th| m_an_alarm| m_an| m_a|Nweight m_a|shout
m_da_will| m_forever| m_forever|U m_forget_th| m_how_th| m_in|celsius m_it|was m_know|in m_oven|
m_oven|is m_sh| m_th_DISH| m_th_missus| m_th_shop| m_through|what m_to_bast| m_twic|what m_what|you
m_when_N:core| m_when_you| m_when|you m_with_th| ma_is| ma_is|oven mac_and_DISH| mad|th_DISH
mak_N:few_DISH| mak_U_a| mak_a|DISH mak_dinner|N:few mak_dinner|Nduration mak_room_for| mak_that|Nduration
mak_th|DISH mak|a_not mak|of mak|room mak|room_for man_com| man_in| many_ar| many|kilo marcus|is
marcus|is_allergic market|today mass_finish| mass_finish|at mat|unannounc may| ma|is ma|is_oven
mean_in| mean|to medium_for|P medium_well_th| medium_well_w| meet|at menu_yet| menu_yet|so
metric|so_weight middl_is_at| middl_that| middl|is middl|that middl|when_w mil|off mind_th|step
mind|a mind|a_DISH mind|about mind|crisp mind|crisp_th mind|drop mind|drop_that minut_how|
miracl|happen miss_a| miss_in_th| missus_and| missus_will| missus|will miss|a miss|for miss|that_on
ml_of_cream| mob| moira| moira|is mor_tim_it| mor|ar mor|guest_com mor|person mouth_P| mov_it|up
much_THING|do much_cream_in| much_longer_for| much_longer_on| much_of_th| much_of| much|as
must_b|ly must_hav|been must_it|rest must_th_DISH| must_th|DISH must_th|THING my_DISH_is| my_P_h|
my_P_th| my_P| my_P|alway my_P|has my_THING|burn my_U|is my_arm_on| my_back_is| my_back|is
my_feet|ar my_finger_is| my_finger|is my_freezer| my_freezer|so my_grandson|is my_mind|crisp
my_oven_has| my_oven_it| my_oven_run| my_oven|run my_palm_is| my_roommat_is| my_sous| my_sous|THING
my_thumb|is my_wrist|with myself|with myself|with_th my|P_do my|P_insist my|P_jud my|THING_on
my|grandson my|hair my|knuckl my|leg my|palm_is my|slic m|N:few_$ m|N:some_$ m|a_mo m|about
m|da_will m|for_Nduration m|in m|th_order m|th_rundown m|th_stat m|that m|twic m|twic_as m|what_is
m|when_Nduration n_N:some| n_Nduration|they n_a_bit| n_a_nudg| n_feed| n_for_N:few| n_to_go|
n_to_warm| n_to|jump needl| never_get| never_go_to| never_got_THING| never_go| never_go|to
never|mind_th new|to next_door|for next_job|finish next_to_th| next|door_Nduration next|job_finish
next|step_$ nightmar|for nightmar|for_them nip_out|for nip|out no_DISH|cook no_N:core_not|
no_N:core| no_THING_in| no_THING_th| no_THING|at no_THING|pan no_pink_at| no_r_at| no_sign|
no_sign|of no_th|other no_th|oven no_undo| nobody_lik| nobody| non|of_that normally| nos| not_N:few_and|
not_a_N:few| not_at|N:core not_availabl| not_a|singl not_b_strain| not_bother_ty| not_b| not_b|do
not_b|her not_b|mak not_clos|full not_cover|it not_eat_without| not_even|start not_find_a|
not_get_a| not_get_m| not_got|no not_hav_a| not_hav|nut not_heat|at not_mak|it not_mind|a not_n_to|
not_open| not_own_a| not_peel|anyth not_peel|th not_pictur_pound| not_pull|it not_put_a| not_put|it
not_put|th not_se|th not_tak|THING not_that| not_that|on not_ther|in not_th|foggiest not_till|
not_touch|that not_trust_th| not_trust|that not_turn_th| not|P_open not|answer not|at_th not|brown_enough
not|call_it not|feel_lik not|get_up not|go_to not|gon_in not|hav_THING not|mean not|n not|put_that
not|rest_long not|se_th not|stop_bleed not|that_ther now_U| now_and_th| now_and|it now_do|not
now_i_am| now_if| now_it|is now_th_oven| now_that_is| nowher|near_ready now|N:core_and now|at_N:oven
now|h no|DISH_cook no|bon no|fancy no|later_than no|no_N:some no|off no|off_th no|pink_for
no|power_in no|r_at no|shellfish_sh no|sorry no|such no|such_th no|yes nut|DISH nut|allergy_$
n|a_THING n|a_nudg n|do n|feed_at oat| of_DISH_butter| of_DISH_is| of_DISH_would| of_N:core|on
of_cream|enough of_my|knuckl of_plan| of_sirloin|Nweight of_them_in| of_th|U of_th|guest of_th|other
of_us_not| of_us_will| of_us|for of_water_in| of_water|underneath off_N:some| off_i|hav off_my|list
off_on|m off_so_no| off_so|no off_th_r| off_th|menu off_to|get off_to|th off_w|go offer|to_do
off|in_N:few off|our_own off|so off|upstair of|DISH_in of|THING_i of|a_THING of|battl of|delay
of|her of|rib of|smok of|win ok_DISH| ok_for|th ok_or| ok_th_THING| ok|instead ok|instead_of
ok|with_th old_at_th| old|folk old|oven on_ar| on_at_last| on_a|THING on_by|Nduration on_earth|do
on_eat|at on_hav| on_in_th| on_is_look| on_it|at on_i|hav on_i|was on_my|list on_say|N:core
on_sinc| on_th_high| on_that|front on_th|THING on_th|U on_th|cabl on_th|cooker on_th|fridg
on_th|lowest on_th|menu on_th|phon on_th|tabl on_to|N:oven on_whil| on_will| onc|mor_$ on|N:core_$
on|back_$ on|by_Nduration on|for_th on|is_cover on|it_at on|it_i on|left on|my_arm on|r on|r_N:few
on|schedul_$ on|sinc on|sinc_N:few on|stir on|stir_duty on|th_high on|th_pan on|th_screen on|th_stair
on|th_wet on|this on|to_N:oven on|with_th open_this_whol| option|again option|again_$ or_lid|
order_of|battl order|of_battl or|N:core or|U or|bad or|do_i or|someth other_ar_sit| other_half_is|
other_half|is other_way|THING other|room ought|to our_oven|is out_N:oven| out_all| out_at|N:some
out_b| out_h| out_it|is out_of|that out_sh_is| out_sh|is out_sinc|N:few out_th|fridg outsid_befor|
outsid_befor|Nduration out|and out|at_$ out|for_N:core out|now_and out|of_a out|of_it out|of_this
out|on_our out|sinc_Nclock out|th out|th_schedul out|this_second out|way out|way_too oven_THING|say
oven_alway_run| oven_and_N:few| oven_at|N:some oven_back_to| oven_back| oven_befor|Nduration
oven_dial|is oven_door_on| oven_door|has oven_down_Nduration| oven_has_got| oven_is_alway|
oven_is_up| oven_is_work| oven_is|N:oven oven_is|beep oven_is|not oven_on_to| oven_on|to oven_run|hot
oven_sinc|Nclock oven_up|to oven_what| oven_with| oven|at_N:some oven|first oven|first_then
oven|go_up oven|is_alway oven|is_back oven|is_cark oven|is_dead oven|is_on oven|is_preheat
oven|is_smok oven|meant oven|to_Ndegrees:oven over_N:core|when over_in|th over_is_that| over_on_th|
over_to_th| overnight|salt over|N:core_when over|to_th over|what_it own| packag|say packag|say_mechanically
pair_of| palm_is| palm_is|blister pan_handl|without pan_my_THING| pan_no|THING pan_with|a pan|is_smok
pan|with_a parchment_is|ignit parchment|is park_at_th| party_of| party|of_N:few pass|m_th pass|out
pass|out_at past|medium past|sav_$ pay_for| pay|for peak| peak|at peak|at_N:core peek_and|
peel|and peel|anyth_yet pencil|in peopl_ar|sit peopl|in_total pet|is_on pictur_pound| pictur_pound|kilo
piec|w piec|w_hav pink_at|all pink_in|any pink_is|it pink_ok|for pink_so|well pink|THING_$
pink|will pink|will_it pink|would plac_and_th| plac_of_THING| plac_of| plac|of plan_w_eat|
plastic| plat_at| plat|down_Nclock play|with point_at|N:core point|of pok|it pop_next| pop_next|door
pop|up pound|kilo pour|th power_in| power_is_on| power_is| power|failur practic|till practic|till_whatever
preacher_is| preheat_th| press|th pretend|i_never pretty_bad| pretty_bad|off prim|rib_Nweight
priya|can priya|can_not prov|Nduration_ago pull_her_at| pull_in|th pull_th|THING pull|in_th
push_it_back| push_it|to put_THING_in| put_a_timer| put_th_kettl| put_th|THING put|away put|dav
put|dav_down put|it_back put|it_down put|that_on p|m_at quick_th_oven| quickly| quick|updat_$
quit| r_DISH_is| r_at|all r_win|DISH rar_fin| rar_for|all rar_if_you| rather|not raw_as| ready_by_N:oven|
ready|or_not reason_w|ar reheat_th| reheat| remember|when remind|m_what remov_th|THING rest_do_not|
rest_will| rest|long rest|long_enough revers|it_$ rib_of|THING rib_roast_N:few| ribey| rib|roast_N:few
rid| right_DISH| right_back|to right_on|th right_sod_it| right_way| right_what| road_is| roar|at
roar|when roast_DISH_and| roast_DISH_back| roast_DISH_go| roast_DISH|would roast_N:few|bon
roast_for|N:few roast_is|not roast_on| roast_without_roast| roast_without| roaster_no| roast|DISH_back
roast|in_at roast|is_in roast|is_out roast|is_season rock_and| roll_i_hav| roll_n| roll_n|Nduration
roll_off| roll_off|th roll_prov|Nduration roll_start| roll_up| roll|timer_$ room_with|a roommat_is|
room|for_N:few rugby|club run_N:some|cold run_a_good| run_out|of run_th_dog| rung_they_ar|
run|next run|next_door ruth| r| r|DISH_$ r|THING r|currant r|currant_jelly r|win_DISH r|work
s_out_at| sack_off| sack_off|th sack| said_Nclock| said_it|is said|wrong salt_it_last| salt_th|THING
salt|it_th sam_as_tabl| sam|temperatur_all sat_THING| sat_down_and| sat_on|th sat|on_a saw|N:core_$
say_about| say_they| say_w| say|N:some_in say|it say|to_th say|yesterday scal_for| scald_my_wrist|
scal|for schedul_and_th| schedul_green_DISH| schedul|and_th scor_in|diamond scor| scrap_THING|
scrap|THING scrap|that_$ scratch_that_i| scrub_and| se_to| sear_at_th| sear_is_begun| sear|first
second_it_break| second|on_th seem|broken sell|to serv_at_N:few| serv_it|pink serv|at_N:few
serv|it_with set_Nduration_for| set_for_th| set_us| set_your| set|it_to set|th_alarm set|us_back
sh_has|been sh_has|got sh_hit| sh_hit|N:core sh_is_run| sh_is_sit| sh_is|do sh_will_not| shall_b_at|
shav|Nduration shav|Nduration_off shedd| shedd|start shellfish_allergy|for shit| shop_back_by|
shop_back| shop|back_by short_U| should_hav_DISH| should_hav|been should_i_put| should_i|b
should_th_THING| should_ther| should_ther|b should|i_b should|i_buy shout_at_th| shout_at|th
shout_when| shov_dinner_back| shov_dinner|back shov_th|DISH shov|dinner shov|in shower_Nduration|top
shower_back_in| show|on show|on_th show|up_early shut_off| shut_off|th shut|that_door sh|had
sh|lik sid_it| sid_it|is sid|too_$ sign|of simmer|sinc simmer|sinc_Nclock sinc_it| sinc_i|last
sinc_last|night sinc|Nclock_and sinc|breakfast sinc|i_last singl|DISH sirloin_on| sirloin|Nweight
sirloin|on_th sit_down_Nduration| sit_down_and| sit_i| sit_on|th sit_out| sitter_hom| sitter_hom|that
sit|too siz_of|a siz|of skim|and_bob skip|th_french sleep_in| sleep_in|th slic_it_this| slic_it|this
slic_my|finger slic|th_top slid_off| slip_and| slip_and|half slip_is| slip|on slip|on_th slow|then_a
slow|today_Nduration small_P| smear| smell_lik| smok_com|out smok_detector|scream smok_pour|out
so_DISH_it| so_N:few_and| so_N:few|extra so_add|Nduration so_go|careful so_how| so_i|stab so_knock_N:few|
so_much|as so_now|N:core so_text| so_text|when so_that_on| so_they_call| so_what|can sod_it|
sod_it|mak soggy| solo| som_ar_on| som_of| som|mac som|mac_and sorry_i_am| sorry_say| sorry|that_was
sort_on_that| sound|right_to sous|THING so|N:few_and so|add_Nduration so|how so|i_hav so|mind
so|serv so|serv_N:few so|w_hav spar_m| spar|m speak_with| splash_all_over| splash_of| start_all|
start_all|over start_from|scratch start_to|finish stat_of| stay|in_th steady|heat_no step_my_P|
stick_DISH_on| stick_DISH|on stick|it still_DISH|solid still_at|th still_good_for| still_hav_not|
still_in_th| still_mak| still_on_for| still_to| still| stood_at|N:core stood|in stood|in_th
stop_th_gam| stop|th_clock stop|that str_how| str_how|do straight_in|th straight_to|THING strain_skim|
strain_skim|and strik_that|from strik_th|DISH strong|heat str|is_snap stuck_at|N:core stuck_in_traffic|
stuck_on|th stuck_th|THING stuck|it_in stuff_is| stuff|it_with summaris|wher summaris|wher_i
sur_how| swell|up_sh switch| switch|it switch|off_th switch|th_oven system_is| tabl_for|Nclock
tabl|salt_$ tad| tak_N:few_tim| tak_a|shower tak_over_at| tak_th_dog| tak_this_phon| tak_this|phon
tak|N:few_off tak|it_away tak|it_back tak|th_THING tak|that_last talk_i_hav| talk_to_m| teaspoon|or
teaspoon|or_tablespoon tell_a| tell_m_at| tell_m_th| tell_m_to| tell_m|that tell_when| tell_you_th|
tell_your| tell_your|P tell|it tell|m_i tell|m_my temperatur_do|i temperatur_i_hav| temperatur_is|medium
temperatur_of|N:core temperatur_should| temperatur|for_th tent_is|off text|m text|when text|when_it
th_DISH_all| th_DISH_ar| th_DISH_bas| th_DISH_can| th_DISH_miracl| th_DISH_whil| th_DISH_will|
th_DISH_with| th_DISH|knock th_DISH|went th_DISH|whil th_N:core| th_P_has| th_P_of| th_P|can
th_P|to th_THING_all| th_THING_floor| th_THING_get| th_THING_hav| th_THING_h| th_THING_i| th_THING|U
th_THING|again th_THING|first th_THING|from th_U_cancell| th_U_for| th_U_has| th_birthday|
th_birthday|girl th_blast| th_board_under| th_board|U th_bon_i| th_bon|Nweight th_butter_with|
th_center_is| th_church|hall th_clock_i| th_colour_on| th_cow|is th_crust_is| th_dial_and|
th_door_N:few| th_door|of th_electric|keep th_family|has th_fat_and| th_ferry_is| th_first_N:few|
th_floor_i| th_from| th_full|set th_fus| th_gam|plan th_gam|timer th_gang_is| th_go|with th_has|
th_heat_to| th_heat|in th_how| th_it|is th_i|should th_joint_in| th_joint_to| th_knob_to| th_knob|to
th_label|say th_lad|hav th_last|entry th_leave-in|on th_lid|off th_light_hav| th_list_nobody|
th_littl|N:few th_lower|oven th_magic| th_magic|number th_market|today th_menu_yet| th_middl_that|
th_middl|that th_missus_and| th_on|with th_order| th_other|ar th_other|room th_oven_was| th_oven_what|
th_oven|from th_oven|meant th_oven|pack th_oven|shelf th_oven|switch th_overnight| th_overnight|salt
th_pan|is th_pan|went th_parchment_is| th_peopl| th_phon_is| th_phon|is th_plat_ar| th_power_is|
th_power_went| th_roast_at| th_roast_has| th_roast|has th_roll_ar| th_roll_n| th_roll_prov|
th_roll_start| th_roll|in th_rugby| th_run_Ndegrees:some| th_sam_as| th_say|N:core th_shop_back|
th_shop_had| th_sitter_hom| th_stat_of| th_str|is th_tabl|tonight th_th_say| th_th_with| th_thickest|
th_thick|part th_th|say th_timer_i| th_tip| th_top|of th_top|on th_train_is| th_trick| th_vet|
th_visitor_ar| th_warm| th_way_it| th_way_i| th_way_my| th_weight|in th_whol|THING th_whol|day
th_whol|gang th_wifi| than_i_told| than_i|thought than_w| thank_you|so than|i_thought that_alarm_w|
that_alarm|w that_at|Nclock that_back_i| that_back|i that_bit|is that_is|m that_is|that that_is|your
that_phon|call that_w_hav| that_was_th| that_was| that_was|th that_what| that|back that|bit_$
that|blood that|from_th that|front that|is_how that|is_them that|last_on that|long that|much
that|on_th that|went that|went_in that|what_do that|your their|at them_Nduration| them_is|
them_it| themselv_so| then_after_that| then_h| then_it|is then| ther_a|set ther_has|been ther_is|another
ther_on| ther_on|th ther_someth|i ther_to| ther_with_th| ther_with|th ther|and ther|is_DISH
ther|is_flam they_ar|eat they_ar|golden they_ar|stuck they_call|and they_mad| they_sat| they_want|another
they_went| they_went|in they|hav_a they|said thick_do| thick_grey_r| thick|part think_in| think|i_am
think|i_will think|my_THING thinner_and| this_THING_THING| this_is_a| this_minut_how| this_old|girl
this_or| this_phon| this_phon|call this_rat| this_very| this|THING_it this|is_a this|phon this|phon_call
this|rat this|very_second this|week throat_clos_up| throat|clos_up through_no|sear through_so|
through_th|DISH through|what through|what_is thumb|is th|DISH_bas th|DISH_boil th|DISH_caught
th|DISH_got th|DISH_stand th|DISH_th th|DISH_they th|DISH_train th|DISH_when th|P_Nduration
th|P_sleep th|THING_floor th|THING_giv th|THING_handl th|THING_i th|THING_in th|THING_is th|THING_pan
th|THING_slip th|THING_they th|U th|U_$ th|U_has th|U_i th|b th|beach th|bend th|board th|bottl
th|bottom_and th|card th|ceil th|church th|colour th|cream th|dead th|deck th|dog_is th|dry
th|end_th th|family th|floor_is th|foggiest th|gat th|grandmother th|handl th|invit th|joint
th|kiddy th|knack th|left th|list_$ th|lowest_was th|meal th|middl_and th|middl_at th|needl_is
th|next_Nduration th|number th|number_N:few th|other_ar th|oven_it th|oven_what th|pan th|pan_is
th|pictur th|plow th|plumber th|plung th|pool th|preacher th|r_road th|reason th|record th|refrigerator
th|roast_i th|scal th|second_it th|secret th|shelf th|smell th|smok_alarm th|speech th|spoon
th|sum th|summer th|target th|th th|th_in th|thick th|timer th|top_oven th|train_is th|trim
th|ty th|vent th|vicar th|villag th|we_on th|whol_hous th|whol_lot th|whol_way th|wifi th|work
th|work_$ ti_it|yet tick_off_DISH| tick|that_off till_N:few_then| till_N:few|then till_th|DISH
till_th|P till|N:few_$ till|w tim_ar| tim_did| tim_do_it| tim_do_i| tim_for_us| tim_is|your
tim_it|is tim_will| timer_N:few|wrong timer_and_th| timer_can|go timer_how| timer_i_am| timer_it|
timer_it|is timer_i|am timer_of| timer_of|Nduration timer_on_for| timer|Nduration timer|it
timer|it_is tim|would_b ti|it_$ to_N:oven|for to_bast|in to_b|N:core to_do|now to_eat_by| to_eat|at
to_flip|th to_get_a| to_get_up| to_get|to to_giv| to_help_with| to_hit|N:core to_li| to_look|
to_m_why| to_pick|th to_sit|in to_tak_a| to_tak|it to_tell|you to_that_phon| to_th|U to_turn_it|
to_us|you to_walk| to_walk|th together_what| tonight_at| tonight_at|N:few tonight_what| too_my|
took_a_U| took_m_forever| took_th|THING too|early_$ too|lat_to too|many_th too|much_salt topsid|for
topsid|for_Ndate top|THING_i top|on touch|Ndegrees:core to|N:oven_DISH to|N:some to|b to|carv_$
to|carv_and to|dinner to|end to|fetch to|help_m to|him to|mak_DISH to|my_THING to|play to|th_U
to|warm tri_it_in| tri_it| tri_it|in trim_th|DISH truss|th truss|th_roast trust_th| trust_th|THING
trust|that trust|this_THING try_to_DISH| try_to| turn_down_to| turn_on_th| turn_out_it| turn_over|
turn_th_timer| turn_th|knob turn_up_to| turn|down turn|it turn|it_down turn|it_off turn|out_it
twic_what_you| twic|what twic|what_you tyr_Nduration| ugh|ezra ugh|ezra_left under_th|THING
under|th_tabl up_Nduration|down up_by|N:some up_from_N:core| up_h| up_in_ther| up_in_th| up_th|THING
up_to_room| up_to|sp up_to|temperatur upstair_to_get| up|a_Nweight up|a_notch up|all_th up|for_a
up|front_then up|i_will up|lik_a up|to_N:core us_DISH|that us_a_roar| us_after| us_after|all
us_a|THING us_eat|Nduration us_go|steady us_in_th| us_los_th| us_mak_dinner| us_up|all us_will|
us|DISH_DISH us|N:oven us|begin_again us|for_THING us|go_straight us|in us|medium us|start_over
us|through very_THING_piec| volunteer|for w_ar_N:some| w_ar_b| w_ar_go| w_ar_sit| w_ar_still|
w_ar|go w_ar|hav w_ar|still w_ar|us w_at|at w_din_at| w_do_th| w_eat|at w_get_on| w_hav_run|
w_hav|run w_keep| w_push_it| w_sat| w_sell|to w_should|do w_up| w_up|to w_will_hold| w_will|go
wait_for_m| wait|befor wait|befor_cut wak_m_when| want_dinner_at| want_his_well| want_in| want_it|
want_m|on want_m|to want_to|b want_to|eat want|do want|for_th warm|it warm|should warn|m_when
was_Nduration|lat was_go| was_in_th| was_not|it was_on_what| wash_th_board| wash_th|THING wash|it
wash|my wash|my_THING wash|your_THING was|N:core_i was|at_N:core was|for was|hot was|lay was|lay_th
watch_for| watch| water_for_th| water_in_th| water|test_cam water|underneath way_my| way|i
way|past way|too_early way|too_salty weigh_it|on weight_in|pound weigh|Nweight_and well_don_all|
well_my| well_they_ar| well_w|say well|behind well|do_DISH well|don_no well|past went_into|th
went_on_Nduration| went| went|Nduration went|Nduration_ago went|in went|off_$ went|out_whol
wer_Nduration|lat wer_drop| wer_drop|it wer_in| wer|in we|N:few what_ar_m| what_can_i| what_did_you|
what_do|you what_for_is| what_i_must| what_i_told| what_i_was| what_if_i| what_ingredient|do
what_is_my| what_is_water| what_is|Ndegrees:core what_is|medium what_is|my what_is|that what_i|am
what_i|did what_quantity| what_th_DISH| what_th|can what_tim_ar| what_tim_did| what_tim_will|
what_to|do what_was| what_would_th| whatever_that| what|hav_you what|i_want what|is_water what|it_say
what|number_do what|tim_did what|was_th when_Nduration_hav| when_Nduration|is when_do|everyth
when_is|it when_it_hit| when_it_touch| when_i|must when_i|pull when_w|hit when_you|say when|Nduration
when|am when|am_i when|do_w when|i_pull when|it_com when|it_hit when|will_th wher_ar| wher_do_w|
wher_it|say wher_would|you wher|do_w which_all| which|number which|th which|way whil_i|hoover
whil|it whil|it_sit whisk|and who_can| who_has|got whol_way|through who|do_not why_am_i| why_ar|w
why_can| why_can|not why_it_n| why_it|n why_salt_it| why_so| why|do_not why|do_w why|in why|is_th
why|it_is why|must_it why|salt_it will_THING|do will_THING|salt will_b_back| will_b|a will_b|eat
will_b|right will_do|without will_forget| will_hold|dinner will_let| will_mak| will_mak|N:few
will_not_shut| will_not|b will_not|com will_not|eat will_not|light will_not|touch will_pass_on|
will_se_to| will_tell| will|b will|go_$ will|hav_to will|it_go will|not_fit will|not_shut win_DISH|with
win_in_th| win|DISH win|P with_Nduration_of| with_Nduration| with_a_peanut| with_all_th| with_all|this
with_a|peeler with_m|a with_th_butter| with_th_quick| with_th_whol| with_their| with_th|DISH
with_th|butter with_th|kiddy with_th|sid with_th|soup with_th|str with_which| without_tell|
without|a_THING with|a_THING with|th_second with|th_sid with|th_work wok|up word_of| work_in|fahrenheit
work_on_th| work_that| work|now would_THING_THING| would_THING|do would_it|b would_it|look
would_that_b| would_you_and| would|get would|lik_an would|y would|you_do wrap_and_in| wrap_it|
wrist|with wrist|with_th wrong|THING_$ w|ar w|cut w|do_th w|go_up w|got_on w|hav_lost w|hold
w|mak_it w|miss w|ran w|ran_out w|sell_to w|set_for w|will_go w|will_se w|will_sear year_N:few|
year_instead_roll| yell|at_N:core yes_N:few|of yes_P|i yes_that| yes|w_should yet|leav yet|leav_it
yet|so yet|so_green yet|to_grat you_DISH| you_N:few| you_ar|go you_ar|out you_b| you_could_not|
you_credit| you_credit|it you_hav_had| you_hav|had you_in|N:some you_i|am you_let| you_mind|drop
you_plan| you_put|th you_so| you_tak_th| you_tak|th you_think_it| you_think|i you_want_th|
you_will|hav your_P_and| your|P_$ your|hair you|can_get you|said_what you|say_it you|so_much
you|understand you|watch_th |@107.2 |@108.0 |@11.3 |@113.2 |@12.4 |@120.0 |@13.8 |@130.2 |@141.0
|@147.2 |@21.4 |@22.2 |@27.9 |@28.4 |@34.2 |@4.15 |@46.6 |@47.7 |@49.8 |@50.3 |@52.1 |@53.4
|@64.4 |@69.3 |@76.0 |@86.0 |@88.5 |@92.1 |@99.0 |DISH_DISH_lik |DISH_N:few_DISH |DISH_THING_and
|DISH_U_with |DISH_and_it |DISH_and_took |DISH_anyth |DISH_ar_nic |DISH_at_Nclock |DISH_bon
|DISH_cook_so |DISH_do_$ |DISH_in_N:few |DISH_in_and |DISH_in_th |DISH_is_under |DISH_n_mor
|DISH_now |DISH_our |DISH_oven |DISH_ris |DISH_shiny |DISH_they_ar |DISH_timer_it |DISH_today
|DISH_train |DISH_underway |DISH_up_$ |DISH_wer |DISH_whil |DISH_yes |N:core_DISH_ar |N:core_U
|N:core_and_DISH |N:core_and_then |N:core_by |N:core_no |N:core_sound |N:core_sound_right |N:core_too_low
|N:core_whil_i |N:core_would |N:few_THING_tonight |N:few_b |N:few_can_not |N:few_do_not |N:few_go_$
|N:few_high_in |N:few_let |N:few_month_along |N:few_mouth_to |N:few_nobody |N:few_off_$ |N:few_r_work
|N:few_sharp_$ |N:few_sit_down |N:few_so_N:few |N:few_timer |N:few_want |N:few_what_is |N:oven_Ndate
|N:oven_a |N:oven_feet_what |N:oven_instead_of |N:oven_is |N:oven_real |N:oven_real_N:oven
|N:oven_right |N:oven_when |N:some_about |N:some_after |N:some_hot_alway |N:some_low |N:some_ml
|N:some_ml_of |N:some_now |N:some_off |Nclock_U_th |Nclock_it_is |Nclock_they |Nclock_w_will
|Ndate_$ |Ndate_$_$ |Ndate_at_N:core |Ndegrees:core_w |Ndegrees:few |Ndegrees:oven_and |Ndegrees:some_in_Nduration
|Nduration_DISH_is |Nduration_ago_whil |Nduration_and_w |Nduration_ar |Nduration_befor_w |Nduration_later_th
|Nduration_later_what |Nduration_left_on |Nduration_off_schedul |Nduration_on_dinner |Nduration_sooner_and
|Nduration_timer_can |Nduration_traffic_is |Nduration_when |Nduration_yell |Nduration_yell_DISH
|Nweight_enough |Nweight_with_N:few |P_Nclock |P_THING |P_and |P_br |P_from_th |P_h_is |P_is_arm
|P_is_pregnant |P_is_shown |P_jud_can |P_no |P_open_that |P_say_it |P_sh_can |P_sleep |P_sleep_$
|P_so_N:few |P_us_up |P_want_supper |THING_$ |THING_$_$ |THING_N:few_U |THING_N:few_and |THING_N:few_keep
|THING_Ndate_for |THING_THING_do |THING_THING_has |THING_THING_trim |THING_again_$ |THING_and_i
|THING_and_my |THING_ar_cover |THING_bag |THING_bag_$ |THING_board_now |THING_caught_light
|THING_could |THING_do_$ |THING_fan_oven |THING_handl |THING_i |THING_i_am |THING_i_think |THING_in_$
|THING_in_and |THING_in_th |THING_it_jump |THING_it_say |THING_or |THING_out_oven |THING_pan_$
|THING_roast |THING_say_th |THING_sinc_Nduration |THING_smok |THING_sorry_$ |THING_splash_all
|THING_w |THING_what |U_eat_halal |U_for_m |U_not_th |U_out_of |U_swell |U_swell_up |U_want_to
|a_DISH_$ |a_DISH_instead |a_Nweight_with |a_THING_cast |a_U_for |a_crim |a_duck |a_fan_oven
|a_frog |a_great |a_helper |a_lovely |a_mil |a_mo_$ |a_nudg |a_nudg_in |a_pregnant |a_read
|a_revers |a_roast_without |a_run |a_sit_down |a_topsid |a_vegetarian |a_yell |about_to |abov_N:core
|across |after |after_Nduration_DISH |after_that_$ |after_w_start |ago_how |aliv |aliv_again
|all_cut |all_day_$ |all_grey |all_over_my |all_through_$ |allergic_to_THING |allergic_to_shellfish
|allergy_for |almond |alway |alway_did |am_THING_a |am_call |am_com |am_cut |am_don |am_hav
|am_head_upstair |am_her |am_nip_out |am_not_do |am_on |am_on_my |am_pull |am_so |am_so_behind
|am_that |am_us |an_Nweight |and_all |and_bob |and_bob_is |and_everyth |and_look |and_not |and_roll
|and_still |and_tuck_in |anybody_$ |anybody_$_$ |anyth_$ |anyth_$_$ |ar_$ |ar_$_$ |ar_back_$
|ar_bang |ar_burnt_at |ar_cover |ar_cremat |ar_do |ar_early |ar_go |ar_her_$ |ar_her_so |ar_hungry
|ar_join_$ |ar_lat |ar_not_don |ar_sit_at |ar_still_lik |ar_ston |ar_ston_cold |ar_swell_up
|ar_w_hav |ar_warm_$ |ar_wrong |as_a_U |as_anyth_$ |as_last |as_last_year |as_nail |ask_how_long
|ask_m_$ |at_N:few_U |at_N:few_instead |at_N:few_rather |at_N:oven_sharp |at_Nclock_at |at_Nclock_so
|at_Nclock_what |at_all_and |at_this_moment |away_in |away_with |ay |b_an |b_if |b_join |b_ok_$
|b_ready_$ |b_ther_in |b_touch |b_touch_bon |b_when_i |back_thank |back_to_m |bad_idea |bad_is
|bad_it |balloon |bar_$ |bar_$_$ |bas |battl |beach |been_Nduration |been_Nduration_$ |befor_b
|befor_cut |began_THING |behind |behind_th_plan |bend_$ |bend_$_$ |between_rar |between_rar_and
|bin_$ |bin_$_$ |bit_again |bit_off |blackout_her |blank_$ |blank_$_$ |bleed_and |board_THING_enough
|boil_and_rough |boil_th |boil_th_DISH |bon_N:core_$ |bon_Nweight_$ |bon_it_is |bon_not_N:few
|bon_rib |bottl_of_beer |bottom_and |br_my_P |bring_DISH |bring_a |build_is |burn_it |burn_my_finger
|butter_all_over |butter_can |butter_is_mad |butter_it |by_N:few_and |by_Nclock_wak |call_it_a
|cam_$ |cam_$_$ |can_ask |can_go_$ |can_keep |can_not_get |can_sit |can_stop |car_pull |caravan
|carpet |cast_iron |cast_iron_THING |catch_my |catch_my_breath |cattl |caught_and |caught_light
|caught_they |caught_they_ar |ceil |center |chang_th_fus |charger |chok_$ |chok_$_$ |church_hall
|clos_up |coeliac_so |cold_by_N:some |cold_i |cold_on_th |cold_whil |com_w |command |complet
|cook_so |cook_so_far |cook_through |counter_Nduration |county |crackl_$ |crackl_$_$ |cream_for
|cream_is |cream_on_th |cream_whisk |cressida |crisp_$ |crisp_$_$ |crisp_th_outsid |cross_$
|cross_$_$ |crust_$ |crust_$_$ |cupboard |currant |currant_jelly |curtain_$ |curtain_$_$ |cut_board
|cut_what |da_will |dav_down |dav_down_for |day_i |day_sh |deaf |degre_c_so |delay_add |delay_add_Nduration
|did_sh |did_th |dinner_back_N:some |dinner_for_him |display_has_gon |do_DISH_with |do_about
|do_celsius |do_celsius_Ndegrees:core |do_first_$ |do_hav_a |do_i_start |do_i_ti |do_it_finish
|do_not_and |do_not_believ |do_not_find |do_not_look |do_not_own |do_someth |do_th_brown |do_you_mak
|do_you_understand |don_already |don_so |door_U |door_hang |dough_$ |dough_$_$ |down_it_is
|down_lik_a |drank_it |drop_that_alarm |drown |duty_$ |duty_$_$ |early_so |easter |eat |eat_DISH
|eat_N:few_$ |eat_befor |eat_by_N:few |eat_that |element |empty_$ |empty_$_$ |end_of |european
|even_do |every_tim |everyth_back_Nduration |everywher_when |exam |expect_so |extra_plat |ezra_left
|ezra_left_th |fac_$ |fac_$_$ |faff_$ |faff_$_$ |failur |fan_now |fancy |far_ahead |far_ahead_$
|fat_cap_$ |fault |feel_lik_it |fell_on_th |fella_$ |fella_$_$ |find_in |finger_off |finish_DISH
|finish_boss |finish_by |fit_$ |fit_$_$ |flam_and |flip_th |floor |floor_and |foggiest |for_DISH_so
|for_N:core_$ |for_N:core_and |for_N:few_adult |for_N:few_mor |for_Nduration_do |for_Nduration_is
|for_a_peek |for_another |for_another_Nduration |for_mark |for_th_cornbread |for_this_$ |for_tim
|for_tim_$ |for_yusuf |for_yusuf_mak |fourth_$ |fourth_$_$ |freez_what |freez_what_is |from_N:oven_up
|from_th_freezer |from_th_oven |front |front_$ |front_$_$ |front_then |full_someth |full_someth_is
|gas_oven |gav_him |get_them |get_ther |get_up |girl_want |girl_want_supper |giv_him |gluten
|go_Nduration |go_to_U |go_to_bother |go_to_do |gon_in |gon_off_so |gon_ther |gon_ther_is |gon_vegetarian
|got_N:core |got_N:core_in |got_at |got_it_on |got_th_flu |got_their |got_up |grav |grill_$
|grill_$_$ |group |guest_th |guest_to |h_was |had_her |had_to |halfway_$ |halfway_$_$ |has_a_nut
|has_been_at |has_been_on |has_com_over |has_gon_down |has_had_a |has_land |hav_caught_on |hav_cut
|hav_cut_my |hav_finish |hav_it_medium |hav_kept |hav_not_carv |hav_not_finish |hav_not_mad
|hav_perch |hav_perch_it |hav_rung |hav_sat |hav_to_DISH |hav_to_eat |hear_you |heat_$ |heat_$_$
|heat_N:oven |heat_at |heat_do |heat_no_sear |help_in |help_m_now |help_now |her |her_again
|her_chair |her_i_am |her_new |her_now_$ |her_or |her_th |her_then_$ |high_$ |high_$_$ |his_rar
|his_steak |hop_$ |hop_$_$ |hot_alway |hot_alway_has |hot_by |hot_for_th |hot_is |hot_to |hour_$
|hour_$_$ |hous_$ |hous_$_$ |hurt |i_after |i_am_N:few |i_am_behind |i_am_stand |i_b_with |i_begin_$
|i_behind |i_do_next |i_don |i_even |i_found |i_got_tim |i_hav_set |i_last |i_mak |i_put_my
|i_reset |i_skip_th |i_think |i_typ_$ |i_was_meant |i_whack |i_whack_it |i_would_say |ignit
|in_Nduration_after |in_Nduration_steep |in_a_good |in_already_$ |in_between_$ |in_butter_$
|in_c |in_celsius_and |in_fat |in_flam_$ |in_half_now |in_her_and |in_instead |in_instead_of
|in_metric |in_my_P |in_sinc_N:few |in_th_butter |in_th_driveway |in_th_front |in_th_liv |in_th_old
|in_to_warm |in_top_oven |in_total_$ |instead_of_N:oven |instead_of_real |instead_what |into_it_$
|invit |is_N:core_DISH |is_N:few_blam |is_N:few_high |is_Nclock_and |is_Ndegrees:few_high |is_Ndegrees:oven
|is_THING_and |is_a_hot |is_a_vegan |is_another |is_ask_for |is_assembl_$ |is_at_Ndegrees:core
|is_at_a |is_blank |is_blister_$ |is_bring_DISH |is_bring_his |is_bust_so |is_com_$ |is_com_too
|is_cut_up |is_do_DISH |is_dry |is_faint |is_flam |is_giv_daft |is_good_$ |is_got |is_grey_and
|is_hav_his |is_her_$ |is_hot_$ |is_hurt |is_in_their |is_left_$ |is_left_in |is_mix_and |is_next
|is_non |is_not_U |is_not_answer |is_not_ti |is_on_blood |is_on_for |is_on_it |is_on_wash |is_peel_DISH
|is_poorly |is_pregnant_$ |is_rock |is_sat_down |is_sear |is_season |is_serv |is_smear |is_smell
|is_snap_and |is_split_$ |is_spread |is_still_in |is_strain_skim |is_tent |is_th_first |is_th_knack
|is_th_middl |is_th_rest |is_th_sens |is_th_story |is_them |is_up_next |is_up_to |is_us |is_water_boil
|is_what_i |is_wher_i |it_Nduration_earlier |it_all_$ |it_all_go |it_and_what |it_at_N:oven
|it_at_N:some |it_back_to |it_by_Nduration |it_don_$ |it_forward |it_how_long |it_if_ther |it_is_lik
|it_is_loud |it_is_serv |it_is_show |it_is_so |it_look_$ |it_medium_and |it_medium_rar |it_n_$
|it_nearly |it_off_at |it_off_th |it_on_$ |it_on_Nduration |it_out |it_out_Nduration |it_out_on
|it_pass |it_reckon |it_reckon_in |it_sit_$ |it_stood |it_stood_at |it_th_day |it_through_so
|it_tonight |it_up_now |it_up_to |it_will_com |item |job_finish |job_finish_boss |jok_$ |jok_$_$
|keep_go_off |kept_at |kept_insid |kerry |kiddy |kilo_i |knack |knot_$ |knot_$_$ |know_i |know_if_it
|last_messag |last_night_$ |last_night_befor |last_number |lat_P |lat_i |lat_on |lat_they |lat_with
|later_Nduration |later_my |later_what |later_would |leak |left_for |left_in_this |let_th |li_i
|light_di |lik_it_$ |lik_th_cow |littl_on_eat |liv |long_again |long_befor |long_mor |longer_$
|longer_$_$ |look_Nduration |look_in |look_insid |lost_my_sous |lost_power |low_flam |low_flam_lid
|m_Nduration_$ |m_about_th |m_if |m_if_it |m_it_is |m_lik |m_look |m_onc_it |m_option_$ |m_th_DISH
|m_th_rundown |m_th_stat |m_up_$ |m_what_i |mad_THING |mak_N:core_$ |mak_it_well |mak_noth
|many_pound |many_th |margarin_ok |mark_N:core |medium_sh |messag |messag_$ |messag_$_$ |middl_and
|middl_at |mind_th_DISH |mind_what |minut |misread_it |ml |ml_of |moment_i |moment_it |money_$
|money_$_$ |mor_for |mor_lat |mor_minut |mor_no |mor_so |mor_tim_$ |mouth |mouth_P |much_$
|much_$_$ |much_i |much_tim |music_$ |music_$_$ |my_P_help |my_THING_th |my_arm_what |my_arm_with
|my_option_$ |my_roommat |my_thumb_open |my_timer |n_a_THING |n_for |n_mor_tim |n_of |n_to_get
|ne'er |ne'er_a |near_ready |never_got |new_th_THING |new_to_this |next_door_to |next_to |nic_and_golden
|no_mor_no |no_way |nobody_is_U |not_DISH_it |not_clos |not_com_so |not_cop |not_do_that |not_don_th
|not_even |not_fit |not_got |not_hav_$ |not_hav_nut |not_hear |not_keep_THING |not_let |not_mind
|not_past |not_put_that |not_read |not_talk |not_think |not_till |not_touch_it |not_understand_$
|not_up |now_N:oven |now_and_how |now_and_th |now_my |now_my_P |number_again |number_do |number_is_rubbish
|nut_allergy_$ |of_DISH_or |of_DISH_would |of_N:oven |of_THING_$ |of_THING_N:few |of_THING_after
|of_THING_for |of_THING_now |of_battl |of_fresh_$ |of_heart |of_her_$ |of_my_THING |of_oven_is
|of_play |of_rest |of_rest_$ |of_smok_$ |of_th_N:few |of_th_P |of_th_U |of_th_even |of_th_fridg
|of_th_real |of_them_hav |of_them_is |of_top |of_top_THING |of_us_$ |of_us_U |of_us_not |of_you_$
|off_so_it |offer_$ |offer_$_$ |on_N:few_$ |on_Ngas-mark |on_Nweight |on_and_i |on_at_N:core
|on_at_N:few |on_at_all |on_earth_do |on_for_Nduration |on_in_th |on_is_for |on_is_look |on_my_THING
|on_my_arm |on_my_own |on_my_wrist |on_our_whol |on_say_N:core |on_th_fridg |on_th_littl |on_th_screen
|on_th_way |on_that_is |on_this_on |on_whil |on_whil_i |onto_th_floor |open_what |or_off_$
|or_tablespoon |or_tablespoon_of |otherwis |ought |our_on |our_own |out |out_U |out_already_$
|out_at_$ |out_at_N:some |out_by_mistak |out_right |out_they_ar |out_this_minut |out_whol_road
|out_whol_street |out_yet_$ |oven_P |oven_alway |oven_go_up |oven_is_banjax |oven_li |oven_li_it
|oven_not |oven_now |oven_off_and |oven_off_now |oven_on_for |oven_what |over_on_th |overshoot_$
|overshoot_$_$ |own_U |pal_and |pan_THING_blu |pan_i |pan_of |pan_under |pan_went |parcel |past_it
|past_well |peel_i |peopl_how |peopl_is |permit |pinch |pink_in_any |pink_so |pink_so_well
|plac_of |plan_U |plan_U_$ |play_with |plumber |plung |pour_th |power_in_th |preacher_is_long
|proper_THING |prov |pull_at_$ |pull_this |pull_this_at |pur_vegetarian_no |push_it_to |put_N:few_timer
|put_it_out |put_my |put_th_joint |quarter_$ |quarter_$_$ |queu |quid_a |quid_for |quiet_for
|quiet_for_a |r_at |r_at_all |r_insid |r_is |r_on |r_road |rang_h |rar_ok |rar_ok_for |rather_than_N:few
|raw_THING_and |ray |ready_for_th |ready_i |ready_it |record_$ |record_$_$ |reduc |reduc_for
|refrigerator |rest_it |rest_long |rest_long_enough |rest_they |rib_$ |rib_$_$ |rib_and |rid_of_th
|right_it_has |roast_N:few_bon |roast_what |roaster_no |roll_DISH |room_with_a |roundabout
|row |run_a_good |run_at |run_order |run_out |s_out_$ |saf_to |said_$ |said_$_$ |said_N:oven
|said_you |sak_$ |sak_$_$ |salt_and_THING |salt_go |salt_it_all |salt_it_th |salt_work |salt_work_th
|sat_and |sav_this |say_N:some_$ |say_THING |say_do_not |say_in_Nduration |say_mechanically
|say_mechanically_tenderis |say_medium_$ |say_your |schedul_and |scor_in_diamond |sear_i |sec_ago
|second_it |second_tim |second_tim_$ |secret |sell_to |senior |serv_N:few_later |serv_it_at
|set_Nduration_$ |set_for_degre |set_th_roll |shall_b_at |shedd |shelf_and |shelf_it |shelf_it_is
|shellfish_$ |shellfish_$_$ |shellfish_sh_becom |show_up_so |shut_it_off |sid_and_i |sinc_N:oven_$
|sink_$ |sink_$_$ |sit_down_and |siz_N:few |siz_of |slic |slic_b |slic_it_$ |slic_look |slic_went
|slip_$ |slip_$_$ |slip_on |slip_on_th |slipper |smok_in_her |so_everyth_slip |so_green |so_green_DISH
|so_i_stab |so_mind |so_no_luca |so_now_N:core |so_weight |so_weight_in |solo_now |som_green
|som_green_DISH |someth_in |sooner_and |sooner_than |special |spell |split_and |spok |sprig
|stab_it_N:core |stay_$ |stay_$_$ |stay_in_th |steady_no |steady_no_sear |stew |sticker |still_U_in
|still_in_$ |still_mak |stir_duty |stop_bleed |stov_$ |stov_$_$ |str_after |str_after_all |straight_away_$
|stream_$ |stream_$_$ |stuck_on_N:core |stuff |stuff_i |stuff_is_in |stuff_th_joint |styl_$
|styl_$_$ |such |such_th |suit_$ |suit_$_$ |swear_it_is |swed |swor |tabl_and |tabl_i |tad
|tail_her |tak_so_long |taken_th_roast |talk_rubbish |talk_too |talk_too_much |tell_N:core_$
|tell_m_N:core |tell_th |temperatur_Ndegrees:core_$ |temperatur_is_medium |temperatur_of_th
|temperatur_should |test_cam |test_cam_out |text_Nduration |text_Nduration_lat |th_DISH_THING
|th_DISH_boil |th_DISH_countdown |th_DISH_ready |th_THING_run |th_THING_will |th_U_on |th_alarm_clock
|th_at_onc |th_beach |th_begin_$ |th_best_way |th_bishop |th_blast_of |th_block_$ |th_boat
|th_bon_i |th_car |th_clock_i |th_clock_on |th_crackl |th_crumbl |th_day |th_dog_out |th_door_now
|th_end |th_farm |th_fat |th_finish_$ |th_fridg_$ |th_from |th_full_set |th_grill |th_grocery
|th_hang |th_hob_$ |th_hot_THING |th_hot_fat |th_i_am |th_kettl_on |th_knack |th_last |th_liv
|th_liv_room |th_lower_oven |th_menu_$ |th_middl_get |th_middl_of |th_moment_$ |th_music |th_n_m
|th_night_$ |th_old_THING |th_oven_no |th_oven_so |th_pantry |th_pub_$ |th_pull_temperatur
|th_rain |th_revers |th_roll_and |th_roll_i |th_rundown |th_salt_$ |th_say_N:core |th_scal_$
|th_shop_list |th_slic_look |th_step_$ |th_tabl_$ |th_telly_$ |th_thick |th_thickest_bit |th_timelin
|th_timelin_$ |th_timer_on |th_truss_$ |th_way_i |th_wet |th_wifi |th_word_$ |than_m_$ |than_that_$
|than_w |than_w_said |that_$ |that_$_$ |that_blood |that_matter |that_on_mor |that_right |their_at_N:few
|them_THING |them_anyway |them_do |them_down |them_off |them_ther |then_$ |then_$_$ |ther_say
|they_can_not |they_hav_rung |they_wer_Nduration |think_$ |think_$_$ |think_th |thinner_and
|this_lot |this_rat |throat_is |through_th_DISH |throw_th |ti_a |till_dinner_$ |till_whatever
|till_whatever_gon |tim_did |tim_do_it |tim_hav |timer_anymor |timer_go_$ |timer_her |timer_th
|timetabl |tip_$ |tip_$_$ |to_N:core_i |to_N:core_whil |to_N:few_now |to_N:oven_for |to_N:oven_it
|to_N:oven_w |to_Ndegrees:oven |to_THING_th |to_b_don |to_catch |to_check |to_eat_by |to_f_th
|to_get_th |to_get_to |to_get_up |to_giv_m |to_grat |to_grat_it |to_help_m |to_hit |to_know_if
|to_li |to_look_lik |to_pick_up |to_put_th |to_room |to_room_temperatur |to_tak_a |to_tak_it
|to_tell_you |to_temperatur |today_Nduration_behind |together_$ |together_$_$ |told_him |took_ag_to
|touch_N:core |treat |trim_it_$ |trip_switch |truss_a |trust_it |turn_up_$ |ty_$ |ty_$_$ |typ_$
|typ_$_$ |tyr_Nduration |under_control |under_it |under_th_truth |underneath_$ |underneath_$_$
|up_by_N:some |up_on_th |up_right |up_to |up_to_N:core |up_to_N:some |upstair_for |us_all |us_back
|us_celsius_and |us_down |us_this |us_through |us_you |vegetarian |vegetarian_sinc |very_second
|vicar |visitor_$ |visitor_$_$ |visitor_ar |w_carv |w_cut |w_got_to |w_hav_brought |w_mov |w_ok
|w_run |w_set_for |w_should_hav |w_sit |wait_Nduration |want_$ |want_$_$ |want_it_rar |want_rar
|want_to_know |want_to_mak |warm_it |warm_should |was_U_$ |was_hang |was_hang_open |was_my_P
|was_not_listen |was_on_th |was_th_last |watch_th |watch_th_DISH |water_for_th |water_in |water_in_th
|way_down |way_it |way_out |way_out_do |we_N:few |we_on |week_$ |week_$_$ |weight_of |well_my
|well_that |well_they_ar |well_w |well_what |went_Nduration |went_Nduration_ago |went_fly |wer_Nduration_lat
|wer_at_N:core |wer_go |wer_in |what_colour |what_is_my |what_reason |whatever_that_is |when_Nduration_is
|when_it_has |when_it_r |when_it_went |when_th_DISH |when_you_check |wher_i_am |wher_it |whil_rest_$
|whol_DISH |whol_lot |whol_way |wifi |will_b_DISH |will_b_N:few |will_b_ther |will_forget_thes
|will_handl_th |will_hav_it |will_keep |will_let |will_not_do |will_pass |will_sear_first |will_start
|will_you_say |win_DISH |with_bar |with_bar_THING |with_it_now |with_th_butter |with_th_first
|with_th_sid |without_a_mitt |without_m_$ |without_roast |without_roast_DISH |wonder_how |wonder_how_much
|work_is |would_go_down |would_lik_an |wrap_$ |wrap_$_$ |wrap_and_in |yap_$ |yap_$_$ |year_$
|year_$_$ |year_not |yet_it |yet_it_is |yet_my |you_N:core |you_b |you_call |you_imagin_$ |you_let
|you_plan |you_r |you_seen_my |you_set |you_talk_in |you_turn |your_P_h
-11 #after1 #before1 @103.8| @109.1| @120.3| @121.1| @13.11| @13.3| @143.1| @146.3| @28.5|
@30.3| @32.13| @32.14| @33.5| @39.4| @57.0| @64.7| @72.3| @75.0| DISH_DISH_has| DISH_DISH_i|
DISH_DISH_n| DISH_DISH|anymor DISH_P_is| DISH_am| DISH_and_what| DISH_and|they DISH_ar|don
DISH_ar|scrub DISH_as|w DISH_boil|for DISH_butter_mad| DISH_caught_and| DISH_cream|as DISH_did|not
DISH_do|i DISH_for_th| DISH_gon| DISH_gon|in DISH_has_com| DISH_has_not| DISH_hav|gon DISH_how_much|
DISH_in_this| DISH_is|a DISH_is|assembl DISH_is|mad DISH_i|hav DISH_i|put DISH_load|her DISH_no_n|
DISH_no_th| DISH_not_even| DISH_not_ready| DISH_out_of| DISH_out_th| DISH_powder|in DISH_sinc|
DISH_sinc|Nclock DISH_so_i| DISH_so|do DISH_so|it DISH_start|now DISH_tak| DISH_that|is DISH_this_very|
DISH_this_year| DISH_w_will| DISH_want|a DISH_went|in DISH_whatever_you| DISH_will_b| DISH_will|do
DISH|Nduration_$ DISH|all_up DISH|another_Nduration DISH|ar_away DISH|ar_off DISH|boil_for
DISH|butter_all DISH|butter_and DISH|caught_and DISH|cream_is DISH|crust DISH|do_$ DISH|go_on
DISH|hav DISH|in_Nclock DISH|in_now DISH|into DISH|into_th DISH|is DISH|is_under DISH|it_on
DISH|mad DISH|n_mor DISH|on_th DISH|our_on DISH|peel_every DISH|plenty DISH|ready_they DISH|split_$
DISH|this_year DISH|timer_they DISH|to_roast DISH|up_$ DISH|w_lik DISH|want_another DISH|went_on
DISH|whil_i N:core_about|Nduration N:core_and|N:core N:core_and|is N:core_and|then N:core_at_th|
N:core_has_not| N:core_has|not N:core_i_want| N:core_is|it N:core_is|that N:core_i|hav N:core_i|misread
N:core_last_i| N:core_let| N:core_let|m N:core_my|P N:core_not|N:some N:core_or|N:core N:core_rather_than|
N:core_under_th| N:core_whil_i| N:core_will|ya N:core_with|th N:core_year| N:core|ha N:core|i_will
N:core|insid_$ N:core|no N:core|now_and N:core|on_th N:core|so N:core|tell N:core|whil_it N:core|year_old
N:few_P_is| N:few_P|and N:few_THING_no| N:few_U_is| N:few_adult_and| N:few_and_it| N:few_bon_N:few|
N:few_bon_it| N:few_burner_on| N:few_can|not N:few_confirm_com| N:few_grown| N:few_guest|is
N:few_h_is| N:few_less|for N:few_month|along N:few_mor_for| N:few_mor_peopl| N:few_mor_th|
N:few_nam_off| N:few_nam| N:few_off_th| N:few_of| N:few_of|our N:few_or|Nclock N:few_out_of|
N:few_plac|and N:few_r_on| N:few_rather_than| N:few_r|work N:few_should_i| N:few_surpris|visitor
N:few_they_hav| N:few_they|ar N:few_wrong|THING N:few|P_so N:few|P_will N:few|adult_N:few N:few|guest_less
N:few|i_think N:few|mor_guest N:few|niec N:few|niec_volunteer N:few|nobody_is N:few|person_is
N:few|rib_and N:few|sharp_$ N:few|timer_of N:few|to_flip N:few|to_giv N:few|to_play N:few|what_happen
N:oven_P| N:oven_about_Nduration| N:oven_about| N:oven_about|Nduration N:oven_alway| N:oven_alway|N:some
N:oven_at|N:oven N:oven_for_th| N:oven_for|a N:oven_how_long| N:oven_i|am N:oven_mor| N:oven_or|N:oven
N:oven_wait| N:oven_when| N:oven|feet_what N:oven|for_th N:oven|up N:oven|up_to N:some_DISH|peel
N:some_i_am| N:some_i|am N:some_i|said N:some_lat|with N:some_not|N:some N:some_off|th N:some_of|
N:some_on_th| N:some|for_dinner N:some|i_said N:some|if N:some|if_that Nclock_N:core| Nclock_after_th|
Nclock_as| Nclock_for_th| Nclock_i_hav| Nclock_in|th Nclock_it|is Nclock_i|hav Nclock_last|
Nclock_meal| Nclock_sam_as| Nclock_w_ar| Nclock_what_is| Nclock_would_it| Nclock_would| Nclock_w|want
Nclock|sam Nclock|sam_as Nclock|w Ndate_in_th| Ndate_night_at| Ndegrees:core_insid_i| Ndegrees:core_it|
Ndegrees:few|too_low Ndegrees:oven_in| Ndegrees:oven_in|fahrenheit Ndegrees:some_under_what|
Ndegrees:some|cooler Ndegrees:some|cooler_than Ndegrees:some|hot_$ Nduration_N:few|th Nduration_about_th|
Nduration_ago_ther| Nduration_and_a| Nduration_and|how Nduration_and|i Nduration_and|it Nduration_behind_what|
Nduration_diaper| Nduration_diaper|chang Nduration_earlier_if| Nduration_for_th| Nduration_from|
Nduration_giv| Nduration_h|is Nduration_it|is Nduration_i|hav Nduration_lat_get| Nduration_later_do|
Nduration_later_would| Nduration_left_on| Nduration_not|N:some Nduration_sooner_P| Nduration_so|far
Nduration_so|now Nduration_steep_th| Nduration_steep| Nduration_steep|th Nduration_th_P| Nduration_that_is|
Nduration_ther_is| Nduration_ther|is Nduration_timer_can| Nduration_to|dinner Nduration_what_do|
Nduration_whil|i Nduration_would| Nduration|N:few Nduration|ago_DISH Nduration|ago_it Nduration|befor_it
Nduration|befor_th Nduration|behind_what Nduration|behind_with Nduration|earlier_if Nduration|for_th
Nduration|lat_and Nduration|lat_with Nduration|later_P Nduration|later_th Nduration|of_delay
Nduration|pet Nduration|sinc_$ Nduration|start Nduration|timer_and Nduration|timer_anymor Nduration|to_dinner
Ngas-mark_it|is Nweight_and_i| Nweight_and|it Nweight_i|had Nweight_i|hav Nweight_leg_of| Nweight_of_rib|
Nweight_on_N:few| Nweight_on|th Nweight_still_U| Nweight|all Nweight|forerib_N:few Nweight|forerib_on
Nweight|i_had Nweight|of_top Nweight|on_N:few P_alway|did P_and_th| P_ar_eat| P_ar|starv P_br|
P_can|i P_don| P_eat| P_eat|N:few P_els|is P_gav_m| P_has|been P_in_th| P_is_allergic| P_is_chok|
P_is|eat P_i|hav P_jim| P_jo| P_let| P_n_feed| P_noth|in P_on_th| P_open_th| P_rang|h P_slip|
P_so_plus| P_so|N:few P_swear_by| P_text_Nduration| P_that|is P_with_P| P|down_back P|from_practic
P|get P|has_com P|help_m P|i_will P|in_belly P|insist P|is_$ P|is_com P|is_help P|is_hurt P|is_on
P|is_plus P|is_shown P|is_tak P|n_feed P|ottolin P|ottolin_is P|sleep_$ P|will_hav THING_N:core_at|
THING_N:few|high THING_Ndate_for| THING_Ndegrees:few|high THING_Ndegrees:few|under THING_THING_and|
THING_THING_i| THING_THING_trim| THING_THING|anywher THING_THING|i THING_THING|over THING_THING|sorry
THING_U_i| THING_alarm| THING_alarm|i THING_alway_say| THING_and_th| THING_and|my THING_and|what
THING_at|N:few THING_blu_enamel| THING_cam_out| THING_can_not| THING_caught|light THING_cub|
THING_do|i THING_fell| THING_floor_after| THING_half|THING THING_in_and| THING_in_a| THING_in|this
THING_is_for| THING_is_giv| THING_is_go| THING_is|act THING_is|back THING_is|broken THING_is|insid
THING_is|rest THING_is|still THING_it_and| THING_last_night| THING_leg|with THING_my_P| THING_off|
THING_of|roast THING_on_a| THING_on|th THING_out|of THING_put| THING_reckon| THING_should_b|
THING_show|Ndegrees:few THING_sinc|Nduration THING_smok|com THING_stuck| THING_th_P| THING_that_is|
THING_they_hav| THING_till| THING_to_b| THING_wer| THING_whatever| THING_whatever|you THING_when|it
THING_will_not| THING_will_th| THING_with|a THING|Ndate_for THING|THING_for THING|THING_on
THING|THING_to THING|U_is THING|at_Ndegrees:core THING|bag_$ THING|cam THING|caught_light THING|do_metric
THING|floor_after THING|gaug THING|gaug_must THING|hand THING|hang_on THING|has_fallen THING|is_$
THING|is_at THING|is_beep THING|is_caught THING|is_rest THING|is_stay THING|it_and THING|last_night
THING|leg_Nweight THING|lover THING|lover_com THING|mak THING|of_th THING|of_water THING|on_hom
THING|on_th THING|over_a THING|over_th THING|pan_is THING|per THING|right_now THING|show_Ndegrees:few
THING|without_DISH U_ag|N:few U_and_DISH| U_and_U| U_and_i| U_do_i| U_everyth| U_had_to| U_hav|flu
U_is_allergic| U_is_her| U_is|expect U_is|off U_it_in| U_i|hav U_i|should U_i|will U_nip| U_nip|and
U_no_th| U_of|it U_or_lid| U_oven_is| U_oven|is U_over_th| U_they|ar U_th|whol U_want| U|DISH_ar
U|eat_halal U|froz U|has_com U|if U|not_bleed U|or_lid U|this U|with_th ^_DISH_ar| ^_DISH_gon|
^_DISH_has| ^_DISH|went ^_N:core_it| ^_N:few_and| ^_N:few|adult ^_N:few|mor ^_N:few|with ^_N:some_on|
^_Ndate_at| ^_Nduration|befor ^_Nweight_near| ^_Nweight_of| ^_P_can| ^_P_it| ^_P_left| ^_P_lik|
^_P| ^_P|rang ^_P|vot ^_THING_ar| ^_THING_i| ^_THING|gav ^_U_ther| ^_U|i ^_U|or ^_U|th ^_^_P|
^_^_alarm| ^_^_bang| ^_^_beast| ^_^_ben| ^_^_br| ^_^_chuck| ^_^_current| ^_^_finish| ^_^_freez|
^_^_generator| ^_^_gi| ^_^_greas| ^_^_half| ^_^_hey| ^_^_hous| ^_^_how| ^_^_if| ^_^_jess| ^_^_jud|
^_^_kevin| ^_^_lay| ^_^_leav| ^_^_morag| ^_^_near| ^_^_needl| ^_^_nell| ^_^_nowher| ^_^_of|
^_^_peek| ^_^_power| ^_^_roll| ^_^_sack| ^_^_scrub| ^_^_should| ^_^_slid| ^_^_snow| ^_^_they|
^_^_turn| ^_^_walk| ^_^_wher| ^_^_win| ^_add_Nduration| ^_add|a ^_after|th ^_aim_to| ^_alarm|
^_all_guest| ^_at_what| ^_away_till| ^_a|Nweight ^_bang| ^_beast| ^_ben| ^_bin_th| ^_bottom_of|
^_br| ^_can|my ^_chang_to| ^_check_th| ^_chuck_a| ^_chuck| ^_clear|th ^_company_is| ^_could_dinner|
^_current_has| ^_current| ^_da_is| ^_da|is ^_did|i ^_dinner|Nduration ^_dinner|in ^_display_is|
^_do|th ^_drop_her| ^_fat|trim ^_finish| ^_flam_in| ^_for_my| ^_forget_i| ^_forget|i ^_for|my
^_found|th ^_freez| ^_gas|is ^_generator| ^_generator|kick ^_get|rid ^_gi| ^_greas| ^_guest|hav
^_half| ^_hey| ^_hous| ^_how_ar| ^_how_should| ^_how_to| ^_how| ^_how|com ^_how|soon ^_i_drop|
^_i_remov| ^_i_weigh| ^_i_will| ^_if_w| ^_if| ^_if|w ^_ill_b| ^_in_a| ^_in|it ^_is|N:oven ^_is|all
^_it_has| ^_it_would| ^_it|hit ^_i|could ^_i|drop ^_i|forgot ^_i|got ^_i|grab ^_i|meant ^_i|put
^_jess| ^_jud| ^_kevin| ^_kindly|remind ^_knock_th| ^_lay| ^_leav_it| ^_leav_th| ^_leav| ^_littl|oven
^_lost_my| ^_m_oven| ^_mak_a| ^_mak_supper| ^_mind_your| ^_morag| ^_morag|is ^_mov_it| ^_my_finger|
^_near| ^_needl| ^_nell| ^_next_week| ^_next|week ^_no_i| ^_no_still| ^_no_w| ^_now_i| ^_now_th|
^_nowher| ^_nowher|near ^_nudg_m| ^_nudg_th| ^_of| ^_ok_it| ^_on_sid| ^_on_th| ^_on|second
^_our_P| ^_our_kev| ^_oven_THING| ^_oven_door| ^_oven_down| ^_oven|run ^_party_of| ^_pass|th
^_paus_for| ^_peek| ^_peopl|ar ^_pink|in ^_pop_next| ^_power| ^_power|cut ^_preheat_to| ^_pretend_i|
^_priya_is| ^_pull_for| ^_pull_th| ^_put_m| ^_put_that| ^_put|Nduration ^_reckon_i| ^_right_that|
^_roll_went| ^_roll| ^_sack_off| ^_sack| ^_sam_temperatur| ^_sam|is ^_sam|temperatur ^_say_that|
^_say|when ^_scrap_th| ^_scrub| ^_second|on ^_set_m| ^_shall|i ^_should_th| ^_should| ^_should|th
^_shov_dinner| ^_shov_th| ^_shut_th| ^_slid| ^_slid|th ^_slow|go ^_snow| ^_so_my| ^_sorry_i|
^_still|hav ^_stop|talk ^_stuck_th| ^_stuck|it ^_sur_i| ^_switch_th| ^_target|cor ^_th_vet|
^_their|N:few ^_they_n| ^_they| ^_throw_in| ^_th|P ^_th|babysitter ^_th|bon ^_th|doctor ^_th|electricity
^_th|first ^_th|roast ^_th|roll ^_took_th| ^_top|oven ^_turn| ^_up|to ^_us_th| ^_vegan|at ^_w_mak|
^_w_put| ^_w_shall| ^_w_went| ^_w_will| ^_walk| ^_what_a| ^_what_happen| ^_what_i| ^_what_must|
^_what_you| ^_what|all ^_what|can ^_what|did ^_when_will| ^_when|can ^_wher_did| ^_wher_exactly|
^_wher_is| ^_wher| ^_whol_THING| ^_why_it| ^_why_th| ^_why|did ^_win| ^_wish|i ^_with_that|
^_with_th| ^_w|eat ^_w|tak ^_yes_so| ^_yes|that a_DISH_instead| a_Nweight|rib a_THING_for|
a_THING|over a_bag| a_bag|of a_bell|at a_bit|cold a_boneless|THING a_dat_so| a_deep| a_few|DISH
a_good_N:some| a_good|N:some a_greas| a_greas|fir a_nic|bit a_no|show a_power|cut a_right|way
a_r|win a_shellfish|allergy a_sirloin| a_sirloin|joint a_slow|chopper a_start_on| a_timer_of|
a_we|bit a_whol|THING about_Nduration|ago about_my|oven accord_to_th| across_th|THING add_Nduration_to|
add_a|DISH adult_and| after_all|so after_com| after_th|rest after_w|start afternoon_shop_is|
after|a_tumbl after|all_that after|com after|hit after|hit_N:core after|th_nut ag_to| again_and|it
again|from_scratch again|look_N:core ago_it_was| ago_ther| ago_whil_i| ago|ther_in ag|N:few_good
ag|ago_$ ag|and aim|for_a aim|to ajar_all| ajar_all|th ajar_for| alarm_clock| alarm_clock|on
alarm_for|Nduration alarm_is|go alarm|clock alarm|clock_on alarm|i_turn alcohol_for_mrs| all_THING_and|
all_guest_ar| all_in_coat| all_in|now all_of|it all_right|sod all_sort_on| all_th_guest| allergic|to_nut
allergy_for| all|THING_th all|behind all|right_to all|so already|got_DISH already|i_mad already|so
alway_say|N:few alway|N:some_over alway|did am_Nduration|behind am_a_good| am_a_slow| am_all|behind
am_away|out am_bin_th| am_chas| am_chas|my am_from| am_head| am_i_poison| am_i|pull am_i|suppos
am_lagg_by| am_leav| am_look| am_look|at am_new|to am_nip| am_not_go| am_not|mak am_off_down|
am_pop| am_pull| am_skip_th| am_tak_it| am_tak| amount_of| am|com am|i_hav am|in am|nip_out
am|out_of am|run_a am|so_behind am|sorry_to am|talk_to am|well_behind an_DISH| an_THING_out|
an_THING|left an_U| an_alarm|for an_extra_N:few| an_inch| and_DISH_for| and_DISH|all and_DISH|too
and_N:few|peopl and_ar_ey| and_cut|so and_do_th| and_everyth|in and_flam_behind| and_flam|behind
and_giv_us| and_guest|ar and_h_can| and_h_will| and_hav|not and_his|P and_hold_dinner| and_how|THING
and_how|do and_how|pink and_i_n| and_if|you and_in| and_is_not| and_is_th| and_it|com and_it|was
and_it|will and_i|n and_let|m and_let|them and_mak_it| and_nobody_is| and_now_it| and_ounc|for
and_pet|ar and_pound_and| and_scrap| and_shout| and_shout|when and_skip_th| and_slic| and_s|
and_s|out and_th_joint| and_th_temperatur| and_that|is and_that|was and_then|it and_ther_ar|
and_they_will| and_th|lik and_th|roll and_ti_back| and_took| and_turn_it| and_what| and_when_is|
and_when_it| and_who_is| and_why|do and_will|not and_would| and_yell|at and|N:core_$ and|N:few_P
and|N:few_oven and|a_U and|can_not and|don_with and|dust and|fahrenheit and|fahrenheit_$ and|flam
and|h_can and|h_go and|him and|if_you and|pink and|slow and|stuff and|th_shop and|th_whol and|they_will
and|w_sit another_Nduration_befor| another_few| another_few|minut any_U|still any_idea|when
any_sav| any_way_THING| anyth_i|should anyth_pink| anyth|on anyth|underdon anyth|yet any|pink
an|even ar_Nduration|off ar_THING_on| ar_all_sit| ar_already|com ar_break| ar_break|up ar_clean|
ar_clean|out ar_cover|in ar_ey_th| ar_ey| ar_ey|th ar_feed_th| ar_metric| ar_metric|peopl ar_miss|
ar_miss|th ar_serv| ar_sit_at| ar_still|raw ar_ston| ar_ston|cold ar_stuck|in ar_up_and| ar_up|and
arm_is_burn| arm_with| arm_with|th arriv_from| ar|N:few_cook ar|b ar|back_on ar|do_th ar|early
ar|french ar|jain ar|out ar|out_now ar|out_of ar|scrub ar|sit_at ar|th_DISH ar|w_talk ar|wrong_i
as_it|is as_long_as| as_sh| ask|about ask|could ask|could_it ask|how_long ask|m_$ as|a_THING
as|alway as|far as|far_as as|if_i as|instruct at_N:core_on| at_N:core_or| at_N:core_th| at_N:core_would|
at_N:core|and at_N:few_or| at_N:few|and at_N:few|nobody at_N:oven_for| at_N:oven|how at_N:some_so|
at_Nclock_in| at_Nclock|it at_a|tim at_either_end| at_my|P at_onc_i| at_th|ars at_th|pub at_th|school
at_th|shop at|N:core_THING at|N:core_so at|N:few_P at|N:few_it at|N:oven_fan at|N:oven_for
at|N:oven_how at|N:oven_i at|N:oven_sharp at|Nclock_$ at|Nclock_P at|Nclock_instead at|Nclock_then
at|least_Nduration at|right at|som at|th_back at|th_bottom at|th_end at|th_school at|this_heat
at|with at|without away|for_Nduration away|out_to away|to_get a|N:few_rib a|Nduration_warn
a|THING_over a|biscuit a|bit_off a|board a|cold a|crim a|cut a|dat a|drink a|fresh a|frog a|good_Nduration
a|li a|lot a|new_THING a|nudg_at a|nudg_in a|party a|plan a|plan_b a|proper_THING a|roast_for
a|sec a|shout_in a|topsid a|treat a|we_whil b_at_th| b_by|th b_din_at| b_din| b_din|at b_do|with
b_f_at| b_f_by| b_faff_with| b_for|th b_her_till| b_if| b_insid| b_insid|when b_ready_in| b_ready|
b_spoon|th b_worri| back_Nduration_and| back_is|bad back_thank| back_to|N:oven bast|step bast|step_my
bath_Nduration_i| beast|out becom_very| been_at|th been_blad| been_blad|tenderis been_on_N:oven|
been_on|N:oven been_on|th been|N:few been|THING been|cut been|cut_off beep_it| beep_it|is beep|after
beep|after_Nduration befor_th_next| befor_w|eat befor_w|sit befor| befor|N:few_so befor|b behind_Nduration|
behind_schedul_and| behind_so_serv| behind_what| behind|it_is behind|th_cooker believ_this|
believ_this|THING best_way| best_way|to beth| between_a| bit_of|crackl bit|again_$ bit|cold
bit|cold_Ndegrees:few blam_th_in| blast_it|first blast|it_first bless| blu_enamel| blu_enamel|N:few
board_onto_th| bob_is|your boil_for_th| boil_for| boil_for|th boil_water|down boil|for_th bon_ar|french
bon_skip_th| boneless|THING boneless|THING_THING bon|Nweight_and born_in| born_in|a bor| bother_with_th|
bother_with|DISH bother|with_th both|end bottl| bottl|is bottom_of| bottom_of|th bought|it
br_him|out br_my_P| br_my| brb|N:some break_i_am| breaker_trip| breaker_trip|and breaker|trip_and
break|i break|i_am bring_his| bring|her bring|her_P br|th_DISH build_i_mean| build_is| build_is|without
build|is bum|on_seat burn_in| burn_in|th burn_th_finger| burn_th|DISH burner_on| burnt_at_th|
burn|by_hot burn|th business_with_th| business_with| business_with|th butter_Nduration| butter_Nduration|and
butter_in_th| butter_mad|and butter_on|th butter_so|no buy_for| buy_m| buy_m|that buy|for buzz|m_at
by_mistak_i| by_mistak| by_th_U| by|N:oven_in by|for_th by|hour by|itself by|th_stov b| b|N:few_$
b|N:few_U b|an b|at_Nclock b|bust b|don_$ b|honest_with b|in b|join b|quiet_$ b|r_insid b|smok
b|spoon b|to call_out| call_that| call|it_$ can_i_b| can_it_sit| can_i|hav can_i|us can_not|b
can_stand| can_th_leftover| can_they| can_w|do cancel|that_timer can|i_se can|not_get can|smell
can|you_credit can|you_hold cap_scor| cap_scor|in careful|with_her carv|and car|pull_up catch|my
catch|my_breath cater_for| cater_for|N:some caught_and| caught_and|it caught|light_on caught|on
caught|on_th cayenn_and_DISH| celsius|my centr_it| centr_it|is centr|mak centr|mak_N:core chair_and|
chang_th_fus| chang|of charg_of|th charg|of chas|my chas|my_tail check_tell| check_tell|m check_th|THING
check|th_DISH chew|a chin| chop_for| chuck_an_extra| chuck_corn| chuck_corn|on chuck|som chuck|th_DISH
clear_all| clear_all|th clear|it_all clock_on|th clock|is_tick clock|on_Nduration clos_th|door
cold_THING| cold_in|th cold_on|us collect_my| collect|th colour|of com_THING|Ndate com_off|
com_ready| com_ready|or com_up|after com_with_Nduration| company|is com|after_this com|it_has
com|last com|last_for com|out_at com|out_th condo| confirm_com| confirm_com|so conventional|heat
conventional|oven conventional|oven_no cooker_is_Ndegrees:some| cooker_is|Ndegrees:some cooker|work_now
cook|to_death cooler_than| cooler|than_th corn|on_th cor|N:core could_it_b| could_it|b could_w_hav|
could_you|giv could_you|tim could|dinner could|go could|not_find counter_it_is| cours|for_Nclock
cousin_ar| cover_loosely|in cover|in_butter cover|it_$ cover|it_with crack| crank|th crank|th_oven
cream_is_not| cream_on_th| cream_w| cream|as cream|as_well crept_up_to| crept| crept|up crew_today_m|
crew|today crew|today_m cross|off crumbl_on| crumbl_on|th currant| currant|jelly customer_at_th|
cut_into| cut_off| cut_th|DISH cut|it_open cut|so cut|so_they cylinder|is cylinder|is_empty
d_dong_N:core| dangerous| dat_so| day|N:few_tim day|befor degre|celsius delay|dinner_by delet|th_last
dial_THING| diall|it diaper|chang did_i_tell| did_not|hear did|not_ris dinner_Nduration|later
dinner_back|N:some dinner_by|Nduration dinner_b|Nduration dinner_mov| dinner_was| dinner|forward_Nduration
dinner|happen dinner|is_now display_is|blank do_DISH|too do_a_THING| do_about|th do_a|THING
do_i_put| do_i_still| do_i_turn| do_it_com| do_it_for| do_it_tak| do_it|com do_it|for do_i|get
do_i|n do_leftover| do_not_find| do_not_keep| do_not_look| do_not_plan| do_not|support do_that_wreck|
do_this_for| do_w_n| do_you|know don_after| don_and_i| don_and|dust don_by|N:few don_how| don_with_th|
dong_N:core| dong_N:core|on don|all don|her_$ door_ajar_all| door_did| door_has| door_on|th
doorbell_they_ar| door|for_Nduration door|has_been door|was_ajar down_for|medium down_is|N:few
down_lik| down_on_th| down_to_a| down|to_N:few do|DISH_too do|a_DISH do|a_THING do|i_get do|i_know
do|i_slic do|i_tak do|it_$ do|it_com do|it_do do|it_hav do|it_tak do|it_th do|not_count do|not_look
do|not_mind do|not_talk do|not_w do|water do|with_th do|you_understand drop_every_tim| drop_th_bast|
drop| drop|their drop|their_timer earlier_if| earlier|they early|today_N:few ear| eat_Nduration|later
eat_Nduration|mor eat_by|N:few eat_i| eat|Nduration_earlier eat|a_bit eat|early_today eat|th
eat|without either_end| either_end|keep electric_is|back electricity|back electricity|back_after
electricity|is_on electric|is_back electric|is_off element_has| els|could_i end_say| end_say|N:core
end|keep end|keep_her end|not enough_i| even_say_to| everyth_P_is| everyth_in|fahrenheit everyth_tak|
everyth|and everyth|by everyth|by_N:some everyth|is_happen everywher_th_THING| every|Nduration_$
explain|how_to extra_N:few| extra_for|th extra|Nduration_on ey_th|DISH ey|th_DISH ezra_left|
ezra_left|th ezra|left ezra|left_th f_by| faff|with_th fahrenheit_and_pound| fahrenheit_i|do
family_is_run| fan_is|off fancy| fan|oven_$ far|ahead far|ahead_$ far|behind fat_was| fat_was|smok
fat|is_smok fat|trim fat|was fat|was_smok feed_at|Nclock feel|lik feet_what_is| fell_on| few|DISH
find_a_THING| finger|off_with finish_i| finish_scrap_thos| finish_your| finish|and_it fir_tell_quickly|
fir_to| fir_to|th first_N:few| fir|on_r fir|to flam_behind| flam_behind|th flam|behind flam|behind_th
flat| flip_th|breaker flip| floor_after| floor_after|a foggiest| folk_go_to| for_DISH_load|
for_DISH|sinc for_N:few_and| for_N:few_surpris| for_Nduration_diaper| for_P_who| for_all|this
for_a|peek for_a|we for_m_U| for_m_and| for_mrs| for_mrs|U for_r|win for_th|church for_th|drip
for_th|light for_th|oven for_tonight_at| forerib|joint forerib|joint_Nweight forever_U_th|
forget_th|DISH forget_what_you| forget_what|you forgotten| forward_N:some|if forward_by|Nduration
for|DISH_so for|N:few_mor for|N:few_person for|Nclock_on for|Nduration_is for|Nduration_th
for|a_THING for|another for|peel for|salt for|th_lot for|th_roast freez|what freez|what_is
fresh_out|of from_N:oven|up from_shrimp|so from|N:core_to from|THING from|now from|th_shop
from|work full_i| fus_has| fus_has|blown fus|and fus|and_th f|cattl f|cattl_gon gain|Ndegrees:few_in
gang_has| gang_has|land gary_is| gas_has| gas|has gav_m_N:few| gav_m_a| generator_kick| generator_kick|in
get_past| get_th|U get_to_th| get|N:core_$ get|cross get|ic get|in_th get|off get|start get|start_myself
get|th_DISH get|th_THING get|th_U get|ther giv_her_anyth| giv_her|anyth giv_it_another| giv_th|DISH
giv_us|a giv|th_DISH giv|us_Nduration glass_THING_hop| glov_is_on| go_giv_her| go_in_th| go_near|
go_near|shellfish go_ok_or| go_ok|or go_past|N:core go_to_help| go_to_se| go_upstair| go_upstair|to
god_bless|them god|bless_them golden|as gon_in_fat| gon_i| gon_up|to gon|off_so gon|walkabout_$
good_N:some| good_to|go good_with_a| good_with| good|N:some good|THING_$ good|shap good|to_go
got_Nduration| got_a_new| got_electricity| got_electricity|back got_guest| got_guest|to got_it|
got_it|out got_to_go| got_to|tak got|N:few_out got|burn go|driv go|driv_th go|giv_her go|it_with
go|off_again go|off_and go|on_$ go|to_U go|to_tak go|upstair_to grab_th_pan| granddad_is| greas_is|
great|P_is green_DISH_ar| green_DISH_on| green_DISH|our green|DISH_U green|DISH_our grey_as|
grey_as|a ground_so| ground_so|no grown|ups guest_ar_run| guest_hav|com guest_it| guest_they|
guest|com_Nduration guest|hav_arriv guest|hav_walk guest|is_already guest|rang_tyr guest|to_greet
h_do|not h_is|help h_is|out h_is|vegetarian h_will|not had_Nduration| had_a_second| had_my|
had_their| had|N:few had|THING had|their half_of| half|now hana| handl_cam| handl_cam|off handl_my_palm|
handl|it_was hang_on|i happen|at_onc happen|if_i has_a_shellfish| has_been_at| has_been_blad|
has_com_for| has_di_on| has_gon_i| has_gon_ston| has_had_a| has_had_it| has_had|it has_not|budg
has_th|THING has_touch|N:core has|blown has|com_down has|drop_out has|fallen has|got_no has|had
has|reach has|to hat|on haul_it| haul_it|out haul_th_beast| haul_th_roast| hav_a_boneless|
hav_a_leave-in| hav_a_li| hav_ask|could hav_a|N:core hav_been_don| hav_been_on| hav_burnt|my
hav_caught|on hav_drop_th| hav_got_to| hav_got|it hav_his_at| hav_knock| hav_lost|a hav_lost|electricity
hav_not_pull| hav_not|a hav_not|gon hav_not|so hav_not|th hav_not|touch hav_peel| hav_put_it|
hav_put|too hav_reach|N:core hav_remov_th| hav_set|it hav_th|N:few hav_to_hav| hav_to_walk|
hav_walk|N:few hav_with| hav_w|got hav|a_kip hav|been_at hav|cut_my hav|finish_th hav|flu hav|got_power
hav|it_$ hav|it_later hav|lost_th hav|mad_th hav|not_even hav|not_start hav|noth_lik hav|now
hav|overshot hav|overshot_it hav|peel hav|put_too hav|remov hav|salt_it hav|their hav|them
hav|walk head_out_for| head|out hear| heat_do_th| heat_from| heat_in|half heat_i|hav heat_th_oven|
heat|all heat|all_th heat|up_to help_from|Nclock help_with_th| helper_U_ag| help|m_in help|with_th
her_N:few|still her_Nduration_ago| her_Nduration_behind| her_anyth| her_anyth|underdon her_lik|
her_new| her_rar_cold| her|anyth her|anyth_underdon her|from her|now her|oven hey_w| hey_w|hav
high_in_boil| himself_left| himself_left|th him|out_in his_at|N:few his_medium|rar his|nam
his|toast hit_m_with| hit|N:core_centr hit|th_bon hob_has|N:few hoick| hold_on_THING| holler|at_N:core
holler|at_m holler|when_it honest|answer hop_in_th| hot|by_N:some hot|for_th hot|oven_first
hour_by| hour_by|hour how_U_do| how_U| how_U|do how_about| how_am| how_am|i how_ar_w| how_com_it|
how_go| how_go|it how_hot|for how_is|everyth how_is|it how_is|your how_it|is how_i|mak how_long_i|
how_long| how_many_day| how_many_degre| how_many_gram| how_many|pound how_much|mor how_much|water
how_must_i| how_must| how_thick|a how_thick|do how_warm_should| how_was| how|com_th how|do_th
how|is_sh how|long_can how|long_do how|long_i how|long_it how|long_mor how|long_will how|much_butter
how|on how|on_earth how|pink_will how|thick_do how|to hurry|it_along h|is h|mak h|say_it h|want
i_am_chas| i_am_from| i_am_leav| i_am_look| i_am_pop| i_am_pull| i_am_tak| i_am|com i_am|i
i_am|in i_ask|for i_can_do| i_can|carv i_carv|it i_cook_at| i_crank| i_cut|it i_do|now i_drop_th|
i_drop|th i_fetch|P i_go_and| i_grab_th| i_hat| i_hav_been| i_hav_had| i_hav_knock| i_hav_walk|
i_hav| i_hav|DISH i_hav|a i_hav|mad i_hav|remov i_kept| i_left|it i_misread_it| i_never| i_n|Nduration
i_ought_to| i_overcook|it i_poison| i_poison|P i_pull_th| i_put_my| i_rest| i_rest|it i_said|N:oven
i_se_th| i_set_th| i_slic|my i_slip|and i_stick_th| i_stick| i_still|n i_stuck|th i_think|
i_told|him i_turn| i_was_read| i_wash_th| i_wash|my i_was|not i_will_giv| i_will_se| i_will|get
i_will|go i_wonder|how i_would_b| i_would|say i_wreck| ic|water_test idea|when idea|when_well
id|say if_it_cam| if_it|is if_i|hav if_i|tak if_nobody_is| if_that|matter if_this| if_this|is
if_you_n| if|dinner_was if|that_matter in_N:few|to in_Nduration_for| in_Nduration_so| in_Nduration_steep|
in_Nduration|that in_THING_and| in_U_and| in_U_w| in_and|i in_and|it in_as| in_coat| in_coat|on
in_fat_was| in_fat|was in_it|yet in_law_tak| in_law_want| in_law_will| in_law|do in_metric_so|
in_real| in_sinc|Nclock in_th_thickest| in_ther_th| in_th|THING in_th|car in_th|hot in_th|lower
in_th|pan in_th|shop in_too|long in_top|oven in_w| in_yet|th ingredient_do| insid_it|is insid_temperatur|
insid_when_i| insid|it instead|of_cream instead|of_dry instead|of_real instead|of_salt instead|of_th
into_th_hot| into|it into|my_palm invit|themselv in|N:some in|Nduration_ago in|Nduration_it
in|aid in|aid_of in|alongsid_$ in|green in|green_DISH in|half_now in|her_throat in|instead
in|instead_of in|it_and in|my_country in|th_basket in|th_fat in|th_icebox in|this_flat in|too_long
in|total_$ in|with_th in|yet_still is_N:core|not is_N:few|less is_N:oven|now is_N:some_in|
is_Nclock|and is_Ndegrees:oven_in| is_Nweight_i| is_THING|lover is_a_greas| is_a_no| is_a_we|
is_after_com| is_after|com is_after|hit is_an_Nweight| is_any_U| is_at|my is_bleed_and| is_bring_his|
is_bring|DISH is_bring|N:few is_bring|her is_burn_th| is_burn|by is_cark| is_cark|it is_conk|
is_conk|out is_dinner| is_driv|m is_du| is_flam|com is_get|cross is_go_to| is_go|in is_go|off
is_ground_so| is_half|a is_hav|his is_in_a| is_it_tim| is_it_you| is_it|don is_left| is_lik_a|
is_lik|a is_m_and| is_margarin| is_margarin|ok is_medium|well is_mind_th| is_not|any is_not|availabl
is_not|eat is_not|happen is_not|pound is_off_conventional| is_out_on| is_pain|too is_park|
is_point| is_put_th| is_put|th is_raw_as| is_ready_it| is_read| is_read|N:few is_run|bout is_sat|
is_set_to| is_smok|everywher is_sort_th| is_spread_up| is_stuck|on is_stuck|to is_tak_N:few|
is_taken_it| is_th_doorbell| is_th_old| is_th_story| is_th_trick| is_that|right is_that|saf
is_ther_in| is_ther|another is_throat|swell is_th|fan is_th|fat is_th|go is_th|next is_th|story
is_th|trick is_too|short is_touch|N:core is_tough_as| is_under|THING is_when|w is_whol_noth|
is_whol|noth is_wrap|and is|N:core_so is|N:few_less is|N:few_sharp is|N:oven_and is|N:oven_in
is|Ndegrees:some_cooler is|THING_in is|a_N:few is|a_P is|a_bon is|a_no is|act is|all_go is|all_too
is|allergic_to is|assembl is|back_on is|blank is|bring_a is|brought is|bust_so is|cancell is|cark
is|cark_it is|carv is|conk is|conk_out is|cook_to is|delay_minimum is|empty_oven is|european
is|everyth_all is|go_again is|good_$ is|hav_a is|hav_his is|her_now is|her_to is|hit_th is|it_N:some
is|it_U is|it_don is|it_tim is|loud is|not_for is|not_happen is|not_on is|not_tak is|on_N:core
is|on_N:oven is|out_th is|pack is|pass is|peel is|poorly is|pregnant is|rar_fin is|read_N:few
is|run_$ is|sh_cut is|show_m is|smell_incredibl is|sort_th is|stay is|th_doorbell is|th_situation
is|that_enough is|ther_for is|thin_as is|too_short is|went is|when_i is|without_light it_Nduration|ago
it_Nduration|later it_THING| it_against| it_against|th it_and|then it_at|th it_beep|after it_br_him|
it_b|when it_can_not| it_doon_ta| it_first_and| it_get_past| it_go_in| it_go_over| it_go_past|
it_has_com| it_has_touch| it_if|ther it_in_boil| it_in|boil it_in|ic it_is_jump| it_is_pain|
it_is_past| it_is_way| it_is|back it_is|jump it_is|loud it_is|now it_is|off it_is|on it_is|shap
it_is|smell it_m_in| it_mak_much| it_meant_to| it_medium_and| it_n_to| it_off_Nduration| it_off_with|
it_on_cours| it_onto_th| it_on|th it_out_for| it_said| it_sit|ther it_th_DISH| it_up_right|
it_was|a it_went_up| it_when| it_whil_i| it|a_tad it|along it|b_a it|back_Nduration it|back_a
it|back_to it|beep_after it|beep_so it|com_stuff it|from_heat it|has_com it|has_risen it|is_Nduration
it|is_a it|is_already it|is_bedlam it|is_driv it|is_dry it|is_for it|is_go it|is_our it|is_overcook
it|is_preheat it|is_raw it|is_shap it|is_th it|lumpy_$ it|medium_and it|now_$ it|out_$ it|out_befor
it|out_for it|rest_$ it|right_now it|th_night it|to_N:oven it|up_front it|was_on it|will_go
i|THING_th i|am_THING i|am_afraid i|am_chas i|am_do i|am_fre i|am_from i|am_gon i|am_i i|am_lost
i|am_mil i|am_not i|am_off i|am_out i|am_ready i|am_slow i|am_stand i|am_starv i|am_still i|am_stood
i|am_suppos i|am_tell i|am_th i|am_way i|am_well i|ask_th i|behind_or i|burn_th i|can_do i|count_wrong
i|do_next i|even i|fancy_do i|forgot_it i|freez_what i|gav_you i|hav_chang i|hav_finish i|hav_forgotten
i|hav_got i|hav_kept i|hav_lost i|hav_mad i|hav_never i|hav_said i|hav_shov i|hav_switch i|know_i
i|nap i|ought i|ought_to i|overcook_it i|press i|reckon_$ i|reset_it i|tak_th i|think_i i|think_in
i|told i|took_out i|touch i|wash_th i|will_carv i|would_P i|would_do i|would_lik i|would_sooner
jaysus| jaysus|th_pan jim| jo_is| job_don| joint_went_in| joint|slid_onto jo|cancell jo|cancell_so
jo|will jump_in_th| juniper_is| juniper| juniper|is keep_it_at| keep_it|down keep|an keep|an_THING
kept_for|DISH kept_pac| kept_pac|with kept|at kev|lik kill_that| kill_th| kill_th|timer kilo_is_not|
kindly_includ| kindly|remind_after kniv| knob| knock_it|down knock_on_th| knock_on|th knock|th_whol
know_how_to| know_what_i| know_when_w| know_wher| know|what_DISH kumara_on_th| lad_hav|land
lagg| laid| last_th_you| last|bit_again last|night_$ lat_as| lat_get|start lat_so|w lat_that|
lat_with_th| lat_with|th later_do| later_would| later|than_plan lat|they_said lat|with_everyth
law_ar_after| law_run_Nduration| law_tak| law_want| law_will| law|do lay|N:few_mor learn_about|my
leav_it|uncover leav_th_THING| leave-in| left_on|my left_on|th left_to| leftover| leftover|sit
leftover|sit_out left|to leg|with leg|with_th less|for less|for_dinner let_m|know let_us_skip|
let_us|aim let|him let|it_sit let|us_get li_down_for| lick_th|spoon lid_th_THING| lid|th lid|th_THING
lif_is_too| lif_is|too lift_th_joint| lift_th|THING lift|th_joint light_ar|back light_has_gon|
light|out_whol lik_a|frog lik_chew|a lik_his_medium| lik_your| lik_you|said lik|P_us lik|golf
lik|golf_ball lik|that lik|them list_for|th list|at list|at_all lit_it| liv_at_N:oven| liv|at_N:oven
li|down_wak load|her load|shedd_start lodger|had lodger|had_a long_as_it| long_as_you| long_has|it
long_to|go long|as_you long|do_th long|hav_you long|mor_$ look_after| look_in| look_lik|P look|at
loosely|in_tinfoil lost_my_sous| lost_th_thread| lost|electricity lover| lower_than| lowest|was
lowest|was_N:core luca_is| luca|is lucy_can| lucy_can|not lunch_Ndate_at| lunch_at_Nclock|
lunch_at|N:few m_N:few|for m_P_is| m_P|is m_a_bell| m_after| m_and_my| m_and_pet| m_down_for|
m_for|Nduration m_if_it| m_in|fahrenheit m_i|am m_onc|it m_otherwis_do| m_th_simpl| m_th|THING
m_th|next m_th|second m_till_it| m_till| m_twic|as m_up|when m_what_is| m_with|th mad_and_it|
mad|less mad|less_N:oven mad|peac mad|peac_put mak_it_beep| mak_it|a mak_it|beep mak_much|
mak_much|smok mak_m|a mak_room| mak_room|for mak_som_nois| mak_supper| mak_supper|Nduration
mak|noth mak|with man_is_run| man_is|Nduration many_day| many_degre_is| many_degre| many_gram|
many_gram|of many_minut|till many|pound margarin|ok marta| mass_back| mass_back|in mass|finish
mass|finish_at meant|to_b mean|th_oven medium_rar_what| medium_rar|ok menu_yet_so| messag_when_it|
messag_when|it metric_so|do metric|peopl metric|peopl_so middl_of|th middl_when|w middl|of_th
middl|shelf_THING mind|it minut_left_on| misread_it| miss_out_th| missus|and miss|th_THING
mistak_i| mob|is moira_is| month|along mor_no|less morag|is mor|ar_com mor|tim_it most_of|
mouth| much|THING_for much|i much|mor much|salt_in much|water much|water_for must_b|bust must_eat|Nduration
must_go| must_go|out must_i_do| must|hav_been my_P_brought| my_P_i| my_P_want| my_P|mak my_P|ottolin
my_THING_and| my_THING|gaug my_THING|say my_arm|on my_bad| my_finger|with my_oven_alway| my_oven|has
my_oven|will my_palm| my_slow| my_slow|on myself_so_drop| myself|think_$ my|P_b my|P_from my|P_never
my|U_is my|arm my|choic_$ my|fault my|finger my|god my|grandmother my|hous my|lot my|oven_li
my|plac my|wrist m|N:few_tim m|N:some m|down_Nduration m|how_th m|know m|missus_will m|option_$
m|plus_anselm m|th_timelin m|through m|together m|when_th n_a|nudg n_not|call n_th|Nduration
n_to_catch| n_to_com| n_to_run| n_to|catch n_to|eat na_DISH| nam_off_th| nam_off| nam_off|th
nary_an_THING| nary| nary|an nary|an_THING near_ready| near_to| near| near|brown near|shellfish
needl_is_point| neep_ar| new_th_THING| new|to_this next|door_to next|hour next|step_i nic|and_pink
nic|bit nic|bit_of nip_next| nip_next|door nip_out_for| nip|and nip|and_that nix|th_DISH no_DISH_after|
no_N:few|peopl no_U_th| no_bon|Nweight no_i_can| no_i|hav no_longer| no_mor_no| no_no_i| no_pink_for|
no_still| no_such| no_such|th no_th|green no_way_near| nobody_eat|them nobody_is|eat nobody|eat_them
nobody|is_du nobody|is_eat nois|at nois|at_N:core non_of|th not_N:few_i| not_a|drop not_b_by|
not_believ_this| not_bother|with not_carv|it not_com|after not_don_i| not_don_th| not_don_with|
not_eat|without not_find_th| not_go_near| not_got_a| not_go|giv not_in|yet not_keep| not_kept_pac|
not_mak|th not_past| not_plan| not_plan|N:few not_put|that not_rest|it not_right| not_th_foggiest|
not_ther|yet not_trust|this not_turn_it| not_us|it noth_in_it| noth_in| noth|cut noth|cut_off
noth|in_it not|N:few_i not|a_singl not|a_sprig not|availabl not|b_join not|believ_it not|bother
not|budg not|call_m not|do_this not|don_$ not|finish_yet not|hav_nut not|her_$ not|i_ask not|let_th
not|mak_th not|n_tell not|out_yet not|ready_yet not|support not|talk_for not|turn_on not|wait_$
now_i_hav| now_ready| now_ready|for now_that|is now_they|ar now_th|oven nowher_near_ready|
no|THING_pan no|THING_so no|n_for no|not_yet no|sear_N:few no|sign no|sign_of nudg| nudg|THING
nudg|THING_along number_am| number_am|i number_of| number|again number|do n|Nduration_they
n|another_Nduration n|for n|longer n|to n|to_check n|to_run of_N:core_on| of_a|th of_fahrenheit|
of_heat_at| of_it_and| of_plan_w| of_rib|roast of_smok_it| of_th_real| of_th_slic| of_that|yank
of_them_can| of_them_has| of_thos_wireless| of_th|roast off_and|it off_at_Nclock| off_conventional|
off_conventional|heat off_down| off_down|th off_in|N:few off_my_finger| off_out| off_so_it|
off_th|guest off_th|oven off_to_th| off_w_go| off|for_Nduration off|my_finger off|th_counter
off|th_guest of|DISH_now of|DISH_or of|THING_N:few of|THING_for of|all_th of|crackl of|cream
of|th_real of|th_slic of|us_U ok|for_th ok|so_N:core ok|so_i ok|to_eat on_N:few|peopl on_N:few|rib
on_N:oven_and| on_N:some_at| on_Ndegrees:oven| on_P_noth| on_P|is on_a_bit| on_all|sid on_cours|for
on_for_Nduration| on_got|N:core on_i_am| on_is_for| on_i|am on_our|whol on_paus| on_th_lowest|
on_th_roll| on_th_screen| on_their| on_th|counter on_th|instant-read on_th|leave-in on_th|lino
on_th|littl on_th|other on_th|platter on_th|rest on_th|second on_th|wall on_what_is| on_what|was
on_whil|i on_with|th onc_and| onto_th_oven| on|N:some_at on|a_second on|fir_and on|my_way on|th_Ndate
on|th_Ndegrees:oven on|th_day on|th_greas on|th_grocery on|th_plan on|th_th on|that_$ on|that_front
on|them_DISH on|whil_i on|your_own open_th|window open|th or_lid|th or_should| order_of| or|N:core_$
or|N:few_$ or|N:oven or|Nclock or|am or|am_i or|do_it or|so_$ or|thereabout other_half| otherwis_do|
otherwis_do|not ought|to_b ounc|for ounc|for_m our_lodger| our_lodger|had our|whol our|whol_street
out_Nduration|is out_and_it| out_and_on| out_from_shrimp| out_her|and out_i_do| out_i_was|
out_in_th| out_it|com out_of| out_of|this out_on_our| out_sh| out_th_sear| out_this|minut out_this|second
out_th|back out_th|other out_to_th| out_to|th out|at_N:oven out|her_$ out|of_N:few out|of_U
out|right out|th_sear out|what_do oven_Nduration_ago| oven_THING_say| oven_alway|run oven_b|on
oven_clock| oven_clock|is oven_door_and| oven_door_has| oven_door|is oven_door|was oven_down_to|
oven_for|Nduration oven_from| oven_has|been oven_in_th| oven_is|ston oven_off_Nduration| oven_off_and|
oven_on|N:some oven_run|Ndegrees:few oven_shelf| oven_sh| oven_will| oven|alway_run oven|door_hang
oven|down_Nduration oven|floor_$ oven|heat oven|is_alight oven|is_full oven|is_pack oven|run_a
oven|that_is oven|up_to over_N:core| over_to|N:core over_to|th overdon|it over|to_N:core pac|with_your
pain|too pain|too_much pal_as|anyth pan_my| pan_no| pan_what| panel_and| panick|and panick|and_took
pan|has pan|has_gon pan|is park_at|th park_th|car part_i| part_i|do pass_us_th| pass| pass|th_salt
pass|through past_N:core_without| past_N:core|without past_th_trim| past|N:core_i past|N:core_without
past|it_$ past|well_dry peanut| peel_and_cut| peel_a| peel|that pencil_in|green pencil|in_DISH
peopl|ar_start peopl|not per|pound pet|ar pet|ar_split pick|up_th piec_w_hav| pink_medium|
pink_so_well| pink|for_her pip|down_will plac_of|THING plac|and_th plan_on_N:few| plan_w|eat
plan|N:few_it platter_is| plat|at_th poison|P poison|P_$ pok_m|in pop_th|DISH pop|it postpon_th|
postpon| postpon|th pound_and| pour_th| power_is|back power| power|it power|it_went preheat_is|
preheat_to|N:some prepon_by| prepon_by|Nduration prepon| press_it| press_th| press|someth_or
priya_is_vegetarian| priya|is_vegetarian progress| progress|report prov_Nduration| pull_her|
pull_her|at pull_in_that| pull_it_this| pull_it|now pull_this| pull|it pull|it_now push| put_a|THING
put_it|on put_on_th| put_th_P| put_too_much| put_you_on| put|it_on put|lily put|lily_in put|th_joint
put|that_down put|too put|too_much put|us_down quantity_of|THING quantity|of quick_on_got|
quick_th|oven quickly|what quickly|what_to r_a| r_currant| r_currant|jelly r_on| ran_out| ran_out|of
ran|out_of ran|over rar_cold| rar_cold|in rar_h| rarer| rar|for_all reach|N:core_captain ready_Nduration|
ready_by|N:oven ready_for|th ready_to|go ready_when|you real_N:oven_alway| reckon_it_will|
reckon_th_oven| remov|it_from rest_Nduration_so| rest_Nduration| rest_long| rest_long|enough
rest_th|DISH restaurant| rest|ar_park rest|for_$ rest|it_for rest|yet revers|sear_th rib_for|
rib_with_N:few| rib_with|N:few rib|of_THING right|sod right|sod_it roast_DISH_hav| roast_DISH|n
roast_DISH|w roast_cam_out| roast_i_hav| roast_it|is roast_i|hav roast_without|roast roast|cam_out
roast|fell roast|fell_on rob_is_com| rock_up|already roll_ar|not roll_n_Nduration| roll|ar_in
roll|ar_still roll|ar_warm roll|cam roll|cam_out roll|went_in room_for|N:few room|with_a rop|in_th
roughly_when| roughly_when|can rubbish|i run_cold_by| run_hot| run_in| run_next| run_next|door
run_that| rundown| run|N:some_cold run|N:some_hot run|bout run|bout_Nduration run|cold run|to
r|insid r|or_THING r|win_$ sack_that_step| sack|that sack|that_step saf_to_DISH| saf_to_eat|
saf|to said_sh_would| said_what| said|th said|what saignant|is saignant|is_for salt_is|not
salt_it|all salt_them_DISH| salt_work_th| salt|per sam_as|alway sam_is| sam_is|help sat_them_down|
sat|down_all say_it|was say_i|am say_m|in say_to|th say|to_m scald_my_arm| scald_steam_whol|
scald| schedul_and|th schedul_green| schedul_green|DISH scor|in_diamond scrap_thos| scrap_thos|bon
scrap_th|bon scream|th screen_by_th| se_th_timelin| se_to_th| sear_com| sear_com|last sear|altogether
second_oven_is| second|it_touch sec|ago_$ sell_plat|at serv_buy_m| serv|N:few_later set_fir_to|
set_fir| set_fir|to set_th_alarm| set_th|oven set_to_N:oven| settl_on| settl|on set|at set|to_N:oven
se|to se|what sh_is_cook| sh_is_do| sh_is| sh_is|out sh_is|read sh_said|sh sh_will|do sh_will|not
shall_b_din| shall|b should_b|in should_b|ready should_do| should_th|THING should|know shout|at_th
shower|Nduration_top show|m_how shrimp|so shrimp|so_keep shut|up_$ sh|do_not sh|got_th sh|hav
sh|hit sh|hit_N:core sh|is_N:some sh|went sid_and|i sid_i| sign|up_for simpl_DISH_will| simpl|DISH
simpl|DISH_will sinc_it|is sinc_w| sinc|th_U siobhan|had siobhan|had_to sirloin_on|th sit_at_th|
sit_on_a| sit|at_N:core sit|up skip_that|bit skip|th_THING skip|th_butter slic_my| slic|th_tip
slic|went slid_off|th slip|and_hit slow_and| slow_on_th| slow_then_a| slow_today_Nduration|
slow|chopper slow|on slow|on_th small|oven_set smell|a smell|amaz smok_it_is| smok_it|is smok_lik_a|
smok_off| smok_off|th so_N:oven| so_THING|is so_careful| so_careful|with so_drop| so_drop|their
so_i|hav so_i|will so_let|us so_mak|it so_plus| so_put| so_serv| so_serv|N:few so_sh| so_ther|is
so_w_panick| so_well| so_well|don so_w|ar so_w|will sold|to solid_i_am| som_DISH_DISH| som_nois|
som_nois|at someth_i_can| soon|as_sh sorry_it|was sorry_that_was| sorry_that| sort_on| sort_on|that
sort_th|DISH sound_lik|a soup_go| so|do_it so|go_careful so|green so|green_DISH so|i_am so|knock_N:few
so|lay so|lay_N:few so|no_luca so|now_N:core so|tak_them so|they_call spar_m_for| spark_and_flam|
spoon|th spread_up| spread_up|th sprig|of sprig|of_DISH stand_on|th start_THING_it| start_a|Nduration
start_it|over start_on_th| start_th|clock starter_go| start|afresh_$ start|all_over start|it_over
start|lat start|lat_so start|th_sear start|to_finish start|up start|up_again star|at_m stay_in|th
steady_heat|all steam_whol| steam_whol|wrist steep_th| steep_th|DISH steep|th steep|th_DISH
stick_Nduration|on stick|som_green still_U|froz still_cold|in still_good|for still_hav| still_n_to|
still_ok_to| still_ok| still_ok|to still_pal_as| still_stuck| still_work_on| still_work| still|N:core_$
still|hav_not still|in still|in_th still|on_track still|raw_in still|squeaky stood_in| stood_in|th
stop_th|clock stop|for_a stop|th_timer str_after| str_after|all straight_in| straight_on_th|
straight|down straight|down_lik stranger| stretch|it stuck_it|in stuck_to_th| stuck|to stuck|to_th
stuff_it|th stuff_it|with stuff|is_in such|th summaris_wher_i| supper_Nduration| supper|Nduration_later
supper|is_at suppos_to_tak| suppos|i suppos|to surpris|visitor swap|THING_for swear_it|is swell_up_sh|
switch_it|on switch_to|celsius switch_to|fahrenheit switch|th_fan switch|to_metric tabl_by|Nclock
tabl_god_bless| tabl_god| tabl_god|bless tabl_it| tabl_it|is tabl|by_Nclock tabl|for_m tabl|it_is
tak_N:few|tim tak_it|away tak_over_th| tak_so| tak_them| tak_th|first taken|th_roast taken|their
taken|their_seat tak|THING_at tak|it_to tak|m_N:few tak|th_DISH tak|them talk_m| talk_too|
talk_too|much talk_to|th taught|m ta|th teach_m_how| tell_m_i| tell_m|again tell_quickly| tell_quickly|what
tell_th|THING tell|us tell|you_what temperatur_all| temperatur_all|th temperatur_sh_is| temperatur|
temperatur|should_th text_Nduration| text_Nduration|lat text|m_when th_DISH_as| th_DISH_bin|
th_DISH_cam| th_DISH_my| th_DISH_sh| th_DISH_start| th_DISH_that| th_DISH|another th_DISH|caught
th_DISH|ready th_DISH|water th_DISH|yet th_N:few_wher| th_N:few|r th_P_and| th_P|had th_THING_alarm|
th_THING_cam| th_THING_hit| th_THING_oven| th_THING|last th_THING|must th_THING|right th_THING|slip
th_U_and| th_alarm_clock| th_alarm|clock th_and|i th_and|it th_at|onc th_bast|step th_beast|out
th_bus|is th_butter_Nduration| th_butter_is| th_butter_so| th_centr|mak th_clock|on th_colour|on
th_cousin_ar| th_cow_is| th_crumbl_on| th_day|N:few th_day|befor th_dinner| th_door_for| th_doorbell|they
th_end|not th_extractor|is th_fan_is| th_fan|off th_fat|over th_finger|on th_first|guest th_first|on
th_flight| th_floor|i th_foggiest| th_fus|and th_grocery| th_guest_ar| th_guest|cam th_heat_in|
th_heat|i th_heat|up th_hot|fat th_insid| th_i|hav th_joint|slid th_lad_ar| th_last_bit| th_last|bit
th_leave-in|say th_missus|and th_next|hour th_old|THING th_other_ar| th_oven_back| th_oven_shelf|
th_oven|go th_oven|has th_oven|up th_pan_my| th_pan|under th_parish| th_power| th_power|it
th_real| th_roast_in| th_roast_i| th_roast|cam th_roast|fell th_roll|cam th_rub| th_sam|as
th_sear|altogether th_sens| th_shop_for| th_simpl| th_simpl|DISH th_siz_of| th_small|oven th_sofa|
th_story| th_stov_for| th_tabl_god| th_tabl_it| th_temperatur| th_th_in| th_thickest|bit th_thread|
th_th| th_tim_for| th_timelin| th_tim|for th_top_of| th_top|off th_trick_with| th_trim|part
th_warm|oven th_water_and| th_way_to| th_weight_in| than_w|said thank|god_$ than|N:some than|real
than|that that_DISH|is that_U_is| that_ar| that_back|to that_by| that_far|behind that_go_to|
that_green| that_green|DISH that_is| that_is|another that_is|enough that_is|her that_oven_is|
that_saf| that_was|wrong that_what_do| that_w| that|DISH_us that|Nduration_i that|THING_it
that|far that|matter that|number_again that|right_$ that|roast that|was_a that|will_b that|work_$
that|yank that|yank_stuff their|coat them_DISH|twic them_ar_in| them_down|with them_has| them_has|drop
them_how| them_in| them|ar_off then_i_will| then_is| then_turn_it| theo|is ther_Nduration|ago
ther_any_sav| ther_a|plan ther_has_been| ther_has| ther_in|th ther_is|someth ther_i|was ther_someth_i|
ther_th|THING ther|another ther|another_way ther|has_been ther|is_non they_ar_no| they_ar_stuck|
they_ar|go they_ar|her they_ar|hungry they_ar|on they_ar|sit they_hav_ask| they_hav_taken|
they_hav|all they_hav|gon they_hav|got they_hav|had they_mad|peac they_n|Nduration they_wer_Nduration|
they_will|b they|ar_hav thick_end_say| thick_grey|r thickest|bit thick|a thick|do thick|end_say
thin_end| think_i|will think_my_THING| think_so|it think|it third_and| third_and|N:few this_is|
this_very|second this|THING_THING this|moment this|plac thos_wireless| thos_wireless|THING
throat|swell through_th|door through|th throw|it throw|th thumb_and| th|DISH_N:few th|DISH_at
th|DISH_did th|DISH_dress th|DISH_for th|DISH_how th|DISH_idea th|DISH_knock th|DISH_ready
th|DISH_this th|DISH_whil th|THING_N:few th|THING_and th|THING_cam th|THING_do th|THING_hav
th|THING_last th|THING_must th|U_for th|U_hav th|alternativ th|ars th|block th|bon_th th|bowl
th|chemo th|cold th|couch th|crowd th|crumbl th|dinner_on th|door_open th|drip th|earlier th|electric_keep
th|firehous th|first_on th|flight_is th|fridg_Nduration th|full th|fus th|guest_list th|guest_will
th|heart th|high th|hot_blast th|hot_fat th|job_in th|joint_to th|label_say th|last th|left_oven
th|lik th|lik_that th|list_i th|littl_oven th|lot th|mark th|messag th|middl_N:few th|missus
th|money th|new th|other_on th|other_sid th|oven_N:core th|oven_N:few th|oven_b th|oven_back
th|oven_di th|oven_flam th|oven_floor th|oven_meant th|pan_i th|pi th|platter th|pric th|pull_temperatur
th|recip th|rest_they th|roll_burn th|roll_timer th|sam th|second_shelf th|shop th|silverskin
th|siz th|station th|tabl_by th|target_again th|truss th|visitor_is th|wall th|whol_day th|whol_mob
th|with_th tick|off_DISH till_i_hav| till_i|get till_w| till|i_can tim_Nduration|start tim_how|
tim_i|reset tim_should| tim_should|i timer_N:few_wrong| timer_Nduration_for| timer_for_th|
timer_they_ar| timer|anymor_$ timer|you tim|do_i tim|i_reset tim|you_say to_N:core_i| to_N:core_kindly|
to_N:core|at to_N:oven_put| to_N:oven_what| to_N:oven_w| to_THING_up| to_THING|on to_b_her|
to_br|my to_b| to_b|lat to_b|smok to_check|th to_collect_my| to_collect|th to_eat|it to_fetch|th
to_f|cattl to_get|ic to_go|driv to_hav_a| to_hav|it to_hurry| to_hurry|it to_look|lik to_m_lik|
to_mak_th| to_mass_back| to_nip| to_pick_up| to_prepon_by| to_pull_it| to_pull|it to_set|th
to_sit|down to_start_it| to_start|it to_stuff_it| to_temperatur|sh to_th|THING to_turn| today_Nduration|behind
today_m|plus too_much_i| took|th_THING too|much_go too|short top_off|my top_of|th top_oven_is|
touch_th|DISH touch|th_DISH to|N:few_for to|N:oven_about to|N:oven_is to|b_had to|chang_Nduration
to|check_th to|com_out to|cry_into to|fahrenheit_$ to|flip to|get_them to|go_from to|hav_a
to|metric_$ to|peel_$ to|sp to|work train|is_lat trick_with| trim_is| trim_is|complet trim_part_i|
trim_th| trim|part trim|part_i tripl| trip|and_everyth truss_a| truss|it trust|it trust|th_THING
trust|this turn_it|down turn_it|on turn_off_th| turn_out_i| turn_out_my| turn_out|ther turn_th|DISH
turn_up|to turn|down_to turn|out_i turn|th_knob turn|up_early ty_th|THING tyr_Nduration_is|
ugh_ezra_left| ugh_ezra| ugh_ezra|left ugh| underneath_for_th| undo|it undo|that_last unit_c|
unit_c|and up_again|look up_and|it up_in|flam up_in|th up_right|at upstair_to|chang up|again_$
up|against up|against_th up|by up|early_$ up|so_far up|th_cooker up|to_Ngas-mark up|to_heat
up|to_temperatur up|wher_w us_DISH_out| us_aim_for| us_and_th| us_a|bell us_hav|it us_mak_th|
us_mak| us_not_bother| us_of| us_of|th us_skip| us|aim us|aim_for us|go_medium us|of us|of_th
v_THING_half| vegetarian|i_forgot very|second visitor_ar| v| v|THING w_ar_Nduration| w_ar_clean|
w_ar_metric| w_ar_serv| w_ar|b w_ar|out w_ar|run w_at_at| w_at|with w_can|eat w_got_N:few|
w_got_electricity| w_had|THING w_hav_N:few| w_hav_already| w_hav_reach| w_hav_to| w_hav_with|
w_hav|a w_hav|brought w_mak_it| w_mak|U w_must_eat| w_on|track w_panick| w_panick|and w_ran_out|
w_settl_on| w_settl| w_settl|on w_want_to| w_went| w_will|do w_will|eat w_will|hav w_will|se
wait_for_th| wait|for_m wak_m_at| wak_m|in walk_m| walk| walk|N:few walk|N:few_mil want_a_bit|
want_another_few| want_his|medium want_to|go want|for_N:few want|it_rar warm_should| warm_th|plat
warn_m_at| was_go|to was_th|DISH was|raw was|smok was|th_DISH watch_for|N:core watch_for|Ndegrees:core
watch|for watch|th_DISH watch|th_THING water_for|th water_in|th water_is_boil| water_so| water_so|it
water|down_my water|for_th water|it way_behind|her way_near| way_near|brown way_too| way|THING_this
way|through_no well_P| well_don_and| well_past|well well_that_is| well|don_and well|don_for
well|don_my well|don_you went_up_again| went_up| went|in_at wer|N:some wer|w we|bit whack_it|
what_can_w| what_can|i what_can|w what_do_th| what_do|i what_els_can| what_gas| what_gas|mark
what_go|on what_hav_i| what_i_gav| what_ingredient_do| what_is|go what_is|ther what_must_i|
what_number_am| what_number|do what_tim_should| whatever_you| what| what|com_after what|do_medium
what|go_in what|go_on what|if_it what|ingredient_do what|is_Ndegrees:oven what|is_Nweight what|is_first
what|is_for what|is_happen what|now what|should_th what|stag what|stag_ar what|temperatur_am
what|th_can what|tim_ar what|tim_do what|tim_is what|to what|w when_do|w when_it_is| when_it_r|
when_it|com when_it|will when_i|cut when_sh_hit| when_sh| when_th_centr| when_th|cor when|i_cut
when|i_must when|is_dinner when|it_r when|it_will when|th_middl when|th_roast when|w_cut when|you_say
wher_ar|w wher_did|i wher_do|w wher_i_am| wher_i|am wher_wer| wher_wer|w wher|exactly wher|would_you
whil_got_guest| whil_i_fetch| whil_i|nap whil_they_ar| whil_they| whip_it| whip_it|out whisk_th|
whisk_th|DISH who_can_not| whol_bon| whol_bon|in whol_build_is| whol_gang_has| whol_noth| whol_noth|cut
whol|hous whol|mob whol|noth whol|noth_cut whol|wrist who|left_th why_do|it why_it|is why_must_it|
why_so|low why|did why|do_i why|it_has why|not_$ why|not_DISH why|so_low will_b_N:core| will_b_an|
will_b|ther will_do_th| will_not| will_not|turn will_pass| will_stop| will_th|THING will|hav_a
will|i_b will|not_eat will|th_DISH will|ya_$ wireless_say_N:core| wish|i_had with_Nduration|of
with_P|in with_it_and| with_m|together with_salt| with_th|P with_th|THING with_th|fat with_th|lid
with_th|roast with_your_list| with|DISH_cream with|THING_$ with|everyth_$ with|salt_and wonder|how_much
work_th|sam would_b|nic would_you_b| would_you_look| would|go would|it_look would|ya_$ would|you_b
would|you_ever would|you_put wrap|and_in wreck|it wreck|it_$ writ| writ|it w|ar_serv w|at w|din
w|eat_Nduration w|go_over w|got_N:few w|hav_another w|hav_got w|hav_plenty w|left w|must_eat
w|n_to w|ok_for w|push_it w|sat w|should_do w|speak_$ w|stand w|talk_$ w|want w|want_it w|will_DISH
w|will_not ya|what year|and year|old_at yell_at|Ndegrees:core yes_do|that yes_or| yes_that|is
yet_it| yet_it|is yet_i|hav yet_so|green you_DISH|th you_ar_break| you_check_tell| you_do|with
you_got_a| you_n_not| you_pay_for| you_say_th| you_seen_my| you_se|th you_se|what you_shov_it|
you_talk_in| you_watch_for| your_list|at your_man_is| your|teeth you|DISH_th you|call_them
you|can_do you|know you|say_$ you|think_$ you|tim_Nduration yusuf_is_throat| |@101.2 |@117
|@126.1 |@135 |@135.4 |@136.5 |@140.2 |@145.1 |@15 |@18.3 |@2.1 |@27.4 |@28.0 |@3.1 |@32.0
|@32.6 |@32.8 |@4.10 |@4.8 |@51.0 |@54.7 |@55.3 |@62.4 |@69.4 |@70 |@75.6 |@76 |@82.3 |@84.2
|@87.0 |@88.1 |@92 |@92.4 |DISH_$ |DISH_$_$ |DISH_DISH_nobody |DISH_THING_as |DISH_U |DISH_U_for
|DISH_alarm |DISH_and |DISH_and_how |DISH_and_th |DISH_anymor_$ |DISH_boil_and |DISH_bubbl_away
|DISH_butter_is |DISH_can_i |DISH_caught_and |DISH_com |DISH_cream_as |DISH_dress |DISH_grow
|DISH_h |DISH_how_much |DISH_idea |DISH_is_all |DISH_is_assembl |DISH_is_that |DISH_knock |DISH_let
|DISH_lik |DISH_no_n |DISH_not_m |DISH_obviously |DISH_on_with |DISH_our_on |DISH_out_$ |DISH_powder_$
|DISH_ready_they |DISH_so_no |DISH_so_w |DISH_they_can |DISH_this_very |DISH_top |DISH_top_and
|DISH_up |DISH_us_$ |DISH_want_a |DISH_will_do |DISH_with_th |N:core_Nduration_ago |N:core_after_rest
|N:core_and_how |N:core_captain |N:core_centr |N:core_for_th |N:core_has_not |N:core_if |N:core_must
|N:core_wher |N:core_you_tell |N:few_U_of |N:few_and_how |N:few_bon_and |N:few_cook |N:few_count
|N:few_early |N:few_first |N:few_good_with |N:few_instead_$ |N:few_is_when |N:few_low_fyi |N:few_medium
|N:few_mil_Nduration |N:few_my_P |N:few_or_Nclock |N:few_peopl_at |N:few_sharp_U |N:few_tim_would
|N:few_to_play |N:few_w_ar |N:oven_THING |N:oven_THING_N:core |N:oven_U_it |N:oven_and_it |N:oven_for_th
|N:oven_lik |N:some_cold |N:some_over_th |Nclock_at_N:oven |Nclock_in_th |Nclock_what_do |Nclock_what_is
|Ndegrees:core_i |Ndegrees:core_insid_$ |Ndegrees:few_too_much |Ndegrees:oven_THING |Ndegrees:some_hot_$
|Nduration_N:few_$ |Nduration_ago_$ |Nduration_ago_when |Nduration_and_DISH |Nduration_and_is
|Nduration_behind_on |Nduration_do_i |Nduration_how_long |Nduration_i_would |Nduration_lat_put
|Nduration_warn |Nduration_whil_i |Nweight_i_hav |P_b |P_gon |P_is_ask |P_is_expect |P_is_insist
|P_is_plac |P_noth |THING_THING_ar |THING_THING_ok |THING_U_no |THING_a_joint |THING_along_by
|THING_and_w |THING_anyth |THING_anywher_in |THING_cam |THING_cam_out |THING_do_th |THING_first
|THING_hop |THING_hop_that |THING_in_her |THING_is_finish |THING_is_go |THING_my_P |THING_noth
|THING_or_along |THING_oven |THING_per |THING_stuck_in |THING_this_$ |THING_which |U_clos |U_not_bleed
|U_ther |a_N:core |a_Ndate_$ |a_Nweight_forerib |a_U_U |a_biscuit |a_bit_Nduration |a_bit_later
|a_cut |a_dat |a_deep |a_drink_$ |a_kip |a_kip_$ |a_lot_of |a_mess |a_nap |a_nic_bit |a_no_show
|a_nois |a_nut_allergy |a_party_of |a_plank |a_power_failur |a_pregnant_woman |a_right_way
|a_shellfish |a_singl |a_sprig |a_tad_earlier |a_trick |a_tumbl |abl_to_do |about_an |about_an_inch
|adult_N:few |aff_$ |aff_$_$ |after_rest_$ |after_ring |after_w_sit |against_th_bon |ago_DISH
|aid |aid_of |all_$ |all_$_$ |all_go_to |all_too |all_too_much |all_up_in |allergy_not |already_peel
|alternativ_$ |alternativ_$_$ |alway_Ndegrees:some |am_Nduration_lat |am_THING |am_afraid |am_behind_by
|am_chas |am_chas_my |am_do |am_fre |am_from |am_gon |am_hav_a |am_i_aim |am_i_hav |am_lost
|am_mil |am_mil_off |am_not |am_off |am_out |am_ready |am_run_Nduration |am_run_a |am_slow
|am_stand |am_starv |am_still |am_stood |am_suppos |am_suppos_to |am_tell |am_th |am_way |am_way_behind
|am_well |an_THING_left |an_THING_on |an_extra_pair |and_cut_so |and_found |and_get |and_h_is
|and_hit_my |and_in |and_is_not |and_not_N:few |and_th_lowest |and_that_ar |and_ti_$ |and_ti_back
|another_N:few_plat |anymor_P |anymor_P_is |anyth_underdon |anyway |appointment |apron |ar_burnt_$
|ar_don_$ |ar_her_N:few |ar_her_all |ar_leav |ar_off_gluten |ar_off_th |ar_out_$ |ar_pal |ar_serv
|ar_split |ar_split_th |ar_start_to |ar_still_THING |ar_still_cold |ar_trim_$ |ar_up_$ |arriv_Nduration
|as_a_bon |as_that_$ |at_N:core_THING |at_N:core_U |at_N:core_do |at_N:core_even |at_N:core_on
|at_N:core_will |at_N:few_th |at_N:oven_DISH |at_N:oven_ft |at_N:oven_th |at_Nclock_latest
|at_m_when |at_onc_and |at_th_colour |at_th_finish |at_th_till |b_DISH |b_N:core |b_Nduration_later
|b_THING_$ |b_had |b_hav |b_her |b_i |b_lat |b_pink |b_that |back_a_tick |back_carry |back_carry_on
|back_on_at |back_w |bail_$ |bail_$_$ |bail_so |bank |bast_this |bath_th_P |been_a |been_in_Nduration
|been_rest_for |been_sit |beep_after |beep_after_Nduration |begin_with_$ |begun_it |behav_itself
|behav_itself_$ |behind_or_am |behind_schedul_$ |behind_schedul_and |behind_sorry_$ |behind_th_cooker
|behind_what |bell |better |blister_already |blood_on |blood_pressur |board_with |boil_for_DISH
|bon_Nweight_and |bon_off_$ |bottl |bout_Nduration_lat |bowl_$ |bowl_$_$ |boy |break_out |bring_N:few
|brok_$ |brok_$_$ |broken_$ |broken_$_$ |brought |brought_N:few |burn_and |burn_th_finger |business_$
|business_$_$ |business_i |business_with |business_with_th |bust_so |butter_on_th |butter_so
|by_Nduration_and |by_for_th |by_hot |by_hot_THING |by_mistak_put |c_$ |c_$_$ |calf_in |call_m_in
|call_out |cam_U |cam_out_Nduration |can_hear |can_se |can_you_put |cat_$ |cat_$_$ |cattl_gon
|cattl_gon_Nduration |caught_and_it |caught_fir_$ |caught_light_on |celsius_my |center_$ |center_$_$
|chanc |chanc_$ |chanc_$_$ |chang_Nduration |charg_of_th |chew |chopper |church_for |claim_$
|claim_$_$ |clean_out_of |clock_N:core |clock_Nduration |clock_on_Nduration |club_$ |club_$_$
|coat_in |coat_in_th |cold_Ndegrees:few |cold_on_us |cold_th |com_Nclock |com_Nduration_after
|com_after |com_along_$ |com_back_on |com_down_to |com_i |com_it_has |com_stuff |com_stuff_th
|com_to |command_$ |command_$_$ |conk_out_on |couch |count_th |count_wrong |counter_$ |counter_$_$
|crim |crowd_$ |crowd_$_$ |cry_into |cry_into_th |cut_off_it |cut_up_$ |dangerous_$ |dangerous_$_$
|day_in |day_w |dead_i |degre |degre_$ |degre_$_$ |degre_has |delay_minimum |delay_of |delay_of_Nduration
|di_$ |di_$_$ |di_whol |did_it |did_not_hav |did_not_salt |din_at |dinner_b_Nduration |do_DISH_too
|do_all |do_dinner |do_i_b |do_i_cut |do_i_know |do_i_say |do_i_set |do_i_throw |do_it_lik
|do_it_rest |do_metric |do_metric_so |do_next_$ |do_not_feel |do_not_plan |do_w_stand |do_w_tak
|do_with_know |do_with_th |do_you |do_you_DISH |do_you_say |don_N:few |don_after |don_by_N:few
|don_my_P |don_with_it |don_you |door_and |door_hang_open |door_on_th |door_so |door_to_borrow
|door_was_left |down_Nduration_ago |down_at_N:few |down_back |down_back_in |down_for_Nduration
|down_for_th |down_is_N:few |down_my_leg |down_wak |down_wak_m |down_will |down_will_you |down_yet
|driv |driv_$ |driv_$_$ |driv_th_sitter |each_$ |each_$_$ |earlier_if |early_today |early_today_N:few
|eat_i |eat_it_otherwis |eat_r |edg_$ |edg_$_$ |electric_keep |electric_keep_go |empty_oven
|end_i |end_say |end_say_N:core |enough_for_N:few |everyth_all |everyth_all_right |everyth_look
|expect |expect_so_mind |fallen_behind |fan_is_given |fancy_do |far |far_as |far_off |fat_is_on
|fat_over |fat_over_it |feet_what |feet_what_is |fella_is |fetch_P |find_th |finish_yet |fir_to_th
|firehous |fit_in |floor_$ |floor_$_$ |floor_after |floor_after_a |floor_i |flu_and |for_N:core
|for_N:core_after |for_Ndate_$ |for_Nduration_to |for_Nduration_would |for_a_final |for_all_this
|for_do |for_him |for_salt |for_th_church |for_that |forerib |forerib_N:few |forerib_on |forerib_on_th
|forgot_it |forgot_to_tell |forward_Nduration_$ |forward_by |fridg_Nduration |fridg_at |fridg_th
|frog |from_heat |from_practic |from_practic_that |from_th_pan |gaug_must |gaug_must_b |gav_you
|gentl |get_lat |get_ther_$ |get_to_th |giv_her_anyth |glass |glov_$ |glov_$_$ |go_again_$
|go_careful |go_for_N:few |go_in_at |go_ok |go_over_to |go_right |go_soggy |go_to_N:core |go_to_se
|go_to_trim |go_too |go_up |go_well |go_wrong |god_it_is |god_ther |god_ther_is |golf_ball
|gon_THING |gon_all |gon_from |gon_from_N:few |gon_to_THING |gon_up_in |good_Nduration |good_and
|got_N:few_P |got_N:few_out |got_a_leave-in |got_burn |got_it_at |got_no_THING |got_power |got_th_roast
|gram_of |green_DISH_for |guest_ar_Nduration |guest_cam |guest_less |had_a_kidney |had_that
|half_now_N:core |handl |handl_$ |handl_$_$ |handl_bar |handl_bar_hand |has_arriv_$ |has_been_in
|has_been_put |has_com_back |has_com_to |has_gon_U |has_gon_lumpy |has_got_no |has_now |has_risen
|has_risen_to |hat_that |hav_a_Nweight |hav_a_boneless |hav_a_helper |hav_a_jar |hav_another_helper
|hav_brought |hav_chang_th |hav_cut_myself |hav_finish_th |hav_forgotten |hav_got_power |hav_i_got
|hav_it_on |hav_lost_th |hav_miss |hav_not_touch |hav_now |hav_nut |hav_plenty |hav_put_too
|hav_shov |hav_shov_th |hav_sunk |hav_switch |hav_that |hav_to_buy |hav_volunteer |hav_volunteer_for
|heat_and |heat_for |heat_th_whol |heaven_is |heaven_is_sak |held_up |her_N:few_to |her_rar
|her_throat |her_too |her_way |her_yes |his_at |his_plat |his_throat |his_toast |hit_th_deck
|hit_th_water |homeless |honest_with |honest_with_m |hot_$ |hot_$_$ |hot_blast |hot_by_N:some
|hot_now_$ |hot_th |hous_has |hous_so |how_they |how_w_lik |hungry_peopl_$ |i_ask |i_ask_about
|i_count_wrong |i_do_DISH |i_flip |i_flip_it |i_go_by |i_had_a |i_hop |i_kill_it |i_miss_$
|i_panic |i_panic_$ |i_put_in |i_reset_it |i_say_$ |i_slic_it |i_swap_THING |i_swap_in |i_tak
|i_tak_THING |i_trust |i_turn_them |i_us_$ |i_us_THING |i_will_do |idea_what |if_i_had |if_i_took
|if_you_do |in_DISH_is |in_N:some_$ |in_Nduration_back |in_belly |in_belly_com |in_diamond
|in_door |in_fahrenheit_$ |in_from_N:few |in_her_throat |in_how |in_it_yet |in_kilo_$ |in_law_has
|in_mind |in_now_do |in_old |in_old_money |in_rib_nobody |in_som |in_th |in_th_basket |in_th_oven
|in_ther_say |in_tinfoil |in_tinfoil_now |ingredient_do |insid_sinc |insid_sinc_Nduration |instead_of_salt
|instruct |is_N:few_mor |is_N:few_now |is_N:few_rib |is_Ndegrees:few_under |is_Ndegrees:some_cooler
|is_Nweight_i |is_P |is_THING_in |is_a_Nweight |is_a_THING |is_a_fir |is_a_sauna |is_after_com
|is_already_com |is_back_$ |is_banjax_$ |is_bedlam |is_beep_N:core |is_cancell_they |is_com_Nduration
|is_com_on |is_driv |is_du_through |is_flam_in |is_happen_at |is_her_and |is_hold_it |is_hurt_h
|is_in_and |is_lat_so |is_left_for |is_lik_seawater |is_look |is_lot_ar |is_m_and |is_never
|is_not_availabl |is_not_eat |is_not_right |is_on_N:core |is_on_a |is_open_$ |is_out_it |is_out_now
|is_overcook_$ |is_pass |is_past |is_plus |is_plus_N:few |is_rest_Nduration |is_right_$ |is_rubbish_it
|is_scream |is_set_at |is_shown |is_shown_his |is_sit_in |is_sort_th |is_stay_in |is_still_U
|is_th_full |is_th_lot |is_th_order |is_th_situation |is_tick |is_told |is_too_salty |is_tough_as
|is_up_at |is_vegan_$ |is_vegetarian_i |is_warm |is_what |is_when_i |is_will |it_N:few_rib
|it_N:oven_$ |it_U_$ |it_and_i |it_and_then |it_and_yell |it_at_$ |it_b_$ |it_b_r |it_back_in
|it_cross |it_forward_Nduration |it_i_hav |it_in_$ |it_in_Nduration |it_in_boil |it_in_it |it_later
|it_let |it_let_us |it_otherwis_$ |it_out_or |it_pink_$ |it_slip |it_suppos_to |it_to_Nclock
|it_upsid |it_upsid_down |it_was_hot |it_went_out |it_wrong_$ |join_$ |join_$_$ |joint_in |joint_to
|jun_$ |jun_$_$ |keep_her_steady |keep_up_Nduration |keep_up_with |keep_watch |kettl_$ |kettl_$_$
|kettl_on |know_THING |know_so |know_th |know_when |lak |last_for |last_for_m |last_of_th |last_on
|lat_$ |lat_$_$ |lat_by |lat_her |lat_so |lat_so_count |later_P |later_th |later_than_N:few
|lay_N:few |learn_about_my |learn_th |least_Nduration |left |left_over |leg_Nweight |lent |less_N:oven
|less_now_$ |less_th |let_it_get |li_$ |li_$_$ |light_on_th |lik_her_well |lik_his_rar |lik_to_eat
|lily_in |lily_in_charg |littl_oven_that |liv_at_N:oven |long_Nduration |long_can |long_do
|long_i |long_mor_$ |long_mor_will |long_will |longer_w |look_insid_$ |lost_Nduration_to |lot_$
|lot_$_$ |lot_ar |lover_com |lover_com_let |low_w |lower_it |m_after |m_everyth |m_fahrenheit
|m_finger |m_hav |m_i_hav |m_in |m_in_celsius |m_in_th |m_lik_i |m_na |m_otherwis |m_start
|m_th_choic |m_th_plan |m_th_timelin |m_th_whol |m_then_$ |m_what_is |m_when_N:core |mad_less
|mad_less_N:oven |mad_yet |mak_N:few_$ |mak_of |mak_you |man_com |many_$ |many_$_$ |march_$
|march_$_$ |market_$ |market_$_$ |mean_N:core |mean_th |meantim |meantim_$ |meantim_$_$ |measur_N:core
|medium_not |middl_$ |middl_$_$ |middl_N:few |mind_about |mind_it |miss_for |missus_will |missus_will_not
|mob_is |monkey |mor_THING |mor_peopl_ar |mor_tim_it |mov_to_Nclock |mrs |mrs_U |much_butter
|much_go |much_go_on |much_salt |mushroom_and |must |must_eat_Nduration |must_th_DISH |my_P_$
|my_P_no |my_breath |my_breath_$ |my_country |my_finger_with |my_plac |my_tail |my_tail_Nduration
|myself_and |myself_on |n_from |n_not |n_tell |n_tell_every |n_to_do |n_to_jump |n_to_warm
|nam_is |near |never_did_th |new_on |next_on_$ |next_on_th |niec |niec_volunteer |niec_volunteer_for
|nip_out_back |no_DISH_it |no_blow_$ |no_gluten |no_luca |no_sear |no_str_in |nobody_is_THING
|noo |noo_$ |noo_$_$ |not_P |not_at_N:oven |not_b_right |not_bleed |not_count |not_don_with
|not_eat_DISH |not_eat_r |not_exist |not_feel |not_hav_DISH |not_hav_THING |not_know_how |not_let_m
|not_n_th |not_n_to |not_risen |not_set |not_shut_properly |not_sit |not_tak_THING |not_tak_it
|not_th_foggiest |not_trust_th |not_trust_that |not_turn_th |noth_cut |noth_cut_off |now_get_th
|nudg_at |nudg_at_N:some |nudg_in |nudg_in_Nduration |number_do_i |number_for_th |of_DISH_w
|of_delay |of_dry |of_dry_THING |of_her_tablet |of_my_finger |of_our_guest |of_real |of_real_THING
|of_roast_DISH |of_th_DISH |of_them |of_us_in |of_us_non |off_already |off_and_on |off_now
|off_on_th |off_to_work |old_at |old_at_th |old_is |on_N:few_rib |on_N:oven |on_N:oven_now
|on_N:some_$ |on_P_is |on_a_second |on_chemo |on_eat |on_fir_and |on_hold_for |on_hom |on_i_hav
|on_now_$ |on_paus_$ |on_r |on_r_N:few |on_seat |on_that_timer |on_then_$ |on_this_U |on_to_th
|on_us_$ |on_with_th |onc_and |or_N:core_$ |or_N:oven_$ |or_lid_th |or_not_$ |ottolin |ottolin_is
|ottolin_is_her |out_and_i |out_and_it |out_for_N:core |out_for_som |out_h |out_hav |out_it_was
|out_my_P |out_now_and |out_of_butter |out_th_door |out_th_schedul |out_when |oven_N:core |oven_at_Ndegrees:oven
|oven_b |oven_back_to |oven_di |oven_door_open |oven_first |oven_first_then |oven_flam |oven_floor
|oven_go |oven_lit |oven_meant |oven_mind |oven_no_fan |oven_out_in |oven_run_a |oven_sinc_Nduration
|oven_stand |oven_this |oven_to_Ndegrees:core |oven_to_Ndegrees:oven |over_to_N:core |overcook_it_$
|overtim |pan_is_in |pan_noth |part_i |part_i_do |pat |pavement |peac_put |peac_put_them |peel_anyth
|peopl_so |peopl_so_celsius |per_THING_$ |person_$ |person_$_$ |person_is |pink_will |pitch_in
|pizza_$ |pizza_$_$ |plan_no |plus_anselm |point_at |poorly |prayer_$ |prayer_$_$ |pregnant_is
|program |properly |propos |pull_in_that |pull_into |pull_into_th |put_THING_on |put_U |put_th_small
|put_too |put_too_much |put_you_on |quarter_past |question |quiz |r_DISH_so |racket |rang_they
|rang_tyr |rang_tyr_is |rar_fin |rar_that_is |ready_they_n |reheat_th |remind_after |remind_after_Nduration
|rescu_$ |rescu_$_$ |reset_it |rest_for_$ |rest_now_$ |rest_th_DISH |rest_they_ar |revers_sear_th
|right_back_to |ris_$ |ris_$_$ |road_$ |road_$_$ |roast_DISH_with |roast_on_th |roast_without
|roll_burn |ros |rump |run_th |saf_for_th |said |said_medium |salt_in_th |sam_as_alway |sam_as_tabl
|say_N:core_should |say_N:few_mor |say_about |say_grac_$ |say_i_am |say_not |scor_$ |scor_$_$
|scratch_$ |scratch_$_$ |sear_N:few |sear_at_th |sear_is_mad |season_$ |season_$_$ |second_shelf
|sh_cut |sh_get_up |sh_is_go |sh_say_so |shedd_start |shelf_THING |shop_for |short_U |shot_$
|shot_$_$ |should_b_in |should_i_trust |should_th_THING |shout_in_Nduration |show_Ndegrees:core_$
|shower_Nduration_top |sid_i |sign_of |sign_up |simmer_sinc |simmer_sinc_Nclock |sinc_it_is
|skip_this |slid_onto |slid_onto_th |slip_by |slip_by_Nduration |smok_com_from |snap_and |so_N:core_in
|so_behind |so_do_not |so_i_can |so_keep |so_keep_him |so_sh |so_th_DISH |so_they_ar |so_w_will
|sod |sod_it |sod_it_mak |sofa_$ |sofa_$_$ |someth_to |sorry_to_say |sort |sort_th_DISH |split_$
|split_$_$ |spoon_$ |spoon_$_$ |squar |stag_ar |stag_ar_w |start_myself |stay_in_$ |stay_out
|step_my_P |stick_th_THING |still_DISH_$ |still_at_N:oven |still_cold_in |still_do |still_on_$
|stov_for |stretch_it |strong_$ |strong_$_$ |swear_it |switch_on_th |tabl_N:few |tabl_laid
|tabl_tonight |tak_m_THING |tak_them_off |target_again |tell_you_$ |temperatur_am |temperatur_am_i
|temperatur_do |th_DISH_bin |th_DISH_do |th_DISH_knock |th_DISH_nobody |th_DISH_on |th_DISH_should
|th_DISH_was |th_DISH_would |th_N:few_rib |th_Ndegrees:oven |th_Ndegrees:oven_THING |th_THING_check
|th_THING_do |th_THING_handl |th_THING_last |th_THING_off |th_THING_they |th_U_THING |th_b_drink
|th_basket |th_bon_Nweight |th_build |th_can_i |th_chicken |th_choic |th_chook |th_church |th_clock_Nduration
|th_coat |th_cooker |th_cooker_hood |th_county_$ |th_cow_is |th_crust_$ |th_dial_THING |th_dinner_Nduration
|th_dinner_by |th_dog_Nduration |th_door_and |th_door_for |th_doorbell_they |th_drawer_$ |th_fan_off
|th_fat_over |th_flu |th_flu_and |th_fridg_sinc |th_greas |th_greas_and |th_green |th_grocery_list
|th_guest_list |th_hall_$ |th_has |th_heat_is |th_heat_to |th_hol |th_hot_oven |th_it_is |th_joint_in
|th_last_bit |th_list_of |th_littl_guy |th_magic |th_magic_number |th_middl_at |th_nam_of |th_number_i
|th_out |th_oven_N:core |th_oven_this |th_oven_was |th_pan_i |th_pan_is |th_parish |th_plac_$
|th_plan_of |th_press |th_public |th_r |th_real |th_refrigerator_$ |th_rest_and |th_rib_$ |th_run_order
|th_sea_$ |th_sear_altogether |th_second_half |th_sink_$ |th_sirloin |th_situation |th_stand
|th_stick_$ |th_sticker_$ |th_stor |th_summer |th_tabl_by |th_tabl_now |th_thick_bit |th_thick_end
|th_thread |th_tim_for |th_tim_it |th_tim_w |th_tip_of |th_very |th_wash_up |th_way_and |th_wedd_$
|th_wet_floor |th_win_$ |than_Nclock |than_i_can |thank_a |that_alarm_$ |that_b |that_blood_$
|that_enough |that_front |that_saf |that_timer_it |that_with |that_wreck |their_seat |their_timer
|them_U |them_how |then_a_hot |then_low |ther_a_set |ther_someth_i |ther_with_th |ther_yet_$
|they_ar_fussy |they_call_and |they_said |thick_do |think_in |this_THING_and |this_flat |this_for_th
|this_heat |this_heat_$ |this_moment |this_th_run |this_very |thos |through_it_$ |through_no_sear
|thumb_$ |thumb_$_$ |thumb_open |ti_a_roast |ti_it_yet |till_i_can |tim_Nduration_for |tim_ar
|tim_ar_w |tim_do_i |tim_do_you |tim_for_a |tim_for_th |timer_any |timer_of |tinfoil |to_N:few_$
|to_N:few_peopl |to_N:oven_DISH |to_N:oven_THING |to_N:oven_U |to_N:oven_already |to_N:oven_fan
|to_N:oven_i |to_N:oven_to |to_U |to_buy_$ |to_check_th |to_do_now |to_do_this |to_eat_$ |to_eat_it
|to_extra |to_extra_tim |to_f_$ |to_flip |to_flip_th |to_get |to_greet |to_know_how |to_lif_$
|to_m_U |to_m_why |to_pull_$ |to_pull_it |to_run |to_say_$ |to_scor |to_set_th |to_sp |to_th_church
|to_turn_it |today_m_plus |told |told_$ |told_$_$ |tonight_what |too |too_low_to |too_salty_$
|too_short |touch_it |train_$ |train_$_$ |trifl_$ |trifl_$_$ |trip_and_everyth |trivet_$ |trivet_$_$
|troubl_$ |troubl_$_$ |turn_it_on |ty_th_THING |tyr_Nduration_is |up_N:core |up_U |up_and_in
|up_at_Nclock |up_for_a |up_front_then |up_now_$ |up_till |up_to_room |up_to_sp |updat_$ |updat_$_$
|upstair_for_Nduration |us_$ |us_$_$ |us_Nduration_$ |us_a_U |us_and |us_begin_again |us_do
|us_get |us_hav |visitor_is |visitor_is_at |volunteer |w_at_at |w_do_about |w_hav_plenty |w_hav_with
|w_left |w_mak_it |w_miss |w_talk_$ |w_turn_it |wait_befor |wait_befor_cut |walkabout_$ |walkabout_$_$
|want_DISH_DISH |want_Nduration |want_U |want_dinner_at |want_his_rar |want_in |want_it_$ |want_it_medium
|want_supper |want_that |want_to_b |was_N:core_i |was_ajar |was_ajar_Nduration |was_mil |was_on_N:core
|was_smok |water_is_boil |way_$ |way_$_$ |way_of |way_through_no |weak_$ |weak_$_$ |wedd |well_behind
|well_dry |well_dry_as |well_they |went_on_$ |went_out_$ |what_DISH_ther |what_happen_$ |what_it_is
|what_you_learn |what_you_reckon |when_Nduration_ar |when_it_THING |when_well |when_well_b
|whil_$ |whil_$_$ |whil_i_find |will_$ |will_$_$ |will_DISH |will_U |will_b_a |will_b_her |will_b_lat
|will_mak |will_n_N:few |will_not |will_not_shut |will_se_to |will_sear |with_THING |with_a_drink
|with_all_th |with_number |with_number_N:few |with_th_soup |with_this_THING |with_your_list
|without_light |word_i |work_now |work_that |would_P |would_P_to |would_lik |would_lik_P |would_never
|would_sooner |would_you_suggest |yank_stuff |year_N:few |year_Nweight |yet_do |yet_do_not
|yet_i_am |you_allow_$ |you_ask_m |you_credit |you_credit_it |you_do_with |you_giv_m |you_help_m
|you_know_$ |you_mak_m |you_put_DISH |you_run |you_say_th |you_se_what |you_stop |you_think
|you_tim |your_P_and
-10 @101.2| @114.0| @13.0| @141.6| @146| @22.4| @3.1| @32.9| @36.4| @40.2| @42.7| @45.6| @48.2|
@51.2| @53.3| @60.0| @70| @94.1| @97| DISH_DISH_can| DISH_DISH_with| DISH_DISH|P DISH_DISH|U
DISH_DISH|so DISH_THING_is| DISH_THING|and DISH_U_and| DISH_U_ar| DISH_and|all DISH_and|stuff
DISH_and|th DISH_another|Nduration DISH_anyth| DISH_ar_a| DISH_ar_go| DISH_ar_nic| DISH_ar|burn
DISH_ar|glaz DISH_ar|still DISH_as_w| DISH_bas|yesterday DISH_bless|her DISH_boat_is| DISH_boat|is
DISH_everyth| DISH_for|DISH DISH_for|th DISH_go|on DISH_hav|all DISH_is_chop| DISH_is|don DISH_is|it
DISH_is|lik DISH_is|ready DISH_is|strain DISH_is|too DISH_it|as DISH_i|am DISH_myself_so| DISH_myself|
DISH_myself|so DISH_nobody_is| DISH_nobody|lik DISH_nowher| DISH_nowher|near DISH_on_at| DISH_or|DISH
DISH_per|THING DISH_so_scrap| DISH_so_scratch| DISH_so|w DISH_ther|is DISH_this|year DISH_too_i|
DISH_took| DISH_whatever| DISH_whatever|you DISH_what|can DISH_when| DISH_with_th| DISH_would|go
DISH|DISH_ar DISH|N:oven DISH|ar_want DISH|bas_yesterday DISH|bless DISH|boil_and DISH|cream_$
DISH|crisp_as DISH|from_N:few DISH|has_com DISH|in_th DISH|in_this DISH|no_th DISH|snap DISH|snap_and
DISH|so DISH|this_very DISH|timer_dead DISH|w_will DISH|water DISH|yes N:core_Nduration|ago
N:core_accord| N:core_accord|to N:core_and_what| N:core_and| N:core_and|still N:core_and|they
N:core_as_w| N:core_by_Nclock| N:core_do|not N:core_giv|m N:core_in|th N:core_i|am N:core_kindly|
N:core_kindly|inform N:core_last|i N:core_lik_Nduration| N:core_medium| N:core_medium|rar N:core_near|th
N:core_should_i| N:core_sound_right| N:core_sound| N:core_sound|right N:core_so| N:core_so|i
N:core_th_oven| N:core_would|you N:core|and N:core|and_ris N:core|by_N:few N:core|for_Nduration
N:core|it_has N:core|last_i N:core|rather_than N:core|so_i N:core|sound N:core|sound_right
N:core|whil_i N:few_P_and| N:few_THING_not| N:few_U|is N:few_about_th| N:few_about|th N:few_and_th|
N:few_and_what| N:few_and|Nduration N:few_and|it N:few_and|sh N:few_and|what N:few_at_th| N:few_bon_off|
N:few_coeliac_my| N:few_count_th| N:few_count|th N:few_do|not N:few_eat|at N:few_extra_for|
N:few_from|bottom N:few_has_a| N:few_high_in| N:few_keep| N:few_keep|th N:few_less_than| N:few_less|now
N:few_mor|plac N:few_nobody_is| N:few_out|of N:few_oven_and| N:few_peopl_how| N:few_should|i
N:few_sinc| N:few_sinc|it N:few_timer_of| N:few_to| N:few_to|flip N:few_to|play N:few_under_so|
N:few_w_will| N:few|P_under N:few|adult_and N:few|bon_roast N:few|burner_work N:few|calibrat
N:few|calibrat_a N:few|extra_$ N:few|guest_th N:few|has_a N:few|has_invit N:few|hav_cancell
N:few|lad N:few|lad_so N:few|less_for N:few|less_now N:few|mor_person N:few|off N:few|r_and
N:few|r_on N:few|r_work N:few|short_U N:few|sinc N:few|sinc_it N:few|then_h N:few|tim N:few|to_N:few
N:oven_THING| N:oven_U_it| N:oven_afternoon| N:oven_afternoon|f N:oven_and_i| N:oven_and|th
N:oven_do_not| N:oven_do|not N:oven_feet_what| N:oven_for_a| N:oven_is_what| N:oven_mor|or
N:oven_or|so N:oven_w|ar N:oven|N:few N:oven|about N:oven|about_Nduration N:oven|now_th N:some_and|th
N:some_for|dinner N:some_in| N:some_past|with N:some_with_th| N:some|DISH N:some|lat_$ N:some|ml
N:some|ml_of Nclock_and_how| Nclock_and_i| Nclock_and_th| Nclock_and|w Nclock_i_am| Nclock_on_th|
Nclock_they| Nclock_w|eat Nclock|N:oven Nclock|wak Nclock|wak_m Ndate_Nclock_and| Ndate_lunch_at|
Ndate|and Ndegrees:core_in|th Ndegrees:core|insid_$ Ndegrees:core|you Ndegrees:few_too|high
Ndegrees:few|less_than Ndegrees:some|hot_and Nduration_P_is| Nduration_and_do| Nduration_and_how|
Nduration_and|P Nduration_and|th Nduration_ar| Nduration_a| Nduration_befor_it| Nduration_behind_with|
Nduration_could| Nduration_do|i Nduration_earlier|than Nduration_for|th Nduration_giv_m| Nduration_i_would|
Nduration_it|was Nduration_i|am Nduration_lat_it| Nduration_lat_what| Nduration_lat_with| Nduration_later_than|
Nduration_of|U Nduration_on_for| Nduration_sinc_i| Nduration_sooner_than| Nduration_start_th|
Nduration_th_bridg| Nduration_that|is Nduration_th|match Nduration_timer|anymor Nduration_to_get|
Nduration_to|get Nduration_to|that Nduration_traffic_is| Nduration_what|can Nduration_what|do
Nduration_yell| Nduration_yell|DISH Nduration|DISH_is Nduration|after_P Nduration|ago_befor
Nduration|ago_not Nduration|ago_sorry Nduration|already_$ Nduration|befor_w Nduration|behind_$
Nduration|behind_so Nduration|early_and Nduration|from Nduration|i Nduration|lat_$ Nduration|lat_so
Nduration|lat_th Nduration|lat_that Nduration|later_what Nduration|mor_early Nduration|off
Nduration|on Nduration|sinc_it Nduration|sooner_and Nduration|sooner_than Nduration|to_a Nduration|to_that
Nduration|with Ngas-mark|now_instead Nweight_forerib_on| Nweight_i_had| Nweight_rib_of| Nweight_rib|
Nweight_very| Nweight_what| Nweight_with|th Nweight|boneless Nweight|no_bon P_all| P_all|good
P_and|th P_ar|feral P_back| P_back|in P_brought|a P_down_back| P_from| P_has_arriv| P_has|arriv
P_in_belly| P_is_peel| P_is|a P_is|arm P_is|on P_jud|can P_mak| P_noth_in| P_say| P_set_th|
P_sh_has| P_so|plus P_still|moo P_th|DISH P_us|to P_us|up P_w_ar| P_want|her P_wher_is| P_will|eat
P_with|P P_w|ar P|ar_still P|els_is P|fay P|fay_is P|got_her P|is_land P|is_sit P|is_turn P|it_is
P|slip P|text P|text_Nduration P|th_THING P|vot_medium P|with_P THING_DISH| THING_DISH|instead
THING_N:some| THING_Nweight_with| THING_THING|underneath THING_alarm_i| THING_along| THING_alway|
THING_alway|say THING_am_i| THING_and_how| THING_and_my| THING_and|N:few THING_and|i THING_and|it
THING_anywher_in| THING_ar|stream THING_can|i THING_cut_th| THING_fell|out THING_gav| THING_gav|m
THING_hit_th| THING_i_will| THING_in_Nduration| THING_into| THING_in|already THING_in|and THING_in|her
THING_is_leak| THING_is_now| THING_is_stay| THING_is|go THING_is|in THING_i|am THING_i|hav
THING_i|think THING_not|N:few THING_no|sear THING_of_th| THING_off_on| THING_on_DISH| THING_or_alcohol|
THING_per| THING_piec_w| THING_show_Ndegrees:few| THING_speak| THING_speak|celsius THING_th|tim
THING_to|b THING_what_is| THING_whatever_you| THING_what|do THING_will|you THING_w|hav THING|and_put
THING|any THING|behav THING|behav_itself THING|duty THING|fell_out THING|first_P THING|for
THING|from_oven THING|gav THING|gav_m THING|has THING|in THING|in_her THING|is_act THING|is_back
THING|is_com THING|is_leak THING|it_in THING|leg_with THING|of THING|on THING|out THING|pan_with
THING|reckon THING|roast THING|roast_Nweight THING|salt THING|smok_com THING|speak THING|speak_celsius
THING|underneath_for THING|which U_DISH_DISH| U_THING| U_U|U U_and|DISH U_ar|out U_at|th U_degre_in|
U_from|th U_giv| U_has_gon| U_has|com U_has|got U_i_can| U_is_do| U_is|go U_is|knock U_i|said
U_my|god U_not_th| U_of_it| U_of|a U_plan_dinner| U_th_N:few| U_th_gam| U_that|green U_want_his|
U_what_i| U|P U|U_U U|drop U|has U|i_should U|is_U U|is_allergic U|is_coeliac U|is_off U|keep_THING
U|keep_drop U|of_a U|oven_is U|over_th U|plan U|plan_dinner U|want_his ^_DISH_hav| ^_DISH|th
^_N:core_by| ^_N:core_is| ^_N:few|extra ^_N:few|person ^_N:oven_for| ^_N:oven| ^_Nduration|lat
^_Nduration|later ^_Nweight_bon| ^_Nweight|it ^_P_com| ^_P_i| ^_P|in ^_P|jim ^_THING|in ^_THING|of
^_THING|slip ^_U_do| ^_U_i| ^_U_keep| ^_^_N:oven| ^_^_beth| ^_^_blast| ^_^_cater| ^_^_company|
^_^_could| ^_^_darlen| ^_^_forget| ^_^_giv| ^_^_had| ^_^_happy| ^_^_hit| ^_^_holler| ^_^_honestly|
^_^_kettl| ^_^_liam| ^_^_nic| ^_^_nip| ^_^_nix| ^_^_pat| ^_^_piec| ^_^_pip| ^_^_postpon| ^_^_quick|
^_^_ran| ^_^_sat| ^_^_soon| ^_^_switch| ^_^_throw| ^_^_took| ^_^_went| ^_^_w| ^_^_zip| ^_a_buck|
^_after_all| ^_aim_for| ^_alert_at| ^_alex_can| ^_and_h| ^_another|Nduration ^_anyth_i| ^_anyth|i
^_a|N:few ^_best_way| ^_beth| ^_bit_of| ^_blast| ^_brb|Nduration ^_brought|th ^_can|P ^_can|i
^_can|w ^_cater| ^_chang_of| ^_chuck_corn| ^_company| ^_consider|th ^_cook_right| ^_cor_has|
^_could| ^_crank_to| ^_cut_th| ^_darlen| ^_dinner_tim| ^_dinner|mov ^_do_not| ^_door|did ^_drop|her
^_eat|Nduration ^_electric_is| ^_electric|is ^_explain_th| ^_fat_is| ^_first|N:few ^_for_N:few|
^_forget| ^_found_th| ^_fresh|out ^_fus_has| ^_fus|box ^_get_th| ^_giv_th| ^_giv| ^_great|P
^_had| ^_half_a| ^_half|a ^_happy| ^_her_P| ^_hit| ^_holler_at| ^_holler| ^_honestly| ^_how_would|
^_i_bought| ^_i_cook| ^_i_prefer| ^_i_would| ^_in_plac| ^_is_a| ^_it_n| ^_it|r ^_it|should
^_i|U ^_i|misread ^_i|never ^_jess_is| ^_jo_is| ^_jump_past| ^_keep_it| ^_kettl_is| ^_kettl|
^_kill_th| ^_kindly_inform| ^_knock|that ^_last_car| ^_liam_is| ^_liam| ^_liam|is ^_light|out
^_load|shedd ^_look_siz| ^_lower_it| ^_m_da| ^_mad_th| ^_middl_of| ^_mov|dinner ^_my_back|
^_my_flatmat| ^_my_phon| ^_my_roommat| ^_my|THING ^_my|cooker ^_my|eldest ^_my|grandson ^_my|oven
^_nic| ^_nip| ^_nix_th| ^_nix| ^_nix|th ^_no_sear| ^_nobody_her| ^_not_at| ^_not_a| ^_not_bother|
^_not_rest| ^_now_it| ^_no|worry ^_on_a| ^_our_lodger| ^_our|oven ^_oven_run| ^_oven_up| ^_oven|door
^_pat| ^_piec| ^_pip| ^_postpon| ^_power_has| ^_quick| ^_r_a| ^_ran| ^_right_i| ^_roast|in
^_roast|went ^_roll|ar ^_sat| ^_scratch|that ^_scrub|th ^_sear_is| ^_serv|at ^_set_th| ^_set|th
^_shout_when| ^_shov|th ^_show|N:core ^_skip_th| ^_skip|it ^_slic_my| ^_slic|my ^_slid_th|
^_smok_is| ^_so_do| ^_so_w| ^_soon_as| ^_soon| ^_sorry|i ^_sorry|that ^_start_th| ^_stick_som|
^_still_stuck| ^_strik_th| ^_supper|at ^_supper|is ^_switch_it| ^_switch_to| ^_switch| ^_switch|th
^_tabl_for| ^_tabl|for ^_talk_m| ^_th_flight| ^_th_gas| ^_th_leave-in| ^_that_is| ^_that|will
^_ther|is ^_ther|will ^_third|on ^_throw| ^_th|fan ^_th|flight ^_th|green ^_th|power ^_th|sear
^_took| ^_toss|th ^_tough_as| ^_traffic_is| ^_turn|that ^_w_ar| ^_w_must| ^_w_prefer| ^_w_wer|
^_wait|with ^_want_to| ^_went| ^_what_am| ^_what_if| ^_whatever|you ^_what|number ^_when|i
^_wher_would| ^_whip_it| ^_whip|it ^_who_has| ^_who|hav ^_will_THING| ^_will_not| ^_will_th|
^_will|you ^_without|DISH ^_w| ^_w|do ^_w|got ^_w|hit ^_w|prefer ^_w|ran ^_w|would ^_yes_go|
^_yes_that| ^_you_should| ^_zip| ^_zip|it a_N:some| a_Nweight|N:few a_THING_cast| a_THING_of|
a_bell_at| a_bell|when a_bit_later| a_block|sink a_bonfir|night a_bon|and a_buck_N:few| a_buck|
a_buck|N:few a_buzz| a_buzz|in a_coeliac| a_cold_oven| a_cold| a_few|roast a_flat| a_glass|THING
a_good|un a_green_DISH| a_joint_of| a_leg| a_leg|of a_new|THING a_nudg_at| a_nudg_in| a_party_of|
a_rib|of a_rim| a_rim|THING a_roar|when a_roast_without| a_second|tim a_shout_when| a_smidg_to|
a_smidg|to a_sprig_of| a_topsid|this a_v_THING| a_whil_yet| a_whol_ribey| about|Nduration_ago
about|allergy about|an about|an_inch about|th_guest about|th_roll about|to about|with absolutely|
add_another| after_Nduration|DISH after_go_up| after_hit| after_hit|N:core after_it|is after_that_what|
afternoon|f afternoon|f_that afternoon|shop afternoon|shop_is after|ring after|that_what again_from|
ago_i|put ago_not|N:few aim_to_eat| alarm_i|turn alarm|for_th alcohol|for alcohol|for_mrs alert_for|
alert_for|Ndegrees:core alex|can_stir all_at_th| all_behind_lik| all_behind| all_gon|ston all_i_hav|
all_over_my| all_over_th| all_they| all_too| all_too|much allergic_to|THING allergy_useful|
allergy_useful|to all|N:few_at all|go_to all|item all|of_it all|over_th already|carv alway_N:few|
alway_N:few|under alway_run|hot alway|N:few alway|N:few_under alway|say_N:few am_N:few|behind
am_all_behind| am_at_th| am_away_to| am_deaf|on am_go|to am_i_yank| am_i| am_lat_with| am_mil|
am_mil|off am_new_to| am_new| am_not_mak| am_on|m am_on|th am_out_of| am_tear| am_tear|my am_that|far
am_up| am_up|to am_walk| am_yet_to| amaz_in| amaz_in|her am|deaf am|get_full am|go_to am|her
am|i_lat am|i_look am|i_meant am|not_in am|not_touch am|tear am|tear_my am|that_far an_THING|on
an_alarm_in| an_alert_for| an_allergic| an_allergic|reaction an_extra_mouth| and_N:core|year
and_Nduration_for| and_P|hav and_anyth| and_bob_is| and_b| and_b|don and_can|not and_ditch_th|
and_ditch| and_ditch|th and_find|m and_giv|m and_go|to and_guest_ar| and_h|can and_i_can| and_if|i
and_is|N:core and_is|not and_it_go| and_it_has| and_it|is and_i|am and_i|can and_kilo_i| and_let|us
and_mak|it and_nobody|is and_remind| and_remind|m and_sam_is| and_sam|is and_skip| and_then_after|
and_they_hav| and_they|will and_th|whol and_turn|out and_what|tim and_what|would and_when|is
and_when|it and_why_do| and_w|will and_yell_at| and|N:few_THING and|N:some_$ and|after and|all_my
and|climb and|did_not and|everyth_$ and|h_will and|how_THING and|i_go and|i_think and|it_went
and|let_them and|not_a and|oil and|pet and|stand and|then_noth and|ti_$ and|tuck and|went and|when_it
another_N:few|has another_helper| another_helper|it another|Nduration_on anyth_on_th| anyth|on_th
anywher_in| anywher_in|th any|THING_left any|U_still any|good_$ an|THING_out an|alarm an|alert
an|alert_for ar_N:some|lat ar_Nduration|behind ar_away_N:some| ar_bang_on| ar_b|N:some ar_com_after|
ar_hav_DISH| ar_her_N:few| ar_her|all ar_my|choic ar_nic| ar_nic|and ar_no_way| ar_not|do ar_not|hav
ar_off_th| ar_roll|DISH ar_still_rock| ar_still|THING ar_stuck_in| ar_stuck_on| ar_ther|special
ar_th| ar_w|eat ar_w|get arm_on_th| arm_what| arm_what|do arm_with_th| ar|a_no ar|already ar|away_N:some
ar|bang_on ar|com_and ar|feral ar|glaz ar|go_to ar|no_longer ar|no_way ar|not_warm ar|still_lik
ar|stream ar|w_do ar|w_go ar|want ar|you_for as_if_i| as_if| as_if|i as_well_P| as_you|reckon
ask_about|allergy ask_how_long| ask_th_THING| ask_th|THING as|is as|it_was as|per as|well_so
at_N:core_THING| at_N:core_do| at_N:core_it| at_N:core_i| at_N:core|even at_N:core|th at_N:few_how|
at_N:few_i| at_N:few|so at_N:oven_how| at_N:some_past| at_Nclock_sh| at_Nclock_so| at_Ngas-mark|
at_it|now at_m_in| at_my_P| at_my_ex| at_right|about at_this|moment at_th|U at_th|dog at_th|firehous
at_th|tabl at_when| at|N:core_Ndate at|N:few_Ndate at|N:few_U at|N:few_how at|N:few_instead
at|N:few_rather at|Nclock_so at|Nclock_what at|at_N:few at|hom_th at|insid at|it_sinc at|th_colour
at|th_till availabl|in availabl|in_our away_N:some|of away|till aw| a|DISH_THING a|DISH_and
a|DISH_instead a|Ndate a|THING_for a|THING_truck a|U_N:core a|ball a|blush a|clu a|fan_oven
a|full a|hors a|leg a|leg_of a|lot_of a|man a|million a|mitt a|moment a|nic_bit a|piec a|plank
a|r_DISH a|r_win a|revers_sear a|shift a|shower a|singl_DISH a|sirloin a|sirloin_joint a|tablespoon
a|tablespoon_of a|tenner a|tim a|tractor a|we_bit a|week a|whol_DISH b_N:few_count| b_N:few_of|
b_N:some|lat b_bother_french| b_drink_in| b_faff| b_faff|with b_f|at b_go| b_her_at| b_her|at
b_honest_with| b_out|of b_ready|by b_ready|in b_set| b_set|to b_sit| b_sit|down b_spoon_th|
b_strain_th| b_well| b_well|don b_wrangl| b_wrangl|toddler back_N:some_th| back_a|bit back_by|N:some
back_from_th| back_from|th back_in|a back_that| back_to|lif back|N:core back|Nduration_$ back|in_$
back|in_N:some back|in_business back|in_door bad_new_th| baker|is_N:few band|overran bang_and|
bang_and|then bar_THING_it| bast_back|in bast|it_$ bas|yesterday bath_th|P bear_that| bear_that|in
bear|that bear|that_in beast|out_$ becom|N:some_i been_at|it been_on_sinc| been_open_this|
been_shov_in| been|N:few_$ been|out beep_so| beep_so|it befor_th|DISH befor|b_so befor|cut
begin|again_from behind_a|tractor behind_lik| behind_lik|th behind_th_cow| behind_with| behind|schedul_and
behind|sorry bell_when_sh| belly|com belly|com_U bell|when_sh best|way best|way_to birthday_girl|
birthday_girl|want bit_later| bit_of|gristl blam_th| blast_of_heat| blast|at_either bleed_quit_a|
bleed_quit| bleed_quit|a bless|her_U blood|everywher_th blood|thinner blood|thinner_and boat_is|
boat|is boil_and|rough boil_water_down| boil_water|on boil|for_DISH boil|water_$ bon_from|
bon_from|th bon_in_rib| bon_off|and bonfir_night_smok| bonfir|night_smok borrow|a borrow|a_THING
boss_tak_her| boss|keep boss|keep_THING bother_french| bother_french|it bother|tim bother|tim_th
both|don bottl|o bottom_and| bottom|of bottom|of_th bottom|shelf_$ bought_a_topsid| bout_Nduration|back
breath_ther_is| bring| brought_N:few| brought_th_oven| brown_it_at| br|m buck_N:few_on| buck_N:few|on
buck|N:few_on build_is_without| bump_everyth|back bump_it|up bump|everyth burn_my_arm| burn_my_wrist|
burnt|myself burn|pretty burn|pretty_bad bust|so_nowher butter_is_all| butter_is|not butter|w
buy| buzz|in buzz|in_Nduration buzz|m_in by_Nclock|wak by_a_power| by_rar_so| by|rar by|th_U
by|th_tim b|N:few_person b|N:some_lat b|ars b|at_N:oven b|away b|bother b|careful_with b|her_till
b|on_th b|ready_for b|ready_in b|ther_in b|to_god b|worri call_from| call_it|a call_m_when|
call_m|in call|them call|them_in cam_out_Nduration| cam_out|at can_drop| can_drop|th can_get_th|
can_i_talk| can_i|ask can_i|do can_i|tak can_i|talk can_miss| can_miss|that can_not_get| can_not_turn|
can_not|go can_not|hear can_not|pictur can_sh|hav can_start| can_w_br| can_w_get| can_w|hold
can_w|los can_w|still can_you_help| can_you_mak| can_you|believ can_you|giv can_you|help can_you|mak
cancel_th|green cancell_so|N:few cancell_that| cancell_that|is cancell_they| cancel|th_DISH
can|ask can|get_th can|go_$ can|i_ask can|i_freez can|i_tak can|miss can|miss_that can|not_breath
can|not_com can|not_do can|not_mak can|w_add can|w_br can|w_jump can|you_giv can|you_help can|you_wak
car|park cat_has| cat_has|been cater| center_when_w| center_when| center_when|w centr_still_N:few|
centr|N:core chair_and|th chang_it|to chang|to_imperial charg_of|DISH charg|of_DISH cheap_THING_alway|
cheap|THING_alway check_Nduration| check_Nduration|ago check_th|DISH chill|th_butter choic|again
choic|again_$ chok_h| chok_h|can clean_out| clear_it|all climb|fast_$ clock_for|th clock_is|tick
clock_on_th| clos_th_interstat| clos|th_interstat coeliac_my| coeliac_my|P cold_by|Ndegrees:some
com_Nduration_too| com_Nduration|later com_and_find| com_for|help com_in_Nduration| com_it|is
com_sh_got| com_with|a com|on_$ com|to com|to_tak com|with_Nduration conk_out|on cook_no|r
cooler| cop|i correction_it| could_dinner_b| could_do_with| could_do|with could_i_swap| could_w|do
could_yell| could_yell|at could_you|plan could|dinner_happen could|i_get could|i_swap could|w_hav
could|w_push count_m_Nduration| count_th|bairn cousin|ar_com cover|it cover|loosely_in crank_to_N:oven|
crank|her crank|to crank|to_N:oven crept|up_to crisp_th| crisp|th_outsid cross_that| cross_that|off
cross|that cross|that_off crunchy_not| crunchy_not|ready cry_into| cry_into|th cry|into cry|into_th
ctrl| ctrl|z ctrl|z_$ current_has| current_has|gon current|cam cut_off|it cut_or| cut_or|ti
cut|it_now cylinder_is| cylinder_is|empty c|put c|put_it daft|hot darlen|do darlen|do_keto
dav_is_lot| dav_is| day|go_to da|will deaf|on deaf|on_left degre_c|put degre_in|fahrenheit
delay_everyth_by| delay_it_by| delet|mac delet|mac_timer delet|th diall_back_to| diall_back|
diall_back|to dial|is_at did_get| did_i|put did_not|hav did_not|mean did_put| did_you|hear
did_you|se did|i_wreck did|not_shut did|that_ag diet| dinner_Ndate| dinner_at_th| dinner_back_by|
dinner_b| dinner_is_Nduration| dinner_roll| dinner_roll|ar dinner_they| dinner_tim_is| dinner|b_Nduration
dinner|b_at dinner|for_tonight dinner|roll_homemad dinner|sorry ditch_th|DISH ditch| do_DISH_with|
do_N:core_sound| do_N:core|sound do_N:few|calibrat do_a|revers do_i_throw| do_instead_of| do_it_lik|
do_it|want do_i|believ do_i|slic do_i|start do_i|want do_i|warm do_metric_so| do_not_n| do_not_you|
do_right| do_th|roast do_w_tak| do_with|DISH do_w|stand do_you_mak| do_you|even do_you|say
do_you|think dog_THING_th| dog_back| dog_back|in dog_i| dog|out_for don_and_in| don_my|P don_th|DISH
don|with_it door_hang| door_hang|open door_so| door_to_borrow| door|of_th door|to_borrow door|was_hang
down_Nduration|after down_a_smidg| down_all|N:few down_at|N:few down_a|notch down_a|treat down_back|in
down_lik|a down_my|leg down_to_th| down|a_smidg down|for_Nduration down|my_leg down|th down|to_a
do|anyth_$ do|for_m do|i_b do|i_carv do|i_stick do|i_tell do|instead do|instead_of do|it_by
do|it_in do|not_$ do|not_mak do|not_own do|not_trust do|not_worry do|th_high do|w_stand do|water_boil
do|without_th drink|in_THING driv_m|THING driv_th| driv|th_sitter drop_th|oven drop|th_heat
drown|her dry|as_toast d|dong d|dong_N:core early_so|shav early|can earth_do_N:few| eas_it|
eas_it|down eas|it eas|it_down eas|th eas|th_oven eat_P| eat_at| eat_by|Nclock eat_it|at eat_it|pink
eat_with|us eat|it_at electric_is| electric_is|off electric_keep_go| electricity_back| electricity_back|after
electricity|sinc electricity|sinc_Nclock els_could| els| enamel| end_not|th end_of| end|of_it
enough_THING_for| eta_on|th even_touch| even_touch|th even_w| even|peel even|risen every_last|DISH
everyth_for|N:some everyth_slip_by| everyth|in_fahrenheit everyth|in_th expect_N:some| expect_N:some|for
explain_th_revers| explain|m extra_Nduration|on extra_mouth_to| extra_mouth| extra_mouth|to
ezra_left_th| fallen|Nduration fallen|Nduration_off family|is_run fancy_blast| fancy_blast|at
fancy_do| fancy_som_roast| fan|oven_and fat_in_th| fat_in|th fat_is|hot fat_trim|down feed|at
feet_what| feet_what|is fell|out ferry|is_cancell fetch_th|P fetch|P_$ fetch|th_P fewer_los|
fewer_los|th few|roast few|roast_DISH find_th|THING find|m finger_with| finger_with|th finish_with_th|
finish_with|th finish|that finish|yet_$ first_lot_hav| first_lot|hav first_or| first_then|low
fir|it fir|up_th fix|to_f flam_lid| flam_lid|on flat|out_her flick_th_oven| flight|is_delay
flip|th_breaker floor|is folk_get| folk_get|her folk|go folk|go_to folk|will for_DISH_sinc|
for_Nduration_it| for_Nduration_then| for_Nduration_walk| for_another| for_degre_c| for_dinner_at|
for_dinner|sorry for_green| for_green|DISH for_help|in for_th_N:few| for_th_lot| for_th_parish|
for_th|dinner for_th|littl for_th|next for_th|roast forerib_on_th| forerib_on| forerib_on|th
forget_th_old| for|N:few_$ for|N:few_and for|Nduration_now for|Nduration_then for|Nduration_what
for|Nduration_would for|a_peek for|another_Nduration for|pay for|pay_customer for|th_green
for|th_old found_out|U found| fre_from| freez_what_is| freezer_so| freezer_so|cross fridg_is_bust|
fridg|is_bust from_N:core_last| from_N:core|last from_N:core|to from_N:oven| from_rugby|tagg
from_th|DISH from_th|THING from_th|oven from|bottom from|her from|now_till from|th_oven full_cook_no|
fyi_this_th| f|th_chook gain_Ndegrees:few|in gam_is| gam|start gam|start_at gang_is_all| gary|is
gas_has_been| gav_m|a get_ic_back| get_to|th get|away get|away_with get|on get|on_with get|them
girl|want girl|want_supper giv_m|a giv|it_a gi|m glov_is| go_down_a| go_driv| go_driv|th go_on_th|
go_out_for| go_straight|to go_to|bother go_to|help go_to|n go_to|trim go_to|walk go_upstair_for|
go_up|in go_which_is| god| god|it_look gon_out| gon|from gon|to_THING good|N:some_lat good|un
got_N:core|in got_N:few_THING| got_N:few_of| got_Nweight| got_an| got_a|leave-in got_a|shift
got_burn|pretty got_electricity_back| got_for| got_my|P got_no|THING got_th|crud got_tim| got_to_th|
got_to|that got|a_nic got|an_extra got|my_THING got|th_crud got|their go|at_it go|careful_with
go|her go|her_Nduration go|in_now go|long_Nduration go|on go|over_N:core go|past go|to_bother
go|upstair_for granddad_is|not granddad|is granddad|is_not greas|is great_P_is| green_DISH|too
green_on|th green|DISH_too green|DISH_underway green|on grill_h_is| guest_at_th| guest_is_already|
guest_is|U guest_will_not| guest|ar_in guest|at_th guest|to_N:few guest|will_b h_at_th| h_is_at|
h_is|a h_is|after h_is|on h_is|scream h_is|still h_mak| h_pour_th| hack|into had_to|go halfway_or_DISH|
half|ar_park half|now_N:core hall_all| hall|all ham| handl_it_was| handl_it| handl_without_a|
hang_on_it| hang_open_and| hang|fir_will hang|in_th hang|on happen_at_onc| has_U|DISH has_been|cut
has_drop|out has_gon|way has_got|th has_offer| has_offer|to has|been_put has|been_sit has|com_back
has|com_out has|di has|gon_THING has|gon_over has|gon_up has|not has|touch hatti_is_allergic|
hat|that haul|th_beast haul|th_roast hav_N:core|in hav_Nduration_of| hav_a_Nweight| hav_a_helper|
hav_all_sat| hav_an_allergic| hav_another_helper| hav_a|Nweight hav_a|leave-in hav_a|r hav_chang|my
hav_drop|th hav_eas| hav_eas|th hav_fallen|Nduration hav_gon_and| hav_got_Nweight| hav_haul|
hav_haul|th hav_hit|roadwork hav_kept|th hav_knock_it| hav_lost_my| hav_mad_th| hav_not_kept|
hav_not_touch| hav_not| hav_not|peel hav_peel_th| hav_perch_it| hav_plenty| hav_prim_rib| hav_pull|th
hav_salt_it| hav_taken|th hav_their_at| hav_their| hav_to_collect| hav_to|do hav_to|go hav_turn_it|
hav_with|it hav_you|don hav|DISH_as hav|Nduration_of hav|all_gon hav|an hav|arriv hav|caught
hav|had hav|i hav|it_medium hav|it_pink hav|lost_Nduration hav|not_carv hav|not_gon hav|not_got
hav|not_pull hav|not_put hav|not_touch hav|overcook hav|overcook_it hav|reach hav|rung hav|shown
hav|taken_th hav|trip hav|trip_someth hav|walk_N:few hav|you_don head|out_to heat_all| heat_all|th
heat_at|th heat_in_half| heaven_is|sak help_till| help|from_Nclock help|in_THING help|m_$ help|now_$
henderson_ar| her_at|N:few her_back_to| her_chair_and| her_for|another her_i_am| her_i|am her_well|don
her|chair her|eat her|eat_pink her|go her|lip_ar her|rar_cold her|tablet her|till_N:few hey_i|
hey_i|am hid| high_in| high_in|boil him|off_that his|flatmat his|flatmat_invit his|lip his|mouth
his|nos hit_N:core|whil hit_m|with hit_th|oven hit|m hit|roadwork hit|th_oven hit|th_tabl hoick_th_THING|
hold_everyth_for| hold_it|is hold_on_a| hold|dinner_by holler_when_it| holler| honest_with|
honest_with|m hot_for_th| hot_in|her hot_it| hot_it|is hotter_than|sh hot|THING_with hot|fat_$
hous_afternoon| hous_afternoon|shop how_am_i| how_can_w| how_can|w how_do_you| how_far|off
how_is_my| how_is|my how_it|was how_long|till how_many|THING how_must|i how_pink_would| how_would|i
how|THING_a how|com_i how|long_befor how|long_for how|long_has how|long_hav how|long_is how|long_till
how|long_to how|many_THING how|many_day how|many_degre how|many_gram how|much_DISH how|much_cream
how|much_longer how|much_of how|to_get how|w_travell h|at h|at_th h|do_not i_allow_to| i_am_mil|
i_am_new| i_am_tear| i_am_up| i_am_walk| i_am|deaf i_am|her i_am|tear i_bought|a i_burnt|my
i_can|ask i_can|get i_check|it i_chuck_th| i_crank_th| i_cut_my| i_did_put| i_do_with| i_fancy_do|
i_forgot|to i_get|th i_got_burn| i_got_tim| i_grab| i_grab|th i_had|th i_hav_chang| i_hav_eas|
i_hav_haul| i_hav_kept| i_hav_sat| i_hav_turn| i_hav|an i_hav|fallen i_hav|it i_hav|overcook
i_hav|said i_hav|taken i_hav|walk i_keep|hear i_know_it| i_let|it i_lik|th i_ought| i_ought|to
i_press_it| i_put_th| i_put|in i_say|to i_shut_it| i_shut_th| i_slic|it i_still_n| i_stuck_th|
i_tak_th| i_talk_normally| i_talk|normally i_think|in i_thought|w i_touch_raw| i_trust|it i_turn|th
i_want_for| i_want|for i_want|to i_was_look| i_wash_my| i_was|hav i_wiggl_it| i_will_mind|
i_will|not i_work_in| i_would|brown i_would|do i_would|go ic_back| ic_back|in id|say_they if_i_slic|
if_i|am if_i|pull if_nobody|is if_someth| if_they|ar if_you_do| if_you|n if|you_would ill_b|Nduration
in_N:few_to| in_Nduration_DISH| in_Nduration_yell| in_Nduration|th in_a_glass| in_and_i| in_belly|
in_belly|com in_celsius_would| in_degre| in_early_so| in_half|now in_her|chair in_i_am| in_instead_of|
in_instead| in_instead|of in_law_do| in_law_pull| in_law|has in_law|want in_my|THING in_our_hous|
in_rib| in_th_hot| in_ther_say| in_ther|and in_this| in_this|THING in_this|plac in_th|last
in_th|moment in_th|shower in_th|supermarket in_th|top in_tinfoil| in_tinfoil|now in_wer_back|
in_w|hav in_yet_still| insid_temperatur_is| instead_of|salt instead_of|win instead|of_a interstat_folk|
interstat_folk|go interstat|folk interstat|folk_go into_it| inverter_run_th| in|N:few_to in|Nduration_pet
in|Nduration_steep in|U in|a_glass in|a_tick in|already in|her_for in|hiv in|it_yet in|law_will
in|rib_nobody in|th_center in|th_liv in|th_meantim in|that in|ther_and in|this_THING iron|pan_$
is_N:core_medium| is_N:few|to is_N:oven_and| is_N:some|ml is_Nclock_and| is_Ndegrees:few|high
is_Nweight_and| is_Nweight|N:few is_a_bag| is_a_bon| is_after_hit| is_all_i| is_all_too| is_all_w|
is_all|her is_already|com is_alway_N:few| is_alway|N:few is_any|U is_an|Nweight is_at_a| is_a|N:few
is_a|hot is_a|we is_back_to| is_bleed_quit| is_by|Nclock is_cancell_they| is_chok_h| is_chok_on|
is_chop| is_cook| is_cri| is_cri|off is_cut_or| is_cut_th| is_do_a| is_don_and| is_do|th is_driv_m|
is_fir_in| is_for|N:few is_fre_from| is_go|long is_grey_all| is_grey|all is_her_and| is_her_sh|
is_in_and| is_it_dangerous| is_it_th| is_it|com is_it|dangerous is_it|out is_join_th| is_kaput_it|
is_knock_off| is_knock|off is_leak|fat is_left_and| is_lik|seawater is_load| is_look_so| is_lost|th
is_mix_and| is_my_roommat| is_my|P is_m| is_not_N:core| is_not|up is_not|yet is_nowher|near
is_off_th| is_off|i is_on_again| is_on_a| is_on_blood| is_on|blood is_out_and| is_out_god|
is_pain_too| is_plan_for| is_plus_N:few| is_point|at is_pur|vegetarian is_read_daft| is_read|Ndegrees:core
is_right_U| is_rock|up is_roll|up is_run_Nduration| is_sat_on| is_sat|down is_say|N:core is_sear|now
is_sh|look is_sit_in| is_smell|incredibl is_smok_com| is_smok_in| is_smok_lik| is_starv_br|
is_stay|in is_still_to| is_ston|dead is_stuck_on| is_tell|m is_th_next| is_th_target| is_that_go|
is_that|all is_that|enough is_thin_as| is_this|on is_this|th is_th|cor is_th|temperatur is_th|third
is_th|tim is_too|much is_top| is_what_they| is_when_i| is_without|light is|N:few_blam is|N:few_high
is|N:few_of is|Ndegrees:some_hotter is|THING_$ is|THING_anyth is|THING_lover is|a_gas is|all_carv
is|already_N:core is|arm is|arm_is is|at is|at_N:few is|at_Nclock is|at_Ndegrees:core is|at_my
is|beep_it is|blister_carry is|bring_her is|caught is|collaps is|com_after is|com_out is|complet_$
is|cover_in is|don_it is|down is|for is|given is|given_up is|grey_and is|hav_it is|hot_th is|in_at
is|it_all is|it_for is|it_ruin is|lat is|left is|long is|medium_well is|not_brown is|not_hav
is|not_mad is|not_requir is|off_th is|offer is|on_N:some is|on_Ngas-mark is|on_and is|on_chemo
is|on_plat is|read_N:oven is|rest_Nduration is|right_$ is|run_Nduration is|sh is|snap is|still_at
is|ston_dead is|strain is|th_countdown is|th_gam is|th_story is|th_temperatur is|th_trick is|that_normal
is|that_on is|that_right is|that_saf is|them is|to is|turn_up is|uncover is|uncover_by is|under_THING
is|water is|what_th is|whol_noth is|yet it_all|over it_and_then| it_and|i it_and|it it_another|Nduration
it_at_N:oven| it_b_when| it_by|Nduration it_can|not it_com|up it_dangerous| it_down_and| it_down_i|
it_down|and it_halfway| it_hav_to| it_is_N:some| it_is_hit| it_is_my| it_is_sat| it_is_smell|
it_is_so| it_is_touch| it_is_your| it_is|already it_is|at it_is|heat it_is|sat it_is|set it_is|uncover
it_is|under it_off_at| it_ok|to it_on|cours it_out_it| it_out_or| it_out_this| it_reach| it_reach|N:core
it_rest|for it_run|a it_run|cold it_say_Ndegrees:core| it_say|on it_show|N:few it_slid| it_suppos|
it_they| it_upsid| it_upsid|down it_up|now it_w_hav| it_was_Nduration| it_was|hot it_was|out
it_whil_it| it_whil| it_will|go it_w|hav it|a_roast it|all_right it|away_$ it|back it|back_$
it|com it|dangerous it|down_yet it|has_becom it|has_been it|has_crept it|has_got it|i_do it|in_N:few
it|in_it it|is_Ndegrees:core it|is_Ndegrees:some it|is_U it|is_boneless it|is_chewy it|is_cool
it|is_off it|is_still it|is_tent it|is_uncover it|matter_$ it|off_Nduration it|off_at it|on_cours
it|open it|out_it it|out_this it|say_N:core it|still_b it|suppos_to it|to_N:core it|to_Nclock
it|up_N:few it|was_N:core it|was_Nduration it|was_a it|will_tak it|would_b i|am_N:few i|am_Nduration
i|am_a i|am_all i|am_at i|am_back i|am_behind i|am_deaf i|am_driv i|am_drown i|am_get i|am_go
i|am_never i|am_new i|am_put i|am_tear i|am_up i|am_watch i|believ i|believ_$ i|can_carv i|carv_$
i|carv_it i|did_put i|do_DISH i|forgot_$ i|go_and i|got_N:core i|had_my i|hav_already i|hav_help
i|hav_her i|hav_now i|hav_pull i|hav_slic i|hav_th i|hear_you i|left_th i|look_for i|meant_Nduration
i|n_Nduration i|n_a i|n_from i|put_my i|remov_it i|ruin i|said_it i|saw i|should_b i|talk_normally
i|think_so i|thought_i i|took_it i|trust i|turn_them i|want_for i|want_it i|want_th i|warm
i|was_look i|will_do i|will_mak i|will_se i|would_brown i|would_not i|would_rather jar_of_THING|
jaysus_th|pan jess_is|do job_in| job_is|a join_th|party joint_in_th| joint_is_in| joint_of|
joint_of|THING joint_went| joint_went|in jo|will_handl jud|can jud|can_help jump_in|th jump_past_th|
kaput_it| kaput_it|mak keep_go|off keep_him|off keep|hear keep|his keep|it_down keto_do_not|
kevin|tak kevin|tak_his kick_off| kill_for_a| kill_that|timer kill_th|oven kilo_if_you| kilo|and
kindly_put_N:few| kindly_remind| kindly|inform_what knock_th_whol| knock_that_timer| knock|N:few
knock|N:few_off knock|it_back knock|it_off know_th|second know_when|Nduration know|th_second
kumara_on| kumara_on|th kumara|on kumara|on_th lad_from_rugby| lady| lad|touch lad|touch_th
last_night_befor| last_night|befor last_on_i| last|DISH_of last|look_N:core last|look_it lat_how|
lat_so_w| lat_so|count lat_they| lat_what| lat_with|everyth later_th_P| later_than_w| law_do|
law_has_U| law_pull| law_pull|up law|ar_at law|has law|want lay|it leak|fat leak|fat_onto learn_about_my|
leave-in|THING_$ leave-in|on_say left_that| left_that|door left_th|THING left_th|door left_to|do
left|it_in left|th_THING left|th_door left|that left|to_do let_th|cat let_us_los| let_us_mak|
let_us|hav let|m_know let|us_begin let|us_go let|us_los let|us_start liam_is| liam|is lid_th|
lid_th|THING lift|it_out lift|off light|hav_di lik_her_well| lik_how| lik_i_am| lik_th|THING
lik_to_serv| lik_to|serv lik| lik|her_cremat lik|seawater lik|th_cow list_all| list_all|th
list_nobody_eat| littl_lad| littl_lad|touch littl_oven| littl|U_is littl|devil littl|light
littl|pink long_enough_to| long_hav_th| long_till_w| longer_do_it| longer_do| longer|do_it
longer|than_you long|mor_will long|till long|till_dinner look_after_th| look_after|th look_it_was|
look_so| look_so|i look|and look|at_$ look|at_m look|in look|insid loosely_in_tinfoil| lost_th|THING
lost|th_thread lost|track lot|ar_go lot|ar_her lot|hav_arriv lot|of_us lovely|and low_flam_lid|
lower|third lowest_it| low|and low|to_tak luca|is_ground m_N:few_for| m_U_ther| m_a_buzz| m_about|
m_and_i| m_and|i m_and|th m_an|alarm m_a|N:few m_a|r m_a|yell m_da|will m_down|for m_how_to|
m_how|th m_if| m_it_was| m_it|is m_missus| m_of| m_of|th m_th_choic| m_through_th| m_th|DISH
m_th|shop m_th|simpl m_till|it m_up| m_when_w| m_when|Nduration mad_excus| mad_excus|m mad_it_to|
magic_number| maisi|can maisi|can_giv mak_with_m| mak|N:few_DISH mak|U_a mak|a_nois mak|dinner_N:oven
mak|som mak|som_nois many_THING|in many_minut_till| many|DISH_$ many|DISH_for many|THING many|minut_till
marco_sit| marco_sit|down meant_for| meant_for|you medium_rar_i| medium_rar_or| medium|rar_U
medium|rar_i medium|rar_that medium|well_that medium|what menu|tonight messag| method_for_green|
metric_so|weight metric_system| metric_system|for metric|system metric|system_for middl_when_w|
middl|N:few mind_a| mind_a|DISH mind_crisp| mind_crisp|th mind|it_myself minut|left_on misread_it|is
ml| ml|of mob_is_rock| mor_ar| mor_ar|com mor_for_dinner| mor_will| morn|so mor|plac mouth|to
mouth|to_f mov|dinner_up mov|on_to much_salt_do| much_salt_go| much_salt_in| much|THING_$ must_eat_Nduration|
must|i_do must|th_DISH my_P_P| my_P_jud| my_P_never| my_P_sh| my_P_swear| my_P|is my_P|on my_P|text
my_THING_speak| my_THING|speak my_arm_what| my_boss|keep my_cheap| my_cheap|THING my_ex|is
my_flatmat| my_freezer_so| my_in| my_in|law my_mind_crisp| my_oven|alway my_palm|try my_plac|
my_roommat|dev my_thumb_is| my_thumb_it| my_tod_now| myself_so| myself_so|drop myself_with_th|
myself_with| myself_with|th myself|so myself|so_drop my|P_alway my|P_bridi my|P_h my|THING_th
my|eldest my|glass_$ my|lif my|parent my|plan my|thumb m|a_timer m|in_N:some m|th_shop m|to_check
m|with_th n_Nduration|befor n_a_THING| n_mor|tim n_th_Nduration| n_th|DISH n_to_bath| n_to_get|
n_to|DISH n_to|check n_to|pick nagg_it| nagg_it|is near|th_bon near|to never_got|th never|go
never|go_to never|know new_to| new_to|this next_door|to next_step_i| next_to|th next|job_$
next|th nic_bit_of| nic|and_golden night_befor|b night_in| night_smok| night_smok|pour night|befor_b
nip_to| nip_to|th nip|next nip|next_door nip|out_for nip|to nix|th_Nduration no_DISH_w| no_DISH|tonight
no_electricity| no_electricity|sinc no_fancy_blast| no_i|meant no_later_than| no_light| no_mak|
no_n_for| no_r|win no_str_in| no_wait_what| no_way|near no_w|ar nobody_her|eat nobody_is|THING
nobody_told|m normally|or normally|or_ar not_at|all not_availabl|in not_b_faff| not_b_in| not_bother|tim
not_bother|ty not_b|ars not_b|join not_call_it| not_call_m| not_call| not_carv_it| not_clean|
not_com|on not_cop|i not_even_touch| not_even|peel not_even|risen not_got_no| not_got_to| not_hear|
not_in_th| not_i|carv not_i|open not_kept| not_mad_excus| not_meant_for| not_mean|to not_mind_a|
not_n| not_n|tell not_past_N:core| not_peel_anyth| not_put_it| not_put_th| not_reduc|enough
not_rest|long not_se_th| not_think_i| not_think|i not_turn| not_what|i noth_cut_off| noth_green_on|
noth_has_been| noth_in|it noth|has_been not|a_THING not|a_drop not|any_THING not|b_Nduration
not|b_her not|b_right not|believ_this not|bother_m not|bother_with not|brown_yet not|catch_that
not|clos_full not|do_dairy not|do_fahrenheit not|do_gluten not|don_it not|eat_anyth not|eat_dairy
not|eat_nut not|get_her not|get_m not|go_near not|got_no not|got_to not|hav_dairy not|i_carv
not|know_th not|past not|peel_anyth not|pictur not|pictur_pound not|shut_properly not|think_i
not|trust not|up not|us_it now_and_i| now_and|how now_and|th now_i|hav now_th_band| now_they_ar|
now_w_ar| now_what_to| nowher_to_chill| nowher|near_$ now|cressida now|cressida_had now|do_not
no|THING_no no|fan_$ no|fancy_blast no|forget no|mor_THING no|n_of no|that_is no|wait nuala|
nudg_at| nudg_at|N:some nudg_it| number|do_i number|for_th number|on_th n|for_N:few n|from
n|m_$ n|not_call n|tell n|tell_every n|to_shop of_DISH_do| of_THING_for| of_THING|after of_THING|over
of_heat| of_heat|at of_th_cousin| of_that_yank| of_them_hav| of_th| of_th|afternoon of_what_to|
off_N:few|guest off_at_th| off_in_th| off_th|counter off_th|pac off_th|timer offer_to_do| off|i_kill
off|it_N:few off|schedul_$ off|so_it off|to_get off|to_pick of|N:few_$ of|THING_Nweight of|U_$
of|gristl of|our_guest of|water ok_U| ok_what| ok|look_N:core old_oven| on_N:oven|now on_at|th
on_a|second on_blood| on_blood|thinner on_fir_and| on_it_and| on_it|and on_let| on_let|m on_my|own
on_our_whol| on_th_littl| on_th_second| on_th_wet| on_that|timer on_this|on on_th|board on_th|bon
on_th|greas on_th|left on_th|pan on_th|roast on_th|th on_th|trivet on_with|DISH onto_th|floor
onto_th|lino onto|th_floor on|N:oven on|Nduration_$ on|THING_is on|again_thank on|blood on|blood_thinner
on|chemo_so on|cours_for on|earth_do on|for_Nduration on|m_it on|m_ston on|m_tod on|my_end
on|th_rarer on|th_road on|tim_$ on|to_th open_th_P| open_this| open_this|whol or_alcohol| or_alcohol|for
or_ar_ther| or_lid_th| or_should|i order|of or|a_THING or|ti or|ti_anyth ought_to| ought_to|b
our_P|got our_guest_is| our_hous| our_whol| our_whol|street our|P our|cooker our|cooker_is
our|kev our|lodger out_U_P| out_and|it out_at_th| out_at| out_god| out_god|it out_how| out_in|hiv
out_in|th out_it|was out_i|hav out_my|P out_now_and| out_of_my| out_of|DISH out_of|THING out_of|U
out_of|you out_th_oven| out_they|ar out_th|door out_th|sear out_to|get out_to|walk out_what_do|
out_what|do out_when| out_whol_road| out|Nduration_is out|U_P out|her_and out|of_THING out|of_butter
out|sh oven_Nduration|back oven_b_set| oven_beep_it| oven_clock_is| oven_door_hang| oven_door_is|
oven_door|on oven_glov_is| oven_has|got oven_i_put| oven_is_down| oven_is_pack| oven_is_ston|
oven_is|a oven_is|back oven_is|banjax oven_i|hav oven_li_it| oven_meant| oven_on_for| oven_run_Ndegrees:some|
oven_run|a oven_set_at| oven_set_to| oven_set| oven_set|at oven_switch_itself| oven_will|not
oven|N:oven oven|and_what oven|b_on oven|door_U oven|for_Nduration oven|glov_$ oven|has_com
oven|has_di oven|is_down oven|is_fan oven|is_off oven|is_too oven|now oven|off_$ oven|off_and
oven|run_Ndegrees:few oven|set_at oven|sinc_Nduration oven|yet oven|yet_$ over_a_rim| over_and_don|
over_a|THING over_from| over_is|that over|a_rim over|at_N:oven over|her_$ pain_too| pain_too|much
pair_of|THING palm|try palm|try_to pan_with_a| pan|no party_of|N:few pass_m_th| past_N:core|by
past_well_dry| past|with past|with_th paus_for_a| peac_put_them| peel_anyth|yet peel_every_last|
peopl_ar|her peopl_how| perch_it| perch_it|on person_is|vegetarian person_will_b| person|is_vegetarian
per|THING_$ per|kilo per|kilo_$ per|person pescatarian| pick_th_P| piec_w| piec_w|hav pink_is_it|
pink_would| pink_w| pink|would_it pitch_in_from| plan_dinner| plan_dinner|roll plan_for|Nclock
plan_got| plan|for_a plan|h plan|h_has plus_N:few|has plus|N:few_confirm point|at_N:core pok_it_in|
pop_out_to| pop|is pop|next pop|next_door pop|out pop|out_for porch| postpon_th|dinner postpon|th_dinner
pound_and|fahrenheit pour_th|boil power_has| power_has|gon power_is|on power_went|out power|di
preacher_is_go| prefer_on| prefer_on|th prefer|to press_th_wrong| pretend_i_never| priya_will|
priya_will|do priyanka| priyanka|is priyanka|is_vegetarian priya|is_her puff|up pull_into_th|
pull_th|roast pull|for pull|for_a pull|it_at pull|temperatur_$ put_DISH_cream| put_THING_over|
put_it_back| put_it_up| put_them|again put_us|down put|N:few_timer put|THING_in put|it_in put|m_down
put|th_dinner put|th_small put|you_on quantity_of| quick|N:some quick|N:some_near quit_a| quit_a|bit
quit|a quit|a_bit r_th|bell rar_P_still| rar_and_b| rar_sam_for| rar_so|rar rar|that rat_ill_b|
read_daft| read_daft|hot ready_or| read|Ndegrees:core read|is reckon_it|will reduc|enough reduc|enough_to
remind_m_of| remind|m_how remind|m_of remov_th|roast rest_Nduration|already rest_do| rest_now|th
rest_of| rest_of|th rest_yet| restor_th| restor_th|old rest|Nduration rest|of_th revers_sear_th|
ribey_roast_no| ribey|roast_no rib|roast_$ rib|roast_scal rid_of_th| rid_of|th right_DISH|ar
right_U| right_U|th right_at_th| right_back_to| right_i_am| right_i|am right_now| right_who_is|
right_who| right|about right|about_now right|wher right|wher_wer right|you rim|THING risen_to_N:core|
risen_to| risen_to|N:core risen|to risen|to_N:core road_Nduration| roar_when| roast_DISH_with|
roast_from| roast_into_th| roast_in|a roast_in|at roast_is_still| roast_no| roast_no|bon roast|DISH_too
roast|Nweight_$ roast|cam_outsid roast|in_oven roast|is_at roast|is_ti roast|out_$ roast|without
rock|solid rock|up_already roll_DISH_is| roll_ar|out roll_go| roll_it| roll_i| roll_i|hav roll|ar_not
roommat|dev roughly_how| roughly_when_can| rough|up rub|that rub|that_out rugby|tagg rugby|tagg_along
run_a|good run_back| run_back|in run_next_door| run_th|light rung_they_will| runner| run|Ndegrees:few_cool
run|cold_by run|hot_Ndegrees:some run|lat_Nduration run|to_th ruth_can| ruth_can|do ruth|can
ruth|can_do r|DISH_so r|N:core_in saf_for_th| saf_to|DISH saf|for_th said_sh| said_sh|would
said_to|th said|that_$ salt_do|i salt_in_th| salt_in|th salt_is_not| salt_it|twic salt_per|kilo
salt|it_all sam_for| sam_for|th sam_temperatur|all sam|is_on sat_down_all| sat_on_th| say_N:few_mor|
say_N:oven_and| say_N:some_in| say_Ndegrees:core|on say_h_will| say_it_was| say_it|again say_m_in|
say_oven| say_to_th| say_well_don| say|N:core_should say|N:oven_and say|someth_onc say|th scald|my_wrist
scrap_th|roll scratch|that_i screen|how screen|how_about sear_at|th sear_is_finish| sear_is|don
sear_keep_it| sear_this| sear_this|tim sear|at_all sear|is_begun sear|is_don second_of| second_shelf|
second|shelf second|tim second|tim_$ sec|ago serv|at_N:core serv|up set_an| set_an|alert set_at|Ndegrees:oven
set_th|THING set_th|roll set_to|Ndegrees:oven set|an_alert set|at_Ndegrees:oven set|th_THING
set|th_roll se|th_timelin sh_can|not sh_do|not sh_got_th| sh_has_had| sh_is_hit| sh_is|bring
sh_is|don sh_is|hit sh_will|stop shall_eat| shall_eat|at shall|eat shall|eat_at shelf_N:few_from|
shellfish_allergy_useful| shellfish|allergy_for shellfish|sh shift_everyth_by| shoot_it_is|
shoot_that_DISH| shoot|for shoot|it shoot|it_is shop_back|in shop|did shop|did_not shop|had_no
should_i_trust| should_i_turn| should_i|get should_i|panic should_th|oven should|hav_been should|i_do
should|it_b should|ther should|ther_b shout|at_m shout|when_sh shov_in|alongsid show_N:some_so|
show_m| shower_back| shower_back|in shower|giv shower|giv_m show|N:core_in show|N:few_too sho|
shut_it|off shut_that|door sh|cut sh|is sh|want sh|will_b sid_fewer_los| sign_up|for simmer_sinc|
simmer_sinc|Nclock sinc_Nclock_and| sinc_th|U sinc_th|summer sit_in_th| sit_in|th sit_on_th|
sit|down_Nclock siz| skip_th|next skip_th|trim skip|it_$ skip|th_trim skip|that_bit skip|this_$
slic_my_thumb| slid|off_th slid|th_roast slip|by slip|by_Nduration slow_go|her slow_then|blast
slow|go_her small_oven_on| smash_and_DISH| smash|and smash|and_DISH smell_amaz_in| smell|incredibl
smidg_to| smidg_to|N:oven smidg|to smidg|to_N:oven smok_alarm|is smok_lik| smok_lik|a smok|in_her
smok|pour_off snow_clos| snow_clos|th snow|clos snow|clos_th so_call| so_call|it so_green|
so_green|DISH so_it|is so_keep_him| so_knock| so_knock|N:few so_mak| so_scrap| so_scratch|
so_scratch|that so_tak|it so_that| so_warn| so_warn|m so_what_ar| so_wher| sod| som_nois_at|
someth_onc_it| someth| someth|i_can soon_as|sh sooner_P_ar| sooner_than_plan| sooner_than|
sorry_it|is sorry_you| sort|th sound_right| so|N:few_fewer so|behind so|drop so|drop_their
so|i so|i_stab so|let so|rar_it so|shav so|shav_N:few so|tak_that so|w_eat so|weight so|weight_in
spark_and| speak|celsius_N:some splash_of_water| splash|of_water spoon_th| sprig_of| sprig_of|DISH
stab_it_with| stand_in|for stand|rib_Nweight start_lat_so| start|a_Nduration start|it_hot start|now_$
starv_br| stat|of steady_heat_all| steady_heat| steady|heat_all step_my| stick_Nduration_on|
stick_it_on| stick_it|on stick_som_green| stick|som still_N:few|rib still_crunchy_not| still_n|to
still_on_track| still_stuck_on| still_to|com still|DISH_$ still|N:few still|at still|n_to still|stuck
stir_th|DISH stir|it stomach| ston|dead stop_for|a stop_nagg_it| stop_th_clock| stopwatch_for|
stopwatch_for|th stor_back| stor_back|in stov_for|Nduration stov|for_Nduration stov|for_a str_in|th
straight_down| straight_down|lik straight_from_th| straight_into| straight_into|my strik|N:few_nam
stuff_is|in substitut| suppos_to|tak suppos|to_b sur_i_hav| sur_w| sur_w|will swap|th_cylinder
swell_up_h| switch_itself| switch_itself|off switch_th|fan switch|it_on switch|on switch|to
system|for system|for_my s|out_at tabl_DISH| tabl_at|N:few tabl_for|N:few tabl|DISH tak_for|
tak_her|rar tak_longer_than| tak_m|THING tak_that|back tak_th|DISH taken_their| taken_their|seat
taken_th|roast tak|a_shower tak|it_off tak|it_that tak|so_long tak|th_dog talk_i| talk_i|hav
talk_m|through talk_normally| talk_normally|or talk_rubbish| talk|normally talk|normally_or
target|again tear|my tear|my_hair teaspoon_of_salt| teaspoon|of teaspoon|of_salt tell_a|li
tell_m_it| tell_m_my| tell_m|it tell_you|what tell|m_$ tell|m_how tell|m_it tell|m_that tell|you_about
temperatur_am| temperatur_am|i temperatur_in_th| temperatur_or| test_cam| test_cam|out test|cam
test|cam_out th_DISH_another| th_DISH_b| th_DISH_from| th_DISH_myself| th_DISH_or| th_DISH_w|
th_DISH|Nduration th_DISH|THING th_DISH|bless th_DISH|butter th_DISH|in th_DISH|would th_N:few_about|
th_P|up th_P|us th_THING_stand| th_THING|THING th_THING|behav th_THING|cam th_THING|over th_THING|will
th_U_hav| th_U|N:core th_app| th_band| th_band|overran th_birthday_girl| th_boil_water| th_bon_from|
th_bottl|o th_bottom_and| th_bottom|of th_breaker| th_bridg_is| th_butter_on| th_butter|with
th_cast| th_cat| th_celsius| th_center_when| th_chip_pan| th_clock_for| th_cor_is| th_count|
th_cream|i th_crust| th_day_i| th_day|go th_doctor|said th_dog_back| th_dog_i| th_door_of|
th_electricity|has th_even_w| th_fan|is th_fir| th_flu_and| th_gam|start th_grocery|list th_guest_is|
th_guest|ar th_guest|is th_hall_all| th_hall|all th_handl_it| th_heat_and| th_heat_is| th_heat|is
th_henderson_ar| th_hood| th_hot_THING| th_hous_afternoon| th_hous|so th_ic|water th_interstat_folk|
th_interstat|folk th_joint_went| th_lad_is| th_last_of| th_last| th_littl|light th_lot_of|
th_lower|third th_main| th_menu|tonight th_metric_system| th_metric| th_metric|system th_middl|N:few
th_middl|is th_needl_is| th_next|on th_number|on th_old|folk th_oven_for| th_oven_has| th_oven_meant|
th_oven|with th_oven|yet th_pair_of| th_pair| th_pair|of th_peopl|hav th_plat| th_point|of
th_porch| th_quick|N:some th_rest_of| th_revers| th_roast_cam| th_roll_i| th_screen|how th_second_shelf|
th_second|shelf th_shop|did th_siz|of th_slic_look| th_stat|of th_stor_back| th_str|in th_tabl_DISH|
th_tabl_for| th_tabl_is| th_tabl|DISH th_target|again th_teenager| th_thick|of th_tim_it| th_tim_w|
th_timer_for| th_tim| th_train|is th_wet| th_wet|floor th_whol_roast| th_whol|roast th_wifi|password
th_work_i| th_work|i th_wrong|number than_i_thought| than_it|is than_plan|h thank_a|million
thank_b| thank_b|to than|Nclock than|i_can than|m than|sh than|w than|w_said that_N:core| that_THING_is|
that_all| that_can_not| that_from_th| that_go|to that_green_DISH| that_is_when| that_is_wher|
that_is_your| that_is|fin that_is|them that_is|wrong that_it|is that_on_is| that_on_th| that_on|a
that_on|mor that_timer_for| that_timer_it| that_timer|on that_was_a| that_was_not| that_was|a
that_what|do that_yank| that_yank|stuff that|back_to that|bit_is that|by that|door_ajar that|enough
that|has that|in_mind that|long_$ that|off_$ that|on that|on_$ that|on_is that|timer_for that|was_N:core
that|was_my that|wreck their_at|N:few their|at_Nclock their|seat them_god_help| them_has_drop|
them_hav| them_is|in themselv_so_lay| them|is_in then_after| then_after|that then_h_is| then_turn|
then_turn|it then|blast then|blast_it then|h_is then|th_DISH ther_anyth_i| ther_anyth|i ther_i_hav|
ther_is_blood| ther_is|pink ther_is|smok ther_i|hav ther_say| ther_will| ther_w|go ther|b_water
ther|is_another ther|is_no ther|someth_i ther|special ther|special_word they_ar_sit| they_ar_still|
they_ar|early they_get| they_hav_had| they_hav_hit| they_hav|taken they_want_to| they_will|not
they|ar they|ar_eat they|ar_fussy they|hav_had they|text they|text_Nduration they|want_another
thick_part|N:core thickest|part thick|a_grey thick|of think|in thin|as_dishwater third| this_THING_for|
this_is_for| this_on_is| this_oven_is| this_year|instead this|THING_and this|minut_$ this|old_girl
thought|w through_th_whol| throw|in thumb_is| thumb_it| thumb_it|is th|DISH_alarm th|DISH_countdown
th|DISH_cover th|DISH_from th|DISH_is th|DISH_pop th|DISH_too th|DISH_water th|N:few_$ th|N:few_P
th|N:few_about th|P_of th|THING_Nclock th|THING_am th|THING_cut th|THING_first th|THING_of
th|THING_run th|THING_th th|THING_to th|THING_what th|U_bit th|U_on th|afternoon th|app_is
th|bag th|bishop th|blast_of th|block_Nduration th|boil_water th|bon_skip th|box th|bridg th|caravan
th|center_is th|chip th|choir th|county_$ th|cousin th|cow th|crud th|crust th|dishwasher th|doctor_said
th|driveway th|fan_off th|fat_over th|flu_$ th|fridg_at th|fridg_hav th|fridg_sinc th|go_$
th|go_with th|good_THING th|greas_and th|guest_com th|holiday th|hood th|icebox th|interstat
th|joint_is th|judg th|label_$ th|last_entry th|last_on th|littl_light th|menu_$ th|middl_even
th|middl_get th|middl_that th|next_th th|old_dinner th|other_oven th|oven_duck th|oven_go th|oven_light
th|oven_so th|pac th|party th|pink_bit th|power_it th|prep th|reminder th|remot th|rest th|roast_from
th|roast_it th|rol th|roll_n th|roll_out th|roll_prov th|roll_they th|run_Ndegrees:some th|sear_altogether
th|shop_what th|shower th|simpl th|simpl_DISH th|small th|sun th|tabl_and th|tabl_tonight th|teenager
th|th_with th|thickest_bit th|thread th|tim_w th|timer_for th|toast th|top_on th|trivet th|warm
th|water th|whol_gang th|whol_plan th|whol_tim th|wrong_number till_i|say till_now| till_whatever_gon|
till|N:few_then till|Nclock_what till|Ndate till|dinner tim_Nduration_for| tim_do_you| tim_in|th
tim_m_N:few| tim_ther| tim_ther|is tim_they_hav| timer_any| timer_for|th tim|i tim|to_chill
tinfoil|now to_N:core_would| to_N:few_for| to_N:oven_how| to_N:oven_is| to_N:oven_i| to_N:oven_on|
to_N:oven_to| to_N:oven|and to_THING_no| to_a_block| to_boil_for| to_borrow|a to_b|don to_carv|
to_check_th| to_cook| to_cry_into| to_cry|into to_do_th| to_eat_it| to_eat|by to_f_th| to_get|in
to_go_driv| to_jump| to_jump|in to_know_how| to_know_if| to_mak|a to_my|P to_tak|a to_tak|th
to_th_metric| to_th|DISH to_th|church to_ti| to_turn_th| to_turn|it to_warm_th| to_work_so|
tod_now| tod_now|cressida today|everyth today|everyth_tak told_them| tom_is|do too_low|to too_many|th
took|her took|her_out too|hot_to too|much_$ top_THING_i| topsid_this_year| topsid|this topsid|this_year
top|N:few top|of_th top|oven_$ top|shelf_$ toss_th| toss_th|DISH touch_raw| touch_raw|THING
touch_th_hot| touch|it_if to|N:oven_already to|N:oven_when to|a_crisp to|b_on to|bother to|death
to|eat_by to|f to|fetch_th to|flip_th to|hav_it to|li to|lif to|m_$ to|mass to|n to|postpon
to|postpon_th to|room to|room_temperatur to|serv_it to|tak_m to|th_shop to|trim to|trim_it
travell_P_all| trick|to trim_th|fat trim|down trim|down_to trim|th_silverskin tripl_on| tripl_on|on
tri| tri|it tri|it_in trust|that_THING turn_out_th| turn_th|timer turn_up|so turn|it_over turn|on
twic_as| twic| tyr_Nduration|is under_N:some| under_so| under_so|tak under_what_it| undo_that|last
unit_f|and up_N:few_sinc| up_N:few|sinc up_U|is up_after|th up_a|notch up_if| up_lik|a up_on_a|
up_on|a up_till| up_to_bath| up_to|my upstair_to|get upstair|to_get up|P up|from_N:core up|to_N:some
up|to_my up|wher us_DISH|DISH us_a_yell| us_celsius|and us_do_th| us_down_for| us_hav|DISH
us_los| us_los|th us_mak|th us_of_th| us_skip_th| us_skip|it us_skip|th us_start|over us_tak_THING|
us_unit_f| us_when| useful|to useful|to_know us|DISH_that us|a_shout us|th_cast us|th_last
us|this_year us|up_all v_THING|to vegetarian_no| very|THING_THING visitor_com_with| w_ar_roll|
w_ar|miss w_ar|no w_becom|N:some w_br| w_can_miss| w_can|miss w_go_up| w_go|for w_go|up w_hav_all|
w_hav_hit| w_hav_plenty| w_hav|been w_hav|trip w_mak_U| w_mov_it| w_must| w_n_to| w_prefer_on|
w_prefer| w_put_it| w_ran| w_ran|out w_set| w_shall_eat| w_shall|eat w_skip|th w_still_good|
w_will_n| w_would_b| w_would_lik| wait_befor| wait_befor|cut wait_for|th wait_with|th wak_m|
wak_m|at wak|m_in wak|m_when walk_m_through| want_for|th want_it_Nduration| want_it|at want_th|THING
want_to|do want_to|hear want_to|know want_to|mak want|th_THING want|to warn_m|when was_a|THING
was_hang| was_lay_th| was_look| was_look|at was_on_th| was_talk_to| was_touch| wash_my| wash_my|THING
was|N:core_when was|hang was|hav was|hav_a was|hot_it was|not_it was|not_m watch_th|DISH water_down_my|
water_down|my water_test_cam| water_test|cam water|on_his way_through|no way_too|much way|behind_her
way|near way|near_brown we_needl| we_needl|is well_don|you well_dry| well_dry|as well_sh_will|
well_shoot|it well|shoot_it went_in_th| went_off_so| went|in_Nduration wer_Nduration|behind
wer_back|in wer|Nduration_lat wer|back wet|floor what_ar_my| what_ar|th what_did_i| what_did|th
what_do_they| what_els_could| what_hav_w| what_is_for| what_is|Ndegrees:oven what_is|it what_it|is
what_i|n what_i|was what_should_i| what_should_th| what_should|it what_temperatur_am| what_th_i|
what_th|DISH what_was|th what_was|that what_weight_of| what_weight| what_weight|of what_wer|
what_would_happen| what_you|say whatever_gon| whatever_gon|Nduration whatever_that|is whatever_you_set|
whatever|you_set what|heat what|heat_do what|i_did what|should_b what|th_i what|tim_should
when_am| when_am|i when_i_must| when_is|N:core when_it_has| when_it|is when_it|touch when_th|roast
when_w_ar| when_will_th| when|i_was when|is_THING when|it_went when|sh_hit wher_did_i| wher_do|th
wher_is|my wher|exactly_do which_all|item which_degre| which_is|N:some which_i|hav which|all_item
which|degre which|on whil_it|sit whil_th_oven| whil_yet|it whil|i_hoover whisk_th_DISH| who_hav|not
who_is_a| who_left_that| who_left|th whol_bon_in| whol_ribey| whol_ribey|roast whol_roast|
whol_roast|on whol|day whol|joint whol|mob_is whol|plan whol|roast whol|roast_on why_salt|it
why_would| why|it_n wifi|password wiggl_it| wiggl_it|i will_THING_do| will_b_wrangl| will_b|DISH
will_b|N:core will_giv_th| will_hav|a will_i_b| will_it|climb will_look_after| will_mind| will_mind|it
will_not|fit will_not|heat will_not|wait will_n|N:few will_want|it will|b_N:some will|b_Nduration
will|do_that will|eat_it will|forget_thes will|handl_th will|n will|not_go will|sear_first
will|stop_at will|tak_th will|that_work will|you_say will|you_th win_in|th win_is_on| win|is_on
wireless_THING_is| wireless_THING| wireless_THING|is wis_medium_for| wish| with_DISH_and| with_N:few|bon
with_it_so| with_th|bon with_th|fan with_th|sear with_you_for| without_a|mitt without|light
with|P_in with|all_th with|apricot with|m_$ with|number with|number_N:few with|th_fan with|th_fat
work_i_hav| work_i| work_so|h would_b|sit would_happen| would_happen|if would_that|b would_you_i|
would|P_to would|brown would|brown_it would|not_mind would|that_b would|you_th wrangl|toddler
wrap|what wrap|what_is wrist_it_is| w|becom w|do_about w|get_on w|get_to w|go_th w|got_electricity
w|hav_N:few w|hav_brought w|hold_everyth w|los_th w|miss_out w|n_DISH w|put_it w|should_hav
w|will_do w|will_hold w|will_serv w|will_sit w|win_$ yank|it_at yank|stuff yard| year|instead
year|instead_roll yell_when_it| yell_when| yell_when|it yell|DISH yell|DISH_$ yes_P_i| yes_go|
yes_go|on yes_or|no yet_so_green| yet_so|they yet_th_oven| yet_they| yet|P you_ar_wrong| you_ar|a
you_call|m you_can_drop| you_can_get| you_could_yell| you_for|Nduration you_hav| you_learn|
you_n|m you_n|not you_pay| you_pay|for you_put_DISH| you_reckon_it| you_say_i| you_se_th| you_th|wrong
you_watch_th| you_when_it| you_when|it your_P_h| your|P_and your|back you|ar_break you|believ
you|can_drop you|can_manag you|f you|hav_been you|hav_had you|learn_about you|mind_drop you|plan_on
you|reckon_it |@102.4 |@103.7 |@115.4 |@117.3 |@131 |@136.0 |@140.5 |@144.5 |@144.6 |@146 |@147.3
|@148.0 |@148.1 |@149 |@19.2 |@32.7 |@33.3 |@40.0 |@42 |@42.7 |@44.3 |@48.0 |@48.1 |@76.1 |@76.6
|@79.5 |@81.2 |@94.0 |DISH_DISH_P |DISH_DISH_from |DISH_P_$ |DISH_P_it |DISH_U_and |DISH_again_$
|DISH_alongsid_$ |DISH_and_what |DISH_another |DISH_ar_go |DISH_bas_yesterday |DISH_countdown
|DISH_cover |DISH_cover_or |DISH_cross |DISH_for_DISH |DISH_for_us |DISH_has_been |DISH_hav_gon
|DISH_how_long |DISH_is_for |DISH_of |DISH_of_them |DISH_off |DISH_out_of |DISH_per |DISH_pop
|DISH_sh_is |DISH_sinc |DISH_sinc_Nclock |DISH_so_DISH |DISH_start |DISH_stuff |DISH_too_my
|DISH_w_hav |DISH_w_lik |DISH_went_off |DISH_whatever |DISH_whatever_you |N:core_and_is |N:core_and_w
|N:core_as |N:core_giv |N:core_how_much |N:core_inform |N:core_inform_m |N:core_my_P |N:core_oven
|N:core_s |N:core_s_out |N:core_too_high |N:core_will_ya |N:core_would_you |N:core_you |N:few_Ndate_and
|N:few_P_will |N:few_about_th |N:few_and_w |N:few_befor |N:few_blam |N:few_blam_th |N:few_confirm
|N:few_confirm_com |N:few_cook_now |N:few_eat_at |N:few_foot |N:few_h_is |N:few_instead_of
|N:few_lad |N:few_lad_so |N:few_nam_off |N:few_no |N:few_now_$ |N:few_oven_$ |N:few_person_will
|N:few_plac_and |N:few_should_i |N:few_so_w |N:few_sound |N:few_tim_what |N:few_to_flip |N:few_when
|N:oven_for_Nduration |N:oven_in_ther |N:oven_is_that |N:oven_is_what |N:oven_wait |N:some_i_hop
|N:some_lat_on |N:some_near |N:some_near_th |N:some_off_th |N:some_would |Nclock_N:oven |Nclock_THING
|Nclock_and_my |Nclock_my |Nclock_tell |Nclock_tell_m |Ndegrees:few_cool |Ndegrees:few_under_th
|Ndegrees:some_hot_and |Ndegrees:some_hotter |Ndegrees:some_hotter_than |Nduration_ago_sorry
|Nduration_and_do |Nduration_and_my |Nduration_instead |Nduration_instead_of |Nduration_is
|Nduration_of_U |Nduration_pet |Nduration_steep |Nduration_steep_th |Nduration_that_i |Nduration_to_that
|Nweight_of_DISH |Nweight_still |Nweight_without |Nweight_without_bon |P_bridi |P_eat_N:few
|P_for |P_has_fallen |P_in_belly |P_is_bring |P_is_lot |P_is_vegan |P_still |P_under |P_will_b
|P_will_carv |THING_THING_caught |THING_THING_for |THING_alarm |THING_alway |THING_alway_say
|THING_and_put |THING_as_rock |THING_can_i |THING_check |THING_from_oven |THING_hav_not |THING_in_Nduration
|THING_is_alway |THING_is_jump |THING_it_tak |THING_lover |THING_lover_com |THING_no_signal
|THING_not_ready |THING_off_th |THING_ok |THING_out_for |THING_pan_is |THING_piec |THING_th_bend
|THING_that_is |THING_they_ar |THING_they_hav |THING_till_N:few |THING_truck |THING_up_at |THING_what_is
|THING_with_bar |THING_with_her |THING_would_b |U_P_can |U_THING_is |U_bit |U_is_coeliac |U_lovely
|U_of_a |U_off |a_Nduration_bell |a_Nweight_topsid |a_P_com |a_THING_no |a_THING_truck |a_THING_will
|a_U_N:core |a_bath |a_bit_cold |a_block |a_boot_$ |a_bottl |a_cheesecak |a_crisp |a_fat |a_fat_THING
|a_gas_oven |a_glass_THING |a_go_at |a_good_Ndegrees:some |a_good_un |a_leave-in |a_leave-in_THING
|a_look |a_medium_rar |a_new_THING |a_nois_at |a_peek |a_peeler_$ |a_rest_will |a_rim |a_rim_THING
|a_shower |a_singl_DISH |a_smidg_to |a_star |a_ston |a_timer_on |a_walnut |a_whil_$ |a_whil_got
|about_Nduration_ago |about_that_$ |accident_$ |accident_$_$ |after_P |again_look |again_slower
|again_slower_$ |again_thank |ago_befor |ago_it_said |ago_it_was |ago_not |ago_sorry |alarm
|alert_for |alert_for_Ndegrees:core |alight_$ |alight_$_$ |all_behind_lik |all_carv |all_carv_up
|all_gon_ston |all_her_$ |all_item |all_right_or |all_told |allergic_to_DISH |allergy |allergy_for_mark
|along_$ |along_$_$ |already_N:core |already_in |already_in_th |already_mad |already_ti |alway_did_$
|am_N:few |am_Nduration |am_Nduration_back |am_Nduration_behind |am_Nduration_down |am_U_$
|am_a |am_all |am_at |am_away_out |am_back |am_behind |am_deaf |am_driv |am_drown |am_get |am_get_full
|am_go |am_gon_for |am_i_yank |am_never |am_new |am_new_to |am_off_down |am_pull_th |am_put
|am_tear |am_tear_my |am_up |am_up_to |am_watch |am_well_behind |amaz_$ |amaz_$_$ |an_alert
|an_alert_for |and_DISH_with |and_celsius |and_did_not |and_her |and_m |and_now_th |and_pink_not
|and_tent |and_then_th |another_Nduration_befor |any_THING_left |any_good |anymor_and |app_is
|app_is_lost |apricot |ar_N:few_$ |ar_Nduration_off |ar_break |ar_break_up |ar_com_after |ar_cover_in
|ar_do_it |ar_eat |ar_eat_at |ar_fresh |ar_fussy |ar_go_to |ar_her_th |ar_join_us |ar_lat_Nduration
|ar_nowher_near |ar_still_raw |ar_still_squeaky |ar_still_swim |ar_want_a |ar_wrong_i |arm_is
|arm_is_burn |arriv |as_dishwater |as_old_boot |as_toast |ask_you_$ |asleep_in |at_N:core_now
|at_N:core_right |at_N:few_how |at_N:few_nobody |at_N:few_sharp |at_Nclock_they |at_Ndegrees:core_let
|at_either |at_either_end |at_it_all |at_it_and |at_now_$ |at_right_now |at_that |away_N:some_of
|b |b_N:oven |b_at_Nclock |b_bast |b_better |b_bother |b_eat_$ |b_go |b_insid |b_lat_$ |b_much
|b_much_longer |b_r_insid |b_this |b_water |b_well |b_well_don |back_by_Nclock |back_i_reckon
|back_to_Ngas-mark |ball_$ |ball_$_$ |bas_yesterday |basket_$ |basket_$_$ |bast_$ |bast_$_$
|becom_N:some |been_N:few |been_at |been_at_th |been_put |been_sat |been_trim |beer_$ |beer_$_$
|befor_b_so |behind_in |behind_so |behind_so_serv |behind_sorry |believ_$ |believ_$_$ |believ_it
|believ_this |believ_this_THING |bell_at |besid |bit_again_$ |bit_is_sort |bit_of_crackl |blast_at
|blast_it_at |blast_of |blast_of_heat |bleed |blister_carry |blister_carry_on |block_Nduration
|block_and |blood_thinner |blood_thinner_and |bo |board_now_$ |boil_water_on |bon_roast |bon_skip
|bon_w |break_$ |break_$_$ |bring_her |bro |brown_it_off |brown_yet |burn_by |burn_my_arm |burn_myself
|burner_$ |burner_$_$ |burner_work |burst |bush |butter_Nduration |button_$ |button_$_$ |buy
|buy_Ndate |by_N:few_should |call_DISH |call_m_yes |cam_out_N:oven |cam_outsid |cam_outsid_befor
|can_drop |can_drop_th |can_giv |can_giv_m |can_help_from |can_manag |can_smell |can_stand
|can_stir_th |cancell_so |careful_with_pink |carv_it_$ |cat_in |celsius_N:some |celsius_Ndegrees:core
|celsius_would |chair_$ |chair_$_$ |chang_their |chang_their_mind |charcoal_$ |charcoal_$_$
|charg_of_DISH |chemo_so_sh |choic |choic_again |choic_again_$ |church_for_Nduration |clean_forgot
|clos |clos_full |clos_full_someth |clos_th_door |clos_th_interstat |colour |com_Nduration_too
|com_back |com_off |com_out |com_to_N:core |com_to_help |com_up_N:core |cook_to |cooler_than_it
|count_$ |count_$_$ |county_$ |county_$_$ |cours_for_Nclock |creep |cressida_had |cressida_had_to
|cricket |crisp_as |crisp_as_you |customer |cut_it_$ |cut_off_no |dar_$ |dar_$_$ |dark_$ |dark_$_$
|day_from |deep |delivery |devil_$ |devil_$_$ |di_and_th |did_i_go |did_not_shut |did_put |did_you_get
|din_at_Nclock |dinner_forward_Nduration |dinner_happen_Nduration |dinner_up |divin |do_DISH_$
|do_DISH_and |do_a_DISH |do_a_revers |do_after |do_any |do_dairy |do_fahrenheit |do_fahrenheit_celsius
|do_gluten |do_i_put |do_instead_of |do_it_com |do_keto |do_keto_do |do_not_U |do_roast |do_roast_DISH
|do_sear |do_th_DISH |do_th_high |do_that_DISH |don_and_i |don_h |dong |dong_N:core |dong_N:core_on
|door_ajar_all |door_for |door_now |down_Nduration_after |down_P_$ |down_a_notch |down_at_Nclock
|down_is_N:oven |down_to_N:oven |drawer_$ |drawer_$_$ |driveway |drop_their |drop_their_timer
|earth_do |eat_N:oven |eat_Nduration_befor |eat_by_Nclock |eat_dairy |eat_nut |eat_pink_so
|eat_them_$ |elbow_$ |elbow_$_$ |eldest |enough_to_coat |even_in |every_last_on |everywher_th
|everywher_th_THING |exactly |exactly_do_th |exampl |extra_$ |extra_$_$ |extra_for_dinner |extra_tim
|f_that |f_that_is |fall_$ |fall_$_$ |fancy_blast |fancy_blast_at |far_$ |far_$_$ |farm |fat_on
|fat_onto |fat_onto_th |fay_is |fay_is_not |feed_at_Nclock |feet_$ |feet_$_$ |fell_out |feral
|finger |finish_th_trim |finish_yet_$ |fir_will |fir_will_you |first_P_alway |first_on_$ |flatmat_invit
|flatmat_invit_themselv |flip_th_DISH |float |float_an |float_an_THING |folk_go |folk_go_to
|for_Nclock_for |for_Nduration_N:few |for_a_Nclock |for_a_for |for_a_shower |for_help_m |for_mrs
|for_mrs_U |for_my_german |for_pink_$ |for_tonight_at |forget_thes |forget_thes_otherwis |forgot_to_put
|fork_in |forward_by_Nduration |french_$ |french_$_$ |fridg_hav |from_N:oven_to |from_m_$ |from_shrimp
|from_zero_$ |gat_$ |gat_$_$ |gav_m_N:few |gav_m_a |get_from |get_full |get_full_tension |get_her_befor
|get_m_start |get_to_N:core |given_up |go_by |go_careful_with |go_giv |go_her |go_her_Nduration
|go_long |go_near |go_off_again |go_on_then |go_past |go_so |go_th_THING |go_to_br |go_to_help
|gon_in_th |gon_over |gon_walkabout |good_$ |good_$_$ |good_to |goos_$ |goos_$_$ |got_THING_to
|got_electricity |got_electricity_back |got_her_Nduration |got_is |got_my_THING |got_th_THING
|got_th_oven |got_to_th |got_to_that |greas_and |green_DISH_DISH |green_DISH_too |grey_and_sad
|gristl |guest_th_U |h_at |h_at_th |had_my |handl_th |has_a_shellfish |has_been_off |has_fallen
|has_gon_THING |has_gon_ther |has_got_to |has_his |has_invit |has_invit_themselv |hat_on |haul_it
|haul_it_out |hav_N:core_in |hav_THING_THING |hav_a_lend |hav_a_smok |hav_already |hav_arriv_$
|hav_arriv_so |hav_ask |hav_bought |hav_bought_a |hav_burn_my |hav_chang_my |hav_dairy |hav_di
|hav_di_and |hav_gon_in |hav_got_N:few |hav_help |hav_help_now |hav_lost_a |hav_miss_th |hav_not_N:few
|hav_not_don |hav_not_ti |hav_noth |hav_pull_th |hav_put_it |hav_put_on |hav_run |hav_run_out
|hav_slic |hav_th_N:few |hav_to_prepon |heat_all |heat_all_th |help_till_Nclock |her_Nduration_behind
|her_again_$ |her_cremat |her_every |her_lik_a |her_out_now |her_so_far |her_till |her_w_ar
|hold_everyth_for |hors_$ |hors_$_$ |hot_Ndegrees:some |hot_oven_clock |hot_so |hot_so_$ |how_about
|how_about_that |how_to_do |hum |hum_$ |hum_$_$ |hurry_it_along |hush |i_am_look |i_ask_th
|i_can_carv |i_carv_$ |i_carv_it |i_could |i_do_th |i_ever |i_freez |i_get |i_get_away |i_get_for
|i_hav_don |i_hold |i_hoover |i_lat |i_lat_$ |i_se_th |i_stab |i_stab_it |i_throw |i_trust_it
|i_was_on |ic_water_$ |icebox |idea_how |if_THING |if_i |if_sh |if_ther |in_DISH |in_N:few_plac
|in_Nduration_now |in_Nduration_so |in_and_th |in_business |in_coat |in_coat_on |in_door_shut
|in_for_th |in_hiv_$ |in_law_do |in_law_want |in_our_market |in_oven_sinc |in_pound_and |in_th_cupboard
|in_yet_still |inform |inform_what |inform_what_is |insist_$ |insist_$_$ |instead_roll |instead_roll_and
|interstat |iron_$ |iron_$_$ |iron_pan |is_N:core_insid |is_N:few_month |is_N:few_off |is_Ndegrees:core_$
|is_Ndegrees:oven_in |is_Nduration_$ |is_THING_at |is_THING_for |is_THING_lover |is_U_th |is_a_crim
|is_a_fan |is_a_vegetarian |is_act |is_all |is_all_THING |is_all_her |is_all_too |is_alway_Ndegrees:some
|is_back_to |is_begun_it |is_bleed_and |is_boneless |is_burn_to |is_call_$ |is_chewy |is_conk
|is_conk_out |is_cover_in |is_dead_it |is_delay_Nduration |is_delay_minimum |is_dinner_$ |is_don_and
|is_empty_oven |is_fan_assist |is_flam_com |is_ground |is_ground_so |is_hit |is_hit_th |is_in_DISH
|is_in_at |is_it_hav |is_land_even |is_leak_fat |is_mad |is_next_$ |is_not_any |is_not_clos
|is_not_hav |is_now_Ndegrees:core |is_off_P |is_off_i |is_off_to |is_on_P |is_out_and |is_out_on
|is_pack_up |is_past_N:core |is_point |is_preheat_$ |is_raw |is_run_bout |is_sear_now |is_season_$
|is_set_to |is_simmer_away |is_sit_on |is_smok_lik |is_sort_$ |is_starv_let |is_tail_her |is_tell_m
|is_tent_loosely |is_th_cor |is_th_countdown |is_th_go |is_th_good |is_th_point |is_th_target
|is_them_$ |is_too_full |is_took |is_uncover |is_uncover_by |is_well |is_well_don |it_N:core_in
|it_N:few_$ |it_N:few_bon |it_Nclock_instead |it_all_right |it_and_th |it_b_a |it_by_THING
|it_com_up |it_cook_$ |it_for_N:few |it_for_Nduration |it_go_abov |it_has_not |it_in_at |it_in_ic
|it_is_set |it_lift |it_lift_out |it_lik_that |it_look_good |it_medium_$ |it_myself |it_n_to
|it_off_and |it_ok_to |it_on_paus |it_out_and |it_ruin |it_saf_to |it_sat_on |it_so_i |it_still_b
|it_stuck |it_th_DISH |it_this_minut |it_till_N:core |it_took |it_w_hav |it_whil_it |jar_$
|jar_$_$ |join_us |keep_drop |keep_drop_every |kev_lik |knock_off_for |know_ther |know_this
|label_$ |label_$_$ |lad_so |last_Nduration |last_of |last_th_i |lat_by_Nduration |lat_it |lat_it_is
|lat_that_is |lat_they_said |lat_they_text |lat_to |lat_with_everyth |lat_with_th |law_will
|learn_about |leave-in_THING |left_that |leftover_sit |leftover_sit_out |leg_with |leg_with_th
|less_for |less_for_dinner |less_than_it |li_it |li_it_is |lid_off |lik_a_balloon |lik_a_plank
|lik_her_cremat |list_for_th |littl_N:few_eat |littl_light |long |long_Nduration_later |long_as
|long_for |long_for_th |long_has |long_hav |long_hav_i |long_is |long_is_it |long_is_left |long_till
|long_till_w |longer_than_i |longer_than_you |look_for |look_it_was |loosely_in_tinfoil |los_th_r
|lost_track |lot_and |lump |lumpy_$ |lumpy_$_$ |m |m_N:few_tim |m_THING_th |m_a_N:few |m_a_nudg
|m_a_number |m_a_timer |m_and_N:few |m_down_Nduration |m_down_for |m_fahrenheit_$ |m_it_was
|m_know |m_of |m_of_th |m_som_choic |m_ston |m_ston_cold |m_th_order |m_that_$ |m_to_do |m_tod
|m_up_at |m_w |m_when_Nduration |m_when_it |mac_timer |mad_th_oven |many_DISH |many_DISH_$
|many_THING |many_THING_in |many_day |many_degre |many_gram |match_$ |match_$_$ |mean_N:few
|meant_Nduration |meant_Nduration_not |medium_well_th |medium_well_they |middl_even |middl_get
|middl_get_to |middl_that |million |minc_pi |mind_drop |mind_drop_that |misread_it_is |ml_of_cream
|mo_$ |mo_$_$ |mob_is_rock |mor_early |mor_person |mor_than_it |morn |mov_in |much_DISH |much_THING
|much_cream |much_cream_in |much_longer |much_longer_on |much_of |much_salt_$ |my_P_b |my_P_on
|my_arm_on |my_end |my_feet |my_finger_and |my_finger_on |my_hair_out |my_next |my_palm |my_wrist_with
|myself_on_th |myself_with |myself_with_th |n_Nduration_start |n_for_th |n_longer_they |n_th_timer
|n_that |n_to_check |n_to_com |n_to_rest |n_to_shop |nam_$ |nam_$_$ |near_$ |near_$_$ |near_brown
|never_go |never_go_to |nevill |next_U |next_door_Nduration |next_door_for |nic_bit |nic_bit_of
|night_smok |night_smok_pour |no_THING_th |no_bon |no_it_is |no_later_than |no_second |no_th_green
|no_way_near |normally_or |normally_or_ar |not_any |not_believ_it |not_bother_tim |not_breath
|not_call_m |not_carv_it |not_cook |not_eat_dairy |not_even_touch |not_got_a |not_got_is |not_got_no
|not_hav_any |not_hav_dairy |not_heat |not_her_$ |not_i_carv |not_know_if |not_mad |not_mean_to
|not_n_it |not_n_tell |not_own |not_own_a |not_pull |not_put_a |not_requir_now |not_salt |not_salt_it
|not_think_i |not_tim |not_up_to |not_want_th |not_want_to |not_warm |not_worry |noth_is |now_and_it
|now_and_sh |now_on_$ |now_they |of_THING_Nweight |of_THING_i |of_U_$ |of_it_and |of_sirloin
|of_th_cousin |of_th_pan |of_that_$ |of_them_ar |of_them_god |of_them_has |of_them_walk |of_ther_$
|of_water_underneath |of_win |off_Nduration_ago |off_th_Nduration |off_that_$ |oil_and |ok_for_her
|old |old_dinner |old_dinner_tim |old_girl |on_N:core |on_Nduration |on_again_thank |on_convection
|on_cours_for |on_dinner_they |on_fir_$ |on_hav |on_his_foot |on_i_am |on_left |on_my_list
|on_out_$ |on_th_lowest |on_th_rest |on_th_road |on_tim_$ |open_it |open_th_P |or_ar_ther |or_less_it
|other_on_$ |our_guest_is |out_for |out_sinc_Nclock |out_th_THING |out_th_other |out_to_get
|out_too_much |oven_Nduration_back |oven_and_N:few |oven_at_N:core |oven_door_and |oven_door_hang
|oven_door_on |oven_down_Nduration |oven_down_in |oven_duck |oven_glov_is |oven_i_put |oven_is_up
|oven_light |oven_now_$ |oven_now_and |oven_off_Nduration |oven_on_$ |oven_on_now |oven_on_to
|oven_with |over_is |over_now |over_to_th |pac_$ |pac_$_$ |pack_in_$ |pack_up_on |pan_handl
|pan_is_after |pan_with_a |pantry |paper |paper_$ |paper_$_$ |parchment_is |parent_and |part_N:core
|past_well_don |pay_customer_at |peel_anyth_yet |penny |per_pound |permit_$ |permit_$_$ |person_how
|phon_call_$ |pick_th_P |pictur_pound |pictur_pound_kilo |pink_bit |pink_for_her |plan_N:few
|plan_dinner |plan_dinner_roll |plank |plat_and_th |porch_$ |porch_$_$ |pour_off |pour_off_th
|power_it |power_it_went |prayer |pregnant_by |pregnant_by_th |pretty_bad |pretty_bad_off |pull_at_N:core
|quid_$ |quid_$_$ |r_N:core_in |r_insid_$ |rar_cold |rar_cold_in |rar_in |rar_in_degre |rar_it
|rar_it_is |rar_roast |raw_as |raw_insid |read_N:oven |ready_it_is |reason_w |reckon_it_will
|remot |remov_it_from |rest_Nduration_already |rest_do |rest_for_Nduration |rib_nobody |rib_nobody_is
|right_P |roast_DISH_would |roast_do |roast_from_th |roast_is_ti |roast_it |roast_it_is |roast_no
|roast_no_bon |roast_scal |roast_scal_said |rock_$ |rock_$_$ |rol |roll_homemad |roll_n |roll_out
|roll_prov_Nduration |roll_they |roll_they_ar |run_Ndegrees:few_cool |said_Nweight |said_sh
|said_sh_would |sat_down |sat_in |sav_it_$ |say_it_was |say_to_m |say_well |say_well_don |sear_altogether
|sear_this |sear_this_tim |second_shelf_from |set_at_Ndegrees:oven |set_it_on |sh_is_at |sh_is_com
|shav_N:few |shav_N:few_off |shellfish_allergy_useful |shoot_it |shoot_it_is |shop |shop_is_shut
|shop_what |shov_it_back |show_N:oven |show_m_N:core |shut_properly |sign_of_th |signal |simpl_DISH
|simpl_DISH_will |sinc_i_last |singl_DISH |sirloin |sit_at_N:core |sit_on_a |sitter |siz_of_a
|skip_this_$ |slower |snap_and_peel |so_drop |so_drop_their |so_no |so_nowher |so_nowher_to
|so_plus_N:few |so_us |som_nois |som_nois_at |someth_onc |someth_onc_it |soon_as_sh |sooner_Nduration
|sound_right |sp_this |sp_this_up |speak_celsius_N:some |special_word |special_word_$ |spit_$
|spit_$_$ |star_$ |star_$_$ |step_can |still_DISH |ston_cold_insid |ston_dead |stop_at_hom
|str_in_th |strain_th |strain_th_DISH |strung |substitut |sun |sw |system_for |system_for_my
|tabl_Nclock_$ |tabl_for_m |tabl_now |tagg_along_N:few |tak_his_steak |tak_that_into |takeaway_$
|takeaway_$_$ |talk_normally |talk_normally_or |tear_my |tear_my_hair |tell_every |tell_every_Nduration
|telly_$ |telly_$_$ |temperatur_of_N:core |th_DISH_N:oven |th_DISH_alarm |th_DISH_another |th_DISH_pop
|th_DISH_sid |th_DISH_start |th_DISH_ther |th_DISH_too |th_P_$ |th_P_can |th_THING_Nclock |th_THING_again
|th_THING_bag |th_THING_board |th_THING_till |th_THING_with |th_and_i |th_beast_out |th_bin_out
|th_boat_$ |th_bon |th_bon_skip |th_bottom_$ |th_bowl_$ |th_brown_at |th_butter_Nduration |th_butter_on
|th_center_$ |th_centr_$ |th_colour_on |th_cor |th_corkscrew |th_countdown |th_crud |th_cylinder
|th_cylinder_oven |th_dinner_$ |th_dog_and |th_door_shut |th_fast |th_fat_end |th_final |th_firehous
|th_firehous_fundraiser |th_floor_and |th_fridg_and |th_fridg_hav |th_green_DISH |th_grill_$
|th_guest_cam |th_guest_will |th_interstat_folk |th_joint_slid |th_lino_$ |th_list_for |th_list_i
|th_lot |th_lowest_it |th_meantim |th_meantim_$ |th_menu_yet |th_middl_b |th_middl_that |th_middl_when
|th_outsid_onc |th_oven_at |th_oven_from |th_parish_supper |th_peopl_hav |th_phon_is |th_quick_N:some
|th_rarer |th_rarer_sid |th_roast_ballpark |th_roast_into |th_roll_out |th_roll_prov |th_salt
|th_sear_a |th_silverskin |th_silverskin_toss |th_sitter |th_sitter_hom |th_stov_for |th_supermarket_car
|th_tabl_it |th_thick_part |th_thickest_part |th_till |th_warm_oven |th_way_to |th_wet_til
|th_wifi_password |th_wrong_end |than_N:some |than_i_told |that_ag |that_ag_ago |that_at_Nclock
|that_back_to |that_in_mind |that_is_wher |that_normal |that_normal_$ |that_oven |that_right_$
|that_what |that_what_do |that_yet_$ |them_all |them_ar_in |them_back_on |them_in_th |them_off_$
|then_noth |ther_is_non |they_ar_hav |they_hav_left |thickest_bit |thin_as_dishwater |think_i_hav
|thinner_and_N:core |this_THING_for |this_moment_$ |this_old |this_very_second |this_work |this_year_instead
|thousand |throat_clos |ti_anyth |till_w_eat |tim_how |tim_is_your |tim_should |tim_should_i
|tim_they_hav |timer_can |timer_dead |timer_of_Nduration |to_N:core_in |to_N:oven_as |to_N:some_$
|to_b_DISH |to_b_N:some |to_b_her |to_borrow_a |to_bother |to_celsius_$ |to_collect_th |to_cry_into
|to_do_a |to_hav_a |to_hav_it |to_hear |to_heat_$ |to_help_with |to_hit_N:core |to_imperial
|to_imperial_$ |to_know_when |to_m_lik |to_mak_DISH |to_metric_$ |to_nut_$ |to_run_th |to_run_to
|to_shellfish_not |to_shop_for |to_sit_$ |to_sit_down |to_tak_over |to_temperatur_sh |to_th_shop
|toddler_$ |toddler_$_$ |told_you |tonight_so |too_early_$ |top_THING |top_off |top_on |touch_it_$
|touch_it_if |touch_th_grill |trick |trip_someth |trip_someth_no |truss_$ |truss_$_$ |try_to_DISH
|turn_them_off |twic_as_long |ty_it_$ |uncover_by |uncover_by_th |underneath_for |underneath_for_th
|understand_th |up_N:core_$ |up_U_is |up_after_th |up_all_th |up_at_N:oven |up_i_will |upsid_down_$
|upstair_to_get |us_a_THING |us_a_shout |us_begin |us_eat |us_eat_at |us_finish |us_go |us_hav_it
|us_how |us_los |us_los_th |us_start |us_that_is |vegetarian_and |volunteer_for |vot_medium
|w_DISH |w_add |w_add_DISH |w_br |w_din |w_eat_ok |w_hit |w_never |w_push_it |w_speak_$ |w_stand
|w_travell |w_travell_P |w_win_$ |wak_m_otherwis |walk_N:few |walk_N:few_mil |walnut |walnut_$
|walnut_$_$ |want_another_whil |want_for |want_m |want_medium_well |want_supper_at |was_N:core
|was_N:core_at |was_N:core_not |was_N:core_when |was_a_THING |was_go |was_go_to |was_look |was_not_meant
|wash_$ |wash_$_$ |water_boil |water_not |way_behind |way_i |way_is |way_th |we_bit |weigh_Nweight
|went_for |went_off_$ |went_on_at |wer_$ |wer_$_$ |what_happen_when |what_in |what_it_say |what_temperatur_$
|what_th_DISH |when_Nduration_hav |which_i_hav |whil_th_oven |whil_they |whol_gang |whol_noth
|whol_noth_cut |whol_plan_$ |will_b_$ |will_b_N:some |will_b_at |will_get_to |will_hold_dinner
|will_it_b |will_not_turn |win_DISH_with |window_$ |window_$_$ |with_Nduration_of |with_P_in
|with_a |with_apricot |with_it_and |with_it_so |with_th_quick |with_this_$ |word_$ |word_$_$
|work_again |work_i |worry_$ |worry_$_$ |would_brown |would_brown_it |would_get |would_say_$
|would_th_THING |wrap_up |wrong_THING_$ |yard_$ |yard_$_$ |year_th |year_w |yet_DISH |you_about
|you_about_th |you_call_m |you_call_them |you_can_manag |you_com |you_cut |you_do_$ |you_even
|you_ever_whisht |you_help |you_in_N:some |you_on_speaker |you_pass |you_put_in |you_say_it
|you_think_$ |you_tim_Nduration |you_wak |you_wak_m |you_watch_th |z_$ |z_$_$
-9 @0.0| @1.7| @100.2| @101.1| @111.0| @120| @129.1| @130.0| @139.2| @139.5| @18.3| @28.7|
@3.4| @34.7| @35| @37.3| @4.5| @42| @59.8| @62.5| @64.4| @64.5| @72.1| @9.5| @98| DISH_DISH_hav|
DISH_DISH|is DISH_THING_as| DISH_and_it| DISH_and_i| DISH_ar_ston| DISH_ar|charcoal DISH_ar|cook
DISH_a|miss DISH_bless| DISH_boil_and| DISH_boil_for| DISH_butter_for| DISH_can|i DISH_cream_w|
DISH_crisp| DISH_crisp|as DISH_from_th| DISH_go|at DISH_has|gon DISH_hav_all| DISH_hav|been
DISH_hit| DISH_hit|th DISH_in_and| DISH_in_now| DISH_instead_of| DISH_is_cut| DISH_is_under|
DISH_is|finish DISH_is|in DISH_is|whisk DISH_non_to| DISH_not|ready DISH_off_th| DISH_or_DISH|
DISH_per| DISH_pop| DISH_powder_it| DISH_powder|it DISH_should|i DISH_solid_i| DISH_that|bit
DISH_they|can DISH_to|com DISH_to|nadia DISH_up| DISH_want_another| DISH_want|another DISH_what_is|
DISH_will|b DISH_will|not DISH_with|th DISH_yes_w| DISH|cream_DISH DISH|duty_$ DISH|for_th
DISH|instead_$ DISH|must_b DISH|myself DISH|myself_so DISH|or DISH|peel DISH|powder_$ DISH|sh_would
DISH|should DISH|to_bak DISH|was DISH|went_cold DISH|went_into DISH|will N:core_and_do| N:core_and_it|
N:core_and_s| N:core_and|do N:core_and|frail N:core_at|th N:core_bottl_of| N:core_bottl| N:core_bottl|of
N:core_how_many| N:core_is_my| N:core_is|what N:core_it|was N:core_i|said N:core_lik_th| N:core_oven_is|
N:core_oven|is N:core_so_i| N:core_so|do N:core_tell|m N:core_that|is N:core_under|th N:core_when_w|
N:core_without_tell| N:core|Ndate N:core|U N:core|already_$ N:core|i_can N:core|near_th N:core|now
N:core|then N:core|whil_w N:core|would_you N:few_DISH_N:few| N:few_THING|tonight N:few_and|i
N:few_and|th N:few_and|w N:few_a|sid N:few_befor_medium| N:few_bum| N:few_bum|on N:few_calibrat_a|
N:few_don'tcha| N:few_don'tcha|know N:few_eat_at| N:few_good_with| N:few_good|with N:few_has|
N:few_i|am N:few_lad_so| N:few_less|than N:few_minus| N:few_minus|theo N:few_mor_ar| N:few_of_our|
N:few_or|N:few N:few_peopl_ar| N:few_peopl_drop| N:few_peopl_not| N:few_r_and| N:few_rather|than
N:few_rehearsal| N:few_rehearsal|overran N:few_sharp_U| N:few_show_up| N:few_so|N:core N:few_w|ar
N:few|about_th N:few|and_it N:few|and_th N:few|burner_N:few N:few|coeliac_my N:few|good N:few|high_$
N:few|hungry_peopl N:few|less_$ N:few|month_pregnant N:few|mor_peopl N:few|mor_plac N:few|on
N:few|peopl_cancel N:few|sh_has N:few|should N:few|then N:few|tim_would N:few|under_so N:few|who
N:few|with N:oven_and|how N:oven_and|it N:oven_anymor_P| N:oven_feet|what N:oven_for|th N:oven_instead|
N:oven_instead|of N:oven_is|that N:oven_lik_you| N:oven_on|accident N:oven_real| N:oven_real|N:oven
N:oven_sharp|kindly N:oven_so_THING| N:oven_so|THING N:oven_to|hurry N:oven_up| N:oven_up|to
N:oven|U_it N:oven|anymor N:oven|anymor_P N:oven|do_not N:oven|fan_$ N:oven|sinc_w N:oven|so_THING
N:oven|stop N:some_DISH| N:some_about| N:some_hot_alway| N:some_i|hop N:some_they_hav| N:some_they|ar
N:some|THING N:some|near N:some|near_th Nclock_and_w| Nclock_and|i Nclock_and|my Nclock_and|th
Nclock_in_th| Nclock_it_stood| Nclock_it|was Nclock_that|is Nclock_what|is Nclock_would|it
Nclock|and Nclock|sharp_$ Ndate|Nclock_sam Ndegrees:core_is_what| Ndegrees:core|it_is Ndegrees:few_after_i|
Ndegrees:few_after| Ndegrees:few_after|i Ndegrees:few_less|than Ndegrees:few_under_th| Ndegrees:few|it
Ndegrees:few|it_is Ndegrees:oven|in Ndegrees:some_hotter_than| Ndegrees:some_shy_of| Nduration_about|
Nduration_about|th Nduration_ago_sorry| Nduration_ago_when| Nduration_ago_whil| Nduration_ago|not
Nduration_and_i| Nduration_and_my| Nduration_and|w Nduration_back_it| Nduration_behind_in|
Nduration_do_i| Nduration_down_on| Nduration_for|m Nduration_giv|m Nduration_i_will| Nduration_instead_of|
Nduration_instead| Nduration_instead|of Nduration_lat_they| Nduration_let|us Nduration_on|for
Nduration_sinc_it| Nduration_tell| Nduration_that|i Nduration_timer_for| Nduration_to_a| Nduration_too|lat
Nduration_traffic|is Nduration_walk| Nduration_walk|th Nduration|N:few_any Nduration|ago_$
Nduration|ago_ther Nduration|behind_in Nduration|lat_put Nduration|later_$ Nduration|so_far
Nduration|tell Nduration|th_$ Nduration|th_P Ngas-mark|P Nweight_and|i Nweight_leg| Nweight_leg|of
Nweight_near| Nweight_near|enough Nweight_on_th| Nweight_rib|roast Nweight_still|U Nweight_topsid_for|
Nweight_with|N:few Nweight|N:few Nweight|THING Nweight|it Nweight|no Nweight|topsid_for Nweight|very_THING
P_U_want| P_U|eat P_U|swell P_U|want P_ar_still| P_at_th| P_chang| P_chang|th P_down|back P_drank|it
P_gav|m P_in|belly P_is_a| P_is_giv| P_is_hurt| P_is_insist| P_is_shown| P_is_starv| P_is|
P_is|com P_is|get P_is|giv P_is|her P_is|land P_is|pregnant P_jim|do P_jo|will P_lik|his P_open|that
P_salt| P_salt|them P_sh|has P_slip_on| P_swear|by P_swor_by| P_tonight_so| P_took_th| P_want_a|
P_want_to| P_what_is| P_wher| P_will|hav P|ar_set P|brought_a P|drank_it P|gav_m P|has_arriv
P|has_fallen P|has_gon P|has_had P|is_U P|is_bring P|is_insist P|is_knock P|is_lot P|is_peel
P|is_pur P|is_start P|sleep P|slip_on P|swear_by P|that P|us_it P|us_up P|want_to THING_N:few_and|
THING_N:few_keep| THING_Ndegrees:few_too| THING_THING_ar| THING_THING_has| THING_THING_underneath|
THING_all|right THING_and_N:few| THING_and_a| THING_and|how THING_and|put THING_and|th THING_ar|cover
THING_as|nail THING_a|roast THING_by_th| THING_can_i| THING_can|not THING_caught_light| THING_floor|after
THING_for_N:few| THING_for|a THING_from|th THING_gaug| THING_gaug|must THING_has_caught| THING_has|fallen
THING_how|much THING_is_alway| THING_is_full| THING_is_jump| THING_is_miss| THING_is|hav THING_is|miss
THING_is|now THING_is|show THING_it_in| THING_last|night THING_lover_com| THING_lover| THING_lover|com
THING_mak_yusuf| THING_no|mor THING_of|th THING_out_and| THING_out_oven| THING_over_a| THING_pan_is|
THING_rar| THING_salt_work| THING_salt|work THING_smell| THING_smok_com| THING_ther|is THING_till_th|
THING_till|th THING_to_my| THING_trim| THING_under_th| THING_underneath_for| THING_underneath|
THING_underneath|for THING_w_ar| THING_was_touch| THING_will|not THING_will|th THING_with_bar|
THING_w|ar THING|Ndegrees:few_under THING|Nweight_on THING|alarm_i THING|along_by THING|alway
THING|alway_say THING|and_th THING|cam_out THING|for_$ THING|hand_m THING|has_becom THING|is_alway
THING|is_jump THING|is_miss THING|left_$ THING|out_and THING|out_oven THING|sorry THING|splash_all
THING|still THING|th_lad THING|w_ar THING|went_straight U_DISH_ar| U_DISH|ar U_cancell_so|
U_had| U_has|gon U_hold| U_hold|on U_in_with| U_is| U_is|at U_is|bring U_is|on U_is|sort U_i|am
U_keep|THING U_keep|drop U_left| U_mak| U_my_back| U_of|THING U_so|N:few U_th_whol| U_that|is
U_th|roast U_walk| U_want_to| U|and_U U|and_th U|can_pitch U|i U|is_sort U|it_is U|my_P U|my_back
U|on U|stov U|swell U|swell_up U|th_gam ^_DISH_boat| ^_N:core_in| ^_N:core_with| ^_N:core|so
^_N:few_or| ^_N:few| ^_N:few|at ^_N:few|or ^_N:oven|on ^_N:some|on ^_Nclock_w| ^_Nduration_for|
^_Nduration_till| ^_Nduration| ^_Nduration|till ^_Ngas-mark_it| ^_P_U| ^_P_has| ^_P_th| ^_THING_fell|
^_THING_say| ^_THING|say ^_U_can| ^_U|want ^_^_N:few| ^_^_Nduration| ^_^_alex| ^_^_an| ^_^_crank|
^_^_grab| ^_^_hang| ^_^_hot| ^_^_let| ^_^_loretta| ^_^_mak| ^_^_meet| ^_^_min| ^_^_nora| ^_^_pet|
^_^_pok| ^_^_shov| ^_^_sh| ^_^_stab| ^_^_straight| ^_^_talk| ^_^_warn| ^_a_few| ^_add|th ^_after|Nduration
^_alex| ^_alex|can ^_all|N:few ^_all|guest ^_all|right ^_already|got ^_am|i ^_another_N:few|
^_an| ^_at|N:core ^_at|what ^_befor|i ^_best|way ^_boil|water ^_brown|it ^_burnt|my ^_burn|my
^_call|it ^_cancel|DISH ^_cancel|th ^_can|you ^_chang|th ^_com|up ^_cook|it ^_could|w ^_could|you
^_crank| ^_cut_it| ^_dav_is| ^_did|th ^_dinner_for| ^_dinner_mov| ^_don_and| ^_door_is| ^_eat_Nduration|
^_eat_early| ^_feed|N:few ^_flick|th ^_flight_is| ^_fridg_cold| ^_full|cook ^_gi_m| ^_gon_for|
^_got_N:few| ^_grab| ^_greas_is| ^_guest_hav| ^_guest_will| ^_guest|ar ^_h_has| ^_hang| ^_has|it
^_head_out| ^_hit|N:core ^_hold_dinner| ^_hot| ^_how|ar ^_how|far ^_how|thick ^_i_go| ^_i_keep|
^_i_lower| ^_i_must| ^_ic|water ^_if|i ^_internal|temperatur ^_is|it ^_is|pink ^_is|ther ^_it_hit|
^_it|was ^_it|will ^_i|alway ^_i|burn ^_i|can ^_i|did ^_i|hav ^_i|n ^_i|prefer ^_i|was ^_i|would
^_job_is| ^_job|is ^_jump|past ^_kindly_includ| ^_kindly|put ^_knock_that| ^_leav|th ^_let|
^_lift|th ^_lit_it| ^_littl_oven| ^_load_shedd| ^_loretta| ^_lost|my ^_low|and ^_luca|is ^_lunch_at|
^_m_th| ^_mak| ^_mak|supper ^_meet| ^_min| ^_my_in| ^_my|P ^_n_to| ^_never|mind ^_new|dinner
^_new|oven ^_no_it| ^_nora| ^_not|don ^_not|go ^_onc_it| ^_out_of| ^_out_sh| ^_out|at ^_p_m|
^_pan|is ^_park|it ^_pass|us ^_peak_at| ^_peopl_ar| ^_pet| ^_pet|is ^_plat_down| ^_plat|ar
^_pok_m| ^_pok| ^_reckon|w ^_right_DISH| ^_right_what| ^_roast|is ^_roll_ar| ^_sam|as ^_scrap|that
^_set_us| ^_set|us ^_shall|w ^_shoot|ther ^_should|i ^_shout|when ^_shov| ^_shower_back| ^_sh|
^_som_of| ^_soon|as ^_stab| ^_starter|is ^_start|it ^_step|away ^_still_in| ^_straight| ^_suppos|w
^_swap_th| ^_swap|th ^_tabl|is ^_talk| ^_talk|m ^_tell_your| ^_th_babysitter| ^_th_current|
^_th_in| ^_th_small| ^_th_twin| ^_ther|has ^_they_ar| ^_they_wer| ^_this|oven ^_th|door ^_th|fir
^_th|gas ^_th|guest ^_th|light ^_th|next ^_th|pan ^_th|recip ^_th|toddler ^_th|visitor ^_th|we
^_th|wean ^_timer_for| ^_tom_is| ^_top_of| ^_toss_th| ^_ty_it| ^_ugh_ezra| ^_us|unit ^_w_hit|
^_w_ran| ^_walk_m| ^_walk|th ^_warn| ^_warn|m ^_was_not| ^_was|not ^_well_th| ^_what_was| ^_what_would|
^_what|am ^_what|if ^_what|siz ^_what|will ^_when_can| ^_wher_ar| ^_which|sid ^_why_can| ^_why|ar
^_why|is ^_why|it ^_would|N:core ^_w|can ^_w|hav ^_w|mak ^_w|shall ^_yell_at| ^_you_n| a_Nweight_forerib|
a_U_of| a_U_out| a_bag_of| a_bath_can| a_bon_and| a_conventional| a_conventional|oven a_fan|assist
a_few|minut a_for| a_for|N:some a_full|hous a_grand|piec a_green| a_green|DISH a_helper|today
a_kidney| a_kidney|transplant a_leg_of| a_look| a_medium| a_nic_bit| a_number_of| a_party|of
a_proper|rar a_quarter| a_r_win| a_revers|sear a_rib_of| a_rib| a_roast|without a_school| a_school|night
a_set| a_set|for a_tablespoon| a_tablespoon|of a_th|N:few a_tick| a_yell|at abl|to_do about_mak|
about|now add_th|green add|a_DISH after_a_proper| after_a|tumbl after_it_is| after_i|wiggl
after_th|nut after_w|sit afternoon_f_that| after|Nduration_to after|all_$ after|go_up after|i_wiggl
ag_N:few_good| again_mor|slow again_thank|heaven against|th_bon ago_it|was ago_sorry| ago_when|
ago_whil| ago_whil|i ago|not ag|to_heat ahead_of|m alarm_in_Nduration| alarm|i alcohol_for|
alcohol_for|mrs alert_m_at| alert_m|at alex_can_stir| all_N:few|at all_THING|and all_item|
all_i|hav all_my_stuff| all_my|THING all_of| all_right_in| all_taken| all_taken|their all_that_faff|
all_that|faff allergic_to|nut allergy_for|mark allergy_useful_to| all|THING_and all|at all|behind_lik
all|in_now all|of_us all|off all|off_Nduration all|th all|th_sam all|too all|too_much alon_for|
alon_for|Nduration already_th_DISH| alway|has_been alway|run_hot am_Nduration|down am_after_put|
am_away_behind| am_behind_by| am_behind|by am_chas_my| am_drown| am_drown|her am_i_aim| am_i_behind|
am_i|behind am_i|hav am_mil_off| am_on_my| am_on_th| am_out_till| am_pull_th| am_run_a| am_skip|
am_watch_th| am|N:few_$ am|THING_a am|THING_solo am|U_$ am|after am|all_behind am|behind am|bleed
am|chas am|chas_my am|driv am|from am|get_N:core am|head_upstair am|i_after am|i_on am|overwhelm
am|tell_you an_Nweight|stand and_N:few|burner and_P_has| and_P_want| and_all_my| and_a|U and_bob|
and_bob|is and_did|not and_dinner| and_flat| and_hav_not| and_hit|my and_how|many and_hungry_all|
and_h|will and_it_went| and_it|say and_left| and_not_N:few| and_plus| and_power_is| and_power|
and_skip|th and_so_what| and_supper|is and_th_P| and_th_cooker| and_th_lowest| and_that_was|
and_then|noth and_th|other and_th|shop and_w_sit| and_wak_m| and_what_ar| and_what|ar and_when_do|
and_when|do and_w|ar and_w|hav and_w|want and_yell| and_you_ar| and|DISH_all and|N:core_year
and|N:few_burner and|Nduration_behind and|a_THING and|bon and|do_th and|everyth_in and|frail
and|is_N:core and|is_not and|is_th and|kilo and|m_with and|now_th and|pound_and and|ris and|sh_still
and|tail and|th_cooker and|to another_N:few_so| ansel| any_way|THING anyth_i_should| anyth_on|th
anyth|want_do any|THING_$ any|idea_when any|other_way an|Nweight_stand an|allergic an|allergic_reaction
app_is| app_is|lost ar_N:few_not| ar_N:few|of ar_a_no| ar_ahead_of| ar_all_THING| ar_at_th|
ar_burnt_at| ar_com|than ar_cover_in| ar_expect_N:some| ar_feed|th ar_go|in ar_go|to ar_hav_prim|
ar_my_option| ar_my|option ar_not|even ar_no|longer ar_out|and ar_still_cold| ar_still_squeaky|
ar_still|lik ar_still|pal ar_still|swim ar_w_long| ar_w|hav ar_w|long ar_w|up arm|what arm|what_do
arriv_Nduration| arriv_so| arriv_so|far ar|U_$ ar|all_in ar|all_sat ar|b_N:some ar|bring ar|charcoal
ar|clean_out ar|cover ar|don_$ ar|down ar|down_to ar|in ar|join ar|kill_m ar|miss_th ar|my_choic
ar|on ar|roll_DISH ar|sell ar|sell_plat ar|start_to ar|still_THING ar|still_crunchy ar|still_squeaky
ar|swell ar|w_at ar|w_eat ar|w_nearly ar|w_ok ar|w_still ar|w_up ar|warm as_it|should as_you|wer
ask| assist| as|a_boot as|i_typ as|long_as as|nail as|old as|soon as|soon_as as|that_$ as|you_reckon
at_N:few_is| at_N:few|dinner at_N:oven_instead| at_N:oven_i| at_N:oven|anymor at_Nclock_N:core|
at_Nclock_what| at_Nclock_w| at_Nclock|and at_U| at_at|N:few at_hom|th at_how| at_last_low|
at_m_when| at_th_very| at_th|bon at_th|door at_th|finish at_th|till at|N:few_tonight at|N:oven_anymor
at|Ndegrees:core_let at|Ndegrees:oven_and at|easter at|either at|either_end at|least_$ at|m_$
at|right_about at|som_point at|th_ars at|th_dog at|th_finish at|th_moment at|th_nut at|th_start
at|th_stov at|th_very at|that availabl_in_our| availabl_in| availabl_in|our away_behind| away_behind|th
away_to_f| away|and away|to_f a|DISH_$ a|Nweight_leg a|Nweight_rib a|P_with a|THING_and a|THING_in
a|THING_up a|THING_will a|U_$ a|U_for a|bag a|bag_of a|bit_Nduration a|bit_later a|bit_raw
a|block a|break a|crisp a|dat_so a|fall a|fat a|fat_THING a|few_DISH a|good_N:some a|good_on
a|kip a|kip_$ a|mil a|miss_$ a|pair a|party_of a|prayer a|quarter a|rib_$ a|roast_without a|rock
a|second_$ a|shellfish a|sid a|tumbl a|v a|v_THING a|vegan_com a|walnut a|word b_N:few_don'tcha|
b_away|from b_careful|with b_f| b_get| b_get|on b_go|for b_if_i| b_insid_when| b_mak_th| b_near_th|
b_near| b_near|th b_when_i| back_by|Nclock back_has| back_has|gon back_in_a| back_in|business
back_of| back_of|th back|has back|has_gon back|is_bad back|to_m bad_off| bad_off|th bak_Nduration|
bak_Nduration|befor bang_on|N:some bar|THING bar|THING_it bar|hand bast_step_my| bath_can|
bath_can|you bathroom|scal bear| beast|is beast|is_in becom_N:some_i| becom|very_sick been_cut|
been_cut|off been_don|so been_hit| been_in|ag been_in|sinc been_open|this been_put_in| been_vot|
been_vot|down been|a been|hit been|off been|on been|shov been|shov_in been|start beer|is beer|is_open
befor_it|is befor_i|carv befor_medium| befor_medium|well befor|Nclock begun_peel_th| behind_in|
behind_in|her behind_th|THING behind_th|plan behind_with|everyth behind|or_am behind|th_cow
belly_of| belly_of|it ben_can| ben_can|not beth|is between_N:few_and| bin_th|timer bin|th_timer
bird_wer| bird_wer|drop bit_is|sort bit_of|pink bit|of_gristl blast_at|either blast|of blast|of_heat
blister|carry blister|carry_on blood_thinner_and| board_onto| board_onto|th board|and board|onto
board|onto_th body| boil_for|DISH boil_water_on| bon_Nweight_still| bon_Nweight|very bon_off_and|
boneless_Nweight_and| bonfir_night|in bonfir|night_in bon|U bon|i bon|skip_th borrow_a| borrow_a|THING
boss_keep| boss_keep|THING boss|tak boss|tak_her bother_tim_th| bother|ty bother|ty_it bottl_of|beer
bottl_o| bottl|of_beer bottom_v| bottom_v|THING bout|Nduration_lat br_it|to br_my|P brb|Nduration_front
break_out| breaker_trip_and| break|out_from bring_his|P bring|his brought_THING| brought_THING|with
brought|THING brought|THING_with brown_it|off budg_for| budg_for|ag build|is_without bump_it|
bump_th_heat| bump|everyth_back bung_som_roast| burn_pretty| burn_pretty|bad burnt_at| burnt_at|th
burnt_my_wrist| burnt_my|THING burnt_to| burnt_to|a burnt|myself_on burnt|th_DISH burn|my_arm
burn|myself bust_so_nowher| butter_for|th butter_in|th butter_is_out| butter_is|mad butter_on_th|
butter_so_no| butter|all butter|step_$ buzz_m|at by_N:few|sh by_Nclock_and| by_say| by_say|yesterday
by_th|THING by_th|tim by|Nduration_approximately by|rar_so b|N:few_don'tcha b|a_thick b|at_th
b|befor b|befor_it b|better b|her_for b|insid b|insid_when b|near b|near_th b|ready_by b|right_it
b|spoon_th b|water c_and|kilo c_put_it| call_and| call_and|they call_loud_i| call_out|N:core
call_them_i| call|it_N:oven call|it_a call|m_back cam_out_of| cam_outsid| cam_outsid|befor
cam|out_$ cam|out_N:oven can_do_th| can_eat|Nduration can_help_from| can_help_till| can_help|till
can_i_ask| can_i_freez| can_i_open| can_i|swap can_manag|it can_not_keep| can_not_mak| can_not|find
can_pitch_in| can_stir| can_stir|th can_th|P can_w_hav| can_w|eat can_you_explain| can_you_giv|
can_you_talk| can_you|get can_you|tell can|help_from can|not_find can|not_hear can|not_remember
can|not_talk can|w_skip can|you_spar can|you_tim capital|of car_park_what| car_pull| careful|with_pink
carv_it_straight| carv_it|yet carv|it_straight carv|yet car|park_what cast|iron_$ cast|iron_THING
cast|iron_pan cat_has_been| cat_knock| cat_knock|th catch_m| catch_m|up cater|for cater|for_N:some
cattl_gon| cattl_gon|Nduration cat|has cat|has_been caught_fir_tell| caught_light_on| caught_light|
caught_light|on caught|fir_tell cayenn_and| cayenn_and|DISH chanc|i chang_th_pull| chang|of_plan
chang|th_fus chas_my| chas_my|tail cheap_THING|alway chill|th_DISH choir| choos|from_$ clear|th_timer
club|roast club|roast_Nweight coat_a| coat_a|spoon coat_in| coat_in|th collect|my com_Nduration|after
com_after|all com_after|this com_back_to| com_back|on com_back|to com_it|has com_let| com_out_way|
com_out|now com_sh| com_sh|got com_so|N:few com_to| com_up_to| com_w_hav| com|out_way com|than
com|than_i com|up_N:core confirm_com_so| consider_th| consider_th|DISH continental_scal_for|
continental_scal| continental_scal|for conventional|heat_N:oven cook_it|through cooler_than|it
cooler_than|th cor|temperatur_Ndegrees:core cost| could_dinner|happen could_i_get| could_i|get
could_i|hav could_not_call| could_yell_at| could_you_giv| could_you_watch| could|dinner_b could|do_with
could|not_get could|not_hav could|not_hear counter_it| counter_it|is count|m_Nduration cours_for|Nclock
cover_in|butter cover|it_whil crank_it| cream_is|mad cream_is|not cream_w|hav cream|w_hav crept_up|to
crisp|as crisp|as_you crisp|it crisp|it_up cross|it cross|it_off cut_it|now cut_it|open cut_my|
cut_m| cut_up_and| cut_up|and cut|off_it cut|off_no cut|or cut|or_ti cylinder_oven| cylinder_oven|is
cylinder| darlen_do| darlen_do|keto darlen|had darlen|had_to dav_down_for| day_N:few|tim day_i_am|
degre|c_so delay|of delay|of_Nduration delet|what descend| di_whol| dial_N:oven_real| dial_THING|show
dial_is|at diall|back diall|back_to did_i|go did_i|ruin did_not|finish did_you_put| did_you|do
did|i_forget did|not_U did|not_salt did|not_say did|th_THING did|you_ever digit| dinner_b_Nduration|
dinner_has| dinner_if| dinner_if|you dinner_is_by| dinner_is|at dinner_mov|to dinner|back_by
dinner|for_him dinner|happen_Nduration dinner|is_N:oven dinner|is_at dinner|is_plan display_has|gon
di|and do_a_DISH| do_a_revers| do_about| do_dinner| do_for|m do_i_stick| do_i_wash| do_it_look|
do_it|by do_i|begin do_i|ti do_keto_do| do_not_eat| do_not|bother do_not|own do_not|trust do_pink|
do_you|DISH do_you|do do_you|want don'tcha| don'tcha|know don_what_is| don_with|it doneness|
dong_N:core_on| don|i_know don|w doon| door_did|not door_has|been doorbell_that| doorbell|that_is
door|ajar_all door|open_Nduration door|shut_$ dough_is| dough_is|shap down_at|th down_for|th
down_so|text down_to|a down|a_treat down|back_in down|to_N:oven down|yet_$ do|a_revers do|i_hold
do|i_mak do|it_Nduration do|keto do|keto_do do|not_feel do|not_support do|now_$ do|that_$ do|this_for
do|timer do|timer_and do|to_us do|with_DISH do|with_know driv_that| driv_that|is driv|m_THING
drop_Ndegrees:few_after| drop_that|alarm drop_th|THING drop_th|roast drop|out_U drop|th_bast
drop|that_alarm dry_as| du_through| du_through|th dug| earlier_than_w| early_bird| early_so_shav|
eat_THING_rar| eat_at|Nclock eat_a|bit eat_i|am eat_pink_so| eat|at_N:oven eat|by_N:few eat|pink_so
electricity_back_after| electricity_has|gon electricity_is|on end_th_count| enough_for|N:few
enough_for|th enough|to_pull even_pick| even_pick|th even_say| even_say|to even_touch_th| even|pick
even|pick_th even|th_kerry every_last_DISH| every_last|on every_singl| everyth_all| everyth_all|right
everyth_you| everyth|all everyth|all_right everyth|happen everyth|is_go everyth|under everyth|under_control
ever|had exampl_of| exampl_of|what expect_N:some_for| explain_how| explain_to|m extra_N:few|at
extra|for_dinner f_N:few_THING| f_by_N:few| f_cattl_gon| f_god| f_god|help f_that| f_that|is
f_th|P fahrenheit_i_do| family_is|run family|want fancy_blast_at| fancy_som| fancy_som|roast
fancy|blast fancy|blast_at fan|is_off fat_onto_th| fat|is_hot fat|is_on fat|off_$ fat|trim_down
feed|at_Nclock feel_lik|it feet|ar_kill feet|up feet|what feet|what_is fell_on|my fell_on|th
fell|on fell|on_my fin_by| fin_by|m fin_wher| fin_wher|it finish_shop_is| fir_tell| fir_tell|quickly
first_car|pull first_this| first_this|tim first|then fir|to_th flam_com| flat_out|her float_an|
float_an|THING floor_after_a| floor|after floor|after_a floor|sh_can fold| folk_go| folk_go|to
folk_will| folk|get folk|get_her folk|will_not for_N:core|in for_N:few|adult for_Nduration_is|
for_Nduration_to| for_Nduration_what| for_Nduration|U for_a_for| for_help|m for_how|many for_new|
for_new|year for_th_littl| for_th|butter for_th|finish for_th|green for_th|sear for_th|sid
for_who| for_who|know forerib_N:few|bon forget_about| forget|th_truss forgot|to_say forward|N:some_if
for|DISH_$ for|N:some_dinner for|Nclock_for for|Nduration_N:few for|P for|green for|green_DISH
for|mark for|mrs for|mrs_U for|my_P for|my_german for|my_pregnant for|r_win for|th_dinner for|th_drip
for|th_heat for|th_light for|them for|today for|ty for|ty_it found_in_this| fre_from|N:few
from_N:oven_up| from_bottom_v| from_shrimp_so| from_th_THING| from_th|pan from_th|top from|N:oven_to
from|THING_$ from|station from|station_Nduration from|th_DISH from|th_begin from|th_stov front|of
full_of|smok full_tension_noth| full|of_smok fus|has fus|has_blown fyi|this fyi|this_th f|th_hors
gam|plan_U gang| gaug|must gaug|must_b gav|m_a gav|you_$ get_for|N:few get_lat_by| get_on_with|
get_on|with get_rid_of| get|dress get|dress_giv get|for get|her_at get|ther_$ gi_m|a giv_m|option
giv_that|on given|up giv|it_Nduration giv|it_another giv|m_a giv|that_on giv|us_a gi|m_a glov_is|burn
glov|is glov|is_burn go_down|a go_from| go_giv| go_long_Nduration| go_off|again go_out| go_so|
go_to_br| go_to_hav| go_to_look| go_to|b go_to|br go_to|hit go_to|pick go_to|plan go_to|th
go_with_medium| go_with|th god_it|has gon_from| gon_inverter| gon_inverter|run gon_over_on|
gon_ther| gon_ther|is gon_to|th gon_up_in| gon_way| gon_way|past gon_whol_build| gon_whol|
gon|Nduration_and gon|cold_on gon|everywher gon|for_Nduration gon|to_N:core good_THING| good_with|a
good|un_don good|with_a got_N:core_in| got_N:few_out| got_N:few|r got_a|DISH got_a|vegan got_burn_pretty|
got_held| got_held|up got_in|early got_is| got_it|in got_m| got_th_DISH| got_their|coat got_th|roast
got_to|b got_to|th got|N:core got|a_THING got|electricity got|electricity_back got|guest got|guest_to
got|held got|held_up got|it_out got|it_sat got|on got|th_THING got|th_roast got|tim go|for_bath
go|in_$ go|near go|th_THING go|to_DISH go|to_N:core go|to_li go|to_trim go|up_to go|with_medium
grab|th_handl grand|piec grand|piec_of greas_and| great_P|is green_DISH|hit green_ar| green_ar|in
green|DISH_DISH green|DISH_for green|on_th guest_ar|com guest_hav|arriv guest_rang_tyr| guest_will|b
guest_will|not guest|ar_Nduration guest|ar_run guest|hav_reach guest|lat guest|lat_Nduration
h_has|had h_is_still| h_is|off h_is|stay had_a|fall had|a_go hair_out| hair_out|her halfway_or|
halfway_or|DISH hana|who hana|who_is handl_it|was handl_th_DISH| handl_th|DISH handl_without|
handl_without|a hang_on_let| hang|in happen_at|onc happen_if|i has_a|nut has_been_cut| has_been_open|
has_been|a has_been|rest has_been|shov has_been|sit has_caught|fir has_crept| has_gon_inverter|
has_gon|everywher has_got_N:few| has_got_to| has_had|th has_left_th| has_not_got| has_risen_to|
has_risen| has_risen|to has_to|b has|been_a has|been_at has|been_sat has|com_to has|com_up
has|gon_blank has|gon_cold has|gon_down has|gon_in has|gon_out has|had_a has|not_got has|risen
has|risen_to has|th_flu haul_th|beast hav_Nduration| hav_a_grand| hav_all_taken| hav_all|gon
hav_an|allergic hav_arriv_so| hav_a|helper hav_a|kip hav_been_vot| hav_burnt_my| hav_cut|my
hav_finish_th| hav_gon|to hav_got_their| hav_had_th| hav_haul_th| hav_hoick| hav_hoick|th hav_it_pink|
hav_i|forgotten hav_miss_th| hav_not_been| hav_not_turn| hav_not|N:few hav_not|been hav_no|THING
hav_peel|th hav_plenty|of hav_put_too| hav_roast_DISH| hav_rub| hav_sat_them| hav_sat|them
hav_shov_th| hav_som| hav_switch| hav_to|get hav_truss_th| hav_turn| hav|DISH_with hav|N:few
hav|a_boneless hav|a_whol hav|already hav|been_vot hav|eas hav|eas_th hav|gon_to hav|got_N:core
hav|got_her hav|had_a hav|haul hav|haul_th hav|hit_roadwork hav|it_rar hav|kept hav|kept_for
hav|left hav|lost_a hav|no_notion hav|not_mad hav|not_ti hav|peel_th hav|perch hav|perch_it
hav|put_on hav|tim hav|walk_in head_out_to| head|out_for hear_much_out| hear_much| hear_much|out
heat_and_left| heat_i_hav| heat_is|out heat_th|oven held|up help_m_and| help_th|parchment help_till|Nclock
helper_it_is| helper_it| helper_it|is helper_today|her help|my help|my_P henderson|ar_her her_N:few|to
her_P_so| her_U_my| her_eat| her_eat|pink her_now_and| her_now| her_too| her|back_to her|befor
her|befor_N:few hey_N:core_on| hey_N:core| hey_N:core|on himself_left_th| himself|left himself|left_th
his_cook| his_cook|to his|N:core his|fac his|throat hit_th|deck hit_th|floor hit|N:core_i hit|my
hit|my_THING hit|th_deck hoick|th hoick|th_THING hold_dinner_by| hold_dinner|for hold_th|THING
hold_your|hors holler_when|it holler|when_sh holler|when_w hood|was hood|was_on hop_in| hop_in|th
hop_nobody_is| hop_that| hop_that|is hot_THING_on| hot_alway| hot_alway|has hot_oven_clock|
hot_oven| hot|handl hot|handl_my hot|now_ready hous|is_full how_do|th how_i_mak| how_long|for
how_long|yet how_many_of| how_many|day how_many|degre how_many|gram how_much_cream| how_much|win
how_on_earth| how_on| how_on|earth how_should|i how|far_along how|far_off how|go how|go_it
how|hot_for how|i_mak how|long_w how|many_minut how|many_mor how|many_of how|many_slic how|many_spoon
how|much_THING how|much_mor how|much_salt how|much_water how|pink_is how|pink_would how|thick_a
how|to_truss how|w_lik hungry_all| hungry_all|N:few hurry_it|along hurt|h hurt|h_pour h|has
h|will_do i_DISH|out i_aim| i_aim|for i_am_drown| i_am_i| i_am_nip| i_am_skip| i_am|after i_am|behind
i_am|bleed i_am|chas i_am|driv i_am|from i_am|head i_am|overwhelm i_bast|it i_behind| i_behind|or
i_burn_my| i_burnt_th| i_can_tak| i_can|do i_can|smell i_can|us i_com| i_could|not i_could|us
i_do_th| i_even_say| i_fancy_som| i_find| i_find|th i_flip| i_flip|it i_freez| i_get_for| i_got|th
i_had_my| i_had| i_had|it i_hav_hoick| i_hav_peel| i_hav_switch| i_hav|already i_hav|eas i_hav|had
i_hav|haul i_hav|her i_hav|now i_hav|peel i_hav|perch i_heard| i_heard|you i_lik_th| i_mak|th
i_never_got| i_nudg| i_nudg|it i_n|a i_n|for i_n|from i_n|to i_press|it i_remov|it i_reset|
i_said_N:some| i_say_to| i_se|th i_stick|th i_swap|THING i_switch|off i_thought_w| i_ti|it
i_touch|raw i_turn_it| i_turn_them| i_was_at| i_was|read i_whack|it i_will_forget| i_will_not|
i_will|tak i_would_quit| i_would_th| i_wrangl| i_wrangl|th ic|water_$ idea_when_well| if_it_go|
if_i|had if_i|slic if_someth|is if|THING_DISH if|someth_is ill_b_Nduration| ill_b_away| in_DISH_powder|
in_DISH| in_N:oven| in_N:some_for| in_Nduration_about| in_Nduration_after| in_Nduration|after
in_a_good| in_and|th in_any|circumstanc in_a|tick in_beer| in_beer|is in_celsius_and| in_charg|of
in_from_th| in_from|Nclock in_from|th in_front|of in_green| in_green|DISH in_i|am in_kilo_if|
in_kilo|and in_now|do in_old| in_old|money in_our|market in_oven_sinc| in_sh| in_sh|go in_som|DISH
in_som|roll in_th_morn| in_th_small| in_that| in_their_coat| in_they|ar in_th|driveway in_th|left
in_th|market in_th|other in_th|pantry in_too| in_to|warm in_wer| in_wer|back in_which| in_with|th
in_yet_do| inch_as| inch_as|instruct includ|N:few includ|N:few_DISH inform|m_at insid_th|oven
insid|is insid|sinc insid|sinc_Nduration instead_of_real| instead_of|N:few internal_temperatur|is
internal|is internal|is_N:core interstat_folk_go| into_it_and| into_my|palm into_th|driveway
into|th_hot inverter|run inverter|run_th in|Nduration_back in|a_sec in|belly in|belly_com in|between_$
in|business in|celsius_would in|early in|early_so in|law_ar in|law_has in|law_is in|law_sh
in|law_want in|now_$ in|number_$ in|order_$ in|our_hous in|our_market in|th_belly in|th_cast
in|th_cold in|th_night is_N:core_on| is_N:few|extra is_Ndegrees:some|shy is_Nweight_in| is_Nweight|
is_THING_THING| is_THING_and| is_THING_lover| is_THING|and is_U|in is_a_conventional| is_a_school|
is_after|go is_all|THING is_all|gon is_all|too is_at_th| is_at|th is_a|thick is_beep| is_blister|carry
is_bring|his is_cancell|so is_chok| is_com|on is_com|up is_cut|or is_cut|up is_down_so| is_do|a
is_du_through| is_everyth_all| is_everyth|all is_given| is_given|up is_hav_an| is_her|i is_hit_th|
is_hit|th is_hurt| is_hurt|h is_in_beer| is_in_their| is_insist| is_insist|on is_in|and is_it_meant|
is_it|in is_join| is_land_even| is_lik_bonfir| is_lik|bonfir is_load_with| is_mad_it| is_mad|and
is_miss|a is_my_magic| is_my|THING is_my|magic is_not_requir| is_not_up| is_not_what| is_not|requir
is_now|at is_no|longer is_no|mor is_on_and| is_out_it| is_outta|ther is_read|N:oven is_remain|
is_rest_on| is_run_bout| is_sat|on is_say| is_shown| is_shown|his is_sit| is_sleep_in| is_slip_on|
is_slip|on is_snap_and| is_spread| is_stay|hom is_still|THING is_still|U is_stuck_to| is_tak_m|
is_taken|it is_tak|m is_th_gam| is_th_order| is_th_plan| is_th_reason| is_that_all| is_that|on
is_th|old is_th|plan is_th|situation is_to|b is_up_next| is_vegetarian_i| is_vegetarian|i is_when|i
is_when|it is_wher|i is_your|P is|N:core_call is|N:few_off is|Ndegrees:core_and is|Ndegrees:oven_in
is|Ndegrees:some_shy is|Nweight_i is|THING is|U_clos is|a_good is|a_hot is|a_lot is|a_we is|act_weird
is|after_com is|all_w is|any_U is|at_N:core is|at_a is|banjax_$ is|begun_it is|bleed_and is|blunt
is|bring_DISH is|bring_N:few is|bring_his is|bring_th is|by is|cancell_so is|delay_so is|driv_m
is|du_through is|faint is|fall_apart is|for_N:few is|fre_from is|go_in is|go_long is|ground
is|ground_so is|help_with is|her is|her_till is|in_DISH is|in_flam is|in_my is|it is|it_N:few
is|keel is|keel_over is|land_even is|left_for is|lik_th is|long_wind is|lost_th is|m_$ is|m_don
is|mad_and is|mad_it is|miss_a is|murder is|no_win is|not_any is|not_clos is|not_heat is|not_past
is|now_at is|offer_to is|on_th is|overcook_$ is|pack_in is|read_Ndegrees:core is|right_U is|rock
is|run_bout is|sak_$ is|serv_$ is|shap_N:few is|simmer is|stuck_to is|tail_her is|th_middl
is|th_reason is|that_go is|that_ok is|ther is|too_full is|under_th is|urgent is|urgent_$ is|volunteer
is|whisk is|with_th is|your_lot it_Nduration|earlier it_all|off it_all|right it_alon_for| it_and_yell|
it_and|th it_and|what it_a|rest it_b_if| it_beep_so| it_burn_in| it_b|r it_doon| it_doon|ta
it_down|to it_first_this| it_for|N:few it_h_is| it_has_crept| it_has_risen| it_has_to| it_has|com
it_has|risen it_is_down| it_is_do| it_is_spread| it_is|fall it_is|urgent it_let_us| it_meant|
it_meant|to it_must|b it_off|and it_out_on| it_out_th| it_pink| it_pink|in it_reckon_in| it_sat|
it_sat|on it_should|b it_sit|out it_slip| it_stood| it_stood|at it_straight|away it_this|minut
it_tim|to it_touch_N:core| it_went|in it_went|out it_went|whoosh it_with|salt it_with|you it_w|ar
item| it|N:few_instead it|all_off it|as_it it|at_$ it|b_r it|by_THING it|can it|claim_$ it|first_and
it|first_this it|for_a it|forward_N:some it|get_past it|go_U it|go_abov it|go_to it|has_fallen
it|has_gon it|has_touch it|in_at it|in_ic it|in_kilo it|is_cook it|is_cover it|is_drop it|is_finish
it|is_in it|is_mad it|is_my it|is_on it|is_past it|is_ready it|is_roll it|is_show it|is_sit
it|is_sleep it|is_smell it|is_so it|is_ston it|is_thin it|is_touch it|is_urgent it|is_way it|myself
it|on_paus it|out_Nduration it|out_and it|rar_lik it|rest_now it|rib it|rib_no it|say_N:some
it|say_THING it|say_on it|should_$ it|slid_off it|to_medium it|up_again it|up_now it|up_to
it|was_hot it|with_a i|am_N:some i|am_about i|am_after i|am_away i|am_bin i|am_bleed i|am_count
i|am_look i|am_miss i|am_overwhelm i|am_pop i|am_skip i|am_talk i|ask_you i|behind i|burn_myself
i|can_us i|cut_into i|forgotten i|got_burn i|hav_U i|hav_bung i|hav_knock i|hav_press i|hav_salt
i|hav_sat i|hav_slip i|hav_start i|hav_taken i|hop_nobody i|keep_hear i|know_$ i|mean_th i|meant_th
i|miss_for i|open_it i|pok_it i|prefer_to i|press_th i|put_THING i|put_already i|put_on i|said_to
i|said_wrong i|se_th i|shall i|shall_b i|should_not i|slic_it i|spok i|think_it i|think_my
i|thought_w i|told_you i|turn_on i|want_P i|want_degre i|want_thos i|want_to i|was_at i|wiggl
i|wiggl_it i|will_giv i|will_put i|would_n jar_of|DISH jaysus_th_pan| jess_is|on jess|is jim|do
jim|do_not jo_is|go job_is_a| joint_in|th joint_is_on| joint_with| joint_with|mushroom joint|is_in
join|us_that jo|is_go jump|past jump|past_it kat_is| kat_is|coeliac kavi_is_do| keep_ask| keep_ask|m
keep_it_warm| keep_tell| keep_watch_for| keep|drop keep|drop_every keep|him keep|th_other keto_do|
keto_do|not kettl_is|on kettl|on_tim kick_in_wer| kick_off_is| kidney|transplant kill_my| kill_my|P
kill|it kill|m kill|my kill|my_P kill|th_oven kilo_if| kilo_if|you kindly_includ|N:few kindly_inform|m
kindly_remind_after| kindly|put kindly|put_N:few knock_it|back knock| knock|on_th know_how|long
know_what|DISH know|what_i lack|a_cut lad_so| lad|hav_land land_even| land_even|th land_on_th|
land_on|th last_low| last_low|flam last_of|them last|entry_by last|night_i last|th_you later_preacher_is|
later|than_w lat|Nduration_$ lat|that law_is_pregnant| law_is|vegetarian law_want_his| law|is_vegetarian
lay_N:few_mor| lay_N:few| leav_it_with| leav|th_THING left_in_this| left_in| left_in|this left_it|
left_it|in left_that_door| left|in left|th_build left|that_door less|than_it let_it|get let_it|sit
let|it_rest let|us_eat let|us_hav let|us_not let|us_skip let|us_tak light_has|gon light_on|th
light|on_th light|went_out lik_a|THING lik_a|U lik_bonfir_night| lik_bonfir| lik_bonfir|night
lik_forget| lik_forget|th lik_in|th lik_i|am lik_th_cow| lik_to|eat lik|P_eat lik|a_balloon
lik|bonfir lik|bonfir_night lik|chew_a lik|to lip_ar| lip_ar|swell littl_pink_mor| littl_screen|by
littl|N:few_eat littl|on_will load_with| load_with|DISH long_Nduration| long_Nduration|later
long_as|you long_can|it long_do|it long_do|leftover long_hav_i| long_is|it long_till|dinner
long_till|th long_till|w longer_than|i longer_they| long|as_it long|befor_i long|do_leftover
long|for long|for_th long|hav_th long|off long|off_th long|to_go long|yet look|at_it look|lik_P
lord|hav lord|hav_mercy loretta_is| loretta_is|go lost_th|thread lost|track_of lot|w loud_i|
loud_i|am lover_com| lover_com|let lover|com lover|com_let low_and|slow lowest|it low|flam_lid
luca_is|ground m_U|my m_U|ther m_all_th| m_and_th| m_back|from m_for_Nduration| m_how|long
m_h| m_if|it m_in|th m_plus| m_th|missus m_th|whol m_up_in| m_what_to| m_what_you| mad_and_in|
mad_and|it mad_it|to mad|th magic_number|for magic|number_for mak_it|rib mak_yusuf| mak_yusuf|is
mak|N:few_$ mak|do mak|do_with mak|it_N:some mak|it_Nclock mak|it_medium mak|supper mak|supper_Nduration
mak|that_Nclock man_is_Nduration| manag|it many_DISH_do| many_of| many|DISH_per many|THING_in
many|THING_of many|day many|degre many|gram marcus_is| marcus_is|allergic marri| mean_th|oven
meant_Nduration_not| meant_to|b mean|th mechanically| mechanically|tenderis medium_and_that|
medium_rar_in| medium_rar|what medium|well_they medium|well_w method_for|green method| metric_system_for|
microwav| middl_get| middl_get|to middl_when| mil_off| mind_drop_that| mind_drop| mind_drop|that
mind_get| mind_get|rid mind_it| mind_it|myself minus|theo minus|theo_plus miss_a_fat| miss|a_fat
mistak_i|hav mob|is_rock mom_lik_forget| mom|lik mom|lik_forget mor_than_it| mor|cook mor|cook_medium
mor|slow mor|slow_$ most_of|them mouth_to| mouth_to|f mov_to|N:few mov_to|Nclock mov|it_up
much_THING_do| much_cream| much_cream|in much_i_am| much_i|am much_longer_do| much_out| much_out|her
much_water_for| much|longer_on much|out much|out_her much|salt_go much|win much|win_go mushroom|and
must|b_th must|eat_Nduration my_P_can| my_P_mak| my_P_set| my_P|from my_THING_do| my_THING_gaug|
my_THING_say| my_THING|is my_arm|what my_arm|with my_back_has| my_back|has my_boss_keep| my_boss|tak
my_cheap_THING| my_folk| my_folk|will my_hair_out| my_magic_number| my_magic| my_magic|number
my_next|job my_option| my_stuff| my_stuff|is my_tod| my_tod|now my_wrist_it| my|P_mak my|P_ottolin
my|P_simpl my|P_text my|THING_do my|THING_ther my|back my|back_has my|blood my|blood_pressur
my|feet_ar my|finger_on my|folk my|folk_will my|grandson_is my|in my|in_law my|magic my|magic_number
my|option my|oven_will my|sid my|slow my|slow_on my|tail my|tail_Nduration my|thumb_is my|tongu
my|way my|word m|THING m|U_hold m|a_THING m|a_bell m|a_nois m|a_nudg m|at_Nduration m|don_$
m|down_for m|forever m|forever_U m|it_is m|som_choic m|th_choic m|up_at n_N:few_minus| n_another|Nduration
n_feed|at n_of| n_tell_every| n_to_check| n_to_jump| n_to|b n_to|get nadia_sh_is| near_enough|to
near_th|oven nearly_set| nearly_set|fir needl|is_point never_did|th never_mind_about| never_mind_get|
never|again_$ new_P_so| new|P_so new|dinner_tim new|on next_on|th next|Nduration next|door_for
next|i next|th_$ nic_U_i| nic_and|pink nic_bit| nic_bit|of night|in_her nip_and| no_N:core_i|
no_Nclock| no_P_i| no_THING_is| no_THING|th no_fancy|blast no_forget| no_hang| no_hang|on no_i|am
no_i|did no_n_of| no_off_th| no_power_in| no_rest| no_sorry| no_str_to| no_th_green| no_win|in
no_you| nobody_her_eat| nobody_is_cut| nobody_is|U nobody_is|du nobody|told non_of|that non_to|
non_to|b not_N:core| not_P_open| not_at_N:oven| not_at|N:oven not_at|th not_availabl_in| not_a|v
not_b_near| not_been|start not_budg_for| not_b|bother not_b|near not_call|it not_carv|yet not_com_sh|
not_eat|it not_even_pick| not_even|pick not_feel_lik| not_feel| not_get|a not_got|a not_got|th
not_go| not_go|near not_hav_THING| not_hear_much| not_i_carv| not_know_how| not_know|what not_let|it
not_mak_th| not_n_th| not_n|th not_own|a not_peel_th| not_put| not_put|a not_requir|now not_rest_long|
not_se|for not_th| not_turn|on not_turn|th not_up_to| not_up| not_yet| noth_cut| noth_cut|off
noth_green| noth_green|on noth|is_happen not| not|U not|at_N:oven not|availabl_in not|b_bother
not|b_do not|b_mak not|been_start not|bloody not|bloody_$ not|bother_sear not|cook_$ not|count_$
not|don_yet not|eat_THING not|eat_without not|find_a not|finish_scrap not|hav_any not|heat_at
not|in_th not|in_yet not|mind_a not|n_it not|open_th not|own not|peel_th not|requir_now not|rest_it
not|se_for not|tak_THING not|th_foggiest not|ther_in not|touch_THING not|trust_th not|trust_that
not|trust_this not|understand_celsius not|want_to not|yet now_and|i now_and|sh now_at|Ndegrees:core
now_i_will| now_instead_of| now_i|am now_i|will now_ready_for| now_would| nowher|near_sorry
nowher|to_chill now|at_Ndegrees:core now|i_hav now|insid now|th_oven no|THING_can no|THING_i
no|THING_left no|fan_on no|i_can no|idea_how no|mor_no no|w_ar nudg_THING| nudg_THING|along
nudg_it_to| nudg_m|in nudg|it nudg|it_to nudg|m_at nudg|m_in number_has|gon number_of|guest
number_of|minut n|from_th n|mor n|to_b n|to_get of_N:oven_is| of_god_it| of_guest_to| of_m_i|
of_oven|is of_real| of_real|THING of_them_got| of_them_how| of_them_is| of_them_walk| of_thos|wireless
of_th|pan of_th|slic of_us|and of_water|in of_whatever| of_whatever|you off_on_th| off_so|it
off_th|Nduration off_till| off_with|th off|N:some off|a off|and off|at off|th_board of|beer
of|guest_to of|heart of|m_i of|minut of|my_finger of|th_roast of|them_so of|ther of|us of|us_not
of|what_to of|win_$ ok_THING|is ok_for|P ok_instead| ok_instead|of ok_i|am ok_so| ok_to|eat
ok_turn_it| ok_what|is ok_with_th| old|money old|th on_Nclock| on_P_is| on_THING_is| on_a_few|
on_a|Ndate on_cours_for| on_for|th on_is|cover on_m_i| on_my_tod| on_on_th| on_th_bathroom|
on_this_U| on_th|Ndate on_th|Ndegrees:oven on_th|boil on_th|high on_th|hob on_th|motorway on_th|plan
on_th|r on_th|shelf on_th|timer on_to_boil| on_to|boil on_track_for| on_track_or| on_track|for
on_wash| on_wash|up onto_th|oven on|N:core_has on|accident on|again_th on|at_all on|for_a on|his_foot
on|m on|my_list on|my_wrist on|th_button on|us_$ on|with_whil open_th|oven open|this open|this_whol
or_DISH_whatever| or_alcohol_for| or_do_that| order|onlin order|onlin_tonight or|N:oven_$ other|oven_$
other|way_THING ottolin_is_her| our_cooker_is| our|hous our|market our|own out_N:oven_so| out_N:oven|so
out_and_i| out_at|th out_i|do out_of|butter out_of|it out_of|my out_of|ther out_oven|is out_th_P|
out_till|Nclock out_way| out_way|too outsid_onc| outsid_onc|it outsid|befor outsid|befor_Nduration
outta|ther out|already_$ out|for_Nduration out|now_get out|to oven_and_it| oven_and|th oven_at|Ndegrees:oven
oven_first_then| oven_for_th| oven_glov|is oven_has|com oven_is_conk| oven_is|full oven_is|hot
oven_is|pack oven_is|too oven_now_and| oven_set|to oven_shelf_will| oven_shelf|will oven_sinc|Nduration
oven_that|is oven_took| oven_took|ag oven_what|do oven|U oven|b_set oven|beep_it oven|door_and
oven|is_fre oven|is_kaput oven|is_up oven|li_it oven|on_to oven|run_Ndegrees:some oven|run_cold
oven|shelf_will oven|to_Ndegrees:core over_by| over_by|th over_th|DISH over_th|U over_th|top
over_to_N:core| overcook|it own_a|fat pac_with_your| pac_with| pack_up_and| packag_say_mechanically|
packag_say| packag_say|mechanically pack|up pair|of_THING pal|as_anyth pan_handl_without| pan_is_after|
pan_is|in pan_is|smok pan_i| panel| panel|and pan|THING pan|is_after pan|is_alight parent|
parish|supper park_what| part_i_do| pass_th|salt pass|us pass|us_th past_with_th| past|well
paus|for_a peanut_kill_my| peanut_kill| peanut_kill|my peeler_took| peeler_took|a pencil_in_green|
peopl_ar_join| peopl_ar|start peopl_drop| peopl_drop|out person_will| person_will|b phon_is|ring
pick_th|P pick_up_P| pick_up_a| pick|th_DISH pink_in_any| pink_mor| pink_mor|cook pink_or|
pink|in_any plac|of_th plan_got_in| plan|on_N:few plat_at_th| plat_down|at plat|down_at plung|
plus_hana| plus_hana|who plus|N:few_$ plus|a plus|hana plus|hana_who pok_it|with pok|m_about
pop_to_th| pop_to| pop_to|th pop_up_to| powder_in| powder_it| powder_it|is powder|it powder|it_is
power_in|th power_it_went| power|in power|went preacher_is|go preacher_is|long preacher|is
pregnant_by| pregnant_by|th press|it pretend_i|did pretty_bad_off| pretty|bad pretty|bad_off
priya_can_not| proper_rar_roast| proper|THING_THING proper|THING_on proper|rar proper|rar_roast
pull_this_at| pull_this|at pull|for_medium pull|her pull|her_at pull|tim pull|tim_how pur_vegetarian|
pur_vegetarian|no put_in|her put_it_all| put_it|all put_it|down put_it|out put_that|on put_th|bin
put|a_THING put|a_timer put|on_th put|th_kettl quarter_inch_as| quick_N:some| quick_N:some|near
quickly_what_to| quiet_P| quit|lik quit|lik_to r_DISH_so| r_DISH_with| r_or| r_win_P| r_win|P
r_win|in rang_is| rang_is|at rang_tyr| rang_tyr|is rar_for_th| rar_roast|this rar_that|is rar|P_still
rather_crisp| rather_crisp|it rat|ill rat|ill_b ready|it_is read|N:oven read|is_N:core real|N:oven
real|N:oven_alway real|THING real|THING_$ reason_w_ar| reckon_in| reckon_in|th rehearsal|overran
remind_after| remind_after|Nduration remind_m_how| reminder|till remind|m_about remind|m_in
requir|now requir|now_kindly rest_ar| rest_do|not rest_in_th| rest_of|us rest|th revers_th_last|
revers| rib_roast_scal| rib_roast|Nweight rib|is_in rid_of| right_DISH_ar| right_U_th| right_at|th
right_it|has right_now|at righto_rib| righto_rib|is road_Nduration|earlier road|is_dark roast_DISH|and
roast_THING| roast_cam_outsid| roast_has_left| roast_has|been roast_is|in roast_scal| roast_scal|said
roast_went| roast_went|in roast|DISH_with roast|has_been roast|is_still roast|this roast|this_year
roast|without_roast rob|is rob|is_com rol_ar| rol_ar|in roll_DISH|is roll_ar_still| roll_ar|still
roll_cam| roll_cam|out roll_went|in room_with_a| rub_it_with| rub_it| rub_that| rub_that|out
rub|yet ruin|it run_a|bit run_bout| run_bout|Nduration run_that_by| run_that|by run_th|dog
run_to| run_to|th rung|they_ar run|a_good ruth_can_do| r|at r|work_on s_out|at sack_off_th|
sack_that| sack_that|step sack|off sack|off_th said_N:some_not| said|N:some_not said|it_wrong
said|medium salt_and| salt_do_i| salt_on_th| salt_work| salt_work|th salt|per_kilo salt|them
salt|them_DISH salt|work salt|work_th sam_temperatur_all| sam|as_alway sam|as_befor sam|heat_th
sat_at|tabl sat_them| sat_them|down sat|down_at sat|on_th sat|them sat|them_down sav_a_plat|
say_N:core_U| say_N:core|P say_mechanically| say_mechanically|tenderis say_someth_onc| say_that|again
say|N:oven_U say|mechanically say|mechanically_tenderis scal_for|th scal|for_th scal|said scal|said_Nweight
school|night scrap|th_bon scrap|th_lot scratch|th_green scratch|that_$ screen|by screen|by_th
sear_is|begun sear_is|mad second_it|touch second_shelf|from second|it_break seen| sent|it serv_at|N:few
sesam|allergy_at set_th|tabl set_us|back set| set|an_alarm set|for_degre se|for se|for_smok
se|tripl se|tripl_digit sh_becom| sh_becom|very sh_brought_THING| sh_brought|THING sh_get|to
sh_is|after sh_is|at sh_is|cook sh_is|down sh_is|offer sh_is|on sh_is|sit sh_must| sh_said_sh|
sh_say_to| sh_will|b shak| shall|w sharp_U|th sharp|kindly shav|N:few shav|N:few_off shelf_from_th|
shelf_will| shelf_will|not shelf|from shelf|from_th shelf|will shelf|will_not shellfish_allergy_for|
shellfish_allergy| shellfish_not| shellfish_not|that shellfish_sh_becom| shellfish|allergy_useful
shoot_ther_is| shoot_ther| shoot_ther|is shop_back|by shop_is|U shop|is_shut should_i_buy|
should_it_go| should_i|buy should_ther_b| should|i_get should|it_go shout_when_th| shov|th
show_N:core|in shown|his shown|his_fac show|m_fahrenheit shrimp_so| shrimp_so|keep shy_of_whatever|
sh|brought sh|get sh|has simpl|as simpl|as_that sinc_it_was| sinc_it|was sinc|Nduration_ago
sinc|last sinc|th_summer sit_down|Nduration sit_on|a sit|down_and sit|down_at siz|of_a skim_and_bob|
skip_th|THING skip_th|butter skip_th|truss skip_th|ty sleep_in_th| slic|it_this slid_off_th|
slid_th|roast slip_and_hit| slip_by_Nduration| slip_on_th| slow_then|a slow| smok|it snap_and|
snap_and|it so_N:few_her| so_buzz_m| so_careful_with| so_celsius_and| so_count|m so_everyth|
so_i|can so_i|pok so_lay_N:few| so_non_of| so_non|of so_nowher| so_nowher|to so_plus|N:few
so_shav| so_shav|N:few so_slid| so_tak_it| so_th_henderson| so_w|hav solid_i| solid_i|am som_ar|park
som_exampl_of| som_of|them someth_i|can someth_onc| someth_onc|it someth|is_wrong someth|to_do
som|DISH_roll som|ar_park soon_as_sh| soon|as_th sorry_it_was| sorry_i|meant sorry|N:core_i
sorry|i_am sound_right|to so|fast so|keep_him so|let_us so|lik_th so|text so|text_when so|w_panick
spread| sprig_of_DISH| stab_it|with stab|it stand_rib_with| stand|rib_roast star_at|m start_Nduration|ago
start_at|N:few start_th|sear start_up| start_up|again stay|hom steak_medium| steak_medium|rar
step_my|P step|my stick_som| stick|it_on stick|of still_no| still_n|from still_pal|as still_squeaky|
still_stuck|on still_work|on still|U_froz still|good_for still|pal_as still|swim still|to still|work
ston| stood|at_N:core stop_th|timer stop|th_gam stov_is_up| str_how_do| str_to| str_to|ti straight_into_my|
stretch_it|for stretch| stuck_in|her stuck_in|it stuck_on_th| stuck_to| stuck_to|th supermarket_car|
supermarket_car|park suppos_to|b sur_i|hav sur_w_will| swap_th|cylinder swap|THING swell_up_after|
switch_th_fan| switch|to_celsius swor_by| swor_by|rar system_for| system_for|my system|is_shot
tabl_by|N:few tabl|now_$ tail_Nduration|behind tak_THING_for| tak_it| tak_it|off tak_m|twic
tak_off_N:few| tak|THING_for talk_to_th| talk|to_m teach_m|how teenager|hav teenager|hav_volunteer
tell_every| tell_every|Nduration tell_m| tell_ya| tell|m_again tell|m_na tell|m_to tell|m_what
tell|quickly tell|quickly_what temperatur_in|th temperatur_is|Ndegrees:core temperatur_i|hav
temperatur_th|whol temperatur|is_Ndegrees:core temperatur|is_up tension_noth| tension_noth|is
terrell_break| terrell_break|out terrell|break terrell|break_out text_when_it| th_DISH_a| th_DISH_bless|
th_DISH_do| th_DISH_got| th_DISH_has| th_DISH_pop| th_DISH_went| th_DISH|ar th_DISH|cam th_DISH|myself
th_DISH|split th_N:few_hav| th_N:few|about th_N:few|of th_Ndate_w| th_P_had| th_P_n| th_P_want|
th_P|has th_P|n th_P|sleep th_THING_a| th_THING_do| th_THING_from| th_THING_into| th_THING_last|
th_THING_now| th_THING_or| th_THING_was| th_THING_will| th_THING_w| th_THING|alarm th_and_i|
th_app_is| th_back_of| th_bathroom|scal th_belly_of| th_bird_wer| th_blast|of th_board_onto|
th_board|and th_board|onto th_bottl_o| th_capital| th_capital|of th_cast|iron th_cat_has| th_cat_knock|
th_cat|is th_continental_scal| th_counter_it| th_count|down th_cylinder_oven| th_day_N:few|
th_door_it| th_door_so| th_driv_that| th_end_of| th_family|want th_fat_over| th_ferry|is th_floor|is
th_greas_and| th_heat_i| th_heat| th_heat|and th_high|heat th_hood|was th_hot|handl th_job_in|
th_joint_with| th_lad|ar th_lad|is th_littl_N:few| th_lot|w th_lowest|it th_lowest|was th_middl_get|
th_middl_when| th_needl|is th_number_of| th_on_with| th_order_of| th_outsid_onc| th_oven_from|
th_oven_glov| th_oven_switch| th_oven_that| th_oven_will| th_oven|beep th_pan_is| th_parish|supper
th_plung| th_power_has| th_preacher_is| th_pull|tim th_quick_N:some| th_quick|on th_rest_ar|
th_rest_do| th_road_Nduration| th_roast_went| th_rol_ar| th_roll_cam| th_sear_is| th_shop|
th_shop|had th_supermarket_car| th_teenager|hav th_thick_of| th_th|with th_tip_of| th_tip|of
th_visitor|is th_wean|hav th_wet_til| th_whol_mob| th_whol|way th_wrong|end thank|heaven than|i_told
than|it_is than|m_$ that_again_i| that_bit_is| that_by|m that_can|not that_door|ajar that_faff|
that_faff|about that_is_for| that_is|th that_last|on that_near_enough| that_was_wrong| that|alarm_$
that|alarm_w that|bit_out that|by_m that|faff that|faff_about that|i_look that|is_Nduration
that|is_for that|is_him that|is_when that|is_your that|mak_N:few that|step_off their_N:few|
their_N:few|of their_coat|in their|coat_off them_by| them_got| them_got|her them_i|want them_walk|
them_walk|in them_whol_street| them|down_with them|off_already then|noth theo| ther_a_set|
ther_b|water ther_in_th| ther_is_another| ther_long| ther_will|b ther_with| ther|U ther|a_plan
ther|a_set ther|ar_go ther|is_any ther|is_fir ther|is_smok ther|yet_Nduration thes_fahrenheit_i|
they_ar|bring they_call_and| they_hav_been| they_hav|hit they_keep_ask| they_tell| they|ar_bring
they|ar_hungry they|ar_sit they|ar_starv they|can_not they|hav_got they|keep_ask they|n_Nduration
they|rang thick_of| thick| thick|grey_r think_i_am| think_i|am thinner_and|N:core this_U|stov
this_is|right this_oven|alway this_rat|ill this_th_run| this|bit_$ this|can this|on_is this|th_run
thos|wireless thos|wireless_THING thought_w| thought|w_had thousand| through_th_gam| through|th_whol
throw|in_som th|DISH_P th|DISH_another th|DISH_as th|DISH_b th|DISH_myself th|DISH_nobody th|DISH_off
th|DISH_start th|DISH_w th|DISH_want th|DISH_yet th|N:few_hav th|N:few_rib th|Ndate_w th|Ndegrees:oven
th|Ndegrees:oven_THING th|P_from th|P_up th|THING_a th|THING_alarm th|THING_b th|THING_check
th|THING_for th|THING_from th|THING_gav th|THING_get th|THING_no th|THING_right th|THING_stand
th|THING_w th|bank th|beast_out th|bird th|board_and th|board_at th|board_under th|board_with
th|bon_clean th|bottl_o th|butter_on th|capital th|capital_of th|cat_is th|cellar th|center
th|christen th|clock_Nduration th|cooker_is th|cylinder_oven th|day th|dial_THING th|dial_say
th|dog th|dog_out th|door_now th|door_so th|end th|end_of th|family_want th|fan_set th|fat_end
th|film th|firehous_fundraiser th|first th|fridg_$ th|grill th|guest_cam th|henderson_ar th|hol
th|hous th|ic th|kettl_on th|knob_to th|leg th|light_went th|littl_screen th|loo_$ th|menu_and
th|middl_when th|moment th|music th|nam_of th|number_is th|old_THING th|option th|other_room
th|outsid_is th|oven_befor th|oven_for th|oven_now th|oven_switch th|oven_that th|oven_will
th|oven_yet th|pan_handl th|pan_went th|pantry th|parchment th|parchment_is th|plan_got th|platter_$
th|plot th|queu th|reason_for th|roast_and th|roast_fell th|roast_into th|roll_cam th|roll_i
th|roll_start th|run_order th|salt_$ th|salt_on th|scor th|sear_$ th|sear_a th|shop_did th|sid
th|situation th|siz_of th|stor_$ th|stov_is th|str_is th|strong th|supermarket th|tabl_now
th|telly th|till th|tim_you th|visitor_ar th|way_it th|whol_THING th|window_$ th|wrong_end
th|year tick_off|DISH till_N:few_i| till_w_eat| till|i_say till|w_eat tim_do|i tim_for|a tim_to_chill|
tim_you|say timer|N:few timer|can timer|i_am tim|do_you tim|is tim|is_your tim|it tip_of| tip|of
to_DISH_and| to_DISH| to_N:core|kindly to_N:few_rehearsal| to_N:oven_for| to_N:oven_lik| to_N:oven|put
to_N:oven|sinc to_a|crisp to_b_f| to_b_insid| to_bak_Nduration| to_boil|for to_borrow_a| to_br_my|
to_carv_and| to_coat_a| to_collect|my to_com_out| to_extra| to_extra|tim to_f_god| to_fetch_th|
to_fetch|P to_get|dress to_get|them to_know_th| to_pick_th| to_postpon_th| to_run_th| to_run|to
to_shellfish_not| to_stuff| to_stuff|it to_tak_m| to_tak|this to_th|stor to_th|tabl today|her
today|her_nam tod|now tod|now_cressida together|what told_m_U| told_you|N:core told|you_N:core
tonight_so|N:few took_ag|to took_m|forever took_out|already took|a_U took|ag took|forever took|m_Nduration
took|m_forever too|salty_i top_and|tail topsid_for| topsid_for|Ndate touch_it_if| touch_th|hot
touch|raw touch|raw_THING tough_as|old to|DISH_th to|N:few_rehearsal to|N:oven_THING to|N:oven_as
to|N:oven_i to|N:oven_sinc to|N:oven_th to|N:oven_to to|THING_th to|b_THING to|b_a to|b_careful
to|b_found to|b_her to|b_smok to|boil_for to|buy to|chill to|chill_th to|collect to|collect_th
to|dinner_$ to|fetch_P to|finish_$ to|get_a to|get_up to|help_with to|it_h to|know_if to|m_why
to|mak_a to|nadia to|nadia_sh to|pick_th to|plan_$ to|rest_it to|run_th to|scor to|stuff to|stuff_it
to|tak_this to|tell_you to|th_match to|th_stor to|that_$ to|ti_this track_for| track_or| track|for
train|is_cancell transplant_bear_that| travell| trim|it trip_and_everyth| trip_and|everyth
tripl_on_on| tripl|on tripl|on_on truss_th| truss_th|roast turn_it|over turn_it|to turn_them|off
turn_th|fan turn_up_Nduration| turn_up_so| turn|off_th turn|th_fan turn|that_down twic_as|long
twin| tyr|is tyr|is_burst uncover_by| uncover_by|th under_what|it underneath_for| underneath_for|th
underneath|for underneath|for_th undo_th| undo| up_after_th| up_against| up_against|th up_at|
up_in|Nduration up_next|on up_on_th| up_to_my| up_to| up_to|bath up_to|it up_wher| up_wher|w
upstair|for_Nduration up|and_it up|h up|her_$ up|i up|in_ther up|next_on up|to_N:few up|to_room
us_DISH|out us_a|yell us_by_say| us_tak|THING us_th_last| us_that|is us_th|DISH us_will_b|
useful_to| useful_to|know us|THING_DISH us|back us|by_say us|do_DISH us|down_for us|unit us|unit_f
vegetarian_i| vegetarian_i|forgot vegetarian_sinc| vegetarian|i vegetarian|no_THING vent| very|sick
visitor|is visitor|is_at volunteer|for_th vot|down v|THING_half w_ar_no| w_ar|clean w_ar|down
w_ar|in w_ar|lat w_ar|roll w_ar|sell w_do_about| w_eat_i| w_go_for| w_got|electricity w_go|again
w_hav_fallen| w_hav|all w_hav|it w_hold| w_jump_past| w_lack| w_lack|a w_long| w_long|off w_mov|it
w_must|eat w_pull| w_push|it w_sear| w_sear|it w_set_for| w_still|good w_tak|it w_took| w_turn|
w_wer_go| w_will_do| wait|for_them wak| want_DISH_with| want_a_THING| want_for|N:few want_his_cook|
want_his|N:core want_his|well want_m_to| want_supper_at| want_th_Nduration| want|another_whil
want|her_at want|his_rar want|his_well want|it_well want|longer want|m_to want|to_b warehous_club|
warehous_club|roast was_N:core_Nduration| was_Nduration_ago| was_Nduration|ago was_hang|open
was_hot_it| was_in|th was_my|P was_read_th| was_touch|bon wash_your| was|N:core_then was|hang_open
was|in_th was|left was|left_open was|not_listen was|on_N:core was|that_th watch_th_DISH| watch_th|THING
watch|for_N:core watch|for_Ndegrees:core water_on|his way_my_folk| way_my|folk way_to|get way|to_get
wean|hav wean|hav_to weight|of_DISH well_do_DISH| well_don_my| well_sh| well_they| well|b well|b_eat
well|sh well|they went_Nduration| went_Nduration|ago went_in_and| went_on_th| went|on_th went|whoosh
went|whoosh_burn wer_back_in| wer_go| wer_go|to wer|at wer|back_in wer|drop wer|drop_it wet_til|
we|needl we|needl_is whack_it_up| whack|it what_ar|my what_can_sh| what_com|after what_could_i|
what_could|i what_could|w what_degre| what_did|you what_if_w| what_is_go| what_is|first what_is|on
what_it|claim what_it|should what_order| what_quantity_of| what_reason|w what_should|th what_temperatur_should|
what_will|it what_would|you whatever_you_call| what|DISH_ther what|about_th what|did_th what|els_could
what|is_my what|is_next what|is_to what|it_claim what|it_should what|quantity what|temperatur_should
what|tim_will what|weight_of what|would_happen when_do_w| when_do|th when_i|am when_sh|hit
when_sh|is when_w_get| when_well| when_well|b when_will_it| when_will|it when_will|th when_you_se|
when|Nduration_ar when|Nduration_is when|folk_say when|sh_get when|th_cor when|w_hit when|you_se
wher|w_left wher|wer wher|wer_w which_all_item| whil_got|guest whil_i_find| whil_i_wrangl|
whil_it_is| whil_yet_it| whil|i_nap who_left|that whoa| whol_build| whol_build|is whol_mob_is|
whol_noth_cut| whol_road| whol_road|is whol|street_is whol|way who|can_not who|know who|want
why_do_i| will_THING_salt| will_b_go| will_b|back will_b|gon will_hav_roast| will_hold_dinner|
will_it_b| will_look| will_mind_it| will_not_turn| will_sear_it| will_serv| will_serv|it will_se|to
will_tak_th| will_th|DISH will_want_it| will_you_i| will_you_th| will|THING_do will|b_her will|do_DISH
will|it_b will|it_climb will|not_b will|not_do will|not_hav will|not_heat will|se_to will|th_THING
will|want_it will|you_i win_P_drank| win_P| win_P|drank win|DISH_with win|P_drank with_P_in|
with_a|drink with_bar| with_bar|THING with_medium|well with_th|quick with_your|list without_tell|m
without_th|DISH without|DISH_so without|a_mitt with|DISH_powder with|it_so with|my_work with|no
with|th_bon with|th_first with|them with|this_THING with|you_$ with|you_for wonder_if| wonder_if|THING
work|th_sam would_P_to| would_brown_it| would_go_down| would_go_with| would_lik|P would_lik|it
would_quit| would_quit|lik would_rather_crisp| would_you|suggest would|not_b would|rather would|you_and
wrangl|th wrangl|th_THING wrap_what| wrap_what|is wrap|and wrist_it| wrist_it|is wrist_with_th|
writ|it_down wrong_i| wrong|end wrong|i_hav w|ar_Nduration w|ar_do w|ar_eat w|ar_metric w|ar_no
w|ar_not w|ar_preheat w|ar_say w|becom_N:some w|din_at w|go_for w|hav_N:core w|hav_U w|hav_all
w|hav_hit w|hav_run w|hav_trip w|hav_with w|long w|long_off w|prefer w|shall_eat w|up w|up_to
w|want_to w|will_eat yell|at_Ndegrees:core yell|at_m yes_N:few| yes_w|should yes|N:core yes|yes
yet|Nduration_i yet|it yet|it_is you_N:core| you_ar_a| you_ar|wrong you_can_tell| you_check|
you_do_with| you_do|timer you_for_Nduration| you_lik_that| you_mak_m| you_mak_th| you_mind_drop|
you_on|speaker you_se|tripl you_stretch_it| you_tak_it| you_tak|it you_talk|in you_think_i|
you_told|m you_watch|for your|hors your|list_at you|about_th you|ar_wrong you|dar_$ you|did
you|ever_whisht you|hav_chang you|help_m you|n_not you|pay you|pay_for you|seen you|suggest
you|suggest_$ you|told you|told_m you|want_m you|wer_say yusuf|is yusuf|is_throat y| zip_it|for
zip|it_for |@0.1 |@10.6 |@100.3 |@100.4 |@119 |@123 |@123.0 |@128.0 |@129.1 |@134 |@136 |@137.8
|@14.5 |@146.4 |@147 |@147.1 |@149.0 |@17 |@2 |@24.5 |@28.1 |@34.7 |@44 |@45.4 |@47.3 |@51
|@57.4 |@6.0 |@62 |@62.7 |@71 |@72 |@86.2 |@89 |DISH_DISH_anymor |DISH_DISH_hav |DISH_N:few
|DISH_all_up |DISH_another_Nduration |DISH_ar_burn |DISH_as_well |DISH_boil_for |DISH_do_i
|DISH_go_$ |DISH_in_THING |DISH_in_it |DISH_is_th |DISH_load |DISH_myself |DISH_myself_so |DISH_nobody_lik
|DISH_or_th |DISH_sh_would |DISH_start_now |DISH_ther_will |DISH_too |DISH_will |DISH_with_this
|DISH_yet_$ |N:core_and_Nduration |N:core_call |N:core_call_loud |N:core_so_i |N:core_th_THING
|N:core_when_w |N:few_DISH_U |N:few_P_so |N:few_any |N:few_any_mor |N:few_don'tcha |N:few_don'tcha_know
|N:few_for_dinner |N:few_hav_turn |N:few_high_$ |N:few_it_is |N:few_of_thos |N:few_off_th |N:few_or
|N:few_rather |N:few_rather_than |N:few_rehearsal |N:few_rehearsal_overran |N:few_then_h |N:few_timer_of
|N:few_under_so |N:few_w_will |N:oven_Nduration |N:oven_P |N:oven_alway |N:oven_alway_N:some
|N:oven_and_how |N:oven_anymor |N:oven_anymor_P |N:oven_as |N:oven_for_m |N:oven_how_long |N:oven_sinc_w
|N:oven_th |N:oven_to_hurry |N:some_dinner |N:some_if |N:some_if_that |N:some_lat_with |Nclock_and
|Nclock_for |Nclock_it_stood |Nclock_oven |Nclock_sam |Nclock_sam_as |Ndegrees:oven_in |Ndegrees:oven_in_fahrenheit
|Ndegrees:some_under_what |Nduration_N:few_th |Nduration_P |Nduration_U |Nduration_U_$ |Nduration_approximately
|Nduration_ar_up |Nduration_befor |Nduration_behind_in |Nduration_earlier_$ |Nduration_for_ric
|Nduration_front |Nduration_front_door |Nduration_is_up |Nduration_lat_get |Nduration_let |Nduration_let_us
|Nduration_over |Nduration_they |Nduration_to_check |Nduration_what_can |Nduration_would_you
|Nweight_leg |Nweight_leg_of |Nweight_prim |Nweight_prim_rib |P_Nduration_$ |P_ar_eat |P_ar_set
|P_drank_it |P_eat_Ndate |P_from_practic |P_has_it |P_is_N:some |P_is_oven |P_ottolin |P_ottolin_is
|P_set_th |P_sh_do |P_simpl |P_simpl_as |P_so_plus |P_still_moo |P_text |P_text_Nduration |P_us_it
|THING_N:core_Nduration |THING_Nweight |THING_THING_Nweight |THING_a_leg |THING_alarm_i |THING_all_right
|THING_and_then |THING_can_w |THING_cut_th |THING_do_celsius |THING_floor_after |THING_gav
|THING_gav_m |THING_get |THING_giv_m |THING_half |THING_half_THING |THING_has_fallen |THING_hav
|THING_i_will |THING_is_miss |THING_last_night |THING_left_$ |THING_on_DISH |THING_out_and
|THING_pan_with |THING_right_now |THING_solo |THING_solo_now |THING_stuck |THING_will |U_froz
|U_hold |U_hold_on |U_is_it |U_is_not |U_they |U_tim |a_DISH_THING |a_DISH_and |a_Nclock |a_U_out
|a_balloon |a_bell_when |a_blackout |a_blackout_her |a_boneless_THING |a_break |a_cast |a_cast_iron
|a_crim_$ |a_cut_board |a_dat_so |a_jar_$ |a_kidney |a_kidney_transplant |a_loaf_$ |a_mitt
|a_piec |a_plan_b |a_power |a_revers_sear |a_sauna |a_set |a_set_for |a_shout_at |a_shout_in
|a_shout_when |a_sid_$ |a_smok |a_temperatur |a_tenner |a_timer_of |a_we_whil |a_whol_ribey
|about_a |act_weird |adult_$ |adult_$_$ |after_a_tumbl |after_com |after_go |ago_N:core_$ |ago_ther
|ajar_all |ajar_all_th |alarm_for_Nduration |alarm_i_turn |alarm_w |alarm_w_set |all_THING
|all_behind |all_i_hav |all_off |all_off_Nduration |all_right |all_th_butter |allergy_at |allergy_at_th
|allergy_useful |allergy_useful_to |along_by |along_by_N:some |alway_on |alway_say_N:few |am_N:some
|am_THING_$ |am_THING_for |am_a_good |am_about |am_about_to |am_after |am_at_th |am_away |am_away_to
|am_bin |am_bin_th |am_bleed |am_count |am_deaf_on |am_drown_her |am_go_to |am_i_pull |am_look
|am_miss |am_not_go |am_off_to |am_on_th |am_overwhelm |am_pop |am_put_th |am_run_lat |am_skip
|am_sorry_to |am_talk |an_THING_out |and_h_can |and_it_was |and_roll_N:few |and_tail_$ |and_they_ar
|and_w_want |another_whil |any_U_still |anyway_$ |anyway_$_$ |anywher_in_th |ar_N:few_of |ar_N:some_lat
|ar_Nduration |ar_bang_on |ar_bring |ar_do_th |ar_expect |ar_go_in |ar_golden |ar_her_U |ar_her_w
|ar_metric |ar_metric_peopl |ar_miss |ar_no |ar_no_longer |ar_not_hav |ar_not_ready |ar_not_warm
|ar_on_and |ar_peel_and |ar_preheat |ar_roll |ar_say_grac |ar_set |ar_set_th |ar_still_crunchy
|ar_ther |ar_up_and |arm_on |arm_on_th |as_alway |as_befor |as_it |as_it_should |as_well_so
|asleep_in_th |at_N:core_fan |at_N:core_up |at_N:oven_THING |at_N:oven_anymor |at_N:oven_instead
|at_N:oven_now |at_Ngas-mark_and |at_at |at_insid |at_it_now |at_m_in |at_th_dog |availabl_in
|availabl_in_our |away |b_a_thick |b_befor |b_befor_it |b_for_th |b_found |b_her_for |b_insid_when
|b_mak |b_on_$ |b_out_of |b_right |b_right_it |b_set |b_set_to |b_smok |back_by_N:some |back_has
|back_has_gon |back_in_business |bad_it_is |bad_off |bad_off_th |bang_and |bang_and_then |banjax_$
|banjax_$_$ |bea |beast_out |becom_N:some_i |been_cut |been_cut_off |been_start |been_vot |been_vot_down
|begin_with |begun_it_smell |behind_a_tractor |behind_lik |behind_lik_th |behind_or |believ_it_$
|bell_at_N:core |belly_com |belly_com_U |bin_them |bit_Nduration |bit_lat |bit_later |bit_out
|bit_raw |bit_that |blast_at_either |board_and |board_at |board_under |boat_$ |boat_$_$ |bon_clean
|bon_i_think |bon_rib_roast |bon_roast_Nweight |bonfir_night |bonfir_night_in |book |borrow
|bother_sear |bottl_o |br_my |break_out_from |bring_his |bring_his_P |brought_a_dat |brown_and
|budg |burn_myself_$ |burner_N:few |butter_in_th |butter_left |buy_$ |buy_$_$ |buy_DISH |by_a
|by_m_again |by_rar |by_say |by_say_yesterday |c_so |call_out_N:core |call_them_i |can_do_$
|can_not_talk |cancell_so_N:few |cancell_that |cancell_that_is |capital_of |carry_on_without
|carv_it_straight |carver |cat_is |celsius_Ndegrees:core_$ |centr_N:core |chair_and |chas_my
|chas_my_tail |check_th_DISH |chemo_$ |chemo_$_$ |chew_a |chill_th |chop_and |church_$ |church_$_$
|coeliac_my |coeliac_my_P |cold_by_Ndegrees:some |collaps_$ |collaps_$_$ |collaps_in |collect
|collect_th |com_Nduration_later |com_after_all |com_after_this |com_let |com_let_us |com_out_THING
|com_sh |com_w_hav |cook_$ |cook_$_$ |cook_at |cook_medium |cook_medium_well |cop_$ |cop_$_$
|corner_$ |corner_$_$ |could_not_hav |countdown_$ |countdown_$_$ |country |cover_in_THING |cream_DISH
|cream_is_not |cut_on |cylinder_oven |cylinder_oven_is |dangerous_to |dat_so |degre_in |degre_is
|delay_minimum_$ |dial_THING_show |digit_N:core |din_at_N:few |dinner_back_by |dishwasher_$
|dishwasher_$_$ |do_a_roast |do_for_m |do_i_tell |do_i_wash |do_it_by |do_it_tak |do_leftover
|do_medium |do_not_P |do_not_they |do_right |do_that_$ |do_w_eat |do_w_n |dog_out |don_no_wait
|don_th_butter |don_your |down_all_N:few |down_now_$ |down_with_th |dress_giv |dress_giv_m
|drop_every |drop_every_tim |du_through |du_through_th |duty_and |earlier_than_w |early_$ |early_$_$
|early_so_shav |eas_th |eas_th_oven |eat_Nduration_earlier |eat_dairy_$ |eat_without |either_end
|either_end_keep |electricity_back |electricity_back_after |els_can |els_could |enamel_N:few
|enough_N:core |entry_by |entry_by_mistak |ever_had |ever_whisht |ever_whisht_$ |expect_N:some
|expect_N:some_for |f_th_chook |f_them |fall_apart |family_want |family_want_to |fan_assist
|far_along |fat_end |fat_on_my |feet_ar |fell_on_my |fetch_P_$ |few_DISH |film_$ |film_$_$
|fin_$ |fin_$_$ |find_a |find_a_THING |finger_it_is |finger_on_th |finish_scrap |finish_scrap_thos
|fir_tell |fir_tell_quickly |firehous_fundraiser |first_this |first_this_tim |flam_lid |flam_lid_on
|flash |flicker_$ |flicker_$_$ |folk |folk_say |folk_will |folk_will_not |foot_$ |foot_$_$
|for_N:core_in |for_N:few_rather |for_N:few_surpris |for_Nclock |for_Ndegrees:core_$ |for_Nduration_U
|for_Nduration_now |for_Nduration_walk |for_P_and |for_a_few |for_a_we |for_bath |for_bath_Nduration
|for_degre |for_degre_c |for_pay |for_pay_customer |for_smok_in |for_th_drip |for_th_heat |forerib_N:few_bon
|forever_U |forever_U_th |forward_N:some |frail |fre_for |fre_from |fresh |fridg_at_Ndegrees:some
|fridg_i |from_th_stor |from_th_supermarket |full_i |get_N:core |get_from_th |get_past |get_up_to
|giv_it_Nduration |go_abov |go_abov_N:core |go_in_ther |go_it_with |go_long_Nduration |go_near_shellfish
|go_to_hav |go_to_li |go_up_in |gon_blank |gon_cold |gon_dark |gon_off_$ |gon_to_N:core |good_N:some
|got_burn_pretty |got_th_crud |got_to_b |grandson_is |grocery |ground_so |ground_so_no |guest_to_N:few
|guest_to_greet |guy_$ |guy_$_$ |h_cut |h_pour |h_pour_th |had_it_is |hana_who |hana_who_is
|hand_m |hand_m_a |handl_my |handl_my_palm |hang_open_and |hang_open_th |happen_Nduration |happen_Nduration_sooner
|happen_at_onc |has_been_THING |has_been_brais |has_been_open |has_blown |has_com_down |has_di_on
|has_gon_i |has_gon_over |has_got_N:few |has_had_th |has_reach_N:core |has_touch_N:core |haul_th_beast
|hav_N:few_mouth |hav_a_delay |hav_an |hav_bung |hav_bung_th |hav_burnt_my |hav_caught_they
|hav_drop |hav_fallen_Nduration |hav_gon_to |hav_got_a |hav_got_it |hav_got_to |hav_kept_for
|hav_knock |hav_knock_it |hav_lost_Nduration |hav_mercy |hav_no_notion |hav_not_any |hav_not_kept
|hav_not_th |hav_noth_lik |hav_overshot |hav_overshot_it |hav_press |hav_press_$ |hav_pull
|hav_pull_it |hav_reach_$ |hav_remov_th |hav_rung_they |hav_salt |hav_salt_th |hav_seen |hav_set
|hav_slic_my |hav_slip |hav_start_th |hav_taken_th |hav_to_fetch |hav_to_get |hav_trip |hav_trip_someth
|hav_with |hav_with_it |head_upstair |head_upstair_to |hear_$ |hear_$_$ |heat_at_all |heat_to_N:oven
|heaven |help_m_and |help_now_$ |help_with_th |helper_today |henderson_ar |her_P_so |her_all
|her_and_still |her_chair_and |her_nam_is |her_now_and |her_so_that |her_tablet |her_till_N:few
|her_to_help |high_do |high_i |him_in_th |his_fac_so |hit_N:core_and |hit_N:core_lik |hit_roadwork
|hiv_from |hob_$ |hob_$_$ |hop_nobody |hop_nobody_is |hot_THING_with |hous_and |hungry_peopl
|i_THING |i_THING_th |i_allow |i_am_call |i_am_se |i_am_still |i_behind_$ |i_can_get |i_fetch
|i_gav_you |i_hav_mad |i_hav_start |i_look_th |i_on |i_slic_$ |i_us_DISH |i_wiggl |i_wiggl_it
|i_will_tell |idea_when |idea_when_well |if_nobody |ill |ill_b_Nduration |in_N:some_i |in_Nduration_pet
|in_any_circumstanc |in_for_a |in_law_sh |in_law_tak |in_my_freezer |in_sinc_Nclock |in_th_small
|in_th_steamer |in_traffic_Nduration |in_yet_$ |insid |insid_right |insid_right_now |into_my
|into_th_hot |invit_themselv_$ |iron_THING |is_N:core_not |is_N:few_extra |is_N:few_fewer |is_N:few_less
|is_N:oven_and |is_Ndate_lunch |is_Ndegrees:some_hotter |is_Nweight_and |is_THING_as |is_U_com
|is_a_bon |is_a_good |is_after_go |is_alight_onc |is_alway_N:few |is_another_N:few |is_at_my
|is_bleed_a |is_blister_carry |is_boneless_Nweight |is_burst |is_burst_figur |is_com_out |is_dark_and
|is_don_it |is_down_so |is_driv_m |is_fir |is_fir_in |is_for_N:few |is_happen_properly |is_hav_a
|is_help_with |is_her_i |is_her_till |is_him |is_hot_th |is_in_beer |is_in_metric |is_insist
|is_insist_on |is_it_$ |is_jump_all |is_kaput_it |is_knock_it |is_lik_th |is_m_now |is_mad_it
|is_medium_well |is_miss_a |is_no_THING |is_no_win |is_not_N:few |is_on_and |is_on_chemo |is_out_THING
|is_outta |is_own_$ |is_pass_out |is_pink_$ |is_plan_for |is_point_at |is_pur_vegetarian |is_rest_$
|is_rock_up |is_roll_and |is_scream_$ |is_sh_look |is_show_m |is_shut_$ |is_smell_incredibl
|is_smok_$ |is_smok_everywher |is_smok_someth |is_start_THING |is_stuck_at |is_stuck_on |is_stuck_to
|is_tak_m |is_th_doorbell |is_th_scor |is_throat_swell |is_ti_$ |is_touch_N:core |is_turn_th
|is_up_$ |is_urgent |is_urgent_$ |is_weak_$ |is_with_th |is_without |is_without_light |it_a_roast
|it_alon_for |it_another_Nduration |it_b_when |it_break |it_break_N:core |it_down_a |it_finish
|it_first_and |it_for_a |it_forward_N:some |it_get_to |it_has_becom |it_if_it |it_in_kilo |it_is_bedlam
|it_is_fall |it_off_with |it_on_a |it_or_what |it_rest_$ |it_rest_for |it_say_THING |it_still
|it_straight_away |it_then_$ |it_to_Ngas-mark |it_to_medium |it_touch_Ndegrees:core |it_up_again
|it_up_right |jar_of |joint_slid |keep_ask |keep_ask_m |keep_hear |keep_him_off |keep_his |kept_for
|kept_for_DISH |keto_do |keto_do_not |kick_in_wer |kip_$ |kip_$_$ |knob_to |know_at |know_at_N:core
|know_how_to |land_even |land_even_th |land_on_th |last_look |last_on_$ |lat_put |lat_put_th
|lat_so_they |lat_so_w |later_th_P |later_than_w |law_ar |law_has |law_is |law_sh |law_want
|left_U |left_on_my |left_open |lick_th_spoon |light_went |lik_P_us |lik_forget |lik_forget_th
|lik_his_medium |lik_th_th |lik_that_$ |lik_well |list_at |list_at_all |littl_screen |liv_room_$
|long_as_it |long_befor_i |long_do_it |long_do_leftover |long_hav_w |long_is_remain |long_off
|long_off_th |long_till_dinner |long_till_i |long_w |long_wind |longer_do |longer_on |longer_on_th
|look_lik_w |lost_th_THING |ly_$ |ly_$_$ |m_Nduration_behind |m_a_bell |m_a_holler |m_after_Nduration
|m_back_from |m_don |m_forever |m_forever_U |m_how_th |m_in_N:few |m_know_at |m_know_in |m_know_onc
|m_na_$ |m_option |m_som_exampl |m_th_second |m_what_you |mad_i |mad_it_to |magic_number_for
|mak_do |mak_do_with |mak_it_a |many_degre_is |many_gram_of |many_minut |many_mor |many_of
|many_slic |many_spoon |marri |mean_to |meant |meant_th |mechanically |mechanically_tenderis
|menu_and |middl_that_is |middl_when |mil_$ |mil_$_$ |mind_a |mind_a_DISH |miss_a |miss_a_fat
|miss_for_this |miss_th_THING |moment_$ |moment_$_$ |month_pregnant |mor_com |mor_no_less |mor_peopl
|mor_plac |mor_plac_$ |mor_your |much_THING_$ |much_THING_for |much_butter_for |much_longer_$
|much_mor |much_of_th |much_water |much_water_for |must_DISH |must_b_ly |my_P_in |my_P_simpl
|my_back_is |my_finger_off |my_german |my_german_visitor |my_next_job |my_wrist |my_wrist_it
|myself_so |myself_so_drop |n_N:few |n_a |n_from_th |n_not_call |nadia_sh |nadia_sh_is |nam_is_U
|near_sorry |nearer |needl_is_point |never_got_around |new_on_$ |next_step_i |nic_U |night_i
|night_in |night_in_her |no_i_am |no_notion |no_notion_of |not_b_Nduration |not_b_bother |not_b_by
|not_b_her |not_b_strain |not_believ_this |not_bother_ty |not_breath_$ |not_call |not_catch_that
|not_com_$ |not_com_after |not_count_$ |not_do_dairy |not_do_fahrenheit |not_do_roll |not_eat_THING
|not_eat_nut |not_even_look |not_even_start |not_feel_lik |not_find_th |not_fit_both |not_get_m
|not_hav_th |not_know_th |not_let_it |not_listen |not_mind_$ |not_mind_a |not_on_yet |not_past_N:core
|not_pull_it |not_put_it |not_put_th |not_support |not_talk_to |not_ther_in |not_ti_it |not_trust_this
|not_understand_celsius |notion |now_Ndegrees:core |now_THING_$ |now_cressida |now_cressida_had
|now_get |now_kindly |now_kindly_remov |nut_again |nut_again_$ |of_DISH_th |of_THING_on |of_beer
|of_butter_by |of_gristl |of_heat |of_heat_at |of_my_knuckl |of_plan |of_sirloin_Nweight |of_us_THING
|of_us_will |off_Nduration_$ |off_again_$ |off_in_N:few |off_it_N:few |off_my_list |off_no_flam
|off_th |off_th_board |off_th_dinner |offer_to_do |on_N:core_has |on_Ngas-mark_$ |on_a |on_a_THING
|on_a_bit |on_a_miss |on_got |on_i_was |on_sinc_N:few |on_th_greas |on_th_platter |on_th_shelf
|on_tim_m |on_to_N:oven |on_with_whil |onc |onlin_tonight |onto_th_lino |open_and_it |open_for_Nduration
|or_ti |or_ti_anyth |order_onlin |order_onlin_tonight |other_room |other_th |our_hous |our_market
|out_N:oven |out_U_of |out_befor_it |out_from_shrimp |out_i_do |out_oven_is |out_sinc_N:few
|out_th_sear |out_way |out_way_too |outsid_is_burn |oven_N:oven_$ |oven_THING_hang |oven_THING_w
|oven_back_on |oven_door_U |oven_for_Nduration |oven_on_N:some |oven_run_cold |oven_switch
|oven_switch_itself |oven_that_is |oven_yet |over_a_THING |over_a_rim |overran_$ |overran_$_$
|pal |pal_as_anyth |parchment_is_ignit |park_at |park_at_th |park_th |park_th_car |park_what
|past_N:core_without |past_sav |past_sav_$ |peak |peak_at |peak_at_N:core |per_THING |per_kilo
|per_kilo_$ |per_person |perch_it |perch_it_on |person_will |pi_$ |pi_$_$ |pick_th_DISH |piec_of_sirloin
|pink_not |pink_will_it |pink_would |pitch_in_from |plac_of_THING |plac_of_butter |plan_got
|plan_got_in |platter_$ |platter_$_$ |plot |plus_th |pok_it_in |pop_th |powder_$ |powder_$_$
|press_it |prov_Nduration |put_THING_in |put_already |put_already_th |put_th_DISH |put_them
|quantity |quicker |quickly_what |quickly_what_to |r_work_on |rang_h_will |rar_lik_practically
|rar_roast_this |rar_so_rar |raw_insid_$ |read_Ndegrees:core |ready |reason_for |reminder_till
|requir_now |requir_now_kindly |rest_will |rib_no_sirloin |right_U |right_U_th |right_about
|right_about_now |right_or_should |risen_to |risen_to_N:core |roar |roar_when |roast_DISH_n
|roast_DISH_too |roast_Nweight_no |roast_cam_outsid |roast_fell |roast_fell_on |roast_from
|roast_into |roast_into_th |roast_is_season |roast_without_roast |roll_DISH_is |roll_cam |roll_cam_out
|roll_i |roll_i_hav |roll_start |rop_$ |rop_$_$ |rubbish_it |run_at_N:oven |run_bout |run_bout_Nduration
|run_hot_Ndegrees:some |run_th_dog |run_th_light |saf_to_eat |said_N:some_not |said_to |said_wrong
|salt_go_on |salt_it_$ |salty_i |sat_$ |sat_$_$ |sat_down_all |sauna |sav |say_N:some_in |say_i
|scal_for |screen_$ |screen_$_$ |se_for |se_for_smok |sear_$ |sear_$_$ |seat |seawater_$ |seawater_$_$
|sec_ago_$ |seem |seen_my |seen_th |sell_plat_at |sh_get_to |sh_would |sh_would_never |shall_eat
|shall_eat_at |shap_N:few |shap_N:few_roll |sharp_P |shelf_will |shelf_will_not |shift |shop_did
|shop_did_not |short_$ |short_$_$ |should_b_ready |should_hav_DISH |shov_in_alongsid |shower_$
|shower_$_$ |shy_of_whatever |sick |sid_THING |sign_up_for |simmer_$ |simmer_$_$ |sinc_it_was
|sinc_th |sinc_w_wer |siz |slic_it_this |slow_on |slow_on_th |slow_today |smok_hot |so_non
|so_now |so_watch |som_choic |som_point |som_point_$ |someth |someth_i_can |someth_is_wrong
|sorry_it |sound_right_for |spell_$ |spell_$_$ |splash_all |splash_all_over |split_th |spoon_th
|stand_rib_with |start_myself_$ |sticker_$ |sticker_$_$ |still_DISH_in |still_at_th |still_crunchy_not
|still_in |stood_in |stood_in_th |stop_it |stor_$ |stor_$_$ |str_is_snap |street_is |street_is_dark
|stuck_to |stuck_to_th |suggest_$ |suggest_$_$ |supper_Nduration_later |suppos_to_tak |sweater
|swell_up_if |swim_$ |swim_$_$ |system_is_shot |tail_Nduration |tak_Nduration |tak_her_rar
|tak_m |taken_their |taken_their_seat |tell_$ |tell_$_$ |tell_m_$ |tell_m_how |temperatur_should_th
|tent_and |text_when |text_when_it |th_DISH_as |th_DISH_b |th_DISH_bubbl |th_DISH_caught |th_DISH_miracl
|th_DISH_when |th_N:few_befor |th_N:few_hav |th_P_from |th_U_bit |th_ars |th_bairn |th_bast_step
|th_belly |th_belly_of |th_board_$ |th_board_at |th_board_now |th_board_onto |th_build_i |th_choic_again
|th_church_hall |th_clock_$ |th_cold_$ |th_cooker_$ |th_day_go |th_day_i |th_dinner_on |th_dog
|th_dog_back |th_door_N:few |th_door_befor |th_drip |th_driveway_$ |th_end_and |th_end_th |th_fan_on
|th_foggiest |th_fus |th_fus_and |th_gam |th_gam_plan |th_gam_start |th_gam_timer |th_homeless
|th_homeless_shelter |th_hors |th_hors_for |th_hour |th_hous_at |th_icebox |th_instant-read_$
|th_job_$ |th_kerry |th_kerry_crowd |th_knob_to |th_lad_is |th_last_clear |th_light_went |th_list_nobody
|th_loo_$ |th_menu_and |th_menu_tonight |th_next_on |th_nut_$ |th_oven_with |th_phon_to |th_plung
|th_prep |th_roast_hit |th_screen_how |th_sens |th_shower_giv |th_station_$ |th_th_in |th_timer_off
|th_top_of |th_warm_drawer |th_whol_stick |th_wrong_THING |th_wrong_number |th_wrong_th |than_plan_$
|that_P_$ |that_alarm_w |that_door_ajar |that_far_behind |that_go_to |that_how |that_is_$ |that_is_Nduration
|that_last |that_ok |that_on_a |them_DISH_twic |them_down_$ |them_down_with |them_it |them_so
|them_th |them_turn |theo_plus |theo_plus_theo |ther_Nduration_ago |ther_any_sav |ther_b_water
|ther_is_pink |they_ar_$ |thick_a |thick_a_grey |think_i_will |think_my_THING |thinner |this_hous_$
|this_minut |thought_w |thought_w_had |through_so |thumb_is |ti_it_$ |tick_Nduration |til |til_and
|till_i_hav |tim_how_com |tim_is_it |tim_will |tim_would_you |timer_on_th |to_DISH_it |to_DISH_th
|to_N:core_kindly |to_THING_$ |to_a_block |to_b_Nduration |to_b_at |to_b_f |to_b_in |to_b_ready
|to_bak |to_bak_Nduration |to_bother_with |to_buy_DISH |to_collect_my |to_do_$ |to_do_th |to_get_in
|to_heat_put |to_know_$ |to_m_in |to_mak_it |to_pick_th |to_say_it |to_stuff |to_stuff_it |to_tak_th
|to_temperatur_$ |to_th_stor |to_that_phon |to_trim |to_trim_it |to_truss |to_turn_th |to_whoever
|told_th |told_you_about |tong_$ |tong_$_$ |too_much_$ |too_much_i |took_m_Nduration |topsid_for
|topsid_for_Ndate |touch_THING |touch_bon |track_of |trim_down |trim_down_to |tripl_digit |tripl_digit_N:core
|truss_and |truss_it |trust_th |trust_th_THING |trust_that |trust_this |trust_this_THING |tumbl
|turn_up_so |un_don |under_N:core_$ |under_so |under_so_tak |underdon_$ |underdon_$_$ |understand_$
|understand_$_$ |understand_celsius |unit_f_and |up_N:some_so |up_Nduration_$ |up_a_Nweight
|up_from |up_h |up_in_flam |up_on_a |up_wher_w |urgent |urgent_$ |urgent_$_$ |us_DISH_that
|us_P |us_U |us_a_bell |us_do_th |us_down_for |us_mak |us_not |us_not_bother |us_skip |us_start_over
|us_tak |us_tak_THING |us_up_all |v_THING_to |vegan_com |very_THING |very_THING_piec |vet |volunteer_for_th
|w_at_$ |w_hav_got |w_hit_N:core |w_left_off |w_miss_out |w_mov_it |w_nearly |w_nearly_ther
|w_panick |w_panick_and |w_sell_to |w_skip_this |w_still_on |w_up |w_up_to |want_DISH_with
|want_P |want_P_eat |want_a_look |want_another_few |want_degre |want_degre_c |want_do |want_for_N:few
|want_her_at |want_his_cook |want_it_Nduration |want_thos |want_to_eat |want_to_go |warm_and
|warm_th_plat |was_hot_it |was_in_th |was_look_at |was_touch |was_touch_bon |water_so |water_so_it
|we_whil |went_cold_$ |went_straight |went_straight_into |wer_say |wer_w |what_did_you |what_sh
|whatever_you |when_th_roast |when_w_get |which_on |whil_i_hoover |whil_i_wrangl |whil_they_ar
|whil_yet |whol_plan |whol_way_$ |whol_way_through |whoosh |whoosh_burn |whoosh_burn_insid
|wiggl_it |wiggl_it_i |will |will_b_upstair |will_do_DISH |will_not_com |will_not_wait |will_pass_on
|will_sear_it |will_stop |will_tak_th |win_go |win_go_in |wireless_THING |wireless_THING_is
|with_DISH_i |with_DISH_powder |with_a_peeler |with_her_so |with_know |with_medium_well |with_pink
|with_pink_THING |with_th_truss |with_us_$ |with_whil |without_DISH_$ |work_and |work_th |work_th_sam
|would_happen |would_kill |would_lik_a |would_lik_it |would_n |would_n_a |would_rather_crisp
|would_you_put |wrist_$ |wrist_$_$ |wrong_end |yank |year_old_at |yell_at_N:core |yet_Nduration
|yet_i_hav |you_dar_$ |you_f |you_for_Nduration |you_say_i |you_se_tripl |you_set_it |you_spar
|you_spar_m |you_when_it |your |your_lot
-8 @101.5| @105.3| @114.4| @117.2| @125.3| @128.4| @136.5| @137.6| @146.0| @17.2| @18.5| @18|
@23.1| @24.2| @30.0| @31.3| @4.15| @4.16| @40| @42.6| @43| @46.5| @51.4| @59.9| @61.3| @68.4|
@69.2| @71.0| @71.5| @99.3| DISH_DISH_as| DISH_DISH_how| DISH_DISH_to| DISH_DISH|as DISH_DISH|no
DISH_THING_say| DISH_U_for| DISH_all_up| DISH_and_took| DISH_and| DISH_ar|away DISH_ar|cremat
DISH_ar|go DISH_can|stay DISH_cook|so DISH_cream_as| DISH_for|N:few DISH_from|N:few DISH_from|Nclock
DISH_from|m DISH_has|com DISH_has|split DISH_hit_th| DISH_in_it| DISH_in|N:few DISH_is_finish|
DISH_is_for| DISH_is_nowher| DISH_is|lumpy DISH_is|split DISH_is|stand DISH_is|under DISH_i|mean
DISH_i|will DISH_knock| DISH_lik_in| DISH_must|b DISH_no_i| DISH_nobody|is DISH_not| DISH_not|even
DISH_powder_in| DISH_ready_they| DISH_sh_would| DISH_sh|is DISH_sh|would DISH_ther|will DISH_th|
DISH_th|roast DISH_timer_it| DISH_whil_i| DISH_whil|i DISH_w|ar DISH|alongsid_$ DISH|ar_up
DISH|as_w DISH|butter_on DISH|cream_as DISH|cream_w DISH|go_at DISH|is_DISH DISH|it_is DISH|no
DISH|of_them DISH|still DISH|to_nadia DISH|tonight_$ DISH|too DISH|trim DISH|with N:core_accord_to|
N:core_and_w| N:core_and|ris N:core_as|w N:core_by|N:few N:core_call|loud N:core_for_Nduration|
N:core_how|long N:core_how|much N:core_i_can| N:core_it|has N:core_i|want N:core_rather| N:core_rather|than
N:core_roar_at| N:core_sam| N:core_sam|as N:core_ther_is| N:core_up_from| N:core_up| N:core_up|from
N:core_well|ill N:core_when_you| N:core_whil_it| N:core|N:few N:core|N:oven N:core|U_i N:core|and_do
N:core|i_misread N:core|it N:core|kindly N:core|kindly_inform N:core|someth N:core|tell_m N:core|what_do
N:few_P_will| N:few_U|and N:few_and_how| N:few_and|how N:few_and|that N:few_and|ther N:few_befor|
N:few_bon|not N:few_bum_on| N:few_confirm| N:few_confirm|com N:few_hav|shown N:few_hav|turn
N:few_instead_of| N:few_is_when| N:few_i|think N:few_keep_th| N:few_mor_than| N:few_mor|ar
N:few_mor|than N:few_nam|off N:few_niec_volunteer| N:few_nobody|is N:few_of|us N:few_peopl|how
N:few_show| N:few_show|up N:few_so_keep| N:few_so_w| N:few_so|w N:few_through_th| N:few_till|
N:few_tim_would| N:few_what_is| N:few_w|will N:few|U_it N:few|and_a N:few|befor_medium N:few|bon_it
N:few|carver N:few|extra_for N:few|extra_peopl N:few|from_bottom N:few|grown N:few|guest_is
N:few|less_than N:few|low N:few|mat_unannounc N:few|mouth_to N:few|other_$ N:few|peopl_drop
N:few|person_$ N:few|rib_$ N:few|rib_on N:few|sorry N:few|through N:few|through_th N:few|wher
N:oven_U| N:oven_and_it| N:oven_and|i N:oven_anymor| N:oven_anymor|P N:oven_as| N:oven_feet|
N:oven_i|hav N:oven_now|th N:oven_sharp| N:oven_sinc_w| N:oven_sinc|w N:oven_that|is N:oven_to_hurry|
N:oven_wait_for| N:oven|fan N:oven|not N:some_N:few| N:some_after|Nduration N:some_hot_turn|
N:some_if_that| N:some_if| N:some_if|that N:some_lat_on| N:some_lat_with| N:some_ml| N:some_ml|of
N:some_near_th| N:some_past_with| N:some|hot_turn N:some|lat_on N:some|past_with Nclock_DISH|
Nclock_and_it| Nclock_for|th Nclock_i|am Nclock_sam| Nclock_sam|as Nclock_sh| Nclock_wak| Nclock_wak|m
Nclock_what|do Nclock_w|ar Nclock|is Nclock|let_us Nclock|sh Ndate_Nclock_sam| Ndate_dinner|at
Ndegrees:core_at| Ndegrees:core_at|th Ndegrees:core_in_th| Ndegrees:core_let| Ndegrees:core_let|m
Ndegrees:core_on_th| Ndegrees:few_less_than| Ndegrees:few|after Ndegrees:few|after_i Ndegrees:few|cool_$
Ndegrees:few|high_$ Ndegrees:oven|in_fahrenheit Ndegrees:some_shy| Ndegrees:some_shy|of Ndegrees:some|hotter
Ndegrees:some|hotter_than Ndegrees:some|under_$ Nduration_DISH_is| Nduration_ago|N:core Nduration_ago|whil
Nduration_and_w| Nduration_and|is Nduration_and|tell Nduration_at|least Nduration_how|long
Nduration_it_was| Nduration_i|would Nduration_left| Nduration_off_th| Nduration_on|that Nduration_to|th
Nduration_would|ya Nduration|ago_forgot Nduration|ago_what Nduration|ago_whil Nduration|and_i
Nduration|befor_$ Nduration|down_$ Nduration|i_was Nduration|lat_it Nduration|later_do Nduration|now
Nduration|timer_can Nduration|to_check Nduration|would Nduration|yes Nweight_DISH| Nweight_and|th
Nweight_stand_rib| Nweight|of_rib P_ar|eat P_chang_th| P_com_with| P_com|with P_eat_by| P_fay|
P_fay|is P_from|practic P_has|gon P_haul_it| P_is_arm| P_is|chok P_is|collaps P_is|go P_is|lot
P_is|peel P_is|shown P_i|will P_jo_will| P_jud_can| P_nor| P_nor|money P_ottolin_is| P_ray|
P_sh_can| P_sh_do| P_simpl| P_simpl|as P_slip|on P_so_N:few| P_up| P_vot| P_want|a P_will|carv
P|P P|ar P|ar_in P|eat_Ndate P|eat_by P|els_$ P|haul P|haul_it P|insist_$ P|insist_on P|is_DISH
P|is_arm P|is_her P|is_oven P|lik P|mak_chemo P|say P|swor P|swor_by P|up_Nduration P|w_ar
P|want_his P|will_carv THING_N:core_i| THING_N:few| THING_N:few|and THING_Ndate|for THING_a_leg|
THING_along_by| THING_and|THING THING_and|all THING_a|leg THING_blu| THING_blu|enamel THING_by|th
THING_do|metric THING_drop_Ndegrees:few| THING_drop| THING_drop|Ndegrees:few THING_fell_on|
THING_first_P| THING_hand|m THING_hang| THING_hang|in THING_h|is THING_into|th THING_is_lik|
THING_is|beep THING_is|caught THING_is|giv THING_is|jump THING_is|on THING_is|split THING_is|stuck
THING_it|say THING_must| THING_must|b THING_no| THING_no|signal THING_number_say| THING_out_by|
THING_out_of| THING_over_th| THING_pan_THING| THING_rather_than| THING_say|in THING_tell_m|
THING_to|finish THING_up| THING_up|U THING_went|straight THING_what|is THING_what|now THING_when_it|
THING_without_grill| THING_with|THING THING_with|th THING_would_b| THING_yes_or| THING|Nclock
THING|Nduration THING|blu THING|blu_enamel THING|cast THING|cast_iron THING|com THING|duty_$
THING|fell_on THING|get_to THING|giv THING|giv_m THING|in_th THING|into THING|into_th THING|is_hav
THING|is_over THING|of_roast THING|off_on THING|over_$ THING|sinc_Nduration THING|str THING|this
THING|up_U THING|was_touch THING|will_you THING|with U_P_can| U_can|not U_i_should| U_in|th
U_is_off| U_is|coeliac U_is|her U_keep_drop| U_of_a| U_off| U_out_of| U_swell_up| U_that_green|
U_th|gam U_want|his U_with_th| U_w|ar U|THING_is U|can U|degre U|degre_in U|how U|is_do U|my
U|of_th U|th_oven ^_DISH_DISH| ^_DISH_hit| ^_DISH_want| ^_DISH_went| ^_DISH|boat ^_DISH|i ^_N:few_hav|
^_N:few_of| ^_N:few_person| ^_N:few_through| ^_N:few_with| ^_N:oven_on| ^_Nclock_on| ^_Nclock|w
^_Ndegrees:core_in| ^_Nduration|ago ^_Nduration|countdown ^_Nweight_with| ^_P_ray| ^_P_wher|
^_P|at ^_THING_THING| ^_THING| ^_U_and| ^_U_has| ^_U_or| ^_^_THING| ^_^_aim| ^_^_best| ^_^_breaker|
^_^_degre| ^_^_fill| ^_^_haul| ^_^_her| ^_^_instead| ^_^_marcus| ^_^_marta| ^_^_mass| ^_^_m|
^_^_party| ^_^_remind| ^_^_rob| ^_^_ruth| ^_^_r| ^_^_small| ^_^_third| ^_^_timer| ^_^_train|
^_^_ty| ^_^_whol| ^_a_P| ^_add_th| ^_aim| ^_aim|to ^_all|sort ^_ar|th ^_ar|w ^_at_this| ^_at|th
^_b_back| ^_bang|on ^_been|rest ^_befor_i| ^_best| ^_bin|th ^_bon|ar ^_br_it| ^_bram|is ^_breaker|
^_breaker|trip ^_buzz|m ^_by_th| ^_cancel|all ^_cancel|that ^_chang_it| ^_chang_my| ^_chuck|som
^_company|is ^_consider_th| ^_cooker|is ^_cook|right ^_cover|it ^_crank|her ^_degre| ^_delay|dinner
^_delay|everyth ^_dial_say| ^_diall_back| ^_did|you ^_dinner_Nduration| ^_dinner|for ^_display|is
^_door_was| ^_door|open ^_do|it ^_do|not ^_fill| ^_fir|up ^_forget_about| ^_for|N:few ^_fresh_out|
^_full|hous ^_gas_is| ^_generator_kick| ^_giv_that| ^_grab_th| ^_great_P| ^_guest|will ^_had|a
^_has|not ^_haul| ^_hav_lift| ^_help_th| ^_her| ^_hey_N:core| ^_hit_m| ^_holler_when| ^_how|THING
^_how|do ^_how|hot ^_how|pink ^_h|can ^_h|said ^_h|say ^_i_switch| ^_i_turn| ^_i_work| ^_if|they
^_ill|b ^_instead| ^_instead|of ^_in|this ^_is|that ^_it_will| ^_it|is ^_it|mak ^_it|n ^_i|am
^_i|bought ^_i|fancy ^_i|had ^_i|know ^_i|must ^_i|will ^_jess|is ^_jump_in| ^_kill_that| ^_kindly_prepon|
^_kindly_put| ^_kindly_remind| ^_knock_it| ^_kumara|is ^_left|it ^_left|th ^_leo|has ^_let|us
^_lift_it| ^_light_ar| ^_light|ar ^_loretta_is| ^_los_th| ^_lower|it ^_marcus| ^_marta| ^_marta|tak
^_mass| ^_medium|i ^_my_bad| ^_my|bad ^_m| ^_nic_and| ^_nic|and ^_no_that| ^_not_go| ^_not|a
^_not|befor ^_not|bother ^_nudg|th ^_of|cours ^_on_mor| ^_onc|it ^_oven_has| ^_oven|is ^_party|
^_party|of ^_pass|on ^_pet_is| ^_plat_ar| ^_pop_to| ^_pretend|i ^_priya_will| ^_put|a ^_put|your
^_p|m ^_quick_th| ^_ran_out| ^_rar_for| ^_rar_if| ^_reckon_w| ^_reckon|it ^_remind| ^_right_they|
^_roast_went| ^_rob| ^_rob|is ^_run|that ^_ruth| ^_ruth|can ^_r| ^_scrap|th ^_sesam|allergy
^_set_an| ^_set|another ^_shelf_N:few| ^_shout_at| ^_slic|th ^_small| ^_so_it| ^_sorry_that|
^_soup_go| ^_start_on| ^_start|a ^_straight|from ^_swed_is| ^_tak|a ^_tak|th ^_th_clock| ^_th_family|
^_th_needl| ^_th_old| ^_th_power| ^_th_teenager| ^_th_wean| ^_that|is ^_that|was ^_their_N:few|
^_they_went| ^_they|do ^_they|wer ^_third| ^_this|is ^_th|butter ^_th|fat ^_th|lad ^_th|littl
^_th|needl ^_th|other ^_th|small ^_th|whol ^_tick|that ^_timer| ^_too|many ^_total_N:few| ^_total|N:few
^_touch_th| ^_train_is| ^_train| ^_trim_th| ^_turn|down ^_turn|th ^_ty| ^_ty|it ^_w_tak| ^_w_took|
^_wait_with| ^_walk|m ^_wer_Nduration| ^_what_could| ^_what_should| ^_what|do ^_what|must ^_what|should
^_what|would ^_when|w ^_whol| ^_why|not ^_wip|it ^_would|THING ^_would|you ^_w|took ^_w|went
^_your|P a_N:core| a_Nweight_leg| a_Nweight_with| a_P_com| a_U_it| a_U|of a_boneless_THING|
a_cak| a_cast| a_cast|iron a_delay| a_delay|of a_grand_piec| a_holler| a_holler|at a_lat_on|
a_lat|on a_lot_of| a_new_THING| a_nois|at a_peek| a_plan|b a_quarter|inch a_r|DISH a_second|
a_shout| a_singl_DISH| a_sprig| a_sprig|of a_start| a_start|on a_tad|earlier a_vegan| about_an|
about_an|inch about|it_$ about|that_on abov_N:core|whil adult_and|N:few after_Nduration|to
after_a|proper after_put_th| after_this|bit afternoon_shop| afternoon_shop|is after|Nduration_DISH
after|that after|this_bit again_and_it| again_from_th| again_from|scratch again|P ago_and_i|
ago_ther|in ago|N:core ago|and_i ago|whil ago|whil_i ahead_of|us ahead|of_m aid|of aim_for|N:few
aim_for|a ajar_all_th| alarm_for|th alarm_w_set| alert|for alert|for_Ndegrees:core alert|m_if
alight_onc| alight_onc|mor all_of|us all_right_or| all_right_sod| all_th|heat all_th|way all_up_in|
all_up|in allergic_to|shellfish allergic|to_THING allergic|to_shellfish allergy_at_th| all|carv
all|day_$ all|in_THING all|in_coat all|over_my all|right_sod all|sat_THING all|sort_on along_by|
along_by|N:some already|Nduration alternativ|for alternativ|for_m alway|Ndegrees:some_under
alway|has_$ am_THING_a| am_after_a| am_at|it am_at|th am_away_from| am_a|slow am_fix| am_fix|to
am_head_upstair| am_head|upstair am_i_pull| am_i|poison am_miss|th am_nip|out am_pull|th am_suppos|
am_suppos|to am_us|a am|N:few_behind am|THING_$ am|at am|away am|away_behind am|call am|drown
am|fre am|i_allow am|i_pull am|i_suppos am|i_yank am|on am|out am|starv_$ am|us_a an_alert|
an_alert|for an_extra|mouth and_DISH|with and_N:few_of| and_N:few|mor and_Nduration|behind
and_anyth|i and_cut_so| and_degre| and_degre|c and_do|th and_everyth| and_giv|us and_half_of|
and_hang| and_how|is and_how|long and_i_would| and_it|went and_i|think and_ounc_for| and_power|is
and_sh_will| and_shout_when| and_sh|will and_stop_th| and_stop|th and_supper_is| and_tell|m
and_th_in| and_th_power| and_ther_will| and_ther|ar and_ther|will and_what_should| and_what_would|
and_wher|do and_you|ar and|U_$ and|find and|had and|if_i and|in and|it_will and|kilo_is and|pet_ar
and|pink_not and|th_number and|then_after and|yell_at another_N:few| another_helper_it| another_pair|
another_pair|of another|N:few_has another|Nduration_befor any_idea_when| anyth_i|n anyth|i_ought
anyth|w any|of any|way_THING an|THING_$ an|THING_left an|alarm_for an|extra an|extra_Nduration
app_is_lost| ar_N:few_at| ar_N:some| ar_Nduration|lat ar_ahead| ar_ahead|of ar_b_N:some| ar_clean_out|
ar_com_than| ar_down|to ar_do|it ar_her_w| ar_her|so ar_kill| ar_nic_and| ar_not|in ar_on_and|
ar_roll_DISH| ar_sell| ar_sell|plat ar_set_th| ar_split_th| ar_still_pal| ar_us| ar_us|celsius
ar_w_get| ar_w_ok| ar_w_still| arm_is| arm_is|burn arm|is arm|is_burn around_to_th| around|to
around|to_th ar|N:few ar|all_THING ar|at ar|at_N:core ar|boil_away ar|break ar|break_up ar|cremat
ar|don_already ar|golden_$ ar|her_U ar|her_all ar|in_b ar|in_their ar|lat ar|my_option ar|not_brown
ar|not_even ar|on_convection ar|park ar|sit_too ar|still_cold ar|still_raw ar|swell_up ar|they
ar|up ar|w_$ ar|w_hav ar|w_long as_a|boot as_look_at| as_look| as_look|at as_old| as_old|boot
as_smell_a| assist_can| assist_can|not as|dishwater as|of as|of_now as|tabl as|tabl_salt as|that
as|toast at_N:core_how| at_N:core_is| at_N:core_up| at_N:few_it| at_N:few_nobody| at_N:oven_anymor|
at_N:oven_feet| at_N:oven_that| at_N:oven_w| at_N:some|past at_Nclock_U| at_Ndegrees:core_let|
at_Nduration|later at_THING| at_either| at_either|end at_half|tim at_it_and| at_m_onc| at_right_about|
at_th|colour at|N:core_even at|N:core_up at|N:few_nobody at|N:some_past at|Nclock_and at|Nclock_latest
at|all at|last_low at|m_when at|onc_and at|right_now at|th_centr at|th_edg at|th_firehous at|th_tabl
at|this_moment away_from_th| away_from|th away_to|mass away|Nduration_$ away|i away|till_i
away|to_mass a|Nweight_topsid a|Nweight_with a|THING_no a|balloon a|bell_at a|bottl a|buzz
a|buzz_in a|conventional a|conventional_oven a|delay a|delay_of a|fir a|helper_today a|lend
a|lend_$ a|mo_$ a|monkey a|monkey_P a|night a|pregnant a|problem a|proper_rar a|roar a|rock_and
a|sauna a|school a|school_night a|slow_chopper a|spell a|th_N:few a|thick a|thick_grey a|timer_on
a|topsid_this a|treat_$ a|trick a|whil a|whol_THING a|yell_at b_a|monkey b_back|in b_don| b_for_th|
b_get_on| b_in_her| b_in_th| b_mak|th b_out_of| b_quiet|for b_quiet|now b_ready_for| b_right_it|
b_upstair| b_upstair|for b_when| back|a_tick back|on_$ back|on_at back|to_Ngas-mark back|what
bad_is| bad_off_th| bad|road bear_with| bear_with|m becom_very|sick been_off_sinc| been_off|sinc
been_on|sinc been|blad been|blad_tenderis been|hit_by been|in_th been|mad been|off_sinc befor_it_go|
befor|i_carv behind_Nduration_at| behind_on_th| behind_or| behind_with|th behind|sorry_$ bell_when|
belly|of belly|of_it ben_can_not| bird|wer bird|wer_drop birthday_to| birthday_to|you bit_of_a|
bit|of_crackl blad_tenderis_by| blast_at_either| blu|enamel blu|enamel_N:few boat_is|full boat|is_full
boil|water_down boil|water_test bok_choy| bon_it|is bon_skip|th bon_took| boneless_THING| boneless_THING|THING
bonfir_night_in| bon|it bon|not_N:few boss_tak| boss_tak|her bought_a|topsid bought|a_topsid
bout_Nduration|lat breath_ther| breath_ther|is bring_his_new| bring_his|new bring|his_P brought_N:few|mat
brought| brought|a_dat brown_at|th brown_on_top| brown|it_off brown|yet bump_it|to bung|som
bung|som_roast bung|th_roast burn_my_finger| burn_my|THING burnt_myself_on| burnt|my_wrist
burn|insid burn|insid_$ burn|my_wrist burn|th_finger burst_figur_Nduration| bus|is_lat butter_all|over
butter_by_th| butter|in butter|w_hav buy|m buy|m_that buzz_m_in| buzz_m|in by_Nclock_wak| by_a|mil
by_mistak_put| by_th_stov| by_th|grac by_th|way by|N:few_sh by|N:few_should by|N:some_they
by|Nclock_and by|Nduration_and by|Nduration_th by|mistak_i by|say by|say_yesterday b|DISH_$
b|Nduration_lat b|a_monkey b|f b|found_in b|lat b|mak_th b|much b|much_longer b|nic_U b|touch
b|touch_bon call_it| call|loud call|loud_i call|m_when call|m_yes cam|outsid cam|outsid_befor
can_do| can_drop_th| can_help|from can_i_us| can_i|b can_not_pictur| can_pitch| can_pitch|in
can_w_hold| can_w_los| can_w_skip| can_w|skip can_you_credit| can_you_get| can_you_spar| can_you|shov
can_you|tim cancel_DISH_my| cancel_th_green| cancel_what_i| cancell_that_is| cancell_they_will|
cancel|th_Nduration can|i_open can|i_us can|not_put can|not_w can|pitch can|pitch_in can|stay
can|you_shov can|you_stretch car_park| car_park|what cark|it_$ carry_on|without carv|so carv|so_N:few
cat_got| cat_got|th caught_on_th| caught_on| caught_on|th caught_they| caught_they|ar celsius_and|kilo
chang_th|fus chang_th|pull charg|of_th cheap_THING|of chest| chok_THING_is| chok_THING| chok_THING|is
chok_on_a| choy| chuck|corn chuck|corn_on clean_out|of clock_so_i| clos_full_someth| coat_on_th|
coeliac|so cold|oven collect_P_back| collect_my|P collect|my_P com_THING_Ndate| com_it_has|
com_than| com_than|i com_to|tak com_w|hav com|Nduration com|along_$ com|out_now confirm|com
confirm|com_so conk_out_on| conventional_oven_no| cook_medium| cook_medium|well cook_right|
cook_right|through cook|so_far cooler_than_it| cooler|than could_i|swap could_w_go| could_you_plan|
could_you|mak could_you|watch could|it could|you_plan could|you_tim count|th_bairn crack|on_$
crank_it_up| crank_it|to crank_it|up crank|it_up cream_as| cream_as|well cream_w_hav| crept_up|
crisp_it| crisp_it|up cross_off|th crumbl_on_th| crunchy| customer_at| customer_at|th cut_into|it
cut_off_no| cut_so| cut_so|they cut|myself_with daft| dat_so_that| dav_down| dav_down|for day_from|
dead_it|will degre|f degre|wis delay_dinner_by| delay_dinner|by delay_it| delay_it|by delay|everyth
delay|everyth_by delet_th_last| delivery_fella| delivery_fella|is delivery|fella delivery|fella_is
dial_THING_show| did_that_ag| did_you|hav did|not_$ did|not_finish did|not_get dinner_for|tonight
dinner_happen_Nduration| dinner_has|to dinner_if_you| dinner_is_go| dinner_is_now| dinner_is|go
dinner_is|now dinner_they_hav| dinner_they|hav dinner|Nclock dinner|is_by dinner|is_for dinner|they
dinner|they_hav dinner|tim_they do_it_by| do_it|in do_not|plan do_this|for do_th|brown do_w_hav|
do_what|now do_with|know do_with|th do_w|hav doctor| dog_has|had dog_i|will dog|Nduration don_and|i
don_i_know| don_no_wait| doneness|wis doneness|wis_medium don|no_pink don|no_wait door_for|N:few
door_now| door_of|th door_on_th| door_was_hang| doorbell_they|hav doorbell|they door|open_$
down_for_medium| down_i|can down_lik_a| down_to|th down_with|th do|N:few_calibrat do|about
do|i_ti do|it_finish do|metric do|metric_so do|not_P do|w_eat do|you_even do|you_mak do|you_say
dress_giv| dress_giv|m driv_th_sitter| driv_th|sitter drop_Ndegrees:few|after drop_their| drop_their|timer
drop|Ndegrees:few_after drop|every drop|every_tim dry_as|toast duck_out|for earth_do|N:few
eat|by_Nclock eat|dairy_$ either_end_keep| either|end either|end_keep electricity_is_on| electricity_sinc|
electricity_sinc|Nclock element_has|gon element|has element|has_gon end_keep| end_keep|her
enough|to_coat entry_by| entry_by|mistak even_look| even_look|at even_pick_th| even_th_kerry|
even_th|kerry even|preheat even|say even|say_to everyth_P| everyth_P|is everyth_is_happen|
everyth_tak|m everyth|for_N:some every|last_on every|slic every|year exactly_do|th exampl_of_what|
explain|to extra_for|dinner extra|mouth extra|mouth_to extra|pair extra|pair_of f_by|N:few
f_god_help| f_th_hors| f_that_is| fac|so fac|so_far faff|about_it fahrenheit_giv| fahrenheit_giv|it
fahrenheit|giv fahrenheit|giv_it family|want_to fan_assist_can| fan_is|given fan|assist_oven
fan|is_given far_bad| far_bad|road far|along fat_is|caught fat_onto| fat_onto|th fat_on|my
fat|cap_$ fay_is_not| fay|is fay|is_not feet_ar| feet_ar|kill fell_on_th| fella|is_her fell|on_th
few| finish_at|N:few first_P_alway| first_P|alway first_guest|ar for_N:core_and| for_N:core|
for_N:few_mor| for_Nclock_for| for_Nclock_on| for_Nduration_do| for_P_nor| for_all_of| for_all|of
for_a|THING for_a|bath for_smok| for_smok|in for_th_bird| for_th_old| for_th|cornbread for_th|crust
for_your|P forget_U| forget_U|keep forget_about|th forget_i|said forget_thes| forget_thes|otherwis
forget_th|truss forget|about forget|thes forget|thes_otherwis forget|what_you forgot_to|buy
forgot|to_buy forward_N:some_if| forward|by_Nduration for|DISH_load for|N:core_and for|Nduration_diaper
for|P_and for|dinner_and for|dinner_sorry for|help_in for|how for|m_$ for|m_th for|th_bird
for|th_crust for|th_finish for|th_meal for|th_next for|th_sear for|tonight_at for|you for|yusuf
for|yusuf_mak freez_what| freez_what|is fridg_sinc| fridg|Nduration fridg|it from_start_to|
from_th|begin from_th|freezer from_th|plan from|N:core_last from|N:few_$ from|N:oven_up from|bottom_v
from|m_$ from|now_on from|ohio from|practic from|practic_that from|rugby_tagg from|scratch_$
from|th_top full_i|am full_someth_is| full_someth| full_someth|is fyi_this| fyi_this|th fyi|
f|by_N:few gain_Ndegrees:few_in| gam_start_at| gang|has gang|has_land gang|is get_dress_giv|
get_from| get_her_befor| get_her|befor get_past|N:core get_rid| get_rid|of get_start| get_start|myself
get_th|THING get|from get|th_show get|to gig| girl_want_supper| giv_that_on| given_up_it| given|
giv|her_anyth giv|it_m giv|m_N:some giv|m_Nduration giv|m_my glaz| glov_is|on go_driv_th| go_giv|her
go_her_Nduration| go_in_as| go_straight_to| go_to_walk| go_to|church go_to|li go_to|se go_upstair_to|
go_upstair|for god_it|look god_ther| god_ther|is golf|ball gon_Nduration_and| gon_and|drop
gon_from|N:few gon_i|am gon_to|THING gon|Nclock gon|ther gon|ther_is gon|up_in good_N:some|lat
got_Nweight_of| got_a_nic| got_around| got_around|to got_a|THING got_her_Nduration| got_it_in|
got_it|at got_no_THING| got_tim|for got_to|run got|a_vegan got|at got|burn_pretty got|in_early
got|th_butter got|their_coat go|N:core go|for_medium go|near_shellfish go|out_Nduration go|to_go
go|to_hit go|to_n grab_th|handl grab_th|pan grab|th_hot grac_of| grac_of|god grand_piec| grand_piec|of
greas_is|on green_DISH|DISH green|DISH_my green|DISH_nobody grey_and|sad grey_r_THING| grey|r_THING
grill|underneath guest_ar|already guest_at|th guest_is|vegetarian guest| guest|ar_lat h_is_slip|
h_is|hav h_is|her h_mak_with| h_pour| h_pour|th h_said| h_so_much| had_a_look| had|THING_U
had|a_look halal_for| halal_for|yusuf half_th_guest| halfway|or halfway|or_DISH half|of half|of_them
hand_m_a| handl|th_DISH hand|m hand|m_a hang|on_it hang|on_paus hang|open_th happen_Nduration_sooner|
happen_Nduration| happen_Nduration|sooner happy_birthday_to| happy|birthday harriet| has_N:few|bon
has_been|THING has_been|blad has_crept|up has_gon_ther| has_gon_way| has_got|a has_th|flu has|a_shellfish
has|been_Nduration has|been_THING has|been_blad has|com_over has|gon_U has|gon_everywher has|gon_i
has|gon_inverter has|gon_lumpy has|gon_ther has|not_thicken has|split has|th_DISH has|to_b
hatti_is| hatti_is|allergic hatti|is hatti|is_allergic hav_DISH|with hav_N:core_in| hav_N:few|mouth
hav_THING_without| hav_a_delay| hav_a_fan| hav_already_got| hav_a|THING hav_a|delay hav_a|jar
hav_a|lend hav_been|hit hav_bung| hav_bung|th hav_caught_on| hav_chang_their| hav_chang_th|
hav_chang|th hav_chang|their hav_cut_my| hav_cut|myself hav_finish| hav_gon|and hav_gon|in
hav_got_Nduration| hav_got|their hav_had|a hav_lift|it hav_lost_th| hav_lost|my hav_no_notion|
hav_not_a| hav_not|even hav_not|kept hav_plenty_without| hav_plenty|without hav_pull_into|
hav_pull_th| hav_reach_som| hav_remov|it hav_rock| hav_rock|up hav_rop| hav_rop|in hav_rung|they
hav_slic|my hav_slip| hav_start_th| hav_th_THING| hav_to_fetch| hav_to_prepon| hav_to|DISH
hav_to|b hav_to|prepon hav_to|tak hav_turn|it hav_turn|up hav|a_full hav|a_grand hav|a_jar
hav|a_lend hav|already_got hav|an_extra hav|another_helper hav|been_don hav|chang_th hav|chang_their
hav|decid hav|got_their hav|had_th hav|hoick hav|hoick_th hav|left_U hav|lost_electricity hav|not_any
hav|plenty_without hav|remov_it hav|remov_th hav|rop hav|rop_in hav|sat hav|shown_up hav|taken_their
hav|to hav|turn_up head_upstair_to| head_upstair| head_upstair|to head|upstair head|upstair_to
hear|much hear|much_out heat_do|th heat|i_hav heat|is_out help_my_P| help_ther| help_ther|is
helper_today_her| help|till_Nclock help|us_$ henderson_ar|her her_N:few_still| her_Nduration|ago
her_Nduration|behind her_at_N:few| her_befor| her_befor|N:few her_cremat| her_from| her_i_can|
her_immun_system| her_i|can her_lik_a| her_lip|ar her_so_that| her_so|far her_so|that her_up_to|
her|Nduration her|chair_and her|for_a her|nam_is hey_w_hav| high_heat| him_at|th him_out_in|
his_fac|so his_medium|well his_new| his_new|P his_steak_medium| his|foot his|medium_well his|new
his|new_P his|steak his|warm hit_th|water hit|N:core_lik hit|th_water hold_everyth|for hold_on|THING
hold|everyth_for hold|on_THING hold|up_a holler_at|m holler_when|sh honestly_let| honestly_let|us
hop| hors|for_Nduration hot_THING| hot_THING|fell hot_for|th hot_now_ready| hot_turn| hot_turn|out
hot|DISH hot|oven_clock hous_afternoon_shop| hous_is_full| how_THING|hand how_ar|w how_bad_is|
how_far|along how_hot_for| how_long_for| how_long|to how_many|mor how_many|slic how_many|spoon
how_much_water| how_much|cream how_pink_will| how_should_i| how_to_DISH| how_to|get how|is_your
how|long_left how|many_DISH how|many_ar how|would_i huh| hurt_h_pour| hurt_h| hurt_h|pour hurt|much
h|is_N:some h|pour h|pour_th i_THING|it i_am_fix| i_am_head| i_am_suppos| i_am|at i_am|away
i_am|call i_am|drown i_am|fre i_am|on i_am|out i_ask_about| i_ask_th| i_bought_a| i_burnt_my|
i_burn|myself i_burn|th i_chuck| i_crank|it i_do_about| i_even|say i_find_th| i_freez_what|
i_freez|what i_get|it i_got|burn i_had|a i_hav_bung| i_hav_got| i_hav_rop| i_hav_slip| i_hav|gon
i_hav|hoick i_hav|kept i_hav|rop i_hit| i_hit|th i_lower|it i_mean|th i_must_away| i_must_go|
i_nudg_it| i_open|it i_pok_it| i_put|it i_put|on i_ruin| i_shall| i_shall|b i_should|not i_stab_it|
i_suppos| i_suppos|to i_swap|in i_think_my| i_told_them| i_took|th i_touch_th| i_turn|on i_us_instead|
i_want_P| i_want|degre i_was_hav| i_was_meant| i_whack_it| i_work|in i_would_brown| i_would_n|
i_would|not i_would|sooner i_wreck|it idea_when| idea_when|well if_i|took if_someth_is| if_they|wer
if|i_tak if|they_wer if|you_n ill_b_a| ill_b|a ill|b_away in_N:some_i| in_Nduration_tell| in_aid|
in_aid|of in_as|i in_at_N:core| in_at_N:some| in_at|N:some in_a|THING in_celsius|would in_from|N:few
in_i|forgot in_kilo_U| in_law_sh| in_my|country in_my|freezer in_my|lif in_now_do| in_our|hous
in_oven_Nduration| in_pound_and| in_sinc|N:few in_som_mac| in_th_belly| in_th_cast| in_th_whol|
in_ther|i in_th|butter in_th|end in_th|fat in_th|hous in_th|icebox in_th|plan in_th|warm in_th|water
in_w_hav| insid_sinc| insid_sinc|Nduration insid_temperatur|is insid_when|i instead_of_a| instead_of|dry
instead_of|fresh instead_of|real instead_of|th instead|of_N:oven instead|of_win into|th_driveway
invit|themselv_so in|N:some_for in|Nduration_so in|Nduration_would in|ag_Nduration in|degre_$
in|for_a in|her_and in|kilo_$ in|law_do in|sinc_N:oven in|som_roll in|this_rental in|w_hav
in|wer in|wer_back is_N:core_call| is_N:few_not| is_N:few_of| is_N:some_ml| is_N:some| is_Ndegrees:oven|in
is_Ndegrees:some_shy| is_Ndegrees:some|hotter is_THING_as| is_U_in| is_a_lat| is_alight_onc|
is_alway|Ndegrees:some is_another|N:few is_arm_is| is_arm| is_arm|is is_ask|for is_at|N:oven
is_a|THING is_a|bit is_a|conventional is_a|fan is_a|lot is_a|nightmar is_a|school is_bleed|
is_chok_THING| is_coeliac|so is_com_too| is_flam_in| is_for|th is_full_i| is_go|to is_grey_and|
is_happen_at| is_hav_to| is_hav|to is_her_till| is_hurt_h| is_it_in| is_it|go is_it|meant is_knock_it|
is_margarin_ok| is_medium| is_m|now is_not_N:few| is_not_past| is_not|past is_no|THING is_off_i|
is_on_for| is_on_th| is_rest_Nduration| is_sat|at is_set|at is_simmer|as is_sit|ther is_split|
is_starv_let| is_stuff| is_tak|N:few is_tak|over is_tent| is_that_saf| is_that|near is_th|last
is_th|number is_th|schedul is_turn|up is_uncover_by| is_under|th is_volunteer_for| is_volunteer|
is_volunteer|for is_what_it| is_when_it| isla| is|Ndate_$ is|Nweight_$ is|a_conventional is|a_must
is|a_sauna is|all_THING is|all_right is|beep_N:core is|bubbl_away is|burn_by is|burn_to is|burst
is|burst_figur is|chok_on is|cri is|cri_off is|dark_and is|di is|dinner_$ is|don_$ is|enough_out
is|fan_assist is|fin_$ is|giv_daft is|him is|hot_DISH is|hurt is|in_and is|in_beer is|in_between
is|in_it is|in_metric is|in_their is|it_$ is|it_meant is|jump_all is|left_and is|lik_bonfir
is|lot_ar is|lot_hav is|lumpy is|mad_$ is|my_next is|my_roommat is|no_second is|not_availabl
is|not_right is|not_what is|off_P is|off_conventional is|on_blood is|on_fir is|on_now is|out_$
is|out_god is|oven is|overdon is|pack_up is|pain_too is|pass_out is|peel_DISH is|pink_ok is|point
is|possibl_$ is|raw_as is|rubbish_it is|saf_for is|sat is|show_$ is|show_N:core is|shown is|shown_his
is|sit_on is|smok_in is|smok_someth is|split is|starv_let is|still_DISH is|still_U is|still_in
is|tail_$ is|th_go is|th_next is|th_plan is|th_schedul is|th_scor is|th_target is|that_$ is|that_in
is|that_your is|throat_swell is|touch is|up is|up_next is|volunteer_for is|what_in is|whisk_and
is|wrong_$ it_N:few|bon it_a_tad| it_b_a| it_back| it_back|a it_by|THING it_for|m it_from_th|
it_from|th it_go|over it_has|had it_hit|th it_in_a| it_in|at it_is_raw| it_is|down it_is|driv
it_is|not it_is|pain it_is|say it_lift| it_lift|out it_off_and| it_over_at| it_r| it_slid_off|
it_slid|off it_so_i| it_still|b it_th_day| it_through_so| it_was|at it_whil|i it_will_com|
it_will|b it_would|b itself| it|Nduration_back it|a it|already_$ it|b_when it|break it|break_N:core
it|by_Nduration it|down_i it|forward_Nduration it|get_to it|is_N:core it|is_after it|is_at
it|is_burnt it|is_com it|is_do it|is_heat it|is_hit it|is_jump it|is_out it|is_pain it|is_read
it|is_say it|is_up it|is_whol it|lik it|look_good it|mak_much it|meant it|meant_to it|onto
it|onto_th it|open_and it|sat_on it|say_$ it|say_Ndegrees:core it|sit_$ it|sit_out it|so_i
it|they_ar it|through_so it|touch_Ndegrees:core it|up_right it|weigh it|whil_it it|with_$ it|with_salt
it|with_you i|am_$ i|am_lagg i|am_se i|am_tak i|am_yet i|b_with i|begin_$ i|can_hear i|do_now
i|fancy_som i|fetch i|fetch_P i|find i|find_th i|get_$ i|get_for i|go_out i|got_tim i|had_a
i|had_it i|had_th i|hav_an i|hav_bought i|hav_drop i|hav_eas i|hav_haul i|hav_hoick i|hav_overcook
i|hav_remov i|hav_rop i|hav_rub i|hav_truss i|know_celsius i|last_look i|lower_it i|mak_th
i|mean_$ i|mean_not i|n_mor i|order_onlin i|poison i|poison_P i|press_it i|put_in i|said_N:oven
i|slip i|swap_THING i|swap_in i|think_$ i|touch_raw i|want_DISH i|was_go i|was_read i|was_talk
i|will_b i|will_mind i|will_tak i|would_quit jess_is_do| jess|is_do jess|is_on jim_do_not|
jo_cancell_so| joint_slid_onto| joint|is_on joint|is_out joint|slid_off jud_can| jud_can|help
jump_past|it kavi_h| keep_an| keep_an|THING keep_drop| keep_drop|every keep_his|warm keep|her_steady
keep|his_warm keep|up keep|up_with kept|pac kept|pac_with kerry|crowd kick_in|wer kick|in_wer
kick|off_is kidney_transplant_bear| kidney| kill_th_Nduration| kill_th_oven| kill_that|alarm
kill_th|DISH kill_th|bast kill|th_THING kill|that kilo_U| kilo_U|degre kilo_and|celsius kindly_prepon|
kindly_prepon|th kindly_put| kindly_put|N:few kindly_remind|after kindly|includ knock_it_back|
knock_it|to knock_that| knock_that|timer knock_th|whol know_how|to know_if_this| know_if|it
know_if|this know_onc|it know_this| kumara|is lactos|intolerant_$ lad_ar_all| lad_from| lad_from|rugby
lad|from lad|from_rugby lagg|by lagg|by_Nduration land_even_th| last_DISH|of last_entry_by|
last|N:few last|th_i lat_P|swor lat_get_start| lat_on|my lat_on|tonight lat_so_count| lat_they|text
later_than|N:few later_th|P later|than_N:few lat|on_tonight lat|so_w law_ar|after law_do_not|
law_is_N:few| law_sh| law_want|his law|tak_over lay_N:few|mor leak_fat_onto| leav_it|with leav_th|THING
leave-in_on_say| leav|it_uncover left_on_th| left|on lena| leo_has_a| let|us_DISH let|us_aim
let|us_do let|us_mak li_down| lift_it|onto lift_out_and| lift|out_and light_on_th| lik_DISH_r|
lik_P_us| lik_P|eat lik_P|us lik_a|balloon lik_golf| lik_golf|ball lik_her_cremat| lik_in_th|
lik_it_well| lik_practically| lik_practically|still lik_th_th| lik_to|know lik_w|will lik|a_THING
lik|his_rar lik|i lik|it_$ lik|it_pink lik|to_serv lily_in_charg| lily| lily|has lily|has_to
list_for_th| list_nobody|eat list_th_alternativ| lit_it|at littl_light| littl_oven|is littl_screen_by|
littl|lad littl|lad_touch littl|on littl|screen_by liv|room_$ li|down_for long_as|it long_for|
long_for|th long_hav|you long_off| long_off|th long_till_i| long_till|i longer_in| longer_in|ther
longer_than_i| longer_than|you long|till_th long|till_w look_lik_P| look_lik_w| look|after
look|after_th look|insid_$ lost_Nduration_to| lost|my_helper lost|th_THING los|th_r lot_hav_got|
lot_hav|got lot_to_th| lot_to| lot_to|th lot|hav_got lower|it_to lowest_was| lowest_was|N:core
lowest|it_will lucy_can_not| m_U_hold| m_a_holler| m_a_r| m_and|my m_and|pet m_a|THING m_a|buzz
m_a|mo m_forget_U| m_lik_i| m_missus_will| m_missus|will m_plus|anselm m_ston| m_ston|cold
m_th_whol| m_th|plan m_th|rundown m_th|stat m_to_check| m_twic_as| mad_peac_put| mak_U|a mak_do_with|
mak_it|rar mak_with|m mak_yusuf_is| mak|dinner_N:few mak|it_after mak|it_rib mak|nois mak|that_N:few
mak|that_Nduration many_DISH_for| many_ar|w many_degre|is many|DISH_do many|mor many|slic many|spoon
margarin_ok| marta|tak marta|tak_over meant|to_tell medium_and|that medium|for_P medium|i medium|rar_ok
medium|rar_sam menu|tonight_besid middl_that|is min_is_a| mind_about|that mind_th_tim| mind_th|DISH
mind|about_that minut|how min|is_a miss_for| missus_will_not| missus_will|not missus|will_not
miss|th_r mistak_put| mistak_put|it mix_and| ml_of| ml|of_cream mob_is| monster_of_a| mor_cook_medium|
mor_for|dinner mor_or| mor_peopl|ar mor_will_it| mor|ar_join mor|for_dinner mor|plac_$ mor|reminder
mor|talk mov_it|to mov_on|to mov|it_to much_THING_for| much_as_look| much_water| much_water|for
much|DISH_$ much|as_look much|as_smell much|butter_for much|cream much|cream_in much|salt_do
must_away| must_away|for must|b_Nduration my_P_and| my_P_lik| my_P_simpl| my_P|haul my_P|lik
my_P|swear my_THING_ther| my_THING|has my_arm_with| my_boss_tak| my_feet_ar| my_finger_it|
my_finger| my_god_ther| my_in_law| my_lad| my_lat_P| my_roommat|is my_stuff_is| my_tim_hav|
my_tim| my_tim|hav my_wrist_with| my|P_sh my|THING_gaug my|THING_speak my|boss_keep my|country
my|freezer my|freezer_so my|kne my|option_$ my|work my|wrist_with m|a_holler m|a_r m|a_yell
m|i_am m|in_N:few m|know_at m|know_in m|th_grocery m|through_what m|to_turn m|twic_what n_N:few|
n_a|THING n_for|N:few n_for|th n_longer|they n_tell| n_tell|every n_th|timer n_to|rest nam|is_U
nam|off nam|off_th nary_an| nary_an|THING near_th_oven| near_th|bon nearly_set_fir| nearly|ther_$
near|enough_$ near|th_end near|th_oven never_got_around| never_mind|about never_own|a never|again
never|got_THING never|got_th never|mind_get new| next_door| next_door|Nduration next_on_th|
next_step_my| next_tim| next|on_$ next|step_my nic_and| nic_and|golden niec_volunteer_for|
niec_volunteer| niec_volunteer|for night_in|her night_smok_pour| night|and night|befor_$ nip_to_th|
nip|to_th no_DISH_cook| no_DISH|it no_Nweight_not| no_THING_THING| no_electricity_sinc| no_idea_how|
no_i|can no_i|said no_later|than no_longer_in| no_mor|reminder no_mor|talk no_notion_of| no_notion|
no_they| no_wait|what nobody_is|in nobody|is_THING nobody|want non_of|them nor|money not_N:core_it|
not_a_sprig| not_a|THING not_breath_ther| not_brown|yet not_b|in not_com_so| not_even_look|
not_even|preheat not_get_her| not_go_giv| not_hear|much not_keep|up not_kept|pac not_know_if|
not_let|m not_let|th not_n_tell| not_n|it not_past|N:core not_pictur| not_pictur|pound not_reduc_enough|
not_so|much not_talk_to| not_well_sh| notion_of_fahrenheit| notion_of| notion_of|fahrenheit
not|N:few_in not|all not|b_ars not|b_faff not|b_near not|b_ready not|b_strain not|bother_tim
not|bother_ty not|breath_ther not|carv_it not|carv_yet not|com_after not|com_sh not|com_so
not|cop_i not|do_roll not|don_i not|even_start not|even_touch not|fit_both not|got_is not|got_th
not|kept not|know_if not|know_what not|mean_to not|meant not|meant_for not|mind_$ not|n_th
not|own_a not|past_N:core not|plan not|plan_N:few not|ready_for not|touch_it not|understand_$
now_and|what now_at|N:few now_get| now_m| now_what_do| nowher_to|chill now|at_N:few now|how
now|or now|ready now|ready_for no|flam_at no|less_$ no|signal no|tim_$ nudg_it|to nudg_m_at|
nudg_th|whol number_for_th| number_has_gon| number_is|rubbish number_say|N:core number|of number|of_guest
n|N:few_minus n|Nduration_befor n|Nduration_start n|heat n|to_pick och| of_DISH|butter of_a|DISH
of_fahrenheit_giv| of_fahrenheit|giv of_her|tablet of_it|they of_oven_is| of_them_god| of_th|lot
of_us_for| of_what|to off_and_it| off_and|ti off_for_th| off_for|th off_it_N:few| off_i|kill
off_no|flam off_our|own off_sinc| off_th_DISH| off_th|board off_th|bon off_th|pan off_to_collect|
off_with_th| offer_to|do off|sinc off|th_dinner off|to_work off|w of|DISH_$ of|DISH_butter
of|DISH_th of|DISH_w of|THING_in of|dry of|dry_THING of|fahrenheit_giv of|fresh of|god_it of|ic
of|my_THING of|my_knuckl of|real of|real_THING of|sirloin of|th_afternoon of|th_day of|th_lot
of|them of|them_how of|top of|top_THING of|us_all of|us_and of|us_at of|whatever of|whatever_you
of|you_$ ok_THING_is| ok_dial_is| ok_dial| ok_dial|is ok_so_it| ok_so_i| ok_turn| ok_turn|it
ok_with|th ok|P ok|THING ok|for_P ok|for_her ok|i old_at| old_at|th old_dinner| old_dinner|tim
old|at old|at_th old|boot old|dinner old|dinner_tim old|money_fahrenheit on_DISH|and on_N:core_has|
on_and|i on_at|last on_a|DISH on_a|miss on_dinner_they| on_dinner|they on_m_ston| on_my|way
on_sinc|N:few on_sinc|Nclock on_th_porch| on_that_timer| on_th|b on_th|clock on_th|fat on_th|floor
on_th|joint on_th|screen on_th|til on_to|th on_your|own onc_and_i| onlin_tonight|what onlin|tonight
onto|th_oven on|N:few on|P_is on|a_DISH on|a_miss on|everyth on|for on|is_look on|our_whol
on|sid_fewer on|so on|th_U on|th_rest on|th_timer on|tonight_Nclock on|without_m open_th|door
order_of|th order_onlin| order_onlin|tonight or|after or|lid or|near other_ar|sit other_on_is|
otherwis_so_buzz| other|ar_sit ottolin_is| ottolin_is|her ounc_for| ounc_for|m our_cooker|
our_cooker|is our|on out_Nduration| out_as| out_by|mistak out_for_a| out_for|N:core out_for|m
out_god_it| out_now_get| out_on|our out_sh|com out_th_DISH| out_th|truss out_whol| out_whol|street
outsid_is|burn out|or out|overnight_$ oven_Nduration|befor oven_and_what| oven_and|it oven_and|what
oven_at| oven_door_was| oven_hurt| oven_hurt|much oven_in|th oven_is_cark| oven_is|alight oven_is|alway
oven_is|conk oven_is|dead oven_is|fan oven_is|now oven_is|on oven_it|is oven_no|fan oven_out_in|
oven_run_cold| oven_run|cold oven|b_at oven|down_in oven|from_N:oven oven|glov_is oven|has_got
oven|now_and oven|off_now oven|on_$ oven|on_N:some oven|on_now oven|that over_at_som| over_at|som
over_in_th| over_my|arm over_th|THING over_what_it| pack_up_on| pac|her_$ palm|is palm|is_blister
pal|and pan_THING_blu| pan_THING|blu panick_and| panick_and|took parent|and park|what part|N:core
pass_out|at past_N:core_by| past_medium| past_with| past_with|th past|N:core_by past|N:core_roar
past|th_trim patient| paus| pay_customer_at| peac_put| peac_put|them peel_took| peel_took|forever
pencil|in_green peopl_N:few| peopl_so_celsius| peopl|ar_com peopl|ar_sit peopl|how phon|call_$
pick_th|DISH pictur|pound pictur|pound_kilo piec|of_sirloin pink_all_th| pink_for|her pink_in|th
pink_will| pink|so pitch_in|from pizza| plac_of|th plan_got|in plat_and_th| plat_ar|warm plat_at|th
plat|and plenty_without| plenty_without|th plenty|without plenty|without_th plus_N:few_confirm|
plus|anselm pok_it|in pop_up|to pour_off_th| pour_off| pour_off|th pour|off pour|off_th pour|th_boil
powder_it_is| power_in_th| practically|still practically|still_walk pregnant_by_th| pregnant|by
pregnant|by_th prepon|by prepon|by_Nduration prepon|th prepon|th_dinner press_it|with pressur|
pretend_i_did| prov_Nduration_ago| prov_Nduration|ago pull_in_th| pull|it_$ pur_vegetarian_no|
push|it_to put_Nduration_on| put_THING|over put_a_THING| put_dav_down| put_in_her| put_it|in
put_m|down put_th_THING| put_th_small| put_them| put_th|kettl put_too| put_too|much put_us_down|
put|in_$ put|m_Nduration put|them_again quantity|of_THING quarter|inch quarter|inch_as quiet|for
quiet|for_a quit_lik_to| r_N:core_in| r_THING|th r_win_in| rang_tyr_is| rar_cold_in| rar_for|th
rar_if| rar_if|you rar_lik_practically| rar_roast_this| rar|as rather_crisp_it| rather_than|N:few
raw_in|th raw|insid_$ ray| reach_som_ar| reach_som| reach_som|ar ready_they_n| ready_they|
ready_they|n read|of read|of_N:core reason|w_ar reckon_w_hav| reckon|w_hav reduc_enough| reduc_enough|to
remind_after_Nduration| reminder_till| remind|after remind|after_Nduration remov_th|timer remov|th
rest_Nduration|so rest_it|for rest_they| restor_th_old| revers_th| revers_th|last rib_is|in
rid|of right_about| right_about|now right_or| right_or|should right_sod| right_sod|it right_who|is
righto_rib_is| right|for_pink right|now road_is|dark roar_at|m roast_cam|outsid roast_fell_on|
roast_for_N:few| roast_hit| roast_hit|N:core roast_in_a| roast_is|no roast_is|on roast_on|th
roast_this| roast_this|year roast|in_$ roast|into roast|into_th roast|is_go roast|is_on roast|out_Nduration
roll_is|not roll_off_th| roll_prov_Nduration| roll_they_ar| roll|Nduration_$ roll|prov roommat|is
rub_it|with run_bout_Nduration| run_lat_with| run_lat|with run_m| run_m|through run_to_th|
rung_they|ar run|lat_$ saf_to|eat saignant_is| saignant_is|for salt_it_all| salt_so| salt_so|early
salt|and sam_as|tabl sam_for_th| sam_heat_th| sam|as_tabl sat_down|and sat_on_a| sat_on|a sat|
sat|down_and sat|out_Nduration sav|it_$ say_N:core_in| say_N:core|should say_N:few|mor say_Ndegrees:core_on|
say_h|will say_it| say_they|ar say_to|m say_to|you say|in_Nduration say|m_in scald_my| scald_my|wrist
scratch_th_green| scratch_th|green scratch|N:few screen_by| screen_by|th screen| se_for_smok|
se_th|timelin se_to|th sear_is|finish sear_it_at| sear_on_all| sear|i second_it_touch| second_it|break
second|shelf_from sell_plat_at| sell|plat_at sens|in serv_buy| serv_buy|m set_an_alarm| set_an_alert|
set_another| set_another|plac set_for|th set_it|on set_th_number| set_th_tabl| set_th|number
set|for_th set|th_tabl se| se|to_th sh_becom_very| sh_got|th sh_is_com| sh_swell| sh_swell|up
sh_will_stop| sh_would|never shall_i_put| sharp_U_th| shedd|start_Nduration shelf_N:few| shelf_N:few|from
shelf_will_not| shellfish_sh_swell| shellfish_sh| shift_everyth| shift_everyth|by shoot_it|
shoot_it|is shoot_that| shoot_that|DISH shop_did_not| shop_for|DISH shop|for_Nduration shop|what
should_i_get| should_it|go should|b_N:core should|i_trust shout_when|sh shout| shout|when_th
shov|dinner_back shov|it shov|th_DISH shown_his_fac| shut|th shy_of|whatever shy| shy|of_whatever
sh|com sh|go_$ sh|is_N:core sh|is_Nweight sh|is_go sh|is_hot sh|say_so sh|will_stop sh|would_never
silverskin_toss_it| simmer|as simmer|as_of simpl_as| simpl_as|that sinc_w|wer sinc|w_wer singl_DISH|
sirloin_yes_a| sitter| sitter|hom sitter|hom_that sit|and siz_wis_N:few| siz|joint skip| slic_th|tip
slic_th|top slic|it slid_onto| slid_onto|th slid_th_roast| slid|by slid|by_Nduration slid|off
slip_and_half| slip_past_N:core| slow|and small|oven_on smell_a|walnut smok_off_th| smok_pour_off|
smok_pour|off smok|everywher_$ so_N:core_in| so_buzz| so_buzz|m so_celsius| so_celsius|and
so_drop_their| so_far_bad| so_keep_his| so_keep|his so_nowher_to| so_sh|is so_tak_them| so_they|ar
so_w_hav| so_which|bit so_w|panick so_you|would sod|it sod|it_mak som_ar| som_mac| som_mac|and
someth_is|burn someth_is|in someth_is|wrong someth_or| someth|is_burn someth|is_in somewher|
som|ar som|hav som|hav_reach som|roll_$ sooner|than_plan sorry_that|was sorry_to| sorry|it_was
sound_right|for soup_go_out| soup_go|out soup|go_out so|early so|far_and so|much_as so|you_would
spar|m_for splash_of|water split_th|job sprig| squar| stab|it_N:core stag_ar| stag_ar|w stand_rib|Nweight
stand_rib|roast start_again_from| starter|is_at start|THING start|myself start|over_$ start|to_arriv
starv_let| starv_let|us step_away|for step_my_THING| step_my|THING stick_of_DISH| stick_of|DISH
stick_th|THING stick|of_DISH still_DISH_solid| still_N:few| still_U|in still_b|pink still_cold_in|
still_no|sign still|DISH still|U_in still|at_th still|moo_$ still|on_th still|rock_THING still|stuck_on
ston|cold_insid stood_in_th| stood|at stop_for_a| stopwatch_for_th| stop|at_hom stop|nagg_it
stop|stop stov|is_up str_in_th| straight_from| straight|into straight|into_my strain| street_is|
street_is|dark strik_N:few_nam| stuck| stuck|it_and stuff|it_th sucker| summaris_wher| summaris_wher|i
supermarket_car_park| supper_Nduration|sooner supper_is| supper_is|at supper_is|go swap| swap|in
swap|in_DISH swed_is| swell_up|if swell|up_after switch|it_off s|out_when tabl|by_N:few tabl|god
tabl|god_bless tabl|tonight_$ tad|earlier tad|earlier_Nduration tak_it|to tak_longer| tak_longer|than
tak_over|at tak_them|off taken_th_oven| taken_th|oven tak|N:few_tim tak|THING_$ tak|her_rar
tak|it_$ tak|longer tak|longer_than tak|m_twic tak|off_N:few tak|out_$ tak|over_th tak|that_back
talk_in_degre| talk_in|degre talk_to|m talk|in_degre teach|m_how tell_it| tell_m|at tell|every
tell|every_Nduration tell|m_when tell|you_th temperatur_for|th temperatur_should|th temperatur|has_reach
temperatur|of_th tenderis_by| tenderis_by|th text_m_when| text|Nduration text|Nduration_lat
th_DISH_did| th_DISH_for| th_DISH_giv| th_DISH_knock| th_DISH_should| th_DISH_was| th_DISH_would|
th_DISH|as th_DISH|must th_DISH|no th_DISH|yes th_N:few_of| th_N:few|befor th_P_from| th_P_in|
th_THING_fell| th_THING_is| th_THING_must| th_THING_they| th_THING_went| th_THING|back th_THING|gav
th_THING|is th_THING|or th_THING|they th_U_in| th_U|and th_alternativ| th_alternativ|for th_belly|
th_belly|of th_best_way| th_bird|wer th_boil| th_brown_at| th_bus_is| th_can_i| th_cat_got|
th_choic|again th_clock_on| th_clock|i th_current_has| th_delivery_fella| th_delivery|fella
th_dinner_by| th_dog|Nduration th_door|and th_electricity_has| th_fan|on th_finger_on| th_flight_is|
th_football| th_fridg|Nduration th_gas_has| th_grac_of| th_guest_they| th_heart| th_hors| th_hors|for
th_i_should| th_invit| th_kerry| th_kerry|crowd th_last|of th_leave-in_say| th_lid|on th_list_for|
th_littl_light| th_lot_to| th_lowest_it| th_number|of th_old_dinner| th_old|dinner th_order|of
th_outsid_is| th_oven_hurt| th_oven_sinc| th_oven_so| th_oven_up| th_oven_with| th_pan_i| th_peopl_hav|
th_plan_got| th_roast_hit| th_roast|into th_roll|Nduration th_sens|in th_shop|what th_show_on|
th_sitter| th_sitter|hom th_str_in| th_tabl|god th_temperatur|has th_thickest|part th_timer_which|
th_timer|anymor th_trick|with th_wash|up th_whol_gang| th_whol_stick| th_whol|hous th_whol|tim
th_wireless_say| than_it|say than|plan that_Nduration_i| that_THING_it| that_ag| that_ag|ago
that_all|right that_ar_all| that_is|don that_is|him that_last|th that_mak|N:few that_number|again
that_ther|is that_timer|for that_was|not that_will|b that|N:core_$ that|far_behind that|is_doabl
that|is_enough that|is_m that|is_wrong that|near that|near_enough that|number_$ that|on_a that|temperatur_$
that|timer_$ that|timer_it that|timer_on their|timer them_down_with| them_god| them_god|help
them_hav|turn them|ar then_sh| then_th_DISH| then|down ther_a_plan| ther_on_th| ther_w_go|
ther|is_too thes|otherwis thes|otherwis_so they_ar_at| they_hav_chang| they_hav|arriv they_hav|been
they_hav|chang they_hav|left they_n|heat they_text_Nduration| they_wer|Nduration they|ar_Nduration
they|ar_THING they|ar_don they|ar_in they|ar_not they|ar_pal they|ar_sat they|com_$ they|com_Nduration
they|hav_ask they|hav_rung they|mad_peac they|n_heat they|sat they|want_it they|went they|went_in
they|will_b they|will_not thicken| thick|end_$ thick|of_it thick|part_N:core thin_as|dishwater
think_i_will| think_my|THING think|it_is this_U| this_her| this_is|too this_minut|how this_oven_alway|
this|is_right this|minut_how thos_wireless_THING| thought_w_had| through_so_you| through_so|you
through_th|day th|DISH_should th|DISH_so th|DISH_to th|Nduration_th th|P_us th|THING_behav
th|THING_h th|THING_oven th|THING_so th|THING_till th|THING_went th|U_cancell th|U_in th|air
th|bast_timer th|best_way th|bin_out th|board_onto th|bon_and th|bon_from th|bon_i th|bottom_they
th|burner th|bus_is th|butter_Nduration th|butter_so th|butter_step th|car_$ th|cat_$ th|cat_has
th|chair th|clock_for th|clock_i th|clock_so th|cornbread th|cornbread_go th|curtain_$ th|day_N:few
th|delivery th|dog_THING th|door_N:few th|door_and th|door_for th|door_it th|door_on th|driv_that
th|fan_on th|fat_and th|ferry th|finish_$ th|finish_roast th|floor th|fridg_and th|front th|front_room
th|fus_and th|gam_start th|gang th|gang_is th|grac th|grac_of th|grocery th|handl_it th|heat
th|heat_is th|heat_out th|hen_Nduration th|homeless th|homeless_shelter th|ic_water th|in_law
th|kerry th|kerry_crowd th|lad_hav th|last_Nduration th|last_bit th|leave-in_on th|lid_off
th|list_nobody th|littl_guy th|lowest_it th|market th|menu_tonight th|metric th|metric_system
th|missus_and th|number_has th|number_of th|on_with th|order th|oven_Nduration th|oven_from
th|oven_hurt th|oven_in th|oven_no th|oven_shelf th|oven_with th|pair th|pair_of th|pan_my
th|parish th|peopl_hav th|plac th|pull_tim th|rest_do th|roast_ballpark th|rundown th|shop_had
th|sitter th|sitter_hom th|small_on th|sofa th|stair th|sticker th|stor_Nduration th|stor_back
th|stov th|tabl_fork th|tabl_it th|tabl_wait th|tabl_yusuf th|teenager_hav th|thick_bit th|thick_of
th|thick_part th|timer_any th|timer_anymor th|timer_on th|timer_which th|tip_of th|top_off
th|trick_with th|truth_$ th|water_$ th|way th|way_th th|weight_in th|wifi_password th|wireless
th|wrong_THING til_and| till_i_get| till_serv_buy| till|N:few_and till|i_get till|i_hav till|serv
till|th_DISH tim_ar|w tim_do|it tim_do|you tim_hav|gon tim_in_th| tim_is|it tim_would|you timer_never|
timer_never|mind timer_on| timer_which_i| timer_which| timer_which|i timer|Nduration_DISH tim|for_us
tim|hav_gon tip_of_my| tip_of|my tip|of_my to_N:core_under| to_N:oven_as| to_N:oven_it| to_N:oven_sinc|
to_a_quarter| to_b_on| to_bath_th| to_bother_with| to_buy|for to_b|at to_b|f to_get|up to_giv_m|
to_go_so| to_hav_DISH| to_hav|DISH to_know_when| to_know|th to_li|down to_m_i| to_postpon|
to_postpon|th to_prepon| to_prepon|by to_pull_at| to_pull|at to_run_to| to_se_to| to_shop_for|
to_sit| to_tak_over| to_tak_th| to_th|metric to_th|trim today_her| today_her|nam today_m_plus|
told_him| told_you_about| told| tonight|what_should took|ag_to took|it_out too|salty_$ top|THING_$
toss_it| toss_it|to total| touch_N:core_kindly| touch_that_it| touch_th|pan touch|th_hot tough_as_old|
to|DISH_$ to|N:core to|N:core_would to|N:few to|N:oven_Nduration to|N:oven_at to|N:oven_w to|N:oven_wait
to|THING_$ to|U to|b_N:core to|b_Nduration to|b_ready to|bath to|bath_th to|buy_DISH to|buy_THING
to|buy_anyth to|do_now to|do_this to|get_dress to|get_ic to|get_to to|god_$ to|grat to|grat_it
to|heat to|know_how to|know_when to|m_U to|m_in to|m_lik to|mass_back to|prepon to|prepon_by
to|pull_at to|say_it to|shellfish to|sit_in to|tak_over to|th_church to|th_metric to|th_next
to|that to|that_phon traffic_is_a| traffic|is_a transplant_bear| transplant_bear|that trick_with|th
trick|with tripl|digit tripl|digit_N:core trip| trip|over trip|over_th turn_down|to turn_th_fan|
turn_that|down turn|it_on turn|out_th turn|th_timer twin|n typ|N:core tyr_is| tyr_is|burst
uncover_by_th| under_th|tabl under_th|truth unit_c_and| up_N:some_so| up_P|i up_all_th| up_a|Nweight
up_for|a up_in|ther up_i|am up_i|will up_lik_a| up_on|m up_right_at| up_th|wall up_to_N:some|
up_when|it up|N:few up|again_look up|by_N:some up|if_h up|not up|to_bath up|when_th us_DISH_that|
us_THING_DISH| us_and|N:few us_and|th us_a|U us_a|roar us_begin|again us_by|say us_celsius_and|
us_do|th us_for|THING us_instead| us_instead|of us_in| us_mak|dinner us|DISH us|a_roar us|a_yell
us|celsius_and us|instead us|instead_of us|tak_THING v_THING_to| vegetarian_no|THING very|much
visitor_com| volunteer_for_th| volunteer_for|th volunteer|for_DISH w_ar_sell| w_ar_us| w_ar|
w_ar|at w_ar|bang w_ar|on w_at_Nduration| w_do|about w_get|on w_get|th w_got|on w_go|th w_hav_been|
w_hav|already w_hav|another w_hold_everyth| w_hold|everyth w_long_off| w_los| w_los|th w_ok|
w_ok|for w_panick_and| w_sell| w_set|for w_skip|this w_turn_it| w_turn|it w_will_serv| wait_ther|
wait|it wait|it_is wak_m|up wak|m_otherwis wak|m_up want_N:core_in| want_P| want_P|eat want_dinner|at
want_supper_Nduration| want_supper|at want_th|Nduration want_to_hear| want|degre want|degre_c
want|her_medium want|his_N:core want|th_Nduration want|to_THING want|to_hear want|to_know warehous|club
warehous|club_roast warn_m|at was_N:core_not| was_hav_a| was_hav| was_hav|a was_it| was_meant|
was_meant|to was_not|m was_not|meant wash_your|THING wash|th_board was|N:core_Nduration was|befor
was|on_th was|read_th was|th_last was|that_pal way_to_carv| way|through_$ weigh_Nweight_and|
weight_of|DISH weigh|it_on well_don_i| well_dry_as| well_ill_b| well_shoot_it| well_sh|will
well_they|ar well_th|rest well|P well|i well|ill well|ill_b well|past_well went_out_whol| went_straight_into|
went_straight| went_up|again went_up|to went_whoosh_burn| went|in_Nclock went|in_th went|off_so
went|straight_into wer|at_N:core wet|floor_sh whack_it|up whack|it_up what_DISH_ther| what_about_th|
what_can|you what_com_after| what_els|is what_hav|w what_hav|you what_if|i what_if|w what_is_Ndegrees:oven|
what_is_com| what_is|com what_is|left what_is|not what_it|say what_i|do what_i|should what_i|told
what_i|want what_quantity|of what_should|i what_stag_ar| what_w_want| what_was|i what_w|want
what_you_learn| what_you|learn what|can_stand what|els_is what|for_$ what|happen_if what|happen_when
what|heat_$ what|if_i what|is_Ndegrees:core what|is_a what|is_left what|now_$ what|quantity_of
what|reason_w what|temperatur_do what|to_do what|you when_do_everyth| when_i_slic| when_is|dinner
when_it|get when_it|has when_it|r when_it|say when_it|went when_you|se when|Nduration_hav when|do_everyth
when|i_slic when|i_tak when|w_eat when|well when|well_b when|you_think wher_exactly_do| wher|i_am
wher|i_should which_timer_never| which|bit_hav which|of whil_it|is whil_i|fetch whil_i|find
whil_i|was whil_they|ar whil_yet| whil|i_fetch whil|i_find whil|i_wrangl who_can|not who_is|a
whol_gang| whol_gang|has whol_joint|slid whol_mob| whol_mob|is whol_road_is| whol_roast_on|
whol_stick_of| whol_stick| whol_stick|of whol_street_is| whol|gang_has whol|joint_slid whoosh_burn|
whoosh_burn|insid who|left_that why_do|not why_it|has why_must| why_that|temperatur why|that_temperatur
will_b_upstair| will_b|an will_b|at will_b|her will_com|out will_forget_thes| will_forget|thes
will_hav_their| will_hav|it will_look|after will_not|bother will_se|you will_stop|at will|DISH_th
will|b_DISH will|b_an will|b_eat will|b_lat will|do_without will|not_bother will|not_light
will|not_mak win_go_in| win_is|on wip|it_$ wireless_say| wireless_say|N:core wis_N:few| wis_N:few|bon
wish_i|had with_a|THING with_m_a| with_mushroom| with_my|work with_th|prep without_DISH|so
without_grill| without_grill|underneath without|m_$ with|DISH_$ with|a_peanut with|know with|m_a
with|m_together with|th_soup with|that_w wonder_how| work_on|it work_th_sam| work_that|is work|in_fahrenheit
would_P|to would_brown| would_brown|it would_go|with would_lik_P| would_lik_an| would_lik_a|
would_n| would_n|a would_you_put| would|b_N:oven would|go_with would|it_b would|never_forgiv
would|sooner would|th_grey would|you_$ would|you_hon would|you_i would|you_say wrap_what_is|
wrist_on_th| wrist_with| wrist_with|th wrong_i_hav| wrong| wrong|button_$ w|ar_N:few w|ar_at
w|ar_b w|ar_feed w|ar_hav w|ar_in w|ar_mak w|ar_miss w|ar_roll w|can_eat w|can_miss w|eat_ok
w|go_again w|hav_it w|hav_reach w|lik w|lik_it w|mak_U w|panick w|panick_and w|settl w|settl_on
w|skip_this w|wait_for w|went w|wer_slow w|will_b year_old_at| year_old|at yes_N:few_of| yes_a|sirloin
yes_i|am yes_i|hav yes_so|it yes|no yet_Nduration| yet_th|oven yet_to|grat you_about_th| you_about|th
you_ar_ahead| you_ar|break you_ar|on you_could|hav you_do| you_giv|m you_help|m you_look|at
you_plan|on you_put|in you_said|what you_spar| you_spar|m you_tell|m you_th_delivery| young|
your|THING_$ you|ar_a you|ar_on you|ar_out you|credit you|credit_it you|do_with you|hear_$
you|mak_do you|mak_m you|say_i you|se_tripl you|se_what you|seen_my you|should_hav you|shov
you|shov_it you|want_th you|watch_for you|will you|would_non yusuf_is| yusuf_is|throat zip_it_for|
|@0.3 |@1.1 |@101.6 |@104 |@105.0 |@116.5 |@121.1 |@121.2 |@125.2 |@133.0 |@140.4 |@15.3 |@23.2
|@24.1 |@30.1 |@32.10 |@34 |@36.4 |@39.1 |@52.2 |@56 |@60 |@67.4 |@70.5 |@83 |@86 |@88 |@88.2
|@90.0 |@90.5 |DISH_and_they |DISH_ar_cook |DISH_ar_off |DISH_as_w |DISH_butter_on |DISH_did
|DISH_for |DISH_go_on |DISH_hav_all |DISH_load_her |DISH_nobody_eat |DISH_per_THING |DISH_roll_$
|DISH_should_i |DISH_so_scratch |DISH_solid_i |DISH_th_roast |DISH_timer_dead |DISH_what |DISH_whil_i
|N:core_N:few |N:core_by_N:few |N:core_from |N:core_from_th |N:core_kindly |N:core_kindly_inform
|N:core_last_i |N:core_lik_Nduration |N:core_roar |N:core_roar_at |N:core_so_N:core |N:core_so_do
|N:core_th_DISH |N:core_ther_is |N:core_up |N:core_up_from |N:core_whil_it |N:core_whil_rest
|N:few_THING_not |N:few_U_is |N:few_calibrat |N:few_calibrat_a |N:few_has_invit |N:few_hav_shown
|N:few_in_this |N:few_minus |N:few_minus_theo |N:few_nobody_is |N:few_sh_has |N:few_short_U
|N:few_small |N:few_so_keep |N:few_surpris |N:few_to_giv |N:few_too |N:oven_DISH |N:oven_Nduration_ago
|N:oven_U_i |N:oven_and |N:oven_can |N:oven_do |N:oven_i_hav |N:oven_sharp_kindly |N:oven_to_N:oven
|N:oven_up |N:oven_up_to |N:oven_wait_for |N:some_hot_so |N:some_hot_turn |N:some_past_with
|N:some_they_ar |N:some_they_hav |Nclock_latest_$ |Nclock_not |Ndegrees:few_after |Ndegrees:few_after_i
|Ndegrees:few_cool_$ |Ndegrees:some |Nduration_N:few_any |Nduration_and_a |Nduration_behind_what
|Nduration_diaper |Nduration_diaper_chang |Nduration_earlier_and |Nduration_earlier_if |Nduration_earlier_th
|Nduration_hav_gon |Nduration_lat |Nduration_later_do |Nduration_later_than |Nduration_no |Nduration_pet_$
|Nduration_so_now |Nduration_start |Nduration_start_th |Nduration_walk |Nduration_walk_th |P_ar_still
|P_b_back |P_back |P_back_in |P_do |P_down |P_is_knock |P_it |P_jud |P_sh |P_so_that |P_up_Nduration
|P_up_i |P_who_is |P_with_P |THING_DISH_instead |THING_N:few_bon |THING_THING_with |THING_at_Ndegrees:core
|THING_behav |THING_behav_itself |THING_cast |THING_cast_iron |THING_check_$ |THING_first_P
|THING_from |THING_gaug |THING_gaug_must |THING_go_$ |THING_in |THING_in_ic |THING_is_beep
|THING_smok_com |THING_speak |THING_speak_celsius |THING_th_P |THING_to_th |THING_went |THING_went_in
|U_at |U_cancell |U_cancell_so |U_h_is |U_sh_has |U_ther_is |a_THING_fan |a_THING_oven |a_U_when
|a_conventional |a_conventional_oven |a_drink_in |a_full_hous |a_grand_piec |a_holler |a_holler_at
|a_hot_oven |a_jar_of |a_lend |a_lend_$ |a_li_down |a_monkey |a_monkey_P |a_must |a_nightmar_for
|a_peanut |a_peanut_allergy |a_r_DISH |a_roar |a_second_$ |a_shellfish_allergy |a_slow |a_thick
|a_thick_grey |a_tick_Nduration |a_topsid_this |a_vegan_com |about_allergy_$ |about_it_is |about_th_guest
|about_that_on |abov_N:core_whil |actual |adult_N:few_P |after_Nduration_to |after_all |after_i_wiggl
|after_this_bit |afternoon_look |ag_Nduration |ag_Nduration_U |ag_and |ag_to |ag_to_heat |again_$
|again_$_$ |again_from_scratch |again_i_was |again_look_N:core |again_thank_heaven |ago_forgot
|ago_forgot_to |ago_i_put |ago_not_N:few |ago_ther_in |ago_what |ago_whil |ago_whil_i |alex
|all_in_coat |all_sit |all_sit_down |all_that_faff |allergic_to_nut |already_got_DISH |am_$
|am_$_$ |am_N:some_behind |am_Nduration_off |am_at_it |am_back_$ |am_back_carry |am_call_DISH
|am_com_$ |am_from_ohio |am_get_N:core |am_lagg |am_lagg_by |am_out_of |am_se |am_slow_today
|am_starv_$ |am_tak |am_talk_to |am_us_a |am_watch_th |am_yet |am_yet_to |and_flam |and_golden_$
|and_kilo_$ |and_never |and_pet |and_sh_still |and_they |and_took |another_Nduration |another_helper
|another_helper_it |anselm |apparently |ar_N:few_cook |ar_N:few_not |ar_N:few_peopl |ar_Nduration_too
|ar_THING_$ |ar_at_N:core |ar_at_it |ar_away_N:some |ar_b |ar_b_N:some |ar_golden_$ |ar_in_b
|ar_in_their |ar_miss_th |ar_my_choic |ar_on_to |ar_roll_DISH |ar_run_lat |ar_sat |ar_sit_down
|ar_sit_too |ar_starv_$ |arm_$ |arm_$_$ |as_i_typ |as_look |as_look_at |as_smell |as_smell_a
|as_tabl |as_tabl_salt |assist_oven |at_N:oven_it |at_N:some_so |at_Nclock_and |at_Ndegrees:core_and
|at_Nduration_$ |at_th_nut |away_and |away_behind |away_behind_th |b_N:core_$ |b_N:some_lat
|b_N:some_person |b_ars |b_at_N:few |b_at_N:oven |b_away |b_away_from |b_careful_with |b_do_with
|b_don_$ |b_faff |b_faff_with |b_found_in |b_her_till |b_in_her |b_mak_th |b_near |b_near_th
|b_pink_$ |b_right_$ |b_right_N:core |b_spoon |b_strain |b_strain_th |b_want |b_water_in |b_worri
|back_in_N:few |bang |bang_on_N:some |bast_timer |been_THING |been_blad |been_blad_tenderis
|been_hit |been_mad |been_on_for |beep_N:core |befor_N:few_so |befor_medium |befor_medium_well
|behind_in_her |behind_it_is |behind_on_th |behind_th |behind_with_th |bell_when |bf |bin_out
|bit_hav |bit_hav_been |bit_of_sirloin |blad |blad_tenderis |blu_enamel |blu_enamel_N:few |board_at_Nclock
|board_onto |board_onto_th |boil_away |bon_skip_th |boss_keep |boss_keep_THING |bother_m |bother_tim
|bother_tim_th |bother_ty |bother_ty_it |bother_with_th |bottom_they |bottom_they_ar |bottom_v
|bottom_v_THING |brak |break_N:core |break_up |breath_ther |breath_ther_is |bring_th |brown_$
|brown_$_$ |brown_yet_leav |bubbl |burn_by_hot |burn_pretty |burn_pretty_bad |burn_to |burnt_$
|burnt_$_$ |burst_figur |burst_figur_Nduration |bus_is |butter_Nduration_and |butter_mad |butter_so_no
|butter_step |buy_THING |buzz_in |buzz_in_Nduration |by_N:few_sh |cak_$ |cak_$_$ |call |cam_out_of
|can_carv_$ |can_manag_it |can_miss |can_miss_that |can_not_put |can_sh_hav |can_stand_in |car
|car_park |carv_yet |cast_iron_$ |cat_has |catch_that_th |centr_it |centr_it_is |chair_and_th
|charger_$ |charger_$_$ |chemo |chill_th_butter |chok |chok_on_a |christma_$ |christma_$_$
|clock_i |clock_i_am |clock_so |clock_so_i |club_roast |club_roast_Nweight |coeliac_$ |coeliac_$_$
|cold_insid |com_back_to |com_sh_got |com_so_N:few |conventional_oven |conventional_oven_no
|cop_i |cor_is_at |corn_on |corn_on_th |cornbread |cornbread_go |cours |cover_in |cover_it_whil
|cream_as |cream_as_well |cream_i |credit |credit_it |crumbl |cupboard_$ |cupboard_$_$ |curdl
|cut_it_now |cut_off |d'you |dark_and |day_N:few_tim |degre_c_$ |degre_celsius |degre_for |degre_in_fahrenheit
|delay_so_let |did_not_turn |did_th_THING |dinner_N:oven_$ |dinner_b_at |dinner_if |dinner_if_you
|dinner_sorry |dinner_tim_is |dinner_tim_they |do_about_it |do_anyth_$ |do_i_n |do_leftover_keep
|do_not_get |do_roll |do_th_afternoon |do_this_th |do_with_DISH |do_without_th |dog_THING |dog_THING_th
|don |don_for_P |don_no_pink |don_yet_$ |door_N:few |door_for_Nduration |door_of_th |door_open_$
|door_open_Nduration |down_a_smidg |down_for_medium |down_in_Nduration |down_th_shop |down_yet_$
|drip |driv_m_THING |driv_that |driv_that_is |dry |dry_THING |dun |earlier_$ |earlier_$_$ |earlier_Nduration
|earlier_and |earth_do_N:few |eat_Ndate_at |eat_a_bit |eat_ok |end_keep |end_keep_her |end_of_th
|enough_out |enough_out_of |error |even_start |even_touch |even_touch_th |everyth_for_N:some
|ex_is |extra_Nduration |extra_peopl |fahrenheit_giv |fahrenheit_giv_it |fan_$ |fan_$_$ |fan_assist_can
|fan_off_so |fan_set |fancy_som |fancy_som_roast |far_and |far_behind |fella_is_her |fetch_th_P
|fewer |finger_with |finger_with_th |finish_roast |finish_shop |first_then_down |fit_both |flam_at
|flam_at_all |floor_sh |for_DISH_duty |for_Nduration_diaper |for_a_bath |for_dinner_sorry |for_medium_well
|for_my |for_th_DISH |for_th_THING |for_th_light |for_us_Nduration |forget_that |forgotten_$
|forgotten_$_$ |found_in |found_in_this |fre_from_N:few |freezer_so |freezer_so_cross |from_N:core_last
|from_bottom |from_rugby_tagg |front_room |fus_and |fus_and_th |gam_start |gam_start_at |gang_has
|gang_has_land |gang_is_all |get_N:core_$ |get_dress |get_dress_giv |get_for_N:few |get_ic
|get_on_$ |get_past_N:core |get_up_$ |giv_daft |giv_daft_number |giv_it_m |given_up_it |glov_is
|glov_is_burn |go_at_it |go_in_as |go_in_now |go_out_for |go_to_church |go_to_pick |go_wrong_$
|god_bless_them |god_it_has |golden_$ |golden_$_$ |gon_Nclock |gon_U |gon_cold_$ |gon_cold_on
|gon_everywher |gon_i |gon_in_$ |gon_inverter |gon_inverter_run |gon_lumpy |gon_ston |gon_ston_cold
|good_N:some_lat |got_Nduration |got_a_DISH |got_an |got_is_a |got_their_coat |got_tim |got_tim_for
|grab_th_pan |grac_of |grac_of_god |grand |grat_it |greas_and_can |green_DISH_my |guest_ar_run
|guest_is_already |h_will_b |had_N:some |had_a_fat |had_no_DISH |handl_it |handl_it_was |hang_open_$
|happen_if |happen_when |harriet |has_been_rest |has_been_shov |has_been_sit |has_com_up |hav_DISH_with
|hav_a_N:core |hav_a_fan |hav_a_leave-in |hav_a_r |hav_any_DISH |hav_ask_could |hav_been_N:few
|hav_begun_peel |hav_drop_th |hav_eas |hav_eas_th |hav_gon_and |hav_got_Nduration |hav_got_THING
|hav_got_th |hav_got_their |hav_had_N:few |hav_haul |hav_haul_th |hav_hit |hav_hoick |hav_hoick_th
|hav_it_later |hav_kept_at |hav_left_U |hav_overcook |hav_overcook_it |hav_peel |hav_plenty_of
|hav_put_at |hav_reach_som |hav_remov |hav_rop |hav_rop_in |hav_rub |hav_slip_sorry |hav_th_THING
|hav_truss |hav_truss_th |hear_th |heard_you |heat_is_out |heat_out |held_up_i |help_in_THING
|help_m_with |helper_it |helper_it_is |hen_Nduration |her_N:few_still |her_U_my |her_anyth
|her_anyth_underdon |her_at_N:core |her_medium |her_rar_cold |her_steady |his_N:core |his_THING
|his_medium |his_warm |hit_N:core_i |hit_by |hit_by_a |hoick |hoick_th |hoick_th_THING |hom_that
|hom_that_is |homeless_shelter |hot_turn |hot_turn_out |hotter_than_sh |hous_now |how_long_it
|how_many_gram |how_many_minut |i_allow_to |i_am_back |i_am_i |i_am_lat |i_am_on |i_b_do |i_behind_or
|i_could_us |i_cut_$ |i_cut_it |i_fetch_P |i_find |i_find_th |i_got_$ |i_hav_been |i_hav_never
|i_look |i_look_at |i_miss_for |i_said_that |i_tell |i_ti_it |i_was_lay |i_wrangl |i_wrangl_th
|ic_cream |if_h_so |if_that_matter |if_you |ignatius |ill_b_a |in_DISH_powder |in_N:some_and
|in_N:some_for |in_THING_N:few |in_a_glass |in_at_N:some |in_beer |in_beer_is |in_early |in_early_so
|in_green |in_green_DISH |in_i_forgot |in_metric_so |in_som_mac |in_som_roll |in_th_thick |in_their_chair
|in_their_coat |in_ther_i |in_too_long |in_troubl |in_troubl_$ |in_wer |in_wer_back |in_yet_do
|inch_as |inch_as_instruct |insid_when_i |instead_of |instead_of_N:few |into_it_and |into_my_palm
|intolerant_$ |intolerant_$_$ |is_N:few_her |is_N:few_to |is_N:oven_in |is_Ndegrees:core_in
|is_Ndegrees:some_shy |is_Nduration_later |is_THING_anyth |is_a_N:few |is_a_P |is_a_cold |is_a_greas
|is_a_nightmar |is_a_proper |is_act_weird |is_alight_$ |is_all_carv |is_arm |is_arm_is |is_brought
|is_burn_by |is_chok_$ |is_cook_to |is_delay_so |is_doabl |is_down_at |is_enough_out |is_expect_$
|is_finish_shop |is_go_$ |is_go_on |is_heat_no |is_in_a |is_in_between |is_keel |is_keel_over
|is_left_and |is_lik_bonfir |is_look_so |is_m_$ |is_m_don |is_my_roommat |is_not_what |is_on_Ngas-mark
|is_on_now |is_out_N:core |is_out_th |is_overdon |is_pain_too |is_peel_th |is_preheat_to |is_rest_on
|is_right_U |is_sat_at |is_serv_$ |is_sh_cut |is_show_Ndegrees:core |is_sleep_in |is_smok_com
|is_smok_in |is_still_DISH |is_still_raw |is_tak_over |is_th_U |is_th_reason |is_th_schedul
|is_to_b |is_turn_up |is_what_th |is_when_it |is_whol_noth |is_wrong_$ |is_your_lot |it_N:few_instead
|it_Nduration_later |it_Nduration_sooner |it_a_rest |it_after_all |it_all_in |it_claim_$ |it_down_and
|it_down_i |it_down_yet |it_dry_$ |it_finish_$ |it_go |it_go_U |it_halfway_$ |it_lumpy_$ |it_m_in
|it_mak_it |it_meant |it_meant_to |it_medium_instead |it_medium_well |it_out_befor |it_rar_lik
|it_reach |it_reach_N:core |it_rib |it_rib_no |it_should_$ |it_sit_out |it_smell |it_suppos
|it_th_night |it_tim_to |it_up_front |it_with_$ |it_writ |jean |joint |joint_slid_off |jump_all
|jump_all_over |keep_go |kerry_crowd |kill_m |know_celsius |know_how_long |know_if_this |know_in
|know_in_Nduration |know_what_i |know_when_w |label_say_Nweight |lactos_intolerant_$ |lad |lad_hav
|lad_touch |lad_touch_th |land |last |last_bit_$ |last_entry_by |last_low |last_low_flam |last_of_them
|last_th_$ |lat_Nduration_$ |lat_again |lat_get |lat_on_my |later_do |law_do |least_$ |least_$_$
|leave-in_THING_$ |left_th_build |left_that_door |leg |lend_$ |lend_$_$ |let_it_slip |lik |lik_bonfir
|lik_bonfir_night |lik_this |list_nobody |littl_guy |liv_room |long_can_it |long_can_th |long_hav_th
|long_left |long_left_$ |long_till_th |long_w_got |longer_they |lost_electricity |lost_track_of
|loud_i |loud_i_am |lower_it_to |lowest_it |lumpy_as |m_$ |m_$_$ |m_N:few_$ |m_Nduration_on
|m_a_mo |m_at_Nduration |m_don_$ |m_for_Nduration |m_know_when |m_otherwis_do |m_th_shop |m_together
|m_what_to |m_with_th |m_yes |m_yes_$ |mad_and_it |mad_peac |mad_peac_put |mak_U_a |mak_chemo
|mak_chemo_h |mak_much |mak_much_smok |many_DISH_per |many_THING_of |many_ar |many_minut_till
|mass_back |mass_back_in |mat_$ |mat_$_$ |mat_unannounc |mean_not |meant_for |meant_for_you
|medium_rar_and |menu_tonight |metric_so_weight |metric_system |metric_system_for |middl_i
|mil_Nduration |minc |mind_get |mind_get_rid |minut_how |missus_and |mistak_i |mistak_i_hav
|money_fahrenheit |monkey_P |mor_$ |mor_$_$ |mor_will |mov_to_N:few |much_as |much_longer_do
|much_out |much_out_her |much_salt_go |much_salt_in |must_b_bust |my_finger_it |my_helper |my_knuckl
|my_palm_try |my_roommat_dev |myself_think_$ |n_another_Nduration |n_for_N:few |n_heat |n_it_$
|n_to_bath |nagg_it |nagg_it_is |near_enough_to |near_shellfish |near_th_oven |neck_$ |neck_$_$
|net_$ |net_$_$ |never_forgiv |never_forgiv_m |new_P_so |next_door_$ |next_step_my |nic_U_i
|no_blender |no_blood |no_longer_in |no_pink_for |no_sear_$ |no_second_oven |no_wait_what |nois_$
|nois_$_$ |not_P_open |not_a_v |not_answer |not_any_THING |not_availabl |not_b_do |not_bother_m
|not_breath_ther |not_brown_enough |not_clos_full |not_com_on |not_do_gluten |not_don_it |not_eat_it
|not_even_preheat |not_even_risen |not_find_a |not_finish_scrap |not_for_you |not_get_a |not_get_up
|not_got_THING |not_hav_a |not_hav_it |not_hear_$ |not_hear_myself |not_heat_$ |not_heat_at
|not_i_ask |not_let_th |not_talk_for |not_turn_it |notion_how |now_at_N:few |now_at_Ndegrees:core
|number |number_has |number_of |number_of_guest |nut |of_DISH_butter |of_DISH_do |of_N:oven_is
|of_crackl |of_cream_$ |of_cream_enough |of_guest_to |of_m_i |of_now |of_plan_w |of_rib_roast
|of_th_cream |of_th_other |of_us_now |of_us_this |of_water_in |of_whatever |of_whatever_you
|of_win_$ |off_at_N:few |off_conventional_heat |off_do |off_gluten |off_now_$ |off_on_m |off_schedul_$
|off_sinc |off_so_no |off_th_guest |off_th_timer |off_to_collect |oil |oil_$ |oil_$_$ |on_N:core_now
|on_N:few_peopl |on_N:some_at |on_a_few |on_back |on_blood |on_blood_thinner |on_let |on_let_m
|on_my |on_th_floor |on_th_grocery |on_th_leave-in |on_th_trivet |on_tonight_Nclock |on_your_own
|onc_and_i |open_Nduration_$ |or_no |or_so |or_th |other_oven_$ |otherwis_so |otherwis_so_buzz
|our |our_whol |our_whol_street |out_$ |out_$_$ |out_N:oven_so |out_Nduration_i |out_at_N:oven
|out_god |out_god_it |out_her_and |out_now_get |out_ther_is |outsid_befor |outsid_befor_Nduration
|oven_Ngas-mark |oven_and_th |oven_at_N:some |oven_b_at |oven_clock |oven_clock_is |oven_floor_$
|oven_from_N:oven |oven_hurt |oven_hurt_much |oven_i |oven_shelf |oven_yet_$ |over_is_that
|pac_with |pac_with_your |pain_too |pain_too_much |pan_my |pan_my_THING |pan_what |panick_and
|panick_and_took |parish |part_N:core_$ |party |pass_out_on |past_N:core_by |past_N:core_i
|past_it_$ |past_well_dry |past_with |past_with_th |peac |peel_th_DISH |peopl_drop |peopl_drop_out
|pet_ar |pet_ar_split |pink_would_it |plac_of_th |plan_N:few_it |plat_at_th |plenty_without
|plenty_without_th |poison_P |poison_P_$ |pound_kilo |pour_th_boil |practic_that |practic_that_is
|prepon_by |prepon_by_Nduration |press_th_wrong |proper_rar |proper_rar_roast |pull_tim |pull_tim_how
|put_THING_over |quantity_of |quick_on_got |r_THING_th |rar_and_b |rar_sam |rar_sam_for |reach_N:core_$
|ready_by_N:oven |real_THING |real_THING_$ |reason_w_ar |remov_th |remov_th_THING |rest_do_not
|rest_will_you |restaurant |right_sod |right_sod_it |right_through |risen |roast_ballpark |roast_ballpark_$
|roast_in_a |rock_THING |rock_and |rock_up_already |roll_$ |roll_$_$ |roll_timer_$ |rough_up_in
|rugby_tagg |rugby_tagg_along |run_$ |run_$_$ |run_N:some |rung_they |rung_they_ar |saf_to_DISH
|said_and |said_it_wrong |salt_do_i |sat_THING |sat_at_N:core |sat_down_$ |sat_on_a |sat_on_th
|say_N:core_$ |say_N:oven_U |say_to_you |schedul_and_th |school_night |scor_th |scor_th_fat
|screen_by |screen_by_th |se_th_timelin |se_to_th |se_tripl |se_tripl_digit |se_what |sea_$
|sea_$_$ |second_it_touch |serv_at_N:few |set_at_N:oven |settl_on |sh_is_a |shelf_from |shelf_from_th
|shift_$ |shift_$_$ |shop_is |should_b_medium |should_hav_seen |shout_when_sh |shown_his |shown_his_fac
|shown_up |shy |sid_fewer |sid_fewer_los |sit_too |sitter_hom |sitter_hom_that |sleep_in |sleep_in_th
|slid |slip_and_half |slow_chopper |smok_someth |smok_someth_U |so_careful |so_careful_with
|sooner_P |sooner_than_plan |sort_on |sort_on_that |sous |speak |sprig_of |sprig_of_DISH |stair
|start_to_finish |starv_let |starv_let_us |station_Nduration |stay_hom |steak_medium |steak_medium_rar
|step_my_THING |stick_thos |still_b_pink |still_raw_insid |still_squeaky_they |still_walk |still_walk_$
|stood_at |stor_Nduration |stor_back |stor_back_in |sunk |supper_Nduration |swap_THING |swap_in
|swap_in_DISH |swell_up_$ |swor_by |swor_by_rar |tabl_fork |tabl_it |tabl_it_is |tabl_salt_$
|tabl_tonight_$ |tabl_wait |tabl_yusuf |tail |tail_$ |tail_$_$ |tak_THING_at |tak_out |tak_over_at
|tak_th_first |tak_this_phon |taken_th_oven |talk_i |talk_i_hav |teenager_hav |teenager_hav_volunteer
|th_DISH_cover |th_DISH_my |th_N:few_P |th_Ndate |th_THING_U |th_THING_for |th_THING_must |th_THING_right
|th_U_U |th_back_a |th_basket_$ |th_bird_wer |th_board_U |th_board_under |th_board_with |th_boil_water
|th_bon_N:core |th_bottom_and |th_bottom_they |th_button_$ |th_center_when |th_counter_$ |th_day_N:few
|th_door_so |th_end_not |th_fat_and |th_finger_on |th_floor_i |th_french_$ |th_fridg_Nduration
|th_go_with |th_handl_it |th_high_heat |th_hous_and |th_hous_so |th_lot_w |th_metric |th_metric_system
|th_middl_even |th_next_Nduration |th_next_hour |th_oven_hurt |th_prawn |th_remot_$ |th_road_Nduration
|th_run_Ndegrees:some |th_show_on |th_start_$ |th_stor_back |th_str_in |th_supermarket_$ |th_target_again
|th_til_$ |th_timer_and |th_trim_part |than_plan_h |than_real |that_Nclock |that_Nduration_i
|that_is_doabl |that_is_join |that_pal |that_pal_$ |that_phon_call |that_temperatur_$ |that_w_hav
|that_your |their_coat_off |their_mind_back |them_again |them_can |them_i |them_is |them_on_th
|themselv_so |then_after |then_after_that |then_sh |thes_otherwis |thes_otherwis_so |they_ar_golden
|they_tell |thick_bit |thick_end_$ |thick_grey |thick_of |thick_part |thickest_bit_$ |this_bit_$
|this_is_right |thought_th |throat_swell |through_so_you |through_th_day |through_what |through_what_is
|tim |tim_do_th |tim_in_th |timer_and_th |timer_any_mor |timer_anymor_$ |timer_can_go |timer_which
|timer_which_i |tip_of |tip_of_my |to_N:few_for |to_N:oven_sinc |to_THING_up |to_arriv |to_b_N:few
|to_b_careful |to_b_insid |to_b_smok |to_bath |to_bath_th |to_br_my |to_check_DISH |to_coat
|to_coat_a |to_collect |to_com_out |to_eat_Nduration |to_eat_at |to_f_god |to_fahrenheit_$
|to_fetch_th |to_get_a |to_get_dress |to_mak_a |to_my_THING |to_n |to_nadia |to_nadia_sh |to_se_to
|to_shellfish |to_tak_m |to_th_trim |to_work_so |tonight_Nclock |tonight_besid |tonight_besid_th
|top_THING_i |top_off_my |topsid_this |topsid_this_year |touch_Ndegrees:core |touch_raw |touch_raw_THING
|treat_$ |treat_$_$ |trick_with |trim_it |trust_$ |trust_$_$ |truth_$ |truth_$_$ |turn_up_and
|turn_up_th |twic_what |twic_what_you |under_th |under_what_it |unless_it |unless_it_is |up_a_spell
|up_early_$ |up_i_am |up_next |up_on_m |up_right_at |up_to_N:few |us_DISH_$ |us_THING_$ |us_a_yell
|us_aim |us_aim_for |us_at_N:few |us_in_th |us_now |usual_$ |usual_$_$ |vegetarian_no |w_ar_mak
|w_get_on |w_got_$ |w_hold |w_long |w_long_off |w_ok_for |w_sear |w_sear_it |w_wer_slow |w_will_se
|w_would_b |want_to_do |warm_oven |was_N:core_Nduration |was_N:core_and |was_Nduration |was_talk
|was_talk_to |wash_th_board |watch_for_Ndegrees:core |water_down_my |way_is_th |way_no |we_on_is
|welcom |well_b |well_b_eat |well_th_rest |well_w_say |went_in_$ |went_off_so |went_on_th |wer_back
|wer_back_in |wer_drop |wer_drop_it |wer_slow |wer_w_$ |what_$ |what_$_$ |what_DISH |what_U
|what_is_happen |what_w_want |whatever_you_set |when_you |wher_to |which_th |whil_i_am |whil_i_nap
|whisk_and |who_do |who_is_com |who_is_eat |whol_th_back |wifi_password |will_DISH_th |will_b_gon
|will_b_hav |will_b_in |will_b_th |will_carv_$ |will_do_without |will_giv_th |will_hav_roast
|will_mind |will_mind_it |will_not_go |will_serv |will_serv_it |will_sit_down |will_stop_at
|will_want_it |will_y |win_P |wis_medium |wis_medium_for |with_DISH |with_a_peanut |with_a_thumb
|with_th |with_you_for |word_of |work_again_$ |would_b_a |would_happen_if |would_lik_to |would_never_forgiv
|would_non |would_non_of |would_quit |would_quit_lik |would_ya |wrist_with |wrist_with_th |yet_Nduration_i
|yet_to |you_DISH_th |you_ask |you_can_$ |you_check |you_hon |you_hon_$ |you_lik_$ |you_mind
|you_n_m |you_pay |you_pay_for |you_plan_on |you_remember |you_shov |you_shov_it |you_stretch
|you_stretch_it |you_tell |you_th_DISH |you_th_wrong |you_would_non |yusuf_mak |yusuf_mak_a
-7 #after2 #before2 @10.6| @111.6| @115.2| @119.6| @126| @127| @128.2| @13.7| @139.3| @13|
@141.3| @148.7| @20.1| @22.3| @24.3| @32.12| @33.1| @35.2| @38.2| @39.1| @4.6| @42.2| @44.1|
@4| @58.0| @59.5| @72| @79| @85.0| @87| DISH_DISH_P| DISH_DISH_all| DISH_DISH_for| DISH_DISH_went|
DISH_P| DISH_P|it DISH_all|over DISH_ar_peel| DISH_ar_want| DISH_ar|a DISH_ar|in DISH_ar|out
DISH_butter_hav| DISH_cook_so| DISH_crisp_as| DISH_for|a DISH_for|us DISH_giv|m DISH_go| DISH_how|long
DISH_how|much DISH_into| DISH_into|th DISH_in|th DISH_is|cut DISH_is|mix DISH_is|on DISH_is|simmer
DISH_it_as| DISH_n_to| DISH_no_off| DISH_nobody|eat DISH_n|longer DISH_n|to DISH_snap_and|
DISH_so_do| DISH_so_that| DISH_solid|i DISH_still_U| DISH_still|U DISH_then| DISH_they|ar DISH_th|hous
DISH_till|Nclock DISH_went|cold DISH_went|on DISH|anymor_$ DISH|b DISH|boat_is DISH|bubbl DISH|butter_don
DISH|butter_mad DISH|cover DISH|drain DISH|each DISH|halv DISH|i DISH|my_P DISH|on DISH|per
DISH|powder_it DISH|should_i DISH|so_that DISH|th_roast DISH|us_$ DISH|yet_$ N:core_DISH_ar|
N:core_and_how| N:core_and|climb N:core_by|Nclock N:core_by|th N:core_call_loud| N:core_dead|centr
N:core_from_th| N:core_i_will| N:core_i_would| N:core_is|my N:core_it_reckon| N:core_it|reckon
N:core_i|can N:core_should|i N:core_so_do| N:core_ther|is N:core_well_ill| N:core_when|w N:core_when|you
N:core_whil|rest N:core_whil|w N:core|by_th N:core|do_not N:core|i N:core|it_is N:core|not
N:few_DISH|N:few N:few_Nweight| N:few_U_and| N:few_U_it| N:few_U_of| N:few_and_sh| N:few_and_that|
N:few_and|N:few N:few_and|a N:few_any| N:few_any|mor N:few_blam_th| N:few_box| N:few_coeliac|my
N:few_grown|ups N:few_has|a N:few_hav_turn| N:few_less_for| N:few_month| N:few_mor_person|
N:few_mor| N:few_mor|for N:few_mouth_to| N:few_niec| N:few_niec|volunteer N:few_of|them N:few_out|
N:few_person_will| N:few_temperatur| N:few_then| N:few_too|much N:few_what|happen N:few|P N:few|P_and
N:few|burner_on N:few|high_in N:few|instead_$ N:few|month_along N:few|mor_ar N:few|mor_com
N:few|mor_for N:few|nobody N:few|plac_and N:few|year_old N:oven_alway_N:some| N:oven_how|long
N:oven_instead_of| N:oven_is|what N:oven_lik|you N:oven_wait|for N:oven|for N:oven|in_th N:oven|sharp_kindly
N:oven|with N:some_near| N:some_near|th N:some_so|it N:some_they|hav N:some|hot_so N:some|lat_with
N:some|over_th Nclock_U_it| Nclock_and|how Nclock_it|stood Nclock_now| Nclock_on| Nclock_w|will
Nclock|i Nclock|not Nclock|would_it Ndate_roast_Ndate| Ndate|Nclock_and Ndegrees:core_is|what
Ndegrees:core_let_m| Ndegrees:few_too|much Ndegrees:few|too_high Ndegrees:few|under_th Ndegrees:some_cooler|
Ndegrees:some_cooler|than Ndegrees:some_hotter| Ndegrees:some_hotter|than Ndegrees:some|under_what
Nduration_N:core| Nduration_N:few_any| Nduration_and|my Nduration_and|then Nduration_break_i|
Nduration_earlier_than| Nduration_how_long| Nduration_is|that Nduration_i|was Nduration_i|will
Nduration_lat_that| Nduration_now_i| Nduration_now|i Nduration_start|th Nduration_tell|m Nduration_till|serv
Nduration_to_th| Nduration_to|a Nduration_to|check Nduration|ago_when Nduration|down_on Nduration|earlier_$
Nduration|earlier_th Nduration|lat_get Nduration|lat_what Nduration|later_preacher Nduration|sooner_P
Nduration|then Nweight_not|N:some Nweight_or| Nweight_or|thereabout Nweight_very_THING| P_U_swell|
P_U| P_ar_set| P_ar|in P_ar|join P_ar|still P_by| P_can|not P_eat|at P_els| P_fay_is| P_from_th|
P_from|th P_has_had| P_has|fallen P_haul| P_haul|it P_is_at| P_is_pur| P_is_sat| P_is_taken|
P_is|allergic P_is|asleep P_is|bring P_is|hurt P_is|sat P_i|do P_ottolin| P_ottolin|is P_simpl_as|
P_sit|down P_so_that| P_swor| P_swor|by P_want_dinner| P_want|his P_want|supper P_will|b P|do
P|is_P P|open_that P|still P|up_i THING_DISH_is| THING_N:core_by| THING_Nweight_on| THING_THING_her|
THING_THING_whol| THING_THING_would| THING_THING|N:core THING_THING|THING THING_THING|whol
THING_along|by THING_and|a THING_and|ther THING_a|joint THING_a|moment THING_do|celsius THING_fell|on
THING_for| THING_for|DISH THING_from|oven THING_gaug_must| THING_giv_m| THING_has|been THING_has|gon
THING_hav|not THING_hop_that| THING_how|many THING_is_say| THING_is|alway THING_is|at THING_is|leak
THING_is|lik THING_is|load THING_is|off THING_it|in THING_leg_with| THING_leg| THING_m_th|
THING_now| THING_number|say THING_of_DISH| THING_of|water THING_on_my| THING_sh|is THING_solo|
THING_solo|now THING_so|it THING_splash| THING_stuck_in| THING_stuck|in THING_tell|m THING_th_lad|
THING_th_quick| THING_that| THING_they|ar THING_up_U| THING_went|in THING_without|grill THING|DISH_is
THING|Ndegrees:few_too THING|a_roast THING|enamel_THING THING|for_DISH THING|has_com THING|it_say
THING|piec_w THING|so_th THING|sorry_$ THING|till_th U_THING_without| U_and|U U_and|th U_for_m|
U_for|m U_has_got| U_h|is U_insid| U_is_knock| U_i|mean U_mak|DISH U_my_god| U_my|back U_of_her|
U_sh|is U_swell| U_swell|up U_will|not U|U U|and_DISH U|cancell U|get U|is_her U|it ^_DISH_how|
^_N:core|and ^_N:few_i| ^_N:few|of ^_N:some_i| ^_N:some|and ^_Nduration_from| ^_Nduration|sinc
^_Nweight_and| ^_P_and| ^_P_eat| ^_P_jim| ^_P|has ^_P|is ^_P|want ^_THING_number| ^_THING|at
^_U_want| ^_U|it ^_U|that ^_^_boneless| ^_^_bum| ^_^_cor| ^_^_hav| ^_^_kick| ^_^_kill| ^_^_light|
^_^_los| ^_^_na| ^_^_not| ^_^_peak| ^_^_rub| ^_^_sir| ^_^_smok| ^_^_swed| ^_^_wak| ^_^_want|
^_aim|for ^_an_extra| ^_and_it| ^_and_now| ^_a|THING ^_a|bit ^_boneless| ^_bon|off ^_bump_it|
^_bum| ^_burn_my| ^_burnt_my| ^_call|off ^_can|b ^_can|not ^_chuck|an ^_com_up| ^_convert|th
^_cor| ^_cor|has ^_count_m| ^_crank_it| ^_cut_my| ^_degre|c ^_delay_it| ^_dial|is ^_dial|say
^_door_did| ^_door|was ^_drop_to| ^_electricity_is| ^_electricity|has ^_everyth|tak ^_fat|is
^_flip|th ^_forget|what ^_found|out ^_fyi_this| ^_gi|m ^_go_upstair| ^_got_it| ^_got_to| ^_got|a
^_got|th ^_got|that ^_go|on ^_go|upstair ^_half_of| ^_hav| ^_help_ther| ^_her_lip| ^_himself|is
^_hit|m ^_holler|when ^_how|is ^_how|lat ^_i_grab| ^_i_took| ^_if|th ^_if|you ^_in_with| ^_internal_temperatur|
^_in|a ^_is|not ^_it_should| ^_it|say ^_it|went ^_i|cut ^_i|go ^_i|left ^_i|lower ^_i|said
^_i|shall ^_i|think ^_i|told ^_kick| ^_kick|off ^_kill| ^_kill|th ^_let|it ^_let|m ^_lift|it
^_light| ^_littl_lad| ^_los| ^_los|th ^_mak|that ^_middl_shelf| ^_middl|of ^_mov_on| ^_my|boss
^_my|lot ^_my|roommat ^_na| ^_nip_to| ^_no_U| ^_non_of| ^_not_befor| ^_not| ^_not|yet ^_no|P
^_n|to ^_ok_turn| ^_ok_what| ^_out|of ^_oven_set| ^_peak| ^_peak|at ^_pink_in| ^_pip|down ^_plus|N:few
^_priya_can| ^_pull|for ^_put|th ^_put|that ^_remind|m ^_remov_th| ^_roast_cam| ^_rub| ^_run_next|
^_run|lat ^_run|next ^_ruth_can| ^_sam_as| ^_say|N:core ^_scald_my| ^_set|an ^_set|to ^_sh_can|
^_sh_has| ^_sh_will| ^_shoot_that| ^_shoot_ther| ^_shoot|that ^_shov|dinner ^_sh|can ^_sir|
^_smok| ^_so_they| ^_someth|is ^_soup|go ^_stand|rib ^_steady|heat ^_step_away| ^_stick|som
^_still_hav| ^_still_work| ^_strik|th ^_strik|that ^_supper_is| ^_swed| ^_swed|is ^_tak_that|
^_tak|N:few ^_tak|out ^_tell|your ^_th_gang| ^_that_will| ^_that|number ^_ther_has| ^_ther_will|
^_they|rang ^_third_and| ^_th|leave-in ^_th|number ^_th|train ^_timer|for ^_tom_can| ^_too|much
^_train|is ^_undo|that ^_w_sit| ^_wak| ^_want| ^_want|to ^_whack_it| ^_what_quantity| ^_what|about
^_what|ar ^_what|is ^_what|temperatur ^_what|way ^_when|it ^_wher|would ^_which|timer ^_why|do
^_will|th ^_win|is ^_with|DISH ^_would|it ^_w|din ^_w|n ^_w|will ^_yer|man ^_you|n a_Nweight|forerib
a_THING_will| a_THING|and a_THING|cast a_U_when| a_bell_when| a_bit_off| a_bit|Nduration a_few_roast|
a_fir_in| a_gas_oven| a_jar_of| a_joint|of a_proper_THING| a_set_for| a_th_N:few| a_thumb_and|
a_v| a_v|THING about_th|oven about|allergy_$ about|th_oven about|to_cry abov|N:core_whil after_Nduration_to|
after_go|up after_it| after_th|break ag_to|heat again_i_had| against_th|bon again|i ago_and|i
ago_ther_in| ago|it aim|to_eat all_gon_ston| all_my|stuff all_of|them all_taken_their| allergic_to|DISH
allergy_at| allergy_at|th all|gon_ston all|i_hav all|right_or all|sat_down all|taken all|taken_their
along|by along|by_N:some already|carv_$ alway_N:some|over alway|did_$ am_Nduration|lat am_THING_solo|
am_about| am_about|to am_back_carry| am_from|ohio am_get_full| am_hav|a am_i_go| am_i|do am_i|yank
am_not_touch| am_off|to am_on|my am_out|of am_put_th| am_run|a am_skip|th am_sorry_to| am_so|behind
am_stood| am_talk_to| am_us_a| am_watch|th am|about am|about_to am|drown_her am|get_lat am|i_aim
am|i_ok am|i_poison am|miss_th am|not_her am|on_my am|out_till am|run_Nduration am|slow_today
am|stay am|stay_put am|stood am|suppos am|suppos_to am|watch_th am|way am|way_behind an_extra|pair
and_DISH_hav| and_N:few|bon and_N:few|of and_P_hav| and_P|has and_a|bit and_cancel_th| and_down|
and_eat|at and_hit_my| and_how_ar| and_how|much and_h|go and_h|is and_if_i| and_it|go and_i|want
and_knock| and_roll| and_rough| and_rough|up and_set| and_th_lik| and_that_ar| and_that|ar
and_then|after and_they|ar and_th|cooker and_took|it and_turn|it and_turn|th and_wher_do| and_who|is
and|DISH_for and|DISH_too and|THING_and and|climb_$ and|flam_behind and|go_to and|hit_my and|net
and|ounc and|pound and|roll_N:few and|spit and|ti_them and|took_it and|tuck_in another_Nduration|befor
another_whil_they| another|N:few_so another|helper another|helper_it another|pair another|pair_of
any_other|way anyth_i_ought| any|mor_$ any|sav an|THING_on an|alarm_in aoif| app|is app|is_lost
ar_N:few|not ar_Nduration_lat| ar_Nduration_too| ar_all|sat ar_at|N:oven ar_bang|on ar_in_their|
ar_kill|m ar_miss_th| ar_no|way ar_on_to| ar_peel_and| ar_set| ar_set|th ar_still|rock ar_still|squeaky
ar_w_hav| ar_w_nearly| ar_want_a| ar_want|a around_to| around_to|th ar|Nduration_off ar|all_at
ar|all_sit ar|burnt_at ar|com_than ar|expect_N:some ar|go_in ar|her_N:few ar|her_so ar|her_th
ar|in_and ar|in_it ar|in_th ar|metric ar|metric_peopl ar|on_th ar|past ar|run_Nduration ar|still_swim
ar|th_run ar|ther_special as_a|bon as_long| as_of|now as_smell| as_smell|a ask_could_it| ask|about_allergy
as|a_bon as|old_boot as|smell as|smell_a as|you_said at_N:core|so at_N:few_N:few| at_N:some_in|
at_Nclock_they| at_Nclock|N:some at_Nclock|sh at_all|it at_half|past at_how|many at_onc_and|
at_som| at_th_colour| at_th|end at|N:some_in at|N:some_so at|Nclock_w at|Ndegrees:core_and
at|again at|again_$ at|it_now at|my_ex at|th_door at|th_pub away_out_to| away_till| away_till|N:few
away_to_get| away_to|get away_to|th away|till_N:few a|Nweight_forerib a|THING_$ a|THING_cast
a|THING_oven a|THING_with a|bell_when a|bit_cold a|bit_longer a|boneless_THING a|bonfir a|chair
a|cut_board a|drink_in a|faff a|fan_assist a|final a|full_hous a|gas_oven a|go_at a|good_Ndegrees:some
a|good_un a|grand a|hot_finish a|jar_of a|joint_of a|loaf_$ a|look_Nduration a|moment_$ a|pinch
a|plat_$ a|pregnant_woman a|roar_when a|rump a|smidg_to a|smok a|sprig a|tad_earlier a|tick_Nduration
b_N:few| b_N:some| b_at_Nclock| b_careful_with| b_do|now b_drink| b_drink|in b_found_in| b_f|by
b_go_for| b_if|i b_right|N:core b_r|insid back_N:some|th back_Nduration_traffic| back_a|tick
back_carry| back_carry|on back_that|last back|Nduration_traffic back|by_N:some bark_at| bark_at|m
bark| bark|at bark|at_m bast|back_in bath_can_you| bathroom| been_cut_off| been_hit_by| been_hit|by
been_in|for been_on_for| been_out| been_sat|out been|at_th been|brais been|brais_Nduration
been|in been|in_Nduration been|open_this been|put_in been|sat beep_after| beep_after|Nduration
beer_is| beer_is|open befor_N:few_so| begin|with_$ begun_it_smell| begun_peel| begun_peel|th
behind_or_am| behind_or|am behind_th|cooker behind|P believ|it_$ bell_when|sh between| birthday|to
birthday|to_you bit_hav| bit_hav|been bit_of|a bit|Nduration bit|hav bit|hav_been bit|of_a
bit|of_sirloin bit|sooner bit|sooner_Nduration blad|tenderis_by blam_th|in blast_it_at| bless|him
blister_carry_on| blister_carry| blister_carry|on blunt_DISH_THING| boil_and_rough| boil|DISH
boil|water_on bon_in|Nweight bon_skip| boneless_THING_THING| bon|skip bother_with_DISH| bother_with|th
bottom_oven_is| break_out|from bring|a_THING bring|his_new brought_a|dat brown_it_all| brown|yet_leav
br|it_to bump_it_to| bump_up_N:some| bump|it_up burn_my|finger burn_th|finger burnt_to_a| bust_so|nowher
butter_hav| butter_hav|to butter_with_DISH| butter|can butter|is_out buzz| by_N:some_they|
by_m|again by_th|bon by|Nclock_wak by|Ndegrees:some_$ by|a_power by|m_$ by|th_bon b|N:few_count
b|N:few_sit b|THING_$ b|an_extra b|by_th b|din b|din_at b|f_by b|faff b|faff_with b|so_low
b|strain b|strain_th b|want c_put| c_put|it calibrat_a| calibrat_a|THING call_it_a| call_loud|
call_loud|i call_m_in| call_them| call|m_in cam_out| cam_out|of cam|out_Nduration can_eat_Nduration|
can_giv_m| can_i|even can_stand|in can_w|hav can_you_tell| can_you|spar cancell_they|will cancel|th_green
cancel|th_timer can|carv_$ can|not_pictur can|stand can|w_go can|w_hold can|w_los car_pull|in
car_pull|up careful_with|her careful_with|pink carry_on| carry| carry|on_without carv_it_yet|
cat_got_th| cat_knock_th| catch|that_th catch|up cayenn| celsius|Ndegrees:core centr|N:core_$
chair_and_th| chanc| chang_to|imperial chang|th_pull check_it|N:core chemo_so|sh chill_th|
chill_th|butter chok_h_can| chok|THING chok|THING_is chuck_that_last| chuck_that| chuck_that|last
chuck|an chuck|an_extra chuck|it_on chuck|that chuck|that_last clean_out_of| climb_another|
climb_another|N:few coeliac|my coeliac|my_P cold|by collect|P collect|P_back com_after_this|
com_from|th com_last_for| com_last| com_last|for com_let_us| com_let|us com_out|of com_through|
com_up|at com_up|to com_with_a| com|and com|back_to com|up_after conk|out_on continental|scal
continental|scal_for convert|th convert|th_lot cook_no_r| cook_so|far cook_to|death cor_is|at
cor_temperatur| could_w|hav could_you_mak| could|eat could|it_b could|yell could|yell_at could|you_giv
could|you_mak could|you_watch cover_it_whil| cover_loosely_in| crank_her_up| crank|her_up cream_in_th|
cressida|had cressida|had_to crisp_as_you| crisp_as| crisp_as|you crisp_th|outsid curdl| current|has_com
cut_myself_with| cut_my|finger cut_off_and| cut_off|no cut_so_they| cut_th|trim cut|up_and
dav|is day_go_to| day_go| day_go|to day|befor_$ deal| degre_c_put| degre|has delet_mac| delet_mac|timer
delet_th|last di_and_th| did_i_ruin| did_not_turn| did_that|ag did_th|THING did_you_hear| did|not_do
did|not_hav did|you_get digit|N:core dinner_back|by dinner_is|for dinner_n_to| dinner_n| dinner_n|to
dinner|is_Nduration do_DISH_and| do_about|it do_hav| do_hav|a do_in_plac| do_i|wash do_leftover|keep
do_not_P| do_not_feel| do_that|wreck do_w|do do_w|n dog|i don_my_P| doneness_wis_medium| don|yet_$
door_has_been| door_open|Nduration door_was|ajar door_was|hang door_was|left door|and door|was_left
down_Nduration_for| down_a|smidg down_i_can| down_is_N:oven| down_is|N:oven down_to_N:few|
down_wak| down_wak|m downstair| down|N:few down|Nduration_for do|a_roast do|celsius do|celsius_Ndegrees:core
do|i_hav do|i_start do|it_for do|it_lik do|it_rest do|leftover_keep do|not_plan do|th_afternoon
do|that_DISH do|that_wreck drink| drop_th|bast drop_th|timer drop_to_N:oven| dry_as_a| dry_as|a
du_through_th| earlier_th_P| earlier|than_w earth|do_N:few eat_pink| eat|THING_$ electricity|has_gon
element_has_gon| enough_out| enough_out|of enough_to|coat enough|N:core enough|THING every|tim_i
ever|whisht ever|whisht_$ extra_pair_of| extra_pair| extra_pair|of fac_so| fac_so|far faff_with_th|
fahrenheit_and|pound fahrenheit_for_th| family|has_arriv fancy|som fancy|som_roast fan|assist_can
fan|off_so fan|on_$ fat_is_hot| fat_is|smok fat_trim_down| fat|THING_U fat|end_$ fat|i fat|onto
fat|onto_th fay_is| fay_is|not feel|lik_it ferry_is|cancell few_roast| few_roast|DISH fewer|los
fewer|los_th few|minut_$ find_m_should| find|m_should finger_off_with| finger_with_th| finish_scrap|
finish_scrap|thos finish_shop|is fir_to_th| fir_will| fir_will|you first_car_pull| first|so
flam_behind_th| flam_com_out| flash| flight|is_lat floor_sh_can| floor_sh| floor|and flu|and
folk_will_not| folk_will|not for_DISH|duty for_N:core_in| for_N:core|and for_N:few|rather for_a_we|
for_another|Nduration for_a|bit for_a|final for_a|shower for_my|german for_pay| for_pay|customer
for_smok_in| for_som| for_th|day for_th|heat for_th|parish for_ty| for_ty|it for_yusuf_mak|
forget_U_keep| forget|about_th forgiv|m_otherwis forgot|to_put for|DISH_duty for|N:core_after
for|N:few_surpris for|Ndate_$ for|THING_$ for|a_Nclock for|a_bath for|a_bit for|a_few for|a_final
for|a_for for|a_shower for|a_whil for|all_this for|bath for|bath_Nduration for|degre for|degre_c
for|him_$ for|medium for|pink for|smok for|th_DISH for|th_church for|th_cornbread for|th_crumbl
for|th_last for|this_$ for|to for|tonight found_in| found_in|this found_th|str fridg_is|bust
from_start|to from_th|garag from_th|shop from_th|station from_th|stov from_th|supermarket from|her_on
from|shrimp from|th_freezer from|th_market from|th_pan from|th_station full|set_$ full|tension
full|tension_noth fus_and| fus_and|th f|by f|god f|god_help gang|is_all gas_has|been gas|has_been
gaug_must| gaug_must|b get_full| get_full|tension get_th_show| get_to|it get|from_th get|ic_back
get|lat get|th_messag get|to_th gi_m_a| glass|THING_hop go_for_N:few| go_for|bath go_over_to|
go_to_go| go_to_li| go_to_pick| go_up_in| god_help|m god_it_has| gon_in|fat gon|cold_$ gon|from_N:few
gon|in_fat gon|over_on gon|up_to gon|whol_build got_N:core| got_Nweight|of got_around_to| got_a|new
got_a|nic got_is_a| got_is|a got_it_sat| got_it|sat got_th|THING got_th|butter got_to|go got|THING_$
got|a_cold got|a_leave-in got|is_a got|it_on got|left got|long got|th_flu got|tim_for got|to_th
go|ahead_$ go|in_as go|in_ther go|out_for go|over_to go|past_N:core go|to_church go|to_mak
go|to_se go|up_in granddad_is_not| greas|and_can green_DISH_hit| green_DISH_my| green_DISH_nobody|
green_on_th| green|ar green|ar_in grey_all_th| grill_h| grill_h|is grocery_list_for| grocery_list|for
grocery|list_for guest_hav|reach guest|com guest|is_U h_will|b h_will|do had_a_fat| had_a_kidney|
had_a|go had|a_fat had|a_kidney hair|out hair|out_her half_ar|park handl_bar| handl_bar|hand
handl| hang_fir_will| hang|on_Nduration hang|on_th happy_birthday|to has_been|brais has_been|off
has_been|open has_been|sat has_com|up has_had|a has_not|thicken has_offer_to| has|a_nut has|been_brais
has|been_cut has|been_in has|been_shov has|fallen_down has|gon_off has|gon_ston has|reach_N:core
has|touch_N:core hav_DISH_with| hav_U| hav_a_N:core| hav_all|taken hav_another|helper hav_a|boneless
hav_a|fan hav_been_hit| hav_been|N:few hav_begun_peel| hav_burn_my| hav_burn|my hav_got| hav_got|to
hav_had|th hav_knock|it hav_lost|th hav_not_finish| hav_no|idea hav_overshot| hav_overshot|it
hav_perch| hav_perch|it hav_salt|it hav_shov| hav_shov|th hav_slic_my| hav_taken|their hav_to_tak|
hav_to|eat hav_to|hav hav_to|rest hav_trip| hav_trip|someth hav_walk|in hav_you|seen hav|a_smok
hav|an_allergic hav|been_N:few hav|been_hit hav|begun_peel hav|fallen_Nduration hav|got_DISH
hav|got_Nweight hav|his_at hav|it hav|it_on hav|kept_th hav|lift_it hav|not_been hav|not_kept
hav|pull_into hav|reach_som hav|rock hav|rock_up hav|slic_m hav|sunk hav|their_at hav|to_b
hav|to_collect hav|to_go hav|to_prepon hav|to_rest hav|to_run hav|to_start hav|truss hav|truss_th
hav|with hav|with_it hav|you_seen heat_all_th| held_up_i| help_th_parchment| help_ther_is|
help_till|N:few help_with|th helper|today_her her_Nduration|after her_for_another| her_till|N:few
her_up|to her_w|ar her|i_am her|on high_heat_at| his_fac_so| hit_N:core_i| hit_N:core_whil|
hit_N:some| hit_by| hit_by|a hit_my| hit_my|THING hit|by hit|by_a hit|m_with hit|roadwork_$
hit|th_floor hold_dinner|by hot_THING_fell| hot_THING_splash| hotter|than_sh hot|and hot|so_$
hous_is|full hous|a hous|so how_about|that how_long_w| how_much_win| how_much|of how_to_carv|
how_to|DISH how_to|carv how_to|do how_to|us how_w|travell how|about how|is_my how|many_kilo
how|many_person how|much_$ how|much_did how|to_us ho| h|has_had h|is_N:few h|is_scream h|will_b
i_am_about| i_am_stood| i_am|about i_am|stay i_am|stood i_am|suppos i_am|way i_ask| i_ask|you
i_b_do| i_b_with| i_behind_or| i_burn_th| i_chuck|th i_crank_it| i_crank|th i_cut_into| i_did_not|
i_do_hav| i_do|about i_do|this i_fancy|som i_get|away i_got| i_go|out i_go|to i_hav_perch|
i_hav_shov| i_hav|sat i_hav|to i_hav|truss i_kill|it i_knock_it| i_knock|it i_let_it| i_lift|
i_lift|it i_look_th| i_mad| i_must|away i_n|mor i_order|onlin i_prefer|to i_press_th| i_press|th
i_pull_it| i_pull|th i_put|instead i_reset|it i_ruin|it i_saw| i_scald| i_scald|my i_should_hav|
i_shut|it i_slic_my| i_slip_and| i_stab| i_stab|it i_took|it i_touch|th i_turn|it i_us|instead
i_was_lay| i_was_talk| i_was|meant i_will|hav i_will|mind i_will|sear i_wonder_how| i_would|rather
i_would|th ic|water_THING if_THING_DISH| if_i|us if_they_wer| if|h_so if|i_had if|i_took if|w_at
ill|b_Nduration ill|b_a in_DISH|powder in_Nduration_now| in_Nduration_what| in_Nduration|pet
in_and_it| in_at| in_beer_is| in_degre|c in_law| in_oven| in_rib_nobody| in_th_top| in_th_warm|
in_their|coat in_th|center in_th|centr in_th|cupboard in_th|dishwasher in_th|drawer in_th|front
in_th|liv in_th|meantim inform_what| inform_what|is insid_right_now| instead_of|N:oven instead_of|THING
instead_of|a instead_roll_and| into_th|water into|it_$ invit|themselv_$ in|Nduration_th in|Nweight
in|celsius_and in|fat_was in|for_Nduration in|from_N:few in|from_Nclock in|god in|kilo_U in|kilo_if
in|law_$ in|law_pull in|law_tak in|som_DISH in|som_mac in|tinfoil in|tinfoil_now in|traffic_Nduration
in|yet_$ in|yet_do in|yet_th is_N:core_near| is_N:core_th| is_N:few|of is_N:some|and is_Ndegrees:few|under
is_Ndegrees:some_hotter| is_Ndegrees:some|cooler is_after_go| is_all|carv is_all|right is_already|carv
is_a|P is_a|cold is_a|fir is_a|gas is_a|proper is_a|sauna is_beep_it| is_blister_carry| is_chok|THING
is_don|and is_enough_out| is_fan|assist is_finish_shop| is_hav|an is_hot|DISH is_in_charg|
is_in_my| is_it_hav| is_it_nearly| is_it|past is_jump_all| is_jump|all is_leak_fat| is_lost_th|
is_miss_a| is_no|win is_on_wash| is_out|god is_pac| is_peel|th is_pur_vegetarian| is_raw_in|
is_shap| is_show|m is_still|raw is_stop| is_tak| is_th_sens| is_th_situation| is_that_near|
is_thin| is_th|gam is_th|scor is_th|target is_too|full is_your|lot is|N:core_in is|U_$ is|U_up
is|a_bit is|a_crim is|a_fan is|a_fir is|a_greas is|a_liar is|a_nightmar is|alway_N:few is|alway_Ndegrees:some
is|brought_mat is|cancell_they is|chair is|com_Nduration is|cut_or is|cut_up is|finish_shop
is|for_th is|full_i is|full_of is|happen is|her_and is|hot_now is|hurt_h is|it_in is|it_out
is|kaput_it is|leak_fat is|lik_a is|lik_chew is|lik_seawater is|load_with is|look_so is|mix
is|my_magic is|need_$ is|now_Ndegrees:core is|on_at is|on_stir is|on_wash is|out is|out_it
is|point_at is|read_daft is|ring_$ is|rock_up is|sat_at is|sat_on is|say is|scream_$ is|sit_ther
is|slip is|smok_lik is|snap_and is|sort_$ is|spread_up is|starv_br is|stay_hom is|still_moo
is|strain_skim is|that_near is|ther_another is|this is|to_b is|vegan_$ is|vegetarian_and is|vegetarian_i
is|weak_$ is|what_it is|what_they is|wilt_$ is|work it_Ndate| it_Nduration_earlier| it_a_roast|
it_as_it| it_a|roast it_a|tad it_back_a| it_beep_after| it_cam| it_climb| it_first|then it_go|past
it_has|fallen it_has|touch it_hit_th| it_i_do| it_is_at| it_is_lik| it_is_set| it_is|sleep
it_nearly| it_off_th| it_open_and| it_reckon| it_reckon|in it_run_a| it_sat_on| it_shoot| it_slip_past|
it_still_b| it_suppos_to| it_they|ar it_this_minut| it_to_N:core| it_to_medium| it_up|again
it_weigh| it_with_you| it|b_if it|b_ready it|cam_out it|for_Nduration it|go_over it|halfway_$
it|has_to it|hav_to it|in_$ it|is_$ it|is_don it|is_fall it|is_over it|on_at it|over_$ it|over_at
it|past it|pink_$ it|rar_P it|reckon it|reckon_in it|slip it|smell it|stood it|stood_at it|up_$
it|was_out it|went_out it|went_up it|will_com i|DISH_th i|am_fix i|am_slip i|am_stay i|ask_$
i|b_do i|behind_$ i|can_get i|cook_at i|get_away i|hav_DISH i|hav_Nduration i|hav_peel i|hav_set
i|hav_turn i|know_it i|lik_th i|mad i|meant_to i|must_DISH i|must_away i|n_for i|never_said
i|ruin_it i|said_N:few i|said_that i|slip_and i|touch_th i|trust_it i|us_DISH i|was_hav i|was_lay
i|wrangl i|wrangl_th i|wreck_it join_us_that| joint_is|on joint_slid| joint|of joint|of_THING
jump_all| jump_all|over jump| jump|all jump|all_over jump|past_th kavi|h keep_th|other keep|THING_$
keep|it_$ kept_pac_with| kevin_tak| kevin_tak|his kidney|transplant_bear kill|for kill|for_a
kill|th_DISH kill|th_Nduration kindly_inform_what| kindly|includ_N:few knock|off_for know_when|w
know| know|when_w lack_a|cut lad_is|brought lad_touch_th| lad_touch| lad_touch|th lady|and
lad|is_brought last_car_pull| last_for| last_for|m last_look_it| last_on_out| last_th|i last|for
last|for_m last|night_befor last|of last|on_out last|tim_$ lat_P_swor| lat_by_Nduration| lat_so_they|
lat_so|everyth lat_that|is later_than|w lat|P law_do|not law_is|N:few law| leak_fat| leak_fat|onto
learn|about leav|it_in leftover|keep_$ leg_with| leg_with|th leo_has| leo_has|a less_for| less_for|dinner
less_it| less_it|say less_than|it let_us_aim| let|m_forget let|us_N:oven li_down_wak| li_down|for
lick| lift|it_onto lift|th_THING lik_a|bonfir lik_a|plank lik_practically_still| lik_that_is|
lik_th|th lik_w_will| lik|a_bonfir lik|a_plank lik|how lik|it_a lik|it_and lik|it_well lily_has|
lily_has|to lily_in| lily_in|charg lily|in lily|in_charg list_th|alternativ list|nobody_eat
lit_th_oven| littl_N:few_eat| littl_lad_touch| littl_oven|that littl|pink_mor littl|screen
li|i lodger_had| lodger_had|a long_befor_i| long_befor|i long_do_leftover| long_for_th| long_hav|th
long_w| longer_do|it longer_for_th| longer_for|th longer_in_ther| longer_on_th| longer|in longer|in_ther
longer|on longer|on_th long|i look_it|was look_siz| look_siz|wis look_th|DISH look|lik_w loosely_in|tinfoil
loretta_is_go| los_th_r| los_th|r lot_ar_go| lot_of|us loud|i loud|i_am lowest_it_will| lowest_it|will
m_U_my| m_a_nois| m_a|bell m_in_th| m_should| m_should|it m_som_choic| m_through_what| m_th|grocery
m_to|bast m_to|check mac_and| mac_and|DISH mac|timer magic_number_for| mak_do| mak_do|with
mak_it_a| mak_it_so| mak_it_well| mak_som| mak_som|nois mak_supper_Nduration| mak|a_DISH mak|it_rar
mak|m_a many_DISH_per| many|gram_of many|mor_minut mass| meant|for meant|for_you medium_U|
medium_rar_ok| medium_rar_sam| medium_rar|that medium_well_they| medium_well|they medium|and
menu_tonight_besid| menu|yet menu|yet_so mess| metric_so_do| metric_so_weight| middl|shelf_$
mind_crisp_th| minus_theo_plus| miss_a|fat miss_th_r| miss_th|THING mob_is|rock monster_of|
monster_of|a mor_peopl_ar| mor_person| mor_than|it mor_will|it mor|will mov|to_Nclock much_as_smell|
much_as|smell much_butter_for| much_longer|on much_of|th much_win_go| much_win| much_win|go
much|longer_$ much|of must_b_th| must_i|do must|away must|away_for must|b_ly must|it_rest my_P_from|
my_P_haul| my_P_is| my_P_ottolin| my_P|insist my_arm| my_folk_will| my_god| my_hair|out my_oven_will|
my_palm|is my_word| my|THING_burn my|THING_in my|THING_it my|arm_on my|arm_what my|back_is
my|boss_tak my|end my|finger_off my|german my|german_visitor my|god_ther my|option_her my|palm_$
my|palm_try my|roommat_is my|sous my|sous_THING my|stuff my|stuff_is my|tim my|tim_hav my|tod
my|tod_now my|wrist_on m|P m|a_buzz m|a_number m|back_from m|i_said m|know_onc m|know_when
m|som_exampl m|through_th m|up_$ m|up_when n_Nduration_start| n_a|bit n_from| n_not_call| nadia_sh|
nadia_sh|is nagg| near_th_end| near|enough_to needl_is|point never_did_th| never_forgiv| never_forgiv|m
never|did_th never|got_around new_th|THING niec| niec|volunteer niec|volunteer_for nip_and_that|
nip_out| nip|out_back no_DISH|no no_THING_can| no_THING_i| no_chuck_that| no_chuck| no_chuck|that
no_longer|in no_mor_DISH| no_no_no| no_off| no_off|th no_power|in no_r|at nobody_is|cut nobody|is_cut
nobody|lik_it normally_or_ar| normal| not_N:some| not_P| not_P|open not_a_v| not_a|sprig not_been|mad
not_believ| not_b|by not_b|faff not_b|strain not_call|m not_feel|lik not_find| not_finish_scrap|
not_got_is| not_got|is not_i_open| not_keep|THING not_meant| not_meant|for not_open|th not_rest|
not_tak| not_that_ther| not_ther_in| not_up|to not|a_v not|b_by not|b_in not|been_mad not|budg_for
not|eat_it not|even_look not|even_pick not|even_risen not|find_th not|happen_so not|hav_DISH
not|hav_th not|hear_much not|hear_you not|know_how not|mad_excus not|mak not|start_$ not|up_to
not|want_th now_cressida| now_cressida|had now_get|th now_instead| now_instead|of now_what|to
now_w|ar now|U now|w now|what now|you no|Nweight no|Nweight_not no|P no|blow_$ no|i_said no|on
no|way_near nudg_THING_along| number_for|th number_has| number_on_th| number|has_gon number|say_N:core
n|a_bath n|th_timer n|to_buy of_DISH|th of_THING_after| of_cream| of_my|finger of_our_guest|
of_our|guest of_pink| of_plan|w of_smok|it of_that|blood off_at|th off_i_kill| off_it| off_th|number
off_to| offset| off|Nduration_ago off|i_hav off|is off|no_flam off|th_THING of|DISH_would of|N:oven_is
of|a_DISH of|a_th of|butter_by of|cours_$ of|her_tablet of|now of|plan_w of|rest_$ of|sirloin_Nweight
of|smok_it of|th_cream of|them_can of|them_is of|us_non of|us_now of|us_will of|water_underneath
of|you_for ok_for_th| ok_what_is| ok_with| ok|ok old|on on_DISH_till| on_N:core|has on_P| on_and_i|
on_at|N:few on_a|bit on_chemo_so| on_eat| on_for|a on_is|look on_it_i| on_m_it| on_my|THING
on_my|end on_my|tod on_out_i| on_out|i on_sid_fewer| on_th_door| on_th_grocery| on_th_menu|
on_th_rarer| on_th|bathroom on_th|button on_th|plat on_th|stov on_what_was| on_your_own| onc_and|i
onto|th_lino on|Nclock on|her_$ on|let on|let_m on|my_own on|now on|on on|paus on|plat on|that_timer
on|this_U on|top_$ on|yet_$ open|Nduration_$ or_ar|ther or_do|that or_less_it| or|against or|mor
or|nay or|nay_$ or|not_$ ottolin|is ottolin|is_her our_guest|is our_lodger_had| our|guest_is
out_Nduration_i| out_THING| out_and|rest out_b_back| out_for|a out_i|was out_sinc|Nclock out_th|schedul
out_whol|road outsid_onc_it| out|and_it out|from_shrimp out|god out|god_it out|h out|whol oven_Nduration_back|
oven_Nduration|ago oven_and|N:few oven_back|on oven_back|to oven_beep|it oven_for|th oven_go_up|
oven_is_fan| oven_is_too| oven_is|cark oven_is|kaput oven_is|smok oven_now|and oven_pack| oven_pack|up
oven_run_a| oven_switch| oven_switch|itself oven_to_N:oven| oven|Ngas-mark oven|and_th oven|door_has
oven|has_been oven|has_gon oven|off_Nduration oven|with_them over_N:core_do| over_by_th| over_th|floor
over_what|it overnight_salt_is| over|it over|th_DISH ow_i_touch| ow_i|touch own_a_fat| own_a_leave-in|
own_a|leave-in own|a_leave-in pac_with|your pack|up_on pac| pan_my|THING pan|handl_without
parchment|is_ignit past_th|trim past|th pay|customer_at peel|every peel|every_last peopl_ar|com
peopl|ar_join peopl|not_N:few perch|it perch|it_on pet_is|on pick|up_P pick|up_a piec_of_THING|
pink_ok_for| pink_will_it| pink_would_it| pip| pitch|in_from plac|it plac|of_butter plan_for|a
plan_h_has| plat_and|th plenty_without_th| plus_N:few_has| plus_theo| plus_theo|is plus|N:few_mor
plus|theo plus|theo_is pok_m_in| pok_m|about pop|out_to pound_and|ounc pound|do pour_th_boil|
pour| power_it| power_it|went power|in_th power|is power|is_out practic_till| practic_till|whatever
practically_still| practically_still|walk prefer|on prefer|on_th pregnant|P press_th|wrong
press|it_with prim| prim|rib_$ priya_can| priya_can|not priya_is_her| proper| pull_into| pull_into|th
pull_in| pull_tim| pull_tim|how pull|at_$ pur|vegetarian_no put_DISH|cream put_in_th| put_lily_in|
put_lily| put_lily|in put_that|down put_th|P put|instead put|it put|it_to put|th_DISH put|them_down
quick_N:some_near| quiet_for_a| quit_lik| quit_lik|to rar_as_you| rar_as|you rar_for_all| rar_ok_for|
rar_ok| rar_ok|for rar_sam| rar_sam|for rarer|sid rar|that_is rat_ill| rat_ill|b rather|than_N:few
raw_THING_and| ready|by_N:oven ready|yet_$ read|N:core reason_for_th| reason|for reckon_w|hav
reckon_you_could| reckon| reckon|in reckon|in_th reduc_enough_to| remind|m_to remov_it_from|
remov|what reset|it rest_it_for| rest_on_th| rest_they|ar rib_nobody_is| rib_nobody| rib_nobody|is
rib_roast|N:few rid|of_th right_they| right|i_am roar|at_m roast_DISH|with roast_Ndate| roast_Ndate|Nclock
roast_Nweight_no| roast_fell| roast_fell|on roast_from_th| roast_has|left roast_is|at roast_is|still
roast_it| roast_on_th| roast_out_Nduration| roast|DISH_would roast|N:few_bon roast|THING roast|is_no
roll_N:few| roll_and|net roll_ar|in roll_is_not| roll_they| roll_they|ar roll|go roll|prov_Nduration
rub|it run|Nduration r|DISH_ther r|DISH_with r|at_all r|road r|win_P r|win_in s_out_when| saf|to_eat
said_N:some| said|N:core_$ said|Nweight salt_is_too| salt_is|too salt|is salt|is_too sam_is|on
sam|for sam|for_th sat_at_N:core| sat_down_at| sat|at_tabl say|again_$ say|it_is say|oven say|to_you
scal_for_th| scald_my|arm scal| scissor| scrap|thos scrap|thos_bon scratch_that|i screen_how_about|
se_tripl| se_tripl|digit sear_com_last| second| serv_it|at serv_it|with sesam_allergy_at| set_N:oven|
set_another_plac| set_an|alarm set_for|degre set_th_roll| sh_is|com sh_is|pass shall_b|at shall_b|din
shedd_start|Nduration shellfish_sh|swell shoot|that shoot|that_DISH shop_what| shop|is_U should_b_get|
should_b_in| should_hav|seen should_i|put should|i_panic should|th shout_at|m shout_when_it|
shout_when_sh| shout_when|it show_N:core_in| show_on_th| show_up|so shower_Nduration| shower_giv|
shower_giv|m shower| show|m_N:core shut_off_th| shut|it_off shut|that sh|brought_THING sh|has_been
sh|is_a sh|is_allergic sh|is_cook sh|is_offer sh|is_rest sh|said_sh sh|swell sh|swell_up sh|will_do
sick| sid_fewer| sid_fewer|los sign_of_th| sign_of|th sign|of_th silverskin_toss| silverskin_toss|it
sinc|last_night sirloin_Nweight_or| sit|down_$ siz|wis siz|wis_N:few skip_th_ic| slic_my|thumb
slic_th_top| slic|and slid_onto_th| slip_and|hit slip_past| slip_past|N:core slow_go| small_oven_set|
small|on smell|a_walnut smok_com|from smok_in|her smok|it_is snap_and_it| snap_and|peel so_do|it
so_how_do| so_how|do so_i_stab| so_it_say| so_it|went so_lik_th| so_tak|that so_text_when|
so_that|on so_weight_in| so_weight| so_weight|in so_which_bit| solid|i solid|i_am solo|now
som_choic| som_hav| som_hav|reach som_mac_and| som|nois som|nois_at som|of_them som|tim_$ sooner_than|plan
sorry_N:core_i| sorry_N:core| sorry_i|am sorry_to|say sound|right_for so|N:core so|early_$
so|everyth_slip so|far_$ so|nowher so|nowher_to so|that_on so|you spark_and|flam spread_up_th|
start_a_timer| start_to|arriv start|a_timer stat|of_play stay_out| step_out|for still_hav|not
still_on| still_pal| still|at_N:oven still|b_pink still|cold_in still|on_for still|peel still|rock
still|to_com still|walk still|walk_$ ston|cold_$ stop_at|hom stop_nagg| stor|back stor|back_in
stov_for_Nduration| str_is|snap straight_down_lik| stretch_it_for| stuck_at_N:core| stuck_it|
supermarket|car supermarket|car_park supper_Nduration|later swap_THING_for| swap_in_DISH| swap|th_cream
swed|is swell_up_if| swell|up_h swell|up_if switch|itself switch|itself_off switch|on_th switch|to_fahrenheit
swor|by swor|by_rar system_for_my| system_is|shot tabl_that| tabl_that|is tablespoon_of|THING
tablespoon|of_THING tabl|it tak_off| tak_over| tak_so|long tak_th|dog taken_out| taken|th_oven
tak|his_steak tak|it_medium tak|m_THING tak|over tak|that_into target| tear_my_hair| teenager_hav_volunteer|
tell|you_$ temperatur_is_up| temperatur_should_th| temperatur|i temperatur|is_at terrell_break_out|
text_when| text_when|it th_DISH_how| th_DISH_must| th_DISH_n| th_DISH|is th_DISH|so th_DISH|ther
th_N:few|rib th_P_can| th_P_to| th_P_up| th_THING_am| th_THING_how| th_THING_till| th_THING|fell
th_THING|into th_THING|what th_U|cancell th_app|is th_b_drink| th_ball| th_block| th_boil|water
th_bon_in| th_bon_skip| th_bon|is th_bon|skip th_bottom_of| th_cat|has th_choir| th_continental|
th_continental|scal th_cylinder| th_day_go| th_day| th_dinner_if| th_dinner|by th_dog|i th_first_guest|
th_flight|is th_fridg_sinc| th_fus_and| th_gang| th_gang|is th_gas|has th_grill_h| th_guest|will
th_lik| th_lik|that th_littl_on| th_littl_oven| th_littl|screen th_lowest_was| th_menu|yet
th_moment| th_next| th_next|Nduration th_number_has| th_old|on th_oven_beep| th_oven_in| th_oven|glov
th_parchment| th_parchment|is th_pink| th_plat_and| th_power_it| th_power|went th_pull_tim|
th_rarer| th_rarer|sid th_reason|for th_rest_they| th_roast_fell| th_roast_it| th_roll_they|
th_roll|prov th_run|Ndegrees:some th_r|road th_shop_what| th_shower_giv| th_show|on th_silverskin_toss|
th_situation| th_stor|back th_stov| th_str_is| th_street| th_supermarket|car th_tabl_that|
th_tabl|it th_third| th_wean_hav| th_wet|til th_we|on th_whol|plan th_whol|stick th_whol|street
thank_you_very| than|N:few_$ than|it_say than|plan_h that_DISH|us that_again|i that_ar|all
that_has| that_is|for that_near| that_near|enough that_number| that_on_mor| that_would|you
that_w|hav that|ag that|ag_ago that|ar_all that|back_$ that|is_another that|is_fin that|is_join
that|yet their_coat_in| their|at_N:few their|coat_in their|mind_back them_DISH| them_Nduration|ago
them_ar|her them_hav_turn| themselv_so|lay them|N:few them|down_$ then_a|hot then_i|will then|a_hot
then|after then|after_that then|low_$ theo_plus_theo| theo_plus| theo_plus|theo theo|is_P ther_any|sav
ther_ar_go| ther_is_go| ther_that| ther|i_hav ther|is_go thes_DISH| they_ar_go| they_com| they_hav|pull
they_hav|rung they_n_a| they_text|Nduration they_will| they|alway they|ar_N:few they|ar_no
they|ar_off they|ar_on they|ar_still they|hav_chang they|hav_hit they|mad they|rang_they they|wer_Nduration
thick|end_N:core think_in|kilo think_so_it| thinner|and this_THING_and| this_is_too| this_rat_ill|
this| this|THING_can this|moment_$ this|morn_$ this|oven_alway this|rental_$ thought| through_what|
through_what|is through|th_gam thumb_and|took thumb| th|DISH_$ th|DISH_again th|DISH_cam th|DISH_do
th|DISH_sid th|DISH_ther th|DISH_yes th|N:few_befor th|P_down th|P_hav th|THING_$ th|THING_back
th|THING_will th|U_ar th|alternativ_$ th|alternativ_for th|b_drink th|back th|bairn_$ th|ball
th|bast_step th|board_U th|board_now th|boat th|bon_N:core th|break th|build th|cast th|cat_got
th|center_when th|centr th|chip_pan th|church_Nduration th|church_hall th|colour_on th|cooker_hood
th|cooker_work th|counter_Nduration th|cream_i th|cupboard th|day_befor th|dinner_by th|dinner_if
th|door_befor th|end_not th|family_has th|fast th|fat_off th|finger_on th|floor_and th|floor_i
th|grill_h th|grocery_list th|guest_is th|hall th|heat_up th|hood_was th|hot_handl th|hous_afternoon
th|hous_and th|hous_so th|joint_out th|last_of th|list_for th|list_ther th|liv th|liv_room
th|lot_and th|lower_third th|market_today th|meantim th|meantim_$ th|menu_yet th|middl_$ th|next_hour
th|night th|night_$ th|number_for th|outsid_onc th|oven_and th|oven_beep th|oven_glov th|pan_under
th|park th|peel th|phon_to th|plan_of th|preacher_is th|quick_N:some th|refrigerator_$ th|road
th|roast_hit th|rol_ar th|roll_$ th|schedul_$ th|screen_how th|sens th|shop_back th|shower_giv
th|sid_THING th|silverskin_toss th|slic_look th|small_oven th|stick_$ th|supermarket_$ th|supermarket_car
th|tabl_god th|tabl_that th|til th|timelin th|timer_i th|trim_part th|way_i th|way_my th|way_no
th|wet_til th|whol_stick th|wrong_th till_w|eat till|N:few_th till|serv_buy till|whatever till|whatever_gon
tim_hav_gon| tim_i_reset| tim_is| tim_they|hav tim_to|chill tim_would| timer_on_th| timer_they|
timer_they|ar tim|how_com tip| to_N:oven_about| to_N:oven_wait| to_N:oven|U to_THING|up to_bother|with
to_b|do to_b|her to_b|insid to_b|so to_chill_th| to_collect|P to_f|god to_giv|m to_hav|a to_jump_in|
to_li_down| to_mak|it to_my_THING| to_m|why to_nadia_sh| to_pick|up to_se|to to_th_DISH| to_th_continental|
to_th|shop to_turn|th tod_now_cressida| today_everyth_tak| today|Nduration told|m_$ told|m_U
tom_can| tom_can|not tonight_besid_th| tonight_besid| tonight_besid|th too_much|i took_ag_to|
took|th_DISH too|high_$ too|low_to too|much_i too|much_in top|off_my toss_it_to| toss|it toss|it_to
total_N:few|person touch_th|grill touch|N:core_and touch|N:core_kindly touch|bon_$ touch|th_grill
touch|th_pan to|DISH_and to|N:few_now to|N:oven_for to|N:oven_lik to|arriv to|b_DISH to|b_N:few
to|b_don to|b_f to|b_lat to|bast_in to|borrow to|bother_with to|br_my to|buy_for to|carv_it
to|check_DISH to|coat to|coat_a to|do_next to|eat_it to|f_god to|go_driv to|go_so to|heat_put
to|imperial to|keep to|mak_th to|shellfish_not to|th_continental to|th_pi to|th_trim to|us_$
to|us_you to|work_$ traffic_is|a trim_down| trim_down|to trim_th|silverskin trip|someth trip|someth_no
trust| turn_it|up turn|it_up turn|on_th turn|out_my turn|out_w turn|up_Nduration turn|up_so
turn|up_to typo_N:core_not| under_so_tak| undo_that_i| undo|that_i up_P_i| up_U_is| up_against_th|
up_and_down| up_from|N:core up_from|th up_i_will| up_if|h up_th|cooker up_to|room up|do up|to_$
up|to_it up|to_sp us_THING| us_a_cast| us_aim| us_aim|for us_instead_of| us_will|b us|a_cast
us|mak_th v_THING| vegan_at| vegan_at|th very_THING|piec visitor_com|with visitor_is_at| voic|
volunteer_for_DISH| volunteer_for|DISH v|THING_to w_ar|expect w_ar|metric w_go|over w_hav_another|
w_hav_had| w_hav_trip| w_hav|with w_lack_a| w_lik| w_los_th| w_n_another| w_nearly| w_nearly|ther
w_prefer|on w_put|it w_shall_b| w_should_hav| w_took|it w_want|to w_will|not wait_for|m walk_in_and|
wall|N:few want_DISH| want_a|bit want_a|look want_her_well| want_her|at want_it_rar| want_to_THING|
want|a_THING want|a_bit want|a_look want|his_cook want|it_$ want|it_medium want|supper_Nduration
want|to_eat warn|m_at was_N:core|not was_lay| was_lay|th was_not_meant| was_talk| was_talk|to
wash_th|board wash|th wash|up_$ was|ajar was|ajar_Nduration was|meant was|meant_to was|on_what
way_is_th| we_bit|sooner wean_hav_to| wean_hav| wean_hav|to weight_Nweight| weight|Nweight
well_ill| well_ill|b well_th|light well|don_i well|they_ar went|into went|on_Nduration went|out_at
went|up wer|go wet_floor_sh| wet|til we|on whack| what_about|th what_a|faff what_can_stand|
what_could_w| what_do|th what_do|water what_els_is| what_go|in what_i_do| what_instead| what_instead|of
what_is_that| what_is_to| what_is|after what_is|for what_should|b what_would|th what|ar_m what|ar_my
what|els_can what|happen_$ what|i_should what|is_after what|is_not what|is_up what|temperatur_$
what|was_i when_it_will| when_i|was when_sh_get| when_w|eat when_w|get when_you|ar when_you|check
when_you|think wher_w|left which_bit_hav| which_bit|hav which|timer which|timer_never whil_i|wrangl
whil|rest who_do|not who_has_got| who_is|com who_is|eat whol|plan_$ whol|road whol|road_is
whol|stick whol|stick_of who|is_a why_it_has| will_com| will_get|to will_hav|roast will_hav|their
will_sear|it will_stop_at| will_that|work will|b_N:core will|b_right will|b_th will|b_ther
will|b_upstair will|go_which will|mak_N:few will|mind will|mind_it will|not_com will|not_turn
will|sear_at will|you_$ win_DISH_with| win_go| win_go|in win|go win|go_in wis_medium| wis_medium|for
wish_i_had| with_DISH|cream with_DISH|i with_DISH|powder with_a|U with_celsius| with_her_so|
with_that_w| with_th|truss with_you|for without|grill without|grill_underneath with|it_DISH
with|it_and with|it_now with|pink with|pink_THING with|th_prep with|th_sear with|your_list
wonder_how|much wonder|if wonder|if_THING won| work_i|hav would_happen_if| would_n_a| would_never_forgiv|
would_non| would_non|of would_quit_lik| would|b_nic would|lik_th wrong|th w|ar_N:some w|ar_a
w|ar_all w|ar_clean w|ar_down w|ar_go w|ar_out w|ar_run w|ar_sit w|ar_still w|eat_i w|eat_it
w|go w|had_THING w|hav_DISH w|hav_been w|hav_had w|left_off w|n_another w|prefer_on w|stand_lik
w|travell w|travell_P w|want_th w|wer_go w|will_hav yank_it|at yank| yer|man yes_a_sirloin|
yes|go_on yet_Nduration_i| yet|i_am you_DISH_th| you_call_that| you_could|yell you_ever|whisht
you_hav_chang| you_hav|chang you_learn|about you_mak_do| you_mak|do you_mak|th you_se_tripl|
you_set|it you_should_hav| you_very| you_very|much you_would_non| your_P|h your|lot you|P you|believ_it
you|check_tell you|do_timer you|for_Nduration you|got you|in_N:some you|know_$ you|lik_that
you|mak_th you|n_m you|said_Nduration you|spar you|spar_m you|think_i you|understand_$ yusuf_mak_a|
yusuf_mak| yusuf_mak|a |@1.3 |@104.3 |@106.4 |@12 |@120 |@122.2 |@128.1 |@130 |@130.6 |@134.2
|@14.2 |@140 |@143.2 |@19 |@2.0 |@20.3 |@21.0 |@22 |@28 |@37.0 |@39.2 |@39.6 |@4.11 |@4.4 |@40
|@48.9 |@5 |@52.5 |@59 |@59.0 |@60.0 |@7 |@72.0 |@75.2 |@77 |@8.2 |@85.0 |@85.2 |@9 |@95 |DISH_THING_say
|DISH_a |DISH_and_stuff |DISH_ar_out |DISH_bless_her |DISH_butter_and |DISH_butter_hav |DISH_can_go
|DISH_can_stay |DISH_from_N:few |DISH_from_m |DISH_how |DISH_i |DISH_is_simmer |DISH_or |DISH_sid
|DISH_so_do |DISH_ther |DISH_this |DISH_timer_they |DISH_too_$ |DISH_want_another |N:core_how_many
|N:core_ok |N:core_will |N:few_N:few |N:few_Ndate_$ |N:few_U |N:few_befor_medium |N:few_bon_from
|N:few_count_th |N:few_for_N:few |N:few_hav |N:few_in |N:few_plus |N:few_roast |N:few_so_N:core
|N:few_surpris_visitor |N:few_thank |N:few_thank_$ |N:few_w |N:few_what_happen |N:oven_at_N:oven
|N:oven_do_not |N:oven_lik_you |N:oven_now_th |N:some_DISH |Nclock_instead_$ |Nclock_wak |Nclock_wak_m
|Ndegrees:oven |Nduration_P_is |Nduration_after_th |Nduration_down |Nduration_earlier |Nduration_it
|Nduration_now_i |Nduration_start_now |Nduration_th_match |Nduration_to_a |Nduration_would_ya
|Nweight_forerib_N:few |Nweight_how |Nweight_topsid_for |Nweight_very |P_alway_did |P_down_back
|P_how |P_is_a |P_non |P_swear_by |THING_N:few |THING_Nweight_on |THING_and_ther |THING_do_metric
|THING_for_$ |THING_is_Ndegrees:few |THING_is_ther |THING_tell_m |THING_till_th |THING_to_finish
|THING_yes |U_$ |U_$_$ |U_a |U_work |a_THING_over |a_THING_up |a_U_$ |a_bath_can |a_bit_longer
|a_bonfir |a_buzz |a_buzz_in |a_cold_oven |a_final |a_fir_in |a_for |a_for_N:some |a_good_N:some
|a_good_on |a_greas |a_greas_fir |a_hot_finish |a_liar |a_look_Nduration |a_nudg_at |a_number_of
|a_power_cut |a_quarter |a_roar_when |a_roast_for |a_th_N:few |a_v |a_v_THING |about_allergy
|after_$ |after_$_$ |after_put |after_put_th |after_that_what |afternoon |again_i_had |ago_and_i
|ago_when |ajar_Nduration |alcohol |all_at_th |all_in_THING |all_th |alternativ_for |alternativ_for_m
|alway_N:few |alway_N:few_under |alway_Ndegrees:some_under |am_N:few_$ |am_N:few_behind |am_after_a
|am_all_behind |am_away_behind |am_away_from |am_behind_$ |am_do_this |am_fix |am_fix_to |am_i_ok
|am_in_th |am_lat_with |am_miss_th |am_not_don |am_not_her |am_on_m |am_slip |am_stay |am_stay_put
|am_tak_it |am_tell_you |am_that_far |amount |an_alarm_in |an_allergic |an_allergic_reaction
|and_N:core_year |and_brown |and_holler |and_it |and_it_say |and_sh_will |and_smok |and_ther_is
|and_turn_it |ar_N:few_short |ar_Nduration_behind |ar_Nduration_lat |ar_all_her |ar_all_in
|ar_clean_out |ar_down_to |ar_hav_it |ar_in_this |ar_m |ar_m_option |ar_my_option |ar_no_way
|ar_not_brown |ar_run_Nduration |ar_still_pal |ar_warm_now |ar_way |arm_what |arm_what_do |arriv_$
|arriv_$_$ |as_befor_$ |as_th |as_you_reckon |ask_about_allergy |asleep |assist_can |assist_can_not
|at_N:some_in |at_Nclock_$ |at_Ndegrees:core |at_m_onc |at_my_ex |at_th_end |away_to_get |b_N:few_sit
|b_Nduration_ago |b_a_monkey |b_a_we |b_an_extra |b_at_$ |b_by_th |b_do_now |b_drink |b_drink_in
|b_f |b_f_at |b_f_by |b_ly |b_mor |b_nic |b_out |b_spoon_th |b_upstair |b_upstair_for |back_Nduration_traffic
|back_in_door |back_is_bad |back_on |bairn_$ |bairn_$_$ |barely |bast_in |bast_step |bast_step_my
|bath_Nduration_i |been_at_it |been_brais |been_brais_Nduration |been_don_so |been_hit_by |been_in_sinc
|been_shov |been_shov_in |befor_it |begun_peel |begun_peel_th |behind_on_everyth |bell_when_sh
|bit_cold |bit_cold_Ndegrees:few |bit_longer |blanch |bless_her |bless_him |board_U |board_U_not
|boat_is |boil |boil_for_th |boneless_THING |boneless_THING_THING |boss_tak |boss_tak_her |brais
|brais_Nduration |bring_her_P |brought_N:few_mat |brought_THING |brought_THING_with |brought_mat
|brought_mat_$ |buck_N:few |budg_for |budg_for_ag |burner_on |burnt_at |burnt_at_th |bus_is_lat
|bust_so_nowher |butter_by |butter_by_th |butter_don |butter_mad_and |buy_THING_THING |by_N:oven_in
|by_N:some_they |by_a_power |by_rar_so |by_th_stov |cam_out_$ |can_get_th |can_i_do |can_not
|can_not_pictur |can_not_remember |can_not_w |can_sh |cancell_they |car_park_what |carry_a
|carry_on |cat_got |cat_got_th |cat_has_been |catch |caught_$ |caught_$_$ |center_when |center_when_w
|centr_N:core_$ |chang_th_pull |check_DISH |check_tell |check_tell_m |chill_th_DISH |chip_pan_is
|chook |church_Nduration |clock |clock_for_th |coat_a |coat_a_spoon |com |com_for_help |com_it_is
|com_out_now |com_out_of |com_than |com_than_i |cooker_hood |cooker_work |cream_w_hav |customer_at
|customer_at_th |cut_board_THING |cut_or |cut_or_ti |dairy |dat_so_that |day_befor |decid_against
|degre_c_put |di_on_m |diaper |did_get |dinner_to |do_DISH |do_N:few_calibrat |do_this_$ |do_timer
|do_timer_and |do_without |dog_out_$ |don_i_know |don_next |don_next_$ |don_so_far |door_befor
|door_befor_Nclock |door_has |door_has_been |down_th_road |drink_in |drown_her |drown_her_$
|dyslexic |earlier_th |earlier_th_P |easter_$ |easter_$_$ |eat_i_am |els_could_i |enamel_THING
|end_not |end_of_it |enough_and |enough_to_pull |even_look |even_look_at |even_pick |even_pick_th
|even_risen |everyth_slip |everyth_slip_by |ey |ey_th |f_by |f_god |f_god_help |faff_about_it
|fahrenheit_how |faint_$ |faint_$_$ |fallen_Nduration |fallen_Nduration_off |fallen_down |family_has
|fan_assist_oven |fat_end_$ |fat_was |fat_was_smok |feet_ar_kill |fell_out_$ |few_minut |few_minut_$
|find_th_THING |find_th_tong |finish_and_it |finish_shop_is |fir |flam_behind |flam_behind_th
|flam_is |fly |fold_chair |for_Nclock_on |for_m_U |for_pink |for_th_parish |for_ty |for_ty_it
|forerib_Nweight |forward_N:some_if |from_bottom_v |from_shrimp_so |full_i_am |full_of_smok
|gam |german_visitor |get |get_a |get_away_with |get_ic_back |get_lat_by |get_th_messag |get_to_it
|go |go_driv |go_driv_th |go_which |go_which_is |god_it_look |gon_U_$ |gon_everywher_$ |gon_i_am
|gon_whol_build |good_Ndegrees:some |good_Ndegrees:some_hot |good_Nduration_behind |good_un
|good_un_don |goos |got_Nweight |got_U |got_a_shift |got_around |got_around_to |grill_h |grill_h_is
|grill_underneath |grocery_list |guest_com |guest_com_Nduration |guest_is_U |guest_will_not
|guidanc |h_can |h_so |h_so_much |had_$ |had_$_$ |had_THING |halv |handl_without |handl_without_a
|happen_so |happen_so_on |has_been_a |has_been_cut |has_di_$ |has_gon_way |has_gon_whol |has_offer
|has_offer_to |hav_N:few_of |hav_N:few_oven |hav_Nduration_of |hav_THING_without |hav_U_th
|hav_a_grand |hav_a_whol |hav_already_got |hav_an_extra |hav_any_THING |hav_been_don |hav_chang_their
|hav_dairy_$ |hav_got_N:core |hav_got_her |hav_got_my |hav_had_a |hav_had_it |hav_his_at |hav_hit_roadwork
|hav_left |hav_lost_electricity |hav_nut_$ |hav_peel_th |hav_plenty_without |hav_prim |hav_prim_rib
|hav_put_DISH |hav_remov_it |hav_rub_th |hav_salt_it |hav_set_it |hav_slic_m |hav_to_start
|hav_turn_it |hear_much |hear_much_out |heat_at_th |heat_put |heat_put_m |helper_today_her
|her_Nduration_after |her_at_N:few |her_befor |her_befor_N:few |her_for_another |her_up_to
|high_in |high_in_boil |his_P_so |his_cook |his_cook_to |his_new |his_new_P |his_steak_medium
|hit_my |hit_my_THING |hit_roadwork_$ |ho |hon |hood_was |hood_was_on |hot_handl |hot_handl_my
|hot_now_ready |hous_afternoon |hous_afternoon_shop |how_$ |how_$_$ |how_com_$ |hurt_h |hurt_h_pour
|i_aim |i_aim_for |i_already |i_am_hav |i_am_stay |i_ask_$ |i_bast_it |i_buy |i_hav_forgotten
|i_hav_to |i_hear |i_know |i_look_for |i_mean |i_n_to |i_ok |i_ok_$ |i_open |i_poison |i_poison_P
|i_pull_it |i_say_N:core |i_set |i_was_hav |ic_back |ic_back_in |if_THING_DISH |if_you_can
|imperial |in_Nduration_already |in_U_and |in_alongsid |in_as_i |in_at_Nclock |in_fat_was |in_for_Nduration
|in_it |in_kilo_U |in_law_ar |in_put |in_th_bowl |includ_N:few |includ_N:few_DISH |insist_on_DISH
|iron_THING_$ |is_N:few |is_N:few_low |is_P_N:few |is_U_and |is_U_clos |is_a_bag |is_a_conventional
|is_a_gas |is_a_school |is_all_gon |is_all_right |is_any_U |is_bleed_$ |is_brought_mat |is_com_to
|is_com_up |is_cut_or |is_cut_th |is_fall_apart |is_full_i |is_get_cross |is_hav_it |is_hav_to
|is_her_sh |is_hit_N:core |is_hot_DISH |is_ignit |is_in_my |is_join_th |is_left_to |is_lost_th
|is_my_next |is_no_str |is_not_past |is_off_by |is_off_conventional |is_on_plat |is_over_N:core
|is_put_th |is_read_N:oven |is_read_Ndegrees:core |is_read_daft |is_rest_in |is_rest_under
|is_shot_$ |is_simmer_as |is_sit_ther |is_slip_on |is_smok_pour |is_spread_up |is_still_THING
|it_br |it_first_this |it_in_N:few |it_is_THING |it_is_dead |it_is_fin |it_is_tell |it_is_urgent
|it_off_Nduration |it_onto |it_onto_th |it_pink_in |it_rar_P |it_rest_now |it_up_N:few |it_with_DISH
|joint_is_in |joint_of |joint_of_THING |joint_out |kaput_it |kaput_it_mak |keep_her |kept_th
|kettl_on_tim |kill_it_$ |kilo_U |kilo_U_degre |kilo_if |kilo_if_you |know_about |know_it_is
|know_onc |know_ther_is |know_when_it |lack_a |lad_hav_land |last_DISH |last_Nduration_$ |last_bit_again
|last_look_N:core |last_look_it |last_on_out |lat_get_start |lat_what |later_preacher |later_preacher_is
|later_would_you |law_$ |law_$_$ |law_ar_at |law_do_not |law_has_U |law_has_com |law_is_pregnant
|law_is_vegetarian |law_pull |law_pull_up |law_tak |law_want_his |lay_N:few_mor |leak_fat |leak_fat_onto
|left_off |left_off_$ |leftover_keep_$ |light_went_out |lik_U |lik_chew |lik_it_well |lik_seawater
|lik_th_THING |lik_to_serv |list_nobody_eat |list_ther |list_ther_$ |littl_screen_by |load_with
|load_with_DISH |loaf_$ |loaf_$_$ |longer_is |longer_they_ar |look_Nduration_mayb |look_so
|look_so_i |low_to_tak |lower_third |lowest_it_will |m_N:some_$ |m_P |m_U_ther |m_a_THING |m_a_r
|m_a_sec |m_a_shout |m_a_yell |m_forget |m_in_fahrenheit |m_should |m_should_it |m_th_simpl
|m_to_check |m_to_turn |m_up_in |m_up_when |m_when_sh |m_when_w |mad_excus |mad_excus_m |mak_a_not
|many_DISH_do |many_ar_w |many_degre_$ |many_kilo |many_mor_minut |many_person |many_person_is
|market_today |mass |meant_to_tell |menu_tonight_besid |menu_yet |menu_yet_so |meter |metric_peopl
|metric_peopl_so |middl_when_w |mind_back |mind_back_$ |mind_it_myself |miss_th_r |mix_and
|month_along |mor_guest_com |mor_will_it |much_THING_do |much_did |much_in |much_salt_do |must_DISH_th
|must_away |must_away_for |my_P_bridi |my_choic_her |my_ex_is |my_finger |my_magic |my_magic_number
|my_mind_crisp |my_option_her |my_palm_$ |n_Nduration |n_th_Nduration |na |nam |nay |nay_$
|nay_$_$ |next_Nduration_$ |next_hour |nick |night_befor |night_befor_b |night_shift |no_N:core
|no_THING_and |no_bon_in |no_flam_at |no_i_hav |no_rar |no_win_in |not_availabl_in |not_b_ars
|not_b_ready |not_been_start |not_bother_sear |not_budg_for |not_com_sh |not_even_peel |not_happen_so
|not_it |not_kept |not_kept_pac |not_light_$ |not_mad_excus |not_on |not_pictur |not_pictur_pound
|not_plan |not_plan_N:few |not_say_that |not_se_for |not_start |not_touch_that |not_turn_on
|not_wait_$ |not_warm_$ |now_Ndegrees:core_insid |now_or |now_th_band |nowher_to_chill |number_has_gon
|of_N:core_on |of_it_they |of_play_$ |of_smok_it |of_th_afternoon |of_th_guest |of_that_blood
|of_them_got |of_us_all |of_you_for |off_$ |off_$_$ |off_N:few_guest |off_my_finger |off_out
|old_boot |on_at_N:oven |on_at_Nclock |on_chemo_so |on_is_cover |on_my_tod |on_out_i |on_stir
|on_stir_duty |on_th_bon |on_th_go |on_th_high |on_th_rarer |on_th_second |on_track_for |on_what_was
|on_without_m |onlin_tonight_what |onto_th_oven |open |open_this |open_this_whol |option_her
|option_her_$ |or_what |order_of_battl |other_ar_sit |other_on_is |out_Nduration_is |out_now
|out_th_P |out_till_Nclock |out_to_walk |out_w_do |outsid_onc |outsid_onc_it |oven_alway_run
|oven_b_$ |oven_b_on |oven_b_set |oven_beep |oven_beep_it |oven_dial |oven_dial_is |oven_down_$
|oven_shelf_will |oven_to |oven_what_do |oven_with_them |over_at_som |over_my_arm |over_th_plac
|overdon_it |overdon_it_is |own_$ |own_$_$ |palm_$ |palm_$_$ |palm_try |palm_try_to |parchment
|past_N:core_$ |paus_$ |paus_$_$ |peanut |peeler_$ |peeler_$_$ |person_is_vegetarian |piec_w
|piec_w_hav |pink_is_it |pink_mor |pink_mor_cook |plac_and_th |plan_h |plan_h_has |play_$ |play_$_$
|point_at_N:core |powder_it |powder_it_is |prefer_on |prefer_on_th |pregnant_$ |pregnant_$_$
|pregnant_woman |prepon |proper_THING_THING |prov_Nduration_ago |public |put_in_her |put_on_th
|quick_$ |quick_$_$ |quick_N:some |quick_N:some_near |quit_badly |r_DISH_$ |r_DISH_ther |r_N:core_$
|rain |rang_they_will |rar_P_still |reach_som |reach_som_ar |read_daft |read_daft_hot |ready_yet_$
|reckon_in |reckon_in_th |refrigerator_$ |refrigerator_$_$ |rental_$ |rental_$_$ |rib |rib_roast_scal
|right_for_pink |right_in |right_or |ring_$ |ring_$_$ |road_is_dark |roadwork_$ |roadwork_$_$
|roast_DISH_hav |roast_DISH_w |roast_hit |roast_hit_N:core |roast_out_$ |rock_solid |rol_ar
|rol_ar_in |roommat_is |run_Nduration |run_lat_with |run_out_$ |said_to_th |say_oven |scal_for_th
|screen_how |screen_how_about |second_it_break |serv_$ |serv_$_$ |serv_buy |serv_buy_m |sh_will_not
|shall |sharp_U |sharp_kindly |shedd_start_Nduration |shellfish_not |shellfish_not_that |shop_Nduration_top
|shop_back |shop_back_in |shower_giv |shower_giv_m |sid_$ |sid_$_$ |sigh |silverskin_toss |silverskin_toss_it
|sirloin_Nweight |sit_down_$ |situation_$ |situation_$_$ |skim |slic_m |slip_and_hit |slip_is
|smell_a_walnut |smidg_to |smidg_to_N:oven |smok_it_is |smok_lik |smok_lik_a |snap_and_it |so_P
|so_far_bad |so_i |so_it_say |so_mak_it |so_they |so_tick |solid_still |som |som_DISH |som_DISH_roll
|som_exampl |som_exampl_of |som_mac |som_mac_and |som_roll_$ |someth_no |someth_no_electric
|someth_to_do |soon_as_th |sous_THING |spar_m |spar_m_for |spot |spread_up |spread_up_th |stand_lik
|stand_lik_$ |start_to_arriv |starv_br |station_$ |station_$_$ |stay_put |stick_of_DISH |still_lik
|still_swim |stood_at_N:core |stor_Nduration_$ |strain_skim |strain_skim_and |stuff_it_th |supermarket_$
|supermarket_$_$ |supermarket_car |supermarket_car_park |supper_Nduration_sooner |swap_THING_for
|swell_up_h |tabl_by_N:few |tabl_god |tabl_god_bless |tabl_that |tabl_that_is |tad_earlier
|tad_earlier_Nduration |tail_Nduration_behind |tak_THING_for |talk_$ |talk_$_$ |tast_lik |tell_you_about
|tell_you_th |temperatur_do_i |tenderis_by |tenderis_by_th |tension_noth |tension_noth_is |th_DISH_idea
|th_DISH_myself |th_U_$ |th_afternoon_look |th_bon_th |th_bottom_shelf |th_continental |th_continental_scal
|th_cooker_work |th_cornbread |th_cornbread_go |th_counter_smell |th_cream_for |th_crumbl_on
|th_finish_roast |th_garag_$ |th_grill_h |th_hous_afternoon |th_icebox_$ |th_lot_to |th_market_today
|th_messag_Nduration |th_oven_door |th_pan_my |th_prep_$ |th_pull_tim |th_run_lat |th_second
|th_shower_Nduration |th_stor_$ |th_stor_Nduration |th_tabl_fork |th_tabl_yusuf |th_tap_run
|th_target_$ |th_thick_of |th_timer_any |th_trick_with |th_truss_how |th_truth |th_water_and
|than_i_thought |than_it_say |than_sh |that_DISH_us |that_N:core_$ |that_back_i |that_into
|that_into_account |that_is_N:few |that_last_on |that_near |that_near_enough |that_should |that_timer_for
|their |them_ar |themselv_$ |themselv_$_$ |then_what |theo_is |theo_is_P |ther_another |ther_another_way
|ther_anyth_i |ther_special |ther_special_word |they_ar_in |they_ar_out |they_hav_had |they_keep
|thick_grey_r |thick_of_it |thick_part_$ |thick_part_N:core |think_i_am |this |this_U_stov
|thought |through_th_gam |ti_them |ti_them_back |tim_and |tim_hav_gon |tim_to_chill |tim_you_say
|timer_never |timer_never_mind |tinfoil_now |to_DISH_and |to_N:oven_th |to_N:oven_wait |to_a_quarter
|to_b_do |to_b_lat |to_b_on |to_b_with |to_buy_THING |to_church_for |to_go_from |to_go_in |to_it_h
|to_li_down |to_prepon |to_prepon_by |to_pull_at |to_rest_$ |to_rest_it |to_serv_it |to_start_it
|to_tak_this |to_th_dog |to_us_you |to_warm_th |tod_now |tod_now_cressida |today_her |today_her_nam
|too_much_in |too_salty_i |took_it_out |top_and |touch_th_pan |tough |traffic_Nduration |transplant_bear
|transplant_bear_that |travell_P |travell_P_all |trim_part |trim_part_i |truss_th |truss_th_roast
|trust_that_THING |tuck_in |tyr |under_th_THING |under_th_grill |up_if_h |up_so_far |up_th_THING
|up_to_$ |up_to_heat |up_to_it |up_to_temperatur |us_N:oven |us_and_N:few |us_at_Nclock |us_do_it
|us_eat_Nduration |us_go_straight |us_hav_DISH |us_instead |us_mak_dinner |us_medium |us_medium_$
|us_non |us_skip_th |us_will |us_will_b |us_you_$ |vegetarian_i |vegetarian_no_THING |volunteer_for_DISH
|w_at_with |w_eat_Nduration |w_get_to |w_hold_everyth |w_is |w_is_not |w_los_th |w_stand_lik
|w_still_good |w_wer |w_will_hold |wait_for_th |want_her_medium |want_his_medium |want_it |want_m_to
|want_th_Nduration |want_th_THING |was_N:core_in |was_hav |was_hav_a |was_lay |was_lay_th |was_read_th
|water_THING_test |water_down |water_on_his |water_test_cam |water_underneath |way_THING_this
|way_my |way_near |way_near_brown |way_out_$ |way_th_DISH |weight_of_DISH |went_out_whol |went_up_again
|went_up_to |wer_go_to |wet_til |what_i_did |what_is_for |what_is_it |what_is_left |what_reason_w
|what_to |what_was_it |whatever_gon |whatever_gon_Nduration |when_w_hit |whisht_$ |whisht_$_$
|whol_build |whol_build_is |whol_stick |whol_stick_of |whol_tim_$ |will_b_want |will_com_out
|will_do_that |will_go_$ |will_go_which |will_hav_a |will_hav_th |will_not_bother |will_not_stop
|will_se_you |wilt_$ |wilt_$_$ |win_P_drank |wis_N:few |wis_N:few_bon |wish |with_her_$ |with_it_DISH
|work_so |would_lik_DISH |would_lik_th |wrangl |wrangl_th |wrangl_th_THING |wreck_it |wreck_it_$
|wrist_on |wrist_on_th |wrong_$ |wrong_$_$ |wrong_i_hav |ya_$ |ya_$_$ |yank_it_at |year_is
|year_it |yes_N:few |yes_th |yet_leav |yet_leav_it |yet_so_green |you_for_now |you_go |you_lik_that
|you_mak_do |you_must |you_reckon_it |you_se_th |you_th_delivery |you_want |you_watch_for |your_list_at
|yusuf
7 @105.6| @137.1| @144.2| @148.2| @2.0| @28.4| @57.1| @57.2| @74.2| @74.5| @76.6| @91.6| DISH_DISH|th
DISH_cover| DISH_for_N:few| DISH_if| DISH_in_N:few| DISH_out| DISH|again_$ DISH|and_i DISH|back
DISH|m N:core_Ndate| N:core|N:core_$ N:core|guest N:core|how_much N:core|in_Nduration N:few_coeliac|
N:few_instead| N:few_rather| N:few_rib| N:few|Nduration N:few|THING_THING N:few|count N:few|that
N:few|when N:oven_THING_N:core| N:oven_w_ar| N:oven|N:oven N:some|N:some N:some|and_th Nclock_sharp|
Nclock|P Ndate|no Ndegrees:core|is Ndegrees:core|th Nduration_back| Nduration_earlier| Nduration_so|
Nduration|do_i Nduration|out Nduration|when Ngas-mark_it_is| Nweight|P P|and P|this THING_THING_sorry|
THING_THING|U THING_ar_stream| THING_is_don| THING_is_ly| THING|P THING|and_my THING|my THING|not
U_not| U_no| U|ag U|so ^_DISH_on| ^_DISH_peel| ^_DISH|on ^_N:core_insid| ^_Nduration_timer|
^_P|i ^_^_behind| ^_^_excus| ^_^_metric| ^_behind| ^_bon_off| ^_climb_to| ^_excus| ^_metric|
^_not_finish| ^_no|not ^_no|that ^_pip_down| ^_say_again| a_Nduration_timer| a_nudg| a_th|
a_whol_DISH| after|N:few again|N:core ago_forgot_to| all_N:few| all_day| all_it_is| all_sort|
allergic_reaction| am_Nduration_behind| am_in|th am_run_lat| am_sorry| am|ready and_his_P|
answer| ar_DISH| ar_U| ar_cut| ar_early| ar_eat| ar_her| ar_off| ar_stream| ar_up| ar_w_at|
arriv|th ar|N:few_at asleep| at_N:core| at_N:few_rather| at_th_DISH| at_th_stov| away_for_Nduration|
b_bast| back_down| back| back|now bank| beep| befor_dinner| blood| board|THING chook| cold|i
cover| cover|and cry_into_th| cupboard| day|from deck| did_you_hav| dinner_at_N:few| dinner_at_Nclock|
dinner|and don_it| don|so door_ajar| down_N:few| drip| early| eat_Nclock| eat|P far| first|colour
for_Nduration|now for_my_P| for_m|th for_that| for_this_crowd| forgot_to_say| for|it_is function|
get_th_THING| get_them| gon_Nduration| good|P gorgeous| got_them| ground| guest_hav_com| has_com|for
has_gon_in| hav_no_THING| help|th herself| her|and her|w high|i hold_on| hook| i_am_sorry|
i_am|ready i_should_b| i_swear| in_P| in_at_N:oven| in_sinc_Nclock| in_th_fridg| insid|and
instead_of_salt| in|P in|door is_at_N:core| is_burn| is_coeliac| is_delay_Nduration| is_driv|
is_fin| is_lazy| is_not_don| is_off| is_on|and is_outsid| is_pack_in| is_rest| is|as is|h is|so
it_has|not it_in| it_is_burn| it_is_not| it_medium| it_ther| it_well_don| it_with| it_yet|
it|both it|let it|let_us it|mark joint_Nweight| kind| label| lat_Nduration| lat_her| lat|do
leather| left_open| lik_his_rar| lik|what list|and long|it look_don| lower_oven| m_N:some|
m_a_nudg| m_at_Ndegrees:core| m_that| mak_DISH_cream| mak_that_N:few| mash| mil| money_fahrenheit|
mor_guest| morag| my_end| need| no_str| no_wait| not_N:few|N:few not_N:oven| not_com| not_tak_it|
noth_els| not|P now_P| now|DISH now|go no|N:core no|rar number|N:some nut_DISH| of_DISH|and
of_them| of_them|so off_Nduration| ok_ok|i ok|U old_money_fahrenheit| on_Ngas-mark| on_a_THING|
on_my_end| on_th_b| on_th_clock| on_th_phon| on_th_roast| on_th_timer| on| on|w otherwis| out_now|
out_on_m| out_whol_street| oven_beep| over_th_U| over_th_top| over|it_is own_a_THING| pay_customer|
peopl|Nclock pink_not| pink|it power_went_out| prim_rib| priya| promis| pull_up| put_DISH_on|
reaction| read_is_N:core| reckon_N:core| remov_it| rest_now| roast_DISH_in| roger| roll_cam_out|
rough_up| run_it| run|back run|back_in s_out| salty| say_sh| say|so schedul| set_a_timer| sh_hit_N:core|
sh_is_at| sh_is_down| sho_leather| sinc_th_summer| situation| skin_on| so_i_hav| soon| sorry|U
so|th stov|and sulk| tak_THING| th_DISH_out| th_DISH|and th_bag| th_bowl| th_b| th_car| th_center|
th_cupboard| th_dog|and th_fridg| th_headcount| th_in| th_night| th_oven_di| th_paper| th_plan|
th_sear| th_train| th_truss| them|so ther| ther|that they_said| this_crowd| th|no tick_that|
tick|Nduration to_N:oven|THING to_chang| to_do| to_help| to_room_temperatur| to_your| too_low|
top_shelf| touch_N:core|and tough| truss| trust_that_THING| truth| typo|N:core up_to_N:oven|
up_to_Ngas-mark| us|th_DISH w_lik_it| was_at_N:core| was_left_open| way_too_salty| went_hom|
when_is_THING| whisk| will_not_com| will_not_stop| with_m| work|so yet|DISH you_ask| you_say|th
you|and |@1.6 |@10.3 |@102.2 |@108 |@129.3 |@136.1 |@137.4 |@146.3 |@24.8 |@26.1 |@33 |@33.5
|@49.5 |@84.3 |DISH_ar_burnt |DISH_ar_on |DISH_ar_still |DISH_crisp |DISH_has |DISH_is_THING
|DISH_split_$ |DISH_went_in |N:core_in |N:core_rather |N:core_second |N:few_DISH_THING |N:few_oven
|N:few_peopl_N:few |N:oven_fan |N:oven_in_th |N:oven_it |N:some_behind |N:some_next |Nclock_Ndate
|Nclock_for_th |Nclock_now |Ndegrees:core_in_th |Ndegrees:core_on_this |Nduration_U_is |Nduration_at_N:oven
|Nduration_back_it |Nduration_for |Nduration_go |Nduration_timer_for |Nweight_N:few |Nweight_in
|P_at |P_on_th |THING_board |THING_go_in |THING_timer |THING_trim |U_N:core |U_how |U_is_in
|U_mak |U_sh_is |U_well |a_small |across_th_THING |add_DISH |airport |alert |all_U |all_my
|all_out |all_th_THING |alon_$ |alon_$_$ |and_DISH |and_back |and_cor |and_everyth_in |and_i_turn
|and_i_would |and_nudg |and_ther_will |and_w |and_why_do |as_instruct |as_soon |as_soon_as
|beautiful_$ |beautiful_$_$ |board_THING |bon_in_Nweight |bottom_shelf |burnt_my_THING |burnt_myself
|burnt_myself_on |can_w_eat |can_you_imagin |chang_it_to |chief |chief_$ |chief_$_$ |clear_it
|crank_it |crew |cylinder |cylinder_is |cylinder_is_empty |did_i_say |do_it_matter |do_not_$
|doabl_$ |doabl_$_$ |down_Nduration_$ |dry_as |earl |early_bird |eat_Nduration_early |finish_th
|finish_th_DISH |first_on |first_th |forgot_th |found_th |fresh_out |fresh_out_of |full_hous
|get_th_U |god_help_m |gon_for |good_P |got_that |grab_th_hot |grey_all |guest |guest_they
|h_do |h_has |hamish |hang |has_not |help_$ |help_$_$ |his_P_is |hold |hotel |how_THING_hand
|how_com |i_call |i_do_not |i_forgot_to |i_hav_a |i_let |i_lower |i_order |i_put_THING |i_shut
|i_think_it |i_wrot |ignor |in_they |insid_th_THING |is_th_gam |is_that_on |is_ther_anyth |it_has_had
|it_is_back |it_is_off |it_is_raw |it_is_ti |it_say |keep_your |kilo_and_celsius |knock_th_oven
|let_us_eat |lord |los_th |m_and |mak_m_a |may |mob |monster |n_to_know |needl_is |never_got_THING
|new |nic_and |no_cream |no_i |not |not_lik |not_start_th |not_that |not_your |onc_mor |option_N:few
|option_N:few_$ |out_N:core |oven_has_com |oven_on |palm |palm_is |palm_is_blister |power_is_out
|push_dinner |push_dinner_back |put_DISH |put_it |put_it_up |quick_THING |rar_lik |ravi |read_N:core
|remov |remov_$ |remov_$_$ |rest_under_THING |revert_$ |revert_$_$ |roast_DISH_and |roast_i
|roast_is_in |rob |rugby_club |run_lat |say_m |scrap_th_DISH |serv_N:few |sh_is_out |shellfish_allergy
|shout_when_it |shut_th |sinc_Nclock_and |sir_$ |sir_$_$ |sit_down_is |skip_it_$ |smok_detector
|so_N:few_$ |so_put |sock |soft_as |soft_as_butter |sold_to |splash_of |stab_it |start_over_$
|start_th_clock |ston_cold |ston_cold_$ |stopwatch |straight_to |talk_m_through |target |temperatur_is_N:core
|test_it |th_DISH_i |th_N:few_r |th_U_th |th_blu |th_doctor |th_family |th_fourth |th_good
|th_in |th_label_say |th_lady |th_roast_at |th_str |th_weight |th_work_$ |th_world |that_can_not
|thermostat_is |they_ar_at |they_ar_eat |they_hav |they_hav_got |they_say |thin_end |timer_Nduration_DISH
|to_ask |to_wait |trim_th |turn_th_oven |typ_it |typo |unit |up_all |w_ar_at |w_ar_down |w_can
|w_good |w_hav_it |w_will_b |w_will_hav |wait_for_m |want_longer_$ |warn_m_when |well_th |went_in_Nclock
|wer_Nduration |what_ar |what_do_w |what_do_you |what_for |what_is |what_number |what_number_am
|what_tim_do |what_weight |which_number |which_way |will_not_b |wind |wip_it_$ |with_th_oven
|you_hear
8 @114.7| @132.1| @132.2| @144.0| @147.4| @25.3| @34.6| @47.7| @49.0| @62.0| @67.3| @90.1|
@99.4| DISH_U| DISH_in_Nduration| DISH_roll| DISH|N:few DISH|and_took DISH|sh_is DISH|th N:core_and_frail|
N:core_at_Nclock| N:core_still| N:core|tak N:few_and_N:few| N:few_mor_guest| N:few_roll| N:few|Nclock
N:few|Nweight N:few|i_am N:few|it N:few|peopl_ar N:some_of_us| N:some|Nduration Nclock|can
Ndate| Nduration_after| Nduration|THING Nduration|giv Nduration|go Nduration|my Nduration|still
Nweight|in P_did| P_has_com| P_is_THING| P_is_her| P_is_not| P_is|tak P|by P|no P|so_that P|well
THING_N:few_high| THING_Nclock| THING_THING_Nweight| THING|U_$ THING|i_am THING|put THING|wer
THING|yes U_DISH| U_oven| U|N:some U|U_$ U|is_not ^_DISH_boil| ^_DISH_no| ^_DISH|Nduration
^_DISH|out ^_N:few_adult| ^_N:few|i ^_THING_now| ^_^_beta| ^_^_doorbell| ^_^_grand| ^_^_listen|
^_all_sort| ^_beta| ^_doorbell| ^_drop_it| ^_grand| ^_listen| ^_no_no| ^_no_n| ^_no_pink| ^_not_N:few|
^_now_what| ^_no|N:core ^_option_N:few| ^_starter_is| ^_they_rang| ^_yes_yes| a_THING_in| a_body|
a_timer| again|th ago|th all_her| all_of_them| all_sid| already|what altogether| am_Nduration_off|
am_at_it| and_chill| and_count| ar_away| ar_hav_it| ar_nowher| as_dishwater| ask_for| at_N:few_dinner|
at_N:few_tonight| at_onc| at_th_start| b_DISH| b_join| back_it_was| back|and bedlam| beep_at_m|
behind|Nduration bin_th_timer| boil_for_DISH| bon_rib_roast| bottom_oven| bring_his_P| butter|i
can_you_believ| card| celiac| chang_my_mind| chewy| climb_to_N:core| coach| com|N:few cow_is_tail|
cross_it_off| dinner_in_Nduration| di| do_not_ask| do_th_french| do_without| don_with| down_a_notch|
down|that do|P do|on do|on_th duck| eat_N:few| eat_Nduration_later| eat_at_Nclock| eat|i entry|
fella| final| finish| for_Nduration|i for_do| for_th_DISH| fresh_DISH| froz| get_lat| gin|
go_on| green_on| guest_cam| h_is_in| has_gon_cold| has_th_DISH| hav_a_jar| her_for| her_tablet|
her|th hot|in i_ask_for| in_Nduration| in_celsius| in_mind| in_now| ingrid| in|DISH in|they
is_N:core_over| is_Nweight|i is_bedlam| is_brown| is_caught| is_keel_over| is_min| is_not_finish|
is_on_N:some| is_on_chemo| is_out|it is_pregnant| is_ready| is_tail| is_th_number| is_weak|
it_all_go| it_is_bedlam| it_is_out| it_will_not| it|N:core it|THING it|what kaput| kilo_is|
lap| last_entry| lik_a_U| lik_this| listen| look_U| ly| m_Nduration_behind| m_no| mak_it|so
measur_N:core| mor_ar_com| my_P|th my_leg| my_mind| myself|and m|th_DISH n_longer| n_to_buy|
no_P|th no_fresh_DISH| not_gon_in| not_hear_you| not_in| not_it| not_mind| not_out_yet| not_ready_yet|
not_ti| not_wak| not|it now|is now|oven no|i_meant no|they nut_allergy| of_U| of_tim| off_now|
offer| off|THING ok|it on_everyth| on_th_U| on_th_list| on_th_oven| onto_th_board| on|Nduration
on|how out| oven_at_Nclock| oven|how oven|so overcook| overdon_it| overwhelm| pan_under| peel_anyth|
peeler| pink_U_not| plac|and power_cut| pregnant| problem| programm| put_U| put_on|th rar_thank|
rar| rest| rib_N:few_bon| rib|N:few right|go room_temperatur| say_i_am| seat| second_on|th
second_oven| shirt| sooner| so|i_will split| start_th_DISH| talk|for th_DISH_cover| th_DISH|U
th_THING_on| th_THING|all th_U_U| th_barbecu| th_chang| th_couch| th_cousin| th_dial_to| th_dial|
th_finger| th_in_law| th_menu| th_new_P| th_other_oven| th_oven_N:oven| th_pan_under| th_quick_on|
th_road| that_is_Nduration| that_is_it| that_went_in| that_will_do| that_work| that|Nweight
them_turn| thin_as_dishwater| this_Nduration| through_th_day| thumb_open| tinfoil| to_DISH_it|
to_N:few_peopl| to_N:oven|th to_Nclock| to_fahrenheit| to_go| to_mak_DISH| to_peel| toaster|
tongu| tonight_at_N:few| too| top_THING| trim_it| turn_on| turn_up|and under_THING| up_and_in|
up|DISH us|do_th veggi| w_talk| was_out| we_whil| well_that| well| what_i_want| whol_THING_THING|
will_not_heat| with_a_drink| with_you| without_m| would_say| wrong|N:core yes|and you_believ|
you_want| you|U you|i |@10.0 |@116.0 |@46.2 |DISH_DISH_don |DISH_DISH_how |DISH_THING_is |DISH_go_in
|DISH_is_whisk |N:core_com |N:core_fan |N:core_near |N:few_extra |N:few_i_think |N:few_less
|N:few_mor_peopl |N:few_peopl |N:oven_N:oven |Nclock_at |Ndate_at |Ndegrees:few_under |Nduration_DISH_$
|Nduration_later_preacher |Nduration_not_N:few |Nduration_on_th |Nduration_top_$ |Ngas-mark_$
|Ngas-mark_$_$ |Nweight |P |P_and_th |P_has |P_is_in |THING_THING_no |THING_cream |THING_hand
|THING_is_off |THING_is_show |U_com |U_on_DISH |a_grand |a_tablespoon |a_tablespoon_of |add_th
|am_head |and_N:core |and_half_of |and_hold_dinner |and_i_go |and_i_think |and_no |and_reckon
|as_in |bear |beep_at_m |bob |boss_$ |boss_$_$ |bung |burnt_th |cancel |chang_to |check_th
|cor_is |count_down |current |dinner_Ndate |do_not_chang |do_not_go |door_is_shut |door_of
|doorbell_that |doorbell_that_is |dough |drop_to_N:core |dry_as_a |eejit |everyth_tak |fill_m
|fill_m_in |flam_in |flam_in_th |for_N:few_peopl |forget_i_said |fridg |fridg_cold |giv_m_a
|giv_m_option |giv_us |go_for |go_to_th |golden_as |gon_Nduration |gon_way |gon_way_past |greas_fir_$
|green_DISH_ar |grey_right |grey_right_through |guid |h |h_is_hav |h_said |has_it |hav_ti |holler_at
|hot_oven |how_do_i |i |i_U |i_am_go |i_am_us |i_burnt |i_hav_th |i_left |i_put_th |i_say_to
|i_want_a |i_will |idk |in_at_N:core |in_our |is_a_we |is_pink_ok |is_th_THING |is_this |is_top
|is_water |it_cam |ji_$ |ji_$_$ |keep_it |kill |lad_ar |let_us |light_ar |lik_$ |lik_$_$ |lik_my
|look_again |lunch_at_N:few |mak_a_nois |mov_it |my_P_can |my_U |next |next_job_$ |no_U_$ |no_chuck
|no_chuck_that |no_th |normal_$ |normal_$_$ |not_keep_up |not_now |now_it |nowher |nudg_m |number_N:few
|of_all_th |ok |ok_THING |old_oven |or_how |out_i_hav |out_sh |outsid_is |oven_run_Ndegrees:few
|pass_on |pass_on_that |phew_$ |phew_$_$ |phon_is_ring |pip |power_cut |press |prim_rib_Nweight
|right_THING |rub_it |saf_$ |saf_$_$ |say_th |scrub |second_oven |sh |sh_is_U |sh_will |should_it_b
|shut |shut_up |silenc |slowly_$ |slowly_$_$ |so |so_N:few |so_dinner |so_rar |sorry |start_from
|still_on_track |stop |stop_that_timer |stopwatch_for |stopwatch_for_th |stuck_th |supper_at
|supper_at_Nclock |tabl_at_N:few |teach_m |tell_m |tell_them |th_U_i |th_bathroom |th_box |th_cat
|th_extractor_is |th_fan_is |th_oven_i |th_rib_with |th_roll |th_stov_is |th_train |th_turkey
|thank_you_$ |thank_you_so |that_is_N:core |that_is_all |that_is_her |that_is_th |that_was_th
|that_would |then_i_will |they_ar_not |thick_end_say |thought_$ |thought_$_$ |tonight_at |tonight_at_N:few
|too_many |took_th |top_oven_is |top_shelf |turn_th |upper |w_ar_out |w_must |what |what_do
|what_els |what_good |what_good_do |what_happen_if |what_i_should |what_now_$ |what_tim_is
|wher_wer |wher_wer_w |whisht |why_is_it |you_ar_go |you_sit |your_turn
9 @116.1| @21.0| @24.4| @32.0| @65.5| @71.2| @85.1| @88.0| DISH_THING|DISH DISH_ar_burn| DISH_is_on|
DISH_peel| N:core_insid| N:core_or_N:core| N:core|DISH_ar N:few_bon_Nweight| N:few_sharp| N:few_steady_temperatur|
N:few|and_how N:few|eat N:few|go N:few|out N:few|sh N:few|sh_is N:few|us N:some_lat| N:some_now|
N:some_peopl| N:some|it N:some|not N:some|they_ar Ndate|N:few Ndegrees:oven|THING Nduration_THING|
Nduration_ago|th Nduration_go| Nduration_lat| Nduration_mor| Nduration|hav Nduration|let Ngas-mark|
Nweight_N:few_bon| Nweight|roll P_is_U| P_is_vegetarian| P|you THING_Nweight| THING_say_N:oven|
THING_under| THING|all THING|i_will THING|right THING|sit U_ar_out| U_well| U|who ^_DISH_out|
^_Ndate|Nclock ^_P|it ^_^_bast| ^_^_righto| ^_bast| ^_righto| ^_school_run| ^_stop_it| a_U|it
a_not| a_sid| about_th_DISH| about_that| again_N:core| again| alon| anywher| ar_arriv| ar_her_all|
as_w_speak| assembl| at_N:few_sharp| at_N:few|th at_Ndegrees:some| attention| away_N:some|
ay| b_N:oven| b_lat| ban| beautifully| blow| br_th_DISH| carv_it| centr| clear_th_timer| com_U|
dark|and do_anyth| do_gluten| do_this| don_no_pink| dust| eat_U| enough_N:core| extra_plat|
f_th_chook| fan_on| first|th flam| for_us_medium| freya| from_work| from_you| get|down got_N:few_r|
grey_right_through| guy| h_is_out| halal| halfway_through| hav_DISH_DISH| hav_cancell| hav_lost_Nduration|
hav_shown| hen| her_THING| her_all| her|so his_P| hi| hold|your hom|and hoover| hot_now| i_set_it|
if_so| in_Nclock| in_Nduration|and in_th_end| in_th_hous| in_thos| inform_m| instead_of_DISH|
in|and in|set is_N:few_now| is_Ndegrees:few_under| is_Nduration_lat| is_back_in| is_blunt|
is_dark|and is_hot| is_over| is_written| it_at_N:some| it_back_Nduration| it_back_in| it_is_cover|
it_out|and it_said_N:core| it_to_rest| it|and_i it|and_th it|w joint| jok| jun| kill_th_timer|
larg| letter| lik_sho| lik_that| lovely|U meter| metric| mor|it mouth_to_f| nervous| new_dinner|
nix_th_DISH| no_DISH_th| no_win| not_Nclock| not_U| not_befor| not_do_gluten| not_do_it| not_light|
not_stop| now_on| no|N:core_i nut| of_heart| of_salt| off_already| ok|and on_a_Ndate| on_out|
on_th_dial| on_th_hob| on|ther or_N:core| out_her| out_hot| out_yet| out|THING oven_di| oven_is_off|
oven_is_preheat| oven_pack_up| oven|P over|i panic| peopl|N:few pet| phon_call| plenty| pregnant|is
quiz| rest|U right| salt|no sat_down| say|your school_run| second_on| serv_N:few| servic| set|and
sh_did| shown| sinc_Nduration| sir| so_low| so|DISH steady_temperatur| still_moo| stop_talk|
strik_that| summer| tabl_now| tell_you_what| tent_it| th_DISH|th th_U|th th_bottom_shelf| th_cast_iron|
th_end| th_guest_cam| th_lower_oven| th_music| th_oven_now| th_step| th_whol_hous| th_whol_tim|
that|how they_ar_don| they_want_it| ti_back_on| ti_back| till_N:core| tilly| ti| to_N:core|
to_N:oven| to_Ndegrees:oven| to_end| today| ton| top_oven| topsid| trim| tripl_digit_N:core|
up_at_N:core| up|it us_medium| visitor| w_speak| wait_now| went_in| when_i_cut| who_know| whol_street|
will_ya| with_N:few_bon| with_th_THING| with_th_str| wrist| you_lik| you|it_is |@108.3 |@114.4
|@115.1 |@117.4 |@38.6 |@40.4 |@64.7 |@69.1 |DISH |DISH_DISH_i |DISH_ar_charcoal |DISH_ar_don
|DISH_cream |DISH_hav |DISH_hav_not |DISH_is_in |DISH_n |DISH_or_DISH |DISH_went_on |N:core_N:core
|N:core_after_Nduration |N:core_fan_$ |N:core_now_$ |N:core_well |N:few_Nduration |N:few_rib
|N:few_rib_Nweight |N:some_N:some |N:some_year |Nclock_Ndate_$ |Nclock_sharp_$ |Ndate_at_N:few
|Ndate_is |Nduration_ago_N:core |Nduration_not |Nweight_stand |Nweight_stand_rib |P_P_is |P_in_law
|THING_N:core |THING_THING_is |THING_ar |THING_fork |THING_has_left |THING_how_many |THING_out
|THING_up |U_down |U_i_said |U_right |U_say |U_sid |U_that |U_why |a_Nweight_leg |a_P |a_whol
|absolutely |add_a_DISH |add_roast |add_roast_DISH |aim_for |and_butter |and_did |and_himself
|and_how_many |and_i |and_sit_down |and_th_in |and_this |and_w_hav |and_what_do |anyth_i_should
|b_back |back_now |beautiful |been_on |bottom_of |bottom_of_th |br_it |brid |bump |by_$ |by_$_$
|by_th_way |call_it_Nduration |chuck |correct |current_has_gon |day_N:few |deep_$ |deep_$_$
|dinner_Nduration_later |dinner_at |dinner_is_Nclock |ditch |ditch_th_DISH |do_i_tak |do_it_hav
|doneness |doorbell |drop_it_to |duck_$ |duck_$_$ |electric |end_th |every_singl |explain_th
|extractor |fat_is |flat_as |flight_delay |flight_is_delay |forget |forget_th_DISH |fully_cook
|giv_us_th |go_back_$ |guest_list |h_has_been |hav_to |hav_you |hey |how_do |how_i |how_thick
|how_to_get |how_warm |i_am_suppos |i_forgot_$ |i_go_to |i_hav_had |i_hav_taken |i_never_said
|imagin_$ |imagin_$_$ |in_this_flat |insid_temperatur |is_THING_THING |is_it_still |is_not_it
|is_th |is_th_roast |is_ther_any |it_alway |it_is_overcook |jaysus |joint_is |jory |kip |kofi
|let_it_rest |let_m |lik_an |lit_th |look_it |lot_of |mak_that |medium_is |middl |middl_is_N:core
|my_P_is |my_THING_is |my_oven_run |nerv |new_dinner_$ |new_oven |nip |nip_to_th |nix |nix_th
|no_P |no_fan |no_wait |nobody |normal |not_N:oven |not_THING |not_don_yet |on_w |open_a |out_of_that
|oven_down |oven_temperatur |paus |preheat_to |put_a |put_th_roast |read_is |read_of |read_of_N:core
|reckon_th |repeat |repeat_$ |repeat_$_$ |rest_no |roast_DISH_in |roast_has |roll_ar |rory
|sam_is |scrap |seriously |sh_is_N:some |sh_is_allergic |shelf_is |shout_at |shov |skip_it
|smash_and |smash_and_DISH |so_Nclock_$ |so_rar_$ |start_again |storm |suppos |tak_N:few |talk_to
|temperatur_N:core_$ |tent_$ |tent_$_$ |th_DISH_went |th_THING_cam |th_long |th_new |th_oven_will
|th_pric |th_roast_has |th_roast_is |th_twin |th_we |that_was_a |that_was_my |then_it_is |ther_is_a
|they |they_want |thick_end |tom |too_THING |un |unsay |w_do_it |w_tak_it |w_took_it |way_too_salty
|well_i |well_it |what_sid |what_tim |what_will_i |when_do_th |when_i_must |will_THING_do |will_that
|will_ya_$ |with_bon_$ |you_talk |your_P_is
10 @102.1| @111.7| @136.4| @37.2| @38.7| @78.1| @92.4| DISH_DISH_mad| DISH_DISH| DISH_alarm|
DISH_away| DISH_is_out| DISH|i_am DISH|is_th N:core|and_N:few N:core|rest N:core|that N:few_extra_peopl|
N:few_heat| N:few_month_pregnant| N:few_now| N:few_of_us| N:few_peopl|Nclock N:few|about N:few|and_sh
N:few|and_that N:few|can_not N:few|i_hav N:oven_to_N:oven| N:oven|DISH N:oven|dinner N:oven|th
N:oven|what Nclock_N:some| Nclock_U_th| Ndegrees:oven| Nduration_away| Nduration|DISH_$ Nduration|and_how
Nduration|how_long Nduration|th Nweight_N:few| Nweight_it_is| Nweight_with_bon| Nweight|for
P_is_vegan| P|h_is THING_THING|do THING|N:some U_m| U|P_is U|should ^_THING_up| ^_U_P| ^_U|do
^_^_celsius| ^_^_correction| ^_^_fahrenheit| ^_^_medium| ^_all_don| ^_brb_Nduration| ^_celsius|
^_correction| ^_fahrenheit| ^_hold_up| ^_it_beep| ^_medium| ^_no_wait| ^_not_don| ^_plus_N:few|
^_so|i ^_still_N:core| ^_strik_that| ^_well_don| ^_yes|and a_crisp| about_my_oven| adjust|
afraid| all_over| all_th_DISH| all_through| alongsid| and_pink_not| and_top| apart| ar_at_N:core|
ar_burn| ar_not_ready| ar_out| ar_preheat| ar_still_raw| arriv| at_N:core_for| at_N:core|how
at_N:few_Ndate| at_Nclock_Ndate| at_Nduration| at_m| at_th_door| b_N:few_person| behind_her|
bill| blank| bon|th boy| brb_Nduration| brok| brown_enough| by_N:few|and cancell_so_N:few|
can|and coast| count_N:few| dairy| dead_center| did_not_ris| dinner_at_N:oven| do_not_U| do_not_they|
don_P| down_Nclock| drop_th_roast| dry|and duty| easter| easy| extra_peopl| f_N:few| fallen_down|
finger|N:core finish|i for_Ndate| for_Nduration|th for_now| forward_Nduration| from_her_on|
go_back_in| got_no_DISH| has_fallen_down| hav_com| hav_reach| her| him_in| him|h hit_th_oven|
hot_finish| i_look| in_at_Nclock| in_her_for| in_th_center| instant-read_say_N:core| in|it_is
in|sh in|what is_Nduration_later| is_at_N:some| is_him_in| is_nowher_near| is_out|th is_plenty|
is_show_N:core| is_that_ok| it_com| it_go| it_is_burnt| it_is_mad| it_matter| it|Nweight it|how
it|i_am it|no it|not it|put keel_over| know_at_N:core| lagg_by_Nduration| let_it_rest| look|Nduration
lunch_Nclock| medium_instead| miss|THING month_pregnant| my_P_help| neither| not_bother_m|
not_brown_enough| not_mad| not_talk| not_warm| not|what off_Nduration_ago| officer| on_convection|
on_m| on_th_wall| on_then| on|at_N:core on|hav on|not out_at_N:few| oven_door_open| over_it|
pink_at_all| rar|U result| resum| return| rib|and scream| sear_is_don| sear|it_is sh_com| shower|Nduration
sinc_Ndate| sit_down| skip_that_on| smoky| sorry_what| sticker| still_THING| still_in| stream|
th_DISH_so| th_THING_pan| th_bast| th_bin| th_go| th_instant-read| th_nam| th_stick| th_way_through|
that_last_bit| that_off| that_ok| them|it them|ther them|w thes_day| they_ar_out| thickest_part|
th|and th|i_am to_N:few_now| to_medium_well| to_m| to_say| to_tell_you| too_long| too_salty|
too|i turn_it_off| w_ar_preheat| wait_wait| want_his_rar| weight_in_kilo| weird| whol_U| will_do_it|
will_not_do| would_you| wrong_THING| yes|THING yes|yes_i you_reckon| |@132.4 |@23.1 |@24.6
|@8.4 |@85.3 |@90.2 |DISH_DISH |DISH_DISH_has |DISH_has_gon |DISH_hav_been |DISH_it_b |DISH_n_longer
|DISH_no |DISH_out |N:core_in_th |N:few_U_N:few |N:few_rib_and |Nclock_N:some |Nduration_ago_it
|Nduration_for_th |Nduration_sooner_$ |Nduration_top |Nweight_N:few_bon |P_U_is |P_is_chok
|P_is_her |P_n |U_do |a_Nweight |a_Nweight_N:few |add_a |all_N:few |already_got |and_DISH_ar
|and_i_hav |and_it_go |and_so |another_N:few |bit_lost |bottl_is |bottom_shelf_$ |brown_it
|can_not_find |can_not_keep |can_w_do |can_w_hav |capital |check_th_THING |cheer |cliv |com_THING
|cor_temperatur |cough |crank |dinner_mov |do_i_cover |do_i_turn |do_not_n |do_not_speak |door_of_oven
|drop |eas |eat_Nclock |eat_Nduration |elsi |enough_reminder |enough_reminder_$ |flat_tyr |flat_tyr_Nduration
|forget_about |forget_about_th |gas |giv_m |giv_th |gon_for_Nduration |greas |h_has_had |h_is_still
|hav_i |hit_m |hold_on |honestly_i |how_long_is |how_many_day |how_much |i_am_drown |i_am_leav
|i_am_run |i_hav_drop |i_hav_pull |i_keep |i_knock |i_lost |i_turn_it |i_wash_th |in_with_th
|is_not_got |is_possibl |is_that_a |it_THING |it_cam_out |it_went_up |kill_th_heat |left_it_in
|list |littl_oven |look_at |look_at_that |los_th_DISH |low_first |mak_it_Nclock |mak_it_medium
|mak_m |medium_rar |method_for |my_P_h |my_lot |n_to_pick |nam_of |next_step_$ |no_str |not_ready_$
|now_it_is |off_w |oven_N:some |oven_heat |oven_is_dead |oven_pack |oven_pack_up |p_m_at |p_m_in
|pardon |pencil_in_DISH |pick_up |put_us_down |rar_is |read_is_N:core |reckon_w |rest_on_th
|revers_sear |roast_has_left |roll_Nweight |roughly |run_lat_Nduration |scrap_it |sear_is |sear_it
|serv |small_oven |som_of_th |spark |step_out_for |stop_th |tak_that_last |talk_m |th_N:few
|th_THING_say |th_U_is |th_first_N:few |th_guest_they |th_needl_is |th_orang |th_roast_fell
|that_on_is |ther_is_N:few |they_ar_all |tim_th |total_N:few |turn |turn_off_th |turn_out |undo
|wak_m_at |wak_m_up |what_is_th |what_on |what_should |when_can |when_it_com |wher |wher_should
|which_is |who |why_do_i |why_do_it |why_salt |wip |wors |you_had |you_look |you_what_P |zip_it
11 @1.3| @11.3| @114.3| @147.1| @21.5| @38.0| @48.8| @68.3| DISH_ar_trim| DISH_check| DISH_drain|
DISH_gon_in| DISH_has_split| DISH_instead| DISH_too| DISH|DISH_and DISH|add_DISH N:core_for_ag|
N:core|which N:few_off| N:few_or_N:few| N:few|they_ar N:few|you N:oven|and_how N:some_N:some|
N:some_for_dinner| N:some_past| N:some|is Nclock|and_how Nclock|oven Nclock|tell Nclock|tell_m
Ndate_no| Ndegrees:few_under| Ndegrees:some_hot| Ndegrees:some_under| Nduration_ago|how Nduration_befor|
Nduration_behind| Nduration_out| Nduration_sooner| Nduration| Ngas-mark_now| Nweight| P_is_collaps|
P|THING THING_Ndegrees:few_high| THING_at_all| THING|and_how U|Nduration ^_DISH_finish| ^_THING_out|
^_^_pardon| ^_greas_fir| ^_hold|your ^_m|th ^_no|N:few ^_pardon| ^_pop_out| a_blackout| a_jar|
a_pen| a_word| all_of_it| all_sit_down| and_a_bit| and_p_m| ar_com| ar_french| ar_on| ar_trim|
at_N:few|N:few at_N:oven|U b_honest| been_blad_tenderis| bin_th_DISH| bon_Nweight| bon_ar_french|
burnt_th_DISH| cark_it| carry_a_pen| chimney| continu| cut_them| dark| dead|i dinner|i do_not_mind|
don_you| door_for_Nduration| enamel_roaster| enough|and few_minut| firehous_fundraiser| for_N:few|
for_Nclock| further| go|all grand_so| hang_open|and has_split| hav_brought| hav_dairy| heard_you|
help_m|and him|and in_it|and in_their_chair| instead_of_N:few| in|i in|no is_N:core_now| is_N:core|DISH
is_N:few_high| is_go_in| is_in|it is_tick| is_ti| is_too_short| is_vegetarian|and is_wash|
it_in|it it_is_drop| it_is_ready| it_will_tak| it|N:core_$ lid_on| liv_room| look_at| m_in_N:few|
mak_DISH_DISH| mark_N:core| month| mor|th mush| my_P|h m|sh m|w no_tim| not_hav_dairy| not_m|
not_thicken| not_you| now_at_N:oven| now|and_how no|th no|you of_Nduration| on_N:some| on_fir|and
on_th_THING| on_th_way| on|do out_already| out_at_Nclock| out|N:core out|hav out|is oven_THING_N:oven|
oven_is_smok| oven|can past_it| perfect| preheat|and quarter_past| question_N:few| question|
rang| ravi| read|th requir_remov| rest|THING rib_roast_Nweight| roast_so| said|and salt_th_THING|
say_N:core| second|th set_it_to| sh_is_out| shot| sid| sing| sink| smell_amaz| so_well_don|
solid_still| sorry_miss_that| sorry|th tabl_tonight| tak_it_medium| th_DISH_on| th_P_Nduration|
th_U_on| th_firehous_fundraiser| th_hous| th_liv_room| th_lot| th_meal| th_pub| th_station|
th_top_oven| their_chair| themselv| ther|THING they_ar_starv| thingy| think_so| timer_Nduration|for
to_church| to_cry| too_much| too_short| touch_it| turn_it_over| typo| underdon| underway| undo_that|
up_early| us_at_Nclock| w_start| water|THING what_it_is| will_b_THING| will_do_DISH| with_it|
with_it|and with|it_is yes|U yes|correct you_in_N:some| your_turn| you|it you|ther |@112.1
|@33.0 |DISH_DISH_ar |DISH_DISH_is |DISH_it |DISH_went |N:core_and_i |N:core_and_ris |N:core_near_th
|N:core_on |N:few_P_and |N:few_eat |N:few_if |N:oven_and_th |N:oven_no |Nclock_on_th |Ndate_Nclock
|Ndate_Nclock_$ |Ndegrees:core_it |Nduration_and_tell |Nduration_timer |P_gav |P_has_been |P_lik
|P_lik_her |P_n_feed |P_slip |P_want_to |THING_and_THING |after_th_break |aim_for_N:few |all_N:few_$
|and_N:core_$ |and_N:few_peopl |and_can |and_dinner |and_do |and_how_THING |and_my |and_repeat
|and_step |and_us |any_other |anyth_want |ar_they |ar_w_win |away_N:some |b_patient |back_at
|behind_by |buzz_m |by_by |can_th |can_th_leftover |count_m_down |cut_th_DISH |did_i_wreck
|did_you_do |dinner_Nclock |down_that |first_guest_ar |fix |freez_th |freez_th_plan |from_wher
|get_your |giv |go_N:few |go_ahead |gon_to_get |got_a_Nweight |got_th_DISH |gus |half_and |hav_not_got
|hav_not_put |how_is |how_long |i_am_don |i_grab |i_grab_th |i_hav |i_hav_THING |i_hav_an |i_hav_fallen
|i_press |if_so |is_ther_someth |it_is_Ndate |it_r |it_was |it_was_th |it_wer |light_is |lit_th_oven
|littl |mov_it_up |next_$ |next_$_$ |nip_to |no_not |no_str_to |not_quit_$ |nudg_th_whol |of_cours
|off_w_go |ok_so_it |pink_THING |plan_for |pop_to |pop_to_th |preheat_to_N:oven |pull_for |pull_th
|push |put_Nduration |put_Nduration_on |quarter_to |remind_m_how |rest_is |rest_under |revers
|sam_is_on |sam_temperatur |scrap_th |seat_and_hungry |sh_is_do |shout_at_N:core |show_m_th
|shut_that |skip |smok_alarm_is |smok_everywher |so_call |so_call_it |sorry_what |spark_and
|start_again_from |still_no |stop_for |stop_th_gam |stuck_it |tabl_at |tabl_is |tak_it |th_oven_has
|th_power_went |th_th_with |that_do |then_you |ther_is_no |ther_wer |thickest_part |this_THING_is
|ti |toddler_eat |w_want_to |wak_m |was_it |was_that |weigh_it |well_N:few |what_can_you |what_hav
|what_tim_ar |wher_ar |wher_ar_w |why_do_w |without_bon |would_Nclock |would_THING |you_ar_out
|you_could |you_should
12 @103.5| @12.2| @149.0| @3.8| @6.0| DISH_as_well| DISH_is_in| DISH_mad| DISH|DISH_DISH DISH|and_what
DISH|is_it N:core_tent| N:core|th_oven N:few_extra| N:few_fewer| N:few_letter| N:few_peopl|
N:few_peopl|N:few N:few_rib_Nweight| N:few|my Nclock|THING Nduration_ago| Nduration_ago|DISH
Nduration_already| Nduration_sinc| Nweight_N:oven| P|i_hav THING_is_in| THING_pan| THING|what
U_with| U|what_i ^_DISH_in| ^_N:few_guest| ^_Nduration_behind| ^_Nduration_sooner| ^_Ngas-mark_now|
^_^_paus| ^_dinner_Nclock| ^_paus| ^_sorry_what| a_bit_pink| add_a_DISH| after_all|and after_th_DISH|
ago|DISH and_kilo_is| anymor|and ar_burnt| ar_cook| ar_on|and as_well| at_N:core|THING at_Ndegrees:oven|
at_Ndegrees:oven|and at_th_end| b_had| back_in_N:few| bit_pink| blanket| boil_at| bother_m|
breath| by_Nduration| by_THING| by_th_bon| can_not_talk| center| com_in| com|th correct| count|N:few
dinner_Nclock| do_th_DISH| door|it drop_to_N:core| eat_at_N:few| even_in| for_P|and for_a_second|
for_her| for_th_sear| forgot_it| from_th_top| get_down| girl| has_N:core| hav_Ndegrees:core|
hav_turn_up| high| hom| hon| i_cut| i_forgot_it| i_reckon| i_want_N:core| in_N:some|i in|not
is_blister| is_complet| is_cover| is_fre| is_hit_N:core| is_hot_now| is_open| is_rock_up| it_is_N:core|
it_was_out| jean| kettl_is_on| know_how_long| later| leave-in_THING| lift_it_out| lunch|Nclock
m_at_N:core| m_start| medium|U miss_that| mrs_U| my_work| near_enough| no_pink| not_b_her|
not_cook| not_mak_it| not_ready| not_ris| not_tak_THING| not_touch_it| not_your| now_insid|
no|DISH_it off_schedul| off_th_timer| on_chemo| on_it| on_now| on_th_button| on|i_hav on|no
open|and oven_is_on| oven|N:few oven|say over_ther| overshot| plat_ar_warm| rar|th right_so|
roast|and run_Ndegrees:some_hot| sear_it| sh_say|so sinc_Nclock| sit|i so_N:few|and so_sh_is|
stall| step_N:few| stopwatch| taken_it_out| th_DISH|when th_chook| th_curtain| th_pan|i th_sea|
th_timer| th_water| than_N:few| thank_you| that|say ther|P thick_end| this|i to_N:oven|it to_b_had|
to_com| to|Nduration ty_it| very_much| w_hav_U| w_hit_N:core| wall| well_cook| well_don_you|
what_to_do| will_carv| with_us| without_roast_DISH| you_what| you|how |@53.6 |@63.0 |DISH_DISH_DISH
|DISH_ar_all |DISH_out_th |DISH_peel_$ |N:core_i_said |N:core_is_that |N:core_on_th |N:few_guest
|Nclock_that |Nduration_behind_with |Ngas-mark |Nweight_roll |P_brought |P_is_sat |THING_has
|THING_is_full |THING_is_not |THING_still |U_i_will |U_is |aim_for_N:core |alert_at |all_peel
|all_peel_every |am_i |and_at |and_drop_th |and_guest_ar |and_how_pink |and_pop |and_tell_m
|and_turn |ask_your |ask_your_P |at_N:core_is |at_Nclock_it |at_what |at_what_temperatur |away_Nduration
|back_in_a |boil_water |bon_in |br_it_forward |brown_it_first |can_not_se |cheap_THING |cut_myself
|do_it |do_it_look |do_not_you |door_is |drop_th |eta |everyth_is_go |family_is |fat_finger
|giv_th_DISH |giv_them |gon_Nduration_$ |got_it |got_it_out |greas_fir |guest_hav |h_never
|hang_on |has_not_mov |hav_lift |hav_not_so |her_P |her_P_is |hold_th |how_is_sh |i_would |insid_is
|instead_of_cream |is_th_DISH |is_that_all |is_that_enough |it_is_N:few |it_is_out |it_is_preheat
|it_is_sat |it_is_under |job_don |kettl_is |kill_th_timer |knock_it |let_us_skip |lid_on |light_out
|lost_my |lower_to |medium_rar_$ |mind_th |mov_dinner |my_THING_THING |new_dinner |no_do |no_do_not
|no_i_meant |no_th_other |no_you |now_what |now_what_to |nudg |onc_mor_$ |oven_down_to |patienc
|pencil_in |plus_N:few_confirm |pop_out_for |power_is |priya |pull_it |pull_th_roast |r_DISH_is
|read_N:core_$ |run_that_by |say_that_again |scrap_that |should_i |should_i_put |shout |so_what_is
|som_of |soup |stand_by |start_th |tak_back |tak_that |teaspoon_or |teaspoon_or_tablespoon
|th_P |th_THING_hit |th_cak |th_current |th_ferry_is |th_gas |th_joint_is |th_power_has |th_rest_of
|th_whol_gang |thank |that_will |then_it |ther_ar_N:few |ther_w |ther_w_go |they_ar_Nduration
|timer_for |tom_is |took_m |total |turn_off |up_N:few |w_ar_on |w_hav |wait_i |what_can_w |what_go_on
|when_is_THING |when_will |who_is |will_it |will_it_go |yes |yes_yes
13 @143.2| DISH_ar_out| DISH_split| DISH|N:core DISH|and_how DISH|th_THING N:core_N:oven| N:core_even|
N:core_would_you| N:core| N:core|and_how N:core|how_many N:core|oven_N:oven N:core|what N:few_person|
N:few_tonight| N:oven| N:oven|no N:some|do N:some|i_am Ndate|Ndate Ndegrees:core_insid| Ndegrees:core|i
Nduration_ago|what Nduration_early|and P|N:few P|a THING_N:core| THING_again| THING_has_fallen|
THING_hav_Ndegrees:core| THING_is_ther| THING_test| U_yes| ^_N:few|and ^_U_not| ^_^_again|
^_again| ^_boneless_Nweight| ^_i_misread| ^_revers_sear| ^_sorry|N:core ^_stop_talk| a_mil|
ago| ago|what all_carv| ar_starv| ar_warm| as_alway| as_instruct| at_N:core|DISH back_now|
back_to_N:oven| back|w befor_w_sit| begin_with| block_Nduration| board_now| bon_in| bon|N:few
cancel_th_DISH| coat_off| count_down_Nduration| din_at_Nclock| dinner_Nclock|and don_yet| down_to_N:some|
eat_Nduration_befor| fan_N:oven| finish|DISH for_medium| french_it| fre| fridg|th from_m| gon_in|
harold| has_di| hav_land| ha| heat_at_all| help_m| help| her|no his_rar| hot|N:oven hot|i hous|th
in_th_THING| in_this_rental| insist| instruct| invit_themselv| is_bad| is_cark_it| is_in|DISH
is_not_cook| is_not_go| is_on_fir| is_smok_everywher| it_claim| it_jump_Ndegrees:few| it_over|
it|th_DISH it|then jump_Ndegrees:few| la| lif| lik_it|and m_tod| mak_it_medium| middl|i mor|so
my_P_did| my_thumb_open| nobody_els| not_pull_it| not_that_on| now|Nduration no|not of_N:few|
of_us_THING| on_m_tod| out_and_rest| out_of_butter| outsid| out|how oven_to_Ndegrees:oven|
over_her| pack_up| pictur_pound_kilo| pound_kilo| power_is_out| prim_rib_Nweight| public| quiet_now|
rar|i reach_N:core| remov_th_THING| remov| rest_U| roast|U roll_ar_in| sam_as_alway| sear_it_first|
show_Ndegrees:core| sit_down_Nclock| skip_th_trim| so_N:core| street_is_dark| tabl_at_N:few|
taken_their_seat| temperatur_is_N:core| th_Nduration_N:few| th_block_Nduration| th_floor| th_french|
th_other_sid| th_pan_handl| th_start| th_timer|and th_timer|i th_way| their_seat| them_off|
them| this_year| ti_it| tim|Nclock to_N:oven|what to_Ngas-mark| to_temperatur| took_it_out|
treat| ty|it_is w_hav_brought| water_boil_at| without_fan| work| |@67.3 |DISH_halv |DISH_is_finish
|DISH_not |N:few_bon_$ |N:few_mor |N:few_mor_guest |N:some_cover |N:some_peopl |Nclock_that_is
|Nweight_for |Nweight_it |Nweight_of |P_want_her |THING_N:core_$ |THING_m |THING_say_N:core
|THING_was |U_how_much |after_all_that |aim |all_sort_$ |alway_has_$ |and_DISH_has |and_THING
|and_how_ar |and_if_i |and_it_has |and_mak |and_my_P |and_power_is |and_talk |and_wher_do |ar_w_ok
|back_in |boneless_Nweight_$ |bottom_oven |can_i_se |cor |cor_N:core_$ |correction |could_i_swap
|could_not_find |did_not_mean |did_you_hear |dinner_Ndate_at |do_that |drop_th_oven |forget_i
|from_fridg |get_it |got_a |half_th |hold_dinner |hold_dinner_for |hold_on_a |how |how_long_for
|i_can_hear |i_hav_perch |i_left_th |i_slip |i_would_rather |imagin |in_fact |is_half_a |is_it_ok
|is_it_th |it_beep |it_is_a |it_say_N:core |it_went |jump_past |kettl_is_on |knock_it_down
|let_us_begin |list_all |list_all_th |list_th_alternativ |lower_to_N:oven |m_no |mak_dinner
|mind_th_step |my_peopl |next_job |no_DISH_$ |not_at |not_so_much |not_th |on_moment |oven_at
|oven_up_to |party_of |plat_down |pop |power_cut_$ |put_us |remind_m_what |restor |roast_DISH_ar
|roast_cam |roll_in |say_my |say_that |scald |scratch |sh_is_read |slic_my_thumb |smok_alarm
|so_Nclock |so_what_can |step_away_for |stop_nagg |stop_talk_$ |strik_th |suppos_w |switch_to_metric
|tak_your |temperatur_is |th_DISH_want |th_best |th_guest |th_in_law |that_is_it |they_ar_on
|this_is_for |tim_Nduration_start |took_her |took_her_out |train_is |us_celsius |w_ar_N:few
|w_shall |wak_m_when |walk_m |walk_m_through |warn_m |well_don_for |wer_you |what_ar_th |what_should_it
|what_temperatur_am |wher_exactly |wher_exactly_do |which_sid |window_open
14 @149| @21.3| DISH_and_all| DISH_ar_burnt| DISH_boil| DISH_butter|and DISH|giv_m N:core_kindly_inform|
N:core_now_insid| N:core_now| N:core|could N:core|oven_is N:core|th N:few_at_tabl| N:few_bon|N:few
N:few_past| N:oven|THING N:oven|THING_N:core N:some_mor| Nclock_instead| Nclock|and_my Nclock|medium
Ndegrees:few_high| Nduration_behind|what Nduration_earlier|and Nduration_of_U| Nduration_sooner|and
Nduration|THING_is Nduration|and_is Nduration|and_what Nduration|giv_m P_is_pregnant| P_still_moo|
THING_fell_out| THING|N:few_bon THING|is_it THING|non THING|what_do ^_DISH_check| ^_Ndate_Nclock|
^_Nweight_boneless| ^_hello_P| ^_sear_it| a_block_sink| a_boot| add_DISH| after_th_nut| after_th_rest|
ago|how all_grey| amaz_in_her| and_steady| anyway| ar_N:few_person| ar_out_now| at_N:oven|DISH
at_all|and at_least| begun| behind|what blister| block_sink| blown| bon_Nweight|and cancel_th_timer|
drop_out| eat_with_us| fahrenheit|how fan_oven| fell_out| flam|and for_DISH| for_Nduration|do
for_ag| for_dinner| for_m| for_them| forget_th_truss| fre_from_N:few| good_on| h_say| has_land|
has_reach_N:core| has_run_out| hello_P| her_well_don| him| i_want_thos| in_it| in_th_oven|
in_traffic_Nduration| in|how in|th_P is_all_grey| is_cut_up| is_expect| is_good| is_on_tim|
is_scream| is_still_in| is_still_on| is_vegetarian| is_your_P| it|DISH it|and_what it|tim ji|
law_is_vegetarian| least| longer| look_at_that| mad|DISH matter| menu|and messag_Nduration|
middl_is_N:core| much_smok| m|no necessary| not_eat_THING| not_they| of_it|and of_th_fridg|
of_them|and oil| on_th_DISH| on_th_left| over_th_DISH| part_N:core| pool| preheat_to_N:oven|
quarter_to| roast_Nweight| roll_in| saddl| sam_is_help| say_in_Nduration| sear_first| sirloin_joint|
so_no_THING| start_now| station_Nduration| step_back| stop_count| television| temperatur_N:core|
th_menu|and th_messag_Nduration| th_oven|th th_roll_Nduration| than_it_is| their_at_N:few|
thermostat_is| they_hav_arriv| th|it to_metric| to|i traffic_Nduration| up_to_temperatur| want_thos|
watch_for_N:core| well|it went_in|and wer_w| wher_wer_w| with_everyth| would_you|and you_tell_m|
|@3.7 |DISH_ar |DISH_is_strain |N:few_extra_for |N:few_of |N:few_of_us |N:few_or_N:few |N:some_on
|N:some_on_th |Nclock_N:few |Ndate_lunch_at |P_is_collaps |P_n_to |THING_m_th |U_can |U_oven
|all_don_her |and_P |and_anyth_i |and_how_long |and_let_us |and_skip_th |and_th_P |ar_th |boneless_Nweight
|brb |can_U |cancel_th |current_has |dinner_Nclock_$ |dinner_for |do_N:core |do_not_let |from_now_till
|half_of |how_long_till |i_am_all |i_fancy |i_hav_cut |i_lik |i_will_get |it_is_at |it_run_cold
|jaysus_th |jaysus_th_pan |loretta |lunch_Ndate |madam |mak_it_Nduration |marcus |much_blood
|never_again |no_no |off_to |ok_what |open_th_oven |oven_THING_N:oven |pip_down |plat_ar |pop_out
|priya_is |push_it_back |scratch_th |sear_is_don |serv_at |slid_th |smash |so_th_THING |strik_th_DISH
|switch |tak_it_back |talk_to_m |terrell |th_guest_ar |th_hood |thank_you |timer_N:some |timer_Nduration
|try |what_can_sh |when_is_it |wher_do_i |who_want |why
15 @110.0| @126.3| @33.2| DISH_DISH|DISH DISH_and_DISH| DISH_for_DISH| DISH_in|and DISH_scrub|
DISH_went_in| N:core_oven_N:oven| N:core_sorry| N:core|can N:core|i_hav N:few_guest| N:few_later|
N:few_set| N:few_sit_down| N:few|what N:some_behind| Nclock_tonight| Nduration_countdown| Nduration_for_m|
Nduration_later|and Nduration_later|do Nduration_lat|th Nduration|N:core Nduration|ther_is
Nduration|what_can Nduration|why Nweight_without_bon| P|not THING_THING|it THING_at_Nclock|
THING_enough| THING_in_it| ^_DISH_halv| ^_DISH_scrub| ^_start_THING| ^_stop_count| a_bit_Nduration|
a_peeler| accident| all_timer| allergic_to_nut| and_oil| at_N:core|it at_Nclock|N:few away|THING
beast_out| bit_Nduration| bit|and boneless_Nweight| bon|w bother_ty_it| btw| budg_for_ag| burn_my_THING|
butter_is_mad| butter_step| b|i cancel_all_timer| captain| cast_iron_THING| cor_N:core|oven
cork| dinner_N:oven| dinner_forward_Nduration| eater| every_slic| fat_was_smok| for_P| go_for_medium|
half_THING| hav_it_later| hav_lost_electricity| help_in_THING| her_till_N:few| i_fetch_P| i_kill_it|
in_our_market| insist_on_DISH| in|i_am iron_THING| is_m_don| is_offer| is_out|N:core it_later|
kill_it| later|do less_now| lost_electricity| m_don| mind_th_step| my_mistak| n_heat| n_th_DISH|
nap| no_less| non| of_Nduration_ago| of_us| of_you| off_th_menu| on_DISH| on_Nduration| on_th_bon|
on_th_til| our_market| out_Nclock| out_of_DISH| oven_N:oven| oven_off_now| oven|do over|now
pass_on_that| peopl_Nclock| poor_th| pull_it| rest|it_is right_through| sear_is_mad| serv_N:few_later|
serv_up| sh_go| show_m_fahrenheit| sinc_N:few| tabl_for_Nclock| tenderis| th_beast_out| th_butter_step|
th_til| th_whol_way| that_is_right| then_low| ther|i_was they_ar_her| they_n_heat| timer|and
to_THING_off| under_th_THING| up_in_flam| us_Nduration| us|P vegetarian|and was_smok| wher_it_is|
whol_way| with_a_peeler| with_bon| wrangl_th_THING| year|Nweight yes| you_believ_it| |DISH_ar_trim
|N:core_and_climb |N:few_of_th |N:oven_mor |Nclock_is_what |Nweight_boneless |THING_THING_N:few
|a_U_of |all_of |and_ar |and_burnt |and_cancel_th |and_chang |and_giv_us |and_is_th |and_no_no
|and_supper_is |and_temperatur |and_then_$ |and_what_if |and_what_would |any_idea |b_honest
|bon_in_$ |both |butter_is |by_then |can_you_mak |chang_of_plan |clear_all |clear_all_th |could
|could_dinner |dinner_for_Nclock |ditch_th |everyth_tak_m |explain |first_tim |for_how |for_how_many
|gi |giv_m_th |go_upstair |good_boy |half_of_them |hav_i_forgotten |honestly |hot_THING |how_ar_w
|how_do_you |how_hot_for |how_many_THING |how_much_of |i_am_THING |i_am_a |i_am_away |i_n_a
|i_never_got |i_swear |i_thought |i_was_not |in_it_go |insid_what |is_medium |it_can |it_is_com
|it_is_in |it_is_too |low_and |my_P |my_THING_do |now_N:core_$ |on_mor |on_mor_tim |on_second
|or_$ |or_$_$ |or_can |oven_is |party_of_N:few |pencil |pet_$ |pet_$_$ |plat_ar_warm |right_so
|righto |roast_cam_out |roast_is |run_m |run_m_through |sear_on |serv_at_Nclock |set |set_Nduration_for
|set_m |sh_put |should_ther |should_ther_b |skip_that_$ |slic_my |so_how_do |supper_is |supper_is_at
|th_THING_was |th_display |th_electricity |th_on |turn_out_th |w_will_go |what_can |what_go
|what_is_Ndegrees:oven |what_is_up |why_that |you_ar_th |you_will
16 @140.7| DISH_ar_in| DISH_ar_on| DISH_is_lumpy| DISH_out|DISH DISH|add DISH|am DISH|dinner
N:core|put N:core|th_DISH N:few_high| N:few_to_go| N:few|and_what N:few|thank N:few|thank_$
N:oven_in_ther| N:some|th Ndegrees:core| Nduration_later|what Nduration_mayb| Nduration_timer|and
Nduration|let_us Nduration|my_P Nweight_N:few_rib| Nweight|what THING_at_N:oven| THING_leg_Nweight|
U_collaps| U|is_it ^_Nduration_countdown| ^_U_collaps| ^_^_fin| ^_fin| ^_pull_it| ^_right_so|
^_roast_out| ^_scratch_that| ^_typo|N:core ^_undo_that| a_bit_longer| a_sirloin_joint| absolutely_not|
alert_at_N:core| an_allergic_reaction| and_then_noth| any_THING_left| ar_com|and ar_her|w ar_sat_down|
assist_oven| at_N:few|i at_N:few|it at_Nclock_instead| at_Nclock|DISH back_is_bad| befor_Nduration|
behind_by_Nduration| bit_longer| bon_rib|Nweight boneless_Nweight|and conventional_now| cook_right_through|
down_Nduration_ago| down_in_Nduration| drop_it| duty|and eat_at_N:oven| fan_assist_oven| feed_N:few|
flam_at_all| for_th_P| for_th_THING| for_you| get_up| guest_seat| half_past| hav_overcook_it|
hear_you| her|how hit_N:core| ignit| in_N:some|and is_ignit| is_lumpy| is_pack_up| it_is_hot|
it_is_preheat| it_medium|and it|and kept_for_DISH| lad_hav_land| later_would_you| later|and
lat|how leg_Nweight| look_good| mad| mak_much_smok| moo| my_THING|th no_bon_Nweight| not_on_yet|
now_Ndegrees:core_insid| no|Nclock off_to_N:oven| on_N:few_rib| open_Nduration| other_sid|
our_whol_street| out|N:few oven_on_now| oven_sinc_Nclock| over_th_plac| pal_as_anyth| parchment_is_ignit|
person_is_vegetarian| pink|medium say_so| sear_now| serv_Nduration_later| sh_is_offer| skip_that|
sooner|and speaker| start|and stor_Nduration| tabl_by_Nclock| text_Nduration_lat| th_DISH_anymor|
th_DISH|what th_THING|how th_door_shut| th_other_on| th_stor_Nduration| th_thick_bit| th_truth|
th_wall| th_way|and that_is_P| them_ar_her| them_down| then_noth| thick_bit| this|and ti_it_with|
tick_that_off| till_N:few|i timer|DISH to_begin_with| to_nut| to_trim_it| to_you| understood|
upstair_for_Nduration| us_celsius| was_N:core|and was_touch_bon| well|N:few well|how yes_THING|
yet|and you|h |@1.0 |DISH_halv_$ |DISH_is |N:few_adult |Ndate_lunch |Nduration_lat_they |Nweight_N:oven
|P_jim |THING_is |THING_out_th |again_mor |and_Nduration_for |and_ditch |and_ditch_th |and_how_do
|and_scrap |and_sur |and_tak |and_wer |and_what_ar |and_what_should |and_when_is |and_when_it
|and_who_is |anyth_i |ar_w_still |away_Nduration_$ |b_quiet_$ |can_you_explain |chang_of |com_on
|com_up_at |for_what |from_th_top |go_for_medium |hav_not |hav_to_walk |her_is |how_ar |how_many_ar
|how_on |how_on_earth |i_am_off |i_hav_bung |i_hav_finish |in_Nduration_tell |is_it_a |is_medium_rar
|it_has |it_run |it_weigh |let_us_tak |my_oven_has |never_mind |nobody_her_eat |now_h |oven_N:oven
|oven_is_beep |oven_is_off |oven_up |remind |remind_m_in |revers_th |revers_th_last |said_th
|set_m_Nduration |should_i_turn |sorry_that |sound_lik |step_out_b |th_THING_has |th_littl
|th_preacher |th_roll_ar |that_is_don |they_hav_gon |this_oven |this_oven_is |w_eat_at |w_hav_run
|wash_your |wash_your_THING |what_if_w |when_is_th |why_must |will_THING |will_w |you_can_drop
|you_hav_been
17 @59.7| DISH_anymor| DISH_from_Nclock| DISH_in| DISH_in|DISH DISH_th_bon| DISH|let N:core|and_Nduration
N:core|w N:few|th N:oven|i_hav Nclock|what_is Ndate_Ndate| Ndegrees:core|w Nduration_front_door|
Nduration_off_schedul| Nweight_boneless| Nweight_prim_rib| Nweight|N:few_rib THING_is_N:core|
THING|then ^_DISH_as| ^_^_typo| ^_feed_N:few| ^_skip_that| ^_typo| a_hot_finish| add_DISH_DISH|
add_Nduration| add_green_DISH| all_off_Nduration| am_stay_put| and_all| anymor| as_it_is| at_N:oven_now|
at_Nclock_latest| at_tabl| at_th_finish| b_found| back_after_Nduration| back_on| back_to_Ngas-mark|
bast_it| becom_very_sick| behind_th_plan| believ_it| burnt_my_THING| cast_iron_pan| check|and
current_has_gon| dinner_for_Nclock| dinner_for_Nduration| do_not|and drank_it| every_last_on|
f_and_pound| fat_off| flip_th_DISH| for_Nduration| fridg_at_Ndegrees:some| front_door| has_drop_out|
hot_N:oven| in_Nduration_ago| is_Nweight_N:few| is_not_mad| is_preheat| it_after_all| it_now|
it|P lik_it_rar| m_fahrenheit| mak_dinner_N:oven| miracl| m|is not_do_that| nut|and on_at_N:oven|
on_sinc_N:few| on_speaker| on_th_joint| or_thereabout| other_on| out_Nduration_ago| out|no
part| pull_th_roast| put_them_down| ready| rib_Nweight| roast_is_ti| roll_Nduration| ros| shop_is_shut|
start_THING| stay_put| styl| switch_to_metric| tabl_wait| th_DISH|my th_THING_slip| th_tabl_wait|
th_thick_end| them_got_her| them|what thereabout| this_whol_tim| timer_of_Nduration| timer|how
to_b_found| to_help_m| trust_it| trust_th_THING| very_sick| when_w_eat| with_DISH_DISH| work|and
|N:few_at_tabl |N:few_coeliac |Nclock_is |all_sort |and_Nduration_on |and_aim |and_b_quiet
|and_cancel |and_delet |and_enough |and_giv_m |and_hang |and_my_THING |and_plus_N:few |and_skip
|and_stop |and_supper |and_what_can |and_what_temperatur |ar_w_on |bad_new |bang_on_N:core
|bear_with |bear_with_m |bottom |can_w |com_again_$ |fan_is |for_what_reason |half |handl_cam
|handl_cam_off |her_lip |her_lip_ar |i_am_tak |i_burn_my |i_told_them |i_would_lik |it_THING_N:core
|kindly_inform_what |last_car_pull |my_oven |never_again_$ |nobody_is_du |roast_is_out |slic_th
|stand_by_$ |start_THING |step_out |stop_talk |tell_m_th |th_on_with |th_power |w_ar_sit |w_hav_N:few
|w_hav_lost |w_want_it |why_do |would_not_mind |would_you_ever |yes_no
18 DISH_on| DISH|P_is DISH|oven N:core_fan| N:core|P_is N:oven|how_long Nclock|i_am Nclock|what_do
Nduration_of_delay| Nduration|and_w Nweight_bon_in| P_well_don| THING_fan_oven| THING_for_Nduration|
THING_left| THING_will_you| THING|and_what U_froz| ^_excus_m| ^_timer_off| a_leave-in_THING|
a_spoon| a_vegan_com| allergic_to_DISH| all|and alway_has| arriv|and as_anyth| at_N:few| at_N:oven|i
at_Nclock|what badly| bang_on_N:core| bit|no bless_them| by_th_way| celsius|th check_th_THING|
cook_now| daft_number| don|what_is dress_th_DISH| eat_Nduration_early| everyth_by_N:some| fetch_P|
for_mrs_U| giv_daft_number| god_help_us| hav_any_THING| help_now| his_medium_rar| in_it_go|
in|is is_back| is_dark| is_right| it_first| it_medium_rar| it_weigh_Nweight| itself_off| it|my
it|oven law_pull_up| lay_th_tabl| leg_of_THING| medium_well| no_second_oven| not_hav_DISH|
of_delay| of_top_THING| on_th_go| on_us| on|and open_that_door| power_has_gon| r_N:few| roast_is_in|
scratch_that| set|off sh_say| so_N:few_mor| som_ar_park| so|and stand_rib_Nweight| still_U_froz|
th_plac| than_that| that_finish| their_coat_off| th|how timer_can_go| to_N:oven|DISH to_N:oven|how
toast| tonight| trivet| truss|and vegan_com| w_said| weak| will_b_eat| yet|my you|that |N:few_bon_N:few
|Ndate_roast |a_joint_of |am_i_meant |and_U_is |and_anyth |and_did_i |and_dinner_is |and_flat
|and_is_ther |and_lunch |and_show |and_slic |and_so_what |and_stop_th |and_they_hav |and_well_don
|any_way |away_till |can_i_talk |com_ready |com_ready_or |cor_N:core |cut_th |did_i |harold
|hav_w |it_is |keep_an |keep_an_THING |lettuc |now_what_$ |oven_at_N:oven |peopl_ar |right_i
|say_again |start |th_DISH_ar |th_DISH_has |th_P_eat |th_THING_is |th_gas_has |that_is_a |what_could
|what_heat |wher_do_th |why_so |you_ar
19 DISH_DISH_too| DISH_as| DISH_can_go| DISH_from_m| DISH_halv| DISH|anyth N:core|how_long
Nclock_Ndate| Nclock_latest| Nclock|N:few Nclock|i_hav Nduration_timer_go| Nweight|and_i P|th
^_sear_last| ^_serv_up| all_of_us| am_se| and_N:few_P| ar_ready| b_eat| b_medium_cook| back_to_lif|
eat_them| electric_is_off| for_him| greas_fir| guest_hav_arriv| i_am_se| if_you_can| instead|
instead|and iron_pan| is_in| is_out| is_season| is|and later|what lik_Nduration_ago| lik_you_said|
look_N:core| medium_cook| mor|and no_THING|and nobody_eat_them| now|and_it or_so| out_for_Nduration|
out_it_com| out|DISH oven_for_Nduration| roast_this_year| skip_it| so_add_Nduration| so_far|
so_scratch_that| sorry|and th_fat_off| th_next_Nduration| th_roast|and that_on_out| ther_is_pink|
till_N:few| to_N:oven_now| to_lif| to_th_next| touch_th_DISH| up_already| us|w w_say| with_th_fat|
without_tell_m| would_b_N:oven| |N:few_guest_$ |THING_is_N:core |and_Ndegrees:core |and_Nduration
|and_Ngas-mark |and_P_has |and_is |and_is_it |and_power |and_remind |and_remind_m |and_sear
|and_turn_out |and_w_ar |and_yes |anyth_els |ar_you |b_quiet |back_in_N:core |do_N:core_sound
|giv_m_som |i_will_forget |list_th |low_and_slow |mak_it |p_m |put |right_i_am |show_m_how
|so_is |start_THING_$ |step_away |stop_th_timer |switch_to |th_visitor |that_is |ther_will
|ther_will_b |they_alway |tim_th_roll |timer_N:some_$ |timer_for_Nduration |what_is_medium
20 DISH_U_with| N:few_DISH_U| N:oven_Nduration_ago| N:oven_now| N:some_cold| N:some_dinner|
Nclock| Nduration_ar_up| Nduration_down| Nduration_too_lat| Nduration|how Nduration|no THING_burn|
THING_for_U| THING_tonight| ^_medium_rar| a_fall| already_com| already| at_N:core|do at_N:core|what
at_N:oven|w b_Nduration_lat| boot| buy_THING_THING| can_go| charcoal| dinner_by_Nduration|
for_N:some_dinner| for_th_crust| giv_m_N:some| go|it guest_hav_reach| had_a_fall| hav_arriv|
help_us| her_yet| hous| in_flam| in_th_middl| is_mad| is_ok| it_off| it|i it|th keep_THING|
lino| m_a_THING| next_Nduration| not_get_up| now| of_th_lot| of_th_oven| offsid| oven_on_N:oven|
overcook_it| roast_is_season| run_N:some_cold| say|and tell_m|and th_lino| up_at_Nclock| warm|and
|U_and_DISH |all_of_it |am_i_behind |and_THING_THING |and_THING_is |and_any |and_ar_w |and_guest
|and_oven_is |and_plus |and_th_power |and_what_tim |and_would |can_you |com_again |how_long_hav
|i_drop_th |is_pink |is_pink_THING |is_ther_a |kill_th |last_car |look_lik_P |no_DISH_after
|nobody_her |p |remind_m |sh_is_in |so_which |that_is_what |took_th_THING |typical |us_celsius_$
|w_ar_clean |w_hav_no |w_will_sear |what_temperatur_is |wher_do
21 DISH_finish| DISH|roast N:core_say_so| N:core|THING N:few_for_dinner| Nclock|DISH Ndate|th
Nweight_THING_THING| Nweight|how any_mor| back_in_Nduration| bon_roast_Nweight| don_th_butter|
eat|and excus_m| f_at_Nclock| fir|and halv| in_N:some| in_th_night| is|i lat|th much_go_on|
oven_has_di| run_Nduration_behind| than_w_said| them|and then|and timer_off| well|and whol_tim|
|and_hav_not |and_how_much |and_let_m |and_turn_th |dinner_is_at |everyth_is |how_long_can
|how_long_do |ok_so |sam |so_what |ther_is |when_do_i |which
22 N:core_already| N:core|and_is Nclock|how Nduration_top| THING|do_not ^_us_celsius| a_moment|
ar_park| by_Nduration|and door_hang_open| do|and for_th_roll| her_out_now| is_on_Ngas-mark|
it_all_over| los_th_DISH| not_N:few|and sear_last| timer_Nduration_DISH| timer_go| timer|th
too|and us|i well_don|and would_ya| |add |and |and_can_you |and_do_i |and_i_n |and_w_eat |can_i
|can_i_swap |giv_it_a |i_hav_turn |it_weigh_Nweight |tak_that_back
23 DISH_after_all| N:core|and_DISH N:some|what Nduration_early| Nweight_near_enough| Nweight|DISH
ar_in| door_shut| fin| her|what power_is_back| so_they_ar| stop_th_timer| |P_want |and_N:few_mor
|and_for |and_forget |and_right |and_when_do |i_burn |in_U_w |is_everyth |it_has_been |show_m
|th_oven_is |they_ar_stuck |what_should_th |when_is
24 N:core|what_is a_miss| back_in_N:some| don|DISH hit_N:core|and not|and sear|and so_plus_N:few|
yet| |and_could |and_oven |and_run |ar_w |dinner_is |so_how |that_was
25 DISH_with_it| N:core|how THING_say_N:core| add_roast_DISH| don_for_P| that|and |and_can_w
|and_sorry |tell_m_when
26 Nclock|it_is is_my_P| of_THING|and th_trim| touch_bon| without_bon| |and_can_i |and_if |and_wher
|and_who |is_that |is_ther |no |th_DISH_is
27 N:core|oven not_don_yet| of_it| |and_giv |and_why |is_N:core_too
28 at_all| |and_DISH_is |and_ok |and_when
29 N:core|DISH |and_N:few_of |this_is
31 |and_what |could_you |when_do
35 after_all| |is_it
39 |and_how`);
