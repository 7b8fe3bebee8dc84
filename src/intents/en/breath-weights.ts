/** Learnt from the rules half of the corpus by scripts/train-breaths.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const breathWeights: Weights = weightsFrom(`
-45 till|
-44 or|
-43 medium|rar |than
-42 and|how can_you|
-41 you|can
-40 never| say|N:core when|
-39 wer| |till
-38 DISH|DISH_is
-37 ^_th_THING| if| it|THING_N:core their| to_N:oven|for
-36 @145.3| and| a| r|DISH than| turn_out| |all_th_way |so_far |yet
-35 U|th_DISH could| let_m| littl| medium|well must| sinc| took| which| |cam |now_and
-34 did_you| every| how_com| i|could now|N:core_$ run|Nduration_behind what_tim| |@13.9 |and_rest
|anymor |in_her |instead |past |through
-33 am|i and_then| as| green|DISH into| on|N:core som| you|hav |, |can_go |can_not_hav |it_and
|myself |plac |this_tim |tonight |when_w |would_b
-32 Nweight|THING_THING ^_DISH|hav ^_it_say| could_you| do_you| is|that it|first it|will on|that
should| so|w top|oven what|can why| your| |all_over |on_this |say_N:core |when_it
-31 @133.0| THING_no| THING|with ^_th_U| all|N:few all|right ar|w behind|schedul br| cut|th
had| in|a nobody| now_and| weigh| what_temperatur| you|ar |altogether |handl |i_should |into
|week |year
-30 DISH|and_DISH ^_th_oven| and|no anyth|i an| cor|temperatur don|with do|i ever| hop| in|fahrenheit
it|look it|rar i|can m|Nduration not|th no|sear out|at roast|DISH sam_is_on| say|N:oven w|got
|N:some_for |any_mor |in_th_night |of |th_oven_$ |this_year
-29 DISH_DISH|is N:few|guest N:few|in_th P|ar U_you| ^_N:few_mor| ^_i_said| and|giv and|what_is
ar_you| did|you get|th half|th help|m hit| in|th_DISH last| let_us| mak_that| not|N:core on|a
r|N:core scrap| sear_it|first th|N:few_of whol| would_b| |@29.3 |ago |and_U_$ |ar_com |at_all
|els |ever |go_in |if |is_fin |it_on |on_m |th_last |to |to_m
-28 ,| N:core|Nduration P|can_not THING_THING|N:core U_that| U|in ^_U|th ^_in|it and|h and|w
at_N:oven|for at_N:oven|now celsius|and_kilo chuck| com|out do_w| do|DISH do|w giv_th_DISH|
gon|Nduration gon|and hot|fat if_i| ill| is_th_roast| is|N:core_in is|P is|medium i|got left|th
lik|a m|how n_a| not|start no|U ok|THING_is on|N:some on|Ngas-mark on|th_oven out|now out|on
past|N:core pull|th push| revers| rib|roast roast|DISH_in so|no th_hot| th_new| th_wrong| thank|you
th|sam very| want_her| was_on| wash| whatever| what|can_i would_lik_it| you|do you|put |@127
|@4.15 |@64.3 |@78 |Nweight_i |and_climb |as_a |at_N:some |behind |between |down_for |for_m
|him |i_think_$ |in_that |in_ther |is_com |it_is_$ |last_year |outsid |th_day |th_left |ther_is_too
-27 N:core|already N:core|in N:few|P_$ N:few|ar N:few|bon N:few|mor N:few|to P|will THING|THING_on
THING|out THING|pan U|has ^_Nweight|THING ^_U|it ^_is_ther| ^_m|and ^_yes|yes about|th and|ok
any|mor back|on bon|ar can|i dinner|is explain| flight| for|N:few for|P from| has|got hav|i
his| in|N:some is_N:few_bon| is_too| is|N:core_$ it_is_on| it_is|Nweight it_r|N:core it|now
i|never i|put lost| miss|th my_THING|on my| next|door ok|so on|Nduration_ago on|th_U on|this
oven|door play| press| reach|N:core shop|list shop|list_$ should|i so_i| so| so|N:few start|th
that|Nduration th|DISH_ar th|DISH_went th|cor th|oven_is to|N:some to|get wait_on| want|th
what|ar_w whil|i w|wer your|P |@60.3 |@63 |DISH_for |N:few_bon_rib |about_th |all_right |and_DISH_$
|as_well |better |can_not_mak |each |for_DISH |fre |good_$ |good_$_$ |hav_been |in_a |is_still
|it_with |on_my |order |person |quid |sinc_Nduration |th_THING_and |th_THING_in |th_oven_and
|that_th
-26 Nduration|ago Nduration|lat Nweight|of P_is_U| THING|Nduration_$ THING|THING ^_DISH|i ^_DISH|scrub
^_i_think| ^_mak_it| ^_so|what ^_th_dog| ^_would_you| ^_yes|go add_DISH|DISH after|th all_over|th
and_N:few| and|add and|ar_w and|can and|giv_m and|i and|why ar_all| a|U been| bon|in cut|off
dav| do_a| drop|th giv_m| giv| has_not| hav_N:few| hav|you h| i_go| in|this is_now| is_on|Ngas-mark
it_is|N:few it_out|Nduration it|Nduration it|and_it i| i|THING i|did know|what leave-in| leave-in|THING
m_Nduration|on not_even| not_go| off|now_$ off|th on_and| onc|it on|DISH_$ on|then on|your
out|for put| quit| roll|timer say_a| say_it_is| set|th sh| sorry|what so|they start|th_DISH
step|N:few suppos| tell| th_Nduration| th_quick| th_whol| ther_is|N:few ther|is this|THING
this|th this|tim th|power under|th us_THING| us_th| way|to when_is| when_you| with|N:few would|
yes|w you_ar| |@102.4 |@139.6 |@31.4 |DISH_so |a_DISH |again |at_th_end |by_N:few |caught |do_not_eat
|front |got_to |has_a |hav_Nduration |hear |her_and |is_in |is_too |it_say_on |it_up |later
|month |night |now_th |ok_for |on_that |oven_and |piec |rather |right_now_$ |saf |th_hot |th_whol_tim
|then_$ |then_$_$ |ther_$ |ther_$_$ |to_N:some |walk_in |yourself
-25 @127.2| @144.3| @26.3| DISH_in|N:few DISH_it| DISH|ar_boil DISH|don N:core_U| N:core|Nduration_ago
N:few_month| N:few_so| Nduration_behind|schedul Nduration|after Nweight|N:some P|com THING|at
THING|b THING|is_THING THING|over THING|th_tabl U|i_do U|why ^_P|U ^_U|no ^_can_you| ^_could_you|
^_medium|rar ^_th_P| ^_th_roast| ^_turn_out| a_N:few_bon| a_roast| and_P| and_a| and|P and|dinner
and|let and|my and|sh and|ther another| at_N:few|Ndate between| com|back count_down|Nduration
delay|Nduration did_i| did_th| dinner_at|N:oven dinner_back| don|for do|you eat_it| fan|oven
final| flat| for|N:some giv_it| got_N:few| grill| guest|hav hav|no i_don| in_that| insid|temperatur
internal| in|her is_already| is_on|N:core is_out|of is|N:few_of is|N:oven it_say|N:core it_th|
it|again kill| lat|they let_it| lik_a| medium_for| medium|rar_$ not|shut not|that of_THING|on
of_us|now off|so of|Nduration ok_P| out|and_rest oven|run pick| pretend| proper| read|N:core_$
remind_m| right|so said|N:core say|that scratch|that sear|is send| so_you| so|it suppos_to|
th_DISH|n th_THING|on th_cream| th_door_open| th_fan| that|timer they| th|DISH_a th|DISH_is
th|rest timer|off to_b_don| top|THING to|fahrenheit us_a_U| us|now what_th| what_would_you|
what|did will|you would_not| would|you |@123 |@24.4 |N:core_th |THING_do |abov |allergy |alongsid
|already |ar_U |ar_her |ar_w_at |brok |can_do |dark |first_$ |first_$_$ |for_th_sear |for_this
|hav_th |heard |her_at |i_am_way |in_my |into_th |is_THING_$ |is_burn |is_don |it_at |it_to
|it_will_not |joint_Nweight |last_night |lot |mean |own |part |shelf |should_th |stuff |th_DISH_and
|th_DISH_for |th_edg |th_job |th_road |th_sam |today |turn_up |up |want |went |what_i |when_it_is
|with_th_THING
-24 @42.6| @63.2| DISH_th|DISH DISH|out N:core_th| N:few_in| N:few|day N:some|U Nclock|on Ndate|without
Ndegrees:core_and| Nduration|befor Nduration|behind Nduration|i_will Nweight|with P_is_on|
THING_say| THING|for_N:few U_has| U_i| U_to| ^_DISH|th ^_U|is ^_^_first| ^_first| ^_i_meant|
^_it_THING| ^_medium|well ^_my_THING| ^_ok|P ^_you_can| a_Nweight| and_pet| and|U and|cancel
and|got and|half and|start and|stop and|they ar_already| a|DISH b_Nduration|lat back|to becom|
b|medium cam|back can|w can|you chop|th_DISH cold|on_th com_and| com|Nduration com|to did_not|
did| dinner|Nduration_later doneness| els| fetch| first|then forget|i gav| giv_us| got_that|
got|no go|U go|for go|on had_N:few| had_it| half_of_them| has|not hav|N:few how_pink| i_DISH|
i_already| i_want| i_will| if_it| in_and| instead|of in|fahrenheit_$ in|our in|th in|th_U it_medium|rar
it|go i|check i|go i|hav_not i|look i|reckon i|would kindly| lik_it|rar low|and_slow mak| mak|dinner
might| mind_th| my_THING|ar m|how_to not_eat| not|N:some no|THING offer|to of|N:core onc|it_is
out|in own| peel|th peel|th_DISH peopl|ar pretty| raw|THING roast|Nweight r|DISH_is r|win sam|
sat| say_on_th| say|N:core_$ say|Nduration say|it_is sear|first should_i| show|N:core small|
so|do so|th_henderson stop|th tabl|for tak_m| th_DISH|to th_old| th_oven|THING th_r_DISH| that|THING
thick| this_is| this|oven tim|Nduration_for to_f| to|go to|you up_and| up|a up|next us_do|
us|celsius_$ wait|on want_DISH_DISH| want_it|well was|N:core well|don went_in|at what|is_it
whol|THING w|can year|it you|could you|wer you|would |@107.0 |@127.2 |@134.3 |@146.1 |@78.0
|N:oven_N:few |Nduration_ago_and |P_so |all_over_th |and_slow |and_ti |anywher |ar_a |at_m
|at_th_tabl |back_and |back_on |bar |bon_in_rib |boy |chop |cover |di |everywher |expect |fast
|finger |from_N:few |h_is_help |has_not_budg |hat |heat |in_th_oven |is_dead |is_her |is_run
|is_ther_$ |it_for |it_th |longer |my_arm |now_so |of_DISH |on_th_DISH |out_th |out_ther |right_now
|roast_Nweight |room |say_it |sinc |so_far_$ |spoon |start_now |th_DISH_to |th_car |th_oven_glov
|th_oven_i |th_wall |to_a |to_do |to_finish |too_$ |too_$_$ |track |w_hav_DISH |was_on |what_i_said
|whil_i |wis |with_THING
-23 @102.2| @3.3| DISH|th_bon N:core|fan N:core|in_th N:few_and| N:few_bon|rib N:few|at N:few|roll
N:oven|on Ndate_without| Nduration_and| Nduration|sooner Ngas-mark|now THING|on_a THING|on_it
U_god| U_so| U|so_that ^_U|com ^_^_all| ^_^_hot| ^_^_well| ^_all_right| ^_all| ^_at_Nclock|
^_chop|th ^_did_you| ^_do_not| ^_h_is| ^_hot| ^_how_much| ^_is_N:core| ^_it|i ^_no|n ^_no|sear
^_th_pan| ^_well| a_THING|in a_good| a_r_DISH| about_it_is| abov| add|DISH after|Nduration
an_extra| and_do| and_everyth| and_is| and_it_is| and_now| and_ok| and_sorry| and|Nduration
and|THING and|could and|hold and|how_much and|mak and|not and|oven and|put and|remind and|remind_m
and|tell and|what and|when and|will and|you another|Nduration any|THING ar|bang at_Ngas-mark|
at|N:some back|in behind|her ben| bon|rib burnt|th_DISH by|N:oven by|th cam_out|Nduration can_w|
can| can|go coat|ar com_to| crap| dead|it_will delet| dinner_Ndate|at down|for do|th_DISH feed|
fell| gas| go_for| go_on|th go_on|then got_to| got| go|off green|DISH_ar guest_ar_run| has|com
hat| hav_THING| hav_chang| hav_her| hav_not| hav_you|got her|at her|for his_P|so hold_it| hold|dinner
how_com|w how_do_you| how_is| i_got| i_said|N:few i_will_do| if|i in_Nduration|for insid|temperatur_is
is_blood_everywher| is_eat| is_enough| is_no| is_run|Nduration is_that|th is|Nclock is|Nweight_$
is|finish is|giv is|help is|how is|no is|rest is|still it_is_all| it_is|N:some it_is|th it|is_Nweight
it|mak it|say i|U i|crank i|set i|tak i|think i|turn job|don keep|THING know|how later|than
lay| let_us|do let| let|th lift| list|of m_on| mad|and mad|th mad|th_DISH many_th| medium|for
mov|dinner much|go much|go_on my_finger| my|P my|oven m|P m|when nobody_is| not|com not|go
not|se no|flam no|mor nudg| off_and| off|at of|U on_th_other| on|on on|th_roast or_a| out|to
phon|call plus|N:few pull|th_roast put_it|back put_on| put_th_THING| r_DISH|so real| reheat|
rest|on rest|on_th roast|DISH_ar rop_in| r|THING said_th| salt|and_THING say_th| serv_it| shall|
should_it| sinc_th| sorry|i_did so|that so|that_is still|got strik| th_gam| th_last_on| th_oven|now
th_oven|on th_way|through that_is_not| ther_is_N:few| ther_i| thin| th|DISH_has th|edg tim_to|
timer|for_th to_b| too|hot to|N:few_peopl to|say up_th| up|early us|celsius vegetarian_no_THING|
way|through what_is_it| what_it| what|i_am what|i_said when|i will| with_N:few| wonder| wrap|
wrong|THING w| w|mak yes|i you_stop| you|look you|so you|stop you|tell |@11 |@12.3 |@122.5
|@140.2 |@39.1 |@54.3 |@87 |@9.0 |DISH_at |N:few_it |Nduration_it |THING_THING_$ |U_from |a_U_$
|a_lot |a_miss |against |and_then_it |as |at_a |back_by |befor_it |blank |by_N:oven |by_Nclock
|can_not_do |charg |count_$ |count_$_$ |eat_it |enough_$ |enough_$_$ |enough_for |floor |for
|for_Nduration |for_P |for_her |for_you |grand |guest_$ |guest_$_$ |hav_gon |in_DISH |in_fahrenheit
|in_th_middl |is_Nclock |is_Nduration |is_dark |is_delay |is_hav |is_lik |is_on |it_again |it_back
|it_in |it_so |lift |lik_a_U |mak_DISH_DISH |n_m |off_in |on_is |on_th_instant-read |on_th_oven
|on_th_stair |per |put_them |reach |saw |say_N:oven |set_to |small |sooner |start_at |test
|th_DISH_out |th_THING_now |th_door |th_fan |th_other_on |th_oven_now |th_roll_$ |th_year |them
|timer_for_th |to_f |to_get |top_oven_$ |touch |underneath |up_th |us_to |w_said |way |wher_i
|wher_w |whil |will_want |yank
-22 @1.0| @1.7| @107.1| @10| @110.5| @26.4| @88.1| DISH_butter_is| DISH|at DISH|cream DISH|on
DISH|r DISH|r_DISH N:core_on| N:core|now_$ N:few_bon|roast N:few_can| N:few_is| N:few_year|
N:few|less N:oven|Nduration N:oven|Nduration_ago N:oven|dinner N:oven|th_whol N:some_i| Nclock|it_was
Ndegrees:core|insid Ndegrees:core|on Nduration_th| Nduration_timer|for Nduration_to| Nduration|timer_for
Nweight_N:few|bon Nweight_and| Nweight_i| P_on| P_th| P|U_is P|eat P|lik P|no_shellfish P|say
THING_do| THING_has_gon| THING_in|th THING_m| THING_on|th THING_to| THING|show THING|up U_th|DISH
U|th_oven U|to ^_N:core|on ^_Nduration_back| ^_Nduration|timer ^_THING|THING ^_^_our| ^_^_out|
^_^_sear| ^_^_you| ^_hav_you| ^_how_com| ^_is_that| ^_look_lik| ^_no|thank ^_our| ^_out| ^_sear|
^_tell_m| ^_th_DISH| ^_th_guest| ^_you| a_Nclock| a_joint| a_whol| add|N:few add|another adult|and
after_that| after|it allergic|to all|that already|N:core and_it| and_i| and_my_P| and_th| and|N:few
and|is and|let_us and|power and|roast and|ther_is any|other ar_N:few_for| ar_on|th ar|they
ask|how at_N:core_and| at_this| at|Ngas-mark away|Nduration a|P b_too| back_in|N:core befor_i|
befor_th| bin|th bon_ar| bon|roast bubbl|away burn|my by|Nclock by|Nduration b|ready can_U|
cast_iron|THING cold|on com|first cor_temperatur| cours| crispy| cut_it| did|th do_th_THING|
don_th| don|yet door_is| door|to down|at down|to down|with do|i_hav do|th_THING do|that feel|
first|N:few fir|in for_a| for_th_next| for_us|medium forgot|to forward| for|anyth for|medium_rar
for|you get|your giv_m|th go_th| go_to|giv got_N:few_oven| got|N:core guest_lat| guest_lat|Nduration
had_a| had_to| has|got_a hav_a| hav_got_N:few| hav_not_don| hav_no| hav_th_DISH| her_and| her|second
how_many_DISH| how| i_hav_her| i_know|celsius i_mak_it| if_th| if|it ill_b| in_Nduration|ago
in_i| in|U_$ in|boil in|boil_water in|celsius iron|THING is_a| is_my| is_not_a| is_on|N:some
is_still| is_what| is|Ndegrees:few is|enough is|good is|grey is|lik is|nearly is|read is|read_N:core
it_all| it_b| it_do| it_is_lik| it_is|grey it_so| it_that| i|get i|meant i|pull i|put_it i|should
keep_up|Nduration keep| know|celsius know|i_no last_i| lat|with left_th_door| left|THING left|th_oven
let_us_do| littl_on| look|lik lot|ar many_DISH| many| mention| my_peopl| myself_it_is| my|P_lik
my|U never_mind| new|dinner no_bon|Nweight no_longer| no_not| no_no|no no_on| not_that| not|even
not|let now_it| now|Ndegrees:core no|DISH_after no|r no|thank number|of n| off_at| of|N:few
of|Nweight of|you ok_so| on_is| on_th|and on|fir on|for on|hold on|m on|with out_on| out|on_th
oven|befor_Nduration pass|th pat| person|is per| pink|U_not put_th_DISH| put_th_roast| put_them|
put|DISH rar|for raw|THING_in reason| reckon|w right|that right|that_is sav| school| sh_is_N:core|
sh_is_not| shop|run sinc|Nduration slip|and someth|i so|it_is so|tak stand|on stop|U s| tabl|wait_$
tak| target| tell|you th_low| th_roll|timer that_on|is that|P that|P_$ that|is_it that|on them|out
ther_is_THING| this|on thos|DISH thumb| th|DISH_hav th|dinner th|guest th|oven_door till_it|
tim_for| timer|on tim|out_$ tim|to to_N:oven|Nduration to_run| toddler| too|much to|N:core
to|a to|do to|giv train|is unless| up_in| up_i| up|Nduration_down up|with us_up| us|in us|medium
w_ar_on| w_hav_it| w_will_do| walk|th want_it|medium was_N:core|at was_not| was| was|not was|th
watch_th_THING| way_to| way|too well_don|all well_don|for went_in_Nduration| what_did| what_do|
what_els| what_way| what|can_w what|it when_i| wher_do| wher|ar wher|w whil_it| will_b| w|did
w|hav_not w|took yes|so you_do|th you_hav| you_put| you|to |@103.7 |@116 |@121.0 |@13.8 |@14.4
|@141 |@15.4 |@28.7 |@39.2 |DISH_from |DISH_it_$ |DISH_it_is |DISH_my |N:few_it_is |N:few_so
|N:oven_for |Ndate |Ndate_and |THING_and |THING_it_is |THING_no |THING_with |about |after_all_$
|and_in_th |and_then |anyth_$ |anyth_$_$ |ar_not |at_N:few |back_to |bag |befor_Nduration |by_N:some
|do_not_mind |early |fewer |first_then |for_dinner |for_it |go_to_go |hav_to_rest |her_U |how_th
|i_n_from |i_no |in_it_$ |instead_of |is_N:core_$ |is_blister |is_full |is_up |it_$ |it_$_$
|it_N:few |it_first |it_is_bleed |lat |left_$ |left_$_$ |n_to_b |no_shellfish_sh |noth_$ |noth_$_$
|of_U |of_it |off_at |on_Nduration |on_th_dial |on_th_middl |or_U |or_th |ounc |out_her |possibility
|present |sinc_th |so_and |so_much |soon |split |start_to |th_$ |th_$_$ |th_i |th_list |th_oven_on
|th_oven_to |th_truss |that_back |this_th |thought |to_N:few |truss |up_and |w_sit |wedd |what_it
|whil_it |will_i |will_not_eat |with_it |you_i |you_say |you_would
-21 @114.0| @115.0| @53.5| @67.2| @96.2| DISH_DISH|U DISH_at| DISH_off| DISH_on|th DISH_that|
DISH|Nduration_timer DISH|U_$ DISH|go_in DISH|now_$ DISH|start_now DISH|still N:core_is| N:core|and_climb
N:core|for N:core|last N:few_of_thos| N:few_on| N:few_oven|th N:few_they| N:few_th| N:few_to|
N:few|U_of N:few|extra N:few|off N:few|person N:few|tonight N:oven_and| N:oven_in| N:oven|on_th
N:oven|or N:some_th| N:some|for_th N:some|on N:some|on_th Nclock_th| Ndate_th| Ndegrees:core|in
Ndegrees:some_in| Nduration_behind|th Nduration_later|than Nduration_lat|hon Nduration|left
Ngas-mark_and| Nweight|leg Nweight|leg_of P_hav| P|hav P|help THING_DISH|for THING_i_think|
THING_so| THING|THING_$ THING|THING_THING THING|for_th THING|in_and THING|in_it U_at| U_it|is
U_my_P| U_th|THING U|THING_$ U|for_th U|no_THING U|with ^_DISH|Nduration ^_Nduration_ago| ^_Ngas-mark|now
^_P_say| ^_THING_leg| ^_THING|leg ^_^_kindly| ^_^_on| ^_^_ready| ^_^_smok| ^_it|THING ^_kindly|
^_my_oven| ^_not_befor| ^_not|i ^_no|P ^_no|THING ^_no|no ^_ok_so| ^_on| ^_ready| ^_smok| ^_what_tim|
^_with_that| a_new| after| after|all all_my_THING| all|this am_not|do am_not|don am| and_ar|
and_h_is| and_h| and_not| and_they| and|DISH_DISH and|DISH_ar and|N:oven and|forget and|how_long
and|i_hav and|my_P and|oven_is and|say and|sorry and|th_THING and|that and|when_do and|which
another|Nduration_$ ar_Nduration| at_N:oven|so at_Nclock_U| at_what| at|all at|what a|N:few_bon
a|medium back_to| bar| been_rest_for| behind|th_plan bin|th_DISH boil_and| bon_in|rib brought_th|
brought| burnt|my_THING butter_is| b|right call|it cam|out can_b| can_i| can_not| can_us| cancel|th
can|b center_it_is| cheap| cheap|THING christma|dinner com|THING com|off could_i| could|i d'you|
degre| dinner|Ndate dinner|Ndate_at dinner|roll do_not| do_not|let dog_back_in| don_and| down|Nclock
dress|th dress|th_DISH eat|Nclock everyth_in| find|th forget|th fork|in for|N:few_peopl for|Nclock
for|medium fridg|at get_th| god|i go|ahead go|out greas| green| had_th| has_a| hav_already|
hav_any|THING hav|com hav|i_got heat|th_oven hello|P help_and| her_it| her|now her|on his|P
hold|dinner_for how_U| how_far| how_hot| i_can_not| i_could| i_hav_already| i_hav|no i_lik|
i_open| i_said|N:core i_work| i_would| if|th ignor|that_$ in_Nduration|now in_a| in_oven| in_th_top|
invit| in|Nduration_and in|celsius_$ in|it_go in|rib is_N:few|so is_Ndegrees:few| is_Ndegrees:some|
is_bring| is_it_look| is_it|a is_medium|rar is_on|fir is_th_THING| is_your| is|boneless is|boneless_Nweight
is|burn is|medium_rar is|smell it_is|boneless it_is|my it_look_lik| it_on|th it_out|at it_will|
it|b it|must it|run it|sit it|went i|cut i|do_not i|forgot i|mak i|must i|turn_th i|will know|th
lat_so| lat|hon leav| left_in|th left_it| lik_it|medium lik_th| lik|DISH littl|U lunch|Ndate
m_and| m_in| mad|a mak|DISH mak|dinner_Nduration mean|N:core measur| middl|is_N:core mor_guest|com
my_P_say| my|DISH my|P_has m|N:core_$ m|THING m|fahrenheit m|now m|on m|that m|to m|up m|what
nip| no_i_meant| no_th_other| not_believ| not_don|yet noth|on not|N:core_$ not|N:few_$ not|cook
not|do not|mak not|tak not|ti now_th| now|at no|fan no|french no|n no|no_no of_us|in off|in
of| of|N:some of|th_N:few of|th_P on_it_is| on_i| on_them| on_w| onc_th| on|Ngas-mark_$ on|all
on|hot on|in on|out on|th_sid or|is out_and| out|ther oven_and| oven|th_roast pan_and| pan|handl
pop| pound|and pretty|good prim_rib|Nweight put_in| put_oven_on| quarter| ran| remov_th| remov|th
rest|in revers|sear rib|with_N:few right|for right|w roast|DISH_and roast|is roast|out run_N:some|
said|N:core_$ said|yes say_to| say|a second|oven se|you sh_lik| shell| shout|when show_m|fahrenheit
sinc|Nclock singl| sit_down|Nclock sit|down sit|out skip|th slid| smok|com so_do| start|to
step|away stir| story| street|is stuck_in| tabl|and_help taken| tell_your_P| th_DISH|DISH th_U_is|
th_U|THING th_green| th_heat|and th_i| th_lower| th_oven|door th_roast_is| th_roast|out th_tabl|for
th_temperatur| th_top|oven that|last that|step ther_is_not| ther_is_no| ther_is|no they_keep|
they|keep think|i th|U th|back th|electric th|electricity th|first th|good th|guest_hav th|job
th|leftover th|oven_up th|plat th|power_went till_i| till|i till|it tim_th_roll| timer_Nduration|DISH
timer_and| timer|for to_check| to_rest| to_tak| too_much|go too|lat to|Ngas-mark to|U to|help
to|my to|serv to|sit to|tak_it try| up|at up|from up|in up|in_th us|and_U w_did| w_still| w_want_it|
w_will| walk|th_dog want_th| was_th| what_ar| what_number| what_sid| what_temperatur|is what|ar
when|it_is when|w when|you wher_is| wher|ar_w wher|do whil|it whil|w whip| who_is| whol_THING|
whol_street|is why_ar_w| why_is_it| will_it| wish| with|no would_you|say w|should you_to| your|U
you|get y| |@119.1 |@13.4 |@137.3 |@3.2 |@42.4 |@63.1 |@88.2 |@90.1 |@90.4 |DISH_after |DISH_after_all
|DISH_for_th |DISH_i |DISH_nobody |DISH_w |N:few_and |Nduration_after |Nduration_th |Nduration_what
|THING_at |THING_can |THING_for_th |THING_h |THING_or |THING_so |THING_w |THING_what |U_i_do
|U_to |after_Nduration |after_it_is |again_and |and_eat |and_left |ar_a_no |ar_in |ar_on |ar_still
|as_w |at_N:few_is |at_N:oven |at_Ngas-mark |at_onc |away_$ |away_$_$ |b_for |back_Nduration
|befor |believ |birthday |boil |c |can_not_eat |cancell |centr |chair |choic |cousin |do_you_know
|e |fella |for_th_crust |fresh_DISH |from |from_scratch |go_off |go_on_then |goos |got_left
|her_Nduration |hit_th |hotter |how_long_$ |i_am_slow |idea |in_oven |in_th_garag |in_ther_$
|in_tim |is_N:oven_$ |is_Ndate |is_a |is_do |is_off |is_out |is_ready |is_show |is_smell |is_vegetarian
|is_way |is_when |it_Nduration |it_U |it_all |it_now |it_on_th |it_yet |kind |left_in |lik_that_$
|lik_you |lik_you_said |loo |loud |m_N:few |m_on |march |mark |no_bon_Nweight |not_cook |of_N:few
|of_Nduration |on_th_left |on_th_list |on_th_roast |onc |open_$ |open_$_$ |otherwis |out_U
|oven_th |over_N:core |park |pat |pink_$ |pink_$_$ |pizza |record |right_for |shap |show_up
|smok_in |so_cross |so_early |so_early_$ |stand_by |swear |tak_a |th_DISH_a |th_DISH_from |th_DISH_it
|th_DISH_th |th_THING_pan |th_dinner |th_is |th_lower |th_oven_as |th_plan_$ |th_roast_DISH
|th_whol_way |th_wrong |till_i |tim_to |to_N:core |to_you |understand |w_eat_$ |w_still |wash_up
|weigh |what_you |when_Nduration |will_carv |will_do |with_th_DISH |without_a |your_THING |yusuf
-20 @16| @18.3| @28.6| @73.4| @77.5| @79.4| @92.0| @94.1| @99.2| DISH_DISH|ar DISH_DISH|from
DISH_DISH|so DISH_butter|is DISH_butter|it DISH_don|top DISH_in|ther DISH_not| DISH_they_ar|
DISH_to| DISH|can_go DISH|cancel DISH|hav_gon DISH|i_mean DISH|so_scrap N:core_DISH| N:core_in|
N:core_it_is| N:core|too N:few_it_is| N:few_i| N:oven|fan N:some_and| N:some|peopl Nclock|on_th
Ndate_and| Ndegrees:core_in| Ndegrees:core|in_th Ndegrees:core|let Ndegrees:core|let_m Ndegrees:oven|convection
Nduration_off|schedul Nduration_then| Nduration|from Nduration|sh_say Nweight_of| P_com| P_so|
P_want_it| P|do P|got P|th_roast THING_THING|in THING_and| THING_ar| THING_at| THING_in|it
THING_i| THING_of_DISH| THING|DISH_$ THING|left THING|when_it THING|will_i U_ar| U_go| U_it_is|
U_my_god| U_what| U|or U|was ^_DISH|and ^_N:few|guest ^_P_U| ^_U|ther ^_^_everyth| ^_^_guest|
^_^_not| ^_^_pass| ^_^_shut| ^_^_start| ^_^_this| ^_^_tonight| ^_^_too| ^_dinner|Nclock ^_everyth|
^_guest| ^_in|my ^_mak_that| ^_my_lot| ^_no_DISH| ^_not| ^_nowher_near| ^_pass| ^_right|that
^_right|w ^_shall_i| ^_shut| ^_sorry|what ^_start| ^_th_roll| ^_that_was| ^_this| ^_tonight|
^_too| ^_w_want| ^_yes|it a_THING|THING a_THING|pan a_lovely| absolutely| after|it_is again_i_was|
ago_and| all|guest all|guest_ar alway|do am_i| and_got| and_so| and_start| and_th_THING| and|DISH
and|N:core and|Nweight and|can_i and|can_w and|can_you and|hav and|i_am and|paus and|pick and|pull
and|set and|tak and|w_ar and|what_can and|what_temperatur any_THING|is any_other| any|U ar_a|
ar_th| ar|N:few ar|U as_you| ask| at_Ndegrees:core|let at|N:core at|a at|half at|my a|N:few
a|Nweight a|no back_and| back_in|N:some back|a bath_is| befor|Nduration behind_on| behind|on
bit|over board|now boil_water| bother| burnt|my bus| butter|for b|DISH b|N:core can_not_find|
can_th| can_w_eat| can|U can|us can|w_hav catch| cheap_THING_THING| check|it christma|dinner_at
consider| cook_it| cor_is| count|th cut_into_it| dial|THING did|not dinner|back do_not|w do_not|you
do_truss| don|and_dust don|her don|top down_and| down_in| down_yet|sorry down|in do|a do|i_put
eat_Nduration| eat|Nduration eat|it_$ end_is| end_th| e| fac|is few| for_N:few|peopl forerib_joint|
forerib_joint|Nweight forgot|th fresh|DISH from|N:few get_a| go_and| gon_in|Nduration gon|Nduration_$
gon|U_$ got_THING|to got_a| got_my_P| got|that go|over go|up guest|will h_said| half|th_DISH
has_got| hav_DISH|DISH hav_gon|and hav_it|medium hav_to| hav_w| hav|got_th hav|miss hav|som
hit_N:core|would hit|N:core hold_everyth| holiday|let hot|for hot|to how_THING| how_much_longer|
how_you| how|com i_THING| i_burn| i_hav_gon| i_salt_it| i_think|i i_thought| i_told| i_will_b|
if|it_is if|you in_U|w internal_temperatur| into_it| into_it|and into|th in|N:few in|Nduration_$
in|mind in|th_top is_N:core|too is_allergic|to is_alway| is_boneless| is_cut| is_dinner| is_how|
is_it|still is_not|don is_on|th is_that_th| is_under| is_way| is|everyth is|hav is|not is|sh
is|th_U is|th_roast is|ther is|very is|your it_and| it_down_yet| it_has_gon| it_is_boneless|
it_i| it_said| it_will_not| it|at_Nclock it|do_not it|dry it|is_N:some it|lik it|medium it|right
it|tak i|crank_it i|did_not i|do i|set_th i|skip i|will_not jump| keep|go keep|th kept| know|when_it
left|in let_m|forget let_us|skip level| lik|that look_at| look_for| look|don look|for los|th
lot|hav mak_a| mind|th much_longer| much_salt|do must|i my_P|U my_THING_THING| my_god| my_lot|
my|P_want my|THING m|Nduration_$ m|forget n_that| near|don no_THING|THING no_you| nobody_at|
nora| not_do| not_let_m| not_th| not|U_$ not|brown not|finish not|lik not|stop now_U| now_it_is|
nowher| no|DISH_tonight no|i_am of_THING|now of_them|can of_them|hav off|schedul of|my of|that
of|what ok_P|th ok|th on_a| on_my| onto| onto|th on|N:core_$ on|is_U on|now on|th on|th_DISH
on|th_left or_DISH|whatever out_befor| out_for| out_th| out|already out|of oven_for| oven_is_not|
oven|Nduration paid| pass_m| phon_is| phon_it_THING| phon|is plan|for poor| preheat|to pull|
put_it_in| put_it| ready|for ready|when rest|in_th right_now| roast|DISH_$ run_Ndegrees:few|
run_Nduration|behind said|N:some said|it salt|do_i say|N:core_in say|N:some say|they scald|my
sear_is| set|Nduration sh_is_on| shall_b| shellfish_allergy| shower|giv shower|giv_m shut|th
slic|my slic|my_thumb so_it_is| sorry|say so|h so|how so|they_ar so|w_ar stand_on| start|a
stood| sur|i_hav tabl|for_Nclock tak_th| tak|his talk|to tell|when temperatur_is| temperatur|Ndegrees:core
temperatur|ar th_DISH|cancel th_THING|N:few th_blu| th_first|N:few th_guest| th_leg| th_roast|is
th_timer|off thank_for| that_Nduration| that_is_all| that|is_all that|was them|can them|hav
then_it| ther_ar| ther_is_smok| ther|ar ther|in thes|DISH they_ar_in| they_ar|still think|it
think|it_is thought|i th|DISH_DISH th|DISH_go th|DISH_n th|N:some th|Nclock th|THING_has th|display
th|guest_ar th|label th|list th|low th|old th|oven_down th|plan th|power_is th|roast_is th|sear
th|snow th|you tim_Nduration|for tim_and| timer_on|th timer|Nduration timer|Nduration_THING
tim|for to_help|m to_that| to_th| told_him| told|m to|giv_m to|pick to|th to|ti to|turn trim|th
ty_it|is up_a| us|Nduration us|a us|skip us|this w_got| w_had| w_hav_got| warm|plat was_a|
was|out weigh|Nweight went_on|Nduration what_all| what_a| what_com| what_do|w what_hav| what_is|
what_i| what|did_i what|should when|can whil_i| whol_th|back will_not| will|i will|it wip|
with_DISH|DISH with_th|second without|a with| with|th w|do yet_and| you_don| you_i| your_oven|
you|don you|said you|tak |@105.2 |@110.5 |@113.0 |@133.1 |@32.13 |@51.3 |@59.5 |@73.4 |@8.2
|@96.1 |DISH_ar_ready |DISH_tonight |DISH_with |N:core_for |N:core_when |N:oven_U |Nduration_how
|Nduration_lat_and |Nduration_sooner |Nduration_to |Nweight_N:some |P_hav |THING_N:some |THING_Nweight
|THING_b |THING_to |a_THING_$ |a_sid |after_it |after_that |ahead_$ |ahead_$_$ |all_that |all_through
|alon |altogether_$ |altogether_$_$ |am_i_miss |and_a |and_can_not |and_chill |and_dust |and_find
|and_got_N:core |and_oil |and_steam |and_stuff |another_Nduration_$ |app |ar_away |ar_don |ar_peel
|as_of |at_Ndegrees:oven |at_U |at_least |b_$ |b_$_$ |b_medium |b_us |back_it |befor_$ |befor_$_$
|bit_$ |bit_$_$ |caught_fir |com_$ |com_$_$ |com_out_of |dairy |deglaz |did_that |dinner_b
|do_it_$ |down |down_so |earlier |extra |fell |for_N:some |for_Ndate |for_anyth |for_th_U |for_th_butter
|for_us_$ |fork |from_th_plan |from_ther |from_your |gav |get_her |go_with |grill |half_tim
|happen |hav_gon_in |hav_reach |hav_to_b |hous |i_can_do |i_want_thos |i_was_on |in_N:core
|in_U_$ |in_fahrenheit_$ |in_th_U |in_th_hall |in_th_hous |insid_$ |insid_$_$ |invit_themselv
|is_P |is_at |is_broken |is_coeliac |is_enough |is_for |is_go |is_her_$ |is_not |is_when_w
|it_N:core |it_as |it_what |it_whil |it_wrong |keep_THING |left_on |less_now |lik_Nduration
|lik_Nduration_ago |lovely_$ |lovely_$_$ |m_up |m_what |might |new_$ |new_$_$ |next_door |no_longer
|noth_is |now_U |of_it_$ |of_that |of_you |off_is |ok_in |ok_instead |on_P |on_i |on_in |on_on
|on_th_pan |on_your |onc_it |or |or_N:few |out_and |overnight |paus_$ |paus_$_$ |plus_N:few_$
|position |prim_rib_$ |rar_th |rather_than |ring |roll_$ |roll_$_$ |rush |scream |sharp |short
|sid |slip |so_much_$ |so_no_THING |so_scrap |stag |str |tak_his |tak_m |tell_m_to |th_Nduration
|th_THING_behav |th_THING_out |th_board |th_bon_$ |th_bottom |th_car_$ |th_clock |th_door_$
|th_fridg |th_gam |th_oven_what |th_r_win |th_tim |th_timer |th_to |th_trim |th_water |that_bit_$
|that_i |ther_is_THING |ther_not |threw |till_my |timer_and |to_THING |to_help |to_say |to_sp
|to_th_DISH |to_that |to_this |toast |tonight_$ |tonight_$_$ |up_as |updat |vegetarian |w_ar_us
|w_will_eat |was_a |weekend |what_to |whol_THING |with |with_Nduration |with_that |with_this
|won |work |would_you_i |wrot |yesterday |you_N:few
-19 @109.3| @128.4| @32.7| @33.5| @62.6| @75.0| @85.4| DISH_and| DISH_in|at DISH_in|my DISH_is_not|
DISH_is|U DISH_i| DISH_th|oven DISH_too|U DISH_top| DISH|DISH DISH|DISH_too DISH|in_N:few DISH|roll
N:core_a| N:core_no| N:core_on|th N:core_right| N:core|and_frail N:few_bon_rib| N:few|for N:few|hav
N:few|instead N:few|is_when N:few|steady N:oven_th| N:oven|at N:oven|lik N:some|in N:some|to
Nclock_and| Nclock_not| Nclock|instead Ndegrees:some|hot Nduration_ago|sorry Nduration_back|it
Nduration_befor|it Nduration_behind|on Nduration|earlier Nduration|later Nduration|not_N:some
Nduration|now_i Nduration|set Nduration|set_a P_it_is| P_i| P_want_her| P|get P|set P|to P|us
THING_N:core|Nduration THING_N:some| THING_THING_on| THING_went_in| THING|again THING|hav U_of_th|
U_say| U_th|oven U_up| U_w| U|DISH_ar U|it_$ U|of U|say ^_DISH_Nduration| ^_Nweight|rib ^_U|that
^_^_bottom| ^_^_butter| ^_^_finish| ^_^_full| ^_^_go| ^_^_list| ^_^_off| ^_^_plat| ^_^_remember|
^_^_roll| ^_^_say| ^_^_second| ^_^_stand| ^_^_top| ^_add|N:few ^_ar_you| ^_bottom| ^_bottom|oven
^_butter| ^_check_it| ^_finish| ^_full| ^_go| ^_hello|P ^_i|pull ^_i|switch ^_let_m| ^_list|
^_off| ^_ok|so ^_plat| ^_remember| ^_remind_m| ^_right|so ^_roll| ^_say| ^_second| ^_stand|
^_th_doctor| ^_th_second| ^_top| ^_want_to| ^_what_number| a_THING|oven a_break| a_few| a_read|
add|N:few_mor add|green add|green_DISH again_th| again|in ago|it_said ago|sorry alex| all_and|
all_go| allow| allow|to already_and| am_i_U| am_not|go and_at| and_do_not| and_i_am| and_in|
and_let_us| and_no| and_oven| and_th_oven| and_you| and|DISH_is and|DISH_went and|P_is and|THING_is
and|ar and|h_is and|phon and|pick_up and|sam and|som and|tim and|turn and|what_ar and|what_do
and|why_do ar_hav| ar_not|brown ar_still| ar_w| ar|DISH ar|N:some ar|do ar|look ar|still ar|th
ar|ther as_a| as|well at_N:oven_and| at_Ngas-mark|and at_a| at|it at|which a|DISH_DISH a|good
a|new a|roast a|timer b_a| b_hav| b_th| bath|th bath|th_P been_on| befor|N:few befor|it_go
behind|with besid| bit_and| bit_over| bon_rib| boneless_rib_THING| book| bottom|oven br_th|
by|a b|N:few b|N:few_of can_it| can_my| can_not|turn cancel|that can|i_hav car_is| chang_to|
cheap_THING| check_it|and check|Nduration check|Nduration_ago clock|for_th com_THING| com_back|
com|in com|with cut|my cut|myself did_not_say| dinner|N:oven di|on do_in| do_i| don|in door|open
down|a down|at_Nclock down|is_N:few do|N:core do|N:few do|i_n do|it_go do|next do|not drink_in|
drink_in|THING drink|in drink|in_THING duck|out du| eat|THING end|is everyth_is| fair| fan|on
fat_in| fat|end find_in|th finish|with flam|com flatmat| for_Nduration_N:few| for_anyth| for|THING
for|som for|your french_and| fus| gary| get_ic| giv|th gon|out gon|ston gon|ston_cold got|th
go|in go|with grab| greas|fir grey|all guest|is h_do| h_is_on| h_will| had|N:few has_P| has_gon|out
has_it| has|a hav_a_pan| hav_been| hav_i| hav_lost| hav_remov| hav_rop_in| hav_to_run| hav|
hav|DISH hav|N:core hav|th hav|w help_m|now her_i| her_well| her|P_is her|th_rest her|well_don
high|do his_medium| hot|oven how_do| how_is_it| how_long|can how_many| how_much_THING| how_th|
how_to| i_U|th i_check| i_got_to| i_had| i_hav_N:few| i_hav_U| i_hav_remov| i_hav_to| i_hav|pull
i_put| i_saw_it| ic|water idea|how if_it_is| in_my_P| in_my| in_th_lower| instruction|for internal|temperatur
in|DISH_DISH in|flam in|th_lower in|th_shower in|tim in|yet is_N:few_month| is_Nduration| is_at|N:oven
is_for| is_her|now is_m| is_on|at is_went_in| is|N:some_$ is|Ndate is|Ndegrees:core is|beautiful
is|com is|cook is|do_th is|half is|ready is|run is|sort is|tent is|warm it_N:few| it_a| it_back|in
it_in|th it_is_N:some| it_is|Ndegrees:core it_is|Ndegrees:some it_is|all it_is|beautiful it_is|tent
it_mak| it_stand| it|hot it|in it|is_THING it|on it|over it|rar_$ it|said it|was it|with it|without
i|don i|drop i|hav_kept i|hav_to i|knock i|knock_it i|know i|mean i|pull_it i|pull_th i|said_th
i|switch i|took joint_for| jump_over| keep_it| kilo_is| lat_th| lat|with_th leav_it| left|it
lick| light|went lik_it|still listen|to long_do_it| long|can long|is lost_N:few| los| m_U|ther
m_at| m_in|Nduration m_through| m_to| m_what| mad_a| mad|it_to mak_dinner|N:oven mak|that man_is|
meant_to| medium_not| miss|that mor|tim much_THING| much|salt my_P|help my_THING_on| my_pregnant|
my_pregnant|P my_thumb| my|P_in my|P_is my|glass my|phon my|shop my|shop_list m|Nduration_behind
m|a m|a_N:few m|and_my m|at m|option m|out n_Nduration|set next|on nic_with_this| not_THING|
not_find_in| not_hear| not_se| not|N:oven not|Nclock not|Nclock_$ not|get not|go_to not|got
not|they now_at| now|for now|on now|then no|DISH_butter no|cream no|scratch no|scratch_that
no|th_oven of_a| of_roast| of_them|ar of_them|walk off_my| off_th| ok|th_THING on_N:core_and|
on_for| on_th|list on|convection on|her on|schedul on|second on|th_list on|th_pan on|to open|th
or_is| other|oven out|a out|again oven|at_N:oven oven|run_hot oven|to pat_it| pat_it|dry peel|took
peel|took_forever pet|is pick_up| pick_up|th plus| power|cut pregnant|P priya|can priya|can_not
pull|it push|dinner put_th_oven| put_your| put|th rar_and| ready|yet reckon|i remind| rib_THING|
ribey| right|w_hav roast_and| roast_is|Nweight roast|at rock|up roll|go roll|joint room|for
run_Nduration|lat run|out r|N:core_$ saw_it| say|Ndegrees:core say|to schedul|green schedul|green_DISH
se_th| sear|it_first sh_is|not sh_was| sh_will| sh|can sinc|Nduration_$ sinc|th sit_down|at
siz| slic|th so_and| so_lik| sold| someth|is so|mak so|put so|sh so|th_THING so|th_middl stand|THING
stand|by start|THING still_at| still|DISH stop|talk stov|for str|in sub| swell|up switch| tabl|at
tabl|salt tast| th_DISH_off| th_DISH_too| th_DISH|a th_Nclock| th_Nduration|N:few th_P_is|
th_P|is th_THING|out th_bon_in| th_clock|for th_fat|end th_fridg|at th_other|oven th_stov|for
th_tabl|at th_target| th_third| that_is| that_is|N:few that_is|U that_is|what that_number|
that_on|out that|bit that|is that|is_th that|will them|ar them|walk_in ther|a they_ar|hav they_ar|not
they|com they|do this|can_you thought_i| thousand| thumb_is_bleed| th|N:core th|Nduration_timer
th|THING_on th|and_i th|beep th|car th|driv th|electricity_has th|hot th|is_THING th|last th|man
th|oven th|oven_at th|oven_has th|quick th|roast_has th|run till|Nclock tim_is| tim_i| timer_Nduration|THING
timer_th| to_DISH|th to_N:core_and| to_N:core|tell to_a| to_get_ic| told_m_U| told|you too_and|
too|U top_off| top|and_tail top|off to| to|chang to|medium to|medium_well to|my_P to|pull to|pull_it
to|r to|rest to|start to|tak to|this to|ti_it turn| under|th_THING up|and_in up|for up|i_will
us_at| us_to| us|THING_$ us|to w_can| wait|for walk|m want_it|rar want|DISH want|N:core warm|th_plat
was_N:some| was|N:oven was|N:some watch_for| water_for_th| way_behind|her well_th| whatever_you|
what|am what|am_i what|do what|do_i what|hav what|should_i when_it_is| when|it when|th wher_do_i|
wher_i| wher_w| which_temperatur| whol|th why_ar| why_do_not| why_do| why_not|DISH will_THING|
will_hav| with_a| with|DISH with|a with|th_THING would|not wrong_it_is| wrot| w|put w|skip
yes_i| yes|go_on yes|i_am yet_i| you_carv| you_could| you_tak| you_will| your_plan| your_sho|
your|DISH you|do_not you|say you|want you|watch |@116.5 |@121.1 |@129.1 |@129.2 |@14.2 |@17.1
|@24.5 |@35.3 |@51.4 |@62.5 |@66 |@73.3 |@85.5 |@91.1 |@97 |DISH_DISH_DISH |DISH_ar_boil |DISH_lik_$
|N:core_what |N:core_whil |N:few_mor_$ |N:few_mor_to |Ndate_th |Nduration_and_i |Nduration_left
|THING_N:few |THING_is_broken |THING_is_it |THING_say_N:oven |THING_th |U_ar |U_of_her |U_they
|a |a_leg |a_sec_$ |a_second |alway |american |and_THING_$ |and_frail |and_left_th |and_tail
|ar_boil_away |ar_off |ar_up |ask_$ |ask_$_$ |at |at_Nclock_and |b_at |b_too |back_it_was |befor_i
|behav |blood |br_it_to |broken |build |button |by_a |by_now_$ |can_do_th |can_you_add |center
|chemo |choos |com_Nduration |com_back |com_to |cost |cours |crispy_DISH |dial |din |dinner_back
|dinner_for_Nduration |do_not_do |do_not_open |do_th_THING |dollar |don_th |drawer |drop_out
|dust |empty |every_slic |faff |fat_THING |feet |for_a_bit |for_th_next |forward |from_her_$
|from_m |get_to |go_off_$ |got_$ |got_$_$ |got_it_$ |got_left_$ |green_DISH_U |has_gon |has_got
|hav_com |her_what |hood |i_am_behind |i_hav_remov |i_would_say |if_that |if_you |in |in_for
|in_her_$ |in_th_end |insid |instruction_$ |instruction_$_$ |is_N:core_in |is_N:few_sharp |is_Ndegrees:some
|is_U |is_after |is_alway |is_at_N:oven |is_how |is_open |is_split |it_by |it_is_what |it_pink
|it_smell |it_to_N:core |itself |jar |lady |least |left_th |lik_DISH |littl_on |load |look_lik
|m_in |m_through |m_to |measur |moo |mor |my_THING_$ |no_i_am |not_i |not_it |not_say |not_start
|now |of_my |of_th |off |ok_instead_of |on_all |on_and |on_her |on_m_$ |on_th_littl |on_top
|on_what |onto |onto_th |out_what |oven_Nduration |over |pretty |put_on |roast_$ |roast_$_$
|roast_N:few |roast_is_at |run_Nduration_lat |salt_$ |salt_$_$ |salt_do |say_Nduration |scal
|scald_my_arm |seen |set_for |set_th_tabl |show_N:core |sinc_Nclock_$ |sink |sit_out |sleep
|smell_amaz |so_N:few_mor |start_$ |start_$_$ |step_$ |step_$_$ |still_$ |still_$_$ |tak_THING
|tell_you |temperatur_now |th_DISH_n |th_bon_and |th_centr |th_dial |th_end |th_floor |th_lot
|th_menu |th_needl |th_order |th_oven_has |th_oven_off |th_plac |th_roast_and |th_shower |th_stair
|th_th |th_top_oven |th_wash |that_alarm |that_timer |think |this_morn |this_up |tim_i |to_THING_$
|to_carv |to_check |to_com |to_keep |to_m_$ |to_my |to_nut |to_roast |told |too_much_$ |too_much_salt
|turkey |turn_up_early |up_for |up_i |was_N:core |was_N:some |was_still |we |when_h |when_sh
|will_not_touch |will_not_turn |with_it_$ |with_th_fan |worry |you_for |you_in |you_want
-18 @108.0| @113.0| @13.8| @130.0| @32.9| @38.9| @64.7| DISH_DISH_in| DISH_Nduration|timer
DISH_has_gon| DISH_in|Nduration DISH_in|yet DISH_m| DISH_so|scrap DISH_ther| DISH_want| DISH_whil|
DISH_will| DISH|DISH_in DISH|THING_say DISH|after DISH|and_stuff DISH|anymor DISH|ar_overdon
DISH|don_$ DISH|in_Nduration DISH|is_not DISH|look DISH|no_i DISH|powder DISH|should DISH|th_roast
DISH|timer DISH|went N:core_can| N:core_it| N:core_over|N:core N:core_right_end| N:core_too|
N:core_what| N:core|whil N:few_adult|and N:few_at| N:few_mor|peopl N:few_steady| N:few|THING
N:few|fewer N:few|month N:few|with_th N:few|year N:oven|now_$ Nclock_befor| Nclock_on| Nclock|for
Nclock|in_th Ndegrees:some|in Nduration_can| Nduration_lat|they Nduration_what| Nduration_w|
Nduration|and_N:few Nduration|back_$ Nduration|down Nduration|timer_$ Nduration|to Nweight|forerib
P_and| P_got_her| P_is|N:core P_lik_his| P_sh_is| P_to| P|do_not P|eat_at P|in P|turn_th P|with
P|would THING_THING_th| THING_back| THING_my| THING_out|th THING_what| THING_without| THING_with|
THING|THING_over THING|from THING|hang_in THING|in_ic THING|m_th THING|not_th THING|th_edg
THING|under THING|what_am U_a| U_no_THING| U_not|all U_no|th U_on|th U_sh_is| U|up ^_Nweight|of
^_P|jim ^_P|say ^_THING|brok ^_U_com| ^_U_god| ^_U_is| ^_U_th| ^_^_any| ^_^_com| ^_^_cook|
^_^_fan| ^_^_last| ^_^_mov| ^_^_season| ^_^_temperatur| ^_^_thank| ^_^_us| ^_any| ^_ar|you
^_can_i| ^_can_w| ^_com| ^_cook| ^_count_down| ^_cut|it ^_fan| ^_giv_it| ^_in_it| ^_in_my|
^_last| ^_mak_dinner| ^_medium|for ^_mov| ^_no|w ^_ok_P| ^_ok|th ^_season| ^_temperatur| ^_th_number|
^_thank| ^_us| ^_why_not| a_Nduration| a_boneless| a_fan| a_glass| a_hot|finish a_nic| a_second_oven|
abov|th add|DISH_DISH adult|and_N:few against| all_i| all_right_for| all_th| allow_to| all|N:few_of
all|U all|go all|her all|th_DISH all|th_way am_Nduration|off am_THING|for am_i_look| am_not|french
am_slow_today| and_DISH| and_Nduration| and_can| and_find| and_go| and_hav| and_is_it| and_it_say|
and_my| and_still| and_stop| and_then_th| and_ther| and_th|THING and_undo_that| and_w| and|cut
and|help and|is_it and|is_ther and|it_has and|medium and|mov and|nobody and|run and|sh_is and|th
and|that_is and|you_ar anymor_th| ar_go_in| ar_in|alongsid ar_join| ar_they| around| arriv_th|
ar|all ar|com ar|not ar|not_ready at_N:core_com| at_N:few|instead at_my| at_th|N:few at| at|N:oven_THING
at|Nclock_i at|th at|th_THING at|that away|Nduration_$ away|from a|Nduration a|Nduration_timer
a|THING_leg a|whol b_away| b_for| b_on| back_in|N:few back|Nduration back|after befor_w_eat|
befor|Nduration_$ befor|th_DISH behind_and| behind_on|everyth behind|on_th besid_th_THING|
bin|out bit|behind bit|is blast| bless| bob| boil|water br|th bum| burn_th| burnt_th| butter|step
by|Nduration_$ b|N:core_$ b|back b|back_in b|tak b|us cak| call_them|i cam_U_not| can_you_do|
cancel_DISH| cancel_DISH|my cancel_that|timer can|w_eat carol| carv|and car|pull cat| celsius_and|
centr|it centr|it_is chair| chang|my cheap_THING|THING clock|for clos|th coat|ar_off cold|in
com_up| com|after com|after_all com|up convection|is could|you count_down| crank| dan| dav_check_it|
dial_THING| did|it dinner_and| dinner_is_at| dinner_up| dinner|N:oven_$ dinner|at dinner|b
dinner|tim do_it|n door_was| door|shut down_so| down_with| down|Nclock_$ down|on do|not_do
do|with drop_it|to eat|N:oven eat|ok els|could f_th| fahrenheit_and| finish_and| first_then|
fir|in_th flam_and| for_N:few|at forward|Nduration for|DISH for|how for|th_roast for|that freezer|still
freezer|still_DISH fresh|out fresh|out_of from_th_THING| from|scratch full|hous get_THING|
get_th_DISH| go_to_do| go_up| gon_cold|on gon_to| gon|and_drop got_it| got_no| got|DISH go|straight
go|to guest|will_not half_THING_THING| half|DISH half|DISH_in has_reach| has| hav_got|my hav_got|no
hav_it|sear hav_not|turn hav_th| hav_ti| hav|Nduration hav|chang hav|pull hav|start heard|you
hear| heat_up_to| heat|and her_at| her_th| her_what| her|Nduration_ago her|in her|it_do high_do|
him|in his|medium hold|everyth hold|it hold|th hot|finish hous_and| how_do|you how_many_mor|
how_much_DISH| how_much|DISH how_much|THING how_warm| how|ar how|ar_w how|can how|can_w how|do_i
how|is how|is_it how|th h|can i_am| i_b| i_carv_it| i_did_not| i_hav|N:few i_hav|finish i_hav|start
i_keep| i_never| i_should| i_tak_THING| i_think|it i_think|th i_will_DISH| ic_back_in| if_it_go|
if_that_is| if_ther| in_Nduration|to in_for_Nduration| in_onc| in_th_fat| instead_and| instead_of|
instruction_for| invit_themselv|so in|Nduration_now in|alongsid in|my in|th_fridg in|th_garag
in|th_hous in|th_whol is_N:core_too| is_N:oven| is_a_lot| is_after| is_do| is_everyth| is_get|
is_help|with is_her|out is_lot| is_not|com is_not|finish is_out|and is_read|N:core is_tell_m|
is_very| is|N:few_bon is|N:few_month is|Ndegrees:some is|P_is is|THING is|U_so is|U_with is|blister
is|cut is|giv_m is|go is|help_$ is|look is|not_finish is|ok is|plan is|sear is|sear_now is|show
is|ti it_back_in| it_for|Nduration it_go|to it_has| it_is_N:few| it_is_a| it_is_under| it_is_up|
it_is|Nclock it_is|not it_is|sear it_is|ti it_is|too it_no| it_to| it_well| it_went| it|Nclock
it|after_all it|r it|sear it|show i|DISH i|bump i|bump_it i|can_not i|drop_th i|hav i|hav_put
i|hop i|keep i|miss i|said i|salt i|salt_it i|turn_it joint|out judg| kilo|i_am know_i| know|onc
lad|ar lat_and| lat_with_THING| lat|or lay|N:few lay|N:few_mor left_on| less|now let_us|eat
let_us|mak let_us|start lik_her| lik_her|well lik|my list_of| list|for lit|th lit|th_oven long_it|
look_lik|w lower|it m_a| m_i| m_know|onc m_th_shop| m_through|th m_when_it| mak_it|Nclock mak_it|after
many_mor| maria| meant|N:core mean|N:core_$ middl_is|N:core middl_of| middl|of miss_th| mor|peopl
mor|peopl_ar mov_dinner_up| mov|to much_DISH| much|DISH much|THING my_P|put my_THING_is| my_choic|
my_oven|will my|oven_has m|and_U m|in m|th_whol n_Nduration_befor| n_th| nearly|ther night|in
nobody_is_in| non|of not_bother| not_hav_THING| not_w| noth|is not|all not|all_of not|don not|eat
not|french not|french_th not|got_a not|mov not|put not|quit not|ready not|right not|talk now_for|
now_w| no|DISH_$ no|i_did no|on n|N:few n|Nduration_$ of_THING_now| of_th|N:few of_us|for off_i|
off|again off|again_$ off|and_on off|th_menu of|DISH of|THING_is of|th_THING of|tim ok_i_am|
ok_i| ok_ready| ok_th| ok_th|THING ok_to| ok|P_is ok|for on_all| on_in| on_this| on|paus_$
on|schedul_$ on|th_back on|th_hob option|N:few or_th| or|no our_at| out_at| out_in| out_it_is|
out_i| out_they| out|and_puff out|befor out|so oven_is_up| oven|b oven|down oven|is oven|set
over_th| over_to| over|th_THING parchment| pardon|m pass_th| paus|everyth pencil_in| pencil_in|DISH
pip| pop_th| position| pour_out| pour|out pregnant|P_$ preheat_to| preheat_to|N:oven pric|
priya|is put|Nduration put|Nduration_on r_in| rar_th| raw|insid record| right_end| right_end|N:core
right_for| right|they right|they_ar road_ar| roll_th| roll|ar run_Ndegrees:some|hot run|hot
say_i| say|they_ar scratch| sear|at serv_it_pink| set_to| should_hav| shout_in| shov_dinner_back|
shov_it| show_m|how show|N:core_$ sid_DISH| sit_in| slic_and| small|oven smok_in| so_N:few|fewer
so_count| so_do_not| so_th| som|DISH sorry_and| sorry_i| sorry_not| sorry_th| sorry|i sorry|i_was
sound| so|count so|scrap so|what start|it steady|heat steak| step|out still| still|not ston|cold
stop|that street|is_dark strik_th_DISH| str|after str|after_all stuck|in stuff|with tak_it|medium
tak_that| tak|N:few tak|that tak|your tell_m_th| temperatur_in| temperatur_is|N:core temperatur_of_THING|
th_DISH|anymor th_DISH|timer th_P|hav th_THING|b th_THING|pan th_bin|out th_butter|is th_butter|step
th_cheap_THING| th_dinner|Nduration th_door|shut th_electric| th_freezer|still th_joint|out
th_lad| th_leftover| th_light|went th_littl_on| th_next|step th_oven_at| th_oven|b th_oven|to
th_r|DISH th_shop|list th_twin| th_wet_floor| that_and| that_is_her| that_is|Nduration that_is|not
that_i| that_will_b| themselv|so them|back then_a_hot| then_th| ther_wer| ther|not ther|wer
ther|will ther|will_b they_do| they_hav_got| they|lost they|n think|th through|th_DISH th|U_and
th|bin th|blu th|ic th|leave-in th|plat_ar th|roast th|shop th|we tick|off till_th| timer|her_$
to_N:core|would to_N:oven|lik to_THING| to_b_Nduration| to_b|N:few to_eat|N:oven to_know|when
to_sit| tom|can tom|can_not tom|is too_much|salt too|long totally| touch|th to|Nclock to|Ngas-mark_$
to|begin to|br to|com to|eat to|eat_Nclock to|mak to|peel to|put to|turn_th trim|them turn_out|my
turn|th twin| under_th| up_to|Ngas-mark up|after up|after_th up|i up|to_N:oven us|for us|for_THING
us|in_th us|mak us|start w_ar| w_do| w_eat|ok w_sit|down w_will|sear want_to_eat| was|N:core_$
was|Nduration was|lik way|out weather| went|U wer|N:few wet_floor| what_happen| what_is_on|
what_reason_w| what|can_you what|is_medium when_Nduration| when_do| when_it|THING when_th|
when|h wher| wher|did wher|i whil_it|rest whil_th| will_go| will_sear| will_se| will_sit_down|
will|se will|start with_Nduration| with_THING|Nduration with_salt|and worth| w|get w|skip_th
w|took_it w|would yell| you_do_th| you_get| you_it_is| you_on| you_th| you|ask you|giv you|go
you|lik you|mak you|reckon |@101.2 |@105.4 |@108.0 |@110.0 |@117.0 |@123.2 |@126.3 |@127.3
|@136.4 |@147.3 |@148.0 |@15 |@17 |@20.3 |@32.4 |@34.5 |@50 |@64.4 |@71.5 |@72.2 |@75.5 |@8.0
|@89 |@90.0 |DISH_DISH_my |DISH_ther |DISH_to |DISH_would |N:core_DISH |N:core_about |N:core_can
|N:core_no |N:core_right |N:few_go |N:few_mor_plac |N:few_sh |Nduration_ago_ther |Nduration_earlier
|Nduration_out |THING_h_is |THING_my |THING_over_a |THING_over_th |THING_roll |THING_say_in
|THING_th_tabl |THING_this |U_P |a_roast |a_th |after_$ |after_$_$ |again_in |again_th |all_day
|alongsid_$ |alongsid_$_$ |already_$ |already_$_$ |an |and_N:few_already |and_U_is |and_eat_at
|and_mov |and_puff |and_puff_up |and_rest_$ |ar_at |ar_burn |ar_join |ar_overdon |ar_w_get
|as_anyth |ask_m |assist |at_Nclock_not |at_Nclock_th |at_all_$ |at_th_U |at_that |b_my |back_i
|befor_N:few |bench |bit_of |blister |break |brin |business |carol |carv |celsius_and |check_it_and
|climb |clos |com_from |com_from_th |com_with_Nduration |corner |countdown |cut_$ |cut_$_$
|dead_$ |dead_$_$ |delay_Nduration |did_th |do_$ |do_$_$ |do_i_slic |do_in |do_not_hav |do_this
|do_what |do_you |do_you_want |don_all |early_$ |early_$_$ |every_Nduration |everyth_i |film
|fin |finish_and |fit |for_THING |for_a |for_it_$ |for_m_$ |for_now |for_som |for_th_oven |for_th_roast
|from_m_$ |from_th_pan |from_work |go_in_$ |grid |half_past |hang_in |has |has_been |hav_turn_up
|hav_you_got |her_$ |her_$_$ |i_am_N:few |i_am_hav |i_do_$ |i_reckon_$ |i_said_wrong |in_degre
|in_ic |in_ic_water |in_this_rental |includ |insid_th |invit_themselv_so |is_$ |is_$_$ |is_Ndegrees:core
|is_Nweight_$ |is_allergic_to |is_back |is_bleed |is_cancell |is_clos |is_don_$ |is_for_th
|is_full_of |is_giv |is_hot |is_lot |is_mad |is_ok |is_on_$ |is_pack |is_ring |is_smok |is_so
|is_sort |is_stand |is_tick |is_work |it_com |it_from |it_how |it_is_outta |it_off |it_or |it_show
|it_was_$ |it_with_th |join |know |latest |lik_his |look_is |m_at |mak_th |marri |match |meant_to
|medium_and |messag |mistak |my_god |my_hair |my_phon |n_longer |no_sear |not_do_that |not_lik
|not_ready_for |now_N:few |of_THING |of_THING_over |of_a |of_thos |off_and_ti |off_in_th |off_it
|off_my |off_so |ok_to |old |on_N:few |on_Nduration_$ |on_for |on_no |on_th_back |on_th_counter
|on_th_plat |on_th_sid |on_th_timer |on_them |onc_it_is |or_DISH_it |or_no |out_it_is |oven_$
|oven_$_$ |oven_sinc |over_th_DISH |over_to |pass_th |pinker |plenty |point |powder |pull_up
|put_in |r_$ |r_$_$ |real_quick |reminder |rib_roast |ribey |right_at |right_at_th |ris |roast_Nweight_$
|rock |ruin |run_$ |run_$_$ |run_Ndegrees:some |run_behind |said_it |salt_all |say_$ |say_$_$
|say_N:core_$ |say_to |se_th |sear_$ |sear_$_$ |sec |seem |set_for_th |shall_b |shell |should_i_buy
|sinc_Nduration_$ |siz |smok_com |so_long |so_low |solid |song |sorry_and |split_th |stand_in
|stay |still_in |still_in_th |stuck_in |suppos |suppos_to |swell |switch_on |tak_$ |tak_$_$
|temperatur_Ndegrees:core |temperatur_for |th_DISH_hav |th_DISH_they |th_P_$ |th_THING_$ |th_THING_what
|th_chair |th_counter |th_film |th_freezer |th_garag |th_hob |th_label |th_leftover |th_lid
|th_measurement |th_next |th_night |th_rest_$ |th_run |th_schedul |th_tabl |that_again |that_is_celsius
|that_it |that_it_is |ther_Nduration |thousand |tim_they |to_Nclock |to_b |to_boil |to_finish_$
|to_go |to_ti |to_ti_it |together |under_THING |up_again |us_THING |vegan |vot |w_hav_to |w_sit_down
|want_it_well |went_in_th |what_to_do |when_it_hit |when_w_hit |will_not_light |with_$ |with_$_$
|with_th_fat |would_you_say |wrong_$ |wrong_$_$ |yok |you_and |you_ar_tell |you_said_$ |you_to
-17 @120.0| @139.5| @25.0| @33.2| @49.7| @5.2| @57.5| @81.3| DISH_ar_U| DISH_they| DISH_w|
DISH_you| DISH|ar DISH|ar_THING DISH|ar_burn DISH|ar_burnt DISH|ar_on DISH|ar_out DISH|ar_peel
DISH|ar_ready DISH|boil DISH|butter DISH|hav_been DISH|in_and DISH|in_th DISH|is_lumpy DISH|is_stand
DISH|m DISH|n_longer DISH|off DISH|split DISH|w_want DISH|with_it N:core_for| N:core_i_am|
N:core_is_it| N:core_i| N:core_over| N:core_so| N:core_yet_mor| N:core|about N:core|still N:core|tell
N:core|tell_m N:core|when N:few_mor|guest N:few_peopl|cancell N:few_that_is| N:few_thousand|
N:few_with| N:few_wrong|THING N:few_you| N:few|a N:few|out_of N:few|under N:oven_i_hav| N:oven_on|
N:oven_w| N:oven|fan_$ N:some_at| N:some_what| N:some|behind N:some|cold N:some|i_said N:some|of
Nclock_U| Nclock_i| Ndate_at| Ndate|lunch Ndegrees:few_in| Ndegrees:few|in Ndegrees:some|under
Nduration_behind_on| Nduration_in|th Nduration_is| Nduration_it| Nduration_i| Nduration_not|
Nduration_on|th Nduration_sooner|than Nduration|approximately Nduration|away Nduration|back_it
Nduration|is_delay Nduration|out_$ Nduration|timer Nweight_th| Nweight|prim Nweight|prim_rib
P_ar| P_can_not| P_do| P_in_law| P_is| P_it|is P|on P|so_plus P|took THING_at_th| THING_for|
THING_is_on| THING_it_is| THING_m|th THING_pan_and| THING_that| THING_th|edg THING_th|tabl
THING|N:core_and THING|THING_and THING|ar_U THING|brok THING|com THING|cream_$ THING|go THING|in_this
THING|last THING|lik THING|mak THING|of_th THING|slip THING|this THING|went_in U_and|it U_cancell|
U_cancell|so U_down| U_my| U_our| U_oven| U_th_THING| U_th_dial| U_was| U|down U|holler U|holler_when
^_DISH|still ^_THING|i ^_U|U ^_U|my ^_^_bin| ^_^_bit| ^_^_cancel| ^_^_cor| ^_^_delay| ^_^_did|
^_^_for| ^_^_insid| ^_^_oven| ^_^_slic| ^_^_still| ^_^_that| ^_^_tim| ^_a_Nweight| ^_add|DISH
^_bin| ^_bit| ^_cancel| ^_cor| ^_delay| ^_did| ^_dinner_is| ^_for| ^_her|P ^_hold|th ^_how_THING|
^_how_long| ^_i_already| ^_i_lik| ^_i_was| ^_insid| ^_no_mor| ^_no_not| ^_now_is| ^_now|is
^_no|on ^_ok|i ^_oven| ^_roast|DISH ^_sh_is| ^_show_m| ^_sit_down| ^_slic| ^_so|it ^_still|
^_stop|nagg ^_stop|th ^_stop|that ^_that| ^_ther_ar| ^_th|N:few ^_tim| ^_us|N:few ^_what_th|
a_Nduration|timer a_bad| a_bit_later| a_leave-in| a_leave-in|THING a_second|oven a_shout_in|
a_singl| a_timer|for a_we| add|Nduration adult_and_N:few| after|that again_i| again|and again|slower_$
all_gon| all|day all|gon all|over already|hav_it am_Nduration| am_behind|schedul am_not_don|
am_run| am_well_behind| am|nip am|pop am|skip an_extra|N:few and_DISH|DISH and_N:few|P and_hold|
and_i_want| and_sh| and_slow|then and_sur| and_tell_m| and_that_is| and_they_ar| and_th|DISH
and_why| and|celsius and|go and|hav_not and|how_do and|no_DISH and|say_that and|show and|skip
and|skip_th and|tell_m and|then and|they_ar and|w_hav another_Nduration|on ar_a|no ar_her_U|
ar_lat|Nduration ar_on|N:core ar_us_celsius| as_w| at_th_moment| at_th| at|N:core_com at|N:oven_so
at|Ndegrees:oven at|th_N:few at|this a|THING a|THING_of a|bit a|half a|power a|second b_at|
b_medium| back_i| back|up bang| been_in| been_in|Nduration been_out| befor_it| bit_later| bit_later|Nduration
bit_of_sirloin| bit|of board_and| boil|and bon_and| bon|roast_Nweight bother_with| bottom_shelf|it
brin| brought|th brown_it|first bung_th_roast| butter_and| butter|with butter|with_DISH buy|
by_Nduration|approximately b|tak_it call_and| call|m cancel_th_roll| cancell_th| can|DISH can|drop
can|drop_th can|help can|my can|not_keep can|w_do careful_with| celsius_not| celsius_not|fahrenheit
center|it center|it_is chang|to choos| coat|on com_off| com_th| com_w| cooker|is could_w| cream|is
cut_myself|it did_i|forget did_th_THING| dinner_back|Nduration dinner|at_Nclock distract| do_about_it|
do_i_us| do_it_go| do_not|they do_you|reckon don|Nduration don|Nduration_ago door|Nduration
door|was door|will_not down_for|Nduration down_th| down|to_th do|not_tak do|th_chop drain_th_DISH|
drop|th_roast duck|out_for eat_th| els_is| end_and| every|Nduration exist| explain_th| explain|th
extra|N:few fallen_down|to fat|in first_on| first|guest first|guest_ar for_m|so for_th| forgot|th_DISH
for| for|N:few_at for|Nduration for|it_or for|medium_$ for|th french|now french|th french|th_bon
get|a giv_m_th| giv_m|Nduration giv_us|Nduration go_at| go_over| go_th|THING go_with| gon|
gon|cold good|and_hot got_any| got_th| got|my go|Nduration go|again go|again_$ go|from go|off_and
go|wrong grey|right grey|right_through guest_ar_lat| h_has| h_will_do| had|no had|th half_a|
half_th|DISH happen_if_i| has_been| has_th| has|P has|gon_up hav_all| hav|finish hav|got hav|got_a
hav|no_THING hav|not hear|you heat_th| helper|it helper|it_is henderson|ar her_N:few| her_U|
her_U|my her_it_is| her|already her|back her|so_far her|till him|out his|THING hit_th| hold_th_THING|
holler_at| hot_pan| hous|now hous|now_i how_com|th how_do_i| how_do|i how_is|th how_long_do|
how_long|is how_long|it how_many_THING| how_many_minut| how_much_salt| how_w| how|do how|w
how|would h|can_not i_already|hav i_am_Nduration| i_am_run| i_am|pop i_am|skip i_burn|my i_do_next|
i_fancy| i_get| i_hav|got i_mean|celsius i_n_a| i_prefer_to| i_put_already| i_salt| i_salt|it
i_us|DISH i_want_it| i_want|N:core ic_water|test if_i_us| if_you|can if|th_oven if|ther important|
in_it_is| in_it|is in_no| in_on| in_som_DISH| internal|temperatur_is into_th| in|Nduration
in|Nduration_for in|Nduration_i in|THING_$ in|U_w in|his in|it_$ in|pound in|th_bottom in|ther
is_N:core|my is_at|Nclock is_don|Nduration is_it|don is_it|ok is_it|you is_left| is_m|and is_nearly|
is_not|right is_off|THING is_on_at| is_pink|THING is_pregnant|in is_read| is_roll| is_show|N:core
is_so| is_ther|a is_ther|any is_this| is_th| is_up|next is_warm| is|DISH is|N:few_so is|U_and
is|burnt is|conventional is|conventional_now is|dead is|delay is|dinner is|driv is|fin is|hot
is|not_don is|preheat is|rar is|roll is|season is|tak is|tell is|tell_m is|th_DISH is|this
is|well is|without it_back|to it_down|to it_for_Nduration| it_go|in it_is|burnt it_is|conventional
it_is|lik it_is|read it_look|lik it_said|N:core it_still| it_too| it_was_hot| it|don it|for
it|is_N:core it|is_too it|is_what it|medium_well it|off it|ok it|out_for it|stand it|still_moo
it|too it|yet i|am i|burn_my i|do_it i|forget i|lik i|put_th i|still i|tak_it i|took_it jess|will
jess|will_b justify| keep_th| keep|tell kilo|and kilo|is know_onc| know|th_second lad_is_off|
lady| last_tim| last|tim later|Nduration leav_th_hous| leftover| leftover|ar left|at left|in_th
left|on let_it|rest let_us|N:oven let_us|go let|it let|m lik_DISH| lik_to| lik|your long_do|
long|hav_i look|at lost|th lot_ar| lot|of lucy|can lucy|can_not m_i_am| m_it| m_know_onc| m_out|
m_th| mad|and_in mak_DISH| mak_it|N:few mak_it|medium mak|N:few mak|th many_THING| many_minut|
many|th mean_to| meant|N:core_$ mean|celsius medium_well|for medium|rar_and mind|your moment|N:core
mor|guest mor|to mor|to_th mov_to| must_th| my_P_on| my_P|can my_THING|is my_U_is| my_wrist|
myself|it myself|it_is my|THING_is m|N:some m|back m|so m|with n_a_THING| n_th_timer| near|th
never|mind new|THING next|step next|th no_DISH|w no_THING|is no_do_not| no_th| nobody_will|
not_DISH| not_a| not_b| not_on| not_ready|yet not_want_to| not|believ not|fahrenheit not|find
not|got_th not|mak_it not|mind not|requir not|say not|start_th now_it|is now_i| nowher|near
no|THING_THING number_i_mean| number|N:few_$ of_THING_THING| of_THING|for off_in| off_it| off|Nduration_ago
off|THING_h of|Nduration_$ ok_for| ok_so|i ok|so_i on_Nduration|ago on_at| on_th|bottom on_with_th|
on_your| on|DISH_duty on|N:few_peopl on|chemo on|it_$ on|th_bon on|th_floor on|th_go on|th_littl
on|th_other on|th_plat on|th_til on|th_way on|them on|track on|you other|ar out_Nduration|
out_to| out_what| out|and_on oven_THING| oven_alway| oven_clock| oven_clock|is oven_it| oven_took_ag|
oven|THING_say oven|di oven|is_not oven|off oven|so oven|temperatur over_N:core| overcook|it
over|my_arm over|th_top over|to patel_said| patel_said|yes paus_for| pay| peopl|cancell pick_up|P
pink_U| pink|THING_saf pink|all pitch| plan_on| plan_on|N:few plat|ar pound_for| prefer_to|
pregnant|in pregnant|in_th preheat|to_N:oven press|N:few priya_is| push_dinner_back| push_dinner|back
push|dinner_back put_already| put_already|th put_m| r_DISH|is r_DISH|ther reach|N:core_$ ready|or
ready|or_not reason|w recip| repeat|that rest_and| rest_in| rest_th| rest_under| rest|a road|ar
roast_THING| roast_in|at roast|at_Nclock roast|in roll_and| roll_go| roll_went_in| room_for|
room|temperatur rub| run_N:some|cold run|th saf_for| said|grac salt|i say_in| say|N:oven_$
scrap|th se_you_in| serv|N:few set_Nduration|for set_a| sh_do| sh_has| sh_is|N:core shall|b
shelf|it shelf|it_is short|of should_th| shout|when_th shov_th| show|Ndegrees:core sid|too
sir|it sir|it_is sit_on| sit|out_$ slow|then smell| smok_alarm| smok_pour_out| smok|in so_i_am|
so_it| so_tak| so_w| som_DISH|roll someth_i| someth_no| someth|in sooner|than so|cross so|h_is
so|i_can so|my so|my_THING split_th| stand|in start_th| start|THING_$ start|again start|from
start|over step_out| still_DISH_in| still_not| still|good still|not_finish ston| stop|for_a
stop|nagg strain_th_DISH| strik|that suppos|to switch_to| switch_to|metric tabl_and| tabl_w_said|
tabl|by tabl|is tabl|now tak_th_DISH| taken_out| tak|m tak|that_last talk_to_m| talk|m talk|m_through
teaspoon| temperatur_of| temperatur|is temperatur|is_N:core th_DISH|on th_N:few| th_P_hav|
th_THING|for th_THING|not th_U_cancell| th_U|U th_board_and| th_board|now th_center|it th_french|now
th_good| th_henderson|ar th_hous|now th_middl|of th_moment|N:core th_next|th th_on| th_outsid|
th_oven|off th_oven|so th_patel_said| th_reason| th_rest| th_roast|at th_roll|ar th_sam| th_sid|too
th_small| th_tabl_and| th_tabl|by th_timer_and| th_top|won th_way|my that_N:core| that_go|
that_is_a| that_is|N:core that_is|all that_it_is| that_timer_on| that|in that|plac that|was_th
their_at| them|can_not ther_ar|N:few ther|any ther|was ther|yet think_it| think_it|is this|whol
through_that| through_th| th|DISH th|P_has th|bottom th|car_$ th|corner th|fat th|french th|green
th|ic_water th|in th|middl_is th|paper th|pink th|roast_in th|salt th|top th|traffic th|wean
th|wrong till|N:few tim_do| timer_N:few_wrong| timer|for_Nduration timer|on_th tim|th_roll
ti|this to_N:few|peopl to_N:oven_and| to_N:oven|at to_get_th| to_room| to_room|temperatur to_salt|
tonight_w| took_ag| took_m| took|th too|early top|oven_is top|won touch| to|N:oven_$ to|N:oven_and
to|do_a to|get_th to|hav to|heat to|metric to|sear to|tell to|th_U to|your trim_and| trip|
turn_out|i turn_th_oven| ty_it_is| undo| up_at| up_for| up_in_Nduration| up_it_is| up_on| upstair_to|
upstair|to up|again up|at_Nclock us_DISH_out| us_a| us_not| us_this| us|N:oven us|THING us|THING_THING
us|go w_becom| w_cook| w_go_th| w_hav_lost| w_hav|no w_said|grac w_want|th wait_i| wait_on|THING
want_a| warm_th_roll| warm_th| warm_th|roll warm|any_plat was_at| was_hot| was_hot|it was_lik|
was_wrong|undo wash|th watch|for watch|th water_on| water|test way|my well_behind| well|don_$
well|for went_in|Nduration went_on|at went_on|th went|off what_internal_temperatur| what_my|
what_you| what|did_you what|internal what|internal_temperatur what|temperatur when_th_roast|
when_w| wher_did| wher|is which_way| whil|i_was whol_th_back| who|is why_is| why|ar why|ar_w
will_DISH| will_not_eat| will_not|stop will|do will|never win|is wireless| wireless|THING wireless|THING_is
with_P| with_your| with|th_P with|that with|you would_go| would_lik_to| would_you|do would_you|look
wrong|number wrong|undo w|ask w|cook w|do_not w|eat w|sit w|start w|tak yet_mor| yet_mor|N:core
you_can|drop you_in| you_it| you_it|is you_plan_on| you_speak| you_tim| you_tim|Nduration your|THING
your|oven you|ar_th you|for you|giv_m you|look_at you|n you|run |@104.0 |@105.6 |@11.2 |@111.1
|@117.2 |@118.3 |@122.4 |@131.1 |@147.1 |@148.1 |@33.3 |@37 |@37.3 |@48.9 |@53.4 |@56.1 |@62.6
|@66.6 |@75.2 |@76 |@79.1 |@85.4 |@94.0 |DISH_DISH_on |DISH_P |DISH_U |DISH_ar_burnt |DISH_collaps
|DISH_do |DISH_duty |DISH_in_a |DISH_in_ther |DISH_my_P |DISH_on_th |DISH_what |N:core_at |N:core_how
|N:core_this |N:few_Ndate |N:few_th |N:few_thousand |N:oven_P |N:some_at |Nclock_it |Nclock_latest
|Nclock_th |Nduration_and |Nduration_can |Nduration_later_than |Nduration_off |Nduration_who
|P_from |P_get |P_i_am |P_is_THING |P_is_a |P_is_halal |THING_P |THING_P_$ |THING_THING_and
|THING_as |THING_is_THING |THING_saf |THING_th_edg |THING_this_$ |THING_without |U_is_U |U_oven
|a_bit_of |a_fever |a_good_Nduration |a_leg_of |a_tick |about_it |adult |after_th_nut |again_from
|ago_and |all_her |all_i |all_right_$ |all_this |all_through_$ |allow |and_N:few |and_all |and_all_$
|and_climb_fast |and_hungry |and_sh |and_ti_them |any_plat |ar_DISH |ar_N:some |ar_burnt |ar_not_com
|ar_ready |ar_starv |ar_ther |ar_w_hav |ar_warm |asleep |at_N:few_and |at_Nclock_$ |at_easter
|at_it |at_th_THING |b_ready |back_$ |back_$_$ |bad_$ |bad_$_$ |bea |becom |begg |behind_th
|bill |blast |bleed |blender |bon_Nweight |bother |by |by_Nduration |cak |can_$ |can_$_$ |can_not_go
|carv_it |chicken |chill |cold |com_th |cooker |crackl |cut_th_bon |dinner_by |do_i_hav |do_not_know
|do_not_tak |do_to |do_w |down_$ |down_$_$ |down_on |down_with |eat_Nduration_later |end_and
|everyth_and |everyth_by |everyth_by_N:some |everyth_for |fat_THING_$ |fin_$ |fin_$_$ |finish_at
|for_DISH_$ |for_N:oven |for_U_and |for_him_$ |for_them |forever |from_N:core |from_th_begin
|get_on |go_at |go_from |goal |good_and |got_her_Nduration |grandmother |grey_$ |grey_$_$ |hair
|has_com |hav_chang |hav_it_out |hav_reach_$ |hav_som |hav_turn |her_back |hob |hold_$ |hold_$_$
|holler_when_that |hom_$ |hom_$_$ |hors |hot_for |hot_i |i_am_on |i_carv |i_com |i_get |i_hav_kept
|i_mean |i_want_$ |in_N:few_$ |in_th_moment |in_what |in_yet |is_DISH |is_N:few |is_U_so |is_alight
|is_allergic |is_at_N:few |is_blister_$ |is_chop |is_cook |is_cut |is_do_th |is_eat |is_get
|is_her_to |is_lumpy |is_medium_$ |is_mor |is_my |is_nearly |is_on_it |is_pack_in |is_rest
|is_th_U |is_without |it_is_extra |it_rar |it_rest |it_that |judg |knot |last_$ |last_$_$ |last_i_look
|left_th_oven |li |lik_i |long_$ |long_$_$ |look_pretty |lumpy |m_THING |mad_$ |mad_$_$ |many
|margarin |menu |money |morn |my_P_no |my_THING_on |my_choic |my_thumb_it |n_another |n_to_eat
|nagg |near_enough |nil |not_tak |not_talk |not_they |not_w |now_$ |now_$_$ |now_i_hav |number
|of_butter |of_them |off_and_it |ok_for_th |on |on_th_bottom |on_th_leave-in |on_th_wet |on_wash
|on_wash_up |or_N:few_$ |or_what |out_hot |out_of_N:few |out_to |oven_for |oven_is_too |over_it
|peopl_$ |peopl_$_$ |percent |phon_call_$ |plan_U |push_it |r_DISH_$ |rain_$ |rain_$_$ |reason
|requir |right_through_$ |roll_go |ros |rung |screen |sent |sh_go |shot |should_b |shov |sinc_N:oven
|slower_$ |slower_$_$ |smell_incredibl |smok_in_her |so_let |so_let_us |so_plus |so_plus_N:few
|sock |stay_in |tablet |talk_$ |talk_$_$ |telly |tenderis |th_DISH_must |th_DISH_so |th_N:some
|th_Nclock |th_THING_b |th_THING_go |th_beast |th_chop |th_cooker |th_dog_$ |th_dog_back |th_dog_out
|th_driv |th_flu |th_hous |th_ic |th_is_THING |th_littl_screen |th_lower_third |th_next_step
|th_plat_$ |th_roast_ruin |th_roll_Nduration |th_second_it |th_spoon |th_step |th_tabl_DISH
|th_tap |th_you |than_that |that_N:few |that_and |that_off |then_is |ther_is_any |thes |thicken
|this_whol |throat |through_th |till_Nclock |tim_for |to_hav |to_r |to_th_U |to_th_floor |to_turn_th
|too |trivet |typ |up_$ |up_$_$ |up_a |up_already |very_much |wean |went_U |went_in_at |went_off
|what_i_am |when_$ |when_$_$ |when_th |when_th_middl |whol_tim |why_$ |why_$_$ |will_it_b |with_N:few_THING
|with_your |your_plan
-16 @104.0| @108.5| @114.6| @123.1| @131.0| @137.4| @140.4| @27.2| @33.3| @36.3| @46.2| @47.0|
@57.6| @5| @64.5| @72.2| @84.1| @99.0| DISH_DISH|thos DISH_ar|cut DISH_b| DISH_how| DISH_nobody|
DISH_n| DISH_on|slow DISH_or| DISH_oven| DISH_powder| DISH_them| DISH_top|and DISH_would| DISH|DISH_it
DISH|all_over DISH|ar_scrub DISH|ar_trim DISH|go_$ DISH|has DISH|i_took DISH|is_ready DISH|on_th
DISH|peel DISH|thos DISH|thos_out DISH|timer_$ DISH|to_com DISH|w_lik DISH|whil DISH|yes N:core_not|
N:core_to| N:core_whil| N:core|and_had N:core|i_want N:core|over N:core|to N:few_DISH|U N:few_for|th
N:few_it| N:few_i|hav N:few_mor|to N:few_on|th N:few_or| N:few_oven|and N:few_steady|temperatur
N:few_that| N:few_well| N:few_what| N:few|eat_at N:few|percent N:few|sit N:few|sit_down N:few|so_that
N:few|so_w N:few|thousand N:oven_DISH| N:oven_for|dinner N:oven_it| N:oven_i| N:oven_so| N:oven_what|
N:oven|lik_you N:some_U|that N:some_for| N:some|at N:some|hot N:some|in_th N:some|month N:some|year
Nclock_DISH| Nclock_for| Nclock_now| Nclock|Ndate Nclock|Ndate_$ Nclock|U_it Nclock|it Nclock|then
Ndegrees:core_on| Ndegrees:core_th| Nduration_ago_and| Nduration_behind|with Nduration_it_is|
Nduration_lat_so| Nduration_lat|with Nduration_my|P Nduration|early Nduration|from_now Nduration|i_am
Nduration|timer_go Ngas-mark_for| Ngas-mark|for Nweight|rib P_N:few| P_U|is P_alway| P_eat|
P_from| P_h_say| P_has_fallen| P_help_m| P_lik| P_on|DISH P_open| P_us| P_want| P_will| P_would|
P|alway P|at P|is_N:core P|is_U P|is_ask P|is_bring P|never P|set_th P|want P|will_not THING_THING|Nweight
THING_THING|caught THING_all| THING_back|Nduration THING_in|ic THING_is_it| THING_is|N:core
THING_is|finish THING_show| THING_th_edg| THING|U_$ THING|U_com THING|a_THING THING|and_all
THING|bag THING|caught THING|is_out THING|is_show THING|over_it THING|th_block THING|this_$
THING|was THING|went U_back_in| U_by| U_do| U_for| U_is_N:few| U_ther_is| U_why| U|get U|is_N:few
U|n U|new U|on_th ^_DISH_cream| ^_N:few_person| ^_Nduration_lat| ^_Nduration|on ^_THING_on|
^_THING_slip| ^_THING|DISH ^_THING|on ^_^_at| ^_^_christma| ^_^_fat| ^_^_flat| ^_^_found| ^_^_has|
^_^_internal| ^_^_light| ^_^_min| ^_^_put| ^_^_quick| ^_^_reckon| ^_^_repeat| ^_^_roast| ^_^_r|
^_^_scratch| ^_^_set| ^_^_shop| ^_^_somewher| ^_^_stick| ^_^_to| ^_^_watch| ^_^_whol| ^_^_your|
^_add|green ^_at| ^_cancel|timer ^_carry_on| ^_christma| ^_cor_temperatur| ^_could_w| ^_cut|th
^_did_i| ^_do_you| ^_everyth_is| ^_fat| ^_flat| ^_found| ^_go_to| ^_has| ^_i_burn| ^_i_don|
^_i_want| ^_internal| ^_it_was| ^_i|mak ^_leftover_ar| ^_let_it| ^_let_us| ^_light| ^_look|lik
^_medium_for| ^_min| ^_my_U| ^_no_on| ^_ok|turn ^_oven|THING ^_priya|can ^_put| ^_quick| ^_reckon|
^_repeat| ^_roast| ^_r| ^_scratch| ^_serv_it| ^_set| ^_shop| ^_somewher| ^_so|you ^_stick|
^_still_not| ^_that_THING| ^_timer|N:some ^_to| ^_w_eat| ^_watch| ^_what_do| ^_whol| ^_why_ar|
^_your| a_Nweight_N:few| a_U_and| a_full| a_hot| a_power| a_proper| a_rest|will a_rib|of a_timer_for|
a_warn| about_Nduration| about_it|is about_th| absent| actual| add_N:few_mor| add|th after_all|that
after_th| afternoon|look again_and| again|from_scratch ago|it_was aim_for| alarm_in| alarm_in|Nduration
alex|can all_U| all_right|for all_th|DISH all|right_$ alternativ| alway|run am_get| am_not|her
am_off| am_on| am_sorry|to am|gon am|gon_for am|run_Nduration and_can_w| and_can_you| and_could|
and_dinner_is| and_eat| and_everyth_in| and_is_ther| and_no|DISH and_put| and_tak| and_that|
and_then_it| and_ther_is| and|DISH_hav and|could_you and|do and|forget_th and|quick and|shout
and|shout_when and|shut and|still and|th_P and|turn_th and|undo and|what_tim and|which_way
another|N:few any_U| any_way| any|THING_is any|r any|r_win ar_after| ar_back| ar_clean| ar_do|
ar_in_i| ar_on|convection ar_run_Nduration| ar_th|DISH arriv_and| ar| ar|Nduration ar|don ar|golden
ar|starv ar|tell as_long| as|i as|w as|you at_N:core|com at_N:few|tonight at_Nclock|instead
at_Nclock|then at_it|all at_work| at|N:core_in at|N:oven at|N:oven_and at|Nclock_Ndate away|from_th
a|final a|joint a|shout a|th b_N:few|sit b_at_Nclock| b_back_in| b_my| babysitter| back|N:few_$
bang_on| befor|w_sit behind|a behind|a_tractor behind|on_everyth behind|schedul_$ behind|so_serv
believ|it besid|th bit_is| bit|mor bon|ar_french bon|in_rib bon|off bon|rib_roast bought_a|
brown|it burnt_myself| burnt_myself|on burnt| business| butter_for| butter|left butter|on buzz|
by_Nduration_and| by_th| b|N:oven_$ b|eat b|hav b|ly b|quiet cam|U can_do| can_eat| can_not_do|
can_tak| can_w|add cancel|timer can|eat can|help_till can|i_do can|tak carry_on| carv_and|
car|is caught|fir check_th| chill|th chuck_end| chuck_end|Nweight chuck_th| chuck|som clock_is|
cold|in_th com_Nduration| com|again com|again_$ com|from com|out_in com|to_th cook|it_at cor_temperatur|Ndegrees:core
could_you_tim| cover_in| cover|in cover|it crew| crispy|DISH_$ cut_myself|quit cut_m| cut|th_oven
cut|them cut|up dav|check dav|check_it decent| delay|dinner dental| di_on| dial|THING_show
dinner_at|N:few dinner|for do_it_in| do_it| do_it|in do_it|matter do_i|pull do_i|set do_my|
do_not_eat| do_not|believ do_what| do_with| dog|out dollar| don_i_am| don_in| don_i| don_what|
don_with| don|by door_and| door|will down_at| down_to| down|for_th down|yet do|everyth do|her
do|i_turn do|it_matter do|not_put do|this do|us dress|giv dress|giv_m drop_th_whol| drop| drop|out
dry|brin eat|Nduration_later eat|them els|is enough|for every_last| everyth_in|th everyth_on|
extra_for|dinner faff_about_it| fallen|down fan|assist fat_has| fat|is finish_and|it finish_at_N:few|
first_at| first_at|Nclock floor_and| for_N:few_at| for_Nduration_i| for_a|final for_is| for_m_i|
for_medium|well for_my_pregnant| for_your| forget_check| forget_check|th forget|i_said forget|th_DISH
forgot|to_say fork_in| forward|Nduration_$ for|N:few_adult for|N:oven for|Nduration_i for|a
for|her for|m fresh|THING from_her| from|your front| gaug_must_b| get_dress| get_dress|giv
get_on| get_past_N:core| get_to| giv_th| gluten|fre go_back|N:few go_for_medium| go_to| go_upstair|
god|help god|ther god|ther_is gon|off good|for got_burn| got|N:few_out got|my_P go|at go|straight_to
go|to_wait go|upstair grocery| guest_ar_in| guest|ar guest|to h_can| h_got| h_say|nobody half|
hang|fir hang|on has_U|U has_been_on| has_com_back| has_fallen|down has_got_a| has_not_reduc|
has|gon hav_DISH|th hav_any|r hav_burnt| hav_cut| hav_got_DISH| hav_got|N:core hav_not|got
hav_put|DISH hav_remov_th| hav_remov|th hav_roast| hav|knock hav|never hav|put_th hav|switch
hav|w_got hav|you_got heat|and_left help_it| her_it|is her|to her|to_help hey| himself_is|go
his_P_so| hit_N:core_and| hit|N:core_$ hit|th hold|at hold|on hot_do| how_THING|a how_com_th|
how_com_w| how_long_can| how_long|hav how_much|longer how_to_carv| how|U how|hot how|is_th
i_DISH|th i_am_get| i_am_off| i_am_on| i_am|gon i_ever| i_forgot|th i_forgot|to i_hav_DISH|
i_hav_a| i_hav_burnt| i_hav_cut| i_hav_not| i_hav|burnt i_hav|knock i_hav|never i_hav|switch
i_know_i| i_left| i_meant|N:core i_n| i_open|th i_pull| i_put_it| i_season| i_season|th i_stuff|
i_suppos_to| i_tell| i_think_th| i_told_them| i_would_P| i_would_lik| if_that| if|h if|that
ill|b in_at| in_at|N:oven in_i|shut in_som| in_what| includ_N:few_DISH| insid_th| instead|of_N:few
internal|N:core in|a_THING in|degre in|ic in|ic_water in|kilo in|law in|now in|total is_N:core|in
is_THING|U is_U_so| is_all_go| is_boneless|Nweight is_cover| is_giv| is_her|to is_it_a| is_it|all
is_it|look is_i| is_not|ready is_plan| is_sit| is_smell| is_starv|let is_tak| is_th_way| is_that|ok
is_ther_someth| is_th|N:few is_when| is| is|N:oven_$ is|Nduration_lat is|a is|a_N:few is|all_go
is|any is|bubbl is|don is|eat is|finish_$ is|get is|mor is|pass is|roll_and is|taken is|th_N:few
is|th_cor is|too is|turn is|what_i it_do_not| it_for| it_hot| it_is_already| it_is_raw| it_is|N:oven
it_is|roll it_or| it_out|now it_out|quick it_ready| it_say|N:some it_show| it_was| it_whil_it|
it_with|th it|N:few it|all_over it|burn it|by it|hit it|if it|is_Nclock it|is_after it|is_all
it|is_blister it|is_lik it|is_ti it|keep it|matter it|out it|pink it|ready it|run_a it|should
it|smell it|temperatur it|temperatur_wis it|to i|U_$ i|U_it i|forgot_to i|got_th i|grab i|grab_th
i|had i|hav_had i|heard i|mak_it i|no i|shut i|shut_th i|tell i|want joint_in|th joint_went_in|
jo|will keep|it kill|th know_i|no lard| lat_can| learn| left_THING| leg_THING| leg_THING|Nweight
leg_of| let_th| lick|th lift|it light_went|out light|ar light|ar_back lik|P lik|his lik|you
lik|you_said lin| list_th| listen_to| list|for_th littl_N:few|eat long_can| long_is| long|hav
loo| los_th| lost_th| lost|N:few lunch|at m_Nduration|behind m_a_timer| m_celsius_not| m_it_is|
m_someth| m_what|i m_when| main| mak|DISH_DISH mak|DISH_cream man|i man|i_am meant|to middl_is|
middl|is_at middl|shelf min_is| missus| mouth|to mouth|to_f mov|dinner_up much|DISH_go much|longer
must_b|ly must_b|th my_P|never my_P|set my_boss| my_phon_is| myself|on_th myself|quit myself|quit_badly
my|P_U my|THING_has my|oven_run my|peopl my|phon_is m|Nduration_on m|again m|and_dav m|forget_th
m|if m|if_it m|lik m|lik_i m|som m|someth n_mor| n_not| n_to| nam_is| nam_is|U near_th| never_did|
next|Nduration night_and| no_THING|in no_THING|left no_THING|or no_i_said| no_idea| no_it_is|
no_i| no_r| no_str|in nobody|is nobody|will non_of| non|of_that not_find|th not_lik| not_peel|
not_reduc| not_tak| not_trust_this| not_want|th noth_on| not|DISH_it not|N:some_$ not|a not|finish_$
not|th_THING not|ther not|turn_it now_THING| now_i_will| now|i_must now|it_is now|would no|U_$
no|bon no|tim nut_and| n|DISH n|Nduration off_and_ti| off_is| off_so| offer_to_do| offer_to|
off|and_ti off|so_it off|th_bon off|to_th of|THING_over of|th_DISH ok_THING| ok_to|eat ok|ready
ok|turn ok|turn_it on_N:core|now on_N:few|peopl on_P|is on_th| on_track| on_was| onc_it_is|
onc_it| on|N:some_$ on|at_N:oven on|at_Nclock on|fir_$ on|my_end on|sec on|sid on|slow_flam
on|th_stov on|to_boil open_th| option|N:few_$ or|DISH or|th out_do| out_it| out|quick out|quick_th
out|th_truss oven_at|Nclock oven_is| oven_run_N:some| oven_run| oven_th| oven_to| oven|for
oven|glov oven|set_to oven|was over_and| ow_i| ow|i pack| pan_is| paper| party|of party|of_N:few
past_N:core|i past_medium| pay_for| peopl_at| peopl|at person|will person|will_b pet_has_U|
phon_it| phon_it|THING piec_of| pink|in plan_for| plan_on_N:few| plus_N:few|mor poor|th postpon_th_dinner|
powder| practically| prefer| present| press_N:few| puff_up| pull_it|temperatur pull_th| push_it|
put_that| put_th| put|th_DISH r_DISH| ran_out_of| rar_is| raw_THING| ready|to ready|when_you
real|quick reason_for| reason_w| reckon_i| remind|m rest|will rib_N:few|bon rib_THING|Nweight
rib_with| rib|of right_i| right_so|that right|so_that roll|in rough| run_N:some|hot run_Ndegrees:some|
run_at| run|that sack| said_N:core|not said_and| said_it| said|N:oven said|th_wrong salty_i|
sat_at| say_N:few| say_N:some_U| say_that| say|again say|nobody say|nobody_want season|th_roast
second|from sent| set|Nduration_for sh_say|they shall|i shop_is| shop|is_shut should_i_b| should_it_b|
should_th_oven| should|th show_m|N:core shower_Nduration| shower_Nduration|top sho|off shut|th_door
shut|that sh|will sinc|Nclock_$ sit|on sit|ther skin| slic| slip_and| so_i_can| so_that_is|
so_they| so_th|DISH so_you_no| so_you|no som_roast| som_roast|DISH someth_in| sorry|to sorry|to_say
sound|right so|well so|what_ar spot|on stand_in| start|at start|from_th starv|let starv|let_us
steady|temperatur still_N:few| still|N:core still|N:core_$ stop|th_timer stor_back_in| stov|for_N:few
straight_to| strain|th strain|th_DISH stuff_with| supper|at switch_off|th switch_th_oven| tabl_is|
tabl|at_Nclock taken_th_roast| tak|th_DISH talk_Nduration| tell_m|N:core temperatur_ar| th_DISH_and|
th_DISH_ar| th_DISH_butter| th_DISH_yes| th_DISH|after th_P|turn th_THING_say| th_THING|at
th_THING|hav th_best| th_bon|ar th_bon|off th_chuck_end| th_dial|THING th_dog|out th_green|DISH
th_ic_water| th_is|THING th_middl_of| th_next|Nduration th_oven_and| th_oven|down th_phon_it|
th_power| th_reason_for| th_roast_DISH| th_say| th_th_say| th_you| thank|you_$ than|that that_it|
that_last| that_should| that|again that|down that|is_what that|number that|off that|was_wrong
them|down then_i| then|i ther_is_a| ther_is| ther_is|any ther_someth| ther_will_b| they_ar|golden
they_hav| they|ar_hav thickest| think_th| this_year|it this|old this|oven_run this|second_$
this|step through_and| through|for throw_in| throw_in|som throw| th|DISH_all th|DISH_don th|DISH_not
th|DISH_you th|Nduration th|P th|THING_it th|THING_now th|THING_say th|back_a th|cooker th|first_N:few
th|lad th|middl th|number th|oven_i th|phon th|roll th|sink th|start th|tablet th|third th|trim
th|truss th|whol till|it_is tim_th| timer|N:some timer|hav tim|ar to_DISH| to_bast| to_chill|
to_chill|th to_f|th to_get_dress| to_hav| to_medium| to_pick| told_them| too_hot|to too_many|
too_salty_i| took_it| took_out| took_th| top_and| top|of total|N:few touch|N:core town| to|N:core_$
to|Nclock_$ to|THING to|celsius to|finish to|help_$ to|m to|nip to|roast to|serv_it to|wait
to|walk to|walk_th train_is_run| trim|th_fat trust_this| turn_off| turn_off|th turn_th_U| turn|out
ty_it|up up|already up|so_far up|to_N:core up|to_temperatur us_a_THING| us|eat_Nduration us|eat_at
us|up vegetarian_th| w_ar_at| w_hav|got w_push| w_put| w_should| w_talk_Nduration| w_want_th|
w_will_b| w_will_sear| walk|in want_m| was_in| was|a was|it was|my was|still water|for water|for_th
water|on way|my_folk well_and| went_in|th went|straight wer_Nduration_behind| what_am| what_am|i
what_ar_w| what_ar|w what_did|i what_go| what_is|th what_tim_do| what_tim_is| what_tim|ar what_tim|is
what| what|ar_th what|my what|temperatur_is what|th when_th_middl| when|do when|is when|you_ar
wher_do|i wher|do_i wher|should wher|to which_THING| which_THING|could which_is| whil| who_want|
who| why|is_it will_DISH|th will_giv_th| will_not_bother| will|giv will|go will|want win|in
with_no| without_th_DISH| with|DISH_DISH with|N:few_bon with|THING work|on would_P| would_hav|
would_it| would_lik| would|b would|hav would|i wrong|th w|add w|add_DISH w|go_to w|left w|put_it
w|wait yank_it_out| year_i| year|it_is year|old yet_th| yet|to you_and| you_no| you_should|
your|sho you|ar_tell you|carv you|heard you|in you|no you|tak_th you|talk you|tell_m you|will
|@109 |@115.2 |@117 |@117.5 |@123.1 |@125.7 |@141.5 |@146.4 |@17.3 |@24.2 |@30.3 |@33.2 |@46.6
|@47.7 |@50.0 |@55.3 |@58.3 |@58.4 |@59.7 |@69.3 |@71.3 |@74.2 |@84.0 |@86 |@91.2 |@95 |@95.0
|@97.0 |@98.0 |DISH_butter_it |DISH_in_my |DISH_should |N:core_by |N:core_giv |N:core_last
|N:few_for_th |N:few_in_th |N:few_now_$ |N:few_off |N:few_percent |N:few_so_that |N:few_that
|N:few_till |N:few_you |N:oven_DISH |N:oven_now |N:some_THING |N:some_not |Nclock_and |Nclock_for_dinner
|Ndegrees:core_on |Ndegrees:some_under |Nduration_ago_sorry |Nduration_for_m |Nduration_lat_can
|P_set |P_us |THING_THING_th |THING_bag |THING_for |THING_her |THING_no_THING |THING_roast
|THING_saf_$ |THING_sh |THING_test |THING_th_block |U_THING |U_com_let |U_i_am |U_so |U_th_dial
|a_DISH_DISH |a_break |a_miss_$ |a_rib |a_tractor |a_whil |about_$ |about_$_$ |abov_th |absent
|across |again_from_th |ahead |alarm_is_go |all_on |all_over_my |all_right_for |already_and
|am_i_do |and_dav_so |and_everyth |and_had_th |and_kilo |and_oil_$ |and_slow_then |and_then_th
|ar_back |ar_back_on |ar_bang |ar_do |ar_french |ar_her_N:few |ar_in_th |ar_on_$ |ar_park |ar_scrub
|ar_scrub_and |ar_stuck |ar_trim |ar_w_do |ar_w_eat |around |as_it |as_w_speak |at_$ |at_$_$
|at_N:core |at_N:core_what |at_N:oven_so |at_Nclock_THING |at_Ndegrees:core |away_from |b_back
|b_by |b_eat |back_Nduration_$ |bail |befor_th_DISH |below |block |boil_for |bon_Nweight_$
|bottl_of |bought |bowl |breakfast |burn_$ |burn_$_$ |by_th_THING |call_from |cam_back |cam_out
|can_i_say |can_not_hear |can_tak |car_is |card |careful |cold_$ |cold_$_$ |colour |com_out_$
|com_w |cook_$ |cook_$_$ |could_i_mak |could_w |crowd |dial_is |did_not_ris |did_not_say |dinner_$
|dinner_$_$ |dinner_by_Nduration |dinner_to |dinner_up |do_a_DISH |do_for |doctor |don_P |don_in
|down_Nduration |down_and |down_in |drop_out_U |drum |early_and |end_N:core |enough_for_N:few
|exactly |find |foot |for_N:few_at |for_dinner_$ |for_now_$ |for_you_$ |for_your |forgotten
|from_N:core_to |from_Nclock |from_a |from_th_garag |garag |get_a |get_on_with |get_to_N:core
|girl |glov |go_U |go_on_th |go_th |go_to_wait |gon_in |got_in |grocery |has_th |hav_DISH |hav_N:few
|hav_all |hav_arriv |hav_arriv_$ |hav_cancell |hav_walk |hav_walk_in |help_till |her_N:few
|her_so |his_THING |holiday |how_this |hungry |i_got_tim |i_mak |i_must_go |i_slic |i_took_out
|if_h |if_ther |in_N:few_go |in_N:some |in_Nduration |in_Nduration_$ |in_degre_$ |in_i |in_it_is
|in_rib |in_th_fat |in_this_hous |in_w |instant-read |instead_$ |instead_$_$ |is_and |is_ask
|is_beep |is_blood |is_bring_th |is_bubbl |is_carv |is_caught |is_com_Nduration |is_empty |is_fre
|is_it_go |is_it_look |is_off_$ |is_on_th |is_read |is_show_N:core |is_shut |is_th_lot |is_that_ok
|is_ti |is_under |is_way_too |it_again_$ |it_both |it_down |it_if |it_is_ready |it_look_lik
|it_matter |it_oven |it_right |it_smell_amaz |it_till |it_up_$ |it_yet_$ |keep_tell_m |kept
|know_what |laid |land |last_year_$ |lat_or |lat_so |law |leather |left_in_th |lick |lif_$
|lif_$_$ |lot_ar |low_$ |low_$_$ |luck |m_Nduration |m_in_Nduration |m_my |m_now |m_through_th
|manag |matter_$ |matter_$_$ |meant_to_b |missus |missus_will |mor_DISH |mouth |music |must_i
|my_P_$ |my_THING_what |my_end |my_finger |my_folk |my_folk_will |my_option |my_shop |my_shop_list
|n_to_go |need |never_mind |new_year |next_on |next_on_th |nor |not_com |not_even |not_let
|not_mov |not_shut |not_ti |now_THING |now_for |of_Nweight |of_roast |of_tim |off_$ |off_$_$
|off_and_on |off_th |off_with |offer |on_$ |on_$_$ |on_at |on_everyth |on_th_r |on_th_way |on_to_th
|on_top_$ |onc_th |or_DISH_whatever |out_a |out_b |out_do |out_i |out_now |out_on |out_or |oven_befor
|oven_befor_Nduration |over_th_top |overnight_$ |overnight_$_$ |pack |peac |pictur |plat_and
|play |possibl |postpon_th |postpon_th_dinner |present_and |present_and_correct |pub |pull_into
|pull_into_th |put_th_DISH |question |rar_this |reach_N:core |ready_for |recip |rib_Nweight
|roast_THING |roll_ar |sat |say_N:oven_$ |say_Ndegrees:core |school_$ |school_$_$ |set_$ |set_$_$
|set_th_roll |set_to_N:oven |shar |sid_$ |sid_$_$ |sid_and |sign |sinc_N:few_$ |sit_$ |sit_$_$
|sit_out_$ |skip_th_butter |slow_flam |slow_flam_Nduration |so_serv |so_serv_N:few |so_w_would
|splash |stand_in_for |stand_on |start_at_N:few |start_it |station |stream |tast_a |teeth |temperatur_has
|temperatur_th |temperatur_wis_$ |th_DISH_P |th_DISH_go |th_DISH_off |th_DISH_sh |th_DISH_this
|th_DISH_w |th_N:core |th_THING_for |th_and |th_block |th_bon_off |th_butter_step |th_corner
|th_cream |th_door_it |th_fir |th_first_$ |th_go |th_heat_and |th_high |th_low |th_messag |th_on_th
|th_order_of |th_other_oven |th_oven_down |th_oven_th |th_shop_back |th_station |th_tablet
|th_timelin |th_tip |th_we |th_whol_plan |th_worktop |that_door |that_in |that_yet |then_low
|ther_a |ther_and |they_ar_bring |they_said |this_for |this_morn_$ |this_tim_$ |thos_out |tick_$
|tick_$_$ |till_N:few |till_it |timer_$ |timer_$_$ |timer_go |timer_th |to_boil_for |to_dinner
|to_him |to_mak |to_tak |to_temperatur |to_turn |to_wash |to_your |today_$ |today_$_$ |too_and
|top_$ |top_$_$ |twic_$ |twic_$_$ |undo_that_$ |up_U |up_it |up_it_is |up_with |us_it |us_up
|wall |was_out |water_for |water_for_th |way_to |weather |went_$ |went_$_$ |what_is_to |when_Nduration_ar
|when_sh_hit |whil_th |will_do_th |will_hav |will_start |wis_$ |wis_$_$ |with_th_prep |wrap
|wrist |yet_and |you_on |you_so |you_think_$ |your_feet |your_oven |your_sho
-15 @105.2| @105.7| @119.6| @122.4| @144.5| @20.0| @25.6| @32.6| @4.2| @59.5| @61.3| @8.2|
@81.7| @84.3| @89| @93.0| DISH_DISH_is| DISH_DISH|on DISH_THING|say DISH_a_THING| DISH_all|
DISH_ar_not| DISH_can| DISH_hav_not| DISH_i_am| DISH_is_too| DISH_is|not DISH_look| DISH_m_alon|
DISH_my_P| DISH_no| DISH_ready| DISH_ready|they DISH|DISH_so DISH|DISH_went DISH|after_all
DISH|and_cut DISH|ar_glaz DISH|ar_not DISH|ar_still DISH|as DISH|for_N:few DISH|has_not DISH|in_yet
DISH|instead DISH|is_U DISH|is_chop DISH|is_in DISH|is_split DISH|it_as DISH|kind DISH|m_alon
DISH|our DISH|them DISH|this DISH|to_roast DISH|up DISH|went_in DISH|would_go N:core_about|
N:core_and_U| N:core_at|N:few N:core_it|is N:core_not|N:core N:core_on_th| N:core_oven| N:core_that|
N:core_too_low| N:core_when| N:core|lik_Nduration N:core|right_now N:core|too_low N:core|would
N:core|would_you N:core|year N:few_bon|from N:few_bon|on N:few_extra_for| N:few_for|N:few N:few_temperatur|
N:few_to|N:few N:few_w| N:few|adult N:few|for_th N:few|guest_$ N:few|of_thos N:few|peopl N:few|peopl_cancell
N:few|temperatur N:few|week N:oven_at| N:oven_for| N:oven_in|th N:oven_is| N:some_in| N:some_it|
N:some_not| N:some|quid Nclock_U|it Nclock_U|th Nclock_th|roast Nclock_w| Ndate_w| Ndate|at_N:core
Nduration_ago_i| Nduration_and_it| Nduration_do| Nduration_is_that| Nduration_my| Nduration_ther|
Nduration|N:few Nduration|ar_up Nduration|for_m Nduration|i_would Nduration|mor Nduration|on_them
Nduration|out Nduration|to_that Ngas-mark_i| Nweight_THING| Nweight_not| Nweight|forerib_on
Nweight|of_U Nweight|with_bon P_can| P_dot_is| P_get| P_h_is| P_i_am| P_is_N:core| P_is_run|
P_is|U P_is|and P_is|ask P_it| P_say|it P_turn| P|els P|left P|lik_his P|took_th P|who THING_N:core|already
THING_Nweight|with THING_THING_in| THING_a_joint| THING_all_over| THING_b| THING_can| THING_cream|
THING_fan| THING_fan|oven THING_for|N:few THING_go| THING_her| THING_how| THING_is_at| THING_is_not|
THING_it|is THING_lik| THING_mak| THING_of_roast| THING_on|DISH THING_say|N:oven THING_slip|and
THING_so_th| THING_was| THING_will| THING_w| THING|DISH_for THING|THING_in THING|a_leg THING|ar_cover
THING|as THING|back THING|full THING|has THING|i_think THING|is_at THING|is_broken THING|is_off
THING|of_THING THING|oven_and THING|say_in THING|show_N:core THING|so_do THING|up_at U_N:core|
U_how| U_h| U_i_do| U_is_not| U_i|do U_of| U_of|th U_th|roast U_timer| U_timer|N:few U_wher|
U_will| U_with_U| U|and_top U|can_not U|from_her U|god U|is_coeliac U|is_on U|my_god U|plan
U|plan_dinner U|th_$ U|that_green U|ther_h U|timer U|timer_N:few ^_DISH_i| ^_DISH|U ^_DISH|in
^_DISH|is ^_DISH|it ^_N:core|fan ^_N:few|less ^_Nduration|i ^_P|lik ^_THING|is ^_THING|it ^_U_that|
^_^_another| ^_^_anyth| ^_^_a| ^_^_chang| ^_^_dinner| ^_^_doneness| ^_^_door| ^_^_good| ^_^_peel|
^_^_plan| ^_^_read| ^_^_shall| ^_^_step| ^_^_ther| ^_^_when| ^_^_will| ^_alert_at| ^_all_th|
^_another| ^_anyth| ^_a| ^_chang| ^_dinner| ^_doneness| ^_don|all ^_door| ^_fat_trim| ^_giv_m|
^_good| ^_how_many| ^_i_am| ^_i_can| ^_i_fancy| ^_is_now| ^_is_this| ^_i|lik ^_i|took ^_leftover|ar
^_lower|to ^_my_boss| ^_no|U ^_no|mor ^_oven_THING| ^_oven_door| ^_oven|set ^_peel| ^_pick_up|
^_plan| ^_put_it| ^_read| ^_read|N:core ^_roast_DISH| ^_r|DISH ^_shall| ^_skip_this| ^_so|w
^_step| ^_stop|talk ^_th_cream| ^_th_heat| ^_th_power| ^_ther| ^_they_ar| ^_what_all| ^_what_did|
^_what_temperatur| ^_what|a ^_when_i| ^_when| ^_wher_do| ^_who_is| ^_will| a_DISH_in| a_P|with
a_THING|a a_THING|with a_helper_today| a_low| a_shower| a_vegan|com about|th_DISH about|to
add|th_green afternoon_shop_is| ago_i| ahead|of ahead|of_us aim_for_N:core| aim_for_a| aim|
alarm|is alert_at| alert| allergic_to| all|in all|sort along|ar along|ar_w already_th| already|com
am_Nduration_lat| am_THING|a am_after| am_gon_for| am_not|american am|do_it am|don am|hold_th
am|read am|read_N:core and_can|w and_do|not and_giv_m| and_how| and_it_was| and_on|th and_roast|
and_say| and_tell| and_then|th and_w_ar| and_what|can and_will| and|N:some and|anyth and|correct
and|dav and|do_not and|fahrenheit and|go_for and|i_do and|i_will and|look and|p and|p_m and|put_th
and|th_oven and|took anyth_i| any|way ar_U|and ar_already|com ar_at| ar_boil|away ar_down|N:few
ar_her_and| ar_her|U ar_mak| ar_miss| ar_peel|and ar_sat| ar_scrub|and ar_sit| arm|on arm|on_th
ar|THING ar|after ar|boil ar|go_to ar|join ar|peel ar|preheat ar|run_lat ar|sit ar|sit_down
ar|stuck as_w|speak ask_how_pink| as|a at_N:oven_so| at_Nclock_and| at|N:core_$ at|N:core_and
at|N:few at|Nclock at|Ndegrees:some at|least at|th_U a|Nweight_N:few a|boneless a|littl a|miss
a|power_failur a|read a|ston a|timer_for a|warn b_an_extra| b_gon| b_sit_down| back|a_bit back|at
back|in_th bad|new bad|new_th bang|on bast|it beep_at| beep|m befor_w| befor|i begun| behind_i|
behind|by behind|by_Nduration beth| bin_th|DISH bit_P| bit_off| bit|is_sort bit|off bluetooth|THING
bluetooth|THING_is board|with boil|away bon_rib|roast bon|from bon|from_th bon|on bon|on_it
bother|sear bottl_of| bottl| bottom|third br_dinner_forward| br_it_forward| br_it| brb| brb|Nduration
brown_it|all bump| burn_i| bus_is| butter|th_roast by_Nduration_P| by|N:some by|Nclock_$ by|now
b|Nduration_ago b|Nduration_lat b|don b|too call_for| call_out_N:core| call|from call|is call|out
cam| can_i_do| can_not_hav| can_not_hear| can_not_se| can_not|do can_w_do| cancel|DISH_my cancel|th_roll
can|do can|i_tak can|not can|not_do careful|with carv|it celsius_i| celsius|not celsius|not_fahrenheit
center|when center|when_w chang_my| chang|w chang|w_ar charg| check|it_N:core clear|th clear|th_timer
clock|is_tick colour| com_it_is| com|out_of com|through could|w cream_b| cream_b|Nduration
cream|i_do crispy|DISH cut_it_open| cut_my_THING| cut_myself_it| cut|into cut|my_finger cut|th_DISH
dav_turn_th| dav|turn dav|turn_th da| dead|centr delay_dinner| dental|floss diall| dial|is
did_you|get did|that dinner_forward| dinner|by display_is| display|is do_i_know| do_it_Nduration|
do_not_do| do_not_lik| do_not_w| do_not|know do_not|mind do_not|tak do_th| don_all| don_for|
don|all_through don|for_P don|put don|put_th door_will_not| door|Nduration_$ door|on dot_is|
down_for| down_to|N:few down_to|Ngas-mark down|N:few down|to_N:oven do|i_do do|it_n do|not_let
do|roast do|roast_DISH do|to drain|th drain|th_DISH drop|th_DISH dry|THING d| earth_do| eat_at|N:oven
eat_by| eat|Ndate eat|a eat|by electricity|has electric|is enamel| end_th|count end|piec enough|for_N:few
every_last_DISH| every_tim|i everyth|on extra_for| extra|N:few_at extra|tim far_along|ar fat_trim|
fat|off feed|N:few fill|m fill|m_in find_in| find_th_THING| find|th_THING finish_THING| finish_THING|U
finish_with_th| finish|at finish|yet fir_in| fix| flam|in flam|in_th flip| for_cream_b| for_my|P
forgotten| for|N:some_$ for|Ndegrees:core for|is_th for|th_THING for|th_U for|th_butter found|th
from_N:core| from_now|w from_oven| gang_is_all| get_her| get_it| get| get|THING get|it get|rid
get|rid_of giv_m_a| go_down| go_in|th go_up_to| go_with_th| god|help_us gon|in gon|to gon|up
good| got_N:core|in got_a_Nweight| got_a_vegan| got_my| got|m go|U_with go|on_th go|to_hit
go|to_th grab_th|hot green_DISH|ar guest_ar_already| guest_hav| guest_hav|com guest_is| h_can_not|
h_is_not| h_is|not had_my| had|it half_th| half|tim hamish_is| happen|if has_gon|ston has_gon|up
has_got_th| has_got|N:few has_had| has_left|th has_th|THING has|gon_way hav_an| hav_fallen|
hav_got_it| hav_had| hav_it|without hav_i|got hav_mad| hav_miss| hav_not_even| hav_taken| hav_volunteer_for|
hav_volunteer| hav_volunteer|for hav_w|got hav_you| hav|DISH_DISH hav|N:few_oven hav|cut hav|put
hav|put_DISH hav|put_it hav|whack hav|whack_it heat|up held| helper_today| help|with help|with_th
henderson_ar_her| her_P| her_in| her_is| her_oven| her_to| her_to|help her|U_my hey|w hey|w_hav
his_new_P| his|rar hold| holler| hol| hot_and| hot_i| hot_to| how_is_th| how_long_hav| how_long|
how_pink|it how_thick| how_would| how|should how|should_i h|do h|put h|will i_am_after| i_am|don
i_am|read i_ask| i_bought| i_carv| i_carv|it i_don|put i_do|next i_do|not i_hav|turn i_hav|whack
i_hear| i_meant_th| i_meant_to| i_must| i_never_did| i_remov| i_said|to i_still| i_think_it|
i_think_i| i_told|you i_want_th| i_would_rather| if_it|is if_they_ar| if|i_hav if|sh if|ther_is
if|they immun_system| immun_system|is in_N:some|for in_Nduration|tell in_for| in_his| in_it|go
in_our| inform| instead_of_dry| instead|of_fresh intolerant|so intolerant|so_watch in|N:few_$
in|a_sec in|charg in|charg_of in|oven_sinc in|sh_go in|th_middl in|th_pan in|with is_N:core_and|
is_N:few_mor| is_Nduration|i is_P|is is_U|from is_U|ther is_a_bit| is_a_good| is_allergic_to|
is_all|her is_back|on is_call_out| is_delay|Nduration is_down_to| is_go_to| is_half| is_her_to|
is_in|a is_in|my is_it|N:few is_join| is_not|it is_now_at| is_roll|and is_shap_N:few| is_show|Ndegrees:core
is_sh| is_that| is_ther_any| is_up_to| is_well| is_what|i is|after is|and_back is|ask is|bad
is|drop is|empty is|go_to is|her is|hit is|it is|m_and is|no_THING is|not_a is|nowher is|nowher_near
is|open is|pink is|pull is|pur is|shut is|sit is|smok is|thin is|thin_as is|tick is|vegetarian
it_THING|N:core it_at| it_back_to| it_by| it_forward| it_is_rest| it_is_roll| it_is_th| it_is|blister
it_is|go it_is|hot it_is|preheat it_is|sit it_is|tell it_keep| it_medium|well it_out_of| it_out|on
it_say|on it_touch| it_to|N:oven it_weigh| it_well|don it_will_b| it_you| it|at_th it|from
it|good it|got it|hav it|hav_to it|is_Ndegrees:some it|is_bleed it|is_chewy it|medium_$ it|on_a
it|on_mor it|on_th it|r_N:core it|stuck it|up_now it|warm it|was_th it|without_DISH i|ask i|burnt
i|burnt_my i|carv i|chuck i|could_not i|ever i|hav_N:few i|hear i|misread i|reckon_$ i|say
i|scald i|scald_my i|slic i|typ i|was joint_is|in joint|for joint|is join|th keep|tell_m kept_th|
kettl| kevin| kev| kill|th_heat kindly|inform know_how| know|at know|at_N:core lactos_intolerant|so
lad_ar| last|i_look lat|they_text leave-in_on|is left_at| leg_THING_Nweight| leg|of let_us|aim
let_us|get let_us|not lift_th| lift|th lik_P| lik_it_medium| lik_my| lit_th| lit_th|oven li|down
long_can_it| long_hav| lunch_Ndate|at lunch|Ndate_Nclock lunch|at_Nclock m_alon| m_for| m_in_N:some|
m_lik| m_lik|i m_my| m_when_Nduration| mak_m| mak_that_Nduration| mak|U mak|it manag| many_DISH|do
may| meant_th| mean|to medium|rar_for medium|well_$ medium|well_for meet| microwav| mind|your_back
minut|ago miss|THING mor_person|com mor_sid_DISH| mor|or mor|th_to mor|than most|of mov_dinner|
mov|it mov|on_to much_THING|do must|i_do must|th my_THING_ar| my_arm|on my_phon| my_shop| my_shop|list
myself_it| myself_it|is my|P_do my|finger m|what_to n_to_DISH| n_to_warm| nagg|m needl| never_get|
never|got new_THING|so next_door| next_door|Nduration next|on_th night_in| no_it|is nobody_told_m|
not_any| not_bother|sear not_brown| not_carv| not_finish|yet not_for|you not_i_carv| not_know|how
not_put| not_salt| not_salt|it not_ther|yet not_touch|THING not|american not|do_that not|don_with
not|know not|m not|put_it not|warm now_how| now_you| now|w_eat now|what_to no|electric no|gluten
no|gluten_for no|longer no|pink number|i n|a of_dry| of_dry|THING of_my| of_roast|DISH of_smok_it|
of_th| off_and|it off_to_get| off|schedul_$ off|th_heat off|to off|with of|roast of|th_U of|thos
ok|P_th ok|to on_THING| on_earth_do| on_mor| on_mor|tim on_th|counter on_th|oven on|ar on|is_on
on|to_N:oven on|yet open|and_it other_ar| other|N:few our_P| our|at out_N:core| out_at|N:oven
out_every_tim| out_oven| out|N:core_from out|at_Nclock out|it_com oven_Nduration| oven_befor|
oven_dial| oven_has_gon| oven_is_beep| oven_i| oven_light| oven_no| oven_off|Nduration oven_on|to
oven_run_hot| oven_will_not| oven|is_N:oven oven|sinc oven|took oven|took_ag over|N:core over|it_$
over|th past_well_don| peel_and| peel|and_cut peopl|hav person|com phon|is_ring pick|th piec_of_THING|
piec_of|THING pink_U|not pink|all_th pink|it_will plac_and| plan_chang| plan_chang|w plan|b
plan|b_$ plat|ar_warm plus|N:few_mor pop_out_for| pop|th pound|and_fahrenheit present_and|
present_and|correct prim| prim|rib proper_THING_on| pull_for|medium pull_into_th| pull_it|at
pull_it|now put_a| put_th|DISH put_th|roast put|th_roast quick_U| quick|updat quit|badly_$
r_U| ran|out ran|out_of rar|or rar|this_tim raw_THING|in read_N:core_and| ready|for_th ready|they_n
reckon|Nduration reckon|w_hav remind_m|what rest_a| rest_it| rest_on| rest_on|th rest|it rib|is
right_in| right|in road|is roar| roast_in|oven roast_out|already roast|do roast|on roast|with
roll|burn roll|did roll|did_not roll|went roll|went_in rop_in|th ruth| r|or saf|for said|to
salt_finish_THING| salt_in_th| salt|per sat_out| sauna| say_U| say_and| say_it|on say_on| say_on|th
say|N:core_and say|it schedul|for scrub_th_DISH| scrub|and_oil scrub|th scrub|th_DISH se_you|in
second_from| seem| serv_at| set_a|timer set|to sh_can| sh_has|got sh_is_at| sh_is_run| sh_will_b|
shap_N:few| shap_N:few|roll shop_back_in| shop_had| shop_had|no shop_is|shut shop|for should_it|b
should_i|turn shout_at| shov_dinner| shov_dinner|back shov| shov|th show_N:core|right show|m
show|up sh|can_not sh|did sh|lik sid_DISH|th sid_and| sinc|N:oven sit_down_and| sit|at skip_butter|
skip_butter|th skip_that|bit skip_th|french skip|th_DISH sleep| slid|th smok_it_is| smok_it|is
smok|is_pour so_N:some| so_go| so_let_us| so_no|DISH so_th_DISH| so_th_middl| so_that|is so_what|
som_of_th| someth_no|electric sorry_say_it| sorry|say_it so|N:few_mor so|THING so|do_not so|far
so|well_don stand_it| stand|in_for start_at| start_over| start|on start|on_th stay|in step|away_for
step|by step|by_step step|off still_got| still_not|finish still_on|th still|THING still|hav
still|hav_not still|moo stop_nagg|m stop_th| stop|that_timer stov_is| str|in_this stuck_th_THING|
stuck|th_THING supper_at| supper|at_Nclock swell_up|after system|is tabl_of_N:few| tabl|w_said
tak_Nduration| tak_a| talk_in| talk_to| tap| tell|your temperatur_am_i| temperatur|i th_DISH_ready|
th_DISH|cream th_DISH|don th_DISH|kind th_DISH|out th_DISH|went th_THING_is| th_THING|go th_U|is
th_board|with th_bon|in th_butter|with th_center|when th_centr|it th_cream|i th_first|guest
th_guest_com| th_littl| th_other|N:few th_other|ar th_oven_light| th_oven|has th_pan|handl
th_pink| th_power_went| th_roll|burn th_roll|did th_schedul|for th_stov_is| th_tap| th_to|
th_what| than_i| thank_you|very thank|for thank|god than|th that_bit|is that_is_th| that_last_on|
that|alarm that|back that|door them_THING| them_back| them_in| them|in then|th theo| ther_any|
ther_is|not ther_long| ther_was| ther|in_th ther|is_a ther|is_any they_ar_sat| they_ar|all
they_ar|go they_ar|out they_com|Nduration they_hav_all| they_lost| they_n| they_reckon| they_reckon|Nduration
they_want| they|reckon they|will think_it_is| think_i| third|on this_old| this_oven| this_year_and|
this|THING_it this|for this|oven_is this|year threw| through_that_is| through|for_U th| th|DISH_in
th|DISH_roll th|THING th|THING_was th|U_is th|bon_in th|can th|can_i th|count th|count_down
th|counter th|current th|fan th|finish th|green_DISH th|leave-in_say th|lid th|match th|middl_of
th|next_step th|on th|prep th|r th|roast_at th|soup th|stand th|tabl_for th|temperatur th|thickest_part
th|timer_off th|to th|tong th|wash th|wedd th|win th|with th|worktop till|th tim_not| tim_th_DISH|
tim_they| timer_for|Nduration timer|N:few_wrong timer|off_$ tim|ar_w tim|i_open tip| to_N:oven_at|
to_Ngas-mark_and| to_P_is| to_P| to_check|th to_com|out to_do|next to_eat|Nclock to_f_th| to_medium|well
to_next_door| to_skip_butter| to_ti_it| to_wait| to_warm|th tonight|at tonight|at_N:few too_low|
took|it touch_th| touch|THING to|N:core_i to|N:oven_fan to|Ndegrees:core to|catch to|metric_$
to|salt to|th_DISH to|th_THING to|wash train_is| trip_someth_no| turn_that| turn_th| turn|th_U
turn|that ty_th| ugh|i ugh|i_am up_by| up_with| up|again_$ up|lovely up|to_Ngas-mark us_THING|DISH
us_it_is| us_skip_that| us|a_U us|aim us|aim_for us|do_DISH us|get us|skip_it us|skip_th us|th
vegan|com visitor|com visitor|com_with volunteer_for| volunteer|for vot| w_ar_N:some| w_ar_down|
w_ar_do| w_ar_hav| w_ar_miss| w_ar|N:few w_ar|preheat w_eat|Nduration w_hav_no| w_hav| w_hav|N:few
w_mak| w_n| w_put_it| w_shall| w_tak| w_wer| w_will_not| w_would| wait_for| want_for| want_his|
want|DISH_DISH want|her warm_any| was_N:core_in| was_N:core|in was_N:core|not was_show| was_still|
wash_th| was|that way_out_do| way_through|for weight|Nweight weigh|Nweight_$ well_don|i well_i|
well|look well|look_at went|out_whol what_do_w| what_els|could what_for| what_for|is what_is_medium|
what_should| what_temperatur_do| what_th|can what_will| what|all what|ar_you what|com what|could
what|is_that what|tim what|tim_is what|would when_Nduration|ar when_will| wher_ar| wher_is_th|
wher_is|th wher_to| which|temperatur whisk|th whisk|th_DISH who_has| who_want_to| whol|tim
who|do why_can_not| why_do_it| why_do|th why_is_th| why_that| why|is will_b|N:few will_b|Nduration
will_i| will_not_touch| will_th| will|eat will|se_you will|sear will|tak will|th win|P win|in_th
with_THING| with_U|THING with_m| without_th| without|DISH_$ without|th with|Nduration with|P
with|it with|medium with|salt with|salt_and with|th_second wok| wok|up work_in| would_rather|
wrong_i| w|had w|push w|said w|shall w|speak w|still w|tak_it w|will w|will_not year_and| yes_it|is
yet_to| you_do_not| you_mak| you_tim_Nduration| you_wer| your_P_is| your|plan you|call you|mind
you|set you|think you|very you|very_much |@0.1 |@103.0 |@103.5 |@107.2 |@117.3 |@13.7 |@130.1
|@133 |@144.1 |@18 |@18.2 |@26.6 |@30.1 |@33.1 |@4.10 |@4.6 |@44.0 |@47 |@47.2 |@52.0 |@54.7
|@55.1 |@65 |@65.5 |@74.1 |@86.5 |@89.0 |@92 |DISH_and_i |DISH_as |DISH_as_well |DISH_b |DISH_i_am
|DISH_in_N:few |DISH_is_cut |DISH_oven |DISH_tak |DISH_ther_is |DISH_was |DISH_with_this |N:core_P
|N:core_about_Nduration |N:core_and_had |N:core_and_what |N:core_b |N:core_from |N:core_from_th
|N:core_so |N:core_w |N:few_h |N:few_instead |N:few_mor_now |N:few_wrong_THING |N:oven_i |N:oven_th
|N:some_for_th |Nclock_befor |Ndate_$ |Ndate_$_$ |Ndate_without |Ndegrees:few_$ |Ndegrees:few_$_$
|Nduration_P |Nduration_ago |Nduration_mor |Nduration_my |Nweight_and_i |P_N:few |P_at |P_has_had
|P_is_insist |P_is_pregnant |P_open |P_th_roast |THING_N:core_Nduration |THING_N:core_and |THING_N:oven
|THING_how |THING_i |THING_i_think |THING_in_a |THING_in_this |THING_is_stuck |THING_last |THING_lik
|THING_never |THING_oven_and |THING_say_Ndegrees:core |THING_would |THING_you |U_for_m |U_is_expect
|U_oven_is |U_up |U_with_U |a_THING_and |a_THING_leg |a_bag |a_bit_$ |a_bit_off |a_day |a_medium
|a_timer |adult_and |after_th_DISH |again_i |aim_for_Nclock |air |all_go |already_th |an_THING
|an_U |and_DISH_hav |and_N:few_other |and_back_Nduration |and_chop |and_climb_$ |and_cut_them
|and_gon |and_i_will |and_on_th |and_still |and_stuff_$ |and_top |ar_THING_so |ar_all |ar_already
|ar_cover |ar_cover_in |ar_glaz |ar_look |ar_out |ar_sit |ar_tell |ar_w_up |ar_warm_$ |as_i
|as_it_is |as_well_$ |ask_how |at_Nclock_sharp |at_last |b_back_in |b_hav |back_to_N:oven |banana
|barbecu |bath_is |befor_w |begin |begun |behind_and |best_$ |best_$_$ |bit_of_THING |blew
|bon_it |brought |by_m |by_step |can_help |cancell_$ |cancell_$_$ |cast |cat |charg_of |clock
|collaps |com_first |com_out |com_out_in |cooky |cool |counter |cremat |cub |cut_up |delay_by
|delay_by_Nduration |don_all_th |don_for |don_with_it |door_open |down_at |down_how |down_it
|down_th |drank |drank_it |duty |eat_by |eat_it_$ |eat_th |els_is |enamel |enamel_roaster |end_$
|end_$_$ |f |fac |fat_$ |fat_$_$ |floss |for_N:few_and |for_N:few_do |for_U_sak |for_cream
|for_medium |for_new |for_new_year |for_th |for_thos |for_today |for_today_$ |forerib_on |forerib_on_th
|from_scratch_$ |from_th_market |get_lat |gluten_for |go_in_th |go_to_b |good_and_hot |good_for
|got_DISH |got_N:few |got_burn |got_her_$ |guest_to |had_N:few |had_a |had_no |had_th |has_U
|has_been_off |hat_that |hav_U |hav_U_$ |hav_burnt |hav_no |hav_sat |heat_th |held |help_m_with
|help_us |her_a |her_already |her_in |her_on |her_out |hol |i_am_so |i_hav_been |i_look_$ |i_should_b
|i_suppos |i_suppos_to |i_will_DISH |if_ther_is |in_my_THING |in_pound |in_th_thickest |in_with
|inch |instead_of_THING |is_N:some_$ |is_Ndegrees:few |is_any |is_asleep |is_at_N:core |is_at_N:some
|is_burn_$ |is_chewy |is_chop_an |is_conk |is_conk_out |is_fin_$ |is_help |is_lactos |is_lactos_intolerant
|is_on_N:oven |is_out_of |is_over |is_pur |is_read_N:core |is_sat |is_sinc |is_sit |is_stay
|is_vegan |is_with |it_N:oven |it_a |it_as_it |it_at_th |it_bl_a |it_dry |it_first_$ |it_from_th
|it_good |it_i_am |it_is_and |it_is_fin |it_open |it_open_and |it_ready |it_through |it_to_N:oven
|it_twic |it_well |joint_$ |joint_$_$ |jump |jumper |keep_$ |keep_$_$ |kev |kilo_$ |kilo_$_$
|know_$ |know_$_$ |lat_Nduration |lik_it |m |m_$ |m_$_$ |m_alon |m_back |m_option |m_out |m_th_THING
|mak_N:few |mak_a_DISH |mak_it_$ |medium_rar_and |medium_rar_or |medium_rar_saf |misread |miss_that
|mor_tim |mov_$ |mov_$_$ |much |my_THING_it |my_option_$ |my_roommat |n |n_do |n_m_$ |nam_$
|nam_$_$ |nap |near_th |new_THING |new_th |no_th_oven |not_$ |not_$_$ |not_believ |not_fahrenheit
|not_go |not_hav_th |not_mind |not_put |not_ready_yet |not_turn |now_do |now_how |now_sh |now_w
|now_what_do |nut |of_N:core |of_N:few_$ |of_fresh |of_her |of_roast_DISH |of_th_water |of_top
|of_top_THING |of_what |off_th_bon |off_with_th |offer_to |ok_in_ther |ok_to_eat |on_N:oven
|on_chemo |on_hold |on_hot |on_is_U |on_it_is |on_now |on_so |on_then |open_th |or_THING |out_Nduration
|out_for_a |out_whol |oven_at_Nclock |oven_glov |oven_no |oven_sinc_Nclock |oven_to |over_$
|over_$_$ |over_th_THING |pair |pan_$ |pan_$_$ |pan_is |parent |past_N:core |patel |pay_for
|peel_th |peel_th_DISH |peopl_at |peopl_cancell |piec_of |plan_dinner |plan_dinner_roll |pour_out
|power_failur |pregnant |pressur |pretty_good |pric |properly_$ |properly_$_$ |pull_in |pur
|put_th_joint |quick_on |quit |r_N:core |rar_P |rar_for_all |rar_or |ready_they |reduc |replac
|restaurant |rid |rid_of |roll_and_ti |rop |run_Ndegrees:some_hot |run_lat_Nduration |run_out
|said_N:few |sav |say_in |say_in_Nduration |say_it_on |say_on |say_on_th |sear_i |second_on
|sh_do_not |shop_$ |shop_$_$ |shop_for |should_tak |shout_at |sick |simmer |sirloin |sit_down_and
|skin |slid_off |slid_off_th |slow_$ |slow_$_$ |smok_$ |smok_$_$ |so_low_$ |so_no_DISH |so_watch_th
|soft |someth_$ |someth_$_$ |someth_i |someth_in |spain |spell |start_to_finish |step_off |still_got
|stood |stuck_in_it |talk_to_you |tear |tell_m_N:core |test_$ |test_$_$ |th_DISH_kind |th_DISH_no
|th_DISH_ok |th_DISH_what |th_Nduration_N:few |th_THING_so |th_alternativ |th_b |th_bin |th_cast
|th_fat_$ |th_fat_off |th_front |th_front_room |th_hall |th_motorway |th_music |th_next_th
|th_oven_how |th_oven_so |th_oven_ther |th_second_on |th_tim_$ |th_to_go |th_trick |th_window
|than_plan |that_back_to |that_green |that_green_DISH |them_$ |them_$_$ |then_a |ther_h |ther_h_will
|ther_in |they_n_heat |thin_as |this_afternoon |this_afternoon_$ |this_on_$ |this_step |till_Ndate
|till_it_is |till_th |tim_$ |tim_$_$ |tim_and |timer_N:few_wrong |tip |to_N:few_$ |to_Ndegrees:oven
|to_Ngas-mark |to_b_ready |to_begin |to_chang |to_church |to_go_$ |to_hit |to_it |to_medium
|to_medium_well |to_my_P |to_rest |to_tell |to_th_THING |to_th_shop |to_wait |toast_$ |toast_$_$
|tomasz |tong |too_early |too_fast |too_hot |too_long |too_low |took_ag |took_th_roast |totally
|try_to |turn_on |tyr |up_in |up_in_th |up_now |up_to_N:oven |upstair_to |w_$ |w_$_$ |w_go_$
|w_hav_another |w_left |w_on |w_said_grac |want_th |warm_$ |warm_$_$ |was |was_N:core_$ |was_th_telly
|water_on |well_for |went_in_Nduration |whack_it_down |what_my |when_w_eat |will_b |will_com
|will_go |will_look |will_look_after |with_m |with_salt |with_th_P |with_them |without_a_THING
|wonder |word |worktop |worth |would_go |wrong_it |wrong_it_is |you_ar_$ |you_get |you_i_am
|you_run |you_th |your_back
-14 @123.0| @136.5| @14.3| @3.6| @35.3| @47.5| @52.4| @62.2| @99.1| DISH_DISH_on| DISH_DISH|DISH
DISH_DISH|went DISH_all_over| DISH_another_Nduration| DISH_ar_a| DISH_ar| DISH_ar|not DISH_ar|trim
DISH_from| DISH_go_in| DISH_go| DISH_has_not| DISH_instead|of DISH_in|a DISH_in|now DISH_is|
DISH_my| DISH_m|alon DISH_of| DISH_sh_is| DISH_so_scrap| DISH_ther_is| DISH_trim|them DISH_was|
DISH_what| DISH_would_go| DISH|Nduration_ago DISH|and_th DISH|ar_in DISH|hit DISH|hit_th DISH|is_dead
DISH|is_don DISH|is_finish DISH|is_on DISH|n_another DISH|our_on DISH|should_i DISH|solid DISH|th_oven
DISH|th_trim DISH|want DISH|with_this N:core_Nduration| N:core_and|DISH N:core_and|what N:core_at|
N:core_b| N:core_i_hav| N:core_lik| N:core_my|P N:core_too|low N:core|about_Nduration N:core|and_then
N:core|now_in N:core|when_you N:few_DISH| N:few_and_it| N:few_do| N:few_hungry| N:few_in_th|
N:few_it|is N:few_less|now N:few_less|th N:few_mor|person N:few_mor|plac N:few_need| N:few_need|chang
N:few_not| N:few_oven| N:few_sh_is| N:few_sound| N:few_step| N:few_they_hav| N:few|and_it N:few|at_th
N:few|heat N:few|mor_$ N:few|of N:few|on_top N:few|oven_and N:few|so_far N:few|sound N:few|wrong
N:oven_U| N:oven_how| N:oven_in_th| N:oven_or| N:oven|N:few N:oven|afternoon N:oven|afternoon_f
N:oven|for_dinner N:some_and_th| N:some_it|is N:some_so| N:some|dinner N:some|lat Nclock_and_w|
Nclock_for|dinner Nclock_is| Nclock_now|would Nclock_on|th Nclock|latest Nclock|w Ndate_lunch|at
Ndate|w Ndegrees:core_on|th Ndegrees:core|on_th Ndegrees:some_in|Nduration Nduration_after|w
Nduration_at| Nduration_behind|already Nduration_is|delay Nduration_it|is Nduration_lat_and|
Nduration_lat_can| Nduration_later|P Nduration_lat|so Nduration_mor| Nduration_of| Nduration_tell_m|
Nduration_to_that| Nduration|at Nduration|then_tell Nduration|to_dinner Nweight_bon| Nweight_bon|in
Nweight_forerib|on Nweight_rib_roast| Nweight|rib_roast P_Nduration|top P_THING| P_and_P| P_and_th|
P_has| P_help|m P_i_hav| P_if| P_in|law P_is_bring| P_is|N:few P_lik_her| P_n| P_ray| P_th|roast
P_tonight| P_tonight|so P_with| P|help_m P|is P|is_THING P|is_com P|is_sat P|is_starv P|jim
P|nor P|nor_money P|on_th P|up THING_DISH| THING_THING_is| THING_THING_would| THING_at|Nclock
THING_a| THING_cut| THING_from| THING_gav_m| THING_hang_in| THING_is_split| THING_is_ti| THING_is|
THING_left|in THING_no|THING THING_of| THING_of|DISH THING_show|N:core THING_th|block THING_w_ar|
THING_would| THING|DISH_instead THING|N:core_Nduration THING|N:core_already THING|board THING|com_through
THING|do_in THING|enamel THING|i_hav THING|in_a THING|is THING|is_act THING|is_in THING|is_insid
THING|is_not THING|leg_Nweight THING|m_my THING|no_sear THING|now_$ THING|of_roast THING|r
THING|say_N:core THING|say_Ndegrees:core THING|tonight U_crap| U_crap|th U_for|U U_from| U_is|U
U_it|on U_my|P U_plan| U_plan|dinner U_sh| U_th_DISH| U_want| U_w|will U|U_i U|down_$ U|is_U
U|is_go U|is_not U|not_bloody ^_DISH_no| ^_DISH|DISH ^_N:some|on ^_P_is| ^_THING_m| ^_^_am|
^_^_bon| ^_^_call| ^_^_delet| ^_^_do| ^_^_flight| ^_^_his| ^_^_is| ^_^_keep| ^_^_left| ^_^_middl|
^_^_new| ^_^_number| ^_^_onc| ^_^_open| ^_^_option| ^_^_pan| ^_^_plus| ^_^_stuck| ^_^_their|
^_^_trim| ^_^_who| ^_^_would| ^_a_N:few| ^_am| ^_ar_th| ^_bon| ^_bon|ar ^_b|back ^_b|quiet
^_call| ^_chang_to| ^_convection|is ^_delay_dinner| ^_delet| ^_dinner|Ndate ^_do_it| ^_do|
^_flight| ^_forget|i ^_get|rid ^_his_P| ^_his| ^_hold_th| ^_i_hav| ^_i_tak| ^_i_thought| ^_if_it|
^_is| ^_i|grab ^_keep| ^_left| ^_middl| ^_my_P| ^_new| ^_no_i| ^_now|Ndegrees:core ^_number|
^_number|N:few ^_onc| ^_open| ^_option| ^_out|it ^_pan| ^_pass_th| ^_plus| ^_power|cut ^_priya|is
^_r_DISH| ^_shov_dinner| ^_skip|that ^_so_th| ^_stuck| ^_th_butter| ^_th_th| ^_their| ^_ther_is|
^_th|plat ^_trim| ^_w_can| ^_w_had| ^_who| ^_why_is| ^_with_DISH| ^_would| ^_w|put ^_you_ar|
^_you|what a_Nweight|leg a_THING|of a_bit|longer a_bit|of a_conventional_oven| a_final| a_for_N:some|
a_glass|THING a_good|Nduration a_go| a_power|failur a_r_win| a_timer|on about| about|Nduration
abov_th| add_Nduration|to add|Nduration_to after_it| afternoon|look_$ after|rest after|w aim|for
alarm_for|Nduration alarm|up all_THING| all_off| all_off|Nduration all_on| all|don all|of_them
all|right_for already_th_DISH| alway_run| am_get|N:core am_go_to| am_i|look am_nip| am_not|mak
am_off_down| am_run_Nduration| am_run|Nduration am_tak_it| am|N:few am|Nduration am|Nduration_behind
am|go am|i_miss an_extra|Nduration and_N:some| and_cancel| and_climb|fast and_could_you| and_dinner|is
and_gon| and_how_long| and_look| and_medium| and_pick_up| and_quick| and_remind_m| and_sh_is|
and_sur|you and_th_roast| and_that|is and_then|it and_th|oven and_th|roast and_ti_them| and_took|
and_what|is and|N:core_$ and|N:few_of and|P_want and|all and|anyth_i and|celsius_$ and|dinner_is
and|everyth and|hot and|how_many and|it_say and|it_was and|medium_rar and|they_hav and|what_should
another_Nduration|then anyth_i_hav| anyth|i_should anyth|that any|plat ar_N:few_peopl| ar_her|N:few
ar_in|th ar_not_com| ar_sit_down| ar_stuck| ar_w_on| ar_warm|now ar|N:few_peopl ar|don_$ ar|hav
ar|her ar|sat ar|th_DISH ar|trim ar|w_on as_per| ask_for|THING as|anyth as|it at_N:core|in
at_N:core|now at_N:few_U| at_N:few|heat at_all_and| at_th|THING at_th|finish at|Nclock_th at|Ndegrees:core
at|th_back away_and| away_for|Nduration a|Nclock a|nic a|second_oven a|sock a|we b_at_N:oven|
b_faff_with| b_gon|Nduration b_go| b_in| b_tak| back_at| back_i_said| back_it_is| back_it|
back_it|is back_thank| back_thank|god back|Nduration_th back|at_Nclock back|in_N:few back|is
bad|N:few bath_th| bath_th|P bear_that_in| befor_w|sit befor|th_next befor|w befor|w_eat behind_th|
behind|already besid|th_THING bin_th| birthday| bit|longer blad| blad|tenderis boil_water_down|
boil|for bon_can| bon_roast|Nweight bon|in_Nweight bother_sear| bottom_of| bottom_of|th bottom|oven_is
br_dinner| br_dinner|forward bring_th| bring|th brok_her| brok_her|THING bung| burnt_th|DISH
burn|my_THING bus|is butter_is_not| butter_on| butter_th| butter_with_DISH| butter|by butter|by_th
butter|on_th buzz_m| by|th_U b| b|don_$ b|gon b|this call_m| call|U can_it_sit| can_i|DISH
can_not_eat| can_not|se can_tak|th can_w|br can_you_put| can_you|run cancel|th_DISH cancel|that_alarm
can|manag can|not_turn can|you_believ cast| cat|got cat|got_th chang|my_mind check_with| check_with|th
check|th chop|an chop|an_oil christma_dinner|at chuck_som| church_for| church|for climb|fast
clos_th| coat_ar| coat_on|th cold_by| collaps_th_moment| collect_th| com_after| com_first|
com_so| com|for convection_is| convert| could_do| could_us| could_w_go| count_th| crackl| crap|th
crap|th_power crisp_it_up| crowd_is_in| cut_th| cut_th|DISH cut|th_bon degre|c delay_add| delay_add|Nduration
delet|timer dial_is| dial_say| dial_say|N:oven did_you_get| did_you_se| did|i_tell dinner_for|
dinner_to| dinner_to|N:oven dinner|for_Nclock dinner|forward dinner|roll_ar do_about| do_for|
do_i_go| do_if| do_it_n| do_it|go do_it|hav do_it|tak do_next|i do_not_let| do_not_n| do_not_put|
do_not|count do_not|mak do_not|put do_th_afternoon| do_th_oven| do_to| do_without_th| dog_got|
dog|has don_all|th don_i|am don_no| don_put_th| door_on| door_will| down_is| down_it_is| down_it|
down_i| down_my| down_yet| down|my_leg down|th_shop down|to_their do| do|i_go do|it do|next_i
do|not_mind do|not_n do|not_they do|not_you do|truss drank| drank|it dress_th| dress_th|DISH
driv_over_to| drop_th| drop_th|whol drop|back drop|it eat_DISH| eat_anyth| eat_at| eat_i| eat|at_Nclock
eat|early elli|is end|N:core_right end|th_count even_if| everyth_by| everyth_by|N:some everyth_in|fahrenheit
everyth| everyth|and everyth|go everyth|is everyth|tak everywher_th_THING| every|tim excus|
extra|Nduration extra|for_th f_at| f_at|Nclock faff_about| faff_with| faff|about fallen_Nduration_off|
fan_is| fan_on|this far_along| find_th| finish_i| finish_th| finish|truss fin|for fir_alarm|
fir_in|th first_lot| first_th| first|at first|at_Nclock first|on flam_Nduration| flam_Nduration|back
fold| for_N:some|dinner for_P|nor for_a_final| for_m_so| for_medium|rar for_my_german| for_new_year|
for_what| forerib|on forerib|on_th forget_th|Nduration forget_what| forget| forgot_to|say for|N:few_of
for|U_$ for|U_U for|him for|new for|new_year fridg_at|Ndegrees:some from_a| from_now|till from|N:core
from|Nclock from|th from|th_THING from|th_U full_of| german|visitor get_th_THING| get_your|
get|N:core get|in get|it_good giv_m|som glass|THING go_in_no| go_in|no go_to_b| god_help| god_help|us
gon_off_so| gon_off|so good|Nduration got_Nduration| got_held_up| got_th_joint| got_th|DISH
got|N:few_THING got|N:few_oven got|no_DISH got|th_joint grab_th_hot| grac|will grac|will_look
greas|fir_$ green_DISH_DISH| green_DISH|our guest_to| guest|got guest|got_her guid_m| h_is_call|
h_is_hav| h_put| had_for_P| had_no| half_DISH| half_DISH|in hamish| hamish|is hang_in| hang|
happen|if_i has_been_out| has_com|down has_gon_to| has_gon|cold has_gon|off has_left| has_th_THING|
has_to| has|arriv has|it hav_bought_a| hav_got| hav_got|DISH hav_had_a| hav_not_any| hav_not_peel|
hav_not|start hav_nut_sh| hav_put_on| hav_slic| hav_with_it| hav|a hav|any hav|been hav|burnt
hav|cut_myself hav|knock_it hav|not_don hav|ti hav|turn hav|turn_it headcount|has headcount|has_gon
hear_myself| hear_myself|think heat|all heat|all_th heat|is heat|th_whol held_up| held_up|i
help_with_th| help|m_now help|us her_nam_is| her_w| her|THING_is her|medium himself_is| hold_at|
hold_th| hot_THING|com hot_by| hot_do|th hot_for| hot_it_is| hot_this| hous_is| hous|befor
hous|befor_Ndate how_far_along| how_hot_do| how_long_has| how_long_is| how_long_till| how_long|do
how_much|salt how|com_th how|you hush|now i_am|N:few i_am|Nduration i_am|go i_can|not i_could_us|
i_did|not i_do_it| i_drop| i_drop|th i_hav_no| i_hav_slic| i_hav_th| i_hav| i_hav|cut i_left_it|
i_n|th i_overcook| i_put_in| i_slic| i_trim| i_trim|th i_will_hav| i_will|se ic|water_test
if_sh| if_ther_is| if|that_is if|you_can ignor|my ignor|my_last immun_system_is| in_DISH_DISH|
in_N:few|go in_a_glass| in_at|N:few in_boil| in_boil|water in_celsius|and in_law_is| in_law|ar
in_no|they in_th_bottom| in_th_shower| in_th|middl in_th|sink in_traffic|another in_w| includ|
insist_on| insist_on|DISH instead_of_THING| invit_themselv_so| in|N:few_go in|N:some_$ in|U_of
in|at_N:few in|degre_c in|i_shut in|my_lif in|no_they in|now_do in|th_THING in|th_centr in|th_front
in|th_hall in|th_oven in|th_roast in|th_small in|ther_crispy in|traffic iron|THING_$ iron|pan
is_DISH_in| is_N:few|month is_N:few|on is_a_N:few| is_all|go is_ask_for| is_at|N:core is_at|N:some
is_beep|it is_bring_th| is_bring|th is_call|U is_chop|an is_delay_add| is_do_th| is_don_and|
is_full_of| is_go|off is_insist_on| is_in|th is_it_all| is_it_on| is_it|com is_it|go is_it|on
is_join_th| is_lot|hav is_not|ther is_offer|to is_out|for is_past| is_past|N:core is_pour|out
is_run_Nduration| is_smok|pour is_split|open is_still_raw| is_stuck_in| is_th_next| is_th_temperatur|
is_ther|another is_th|cor is_ti|it is_way|too is_what_i| is_work| is|DISH_in is|N:core_my is|N:core_too
is|N:few_$ is|N:few_extra is|Ndegrees:oven is|a_Nweight is|alight is|all_carv is|allergic is|call
is|clos is|it_a is|it_don is|it_ok is|medium_$ is|not_in is|not_right is|over is|pour is|right
is|ring is|run_Nduration is|stand is|th_lot is|under it_Nclock_now| it_Nduration|earlier it_a_rest|
it_all_off| it_at|N:core it_at|Nclock it_down_i| it_go|U it_how| it_in|a it_is_Ndegrees:some|
it_is_m| it_is_past| it_is_too| it_is|THING it_is|a it_is|don it_is|hit it_lik| it_m_in| it_n|
it_off|at it_off|th it_out_on| it_out|of it_oven| it_say_on| it_tak| it_touch|N:core it_to|N:core
it_up|right it_up|to it_want| it_weigh|Nweight it_went_up| it_with_salt| it_w| itself| it|at
it|beep it|beep_so it|com_out it|down it|for_th it|has it|hit_N:core it|is it|is_N:few it|is_raw
it|is_sit it|out_of it|rest_$ it|said_N:core it|smell_amaz it|to_N:oven it|tonight it|up it|went_in
it|will_b i|chuck_th i|hat i|left_it i|n i|n_a i|remov i|speak i|speak_to i|thought jess_is_on|
jess|is_on join_th| join_th|party joint_is_in| jump_Ndegrees:some_in| justify|th justify|th_DISH
kept|th kettl|on knock_that_timer| know_at| know_at|N:core lad|hav lagg| last|DISH last|year
lat_do| later_P_is| later_and| later_than| later|P later|P_is lat|on law_is| law|ar lay_N:few_mor|
leav_th_THING| left_end| left_end|N:core left_th| less|th let_m|know let_us_get| let|th_cat
lift_it| light|on littl_N:few_need| load| load|of long_has| long_till| long|do look|at_th look|pretty
lost_Nduration|to los|th_DISH lot_ar|her loung|every loung|every_last lower_to| lower_to|N:oven
lower|it_till lunch_at|Nclock m_a|timer m_so| m_th|shop m_what_i| mad_th| mad_th|DISH mak_dinner_Nduration|
mak|a margarin| medium_well_for| medium|instead middl|when middl|when_w missus|will moment|i_open
mor|person mor|plac mov_dinner_to| much_go| much_go|on much|smok must_i| my_DISH|split my_P_no|
my_P_tonight| my_P|is my_THING_say| my_THING|say my_back| my_back|is my_german| my_german|visitor
my_oven| my_oven|THING my_palm|try myself|think my|P_insist my|P_say my|THING_ar my|grandmother
my|palm m|alon m|an m|know n_another_Nduration| n_for| n_to_do| n_to_go| near| need|chang new_to|
new|dinner_$ new|to next_i_U| next_on| next|hour next|i_U nic| no_DISH|it no_butter| no_fan_on|
no_it| no_mor| no_on_is| no_pink|at no_th|oven nobody_her| non_of|that not_a_singl| not_bother_sear|
not_carv_it| not_eat_anyth| not_hav| not_hear_myself| not_hear|you not_let| not_n_th| not_n|
not_ready|for not_ris_yet| not_so| not_want|to noth_is| noth|U not|P_open not|bother not|catch
not|clean not|count not|crispy not|do_th not|finish_yet not|hav_it not|keep not|let_m not|mak_th
not|turn_on not|w_hav now_do_not| now_what|do now|N:core now|insid now|till now|would_you no|DISH_w
no|idea no|n_to no|sear_N:few no|second no|tim_to nudg|th number_am_i| number_of| number|N:few
nut_sh| nut|ar nut|ar_a of_THING_is| of_THING|over of_butter|by of_thos_wireless| of_th|DISH
of_what| off_down| off_down|th off_th_Nduration| off_th|THING off_th|list off|th_DISH of|THING_on
of|sear ok_P_th| ok_to_eat| ok|i_am ok|in ok|so_th on_N:core|at on_hot| on_on| on_our| on_th_bottom|
on_th|middl on_what| onc_and| onc|mor onto|th_floor on|N:core_and on|his on|mor on|mor_tim
on|th_b on|th_bottom on|th_counter on|th_leave-in on|th_menu on|th_motorway on|th_r on|th_stair
on|th_telly on|wash on|wash_up open_and| open|th_door or_U_for| or|DISH_it other|on other|sid
out_b| out_my_P| out_my| out_th_THING| outta| out|at_N:core out|of_th out|yet oven_befor|Nduration
oven_clock_is| oven_is|preheat oven_temperatur| oven_temperatur|i oven_that_is| oven_th|THING
oven_to|N:oven oven_up_to| oven_w| oven|THING_N:oven oven|alway oven|has oven|is_on oven|is_pack
oven|is_work oven|pack oven|to_N:oven oven|to_Ndegrees:oven over_this| over_to|P pair| palaver|
palm|try palm|try_to pan|is past_N:core| peel_th| peel_th|DISH peopl_ar| pet|is_on piec|of
pink_in| pink_so| pink_so|well pink|as pink|at pink|at_all pip|down plan|chang plan|chang_w
plan|dinner plan|dinner_roll plan|got plan|got_in plat_and| plus|U pound_and|fahrenheit pound|and_ounc
pound|for power_went| power|failur preheat_th_other| present|and present|and_correct proper|DISH
pull_for| push_it|back push|th put_you| put|you p| p|m quick_updat| quick_updat|i quit|badly
r_N:core|now rar_this| ray| ready_for_th| ready_it_is| ready_it|is ready_to| refreez| remain|
remind_m_in| remind_m|how reminder| rest_under|THING rest|now_$ rest|of rest|under right_down_to|
right_that| right_that|is right|th_beast right|through ris_yet| ris_yet|so roast_DISH| roast_N:few|
roast_at| roast|in_at roast|is_Nweight roast|went roast|went_in roll_ar| roll_ar|not roll_i|
roll|and_net roll|n roll|n_Nduration run_a_bit| run_at|N:oven run_hot_by| run_m_through| run_out|of
run_that| run_th| r|U r|win_DISH said_N:core|Nduration said_N:some| salt|th salt|th_THING sam_heat|
sam_heat|th sam_is|help sam|as say_it|is say|N:some_U say|grac say|grac_$ scal| scrap|th_roll
sear_N:few_steady| sear_at| sear|at_th seat_and| seat|and_hungry sec_P_Nduration| second_it_touch|
second_it| serv_at_N:core| serv_it_with| serv|Nduration serv|Nduration_later serv|at_N:core
set_it| set_m| set_th_tabl| set|m set|th_oven se|you_in sh_can_not| sh_is|Nweight sh_want|
shellfish|allergy shop_for|Nduration should_hav_been| should|not shout_in|Nduration shov_it_back|
shov_it|back show_N:core_and| show| show|N:core_now show|Ndegrees:core_$ shut_that_alarm| shut_that|
shut_th| shut|up shut|up_$ sh|say sh|still sid_th| sinc|N:few sit_down|to sit|in skip_th_butter|
skip_th_next| skip_that|on slic_my_thumb| slic_th| slid_off| slid_off|th slip|on slip|on_th
slow_flam_Nduration| smok_com| smok|alarm smok|is smok|pour smok|pour_out so_N:few|mor so_THING|
so_my| so_no|THING so_scrap| som_of| som_of|th som_roast_DISH| som|roast som|roast_DISH soup|is
soup|is_on so|no_THING speak|to split|open stand|rib start_on| start_on|th start_to| steady_heat|all
step_away|for step|back still_DISH|solid still_in|th still_raw|insid stir|it stir|th stir|th_DISH
stop_for| stop|for straight_to_THING| straight|to strik|th stuck_in|traffic stuck_on| stuck_th|THING
suggest| supper|is suppos_to_b| sur_i| sur|you sur|you_could swap| switch|th system_is| tablespoon_of|
tabl|by_Nclock tak_a_shower| tak_his| tak_it|out tak_th|DISH tak_th|THING tak_your| taken_it|
taken_it|out taken_th| taken_th|roast taken|th tak|THING tak|a tak|th_THING tak|th_dog talk_to|th
talk|to_th tast|a tell_m_that| tell_m_what| tell_your| tell|him tell|m temperatur_is_at| temperatur_th|
temperatur|Ndegrees:core_$ temperatur|i_hav temperatur|wis th_DISH_a| th_DISH_hav| th_DISH_this|
th_DISH_to| th_DISH_want| th_DISH_w| th_DISH|butter th_Nduration|timer th_THING_it| th_THING_no|
th_THING|board th_THING|slip th_U_U| th_U_and| th_U|of th_afternoon|look th_and| th_cat| th_cat|got
th_colour| th_dog|has th_first_th| th_fir| th_green_DISH| th_guest|got th_high| th_hous|befor
th_ic|water th_lad_ar| th_lad|hav th_loung|every th_middl|when th_moment|i th_next|hour th_other|on
th_other|sid th_oven_th| th_oven_to| th_peopl| th_plan|got th_roast_and| th_roast|in th_roll_and|
th_roll|n th_r|win th_shower| th_tabl|now th_timer|on th_we| than_th| that_Nduration|i that_alarm|up
that_brok_her| that_in|mind that_is_m| that_is_what| that_is|right that_is|when that_it|is
that_piec_of| that_timer|on that_was|my that_was|th that_what| that|it_is that|last_on that|will_b
themselv_so| then_it_is| then_it|is ther_and| ther_in| ther_not| ther_someth|i ther|another
ther|another_way ther|is_no ther|must thes_DISH| they_ar_Nduration| they_ar_still| they_ar|Nduration
they_ar|sat they_had| they_hav|got they|hav they|wer think|i_will third_and| this_THING_it|
this_for| this_hous_and| this_old|th this_whol| this|at this|rental thos_wireless| thos_wireless|THING
through|th_door thumb_it_is| th|DISH_Nduration th|DISH_got th|DISH_it th|DISH_out th|DISH_wer
th|P_do th|THING_go th|THING_is th|THING_pan th|barbecu th|block th|day th|display_is th|family
th|film th|gam th|go th|instant-read th|invit th|joint th|lad_ar th|leg th|littl th|messag
th|middl_shelf th|n th|n_m th|on_th th|other th|oven_back th|oven_on th|party th|phon_is th|reason
th|rest_of th|rib th|roast_out th|sear_is th|step th|tap th|timer th|trivet th|wall th|work
ti_them_back| ti_them| ti_them|back ti_this| till_it_is| till|w tim_do|th tim_it_is| tim_it|
tim_it|is tim_ther_is| timer|Nduration_$ tim|do ti|with to_N:core|whil to_N:few|now to_N:oven_what|
to_THING|no to_boil| to_buy| to_b|DISH to_carv|it to_collect_th| to_do|a to_get|th to_know|th
to_nut_and| to_put| to_r| to_sear| to_walk| to_walk|th tomasz| tonight_at| tonight_at|N:few
tonight|so tonight|so_N:few too_hot_to| too_many_th| too_many|th took_th_THING| too|low too|much_salt
total|N:few_person touch_it|if to|DISH to|N:core_in to|Ndegrees:oven to|P_is to|carv to|dinner
traffic|another traffic|another_Nduration train_is_delay| trim|th_DISH turn_down_to| turn_th|oven
turn|it turn|th_oven turn|them twic| ty|it_$ under|THING_$ undo|that up_at|N:few up_in_th|
up_it| up_it|is up_right| up_to|N:core updat|i updat|i_hav upstair|for up|P_gon up|as up|for_a
up|right_at up|th us_get| us_go|straight us_in|th us_on_N:core| us|on us|start_over w_ar_all|
w_can_not| w_do_it| w_go_to| w_got|N:few w_hav_DISH| w_lik| w_lik|it wait|on_THING walk_m_through|
walk_m| want_her|medium want|his want|it_medium want|m warm_any|plat warm|now warm|th was_N:core|Nduration
was_at|N:core was_my_P| was|Nduration_lat was|U was|i was|my_P was|wrong water_down| water_down|my
water_for| water_for|th way_out| way_out|do way|do_i well_don_for| well_for| well|th went_in_at|
went_on_Nduration| went_up| went|in wer_N:few| what_can| what_did_you| what_do_you| what_is_U|
what_is_th| what_is|Ndegrees:oven what_is|U what_i|hav what_should_i| what_should_th| what_temperatur_is|
what_was_th| what_would| whatever|you what|happen what|will when_do_th| when_do|i when_h| when_it|
when_th_THING| when_th_cor| when_will|th when|is_th wher_should| which_way|do which|is whip|it
whip|it_out why_am| why_am|i why_ar|w why|do will_THING|do will_arriv| will_not_b| will_not|turn
will_want| will|DISH will|do_th will|giv_th will|mak will|tak_th win_in| win_is| win|DISH_with
wis| with_it_and| with_th|U with_th|fat without_a_THING| without|th_DISH with|N:few_THING with|th_U
with|th_oven with|th_roast with|your work|in would_THING| would_you|watch would|say wrong_it|
wrong_it|is w|U w|ar_Nduration w|becom w|br w|br_dinner w|do_it w|eat_Nduration w|eat_at w|go_$
w|hav w|hit w|hit_N:core w|speak_$ yes_it| yes_that| yes|it yes|it_is yet_what| yet|so_they
yet|sorry you_ar_on| you_ar|tell you_can_not| you_can|manag you_do|not you_i_am| you_mind|
you_n| you_put_in| you_put_th| you_set| you_se| you_tak|th you_talk_in| you_talk| you_want|m
your|P_$ your|P_is you|on_speaker you|put_th you|watch_th zip|it zip|it_$ |@0.2 |@102.1 |@106.5
|@114.6 |@128.0 |@148.2 |@18.0 |@27.2 |@28.8 |@32.10 |@36.1 |@47.5 |@48.8 |@5.3 |@56.3 |@57.7
|@71.6 |@74.4 |@76.3 |@77.3 |@81.2 |@81.3 |@82 |@83.2 |@86.0 |DISH_$ |DISH_$_$ |DISH_DISH_U
|DISH_already |DISH_from_th |DISH_is_chop |DISH_is_ready |DISH_it_has |DISH_of |DISH_w_want
|DISH_wer |DISH_would_go |DISH_yes |N:core_and_then |N:core_i_want |N:core_right_end |N:core_that
|N:core_to |N:core_too |N:core_w_ar |N:few_bon_not |N:few_i_hav |N:few_peopl_in |N:few_step
|N:few_that_is |N:few_till_N:few |N:few_tonight |N:oven_for_th |N:oven_what |N:some_U_that
|N:some_so |N:some_th |Ndegrees:few |Ndegrees:oven_convection |Nduration_after_w |Nduration_behind_and
|Nduration_is |Nduration_is_that |Nduration_my_P |Nduration_sooner_$ |Nduration_to_dinner |P_gon
|P_gon_Nduration |P_insist |P_is_and |P_is_vegetarian |P_open_that |P_turn |P_with |THING_N:core_already
|THING_THING_is |THING_THING_on |THING_at_Nclock |THING_from |THING_has_gon |THING_is_split
|THING_is_stay |THING_it_jump |THING_on_$ |THING_pan |THING_w_ar |THING_when |THING_will |U_THING_$
|U_if |U_it_on |U_ther |a_few |a_good |a_littl |a_lot_$ |a_low |a_new |a_pan |a_rest |a_rock
|about_to |afternoon |afternoon_f |afternoon_f_that |again_P |all_and |all_carv |all_gon |along
|amaz |an_alarm |an_oil |and_correct |and_hungry_all |and_kilo_i |and_net |and_on |and_ounc
|and_tail_$ |and_th_U |and_took_it |another_way |ar_N:few |ar_Nduration |ar_Nduration_early
|ar_THING |ar_burnt_$ |ar_hav |ar_in_$ |ar_lat |ar_on_th |as_you |ask_you |ask_you_$ |at_N:core_and
|at_N:few_U |at_N:oven_for |at_Ndegrees:core_$ |at_Ndegrees:some |at_half |at_my |at_onc_and
|b_an |back_N:few |beast |beep_so |beep_so_it |befor_Ndate |befor_Ndate_$ |behind_with |better_$
|better_$_$ |bird |bit |bleed_$ |bleed_$_$ |board_now |bonfir |bubbl_$ |bubbl_$_$ |bus_$ |bus_$_$
|by_Nclock_$ |by_accident |can_eat |can_not_get |can_tak_th |can_us |cancell_so |cancell_so_N:few
|cap |chang_w |chang_w_ar |chatter |check_$ |check_$_$ |chuck_th_DISH |claim |com_Nduration_too
|com_out_yet |com_to_help |com_up_to |convection_$ |convection_$_$ |could_do |crawl |crew |crumbl
|crust |cut_myself_it |dar |day_$ |day_$_$ |deck |degre_$ |degre_$_$ |did_$ |did_$_$ |dinner_roll_homemad
|do_in_plac |do_it_Nduration |do_not_w |do_not_want |do_th_DISH |don_by |don_her |don_you |down_a
|down_at_Nclock |down_for_Nduration |down_for_th |down_it_is |eat_$ |eat_$_$ |eat_a |f_th |faff_about
|fahrenheit_and |failur |few |few_minut |find_th |finish_yet |finish_yet_$ |fir_in |flatmat
|football |for_$ |for_$_$ |for_N:few_of |for_Nduration_and |for_all |for_m_i |for_m_th |for_medium_$
|for_this_$ |for_tonight |forward_Nduration |freezer |from_th_bottom |from_this |gang_is |get_up
|gluten_$ |gluten_$_$ |go_out |go_to_do |god_i |gon_dark |gon_in_th |gon_off |got_in_early
|got_th_butter |grac_$ |grac_$_$ |great |green_DISH_$ |grocer |grow |guest_ar_already |guest_com
|had |hall |happy_with |has_gon_from |hav_N:core |hav_a_THING |hav_been_don |hav_her |hav_land
|hav_not_any |hav_w |help_m_now |her_now |high_do |homework |hot_this |hotter_than |i_$ |i_$_$
|i_am_afraid |i_b |i_hav_slip |i_hop |i_miss_for |i_n_$ |i_ruin |i_ruin_it |i_said_that |i_said_to
|i_say |i_shut |i_shut_th |i_slic_it |i_us |if_that_is |if_they |important |in_Nweight |in_at_N:oven
|in_boil |in_boil_water |in_mak |in_now |in_on |in_th |in_th_front |in_th_loung |in_th_pan
|in_this_THING |in_your |insist |iron |is_N:core_and |is_a_bit |is_act |is_act_weird |is_bad
|is_becom |is_call |is_down |is_driv |is_help_$ |is_i |is_in_th |is_insid |is_it_at |is_it_n
|is_lat |is_left |is_lot_ar |is_no |is_not_finish |is_on_DISH |is_on_wash |is_pink_$ |is_pour
|is_pregnant |is_right |is_ring_$ |is_run_at |is_scream |is_shap |is_starv |is_taken |is_th_DISH
|is_to |is_up_to |is_veggi |is_what |is_work_again |it_DISH |it_all_over |it_at_N:core |it_dangerous_to
|it_don |it_good_and |it_in_th |it_lik |it_no |it_off_$ |it_ok |it_out_for |it_out_of |it_over
|it_say_$ |it_should |it_well_don |it_with_DISH |jim |job_$ |job_$_$ |keep_up |lack |lard |last_th
|lat_on |lat_th |leg_Nweight |let_m_forget |lik_her |list_for |long_it |loo_$ |loo_$_$ |m_an
|m_at_N:core |m_if |m_if_it |m_it |m_my_shop |m_someth |m_th_choic |m_with |mad |mil |minut_$
|minut_$_$ |motorway |mov_to |must_i_do |my_P_from |my_family |my_last |my_last_messag |my_leg
|my_lif |my_mind |my_thumb_open |n_N:few |n_to_rest |needl |never_get |next_i_U |night_in |nor_money
|not_U |not_bloody |not_bloody_$ |not_eat_r |not_for |not_n |not_se |now_do_not |now_in |now_in_th
|number_N:few_$ |of_N:some |of_salt |of_th_oven |of_us |off_Nduration |off_i |off_on |on_N:core
|on_N:some |on_P_is |on_dinner |on_speaker |on_th_hob |on_to |onto_th_floor |our_on |out_DISH
|out_befor |out_for_Nduration |out_how |out_on_th |out_they |oven_THING |oven_alway |oven_back
|oven_di |oven_is_alway |oven_to_N:oven |pac |pack_in |pair_of |palm |peek |peel_$ |peel_$_$
|peel_and |pin |pitch |plan_$ |plan_$_$ |plat_$ |plat_$_$ |point_$ |point_$_$ |practically
|prefer |pretend |problem |put_you |r_U |ran |ready_when |regular |rental |rest_th |rib |rib_of
|rib_with |road |roast_and |roll_ar_warm |rop_in |run_lat |saf_for |salt_per |salt_so |salt_so_early
|salty |say_U |sear_N:few |sear_at |season_th |seat_$ |seat_$_$ |set_this |shut_$ |shut_$_$
|sit_at |sit_ther |som_roast |som_roast_DISH |someth |soon_$ |soon_$_$ |soup_$ |soup_$_$ |sp
|squeamish |stand |steak |step_my |straight_to_THING |street |strong |system |tap |target |team
|tell_you_$ |temperatur_$ |temperatur_$_$ |temperatur_Ndegrees:core_$ |temperatur_is_medium
|temperatur_th_whol |th_DISH_$ |th_DISH_do |th_DISH_how |th_DISH_now |th_Nduration_timer |th_P_to
|th_THING_board |th_THING_not |th_afternoon |th_beast_is |th_begin |th_church |th_cor_$ |th_count
|th_count_down |th_crust |th_dinner_$ |th_dinner_by |th_fan_$ |th_go_$ |th_good |th_guest_$
|th_hall_$ |th_hob_$ |th_ic_water |th_moment |th_moment_$ |th_oven_go |th_oven_n |th_oven_up
|th_paper |th_plan |th_r_road |th_record |th_roast_in |th_roast_out |th_roll_timer |th_schedul_$
|th_shop_for |th_sink |th_small_oven |th_soup |th_str |th_tabl_at |th_til |th_timer_$ |th_tip_of
|th_tong |th_top_$ |th_trim_it |th_truss_$ |th_way_through |th_wedd |th_what |th_win |th_with
|than_N:few |than_i |than_th |that_back_$ |that_door_$ |their_at |them_back |them_in |then_tell
|then_tell_m |ther_crispy |ther_crispy_on |ther_long |they_ar_hav |they_keep |this_U |this_year_$
|thos_$ |thos_$_$ |thread |through_th_DISH |thumb |tim_do |timer_P |to_N:core_i |to_Nclock_$
|to_Ndegrees:core |to_br |to_celsius |to_chill |to_chill_th |to_eat |to_eat_it |to_fahrenheit
|to_heat |to_mak_th |to_pick |to_preheat |to_put |to_serv |to_sit |to_start |to_tak_it |to_their
|to_their_soup |top_off |town |trim_a |truss_$ |truss_$_$ |try_to_DISH |under |up_again_$ |up_at_N:core
|up_for_a |up_from_th |upstair_$ |upstair_$_$ |us_DISH |us_i |vegetarian_th |w_eat_ok |w_get
|w_hav_with |w_said_$ |wait_for_them |wait_on_THING |want_his |want_to |warm_any |warm_th |was_N:few
|was_Nduration_lat |was_lik |watch_th_clock |water_$ |water_$_$ |water_test |week_$ |week_$_$
|well_$ |well_$_$ |went_on |when_th_THING |whil_i_was |whil_w |win |win_DISH |with_DISH_and
|with_THING_$ |with_a |with_everyth |with_th_kiddy |wood |would_say |year_old |yet_$ |yet_$_$
|yet_sorry |you_believ |you_do_$ |you_don |you_think |you_undo |your_DISH
-13 @0.0| @100.4| @103.8| @123.2| @130.7| @138.0| @141| @146.4| @18| @24.2| @29.0| @38.2| @39.1|
@53.6| @56.1| @72| @91.1| DISH_DISH_and| DISH_DISH_thos| DISH_DISH|has DISH_DISH|in DISH_DISH|with
DISH_Nduration|ago DISH_THING| DISH_U_it| DISH_after| DISH_and_it| DISH_ar|peel DISH_ar|ston
DISH_a| DISH_cream_is| DISH_cream|is DISH_cream|on DISH_don_in| DISH_do| DISH_got| DISH_hav|not
DISH_i_hav| DISH_in_a| DISH_in_my| DISH_in|this DISH_it_is| DISH_it_want| DISH_i|hav DISH_my|P
DISH_out_th| DISH_out|th DISH_out|this DISH_thos| DISH_thos|out DISH_too_lat| DISH_w_hav| DISH_will|do
DISH_without| DISH_without|cry DISH|DISH_can DISH|DISH_i DISH|DISH_on DISH|DISH_with DISH|another
DISH|another_Nduration DISH|ar_cut DISH|ar_go DISH|ar_nic DISH|ar_ston DISH|as_well DISH|got_$
DISH|in DISH|in_$ DISH|in_at DISH|is_mad DISH|is_out DISH|roll_$ DISH|th_$ DISH|went_into DISH|went_on
N:core_for_th| N:core_my| N:core_near| N:core_now|in N:core_this| N:core|not N:core|over_N:core
N:core|right_end N:core|when_it N:few_U_on| N:few_and|it N:few_early| N:few_eat| N:few_i_hav|
N:few_in|th N:few_mor_sid| N:few_of|th N:few_peopl_in| N:few_peopl|in N:few_piec_rib| N:few_sharp|U
N:few_show_up| N:few_that|is N:few|DISH_U N:few|THING_no N:few|adult_and N:few|extra_for N:few|her_N:few
N:few|hungry N:few|knot N:few|later N:few|of_them N:few|or_N:few N:few|step N:oven_about| N:oven_about|Nduration
N:oven_for_th| N:oven_on|th N:oven_with| N:oven|for_a N:oven|now N:some_in|th N:some_of| N:some_so|THING
N:some|U_that Nclock_in| Nclock_it| Nclock|and_i Nclock|now_would Nclock|then_$ Ndate_at|N:few
Ndegrees:core_in_th| Ndegrees:core|now Ndegrees:few|insid Ndegrees:oven_hold| Ndegrees:oven_hold|steady
Nduration_ago|it Nduration_ago|ther Nduration_ar| Nduration_befor|dinner Nduration_behind_and|
Nduration_diaper| Nduration_diaper|chang Nduration_from_this| Nduration_how| Nduration_i_hav|
Nduration_later_and| Nduration_later_than| Nduration_lat|get Nduration_timer_and| Nduration|after_w
Nduration|ago_and Nduration|ago_it Nduration|already Nduration|behind_schedul Nduration|countdown
Nduration|of Nduration|off_schedul Nduration|on Nduration|on_for Nduration|to_preheat Nduration|too
Nduration|too_lat Nweight_rib_of| Nweight_rib| Nweight_stand_rib| Nweight|THING_of Nweight|or
Nweight|or_U Nweight|rib_of Nweight|stand Nweight|stand_rib P_ar|set P_do_not| P_eat_Ndate|
P_gon| P_gon|Nduration P_is_com| P_left| P_mad| P_mad|th P_mak| P_non| P_set| P_still| P_want_DISH|
P_want_his| P_will_not| P|from P|got_her P|has P|is_chok P|lik_her P|n_to P|pet P|pet_has P|rang
P|sh_do P|w_ask THING_THING|over THING_U|com THING_and_it| THING_and_w| THING_ar|U THING_cam_out|
THING_do_i| THING_has| THING_hav| THING_in|and THING_is_a| THING_is_now| THING_m_my| THING_my|P
THING_or| THING_over|th THING_say_in| THING_say|Ndegrees:core THING_ther| THING_th|lad THING_will_i|
THING|THING_th THING|a_joint THING|cub THING|for THING|go_$ THING|h_is THING|is_a THING|of_DISH
THING|over_a THING|test THING|to_b U_and|DISH U_and|i U_hav| U_is_go| U_i|am U_no_th| U_no|THING
U_n| U_plan_dinner| U_th_roast| U_they| U_this| U_w_will| U|and_then U|behind U|by_th U|collaps
U|com_let U|for_m U|get_her U|how U|mak_a U|no_th U|not U|say_U U|th_Nduration U|th_dial U|want
^_DISH_still| ^_DISH|n ^_N:core_in| ^_N:core|in ^_N:few|peopl ^_Nduration_on| ^_Nduration|for
^_P_want| ^_P|is ^_P|rang ^_THING_is| ^_THING_it| ^_U_say| ^_U|god ^_^_ar| ^_^_away| ^_^_bad|
^_^_behind| ^_^_dav| ^_^_drop| ^_^_gon| ^_^_got| ^_^_half| ^_^_hav| ^_^_h| ^_^_if| ^_^_it|
^_^_jo| ^_^_lit| ^_^_run| ^_^_schedul| ^_^_school| ^_^_scrap| ^_^_shift| ^_^_tell| ^_^_th|
^_^_traffic| ^_^_wash| ^_^_wher| ^_^_which| ^_after_all| ^_all|right ^_and_then| ^_ar| ^_at_th|
^_away| ^_bad| ^_bad|new ^_behind| ^_bon_ar| ^_convection_is| ^_cook_it| ^_cor|is ^_cut_it|
^_dav| ^_dinner|roll ^_drop| ^_forerib_joint| ^_forget_check| ^_forget_what| ^_forget|check
^_forget|what ^_gon| ^_good|new ^_got| ^_half| ^_hav_not| ^_hav| ^_hold|dinner ^_hot_THING|
^_how_ar| ^_how_is| ^_how_to| ^_h| ^_i_cut| ^_i_did| ^_i_do| ^_i_left| ^_i_told| ^_i_will|
^_if| ^_in|th ^_is_pink| ^_it_went| ^_it| ^_it|n ^_i|could ^_i|cut ^_i|drop ^_i|knock ^_i|tak
^_jo| ^_lit| ^_ok_i| ^_ok_th| ^_option|N:few ^_oven_is| ^_preheat_to| ^_preheat|to ^_pull|th
^_run_Nduration| ^_run| ^_schedul| ^_schedul|green ^_school| ^_scrap| ^_sear|it ^_set_a| ^_set|th
^_shift| ^_small_oven| ^_so_you| ^_so|lik ^_so|my ^_steady_heat| ^_stuck|th ^_switch_to| ^_tak_th|
^_tell| ^_th_light| ^_th_stov| ^_th_train| ^_that|THING ^_ther|ar ^_they_want| ^_th| ^_th|THING
^_traffic| ^_w_ar| ^_w_got| ^_w_n| ^_w_will| ^_warn_m| ^_wash| ^_what_els| ^_what_hav| ^_what_is|
^_wher| ^_which| ^_why_do| ^_w|skip ^_yes_that| a_Nweight|THING a_THING_fan| a_bit_cold| a_bit_of|
a_bit|cold a_bit|off a_buzz_in| a_call_for| a_call| a_fan|oven a_half|THING a_vegan| about|it_is
about|th_guest add_green| add_green|DISH after|this again_in| again|and_it ago|it ago|ther
ago|ther_in aim_for|N:core aim_for|Nclock alarm_for| alarm_is| alarm|in alarm|in_Nduration
alarm|w alarm|w_set all_behind|lik all_don|her all_my| all_on_hot| all_too| all_too|much all|don_her
all|sit all|sit_down all|th all|that_faff already_hav_it| alway|Ndegrees:some am_U|mak am_behind|by
am_go| am_hav| am_i|aim am_out_of| am_still| am|afraid am|back am|do am|go_to am|hold am|i_meant
am|not am|put am|put_th am|run am|skip_th am|so am|sorry an_Nweight| an_Nweight|stand an_extra_N:few|
and_add| and_am| and_can|you and_dav| and_drop_th| and_drop| and_half|th and_i_hav| and_is|it
and_it|is and_my|P and_nobody| and_som| and_tim| and_when| and|a and|am and|am_i and|b and|chill
and|drop and|drop_th and|find and|i_can and|it and|sit and|so and|start_over and|th_roast and|wak
and|wak_m another_N:few| another_helper| another_helper|it another|Nduration_on anyth_i_should|
anyth_i|hav anyth|i_hav anyth|i_n any|mor_$ an|THING ar_all|sit ar_back|on ar_bang| ar_eat|at
ar_go| ar_her_all| ar_in_and| ar_not_do| ar_not|do ar_not|hav ar_th_DISH| ar_w_talk| ar_w_up|
arm_on| arm_on|th ar|Nduration_early ar|arriv ar|burn ar|clean ar|not_don ar|run ar|set ar|set_th
ar|sit_at ar|ston ar|ston_cold as_it| as_it|is as_i| at_N:core_i| at_N:few_and| at_N:few_i|
at_N:oven_for| at_N:some_so| at_N:some|in at_Nclock_it| at_Nclock_i| at_Nclock_th| at_Nclock|Ndate
at_Ndegrees:core|now at_half| at|N:core_i at|N:core_now at|N:few_U at|N:few_i at|Nclock_N:few
at|Nclock_not at|Nclock_w at|hom at|tabl away_for| away|for a|THING_U a|cold a|cut a|good_Nduration
a|leave-in a|leave-in_THING a|nap a|party a|r a|rock a|shout_when a|tent a|tractor b_Nduration|later
b_an| b_at|N:oven b_hav|dinner b_mak| b_sit| b_sit|down b_strain| b_strain|th back_at|Nclock
back_by| back_in_onc| back|by back|from back|in_Nduration back|to_lif bad_off| bad_off|th bear|with
bear|with_m been_at| been_off| been_sat_out| been_stood| beep_it_is| beep_m|in beep|so beep|so_it
befor|dinner befor|dinner_$ beg| behind_a| behind_a|tractor behind|in behind|lik behind|lik_th
behind|th behind|th_clock behind|with_th ben|can ben|can_not bit_cold| bit_cold|Ndegrees:few
bit_is|sort bit_of| bit|cold bit|cold_Ndegrees:few bit|off_th blood_for_this| bon_off| boneless_THING_THING|
boneless_rib| boneless_rib|THING bon|off_and bottom_of_th| breaker| breaker|trip breaker|trip_and
bring|his br|dinner br|dinner_forward bum_on| bum_on|seat burnt_myself_on| butter_on|th butter_so_no|
butter|is_mad butter|is_not buy_for| buzz_in| buzz_in|Nduration by_a| by| b|a b|do b|gon_Nduration
b|silent b|th_cor call_for|Nduration call_m|back call|them cam_U| can_i_hav| can_manag| can_not|mak
can_not|put can_sit_down| can_tak_th| can_w|skip can_you_get| can_you|set cancel_th|roll cancell_so|
can|do_th can|it can|tak_th can|you_imagin can|you_run carv|it_yet cast|iron caught|fir_$ center_it|
center_it|is center_when_w| centr|still centr|still_N:few chang_my|mind cheap|THING_THING check_again|
check_again|and check_it| check_th|THING check|with check|with_th chuck_th_DISH| chuck|th church_for|Nduration
clear|all clear|all_th coat|on_th cold_in| cold_in|th cold|Ndegrees:few collect| com_Nduration_after|
com_after|all com_down_to| com_out_of| com_out| com_through_that| com_to|help com|Nduration_too
com|down com|from_th com|out_$ com|out_yet com|up_to convection|is_run cooker_is| cook|right
cook|right_through could_not|hav could|do could|not counter|smell counter|smell_amaz cream_is|
cream|on cream|on_th cross|it_off cross|that cross|that_off cut_th_DISH| cut_th_bon| c|not
c|not_degre dangerous_to|DISH dead_it| degre_c|not delay|so_P diaper| diaper|chang did_i_forget|
did_not_salt| did|i_forget did|not_finish dinner_Nduration|later dinner_by| dinner_forward|Nduration
dinner_for|Nclock dinner_for|Nduration dinner|at_N:few dinner|back_Nduration dinner|by_Nduration
dinner|in dinner|in_Nduration dinner|n dinner|n_to dinner|roll_homemad dinner|to dinner|up
display|is_blank di|on_m do_a_THING| do_i_hav| do_i_ti| do_i|hav do_not_bother| do_not_talk|
do_not|U do_not|do do_not|eat do_not|lik do_not|plan do_not|want do_without| do_without|th
do_your| dog_and| dog|out_$ don_i_know| don_in|tim don_that| don|with_th don|with_that door_to|
door_will|not doorbell_is_gon| doorbell_they_hav| doorbell|is doorbell|is_gon down_Nduration|for
down_on| down_to|N:oven down|Nduration_earlier do|fahrenheit do|next_$ do|not_believ do|not_know
do|not_open do|not_talk do|this_$ do|you_know drop_that_alarm| early_and| early_at| eat_Ndate|at
eat_Nduration|earlier eat_at|Nclock eat|DISH_in eat|anyth eat|at eat|by_Nclock eat|our eat|our_christma
electric_is_back| element| els_could| els|could_i enamel|roaster end_N:core|right enough_for|
enough|talk enough|talk_$ even|if even|w every_last|DISH everyth_go| everyth_tak_m| everyth_tak|
everyth|for everyth|under everyth|under_control every|slic extra_N:few| fac_is| faff_about|it
family_is| family|is fan_off|so fan|is fan|off fan|oven_$ fat_is_on| fat_is| fat|THING fat|THING_$
few|minut finish_at| finish_with| finish|with_th flam_for| flam_for|Nduration flam|Nduration
flam|Nduration_back for_Nclock_and| for_Ndegrees:core_on| for_Nduration_and| for_Nduration_diaper|
for_Nduration|and for_how| for_this|crowd for_th|cor for_to| forerib_N:few_bon| forever_so|
forever_so|i forget_th| forget|check forget|check_th forgot_th| forgot_to| for|Nclock_on for|Ndate
for|help for|m_so for|my_pregnant for|this for|what fridg|at_Ndegrees:some from_this| from_this|second
from_th| from|N:few_to from|th_pan full|of f|at f|at_Nclock gav_m| gav_m|a get_her|Nduration
get_ic|back get_th|DISH get|th_DISH giv_us_a| giv|it giv|us glass| glov_is_on| gluten|for gluten|is
gluten|is_out go_on_th| go_out_Nduration| go_to_th| go_to|skip go_to|wait gon_and| gon_for|
gon_for|Nduration gon_power| gon_power|cut gon_they_ar| gon_to_extra| gon_up_to| gon|dark gon|they
gon|they_ar good|new got_N:few|out got_a|Nweight got|N:core_$ got|a got|her got|th_THING go|back_N:few
go|down go|in_th go|to_go grab_th_pan| grab|th grey_all| grey|all_th grow| guest_ar_Nduration|
guest_ar|Nduration guest|ar_Nduration guest|ar_run guest|com_Nduration guest|hav_com h_can|not
h_has_been| h_has|got h_is|N:few h_want| half_DISH_in| half_th_DISH| half|THING half|THING_THING
hanna| hanna|is happy|with has_been_off| has_been_stood| has_com|back has_gon|in has_gon|to
has_it_with| has_reach|N:core haul| hav_U|th hav_a_Nweight| hav_another_helper| hav_been_in|
hav_chang_my| hav_drop_th| hav_drop| hav_gon_power| hav_gon| hav_got_to| hav_it_medium| hav_it|out
hav_left| hav_miss|th hav_not_carv| hav_our_rar| hav_run_out| hav_salt_th| hav_salt| hav_to_DISH|
hav_to_b| hav_w_got| hav|THING hav|dinner hav|dinner_at hav|don hav|got_an hav|got_it hav|her
hav|miss_th hav|no_U hav|no_cream hav|pick hav|pick_up hav|roast hav|said hav|salt hav|salt_it
hav|seen hav|th_THING heat_is| heat_up| heat|at heat|th heat|up_to help_m|with helper_it_is|
help|m_with her_N:few|still her_Nduration_ago| her_Nduration| her_all| her_all|N:few her_at|N:oven
her_a| her_second| her_so| her_th_rest| her|Nduration_after her|tablet her|throat himself|
his_well| his_well|don hold_at|N:core hold_dinner_for| hold_on|a hold|steady holler_when_that|
hot_by|N:some hot_to_start| hot|THING_com hot|by hot|do_th hot|dog hot|fat_splash hot|now hous|at
hous|at_all how_THING_a| how_can_w| how_can| how_can|w how_hot|do how_many|DISH how_many|minut
how_much_of| how_pink|will how_warm|must how|do_you how|hot_do how|many how|warm h|got h|is
h|was i_am_go| i_am_hav| i_am_still| i_am|afraid i_am|back i_am|do i_am|hold i_am|not i_am|put
i_am|run i_am|so i_am|sorry i_at| i_can|do i_do|it i_forget| i_forgot_to| i_hav_lost| i_hav_salt|
i_hav|put i_hav|salt i_n_th| i_n_to| i_rop_in| i_said_N:few| i_said_to| i_said|it i_tak_it|
i_tak| i_tell|you i_thought_i| i_ti| i_took_out| i_us| i_us|THING i_would|P ic|back ic|back_in
idea_how| if_ther|is if_they| if_they|ar if_you|do if|they_ar in_Nduration_and| in_Nduration_to|
in_a_half| in_at|Nclock in_coat_on| in_her|for in_her|throat in_my|P in_onc|it in_th_other|
in_th_thickest| in_this| in_this|hous in_th| in_th|car in_th|garag in_with| in_your| includ_N:few|
includ_N:few|DISH internal_temperatur_is| inverter| in|Ndegrees:some in|degre_$ in|old in|old_money
in|som_DISH in|th_car in|th_loung in|th_other in|th_sink is_N:few_sharp| is_N:few|less is_N:some|
is_THING_U| is_U|new is_all_too| is_an_Nweight| is_and| is_back|to is_bring|his is_by| is_dead_it|
is_delay|so is_down|to is_eat|DISH is_full| is_giv_m| is_gon| is_gon|they is_help|m is_hit|N:core
is_hot|now is_in_my| is_in_th| is_it| is_it|tim is_lot_ar| is_lot|ar is_not|great is_offer_to|
is_on_and| is_pack| is_pass| is_put| is_slip| is_smok_pour| is_tent| is_th_N:few| is_ther_a|
is_ther|someth is_th|roast is_th|temperatur is_too_much| is_too|short is_to| is_turn| is_way|over
is_without| is|N:few_mor is|Ndegrees:core_$ is|U_in is|bleed is|coeliac is|conk is|conk_out
is|expect is|fre is|happy is|it_saf is|my_roommat is|not_com is|on_a is|out is|preheat_$ is|rar_fin
is|raw is|shot is|th_temperatur is|th_way is|ther_any is|ther_someth is|to is|vegan is|way
is|your_P it_N:oven| it_Nclock|now it_all_on| it_at_N:few| it_beep| it_beep|so it_cam|out it_down_to|
it_do|not it_good| it_hit| it_is_N:oven| it_is_at| it_is_tent| it_is|still it_jump| it_medium|instead
it_must| it_on_th| it_on| it_out|to it_out|yet it_rest|for it_right| it_saf_to| it_till| it_up|now
it_want|Nduration it_what| it_with|everyth it_would| it|N:oven_or it|Nduration_$ it|Nduration_later
it|all it|already it|burn_in it|com_along it|from_th it|get it|i_drop it|is_already it|is_and
it|is_hot it|is_my it|is_sat it|is_under it|lumpy it|rest_for it|through it|tim it|uncover
it|was_at it|whil it|will_not it|with_DISH i|aim i|aim_for i|am_don i|am_gon i|b i|com i|hav_a
i|hav_begun i|hav_burnt i|hav_got i|hav_no i|hav_pull i|n_to i|remov_it i|switch_th i|tell_you
i|think_i i|trim i|trim_th i|us i|want_th i|work i|would_say jaysus|th jaysus|th_pan joint_in|
joint|in jo|will_handl keep_an_THING| kidney| kindly_includ_N:few| knock|it know_it| know_th_second|
lad|hav_land last|th lat_on| lat|get lat|get_start lat|now lat|so law_they_ar| lay_th| lay|th
leav|it leav|th left_end_N:core| leftover_ar| leg|THING leg|THING_Nweight leg|of_THING let_th_cat|
let_us_hav| let_us_mak| let_us|hav let|us li_down| lif_is_too| light_ar_back| lik_it|lumpy
lik_you| lik_you|said lik|Nduration lik|Nduration_ago lip| lip|ar lip|ar_swell load_of| long_as_you|
long_has_it| long_till_w| long|can_it long|do_it lost|Nduration lot_hav| low_flam_for| lowest|
lunch_at| m_and_N:few| m_a|shout m_know|at m_my|shop m_to|turn m_when_th| m_with| mak_DISH|DISH
mak_it| mak_it|Nduration mak_th| mak|th_DISH many|DISH many|minut mass| measurement| medium_for_U|
medium_rar_and| medium_rar|for medium|rar_ok meet_at| meet_at|N:core middl_and| middl_is_at|
middl|of_th mik|and mik|and_deb mind|out mind|out_hot min|is miss_that_on| miss|for mor_sid|
mor_sid|DISH mor_than| most|of_them mov_dinner|up mov| mov|dinner_to mov|it_to much_of| much_salt|in
must_away_for| my_P_has| my_THING_it| my_U| my_arm_on| my_cooker| my_oven_has| my_phon|is my_roommat|
myself_on| myself_on|th my|THING_say my|U_is my|mind my|oven_is m|N:few_for m|a_timer m|again_$
m|at_th m|back_in m|da m|da_will m|missus m|missus_will m|when_Nduration m|when_th n_to|eat
ne'er_a_THING| never_got| never_own| never_us| new_P_so| new|P next_i| nip_to_th| nip|to no_DISH_it|
no_DISH|after no_THING_no| no_THING|to no_gluten| no_gluten|for no_n_to| no_power_in| no_they_ar|
no_tim| no_w_ar| no_w| nobody_is_eat| not_any|THING not_b_mak| not_b_strain| not_carv|it not_clean|
not_do|th not_eat|THING not_eat|anyth not_i|am not_start_th| not_start|th not_trust|th not|great
not|hear not|in not|on not|plan not|plan_for not|risen not|salt not|salt_it not|ther_yet not|too
not|want not|warm_any now_i|hav now_they| now|i_am now|in now|in_th now|w no|THING_left no|bon_$
no|less nudg|th_whol nut_sh_is| n|m n|th of_DISH_th| of_N:few|so of_her| of_th_even| of_th|oven
of_top| of_top|THING of_us_and| of_us_in| off_th_THING| off_th_roll| off_to| off|at_th off|in_th
off|with_th of|THING of|THING_now of|U_$ of|a of|th_guest ok_in| ok_th_THING| ok|P ok|to_eat
old| on_ar| on_hot|dog on_slow_flam| on_slow| on_th_middl| on_th|back on_tim_m| on_to|N:oven
on_with| onc_it|is on|our on|out_$ on|seat on|th_board on|th_instant-read on|th_joint on|th_phon
on|th_second on|th_wet or_DISH_it| other|room our_P|got our_rar| our_rar|thank our|P our|oven
out_DISH| out_Nduration|i out_at|Nclock out_a| out_befor_it| out_befor|it out_for|Nduration
out_hav| out_hot_THING| out_it|is out_they_ar| out|and out|oven out|this out|this_year out|to_minut
oven_THING_say| oven_and_th| oven_down| oven_is_now| oven_on_to| oven_run|N:some oven_ther|
oven_to_N:oven| oven_to|Ndegrees:oven oven_was| oven|back oven|down_to oven|is_at oven|now_$
oven|temperatur_i over|a_THING over|th_plac own_for| own_for|Nduration pan_i| pan|gon pan|gon_up
pass_on| pass_on|that pass|N:core pat|it pat|it_dry peak| peak|at peak|at_N:core peel_DISH_without|
peopl_in| peopl|in person_will_b| phon|call_from phon|to pick_th| pick_up_th| pick_up|a pick|th_P
piec_rib| piec_rib|with pink|in_th pink|will plan_dinner| plan_dinner|roll plan|on plan|on_N:few
plan|sinc plan|sinc_Nduration plan|to plat_ar| plus_N:few_U| pop_out| pop_th|roll power_in|
power_in|th pretty_bad_off| pull_in| pull|temperatur put_in_th| put_in|th put_th|oven put_you|on
put|a put|th_THING put|th_whol put|that put|them put|your quarter|to quick_th_oven| quick|on
quick|updat_i r_DISH|with r_N:core_now| rar_for| rar|for_all rar|thank_you rather_than| reach|Nduration
reach|Nduration_lat read|N:core_now repeat|that_$ replac| rest_ar| rest_of| rest|for rest|under_THING
rib_of| rib|Nweight rib|THING right_DISH| right_for|my roast_cam_out| roast_has| roast_is|season
roast|DISH_has roast|hit roast|hit_N:core roll|and_bon roll|and_p roll|ar_not roommat| run_a|
run_hot|by run|N:some run|Ndegrees:some run|a run|a_bit run|behind run|lat r|DISH_$ sack_that_step|
saf_to| saf| said_to| said|that said|that_$ saignant|is saignant|is_for salt_th| salt_th|THING
salt|all salt|and salt|in salt|in_th sam_as| sam_is| sat_down_and| sat_on_th| sat_on| sat_on|th
saw| say_N:some|U say_in|Nduration say|N:core_i say|on say|on_th say|that_again scald|my_arm
sear_at_th| sear_i| sear|on sear|on_all second|it_touch serv_N:few|later serv_at|N:core serv_it|N:oven
serv|at serv|it_pink set_a|Nduration set_th| set_to|N:oven set|a set|an set|for sh_can|not
sh_has_got| sh_is|read sh_still| sh_want_her| sharp|U sharp|U_th shift|everyth shift|everyth_by
sho_off| shop_for| shop|for_a shop|had shop|had_no should|hav should|i_turn shout|at shout|if
show_N:core|now show_up|so show|N:core_and shut_th|door shut|that_alarm sh|do sid|DISH_th simpl_DISH_will|
sinc|N:few_$ singl_DISH_in| sirloin_Nweight|or sit_at_Ndegrees:core| sit_at| sit_down_is| sit_down|Nduration
sit_out| sit|down_at skip_th| skip| skip|this slid_th_THING| slip_and_half| slip|and_half slow_flam|
slow_flam|Nduration slow_today|Nduration slow|then_a small_oven|set smok_pour| smok_pour|out
snow|is so_P| so_cross| so_do|not so_i_hav| so_it|is so_i|can so_mak| so_my_THING| so_serv_N:few|
so_w_ar| so_watch| someth_in_her| someth|to sorry_that| sous| so|P so|THING_is so|w_want so|watch
so|what_am so|you_no stand_rib|with start_a_Nduration| start_a|Nduration start_th|DISH start|then
start|then_drop starv_let_us| steady|heat_all steak_medium| steak_medium|rar still_work| still_work|on
stop_that|timer stop_th|Nduration stov|is straight|from straight|from_th straight|in strain_th|
strain_th|DISH strik|th_DISH strik|that_$ str|in_th stuck|on supper_at|Nclock supper_is_at|
system|is_shot tabl_by| tabl_by|N:few tabl_for| tablespoon| tablespoon|of tabl|already tak_th_bin|
talk_m_through| talk|Nduration talk|too talk|too_much teddy| teddy|is tell_th| tell_your|P
tell|m_th tell|th tell|your_P temperatur_do| temperatur_for| temperatur_has| temperatur_i|
temperatur_of|THING temperatur|am temperatur|am_i temperatur|do temperatur|do_i temperatur|for
temperatur|now text_Nduration| text_Nduration|lat th_DISH_do| th_DISH_go| th_DISH_is| th_DISH_nobody|
th_DISH_no| th_DISH|already th_DISH|another th_DISH|no th_DISH|off th_DISH|this th_DISH|yes
th_N:few_rib| th_P_n| th_P|ar th_THING_and| th_THING_back| th_THING_has| th_THING|bag th_THING|with
th_U_for| th_bon_off| th_box| th_cast| th_center_it| th_centr|still th_cheap| th_cheap|THING
th_counter|smell th_crowd| th_door_and| th_electricity| th_even| th_even|w th_floor_and| th_guest_hav|
th_heat|up th_hous|at th_ic| th_leave-in| th_measurement| th_middl_and| th_middl|shelf th_missus|
th_needl| th_other|room th_oven_i| th_oven_ther| th_oven|back th_oven|di th_pan|gon th_peopl|hav
th_phon|to th_plan|sinc th_plat|ar th_rest_ar| th_roast|hit th_roll_ar| th_sear|is th_second|it
th_stov|is th_tabl_by| th_tabl|already th_th_with| th_thickest| th_th|say th_timer_on| th_timer|her
th_toddler| th_train|is th_wash| th_whol|th th_with|th than|N:few than|i that_THING|is that_alarm|w
that_bit_is| that_faff_about| that_is_N:core| that_is_when| that_is|P that_is|it that_phon|
that_phon|call that_roast| that_step|off that_w_hav| that_was_my| that|THING_is that|is_N:few
that|phon that|phon_call that|roast_is that|work their|N:few their|N:few_of them_on| them|ar_her
them|hav_turn then| then|a ther_Nduration| ther_a| ther_is|a ther_someth_i| ther|Nduration_stop
ther|ar_N:few ther|has ther|is_fir ther|someth ther|w ther|w_go they_ar_all| they_ar_not| they_ar|arriv
they_ar|her they_wer| they_will_b| they_will_reach| they_will|b they|ar_still they|com_Nduration
they|had they|want they|will_not this_on|is this|crowd this|hous this|second thos_and| thos|out
through_for| through_that|is throw_that| th|DISH_THING th|DISH_from th|DISH_must th|DISH_no
th|DISH_now th|DISH_off th|DISH_sh th|DISH_want th|P_and th|THING_b th|THING_cam th|bairn th|best
th|bon th|bon_ar th|cat th|doctor th|dog th|door th|end th|garag th|lad_is th|left th|lower
th|missus th|oven_N:oven th|oven_di th|record th|roast_DISH th|roast_and th|roll_in th|roll_timer
th|say th|shop_list th|station th|twin th|we_on th|whol_th tim_do_th| tim_m| tim_m|N:few timer_for_th|
timer_for| timer|go timer|her timer|it timer|it_is ti|it_already to_DISH_th| to_N:oven_about|
to_N:oven_lik| to_N:oven|fan to_b_N:some| to_church_for| to_collect| to_eat|Nduration to_extra|
to_extra|tim to_get_in| to_get| to_keep| to_m|in to_serv|it to_start|then to_tell| to_that_phon|
to_that|phon to_th|THING to_turn_th| to_your| today|Nduration today|Nduration_behind tom|is_lot
tonight_and| too_lat|now took_forever_so| took_her| took_her|out took|m too|salty too|short
total_N:few_person| total_N:few| to|DISH_it to|N:few_$ to|N:oven to|boil to|eat_at to|f to|him
to|know to|plan to|plan_$ to|run to|skip to|temperatur traffic| train|is_delay trim_th_fat|
trim|it trust_this|THING trust|th trust|th_THING turn_down| turn_th_timer| turn_th|timer turn_up|early
turn|it_down turn|up twic_as_long| ty_it_up| up_P_gon| up_by|N:some up_i_am| up_to|temperatur
upstair_for| up|by up|now up|to up|when_it us_DISH| us_aim_for| us_and| us_eat_Nduration| us_eat|
us_for| us_hav| us_in| us_it| us_i| us_mak| us_start|over us|N:oven_$ us|do_it us|hav w_ar|do
w_ask| w_do_not| w_eat_i| w_eat|our w_get_to| w_get| w_go|to w_hav|DISH w_hav|pick w_hit| w_hit|N:core
w_n|DISH w_on| w_start| w_talk| w_talk|Nduration w_up| w_up|to wak_m_in| want_it_at| want_to_b|
want_to|know want|Nduration want|it_rar want|th_DISH warm_must_b| warm|must warm|must_b warn_m|
was_N:core_at| was_my| wash_up|and wash|up was|N:core_in was|N:few was|in was|so way|over well|don_for
went_in_th| went_out_at| went|out what_am_i| what_ar|th what_ar|you what_could| what_hav|i
what_internal| what_internal|temperatur what_is_a| what_i|said what_temperatur|am what_to|
what_to|do what_w| what|do_you what|els what|hav_i what|is what|is_th what|would_you when_is|th
when_it_r| when_that| when_that|roast when|do_i when|is_it when|will whisht_ther| whisht_ther|Nduration
who_do| who_do|not who_has|got whol|gang whol|street why_is|it why_is|th will_b_hav| will_hav_th|
will_it_b| will_mak| will_never| will_reach| will_reach|Nduration will|com will|hav will|hav_their
win_DISH|with with_th| with_th|THING with_th|sear without|DISH_my without|cry without|cry_$
with|everyth work|again would_P_to| would_i| would|P would|y wrong|THING_$ w|ar w|ar_preheat
w|can_miss w|eat_our w|hav_a w|n w|sit_down w|skip_this yank| year_it| year_old| yell_at| yes_so|
yet_it_is| you_can_manag| you_giv| you_had| you_hav|got you_plan| you_want_m| your_own_for|
your|coat you|can_mak you|can_not you|check you|could_not you|do_th you|had you|plan you|put_in
you|set_Nduration you|speak |@1.1 |@1.3 |@100.4 |@105.3 |@109.0 |@110 |@113.2 |@123.0 |@124.3
|@130.0 |@136.3 |@139.2 |@139.9 |@144.7 |@21.3 |@23.2 |@25.4 |@28.2 |@28.4 |@35.1 |@36.3 |@56
|@57.5 |@61 |@64.5 |@68 |@7 |@77.0 |@82.3 |@87.1 |@92.0 |@96.3 |DISH_DISH_for |DISH_DISH_hav
|DISH_and |DISH_and_th |DISH_cream_on |DISH_for_N:few |DISH_instead_of |DISH_must |DISH_must_b
|DISH_my_guest |DISH_so_w |DISH_want |DISH_what_is |DISH_with_it |N:core_Nduration |N:core_and_it
|N:core_what_is |N:core_whil_rest |N:few_and_it |N:few_do |N:few_hav |N:few_mor_th |N:few_what
|N:few_what_is |N:oven_or_so |Nclock_DISH |Nclock_N:few |Nclock_what |Ndegrees:core_and |Ndegrees:core_insid
|Nduration_ar |Nduration_away |Nduration_befor |Nduration_behind_i |Nduration_earlier_than
|Nduration_later_and |Nduration_stop |Nduration_stop_th |Nduration_tell |Nduration_too |Nduration_too_lat
|P_got |P_is_$ |P_is_N:some |P_is_P |P_is_allergic |P_is_bring |P_so_N:few |P_want_DISH |THING_Nweight_with
|THING_again |THING_all |THING_ar_cover |THING_back_Nduration |THING_cam |THING_cam_out |THING_com
|THING_com_through |THING_could |THING_could_i |THING_cream_$ |THING_is_Ndegrees:few |THING_left
|THING_my_P |THING_of_DISH |THING_will_i |U_and_nobody |U_how_many |U_sh |U_th_gam |U_want
|a_drop_of |a_nic |a_proper_THING |a_rest_$ |a_second_tim |a_singl |adult_and_N:few |after_all_so
|after_w |against_th |against_th_THING |ago_it |aim_for_$ |all_$ |all_$_$ |all_over_$ |all_sat
|all_sat_down |all_sid_$ |all_th_timer |allow_to |alway_do |am_don |am_gon |am_gon_for |and_deb
|and_deb_ar |and_do_th |and_half_th |and_it_will |and_nobody_els |and_wak |and_wak_m |another_Nduration_then
|any_mor_$ |any_plat_$ |anybody_$ |anybody_$_$ |anymor_$ |anymor_$_$ |ar_U_is |ar_at_th |ar_cut
|ar_french_$ |ar_go |ar_nic |ar_nic_and |ar_out_$ |ar_preheat |ar_ready_$ |ar_sit_down |ar_ston
|ar_ston_cold |ar_swell |ar_swell_up |ar_trim_$ |as_long |as_per |at_N:core_$ |at_N:oven_i
|at_again |b_a |b_ready_$ |back_N:few_$ |back_from |back_in_onc |back_on_$ |bairn |bast |beauty
|beep_it |beep_it_is |befor_Nduration_$ |befor_it_go |bit_and |blank_$ |blank_$_$ |bob_is |bon_and
|boot |bought_th |box |breath |bring |broken_$ |broken_$_$ |burn_in |burn_in_th |by_Nduration_$
|call_$ |call_$_$ |call_from_work |can_help_till |can_i_ask |can_mak |can_mak_with |can_miss
|can_miss_that |carv_$ |carv_$_$ |carv_and |cast_iron |cast_iron_THING |choic_$ |choic_$_$
|cold_Ndegrees:few |cold_i |collaps_$ |collaps_$_$ |com_along_fin |com_let |com_let_us |com_out_it
|com_through_that |conk |conk_out |cream |cream_$ |cream_$_$ |cross_that |cross_that_off |cupboard
|da_will |delay_$ |delay_$_$ |delay_so |delivery |diaper |did_not_catch |dinner_back_Nduration
|dinner_forward |dinner_they |distract |do_DISH_DISH |do_i_pull |do_if |do_it_n |do_not_believ
|do_not_own |do_th_oven |driv_$ |driv_$_$ |dry_$ |dry_$_$ |eat_Ndate |eat_THING |eat_by_Nclock
|eat_our |eat_our_christma |els_$ |els_$_$ |end_is |extra_for |fac_is |fat_splash |fat_splash_on
|fin_for |finish_THING |fit_$ |fit_$_$ |for_Nduration_$ |for_Nduration_i |for_a_we |for_a_whil
|for_all_of |for_help |for_it_or |for_medium_rar |for_my_pregnant |for_them_$ |for_to |forgot
|fork_in |fre_$ |fre_$_$ |fresh_THING |from_oven |from_th_fridg |gang |gas_$ |gas_$_$ |get_her_$
|get_her_Nduration |get_start |get_start_myself |gnaw |go_again |go_again_$ |go_down |god_$
|god_$_$ |gon_and |gon_up_in |good_Nduration |got_Nduration |got_a_leave-in |got_no |grab_th_pan
|gram |grand_$ |grand_$_$ |green_DISH_nobody |h_want |halfway |halfway_$ |halfway_$_$ |hamish
|hamish_is |happen_$ |happen_$_$ |has_arriv |has_gon_up |has_had |has_left |has_to |hav_$ |hav_$_$
|hav_a_fan |hav_begun |hav_cut_myself |hav_fallen |hav_finish |hav_got |hav_got_th |hav_had
|hav_it_without |hav_miss |hav_not_kept |hav_pull |hav_rung |hav_shown |hav_shown_up |hav_th_DISH
|hav_their |hav_their_at |hear_you |heat_$ |heat_$_$ |heat_all |heat_all_th |help_m_$ |her
|her_so_far |him_h |hot_do_th |hot_for_th |hous_is |hurt |i_U_it |i_am_still |i_am_wait |i_did_$
|i_forget |i_hav_chang |i_mak_th |i_meant_to |i_n_for |i_pull |i_put_in |i_reckon |i_said_$
|idea_how |if_i |if_they_ar |in_$ |in_$_$ |in_U_of |in_charg |in_charg_of |in_flam |in_his
|in_law_grab |in_no |in_th_bottom |in_th_center |in_th_shower |instead_and |is |is_N:core_what
|is_Ndegrees:core_$ |is_Nduration_lat |is_P_is |is_U_ther |is_after_reach |is_an |is_ask_how
|is_at_Nclock |is_blank |is_bring_her |is_burnt |is_collaps |is_com_after |is_dead_$ |is_delay_$
|is_expect |is_finish_and |is_fir |is_fir_in |is_go_to |is_gon |is_gon_they |is_jump |is_jump_all
|is_look |is_lot_hav |is_mad_$ |is_not_com |is_not_ther |is_on_N:core |is_on_fir |is_out_for
|is_pass |is_raw_in |is_read_Ndegrees:core |is_ready_it |is_run_Nduration |is_sat_down |is_season
|is_shot |is_starv_let |is_stuck |is_stuck_in |is_tak |is_th_way |is_up_at |is_warm |is_your
|it_N:core_$ |it_already |it_at_N:few |it_b |it_back_to |it_down_to |it_for_th |it_go_$ |it_how_long
|it_look_$ |it_medium_rar |it_out_$ |it_saf |it_saf_to |it_till_N:core |it_touch |it_uncover
|it_uncover_overnight |it_w |it_without |itself_$ |itself_$_$ |lad_is |lad_is_brought |last_DISH
|lat_and |lat_can |later_than |learn |leather_$ |leather_$_$ |leave-in_THING |left |less_$
|less_$_$ |lick_th |lik_last |lik_last_year |lik_th_cow |loaf |lodger |longer_$ |longer_$_$
|lost_N:few |m_N:some |m_a |m_about |m_about_th |m_again |m_and_N:few |m_how |m_so |m_som |m_th_shop
|m_th_whol |m_when |mak_U |man_is |mean_$ |mean_$_$ |minut |missus_will_not |mix |moment |mor_than
|mor_to |mor_to_th |morn_$ |morn_$_$ |mov_to_Nclock |much_$ |much_$_$ |much_salt |my_THING_and
|my_arm_what |my_roommat_dev |my_sho |my_sho_$ |n_longer_$ |n_not |n_th |n_to_get |nicely |nip_out
|no_THING_left |no_flam |no_pink |no_second |not_DISH_it |not_U_$ |not_b |not_brown |not_catch
|not_degre |not_degre_f |not_finish_scrap |not_get |not_got_to |not_hav_nut |not_hear |not_know
|not_n_to |not_open |not_open_th |notch |now_on |now_would |now_would_you |nut_$ |nut_$_$ |of_$
|of_$_$ |of_Nduration_$ |of_THING_Nweight |of_cream |of_th_U |of_th_fridg |of_them_$ |off_DISH
|off_N:few |off_THING |off_schedul |off_so_it |off_th_list |off_th_menu |old_money |old_th
|on_Ngas-mark |on_all_sid |on_fir |on_for_th |on_his |on_now_$ |on_our |on_th |on_th_b |on_th_motorway
|on_th_sticker |on_track |on_was |on_with |onc_$ |onc_$_$ |open_Nduration |or_near |ought |ought_to
|our_christma |our_christma_dinner |out_P |out_at_Nclock |out_for_m |out_hot_THING |out_in_hiv
|out_of_U |out_yet |outta |oven_door_open |oven_run_Ndegrees:some |over_a |over_it_$ |overwhelm
|parchment |past_medium |peopl |pet_has |pet_has_U |pick_up_$ |pick_up_an |plac_and |plan_for_it
|prov |prov_Nduration |pull_this |pull_this_at |quickly |quiet_$ |quiet_$_$ |r_THING |rang_h
|rang_they |rar_fin |rar_fin_for |rar_ok |raw_THING |raw_THING_in |read_N:core_now |ready_$
|ready_$_$ |reason_w |reheat |remain |remov_it |remov_it_from |rest_$ |rest_$_$ |rest_for |rib_$
|rib_$_$ |rib_of_THING |right_end |right_end_N:core |roast_DISH_$ |roaster |roll_homemad |roll_in_to
|run_N:some |run_N:some_hot |said_N:core |sak |salt_it_all |sat_at |sat_down |say_N:some |say_U_tenderis
|say_and |sear_N:few_steady |sear_in |second_on_th |sh_can_do |should_th_oven |show_Ndegrees:core
|silent |singl |sit_at_th |sit_in |sit_on |skip_this_$ |slip_and |slip_on |slip_on_th |smell_amaz_in
|so_P |so_P_will |so_far_bad |sock_in |som_DISH_roll |somehow |somehow_$ |somehow_$_$ |someth_to
|sous |stand_rib_with |still_N:few |still_N:few_rib |still_at |still_good |still_park |stir_th
|stir_th_DISH |stov |str_in_this |stuck |stuck_th |suppos_to_b |swell_up |tabl_salt |tail |taken_out
|teaspoon |tell_$ |tell_$_$ |temperatur_i |temperatur_i_hav |templ |text_Nduration |text_Nduration_lat
|th_DISH_after |th_DISH_already |th_DISH_nobody |th_DISH_on |th_DISH_ready |th_DISH_roll |th_DISH_ther
|th_DISH_timer |th_DISH_yet |th_THING_with |th_U_for |th_board_$ |th_centr_still |th_clock_noth
|th_counter_$ |th_cousin |th_even |th_fat_cap |th_fat_end |th_floor_and |th_hous_at |th_loung
|th_loung_every |th_n |th_n_m |th_other_$ |th_other_room |th_oven_back |th_oven_it |th_pan_$
|th_pan_is |th_pass |th_reason_for |th_sear |th_second_shelf |th_shop_$ |th_snow |th_start
|th_stov |th_temperatur |th_th_$ |th_timelin_$ |th_timer_her |th_traffic |th_trim_$ |th_trivet
|th_way_no |th_wet |th_wet_floor |th_window_$ |thank_you_very |that_$ |that_$_$ |that_alarm_up
|that_down |that_faff |that_faff_about |that_off_$ |that_on |that_roast |that_work |them_DISH
|them_out |then_drop |then_drop_it |ther_any |ther_in_th |ther_someth |ther_yet |thes_DISH
|thick |think_i |third_$ |third_$_$ |til |timer_on |to_$ |to_$_$ |to_N:core_$ |to_N:oven |to_N:oven_about
|to_N:oven_and |to_N:oven_at |to_N:oven_for |to_N:some_$ |to_b_had |to_dinner_$ |to_lif |to_minut
|to_minut_ago |to_preheat_th |to_pull |to_pull_it |to_that_phon |to_walk |to_walk_th |to_you_$
|told_m |too_salty |topsid |tractor |train |trim_$ |trim_$_$ |trim_th_DISH |trip_and |trip_and_everyth
|twin |ty |uncover |under_N:core |under_THING_$ |under_control |under_way |undo_that_i |up_after
|up_early |up_to |up_to_room |updat_i |updat_i_hav |upstair_for |us |us_a |us_on |us_w |w_U
|w_ask_is |w_do_it |w_go_th |w_set |w_set_for |want_his_well |warm_any_plat |warm_th_roll |was_Nduration
|was_not |wash_up_$ |watch_for |water |we_on |weigh_Nweight |weird |went_in_$ |went_into_th
|went_out |what_$ |what_$_$ |when_Nduration_is |when_i_tak |when_th_roast |whil_it_rest |will
|will_arriv |will_carv_$ |will_handl |will_handl_anyth |will_mak |will_never |win_in |with_DISH_i
|with_m_a |with_th_oven |with_th_sear |with_this_$ |with_you |without_DISH_$ |without_th |without_th_DISH
|wok |wok_up |work_on |would_hav |would_rather_crisp |ya |yell |yet_i |yet_so |yet_th |yet_what
|you_imagin |you_know |you_know_$ |you_lik |you_no |you_reckon |you_tell |you_tell_m |your_coat
-12 @10.3| @107.2| @123| @129.3| @13.0| @132.0| @15.1| @28.5| @32.13| @3| @60.0| @70.5| @76.1|
@81| @98.0| DISH_P|w DISH_U|for DISH_after|all DISH_and_cut| DISH_ar|scrub DISH_as| DISH_butter_mad|
DISH_can|go DISH_early| DISH_early|and DISH_from|list DISH_has_been| DISH_has| DISH_has|not
DISH_hav| DISH_in_th| DISH_is|dead DISH_no|i DISH_off|th DISH_on|yet DISH_r| DISH_r|DISH DISH_so_that|
DISH_th_hous| DISH_th_oven| DISH_this|very DISH_th|roast DISH_th|trim DISH_too|lat DISH_to|com
DISH_to|my DISH_to|roast DISH|DISH_U DISH|U_for DISH|ar_U DISH|ar_a DISH|butter_$ DISH|don_top
DISH|for_a DISH|has_been DISH|has_gon DISH|is_THING DISH|my_P DISH|n DISH|on_to DISH|out_$
DISH|out_this DISH|too_$ N:core_Nduration|ago N:core_after| N:core_after|rest N:core_already_and|
N:core_and|U N:core_and|i N:core_and|th N:core_at_th| N:core_at|Nclock N:core_at|th N:core_has_not|
N:core_too_hot| N:core_what_is| N:core_whil_it| N:core|after N:core|after_rest N:core|and_it
N:core|bottl N:core|bottl_of N:core|com N:core|not_N:core N:core|whil_rest N:few_P|will N:few_adult_N:few|
N:few_a| N:few_bon_on| N:few_extra|for N:few_for_th| N:few_hav| N:few_i_am| N:few_month|old
N:few_mor|now N:few_of_th| N:few_of|thos N:few_person|will N:few_piec| N:few_sh| N:few_step|back
N:few_what_is| N:few|Ndate_$ N:few|bon_roast N:few|her_so N:few|less_for N:few|less_th N:few|mor_person
N:few|now_$ N:few|of_us N:few|other N:few|sharp N:few|step_back N:few|walk N:few|walk_in N:oven_lik_you|
N:some_in_th| N:some_lat_on| N:some|behind_$ N:some|so_THING Nclock_it_was| Nclock_not|Nclock
Nclock_what| Ndate_at|Nclock Ndate_lunch_at| Ndegrees:core_it| Ndegrees:some_under|whatever
Nduration_U| Nduration_ago_what| Nduration_and|what Nduration_behind_i| Nduration_behind_so|
Nduration_behind_th| Nduration_for_th| Nduration_i_am| Nduration_i|will Nduration_lat_get|
Nduration_not|N:some Nduration_on_th| Nduration_oven| Nduration_th_match| Nduration_then|tell
Nduration|N:few_$ Nduration|back Nduration|behind_th Nduration|diaper Nduration|diaper_chang
Nduration|for_th Nduration|lat_and Nduration|lat_can Nduration|later_than Nduration|left_on
Nduration|now Nduration|sh Nduration|sooner_$ Nduration|whil Nduration|whil_i Ngas-mark_DISH|
Nweight_THING|THING Nweight_of_rib| Nweight_on| Nweight_topsid|for Nweight|topsid Nweight|with_N:few
P_U_is| P_dot| P_dot|is P_eat_at| P_has|com P_has|got P_h| P_is_N:some| P_is_P| P_is_allergic|
P_is_carv| P_is|P P_is|not P_is|sit P_is|turn P_jim| P_lik|his P_pet_has| P_put_th| P_will_b|
P_will|eat P|back P|back_in P|has_com P|lik_it P|mad P|mad_th P|set_this THING_Nweight_bon|
THING_THING_over| THING_and_th| THING_and|N:few THING_caught_light| THING_enamel| THING_giv|
THING_has_left| THING_hav|Ndegrees:core THING_in_ic| THING_is_show| THING_is|THING THING_it|bl
THING_it|jump THING_of_th| THING_ok| THING_or_U| THING_out_of| THING_out_th| THING_over|a THING_over|it
THING_roll| THING_say|N:core THING_slip_and| THING_so|th THING_ther|is THING_went| THING_will_not|
THING_would_you| THING|DISH THING|DISH_non THING|N:few_keep THING|Nweight THING|at_th THING|board_now
THING|caught_light THING|check THING|has_left THING|is_full THING|is_giv THING|is_jump THING|is_now
THING|left_in THING|mak_yusuf THING|on_th THING|say_N:oven THING|slip_and U_DISH|ar U_U|i U_and_DISH|
U_can| U_com| U_find_him| U_for|th U_i_hav| U_is|P U_is|expect U_i|will U_of_a| U_th_gam| U_th_oven|
U_that_is| U_ther|is U_w_ar| U_with|th U|and_DISH U|and_onc U|for_U U|i_hav U|of_th ^_DISH_ar|
^_DISH_is| ^_DISH|ar ^_DISH|don ^_N:core_on| ^_N:few|or ^_Nweight_N:few| ^_Nweight_THING| ^_Nweight_rib|
^_P_ar| ^_P_lik| ^_P|ar ^_THING|m ^_U_crap| ^_U_i| ^_^_back| ^_^_brb| ^_^_bump| ^_^_burnt|
^_^_can| ^_^_carry| ^_^_chuck| ^_^_clear| ^_^_count| ^_^_hang| ^_^_heat| ^_^_i| ^_^_job| ^_^_leav|
^_^_low| ^_^_lunch| ^_^_my| ^_^_never| ^_^_now| ^_^_nudg| ^_^_power| ^_^_sam| ^_^_shout| ^_^_skip|
^_^_total| ^_^_undo| ^_^_why| ^_add_green| ^_all_guest| ^_all_my| ^_all|my ^_all|th ^_and_th|
^_anyth|i ^_ar_w| ^_back| ^_brb| ^_brb|Nduration ^_bump| ^_burnt| ^_can| ^_carry| ^_christma|dinner
^_chuck| ^_clear| ^_company_is| ^_cook|it ^_cor_is| ^_could_dinner| ^_could|i ^_count| ^_delay|dinner
^_delet|timer ^_did_not| ^_do_i| ^_down_to| ^_fat|trim ^_got_a| ^_half|th ^_hang| ^_hav_to|
^_heat| ^_heat|th ^_hot|THING ^_how_do| ^_i_forgot| ^_i_got| ^_i_never| ^_i_n| ^_i_would| ^_is_it|
^_is_th| ^_i| ^_i|meant ^_job| ^_leav| ^_lit_th| ^_lit|th ^_lower_to| ^_low| ^_lunch| ^_m_and|
^_mak|dinner ^_my| ^_my|oven ^_never| ^_no_w| ^_now| ^_nudg| ^_out_it| ^_oven_run| ^_oven|door
^_ow_shit| ^_ow|shit ^_p_m| ^_pass|th ^_pop_th| ^_power| ^_push_dinner| ^_put_Nduration| ^_sam|
^_scrap_th| ^_sear_is| ^_set_th| ^_should_i| ^_shout| ^_shout|when ^_shut_that| ^_skip| ^_so_it|
^_someth_is| ^_still|hav ^_stop_that| ^_stop_th| ^_supper_at| ^_taken_it| ^_tak|th ^_temperatur_is|
^_th_dishwasher| ^_th_display| ^_th_sear| ^_throw_in| ^_th|DISH ^_th|guest ^_th|second ^_timer|off
^_tom|is ^_total| ^_total|N:few ^_turn_off| ^_undo| ^_w_hav| ^_what_ar| ^_what_happen| ^_what_if|
^_what_would| ^_what|all ^_when_th| ^_why| ^_will_THING| ^_would_it| ^_yes_i| ^_you_hav| a_N:few|rib
a_Nweight_topsid| a_Nweight|with a_P_with| a_THING_in| a_THING_of| a_U|THING a_cut_board| a_cut|
a_few_DISH| a_helper| a_nut| a_nut|allergy a_proper_rar| a_shout_at| a_singl|DISH a_stand|
a_tabl_of| about_Nduration|ago about_th|DISH about_th|roll about|my about|my_oven act| adult_N:few|
adult_N:few|P after_all|so after_it|medium after_reach| after_reach|N:core after_th|DISH against_th|
against_th|THING against|th against|th_THING ago_what| ahead|out ahead|out_of aim_for_Nclock|
aim|for_a alarm_for_Ndegrees:core| alarm_in_Nduration| alarm_is|go alarm|for all_guest_ar|
all_over_my| all_sat| all_sit| all_sit|down allergic|to_nut allergy_for| allergy_for|mark all|of
all|over_my all|peel all|so all|too all|too_much along_ar| along_ar|w alway_Ndegrees:some|
alway_com_in| alway|has am_a_good| am_after_it| am_at| am_away| am_behind|th am_hav_a| am_lagg_by|
am_miss| am_not_mak| am_off_to| am_on_th| am_on|th am_out_for| am_skip| am_stay| am_stay|put
am_still_N:few| am_us| am_without_a| am|THING_for am|driv am|head am|head_upstair am|off_to
am|se am|tak_it am|tell am|wait am|wait_for an_THING| an_alarm_in| an_end| an_end|piec and_DISH|ar
and_DISH|hav and_DISH|is and_N:few|other and_N:oven| and_anyth| and_can|i and_cut|them and_drop|th
and_eat_at| and_forget| and_giv| and_got|N:core and_h_got| and_half_th| and_hav_not| and_hot|to
and_i_do| and_if| and_it_has| and_i|am and_let| and_medium|rar and_power| and_puff_up| and_put|th
and_set_a| and_shout| and_shout|when and_show| and_ther|is and_ti|them and_turn_th| and_what_is|
and_what|tim and|can_not and|got_th and|now and|rest and|set_a and|th_DISH and|th_roll and|then_it
and|w_will another_Nduration_befor| another_Nduration_then| anymor|th_DISH any|blender an|U
an|extra ar_N:few|for ar_Nduration_behind| ar_THING_so| ar_all_sit| ar_at|N:core ar_bring|
ar_bring|N:few ar_eat_at| ar_go_to| ar_her_th| ar_in_th| ar_miss|th ar_my_option| ar_not| ar_out|of
ar_sit|at ar_start_to| ar_start| ar_start|to ar_swell| ar_swell|up ar_tell| ar_w|nearly arriv|so
arriv|so_far ar|Nduration_behind ar|Nduration_lat ar|all_in ar|away ar|eat ar|eat_at ar|french
ar|go ar|scrub ar|w_at ar|w_go ar|w_still ar|w_talk as_of| as_soon_as| as|U as|it_is as|w_speak
at_N:core_is| at_N:core_so| at_N:core|already at_N:few_P| at_N:few_th| at_N:oven_i| at_N:oven_th|
at_N:some|so at_Nclock_not| at_Nclock|it at_onc_and| at_th|U at|N:core_already at|N:core_it
at|N:few_on at|Nclock_THING at|Nclock_U at|Ngas-mark_and at|last away|and_start away|with a|DISH_in
a|Nweight_rib a|bad a|blackout a|break a|crack a|hot a|sid a|singl b_N:few|of b_N:few|person
b_Nduration|ago b_back| b_drink| b_drink|in b_faff| b_faff|with b_in|th b_on|th b_out_of| b_quiet|
back_is| back_to|Ngas-mark back|Nduration_and back|in_N:some back|to_N:oven bast|step bast|step_my
been_blad| been_blad|tenderis been_in_sinc| been_on|th been_rest| been_sat| been_stood|Nduration
been|N:few behind_on|th behind_so| behind_th|plan behind|with_everyth best_way_to| bin|th_timer
birthday_girl_want| blad_tenderis|by bless|them blu| board|THING_enough bob_is| bon_ar|french
bon_it| bon_on| bon_on|it boneless|rib boneless|rib_THING bon|ar_scrap bon|lif bon|lif_is bother_tim|
bother_tim|th bother|with bottl|of bottom_shelf_it| bought|a bought|th box_is| box_is|all br_it|forward
br_m| bring_th_DISH| bring|N:few bring|N:few_mor bring|her bring|his_P br|m bump_it_up| burn_in|
burn_in|th burn_my| bus_is_lat| butter_mad| butter_mad|and butter|all butter|all_over butter|is_all
butter|so butter|so_no buy_DISH_too| buy_THING|THING by_th|U by_th|bon by|N:few_$ by|N:some_$
by|Ndegrees:some by|th_bon b|away b|her b|on b|quiet_$ b|sit b|sit_down call|from_work call|out_N:core
can_DISH| can_i_get| can_i|hav can_not_b| can_not_i| can_not|eat can_not|hav can_w|mak can_you_set|
cancel_that|alarm cancel_th| cancel|that_timer can|you_speak can|you_talk capital| careful|with_her
carry| carry|on carv|Nclock carv|Nclock_and cast_iron|pan catch_that| catch|that caught_light|
caught_light|on centr_it| centr_it|is chang_w_ar| chang|it_to check|th_DISH chill_th| chip_pan|
chip_pan|is christma_dinner_at| chuck_it| chuck_th|DISH church|for_Nduration clean_thos_bon|
clock_for|Nduration clock_is|tick clos_th|pass cold_by|Ndegrees:some cold_in_th| cold_on| collect_P|
collect_P|back collect|th com_Nduration_too| com_Nduration|after com_P_is| com_in|Ndegrees:some
com_it| com_up_at| com_with| company_is| company| com|down_to com|last com|last_for com|now
com|so_knock com|to_help conventional| convert_th_lot| cor_has_reach| cor|temperatur_Ndegrees:core
could_dinner| could_w_do| could_you|plan count|down count|down_Nduration cover| cow|is cow|is_tail
cream|for cross_that| cross_that|off crunchy_it| crunchy_it|is crunchy|it crunchy|it_is cut_board|
cut_board|THING cut_into| cut_off| cut|into_it cut|it_open cut|th_trim dangerous_to_DISH| dangerous_to|
dav_turn| dav_turn|th delay|dinner_by di_whol_street| diall|back diall|back_to dial|say dial|say_N:oven
did_not_finish| did_not_mean| did_not|say did|i_say dinner_roll|ar dinner_they| dinner|is_go
dinner|mov dinner|mov_to dinner|to_N:oven display_is|blank do_about|it do_everyth| do_i_cover|
do_i_get| do_i_pull| do_it_look| do_i|ask do_i|go do_i|mak do_i|turn do_not_believ| do_not_hav|
do_not|n do_not|talk do_stuff| do_stuff|h do_th_second| do_th|THING don_by| don_for|P don_keep_it|
don_so| don_with|that door_for| dot| dot|is down_at|Nclock down_my|leg down_to|N:core down|Nduration_for
down|to_N:few down|to_Ngas-mark down|to_after do|for do|i_slic do|i_us do|i_want do|in do|it_hav
do|not_count do|not_eat do|not_want do|you_reckon do|your drain_th| drain_th|DISH driv|over
driv|over_to drop_it_to| drop_th_bast| drop|th_whol dry|THING_$ early_at|N:few early|and_eat
early|at_N:few earth| eat_DISH_in| eat_at|N:few eat_early_at| eat_early| eat_early|at eat_it|otherwis
eat|Nduration_earlier eat|Nduration_early eat|dairy eat|early_today eat|it_pink electric|is_off
els_could_i| even|w_din everyth_i| every|last extra|for faff|with fallen|down_to fan|on_this
far_along_ar| fat|trim few_DISH| few_roast_DISH| fill_m| fill_m|in fin_for| find_him| find_him|someth
find_in_th| find|a find|a_THING finish_scrap_thos| finish|scrap finish|scrap_thos fin|as fin|as_it
fir_in_th| first_N:few|walk first|car fir|alarm flam_com| flam_in| flam_in|th folk|will folk|will_not
football|after for_N:core_after| for_N:core|after for_Nclock|on for_Ndegrees:core|on for_Nduration_w|
for_Nduration|diaper for_Nduration|whil for_help_in| for_help| for_is|th for_m_th| for_my|
for_th|roll for_th|sear for_what_reason| forerib_Nweight_N:few| forerib_Nweight|N:few forerib|joint
forerib|joint_Nweight forgot|to_buy for|Nduration_w for|U_and for|all for|him_$ for|m_i for|mark
for|th_roll for|thos for|us for|you_$ for|your_P found_th_str| freezer_still| freezer_still|DISH
french|is french|is_not fresh| fre|from fre|from_N:few fre|to fridg_at| from_her|on from_now_till|
from_oven|Nduration from_th|oven from_your| from|N:core_to from|a from|list fus|has gam_start_at|
gam|start gam|start_at gang_is| gas_has_run| gas_has| gav_m_a| get_away| get_away|with get_on|with
get_past| get_past|N:core get_to|N:core get|ic get|lat get|on get|start get|start_myself get|th_THING
girl_want| girl_want|supper giv_it|Nduration giv_th|DISH giv_us|a giv|m_th gnaw| go_to_wait|
gon_from| gon_in_Nduration| gon_in_th| gon_inverter_run| gon_out|so gon_up|in good|Nduration_behind
gorgeous|it gorgeous|it_look got_it|out got_th_butter| got_th|chuck got|N:core_in got|Nduration
got|U got|it got|th_DISH go|careful go|with_N:few go|with_th great_U| great_U|and green_DISH_U|
green_DISH|U green_DISH|my green_DISH|top guest_com|Nduration guest|ar_lat guest|to_N:few guid_m|th
h_got|N:core h_has_got| h_is_veggi| h_is|help had_half_th| had|a had|half had|half_th half_th|THING
half|past happy_with| has_allergy| has_been_blad| has_been_rest| has_had_a| has_run| has_run|out
has|U_U has|been has|got_th hav_DISH_th| hav_DISH|with hav_a_helper| hav_arriv|so hav_burnt|my
hav_drop|th hav_football| hav_football|after hav_got_a| hav_got_my| hav_help| hav_help|now
hav_knock| hav_lift_it| hav_lost|electricity hav_lost|power hav_mad_th| hav_mad|it hav_ne'er|
hav_ne'er|a hav_not|put hav_peel| hav_put_th| hav_put|th hav_run| hav_run|out hav_slic|my hav_som|
hav_taken_th| hav_taken|th hav_th|DISH hav_th|THING hav_to_U| hav_to_rest| hav|N:few_of hav|Ndegrees:core
hav|cancell hav|drop hav|drop_th hav|gon hav|got_THING hav|it hav|pull_it hav|skip hav|skip_that
hav|slic hav|slic_my hav|taken hav|turn_up head| heat_all| heat_all|th help_in| help_in|THING
help|now her_Nduration_after| her_all_N:few| her_at_N:oven| her_in_th| her_in|th her_ther_is|
her_well|don her|a_plat her|eat her|eat_pink hey_w| hey_w|hav hey|company hey|company_pull
himself|is him|someth hold_on_a| hold_that| hold_that|thought hold|dinner_by hold|on_a hold|th_THING
hold|that hold|that_thought hop_in| hop_in|th hotter|than hot|THING_all hot|pan hot|to_start
hous_for| hous_for|Nduration hous|for hous|for_Nduration how_ar| how_do_this| how_many_degre|
how_much| how_should_i| how_this| how|THING how|com_w how|long h|say i_am_at| i_am_away| i_am_miss|
i_am_skip| i_am_stay| i_am_us| i_am|driv i_am|head i_am|se i_am|tell i_am|wait i_at|a i_bast|
i_bast|it i_can_do| i_chuck_th| i_cover| i_crank| i_fetch| i_get_away| i_get_th| i_hav_drop|
i_hav_had| i_hav_help| i_hav_knock| i_hav_taken| i_hav|drop i_hav|her i_hav|lost i_hav|slic
i_left|it i_mak_ahead| i_mak| i_pull|it i_said|N:some i_said|wrong i_set|th i_skip| i_speak|
i_speak|to i_tak|th i_turn_th| i_turn|th i_us_THING| i_will|do i_would|brown if_i_hav| if_th_oven|
if_th|oven if_you|n in_Ndegrees:some_under| in_ic| in_ic|water in_law|pull in_mak| in_plac_of|
in_plac| in_plac|of in_sinc| in_this|rental in_th|DISH in_th|P in_th|bottom in_th|door in_th|end
in_th|oven in_th|thickest in_yet_still| inform_when_it| internal_temperatur|is into_it_and|
into|my into|my_palm inverter_run| inverter_run|th invit|themselv in|Ndegrees:some_under in|a_glass
in|as in|for in|my_family in|plac in|plac_of in|th_end in|th_liv in|this_hous in|to in|to_warm
is_N:few_less| is_N:few|extra is_N:some|month is_Ndate_lunch| is_U|in is_a_THING| is_after_reach|
is_all|too is_an| is_at_N:few| is_a|good is_bring|her is_carv| is_carv|it is_clos_th| is_com_Nduration|
is_com|after is_com|out is_don_what| is_finish_and| is_finish|and is_fin|as is_flam| is_fre|from
is_go|in is_happen| is_help_m| is_hit| is_it_ok| is_it|soon is_lactos| is_lactos|intolerant
is_lat|so is_mad_it| is_margarin| is_margarin|ok is_medium_rar| is_my_next| is_m|don is_not_great|
is_not|happen is_not|read is_off_th| is_over|N:core is_pull| is_rar_fin| is_rar| is_rar|fin
is_raw|insid is_ready_and| is_right|U is_run_at| is_sat| is_smok|everywher is_still|DISH is_th_point|
is_th|doorbell is_up_at| is_up|at is_veggi|sinc is|N:few_less is|Nweight is|U is|a_THING is|all_grey
is|ask_for is|beep is|blank is|broken is|com_Nduration is|cover is|dark is|dry is|flam_in is|grey_all
is|help_m is|hit_N:core is|insid is|it_N:few is|it_all is|it_ready is|it_soon is|it_still is|m
is|mad is|my_next is|need is|next is|not_at is|not_ther is|not_well is|on_it is|pull_up is|remain
is|shap is|stay is|still_DISH is|th_trick is|ther_a is|up_at is|way_too it_Nduration|sooner
it_at|N:few it_both| it_burn_in| it_dangerous_to| it_for_th| it_forward|Nduration it_for|medium
it_get_past| it_get_to| it_go_to| it_has_fallen| it_hit|N:core it_if_ther| it_in_th| it_is_Nduration|
it_is_after| it_is_alway| it_is_and| it_is_go| it_is_read| it_is_way| it_is|Ndate it_is|dry
it_is|mad it_is|ready it_is|rest it_is|show it_is|under it_ok| it_on|tim it_out_at| it_out|for
it_slid_off| it_th_phon| it_th|phon it_tim_to| it_was|N:core it_whil| it_without| it_with|DISH
it_with|THING it|all_on it|back_to it|bl it|cam it|claim it|forward it|if_ther it|is_U it|is_burn
it|is_fin it|is_grey it|is_not it|is_overcook it|is_show it|is_tent it|jump it|look_lik it|medium_not
it|otherwis it|out_it it|sat it|should_b it|soon it|still it|touch i|am_do i|am_hold i|am_still
i|at i|at_a i|bought i|burn i|cut_into i|get_th i|go_to i|hav_cut i|hav_lost i|hav_never i|hav_salt
i|meant_th i|must_away i|never_did i|never_should i|open i|rop i|rop_in i|said_it i|saw i|ti
jess|is jim| joint_out_gorgeous| join| jump_all_over| keep_it|warm keep_up_Nduration| kill_th_THING|
kill_th|timer kindly_guid_m| kindly_inform| knock_N:few| knock_N:few|off knock|it_down know_th|
lactos| lactos|intolerant lad_hav_football| lad|is lagg_by| lagg_by|Nduration last_on| last|night
lat_get| lat_get|start lat_on|my lat_sav_her| lat_they| lat|so_everyth law|pull law|pull_up
lay_th|tabl lay|th_tabl learn_about| learn_about|my left_in_th| left_on|th left_th|oven leftover|ar_away
left|end left|end_N:core let_m_forget| let_us_begin| let_us_start| lift_it|out lift_th|THING
light_went_off| light_went|off light|di light|hav light|hav_gon light|on_th lik_DISH|r lik_i|
lik_to_eat| lik_w| lik| lik|a_U lik|her lik|it_still lik|that_$ lily| lip_ar_swell| list|th
littl_light_went| lit| lodger|had lodger|had_a long_hav_th| longer_than| long| look_is| look|lik_w
lost|electricity lost|power lot_hav_arriv| lot_hav_mad| lot|ar_her lot|to lot|to_th lower|
lower|third lunch_Ndate|Nclock lunch|at_N:few m_about_th| m_at|N:core m_forget_th| m_forget|
m_how| m_if_it| m_it|is m_of_th| m_th_whol| m_when|it mad|it_still mak_ahead| mak_ahead|out
mak_anymor| mak_anymor|th mak_that_on| mak_with_m| man_is|Nduration many_degre| margarin|ok
mass|finish mass|finish_at meant_to_b| meant|to_b medium_and| medium_for|U medium_i| medium_rar|or
medium|for_U minut|left minut|left_on miss|th_THING moment_i| month|old mor_no| mor_no|less
mor|DISH mor|ar mor|ar_com mor|now mor|now_they mov_dinner|to mov_on| much_i| much|THING_go
much|salt_in must_b_Nduration| must|b my_P|in my_U|is my_back_is| my_folk| my_folk|will my_god|ther
my_next| my_next|job my_option| my_oven_is| my_oven_run| my_oven|is my|DISH_split my|P_can
my|THING_it my|THING_on my|choic my|cooker my|hair my|leg my|wrist m|N:some_$ m|at_N:core m|at_Nclock
m|don m|som_U m|th_method m|th_shop m|together n_another| n_mor|tim n_not|call n_th|timer n_to_b|
n_to|DISH n_to|catch ne'er| ne'er|a nearly|full nearly|full_hous near|enough needl_is| needl|is
never_should_hav| never|get next_on_th| next_on|th next|job nip|out no_fan|on no_i_hav| no_i|hav
no_mor_no| no_on|is no_r|win no_th_oven| nobody_eat| nobody_her|eat nobody|at nobody|eat nor|
not_a_THING| not_at| not_b_faff| not_bother_tim| not_bother_with| not_b|do not_b|right not_catch_that|
not_com|so not_do_th| not_eat|dairy not_find|a not_finish|scrap not_go_to| not_got_a| not_got_th|
not_great_U| not_great| not_i|carv not_mak_anymor| not_mak|th not_mean_to| not_mean| not_mean|to
not_n_to| not_own_a| not_peel|anyth not_put_it| not_put_th| not_ready_for| not_ris|yet not_start|
not_touch|that not_turn_th| not_warm_any| not|b not|call not|call_m not|don_$ not|eat_r not|hav
not|keep_up not|n not|out not|read not|read_anyth not|well now_is| now_or| now_till| now|do
now|i now|sh no|DISH no|THING_is no|THING_or no|THING_pan no|dry no|dry_brin no|later no|pink_at
no|sear_$ no|shellfish no|str nudg|m nut|allergy n|not of_N:few|tonight of_THING_and| of_THING_over|
of_rib| of_rib|roast of_th_guest| of_that|instruction of_th|guest off_DISH| off_so|no offer|to_do
off|so_no off|th_list of|DISH_DISH of|salt of|th of|top of|top_THING on_a_low| on_for|Nduration
on_is_on| on_is|U on_i|am on_seat|let on_th|DISH on_th|go on_th|phon on_to_th| onc|mor_$ onto_th|
on|a_THING on|all_sid on|earth on|earth_do on|less on|less_priya on|th_clock on|th_tabl on|tim_$
on|to_reduc on|to_th on|top_$ on|with_th open_that| open_that|door open|that open|that_door
or_U|for order| other|ar_sit our_lodger|had our|lodger out_at_N:some| out_at|N:core out_gorgeous|
out_gorgeous|it out_i_hav| out_i|hav out_on|th out_sinc| out_th|THING out_would| outta_ther_Nduration|
out|befor_it out|now_$ out|of_butter out|sinc out|so_it out|till oven_THING|N:oven oven_alway_run|
oven_back| oven_b| oven_door|open oven_down_to| oven_has| oven_is_pack| oven_is|not oven_light|di
oven_run_Ndegrees:some| oven_run|hot oven_th_THING| oven_up|to oven|Nduration_back oven|beep
oven|go oven|go_up oven|has_gon oven|is_back oven|is_empty oven|is_too oven|light oven|off_and
oven|on_N:oven oven|up over_my| over_th|top over|N:core_when over|a over|th_floor ow_shit|
ow_shit|i own_a| own|any ow|shit ow|shit_i pack|in pan|is_alight pass|m past|N:core_i paus|a
paus|a_sec paus|everyth_$ paus|for peak_at_N:core| peak_at| peak_at|N:core peel|anyth peel|anyth_yet
pencil| peopl_ar_com| peopl_ar_start| peopl_in|total peopl|ar_start peopl|in_total pet_has|
pet_has|U phon_call|from phon_to| pick|up pink_THING| pink_all| pink_all|th pink_as| pink_in|th
pink_so_well| pinker| pink|THING pink|bit plac_of| plac|of plan_away| plan_away|and plan_to_carv|
plan_to| plan|away plan|away_and plus|N:few_U plus|U_who point_of| point|of position_of| position_of|th
postpon_th| postpon_th|dinner postpon| postpon|th postpon|th_dinner pound_and| power|di power|is_back
proper_rar| proper_rar|roast puff_up|lovely pull_it_for| push_th| push|it put_DISH_cream| put_Nduration|
put_Nduration|on put_th_joint| put_too_much| put_you_on| put|DISH_cream put|it_up put|m quick_th|
r_DISH_Nduration| r_win|P ran_out| rar_fin| rar|fin rar|roast rar|roast_this rather|than raw_in_th|
raw_in| raw_in|th raw|in raw|in_th ready_for| ready_for|th ready_it| ready_when| reason|w_do
reckon_w| remind_m_to| remind|m_what remov_DISH_from| remov_from_oven| remov|DISH remov|DISH_from
rest|ar rest|it_$ rest|now rib_is| rib_of|THING right_DISH|ar right_that_is| right|U_th right|for_my
ris|yet ris|yet_so roast_DISH|ar roast_DISH|would roast_in_at| roast_is_at| roast_is|in roast_is|not
roast|has roast|has_been roast|is_out roast|out_already roll_ar_not| roll_in|to roll|and_ti
roll|ar_warm room|with ruin|it ruin|it_$ run_cold_by| run|N:some_cold run|out_of run|th_light
ruth|can ruth|can_do r| sack_that| sack_that|step sack|that sack|that_step said_N:some_not|
said|N:few said|wrong said|wrong_it salt_do| salt_i| salt|i_hav sat|down sat|on sav_her| sav_her|a
say_N:core|in say|that_$ scald_my_arm| scald_my| schedul_green_DISH| school|run scrap_thos|
scrap_thos|bon scrap_th| scratch|that_$ scrub_th| scrub_th|DISH sear_com| sear_com|last sear_on|
sear_on|all sear|com sear|com_last sear|in_this sear|now seat|let seat|let_us second_sear|
second_sear|in second|sear second|sear_in serv_it_at| serv_it|with serv|it_N:oven serv|it_at
set_clock_for| set_this_up| set|it set|this sh_is_read| sh_is|allergic sh_is|hav sh_is|in shelf_from_th|
shelf_it| shelf_it|is shellfish_allergy_for| shit|i shit|i_hav should_hav|skip should_i|b should|b
should|i_b should|it should|tak shout_if_you| shout_when| shout|in show_m| show|m_how shut_and|
sh|was sid_DISH_th| simpl| singl|DISH sit_down_at| skip_th_DISH| skip_th_THING| skip_th|next
skip|that_on sleep_in| sleep_in|th slid_th|THING slid|th_THING slip_on| slip_on|th slow|then_blast
smell|incredibl smok_and| smok|alarm_is smok|everywher so_go|careful so_it_say| so_knock_N:few|
so_let| so_let|us so_put| so_th|THING so_well| so_well|don so_what_is| sock| sock|in soft_still_crunchy|
someth_is|burn soon_as| so|go so|lik so|no_DISH splash| start_at|N:few start_to_U| start|afresh
start|afresh_$ stay|put steady_heat_all| step_away_for| stev| stick| stick|som stick|som_green
still_DISH|in still_N:few_step| still_N:few|step still_crunchy_it| still_crunchy|it still_on_th|
still_pal| still_raw|in still_work_on| still|DISH_in still|DISH_solid still|at still|no still|no_sign
still|pal stood|Nduration stop_that| stov_for_Nduration| straight_in| stuck_on|th stuck_th|
stuck| stuck|in_it stuff|h stuff|h_is stuff|it supper_is| swap_th_cream| switch_th|oven switch_to|celsius
switch|on tabl_DISH| tabl_DISH|ar tabl_at_N:few| tabl_at| tabl_for|Nclock tabl_of| tabl_of|N:few
tak_it_off| tak_longer_than| tak_th_THING| tak_th_dog| tak_that|back taken|it taken|it_out
talk_m| talk_m|through talk_to|you teddy|is_U teenager| teenager|hav teenager|hav_volunteer
tell_m_when| tell_m|again tell_m|that tell_m|to tell_m|when tell_when| tell|her temperatur_do|i
temperatur_is_up| temperatur|has temperatur|of tenderis|by tenderis|by_th tent_it_with| tent_it|with
th_DISH_what| th_DISH_you| th_DISH|all th_DISH|ar th_P_ar| th_P_eat| th_P| th_P|eat th_THING_b|
th_THING_was| th_THING|check th_THING|has th_THING|say th_THING|was th_THING|went th_b_drink|
th_bast|step th_bon_and| th_bon_ar| th_box_is| th_butter|so th_chip_pan| th_cream|for th_dog_and|
th_door|open th_edg| th_fat|off th_first|on th_freezer_still| th_fridg_at| th_gam|start th_go_with|
th_hous_for| th_hous|for th_joint|in th_kettl| th_kettl|on th_lad|ar th_leave-in_say| th_light|hav
th_lot|to th_lower|third th_middl_is| th_on|th th_order| th_other_ar| th_oven_THING| th_oven_back|
th_oven_befor| th_oven_b| th_oven_has| th_oven_is| th_oven_it| th_oven|go th_oven|light th_oven|up
th_phon_to| th_phon|is th_pink|bit th_point_of| th_point| th_quick|on th_rest|ar th_roast_at|
th_roast_went| th_roll_in| th_roll_i| th_run| th_say|N:core th_second_sear| th_second|sear
th_shop_for| th_shop|for th_tabl_DISH| th_tabl_at| th_tabl_for| th_tabl|is th_teenager| th_teenager|hav
th_thick| th_th|with th_tip| th_train_is| th_way|that th_we|on that_again|i that_can| that_on|less
that_was_th| that_was|not that_will|b that|instruction that|instruction_$ that|is_Nduration
that|is_not that|is_when that|step_off that|thought them_back|on then_a| then_it|stuck then|drop
then|drop_it then|low then|tell then|tell_m theo_is_fre| theo_want| ther_Nduration|now ther_ar_N:few|
ther_is_flam| ther_is|too ther|is_THING ther|is_blood ther|is_not ther|is_pink ther|us ther|us_to
they_ar_bring| they_ar_hav| they_ar|in they_ar|run they_ar|stuck they|ar they|ar_sat they|rang
they|reckon_Nduration thick_part|N:core this_is_right| this_plan_away| this_plan| this_plan|away
this_up| this_up|and this|very this|very_second thos_bon|lif thos|bon thread| through|th_whol
throw_in_som| throw_this_plan| th|DISH_collaps th|DISH_cream th|DISH_how th|DISH_kind th|DISH_on
th|DISH_timer th|DISH_yet th|N:few_$ th|P_ar th|P_eat th|THING_THING th|THING_at th|U_N:core
th|alternativ th|chuck th|chuck_end th|current_has th|dial th|dinner_Nduration th|doorbell
th|doorbell_they th|fir th|gas th|henderson th|high th|kiddy th|light th|loo th|menu th|needl
th|new_P th|next th|nut th|oven_befor th|oven_it th|oven_so th|pass_Nduration th|power_di th|quick_on
th|r_DISH th|r_win th|roast_went th|rol th|roll_Nduration th|roll_cam th|roll_n th|spoon th|thickest
th|til th|tip th|train th|trim_it th|whol_street th|with_th ti_it|with till_my| till_w| till|Nclock_$
till|my tim_th|roll timer_N:few| timer_hav| timer_it_is| tim|th_DISH ti|it_with ti|them ti|them_back
to_DISH_early| to_N:core_in| to_U|in to_b_at| to_br| to_carv|Nclock to_chill_th| to_church|for
to_collect_P| to_collect|th to_do_a| to_do_stuff| to_eat_at| to_eat_by| to_eat|it to_get|ic
to_m_in| to_stuff| to_stuff|it to_th|list told|him tom|is_call too_much_go| too_much_i| took_th_roast|
too|lat_now too|much_$ top_of_that| topsid|for topsid|for_Ndate top|oven_$ touch|it touch|that
to|N:core_and to|N:few_now to|b_on to|check to|chill to|chill_th to|eat_Nduration to|eat_by
to|hav_a to|nut to|preheat to|turn_it train|is_cancell trim_it_is| trim_it|is trim|it_$ trust_th|THING
trust| turn_it_to| turn_it| turn_it|down turn_it|off turn_on_th| turn_th|U turn|it_off tyr_they_reckon|
ty|it_up under_what_it| under_whatever_you| under|what under|whatever under|whatever_you undo|that_last
up_Nduration|down up_a_Nweight| up_after| up_from| up_in|flam up_in|th up_this| up_to_room|
upstair_for|Nduration up|and_left up|from_th up|in_flam up|to_N:some us_N:few| us_THING|THING
us_a|THING us_a|shout us_begin| us_start| us_w| us|THING_DISH veggi|sinc veggi|sinc_lent w_ar_mak|
w_do|not w_eat_at| w_eat|at w_got_N:few| w_hav_a| w_n_DISH| w_skip| w_still_on| wait_with|
wait_with|th wait|for_them wait|with wait|with_th wak| walk_th| walk|m_through want_a_bit|
want_his_well| want_thos_and| want_to|eat want|supper want|supper_at want|to was_N:core_Nduration|
was_my|P wash|your wash|your_THING was|on was|show water_down_my| way_and| way_my_folk| way_too|salty
way|out_do way|that way|that_beast way|too_salty weight_in| well_don_all| went_on_at| went_on|to
went|in_at wer|Nduration wet| we|on what_ar_th| what_ar|my what_do_i| what_do|i what_do|you
what_els_could| what_for_is| what_i_hav| what_is|my what_it|claim what_reason| what_temperatur|do
what_temperatur|should what_was| what_will|i whatever_you|ask whatever_you|call what|could_w
what|w what|was what|was_th when_is_th| when_should| when_th|THING when|should wher_ar|w wher_do_th|
wher_do|th wher|exactly wher|exactly_do wher|wer wher|wer_w whil_i_was| whip_it_out| whip_it|
whip_it|out whol_U_is| whol_U| whol_U|is whol|plan who|do_not why_do_th| why|am why|am_i why|not
why|that will_DISH_th| will_b_an| will_b_back| will_b_gon| will_com| will_do|it will_eat_early|
will_it|b will_not|eat will|eat_early will|look will|look_after will|not win_in_th| win|P_drank
win|is_on with_N:few_THING| with_N:few|THING with_medium| with_m|together with_th_butter| with_th|bon
with_th|kiddy with_th|prep with_th|roast with_you| without_a| without_a|THING with|th_fat with|this
would_it|b would_lik_DISH| would|P_to would|brown would|brown_it wrong|button w|din w|hav_all
w|hav_another w|hav_plenty w|n_Nduration w|nearly w|nearly_ther w|would_lik yell|at yes_it_is|
yet_it| yet_it|is yet_still| you_ar_go| you_ar_th| you_believ|it you_can|not you_could_not|
you_learn_about| you_look| you_n_not| you_set|Nduration you_tak_th| your_man_is| your|feet
you|ar_go you|ask_for you|can_drop you|hav_got you|plan_on you|reckon_$ |@104.1 |@11.4 |@114.2
|@120.0 |@122.1 |@125.3 |@131 |@134 |@139.7 |@14.5 |@140.5 |@140.7 |@143.1 |@15.1 |@17.2 |@19.4
|@24.3 |@25.0 |@25.6 |@3.1 |@32.0 |@32.2 |@32.8 |@34 |@38.7 |@45.2 |@53.0 |@61.0 |@62.2 |@70.4
|@77.5 |@92.4 |DISH_DISH_in |DISH_and_cut |DISH_and_it |DISH_collaps_th |DISH_for_a |DISH_from_list
|DISH_kind |DISH_non |DISH_non_to |DISH_sh |DISH_so_scrap |DISH_solid |DISH_split |DISH_they
|DISH_timer |DISH_will |DISH_with_th |DISH_yet |N:core_Nduration_ago |N:core_already_and |N:core_and_frail
|N:core_is_it |N:core_to_N:core |N:core_too_hot |N:core_when_you |N:core_yet |N:few_and_N:few
|N:few_and_th |N:few_how |N:few_keep |N:few_keep_th |N:few_oven_th |N:few_piec |N:few_sharp
|N:oven_at |N:oven_in_ther |N:oven_is |N:some_and |N:some_and_th |N:some_cold |N:some_lat |N:some_month_$
|Nclock_THING |Nclock_and_eat |Nclock_in |Ndegrees:core_is |Ndegrees:some_hot |Ndegrees:some_under_whatever
|Nduration_already |Nduration_in_th |Nduration_it_is |Nduration_later |Nduration_off_schedul
|Nduration_out_$ |Nduration_tell_m |P_drank |P_drank_it |P_has_it |P_is_carry |P_is_lot |P_is_not
|P_sh |P_up |P_w |P_w_ar |P_will_not |THING_DISH_$ |THING_DISH_instead |THING_N:core_at |THING_Nduration
|THING_THING_sorry |THING_a_THING |THING_all_over |THING_and_it |THING_can_i |THING_enough
|THING_full |THING_in_and |THING_is_finish |THING_is_jump |THING_it_has |THING_left_in |THING_ok
|THING_on_it |THING_tonight |THING_when_it |U_U_i |U_for |U_i_will |U_no_$ |U_of_THING |U_of_th
|U_on_th |U_ther_is |a_THING_pan |a_THING_with |a_bit_lat |a_glass_THING |a_nut |a_nut_allergy
|a_plat |a_sec_would |a_singl_DISH |a_sock |a_timer_for |a_warn |about_th_DISH |afresh |afresh_$
|afresh_$_$ |after_rest |afternoon_$ |afternoon_$_$ |again_P_$ |alight |all_at |all_grey |am_do
|am_hold |am_i_suppos |am_not_go |am_still |an_extra |and_h |and_left_what |and_onc_again |and_ounc_for
|and_start_fresh |and_took |any_blender |anymor_th |anyth_that |anyth_yet |anyway |ar_after
|ar_clean |ar_com_$ |ar_down |ar_go_to |ar_lat_Nduration |ar_not_don |ar_off_$ |ar_run |ar_sat
|ar_scrap |ar_scrap_clean |ar_sit_too |ar_start |ar_start_to |ar_th_alternativ |ar_w_$ |ar_want
|as_i_typ |ask_for_THING |ask_th |at_N:core_com |at_N:core_w |at_N:few_Ndate |at_N:few_i |at_N:few_tonight
|at_N:oven_$ |at_N:oven_and |at_N:some_$ |at_Nclock_DISH |at_Nclock_Ndate |at_all_and |at_hom
|at_th_back |at_th_start |at_th_stov |at_th_wall |availabl |away_and_start |b_better |b_don
|b_don_$ |b_go |b_her |b_in |b_lat |b_lat_$ |back_thank |back_thank_god |bathroom |been_in
|befor_th |begun_it |behind_P |behind_a |behind_a_tractor |behind_schedul |behind_th_plan |behind_with_th
|bit_P |bl |blackout |bloody |bloody_$ |bloody_$_$ |boat |bon_can |bon_roast |bother_with |bottl_of_beer
|bridg |brown_it_off |burn_i |butter_and |butter_for |by_N:few_$ |by_Nduration_and |call_and
|call_for |call_m_in |can_drop |can_drop_th |catch_that |caught_fir_$ |caught_light |caught_light_on
|celsius_not |celsius_not_fahrenheit |centr_$ |centr_$_$ |chill_th |chuck_end |chuck_end_Nweight
|clock_for |clos_th |coeliac |com_Nduration_after |com_after |com_after_all |com_along |com_down
|com_last |com_last_for |com_now |company_pull |company_pull_in |cook |cours_$ |cours_$_$ |cow
|crisp |crispy_DISH_$ |cub_$ |cub_$_$ |cut_my |da_will_not |dairy_$ |dairy_$_$ |dan |day |decid
|di_$ |di_$_$ |diaper_chang |dinner_to_N:oven |do_about |do_i_DISH |do_i_n |do_i_say |do_it_rest
|do_my |don_i |don_top |don_what |doorbell_they |down_Nduration_$ |down_at_N:few |down_i |down_is
|down_to_N:oven |drink_$ |drink_$_$ |drop_th_bast |drop_th_roast |drop_th_whol |dry_brin |dry_brin_this
|early_at |early_today |early_today_N:few |earth |earth_do |eat_early_at |eat_pink |eat_pink_so
|eat_r |eat_them |end_N:core_right |every_last_on |everywher_$ |everywher_$_$ |exactly_do |exactly_do_th
|faint |fetch |finish_at_N:few |fir_in_th |flip |floor_and |for_Ndate_$ |for_P_$ |for_U_U |for_a_sid
|for_her_$ |for_th_dinner |for_that_$ |forgot_to_buy |fre_to |from_$ |from_$_$ |from_th_freezer
|from_th_station |from_th_zero |from_work_that |full_hous_miss |full_of |gav_m |gav_m_a |get_from
|get_th_crackl |go_over |go_to_bother |go_up_to |go_with_th |go_wrong |gon_to |gorgeous_$ |gorgeous_$_$
|got_N:few_out |got_a_vegan |got_th_green |green_DISH_DISH |guest_is |guest_to_N:few |h_is_call
|had_a_kidney |halal |half_th_THING |has_a_nut |has_allergy |has_been_turn |has_com_back |has_gon_off
|has_got_a |has_left_th |hat_this |haul |hav_THING |hav_a_boneless |hav_a_full |hav_a_pan |hav_another_helper
|hav_been_on |hav_been_vot |hav_cut |hav_drop |hav_gon_power |hav_ne'er |hav_ne'er_a |hav_never
|hav_not_carv |hav_not_start |hav_plenty |hav_said |hav_salt |hav_salt_it |hav_seen |hav_to_DISH
|hav_to_U |hav_volunteer |hav_volunteer_for |head_upstair |head_upstair_to |help_and |henderson
|her_w |her_well |high_$ |high_$_$ |him_in |his |his_P_so |his_medium |his_steak |his_well
|his_well_don |holler_at |hop_in |hop_in_th |hors_$ |hors_$_$ |hot_and |hungry_$ |hungry_$_$
|i_DISH |i_am_yet |i_at |i_do_next |i_do_now |i_hav_burn |i_hav_complet |i_open |i_open_th
|i_rest |i_rest_it |i_will_do |ic_$ |ic_$_$ |if_i_us |in_DISH_DISH |in_Nduration_and |in_and_i
|in_celsius |in_how |in_kilo |in_th_P |in_th_other |in_th_whol |in_this_drawer |in_total |in_town
|into_it |into_it_and |intolerant |is_Nweight_N:few |is_U_watch |is_a_Nweight |is_a_lot |is_a_stand
|is_all_mix |is_at_a |is_blood_everywher |is_call_out |is_cancell_they |is_chok |is_chok_$
|is_coeliac_$ |is_dark_$ |is_down_to |is_flam_in |is_giv_U |is_giv_m |is_good |is_grey |is_half
|is_happy |is_m |is_need |is_not_complet |is_not_out |is_nowher |is_nowher_near |is_off_now
|is_off_th |is_offer |is_on_N:some |is_out_$ |is_overcook |is_pour_out |is_put |is_roll |is_sleep
|is_tail |is_tent |is_to_b |is_too_full |is_too_much |is_turn |is_vegetarian_$ |is_very |is_wrong
|it_N:oven_or |it_already_$ |it_for_Nduration |it_hav |it_hav_to |it_i |it_in_a |it_is_THING
|it_is_lik |it_is_past |it_now_$ |it_on_a |it_out |it_out_it |it_rar_$ |it_soon |it_still_no
|it_ther |it_up_now |it_with_THING |keep_tell |kettl |kiddy |know_how |last_bit |last_for |last_for_m
|last_on |lat_do |lat_now |later_$ |later_$_$ |lay_N:few |lay_N:few_mor |left_on_th |less_for
|less_for_dinner |less_priya |less_priya_has |less_th |light_ar |light_ar_back |list_for_th
|look_after |look_after_th |luck_$ |luck_$_$ |m_N:core |m_U |m_again_$ |m_at_th |m_for |m_how_to
|m_i |m_onc |m_onc_it |m_som_U |m_that |mad_a |mak_with |mak_yusuf |mak_yusuf_is |meant_th
|medium_instead |medium_not_a |menu_$ |menu_$_$ |middl_is_at |mind_$ |mind_$_$ |miss_$ |miss_$_$
|month_$ |month_$_$ |moo_$ |moo_$_$ |mor_ar |mor_ar_com |mor_person |mor_tim_$ |must_away |must_away_for
|my_arm_$ |my_arm_with |my_family_remov |my_next |my_next_job |my_oven_this |my_pregnant |my_pregnant_P
|myself_$ |myself_$_$ |n_Nduration_set |n_another_Nduration |n_for |n_from |n_from_th |n_mor
|nam_is |nam_is_U |near |never_should |never_should_hav |no_bon |no_sign |no_sign_of |no_str
|not_at_N:core |not_b_right |not_breath_$ |not_count |not_don_th |not_eat_THING |not_happen
|not_it_$ |not_let_m |not_mak |not_mak_it |not_mind_$ |not_out |not_stop |not_touch |not_turn_th
|not_want |not_well |now_N:oven |now_at |now_th_THING |now_they_brought |number_$ |number_$_$
|of_U_$ |of_play |of_rest |off_now |off_schedul_$ |off_th_THING |old_girl |on_DISH_$ |on_earth
|on_earth_do |on_fir_$ |on_i_am |on_paus_$ |on_th_joint |on_th_telly |on_tim |on_to_boil |open_and
|other |our_at |out |out_N:core |out_again |out_already |out_of_th |out_of_what |out_sinc |out_so
|out_this |out_this_year |out_would |oven_Ngas-mark |oven_THING_say |oven_clock |oven_clock_is
|oven_how |oven_is_back |oven_is_di |oven_it |oven_now |oven_on_N:oven |oven_so |oven_th_THING
|oven_w |oven_will |oven_will_not |over_a_THING |over_my |over_th |over_to_P |overcook |overdon
|own_any |pack_up |pair_of_THING |pan |pan_and |part_$ |part_$_$ |pass_Nduration |pass_Nduration_on
|patient |pink_all |pink_at |pink_at_all |plac_of |plumber |proper_DISH |pull_at |pull_at_$
|put_you_on |r_DISH_with |r_win_$ |read_anyth |ready_to |ready_yet |reckon_Nduration |refreez
|remain_$ |remain_$_$ |remov_th |rest_a |rib_THING |rib_THING_Nweight |rib_roast_N:few |ris_$
|ris_$_$ |roast_DISH_in |roast_is_Nweight |roast_this |roast_this_year |roast_with |rol |roll_Nduration
|roll_cam |roll_cam_out |roll_n |rop_in_th |rubbish |run_Ndegrees:few |said_N:some |salt_in
|salt_in_th |sat_on_th |say_N:core_and |say_N:few |say_that_$ |scrap_thos |scrap_thos_bon |sear_in_this
|sear_is_don |season_$ |season_$_$ |set_this_up |sh_go_$ |shelf_$ |shelf_$_$ |shit_i |shit_i_hav
|shop_is |shout_when_sh |shov_it |shower_Nduration |shut_and |sinc_lent |sit_down_$ |skip_that_step
|so_THING |so_THING_is |so_everyth |so_everyth_slip |so_h_is |so_knock |so_knock_N:few |som_U
|som_green |som_green_DISH |sooner_$ |sooner_$_$ |start_myself |starv |step_back |step_my_P
|still_on_for |stop_$ |stop_$_$ |stov_$ |stov_$_$ |str_in |sub |teenager |th_DISH_as |th_DISH_cream
|th_DISH_don |th_DISH_start |th_DISH_under |th_DISH_you |th_P_up |th_THING_back |th_THING_th
|th_THING_will |th_b_drink |th_begin_$ |th_bin_out |th_board_and |th_bon |th_bon_in |th_button
|th_cast_iron |th_cream_$ |th_dog_THING |th_fat |th_french |th_guest_is |th_hous_and |th_kettl
|th_last_on |th_match_has |th_method |th_method_for |th_middl_$ |th_middl_get |th_other_N:few
|th_oven_N:oven |th_oven_b |th_oven_flam |th_phon_it |th_plac_$ |th_plan_sinc |th_roll_i |th_ros
|th_sear_$ |th_shop_list |th_sid_$ |th_stand |th_tabl_$ |th_tabl_and |th_tabl_for |th_thickest_bit
|th_timer_on |th_wall_$ |th_way_$ |that_Nduration |that_Nweight |that_again_i |that_beast |that_beast_fit
|that_go |that_on_out |that_step_off |that_thought |that_what |themselv |then_blast |then_blast_it
|ther_someth_i |think_$ |think_$_$ |this_THING |this_and |this_hous |this_th_$ |through_for
|through_it |through_no |till_N:core |till_N:few_$ |tim_Nduration |timer_hav |timer_it |timer_it_is
|to_N:core_whil |to_N:few_now |to_N:oven_i |to_after |to_after_th |to_bast |to_do_$ |to_eat_$
|to_giv_th |to_hav_a |to_lif_$ |to_next |to_next_door |to_nut_$ |to_reduc |to_reduc_Nduration
|to_roast_so |to_room |to_room_temperatur |to_start_then |to_th_metric |to_th_next |to_us |to_us_$
|toddler |tonight_and |took_forever_so |took_out |trick |trim_th |turn_it_down |ty_th |up_N:core
|up_and_in |up_at_Nclock |up_by |up_on |up_ther |up_this |us_Nduration |us_THING_THING |us_it_$
|us_to_b |usual |veggi |very_second |w_at |w_at_$ |w_din |w_do_$ |w_do_th |w_go |w_skip |w_speak
|w_tak |w_talk |w_talk_Nduration |was_N:oven |was_i |wash_up_and |way_and |way_out |well_and
|well_my |went_out_whol |wer_w |what_i_hav |what_w |whatever_you_ask |when_i |whil_i_U |whil_rest
|will_b_Nduration |will_b_an |will_b_eat |will_giv |will_hav_their |win_$ |win_$_$ |win_in_th
|with_her |with_salt_and |with_th_butter |with_th_second |with_th_str |with_that_$ |would_go_down
|would_i |would_lik_an |wrong_THING |year_$ |year_$_$ |yet_so_they |yet_sorry_$ |yet_still
|you_$ |you_$_$ |you_call |you_carv |you_no_when |you_set |you_speak_up |you_stop |you_talk_in
|you_turn |you_watch |yourself_$ |yourself_$_$ |zero_$ |zero_$_$
-11 #after1 #before1 @110| @13.3| @139.2| @144.4| @144.7| @146| @18.0| @28.7| @35| @38.6| @4.16|
@48.4| @81.2| @91.2| @91| DISH_DISH_can| DISH_DISH_my| DISH_DISH|it DISH_DISH|out DISH_N:few|
DISH_ar_nic| DISH_ar_still| DISH_ar|burn DISH_ar|burnt DISH_ar|ready DISH_as|well DISH_butter_it|
DISH_collaps| DISH_collaps|th DISH_cream_on| DISH_cream|DISH DISH_don|in DISH_do|i DISH_for|
DISH_i_will| DISH_is|mad DISH_is|too DISH_n_mor| DISH_on|to DISH_so|do DISH_so|that DISH_start|
DISH_tak| DISH_this_very| DISH_th|bon DISH_to_U| DISH_w_will| DISH_wer| DISH|DISH_from DISH|butter_it
DISH|from_list DISH|in_a DISH|in_my DISH|is_cut DISH|is_strain DISH|is_too DISH|is_way DISH|is_went
DISH|n_mor DISH|of DISH|off_th DISH|ready DISH|ready_they DISH|so_count DISH|under DISH|under_way
DISH|will_do DISH|yet N:core_DISH|ar N:core_N:few| N:core_about_Nduration| N:core_by| N:core_has|
N:core_how| N:core_in_th| N:core_is|it N:core_i|am N:core_i|hav N:core_last| N:core_lik|Nduration
N:core_tell| N:core_tell|m N:core_to|N:core N:core_will| N:core_w|ar N:core|already_$ N:core|and
N:core|from N:core|from_th N:core|it_is N:core|on N:core|to_N:core N:few_U_is| N:few_U|of N:few_bon_not|
N:few_count| N:few_count|th N:few_her_N:few| N:few_how| N:few_less_for| N:few_mor_for| N:few_mor_peopl|
N:few_mor|ar N:few_mor|for N:few_mor|sid N:few_on_th| N:few_on|top N:few_out| N:few_sit| N:few_sit|down
N:few_till| N:few_to_flip| N:few_under_so| N:few_with_th| N:few_with|th N:few|U_on N:few|already
N:few|bon_not N:few|bon_rib N:few|cook N:few|cook_now N:few|for_N:few N:few|month_pregnant
N:few|mor_for N:few|mor_guest N:few|mor_to N:few|of_th N:few|peopl_$ N:few|peopl_in N:few|show
N:few|show_up N:few|steady_temperatur N:few|till N:few|to_N:few N:few|wrong_THING N:oven_Nduration|
N:oven_Nduration|ago N:oven_afternoon| N:oven_afternoon|f N:oven_and_i| N:oven_for|a N:oven_in|ther
N:oven_i|hav N:oven_on_th| N:oven|U N:oven|in_ther N:oven|lik_Nduration N:oven|sharp N:oven|sharp_kindly
N:some_on| N:some_on|th Nclock_N:few| Nclock_THING| Nclock_and|it Nclock_i_hav| Nclock_in|th
Nclock|U Nclock|and_eat Nclock|for_dinner Nclock|sharp Nclock|th_roast Ndate_Nclock_and| Ndegrees:core_in|th
Ndegrees:few|high Ndegrees:some_cooler_than| Ndegrees:some_under_what| Nduration_and_do| Nduration_and_th|
Nduration_and|it Nduration_befor_w| Nduration_for| Nduration_for|th Nduration_i|hav Nduration_later_P|
Nduration_left|on Nduration_mor|early Nduration_my_P| Nduration_on|dinner Nduration_on|them
Nduration_sooner_than| Nduration_that| Nduration_too| Nduration_too|lat Nduration_to|that Nduration_walk|
Nduration|befor_it Nduration|befor_w Nduration|earlier_than Nduration|for Nduration|lat_sav
Nduration|pet Nduration|timer_and Nduration|top_$ Nweight_leg_of| Nweight_on|th Nweight_rib|roast
Nweight|N:oven Nweight|of_rib P_and|P P_apparently_so| P_ar_eat| P_at| P_eat|Ndate P_is_ask|
P_is_help| P_is_hurt| P_is_lot| P_is_peel| P_is|THING P_lik|it P_n_to| P_never| P_nor| P_nor|money
P_on|th P_open_that| P_pet| P_pet|has P_say_it| P_sh| P_so_plus| P_to_mak| P_will|not P|and_P
P|dot P|dot_is P|from_th P|gav P|gav_m P|in_law P|insist P|is_$ P|is_N:some P|is_at P|is_hurt
P|is_peel P|is_sit P|open P|rang_h P|ray P|text P|text_Nduration THING_N:core_and| THING_N:few|in
THING_THING|tonight THING_and|i THING_and|it THING_can|i THING_com| THING_fell| THING_fell|out
THING_for|U THING_has_been| THING_h| THING_i_hav| THING_in_this| THING_is_act| THING_is_alway|
THING_is_stay| THING_it_jump| THING_it|has THING_i|hav THING_i|think THING_m|my THING_now|leo
THING_on_th| THING_on|a THING_over_th| THING_to_my| THING_to|my THING_up|at THING_went|straight
THING_what_is| THING_will|i THING_will|not THING|N:core_at THING|THING_never THING|THING_sorry
THING|fell THING|fell_out THING|for_Nduration THING|gaug THING|gaug_must THING|go_in THING|hav_Ndegrees:core
THING|is_split THING|is_stuck THING|now_leo THING|ok_instead THING|out_$ THING|out_of THING|over_th
THING|so_wer THING|till THING|till_N:few THING|to_mak THING|w_ar THING|with_them THING|wok
THING|wok_up U_and_i| U_behind| U_by_th| U_crap_th| U_do_not| U_for_U| U_for_th| U_i_will|
U_is|on U_is|scream U_say|U U_should| U_that|green U_timer_N:few| U_watch_th| U_who_is| U_with|U
U_you_ar| U_you|ar U|and U|is_scream U|my_tail U|n_N:few U|of_THING U|sak U|ther_is ^_DISH_hav|
^_DISH_n| ^_N:few|bon ^_N:few|extra ^_N:few|her ^_Ndegrees:oven_hold| ^_P_can| ^_P_dot| ^_P_will|
^_P|will ^_THING_for| ^_^_after| ^_^_ask| ^_^_brown| ^_^_careful| ^_^_convert| ^_^_could| ^_^_green|
^_^_lay| ^_^_lower| ^_^_nip| ^_^_serv| ^_^_should| ^_^_slid| ^_^_someth| ^_^_tabl| ^_^_they|
^_^_tick| ^_^_timer| ^_^_wer| ^_^_what| ^_^_without| ^_^_with| ^_after| ^_aim_for| ^_all|sort
^_am_i| ^_ask| ^_br_it| ^_brown| ^_brown|it ^_bum_on| ^_call_m| ^_can_not| ^_cancel_th| ^_careful|
^_check|it ^_check|with ^_convert| ^_could_i| ^_could| ^_cut_th| ^_did|i ^_dinner_Nduration|
^_dinner_for| ^_dinner_roll| ^_do|i ^_do|you ^_electricity_has| ^_forget|th ^_giv_us| ^_go_upstair|
^_got_th| ^_green| ^_green|DISH ^_guest_ar| ^_hav_i| ^_hav|you ^_himself_is| ^_how_hot| ^_is|N:core
^_is|th ^_it_weigh| ^_it|hit ^_it|run ^_i|burnt ^_i|can ^_i|got ^_i|never ^_i|turn ^_jo_is|
^_knock_that| ^_knock|it ^_lay| ^_lower| ^_low|and ^_lunch_at| ^_min_is| ^_my_DISH| ^_my|boss
^_n_to| ^_nip| ^_no_th| ^_no_you| ^_not_i| ^_no|pink ^_nudg_m| ^_off_to| ^_on_th| ^_party_of|
^_power_is| ^_pull_for| ^_pull_th| ^_pull|temperatur ^_right_that| ^_right_th| ^_roast_is|
^_roll_ar| ^_schedul_green| ^_serv_at| ^_serv| ^_set_Nduration| ^_set_m| ^_sh_want| ^_shall|i
^_should_it| ^_should| ^_sit|down ^_skip_th| ^_slid| ^_smok_alarm| ^_smok_is| ^_so_i| ^_someth|
^_start|THING ^_tabl_for| ^_tabl| ^_th_cat| ^_th_green| ^_th_lad| ^_th_schedul| ^_theo_want|
^_they| ^_this_oven| ^_th|doctor ^_th|green ^_th|oven ^_tick| ^_timer| ^_took_her| ^_turn_down|
^_turn_th| ^_us_N:few| ^_w_put| ^_well|look ^_wer| ^_what_can| ^_what| ^_what|did ^_what|hav
^_what|would ^_who_want| ^_without| ^_with| ^_w|can ^_w|shall ^_w|took a_DISH_instead| a_N:few|
a_N:few|bon a_Nweight|N:few a_U|n a_U|of a_bit_much| a_bit|later a_bit|much a_boneless|THING
a_drop| a_drop|of a_fan_assist| a_fat| a_fat|THING a_few|minut a_full|hous a_good_Ndegrees:some|
a_littl| a_no_for| a_shout| a_singl_DISH| a_tabl| about|Nduration_ago about|th_roll act|weird
add_N:few|mor add_th| add| add|a adult_mor_ar| after_all_so| after_it_is| after_w_sit| afternoon_shop|
afternoon_shop|is afternoon| afternoon|f afternoon|f_that afternoon|shop afternoon|shop_is
after|th_break after|this_$ ago_it_said| ago_whil_i| alarm|is_go alert_for| alert_for|Ndegrees:core
alex_can| alex|can_do alex|can_stir all_behind_lik| all_behind| all_guest| all_guest|ar all_item_i|
all_item| all_item|i all_on|hot all_so| allergy|again allergy|again_$ allergy|for allergy|for_mark
all|at all|over_th all|sat all|sid all|th_timer all|through already_in| already_in|th already_th|DISH
already|ti already|ti_with alway_left| alway_left|over alway_run_N:some| alway|N:few alway|N:few_under
alway|com alway|com_in am_U|my am_all_behind| am_hold| am_miss|THING am_pop| am_tak| am_well|
am_well|behind amount| am|THING am|THING_a am|U am|get am|get_N:core am|i_U am|i_behind am|i_do
am|i_on am|not_don am|still am|tak am|us am|well am|well_behind an_alarm_for| an_alarm|in an_alert_for|
an_extra_Nduration| and_DISH_is| and_N:few|already and_P|is and_THING_is| and_U|is and_ar_w|
and_ar|w and_can_i| and_could|you and_do|th and_hungry_all| and_h|got and_i_will| and_it|has
and_i|hav and_mak| and_out_of| and_pull| and_p| and_p|m and_shout_when| and_slow_then| and_sur_you|
and_th_DISH| and_th_other| and_th_temperatur| and_th|P and_w_hav| and_what|ar and_what|do and_what|temperatur
and_when_do| and_which_way| and_which| and|U_is and|back and|gon and|half_th and|i_would and|if
and|let_m and|pet and|th_power any_THING_is| anyth_i|n anyth|els apparently_so| apparently_so|N:few
ar_N:few|cook ar_Nduration|early ar_a_bit| ar_all|sat ar_bang_on| ar_boil| ar_go|in ar_go|to
ar_look_at| ar_my| ar_nic| ar_nic|and ar_not_hav| ar_not_risen| ar_not|risen ar_say| ar_say|grac
ar_stuck_in| ar_w|go arm|with arm|with_th arriv|Nduration_later ar|U_is ar|all_THING ar|all_sat
ar|burnt ar|her_N:few ar|look_at ar|mak ar|my_choic ar|not_com ar|not_in ar|ready ar|scrap
ar|scrap_clean ar|start ar|start_to ar|us ar|us_celsius ar|w_win ar|warm as_i|typ ask_how|
ask_th| ask|m ask|th_THING assist|oven as|i_typ as|long at_N:oven|sharp at_Nclock_DISH| at_Nclock|sharp
at_a_U| at_th|start at|N:core_is at|N:few_and at|N:few_in at|N:few_is at|N:oven_for at|N:some_in
at|all_and at|easter at|now away|for_Nduration a|Nweight_THING a|U_$ a|U_and a|bath a|disaster
a|drink a|fall a|fan a|few a|loaf a|lot a|lovely a|rest a|sec a|shift a|shout_in b_N:few_count|
b_N:few_sit| b_bother_french| b_bother| b_do|with b_drink_in| b_in_her| b_lat|by b_mak_th|
b_this| back_by|Nduration back_in|Nduration back_in|a back_in|th back_it|was back_to|N:oven
back_to|lif bak_Nduration| bak_Nduration|befor bang_on|N:some beast| been_in_for| been_off|sinc
been_on_th| been|taken beer_is| beer_is|open befor|it beg_your| beg_your|pardon begin|again
begin|again_$ begun|it behind_lik| behind_lik|th behind_so_serv| behind_so|serv best_way| best_way|to
bit_much| bit_much|pip bit_off_th| bit|lat bit|later bit|later_Nduration bit|much bit|much_pip
bluetooth_THING| bluetooth_THING|is board_THING| board_onto_th| boil_for| boil_straight_in|
bon_ar|scrap bon_not| bon_off|and boneless|Nweight boneless|THING boneless|THING_THING bother_french|
bother_french|it both| bottom|shelf bout_Nduration| bout_Nduration|lat bout| bout|Nduration
bout|Nduration_lat box|is box|is_all br_it_to| breath|someth breath|someth_is bring_his_new|
bring_th|DISH brok_her_THING| broken_so| br|my budg_for| budg_for|ag bump_th_heat| burn_in_th|
burnt_my| burnt_well_don| burnt|th butter_all| butter_all|over butter_it_is| butter_it| butter_it|is
butter_on_th| butter_so| butter_so|no butter_th|roast butter_what| butter|mad by_N:oven| by_m|again
by|Nduration_P by|step by|th_THING by|th_way b|N:few_person b|N:some b|Nduration_later b|U
b|at b|for b|found b|when b|when_i c_not| c_not|degre call_is| call|m_onc cam_out_at| cam_outsid_befor|
cam|U_not cam|out_of can_drop_th| can_hear| can_help| can_i_DISH| can_it|sit can_i|do can_manag|it
can_not_breath| can_not|get can_not|i can_split| can_split|U can_w_skip| can_w|do can_w|hold
can_you|add cancel_th_Nduration| cancell|so can|hear can|i_put can|i_us can|mak can|mak_with
can|manag_it can|not_b can|not_hav can|not_se can|you_do can|you_get cap_down| cap_down|a carv_Nclock|
carv_Nclock|and carv_it|yet carv|and_it cast|iron_pan charg_of| check|again check|again_and
chip_pan_is| chop_th| chuck|th_DISH clear_all| clear_all|th clock_for| clock_noth| clock_noth|U
cold_i| collaps|th collaps|th_moment com_Nduration|too com_back_to| com_down| com_down|to com_for_help|
com_for| com_it|is com_let_us| com_out|in com_with|Nduration com|Nduration_after com|along
com|back_from com|up_at com|with_Nduration conk| conk|out conventional_oven_no| conventional|oven
conventional|oven_no convert|th convert|th_lot cook_it_at| cooker|run cooker|run_Ndegrees:some
cooler_than_it| cooler_than| cooler_than|it could_w|go count_him| count_him|out cow_is| cow_is|tail
crank_it_up| crank|it crap_th| crap_th|power crawl| cream_for| cream_i_do| cream_i| cream_on|
cream_on|th cream|DISH cream|DISH_would cream|is_becom cream|is_mad cremat|so cremat|so_well
crew_is| crew_is|happy cross_it| crunchy_not| crunchy_not|ready cry| current_has| current_has|gon
current| cut_myself|with cut|m cut|myself_with dangerous| dead_centr| dead_centr|it dead|centr_it
degre_c_not| delay_so| delay|is delay|is_ther di_on|m dial_and| did_not_catch| did_not|catch
did_you|say did_you|se did|i_miss did|not_mean did|you_get dinner_by|Nduration dinner_n_to|
dinner_roll_ar| dinner_up_by| dinner|Nduration dinner|forward_Nduration dinner|is_now dinner|sorry
dinner|tim_would dishwasher|reminder dishwasher|reminder_can do_a|THING do_i_mak| do_it|Nduration
do_it|rest do_i|us do_not_find| do_not_open| do_not|hav do_roast| do_roast|DISH do_that|work
do_th|DISH do_us| dog_THING| dog_THING|th dog_had| dog_had|half dog_out| dog|THING dog|THING_th
don|for_him don|i_know don|in_tim don|this don|this_tim don|you door_for|Nduration door_it|
door|for door|open_Nduration down_Nduration|earlier down_for|th down_how| down_it|is down_to_N:few|
down_with_th| down|a_bit down|with_th down|yet_sorry do|i_ask do|i_cover do|it_in do|it_look
do|it_tak do|not_$ do|not_U do|not_find do|not_lik do|not_mak do|not_touch do|not_w do|you_want
drink|first drink|first_so driv_over| driv_over|to drop_th|DISH drop_th|roast drop_th|th drop_th|timer
drop|of drop|out_U drop|th_oven dry_brin| duck_out| duck_out|for early_so| eat_DISH|so eat_Nduration_mor|
eat_a_bit| eat_our_christma| eat|Ndate_at eat|Nduration_befor eat|Nduration_sooner eat|at_N:few
eat|it_otherwis electricity_has| elli|is_chop even_w| even_w|din everyth_in_th| everyth|by
everyth|by_N:some everyth|tak_m every|last_DISH exactly_do_th| exactly_do| exactly_do|th exactly|do
exactly|do_th excus|m expect_m| expect_m|for extra_N:few|U extra_Nduration_on| extra_Nduration|
extra|wash extra|wash_up fallen_Nduration| fallen_Nduration|off fallen_over_in| fallen|over
fallen|over_in family_will_arriv| family|is_run fan_assist|oven fat_cap_down| fat|cap fat|has
fell|out few_THING_N:few| fin_as_it| find_a| find_a|THING find| find|in_th finish|th_trim first_car|
first_guest| first_guest|ar flam|com_out flat|tyr flip|th flip|th_DISH for_P_nor| for_U|U for_U|sak
for_a|second for_dinner|sorry for_help|in for_th|DISH for_th|U for_th|oven forget_i_said| forget_what|you
forget|i_am forgot_th|DISH for|Ndegrees:core_$ for|Nduration_whil for|U_sak for|ag for|all_of
for|dinner_$ for|my_german for|tom for|tom_h for|what_reason found_th| found|th_str fre_to|
from_N:core_to| from_N:core|to from_oven_Nduration| from_th|U from_th|bottom from_th|plan from|her
from|oven from|ther fus_has| gang_is|all get_from| get_it_good| get_it|good get_th_crackl|
get|from get|on_with ghe| giv_m|N:some giv_m|a giv|it_a giv|m giv|th_DISH glov_is| glov_is|burn
gluten_is_out| gluten_is| gluten_is|out go_U_with| go_back| go_near| go_near|shellfish go_on_with|
go_out_for| go_straight| go_to_help| go_to_hit| go_to|hit go_to|th gon_and_drop| gon_cold_on|
gon_from|N:few gon_inverter| gon_inverter|run gon_way| gon_way|past gon|everywher gon|way gon|way_past
good_Ndegrees:some| good_Ndegrees:some|hot good_Nduration|behind good|THING got_N:few_THING|
got_N:few|oven got_a_leave-in| got_a|shift got_guest_to| got_guest| got_guest|to got_my|P got|THING
got|any got|burn got|it_out go|nic go|nic_with go|to_b go|to_giv go|to_skip grab_th_handl|
grab_th| greas|and greas|and_can green_DISH_my| green_DISH_on| green_DISH_top| green|DISH_on
grey_all|th guest_ar| guest_cam|U guest_to|N:few guest_to|U guest_will_not| guest|to_U h_pour|
h_pour|th h_will|b had_a|fall had_half| had_half|th had_no_THING| had|my had|no_THING had|to
half|a half|th_THING handl|anyth handl|anyth_with handl|it handl|it_was happy_with|medium has_allergy|again
has_been_in| has_been_sat| has_been|taken has_com_to| has_fallen|over has_gon_from| has_gon_inverter|
has_gon|everywher has_it|got has_not|reduc has_to_b| has_to|b has|U has|U_and has|been_out
has|com_back has|com_down has|gon_out hat|that hat|this hav_N:few_oven| hav_N:few|oven hav_a_boneless|
hav_a_full| hav_a_leave-in| hav_already|ti hav_a|nap hav_begun| hav_bought| hav_burn| hav_burn|my
hav_chang|my hav_com|back hav_fallen_Nduration| hav_finish|th hav_got_no| hav_got_th| hav_it|
hav_it|later hav_kept_th| hav_kept| hav_kept|th hav_lift| hav_lift|it hav_mad|th hav_miss_th|
hav_ne'er_a| hav_not_got| hav_not|any hav_plenty| hav_pull| hav_roast|DISH hav_salt|th hav_their_at|
hav_thes| hav_thes|DISH hav_to_start| hav_to|b hav_to|start hav_with| hav_with|it hav|P hav|P_fre
hav|all hav|an hav|been_don hav|burnt_my hav|help hav|help_now hav|i_ruin hav|lost hav|not_even
hav|not_peel hav|nut hav|reach hav|th_DISH head|out head|out_to heat|at_th help|in help|in_THING
henderson_so| her_THING|is her_cremat| her_cremat|so her_out|a her_sh| her_till| her|P her|for_a
high_heat| high_heat|at himself_is_go| him|out_for his_new| his_new|P his|well his|well_don
hold_dinner| holler_when_it| holler|when hot_by|N:few hot_oven_clock| hot|by_N:some hot|for_th
hous_afternoon_shop| hous_afternoon| hous_afternoon|shop hous_at| hous_at|all how_hot|for how_is|sh
how_long_it| how_to_DISH| how|THING_a how|long_it how|many_degre how|much how|much_of how|pink
hungry_all| hungry_all|N:few hurt_h_pour| hurt|h hurt|h_pour hush| h|mak h|said i_U_th| i_am_hold|
i_am_pop| i_am_tak| i_am_well| i_am|THING i_am|U i_am|get i_am|still i_am|tak i_am|us i_am|well
i_ask|th i_burnt| i_burnt|my i_can_hear| i_can|hear i_do|with i_drop_th| i_had_a| i_hav_an|
i_hav_begun| i_hav_bought| i_hav_burn| i_hav_chang| i_hav_com| i_hav_mad| i_hav_pull| i_hav|P
i_hav|help i_know_it| i_prefer| i_prefer|to i_remov|it i_rest| i_rest|it i_said|that i_swap|
i_switch| i_think_in| i_want|th i_was_not| i_was_on| i_was|lay i_will_not| in_DISH|DISH in_N:some_and|
in_Nduration_i| in_beer_is| in_charg_of| in_coat| in_coat|on in_for|Nduration in_how| in_it|for
in_law_has| in_my|lif in_old| in_old|money in_th_box| in_th_liv| in_th_thick| in_this|THING
in_th|U in_th|lower in_wish_m| includ|N:few includ|N:few_DISH insid_temperatur| insid|th instead_roll|
instead_roll|and instead|of_THING instead|of_dry intolerant_so_watch| inverter_run_th| inverter|run
inverter|run_th in|N:few_to in|Ndate in|Nduration_tell in|at_N:oven in|flam_$ in|my_sho in|som_roll
in|th_door in|th_driveway in|th_night in|th_thick in|town in|yet_still is_N:core_in| is_N:core_my|
is_N:core|and is_N:few_on| is_N:few_so| is_THING|ok is_U_and| is_U_th| is_a_Nweight| is_act|
is_act|weird is_alway_left| is_alway|N:few is_ask| is_at_Ndegrees:core| is_at|Ndegrees:core
is_a|N:few is_a|Nweight is_becom| is_broken_so| is_carv|and is_com|Nduration is_conk| is_conk|out
is_di_on| is_down| is_do|th is_extra| is_extra|wash is_flam_in| is_flam|com is_full|of is_go|
is_go|to is_happy_with| is_hurt| is_hurt|h is_in_a| is_it_com| is_it_dangerous| is_it_ready|
is_it|at is_it|dangerous is_it|ready is_join|th is_left|on is_not_in| is_not_read| is_not|out
is_now|at is_on|chemo is_out_for| is_over_N:core| is_peel_th| is_peel| is_pink|all is_pour_out|
is_pur| is_right_U| is_run_bout| is_sit_at| is_sit|at is_sleep| is_smok|com is_stay|in is_stuck|
is_taken| is_th_DISH| is_th_go| is_that_saf| is_throat| is_throat|swell is_th|DISH is_to_b|
is_vegetarian_i| is_when|w is_work|again is_your|P is|N:core is|N:core_what is|Nduration_i
is|a_U is|all_her is|all_too is|alway is|back is|bring is|by is|caught is|celsius is|celsius_i
is|chok is|delay_$ is|flam is|happy_with is|it_go is|it_on is|it_you is|join is|lactos is|lactos_intolerant
is|lat is|not_great is|not_it is|not_on is|not_ready is|not_th is|now is|outta is|outta_ther
is|pink_THING is|pregnant is|read_Ndegrees:core is|scream is|squeaky is|stuck is|tail is|th_doorbell
is|th_reason is|th_rest is|too_much is|veggi it_all_right| it_all|over it_at_th| it_at|N:oven
it_at|N:some it_com|out it_dangerous| it_down|yet it_good|and it_has_not| it_in_at| it_in_a|
it_is_carv| it_is_extra| it_is_sat| it_is_still| it_is|N:core it_is|after it_is|bleed it_is|burn
it_is|m it_is|outta it_is|sat it_is|squeaky it_jump|Ndegrees:few it_mak_much| it_n_to| it_out_for|
it_pass| it_pass|N:core it_pink|all it_run| it_so|i it_till|N:core it_was_at| it_was_a| it_with_a|
item_i| item_i|hav item| item|i item|i_hav itself|off it|again_$ it|at_N:core it|back_a it|dangerous
it|go_U it|go_to it|good_and it|got_$ it|in_th it|is_Nduration it|is_a it|is_go it|is_outta
it|is_over it|is_squeaky it|is_still it|later it|medium_instead it|off_th it|out_at it|practically
it|practically_burnt it|say_on it|slid it|slid_off it|tim_to it|uncover_overnight it|weigh
it|with_THING i|am_a i|am_after i|am_back i|am_go i|am_hav i|am_lagg i|am_lat i|am_well i|ask_th
i|can_hear i|carv_it i|did_$ i|hav_been i|hav_complet i|hav_finish i|hav_her i|hav_invit i|hav_knock
i|hav_ne'er i|hav_peel i|hav_sat i|left i|look_$ i|mak_th i|nap i|open_th i|overcook i|prefer
i|prefer_to i|press_th i|put_already i|put_on i|rest i|rest_it i|season i|season_th i|tak_th
i|talk i|would_brown jaysus_th_pan| jo_is| jo_will_handl| joint_is|still joint_went| joint_went|in
joint|is_in joint|went joint|went_in join|th_party jump|Ndegrees:few jump|over keep_an| keep_an|THING
kept_at| kept_th|DISH kill_th| kilo_and| kilo_if_you| kilo_i| kindly_includ| kindly_includ|N:few
kindly|guid kindly|guid_m knock_it_down| know_th|second know_when| know|when lack| lad_is|
last_i|look lat_by| lat_by|Nduration lat_or| lat_with_th| later_P| later_P|is later|than_plan
lat|Nduration_$ law_has| leav_it|uncover leav_th| leave-in_say| leave-in_say|N:core left|on_th
left|over left|th_door leg_of|THING leo|has leo|has_a less_for| less_for|dinner let_us_know|
let_us_skip| let|it_rest let|us_get let|us_hav li_down_for| lick_th| lid|on lift_th_THING|
lift|it_out lift|th_THING light|went_out lik_P_eat| lik_an| lik_her_cremat| lik_her_well| lik_it_still|
lik_it|practically lik_to_sear| lik_to|sear lik|an lik|th_cow list_for|th list_th_patel| littl_N:few|
littl_on|eat li|down_for long_hav|i long_hav|w long_is|remain longer_do| look_at|N:core look|at_that
los_th|DISH low_and| low|and lunch_Ndate_Nclock| lunch_Ndate| lunch_at|N:few lunch|Ndate_at
lunch|shall lunch|shall_b m_N:few|for m_U| m_at|Nclock m_forget|i m_forget|th m_in|N:few m_i|am
m_missus| m_missus|will m_my_shop| m_th_choic| m_th|simpl m_up| m_up|when m_what_number| mak_DISH|cream
mak_dinner| mak_much| mak_much|smok mak_th|DISH man_i| man_i|am manag|it man|is meant_to|b
medium_rar_for| medium_rar_this| medium_well|my medium|rar_or medium|well_my method| method|for
metric_system_for| metric_system| metric_system|for middl_get_to| middl_when_w| middl|and mind|a
mind|a_DISH minut_left_on| minut_left| minut_left|on min| miss_that| missus_will| missus|will_not
month_old|P mor_ar| mor_ar|com mor_for_dinner| mor_for| mor_peopl| mor_peopl|ar mor_tim_it|
mor|early mor|for mor|guest_com mor|sid mor|sid_DISH most_of| most| mov_it| much_longer_do|
much|pip much|pip_up must_eat| must_eat|Nduration my_P_can| my_P_never| my_P_put| my_P_sh|
my_P_want| my_P| my_P|from my_P|insist my_P|say my_P|text my_THING|gaug my_arm|with my_cooker|run
my_cream| my_cream|is my_oven|run myself_on_th| myself|with myself|with_th my|P_$ my|P_put
my|P_sh my|P_will my|arm my|back my|back_is my|boss my|family my|god my|hear my|hear_is my|lif
my|option my|oven_will my|roommat m|U_ther m|for_N:some m|in_celsius m|luck m|my_shop n_from_th|
n_to_catch| n_to_check| n_to|do n_to|get nam|is nam|is_U ne'er_a| near|shellfish never_got_THING|
never|did next_door_for| next_th| nic|and nic|and_golden nip_THING_to| no_DISH_after| no_DISH|n
no_THING|can no_THING|no no_THING|so no_for| no_for|tom no_i_am| no_i_can| no_i|did no_sear_N:few|
non_to_b| nor|money not_N:core| not_breath| not_breath|someth not_budg_for| not_catch| not_com|after
not_eat_DISH| not_eat_it| not_eat|it not_expect_m| not_find_a| not_find_th| not_find|in not_get|
not_go_near| not_got| not_got|th not_hav|any not_hav|th not_keep| not_mind|a not_open| not_open|th
not_plan_for| not_put|it not_read| not_read|anyth not_risen|yet not_trust_th| not_trust| not_turn|th
not_want_th| not| not|a_singl not|any not|degre not|degre_f not|eat_THING not|eat_dairy not|eat_nut
not|find_a not|get_up not|hav_THING not|hav_a not|hav_any not|hav_nut not|i_carv not|listen
not|mad not|out_yet not|peel not|put_th not|ready_yet not|reduc not|risen_yet not|th_DISH now_at|N:few
now_i_hav| now_what_do| now|leo now|leo_from no|THING_in no|fan_on no|for no|mor_reminder no|r_win
nudg_m| nudg_th| number|i_am n|another n|another_Nduration n|do n|that of_THING|THING of_str_lik|
of_them_can| of_us_for| of_us|and off_on| off_out_for| off_th|menu off_to_th| off|Nduration
off|out off|sinc of|DISH_and of|cours of|it of|roast_DISH ok_THING|is ok_so|it ok_so|th ok|so_it
old|P old|P_eat old|money on_at|Nclock on_eat_at| on_for_th| on_i_am| on_let| on_our|whol on_sid|fewer
on_th_greas| on_th_leave-in| on_th|THING on_th|U on_th|leave-in on_th|motorway on_th|second
on_to_reduc| on_to| on_weight_in| on_whil_i| onc_it_pass| on|N:core_now on|dinner_they on|eat
on|eat_at on|hot_dog on|my on|th_middl on|whil on|whil_i open|Nduration or_som_delay| or|a
ought_to_b| ought| ought|to our_christma| our_christma|dinner our_oven_alway| our|U our|oven_alway
our|whol our|whol_street out_N:core|from out_Nduration|ago out_how| out_it|com out_of_th| out_of|U
out_on_our| out_on_th| out_they|ar out_to_get| out_to_minut| outsid_befor| outsid_befor|Nduration
outsid| out|a_touch out|at_N:some out|every out|every_tim out|for_N:few out|on_our out|would_you
oven_Nduration|back oven_alway|com oven_alway|run oven_down|to oven_glov_is| oven_has|gon oven_is_work|
oven_is|smok oven_no|fan oven_temperatur_i| oven_this_on| oven_took| oven_took|ag oven|THING_w
oven|at oven|beep_it oven|dial oven|is_dead oven|is_off oven|is_preheat oven|n oven|n_to oven|pack_up
oven|switch oven|switch_itself oven|ther oven|too over_N:core|when over_in| over_in|th over_my|arm
over_th|THING over|to_P own_a_leave-in| own|a_THING p_m_in| p_m|at pack|up pair_of| pair|of
pan_gon_up| pan_is|alight pan|is_after party_of| party_of|N:few pass|on pass|on_that patel|
paus| paus|it pencil|in pencil|in_DISH peopl_ar|start pet_is| pet|has pet|has_U phon_is|ring
phon|it_THING phon|to_my pink_it| plan_for|it plat_ar|warm plat_down| plat_down|at plat|down
plat|down_at plus_U| plus_U|who pok|m pok|m_about pop_out|for pop_to| pop_to|th possibl_to|
possibl_to|eat possibl| possibl|to possibl|to_eat postpon_of| postpon_of|Nduration pour_out|every
pour| pour|out_every pour|th pour|th_boil prefer|to preheat|th preheat|to_N:some press_th_wrong|
press|th prov_Nduration| pull_it_at| pull_this| pull_this|at pull_th|roast pull|in pull|temperatur_should
pull|up pur| put_DISH|cream put_a_timer| put_it_up| put_oven| put_oven|on put_th|THING put|m_Nduration
put|on put|oven put|oven_on put|th_oven put|you_on quantity_of| quantity_of|THING quick_th|oven
r_DISH_is| rar_for|all rar_thank_you| rar|or_near raw_THING_in| ready_and| ready_they| read|N:core
read|anyth reason_w_do| reason_w|do reckon| reduc|Nduration reduc|Nduration_ago remind_m_how|
remind_m_what| remind|m_of remind|m_to remov_DISH| remov_DISH|from remov|it remov|it_from rib_P|
rib_P|Nweight rib_with|N:few rid_of|th right_U|th right_at_th| right_down| right_down|to right_th|
right_w| right|at right|at_th right|now risen|yet road_is| roast_DISH_ar| roast_at|Nclock roast_get_to|
roast_it_is| roast_went_in| roast|DISH_with roast|Nweight_$ roast|cam roast|get roast|get_to
roll|and roll|i_hav rop|in rop|in_th run_a_good| run_bout_Nduration| run_bout| run_bout|Nduration
run_th|light run|Ndegrees:few run|Ndegrees:some_hot run|hot_by run|m run|m_through run|that_by
ruth_can| ruth_can|do r|in said|N:core_not said|N:some_not salt_i|hav salt| salt|finish salt|finish_THING
sat_them_down| sat|at sat|out say_N:core_and| say_N:oven_in| say|Ndegrees:core_$ say|U_tenderis
scald_steam_whol| scald| schedul|say schedul|say_on scrap_th|DISH scrap_th|roll scrap|that
scratch_th| scratch_th|green scream_th| sear_N:few| sear_is|don sear|it_right second_it|touch
second_on_th| second| second|on serv_Nduration| serv_Nduration|later serv_at|Nclock serv|N:few_later
set_for| set_th_oven| set_this| set_to|Ndegrees:oven set|a_timer sh_can|do sh_has|been sh_is_bring|
sh_is_sit| sh_is|a sh_is|don sh_is|go sh_want|her sh_will|b shav_N:few| shav_N:few|off shellfish_allergy|for
shift_everyth_by| shop_back| should|i_tak shout_in_Nduration| shout_when_th| shower_back_in|
shower_back| shower_back|in shy| sid|DISH sid|fewer sid|fewer_los simpl_DISH| simpl_DISH|will
sinc|N:oven_$ singl_DISH| sit_down_Nduration| sit|down_is skip_butter_th| skip|th_THING skip|th_french
sleep_in_th| sleep|in sleep|in_th slic|it slid_th| slid|th_roast slip_and|half slow_then| slow_today|everyth
smok_U_is| smok_U| smok_U|is smok_is_pour| snow_is| so_N:few_extra| so_count_him| so_plus|
so_plus|N:few so_serv| so_serv|N:few so_shav_N:few| so_sh| so_th_THING| so_watch|th so_what_ar|
so_w|ar sock_in| som_delay| som_delay|is someth_is| som|green som|green_DISH sooner_than| sorry_th|phon
so|N:few_extra so|N:some so|go_careful so|much so|serv so|serv_N:few so|tak_it so|tak_that
split|U split|U_theo stab| stab|it stab|it_N:core stand_in|for stand_it|on stand_rib_P| stand_rib_with|
stand|it start_from|scratch start_then| start_then|drop start|at_N:few start|now stay| steam_whol|
steam_whol|wrist step_by| step_by|step stick_som| stick_som|green still_crunchy_not| still_on_for|
still_raw_in| still_to| still_to|com still|boil still|in stir_th| stir_th|DISH stop|nagg_m
stop|th_Nduration stov_for| str_N:few| str_N:few|knot str_after| str_after|all str_lik_you|
str_lik| str_lik|you straight_in|th stuck|in_traffic stuck|on_N:core sur_i_hav| sur_you| sur_you|could
sur| switch_off_th| switch_on| switch_to|fahrenheit switch|off switch|th_oven system_for| system_for|my
system|for system|for_my tabl_Nduration| tabl_and|help tabl_at|Nclock tabl|at_N:few tak_THING_for|
tak_it| taken|th_roast tak|Nduration tak|it tak|it_out talk_too| talk_too|much talk|to_you
tell_m_to| tell|m_again tell|m_that temperatur_am| temperatur_am|i temperatur_is|medium temperatur_i|hav
temperatur|is_Ndegrees:core tent|it_with th_DISH_collaps| th_DISH_for| th_DISH_i| th_DISH_not|
th_DISH_sh| th_DISH|has th_DISH|ready th_DISH|under th_DISH|want th_DISH|yet th_N:few|hav th_P_and|
th_P|do th_THING_at| th_THING_hav| th_THING_i| th_THING|Nduration th_THING|and th_THING|of
th_THING|so th_THING|till th_THING|wok th_best_way| th_bottom_of| th_box|is th_bus| th_butter_so|
th_choic| th_clock_noth| th_crackl| th_cream_for| th_crew_is| th_dial_and| th_dishwasher|reminder
th_display_is| th_dog_THING| th_dog_had| th_dog_out| th_dog|THING th_door_it| th_even_w| th_fat|cap
th_fat|is th_first| th_flight_is| th_gang_is| th_gas_has| th_gas| th_go|with th_greas| th_greas|and
th_handl| th_handl|it th_henderson_so| th_high_heat| th_hot|oven th_hous_afternoon| th_hous_at|
th_in|law th_joint_in| th_joint_went| th_joint|is th_joint|went th_littl_N:few| th_messag|
th_metric_system| th_middl|and th_next_th| th_on_th| th_oven|beep th_oven|n th_oven|switch
th_oven|ther th_pan_is| th_plat_ar| th_rest_of| th_roast|get th_roast|has th_roast|went th_schedul|say
th_second_it| th_shop_back| th_simpl_DISH| th_small|oven th_stov_for| th_str_after| th_str|after
th_tabl_Nduration| th_thick|end th_timer|it th_top|of th_way_my| th_whol|plan th_with| th_wrong|th
than_it| than_it|say thank| thank|you_very than|it than|it_say that_by_m| that_is_join| that_is|a
that_saf| that_step| that_timer_and| that_was_wrong| that_was|wrong that|back_to that|green
that|green_DISH that|is_a that|last_bit that|work_$ them_can_not| them_can| them_down|with
them_i| then_is| ther_in|th ther_is_DISH| ther_is|flam ther_must| ther|has_been ther|is_N:few
ther|is_flam thes_DISH_don| thes|DISH_don they_U| they_hav_left| they_hav|com they_text_Nduration|
they_want_drink| they_will_not| they_will|not they|ar_fussy they|hav_got they|said thickest|part
thick|end think_in| this_and| this_can_you| this_oven|is this_very| this_very|second this|is_too
this|morn this|old_th this|plan this|plan_away throat|swell through_for_U| through_for|U through_th|plan
through_what| throw_this| throw_this|plan throw|that th|DISH_and th|DISH_bubbl th|DISH_butter
th|DISH_cancel th|DISH_ok th|DISH_th th|DISH_they th|DISH_this th|P_in th|P_to th|THING_in
th|THING_of th|THING_out th|bathroom th|beast th|boil th|bus th|crackl th|dinner_by th|dog_and
th|fat_is th|freezer th|guest_com th|hall th|henderson_so th|lad_hav th|middl_get th|motorway
th|music th|other_ar th|oven_THING th|oven_as th|oven_b th|oven_beep th|oven_flam th|oven_how
th|oven_now th|oven_th th|oven_what th|rest_ar th|road th|roast_fell th|roll_and th|roll_ar
th|roll_i th|schedul th|schedul_$ th|second_it th|second_shelf th|simpl th|simpl_DISH th|stor
th|tabl_DISH th|tabl_is th|top_oven th|trick th|ty th|work_$ th|year till|N:core till|N:core_$
tim_ar| tim_do_you| tim_m_N:few| tim_ther| tim_ther|is tim_would_b| timer_N:few|wrong timer_for|th
timer|N:few tim|is_lactos tim|should tim|should_i to_DISH|it to_N:core_i| to_N:oven_Nduration|
to_N:oven_for| to_N:oven_is| to_bak_Nduration| to_br|my to_b|Nduration to_b|don to_b|found
to_carv_Nclock| to_check_th| to_eat_Nduration| to_flip| to_flip|th to_hav_thes| to_hit| to_know_th|
to_li|down to_mak_th| to_mak| to_minut| to_minut|ago to_my| to_pick|th to_reduc| to_reduc|Nduration
to_sear|it to_start_then| to_tak_it| to_th|U to_turn|th today|everyth today|everyth_tak told_m|U
tom_can_not| tom_is| took_it|out took_th_DISH| took_th|DISH took_th|THING took|ag too|hot_to
top_of| top|shelf touch|it_if to|N:few to|N:oven_what to|N:some_$ to|eat_N:oven to|get_in to|giv_th
to|hit to|inform to|inform_when to|lif to|sear_it to|skip_butter to|sp trick_to| trick|to trim_th|
trim|and trim|it_is trip_and_everyth| trust_th| try_to| try|to turn_down|to turn_right_down|
turn|down under_so| under_so|tak under_what|it undo_th| up_for_a| up_from_N:core| up_so| up_to|
up_to|N:some up_what| upstair_to_get| upstair|for_Nduration upstair|to_get up|as_w up|at_N:few
up|from_N:core up|if us_THING_THING| us_do|DISH us_eat_at| us_for|THING us_know| us_skip| us|and
us|not_bother us|skip_that vegetarian_i| very|much very|second w_add_DISH| w_ar_Nduration|
w_ar_a| w_ar_go| w_ar_say| w_ar|Nduration w_ar|go w_ar|look w_ar|us w_eat_Nduration| w_get_on|
w_hav_not| w_hav_plenty| w_hav_run| w_hav_with| w_must_eat| w_on|schedul w_set_for| w_skip_th|
w_skip|th w_skip|this w_tak|it w_want|to w_will_hav| w_will|do w_will|eat w_will|sit wak_m_up|
want_drink| want_drink|first want_her|well want_his|rar want_it_well| want_it|on want_th|DISH
want_to| want| want|a want|for was_Nduration| was_not|listen was_on|N:core wash_your| wash_your|THING
was|at was|lay was|lay_th watch_th| watch_th|THING watch| watch|th_DISH way_my| way_sorry_th|
way_through_for| way_to_get| way|past wedd| weight_in|kilo weight| well_don|this well_my| well|behind
well|don_all went_into| went_out|at went_out|on went|on went|straight_into whack| what_ar_you|
what_can_i| what_can|i what_i_am| what_is|next what_must_i| what_must| what_must|i what_number|i
what_quantity_of| what_reason|w what_temperatur_am| what_tim_ar| what_tim|do what_tim|should
what_will_i| what_would|you whatever_you_call| what|go what|i what|it_claim what|now what|temperatur_do
what|was_that what|way what|you_learn when_can| when_do|th when_it|hit when_it|went when_th|middl
when_will_th| when_w|eat when_w|hit when|it_hit when|it_r when|it_went when|sh when|will_th
wher_exactly_do| wher_exactly| wher_exactly|do which_all_item| which_is_th| whil_got_guest|
whil_i|nap whil_w| whisht| whisht|ther whisht|ther_Nduration who_can_not| who_has_allergy|
whol|wrist why_do|i why_do|it why|can why|can_not why|do_it will_arriv|Nduration will_do_without|
will_giv| will_handl| will_handl|anyth will_not|hav will_se_you| will|b_Nduration will|do_it
will|not_eat will|not_touch will|sit will|sit_down win_in|th wireless_THING_is| wireless_THING|
wireless_THING|is wish_m| wish_m|luck with_DISH| with_N:few|bon with_it_so| with_medium_rar|
with_th_oven| with_th|DISH with_th|P with_th|soup with_you_for| without| without|bon with|Nduration_of
with|U_THING with|medium_rar work_on| work_that_is| would_P|to would_b|N:oven would_go|nic
would_lik|it would_not_mind| would|THING w|ar_do w|ar_lat w|at w|eat_i w|hav_got w|hav_no w|hav_pick
w|hav_to w|hav_trip w|hold w|hold_everyth w|must w|pull w|want w|will_eat year_instead_roll|
yes_that_is| yes_that|is yet_still|boil you_ar|go you_ar|th you_ask| you_call| you_can_split|
you_can|mak you_cut| you_for|Nduration you_giv_m| you_hav_got| you_in|N:some you_shov_it| you_turn|
you_watch| your_man| your|man your|pardon your|pardon_$ you|add you|add_that you|ar_ahead you|n_not
you|run_that you|se yusuf_is_throat| |@103.2 |@105 |@105.5 |@121.5 |@128.3 |@19 |@22 |@34.7
|@38.2 |@4.12 |@52.3 |@57.2 |@60 |@61.1 |@7.1 |@76.0 |@76.1 |@78.4 |@90.3 |@97.2 |DISH_DISH_it
|DISH_DISH_thos |DISH_DISH_too |DISH_DISH_with |DISH_bubbl |DISH_cancel |DISH_cream_as |DISH_don_in
|DISH_i_hav |DISH_in_and |DISH_is_split |DISH_is_way |DISH_it_want |DISH_nobody_lik |DISH_ok
|DISH_on_slow |DISH_out_$ |DISH_so_that |DISH_start |DISH_th_$ |DISH_th_bon |DISH_they_ar |DISH_this
|DISH_what_did |DISH_whil |N:core_DISH_ar |N:core_U |N:core_and_how |N:core_has |N:core_my
|N:core_tell |N:core_tell_m |N:core_too_low |N:core_will |N:few_DISH_U |N:few_do_you |N:few_early
|N:few_eat |N:few_i_am |N:few_instead_$ |N:few_is_when |N:few_later |N:few_less_th |N:few_month_pregnant
|N:few_sh_is |N:few_to_flip |N:few_under_so |N:oven_already |N:oven_already_$ |N:oven_how |N:oven_i_hav
|N:oven_lik |N:oven_lik_Nduration |N:some_it |N:some_it_is |Nclock_and_w |Nclock_in_th |Ndate_at_N:core
|Nduration_N:few |Nduration_and_th |Nduration_befor_w |Nduration_giv |Nduration_lat_with |Nduration_mor_early
|Nduration_no |Nduration_of_delay |Nduration_on_for |Nduration_oven |Nduration_pet |Nduration_sooner_than
|Nduration_w_ar |Nduration_whil |Nduration_whil_i |Ngas-mark_and |Nweight_THING_of |P_and_th
|P_eat_with |P_fre |P_fre_to |P_is_with |P_non |P_put |P_put_th |P_say_it |P_set_this |P_sh_is
|THING_a_leg |THING_is_off |THING_is_on |THING_it_bl |THING_never_own |THING_out_of |THING_sorry
|THING_whol |THING_whol_Nweight |THING_would_you |U_not |U_not_all |U_sak |U_tak |U_tenderis
|U_th_roast |U_theo |U_theo_is |a_DISH_in |a_DISH_instead |a_Nclock |a_Nduration |a_Nduration_timer
|a_U_and |a_fan |a_no |a_power_failur |a_r |a_ston |a_tabl |a_tent |a_touch |a_touch_early
|about_th_guest |add_that |afraid |after |again_and_it |ago_$ |ago_$_$ |ago_it_was |all_THING_th
|all_of_us |all_too |all_too_much |allergic_to |allergy_$ |allergy_$_$ |alon_for |along_$ |along_$_$
|alway_run |am_a |am_after |am_away_from |am_back |am_behind_by |am_go |am_hav |am_lagg |am_lagg_by
|am_lat |am_lat_with |am_not_do |am_tak_Nduration |am_well |am_well_behind |and_fahrenheit
|and_golden |and_hot_to |anyth_with |anyth_with_pastry |appointment |ar_a_bit |ar_ahead |ar_ahead_of
|ar_all_sat |ar_away_$ |ar_early |ar_fussy |ar_her_and |ar_in_alongsid |ar_mak |ar_out_and
|ar_peel_and |arriv_Nduration |arriv_th |as_of_now |ask_th_THING |at_N:core_already |at_N:few_in
|at_N:few_instead |at_N:few_on |at_Nclock_U |at_Ndegrees:oven_$ |at_it_$ |at_tabl |at_th_door
|away_from_th |b |b_this |b_want |back_a_tick |back_by_Nduration |back_from_th |back_is |bath_th
|bath_th_P |been_at |been_don |befor_w_sit |behind_Nduration |behind_her |bit_is |bit_off |board_with
|bon_N:core |bon_not |bon_rib |bottom_$ |bottom_$_$ |burn_my_THING |bus_is |butter_for_th |butter_it
|buy |call_out |call_out_N:core |call_them |cam_U |can_carv |can_carv_$ |can_hear |can_stir
|can_stir_th |car_pull |cat_$ |cat_$_$ |celsius_and_kilo |celsius_i |centr_it |centr_it_is
|chok |church |cold_by |cold_on |com_in_Ndegrees:some |com_it |com_it_is |cook_now |cooker_is
|cooler |could_not_hav |could_w_hav |crunchy |dangerous |deb |degre_f |degre_for |dial_THING
|did_i_miss |did_you_get |dinner_and |dinner_forward_Nduration |dinner_they_hav |do_N:few |do_everyth
|do_fahrenheit |do_her |do_i_tak |do_not_lik |do_not_plan |do_not_trust |do_now |do_with |don_no
|don_so |door_$ |door_$_$ |door_and |door_for |door_on |dot |dot_is |down_Nduration_for |down_is_N:few
|down_to_N:core |down_to_Ngas-mark |down_to_th |down_yet |drop_it_$ |earlier_than |earlier_than_plan
|eat_N:oven |eat_at_Nclock |eat_dairy |eat_i |eat_it_otherwis |eat_nut |every_tim_i |everyth_go
|everyth_tak_longer |exist |f_that |f_that_is |fan_on_this |fat_off |fell_on |fell_on_th |fell_out
|fewer_los |fewer_los_th |find_a |find_a_THING |find_in |finger_$ |finger_$_$ |finish_THING_U
|finish_i |first_so |first_so_N:some |flam_and |for_N:few_adult |for_THING_$ |for_is |for_mark
|for_my_german |for_th_whol |french_$ |french_$_$ |french_it |fresh_$ |fresh_$_$ |from_list
|from_th_shop |from_th_stov |full |full_$ |full_$_$ |fussy |gaug |gaug_must |gaug_must_b |german
|get_N:core |get_THING |ghe |giv_th_THING |go_careful |go_to_br |gon_out |good_THING |got_THING_to
|got_a_cold |got_to_b |green_DISH_my |guid |guid_m |guid_m_th |h_pour |h_pour_th |had_it |happy_with_medium
|has_U_$ |has_U_U |has_arriv_$ |has_fallen_over |has_gon_$ |has_gon_everywher |has_reach |hav_Ndegrees:core
|hav_any |hav_burnt_my |hav_complet |hav_complet_se |hav_got_a |hav_invit |hav_invit_th |hav_it_yet
|hav_kept_at |hav_knock |hav_land_$ |hav_lost |hav_mad |hav_miss_th |hav_not_mad |hav_nut |hav_peel
|hav_peel_th |hav_pick |hav_pick_up |hav_pull_it |hav_put_it |hav_put_too |hav_rung_they |hav_sat_them
|hav_taken |hav_to_eat |hav_trip |hav_trip_someth |hav_w_got |hear_is |hear_is_not |heat_and
|help_now |help_us_$ |henderson_so |her_N:few_still |his_rar |hit_N:core_it |hold_everyth_for
|homework_$ |homework_$_$ |hot_by |hot_by_N:some |hot_dog |hot_so |how_far |how_to |how_w |i_ask_$
|i_ask_th |i_at_a |i_behind |i_behind_$ |i_carv_it |i_cover |i_cover_it |i_do_with |i_hav_bought
|i_hit |i_hit_th |i_know |i_on |i_turn_th |if_it |in_N:core_$ |in_Nduration_for |in_Nduration_pet
|in_Nduration_that |in_a_THING |in_a_U |in_my_sho |in_now_$ |in_onc |in_th_box |in_th_sink
|in_th_top |in_traffic |in_yet_still |inform_when |inform_when_it |insist_$ |insist_$_$ |instead_of_butter
|iron_pan |is_N:core_i |is_N:few_$ |is_N:few_bon |is_N:few_so |is_N:some_month |is_THING_and
|is_U_new |is_U_th |is_a_THING |is_a_U |is_after_go |is_all_carv |is_all_too |is_at_th |is_back_$
|is_back_to |is_becom_butter |is_broken_so |is_by |is_celsius |is_celsius_i |is_chop_for |is_cut_up
|is_don_what |is_fin_as |is_flam |is_full_$ |is_go_in |is_go_off |is_hurt |is_hurt_h |is_it_on
|is_no_second |is_not_a |is_not_happen |is_not_heat |is_not_read |is_offer_to |is_on_at |is_outta
|is_outta_ther |is_peel |is_plan |is_preheat |is_pull |is_run_bout |is_smok_$ |is_split_open
|is_squeaky |is_still_DISH |is_strain |is_th_N:few |is_th_best |is_th_go |is_th_next |is_th_reason
|is_thin |is_thin_as |is_too_salty |is_vegetarian_i |is_way_over |is_went |is_went_in |it_a_rest
|it_after |it_alon |it_and_it |it_at_N:oven |it_claim |it_is_N:oven |it_is_boneless |it_is_burn
|it_is_over |it_is_tell |it_medium |it_off_th |it_on_$ |it_on_tim |it_otherwis |it_out_at |it_pink_$
|it_pink_all |it_right_at |it_said_N:core |it_sat |it_sit |it_touch_N:core |it_up_to |it_want
|it_warm |it_was_hot |join_th |kidney |kilo |know_it |lactos_intolerant |lad_hav |lad_hav_land
|last_bit_$ |lat_sav |lat_sav_her |lat_they |lat_with_th |later_Nduration |leav_it |left_at
|leo_from |leo_from_upstair |lif |light_$ |light_$_$ |lik_P |lik_an |lik_her_cremat |lik_her_well
|long |long_is |look_at_N:core |m_Nduration_$ |m_Nduration_behind |m_in_i |m_it_is |m_lik |m_lik_i
|m_of |m_of_th |m_what_i |mad_th |mad_th_DISH |mak_it_after |mak_with_ghe |manag_it |many_degre
|mark_$ |mark_$_$ |mean_to |messag_$ |messag_$_$ |microwav |middl_get |middl_get_to |mo |money_$
|money_$_$ |month_pregnant |mor_for |mor_guest |mor_reminder |much_go |much_go_on |much_of
|much_pip |much_pip_up |murder |must |my_P_on |my_arm_on |my_german |my_german_visitor |my_god_ther
|my_tail |my_tail_Nduration |myself_on |myself_with |myself_with_th |n_$ |n_$_$ |n_Nduration_befor
|n_another_go |n_not_call |n_to_do |nagg_m |new_th_joint |nic_with |nic_with_this |night_$
|night_$_$ |no_THING_so |no_U_of |not_N:some_$ |not_a_THING |not_b_by |not_eat |not_even_touch
|not_find_in |not_great |not_hav |not_hav_dairy |not_her |not_in_yet |not_mean |not_mean_to
|not_peel |not_peel_anyth |not_th_hour |not_turn_it |now_leo |now_leo_from |of_DISH_$ |of_DISH_and
|of_THING_for |of_butter_$ |of_dry |of_dry_THING |of_m |of_rib |of_rib_roast |of_th_THING |of_th_even
|of_th_lad |off_DISH_cream |on_at_N:oven |on_my_end |on_our_whol |on_out |on_paus |on_slow
|on_th_menu |on_that_$ |on_track_$ |open_th_door |open_that |open_that_door |or_near_enough
|out_$ |out_$_$ |out_every |out_every_tim |out_for_N:few |out_for_thos |out_they_ar |out_to_get
|out_would_you |out_yet_$ |outta_ther |outta_ther_Nduration |oven_alway_com |oven_as |oven_b
|oven_beep |oven_beep_it |oven_flam |oven_no_fan |oven_on_whil |oven_what |over_in |over_in_th
|over_my_arm |pack_in_$ |pan_handl |pardon_$ |pardon_$_$ |park_$ |park_$_$ |peopl_in |person_is
|phon_$ |phon_$_$ |pick_th |piec_of_THING |pink_THING_saf |pink_all_th |pink_it |pink_so |pink_so_well
|pip_up |pip_up_if |plan_away |plan_away_and |point_of |possibl_to |possibl_to_eat |practically_burnt
|practically_burnt_well |prefer_to |put_already |put_already_th |put_oven |put_oven_on |r_DISH_so
|rang |raw |ray |read_N:core_already |read_Ndegrees:core |ready_it |ready_it_is |ready_they_n
|reminder_can |reminder_can_go |rest_ar |rest_it_$ |rest_now |rib_with_N:few |risen_yet |roast_fell
|roast_fell_on |roast_it |roast_it_is |roast_so |roll_i |roll_i_hav |roommat |run_Ndegrees:some_cool
|run_Nduration_$ |run_a_good |run_at |run_so |run_th |run_th_light |saf_$ |saf_$_$ |saf_to
|said_N:oven |said_and |said_what |sat_on |say_Ndegrees:core_$ |scrap_clean |sear_it_right
|season_th_roast |second_it |second_it_touch |second_shelf |second_shelf_from |serv_N:few_later
|sh_is_offer |shall_b_at |sharp_$ |sharp_$_$ |sharp_kindly |shav |shop_is_shut |shout_in_Nduration
|show_up_so |shower |shower_Nduration_top |sick_$ |sick_$_$ |sid_DISH_th |sid_th |simpl_DISH
|simpl_DISH_will |sink_$ |sink_$_$ |sit_down_Nclock |skip_butter |skip_butter_th |skip_th_bast
|skip_th_french |skip_that_bit |slic |slic_and |small_on |smell_amaz_$ |smok_com_from |so_count_him
|so_go |so_they_ar |so_wer |so_wer_without |som_roll |someth_is_stuck |speak |steady_temperatur
|still_DISH_$ |stor |straight_into |straight_into_my |switch_itself |switch_itself_off |tabl_DISH
|tabl_DISH_ar |tabl_is |tak_Nduration |tak_th_THING |tak_that_into |taken_their |taken_their_seat
|talk_too |talk_too_much |target_$ |target_$_$ |temperatur_all |temperatur_all_th |temperatur_ar
|temperatur_do |temperatur_do_i |temperatur_should |temperatur_should_land |th_DISH_Nduration
|th_DISH_THING |th_DISH_another |th_DISH_got |th_DISH_too |th_THING_N:few |th_THING_check |th_THING_of
|th_THING_wok |th_U_N:core |th_best |th_block_Nduration |th_boil |th_boil_water |th_bottom_of
|th_break |th_center |th_choic |th_choic_again |th_cow |th_cow_is |th_day_$ |th_dial_THING
|th_doorbell |th_doorbell_they |th_floor_$ |th_guest_cam |th_guest_will |th_has |th_heat_$
|th_kettl_on |th_list_$ |th_liv |th_liv_room |th_lot_to |th_middl_shelf |th_moment_i |th_party
|th_phon_is |th_r |th_roast_into |th_roll_and |th_sticker |th_str_after |th_tabl_now |th_telly_$
|th_thick |th_thickest |th_timer_off |th_top_won |th_way |th_way_and |that_N:core |that_by
|that_by_m |that_ok |that_timer_$ |ther_Nduration_stop |they_ar_run |this |this_year_and |thos
|thos_bon |thought_i |through_$ |through_$_$ |through_what |ti_this |ti_with |ti_with_th |tim_ar_w
|tim_it |tim_it_is |tim_not |tim_would |tim_would_b |timelin |timer_on_th |to_DISH |to_N:oven_lik
|to_Ngas-mark_$ |to_P_is |to_U_sh |to_buy_DISH |to_buy_THING |to_do_next |to_f_th |to_giv |to_help_$
|to_help_m |to_run |to_say_$ |to_sear |to_skip |to_skip_butter |to_temperatur_$ |to_warm |tom_h
|tom_h_swell |too_low_$ |transplant |trifl |trim_and |trim_it_$ |trim_th_fat |trivet_$ |trivet_$_$
|twic_as |twic_as_long |uncover_overnight |under_way_sorry |under_what |undo_that |up_lovely
|up_to_N:core |up_when_it |us_$ |us_$_$ |us_a_U |us_celsius_and |us_do |us_get |us_hav |us_it_is
|w_ar_not |w_do_about |w_eat_Nduration |w_skip_th |w_still_on |w_tak_it |w_win |w_win_$ |walk_in_$
|want_for |was_$ |was_$_$ |was_N:core_not |was_in |was_show |was_wrong_undo |wash_up_as |way_past
|wedd_$ |wedd_$_$ |weigh_Nweight_$ |well_behind |well_behind_her |well_that |went_on_to |wet
|what_reason |when_it_get |when_it_r |when_it_went |when_you_check |whil_rest_$ |who_is_a |will_b_DISH
|will_b_N:few |will_eat |will_not_hav |will_not_heat |will_sear |will_th |with_Nduration_of
|with_medium |with_th |with_th_soup |wok_up_N:core |work_$ |work_$_$ |would_brown |would_brown_it
|would_lik |would_you_do |y |ya_$ |ya_$_$ |year_and |year_i |you_learn |you_mak |you_put_in
|you_put_th |you_say_$ |you_very |you_very_much
-10 @117.5| @124.2| @143.1| @146.3| @32.4| @40| @42.5| @64.4| @68.4| @70| @72.1| @75.5| @87|
@93| @95.0| @95| DISH_DISH_so| DISH_THING|is DISH_and_th| DISH_ar|boil DISH_ar|glaz DISH_ar|nic
DISH_ar|still DISH_a|THING DISH_cream_DISH| DISH_cream|as DISH_for_th| DISH_for|N:few DISH_for|th
DISH_from_th| DISH_go|in DISH_has|been DISH_has|gon DISH_in_and| DISH_in_at| DISH_is|don DISH_is|finish
DISH_it_alon| DISH_it|is DISH_i|am DISH_miracl| DISH_miracl|happen DISH_my|guest DISH_n_another|
DISH_non| DISH_non|to DISH_now| DISH_off_th| DISH_on_th| DISH_sh| DISH_start|now DISH_still|
DISH_this_year| DISH_w_lik| DISH_whatever_you| DISH_what|did DISH_with| DISH_w|hav DISH|DISH_my
DISH|DISH_out DISH|P_w DISH|ar_want DISH|cream_DISH DISH|cream_as DISH|did DISH|did_not DISH|duty
DISH|has_split DISH|in_ther DISH|it_alon DISH|it_want DISH|on_slow DISH|out_th DISH|so DISH|they_ar
DISH|this_very DISH|this_year DISH|to_bak DISH|will N:core_about|Nduration N:core_and_i| N:core_and|how
N:core_and|it N:core_bottl_of| N:core_for|th N:core_has|not N:core_i_want| N:core_in|th N:core_now_in|
N:core_right|end N:core_w_ar| N:core_when|it N:core_would| N:core_would|you N:core_w| N:core_year|old
N:core|already_and N:core|at_N:few N:core|on_th N:core|too_hot N:core|year_old N:core|yet N:few_P|and
N:few_U|is N:few_U|on N:few_adult_and| N:few_adult| N:few_and_i| N:few_and_th| N:few_bon_and|
N:few_count_th| N:few_her|so N:few_is_when| N:few_of| N:few_oven_and| N:few_oven_th| N:few_sharp_U|
N:few_short_U| N:few_so_that| N:few_th_lad| N:few|adult_mor N:few|fewer_$ N:few|month_old N:few|mor_plac
N:few|need N:few|need_chang N:few|piec N:few|rib_Nweight N:few|short N:few|short_U N:few|still
N:few|th_lad N:few|till_N:few N:few|to_flip N:oven_about_Nduration| N:oven_for_a| N:oven_i_am|
N:oven_lik| N:oven_lik|Nduration N:oven|or_so N:some_for|th N:some_lat|on N:some_not|N:some
Nclock_and|what Nclock_how| Nclock_on_th| Nclock|U_our Nclock|was Nclock|was_N:core Ndate_at|N:core
Ndate|lunch_at Ndegrees:some_under|what Ndegrees:some|in_Nduration Nduration_after_w| Nduration_and_i|
Nduration_and_what| Nduration_and|w Nduration_away|from Nduration_from| Nduration_giv| Nduration_in_th|
Nduration_i|am Nduration_lat_i| Nduration_lat_they| Nduration_left_on| Nduration_timer|go Nduration_to_preheat|
Nduration_walk_th| Nduration_whil_i| Nduration_whil| Nduration_whil|i Nduration|ago_sorry Nduration|away_from
Nduration|befor_dinner Nduration|behind_$ Nduration|behind_and Nduration|behind_with Nduration|down_$
Nduration|i Nduration|is_up Nduration|lat_with Nduration|mor_early Nduration|on_dinner Nduration|sooner_than
Nduration|that Nweight_and|i Nweight_it| Nweight_leg| Nweight_leg|of Nweight_on_th| Nweight_with|
P_and|th P_ar_gnaw| P_at_it| P_can|not P_do|not P_eat|with P_gav| P_gav|m P_has_been| P_has|arriv
P_is_insist| P_is_sat| P_is|N:some P_is|chok P_i|hav P_mad_th| P_no|shellfish P_open|that P_set_th|
P_th_roast| P_turn|th P_who| P_w| P|at_th P|drank P|drank_it P|eat_with P|has_arriv P|is_N:few
P|is_her P|is_insist P|is_on P|is_with P|want_his P|will_eat THING_DISH_non| THING_N:core_Nduration|
THING_THING_and| THING_THING_caught| THING_THING|and THING_and_i| THING_as| THING_at|th THING_a|joint
THING_board| THING_caught| THING_could_i| THING_do_instead| THING_do|in THING_for|Nduration
THING_gaug| THING_gaug|must THING_h_is| THING_h|is THING_in|this THING_is|insid THING_is|not
THING_is|ti THING_never_own| THING_not| THING_no|sear THING_of|th THING_on_DISH| THING_out_to|
THING_out|to THING_r_say| THING_so_do| THING_test| THING_test|a THING_up_at| THING_w|ar THING|Nweight_bon
THING|THING_sadly THING|THING_would THING|at_Nclock THING|back_Nduration THING|behav THING|behav_itself
THING|enough THING|h THING|has_been THING|is_alway THING|is_on THING|leg THING|ok THING|or_U
THING|pan_and THING|r_say THING|rather THING|rather_than THING|test_a THING|to_my THING|up_U
U_N:few| U_THING| U_U_i| U_and_th| U_and|nobody U_by|th U_do|not U_get_her| U_get| U_is|coeliac
U_is|go U_is|not U_i|hav U_my|god U_n|N:few U_of|THING U_on_th| U_th_Nduration| U_th|dial U_watch|
U_watch|th U|DISH U|and_bob U|cancell U|cancell_so U|crap U|crap_th U|i U|is_P U|is_expect
U|not_all U|number U|of_a U|so U|th U|th_gam U|with_th ^_DISH_and| ^_DISH| ^_DISH|on ^_DISH|out
^_N:few_extra| ^_N:few| ^_N:few|THING ^_N:few|mor ^_N:few|person ^_N:some_on| ^_Nclock|for
^_Nduration| ^_Nduration|from ^_Nweight_of| ^_P_it| ^_P| ^_P|dot ^_THING_say| ^_THING_went|
^_U_do| ^_U_ther| ^_U_timer| ^_U|crap ^_U|say ^_^_DISH| ^_^_N:few| ^_^_Nduration| ^_^_P| ^_^_alex|
^_^_dan| ^_^_diall| ^_^_explain| ^_^_giv| ^_^_hey| ^_^_leg| ^_^_mik| ^_^_of| ^_^_peopl| ^_^_phon|
^_^_pop| ^_^_p| ^_^_sack| ^_^_show| ^_^_small| ^_^_steady| ^_^_strik| ^_^_took| ^_^_turn| ^_^_walk|
^_^_w| ^_alex| ^_alex|can ^_all|guest ^_and|then ^_ar|th ^_b_quiet| ^_bottom_oven| ^_burnt_myself|
^_burnt_my| ^_can|w ^_can|you ^_check_with| ^_clear_all| ^_clear|all ^_dan| ^_diall| ^_dinner|Nduration
^_do_a| ^_do_th| ^_don_with| ^_drop_th| ^_drop|th ^_electric_is| ^_everyth|is ^_explain| ^_forget_about|
^_forget_th| ^_fus_has| ^_giv_th| ^_giv| ^_green_DISH| ^_guest_will| ^_hang|on ^_hav_kept|
^_her_P| ^_hey| ^_his|P ^_hold|on ^_i_burnt| ^_i_drop| ^_in_th| ^_it|r ^_i|do ^_i|fancy ^_i|n
^_i|thought ^_jess_is| ^_kill_th| ^_leav|th ^_left_end| ^_leg| ^_medium_i| ^_mik| ^_mov_dinner|
^_of| ^_oven_temperatur| ^_oven|run ^_peopl_ar| ^_peopl| ^_peopl|ar ^_phon| ^_plat_ar| ^_pop_next|
^_pop| ^_put_th| ^_p| ^_p|m ^_reckon|w ^_run|Nduration ^_sack_off| ^_sack| ^_saignant|is ^_sam_is|
^_sam_temperatur| ^_scratch|that ^_serv|Nduration ^_shout_when| ^_show| ^_slid|th ^_small|
^_small|oven ^_so_my| ^_so_what| ^_som_of| ^_sorry_i| ^_start_th| ^_steady| ^_steady|heat ^_still|not
^_strik_th| ^_strik| ^_strik|th ^_stuck_th| ^_tak_a| ^_th_cheap| ^_th_last| ^_th_plat| ^_th_twin|
^_th_whol| ^_they_n| ^_this_is| ^_this|oven ^_th|U ^_th|display ^_th|lad ^_th|leave-in ^_th|roast
^_th|sear ^_timer_for| ^_timer|Nduration ^_tim|is ^_took| ^_turn| ^_us|celsius ^_w_lik| ^_w_ran|
^_w_shall| ^_walk| ^_what_a| ^_what_should| ^_what|should ^_when_do| ^_when_is| ^_when|i ^_whip_it|
^_w| ^_w|do ^_w|eat ^_w|tak a_THING_with| a_U_n| a_bit_lat| a_bit_off| a_bit|lat a_block| a_block|sink
a_conventional| a_conventional|oven a_few|DISH a_good_reason| a_helper|today a_no| a_number|
a_number|i a_proper|THING a_second| a_second|tim a_shout|in a_shower|b a_topsid| a_topsid|this
a_vegan_if| a_whil_got| a_whil_yet| actual_U| actual_U|and add|a_DISH add|that after_all_that|
after_it|is after_th|break after_w| afternoon_f_that| after|th_DISH against|DISH again|P ago_it_was|
ago_ther_in| aim|for_N:core alarm|is_scream alex_can_stir| alex_can|do all_N:few|of all_THING|th
all_at_th| all_at| all_in_coat| all_mix| all_mix|up all_of| all_of|them all_what| allergic|to_DISH
all|grey all|sat_down already_hav| already_in_th| alway_cold| alway_cold|by am_Nduration|behind
am_Nduration|down am_all| am_away|to am_a| am_go|to am_i|U am_nip|out am_off|out am_off|to
am_read| am_read|N:core am_skip|th am_still|N:few am_tak_Nduration| am_us_a| am_way| am_way|behind
am_yet| am_yet|to am|U_$ am|after am|hav am|i_lat am|i_look am|in am|miss am|not_american am|not_do
am|so_behind am|sorry_to and_DISH_ar| and_anyth|i and_bob_is| and_dav|so and_deb| and_deb|ar
and_do|i and_forget_th| and_hot_to| and_i|do and_i|want and_i|will and_left| and_let|us and_now_what|
and_now|what and_no|THING and_on_th| and_out|of and_oven|is and_put_th| and_run| and_then|noth
and_they_hav| and_th|power and_took_it| and_turn| and_turn|th and_w_will| and_what_ar| and_w|ar
and_w|hav and|golden and|her and|it_is and|net and|no_THING and|out and|out_of and|sur and|then_th
and|took_it and|undo_that any_other|drawer any_r| any_r|win anyth_i|should anyth| anyth|that_had
anyth|with anyth|with_pastry an|alert an|alert_for an|end an|end_piec ar_N:few|peopl ar_N:few|short
ar_Nduration|too ar_U|is ar_a_no| ar_all_THING| ar_all_sat| ar_bring_N:few| ar_gnaw| ar_gnaw|th
ar_go|too ar_her_N:few| ar_look| ar_mak_DISH| ar_mak|DISH ar_my|option ar_nic_and| ar_not_brown|
ar_not|com ar_not|don ar_on|your ar_sit_at| ar_w_still| arriv_so| arriv_so|far ar|a ar|all_her
ar|early ar|glaz ar|miss ar|my_option ar|nic ar|nic_and ar|off ar|out ar|run_Nduration ar|scrub_and
ar|still_THING ar|tell_they ar|w_do ar|w_hav ar|w_nearly as_soon| as_soon|as ask_th_THING|
at_N:core_th| at_N:core_what| at_N:core|so at_N:few_is| at_Nclock_how| at_Nclock_w| at_Nclock|w
at_Nclock|was at_it_all| at_th_colour| at_th|very at_which| at|N:core_so at|N:few_Ndate at|N:few_P
at|N:few_th at|N:oven_now at|N:oven_th at|Nclock_and at|Nclock_it at|Nclock_was at|Nclock_what
at|Ndegrees:core_$ at|it_all at|onc_and at|th_end at|th_till at|work availabl_in| availabl_in|our
away_from| away|to a|Nweight_topsid a|THING_THING a|THING_a a|THING_pan a|call a|fac a|glass
a|good_Ndegrees:some a|hot_finish a|leg a|low a|moment a|new_THING a|nut a|nut_allergy a|peek
a|r_DISH a|second_tim a|set a|set_for a|singl_DISH a|timer_on a|yell b_f_by| b_f| b_mak|th
b_on_th| back_a| back|Nduration_$ back|a_tick back|by_Nduration back|in_N:core back|thank back|thank_god
back|to_N:core bad_new_th| bad|off bad|off_th bear|that bear|that_in becom_butter_what| becom|very
becom|very_sick been_don| been_in|sinc been_off_sinc| been_taken| been_turn_right| been_turn|
been_turn|right been|turn been|turn_right beep_it| beep_it|is beep_m_in| beep|at beer|is beer|is_open
befor| behav| behind_by| behind_by|Nduration behind_in| behind_with_th| besid_th| besid_th|THING
best| bin_th|timer bit_lat|in bit_mor| bit_mor|tim bit_off|th bit|lat_in bit|of_THING blast_it|
blast_it|at blew_actual_U| block|sink blood_everywher_th| blood|everywher blood|everywher_th
board_THING|enough board_with| bob_is|your boil_water|down boil|water_down boss| bottl_of|beer
bottom_oven| bought_a_topsid| bought_th| bought|butter br_my| breaker_trip| breaker_trip|and
bring_N:few| bring_N:few|mor bring_a|THING bring_his| bring_th|new bring|th_DISH brought_their|
brought_their|P brought|mat brown_it_all| brown|it_all brown|it_first br|it br|my_P burn_my|THING
burn_pretty_bad| burnt_my|THING burn|pretty burn|pretty_bad butter_what_a| butter_what|a butter|what
button|by button|by_accident buy|for buzz|m by_Nduration_i| by|THING by|m b|an b|mak b|quiet_for
b|silent_now b|ther call|for call|m_back call|m_when cam_U|not cam_out_of| can_do_th| can_do|th
can_drop| can_drop|th can_i_refreez| can_i_tak| can_i|tak can_miss| can_miss|that can_not_mak|
can_not|b can_not|keep can_stir| can_stir|th can_w_add| can_w_hav| can_w_los| can_you_add|
can_you|believ can_you|imagin cancel_th|DISH cancell_so|N:few cancell_they_will| cancell_they|
cancell_they|will cancell|so_N:few can|it_sit can|not_breath can|not_mak can|sit can|sit_down
can|w_br can|w_hold can|you_shov cap| carry_so_tak| catch_my| catch_my|breath centr_still_N:few|
chair|and chair|and_th chang_it| check_tell| check_tell|m check|it_and chip|pan chip|pan_is
chop|for chop|for_m chuck_an_extra| clock_for_th| clock|for_Nduration clos| clos|th_pass cold_on|th
cold|Ndegrees:few_$ cold|by_N:some collect_th|wean com_P| com_P|is com_from| com_out_in| com_so|knock
com_to_th| com_up_to| com_up|at com_up|to com_w|hav company_pull_in| company|pull company|pull_in
complet_som_tim| com|out_it cooker|is_Ndegrees:some cook|it cooler| could_dinner_happen| could_dinner|happen
could_w|hav could_you_plan| could|dinner could|w_hav count_him_out| cover|it_with cream_DISH|
cream_DISH|would cream_i|do cream|as cream|as_well cremat_so| cremat_so|well crew_is_happy|
crew|is crew|is_happy cross_it|off crowd|is crowd|is_in cut_board_THING| cut_myself_quit| cut_th_oven|
cut|my_THING dav|so dav|so_N:few dead_centr_it| dead_it|will deb|ar deb|ar_not decid_against|
decid_against|DISH degre_for| delay_by| delay_by|Nduration delay_dinner_by| delay_so|P delay|by
delay|by_Nduration dial_THING_show| dial_THING|show did_not|ris did|not_catch did|not_ris did|not_say
did|you_hear did|you_say dinner_b_at| dinner_happen| dinner_happen|Nduration dinner_if_you|
dinner_is|go dinner_tim|would dinner|at_N:oven dinner|b_at dinner|happen dinner|happen_Nduration
dishwasher_reminder_can| ditch| do_a_DISH| do_i_set| do_instead_of| do_it_by| do_i|do do_i|ti
do_not_expect| do_not_tak| do_not_trust| do_th|french do_th|oven do_th|second do_you|want dog_had_half|
dog|had dog|had_half don_all_th| don_put| don_put|th don|all don|so_far don|yet_and doorbell_is|
doorbell_is|gon dough| dough|is dough|is_shap down_for_th| down_is|N:few down_to|their down|for_Nduration
down|to_N:core down|to_N:some do|DISH_DISH do|i_know do|i_pull do|i_tak do|in_plac do|it_by
do|not_P do|not_bother do|not_hav do|not_trust do|th_afternoon do|th_french do|th_second do|with_th
do|without do|without_th do|you_think dress_giv_m| drink_first| drink_first|so drop_back|to
drop|th_timer dry|brin_this early_they_ar| earth|do eat_Ndate_at| eat_Nduration|befor eat_Nduration|mor
eat_anyth|that eat_a| eat_by|Nclock eat_it_at| eat_with_us| eat|DISH_so eat|nut eat|r eat|with
eat|with_us electricity|has_gon elli_is_chop| els_could|i end_N:core_right| even_touch| even_touch|th
everyth_and| everyth_slip_by| everywher_th| everywher_th|THING exist_any| exist_any|blender
expect_m_for| expect|m expect|m_for extra_N:few_U| extra_Nduration|on extra|Nduration_on extra|for_dinner
extra|pair extra|pair_of f_by| f_that_is| f_that| f_that|is family_is_run| family| family|will
family|will_arriv far_wait| far_wait|on fat_cap| fat_is_caught| fat_is|caught fat_splash_on|
fat_was| fat_was|smok fat|is_caught fell|on fell|on_th fetch|P few|DISH fill| find|in finish_with|th
finish|th finish|yet_$ first|car_is first|so first|so_N:some flam_com|out flam_in_th| flat_tyr_Nduration|
flight|is flip_th| flip_th|DISH floor|and flu_so_careful| for_N:few_adult| for_N:few_and| for_N:few|adult
for_Nduration_whil| for_it_or| for_th|butter for_what|reason forget_about_th| forget_about|
forget_i| forget_th_Nduration| forget_th|DISH forget_what_you| forget|what forgot_to_buy| for|DISH_$
for|N:core_after for|Nclock_$ for|P_$ for|a_bit for|dinner for|dinner_sorry for|it_$ for|medium_well
for|th_DISH for|th_cor for|them for|tonight french_is_not| french_is| french_is|not from_Nclock|U
from_now_w| from_th|pan from_th|top from_th|zero from|th_oven from|th_shop from|upstair full_hous_miss|
fus_has|U fus|has_gon gas_has|run gaug| gaug|must gaug|must_b gav|m gav|m_a get_her_Nduration|
get_rid_of| get_roast| get_roast|DISH get_start| get_start|myself get|away get|away_with get|dress
get|dress_giv get|to get|up giv_U| giv_U|number giv_it_a| giv_it|a giv_m_celsius| giv_th_THING|
giv|it_Nduration giv|m_som giv|th_THING giv|us_Nduration glov| gluten_for| gnaw|th gnaw|th_furnitur
go_for|medium go_in_th| go_in| go_off_and| go_on|with go_th_THING| go_to_br| go_to_skip| go_to|do
go_to|mak god_ther| god_ther|is gon_ston| gon_ston|cold gon_ther_is| gon_up_in| gon_whol| gon|from
gon|in_th good_N:some_lat| good_and| good_bit_mor| good_reason| good_reason|w good|even gorgeous_it|
gorgeous_it|look got_burn|pretty got_th_DISH| got_to_b| got_to|that got|guest got|guest_to
got|it_sat got|th_chuck go|alongsid go|alongsid_DISH go|on_then go|to_church go|to_hav go|too
go|too_fast grab|th_hot grac_will| grac_will|look granddad| great|U great|U_and green_DISH_ar|
green_DISH|on green|DISH_DISH green|DISH_our guest_ar|com guest_ar|her guest_ar|run guest_cam_U|
guest_hat| guest_hat|this guest_will| guest|ar_already guest|lat guest|lat_Nduration guid|
guid|m h_has_had| h_is| h_is|call h_mak| h_want_it| h_will_b| had_Nduration| had_Nduration|already
hall_right_DISH| handl_anyth| handl_anyth|with hang|about hang|on_paus hanna_is| happen_at|
happen_if| happen_if|i happen|Nduration happen|Nduration_sooner happy|with_medium has_been_taken|
has_been_turn| has_been|turn has_gon_whol| has_got_N:few| has_left_th| has_to|DISH has|U_$
has|been_on has|com_up has|gon_cold has|gon_whol has|had has|run has|run_out hav_U_th| hav_another|
hav_any_r| hav_arriv_so| hav_been_don| hav_bought|a hav_com_P| hav_cut|my hav_cut|myself hav_decid_against|
hav_gon|in hav_got|THING hav_got|th hav_had_Nduration| hav_hit| hav_hit|N:core hav_it_without|
hav_kept_at| hav_lost|Nduration hav_not_kept| hav_not_put| hav_our| hav_our|rar hav_overshot_it|
hav_plenty_without| hav_plenty|without hav_roast_DISH| hav_skip_that| hav_to|run hav_turn|
hav_turn|up hav_whack_it| hav|U_$ hav|bung hav|bung_th hav|burn hav|burn_my hav|forgotten hav|hit
hav|hit_N:core hav|invit hav|invit_th hav|it_sear hav|ne'er hav|ne'er_a hav|not_got hav|not_put
hav|plenty hav|remov hav|remov_from hav|remov_th hav|roast_DISH hav|rung hav|their hav|their_at
hav|trip hav|trip_someth hav|walk hav|walk_in heat_up|to helper_from_Nclock| helper_it| helper_it|is
helper_today_her| helper|today henderson|ar_her her_N:few_still| her_Nduration|after her_chair|
her_chair|and her_cremat_so| her_it|do her_lip| her_lip|ar her_nam| her_nam|is her_so|far her|at_N:oven
her|in_th her|lip her|lip_ar her|nam her|nam_is her|out_a her|tablet_Nduration hey_company|
hey_company|pull him_h| him_out|for his|rar_$ hit_N:core_whil| hit_N:core|whil hit_th_button|
hold|at_N:core holler_when| holler|at hop|in hop|in_th hot_it| hot_it|is hot_to|start hous_miss|
hous_miss|th how_do|th how_long_mor| how_much|of how_pink_will| how|far how|long_do how|thick
i_am_all| i_am_a| i_am_nip| i_am_read| i_am_way| i_am_yet| i_am|after i_am|hav i_am|in i_am|miss
i_am|nip i_at_a| i_b_do| i_bought_a| i_chuck|th i_don_put| i_fetch|P i_get|away i_get|th i_go_to|
i_got_burn| i_got|to i_grab| i_grab|th i_had_th| i_hat| i_hav_got| i_hav|bung i_hav|burn i_hav|forgotten
i_hav|invit i_hav|kept i_hav|not i_hav|remov i_hav|taken i_mak_th| i_n_for| i_open_th| i_refreez|
i_refreez|th i_ruin| i_ruin|it i_say|a i_speak_to| i_tak_th| i_talk| i_thought|i i_told|them
i_took| i_trim_th| i_turn| i_us_DISH| i_want|P i_was_mean| i_was|not i_will_se| i_would|say
if_i|hav if_i|us if_this| if_this|is if_you_do| if_you_n| ignor| immun| immun|system immun|system_is
in_N:few|to in_U|of in_and|i in_a|sec in_beer| in_beer|is in_fat_was| in_her_chair| in_i_hav|
in_kilo_and| in_law_ar| in_my|THING in_now_do| in_sinc|N:oven in_som|roll in_th_small| in_th|THING
in_th|fridg in_th|hall in_th|loung in_th|moment in_th|top in_th|whol in_to| in_to|warm insid_temperatur|is
insist|on insist|on_DISH instead_of|N:few instead_of|fresh into_th_hot| into_th|hot in|Nduration_pet
in|Nduration_that in|a_good in|our_market in|sinc in|th_center in|th_cold in|th_thickest in|this_THING
in|total_$ is_N:few|mor is_Ndegrees:some_under| is_Nweight| is_Nweight|N:few is_THING|and is_U_watch|
is_U|with is_a_conventional| is_a_proper| is_all_mix| is_all|grey is_alway_cold| is_at_a| is_blood|
is_bring_a| is_bring_his| is_brought| is_brought|mat is_call|out is_cancell_they| is_chop|for
is_clos|th is_com_out| is_delay_so| is_flam_com| is_giv_U| is_go_on| is_grey|all is_happen_at|
is_happy|with is_in_beer| is_in_i| is_insist| is_insist|on is_it_still| is_it_tim| is_it|n
is_m_and| is_my_roommat| is_not_on| is_not_out| is_not|at is_not|complet is_not|mad is_not|well
is_nowher| is_nowher|near is_no|second is_on_a| is_on|a is_on|for is_on|wash is_outta| is_outta|ther
is_pack|in is_peel|th is_run|bout is_sat_on| is_scream_th| is_sinc| is_sleep_in| is_smok_com|
is_starv_br| is_strain_U| is_stuck|in is_th_best| is_thin| is_thin|as is_th|plan is_ti_it|
is_too|much is_with_her| is_with| is|N:few_on is|N:few_piec is|N:few_sharp is|N:some_month
is|THING_U is|THING_ok is|U_th is|a_proper is|allergic_to is|already is|an is|becom is|call_U
is|chewy is|chop is|collaps is|com_after is|com_out is|delay_minimum is|don_$ is|extra is|extra_wash
is|go_off is|gon is|gon_they is|help_with is|her_now is|it_dangerous is|it_n is|it_tim is|mad_it
is|next_$ is|no_power is|not_complet is|not_now is|off is|on is|on_N:oven is|out_for is|out_it
is|overcook is|raw_in is|run_at is|sit_in is|sort_N:few is|th_best is|that_saf is|ti_it is|too_short
is|way_over is|work it_N:oven|or it_Nduration_later| it_Nduration| it_Nduration|later it_after|
it_alon| it_and_it| it_and|it it_as_it| it_a|rest it_back|a it_by|THING it_for_medium| it_for|th
it_from| it_has|gon it_has|not it_hav_to| it_if| it_is_my| it_is_outta| it_is_sit| it_is|chewy
it_is|com it_is|drop it_is|extra it_is|fin it_is|out it_is|overcook it_is|raw it_i|am it_jump_Ndegrees:some|
it_look| it_open| it_open|and it_reach| it_reach|N:core it_sat| it_tim| it_to|Ngas-mark it_to|medium
it_was_on| it_was_th| it_was|th it_went|in it_without|DISH it_with|salt it|Nduration_sooner
it|a_rest it|all_off it|all_right it|alon it|as it|back it|back_$ it|bl_a it|cam_out it|dangerous_to
it|down_i it|forward_N:some it|go_$ it|hot_this it|is_alway it|is_boneless it|is_burnt it|is_dry
it|is_extra it|is_hit it|is_m it|is_mad it|is_read it|is_roll it|is_tell it|lumpy_$ it|mak_much
it|on_tim it|open it|open_and it|out_now it|out_quick it|right_at it|run_cold it|sat_on it|soon_P
it|twic it|was_a it|went_up it|with_a i|am_N:few i|am_Nduration i|am_U i|am_away i|am_driv
i|am_drown i|am_fre i|am_get i|am_in i|am_not i|am_on i|am_out i|am_overwhelm i|am_so i|am_starv
i|am_tak i|am_tell i|am_us i|am_wait i|ask_you i|can_do i|could_us i|don_put i|fancy i|get_away
i|go_out i|got_burn i|got_tim i|had_a i|hav_U i|hav_already i|hav_bung i|hav_chang i|hav_drop
i|hav_switch i|hav_taken i|hav_trim i|hav_whack i|hit i|hit_th i|know_celsius i|know_it i|meant_N:core
i|n_from i|n_th i|press i|said_N:few i|said_to i|should_b i|talk_to i|think_in i|thought_i
i|ti_it i|want_degre i|will_b i|will_hav i|will_sear i|would_lik jaysus| jess_is| jess_will_b|
jim_want_his| joint_in_th| joint|Nweight jump_Ndegrees:some| jump_Ndegrees:some|in keep_tell|
kept_th_DISH| kettl_on_tim| kidney_transplant_bear| kill_th|THING kilo_i_am| knock_it| knock_it|back
knock_it|down knock| knock|it_back know_if_this| know|as know|as_soon know|if know|if_this
lad_is_brought| lad|hav_football last|on lat_get_start| lat_i| lat_with| lat|in lat|in_her
lat|on_my law_ar| lay_N:few| lay_N:few|mor leav_th|THING leo_from| leo_from|upstair less_priya_has|
let_us_eat| let_us_not| let_us|begin let|m_know let|us_aim let|us_begin let|us_start lif_is|
lif_is|too lif|is lif|is_too light_on| light_went_out| light|has light|has_gon lik_Nduration|
lik_Nduration|ago lik_th_cow| lik_th_th| lik_w_will| lik_w|will lik_your| lik|P_eat lik|her_well
lik|it_lumpy lik|it_rar list_for| littl_N:few|need littl_light| littl_light|has littl|N:few
liv|room long_do|it long_has|it long_mor| long_mor|will long_till|w longer|do longer|than look_after_th|
look_after| look_after|th look_at_th| look_lik_w| look|after look|after_th los_th|r los|th_r
lot|hav_arriv lot|hav_mad lower_it_till| lunch_Ndate_at| m_N:few_for| m_a_shout| m_about| m_about|th
m_and_dav| m_at|Ndegrees:core m_a|N:few m_a|r m_celsius| m_celsius|not m_for|N:some m_how_to|
m_in_N:few| m_in|celsius m_know_at| m_know_when| m_onc_it| m_som| m_som|U m_th_simpl| m_through_th|
m_th|THING m_up_in| m_what_w| m_when|th mad_and| main|cours mak|dinner_N:oven mak|it_Nclock
mak|m mak|that_on many_DISH_for| many_DISH|should medium_rar_ok| medium_rar|ok medium|rar_saf
messag| middl|get middl|get_to mik_and_deb| mik| mind_out_hot| mind_your| min|is_alway miracl|happen
miss|th_cousin miss|that_on mix|up moment|i month_old_P| mor_befor_w| mor_for|dinner mor_peopl_ar|
mor_to_th| mor|tim_it mor|will mor|will_it most_of|them mov_it|to much_THING_go| much_i|am
much_longer|do much_salt_do| much_salt_in| much|i_am much|longer_for much|of much|salt_do must_eat_Nduration|
must|eat must|eat_Nduration my_P_lik| my_P_set| my_P_will| my_P|lik my_THING_gaug| my_family|will
my_guest_hat| my_in| my_in|law my_peopl|ar my_roommat|dev my_thumb_it| my_thumb|it myself_quit|
myself_quit|badly my|P_from my|P_h my|P_text my|breath my|end my|folk my|folk_will my|guest
my|guest_hat my|peopl_ar my|sho my|sho_$ my|thumb m|at_Ndegrees:core m|in_Nduration m|th_choic
m|through m|twic m|twic_as m|what_number m|what_w m|with_DISH n_to_get| n_to_rest| n_to|pick
nearly| never_go| never_go|to never_own|any never|got_THING new_th| new|P_apparently new|P_so
new|year next_i_am| next_step| next|N:some next|door_for nic_and| nic_and|golden nip_THING|
nip_THING|to nip_out|for nip_to| nip_to|th nip|out_for nip|to_next nip|to_th no_DISH|butter
no_THING_in| no_THING|pan no_dry| no_dry|brin no_gluten_for| no_i|can no_on_bought| no_scratch|
no_scratch|that no_second| no_sign_of| no_they| no_th|other no_tim|to no_win|in nobody|eat_them
nobody|her nobody|will_b non|to non|to_b not_P_open| not_availabl_in| not_a|singl not_b_bother|
not_b_in| not_b|her not_b|mak not_catch|that not_com_after| not_com_so| not_do|that not_eat|DISH
not_eat|nut not_eat|r not_even_touch| not_exist_any| not_expect| not_expect|m not_got_to| not_go|to
not_great|U not_hav|it not_kept| not_know|if not_mak|it not_my_P| not_my| not_my|P not_out|yet
not_put|th not_touch|it not_turn| not|any_THING not|at_N:core not|b_do not|catch_that not|complet
not|complet_som not|happen not|hav_dairy not|know_how not|mak_anymor not|mind_a not|ris not|say_that
not|touch now_do| now_do|not now_i_am| now_in| now_in|th now_i|am now_leo_from| now_sh| now_would|
now_w|eat no|on_bought no|second_oven no|shellfish_sh number|am number|am_i number|i_mean nut_ar|
nut_ar|a n|a_THING n|longer n|not_call n|to_pick of_rest| of_rest|it of_sirloin| of_sirloin|Nweight
of_th_P| of_them_ar| of_thos|wireless of_th|P of_th|U off_in_th| off_sinc| off_so_it| off_so|it
off_th|roll off_with| off|out_for off|th_roll of|beer of|butter of|fresh of|her of|m of|rest
of|th_fridg of|th_other ok_for|th ok_instead| ok_instead|of ok|i ok|what old_P_eat| old_P|
old_P|eat old|girl on_DISH|duty on_P_is| on_at_th| on_at|N:oven on_a|THING on_bought| on_bought|butter
on_earth| on_earth|do on_my|end on_th|instant-read on_th|menu on_th|pan on_th|stov on_tim|m
on_whil| on_whil|i on_with|th on|my_arm on|sid_fewer on|speaker on|th_and on|that_$ on|your_own
or_any_other| or|N:few or|N:few_$ or|U or|what other|drawer ought_to| our_oven| our_oven|alway
our_rar_thank| our| our|rar our|rar_thank out_back| out_gorgeous_it| out_hot| out_hot|THING
out_my|P out_th|oven out_till| out_to_com| out_to|com out_whol| out_would|you outta|ther outta|ther_Nduration
out|Nduration_ago out|for_m out|for_thos out|in_hiv out|of_DISH out|of_THING out|of_U out|to_com
oven_THING|say oven_glov| oven_has_com| oven_has|com oven_how| oven_is_alway| oven_is_dead|
oven_is|empty oven_is|hot oven_run_a| oven_set_to| oven_set| oven_sinc| oven_that| oven_that|is
oven_th|roast oven|alway_com oven|b_at oven|door_open oven|has_been oven|has_di oven|is_alway
oven|is_di oven|is_down oven|light_di oven|on oven|run_N:some oven|up_to over_th|DISH overshot_it_is|
overshot_it| overshot_it|is own_a_fat| own|a p_m_at| pac| pair_of|THING pan_has| pan_has|gon
panick| panick|and panick|and_took pan|has pan|has_gon pass| patel|said patel|said_yes pay|for
peel|DISH_without peopl_hav| peopl|ar_com peopl|ar_go person_has_to| person_will| person_will|b
pet_is_on| phon_to|my phon|call_$ pick_th_P| pick_up_a| piec|of_THING pink_in_th| pink_will_it|
pink_will| pink|U pink|so pink|so_well pink|will_it plan|h plan|h_has plan|to_carv plat_down_at|
plenty_without| plenty_without|th plenty|without plenty|without_th plus|N:few_$ point_of_rest|
pop_next| pop_next|door pop_th_roll| pop|out power_is| power_is|back power_is|out power_went|out
power|cut_$ power|di_whol power|is power|went pregnant_in_th| preheat_th| preheat|th_other
pretty_bad| pretty_bad|off priya_can_not| priya_has| priya_has|got proper|THING proper|THING_on
pull_into| pull_into|th pull_in|th push|it_back put_it|all put_it|out put_m|Nduration put_th_kettl|
put|in put|it_in p|m_at quantity_of_butter| quantity|of_THING quit_lik_to| quit_lik| quit_lik|to
r_DISH_so| r_DISH_with| r_say| r_say|N:core r_win_P| rar_ok| rar_thank|you rar_this|tim rar|fin_for
rar|ok rar|thank rather| reach_Nduration| reach_Nduration|lat reach| read_N:core|already read_at_Nclock|
read_at| read_at|Nclock ready|it read|N:core_already reduc_Nduration| reduc_Nduration|ago refreez|th
refreez|th_leftover remind_m_about| reminder_can| reminder_can|go remov|from rib_roast_N:few|
rib|THING_Nweight rib|of_THING rib|roast_N:few rid_of| right_DISH_ar| right_for_my| right_i_am|
right_i|am right_they_ar| right|down right|down_to right|end right|end_N:core roast_DISH|in
roast_DISH|with roast_N:few|bon roast_cam| roast_has_been| roast_hit| roast_hit|N:core roast_is_not|
roast_it| roast_it|is roast_on| roast|fell roast|fell_on roast|has_left roast|in_oven roast|into
roast|into_th roast|is_season roast|out_$ roll_and|net roll_ar|warm roll_in_to| roll_went|
roll_went|in roll|ar_in roll|in_to roommat|dev rop_in_th| rub_it_with| run_a|good run_out_of|
run_so| rung_they_will| run|bout run|bout_Nduration ruth_can_do| r|DISH_so r|DISH_want sack_off|
sack_off|th saf_to_eat| saf|to salt_do|i salt_in| salt_in|th salt_it| sam_is|go say_N:core_i|
say_N:oven|in say_a_number| say_they_ar| say|N:oven_in say|a_number scream_th|fat sear_N:few|steady
sear_in_this| sear_in| sear_it|right sear_this| sear_this|tim sear|is_don seat_let_us| second_shelf|
second_shelf|from second|tim second|tim_$ serv_it_N:oven| set_a_Nduration| set_an|alert set_clock|
set_clock|for set_for_th| set_for|th set_it_to| set_th|oven set_th|roll set| set|an_alarm set|clock
set|clock_for set|to_N:oven sh_becom| sh_becom|very sh_can_do| sh_do_not| sh_is_a| sh_is|hit
sh_is|out sh_is|run sharp_U| sharp_U|th shelf|from shelf|from_th shellfish_sh_becom| shop_had_no|
should_i|do should_th|oven should|i_buy should|it_b should|th_oven shout_when_it| shout_when|it
shout_when|sh shout_when|th shout|in_Nduration shov|dinner shov|dinner_back shower_giv_m| shower|b
shower|b_Nduration show|m_fahrenheit sh|can_do sign_of| sign_of|th simpl|DISH simpl|DISH_will
sirloin|Nweight sir| sit_down_to| sit_in_a| sit|down_Nclock sit|down_and skip_that|step skip_th|DISH
skip_th|THING skip|th_butter slid_th_roast| slip_by| slip_by|Nduration slip_on_th| slow_then_a|
slow|today small|oven_set smell_was_so| smok_alarm_is| smok_alarm|is smok_com|from smok_in|her
smok_is| smok|U smok|U_is smok|com_from smok|in_her snow_is_clos| snow|is_clos so_careful|
so_careful|with so_far_wait| so_h| so_tak|car so_th_henderson| so_w_panick| so_what|ar solid_i_am|
som_tim_is| som_tim| som_tim|is someth_i_can| someth|i_can som|U som|roll sooner_than_plan|
soon|as sorry_say| soup_is_on| so|P_will so|knock so|knock_N:few so|long so|low so|strong speak_to_m|
speak|to_m splash_on| splash_on|my start_a| start_on_th| start|again_from start|myself start|so
start|so_early start|to_finish starv_br| step|my still_N:few|rib still_good| still_on|for still_stuck|
still|N:few_step still|on still|raw stop_th|timer stop|talk_$ stov_for|N:few str_in_this| str_in|
straight|in_th strain_U| strain_U|and street_is| street_is|dark strik_th| stuck_on_th| stuck_on|N:core
stuck|on_th stuff_h_is| suppos_to|b switch_th| switch|th_fan tabl_DISH_ar| tabl_w| tabl|by_N:few
tak_Nduration_away| tak_Nduration|away tak_longer| tak_longer|than tak_m|twic taken|out taken|their
taken|their_seat tak|car tak|longer tak|longer_than tak|that_back talk_to_th| talk|in target_N:core_for|
teenager_hav_volunteer| tell|m_what temperatur_all| temperatur_all|th temperatur_has_reach|
temperatur_is_medium| temperatur_should| temperatur_th|whol temperatur|all temperatur|all_th
temperatur|is_at test|a test|a_miss th_DISH_from| th_DISH_miracl| th_DISH_start| th_DISH_wer|
th_DISH|did th_N:few_hav| th_P_do| th_P|up th_THING_board| th_THING_fell| th_THING_test| th_THING_will|
th_THING_with| th_THING|THING th_THING|behav th_THING|test th_U|cancell th_back|a th_board_with|
th_bus|is th_butter_is| th_butter|on th_button|by th_can| th_can|i th_cast|iron th_chip| th_chip|pan
th_cow_is| th_cow| th_cow|is th_cream_i| th_crew| th_crew|is th_crowd|is th_current| th_dial_THING|
th_dinner_by| th_dog|had th_electricity|has th_family| th_fan|on th_fat_cap| th_first_N:few|
th_first_guest| th_guest_ar| th_guest_is| th_guest|hav th_has| th_heat_up| th_hous_and| th_invit|
th_in| th_lad|is th_last| th_littl_light| th_littl|N:few th_liv| th_liv|room th_middl|get th_new|P
th_next_step| th_next|N:some th_oven_glov| th_oven_how| th_oven_that| th_oven|glov th_patel|
th_patel|said th_point|of th_rest|of th_roast_hit| th_roast|cam th_roast|fell th_roast|into
th_roll|in th_sear_is| th_sear_this| th_second_shelf| th_second|on th_simpl| th_simpl|DISH
th_tabl_is| th_tabl_w| th_thickest|bit th_tip_of| th_to_go| th_trick_with| th_ty_is| th_ty|is
than_plan|h thank_you_very| than|plan that_THING| that_again_i| that_back_i| that_back|to that_green_DISH|
that_is|m that_i|press that_on_is| that_was_not| that_will| that|back_i that|is_N:core that|is_celsius
that|is_join that|is_m that|last_th that|on_$ that|on_out that|step_br that|was_not that|yet
their_at|N:few their_train| their_train|is their|P them_ar| them_hav|turn them_walk| then_a|hot
then_blast_it| then_drop| then_drop|it then|noth ther_a|set ther_has_been| ther_is|THING ther_is|pink
ther_w| ther_w|go ther|a_good ther|a_set ther|is_DISH ther|is_smok ther|ought ther|ought_to
ther|someth_i they_ar_stuck| they_ar|early they_ar|tell they_brought_their| they_sat| they|hav_rung
they|n_Nduration they|text thickest|bit thin|as this_at| this_can| this_cooker| this_cooker|is
this_oven_is| this_oven|run this|is_right this|on_$ this|read this|read_it thos|wireless thos|wireless_THING
through|th_plan thumb_it| thumb_it|is thumb|it thumb|it_is th|DISH_already th|DISH_another
th|DISH_anymor th|DISH_do th|DISH_start th|DISH_to th|DISH_what th|N:few_hav th|Nduration_N:few
th|P_$ th|THING_Nduration th|THING_check th|THING_i th|THING_slip th|THING_went th|U_$ th|U_for
th|bin_out th|break th|bus_is th|church th|colour th|first_on th|fridg th|in_law th|joint_is
th|leave-in_on th|lid_on th|list_th th|littl_N:few th|loung th|market th|middl_and th|moment
th|order th|outsid th|oven_go th|oven_off th|oven_that th|oven_ther th|oven_to th|pan th|pink_bit
th|queu th|roast_cam th|roll_did th|roll_prov th|say_N:core th|second_sear th|shop_back th|sid
th|stair th|stov th|tabl th|tim_$ th|timelin th|toddler th|top_of th|very th|very_least th|whol_way
th|zero tick|off_DISH tick|that tick|that_off till_it|is till_w_eat| till|N:few_$ tim_ar|w
tim_i_open| tim_is|need tim_is|your tim_should_i| timer_Nduration_for| timer_it| timer_it|is
timer|on_Nduration tim|is_need tim|m tim|m_N:few tim|would tim|would_b tip_of| tip_of|my to_N:core_tell|
to_N:core_whil| to_N:oven_i| to_THING_no| to_a_block| to_b_N:few| to_b_f| to_br_my| to_carv|
to_catch_my| to_catch| to_com|up to_eat|by to_flip_th| to_get|dress to_giv|th to_go|alongsid
to_hav_a| to_my|P to_peel|DISH to_pick_th| to_preheat| to_preheat|th to_pull_it| to_pull| to_pull|it
to_reduc_Nduration| to_sear_it| to_skip| to_start|so to_th|DISH to_walk_th| to_warm_th| to_yank_it|
today_her_nam| today_her| today_her|nam told| told|them tom_is_call| tom_is_lot| took_out|already
took|forever took|it_out took|th_THING too|fast too|many too|much_go top_oven|is topsid|this
topsid|this_year top|of_that touch_it_if| touch|th_DISH to|DISH_early to|DISH_th to|N:oven_about
to|N:oven_i to|N:oven_is to|N:oven_lik to|THING_$ to|b to|buy_for to|collect to|com_out to|com_up
to|do_next to|eat_it to|finish_$ to|help_m to|know_when to|mak_it to|rest_it to|start_then
to|th_stor to|their to|their_soup to|warm transplant_bear| transplant_bear|that trick_to_peel|
trick_with| trick| trim_th|DISH trim_th|fat trip|and trip|and_everyth trust_this|read try_to_DISH|
turn_off_th| turn_right| turn_right|down turn|down_to turn|right turn|right_down turn|up_early
twic|as twic|as_long ty_is| ty_is|sort tyr_Nduration_is| tyr_Nduration| tyr_Nduration|is ty|is
ty|is_sort ugh_i_am| ugh_i| ugh_i|am under_th|THING under|what_it undo_that_i| undo_that|last
un| up_as| up_at|Nclock up_from|N:core up_in|Nduration up_ther| upstair_to|get up|by_N:some
up|i_am up|to_room us_a|U us_begin|again us_get_roast| us_in_th| us_it|is us_know|as us_mak_th|
us_on| us|DISH_$ us|begin us|too vegan_if| vegan_if|you volunteer|for_th w_add| w_add|DISH
w_ar_out| w_ar|a w_ar|eat w_ar|miss w_can_miss| w_can|sit w_hav_hit| w_hav|hit w_hav|not w_hav|plenty
w_hav|trip w_los_th| w_los| w_los|th w_must| w_must|eat w_n_Nduration| w_panick| w_panick|and
w_ran_out| w_ran| w_ran|out w_took_it| w_want_to| w_would|lik wait_with_th| wait|on_th wak_m|
wak|m walk_th|dog want_drink_first| want_it|hot want_m_to| want_to|b want|P want|P_eat want|it_well
want|to_eat warm_th|plat warn_m|when was_mean| was_mean|N:core was_on|th was_so| was_so|strong
was|not_listen was|not_meant was|smok was|wrong_undo watch|th_THING water|down water|down_my
water|test_cam way_do_i| way_do| way_my|folk way_to|get way|behind way|behind_her weight|in
well_don|you well_that_is| well|don_i well|don_you went_off_so| went_off|so went_out_whol|
went_up_to| went|in_th wer_Nduration| wer|Nduration_behind wer|w whack_it|down what_ar_my|
what_a|disaster what_could|w what_did_i| what_is|medium what_number|am what_th_can| what_was|that
what_w|pull what_you_learn| what_you|learn whatever|you_call what|a_disaster what|do_w what|if
what|is_Ndegrees:oven what|is_to what|must what|must_i what|number what|quantity what|quantity_of
what|reason what|sid what|temperatur_am what|temperatur_should what|th_can what|tim_ar what|will_i
when_Nduration|is when_do_i| when_do|everyth when_i_say| when_is|THING when_it_hit| when_it_reach|
when_it|is when_i|tak when_th|cor when|do_th when|th_THING wher_wer| wher_wer|w wher|do_th
wher|is_th which|degre whil_got| whil_got|guest whil_i_fetch| whil_yet_it| whil_yet| whil_yet|it
whil|i_U whisk_th_DISH| who_can| who_can|not who_do_not| whol_street_is| whol|U whol|U_is who|can
who|can_not why_can| why_can|not why|do_i why|do_not will_b|back will_b|eat will_do_th| will_do|without
will_giv|th will_handl_anyth| will_hav_our| will_hav_roast| will_look_after| will_look| will_look|after
will_not_hav| will_not|b will_not|touch will_reach_Nduration| will|DISH_th will|THING will|b
will|i_n will|it_b will|not_b will|you_$ win_P| win_P|drank win_is_on| with_DISH_i| with_her|tablet
with_it|again with_this_can| with_us| with_us|too without_DISH_my| without_th|DISH without|DISH
without|a_THING with|m with|th_bon would_lik|P would_not|mind would_quit_lik| would_you|mind
would|it would|you_do w|ar_N:few w|ar_at w|ar_down w|ar_hav w|ar_say w|ar_sit w|can_sit w|do_th
w|go_th w|got_N:few w|hav_N:few w|hav_had w|hav_lost w|hav_overshot w|hav_run w|lack w|lack_a
w|pull_at yank_it| yank_it|out year|old_at yell_when_it| yes_P|i yes_i_am| yes_i|am yes|no
yet_so| yet|it_is yet|to_grat you_N:few| you_add| you_add|that you_ar_tell| you_can_drop| you_check_tell|
you_hav_had| you_learn| you_n|m you_n|not you_on|speaker you_plan|on you_put|th you_so| you_tell|
you_very| you_very|much your|man_is you|ar_a you|believ you|call_them you|can_manag you|can_split
you|imagin you|learn you|mind_drop you|n_m you|think_$ |@102 |@111.6 |@121.3 |@126.1 |@132.2
|@139.5 |@140.0 |@142.1 |@15.2 |@15.5 |@17.5 |@19.2 |@21.5 |@22.2 |@26.4 |@27.7 |@34.2 |@4.17
|@46.5 |@47.0 |@50.3 |@50.4 |@55.4 |@6.0 |@60.1 |@62.3 |@64.0 |@8 |@9 |@9.2 |DISH_DISH_so |DISH_THING_say
|DISH_another |DISH_another_Nduration |DISH_anymor |DISH_ar_burn |DISH_ar_nic |DISH_early |DISH_early_and
|DISH_got_$ |DISH_i_mean |DISH_in_yet |DISH_it_alon |DISH_off_th |DISH_our |DISH_our_on |DISH_powder_$
|DISH_r |DISH_r_DISH |DISH_so_count |DISH_th |DISH_timer_$ |DISH_top |DISH_want_a |DISH_will_do
|DISH_without |DISH_without_cry |N:core_after |N:core_after_rest |N:core_at_Nclock |N:core_at_th
|N:core_has_not |N:core_lik |N:core_right_now |N:core_what_do |N:few_Ndate_$ |N:few_P |N:few_P_will
|N:few_U_is |N:few_on_top |N:few_person_will |N:few_piec_rib |N:few_sharp_U |N:few_step_back
|N:oven_about |N:oven_about_Nduration |N:some_not_N:some |N:some_what |Nclock_it_was |Nclock_th_roast
|Nclock_was |Nclock_was_N:core |Ndate_Nclock_and |Ndegrees:some |Nduration_and_N:few |Nduration_and_w
|Nduration_behind_on |Nduration_behind_so |Nduration_early_$ |Nduration_from |Nduration_lat_i
|Nduration_lat_sav |Nduration_left_on |Nduration_now |Nduration_on_dinner |Nduration_th_match
|Nduration_that_is |Nweight_topsid_for |P_apparently |P_apparently_so |P_eat_Ndate |P_eat_by
|P_h |P_help |P_is_vegan |P_mak |P_no |P_still |P_text |P_text_Nduration |P_to_mak |P_will_b
|P_will_carv |P_would |THING_N:few_keep |THING_Nweight_bon |THING_THING_caught |THING_U_com
|THING_a_joint |THING_and_N:few |THING_and_i |THING_check |THING_fan |THING_fan_oven |THING_go_$
|THING_hav |THING_in_it |THING_is_alway |THING_no_mor |THING_not |THING_ok_instead |THING_on_DISH
|THING_out_$ |THING_sadly |THING_ther |THING_ther_is |THING_they |THING_they_hav |THING_what_am
|THING_will_not |U_and_onc |U_at |U_behind |U_is_scream |U_our_lodger |U_tenderis_$ |a_N:few_month
|a_THING_in |a_U_THING |a_bit_Nduration |a_crack |a_fan_oven |a_good_reason |a_loaf |a_nap
|a_no_for |a_number |a_number_i |a_peek |a_proper |a_read |a_second_$ |a_set |a_set_for |a_tick_Nduration
|a_we |about_Nduration_ago |account |adult_mor |adult_mor_ar |after_this |ago_sorry |alert_for
|alert_for_Ndegrees:core |all_in_coat |all_off |all_off_Nduration |all_on_hot |alongsid_DISH
|alongsid_DISH_butter |already_in |already_in_th |alway_Ndegrees:some |alway_com |alway_com_in
|am_N:few |am_Nduration |am_Nduration_off |am_U |am_U_$ |am_a_good |am_at_th |am_away |am_driv
|am_drown |am_fre |am_get |am_go_to |am_i_look |am_in |am_not |am_off_to |am_on |am_on_th |am_out
|am_out_of |am_out_till |am_overwhelm |am_so |am_so_behind |am_starv |am_tak |am_tell |am_us
|am_us_a |am_wait |am_wait_for |an_alarm_for |an_end |an_end_piec |and_N:some |and_bob |and_bob_is
|and_celsius |and_had |and_look |and_out |and_phon |and_shut |and_then_noth |another_$ |another_$_$
|any_THING |ar_N:few_peopl |ar_THING_$ |ar_already_com |ar_at_N:core |ar_don_$ |ar_down_N:few
|ar_eat_at |ar_go_too |ar_her_U |ar_not_risen |ar_out_of |ar_say |ar_say_grac |ar_sit_at |ar_still_raw
|ar_still_squeaky |ar_want_a |arriv |arriv_and |at_N:core_in |at_N:core_it |at_Nclock_latest
|at_Nclock_what |at_Ngas-mark_and |at_th_colour |at_th_till |away_with |b_N:core |b_N:oven
|b_at_N:oven |b_away |b_bother |b_th |b_ther |back_Nduration_th |bad_N:few |been_N:few |beep_$
|beep_$_$ |befor_dinner |befor_dinner_$ |befor_th_next |behav_itself |behav_itself_$ |behind_$
|behind_$_$ |behind_on |behind_on_th |believ_it |bin_out |bit_lat |bl_a |bl_a_lot |board_$
|board_$_$ |bon_$ |bon_$_$ |bon_not_N:few |bon_roast_Nweight |bottl |bout |bout_Nduration |bout_Nduration_lat
|brin_this |brin_this_tim |bung_th |bung_th_roast |bus_is_lat |butter_$ |butter_$_$ |butter_is
|butter_on |butter_with |butter_with_DISH |buy_for |by_N:some_y |by_Nduration_i |call_U |call_is
|cam_out_at |can_manag |can_not |can_not_i |can_sit |can_sit_down |can_split |can_split_U |cancell_th
|car_is_pull |cast_iron_pan |catch_my |catch_my_breath |chang_my |chang_my_mind |chewy |chop_$
|chop_$_$ |clean |clock_for_Nduration |collect |com_for |com_so |com_to_th |complet_som |complet_som_tim
|cop |could_us |crap |crap_th |crap_th_power |cream_DISH |cream_DISH_would |cream_as |cream_as_well
|crispy |cut_myself_quit |cut_them |dangerous_to |dark_$ |dark_$_$ |degre_c_$ |delay_minimum
|dev |di_on |di_whol |di_whol_street |did_not_finish |did_not_salt |dinner_N:oven |dinner_if
|dinner_if_you |dinner_sorry |dinner_up_by |display |display_is_giv |do_about_it |do_i_ask
|do_i_get |do_i_know |do_i_set |do_i_turn |do_instead |do_instead_of |do_it_tak |do_next_$
|do_next_i |do_not_exist |do_not_find |do_not_mak |do_not_they |do_now_$ |do_th_high |don_U
|don_for_P |don_put |don_put_th |don_what_is |door_for_Nduration |door_open_$ |down_Nclock
|down_my |down_my_leg |down_to_N:some |down_to_after |dress_giv |dress_giv_m |drop_$ |drop_$_$
|drop_th_th |early_so |easter_$ |easter_$_$ |eat_DISH |eat_Nduration_befor |eat_at_N:oven |eat_it_pink
|eat_with |eat_with_us |end |end_piec |enough |everywher_th |everywher_th_THING |extra_for_dinner
|extra_wash |extra_wash_up |fallen |fancy |fat_is_on |fat_is_smok |fever |fewer_$ |fewer_$_$
|fin_for_my |flam_com |folk_will |folk_will_not |follow |for_N:some_$ |for_Nclock_and |for_Ndegrees:core
|for_Nduration_it |for_Nduration_w |for_a_shower |for_m_so |for_us |forerib_Nweight |forward_N:some
|forward_N:some_if |fresh |from_N:few_to |get_away |get_away_with |glaz |go |go_Nduration |go_off_and
|go_out_for |go_straight |go_th_THING |go_to_help |god_ther |god_ther_is |gon_$ |gon_$_$ |gon_cold
|gon_off_so |gon_ston |gon_ston_cold |gon_they |gon_they_ar |gon_whol |good_Ndegrees:some |good_Ndegrees:some_hot
|gorgeous |got_burn_pretty |got_tim |grab_th_handl |guest_ar_her |guest_hat |guest_hat_this
|guest_hav_reach |guest_to_U |had_half |had_half_th |halal_$ |halal_$_$ |happen_Nduration |happen_Nduration_sooner
|has_$ |has_$_$ |has_been_in |has_been_on |has_been_sat |has_com_down |has_di |has_gon_cold
|has_gon_in |has_gon_out |has_gon_ston |has_gon_ther |has_got_to |has_it |has_split |hav_a_grand
|hav_already |hav_an |hav_any_r |hav_arriv_so |hav_bought |hav_bought_a |hav_bung |hav_bung_th
|hav_chang_my |hav_dairy |hav_drop_th |hav_football |hav_football_after |hav_it_medium |hav_it_sear
|hav_knock_it |hav_lost_Nduration |hav_mad_it |hav_overshot |hav_overshot_it |hav_run |hav_run_out
|hav_switch |hav_switch_it |hav_taken_th |hav_trim |hav_trim_it |hav_whack |hav_whack_it |help_with
|help_with_th |her_at_N:oven |her_for |her_in_th |her_well_don |him_out |hit |hot_finish |hot_this_tim
|hot_to |hour_$ |hour_$_$ |hous_and |how_to_truss |i_DISH_th |i_am_overwhelm |i_buy |i_do_about
|i_hav_burnt |i_know_i |i_lat |i_lat_$ |i_mean_celsius |i_n_in |i_pull_it |i_said |i_speak
|i_speak_to |i_will_se |if_this |if_this_is |if_you_can |in_N:some_$ |in_Ndate |in_Ndegrees:some
|in_Nduration_i |in_a_sec |in_flam_$ |in_hiv |in_law_h |in_law_has |in_mind |in_oven_sinc |in_som
|in_th_liv |in_this |in_to |in_to_warm |in_total_$ |in_yet_$ |instead_of_fresh |into_th_hot
|invit_th |invit_th_P |is_DISH_in |is_N:core_my |is_N:few_mor |is_N:few_of |is_Ndegrees:oven
|is_Ndegrees:some_under |is_Nduration_later |is_THING_U |is_U_from |is_U_in |is_a_N:few |is_already
|is_alway_N:few |is_ask_for |is_boneless |is_bring_a |is_carv_it |is_clos_th |is_com_$ |is_dead_it
|is_delay_minimum |is_di |is_di_on |is_dry |is_extra |is_extra_wash |is_happy_with |is_her_now
|is_hot_now |is_insist |is_insist_on |is_join |is_join_th |is_mad_it |is_no_THING |is_not_at
|is_not_don |is_not_great |is_not_mad |is_not_on |is_not_ready |is_not_well |is_on_a |is_on_and
|is_on_for |is_overcook_$ |is_pull_up |is_ready_$ |is_right_U |is_roll_and |is_sat_on |is_scream_th
|is_shap_N:few |is_sit_at |is_sit_in |is_smok_everywher |is_sort_N:few |is_starv_br |is_still_in
|is_strain_U |is_tell |is_tell_m |is_th_cor |is_th_order |is_th_plan |is_too_short |is_what_i
|is_with_her |is_your_P |it_Nclock |it_Nduration_$ |it_Nduration_later |it_alon_for |it_and_h
|it_at_Nclock |it_back_$ |it_back_in |it_by_THING |it_dangerous |it_hot |it_keep |it_lumpy
|it_n_ty |it_rest_$ |it_sat_on |it_sear |it_soon_P |it_still_moo |it_tim |it_to_Nclock |it_tonight
|it_too |it_want_Nduration |it_with_a |itself_off |kept_at |knock_N:few |knock_N:few_off |know_celsius
|know_i |lack_a |lack_a_cut |lat_$ |lat_$_$ |lat_Nduration_$ |lat_in |lat_in_her |lat_with
|leave-in_on |leave-in_on_is |lent |let_th |lift_th |light_di |light_on |lik_it_$ |lip |lip_ar
|lip_ar_swell |list_th_patel |littl_N:few |long_do |long_till_i |longer_for |longer_for_th
|longer_than |lost_Nduration |lot_$ |lot_$_$ |loung |m_N:core_$ |m_N:few_for |m_a_r |m_back_in
|m_fahrenheit |m_for_N:some |m_know |m_now_$ |mad_and |mak_anymor |mak_anymor_th |mak_much
|mak_much_smok |man_is_Nduration |many_th |mat |meal |meant |mention |middl_and |mind_a |mind_a_DISH
|mind_drop |mind_drop_that |miss_THING |month_old |mor_early |mor_plac |must_b_ly |my_choic_her
|n_DISH |n_a_THING |ne'er |ne'er_a |near_don |need_chang |net |never_did_th |new_P |next_door_for
|nic_and |nic_and_golden |nip_out_back |no_for |no_power |no_power_in |no_sear_$ |no_win |not_P
|not_P_open |not_all |not_all_of |not_american |not_any |not_any_THING |not_bother |not_breath
|not_call |not_call_m |not_carv |not_complet |not_complet_som |not_don_with |not_eat_DISH |not_find
|not_got |not_hav_$ |not_know_how |not_listen |not_meant |not_meant_for |not_ris |not_touch_it
|not_trust |not_trust_th |not_trust_this |not_want_to |nut_allergy |nut_and |of_THING_$ |of_THING_THING
|of_THING_is |of_fresh_$ |of_sirloin |of_sirloin_Nweight |of_smok |of_th_DISH |of_th_N:few
|of_th_P |of_that_instruction |of_them_hav |of_us_$ |of_us_in |off_at_th |off_th_heat |old_at
|old_at_th |on_N:core_has |on_N:few_peopl |on_N:oven_$ |on_a_few |on_ar |on_bought |on_bought_butter
|on_convection |on_dinner_they |on_schedul |on_slow_flam |on_th_phon |on_yet |onc_and |or_U_for
|or_so |other_$ |other_$_$ |otherwis_$ |otherwis_$_$ |ought_to_b |our_market |out_N:core_from
|out_a_touch |out_already_$ |out_at |out_at_N:some |out_befor_it |out_my |out_quick |out_quick_th
|out_till |out_whol_street |oven_U |oven_at_Ndegrees:oven |oven_go |oven_go_up |oven_is_Ndegrees:some
|oven_off |oven_off_$ |oven_that |oven_that_is |oven_ther |oven_too |over_th_plac |pan_is_alight
|parcel |pass_N:core |pat_it |pat_it_dry |peel |peopl_ar_go |peopl_in_total |person_$ |person_$_$
|pick_th_P |pink_bit |plan_b |plan_b_$ |position_of |position_of_th |pound_$ |pound_$_$ |press_th_wrong
|pretty_bad |pretty_bad_off |pull_in_th |pull_up_$ |put_$ |put_$_$ |put_it_out |put_m |put_th_lid
|quantity |quantity_of |quantity_of_THING |queu |quiet_for |quiet_for_a |r_DISH_ther |r_N:core_$
|r_say |r_say_N:core |ran_out |rar_saf |rar_saf_for |rar_thank_you |rar_this_tim |reach_$ |reach_$_$
|reach_N:core_$ |read_it |read_it_jump |ready |ready_and |remov_from |remov_from_oven |rest_and
|rest_for_Nduration |rib_Nweight_$ |rid_of_th |right_down |right_down_to |road_$ |road_$_$
|roast_DISH_with |roast_N:few_bon |roast_do |roast_is_go |roast_is_season |rock_up |roll_did
|roll_did_not |roll_homemad_$ |roll_n_Nduration |roll_prov |roll_prov_Nduration |rubbish_$
|rubbish_$_$ |run_at_N:oven |run_cold |run_cold_by |saf_to_eat |said_$ |said_$_$ |said_th_wrong
|said_that |said_that_$ |said_to |said_yes |salt_do_i |say_i |scream_$ |scream_$_$ |scrub_and_oil
|sea |second_sear |second_sear_in |second_tim |second_tim_$ |set_for_degre |set_to_Ndegrees:oven
|sh_still |shellfish_sh |shellfish_sh_becom |shop_back |shop_back_in |short_U |short_of |show_Ndegrees:core_$
|show_m_N:core |sid_fewer |sid_fewer_los |silent_now |silent_now_$ |singl_DISH |sit_down_Nduration
|sit_down_to |sleev |small_oven |so_N:some_mor |so_behind |so_far_wait |so_h |so_sh |soon_P
|soon_P_ar |sooner_than |sorry_to |sorry_to_say |sort_N:few |sort_N:few_U |speaker |split_$
|split_$_$ |squeaky |stair |stand_$ |stand_$_$ |start_then |start_then_drop |step_br |step_br_it
|still_DISH_in |still_raw |still_to |still_to_com |str_$ |str_$_$ |strain |stuck_on_N:core
|system_is |tablet_Nduration |tak_it_medium |tak_it_off |taken_th |tell_they |tell_they_will
|temperatur_am |temperatur_am_i |temperatur_should_th |tenderis_$ |tenderis_$_$ |test_a |test_a_miss
|test_cam |test_cam_out |th_DISH_all |th_DISH_whil |th_THING_bag |th_THING_no |th_THING_test
|th_THING_till |th_U_and |th_afternoon_look |th_bairn |th_board_now |th_can |th_can_i |th_chuck
|th_chuck_end |th_clock_$ |th_clock_for |th_cold |th_driveway |th_driveway_$ |th_end_$ |th_fan_off
|th_fan_on |th_finish |th_flu_$ |th_french_now |th_fridg_$ |th_furnitur |th_furnitur_$ |th_gam_start
|th_heat |th_hous_$ |th_joint_out |th_lad_is |th_leftover_$ |th_lid_on |th_lot_$ |th_menu_$
|th_middl_and |th_middl_of |th_nut |th_other_ar |th_pass_Nduration |th_peopl |th_phon_to |th_second_sear
|th_sid_too |th_soup_$ |th_stat |th_stat_of |th_stor |th_stov_$ |th_stov_for |th_tabl_by |th_target
|th_thick_part |th_till |th_water_$ |than_plan_$ |than_that_$ |that_again_$ |that_had |that_had_a
|that_i_do |that_in_mind |that_last_th |that_on_less |that_saf |that_timer_and |their_seat
|their_soup |them_THING |them_down |them_i |then_a_hot |then_th |ther_Nduration_now |ther_a_trick
|ther_is_not |they_ar_$ |they_ar_fussy |think_in |think_it |think_it_is |this_THING_$ |this_at
|this_rental |this_very |this_very_second |this_year_instead |throat_$ |throat_$_$ |through_and
|through_that |ti_it_$ |till_Nclock_$ |tim_ar |tim_is_your |tim_ther |tim_ther_is |to_N:few_peopl
|to_N:oven_what |to_b_found |to_bak |to_bak_Nduration |to_buy |to_carv_Nclock |to_com_out |to_com_up
|to_do_a |to_do_th |to_eat_Nclock |to_flip |to_flip_th |to_get_ic |to_grat |to_grat_it |to_m_in
|to_mak_a |to_metric_$ |to_nip |to_peel |to_salt |to_stuff |to_stuff_it |too_fast_for |too_hot_to
|too_short |total_$ |total_$_$ |touch_it |touch_th |train_$ |train_$_$ |trick_to |trip_someth
|trip_someth_no |turn_right |turn_right_down |ty_it |understand_$ |understand_$_$ |up_Nduration
|up_U_is |up_by_N:some |up_right |up_when |updat_$ |updat_$_$ |upstair_for_Nduration |upstair_to_get
|us_aim |us_aim_for |us_at |us_begin |us_do_DISH |us_eat |us_eat_Nduration |us_for |us_skip_th
|us_start |very_least |very_sick |volunteer |w_br |w_br_dinner |w_hold |w_hold_everyth |w_nearly
|w_nearly_ther |w_on_schedul |w_push |w_speak_$ |want_$ |want_$_$ |want_N:core |want_a |want_degre
|want_degre_c |want_her |want_to_eat |warm |was_U |was_my |was_on_th |was_so |was_that_$ |water_down
|water_down_my |way_over |well_don_i |went_into |went_off_so |went_out_at |went_straight |went_up
|went_up_to |wer_w_$ |what_it_claim |what_number_i |what_reason_w |what_w_pull |when_w_get
|whol_plan |whol_way |will_arriv_Nduration |will_not_bother |will_se |will_sear_at |wireless
|wireless_THING |wireless_THING_is |with_everyth_$ |with_medium_rar |with_pastry |with_pastry_or
|with_us |with_us_too |word_$ |word_$_$ |would_b_N:oven |would_go_nic |would_lik_DISH |would_lik_it
|wrong_THING_$ |wrong_th |wrong_undo |y_$ |y_$_$ |year_old_at |yet_it |yet_still_boil |yet_to
|yoghurt |you_believ_it |you_hear |you_learn_about |you_mind |you_on_speaker |you_reckon_$
|you_run_that |you_shov |you_shov_it |you_understand |you_understand_$ |your |your_own |your_own_for
-9 @100.2| @103.6| @120| @126.0| @134.6| @30.3| @34.7| @4.10| @4.5| @42| @46.5| @48.0| @5.3|
@52.3| @69.2| @89.0| @97| DISH_DISH_for| DISH_DISH_i| DISH_DISH|too DISH_THING_is| DISH_ar_go|
DISH_ar_peel| DISH_ar_ston| DISH_ar|THING DISH_ar|U DISH_ar|on DISH_butter| DISH_butter|mad
DISH_butter|with DISH_cream| DISH_did_not| DISH_grow_in| DISH_has|split DISH_hav_gon| DISH_instead_of|
DISH_is|cut DISH_is|out DISH_is|stand DISH_is|strain DISH_it|alon DISH_my_guest| DISH_nobody_eat|
DISH_nobody_lik| DISH_nobody|eat DISH_nobody|lik DISH_non_to| DISH_n|another DISH_prov_Nduration|
DISH_should| DISH_so|count DISH_ther|is DISH_to_my| DISH_want_a| DISH_went| DISH_went|on DISH_what_did|
DISH_what_is| DISH_whatever| DISH_whatever|you DISH_with_th| DISH_with|this DISH_w|will DISH|DISH_$
DISH|DISH_for DISH|and_they DISH|butter_is DISH|collaps DISH|do_i DISH|go DISH|grow DISH|grow_in
DISH|in_now DISH|it_$ DISH|must DISH|must_b DISH|on_yet DISH|powder_$ DISH|prov DISH|prov_Nduration
DISH|split_$ DISH|th_hous DISH|too DISH|without DISH|without_cry N:core_DISH_ar| N:core_and_DISH|
N:core_and_it| N:core_and_then| N:core_and| N:core_from_th| N:core_th|roast N:core_too|hot
N:core_what_do| N:core_when_you| N:core|for_th N:core|whil_i N:core|yet_mor N:few_THING|of
N:few_adult_mor| N:few_adult|mor N:few_at_th| N:few_do_you| N:few_do|you N:few_eat_at| N:few_has_invit|
N:few_has| N:few_has|invit N:few_less|for N:few_month|pregnant N:few_mor_th| N:few_out_of|
N:few_sh_has| N:few_till|N:few N:few|N:few_$ N:few|P_will N:few|bon_$ N:few|bon_Nweight N:few|bon_on
N:few|coeliac N:few|for_dinner N:few|has N:few|has_invit N:few|mor_ar N:few|mor_peopl N:few|mor_th
N:few|rib_$ N:few|under_so N:oven_and|i N:oven_for|th N:oven_lik|you N:oven|for_m N:some_for_th|
N:some_if| N:some_if|that N:some_mor_befor| N:some_so_THING| N:some_y_can| N:some_y| N:some_y|can
N:some|if N:some|if_that N:some|lat_with Nclock_and_i| Nclock_and|eat Nclock_and|w Nclock_now_would|
Nclock_was| Nclock_was|N:core Nclock|for_th Nclock|i Nclock|instead_$ Nclock|sharp_$ Ndate_Nclock|sam
Ndate|and Ndegrees:core_is_what| Ndegrees:core_let_m| Ndegrees:core_let| Ndegrees:core_let|m
Ndegrees:some_cool_alway| Ndegrees:some_under_whatever| Ndegrees:some|cooler Ndegrees:some|cooler_than
Ndegrees:some|under_whatever Nduration_ago_it| Nduration_ago_ther| Nduration_ago|whil Nduration_and|i
Nduration_and|th Nduration_back_it| Nduration_befor_it| Nduration_behind|in Nduration_earlier_than|
Nduration_is|that Nduration_lat|sav Nduration_of|delay Nduration_on_for| Nduration_oven|is
Nduration_to|dinner Nduration_w_ar| Nduration|ago_$ Nduration|ago_i Nduration|ago_what Nduration|at_least
Nduration|behind_i Nduration|earlier_$ Nduration|from_this Nduration|lat_$ Nduration|lat_hon
Nduration|lat_i Nduration|lat_so Nduration|lat_they Nduration|later_$ Nduration|now_$ Nduration|of_delay
Nduration|on_at Nduration|on_th Nduration|th_match Nduration|top Nduration|walk_th Nweight_THING|of
Nweight_and_i| Nweight_forerib_on| Nweight_of|U Nweight_topsid_for| Nweight_with|N:few Nweight_with|bon
Nweight|THING Nweight|forerib_N:few P_at_th| P_at|it P_drank| P_drank|it P_fre_to| P_fre| P_fre|to
P_gav_m| P_got| P_is_sit| P_is_starv| P_is_turn| P_is|her P_is|peel P_is|vegan P_lik|her P_on_th|
P_put| P_put|th P_so_N:few| P_so|plus P_text_Nduration| P_took_th| P_took| P_w_ar| P_want_to|
P_will_eat| P_will|carv P_w|ar P|P P|ar_gnaw P|eat_Ndate P|eat_by P|has_fallen P|has_it P|is_allergic
P|is_carry P|is_carv P|is_go P|is_not P|is_pur P|is_turn P|n THING_N:core_at| THING_Nweight_with|
THING_THING|sorry THING_U_com| THING_am| THING_am|i THING_and|all THING_and|w THING_board|now
THING_do|i THING_for_th| THING_get_to| THING_hang| THING_hang|in THING_has|been THING_in_and|
THING_is_Ndegrees:few| THING_is_stuck| THING_is|Ndegrees:few THING_is|act THING_is|giv THING_is|show
THING_it_bl| THING_it_has| THING_m_th| THING_mak_yusuf| THING_not|th THING_now_leo| THING_of|roast
THING_out|of THING_r| THING_r|say THING_so_wer| THING_test_a| THING_th_tabl| THING_they| THING_they|hav
THING_till| THING_till|N:few THING_up_U| THING_up| THING_went_into| THING_when_it| THING_when|
THING|THING_Nweight THING|THING_caught THING|all_over THING|and_th THING|cam THING|cam_out
THING|caught_fir THING|do_instead THING|get THING|get_to THING|her THING|in THING|is_Ndegrees:few
THING|is_ti THING|left_$ THING|on_$ THING|slip_$ THING|sorry THING|went_straight U_and_then|
U_and| U_back| U_back|in U_can_not| U_cancell_so| U_com|let U_find| U_find|him U_from_her|
U_is_P| U_is_rock| U_it| U_not|bloody U_of_fahrenheit| U_of_her| U_of_str| U_or| U_say_U| U_that_green|
U_th|Nduration U_with_th| U|U U|behind_P U|by_Nduration U|is_rock U|it_on U|no U|of_str U|tenderis
U|w U|with_U ^_DISH_has| ^_DISH_out| ^_DISH|hit ^_N:core|and ^_N:few_of| ^_N:oven| ^_Nduration_for|
^_Nduration|back ^_P_at| ^_P_has| ^_P_i| ^_P_jim| ^_P|at ^_THING|for ^_THING|up ^_U_and| ^_U_my|
^_U|get ^_^_N:oven| ^_^_aim| ^_^_crank| ^_^_electric| ^_^_greas| ^_^_how| ^_^_jess| ^_^_kill|
^_^_nobody| ^_^_nowher| ^_^_party| ^_^_push| ^_^_shov| ^_^_sh| ^_^_som| ^_^_supper| ^_^_tak|
^_a_rib| ^_aim| ^_am|i ^_and|th ^_anyth_i| ^_ar|w ^_away_for| ^_away_till| ^_bin_th| ^_butter|is
^_cancel|that ^_can|i ^_cor|temperatur ^_could|w ^_crank| ^_dinner|n ^_electric| ^_electric|is
^_for_th| ^_forget_i| ^_go_for| ^_gon_for| ^_got_it| ^_go|upstair ^_greas| ^_greas|fir ^_guest_hav|
^_guest|hav ^_how| ^_i_bought| ^_i_could| ^_i_grab| ^_i_pull| ^_i_turn| ^_ic_water| ^_if_i|
^_it_has| ^_it_is| ^_i|did ^_i|don ^_i|go ^_i|hav ^_i|put ^_i|would ^_jess| ^_keep_an| ^_kill|
^_kill|th ^_leav_it| ^_light|ar ^_lunch|Ndate ^_min|is ^_mov|dinner ^_my_cooker| ^_my|DISH
^_my|P ^_my|THING ^_nobody| ^_not_clean| ^_nowher| ^_nowher|near ^_nudg|m ^_onc|it ^_our_oven|
^_out_of| ^_oven_down| ^_oven_set| ^_party| ^_party|of ^_plus|U ^_power_went| ^_pull_temperatur|
^_push| ^_put|Nduration ^_right_w| ^_roll|ar ^_say_that| ^_serv_Nduration| ^_serv|it ^_set_it|
^_set|Nduration ^_shellfish_allergy| ^_shov| ^_show|N:core ^_shut|that ^_sh| ^_slid_th| ^_smok|is
^_som| ^_sorry|i ^_stand_it| ^_supper| ^_switch_th| ^_tak_it| ^_tak| ^_target_N:core| ^_th_N:few|
^_th_chip| ^_th_flight| ^_th_joint| ^_ther_ought| ^_th|power ^_tom_is| ^_total_N:few| ^_turn_it|
^_us|th ^_wer_Nduration| ^_what_am| ^_what_was| ^_what|can ^_what|if ^_when_it| ^_w|got ^_your_man|
a_DISH|in a_Nweight_THING| a_Nweight_leg| a_Nweight_with| a_Nweight|forerib a_U_of| a_U|behind
a_bad_N:few| a_bad|N:few a_few_roast| a_few|roast a_glass_that| a_glass|that a_good_Nduration|
a_good_bit| a_good|un a_half_THING| a_kidney| a_kidney|transplant a_low_flam| a_low|flam a_new|THING
a_proper|rar a_rib_of| a_r|DISH a_stand|rib a_tabl|of a_thumb_and| a_thumb| a_thumb|and a_touch_early|
a_trick_to| a_vegan|if a_we|whil a_yell| about_my| about_my|oven about_th_DISH| add_Nduration_to|
add_a| add_a|DISH adult_mor| adult_mor|ar adult|mor adult|mor_ar after_a_proper| after_th|nut
after_w|sit after|all_that after|go after|go_up after|th_first after|th_nut after|w_sit again_i|was
again|P_$ ago_it| ago_it|said ago_ther| ago_ther|in ago|whil ago|whil_i ahead_out_of| ahead|of_m
alarm_w| alarm_w|set alarm|for_Nduration alex_can|stir all_THING_th| all_behind_Nduration|
all_over|my all_sat|down all_that|faff allergic_to|nut allergy_a_bad| all|THING_th all|behind
all|item all|item_i all|mix all|mix_up all|on all|taken all|taken_their alon_for| alongsid_DISH_butter|
already_hav|it alway_N:few| alway_N:few|under alway_com| alway_com|in alway_run|N:some alway|left
alway|left_over am_THING_for| am_all|behind am_away_to| am_do|it am_hav|a am_head_upstair|
am_head| am_head|upstair am_hold|th am_i_meant| am_lat| am_lat|with am_never| am_not_french|
am_not_go| am_sorry_to| am_us|a am_yet_to| amaz_in| amaz_in|her amaz|in amaz|in_her am|a am|all
am|away am|away_to am|lagg am|lagg_by am|miss_THING am|miss_th am|never am|nip_out am|not_her
am|off an_alarm| and_DISH_went| and_N:core| and_N:few_of| and_P_is| and_am|i and_can_not| and_dav_so|
and_do_th| and_everyth|in and_forget|th and_giv|m and_go_for| and_how_many| and_how|do and_how|long
and_how|many and_i_can| and_is|ther and_it|was and_it|will and_kilo_i| and_kilo|i and_left_th|
and_left|th and_onc| and_paus| and_remind| and_remind|m and_sam| and_set|a and_sit| and_skip_th|
and_skip| and_skip|th and_start|fresh and_undo| and_wak_m| and_what_do| and_what_temperatur|
and_what_tim| and_w|will and_you_ar| and|chop and|do_th and|eat and|nobody_els and|now_what
another_N:few_has| another_N:few|has another_go_not| another_helper_it| anymor_th|DISH anyth_that|
anyth_with_pastry| any|other_drawer an|extra_pair app| ar_N:some|lat ar_Nduration|lat ar_U_is|
ar_ahead| ar_ahead|of ar_all|THING ar_bang|on ar_out_and| ar_out_of| ar_peel_and| ar_sit|too
ar_ston| ar_ston|cold ar_us| ar_us|celsius ar_w_go| ar_w|still ar_w|talk arm_with_th| arm|what
arriv_Nduration| ar|N:few_for ar|Nduration_too ar|THING_they ar|a_no ar|all_sit ar|already
ar|back ar|bang_on ar|down ar|fussy ar|go_too ar|in ar|miss_th ar|not_hav ar|on ar|out_of ar|sit_too
ar|still_squeaky ar|want as_long_as| as_old| as_old|boot as_w|hit ask_is_her| ask_your| ask_your|P
ask|how_pink as|w_hit at_N:core_in| at_N:core_it| at_N:core_w| at_N:core|yet at_N:few_in| at_N:few_on|
at_N:few_so| at_N:few|P at_N:few|on at_N:some_in| at_Nclock_N:few| at_Nclock_was| at_Nclock_what|
at_Ndegrees:core_let| at_th_till| at_th|colour at_th|end at_th|stov at_th|tabl at_th|wall at|N:few_heat
at|N:few_instead at|N:some_$ at|Nclock_DISH at|Nclock_how at|Nclock_instead at|th_finish away_and_start|
away_from_th| away_till| away_till|N:few away_to| away_to|get away_with| a|DISH_instead a|N:few_month
a|THING_$ a|THING_oven a|U_of a|buzz a|buzz_in a|conventional a|conventional_oven a|day a|drop
a|drop_of a|fan_oven a|fat a|fat_THING a|go a|good_bit a|good_reason a|helper a|leg_of a|moment_$
a|pan a|plat a|proper a|proper_THING a|rib a|school a|school_night a|tick a|we_whil b_N:few_of|
b_U_find| b_at|Nclock b_by|th b_do_with| b_do|now b_f|by b_had_for| b_hav_DISH| b_out| b_out|of
b_parchment| b_parchment|paper b_strain_th| b_tak|it b_when_i| back_Nduration_and| back_i|said
back_to|N:core back|i back|in_a bad_N:few|that bad|N:few_that bad|road bang|on_N:some bast_in|
bast_in|N:some bast_step_my| bast|in bast|in_N:some bear_that| bear_that|in beast_is| beast_is|in
been|don been|out been|rest beep_so| beep_so|it befor_th_next| befor_th|DISH beg|your beg|your_pardon
behind_Nduration|at behind_on_th| behind_with| behind_with|everyth behind|her_lad behind|in_her
ben_can| ben_can|not bit_mor_tim| bit|mor_tim bleed_and| bleed|and_it bl| board_onto| board_onto|th
board|onto board|onto_th boat| bob|is boil_for|th boil_straight| boil_straight|in boil_water_on|
boil_water|on boil|for_th boil|water_on bon_from_th| bon_in_rib| bon_i| bon_lif_is| boneless|Nweight_$
bother_sear|keep bottom| br_it|to br_my_P| breath_someth| breath_someth|is bring_his|P bring_th_new|
bring|th_new br|it_forward br|it_to budg| budg|for budg|for_ag bung|th bung|th_roast burn_pretty|
burn_pretty|bad burn_th|DISH burn|in burn|in_th bus|is_lat butter_by_th| butter_by| butter_by|th
butter_for|th butter_go| butter_go|in butter_is_all| butter_is|all butter_is|not butter|for_th
butter|it butter|mad_and buzz_m|in by_N:some_y| by_th_stov| by_th|way by|Nduration_i by|th_stov
b|better b|bother b|do_with b|on_th b|out b|out_of b|want cam|out_at can_help_till| can_i_put|
can_i|get can_i|us can_not|find can_stir_th| can_w_mak| can_w|eat can_w|los can_you_cut| can_you_speak|
can_you_talk| can_you|get can_you|speak cancel_th|Nduration can|i_ask can|i_refreez can|not_eat
can|not_find can|not_go can|not_hear can|not_trust can|stir can|stir_th can|w_add can|you_set
cap_down_a| careful_with|her carry_so| carry_so|tak carv_Nclock_and| carv_and_it| carv_and|it
cast|iron_THING cat_got| cat_got|th cat_has| catch|my catch|my_breath cat|has caught_light_on|
center_when| center_when|w chang_it|to charg|of chop_th|DISH christma| chuck_it|on chuck|end
chuck|end_Nweight chuck|it clean_thos| clean_thos|bon clean|thos clean|thos_bon clock_for|th
coat_on_th| com_for|help com_from_th| com_in_Ndegrees:some| com_last_for| com_so_knock| com_to|th
com_with_Nduration| complet_som| complet_som|tim com|along_$ com|for_help com|in_Ndegrees:some
convection_is|run cook_it|at cooker_is|dead cool_alway| cool_alway|has cor|get cor|get_to could_dinner|b
could_i|mak could|dinner_happen count_th|bairn count|th_bairn cover_it| cover|with cover|with_tinfoil
crack|on crank_it| crap_th_power| cream_DISH_would| cream_on_th| crept_up_to| crept_up| crept_up|to
crept| crept|up crept|up_to crisp_it| crisp_it|up crispy_at| crispy_at|all crispy|on crisp|it
crisp|it_up crowd_is| crowd_is|in cut_my| cut_my|THING cut_m|som cut_th|oven cut|m_som cut|myself_it
da_will| dav_check| dav_check|it dav_so| dav_so|N:few da|will deb_ar_not| decid| decid|against
decid|against_DISH deglaz| diall_back_to| diall_back| diall_back|to did_you|hear did|i dinner_Ndate_at|
dinner_b| dinner_is| dinner_mov_to| dinner_mov| dinner_mov|to dinner|is_at dishwasher_reminder|
dishwasher_reminder|can display_is|giv do_DISH_DISH| do_i_DISH| do_i_n| do_i_tak| do_instead|
do_instead|of do_it|by do_it|look do_i|get do_i|put do_i|tak do_next_i| do_not_P| do_not_mak|
do_not|find do_not|touch do_not|trust do_th_sear| do_with_th| do_you|know dog_THING_th| dog_back|
dog_back|in dog|back dog|back_in don_this| don_this|tim don_what_is| don_with|th doorbell_they|hav
door|open_$ down_a| down_a|bit down_th|shop down_to_after| down_to_their| down_to|N:some down|Nduration
down|at_N:few do|a_DISH do|a_THING do|everyth_go do|i_DISH do|i_say do|i_typ do|not_expect
do|not_own do|now do|stuff do|stuff_h do|th_high do|that_work drawer_or_any| drawer|or drawer|or_any
drop_back_to| drop_th_oven| drop_that| drop|back_to drop|th_bast drop|that dry|as dry|as_a
duck_out_for| earlier_than| earlier_than|plan early_so_shav| early_so|shav early|sinc early|sinc_th
early|today early|today_N:few eat_DISH_so| eat_DISH|in eat_Nduration|sooner eat_early|today
eat_it|pink eat_our| eat_our|christma eat| eat|Nduration_mor eat|a_bit eat|it_at electric_is|
electric_is|off electric|is_back elli_is| elli_is|chop everyth_is_happen| everyth_slip| everyth_slip|by
everyth_under| everyth_under|control everyth|i everyth|in_th everyth|tak_longer extra_pair_of|
fahrenheit|giv fahrenheit|giv_it fallen|Nduration fallen|Nduration_off family_has| family_has|arriv
family_is|run family|has family|has_arriv far_bad| far_bad|road far_wait_on| far|along fast_for|
fast_for|m fast|for fast|for_m fat_is|smok fat|is_smok fat|splash fat|splash_on fat|was fat|was_smok
fell_on| fell_on|th few_roast| few_roast|DISH fewer_los| fewer_los|th few|roast few|roast_DISH
fin_for|my find|him find|him_someth finish|and_it first| first|N:few_walk flam|for flam|for_Nduration
flat_tyr_they| flat|tyr_they for_N:few|of for_Nduration_it| for_Nduration|walk for_U_and| for_a_we|
for_all| for_a|we for_medium| for_new| for_new|year for_som| for_th_whol| for_th|roast forerib_on_th|
forerib_on| forerib_on|th forerib|Nweight_N:few forget_about|th forget_check_th| forget_i|am
forget|th_Nduration forget|what_you forward_N:some_if| forward_N:some| forward_N:some|if forward|N:some
forward|N:some_if for|Nduration_and for|Nduration_diaper for|P_nor for|a_whil for|help_in for|th_oven
fre_to_do| fre_to|do french_th| french_th|bon fre|to_do from_N:few_to| from_N:few|to from_th|market
from_th|shop from_th|station from|now from|th_top from|work full_of|smok full|hous_miss fus_has|gon
f|by get_away_with| get_rid| get_rid|of get_th|crackl get|her get|her_$ get|roast get|roast_DISH
get|th_crackl giv_m_som| giv_m|Ndegrees:core giv|m_a glass_that| glass_that|brok glass|that
glass|that_brok glov|is go_U|with go_not| go_not|crispy go_straight|to go_to_giv| go_too_fast|
go_to|hav go_to|walk go_upstair_for| go_up|nicely go_with_salt| go_with|N:few go_with|th goal|
god_i| god|bless god|bless_them gon_from_N:few| gon_in_fat| gon_in_wish| gon|cold_on gon|lumpy
gon|off_so gon|to_extra good_Nduration| good_and|hot good_bit| good_bit|mor good|un good|un_don
got_an|extra got_a|THING got_behind| got_burn_pretty| got_her_Nduration| got_in| got_in|early
got_no|DISH got_someth_in| got_th_chuck| got_th|THING got_tim| got|THING_to got|a_Nweight got|a_THING
got|a_nic got|held got|held_up got|th_butter got|to go|out_Nduration go|out_for go|th_THING
go|to_do go|up_nicely go|upstair_for grab_a_glass| green|DISH_$ green|DISH_nobody grey_right|
grey_right|through grow_in| grow_in|th guest_com_Nduration| guest_got| guest_got|her guest_hav|arriv
guest_will|not guest|ar_in guest|cam guest|hat guest|hat_this guest|hav_arriv h_has|been h_is|out
h_mak_with| h_pour_th| h_swell| h_swell|up had_for| had_for|P half_THING| half_THING|THING
hang|about_$ hang|in happen_Nduration_sooner| happen|at has_U|and has_been|rest has_com_for|
has_com|for has_com|to has_gon_ston| has_gon|lumpy has_got|U has_got|a has_had|a has_invit|
has_invit|themselv has_not_budg| has|com_for has|di has|fallen has|gon_U has|gon_from has|gon_in
has|gon_off has|gon_ther has|got_N:few has|got_U has|got_to has|invit has|invit_themselv has|it_got
has|land has|not_reduc has|split has|to has|to_b hav_DISH_as| hav_DISH|as hav_P_fre| hav_all|taken
hav_a|Nweight hav_a|THING hav_a|helper hav_a|r hav_been_on| hav_been|don hav_bung| hav_bung|th
hav_burn_my| hav_cut_my| hav_decid| hav_decid|against hav_dinner_at| hav_fallen|Nduration hav_gon_and|
hav_had|N:few hav_i_got| hav_knock_it| hav_left|U hav_never| hav_not_turn| hav_not|even hav_nut|sh
hav_overcook| hav_overcook|it hav_peel|th hav_pull|it hav_put_it| hav_put_too| hav_remov|from
hav_sat_them| hav_sat| hav_shown| hav_shown|up hav_switch_it| hav_switch| hav_to_eat| hav_to|DISH
hav_to|eat hav_to|nip hav_trim| hav_trim|it hav_turn_it| hav_walk| hav_walk|in hav|a_THING
hav|all_taken hav|another_helper hav|arriv hav|been_on hav|complet hav|complet_se hav|dairy
hav|finish_th hav|got_DISH hav|got_N:few hav|it_later hav|it_out hav|kept hav|land hav|mad
hav|mad_it hav|put_too hav|rop hav|rop_in hav|salt_th hav|shown hav|shown_up hav|trim hav|trim_it
head_out_to| head_out| head_out|to head_upstair| head_upstair|to headcount_has| headcount_has|gon
head|upstair head|upstair_to hear_is| hear_is|not heat_and| heat_th|oven heat|at_all help_m_with|
help_till| help_with| help_with|th helper_today|her help|us_$ henderson_ar| her_for|a her|chair
her|chair_and her|on_weight hey_w_hav| himself|is_go his|blu hit_N:core_i| hit|N:core_it hold_dinner|by
hold_dinner|for hop_in_th| hot_do_th| hot_fat|splash hot_for|th hot_this|tim hot_to|pull hot|oven_clock
hot|to_pull hour|for hour|for_it hous|is how_ar|w how_far|along how_is_sh| how_is|it how_long|mor
how_many|degre how_should| how_should|i how|do_th how|long_has how|long_hav how|long_till how|many_THING
how|many_minut how|pink_will how|this how|to how|warm_must h|will_b i_DISH_th| i_already_hav|
i_am_head| i_am_lat| i_am_never| i_am|a i_am|all i_am|away i_am|lagg i_am|never i_am|off i_burn_my|
i_burnt_my| i_b|do i_can| i_com| i_cover|it i_do_about| i_do|now i_forgot_th| i_got_th| i_got_tim|
i_go|out i_hav_been| i_hav_bung| i_hav_ne'er| i_hav_never| i_hav_overcook| i_hav_peel| i_hav_trim|
i_hav|been i_hav|complet i_hav|rop i_hav|th i_hav|trim i_hit_th| i_left_th| i_left|th i_mak|th
i_meant|to i_must_go| i_press| i_pull_th| i_put_th| i_put|it i_put|th i_remov_it| i_said_th|
i_say|to i_set| i_shut| i_shut|th i_suppos| i_suppos|to i_swap|th i_switch_th| i_switch|th
i_tak|THING i_talk_to| i_think|in i_took_it| i_want_P| i_want|it i_want|thos i_would_quit|
if_it|get if_someth| if_someth|is if_that|is if_this_is| if|this if|this_is if|you_do ignor_my|
ignor_my|last in_Ndegrees:some| in_Ndegrees:some|under in_Nduration|pet in_U| in_and_i| in_as|
in_a|U in_a|good in_charg| in_charg|of in_early_so| in_fat| in_fat|was in_her|chair in_i_shut|
in_i|hav in_law_they| in_law| in_oven|sinc in_rib| in_th_P| in_ther_crispy| in_this_drawer|
in_th|fat in_th|hous in_th|other in_th|pan in_th|shower in_traffic_another| in_wish| in_wish|m
inform_when| inform_when|it instead_roll_and| intolerant_so| intolerant_so|watch into|account
in|a_U in|a_tick in|at in|celsius_and in|early in|early_so in|her_throat in|his_throat in|kilo_and
in|kilo_if in|law_has in|mind_$ in|onc in|oven in|th_moment in|ther_$ in|this_rental in|traffic_Nduration
is_DISH| is_DISH|grow is_N:core_i| is_Ndegrees:few|high is_Ndegrees:some|cooler is_P_is| is_THING_and|
is_a_stand| is_a_tabl| is_a_vegan| is_after|go is_all| is_all|mix is_alway_N:few| is_alway|left
is_ask|how is_at| is_a|conventional is_a|school is_back_to| is_beep_it| is_carry_so| is_carv_and|
is_celsius_i| is_celsius| is_celsius|i is_com_after| is_cover|with is_eat_DISH| is_fir_in|
is_giv|m is_grey_all| is_happen|at is_help_with| is_it_at| is_it_saf| is_it_you| is_it|saf
is_lot_hav| is_margarin_ok| is_no_power| is_not_at| is_not| is_not|a is_not|availabl is_not|in
is_no|power is_on|now is_pack|up is_pregnant_in| is_raw_in| is_raw|in is_ready_it| is_rock|
is_rock|up is_run|at is_sat|down is_sat|on is_sear| is_sear|now is_slip_on| is_sort_N:few|
is_starv| is_that|saf is_th|THING is_th|best is_th|next is_th|trick is_too|full is_vegetarian|i
is|N:few is|Ndate_lunch is|Ndegrees:few_high is|U_from is|a_beauty is|a_bit is|a_stand is|a_vegetarian
is|act is|act_weird is|all_mix is|ask_how is|at_Nclock is|at_a is|blister_$ is|bring_his is|call_out
is|cancell is|chop_for is|cut_up is|dead_it is|don_and is|down is|down_to is|for is|giv_U is|go_on
is|her_to is|lot is|no_second is|no_str is|not_happen is|not_mad is|not_out is|on_DISH is|out_of
is|peel is|pour_out is|ready_and is|right_U is|run_bout is|sinc is|smok_everywher is|split
is|still_in is|strain is|stuck_in is|th_plan is|th_point is|that_th is|ther_another is|up_next
is|when_w is|wrong it_after|all it_all|right it_and_h| it_as| it_beep_so| it_bl| it_burn|in
it_com|along it_forward_N:some| it_forward|N:some it_has_been| it_has_com| it_hot_this| it_i_am|
it_if|ther it_is_com| it_is_sear| it_is|alway it_is|in it_is|on it_is|over it_is|way it_i|drop
it_jump|Ndegrees:some it_medium_not| it_off_at| it_on_a| it_on|a it_open_and| it_out_Nduration|
it_pink_all| it_practically| it_practically|burnt it_right_at| it_run|a it_run|cold it_saf|
it_saf|to it_smell_amaz| it_smell| it_soon_P| it_still|no it_tim|to it_to_medium| it_was|a
it_will|not it_with_DISH| it_with|a it_with|you it|at_$ it|at_N:few it|at_N:oven it|by_THING
it|down_to it|down_yet it|for_Nduration it|for_medium it|forward_Nduration it|get_past it|has_been
it|has_fallen it|has_not it|is_Ndate it|is_Ndegrees:core it|is_an it|is_beautiful it|is_conventional
it|is_don it|is_out it|is_past it|is_preheat it|is_ready it|is_rest it|is_sear it|is_sleep
it|is_way it|jump_Ndegrees:some it|look_$ it|n_ty it|pass it|pass_N:core it|pink_all it|saf
it|saf_to it|till it|to_N:core it|touch_N:core it|up_right it|weigh_Nweight it|with_salt i|am_THING
i|am_afraid i|am_behind i|am_nip i|am_off i|am_skip i|am_slow i|am_way i|ask_$ i|b_do i|bought_a
i|com_back i|do_next i|fetch i|hav_DISH i|hav_forgotten i|hav_mad i|hav_overcook i|hav_rop
i|hav_slip i|hav_turn i|know_i i|mak_ahead i|n_in i|n_mor i|nip i|nip_out i|put_in i|said_N:core
i|saw_it i|say_to i|suppos i|suppos_to i|tak_THING i|think_th i|told_them i|want_N:core i|want_it
i|want_thos i|would_quit i|would_rather job|is joint_is_still| joint|out_gorgeous jump|Ndegrees:some
jump|Ndegrees:some_in justify_th| justify_th|DISH keep_it_at| keep_tell|m kept_at|Ndegrees:oven
kept_up| kept_up|honestly kept|at kept|th_DISH kidney|transplant kilo_i|am kindly|includ kindly|includ_N:few
knock_it_back| knock|N:few knock|N:few_off knock|that knock|that_timer know_if| know_if|this
know_when|it lactos_intolerant_so| lad_hav| lad|is_off land_us| land_us|on land|us land|us_on
last_for| last_for|m last_on|back lat_on_my| lat_with|th later_than_they| lat|sav lat|sav_her
law_has_com| law_has|com law_is|vegetarian law_they| law_they|ar law| law|ar_at learn_about_my|
leav_it_with| leav|it_uncover left_what_do| left|U leo|from leo|from_upstair less|for less|for_dinner
let_th|cat let_us|know let|us_do let|us_eat let|us_go let|us_mak let|us_not let|us_skip lid|on_$
light_has_gon| light_on|th light|went_off lik_P|eat lik_it_practically| lik_it_well| lik_th|th
lik|her_cremat lik|it_well lik|th_th list_nobody| list_nobody|eat littl_light|went littl|on
littl|screen long_as| long_can|it long_hav_i| long|mor look_at|th look_at|that look| los_th_r|
lot_hav|mad lot_till_i| lot_to_th| lot_to| lot_to|th low_flam| low_flam|for lower_it| low|flam
low|flam_for lucy_can| lucy_can|not m_a_N:few| m_a_r| m_and_my| m_at_th| m_at|th m_a|buzz m_back|
m_da_will| m_da| m_da|will m_forget_i| m_if| m_if|it m_lik_i| m_of| m_of|th m_onc| m_onc|it
m_to_bast| m_what|w mad_it_still| mad_it_to| mad_it|to mad|it mak_anymor_th| mak_a|DISH mak_it_after|
mak_that|Nduration mak_with| mak_with|m mak_yusuf| mak_yusuf|is many_DISH|for many|degre margarin_ok|
marri| match_has_gon| match|has match|has_gon meal_back_by| meal_back| meal_back|by meant_for|
meant_for|you mean| medium_not|a medium_well_my| medium_well_they| meet|at meet|at_N:core middl_when|
middl_when|w middl|shelf_$ min_is_alway| min_is|alway mind_a| mind_a|DISH mind_your|back mind|drop
mind|drop_that miss_for| month|pregnant mor_befor| mor_befor|w mor_or| mor_th| mor_tim|it mor_to|
mor_to|th mor|reminder mouth_to| mouth_to|f mov_it_to| mov_to|Nclock mov|to_Nclock much_pip_up|
must_go| must_go|out must_i_do| must_i|do my_P_at| my_P_do| my_P_h| my_P|has my_P|sh my_THING_and|
my_THING|has my_arm|what my_cooker_is| my_god_ther| my_guest| my_guest|hat my_hear_is| my_oven_will|
my_peopl_ar| my_tail_Nduration| my_thumb|open my|P_never my|P_no my|P_set my|arm_with my|cooker_is
my|cooker_run my|in my|in_law my|last my|last_messag my|oven_THING my|oven_this m|Ndegrees:core
m|Ndegrees:core_is m|a_THING m|a_r m|forget_i m|in_N:some m|onc m|when_it n_Nduration|befor
n_to|b nagg| ne'er|a_THING nearly_full| nearly_full|hous never_go_to| never|again never|go
never|go_to new|THING_so next_i|U next_i|am next| next|step_$ nip_out_back| nip|THING nip|THING_to
nip|out_back no_THING_and| no_i|am no_i|meant no_mor|reminder no_n| no_n|to no_pink_at| no_power|
no_power|in no_sign| no_sign|of no_str_in| no_tim_to| nobody_eat|them nobody_lik| nobody_told|
nobody_told|m nobody|lik non_to| non_to|b not_P| not_at|N:core not_b_by| not_bother|with not_breath_someth|
not_budg| not_budg|for not_clean_thos| not_clean|thos not_complet_som| not_crispy_at| not_french|
not_french|th not_hav_a| not_hav|THING not_hav|dairy not_hav|nut not_heat|at not_i_am| not_in|
not_kept_up| not_know_if| not_listen| not_mak_th| not_meant_for| not_mind_a| not_say|that not_th_hour|
not_th|DISH not_turn_it| not|N:few not|a_drop not|availabl not|availabl_in not|bloody not|bloody_$
not|bother_with not|carv not|com_so not|crispy_at not|eat_DISH not|eat_anyth not|find_in not|for
not|hear_you not|light not|meant not|meant_for not|n_th not|now not|ready_for not|trust not|trust_th
not|trust_this not|want_to now_in_th| now_leo| now_leo|from now_th|THING now_would|you no|THING_$
no|bon_Nweight no|butter no|i_hav no|power no|power_in no|sign no|sign_of no|when no|when_i
no|win nudg_th|whol number_am| number_am|i number_i_am| number_i| nut|sh nut|sh_is of_butter_by|
of_butter_go| of_butter| of_fahrenheit| of_fahrenheit|giv of_fresh| of_her|tablet of_m| of_str|
of_str|lik of_th_lad| of_them_hav| of_them_walk| of_th|THING of_th|other of_what|you off_DISH|cream
off_Nduration|ago off_down_th| off_in|th off_my|THING off_out| off_so_no| off_th_board| off_th|DISH
off_to|get off_to|th off|th_Nduration of|delay of|smok of|them of|us of|what_you ok|for_th
ok|instead old|boot on_U| on_all|sid on_for|th on_his| on_th_littl| on_th_menu| on_th_wet|
on_th|b on_th|clock on_th|greas on_th|joint on_th|littl on_th|other on_th|til on_th|timer on_to_boil|
on_track_for| onc_it|pass on|N:core_has on|Nduration_$ on|a_few on|back on|back_$ on|his_foot
on|m_$ on|our_whol on|th_dial on|th_greas on|th_sticker on|track_$ on|track_for on|with_$ open_th|door
or_any| or_any|other or_near| or|THING other_ar_sit| other_ar|sit other|on_$ ought_to|b our_christma_dinner|
our|P_got our|christma our|christma_dinner our|lodger_had our|on out_U| out_and_on| out_for_m|
out_for|N:few out_her| out_of_what| out_of| out_of|DISH out_of|N:few out_of|what out_on|our
out_quick_th| out_th|truss out_to|get out|for_Nduration out|to_get out|yet_$ oven_alway_com|
oven_as| oven_at|Ndegrees:oven oven_beep_it| oven_door| oven_glov|is oven_has_been| oven_has|di
oven_is_Ndegrees:some| oven_is_too| oven_is|alway oven_off_Nduration| oven_on|whil oven_set|to
oven_th_roast| oven_up| oven_will| oven_will|not oven|N:oven oven|alway_run oven|and_th oven|glov_is
oven|is_Ndegrees:some oven|is_hot oven|is_now oven|is_smok oven|run_a oven|sinc_Nclock over|my
own_a|THING own_a|leave-in p_m|in pac_with_your| pair|of_THING palm_try_to| pan_is_after| panick_and|
panick_and|took pan|i parchment|paper parchment|paper_her pass_Nduration| pass_Nduration|on
past_well| past_well|don pastry| pastry|or pastry|or_DISH peel_DISH|without peel_and|cut peel_took|
peel_took|forever peopl_ar|com peopl_ar|go person_is| per|THING phon_to_my| pick_th|P piec|
pink_at| pink_at|all pip_up| pip_up|if plac_of|THING plan_got_in| plan_sinc| plan_sinc|Nduration
plan_to|carv plan|for_a pop|out_for pop|to pop|to_th pour_th_boil| pour_th| pour_th|boil power|in
power|in_th power|went_out practically|burnt practically|burnt_well pregnant_in| pregnant_in|th
press_it| press_it|with pretty|bad pretty|bad_off priya_is_her| priya|is_her proper_rar_roast|
proper|rar proper|rar_roast prov_Nduration_ago| prov_Nduration|from prov|Nduration_ago puff|
puff|up pull_it|for pull_temperatur| pull_temperatur|should pull_this_at| pull|at pull|for
pull|for_medium pull|th_DISH pull|this pull|this_at put_in_her| put_th_lid| put_too| put_too|much
put|it_back put|th_joint quantity| quantity|of quick|updat_$ quiet_for_a| quit|lik quit|lik_to
r_DISH|Nduration ran_out|of rang_h| rar_fin_for| rar_or| rar_roast| rar_roast|this rather_crisp_it|
rather_crisp| rather_crisp|it ready_when|you ready|it_is read|at read|at_Nclock read|is reckon_w|hav
remind_m_of| reminder|can reminder|can_go remind|m_about remind|m_in remov_it| remov_it|from
remov|from_oven rest_in_th| rest_in|th rest_on_th| rib_with_N:few| rib|is_in rid| rid|of right_U_back|
right_so_that| righto_rib| righto_rib|is right|now_$ ris_yet_so| roast_DISH_with| roast_DISH|has
roast_cam|out roast_has_left| roast_in_oven| roast_went| roast_went|in roast|DISH_would roast|THING
roast|cam_outsid roast|is_go roast|is_in roast|this roast|this_year roll_and_p| roll_and|p
roll_i|hav roll_n| roll_n|Nduration roll_prov| roll_prov|Nduration roll|cam roll|cam_out roll|timer_$
room_with| rub_it| rub_it|with run_a_U| run_so_do| run_that|by run_to| run_to|th run|N:some_hot
run|cold run|cold_by run|lat_Nduration r|DISH_Nduration r|DISH_ther r|say r|say_N:core sack_off_th|
said_N:core_not| salt_all| salt_i_hav| salt|it_chuck salt|so salt|so_early sam_temperatur_all|
sam_temperatur| sam_temperatur|all sam|is sam|is_help sam|temperatur sam|temperatur_all sat_them|
sat_them|down sat|down_and sat|on_a sat|on_th say_N:oven| say_U|tenderis say_that|again say_they|
say|in say|it_on scald_my|arm schedul_say_on| schedul_say| schedul_say|on scrap|th_DISH scratch|th
scratch|th_green scream_th_fat| sear_on_all| sear|keep sear|keep_it sear|this sear|this_tim
season_th| serv_it|pink serv| serv|at_Nclock serv|up sesam| sesam|allergy set_an| set|for_th
sh_do|not sh_has_been| sh_is_cover| sh_is_go| sh_is_hit| sh_is| sh_is|sit shav| shav|N:few
shav|N:few_off shelf_it_is| shit_i_hav| shop_for_a| should_i|pull should_land_us| should_land|
should_land|us should|i_do shout_if| shout|when_it shout|when_sh shout|when_w shown| shown|up
sh|go sh|is sh|is_Nweight sh|is_cover sh|is_not sh|will_b sid_fewer_los| sign_of_th| sign|of
sign|of_th sinc_th_smell| singl|DISH_in sit_at_th| sit_at|N:core sit|down_to sit|too skip_th|bast
skip_th|ty skip|butter skip|butter_th skip|it skip|th_next skip|th_ty skip|that_$ slic_my|
slic_my|thumb slid_th|roast slid|off slid|off_th slip|by slip|by_Nduration slow_then|a slow_today_Nduration|
slow_today_everyth| small|on smell_amaz_in| smell_amaz|in smell_was| smell_was|so smell|amaz
smell|was smell|was_so smok|and so_THING_is| so_THING|is so_careful_with| so_everyth_slip|
so_far_bad| so_i|am so_knock| so_knock|N:few so_lik_th| so_lik|th so_my|THING so_no_DISH| so_shav|
so_shav|N:few so_tak_it| so_tak|it so_w_want| so_wer| so_wer|without som_green_DISH| som_green|
som_green|DISH someth_in|her someth_i|can someth| someth|is_stuck someth|is_wrong som|tim som|tim_is
soon_P| soon_P|ar soon_as_w| soon_as|w sooner|than_plan sorry_from_th| sorry_i|am sorry_i|did
sorry_say|it sorry_to| sorry_to|say sort_N:few_U| sort_N:few| sort_N:few|U soup_is| soup_is|on
so|N:few_fewer so|behind so|count_him so|lik_th so|plus so|plus_N:few so|shav so|shav_N:few
so|tak_car so|watch_th speak_to| speak|up speak|up_what stand|it_on stand|rib_P start_from|
start_th_r| start_then_drop| start_th|r start|a_Nduration start|fresh start|fresh_$ step_my|
step_my|P stick_som_green| still_hav_not| still_no_sign| still_no| still_no|sign still_on|tim
still_on|track still_stuck_on| still|climb still|work still|work_on stop_for|a stop_nagg| stor_back|
stor_back|in stov_for|Nduration stov|for_Nduration str_in|th str_in|this strik_th|DISH str|lik
str|lik_you stuck_in|his stuck_in|it suppos|to_b sur_i|hav swap|th swap|th_cream switch_it|
switch_it|off switch|off_th switch|to switch|to_celsius switch|to_metric system_is|shot tabl_by|Nclock
tabl_god| tabl_god|bless tabl_w|said tabl|of tabl|of_N:few tail_Nduration| tail_Nduration|behind
tak_it_to| tak_it|off tak_that_into| taken_th|THING tak|a_shower tak|m_twic talk_in|degre talk|to_m
target_N:core| target_N:core|for teddy_is| tell_you_about| tell|m_to tell|you_$ temperatur_do_i|
temperatur_should_land| temperatur| temperatur|should_land test_a| test_a|miss test|cam test|cam_out
th_DISH_after| th_DISH_got| th_DISH_how| th_DISH_it| th_DISH_went| th_DISH|as th_DISH|must
th_N:few_of| th_P|n th_P|to th_THING_for| th_THING_of| th_THING_till| th_THING_what| th_THING|back
th_THING|cam th_THING|get th_U|N:core th_back_by| th_beast_is| th_beast| th_board_onto| th_board|onto
th_boil_straight| th_boil_water| th_boil|water th_butter_all| th_butter_on| th_butter_with|
th_butter|all th_cat_got| th_center_when| th_centr_it| th_chuck| th_chuck|end th_church| th_clock_for|
th_cor|get th_crowd_is| th_dishwasher_reminder| th_dog_back| th_dog|back th_family_has| th_family|has
th_fan|off th_fat_is| th_flight| th_guest_got| th_guest|cam th_guest|will th_henderson_ar|
th_hour| th_hour|for th_lad_hav| th_lad_is| th_lid|on th_list_nobody| th_littl|screen th_lot_to|
th_match|has th_meal_back| th_middl_when| th_needl_is| th_needl|is th_n| th_n|m th_on|with
th_oven_as| th_oven_down| th_pass_Nduration| th_peopl_hav| th_plan_sinc| th_power|went th_roast_it|
th_roast|it th_roll_prov| th_roll|cam th_schedul_say| th_sear|this th_smell_was| th_smell|was
th_stor_back| th_tabl_god| th_thickest|part th_till| th_tim| th_tip|of th_trick| th_way_and|
th_way_no| th_way_that| th_wet| th_wet|floor th_whol_U| th_whol|cook th_whol|gang than_they|
than_they|said thank|god_$ that_N:core_in| that_alarm_w| that_green| that_green|DISH that_i_do|
that_into| that_into|account that_is|celsius that_is|don that|N:core_in that|beast that|beast_fit
that|bit_is that|brok that|brok_her that|by that|by_m that|faff that|faff_about that|in_mind
that|is_P that|is_U that|is_for that|piec that|piec_of that|saf that|timer_and their_N:few|
their_N:few|of their_train_is| their|soup them_ar|her them_hav| them_i|want them_walk|in them|back_on
them|down_with theo_want_his| theo_want|his ther_a|good ther_crispy| ther_crispy|on ther_has|
ther_is|DISH ther_is|smok ther_ought_to| ther_w_go| ther_will| ther_will|b ther|has_got they_ar_go|
they_ar|fussy they_hav|all they_hav|arriv they_n|Nduration they_want_to| they|ar_arriv they|ar_stuck
they|hav_left they|sat they|text_Nduration think_in|kilo think|in think|in_kilo this_drawer|
this_drawer|or this_is|right this_year_it| this_year|instead this|afternoon this|afternoon_$
this|cooker this|cooker_is this|morn_$ this|up thos|bon_lif through_no| through_th|whol throw|this
throw|this_plan thumb_and| thumb_and|took thumb|and thumb|and_took thumb|open th|DISH_P th|DISH_under
th|P_hav th|P_up th|THING_N:few th|THING_behav th|THING_fell th|THING_hav th|THING_no th|THING_not
th|THING_what th|U_U th|afternoon th|alarm th|b th|back_by th|bast th|block_Nduration th|board
th|boil_water th|bon_and th|bon_skip th|bottom_of th|butter th|center th|chair th|clock th|cousin
th|cream th|crust th|dishwasher th|door_it th|driveway th|fan_on th|fat_cap th|fat_end th|fat_off
th|finish_$ th|first_guest th|first_th th|flu th|french_now th|gang th|gang_is th|greas th|greas_and
th|guest_got th|guest_will th|has th|heat th|henderson_ar th|hous th|littl_on th|littl_screen
th|meal th|method th|method_for th|metric th|metric_system th|other_N:few th|other_oven th|other_room
th|other_sid th|oven_glov th|oven_light th|oven_n th|oven_will th|patel th|patel_said th|phon_they
th|phon_to th|roast_into th|roll_burn th|schedul_for th|second_on th|shop_for th|shower th|small
th|tabl_now th|target th|teenager th|teenager_hav th|telly th|th_say th|th_with th|thickest_bit
th|timer_her th|timer_on th|tip_of th|top_won th|water th|whol_hous th|window ti_it|already
tick_that| tick_that|off till_i|com till_w|eat till|w_eat tim_Nduration_for| tim_ar_w| tim_is_your|
tim_is|lactos timer_i| tinfoil_th| tinfoil_th|THING tip|of tip|of_my ti|it to_N:oven|and to_U|by
to_after| to_after|th to_b_parchment| to_bast_in| to_bast|in to_boil_for| to_boil|for to_buy_for|
to_catch|my to_do|stuff to_giv| to_go|in to_inform_when| to_know| to_mak|th to_next| to_next|door
to_nip| to_peel_DISH| to_rest|it to_skip|butter to_their| to_their|soup to_th|metric to_th|next
to_th|shop to_turn| today_Nduration| today_Nduration|behind today_everyth| today_everyth|tak
today|her today|her_nam told_m| tom_can| tom_can|not tom_h_swell| tom_is|call tom_is|do tom|is_do
too_fast_for| too_fast| too_fast|for took_th|roast took|out too|full too|many_th topsid_for|
topsid_for|Ndate topsid_this_year| total_N:few|person touch_early| touch_early|sinc tough_as_old|
to|N:oven_Nduration to|N:oven_at to|b_found to|bast to|br_my to|carv_Nclock to|collect_th to|do_stuff
to|eat_$ to|get_ic to|grat to|grat_it to|mak_a to|next to|next_door to|nip_out to|peel_DISH
to|pick_th to|run_to to|stuff to|stuff_it to|th_metric to|that_phon to|us track_for| traffic_another|
traffic_another|Nduration train_is|delay transplant_bear_that| trick_to|peel trim_a| try_to|DISH
turn_it|up turn_out_my| turn|off turn|off_th tyr_they| tyr_they|reckon ty|it uncover_by_th|
uncover_by| uncover_by|th under_whatever| under_whatever|you under|control under|way undo|th
undo|that_i up_U|is up_after_th| up_after|th up_for|a up_from_th| up_if_someth| up|a_Nweight
up|honestly up|if_someth up|nicely us_a_shout| us_and_U| us_celsius|and us_do_it| us_eat|Nduration
us_eat|a us_get|roast us_hav_DISH| us|a_shout us|celsius_and us|eat_a us|get_roast us|know
us|mak_th us|on_N:core us|to_b vegan|if vegan|if_you vegetarian|i visitor_com| visitor_com|with
w_ar_bang| w_ar_us| w_ar|N:some w_ar|all w_ar|bang w_ar|hav w_ar|mak w_ar|not w_ar|out w_ar|sit
w_do_about| w_do|th w_eat_our| w_go|th w_hav_N:few| w_hav_decid| w_hav_fallen| w_hav_to| w_hav|a
w_hav|another w_n|another w_panick_and| w_pull| w_took| w_will_sit| w_would_b| wait_on|th wait|for_m
wak_m_when| want_P| want_P|eat want_a|good want_her_well| want_his|blu want_his|well want|his_blu
want|his_rar want|thos warn_m_at| warn_m_when| was_N:core_not| was_Nduration|lat was_hot_it|
was_not_listen| was_not|meant was_on_th| wash_up_as| wash_up|as was|N:core_not was|so_strong
was|th_telly water_on|his water_test|cam water|on_his way_do|i way_no| way_past_well| way_that|
way_that|beast way_too| way|through_for well_behind|her well_don_i| well_don_this| well_they|
well_they|ar went_into_my| went_into|my went_on_th| went_out_on| went_straight| went|on_th
wer_Nduration|behind wer|without wet|floor we|whil whack_it_up| whack_it| whack|it whack|it_up
what_can|w what_happen_if| what_happen|if what_hav_i| what_if| what_is|a what_is|go what_is|it
what_i|am what_number_am| what_quantity| what_quantity|of what_temperatur_for| whatever|you_ask
what|ar_my what|els_could what|for_is what|temperatur_for what|tim_should what|w_pull what|you_offer
when_do_everyth| when_it|r when_you|ar when|th_cor when|th_middl when|th_roast when|w_ar when|w_eat
which_all| which_all|item which_is|th which_way_do| which|all which|all_item whil_i|nip whisk_th|
whisk_th|DISH whisk| whol|cook whol|gang_has who|has who|has_allergy why_do_i| why|must why|not_DISH
why|so will_b_in| will_b|gon will_hav|roast will_hav|th will_hav|their will_i|n will_not_heat|
will_not|light will_sit| will_sit|down will_want|it will|arriv will|carv will|not_light will|not_stop
win_P_drank| wish|m wish|m_luck with_DISH|i with_Nduration_of| with_Nduration|of with_a_thumb|
with_a|drink with_pastry| with_pastry|or with_salt|it with_th_U| with_tinfoil_th| with_your|list
with|bon with|her with|m_together with|th_DISH with|you_for would_b|sit would_it_b| would_lik_P|
would_quit| would_quit|lik would_rather_crisp| would_you_i| would_you_mind| would|go would|go_nic
would|not_mind would|you_i would|you_look would|you_watch w|ar_all w|can_not w|do_about w|hav_fallen
w|hav_hit w|hav_it w|jump w|lik w|lik_it w|los w|los_th w|said_$ w|said_grac w|set w|set_for
w|talk w|talk_Nduration w|want_to w|will_do w|will_sear w|will_sit y_can| y_can|not year_it|is
year|instead year|instead_roll yell_at|m yell|at_m yes_P_i| yes_go|on yet_so|they yet_to|grat
yet|sorry_$ you_about| you_about|th you_ar_ahead| you_call|them you_cut_m| you_cut|m you_for_Nduration|
you_giv|m you_i|am you_look_at| you_mind|drop you_no|when you_put|in you_run| you_speak|up
you_talk|in you_undo| your_THING| your|back your|list your|list_at you|ar_out you|hav_had you|hear
you|in_N:some you|know you|no_when you|said_$ you|speak_up yusuf|is yusuf|is_throat y|can y|can_not
|@103.6 |@115.4 |@121 |@121.6 |@133.2 |@143 |@144.2 |@22.3 |@28.1 |@28.3 |@32.6 |@4.0 |@42.5
|@44 |@56.4 |@57.4 |@63.2 |@71 |@72.1 |@79.5 |@84.1 |@92.2 |@99.4 |DISH_DISH_$ |DISH_DISH_from
|DISH_DISH_went |DISH_Nduration_ago |DISH_and_they |DISH_ar_peel |DISH_can |DISH_can_not |DISH_i_will
|DISH_in_this |DISH_nobody_eat |DISH_on_yet |DISH_powder |DISH_should_i |DISH_split_$ |DISH_start_now
|DISH_this_very |DISH_to_U |DISH_to_my |DISH_too |DISH_top_and |DISH_under |DISH_under_way
|DISH_w_hav |DISH_w_lik |DISH_whatever |DISH_whatever_you |N:core_not_N:core |N:core_when_it
|N:few_$ |N:few_$_$ |N:few_U_of |N:few_bon_from |N:few_fewer |N:few_heat |N:few_th_lad |N:few_walk
|N:few_walk_in |N:oven_Nduration |N:oven_Nduration_ago |N:oven_and_i |N:oven_lik_you |N:some_hot
|N:some_if |N:some_if_that |Nclock_and_th |Nclock_how |Nclock_i_hav |Nclock_instead |Nclock_now
|Ndate_lunch_at |Ndegrees:core |Ndegrees:core_is_what |Ndegrees:oven_$ |Ndegrees:oven_$_$ |Ndegrees:some_in_Nduration
|Nduration_N:few_$ |Nduration_THING |Nduration_ago_$ |Nduration_ago_whil |Nduration_behind_already
|Nduration_diaper |Nduration_diaper_chang |Nduration_from_now |Nduration_lat_hon |Nduration_lat_so
|Nduration_pet_$ |P_got_her |P_h_say |P_help_m |P_is_help |P_never |P_no_shellfish |P_nor |P_nor_money
|P_so_plus |THING_$ |THING_$_$ |THING_Nweight_$ |THING_am |THING_am_i |THING_and_w |THING_at_th
|THING_behav |THING_behav_itself |THING_caught |THING_caught_fir |THING_cub |THING_do_i |THING_do_in
|THING_fell |THING_fell_out |THING_in_ic |THING_or_U |THING_out_to |THING_so_do |THING_to_my
|THING_to_th |THING_went_in |THING_went_into |THING_what_is |U_and_then |U_from_her |U_how
|U_my |U_of |U_of_str |U_that_is |a_DISH_$ |a_Nweight_THING |a_Nweight_forerib |a_Nweight_topsid
|a_Nweight_with |a_THING_U |a_beauty |a_bit_cold |a_bit_later |a_drink |a_full |a_go |a_new_THING
|a_nic_bit |a_power |a_r_DISH |a_rest_will |a_stand |a_stand_rib |a_vegetarian |a_whil_got
|a_yell |accident |act_weird |after_this_$ |again_from_scratch |against_DISH |ago_i |ago_what
|alarm |alarm_$ |alarm_$_$ |alarm_is_scream |all_behind_Nduration |all_item |all_item_i |all_mix
|all_mix_up |all_sit |all_sit_down |all_taken |all_taken_their |all_what |allergic_to_DISH
|allergic_to_nut |already_th_DISH |alternativ_$ |alternativ_$_$ |am_THING |am_THING_for |am_U_mak
|am_afraid |am_away_to |am_behind |am_do_it |am_get_N:core |am_i_aim |am_nip |am_nip_out |am_not_american
|am_off |am_skip |am_skip_th |am_slow |am_way |am_way_behind |an_extra_Nduration |and_h_got
|and_it_was |and_ther_is |another_Nduration_befor |another_helper |another_helper_it |any |ar
|ar_THING_they |ar_arriv |ar_eat |ar_gnaw |ar_gnaw_th |ar_in_and |ar_my |ar_my_choic |ar_not_hav
|ar_run_Nduration |ar_still_crunchy |ar_warm_now |arm_with |arm_with_th |as_a_bon |ask_how_pink
|at_N:core_yet |at_N:oven_THING |at_Nclock_how |at_Nclock_was |at_it_all |at_th |at_th_finish
|availabl_in |availabl_in_our |away |away_to |b_DISH |b_U |b_at_N:few |b_do_with |b_found |b_out
|b_out_of |b_right |b_tak |b_when |b_when_i |back_i_said |back_it_is |back_to_N:core |back_to_Ngas-mark
|bad_off |bad_off_th |bak |bang_on_N:some |bathroom_$ |bathroom_$_$ |beast_fit |been |been_in_Nduration
|beer |behind_P_th |behind_i |behind_schedul_$ |bit_is_sort |bit_mor |blister_$ |blister_$_$
|block_Nduration |blood_$ |blood_$_$ |boil_and |boil_water_on |bon_lif |bon_lif_is |bon_on
|bon_on_it |bon_rib_roast |bon_skip |bother_ty |bother_ty_it |bottom_of |bought_a |br_my |bring_his
|bring_his_P |bring_th_DISH |brok_her |brok_her_THING |burnt_well |burnt_well_don |butter_all
|butter_all_over |butter_on_th |butter_th |butter_th_roast |butter_what |button_$ |button_$_$
|buzz_in |buzz_in_Nduration |by_N:some_$ |by_Nduration_P |by_THING |by_m_again |call_them_i
|cam_out_of |cam_outsid |cam_outsid_befor |can_manag_it |can_not_cop |can_not_put |can_not_trust
|can_you_do |car |carv_Nclock |carv_Nclock_and |chair_$ |chair_$_$ |chair_and |chair_and_th
|cheap |check_th_DISH |chop_for |chop_for_m |cold_Ndegrees:few_$ |cold_by_Ndegrees:some |cold_on_th
|collect_th |com_back_$ |com_down_to |com_for_help |com_so_knock |com_w_hav |command |command_$
|command_$_$ |complet_se |control |conventional_oven |conventional_oven_no |cooker_is_Ndegrees:some
|cooker_is_dead |cooker_run |cooker_run_Ndegrees:some |cooler_than |cooler_than_it |count_him
|count_him_out |cousin_$ |cousin_$_$ |cover_in |crispy_at |crispy_at_all |cross |cupboard_$
|cupboard_$_$ |cut_m |cut_myself_$ |dead_it |dead_it_will |dinner_N:oven_$ |dinner_happen |dinner_happen_Nduration
|dishwasher |do_i |do_i_ti |do_it_by |do_next |do_roast |do_roast_DISH |do_stuff |do_stuff_h
|do_th_afternoon |do_th_sear |dog_$ |dog_$_$ |don_all_through |don_i_know |don_so_far |don_that
|don_yet |door_Nduration |door_it |down_to |down_to_their |down_with_th |down_yet_$ |down_yet_sorry
|drawer_$ |drawer_$_$ |driveway |drop_of |drop_that |drop_that_alarm |dry |duty_$ |duty_$_$
|earlier_$ |earlier_$_$ |early_so_shav |eat_Ndate_at |eat_Nduration_mor |eat_a_bit |eat_anyth
|eat_anyth_that |els_could |end_Nweight |even |everyth_go_in |everyth_in |extra_tim |f_$ |f_$_$
|faff_about_it |fall_$ |fall_$_$ |fan_off |fat_cap |fat_end |ferry |find_in_th |finish_th_trim
|first_guest |first_guest_ar |first_th |flam_for |flam_for_Nduration |flight |flu |for_N:core_after
|for_Nduration_diaper |for_a_for |for_ag |for_help_in |for_is_th |for_th_DISH |for_th_cor |forerib_N:few
|forerib_N:few_bon |forget_i_am |forward_Nduration_$ |french_now |from_this_second |from_upstair
|gang_has |gang_has_land |gang_is_all |get_ic |get_past |get_past_N:core |get_roast |get_roast_DISH
|get_th_messag |giv_U |giv_U_number |giv_it_m |giv_m_Ndegrees:core |glov_is |go_$ |go_$_$ |go_it
|go_nic |go_nic_with |go_on_with |go_straight_to |go_to_mak |go_too |go_too_fast |go_up_in
|gon_U |gon_cold_$ |gon_from |gon_from_N:few |gon_ther |gon_ther_is |good_bit |good_bit_mor
|good_reason |good_reason_w |got_N:core |got_my |got_tim_for |grat |grat_it |greas_and |greas_and_can
|grow_in |grow_in_th |guest_got |guest_got_her |had_my |had_no_THING |happen_if |happen_if_i
|has_allergy_again |has_been_out |has_been_put |has_fallen |has_gon_U |has_gon_whol |has_invit
|has_invit_themselv |has_it_got |has_it_with |has_not_reduc |has_reach_N:core |has_to_b |hav_DISH_DISH
|hav_DISH_th |hav_N:few_of |hav_a_leave-in |hav_all_sat |hav_any_THING |hav_com_P |hav_fallen_Nduration
|hav_finish_th |hav_forgotten |hav_got_DISH |hav_got_N:few |hav_got_my |hav_got_no |hav_had_a
|hav_hit |hav_hit_N:core |hav_it_later |hav_left |hav_lost_electricity |hav_lost_power |hav_mad_th
|hav_no_U |hav_nut_sh |hav_overcook |hav_overcook_it |hav_plenty_without |hav_put_on |hav_rop
|hav_rop_in |hav_slip |hav_to_start |hav_to_walk |hav_turn_it |heat_up |held_up |help_in |help_in_THING
|henderson_ar |her_cremat |her_cremat_so |her_lad |her_nam |her_nam_is |her_th |her_throat
|her_till |her_to |her_to_help |high |him_someth |his_blu |his_foot |his_throat |hit_N:core_would
|hit_th_floor |hon |hot_it |hot_it_is |hot_oven |hot_pan |hous_$ |hous_$_$ |hous_miss |hous_miss_th
|how_long_it |how_pink_it |i_am_read |i_am_se |i_b_worri |i_ever |i_n_to |i_refreez |i_refreez_th
|i_set_th |i_swap |i_swap_th |i_tak_THING |i_talk |i_talk_to |i_think |i_ti |i_ti_it |i_typ_$
|i_us_DISH |i_us_THING |if_someth |if_someth_is |in_N:some_for |in_Ndegrees:some_under |in_Nduration_ago
|in_a_tick |in_as |in_at_N:few |in_celsius_$ |in_celsius_and |in_it_for |in_kilo_if |in_law_ar
|in_law_is |in_law_they |in_my_P |in_my_family |in_now_do |in_som_DISH |in_th_roast |in_traffic_Nduration
|includ_N:few |includ_N:few_DISH |instead_of_N:few |instead_roll |instead_roll_and |iron_THING
|is_Ndegrees:few_high |is_Ndegrees:some_cooler |is_U_with |is_a_tabl |is_alway_left |is_an_Nweight
|is_at_Ndegrees:core |is_back_on |is_beautiful |is_bleed_and |is_carry |is_carry_so |is_com_out
|is_conventional |is_conventional_now |is_cover_with |is_delay_add |is_delay_so |is_don_Nduration
|is_drop |is_dry_$ |is_flam_com |is_grey_all |is_help_with |is_in_$ |is_in_beer |is_in_my |is_lat_so
|is_m_don |is_my_roommat |is_next |is_not_$ |is_off_THING |is_out_and |is_past |is_past_N:core
|is_peel_th |is_pur_vegetarian |is_raw_insid |is_ready_and |is_remain |is_rock |is_rock_up
|is_sear |is_sear_now |is_season_$ |is_sleep_in |is_smok_pour |is_th_point |is_th_rest |is_th_schedul
|is_th_temperatur |is_th_trick |is_throat |is_throat_swell |is_ti_it |is_up_next |is_well |it_chuck
|it_chuck_it |it_com_along |it_down_yet |it_forward |it_get |it_go_to |it_got |it_got_$ |it_if_ther
|it_in_$ |it_is_beautiful |it_is_squeaky |it_jump_Ndegrees:some |it_later |it_look |it_medium_$
|it_on_mor |it_out_now |it_rest_for |it_stuck |it_th_phon |it_tim_to |it_to_Ngas-mark |it_up_right
|it_was_on |item |item_i |item_i_hav |joint_for |joint_in |jump_Ndegrees:some |jump_Ndegrees:some_in
|keep_it_at |keep_up_Nduration |kilo_i |kilo_if |kilo_if_you |kilo_is |know_at |know_at_N:core
|know_th |know_th_second |lactos_intolerant_$ |lactos_intolerant_so |lagg_by |lagg_by_Nduration
|last_messag |last_messag_$ |last_th_$ |lat_hon |lat_i |lat_they_text |later_and |law_has |left_over
|lift_it |lik_it_still |lik_it_well |lik_th_th |lik_to |list_at |list_at_all |littl_screen
|lodger_had |lodger_had_a |long_do_it |long_has |long_hav |long_hav_i |long_hav_w |long_till
|long_till_dinner |look_lik_w |los_th_r |lot_ar_her |lot_of |lumpy_$ |lumpy_$_$ |m_a_sec |m_a_timer
|m_luck |m_to_turn |m_together |m_twic |m_twic_as |m_what_w |m_when_Nduration |m_with_DISH
|mad_and_in |mad_it_still |mad_it_to |mak_a |mak_ahead |mak_ahead_out |many_THING |many_minut
|meant_for |meant_for_you |method |method_for |metric_system |metric_system_for |middl_$ |middl_$_$
|mik |minut_ago |miss_for |miss_th_THING |miss_th_r |mix_up |moment_$ |moment_$_$ |moment_i
|monkey |mor_peopl |mor_peopl_ar |mor_th |mor_tim_it |much_THING_go |much_longer |much_salt_in
|must_th |my_breath |myself_it |myself_it_is |n_N:few_$ |n_for_N:few |n_for_this |n_in |n_in_th
|n_mor_tim |n_that |n_to_buy |n_to_check |n_to_warm |n_ty |n_ty_$ |never_go |never_go_to |new_P_apparently
|nip_out_$ |no_pink_at |no_second_oven |no_when |no_when_i |nobody_els |not_N:core_$ |not_b_bother
|not_b_do |not_b_her |not_b_in |not_b_strain |not_bother_sear |not_bother_ty |not_bother_with
|not_catch_that |not_eat_dairy |not_expect |not_expect_m |not_find_th |not_go_near |not_got_a
|not_great_U |not_hav_a |not_hav_any |not_hear_you |not_heat |not_light |not_mad |not_mak_anymor
|not_mind_a |not_n_th |not_on_yet |not_out_yet |not_own |not_own_a |not_reduc |not_risen |not_salt
|not_salt_it |now_insid |number_of |of_THING_and |of_THING_now |of_THING_on |of_butter_by |of_delay
|of_m_i |of_smok_it |of_str |of_str_lik |of_th_other |of_them_ar |of_them_can |of_us_and |of_us_non
|off_Nduration_ago |off_again |off_again_$ |off_my_THING |off_now_$ |off_to_collect |offer_$
|offer_$_$ |oil |old_money_what |on_N:core_$ |on_N:core_at |on_N:core_now |on_Nduration_ago
|on_Ngas-mark_$ |on_at_Nclock |on_at_th |on_his_foot |on_let |on_th_til |on_weight |on_weight_in
|on_whil |on_whil_i |on_with_th |on_yet_$ |open |or_DISH |or_any |or_any_other |other_N:few
|other_drawer |other_oven |other_room |other_sid |our_whol |our_whol_street |out_Nduration_ago
|out_Nduration_i |out_U_of |out_at_N:oven |out_back |out_gorgeous |out_gorgeous_it |out_oven
|outsid_$ |outsid_$_$ |oven_glov_is |oven_light |oven_light_di |oven_n |oven_n_to |oven_now_$
|oven_off_and |oven_off_littl |oven_run_a |oven_this_on |own_a |pack_up_$ |pan_i |paper_her
|paper_her_ther |patel_said |patel_said_yes |peel_DISH_without |phon_they |phon_to |pink_will
|plac_of_THING |powder_$ |powder_$_$ |power_di_$ |power_in |power_in_th |proper_THING |properly
|prov_Nduration_from |pull_it_for |pull_it_temperatur |put_in_th |put_too |put_too_much |r_DISH_Nduration
|rar_roast |rar_roast_this |ready_for_th |reason_w_do |rest_it |rib_P |rib_P_Nweight |rib_roast_$
|right_U_th |right_through |roast_DISH_has |roast_DISH_would |roast_cam_outsid |roast_into
|roast_into_th |roast_out_already |roll_ar_in |roll_burn |roll_timer_$ |room_for |run_bout
|run_bout_Nduration |said |said_N:core_$ |said_N:core_Nduration |said_N:core_not |said_grac
|salt_th |salt_th_THING |sav_her |sav_her_a |saw_it |say_it_is |say_they |schedul_for |school_night
|scratch_$ |scratch_$_$ |scream_th |scrub_and |se_again_$ |sec_$ |sec_$_$ |sh_is_allergic |shav_N:few
|shav_N:few_off |sho_$ |sho_$_$ |shop_for_Nduration |should |should_i_pull |should_land |should_land_us
|show_N:core_$ |shown |shown_up |sign_of |sign_of_th |sinc_N:oven_$ |sinc_th_smell |sit_too
|slic_$ |slic_$_$ |slip_$ |slip_$_$ |slow_today |smok_everywher |smok_it |so_it_r |so_strong
|so_they |som_U_i |someth_i_can |speak_up |speak_up_what |splash_on |splash_on_my |spoon_$
|spoon_$_$ |start_to_U |starv_$ |starv_$_$ |still_on_tim |still_on_track |still_squeaky |stir
|strain_th |strain_th_DISH |stuff_h |stuff_h_is |stuff_it |tabl_and |tabl_now |tablespoon |tablespoon_of
|tak_car |tak_longer |tak_longer_than |tak_m_twic |taken_th_fat |taken_th_roast |talk_Nduration
|teenager_hav |teenager_hav_volunteer |telly_$ |telly_$_$ |th_DISH_anymor |th_DISH_bubbl |th_THING_get
|th_U_THING |th_and_i |th_back |th_bast |th_bast_step |th_best_way |th_board_with |th_bottom_$
|th_butter_so |th_center_$ |th_center_when |th_centr_it |th_cor_get |th_counter_smell |th_crackl
|th_cream_for |th_dinner_Nduration |th_dog_and |th_door_and |th_first_bit |th_fridg_at |th_garag_$
|th_greas |th_greas_and |th_green |th_handl |th_heat_up |th_high_heat |th_hous_for |th_joint_in
|th_market |th_match |th_meal |th_metric |th_metric_system |th_middl_when |th_new_P |th_night_$
|th_old |th_oven_that |th_peopl_hav |th_phon |th_phon_they |th_point |th_point_of |th_prep
|th_roast_hit |th_say |th_say_N:core |th_schedul_for |th_th_say |th_thick_end |th_timer_it
|th_top |th_top_of |th_way_that |th_with_th |th_wrong_th |than_plan_h |that_P |that_P_$ |that_brok
|that_brok_her |that_i_press |that_is_join |that_phon |that_phon_call |that_timer_on |that_work_$
|them_back_on |ther_a_good |ther_another |ther_another_way |ther_i |ther_is_pink |ther_yet_$
|thickest_bit |think_i_will |think_in_kilo |think_th |this_THING_it |this_hous_$ |this_is_right
|this_old |this_plan |this_plan_away |thos_bon_lif |through_for_U |tim_do_you |tim_is_need
|tim_should |tim_should_i |timer_her |timer_her_$ |tinfoil |tip_of |tip_of_my |to_N:core_and
|to_N:oven_Nduration |to_N:oven_fan |to_Ngas-mark_and |to_U |to_b_$ |to_b_don |to_b_f |to_collect
|to_com_$ |to_do_stuff |to_eat_N:oven |to_eat_Nduration |to_eat_at |to_eat_by |to_extra |to_extra_tim
|to_get_dress |to_get_th |to_li |to_metric |to_pick_th |to_run_to |to_serv_it |to_th |to_th_list
|today_N:few |told_them |too_lat_$ |too_salty_i |top_of_that |top_won |touch_N:core |track_$
|track_$_$ |track_for |traffic_Nduration |trim_it |trip |trust |trust_th |trust_th_THING |trust_this
|trust_this_THING |trust_this_read |turn_on_th |turn_up_$ |ty_it_up |typ_$ |typ_$_$ |tyr_they
|tyr_they_reckon |un_don |under_so |under_so_tak |under_whatever |under_whatever_you |unless
|up_after_th |up_i_will |up_next |up_nicely |up_nicely_N:core |up_right_at |up_so |up_to_N:some
|up_what_was |us_eat_at |us_go |us_mak |us_not |us_on_N:core |us_skip |w_add |w_add_DISH |w_eat_i
|w_eat_it |w_pull |w_pull_at |wait_for_$ |want_DISH |want_it_$ |want_it_at |want_thos |warm_must
|warm_must_b |was_my_P |was_smok |was_so_strong |watch_th |watch_th_DISH |water_on_his |water_test_cam
|we_whil |went_on_Nduration |went_out_$ |went_straight_into |wer |what_you_learn |what_you_offer
|when_i_say |when_it_reach |when_w_ar |wher_to |whil_i_nap |whil_i_nip |who_do |whol_hous |whol_th_back
|will_DISH |will_DISH_th |will_b_in |will_do_$ |will_eat_early |will_giv_th |will_sit |will_sit_down
|will_tak |will_tak_th |will_want_it |win_P |with_U_THING |with_a_thumb |with_this_can |with_tinfoil
|with_tinfoil_th |without_cry |without_cry_$ |work_again |work_that |would_quit |would_quit_lik
|would_rather |would_say_$ |yell_at |yet_it_is |yet_mor |yet_mor_N:core |you_ask_for |you_call_them
|you_cut |you_for_Nduration |you_giv |you_giv_m |you_look_at |you_offer |you_offer_$ |you_set_Nduration
|you_watch_th |your_pardon |your_pardon_$
-8 #after2 @103.0| @111.0| @113.2| @116.4| @127| @144| @145| @147.0| @23.0| @29.6| @34.5| @4.6|
@4| @51.0| @52.5| @53.3| @53| @55.4| @64.8| @71.0| @72.0| @81.0| DISH_DISH_ar| DISH_DISH_has|
DISH_DISH_hav| DISH_DISH_it| DISH_DISH|my DISH_all|over DISH_and_i| DISH_and|DISH DISH_and|it
DISH_another| DISH_another|Nduration DISH_ar|want DISH_can|not DISH_collaps_th| DISH_did| DISH_did|not
DISH_for|us DISH_grow| DISH_grow|in DISH_hav|gon DISH_in_this| DISH_is_cut| DISH_is|chop DISH_is|in
DISH_is|split DISH_is|way DISH_it_as| DISH_it_has| DISH_i|took DISH_i|will DISH_must| DISH_must|b
DISH_on_slow| DISH_or|DISH DISH_per| DISH_per|THING DISH_ready_they| DISH_so_do| DISH_solid_i|
DISH_so|w DISH_they|ar DISH_this|year DISH_th|hous DISH_under| DISH_under|way DISH_went|in
DISH_what|is DISH_whil|i DISH_with|it DISH_with|th DISH_would|go DISH_w|want DISH|U DISH|anymor_$
DISH|butter_mad DISH|butter_with DISH|can DISH|collaps_th DISH|cream_$ DISH|cream_is DISH|cream_on
DISH|don_in DISH|i_hav DISH|instead_of DISH|is DISH|solid_i DISH|to DISH|tonight DISH|w_will
DISH|want_a DISH|whil_i N:core_bottl| N:core_bottl|of N:core_giv| N:core_lik_Nduration| N:core_right|now
N:core_what|is N:core_when_it| N:core_whil|i N:core|b N:core|i_am N:core|now N:core|right N:core|whil_it
N:few_P_and| N:few_P_will| N:few_and|N:few N:few_bon_from| N:few_coeliac| N:few_her| N:few_h|
N:few_keep| N:few_keep|th N:few_mor_ar| N:few_of|us N:few_or|N:few N:few_out|of N:few_sh|is
N:few_they|hav N:few_what|is N:few|adult_N:few N:few|and_th N:few|bon_from N:few|less_now N:few|oven_th
N:few|person_$ N:few|sh_has N:oven_i|am N:oven_or|so N:oven_sharp| N:oven_sharp|kindly N:oven|already
N:oven|already_$ N:oven|for N:some_and|th N:some_i|said N:some_on_th| N:some|lat_on N:some|mor
N:some|mor_befor Nclock_U_our| Nclock_and_it| Nclock_and_th| Nclock_and|th Nclock_for_th| Nclock_i|hav
Nclock_th_roast| Ndate|Nclock_and Ndegrees:core_is| Ndegrees:core_on_th| Ndegrees:core|it Ndegrees:few|high_$
Ndegrees:some|cool Ndegrees:some|cool_alway Ndegrees:some|hot_$ Nduration_ago_whil| Nduration_and_w|
Nduration_and|do Nduration_at|least Nduration_behind_with| Nduration_earlier|than Nduration_i_would|
Nduration_i|would Nduration_lat_sav| Nduration_lat_with| Nduration_on| Nduration_oven_is| Nduration_set|
Nduration_set|a Nduration_sh| Nduration_sh|say Nduration_stop| Nduration_stop|th Nduration_tell|
Nduration_to|preheat Nduration_walk|th Nduration|and_do Nduration|behind_so Nduration|later_P
Nduration|later_and Nduration|to_a Nweight_or| Nweight_or|U Nweight_stand| Nweight_stand|rib
Nweight_with_N:few| Nweight|N:few_bon P_ar|gnaw P_back_in| P_back| P_back|in P_has_got| P_has|been
P_is_go| P_is|hurt P_is|on P_is|pregnant P_i|am P_jim_want| P_rang|h P_set|th P_tonight_so|
P_took|th P_to|mak P_want|DISH P_want|her P_want|his P|ar_set P|at_it P|fre P|fre_to P|has_been
P|has_had P|i_am P|is_and P|is_halal P|is_pregnant P|is_run P|it_is P|jim_want P|on_DISH P|open_that
P|turn P|will_b THING_N:few_in| THING_N:few_keep| THING_Nweight_on| THING_all|over THING_and|th
THING_ar_cover| THING_a|THING THING_can_i| THING_caught|light THING_com|through THING_for|th
THING_go|in THING_has|left THING_is_giv| THING_is|a THING_is|in THING_is|now THING_is|out THING_is|split
THING_leg| THING_not_th| THING_oven|and THING_over_a| THING_rather_than| THING_sh| THING_so|do
THING_th_lad| THING_they_hav| THING_to_mak| THING_went|in THING_what|is THING_with|them THING_wok|
THING_wok|up THING|P_$ THING|THING_tonight THING|has_caught THING|has_gon THING|in_th THING|no_THING
THING|no_mor THING|out_to THING|pan_$ THING|saf THING|saf_$ THING|say THING|so U_and_bob| U_and_nobody|
U_and|bob U_and|th U_and|then U_by|Nduration U_get|her U_holler| U_holler|when U_if| U_it_on|
U_no_i| U_of|a U_of|fahrenheit U_our|lodger U_sh|is U_so_that| U_so|that U_that|is U_theo|
U_theo|is U_ther| U_th|gam U_who| U_w|ar U|U_$ U|from_market U|is U|of_her U|sh_is U|tenderis_$
U|wher ^_DISH|cream ^_DISH|has ^_DISH|went ^_N:few_or| ^_N:few|show ^_Nduration|behind ^_P|has
^_THING| ^_THING|of ^_THING|say ^_U|timer ^_^_THING| ^_^_br| ^_^_dough| ^_^_down| ^_^_electricity|
^_^_element| ^_^_french| ^_^_fresh| ^_^_had| ^_^_head| ^_^_her| ^_^_let| ^_^_mak| ^_^_n| ^_^_remind|
^_^_switch| ^_^_taken| ^_^_talk| ^_^_target| ^_^_train| ^_^_want| ^_^_whip| ^_add|a ^_all|don
^_and_it| ^_a|Nweight ^_boil_water| ^_br| ^_butter_is| ^_cancel|th ^_chang_it| ^_chang|it ^_chop_th|
^_convert|th ^_could|you ^_diall_back| ^_did|you ^_dinner|for ^_don|with ^_dough| ^_dough|is
^_down| ^_down|to ^_do|not ^_electricity| ^_electricity|has ^_element| ^_first_guest| ^_first|N:few
^_first|guest ^_forerib|joint ^_found|th ^_french| ^_fresh| ^_fresh|out ^_go_up| ^_h_has| ^_had|
^_half_th| ^_hav|i ^_head| ^_her| ^_holler_when| ^_how|THING ^_how|ar ^_how|com ^_i_mak| ^_i_put|
^_is|it ^_it_cam| ^_it_i| ^_i|am ^_i|think ^_i|want ^_jo|is ^_jo|will ^_kettl_is| ^_knock_it|
^_let| ^_let|m ^_mak| ^_mik|and ^_my|U ^_never_got| ^_nip_to| ^_nobody_is| ^_n| ^_onc_it| ^_our|oven
^_oven_up| ^_oven|temperatur ^_plus|N:few ^_pop_out| ^_pull|it ^_push|dinner ^_push|th ^_put_DISH|
^_put_a| ^_reckon_w| ^_remind| ^_remind|m ^_right_i| ^_righto_rib| ^_run|a ^_sear|is ^_should|i
^_skip|it ^_skip|th ^_so_lik| ^_someth|is ^_start_on| ^_start|a ^_step|away ^_stick_Nduration|
^_stick_som| ^_stick|Nduration ^_stick|som ^_still_hav| ^_still_stuck| ^_stop_nagg| ^_supper_is|
^_supper|at ^_switch| ^_switch|th ^_tabl|for ^_taken| ^_taken|it ^_talk| ^_target| ^_target|N:core
^_temperatur|is ^_th_bus| ^_th_gas| ^_thank|you ^_ther|ought ^_they_hav| ^_they_will| ^_this|is
^_th|P ^_th|current ^_th|family ^_th|fat ^_th|gas ^_th|th ^_tim_is| ^_took_th| ^_to|inform
^_train| ^_train|is ^_w_do| ^_want| ^_want|to ^_what|am ^_what|th ^_when|it ^_wher_ar| ^_whip|
^_whip|it ^_without|DISH ^_w|hav ^_w|hit ^_w|must ^_yes_go| ^_you|can a_DISH|DISH a_DISH|instead
a_N:few_month| a_Nweight_rib| a_THING_and| a_bath_shout| a_cut|board a_fan|assist a_for| a_for|N:some
a_good_N:some| a_good|N:some a_good|Ndegrees:some a_good|bit a_grand_piec| a_grand| a_grand|piec
a_helper_from| a_leg_of| a_nic_bit| a_nic|bit a_no|for a_rest_will| a_r|win a_set_for| a_set|
a_set|for a_shout|when a_th_N:few| a_touch| a_touch|early a_yell|when adult_and| after_go|
after_go|up after_it_medium| after_th_first| after|all_so again_from| again_from|scratch ago_whil|
ago_whil|i ahead_of_m| ahead_of| ahead_of|m ahead_of|us ahead_out| ahead_out|of aim_for|a aim|for_N:few
air| alarm_w_set| alex_can_do| all_at|th all_my|THING all_of|it all_over_th| all_taken| all_taken|their
all_that| allergy_a| allergy_a|bad all|behind_lik all|carv all|my all|of_us all|off all|off_Nduration
all|on_hot all|sid_$ alon_for|Nduration alongsid_DISH| alongsid_DISH|butter already_ti_with|
alway_cold_by| alway|cold alway|cold_by alway|has_$ am_Nduration_later| am_Nduration|lat am_at_th|
am_at|th am_away|from am_a|good am_behind_by| am_behind_th| am_drown| am_drown|her am_i_miss|
am_i|pay am_lagg| am_lagg|by am_never_go| am_never|go am_not_do| am_off|down am_out_till| am_run_a|
am_run|lat am_slow| am_slow|today am_so| am_so|behind am_tak|Nduration am_wait| am_wait|for
am_without| am_without|a am|N:few_$ am|Nduration_down am|Nduration_lat am|Nduration_off am|U_mak
am|U_my am|all_behind am|drown am|fre am|get_lat am|i_aim am|not_french am|not_go am|not_mak
am|out_of am|overwhelm am|tak_Nduration am|us_a an_Nweight_stand| an_extra_pair| an_extra|pair
and_U| and_bob| and_bob|is and_can|not and_deb_ar| and_do_i| and_got|th and_how_do| and_i_would|
and_in_th| and_in|th and_it|say and_i|can and_left_what| and_ounc_for| and_pick| and_puff|
and_puff|up and_tell|m and_they|hav and_what_can| and_what_should| and_why_do| and_why|do and|N:few_P
and|U_$ and|at and|bob and|bob_is and|bon and|dav_so and|do_i and|dust and|eat_at and|i_want
and|sur_you and|th_U and|ti another_Nduration_on| another_Nduration|befor another|Nduration_then
another|go another|go_not another|helper another|helper_it anyth_that|had anyth_with| anyth_with|pastry
an|Nweight an|Nweight_stand an|extra_Nduration apparently_so_N:few| ar_N:few| ar_Nduration_too|
ar_THING_they| ar_ahead_of| ar_all_at| ar_all|in ar_com_than| ar_com|than ar_cover_in| ar_cover|
ar_cover|in ar_early|they ar_her|th ar_lat| ar_my_choic| ar_my|choic ar_not|ready ar_on_th|
ar_run|lat ar_shy| ar_shy|a ar_still_squeaky| ar_still|THING ar_still|raw ar_stuck|in ar_tell_they|
ar_tell|they ar_w_get| ar_w|get arm_what| arm_with| arm_with|th arriv_Nduration_later| ar|THING_$
ar|all_at ar|at_th ar|back_on ar|bring ar|bring_N:few ar|com_than ar|eat_$ ar|gnaw ar|gnaw_th
ar|go_in ar|her_all ar|in_alongsid ar|in_and ar|not_risen ar|on_th ar|still_crunchy ar|swell
ar|swell_up ar|up ar|w_eat ar|w_up ar|want_a ar|warm_now as_long|as as_w_hit| as_well_that|
ask_is| ask_is|her ask_th|THING ask|for ask|you ask|your ask|your_P as|U_$ at_N:oven_sharp|
at_Nclock|latest at_a|U at_th_very| at_that|N:core at|N:core_w at|N:core_what at|N:core_yet
at|N:few_$ at|N:few_so at|N:few_tonight at|N:oven_sharp at|Nclock_latest at|Nclock_sharp at|Ndegrees:core_let
at|th_colour at|th_moment at|th_stov at|th_tabl availabl| availabl|in availabl|in_our away_from|th
away_to_th| a|DISH_$ a|N:few_rib a|Nweight_forerib a|Nweight_with a|P_with a|THING_in a|U_n
a|bad_N:few a|bag a|bit_later a|bit_longer a|bit_of a|boneless_THING a|call_for a|few_DISH
a|full a|good_N:some a|good_un a|half_THING a|helper_from a|helper_today a|rest_will a|shout_at
a|th_N:few a|tick_Nduration a|trick a|trick_to a|yell_when b_back|in b_bother|french b_hav|th
b_lat_by| b_silent|now b_tak_it| b_th|cor back_Nduration_th| back_a|tick back_in_th| back_in|onc
back|from_th back|in_onc back|to_Ngas-mark bath_shout| bath_shout|if bear_with_m| bear_with|
bear_with|m been_rest|for been_sat|out been|on been|put been|sat beep|m_in befor_th|next befor_w|eat
befor|Ndate befor|Ndate_$ behind_Nduration_at| behind_her|lad behind_with|th best|way best|way_to
bin| bit_of|THING bit|of_sirloin blad_tenderis_by| blast_it_at| bleed_and|it blood_everywher|
blood_everywher|th blood_for| blood_for|this blood|for blood|for_this bob|is_your boil_for_th|
bon_from| bon_from|th bon_lif| bon_lif|is bon_not|N:few bon|roast_$ bother_tim_th| bother|french
bother|french_it bother|sear_keep bother|tim bother|tim_th bother|ty bother|ty_it bottl|of_beer
breaker_trip_and| brin_this_tim| brin_this| brin_this|tim bring_a| bring_his|new bring|a brought|their
brought|their_P brown_it|off bump_it| bump_th| bump_th|heat bump|th bump|th_heat bum|on bum|on_seat
bung_th| bung_th|roast burnt_well| burnt_well|don burnt|myself burnt|myself_on butter_with|
butter_with|DISH butter|go butter|go_in butter|step_$ by_N:few|sh by|N:few by|N:few_sh by|N:some_y
by|Nduration_approximately by|accident b|U_find b|by b|faff b|faff_with b|parchment b|parchment_paper
c_not_degre| call_from_work| call_m_back| call_m|in call_them_i| call|them_i cam_out|at can_i|put
can_i|refreez can_miss_that| can_not_get| can_not_keep| can_not_my| can_not_trust| can_not|cop
can_not|go can_not|hear can_not|trust can_sit| can_sit|down can_w_br| can_w_hold| can_w|hav
can_you_run| can_you|cut can_you|put can_you|talk cancel_DISH_my| can|i_say can|not_cop can|not_get
can|not_i can|not_my can|not_put can|w_los can|you_add can|you_cut can|you_put cap|down cap|down_a
car_is|pull car|is_pull catch_m| catch_m|up cat|has_had caught|light caught|light_on celsius|i
chang_it_to| chang_w| chang_w|ar check_th|DISH check_with_th| choic| choic|again choic|again_$
chuck|an chuck|an_extra coat_ar|off cold_by|N:some cold_on_th| collaps_th| collaps_th|moment
collect_P_back| collect|th_wean com_back|from com_from|th com_let| com_let|us com_out_it| com_than|
com_than|i com_through| com_w_hav| company_is|go company_pull| company_pull|in company|is com|P
com|P_is com|along_fin com|back_to com|than com|than_i com|through_that convection_is_run|
cooker_run_Ndegrees:some| cooker_run| cooker_run|Ndegrees:some cooker|is_dead cool| cor_has|
cor_has|reach could_i_swap| could_not_hav| could_w|do could|us could|w_do could|you_plan counter_smell|
counter_smell|amaz cover_in|butter cover|in_butter cover|it_whil crank_it_to| crank_it|to cream_is|mad
cremat_so_well| current|has current|has_gon cut_it|open cut_m_som| cut_th|bon cut|board cut|board_THING
da_will|not dan_offer_to| dan_offer| dan_offer|to dan|offer dan|offer_to dav_is_lot| dav|is
dav|is_lot da|will_not dead_it_will| deb_ar| deb_ar|not degre|c_$ degre|f delay_so_P| did_i_tell|
did_i|miss did_i|say did_i|tell did_not|finish did|not_salt did|you_se dinner_happen_Nduration|
dinner_if| dinner_if|you dinner_is_go| dinner_is_now| dinner_they|hav dinner_tim| display_is_giv|
display|is_giv do_a|DISH do_i_ask| do_i_turn| do_it_tak| do_i|cover do_i|know do_i|n do_not_own|
do_not_plan| do_not|expect do_not|own do_tell| do_tell|th do_th_high| do_th|boil do_th|chop
don_Nduration| don_Nduration|ago don_all|through don_and|dust don_so|far don_with_th| don_yet_and|
don|i don|with_it don|yet_$ doorbell_they| doorbell|they down_Nduration_earlier| down_at|N:few
down_i|can down|a_U down|yet_$ do|about do|i_get do|i_mak do|i_set do|not_plan do|th do|th_boil
do|th_sear drink_first_so| drop_of_blood| drop_out_U| drop|of_blood drown| drown|her dry_brin_this|
earlier|than earlier|than_plan early|they early|they_ar eat_Nduration|early eat_anyth_that|
eat_a|bit eat_pink_so| eat|anyth_that eat|early_at electricity_has|gon element|blew element|blew_actual
end_th_count| end|Nweight enough_for|N:few even_com| even_com|to even_touch_th| even|com even|com_to
everyth_tak|m everyth|in everyth|is_happen everywher|th everywher|th_THING extra_pair| extra_pair|of
extra|N:few_U f_by_N:few| f_by|N:few fahrenheit_giv| fahrenheit_giv|it fallen_behind_on| fallen_behind|
fallen_behind|on fallen_over| fallen_over|in fallen|behind fallen|behind_on fan_is|on fan_on_this|
fan|assist_oven fan|is_on fan|on_$ fat_cap|down fin_as| fin_as|it finish|at_N:few fir_tell_quickly|
first_car_is| first_car|is first_so_N:some| first_so| first_so|N:some first|bit first|bit_$
first|lot folk_will| folk_will|not follow| follow|step follow|step_$ for_N:few_of| for_Nclock_on|
for_Nduration_walk| for_U| for_a_for| for_all|of for_a|bath for_a|bit for_my|german for_th|THING
for_th|dinner for_th|next for_th|whol for_tom_h| for_your|P forever| forget_i_am| forget_i|said
forget_th|truss forget|about forget|th_truss forgot_to_mak| for|N:few_$ for|N:few_and for|N:few_do
for|N:some_dinner for|Nclock_and for|Nduration_it for|cream for|degre for|degre_c for|m_th
for|th_sear for|this_crowd found| fre_from| fre_from|N:few french|it_$ from_th|THING from_th|fridg
from_work_that| from_work|that from|Nclock_U from|oven_Nduration from|th_market from|th_station
from|th_zero from|this front_room| front_room|with full|of_smok fus|has_U gam_start| gam_start|at
gang_has| gang_has|land gang| gang|is get_lat_by| get_roast_DISH| get_th|THING ghe|U ghe|U_no
giv_it_m| giv_m|celsius giv_th|THING giv|U giv|U_number giv|it_m giv|m_N:some giv|m_Ndegrees:core
giv|m_Nduration glov|is_on go_alongsid_DISH| go_down|a go_from| go_it| go_straight_to| go_to_bother|
go_to_hav| go_to|b go_to|bother go_to|br go_to|help go_up|to go_with|salt god_bless| god_bless|them
god_ther_is| gon_and|drop gon_out_so| gon_ther| gon_ther|is gon|Nduration_n gon|for gon|from_N:few
gon|in_fat gon|in_wish gon|off_$ gon|out_so gon|up_to good_N:some| good_N:some|lat good|N:some
good|N:some_lat good|Ndegrees:some good|Ndegrees:some_hot good|bit good|bit_mor got_N:few_out|
got_a_nic| got_held| got_held|up got_it|sat got_th|green got_to|b got|N:few got|an got|behind
got|in got|left go|for_medium go|in_$ go|in_no go|on_with go|to_bother go|to_help go|to_mak
go|to_walk go|up_in go|with_salt grab|a grab|a_glass grab|th_handl grab|th_pan grac_will_look|
grand_piec| grand_piec|of grand|piec grand|piec_of green|DISH_U grow|in grow|in_th guest_hav_walk|
guest|ar_com guest|hav_walk guest|is_vegetarian guid|m_th h_is_at| h_is_slip| h_is|hav had_a|blackout
had_a|fac had|Nduration had|Nduration_already had|to_yank hair| half_of| half|of half|of_them
hall_right| hall_right|DISH handl_anyth_with| handl_it_was| handl_it| handl_it|was happen_Nduration|
happen_Nduration|sooner happy_with_medium| has_a_nut| has_a|nut has_been|out has_been|put has_com_down|
has_com|up has_fallen_over| has_gon_ther| has_gon_way| has_gon|from has_gon|way has_got|th
has|allergy has|been_off has|com_to has|gon_everywher has|gon_inverter has|gon_lumpy has|gon_to
has|got_someth has|reach hav_DISH_with| hav_Nduration| hav_P| hav_P|fre hav_U| hav_a_THING|
hav_a_fan| hav_a_grand| hav_all_sat| hav_all_taken| hav_all|sat hav_another|helper hav_a|boneless
hav_a|leave-in hav_bung_th| hav_com_back| hav_com|P hav_fallen_behind| hav_fallen|behind hav_got|a
hav_got|to hav_had|Nduration hav_i_ruin| hav_invit| hav_invit|th hav_it|yet hav_kept|at hav_knock|it
hav_no_U| hav_not_mad| hav_not|peel hav_no|THING hav_no|cream hav_pick_up| hav_put|too hav_remov_from|
hav_rop| hav_rop|in hav_salt_it| hav_sat|them hav_slic_my| hav_switch|it hav_thes_DISH| hav_to_nip|
hav_to|hav hav_turn|it hav|DISH_as hav|DISH_with hav|any_THING hav|begun hav|com_P hav|com_back
hav|fallen hav|gon_in hav|gon_power hav|got_N:core hav|got_my hav|it_without hav|left hav|lift
hav|lift_it hav|lost_electricity hav|lost_power hav|not_any hav|not_carv hav|not_kept hav|not_mad
hav|not_turn hav|nut_sh hav|our hav|our_rar hav|peel hav|run hav|run_out hav|switch_it hav|taken_th
hav|to hav|to_b hav|to_hav hav|to_nip hav|to_rest head_upstair_to| headcount_has_gon| hear|is
hear|is_not heat_and_left| heat_th_whol| held|up helper_from| helper_from|Nclock helper|today_her
help|m_$ her_THING_is| her_U_my| her_a|plat her_on_weight| her_tablet|Nduration her_ther| her_ther|is
her|cremat her|cremat_so her|lad her|well hey_company_pull| high|heat high|heat_at him_out_for|
his|new his|new_P hold_everyth|for hold|everyth_for holler|when_that hot_THING_com| hot_THING|
hotter_than| hot|by_N:few hot|so hous_befor| hous_befor|Ndate hous_now| hous_now|i how_do|this
how_many|mor how_to|DISH how_to|carv how|hot_for how|is_sh how|long_can how|long_is how|long_mor
how|many_DISH how|much_DISH how|much_THING how|much_longer h|go h|got_N:core h|swell h|swell_up
h|want i_U| i_am_drown| i_am_lagg| i_am_slow| i_am_so| i_am_wait| i_am_without| i_am|drown
i_am|fre i_am|overwhelm i_ask_th| i_bought|a i_chuck| i_could|not i_could|us i_crank_it| i_crank|it
i_cut|into i_grab_th| i_had|th i_hav_P| i_hav_fallen| i_hav_invit| i_hav_rop| i_hav_sat| i_hav_switch|
i_hav_turn| i_hav|a i_hav|begun i_hav|com i_hav|had i_hav|ne'er i_hit| i_hit|th i_knock_it|
i_knock| i_knock|it i_mak|it i_miss|for i_n_from| i_n_in| i_never|did i_put|in i_say_to| i_should|b
i_shut_th| i_slic|it i_swap_th| i_talk|to i_tell_you| i_think| i_took|it i_turn_it| i_turn|it
i_us_instead| i_us|this i_want|degre i_will_sear| i_will|DISH i_will|hav i_will|sear idea|
if_h| if_it|go in_Nduration_for| in_a_THING| in_a|THING in_a|half in_kilo_if| in_law_do| in_law_grab|
in_law|grab in_law|h in_old_money| in_sh| in_som|DISH in_th|center in_th|cold in_th|driveway
in_th|liv in_with|th ingredient| insid_temperatur_is| instead_of|THING instead|of_butter into_th|driveway
into|th_hot invit|th invit|th_P invit|themselv_so in|N:some_and in|U in|butter in|butter_$
in|her_for in|hiv in|law_ar in|law_grab in|law_h in|law_is in|now_$ in|onc_it in|th_box in|th_cast
in|this_drawer in|traffic_another is_DISH_grow| is_N:core_what| is_N:few| is_N:few|bon is_U|so
is_a_U| is_after_go| is_all|carv is_alway|cold is_an|Nweight is_at_th| is_a|bit is_bleed_and|
is_blood|everywher is_cut|up is_don_Nduration| is_fin_as| is_flam|in is_for_th| is_fre_from|
is_giv|U is_go|on is_jump_all| is_lat| is_left_on| is_my|next is_no_second| is_not_availabl|
is_not|becom is_not|heat is_not|on is_not|th is_out_and| is_pink_THING| is_pur_vegetarian|
is_ready|it is_slip|on is_sort|N:few is_th_trick| is_th|reason is_when_w| is|N:some is|Ndegrees:some_cooler
is|THING_$ is|U_new is|U_watch is|a_conventional is|alway_left is|an_Nweight is|asleep is|back_on
is|beep_it is|bleed_and is|bring_th is|carv is|delay_add is|delay_so is|don_Nduration is|don_what
is|eat_DISH is|fin_as is|finish_and is|flam_com is|full is|happen is|hot_now is|hurt is|hurt_h
is|in_beer is|in_i is|it_com is|it_look is|left is|lot_ar is|m_don is|margarin is|margarin_ok
is|no_win is|not_availabl is|not_becom is|not_heat is|not_read is|offer is|on_N:some is|on_and
is|on_chemo is|on_fir is|pink_all is|raw_insid is|ready_it is|sat is|sit_at is|smok_pour is|split_open
is|strain_U is|th is|th_go is|th_next is|that_ok is|throat is|throat_swell is|too_full is|with
it_N:oven_or| it_all|off it_all|on it_alon_for| it_and|h it_as|it it_back_a| it_b|when it_from_th|
it_has|com it_in|at it_is_an| it_is_hit| it_is_what| it_is|already it_is|an it_mak|much it_medium|not
it_m| it_m|in it_out_and| it_out_it| it_out_to| it_out|it it_pink| it_sat_on| it_should| it_should|b
it_still_no| it_still|moo it_uncover| it_uncover|overnight it_was|hot it_will|b it|Nclock_now
it|U it|alon_for it|b_when it|in_at it|is_$ it|is_at it|is_carv it|is_com it|is_drop it|is_up
it|jump_Ndegrees:few it|off_at it|out_Nduration it|out_and it|out_on it|out_yet it|pink_$ it|to_Nclock
it|to_medium it|want it|was_hot it|with_th i|DISH_th i|U_th i|already i|am_all i|am_head i|am_miss
i|am_never i|am_pop i|am_run i|am_se i|am_sorry i|b_worri i|bast i|bast_it i|can_carv i|cover
i|do_now i|forgot_th i|hav_P i|hav_an i|hav_bought i|hav_burn i|hav_gon i|hav_help i|hav_remov
i|hav_slic i|hav_start i|must_go i|pay i|pay_for i|refreez i|refreez_th i|said_that i|said_wrong
i|say_a i|stuff i|swap i|think_$ i|took_out i|us_DISH i|us_instead i|us_this i|want_$ i|was_mean
i|will_do jess_is|on jess_will| jess_will|b jim_want| jim_want|his jo_will| job_is_a| joint_is|
joint|in_th jo|is jump_all| jump_all|over keep|th_other kept_pac| kept_pac|with kept|up kept|up_honestly
kettl_is| kettl_is|on kettl|on_tim kill_th|heat kilo_if| kilo_if|you kindly_guid| kindly_guid|m
knock_that| knock_that|timer lack_a_cut| lactos|intolerant_so lad|is_brought lagg|by lagg|by_Nduration
land_us_on| last|week lat_by_Nduration| lat_sav| lat_sav|her lat_so_they| lat_so|they lat_they|text
lat_with|THING later|than_that later|than_they lat|so_they lat|with_THING law_do| law_do|not
law_grab| law_grab|a law|grab law|grab_a law|h law|h_want leave-in|THING_$ leave-in|on leav|th_THING
left_what| left_what|do less_priya| less_priya|has let|us_N:oven light_ar| light_ar|back light_hav|
light_hav|gon lik_her|cremat lik_to|eat lik|DISH_r lik|it_medium lik|it_practically lik|last
lik|last_year lip_ar| lip_ar|swell list_at| list_at|all list_for_th| list_nobody_eat| listen_sorry_from|
littl|N:few_eat littl|monkey long_as|you long_till_i| long_till|dinner longer_for| longer_for|th
longer_than_you| long|as long|as_you long|hav_w long|mor_will lost_Nduration_to| lot_ar|go
lot_of| lot|ar_go loung_every_last| lucy_can_not| lunch| m_Nduration_on| m_U_ther| m_and|dav
m_an| m_a|yell m_back_in| m_back|in m_missus_will| m_th|whol m_what_to| mad_excus| mad_excus|m
mak_ahead_out| mak_it_Nduration| mak_with_ghe| mak_yusuf_is| mak|it_after mak|it_medium mak|much
mak|much_smok mak|that_Nduration many_DISH_per| many|DISH_do many|DISH_per many|mor mass_finish|
mass_finish|at match_has| match_has|gon meal| medium_rar|saf medium|not_a medium|well_they
method_for| metric|system metric|system_for middl_of|th mind_a_DISH| miss_th_r| miss_that|on
missus_will|not miss|for_this money_what| money|what_is month|old_P mor_th|to mor|for_dinner
mor|person_com mov_on|to much_THING|go much_i_am| much_longer_for| much|longer_do murder| must_b_th|
must|b_Nduration my_P_is| my_P|at my_P|on my_P|will my_THING_has| my_THING_what| my_arm_what|
my_arm_with| my_cooker_run| my_cooker|is my_folk_will| my_hear| my_hear|is my_thumb|is my|P_at
my|P_help my|P_on my|THING_gaug my|arm_on my|arm_what my|family_will my|german my|german_visitor
my|next my|next_job my|option_$ m|N:core m|a_mo m|a_sec m|a_yell m|celsius m|celsius_not m|som_instruction
m|through_th m|up_when n_DISH_can| n_Nduration_set| n_another|Nduration n_another|go n_a|THING
n_for|N:few n_from| n_from|th n_in| n_in|th n_to_buy| n_to_collect| n_to_eat| n_to_pick| near|enough_so
never|us new_THING_so| new_th|joint next|door_Nduration nic_bit| nic_bit|of nic|bit nic|bit_of
nip_out_for| nip_to_next| nip_to|next no_DISH_n| no_DISH_w| no_DISH|tonight no_U_of| no_bon|
no_i|said no_not_do| no_on|bought no_r_win| no_second|oven no_when_i| no_w|ar nobody_is|eat
nobody_is|in nobody_lik|it nobody_will|b not_P|open not_a_drop| not_availabl| not_availabl|in
not_a|THING not_b_hav| not_bother|tim not_b|faff not_call_m| not_degre| not_degre|f not_don_th|
not_don|with not_even_com| not_even|com not_get|up not_got|a not_in|yet not_kept_pac| not_kept|up
not_mad_excus| not_n|th not_own| not_own|a not_plan| not_plan|for not_se|again not_tak|THING
not_trust|this not_turn|it not|a_THING not|at not|b_bother not|b_her not|b_mak not|b_strain
not|becom not|becom_soft not|befor not|bother_sear not|bother_ty not|breath_$ not|com_after
not|cop not|don_yet not|expect not|expect_m not|find_th not|finish_scrap not|go_near not|in_yet
not|it_$ not|know_if not|listen_sorry not|own not|own_a not|peel_anyth not|th_hour not|touch_it
not|yet now_i|must now_they_brought| now_what_to| now|at_Ndegrees:core now|i_hav now|what now|what_do
no|THING_can no|fan_$ no|for_tom no|on_is number_N:few| number_i|am n|DISH_can n|Nduration_befor
n|Nduration_set n|another_go n|from n|from_th n|to_eat of_DISH|and of_DISH|th of_a|th of_blood_for|
of_blood| of_blood|for of_butter|go of_fahrenheit_giv| of_m|i of_us|THING of_us|non off_and_it|
off_at_th| off_littl| off_littl|monkey off_th|Nduration off_with|th offer_to|do off|down off|down_th
off|th_board of|THING_Nweight of|THING_THING of|fahrenheit of|fahrenheit_giv of|m_i of|rest_it
of|th_lad of|us_and ok_instead_of| ok_i|am ok_so_it| ok_so_th| ok|instead_of old_money| old_money|what
on_N:core_has| on_a_few| on_a|few on_dinner_they| on_less_priya| on_seat_let| on_slow|flam
on_th_r| on_th|bon on_th|hob on_th|r on_th|roast on_th|stair on_th|tabl on_th|telly on_th|wet
on_to|boil on_to|th on_track|for on_weight| on_weight|in onc| onc|and onto_th|floor on|N:core_at
on|U on|a_low on|bought on|bought_butter on|for_th on|now_$ on|th_THING on|th_timer or_DISH_whatever|
or_near|enough or|less or|not or|so ought|to_b ounc_for| ounc_for|m out_U_of| out_a_touch|
out_and_puff| out_for|m out_for|thos out_in|hiv out_so| out_so|it out_till|Nclock out_to|minut
out_whol|street out|at_N:oven out|for_a out|for_cream out|my_P out|of_N:few out|of_what out|th_THING
out|whol oven_THING|w oven_go_up| oven_is|N:oven oven_is|Ndegrees:some oven_is|beep oven_is|dead
oven_is|too oven_off_and| oven_off_littl| oven_pack| oven_so| oven_switch_itself| oven_switch|
oven_switch|itself oven_to|Ndegrees:core oven_what| oven|at_Ndegrees:oven oven|has_com oven|is_beep
oven|is_up oven|off_Nduration oven|off_littl oven|on_$ oven|on_to oven|on_whil oven|run_Ndegrees:some
oven|that oven|that_is oven|to_$ oven|to_Ndegrees:core over_a| over_a|THING over_in_th| over_to_P|
over|in over|in_th ow_shit_i| pac|with pac|with_your pag| pan_handl| paper_her_ther| paper_her|
paper_her|ther parchment_paper_her| pastry_or| pastry_or|DISH past|well past|well_don peel|and
pencil_in_DISH| peopl_ar_go| phon_they_ar| pick_up|an pick|up_a piec|of_sirloin pink_THING|saf
plan_chang_w| plan_h_has| plan|for_it plenty_without_th| point_of|rest point|of_rest pok_m_about|
pop_to_th| pop|next pop|next_door pop|th_roll position_of_th| position|of position|of_th postpon|of
postpon|of_Nduration power_has| power_has|gon power_in_th| practically_burnt_well| pregnant_by|
pregnant_by|th preheat_th|other preheat_to|N:some press_th| priya_can| priya_can|not priya|has
priya|has_got puff|up_lovely pull_in_th| pull|in_th pull|it_at pull|it_for pull|it_now pur_vegetarian|
pur_vegetarian|no push|th_meal put_Nduration_on| put_a|timer put_it_all| put_it|in put_on_th|
put|a_timer put|th_kettl put|too put|too_much p|m_in quickly| quickly|what quickly|what_to
r_or| rar_for_all| rar_or_near| rar_roast_this| rar|saf rar|saf_for read_it_jump| ready_or|
ready_or|not ready_they|n ready|it_has ready|yet_$ reduc| remov_from| remov_from|oven rest_will|
rest|for_Nduration rib_is|in rib|roast_$ rid_of_th| right_at| right_at|th right_w|hav righto_rib_is|
right|U roast_fell_on| roast_is_go| roast_this| roast_this|year roast_with| roast|is_at roast|is_not
roast|ruin roast|ruin_$ roll_ar_go| roll_cam| roll_cam|out roll_did| roll_did|not roll|prov
roll|prov_Nduration room_with_a| room|temperatur_$ room|with_a rub|it rub|it_with run_Ndegrees:some|cool
run_a|bit run_m| run_m|through run_so|do run| run|Ndegrees:some_cool run|Nduration_lat run|at
run|to run|to_th r|N:core_now r|road r|win_P salt_do_i| salt_it|all salt_per| sam_is_go| sam|heat
sam|heat_th sat|them sat|them_down sav_her_a| sav|her sav|her_a say_N:core_in| schedul_green|
schedul_green|DISH school_run_so| scor| scrub_and| sear_in|this seat_let| seat_let|us second_sear_in|
second|on_th serv|it_with sesam_allergy_a| set_for|degre set_it|to set_th_roll| set|a_Nduration
set|an_alert set|for_degre set|th_roll set|th_tabl set|to_Ndegrees:oven se| se|again sh_hit|
sh_hit|N:core sh_is|offer sh_say_they| shall_b_at| sharp_U_th| sharp|kindly shit_i| shit_i|hav
shit| should_hav|been should_i|tak should|hav_been shout|if_you shov|it show|m_N:core shut_that|alarm
shy|a shy|a_few sh|is_N:core silent|now silent|now_$ sir_it| sir_it|is sirloin_Nweight_or|
sit|at_N:core sit|down_Nduration sit|in_a skip|that_bit slic|it_$ slid_off_th| slow| slow|flam
slow|flam_Nduration snow| so_N:few|extra so_N:some|mor so_P|will so_how| so_h|is so_it_r| so_it|r
so_i|hav so_tak_that| so_they|ar so_th|middl so_what|am solid_i| solid_i|am someth_to| som|DISH_roll
som|U_i soon_P_ar| sorry_from| sorry_from|th sorry_i_am| sorry_i_did| sorry|i_am sorry|that
sort|N:few sort|N:few_U so|N:few_$ so|N:some_mor so|far_$ so|low_$ so|w_panick split_U_theo|
stand_in_for| stand|rib_with start_again_from| start_th|clock start_to|U start|from_scratch
start|over_$ start|th_r start|to_U steak|medium steak|medium_rar step|back_$ stick_Nduration|
stick_Nduration|on stick|Nduration stick|Nduration_on still_hav| still_hav|not still_in_th|
still_on_track| still_on| still_squeaky| still_stuck|on still|on_for still|on_th still|park
stop_for_a| stop|th_lot straight_from_th| straight_into| straight_into|my strain_U_and| supper|is_at
swap_th| swap_th|cream swell|up_after switch_itself| switch_itself|off switch_th_fan| switch|it
switch|it_off switch|itself switch|itself_off system_for_my| tabl_at|N:few tabl_god_bless|
tablet|Nduration tak_a|call tak_that|into taken_th_THING| tak|Nduration_away tak|THING_for
tak|it_off tak|th_bin talk_in_degre| talk_to|m target|N:core target|N:core_for tear| teddy_is|U
tell_quickly| tell_quickly|what tell_th_follow| tell_they| tell_they|will tell|m_when tell|th_follow
tell|they tell|they_will temperatur_is|Ndegrees:core temperatur|th tenderis_by| tenderis_by|th
test_cam| test_cam|out th_DISH_another| th_DISH_did| th_DISH_has| th_DISH_must| th_DISH_n|
th_DISH_ther| th_DISH_they| th_DISH_under| th_DISH_whil| th_DISH|THING th_DISH|collaps th_DISH|roll
th_DISH|whil th_N:few|of th_N:few|rib th_P_to| th_P_turn| th_THING_not| th_THING_so| th_THING_went|
th_THING_wok| th_THING|fell th_best|way th_bus_is| th_cat_has| th_cat|has th_choic|again th_counter_smell|
th_count| th_count|down th_current_has| th_dinner|by th_display|is th_doorbell_they| th_electricity_has|
th_first|bit th_follow| th_follow|step th_front_room| th_gam_start| th_guest_will| th_guest|ar
th_guest|is th_hall_right| th_handl_it| th_has_gon| th_has|gon th_high|heat th_hous_befor|
th_hous_now| th_last|on th_leave-in|on th_light_hav| th_littl|on th_match_has| th_meal| th_metric|
th_metric|system th_on_with| th_oven_so| th_oven_switch| th_oven_what| th_oven_will| th_oven|that
th_power_has| th_power_is| th_power|di th_roast_cam| th_roast|ruin th_roll_cam| th_roll_did|
th_roll_n| th_roll|prov th_r|road th_small|on th_thick|part th_timer_it| th_top_of| th_trim_it|
th_very| th_very|least th_whol|U th_whol|tim th_whol|way than_i_told| than_you| than_you|said
than|i_told that_Nduration_i| that_THING_is| that_back|i that_had_a| that_is_for| that_last|on
that_piec| that_piec|of that_w| that_w|hav that|Nduration_i that|again_i that|alarm_up that|back_$
that|bit_$ that|door_$ that|had that|had_a that|into that|into_account that|on_is that|timer_on
that|was_my their_N:few_of| their|at them_hav_turn| them_i_want| theo|is theo|is_fre ther_Nduration_stop|
ther_a_set| ther_a|trick ther_has|been ther_in_th| ther_is_blood| ther_ought| ther_ought|to
ther_us| ther_us|to ther|a_trick ther|is_too ther|yet_$ thes_DISH|don thes| they_ar_tell| they_ar|bring
they_brought| they_brought|their they_hav_had| they_want|drink they|ar_all they|ar_bring they|ar_golden
they|hav_had they|hav_pull they|n_heat they|will_b they|will_reach thick|part think_i_will|
this_can|you this_is|too this_on_is| this_oven_run| this_oven|alway this_tim|ther this|THING_$
this|hous_and this|on_is this|tim_ther thos_bon_lif| through_th_whol| through_th|DISH through_th|door
through|th_day through|that throw|in throw|in_som thumb|is thumb|is_bleed th|DISH_as th|DISH_did
th|DISH_for th|DISH_i th|DISH_nobody th|DISH_ready th|DISH_so th|DISH_w th|DISH_whil th|N:few
th|THING_back th|THING_bag th|THING_board th|THING_get th|THING_so th|THING_test th|THING_will
th|THING_wok th|board_and th|boil_pet th|boil_straight th|bon_off th|cast th|chop th|clock_Nduration
th|cold th|cor_$ th|cor_get th|counter_$ th|cream_for th|crowd th|dial_and th|dinner_$ th|dinner_if
th|dog_out th|door_and th|door_shut th|front th|gam_start th|guest_cam th|guest_is th|hob th|hous_afternoon
th|hous_for th|joint_out th|kettl th|last_on th|light_went th|list_$ th|list_nobody th|littl_light
th|liv th|liv_room th|lot th|measurement th|middl_when th|moment_i th|next_N:some th|next_Nduration
th|next_hour th|next_th th|other_on th|oven_and th|oven_switch th|party_$ th|phon_it th|plan_sinc
th|prep_$ th|r_road th|reason_for th|roast_hit th|roast_ruin th|ros th|shop_Nduration th|smell
th|stov_for th|tabl_already th|to_go th|train_is th|trick_with th|wet th|wet_floor th|whol_U
th|whol_cook th|whol_gang ti_with| ti_with|th tick_off_DISH| till_i|can till|dinner tim_is_lactos|
tim_th|DISH timer_on_th| tim|for_a tim|is_your tip_of_my| to_N:core_would| to_N:core|in to_P|is
to_U_by| to_U|from to_b_on| to_bother| to_b|N:some to_b|U to_b|parchment to_com_up| to_do_tell|
to_get|in to_giv_th| to_hav|a to_heat| to_help_with| to_mak|a to_nip_out| to_nip|out to_preheat_th|
to_run_to| to_tak|it to_th_metric| to_th|boil to_turn_it| to_wash| told|m_U tom_h| tom_h|swell
tonight_so| tonight_so|N:few took|her took|her_out took|th_roast too|much_i too|salty_i touch_th|DISH
touch|early touch|early_sinc tough| tough|as tough|as_old to|N:core_would to|N:oven_for to|Ngas-mark_and
to|U_by to|U_in to|U_sh to|b_N:some to|b_Nduration to|b_f to|bother to|buy to|catch_my to|check_th
to|do_tell to|do_th to|f_th to|get_dress to|go_$ to|hav_thes to|know_th to|mak_th to|minut
to|minut_ago to|preheat_th to|start_so to|th_shop to|us_$ to|you_$ track|for train_is|run train|is_run
trip_and| trip_and|everyth trust_th|dial trust|th_dial trust|this turn_it|to twic_as| twic_as|long
ty_is_sort| uncover|overnight under|way_sorry up_an_extra| up_as_w| up_as|w up_at|N:core up_a|Nweight
up_from|th up_i|am up_n_to| up_when_it| up_when| up|U up|an up|an_extra up|at_N:core up|nicely_N:core
up|ther us_DISH|out us_eat_a| us_hav|DISH us_instead| us_instead|of us_mak|th us_on|N:core
us_skip_th| us_skip|that us_to_b| us_to|b us|a_THING us|hav_DISH us|it_$ us|non vegetarian|no
vegetarian|no_THING very|least visitor_com_with| volunteer_for|th w_ar_shy| w_ar_sit| w_ask_is|
w_br| w_br|dinner w_can_sit| w_can|not w_do_th| w_get|on w_hav_all| w_hav_another| w_hav|it
w_hav|lost w_hav|run w_hold_everyth| w_hold| w_hold|everyth w_jump| w_n|Nduration w_put|it
w_set| w_set|for w_would_lik| want_a_good| want_it| want_m|to want|degre want|degre_c want|drink
want|drink_first want|her_medium want|his_well want|it_$ want|it_at want|m_to want|thos_and
warn|m warn|m_at was_lay_th| wash|up_and was|hot was|hot_it watch_th|clock watch|th_clock water_test_cam|
way_past|well way|past_well weight|in_kilo well_behind_her| well_that|is well_they_ar| well|don_this
went_out|whol went_straight_into| went| went|on_Nduration went|on_to went|out_at whack_it_down|
whack_it|up what_can_w| what_could_w| what_did|you what_is_go| what_is_left| what_is_my| what_is_to|
what_is|that what_number_i| what_should|i what_temperatur_should| what_was|th what|for what|is_next
what|number_am what|reason_w what|tim_do when_is_it| when_is|it when_it|get when_i|say when_sh_hit|
when_th|roast when_w_get| when_w|get when_you|check when|it_THING when|sh_hit when|w_hit which_degre|
which|THING which|THING_could which|way whil_i|was whil|i_nap whil|it_rest who_has_got| whol_gang_has|
whol_th_has| whol|th_back whol|way who|want why_am_i| why_do|not why_must| why_not_DISH| will_b|DISH
will_do_it| will_eat|early will_hav|our will_not_se| will_not|bother will_sear|at will_se|you
will|b_DISH will|b_back will|not_heat will|not_turn will|sear_at will|want_it win_is|on with_ghe|
with_ghe|U with_her_tablet| with_medium|rar with_m|a with_pastry_or| with_that_w| with_th|oven
with|THING_Nduration with|m_a with|pastry with|pastry_or with|salt_it with|th_butter with|th_kiddy
with|th_str with|this_can wok|up_N:core work_that| work_that|is work|that_is would_brown_it|
would_go_down| would_lik|DISH would_you_look| would_you_watch| would|ya would|ya_$ would|you_$
would|you_mind w|ar_eat w|ar_look w|ar_miss w|eat_ok w|get_on w|hav_decid w|must_eat w|n_DISH
w|still_on w|want_it w|will_b y_can_not| year_it_is| yell|when yell|when_it yes_go| you_U|
you_ar_a| you_ar|out you_look|at you_watch_th| you_watch|th your_list_at| you|ar_on you|check_tell
you|cut_m you|know_$ you|learn_about you|say_$ you|talk_in you|tim yusuf_is| yusuf_is|throat
|@100.3 |@104 |@106 |@116.4 |@119.6 |@122.2 |@126 |@138.0 |@14 |@15.0 |@15.3 |@21.4 |@23.4
|@28.0 |@32.7 |@4.8 |@4.9 |@40 |@45.0 |@51 |@51.0 |@54.2 |@59 |@61.3 |@70 |@72 |@77 |@9.1 |@90
|DISH_U_for |DISH_did |DISH_did_not |DISH_do_i |DISH_in_now |DISH_is_dead |DISH_is_stand |DISH_n_mor
|DISH_out_this |DISH_per |DISH_per_THING |DISH_ready |DISH_ready_they |DISH_roll_$ |DISH_so_do
|DISH_th_roast |DISH_this_year |DISH_whil_i |N:core_at_N:few |N:core_for_th |N:core_i_am |N:core_now_in
|N:core_yet_mor |N:few_U_on |N:few_and_i |N:few_dinner |N:few_eat_at |N:few_sh_has |N:few_so_far
|N:few_they |N:oven_i_am |N:oven_now_$ |N:oven_sharp |N:oven_sharp_kindly |N:oven_with |N:some_dinner
|N:some_lat_on |N:some_mor |N:some_mor_befor |N:some_y |N:some_y_can |Nclock_U_our |Nclock_now_would
|Nclock_sharp |Ndegrees:core_let |Ndegrees:core_let_m |Ndegrees:some_cool |Ndegrees:some_cool_alway
|Ndegrees:some_cooler |Ndegrees:some_cooler_than |Nduration_and_do |Nduration_approximately
|Nduration_away_from |Nduration_back_$ |Nduration_befor_dinner |Nduration_down |Nduration_lat
|Nduration_lat_get |Nduration_n |Nduration_n_to |Nduration_now_i |Nduration_oven_is |Nduration_set
|Nduration_set_a |Nduration_then_tell |Nduration_to_that |Nduration_walk |Nweight_forerib_N:few
|Nweight_stand |Nweight_stand_rib |Nweight_with_N:few |P_at_it |P_from_th |P_h_is |P_set_th
|P_sh_do |P_turn_th |THING_THING_over |THING_THING_would |THING_and_th |THING_board |THING_caught_light
|THING_for_U |THING_gaug |THING_gaug_must |THING_get |THING_get_to |THING_not_th |THING_now_leo
|THING_test_a |THING_tonight_$ |THING_wok |THING_wok_up |U_by_Nduration |U_find |U_find_him
|U_is_not |U_is_rock |U_mak |U_mak_a |U_my_tail |U_n_N:few |U_new |U_number |U_so_that |U_w_will
|U_watch |U_watch_th |a_bath |a_bit_longer |a_bon |a_boneless |a_call |a_cold |a_conventional
|a_conventional_oven |a_cut |a_drink_$ |a_fac |a_few_DISH |a_few_THING |a_glass_that |a_half
|a_kidney |a_kidney_transplant |a_leave-in |a_leave-in_THING |a_mo |a_mo_$ |a_party |a_plat_$
|a_shout |a_shout_in |a_shower |a_trick |a_trick_to |a_yell_when |about_th_roll |adult_N:few
|adult_N:few_P |after_w_sit |alarm_in |alarm_in_Nduration |alarm_up |all_at_th |all_behind
|all_her_$ |all_so |alon_for_Nduration |along_fin |along_fin_or |already_hav |alway_left |alway_left_over
|alway_run_N:some |am_Nduration_behind |am_Nduration_lat |am_THING_$ |am_all |am_head |am_head_upstair
|am_hold_th |am_miss |am_miss_th |am_never |am_never_go |am_out_for |am_pop |am_run |am_run_Nduration
|am_run_a |am_se |am_slow_today |am_sorry |am_sorry_to |amaz_$ |amaz_$_$ |an_Nweight |an_Nweight_stand
|an_alert |an_alert_for |an_extra_N:few |and_N:few_P |and_go |and_in |and_it_say |and_pet |and_ti_$
|another_go |another_go_not |anyth_that_had |apparently |ar_Nduration_behind |ar_U_and |ar_all_in
|ar_all_sit |ar_bring |ar_bring_N:few |ar_go_in |ar_golden |ar_her_$ |ar_her_th |ar_in_i |ar_look_at
|ar_miss |ar_miss_th |ar_my_option |ar_not_ready |ar_on_your |ar_run_lat |ar_set |ar_set_th
|arm_$ |arm_$_$ |arm_on |arm_on_th |arm_what |as_old |as_old_boot |assist_oven |at_N:core_i
|at_N:few_so |at_N:oven_th |at_Nclock_instead |at_Nclock_then |away_to_get |b_N:core_$ |b_Nduration_later
|b_at_$ |b_at_Nclock |b_bother_french |b_do |b_f |b_gon |b_gon_Nduration |b_in_th |b_mak |b_strain
|b_strain_th |b_tak_it |b_worri |back_Nduration_and |bad_N:few_that |bast_it |becom_soft |becom_soft_still
|been_off |been_off_sinc |been_on_a |been_sat |behind_in |behind_lik |behind_lik_th |behind_so
|behind_with_everyth |bit_later |bit_later_Nduration |bit_longer |bit_mor_tim |bit_of_sirloin
|bleed_and |bleed_and_it |bless_them |blew_actual |blew_actual_U |board |board_THING |board_THING_enough
|board_and |board_now_$ |bob_is_your |boil_$ |boil_$_$ |boil_pet |boil_straight |boil_straight_in
|bon |bon_from |bon_from_th |bon_i |bon_off |boneless_THING |boneless_THING_THING |bother_sear
|bottom_of_th |bought_butter |br_my_P |bring_N:few |bring_N:few_mor |bring_a |bring_th |burnt_$
|burnt_$_$ |butter_is_mad |butter_left |butter_mad |butter_mad_and |c_$ |c_$_$ |call_for_Nduration
|cam_out_Nduration |careful_with |careful_with_her |chang_$ |chang_$_$ |check_tell |check_tell_m
|christma |clock_$ |clock_$_$ |clock_Nduration |cold_by_N:some |collaps_th |collaps_th_moment
|com_P |com_P_is |com_and |com_back_from |com_than |com_than_i |cool_alway |cool_alway_has
|cop_$ |cop_$_$ |cor_$ |cor_$_$ |cor_get |cor_get_to |counter_$ |counter_$_$ |cover_it |cow_is
|cow_is_tail |cream_for |cream_is |cream_on |cream_on_th |cremat_so |cremat_so_well |cut_m_som
|dav_so |dav_so_N:few |dead |degre_c_put |delay_add |delay_add_Nduration |delay_so_P |dial_and
|dinner_b_at |do_i_mak |do_i_typ |do_not_expect |do_tell |do_tell_th |do_th_second |do_this_$
|do_you_reckon |dog_out |don_Nduration |don_Nduration_ago |don_for_him |don_i_am |don_in_tim
|don_this |don_this_tim |don_yet_$ |door |door_shut |down_Nduration_earlier |down_a_bit |down_i_can
|down_th_shop |drink_first |drink_first_so |drown |early_at_N:few |early_sinc |early_sinc_th
|eat_DISH_in |eat_DISH_so |eat_Nduration_early |eat_ok |eat_them_$ |enough_so |enough_so_that
|expect_m |expect_m_for |extra_Nduration |extra_for_th |f_at |f_at_Nclock |faff_with |fahrenheit_giv
|fahrenheit_giv_it |family_will |family_will_arriv |fan_assist |far_$ |far_$_$ |fast_$ |fast_$_$
|fell_out_$ |few_DISH |fin_as |fin_as_it |find_th_THING |finish_and_it |finish_scrap |finish_scrap_thos
|fir |fir_alarm |flam |flam_Nduration |flam_Nduration_back |flam_com_out |flight_is |for_cream_b
|for_degre |for_degre_c |for_dinner_sorry |for_this_crowd |for_tom |for_tom_h |for_your_P |forgot_to_mak
|fre_to_do |from_market |from_market_$ |from_oven_Nduration |gam_start |gam_start_at |german_visitor
|get_dress |get_dress_giv |get_lat_by |get_up_$ |giv_it_Nduration |glass |gnaw_th |gnaw_th_furnitur
|go_U_with |go_near |go_near_shellfish |go_not |go_not_crispy |go_to_church |go_to_hav |gon_everywher
|gon_inverter |gon_inverter_run |gon_lumpy |gon_out_so |gon_power |gon_power_cut |gon_to_extra
|good_N:some |good_N:some_lat |good_Nduration_behind |good_un |good_un_don |got_N:core_in |got_N:few_THING
|got_a_shift |got_someth |got_someth_in |grab_a |grab_a_glass |green_DISH_top |guest_ar_com
|guest_cam |h_want_it |h_was |had_a_fac |half_THING |half_THING_THING |has_caught |has_caught_fir
|has_gon_to |has_got_N:few |has_had_a |hav_DISH_as |hav_P |hav_P_fre |hav_U_th |hav_a_helper
|hav_all_taken |hav_been_in |hav_burn |hav_burn_my |hav_cut_my |hav_decid |hav_decid_against
|hav_gon_and |hav_got_it |hav_had_N:few |hav_had_Nduration |hav_help |hav_help_now |hav_left_U
|hav_pull_into |hav_put_DISH |hav_remov |hav_remov_from |hav_remov_th |hav_roast |hav_slic
|hav_slic_my |hav_slip_sorry |hav_start |hav_thes |hav_thes_DISH |hav_to_wait |heat_at |heat_at_th
|heat_th_whol |held_up_i |helper_from |helper_from_Nclock |helper_it |helper_it_is |helper_today
|her_a_plat |her_all |her_all_N:few |her_medium |her_out_a |her_sh |her_tablet |his_foot_$
|his_rar_$ |hit_N:core_i |hit_N:core_whil |hiv |hot_now |hot_to_pull |hous_afternoon |hous_afternoon_shop
|hous_for |hous_for_Nduration |how_$ |how_$_$ |hurt_h |hurt_h_pour |i_aim |i_aim_for |i_bast
|i_bast_it |i_fetch |i_nap |i_press_th |i_pull_at |i_said_N:core |i_say_$ |i_say_to |i_us_instead
|i_us_this |i_was_lay |if_you_n |ill |in_N:some_and |in_alongsid |in_and |in_beer |in_beer_is
|in_butter |in_butter_$ |in_degre_c |in_fat |in_fat_was |in_for_Nduration |in_i_hav |in_my_lif
|in_no_they |in_onc_it |in_our_market |in_th_driveway |in_th_lower |in_ther_crispy |in_wish
|in_wish_m |inform |instead_of_DISH |instead_of_dry |into_account |intolerant_so |intolerant_so_watch
|iron_THING_$ |is_N:few_extra |is_N:few_on |is_Ndate_lunch |is_Nduration_i |is_a_conventional
|is_alway_cold |is_and_back |is_beep_it |is_boneless_Nweight |is_brought |is_brought_mat |is_carv_and
|is_cover |is_finish |is_fre_from |is_halal |is_happen |is_happen_at |is_hit |is_hit_N:core
|is_next_$ |is_no_power |is_no_win |is_not_in |is_not_now |is_on_chemo |is_pack_up |is_pregnant_$
|is_wrong_$ |it_after_all |it_all_on |it_all_right |it_at_N:some |it_com_out |it_down_$ |it_for_medium
|it_forward_Nduration |it_lumpy_$ |it_m |it_m_in |it_medium_well |it_off_at |it_out_Nduration
|it_out_on |it_out_yet |it_practically |it_practically_burnt |it_was_at |it_whil_it |it_with_salt
|it_without_DISH |jim_want |jim_want_his |job |joint |joint_is_still |joint_out |jump_Ndegrees:few
|keep_th |kept_th |kettl_on |know_if |know_if_this |know_when |know_when_it |lat_on_my |lat_so_they
|later_P |later_P_is |law_ar |law_grab |law_grab_a |law_h |law_h_want |law_is |law_is_vegetarian
|learn_about |learn_about_my |least_$ |least_$_$ |leave-in_on_$ |let_m_know |li_down |lift_it_out
|light |light_di_$ |light_on_th |light_went |lik_a |lik_it_rar |list_nobody |list_nobody_eat
|listen_sorry |listen_sorry_from |littl_N:few_eat |littl_light |littl_light_has |liv_room |long_can
|long_can_it |long_mor |long_till_w |longer_do |lost_electricity |lost_power |m_Ndegrees:core
|m_Ndegrees:core_is |m_Nduration_on |m_U_ther |m_a_N:few |m_a_mo |m_a_yell |m_at_Nclock |m_at_Ndegrees:core
|m_don |m_in_N:some |m_in_celsius |m_know_onc |m_know_when |m_som_instruction |m_th_method
|m_up_in |m_what_number |m_when_it |m_when_th |man |many_DISH |many_DISH_for |margarin_ok |market
|mean_N:core |measurement |medium_well_they |middl_when |middl_when_w |moment_i_open |mor_befor
|mor_befor_w |mor_for_dinner |mor_person_com |mor_will |mor_will_it |much_DISH |much_DISH_go
|much_THING |much_i |much_longer_$ |much_smok |must_eat |must_eat_Nduration |must_go |must_go_out
|my_palm_try |myself_on_th |n_heat |nap_$ |nap_$_$ |ne'er_a_THING |new_P_so |next_N:some |next_Nduration
|next_door_Nduration |next_hour |next_job |next_th |nicely_N:core |nip_out_for |no_THING_no
|no_mor_no |no_str_in |not_a_drop |not_availabl |not_availabl_in |not_becom |not_becom_soft
|not_com_after |not_com_so |not_cop |not_cop_$ |not_eat_it |not_eat_nut |not_find_a |not_for_you
|not_french |not_french_th |not_get_up |not_go_to |not_hav_it |not_hear_myself |not_heat_at
|not_i_carv |not_kept |not_know_if |not_light_$ |not_listen_sorry |not_mad_excus |not_mak_th
|not_my |not_my_P |not_plan |not_plan_for |not_put_it |not_put_th |not_read |not_read_anyth
|not_ris_yet |not_risen_yet |not_tak_THING |not_th_THING |not_touch_THING |not_turn_on |not_want_th
|number_am |number_am_i |nut_sh |obviously |of_DISH_DISH |of_N:few_so |of_beer |of_blood |of_blood_for
|of_butter_go |of_delay_$ |of_her_tablet |of_rest_it |of_sear |of_smok_$ |of_th_cream |of_what_you
|off_littl |off_littl_monkey |off_th_DISH |off_th_Nduration |off_th_board |off_th_roll |offer_to_do
|old_P |old_P_eat |on_N:core_and |on_a |on_for_Nduration |on_hot_dog |on_seat |on_th_and |on_th_greas
|on_then_$ |on_tim_$ |on_tim_m |on_to_N:oven |on_to_reduc |open_and_it |other_on |other_on_$
|our_rar |our_rar_thank |out_and_on |out_for_cream |out_my_P |out_now_$ |out_so_it |out_th_THING
|out_to_com |oven_Nduration_back |oven_THING_w |oven_b_at |oven_down_$ |oven_is_N:oven |oven_on_$
|oven_on_to |oven_switch |oven_switch_itself |oven_th_roast |overcook_it |overshot |own_a_THING
|palaver |parchment_paper |parchment_paper_her |party_$ |party_$_$ |past_well |past_well_don
|pastry |pastry_or |pastry_or_DISH |pay_for_$ |peel_anyth |peel_anyth_yet |per_THING_$ |person_com
|person_will |person_will_b |phon_it |phon_they_ar |phon_to_my |piec_of_sirloin |plac_$ |plac_$_$
|plan_sinc |plan_sinc_Nduration |pour |preheat_th |preheat_th_other |prep_$ |prep_$_$ |press_it
|press_it_with |prov_Nduration_ago |r_N:core_now |r_road |rar_or_near |rather_than_butter |raw_insid
|ready_it_has |ready_yet_$ |real |reason_for |refreez_th |refreez_th_leftover |rest_will |right_$
|right_$_$ |right_for_my |road_is |roast_hit |roast_hit_N:core |roast_ruin |roast_ruin_$ |room_with
|ruin_$ |ruin_$_$ |run_N:some_cold |run_out_of |run_to |run_to_th |saf_for_P |said_wrong |said_wrong_it
|salt_it_chuck |salty_$ |salty_$_$ |salty_i |sat_on_a |sat_out |sauna |say_a_number |say_so
|scor |sear_at_th |sear_keep |sear_keep_it |sh_can |sh_hit |sh_hit_N:core |shall |sharp_kindly_$
|shift |shop_Nduration |shop_for_a |shot_$ |shot_$_$ |shov_it_back |shower_giv |shower_giv_m
|shy |sleep_in |sleep_in_th |slip_and_half |smok_pour |smok_pour_out |so_go_careful |so_it_is
|so_well |solid_i |solid_i_am |som_instruction |som_instruction_$ |sooner_than_plan |split_open
|start_so |start_so_early |steady |step_back_$ |still_crunchy_not |still_moo |stov_for |strain_U
|strain_U_and |stuck_in_traffic |stuff_$ |stuff_$_$ |supper_at_Nclock |sur_you |sur_you_could
|swap |switch_it |switch_it_off |system_for |system_for_my |tabl_already |tak_Nduration_away
|taken_th_THING |talk_in |th_DISH_i |th_DISH_miracl |th_N:few_hav |th_N:few_rib |th_P_as |th_THING_on
|th_THING_slip |th_board_onto |th_boil_straight |th_box |th_box_is |th_center_it |th_colour
|th_door_shut |th_follow |th_follow_step |th_go_with |th_green_DISH |th_handl_it |th_hour |th_hour_for
|th_hous_befor |th_kiddy |th_lot_till |th_meal_back |th_middl |th_moment_N:core |th_pan_handl
|th_roll_in |th_roll_prov |th_sear_this |th_shop |th_shop_Nduration |th_stor_$ |th_stor_back
|th_tabl_Nduration |th_zero |than_i_told |than_they |than_they_said |that_last_bit |their_P
|their_at_N:few |them_down_with |them_i_want |them_on |them_walk |themselv_so |ther_a_set |ther_now
|they_will_reach |this_can |this_crowd |this_drawer |this_drawer_or |this_work |this_work_$
|this_year_it |thos_and |throat_swell |through_th_door |through_th_plan |through_that_is |ti_it_already
|tick_Nduration |till_w |tim_th_DISH |timer_i |to_DISH_$ |to_N:core_in |to_U_in |to_a_block
|to_b_N:few |to_b_N:some |to_b_at |to_b_parchment |to_bother |to_bother_with |to_check_th |to_giv_m
|to_go_alongsid |to_hav_thes |to_help_with |to_know |to_li_down |to_mak_it |to_nip_out |to_nut_and
|to_plan |to_plan_$ |to_rest_it |to_th_boil |to_th_stor |to_yank |to_yank_it |today_her |today_her_nam
|told_you |too_full |too_lat |took_out_already |top_and |touch_it_if |traffic_another |traffic_another_Nduration
|trick_to_peel |trick_with |trust_th_dial |ty_it_is |under_th_THING |up_as_w |up_honestly |up_i_am
|up_if |up_in_flam |up_to_Ngas-mark |up_what |us_N:oven |us_and |us_begin_again |us_hav_DISH
|us_in |us_instead |us_instead_of |us_now |us_skip_that |us_this |vegetarian_$ |vegetarian_$_$
|w_ar_bang |w_ar_say |w_los |w_los_th |w_panick |w_panick_and |w_up |w_up_to |want_a_bit |want_her_well
|want_his_rar |want_it |want_it_medium |want_to_b |want_to_know |warm_now |warm_th_plat |was_hot
|was_hot_it |was_mean |was_not_meant |was_on_N:core |way_$ |way_$_$ |way_past_well |way_sorry
|way_sorry_th |well_they |well_they_ar |went_on_th |wet_floor |when_it_THING |when_that |when_that_roast
|whil_i_fetch |who_do_not |whol_U |whol_U_is |whol_cook |whol_gang |whol_gang_has |whol_th_has
|whol_tim_$ |will_hav_th |will_i_n |will_not_stop |will_reach |will_reach_Nduration |win_DISH_with
|win_P_drank |with_THING_Nduration |with_a_drink |with_it_and |with_it_so |with_salt_it |with_th_roast
|with_your_list |without |work_in |would_lik_to |year_instead |year_it |yell_when |yell_when_it
|you_add |you_add_that |you_can_manag |you_cut_m |you_in_N:some |you_mind_drop |you_plan |you_plan_on
|you_se |you_tim
-7 #before2 @108.4| @121.1| @130| @137.2| @137| @13| @21.4| @24.8| @32.12| @32.5| @38.1| @39.2|
@4.15| @44.2| @45.6| @47| @49.3| @5.7| @54.6| @76| @79| @90.5| DISH_DISH_went| DISH_DISH|i
DISH_and|i DISH_and|they DISH_ar_boil| DISH_ar|in DISH_ar|out DISH_cream_as| DISH_early_and|
DISH_hit| DISH_hit|th DISH_in_now| DISH_in|th DISH_is_way| DISH_is_went| DISH_is|lumpy DISH_is|on
DISH_is|ready DISH_is|went DISH_it|want DISH_i|mean DISH_no_i| DISH_n|longer DISH_on_to| DISH_or_DISH|
DISH_our| DISH_out_this| DISH_should|i DISH_so_count| DISH_so_w| DISH_top_and| DISH_to|U DISH_went_into|
DISH_yes| DISH|DISH_ar DISH|early DISH|early_and DISH|hav_not DISH|in_this DISH|miracl DISH|miracl_happen
DISH|my_guest DISH|on_$ DISH|scrub DISH|to_U N:core_and_had| N:core_and_how| N:core_and_what|
N:core_and|then N:core_com| N:core_from| N:core_from|th N:core_what|do N:core_when|you N:core_whil|rest
N:core|at N:few_and|i N:few_and|th N:few_cook| N:few_cook|now N:few_is|when N:few_i|am N:few_of|them
N:few_person_will| N:few_person|has N:few_piec|rib N:few_show| N:few_show|up N:few_so|far N:few_th|lad
N:few_walk| N:few_walk|in N:few|THING_of N:few|U N:few|bon_and N:few|instead_$ N:few|mor_now
N:few|mor_sid N:few|person_has N:few|piec_rib N:few|sharp_U N:few|they N:few|tonight_$ N:oven_lik_Nduration|
N:oven|about N:oven|about_Nduration N:oven|for_th N:oven|so N:some_THING| N:some_lat_with|
N:some_lat|with N:some_mor| N:some_mor|befor N:some|month_$ Nclock_and_what| Nclock_and|i Nclock_it|was
Nclock_sam_as| Ndate_Nclock_sam| Ndegrees:core_is|what Ndegrees:some_cooler| Ndegrees:some_cooler|than
Ndegrees:some|under_what Nduration_ago_sorry| Nduration_ar|up Nduration_behind_in| Nduration_now_i|
Nduration_n| Nduration_n|to Nduration_on_at| Nduration_on|for Nduration_set_a| Nduration_tell|m
Nduration_that_is| Nduration_then_tell| Nduration_timer_for| Nduration_w|ar Nduration|ago_ther
Nduration|and_it Nduration|and_th Nduration|befor_$ Nduration|behind_already Nduration|behind_in
Nduration|lat_get Nduration|stop Nduration|stop_th Nduration|walk Nweight_forerib_N:few| Nweight|bon
Nweight|bon_in Nweight|topsid_for P_ar|eat P_eat_with| P_eat|by P_from_th| P_has_it| P_has|fallen
P_in| P_is_pur| P_is_with| P_is|a P_is|bring P_is|carry P_is|com P_is|go P_is|halal P_is|help
P_is|pur P_is|sat P_is|starv P_set|this P_sh_do| P_so|N:few P_turn_th| P_want|it P_will|b P|Nduration_top
P|has_got P|is_P P|is_a P|is_help P|is_vegan P|say_it P|to_mak P|w_ar P|want_it P|want_to P|will_carv
THING_DISH_for| THING_and_N:few| THING_a|leg THING_behav| THING_behav|itself THING_cam| THING_cam|out
THING_caught|fir THING_could| THING_could|i THING_gaug_must| THING_get| THING_get|to THING_has|gon
THING_in_a| THING_in|a THING_is_full| THING_is|alway THING_is|broken THING_it| THING_leg|Nweight
THING_mak|yusuf THING_of|THING THING_on_a| THING_oven_and| THING_over| THING_so|wer THING_to_th|
THING_went_straight| THING_went|into THING_what_am| THING_when|it THING_would|you THING|is_stay
THING|now THING|or THING|th_lad THING|tonight_$ THING|went_into U_DISH_ar| U_and_it| U_and_onc|
U_and|top U_can|not U_com_let| U_for|m U_holler_when| U_how_many| U_how|many U_is|rock U_my_tail|
U_my|tail U_not_all| U_of|her U_oven|is U_theo_is| U_th| U_who|is U|of_fahrenheit U|today U|today_$
^_DISH_hit| ^_DISH_or| ^_DISH_went| ^_DISH|butter ^_N:core_i| ^_N:few_and| ^_N:oven_on| ^_N:oven|on
^_Ndate| ^_Nduration_i| ^_Nduration|ago ^_Nduration|lat ^_THING_has| ^_THING_i| ^_THING|has
^_THING|slip ^_^_Ndate| ^_^_alert| ^_^_boil| ^_^_bum| ^_^_carv| ^_^_fus| ^_^_ic| ^_^_in| ^_^_kettl|
^_^_ok| ^_^_pick| ^_^_pok| ^_^_prim| ^_^_sesam| ^_^_sho| ^_^_straight| ^_^_warn| ^_add_a| ^_alert|
^_alex_can| ^_at|th ^_a|N:few ^_back|in ^_bin|th ^_boil| ^_boil|water ^_bump_it| ^_bum| ^_bum|on
^_burnt|my ^_carv| ^_chang|to ^_could|dinner ^_crept_up| ^_cut|into ^_diall|back ^_dinner|at
^_dinner|in ^_dinner|is ^_don_all| ^_doorbell_they| ^_do|it ^_do|th ^_drop|it ^_forget|about
^_for|th ^_fus| ^_fus|has ^_guest|will ^_half_of| ^_heat_th| ^_hold_dinner| ^_how|is ^_i_go|
^_i_had| ^_i_switch| ^_i_took| ^_ic| ^_ic|water ^_if|i ^_in| ^_is|that ^_is|ther ^_it|is ^_it|went
^_i|burn ^_i|said ^_i|was ^_i|will ^_jess|is ^_kettl| ^_kettl|is ^_knock|that ^_leav_th| ^_left|end
^_let|it ^_let|us ^_lower|it ^_my_in| ^_my|lot ^_no_n| ^_nobody_told| ^_not_a| ^_not|finish
^_ok| ^_oven_has| ^_oven|is ^_pick| ^_plus_U| ^_pok| ^_pok|m ^_pop|th ^_prim| ^_prim|rib ^_priya_can|
^_priya_is| ^_push_th| ^_put|a ^_scrap|th ^_sesam| ^_sesam|allergy ^_set|m ^_sh_has| ^_sho_off|
^_shov|dinner ^_show|m ^_sho| ^_sho|off ^_skip|this ^_so_w| ^_start_a| ^_start|th ^_straight|
^_straight|from ^_tak|a ^_th_fat| ^_th_leave-in| ^_th_littl| ^_th|bon ^_th|bus ^_th|dog ^_th|gang
^_th|stov ^_th|train ^_took_it| ^_took|th ^_train_is| ^_trim_th| ^_trim|th ^_turn|th ^_us_th|
^_w_hit| ^_w_must| ^_w_tak| ^_wak_m| ^_walk|th ^_warn| ^_warn|m ^_wer|Nduration ^_what|is ^_what|tim
^_wher|do ^_why|ar ^_why|is ^_with|DISH ^_w|n ^_w|will ^_yes_do| ^_yes_it| a_Nweight|rib a_Nweight|topsid
a_boneless_THING| a_crack_rib| a_crack|rib a_drop_of| a_good|reason a_helper|from a_leg| a_leg|of
a_sec_P| a_shout_when| a_topsid_this| a_trick| a_trick|to a_yell_when| actual_U_and| actual|U
actual|U_and add_th|green adult_and|N:few after_go_up| after_th|first after|all_$ again_and|it
again_from_th| again_from|th again|i ago_it|was ago_sorry| alarm_for|Ndegrees:core alert|for
alert|for_Ndegrees:core all_N:few_of| all_of|us all_that_faff| all_th|timer allergic_to|DISH
along|fin along|fin_or alon| alon|for alon|for_Nduration already_ti| already_ti|with alway|
alway|run_N:some am_THING_a| am_U_my| am_gon| am_gon|for am_i_do| am_i|meant am_i|miss am_i|on
am_lat_with| am_miss_th| am_miss|th am_off_out| am_out| am_out|for am_out|till am_put| am_tak|it
amaz| am|hav_a am|i_pay am|i_suppos am|never_go am|on am|out am|out_for am|out_till am|run_a
am|slow am|slow_today am|starv am|stay am|stay_put am|way am|way_behind an_alarm|for an_alert|
an_alert|for and_DISH_cream| and_DISH|went and_THING| and_eat|at and_got_th| and_go|for and_had|
and_had|th and_h|is and_it_will| and_left|what and_let_m| and_let|m and_nobody|els and_onc|again
and_ounc| and_ounc|for and_oven_is| and_they|ar and_th|U and_th|other and_th|roll and_undo|that
and_what|should and_you|ar and|DISH_cream and|deb and|deb_ar and|everyth_in and|h_got and|oil
and|on and|slow and|tail and|then_noth and|top another|N:few_has another|Nduration_befor anyth_that_had|
anyth|yet any|THING_$ an|extra_N:few an|oil ar_N:few_cook| ar_N:some_lat| ar_Nduration|behind
ar_THING|they ar_U_and| ar_early_they| ar_go_too| ar_her|all ar_in|i ar_miss_th| ar_not_in|
ar_scrub_and| ar_still|squeaky ar_want_a| ar_want| arm_on_th| arriv_Nduration|later ar|N:few_cook
ar|N:some_lat ar|a_bit ar|at ar|boil_away ar|down_N:few ar|early_they ar|her_th ar|in_i ar|mak_DISH
ar|not_brown ar|not_do ar|park ar|still_raw ar|w_$ ar|w_get ar|you ask_how|pink as|alway as|old
as|old_boot as|per as|soon as|soon_as at_N:core|th at_Nclock_THING| at_Nclock|U at_Ngas-mark_and|
at_th|door at|N:oven_i at|Nclock_then at|Ndegrees:core_now at|Ndegrees:oven_$ at|a_U at|again
at|it_$ at|onc at|th_start at|th_very availabl_in_our| away_to|th away|to_th a|Nweight_leg
a|bath_shout a|beauty a|bit_cold a|bit_lat a|bit_off a|cut_board a|fever a|few_minut a|glass_that
a|miss_$ a|nap_$ a|nic_bit a|no_for a|number a|r_win a|sec_would a|second_$ a|shower a|tabl
a|whil b_at|N:few b_by_th| b_hav_dinner| b_hav|DISH b_quiet_for| b_quiet|for b_when| b_when|i
back_a|bit back_in_a| back|in_$ back|on_$ bad_N:few_that| becom|butter becom|butter_what becom|soft
becom|soft_still been_on_for| been_put_in| been_vot| been_vot|down been|off been|put_in been|stood
befor_it_go| befor|th behav|itself behav|itself_$ behind_in|her behind_th|clock behind|P ben_can_not|
birthday_girl| birthday_girl|want bit_lat_in| bl_a| bl_a|lot blad|tenderis_by blast|it blast|it_at
bleed_and_it| blew_actual| blew_actual|U bl|a bl|a_lot bob_is_your| bon_skip| boneless_THING|
boneless_THING|THING bon|skip bother_with_th| bother|with_th bottom_oven|is bottom_shelf| bottom|of
bottom|shelf_it bought_a|loaf br_it|back br_my|P breath_someth_is| bring_his_P| bring| bring|his_new
brown|it_off bump_it|up bump|it butter_go_in| butter_is_out| butter_is|mad button_by| button_by|accident
buy|DISH buy|DISH_too buy|THING by_th|stov by|Ndegrees:some_$ by|Nduration_and by|m_again b|N:few_count
b|N:few_sit b|do_$ b|mak_th b|strain b|strain_th b|worri call_from| call_m_in| call_m_onc|
call_m|when call|m_in cam_out_Nduration| cam_out|of cam|out_Nduration can_i|ask can_i|say can_mak|
can_mak|with can_not_go| can_not_put| can_not|breath can_you|do can_you|shov cancel_that| cancel|th_Nduration
can|w_skip car_pull| cat_got_th| cat_has|had catch|m catch|m_up caught_fir_tell| caught| celsius_i_hit|
celsius_i|hit chair_and_th| check_Nduration_ago| check_again_and| check_it_and| check|th_THING
chop_an| chop_an|oil chuck_an| chuck_an|extra clear_all_th| clear_th| clear_th|timer cold|by
collect|P collect|P_back com_along| com_along|fin com_out|it company_is_go| com|back_$ com|it_is
convert_th| convert_th|lot cook_right| cook_right|through cooker_is_Ndegrees:some| cooker_is|Ndegrees:some
cook|now cooler|than cooler|than_it cor_get_to| cor_get| cor_get|to correction|N:core correction|N:core_$
cor|has cor|has_reach could_dinner_b| could_i|swap could_you|tim could|i_mak could|i_swap count|him
count|him_out cover_it_with| crack_rib| crack_rib|of crack|rib crack|rib_of crank_it|up cream_as|
cream_as|well cream_is_becom| cream_is_way| cream_is|becom cream_is|way cut_into|it cut_my|finger
cut_th|trim cut|myself_quit da_will_not| dangerous|to day| delay_dinner|by delay|add delay|add_Nduration
did|th_THING dinner_is|at dinner_n| dinner_n|to dinner_they_hav| dinner_up|by dinner|for_Nduration
dinner|up_by do_N:few| do_everyth|go do_it_hav| do_not_exist| do_not|bother do_not|exist do_not|open
do_tell_th| do_th|high do_th|sear don_for|him don_i|know don_keep| don_keep|it door|for_Nduration
down_i_can| down_is_N:few| down_th_shop| down_to|after do|about_it do|not_exist do|that_$ dress_giv|
dress_giv|m drop_of| drop_that|alarm drop_th|oven drop|it_$ drop|that_alarm early_and_eat|
early_and|eat early_sinc| early_sinc|th early_they| early_they|ar eat_Nduration|later eat_with|
eat_with|us edg| element_blew_actual| enough_so| enough_so|that everyth_is|happen everyth_tak_longer|
everyth_tak|longer everyth|go_in everyth|slip everyth|slip_by every|tim_i exist|any exist|any_blender
extra_for_th| extra_for|th extra_wash| extra_wash|up faff|about_it fahrenheit_giv_it| family_will|
family_will|arriv fan_off_so| fan|off_so far|along_ar fat_is|on fat|cap_down fat|is_on fell|out_$
fewer_los_th| fin_or_som| finish_th|trim fin|for_my fir_tell| fir_tell|quickly first_N:few_walk|
first_N:few| first_guest_ar| flat|tyr_Nduration flight_is| for_N:few_do| for_all_of| for_a|few
for_th|crust forerib_N:few| forerib_N:few|bon forget_th_DISH| forgot_to|buy forgot_to|mak forgot|to_mak
for|Ndegrees:core_on for|Nduration_N:few for|Nduration_walk for|THING_$ for|a_final for|a_sec
for|a_second for|a_sid for|my for|now for|th_whol for|that_$ for|to for|us_medium french|it
fresh_out| fresh_out|of from_th_station| from_th|freezer from_th|stov from|scratch_$ from|th_begin
from|th_freezer from|th_fridg front_room_with| front|room front|room_with f|by_N:few f|th gang|is_all
gaug_must| gaug_must|b get_dress_giv| get_ic_back| get_on_with| get|her_Nduration get|ic_back
get|past girl_want_supper| girl|want girl|want_supper giv_it|m giv|m_celsius giv|us_a glov_is|on
glov|is_burn go_nic_with| go_nic| go_nic|with go_off|and go_to_walk| go_too| go_too|fast go_to|go
go_up_in| go_upstair|for go_up|for go_up|in god| gon_Nduration_n| gon_to|extra gon_up|to gon|cold_$
gon|everywher_$ gon|for_Nduration gon|up_in good_reason_w| good|reason good|reason_w got_N:core_in|
got_N:few|THING got_a_crack| got_an_extra| got_an| got_a|nic got_it_sat| got_someth| got_someth|in
got_th|butter got_tim|for got|a_leave-in got|an_extra got|burn_pretty got|her_Nduration got|in_early
got|tim go|ahead_$ go|down_a go|near go|near_shellfish go|off_$ go|up_to grab_a| grab_a|glass
grab_th|handl grab_th|pan gram| green_DISH_nobody| grow_in_th| guest_is|vegetarian guest| guest|hav_reach
guid_m_th| h_is|at h_is|on h_is|veggi h_want|it h_will|do had_to_yank| had_to|yank had|a_fac
had|th_flu half_of|them hall|right hall|right_DISH has_been|off has_been|sat has_been|stood
has_com_up| has_com| has_got_someth| has_it|with has_not|budg has_to_DISH| has|a_nut has|been_sat
has|been_taken has|been_turn has|fallen_down has|gon_ston has|left has|not_budg hav_already_ti|
hav_a|pan hav_been_vot| hav_burnt_my| hav_dinner| hav_dinner|at hav_finish_th| hav_finish|
hav_got|it hav_not|don hav_not|kept hav_not|mad hav_no|U hav_overshot| hav_overshot|it hav_put|on
hav_salt|it hav_to_walk| hav_to|wait hav_to|walk hav_whack| hav_whack|it hav|a_fan hav|a_full
hav|a_nap hav|a_pan hav|a_r hav|all_sat hav|another hav|arriv_so hav|bought hav|chang_my hav|cut_my
hav|football hav|football_after hav|gon_and hav|got_no hav|had hav|it_medium hav|left_U hav|lost_Nduration
hav|plenty_without hav|pull_into hav|put_on hav|rung_they hav|sat hav|sat_them hav|slip hav|thes
hav|thes_DISH hear_is_not| hear|myself hear|myself_think heat_all_th| heat_at| heat_at|th held_up_i|
helper|from helper|from_Nclock her_Nduration|ago her_P_is| her_P|is her_it_do| her_lip_ar|
her|THING her|all her|all_N:few high_heat_at| his_well_don| his|P_so his|foot his|throat hit_N:core_it|
hit_N:core_would| hit|N:core_i hit|th_button hold_dinner_by| hold_th|THING holler_when|that
holler_when|w holler|when_it hot_THING|all hot_to_pull| hot|THING hot|this_tim hous_miss_th|
how_pink_it| how|do_this how|many_mor how|much_salt how|pink_it hurt_h| hurt_h|pour h|pour
h|pour_th i_U_it| i_am_gon| i_am_out| i_am_put| i_am|on i_am|out i_am|slow i_am|starv i_am|stay
i_am|way i_ask|you i_bump_it| i_b|worri i_com|back i_do|about i_got|burn i_got|th i_got|tim
i_go|to i_hav_kept| i_hav_whack| i_hav|chang i_hav|gon i_hav|sat i_hav|slip i_hav|to i_miss_for|
i_must_away| i_must|away i_must|go i_never_should| i_never|should i_n|a i_n|from i_n|mor i_press_th|
i_press|th i_put|on i_refreez_th| i_said_N:some| i_scald_my| i_scald| i_scald|my i_season_th|
i_want_degre| i_was| i_was|mean i_would_brown| ic_back| ic_back|in if|i_us if|you_n ignor_my_last|
in_DISH| in_U_w| in_a_good| in_celsius_and| in_his|throat in_it_for| in_law_pull| in_my|family
in_my|sho in_now|do in_our|market in_oven_sinc| in_th_front| in_this|drawer in_th|thick in_with_th|
inform|m instead_of|dry instead|of_DISH into_my| into_my|palm into_th|water into|it into|it_and
into|th_water in|Nduration_to in|her_chair in|law_do is_DISH|in is_N:few_of| is_N:few_piec|
is_N:few|piec is_N:few|sharp is_Ndate|lunch is_Ndegrees:some_cooler| is_Ndegrees:some|under
is_Nduration_i| is_Nduration|lat is_U_with| is_ask_how| is_a|U is_a|beauty is_a|lot is_a|proper
is_becom|butter is_cancell| is_chop_an| is_com| is_delay|add is_di| is_di|on is_don_keep| is_extra_wash|
is_fir| is_fir|in is_for|th is_hav| is_hurt_h| is_lat_so| is_my|roommat is_not_becom| is_not_th|
is_not|now is_no|THING is_on_for| is_on|it is_out_it| is_pink_all| is_pur|vegetarian is_roll_and|
is_sleep|in is_starv_let| is_tell| is_tell|m is_ther| is_thin_as| is_th|U is_th|go is_to|b
is_up|to is_veggi_sinc| is_went| is_went|in is_with|her is|Ndegrees:some_under is|U_ther is|a_lot
is|a_school is|a_tabl is|after_reach is|alway_N:few is|alway_cold is|at is|at_N:few is|at_th
is|becom_butter is|bring_her is|broken_so is|brought is|brought_mat is|cancell_they is|carry
is|carry_so is|chop_an is|clos_th is|cover_with is|delay_Nduration is|don_keep is|fre_from
is|full_of is|go_in is|halal is|happen_at is|left_to is|lot_hav is|lumpy is|now_at is|off_THING
is|off_now is|on_N:core is|on_Ngas-mark is|on_at is|on_th is|on_wash is|pur_vegetarian is|ring_$
is|rock is|rock_up is|sat_on is|season_$ is|show_N:core is|show_Ndegrees:core is|sleep is|starv
is|still_raw is|th_target is|up is|vegetarian_i is|veggi_sinc is|went is|went_in is|work_again
it_alon|for it_at|th it_b_when| it_bl_a| it_bl|a it_cam_out| it_com_along| it_dangerous|to
it_from|th it_get| it_has|been it_hav| it_hav|to it_hot|this it_is_Ndate| it_is_sleep| it_is|up
it_on|mor it_right|at it_run_a| it_slid| it_slid|off it_so_i| it_temperatur| it_temperatur|wis
it_to|Nclock it_up_right| it_with_THING| it_with_th| item_i_hav| it|Nduration_earlier it|at_N:some
it|get_to it|go_in it|in_a it|is_in it|is_on it|m it|m_in it|n it|out_$ it|out_to it|rest it|say_N:core
it|say_N:some it|till_N:core it|to_Ngas-mark it|up_$ it|up_to it|want_Nduration it|was_$ it|was_N:core
it|with_everyth it|with_you it|yet_$ i|already_hav i|am_put i|am_read i|am_stay i|am_yet i|cover_it
i|do_about i|fetch_P i|got_to i|had_th i|hav_com i|hav_fallen i|meant_to i|miss_for i|n_for
i|on i|pull_at i|said_N:some i|slic_it i|swap_th i|think_it i|told i|told_you i|want_P i|want_to
i|will_DISH i|would_P jaysus_th| jaysus_th|pan jo_will|handl joint|is_still keep_up_n| keep|it_warm
kept_pac_with| kept|at_Ndegrees:oven kept|pac kept|pac_with kettl|is kettl|is_on kill|th_THING
know_when_it| lack_a| lack_a|cut lack|a lack|a_cut lad_hav|football lad_is|brought lad_is|off
last|bit last|messag last|messag_$ lat_in| lat_in|her lat_so_everyth| lat_so|everyth later_than|plan
later_than|they lat|Nduration law_do_not| law_grab_a| law_h_want| law_pull| law_pull|up learn|about
learn|about_my leav_it|with leave-in|on_is leave-in|say leave-in|say_N:core leav|it_with left_on_th|
left_th|door leftover_ar|away left|what left|what_do leg|Nweight leo_has_a| leo_has| leo_has|a
leo| let|us_know li_down|for light_has| light_has|gon light_on_th| light|di_$ lik_U| lik_a|U
lik_it|on lik|it_$ lik|to lily|has lily|has_to list_th|patel list|at list|at_all lit_th_oven|
littl_light_has| littl|light long_till|i longer_than|you longer|for longer|than_you long|has_it
long|is_remain look_at_N:core| lost|Nduration_to lot_ar_go| lot_hav|arriv lot|till lot|till_i
low_and|slow lower_it|till low| m_Ndegrees:core_is| m_a_yell| m_and|N:few m_and|my m_in_i|
m_in|N:some m_th|method m_to_turn| m_twic| m_twic|as m_up_when| mak|it_Nduration mak|with mak|with_ghe
mak|yusuf mak|yusuf_is man_i_am| many_DISH_do| meal|back meal|back_by meant| meant|for meant|for_you
medium_well|they mik_and| mik_and|deb mind_drop_that| mind_drop| mind_drop|that miracl|happen_$
miss_for|this miss_th|THING miss_th|cousin miss_th|r missus_will_not| miss|th_r mistak| mor_th_to|
mor|befor mor|befor_w much_THING_do| much_longer|for much|DISH_$ much|THING_do much|longer_$
must_away| must_away|for must|away must|away_for must|b_ly must|go must|go_out my_P|do my_P|want
my_cream_is| my_family_will| my_last| my_last|messag my_oven_THING| my_oven_this| my_palm_try|
my_tail| my_tail|Nduration my_thumb_is| my|P_tonight my|family_remov my|god_ther my|lot my|roommat_dev
my|tail my|tail_Nduration my|thumb_is my|thumb_open m|a_shout m|about m|about_th m|in_N:few
m|in_i m|know_at m|know_onc m|know_when m|now_$ m|onc_it m|th_simpl m|up_in n_not_call| n_to|buy
n_to|check ne'er_a|THING near_enough_so| never_did|th never_got|THING never_should| never_should|hav
never|did_th never|should never|should_hav new_THING| new_th_joint| next_door|for next|hour_$
next|i_am nic_with| nic_with|this nicely| nic|with nic|with_this no_THING_so| no_THING| no_U|of
no_i_did| no_sear|N:few no_they|ar no_when| no_when|i nobody|els nobody|her_eat nobody|is_eat
nobody|lik_it nobody|told nobody|told_m not_DISH|it not_N:some| not_all_of| not_all| not_all|of
not_becom| not_becom|soft not_bother|ty not_b|bother not_b|strain not_call| not_call|m not_exist|
not_exist|any not_go|near not_hav_th| not_hear|myself not_kept|pac not_meant| not_meant|for
not_peel_anyth| not_requir| not_th|THING not_th|hour not_turn|on not_w_hav| not|b_by not|b_in
not|b_right not|breath not|budg not|budg_for not|exist not|exist_any not|got_to not|great_U
not|hav_$ not|hav_th not|heat not|kept not|mean_to not|n_to not|open not|open_th not|ris_yet
not|se_again not|tak_THING not|touch_THING not|turn not|want_th now_i_must| now_i|will now_what|to
now|do_not no|THING_no no|THING_to no|i no|i_can no|w nudg_th_whol| nut_ar_a| n|N:few_$ n|to
n|to_catch n|to_collect of_U|today of_m_i| of_thos| of_th|fridg of_what_you| off_and|ti off_out|for
off_th_list| off_to_collect| off_to|collect off_with_th| off|sinc_Nduration off|to_collect
of|DISH_th of|N:few_$ of|U_today of|cream of|dry of|dry_THING of|her_tablet of|play of|th_even
of|th_water of|them_can of|them_hav of|ty of|ty_it of|us_in ok_P_is| ok_THING_is| ok_for_th|
ok_turn_it| ok|THING ok|in_ther old_at_th| old|money_what on_N:oven| on_at|th on_a|low on_for_a|
on_his|foot on_my|arm on_th_and| on_th_second| on_th|board on_th|dial on_th|left on_th|sid
on_to|reduc onc|again onc|again_$ onc|it_pass on|for_Nduration on|for_a on|seat_let on|then_$
open_and|it or_som| or_som|delay order_of_U| order_of|U or|not_$ ounc| ounc|for ounc|for_m
our|market out_N:core_from| out_Nduration_i| out_and|sh out_at|N:some out_back_in| out_every|
out_every|tim out_for|a out_of|THING out_of|butter out_so_it| out_this| out_this|year out|Nduration
out|till_Nclock oven_go| oven_go|up oven_has|been oven_is_di| oven_is|back oven_is|now oven_is|work
oven_on_whil| oven_pack|up oven_sinc|Nclock oven_this|on oven|Ngas-mark oven|b_$ oven|i oven|now
own_a|fat own|a_leave-in pac_with| pac_with|your pack|in_$ palm_try| palm_try|to pan_gon| pan_gon|up
paus_a| paus_a|sec peel_DISH| peel_anyth| peel_anyth|yet person|has person|has_to per|THING_$
pet_is|on phon_they| phon_they|ar pick|up_th piec_rib_with| piec|rib piec|rib_with pink_all_th|
pink_it|will pink_will|it plac|of_THING plan_got| plan_got|in pok_m| pok_m|about pound_and_ounc|
pour_out_every| power|is_out press_it_with| press_th|wrong press|it press|it_with prim|rib_Nweight
priya_is_lactos| priya_is|her priya_is|lactos pull_it_temperatur| pull_th|DISH pull|into pull|into_th
pull|it_temperatur pur_vegetarian_no| pur|vegetarian pur|vegetarian_no push_th_meal| push_th|meal
put_already_th| put_in|her put_it|on put_on|th put_th|whol put|it put|it_on quantity_of|butter
quantity|of_butter quick_updat_i| quickly_what_to| quiet_for| quiet_for|a quiet|for quiet|for_a
rar_fin|for rather_than|butter read_it| read_it|jump ready_it|has read| reason_for_th| reason|for
reckon_w_hav| refreez_th| refreez_th|leftover requir| restaurant| rib_roast|N:few rid|of_th
right_U_th| right|i_am right|through_$ roast_DISH_has| roast_fell| roast_fell|on roast_has|been
roast_is|at roast|N:few_bon roast|cam_out roll_and|ti roll_did_not| roll|ar_go room_with|a
run_that_by| run|Nduration run|a_good run|at_N:oven saf_to|eat saf|to_eat said_N:core_Nduration|
said_wrong_it| said|N:core_Nduration said|th saignant_is| saignant_is|for salt|it_all sam_as|alway
sam_is|on sam|is_go sam|is_on sat_on|a say_it_on| say_they|ar say_to|you scrub_and|oil sear_at|th
sear_it_right| sear|N:few season_th|roast sec_P| sec_P|Nduration second|shelf second|shelf_from
set_Nduration_for| set_an_alarm| set_an_alert| set_th|tabl set_to_N:oven| set|it_to set|this_up
se|again_$ se|th sh_is|cover sh_is|on shellfish|allergy_for shift_everyth| shift_everyth|by
sho_off_in| sho_off|in shop_back|in shop|for_Nduration should|hav_skip should|i_pull shout_if|you
show_up_so| shower| show|up_so sho|off_in sh|do_not sh|is_hav sinc|lent sinc|th_smell singl_DISH|in
sit_at|Ndegrees:core sit_in|a sit|at_Ndegrees:core sit|at_th skip_th|trim skip|this_$ slow_then_blast|
slow_then|blast slow|today_Nduration small_oven_set| smok_com_from| smok_is|pour snow_is|clos
so_N:some_mor| so_P_will| so_count|him so_everyth| so_everyth|slip so_tak|that so_what|is so_w|panick
som_U_i| someth_is|stuck someth|in_her someth|is_burn som|delay som|delay_is so|everyth so|everyth_slip
so|far_bad so|i so|it_r so|much_$ so|wer so|wer_without speak_to|m splash_on_my| stand_it_on|
start_from|th start_to|finish starv_br_it| starv_let| starv_let|us stat| stat|of stat|of_play
step_br_it| step_my_P| still|crunchy still|moo_$ still|raw_in still|squeaky still|stuck still|to
still|to_com ston|cold_$ stop_th_Nduration| stop_th_lot| stor|back stor|back_in str_in_th|
straight_from| straight_from|th straight_to|THING straight|into straight|into_my straight|to_THING
str|N:few str|N:few_knot stuck_in_his| swell_up_after| switch_th|fan tabl|god tabl|god_bless
tail|Nduration tail|Nduration_behind tak_it|to tak_m_twic| tak_that|last taken_th_fat| taken_their|
taken_their|seat taken_th|fat taken|th_THING tak|a_call tak|it_medium tak|that_into tell_P|
tell_they_will| tell_th|follow tell_you|about tell|quickly tell|quickly_what tell|you_about
temperatur_should_th| temperatur_th_whol| temperatur|is_up temperatur|of_THING temperatur|should
temperatur|should_th temperatur|wis_$ test_cam_out| th_DISH_as| th_DISH|in th_DISH|miracl th_P_has|
th_P|in th_THING_behav| th_THING_cam| th_THING_get| th_THING|what th_birthday_girl| th_bon_skip|
th_bon|skip th_bottom|of th_button_by| th_centr| th_cor_get| th_dinner_if| th_dinner| th_fat|
th_flight|is th_front| th_front|room th_gang| th_gang|is th_hall|right th_heat_and| th_joint_is|
th_list_th| th_littl|light th_lot|till th_meal|back th_method| th_method|for th_oven_go| th_oven_up|
th_pan_gon| th_phon_is| th_phon_they| th_plan_got| th_plat| th_reason|for th_roast_fell| th_roast_has|
th_roast|DISH th_second|shelf th_stat| th_stat|of th_stor|back th_tabl|god th_top| th_to|go
th_whol|hous th_whol|street than|butter than|they than|they_said than|you than|you_said that_by|
that_by|m that_faff| that_faff|about that_had| that_had|a that_roast_is| that_roast|is that_th|
that|again_$ that|alarm_w that|i_do their|seat them|DISH them|THING then_blast| then_blast|it
then_tell| then_tell|m then|blast then|blast_it then|it then|it_stuck theo_is| theo_is|fre
ther_Nduration|stop ther_a_good| ther_a_trick| ther_h_will| ther_has|got ther_is_fir| ther_is_go|
ther_is|go ther_us_to| they_com_Nduration| they_hav|left they_hav|pull they_hav|rung they_text|Nduration
they_will|reach they|ar_Nduration they|ar_go they|ar_her they|ar_in they|ar_out they|brought
they|hav_all they|hav_arriv they|hav_com they|want_drink thin_as| think_i|will this_cooker_is|
this_is_too| this_oven_alway| this_read_it| this_tim_ther| this|drawer this|drawer_or this|tim_$
this|work this|work_$ this|year_and this|year_instead thos_wireless_THING| thought| thumb_is|
thumb_is|bleed th|DISH_miracl th|DISH_too th|DISH_yes th|P_n th|THING_$ th|THING_and th|THING_gav
th|THING_th th|THING_till th|b_drink th|begin th|best_way th|butter_is th|butter_so th|butter_step
th|button th|cheap th|cheap_THING th|choic th|choic_again th|clock_for th|clock_noth th|counter_smell
th|crowd_is th|dial_THING th|dog_THING th|dog_back th|dog_had th|dog_has th|even th|family_has
th|fan_$ th|fan_off th|first_bit th|follow th|follow_step th|gas_has th|go_$ th|go_with th|handl
th|handl_it th|high_heat th|hot_oven th|hour th|hour_for th|joint_went th|kettl_on th|leftover_$
th|lot_to th|lower_third th|meal_back th|needl_is th|on_with th|pan_is th|peopl th|plac th|power_has
th|roast_get th|roast_it th|sear_this th|small_oven th|soup_$ th|stat th|stat_of th|stov_is
th|str th|tabl_Nduration th|tabl_and th|thick th|thick_end th|timer_and th|timer_it th|way
th|way_no th|whol_afternoon th|whol_plan th|whol_tim th|window_$ ti_with_th| till_i_com| till|i_can
tim_should| tim_should|i tim|Nduration tim|do_th ti|it_$ ti|with_th to_DISH_it| to_DISH|early
to_N:oven|about to_after_th| to_b_hav| to_bother_with| to_buy|DISH to_buy|THING to_b|at to_collect|P
to_do_th| to_eat| to_giv_m| to_hav|thes to_help|with to_li_down| to_mak_a| to_th|stor to_turn|it
to_yank| to_yank|it today_everyth_tak| told|you_$ tom_is_do| tom_is|lot took|th_DISH too|fast_for
too|low_$ too|salty_$ top_and|tail top_oven_is| topsid_this| topsid_this|year total| touch_early_sinc|
tough_as| tough_as|old to|N:core_tell to|N:core_whil to|THING_no to|after to|after_th to|b_DISH
to|b_N:few to|b_U to|b_parchment to|boil_for to|bother_with to|buy_THING to|church to|collect_P
to|do_now to|extra to|extra_tim to|go_alongsid to|help_with to|li to|reduc to|reduc_Nduration
to|roast_so to|th_list to|wait_$ to|yank to|yank_it train_is|cancell trick|to_peel trust|this_THING
try|to_DISH turn_out_i| turn|it_up turn|on turn|on_th turn|out_i turn|out_my turn|th_timer
under_so_tak| undo|it undo|it_$ up_U_is| up_and_left| up_i_will| up_if| up_n| up_n|to up_right|at
up_so|far up_when|it updat_i_hav| updat_i| updat_i|hav us_and|U us_go_straight| us_not_bother|
us_skip|it us| us|begin_again us|go_straight us|know_as vegetarian_no| vegetarian_no|THING
veggi_sinc| veggi_sinc|lent volunteer_for_th| vot|down w_ar|down w_br_dinner| w_hav_overshot|
w_hav|all w_lack_a| w_lack| w_lack|a w_n_another| w_took|it w_will|not wait_for|m wait_for|them
wait_on_th| wak_m|in wak_m|up wak|m_up walk| want_P_eat| want_a|bit want_degre| want_degre|c
want_it_hot| want_it_on| want_it|at want_supper_at| want_supper| want_supper|at want|her_well
want|it_on want|to_know was_not_meant| was|at_N:core was|mean was|mean_N:core was|on_th watch_th_clock|
water_on_his| way|through_$ well_look| well_look|at well_that| well|behind_her well|they well|they_ar
went_into_th| went_into|th went_on_to| went_straight|into went_up|to went|in_Nduration went|into
went|into_my went|off_so went|up wer|w_$ what_can|you what_is|left what_now| what_should|th
what_tim_should| what_you|offer whatever_you_ask| what|happen_if what|is_U what|is_left what|to
what|to_do when_Nduration_ar| when_i_tak| when_sh| when_that_roast| when_w_hit| when|Nduration
when|Nduration_is when|do_everyth when|i_say when|it_get when|that when|that_roast wher_ar_w|
which_THING_could| which|is_th whil_i|U whil_i|fetch whil|i_fetch whil|i_nip whil|rest whil|rest_$
whisht_ther_Nduration| who_is_a| who_want|to whol_gang| whol|hous whol|street_is whol|th_has
why_so| why|is_th will_arriv_Nduration| will_not_turn| will_not|se will_sear_at| will_tak_th|
will|arriv_Nduration will|b_N:few will|b_an will|b_eat will|do_without will|handl will|handl_anyth
will|not_bother will|not_hav will|not_se will|reach will|reach_Nduration with_th|butter with_th|fan
with_your_list| without_DISH|my with|DISH_and with|a_drink with|a_thumb with|everyth_$ with|her_tablet
with|th_fan with|th_prep with|th_sear with|them with|us with|us_too with|your_list wok_up|
would_b_sit| would_brown| would_brown|it would_go_nic| would_go|down would|it_b would|lik would|lik_P
would|lik_to would|you_say wrong|th_$ w|ar_N:some w|ar_go w|ar_mak w|ar_out w|ar_shy w|ar_us
w|get_to w|hav_DISH w|hav_with w|on w|panick w|panick_and yank|it yank|it_out year|and yell_when|
yell_when|it yes_do| yet|it you_ar|a you_ask|for you_can_mak| you_learn|about you_mind_drop|
you_no_when| you_run_that| you_run|that you_tell|m your_list| your_list|at you|about you|about_th
you|ar_$ you|offer you|offer_$ you|shov you|shov_it you|tim_Nduration you|understand you|understand_$
you|want_m you|what |@100 |@103 |@114.1 |@118 |@119 |@119.3 |@130 |@131.2 |@134.6 |@144.5 |@18.3
|@24.1 |@28 |@34.3 |@4.4 |@48.6 |@5.2 |@52 |@62 |DISH_anymor_$ |DISH_ar_out |DISH_i_took |DISH_lik
|DISH_miracl |DISH_miracl_happen |DISH_now |DISH_or |DISH_sh_is |DISH_solid_i |DISH_th_DISH
|DISH_to_bak |DISH_to_com |DISH_to_roast |DISH_too_lat |DISH_w_will |N:core_and_th |N:core_my_P
|N:core_would |N:core_would_you |N:few_cook |N:few_cook_now |N:few_count |N:few_count_th |N:few_fewer_$
|N:few_for |N:few_has |N:few_has_invit |N:few_i |N:few_knot |N:few_on |N:few_sit |N:few_sit_down
|N:oven_th_whol |N:some_lat_with |Nclock_U_it |Nclock_U_th |Nclock_sharp_$ |Nclock_then |Ndegrees:core_now
|Ndegrees:core_on_th |Ndegrees:few_high |Ndegrees:oven |Ndegrees:some_under_what |Nduration_DISH
|Nduration_and_what |Nduration_is_up |Nduration_later_P |Nduration_to_preheat |Nduration_walk_th
|Nweight_bon |Nweight_bon_in |Nweight_leg |Nweight_leg_of |P_P |P_back |P_back_in |P_is_N:few
|P_n |P_on_DISH |P_tonight |P_tonight_so |THING_Nduration_$ |THING_THING_THING |THING_THING_in
|THING_THING_tonight |THING_back |THING_do_instead |THING_gav |THING_gav_m |THING_hav_Ndegrees:core
|THING_no_sear |THING_pan_$ |THING_pan_and |THING_slip_$ |THING_th_lad |THING_till |THING_till_N:few
|THING_to_b |THING_to_mak |U_Nduration |U_in |U_no |U_th |U_ther_h |U_today |U_today_$ |a_U_n
|a_bit_much |a_call_for |a_cut_board |a_disaster |a_fan_assist |a_fat |a_fat_THING |a_final
|a_full_hous |a_hot |a_lovely |a_nap_$ |a_school |a_school_night |a_sec_P |a_shout_when |a_sid_$
|a_tabl_of |a_thumb |a_thumb_and |a_vegan |about_it_is |about_my |about_my_oven |after_reach
|after_reach_N:core |after_th_first |again_i_was |ago_it_said |ago_ther |ago_ther_in |ahead_of
|alarm_for |alarm_w |alarm_w_set |alight_$ |alight_$_$ |all_in |allergy_for |allergy_for_mark
|along_ar |along_ar_w |already_hav_it |alway_N:few |alway_N:few_under |alway_cold |alway_cold_by
|am_N:few_$ |am_THING_a |am_U_my |am_after_a |am_after_it |am_all_behind |am_back_$ |am_behind_$
|am_behind_th |am_drown_her |am_get_lat |am_hav_a |am_miss_THING |am_not_her |am_off_down |am_put
|am_read |am_read_N:core |am_run_lat |am_stay |am_stay_put |am_still_N:few |am_tak_it |am_yet
|am_yet_to |an_extra_pair |and_it_is |and_not |and_sh_is |any_THING_is |anyway_$ |anyway_$_$
|ar_$ |ar_$_$ |ar_N:few_for |ar_Nduration_too |ar_all_her |ar_com_than |ar_mak_DISH |ar_not_brown
|ar_shy |ar_shy_a |ar_still_THING |ar_stuck_in |ar_us |ar_us_celsius |arriv_$ |arriv_$_$ |arriv_Nduration_later
|arriv_so |arriv_so_far |as_long_as |at_N:core_is |at_N:core_now |at_N:few_th |at_N:some_so
|at_Ndegrees:core_now |at_a_U |at_now |at_that_N:core |away_to_th |b_N:few |b_N:few_of |b_N:few_sit
|b_N:some |b_U_find |b_by_th |b_drink |b_drink_in |b_f_by |b_ly |b_mak_th |b_parchment |b_parchment_paper
|back_to_lif |bag_$ |bag_$_$ |bath_shout |bath_shout_if |becom_butter |becom_butter_what |been_on_for
|been_on_th |been_taken |been_turn |been_turn_right |begin_again |behind_already |behind_her_lad
|behind_in_her |behind_so_serv |believ_it_$ |best_way |best_way_to |bit_cold |bit_cold_Ndegrees:few
|bit_lat_in |bit_off_th |blad |blad_tenderis |blast_it |blast_it_at |bless |boil_away |boil_for_th
|bon_off_and |bother_with_th |breath_$ |breath_$_$ |bring_her |broken_so |brought_mat |budg
|budg_for |budg_for_ag |burn_pretty |burn_pretty_bad |butter_is_not |butter_it_is |butter_so
|butter_so_no |butter_step |butter_what_a |buy_THING |by_N:few_sh |cancell_they |cancell_they_will
|cap_down |cap_down_a |carry_so |carry_so_tak |catch_that_$ |celsius_i_hit |cheap_THING |cheap_THING_THING
|check_th |chemo_$ |chemo_$_$ |choic_again |choic_again_$ |chop_an |chop_an_oil |clock_for_th
|clock_noth |clock_noth_U |clos_th_pass |coat_ar |coat_ar_off |collect_P |collect_P_back |com_along_$
|com_back_to |com_off |counter_smell |counter_smell_amaz |cover_it_whil |cover_with |cover_with_tinfoil
|cream_is_mad |cream_is_way |crowd_is |crowd_is_in |cut_board |cut_board_THING |cut_my_THING
|cut_off |dangerous_to_DISH |deb_ar |deb_ar_not |degre |degre_c_not |delay_is |delay_is_ther
|di_on_m |dial_THING_show |did_th_THING |do_everyth_go |do_it_matter |do_not_P |do_th_chop
|do_with_th |do_without |do_without_th |dog_THING |dog_THING_th |dog_back |dog_back_in |dog_had
|dog_had_half |dog_has |don_and |don_keep |don_keep_it |door_Nduration_$ |door_open_Nduration
|down_N:few |down_a_U |drawer_or |drawer_or_any |dry_THING |early_and_eat |early_they |early_they_ar
|easter |eat |eat_THING_$ |electricity |els_could_i |everyth_slip |everyth_slip_by |exist_any
|exist_any_blender |extra_N:few |extra_Nduration_on |fallen_down |family_has |family_has_arriv
|family_remov |far_bad |far_bad_road |fast_for |fast_for_m |fat_cap_down |fetch_P |fin_or |fin_or_som
|first_bit |first_bit_$ |floor_$ |floor_$_$ |follow_step |follow_step_$ |football_after |for_N:few
|for_Nduration_walk |for_Nduration_whil |for_a_few |for_a_final |for_a_sec |for_medium_well
|forgot_th |fre_from |fre_from_N:few |french_it_$ |fridg_$ |fridg_$_$ |fridg_at |from_Nclock_U
|furnitur |gas_has |get_ic_back |giv_m_N:some |glass_that |glass_that_brok |glov_is_on |go_alongsid
|go_alongsid_DISH |go_out_Nduration |go_to_skip |go_with_N:few |god_bless |god_bless_them |gon_Nduration_n
|gon_U_$ |gon_and_drop |gon_cold_on |gon_everywher_$ |gon_off_$ |got_my_P |got_to_that |great_U
|great_U_and |guest_cam_U |guest_com_Nduration |guest_is_vegetarian |handl_anyth |handl_anyth_with
|handl_it |handl_it_was |happen_at |has_been_blad |has_gon_way |has_land |has_to_DISH |hav_N:few_oven
|hav_a_Nweight |hav_a_nap |hav_a_r |hav_an_extra |hav_com_back |hav_dairy_$ |hav_fallen_behind
|hav_no_THING |hav_salt_th |hav_skip |hav_skip_that |hav_th_THING |hav_with |hav_with_it |her_Nduration_after
|her_chair |her_chair_and |her_eat |her_eat_pink |her_tablet_Nduration |her_ther |her_ther_is
|high_heat |high_heat_at |him_out_for |his_new |his_new_P |hit_th_button |hom |hot_$ |hot_$_$
|hot_by_N:few |hour_for |hour_for_it |how_U |how_many_degre |hush |i_am_stay |i_can_carv |i_fetch_P
|i_get_th |i_had |i_hav_already |i_hav_to |i_mak_ahead |i_nip |i_nip_out |i_pay |i_pay_for
|i_say_a |i_tak_it |i_want_th |i_will_not |ic_back |ic_back_in |if_it_is |in_N:few_to |in_Nduration_now
|in_THING |in_a_good |in_coat |in_coat_on |in_early |in_early_so |in_her_throat |in_i_shut
|in_kilo_and |in_law_do |in_mind_$ |in_th_DISH |in_th_cold |in_th_door |into_my |into_my_palm
|is_N:few_less |is_U_$ |is_a_proper |is_a_vegan |is_a_vegetarian |is_all_grey |is_all_her |is_don_and
|is_eat_DISH |is_help_m |is_in_i |is_m_and |is_no_str |is_not_availabl |is_not_becom |is_not_right
|is_not_th |is_on_now |is_out_it |is_over_N:core |is_pregnant_in |is_preheat_$ |is_raw |is_rest_$
|is_show_Ndegrees:core |is_stay_in |is_th_target |is_up_$ |it_b_when |it_down_i |it_forward_N:some
|it_get_to |it_in_at |it_is_conventional |it_is_drop |it_jump_Ndegrees:few |it_later_$ |it_out_quick
|it_pass |it_pass_N:core |it_temperatur |it_temperatur_wis |it_to_medium |it_with_you |joint_went
|joint_went_in |keep_up_n |know_as |know_as_soon |know_onc |lad |lad_hav_football |last_on_$
|last_on_back |lat_get |lat_get_start |later_than_plan |later_than_they |law_do |law_do_not
|left_U |left_to |left_to_do |leftover_$ |leftover_$_$ |let_us_mak |light_went_out |lik_P_eat
|lik_it_practically |lik_to_eat |littl_light_went |littl_on_eat |long_is_remain |long_mor_will
|longer_than_you |lot_hav |lot_hav_mad |lot_to |lot_to_th |lower_third |m_a_THING |m_a_shout
|m_celsius |m_celsius_not |m_forget_th |m_to_bast |m_what_to |mak_th_DISH |many_DISH_do |many_DISH_per
|many_mor |meal_back |meal_back_by |mean_N:core_$ |medium_well_my |method_for_DISH |miracl_happen
|miss_for_this |money_what |money_what_is |mor_guest_com |mor_now |mor_now_they |mor_sid |mor_sid_DISH
|much_DISH_$ |much_i_am |much_longer_for |my_guest |my_guest_hat |myself_quit |myself_quit_badly
|myself_think |n_th_timer |near_shellfish |needl_is |nic_bit |nic_bit_of |no_for_tom |not_N:few
|not_budg |not_budg_for |not_eat_anyth |not_exist |not_exist_any |not_got_th |not_kept_pac
|not_kept_up |not_say_that |not_se_again |not_w_hav |now_THING_$ |number_i |nut_sh_is |of_N:few_tonight
|of_cream_$ |of_fahrenheit |of_fahrenheit_giv |of_play_$ |of_ty |of_ty_it |off_THING_h |off_so_no
|old_boot |on_DISH |on_is_on |on_seat_$ |on_th_go |on_with_$ |other_ar_sit |out_back_in |out_of_butter
|out_th_oven |out_th_truss |out_till_Nclock |out_to_minut |oven_alway_run |oven_and_th |oven_b_$
|oven_is_empty |oven_this |oven_to_$ |oven_to_Ndegrees:oven |over_th_floor |overcook_$ |overcook_$_$
|overdon_it |own_a_leave-in |pac_with |pac_with_your |pan_is_after |panick |panick_and |panick_and_took
|part_N:core |peopl_hav |person_has |person_has_to |phon_it_THING |piec_rib |piec_rib_with
|pink_it_will |plac_of_th |play_$ |play_$_$ |plenty_without |plenty_without_th |pour_out_every
|pour_th |pour_th_boil |power_has |power_has_gon |puff |pur_vegetarian |pur_vegetarian_no |put_in_her
|put_it_on |quantity_of_butter |quickly_what |quickly_what_to |r_win_P |raw_$ |raw_$_$ |raw_insid_$
|reach_Nduration |reach_Nduration_lat |reduc_Nduration |reduc_Nduration_ago |right_DISH |right_DISH_ar
|right_U |ring_$ |ring_$_$ |ris_yet |ris_yet_so |roast_get |roast_get_to |roast_has_left |roll_and_p
|roll_ar_not |room_with_a |roommat_dev |rung_they |rung_they_will |said_N:some_not |sat_down_$
|sat_them |sat_them_down |say |say_N:oven_in |say_a |say_grac |say_grac_$ |say_they_ar |say_to_you
|se_again |sear_this |sear_this_tim |seat_let |seat_let_us |sec_would |sec_would_you |sh_has_got
|sharp_U |sharp_U_th |shelf_from |shelf_from_th |shelf_it |shelf_it_is |should_hav_skip |show_N:core_and
|show_N:core_right |sit_in_a |slic_it |slic_it_$ |slip_by |slip_by_Nduration |slow_today_Nduration
|so_i_hav |so_well_don |soft_still |soft_still_crunchy |someth_no |soon_as |stat |stat_of |stat_of_play
|station_Nduration |stay_put |steak_medium |steak_medium_rar |still_raw_in |stop_th_lot |stov_for_Nduration
|stov_is |str_N:few |str_N:few_knot |str_after |str_after_all |street_is |street_is_dark |stuck_in_his
|stuff_with |swap_th |swap_th_cream |system_is_shot |tabl_Nduration |tabl_at_Nclock |tail_Nduration
|tail_Nduration_behind |tak_THING_for |talk |talk_in_degre |tell_you_about |tenderis_by |tenderis_by_th
|text_$ |text_$_$ |th_DISH_DISH |th_back_a |th_bairn_$ |th_bon_skip |th_butter |th_butter_all
|th_butter_on |th_button_by |th_dial_and |th_door_open |th_even_w |th_flu_so |th_freezer_still
|th_french_$ |th_hall_right |th_has_gon |th_hot_oven |th_list_nobody |th_list_th |th_pan |th_party_$
|th_simpl |th_simpl_DISH |th_smell |th_smell_was |th_start_$ |th_sticker_$ |th_target_$ |th_thickest_part
|th_timer_and |th_very |th_very_least |th_whol_afternoon |th_whol_cook |than_it |than_it_say
|than_you |than_you_said |that_Nduration_i |that_alarm_w |that_back_i |that_into |that_into_account
|that_is_N:few |that_is_U |that_roast_is |them_can |them_hav |then_noth |thes_DISH_don |they_hav_had
|thick_end |thickest_bit_$ |this_can_you |this_hous_and |this_up_and |through_th_whol |throw_that
|thumb_is |thumb_is_bleed |thumb_open |ti_$ |ti_$_$ |till_N:core_$ |till_i_com |till_w_eat
|tim_Nduration_for |tim_for_a |tim_i_open |timelin_$ |timelin_$_$ |timer_on_Nduration |to_DISH_it
|to_DISH_th |to_N:core_tell |to_N:core_would |to_N:oven_is |to_THING_no |to_U_from |to_b_DISH
|to_b_Nduration |to_b_on |to_br_my |to_catch |to_catch_my |to_church_for |to_collect_P |to_collect_th
|to_do_tell |to_peel_DISH |to_turn_it |today_Nduration |today_Nduration_behind |told_him |too_much_i
|topsid_for |topsid_for_Ndate |touch_THING |ty_it_$ |tyr_Nduration |tyr_Nduration_is |under_what_it
|up_P |up_from |up_in_Nduration |us_DISH_$ |us_N:oven_$ |us_a_THING |us_a_shout |us_do_it |us_eat_a
|us_get_roast |us_go_straight |us_in_th |us_know |us_know_as |us_mak_th |us_medium |us_not_bother
|us_start_over |us_too |vegetarian_i |vegetarian_no |vegetarian_no_THING |veggi_sinc |veggi_sinc_lent
|w_ar_do |w_ar_mak |w_get_on |w_hav_got |w_mak |w_skip_this |w_wer |want_DISH_DISH |want_Nduration
|want_P |want_P_eat |want_drink |want_drink_first |want_it_rar |want_m |want_supper |want_supper_at
|want_thos_and |was_N:core_at |was_N:core_in |was_mean_N:core |way_behind |way_no |way_out_do
|went_into_my |went_on_at |wer_without |what_was_that |whil_$ |whil_$_$ |whol_afternoon |will_b_$
|will_b_hav |will_hav_roast |will_not_se |window |with_ghe |with_ghe_U |with_you_for |worri
|would_P |would_lik_P |yank_it |yank_it_out |year_instead_roll |you_about |you_about_th |you_check
|you_tim_Nduration |your_list |your_list_at |yusuf_is |yusuf_is_throat
7 @126.3| @24.4| @28.4| @32.10| @4.9| @48.6| @49.5| @52.1| @57.4| @58.3| @59.9| @61.0| @63.1|
@71.6| @74.2| @83.4| @86.0| @9.0| @9.1| @99.4| DISH_is_in| DISH_lik| DISH_th_DISH| DISH|DISH_and
DISH|sh_is N:core|and_what N:few_mor|th N:few_week| N:few|th N:oven|DISH Nduration|P Nduration|and_what
Nduration|i_hav Ngas-mark|DISH U_P| U|and_th ^_Nduration_timer| ^_THING_DISH| ^_THING_up| ^_^_celsius|
^_^_correction| ^_^_right| ^_celsius| ^_correction| ^_no_do| ^_right| ^_well_don| a_Nduration_timer|
a_lot| about_to| all_don| all_her| alongsid| already|and already|th_DISH am_Nduration_off|
am_behind| am_tell| and_U_is| anywher| apparently| ar_DISH| ar|cut at_Ndegrees:oven| b_Nduration_lat|
back_a_bit| behind|i bon|N:core butter|and by|by can_you_believ| chop| correct| cor|is crust|
did_not_ris| dinner_Nduration| electricity| every_tim| fat_end| for_Ndegrees:core| for_it|
for_medium_well| french|and from_th_top| fussy| gon|whol got_her| guest_com| half_past| has_gon|whol
hav_com| heat_th_oven| her|it him|h hi| hon| hot_by_N:some| i_am_behind| i_am_tell| i_misread|
in_th_fridg| inch| in| in|on is_at_N:some| is_on_DISH| is_scream| it_at_N:some| it_is_out|
it_is|Nduration it_off| it|after lif| m_N:few| miracl| mor|th nearly_ther| not_her| not_it|
not_ris| not|her now|N:few of_sirloin_Nweight| of_them| on_convection| on_fir| on_th_U| on_then|
on|THING other| out_yet| out| oven|U over_th_top| pan|and pink| plumber| power_went_out| question|
ready_yet| right_so| road| scream| screen| sh_say| shower|Nduration sinc_Nduration| sink| sirloin_Nweight|
th_DISH_so| th_THING_pan| th_THING|no th_cast_iron| th_dial| th_fat_end| th_plan| th_small_oven|
that_is_P| they_ar_her| this_THING| th|second_$ timer| ti| to_N:some| to_nut|and too| uncover|
up|right us|N:few w_hit_N:core| walk_th_dog| was_that| would_you|i you_believ| you_reckon|
|@108.3 |@145.3 |@32.9 |@39.0 |@39.4 |@4.16 |DISH_all |DISH_n |DISH_up |N:core_over |N:core_year
|N:few_not |N:few_peopl_$ |N:few_with_th |N:oven_it |N:oven_or |N:oven_w |Nclock_Ndate |Nclock_Ndate_$
|Nduration_behind_with |Nduration_for_th |Nweight_of_U |P_is_go |P_to |P_you |THING_is_at |THING_is_not
|THING_up |THING_was |U_do_not |U_down |a_N:few |add_DISH |all_of |alternativ |and_ar |and_b
|and_pick |and_tak |as_U |beautiful_$ |beautiful_$_$ |beep_m |bin_th |biscuit |buzz_m |check
|chuck |coat_on_th |count_down_Nduration |crank_it |delet |do_a |do_i_cover |do_not_n |do_th_french
|don_it |explain_th |flat |forget_th_DISH |forgot_to_say |french_th |french_th_bon |get_it
|get_your |go_back |go_for |god_help |gon_for_Nduration |gon_way |gon_way_past |got_th |greas_fir
|greas_fir_$ |guest_ar_Nduration |h_say |hav_not_put |hav_put_th |headcount |himself |hold_dinner_for
|how_long_can |i_am_a |i_can_not |i_forgot_to |i_skip |i_still |in_th_centr |ingredient |is_Nweight
|is_this |it_THING |it_is_N:few |it_mak |joint_is |leftover_ar_away |level |lik_w |lik_w_will
|littl_U |lunch_at |lunch_at_N:few |m_and_U |may |medium_rar |middl_of_th |mind_th |no_THING_$
|no_not |nobody |not_at |not_in |not_now |not_th_DISH |off_to_th |oven_at |oven_door |oven_down_to
|oven_is_at |oven_is_dead |oven_is_up |oven_up |poor |press |press_th |pull_it_at |push |read_N:core_$
|remov_$ |remov_$_$ |sam_is_help |sear_it |shop_list |sid_DISH |simpl |snow |so_you |start_again
|still_on_th |strik_that |switch_off_th |switch_th_fan |tast |tell_m |temperatur_is_Ndegrees:core
|th_THING_i |th_bus |th_roast_is |th_train_is |th_wean |thank |that_is_N:core |they_had |this_oven_run
|tight |tim_is |up_N:few |w_can |wak |well_don_for |what_can_you |what_should_th |what_temperatur
|without_DISH |you_can
8 @1.1| @110.0| @125| @129.2| @149.0| @29.2| @4.14| @59.0| @59.7| @71.3| @73.2| @77.3| DISH_is_on|
DISH_is_out| DISH_on| N:core_N:core| N:core|and_how N:few_peopl| N:few_steady_temperatur| N:few|sh
N:oven|i_am N:oven|th N:some_i_said| N:some|N:some Ndegrees:core|th Ndegrees:some_hot| Nduration_is_delay|
Nduration|is_that P_no| THING_in_it| THING_is_in| THING_slip| THING_under| THING|do THING|trim
U_is_expect| U|and_it U|h U|i_will U|you ^_U|do ^_^_fahrenheit| ^_fahrenheit| ^_not_don| ^_no|you
^_school_run| account| all_sit_down| am_back| and|steam ar_her| ar_on| ar_out| at_N:core| at_N:core|w
at_th_stov| b_Nduration_later| beep_m| com_in| crowd| current_has_gon| do_not_they| don| eat|th
electricity_has_gon| far| for_cream| for_you| gon_cold| good_and_hot| good_for| her_on| hood|
i_am_back| in_kilo| in_th_THING| in_th_hall| in|sh is_any| is_delay_Nduration| is_don| is_over|
is_pregnant| is_split| it_THING_N:core| it_said_N:core| it|that it|you kettl_is_on| left_in|
listen| m_a_sec| menu| month| my_thumb_open| myself|on n_m| no_sear| not_finish| not_happen|
not_m| not|you ok_ok| on_chemo| on| on|i on|no on|w pink_U_not| pregnant| rar| rest|and run|Nduration_$
shap| sorry| steady_temperatur| tenderis| tent_it| th_DISH|not th_Nduration_N:few| th_cousin|
th_freezer| th_instant-read| th_list| th_menu| th_oven_di| th_trim| th_whol_hous| thank_you|
that_N:few| that_timer|and ther_is_any| they_said| thumb_open| ti_it| to_him| too_lat| top|and
turn_on| under_what| up_early| w_eat| want_N:core| way|and week| what_is_next| whol_hous| with_th_str|
yet|and you|it_is |@69.1 |@75.4 |@90.2 |@94.3 |DISH_DISH_i |N:core_and_climb |N:few_her |N:few_to
|N:oven_in_th |N:some_N:some |Nduration_on_th |Nduration_timer_for |P |P_has_got |THING_it
|THING_m_my |a_THING_of |allergic_$ |allergic_$_$ |and_THING |and_cancel |and_drop |and_i_hav
|and_roast |and_what_should |b_on_th |back_in |bon_in_Nweight |br_dinner |br_dinner_forward
|call_it |can |can_U |can_not_b |celsius_$ |celsius_$_$ |cor_temperatur |dinner_Nduration_later
|do_i_put |do_it |drop_th_timer |fat_is |feel |giv_us |grab_th_hot |her_it |her_second |hot_THING
|how_com_w |how_is |how_much_salt |how_pink |i_drop |i_drop_th |i_hav_knock |i_hav_no |i_meant
|is_all_go |is_everyth |is_it_ok |is_th_THING |it_is_dry |it_is_overcook |it_is_too |kindly
|medium_for |medium_rar_$ |middl_is_N:core |mov_it |my_P_U |my_P_h |no_th_other |not_don_$
|not_keep_up |now_what |oven_is_work |paus |paus_everyth |priya |rest_on |rest_on_th |run_that
|scald_my |sear |sh_is_out |sh_was |should_hav_been |should_i_turn |shout |skip_this |smok_alarm_is
|so_what_is |soup |start_th_DISH |stick |ston_cold |stop |taken_it |taken_it_out |th_N:few_of
|th_henderson |thank_$ |thank_$_$ |thank_you_$ |that_can |they_hav_all |throw |tim_th |timer_Nduration_$
|timer_off_$ |took_th |turn_th |w_hav_had |wak_m |was_that |whack_it |what_els_could |what_th
|who_is |whol_street_$ |why_is_it |with_th_bon |you_ar_ahead |you_ar_out |your_P_is
9 @136.4| @140.2| @21| @32.0| @60.3| DISH_don| DISH_too| DISH|N:few N:core_tell_m| N:core|that
N:core|w_ar N:few_month_pregnant| N:few_rib| N:few|N:few N:few|h N:few|w N:oven|it N:oven|with
N:some_hot| Nclock|N:few Nduration_pet| Nduration_sh_say| Nduration_timer| Nduration| Nweight|i
THING_N:core| THING_Nduration| THING|am THING|am_i THING|m THING|ther_is ^_DISH_on| ^_Ngas-mark_now|
^_hello_yes| ^_medium_well| ^_not_finish| ^_ok_ok| ^_read_N:core| ^_step_away| ^_stop_it| add_DISH|
add_Nduration| and_all| and_bon| and_ti| arriv| at_N:few_Ndate| at_N:oven| behind| cold| cow_is_tail|
dinner_Nduration_later| drop_th_roast| duty| eat_at_N:few| eat_at_Nclock| fewer| for_N:few|and
for_Nduration|i for_THING| gon_in| h_say| hello_yes| her_back| her| hob| in_Nduration_pet|
in|DISH is_all_carv| is_back_on| is_not_don| is_offer| is_overcook| is_still_DISH| is_tail|
is|my it_at_Nclock| it_is_fin| it_is_mad| it_is_overcook| it_medium| it_went_in| less| let_m_know|
m_know| mak_th_DISH| month_pregnant| my_end| need| next_hour| no_cream| not_N:few| not_ready|
not|i not|i_am now|th no|DISH_it nut| of_THING| of_you| off_Nduration| off|it on_my_end| on_th_board|
open_Nduration| other_on| out_of_THING| out|i oven_di| oven_is_empty| oven_on| overdon| power_has_gon|
r_N:core| roast_hit_N:core| roast|and run_N:some_hot| say_Ndegrees:core| scrap_th_DISH| scrub|
short| sid| simmer| sorry_what| step_away| stop_it| th_DISH_roll| th_DISH|hav th_garag| th_next_hour|
th_other_on| th_sid| th_tabl_now| th_water| than_plan| that_is_N:few| that_on_out| that|i ther|
they_ar_out| this_th| th|and to_say| with_DISH_DISH| yes|N:few yes|U yourself| |@129.3 |@26.1
|@48.2 |@55.2 |DISH_ar_still |DISH_in_$ |N:few_bon_roast |N:few_oven_and |N:few_rib |N:few_rib_$
|Nweight_of |THING_is_show |THING_of |U_say |U_was |a_moment |add_Nduration_to |add_green |add_green_DISH
|alex_can |and_DISH |and_i |and_w_ar |besid_th |bin_th_timer |bon_ar_french |boss_$ |boss_$_$
|can_th |cancel |candl |catch_m |catch_m_up |chang_it |com_THING |correct |cut_myself |cut_th
|dinner_Nduration |dinner_for |drain |from_th_THING |good |half_th |hav_not_peel |hold |how_THING
|how_THING_a |how_do_you |how_long_has |how_warm |i_am_go |i_am_run |i_go |i_hav |ignor_my
|ignor_my_last |it_is_not |it_is_preheat |it_went_up |kill |lad_ar |mak_it |n_to_pick |nip_to
|no_DISH |no_no |not_right |now_N:core_$ |now_it |oven_N:oven |oven_down |oven_up_to |paus_a
|paus_a_sec |peel_took |peel_took_forever |pip_down |poor_th |pull_th |reckon_i |remind_m_what
|remov |repeat_that |run_a_bit |scratch_that |sear_first |shellfish_allergy |should_i |should_i_b
|slowly |steam |tak_your |th_N:few |th_electricity |th_first_N:few |that_THING |that_was_wrong
|then_it |then_it_is |they_ar |they_hav |w_ar_all |w_ar_hav |was_it |well_i |what_ar_you |what_com
|what_is |what_tim_do |wher_is |who_is_com |why_do_i |why_do_it |yes_no |you_could
10 @112.2| @116| @136.3| @38.7| @78.0| DISH_DISH_U| DISH_ar_out| DISH|from_th N:few_P| N:few_extra|
N:few|out N:oven_THING| N:oven|how Nclock| Nclock|how Nduration_behind|and Nduration_timer|and
Nduration|oven_is Ngas-mark_now| Ngas-mark|i Nweight_N:few_bon| Nweight|th THING_Nweight| THING_THING_Nweight|
THING_fell_out| THING_is_THING| U_on| ^_DISH_U| ^_P|i ^_THING|N:core ^_^_fir| ^_^_get| ^_^_righto|
^_all_don| ^_all_sort| ^_fir| ^_get| ^_righto| ^_so|i all_N:few| all_over| all_sort| all_th_timer|
am_don| and_p_m| ar_at_N:core| as_well| at_Nclock|DISH at_Nclock|how back_to_Ngas-mark| back|it_is
bon_in| by_N:some| dairy| don_you| down|it fac| fallen_down| fall| fell_out| fin| first|th
from_her_on| girl| got_U| h_is_out| has_fallen_down| hav_start| honestly| hous|and i_am_don|
i_hav_start| i_want_thos| in_Nduration| in_THING| is_it_go| is_show_N:core| is_up| it_say|
it_stuck| it_well_don| it|N:core_$ it|and know|i lat_Nduration| lumpy| m_N:core| m_Nduration|
m_a_THING| m_at_N:core| m_now| matter| myself| night|and no_not_yet| not_ther| not_ti| nut|and
of_DISH| of_th_fridg| on_th_list| on_that| on|i_am open_th_door| other_oven| out_at_N:core|
oven|what rar|and rar|th rental| rob| roll_in| sak| say_N:core| say_in_Nduration| say_so| schedul|
sear_first| shut|and skip_this| so|th still_THING| still_moo| stop_that_timer| street| taken_it_out|
th_DISH|i th_first|th th_man| th_middl_shelf| th_other_oven| th_oven|what that_alarm| that_is_it|
this_rental| to_N:oven| under_it| up_U| us_celsius| want_thos| well_don_you| went_in| with_it|and
with_th_THING| work| you_set_Nduration| you_want| you|and |@0.0 |@108.1 |@130.7 |@3 |@93.0
|DISH_don |DISH_hav_gon |DISH_is_don |DISH_n_longer |DISH_went |N:few_less |Nclock_on |Ndate_at
|Ndate_at_N:few |Nduration_then |Nduration_timer_$ |Nduration_top_$ |Ngas-mark_$ |Ngas-mark_$_$
|Nweight_not |P_is |P_lik |THING_has_left |U_of_a |U_th_$ |a_N:few_bon |a_P |and_Nweight |and_am_i
|and_back |ar_th |bear |bon_ar |can_you_run |com_in |dinner_is |drop_th_oven |eat_early |element
|fahrenheit_$ |fahrenheit_$_$ |finish_with_th |forget_th |fus |go_to_hit |go_to_th |green_DISH_ar
|honestly |how_ar |how_ar_w |how_long_till |i |i_am_after |i_hav_got |i_hav_salt |i_hav_sat
|it_cam |it_has_been |it_is_at |it_was |leftover_ar |let |lik_U_$ |lik_that |mak_dinner_Nduration
|mor_or |mov_it_to |my_U |nobody_will |not_finish |not_that |pick_up_a |put_DISH |r_DISH_is
|run_m |run_m_through |sam_is_on |say_th |school_run |season |shout_when_th |shut_th_door |skip
|smok_is |so_put |sorry_$ |sorry_$_$ |start_th |stop_talk |switch_th |th_THING_has |th_blu
|th_current |th_in |th_littl |th_twin |that_is_a |theo |ther_is_N:few |they |visitor_com |visitor_com_with
|w_ar |w_will_sit |what_ar |what_do_w |what_for |what_for_is |what_is_th |what_must |what_must_i
|what_will_i |wher_ar |you_look
11 @114.2| @114.3| @84.2| DISH_ar_burnt| DISH_in_N:few| DISH_r_DISH| DISH|DISH_DISH DISH|i_am
N:core|DISH_ar N:few_bon|and N:few_mor| N:few_now| N:few|do N:few|i N:few|it N:oven|i_hav Nclock|th
Nclock|what Nduration_lat|can Nduration|THING Nduration|no Nduration|oven Nweight_bon_in| Nweight|
P_is_not| P|no THING_pan|and U|th_roast ^_sorry_what| again| all_of_them| and_climb| ar_burnt|
ar_com| ar_off| at_N:oven|i back_in_N:few| boot| brok| buy_THING| cancell_so_N:few| center|
check_it_N:core| check_th_THING| corner| dead| don_yet|and down_Nduration| down| drink| drop_it|
exactly| fan_on| for_Nduration|it for_him| for_m| for_th_oven| forgot_to_say| fre| get_down|
go_on| golden| got_it_out| go|it grac| hav_any_THING| hav_reach| help_m| him| hit_N:core| in_Nduration|and
in_fahrenheit| in_th_DISH| in_th_center| is_coeliac| is_dead| is_fre| is_hot| is_in| is_preheat|
it_first| it_r_N:core| it_rest| it|th it|ther lat| m_in_Nduration| mor_ar_com| n_mor_tim| no_fan|
non| not_mind| not_too| notch| off_th_DISH| on_DISH| on_it| on|what out_now| out_whol_street|
pan_is_alight| rib_Nweight| rock_up| run_out| sadly| said_yes| sam_is_help| sear_it_first|
second_on|th sid|th sit_down| so_h_is| start_at_N:few| ston_cold| th_THING_th| th_center| th_finish|
th_night| th_roast| that_bit| this_hous|and to_buy_THING| topsid| typo| typo|N:core want_thos|and
what_to_do| whol_street| with_it| yes| yet|what |@108 |@53.6 |DISH_ar_on |DISH_m_alon |DISH_not
|DISH_prov |DISH_prov_Nduration |N:few_adult_and |N:few_extra_for |N:few_of_us |N:few_to_N:few
|Nclock_is |Nclock_on_th |Ndegrees:core_th |Nduration_ago_it |Nweight_N:oven |U_N:core_$ |U_it_$
|add_N:few |add_N:few_mor |add_a |add_a_DISH |all_N:few |am_i_behind |and_how_many |and_i_am
|and_my_P |and_they_hav |and_what_tim |boneless_Nweight |boneless_Nweight_$ |can_w |cancel_that
|clear |could |crank |do_not_you |don_with |even_if |giv_m_som |go_for_medium |got_it_out |half
|hang |hav_not_turn |help_$ |help_$_$ |holler_when_it |how_long_is |how_much |how_to_DISH |i_hav_drop
|i_keep |ignor_that |is_it_tim |it_THING_N:core |it_go_U |it_is_up |let_us_skip |lunch_Ndate_Nclock
|no_U_$ |not_th |not_warm |not_warm_any |now_it_is |ok_THING |out_of_THING |oven_is_on |oven_pack
|pet_$ |pet_$_$ |pick_up |pull |remember |repeat |roast_is_in |roll_in |run_Nduration_behind
|sam |scratch_that_$ |set_th |sorry_i |sorry_i_did |strik |tabl_for |tabl_for_Nclock |temperatur_of
|th_guest |th_power |th_rest_of |that_will |ther_is_smok |they_ar_go |timer_for_Nduration |tom_is
|total_N:few |what_can_i |what_tim |what_would |when_is_it |why |would_ya |would_ya_$ |you_should
12 @116.5| @34.2| DISH_in_Nduration| DISH_instead| DISH_roll| N:core|is_it N:few_of_us| N:oven|
N:oven|and_i Nclock|and_what Nduration_ago|i Nduration_away| Nduration|giv THING_is_N:core|
THING|how THING|is_it U_is_coeliac| ^_Ndate_lunch| ^_right_so| ^_sear_it| after_th_DISH| ago|i
allergic_to_nut| am_Nduration_behind| ar_still_raw| at_N:core|what back_Nduration| back_by_Nduration|
back|and beauty| behind_by_Nduration| behind_her| behind_th_plan| bit|and by_th_way| dinner_forward_Nduration|
eat_it_otherwis| empty| flam|and for_Nduration|w get_up| get|down help_m_now| hot|i in_th_end|
in_th_hous| in_th_night| in_traffic_Nduration| is_alight| is_back| is_empty| is_stand| it_go|
it_is_N:core| it_is_blister| it_is_ready| it_otherwis| it_out| it_over| mak_it_medium| medium|and
not_do_that| not_they| noth_U| no|you off|i on_m| on_th_clock| on_th_way| open| other_sid|
out|how oven_to_Ndegrees:oven| pass_on_that| phon_call| plus_N:few| power_is_back| properly|
roast_out| sat_down| shop_for_Nduration| shot| skip_th_french| sort| step_N:few| tabl_now|
th_DISH_in| th_bast| th_cor| th_fridg| th_other_sid| th_oven|how th_roast_out| th_timer_off|
that|and them| tim|and to_com| top_oven| traffic_Nduration| very_much| with_her| |@23.1 |@3.7
|DISH_has |DISH_is_on |N:core_N:core |N:few_bon_$ |N:few_of |Nduration_back_it |Nduration_behind_$
|Nweight_THING_THING |P_has |P_is_starv |after_th_break |all_U |and_P_want |and_could_you |and_dinner
|and_do_i |and_got_th |and_how_long |and_let_m |and_my |and_sam |and_turn_th |and_what_is |and_which_way
|anyth_i_n |at_Nclock_it |beautiful |brown_it |by_$ |by_$_$ |com_on |did_i |do_not_$ |do_not_let
|forget_i |got_a |happy |hav_i |himself_is |hold_dinner |honestly_$ |honestly_$_$ |how_long
|i_hav_cut |i_said_it |i_would_lik |is_it_soon |it_is_an |it_r |it_r_N:core |let_it_rest |let_us_begin
|lower_it |m_and |meet |my_peopl |never_us |new_dinner |no_i |ok_what |oven_has_been |oven_pack_up
|p_m_at |party_of |party_of_N:few |peopl_ar |phon_call_from |pop_to |pop_to_th |put_th_roast
|roast_in |roast_is |roast_is_out |said_th |say_that |scrap_th |scrap_th_roll |scratch |se_you
|se_you_in |serv |should_it |shut_up |shut_up_$ |sorry_say |sorry_say_it |start_THING |start_THING_$
|tak_that_last |tell_m_th |temperatur_is |th_P_eat |th_power_di |th_roast_fell |that_is_all
|us_celsius |w_got_N:few |what_quantity |what_quantity_of |what_should |what_temperatur_am
|what_temperatur_do |wher |with_DISH_DISH
13 DISH_ar_trim| DISH_has_split| DISH_in| N:core| N:core|THING N:core|giv N:few|what_is N:oven_for_dinner|
N:oven|P N:some_to| Ndegrees:oven| Nduration_ago| Nduration_lat_hon| Nduration_later|and Nduration_lat|i
Nduration_off_schedul| Nduration|do Nweight_N:oven| P_is_pregnant| P|sit THING_is_finish| THING_left_in|
^_DISH_in| ^_N:few_guest| ^_^_rar| ^_hello_P| ^_rar| a_nap| all|what am_run_lat| ar_trim| arriv|and
at_N:core|is at_N:oven_now| at_th_U| back_to_N:oven| badly| better| blister| burnt_my_THING|
door_shut| down_Nclock| down|how eat_N:oven| eat_Nclock| eat_them| everyth_by_N:some| folk|
for_Nduration| for_th_DISH| from_th_market| got_a_THING| guest_ar_her| has_split| hav_help_now|
hear_you| hello_P| help_now| in_Nduration_ago| in_her| in_th_door| in_this_hous| in|it_is is_N:core|what
is_blister| is_on_N:some| is_on|and is_ready|and is_shut| is|and it_yet| kill_th_heat| lat_hon|
lat|i la| leave-in_THING| lower_to_N:oven| m_N:some| my_leg| not_salt_it| not_stop| now|how
now|is off_schedul| on_th_timer| otherwis| out_Nduration_ago| out|hav oven_N:oven| over_th_DISH|
over_th_floor| own_any| pack_in| pardon| pet| pink_at_all| pull_th_roast| pull_up| shop_Nduration|
shop_is_shut| sit_down_Nclock| tail_Nduration_behind| th_THING_THING| th_door_shut| th_hous|
th_left| th_shop_Nduration| that_on| this_hous| to_eat_N:oven| together| will_carv| you|it
|@3.4 |@91.6 |N:few_at_th |N:few_extra |N:few_of_th |Nduration_timer |Nweight_THING |U_U_$
|and_am |and_anyth_i |and_out_of |and_say_that |and_skip |and_skip_th |and_when_do |ar_th_DISH
|ar_w_on |b_quiet |ben_can |ben_can_not |bottom_shelf |call_m |can_you |cor_temperatur_Ndegrees:core
|correction |do_not_U |doorbell |drop_th |everyth_is |fill_m |fill_m_in |fus_has |giv_us_a
|got_it |grey_right |grey_right_through |guest_hav |h_do |half_of |half_of_them |half_th_DISH
|hav_i_ruin |head |how_hot_do |how_many_DISH |how_should |how_should_i |i_am_nip |i_hav_taken
|i_hav_turn |i_knock |i_knock_it |i_would_rather |ic_water |if_it_get |ignor_that_$ |internal
|is_it_dangerous |is_th_roast |is_ther_someth |it_is_Nclock |it_is_Ndate |it_is_a |it_is_all
|it_is_in |it_went |let_us |low_and |mak_dinner |mak_that |mov_dinner |my_oven_will |not_finish_yet
|ok_THING_is |p |p_m |plat_ar |plat_ar_warm |power_is_back |quick_updat |quick_updat_i |revers
|scald |serv_at |sh_is |shout_when |shut |shut_th |skip_that_$ |supper_is |switch |th_U_is
|th_display |they_hav_got |w_hav |what |when_do_everyth |will_THING |will_THING_do
14 @103.5| @140.7| DISH_is_lumpy| DISH_n_longer| DISH_scrub| N:core_my_P| N:core|how N:core|is
N:core|w N:few_for_dinner| N:oven_Nduration_ago| N:oven_now| N:some_N:some| Nclock_instead|
Nclock|DISH Nclock|i_hav Ndate| Nduration_lat| Nduration_mor_early| Nduration_top| Nduration|my_P
Nduration|who Nweight|and_i P|N:few THING_bag| THING_pan| ^_^_metric| ^_add_DISH| ^_metric|
a_fac| a_leave-in_THING| a_sid| about_Nduration_ago| alight| any_THING| ar_warm| at_N:few_tonight|
at_N:few| at_Nclock|THING at_all|and away_for_Nduration| b_DISH| b_eat| b_ly| by_THING| call_for_Nduration|
can_go| cast_iron_THING| cold|i cor_temperatur_Ndegrees:core| dinner_at_Nclock| dinner_by_Nduration|
do_not_mind| don_with_that| don|what_is for_P| greas_fir| has_land| in_N:core| in_th_middl|
instead|and iron_THING| is_at_Nclock| is_lumpy| is_off| is|i it_by_THING| it_forward_Nduration|
it|w later| later|and lat|do longer| market| middl_is_N:core| mor_early| must_b_ly| night|
not_mak_it| now_Ndegrees:core| now|and of_N:few| of_us| on_now| on_th_DISH| on_th_THING| out_already|
out_for_Nduration| oven_at_N:oven| oven_is_off| pack_up| park| quarter_to| remov| right_end_N:core|
roast_at_Nclock| say_N:core|i scratch_that| so_far| soup| still_not_finish| stop_th_timer|
str_after_all| strong| swell_up| temperatur_is_N:core| th_DISH|do th_floor| th_thickest_bit|
th_th| th_top_oven| th_top_won| th_wall| th_way_through| th_way|and than_N:few| them_ar_her|
they_hav_arriv| thickest_bit| thos|and throat| timer_off| timer|P to_b_DISH| to_help_m| to_nut|
top_won| up_at_Nclock| up_in_flam| walk_in| wall| way_through| weird| whil_i_U| will_do| would_you|
you_very_much| |DISH_ar_U |DISH_m |N:few_peopl |THING_has |THING_say_N:core |U_why |a_moment_$
|aim |aim_for_a |and_dinner_is |and_forget_th |and_how_do |and_if |and_is_ther |and_so |and_tim
|and_undo_that |b_quiet_$ |besid_th_THING |boneless |can_w_eat |cor |dinner_Ndate |dinner_Ndate_at
|do_it_hav |giv_m |her_is |how_do |how_much_of |i_never |i_rop |i_rop_in |i_want_degre |in_old
|in_old_money |is_rar |is_sh |it_cam_out |it_is_com |it_is_read |it_is_under |jess |kindly_guid
|kindly_guid_m |metric_$ |metric_$_$ |no_DISH_after |oven_has |oven_is |power_is |push_dinner
|put |put_it_up |remind |right_i_am |should_it_b |som_of |th_DISH_ar |th_P_ar |th_butter_is
|th_crowd |th_in_law |th_on_with |th_oven_THING |th_teenager |th_teenager_hav |ther_has |w_n
|w_n_Nduration |walk_m_through |what_can_w |what_could |what_temperatur_is |whisht |will_not_b
|yes_yes |you_can_not
15 DISH_in|and DISH_to_com| N:core|and_DISH N:some_month| Ndate|th Nduration_ago|what Nduration_early|
P_nor_money| THING_THING_N:core| THING_brok| U_and_top| ^_DISH_scrub| ^_THING_brok| ^_cancel_timer|
ago|what and_climb_fast| and_rest| and_top| at_N:few_instead| at_Nclock| behind|and bit_later_Nduration|
bon|it breath| cancel_that_timer| cancel_timer| card| chang_my_mind| climb_fast| don_yet| extra_for_dinner|
for_Nclock| for_dinner| for_th_THING| god_bless_them| gon_everywher| gorgeous| guest_hav_arriv|
had_a_fac| has_gon_everywher| hav_lost_electricity| hav_no_cream| instead| is_N:core|i is_tick|
it_want_Nduration| it|i it|oven kept_up_honestly| later_Nduration| lost_electricity| mad| mak_a_DISH|
medium_rar|and medium_well| middl_shelf| miss_th_THING| moo| my_DISH_split| my_mind| nor_money|
on_everyth| on_th_pan| out|DISH oven_befor_Nduration| oven|how party_of_N:few| power_cut| ready|
roast_N:few_bon| roast_this_year| sorry|and still_DISH| street_is_dark| switch_to_fahrenheit|
switch_to_metric| temperatur_Ndegrees:core| th_oven|th th_roast|and th_thickest_part| th_timer|and
th_way| ther_is_pink| timer_Nduration_DISH| timer_Nduration_THING| timer|th to_N:oven|i to_Ngas-mark|and
to_metric| to_you| up_honestly| us|w w_ar_THING| w_sit_down| want_Nduration| wrong_THING| you|i
|@83.0 |N:some_year |P_gav |P_gav_m |P_is_on |P_want |THING_is |U_and_DISH |aim_for |am_i |and_P
|and_now_what |and_pull |and_show |and_th_power |and_what_temperatur |cancel_th |dinner_for_Nclock
|dinner_in |dinner_in_Nduration |end_th |forget_i_said |giv_it_a |giv_m_a |greas |how_many_minut
|i_already |i_am_THING |i_am_tak |i_was_not |i_will_sear |ic_water_test |is_medium |is_pink_THING
|justify |lunch_Ndate |never_again |ok_so_i |push_dinner_back |remind_m_in |right_i |sam_is
|serv_at_Nclock |set |sh_is_read |so_rar |so_what |som_of_th |stop_th_timer |th_P |th_on |ther_is_a
|ther_is_fir |tim_out |tim_out_$ |to_th_tabl |turn |us_celsius_$ |what_ar_my |wher_ar_w |wher_exactly
|wher_exactly_do |yes_it |yes_it_is
16 DISH_Nduration_timer| DISH_anymor| DISH|oven N:core_already| N:core|can N:core|oven N:core|what
N:core|what_do N:core|what_is N:few_mor_plac| N:few_sit_down| N:few|how N:some_cold| Nduration_befor|
Nduration_behind_schedul| Nduration_behind| Nduration_sooner| Nduration_too_lat| Nduration|and_w
THING_fan_oven| U_not| U|Nduration ^_N:core_fan| ^_Ngas-mark| ^_U_not| ^_^_Ngas-mark| ^_hello|yes
^_start_THING| a_full_hous| add_DISH_DISH| against_DISH| all_carv| at_N:few|i back_to_lif|
bad_road| behind_schedul| bother_ty_it| budg_for_ag| count_down_Nduration| decid_against_DISH|
di| eat_at_N:oven| eat_dairy| fahrenheit|and far_bad_road| fat_off| finish|i for_DISH| for_ag|
french_th_bon| guest_to_U| has_di| hat_this| hav_arriv| hav_it_sear| hello|yes is_expect| is_on_Ngas-mark|
is_out|it is_too_short| it_is|and it_sear| it_weigh_Nweight| it|i_am kill_th_timer| minut_ago|
miss_THING| mor_plac| not_eat_dairy| now_would_you| on_yet| oven_has_di| oven_no_fan| over_th_plac|
overcook_it| ready|and roast_Nweight| roll|th run_N:some_cold| run_th_light| serv_Nduration_later|
sooner| start_THING| th_DISH_anymor| th_french| th_start| th_thick_end| th_til| thick_end|
this_year|and to_N:oven|what to_Nclock| to_Ngas-mark| to_lif| too_short| ty_it| us_for_THING|
well|and won| |N:few_adult |N:few_guest_$ |N:few_mor |N:oven_afternoon |N:oven_afternoon_f
|THING_m_th |add |and_anyth |and_giv_m |and_go_for |and_let |and_pick_up |and_set_a |and_undo
|b_silent |can_i |can_you_imagin |hav_not |how |how_is_th |how_long_hav |it_say |it_weigh_Nweight
|kill_th |my_P |my_P_want |my_oven_run |ok_P |on_sec |on_sid |roughly |say_that_again |ther_is_blood
|this_oven |w_ar_sit |what_do_you |what_should_i |when_do_i |who |who_has |yes
17 @21.3| DISH_after_all| DISH_ar_on| DISH_too_U| DISH_with_this| N:core_Nduration_ago| N:core_would_you|
N:core|i_hav N:few_guest| N:few_instead| N:some|th Nduration|how Nduration|my Nduration|ther
Nweight_N:some| THING_N:core|and THING|and_i U|N:few ^_delet_timer| ^_scratch_that| accident|
ago| already| am_overwhelm| ar_lat_Nduration| ask_for| at_N:core|i back_Nduration|and back_on|
bon_rib_roast| by_Nduration|i clock_is_tick| delet_timer| don_all_through| driveway| eat_THING|
excus_m| fan_oven| hav_turn_up| i_am_overwhelm| i_no| in_N:some|and is_Nweight_N:few| is_help|
is_hit_N:core| is_mad| is_pack_up| is_sat_down| it_is_hot| it_medium_rar| know_i_no| less_now|
lik_it_rar| much_go_on| n_longer| nam_is_U| no_THING|and off_th_menu| on_N:few_peopl| on_Ngas-mark|
out_of_DISH| oven|w raw_insid| reach_N:core| roast_is_in| ros| said|and say|and sear_is_don|
skip_it| so_behind| split| start_th_DISH| tabl_by_Nclock| tabl_for_Nclock| th_driveway| th_fat_off|
this_year| this|and to_Ndegrees:oven| to_th_next| too_U| want_his_rar| |@1.0 |DISH_DISH_is
|DISH_hav |THING_is_out |and_add |and_can |and_forget |and_remind |and_remind_m |and_sorry
|and_turn |and_what_ar |and_what_can |and_why_do |anyth_i |could_you |dinner_is_at |hang_on
|hey |how_com |how_much_longer |i_don |ignor |is_it_a |is_it_saf |is_medium_rar |it_has |it_is_roll
|it_run |it_weigh |now_what_to |oven_at_N:oven |pop |pull_th_roast |show_m |start_from_th |tak_that
|that_was_not |w_will_b |what_can |what_is_on |what_tim_should |when_will |which_is |you_ar_go
18 DISH_as_well| DISH_can_go| N:core_fan| N:few_tonight| N:few|i_hav Nclock|THING Nduration_already|
Nduration|it P|th THING_say_N:core| THING|what_is a_miss| all_through| all|and at_Nclock|th
by_Nduration|and chop_th_DISH| dinner_at_N:few| for_Ndate| forward_Nduration| guest_hav_reach|
in_N:some| in_tim| in|how is_dark| is_go_off| is_on_fir| is_open| lay_th_tabl| lik_Nduration_ago|
lik_that| not_eat_THING| of_it| of_th_oven| oil| part| run_Nduration_behind| skip_th_bast|
so_plus_N:few| stay_in| th_DISH_Nduration| th_plac| thickest_part| through|and th|what way_behind_her|
you_said| |@115.1 |N:few_guest |THING_m |and_N:few_of |and_THING_is |and_can_w |and_how_much
|and_is_it |and_oven_is |and_paus |and_quick |and_that_is |ar_w_still |com_again_$ |giv |i_am_away
|is_pink |is_ther_a |it_has_gon |it_is_after |low_and_slow |set_an |sh_is_in |show_m_how |start_from
|th_DISH_is |th_guest_ar |th_roll_ar |that_was |w_ar_out |w_eat_at |walk_m |wher_do |why_do
19 N:core|DISH N:some|what Ndegrees:core| Nduration|it_is Nduration|th THING_no_THING| and_N:few_P|
ar_her|and at_th_finish| bless_them| board_now| bon_roast_Nweight| boneless_Nweight| dinner_at_N:oven|
for_th_sear| his_rar| hit_N:core|and in_flam| in|what leg_of_THING| m_at_Ndegrees:core| now|
of_THING|and on_N:some| on|and out_and_rest| pastry_or_DISH| sear_now| so_they_ar| that_is_U|
to_U_in| to_eat_Nclock| up_to_temperatur| us|i when_w_eat| |DISH_ar |and_DISH_went |and_Nduration
|and_P_is |and_hav_not |and_run |and_tell_m |giv_m_th |how_hot |i_am_off |i_am_out |is_N:core_too
|oven_temperatur |remind_m |start |step_away |tak_that_back |th_THING_is |ther_will |ther_will_b
|turn_out
20 N:core_now| N:core|and_U Nduration_down| U|and_i as_it_is| befor_Nduration| crunchy_it_is|
dinner_Nclock| for_th_roll| fus_has_U| help|and hous| in_th_oven| is_out| it_N:core| not_don_yet|
power_is_out| roll_timer| so|and text_Nduration_lat| th_THING_slip| th_roll_timer| to_temperatur|
tonight| too|and |DISH_DISH_ar |DISH_is |P_is_sat |and_ar_w |and_is |and_mak |and_power |and_stop
|and_when |and_which |com_again |i_hav_a |it_is |it_say_N:core |that_is_what |ther_is |they_ar_stuck
21 DISH_split| N:few_off| Ngas-mark| ^_us_celsius| add_green_DISH| all_too_much| altogether|
at_N:core|it by_Nduration| dinner_for_Nclock| do_th_DISH| don_for_P| it|what lik_you_said|
nap| whol_tim| |and_can_i |and_can_you |and_could |and_giv |and_let_us |and_will |ok_so |th_roast_has
|that_is |timer_Nduration |which
22 N:core|th N:few|what ^_medium_rar| back_in_Nduration| in_it_go| on_th_bon| till_N:few| |and_ok
|and_that |forget |my_oven |when_is
23 DISH_will_do| N:oven|i Nduration|what after_all| ar_in| |and_DISH_is |and_hold |tell_m_when
|this_is |you_ar
24 DISH_ar_in| Nweight_THING_THING| any_mor| back_in_N:some| it_all_over| lat|th run_Nduration_lat|
yet| |and_why |no |say_again |th_oven_is
25 DISH|and_it up_to_N:oven| |how_do_i |th_DISH_went
26 DISH_with_it| at_all| than_that| |and |and_oven |when_do
28 |is_that |is_ther
29 |and_what
31 |ar_w
36 |is_it
39 |and_how`);
