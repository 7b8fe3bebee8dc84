/** Learnt from the rules and learnt parts of the corpus by scripts/train-breaths.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const breathWeights: Weights = weightsFrom(`
-45 roast|DISH till|
-43 medium|well sinc| |tonight
-42 |so_far |than
-41 can_you| how_com|
-40 it|THING_N:core wer| you|can |when_th
-39 DISH|roll or| |yet
-38 is_on|N:core medium|rar |past |would_b
-37 ^_medium|rar all|right and|how every| if| is_already| i|could what_tim| |, |into
-36 U|th_DISH and_then| into| is_in|th let_m| r|DISH than| when| |in_her |it_is_$ |last_night
-35 Nduration|after Nduration|timer ar_you| let_us| m|Nduration next|door say|N:core to_N:oven|for
very| |any_mor |anymor |fre |i_should |myself |now_and |this_year |through |turn_up
-34 DISH_in|th am|i could_you| her|P in|a never| on|N:some what|can whil|i |each |els |it_up
|piec |this_tim |walk_in
-33 THING|pan ^_P|U ^_U|th ^_i_meant| ^_i_said| ^_th_THING| a| giv_th_DISH| had| it|mak it|will
know|how mad|th_DISH on|Ngas-mark_$ on|your sorry|what so|no which| |between |is_ther_$ |on_this
|week |year |yesterday
-32 DISH_out|th DISH|and_DISH ^_at_Nclock| ^_th_oven| ^_turn_out| and| and|giv and|when could|
half|th is_th_roast| i|can look|lik mi| must| not_even| poor| reach|N:core th_wrong| th|N:few_of
took| |@84.6 |can_go |in_ther |it_and |last_year |mean |order |part
-31 N:few|in_th THING|left after|Nduration and|stop cor|temperatur did_you| dinner|roll gav|
how_pink| it_THING|N:core my_THING|THING nobody| no|sear on|Nduration_ago on|is out|on rib|roast
r|win sear|first set|th tak_m| th_old| th|cor too|hot top|oven when|i would_b| |Nduration_after
|and_rest |at_this |bar |everywher |fi |for_this |hear |is_fin |it_with |overnight |own |rather
|when_h |with_this
-30 DISH_on|th N:few|mor N:oven|on_th Nduration|befor Nduration|lat THING|THING THING|at ^_all_right|
^_is_N:core| ^_it_say| ^_m|and a_good| after|th at|half back|on com|back cut|off fi| how_THING|
instead|of is|N:core_in it|go it|rar i|skip left|it los| mak_that| now|N:core_$ no|fan of_this|
on|th_stov on|then oven|door oven|set_to play| remind_m| sam_is_on| send| that|timer wait_on|
well|don what_temperatur| what|w whol| |U_they |about |again |as_a |at_last |better |earlier
|foot |front |him |i_think_$ |it_th |ok_for |plac |sid |so_far_$
-29 N:few|to N:some|in Nclock|on_th P|ar ^_DISH|hav ^_Nduration|timer ^_how_com| ^_so|what
^_th_DISH| all_over|th and|can and|why at|N:some befor|w behind|schedul br| by|mistak com|off
com|on cut|it dinner|Nduration don|with giv_m| got_N:few| green|DISH hav_N:few| help|m himself|
if_i| in|this is_too| is|N:oven it_is|Nweight left_it| left|th littl| much_longer| my_P|U my_THING|on
not|N:few no|no_no no|r onc|it on|fir on|this out|in out|th_oven that_DISH| their| too|much
to|U under|th up|with want_it|well what_all| whatever_you| what|can_i why| you|hav you|tak
|@29.3 |@90.0 |after_all_$ |already |at_all |bag |can_not_hav |caught |club |di |fast |it_on
|of |out_it_is |sharp |sinc_Nduration |th_last |till_N:few |to |to_m |together
-28 @107.1| DISH|to N:core_is| N:core|already N:core|in N:oven|Nduration_ago N:some|to THING_m|
THING|show ^_U|no ^_is_ther| ^_my_THING| ^_m|P ^_tell_m| ^_th_P| ^_th_U| about|th all|this
and|could and|dinner at|Ngas-mark back|to caught|fir chuck| com|in did_i| did|you down|Nclock
do|that do|w found| from| goos|fat hav_her| hit| i_said|N:core in|fahrenheit is_cut| is|N:few_of
it_has_gon| it_is|N:some it_out|Nduration it|a it|look it|medium i|look i|set leav| let_us|skip
lost| low|and_slow margarin| m|when no_no|no no|U no|flam on|DISH_$ on|top reason| show|N:core
small| so|it strik| suppos| tell| th_THING|on th_oven|door th_roast|DISH that|is_it that|step
they_ar|not this|oven th|DISH_went timer|off total| up|in_th us|celsius want_her| was_on| weigh|
what|did your| |@54.3 |@71.5 |@78.0 |N:few_bon_rib |Nduration_ago_and |THING_N:few |a_miss
|ago |alongsid |and_got_N:core |and_oil |and_slow |as_well |back_to |do_for |fella |girl |i_am_way
|in_it_$ |in_this |is_Nduration |it_for |it_in |itself |my_THING_$ |person |start_now |th_lot
|this_morn |till_i |today |too_hot |underneath |wis |with_my
-27 @99.2| DISH|don_$ DISH|r_DISH Ndegrees:core|in Nduration|behind P|will THING_do| THING|DISH_$
THING|was U_you| ^_DISH|and ^_N:core|on ^_Nduration_ago| ^_Nduration_back| ^_^_already| ^_^_first|
^_^_well| ^_already| ^_first| ^_ok|i ^_well| ^_would_you| all|N:few_of and_now| and|h and|so
and|start and|what and|what_is another| ar|they at_N:few|Ndate at|N:core_in back_in|Nduration
behind|on besid| by|Nclock can|i check|th count_down|Nduration dav| did_not| dinner_back|Nduration
do_not_trust| down|with eat_it| for|N:oven f|th go_on|then gon_cold|on go|ahead guess| had_it|
hav|i hav|set_it his_P|so hop| hot|fat hot|oven how_you| h| if_it| includ| is_everyth| is_no|
is|Nweight_$ is|medium is|tak it_is_N:few| it_is|hot it_went| it|at_Nclock it|first i|forgot
i|never i|should i|think kept| kick| know|th leave-in| left|in let_it| lik|a might| must_b|
not|N:some not|ti no|THING no|n no|pink off|th of|N:core onc|it_is on|DISH_and on|to on|with
out|already out|for oven_to|N:oven peanut| ran| raw|THING right|that roll|in say|N:oven say|it_is
say|that so_it| tent|on th_Nduration| th_door_open| th_good| that_th| then|i ther_is|N:few
th|DISH_ar th|oven_is tim_i| took_th_DISH| to|N:some to|start us|a us|celsius_$ us|in was_not|
was|N:core watch|th went_to| what_els| what_is_on| what|it when|w whil|it will_THING| wonder|
would_lik_it| would| you|look you|wer |@107.0 |@114.6 |@119.1 |@9.0 |@90.4 |N:core_for |and_climb
|ar_com |at_th_tabl |at_that |blaz |by_Nclock |cam |collaps |cours |dark |do_not_eat |first_$
|first_$_$ |first_and |for_DISH |for_m |from_N:few |further |has_a |is_burn |is_run |later
|longer |m_up |month |on_your |out_ther |quid |short |should_b |sooner |th_DISH_out |th_cooker
|th_i |th_tim |to_N:some |to_a |to_get |to_it |w_eat_$ |what_i_said |what_it
-26 @1.4| @110.5| @117.4| @51.2| @93.0| DISH_ar|not DISH|in_at N:core|fan N:few_in| N:few_so|
N:few|for Nclock_U| Nduration|ago Nweight|of P_is_on| P_want_it| P|and_P THING|under U_that|
U_th|DISH ^_P_U| ^_mak_it| ^_ok|so ^_th_dog| a_Nweight| and_my_P| and_th_oven| and|P and|let
and|set and|sh and|w_ar another|N:few an| ar_all| as|well a|DISH a|U befor_i| befor|Nclock
burnt|th by|N:some can_i| careful|with chok|on cooker|is cut_into_it| cut|my_finger did|not
dinner|is do_w| don|for enough|for explain| for_medium|rar for|N:core for|medium get|th giv_it|
giv_m|th got|no go|U had_N:few| had_to| has|com hav_th_DISH| hav|N:few i_THING| i_think|it
in|b in|celsius in|our in|th_U is_dinner| is_on|fir is_read|N:core is|N:few_bon is|help it_in|th
it_is|Nduration it_still| it|say i|did i|must i|tak lat|they lay| lift| lik_a| look|at mak_dinner|
middl|shelf my| m|THING m|how m|what no_i_meant| no_longer| not_that| not|start now_and| now_it_is|
no|light off|at off|in ok|so on_it|is out_on| out|to over|to plan|for pull|th push| put_on|
ready|when rest|in revers| right|that_is roast|at roll|timer roughly| said|N:some say|N:some
shall| shop|list sit|ther so| so|h so|th_henderson so|w_ar stay|in switch| th_DISH|DISH th_DISH|go
th_fan| th_hot| thank|you_$ that|bit them|off ther|b this|THING this|th thos|bon through|th_door
th|babysitter tim_to| tim|to to|giv to|help to|serv us|this want|th what_com| what_th| what|should
when_you| when|you will_it| will_th| with_a| would_it| would|i w|did w|wer yank| your|P you|ar
you|would |@1.4 |@79.1 |THING_as |THING_no |all_th_way |all_this |altogether |and_can_not |and_eat
|dairy |for_her |got_to |in_th_night |in_that |into_th |is_her |is_that_$ |is_too |it_at |left_in
|minut |mor_than |next_door |on_th_middl |on_top |or_no |out_this |reach |roast_Nweight |say_N:oven
|sick |sit_ther |slip |so_long |soft |stand_on |th_THING_in |th_oven_to |up_for |us_to |whil
|whil_i |with_th_DISH |you_i
-25 @114.0| DISH_got| DISH_in|at DISH|DISH_in DISH|cream N:few|bon N:few|tim N:oven|fan_$ N:some_quid|
Nduration_then| Nduration|from P_it_is| P|can_not P|eat THING_THING|in THING_is_on| THING|as
THING|in_at THING|lik THING|over U|i_hav ^_DISH|th ^_DISH|will ^_N:few_mor| ^_could_you| ^_cut|th
^_mak_that| ^_medium|well ^_not|i ^_out|it a_N:few_bon| a_THING|in a_THING|pan a_lovely| a_whol|
after|all allergic|to all|N:few and_gon| and_so| and_start| and|N:core and|cancel and|i and|mak
and|nobody and|pull and|put and|tell and|they and|you any|good as_a| a|N:few befor|i boil|water
bon_ar| butter|w by|th b|Nduration_$ can_b| can_it| canteen| can|go can|i_hav can|you com|Nduration
com|with cook|it could_i| d'you| delay|Nduration dinner|tim door|open do|you du| eat|Nclock
eat|it feed| fell| for|N:some for|P fus| gon_in|th got|N:core got|U go|back_in go|for go|with
grab| had_a| half_of_them| hang| has|th hav_not|i hav|you her|in him|at him|in how_high| how_is|
i_already| i_don| i_open| i_told| invit_themselv|so in|Nduration_$ is_N:few_bon| is_blood_everywher|
is_eat| is_my| is|half is|not_don is|rest is|th_N:few is|that is|ti it_go|to it|do_not it|don
it|is_Nweight it|is_th it|sit it|tak i| kindly| left_th_door| lik_it|rar lik|U look|for m_Nduration|on
m_in|Nduration m_on| mak_it|N:core mak| many_DISH| measur| medium_not| meet| miss|th my_U|
my|U m|N:some m|Nduration_$ m|and_my not_don|th not_go| not|mak not|se now|then no|bon no|i_am
no|lid off|to ok|th on_track| on|on_th out|and_rest over_to| past|N:core phon|call pop_up|
pretend| pretty| proper| pur| put_th_THING| rar|is rest|on roll|ar run|Nduration_behind run|Nduration_lat
r|N:core sav| say_it_is| say|Nduration set|Nduration shop|list_$ shout|when som|DISH so|do
so|sh stand_on| stand|on start|th_DISH still_in|th talk|to taxi| th_THING|THING th_U|in th_U|is
th_blu| th_gam| th_quick| th_temperatur| th_whol| that_and| that_is|N:few themselv|so ther_is|no
they|do this|second th|Nduration_timer th|THING_say th|blu th|display th|oven_up th|sam th|school
th|soup tim|for too|lat touch|th to|get to|tak to|turn to|you turn_out| up|N:few w_all| wait|on
was_N:core|Nduration was_th| was|N:some well_don|all what_a| what_happen| what_number| what_you|
when|h whil_it| with_DISH_cream| without| without|DISH w|can yes|so you|do you|put |@12.3 |@122.5
|@127 |@137.3 |@18.5 |@25.0 |@34.5 |DISH_so |Nduration_earlier |THING_is_it |THING_say_N:oven
|U_with |about_th |all_over |as |as_of |at_a |at_half |at_th_end |bought |by_N:some |cancell
|carol |com_N:few |crisp |crowd |down_for |enough_for |fell |flower |for_P |grand |her_and
|her_what |how_it |ic |in_N:oven |in_th_pan |instead |is_becom |is_com |is_how |is_tak |it_N:few
|it_a |it_off |it_over |it_so |mouth |my_arm |n_to_b |of_U |off_in |off_th_list |on_her |on_th_DISH
|on_th_U |onto |or_N:few |oven_and |over |over_to |pressur |r_or |right_now_$ |sent |so_much
|stood |tak_m |th_THING_and |th_night |th_oven_$ |th_road |th_slic |th_whol_way |that_i |them
|ther_and |ther_is_too |till |to_that |to_you |toast |top_$ |top_$_$ |up |up_and |very_much
|what_i |when_sh |when_w |will_i |winter |with_m |yourself
-24 @38.2| @62.6| @78.4| DISH|and_all N:core|at_Nclock N:few_th| N:few_with| N:few|P_$ N:few|extra
N:oven_in| Nduration|early Nduration|sooner Nduration|start Nweight|THING_THING THING_ar| THING_in|it
THING_say| THING|THING_THING THING|b U_do| U_in| U_no|th U_say| U_what| U|on_th ^_U|U ^_i_reckon|
^_my_oven| ^_no_mor| ^_right|that ^_sit_down| ^_yes|yes add_DISH|DISH against| allow|to and_a|
and_got| and_is| and_it_is| and_it| and|Nduration and|everyth and|forget and|half and|say and|som
ar|look ar|no ar|w at_this| at|my away|from a|Nweight a|littl a|new a|no a|roast b_Nduration|lat
back|in been_rest_for| befor|N:few bottom|oven brown|it butter|on b|N:some b|Nduration_behind
b|medium can_w| careful_with| celsius|and_kilo clos|th com_and| com|out com|to_th cut_it| dead|it_will
dinner_Ndate|at dinner_is|Nclock do_a| don|yet down|a do|N:core do|they eat|Nduration end|is
eta|on ever| explain_th| fan|oven fetch| for_N:few|at for_a| for|DISH for|Nclock for|dinner
for|medium_rar good|and_hot go|down go|in green_DISH|top h_will| had_th| half_a| hav_U| hav_already|
help|ther help|ther_is her_P| her|well_don his| hold_it| hold|everyth how_many_DISH| how_much_THING|
how_th| how_to| how|is_it how|you i_DISH| i_finish| i_hav_already| i_must| if_w| if|i in_it|is
in|THING_$ in|her in|my in|th in|th_small is_alway| is_it_look| is_on|N:some is_what|i is|N:core_$
is|N:few_low is|pour is|read is|run it_first|then it_is_all| it_is|my it_is|smok it_out|now
it_say|N:core it_want| it|Nclock it|rar_$ i|crank i|do_not i|reckon keep|th knock_that_timer|
know|when lat|with left|oven let_us|do lik|my low_flam| low|flam m_through| mak|DISH many|
mean_by| medium|for mention| minc| miss|that much_THING| my_P|no my_lot| my|DISH m|a m|up never|got
no_THING|THING not_eat| not|N:core_$ not|right not|set now_i| of_a| off|schedul off|th_DISH
of|DISH of|Nduration on_and| on_is| onc_th| onto| on|Nclock on|her on|th_left on|will option|N:few
out_U| out|at_Nclock out|this oven_no| oven_th| oven|THING_say oven|for peopl|ar pick| pop|
practically| press| put_th_DISH| put| rest|a rest|on_th revers|sear right|in roast|DISH_ar
run_N:some| say|they sear_it|first seem| sh_lik| should_i| sh| sinc_th| sit_down|Nclock siz|
so_is| som|roll so|medium so|that so|they tak_th_DISH| taken| tell_your_P| th_DISH|want th_best|
th_cut| th_first|N:few th_timer|on th_top|oven that_is|how that_is|what that_timer|on that|last
them|DISH ther|is this|tim th|middl_is th|roast_is tim|you to_a| to|Ngas-mark to|say turn_to|
up|a up|th_DISH us|Nduration w_ar_on| walk|in was_N:core|at was|N:few was|a was|not whatever|that
what|am what|am_i what|i_am whether| will|hold would|you w|could yes|w you_think| you_th| you|go
you|stop you|tell |@110.5 |@122.4 |@17.3 |@3.2 |@32.7 |@55.1 |@60.3 |@78 |@8.0 |DISH_butter_for
|N:core_th |N:core_to |N:few_h |Nclock_DISH |Nduration_behind_on |Nduration_th |P_so |THING_can
|THING_or |THING_to |a_U_$ |abov |and_DISH_$ |and_everyth |and_ti |anywher |ar_U |ar_on |as_it
|as_th |asleep |at_Nclock_and |at_Ngas-mark |at_it |at_onc |cub |down_th |extra |fac |fan_and
|for_N:oven |for_Nduration |for_a_bit |for_it |from |has_not_reduc |hav_been |hit_th |i_am_afraid
|in_DISH |in_th_end |in_th_shop |insid_$ |insid_$_$ |is_away |is_don |is_so |is_still |it_N:oven
|it_Nduration |it_or |it_to |it_was_$ |it_yet |keep_THING |know |moo |my_roommat |now_w |of_N:core
|of_cream |of_it |off_th_menu |on_U |on_at |on_m_$ |out_of_you |over_her |percent |pi |put_in
|ran |rather_than |right_now |sat |scream |seen |sign |sinc_Nclock_$ |so_early |so_early_$
|soon |still_$ |still_$_$ |swear |tak_his |th_DISH_for |th_N:core |th_P_$ |th_edg |th_insid
|th_sam |th_step |th_wrong |thicken |timer_and |tip |wher_i_should |wher_w |whil_it |will_want
|without_a |work |you_want |you_would
-23 @108.0| @27.2| @28.6| @99.0| DISH_to| DISH|th_bon N:core_it| N:core_you| N:core|and_N:core
N:core|in_th N:core|under N:few_bon|rib N:few_is| N:few_i| N:few_month| N:few|less N:oven|U_i
N:oven|now N:some|peopl N:some|year Nclock_th| Ndate|dinner Ndegrees:core|on Nduration_behind|on
Nduration|earlier Nduration|mor Nweight_N:few|bon P_eat| P_has_gon| P_th| P|com P|do P|els
P|lik P|took THING_THING|her THING_has_gon| THING_out|th THING_show| THING|THING_over THING|th_tabl
U_said| U_they_ar| U|or ^_N:core|still ^_Nduration|i ^_U|can ^_i_think| ^_no|THING ^_no|mor
^_no|no ^_no|on ^_ok|th ^_roast|DISH ^_so|you a_Nduration| a_hot| absolutely| add|DISH again|in
all|day alway|do am|Nduration_down and_THING| and_ar| and_do| and_go| and_h_is| and_put| and_th_THING|
and_wait| and|DISH and|N:few and|br and|giv_m and|how_do and|how_long and|my and|oven and|salt
and|tell_m and|ther and|w_hav and|which another_N:few| ar_they| ar|all ar|not_do as| at_N:few|instead
at_N:oven|for at|last at|that at|what a|half a|medium a|right a|we a|whol back_in|N:some bath|th
been| befor_th| befor_w| believ|it body| bon_and| bon|rib br|th burnt|my butter_all| by|N:oven
b|N:core b|back b|back_in b|tak b|us can| can|help chop|th com_to| com|at cor|N:core could|i
count_th| crap| cross| dinner_by| don|in down|at down|low down|on do|i_n do|my do|next do|next_$
do|not d| eat_by| eat|N:oven enough|to eta|on_th extra|tim fahrenheit_and| few| for_th_next|
forget|i for|what full|hous get_th| giv_us| go_in|th go_th| go_up| got| go|on go|up great|
half_THING_THING| hall|all hall|all_of happy|with has|N:few hav_got_N:few| hav_it|medium hav_mad|
hav_you|got hav|no help|in her_and| her|back her|out hey| hold|th hot|then how_far| how_lat|
how_much_longer| how|w h|will i_hav_gon| i_hav_her| i_mak_it| i_said|N:few i_should| in_Nduration|ago
in_a| invit| in|N:oven in|Nduration_back in|a_THING in|it_go in|th_whol is_Ndegrees:some| is_blood|
is_m|don is_not|U is_not|ti is_off|th is_turn_up| is|Ndegrees:core is|complet is|giv is|hold
is|nearly is|set is|tell is|turn it_all| it_and| it_at|N:core it_do| it_is_N:some| it_mak|
it_th| it|and_it it|must it|right it|sat it|show it|this i|cut i|hav_not i|misread i|tell jar|of
keep_it| kill| lat_so| learn| leave-in|THING left|th_oven let|th light|went long_befor| look|U
m_and| meant|N:core much|smok my|P_want my|oven m|do m|don m|som m|with no_THING|or no_bon|Nweight
normal| not_th| not|tak not|th_THING not|that not|to now_th| no|us number|N:few_$ of_it|is
offer|to of|N:some of|THING_is of|U of|my of|oven ok_so| on_i| on|say_N:core on|th_oven on|th_roast
or_am_i| or_a| or_do| other|half out_befor| out_in| over|N:core over|her peel|th peel|th_DISH
per| plan|on power|cut rar|for regular|bak rest|in_th rib|with_N:few right|so_that roast|THING_N:core
room|for r|DISH_is say_a| say_to| say|rar sent| se|th shoot| should| sinc|th sit|down so_no|DISH
start|THING stood| tak| talk|m temperatur|Ndegrees:core th_P_is| th_THING|h th_fast| th_hall|all
th_job| th_roll|timer than_it| that_is_all| that_is_what| they_do| they| this|morn th|Nclock
th|airport th|cut th|element th|good th|leftover th|phon_is th|smok till_th| tim|th_DISH to_N:oven|at
to_eat|N:oven told|m too|long to|do to|medium to|pick to|pull to|put to|se to|stop turn_him|
turn|to up_in| us_to| us|now us|to w_ar_off| w_did| w_had| w_hav_it| want_it|medium want|N:core
want|supper was_a| wash|th well_don|for what_DISH| what_it| whatever|i what|ar_w when_i| when_th|
when|it_is wher|w will|you with_N:few| with_no| with|my would_i| w|all w|hav_not w|never w|push
w|skip w|tak yer| yes|go_on you_could| you_ever| you_mind| you_to| you|want |@101.2 |@11.2
|@132.2 |@4.15 |@5.5 |@55.3 |@62.5 |@87 |@91.1 |@95.0 |DISH_at |N:core_how |N:few_go |N:oven_N:few
|N:oven_U |N:some_for |Nclock_th |THING_N:some |THING_P |THING_THING_and |THING_a |THING_and
|THING_her |THING_it_is |U_P |U_in |U_not |a_THING_$ |a_lot |again_and |all_that |and_in_th
|and_kilo |and_then_it |answer |ar_her |ar_not |at_N:few_and |at_N:oven |at_m |back_and |becom
|befor_N:few |below |burner |centr |chair |charg |cut_th_bon |dollar |film |first_or |flip
|for_THING |go_on_then |happen |hav_Nduration |her_N:few |hot_i |hotter |in_N:core |in_ic |in_march
|in_th_fat |in_th_hous |inch |is_already |is_dead |is_delay |is_do |is_vegan |is_vegetarian
|it_all |it_back |it_first |it_is_own |it_no |it_now |it_out_$ |it_that |lat |lick |lik_you
|march |mark |my_own |of_N:some |of_a |on_th_button |on_th_dial |on_th_menu |on_th_sid |onto_th
|out_and |oven_no |pizza |pretty |pull_up |put_on |r_$ |r_$_$ |rn |rubbish |say_to |seat |show_up
|song |stand_in |start_to |tak_$ |tak_$_$ |th_DISH_and |th_DISH_th |th_DISH_they |th_THING_or
|th_bon_$ |th_car |th_counter |th_day |th_door |th_oven_off |th_stair |th_to |th_wall |th_whol_tim
|th_year |then_low |this_th |till_Nclock |till_it |till_th |timer_i |to_help |to_her |to_say
|to_serv |to_th |told_m |too_for |too_i |took_out |w_got |was_N:some |wash_up |weekend |when_it_hit
|whether |with_THING_$ |with_th_THING |word |would_i |writ
-22 @0.0| @109.3| @122.4| @127.2| @26.3| @3.0| DISH_DISH|ar DISH_has_gon| DISH_not| DISH_would|
DISH|DISH_don DISH|DISH_went DISH|butter DISH|out_of DISH|out_th DISH|roll_ar DISH|scrub DISH|too_$
N:core_on| N:core|U N:core|fan_$ N:few_and| N:few_rib|on N:few_too| N:few_year| N:few|at_th
N:few|day N:few|r N:few|roll N:oven_i| N:some_in| N:some_not| N:some_th| N:some|after N:some|at
N:some|behind Nclock_is| Nclock_on| Nclock|instead Nclock|then Nclock|then_$ Ndegrees:core_and|
Ndegrees:core|in_th Nduration_and| Nduration_back|it Nduration_timer|for Nduration|left Nduration|timer_for
Nweight_and| P_els| P_is|N:core P_so| P|got P|hav P|would THING_all| THING_her|it THING_is_not|
THING_is_show| THING_lik| THING_th|THING THING_what| THING|Nclock THING|THING_on THING|in_it
THING|up U_on|th U|timer U|well ^_N:core|at ^_N:few|guest ^_U|DISH ^_U|my ^_^_on| ^_^_too|
^_can_you| ^_dinner|roll ^_how_much| ^_in_this| ^_in|my ^_is_that| ^_it|THING ^_not_on| ^_no|U
^_no|w ^_on| ^_remov|DISH ^_too| ^_you_can| a_few| about|my across|th all_th| all|finish am|Nduration_back
am|pop and_i| and_th_th| and|DISH_is and|Nweight and|THING and|U and|can_w and|did and|do and|hav
and|i_hav and|is_it and|let_us and|no_THING and|pop and|tak and|thank and|that and|ther_is
and|timer and|wher arriv_th| ar|N:few_for as_you| at_N:oven|so at|N:few at|a a|P a|list a|lovely
a|timer_for back_in|N:core back_to| back|Nduration back|a back|up befor_you| befor|Nduration
behind|on_everyth blast| bottom|oven_is brb| b|N:few_of b|U b|tak_it call_m| cam|out cancel|that
can|th chang_th| check|it clock_is| clos_th| com|too com|up cut|is cut|m delet| did_U| did_they|
did_th| did| did|it different| dinner|Ndate dinner|Ndate_at din|at di|on do_i_know| do_it|
do_not_start| don_it|is don|and_dust don|to do|roast do|roast_DISH drank| drink_in| drink_in|THING
early|to eat_Nduration| eat|THING enough_for| every_tim|i exist| extractor| e| flip| for_N:few|peopl
for_us|medium forget|th from_her| from|my get_her| get|a giv_m_N:few| giv| go_for| gon|off
go|off greas| green| grey_r| guest|will half|a has_th| has|got hat| hav_gon|and hav_no| hav_w|
hav|Nduration heat|up her_at| his|THING honestly_th| host| hot_i| hot|to how_many_minut| how_old|
how| i_P| i_am|pop i_check| i_do|next i_know|celsius i_lik| i_mad| i_thought| i_us|DISH if|it
if|you in_i| in|N:few_$ in|U_i in|boil in|boil_water in|celsius_$ in|th_door in|their is_N:few_mor|
is_U|th is_after| is_still| is_your| is|N:core_already is|N:some_$ is|drop is|get is|good is|grey
is|lik is|lost is|medium_rar is|mov is|ok is|smok is|this it_N:few| it_is|grey it_out|at it_r|N:core
it_said|N:core it_sat| it_so| it_that| it_you| itself|off it|beep it|dry it|is_N:some it|pink
it|uncover i|burnt i|check i|could_not i|count i|do i|got i|heard i|knock_it i|put i|stop i|turn
keep| keep|go knock|th know|celsius last_tim| lat|to left_in|th left_oven| left|on lik_her|
lik_it|still lik|DISH littl_on| lock| loosely|in lowest| low|first m_what| main| mak_a| manag|it_$
many_minut| much|go much|go_on my_P|can my_god|ther my_roommat| my|oven_is m|that n_a| near_ready|
needl| no_DISH|after nobody_is| not_don|yet not|Nclock not|go not|turn not|well nowher_near_ready|
no|DISH_butter no|DISH_in no|N:core_not no|th_oven of_us|in off|conventional of|this of|you
ok|i_am ok|ok_i on_it_is| on_your| onto|th on|all on|in on|th_hob on|yet or_is| or|is or|no
out_to| out|another out|at_N:core out|befor out|with oven|at oven|now_$ paid| pan|handl pitch|
plan_on|N:few plan|N:few prim_rib|Nweight put_m| put_th_oven| quick|on quit|badly read|N:core_on
reckon_th| reckon|w remov|DISH rest_so| rib|on right|w roast_and| roast|Nweight roast|out room_for|
roommat| rub| run|th r|THING said_N:core|not said_th| salt|U say_th| say|N:core_in scratch|that
sear|is second|half second|oven sell| serv_it| serv|Nduration show|m sit_on| skip_th_THING|
snow|in so_long| so|count so|do_not so|that_is speak|celsius step|out stop|count stuck_in|
stuck|in sur|i_hav ta| tell_m|how th_Nclock| th_Nduration|N:few th_THING|board th_THING|check
th_ball| th_door|for th_i| th_last_on| th_oven_at| th_oven|on th_raw| th_second|half that_Nduration|
that_is_N:core| that_is_her| that|Nduration that|should them|in then|h ther_ar| they_reckon|
they|n this|on thos|DISH th|DISH_hav th|P_has th|electricity th|gam th|lid th|lowest th|old
th|power th|thickest_part till_i| tim_is| tim_it| timer|N:some timer|for timer|it_is tim|Nduration_for
to_DISH|th to_hav| to_it| too|early to|Nclock to|br to|go to|my to|my_P to|r to|tak_it train|is
up|for up|lik us_a| us_th| us|medium wait|what want_th| was_N:core|not was|th water|test went_in_Nduration|
went_on|at what_about| what_do| what_would_you| whatever|you what|could what|did_i what|do
what|do_i what|hav what|i_told what|sh what|should_i what|would when_do| wher_do| which_way|
whil_i| who_is| whoever| why_is_it| why_not|DISH will| will|th win|in with|DISH with|this would_that|
would|tak w| w|do_not w|got w|mak w|sit_down w|start yet_and| you_i| you_put| you|b you|could
you|should you|to you|when |@110 |@117.1 |@42.4 |@46.6 |@51.4 |@59.5 |@64.3 |@65 |@73.4 |@94.5
|@97 |@99.7 |DISH_P |DISH_in_ther |DISH_it_is |DISH_w |N:few_th |N:some_not_N:some |Nduration_lat_and
|THING_b |THING_com |THING_not |THING_off |THING_over_a |THING_so |THING_w |U_Nduration |U_do_not
|a_roast |across |adult |after_all_and |all_and |all_day |already_and |an |and_THING_$ |and_U_$
|and_dust |and_find |ar_all |as_i |as_w |at_U |at_tabl |away_$ |away_$_$ |b_at |b_us |behind_P
|birthday |bleed |btw |butter_is_not |cak |can_do |can_help |canteen |chemo |choic |click |com_out_of
|cooler |count_$ |count_$_$ |cremat |dial_is |do_not_do |early |eat_it |faff |first_then |for_N:some
|for_dinner |for_them |for_you |for_your |from_N:oven |get_her |go_in |go_on_th |good_$ |good_$_$
|got_her |h_has_diabet |ham |hang_open |has_th |hat |hav_gon |help_us |holiday |how_th |i_was_on
|idea |in_at_th |in_fahrenheit |in_for |in_his |in_my_THING |in_th_door |in_th_packet |includ
|insid_th_oven |is_DISH |is_bust |is_eat |is_for |is_full |is_hold |is_lik |is_off |is_out
|is_throat |is_up |is_what |is_when_w |it_DISH |it_as |it_how |kept |laid |let_it_go |li |lik_you_said
|lot |loud |mak_th_DISH |measur |mess |need |noth_$ |noth_$_$ |of_that |ok_in |on_by |on_dinner
|on_hold |on_in |on_is |on_th_back |on_th_left |on_th_list |on_th_oven |on_them |or_DISH_it
|or_no_$ |out_P |out_at_Nclock |outta |pat |pink_$ |pink_$_$ |present |prim_rib_$ |put_them
|put_to |reminder |rich |ring |ros |salt_$ |salt_$_$ |set_for_th |sinc |sinc_Nduration_$ |smok_$
|smok_$_$ |snow_in |so_non_of |solid |spoon |step_$ |step_$_$ |street |swell |th_$ |th_$_$
|th_DISH_to |th_THING_a |th_THING_for |th_board |th_dial |th_fan |th_list |th_oven_and |th_plac
|ther_Nduration |they_said |threw |throat |thumb |to_do |to_finish |to_keep |too_much_$ |trap
|turkey |understand |up_th |was_a |wean |wher_it |wher_you |which_i |with_th_fan |worry |would_b_nic
|would_suit |would_you_th |your_teeth
-21 @110.3| @21.4| @38.9| @42.7| @5.2| @64.5| @70.2| @70.5| @97.0| DISH_all| DISH_another_Nduration|
DISH_go|in DISH_they_ar| DISH|DISH DISH|THING_$ DISH|ar DISH|has_not DISH|instead DISH|is_finish
DISH|shredd N:core_THING| N:core_i| N:core_oven| N:core_th| N:core|after N:core|and_still N:core|bless
N:core|even N:core|now_$ N:core|whil N:few|still N:few|temperatur N:few|under N:oven_on| N:oven|or
N:some_i| Nclock|for_th Ndate_th| Ndate_without| Ndate|without Ndegrees:some_in| Nduration_off|schedul
Nduration_th_THING| Nduration_to| Nduration|and_N:few Nduration|back Nduration|from_now Nduration|i_will
Nduration|top_$ Nweight_i| Nweight_th| P_U|is P_is|start P_lik_her| P_lik_his| P_to| P_want_her|
P|eat_at THING_THING|N:core THING_can| THING_in|th THING_it_is| THING_i| THING_on|th THING|N:oven
THING|after THING|for_N:few THING|of_DISH THING|open U_at| U_it_is| U_it| U_i| U_th|THING U|has
^_DISH|U ^_Nweight|THING ^_THING|i ^_U|is ^_^_fan| ^_^_reckon| ^_^_remember| ^_^_us| ^_^_warm|
^_count_down| ^_do_it| ^_fan| ^_is_now| ^_no|n ^_old_money| ^_p_m| ^_reckon| ^_remember| ^_shall_i|
^_sorry|what ^_us| ^_warm| ^_what_th| a_cak| a_new| abov| after_this| after|Nduration_$ again_i|
ago|it_was all|go all|th alway|N:some am_i| am|nip am|skip an_extra| and_h| and_they| and_th|
and_when| and|DISH_ar and|N:few_mor and|THING_is and|aim and|can_you and|go and|is and|kindly
and|medium and|my_P and|remind and|remind_m and|stop_th and|what_can another|Nduration any_good|
anymor_th| any|THING any|mor ar_a| ar_her_U| ar_her|U ar_on|N:core ar|do ar|nowher ar|sit as_i|
as|a as|i at|Ndegrees:core at|how at|it at|which a|N:few_bon a|shout b_too| back_th| back|from
bakery| beat| beep_at|N:core befor_it| befor|it_go behind_th| behind|schedul_$ behind|th bit_over|
bon_is| bon|roast bout| br_it_forward| br_th| brought_th| brought|th butter|step b|N:few cam|back
can|get carol| carry|on chok_on| chop|th_DISH clock_on| clock|on com|from cream|in decid| degre|
did|th din_at| dinner|at do_not| dog|got don_w| don|th_DISH doorbell_that_is| door|to down_so|
down|Nduration_for down|for down|to do|a do|at do|i do|i_want do|with drop| drop|th everyth|is
fan|set fat|end fin|for for|N:core_in for|this fridg|at from|Nclock get_a| giv_m|N:few giv|th
glass| gluten|fre got_it_on| got|DISH got|N:few_THING go|at go|straight h_said| had|N:few half|th_DISH
hardly| has_not| has|begun haul| hav_all| hav_lost| hav|DISH hav|com hav|knock hav|w hello|P
helper|it helper|it_is her_is| her|P_is her|for hold_everyth| hold| honestly_i| honestly|i
hot|enough how_com|th how_did| how_long_befor| how_this| how_w| i_DISH|th i_am|skip i_can_not|
i_do|th i_hav_DISH| i_hav|knock i_look|at i_meant|N:core i_said|it i_skip| i_think|i i_will_b|
i_would_sooner| if_it_is| if_th| in_they_ar| insist_on| in|U_$ in|at_Nclock in|fahrenheit_$
in|ther_$ in|to_warm in|too is_N:few_to| is_Ndegrees:few| is_U|in is_allergic|to is_at_Ndegrees:core|
is_a| is_bring| is_it|ok is_i| is_mix|and is_now| is_out|of is_this| is|N:few_rib is|Ndegrees:some
is|P_is is|THING is|a_Nweight is|away is|delay is|do_th is|du is|enough is|everyth is|no_THING
is|not is|preheat is|shut is|still is|stuck is|very is|well it_at|Nclock it_for_Nduration|
it_forward| it_is_on| it_is|all it_i| it_medium|instead it|N:some it|get it|in_th it|is_that
it|on it|onc it|over it|roll it|run it|should it|want it|was_th it|with it|would i|crank_it
i|finish i|get i|hav_N:few i|keep i|let i|mak i|pull i|pull_it i|put_it i|tak_it i|would jump_over|
keep|her kilo_is| knock|on left|in_th less|now let_us|DISH let_us|start let| level| lik_a_THING|
lik|you list|of lit|th long_mor|will look|and lost|th lot|of lunch|Ndate lunch|and mean_to|
medium|instead medium|rar_for middl|is_N:core might_as_well| misread|th miss_out| mor|will_it
much_tim| my_P|put my_THING|ar my_boss| my|P my|last m|Ndegrees:core m|th_THING no_THING|for
no_THING|in no_THING|left no_idea| no_not| no_on| not_a| not_b|right not_say| not_to| not|N:core_N:core
not|a not|com not|do not|let not|lik not|mov not|stop nowher|near now|what_$ now|would_it no|french
no|n_to no|scratch no|scratch_that no|tent number_i_am| of_THING|for of_THING|on of_them|can
of_us|THING of_us|now off_in| off|for of| of|Nweight of|all ok_P| ok|for on_a| on_my| onc|and
onc|mor on|N:few_peopl on|again on|on_sid on|second on|th_go on|th_sid on|what_was open_and|
open_th_oven| open|for or_ar| out_do| out|at_N:some oven_has_gon| oven_it_is| oven_not| oven_off|now
oven|down oven|off oven|sinc pink|all plat|ar plus|N:few prefer| put_N:few| put_a| put_it|
put_it|back put_to| rar|or reduc|for rest_and| rest|so rest|th roast_in|at roast|is run|N:some
said|that salt|and_THING salt|is sam|as say_N:few| say_in| say_on_th| say|N:core_$ say|a say|they_ar
se|you sh_do| short|of should_hav| shout|when_it shov| show_m|fahrenheit sh|can sid_and| sinc|Nclock
sinc|Nduration sit|at sit|on slid| so_do| so_much| sold| so|h_is so|it_is so|w split|th stand|in
step|away still|DISH still|got ston|cold stop_stop| stop_that|timer stop|talk stop|th stuck|th
suppos_to| switch_off|th tabl_it_is| tabl|salt tak_her| tak_th| tak|N:few tak|his temperatur|is
temperatur|th th_U|THING th_U|on th_bit| th_butter|step th_fat|end th_grey| th_ic| th_lower|
th_oven|THING th_oven|off th_rar| th_roast|is th_tap| that_is|Nduration that_no| that|alarm
that|on them|can ther_i| ther|in they|keep this_and| this_is| this|fat through|th_DISH th|DISH_on
th|DISH_out th|THING_has th|cooker th|electricity_has th|knob th|quick th|roast_DISH th|train
th|wash th|weight th|whol till|N:few till|it till|th tim_th_roll| to_se| top|and_tail to|N:oven_$
to|Ndegrees:core to|begin to|tell trip|switch try| twic| up_on| up_with| up|N:some us_in| vot_and_it|
w_hav_lost| w_sit|down w_will| walk|m walk|th want_a| want|medium was_at| was|N:oven was|Nduration_lat
was|my was|out was|run way|of way|th way|through way|too weigh|Nweight well_i| went_in|N:few
what_ar| what_tim|is what_was_th| what|all what|ar what|can_you what|i_said what|is_medium
what|is_that what|siz when_it|THING when|can when|do when|sh wher_do|i wher_is| wher| wher|you
which_sid| whil|it_is whil|you why_do| why_it_is| will_U| will|tak with_DISH|DISH with|N:few_bon
would_sooner| would|not would|that year_N:few_bon| you_believ|it you_do|th you_hav| you|reckon
you|so |@102.1 |@105.2 |@106.4 |@107.2 |@108.0 |@11.0 |@115.2 |@148.1 |@18.0 |@25.4 |@26.6
|@28.2 |@37.2 |@47.2 |@66 |@72.2 |@73.3 |@8.2 |@99.0 |DISH_is_chop |DISH_with |N:core_DISH
|N:few_dinner |N:oven_i |Ndegrees:core_and |Nduration_N:core |Nduration_and_th |Nduration_later_$
|P_hav |P_i_am |THING_do |THING_for_th |THING_h |THING_is_THING |THING_is_don |U_U_i |a_new
|again_in |air |all_night |and_a |and_cut |and_on_th |and_tail |ar_a |ar_off |as_anyth |ask_m
|at_hom |at_my |at_th_U |b_a |back_Nduration |back_by |back_it |befor |befor_Nclock |blank
|body |bother |break |brin |business |bust |butter_and |by_th_THING |can_not_do |can_not_mak
|car_is |caught_fir |could_hav |counter |different |dinner_by |do_i_want |do_to |down_on |down_with
|drawer |dun |end_N:core |fat_this |feel_lik |feet |fewer |fit |for |for_Ndate |for_him_$ |for_th_green
|forward |from_m |from_oven |gnaw |guest_$ |guest_$_$ |happy_with |has_got |has_not_budg |hav_cancell
|hav_reach |her_at |hob |i_got_N:core |in_N:some |in_and |in_i |in_it_is |in_oven |in_th_bottom
|in_th_garag |instead_$ |instead_$_$ |invit_themselv |is_N:core_in |is_U |is_at |is_back |is_chop
|is_get |is_my |is_on |is_pour |is_read |is_stuck |is_th_last |is_when |it_$ |it_$_$ |it_N:core
|it_said_N:core |it_say_on |it_wrong |land |laugh |left_on |lik_it |lik_sho |lover |luck |lumpy
|m_that |m_what |man |min_$ |min_$_$ |my_hous |new_year |no_bon_Nweight |no_longer |not_it
|not_w |now_not |now_so |now_would |o |of_N:few |of_Nduration |of_THING |of_god |of_salt |of_th
|of_this |of_water |off_at |off_my |on_P |on_for |on_i |on_th_instant-read |on_th_leave-in
|on_what |open_Nduration |or_is_it |ought |out_her |out_to |over_N:core |paus_$ |paus_$_$ |per
|possibility |pregnant |rar_th |ready_Nduration |reduc |right_at |right_at_th |right_through_$
|roll_$ |roll_$_$ |rung |salty |saw |say_N:few |scal |set_N:few |sh_com |smok_com |snap |so_no_THING
|soy |start_$ |start_$_$ |suppos_to_b |ta |team |temperatur_for |th_THING_out |th_and |th_boil
|th_clock |th_gam |th_hob |th_is |th_knob |th_other_oven |th_oven_it |th_oven_on |th_r_win
|th_wash |this_minut_$ |tim_for |to_U_$ |to_com |to_f |to_go |to_start |to_this |took_a |under_THING
|updat |upsid |upsid_down |w_will_eat |want |was_on |wash_th_THING |way |we |weigh |went |went_off
|when_i_slic |wilf |will_do_th |with_U |with_a_THING |with_everyth |with_you |without_a_THING
|won |would_go |wrong_it |your_THING
-20 @11.0| @33.0| @4.11| @7.0| @79.4| DISH_DISH|in DISH_ar_not| DISH_ar_up| DISH_can| DISH_cut|
DISH_in|N:few DISH_is|DISH DISH_m| DISH_roll|ar DISH_that| DISH_was| DISH|DISH_i DISH|after_all
DISH|boil DISH|get DISH|go DISH|in_it DISH|in_th DISH|look DISH|powder DISH|stand DISH|w_want
DISH|went DISH|would_go N:core_a| N:core_not| N:core_that| N:core_to|N:core N:core_was| N:core_what|
N:core_whil| N:core|and_climb N:core|too N:core|yet N:few_THING|th N:few_bon|roast N:few_not|
N:few_on|th N:few|U_of N:few|go_$ N:few|person N:few|short N:few|week N:oven_all| N:oven_to|
N:some_and| N:some_at| N:some_hot|turn N:some_so| N:some|a N:some|of Nclock|w_want Ndate_and|
Ndegrees:core_th| Ndegrees:core|insid Nduration_at| Nduration_do| Nduration_in|th Nduration_is|
Nduration_later|would Nduration_lat|they Nduration_of| Nduration_that| Nduration_what| Nduration|U_$
Nduration|later Nduration|on Nduration|till Nweight_of| Nweight|leg Nweight|leg_of Nweight|near
Nweight|near_enough Nweight|prim Nweight|prim_rib P_and| P_ar| P_ask| P_com| P_do| P_is_help|
P_i| P_would| P|left P|so_plus P|want THING_N:core|Nduration THING_THING_out| THING_a| THING_go|in
THING_so|th THING_with| THING|THING_and THING|cub THING|off_th THING|stuck THING|th_edg THING|went
THING|will_i THING|would_b U_and| U_ar| U_god| U_h_is| U_is_sort| U_this| U_was| U_why| U|in_th
U|m U|r U|r_DISH U|rar U|say U|why U|with ^_DISH|THING ^_DISH|roll ^_DISH|scrub ^_N:oven|it
^_Nduration|in ^_P_say| ^_P|and ^_THING|THING ^_U_th| ^_^_go| ^_^_guest| ^_^_insid| ^_^_season|
^_^_second| ^_^_stick| ^_^_top| ^_^_you| ^_ar_you| ^_did_you| ^_go| ^_guest| ^_how_long| ^_i_heard|
^_insid| ^_it_was| ^_ok|P ^_ok|THING ^_season| ^_second| ^_stick| ^_top| ^_what_tim| ^_why_not|
^_w|skip ^_you| a_THING|giv a_fair| a_fan| a_joint| a_nic| a_right| about_th|DISH abov|th add|DISH_DISH
after_that| again_th| ago|i_put ahead|of aim_for_Nclock| all_and| all|U all|sort all|th_DISH
all|th_THING already_and| am_THING|for am_run| and_N:few| and_can| and_dav| and_it_was| and_my|
and_that| and_th|th and_you| and|N:some and|cancel_that and|dinner_is and|got and|hav_not and|help
and|i_am and|it_has and|not and|oven_is and|power and|skip and|took and|turn and|well and|what_do
any|U ar_back|on ar_do| ar_go_in| ar_hav| ar_th| ar|U ar|after ar|com ar|serv ar|tell as_it|
at_N:core_com| at_all|in at_m|when at|N:core_$ at|N:core_now at|N:oven at|tabl at|th a|list_of
a|read a|timer b_hav| b_th| back_and| back|for barely| been_at_it| befor|you behind|th_plan
bless_her| bon_in|rib burn_and| burn_th| burnt|th_DISH butter|is buy_a| by|a b|hav b|r b|too
can_P| cancel|th can|U can|b can|mak can|start can|stop can|tell can|th_P car|is chang|my channel|
charg| cheap| cheap|THING christma|dinner climb_to|N:core clock|is cold|on_th com_THING| com_w|
com|over cooker_is| cor_is| cor_temperatur|Ndegrees:core cor|has count_them| cream|is crew|
cut|myself cut|out dinner_on| dinner|back do_in| do_you| don_it_is| don_th| doneness| don|Nduration_ago
don|and_in door_and| door_is| door|on_th down_and| down_th| down|N:few do|everyth do|if do|th
drop|that eat_at|N:oven end_th| every_tim_i| everyth_is_go| fan|on fat_sid| fat|in finish|with_th
first_and| first|or first|tim flag| for_her|U for_m|so for_what| for|N:few_of french|th from|N:few
from|N:oven gat| gaug| get| get|it get|your ghe| go_and| gon_down| gon|Nduration_$ gon|ston
gon|ston_cold gon|straight got_no| got_that| got|N:few_P got|my go|Nduration go|medium go|out
go|straight_to grey|all grey|r guest_lat| guest_lat|Nduration h_eat| h_is_on| had_it_is| had|no
hamish| hang_on|th happen|if has_P| has_been| has_got| hav_a| hav_cut| hav_don| hav_gon| hav_put|DISH
hav_to_start| hav|pull held| henderson_ar_her| her_U|my her_th| her_to| her_well| her|U_my
her|already her|to hit|N:core hob|has holiday|let hot_and| hot|turn hot|turn_out how_i| how_much|DISH
how|THING how|com how|th i_THING_th| i_burn| i_ever| i_hav_N:few| i_hav_U| i_hav_cut| i_hav_no|
i_hav|no i_hav|pull i_hear| i_want|N:core i_will_do| i_work| ill|b in_no| in_pound| internal|
into|th in|kilo in|now in|rib in|so_that in|som in|th_freezer is_at|Nclock is_back|on is_becom|
is_get| is_go_U| is_her|U is_it| is_mak| is_run|Nduration is_shift| is_that|th is_what|th is|N:core_over
is|N:few_mor is|Ndate is|Ndegrees:few is|brown is|bust is|com is|finish is|mak is|rar is|start_THING
is|th_U it_by| it_forward|Nduration it_is_m| it_is|N:core it_is|lik it_is|read it_on|a it_say|N:some
it_was|th it|at_N:some it|by it|for it|has_not it|if it|in_a it|r it|still_moo it|up i|P i|THING_it
i|burnt_my i|did_not i|drop i|giv i|go i|kill i|knock i|pok i|say i|speak i|swear i|switch
i|will_not joint|in judg| kick|off land|at last|night later_and| later|than later|would lat|on
lat|or leav_it| leav|th let_us_do| let|it lik_it|medium lik|it_rar lik|sho lip| list_of| listen|to
list|for lit|th_oven long_it| look_at| look|don m_do| m_know|when m_straight| mad_th| mak_DISH|
mak|dinner mak|dinner_Nduration meant_to| meant|N:core_$ medium_for| medium_rar|is medium|rar_and
medium|rar_is mov_th| mov|dinner much_salt| much|DISH my_THING_is| my_THING|is my|DISH_is my|P_has
my|phon m|down m|fahrenheit m|fahrenheit_$ m|th_whol m|to never|mind next|door_is night_and|
nip| no_DISH|w no_it_is| non|of not_sur| noth_is| not|DISH_it not|N:oven not|begun not|brown
not|call not|put not|start_th not|talk not|too now_do| now_is| now_it| now|for no|THING_THING
no|show no|str nut|allergy n| oat|THING of_THING|now off_at| off|and_on of|god of|my_P of|salt
ok_in| ok_to| ok|th_THING old|U on_on| on_th_door| on_th_middl| on_w| on|Ndegrees:oven on|a
on|it_$ on|schedul on|th on|th_back on|th_way oona| open|Nduration option|N:few_$ or|do other|THING
out_i| outta| out|of out|sinc oven_befor| oven_do| oven_i| oven|at_Nclock oven|is_not over|at
over|from pack| pan_THING| pan_is| parchment| pass_m| pat| paus|everyth peopl|at peopl|in pink|U_not
pink|in position| present|and_correct put_THING| put_her| put_that| put|th_roast rar_and| raw|THING_in
read_N:core|on read_th| ready|for ready|or reheat| remind| rest|Nduration rib_roast|Nweight
ric| right_in| right|they roar| roast_DISH|on roast|on run_Ndegrees:few| run|out salt|on say_U|
say_and| say|anyth say|it_has say|medium_$ sear|it_first set_to| sh_was| shell| should_it|
shout_in| shov_dinner_back| show_m|th show|N:some shut|th sh|will sh|will_not sid_is| sid|down
sinc|Nduration_$ singl| skip|that sleev| slic_DISH| slic| slic|look smell| smok|alarm smok|pour
so_count| so_i| so_medium| so_noth| so_us| so_you| sorry|N:core_i soy| so|N:few_$ so|THING_is
so|tak_it starter_at| stov|Nclock stuck_th_THING| sur|it s|out tablespoon| tak_Nduration| tak_a|
tak_back| tell_m_straight| temperatur_is| temperatur_i| temperatur|in th_DISH|from th_DISH|roll
th_THING|it th_alarm| th_lad| th_long| th_next|th th_pink| th_plat|and th_stov|Nclock th_wash|
thank_for| that_is|U that_is|my that_is|when that_i| that_lot| that|DISH that|can_not that|mak
that|will them_and| then_th| ther_is_no| ther_will_b| ther|a they_ar_in| they|wer they|will
thick|end this_up| this|second_$ th|THING_over th|back th|car th|current th|extractor th|fat
th|finish th|flat th|go th|lin th|littl_N:few th|pink th|plat th|power_is th|show th|snow th|stand
th|step th|wean th|win th|you till_i_can| till_it| till|Nclock till|i tim_U| tim_and| tim|do
to_look_lik| to_tak_this| told|you too_th_shop| too|far too|low too|many touch_th| touch|N:core
to|N:few_peopl to|begin_with to|com to|giv_m to|mov to|sit trim|th_fat trip_switch| turn|up
up|and_in up|at_Nclock up|early up|from us_do| us_go|medium us|on w_ar|serv w_do|not w_got|
w_still| wait_no| wait|for wait|no wait|now walk|th_dog want|DISH was_N:core|in wash_th_THING|
was|read way_th| way_to| way|to wear| well_and| what_is_it| what_i| what_way| what|P what|do_w
what|happen what|i_could what|will when_h| when_is| when_it_is| when|N:core wher|th which|temperatur
whil_th| whil|w whol_th|back whol|THING why|it wilf| will_do|th will_se| will_w| will|that
win|in_th wish| with_and| with|THING with|th with|their work|th w|do w|go_$ w|put yet_th| you_a|
you_get| you_would_not| youd| your_P_is| your_oven| you|ask you|back you|mind you|remember
you|run you|said |@117.5 |@125.7 |@130.1 |@136.4 |@143.1 |@17.2 |@38.2 |@42.5 |@47 |@50.3 |@53.4
|@64.4 |@84.1 |@97.0 |@99.6 |DISH_U |DISH_after |DISH_duty |DISH_still |DISH_then |DISH_to
|DISH_would |N:core_when |N:few_and |N:few_now |N:few_plac |N:some_th |Nduration_ago_DISH |Nduration_and_N:few
|Nduration_my |Nduration_out |Nduration_what |THING_THING_$ |THING_eater |THING_of_DISH |THING_run
|THING_sh |THING_will |U_ar |U_i_do |U_on_th |a_half |a_miss_$ |about_it |about_that |after_Nduration_$
|after_that |again_i |all_DISH |all_finish |all_through |amaz |an_U |an_old |and_correct |and_hungry
|and_oil_$ |and_roll |and_then |and_wrap |app |as_w_speak |at_N:few_is |at_Nclock_th |b_don
|back_$ |back_$_$ |back_N:few |back_for |bail |been_go |bell |bit_$ |bit_$_$ |bit_is |block
|blood_$ |blood_$_$ |bon_in_rib |bottl_of |bowl |by_Nduration |by_m |call_m |calory |check_it
|chuck_th_DISH |coeliac |cream_left |crust |decid |did_not_ris |did_th |dinner_roll |do_$ |do_$_$
|do_at |do_i_stick |do_this |don_for |down_to_Ngas-mark |dryer |ear |end_is |enough_to |everyth_by
|everyth_by_N:some |faint |family |fancy |for_U_and |for_a_whil |for_now |forerib |from_my
|from_scratch |froz |go_at |go_i |grey_$ |grey_$_$ |h_is_off |hang_on_th |has_been |has_com
|has_gon |hav_arriv |hav_com |hav_to_rest |hav_turn_up |heat_to |heav |heaven |her_th |how_this
|i_U_$ |i_am_talk |i_hav_burn |i_mak |in_Nduration |in_from |in_kilo |in_so |in_th_lower |in_ther_$
|in_tim |in_too |in_w |is_Ndegrees:some |is_U_$ |is_alway |is_broken |is_complet |is_go |is_hav
|is_in |is_lot |is_need |is_now |is_out_of |is_r |is_smok |is_start |is_way |it_N:some |it_by
|it_from |it_giv |it_go_$ |it_lik |it_smell |it_well |it_whil |join |jun |kniv |left_in_th
|letter |lik_his |look_U |mat |might |mov_to |n_m |nicely |nobody_is_go |not_com |not_mov |now_P
|now_do |now_th_joint |of_her |off_THING |off_in_th |old |on_N:few |on_N:oven |on_Nduration
|on_all |on_and |on_on |on_our |on_th_bottom |on_th_r |on_th_sticker |onlin |oona |open_$ |open_$_$
|otherwis |out_again |out_for |out_with |oven_for |oven_it |oven_sinc |oven_will |oven_will_not
|parent |powder |prawn |put_$ |put_$_$ |question |quick_$ |quick_$_$ |r_and |reason |resident
|ris |roast_is_at |rock |rush |say_N:some |say_Nduration |seem |sh_go |shap |shut_$ |shut_$_$
|simmer |sit_in |slic_DISH |slid_off |slid_off_th |smok_com_out |smoker |spain |start_at_N:few
|still_at |such |system |teeth |tell_m_to |temperatur_i |temperatur_now |th_DISH_from |th_THING_go
|th_THING_with |th_bon_off |th_bridg |th_car_$ |th_chair |th_cream |th_dinner |th_dog_$ |th_floor
|th_garag |th_go |th_hot |th_leftover |th_lower |th_lowest |th_oven_flam |th_oven_now |th_pan_$
|th_roast_in |th_roast_out |th_temperatur |th_trim |th_water |th_window |that_back |that_bit
|that_off |ther_P |ther_b |this_morn_$ |this_on_$ |this_second |this_tim_$ |this_what |tim_i
|tim_it |timer_it |to_Nclock |to_boil |to_my |to_stop |too_early |too_high |under_THING_$ |undo_that_$
|vanish |w_go_$ |w_sit |w_still |wait_Nduration |wait_now |what_i_told |when_it_get |whol_THING
|will_hav |will_not_eat |will_not_whip |will_se |will_tak |wis_$ |wis_$_$ |with_Nduration |with_it_$
|with_th_lid |worth |would_it_b |would_you_and |would_you_i |wreck |wrong_it_is |yet_i |you_ask
|you_call |you_in |you_said_$
-19 @105.7| @28.8| @42.2| @48.2| @48.3| @49.7| @52.3| @63.6| DISH_DISH|on DISH_a| DISH_butter_all|
DISH_in_at| DISH_in|my DISH_is_DISH| DISH_i| DISH_no|i DISH_so_DISH| DISH|DISH_all DISH|DISH_is
DISH|do_$ DISH|do_i DISH|hav_been DISH|is_assembl DISH|n_to DISH|now_$ DISH|our DISH|pet DISH|should_i
DISH|this DISH|wer DISH|with_it N:core_right| N:core_too_low| N:core|about N:core|and_frail
N:core|under_th N:core|year N:few_at| N:few_bon|on N:few_or| N:few_peopl|cancell N:few|adult
N:few|down N:few|guest N:few|is_when N:few|sharp N:few|sound N:few|tonight N:few|was N:oven_and|
N:oven_th| N:oven|w_will N:some_is| N:some|hot N:some|in_th N:some|on_th Nclock_and| Nclock_w_want|
Ndate_dinner| Ndate|i Nduration_behind|th Nduration_it| Nduration_lat|so Nduration_lat|with
Nduration|down Nduration|of Nduration|th_THING Nduration|to_get Nweight|rib P_alway| P_is_U|
P_left| P_on| P_say|th P_turn| P_with| P|get P|n P|set P|sh_do P|wher P|with THING_at|Nclock
THING_back| THING_i_hav| THING_over|th THING_th|edg THING|THING_$ THING|THING_in THING|bag
THING|count THING|for_th THING|from THING|is_THING THING|show_N:core THING|str THING|tent THING|too
U_can| U_has| U_up| U_will| U_w| U|and_U U|how U|then U|up U|well_don ^_DISH|DISH ^_DISH|butter
^_DISH|don ^_DISH|finish ^_DISH|for ^_DISH|n ^_N:core|to ^_N:few|THING ^_Ndegrees:core|it ^_Nduration|rest
^_U|com ^_U|timer ^_^_cancel| ^_^_dial| ^_^_everyth| ^_^_off| ^_^_our| ^_^_pan| ^_^_peel| ^_^_ready|
^_^_roll| ^_^_say| ^_^_scratch| ^_^_smok| ^_^_to| ^_add|N:few ^_bang_on| ^_boil_water| ^_bon_ar|
^_call_m| ^_cancel| ^_dial| ^_do_you| ^_everyth| ^_green_DISH| ^_h_is| ^_hav_you| ^_i_know|
^_i_tak| ^_i_want| ^_i_was| ^_in|U ^_it_THING| ^_let_us| ^_my_lot| ^_never_mind| ^_no|sear
^_no|thank ^_off| ^_our| ^_pan| ^_peel| ^_pick_up| ^_ready| ^_remind_m| ^_right|you ^_roll|
^_say| ^_scratch| ^_sh_is| ^_show_m| ^_smok| ^_thank|you ^_that_was| ^_to| ^_what|a a_THING|THING
a_glass| a_good|Nduration a_we| abl_to| abov_th| absolut| add|N:few after_th| afternoon|look
again_and| against|th alarm_in| all_THING|th all_is| all_right|i allergic_to_THING| almost|
already|got am_slow_today| am| am|not_go am|sorry an_old| and_N:core| and_Nduration| and_P|
and_at| and_find| and_no| and_on|th and_right| and_slow|then and_still| and_that_is| and_this|
and_th|DISH and|N:few_of and|N:oven and|ar_w and|com and|h_is and|hold and|no_DISH and|serv
and|should and|sit and|so_what and|that_is and|they_ar and|w_n and|what_should and|yes any_THING|left
anyth_i| anyth|i ar_eat|at ar_not|do ar_still| ar_th_DISH| arriv_and| arriv|Nduration ar|N:few_person
ar|N:some ar|bang ar|not_hav ar|th_DISH ar|ther as_th| as_w| ask|m as|my as|you at_N:few_U|
at_Nclock_U| at_half| at|Nclock_U at|all at|how_many at|th_U at|this a|N:some a|bit a|good
a|pan a|power a|tent a|treat b_gon| b_no_DISH| back|N:some back|down back|in_th bath_is| been_on|
befor_th_phon| befor|N:core behind_on| behind|by_Nduration behind|with between_N:few| between_N:few|and
bin|it bit|is bit|of blank|on blank|on_th blaz|in board|now bon_rib|roast bon_th| boneless_rib_THING|
bon|on bon|on_it borrow| both|th bottl|of bram_say| brought|a bung| butter|for by_th| b|N:core_$
b|THING b|don b|quiet can_not_b| can_not_do| can_not|breath cancel_DISH| cancel_DISH|my cancel|all
can|keep can|sh can|tak car|hom centr|is centr|it centr|it_is check|th_THING chuck|th clock|for_th
clock|on_th cold_by| cold_on| cold|in com_over| com_up| completely|forgot com|after com|at_N:few
com|down convection|is conventional| could_w| crackl| cream_go| cream|for_th cream|in_th crispy|
cross_th| day_i| dial|THING did_a| did_th_THING| did_w| did|w dinner_back|N:some dinner_in|
dinner_in|Nduration dinner_to| dinner|by dinner|for di|and_th do_N:core| do_everyth| do_i|
do_not|U do_not|you do_this|th don_and| don_my| don|her don|it_$ door|was down|in do|anyth
do|it_n do|you_think dry|brin dry|th eat|earlier eat|th_DISH els| even|U everywher_and| excus|
explain_to_m| f_and| fahrenheit_i| fat|cap fat|finger finish_and| first_at| first|at fit|in
for_Nduration_th| for_on| forget|i_said forgiv| for|N:few for|N:few_at for|Nduration for|anyth
for|m_and found_out| fresh|DISH fresh|THING from|oven f|N:few f|N:few_$ get_DISH| giv|my gnaw|
go_with| god|help gon|out good|Nduration good|or got_a| got_th_oven| got_th| got|any got|burn
got|m go|ok gram| granddad| green|DISH_ar grey|right grey|right_through guest|ar h_do| h_has|
h_is_not| had|half had|half_th has_N:few| has_a| has_to| has|gon_to haud| hav_got_it| hav_got|my
hav_it|is hav_i| hav_to| hav|N:core hav|another hav|burnt hav|i_got hav|you_got heard|you hear|you
heat_up| heat|at heat|to help_in| her_go| her_i| her_what| her|now_$ her|with him|out his_new_P|
his|P hold_th_THING| hold_th| holler| hot_to| hotel| how_com|it how_do| how_hot| how_long|
how_many| how_much_salt| how_pink|is how_thick| how|ar how|hot how|is h|put i_am_run| i_am|sorry
i_b| i_fancy| i_got_N:core| i_remov| i_swap| i_ti| if_i_us| if|it_is if|nobody if|sh if|w in_N:few|go
in_Nduration|for in_and| in_my| insid|temperatur insist_on|DISH insist|on instead_of| inverter|
in|N:some_$ in|Nduration_i in|cream in|flam in|from in|no_they in|on in|tim in|when is_N:core|not
is_N:oven| is_N:some| is_U|at is_a_bit| is_boneless| is_for| is_go| is_how| is_in|my is_it|still
is_it|you is_medium|rar is_nearly| is_not|even is_sat| is_show|Ndegrees:core is_sh| is_that_in|
is_up|at is_whol| is|N:few_month is|alway is|boneless_Nweight is|burn is|celsius is|celsius_i
is|clos is|go is|not_ther is|pull is|read_N:core is|scream is|shift is|show is|taken is|vegetarian
is|whol it_is_a| it_is_boneless| it_is_smok| it_is_th| it_is|THING it_is|ti it_is|too it_jump|
it_was_not| it_well| it_will| it|Nclock_$ it|already it|at_N:core it|good it|is_hav it|is_medium
it|out it|was it|will_not i|can_not i|chuck i|don i|forgot_to i|not i|pull_th i|took i|turn_it
i|typ i|whack i|will jaysus_i| joint|is keep_th| keep|THING kilo|and_celsius last| last|year
lat_th| leave-in_on|say left_on| left|at left|oven_N:oven less|th let_th| let_us|mak lick|
lid|on lift|th light_went_out| lik_DISH| lik_my| lik_to| lik|his littl|U long|is lord| lost_th|
m_a| m_my| m_to| mad|a mak_m| man_is| marni| mean|by measur|N:core middl|of mind_th| mor_than|
mov|to much|THING much|salt much|tim murder|a must|i my_P_say| my_P|say my_choic| myself|on_th
my|P_can my|P_lik my|THING my|THING_ar my|THING_is m|da m|if m|if_it m|onc m|straight m|when_you
n_m| n_th_timer| nearly|ther never_got| new_dinner|tim next|on next|to nick| night|at night|befor
no_DISH|butter no_i_said| non|of_them nora| not_any|THING not_don|that not_get| not_tak| not_what|
noth|to not|N:core_it not|Nclock_$ not|all not|breath not|m not|mak_it not|pull not|ready not|requir
not|shut not|ther not|they not|wak now_THING| now_do_not| now_sorry| now|Ndegrees:core no|DISH_after
no|P_th no|blood no|i_did no|power no|shellfish no|thank no|tim number_i| number_on| n|N:few
of_THING_now| of_THING|is of_all| of_that|blood of_them|ar of_them|hav off_i| off_to| off|a
off|in_th off|on off|so_it of|it_is of|pink of|that of|what ok_th|THING ok|THING on_has| on_our|
on|N:oven_stop on|a_Nweight on|a_THING on|everyth on|fir_$ on|for on|my on|or on|plat on|th_bon
on|th_list or_th| or|is_it other_ar| our|oven out_and| out_at|Nclock out_it_is| out_it| out_with|
outsid|th out|again out|at_N:few out|on_th out|th_THING out|too oven_door|open oven_run| oven|b
oven|beep oven|is_N:some oven|run oven|to oven|was oven|will oven|will_not over_this| over_what|
overcook|it over|th_THING over|that pardon|m peopl|cancel peopl|cancell phon|is pick_up|th
pig| pink|THING pound_for| pour_out| pretty|good pull_it|now put_DISH|on quantity_of_butter|
quick|THING r_DISH|ther r_win|DISH rar_U| rar_th| raw_THING|in reason_w| recip| reckon|th remind_m_in|
remov_th| resident| rest_at| rest_it| rest|at rest|is rib_THING| ribey| right|you road|is roast_DISH|hav
roast_THING| roast_in_at| rock|up roll|go rop_in| rough_up|in r|on said_and| said_it| said_no|
salt_on| salt|to sat_out| sat|down sat|on say_that| say|N:oven_$ say|sh scrap|that se_th| sear|last
seat_and| seen|th serv|N:few set_Nduration|for set_a|timer set_off| set|Nduration_for sh_is_not|
sh_will| shellfish_allergy| shop|for shout|at shout|in show_m|N:core shower_Nduration|top show|N:core_$
show|up sho|off sid_DISH| sid|too silenc| sinc_i| sinc|N:few sit_in| sit|in_th slic_look| slip|out
slow|then so_DISH|it so_do_not| so_no|that so_that_is| so_th| someth|i someth|in sorry_th|
so|far so|how so|my so|us spot|on start|at start|to steep| still_DISH|in stov|for stov|is stretch|
stuck_on| tabl_is| tabl|for tabl|for_Nclock tak_it|that tak_this| teaspoon| tell_m|straight
tell|when tell|you temperatur_in| th_DISH_and| th_DISH|or th_DISH|pet th_THING|b th_and| th_chip|
th_clock|for th_ferry| th_fridg|at th_full| th_green| th_handl| th_middl|shelf th_night|befor
th_oven|at th_oven|b th_power| th_restaurant| th_roast_is| th_roast|out th_stov|for th_timer|off
th_way|through th_wet_floor| than_th| thank|for than|th that_is|N:core that_is|P that_will_b|
that|blood that|door that|in that|is that|is_th that|should_hav that|was them|THING them|ar
them|down them|got_her them|hav ther_b| ther_is_N:few| ther_was| ther|or they_ar|no they_got|
they_hav_got| they_want| they|got they|reckon think|my this_with| this|old this|step thought|i
throat_is| throat|is th|DISH_DISH th|DISH_butter th|DISH_no th|DISH_not th|U th|battery th|bin
th|bottom th|dinner th|doorbell th|electric th|gas th|grill th|list th|middl_shelf th|oven_at
th|phon th|pull th|rest th|right th|roast th|roll_ar th|target th|temperatur th|timer_off th|we
till_it_is| tim_for| timer_Nduration|THING tim|and_i ti|this to_Nduration| to_b|N:few to_carv|with
to_help|m to_m|in to_th| too_far| too_i| too_much|go too_th| took_her_out| took_th_THING| too|for
too|high total|N:few touch_it|if touch| to| to|breath to|do_it to|her to|mak to|pull_it to|th
to|this to|turn_th ty_it|up under|it_$ up_i_am| up_so| up_th| up|after up|i_am up|to us_DISH|
us|for us|in_th w_could| w_go|to w_hav_DISH| w_hav|N:core w_land| w_miss_out| w_still_on| wait|ther
wait|what_is want_m| warm_th|roll warm|roll was_Nduration_ago| was_read| was|i was|it was|still
water_down| water_on| way_out_do| weather| well_th| went|to wet_floor| what_did| what_do_you|
what_for| what_go_on| what_is| what_w| what|is_it what|n what|they wha| when_it_THING| when_th|THING
when|it wher|ar wher|do which_THING| which_is| whil_it|rest whil|you_wer whip_so_no| whol_th_back|
who| who|do who|hav why_ar| why_is| why_it| why_i| why_th| why|do why|i why|is_it will_b|N:few
will_not|stop will|i will|se win|DISH with_thes| with|Nduration with|everyth with|medium with|that
wok| worth| would_U| would_tak| would_th| wrong_it_is| w|eat_at w|run w|sit w|skip_th w|took
yes_i| yet_i| yet|or you_DISH| you_call| you_don| you_eat| you_hav_got| you_hav_to| you_on|
you_put_in| you_remember| you_set| you_should| you_tim| you_turn| you_will| young| your|DISH
your|oven you|count you|do_not you|get you|look_at you|sit y| zip|it |@105.6 |@109.6 |@110.0
|@123.1 |@133 |@147.1 |@147.3 |@27.2 |@4.17 |@40.2 |@47.5 |@48.8 |@52.3 |@55.4 |@56.1 |@58.3
|@63.1 |@71.3 |@74.4 |@82.3 |DISH_DISH_on |DISH_after_all |DISH_ar_ready |DISH_is_fin |DISH_is_ready
|N:core_Nduration |N:core_at_th |N:core_that |N:core_what |N:few_Ndate |N:few_down |N:few_good
|N:few_in_th |N:few_off |N:few_short |N:few_that |N:oven_DISH |N:oven_sharp |N:oven_stop |N:oven_stop_ask
|Ndate |Nduration_N:few |Nduration_ago_ther |Nduration_left |Nduration_mor |Nduration_w_ar
|Nduration_why |Nweight_N:some |P_DISH |P_left |P_us |THING_duty |THING_enough |THING_full_$
|THING_hav |THING_is_that |THING_ok |THING_out_of |THING_th |U_away |U_is_at |U_is_expect |a_lot_$
|a_no |a_pan |a_second |a_th |a_treat |a_whil |a_word |abl |abl_to |abov_th |after_th_DISH
|again_it |alight |and_DISH_yes |and_N:some |and_all_$ |and_frail |and_i_after |and_kilo_$
|and_now_it |and_sad |another_plac |ar_don |ar_on_th |ar_ready |as_per |as_you_lik |ask_$ |ask_$_$
|at_N:core_and |at_N:few |at_Ndegrees:oven |at_all_$ |at_easter |at_our |at_th_door |away_from
|away_i |believ |blink |board_now |boy |br_it_to |buck |build |bump_it_up |by_Nduration_$ |by_accident
|cam_out |can_not_eat |caravan |card |celery |celsius_and |chok_on |choos |com_$ |com_$_$ |com_out_in
|convection_$ |convection_$_$ |cook_now |corner |count_th_DISH |crook |dinner_by_Nduration
|do_in |don_not |down_a |down_at |down_i |down_to_a |downstair |dry_it |eater |either |empty
|enamel |ever |fat_THING |fin |find |for_N:core_$ |for_m_$ |for_th_U |fresh_DISH |from_now_on
|go_off |go_to_go |golf |good_shap |got_go |got_them |grow |guest_is |h_is_help |had_N:few
|half_tim |halfway |has_begun |hav_DISH |hav_all |heart |help_now |hold_$ |hold_$_$ |hom |hom_$
|hom_$_$ |hot_N:oven |hous |hum |i_do_$ |i_hav_Nduration |i_heard_you |i_said_that |in_fahrenheit_$
|in_from_th |in_her_$ |in_th_thickest |in_to |instead_of_fresh |instead_of_th |is_N:core_$
|is_N:core_and |is_after |is_allergic |is_allergic_to |is_assembl |is_bring |is_brown |is_coeliac
|is_dark |is_down |is_drop |is_her_to |is_it_for |is_mor |is_not_com |is_not_happen |is_ready
|is_reduc |is_sak |is_say |is_show |is_shut |is_slic |is_sort |is_split |is_this_on |is_under
|it_again |it_already |it_down |it_for_m |it_is_stuck |it_on_th |it_out_on |it_pink |it_this
|it_uncover |it_well_don |joint_$ |joint_$_$ |knot |know_how |lack |learn |left_$ |left_$_$
|less_than |lift_it_out |look_N:core |m_down |machin |mad_and |mak_U |meal |mil |money |my_feet
|my_last |my_to |new_$ |new_$_$ |night |nil |no_sear |nor |noth_to |now_DISH |now_THING |odd
|of_m |of_oven |off_it_$ |ok_instead |on_DISH_and |on_his |on_now |on_th_counter |on_th_joint
|on_th_wall |on_to |on_with |onc_th |or_U |or_should |out_befor |out_of_N:few |out_of_ther
|out_overnight |out_what |oven_$ |oven_$_$ |over_ther |over_what |panel |pin |plat_$ |plat_$_$
|position |problem |put_her |rar_or |requir |rest_my |roast_$ |roast_$_$ |rosy |run_$ |run_$_$
|run_Nduration |sak |salt_do |say_$ |say_$_$ |seat_and |sh_go_$ |shall_b |sinc_N:few_$ |sirloin
|slower_$ |slower_$_$ |smell_incredibl |so_much_$ |someth_$ |someth_$_$ |speak_celsius |stand_in_for
|start_now_$ |step_my |still_good |stop_to |str_$ |str_$_$ |straight_to_THING |supper_Nduration
|tablespoon |tear |test_$ |test_$_$ |th_DISH_cream |th_DISH_timer |th_Nclock |th_Nduration_N:few
|th_U_in |th_babysitter |th_beast |th_cow |th_dead |th_fat_off |th_finish |th_freezer |th_fridg
|th_guest_hav |th_job |th_lin |th_lot_$ |th_moment |th_night_befor |th_schedul_$ |th_school
|th_timer |th_vicar |th_w |th_you |than_th |that_and |that_door |that_no |that_timer |this_THING_$
|this_year_$ |till_Ndate |tim_and |to_N:core |to_N:few |to_THING_$ |to_carv |to_fahrenheit
|to_medium |to_put |to_se |to_their |to_ti_it |ton |too_and |tough |treat |up_a |up_i |up_in
|us_up |w_ar_$ |w_get |want_his |was_Nduration |was_ther |went_in_at |what_sh |whatever_i |whatsoever
|when_i_pull |when_sh_hit |when_w_eat |whil_w |will_b_eat |will_not_touch |win_in_th |with
|with_her |with_th_str |with_them |with_your |without_m |work_on_this |would_say |you_N:few
|you_P |you_and |you_tell |you_to |yusuf
-18 @1.0| @13.8| @135.5| @33.5| @35.3| @42.5| @52.4| @67.2| @92.0| DISH_DISH_ar| DISH_DISH_on|
DISH_DISH|from DISH_DISH|out DISH_U|U DISH_boat| DISH_cream|w DISH_did| DISH_in|butter DISH_is_chop|
DISH_is_not| DISH_no|th DISH_on|Nduration DISH_or| DISH_th_oven| DISH_th|DISH DISH_th|oven
DISH_will| DISH|DISH_can DISH|DISH_hav DISH|DISH_so DISH|again DISH|anymor DISH|cover DISH|dress
DISH|hav_gon DISH|in_Nduration DISH|is_chop DISH|so_DISH DISH|split DISH|th_$ DISH|timer DISH|today
N:core_U| N:core_all| N:core_can| N:core_in| N:core_not|N:core N:core_on|th N:core_over| N:core|Ndate
N:core|it_has N:core|or_N:core N:core|over N:core|right_now N:core|when_it N:few_can| N:few_good|
N:few_i_hav| N:few_it|is N:few_my| N:few_r|on N:few_sound| N:few_th_U| N:few_to|N:few N:few_who|
N:few|ar_DISH N:few|fewer N:few|green N:few|month N:few|so_w N:few|steady N:few|ston N:few|will
N:oven_what| N:oven_when| N:oven|at_Nclock N:oven|by N:oven|dinner N:oven|it_cam N:oven|lik
N:oven|now_$ N:some_no| N:some|a_THING N:some|lat N:some|of_them N:some|on N:some|quid Nclock_now|
Nclock|i_got Ndate|w Ndegrees:some|hot Ndegrees:some|in Nduration_ago_and| Nduration|THING_trip
Nduration|i Nduration|now_$ Nduration|off_and Nduration|or Nduration|timer_$ Nduration|you_hav
Ngas-mark|now P_a| P_got_her| P_hav| P_mad| P|alway P|do_not P|i_n P|lik_his P|lock P|open
THING_THING|with THING_after| THING_and| THING_by| THING_for| THING_go_in| THING_hang_on| THING_in_at|
THING_in|and THING_left|in THING_m|th THING_or| THING_out|oven THING_over|it THING_salt| THING_show|N:core
THING_th|DISH THING_without| THING|Ndegrees:few THING|THING_N:core THING|again THING|befor
THING|for THING|hang THING|her_it THING|in_$ THING|last THING|mak_th THING|say THING|smok_com
THING|stuck_in THING|test THING|under_it THING|underneath U_U|U U_and_DISH| U_a| U_go| U_no|DISH
U_over| U_th_oven| U_th|oven U_to| U_with|th U|U_U U|U_is U|after U|at_th U|eat U|is_not U|of
U|on_DISH U|they_ar ^_DISH_roll| ^_Nduration|th ^_P|say ^_THING|DISH ^_U_com| ^_U_say| ^_^_all|
^_^_boil| ^_^_bottom| ^_^_cover| ^_^_full| ^_^_left| ^_^_list| ^_^_min| ^_^_pass| ^_^_somewher|
^_^_start| ^_^_step| ^_^_suppos| ^_^_think| ^_all| ^_and|h ^_boil| ^_bottom| ^_can_i| ^_cor|is
^_cover| ^_found_out| ^_full| ^_giv_us| ^_go_to| ^_hello|P ^_how_pink| ^_i_already| ^_i_did|
^_i_set| ^_is_not| ^_i|pull ^_knock|th ^_left| ^_list| ^_look_lik| ^_min| ^_my_kne| ^_not|start
^_no|french ^_number_N:few| ^_pass| ^_right_THING| ^_sear|last ^_skip_this| ^_somewher| ^_so|w
^_start| ^_step| ^_suppos| ^_th_joint| ^_th_middl| ^_they_ar| ^_think| ^_what_temperatur| ^_what|you
^_who_is| ^_you_ar| ^_you_would| a_N:few|rib a_fresh| a_full| a_low| a_power| a_read| a_shout|when
add_Nduration|to add| add|Nduration adult|and_N:few after_Nduration|you again|slower_$ ago_and|
ago_i| alarm_in|Nduration all_cut| all_in|THING all_over|my allergic|reaction all|gon all|in
all|sort_$ all|th_way already_i| already_th| alway_run| alway|run am_after| am|gon and_Nweight|
and_don| and_flam| and_how_long| and_medium|rar and_not|N:few and_oven| and_som| and_they_ar|
and_th|THING and_w_ar| and_why| and_you_can| and|DISH_hav and|at and|burnt and|can_i and|hang
and|how_much and|rest and|right and|roast and|roll and|serv_it and|show and|skip_th and|switch
and|then and|w and|w_can and|what_ar and|when_do and|will and|wrap another|Nduration_$ an|U
ar_Nduration| ar_after| ar_in_and| ar_out|sh ar|N:few_THING ar|N:few_down ar|N:few_not ar|rest
ar|starv ar|still ar|stuck as_w|speak ask|th_THING as|anyth as|it as|w at_N:core|com at_Nclock|then
at_Ngas-mark|and at_a| at_my| at_th_DISH| at_th| at|N:core at|N:core_already at|N:core_com
at|N:core_it at|Nclock_i at|her at|least at|onc at|their at|your away_with| a|DISH_DISH a|Nduration
a|bath a|car a|chicken a|glass a|sit a|slic a|yell b_Nduration|behind b_away| b_a| b_back|
b_on| back_Nduration_th| back|at beast| been_THING| been_go| been_rest| beep|at beep|so beep|so_it
began_THING| behind|her ben| bigger| bin|th blast_at| bless| blink| bon_off| bon|off bother|sear
bother|with bottl_of| bottom|shelf bought_a| brb|Nduration bung|th butter_and| butter_for|
butter|so_no buzz| by|N:few_$ by|Nclock_$ b|sit b|sit_down calibrat| call|m cam|U can_U| can_help|
can_not_find| can_not_hav| can_not_i| can|it can|not_keep can|w_eat car_is| carv_and| car|pull
cast_iron|THING cast| caterer| celsius|not chang|th chop_and| christma|dinner_at chuck_th|
clock|for coat|ar cold_and| colour| com_N:few| com_at| com_back| com_i| com_th| company_is|
company| com|after_all com|along com|out_of com|through could_b| could_go| could_hav| could|w
count_m| cover|in cream_is| cream|left cri| cut|them daft| death| dial_THING| dial_is_in| diall|
did|a did|i_say digital| dinner_and| dinner_at|N:oven dinner|N:oven dinner|Nduration_later
dinner|at_Nclock dinner|on display|is ditch|th di|on_m do_and| do_i_go| do_not_believ| do_not_bother|
do_not_do| do_not_eat| do_th_THING| don_DISH| don_i| don_to| door_to| door|is_th door|it_will
door|on door|will down_by| down_on| down_to_N:few| down_with| down|Nclock_$ down|and down|on_th
do|i_us do|not_keep do|not_start do|this do|thos dress|th dress|th_DISH drop|Ndegrees:few dun|
eat_at|Nclock eat|by eat|r eat|what els|could end_is| end|up enter| every_last| everyth_and|
everyth_on| everyth|look everyth|that everyth|that_is explain|th extra| f_th| family_is| fan|off
fat_is| fat|sid fat|this find|th finger|on finish_THING| finish|at first_lot| first|lot flam_and|
for_my| forget|check forget|check_th forgot|th for| for|THING for|U_and for|th_roast for|that
for|you_$ for|your freez| full|schedul get_away_with| get_that| giv_it|Nduration giv_us_a|
gi| glass|on golden|as gon_off|so gon|and_drop gon|dark gon|in gon|to gon|walkabout got_N:few_P|
got_any| got_burn| got_her|Nduration got_to_b| go|medium_rar go|to go|to_wait guest|hav h_is|N:few
had_N:some| had_no| had|th half_th| halfway| happy_with| has_gon|off has_gon|to has|P has|a
has|gon has|gon_way has|got_U has|got_a haul_th| hav_got|N:core hav_had| hav_not_even| hav_remov|
hav_th| hav_you_don| hav| hav|N:few_oven hav|got_it hav|this head| her_can| her_w| her|down
hid| his_P_so| his|U his|medium hold|at honestly|let honestly|let_us hot_pan| hot_th| hot|by
hot|is hous_is| hous|at how_U| how_com_w| how_com|w how_do|i how_hot|is how_is_it| how_long|can
how_long|do how_much|THING how|ar_w how|i h|can i_am_after| i_am|gon i_am|nip i_can_us| i_could|
i_count| i_do|not i_got_to| i_hav_a| i_hav_mad| i_hav_not| i_hav_remov| i_hav|N:few i_hav|Nduration
i_hav|burnt i_keep| i_left| i_order| i_said_N:few| i_tak_it| i_want_it| i_want_th| i_would|
idea|how if_that_is| if_they_ar| if|h if|they ill_b| in_THING|in in_at|N:oven in_it_is| in_it|go
in_oven| in_to| in_what| insid|th_oven instead_and| into_it| in|Nduration_for in|at_th in|it_$
in|middl in|no_tim in|pound in|th_end in|th_garag in|th_lower in|th_top in|yet iron|THING iron|pan
is_N:core|too is_Nclock|th is_THING_THING| is_all|go is_and| is_as| is_at|N:few is_at|N:oven
is_caught| is_chop| is_com|too is_delay|Nduration is_happen| is_hav_it| is_in|a is_in|at is_in|their
is_it_on| is_lik|th is_not_a| is_not|com is_not|it is_not|right is_nowher| is_offer|to is_on|at
is_on|now is_our| is_out|on is_past| is_set| is_sinc_Nduration| is_sit_on| is_split| is_stop|
is_th_next| is_th_oven| is_th_point| is_th_ros| is_ther|any is_way| is|another is|back is|boneless
is|do_a is|expect is|fin is|giv_m is|it_go is|knock is|m_and is|not_in is|our is|oven is|pink
is|pur is|rest_under is|right is|roll is|season is|serv is|smell is|spit is|ston is|ston_cold
is|temperatur is|tent is|th_DISH is|th_roast is|vegan is|what_i it_a| it_beep|so it_do_not|
it_good| it_in|too it_is_hav| it_is|boneless it_is|tent it_right| it_roll|off it_say|N:few
it_this| it_will_b| it_w| it|alon it|don_$ it|is_Nclock it|is_THING it|is_smok it|keep it|off
it|or_what it|run_a it|was_not it|went_in it|without i|bump i|bump_it i|drop_th i|grab i|grab_th
i|hav_to i|know i|mad i|meant i|miss i|set_th i|took_it i|whack_it joint_in| joint_is| joint|do
joint|out kev| know_i| know|if lady| land_at| land_on| land|on lard| last_i| last|entry last|tim
lat_i| lat|again lat|for left_oven|N:oven let_us|eat let_us|go let_us|not lettuc| lift_th_THING|
light|is lik_her|well lik_that|is lik_th| lik|it_still list_th| list|everyth_i load_shedd_start|
longer_is| long|can long|do long|is_it look_for| lost_N:few| lost_a| los|th lot|ar lot|hav
low_in_th| low|in low|in_th m_U| m_in|N:some m_som| mak_dinner|N:oven mak_it|Nclock mak|that
maria| meant|to medium_is| medium_i| medium_rar|for medium_well|for method|for met| mind|you
miss|out mor|or mor|tim mor|timer mouldy| much_i| must_i| must_th| my_P_no| my_parent| my|N:few
my|P_is my|THING_has my|read m|Nduration_behind m|a_N:few m|back m|how_to m|in m|now m|why
nam_is| near|enough near|th never_said| next_door|is next|step next|then night|in no_P_th|
no_fan_on| no_it_roll| no_that_is| no_undo_that| nobody|will not_been| not_bother|sear not_clos|
not_trust_that| noth|is notion| not|N:some_$ not|clean not|eat not|even not|finish not|look
not|sur not|tak_it not|tell not|turn_th now_N:core|it now_th_oven| now|is_N:core now|it_is
no|DISH_$ no|dog no|dry no|dry_brin no|electricity no|electricity_sinc no|flower no|idea no|th_green
no|way nudg| n|Nduration of_THING|mak of_oven| off_and_ti| off_th_Nduration| off|and_ti off|th_pac
off|this of|roast of|th_P of|th_other of|th_roast ok_i_am| ok_look| ok|THING_is on_all| on_at|
on_by| on_hold| on_th|middl onc_it_is| on|at_Nclock on|his on|in_th on|our on|th_lowest on|without
open|a open|it open|that or_is_it| or_it| or|DISH or|N:few or|ar or|what other|sid our|THING
out_for| out_so| out|a out|befor_it out|it_com out|my_P out|sh_com out|th_butter oven_for|
oven_is_not| oven_w| oven|in oven|too over_at| overdon|it_$ over|N:core_$ own| pan_i| pass|on
pat_it| pat_it|dry pay_m| pencil_in| pencil_in|DISH peopl_not| pick_at| pick_up|P piec|of pink_U|
plus| preheat|to present_and| priya|is pull_at_N:core| pull_th_THING| push|dinner put_th_dinner|
put_th_roast| put|N:few put|Nduration put|th_oven p| p|m queu| r_DISH|is r_DISH|so r_in| raw_in|
reach|N:core_$ ready_i| ready|to ready|when_you read|N:few replacement_for| rest_a| rib_with|
ribey_roast| right_th| right|for roast_at| roast|DISH_in roast|in roast|on_th roll_and| rop_in|th
ros|don ros|don_$ run|hot r|on_th said|N:core_not salt_to| sat_at| sat_ther| sauna| say_i|
say_on| say_on|th school|run scrap_DISH_DISH| scrap|th seat|and_hungry serv_it_pink| set_th|
set|N:few set|to sh_want| sh_will_b| shall_b| shedd_start| shellfish|allergy should_th_oven|
should|i should|not shov_it| shower|giv shower|giv_m shut|that sh|do sh|say sinc_Nduration|in
sit_down|at sit|out slic_my_thumb| slic|it slid_th| smok|is so_th_DISH| so_th|THING so_w_will|
so_w| someth|is sorry_not| sorry|i_meant sound|good sound|lik so|noth so|push so|sh_is so|they_ar
so|well so|well_don so|what so|what_ar squint| start_on| start_to| start|Nduration start|now
step_i| stick_thos| still_cold| still_on|th still|no strik|th stuff_th_DISH| such| sur_it|
tabl_and| tabl|at tak_it_that| tak_over| tak_over|th tak|Nduration talk_to_m| tell|on tell|on_mor
temperatur|for th_DISH|cover th_DISH|cream th_DISH|stand th_Nduration|th th_P|is th_THING_b|
th_THING|go th_THING|say th_U_is| th_bathroom| th_butter|so th_fat|cap th_flat| th_full|schedul
th_leave-in| th_littl| th_lot|of th_lowest| th_low| th_middl|of th_morn| th_oven|down th_pan|handl
th_point| th_roast|in th_ros|don th_small| th_tabl_and| th_thick|end that_is_a| that_is_not|
that_on|is that|THING_$ that|is_all that|last_on them|all_sat them|is them|out then_it| then_i|
ther_and| ther_in| ther|any ther|for ther|was they_hav| they_keep| they|eat they|want think_it_is|
this_THING|for this_old| this_what| this|DISH this|in this|sid this|year through_and| through|it
th|DISH th|DISH_all th|DISH_go th|DISH_has th|bit th|boil th|bon_in th|bridg th|edg th|fir
th|grey th|guest th|hot_THING th|low th|orang th|rar th|raw th|restaurant th|roll th|salt th|sam_as
th|sear th|sh th|stick th|tabl_for th|thickest th|very tim_do| tim_m| tim_th| timer_and_th|
timer_and| timer_i| timer|her timer|of to_N:core_in| to_carv_it| to_death| to_eat|Nclock to_know|when
to_mov| to_salt| to_sear| to_stop| too_DISH_in| too|salty top_off| town| to|N:core_$ to|N:core_under
to|a to|carv to|fahrenheit to|sear to|tent to|wait trust_that| turn_out|my turn_that| turn_th|
turn|out turn|th_U turn|that ty|it_up t| up_and| up_at| up_a| up_for| up_i| upsid| upsid|down
upstair|to up|N:some_so up|after_th up|her up|lovely up|or up|when_it us_and| us_this| us|DISH_out
us|THING us|eat_at us|it_$ us|that us|that_is villag| w_ar_do| w_can| w_hav|no w_on| w_shall|
w_wer| wait_i| wait_what|is want_his| want|N:core_in want|THING want|U want|for warm_th| warm|any
warm|th_plat was_N:core_in| was_Nduration_lat| was_don| wash|up was| was|Nclock was|Nweight
was|my_P watch_th| watch|th_DISH water_boil| water|down way_i| welcom| well_N:few| well|for
went_in_at| went_on|Nduration what_ar|you what_go| what_hav| what_heat| what_is_medium| what_would|
what|i what|temperatur when_Nduration| when_th_THING| when|can_i when|is wher_th| wher|ar_w
wher|i wher|it whol|th who|hav_not who|is why_ar_w| why_do_not| why_do|i why|is wifi| will_b_gon|
will_hav_it| will_hav| will_that| will|do will|put with_Nduration| with_salt|and with|DISH_DISH
with|it with|m with|th_U with|your work_th| would_go| would_lik_to| would_rather| would_you|do
would_you|look would|U wreck| w|U w|speak w|took_it w|would yank_it_out| year|old yell| yes|i
you_and| you_ar_on| you_can|stop you_cut_m| you_in| you_stop| you_wer| your_mouth| your_sho|
your|coat you|call you|mak you|n you|tell_m |@0.2 |@100.4 |@117.0 |@123.0 |@127.2 |@131.1 |@133.1
|@140.0 |@141.5 |@18 |@26.4 |@3.8 |@37.3 |@45.2 |@51.3 |@57.2 |@7 |@74.1 |@84.0 |DISH_DISH_so
|DISH_do |DISH_nobody |DISH_should |DISH_this |DISH_up_$ |N:core_right |N:core_under_th |N:few_i_hav
|N:few_it |N:few_less_than |N:few_rib_on |N:few_sh |N:few_so |N:few_they_ar |N:some_DISH |N:some_at
|N:some_dollar |Nclock_THING |Nclock_it |Ndate_$ |Ndate_$_$ |Ndate_th |Ndegrees:oven |Nduration_ago
|Nduration_later_would |Nduration_my_P |Nduration_on_for |P_lock |THING_how |THING_lik |THING_my
|THING_th_tabl |THING_trip |THING_under_it |a |a_DISH_DISH |a_THING_pan |a_day |a_leg |a_million
|a_sid |a_slic |aff |after_all_so |after_i |after_it |all_right_for |already_$ |already_$_$
|altogether_$ |altogether_$_$ |american |and_eat_at |and_everyth_$ |and_non |any_mor_$ |ar_at
|ar_hav |ar_in |ar_my |ar_nowher |ar_sit |ar_still |ar_w_look |ask_how |ask_how_long |assist
|at |at_N:core_i |at_N:few_tonight |at_Ndegrees:core |at_Ngas-mark_$ |at_th_back |at_th_shop
|b_U |b_for |b_medium |back_from |backward |bast |bath_th |befor_th_phon |best_$ |best_$_$
|bird |bit_of_THING |blood_pressur |blown |boat |boil |boiler |boot |burn_and |butter_all |by_th_U
|can_eat |can_not_go |careful_with_her |chew |com_Nduration |cream |crew |cri |degre |delay_$
|delay_$_$ |diall |dinner_and |do_not_mind |do_with |do_you_want |don_my |down_$ |down_$_$
|down_N:few |down_my |down_to_N:some |dry_brin_this |dry_th |e |electricity_sinc |end_i |enough_DISH
|entry |even_U |every_Ndate |everyth_i_n |f_N:few |f_N:few_$ |finish_at |flat_$ |flat_$_$ |for_som
|for_th_roast |for_us_$ |forgot_to_tell |forward_Nduration |fresh_THING |from_U |from_your
|fussy |get_a |get_on |go_right |go_th |gon_up |good_and_hot |good_for |got_$ |got_$_$ |got_in
|got_m |green_DISH_$ |h_is_not |h_would |has |has_di |has_had |heat_N:few |heat_up |her_$ |her_$_$
|her_Nduration |her_no |her_out |him_in |hol |hook |host |hot_U |hot_now |how_to |i_$ |i_$_$
|i_am_N:few |i_am_about |i_am_so |i_am_with |i_am_yet |i_buy |i_gav |i_n_for |i_n_from |i_pok
|i_should_b |i_want_$ |if_h |if_i_us |if_that_is |in_N:few_$ |in_Nclock |in_at_N:oven |in_boil
|in_boil_water |in_do |in_ic_water |in_it_now |in_no |in_th_centr |in_th_hall |in_th_loung
|in_th_whol |in_your |instruction |is_N:core_over |is_N:some_$ |is_and |is_at_N:few |is_bad
|is_caught |is_chop_an |is_clos |is_finish_and |is_giv |is_good |is_hot |is_medium_$ |is_nearly
|is_open |is_over |is_put |is_raw |is_rubbish |is_smell |is_stop |is_stuff |is_that_ok |it_Nweight
|it_at_N:core |it_don |it_good |it_in_a |it_is_now |it_is_show |it_last |it_my |it_still_moo
|it_up_$ |it_what |jar |job |joint_Nweight |kind |lady |last_$ |last_$_$ |last_entry |last_th
|lat_Nduration |lat_and |lik_DISH |lik_Nduration |lik_Nduration_ago |lik_i |lip |list_and |m_N:core
|m_th_THING |m_till |m_till_it |m_twic |m_twic_as |mad_that |mak_th_cooky |many |medium_and
|metr |microwav |mik |mor_tim |mov_$ |mov_$_$ |my_THING_on |n_another |n_longer |n_to_eat |natter
|never_been |not_all |not_say |not_tell |not_us_it |nowher_near_ready |number_$ |number_$_$
|number_N:few_$ |of_Nweight |of_my |of_them_$ |of_tim |off |off_DISH |off_a |off_th_DISH |off_th_U
|offer |ok_instead_of |on_at_th |on_no |on_so |on_th_timer |on_tonight |on_top_$ |on_wash |on_wash_up
|on_yet |open_for |or_N:core |or_am |or_am_i |or_near |out_N:core |out_already |out_of_this
|oven_befor |oven_in |oven_is_fre |oven_it_is |oven_sinc_Nclock |oven_to |overnight_$ |overnight_$_$
|oyster |parchment |peanut |peel_and |peopl_in |play |possibl |power_has |prefer |pull_at |pull_in
|pull_up_$ |r_THING |rar_not |rar_so |rar_this |rar_what |reaction |rest_a |rest_for |right_back
|rop |run_Nduration_lat |run_back |run_back_in |saf_for |say_h |say_on |say_on_th |say_sh |screen
|sec |sell |set_at |sh_is_brought |sherry |shop_and |should_th_oven |sinc_Ndate |singl |sink
|sit_on |sky |so_DISH_it |so_THING |so_long_$ |so_w_would |sol |som_roll |sound_good |spr |steak
|still_got |still_n |straight_away |styl |tak_THING |talk_to_you |tell_you |telly |temperatur_$
|temperatur_$_$ |th_DISH_P |th_DISH_bless |th_DISH_must |th_DISH_sh |th_DISH_so |th_DISH_w
|th_THING_at |th_block |th_bottom |th_bridg_is |th_candl |th_count |th_fat_$ |th_fat_cap |th_film
|th_finger |th_flat |th_grey |th_grill |th_kettl |th_mak |th_mak_of |th_menu |th_middl_$ |th_next
|th_option |th_oven_sinc |th_pac |th_paper |th_right |th_roll_$ |th_sear_a |th_tap |th_til
|th_truss |th_truth_$ |th_up |th_whol_plan |than_that |that_DISH_timer |that_at |that_cam |then_drop
|then_drop_it |ther_in |ther_is_THING |ther_or |this_on_th |this_up |this_week |this_whol |thos_bon
|thousand |through_it |through_th |tim_Nduration |timer_$ |timer_$_$ |timer_it_is |to_Nduration
|to_begin |to_begin_with |to_hav |to_know |to_m_$ |to_mak |to_nut |to_th_THING |to_ti |to_work
|to_your |today_$ |today_$_$ |too_long |touch_anyth |trivet |truck |trust |turn_to |us_THING
|van |w_hav_DISH |w_talk |walkabout |want_his_well |want_supper |warm |was_N:few |was_don |water
|water_is |wear |well_don_and |what_i_am |what_you |when_N:core |whol_family |will_b |will_eat
|will_look |will_look_after |will_not_hav |with_his |with_that_$ |without_DISH_$ |wrong_$ |wrong_$_$
|wrot |yet_th |you_allow |you_ar_tell |you_lik |you_set |you_so |your_coat
-17 @10.3| @101.1| @108.5| @130.0| @137.2| @137.4| @141| @144.5| @40.2| DISH_DISH|or DISH_DISH|too
DISH_ar_all| DISH_butter|don DISH_b| DISH_do| DISH_go_on| DISH_halv_s| DISH_has_been| DISH_in|a
DISH_it|alon DISH_off|th DISH_th|THING DISH_under| DISH_what| DISH_would_go| DISH|DISH_how
DISH|DISH_still DISH|U_U DISH|bak DISH|bless_him DISH|can_go DISH|for_DISH DISH|get_th DISH|halv
DISH|has_been DISH|idea DISH|in_U DISH|in_a DISH|is_cut DISH|n_another DISH|n_longer DISH|out_$
DISH|solid DISH|till DISH|under DISH|w_will N:core_do| N:core_my| N:core_tell_m| N:core_this|
N:core_too| N:core_which| N:core|U_i N:core|for_th N:core|insid N:few_DISH|N:few N:few_do|
N:few_for| N:few_how| N:few_plac| N:few_that_is| N:few_w| N:few|U_$ N:few|U_N:few N:few|burner
N:few|plat N:few|year N:oven_so| N:oven|about N:oven|about_Nduration N:oven|in_ther N:oven|th_whol
N:some_in_th| N:some|for_th N:some|over N:some|with Nclock_at| Nclock_for| Nclock_i| Nclock_my|
Nclock_not| Nclock|it_was Ndate_at| Ndate_i| Ndate_night|at Ndate|night Ndegrees:core_in| Ndegrees:core|let_m
Ndegrees:core|now Ndegrees:core|on_th Ndegrees:oven|convection Nduration_ago_DISH| Nduration_ago_i|
Nduration_ago|ther Nduration_befor|w Nduration_behind|schedul Nduration_down|on Nduration_it_is|
Nduration_later_and| Nduration_later|than Nduration_th|oven Nduration_till| Nduration_w_ar|
Nduration|N:few Nduration|approximately Nduration|is_delay Nduration|rest Nduration|so Nduration|too
Nduration|too_lat Ngas-mark_and| Nweight_bon| Nweight|forerib P_P|is P_ar_in| P_got| P_lik|
P_tonight| P_tonight|so P_who| P|at P|from P|is P|is_chok P|on P|said P|say_th P|th_roast THING_N:core_and|
THING_N:few|too THING_THING_over| THING_THING|N:few THING_as| THING_b| THING_my| THING_not|
THING_no|THING THING_of|DISH THING_over|a THING_pan_and| THING_will| THING|THING_her THING|after_all
THING|and_a THING|and_all THING|anywher THING|back_Nduration THING|board_now THING|enough THING|for_a
THING|in_a THING|in_and THING|is_N:core THING|out_$ THING|roast THING|with U_from| U_is_hav|
U_not|all U_no|no U_on|DISH U_start| U_well|don U|for_th U|keep U|want ^_DISH_th| ^_DISH|peel
^_N:few|peopl ^_Ndate|dinner ^_Ndegrees:core|is ^_Nduration|back ^_P_is| ^_THING_leg| ^_THING|m
^_U_god| ^_^_anyth| ^_^_any| ^_^_away| ^_^_bit| ^_^_bon| ^_^_clear| ^_^_fat| ^_^_final| ^_^_gon|
^_^_has| ^_^_kindly| ^_^_last| ^_^_mov| ^_^_new| ^_^_oi| ^_^_platter| ^_^_school| ^_^_shut|
^_^_still| ^_^_that| ^_^_their| ^_^_this| ^_^_traffic| ^_all_N:few| ^_anyth| ^_any| ^_away|
^_bit| ^_bon| ^_b|back ^_can_P| ^_can_w| ^_clear| ^_cook_it| ^_cor|N:core ^_don|and ^_fat|
^_final| ^_gon| ^_got_th| ^_h_said| ^_has| ^_hav_w| ^_how_THING| ^_i_thought| ^_in_U| ^_in|it
^_is|P ^_i|set ^_kindly| ^_last| ^_let_it| ^_let_m| ^_mov| ^_my_DISH| ^_new| ^_no_not| ^_not_befor|
^_no|fan ^_oi| ^_ok_so| ^_ok|U ^_out|sh ^_pencil_in| ^_platter| ^_pull|th ^_r_DISH| ^_remov_DISH|
^_s_out| ^_school| ^_shall_w| ^_shut| ^_so_you| ^_so|it ^_still| ^_tak_it| ^_th_N:few| ^_th_cream|
^_th_guest| ^_th_pan| ^_th_shop| ^_that_THING| ^_that| ^_their| ^_this_THING| ^_this| ^_top_oven|
^_traffic| ^_what_about| ^_what|i ^_why_is| a_THING|of a_THING|with a_U_com| a_bit|of a_boneless|
a_fir| a_helper_today| a_list_of| a_man| a_r_DISH| a_roast| a_shout_in| a_slic| a_timer|on
a_we_bit| a_whil_got| about|my_oven about|right add|a add|roast add|roast_DISH after_it| after|i
again_i_was| again_in| again_it_is| ago_DISH| ago|ther aim|for alarm|for all_N:few|of all_don|her
all_i| all_on| all_right|for all_right|to all|N:few_$ all|guest all|guest_ar all|i_hav all|night
all|sid all|that alon|for already|N:core already|hav alternativ| am_Nduration|off am_about_to|
am_get| am_i|after am_off| am_tell_you| am_tell|you am|N:some am|gon_for am|head am|hold and_DISH|hav
and_U_no| and_a|half and_can_i| and_can|w and_hav| and_how_com| and_how| and_i_am| and_it_THING|
and_nobody| and_roll| and_then_th| and_ther| and_th|N:few and|DISH_DISH and|P_is and|am and|am_i
and|count and|do_not and|don and|fahrenheit and|forget_th and|gon and|his and|i_can and|i_will
and|i_would and|look and|medium_rar and|now and|sh_is and|still and|th and|th_THING and|th_oven
and|this and|tim and|took_it and|wait and|why_do and|you_ar another_Nduration| any_idea| anyth_i_should|
ar_THING_so| ar_already| ar_a|no ar_not_brown| ar_not_do| ar_out|of ar_rest| ar_run| ar_too|
ar_w_on| ar_w|look ar_you_N:few| ar|N:few_$ ar|Nduration ar|arriv ar|don ar|get ar|hav ar|nowher_near
ar|run_lat ar|w_go as_my| as|U as|th at_N:core_no| at_N:few|sharp at_N:few|to at_Ndegrees:core|let
at|N:core_and at|N:core_i at|Nclock_Ndate at|Ngas-mark_$ at|th_N:few at|th_THING away_from|
a|THING a|boneless a|miss a|nic a|plat a|sit_down b_at| b_gon|Nduration b_lat|by b_mor| b_to|
b_worri_that| back_at| back_in|N:few back_up| back|N:few_$ back|after back|down_to bag|of bail|so
barnaby| bath_th| beat_m| been_in| been|U been|go befor|th befor|th_tim begin|with behind_and|
behind_by| behind_it|is bert| bin|out bit_of_sirloin| bit_of| bit|behind blood|pressur boil_and|
boil_th| bon_in_it| bonfir|night bon|ar_french bon|skip_th bother_sear| bother_with| breaker|
bridg|is bring|th brisket| brought_th|oven bum| burnt_th| burnt|my_THING butter_is| butter|don
buy|a by_N:oven|in by_Nduration|approximately b|DISH b|careful b|patient b|put cam_U_not| cam_out|Nduration
cam_with| cam|off cam|off_th cam|with can_do| can_i_hav| can_not| can_not|turn can_th| can_w_do|
cancel_all| cancell|so can|P can|do can|not_go capital| carry|th chang_to| check|with check|with_th
chip_pan_is| chuck_it| chuck_som| coat|on cold|in_th cold|th com_Nduration| com_out_THING|
cook|in cook|now cor|N:core_$ could|you count_m_down| cover_in| crank| cream|for cream|go cream|i_do
cream|on cri|off cut_up|and cut_what| dav|turn dav|turn_th dead|centr did_h| did_not|U did_sh|
did|U did|h did|i did|sh dinner_by|Nduration dinner_is|go dinner|is_Nclock do_it|n do_not|let
do_not|mak do_not|start do_not|w do_this_th| do_to| do_with| do_you|reckon dog|has dog|out
don_by| don_no| door|hang door|now door|will_not down_Nduration|for down_a| down_is| downstair|
down|lik down|th_U down|yet do|Ndate do|for do|i_put do|i_tak do|not_U do|not_lik do|not_tell
do|not_touch do|their do|us draw| drink|in drink|in_THING driv|m drop_th_whol| drown| early_to|
eas| eat_i| eat|Nclock_$ eat|U edg|to edg|to_edg end_and| end_up| end|of enough_to| enough|out
enough|out_of everyth_in| everyth_tak_m| every|Nduration faff_about| fan_and| fan_is|off fat|up
fat|up_or feel|lik fill|m fill|m_in finish_th| fin|by fin|by_m first_on| first_th| first|guest
first|guest_ar first|on first|then_down fit_in| flap| floor_th| flower| fold_in| fold| for_Nduration|and
for_anyth| for_his| for_medium|well for_your| forget_th|Nduration forget_what| forgiv|m forgotten|
forgot|th_DISH for|N:few_peopl for|Ndegrees:core for|help for|is_th for|th_N:few for|th_P fresh|DISH_$
fridg_at| fridg_it| fridg_i| fridg|cold from_N:core_to| from_a| from_th_THING| from|U from|fridg
from|scratch full|of gas_mark| gav_you| giv_m_a| giv_my| giv_th| giv|you glass_on| gluten_fre|
go_back|N:few god|P gon|all gon|cold gon|hom good_with| good|THING good|even good|with got_a_Nweight|
got_enough| got_enough|DISH got_it|out got_to| got|th got|that go|on_th go|over grey_and| guest_and|
guest_ar_in| guest_at| guest|list gym_back_in| h_at| h_got| h_is|hav h_put| halv_s| halv_s|U
hal| hang_in| hang_open|Nduration happen|when happen|when_$ has_gon|hom has_gon|in has_gon|out
has_gon|walkabout has_got_th| has|not_reduc hav_DISH|th hav_U_th| hav_been| hav_chang| hav_fallen|
hav_got|no hav_it_on| hav_not_don| hav_not|put hav_said| hav_to_b| hav|N:core_in hav|cut hav|knock_it
hav|salt hav|som hav|ti hav|whack hav|whack_it heat_N:few| heat|do heat|is heat|th_fat help|with
her_so| her_ther_is| her_with| her|oven her|own him_at| hit_N:core_and| hit|N:some hold|dinner
hold|dinner_for hold|it holler_at_m| hop|that hop|that_is hot_sh_is| hous|has how_do|you how_is|sh
how_long|hav how_long|is how_many_THING| how_soon| how|do how|do_i how|this h|eat h|say i_after|
i_am_get| i_am_off| i_am|N:some i_am|hold i_did|not i_gav_you| i_hav_fallen| i_hav_overshot|
i_hav|salt i_hav|whack i_know_i| i_meant_th| i_not| i_n| i_open|th i_pull|th i_season| i_season|th
i_trim| i_trim|th i_us_THING| i_will_se| i_will_start| ic_water|test ic|water id| if_sh| if_you|
if|th in_DISH_DISH| in_Nduration_DISH| in_Nduration_th| in_boil| in_boil|water in_ic| in_law_ar|
in_law|ar in_our| in_th_lower| in_th|thickest insid_is| into_th| in|Ndate in|U in|befor in|for
in|ic in|march in|th_THING in|th_bottom in|th_pan in|th_plan in|th_shop in|with is_Nduration|i
is_U_th| is_a_fir| is_a_good| is_another| is_an| is_chok|on is_cover|in is_do| is_go|U is_hav|it
is_heat_up| is_heat|up is_help_m| is_h| is_in_at| is_it|N:few is_next|then is_not|don is_not|finish
is_not|got is_not|ready is_not|well is_now|N:oven is_off|now is_on|a is_out|and is_pregnant|in
is_read|Ndegrees:core is_roll| is_show|N:core is_so| is_swell| is_tak| is_th_butter| is_th_middl|
is_that_th| is_that|go is_ther_anyth| is_ther|a is_ther|anyth is_th| is_to| is_water| is|N:core_not
is|N:few_$ is|N:some_in is|U_and is|U_th is|a is|a_N:few is|bad is|begun is|blood is|burnt
is|cut is|dead is|dinner is|eat is|empty is|gorgeous is|happy is|how_w is|it_still is|never
is|next is|next_$ is|not_even is|nowher is|r is|shot is|slic is|thin is|throat is|too is|your
it_at|N:oven it_cam_out| it_down|to it_in_at| it_is_don| it_is_stuck| it_is|a it_is|brown it_is|rest
it_is|show it_is|still it_is|thin it_keep| it_look_lik| it_look|lik it_n| it_off|at it_on_U|
it_or| it_say_on| it_smell| it_tak| it_touch| it_to| it_was_hot| it_what| it|Nduration_sooner
it|again it|all it|all_over it|hot it|in_it it|is_N:core it|is_grey it|is_own it|said it|straight
it|to it|twic it|yet i|DISH i|DISH_out i|U i|am i|clos i|ever i|n i|put_th i|remov i|said i|sent
i|start i|still i|want i|wash i|wash_th job|don job|in joint_do| join|us kept_th| kevin| kill_th_DISH|
kindly|cancel knock_on| lagg_by| lagg_by|Nduration last|Nduration last|read lat_and| lat_with_THING|
law_ar| law|ar lay|N:few leak| leftover| let_it_go| let_it|rest let_m|forget light_went|out
light|on lik_his_THING| lik|P lik|i_am lik|i_hav lik|you_said liv|room load_with_DISH| long_do_it|
longer_they_ar| long|hav lost_my| lost|Nduration lot_hav| lunch|Ndate_Nclock m_Nduration_on|
m_at| m_at|Nduration m_down|Nduration m_i_am| m_it_is| m_it| m_i| m_th| m_to_do| m_when| m_why|
mad_i| mak_it|N:few mak_with| mak_you| many_DISH|for many_THING| many_th| meant_th| mean|N:core
measur_of_THING| medium_U| medium_rar|or medium_th| method_for| middl_is| mil|off min_is| mind|th
mind|your mor|than most|of mov|it much|longer my_P_tonight| my_THING_THING| my_THING_it| my_feet|
my_oven|it my|P_say my|THING_THING my|flatmat my|roommat m|after_Nduration m|don_$ m|forget
m|option m|oven m|oven_is m|someth m|that_$ m|to_do n_DISH|DISH nam_is|U near_th| never|been
next_th| next|Nduration next|tim next|week nic|U no_N:core|not no_THING_for| no_THING|pan no_it|
no_th| no_tim_to| no_tim|to no_w_ar| nobody_eat| non|of_th not_a_chanc| not_at| not_bother_sear|
not_carv| not_let_m| not_mean| not_salt| not_salt|it not_speak_celsius| not_start|th not_want|th
noth_and| not|all_of not|cover not|cut not|do_th not|finish_th not|peel not|pull_it not|risen
not|us now_how| now_w| now|at now|i_must now|if no|DISH_for no|DISH_th no|cream no|heat of_DISH|DISH
of_it_is| of_my_P| of_pink| of_plan|w of_us|and of_water| off_is| off_on| off_th| offer_to|
off|Nduration off|it_$ off|now_$ off|so_no off|th_heat off|th_oven off|with of|THING_over of|blood
of|r oi| ok_P|th ok_ready| ok_th| ok|to on_DISH_and| on_do| on_low| on_on|th on_th|bottom on_th|lowest
on_th|roll on_to| on|DISH_duty on|chemo on|low on|out on|schedul_$ on|th_floor on|th_menu on|th_roll
on|them on|then_$ or_DISH|whatever or|h ought| our_oven_is| out_at|N:oven out_of_my| out_they_ar|
out_they| out_th| out_th|DISH out_w| out|it_jump out|now out|th_fridg out|th_other oven_Nduration|
oven_and| oven_is|N:some oven_is|preheat oven_it| oven_off|to oven_on|for oven_run_N:some|
oven_so| oven|alway oven|down_to oven|sinc_Nclock oven|temperatur oven|took oven|took_ag oven|up
over_and| over|a_THING over|th_shop own|THING pan_and| pass_on| pass_th| pass|N:core past_it|is
past_medium| peopl_ar_com| peopl_in| peopl|hav per_person| person|is pick_up| piec_of| pink_U|not
pink_so| pink|all_th pink|in_th pitch|in plac_and| plan|N:few_it plan|w plat_ar| pop|th pound|for
pour|out pray| pregnant|in pregnant|in_th pull|temperatur push_dinner|back put_DISH_in| put_th|
put|DISH_on put|THING put|U put|a put|on quick|shower rais| rar_as| rar|thank rather_than|
ready_by_N:oven| read|Ndegrees:core read|Ndegrees:core_$ remov_DISH| repeat|that_$ rest_under|
rest|now rib_THING_roast| rib_THING|Nweight right|to roast|DISH_hav roast|DISH_on roast|i_hav
roast|in_at roll_go| run_N:some|hot run_Nduration|behind run|Ndegrees:few run|Ndegrees:some
run|a r|or saf_to| said|N:oven said|sh said|sh_would salt|i salt|th sam_tim|and sat_on| sav_a|
say|Ndegrees:core say|again schedul_and| schedul|green schedul|green_DISH scrap|it sear_is|
sear_i| sear|at_th sear|it_at season|th_roast second|from set_a| set|for sh_is_read| sh_is|Nweight
sh_would| shall_w| shazza| shop_had| short_of| should_i_do| shout|if shout|m shov|th shy_of|
shy| silly| sit_at| sit|in sit|on_th siz|N:few skip|th sky| slow_today|Nduration small|oven
smok_alarm| snow_is| so_and| so_do|not so_go| so_keep| so_lik| sorry_it_is| sound_lik| so|P
so|cross so|non so|put speak|up stand_her| stand_in| stand|THING stand|by start_at| steady|oven
steak| step_with_th| still_at_th| still_got| still_wait_on| still| still|N:core still|do still|not
still|wait still|wait_on stir|th stor_was| story| stov_is| straight|in strik_th_DISH| strik|that
str|ar stuck_at| stuff|th_DISH stupid| sunflower| sunflower|THING suppos_to_b| switch_to|metric
s|U tablespoon|of tabl|now tak_his| tak_that| tak|out tak|your talk_m_through| talk_m| talk_to|
teen| tell_th| tell|th temperatur_ar| temperatur_has| temperatur_is|N:core temperatur|is_N:core
th_DISH_U| th_DISH_it| th_DISH|idea th_DISH|to th_DISH|would th_Nduration|timer th_THING|at
th_THING|of th_THING|pan th_THING|show th_THING|was th_afternoon|look th_bin|out th_cream|i
th_dead| th_dinner|Nduration th_dog|out th_extractor| th_fan|set th_first_th| th_fridg_i| th_guest|
th_high| th_hot|THING th_joint|out th_leftover| th_leg| th_next|Nduration th_oven|to th_read|
th_r|DISH th_sam_tim| th_sid|too th_tabl|at than|it that_is_how| that_is_my| that_is|not that_on|out
that_timer|it that|go_to that|last_th that|number that|phon that|plac their_at| them_THING|
them_in| then|i_will then|low then|th then|turn then|turn_it ther_anyth| ther_ar|N:few ther_go|
ther_is_enough| ther_is| ther|anyth ther|will ther|will_b they_ar|starv they_ar|still they_call|
they_com|Nduration they_hav_all| they|lost think|i_hav this|her this|whol through_it| thumb|
th|DISH_cream th|DISH_n th|DISH_you th|U_and th|app th|bath th|bottom_shelf th|chook th|corkscrew
th|count th|counter th|current_has th|dial th|driv th|first_th th|guest_ar th|kettl th|lad
th|leave-in th|loo th|man th|other th|oven th|oven_down th|oven_has th|oven_now th|paper th|read
th|say th|slic th|start th|tent th|timer th|top th|top_of th|wedd ticket| tick|that till|it_is
tim_Nduration|for timer_on|th timer|for_th timer|off_$ tim|ar tim|ar_w to_DISH|it to_N:core|under
to_N:oven|about to_boil| to_br| to_b|U to_cook| to_hear| to_sit| to_start|th today|Nduration
today|Nduration_behind tonight|so tonight|so_N:few too_and| too_many| took_a| took_m| took_th|
took|a took|th too|soon touch|that to|DISH to|N:core_in to|N:oven_w to|N:oven_what to|Nclock_$
to|Ndegrees:oven to|Ngas-mark_$ to|cook to|hav to|look to|metric to|pick_up to|run to|salt
to|sit_down to|skip to|start_th to|ti to|ti_it train_is_delay| train_is| trim|th_DISH tub|
turn_down| turn_off| turn_off|th turn_that_down| turn|th_oven twin| under_th| under|control
under|th_THING up_to|N:core up_to|N:few up_when| upstair_and| ups| up|again up|already up|and_down
up|at_N:few up|do up|th_wall us_hav_it| us_it_is| us|Nduration_$ us|THING_$ us|th w_DISH| w_ar_all|
w_ar|all w_ar|still w_do|th w_n_DISH| w_open| w_skip| w_want_it| wait_on|THING want_it|rar
want|Nduration want|a want|it warm_any| warn_m| was_N:core|when was_Nduration| was_hang_open|
was_hot| was_hot|it was_show| wash|th_THING was|N:core_$ was|U was|lik watch|for water|boil
water|in water|in_th water|on way_behind|her way_out| way_out|do we_bit| weigh|Nweight_$ well_don_and|
well_don|no went_on|th what_do|w what_for|is what_is_a| what_is|Nweight what_my| what_should|
what_tim|ar what_will| whatever_i| what|DISH what|com what|did_you what|is what|it_is what|should_it
when_do|i when_folk| when_to| when|do_w wher_you| which|is whil_got| whil|they who_has| who_hav_not|
whol_family| whos| why|ar why|ar_w why|not will_arriv| will_b|th will_i| will_sit_down| will|do_it
will|do_th will|hold_at will|w win|U with_DISH|and with_THING|Nduration without|m with| with|you
work|in worri_that| would_THING| would_a| would_hav| wren| wrong|THING w|DISH w|eat w|good
w|hav_N:few w|look w|ok w|still w|wait w|will yes_it_is| yes_th| yet_DISH| yok|at you_can|tell
you_count| you_do_th| you_r| you_tak| you_tim|Nduration you_want_m| your_plan| your|THING you|a
you|allow you|at you|carv you|did you|ever you|giv you|giv_m you|go_$ you|hav_to you|heard
you|lik you|say you|tak_th you|think you|watch |@0.4 |@1.1 |@101.1 |@109.7 |@116 |@137.6 |@139.6
|@21.3 |@30.1 |@32.4 |@36.1 |@36.3 |@44.0 |@52.4 |@63.2 |@75.2 |@86.0 |@89 |DISH_U_$ |DISH_bak
|DISH_cook |DISH_instead_of |DISH_is_dead |DISH_my |DISH_sh |DISH_this_year |DISH_tonight |N:core_P
|N:core_and_it |N:core_i_am |N:core_w |N:few_and_N:few |N:few_mak |N:few_mor_$ |N:few_my |N:few_sharp
|N:few_what |N:few_when |N:few_wher |N:few_you |N:some_lat |N:some_percent |N:some_they |Nclock_P
|Nclock_U_th |Nclock_befor |Nclock_instead |Nduration_for_m |Nduration_or |Nduration_would
|Nweight_i |P_U_$ |P_h |P_is_$ |P_is_allergic |P_is_help |P_or |P_th_THING |P_with |THING_N:few_too
|THING_N:oven |THING_after |THING_all |THING_anywher |THING_is_Ndegrees:few |THING_it_$ |THING_last
|THING_left |THING_th_edg |THING_would |U_in_th |U_of_her |U_th_dial |U_up |a_THING_leg |a_bit_$
|a_few_minut |a_list |a_littl |a_number |a_plat |a_right |a_tent |a_tick |a_we |about_yet |account
|after_this_$ |again_from |again_th |ahead_$ |ahead_$_$ |all_her |all_over_$ |all_sat |allergy_$
|allergy_$_$ |already_th |an_THING |and_N:few_$ |and_a_half |and_down_th |and_flam |and_this_is
|another_Nduration |ar_a_no |ar_away |ar_fin |ar_fin_$ |ar_french |ar_warm |assembl |at_Nclock_Ndate
|at_Nclock_THING |at_Nclock_U |at_Nclock_sharp |at_least_$ |at_this_rat |b_hav |back_Nduration_$
|back_i |back_it_was |back_what |ball |bang |barbecu |bat |beauty |befor_$ |befor_$_$ |befor_Nduration
|befor_THING |behind_it |belly |blister |boil_$ |boil_$_$ |bon_Nweight |bon_and |bottom_$ |bottom_$_$
|box |btw_$ |btw_$_$ |by |by_N:oven |by_now_$ |call_$ |call_$_$ |can_not_get |can_us |carry_a
|cent |chang_$ |chang_$_$ |charg_of |chewy |claim |clock_$ |clock_$_$ |clu |cold |com_at |com_from
|com_out |com_what |commenc |cooker |cream_$ |cream_$_$ |curdl |cut_$ |cut_$_$ |dash |delay_Nduration
|did_not_U |display_say |divorc |do_a_roast |do_i_put |do_you_know |don_by |don_i |don_no |don_to
|door_Nduration |door_on |down_and |down_from |down_in |down_so |drop_out |drum |dry_$ |dry_$_$
|dust |early_$ |early_$_$ |end |enough_for_th |error |exist |fat_$ |fat_$_$ |fly |for_$ |for_$_$
|for_ag |for_medium |for_on |for_th |for_th_butter |for_th_crust |for_th_dinner |for_th_sear
|for_today |for_today_$ |freak |freak_out |from_N:core |from_N:core_to |from_Nclock |from_Nclock_$
|from_a |from_th_bottom |from_ther |from_this |gas_is |get_to |giv_m_fahrenheit |given |go_again
|go_out |good_or |gorgeous_$ |gorgeous_$_$ |green_DISH_U |grey_r |hair |halv |hand |has_gon_$
|has_gon_up |hav_$ |hav_$_$ |hav_gon_in |hav_not_risen |hav_to_b |hav_turn |hav_you_got |heat
|help_till |her_a |her_back |her_to |herself |hip |hit_N:some |hotter_than |how_long_$ |hungry
|i_b |i_can_us |i_com |i_must |i_must_go |i_suppos |i_suppos_to |i_typ |if |if_i_am |if_ther
|if_you_can |in |in_N:few_go |in_aid |in_aid_of |in_degre_c |in_kilo_and |in_not |in_now |in_on
|in_th_center |in_th_moment |in_this_plac |instead_of_THING |invit_themselv_so |iron |is_N:core_already
|is_N:few |is_N:oven_$ |is_a |is_at_N:oven |is_better |is_bleed |is_blister |is_cancell |is_cut
|is_cut_up |is_do_th |is_don_$ |is_down_to |is_even |is_expect |is_gorgeous |is_grey |is_jump
|is_mad |is_mov |is_no |is_not_brown |is_not_even |is_not_finish |is_not_ther |is_own |is_stand
|is_to |it_P |it_at_Nclock |it_at_all |it_is_smok |it_jump_onto |it_medium |it_not |it_rar
|it_right |it_roll |it_say_$ |it_w |it_yet_$ |itself_off |last_i_look |last_tim_so |last_year_$
|lat_i |lat_to |left_th |left_th_oven |let_us_$ |lif_$ |lif_$_$ |light_went |lik_a_U |lik_this
|load_$ |load_$_$ |loaf |look_pretty |lunch_and |m_N:few |m_Nduration |m_Nduration_$ |m_and_N:few
|m_someth |m_that_$ |m_through |mak_DISH_DISH |mak_N:few |mak_a_DISH |man_is |match |may_$
|may_$_$ |meant_to_b |mill |mind_$ |mind_$_$ |my_glass_$ |my_hair |my_list |my_mind |n_$ |n_$_$
|n_m_$ |n_to_go |night_in |not_cover |not_cover_it |not_don_th |not_gon |not_i |not_reduc |not_tak
|not_talk |not_understand |now_U |now_for |now_sh |nurs |of_butter |of_her_tablet |of_pink
|of_roast |of_th_heat |of_th_other |of_thos |of_you |off_P |off_conventional |off_th_heat |ok_or
|on_again |on_everyth_$ |on_has |on_th_hob |on_th_littl |on_th_motorway |on_th_plat |on_th_stov
|on_th_telly |on_tim |on_toast |on_track_$ |or |or_N:oven |or_mor |or_should_i |out_hot |out_so
|out_th_DISH |out_they |oven_Nduration |oven_alway |oven_befor_Nduration |oven_her |oven_run_hot
|over_a |over_at |panick |pass_out |patient |peac |pen |peopl_$ |peopl_$_$ |pick_at |plus_N:few
|poison |pok_it |pop_th |pull_th_THING |put_in_$ |quit |r_DISH_$ |r_win_$ |read_th |ready_for
|remain |ribey |right_this |right_this_second |rins |rn_$ |rn_$_$ |roast_so |roaster |roll_too
|roommat |run_Ndegrees:some |run_behind |run_hot |run_th |said_N:oven |schedul_and |scrap_of
|sear_at |serv_Nduration |settl |shad |shar |shelf_$ |shelf_$_$ |shell |shirt |should_land
|shoulder |shown |sit_down_Nduration |sit_on_th |siz_of |sleep |slow_$ |slow_$_$ |so_low |so_non
|so_slow |soggy |sold_out |somewher_$ |somewher_$_$ |spit |squeez |stay_in |str_in |stuck_in_it
|suit |summer |sunflower |sunflower_THING |swor |tbh |tell_N:few |tell_m_i |temperatur_Ndegrees:core
|th_DISH_at |th_DISH_hav |th_DISH_n |th_P_to |th_THING_N:few |th_THING_com |th_THING_from |th_THING_over
|th_THING_what |th_U_for |th_bin |th_bowl |th_brown |th_butter_step |th_centr |th_chop |th_door_$
|th_fat |th_grocery |th_heat_$ |th_hous |th_littl_on |th_meal |th_needl |th_order |th_other_th
|th_outsid_$ |th_oven_floor |th_oven_what |th_plat_$ |th_queu |th_remot |th_roast_and |th_salt_$
|th_soup |th_supermarket |th_tabl_tonight |th_tip |th_top_$ |th_top_oven |th_way_through |th_worktop
|that_N:few |that_in |that_is_N:few |then_a |then_down |then_down_low |ther_a |they_went |thingy
|this_th_$ |till_it_is |tim_th_DISH |tim_they |tim_to |tim_you |timer_go |timer_hav |timer_of
|timer_they |to_$ |to_$_$ |to_DISH |to_N:oven |to_THING |to_br |to_carv_and |to_chill |to_chill_th
|to_edg |to_get_ic |to_look |to_sit |to_tak |to_turn |tonight_$ |tonight_$_$ |too_soon |took_ag
|town |troubl |tub |typ_that |up_already |up_as |up_it |up_it_is |up_ther |upstair_to |w_$
|w_$_$ |w_run |w_should |want_it |water_on |weather |went_$ |went_$_$ |went_into |went_on |what_they
|when_i |which_th_$ |whil_th |who_will |whol_tim |will_arriv |will_com |will_go |will_not_heat
|with_him |with_th_P |with_th_fat |with_their |without_$ |without_$_$ |without_th |without_th_DISH
|wok |work_on |would_you_put |yet_and |you_back |you_th
-16 @1.7| @120.0| @127.1| @34.8| @36.3| @38.8| @46.0| @53.5| @72.2| DISH_DISH_so| DISH_DISH|has
DISH_DISH|went DISH_ar|trim DISH_as|well DISH_butter_is| DISH_butter|is DISH_cream|is DISH_giv|
DISH_go_in| DISH_i_am| DISH_in_DISH| DISH_instead|of DISH_is| DISH_it|out DISH_look| DISH_out|of
DISH_roll_ar| DISH_tast| DISH_that_is| DISH_them| DISH_want| DISH_whil| DISH_you| DISH|DISH_for
DISH|DISH_has DISH|ar_trim DISH|away DISH|boat DISH|drain DISH|early DISH|go_in DISH|is_THING
DISH|is_U DISH|no_i DISH|off_$ DISH|roll_too DISH|sid DISH|sinc DISH|sinc_Nclock DISH|so_they
DISH|them DISH|timer_$ DISH|took DISH|went_in N:core_U|i N:core_at| N:core_is_it| N:core_i|misread
N:core_on_th| N:core_over|N:core N:core_when| N:core|N:few N:core|about_Nduration N:core|as
N:core|lik_th N:core|that_cam N:core|well N:core|when_you N:few_bon|prim N:few_less|th N:few_step|
N:few_temperatur| N:few_they_ar| N:few_they| N:few_what|is N:few|DISH_N:few N:few|U_and N:few|bon_Nweight
N:few|high N:few|nil N:few|now_$ N:few|peopl N:few|step N:oven_U|i N:oven|for_a N:some_for|
N:some|dollar N:some|mor N:some|past Nclock_THING| Nclock_any| Nclock|Ndate_$ Nclock|or Nclock|sharp
Ndate_so| Ndate_w| Ndegrees:core_on| Ndegrees:few|high Nduration_ago|sorry Nduration_behind|sorry
Nduration_behind|with Nduration_i| Nduration_i|reckon Nduration_lat_so| Nduration_mor|early
Nduration_off|th Nduration_th_match| Nduration_to_that| Nduration|already Nduration|away Nduration|back_$
Nduration|i_reckon Nduration|to Ngas-mark_for| Ngas-mark|for Ngas-mark|now_$ Nweight_bon|in
Nweight_w| P_N:few| P_at| P_gon| P_is_allergic| P_is_sat| P_is|giv P_it| P_of| P_open| P_set|
P_us| P_w_ar| P_want| P_will| P|U_is P|is_N:core P|is_taken P|jim P|open_th P|or P|who_do P|will_not
THING_THING_th| THING_U|i THING_com| THING_cream| THING_cut| THING_do_i| THING_do|in THING_hav|
THING_is_cut| THING_is_it| THING_is| THING_is|P THING_it_say| THING_mak| THING_number| THING_pan|is
THING_should| THING_th_THING| THING_th|P THING_too| THING_up|at THING_went_in| THING_what_do|
THING|at_Nclock THING|at_th THING|eater THING|has THING|out_and THING|out_th THING|say_N:core
THING|slip THING|th_$ THING|th_block THING|this_$ THING|up_at U_THING| U_a_DISH| U_alway| U_do_not|
U_god|ther U_h| U_is_at| U_is_lot| U_is_not| U_is|U U_on_th| U_out| U_th_dial| U_timer|N:few
U|P_can U|as U|can_not U|chok U|god U|not U|over U|tim U|timer_N:few U|w_hav U|went ^_DISH_U|
^_DISH_it| ^_DISH_i| ^_N:few_r| ^_N:few|r ^_Nduration|on ^_Nweight|of ^_P|jim ^_THING_it| ^_U_that|
^_^_blu| ^_^_both| ^_^_bump| ^_^_bun| ^_^_cook| ^_^_crust| ^_^_did| ^_^_forgot| ^_^_for| ^_^_his|
^_^_old| ^_^_option| ^_^_oven| ^_^_plan| ^_^_s| ^_^_target| ^_^_them| ^_^_tim| ^_^_tonight|
^_^_whos| ^_^_work| ^_^_your| ^_add_Nduration| ^_and|then ^_ar|you ^_blu| ^_both| ^_bottom|oven
^_bump| ^_bun| ^_can_not| ^_chuck_som| ^_company_is| ^_convection|is ^_cook| ^_crust| ^_did_i|
^_did| ^_dinner_is| ^_do|i ^_forgot| ^_for| ^_get|th ^_has_P| ^_help|ther ^_his| ^_hot|THING
^_how_hot| ^_i_DISH| ^_i_alway| ^_i_cut| ^_i_hav| ^_i_lik| ^_i_never| ^_it|would ^_i|heard
^_i|keep ^_i|reckon ^_i|tak ^_i|thought ^_leftover_ar| ^_medium|for ^_my_U| ^_no_you| ^_no|electricity
^_old| ^_option| ^_option|N:few ^_oven_is| ^_oven| ^_plan| ^_preheat|to ^_salt|it ^_set|Nduration
^_so_what| ^_stop|th ^_s| ^_target| ^_th_cat| ^_th_chip| ^_th_doctor| ^_th_new| ^_th_number|
^_th_other| ^_th_roll| ^_that|THING ^_them| ^_they_got| ^_th|plat ^_tim| ^_tonight| ^_w_got|
^_what_els| ^_whos| ^_work| ^_yes|so ^_your_P| ^_your| a_U|U a_U|com a_bit_later| a_cut| a_fan|oven
a_final| a_fir|in a_plan| a_second_oven| a_slow| abl| abl|to about_th|roll about| add|N:few_mor
add|Nduration_to add|another add|th afternoon|look_$ after| after|this ag_and| again_what|
against_th| ago_it_said| ago|and_i ago|it_said ago|sorry ahead_of| aim|for_N:few alarm_for|
all_carv|up all_gon| all_in|th allergic_to| all|don all|her all|that_faff already|in_th am_Nduration|
am_hav| am_in_bit| am_on| am|bin am|bin_th am|i_go am|not and_DISH|is and_DISH|too and_P|is
and_U|is and_can_w| and_can_you| and_could| and_do_not| and_giv_m| and_how_pink| and_i_did|
and_i_hav| and_i_will| and_if| and_it|THING and_roast_DISH| and_say| and_sh_is| and_stop| and_th_U|
and_th_roast| and_ther_is| and_wher| and_w| and|all and|ar and|b and|holler and|how_com and|if
and|keep and|mov and|onc and|that_was and|w_will any_way| anyth| anyth|i_can any|THING_left
an|THING an|old an|oven ar_Nduration_off| ar_and| ar_at| ar_her_well| ar_in_i| ar_no| ar|THING
ar|clean ar|do_it ar|my ar|not_ready ar|pal ar|pay ar|peel ar|sit_down ar|trim as_my|P ask|your
ask|your_P as|medium as|my_P as|w_speak at_Nclock_and| at_Nclock_th| at_Nclock|it at_Nclock|sharp
at_m|in at_what| at_your| at|N:core_so at|N:few_w at|Ndegrees:core_$ at|my_P at|th_DISH away_and|
away_i| a|THING_of a|THING_over a|cak a|decent a|party a|shout_when a|th b_back_in| b_drink_in|
b_nic|U b_r| back_a| back_i| back_of_th| back_what| baker| battery_is| becom| becom|N:some
been_Nduration| been_Nduration|yes been|turn beep_it_is| beep|at_N:core befor|they behind_on|th
behind|a behind|th_THING berti| bit_is| bit_later| bit_later|Nduration bit|mor bit|over blast_it|
blast|at boil_water| bon_i| bon_roast|Nweight bon_sid| bon|from bon|from_th bon|in_it bon|in_rib
bon|prim bon|prim_rib bon|rib_roast bon|roast_Nweight bor| bother|sear_it bought|a bridg|is_shut
bring_th| brown_and| bubbl|away budg| bump| bung_th_DISH| burn_i| burn|to butter_don|and butter_on|
butter_so_no| butter|all_over butter|don_and butter|i_can buy|for buzz_m_at| bypass| by|Ndegrees:few
by|Nduration b|N:oven_$ b|a b|eat b|long b|nic b|ready b|well b|well_don b|when b|when_i c_so|
call_them|i call|for calory| cam_out_at| can_keep| can_not_se| can_tak| can_w|add can|do_th
can|hav can|my can|not can|w_hav carv_with| carv|up cast|iron celsius_i| celsius|my centr_it_is|
chang_my| chang|Nduration charg_of_th| chas| chill|th chok_and| chok|on_a chuck_th_DISH| clean|forgot
clean|out climb|to clock_i| colour_on| colour|on com_it_is| com|for com|her com|up_to cook|for
could_not|hav count|th_DISH crack|on cross_it| cross_it|off cross|th curdl| current_has| current_has|gon
cut_off| d'you|reckon da|is delay_by| delay_by|Nduration di_on|m did|they did|you_hear differenc|
dinner_at|N:few dinner_is_at| dinner_is|mov dinner|b display_is| display|say do_i_ti| do_it_Nduration|
do_it|Nduration do_not_mak| do_not_w| do_not|tak do_not|tell do_on| do_on|th do_th_afternoon|
do_th| doctor_said| doctor|said don_not| don|for_th door_of| doorbell|they_ar door|behind down_at|
down_for| down_my| down_to| down_to|N:few down_to|Ngas-mark down|at_Nclock down|by down|from
down|in_th down|lik_a do|her do|i_go do|it_go do|medium do|next_P do|th_THING do|your drop_th|
dump| earth| eat_anyth| eat_r| eat|at_Nclock eat|them end_th|count end|th_count enough|for_N:few
eta_on| except| excus|m extractor_is| f_at| f_at|Nclock faff|about fahrenheit|i family|is fan|assist
far_along| far_off| fat|in_th fat|off fiddl| fiddl|with fiddl|with_th find| finger_on_th| finger_on|
finish_that| finish|already first_then| fix_to| flick|th flick|th_oven flip_th| fold|in for_DISH|so
for_a_final| for_th| for_th|N:few forget_everyth| forget_i_said| forget_th_Nduration| forget|
forget|everyth forget|that forgot_th| forgot_to| forgot|to for|a for|all for|som for|th for|th_U
found|th french|th_bon fridg_and| fridg_is| fridg|sinc from_now|on from_th|bottom from|th_THING
from|you gas_is| gas|mark gav_m| get_to| get|out giv_m_th| giv_that| go_about| go_down| go_in_no|
go_i| go_over| go_to_b| god_it| gon_all| gon_in_and| gon_to| gon|Nduration gon|U gon|down gon|on
good_and| good_reason| good|for good|to got_a_DISH| got_enough_DISH| got_my| got|N:few_oven
got|a go|back_N:few go|ok_or grab|th grocery| grown| guest_is| guest_to| guest|they guid| gwen|
h_drop| h_is_chok| halal| half_ar| half| hang|open has_U| has_been_Nduration| has_been_on|
has_com_out| has_com|down has_gon_down| has_gon_to| has_gon|U has_gon|on has_gon|ston has_had|
has_reach|N:core has| has|U has|been has|been_out has|crept has|crept_up has|not_budg has|not_got
hav_THING|without hav_a_pan| hav_an| hav_burnt| hav_hit| hav_miss| hav_not_any| hav_not_peel|
hav_plenty| hav_salt| hav_this| hav_to|start hav_you_seen| hav_you| hav|burnt_my hav|gon hav|never
hav|not hav|not_i hav|put hav|put_DISH hav|rub hav|start hav|th heat_for| heat_th| heat|all
heat|all_th heat|at_th heaven|help heaven|help_us help_it|is help_with| henderson|ar her_in|th
her_it| her_lip| her_on|th her|at_N:oven her|down_to her|lip her|on_th her|so_far her|till
her|w_go high|this high|this_needl him_h| hit_th| hold_your_hors| hold|on hol| hom_th| hot_then|
hotter_than| hot|do_th hot|pan hous|at_all how_com_th| how_do_i| how_far_along| how_far_off|
how_hot|do how_long_do| how_much_DISH| how_warm| how|U how|do_you how|it how|should how|thick
how|thin h|do h|sold h|still i_alway| i_am_Nduration| i_am_hav| i_am_on| i_am|bin i_am|not
i_ask| i_bought| i_cook| i_did_not| i_gav| i_hav_it| i_hav_salt| i_hav|cut i_know_when| i_mean_th|
i_n_a| i_said_to| i_salt_it| i_stop| i_talk| i_think_th| i_told|you i_will_tak| i_will|do i_would_lik|
i_would_rather| ic|in if_P| if_you_ar| if|th_oven if|that if|ther igniter| ignor|that_$ in_Nduration|back
in_at_th| in_bit| in_for| in_his| in_is| in_it|roll in_kilo_and| in_not| in_plac| in_som_DISH|
in_that_is| in_th|middl inform|m insist|on_DISH instead_do| internal|temperatur invit_themselv_so|
in|N:few_go in|N:some in|alongsid in|at_N:few in|charg in|charg_of in|from_th in|it_now in|kilo_and
in|real in|sinc in|th_oven in|th_water is_N:core_U| is_N:few_month| is_N:few|low is_THING|say
is_a_N:few| is_burn|to is_com|to is_cover_in| is_down_to| is_it|look is_medium_rar| is_never|
is_offer_to| is_out_U| is_out|for is_put| is_show_m| is_sleep| is_th_temperatur| is_th|middl
is_very| isla_is_THING| is|N:core_U is|N:core_now is|N:few_to is|N:oven_$ is|Nduration_lat
is|U_drop is|after is|another_N:few is|ask is|better is|chop is|cover is|don is|down_to is|flash
is|insid is|medium_$ is|miss is|no_str is|not_finish is|not_great is|on_a is|pend is|raw is|ready
is|roll_and is|rubbish is|sit is|sort is|stand is|stuck_on is|tick is|well_don it_at|N:few
it_can| it_climb| it_com|to it_for| it_how| it_in_too| it_is_N:oven| it_is_already| it_is_sit|
it_is|N:oven it_is|Ndegrees:few it_is|burnt it_is|preheat it_is|roll it_is|set it_is|sit it_is|stuck
it_medium|well it_tell_m| it_to_medium| it_was_on| it_was|N:core it_was|not it_when| it_will_not|
it|U_$ it|down it|from_th it|hav_to it|in_at it|in_too it|is it|is_all it|is_lik it|is_m it|last_night
it|matter it|medium_$ it|on_a it|on_th it|out_it it|r_N:core it|ready it|roll_and it|will_b
i|com i|had i|hav i|left_it i|lik i|open i|r i|salt i|salt_it i|shut i|shut_th i|skip_th i|slic
i|tell_you i|thought i|want_to jess_is_on| joint|slid join|th jump|about jump|over kavi|h_will
keep_th_DISH| keep_th|DISH keep|tell keep|warm kilo_and| kilo_i| knock_th| know_th_second|
know_what|i know|how_long know|how_much lack|a lad_is| last|bit lat_on| lat_to| later|Nduration
lat|so lat|with_th lay|N:few_mor leave-in|THING_is left_at| leftover_stay| lend| let_us|begin
let_us|tak let|all let|all_th let|m li_down| lick|th light_is| light|ar light|hav lik_your_plan|
list_i_hav| listen_to| lit_th| lit_th|oven load|of long_do| long|hav_i look|pretty lost_Nduration|to
lost|N:few low_to| lower_oven_at| lower|it low|oven lunch_and| lunch|at m_Nduration|behind
m_THING| m_again| m_for| m_know_when| m_through|th m_when_it| m_with| mad_th|DISH mak_that_Nduration|
mak|a mak|you max| mean_th| meant_to_b| medium_for_U| medium_what| medium|well_for meet_at|
middl|and_i might|b min|is missus| mor|early mor|peopl_ar most|of_them mov_to| mov|th much_DISH|
much_THING|do much_salt|do much|blood mumbl| my_N:few| my_P|set my_U_is| my_back| my_last|
my_old| my_oven_is| my_peopl| my_sleev| my|P_U my|P_do my|feet my|glass my|guest my|list my|palm
my|roast my|wrist m|Nduration_on m|at m|da_will m|i_said m|when_it n_DISH_DISH| n_a_THING|
n_mor| n_th|timer n_to_DISH| n_to| near| next_to| next|then_$ next|weekend nic|U_i no_fan|on
no_go| no_i| no_n_to| nobody_lik| non_of_them| not_call| not_com|on not_find|th not_in_th|
not_let| not_my| not_put_that| not_put| not_speak| not_tonight| not_tonight|Ndate not_trust|th
notion|how not|clos not|do_that not|don not|fahrenheit_$ not|got not|hot not|now not|quit not|rest
not|turn_it now_i_am| now_would_it| no|DISH no|don no|tim_to no|worry number_am_i| number_on|th
n|DISH n|THING odd| of_DISH_and| of_THING_and| of_butter|i of_my| of_roast| of_th_guest| of_th|N:few
of_what| off_DISH| off_and| off_a| off_for| off_it_is| off_my| off_so| off_th|DISH offic| off|N:few_they
off|at_Nclock off|at_th off|for_th off|schedul_$ off|th_r of|Nweight_$ of|butter of|fahrenheit
of|th_THING of|water ok|U old_girl| on_Nduration|ago on_THING| on_in|th on_let_m| on_th_lowest|
on_them|DISH on_th|list on_was| on_with_th| on_with| onc_and| on|at_N:oven on|hold on|mor on|mor_tim
on|my_THING on|or_off on|paus_$ on|th_bottom on|th_counter on|th_joint on|th_phon on|wash on|wash_up
open|that_door or_did| or_i|hav or_will| order_of| or|did or|no_$ or|not or|should or|should_i
or|th other|oven out_at|N:core out_at|N:few out_befor|it out_by| out_lik| out_of|N:few out_th_fridg|
out_this| out_too| outsid_is| outsid_th| out|from out|her out|of_DISH out|th_truss out|w_do
out|yet oven_alway| oven_at|Nclock oven_has_com| oven_in| oven_run_hot| oven|for_th oven|lik
oven|off_to oven|pack over|it_$ pair_of| pair|of pan|is_in pass|m past_well_don| paus|everyth_$
paus|for peel_and| peopl_ar| peopl_i| peopl|i pet|is phon_is| phon|to piec_of|THING plan_and|
plan|b poison| prim| prim|rib priya|can priya|can_not puff_up| pull_th| pull| pull|th_roast
put_DISH|in put_U| put|DISH_cream put|Nduration_on put|my put|th_THING quick_shower_Nduration|
rar_is| rar_i| rar_not| rar_so| raw_THING| raw|in_th read_jump|about ready_or| ready|for_th
ready|in ready|yet reckon_i| reckon|Nduration reheat_th| remind_m|what remov|it_$ remov|th_THING
replacement| replacement|for replac| rest_of_us| rest|under rib_is| ribey|roast rib|is right_to|
right|back right|in_th right|now_$ roast_DISH_on| roast_N:few| roast_went_in| roast|at_Nclock
roll_ar| roll|burn roll|n room|temperatur run_Ndegrees:some| run_back_in| r|N:core_$ r|m said_it_is|
said_to| said|N:few salt_U| salt|do_i salt|in salt|is_ther salvag| sam_as| sam_temperatur|
sat|at sat|ther say_h| say_someth| say_they_ar| say|someth say|to scor|th scor|th_fat scratch_th|
scream_th| scrub_th| scrub|th_DISH se_to| se_you_in| sear|at sear|on_all serv|it_at serv|it_pink
set_it| set|Nduration_$ set|it se|it sh_do_not| sh_has| sh_hav| sh_is|N:few sh_is|N:some sh_is|hav
shall|i shav_Nduration| shav_Nduration|off shav| shop_and| shop_is| shop|run should_i_b| should_it|b
should|i_turn shov_th| show_N:core|right shut_that| sh|can_not sh|did sh|put sh|would sink_is|
sirloin|on sit_ther| siz_of| skip| sleep|in sleep|in_th slic|my slid_by| slid_by|Nduration
slid|th slump_over| small_oven|set smok_pour_out| so_let_us| so_non|of so_you_no| sol| som_DISH|roll
someth_is| sorry_N:core| sorry|what_i sorry|what_is sous| so|N:few_mor so|no_DISH so|w_want
spark| spark|and stag| stand|THING_is start_all| start_a| start_on|th start_th| start|THING_$
start|th steady_heat|all step|back step|off stick|thos still_not| still|go stir|th_DISH stop_th|
stop_th|Nduration stop|U stop|talk_$ str_ar| str_in| straight_is_it| street|is stretch|it strik_th|
strik|N:few stuck_th| stuck|at supper_Ndate| supper_Ndate|at supper|Nduration supper|club sur_i|
swear|it switch_th_oven| switch_to| tablespoon_of| tabl|at_Nclock tail|her tak_it_to| tak_off|N:few
taken|th tak|that talk|for_a talk|in talk|m_through teacher| tell_m_what| tell_you|when temperatur_has_com|
temperatur_of| temperatur|Ndegrees:core_$ temperatur|ar temperatur|has temperatur|now tent|is
th_DISH_up| th_DISH|after th_DISH|butter th_DISH|can th_DISH|dress th_DISH|now th_DISH|on th_DISH|sid
th_DISH|timer th_N:few|wher th_P_and| th_THING_say| th_THING|bag th_boss| th_cow|is th_doctor_said|
th_door|behind th_fat_is| th_fridg_and| th_fridg_at| th_fridg|sinc th_guest|they th_hang| th_henderson|ar
th_hous|at th_igniter| th_light|hav th_needl| th_number_on| th_other_ar| th_oven_befor| th_pull|
th_quick|THING th_roll|burn th_roll|off th_r|win th_sam|as th_second|it th_tabl|for th_top_off|
th_twin| th_warm| th_way|my th_we| th_year| thank_you|very thank|b thank|b_to thank|god that_do|
that_for| that_is|all that_is|right that_it| that_last| that_much| that_was|my that|at that|off
that|was_wrong themselv_so| them|back them|can_not them|had them|i_want then_a| then_you| then|a
then|what theo| ther_for| ther_is_not| they_n| they_reckon|Nduration they_still| they|still
think_th| think|i_will third_on| third|on this_oven|is this|for this|lot this|week this|yok
thought| thread| threw| through_no| through_th| through|no_sear th| th|DISH_THING th|DISH_in
th|DISH_it th|P th|THING th|THING_board th|THING_is th|U_on th|beast th|begin th|best th|boiler
th|bon_ar th|boss th|bottl th|butter_is th|button th|candl th|corner th|count_down th|garag
th|goos th|hang th|hot th|insid th|job th|long th|lower th|mak th|mak_of th|method th|method_for
th|other_ar th|outsid th|plat_ar th|preheat th|r_DISH th|rest_of th|roast_has th|roast_out
th|roll_in th|supermarket th|tap th|third th|truss th|window tick_P| tim_they| tim_you| timer_it_is|
timer|N:few_wrong timer|Nduration_THING timer|anymor tim|th_roll ti|back to_N:core_whil| to_begin|with
to_carv_with| to_celsius|my to_chang|Nduration to_check| to_chill| to_chill|th to_do|next to_do|th
to_eat|Nduration to_it|h to_m_in| to_miss| to_put|th to_room| to_room|temperatur to_r| to_say|it
to_scor| tom_is| tom|is tonight|Ndate tonight|Ndate_night too_high|this took|Nduration took|it
top|of top|shelf touch|anyth to|N:oven_and to|N:oven_fan to|chang to|eat to|finish to|get_th
to|m to|medium_well to|peel to|plan to|put_th to|stand to|th_U to|their to|turn_it to|your
trust|th turn_on|th turn_out|th turn_out|w turn_th_oven| turn|them ty|it_$ unless| un| up_after|
up_as| up_to_it| up_w| upstair_to_chang| upstair_to_get| up|at_N:core up|i_will us_at| us_eat|
us_hav| us|DISH_DISH us|N:few_in us|begin us|mak_dinner us|tak w_ar_at| w_ar_hav| w_ar_up|
w_ar|Nduration w_ar|do w_do_it| w_hav| w_jump| w_miss| w_never| w_n| w_put| w_tak| wait_on|P
walk_m| want_her|well want_to_mak| want_to|mak want|another warm|up was_in| was_on|what wash_th|
was|N:core_in was|N:core_not was|off was|that was|wrong watch_for| watch_th|DISH water|is way_THING|this
way_too|salty way|behind way|my weight|in well_what| well|don_$ went_out_at| wer_th| we| whack|
what_ar_w| what_do|i what_happen_if| what_should_b| what_temperatur|is what_they| what_tim_do|
what|ar_th what|els what|i_do what|if what|my what|will_it when_i_am| when_i_tak| when_they|
when_w| when|do_th wher_is|th wher_i| wher_to| wher|do_i whip_it_out| who_do| who_left| who_will|
whol_street|is why_do_w| why_is|it will_DISH_th| will_DISH| will_DISH|th will_b| will_hav_a|
will_sear| will|eat will|go will|it will|never will|start will|want with_all| with_my| with_th|second
with_your| without_a| without|bon with|N:few with|a_THING with|all with|his with|th_THING with|th_lid
work_is| work_on| work_that_is| would_lik| would_not_b| would_not|b would|a wrangl| wrap|and
w|add w|add_DISH w|ask w|get w|had w|said w|should yank_it| year_it| year_th| yet|to you_ar|tell
you_ar|th you_can_not| you_do|not you_look| you_no| you_n| you_seen| you_that| your_hors| your_plan|U
your|U your|sho your|turn you|DISH you|do_th you|don you|had you|no you|put_th you|very you|very_much
you|what_$ you|will_hav |@118.3 |@12.0 |@123 |@127.3 |@129.2 |@13.4 |@13.8 |@13.9 |@134.3 |@139.5
|@14.1 |@15.5 |@24.4 |@3.0 |@33.1 |@37.0 |@4.10 |@53.0 |@6.0 |@61 |@61.0 |@65.5 |@71.6 |@77.4
|@91.0 |DISH_DISH_how |DISH_DISH_my |DISH_THING_$ |DISH_b |DISH_back |DISH_cam |DISH_cam_out
|DISH_i_will |DISH_mad |DISH_my_P |DISH_right |DISH_tak |DISH_ther |DISH_till |DISH_timer |DISH_with_it
|N:core_about |N:core_and_then |N:core_can |N:core_oven |N:core_then |N:core_too |N:core_whil
|N:core_will |N:core_yet |N:few_bon_not |N:few_mor_plac |N:few_mor_to |N:few_piec |N:few_present
|N:few_that_is |N:few_wrong_THING |N:some_for_th |Nclock_any |Ndate_Nclock_$ |Ndegrees:core_is
|Ndegrees:some_under |Nduration_away |Nduration_befor_th |Nduration_how |Nduration_is_th |Nduration_you
|P_is_bring |P_left_th |P_this |P_turn |P_would |THING_THING_her |THING_THING_in |THING_THING_th
|THING_again |THING_by |THING_in_it |THING_open |THING_out_$ |THING_oven_is |THING_this |THING_to_b
|THING_yet |U_THING_is |U_after |U_drop_your |U_eat |U_every |U_it_on |U_they_ar |a_bon |a_breather
|a_chanc |a_full |a_leg_of |a_low |after_it_is |after_w |ag_ago |ag_ago_$ |again_it_is |ahead
|ajar |alarm_$ |alarm_$_$ |all_THING_th |all_go |all_over_my |all_sat_THING |all_this_$ |alway_run
|am_i_miss |amount_of |an_oven |and_a_P |and_climb_$ |and_don |and_gon |and_left_th |and_nobody_els
|and_on |ar_after |ar_in_th |ar_park |ar_trim |ar_up |ar_w_at |arriv_th |as_it_is |as_of_now
|at_$ |at_$_$ |at_N:few_U |at_N:few_so |at_Nclock_in |at_m_$ |at_their |at_work |at_your |b_$
|b_$_$ |b_eat |b_this |b_to |b_to_god |b_too |back_N:core |back_N:few_$ |back_on_$ |banjax
|barn |bath_is |battery_is |bedroom |befor_it_go |befor_th |befor_they |behav |behind_and |bet
|bigger |bit_and |blaz_in |board_$ |board_$_$ |bon_i |bon_not |bon_roast |bon_th |born |bring
|brown_and |burn_$ |burn_$_$ |buy_for |by_Nduration_and |cam_out_at |can_i_say |cancel_$ |cancel_$_$
|cancell_so |carv |carv_it |carver |chin |choir |cold_$ |cold_$_$ |cold_by |com_from_th |com_out_$
|com_so |cook |cook_so |could_go |count_as |cousin |cri_off |curry |da_will |dangerous |day
|delivery |department |did_$ |did_$_$ |did_not_say |din |dinner_back |dinner_to |display_has
|do_Ndate |do_instead |do_instead_of |do_th_oven |do_w_do |don_all |don_in |down_Nduration
|down_i_can |down_in_th |down_lik |down_lik_a |down_on_th |down_to_th |dry_and |duty |earth
|eat_lik |eat_what |eaten |edg_to |edg_to_edg |even |every_tim_i |everyth_and |everyth_for
|fahrenheit_and |fever |finish_it |flicker |for_N:few_at |for_anyth |for_eat |for_help |for_m_i
|for_th_last |for_th_next |for_th_oven |for_them_$ |forgiv |french_th |fresh_$ |fresh_$_$ |from_scratch_$
|from_start |from_start_to |from_th_pan |from_th_plan |from_you |gaug |go_U |gon_in |good_THING
|good_reason |got_DISH |got_a_THING |got_left |gram |guest_and |h_$ |h_$_$ |had |hall |has_U
|has_drop |hav_been_vot |hav_mad |help_us_$ |her_U_$ |her_already |her_lik |higher |him_h |his_own
|hit_N:core_whil |ho |hood |hospital |hot_in |hot_in_her |how_to_truss |i_carv |i_did_$ |i_finish
|i_slic_it |i_took_out |i_want_thos |i_whack |i_will_hav |idiot |if_someth_is |in_N:core_$
|in_Nweight |in_a_glass |in_charg |in_charg_of |in_cream |in_how |in_middl |in_onc |in_pound
|in_rib |in_th_other |in_th_oven |in_th_plac |in_th_sink |in_that_is |in_they_ar |in_this_hous
|in_till |instant-read |instruction_$ |instruction_$_$ |internal |is_$ |is_$_$ |is_N:few_$
|is_Ndegrees:core |is_THING_$ |is_allow |is_at_N:some |is_blood |is_bring_his |is_cover |is_empty
|is_for_th |is_fre |is_full_$ |is_heat |is_history |is_in_flam |is_not_availabl |is_not_great
|is_not_tak |is_not_up |is_on_it |is_pack |is_pend |is_pull |is_rest |is_scream |is_taken |is_th_day
|is_ther_at |is_ti |is_turn |is_what_w |is_whol |it_Nduration_ago |it_again_$ |it_climb |it_first_$
|it_i_hav |it_if |it_in_th |it_is_and |it_is_shap |it_look_lik |it_matter |it_off_$ |it_onc
|it_out_now |it_overnight |it_rest |it_through |it_with_th |jam |jelly |jim |jumper |kind_$
|kind_$_$ |know_$ |know_$_$ |ladder |lard |lat_or |latest |least |lend |length |less |let_all
|let_all_th |lik_th_ic |lik_that_is |lik_this_$ |long |long_$ |long_$_$ |look_N:core_$ |low_flam
|low_to |m_N:some |m_THING |m_do |m_for |m_on |m_to |mad_th_DISH |mak_dinner_N:few |mak_it_$
|marigold |medium_U |menu |mi_fi |mix |moment |mor |mor_DISH |mov_to_Nclock |much |music |must_i_do
|my_THING_and |my_choic |my_god |my_way |my_work |myself_$ |myself_$_$ |nam_is |nap |next_P
|not_P |not_budg |not_great |not_mak |not_out |not_peel |not_they |noth_and |now_$ |now_$_$
|now_N:core_it |now_th_THING |now_thank |now_w_ar |now_would_it |of_my_P |of_th_oven |of_what
|off_i |off_th_oven |off_this |offic |ok_or_no |on |on_$ |on_$_$ |on_DISH_$ |on_Ndegrees:oven
|on_Nduration_$ |on_a_bit |on_all_sid |on_fir |on_my_end |on_paus |on_th_pan |on_them_DISH
|on_without |open_th_door |open_that |open_that_door |or_off |or_so |or_someth |or_th |or_thereabout
|order_$ |order_$_$ |other_THING |out_at_N:few |out_in_hiv |out_lik |out_on |out_th_butter
|oven_is_N:some |oven_th |oven_that |oven_to_N:oven |over_$ |over_$_$ |over_that |pan_i |past_medium
|peel_$ |peel_$_$ |pend |peopl_for |pick_up_$ |plan_no |point |point_$ |point_$_$ |pound_$
|pound_$_$ |pray |pretty_good |pric |prop |pull_at_$ |r_N:core |rar_as |rar_as_you |rar_in
|rat |ready_they |reminder_$ |reminder_$_$ |rental |rest_Nduration |rest_th |ric |right_for
|right_to |roast_N:few |roast_Nweight_$ |roast_THING |roast_is_Nweight |roll_and_ti |roll_go
|roll_too_for |rugby |said_it |salt_in |santa |sausag |say_medium |say_th_sam |school_$ |school_$_$
|sear_it_again |sear_th |set_th_tabl |set_this |sho_$ |sho_$_$ |shop_$ |shop_$_$ |short_of
|should_th |should_th_THING |sid_down |sit_$ |sit_$_$ |slic_and |slic_b |slid_by |slid_by_Nduration
|so_THING_is |so_and |so_let |so_watch_th |sorry_it_was |spell |spoil |squint |start_on |start_on_th
|start_to_finish |steam_$ |steam_$_$ |step_i |still_in_th |still_park |stop_$ |stop_$_$ |stop_ask
|strain |stream |stuff |supermarket |swell_up |tabl_salt |tablet |tak_th_THING |target_$ |target_$_$
|teen |tell_m_and |temperatur_N:core |temperatur_th |temperatur_th_whol |tender |tenderis |th_DISH_all
|th_DISH_don |th_THING_b |th_THING_behav |th_THING_pan |th_begin |th_corner |th_count_down
|th_cousin |th_first_th |th_left_$ |th_lower_oven |th_middl_shelf |th_on_th |th_oven_back |th_oven_down
|th_oven_up |th_pass |th_plan_$ |th_plug |th_rest_$ |th_roll_Nduration |th_shop_back |th_skin
|th_sofa |th_story |th_stov_for |th_tabl |th_th_$ |th_th_it |th_traffic |th_trivet |th_wedd
|than_i |that_again |that_back_$ |that_cam_on |that_down |that_faff |that_faff_about |that_it
|their_at |them_Nduration |ther_is_any |ther_th |think_it |this_THING_it |this_U |this_fat
|this_needl |this_whol_tim |thos_$ |thos_$_$ |threw_th |tick_over |till_N:few_$ |till_Nclock_$
|tim_U |timer_N:few_wrong |timer_of_Nduration |to_Ndegrees:core |to_Ngas-mark |to_finish_$
|to_heat |to_mov |to_my_P |to_pick |to_plan |to_tell_you |to_us |toast_$ |toast_$_$ |too_N:few
|too_low |too_much_salt |too_th |took_Nduration |top_oven_$ |travell |trifl |up_Nduration |up_lik
|up_on |up_th_wall |up_wher |upstair_$ |upstair_$_$ |us_for |us_it |us_this |version |vot |w_U
|w_on |w_say |w_speak |walk_in_and |want_THING |want_to_do |was_Nduration_lat |was_run |was_show
|was_still |well_and |well_for |went_out |wet |what_is_french |what_to |what_w |when_i_tak
|wher_w_left |whil_it_rest |whil_you |wiggl |will_not_shut |with_DISH_and |with_medium |with_paper
|with_salt |without_DISH_so |work_th |would_hav |wrist |wrong_N:core |ya |yank_it |you_allow_$
|you_ar_$ |you_can_tell |you_not |you_now |you_on |you_tell_m |you_that |your_mouth |your_oven
|yourself_$ |yourself_$_$
-15 ,| @110.1| @121.1| @134.1| @141.2| @32.9| @39.4| @43| @81.7| @85.2| @94.1| @98.0| DISH_DISH_is|
DISH_DISH_out| DISH_N:few| DISH_ar_off| DISH_early| DISH_get| DISH_hav_com| DISH_hav_not| DISH_how|
DISH_in_U| DISH_in_it| DISH_in|for DISH_is_still| DISH_it|is DISH_kindly| DISH_my_P| DISH_n|Nduration
DISH_powder| DISH_r| DISH_so|scrap DISH_they| DISH_w_ar| DISH_w_lik| DISH_when| DISH|, DISH|DISH_mad
DISH|DISH_too DISH|U_for DISH|alongsid DISH|butter_all DISH|cook DISH|crisp DISH|don_and DISH|has_split
DISH|in_N:few DISH|in_oven DISH|is_DISH DISH|is_dead DISH|is_strain DISH|is_too DISH|it_out
DISH|or_th DISH|so_scrap DISH|this_year DISH|took_th DISH|want_another DISH|went_on DISH|will_do
N:core_at|Nclock N:core_in|no N:core_in|ther N:core_let_us| N:core_lik| N:core_under| N:core_w|
N:core|U_P N:core|after_rest N:core|lik_Nduration N:core|quid N:core|rather N:core|tell N:core|tell_m
N:core|then N:core|well_ill N:core|would N:few_adult_N:few| N:few_ar|DISH N:few_do_not| N:few_early|
N:few_green| N:few_h| N:few_i_am| N:few_if| N:few_less|now N:few_mor_sid| N:few_rib_on| N:few_roast|
N:few_that| N:few_tim_what| N:few_to|giv N:few_under_so| N:few_was| N:few_you| N:few|THING_no
N:few|coeliac N:few|knot N:few|littl N:few|of N:few|of_them N:few|or_N:few N:few|steady_heat
N:few|too_much N:oven_at| N:oven_how| N:oven_it_is| N:oven_lik| N:oven_not| N:oven_now_i| N:oven_now|i
N:oven_no| N:oven_with| N:oven|feet N:oven|sharp N:oven|stop N:oven|stop_ask N:some_U| N:some_on|
N:some_with_th| N:some|percent N:some|with_th Nclock_befor| Nclock_it_was| Nclock|for_dinner
Ndate_night_at| Ndegrees:few_in| Ndegrees:few|insid Ndegrees:some_in|Nduration Ndegrees:some|under
Nduration_Nduration| Nduration_a| Nduration_befor_w| Nduration_behind_on| Nduration_behind|so
Nduration_i_am| Nduration_lat_and| Nduration_my_P| Nduration_on|dinner Nduration_sh_is| Nduration_start|
Nduration_ther_is| Nduration_with| Nduration_w| Nduration|after_w Nduration|back_it Nduration|behind_th
Nduration|down_$ Nduration|front Nduration|front_door Nduration|off_th Nduration|on_them Nduration|sinc
Nduration|to_that Nweight_forerib|on Nweight_still| Nweight_with| Nweight|of_DISH Nweight|stand
Nweight|stand_rib P_DISH| P_P_is| P_U_is| P_U|chok P_can_not| P_can| P_eat_at| P_from| P_is_P|
P_is_start| P_is|help P_is|not P_is|sit P_is|starv P_is|th P_it|is P_lik|it P_lock| P_non|
P_th|THING P_us_up| P_what| P_w| P|ask P|dot P|down P|help P|is_sat P|is_starv P|mak P|n_to
P|nor P|nor_money P|up P|us P|vot P|who P|will_eat THING_Ndegrees:few| THING_THING_in| THING_THING_is|
THING_THING|out THING_a_roast| THING_all_over| THING_and_DISH| THING_and_w| THING_and|no THING_befor|
THING_cam_out| THING_can_i| THING_do|i THING_for_a| THING_for|N:few THING_gav_m| THING_giv|
THING_hang_in| THING_is_at| THING_it|is THING_must_b| THING_of| THING_on|a THING_roll| THING_say|N:oven
THING_sh| THING_still| THING_with_a| THING_would| THING_w| THING|N:core_and THING|N:some_low
THING|THING_anywher THING|THING_has THING|THING_with THING|all_over THING|and_w THING|caught
THING|drop_Ndegrees:few THING|full THING|go_in THING|i_hav THING|in_her THING|in_this THING|is_a
THING|is_don THING|is_not THING|it_$ THING|must_b THING|now_$ THING|out_Nduration THING|say_N:oven
THING|sinc THING|stand THING|to_b THING|with_a U_N:few| U_U_is| U_eat| U_for| U_hav| U_in_th|
U_is|don U_is|sort U_it_on| U_keep| U_my| U_no|P U_sh_is| U_sh| U_ther|is U_they| U_you_ar|
U|my_stov U|no U|no_no U|no_th U|oven_is U|should_th U|th_Nduration U|w ^_DISH_and| ^_DISH_still|
^_DISH|all ^_DISH|shredd ^_N:core|it ^_Nclock|w ^_Ndate|at ^_Nduration_on| ^_Nduration_rest|
^_Nduration|behind ^_Nduration|for ^_Nduration|start ^_P|will ^_THING_cub| ^_THING_is| ^_THING_m|
^_THING|is ^_U|w ^_^_am| ^_^_at| ^_^_delay| ^_^_door| ^_^_fair| ^_^_flight| ^_^_is| ^_^_littl|
^_^_nobody| ^_^_open| ^_^_plus| ^_^_press| ^_^_put| ^_^_r| ^_^_sam| ^_^_sesam| ^_^_set| ^_^_shall|
^_^_som| ^_^_stuff| ^_^_thos| ^_^_up| ^_^_watch| ^_^_when| ^_^_whol| ^_^_who| ^_^_with| ^_^_wrap|
^_^_zero| ^_am| ^_and_then| ^_and|th ^_ar_th| ^_at| ^_away|Nduration ^_carry_on| ^_com|her
^_convection_is| ^_cor_is| ^_cut|it ^_delay| ^_did_P| ^_door| ^_fair| ^_flight| ^_good|even
^_h_was| ^_hold_th| ^_hot_THING| ^_i_told| ^_if_it| ^_if_i| ^_in_my| ^_is| ^_it_run| ^_it|beep
^_it|show ^_i|lik ^_i|mak ^_littl| ^_mak_dinner| ^_my_boss| ^_no_on| ^_nobody_is| ^_nobody|
^_ok_P| ^_open| ^_oven|THING ^_pan_THING| ^_pan|THING ^_pass_th| ^_plus| ^_press| ^_put| ^_roast_is|
^_r| ^_sam| ^_sesam| ^_set| ^_shall| ^_shut_that| ^_sit|down ^_slid_th| ^_som| ^_stuff| ^_stuff|th
^_th_electricity| ^_th_last| ^_th_plat| ^_ther_ar| ^_ther_is| ^_thos| ^_th|N:few ^_up| ^_w_eat|
^_w_shall| ^_watch| ^_what_do| ^_when| ^_whol| ^_who| ^_with| ^_wrap| ^_w|put ^_w|shall ^_w|should
^_yes_i| ^_zero| a_DISH|THING a_Nduration|timer a_Nweight_N:few| a_Nweight|leg a_bell| a_bit_of|
a_bit|pink a_block| a_grand| a_hair| a_low|oven a_nut| a_nut|allergy a_proper| a_singl| a_sit|
a_sit|down a_thick_grey| a_yell| across_th| adult_N:few| after_all_and| after_all_so| after_w|
again|and_it again|i_had aim_for_a| aim_to_eat| aim_to| aim_to|eat aim|to alarm_is| all_DISH|
all_go| all_land| all_right_i| all_right_to| all_so| allow_to| all|cut all|my_stuff all|out
all|peel all|right_for already_got| already_hav| already|com already|in alway_Ndegrees:some|
alway|Ndegrees:some alway|has am_N:few| am_behind|by am_don|with am_i_miss| am_i_on| am_on_tim|
am_sorry|to am_tak| am_th| am|so am|tak am|talk an_extra|N:few an_extra|Nduration and_N:few|P
and_P_is| and_can_not| and_cancel| and_did| and_do|not and_for| and_giv| and_is_it| and_kindly|
and_let_us| and_non| and_now|it and_sear| and_switch| and_tak| and_th_N:few| and_th_number|
and_timer| and_turn| and|U_no and|celsius and|correct and|drop and|her and|how_is and|how_many
and|i_do and|it and|it_went and|now_it and|p and|p_m and|sam and|sam_is and|sear and|shout
and|shout_when and|show_m and|shut and|th_guest and|ther_will and|wak and|wak_m and|what_temperatur
and|who and|you_can any_THING|is anyth_that| anyth|that any|idea any|other any|plat ar_N:few|down
ar_N:few|short ar_at_N:oven| ar_her|so ar_miss| ar_not_com| ar_off|th ar_sat| ar_still_pal|
ar_up_to| ar_w|win around| around|th ar| ar|THING_now ar|a ar|away ar|burn ar|eat ar|go ar|golden
ar|not_in ar|not_warm ar|preheat ar|ston ar|ston_cold ar|stuck_behind as_you|lik ask|for ask|you_$
at_N:core_and| at_N:core|now at_N:few_and| at_N:few|tonight at_N:oven|feet at_Nclock|instead
at_Ndegrees:oven|convection at|N:few_U at|N:few_is at|Nclock_not at|hom at|right away|and away|to
a|Nduration_timer a|Nweight_N:few a|THING_leg a|THING_up a|block a|breather a|disaster a|fair
a|fresh a|proper a|r a|second a|ston a|taxi b_an| b_at_N:oven| b_for| b_mor|Nclock b_no|DISH
b_quiet| b_us| back_for| back_from| back_it_is| back_to|Ngas-mark back|Nduration_and back|Nduration_th
band| barely_N:core|U bast|it bath|th_P beach| been_in|Nduration been_in|th been_sat| began|
began|THING begin| behind_on|everyth behind|her_$ behind|or behind|so_serv besid|th better_than|
bid| bird_N:few| bit_i| bit_ok| bit|pink blank_on| blank_on|th bob| boil_th|DISH boil|and_rough
bon|in_$ bon|in_Nweight both_th_DISH| both_th| both|th_DISH bottom_oven| br_it| brb_Nduration|front
breaker|trip break|N:core bring|N:few brown_it|first brown|enough burn|my_THING business| bus|is
butter_w| by_a| by|th_THING b|by b|don_$ b|gon b|if b|it cam_off| can_DISH| can_drop_th| can_hav|
can_i_us| can_i|DISH can_my| can_not|mak can_sh| can_start| can_w|tak can_you|repeat cancel_th_roll|
cancel_that|timer cancell_so|N:few cancel|what_i can|manag can|not_turn can|w carv|it_$ cast_iron|pan
catch|that cat|got cat|got_th celsius_not| centr_is| chang_their_mind| check_again| check_again|and
check_th| check_with| check_with|th chimney| chip|pan chip|pan_is chok|h chok|h_can chop_th|
chuck_a_DISH| chuck_th|DISH clear_th| clear|th club| coat|ar_off cold|on_m com_out| com_out|THING
com|now com|out_in conk| conk|out continental| cook|them could|not count_to|N:few count|Nduration
count|as cover_in|THING cover_it| cover|in_THING crack_on| cream_for| cream_i| cream|on_th
current| cut_it_open| cut_th_bon| cut_th| cut|up dav_turn_th| delet_what| di_and| di_on| dial_say|
dial_say|N:oven dial|THING_show dial|say did_P| did_not_salt| did_not|say did_you_do| did_you_get|
did_you_se| did_you|say dinner_at|th dinner|N:oven_$ dinner|Nduration_$ dinner|at_N:oven dinner|at_th
dinner|back_N:some dinner|to display_say| disregard| ditch_th_DISH| ditch_th|DISH do_her| do_i_pull|
do_it|go do_it|in do_it|matter do_i|turn do_i|us do_not_hav| do_not_let| do_not_talk| do_not_think|
do_not|count do_not|put do_not|they do_th_second| do_their| do_y| dog_got| dog_has| dog_out|
don_in| don|th_butter don|w_U don|with_th door_now_sorry| down_in| down_on|th down_to_eat|
down|at_N:few down|to_N:oven down|to_th do|DISH do|i_cover do|i_do do|i_slic do|leftover do|not_$
do|not_eat do|not_know do|not_talk do|not_understand do|y do|you_know drank|it driv_m| drop_to|
dry_it| dry|as d|U eat_lik| eat|Nduration_early eat|Nduration_sooner eat|P_is eat|anyth edg_to|
edg_to|edg either| electricity|is end_of|th error|cod eta_on|th everyth_for| everyth_is| everyth|els
extra|N:few extra|Nduration fac_is_swell| fallen|down fat_up| fat_up|or feed_th| fell_on| fight|
fight|th find_in| find_in|th finger|on_th finish|and_it finish|truss fir_in| first_at|Nclock
first|at_Nclock first|so fir|alarm flight_is_lat| for_N:core|after for_N:few_and| for_N:few|of
for_P_and| for_P|nor for_P|who for_all| for_help| for_is| for_new_year| for_to| for_what_reason|
forerib|on forerib|on_th forever_U| forget_th| forget_what|you for|N:few_adult for|Ndate for|U_$
for|his for|m for|th_THING fourth| french_and| french|is from_N:core| from_N:few_to| from_her|on
from_now|and from_th| from|th front_then| full_of| fus|blew gas|is get|DISH go_at| go_back_a|
go_medium| go_out_at| go_to_help| go_to| go_up_to| god|help_us golden_as| gon_ther_is| gon|THING
gon|up good_to| good|boy good|it good|it_is got_N:few|P got_THING|to got_th|oven got|N:core_in
got|go got|my_P go|again go|careful go|for_N:few go|in_th go|out_at grandson_is| grandson_is|scrap
greas|fir green_DISH|U guest_hav| guest_hav|com guest|will_not h_is_hav| h_still| halal|THING
happen_if| happen|if_i has_fallen|down has_gon|cold has_got_a| has_got|U has|not_mov haul|th
hav_DISH|DISH hav_any|THING hav_burn| hav_got|DISH hav_kept_th| hav_left| hav_mad|th hav_miss|th
hav_not| hav_not|pull hav_put_on| hav_remov|th hav_salt_th| hav_taken| hav_to_get| hav_told|
hav|THING hav|U_it hav|a_Nweight hav|complet hav|cut_myself hav|his hav|kill hav|kill_th hav|lost_my
hav|no_THING hav|put_it hav|put_th hav|roast hav|run hav|set_off hav|told heat_and| heat_to|
heat|th_oven help|now help|us her_DISH| her_Nduration_ago| her_a| her_own| her|immun her|immun_system
her|well him_on| him|on his_medium_well| his_own| hit|N:core_$ hit|th holler|when hotter|than
hot|in_her hot|start how_THING|a how_ar| how_is|th how_it| how_long_is| how_many_mor| how|pink
h|can_not h|got h|will_not h|would i_am_N:few| i_am_tak| i_am_th| i_am| i_am|so i_am|tak i_am|talk
i_burnt| i_burn|my i_can_do| i_carv_it| i_clean| i_clean|forgot i_drop_th| i_get_th| i_got|N:core
i_had| i_hav_burn| i_hav_lost| i_hav_th| i_hav|complet i_hav|kill i_hav|never i_hav|put i_hav|turn
i_mak| i_meant_to| i_on| i_put_THING| i_put_in| i_r| i_said|to i_still| i_tell| i_think|th
i_turn|th i_us|THING i_was_read| i_will|start i_will|tell i_would_P| if_THING| if_i_tak| if_it_go|
if_nobody| if_they| if_w_at| if|ther_is ignor_that| in_Nduration|that in_at|N:few in_at|th
in_do| in_her|for in_it|now in_law|do in_middl|Ndegrees:core in_onc| in_on| in_som| in_so|
in_th|bottom in_with| in_your| insid_th| insid|is internal_temperatur| in|N:few_ear in|Nduration
in|Nduration_and in|a_good in|at_N:oven in|front in|i_shut in|onc in|th_car in|th_fridg in|th_front
in|th_other in|th_roast in|ther_crispy in|till is_N:core_too| is_N:core|already is_N:core|in
is_Nclock_th| is_Ndegrees:core|in is_THING_at| is_U|up is_at|Ndegrees:core is_bring_th| is_chok|h
is_don_it| is_enough|DISH is_giv_m| is_help|m is_her_U| is_her_now| is_her|to is_his| is_in_DISH|
is_it_com| is_it_past| is_it_you| is_it|don is_knock| is_lat|they is_lik|seawater is_mad_and|
is_mind| is_mind|th is_not_got| is_not_great| is_not_tak| is_not|great is_on|chemo is_on|th
is_own| is_rar| is_ready_i| is_r| is_sit|on is_still|DISH is_stuck_in| is_stuck|in is_stuff|
is_tail|her is_tell| is_th_best| is_th_first| is_th_salt| is_that_a| is_that| is_ther_any|
is_ther_a| is_well| is_what|w is| is|N:core_too is|Ndegrees:core_$ is|U is|U_THING is|U_in
is|all_U is|any is|ask_for is|asleep is|beep is|blister is|broken is|cold is|cook is|driv is|dry
is|even is|go_$ is|ly is|mor is|need is|no is|no_longer is|not_a is|not_ready is|scrap is|scrap_th
is|sear is|set_at is|split is|spread is|starv is|still_on is|th_rest is|ther_$ is|this_on is|top
is|water it_all_right| it_alway| it_back|Nduration it_back|in it_break| it_break|N:core it_cam|out
it_com|along it_i_hav| it_in|a it_is_own| it_is_still| it_is_that| it_is_too| it_is_up| it_is|Ndegrees:core
it_is|after it_is|blister it_is|do it_is|don it_is|dry it_is|go it_is|lost it_is|m it_is|sear
it_is|spread it_is|that it_jump|Ndegrees:some it_my_P| it_not| it_ok_to| it_out|befor it_out|on
it_stand| it_too| it_to|N:core it_to|Ngas-mark it_was_N:few| it_weigh| it_with|DISH it|b_a
it|burn it|go_$ it|go_to it|is_N:oven it|is_blister it|is_sit it|jump it|lik_that it|look_lik
it|lumpy it|medium_well it|off_th it|out_on it|roll_off it|smell_amaz it|was_at it|when i|THING_th
i|begin i|burn i|do_it i|do_th i|heard_you i|mak_it i|may i|mean i|misread_th i|press i|said_th
i|scald i|scald_my i|talk i|tast i|told i|turn_th i|us i|was i|will_get i|will_tell i|wrot
jump_Ndegrees:some_in| jump_over|th jump|Ndegrees:some kept|th kettl|on knock|it knock|th_oven
know_at| know_at|N:core know_it_is| know_onc| know_th| know|onc lack_a| lad|is land|on_th last_car|
last|Ndate last|th lat|P lat|they_will law|do leav_th| leftover_ar| left|on_th left|to less_than|
less|than let_it|sit let_th_cat| let_us_hav| let|us_on li_it_is| lift_th| light_th| lik_it|lumpy
lik_on| lik|it_lumpy lik|on lik|seawater lik|this list_and| list_what| load_of| long_is_it|
long_is| long|again long|enough lost|my lot_and| lot_ar| low_in| low_in|th lower_to| lower_to|N:oven
low|to lunch_at|Nclock m_about_th| m_back| m_i_said| m_if_it| m_in|celsius m_know_onc| m_know|onc
m_twic| m_what|i mac| mac|and mac|and_DISH mad_and| mad|yet magnus| mak_it|Nduration mak_of|
mak|DISH_cream mak|N:few mak|U many_mor| maria|put maria|put_th mean|N:core_$ medium_rar_is|
medium_sh| medium_well|th medium|rar_or medium|well_$ menu_and| middl|Ndegrees:core middl|b
miss_th| miss|THING monster_this_year| mor_sid| mor_sid|DISH mor_th| mor|Nclock mov_it| mov|up
mrs| mrs|U murder_a| mushroom| my_DISH|is my_P_has| my_P|never my_THING_on| my_U_U| my_cousin|
my_grandson_is| my_guest| my_hous| my_pregnant| my_pregnant|P my_toddler| myself_on|th my|THING_say
my|toddler m|N:core m|in_celsius m|onc_it m|through n_Nduration_befor| n_another_Nduration|
n_th| neep| never|get new|P new|oven next_i| next_on| next|Nduration_$ next|on_th next|year
nic_U| night_at| no_DISH_it| no_DISH_no| no_DISH|peel no_N:core| no_do_not| no_it|roll no_mor|
no_no_it| no_r| no_th_other| no_w| non|of_that nor| not_a|drop not_bother_with| not_bother|with
not_find_in| not_gon| not_got_THING| not_great| not_medium| not_quit|Nweight not_ready|yet
not_start_th| not_think| not_want_th| noth_to| not|U_$ not|any not|believ not|cook not|count
not|get not|go_to not|great not|keep not|let_m not|mind not|salt not|salt_it not|th_DISH not|touch
not|understand not|wait now_Nduration| now_at_Ndegrees:oven| now_at|N:oven now_not| now_sorry|it
now_what|do now|N:core now|and_mak now|i no|DISH_tonight no|P_left no|THING_in no|current no|current_in
no|flam_$ no|gluten no|not_yet no|sear_$ no|w no|win nudg_th| number|N:few number|for number|i_am
number|is_N:core nurs| nut|in n|a_THING n|it n|not oat_THING| of_DISH_th| of_DISH|w of_guest_to|
of_r| of_th| of_th|DISH of_th|other of_th|real off_th_board| off_th_r| off|again off|so off|th_bon
off|th_list of|Nduration_$ of|THING of|THING_THING of|it of|pound of|th of|th_N:few of|th_U
of|th_heat of|thos of|tim of|win ok_it| ok_i| ok_ok_i| ok|instead ok|look on_N:oven|stop on_for|
on_out|of on_that|DISH on_this|stov on_th|DISH on_th|counter on_th|go on_th|littl on_tim|U
onc_it|is on|N:core_and on|N:some_$ on|about on|ar on|earth on|now_$ on|th_bench on|th_plat
on|th_tabl on|that on|to_boil open_that| open_th| open|and_it open|for_Nduration open|th or_am|
or_am|i or_do_i| or_should_i| or|DISH_it or|am or|am_i or|can or|i other_half| other|th our_oven|
out_a| out_hav| out_my| out_oven| out_that| outsid|is_not out|cold out|now_$ out|th out|th_schedul
out|ther oven_THING|N:some oven_THING|hang oven_dial| oven_is_N:some| oven_off_and| oven_on|now
oven_temperatur| oven|at_N:oven oven|dial oven|door_open oven|is_now oven|run_hot over_in|
over_i| over_that| over_th|U over|th_top parish| past|medium past|th peel_i| pencil| peopl_hav|
peopl|for pick_up_th| pick|th pink_in| pink|ar pink|at pip|down plan_for| plan|as plan|as_well
plat_down| plenty|of plus|U point_of| pok_m| poorly| poor|th pop_th| powder| pregnant|P preheat_to|
preheat_to|N:oven present_and|correct pretend|i pretty_good|it priya_is| pull|at_N:core pur|raw
push|dinner_back push|th put_Nduration|on put_him| put_som| put_them| put_th|dinner put_th|oven
put_your| put|som quid|a quiet|now quit|Nweight quit|Nweight_N:few r_it_is| r_on_th| rar_in|
rar|for_th rather_hav| raw|in readout_go| readout_go|N:core ready_Nduration| ready_by| ready_to|
ready|by ready|or_not read|N:core_now reason_for| reason|w reheat|th remind|m remov|th_roast
reset| rest_my| rest_on| rest_under|THING restaurant| rest|ar rest|it rest|now_$ rest|th_DISH
rib_it| rib_on| rib_with|N:few rib|of right_it_is| right_i| right_now| road|for roast_DISH|ar
roast_DISH|has roast_DISH|took roast_at|Nclock roast_has| roast_is|Nweight roast_is|season
roast_i| roast|don roast|don_$ roast|went roast|went_in rop| rough| run_Ndegrees:some|hot run_at|
run_a| run_th| run|behind ruth| saf_for| said_N:few|peopl said|N:few_peopl said|grac said|to
salt_do| salt_it|last salt_th| salt|and sam_heat| sam_heat|th sat_out|Nduration sat|out say_DISH|
say_N:core_and| say_what| say|in say|it say|what schedul_green_DISH| scratch| scratch|th se_what|
sear_it|at sear|a sear|now second_it_break| serv_at| serv|Nduration_later serv|at set_at| set_m|
set_to|N:oven set|a set|a_timer set|th_oven set|this sh_can| sh_is_go| sh_is|not sh_put| shall|b
shift|everyth shift|everyth_by shoot|ther shoot|ther_is shop_back_in| shop|what should_th|
should_w| shout_in|Nduration shout|m_in show_N:core|now show_Ndegrees:few| shower_i_am| show|alway
shy|of sh|still sid|up silenc_th| silenc|th simpl_DISH| simpl_DISH|will sit_down_is| sit_down|to
sit|tight sit|tight_for skip_that|bit slic|my_thumb slic|th slid_off| slid_off|th slip|and_half
slit| slow|then_a slow|today smok_and| smok|com snow|is so_N:some| so_P| so_THING| so_cross|
so_go|careful so_my| so_tak| so_th_THING| so_th|DISH so_what|do som_of_them| som_roast_DISH|
someth_i_can| someth_i| someth| som|DISH_DISH som|roast som|roast_DISH sorry|to sorry|to_say
so|i so|scrap speak|in speak|to split_th| stand_rib_roast| stand|in_for start_a|Nduration starter_is|
starter|at start|a start|again start|all stay|hom step_away|for step|by step|by_step step|with
step|with_th stick|th still_at| still_do| still_no| still_raw_in| still_work| still|N:core_$
still|good still|hav still|hav_not still|pal stir_th| stop_th|DISH stop_to| stop|for stop|that
straight|on straight|on_th strain_th_DISH| strain|th strain|th_DISH street|is_dark str|in_th
stuck_behind| stuck_on|N:core stuck|on stuff|it such_a| supper_is_at| swap_th| swear_it_is|
swell|up switch_on| tabl_w_said| tak_a_shower| tak_th_THING| taken_th| tak|THING tak|a tak|m
tak|th_THING talk_to|you tell_m_to| tell_m|when tell_you_about| tell|m_and temperatur_ar|w
temperatur_do| temperatur_in_middl| temperatur_is_at| temperatur_to| temperatur|ar_w th_DISH_is|
th_DISH_nobody| th_DISH|wer th_P|ar th_THING_DISH| th_THING_and| th_THING_at| th_THING_cut|
th_THING_it| th_THING_no| th_THING_under| th_THING|for th_U_for| th_bon|off th_bottom|shelf
th_box| th_cat|got th_chip|pan th_colour| th_cook| th_dial|THING th_doctor|said th_dog_out|
th_electricity| th_electric| th_element| th_fan_is| th_ic_water| th_list|for th_menu_and| th_middl|b
th_missus| th_other|sid th_out| th_oven_and| th_oven_is| th_oven_i| th_oven_th| th_oven|sinc
th_oven|was th_pan|is th_paper| th_phon|to th_plan|as th_point_of| th_preheat| th_r_DISH| th_readout_go|
th_reason_for| th_reason| th_rest|ar th_road|for th_roast_THING| th_roast|don th_roll_in| th_roll|n
th_rugby| th_say| th_sear|a th_shop|what th_show| th_simpl_DISH| th_sirloin| th_very| th_wifi|
th_wrong|th than_i| than_you| than|N:few than|i that_at| that_a| that_by_m| that_faff_about|
that_is|a that_it_is| that_mak| that_roast| that|THING_is that|back that|lot that|right their_mind|
them_Nduration| them_all| them_i| then_h| then_what| then|tell then|tell_m ther_any| ther_a|
ther_is_a| ther_is|not ther_no| ther_wer| ther|anyth_i ther|ar_N:few ther|or_not ther|wer thes_DISH|
thes|DISH they_ar_no| they_ar_sat| they_ar|THING they_ar|golden they_ar|out they_ar|run they_ar|stuck
they_had| they|com they|get they|reckon_Nduration thick_grey| thickest| think_i_hav| think_it|
think_i|hav think_i|will think_no| think|th thin| thin|as third_and| this_THING_it| this_for_th|
this_her| this_on|is this_on|th this_year|N:few this|minut this|on_th this|rental this|stov
this|up thought_i| threw_th| threw|th throw_in_som| throw| thumb_pretty_good| thumb|open th|DISH_a
th|DISH_don th|DISH_roll th|DISH_sh th|DISH_want th|DISH_what th|N:few_wher th|Ndate th|THING_on
th|THING_out th|THING_show th|THING_under th|THING_was th|U_is th|bon th|bridg_is th|brown
th|clock th|cook th|doctor th|dog th|fat_cap th|fat_is th|french th|gas_has th|green th|heart
th|i_should th|middl_of th|n th|new_P th|oven_pack th|plug th|porch th|r th|real th|roast_went
th|run th|schedul th|sear_is th|shop_list th|sink th|skin th|story th|str th|summer th|tong
th|visitor th|wrong ti_with| tick_that| tick|off tick|over till|Nclock_$ till|serv tim_what_you|
tim_what|you timer_Nduration|DISH timer|Nduration timer|Nduration_and timer|for_Nduration timer|it
timer|of_Nduration tim|U_i tim|should tim|should_i to_N:core|whil to_N:few|peopl to_N:oven_U|
to_N:oven_at| to_N:oven|lik to_b_N:core| to_b_Nduration| to_b_mor| to_b|DISH to_b|Nduration
to_b|th to_eat|P to_eat|at to_fetch| to_peel| to_pick| to_salt_it| to_salt|it to_tak| to_tell|
to_th|next to_ti_it| to_wait| told|P too_hot_to| too_lat|to too|fast top_of| top_of|th top|oven_is
total_N:few_person| totally| to|N:core to|N:few_$ to|N:oven to|N:some_$ to|THING_up to|U_$
to|celsius to|edg to|get_in to|giv_it to|go_$ to|god to|hear to|look_lik to|serv_it trim_not_quit|
trust_this|THING turn_down_to| turn_th|oven turn_th|timer turn_up_to| turn|down typ_that| under_so|
under_so|tak under|THING_$ undo| up_do| up_front_then| up_it_is| upstair_to| up|all up|all_th
up|i up|if us_N:few| us_THING| us_go_medium| us_not| us_to_b| us_up|all us|THING_THING us|finish
vegetarian_and| volunteer|for w_ar_miss| w_ar|a w_ar|eat w_ar|preheat w_becom| w_do_not| w_hav|N:few
w_prefer| w_said|grac w_will_not| w_will_sear| wait_for| wait_it_is| want_her|medium want_it_at|
want_to|THING want_to|do want_to|eat want_to|giv want|her warm_any|plat warn|m was_Nduration|lat
was|don was|in was|show water_and| water_is| way_of| way_to_get| way|out weight_in| well_don_no|
well_don|i well|th_rest went|in_at went|off wer_N:few| wer_not| wer|N:few wet| what_am| what_am|i
what_ar|th what_can| what_could| what_els|could what_internal_temperatur| what_is_th| what_is|next
what_is|th what_reason| what_siz| what_tim|do what_tim|should what_to| what_will_i| what|ar_you
what|do_you what|is_th what|temperatur_is when_can_i| when_is|th when_it_com| when_it| when|is_it
when|it_hit when|they when|will when|you_ar wher_w| wher|should which_bit| which_of| whil_and|
whil_w| whip| who_eat| who_want_to| who_want| whol|street who|will why_can_not| why_that| why|th
will_THING|do will_b_no| will_com| will_do|it will_hav_th| will_it|b will_not| will_n| will_start|th
will|DISH will|U will|com will|forget_thes will|giv will|hav_it will|tak_th will|tell win_in|
win|P wireless| wireless|THING wireless|THING_is with_everyth|els with_no_DISH| with_th|lid
without_th_DISH| without_th| without|a with|butter with|salt with|th_P with|th_butter with|us
work_in| work_on_this| worri| would_P| would_do| would_lik|th would|do wrong|number w|br_dinner
w|do_it w|hav w|win_$ year_and| year_w| year|N:few year|N:few_bon yes_and| yes_it|is yes_so|
yes|or_no yet_i_hav| yet_to| yok|at_th you_about| you_ar_a| you_ar_go| you_can|manag you_carv|
you_i_am| you_it| you_mak| you_put_th| you_se| you_talk| you_tim_Nduration| your|phon you|about
you|for you|hold you|lik_$ you|repeat you|run_that you|say_th you|watch_th you|what zip|it_$
|@106.0 |@11 |@11.4 |@110.1 |@117 |@133.0 |@136.3 |@136.5 |@14.2 |@141.3 |@144.7 |@17.5 |@35.3
|@48.1 |@49.1 |@53.7 |@61.1 |@63.6 |@64.0 |@70.6 |@76 |@77.3 |@83.2 |@92.0 |@94.6 |@98.0 |DISH_again
|DISH_alongsid |DISH_anymor |DISH_cut |DISH_duty_$ |DISH_first |DISH_from_th |DISH_i_am |DISH_out_$
|DISH_so_that |DISH_ther_is |DISH_would_go |N:core_already_and |N:core_bless |N:core_i_will
|N:core_no |N:core_ok |N:few_bon_prim |N:few_ear |N:few_ear_and |N:few_high |N:few_instead
|N:few_month_pregnant |N:few_with_th |N:oven_all |N:oven_to |N:some_THING |N:some_it |N:some_low
|N:some_mor |Nclock_how |Ndate_without |Ndegrees:few_$ |Ndegrees:few_$_$ |Ndegrees:some_hot
|Nduration_Nduration |Nduration_after_th |Nduration_ago_not |Nduration_ar |Nduration_behind_and
|Nduration_earlier_$ |Nduration_is_that |Nduration_it_is |Nduration_so |Nduration_to_dinner
|P_N:few |P_els_$ |P_from |P_i_n |P_is_in |P_is_still |P_is_vegetarian |P_up |P_w |THING_Nweight_$
|THING_THING_on |THING_after_all |THING_at_th |THING_hang |THING_into |THING_is_broken |THING_is_stay
|THING_it_say |THING_no_THING |THING_per |THING_roast |THING_w_ar |THING_what_do |THING_with
|THING_without |U_N:some |U_Ndate |U_alway |U_for_m |U_is_N:few |U_is_roll |U_no_$ |U_over
|U_want |U_with_th |a_DISH |a_N:some |a_Ndate |a_bag |a_bell |a_bit_longer |a_bit_of |a_boot
|a_car |a_disaster_$ |a_fac |a_hair |a_li |a_plat_$ |a_tabl |a_timer |afternoon_$ |afternoon_$_$
|again_from_th |against |alarm_is_go |alert_at_N:core |all_U_wher |all_i |all_it |all_land
|all_right |all_right_$ |all_right_to |all_th_butter |allow_to |alon_for |alongsid_$ |alongsid_$_$
|alway_com |an_alarm |and_climb_fast |and_correct_$ |and_half_th |and_hit |and_never |and_onc
|and_onto |and_onto_th |and_rough |and_rough_up |and_slow_$ |another_Nduration_$ |ar_N:some
|ar_at_th |ar_burn |ar_cook |ar_look |ar_pay |ar_peel |ar_start |ar_w_do |ars |as_is |as_medium
|as_per_usual |ask_you |ask_you_$ |at_N:core_in |at_N:core_what |at_N:core_will |at_N:oven_for
|at_Nclock_P |at_Ndegrees:oven_$ |at_Ndegrees:some |at_easter_$ |b_all |b_all_right |back_N:some
|back_of |back_of_th |back_th |back_that |banana |band |barbi |befor_th_next |befor_w_eat |began
|began_THING |behind |behind_a |bert |better_$ |better_$_$ |bev |blanket |board_THING |bon_it
|bon_roast_Nweight |bonfir |breather |brilliant |brok |burn_i |butter_$ |butter_$_$ |butter_is_mad
|button |buy_a |by_N:core |by_Nclock_$ |by_Ndate |by_step |call_from |cam_off |cam_up |can_go_$
|can_mak |can_tak |can_you_do |cast |cast_iron |celsius_and_kilo |chas |cinder |clos |coat_$
|coat_$_$ |cod |colour_$ |colour_$_$ |com_along |com_at_N:few |conk |conk_out |continental
|continu |continu_$ |continu_$_$ |cook_it_at |cours_$ |cours_$_$ |cover_$ |cover_$_$ |cream_in
|cross_$ |cross_$_$ |current_in |current_in_th |cut_up |d'you_reckon |dead |dial_$ |dial_$_$
|diaper |dinner_$ |dinner_$_$ |dinner_they |do_and |do_now |do_that_$ |dog_$ |dog_$_$ |don_P
|don_and_in |door_i |dot |down |down_by |drank |drink_$ |drink_$_$ |drop_Ndegrees:few |drop_Ndegrees:few_after
|drop_it_$ |early_to |eat_th |enamel_roaster |error_cod |even_mean |even_mean_$ |everyth_back
|everyth_that |everyth_that_is |everyth_to |farm |fat_THING_$ |fetch |fight |fin_$ |fin_$_$
|finger_$ |finger_$_$ |first_P |floor |for_DISH_$ |for_Nduration_and |for_all |for_his |for_now_$
|for_th_P |for_th_lot |for_you_$ |forget_thes |forget_thes_otherwis |forgiv_m |from_her_$ |from_m_$
|front_door |full_of |gain |gang |garag |gat |gav |get_her_$ |get_them |get_to_N:core |giv_m_someth
|go_Nduration |go_about |go_back_in |go_from |go_how |go_ok |goal |gon_in_th |gon_out |gon_up_in
|got_for |got_from |got_th_butter |got_to_th |grab_th_pan |grandmother |grandparent |guest_ar_already
|hal |halfway_through |hang_in |has_arriv |has_gon_on |has_gon_to |has_split |hav_U |hav_chang
|hav_had |hav_start |heat_$ |heat_$_$ |heat_for |heaven_help |heaven_help_us |her |her_on |her_so
|her_with |his_nam |homework_$ |homework_$_$ |hors |hot_and |hot_enough |hot_for |how_long_it
|i_do_with |i_hav_$ |i_look_$ |i_may |i_meant_to |i_n_$ |i_r |i_said_$ |i_shut |i_shut_th |i_speak
|i_talk |i_ti |i_want_for |i_would_do |if_ther_is |in_$ |in_$_$ |in_Nclock_$ |in_Nduration_and
|in_U_i |in_a_THING |in_befor |in_celsius_and |in_real |in_right |in_th_P |in_th_water |in_ther_and
|in_when |instead_of_N:few |into_it |is |is_N:core_what |is_P_is |is_THING_and |is_as |is_ask
|is_at_N:core |is_at_Nclock |is_beep |is_begun |is_burn_$ |is_burn_to |is_burnt |is_carv |is_cold
|is_complet_$ |is_dark_$ |is_driv |is_early |is_enough |is_expect_so |is_flash |is_full_of
|is_half |is_happen |is_in_th |is_insid |is_lactos |is_lactos_intolerant |is_lost |is_mad_$
|is_no_THING |is_not_becom |is_not_in |is_on_$ |is_on_fir |is_out_for |is_possibl_$ |is_right
|is_ring |is_roll |is_saf |is_sak_$ |is_sat |is_set |is_shot |is_sit |is_starv |is_strain |is_stuff_with
|is_tell |is_tough |is_with |is_wrong |is_your |it_alon |it_away |it_b |it_com_out |it_don_$
|it_down_to |it_dry |it_got |it_i |it_is_do |it_is_what |it_lumpy |it_medium_$ |it_n_$ |it_now_$
|it_out_at |it_out_it |it_say_N:few |it_so_i |it_till |it_to_N:core |it_to_N:oven |it_was_hang
|it_without |jok |judg |keep_$ |keep_$_$ |keep_it_is |keep_tell |keep_tell_m |keep_up |kev
|know_what |lad_is |last_night_$ |last_on_$ |lat_for |lat_not |lat_so |lat_th |leak |left_at
|less_now |let_m_forget |let_us_on |lik_his_rar |lik_water |limit |list_for |loo |look_and
|lump_$ |lump_$_$ |m_$ |m_$_$ |m_DISH |m_at |m_how |m_in |m_in_Nduration |m_my |m_so |mad_a
|mad_th |mak_a |mak_you |man_$ |man_$_$ |medium_what |mention |might_b |moo_$ |moo_$_$ |mor_no
|mor_tim_$ |motorway |mouldy |my_finger_on |my_phon |my_roast |my_stov_$ |my_stuff |my_stuff_is
|my_toddler |n_do |no_DISH_DISH |no_i_hav |no_show |no_th_oven |nois |nor_money |nos |not_been
|not_brown |not_clos |not_do_that |not_gon_in |not_happen |not_know |not_look |not_put |not_se
|not_set |not_shut |not_touch_it |not_trust |not_trust_th |not_turn |not_wak |now |now_N:few
|now_oven |now_sorry |number |number_for |nut_$ |nut_$_$ |october |of_$ |of_$_$ |of_DISH_DISH
|of_DISH_and |of_ic |of_pound |of_th_land |of_th_way |of_us |off_again |off_for_th |off_is
|off_now |off_schedul |off_th_bon |off_what |on_P_is |on_about |on_how |on_on_sid |on_or |on_paus_$
|on_th_door |on_th_way |onto_th_board |onto_th_floor |or_DISH_whatever |or_N:few_$ |or_THING
|ought_to |ounc |our_THING |out_Nclock |out_Nduration |out_a |out_do |out_on_$ |out_overnight_$
|out_sinc |oven_i_put |oven_off_to |oven_so |over_it |over_it_$ |over_th_U |own_THING |packet
|pair |pan_and |park_$ |park_$_$ |party_$ |party_$_$ |peopl_not |piec_of |plan_N:few |plug
|porch |post |present_and |pub |put_THING |put_U |r_insid |r_it |r_it_is |rain_$ |rain_$_$
|read_N:few |reckon_Nduration |reckon_it |record |reheat |remov_it_from |rest_$ |rest_$_$ |rib_with
|road |roast_DISH_$ |roll_up |room |run_lat_Nduration |rundown |salt_and |salt_on |say_and
|say_anyth |say_in |say_medium_$ |scor_$ |scor_$_$ |se_th |sea |sear_i |seawater |set_$ |set_$_$
|set_off |set_off_every |sh_hav |shak |shop_for |shov_it |shy |sinc_i |sit_out |sizzl |slic_$
|slic_$_$ |slip_out |smok_in |so_good |so_good_$ |so_h_is |so_scrap |so_serv |so_serv_N:few
|soft_yet |som_tim_$ |somehow |somehow_$ |somehow_$_$ |someth_in |soon_$ |soon_$_$ |sorry_N:core
|spread |stag |stand_$ |stand_$_$ |station |stick_th |still_N:few |still_go |stuck_$ |stuck_$_$
|stuck_at |stuck_on_N:core |surgeon |tak_it_$ |tak_that_into |tap |temperatur_Ndegrees:core_$
|text_$ |text_$_$ |text_Nduration |text_Nduration_lat |th_DISH_U |th_DISH_do |th_DISH_it |th_DISH_stand
|th_DISH_was |th_DISH_yet |th_THING_DISH |th_THING_now |th_THING_so |th_THING_th |th_bench
|th_bon_in |th_boss |th_butter_so |th_day_befor |th_dishwasher |th_door_it |th_doorbell |th_driv
|th_go_$ |th_guest_$ |th_hall |th_hot_THING |th_lino |th_low |th_method |th_method_for |th_morn
|th_motorway |th_n |th_next_step |th_nut |th_other_$ |th_other_room |th_oven_b |th_pair |th_pair_of
|th_r |th_raw |th_rest_do |th_roast_from |th_roll_timer |th_sam_as |th_sea |th_second_on |th_sink
|th_spoon |th_stov_$ |th_street |th_timelin |th_tong |th_ty_$ |th_very |th_win |than_it |than_plan
|that_$ |that_$_$ |that_long |that_off_$ |that_out |them_down |themselv |ther_crispy |ther_crispy_on
|ther_for |ther_was |ther_what |ther_yet |thereabout |think_i |think_it_is |third_$ |third_$_$
|this_dinner |this_in |this_out |this_plac |this_second_$ |this_yok |thos_DISH |ti_with |tight_for
|tight_for_now |till_serv |timer_start |tinfoil |to_Ndegrees:oven |to_b_had |to_celsius |to_death
|to_giv |to_i |to_pick_th |to_pull |to_r |to_roast |to_th_DISH |to_turn_th |to_walk |to_walk_th
|to_warm |to_wash |to_you_$ |tong |too |too_fast |too_salty |took_th_U |top_THING |totally
|touch_N:core |touch_that |troubl_$ |troubl_$_$ |truss_$ |truss_$_$ |try_to |tuck |under |under_control
|under_it_$ |up_N:some |up_P |up_at_N:core |up_do |up_early |up_her |up_if |up_now |up_to_N:core
|up_when |us_in |us_it_is |veggi |w_DISH |w_U_th |w_ar_off |w_at |w_push |w_put |w_said_$ |w_will_start
|waiter |want_DISH |want_N:core |want_another |want_her |want_th |warm_any |was |was_i |wash_up_$
|watch_for |weak |weigh_Nweight |weird |well_$ |well_$_$ |well_ill |well_ill_b |went_in_Nduration
|went_in_th |what_P |what_i_hav |what_it_claim |what_my |whatsit |when_Nduration |whil_you_wer
|will_b_Nduration |will_get |will_i_us |will_tell |with_and |with_everyth_els |with_th_prep
|with_you_$ |without_tell |wrap_and |year_old |yell_at_N:core |yet_DISH |yet_still |you_a |you_at
|you_don |you_for |you_get |you_i_am |you_know |your_DISH |your_plan
-14 @109.1| @131.0| @132.0| @134.6| @145.3| @2.5| @25.6| @4.2| @47.0| @48.4| @5.0| @51.0| @52.5|
@57.6| @62.2| @62.4| @62.7| @69.0| @76.1| @85.4| @89| @90.0| @94.6| DISH_DISH_or| DISH_DISH_still|
DISH_Nduration|ago DISH_after| DISH_been| DISH_boil|and DISH_butter|for DISH_cam| DISH_cam|out
DISH_from|Nclock DISH_get_th| DISH_go|on DISH_has| DISH_hav| DISH_i_hav| DISH_in|yet DISH_is_too|
DISH_is|still DISH_is|whisk DISH_i|put DISH_my| DISH_n_another| DISH_nobody_lik| DISH_of| DISH_r_DISH|
DISH_right| DISH_th|roast DISH_want|another DISH_w| DISH|DISH_ar DISH|DISH_it DISH|DISH_or
DISH|DISH_tast DISH|and_cut DISH|another DISH|ar_THING DISH|ar_burn DISH|ar_cancell DISH|ar_don
DISH|ar_go DISH|ar_in DISH|ar_not DISH|ar_on DISH|ar_out DISH|as DISH|cam DISH|go_$ DISH|go_on
DISH|got_$ DISH|hit DISH|hit_th DISH|in DISH|instead_of DISH|is_lumpy DISH|is_mad DISH|is_ready
DISH|is_wilt DISH|it_$ DISH|it_alon DISH|it_as DISH|n DISH|of DISH|ther_go DISH|up_$ DISH|was_don
DISH|whil DISH|with_this N:core_U|P N:core_and_still| N:core_and_th| N:core_and|it N:core_dead|
N:core_how| N:core_i_am| N:core_i_hav| N:core_is_ther| N:core_i|think N:core_last| N:core_tak|
N:core_that_is| N:core_th|THING N:core|Nduration_ago N:core|forgot N:core|forgot_to N:core|i_want
N:core|not N:core|on N:core|over_N:core N:core|stop_anyth N:few_account| N:few_account|for
N:few_guest|less N:few_hav| N:few_hungry| N:few_month|old N:few_out_of| N:few_oven|and N:few_peopl|drop
N:few_steady| N:few_step|back N:few_th|U N:few_tim|what N:few_with_th| N:few|Ndate_$ N:few|already
N:few|and_it N:few|bon_it N:few|for_th N:few|gas_r N:few|hav_cancell N:few|her_N:few N:few|wrong
N:oven_by| N:oven_my| N:oven_on|th N:oven|for_dinner N:some_dollar| N:some_for_th| N:some_for|th
N:some_in|th N:some_they| N:some|later N:some|month N:some|person Nclock_can| Nclock_do| Nclock_i_am|
Nclock_w_ar| Nclock_w| Nclock|it_has Nclock|latest Ndate_at|Nclock Ndegrees:core|it_say Ndegrees:few_in|Nduration
Ndegrees:few_too| Ndegrees:few|mor Nduration_DISH|is Nduration_THING|trip Nduration_after_w|
Nduration_after|th Nduration_ar| Nduration_befor|dinner Nduration_behind|P Nduration_is_it|
Nduration_my| Nduration_not| Nduration_on|th Nduration_or| Nduration_set| Nduration_th_DISH|
Nduration_to_check| Nduration_too| Nduration_you| Nduration|ago_and Nduration|at_least Nduration|behind_P
Nduration|behind_schedul Nduration|for Nduration|for_m Nduration|in Nduration|off_schedul Nduration|set_a
Nduration|start_wait Nduration|then_tell Nduration|would_ya Nduration|yes Nweight_THING| Nweight_it|
Nweight_on| Nweight_on|th Nweight|or Nweight|or_thereabout P_get| P_gon|Nduration P_h_is| P_has|
P_help_m| P_h| P_i_am| P_if| P_is_bring| P_is|P P_is|U P_is|ask P_left|th P_on|th P_open|th
P_or| P_sh_is| P_swear| P_tak| P_th_THING| P_that_is| P_that| P_this| P_up|i P_vot|and P_will_b|
P_will_not| P|U_chok P|bev P|des P|f P|fell P|gav P|has P|in_law P|is_N:few P|is_P P|is_help
P|mad P|on_th P|rang P|scream P|set_th P|tak P|want_to THING_N:few_too| THING_THING_N:few|
THING_THING|N:some THING_THING|anywher THING_at_th| THING_back|Nduration THING_for|U THING_from|
THING_has_been| THING_has| THING_hav|Ndegrees:core THING_is_slow| THING_is|N:core THING_is|ly
THING_my|P THING_off|th THING_out_th| THING_oven|is THING_piec| THING_run| THING_so_th| THING_this|
THING_when| THING_with_th| THING|DISH_instead THING|N:some_in THING|Nclock_$ THING|THING_U
THING|THING_is THING|U_from THING|brok THING|hav_Ndegrees:core THING|is THING|is_at THING|is_broken
THING|is_go THING|is_off THING|is_ready THING|is_show THING|left_in THING|over_th THING|pan_and
THING|with_th U_and|it U_how| U_i_do| U_is_U| U_is_in| U_is| U_my_P| U_no_DISH| U_of_th| U_of|
U_should| U_should|th U_th|rest U_want_to| U_when| U_wher| U|DISH_halv U|a_DISH U|is_bring
U|no_P U|now_$ U|th_whol U|this_th U|want_to U|when_w ^_DISH_ar| ^_DISH_will| ^_DISH|as ^_DISH|cream
^_DISH|in ^_N:core_on| ^_N:core_that| ^_N:core|in ^_N:core|now ^_N:few|bon ^_N:few|rib ^_N:some|on
^_Ndate|w ^_Ndegrees:core_th| ^_Ngas-mark|now ^_Nweight_no| ^_P_at| ^_P_sit| ^_P_you| ^_P|fell
^_P|lik ^_P|rang ^_THING_on| ^_THING|it ^_THING|on ^_U_can| ^_U_keep| ^_U|say ^_^_another|
^_^_ar| ^_^_a| ^_^_bang| ^_^_by| ^_^_carryover| ^_^_cater| ^_^_count| ^_^_crack| ^_^_do| ^_^_enough|
^_^_flat| ^_^_found| ^_^_got| ^_^_half| ^_^_heat| ^_^_hey| ^_^_internal| ^_^_keep| ^_^_leave-in|
^_^_leg| ^_^_lost| ^_^_lunch| ^_^_mad| ^_^_number| ^_^_n| ^_^_plat| ^_^_run| ^_^_scrap| ^_^_silenc|
^_^_stand| ^_^_stir| ^_^_tabl| ^_^_taken| ^_^_whatever| ^_^_would| ^_a_few| ^_after_all| ^_another|
^_ar_w| ^_ar| ^_a| ^_back|in ^_bang| ^_bon|ar ^_bottom_oven| ^_brought_th| ^_burn_th| ^_by|
^_carryover| ^_cater| ^_cor|temperatur ^_count| ^_count|Nduration ^_crack| ^_did_not| ^_did_th|
^_do_i| ^_do| ^_enough| ^_flat| ^_forget_what| ^_found| ^_giv_it| ^_giv_m| ^_got_a| ^_got|
^_guest_ar| ^_half| ^_heat| ^_hey| ^_hot_fat| ^_how_ar| ^_how_far| ^_i_U| ^_i_burn| ^_i_fancy|
^_i_got| ^_i_put| ^_i_us| ^_if|w ^_in_it| ^_internal| ^_in|th ^_is_P| ^_is_th| ^_it_is| ^_i|DISH
^_i|burnt ^_keep| ^_leave-in| ^_leg| ^_light_went| ^_lost| ^_lunch| ^_mad| ^_medium_for| ^_my_P|
^_my|DISH ^_m|oven ^_no_tim| ^_no|pink ^_no|way ^_number| ^_n| ^_off_to| ^_out_at| ^_out_it|
^_oven_THING| ^_oven_door| ^_oven|set ^_pass_us| ^_pass|th ^_paus|for ^_plat| ^_put_a| ^_put_it|
^_put|DISH ^_remember_when| ^_right_th| ^_run| ^_scrap| ^_should_i| ^_silenc| ^_so_th| ^_sorry_i|
^_stand| ^_steady_heat| ^_step_out| ^_stir| ^_stop|talk ^_stop|that ^_switch_to| ^_tabl| ^_taken|
^_temperatur_is| ^_th_family| ^_th_lad| ^_th_power| ^_th_roast| ^_th|DISH ^_th|cor ^_timer|off
^_tom|is ^_w_did| ^_w_hav| ^_w_should| ^_w_want| ^_wait_i| ^_wait|what ^_want_to| ^_well|th
^_what_all| ^_what_did| ^_what_i| ^_what_number| ^_whatever| ^_what|hav ^_when_do| ^_who_left|
^_will_it| ^_would| ^_w|did a_N:few| a_THING|up a_bit|longer a_blush| a_bonfir| a_call| a_favour|
a_favour|and a_gas| a_half|THING a_helper| a_hot|finish a_leave-in| a_leave-in|THING a_list|
a_number| a_proper|THING a_rib|of a_second|oven a_shout|in a_timer_for| a_timer|for a_warm|
about_my| about|Nduration about|to absolutely|not account|for across|th_THING act| add|green
add|green_DISH adult_N:few|P after|th_rest after|that_$ again_it| again|from_scratch ahead|or
ahead|or_behind alarm_for|Nduration all_N:few_account| all_behind_Nduration| all_my_THING|
all_off| all_off|Nduration all_right_for| all_right|or all_th|DISH all|THING_th all|on all|over
alway_N:some| alway_com| alway_run|N:some alway|lat am_Nduration_lat| am_Nduration|back am_at|
am_don_with| am_go_to| am_i_do| am_i|aim am_lagg_by| am_not_sur| am_not|do am_not|don am_not|sur
am_pop_too| am_run|Nduration am_stand_her| am_stand| amount| am|Nduration_lat am|THING am|do
am|don am|don_with am|go am|i_behind am|i_on am|leav am|put am|put_th am|run am|se am|still
am|stuck am|tak_it am|th an_Nweight| and_DISH|ar and_aim| and_down| and_everyth_in| and_forget|
and_got|N:core and_half|th and_i_want| and_it_went| and_i|do and_let| and_look| and_mak_it|
and_mak| and_my|THING and_on|a and_out|th and_remind_m| and_sh| and_so|what and_th_DISH| and_then_it|
and_then|it and_this|is and_th|oven and_when_do| and_will| and|a and|bob and|bob_is and|dav
and|drop_th and|hot and|non and|shop and|shop_list and|start_over and|th_DISH and|th_N:few
and|th_P and|th_other and|th_roast and|then_th and|this_is and|ti and|turn_th and|wash another_Nduration|and
another_Nduration|then anyth|i_hav anyth|i_n ar_boil_and| ar_go| ar_in|boil ar_not|hav ar_out|now
ar_peel|and ar_run|Nduration ar_sit|at ar_start_to| ar_stuck_behind| ar_tell| ar_warm|now ar_w|nearly
arm_on| arm_on|th arm|on arm|on_th ar|N:few_of ar|N:few_short ar|N:few_tonight ar|clean_out
ar|do_th ar|down ar|go_to ar|not_com ar|out_now ar|ready ar|run ar|sit_at ar|stuck_on ar|too
ar|w_on as_of| as_per| ask_th| ask| ask|you as|it_is at_N:core_right| at_N:core|stop at_N:few|steady
at_N:oven_so| at_N:oven_th| at_it|sinc at_right| at_th_U| at_th|DISH at_th|N:few at_th|start
at| at|N:some_$ at|Nclock_in at|Ndegrees:oven at|Ndegrees:some at|what_oclock at|what_temperatur
away_for| away_for|Nduration away_to| a|Nweight_prim a|blush a|call a|day a|green a|green_DISH
a|hot_oven a|leg a|li a|loaf a|man a|nut a|nut_allergy a|small a|tabl a|tast b_N:few|of b_N:few|person
b_Nduration|ago b_all| b_all|right b_at|Nclock b_in| back_Nduration_and| back|a_bit back|by
back|in_a back|is back|of back|of_th barely_N:core_U| battery_is_flat| been_on|N:oven beep|m
befor_th|phon befor| befor|N:few_$ befor|THING befor|dinner befor|th_phon behind_Nduration|at
behind_by|Nduration behind_i| behind|on_th behind|with_everyth belly| besid_th| besid_th|THING
better|than bin_th_timer| bin_th| bin|th_DISH bit|longer blad_tenderis| blaz_in| bleed|badly
board|at board|at_Nclock bob_for_th| boil_DISH| boil_water|test bon_in|it bon_off|and boneless_Nweight_and|
boneless|Nweight_and boss|is bought_a|Nweight box_is| box_is|all br_it_to| br_it|forward bridg_is|
bridg_is|shut bring_N:few| bring|DISH bung_som| bung_th| burn_by_hot| bus_is| butter_gon| butter_gon|ther
butter|th_roast butter|what butter|with butter|with_DISH buy_for| buy|DISH by_Nclock|in by_Nduration_and|
by_hot| by_hot|THING by|Nduration_approximately by|now by|th_way b| b|Nduration b|all b|all_right
b|at b|do b|for b|no_DISH b|pink b|this call_for| call|from cam_off|th cam_out|i cam|up can_i_swap|
can_i_tak| can_not_mak| can_not_stand| can_not|THING can_not|se can_w_eat| can_w_go| can_w|br
can_you_repeat| can_you_wait| can_you|imagin cancel_th|timer cancel|th_green can|eat can|my_toddler
can|sh_hav can|us can|w_do can|w_mak can|w_tak can|you_do careful|with_her carry_th| carry|a
cat_has| cat_is| catch_my| catch_my|breath catch_that| caught| celsius_and| celsius|i celsius|i_mean
celsius|not_fahrenheit chair_and| cheap_THING_THING| cheap_THING| check|DISH chip_pan| chip_pan|is
choic| chop_th|DISH chuck|som chuck|th_DISH church|for clean|out_of clear_th_THING| click|
climb|to_N:core clock_for_th| clock_on_th| coat_on|th coat|in coat|in_th coat|on_th cold_in_th|
collect| com_at|N:few com_down_to| com_from| com_how| com_th_oven| com_to_th| com_what| com_with|
com_with|a com|from_th com|up_at com|with_a cook_in| cook_it_at| cook_it|at cooker_is|Ndegrees:some
cooker|work cook|through corn| could_dinner| could_do|with could_us| could_w|go could_you_tim|
count_as| count|them cow_is| cow_is|tail cow|is cow|is_tail cream_in|th cream_on|th crunchy_it|
crunchy_it|is customer| cut_and| cut|off_and cut|th_oven cut|th_trim c|and_kilo c|not c|not_degre
da_is| dark_and| decent| degre_c|not delay_it_by| delay|by delay|by_Nduration delay|dinner
dental| describ| dial|is did_i|say did_not_mean| did_not_say| did_th_U| did_that| did|that
did|you_say din_at|Nclock dinner_Nduration|sooner dinner_back| dinner_is_mov| dinner_is|Nduration
dinner_they| dinner_up| dinner|at_N:few dinner|back_Nduration dinner|by_Nduration dinner|in
dinner|in_Nduration din|at_Nclock do_i_cover| do_i_cut| do_i_hav| do_i_work| do_it_in| do_it_n|
do_i|go do_i|tak do_i|tell do_not|eat do_not|talk do_th_oven| do_us| do_water_boil| do_water|
do_water|boil do_without_th| do_your| doctor|told don_Nduration_ago| don_i_am| don_th_DISH|
don_with|th don|no door_for| door_now|sorry door_on| door_on|th door|of down_how| down_in|Nduration
down_i| down_lik_a| down_noth| down_noth|U down_to_a| down_to|N:oven down|to_N:few down|to_N:some
do|DISH_go do|fahrenheit do|hav do|hav_a do|i_set do|i_turn do|i_work do|it_matter do|not_chang
do|not_do do|not_n do|not_put do|th_DISH do|without drop_Ndegrees:few| drop_it|to drop_out|U
drop_that| drop_th|timer drop_th|whol drop|th_DISH dry|THING duck|out dyou| early_and| eat_early|
eat_th| eaten| eat|Nduration_befor eat|Nduration_later eat|a eat|at electricity_has| element_is|
empty_and| enough|for_th enough|with enough|with_th even|N:few every_last_DISH| everyth_back|
everyth_back|Nduration everyth_by| everyth_by|N:some everyth_in_th| everyth_in|th everyth_i|
everyth_slip_by| everyth|by everyth|by_N:some everyth|in everyth|to every|last exactly|do exactly|do_th
ex| f_th|chook fac|is fallen_Nduration_off| far|off fat_in| fat_this| fat_trim| fat|is_on favour|
favour|and favour|and_shout feed|N:some feed|th fetch|th fin_for| find|a find|a_THING find|th_THING
finger_is_bleed| finger_on|th finish_it| finish_th|DISH finish|at_N:core finish|th first|N:few_hav
first|alert first|alert_at fix|to flat|and flat|and_i flight_is|delay flight_land| floor_and|
floor|sh folk_say| folk|say folk|will fool| for_Nclock_and| for_U_and| forever_U_th| forever_U|th
forever|U forget_about_th| forget_i| forget_what_you| for|N:core_$ for|N:few_person for|Nduration_i
for|ag for|her for|medium_$ found_a| found_out_th| found_th_str| freak| freak|out french_is|
fre|from fre|from_N:few from_fridg| from_my| from_now|till from_th_stov| from|Nclock_$ from|a
from|convection from|your front|then fus_has| gary| gas_bottl| gav|you get_lat_by| get_stuck|
get_stuck|in get_th_THING| get_to|N:core get|rid get|rid_of get|that giv_m|N:some giv_m|Nduration
giv_m|som giv_us|Nduration giv|that gluten|is gluten|is_out go_back|a go_off|and go_on_th|
go_out_Nduration| go_over|N:core go_right| go_th|THING go_to_hit| go_to_th| go_to|giv go_to|skip
go_with_th| gon_and| gon_for| gon_for|Nduration gon_out|so gon_up_to| gon|and gon|on_th good_to|go
good|Nduration_behind good|reason good|shap got_N:core|forgot got_th_butter| got_th_joint|
got|N:core_$ got|Nduration got|no_DISH got|no_THING got|power go|alongsid go|lower go|to_U
go|to_look go|with_th go|wrong grab_th_hot| grab_th_pan| green_DISH|ar grey_as_a| grey|all_th
grey|band guest_ar_already| guest_ar| guest_to|N:few guest|at guest|less guest|seat h_can_not|
h_can| h_has_been| h_is_U| h_is_stay| h_is|not h_will_not| had_not| had_to_THING| had|it had|not
hair| half_th|DISH half|THING half|THING_THING half|ar half|tim handl_my_palm| has_been_sat|
has_com|out has_gon|up has_got_no| has_got|no has_it| has_not_mov| has_touch| has|drop has|gon_hom
has|reach has|th_DISH has|touch hav_a|tast hav_been|turn hav_bought_a| hav_com|out hav_decid|
hav_finish|with hav_got_to| hav_got|power hav_had_a| hav_it_is| hav_mad_th| hav_never| hav_not|th
hav_put_th| hav_roast| hav_taken_th| hav_ti| hav_to_DISH| hav|DISH_DISH hav|Ndegrees:core hav|all
hav|been hav|don hav|drop_th hav|finish hav|finish_with hav|got hav|lift hav|mad hav|not_don
hav|not_even hav|not_th hav|plenty hav|slic hav|switch hav|turn_it headcount_has| headcount|has_gon
hear_myself| hear_myself|think hear_you|over heard|you_$ heat_do| heat_is| heat_no| heat|for
help|out her_N:few|still her_Nduration_after| her_chair| her_down|to her_lik| her_nam_is| her_oven|
her|at_N:few her|in_th her|lot her|sleev his_medium| his|plat his|well his|well_don hit_N:core|lik
hold_at| hold_on|a hold_that| hold_that|thought hold|up holler_at| hotter_than_sh| hot|fat_splash
hot|finish hot|start_$ hous_at| how_do_this| how_is_th| how_long_has| how_long_hav| how_many_day|
how_much| how_much|butter how_much|salt how_pink|will how_was| how_would| how|am how|am_i how|can
how|can_w how|did how|far how|was hush|now i_am_at| i_am_stand| i_am|THING i_am|do i_am|don
i_am|go i_am|leav i_am|put i_am|se i_am|still i_am|stuck i_am|th i_at|a i_can|not i_could_us|
i_cover| i_do|hav i_do|it i_forgot|to i_gav|you i_get| i_go_to| i_go| i_hav_burnt| i_hav_had|
i_hav_to| i_hav|drop i_hav|finish i_hav|got i_hav|slic i_hav|switch i_kill| i_knock| i_mean_not|
i_mean|th i_measur| i_misread|th i_n_to| i_pok| i_put_it| i_put|my i_put|th i_said_it| i_salt|
i_salt|it i_slic| i_suppos_to| i_swap_th| i_was| i_will_mak| i_will|se ic_in| idea_of| if_someth|
if_that| if|P if|that_is if|they_ar if|you_do immun_system| immun_system|is in_DISH|DISH in_Nduration_and|
in_Nduration_i| in_Nduration_that| in_U|i in_a_half| in_her_chair| in_law|tak in_no|they in_sh|
in_som|roll in_th_bottom| in_th| in_th|sink in_th|whol insid_it| insid|temperatur_is instead_of_dry|
instead|of_fresh internal|temperatur_is in|Nduration_now in|THING_in in|as in|degre in|law
in|old in|old_money in|sinc_N:few in|th_bag in|th_hall in|th_hous in|th_loung in|th_middl in|th_packet
in|ther_as in|town is_N:core_and| is_N:core|over is_Nweight_i| is_P_is| is_THING|at is_U_and|
is_a_fan| is_all_go| is_allergic_to| is_an_Nweight| is_battery_is| is_bleed|badly is_boneless|Nweight
is_bring_N:few| is_bring|th is_by_Nclock| is_com_to| is_com|after is_com|out is_cut|th is_do_a|
is_down|to is_empty_and| is_even| is_flat| is_flat|and is_fre|from is_full|of is_giv| is_half|
is_her_to| is_hold| is_insist_on| is_in|flam is_it_a| is_it|all is_it|saf is_lik_th| is_lik|a
is_look|so is_lot| is_lot|ar is_margarin_ok| is_no_longer| is_not_brown| is_not_even| is_not|a
is_not|any is_not|tak is_out_for| is_raw|in is_set_at| is_shap_N:few| is_slip| is_slow|and
is_start|THING is_stuck|at is_tent| is_th_DISH| is_th_N:few| is_th_day| is_that|ok is_that|right
is_ther_someth| is_th|DISH is_th|N:few is_top| is_what_i| is_when| is|N:few_and is|Nclock_th
is|Nduration_i is|Nduration_later is|becom is|call is|easy is|full is|go_U is|go_to is|help_m
is|her is|history is|in_at is|it_on is|lot is|m is|margarin is|margarin_ok is|not_U is|not_com
is|noth is|now is|overcook is|smok_everywher is|tail is|tak_N:few is|ther_any is|ti_$ is|what_th
is|whisk it_N:core|in it_all_off| it_b_long| it_both| it_by|Nduration it_b|long it_do|not it_for_th|
it_go|in it_has_com| it_hit| it_hot| it_in_th| it_in|at it_in|kilo it_is_for| it_is_so| it_is_tent|
it_is|now it_is|raw it_is|ready it_is|serv it_i|hav it_my| it_ok| it_on_th| it_out_at| it_pass|
it_pass|N:core it_ready| it_saf_to| it_to|N:oven it_to|medium it_w_ar| it_was_N:some| it_was_th|
it_was|N:few it_weigh|Nweight it_went_in| it_with_DISH| it_without| it|N:oven_or it|Ndate it|alway
it|at_$ it|back it|beep_so it|cam it|climb it|com_out it|down_to it|for_th it|forward it|has
it|in_kilo it|is_Ndegrees:few it|is_fin it|is_ti it|now_$ it|off_and it|ok_to it|out_of it|overnight
it|rest_$ it|sinc it|still it|stuck it|th_day it|till it|too it|touch_N:core it|will_stay i|aim
i|aim_for i|am_call i|am_stuck i|ask i|at i|carv i|check_it i|cook i|cut_it i|gav i|go_to i|hav_Nduration
i|hav_burn i|hav_th i|kill_it i|meant_N:core i|misread_it i|n_to i|order i|remov_it i|saw i|tak_th
i|to i|trim i|trim_th i|will_do i|work i|would_say jaysus|th jess|is_on jo|will jump_over_th|
kavi_is| kavi_is|do keep_an_THING| keep_go_off| keep_it|down keep_it|warm keep|tell_m kill|th
kilo_i_am| kilo|and_degre knock_N:few| knock_N:few|off knock|it_back know_how_much| know_how|
know_when_Nduration| know|at_N:core know|what_i know|when_Nduration know|when_it kumara| lad_ar|
last_Nduration| last_car|pull last|Nduration_$ last|on last|tim_so last|week lat_for| lat_so_w|
lat|as law|tak lay_th|tabl leav_th_THING| leave-in_THING|is left_and| left_in_th| let_it_sit|
let_us_get| let_us|get let|it_go let|th_cat li_i| light|ar_back lik_P| lik_a_bonfir| lik_it_medium|
lik_it_on| lik_i| lik_w| lik|a_U lik|an lin_down_noth| list_i| list_i|hav list|for_th list|for_us
littl_screen|by littl|N:few littl|oven lit|it li|down long_as_you| long_can_it| long_has| long_hav|
long_till| longer_for| long|way look|at_th look|so look|so_i loosely_in| los_th| low_and| lower_oven|at
lower|oven m_DISH| m_a_bell| m_forever_U| m_forget_th| m_so| m_straight|is m_to|do m_up_when|
machin| mak_DISH|DISH mak|th many_day| man|i man|i_am man|is margarin_ok| marri| mean_not|
mean|th medium_and| medium_sh_is| medium_well_and| metric_kilo| metric_kilo|and mi_fi| middl_and|
middl_is|N:core mind|your_back misread_th| missus_will| month|old mor_it| mor_sid_DISH| mov_dinner_up|
mov_dinner| mov_it_to| mov|dinner_up much_longer_for| much|butter must_b_Nduration| must_i_do|
must|th my_P_on| my_arm_on| my_arm|on my_back|is myself|think my|P_in my|P_will my|arm my|boss
my|breath my|god my|hair my|mind my|oven_has my|sleev m|N:few_for m|again m|lik m|lik_i m|sort
m|th_next m|till m|till_it n_Nduration| n_another| n_not| nam|is near|ready never_get| never_got_th|
never_us| never|did never|turn new|THING new|dinner new|year next_week| nic|and no_bon_in|
no_bon|in no_i_hav| no_power| no_second| nobody_at| nobody_lik|it nobody_will| nobody|lik not_a_THING|
not_a_singl| not_do_th| not_eat_anyth| not_find|a not_get_a| not_go_to| not_got_a| not_got|
not_hear_myself| not_i|am not_know|how not_lik| not_look| not_n_th| not_rest|long not_so| not_stand|
not_stop|bleed not_tell| not_trust_this| noth|U_work not|at not|b not|don_$ not|find not|french
not|french_th not|gon not|got_THING not|got_a not|happen not|let_it now_at| now_do|not now_for|
now_is|N:core now_my_P| now_oven| now_would| nowher_near|ready now|sorry_it now|till no|DISH_no
no|THING_is no|butter no|fresh no|fresh_DISH no|longer no|mor_reminder nudg_m_in| number_do_i|
number_is| number_i|am number|am number|am_i number|do n|Nduration_$ n|a of_THING|THING of_butter_and|
of_dry| of_dry|THING of_th_even| of_th_real| of_th|sear of_top| of_top|THING of_us_and| of_us_at|
of_us_in| off_and|it off_at|Nclock off_it| off_th_oven| off_th|list off_th|r off|on_th off|th_Nduration
off|with_th of|DISH_DISH of|N:few_$ of|a of|th_DISH of|th_guest ok_for| ok_ready|when ok|instead_of
ok|ready old_folk| on_at_th| on_earth| on_hav| on_is_look| on_on_th| on_say| on_say|N:core
on_so| on_th| on_th|bench on_th|oven on_th|wall on_tim_m| on_to_th| on_will| onc_it| onto_th|
on|my_end on|th_b on|th_board on|th_leave-in on|th_pan on|th_platter on|th_telly on|th_til
on|toast on|tonight open_for| open_it| open|th_door or_do|i or_h| or_near| or|U or|a or|i_hav
other|ar other|on ounc| our_P| our| our|lodger our|oven_is out_Nduration| out_Nduration|i out_at|N:some
out_on|m out_th|THING out_would| out|U_of out|at out|at_N:oven out|at_th out|of_you oven_THING|N:oven
oven_as| oven_befor|Nduration oven_door_now| oven_has| oven_is_at| oven_is_now| oven_is| oven_i|put
oven_took_ag| oven_was| oven_went| oven_will_not| oven|THING_hang oven|and_no oven|back oven|befor_Nduration
oven|floor oven|has oven|is oven|is_N:oven oven|is_banjax oven|is_preheat oven|on_N:oven oven|on_for
oven|to_N:oven oven|up_to over_th| over|in over|my_arm over|th_floor own|a pal_as| pal|as pan_is_in|
pan_what| pass_us| pass_us|th past_th| paus_for| pay|m peel_th| peel_th|DISH peopl_at| peopl_drop_out|
peopl|drop peopl|drop_out person|will person|will_b phon_to| phon|is_ring pink_as| pink|will
plan|got plan|got_in plat_and| plat_down|Nclock plat|ar_warm plat|down plug| plus|N:few_$ point|of
pop_too| pop_too|th possibl_to| possibl| possibl|to pound_and| pour|th power_has| power_is|
power_is|out power_went| preheat|to_N:oven prepon_by| prepon_by|Nduration proper|THING puff|
pull_for| pull_for|medium pull|at pull|th_DISH push_everyth_back| push_it_back| push_th| put_m|Nduration
put_th|DISH put_you| put|her put|in quick|updat r_DISH|too r_and| ran|out rar_this| rarer|
rar|ok rar|ok_for rather|not readout| ready_in| reckon_Nduration|is reduc_for| remember_when|
remember|that reminder| repeat|that rest_in| rest_is| rest_on|th rest_they_ar| rest_th| rest|do
rest|do_not rest|for rest|of revers|sear_$ rib_N:few|bon rib_roast_N:few| rib_with_N:few| right_so|that
right_that_is| right_that| right|or right|what roar|when roast_DISH_ar| roast_N:few|bon roast_for|
roast_is_at| roast_on| roast|DISH_$ roast|Nweight_i roast|do roast|has roll_ar_out| roll_off|
roll_off|th roll_went| roll|up rubbish| ruin|it_$ run_Nduration|lat run_a_bit| run_at|N:oven
run|Ndegrees:some_hot run|lat r|in sack|that sack|that_step said_h| said_it|is said_it|wrong
said_i| said_that| salmon| salt_it|th sam_is|help sam|temperatur sat| sausag| sav_a|plat say_N:core|now
say_it|is say_they| say|on say|on_th say|that_again scald|my scrap|th_roll screen|by screen|by_th
scrub_th_DISH| scrub|th sear_on| sear|don seat_let_us| second_it| second|on second|on_th sens|
serv_at_N:core| serv_at|N:core serv_it|N:oven serv_it|pink sesam| set_it_to| set_th_oven| set_this|
settl|on se|you_in sh_carry_a| sh_is_after| sh_is_a| sh_is_off| sh_is_on| sh_is|easy shap_N:few|
shap_N:few|roll shav_N:few| shav_N:few|off shelf_it| shelf|it shop_for| shop|is should|b should|do
should|hav should|i_b should|w shout_at| shout_if| shov_dinner| shov_dinner|back shut|th_door
sh|lik sh|look sinc|Nclock_$ sinc|i sirloin_Nweight|or sit|down_to skim_and| skim_and|bob skin|on
skip_butter| skip_butter|th skip_th|butter skip|th_DISH slic_and| slic|b slip_and_half| slow|and_U
slow|then_blast slump| slump|over smok_alarm_is| smok_com_out| smok_com| smok_is| smok_it_is|
smok_pour| smok|in so_N:few|fewer so_shav_N:few| so_tak_it| so_they| so_watch| so_w|will soft|yet
som| soon_as| sorry_i| sound|right so|keep so|long so|no_THING special| splash| stand_her|lik
start_at|N:few start|on start|th_clock stat_of| steak_medium| steak_medium|rar step_my| step|away_for
stick_th| still_DISH|solid still_N:few_step| still_crunchy_it| still_on_th| still|cold still|moo
still|not_finish still|stuck stir_th|DISH stir|it stop|bleed stop|for_a stop|nagg stor|was
stor|what straight_to| straight|away straight|from straight|in_th straight|is straight|is_it
strain_skim_and| stretch_it| stuck_it| stuck|in_it stuff|with supper_at| supper_at|Nclock supper_is|
supper|Ndate supper|Ndate_at supper|at supper|at_Nclock supper|is suppos|to sur_i|will surgeon|
swear_it| switch_it| switch|everyth switch|everyth_to swor| system|is tabl_by| tabl|by tabl|of
tabl|w_said tak_N:few_tim| tak_it|medium tak_m_twic| tak_th|THING tak_your| taken_it| taken_it|out
taken_th_THING| tak|th_DISH tak|this tell_m_th| tell_m|to temperatur_of_THING| temperatur_of|THING
temperatur_wis| temperatur_wis|w temperatur|do temperatur|th_whol temperatur|to tent_is| test|it
th_DISH_ar| th_DISH|anymor th_N:few_rib| th_THING_U| th_THING_board| th_THING_has| th_THING_show|
th_THING_so| th_U_th| th_board|at th_bon_ar| th_box_is| th_bridg|is th_butter_gon| th_chip_pan|
th_cooker|work th_cream| th_crew| th_door_and| th_even| th_even|w th_floor_and| th_green|DISH
th_guest_com| th_heat| th_in|law th_last_Nduration| th_last|Nduration th_lat| th_littl_on|
th_liv| th_liv|room th_lower|oven th_middl_and| th_number_i| th_other|on th_other|th th_oven|back
th_oven|floor th_oven|has th_plan_and| th_plan|got th_power_went| th_real| th_rest|do th_roll_and|
th_run| th_second_it| th_second|on th_shop|for th_shop|list th_stat_of| th_tabl_by| th_tabl|by
th_tabl|now th_timer_on| th_tip| th_toddler| th_to| th_trick| than_sh| thank|you_very that_far|
that_go| that_oven| that_phon| that_timer_on| that_what| that_would| that|DISH_timer that|U_$
that|for that|ok that|out that|phon_call that|right_$ that|saf that|thought that|was_not that|will_do
their|N:few their|N:few_of their|P them|in_th then_a_hot| then_i_will| theo_want| ther_someth|
ther|in_th ther|w_go they_ar_not| they_ar|all they_ar|go they_ar|off they_hav_miss| they_hav|com
they_want_to| they|call they|had they|hav they|will_not think|i think|roast think|roast_DISH
this_oven_is| this|THING_is this|bit this|dinner this|hous this|whol_tim through_no_pink| th|DISH_N:oven
th|DISH_bless th|DISH_got th|DISH_stand th|DISH_th th|DISH_will th|Nduration_N:few th|P_do
th|THING_U th|THING_at th|bairn th|bench th|blast th|bottom_of th|can th|chop th|com th|crackl
th|crust th|door th|fan th|finger th|first_on th|forward th|forward_Nduration th|guest_hav
th|handl th|igniter th|joint th|label th|last th|light th|lot_of th|morn th|needl th|next th|nut
th|oven_THING th|oven_door th|oven_floor th|oven_th th|pan_is th|quick_on th|second_half th|station
th|to th|traffic th|trim th|truth th|warm th|whol_hous th|whol_street th|whol_th th|with th|worktop
ti_this| tick_over| tim_do_th| tim_m|N:few tim_should| tim_should|i tim_th|DISH tim_what| timer_for|Nduration
timer_hav| timer|go tim|for_a tim|for_th tim|what_you ti|it ti|with to_N:core|in to_N:few|now
to_N:oven_and| to_N:oven|now to_THING|off to_b_th| to_bath| to_bath|th to_buy|DISH to_b| to_b|careful
to_check|DISH to_collect| to_f|th to_hit| to_i| to_keep| to_know| to_medium|well to_prepon_by|
to_pull| to_put| to_rest_it| to_rest|it to_skip_butter| to_that|phon to_their| to_th|U to_walk|
to_walk|th to_warm|th today_Nduration| together_and| told_P| too_lat_to| too_much|salt took_ag|
took_it_down| took_it| took|out too|th_shop top|off total|N:few_person to|THING to|catch to|chill
to|chill_th to|do_a to|do_th to|eat_Nclock to|eat_Nduration to|eat_at to|help_$ to|help_m to|know
to|rest to|tak_th to|th_THING to|wash train|is_delay trick_to| trick| trim|it trust_this| turn_her|
turn_off_th| turn_on_th| turn_out|i turn_out|ther turn_th_timer| turn|down_to turn|her turn|him
turn|it twic_as_long| ty_it_up| under|THING_by under|way under|whatever unsay| up_P_gon| up_at|Nclock
up_by| up_front| up_front|then up_on|th up_th|DISH up|as up|in_flam us_THING|DISH us_a_favour|
us_a|shout us_get| us_it|is us_my| us|eat_Nduration us|get us|kilo us|not_bother us|now_$ vegan|so
volunteer_for| vot|and vot|and_it w_ar|THING w_ar|clean w_ask| w_do_th| w_eat_at| w_get| w_hav_no|
w_hav_plenty| w_hav|plenty w_is| w_is|not w_miss|out w_n|DISH w_settl| w_settl|on w_went| w_will_hav|
w_will|DISH wak_m_up| wak|m want_for| want_his_well| want_to|b want|dinner want|dinner_at want|his
warm_and| warm|any_plat warm|now warm|plat was_N:core_and| was_N:few| was_lik| was_th_last|
wash_up| wash|your wash|your_THING was|U_$ was|at was|hang watch|it way_do| way_no| wean| wedg_and_on|
weigh|it well_don_for| well_th_rest| well|don_no went_in|at went_off|so went_out|at went|out
went|out_whol wer|Nduration wet_floor|sh what_all|i what_did|i what_number|am what_number|do
what_n| what_temperatur_do| what_th|can what_tim_is| what_tim_should| what_was| what_will_it|
whatever_that| what|gas what|gas_mark what|go what|hav_you what|must what|must_i what|tim what|was
what|way what|would_you when_can| when_folk_say| when_folk|say when_it_has| when_i|tak when_th_roast|
when|is_th when|it_has when|w_ar when|will_it wher_ar| wher_exactly| wher_exactly|do wher_is_th|
wher_th_THING| wher|did wher|do_w wher|is which_th| whil_you| whil|i_was whol_th|forward whol|DISH
whol|gang why_is_th| why_not_DISH| why|am why|am_i why|do_not why|that will_b_back| will_b|no
will_b|right will_mak| will_not|hav will_pass|on will_want| will|THING will|b_back will|giv_th
will|n will|start_th win_is| wip| wis|w wis|w_ar with_th_butter| with_th_lid| with_their| with_th|U
without_a|THING without|th with|th_roast with|th_str work|is work|on would_DISH| would_it|b
would_lik_a| would_th_THING| would_you_and| would_you_ever| would_you_th| would_you|say would|DISH
would|suit would|th wrong_it| w|br w|carv w|go_to w|lift w|lift_th w|look_at w|must w|n w|nearly
w|nearly_ther w|shall w|tak_it w|talk w|want yank_it|out year|it yes_it| yes_w| yes|i_am yes|so_it
yet_Nduration|i yet|it_is yet|sorry you_ar| you_cut| you_cut|m you_do_not| you_good| you_good|for
you_hold| you_it|is you_repeat| you_wait| you_will|hav your_hair| your|P_$ your|P_is you|ar_th
you|can_not you|check you|explain you|imagin you|on_speaker you|over you|over_th you|r |@0.1
|@103.1 |@104.0 |@109.3 |@124.3 |@126.3 |@145.1 |@15.2 |@18.2 |@21.4 |@21.5 |@28.4 |@4.0 |@42.2
|@57.4 |@62.4 |@70.0 |@75.1 |@78.4 |@81.2 |@81.3 |@85.1 |@87.1 |@90.1 |DISH_DISH_$ |DISH_DISH_P
|DISH_DISH_or |DISH_DISH_with |DISH_already |DISH_and_i |DISH_and_it |DISH_ar_THING |DISH_bless
|DISH_do_$ |DISH_early |DISH_go_off |DISH_halv_s |DISH_is_assembl |DISH_is_stand |DISH_is_way
|DISH_n_to |DISH_no_DISH |DISH_our |DISH_stand |DISH_tast |DISH_that_is |DISH_today |DISH_tonight_$
|DISH_yes |DISH_yet |N:core_about_Nduration |N:core_i_want |N:core_is_ther |N:core_last |N:core_to_N:core
|N:core_wher |N:core_year_old |N:few_U_and |N:few_and_w |N:few_gas_r |N:few_hav_arriv |N:few_month_along
|N:few_over |N:few_step |N:few_ston |N:few_would |N:oven_P |N:oven_and_i |N:oven_for_th |N:oven_how
|N:oven_or_so |N:oven_when |N:some_N:few |N:some_in_ic |Nclock_and_w |Nclock_latest |Nclock_or
|Nclock_w_want |Ndate_so |Ndegrees:few_mor |Nduration_approximately |Nduration_is_it |Nduration_lat_what
|Nduration_sooner_than |Nduration_too |P_h_is |P_is_THING |P_is_pescatarian |P_no |P_w_ar |THING_DISH_$
|THING_N:core_Nduration |THING_Nweight_with |THING_again_$ |THING_ar_cover |THING_back |THING_by_N:few
|THING_giv |THING_giv_m |THING_h_is |THING_has_fallen |THING_i_am |THING_my_P |THING_ok_$ |THING_on_$
|THING_say_Ndegrees:core |THING_test |THING_trip_$ |U_U_fir |U_chok |U_from_previous |U_guest
|U_i_will |U_lik |U_wher |U_work |a_DISH_$ |a_U_it |a_bit_lat |a_decent |a_disaster |a_fat
|a_fat_THING |a_go |a_jar |a_proper |a_sec_$ |a_sit |accident |adult_and |afternoon |ag_$ |ag_$_$
|ago_and |aim_for_$ |alarm |all_$ |all_$_$ |all_gon |all_right_or |all_through_$ |already_Nduration
|already_so |am_call |am_i_do |am_run_Nduration |am_stuck |and_N:few_other |and_U_Ndegrees:few
|and_all |and_count |and_cut_them |and_degre |and_degre_c |and_h_can |and_rest_$ |and_sit |and_slow_then
|and_then_th |and_took |and_wash |any_plat |anybody_$ |anybody_$_$ |anymor_$ |anymor_$_$ |anyth_with
|ar_N:few |ar_already |ar_already_in |ar_back |ar_back_on |ar_cancell |ar_get |ar_go |ar_her_N:few
|ar_in_$ |ar_kill |ar_kill_m |ar_lat |ar_nowher_near |ar_out |ar_out_now |ar_ready_$ |ar_run
|ar_tell |ar_ther |ar_w_get |as_anyth_$ |at_N:core_for |at_N:core_it |at_N:few_Ndate |at_N:few_instead
|at_N:oven_and |at_N:oven_so |at_Nclock_$ |at_Nclock_N:some |at_Nclock_not |at_Ndegrees:core_$
|at_again |at_again_$ |at_th_DISH |at_th_THING |at_th_finish |at_th_wall |availabl |away_from_th
|b_THING |b_by |b_in |b_my |b_ready |b_ready_$ |back_it_is |back_that_last |bad_$ |bad_$_$
|bairn |beaten |beep_$ |beep_$_$ |beep_it |beep_it_is |beep_so |beep_so_it |befor_th_tim |behind_schedul
|behind_with |besid |bill |bit_i |blast_it |blitz |bloody |bloody_$ |bloody_$_$ |bon_off |breakfast
|burn_it |burn_myself |butter_w |by_Ndegrees:few |cam_off_th |can_$ |can_$_$ |can_do_th |cancell_so_N:few
|cap_$ |cap_$_$ |carry_a_pen |carvery |cast_iron_THING |cat |celsius_not |chang_it |chest |chill_th
|claim_$ |claim_$_$ |clock_for |com_U |com_th |com_with_Nduration |cook_them |cooler_than |corn
|counter_$ |counter_$_$ |cream_on |cricket |curtain |custard |cut_out |cut_what |dar |day_$
|day_$_$ |dead_$ |dead_$_$ |deck |delay_by |delay_by_Nduration |des |destroy_it |did_they |din_at
|dinner_for_Nduration |dinner_i |dinner_up |dishwasher |do_N:few |do_U |do_i_slic |do_i_us
|do_if |do_it_Nduration |do_not_believ |do_not_understand |do_now_$ |do_on |do_on_th |dock
|don_it_is |don_what |don_yet |door_and |door_on_th |door_was |down_P |down_is |down_low |down_now
|drop_out_U |eat_$ |eat_$_$ |elbow |end_$ |end_$_$ |end_of |everyth_look |everyth_to_celsius
|everywher_and |expect_$ |expect_$_$ |fat_splash |fat_splash_on |feed_th |fell_on |ferry |few
|fin_for |finish_at_N:few |fit_in |flam_and |folk_com |fool |football |for_Ndegrees:core |for_P_$
|for_P_who |for_a_U |for_a_sid |for_cream |for_ic |for_it_$ |for_medium_rar |for_new |for_new_year
|for_smok |for_th_day |forgot_$ |forgot_$_$ |fourth |freezer |from_th_market |from_work |function
|gang_is |gas_r |gav_m |get_on_with |glov |go_THING |go_again_$ |go_back_a |go_down |go_r |go_to_U
|gon_dark |gon_hom |gon_off |got_N:few |got_THING_to |got_in_early |greasy |green_DISH_nobody
|green_DISH_too |greet |grey_band |grocery |guest_com |h_still |had_it |had_th |handl |has_fallen
|has_gon_from |has_split_$ |has_th_flu |has_to_eat |has_touch |hav_Ndegrees:core |hav_a_full
|hav_burn |hav_burnt |hav_cancell_$ |hav_don |hav_lost_my |hav_seen |hav_taken |hav_taken_their
|hav_told |heat_no |heat_th_fat |her_DISH |her_for |her_now |her_own |high_$ |high_$_$ |him_at
|his_rar |history |hit_N:core |hit_th_oven |hit_th_tabl |hour_$ |hour_$_$ |i_behind |i_could_Nduration
|i_cover |i_cover_it |i_giv |i_hav_kept |i_on |i_ought |i_ought_to |i_reckon |i_rest |i_rest_it
|i_to |i_turn_th |i_whack_it |i_will_se |i_wreck |if_someth |igniter |ill_$ |ill_$_$ |in_Nduration_$
|in_Nduration_pet |in_Nduration_would |in_P |in_a |in_a_U |in_and_w |in_flam |in_law |in_my_P
|in_phoenix |in_so_that |in_th_cor |in_th_front |in_this_THING |in_this_rental |in_to_warm
|in_town |in_what |in_yet |insist |is_N:core_now |is_Nweight_N:few |is_a_U |is_all_grey |is_another
|is_banjax |is_bar |is_boil |is_bubbl |is_call |is_chok |is_com_Nduration |is_cook |is_how_w
|is_i |is_it_look |is_left |is_lik_a |is_lumpy |is_ly |is_miss |is_mix |is_never |is_not_out
|is_off_$ |is_offer |is_on_DISH |is_on_N:oven |is_on_th |is_our |is_plac |is_plan |is_pregnant
|is_preheat |is_pur |is_shift |is_smok_$ |is_spit |is_stay |is_ston |is_ston_cold |is_stuck_in
|is_tail |is_temperatur |is_th_best |is_tick |is_under_th |is_up_at |is_up_to |is_vegetarian_$
|is_way_too |is_went |is_what_i |is_wilt |it_Nclock |it_P_$ |it_U_$ |it_after |it_at_th |it_back_in
|it_back_to |it_down_$ |it_hot |it_look |it_open_and |it_out_of |it_out_th |it_sat |it_show
|it_touch |it_whil_i |it_will_go |know_how_much |know_if |last_year_and |later_and |law |leather
|left_in_this |left_to |less_$ |less_$_$ |let_th_cat |liar |lick_th |lif |lift_th_joint |lik_a_THING
|lik_dishwater |lik_i_am |lik_th |lik_to |liv_without |lodger |long_it |long_to |loo_$ |loo_$_$
|loud_$ |loud_$_$ |low_$ |low_$_$ |m_Ndegrees:core |m_a |m_about |m_if |m_if_it |m_it |m_it_is
|m_now |m_option |m_through_th |m_when |m_when_you |m_why |margarin_ok |market |medium_rar_in
|menu_$ |menu_$_$ |misread_it |missus |mor_U |mor_reminder |mrs |mrs_U |much_$ |much_$_$ |much_smok
|my_P_$ |my_THING_it |my_THING_what |my_end |n_N:few |n_THING |n_it |n_longer_$ |n_longer_they
|n_th |nagg |neck |needl |never_get |never_turn |next_on |nic_$ |nic_$_$ |no_DISH_in |no_P_left
|no_THING_left |no_flam |no_win |not_call |not_carv_it |not_chang |not_degre |not_degre_f |not_do
|not_fahrenheit |not_go_near |not_hav_dairy |not_let |not_n |not_on |not_ready_yet |not_rest
|not_speak |not_start_$ |not_stop |not_ti |not_warm_$ |not_you |now_N:oven |now_Nduration |now_do_not
|now_instead |now_instead_of |now_what_do |of_THING_over |of_blood |of_fahrenheit |of_fresh
|of_str |of_th_THING |off_N:few |off_Nduration |off_and_ti |off_at_th |off_it_is |off_so |off_th_r
|off_with |old_money |on_N:core_and |on_N:oven_$ |on_a_Nweight |on_earth |on_for_th |on_low
|on_on_th |on_or_off |on_say |on_speaker |on_th_b |on_th_bench |on_th_phon |on_th_wet |on_that_DISH
|open_and |or_N:core_$ |or_behind |or_off_$ |or_th_THING |orang |other_way |otherwis_$ |otherwis_$_$
|our_on |out_N:few |out_THING |out_another |out_at_th |out_look |out_whol |outsid |oven_N:few
|oven_floor |oven_from |oven_how |over_in |over_th_top |overwhelm |pac |pair_of |pan_$ |pan_$_$
|pay |peopl_at |peopl_cancell_$ |pescatarian |phon_call_$ |pink_at |pink_for |poorly |possibl_to
|pour_out |preheat_$ |preheat_$_$ |present_and_correct |programm |properly_$ |properly_$_$
|quid_a |rais |rang_h |rar_U |rar_i |rar_is_a |rarer |reach_N:core |ready_i |ready_when |ready_when_you
|record_$ |record_$_$ |refus |remov_th |replac |rescu |rest_it_$ |rib |ribey_roast |rid |rid_of
|roar_when |roast_DISH_for |rop_in |rop_in_th |row |rubbish_$ |rubbish_$_$ |run_N:some |run_Ndegrees:few
|run_Ndegrees:some_hot |run_Nduration_$ |run_so |saf |said_N:some |said_what |salt_it_th |sat_ther
|sav_it |say_N:oven_$ |scor |scorch |se_to |sear_at_th |season_th |second_half |servic |shambl
|shap_$ |shap_$_$ |shelf_fan |shower_Nduration_top |sid_and |sid_is |skip_that_bit |slump |slump_over
|small_$ |small_$_$ |smell_amaz |so_i_hav |so_i_stab |so_knock |so_knock_N:few |so_low_$ |so_sh
|so_sh_is |someth |someth_and |someth_i |sp |spar |special |start_wait |start_wait_now |stay
|steady |step_off |still_to |stop_anyth |stop_anyth_grow |stov |tak_N:few_tim |tak_her |tak_over
|tak_over_th |takeaway |taken_th_roast |talk_for |teenager |tell_P |tell_you_$ |temperatur_should
|temperatur_to |templ |th_DISH_$ |th_DISH_N:few |th_DISH_a |th_DISH_cross |th_DISH_dress |th_DISH_how
|th_DISH_what |th_THING_of |th_b |th_begin_$ |th_button |th_cast |th_cold |th_com |th_counter_$
|th_dog_out |th_door_N:few |th_driveway |th_end_of |th_fir_$ |th_front |th_gat |th_i_should
|th_is_THING |th_joint_out |th_joint_slid |th_label |th_light_$ |th_lino_$ |th_loung |th_night_$
|th_order_of |th_oven_go |th_oven_th |th_packet |th_platter |th_porch |th_radio |th_sh |th_shop_floor
|th_small_oven |th_snow |th_station |th_tablet |th_tim_$ |th_tip_of |th_trim_$ |th_warm |th_whol_th
|th_with_th |than_N:few |that_N:core |that_Nduration |that_ar |that_go |that_last_th |that_much
|that_now |that_step_off |that_what |that_work |them_back |then_a_hot |then_blast |then_blast_it
|ther_U |ther_any |ther_as |ther_as_well |ther_go |ther_go_on |ther_in_th |ther_or_not |they_com_$
|they_eat |they_get |thin_as |this_DISH |this_at |this_for |this_th_run |through_$ |through_$_$
|through_and |through_th_door |ti_it_with |till_i_say |tim |tim_so |to_N:core_under |to_N:oven_P
|to_b |to_chang |to_dinner |to_eat |to_go_$ |to_god |to_him |to_mak_th |to_plan_$ |to_rest
|to_tak_it |to_temperatur |to_th_U |to_thos |to_us_$ |together_and |took_ag_to |touch_bon |trim_th_DISH
|trip_and |truth |twic_$ |twic_$_$ |tyr |up_$ |up_$_$ |up_after |up_again |up_and_down |up_in_th
|up_what |us_to_b |w_ar_say |w_do_it |w_fix |w_go_th |w_hav_electricity |w_said_grac |w_sit_down
|w_win |wait_on_THING |wall |want_a |want_her_well |want_to_eat |want_to_mak |was_N:core_$
|was_U |was_it_$ |was_lik |was_my |was_out |was_th_DISH |way_of |way_out |wedd_$ |wedd_$_$
|week_$ |week_$_$ |went_into_th |wer_N:few |wer_not |what_oclock |when_Nduration_ar |when_it_has
|when_th_THING |whil_i_was |whistl |whoosh |why_i |wild |will_carv |will_carv_$ |will_hav_it
|will_i_b |will_stay |with_$ |with_$_$ |with_it |with_str |with_th_butter |with_th_messag |with_th_roast
|with_th_sear |with_th_second |with_th_sid |with_them_$ |without_roast |without_roast_DISH
|worktop |would_do |would_rather |would_you_say |y |y_$ |y_$_$ |yet_$ |yet_$_$ |you_go_$ |you_mak
|you_mind |you_no |you_r |you_reckon |you_run |you_understand |you_understand_$ |you_very |you_very_much
|you_watch |youngest |your_THING_$ |your_back |your_sho
-13 @102.2| @103.0| @105.2| @13.3| @131.3| @139.2| @143.1| @18.0| @32.6| @37.1| @47.2| @6.1|
@68.4| @88.1| DISH_DISH_it| DISH_DISH_not| DISH_THING_DISH| DISH_another| DISH_ar_still| DISH_ar|
DISH_ar|all DISH_ar|peel DISH_ar|still DISH_at|th DISH_do|i DISH_from_th| DISH_has|not DISH_in_my|
DISH_in|this DISH_is_lik| DISH_is|not DISH_n_mor| DISH_nobody| DISH_our| DISH_ready| DISH_ready|they
DISH_should| DISH_so|DISH DISH_so|that DISH_w_hav| DISH_want_a| DISH_wer| DISH_will_not| DISH_with|
DISH|DISH_with DISH|DISH_yes DISH|THING_as DISH|ar_boil DISH|ar_ready DISH|ar_still DISH|cam_out
DISH|in_$ DISH|in_yet DISH|is DISH|is_bubbl DISH|is_mix DISH|is_stand DISH|is_whisk DISH|it_b
DISH|it_in DISH|lik_water DISH|m_alon DISH|on_$ DISH|yes_w N:core_Nduration| N:core_U_i| N:core_about|
N:core_after| N:core_ar| N:core_ar|w N:core_has| N:core_her|w N:core_is|it N:core_near| N:core_sh|
N:core_too|low N:core_what_is| N:core_wher| N:core_whil|w N:core|N:few_littl N:core|by_now
N:core|to_N:core N:core|too_low N:core|you N:few_THING_no| N:few_and_it| N:few_bon_on| N:few_for_N:few|
N:few_inch|in N:few_i|hav N:few_mor_guest| N:few_mor|guest N:few_mor|peopl N:few_on_th| N:few_person|is
N:few_present| N:few_sh| N:few_sit| N:few_sit|down N:few_what_is| N:few_when| N:few_wher| N:few|adult_N:few
N:few|below N:few|bon_$ N:few|how N:few|hungry N:few|of_thos N:few|off_$ N:few|off_and N:few|oven_and
N:few|peopl_cancell N:few|present N:few|rather N:few|so_far N:few|wrong_THING N:oven_DISH|
N:oven_Nduration|ago N:oven_U_i| N:oven_for|Nduration N:oven_i_hav| N:oven_in_th| N:oven_is|
N:oven_it| N:oven_w| N:oven|afternoon N:oven|afternoon_f N:oven|and_it N:oven|dinner_$ N:oven|so_aim
N:some_and_N:few| N:some_at|N:oven N:some_on|th N:some_so_N:some| Nclock_N:few| Nclock_instead|of
Nclock_in| Nclock_it| Nclock_not|Nclock Nclock_or| Nclock_what| Nclock|Ndate Nclock|or_ther
Ndate_lunch|at Ndegrees:core_is| Ndegrees:core|let Ndegrees:few|under Nduration_P|is Nduration_ago_befor|
Nduration_back_i| Nduration_behind_and| Nduration_behind_i| Nduration_from_now| Nduration_front|
Nduration_front|door Nduration_h| Nduration_if| Nduration_is|delay Nduration_is|th Nduration_lat_get|
Nduration_lat|get Nduration_on_th| Nduration_rest_timer| Nduration_rest| Nduration_sooner|than
Nduration_tell_m| Nduration|after_th Nduration|ago_it Nduration|behind_i Nduration|behind_with
Nduration|i_am Nduration|i_would Nduration|lat_and Nduration|lat_they Nduration|that Nduration|to_dinner
Nduration|would Nduration|would_you Ngas-mark|as_th Nweight_how| Nweight_near| Nweight_near|enough
Nweight_no| Nweight_with_th| Nweight|forerib_on Nweight|roast P_THING| P_and_i| P_back_in|
P_has|got P_help| P_in|law P_is_N:core| P_is_th| P_is_turn| P_is| P_is|THING P_is|vegetarian
P_i|n P_left_th| P_lik_it| P_never| P_put| P_put|th P_say_it| P_say|it P_settl| P_settl|N:some
P_us_to| P_want_his| P|has_it P|is_$ P|is_ask P|is_on P|out P|ray P|swear THING_DISH|ar THING_Nweight_bon|
THING_THING_and| THING_THING_on| THING_THING|Ndegrees:few THING_THING|caught THING_THING|has
THING_and_N:few| THING_at|all THING_at|th THING_board|now THING_cast_iron| THING_caught_light|
THING_could| THING_h_is| THING_hav_not| THING_if| THING_in|Nduration THING_in|at THING_is_N:few|
THING_is_a| THING_is_still| THING_is|N:few THING_it_jump| THING_it|jump THING_let_us| THING_no|sear
THING_out_for| THING_say_th| THING_sh_is| THING_slip_and| THING_so|it THING_th|block THING_under_THING|
THING_up_at| THING_went| THING_w|hav THING|THING_Nweight THING|THING_th THING|ar_stream THING|at_N:few
THING|below THING|counter THING|do_in THING|hang_on THING|in_Nduration THING|is_in THING|is_stuck
THING|leg_Nweight THING|no_sear THING|of_th THING|ok THING|out_for THING|saf THING|slip_and
THING|splash THING|truck THING|without_DISH THING|yet U_N:core_her| U_as| U_call| U_down| U_guest|
U_has|got U_i_hav| U_i_will| U_if| U_not|ruin U_or| U_oven|is U_should_th| U_ther_is| U_th|dial
U_timer_N:few| U_w_hav| U_went| U|U_has U|down U|is_on U|is_roll U|my U|nip U|nip_and U|th_dial
U|to_m U|why_$ U|your ^_DISH_DISH| ^_DISH_is| ^_DISH|ar ^_DISH|is ^_DISH|it ^_N:core_i| ^_N:few_extra|
^_N:few|less ^_N:some_at| ^_Ndate_dinner| ^_Nweight_N:few| ^_Nweight_and| ^_U|god ^_U|keep
^_U|your ^_^_after| ^_^_delet| ^_^_eat| ^_^_element| ^_^_finish| ^_^_folk| ^_^_granddad| ^_^_greas|
^_^_green| ^_^_jo| ^_^_kevin| ^_^_lit| ^_^_lord| ^_^_low| ^_^_noth| ^_^_onc| ^_^_pound| ^_^_power|
^_^_shout| ^_^_supper| ^_^_ther| ^_^_tough| ^_^_wash| ^_^_was| ^_^_why| ^_^_will| ^_^_yer|
^_a_THING| ^_add|DISH ^_after| ^_all|N:few ^_am_i| ^_ar|th ^_by_th| ^_clear_th| ^_could_i|
^_could_w| ^_count_Nduration| ^_crank_her| ^_delet| ^_dinner_in| ^_dinner_roll| ^_dinner|Ndate
^_down|to ^_eat| ^_electricity_has| ^_element| ^_fat_trim| ^_finish| ^_folk| ^_for_th| ^_french|is
^_granddad| ^_greas| ^_green| ^_green|DISH ^_hav_to| ^_headcount_has| ^_her|P ^_how_do| ^_how_is|
^_how_many| ^_how_thick| ^_i_burnt| ^_i_can| ^_i_forgot| ^_i_remov| ^_ic_water| ^_instead_of|
^_in|this ^_is_N:oven| ^_is_pink| ^_it_has| ^_i|could ^_i|cut ^_i|meant ^_jo| ^_kevin| ^_knock|it
^_knock|that ^_leav_it| ^_lit| ^_look|lik ^_lord| ^_low| ^_next|week ^_no_i| ^_no_th| ^_not_start|
^_noth| ^_not|don ^_no|tim ^_ok_THING| ^_ok_th| ^_onc| ^_plat_down| ^_plus|N:few ^_pop_th|
^_pound| ^_pound|and ^_power| ^_preheat_to| ^_read|is ^_remember|when ^_revers|sear ^_roast|in
^_roll_went| ^_r|DISH ^_salt|is ^_sam_heat| ^_scald|my ^_scrap_th| ^_shall|i ^_shout| ^_start_a|
^_supper| ^_temperatur_in| ^_th_butter| ^_th_display| ^_th_fan| ^_th_fat| ^_th_meter| ^_th_whol|
^_that_on| ^_ther| ^_th|display ^_th|middl ^_th|new ^_tough| ^_turn_that| ^_us_N:few| ^_us|N:few
^_w_can| ^_w_had| ^_w_will| ^_wash| ^_was| ^_well|i ^_what_ar| ^_what_can| ^_what_hav| ^_what_is|
^_what_way| ^_what|can ^_when_th| ^_wher_is| ^_why_ar| ^_why_do| ^_why| ^_will_THING| ^_will|
^_would_it| ^_yer| ^_you_hav| a_DISH|DISH a_Nweight|N:few a_THING_up| a_THING|truck a_U|for
a_bag| a_bag|of a_bon|and a_cast_iron| a_chanc|that a_drop| a_fan_assist| a_green_DISH| a_hot|oven
a_li_down| a_nic|bit a_no| a_r_win| a_read|N:core a_tabl| a_thick| a_thick|grey a_vegan|com
about|th_guest adult_and_N:few| after_all_that| after_a| after_i| after|rest after|th_DISH
against|th_THING again|at ago_befor| ago|ther_in aim_for| aim|for_N:core aim|to_eat airport|run
airport|run_back alarm|in_Nduration alex| all_THING_th| all_THING|below all_U|wher all_mad|
all_my| all_th_heat| all_w| all|ar all|ar_sit all|right_or all|sit all|sit_down all|th_heat
along|ar along|ar_w already_in| already_in|th alway| alway|com am_a_good| am_bin_th| am_do_this|
am_i_after| am_in_th| am_never| am_not_don| am_slow|today am_still| am_talk| am_that| am_well_behind|
am_well| am_well|behind am|N:few am|back am|i_miss am|nip_out am|not_sur am|tell an_extra_Nduration|
and_DISH|in and_DISH|yes and_ar_w| and_ar|w and_can|you and_climb|fast and_h_can| and_half_th|
and_his| and_how_do| and_i_do| and_it|went and_i|did and_i|would and_m_with| and_no|DISH and_on_th|
and_ounc| and_oven_is| and_pop| and_sam| and_show| and_sh|still and_th_other| and_then|th and_th|guest
and_th|other and_tim| and_ti|back and_ti|they and_took| and_w_hav| and_what_is| and_what|can
and_what|is and_why_do| and|U_is and|all_my and|correct_$ and|cut and|down and|eat and|flam
and|hav_i and|i_did and|it_was and|let_m and|look_at and|lunch and|m and|roast_DISH and|set_a
and|should_i and|then_it and|trim and|trim_th anyth_els| anyth_i_can| anyth|els anyth|i_should
any|DISH any|DISH_$ any|THING_is an|extra ar_THING|now ar_all|sit ar_bang| ar_b| ar_clean|
ar_do_it| ar_feed| ar_fix_to| ar_her_and| ar_in_a| ar_in|a ar_look| ar_my| ar_not|com ar_th|DISH
ar_w_go| army| arra| arra|no arra|no_i ar|N:few ar|Nduration_behind ar|back ar|cut ar|eat_at
ar|french ar|kill ar|kill_m ar|off ar|w_win ar|you as|long as|you_lik at_N:core|already at_N:core|no
at_N:core|or at_N:few_on| at_N:few_so| at_N:few_w| at_N:few|and at_N:few|so at_Nclock|or at_Ndegrees:core|now
at_at| at_at|Nclock at_m_when| at_th_dial| at_th|THING at_what|oclock at|N:few_i at|N:oven_so
at|Nclock at|Nclock_P at|Nclock_it at|Nclock_what at|m away|for away|from_th away|with a|Nweight_rib
a|THING_THING a|bon a|bon_and a|chanc a|cold a|disaster_$ a|drink a|drop a|few a|good_Nduration
a|leg_of a|low a|moment a|plank a|rest a|revers a|revers_sear a|rib a|sec a|shift a|slow a|stand
a|timer_on a|vegetarian b_at_N:few| b_at|N:oven b_bother_french| b_bother| b_com| b_don| b_faff|
b_faff|with b_f| b_in|th b_it| b_my| b_nic_U| b_sit_down| b_strain| b_strain|th b_this| b_to|god
back_by|Nclock back_it| back_it|is back|in_N:few back|in_Nduration bad|new bad|new_th bail_so|
bang|on bast_in| bast_in|N:some battery| battery|is beaten| beat|m been|Nduration been|THING
been|rest been|sit beep_at|m beep|at_m befor_N:few_so| befor_it_is| befor|Nduration_$ befor|w_eat
befor|w_sit begin_with|th begin|from behind_a| behind_it_is| behind_so| behind|in behind|with_th
besid|th_THING best| beth_is| between|N:few between|N:few_and between|th bit_and| blad| blad|tenderis
board_at| board_at|Nclock bob_is| boil_for_th| boil_for| boil|and boil|at bon_Nweight_and|
bon_ar|french bon_not| bon_on| bon_on|it boneless_rib| boneless_rib|THING bon|off_and bon|sid
both_th|DISH bother_french| bother_french|it bother|with_th bottom_of_th| br_dinner| br_dinner|forward
br_m| brb_Nduration_front| brought_a| bum_on| bung|th_DISH burn_by| burn_by|hot burnt_all_THING|
burnt_myself| burnt_myself|on burnt_th|DISH burn|my butter_Nduration| butter_is_not| butter_i|
butter_what| butter|left by_th_U| by|N:some_$ by|Ndate by|Ndegrees:some by|Nduration_and by|accident
by|hot by|hot_THING by|m by|th_U b|gon_Nduration b|right_$ b|so call_in_sick| cam_on| cam_on|quick
cam_out|at cam_up| cam|out_at can_get| can_it|sit can_mak| can_not_THING| can_not_eat| can_not|hav
can_not|i can_not|talk can_stir_th| can_w_tak| can_w|los can_you_hold| can_you_set| can_you|run
can_you|set cancel_th|Nduration cancel_what| cancell|so_N:few cancel|th_DISH cancel|that_alarm
can|drop can|drop_th can|go_$ can|not_b can|not_breath can|you_believ cark| cark|it cat|is
caught_light|on caught|light celsius_it| celsius_my| celsius_not|fahrenheit centr_it| centr_it|is
chanc|that chanc|that_is chang_in| chang_of_plan| chang|w chang|w_ar charg_of| chemo|so chew|
christma| chuck|it church_for| climb|fast cold_by|Ndegrees:some collect_th| colour_on_it| colour|on_it
com_Nduration_after| com_down| com_it| com_out_in| com_out|in com_up|at completely|forgot_to
com|down_to convection|is_run cook_for| cooker|is_Ndegrees:some cook|to cooler|than could_w_go|
could_w|eat could|b could|hav could|w_eat count|Nduration_from count|to cover|it_$ crank_her|
cream_for|th crept_up_to| crispy|DISH_$ crowd_today| crowd_today|so crumb_on| crumb_on|th cut_my|
cut_th_oven| cut|into dan| da| declan| degre_for| degre|c delay|it delay|it_by dental_floss|count
dental|floss diabet| dial_and| dial_is| dial|and_swear did_not_catch| did|i_tell did|not_hav
did|th_DISH dinner_for| dinner|Nduration_sooner dinner|for_Nclock dinner|forward display_has|
display|is_blank ditch|th_DISH do_a|revers do_for| do_i|ask do_i|pull do_i|set do_i|stick do_leftover|
do_medium| do_my| do_not_chang| do_not_keep| do_not_n| do_not_speak| do_not_tell| do_not|do
do_not|n do_w|stand do_you|want dock| dog_back_in| dog|got_to dog|has_had don_all| don_all|th
don_h| don|with_that door_behind| door_has_been| door_i| door_let| door_of_th| doorbell_is_gon|
doorbell|is doorbell|is_gon door|for_Nduration down_for|Nduration down_that| down_to|N:core
down|Nduration down|in_Nduration down|to_Ngas-mark down|wak down|wak_m do| do|a_THING do|i_ask
do|i_know do|i_stick do|not_believ do|not_let do|not_mind do|not_speak do|not_tak do|not_they
do|not_want do|on do|on_th do|this_for do|to dress_th| dress_th|DISH drop_th|DISH drop|th_roast
dry_and| dry_th| ear_and_out| early|at_N:few early|bird eat_Nduration|earlier eat_at|N:few
eat_early|at eat_with| eat_with|us eat|early electricity_is| element|is els|is end_of_th| end|of_it
everyth_that_is| everyth_to| everyth_under| everyth_under|control everyth|metric everyth|metric_from
everyth|tak_m everywher_th| extra_Nduration| ex|is fac|is_swell faff|with fahrenheit_it| fallen|behind
far_along|ar fat_is_on| fat|trim feed_at| fell|on ferry_is| fetch_th| fiddl_with| fiddl_with|th
fight_th| find_a| find_a|THING finish_and|it finish_i| finish|at_N:few fir_in|th first|cours
first|slic fix_to|sit flam_com| flam|com flat_out_her| flick_th_oven| flight| floor|and floss|count
folk|ar for_N:few_adult| for_N:few_at| for_Nduration_and| for_m_i| for_th|roast for_th|sear
for_th|whol forever|U_th forget|th_DISH forgot_to_buy| forgot_to|say for|N:some_$ for|Nclock_on
for|P_$ for|a_U for|him found_th| found|a french_th| french_th|bon fresh|out fresh|out_of from_your|
from|N:oven_$ front|door full_of|smok fus|has f|at gas_has| gav_m|a get_away| get_away|with
get_in|th get_on| get_your| get|in get|start get|start_myself get|stuck get|stuck_in get|them
giv_it_m| given| giv|it giv|m_N:some gluten|for go_U| go_in|now go_to_DISH| go_to_n| go_to|N:core
go_to|go god_help| god_help|us gon_Nduration_and| gon_on| gon_straight| gon_up|in gon_up|to
gon| gon|for gon|off_$ gon|they gon|they_ar good_Nduration|behind got_N:core|in got_a_vegan|
got_a|Nweight got_a|shift got_held_up| got_my_P| got_that_on| got|a_Nweight got|in got|th_oven
go|back_$ go|r go|to_b go|to_hit go|to_th go|upstair grab_th_handl| greas|fir_$ grow| guest_ar_Nduration|
guest_ar|Nduration guest|ar_already guest|cam guest|to h_has_diabet| h_has_got| h_has|been
h_is_off| h_is|U h_sold| h_will_b| had|a had|it_is hang|fir happen_if_i| happen|at has_com_back|
has_diabet| has_gon_on| has_gon|THING has_had|it has_it_with| has_not_been| has_not|budg has_not|got
has_to_b| has_to|eat has|arriv has|becom has|got_th has|to haul_th|roast hav_a_helper| hav_another|
hav_been_in| hav_fallen|behind hav_finish_with| hav_got_a| hav_got_no| hav_got|Nduration hav_got|a
hav_i|got hav_lift| hav_ne'er| hav_ne'er|a hav_not_th| hav_not|mad hav_not|peel hav_not|turn
hav_put_it| hav_put|on hav_rop_in| hav_set_it| hav_set| hav_slic| hav_th|DISH hav_to_hav| hav_to|pick
hav_truss| hav_truss|th hav_w_got| hav|N:few_of hav|a hav|all_U hav|any hav|begun hav|got_a
hav|got_th hav|no_cream hav|not_touch hav|pick hav|pick_up hav|reach hav|slic_my hav|th_DISH
hav|w_got heat_at_th| heat_i| heat|at_all heat|out heat|th_whol heaven_help| heaven_help|us
held_up| help_m|with help|till help|with_th her_down_to| her_it_is| her_out|now her|and_still
her|chair her|tablet her|throat high_this_needl| himself_is| his_P|is his_well| his_well|don
his|rar hob_has| hold_at_N:core| hold|th_THING hold|that hold|that_thought hold|your_hors hom_crowd_today|
hors_for| hors_for|Nduration hot_THING|splash hot_by| hot_for| hot_is| hot_it_is| hot|THING
hot|for hot|then_turn hous|has_gon how_can| how_can|w how_hot_is| how_long_can| how_long_till|
how_much_did| how_much_of| how_to_get| how|high how|many how|would h|at h|said i_THING_it|
i_THING|th i_am_never| i_am_still| i_am_talk| i_am_that| i_am_well| i_am|N:few i_am|back i_am|tell
i_ask|th i_bast| i_burnt|th i_carv|it i_do|with i_drop| i_forgot_to| i_get_away| i_giv| i_hav_never|
i_hav_sat| i_hav_set| i_hav_slic| i_hav_taken| i_hav_truss| i_hav|begun i_hav|not i_heard|you
i_n_th| i_n|th i_open_th| i_press| i_remov_it| i_swap|THING i_tast| i_think_it| i_think|my
i_turn_th| i_want|thos i_wash| i_wash|th i_will| i_will|giv ic_water|so idea|of if_th_DISH|
if_ther_is| if_ther| if_th|oven if_you|can if|THING if|this if|this_is ill| immun_system_is|
in_DISH| in_Nduration|already in_and_th| in_her|chair in_her|throat in_law_is| in_my|P in_sick|
in_sick|so in_sinc| in_that|is in_ther_and| in_they|ar in_this| in_this|hous in_this|rental
in_th|DISH in_th|loung in_th|packet in_th|shop inch|in inch|in_not includ|DISH insid_th|THING
instead|of_butter internal_temperatur_is| intolerant|so intolerant|so_watch into|my in|DISH_DISH
in|N:some_and in|a_sec in|flam_$ in|her_chair in|our_hous in|plac in|th_cor in|th_shower in|th_sink
in|that_$ in|their_chair in|ther_th in|this_hous in|traffic is_Ndegrees:core_in| is_U_up| is_a_lot|
is_a_proper| is_a_read| is_all_U| is_all|her is_ask_for| is_at|N:some is_a|vegetarian is_brought|
is_burn_by| is_by| is_cark| is_cark|it is_conk| is_conk|out is_cook|to is_down_at| is_full_of|
is_gon| is_gon|they is_him| is_how_w| is_in_and| is_in_th| is_it_all| is_it_ok| is_it_still|
is_it|a is_jump| is_lactos| is_lactos|intolerant is_land| is_left|on is_m_and| is_margarin|
is_margarin|ok is_miss| is_m|and is_not_hav| is_not_on| is_noth| is_not|ther is_now_at| is_on_and|
is_on_at| is_pink_THING| is_pull| is_pur| is_rest_under| is_rock| is_run_Nduration| is_run_at|
is_scorch_in| is_sit|at is_smell| is_smok| is_spread| is_still_at| is_taken| is_th_story| is_that_your|
is_that|in is_this_go| is_th|oven is_took| is_up_at| is_up_to| is_way|too is_what_th| is|N:few_piec
is|P_$ is|THING_THING is|U_at is|all_grey is|allow is|at_N:some is|bleed is|boil is|bubbl is|chewy
is|complet_$ is|down is|fre is|load is|look is|mad is|mind is|mind_th is|not_it is|not_ti is|not_up
is|off is|on_DISH is|over is|own is|pac is|pink_THING is|plac is|plan is|possibl is|shap is|sit_at
is|stuck_in is|th_best is|th_doorbell is|th_oven is|ther is|tough is|under is|way_over is|what_w
is|your_P it_N:core|N:few it_Nduration|ago it_U| it_at|all it_back_to| it_b|a it_b|ready it_com|out
it_down_to| it_down|yet it_fell| it_get_to| it_hit|N:core it_hot|then it_i_am| it_in_it| it_is_Ndegrees:few|
it_is_com| it_is_go| it_is_mad| it_is_spread| it_is|N:few it_is|Ndegrees:some it_is|alway it_is|chewy
it_is|in it_is|medium it_is|on it_is|out it_is|own it_is|shap it_i|am it_last|night it_m|in
it_out_and| it_out_befor| it_out_on| it_out|for it_out|yet it_say_N:few| it_tim_to| it_to_th|
it_touch|N:core it_well|don it_will_stay| it_will|go it_with|everyth it_with|th it|after_all
it|at_N:few it|do it|for_N:few it|hit it|hot_then it|if_ther it|in_$ it|is_an it|is_and it|is_lost
it|is_serv it|is_spread it|is_what it|out_now it|say_N:core it|through it|to_N:oven it|tonight
it|touch it|warm it|weigh it|whil it|will_go it|with_THING i|am_in i|am_that i|burn_my i|burnt_th
i|buy i|got_th i|hav_a i|hav_complet i|hav_her i|hav_mad i|hear i|hop i|left i|look_at i|n_a
i|should_hav i|slic_my i|stick i|tast_th i|ti i|would_th jar_of| jar|is jo_is| jump_past| jump|Ndegrees:some_in
jump|in jump|in_th keep|it_down keep|th_DISH kept_insid| kettl_is| kill_that| kill_that|timer
kill|it kindly_tell| kne| knock_th_oven| knock|that knock|that_timer know|about know|th_second
lactos_intolerant|so lactos|intolerant lad|hav last_i|look last_of|th last_tim|so last|DISH
last|car last|i_look lat_get| lat_get|start lat_it_is| later_than| lat|get lat|get_start lat|that
lat|to_sav law_is| law_run_Nduration| lay_th| leav_it|uncover leav|it left_in|this left_th|
leftover|ar left|on_it left|open left|to_do leg_of| leg|of less|faff let_us_eat| let_us_not|
let|us li_down|wak lift|it lif|is light|on_th lik_an| lik_do| lik_th_cow| lik_to_eat| lik|her
lik|this_$ list_everyth| liv| load_shedd| long_can_th| long_can| long_do_th| long_do|leftover
long_is_left| long_is|it long_till_th| long_to|go long|do_it look_at_th| lost_my|helper lost|power
lowest|shelf lunch|at_Nclock m_about| m_and_i| m_at|N:core m_a|shout m_celsius_not| m_da| m_forever|
m_forever|U m_how| m_lik| m_lik|i m_of_th| m_straight_is| m_th_shop| m_th|shop m_to|turn m_up|when
mad_a| mad|it mad|it_to mak_it|after mak_th| mak_th|DISH mak|N:core mak|th_DISH many_DISH|do
many|DISH margarin|ok marta_tak_over| mean|in_degre medium_U_not| medium_for|U medium_rar_in|
medium_rar_mean| medium|for_U medium|rar_$ medium|rar_in middl_get_to| middl_of| miss_that_on|
mor_guest| mor_guest|com mor_person|com mor_to_th| mor|DISH mor|befor mor|guest mor|minut mor|peopl
mov_dinner_to| mov_dinner|to mov|dinner_to mov|it_to mov|to_Nclock much_did| much_of| must_hav_been|
must|b my_P_do| my_P|help my_P|insist my_THING_ar| my_THING|in my_read| my_tail_Nduration|
my_thumb|open myself_on| my|P_$ my|THING_on my|elbow my|helper my|oven_run my|peopl m|at_N:core
m|forget_th m|onc_$ m|twic m|what_to n_feed_at| n_to_rest| n_to|run nagg_it_is| ne'er| ne'er|a
needl_is| needl|is next_door_is| next_door|for next|th_$ nic_U|i nic| nic|bit nic|bit_of night|at_N:few
no_DISH_DISH| no_DISH|for no_butter| no_fresh| no_fresh|DISH no_gluten| no_gluten|for no_light|
no_pink|at no_sear|version no_they_ar| nobody_her| nobody_is_eat| not_DISH_it| not_N:core|
not_b_faff| not_b_strain| not_believ|it not_bother_ty| not_b| not_catch_that| not_catch| not_chang|
not_do|th not_do|this not_find_a| not_find_th| not_finish_th| not_french| not_french|th not_hav|th
not_heat|at not_know_what| not_let_it| not_mad|yet not_n| not_stay| not_stay|clos not_touch|that
not_w|skip noth_with| noth|in not|N:core_sorry not|been not|bother not|budg not|fahrenheit
not|for not|hav not|hav_it not|i_open not|know not|n not|put_it not|put_th not|ruin_medium
not|that_on not|thicken now_begin_with| now_my|P now_or| now_ther_is| now_they| now_w_ar| now_what_do|
now|at_Ndegrees:oven now|instead now|instead_of now|on_$ no|fan_on no|french_lif no|gluten_for
no|n_for no|on_is no|sear_N:few nudg|th number_do| number_for| number|do_i n|m of_plan| of_thos_wireless|
of_th|P of_th|oven of_us|for off_at|N:core off_in|th off_on|th off_so_no| off_this| off|again_$
off|at_N:core off|my_finger of|DISH_and of|smok of|win_$ ok_THING| ok|th_power ok|what old|folk
on_N:few|peopl on_at|N:core on_at|Nclock on_a|Nweight on_eat_at| on_for_th| on_in_th| on_mor|
on_mor|tim on_that_DISH| on_th|back on_th|door onc|mor_$ on|N:core on|Ngas-mark on|a_Ndate
on|a_second on|all_sid on|eat on|holiday on|m_$ on|out_of on|quick on|th_THING on|th_dial on|th_middl
on|th_r on|track_$ on|with_th open_a| open_for|Nduration open_that|door or_DISH_it| or_can|
or_should| order|of or|do_i or|it or|wait or|will other_way_THING| ought|to our|U out_back|
out_for_a| out_for_m| out_for|Nduration out_i_hav| out_it|com out_it|is out_or| out_th_butter|
out_w_do| out_w|do out|Nduration out|Nduration_ago out|THING_$ out|at_$ out|cold_$ out|do out|for_a
out|of_th out|of_this out|on_m oven_THING_say| oven_and|no oven_down|to oven_i_hav| oven_is_up|
oven_is|not oven_on_for| oven_run|hot oven_temperatur|i oven_up_to| oven_up|to oven|THING_N:oven
oven|beep_it oven|from oven|glov oven|go oven|go_up oven|has_di oven|is_alway oven|is_full
oven|is_go oven|is_on oven|lik_your oven|meant oven|with over_my| over|th_plac own_a| own_a|THING
own_a|leave-in own|a_THING p_m_at| pair| pan|is parchment|is par| pastry| pat|it pat|it_dry
pay_for| peel|took peel|took_forever peopl_for| peopl_i_hav| person|com pick_th| pick_up|a
pink_THING|saf pink|at_all pink|for plan_chang| plan_chang|w plan_on_N:few| plan|chang plan|chang_w
plat_ar|not pop_out| pop|up postpon| postpon|th pound_and_ounc| pound|and_ounc pregnant|P_$
preheat|to_N:some pretend_i| previous| prop| pull|it_now push|it put_Nduration| put_a|THING
put_crumb_on| put_m_Nduration| put_my| put|DISH_in put|you quantity_of|butter quick_th_oven|
quick_th| quick_updat| quick_updat|i quick|shower_Nduration r_win| rar_it| rar_mean| rar_mean|in
rar_or| rar_what| rather| rather|hav rather|than raw_in_th| raw|insid ready_it_is| ready|they_n
read|is_N:core real| reckon_w| reckon|i_will remain| remember|when remind|m_what remov_it|
remov_th_roast| remov|it rescu|it rescu|it_$ reset|everyth reset|everyth_$ rest_timer| rest_timer|start
rest|it_$ rest|long rest|long_enough rest|under_THING rib_of| rib|THING rib|roast_N:few right_for|
right_w| right|at right|at_th right|through road_ar| road|ar roar_when| roast_DISH_and| roast_DISH|for
roast_THING|N:core roast_get_to| roast_has_gon| roast_is_on| roast|from roast|from_th roast|has_left
roast|is_Nweight roll_and|p roll_ar|not roll_in|to rol|ar rol|ar_in room|with rop|in run_cold_by|
run_hot|by run_out|of run|a_bit run|out_of run|that ruth_can| ruth_can|do r| r|DISH_too r|insid
r|win_DISH saf_for|th saf| salt_i| sam_is| sam|tim sat|THING_th sav_it| sav|a saw| say_N:core|in
say_about| say|about scald_my_arm| school_and| school_canteen| scor_th| scor_th|fat scorch_in|
scorch_in|th scrap_that| scrap_th| scrap|DISH scrap|DISH_DISH scrap|that_last sear_at| sear_on|all
sear|version season|it second_from| second_it_touch| second_oven|lik second|sear second|sear_in
seen_th| serv_Nduration|later serv_at|Nclock set_for| set_us| set_us|back settl|N:some set|at
set|it_to set|us set|us_back sh_get| sh_has_got| sh_has|been sh_is|do sh_is|go shall_i|put
shav|Nduration shav|Nduration_off shedd| sho_off| shop_had|no should_hav_been| should_i|turn
should_land| should|it should|th_oven shout_when| shov_it_back| shov_it|back shower|i shower|i_am
shown| show|N:core_now shut|th_oven shut|up sh|do_not sh|had sh|said sick|so sick|so_N:few
sinc_Nduration|ago sinc_quarter| sirloin_on| sit_in_th| sit|down_Nduration skip_th| skip_th|french
sleep_in| sleep_in|th slip_by| slip_by|Nduration slip|and slow_then_a| smash| smell|amaz smok_in|
smok_it|is smok|alarm_is smok|and so_N:some|it so_let| so_noth_with| so_that|is sold|out someth_in|
sooner_not| sooner|than so|DISH_it so|lay so|lay_N:few so|lik so|much so|non_of so|they_call
so|watch so|you_no spot|on_$ spread| stab| stag|ar stag|ar_w stand_THING|is start_it_hot| start_it|hot
start_then| starter|is start|from start|over stay|clos steady|heat step_with| step_with|th
stick| still_N:few| still_in_th| still_in|ther still_on_for| still_stuck| still_stuck|on still|DISH_in
still|THING still|on still|stuck_on stop_for| stop_th_DISH| stop|ask stop|th_DISH stor_back_in|
storm| stov_and| stov_for| straight_is| straight_is|it straight_on| straight_on|th strain_th|
strain_th|DISH stuck_in|traffic stuck|in_traffic stuck|on_th stuff_th| stuff_with| swap|THING
swap|th switch_th| system_is| tabl|at_N:few tabl|tonight tabl|w tail_Nduration| tak_DISH| tak_it_off|
tak_it|out taken_th_roast| taken_th|roast tak|back talk_in| talk|to_th tell_m_and| tell_m|onc
tell_them| tell|N:few tell|him temperatur_am_i| temperatur_ar_w| temperatur_do|i temperatur_is_medium|
temperatur_th| temperatur|do_i temperatur|i_hav test_th| test_th|THING th_DISH_at| th_DISH_boil|
th_DISH_got| th_DISH_hav| th_DISH_i| th_DISH_ready| th_DISH_to| th_DISH_w| th_DISH|a th_DISH|got
th_N:few_wher| th_P_hav| th_P_settl| th_THING_do| th_THING_hav| th_THING_is| th_THING|counter
th_THING|first th_THING|has th_THING|went th_beast| th_board_at| th_board|now th_butter|is
th_butter|with th_colour_on| th_cow_is| th_crowd| th_dial_and| th_dog_has| th_dog|has th_door_behind|
th_door_let| th_family| th_fat|off th_first|on th_gas_has| th_go_with| th_guest|hav th_heat|out
th_hors_for| th_i_hav| th_i|should th_joint|is th_lad_ar| th_lad|hav th_mak_of| th_meter| th_middl_is|
th_middl_of| th_next|step th_no_sear| th_on|th th_order_of| th_order| th_other|oven th_oven_as|
th_oven_was| th_oven|beep th_oven|meant th_oven|pack th_oven|up th_oven|will th_phon_to| th_plan|for
th_quick_THING| th_rest|of th_roast_DISH| th_roast_and| th_roast|from th_roast|has th_roast|went
th_roll_ar| th_rol|ar th_second|sear th_shower|i th_story| th_stov_for| th_stov|is th_tabl|tonight
th_thickest| th_th|say th_timer_and| th_villag| th_way_no| th_wean| th_whol|th thank_b_to|
that_Nduration|i that_P| that_cam_on| that_is_him| that_is_when| that_on_is| that_should| that_was_my|
that_will| that_with| that_w| that_your| that|THING_THING that|U that|all that|all_right that|down
that|far that|fella that|long that|matter that|much that|was_th that|work them_got| them_in_th|
then_it_is| ther_has| ther_is_THING| ther_is_smok| ther_is|any ther_someth|i ther_tell_m| they_ar_Nduration|
they_get| they_lost| they_wer| they_will|not they|n_Nduration they|text thick|grey think_it|is
think_i| think_roast_DISH| think|my_THING this_THING_for| this_THING_is| this_THING|is this_go|
this_go|to this_needl| this_oven|run this|THING_it this|at this|out this|oven_is this|oven_run
this|with thos_wireless| thos_wireless|THING through_th|door through|th_whol throw_in| throw_in|som
th|DISH_now th|DISH_up th|P_and th|P_eat th|P_sleep th|THING_THING th|THING_must th|THING_went
th|U_N:core th|U_has th|bathroom th|beep th|block th|butter th|cak th|can_i th|car_$ th|cheap
th|cheap_THING th|choir th|dinner_Nduration th|fan_is th|henderson th|hot_oven th|in th|leave-in_say
th|leg th|lid_on th|littl_on th|loung th|middl_b th|missus th|motorway th|n_m th|on th|on_th
th|other_sid th|out th|oven_N:oven th|oven_on th|oven_was th|packet th|pan th|plan th|prawn
th|pub th|quick_THING th|r_win th|reason th|roast_in th|rugby th|say_N:core th|scor th|sear_a
th|street th|tabl th|th_it th|th_with th|thick_end th|tim th|toddler th|trick th|twin th|up
th|wall th|wifi th|work till_i|say till|N:core tim_ar| tim_is_your| tim_th_DISH| tim_th|roll
timer_N:few|wrong timer_for| timer|start_now tim|m tim|so ti|back_on ti|they ti|they_said to_N:core_and|
to_N:few_and| to_Ngas-mark|as to_THING_no| to_THING|no to_b_f| to_bast_in| to_carv_and| to_carv|it
to_catch| to_celsius_my| to_collect_th| to_do_a| to_get_th| to_look| to_n| to_pull_it| to_start_th|
to_tent| to_turn_th| to_turn| to_wash| today|so today|so_w toddler| told_you|about tom_is|do
tonight_and| too_hot|to took_her| took_her|out took_m_forever| took_m|Nduration took_th|DISH
too|much_salt top_of_th| top_off|my touch|it tough_as| to|N:core_i to|N:oven_P to|a_crisp to|f
to|metric_$ to|nut to|run_to to|tak_a to|tell_m traffic| trim_is| trim_is|complet trim|and
trip| truss|th truss|th_roast try_to_DISH| try_to| turn_it| turn_it|down turn_out_w| under_whatever|
unless_dental_floss| up_flam| up_from| up_in|th up_to| up_what| updat|i updat|i_hav upstair_to|get
upstair|to_get up|front up|front_then up|so_far up|to_N:oven up|to_heat up|to_temperatur us_THING_THING|
us_do|N:few us_eat_at| us_in_th| us_i| us_that_is| us|back us|do_DISH us|for_THING us|hav us|hav_it
vegan|com vot| w_U| w_ar|go w_ar|off w_ar|out w_ar|sit w_eat|Nduration w_go_th| w_go_to| w_hav_a|
w_hav|pick w_hit| w_hit|N:core w_is_not| w_mak| w_want|th w_will_sit| w_will|serv w_will|sit
w_would| wak_m| walk_in_and| want_another| want_it|Nduration want_supper| want_th_THING| want|
want|thos warm|th was_N:core_at| was_at|N:core was_left| was_left|open was_my| was_not|it was_on_th|
was_still| was|Nduration_ago was|on water|so water|so_it way_is| way_is|th way|do way|my_folk
way|over weight_of| well_behind| well|behind well|don_for went_into_my| went_into_th| went|in
went|in_N:few went|straight wer_Nduration_behind| wer_Nduration| we|U whack_it| what_U| what_am_i|
what_ar_you| what_ar|w what_can|sh what_can|w what_did_th| what_did_you| what_do_i| what_do_w|
what_happen|if what_i_am| what_internal| what_internal|temperatur what_is|medium what_number_do|
what_should_it| what_should|i what_stag| what_stag|ar what_temperatur_is| what_tim_ar| what_to|do
what_will|i what|can_w what|if_w what|number what|oclock what|th_can what|was_that when_do_i|
when_do_th| when_i|pull when_sh| when_th_middl| when|do_i wher_ar|w wher|is_th which|bit which|i
whil_they| whil_you|wer whip|it whip|it_out who_do_not| who_left_th| whol_hous|has whol|U why_am|
why_am|i why_ar|w why_do|it why_is|th why|do_w will_b_an| will_b_her| will_b_th| will_b|gon
will_do|without will_eat_early| will_get| will_hav|it will_never| will_not_eat| will_not_stay|
will_not_touch| will_sit| will_stay| will|arriv will|get will|not will|not_eat will|pass will|serv
will|serv_it will|sit will|ya win_in|th with_DISH_i| with_DISH| with_N:few|bon with_his| with_th_oven|
with_th| with_th|DISH with_th|fat with_th|oven without_DISH_THING| without|roast without|roast_DISH
without|tell with|everyth_els with|str with|th_oven with|th_second with|thes with|you_$ work|you
work|you_$ would_it_b| would_lik_th| would_not_believ| would_th|THING would_you|ever would|b
would|hav would|it would|say would|y wrap|up wreck|th wrong_it|is w|eat_Nduration w|los w|los_th
w|prefer w|say w|stand w|talk_$ w|will_not w|win yell_at|N:core yell|at yes_P|i yes_that_is|
yet_it_is| yet_still| yet_what| you_DISH|th you_ar|go you_at| you_can|drop you_can|not you_did|
you_explain| you_giv_m| you_hav|got you_i|am you_not| you_run| you_set|Nduration you_so| you_think|i
your|feet you|ar_tell you|dar you|imagin_$ you|in you|set_Nduration you|would_not |,_$ |,_$_$
|@105.0 |@113.2 |@120.0 |@130.0 |@130.6 |@139.7 |@19.2 |@30.3 |@41.6 |@5.0 |@62.3 |@66.6 |@68.4
|@69.3 |@76.1 |@85.4 |@88.2 |@89.0 |@9.5 |@96.3 |@99.1 |DISH_DISH_it |DISH_DISH_too |DISH_alongsid_$
|DISH_in_N:few |DISH_in_it |DISH_is_stuck |DISH_kindly |DISH_now |DISH_of |DISH_off_th |DISH_split
|DISH_tast_of |DISH_th_THING |DISH_th_bon |DISH_want_a |N:core_Ndate |N:core_Nduration_ago
|N:core_and_can |N:core_do |N:core_has |N:core_how_long |N:core_i_misread |N:core_is_it |N:core_whil_w
|N:few_U_of |N:few_and_th |N:few_do |N:few_go_$ |N:few_how |N:few_it_is |N:few_littl |N:few_littl_stick
|N:few_now_$ |N:few_off_$ |N:few_piec_rib |N:few_sound |N:few_th_U |N:few_they |N:few_till
|N:few_timer |N:few_tonight |N:few_was |N:oven_N:few_$ |N:oven_at |N:oven_by |N:oven_for_Nduration
|N:oven_i_hav |N:oven_is |N:oven_my |N:oven_not |N:oven_ok |N:some_it_is |N:some_now |N:some_with
|Nclock_can |Nclock_for_dinner |Ndegrees:core_P |Ndegrees:core_insid |Ndegrees:some_in_Nduration
|Nduration_DISH_is |Nduration_ago_befor |Nduration_already |Nduration_and |Nduration_if |Nduration_later_and
|Nduration_let |Nduration_off_th |Nduration_to_get |Nduration_too_lat |P_gon |P_is_N:few |P_is_bail
|P_sleep |P_th |THING_DISH |THING_N:core_and |THING_Nduration |THING_THING_Ndegrees:few |THING_THING_over
|THING_and_put |THING_as_nail |THING_is_alway |THING_is_not |THING_is_pack |THING_roll |THING_show_Ndegrees:few
|THING_sinc |THING_str |THING_tell |THING_th_THING |THING_went_in |THING_when |U_THING |U_and_nobody
|U_at_th |U_for |U_had |U_her |U_of_th |U_what |a_Nduration |a_Nduration_timer |a_U_for |a_blush
|a_bon_and |a_call |a_list_of |a_loaf |a_lovely |a_low_oven |a_party |a_power |a_proper_THING
|a_rock |a_sit_down |a_start |a_start_on |a_timer_for |a_we_bit |about_right |about_th_oven
|across_th |adult_N:few |afraid |after_a |after_th_rest |afternoon_f |afternoon_f_that |ag_to
|ago_$ |ago_$_$ |ago_i |ago_it |ago_it_was |alcohol |all_at |all_grey |allergic_to_DISH |allow_$
|allow_$_$ |alway_run_N:some |am_Nduration_back |am_Nduration_down |am_i_pull |am_i_suppos
|am_in |am_that |and_DISH_hav |and_i_will |and_ounc |and_out_th |and_ris |and_sh |and_still_behind
|and_swear |and_swear_it |and_tail_$ |and_th_green |another_$ |another_$_$ |anyth_that |appointment
|ar |ar_THING |ar_bang |ar_boil |ar_do |ar_down |ar_french_$ |ar_no |ar_not_com |ar_off_$ |ar_on_$
|ar_rest |ar_sit_at |ar_ston |ar_ston_cold |ar_stream |ar_stuck |ar_too |ar_trim_$ |ar_up_$
|ar_w_up |around_th |arriv |as_of_Nduration |as_th_bishop |as_well_$ |ask_about |at_N:core_already
|at_N:core_com |at_N:core_how |at_N:core_no |at_N:core_right |at_N:core_th |at_N:few_i |at_Nclock_what
|at_all_in |at_it_$ |at_right |b_N:some |b_THING_$ |b_do |b_if |back_to_N:oven |bacon |bak
|bathroom |bea |been_in |befor_N:core |behind_th_THING |behind_th_plan |bench |boil_water_$
|bon_Nweight_$ |bon_Nweight_and |bon_in_it |bonfir_night |bother_with |brisket |brown_enough
|bubbl_$ |bubbl_$_$ |bucket |burn_my_THING |burn_th |bus_$ |bus_$_$ |by_N:few |c |c_$ |c_$_$
|cam_with |can_get |can_not_com |can_not_cop |can_w_mak |cancell_$ |cancell_$_$ |car_pull |carv_$
|carv_$_$ |carv_and |carv_with |catch |celsius_not_fahrenheit |centr_$ |centr_$_$ |chang_w
|chang_w_ar |channel |cheap_THING_THING |chimney |chop_$ |chop_$_$ |chop_and |christen |cold_on
|colleg |colour_on |com_now |com_out_THING |com_up_to |cooker_is_Ndegrees:some |cooky |cool
|countdown |crumbl |cut_m |cut_my |diet |dinner_b |dinner_back_Nduration |dishwater |do_DISH_DISH
|do_i_ask |do_i_hav |do_in_plac |do_not_open |do_not_tak |do_th_THING |doctor_said |don_DISH
|don_all_th |don_her |don_th |don_that |door_$ |door_$_$ |door_for |down_Nclock |down_at_N:few
|down_for_th |driv_$ |driv_$_$ |drop_$ |drop_$_$ |early_can |easter |eat_Nduration_later |eat_THING
|eat_a |eat_anyth |eat_earlier |eat_it_pink |eat_r |eat_th_DISH |els_$ |els_$_$ |els_is |end_Nweight
|end_and |enough_$ |enough_$_$ |enough_for_N:few |enough_so |even_in |everyth_els |exactly
|f_$ |f_$_$ |f_at |f_th |faff_about |fan_assist |fella_$ |fella_$_$ |find_in |finger |finish_at_N:core
|finish_i |first_N:few |first_so |floss |for_N:few_of |for_N:some_$ |for_Nclock_and |for_Nduration_$
|for_Nduration_whil |for_THING_$ |for_it_or |for_m_and |for_m_th |for_medium_$ |for_th_N:few
|for_that_$ |for_us |for_your_P |forerib_on |forerib_on_th |forever |forgot_to_salt |fork_$
|fork_$_$ |french_lif |french_lif_is |french_th_bon |fresh_DISH_$ |from_N:few_to |from_N:oven_$
|from_now_$ |from_th_fridg |from_th_shop |from_zero |from_zero_$ |front_then |full_$ |full_$_$
|gas_$ |gas_$_$ |get_lat |get_start |get_start_myself |giv_you |glaz |gluten_$ |gluten_$_$
|gluten_for |go_in_$ |go_off_$ |go_ok_or |go_up_to |go_with |go_wrong |god_ther |god_ther_is
|gon_Nduration_and |gon_all |gon_down |gon_ther |gon_ther_is |gon_to_THING |good_Nduration
|goos_fat_$ |got_a_second |got_any |got_burn |got_left_$ |got_no |grab_th_handl |grand_$ |grand_$_$
|h_eat |had_no |had_not |has_becom |has_com_out |has_gon_dark |has_gon_off |has_it_with |has_left
|hav_N:core |hav_a_jar |hav_complet |hav_got |hav_got_power |hav_her |hav_hit |hav_lost |hav_rock
|hav_rock_up |hav_rung |hav_this |hav_to_DISH |hav_to_prepon |heat_at_th |heat_do |help_in
|help_with |henderson |her_N:few_still |her_can |her_chair |her_how |her_in |her_lot |him_out
|his_P_$ |his_plat |hom_th |hot_then_turn |i_DISH |i_am_still |i_gav_you |i_hav_slip |i_mean
|i_mean_not |i_put_it |i_ruin |i_ruin_it |i_should_hav |i_stick |i_stick_th |i_us_DISH |idea_how
|if_that |ignit |in_Ndate |in_Nweight_$ |in_a_good |in_and_it |in_at_N:few |in_my |in_no_tim
|in_not_touch |in_th_belly |in_tim_$ |in_traffic |insid |instead_and |instead_do |instead_of_a
|into_th_hot |intolerant |is_Nclock_th |is_Nduration_lat |is_a_lot |is_an |is_ask_for |is_at_th
|is_blank |is_cover_in |is_go_in |is_go_to |is_gon |is_gon_they |is_happy |is_hungry |is_hungry_$
|is_hurt |is_it_past |is_join |is_land |is_load |is_m |is_mad_and |is_mak |is_mix_and |is_noth
|is_nowher |is_offer_to |is_on_and |is_overcook |is_pac |is_pack_in |is_ring_$ |is_roll_up
|is_run_Nduration |is_run_at |is_season |is_sinc |is_sleep |is_slip |is_spread |is_still_on
|is_strain_skim |is_swell |is_tak_N:few |is_th_next |is_that_in |is_whisk |is_work |it_all_over
|it_and_it |it_as_it |it_both |it_by_Nduration |it_get |it_h |it_is_overdon |it_is_so |it_my_P
|it_off_at |it_ok |it_on_$ |it_saf |it_sinc |it_stand |it_straight |it_to_th |it_touch_N:core
|it_warm |it_when |it_wrong_$ |itself_$ |itself_$_$ |job_$ |job_$_$ |job_in |join_th |joint_go
|joint_go_to |kept_at |kilo_i |kne |know_i |lad |last_bit |lat_P |lat_sav |lat_with |leave-in_on
|left_on_th |left_to_do |leg_Nweight |less_th |light_di |light_on |lik_P |lik_her |lik_them
|lik_water_will |lik_your_plan |list_for_th |list_i |list_i_hav |littl_on |long_again |long_enough
|longer_than |look_U_to |loosely_in |los_th_r |lost_Nduration_to |lot_ar |lunch_$ |lunch_$_$
|m |m_N:core_$ |m_a_bell |m_alon |m_alon_unless |m_at_N:core |m_back |m_i_said |m_som |m_sort
|m_th_whol |m_what_i |mak_th |mash |may_b |mean_by |meantim |meantim_$ |meantim_$_$ |medium_th
|medium_well_and |messag_$ |messag_$_$ |metric_from |metric_from_now |middl_b |minc |mitt |month_$
|month_$_$ |mor_THING |mor_for |mor_timer |mor_to |morn_$ |morn_$_$ |much_tim |my_P_no |my_elbow
|my_finger_with |my_folk |my_folk_will |n |n_another_Nduration |n_mor |n_to_buy |n_to_get |nap_$
|nap_$_$ |need_$ |need_$_$ |new_P |new_th |next_step |nip_and |nip_and_that |no_N:core |no_don
|non_of_th |nos_$ |nos_$_$ |not_DISH_it |not_b |not_believ |not_breath |not_catch |not_eat
|not_for |not_get |not_hav |not_hav_any |not_her |not_i_open |not_mind |not_tak_it |not_talk_for
|not_thicken |not_up |not_wait |not_want |not_well |now_at |now_leo |now_on |oclock |of_U_$
|of_butter_i |of_it_$ |of_it_is |of_r |of_th_DISH |of_th_P |of_us_and |off_and_it |off_at_Nclock
|offer_to |ok_for_her |on_Nduration_ago |on_do |on_in_th |on_m |on_plat |on_th_lowest |on_th_plan
|on_then |on_to_boil |on_to_th |on_will |or_U_$ |or_ther |or_ther_will |other_th |other_th_i
|ought_to_b |our_hous |out_$ |out_$_$ |out_and_i |out_by_th |out_cold |out_oven |out_oven_is
|out_sh_is |out_th_fridg |out_th_truss |out_too |out_yet |oven_at_Nclock |oven_at_all |oven_i
|oven_is_Ndegrees:some |oven_is_alway |oven_lik |oven_mind |oven_not |oven_too |oven_what |over_from
|over_i |over_my |over_th |over_th_DISH |over_th_THING |pack_up |pain |pan_is_alight |pan_now
|pan_what |paper_THING |part_$ |part_$_$ |pass_th |past_N:core |peopl_cancell |pick_th |pick_up_an
|pig |pink_THING_saf |pink_is |pink_so |pitch |plac_and |plan_U_$ |plank |plumber |pool |postpon_th
|postpon_th_dinner |pour_th |problem_$ |problem_$_$ |pull_$ |pull_$_$ |pull_this |pull_this_at
|queu |r_DISH_so |rar_that |ray |read_$ |read_$_$ |ready |ready_$ |ready_$_$ |ready_by |rib_Nweight
|rib_of |rib_of_THING |right_in |right_or |roar_$ |roar_$_$ |roast_N:few_bon |roast_and |roll_Nduration
|roll_ar_not |rub_th |ruin_medium |ruin_medium_well |run_a_good |run_at |sad |said_it_is |salt_U
|salty_$ |salty_$_$ |sat_at |sat_on_th |sav |sav_$ |sav_$_$ |say_N:core_and |say_U |say_grac
|say_grac_$ |say_they |say_to_you |school_and |sear_N:few |sear_a |sear_in |sear_in_this |sesam
|set_th_roll |sh_$ |sh_$_$ |sh_com_$ |sh_still |sharp_$ |sharp_$_$ |shelf_it |should_not |shower_Nduration
|sick_$ |sick_$_$ |sinc_$ |sinc_$_$ |sinc_Nduration_ago |sink_$ |sink_$_$ |sit_out_$ |skip_th_ty
|slush |smell_it |smok_in_her |so_aim |so_aim_for |so_th_DISH |speak_in |start_myself |start_then
|still_THING_$ |still_do |straight_away_$ |straight_into |straight_into_my |stuck_in_traffic
|stuff_$ |stuff_$_$ |stupid |switch_th |t |tak_it_off |tak_this |tast_th |tell_ya |th_DISH_another
|th_DISH_can |th_DISH_cover |th_DISH_go |th_DISH_got |th_DISH_off |th_DISH_ok |th_DISH_ready
|th_DISH_you |th_N:few_rib |th_Nduration_th |th_P_Nduration |th_P_down |th_THING_how |th_THING_i
|th_THING_will |th_back |th_bag_$ |th_bairn |th_blast |th_boat |th_bottl |th_can |th_can_i
|th_colour |th_cor_$ |th_couch |th_cow_is |th_do |th_dog_THING |th_doorbell_they |th_edg_$
|th_first_$ |th_front_room |th_glass |th_guest_cam |th_heat_and |th_label_$ |th_last_th |th_list_$
|th_loo |th_mark |th_match_$ |th_menu_$ |th_messag |th_music |th_next_th |th_other_again |th_oven_Nduration
|th_pan_and |th_pan_is |th_pub |th_r_road |th_reason_for |th_say |th_second_it |th_shower |th_stat
|th_stat_of |th_summer |th_tabl_now |th_telly_$ |th_timer_$ |th_top_of |th_wall_$ |th_whatsit
|th_window_$ |th_with |that_P |that_alarm_$ |that_bit_$ |that_door_$ |that_for |that_is_finish
|that_it_is |that_long_$ |that_roast |that_ther |that_thought |that_timer_on |that_with |that_wrong
|their_P |their_chair |them_$ |them_$_$ |them_in |them_out |ther_$ |ther_$_$ |ther_long |ther_th_THING
|ther_yet_$ |they_ar_out |they_call_and |they_com_Nduration |they_n_heat |they_still |think_$
|think_$_$ |this_hous |through_no |tim_$ |tim_$_$ |tim_for_th |timer_and_th |timer_her |timer_on
|to_N:core_$ |to_N:core_kindly |to_N:few_$ |to_N:oven_at |to_N:oven_w |to_boil_for |to_com_$
|to_dinner_$ |to_eat_it |to_hit |to_lif_$ |to_salt |to_salt_it |to_sav |to_sear |to_sp |to_that_$
|to_that_phon |tod |told_them |tongu |too_high_$ |toronto |track_$ |track_$_$ |trick |trim_$
|trim_$_$ |turn_on |twin |ty |ty_it |unconscious |up_by |up_lik_a |up_lovely |up_so |up_th_DISH
|up_when_it |up_yet |upstair_and |upstair_for |upstair_to_chang |us_DISH |us_Nduration |us_U
|us_back |us_i |us_on |w_go |w_jump_past |w_miss |w_ok |w_on_tim |w_rest |w_rest_it |w_will_not
|w_win_$ |wak_m_up |walk_in_$ |want_dinner |want_dinner_at |want_it_medium |want_it_well |want_medium
|want_to_giv |want_to_know |warm_$ |warm_$_$ |warm_th |was_$ |was_$_$ |was_N:core |was_Nclock
|was_Nweight |was_hot |was_in |was_left |was_left_open |was_not_meant |wash_up_as |watch_th_DISH
|way_THING |weight_of |when_it_reach |when_sh_get |wher_th_THING |wifi |will_U |will_do |will_forget
|will_never |will_not_light |will_not_mak |win_DISH |with_Nduration_left |with_apricot |with_m_$
|with_salt_and |with_this_$ |with_us |would_lik_an |would_lik_to |yes_and |yes_w |yes_w_should
|you_DISH |you_about |you_believ |you_eat |you_giv |you_giv_m |you_good |you_good_for |you_turn
|you_when |your_boot |your_feet |your_hors |your_hors_i |zero_$ |zero_$_$
-12 #before1 @1.6| @120| @28.5| @32.4| @4.15| @5.3| @52.2| @57.0| @63.2| @89.0| DISH_DISH_as|
DISH_DISH_can| DISH_DISH_has| DISH_DISH|how DISH_DISH|with DISH_P|w DISH_THING_as| DISH_after|all
DISH_and_cut| DISH_and|DISH DISH_ar|boil DISH_ar|burn DISH_ar|nic DISH_ar|ston DISH_at_th|
DISH_back| DISH_cream_is| DISH_cream_on| DISH_cream|on DISH_don|in DISH_for_th| DISH_for| DISH_get|th
DISH_has|been DISH_hav_gon| DISH_hav|not DISH_how_much| DISH_i_will| DISH_in_th| DISH_is|U
DISH_is|assembl DISH_is|burnt DISH_it_and| DISH_my|P DISH_my|THING DISH_m|alon DISH_no|n DISH_n|
DISH_on_th| DISH_so_scrap| DISH_th_hous| DISH_was|don DISH_went_off| DISH_yes|w DISH|DISH_as
DISH|P_w DISH|and_they DISH|ar_away DISH|ar_burnt DISH|ar_peel DISH|butter_don DISH|don DISH|duty
DISH|from DISH|from_Nclock DISH|from_m DISH|hav_com DISH|in_DISH DISH|in_ther DISH|is_burnt
DISH|is_cover DISH|is_in DISH|is_on DISH|is_out DISH|no_n DISH|our_on DISH|out_sinc DISH|ready
DISH|timer_and DISH|tonight DISH|yes N:core_about_Nduration| N:core_and_is| N:core_and_i| N:core_and|N:core
N:core_and|can N:core_and|how N:core_and|i N:core_and|is N:core_ar_w| N:core_b| N:core_in_th|
N:core_last_i| N:core_lik|th N:core_or| N:core_right|now N:core_so_s| N:core_well| N:core_whil_w|
N:core_would| N:core|bottl N:core|bottl_of N:core|btw N:core|lik N:core|right N:core|so_s N:core|without_tell
N:core|would_you N:core|year_old N:few_U|and N:few_and_w| N:few_at_th| N:few_bon_and| N:few_bon_not|
N:few_bon|from N:few_do|not N:few_for_th| N:few_for|N:few N:few_guest|ar N:few_in|th N:few_less|for
N:few_mak| N:few_mor| N:few_of_th| N:few_of|th N:few_of|thos N:few_out|of N:few_piec_rib| N:few_piec|
N:few_r_on| N:few_to| N:few|THING_th N:few|account N:few|account_for N:few|bon_N:few N:few|bon_not
N:few|bon_on N:few|bon_rib N:few|bon_roast N:few|extra_for N:few|hav_arriv N:few|helper N:few|inch
N:few|mor_$ N:few|mor_person N:few|of_us N:few|over N:few|percent N:few|step_back N:few|to_N:few
N:oven_and_i| N:oven_and_th| N:oven_at|Nclock N:oven_can| N:oven_for_a| N:oven_for_th| N:oven_for|dinner
N:oven_in|th N:oven_stop| N:oven_stop|ask N:oven|Nduration N:oven|already N:oven|already_$
N:oven|at_N:oven N:oven|lik_you N:some_after| N:some_it| N:some_lat|on N:some_mor|befor N:some_not|N:some
N:some_on_th| N:some_with|th Nclock_instead_of| Nclock_or|ther Nclock_that| Nclock_they| Nclock_th|roast
Nclock_would| Nclock_w|want Nclock|and_th Nclock|for Nclock|it Ndate_at|N:few Ndate|lunch Ndate|night_at
Ndegrees:core_on|th Ndegrees:few_mor| Ndegrees:few_under|th Ndegrees:few|in_Nduration Nduration_N:core|
Nduration_U|is Nduration_ago|or Nduration_and_th| Nduration_behind_with| Nduration_down_on|
Nduration_for_th| Nduration_for| Nduration_how| Nduration_is_that| Nduration_my|P Nduration_on|
Nduration_sh| Nduration_so| Nduration_steep| Nduration_steep|th Nduration_then|tell Nduration_ther|
Nduration_they_ar| Nduration_they| Nduration_timer_and| Nduration_too|lat Nduration_whil_i|
Nduration_whil| Nduration_whil|i Nduration_why| Nduration|N:few_$ Nduration|ago_DISH Nduration|ago_i
Nduration|ago_sorry Nduration|ar_up Nduration|befor_w Nduration|behind_and Nduration|can Nduration|down_on
Nduration|lat_with Nduration|off Nduration|on_for Nduration|sinc_it Nduration|sooner_$ Nduration|tell_m
Nduration|whil Nduration|whil_i Nweight_all| Nweight_forerib_N:few| Nweight_it|is Nweight_i|misread
Nweight_not| Nweight_of_top| Nweight_of|DISH Nweight_with|th Nweight|of_U Nweight|rib_roast
Nweight|with_N:few P_alway|did P_ar|feral P_ar|set P_can|i P_des| P_do_not| P_fell| P_f| P_has|com
P_has|gon P_i_hav| P_is_hurt| P_is|stay P_is|still P_is|turn P_jim| P_lik|his P_n_to| P_n|
P_open_th| P_put_th| P_say_th| P_sh| P_so|N:few P_stev| P_stev|help P_th_DISH| P_will_eat|
P|bea P|gav_m P|has_fallen P|help_m P|is_early P|is_hurt P|lik_it P|pet P|pet_has P|rang_h
P|say P|us_to THING_N:few|in THING_N:some| THING_N:some|low THING_Nweight_and| THING_THING_no|
THING_THING|ar THING_THING|over THING_and_th| THING_and|it THING_and|put THING_ar|stream THING_as|nail
THING_for|Nduration THING_get_to| THING_in|her THING_is_act| THING_is_bon| THING_is_com| THING_is|cut
THING_is|still THING_leave-in_on| THING_now|leo THING_out|for THING_piec|w THING_say|Ndegrees:core
THING_show_Ndegrees:few| THING_sinc| THING_smok| THING_stuck| THING_tell| THING_they| THING_th|tabl
THING_wer_not| THING_what|do THING_will|you THING|again_$ THING|and_ther THING|ar_U THING|cast
THING|cast_iron THING|crowd THING|crowd_N:some THING|for_Nduration THING|get THING|hang_in
THING|her THING|into THING|is_N:few THING|is_com THING|is_out THING|is_pack THING|is_slow THING|is_tough
THING|number_say THING|of_THING THING|on_$ THING|out_oven THING|over_a THING|over_it THING|pan_$
THING|piec THING|saf_$ THING|salmon THING|salmon_first THING|show_Ndegrees:few THING|that THING|till
THING|tonight THING|wer U_THING_is| U_U_has| U_U|has U_by| U_by|th U_do|not U_drop_your| U_every|
U_from_previous| U_i_can| U_is_bring| U_it_say| U_it|is U_i|could U_i|will U_my|god U_nip|
U_nip|and U_no_no| U_no_th| U_of|th U_want| U_want|his U_wher_th| U_w|will U|DISH_$ U|U_fir
U|and_DISH U|away_$ U|by U|by_th U|call U|god_ther U|had U|is U|is_at U|is_coeliac U|is_lot
U|my_god U|of_THING U|th_$ U|th_rest ^_DISH_for| ^_DISH_has| ^_DISH_n| ^_DISH|has ^_N:core_not|
^_N:few|hav ^_N:few|her ^_N:few|mor ^_Ndate_w| ^_Nduration|lat ^_Nduration|sooner ^_P_can|
^_P_fell| ^_P_jim| ^_THING_of| ^_THING|cub ^_THING|should ^_THING|went ^_THING|wer ^_U_oven|
^_^_as| ^_^_befor| ^_^_ben| ^_^_brown| ^_^_burnt| ^_^_buzz| ^_^_can| ^_^_chang| ^_^_consider|
^_^_driv| ^_^_electricity| ^_^_flip| ^_^_fresh| ^_^_gas| ^_^_grey| ^_^_halal| ^_^_hav| ^_^_h|
^_^_id| ^_^_it| ^_^_i| ^_^_lower| ^_^_my| ^_^_shop| ^_^_should| ^_^_show| ^_^_storm| ^_^_stor|
^_^_strik| ^_^_temperatur| ^_^_th| ^_^_we| ^_^_what| ^_^_which| ^_^_win| ^_^_y| ^_add_a| ^_all_th|
^_all|guest ^_and_th| ^_as| ^_at_th| ^_b_quiet| ^_befor| ^_ben| ^_brown| ^_bung|th ^_burnt|
^_butter|is ^_buzz| ^_cancel_th| ^_cancel|timer ^_can| ^_can|w ^_chang| ^_consider| ^_cooker_is|
^_could_not| ^_dinner|Nduration ^_down_to| ^_driv| ^_electricity| ^_everyth_in| ^_fan|oven
^_flip_th| ^_flip| ^_forget_th| ^_forget|what ^_fresh| ^_gas| ^_gon_to| ^_gon|and ^_greas|fir
^_grey| ^_h_drop| ^_halal| ^_hav_i| ^_hav| ^_hav|i ^_hav|w ^_h| ^_i_am| ^_i_will| ^_id| ^_if_th|
^_if_w| ^_in_law| ^_in_th| ^_in|our ^_is_it| ^_is|N:core ^_it_r| ^_it_weigh| ^_it_went| ^_it|
^_it|run ^_i| ^_i|drop ^_i|put ^_i|took ^_kill_th| ^_last_car| ^_leave-in|THING ^_leftover|ar
^_look_at| ^_look|at ^_lower| ^_medium_i| ^_my_sleev| ^_my| ^_no_fresh| ^_no_w| ^_not|go ^_now_th|
^_no|bother ^_ok_DISH| ^_on_th| ^_peopl_ar| ^_phon_call| ^_power_is| ^_priya|is ^_reckon_w|
^_salt_is| ^_sam_is| ^_sear|now ^_serv_at| ^_serv|it ^_shop| ^_should| ^_show| ^_so_i| ^_so_w|
^_someth_is| ^_start|THING ^_stop_th| ^_storm| ^_storm|took ^_stor| ^_strik| ^_switch_th| ^_s|out
^_tak_a| ^_tak_th| ^_temperatur| ^_th_door| ^_th_green| ^_th_sear| ^_th_th| ^_th_we| ^_theo_want|
^_ther|ar ^_they_had| ^_they_want| ^_they|got ^_this_is| ^_th| ^_th|THING ^_th|electricity
^_th|first ^_th|shop ^_th|toddler ^_tom_is| ^_turn_off| ^_turn_th| ^_w_do| ^_w_n| ^_w_skip|
^_we| ^_what_a| ^_what_happen| ^_whatever|you ^_what| ^_what|did ^_what|th ^_when_i| ^_wher_do|
^_which| ^_why_did| ^_win| ^_w|do ^_yes_do| ^_yes_so| ^_your_man| ^_y| a_DISH_and| a_Nweight|with
a_THING_with| a_THING|over a_bit_cold| a_bit|cold a_boneless|THING a_decent| a_drop_of| a_gas|oven
a_glass|THING a_go| a_joint_do| a_list|of a_monkey| a_monkey|P a_plan|b a_rest|now a_revers|
a_revers|sear a_shout|at a_timer|of about_Nduration| about_th|THING about|Nduration_ago about|th_DISH
add_a|DISH after_com| after|all_and after|all_so after|all_that after|this_$ again_it|is ago_it_was|
ago|or ago|or_so ag|to aim_for|Nclock aim|for_a alarm|is alert_at| alert_for| alert_for|Ndegrees:core
alex_can_stir| alex_on| alex_on|DISH all_N:few|account all_behind|lik all_sat_THING| all_they|
all|don_her all|good all|good_$ all|her_it all|mad all|my all|of all|of_them all|right_to all|th_butter
all|this_$ alon_for| already_in_th| already_so| already|carv already|th alway|did alway|run_N:some
am_Nduration|behind am_Nduration|down am_away| am_get|N:core am_gon_for| am_go| am_head| am_i_meant|
am_i|miss am_nip| am_now| am_now|begin am_off_to| am_on|th am_out| am_still_N:few| am_tak_it|
am_up_to| am_way| am_way|behind am|Nduration_off am|i_lat am|never am|not_don am|run_a am|run_lat
am|stand an_THING|on an_alarm_for| an_alarm| an_alert_for| and_DISH_yes| and_N:few_mor| and_burnt|
and_b| and_com| and_cut|them and_everyth|in and_forget_th| and_had| and_hit| and_how_is| and_i_would|
and_in|th and_it_has| and_my_THING| and_my|P and_not_a| and_not|a and_onto_th| and_roast| and_set_a|
and_sh_still| and_should| and_shut| and_shut|th and_so_what| and_th_roll| and_th_shop| and_that|is
and_th|P and_th|roast and_th|roll and_ti_back| and_ti_them| and_wash| and_what_do| and_what|
and_what|do and_what|should and_which| and|eat_at and|golden and|h_can and|half_th and|i_want
and|is_N:core and|it_is and|never and|no and|not_a and|sad and|shut_th and|th_roll and|th_th
and|they_hav and|top and|what_was another_Nduration_then| any_U| anyth_i|n anyth_i|should ar_N:few|person
ar_eat_at| ar_expect|N:some ar_go_to| ar_hav_DISH| ar_her|N:few ar_in_th| ar_join| ar_join|us
ar_miss|THING ar_my_choic| ar_nic_and| ar_not_hav| ar_not|brown ar_nowher|near ar_out_and|
ar_still|THING ar_up|to ar_you|N:few around|th_THING arriv_Nduration| ar|boil ar|charcoal ar|cook
ar|feral ar|her ar|metric ar|metric_peopl ar|nic ar|nic_and ar|sat ar|set ar|set_th ar|start
ar|stream ar|w_do as_of_Nduration| as_soon_as| as_well_and| as_you|reckon as|nail at_N:core_th|
at_N:oven_and| at_N:oven_for| at_N:oven|sharp at_Nclock_THING| at_Nclock_i| at_Nclock_or| at_Nclock|P
at_Ngas-mark| at_hom_th| at_my|P at_th_THING| at_th_sam| at_this|rat at_what|temperatur at|N:few_and
at|N:few_to at|N:oven_and at|N:oven_now at|N:oven_th at|Nclock_N:few at|Nclock_THING at|Nclock_th
at|Nclock_w at|Ngas-mark_and at|all_in at|at at|at_Nclock at|th_end at|th_shop at|work availabl|
away|for_Nduration a|N:few_rib a|Nweight_leg a|fat a|fat_THING a|hair a|jar a|joint a|nudg
a|nudg_in a|r_win a|start a|start_on a|tick a|timer_Nduration a|we_bit b_N:some|person b_Nduration|later
b_a_monkey| b_at|th b_f_at| b_on|th b_ready_by| b_ready|for b_ready|in b_sit| b_sit|down b_tak|
b_when_i| back_in|th back_thank| back_thank|god back_to|N:oven back|how back|how_it back|in_$
back|on_phew back|to_N:oven back|to_lif bad_it| bag|of_DISH been_at| been_in_sinc| been_in_th|
been_off| been_on_N:oven| been_on_th| been_taken_out| been|N:few been|Nduration_$ beep_m_in|
befor_they| befor_th|next behind_by|N:few behind_or| behind_so_serv| behind_with|everyth behind|a_tractor
behind|by_N:few behind|lik behind|lik_th between_th| bin|th_timer bird_N:few_guest| bit_cold|
bit_cold|Ndegrees:few bit|cold bit|cold_Ndegrees:few bit|lat blank_on_th| board_and| board_school_and|
boil|DISH boil|for bon_skip_th| boneless|THING boneless|THING_THING boneless|rib boneless|rib_THING
bon|ar bon|dry bon|skip bother_don| bother_don|ag both|sid bottom|and bottom|and_gon box|is
box|is_all break|up bring_th_DISH| bring| brown|it_is br|it_forward bung_som|roast burn_my|
burn_to| burnt| burn|by bus_is_lat| butter_is|out butter_so| butter_th| buzz_m|at by| by|N:oven_in
by|step b|THING_$ b|medium_cook b|on b|out b|ready_in b|ther cam_U| cam_outsid_befor| cam|U_not
cam|on cam|out_of can_i_do| can_not_get| can_not_put| can_not|b can_not|com can_not|do can_not|go
can_not|put can_not|stand can_stir| can_stir|th can_us|ghe can_you_talk| can_you|hold can_you|wait
cancel_what|i cancell_so| cancel|timer can|DISH can|eat_Nduration can|i_tak can|i_us can|not_THING
can|not_hav can|w_los can|w_rescu can|you_imagin cap|down cap|down_a carryover| carry|a_pen
catch|my catch|my_breath cat|has celsius_giv_m| celsius_i|do chang_my|mind chang_w_ar| chang|my_mind
chang|to cheap_THING|THING chemo_so| chest| chopper|THING chopper|THING_whatever christma_dinner|at
chuck_som|DISH church_for|Nduration church|for_Nduration clean_forgot| clock_for|Nduration
clock_on|th clock|is_tick coat_ar| coat|a coat|a_spoon cold_in| cold_in|th cold|Ndegrees:few
com_Nduration|too com_after| com_to|th com|Nduration_too com|again com|back_on com|last com|last_for
com|th_oven consider| convection_is| cooker_work| cook|it_at cooler_than_it| cooler_than| could_Nduration_ago|
could_dinner_happen| could_do| could_i_swap| could_not_hav| could_w|push could_you_put| could|do
could|go count|down crank_it_to| crank|it crept| crept|up crispy|DISH crumb_on_th| crunchy|it
crunchy|it_is crust_is| cub| cut_off|and cut|it_open cut|th_DISH da|will degre_celsius| degre_celsius|i
delay_add| delay_add|Nduration delay|dinner_by delet|timer des| detector| diabet|and diabet|and_is
dial|say_N:oven did_not_hav| did_not_heat| did_you_ever| did_you|get did|i_miss did|not_U dinner_for|Nduration
dinner_happen| dinner_happen|Nduration dinner_roll| dinner|N:few_$ dinner|n dinner|n_to di|and
do_a_THING| do_a_revers| do_at| do_i_carv| do_i_put| do_i_stick| do_i_tak| do_i_turn| do_instead|
do_instead|of do_it|hav do_it|lik do_i|cover do_i|cut do_i|hav do_not_own| do_not_tak| do_not|believ
do_not|know do_not|mind do_not|touch do_not|want do_th|french do_with_th| do_you|mak don_for_th|
don_for|th don_that| don_w|U don|ag don|ag_ago don|all_through don|in_tim door_back_in| door_hang|
door_has| door_has|been door_will|not down_at|N:few down_at|Nclock down_from| down_lik| down_th|U
down_to_th| down_to|N:some do|a_DISH do|gluten do|i_pull do|medium_rar do|not_count do|not_find
do|not_hav do|not_open do|not_think do|not_you drop_of| drop_th_THING| drop_your| drop_your|correction
drop|it drop|out drop|th_green drop|th_whol dry_brin| dry|as_a early_at| early_can| eat_Nduration_mor|
eat_a| els_could_i| els_could| enamel|roaster end_of| end_th_other| end|Nweight end|of_th enough_to_coat|
enough|DISH even|U_it even|in every_last|DISH everyth_in|fahrenheit everyth_metric| everyth_metric|from
everyth_tak| everyth_to|celsius everyth|back everyth|for everyth|i_n everyth|in_th everyth|is_happen
everyth|under everyth|under_control everywher_th_THING| every|Ndate every|tim exactly_do_th|
expect_so| expect|N:some expect|N:some_for expect|in expect|in_march fallen_Nduration| fallen_Nduration|off
family| fancy|do fan|oven_$ fat_cap|down fat_end|of fat_trim|down fat_up_or| fat|THING_$ feel_lik|
few_THING_N:few| fiddl_with_th| fill_m| fill_m|in find_th| finger_off| finish_at| finish_at|N:core
finish_with| finish|mash fir_alarm| first_N:few|hav first_then_down| flam_com|out flam|in flam|in_th
flick_th| flick_th|oven flight_is| flight|is flip|it folk_ar| for_DISH_so| for_N:core|at for_N:few|hungry
for_N:few|person for_N:oven| for_Nduration_i| for_Nduration_whil| for_Nduration|whil for_a|U
for_a|bath for_a|second for_dinner_and| for_help_in| for_m_and| for_m_th| for_my_pregnant|
for_my|P for_that_at| for_th|DISH for_tonight_at| for_tonight|at for_what|reason forerib_N:few|
forerib_N:few|bon forget_th_DISH| forget|th_Nduration forget|what forgot_th|DISH forgot|to_buy
forgot|to_tell for|N:some_and for|Nclock_$ for|Nduration_and for|P_who for|U_is for|eat for|it_or
for|m_i for|m_so for|my for|my_pregnant for|smok for|th_crust for|th_whol for|us found|th_str
french_is_not| fresh_DISH|in fresh|DISH_in fridg|it from_N:few|to from_previous| from_previous|dinner
from_th|begin from_th|top from|ther gang_is| gary|is gas|oven get_in_th| get|N:core get|on_with
get|th_THING get|ther girl_alway| girl|alway giv_it|th giv_m|fahrenheit giv_us|a giv|m_N:few
giv|us glass|THING go_back|in go_in_th| go_near| go_near|shellfish go_to_giv| go_to_tak| go_to|help
go_to|se go_to|wait god_P| golf| gon_off_so| gon_to|N:core gon|way gon|way_past good_N:some_lat|
goos|fat_$ got_N:few|THING got_Nduration| got_THING_to| got_in| got_on| got_to|tak got|THING
got|enough got|enough_DISH got|her got|them go|back go|off_$ go|on_then go|over_N:core granddad_is|
green_DISH_ar| green_DISH|our green_DISH|too green|DISH_DISH grey_all| grey|and_sad grill|
guest_ar_run| guest_cam|U guest_com|Nduration guest|com_Nduration h_can|not h_has_gon| h_has|got
h_is_a| h_is| h_is|don had|N:some halfway|through half|th_THING handl|without handl|without_a
hang|on happen|Nduration happen|Nduration_sooner has_DISH|out has_been_in| has_been_off| has_been_rest|
has_com|back has_diabet|and has_drop| has_gon|down has_got|N:few has_not_got| has_not|mov has|DISH
has|been_on has|gon_$ has|gon_up has|th_flu hat|this haul_th_roast| haul|th_roast hav_N:few|oven
hav_U|th hav_a_boneless| hav_a_rest| hav_any|DISH hav_fallen_Nduration| hav_got_DISH| hav_got_th|
hav_got|th hav_kept| hav_kept|th hav_not|any hav_not|got hav_peel| hav_pull| hav_rub| hav_run_out|
hav_run| hav_salt|th hav_som| hav_their_at| hav_to_run| hav|been_on hav|burn hav|electricity
hav|electricity_again hav|mercy hav|miss hav|ne'er hav|ne'er_a hav|not_N:few hav|not_a hav|taken
hav|turn hear| heat_put_m| heat|and_left held_up|i help_in|THING help_my| help_my|P help_m|now
help_with_th| help_work| help_work|you helper|today her_for|a her_in_th| her_ther| her_ther|is
her_to|help her_w|go her|to_help high_this| high_this|needl him|som his_lip| hit_N:core|whil
hit_th|oven hold_dinner_for| hood_was_on| hot_in| hotter_than|sh hot|THING_$ hot|THING_splash
hous_for| hous_for|Nduration hous|for hous|for_Nduration how_com_it| how_is_your| how_long_it|
how_long|has how_many_ar| how_many_degre| how_many|DISH how_much_butter| how_much|did how_much|longer
how_should| how_thick_do| how_to_carv| how_would|i how|lat how|old how|soon how|warm hurt|h
hurt|h_pour h|go h|want h|was i_DISH_it| i_DISH_out| i_DISH_th| i_am_away| i_am_go| i_am_now|
i_am_out| i_am_way| i_am|never i_am|run i_am|stand i_chuck| i_clean_forgot| i_cut|it i_do_th|
i_fancy|do i_got| i_had_a| i_had_th| i_hav_pull| i_hav| i_hav|been i_hav|burn i_hav|start i_hav|taken
i_meant|to i_never|did i_pull_th| i_put_th| i_remov|it i_say|N:core i_shut_th| i_stick| i_tast_th|
i_tell|you i_turn| i_want|it i_want|th i_was_not| i_was|lay i_was|read i_will_hav| i_will|get
i_would|do i_would|say i_wreck| ic|cream if_h| if_i_am| if_i_can| if_i_hav| if_it|is if_i|tak
if_ther|is if_you_do| if_you|do if|i_can if|you_ar if|you_can ignor| in_Nduration_steep| in_a_glass|
in_and|it in_befor| in_celsius_and| in_celsius_i| in_charg_of| in_coat_on| in_coat| in_coat|on
in_i_hav| in_ic|water in_i|shut in_law_do| in_law_run| in_law|run in_metric| in_metric|so in_my_P|
in_th_box| in_th_thickest| in_they| in_th|car in_th|cor in_th|door in_th|garag in_th|lower
in_th|oven in_you| insid|now instead_of_fresh| instead|of_N:few into_it|and into_my| into_th|DISH
into_th|hot in|Nduration_th in|a_U in|alongsid_$ in|butter_$ in|degre_c in|kilo_$ in|metric
in|metric_so in|phoenix in|th_driveway in|ther_and in|this_plac is_N:few|month is_U_THING|
is_U_in| is_a_gas| is_act| is_after_com| is_a|good is_bon| is_bon|dry is_burn_th| is_burn_to|
is_celsius_i| is_delay_add| is_do_th| is_down|at is_expect_so| is_expect|in is_finish_and|
is_flam| is_go_on| is_grey|and is_hav_a| is_hav|a is_help|with is_her|out is_hurt|h is_in_metric|
is_in|metric is_it_N:few| is_land|on is_lat|so is_lot_ar| is_no_bon| is_not_availabl| is_not|N:few
is_not|answer is_not|complet is_off_i| is_on|for is_out_on| is_over_N:core| is_pass| is_past|N:core
is_pink|THING is_point_at| is_point| is_point|at is_right|U is_roll|and is_scorch| is_smok|pour
is_ston| is_ston|cold is_stuff_with| is_stuff|with is_th_last| is_th_trick| is_that|your is_ther|another
is_this|on is_th|doorbell is_th|roast is_turn|up is_under|THING is_up|to is_vegetarian_and|
is_vegetarian_i| is_well|don is_with| is_work| is|N:core is|Ndegrees:core_in is|a_THING is|alight
is|assembl is|back_on is|banjax is|brought is|burn_th is|caught is|chok is|coeliac is|com_too
is|expect_so is|hav_a is|help_$ is|it_N:few is|it_all is|it_you is|not_answer is|not_for is|not_happen
is|not_mor is|not_right is|not_th is|on_N:core is|open is|raw_in is|reduc is|ring is|sak is|sit_on
is|still_raw is|stuck_at is|tent_loosely is|that_th is|ther_a is|ther_another is|thin_as is|to
is|under_th is|up_at is|warm is|way is|went is|with is|wrap is|wrap_and it_Nclock|instead it_Nduration|sooner
it_THING| it_and_th| it_and|DISH it_at_N:oven| it_at|N:some it_back|how it_back|to it_b|if
it_com_to| it_down_i| it_first_then| it_for_m| it_get| it_giv| it_go_to| it_has_not| it_has|been
it_has|gon it_hav_to| it_is_Ndegrees:some| it_is_alway| it_is_and| it_is_an| it_is_land| it_is_my|
it_is_roll| it_is_sat| it_is_way| it_is|Ndate it_is|cover it_is|fin it_is|overcook it_is|pink
it_m_in| it_must| it_my|P it_open| it_open|and it_out_it| it_out_th| it_out|of it_put| it_slid_off|
it_so|i it_up|to it_with_a| it_with_salt| it_with|THING it|N:core_N:few it|Nclock_instead it|Nduration_later
it|at it|at_all it|back_Nduration it|hit_N:core it|is_Ndate it|is_U it|is_already it|is_bleed
it|is_hot it|is_my it|is_not it|is_overcook it|is_pink it|is_too it|jump_Ndegrees:some it|loud
it|m it|medium_instead it|now it|open it|out_at it|out_th it|rest_for it|saf_to it|said_N:core
it|say_N:few it|should_b it|th_hot it|went_up it|whil_i it|with_a i|am_don i|am_hav i|am_run
i|am_sorry i|am_stand i|am_still i|cover i|gav_you i|get_th i|hav_burnt i|hav_cut i|hav_don
i|hav_got i|hav_had i|hav_it i|hav_kept i|hav_pull i|look_$ i|never_did i|open_th i|reckon_$
i|think_th i|told_you i|will_se i|will_sear i|would_do jaysus_th| jaysus|th_pan jess_is| jess|is
jim| jo_cancell_so| job_in| job|is joint_do|i joint_went_in| joint_went| joint_went|in jo|is
jump_all_over| jump|past kavi|is kavi|is_do keep|it_warm kill_th|timer kindly|inform kindly|remind
knock_it|down knock_th|oven knock|it_down know_it| know|what lagg| last|car_pull last|christma
lat_it| lat_it|is lat_or| lat|on_my lat|so_everyth lat|with_everyth law_do| law_run| law_run|Nduration
law|run law|run_Nduration lay|th leave-in_on_say| leave-in_say| leave-in_say|N:core leav|th_THING
left_th|oven left|off left|off_$ leg_with_th| leo|has leo|has_a less|for less|for_dinner let_m|know
let_us_know| let_us_tak| let|us_get lick_th| lift_it| lift_off_on| lift|it_out light_went|off
light|went_off lik_i_am| lik_th_ic| lik_you| lik_you|said lik| lik|th_ic lik|that_$ lik|water
lik|your lin| list_everyth|i list_for|th load_shedd|start load|shedd lodger|had lodger|had_a
long_as_it| long_as|it long_to| longer|than long|befor long|can_th long|has look_U|to look|U_to
look|after look|after_th lord_hav| lord_hav|mercy los_th|DISH lost|Nduration_$ lot_of| low_to|tak
lower_it_till| lower_it| lower|it_till lunch_at| m_a_shout| m_a_timer| m_and_my| m_da|will
m_how_to| m_in| m_in|N:few m_it|is m_onc_it| m_onc| m_onc|it m_th_missus| m_th_simpl| m_when|it
m_when|th m_when|you m_without_DISH| mak_dinner_Nduration| mak_dinner|N:few mak_it|loud mak_with_m|
mak|DISH_DISH many_ar| many_degre| maria_put| maria_put|th marta| marta|tak marta|tak_over
may|b mean| mean|to medium_rar|ok medium_well_for| medium|U_not medium|well_and metric|from
metric|from_now metric|so metric|so_do middl|get middl|get_to middl|of_th might_b| mik| mind|a
mind|a_DISH minut_left| minut_left|on misheard_m| misheard_m|i misheard|m misheard|m_i miss_N:core|
miss_N:core|so missus|and mix_and| monkey|P monster| mor_tim|for mor|befor_w mor|for mor|guest_com
mor|th_to mouth_P_is| mouth| much_butter| much_go| much_go|on much|did must_eat| must_eat|Nduration
must_hav| must|hav my_P_can| my_P_stev| my_P|do my_P|has my_P|is my_P|mak my_P|on my_THING_say|
my_U|U my_cooker| my_finger_off| my_finger_on| my_finger| my_oven_has| my_oven|will my_own|
my_phon|is my_sous| my_sous|THING my_tod_now| myself|with myself|with_th my|P_insist my|P_never
my|P_on my|back my|choic my|finger my|leg my|old my|own my|parent my|phon_is m|N:some_$ m|alon
m|an m|at_th m|know m|now_$ m|together m|when_Nduration m|with_th n_a|nudg n_a|timer n_for|
n_mor|tim n_to_eat| n_to|catch nagg|m nam|is_U near|shellfish near|th_bon needl_is_point| never_been|
never_mind| never_mind|th never_turn| new|dinner_$ next|job niamh_is| nic_and|golden night_in|
nip|and nip|and_that no_DISH|n no_THING_or| no_THING|to no_bother_don| nobody|is non_of_th|
non_of| non_of|th non_of|that not_N:core|btw not_N:core|sorry not_a_drop| not_availabl| not_brown|it
not_b|do not_carv|it not_clean| not_cover|it not_do|gluten not_eat|THING not_finish|mash not_go_near|
not_gon|in not_heat|th not_know|th not_know|what not_mind|a not_n_to| not_own| not_pull| not_reduc|enough
not_talk|for not_th|THING not_trust|this not_turn| not_turn|th not_what|i noth_in| noth|els
noth|with not| not|answer not|b_right not|befor not|bother_with not|breath_$ not|brown_yet
not|carv not|complet not|complet_som not|crispy not|don_with not|finish_yet not|hear not|keep_up
not|listen not|mad not|out not|out_yet not|quit_$ not|rest_long not|ruin not|say_that not|shut_properly
not|speak not|stand not|stop_bleed not|th not|ther_yet not|want not|what_i now_it|is now_will_return|
now_you| nowher| now|U_had now|and_i now|at_N:oven now|begin now|begin_with now|itself now|leo_from
now|would no|DISH_w no|THING_or no|THING_pan no|U_$ no|bon_Nweight no|bother no|it_roll no|later
no|less no|less_$ no|pink_at no|sear_version no|second number_say| number|on number|say n|DISH_DISH
n|feed n|to_catch of_Nduration_and| of_Nduration|ago of_fresh| of_guest| of_th_P| of_them_can|
of_them|has of_them|in of_th|heat of_th|snow off_in_th| off_it|is off_so|no off_th_THING| off_to_th|
off_what| off|at_N:few off|th_menu of|DISH_in of|U_$ of|roast_DISH of|th_land ok_DISH| ok_i_hav|
ok_not_N:core| ok_to|eat ok|ready_when ok|to_eat old|th on_N:oven_stop| on_U| on_at|N:oven
on_his| on_in|ther on_my|list on_th|dial on_th|other on_th|platter on_tim_U| onto_th|floor
on|N:few on|N:oven_for on|everyth_$ on|sid on|th_motorway on|th_wall on|this_stov on|tim_$
on|to_N:oven option|again option|again_$ or_is|that or_i| or_no| or_should|i or|ther or|ther_will
or|what_$ other_way| other|hav other|hav_th other|way our_lodger|had our|P out_N:few| out_Nduration|ago
out_for|N:few out_from| out_how| out_of_th| out_of_you| out_of| out_of|this out_th_THING| out_th|oven
out_what| out_whol_street| outsid_befor| outsid_befor|Nduration out|and_mov out|for_N:core
out|i_was out|in_hiv out|of_N:few out|of_butter out|of_ther out|overnight out|th_sear out|th_ty
oven_THING_N:some| oven_and_N:few| oven_and_it| oven_and_th| oven_clock_is| oven_door_has|
oven_down_in| oven_down|in oven_from| oven_how| oven_is_alway| oven_is|N:oven oven_light| oven_lik|
oven_off_to| oven_on|to oven_run|N:some oven_sinc|Nclock oven_will| oven_will|not oven|i_hav
oven|is_at oven|is_pack oven|n oven|n_to oven|off_and oven|pack_up oven|run_N:some oven|set
over_N:core| over_N:core|when over|in_th over|what pack|in pac|her pair_of|THING palm|is palm|is_blister
pan_handl|without parchment_is| pass|out past_N:core|without past_medium|U past|m pay| peel|and
peel|and_cut peopl_i|hav per|THING pick|at pick|th_P piec_rib| piec_rib|with piec|w piec|w_hav
pink_all| pink_at| pink_for| pink_in_th| pink_is| pink_so|well pink_w| pink|will_it plan|b_$
plan|h plan|h_has plat|down_at point_at| point_at|N:core point|at point|at_N:core pok|m pop_out|for
power|di power|is prepon| press_it| press|th previous|dinner previous|dinner_is proper_THING|THING
pull_at| pull_at|N:core pull_th_DISH| pull|for_a pull|in pull|it pull|up put_alex_on| put_it|in
put_th|roast put_you_on| put_you|on put|it_back put|m put|th put|that put|your quantity_of|
quick_th|oven r_it| r_it|is r_on| r_on|th ran|out_of rar|as_you raw_THING_in| ready_by|N:oven
ready_for_th| ready_it| ready_it|is real_degre_celsius| reckon_it| reduc|enough reduc|enough_to
rest_long| rest_long|enough rest_of| rest_on_th| rest_sav_him| rest|sav rest|sav_him return|after
return|after_Nduration rib|on_her rib|roast_$ right_DISH| right_DISH|ar right_THING| right_in|th
right_so_what| right_this| right_this|second right_what| right|U right|U_th road_is| roar_at_m|
roast_DISH|too roast_cam_out| roast_has_DISH| roast_is|not roast|DISH_and roast|DISH_has roast|cam
roast|has_DISH roast|has_been roast|hit roast|hit_N:core roast|is_in roast|is_season rob|is
rob|is_com rock_up|already roll|and roll|and_bon roll|ar_out roll|n_Nduration roll|too room_with|
rop|in_th ruin|it run_a_good| run_a|good run_hot_by| run_m_through| run_out_of| run_that_past|
run|N:some_hot ruth|can ruth|can_do r|win_$ sack_off| sack_off|th sack_that_step| saf_to|DISH
said_sh_would| said|it_wrong salt_is| salt_it_last| salt|so salt|so_early salt|th_THING sam_heat_th|
sam|heat sam|heat_th sat_THING_th| sat_THING| sat_down_and| sat_on_th| sav_him| sav_him|som
say_w| say|a_prayer say|i school_and|this school|and scor| scrap_of| scrap_that|last scrap|
scrap|our scrap|th_DISH sear_com| sear_com|last sear_th| second|it_touch serv|N:few_later serv|at_N:core
serv|it_N:oven serv|it_with set_clock_for| set|an set|another set|another_plac set|clock set|clock_for
set|for_th sh_do|not sh_has|got sh_is|a sh_is|read sh_is|run sh_mak_th| sh_still| shall_i_put|
shedd|start shelf_fan| shop|back_by shop|had should_b|medium should|i_get should|sh shout_when|th
shout|at_N:core shout|in_Nduration shov|dinner shov|dinner_back shower_back_in| show|Ndegrees:few
sho|leather shut_th_oven| shut_th|oven sh|get sh|was simpl|DISH simpl|DISH_will sinc_Nclock|it
sinc_Nduration_in| siobhan| sit_down_at| sit|down_Nclock sit|down_at sit|down_is sit|out_$
slic|th_tip slip_and|half slip_on| slip_on|th slip_past_N:core| slow_chopper|THING small_oven|on
smok_detector| smok|detector smok|pour_out so_DISH_it| so_N:some_mor| so_do_it| so_h| so_i|am
so_noth|with so_push| so_scrap| so_scrap|our so_serv| so_serv|N:few so_sh| so_s| so_s|out so_what_is|
so_what|ar so_you|no soft_still_crunchy| som_help_work| someth|and somewher_past_medium| sooner_P_ar|
sooner_than_plan| soon|as sorry_it|is sorry|N:core sorry|i sous|THING so|go so|i_am so|scrap_our
so|w_will speak_in| speak_to| speak|in_celsius stand_in|for stand| stand|it start_Nduration|
start_from| start|a_Nduration start|at_N:few steep|th steep|th_DISH step_by| step_by|step step|N:few
stev|help stev|help_out still_N:few|step still_crunchy|it still_hav_not| still_n| still_on|for
still_raw| still_stuck_on| still_work|on still|n stir| stop_nagg|m storm|took storm|took_th
stov|for_a stov|is_up straight|from_th straight|to str|in_this stuck_on|th stuck_th|THING stuck|
stuck|behind stuck|behind_a stuck|in_th stuck|it stuck|th_THING stuff_is_in| stuff|is such|a
swap_th_cream| swear|it_is switch_everyth_to| switch_th|oven switch|off system_is|shot s| tabl_at|Nclock
tabl_for|Nclock tabl_of| tabl|by_Nclock tak_it| tak_th|roll taken_out|and taken|th_roast tak|DISH
tak|her talk|to_you target_N:core| target_N:core|for target|N:core target|N:core_for tast_th|
teach_m| tell_m_at| tell_m_when| tell_when| tell|m_straight tell|them tell|your temperatur_for|
temperatur| temperatur|am temperatur|am_i temperatur|i text_Nduration| text_Nduration|lat th_DISH_not|
th_DISH|boil th_DISH|went th_N:few| th_P_has| th_P|do th_P|down th_P|hav th_P|to th_THING_from|
th_THING_i| th_THING|Nclock th_THING|get th_THING|hav th_THING|out th_THING|slip th_THING|till
th_U|now th_back|of th_board_and| th_bon|skip th_bottom|and th_box|is th_butter_Nduration|
th_can| th_cast| th_cheap_THING| th_choic| th_cooker_work| th_cream_for| th_cream|for th_current|
th_dinner_by| th_door|open th_electricity_has| th_end_and| th_fella| th_guest_hav| th_guest_is|
th_heart| th_hour| th_hous_for| th_hous|for th_ic|cream th_is|THING th_it_is| th_joint_is|
th_joint_went| th_kettl|on th_last|on th_light| th_light|went th_littl|N:few th_middl|get th_missus|and
th_new|P th_next_th| th_no|sear th_other|ar th_other|hav th_out|THING th_oven_Nduration| th_oven_it|
th_oven_light| th_oven|for th_oven|n th_pac|her th_peel| th_phon_is| th_phon|is th_plug| th_point|of
th_rest|sav th_roast_went| th_roast|cam th_roast|hit th_roll|ar th_r| th_shower|giv th_sh|
th_simpl| th_simpl|DISH th_th_say| th_th_with| th_thick|part th_top|of th_ty|is th_vicar| th_with|
th_with|th th_wrong|THING th_you| than_plan|h than|sh that_THING| that_THING|is that_ar| that_at|Nclock
that_back_i| that_is_th| that_is| that_mak_it| that_past| that_past|m that_step|off that_ther|
that_was|not that_was|th that_was|wrong that_will|do that|again that|from that|is_N:few that|is_how
that|is_them that|last_bit that|now that|went that|went_in that|your their_at|Nclock their|THING
them_back| them_can| them_in|th them_is| them|back_on them|has them|has_drop them|hav_turn
then_down| then_down|low then| then|drop then|drop_it ther_a_plan| ther_ar_N:few| ther_in|th
ther_is_another| ther_is_flam| ther_is|blood ther_is|smok ther_th| thermostat|is ther|another
ther|another_way ther|has ther|is_THING ther|is_a ther|is_any ther|yet thes_DISH_don| they_ar_all|
they_ar|don they_ar|sat they_hav_left| they_hav|all they_will|b they|want_to thick_do| thick_do|i
thickest|part thick|part think|i_am this_at| this_for| this_go_to| this_is_right| this_old|th
this_out| this_oven_run| this_th_out| this|is_a this|needl this|old_th this|plac this|rat th|DISH_U
th|DISH_and th|DISH_can th|DISH_is th|DISH_must th|DISH_to th|DISH_was th|DISH_when th|N:core
th|N:few th|N:few_P th|P_$ th|THING_cut th|THING_go th|THING_hit th|THING_i th|THING_it th|THING_now
th|THING_of th|U_now th|alarm th|barbecu th|beach th|cat th|chicken th|crowd th|cupboard th|dead
th|doorbell_they th|electric_keep th|electricity_is th|fan_off th|fir_$ th|first_N:few th|football
th|fourth th|fridg th|instant-read th|is_THING th|last_on th|lot th|match th|other_oven th|oven_flam
th|phon_i th|platter th|prep th|public th|rest_ar th|rib th|roast_and th|roll_burn th|roll_n
th|second_on th|secret th|shop th|shop_what th|small th|spoon th|stor th|teenager th|trivet
th|turkey th|weather th|whatsit th|whol_gang th|whol_way ti_back|on ti_them| ti_them|back tick|off_DISH
till_th|DISH till|w tim_U|i tim_do|th timer_Nduration_and| timer_it| timer_of| timer_of|Nduration
timer_start| timer|and_th tim|remain tim|remain_$ ti|it_with to_N:oven_th| to_N:oven|U to_U|now
to_bast| to_b|ready to_church|for to_coat| to_coat|a to_eat_by| to_eat|it to_fetch|th to_get|
to_giv| to_hav_a| to_look|lik to_mak| to_miss_N:core| to_my| to_my|P to_m|lik to_pick_up| to_reheat|
to_serv|it to_speak| to_speak|in to_tak|it to_th_bottom| to_turn_it| to_turn|th tod_now| tod_now|U
told|them tom|can tom|can_not tonight_at| tonight_at|N:few tonight|at tonight|at_N:few too_for|
too_high_this| too_low_to| took|m top|of_th top|oven_$ total_N:few| to|DISH_it to|N:oven_now
to|N:oven_th to|b to|boil to|check to|check_th to|fahrenheit_$ to|him to|scor to|temperatur
to|th_DISH to|us to|work trim_and| trim_th| trim|down trim|down_to trim|is trim|is_complet
trust|this turn_around| turn_around|th turn_out_i| turn_th_U| turn_up|to turn| turn|around
turn|around_th turn|it_down turn|th turn|th_timer twic|as ty|is ty|is_sort under|th_truth undo_th|
up_all| up_all|th up_as_w| up_by|N:some up_from_N:core| up_in_th| up_in|flam up_it| up_it|is
up_or| up_ther| up_to|temperatur up_yet| updat_i_hav| upstair_for| upstair_for|Nduration upstair|for
upstair|to_chang up|P_gon up|a_Nweight up|by up|lik_a up|now up|to_N:core us_DISH_out| us_aim_for|
us_do|DISH us_finish| us_for| us_go|straight us_hav|it us_in|th us_know| us_mak_dinner| us_tak|
us_to|b us_up_all| us|DISH_THING us|do_it us|ghe vegetarian_i| very_THING_piec| very|THING
vicar| w_ar_N:some| w_ar_a| w_ar_expect| w_ar_still| w_ar|metric w_can|eat w_got_on| w_go|for
w_hav_decid| w_hav|electricity w_hav|got w_left|off w_mak_U| w_mak_it| w_must_eat| w_on|track
w_run| w_should| w_turn| w_want_to| w_want|it w_will|sear wait_it| wait_it|is wait_on_th| wait_what_is|
wait|on_th walk|in_and want_it_Nduration| want_to_do| want_to|know want|longer want|to warm_th|plat
was_N:core_Nduration| was_Nweight| was_not|listen was_on|N:core was_on|th was_touch| was_touch|bon
wash_th|THING was|hot was|lay was|lay_th was|on_what water_boil|at water_in_th| way_do|i way_through_no|
way|THING way|out_do way|to_get well_for| well|liv well|liv_without went_in_th| went_into|
went_on_at| wer|Nduration_behind whack_it|down what_degre| what_do|medium what_gas| what_gas|mark
what_hav_you| what_if| what_is|on what_i|hav what_should_th| what_temperatur|am what_temperatur|do
what_th_can| what|for_is what|heat what|is_Nweight what|quantity what|quantity_of what|reason
when_Nduration|ar when_can|i when_do|w when_i_was| when_it_hit| when|i_tak when|it_THING wher_did|
wher_do_i| wher_it| wher_should| wher_w_left| which_way_do| whil_i_was| whil_w|wait whil|w_wait
whip_it| whip_it|out who_can| who_eat|what who_has|got who_hav| whol_THING| who|can who|eat
who|want why_did| why_do_it| why_do|w why|can why|can_not why|do_i why|not_DISH will_THING_do|
will_b|N:core will_b|N:some will_b|back will_do_it| will_forget| will_giv_th| will_look| will_look|after
will_not|b will_not|eat will_not|mak will_not|touch will_return| will_return|after will|P will|P_get
will|look will|look_after will|mak will|not_touch will|pass_on will|sit_down wireless_THING_is|
with_THING_and| with_THING|and with_a_THING| with_b| with_medium| with_m|together with_th_fan|
with_th_no| with_th|THING with_you| without_DISH_so| without|a_THING without|th_DISH with|DISH_and
with|THING_and with|him with|paper with|th_fat work_on|this would_P|to would_not_mind| would_you|put
would|THING would|go would|lik_an would|th_THING would|you_do would|you_look would|you_th wreck_th|
wrong|THING_$ w|U_th w|ar w|can_eat w|do_th w|go_for w|got_on w|hav_a w|hav_to w|speak_$ w|will_do
ya_and| yes_N:few| yes_do| yes_so|it yes|w_should yet_i|hav you_ar|out you_got|m you_misheard_m|
you_misheard|m you_plan| you_put_DISH| you_put|DISH you_put|th you_reckon|w you_say_th| you_se|th
you_tak_th| you_tak|th you_talk|in you_tell| your_man| your|boot your|correction your|plan
you|P you|eat you|good you|good_for you|hav_got you|learn you|misheard you|n_a you|put_in you|reckon_$
you|wait zero|str zero|str_in |@100.0 |@100.3 |@102.4 |@103.7 |@114.2 |@114.7 |@119.2 |@121.6
|@134.0 |@134.6 |@138.0 |@139.9 |@147.2 |@149.2 |@15.1 |@17 |@17.1 |@18.3 |@24.2 |@24.5 |@25.6
|@32.10 |@39.2 |@4.12 |@4.6 |@44.4 |@5.3 |@53.5 |@62.2 |@70.4 |@71.1 |@74.2 |@76.0 |@78.2 |@92.4
|@97.2 |DISH_$ |DISH_$_$ |DISH_another |DISH_ar_boil |DISH_ar_burnt |DISH_been |DISH_cream_as
|DISH_crunchy |DISH_for_us |DISH_from |DISH_how_much |DISH_in_a |DISH_in_my |DISH_in_this |DISH_must
|DISH_must_b |DISH_no_n |DISH_nobody_is |DISH_or |DISH_th_$ |DISH_they |DISH_timer_$ |DISH_w_want
|DISH_whatever |DISH_whatever_you |DISH_whil |DISH_will_do |N:core_N:few_littl |N:core_and
|N:core_and_frail |N:core_and_how |N:core_as_i |N:core_b |N:core_dinner |N:core_for_th |N:core_this
|N:core_when_it |N:few_P_will |N:few_early |N:few_later |N:few_mor_now |N:few_oven_$ |N:few_plat
|N:few_short_U |N:few_till_N:few |N:few_what_is |N:oven_N:core |N:oven_already |N:oven_already_$
|N:oven_can |N:some_Nduration |N:some_after |N:some_for_dinner |N:some_hot |N:some_is |N:some_person
|N:some_with_th |Nclock_N:few |Nclock_in |Nclock_it_was |Nclock_what |Ndegrees:few_high |Ndegrees:few_less
|Ndegrees:few_less_than |Nduration_P_is |Nduration_already_$ |Nduration_and_what |Nduration_can
|Nduration_lat_get |Nduration_later |Nduration_tell |Nduration_th_oven |Nduration_to_that |Nweight_leg
|Nweight_leg_of |P_get_ill |P_gon_Nduration |P_insist |P_is_P |P_is_arm |P_is_pregnant |P_put
|P_set |P_sh_is |P_swear |P_who_do |THING_$ |THING_$_$ |THING_DISH_is |THING_all_over |THING_and_it
|THING_at_all |THING_bag |THING_board_now |THING_can_i |THING_cut |THING_fan |THING_fan_oven
|THING_for_U |THING_hit |THING_if |THING_in_her |THING_in_this |THING_is_battery |THING_is_com
|THING_is_sinc |THING_is_stuck |THING_left_in |THING_must |THING_must_b |THING_out_oven |THING_oven
|THING_pan |THING_per_person |THING_salt |THING_splash |THING_stand |THING_th_block |THING_what_temperatur
|THING_whatever |THING_whatever_you |THING_when_it |THING_which |THING_will_i |THING_yes |THING_you
|U_DISH_$ |U_and_U |U_away_$ |U_fir |U_fir_in |U_from_th |U_had_to |U_is_in |U_is_sak |U_not_all
|U_not_ruin |U_this |U_to_m |a_DISH_THING |a_DISH_and |a_DISH_instead |a_Nweight_with |a_THING_with
|a_bag_of |a_chicken |a_crim |a_crisp |a_hot |a_medium |a_nut |a_nut_allergy |a_pen |a_pinch
|a_prayer |a_read |a_rest |a_rest_$ |a_second_tim |a_spoon |a_ston |a_tractor |a_vegan |a_whil_$
|about_$ |about_$_$ |about_it_$ |about_my |about_th_roll |about_to |account_for |across_th_THING
|adult_N:few_P |adult_and_N:few |after_that_$ |again_$ |again_$_$ |again_P |again_P_$ |again_at
|again_what |ago_DISH |ago_sorry |aid |all_i_hav |all_is |all_mad |all_so |all_they |allergy
|along |along_$ |along_$_$ |alway |alway_do |alway_lat |am_don |am_hav |am_so_behind |am_sorry
|am_stand |am_still |an_extra |and_do_th |and_gon_THING |and_is_very |and_left |and_medium_rar
|and_mov |and_mov_to |and_now |and_that_ar |and_ti_back |and_ti_them |another_way |any_$ |any_$_$
|any_DISH_$ |anywher_$ |anywher_$_$ |ar_arriv |ar_b |ar_burnt |ar_charcoal |ar_clean |ar_com_$
|ar_feed |ar_go_to |ar_join_us |ar_sit_down |ar_w_wait |around_th_THING |ask_th |at_N:core
|at_N:core_or |at_N:few_in |at_N:few_to |at_N:few_what |at_N:oven_sharp |at_N:oven_th |at_Nclock_instead
|at_Nduration |at_hom_th |at_th |ay |b_N:oven |b_eat_$ |b_in_th |b_mor |b_pink |b_r |b_when
|b_when_i |b_with |bad_it |beach |becom_N:some |been_U |been_in_th |befor_N:few_$ |befor_i
|begin_with_th |begun_$ |begun_$_$ |behind_$ |behind_$_$ |behind_Nduration |behind_her |behind_with_everyth
|behind_with_th |better_than |between_N:few |between_N:few_and |bit_ok |bleed_$ |bleed_$_$
|boil_at |boil_for |boil_th |boil_th_DISH |bon_N:few |bon_off_and |bon_on |bon_on_it |bon_rib
|bon_rib_roast |bon_sid |bon_took |bottl_of_beer |boy_$ |boy_$_$ |brown_yet |butter_Nduration
|butter_don |butter_don_and |butter_for |butter_for_th |butter_what |button_$ |button_$_$ |by_for
|by_for_th |cam_$ |cam_$_$ |can_not |can_not_i |can_start |can_stop |can_tell |caught_light
|center_$ |center_$_$ |chair_$ |chair_$_$ |chair_and |chang_in |chang_th |charcoal |charger
|chatter |chemo_so |choic_$ |choic_$_$ |chop |clean_forgot |clock_for_Nduration |clos_$ |clos_$_$
|coast |coeliac_my |coeliac_my_P |cold_Ndegrees:few |com_Nduration_too |com_after |com_after_all
|com_back_on |com_off |com_over |complain |complet_som |complet_som_tim |cook_for |county |cow
|crisp_$ |crisp_$_$ |crowd_N:some |crowd_N:some_to |crumb |cycl |detector |dev |di_and |did_a
|did_not_hav |did_not_salt |did_sh |did_that |dinner_Nduration_$ |dinner_back_N:some |do_a_revers
|do_anyth |do_i_mak |do_it_rest |do_leftover |do_my |do_next |do_not_w |do_th_second |do_w_stand
|do_w_tak |do_water |do_water_boil |do_you_truss |doctor |don_Nduration |don_Nduration_ago
|don_and_dust |don_with_it |door_will |doorbell_they |down_a_bit |down_for_Nduration |down_th_U
|down_yet |drank_it |drawer_$ |drawer_$_$ |early_and |early_so |eat_U |eat_by_Nclock |eat_it_$
|eat_with |eat_with_us |electric_keep |electric_keep_go |electricity_again |electricity_is_aff
|enough_to_coat |everyth_go |everyth_in |everywher_$ |everywher_$_$ |everywher_th |expect_so
|extra_for |feral |finish_yet |fit_$ |fit_$_$ |flam |floor_and |flu |for_N:few_hungry |for_Ndate_$
|for_Nduration_i |for_Nduration_what |for_a_final |for_all_of |for_dinner_$ |for_her_$ |for_is_th
|for_th_cor |for_th_tabl |for_this_$ |for_thos |forgotten |fork |from_$ |from_$_$ |from_th_begin
|front_$ |front_$_$ |funny_$ |funny_$_$ |gav_you |get_that |go_out_at |go_over_N:core |go_to_do
|go_to_n |god_$ |god_$_$ |gon_straight |got_it_on |got_on |got_th_green |got_th_oven |grac_$
|grac_$_$ |green_DISH_DISH |guest_ar_com |guest_cam |guy |h_pour |h_pour_th |had_a_kidney |had_half
|had_half_th |handl_$ |handl_$_$ |handy |has_$ |has_$_$ |has_DISH_out |has_a_nut |has_drop_out
|has_fallen_down |has_gon_THING |has_gon_cold |has_gon_hom |has_gon_out |has_got_U |has_had_it
|has_left_th |has_not_been |has_reach |has_th_DISH |hav_N:few_of |hav_been_at |hav_cut |hav_fallen
|hav_finish |hav_his |hav_kept |hav_never |hav_not_kept |hav_not_th |hav_now |hav_set |hav_th_flu
|heat_N:oven |heat_at |help_m_$ |help_m_now |help_out |helper_it |helper_it_is |her_down_to
|her_ther |her_ther_is |high |his_plat_$ |his_steak |his_throat |his_well |his_well_don |hot_it
|hot_it_is |hot_sh |hot_sh_is |hot_this |how_it_was |how_to_carv |i_am_on |i_at |i_bast |i_bast_it
|i_hav_been |i_heard |i_lat |i_swap |i_tell |i_would_say |i_wreck_it |ic_$ |ic_$_$ |ic_in |ic_water
|if_i |if_w_at |in_Nduration_i |in_Nduration_that |in_a_bit |in_alongsid |in_alongsid_$ |in_butter
|in_celsius_i |in_flam_$ |in_hiv |in_i_am |in_i_hav |in_is |in_it_roll |in_law_$ |in_march_so
|in_mind |in_now_$ |in_th |in_th_box |in_th_freezer |in_th_shower |insid_now |instead_of_DISH
|internal_temperatur |invit_themselv_$ |is_N:core_i |is_N:few_month |is_N:some_in |is_Ndegrees:few
|is_THING_THING |is_THING_lover |is_a_THING |is_alight |is_another_N:few |is_any |is_asleep
|is_bring_N:few |is_chok_$ |is_coeliac_$ |is_conk |is_conk_out |is_dead_$ |is_do_a |is_early_can
|is_faint |is_fre_from |is_giv_m |is_go_$ |is_happen_at |is_her_$ |is_her_now |is_hurt_h |is_in_i
|is_jump_all |is_lat |is_lot_ar |is_lumpy_$ |is_m_and |is_not |is_not_a |is_not_don |is_not_for
|is_not_on |is_not_well |is_oven |is_pack_up |is_past |is_read_N:core |is_remain |is_rock |is_sat_down
|is_scorch |is_serv |is_shap |is_slow_and |is_sort_N:few |is_still_at |is_stuck_at |is_taken_th
|is_th_N:few |is_th_first |is_th_reason |is_them |is_tough_as |is_very |is_warm |is_wrap |is_wrap_and
|it_N:oven_or |it_Nclock_instead |it_Nduration_later |it_already_$ |it_b_$ |it_forward |it_from_th
|it_how_long |it_i_am |it_in_kilo |it_is_past |it_last_night |it_m |it_ok_to |it_out_for |it_rar_$
|it_ready |it_roll_off |it_till_N:core |it_tonight |it_will_not |joint_in |jok_$ |jok_$_$ |jump_Ndegrees:some
|kaput |kidney |land_on |last_for |last_for_m |lat_by |lat_that |lat_they |lat_with_th |later_$
|later_$_$ |later_than |laugh_$ |laugh_$_$ |leather_$ |leather_$_$ |leo_from |leo_from_upstair
|li_i |lift_off |light_$ |light_$_$ |lik_a |lik_it_$ |lik_th_cow |liv_U |liv_without_DISH |long_to_go
|longer_$ |longer_$_$ |look_after |look_after_th |lost_N:few |lost_a |lost_power |lot_$ |lot_$_$
|m_an |m_now_$ |m_onc_it |m_straight |m_which |m_with |mak_it_N:core |mak_with |mark_$ |mark_$_$
|matter_$ |matter_$_$ |mean_$ |mean_$_$ |medium_cook |medium_instead |medium_rar_mean |mercy
|meter |metric_peopl |metric_peopl_so |metric_so |metric_so_do |misheard |misread_th_label
|miss_$ |miss_$_$ |miss_out |missus_will |monkey |mor_person |much_salt |must_b_bust |must_eat
|my_arm_$ |my_breath |my_thumb_it |my_thumb_open |n_another_go |n_feed |n_for |n_to_bath |n_to_check
|n_to_teach |nadia |nam_$ |nam_$_$ |nam_is_U |ne'er |ne'er_a |new_th_joint |next_door_is |next_on_th
|next_then |nic_and_golden |night_at |no_it_roll |not_answer |not_count |not_don_b |not_don_with
|not_eat_THING |not_finish_th |not_got |not_got_to |not_hav_nut |not_hear |not_mean |not_open
|not_open_th |not_put_that |not_ruin |not_start |not_th_THING |not_think |not_turn_th |notion_how
|nudg_in |nudg_in_Nduration |number_say |number_say_N:core |of_N:few_$ |of_Nduration_$ |of_Nweight_$
|of_THING_Nweight |of_a_THING |of_all |of_th_fridg |of_them_DISH |of_them_can |of_ther |of_you_$
|off_th_board |off_th_worktop |off_with_th |ok_for_th |old_th |on_N:some |on_Ngas-mark |on_Ngas-mark_$
|on_ar |on_for_Nduration |on_hav |on_my |on_my_THING |on_phew |on_that_$ |on_this_stov |on_this_th
|on_was |on_yet_$ |onc_and |open_for_Nduration |operation |or_DISH |other_oven |out_U |out_all
|out_at_N:some |out_for_Nduration |out_for_a |out_from |out_how |out_i_was |out_my |out_of_butter
|out_of_her |out_on_m |out_on_th |out_sinc_Nclock |out_th |out_th_schedul |out_that |oven_Ngas-mark
|oven_do |oven_flam |oven_glov |oven_go |oven_go_up |oven_on_now |oven_that_is |overcook |pack_in
|pair_of_THING |parcel |parchment_is |past_th |pat_it |pat_it_dry |peel_i |peeler |peopl_hav
|pet_has |pet_has_chest |phoenix |phon_i |pink_at_all |pink_for_her |pink_in |plac_$ |plac_$_$
|plan_U |point_of |press_$ |press_$_$ |puff |pull_into |pull_into_th |quantity |quantity_of
|quit_$ |quit_$_$ |r_N:core_$ |ran_out |rar_P |rar_ok |rar_ok_for |rather_than_N:few |ready_to
|recip |reckon_th |remain_$ |remain_$_$ |rest_ar |rest_it_for |rest_long |rest_long_enough
|return |rib_$ |rib_$_$ |rib_THING |rib_U |risk |roast_DISH_on |rock_up |roll_DISH |roll_burn
|roll_n |ruin_it |run_at_N:oven |saf_to |said |said_N:few |said_i |said_no |salmon_first |salmon_first_that
|salt_it_last |sat_down |sat_on |sat_out |sav_him |sav_him_som |say_DISH |say_Ndegrees:core
|say_about |say_they_ar |say_to_th |scrap_our |scratch_$ |scratch_$_$ |scream_$ |scream_$_$
|sear_first_$ |sear_version |season_$ |season_$_$ |second_on_$ |secret |shedd |shop_is_shut
|shop_what |should_do |should_i_get |should_i_pull |shov_it_back |show_Ndegrees:few |shut_properly
|sid_$ |sid_$_$ |sid_fewer |sid_fewer_los |sid_up |sinc_it |sinc_it_was |sinc_quarter |sit_in_th
|slip_and |small |so_do_it |so_everyth_slip |so_noth |so_s |so_s_out |so_scrap_our |sofa |som_DISH_DISH
|som_roast |som_roast_DISH |sooner_$ |sooner_$_$ |sorry_it |speaker |squeaky |star |stay_hom
|step_back |stick_$ |stick_$_$ |stop_bleed |stov_is |str_in_this |stray |strik_N:few |such_a
|sur_i |switch_on |tablespoon_of |tak_THING_$ |tak_it_medium |taken_their |taken_their_seat
|tell_$ |tell_$_$ |tent_loosely |th_DISH_THING |th_DISH_in |th_DISH_nobody |th_DISH_that |th_DISH_whil
|th_Nduration |th_P_up |th_THING_back |th_THING_under |th_U_N:core |th_back_of |th_bast |th_beach
|th_bon_Nweight |th_bottom_$ |th_butter_and |th_centr_$ |th_choic |th_church |th_clock_Nduration
|th_crumbl |th_dinner_Nduration |th_door_and |th_drawer |th_drawer_$ |th_even |th_fat_for |th_floor_and
|th_football |th_french |th_fridg_at |th_handl |th_high |th_hob_$ |th_hot_blast |th_ic_cream
|th_it_is |th_job_$ |th_land |th_land_$ |th_last_of |th_last_on |th_liv |th_liv_room |th_lot_of
|th_middl_and |th_out |th_oven_as |th_pac_her |th_plot |th_pull |th_rar |th_rest_they |th_restaurant
|th_roast_hit |th_roll_i |th_ros |th_scor |th_sear_altogether |th_shop_$ |th_tabl_at |th_timer_on
|th_to_go |th_trick |th_trifl |th_water_$ |th_way_$ |that_far |that_from |that_is_at |that_is_fin
|that_on |that_phon |that_temperatur |that_yet |ther_another |ther_another_way |ther_no |ther_yet_Nduration
|thes |they_want_it |thick_$ |thick_$_$ |thin_as_dishwater |think_th |this_and |this_bit |this_stov
|thos |thought |thread |throat_$ |throat_$_$ |ti_this |tick_$ |tick_$_$ |till_N:few_i |tilly
|tim_do |tim_ther |tim_ther_is |to_N:core_i |to_N:few_peopl |to_N:oven_Nduration |to_N:oven_and
|to_N:oven_now |to_N:some_$ |to_Nclock_$ |to_buy |to_catch |to_chang_Nduration |to_check |to_church
|to_collect_th |to_eat_$ |to_f_th |to_giv_m |to_god_$ |to_help_put |to_it_$ |to_lif |to_m_lik
|to_medium_well |to_nut_$ |to_put_th |to_regular |to_regular_bak |to_run |to_sit_down |to_tak_a
|today_Nduration |told_$ |told_$_$ |told_him |told_you |too_$ |too_$_$ |took_th_lin |touch_bon_$
|track |train_$ |train_$_$ |trip |trip_$ |trip_$_$ |turn_around |turn_around_th |twic_as |under_N:core
|under_whatever |up_N:some_so |up_and_in |up_by_N:some |up_flam |up_say |up_to_room |updat_$
|updat_$_$ |upstair_to_get |us_$ |us_$_$ |us_THING_THING |us_a_shout |us_at |us_do |us_get
|usual |w_ar_eat |w_do_about |w_hav_brought |w_land |w_left |w_los |w_los_th |w_mak_up |w_on_track
|w_rescu |w_rescu_it |w_should_hav |w_still_good |was_N:core_when |was_on_N:core |water_in
|water_in_th |way_i |way_out_do |way_past |we_bit |weigh_Nweight_$ |went_up |went_up_to |wer_not_to
|wer_th |what_i_could |what_it_is |when_it_THING |when_w_ar |when_w_get |when_w_hit |when_you_check
|whil_w_wait |whol_plan |whol_th_back |whol_tim_$ |whol_way |will_DISH |will_b_ther |will_do_it
|will_eat_early |will_get_to |will_giv |will_mak |will_pass |will_put |will_sear_at |will_want_it
|window_$ |window_$_$ |wip_th |with_everyth_$ |with_th |without |without_a_mitt |without_tell_m
|work_again |worri |would_hat |would_not_believ |would_tak |would_you_suggest |wrap_and_in
|wrong_th |year_and |year_old_at |yet_it |yet_it_is |yet_sorry |yet_th_DISH |yet_what |you_$
|you_$_$ |you_b |you_check |you_dar |you_ever |you_imagin |you_learn |you_look_at |you_run_that
|you_say_$ |you_talk
-11 #after1 @111.0| @128.4| @144.3| @28.7| @3.3| @42| @50.3| @90.2| DISH_DISH_all| DISH_DISH_less|
DISH_DISH_my| DISH_DISH_tast| DISH_DISH|is DISH_and| DISH_and|it DISH_ar_a| DISH_ar_nic| DISH_ar_wedg|
DISH_ar|THING DISH_ar|wedg DISH_boil_and| DISH_cook_down| DISH_cream|as DISH_did_not| DISH_did|not
DISH_for_P| DISH_from|th DISH_go|off DISH_has_not| DISH_in_oven| DISH_into_th| DISH_is_under|
DISH_i|hav DISH_i|will DISH_less| DISH_less|faff DISH_m_alon| DISH_nowher| DISH_nowher|near
DISH_no|DISH DISH_off_th| DISH_or|DISH DISH_out|sinc DISH_oven| DISH_over| DISH_roll_too| DISH_roll|too
DISH_sh| DISH_so|cross DISH_so|far DISH_ther|is DISH_this|year DISH_th|bon DISH_till| DISH_top|
DISH_top|and DISH_went| DISH_would|go DISH|DISH_P DISH|DISH_less DISH|DISH_my DISH|N:oven DISH|THING_DISH
DISH|another_Nduration DISH|ar_charcoal DISH|ar_glaz DISH|as_well DISH|cream_on DISH|halv_s
DISH|has_gon DISH|in_Nclock DISH|in_and DISH|in_for DISH|into DISH|into_th DISH|is_don DISH|is_still
DISH|is_under DISH|it_on DISH|no_DISH DISH|over DISH|ready_they DISH|so DISH|th_hous DISH|th_oven
DISH|to_com DISH|went_off DISH|will_not N:core_already_and| N:core_and| N:core_and|th N:core_as_i|
N:core_as| N:core_at_th| N:core_for_th| N:core_forgot_to| N:core_for|th N:core_i|hav N:core_not|N:some
N:core_obviously| N:core_obviously|not N:core_stop| N:core_tell| N:core_tell|m N:core_then|i
N:core_too_hot| N:core_well|ill N:core_when_you| N:core_will| N:core_without| N:core_would|you
N:core_year|old N:core|already_and N:core|as_i N:core|check N:core|in_no N:core|in_phoenix
N:core|last N:core|on_th N:core|so N:core|when N:core|whil_i N:core|whil_rest N:core|whil_w
N:few_P_so| N:few_THING_th| N:few_U| N:few_and_i| N:few_and_th| N:few_and|it N:few_ear| N:few_ear|and
N:few_gas| N:few_gas|r N:few_her_N:few| N:few_in_th| N:few_lat| N:few_mor|sid N:few_mor|th
N:few_oven_and| N:few_steady|temperatur N:few_that|is N:few_to|go N:few_will| N:few_with|th
N:few|THING_$ N:few|adult_and N:few|for_dinner N:few|guest_ar N:few|later N:few|mor_guest N:few|other
N:few|plac N:few|wher N:few|with_th N:oven_Nduration| N:oven_afternoon| N:oven_afternoon|f
N:oven_and|i N:oven_at|N:oven N:oven_can|you N:oven_for|th N:oven_in|ther N:oven_ok| N:oven_on_th|
N:oven_or| N:oven|U N:some_it|is N:some_lat_on| N:some_with| N:some|U N:some|at_N:oven Nclock_and|i
Nclock_and|what Nclock_for|dinner Nclock_how| Nclock_in|th Nclock_on|th Nclock_sh| Nclock|N:some
Nclock|tonight Nclock|w Ndate_Nclock|sam Ndegrees:core_in|th Ndegrees:core|it Ndegrees:few_too|high
Ndegrees:few|in Ndegrees:few|too Ndegrees:some| Ndegrees:some|hot_$ Nduration_U_is| Nduration_ago_it|
Nduration_and_what| Nduration_and|w Nduration_befor_th| Nduration_how_much| Nduration_is|it
Nduration_it|is Nduration_i|am Nduration_i|hav Nduration_i|will Nduration_later_than| Nduration_later_would|
Nduration_off_and| Nduration_start|wait Nduration_steep_th| Nduration_th|match Nduration_to|that
Nduration|ago_now Nduration|already_$ Nduration|back_i Nduration|behind_sorry Nduration|countdown
Nduration|do_not Nduration|later_than Nduration|later_would Nduration|left_on Nduration|off_$
Nduration|on_dinner Nduration|timer_and Nduration|to_a Nduration|to_check Ngas-mark_now|instead
Ngas-mark|now_instead Nweight_rib|roast Nweight_stand_rib| Nweight_without| Nweight_without|bon
Nweight_with|N:few Nweight|of_rib Nweight|rib_of P_and_th| P_and|i P_ar_join| P_drank| P_drank|it
P_eat_it| P_how| P_in_law| P_is_ask| P_is_eat| P_is_run| P_is|chok P_is|taken P_i|am P_let|
P_lik|her P_noth_in| P_noth| P_noth|in P_pet| P_pet|has P_ray| P_set|th P_th|DISH P_th|roast
P_took| P_want_to| P_wher| P_who|do P_will_hav| P_will|not P|alway_did P|at_th P|bridi P|got_her
P|has_com P|insist P|is_THING P|is_eat P|is_peel P|is_start P|lik_her P|of P|sleep P|squint
P|squint_at P|stev P|stev_help P|vot_and P|w THING_DISH|is THING_THING_Ndegrees:few| THING_THING|is
THING_a_joint| THING_and_a| THING_and_put| THING_and|DISH THING_and|THING THING_and|all THING_and|w
THING_and|what THING_a|roast THING_by|th THING_do|it THING_for_th| THING_from|oven THING_has_com|
THING_how| THING_in_Nduration| THING_in|a THING_is_scorch| THING_is_tough| THING_is|battery
THING_is|don THING_is|finish THING_is|not THING_is|ready THING_it_in| THING_leg|with THING_let|
THING_let|us THING_lover| THING_lover|com THING_off_th| THING_on_th| THING_salmon_first| THING_say|th
THING_slip|and THING_stand| THING_that|U THING_to_ty| THING_w_ar| THING_was_touch| THING_what_is|
THING_what_temperatur| THING_when|it THING_with_salt| THING_with|a THING_would_you| THING_yes|or
THING|Nduration_$ THING|Nweight_and THING|Nweight_bon THING|THING_N:some THING|THING_Ndegrees:few
THING|a_joint THING|and_N:few THING|ar_cover THING|com_out THING|counter_$ THING|full_$ THING|has_fallen
THING|has_gon THING|has_left THING|her_a THING|is_act THING|is_ly THING|is_still THING|now_for
THING|now_leo THING|pan_is THING|per THING|roast_Nweight THING|say_Ndegrees:core THING|should_b
THING|till_N:few THING|went_in THING|wer_not U_DISH|halv U_can_not| U_drop| U_has_got| U_in|th
U_is|not U_is|what U_it_was| U_i|do U_part| U_part|say U_that_was| U_th|roast U_to|m U_w_will|
U_wher|th U_who| U_with_th| U|DISH U|Ndegrees:few U|Ndegrees:few_less U|U U|and_th U|collaps
U|com_out U|drop U|has_gon U|is_N:few U|is_U U|is_mak U|is_sort U|say_U U|ther_is U|want_his
U|with_th ^_DISH_hav| ^_DISH_what| ^_DISH|boil ^_DISH|i ^_N:core_at| ^_N:few|burner ^_N:few|extra
^_N:some|at ^_Ndate_at| ^_Ndegrees:few| ^_Nduration_lat| ^_Nweight|rib ^_P_ar| ^_P_lik| ^_P_will|
^_P|eat ^_P|ray ^_THING|leg ^_THING|slip ^_U_i| ^_U_my| ^_U|and ^_^_Ndegrees:few| ^_^_absolutely|
^_^_alarm| ^_^_bin| ^_^_bram| ^_^_brb| ^_^_call| ^_^_carry| ^_^_chuck| ^_^_current| ^_^_ditch|
^_^_excus| ^_^_extractor| ^_^_flam| ^_^_fus| ^_^_hit| ^_^_hot| ^_^_ic| ^_^_if| ^_^_ill| ^_^_job|
^_^_lay| ^_^_mass| ^_^_never| ^_^_now| ^_^_nudg| ^_^_pat| ^_^_peopl| ^_^_phon| ^_^_pok| ^_^_reset|
^_^_shoot| ^_^_skip| ^_^_slic| ^_^_slid| ^_^_soup| ^_^_steady| ^_^_stuck| ^_^_swap| ^_^_tell|
^_^_they| ^_^_throw| ^_^_till| ^_^_took| ^_^_turn| ^_^_undo| ^_^_walk| ^_^_went| ^_^_wher|
^_^_wip| ^_a_Nweight| ^_absolutely| ^_absolutely|not ^_alarm| ^_alert_at| ^_alex_can| ^_all|sort
^_anyth|i ^_bin| ^_bit_behind| ^_boil|water ^_bram| ^_brb| ^_bung_som| ^_burnt_th| ^_butter_is|
^_call| ^_carry| ^_chang_to| ^_chuck_a| ^_chuck| ^_clear|th ^_could|i ^_current_has| ^_current|
^_cut_it| ^_cut_th| ^_ditch| ^_do_a| ^_do_not| ^_do|th ^_do|you ^_everyth_is| ^_excus| ^_extractor|
^_fat_is| ^_flam| ^_forget|th ^_for|my ^_fus| ^_go_for| ^_guest_hav| ^_guest|hav ^_hav|you
^_hit| ^_hold|dinner ^_hold|th ^_hot| ^_hot|fat ^_i_bought| ^_i_do| ^_i_n| ^_i_would| ^_ic|
^_ic|water ^_if| ^_ill| ^_insid|temperatur ^_is_this| ^_is|N:oven ^_is|not ^_is|th ^_it|went
^_i|alway ^_i|do ^_i|must ^_i|switch ^_i|turn ^_i|us ^_job| ^_lay| ^_leave-in_THING| ^_lit_th|
^_load_shedd| ^_m_P| ^_m_and| ^_m_th| ^_mak_a| ^_mass| ^_min_is| ^_my_grandson| ^_my|sleev
^_n_to| ^_never| ^_next_week| ^_now| ^_no|fresh ^_nudg| ^_number|N:few ^_out_sh| ^_out|at ^_oven_run|
^_oven|door ^_oven|pack ^_pass_on| ^_pat| ^_peopl| ^_peopl|ar ^_phon| ^_pok| ^_power|cut ^_priya|can
^_pull|it ^_push_dinner| ^_put_th| ^_reset| ^_serv_it| ^_set_a| ^_set_m| ^_set|th ^_shoot|
^_should_it| ^_should|i ^_shov_dinner| ^_skip| ^_slic| ^_slid| ^_sorry|that ^_soup| ^_steady|
^_still|N:core ^_strik_th| ^_stuck| ^_stuck|th ^_supper_at| ^_swap| ^_switch_off| ^_tell| ^_th_heat|
^_th_light| ^_th_toddler| ^_ther_has| ^_they_do| ^_they_hav| ^_they| ^_they|do ^_this_oven|
^_throw| ^_th|U ^_th|bon ^_th|rest ^_th|roll ^_th|second ^_till| ^_took_th| ^_took| ^_tough_as|
^_turn_down| ^_turn| ^_undo| ^_w_went| ^_walk| ^_warn_m| ^_went| ^_whatever_you| ^_when_is|
^_wher| ^_wher|did ^_which_way| ^_who_has| ^_who_want| ^_wip| ^_would_not| ^_w|eat ^_w|tak
^_w|took ^_yes_go| ^_yes_that| ^_yes|i a_N:few|bon a_Nweight_forerib| a_Nweight_with| a_Nweight|prim
a_bit|lat a_blackout| a_blackout|her a_board| a_board|school a_final|N:core a_good_N:some|
a_greas| a_greas|fir a_half_THING| a_nic_bit| a_nudg_in| a_roast|without a_shout_when| a_singl_DISH|
a_singl|DISH a_tabl_of| a_timer_of| a_warm|plat a_warn| a_we|bit about_my|oven add_Nduration_to|
add_a| add|th_green after_Nduration|to after_THING| after_THING|it after_th|sear afternoon|
afternoon|f afternoon|f_that ag_to| again_at| again|i ago_it| ag|ago ag|this ag|this_trim alarm_is|go
alarm|in alert_at|N:core alex_can| all_ar| all_ar|sit all_dizzy| all_dizzy|and all_guest| all_guest|ar
all_i_hav| all_in_coat| all_in_th| all_it| all_i|hav all_mix| all_mix|up all_over_my| all_sat|down
allergic|to_DISH allergic|to_nut all|THING_below all|in_th all|land all|right_$ alon_unless|
alon_unless|it alway_com_in| alway_run_N:some| am_a| am_behind_by| am_bin| am_bin|th am_do|this
am_hav_a| am_leav| am_miss| am_not_mak| am_not|go am_on_th| am_put| am_run_Nduration| am_still|N:few
am_yet| am_yet|to amount|of am|a_good am|afraid am|get am|go_to am|hav am|sorry_to am|well
am|well_behind an_THING_on| an_THING| and_DISH_ar| and_N:few_of| and_N:few|other and_THING|is
and_U|Ndegrees:few and_am| and_am|i and_cancel_that| and_cancel|that and_can|i and_down|th
and_drop| and_hav|not and_her| and_if_i| and_if|i and_in| and_is|N:core and_is|it and_it|is
and_i|hav and_kilo_i| and_look|at and_m|with and_oven|is and_sam|is and_set|a and_shop| and_shop|list
and_should|i and_skip_th| and_slow_then| and_swear| and_swear|it and_tell| and_ther|is and_th|shop
and_trim| and_what_temperatur| and_what|temperatur and_w|can and_w|will and_you|can and|DISH_in
and|N:few_THING and|can_not and|find and|it_THING and|not_N:few and|oil and|put_th and|roar
and|rough and|rough_up and|tail and|th_U and|will_not another_Nduration_i| another|plac an|Nweight
an|THING_$ ar_N:few_THING| ar_N:few|of ar_Nduration|too ar_break| ar_break|up ar_clean|out
ar_do_th| ar_feed_th| ar_metric| ar_metric|peopl ar_nic| ar_nic|and ar_not|don ar_not|warm
ar_on_th| ar_on|to ar_out_of| ar_out|and ar_pay| ar_peel_and| ar_sit_down| ar_start| ar_start|to
ar_still_cold| ar_still|pal ar_stuck|behind ar_w_look| ar_wedg| ar_wedg|and ar_w|go ar_w|talk
around_th| around_th|THING ar|Nduration_lat ar|Nduration_off ar|a_no ar|expect ar|her_well
ar|miss ar|miss_THING ar|out ar|out_of ar|roll_DISH ar|start_to ar|starv_$ ar|still_raw ar|w_eat
ar|w_look ar|w_run ar|w_still ar|wedg ar|wedg_and as_long_as| ask_how| ask_th|THING ask|how_long
at_N:core_then| at_N:core|in at_N:core|th at_N:few_is| at_N:oven_DISH| at_N:oven|now at_Nclock_it|
at_Nclock|N:some at_Ndegrees:core_and| at_a_board| at_all_in| at_my_P| at_m|onc at_th_stor|
at_th|U at_th|sam at_what_temperatur| at|N:core_how at|N:core_let at|N:core_no at|N:core_or
at|N:core_right at|N:core_th at|N:core_what at|N:few_in at|N:few_on at|N:few_sharp at|N:few_so
at|N:few_what at|N:oven_for at|Nclock_how at|Nclock_sh at|easter at|th_back at|this_rat away|to_th
away|up a|DISH_and a|THING_pan a|U_U a|bell a|bit_pink a|cut a|drop_of a|fever a|full a|leave-in
a|leave-in_THING a|liar a|lot a|nap a|not a|number a|pinch a|proper_THING a|read_N:core a|roast_without
a|row a|second_tim a|spoon a|tractor b_N:core| b_N:few|now b_at_th| b_back|directly b_do|with
b_faff_with| b_her|at b_if| b_near| b_near|th b_on_my| b_on|my b_pink| b_ready|by b_well| b_well|don
b_with| back_it|was back_that| back|directly back|directly_Nduration back|i back|in_N:core
back|thank back|thank_god bad_new_th| bak_from| bak_from|convection bang|on_N:core bar_of|
bar_of|THING bar|of bar|of_THING been_N:core_obviously| been_blad| been_blad|tenderis been_on_sinc|
been_on|sinc been_on|th been_put| been_rest|th been_told| been_told|Nclock been_vot| been_vot|down
been|out beep_m|in befor_th_next| befor|N:few_so begin_with_th| behind_a|tractor behind_with|
behind|P behind|sorry believ_this| believ_this|THING best_way_to| beth| between| bin_th|DISH
bin_th|timer bird_N:few|guest bit_of_a| bit_of|THING bit|lat_in blackout| blackout|her blast_to_begin|
bleed_and| board|now_$ board|school board|school_and bob_is|your bob|is boil_and|rough boil_for|DISH
boil|for_DISH bon|in bother_ty| bother_ty|it bother_with|DISH bother|ty bother|ty_it bother|with_DISH
bottom_of| bottom_of|th bought_a_Nweight| bram_is| breaker|trip_and bring|his broken_so| brought|th_oven
br|dinner br|dinner_forward br|it bum|on bung_th|DISH burner_work_on| burnt_all| burnt_all|THING
burnt_my| bus| butter_with| butter_with|DISH butter|for_th butter|gon butter|gon_ther butter|is_mad
butter|step_$ buzz_m| buzz|m by_mistak| by_th|U b|N:some_person b|away b|com b|cook b|for_th
b|her b|in b|mor b|quiet_for call_and| call|and_they call|them can_hear| can_i_get| can_i_put|
can_it_sit| can_i|swap can_i|tak can_my|toddler can_not|keep can_sit_down| can_tell| can_you_fit|
cancel_th_Nduration| cancel_th| cancel|th_roll can|hear can|i_b can|i_do can|i_put can|i_swap
can|not_com can|not_cop can|not_se can|not_stand can|you_wait carry_on| carv_it|straight carv|and
carv|it car|pull_into chang_their| chang_their|mind chang|in chang|their chang|their_mind charg_of|th
check_tell| check_tell|m check|DISH_$ check|again check|again_and chicken_b_back| chuck_it|on
chuck_som_DISH| chuck|som_DISH clean_out| clear|th_THING clock_is|tick coeliac_my_P| cold_on_th|
cold_on|m collect|th colour_on|it com_for| com_in|Ndegrees:some com_off| com_so| com_th|oven
com_to_N:core| com_to|N:core com_with_a| company_pull_in| complet_som_tim| com|Nduration_after
com|after_this com|again_$ com|down_with com|out_$ com|out_yet com|with_Nduration cook_down|
cook_down|and cook_so| cooker|run cooker|run_Ndegrees:some cook|it_through correction|N:core_$
cor|temperatur_Ndegrees:core could_not|get could_you|plan could|dinner count|down_Nduration
count|m cream_i_do| cream_so| cream|as cream|as_well cream|w cream|w_hav crept_up| crept|up_to
cross_that| cross_that|off cross|N:core cross|that cross|that_off cupboard_is_bar| cupboard|is
cupboard|is_bar cut_into| cut_th|DISH cut_th|bon cut|into_it cycl_off| cycl_off|and dav_turn|
dav_turn|th delay_dinner_by| delet|what destroy|it dial_and_swear| did_not|turn did_th|U did|get
did|i_ruin did|not_mean did|th_U did|you_do did|you_get did|you_se dinner_Nduration|later dinner_at_th|
dinner_is_plan| dinner_i| dinner|Nclock_$ dinner|forward_Nduration dinner|up display|has dizzy|
dizzy|and dizzy|and_sam do_DISH_go| do_a_roast| do_about_th| do_i_set| do_i|put do_my_THING|
do_not_expect| do_not_find| do_not_lik| do_not|chang do_not|lik do_not|speak do_not|think do_th|DISH
do_th|THING do_th|oven do_th|second do_without| do_w|do dog_out_for| dog|THING dog|THING_th
dog|out_$ don_for|P don_i_hav| don_your| door_it| door_was| door_will_not| door_will| door|hang_open
door|of_th down_for_th| down_in|th down_on_th| down|Nduration_earlier down|and_cool down|th_road
down|to_a do|fahrenheit_celsius do|i_bast do|i_cut do|i_get do|instead do|instead_of do|not_bother
do|not_mak do|not_own do|th_second do|w_do do|water do|water_boil do|without_th do|you_reckon
drink|first drink|first_so drop_to|N:core drop_to|N:oven drop|her duck_out| duck|out_for each|
early_at|N:few early_bird_N:few| early_can_w| early_so| ear|and ear|and_out eat_Nduration|befor
eat_Nduration|sooner eat_THING_that| eat_early_at| eat|at_N:few eat|with eat|with_us electric_keep_go|
electricity_has|gon electricity|sinc electric|keep electric|keep_go element|blew element|blew_actual
els|could_i end_th_count| end|th_other enough_for_th| even|w_din everyth_is|go everyth|go everyth|is_go
everyth|to_celsius every|singl expect_in_march| expect|m expect|m_for explain_to| explain_to|m
f_that_is| faff_with| faff_with|french fallen_behind| fancy| fat_is_caught| fat|THING fat|for
fat|for_th fat|off_$ fat|this_minut fat|trim_down ferry|is few|minut final|N:core find_in_th|
find_th|THING finger|is finger|is_bleed finish_at_N:few| finish_with_th| finish|th_trim first_P|
first| first|N:few_$ first|that first|that_is fit|DISH fit|DISH_into flat|out flat|out_her
flip|th folk_will| for_Nclock_on| for_P_who| for_is|th for_m_it| for_m_so| for_th_last| for_th_whol|
for_th|P forget_th|DISH forgiv_m|without forgot_to|tell forgot|to_say for|N:few_hungry for|Nduration_whil
for|medium_well for|new for|new_year for|th_DISH for|th_green for|th_sear for|thos for|your_P
french|is_not from_N:core|to from_her|then from_now_till| from_now| from_previous_dinner| from_th|oven
from_th|pan from_th|station from|N:core from|N:few_to from|start from|start_to from|th_pan
full|of_smok f|at_Nclock gang_is_all| gas_has_run| gas_has|run gas|bottl gas|r gav_m_a| gav|m
get_THING| get_it_to| get_th|DISH get|her get|ic giv_it_a| giv_m_som| giv|it_Nduration giv|m
giv|m_celsius giv|m_som giv|m_th giv|that_on giv|us_Nduration giv|us_a go_careful|with go_for|medium
go_medium|rar go_steady_no| go_straight| go_to|do go_upstair_for| god|help_m gon_DISH| gon_DISH|and
gon_all_dizzy| gon_cold_on| gon_on_th| gon_on|th gon_power| gon_power|cut gon_ston| gon_ston|cold
gon_to|THING gon|everywher gon|in_th good_N:some| good|to_go got_a_second| got_guest_to| got_it|on
got_no|DISH got_th_DISH| got_th|DISH got_tim_to| got_to|b got|N:few got|for got|held got|held_up
got|it_on got|it_out got|to go|again_$ go|alongsid_DISH go|careful_with go|off_and go|steady
go|steady_no go|upstair_for grab_th|hot granddad|is_not grandson| grey_as| grey_as|a grey_right|
grey_right|through guest_com_Nduration| guest_hat| guest_hat|this guest_to|greet guest_will_b|
guest_will| h_is_at| h_is|out h_is|vegetarian h_want| had_never_said| had|to half_THING| half_THING|THING
half_of| handl_cam| handl_cam|off handl_my| handl_my|palm handl|it handl|it_was hang_on_let|
hang|on_th hanna| hanna|is has_DISH_out| has_U|DISH has_a|nut has_been_blad| has_been_put|
has_been_told| has_com_down| has_com_to| has_com|up has_gon_DISH| has_gon|dark has_gon|everywher
has_got_N:few| has_had_a| has_left| has_not_budg| has_run| has_run|out has_to_eat| has|been_rest
has|com_back has|fallen has|gon_THING has|gon_U has|got_no has|had has|not has|not_been has|run
has|run_out has|to_hav hat_to_miss| hav_a_Nweight| hav_been_vot| hav_been|Nduration hav_begun|
hav_bought| hav_bought|a hav_drop| hav_drop|th hav_fallen_behind| hav_finish|th hav_gon_power|
hav_got_my| hav_had_th| hav_his| hav_it|on hav_lift_off| hav_lost|electricity hav_miss_th|
hav_not_put| hav_not_start| hav_not|risen hav_not|start hav_roast_DISH| hav_run|out hav_th_trim|
hav_to|run hav_trim| hav_trim|it hav_volunteer_for| hav_whack_it| hav_you|don hav|brought hav|drop
hav|gon_to hav|hit hav|lost hav|medium_sh hav|not_carv hav|not_finish hav|not_pull hav|not_put
hav|remov hav|roast_DISH hav|rub_th hav|run_out hav|said hav|salt_th hav|seen hav|taken_th
hav|trim hav|trim_it head_out| headcount|has hear_you_over| heat_th|fat help_it| help_put|
help_till| helper_it_is| helper_it| helper_it|is helper_today|her help|my help|my_P henderson|ar_her
her_Nduration|after her_P|is her_at|N:few her_it|is her_th_rest| her_too_much| her|Nduration_after
her|on_weight her|out_now her|then her|then_$ his|own his|rar_$ hit|th_tabl hold_at|N:core
hold|on_a holler_when| hop_in| hop_in|th hors_i_hav| hors|i hospital| hot_by|N:some hot_do|
hot_fat|this hot_then|turn hot|THING_all hot|by_N:some hot|for_th hous_has_gon| hous_has| hous_unless|
hous_unless|dental how_THING_a| how_far|off how_is_sh| how_is|it how_long|befor how_low| how_low|should
how_pink|ar how_would_i| how|com_it how|do_th how|hot_do how|much how|to how|to_truss h|drop
h|mak i_DISH|it i_THING|it i_after_THING| i_am_a| i_am_bin| i_am_leav| i_am_miss| i_am_put|
i_am_yet| i_am|afraid i_am|get i_am|hav i_am|well i_bast|it i_burnt_th| i_burnt|my i_can_hear|
i_can|do i_can|hear i_drop|th i_get|th i_got|th i_go|to i_grab| i_grab|th i_hav_an| i_hav_begun|
i_hav_drop| i_hav_trim| i_hav|her i_hav|lost i_hav|mad i_hav|remov i_hav|rub i_hav|trim i_hit_th|
i_kill|it i_know_it| i_know|when i_left_th| i_let| i_mak_th| i_n_for| i_never_did| i_never|got
i_ruin| i_ruin|it i_said|that i_set|th i_shut| i_shut|th i_slip| i_swap|th i_tak|th i_think_in|
i_think_ther| i_think|ther i_thought_i| i_took| i_trim_th| i_turn_on| i_us_DISH| i_want_a|
i_want|a i_was_on| i_wash_th| i_whack_it| i_will_get| i_will_giv| i_will_tell| i_will|tak i_would|P
idea_how| if_that|matter if_you|ar if|i_pull immun| immun|system immun|system_is in_N:few_ear|
in_N:some_and| in_U|and in_a|U in_a|row in_from| in_her_and| in_law|is in_march|so in_th_liv|
in_th_other| in_th_small| in_their| in_this|plac in_th|P in_th|U in_th|fridg in_th|plan in_th|small
in_th|thick in_to|warm in_w| in_yet_and| insid_now| insid_now|itself insid_temperatur_is| insid_temperatur|
instead_of|N:few instead|of_DISH instead|of_THING into_th_hot| invit|N:few invit|themselv_so
in|N:few in|N:few_to in|Ndegrees:some in|Ndegrees:some_under in|Nduration_DISH in|Nduration_steep
in|Nduration_that in|a_glass in|aid in|aid_of in|ic_water in|it_roll in|it_yet in|middl_Ndegrees:core
in|plac_of in|som_roll in|th_center in|th_centr in|th_fat in|th_moment in|th_plac in|th_thickest
in|ther in|yet_still is_N:core_in| is_N:few_and| is_N:few| is_N:few|mor is_Nduration|lat is_P|is
is_THING_lover| is_a_greas| is_a_thick| is_all_mix| is_an|Nweight is_ask| is_a|Nweight is_a|liar
is_a|read is_bar_of| is_bar|of is_bleed_and| is_bleed| is_bring|N:few is_bring|his is_broken_so|
is_burnt_all| is_bust| is_com|Nduration is_don_i| is_du| is_finish|and is_flam_com| is_for_th|
is_go_to| is_go|off is_hav| is_her|sh is_hit| is_it_at| is_it|com is_it|go is_it|tim is_join|th
is_left_on| is_left|to is_load| is_my_next| is_my|next is_no_second| is_not_mor| is_not_out|
is_not|availabl is_not|mor is_not|out is_not|up is_off_th| is_on_a| is_out|shut is_over|N:core
is_pack| is_peel_th| is_plan|for is_pregnant_is| is_ready|i is_rest|under is_scorch|in is_sear|
is_sit_at| is_smok_someth| is_stay|hom is_stuck_on| is_th_go| is_th_order| is_ther|someth is_thin|as
is_this|go is_th|best is_th|first is_th|rest is_th|temperatur is_too|short is_tough_as| is_tough|as
is_under_th| isla_is| isla_is|THING is|N:core_what is|N:oven_now is|Nweight_i is|THING_say
is|a_bit is|all is|all_go is|allergic is|already is|an is|at_Nclock is|bar is|battery is|battery_is
is|bedlam is|blood_everywher is|burn_to is|conk is|conk_out is|dark is|do_my is|don_and is|finish_$
is|her_now is|hit is|hot_$ is|hurt is|it_don is|it_ok is|it_saf is|join is|left is|loud is|my
is|my_next is|no_win is|not_$ is|offer is|on_N:some is|on_th is|pregnant is|ready_i is|rock
is|roll_up is|saf is|scorch is|slow is|stay is|still_THING is|still_in is|swell is|th_butter
is|th_day is|th_middl is|th_salt is|th_temperatur is|this_go is|when_w it_b_a| it_cross| it_cross|N:core
it_cycl_off| it_down_a| it_down|a it_for|Nduration it_for|th it_from| it_has_got| it_has|com
it_has|got it_hot_then| it_is_past| it_is_sear| it_is_what| it_is|an it_is|bedlam it_is|bleed
it_is|loud it_is|way it_off_and| it_out_for| it_roll_off| it_smok| it_straight| it_till| it_took|
it_was_a| it_was|a it_went_up| it|again_$ it|as it|claim it|first_then it|is_N:few it|is_Nduration
it|is_land it|is_loud it|is_sat it|is_say it|is_shap it|is_show it|is_tent it|look_$ it|n it|off_$
it|open_and it|run_cold it|sat_on it|say_N:some it|straight_away it|till_N:core it|tim it|was_N:few
it|weigh_Nweight it|would_b i|alway i|am_THING i|am_behind i|am_drown i|am_go i|am_gon i|am_lat
i|am_never i|am_so i|am_talk i|am_tell i|am_up i|b i|can_hear i|could_us i|cover_it i|fancy
i|had_a i|hav_begun i|hav_forgotten i|hav_never i|hav_no i|hav_salt i|hav_sat i|hav_truss i|meant_th
i|n_th i|press_th i|rest i|rest_it i|ruin i|ruin_it i|season i|season_th i|should_b i|suppos
i|suppos_to i|swap i|talk_to i|think_i i|think_it i|told_them i|would_lik i|would_sooner jaysus|
joint_do_i| joint|slid_onto joint|went joint|went_in join|th_party jo|is_go jump_Ndegrees:some|
jump_past_th| jump|over_th kavi_is_do| keep_go|off kept_insid_now| kept|at kettl_is|on kettl_on_tim|
kettl|is kill_th| kill|th_heat kill|th_oven kilo|i_am kindly_remind| kindly|remind_after kindly|tell
kniv| knock_it| knock_that| knock_that|timer knock|N:few knock|N:few_off know_if| know|at know|th_american
kumara_on_th| kumara_on| kumara_on|th kumara|on kumara|on_th lad|ar landlord_is| last_tim_so|
lat_by_Nduration| lat_not| lat_on|my lat_so|w lat_that| lat_with| later_would| lat|they_said
law_has_U| law|is lay_N:few| lay|th_tabl leav|it_uncover left_on|th left_to| left_to|do leftover|ar_away
leftover|sit leftover|sit_out leg|of_THING leg|with leg|with_th let_it|go let_m_forget| let_us_DISH|
let_us|aim let|it_sit let|us_know let|us_tak li_it| li_it|is lick_th|spoon lick|th_spoon lid_th_THING|
lif_is_too| lif_is| lift_off| lift_off|on lift_th|THING lift|th_THING light_ar| light_ar|back
light_has_gon| light|di lik_his|THING lik_i|am lik_th_th| lik_that_is| lik|Nduration lik|Nduration_ago
lik|dishwater lik|th_th list_at| list_at|all list_for| lit_it| littl_on|eat littl_screen_went|
littl_screen|went liv_without| liv|without li|down_for load| long_as| long_hav|i long_till_w|
long_till|th longer_than_you| longer_than| long|do_th look_and| look|insid look|insid_$ look|lik_P
lord|hav lord|hav_mercy lost|electricity los|th_DISH lot|will_not lover|com lover|com_let lower_it|till
lower| lowest_was| lowest_was|N:core low|oven_$ low|should low|should_th lunch|at_N:few m_after|
m_after|Nduration m_alon_unless| m_alon| m_and_N:few| m_a|bell m_a|timer m_forget| m_i|am m_oven|
m_oven|is m_sort| m_th_whol| m_up| m_what_i| m_when_Nduration| m_when_th| m_with_no| m_with_th|
m_with|no mak_a|DISH mak_a|not mak_dinner|Nduration mak_it|medium mak_that_on| mak|a_not mak|it_after
mak|with man_is|Nduration many_minut_left| many|th march|so march|so_go medium_rar_and| medium_rar_for|
medium|rar_saf menu|as menu|as_well metric|peopl metric|peopl_so mind_your| mind_your|back
minut_how| minut_till| minut|left minut|left_on minut|till missus|will miss|N:core miss|N:core_so
miss|th_train mix|up mi|fi mob| mob|is mor_person|will mor_to| mor|reminder mor|sid mor|sid_DISH
mor|to mor|to_th mov_dinner|up mov_to|Nclock much_salt_do| mushroom|too mushroom|too_DISH must_hav|been
must|eat my_P_h| my_P_set| my_P_sh| my_P|bridi my_P|stev my_THING_and| my_cooker|run my_ex|
my_finger|is my_finger|on my_grandson| my_guest_hat| my_lot|will my_next| my_next|job my_oven|li
my_palm|try myself_with_th| my|THING_it my|U_N:core my|back_is my|cooker my|glass_$ my|grandmother
my|next m|a_bell m|at_Nduration m|straight_is m|th_rundown m|twic_as m|without m|without_DISH
n_for_th| n_som_DISH| n_their| n_their|supper n_to_b| n_to_catch| n_to_li| n_to|DISH n_to|eat
nearly|full nearly|full_hous never_did| never_said|don never|got_th never|mind_th never|us
new_th| next_on_th| nic_and| nic_bit_of| nic_bit| nic_bit|of nic|and_golden night_at|N:few
night|and nip_out_back| nip|out no_DISH_for| no_THING_and| no_THING_to| no_electricity| no_electricity|sinc
no_i_am| no_i|hav no_i|meant no_mor|reminder no_on_is| no_sear_N:few| no_second|oven no_they|
no_th|other no_th|oven nobody_is|eat nobody_told| nobody_told|m nobody|at nobody|eat not_DISH|it
not_THING| not_b_bother| not_b_near| not_b_ready| not_believ_this| not_budg| not_b|her not_b|ready
not_carv_it| not_com|after not_do|fahrenheit not_do|that not_expect| not_expect|m not_forgiv_m|
not_hav_a| not_hav|any not_hear|you not_i_am| not_i_carv| not_i|open not_keep| not_mak|th not_mor|
not_out|yet not_own_a| not_pictur_pound| not_put_th| not_rest_long| not_shut|properly not_tak|it
not_thicken_whatever| not_touch|it not_want|remind noth_in|it noth|in_it notion_how| not|N:few_$
not|a_THING not|a_drop not|availabl not|believ_it not|chang not|cover_it not|do_this not|gon_in
not|hav_dairy not|heat not|light not|mor not|mor_function not|n_to not|put_that not|ready_yet
not|se_again not|talk_for not|think not|till not|trust not|up not|us_it not|warm now_DISH|
now_i_hav| now_i_will| now_if| now_i|will now_my| now_sh| now_ther| now_ther|is now_th|THING
now_th|oven now_till| now_would|it now|do_not now|thank no|DISH_peel no|THING_$ no|THING_left
no|bother_don nudg_in| nudg_in|Nduration nudg_m| number_am| number_am|i number_do|i number_is|N:core
nut|in_that n|do n|th obviously|not obviously|not_N:some of_DISH|in of_THING_is| of_THING|over
of_a|THING of_fahrenheit| of_plan_w| of_roast|DISH of_them_DISH| of_them|DISH of_them|walk
of_th|THING of_th|guest off_at_th| off_for|U off_so_it| off_th|board off_th|whol offer|to_do
off|and_never off|th_U off|th_board off|th_whol off|th_worktop of|cream of|guest of|her of|str
of|th_oven of|th_real ok_P_th| ok_so|i ok|P_th ok|or ok|so_i old_at_th| on_N:core_and| on_P_noth|
on_P|is on_ar| on_for|Nduration on_how| on_i|am on_let| on_let|m on_seat|let on_sinc| on_th_littl|
on_th|THING on_th|clock on_th|phon on_th|porch on_th|schedul on_th|tabl on_th|timer on_tim|m
on_with|th onc_it_cross| onto|th_floor on|chemo_so on|eat_at on|less on|less_priya on|out_$
on|sinc on|speaker on|th_clock on|th_door on|th_instant-read on|th_porch on|th_rarer on|th_wet
on|that_$ on|them_DISH or_is_that| or_is|it or|N:core_$ or|not_$ or|thereabout otherwis_so|
otherwis_so|buzz other|room other|way_THING our_P|got our_THING| our_oven_alway| our_oven|alway
our_oven|is our|oven_alway out_at_th| out_at|th out_for_N:few| out_of|my out_oven|is out_th|truss
out|and out|and_i out|first out|first_$ out|her_and out|of_THING out|of_my out|sh out|shut
out|shut_th out|sinc_Nclock oven_and|N:few oven_clock| oven_clock|is oven_door|hang oven_down_to|
oven_has_been| oven_i_put| oven_is_cark| oven_is|Ndegrees:some oven_is|beep oven_is|hot oven_li_it|
oven_meant| oven_now|at oven_set| oven_sinc| oven_what| oven|di oven|dial_is oven|is_dead oven|is_down
oven|is_hot oven|is_work oven|li oven|light over_a| over_a|THING over_my|arm over_th|top overdon|it
over|N:core_when over|and over|ther p_m_in| palm_is| palm_is|blister palm|try palm|try_to pan|now
parent_and| parent| party|of party|of_N:few part|say part|say_N:core pass_on|that pass_out|
pass|on_that past|medium_U peek_through| peek_through|th peel_will_not| peopl_ar_join| peopl_ar_start|
peopl_ar|start peopl|at_th pet|has pet|has_chest phon_is|ring phon_i| pictur_pound| pictur_pound|kilo
piec|of_THING pink_ar| pink_in|th pink|THING_saf pink|ar_w pink|for_her plac_of_th| plan_w|
plan|for_Nclock plat_ar_not| plat_down_at| pop_next| pop_next|door pop_out_for| porch| postpon_of|
postpon_of|Nduration postpon_th_dinner| postpon_th| postpon|th_dinner pound|kilo pour_out_th|
pour_out|th pour_th| power_went_off| prefer_on| prefer_on|th pregnant_is| press_N:few| press_th|
previous_dinner| previous_dinner|is proper|DISH puff|up pull_in|th pull|for pull|it_at push_it|back
put_DISH_DISH| put_DISH|DISH put_a_THING| put_th_P| put_th_kettl| put_them|down put|dav put|dav_down
put|it_in put|them put|you_on quantity|of_butter quarter|past quick|updat_i r_DISH_ar| r_THING|
r_or| r_win|P ran_out_of| ran_out|of rar_for| rar_that| rar|for_all ray| ready_for|th ready_when|
ready|by_N:oven ready|in_tim read|is reckon_Nduration_is| reckon_sh| regular_bak_from| remind_after_Nduration|
remind_m_what| remov_from| remov_th|THING remov|it_from rest_ar| rest|for_$ rib_of|THING rib|of_THING
rib|roast_Nweight right_it| right_it|is ring_off_for| ris| road_for| road_for|Nduration road|for_Nduration
roast_DISH_has| roast_DISH|in roast_Nweight_i| roast_cam| roast_from_th| roast_is|in roast_is|out
roast|Nweight_$ roast|cam_outsid roast|for roast|has_gon roast|i roast|is_not roast|without
rock|up_already roll_and_p| roll_i| roll_i|hav roll_off_th| roll_too|for roll|and_ti roll|too_for
rop_in_th| rough|up rub_th| rub|th rundown| run|at run|cold run|that_by r|DISH_$ sack_off_th|
saf_to_eat| saf|for_th saf|to said_sh| said_sh|would said|don said|don_$ salmon_first| salmon_first|that
salt_do|i salt_in| salt|and_U salt|it_last sat|at_N:core sav_a_plat| sav|it say_sh| say_to|th
say|N:oven_and say|grac say|grac_$ school|canteen school|run_so scorch_in_th| scorch|in scorch|in_th
scrap_DISH| scrap_DISH|DISH scrap_th|DISH scrap_th|roll scratch|that_$ screen_by_th| screen_went|
screen_went|N:core screen|went screen|went_N:core scrub_th|DISH se_you|in sear_N:few| sear_at_th|
sear_at|th sear_a| sear_in_this| sear|com sear|com_last sear|this sear|this_tim season_th|
seat|let seat|let_us second_on_th| second|oven_lik serv_N:few|later serv|at_Nclock set_a_Nduration|
settl_on| set|an_alarm set|m set|th_number set|to_N:oven sh_can|not sh_had| sh_is_run| sh_is|in
sh_is|out sh_will_not| shop_is|shut shop|floor shop|floor_everywher shop|run_back should_b_on|
should_b_ready| should_hav_DISH| should_i_ask| should_i_turn| should_i|b should_i|do should_i|get
should_i|pull should_sh| should|i_put shout_m_in| shout|when_sh show_m|how show| show|m_fahrenheit
shut_th| shut_th|door shut|properly sh|hav sh|is_N:some sh|mak sid|fewer sid|fewer_los sinc|N:few_$
singl_DISH| singl|DISH sit_down_to| sit_in|th sit_on|th sit|at_N:core skip_th|DISH skip|it
sleep_in_th| slic_and_on| slic|and_on slid|off slid|off_th slip_and| slow_and_U| slow_then|
slow_today_Nduration| small|oven_set smell|incredibl smok_someth| smok_someth|U smok|com_out
so_buzz_m| so_knock_N:few| so_lay| so_lay|N:few so_let|us so_lik|th so_plus| so_plus|N:few
so_put_them| so_put| so_serv_N:few| so_th_henderson| so_they_call| so_well| so_well|don so_what_ar|
so_what|is solid_i_am| som_DISH_DISH| som_DISH|too som_of| som_of|th som_roast| som_roast|DISH
som_tim| som_tim|is someth_and| someth|U someth|to somewher_past| somewher_past|medium sorry_it|was
sorry_i|meant so|N:some so|behind so|buzz so|buzz_m so|everyth so|i_can so|knock so|knock_N:few
so|noth_with spark_and| speak_to_m| speak|celsius_giv stand_it| stand|rib stand|rib_Nweight
start_a_Nduration| start_from|scratch start_on_th| start_th|DISH start_to|finish start|afresh
start|afresh_$ start|on_th start|to_finish start|wait start|wait_now steady_no| steady_no|sear
steady|temperatur steep_th| steep_th|DISH step_away_for| step_out|for stick|Nduration stick|Nduration_on
still_DISH_in| still_at|th still_not|finish still_sat_at| still_sat| still_work_on| still|DISH_solid
still|N:few_step still|in ston| stop_for|a stop_th|clock stop|th_Nduration stop|th_timer stop|to
stor|what_should stov|for_N:few str_in|th straight_in| straight_in|th stray| strik_that|from
strik|th_DISH stuck_in_th| stuck|on_N:core supper_Ndate_at| suppos|to_b sur_i_hav| switch_everyth|
switch_everyth|to switch_off_th| switch_th|fan switch_to|fahrenheit switch|th_oven system|is_shot
tabl_at| tabl_for| tabl_of_N:few| tabl_of|N:few tabl_w| tail_Nduration|behind tak_ag| tak_ag|this
tak_th_dog| tak_that|back tak_th|DISH taken_th|THING taken|their taken|their_seat tak|off tak|th
tak|th_dog tak|that_last talk_to|th teaspoon_of_salt| teenager_for| teenager_for|Nduration
tell_m_how| tell_m|what tell_your| tell|her tell|m tell|m_th tell|your_P temperatur_am| temperatur_am|i
temperatur_has_reach| temperatur_in|middl temperatur_is|medium temperatur_should| temperatur|of
test_th_THING| th_DISH_after| th_DISH_do| th_DISH_has| th_DISH_whil| th_DISH_will| th_DISH_would|
th_DISH_you| th_DISH|another th_DISH|ar th_DISH|ready th_DISH|whil th_N:few|P th_P_ar| th_P_of|
th_P|eat th_P|sleep th_THING_back| th_THING_or| th_THING_what| th_THING_will| th_THING|com
th_THING|from th_U_and| th_U|of th_app| th_bon_off| th_butter_is| th_butter|gon th_colour|on
th_count| th_count|down th_crust| th_current_has| th_dog|THING th_door_it| th_door|of th_electric|keep
th_fan|off th_fat|for th_flight| th_gas| th_go|with th_handl|it th_heat|and th_hot_fat| th_i_should|
th_joint|slid th_joint|went th_knob| th_leave-in_say| th_lid|on th_menu|as th_needl_is| th_number_is|
th_n|m th_on_th| th_on|with th_order|of th_other|room th_oven_for| th_oven_meant| th_oven|go
th_oven|light th_pan_and| th_peopl| th_phon_i| th_plat_ar| th_porch| th_quick|on th_rest_ar|
th_rest_of| th_road_for| th_roast_cam| th_roll_i| th_roll|in th_run_Ndegrees:some| th_sam_as|
th_sear_a| th_shop|floor th_slic| th_small|oven th_stor|what th_str| th_tabl_at| th_tabl_for|
th_teenager_for| th_thickest|bit th_th|with th_to_go| th_top|off th_trim|to th_visitor| th_way_my|
than_it|say than_you|allow than|that that_THING|THING that_all| that_all|right that_cam| that_can|
that_is_at| that_is_join| that_last|bit that_on|less that_phon|call that_step| that_was_th|
that_was_wrong| that_went| that_went|in that|P that|U_doctor that|ar that|from_th that|is_N:some
that|is_P that|is_what that|timer_on that|was_my that|will_b their|mind their|supper their|supper_at
them_all_sat| them_can_not| them_had| them_i_want| them|ar_her them|walk them|walk_in then_it|is
then_it|stuck then_turn_it| theo|want ther_Nduration| ther_is_blood| ther_is|another ther_someth_i|
ther_was_nut| ther_what| ther_w| thermostat_is| thermostat|is_shot ther|a_trick ther|at ther|is_N:few
ther|is_another ther|is_flam ther|is_no ther|is_not ther|someth thes_otherwis_so| thes| they_ar_hav|
they_ar_stuck| they_ar|Nduration they_ar|hav they_ar|her they_brought| they_call|and they_com_Nduration|
they_eat| they_hav|got they_n|Nduration they_sat| they_want_drink| they|ar they|ar_starv they|said
they|went thicken_whatever_i| thicken_whatever| thicken_whatever|i thickest|bit thin_as| think_i_will|
think_in| think_ther_was| think_ther| think_ther|was think|ther think|ther_was this_hous_unless|
this_is_for| this_whol| this|THING_for this|go this|go_to through_no|sear through_th_DISH|
through_th|DISH through_th|whol through|th_glass th|DISH_N:few th|DISH_Nduration th|DISH_cover
th|DISH_dress th|DISH_for th|DISH_giv th|DISH_i th|DISH_idea th|DISH_ok th|DISH_or th|DISH_pet
th|DISH_they th|DISH_timer th|DISH_wer th|DISH_with th|DISH_yes th|P_Nduration th|P_ar th|P_in
th|P_to th|THING_b th|THING_first th|THING_in th|THING_what th|U_for th|barbi th|board th|bowl
th|bus th|center th|chip th|cold th|colour th|cream th|crumbl th|day th|dishwasher th|dog_has
th|door_is th|go_$ th|green_DISH th|henderson_so th|joint_is th|lino th|list_$ th|mark th|middl
th|middl_N:few th|middl_and th|moment th|next_th th|no_sear th|option th|oven_as th|oven_b
th|oven_befor th|oven_di th|oven_light th|oven_meant th|oven_off th|oven_what th|peel th|plan_for
th|plat_and th|plot th|plumber th|power_went th|read_jump th|record th|rest_they th|roast_cam
th|roll_and th|roll_off th|sear_$ th|sens th|stair th|thick th|tip th|villag th|water th|we_needl
th|whol_THING th|with_th ti_it|with ti_them_back| tick_off_DISH| tick|that_off till_it|is till_i|can
till_w| till|N:few_$ till|i_can tim_hav| tim_so| tim_ther_is| timer_it|is tim|is_need tim|m_N:few
to_DISH_th| to_N:oven_Nduration| to_N:oven_for| to_N:oven_what| to_THING_up| to_a_warm| to_b_at|
to_carv| to_check_th| to_church_for| to_collect|th to_com|out to_eat_Nduration| to_eat|by to_from_her|
to_get_in| to_get|ic to_go|alongsid to_help_put| to_know_when| to_know|th to_li|down to_mak_th|
to_miss|N:core to_pull|it to_that_phon| to_th|THING to_turn|it to_ty| to_ty|it to_warm_th|
today_Nduration|behind today|her today|her_nam told_you_about| told|Nclock told|Nclock_for
told|him tonight_Ndate_night| too_many_th| too_much_go| took_it|out took_th|THING too|for_mop
too|short top_and| top_and|tail top|shelf_so touch|N:core_$ touch|bon touch|it_if tough|as
to|carv_and to|celsius_$ to|greet to|mak_it to|postpon to|postpon_th to|skip_butter to|sp to|tell_ya
to|thos to|walk to|walk_th train_is|delay trim_th_fat| trim_th|DISH trim|it_$ trim|to trim|to_do
trip_and| truss|a try|to turn_around_th| turn|it_off turn|it_over turn|that_down turn|up_to
twin_n_their| undo|that unless|dental unless|dental_floss unless|it unless|it_is up_N:some_so|
up_U| up_a_Nweight| up_and_down| up_at|N:core up_at|Ngas-mark up_lik| up_say| up_th_road| up_th|wall
up|th us_do_th| us_finish_at| us_go|steady us_mak| us_skip| us|aim us|aim_for us|and us|go_straight
us|to_b us|up very_THING| vot|down w_add_DISH| w_ar_clean| w_ar_feed| w_ar_metric| w_ar|N:some
w_ar|hav w_ar|in w_ar|lat w_ar|miss w_eat_Nduration| w_get_to| w_hav|DISH w_look| w_look|at
w_n_to| w_prefer_on| w_push| w_put_it| w_rest| w_rest|it w_sell| w_settl_on| w_skip|th w_want_th|
w_will_DISH| w_will_U| w_will|start w_would_lik| w_would_you| wait_on|th wait|Nduration wait|on_P
wait|on_THING wak_m|when walk_th| walk_th|dog walk|m_through want_N:core|in want_drink| want_drink|first
want_his|well want_it_well| want_it|at want|it_rar want|m want|remind want|remind_about want|to_b
warm_up| warn_m_when| was_nut| was_nut|in was|N:core_when was|left was|left_open was|not_it
was|th_DISH water_in| water_in|th way_my| way_no|sear way|THING_this way|behind_$ way|do_i
way|through_no way|too_salty we_isla_is| wedg| wedg|and wedg|and_on weight|of well_P| well|ill
well|ill_b went_in|Nduration went_off_th| went_off|th went_on_Nduration| went_up| went|N:core
went|N:core_as went|on wer|eat wer|eat_at wer|not we|bit what_ar_th| what_can|i what_com|after
what_did_i| what_do|you what_els_could| what_for_is| what_go|on what_hav|you what_i_told| what_if_i|
what_it|claim what_i|could what_i|do what_number_am| what_quantity_of| what_temperatur_am|
what_was|th what_was|that whatever_i|do whatever|i_do whatever|you_call what| what|all_possibility
what|can_sh what|do_th what|internal what|internal_temperatur what|it_claim what|should_b what|stag
what|stag_ar what|tim_should what|to what|was_th what|will_i when_do|everyth when_is_th| when_w_hit|
when_will| when|folk when|i_am when|i_slic when|i_was when|sh_hit wher_do_th| wher_do_w| wher_do|w
wher_th|THING wher|did_i wher|do_th wher|to which_way|do whil_you_wer| whil|it_rest who_can_not|
who_has_got| who_is_hav| who_is|hav whol|hous who|do_not why|it_is will_giv| will_hav|medium
will_hold| will_i_b| will_i|b will_not_shut| will_not|light will_not|se will_not|shut will_pass|
will_put| will_sear|first will_tell| will_want|it will_y| will|b will|b_Nduration will|hav
will|hav_their will|not_go will|not_hav will|not_heat will|sear win_P_drank| win|P_drank with_Nduration|left
with_a|THING with_no|DISH with_th|P with_th|fan with_th|no with_th|sear without_th|DISH with|DISH_cream
with|Nduration_left with|apricot with|french with|her with|no_DISH with|someth with|th_DISH
with|th_bon work_on|th work|again would_b|nic would_th_wrong| would|P wrap| w|ar_Nduration
w|ar_lat w|ar_say w|ar_serv w|at w|din w|fix w|hav_got w|is w|is_not w|know w|left w|must_eat
w|n_Nduration w|prefer_on w|put_it w|rest w|rest_it w|should_hav w|start_at w|want_to w|went
w|will_sit ya_and_m| yank|it yell_at| yell|at_N:core yes_go| yes_i|am yes_that| yet_how| yet_or|
yet_th|DISH yet_what|is yet|to_grat you_N:few| you_about_th| you_ar_break| you_can| you_check_tell|
you_fit| you_fit|DISH you_giv| you_hav_been| you_hav|been you_learn| you_over| you_over|th
you_reckon_it| you_watch|th you_will_hav| your_P_and| your_hors|i your_list_at| your_man_is|
your|back you|DISH_th you|can_tell you|hav_had you|hear you|misheard_m you|plan you|plan_on
you|say_halfway zero_str| zero_str|in |@106.2 |@11.3 |@123.2 |@131 |@134.1 |@139.2 |@26.0 |@27.7
|@31.4 |@32.6 |@32.8 |@37 |@37.1 |@38.4 |@44.3 |@49.3 |@57 |@7.0 |@94.0 |DISH_DISH_from |DISH_DISH_hav
|DISH_P_it |DISH_and_THING |DISH_and_cut |DISH_cover |DISH_cross |DISH_dress |DISH_for |DISH_for_a
|DISH_for_m |DISH_giv |DISH_got_$ |DISH_hav_gon |DISH_how |DISH_i_mean |DISH_idea |DISH_in_oven
|DISH_into |DISH_into_th |DISH_it_and |DISH_less |DISH_less_faff |DISH_lik_$ |DISH_not_m |DISH_ok
|DISH_oven |DISH_pet |DISH_ready |DISH_so_DISH |DISH_so_cross |DISH_they_ar |DISH_too |DISH_took
|DISH_up |DISH_w_ar |DISH_wer |N:core_Nweight |N:core_at |N:core_by_now |N:core_has_not |N:core_let
|N:core_so |N:core_so_s |N:core_too_hot |N:core_too_low |N:core_what_is |N:core_when_you |N:core_without
|N:few_and_it |N:few_hungry |N:few_i_am |N:few_instead_$ |N:few_on |N:few_sorry |N:few_step_back
|N:few_to_flip |N:few_too |N:oven_Nduration |N:oven_lik |Nclock_and |Nclock_and_th |Nclock_do
|Nclock_i_am |Nclock_sam |Nclock_sh |Nclock_they |Ndate_and |Ndegrees:core_now |Ndegrees:core_on
|Ndegrees:few |Ndegrees:oven_$ |Ndegrees:oven_$_$ |Ndegrees:some_under_whatever |Nduration_N:few_$
|Nduration_P |Nduration_after_w |Nduration_ago_now |Nduration_and_w |Nduration_befor |Nduration_behind_in
|Nduration_behind_so |Nduration_earlier_than |Nduration_early_$ |Nduration_how_much |Nduration_mor_early
|Nduration_no |Nduration_now |Nduration_off_$ |Nduration_off_and |Nduration_on_dinner |Nduration_steep
|Nduration_steep_th |Nduration_tell_m |Nduration_they |Nduration_they_ar |Nduration_whil |Nduration_whil_i
|P_ar_join |P_drank |P_drank_it |P_has_it |P_is_insist |P_is_not |P_is_starv |P_sh |P_tak |P_th_roast
|THING_N:some_in |THING_THING_U |THING_THING_so |THING_THING_would |THING_U_i |THING_back_Nduration
|THING_befor |THING_below |THING_cam |THING_cam_out |THING_from |THING_hang_on |THING_hav_not
|THING_her_it |THING_in_and |THING_is_finish |THING_it_jump |THING_left_$ |THING_off_th |THING_out_Nduration
|THING_out_for |THING_piec |THING_saf |THING_sh_is |THING_this_$ |THING_whol_Nweight |THING_with_a
|U_N:core_we |U_P_$ |U_doctor |U_doctor_told |U_is_U |U_of |U_out |a_Ndate_$ |a_THING_no |a_cold
|a_cut |a_fan |a_fan_oven |a_glass_THING |a_jar_$ |a_not |a_r |a_shout |a_trick |a_whil_got
|afresh |afresh_$ |afresh_$_$ |after_this_bit |ag_and |again_and_it |ago_now |ahead_or |ahead_or_behind
|aid_of |aid_of_$ |aim_for_Nclock |alarm_for |all_in |all_possibility |all_possibility_ar |all_w
|allergic_to |alongsid_DISH |alongsid_DISH_butter |alway_did |am_THING |am_behind |am_drown
|am_go |am_gon |am_gon_for |am_lat |am_lat_with |am_miss_th |am_never |am_never_go |am_so |am_talk
|am_tell |am_up |am_up_to |an_THING_$ |an_alarm_for |and_cool |and_go |and_golden |and_had
|and_it_THING |and_look |and_never_com |and_on_a |and_sizzl |and_still |and_they |and_they_ar
|and_took_it |another_way_$ |any_DISH |any_other |anybody |anyway |apricot |ar_$ |ar_$_$ |ar_and
|ar_burnt_$ |ar_cover |ar_cover_in |ar_feed_N:some |ar_glaz |ar_her_U |ar_her_so |ar_in_boil
|ar_join |ar_out_$ |ar_out_sh |ar_pal |ar_park_$ |ar_say |ar_say_grac |ar_serv |ar_w_would
|arriv_Nduration |at_N:core_then |at_N:few_$ |at_N:few_sharp |at_N:oven_$ |at_Nclock_DISH |at_Nclock_how
|at_Ndegrees:core_now |at_Ndegrees:oven_convection |at_m_in |away |b_N:some_person |b_careful
|b_her |b_right_$ |back_by_Nclock |back_carry |back_carry_on |back_is |ball_$ |ball_$_$ |bank
|bathroom_$ |bathroom_$_$ |bedlam |been_rest_for |befor_Nduration_$ |befor_w_sit |begin_again
|behind_or |behind_so |behind_sorry |believ_it |bit_pink |blank_on |blank_on_th |blew_actual
|blew_actual_spark |blush |board_now_$ |bon_$ |bon_$_$ |bon_not_N:few |boot_$ |boot_$_$ |boss_is
|bother_don |bother_don_ag |bottl |bring_th |broken_$ |broken_$_$ |brought_a |burn_by |burn_my_finger
|burn_to |burnt_$ |burnt_$_$ |butter_i |butter_so |butter_th |butter_with |butter_with_DISH
|by_N:oven_in |c_so |call_for |cam_U |cam_outsid |cam_outsid_befor |can_b |can_hav |can_hear
|can_not_hear |can_us_ghe |carv_it_straight |catch_that |caterer |celsius_giv |celsius_giv_m
|charg_of_th |chemo_so_sh |choic_again |choic_again_$ |clock_i |coffe |cold_Ndegrees:few_$
|cold_th |com_and |com_how |com_i |com_last |com_last_for |com_let |com_let_us |com_on_$ |com_to_N:core
|cook_at |cook_through |cop |couch |could_us |countdown_$ |countdown_$_$ |cream_go |cream_in_th
|cream_is |cream_on_th |cream_so |crispy_DISH |dav_down |dav_down_for |death |degre_$ |degre_$_$
|dental_floss_count |di_$ |di_$_$ |di_on |dial_is_in |din_at_Nclock |dinner_b_at |dinner_forward
|directly_Nduration |do_a_DISH |do_everyth |do_her |do_i_pull |do_i_tell |do_i_work |do_my_THING
|do_next_P |do_not_lik |do_th_afternoon |do_their |do_this_th |don_b |don_for_th |don_you |door_hang
|down_Nclock_$ |down_Nduration_$ |down_Nduration_for |down_P_$ |down_at_Nclock |drop_of |drown
|early_at |eas |eat |eat_DISH |eat_P |eat_at_N:oven |eat_it_otherwis |eat_them |edg_$ |edg_$_$
|enter |even_N:few |ex |ex_is |f_at_Nclock |f_th_chook |f_that |f_that_is |fahrenheit_celsius
|fall_$ |fall_$_$ |fallen |fast_$ |fast_$_$ |feet_$ |feet_$_$ |fell_on_th |fewer_los |fewer_los_th
|fight_th |finger_on_th |first_so_N:some |fix_to |flicker_$ |flicker_$_$ |floor_$ |floor_$_$
|floor_everywher |for_N:core_in |for_N:few_adult |for_Nduration_walk |for_dinner_and |for_her_U
|for_is |for_mop |for_mop_up |for_my_pregnant |for_th_whol |french_and |french_it |fresh_DISH_in
|from_th_record |from_th_stov |from_this_$ |full_hous_miss |gav_m_a |get_$ |get_$_$ |get_DISH
|get_THING |girl_alway |giv_m_N:some |glov_$ |glov_$_$ |go_over |go_to_N:core |go_to_help |go_to_skip
|go_to_wait |gon_U |gon_it |gon_it_is |gon_ston |gon_ston_cold |gon_to_N:core |gon_walkabout
|got_a_leave-in |got_her_Nduration |halv_s |halv_s_U |has_been_Nduration |has_been_at |has_been_in
|has_been_off |has_been_put |has_chest |has_chest_pain |has_fallen_over |has_gon_U |has_gon_everywher
|has_gon_in |has_got_a |hat_this |hav_a_THING |hav_a_boneless |hav_all_U |hav_begun |hav_burn_my
|hav_com_out |hav_cut_myself |hav_dairy |hav_decid |hav_forgotten |hav_gon_to |hav_got_to |hav_had_N:few
|hav_had_th |hav_land |hav_mercy |hav_ne'er |hav_ne'er_a |hav_no |hav_not_carv |hav_not_mad
|hav_not_touch |hav_nut |hav_plenty |hav_roast |hav_run |hav_said |hav_salt |hav_start_$ |hav_their
|hav_truss |hav_truss_th |hear_you |heat_and |heat_i |heat_th_whol |held_up |help_m_with |henderson_so
|her_at_N:oven |her_down |her_go |her_lik_a |her_nam |her_nam_is |her_now_$ |her_sleev |her_tablet
|her_th_rest |her_till |himself_$ |himself_$_$ |his |his_P_so |hit |hop_in |hop_in_th |hot_by
|hot_do_th |hot_for_th |hot_th |how_long_befor |hungry_$ |hungry_$_$ |i_ask_th |i_at_a |i_carv_$
|i_carv_it |i_get_th |i_hav_wip |i_put_in |i_say |i_say_N:core |i_skip_th |i_talk_to |i_ti_it
|i_us_$ |i_us_THING |if_P |if_sh_has |if_this |if_this_is |ill_b_a |in_DISH_DISH |in_N:some_$
|in_her_and |in_it_yet |in_law_is |in_law_tak |in_som |in_th_liv |in_th_plan |in_th_roast |in_their
|in_ther_as |inform_$ |inform_$_$ |is_N:core_not |is_N:few_bon |is_Ndegrees:oven |is_Nweight_i
|is_a_vegetarian |is_act |is_alight_$ |is_bar_of |is_bleed_badly |is_bon |is_bring_th |is_brought
|is_cark |is_cark_it |is_celsius |is_celsius_i |is_com_after |is_fin_$ |is_fin_as |is_flam
|is_go_U |is_go_again |is_go_off |is_h |is_help_$ |is_himself |is_in_$ |is_in_at |is_land_on
|is_lot_cri |is_loud |is_mak_th |is_mind |is_mind_th |is_not_complet |is_now_at |is_off_now
|is_on_N:core |is_on_a |is_open_$ |is_out_$ |is_over_$ |is_past_N:core |is_peel |is_pink_$
|is_raw_in |is_ready_$ |is_shot_it |is_show_N:core |is_sit_on |is_start_THING |is_still_in
|is_tent |is_tent_loosely |is_th_plan |is_th_salt |is_ti_$ |is_too_salty |is_up_$ |is_work_again
|it_N:core_$ |it_N:core_in |it_Ndate |it_after_all |it_at_N:few |it_b_a |it_claim |it_h_is
|it_hav |it_hav_to |it_in_$ |it_lik_that |it_look_$ |it_off_th |it_open |it_or_what |it_out
|it_out_and |it_out_yet |it_roll_and |it_saf_to |it_sit |it_slip |it_to_medium |it_twic |it_was_hot
|it_with_a |jar_is |joint_is_in |joint_slid |jump_over |keep_THING_$ |keep_go_off |kettl_on
|kick |kill_m |knock_N:few |knock_N:few_off |know_it |lack_a |last_th_$ |lat_$ |lat_$_$ |lat_in
|lat_in_her |lat_on |lat_with_everyth |later_would |leave-in_on_say |left_and |left_open |leftover_stay
|less_priya |less_priya_has |lik_P_us |lino |long_as |long_befor |look_insid |look_insid_$
|m_N:few_for |m_Nduration_behind |m_again |m_celsius |m_celsius_not |m_fahrenheit |m_for_N:some
|m_onc |m_th |m_th_U |m_th_choic |m_th_next |m_th_shop |mad_yet |march_$ |march_$_$ |meant_th
|measur_N:core |medium_U_not |medium_rar_is |medium_rar_ok |medium_rar_or |medium_sh_is |met
|middl_N:few |middl_Ndegrees:core |middl_and |minut_$ |minut_$_$ |minut_how |misheard_m |misheard_m_i
|miss_THING |money_$ |money_$_$ |mop |mor_ar |mor_ar_com |mor_function |mor_guest |mor_it |mor_th
|mor_tim_for |mor_to_th |must_eat_Nduration |must_th |my_P_mess |my_P_on |my_P_stev |my_arm_on
|my_god_ther |my_next |my_option |my_option_$ |my_thumb_pretty |n_feed_at |n_for_th |n_not
|never_did_th |never_said |new_THING |next_then_$ |night_and |nip_out_back |no_DISH_peel |no_sear_version
|nobody_els |not_N:some_$ |not_b_bother |not_b_do |not_b_right |not_believ_it |not_cop |not_don_it
|not_even_touch |not_find |not_find_in |not_finish_mash |not_french |not_french_th |not_got_a
|not_hav_DISH |not_hav_it |not_hav_th |not_heat |not_know_how |not_mak_it |not_n_to |not_own
|not_own_a |not_pull |not_pull_it |not_risen |not_stand |not_tak_THING |not_want_remind |noth_with
|now_and_how |now_at_N:oven |now_for_Nduration |now_leo_from |number_again |number_again_$
|number_is |nut_th |of_DISH |of_DISH_in |of_THING_$ |of_THING_THING |of_THING_is |of_my_finger
|of_play |of_rib |of_rib_roast |of_smok |of_th_N:few |of_th_U |of_th_real |of_them_so |of_top
|of_top_THING |of_us_$ |of_us_at |of_win |off_and_on |off_so_it |offer_to_do |oil |ok_to_eat
|old_girl |on_at_N:core |on_chemo |on_eat |on_fir_$ |on_is_look |on_th |on_th_porch |on_th_schedul
|on_th_til |on_weight |on_weight_in |on_you |onc |onc_it_cross |or_not |other_$ |other_$_$
|other_way_THING |out |out_Nduration_ago |out_THING_$ |out_cold_$ |out_hav |out_her_and |out_w
|outsid_$ |outsid_$_$ |oven_as |oven_b |oven_di |oven_for_th |oven_glov_$ |oven_is_banjax |oven_light
|oven_lik_your |oven_meant |oven_off |oven_run_Ndegrees:some |oven_this |over_a_THING |overcook_it
|overdon |overshot |own_a |own_a_THING |pan_handl |pan_is_in |paper_$ |paper_$_$ |parent_and
|part_N:core |pass_N:core |past_it |peopl |peopl_so |peopl_so_celsius |per_THING |person_is
|phon_to |pi_$ |pi_$_$ |pinch |pint |plac_of |plan |plan_$ |plan_$_$ |play_with |plot |power_$
|power_$_$ |power_went |prefer_on |prefer_on_th |proper_THING |prov |prov_Nduration |put_DISH_in
|put_it_to |put_my |put_th_small |put_you |quantity_of_THING |quid_$ |quid_$_$ |quiet_$ |quiet_$_$
|quiet_for |quiet_for_a |rang |rang_h_will |rang_they |rar_for_all |rar_in_degre |rar_saf |rar_saf_for
|rather_hav |reach_$ |reach_$_$ |read_N:core_now |read_jump |read_jump_about |ready_in_tim
|ready_it |ready_they_n |ready_yet |reheat_th |remind_about |remind_about_th |remind_after
|remind_after_Nduration |remov_th_THING |rescu_$ |rescu_$_$ |rest_P |rest_for_Nduration |rest_it
|rest_now |rest_so |rest_th_DISH |rest_they |rest_they_ar |rib_roast_$ |rib_with_N:few |right_through
|roast_without |roll_DISH_is |room_$ |room_$_$ |rub_th_THING |run_N:some_cold |run_N:some_hot
|run_Ndegrees:some_cool |run_cold_by |run_so_do |saf_for_th |saf_to_eat |said_N:core |said_that
|salt_so |salt_so_early |sauna |say_N:core |say_N:oven_and |say_U_tenderis |say_halfway |say_halfway_$
|say_rar |school_and_this |se_again |sear_now |season_th_roast |second_tim |second_tim_$ |sens
|sh_hit |sh_hit_N:core |sh_is_off |shall_b_at |shelf_so |short_U_is |should_b_ready |should_hav_said
|should_w |shout_when_sh |show_Ndegrees:core |sinc_Nclock_and |sinc_th |sit_at_N:core |sit_in_a
|skip_butter |skip_butter_th |slic_still |slic_still_moo |slid_onto |slid_onto_th |slip_$ |slip_$_$
|slit |so_it_is |so_let_us |so_they_ar |som_$ |som_$_$ |sorry_to |sorry_to_say |sound_right
|speak_celsius_giv |split_$ |split_$_$ |spoon_$ |spoon_$_$ |squint_at |squint_at_th |stag_$
|stag_$_$ |stag_ar |stag_ar_w |stair |steady_no |steady_no_sear |step_with |step_with_th |stev_help
|stev_help_out |still_DISH_in |stov_$ |stov_$_$ |stov_and |straight_is |straight_is_it |strik_that_from
|stuff_it |suppos |swallow |swear_it |swell_up_$ |swim |system_is |tabl_and |tabl_at_Nclock
|tabl_now |tabl_of |tail_her |tak_m_twic |taken_out |teaspoon_of |teaspoon_of_salt |temperatur_ar
|temperatur_for_th |temperatur_is_Ndegrees:core |th_DISH_after |th_DISH_bubbl |th_DISH_sinc
|th_DISH_ther |th_THING_Nclock |th_THING_board |th_THING_do |th_THING_first |th_THING_get |th_THING_h
|th_THING_no |th_U_THING |th_afternoon |th_airport |th_american |th_b_drink |th_bottom_of |th_center
|th_center_$ |th_clock_for |th_crackl |th_cupboard |th_cupboard_$ |th_deck |th_dinner_by |th_door_for
|th_door_let |th_door_open |th_fan_set |th_fat_end |th_fella |th_floor_$ |th_glass_and |th_holiday
|th_hot_oven |th_hous_for |th_it |th_joint_$ |th_kettl_on |th_market |th_middl_b |th_middl_of
|th_no |th_number_of |th_other_hav |th_oven_N:oven |th_oven_for |th_party |th_plan |th_plan_as
|th_radio_$ |th_rarer |th_rarer_sid |th_real |th_road_for |th_roast_don |th_roll_in |th_run
|th_rundown |th_sam_$ |th_sear_$ |th_second_half |th_sens |th_shop_for |th_sid_$ |th_stand
|th_start |th_step_$ |th_stov_Nclock |th_tabl_$ |th_th_say |th_thickest |th_til_$ |th_timelin_$
|th_timer_off |th_truss_$ |th_way_no |th_wet |th_wet_floor |th_wifi |th_worktop_$ |than_m |than_m_$
|than_you |that_Nweight |that_again_i |that_by |that_by_m |that_last |that_matter |that_on_a
|that_on_out |that_right |that_th |that_work_$ |their_at_Nclock |their_mind |their_seat |them_all
|them_and |them_back_on |them_off |themselv_so |ther_at |thes_DISH |they_ar_$ |they_keep |this_go
|this_go_to |this_rat |this_rental |this_trim |this_trim_way |thought_i |through_th_DISH |ti_back
|ticket_$ |ticket_$_$ |till_N:core_$ |till_th_P |tim_and_i |tim_ar_w |tim_should |tim_should_i
|timer_anymor |timer_on_th |to_N:core_in |to_N:few_now |to_N:oven_about |to_N:oven_for |to_a_block
|to_a_crisp |to_b_don |to_b_ready |to_breath |to_buy_DISH |to_check_DISH |to_collect |to_do_$
|to_do_yet |to_eat_Nclock |to_fetch |to_grat |to_grat_it |to_heat_$ |to_help_$ |to_help_m |to_imperial_$
|to_play |to_pull_it |to_reheat |to_room |to_room_temperatur |to_say_$ |to_skip |to_th_next
|to_truss |tonight_and |too_DISH |too_DISH_in |too_for_mop |too_salty_$ |top_off |touch_it
|tractor |transplant |trim_down |trim_down_to |trim_it_$ |trip_and_everyth |trivet_$ |trivet_$_$
|truss_it |try_to_DISH |turn_up_$ |twic |typ_$ |typ_$_$ |uncover |under_way |up_U |up_after_th
|up_again_$ |up_already_$ |up_as_w |up_at_Nclock |up_front |up_front_then |up_to_N:some |up_w
|updat_i |updat_i_hav |ups |upstair_for_Nduration |us_and |us_it_$ |us_know |us_mak_dinner
|us_my |us_skip_th |us_tak |vegan |vot_and |vot_and_it |w_ar_at |w_ar_lat |w_at_at |w_din |w_do_$
|w_eat_Nduration |w_got_on |w_is |w_is_not |w_look |w_miss_out |w_sit_$ |w_skip |w_talk_$ |w_would_b
|want_$ |want_$_$ |want_U |warm_and |warm_any_plat |warm_th_roll |was_N:oven |was_befor |was_on_th
|was_on_what |was_that_last |water_down |way_behind |we_minut |we_needl |we_needl_is |wedg
|wedg_and |wedg_and_on |weep |weep_$ |weep_$_$ |well_behind |went_N:core |went_N:core_as |went_in_$
|went_in_N:few |went_out_$ |what_$ |what_$_$ |what_should_sh |what_th |what_w_open |when_do_w
|wher_i |whil_i_find |whil_rest |whol_gang_has |whol_hous_has |will_b_join |will_b_no |will_giv_th
|will_not_bother |will_not_forgiv |will_sear |will_sit |will_sit_down |will_ya |with_DISH_$
|with_DISH_cream |with_DISH_i |with_Nduration_of |with_a_drink |word_$ |word_$_$ |work_$ |work_$_$
|work_that |would_lik |would_sooner |would_you_do |wreck_th |year_$ |year_$_$ |year_th |year_w
|yes_N:few |yet_P |yet_how |yet_i_hav |yet_or |yet_th_U |yet_what_is |you_believ_it |you_hold
|you_imagin_$ |you_on_speaker |you_reckon_$ |you_say_th |you_se |you_wait |your_hair
-10 @101.3| @106.0| @117.2| @119.6| @126.0| @127| @134.5| @146.3| @18| @19.3| @24.2| @25.0|
@30.0| @48.1| @53.4| @54.1| @64.7| @79| @84.3| @87| @97| @99.5| DISH_DISH_went| DISH_DISH|as
DISH_DISH|so DISH_THING_is| DISH_THING| DISH_THING|is DISH_U_and| DISH_and_i| DISH_ar_ston|
DISH_ar|burnt DISH_ar|charcoal DISH_ar|don DISH_ar|go DISH_butter_with| DISH_butter|with DISH_cook|
DISH_countdown| DISH_countdown|any DISH_cream_as| DISH_cross| DISH_don_and| DISH_has|gon DISH_hav_been|
DISH_in_and| DISH_is_cover| DISH_is|finish DISH_is|mad DISH_is|out DISH_is|split DISH_it|on
DISH_lik|water DISH_no_th| DISH_not|m DISH_off| DISH_on_Nduration| DISH_r|DISH DISH_so_cross|
DISH_so_they| DISH_tak| DISH_ther_is| DISH_went|in DISH_went|on DISH_with_th| DISH_with|it
DISH_with|th DISH_w|hav DISH_yes_w| DISH|DISH_from DISH|alongsid_$ DISH|anymor_$ DISH|ar_wedg
DISH|butter_$ DISH|butter_for DISH|butter_with DISH|cream_is DISH|i_mean DISH|is_lik DISH|it_and
DISH|not_m DISH|on_Nduration DISH|over_th DISH|so_far DISH|then DISH|want DISH|want_a DISH|whil_i
DISH|yet N:core_N:few| N:core_N:few|littl N:core_Nduration|ago N:core_about|Nduration N:core_and|what
N:core_as_w| N:core_at|th N:core_by| N:core_can|i N:core_has|not N:core_her_w| N:core_in|phoenix
N:core_it_has| N:core_last|i N:core_lik_Nduration| N:core_now_th| N:core_or|N:core N:core_sound|
N:core_sound|right N:core_then_i| N:core_what_do| N:core_when|it N:core_without|tell N:core|in_ther
N:core|it N:core|last_i N:core|no N:core|not_N:core N:core|now N:core|then_i N:few_DISH| N:few_P_and|
N:few_P|will N:few_adult_and| N:few_adult|and N:few_and|what N:few_burner|work N:few_for|th
N:few_i|am N:few_less_than| N:few_less|than N:few_month|pregnant N:few_mor|person N:few_not|N:few
N:few_of| N:few_person_is| N:few_person|will N:few_stray_on| N:few_would| N:few_wrong|THING
N:few|P N:few|for_N:few N:few|guest_less N:few|hav N:few|lat N:few|less_th N:few|littl_stick
N:few|month_along N:few|mor_ar N:few|mor_peopl N:few|mor_sid N:few|no N:few|of_th N:few|oven
N:few|oven_$ N:few|peopl_drop N:few|person_is N:few|piec N:few|rather_than N:few|rib_$ N:few|short_U
N:few|show N:few|show_up N:few|till N:few|to_giv N:oven_U| N:oven_and|it N:oven_it_cam| N:oven_it|is
N:oven_so_aim| N:oven_so|aim N:oven_what_is| N:oven|fan N:oven|for_m N:some_Ndegrees:few_in|
N:some_a|THING N:some_of| N:some_of|them N:some_person|for N:some_to|f N:some_w| N:some|N:few
N:some|for_dinner N:some|they Nclock_and_th| Nclock_and_what| Nclock_and_w| Nclock_or_ther|
Nclock_sam| Nclock_w_will| Nclock_w|will Nclock|U_th Nclock|any Nclock|in Nclock|instead_$
Nclock|not Ndate_Nclock_and| Ndate_lunch_at| Ndate_sit_down| Ndegrees:core_in_th| Ndegrees:core_it|
Ndegrees:few_after_i| Ndegrees:some_cool_alway| Nduration_P_is| Nduration_THING|is Nduration_ago_ther|
Nduration_and_it| Nduration_and_i| Nduration_and|it Nduration_back_it| Nduration_behind_so|
Nduration_behind_th| Nduration_for|m Nduration_i_hav| Nduration_lat_they| Nduration_lat_with|
Nduration_lat|that Nduration_left|on Nduration_of|delay Nduration_rest|timer Nduration_set_a|
Nduration_sinc| Nduration_sinc|it Nduration_start_wait| Nduration_they|ar Nduration_th|THING
Nduration_to_get| Nduration_to|dinner Nduration_would| Nduration|DISH_i Nduration|ago_$ Nduration|ago_ther
Nduration|and_tell Nduration|behind_$ Nduration|by Nduration|by_for Nduration|for_th Nduration|lat_so
Nduration|lat_that Nduration|later_and Nduration|mor_early Nduration|rest_timer Nduration|sh
Nduration|sooner_than Nweight_i_misread| Nweight_of_rib| Nweight_of|U Nweight_rib_of| Nweight_rib_roast|
Nweight_very| Nweight|N:some Nweight|of_top P_all| P_ar_eat| P_at_th| P_do|not P_has_been|
P_has_got| P_is_join| P_is_peel| P_is_pescatarian| P_is_taken| P_is|com P_is|go P_is|peel P_mak|
P_nor| P_nor|money P_of|my P_on_th| P_rang|h P_set_th| P_sh_do| P_slip| P_slip|on P_stev_help|
P_still| P|drank P|drank_it P|els_is P|get_ill P|has_arriv P|has_been P|has_gon P|is_U P|is_at
P|is_stay P|want_her P|want_his P|will_carv THING_THING_caught| THING_THING_has| THING_U_i|
THING_and_THING| THING_ar_cover| THING_at| THING_at|N:few THING_by|N:few THING_cam| THING_cam|out
THING_caught| THING_com|out THING_cub| THING_drop| THING_fan| THING_fan|oven THING_get| THING_giv_m|
THING_has_left| THING_hav|all THING_her_a| THING_h| THING_h|is THING_in_and| THING_in_this|
THING_in|this THING_is_Ndegrees:few| THING_is_alway| THING_is_battery| THING_is|Ndegrees:few
THING_is|act THING_is|stuck THING_it|say THING_i|am THING_i|hav THING_mak_th| THING_now_for|
THING_of_roast| THING_of_th| THING_of|roast THING_out_oven| THING_out|of THING_over_a| THING_say|N:core
THING_should_b| THING_smok|com THING_speak| THING_speak|celsius THING_th_P| THING_up| THING_was|touch
THING_wer| THING_would|you THING|THING_N:few THING|THING_no THING|at_all THING|behav THING|behav_itself
THING|by_N:few THING|cam THING|caught_light THING|from_oven THING|gav THING|gav_m THING|has_been
THING|is_full THING|is_load THING|is_scorch THING|it_in THING|leave-in THING|leave-in_on THING|left_$
THING|leg THING|now THING|tell THING|to_th THING|to_ty THING|truck_w THING|up_U THING|went_into
THING|whatever THING|whatever_you U_DISH|over U_THING|is U_U_i| U_and_th| U_call|in U_doctor|
U_doctor|told U_into_th| U_is|in U_it|on U_it|was U_my|P U_no_P| U_out_of| U_r| U_r|DISH U_say|U
U_th_roast| U_to|finish U_when_w| U|N:core_we U|can U|for_this U|i_do U|is_don U|is_sak U|not_all
U|on U|or_lid U|th U|to_finish ^_DISH_all| ^_DISH_went| ^_DISH|hit ^_N:core_it| ^_N:few_for|
^_N:few|adult ^_N:few|for ^_N:few|person ^_Nduration_start| ^_Nduration_th| ^_Nweight_it| ^_Nweight_of|
^_P_i| ^_P_ray| ^_P|ar ^_THING_for| ^_THING_i| ^_THING| ^_THING|has ^_THING|up ^_U_DISH| ^_U_and|
^_U|it ^_^_THING| ^_^_abby| ^_^_alex| ^_^_been| ^_^_cooker| ^_^_could| ^_^_dav| ^_^_diall|
^_^_dinner| ^_^_drop| ^_^_d| ^_^_electric| ^_^_explain| ^_^_giv| ^_^_himself| ^_^_lagg| ^_^_leav|
^_^_man| ^_^_nip| ^_^_pop| ^_^_someth| ^_^_straight| ^_^_tak| ^_^_third| ^_^_wer| ^_^_whip|
^_^_without| ^_^_w| ^_a_N:few| ^_abby| ^_abby|left ^_add|Nduration ^_add|th ^_aim_to| ^_alex|
^_alex|can ^_all|right ^_all|th ^_and_h| ^_and|now ^_another_N:few| ^_at|what ^_a|N:few ^_bang|on
^_been| ^_beep_at| ^_bit_of| ^_bram_is| ^_can_th| ^_chang_of| ^_cooker| ^_cooker|is ^_cook|it
^_could| ^_crank|her ^_cut|myself ^_dav| ^_diall| ^_did|P ^_did|i ^_dinner| ^_drop_th| ^_drop|
^_d| ^_electric| ^_explain| ^_fat|is ^_fat|trim ^_first|N:few ^_flip|th ^_for_my| ^_fus_has|
^_gas_has| ^_giv| ^_gon_for| ^_guest|will ^_half_th| ^_half|th ^_has|P ^_hav_kept| ^_himself|
^_how_to| ^_how|com ^_how|thick ^_h|drop ^_i_keep| ^_i_left| ^_i_must| ^_in_our| ^_internal|N:core
^_is|pink ^_it_jump| ^_it|jump ^_i|U ^_i|did ^_i|got ^_i|grab ^_i|n ^_i|never ^_i|remov ^_i|told
^_job_is| ^_joint_is| ^_knock_th| ^_lagg| ^_landlord_is| ^_leav| ^_let_th| ^_let|th ^_lift_th|
^_light|went ^_low|and ^_lunch|Ndate ^_mak|dinner ^_man| ^_might_as| ^_my|THING ^_nip| ^_no_electricity|
^_nobody_her| ^_not|finish ^_ok_i| ^_our_oven| ^_oven_has| ^_pass|us ^_paus_for| ^_pop| ^_pull_for|
^_pull_th| ^_push_it| ^_put_that| ^_put|Nduration ^_right_that| ^_run_a| ^_sack_off| ^_scratch|that
^_sear_is| ^_serv|Nduration ^_set|m ^_sh_has| ^_shop|list ^_shout_when| ^_shout|when ^_shut_off|
^_shut|that ^_skip_th| ^_slid|th ^_smok_is| ^_someth| ^_sorry|i ^_steady|heat ^_straight| ^_stuck_th|
^_tabl|for ^_tak| ^_th_leave-in| ^_th_peel| ^_th_twin| ^_that|mak ^_third| ^_this|THING ^_this|oven
^_throw_in| ^_th|P ^_th|guest ^_th|leave-in ^_th|oven ^_th|pan ^_th|sear ^_top|oven ^_turn|th
^_us|celsius ^_well_i| ^_well_th| ^_wer_Nduration| ^_wer| ^_what_if| ^_what_will| ^_what_would|
^_what_you| ^_what|all ^_what|will ^_when_it| ^_when|th ^_whip_it| ^_whip| ^_will_not| ^_with_th|
^_without| ^_w| ^_w|can ^_w|got ^_w|went a_DISH_as| a_DISH_instead| a_N:some| a_THING_fan|
a_THING_of| a_U_to| a_U|to a_bit_lat| a_block|sink a_breather| a_chanc_that| a_drop|of a_fat|
a_fat|THING a_favour_and| a_good|N:some a_go|at a_helper|today a_joint|do a_li|down a_pin|
a_pin|in a_proper_rar| a_rib_of| a_roast_without| a_r|win a_second|tim a_start_on| a_trick|
abby| abby|left about_Nduration|ago about_th|oven about|th_THING about|th_oven about|th_roll
across_th|THING actual|spark actual|spark_and act|weird add_green| add_green|DISH add_roast|
add_roast|DISH add|another_mouth adult_and| adult|and after_i|wiggl after_th|DISH afternoon|shop
afternoon|shop_is after|THING after|THING_it after|com after|th_break against_th|THING again|at_th
again|it ago_ther| ag|ago_$ aim|for_Nclock aim|for_that alarm_in|th alarm|is_go alert_at|Ndegrees:core
alert| alex|can alex|can_stir all_U_wher| all_ar_sit| all_behind_lik| all_behind| all_dizzy_and|
all_of|us all_possibility| all_possibility|ar all_right_or| all_too| all_too|much all|N:few_account
all|behind all|through all|too all|too_much along_ar| along_ar|w alongsid_DISH_butter| alongsid_DISH|
alongsid_DISH|butter alway|N:few alway|N:few_under alway|com_in am_THING_for| am_all_behind|
am_all| am_all|behind am_away|behind am_chas| am_chas|my am_drown| am_drown|her am_gon| am_go|to
am_hold| am_in|bit am_i|go am_i|pull am_lat| am_on|my am_suppos_to| am_tak|it am_up| am_us|
am_yet_to| am|N:few_lat am|THING_for am|after am|all am|com am|driv am|i_after am|i_do am|i_pull
am|miss am|off_to am|pop_too am|so_behind am|us an_alarm_in| an_alarm|for and_DISH_is| and_N:some|
and_THING_is| and_alert| and_all_my| and_am_i| and_a|P and_a|THING and_dinner_is| and_dinner|is
and_drop_th| and_drop|th and_eat| and_forget|th and_go_to| and_go|to and_hold| and_how|com
and_how|do and_i_after| and_in_th| and_is_N:core| and_it|was and_it|will and_i|am and_i|will
and_left| and_lunch| and_power| and_pull| and_p| and_p|m and_remind| and_remind|m and_roast|DISH
and_sam_is| and_serv_it| and_should_i| and_shout| and_shout|when and_swear_it| and_th_guest|
and_ther|will and_they_hav| and_th|U and_ti|them and_trim|th and_turn|th and_w_will| and_what_was|
and_who| and_will_not| and_w|n and|N:few_P and|alert and|celsius_$ and|how_pink and|my_THING
another_Nduration|i another_mouth_P| another|Nduration_and another|Nduration_i any_other| anyth_i_hav|
anyth_i|can anyth_i|hav anyth|with any|mor_$ any|other_way any|way an|extra_Nduration ar_N:few|THING
ar_at|N:core ar_bang|on ar_cover| ar_cover|in ar_expect_N:some| ar_feed|N:some ar_get| ar_go|to
ar_hav|DISH ar_her_N:few| ar_in|their ar_lick_up| ar_miss|th ar_my|option ar_run_Nduration|
ar_say| ar_stuck_in| ar_stuck|in ar_up_and| ar_w_up| ar_w| arm_is_burn| arm_with_th| ar|at
ar|burnt ar|don_$ ar|early ar|feed ar|feed_N:some ar|hav_it ar|miss_th ar|not_brown ar|park
ar|roll ar|still_pal ar|stuck_in ar|w_$ ar|w_would ar|warm ar|you_N:few as_i|look as_long|as
as_soon| as_soon|as ask_how_long| as|is at_N:core_can| at_N:core_i| at_N:core_what| at_N:core_will|
at_N:core|will at_N:few_th| at_N:oven_i| at_Nclock_N:few| at_Nclock_not| at_Nclock_what| at_Nclock_w|
at_their| at_th|tabl at_work| at|N:core_can at|N:few_Ndate at|N:oven_DISH at|Nclock_N:some
at|Nclock_sharp at|Ndegrees:core_let at|hom_th at|now at|th_stor away|behind away|behind_th
a|N:core a|Ndate a|U_it a|bit_longer a|bit_of a|blackout a|fall a|fan a|fan_oven a|helper a|hot
a|nic_bit a|prayer a|r_DISH a|sauna a|second_oven a|set a|set_for a|shout_at a|shout_in a|vegan
b_her_at| b_medium| b_near_th| b_on_th| b_out| b_put| b_ready_in| b_tak|it back_down|to back_how|
back_how|it back_of| back_of|th back_to|N:few back|in_N:some bak|from bak|from_convection battery_is|flat
bear_that_in| been_in_for| been_off_sinc| been_off|sinc been_sit| been_told_Nclock| been|rest_th
beep_it| beep_it|is befor_w|eat befor|th_next begin_from| begin|from_zero behind_lik| behind_lik|th
behind_on_th| behind_so|serv behind_th_cow| behind_th|THING behind_th|plan behind_with_th|
believ|this believ|this_THING beth|is bit_lat_in| bit_lat|in bit|longer_$ blackout_her_th|
blast_it|at bless|him_$ bless|them blew_actual| blew_actual|spark block|sink blood|everywher
blood|everywher_th boat| bob_for| bob_for|th bob|is_your boil_water_on| boil|for_th boil|water_test
bon_it| book| bother_with_DISH| bother_with_th| bottl|hook bottl|hook_up bought|a_Nweight br_m_up|
bram|is brb|Nduration_front breather| bring_th|DISH bring|his_P brin| brought_a|loaf brought_th_oven|
brought| brown_it_is| brown_it| brown_it|all brown|it_first build_i_mean| bum_on|seat bump_it_up|
bump_it| bump_it|up burn_my_arm| burner|work burner|work_on burn|by_hot burn|my_finger butter_with_DISH|
butter|is_all buy|THING_$ by_N:oven| by_for_th| by_th|bon by|N:few_sorry by|th_bon b|N:few_person
b|bust b|on_th b|out_of b|quiet_$ b|ready_by b|to b|with c_and| c_put_it| call_it| call|in
call|in_sick cam_U|not cam_off_th| cam| cam|out_i can_drop| can_drop|th can_eat|Nduration can_i_b|
can_i|get can_i|put can_i|se can_my_toddler| can_not_go| can_not|eat can_not|get can_not|pictur
can_sh|hav can_th_P| can_us| can_w_add| can_w|do can_w|go can_w|mak can_you_put| can_you|believ
can_you|get can_you|giv cancel_th|roll cancel_what_i| cancel|DISH cancel|DISH_my can|check
can|check_th can|i_DISH can|i_rest can|i_say can|leftover can|manag_it can|not_find can|not_get
can|not_hear can|sit can|sit_down can|w_br can|you_get can|you_hold can|you_put can|you_repeat
cap_down| cap_down|a car_pull| carv|it_straight carv|it_yet cast|iron_THING caught|alight celsius|giv
celsius|giv_m chanc_that| chanc_that|is chang_it_to| chang_it| chang_of| chang_of|plan chang|
chang|it chas|my chas|my_tail cheap|THING_THING check_th|THING chemo|so_sh chest|pain chill_th|
chopper_THING| chopper_THING|whatever chuck_a|DISH chuck_som_roast| church|hall clear_th|timer
clock_for| coat_on_th| coeliac_so| cold_th| cold|Ndegrees:few_$ com_Nduration_too| com_Nduration|after
com_after|all com_for_help| com_from_th| com_with|Nduration company|is company|pull company|pull_in
com|along_$ com|for_help com|now_$ com|on_$ com|out_THING com|to_N:core cook_to| cooker_is_Ndegrees:some|
cooker_is|conk cool_alway| cool_alway|has could_dinner|b could_dinner|happen could_do_with|
could_not|find could_w_eat| could_w_hav| could_w_push| could_you_plan| could|dinner_happen
could|not_hav could|you_plan count_Nduration|from count_th|DISH countdown|any countdown|any_mor
cover|in_butter crank_it_up| crank|her cream_as| cream_as|well cream_i|do cream_on_th| cream_so|non
cream|is_mad crowd_N:some_to| ctrl| ctrl|z ctrl|z_$ currant| currant|jelly current_in_th| current_in|
current_in|th cut_is| cut|it_$ da_will| dav_is| day|befor dead_it| dead|centr_$ deck|out deck|out_cold
delay_dinner| dial_THING|show dial_is|in dial|is_in did_i_ruin| did_i_wreck| did_i|ruin did_not|catch
did_th|DISH did_you|se did|P did|not_catch did|not_ris dinner_Ndate_at| dinner_back_to| dinner_for_tonight|
dinner_for|Nclock dinner_is|at dinner_is|now dinner_is|plan dinner_up_by| dinner|b_at dinner|happen
dinner|happen_Nduration dizzy_and| dizzy_and|sam do_N:core_sound| do_about| do_about|it do_a|THING
do_i_bast| do_i_n| do_if| do_i|carv do_i|do do_not|keep do_roast| do_roast|DISH do_this|for
do_th|whatsit do_without|th do_you_mak| doctor_told| doctor|told_allergy dog_THING| dog_THING|th
dog_has_had| don_Nduration| don_all_th| don_b| don_b|patient don_i|am don_i|hav don_th|DISH
don_w_U| don|for_P don|with_it door_hang|open door_now| door_on_th| doorbell_is| doorbell_is|gon
doorbell_that| doorbell_that|is door|N:few door|open_Nduration dough| dough|is dough|is_shap
down_back_in| down_lik|a down|a_bit down|for_Nduration down|to_eat do|N:core_sound do|a_roast
do|dairy do|it_hav do|it_in do|not_trust do|not_w do|now do|th_french do|th_oven do|w_tak do|you_want
drop_th|THING drop|of drop|th_THING drop|to drown|her earlier_than| earlier|than early_can|w
early|can eat_Nduration|early eat_th|DISH eat|Nduration_earlier eat|THING_that eat|at_N:oven
eat|it_otherwis eat|nut electricity_is|aff electricity|again element_blew_actual| enough|to_coat
even_w| even_w|din every_alarm_in| every_singl| everyth_is_happen| everyth_that| everyth_that|is
every|last_DISH exampl_of| exampl_of|what expect_N:some| expect_N:some|for expect_m| expect_m|for
extractor|is f_god_help| f_god| f_god|help fac_is| fac_is|swell faff|with_french faff|with_th
fancy_do| fan|and fan|is_off fan|is_on far_along_ar| fat_cap_down| fat_splash_on| fat|splash
fat|splash_on favour_and| favour_and|shout fella_behind| fella_behind|th figur| final|N:core_$
find_th_other| finger_with_th| finger_with| finger_with|th finger|off finger|with finger|with_th
finish_with|th finish|yet fin|as fin|as_it first_so| fix|to_sit flam_in| flam_in|th flam|com_out
flat_and| flat_and|i flatmat| flat| flip_th|DISH folk|will_not footy| footy|team for_N:few_hungry|
for_P_nor| for_U|is for_all_of| for_help|in for_mop| for_mop|up for_new| for_new|year for_that|at
for_this|stag for_th|THING for_th|U for_th|cor for_th|dinner for_th|roll forget_about| forget_check|
forget_check|th forget|what_you for|DISH_so for|Nduration_$ for|P_and for|all_of for|cream
for|ic for|now for|th_roll for|what_reason found_out|th freez_th| freez_th|plan french_is|not
fresh_DISH_in| from_N:core_last| from_N:core|last from_th|THING from_th|fridg from|her from|now_till
front_room| front_room|with froz| full_hous_miss| fully| f|th_chook gas_bottl|hook get_THING|to
get_out| get_start| get_start|myself get|away get|away_with get|lat get|roast get|roast_DISH
giv_it|a giv_m|a giv_th|DISH glass|and glass|and_th gluten_is_out| go_alongsid_DISH| go_back|
go_how| go_out|at go_steady| go_steady|no go_to_eat| go_to_wait| go_to|DISH go_to|U go_to|hit
go_to|look go_to|mak go_to|tak go_up_in| go_upstair| go_with|medium gon_from_N:few| gon_jar|
gon_jar|is gon_ther| gon_ther|is gon_they_ar| gon_up_in| gon_way| gon_way|past gon|cold_on
gon|up_in good_for|N:few good_or| good|N:some got_a_fan| got_guest| got_guest|to got_my|P got_th|THING
got_tim| got_to_th| got|th_DISH got|th_THING got|th_green go|in_$ go|in_now go|to_go go|to_tak
go|up_to grab_th| granddad_is|not granddad|is greas|and greas|and_can green|DISH_too grey_all|th
grey|and guest_cam_U| guest|ar_Nduration guest|hav_com guest|to_N:few guest|to_greet h_has_had|
h_has|gon h_is|help h_is|on h_would| had_a|fall had_for_P| had_it|is half_th_DISH| half_th|THING
half|past handl_cam_off| handl|anyth handl|anyth_with handl|cam handl|cam_off happen_at| has_been_at|
has_been|Nduration has_been|sit has_chest| has_chest|pain has_com|for has_gon_jar| has_gon_ston|
has_got|th has_had_it| has_left|th has_not|reduc has_to|hav has|DISH_out has|been_off has|been_sit
has|com_out has|com_up has|gon_cold has|gon_down has|gon_in has|gon_out haul_this_th| hav_DISH_th|
hav_U_it| hav_all_sat| hav_all|U hav_a|r hav_burnt_my| hav_electricity| hav_electricity|again
hav_gon_and| hav_gon_to| hav_gon|in hav_got_Nduration| hav_got|to hav_it|yet hav_lost_my| hav_lost|Nduration
hav_ne'er_a| hav_not_a| hav_not_carv| hav_not_got| hav_not_pull| hav_not_touch| hav_not|don
hav_not|finish hav_overcook| hav_overcook|it hav_plenty_of| hav_plenty|of hav_put|alex hav_remov_th|
hav_roast|DISH hav_rock| hav_rock|up hav_set_off| hav_taken|th hav_th|THING hav_to_tak| hav_volunteer|
hav_volunteer|for hav_w|got hav_you|seen hav|DISH_as hav|a_THING hav|an hav|arriv hav|gon_and
hav|got_Nduration hav|got_power hav|had hav|her hav|it_medium hav|land hav|left hav|miss_th
hav|not_mad hav|not_risen hav|not_start hav|nut hav|pull_it hav|rung hav|th_THING hav|th_flu
hav|tim hav|to_start hav|wip hav|wip_th hav|you_don head|out heat_all| heat_all|th heat_at|
heat_at|th heat_th_fat| heat|th heaven| help_it_is| help|in_THING help|m_with henderson_ar|
henderson_so| her_Nduration|ago her_at|N:oven her_back|to her_befor| her_befor|N:few her_how|
her_lik|a her_sleev_and| her_th|whol her_well|don her|back_to her|befor her|befor_N:few her|eat
her|eat_pink her|sleev_and her|th_rest hey_company| hey_company|pull high_heat| high_heat|at
his_P_is| his|P_is his|immun his|immun_system hit_N:core_whil| hit_th_deck| hit_th_wrong| hold_dinner|
hold_on_a| hold_your| hold|at_N:core hom|crowd hom|crowd_today honestly_let_us| hood|was hood|was_on
hop_nobody_is| hop|in hop|in_th hors_i| hors|i_hav hors|they hors|they_want hot_do|th hot_fat|splash
hot_handl_my| hot_in|her hot_it| hot_it|is hot_sh| hot_sh|is hotter| hous_afternoon| hous_afternoon|shop
hous_miss| hous_miss|th how_am_i| how_am| how_am|i how_ar|w how_hot_do| how_is|your how_low_should|
how_many|ar how_pink_is| how_pink_will| how_thick|do how|com_th how|is_th how|it_was how|long
how|pink_will h|is i_after|THING i_am_all| i_am_chas| i_am_drown| i_am_gon| i_am_hold| i_am_lat|
i_am_nip| i_am_up| i_am_us| i_am|after i_am|all i_am|com i_am|driv i_am|miss i_am|us i_at_a|
i_b|tak i_can| i_can|check i_could|not i_cover|it i_crank| i_fancy_do| i_find| i_find|th i_got_th|
i_got_tim| i_got|to i_grab_th| i_hav_been| i_hav_bought| i_hav_kept| i_hav_overcook| i_hav|a
i_hav|don i_hav|th i_hav|wip i_heard| i_hit| i_hit|th i_left_it| i_left|it i_left|th i_may|
i_never_got| i_ought| i_ought|to i_press_it| i_put| i_put|THING i_put|in i_put|it i_rest| i_rest|it
i_said|N:some i_say_to| i_se_th| i_set_th| i_slic|my i_stick|th i_tak_th| i_tast|th i_tell_ya|
i_think_i| i_turn_it| i_us|instead i_want| i_want|P i_want|for i_will_sear| i_will|mak i_will|not
i_would_do| i_would_th| id_say| id_say|they if_i_pull| if_i|am if_i|pull if_sh_has| if_that|is
if_they|ar if_this| if_this|is if_th|DISH if|someth in_U_and| in_and_w| in_and|i in_bob_for|
in_degre| in_how| in_i|forgot in_law_has| in_metric_so| in_my_liv| in_my|THING in_old| in_old|money
in_our|hous in_plac|of in_real| in_som|DISH in_th_P| in_their_coat| in_ther|as in_th|THING
in_th|center in_th|roast in_till| in_traffic_another| in_with_th| in_with|th inch_as| inch_as|U
ingredient| instead_of_th| instead_of|fresh instead_of|win instead|of_a instead|of_dry internal|N:core
intolerant_so_watch| into|my_palm invit|themselv in|a_row in|bit in|bob in|bob_for in|celsius_i
in|her_for in|his in|hiv in|real_degre in|th_build in|th_cold in|th_liv in|th_teenager in|th_thick
in|their_coat in|they iron| is_N:core_i| is_N:core_not| is_N:core_th| is_N:core_what| is_N:oven|now
is_THING_and| is_act|weird is_after|com is_all_too| is_all|too is_alway|N:few is_a|N:few is_a|bit
is_back_thank| is_battery| is_battery|is is_brought_a| is_burn|by is_caught|alight is_chok_on|
is_coeliac_so| is_com_Nduration| is_cook_to| is_dead_it| is_don_and| is_do|a is_fin|as is_flat_and|
is_giv|m is_happen|at is_it_tim| is_it|meant is_join|m is_jump|all is_knock_over| is_mak_th|
is_mix_and| is_not_in| is_not|for is_not|happen is_not|hav is_not|mad is_not|on is_now|at is_no|longer
is_no|second is_out_and| is_oven|run is_pack|in is_peel| is_pescatarian| is_pescatarian|so
is_pregnant_in| is_sat_on| is_sat|on is_set|at is_sinc| is_sleep_in| is_sleep|in is_slip_on|
is_smok_com| is_smok_pour| is_smok|someth is_stuck_to| is_stuck|to is_taken_th| is_tak|N:few
is_that|a is_th|THING is_th|day is_th|scor is_th|story is_th|trick is_too|much is_vegetarian|i
is_very|old is_way|over is_wrap| is_wrap|and is|N:few_less is|N:some is|Nclock is|Ndegrees:oven
is|Ndegrees:some_hotter is|Nweight is|THING_at is|a_vegetarian is|act is|aff is|after_com is|bleed_and
is|bon is|bring is|bring_her is|cark is|cark_it is|com_up is|don_$ is|flat is|flat_and is|for
is|go_on is|gon is|gon_they is|grey_and is|heat_up is|her_to is|hot_now is|ignit is|it is|it_meant
is|it_past is|it_tim is|lactos is|lactos_intolerant is|lat is|m_now is|no_bon is|not_complet
is|not_hav is|not_out is|not_tak is|not_well is|on_chemo is|out_U is|out_for is|oven_run is|peel
is|plan_for is|read_Ndegrees:core is|sear_now is|shot_it is|sit_in is|slip is|still_DISH is|th_reason
is|th_sens is|that_a is|ther_anyth is|too_much is|turn_up is|vegetarian_$ is|very_old is|way_too
is|weak is|what is|wrong it_N:core_N:few| it_again|at it_and|it it_at_N:few| it_a|rest it_back_how|
it_back_in| it_both|sid it_h_is| it_has_been| it_has|becom it_hav| it_if_ther| it_if| it_in_a|
it_in|old it_is_after| it_is_cook| it_is_do| it_is_sleep| it_is|already it_is|burn it_is|cook
it_is|for it_is|not it_is|sat it_is|under it_is|up it_i|do it_meant_to| it_n_to| it_off_at|
it_on_a| it_onto_th| it_out_Nduration| it_roll| it_run|cold it_say|on it_should|b it_sinc|
it_slip| it_tell| it_tell|m it_through| it_till|N:core it_tim| it_tim|to it_to|th it_to|that
it_was_Nduration| it_was|N:some it_was|on it_whil_i| it_will|not it_with_th| it_would| it|N:few
it|Nduration it|all_right it|at_N:oven it|b_this it|back_a it|back_how it|back_to it|com_along
it|down_a it|down_yet it|fell it|for_m it|forward_Nduration it|get_to it|has_com it|is_Ndegrees:core
it|is_a it|is_alway it|is_bedlam it|is_burnt it|is_chewy it|is_cook it|is_rest it|is_sear it|is_so
it|is_still it|is_stop it|is_stuck it|is_under it|meant it|meant_to it|out_for it|tim_to it|to_N:core
it|to_th it|up_to it|was_a it|was_on it|with_DISH it|wrong_$ i|DISH_it i|U_$ i|am_a i|am_back
i|am_com i|am_do i|am_fre i|am_get i|am_leav i|am_miss i|am_not i|am_off i|am_on i|am_skip
i|am_suppos i|am_way i|am_well i|am_with i|bought i|can_do i|can_us i|clean i|clean_forgot
i|cook_at i|cut_into i|do_hav i|go_out i|hav_U i|hav_already i|hav_an i|hav_been i|hav_lost
i|hav_set i|hav_whack i|know_celsius i|know_i i|measur i|never_got i|ought i|ought_to i|pok_th
i|said_it i|say_to i|se i|se_th i|stick_th i|swap_THING i|switch_th i|think_in i|want_th i|want_thos
i|wiggl i|wiggl_it i|will_b i|will_forget i|would_rather jar_is| jar|is_empty jaysus_th|pan
jo_will_handl| jo_will| join_th| joint_go| joint_go|to joint_is|out joint|do_i joint|out_hot
join|m join|m_at jo|will_handl jump_in| jump_in|th jump_past|th jump|all jump|all_over kavi|h
keep_it_down| keep_it_is| keep_tell| kept|insid kilo_i|am kindly_remind|after knock_over| knock_over|th
know_it|is know_th|second know_what_i| know_when|Nduration know_when|i know_when|it know|as
know|as_soon know|if_this know|when_w lad_hav| landlord_is_oven| landlord_is|oven last_of_them|
last_of_th| last_of| last_on|back last_year_and| last|night_$ last|tim_$ lat_get_start| lat_in|
lat_in|her lat_that_is| lat_they| lat_to|sav lat_with|everyth later_than_w| later|than_plan
later|than_w lat|in lat|in_her lat|that_is law_has_com| law_has| law_is|N:few law|ar_at leftover_sit|
leftover_sit|out leftover|stay left|in_this left|th_door leg_of|THING leo_has_a| less_priya_has|
less|th_$ let_all| let_all|th let_m_sort| let_us_aim| let_us_finish| let_us_mak| let_us_skip|
let_us_start| let|m_know let|m_sort let|us_begin let|us_go let|us_mak let|us_not li_down_for|
lick_up| lick_up|th lift_th_joint| lift|th_joint lif|is_too light|has light|has_gon lik_Nduration|
lik_Nduration|ago lik_U| lik_i_hav| lik_it_well| lik|P_us lik|th_cow lik|that lik|water_will
lip|ar lip|ar_swell littl_on_eat| littl|on littl|screen lit| lit|it_at liv_without_DISH| li|down_wak
long_can|leftover long_hav_i| long_hav_th| long|as long|hav_th long|mor long|till_th long|to
look_lik|P look|at_that los_th|r lost|my_helper lot_ar|go lot_will| low_should| low_should|th
lower_oven|sinc lower|oven_at m_Nduration_and| m_and_th| m_at|Ndegrees:core m_a|N:few m_a|r
m_da_will| m_i|hav m_oven_is| m_sort|this m_th_choic| m_th_next| m_thos_number| m_through_th|
m_th|simpl m_till| m_till|it m_twic|as m_up|to m_which| m_with|th mak_DISH|cream mak_U_a| mak_it_N:core|
mak_it_Nduration| mak_it| mak_th|cooky mak|dinner_N:oven mak|m man_i| man_i|am many_minut_till|
many|ar march_so_go| mass_finish| mass_finish|at mass|finish mass|finish_at may| meant_for|
meant_for|you meant|to_b mean|th_oven medium_rar|saf messag_my| messag_my|phon metric_from_now|
metric_so| metric_so|do middl|shelf_$ might_as| might_as|well mind_let_us| minut_left_on| misread|th_label
miss|th_THING miss|th_cousin month|pregnant mop|up mor_ar| mor_ar|com mor_befor| mor_or| mor|ar
mor|ar_com mor|function mor|person most_of| mouth_P| mouth_P|is mov|on_to must_b|bust must_eat_Nduration|
must_i|do must|eat_Nduration my_DISH_is| my_P_put| my_P|will my_THING_speak| my_THING|say my_U|N:core
my_finger|off my_folk| my_folk|will my_liv| my_liv|room my_oven_it| my_oven_run| my_oven|run
my_phon_is| my_thumb_it| my_tim| my_tim|hav myself_with| myself_with|th my|P_set my|finger_on
my|folk my|folk_will my|hous my|lot my|next_job my|option my|option_$ my|oven_li my|palm_is
my|plac my|stov my|thumb my|way m|for_N:some m|in_Nduration m|th_timelin m|when_th m|when_w
n_Nduration|befor n_feed| n_th|DISH n_to_go| n_to|check n_to|pick ne'er_a| near_th|bon nearly|
never_go| never_go|to never_mind_th| never|go never|go_to never|said new_gas_bottl| new|gas
new|gas_bottl next_on|th next|door_for next|step_$ niamh| niamh|is nic_U_i| nip_and| nip_to|
nip|to no_DISH|in no_N:core_not| no_P|left no_THING_at| no_THING_in| no_current_in| no_i_did|
no_it|is no_no_no| no_n| no_n|to no_pink_at| no_that| no_that|is no_th|green nobody_eat|them
nobody_her|eat nobody_is|U nor|money not_b_in| not_believ|this not_bother| not_brown| not_don_b|
not_don|with not_do|dairy not_eat|anyth not_eat|nut not_expect_m| not_finish|yet not_french_th|
not_go|to not_hav_th| not_hav| not_hav|THING not_in_i| not_know_th| not_know|if not_mak_th|
not_meant_for| not_mor|function not_peel|th not_put|th not_reduc_enough| not_se|again not_ther|yet
not_till| not_trust_th| not|N:core not|a_singl not|carv_it not|catch not|com_on not|cook_$
not|do_dairy not|don_b not|don_it not|don_yet not|finish_$ not|get_DISH not|hav_a not|hav_any
not|hav_nut not|hav_th not|i_carv not|in not|mix not|pictur not|pictur_pound not|reduc not|tak_THING
now_for|Nduration now|you no|THING_and no|i_said no|no no|second_oven number_in| number_in|real
number_of| number|in number|in_real nurs_hom| nurs_hom|crowd nut_in| n|a_nudg n|another n|feed_at
n|mor of_THING_over| of_cream_so| of_her|tablet of_my_finger| of_my|P of_rib| of_rib|roast
of_sirloin|Nweight of_smok_it| of_str_lik| of_them_in| of_them_so| of_thos|wireless of_us|non
of_what_to| off_out| off_sinc| off_th|U off_th|oven off_with| off|every off|every_alarm off|for_U
off|out off|sinc off|to_th of|N:few of|THING_Nweight of|THING_now of|THING_on of|delay of|fresh
of|ic of|m of|plan of|what_to ok_instead| ok_instead|of ok_i|am ok_so_i| ok|so_it old|money
on_a_Nweight| on_all|sid on_at|th on_a|second on_chemo|so on_eat|at on_in| on_is_for| on_th_greas|
on_th_wet| on_th|b on_th|leave-in on_th|menu on_th|motorway on_th|pan on_th|stov on_to_boil|
on_to|th on_what_was| on_what|was onto|th_board on|N:core_has on|back on|back_$ on|for_th on|his_foot
on|my_arm on|my_list on|seat on|th_button on|th_plan on|to_th open_th|oven or_ther| or_ther|will
or|N:core or|N:oven or|U_$ or|so or|someth other_oven|glov other_room|for other_way|THING other|oven_glov
other|room_for other|th_i ought|to_b our|hous out_all| out_and_th| out_by|th out_for|m out_in|hiv
out_is| out_i|hav out_of_this| out_of|you out_on_th| out_on|th out_th_sear| out_they|ar out_th|other
out|P out|for_N:few out|of_her out|on_$ out|so oven_alway|com oven_at|all oven_dial_is| oven_dial|is
oven_door_hang| oven_glov| oven_has_got| oven_has|been oven_has|gon oven_is_Ndegrees:some|
oven_is_pack| oven_is_smok| oven_is|back oven_is|banjax oven_it|is oven_i|hav oven_pack| oven_set|to
oven_to_N:oven| oven_took| oven_took|ag oven_with| oven|THING_N:some oven|at_all oven|back_to
oven|glov_$ oven|is_Ndegrees:some oven|is_back oven|is_cark oven|is_fre oven|is_off oven|mind
oven|on_now oven|run_Ndegrees:some oven|sinc_Nduration over_from| over_th|DISH over_th|shop
over|my over|th over|th_pint p_m|at pac_slow| pac_slow|day pac_with_your| pack|up pair|of_THING
pan_THING_hav| pan|THING pan|is_alight paper|THING parchment_is|ignit pass|us pass|us_th past_N:core_without|
past_m| past_well| past_well|don past|N:core_without peel_and|cut peopl|i_hav person_for_th|
person_is| person_will_b| person|for person|for_th per|person pescatarian|so pescatarian|so_h
pet_has_chest| pet_is| phon_to|my phon|call_from phon|to_my pick_th_P| pick|up piec_rib_with|
pink_THING| pink_at|all pink_is|it pink_so_well| pink_will| pink|as pin|in pin|in_it plac|of
plan_as| plan_as|well plan|on_N:few plat|down_Nclock play|with plus_a_U| plus|a plus|a_U pop_th|roll
pop_to_th| pop_to| pop_to|th possibility|ar possibility|ar_ther postpon_th|dinner pound|kilo_$
power_has|gon power_is|back pregnant_in| pregnant_in|th preheat_to|N:some press_th_wrong| priya_has|
priya_has|got proper_rar| proper_rar|roast prov_Nduration| prov|Nduration_ago pull_th|DISH
pull|this pull|this_at put_DISH_cream| put_Nduration|by put_a_pin| put_it_up| put_th|THING
put|DISH_DISH put|Nduration_by put|alex put|alex_on put|th_P put|th_dinner quarter_inch_as|
r_DISH|ar r_currant| r_currant|jelly r_win_P| ran_out| rang_they_will| rar_N:few_to| rar_as_you|
rar_is_a| rar|roast rar|roast_this rar|saf rar|saf_for raw_in|th read_it| read_look_U| ready_for_that|
ready_for| ready_in|tim ready|for_that reason_w_do| reason_w|do reason|w_do record| reduc_enough|
reduc_enough|to regular_bak|from remind_m_to| remind|after remind|after_Nduration remind|m_$
remind|m_of remov_it|from remov|from rest_in_th| rest|ar_park rest|it_for rest|of_us rest|timer
rest|timer_start rib|THING_Nweight rib|is_in right_DISH_ar| right_for_this| right_or| right_that|is
righto_rib| righto_rib|is right|this right|this_second ring_off| ring_off|for road|ar_U roar_at|
roar|at roast_DISH|with roast_has|DISH roast_is_not| roast_is|on roast_on|th roast_out|of roast_went|
roast_went|in roast_without| roast|DISH_for roast|fell roast|fell_on roast|get roast|get_to
roast|is_at roast|out_of roll_DISH_is| roll_and|ti roll_ar_not| roll_n_Nduration| roll_prov|
roll_prov|Nduration roll_up_her| roll|and_p roll|ar_in room|for_N:some room|with_a rop_in|bob
run_so| run_that| rung_they_will| run| run|at_N:oven run|cold_by run|hot_by r|DISH_ar r|currant
r|currant_jelly r|or_THING sack_that| sack_that|step sack|off sack|off_th saf_to_DISH| saf_to|eat
said_N:core_not| said|N:core salt_and| salt|it_th sam|is_help sat_at|N:core sat_down|and sat_on|th
sat|down_and sat|on_a say_N:oven_and| say_N:some| say_medium| say_oven| say_to_th| say_to|m
say|N:core_now say|N:few say|U_tenderis say|h say|to_m scald|my_arm school| scrap|of scratch|that_i
sear_it_again| sear_on_all| sear|altogether season_it_both| season|it_both seat|and second_it|touch
second|it_break second|tim second|tim_$ sell_to_th| serv_it_at| serv_it|with serv|at_N:few
set_another| set_another|plac set_off|every set_th|tabl se|again se|to sh_hit| sh_hit|N:core
sh_is_up| sh_is| sh_is|after sh_is|bring sh_is|don sh_mak| sh_say_to| sh_say|to sh_will_look|
sh_will|not shit| shop_back| shop_back|in shop_had_no| short_U|is should_b|ready should_do|
should_it_com| should_it|com should_i|put should_th|oven should|i_bast should|i_pull shout_m|
shov|it show_m| shower_back| shower_back|in shower_giv_m| shut_off| shut_off|th shut|up_$ sh|go
sh|will_b sinc_Nclock_and| sinc_it_was| sinc|N:oven sinc|N:oven_$ sinc|Ndate sinc|it singl_DISH_in|
sirloin|Nweight sit_at|N:core sit_in_a| sit_on_th| siz|of skim| skip_th|THING skip|th_french
skip|th_ty skip|this sleev_and| sleev_and|sh slic|and slid_off_th| slid|by slid|by_Nduration
slip|on slip|on_th slow_and| slow_chopper_THING| slow|day slow|today_Nduration smok_com|out
smok_pour|out smok|everywher smok|someth smok|someth_U so_DISH| so_N:few|mor so_aim| so_aim|for
so_i_can| so_i|can so_i|hav so_lay_N:few| so_non_of| so_no|THING so_tak|it so_watch|th so_what_do|
so_w|ar som_exampl_of| som_of_th| someth_is|burn someth_i|can someth|i_can som|DISH_roll som|tim
sorry_it_was| sorry_that_was| sorry_that| sorry_th|phon sorry_what_i| sort|this sort|this_out
soup_go_out| soup|go soup|go_out so|N:few_fewer so|aim so|aim_for so|do_it so|go_careful so|low
so|serv so|serv_N:few so|watch_th speak_celsius|giv speak_in|celsius speak_up| speak|celsius_N:some
splash_on| splash_on|my stand_in_for| stand_rib| start_th|clock start_up| start_up|again start_wait|
start_wait|now start|it_hot start|myself start|up start|up_again stat| stat|of steady_heat_all|
steady| steady|heat_all steady|no steady|no_sear step_out_for| step|out_for stev_help| stev_help|out
still_cold|in still_good_for| still_good| still_hav| still_hav|not still_to| still_wait| still_wait|on
still|DISH_$ still|crunchy still|heat still|raw stop_th|timer stop| stop|nagg_it stop|nagg_m
stop|that_timer stor_what| stor_what|should stor| str_in_th| str_lik| str_lik|you straight_from_th|
straight_to|THING stray_on| stray_on|th strik_th|DISH stuck_behind_a| stuck_behind|a stuck_in|it
stuck_to_th| stuck_to| stuck_to|th stuck|to stuck|to_th stuff_is| stuff_th|DISH supper|is_at
swear_it|is swell| switch_th_fan| switch_to|celsius switch|off_th switch|th tabl_at_Nclock|
tabl_by|N:few tabl_by|Nclock tabl_it| tabl_it|is tabl|it tabl|it_is tak_N:few| tak_over_th|
tak_th_bin| tak_th_roll| taken|out tak|N:few_tim tak|it_to talk_m|through tast|th teach_m|how
teach| teach|m teaspoon|of teaspoon|of_salt teenager| tell_m_i| tell_m|at tell_m|that tell_your|P
tell|m_i tell|m_to temperatur_th|whol temperatur|is_medium th_DISH_N:few| th_DISH_can| th_DISH_countdown|
th_DISH_sh| th_DISH_want| th_DISH_was| th_DISH|n th_DISH|no th_DISH|yes th_N:core| th_P|of
th_P|up th_THING_a| th_THING_cam| th_THING_com| th_THING_for| th_THING_get| th_THING_now| th_THING_with|
th_THING|N:few th_THING|behav th_THING|do th_THING|leave-in th_THING|under th_THING|will th_back_of|
th_bridg_is| th_bus|is th_butter_and| th_butter_with| th_can|i th_cheap| th_cheap|THING th_church|hall
th_cream_i| th_day|befor th_deck| th_deck|out th_dial_THING| th_dog_THING| th_door|N:few th_electricity_is|
th_end_of| th_end_th| th_end|of th_even_w| th_fan|is th_fella_behind| th_front_room| th_glass|
th_glass|and th_greas| th_greas|and th_guest_ar| th_henderson_ar| th_henderson_so| th_high_heat|
th_hood| th_hood|was th_hot|oven th_hous_afternoon| th_it|is th_lad_hav| th_last|th th_littl|screen
th_messag_my| th_next| th_nurs_hom| th_n| th_oven_has| th_oven|di th_pac_slow| th_pair| th_pair|of
th_pan_is| th_pan|and th_parchment_is| th_plan_as| th_power_is| th_r_win| th_road|ar th_roast|fell
th_roast|get th_roll_prov| th_say|N:core th_sear_is| th_sear|altogether th_sear|is th_sens|
th_shop_back| th_stat| th_stat|of th_stor_what| th_stov_is| th_tabl_it| th_tabl|it th_teenager|
th_tip_of| th_top_of| th_trim_to| th_wean|hav th_wet| th_wet|floor th_whol_footy| th_whol|THING
than_it|is than_i|told than_w| than_w|said thank|god_$ thank|you than|N:some than|i_thought
than|it_say that_THING_is| that_U_doctor| that_has| that_in|mind that_is|don that_is|m that_it|is
that_last|on that_on|a that_past_m| that_ring_off| that_was_not| that|a that|at_Nclock that|has
that|i_press that|is_Nduration that|is_a that|is_finish that|is_him that|is_when that|is_wrong
that|on_out that|step_off their_N:few| their_N:few|of their_at|N:few their_coat| their_coat|in
their|at them_so| them_so|i then_blast_it| ther_a_trick| ther_anyth|i ther_a|set ther_go|on
ther_is|a ther_is|enough ther_is|too ther_or| ther_w|go thermostat_is|shot ther|as ther|as_well
ther|is_blood ther|is_pink they_ar_run| they_hav|left they_sat|down they_text_Nduration| they|ar_no
they|com_Nduration they|hav_left they|rang thick|do thick|do_i think_my_THING| think_my| think_roast|
think_roast|DISH this_for|th this_in| this_is|a this_on_is| this_th_run| this_th|out this_whol|tim
this|moment this|old_girl this|on_is this|stag this|stag_$ this|work thos_bon| thos_number_in|
thos_number| thos_number|in thos|wireless thos|wireless_THING thought_i_am| through_th_glass|
throw|in thumb_it_is| thumb_it| thumb_it|is th|DISH_another th|DISH_boil th|DISH_bubbl th|DISH_cross
th|DISH_did th|DISH_from th|DISH_off th|DISH_so th|DISH_too th|DISH_whil th|P_n th|P_of th|THING_check
th|THING_from th|THING_gav th|THING_hav th|THING_no th|THING_or th|THING_pan th|THING_with
th|U_th th|b th|bast th|butter_and th|butter_so th|chair th|christen th|cooky th|couch th|cupboard_$
th|door_let th|fan_on th|full th|grocery th|heat th|henderson_ar th|hot_fat th|last_th th|littl_screen
th|lower_oven th|meal th|menu th|middl_get th|number th|old_folk th|other_on th|out_THING th|oven_back
th|oven_go th|oven_i th|quiz th|roll_i th|roll_timer th|run_Ndegrees:some th|second_it th|shop_for
th|simpl th|simpl_DISH th|sofa th|stat th|stat_of th|tabl_now th|tabl_tonight th|templ th|th_say
th|thickest_bit th|til th|top_oven th|truth_$ th|we_on th|whol_tim till|i_say till|th_DISH
till|th_P tim_and|i tim_for_a| tim_for|th tim_is|your tim_ther| tim_ther|is timer_N:few_wrong|
timer_for_th| tim|do_th tim|hav_gon tim|i tim|is_lactos tip_of| tip_of|my ti|them ti|them_back
to_N:oven_lik| to_N:oven_w| to_N:oven|Nduration to_a_block| to_b_her| to_boil|for to_b|N:core
to_chill_th| to_do|a to_eat_it| to_eat|them to_f_god| to_f_th| to_fetch_th| to_flip_th| to_get|th
to_m_lik| to_mak|th to_n|DISH to_pick|th to_postpon_th| to_regular_bak| to_regular| to_regular|bak
to_serv_it| to_sit_down| to_speak_in| to_tak_a| to_tak|a to_tak|th to_tak|this to_th|DISH to_th|public
to_whip_butter| told_Nclock| told_Nclock|for told| told|you_about too_for_mop| too_many|th
too_much_i| took_it|down took|ag too|high_this too|many_th touch|bon_$ to|DISH_th to|N:few_they
to|N:oven_for to|N:oven_is to|b_Nduration to|buy to|carv_it to|carv_with to|chang_Nduration
to|collect to|dinner to|do_yet to|eat_N:oven to|god_$ to|grat to|grat_it to|help_put to|hit
to|miss to|plan_$ to|play to|reheat to|salt_it to|sav to|say_it to|warm traffic_another| traffic_another|Nduration
trim_to| trim_to|do trust_th| trust|this_THING trust|this_read turn_out_my| turn|on turn|out_i
twic|as_long twin|n ugh| under_THING_by| under_THING|by under_th|THING under_whatever_you|
understand| undo_that|last undo|th up_after_th| up_at|N:few up_her|sleev up_i|am up_lik|a up_on_th|
up_to|my up_when|it upstair_to|chang up|at_Ngas-mark up|th_back up|to_N:few up|to_sp us_aim|
us_aim|for us_a|leave-in us_eat|Nduration us_finish|at us_get|roast us_go_steady| us_hav|DISH
us_know|as us_skip_th| us_start| us_start|over us_that| us_that|is us|begin_again us|instead
us|instead_of us|non vegetarian|i very|much very|old w_U_th| w_U|th w_add| w_add|DISH w_ar_Nduration|
w_ar|N:few w_ar|on w_ar|roll w_at_at| w_at|at w_can|sit w_hav_electricity| w_hav_not| w_hav_run|
w_hav_to| w_hav|lost w_hav|not w_hav|run w_jump_past| w_know| w_lift| w_lift|th w_los_th| w_must|
w_must|eat w_should_hav| w_skip_th| w_took| w_up| w_up|to w_want|to w_will|do want_for|N:few
want_her_well| want_his|rar want|P want|P_eat want|for_N:few want|his_well want|it_medium want|th_THING
warn|m_at was_N:core_not| was_N:core_when| was_hang| was_lay_th| was_my|P was_on_what| was_that|last
was_th|DISH wash_up_as| wash_up|as wash_your| wash_your|THING wash| was|at_N:core was|on_N:core
was|touch was|touch_bon water_on|his water|and water|boil_at way_my_folk| way_my|folk way_sorry_th|
way_to|get way|past wean|hav wean|hav_to wedd| well_don_all| well_don|you well_how| well|don_all
well|don_you well|i went_in_N:few| went_up_to| wer_Nduration|behind wer|th wer|w wet|floor
what_all_possibility| what_can_i| what_did|th what_do_th| what_gas_mark| what_i_hav| what_is_my|
what_is|Ndegrees:oven what_is|a what_is|com what_is|it what_is|my what_it|is what_i|said what_should|th
what_sh| what_will|it whatever_you|ask whatever_you|call what|about what|all_i what|degre what|is_happen
what|should_sh what|should_th what|should_w what|temperatur_for what|tim_ar what|tim_is what|to_do
what|weight what|weight_of when_do_everyth| when_is|it when_it|com when_it|is when_i|am when_i|cut
when_sh_hit| when_w_ar| when|Nduration when|i_cut when|i_will when|sh_get when|th_roast when|w_hit
wher_did|i wher_wer| wher_wer|w wher|exactly wher|exactly_do wher|th_THING wher|wer wher|wer_w
which|th whil_got_guest| whil_i_find| whip_butter| whip_butter|with who_can|not who_hav|not
who_left|th whol_THING|THING whol_footy| whol_footy|team whol|THING_THING whol|plan whol|street_is
whol|tim who|eat_what who|left why_can| why_can|not why_in| why_in|th why_it|is why_so| why|do_it
why|must why|not_$ why|so will_P| will_P|get will_b_in| will_b|eat will_handl| will_handl|anyth
will_hav|th will_not_go| will_not_se| will_not|heat will_pass_on| will_sear|at will|DISH_th
will|THING_do will|b_right will|b_th will|not_shut will|not_stop will|y will|you_$ win_P| win_P|drank
win_in_th| wireless_THING| wireless_THING|is with_DISH|cream with_Nduration_of| with_b_ready|
with_th|bon with_th|butter with_th|prep with_th|roast with_th|sid with_your|list without_DISH|THING
without_tell| without|DISH_$ without|DISH_my without|tell_m with|Nduration_of with|a_drink
with|medium_well with|salt_and work|on_this would_P_to| would_i|put would_lik|it would_not|
would_you_say| would_you|suggest would|P_to would|not_believ would|ya would|you_and would|you_ever
would|you_i wrap|and_in w|ar_N:some w|ar_do w|ar_eat w|ar_into w|ar_metric w|ar_off w|ar_preheat
w|can_sit w|go_th w|hav_decid w|hav_lost w|hav_pick w|hav_plenty w|jump w|mak_U w|mak_it w|on
w|on_track w|open w|sell w|should_do w|will_DISH w|will_U w|will_go yank|it_out year|old_at
yes_i_am| yes_or| yes_or|no yes_w|should yet_it| yet_th|U yet_to|grat yok_at| you_U| you_ar_th|
you_b| you_can_drop| you_had| you_hav_had| you_in|N:some you_look_at| you_plan|on you_reckon_w|
you_run|that you_se_th| you_shov_it| you_want|m you_when| your_hors_i| your_hors|they your|hair
your|list your|list_at your|mouth your|teeth you|ask_for you|believ you|can_manag you|in_N:some
you|reckon_it you|se you|seen you|talk you|think_$ |@1.7 |@105 |@111.0 |@111.1 |@111.6 |@116.4
|@116.5 |@134 |@136.0 |@140.2 |@143 |@146 |@146.1 |@15 |@15.3 |@19 |@28.1 |@32.0 |@34 |@34.7
|@40.0 |@41 |@51.0 |@54.1 |@58.4 |@60 |@68 |@75.6 |@79.5 |@80 |@90 |@90.3 |DISH_DISH_as |DISH_DISH_tast
|DISH_N:few |DISH_and |DISH_and_th |DISH_another_Nduration |DISH_anymor_$ |DISH_ar_burn |DISH_ar_wedg
|DISH_at_Nclock |DISH_at_th |DISH_bubbl |DISH_i |DISH_in_U |DISH_it_alon |DISH_load |DISH_my_guest
|DISH_nobody_lik |DISH_on_th |DISH_or_th |DISH_out_sinc |DISH_w_lik |DISH_w_will |DISH_was
|DISH_will_not |DISH_with_th |DISH_with_this |N:core_N:few |N:core_and_what |N:core_in_no |N:core_lik_Nduration
|N:core_now_th |N:core_repeat |N:core_sound |N:core_sound_right |N:core_was |N:core_we |N:core_we_isla
|N:core_which |N:core_without_tell |N:few_account |N:few_account_for |N:few_and_what |N:few_do_not
|N:few_is_when |N:few_lat_on |N:few_month_old |N:few_or |N:few_person_will |N:few_temperatur
|N:few_tim_what |N:few_under_so |N:oven_Nduration_ago |N:oven_for_a |N:some_so |Nclock_N:some
|Nclock_and_what |Nclock_i_got |Nclock_in_th |Nclock_sharp |Nclock_th_roast |Nclock_w_ar |Ndate_Nclock_and
|Ndegrees:core_let |Ndegrees:core_let_m |Ndegrees:oven_convection |Ndegrees:some_hotter |Ndegrees:some_hotter_than
|Nduration_DISH_i |Nduration_THING_trip |Nduration_ago_whil |Nduration_behind_i |Nduration_by
|Nduration_by_for |Nduration_front |Nduration_front_door |Nduration_lat_so |Nduration_left_on
|Nduration_of_delay |Nduration_off |Nduration_off_schedul |Nduration_pet |Nduration_set_a |Nweight_and
|P_back |P_back_in |P_eat_by |P_is_expect |P_mak |P_of |P_us_up |P_will_b |THING_N:some_low
|THING_Nweight |THING_Nweight_bon |THING_THING_anywher |THING_THING_do |THING_THING_has |THING_and_i
|THING_and_w |THING_ar_U |THING_check |THING_do_it |THING_her_a |THING_medium |THING_out_and
|THING_say_th |THING_till |THING_tonight |THING_was_touch |THING_whol |THING_with_th |THING_yes_or
|U_tenderis |a_N:few_rib |a_Nweight_prim |a_THING_fan |a_THING_over |a_U_to |a_block |a_drink
|a_fair |a_fever |a_fresh |a_go_at |a_helper |a_nap |a_nic |a_nudg |a_nudg_in |a_problem_$
|a_roast_without |a_row |a_shout_when |a_singl |a_spoon_$ |a_vegetarian |a_warm |a_warn |a_yell
|about_my_oven |about_th_DISH |after |after_Nduration_to |after_com |again_i_was |ago_i_put
|ago_ther |aim_for_that |alex |alex_on |alex_on_DISH |all_U_THING |all_of_us |all_over_th |allow
|alternativ |am_Nduration_lat |am_a |am_back |am_com |am_do |am_drown_her |am_fre |am_get |am_go_to
|am_i_aim |am_leav |am_leav_it |am_miss |am_not |am_not_don |am_off |am_on |am_on_th |am_skip
|am_stand_her |am_suppos |am_suppos_to |am_way |am_way_behind |am_well |am_well_behind |am_with
|am_with_you |and_his |and_i_can |and_not |and_not_N:few |and_roar |and_th_readout |another_mouth
|another_mouth_P |any_THING |any_good |any_other_way |anymor_th |anyth_with_pastry |ar_Nduration
|ar_Nduration_off |ar_U_they |ar_U_through |ar_do_it |ar_early |ar_eat |ar_expect |ar_go_in
|ar_her_well |ar_in_and |ar_into |ar_metric |ar_metric_peopl |ar_miss_THING |ar_not_warm |ar_preheat
|ar_still_squeaky |ar_swell |ar_swell_up |ar_ther_tell |ar_up_and |ar_warm_$ |ar_wedg |ar_wedg_and
|army |as_well_ay |ask_th_THING |asleep_$ |asleep_$_$ |at_N:core_$ |at_N:core_can |at_N:few_on
|at_my_P |at_th_colour |at_th_stov |away_with |b |b_DISH |b_N:core_$ |b_Nduration_later |b_at_N:oven
|b_at_Nclock |b_at_th |b_away |b_bother |b_com |b_lat |b_long |b_put |b_so |b_th |b_ther |b_this_slow
|back_Nduration_and |back_Nduration_th |back_a_tick |back_how |back_how_it |back_thank |back_thank_god
|back_to_Ngas-mark |bad |bag_$ |bag_$_$ |bag_of |battery_is_flat |been_N:few |been_THING |been_off
|been_off_sinc |been_sit |beer |befor_N:few_so |begin_$ |begin_$_$ |behav_itself |behav_itself_$
|behind_a_tractor |behind_in |behind_it_is |behind_schedul_$ |behind_th_cow |bit_longer |blackout
|bleed_and |bob_for |bob_for_th |boil_for_DISH |bother_$ |bother_$_$ |bother_with_DISH |bowl_$
|bowl_$_$ |breakfast_$ |breakfast_$_$ |bring_DISH |bring_her |burn_my_arm |bus_is |business_$
|business_$_$ |butter_all_over |butter_left |butter_so_no |by_N:few_sorry |by_hot |by_hot_THING
|by_now |call_from_work |can_carv |can_carv_$ |can_i_tak |can_keep |can_manag |can_not_pictur
|can_sit |can_sit_down |can_stir |can_stir_th |cark |cark_it |carry_on |cat_$ |cat_$_$ |caught_light_on
|celsius_N:some |celsius_i_do |chanc |chang |chang_Nduration |chang_my |charger_$ |charger_$_$
|check_th_cupboard |chok_and |clock |cold_and |cold_by_Ndegrees:some |cold_on_th |collaps_$
|collaps_$_$ |collect |com_down |com_for |com_in_Ndegrees:some |com_out_yet |com_to_th |com_too
|cook_at_a |cooler_than_it |cover_it_$ |cream_i |creep |cremat_$ |cremat_$_$ |crowd_today |crowd_today_so
|crust_$ |crust_$_$ |currant |currant_jelly |cut_up_and |dark_$ |dark_$_$ |day_i |deal |di_and_th
|dial |did_it |dinner_N:oven |dinner_N:oven_$ |dinner_happen |dinner_happen_Nduration |dizzy
|do_about |do_after |do_dairy |do_hav |do_hav_a |do_i_set |do_it_lik |do_not_find |do_yet |do_you_mak
|do_you_understand |don_U |don_b_patient |don_h |don_yet_$ |door_for_Nduration |door_let |door_now
|door_open_$ |down_wak |down_wak_m |down_with_someth |eat_N:oven |eat_Nduration_befor |eat_i
|eat_pink |eat_pink_so |edg |end_of_th |even_U_it |every_alarm |every_alarm_in |everywher_th_THING
|exactly_do |exactly_do_th |extra_Nduration |extra_for_dinner |extra_tim |fan_set |feed_N:some
|feed_at |few_minut |few_minut_$ |find_th |finish_yet_$ |flat_and |flat_and_i |flight_is_lat
|folk_will |folk_will_not |foot_$ |foot_$_$ |for_DISH_so |for_N:core_after |for_N:core_at |for_Nclock_on
|for_Nduration_to |for_a |for_a_we |for_help_in |for_th_peopl |for_that_at |for_tonight |fre_$
|fre_$_$ |fresh_on |fresh_on_$ |from_convection |from_now_and |full_of_smok |gas_bottl |gas_bottl_hook
|gat_$ |gat_$_$ |get_DISH_for |get_from |get_ill |get_ill_from |get_ther |go |go_careful |go_for_N:few
|go_lower |go_out_for |go_th_THING |go_to_bother |go_to_mak |go_to_ti |go_up |go_with_th |gon_THING
|gon_cold |gon_from |gon_from_N:few |gon_they |gon_they_ar |got_N:core_in |got_Nduration |got_a_cold
|got_a_vegan |got_is |got_power |got_to_b |grat |grat_it |grey_and_sad |guest_hav_arriv |guest_less
|guest_to |had_to_THING |happen_$ |happen_$_$ |happen_Nduration |happen_Nduration_sooner |happen_at
|has_DISH |has_been_taken |has_gon_DISH |has_gon_down |hat_$ |hat_$_$ |hav_THING |hav_already
|hav_an |hav_any |hav_arriv_$ |hav_been_turn |hav_brought |hav_drop |hav_got_Nduration |hav_got_it
|hav_had_a |hav_it_medium |hav_it_on |hav_left |hav_miss |hav_miss_th |hav_not_N:few |hav_not_finish
|hav_not_start |hav_pick |hav_pick_up |hav_pull |hav_put |hav_sat |hav_their_at |hav_tim |hav_whack
|hav_whack_it |heat_all |heat_all_th |held_up_i |help_put |helper |henderson_ar |her_and_i
|her_on_th |her_sh |her_well |high_this |high_this_needl |him_on |hit_N:core_lik |hiv |hob_has
|hook_up |hook_up_flam |hot_$ |hot_$_$ |hot_to |hotter_than_sh |hous_$ |hous_$_$ |how_you |i_after
|i_b_worri |i_can_check |i_cut_it |i_do_about |i_do_hav |i_do_next |i_do_th |i_get_away |i_hav_U
|i_hop |i_kill |i_kill_it |i_know_i |i_mean_th |i_not |i_open_th |i_stop |i_swap_th |i_will_start
|idea_of |if_i_tak |if_you |in_N:few |in_THING_in |in_a_row |in_as |in_butter_$ |in_for_m |in_her_throat
|in_it_whil |in_kilo_$ |in_real_degre |in_sick |in_sick_so |in_sinc_N:few |in_som_roll |in_th_DISH
|in_th_cold |in_th_top |in_yet_$ |in_yet_and |in_yet_still |inform |into_it_and |into_th_DISH
|iron_THING |is_N:oven_now |is_Ndate_sit |is_Ndegrees:oven_$ |is_P_$ |is_U_th |is_a_Nweight
|is_a_bit |is_a_crim |is_a_fir |is_act_weird |is_after_com |is_all_U |is_all_mix |is_at_Ndegrees:core
|is_back_on |is_bedlam |is_bleed_and |is_broken_so |is_chewy |is_coeliac_so |is_com_$ |is_du
|is_empty_and |is_hav_a |is_heat_up |is_him |is_his |is_hit |is_hot_$ |is_in_and |is_in_beer
|is_left_$ |is_load_with |is_need_$ |is_no_longer |is_not_answer |is_not_mix |is_not_ready
|is_not_right |is_on_N:some |is_on_at |is_out_shut |is_pass |is_preheat_$ |is_ready_i |is_ready_it
|is_scorch_in |is_sear |is_shap_N:few |is_show_m |is_shut_$ |is_sit_in |is_slip_on |is_smok_everywher
|is_stand_$ |is_still_DISH |is_stuck_on |is_stuck_to |is_tail_her |is_th_doorbell |is_th_story
|is_thin |is_thin_as |is_too_much |is_too_short |is_took |is_vegetarian_i |is_volunteer |is_way_over
|is_weak |is_your_P |it_Nduration_$ |it_at_N:oven |it_back_$ |it_both_sid |it_break |it_break_N:core
|it_for_N:few |it_for_th |it_forward_Nduration |it_hot_then |it_i_do |it_in_old |it_in_too
|it_is_fin |it_is_over |it_is_set |it_is_spread |it_is_thin |it_meant |it_meant_to |it_medium_rar
|it_on_a |it_otherwis |it_out_Nduration |it_out_befor |it_past |it_rest_$ |it_straight_away
|it_tell |it_tell_m |it_th_day |it_tim |it_tim_to |it_w_ar |it_with_$ |it_with_THING |join_$
|join_$_$ |jump_Ndegrees:some_in |jump_over_th |kilo_and |kilo_is |know_celsius |know_when
|lactos_intolerant |lactos_intolerant_$ |land_at |last_DISH |last_of_th |lat_by_Nduration |lat_that_is
|lat_they_said |lat_to_sav |least_$ |least_$_$ |leav_it |left |let_us_hav |lik_a_balloon |lik_do
|lik_her_well |list_at |list_at_all |littl_light_went |littl_screen |littl_stick |littl_stick_in
|long_as_it |longer_is |lost_Nduration_$ |lot_hav |low_in |low_in_th |lower_oven |m_Nduration_on
|m_about_th |m_and_i |m_at_th |m_fahrenheit_$ |m_how_to |m_in_N:few |m_know |m_lik |m_lik_i
|m_of |m_of_th |m_sort_this |m_th_rundown |m_th_timelin |mad_yet_$ |mak_of |manag_it |many_th
|marathon |medium_rar_N:few |medium_rar_saf |melt |middl_$ |middl_$_$ |middl_get |middl_get_to
|miss_th_THING |month_along |mor_early |mor_peopl |mor_sid |mor_sid_DISH |morn |mov_to_a |much_go
|much_go_on |much_longer |much_longer_$ |murder |my_THING_in |my_helper |my_next_job |my_parent
|my_plac |my_pregnant |my_pregnant_P |my_tail |my_tail_Nduration |my_toddler_eat |myself_on
|n_Nduration_befor |n_a_THING |n_from |n_from_th |n_to_rest |nagg_it |nagg_it_is |nagg_m |never_got
|next_door_for |next_to |nic_bit |nic_bit_of |no_blood |no_bon_in |no_i_am |no_second |nobody_is_eat
|not_a_THING |not_all_of |not_b_near |not_bother_m |not_catch_that |not_com_after |not_complet
|not_complet_som |not_cook |not_cut |not_eat_dairy |not_fahrenheit_$ |not_find_th |not_for_you
|not_in_i |not_it_$ |not_know_what |not_let_it |not_let_m |not_mad |not_mor_function |not_out_yet
|not_ris |not_th_hour |not_trust_this |not_up_to |notion |now_at_N:few |now_itself |now_my
|now_till |of_DISH_th |of_THING_and |of_THING_on |of_a_U |of_butter_$ |of_butter_and |of_cream_$
|of_dry |of_dry_THING |of_it_and |of_roast_DISH |of_sirloin |of_smok_it |of_th_even |of_th_guest
|of_th_sear |of_them_ar |of_them_got |of_them_has |of_ther_$ |of_us_THING |of_us_in |off_at_N:few
|off_on |old_at |old_at_th |on_THING |on_a_second |on_i_am |on_in_ther |on_out |on_schedul
|on_th_bon |on_with_th |option_again |option_again_$ |or_THING_$ |or_lid |or_lid_th |or_so_$
|other_on |other_on_$ |out_already_$ |out_at |out_befor_it |out_first |out_first_$ |out_for_m
|out_is |out_th_other |out_whol_street |out_yet_$ |oven_THING_hang |oven_U |oven_and_N:few
|oven_at_Ndegrees:oven |oven_back |oven_door_open |oven_down_in |oven_is_full |oven_li |oven_w
|over_my_arm |over_th_lot |pack_in_$ |pack_up_$ |pan_is_after |paper |parish |pastry |pay_for
|peopl_ar_join |peopl_cancel |peopl_drop |peopl_drop_out |person_$ |person_$_$ |phon_$ |phon_$_$
|phon_is_buzz |pick_th_P |pictur_pound |pictur_pound_kilo |piec_of_THING |pink_so_well |pink_will
|plac_of_th |plan_for_Nclock |plenty_of |plus_N:few_$ |pok_th |pok_th_THING |pop_too |pop_too_th
|possibl_$ |possibl_$_$ |pound_kilo_$ |pour_out_th |power_went_out |prayer |prep_$ |prep_$_$
|prepon |press_it |press_th_wrong |proper_DISH |pull_in_th |put_you_on |quantity_of_butter
|quick_th |quiz |r_DISH_ther |r_on |rar_N:few |raw |raw_insid |read_Ndegrees:core |read_Ndegrees:core_$
|read_it |ready_by_N:oven |ready_it_is |real_degre |real_degre_celsius |reason_w |rest_and
|rest_now_$ |rest_timer |rest_timer_start |rib_THING_Nweight |rid_of_th |road_$ |road_$_$ |roast_cam_outsid
|roast_on_th |roast_this |roast_this_year |roll_i |roll_i_hav |roll_in_to |roll_timer |room_for_N:some
|rough_up_in |ruin_it_$ |run_hot_by |saf_for_P |said_$ |said_$_$ |said_N:core_not |said_and
|sak_$ |sak_$_$ |salt_and_THING |sam_is_hit |sat_out_Nduration |say_N:core_$ |say_that_$ |sear_is_don
|sear_now_$ |sear_this |sear_this_tim |second_it |seen_th |serv_N:few_later |set_for_degre
|sh_is_hav |shift |short_U |shot_it |shot_it_cycl |should_hav_DISH |should_sh_grab |should_w_do
|shout_in_Nduration |show_m_N:core |show_up_so |simpl_DISH |simpl_DISH_will |sinc_N:oven |sinc_N:oven_$
|sit_at_th |situation |skip_th_french |sleep_$ |sleep_$_$ |sleev_and |sleev_and_sh |slic_it
|slic_look |slip_and_half |slip_by |slip_by_Nduration |slow_today |small_on |smok_com_from
|smok_it |snow_$ |snow_$_$ |so_behind |so_no_DISH |someth_U |sooner_than |spark_and_then |splash_on
|splash_on_my |stat |stat_of |stay_in_$ |stick_th_THING |still_DISH_$ |still_cold_in |still_on_for
|still_raw_insid |stir_th |stir_th_DISH |street_is |stretch |suppos_to |swap_THING |swear_it_is
|switch_th_oven |tabl_at |tabl_tonight |tabl_w |talk_in |teach |teach_m |teach_m_how |tell_ya_and
|temperatur_do |tenderis_$ |tenderis_$_$ |th_DISH_Nduration |th_DISH_now |th_DISH_on |th_DISH_roll
|th_DISH_too |th_DISH_when |th_THING_$ |th_THING_counter |th_U_and |th_U_now |th_block_Nduration
|th_board_$ |th_break |th_build |th_butter_Nduration |th_butter_gon |th_choic_again |th_chook
|th_church_hall |th_clock_$ |th_colour_on |th_dinner_$ |th_end_and |th_flu |th_fridg_sinc |th_guest_is
|th_hall_$ |th_hang |th_heart |th_heat_out |th_hous_$ |th_hous_at |th_lid_on |th_n_m |th_oven_meant
|th_oven_n |th_pan_handl |th_phon_is |th_pint |th_pint_of |th_platter_$ |th_pub_$ |th_public
|th_record |th_rest_sav |th_say_N:core |th_shop_list |th_shower_Nduration |th_sid_too |th_sirloin
|th_station_$ |th_sticker |th_stor |th_stor_what |th_tabl_and |th_tabl_by |th_tabl_for |th_tabl_it
|th_teenager_for |th_thick |th_thick_part |th_thickest_bit |th_thickest_part |th_wedd_$ |th_whol_even
|th_wrong_THING |th_wrong_th |than_w |than_w_said |that_N:core_$ |that_a |that_again_$ |that_saf
|that_timer_$ |that_w |their_coat |their_coat_in |ther_anyth |ther_anyth_i |ther_i |they_ar_off
|they_said_$ |thickest_bit |think |think_in |this_THING_for |this_for_th |this_lot |this_out_first
|this_read |this_read_it |throat_is |through_no_sear |thumb_open |til |tim_ar |tim_what |timer_start_now
|to_DISH_$ |to_N:oven_lik |to_N:oven_what |to_Ngas-mark_as |to_b_$ |to_b_DISH |to_b_Nduration
|to_b_U |to_b_careful |to_bast |to_carv_$ |to_carv_with |to_celsius_my |to_coat |to_coat_a
|to_do_it |to_do_th |to_eat_by |to_get_her |to_get_th |to_greet |to_hear |to_look_lik |to_m_in
|to_mak_a |to_mak_it |to_miss |to_run_to |to_stand |to_turn_it |to_ty |to_ty_it |today_Nduration_behind
|together_$ |together_$_$ |told_allergy |told_you_about |too_low_$ |touch |touch_it_$ |touch_it_if
|traffic_$ |traffic_$_$ |trim_and |truck_w |truck_w_sell |truth_$ |truth_$_$ |understand_$
|understand_$_$ |unless |up_U_is |up_in_flam |us |us_begin |us_finish |us_go |us_go_medium
|us_go_steady |us_know_as |us_mak |us_not |us_that |us_that_is |very_old |w_br |w_br_dinner
|w_do_th |w_know |w_look_at |w_never |w_open |w_run_behind |w_said |w_speak_$ |w_would_you
|want_his_rar |want_rar |want_thos |warm_up |was_U_$ |was_my_P |was_read |was_that_$ |water_boil
|water_test |water_will |water_will_not |way_through |we_on |wedd |well_behind_her |well_how
|went_into_my |went_on_at |went_on_th |wer |wer_w |what_is_to |what_n |what_reason |what_to_do
|whatever |whatever_you_allow |when_Nduration_is |which_on |wiggl_it |wiggl_it_i |will_DISH_th
|will_b_N:few |will_b_th |will_do_without |will_handl |will_handl_anyth |will_hav_their |will_pass_on
|will_start |win_U |wip_th_board |wireless |wireless_THING |wireless_THING_is |with_THING |with_french
|with_it_so |with_someth |with_th_oven |would_b_handy |would_th |ya_$ |ya_$_$ |yank |yok_$
|yok_$_$ |you_do_$ |you_in_N:some |you_plan |you_plan_on |you_put_in |you_reckon_it |you_repeat
|you_stop |you_want_m |your |your_P_and |your_hors_they |z |z_$ |z_$_$
-9 @104.4| @10| @115.0| @116.4| @122.3| @124.0| @124| @125.2| @13.0| @132.4| @146.1| @148.1|
@32.14| @34.7| @38.1| @39.6| @4.16| @4.5| @70| @72| @75.0| @75.2| @77.5| @81| DISH_DISH_hav|
DISH_DISH_n| DISH_DISH|cook DISH_P_it| DISH_THING|as DISH_U|for DISH_and|i DISH_and|th DISH_another|Nduration
DISH_ar_go| DISH_ar|away DISH_ar|ready DISH_as_w| DISH_as|w DISH_can|go DISH_countdown_any|
DISH_do_not| DISH_do|not DISH_for|DISH DISH_for|N:few DISH_for|th DISH_has|split DISH_hit_th|
DISH_in_for| DISH_in_this| DISH_instead_of| DISH_in|Nduration DISH_in|ther DISH_is|THING DISH_is|bubbl
DISH_is|don DISH_is|under DISH_is|wilt DISH_it_in| DISH_it|as DISH_it|b DISH_my_guest| DISH_no_i|
DISH_nobody_eat| DISH_nobody_is| DISH_n|another DISH_out_it| DISH_out_of| DISH_out_sinc| DISH_out_th|
DISH_per| DISH_should|i DISH_solid_i| DISH_solid|i DISH_tast_of| DISH_th_THING| DISH_that_went|
DISH_that|is DISH_timer_and| DISH_want_another| DISH_whatever_you| DISH_whatever| DISH_whatever|you
DISH_whil_i| DISH_whil|i DISH_w|want DISH|DISH_cook DISH|ar_nic DISH|ar_ston DISH|as_w DISH|cook_down
DISH|cream_$ DISH|don_in DISH|has_had DISH|in_butter DISH|in_this DISH|is_raw DISH|is_split
DISH|is_stuck DISH|is_way DISH|must DISH|must_b DISH|my_P DISH|no DISH|on_th DISH|that_went
DISH|under_way DISH|with_that DISH|yet_$ N:core_after|rest N:core_and_can| N:core_and|still
N:core_and|then N:core_as|i N:core_bottl_of| N:core_by_th| N:core_by|th N:core_dinner| N:core_forgot|
N:core_forgot|to N:core_has_not| N:core_i_will| N:core_i_would| N:core_in_no| N:core_in|th
N:core_it|is N:core_i|am N:core_let| N:core_lik|Nduration N:core_obviously_not| N:core_sound_right|
N:core_so|s N:core_stop|anyth N:core_that_cam| N:core_that|is N:core_too|hot N:core_under|th
N:core_we_isla| N:core_what|do N:core_whil|i N:core_whil|rest N:core|P N:core|about_right N:core|already_$
N:core|as_w N:core|i_misread N:core|it_is N:core|kindly N:core|kindly_inform N:core|sound N:core|sound_right
N:core|stop N:core|too_hot N:few_P|and N:few_and|w N:few_can|you N:few_extra_for| N:few_for|dinner
N:few_helper| N:few_lat_on| N:few_less_for| N:few_month|along N:few_mor_ar| N:few_mor_peopl|
N:few_mor|now N:few_mor|plac N:few_mor|to N:few_off_and| N:few_or|N:few N:few_out| N:few_show_up|
N:few_steady|heat N:few_they_hav| N:few_till| N:few|N:few_$ N:few|THING N:few|ar N:few|bon_prim
N:few|burner_work N:few|coeliac_my N:few|fewer_$ N:few|guest_$ N:few|instead_$ N:few|less_for
N:few|less_than N:few|month_old N:few|mor_plac N:few|mor_to N:few|mouth N:few|peopl_$ N:few|r_on
N:few|rib_on N:few|steady_temperatur N:few|still_park N:few|th_U N:few|till_N:few N:few|tim_what
N:few|to_flip N:few|to_go N:oven_for| N:oven_i|hav N:oven_lik|you N:oven_or|so N:oven|for N:oven|for_Nduration
N:oven|ok N:oven|or_so N:some_a| N:some_for|dinner N:some_i_hop| N:some_if| N:some_if|that
N:some_in_ic| N:some_lat|with N:some_mouth| N:some_mouth|to N:some_over| N:some|for N:some|if
N:some|if_that N:some|it_is N:some|lat_on N:some|w N:some|w_ar Nclock_DISH| Nclock_U|th Nclock_and|it
Nclock_and|w Nclock_for_th| Nclock_for|th Nclock_i_got| Nclock_i|am Nclock_on_th| Nclock_sam_as|
Nclock_th_roast| Nclock|and Nclock|sharp_$ Nclock|th_roast Nclock|would Ndate|Nclock_sam Ndegrees:core_it_is|
Ndegrees:core_let| Ndegrees:few| Ndegrees:few|less Ndegrees:few|less_than Ndegrees:few|too_high
Ndegrees:some_under|whatever Nduration_ago|whil Nduration_and_tell| Nduration_and|N:few Nduration_and|i
Nduration_and|what Nduration_behind|in Nduration_by_for| Nduration_do_not| Nduration_do|not
Nduration_for|th Nduration_from| Nduration_i_would| Nduration_in_th| Nduration_is_th| Nduration_lat_what|
Nduration_left_on| Nduration_not|N:some Nduration_off_th| Nduration_on|them Nduration_set|a
Nduration_sh|is Nduration_sooner_than| Nduration_tell| Nduration_ther|is Nduration_to|get Nduration_walk|
Nduration_walk|th Nduration_what|is Nduration_would|you Nduration|ago_befor Nduration|ago_not
Nduration|ago_whil Nduration|and_i Nduration|and_then Nduration|befor_dinner Nduration|behind_in
Nduration|earlier_$ Nduration|is_up Nduration|lat_$ Nduration|lat_what Nduration|of_delay Nduration|on_th
Nduration|pet Nduration|sinc_$ Ngas-mark_as| Nweight_THING|THING Nweight_and|it Nweight_forerib_on|
Nweight_no|bon Nweight_on_th| Nweight_or| Nweight_or|thereabout Nweight_rib|of Nweight_stand|
Nweight_stand|rib Nweight_with_N:few| Nweight|bon_in Nweight|forerib_N:few Nweight|it Nweight|not
P_ar_set| P_back| P_back|in P_can_i| P_can|not P_down_back| P_gav| P_h_has| P_has_arriv| P_has_fallen|
P_has|arriv P_help|m P_i_n| P_is_early| P_is_insist| P_is|arm P_is|in P_is|pescatarian P_i|hav
P_slip_on| P_so_plus| P_squint| P_squint|at P_that|is P_us|to P_vot_and| P_who_do| P_will|eat
P|ar_join P|bridi_$ P|down_back P|has_got P|has_had P|is_com P|is_giv P|is_insist P|is_sit
P|is_still P|left_th P|settl P|settl_N:some P|up_Nduration THING_DISH_ar| THING_Ndegrees:few|high
THING_THING_ar| THING_THING_with| THING_THING|Nweight THING_and_it| THING_by_N:few| THING_can|i
THING_do_it| THING_fell| THING_fell|out THING_gav| THING_gav|m THING_hang| THING_hang|on THING_hit|
THING_how|many THING_i_am| THING_is_full| THING_is_go| THING_is_load| THING_is_stay| THING_is|bon
THING_is|go THING_is|out THING_it| THING_it|in THING_last| THING_lover_com| THING_now_leo|
THING_number_say| THING_number|say THING_of|th THING_ok| THING_on_a| THING_out_and| THING_over_th|
THING_per| THING_salmon| THING_salmon|first THING_show|Ndegrees:few THING_smok_com| THING_splash|
THING_stuck|in THING_th_DISH| THING_ther| THING_till| THING_to_th| THING_to|b THING_w_hav|
THING_went_into| THING_went|in THING_wer|not THING_whatever_you| THING_will_i| THING_with|th
THING_w|ar THING|THING_so THING|THING_would THING|and_THING THING|and_it THING|as_nail THING|duty
THING|fell THING|fell_out THING|hav THING|hav_all THING|is_Ndegrees:few THING|is_bon THING|is_cut
THING|is_on THING|is_stay THING|lover THING|lover_com THING|mak THING|medium THING|of_roast
THING|should THING|trip_$ THING|went_straight THING|with_salt U_Ndegrees:few| U_Ndegrees:few|less
U_P_can| U_and_it| U_and|DISH U_a|DISH U_by_th| U_com|out U_drop|your U_for_th| U_for|th U_had|
U_has|gon U_her| U_is|expect U_is|hav U_is|on U_is|roll U_i|am U_out|of U_say_U| U_sh_has|
U_sh|is U_th_Nduration| U_th_whol| U_that|was U_they_reckon| U_they|ar U_this_th| U_this|th
U_th|Nduration U_too| U_too|soon U_when|w U_your| U|for_m U|h_is U|had_to U|is_expect U|is_hav
U|is_in U|is_vegetarian U|is_what U|not_ruin U|now_will U|sh_is U|tenderis U|ther ^_DISH|went
^_N:core_in| ^_N:core_is| ^_N:few_and| ^_N:few_hav| ^_N:few_of| ^_N:few_with| ^_N:few|at ^_N:oven|on
^_N:some_on| ^_Ndegrees:core_it| ^_Nduration|ago ^_P_has| ^_P_it| ^_P_left| ^_P_want| ^_P|
^_P|at ^_P|in ^_THING_THING| ^_THING_has| ^_THING_went| ^_THING_wer| ^_THING|fell ^_U_your|
^_U|has ^_U|this ^_^_P| ^_^_ask| ^_^_bad| ^_^_breaker| ^_^_brought| ^_^_bung| ^_^_crank| ^_^_cross|
^_^_dan| ^_^_degre| ^_^_display| ^_^_dog| ^_^_grab| ^_^_how| ^_^_invit| ^_^_jess| ^_^_joint|
^_^_let| ^_^_lift| ^_^_mak| ^_^_must| ^_^_m| ^_^_of| ^_^_pip| ^_^_p| ^_^_remind| ^_^_revers|
^_^_scrub| ^_^_sh| ^_^_trim| ^_^_warn| ^_^_whack| ^_a_boneless| ^_aim_for| ^_all|don ^_am|i
^_ar|w ^_ask| ^_bad| ^_bad|new ^_bin_th| ^_boneless_rib| ^_brb|Nduration ^_breaker| ^_breaker|trip
^_brought| ^_brown|it ^_bung_th| ^_bung| ^_burnt|my ^_burnt|th ^_b|quiet ^_cancel|th ^_can|P
^_can|i ^_can|you ^_chang_it| ^_could_dinner| ^_could|you ^_crank_it| ^_crank| ^_cross| ^_cut_myself|
^_dan| ^_degre| ^_delay_dinner| ^_delay|dinner ^_dinner_Nduration| ^_dinner_for| ^_display|
^_display|is ^_ditch|th ^_do_th| ^_dog| ^_don_and| ^_do|not ^_drop|th ^_electric_is| ^_electricity|has
^_first|guest ^_flam|ar ^_flick_th| ^_forget_about| ^_forget_i| ^_forget|i ^_for|what ^_found|th
^_french_is| ^_get_th| ^_giv_th| ^_go_with| ^_grab| ^_guest_will| ^_guest|seat ^_half_a| ^_half_of|
^_half|a ^_her_P| ^_his_P| ^_hold_dinner| ^_hold_your| ^_holler_when| ^_honestly_drop| ^_how_would|
^_how| ^_how|would ^_i_drop| ^_i_slip| ^_i_turn| ^_insid_temperatur| ^_invit| ^_is|it ^_it|say
^_it|slid ^_i|burn ^_i|can ^_i|forgot ^_i|go ^_i|would ^_jess| ^_joint| ^_kill_that| ^_knock_it|
^_knock_that| ^_leav|th ^_let| ^_lift| ^_los_th| ^_m_oven| ^_mak| ^_mov_dinner| ^_mov_it| ^_mov|dinner
^_must| ^_my_cooker| ^_my_in| ^_my|P ^_my|cooker ^_my|oven ^_m| ^_never|mind ^_new|dinner ^_nip_to|
^_no_it| ^_no_n| ^_not_i| ^_not|befor ^_no|th ^_of| ^_onc_it| ^_our_P| ^_our|oven ^_oven_set|
^_oven_up| ^_phon|call ^_pip| ^_pip|down ^_pop|th ^_put_Nduration| ^_p| ^_p|m ^_reckon|w ^_remind|
^_revers| ^_right_i| ^_right|so ^_scald_my| ^_scrap_that| ^_scrap|that ^_scrub| ^_sear|is ^_season|it
^_serv|at ^_set_th| ^_shall|w ^_shut|th ^_sh| ^_slic|th ^_so_lik| ^_start_th| ^_step|away ^_still_stuck|
^_stuff_th| ^_switch|th ^_tabl_for| ^_tell_your| ^_th_bus| ^_th_clock| ^_th_in| ^_that_mak|
^_th|dog ^_th|fan ^_th|gas ^_th|other ^_th|roast ^_th|we ^_timer_for| ^_tim|is ^_took_it| ^_trim|
^_us_a| ^_us_th| ^_w_ar| ^_w_prefer| ^_w_took| ^_warn| ^_warn|m ^_was_not| ^_was|not ^_whack|
^_what_com| ^_what_should| ^_what_was| ^_what|if ^_what|would ^_when_w| ^_when|will ^_wher_ar|
^_wher_did| ^_why|ar ^_w|would ^_yes_it| ^_you|can ^_you|what ^_you|would a_DISH|instead a_N:core|
a_Nweight|rib a_THING_and| a_bit|later a_board_school| a_bon_and| a_boneless_rib| a_boneless|rib
a_few|minut a_full|hous a_good_Nduration| a_good_reason| a_grand|piec a_kidney| a_kidney|transplant
a_pin_in| a_shout_at| a_slow|chopper a_start| a_start|on a_tabl|of a_tick| about_th_lat| about|yet
add_N:few_mor| add_N:few|mor add_th| after_a|proper after_it_is| after_lift_th| after_th|break
afternoon_f_that| after|a ag_this_trim| again_from| again_from|scratch again_i|was ago_and_i|
ago_it|said ago_ther_in| ago_ther|in ago_whil_i| ago|whil ago|whil_i ag|to_heat ahead|of_us
aid| aim_for|N:core aim_for|N:few alex_can|stir all_N:few|at all_U_THING| all_at| all_finish|
all_guest_ar| all_my|THING all_of| all_over_th| all_possibility_ar| all_that_faff| all_that|faff
allergic_to|THING allergic_to|nut all|N:few_at all|at all|behind_lik all|dizzy all|dizzy_and
all|i all|mix all|mix_up all|over_my all|over_th all|sat all|sat_THING all|sid_$ along_ar_w|
alon|unless alon|unless_it already|in_my am_a_slow| am_after_a| am_away_behind| am_away_up|
am_a|good am_chas_my| am_hav|a am_i_go| am_in| am_i|behind am_lagg| am_lagg|by am_not_go| am_on|tim
am_out_for| am_out_of| am_run_a| am_skip| am_with| am_with|you amount_of| am|a am|all_behind
am|behind_by am|call am|count am|drown am|fre am|hav_a am|in am|leav_it am|miss_th am|never_go
am|not_$ am|off am|slow am|that an_alarm|in an_extra_N:few| and_N:few|THING and_N:few|of and_U_Ndegrees:few|
and_U| and_bob_is| and_br| and_do|th and_giv|m and_gon|THING and_hav_not| and_hit|my and_how_many|
and_h|can and_i_can| and_i|after and_left_th| and_let_m| and_let|m and_let|us and_look_at|
and_mak|it and_now_it| and_onc| and_out_smell| and_overdon| and_overdon|it and_put_th| and_skip|
and_stop_th| and_th_readout| and_turn_th| and_w_can| and_w_n| and_what_ar| and_what_can| and_what_should|
and_what|was and_when|do and_will|not and_w|hav and|DISH_cream and|a_THING and|alert_at and|bon
and|do_th and|everyth_$ and|for and|mak_it and|sh_still and|sizzl and|th_shop any_other_way|
anyth_with_pastry| anyth|with_pastry any| ar_N:few_not| ar_N:some_lat| ar_Nduration_too| ar_Nduration|lat
ar_a_no| ar_already_in| ar_already|in ar_at_th| ar_at|N:oven ar_at|Ndegrees:core ar_cover_in|
ar_do|it ar_do|th ar_early_dinner| ar_go|in ar_her|th ar_laugh| ar_laugh|for ar_my_option|
ar_not|ready ar_off_th| ar_run|lat ar_serv| ar_set| ar_set|th ar_sit_at| ar_still_squeaky|
ar_ston| ar_ston|cold ar_stuck_on| ar_stuck|on ar_swell| ar_swell|up ar_w_still| ar_w|eat ar_w|on
ar_w|run ar_w|still ar_w|up ar_w|would arm_is| arm_is|burn arm_on_th| arm|with arm|with_th
ar|Nduration_too ar|all_her ar|back_on ar|expect_N:some ar|feed_th ar|fin ar|in_their ar|lat
ar|laugh ar|laugh_for ar|on ar|on_th ar|still_THING ar|still_squeaky ar|ther_tell ar|up_to
ar|w_at ar|w_fin ar|w_nearly as_it|is as_i|typ as_old| as_old|boot as_th_bishop| as_well|ay
ask_about| ask_your| ask_your|P as|alway as|i_look as|w_hit at_N:core_in| at_N:core_it| at_N:core_stop|
at_N:few_i| at_N:few_steady| at_N:few|on at_hom|th at_it_sinc| at_m_in| at_my_ex| at_this|moment
at_th|door at_th|shop at|N:core_for at|N:core_stop at|N:core_will at|N:few_$ at|N:few_steady
at|N:few_tonight at|N:oven_sharp at|Nclock_ahead at|Nclock_or at|Ndegrees:core_now at|th_pub
at|th_stov availabl|in availabl|in_our away_behind| away_behind|th away_up| away_up|th a|DISH_$
a|DISH_instead a|Nweight_forerib a|THING_in a|THING_with a|U_$ a|crack a|fac a|go a|good_N:some
a|hot_finish a|million a|mitt a|pen a|proper_rar a|sid a|singl a|stand_rib a|th_N:few a|thick
a|thick_grey a|trick b_bother|french b_drink| b_drink|in b_her|Nduration b_if_i| b_in_th| b_quiet|for
b_so| b_upstair| b_upstair|for b_when| b_when|i b_with|th b_worri| babysitter| back_a|bit back_how_it|
back_in_a| back_in_th| back_in| back_in|a back_is| back_that|last back_to_regular| back_to|lif
back|Nduration_$ back|a_tick bag_of| bail_so_knock| barely|N:core barely|N:core_U bast|in bast|in_N:some
bath_th|P bear_that| bear_that|in bear|that bear|that_in becom|N:some_i been_rest|for been|Nduration_yes
been|in_th been|mad been|put been|taken beer|is beer|is_open befor_it|is befor_w|sit begun|peel
begun|peel_th behav| behind_Nduration| behind_in| behind|in_her behind|it_is behind|th_cow
best_way| best_way|to between|th_mark bin|it_$ bishop| bishop|said bit_her_too| bit|later bit|later_Nduration
bit|of_THING blast_to| blast_to|begin blast|it bless|him board_school| board_school|and board|and
bon_from_th| bon_from| bon_from|th boneless|Nweight bother_sear|it bother|french bother|french_it
bottl_hook| bottl_hook|up bottl_of|beer bottl| bottom_and_gon| br_m|up breaker_trip_and| breaker_trip|
breaker_trip|and bring_his| bring|her brought_their| brought_their|P brought|their brought|their_P
br|m bump|it bum|on_seat bung_som_roast| bung|som burn_my|THING burnt_myself_on| burnt_my|THING
burn|my_arm butter_for_th| butter_is_all| butter_is_out| butter_is|all butter_is|mad butter_is|not
butter|is_not butter|is_out buy|THING buzz|m_at by_N:few|sorry by_for| by_for|th b|DISH_$ b|at_th
b|faff b|faff_with b|had b|in_th b|join b|near b|near_th b|on_my b|ready_for b|this_slow b|to_god
call_and|they call_them_i| call|from_work cam_out_Nduration| cam|on_quick cam|outsid cam|outsid_befor
can_do|th can_i_se| can_i|do can_i|hav can_i|rest can_i|us can_miss_that| can_miss| can_miss|that
can_not|cop can_not|find can_th_leftover| can_th|leftover can_w_hav| can_w|eat can_you_get|
can_you|shov cancel_th|green cancell_they_will| cancel|th_Nduration cancel|th_timer can|it_sit
can|not_eat can|not_i can|not_mak can|not_pictur can|stir can|stir_th can|us_ghe can|you_set
cap_down_a| cap| carry_a| carry_a|pen carry| carv_it_straight| carv|yet cast|iron_pan cat_got|
cat_got|th cat_is|knock cat|is_knock caught_light_on| celsius_i_do| celsius|i_do chanc_that_is|
chang|to_imperial chas_my| chas_my|tail check_with_th| chemo_so|sh chop|an chop|an_oil chuck|a
clear_th|THING clear|th_timer coat_ar|off coat_in| coat_in|th cold|on com_back|on com_for|help
com_it|is com_out_of| com_up_at| com_up_to| com_up|to com_with_Nduration| company_pull| company_pull|in
complet_som| complet_som|tim completely_forgot|to com|let com|let_us convection_is_run| convection|is_on
conventional|oven conventional|oven_no cook_it_through| cook_it|through cooker_run| cooker_run|Ndegrees:some
cook|at cooler_than|it cooler|than_it could_not_hear| could_us_som| could_us|som could_w|do
could|do_with could|i_get could|i_swap could|not_find could|us countdown_any| countdown_any|mor
count|th cover_in|butter cover_it|with cover|it_with crank_it| crank|it_up cream_for_th| cream_w|
cream_w|hav crept_up|to crowd_today_so| current|has current|has_gon cut_th_DISH| cycl|off cycl|off_and
dan_offer_to| dav_down| dav_down|for dav|is_lot deck_out| deck_out|cold degre_it| degre_it|must
did_get_THING| did_get| did_not|hav did_you|do did_you|hear did|i_wreck did|not_salt did|not_say
did|you_ever dinner_happen_Nduration| dinner|back_to dinner|for_tonight dinner|is_at dinner|is_mov
dinner|is_now dinner|is_plan display_is|blank ditch| dizzy_and_sam| do_DISH|with do_N:core|sound
do_N:few| do_a_DISH| do_a|roast do_i_DISH| do_i_get| do_it_go| do_it_rest| do_it|rest do_i|DISH
do_i|get do_i|n do_i|want do_not_put| do_not|bother do_not|expect do_not|find do_not|hav do_not|understand
do_th_high| do_us|a do_w_tak| do_w|tak do_you_reckon| do_you|know do_you|think dog_THING_th|
dog|out_for don_with_th| don|i_know don|yet_$ door_for|Nduration doorbell|that_is door|Nduration
door|has door|now_sorry down_a|bit down_back| down_back|in down_to|a down_to|th down_with|someth
down|for_th down|with_someth do|a_revers do|i_haul do|i_ti do|it do|it_Nduration do|my_THING
do|th_whatsit do|w_stand do|you_truss drink_first| drink_first|so driv_that| driv_that|is drop_it_to|
drop|it_$ drop|th_oven drop|th_timer drop|your drop|your_correction early_dinner| early_dinner|Nduration
early_so_shav| eat_a_bit| eat_by|Nclock eat_it|otherwis eat_pink_so| eat|a_bit eat|it_pink
electric_is| electricity|has els_could|i enamel| end_i| end|i enough_for|N:few enough_out|
enough_out|of even_touch_th| even_touch| even_touch|th even| everyth_go| everyth_i_n| everyth|back_Nduration
exactly_do| exactly_do|th expect_N:some_for| expect_m_for| extra_N:few| extra_for| f_that|
f_that|is fallen|Nduration fallen|Nduration_off family_has| family_has|arriv fan_oven_and|
fancy_do_DISH| fancy_som| fancy_som|roast fast_on| fast_on|in fat_in_th| fat_in|th fat|end_of
feed_at|Nclock fell_on|th fella|behind fella|behind_th fell|out fewer_los_th| fin_as| fin_as|it
fin_by| fin_by|m find|in_th find|th_other finger|off_with first_alert_at| first|so_N:some fix_to_sit|
fix| flam_is| flam_is|back flam|ar flam|ar_lick flam|is flam|is_back flat_out| flat_out|her
flat_tyr_Nduration| flat|tyr flight|is_delay flight|is_lat floor|everywher fold|chair for_N:core_after|
for_N:core_in| for_N:core|in for_N:few|adult for_N:some_and| for_Nduration_to| for_Nduration_walk|
for_a_we| for_how| for_it_or| for_smok|in for_som| for_th|day for_th|next for_th|oven for_th|templ
for_your|P forerib_on| forerib_on|th forget_about|th forget_i|said forget_that| forget|th_green
forgot|to_salt forward_N:some_if| forward_N:some| forward_N:some|if forward| forward|N:some
forward|N:some_if for|N:few_$ for|N:few_and for|Nclock_and for|Nduration_how for|Nduration_to
for|Nduration_what for|dinner_and for|help_in for|him_$ for|my_P for|th_butter for|th_cor for|th_day
for|th_oven fresh_out| fresh|on fresh|on_$ fridg|is from_start_to| from_start| from_start|to
from_th|market from|N:core_to from|th_bottom from|th_market from|th_oven from|th_shop from|th_station
from|this from|upstair gang_has| gang_has|land gang| gas_bottl_hook| gas|bottl_hook gas|has_run
get_from| get_on_in| get_on|with get|N:core_$ get|in_th get|on giv_m_celsius| giv_m_thos| giv_m|celsius
giv|th_DISH glov_is| glov_is|burn glov|is go_ar| go_ar|w go_from| go_lower| go_not| go_straight|to
go_th_THING| go_to_bother| go_to_skip| go_to|eat go_to|n go_to|th go_with|th god_help|m god_ther_is|
god_ther| god_ther|is gon_all|dizzy gon_and_drop| gon_and_overdon| gon_and|drop gon_from| gon_from|N:few
gon_in_th| gon_it_is| gon_it| gon_it|is gon_jar_is| gon_out| gon|DISH gon|DISH_and gon|Nduration_and
gon|for_Nduration gon|from gon|jar gon|jar_is gon|off_so gon|out_so gon|to_THING gon|to_se
gon|up_to good_N:some|lat good_Nduration| good_and|hot good_it| good_it|is good_reason|w good|N:some_lat
got_N:core_forgot| got_N:core_in| got_a|THING got_a|leave-in got_for| got_from| got_held| got_held|up
got_her_Nduration| got_is| got_my_THING| got_no|THING got_to|that got|N:core_forgot got|a_THING
got|behind got|power_$ got|th_butter got|to_b go|and go|for_medium go|lower_than go|near go|near_shellfish
go|on_$ go|out_Nduration go|to_N:core go|to_church go|to_hav go|to_mak go|to_n go|to_skip go|wrong_$
grab|th_handl grand|piec grand|piec_of grat| grat|it green_DISH_U| green_DISH|DISH green_DISH|nobody
green|DISH_$ green|DISH_U green|DISH_our grown|ups guess_between| guess_between|th guest_they|
guest_will|b guest|ar_in guest|ar_run guest|hat guest|hat_this guest|hav_arriv guest|wer guest|wer_lat
guest|will_b h_is|chok h_is|stay h_mak| half|of half|of_them handl_anyth| handl_anyth|with
handl_it_was| handl_without_a| hang|in hanna_is_bring| hanna|is_bring happen_Nduration_sooner|
happen_Nduration| happen_Nduration|sooner happen_at_th| happen|at_onc has_a_nut| has_been|put
has_been|taken has_com_for| has_gon_from| has_gon_way| has_gon|DISH has_gon|jar has_got|a has_not|been
has_not|thicken has_th|DISH has_to_hav| has_to|b has|been_at has|been_put has|com_down has|di
has|drop_out has|fallen_down has|gon_dark has|gon_off has|gon_on has|gon_walkabout has|land
has|reach_N:core has|split has|to_b hav_DISH_as| hav_Nduration| hav_a_full| hav_a_grand| hav_all_U|
hav_a|leave-in hav_been_at| hav_been_on| hav_begun|peel hav_burnt|my hav_fallen|Nduration hav_gon_all|
hav_her_in| hav_kept_insid| hav_knock_it| hav_knock| hav_not_mad| hav_not_turn| hav_not|even
hav_no|spar hav_nut|sh hav_peel_th| hav_peel|th hav_prim_rib| hav_rub_th| hav_set|off hav_thes_DISH|
hav_thes| hav_thes|DISH hav_to_pick| hav_to|eat hav_truss_th| hav_turn| hav_turn|up hav_with|
hav_with|it hav|any_THING hav|burn_my hav|cancell hav|chang hav|com_out hav|fallen hav|forgotten
hav|got_N:core hav|had_th hav|it_yet hav|lift_off hav|no_spar hav|not_got hav|now hav|peel
hav|peel_th hav|prim hav|prim_rib hav|to_b hav|truss hav|truss_th hear|myself hear|myself_think
hear|you_over heat_th|oven held|up help_m_with| help_th| helper_today_her| help|m_now her_U_my|
her_back_to| her_immun_system| her_sh| her_sleev| her_till| her_too| her_too|much her|i her|it
her|nam her|nam_is her|throat_$ hey_company_pull| hey|company hey|company_pull high|heat high|heat_at
himself_is_go| himself_is|go himself|is his_immun_system| his_medium|well his|P_$ his|medium_well
hit_N:core_lik| hit_N:some| hit|N:core_lik hit|m hit|my hit|my_THING hiv_if| hiv_if|sh hold_dinner|for
holler_when|it honestly_drop| honestly_drop|th hook_up_flam| hook|up hook|up_flam hop|nobody
hop|nobody_is hors_i|hav hot_THING_splash| hot_THING|all hot_blast_to| hot_do_th| hot_this|
hotter|than_sh hot|blast hot|blast_to hot|handl hot|handl_my hous_has|gon how_can_w| how_hot_for|
how_it|was how_many|THING how_to_DISH| how_to|get how|hot_for how|is_sh how|long_it how|many_THING
how|many_degre how|much_DISH how|thick_do how|would_i hungry| i_U_too| i_am_in| i_am_lagg|
i_am_skip| i_am_with| i_am|a i_am|call i_am|count i_am|drown i_am|fre i_am|in i_am|off i_am|slow
i_am|that i_check|it i_could|us i_crank|it i_cut|into i_do_about| i_do_with| i_do|now i_fancy_som|
i_haul| i_hav_knock| i_hav_peel| i_hav_turn| i_hav|DISH i_hav|forgotten i_hav|gon i_hav|peel
i_hav|truss i_hop| i_hop|nobody i_mak_proper| i_misread_th| i_must_go| i_ought_to| i_pull|this
i_put_my| i_scald| i_scald|my i_se| i_se|th i_slip|and i_stick_th| i_swap_THING| i_switch_th|
i_think|in i_took_it| i_took_out| i_us| i_want|to i_was_lay| i_was|not i_whack| i_wiggl_it|
i_will_forget| i_would_quit| i_would|brown i_wrangl_th| ic_water_so| ic|water_so id|say id|say_they
if_i|hav if_i|us if_this_is| if|i_am if|i_hav if|i_us if|sh_has if|that_matter in_N:few|to
in_Ndegrees:some_under| in_U| in_and|w in_at| in_a|THING in_beer| in_beer|is in_celsius|i in_for_Nduration|
in_for|Nduration in_from_th| in_hiv_if| in_i_am| in_it_roll| in_i|hav in_law|has in_no|tim
in_plac_of| in_th|fat in_th|hous in_th|moment in_th|other in_th|pan in_th|top in_th|water in_traffic|another
in_yet_still| insid_temperatur|is insid|now_itself insid|th into_it_and| into_my|palm intolerant_so|
intolerant_so|watch into|th_DISH in|Nduration_ago in|Nduration_already in|Nduration_pet in|Nduration_would
in|at in|bit_her in|celsius_and in|for_m in|her_throat in|it_whil in|law_is in|now_$ in|som_DISH
in|th_belly in|th_cast in|ther_long in|this_THING in|this_rental iron|THING_$ is_N:core|about
is_N:few|bon is_N:few|less is_Ndegrees:few|under is_THING|lover is_U_drop| is_a_U| is_a_tabl|
is_all|mix is_arm_is| is_a|stand is_back|thank is_bring_his| is_bring|her is_by|Nclock is_chop|an
is_com|up is_do|my is_early_can| is_early|can is_fin_as| is_flam|com is_flam|in is_for|th is_how|w
is_in_a| is_in_beer| is_in_i| is_insist| is_insist|on is_it_meant| is_it_saf| is_it|on is_join_m|
is_load|with is_mad_it| is_mind_th| is_my|P is_m|now is_not_eat| is_not_ther| is_not_up| is_not|brown
is_not|mix is_not|th is_pass_out| is_raw_in| is_read_N:core| is_ready_it| is_right_U| is_roll_and|
is_roll_up| is_run|at is_sear|now is_slip|on is_stay|in is_strain_skim| is_stuck_at| is_stuck|
is_tak_N:few| is_th_doorbell| is_that_go| is_that|saf is_ther|at is_thin_as| is_th|U is_th|next
is_th|schedul is_th|sens is_under|th is_went| is_what_w| is_what| is_when_w| is_when|w is_work|again
is_wrong| is_your|P isla|is isla|is_THING is|DISH is|U_up is|a_U is|a_lot is|a_vegan is|act_weird
is|all_carv is|all_her is|all_mix is|all_too is|allergic_to is|arm is|arm_is is|at_N:few is|beep_it
is|blank is|bon_dry is|burn_by is|buzz is|buzz_off is|by is|cancell is|carv is|chok_$ is|chok_h
is|coeliac_so is|cook_to is|cut_th is|early is|flam is|heat is|how is|in_metric is|it_com is|it_for
is|jump is|knock_over is|mad_it is|no_second is|not_availabl is|not_brown is|not_got is|not_mix
is|not_on is|off_th is|offer_to is|on_fir is|out_on is|out_shut is|pass is|pescatarian is|pescatarian_so
is|read_Ndegrees:few is|sat is|show_N:core is|show_m is|smok_someth is|still_at is|th_lot is|th_next
is|th_plan is|th_scor is|that_dangerous is|that_right is|them is|ther_someth is|too_short is|tough_as
is|up is|wilt it_N:core_in| it_N:oven_or| it_N:oven|or it_after|all it_and|th it_at| it_at|th
it_back|a it_b|this it_cycl| it_cycl|off it_forward_N:some| it_forward|N:some it_for|N:few
it_has| it_i_do| it_is|at it_is|mad it_lik|that it_meant| it_meant|to it_ok|to it_out_of| it_reach|
it_reach|N:core it_rest|for it_roll|and it_run|a it_saf| it_say_N:core| it_sh_is| it_straight|away
it_th_hot| it_was_at| it_was|hot it_went|in it_whil| it_whil|i it_with|you it_would_b| it_w|ar
it|Nduration_earlier it|all_off it|b it|b_long it|break it|break_N:core it|forward_N:some it|has_been
it|has_got it|is_don it|is_dry it|is_for it|is_go it|is_in it|is_now it|is_out it|is_overdon
it|is_past it|is_raw it|is_ready it|is_roll it|is_set it|is_sleep it|jump_onto it|must_com
it|otherwis it|out_yet it|pass it|pass_N:core it|past it|say_on it|slid it|slid_off it|to_Ngas-mark
it|to_medium it|was_N:some it|with_$ it|with_th i|DISH_th i|after_THING i|am_N:few i|am_N:some
i|am_Nduration i|am_about i|am_afraid i|am_after i|am_at i|am_away i|am_bin i|am_chas i|am_driv
i|am_hold i|am_lagg i|am_nip i|am_now i|am_out i|am_overwhelm i|am_put i|am_slow i|am_tak i|am_th
i|at_a i|behind i|carv_it i|do_with i|find i|find_th i|get_away i|get_from i|got_N:core i|hav_chang
i|hav_drop i|hav_finish i|hav_overcook i|hav_put i|hav_remov i|hav_rop i|hav_slic i|hav_slip
i|hav_switch i|hit i|hit_th i|n_for i|nap i|press_it i|put_THING i|put_my i|put_on i|said_N:some
i|said_to i|tell_ya i|think_$ i|think_ther i|told_him i|want_a i|want_degre i|want_for i|was_not
i|was_read i|will_mak i|would_P jar_is|empty jess_is|on jo_is|go job|is_a join_m_at| join_m|
join_m|at joint_is_still| joint_is|in joint|is_still jo|cancell jo|cancell_so jump_in_th| keep_an|
keep_an|THING keep_it|is keep|an keep|an_THING kept_insid|now kept_pac| kept_pac|with kettl|is_on
kick_off| kidney_transplant_bear| kidney|transplant kill_th|DISH kill_th|oven kill|m kilo_if_you|
kindly_prepon| kindly_prepon|th knock_it_back| knock_it|back know_about| know_about|th know_how|long
know_i_am| know_if_this| know_if|this lactos_intolerant_so| land_on_th| land_on|th landlord|
landlord|is last|th_i lat_as| lat_on|this lat_sav| lat_what| lat_with_th| lat|guest lat|guest_$
laugh|for laugh|for_THING law|has lay_N:few_mor| lay_N:few|mor leav_it_with| leave-in|THING_$
leave-in|on left_in_this| left_it|in left|it_in left|th_build leo_from| leo_from|upstair leo|from
leo|from_upstair less_for| less_for|dinner let_m|sort let_th|cat let_us_begin| let_us|hav let_us|know
let|it_rest let|us_do let|us_eat let|us_skip lid_th| lid_th|THING lid|on_$ lif_is|too lift|it_onto
lift|off light_has| light_has|gon light_on| light_on|th light|hav_gon light|went_out lik_his|rar
lik_th|th lik|a_bonfir lik|his_THING lik|it_medium lik|them lik|to lin|down lin|down_noth lip_ar_swell|
list_for_th| list_nobody| list_nobody|eat list|at list|at_all lit_it_at| lit_it|at littl_light|
littl_oven| li|i load|with load|with_DISH long_do_leftover| long_do|it long_till|w long_way|to
longer_they| long|as_you long|can_leftover long|do_leftover look_U_to| look_at|th look_at|that
look|N:core lover_com| lover_com|let low|to_tak lunch_at|N:few lunch| m_N:few|for m_alon|unless
m_and|i m_and|th m_an| m_at|th m_a|THING m_celsius| m_celsius|not m_forget|th m_for|N:some
m_i_hav| m_if| m_if|it m_know_at| m_know|at m_of| m_of|th m_someth| m_th_rundown| m_thos| m_thos|number
m_th|whol m_till_it| m_to_bast| m_when|w mad|and mak_U|a mak_it_after| mak_proper| mak_proper|DISH
mak|it_Nclock mak|it_Nduration many_DISH_do| many_DISH_for| many_DISH_per| many_degre_it| many|DISH_for
many|DISH_per many|THING maria_put_th| may_b| medium_U|not medium_rar|mean medium|rar_N:few
medium|rar_mean medium|well_th medium|what meet|at menu_as| menu_as|well messag_my_phon| messag|my
messag|my_phon mind_a_DISH| mind_a| mind_a|DISH mind_let| mind_let|us mind_th_oven| mind|th_timer
minut|how miss_N:core_so| miss_that|on missus_and| miss|that_on mix|and mob_is| monster_of_a|
month|along mor_befor_w| mor_for| mor_peopl| mor_to|th mor_will| mor|now mor|now_they mor|plac
most_of|them mouth|to mouth|to_f much_i|am much|THING_$ much|salt_do mushroom_too_DISH| must_b|Nduration
must_go| must_go|out must|hav_been my_P_never| my_P_will| my_P| my_THING_has| my_THING|full
my_THING|has my_arm|with my_back_is| my_cooker_run| my_ex|is my_god_ther| my_guest|hat my_in|
my_in|law my_mind_let| my_option| my_oven|has my_palm_is| my_stuff_is| my_thumb_pretty| my_wrist|
myself|peel myself|peel_will myself|think_$ my|P_h my|P_put my|P_sh my|cooker_run my|god_ther
my|tail my|tail_Nduration my|tongu my|work m|a_timer m|again_$ m|alon_unless m|and_i m|at_Ndegrees:core
m|celsius m|celsius_not m|in_N:some m|sort_this m|th_choic m|th_shop m|up_to n_another|Nduration
n_som| n_som|DISH n_to_bath| n_to_jump| n_to|get nadia_sh_is| nagg_it| nagg_it|is natter| nearly|ther_$
never_did|get never_got|th never|did_th new_gas| new_gas|bottl new_th_joint| next_door_for|
next_door| next_tim| next|door_back next|hour nick_myself| nick_myself|peel nip_out| nip_out|for
nip_to_th| nip_to|th nip|to_th no_DISH_after| no_DISH_w| no_DISH|tonight no_N:core_i| no_P_left|
no_THING_can| no_THING|at no_i_can| no_n_for| no_on|is no_scratch| no_scratch|that no_th_oven|
no_w|ar nobody_is_mind| nobody|eat_them non_of|them nora|can nora|can_not not_availabl|in not_a|chanc
not_bother|ty not_b|bother not_b|faff not_b|near not_carv|yet not_catch|that not_complet_som|
not_don_that| not_don_th| not_do| not_even_touch| not_find|in not_got_to| not_got|a not_go|lower
not_go|near not_hav|DISH not_hav|a not_hear|myself not_i|carv not_kept_pac| not_know_how| not_know_if|
not_let|it not_mind_a| not_own|a not_put_it| not_put|it not_speak|celsius not_tak|THING not_thicken|whatever
not_th|DISH not_touch_bon| not_turn_it| not_up_to| not_up| not|a_chanc not|any_THING not|b_bother
not|b_do not|com_after not|cop not|do_fahrenheit not|do_gluten not|eat_THING not|eat_anyth
not|expect not|expect_m not|get_a not|hav_DISH not|hav_THING not|in_th not|in_yet not|mind_a
not|trust_th not|w_skip not|whip not|whip_so not|yet now_U|had now_and|i now_at|N:few now_instead_of|
now_i|am now_i|hav now_leo_from| now_leo| now_leo|from now_they_brought| now_th|joint nowher|near_ready
nowher|near_sorry now|w_ar no|THING_at no|THING_can no|THING_for no|THING_to no|bon_in no|i_can
no|i_hav no|spar number_of_guest| number_of|guest number_say|N:core number|say_N:core nut_in|that
nut|sh nut|sh_carry n|Nduration_befor n|another_Nduration n|th_DISH n|to oat| obviously_not|
obviously_not|N:some of_DISH_in| of_N:core| of_THING_THING| of_a|th of_cream| of_guest|to of_it_and|
of_m| of_salt_on| of_salt|on of_them_ar| of_them_got| of_them_has| of_them_hav| of_them_walk|
of_th|U of_th|cooker of_th|fridg of_us_for| off_N:few| off_and_it| off_at|N:few off_for_U|
off_on_th| off_th|THING off_th|pac off_to|th off_with_th| off_with|th offer_to_do| offer_to|do
of|DISH_th of|THING_for of|THING_mak of|beer of|bonfir of|butter_and of|guest_to of|her_tablet
of|my_finger of|them_DISH of|us of|us_and ok_THING|is ok_for|th ok_instead_of| ok_or| ok_so_it|
old| old|at old|at_th old|boot old|girl on_DISH|duty on_N:core|and on_a_bit| on_a|Ndate on_a|THING
on_chemo_so| on_on|sid on_th_leave-in| on_th_rarer| on_th_roll| on_th|board on_th|bon on_th|button
on_th|greas on_th|instant-read on_th|r on_to|N:oven on_weight_in| on_without| onto_th|board
on|N:oven on|N:some_had on|for_a on|in_N:core on|m on|my_tod on|th_greas on|th_schedul on|th_sticker
on|tim_U open|Nduration_$ open|with open|with_b or_i_hav| or_lid_th| or_ther_will| orang| or|THING
or|is_that or|so_$ other_hav| other_hav|th other_th_i| ought_to_b| ought_to| our|on out_and|th
out_befor_it| out_by_th| out_i_was| out_it|jump out_of|butter out_oven_is| out_sinc| out_sinc|Nclock
out_smell| out_smell|amaz out_th|fridg out_th|sear out_whol| outsid_is|not out|U out|all out|for_Nduration
out|oven_is oven_THING| oven_THING|say oven_back_to| oven_back| oven_door|has oven_door|now
oven_glov_is| oven_glov|is oven_go| oven_go|up oven_has|com oven_is_down| oven_is_work| oven_is|alway
oven_is|cark oven_is|fre oven_is|go oven_mind|your oven_on_to| oven_pack|up oven_set_to| oven_that|
oven|THING_w oven|door_hang oven|glov_is oven|has_com oven|has_gon oven|is_beep oven|is_smok
oven|is_up oven|on_to oven|with_them over_in|th pac|with pac|with_your pan_THING|hav pass_out|on
pass_us_th| past_medium_U| pastry|or pastry|or_DISH past|well past|well_don pay|for peek| peel_took|
peel_took|forever peopl_ar|com peopl_at|th peopl_so_celsius| peopl|ar_start peopl|cancell_$
per|THING_$ phon_call|from phon_is|buzz phon|is_buzz pick_up_a| piec_w_hav| pin_in| pin_in|it
pink_all|th pink_ar_w| pink_is_it| pink_will_it| pip_down| plac_of| plac_of|THING plac|of_butter
plac|of_th plat|ar_not plenty_of|butter position_of_th| position_of| position_of|th possibility_ar|
possibility_ar|ther power_went|out power|has prepon_th_dinner| prepon|th prepon|th_dinner pretty_good_it|
pretty|good_it priya_can| priya_can|not proper|DISH_lik prov_Nduration_ago| prov_Nduration|ago
pull_th|roast pull|for_medium pull|in_th pull|temperatur_$ push_dinner_back| push_everyth|
push_everyth|back put_DISH|cream put_dav_down| put_it_to| put_it|all put_it|down put|him p|m_in
quantity| quantity|of quiet|for quiet|for_a quit|lik quit|lik_to r_DISH_is| r_DISH_so| rar_as|you
rarer|sid rar|is_a rar|mean rather_than|N:few read_look| read_look|U readout|go readout|go_N:core
ready_they| ready_when|you ready|it_is read|N:core read|jump read|look read|look_U reckon|Nduration_is
regular|bak_from remind_m_of| remind|m_about remind|m_in rest_do_not| rest_do| rest_do|not
rest_in|th rest_of|us rest_th_DISH| rest_timer_start| rest|for_Nduration return_after| return_after|Nduration
rib_on|her rib_roast|N:few rib|Nweight_$ rib|THING_roast rid_of|th right_U| right_U|th right_at_th|
right_at| right_at|th right_in_th| right_i|am right|so ring|off ring|off_for roast_DISH_hav|
roast_DISH_w| roast_cam|outsid roast_has_been| roast_i|hav roast_out_of| roast|DISH_took roast|DISH_w
roast|N:few_bon roast|cam_out roast|in_$ roast|is_go roast|is_on roast|is_out rob_is_com| roll_DISH|
roll_ar_still| roll_ar|out roll_ar|warm roll_in_to| roll_n| roll_n|Nduration roll_prov_Nduration|
roll|ar_go roll|ar_warm roll|went rub_th_THING| rub_th|THING run_back| run_back|in run_so|do
run_that|by run_to| run_to|th run|Ndegrees:some_cool run|m run|m_through run|that_past run|to
run|to_th saf_for_th| saf|for said|no salmon|first salmon|first_that salt_is_ther| salt_on|th
salt_th|THING salt|on_th sam_as|alway sam|is sam|is_hit sam|tim_and sat_THING|th sat_on|a sat|out_Nduration
sav|a_plat say_U|tenderis say_a|prayer say_it| say_it|has say|N:core_and say|to_th scald_my|
schedul_green| schedul_green|DISH school_run_so| school|and_this se_for_smok| sear_is|don sear|it_again
sear|now_$ second_it|break sell_to| sell_to|th serv_at|N:few serv_it_N:oven| set_a|Nduration
set_for_th| set_for|th set_th|oven set_th|roll set|a_Nduration set|an_alert set|off_every set|th_tabl
sh_has_been| sh_has|DISH sh_is_sit| sh_is|at sh_is|offer sh_is|on sh_is|sit sh_is|vegetarian
sh_will|b shall|w shav|N:few shav|N:few_off shellfish| shoot_ther| shoot_ther|is shop_floor|
shop_floor|everywher shop|is_shut short_U_is| shot_it_cycl| should_b|on should_hav|DISH should_i_get|
should_th|THING should_w|do should|i_ask should|it_b shout_at|N:core shout_m|in shout_when_th|
shout_when|sh shout|at_Ndegrees:core shout|when_th show_N:core_right| show_up|so shower_i|
shower_i|am shower|Nduration_top show|m_th sh|go_$ sh|is sh|is_Nweight sh|want singl|DISH_in
sirloin_Nweight_or| sit_down_Nduration| sit_tight| sit_tight|for skim|and skim|and_bob skip_this|on
skip|th_THING skip|th_butter slic_still| slic_still|moo slic|th_top slip_and_hit| slip|and_hit
slip|by slip|by_Nduration slow_then|a slow_then|blast slow|chopper small_oven_on| smok_alarm|is
smok|com_from smok|in_her so_celsius| so_celsius|and so_it|is so_knock| so_knock|N:few so_lik_th|
so_shav| so_shav|N:few so_they|ar so_w_want| solid_i| solid_i|am solid|i solid|i_am som_DISH|DISH
som_tim_is| someth_to| somewher|past somewher|past_medium som|DISH_too som|help som|help_work
som|tim_$ som|tim_is soon_as|w sooner_than| sooner|than_plan sorry_N:core_i| sorry_what|is
sort_this_out| sound_right| so|s so|s_out speak_in_celsius| squint|at squint|at_th stab|it
stab|it_N:core stand_rib|roast stand|her start|again_from stay|in_$ step|my stick_in_a| stick_th|THING
stick|th_THING still_cold_in| still_on| still|at still|at_th still|on_th still|park still|raw_in
still|saf stop_for_a| stop_nagg_it| stop_th_clock| stop|anyth stop|anyth_grow stop|count_$
stop|th_clock stov|till stov|till_th str_in_this| strain_skim| strain_skim|and stranger| street_is|
street_is|dark strik|that_from stuck_on_th| stuck|th_fast stuff_is|in such_a_low| such|a_low
supper_Nduration| suppos_to|b swap_THING| switch_on|th switch|to_metric tabl_at|N:few tabl_for|N:few
tabl|for_N:few tabl|for_m tabl|of_N:few tabl|tonight_$ tak_N:few|tim tak_a|shower tak_longer_than|
tak_m|twic taken|it taken|it_out taken|th_THING tak|ag tak|ag_this tak|longer tak|longer_than
tak|th_roll tak|that_back talk_for| talk_to_th| talk|to_m tast_of| tast_of|bonfir teach|m_how
teaspoon_of| teaspoon_of|salt tell_P| tell_m|again tell_on| tell_on|mor tell|m_how tell|m_what
tell|ya temperatur_do_i| temperatur_has|com temperatur_is|Ndegrees:core temperatur|has_com
temperatur|in_middl temperatur|is_at temperatur|is_up temperatur|wis th_DISH_all| th_DISH_another|
th_DISH_as| th_DISH_butter| th_DISH_did| th_DISH_for| th_DISH_how| th_DISH_that| th_DISH_wer|
th_DISH_with| th_DISH|is th_DISH|must th_DISH|sinc th_DISH|that th_DISH|under th_DISH|yet th_N:few|of
th_P_do| th_P_n| th_P_to| th_P|in th_P|n th_P|settl th_THING_hit| th_THING|cam th_THING|or
th_THING|over th_U_has| th_b_drink| th_bishop| th_bishop|said th_board|and th_cat_got| th_cat_is|
th_cat|is th_deck_out| th_dinner|by th_door_for| th_doorbell|they th_driv_that| th_electricity|is
th_family_has| th_fast_on| th_fella|behind th_first_N:few| th_guest_they| th_guest|cam th_guest|wer
th_high|heat th_hot|blast th_hot|handl th_how| th_ic|water th_it| th_last_of| th_lat|guest
th_leave-in|say th_lin|down th_list_for| th_list_nobody| th_littl_light| th_lot_of| th_menu_as|
th_messag|my th_method| th_method|for th_missus_and| th_needl|is th_next|hour th_number_of|
th_old|folk th_on_with| th_orang| th_other_hav| th_oven_back| th_oven_go| th_oven_mind| th_oven_what|
th_oven_will| th_oven|glov th_oven|with th_plat|ar th_rarer| th_rarer|sid th_readout| th_readout|go
th_read|jump th_rest_do| th_roast_has| th_roll_n| th_roll| th_rundown| th_run|Ndegrees:some
th_sam|tim th_shop_floor| th_shop_for| th_shower_i| th_shower| th_stov|till th_tabl|w th_th_it|
th_whol|gang than_i|thought thank_b| thank_b|to thank_you_very| than|i_told than|it_is than|you
that_DISH|timer that_back|i that_cam|on that_can_not| that_faff| that_faff|about that_go|to
that_has|gon that_is|finish that_is|them that_last|th that_on_th| that_ring| that_ring|off
that_saf| that_timer_it| that_was| that|back_i that|by that|by_m that|faff that|faff_about
that|in_mind that|is_my that|mak_it that|on_a that|on_th that|ring that|ring_off that|yet their_supper_at|
their|at_Nclock them_all|sat them_ar| them_has| them_has|drop them_hav| them_i|want them_through_th|
them_walk| them_walk|in then_a|hot then_i|will then_turn| then_turn|it then|a_hot then|blast
then|blast_it ther_as_well| ther_at| ther_a|trick ther_in_th| ther_is|THING ther_is|flam ther_it|
ther_long_way| ther_long| ther_or|not ther|a_good ther|at_hom ther|is_smok ther|is_too ther|someth_i
thes_DISH|don thes|DISH_don they_ar_still| they_ar|in they_brought_their| they_brought|their
they_call_and| they_hav|miss they|ar_hav they|ar_off they|ar_sat they|rang_they they|want_drink
they|want_it thicken|whatever thicken|whatever_i think|in think|it thin|as_dishwater this_is_a|
this_out|first this_th|run this_trim| this_trim|way this|THING_$ this|for_th this|is_right
this|minut_$ this|read this|read_it this|th_run thos_wireless_THING| thos|number thos|number_in
through_th_whol| throw|in_som thumb_pretty| thumb_pretty|good th|DISH_at th|DISH_do th|DISH_how
th|DISH_nobody th|DISH_that th|DISH_would th|DISH_yet th|N:few_$ th|THING_Nclock th|THING_Nduration
th|THING_behav th|THING_cam th|THING_counter th|THING_get th|THING_h th|U_$ th|bank th|block_Nduration
th|bon_skip th|bottom_and th|break th|bus_is th|butter_Nduration th|butter_with th|ceil th|clock_Nduration
th|cow th|crew th|deck th|dial_and th|door_N:few th|door_behind th|door_for th|door_it th|door_open
th|door_shut th|end th|ferry th|film th|flight th|flu th|freezer th|fridg_and th|full_schedul
th|gat th|greas th|greas_and th|guest_com th|guest_they th|guest_wer th|high th|hob th|hous
th|kettl_on th|label_$ th|last_Nduration th|light_$ th|littl_light th|loo_$ th|market th|next_Nduration
th|order th|other_room th|oven_Nduration th|oven_for th|oven_n th|oven_to th|pac th|pan_handl
th|queu th|r_road th|radio th|reason_for th|roast_fell th|rol th|roll_Nduration th|roll_prov
th|sam_tim th|sear_altogether th|sirloin th|stov th|stov_is th|timelin th|timer_on th|wean_hav
th|year tight|for tight|for_now till_N:few_i| till_th_P| till_w|eat till|N:core_$ till|N:few_i
till|dinner till|w_eat tim_ar_w| tim_ar|w tim_for_th| tim_is|need tim_m_N:few| tim_should_i|
timer_start|now tim|they ti|it_$ to_N:core_i| to_N:core|and to_N:core|kindly to_N:oven_is|
to_N:oven|fan to_b_on| to_bast|in to_boil_for| to_bother| to_buy|THING to_b|don to_b|had to_check|th
to_flip| to_go|in to_grat| to_grat|it to_guess_between| to_hav_thes| to_hop_in| to_jump| to_jump|in
to_know_th| to_n_som| to_play| to_skip| to_tak_it| to_th_fella| to_th|bottom to_th|stor to_th|tabl
to_walk_th| to_your| tod_now_U| today_her| today_her|nam today_so| today_so|w told_Nclock_for|
tom_can_not| tom_can| tom_can|not tom|is_do too_DISH| too_DISH|in too_low|to took_ag|to took_th_lin|
took|it_out took|m_Nduration took|th_THING too|hot_to too|lat_to too|much_$ too|soon_act touch_th|DISH
touch|th_DISH tough_as_old| tough|as_old to|N:core_and to|N:core_whil to|N:few_and to|N:oven_lik
to|b_DISH to|b_on to|buy_DISH to|celsius_my to|collect_th to|do_next to|eat_by to|eat_it to|eat_them
to|fetch to|finish_$ to|get_ic to|hav_a to|heat to|it_h to|know_th to|lif to|m_lik to|n to|pick_th
to|room to|room_temperatur to|speak to|speak_in to|th_public to|th_shop to|th_stor to|that_yet
traffic|another traffic|another_Nduration train|is_cancell transplant_bear_that| transplant_bear|
transplant_bear|that trick|to trim_th|fat trim|way trim|way_longer trip_and_everyth| trip_and|everyth
trip|and_everyth truss_th| truss_th|roast truss|it trust_this|read turn_it|off turn_it|up turn_out_ther|
turn_that_ring| turn_that|ring turn|off turn|off_th turn|out_my turn|that_ring twic_as| twin_n|
tyr_Nduration| tyr_Nduration|is under|whatever_you undo|that_$ undo|that_i up_P_i| up_flam_is|
up_flam|is up_i_think| up_i|will up_to_N:some| up_to_room| up_to|it up_wher| upstair|for_Nduration
up|by_N:some up|th_road up|to_N:some up|to_room up|wher us_DISH|DISH us_begin| us_eat_Nduration|
us_eat|a us_for|THING us_som| us_som|help us|THING_DISH us|a_favour us|a_shout us|do_N:few
us|get_roast us|ghe_$ us|go_steady us|know us|som us|som_help vegan_so| vot_and| vot_and|it
w_ar_bang| w_ar_go| w_ar_laugh| w_ar_serv| w_ar|expect w_ar|feed w_ar|laugh w_ar|up w_becom|N:some
w_can_miss| w_do|it w_eat|at w_get_on| w_hav_fallen| w_hav_with| w_hav|a w_hav|brought w_hav|it
w_hav|lift w_mak|U w_n_Nduration| w_on|schedul w_open|with w_push_everyth| w_ran_out| w_ran|
w_ran|out w_sell_to| w_tak|it w_will|U w_will|go wait|for_m wak_m_at| walk_m_through| want_drink_first|
want_his_medium| want_his|medium want_it| want_th|THING want|a_warn want|his_rar want|to_eat
warn_m_at| was_Nduration|ago was_hot_it| was_lay| was_lay|th was_nut_in| was_th_DISH| was|N:core_at
was|befor was|hot_it was|not_listen was|not_meant water_so| water_so|it water_will| way_is_th|
way_through|no way|behind_her way|to_go we_U| we_isla| we_isla|is we_needl_is| we_needl| we_needl|is
weight_in|kilo weight|Nweight well|ay well|don_and went_N:core_as| went_into|my went_into|th
went_off_so| went_out_whol| went_straight| went_up|to went|in_th wer_eat_at| wer|not_to whack_it_up|
whack_it|up whack|it what_ar_my| what_ar|my what_can_sh| what_can|you what_did|you what_do|th
what_i_do| what_if_w| what_is_com| what_is_go| what_is|left what_i|am what_must_i| what_should_i|
what_should_w| what_temperatur_should| what_temperatur|should what_w_open| what_weight_of|
what_would|you whatever_you_call| whatever_you|allow what|com_after what|els_could what|go_on
what|happen_if what|is_french what|is_left what|measur what|measur_of what|n_do what|now what|number_do
what|temperatur_am what|temperatur_do when_Nduration|is when_is|THING when_it_reach| when_it|has
when_th|middl when|i_pull when|th wher_did_i| wher_exactly_do| wher|i_should which_i| which|THING
whil_it_is| whil_i|find whil_i|nap whil_yet_it| whil| whil|i_find whil|rest who_do|not who_want_a|
whol_gang_has| whol_hous_has| whol_street_is| whol|family who|can_not who|has who|left_th who|want_to
why_do_i| why_in_th| why_must| wiggl_it| wiggl_it|i wiggl| will_b_upstair| will_b|join will_b|ther
will_do_th| will_do_without| will_handl_anyth| will_hold_at| will_hold|at will_not_thicken|
will_not|com will_not|whip will_return_after| will_serv_it| will_y|roar will|b_ther will|eat_early
will|i_b will|not_b wip|th with_DISH_and| with_Nduration|of with_it_so| with_pastry| with_pastry|or
with_th_P| with_th_messag| with_th|str with_you_for| with_your_list| without_a|mitt without_roast|
without_roast|DISH with|b with|th_sid with|you_again with|you_for work_on_th| work_that|is
would_b|sit would_lik_an| would_not|believ would_not|mind would_quit| would_quit|lik would_you_put|
would|brown would|brown_it would|rather would|you_put wrangl_th| wrangl_th|THING w|ar_N:few
w|ar_fix w|ar_miss w|can_miss w|hav_N:core w|hav_brought w|hav_fallen w|hav_lift w|hav_no w|hav_run
w|hit w|hit_N:core w|n_DISH w|settl w|settl_on w|still_on w|up w|up_to w|will_sear w|will_start
w|would_you year_old|at year|th yes_that|is yet_Nduration| yet_it|is yet_to_grat| yet|how yet|it
yok_at_th| you_ar_tell| you_for|Nduration you_go| you_mak_th| you_on|speaker you_talk_in| you_very|
you_very|much you_watch_th| your_list| your_list|at you|ar_a you|ar_break you|call_them you|cut
you|cut_m you|ever_whisht you|got_m you|know you|now you|reckon_w you|shov you|shov_it you|suggest
you|suggest_$ y|roar y|roar_at |@0.3 |@1.3 |@1.5 |@117.2 |@119.6 |@128.3 |@133.2 |@135 |@135.4
|@136 |@147 |@148.0 |@39.1 |@41.1 |@44 |@47.3 |@52 |@56 |@56.3 |@7.1 |@79 |@80.4 |@84 |@86
|@86.1 |@9 |@9.2 |DISH_Nduration_ago |DISH_U_for |DISH_and_they |DISH_ar_nic |DISH_ar_off |DISH_cook_down
|DISH_countdown_any |DISH_do_not |DISH_don_in |DISH_for_DISH |DISH_for_N:few |DISH_from_Nclock
|DISH_from_m |DISH_has_been |DISH_in_for |DISH_in_yet |DISH_is_under |DISH_n_mor |DISH_our_on
|DISH_per |DISH_should_i |DISH_sinc |DISH_sinc_Nclock |DISH_so_far |DISH_so_scrap |DISH_so_they
|DISH_solid_i |DISH_th_roast |DISH_took_th |DISH_top |DISH_top_and |DISH_was_don |N:core_U_P
|N:core_can_i |N:core_forgot |N:core_forgot_to |N:core_let_us |N:core_right_now |N:core_stop_anyth
|N:core_tell |N:core_tell_m |N:few_$ |N:few_$_$ |N:few_P_$ |N:few_P_so |N:few_and_i |N:few_bon_from
|N:few_lat |N:few_less_th |N:few_rather |N:few_sit |N:few_sit_down |N:few_steady_heat |N:few_to
|N:oven_U_i |N:oven_at_Nclock |N:oven_can_you |N:oven_for |N:oven_in_ther |N:some_had |N:some_had_to
|N:some_i_hop |N:some_if |N:some_if_that |N:some_lat_on |N:some_over |N:some_quid |N:some_w
|Nclock_ahead |Nclock_ahead_of |Nclock_it_has |Nclock_or_ther |Nclock_sam_as |Ndegrees:some_cool
|Ndegrees:some_cool_alway |Ndegrees:some_hot_$ |Nduration_ago_$ |Nduration_i_am |Nduration_i_would
|Nduration_in_th |Nduration_is |Nduration_set |Nduration_sh_is |Nduration_sooner_P |Nduration_w
|Nduration_would_you |Nduration_yes |Nweight_forerib_N:few |Nweight_rib_roast |Nweight_w |P_eat_it
|P_is_th |P_set_th |P_so_plus |THING_THING_THING |THING_U_from |THING_and_th |THING_at |THING_behav
|THING_behav_itself |THING_cast |THING_cast_iron |THING_could |THING_counter |THING_do_in |THING_for_Nduration
|THING_for_a |THING_from_oven |THING_get |THING_in_$ |THING_is_ly |THING_mak_th |THING_pan_and
|THING_pan_is |THING_roast_Nweight |THING_saf_$ |THING_till_N:few |THING_what_is |THING_with_salt
|THING_would_you |U_down |U_is_hav |U_is_not |U_to |U_who |a_Nweight_forerib |a_THING_truck
|a_U_U |a_bit_Nduration |a_bit_cold |a_bit_later |a_bonfir |a_chanc_that |a_crack |a_drop_of
|a_favour |a_favour_and |a_fir_in |a_gas |a_good_reason |a_hot_finish |a_nic_bit |a_plan |a_revers
|a_revers_sear |a_second_$ |a_shout_at |a_singl_DISH |a_stand |a_tick_Nduration |a_warn_when
|about_right_for |about_th_THING |act_weird |actual |after_$ |after_$_$ |after_THING |after_THING_it
|ag_this |ag_this_trim |again_i_had |ago_and_i |ago_befor |ago_not |ago_not_N:few |ago_ther_in
|ago_whil |ago_whil_i |all_behind |all_behind_lik |all_carv |all_carv_up |all_go_wrong |all_mix
|all_mix_up |all_off |all_off_Nduration |all_sat_down |all_too |all_too_much |allergic_to_THING
|allergic_to_nut |alon_unless |alon_unless_it |alway_Ndegrees:some |am_N:few |am_N:some |am_Nduration
|am_about |am_about_to |am_afraid |am_after |am_at |am_away |am_behind_by |am_bin |am_bin_th
|am_chas |am_chas_my |am_don_with |am_driv |am_get_N:core |am_get_lat |am_hav_a |am_hold |am_in_th
|am_lagg |am_lagg_by |am_nip |am_nip_out |am_not_do |am_not_go |am_now |am_now_begin |am_off_to
|am_out |am_overwhelm |am_put |am_slow |am_sorry_to |am_tak |am_th |amaz_$ |amaz_$_$ |american_$
|american_$_$ |an_alert |an_alert_for |an_extra_N:few |an_extra_Nduration |an_oil |and_N:few
|and_a_THING |and_bob |and_bob_is |and_dav |and_fahrenheit |and_h |and_help |and_hit_my |and_mak_it
|and_shut_th |and_start_over |and_ti_they |another_Nduration_and |anyth_grow |anyth_grow_$
|ar_N:few_$ |ar_N:few_not |ar_all_sat |ar_boil_and |ar_break |ar_break_up |ar_cut |ar_do_th
|ar_eat_at |ar_fix |ar_fix_to |ar_her_$ |ar_lick |ar_lick_up |ar_miss |ar_nic |ar_nic_and |ar_peel_and
|ar_run_Nduration |ar_sat |ar_start_to |ar_starv_$ |ar_stuck_in |ar_stuck_on |arm_is |arm_is_burn
|around |arriv_and |as_a_bon |as_dishwater |as_nail |as_old |as_old_boot |at_N:core_stop |at_Ngas-mark_and
|at_hom_plenty |at_now |at_now_$ |at_th_dial |at_th_sam |b_N:oven_$ |b_an |b_do_with |b_don_$
|b_if_i |b_join |b_lat_$ |b_out |b_out_of |b_want |b_well |b_well_don |back_to_N:few |bak_from
|bak_from_convection |balloon |bang_on |been_at |been_in_Nduration |been_put |been_sat |befor_dinner
|behind_by_Nduration |behind_in_her |behind_lik |behind_lik_th |behind_on |bill_$ |bill_$_$
|bird_N:few |bit_behind |bit_her |bit_her_too |bit_lat |blast_it_at |blast_to |blast_to_begin
|bless |blister_$ |blister_$_$ |block_Nduration |boil_and |bon_N:core_$ |bon_dry |bon_prim
|bon_prim_rib |bon_skip |boneless_rib |boneless_rib_THING |boss |bother_ty |bother_ty_it |bottl_hook
|bottl_hook_up |bottom_and |bottom_and_gon |break_N:core |bridi_$ |bridi_$_$ |brought |brown_it_off
|burn_by_hot |burner_work |burner_work_on |bus_is_lat |butter_mad |buy_$ |buy_$_$ |buy_DISH
|buzz_off |buzz_off_th |by_N:some_$ |cak_$ |cak_$_$ |call_and |call_them |cam_on |can_leftover
|can_miss |can_miss_that |can_not_put |catch_my |catch_my_breath |ceil |celsius_i_mean |celsius_my
|chang_their |chang_their_mind |charcoal_$ |charcoal_$_$ |chok_$ |chok_$_$ |chok_h |chok_h_can
|chopper |church |clean |clock_Nduration |coeliac_so |collect_th |colour_on_it |com_back_to
|com_down_with |com_it |com_it_is |company_pull |company_pull_in |cook_down |cook_down_and
|cook_to |cooker_run |cooker_run_Ndegrees:some |cop_$ |cop_$_$ |could_us_som |cover |cream_w
|cream_w_hav |crispy |crispy_DISH_$ |daft |dairy_$ |dairy_$_$ |degre_c |dial_THING |dial_and
|did_w |did_you_get |dinner_Nduration_sooner |dinner_forward_Nduration |dinner_if |dinner_if_you
|dinner_up_by |dizzy_and |dizzy_and_sam |do_about_it |do_about_th |do_fahrenheit |do_fahrenheit_celsius
|do_gluten |do_i_DISH |do_i_get |do_i_know |do_i_turn |do_medium |do_not_expect |do_th_DISH
|do_th_whatsit |do_thos |do_you |don_i_am |don_in_tim |don_your |door_N:few |door_back |door_back_in
|door_behind |door_hang_open |door_is_th |door_it |door_shut |doorbell_they_ar |down_back |down_back_in
|down_noth |down_noth_U |down_to_eat |down_yet_$ |drop_th_roast |drop_th_timer |duty_$ |duty_$_$
|earlier_$ |earlier_$_$ |easter_$ |easter_$_$ |eat_Nduration_mor |eat_by |eat_dairy_$ |eat_early_at
|els_could |end_of_it |ever_whisht |ever_whisht_$ |every_tim |expect |expect_N:some |expect_N:some_for
|expect_m |expect_m_for |faff_with |fallen_down |far |far_$ |far_$_$ |fat_off |feed_N:some_P
|feed_at_Nclock |fell_out |fetch_th |fewer_$ |fewer_$_$ |finish_and |first_that |first_that_is
|fix_to_sit |flam_com |flam_in |flam_in_th |flip_th |for_N:few_and |for_P_nor |for_a_bath |for_a_few
|for_a_shower |for_medium_well |for_pink |for_pink_$ |for_th_DISH |for_to |for_tonight_at |forerib_N:few
|forerib_N:few_bon |forward_N:some |forward_N:some_if |forward_Nduration_$ |fridg_and |fridg_at
|fridg_it |from_upstair |from_work_that |full_schedul |get_away |get_away_with |get_ic |get_on_in
|get_roast |get_roast_DISH |ghe_$ |ghe_$_$ |girl_$ |girl_$_$ |glov_is |go_N:core |go_not |go_steady
|go_steady_no |go_to_DISH |go_to_li |go_to_se |golden_$ |golden_$_$ |gon_and_drop |gon_and_overdon
|gon_cold_$ |gon_off_so |gon_on |good_N:some |good_N:some_lat |good_Nduration_behind |good_it
|good_it_is |good_on |good_on_$ |good_to |got_N:core |got_a_blackout |got_my |greas_and |greas_and_can
|grill |guest_they |guest_to_N:few |guest_wer |guest_wer_lat |h_was |halal |halfway_$ |halfway_$_$
|handl_my |handl_my_palm |happen_if |has_arriv_$ |has_been_blad |has_been_on |has_com_back
|has_crept |has_crept_up |has_gon_walkabout |has_got_no |has_had_a |has_land |has_not_thicken
|has_reach_N:core |has_run |has_run_out |has_to_hav |hav_DISH_with |hav_a_N:core |hav_a_helper
|hav_any_THING |hav_been_on |hav_burnt_my |hav_chang_my |hav_drop_th |hav_fallen_Nduration
|hav_gon_power |hav_got_N:few |hav_got_a |hav_lift |hav_lift_off |hav_lost_power |hav_not_any
|hav_overcook |hav_overcook_it |hav_prim |hav_prim_rib |hav_put_alex |hav_remov |hav_remov_th
|hav_rop |hav_rop_in |hav_run_out |hav_salt_th |hav_set_it |hav_set_off |hav_slic |hav_slip
|hav_switch |hav_to_pick |hav_volunteer |hav_volunteer_for |help_in_THING |help_with_th |help_work
|help_work_you |helper_today |helper_today_her |her_and_still |her_back_to |her_befor |her_befor_N:few
|her_immun |her_immun_system |her_in_th |her_so_far |her_throat |her_throat_$ |her_to_help
|her_well_don |his_medium |hit_N:core_$ |hit_th_pan |hors_$ |hors_$_$ |hot_fat_this |hot_finish
|hous_has |i_DISH_it |i_find |i_find_th |i_get_from |i_got_tim |i_haul |i_haul_this |i_n_to
|i_say_$ |i_tak_it |i_think |i_told_you |i_was_lay |if_i_had |in_N:few_ear |in_N:some_and |in_Nduration_for
|in_THING |in_and_i |in_and_th |in_for_DISH |in_law_do |in_metric |in_metric_so |in_middl_Ndegrees:core
|in_my_liv |in_our_market |in_sinc |in_th_driveway |in_that_$ |in_their_coat |instead_of_dry
|into_my |iron_pan |is_N:few_and |is_N:few_mor |is_N:few_of |is_Ndegrees:few_under |is_Ndegrees:some_hotter
|is_THING_say |is_U_and |is_a_gap |is_all_carv |is_at_my |is_bedlam_$ |is_beep_it |is_blister_$
|is_bon_dry |is_boneless_Nweight |is_bring_her |is_burnt_all |is_buzz |is_buzz_off |is_cancell_they
|is_com_too |is_cook_to |is_delay_Nduration |is_delay_add |is_delay_minimum |is_don_and |is_don_it
|is_dry |is_flam_com |is_flam_in |is_french |is_french_$ |is_help_with |is_hit_th |is_hot_now
|is_insist |is_insist_on |is_it_on |is_knock |is_knock_over |is_left_to |is_look |is_mad_i
|is_mad_it |is_next |is_next_$ |is_not_$ |is_not_N:few |is_not_any |is_not_mad |is_not_ti |is_on_for
|is_out_U |is_out_and |is_out_on |is_overdon |is_peel_th |is_plan_for |is_rest_$ |is_right_U
|is_roll_and |is_shot_$ |is_sleep_in |is_stay_in |is_th_U |is_th_butter |is_th_order |is_th_sens
|is_th_temperatur |is_th_trick |it_Nduration_earlier |it_again_at |it_all_right |it_and_DISH
|it_com_along |it_down_yet |it_first_then |it_for_Nduration |it_forward_N:some |it_if_ther
|it_in_it |it_is_medium |it_is_preheat |it_is_serv |it_onto |it_onto_th |it_pass |it_pass_N:core
|it_put |it_rest_for |it_sh |it_sh_is |it_stuck |it_through_so |it_to_Ngas-mark |it_too |it_up_to
|jar_is_empty |join_us |jump_onto |jump_onto_th |kill_it_$ |knock_over |knock_over_th |know_at
|know_at_N:core |know_i_am |know_th |know_th_second |know_what_i |label_$ |label_$_$ |last_bit_$
|lat_Nduration_$ |lat_it |lat_it_is |lat_on_my |lat_what |later_Nduration |laugh_for |laugh_for_THING
|law_is |less_for |less_for_dinner |less_th_$ |less_than_actual |lift_off_on |lik_his_THING
|lik_i_hav |littl_light |long_can_th |long_hav_i |long_is_it |long_mor |longer_they |lot_and
|lover_com |lover_com_let |low_oven |lower_oven_sinc |lower_than |lower_than_N:some |lumpy_$
|lumpy_$_$ |m_N:some_$ |m_Nduration_and |m_after |m_at_Ndegrees:core |m_know_when |m_straight_is
|m_to_do |m_to_turn |m_when_th |mak_U_a |mak_it_after |many_DISH |many_DISH_per |many_THING
|many_degre |many_minut_left |meant |meant_to |measur_of |measur_of_THING |medium_sh |medium_well_th
|million |mind_a |mind_a_DISH |miss_th_r |mix_up |mob |mob_is |moment_$ |moment_$_$ |month_old
|mor_befor |mor_minut |mor_peopl_ar |mor_person_com |mor_plac |mor_th_to |mor_tim_slowly |mouth_to
|mouth_to_f |much_DISH |much_THING |much_THING_$ |much_i |must_com |must_com_out |my_finger_off
|my_mind_let |my_phon_is |my_tod |my_tod_now |myself_on_th |myself_think |n_DISH |n_do_now
|n_to_li |near |near_ready |near_shellfish |near_sorry |never_go |never_go_to |next_Nduration
|nic_U |no_pink |no_second_oven |no_spar |no_us |nobody_is_U |not_availabl |not_believ_this
|not_bother_ty |not_brown_it |not_com_on |not_do_dairy |not_do_fahrenheit |not_go_lower |not_hav_a
|not_hear_myself |not_heat_$ |not_her_$ |not_know_if |not_know_th |not_listen |not_m |not_meant
|not_meant_for |not_mix |not_n_th |not_on_yet |not_pictur |not_pictur_pound |not_put_it |not_ruin_medium
|not_salt |not_salt_it |not_say_that |not_so |not_speak_celsius |not_to_b |not_trust_that |not_turn_it
|now_at_Ndegrees:oven |now_sorry_it |now_they_brought |now_will |now_will_return |number_do
|number_in |number_in_real |nut_in |of_Nduration_and |of_THING_for |of_a_th |of_delay |of_my_THING
|of_sirloin_Nweight |of_smok_$ |of_th_cream |of_them |of_them_hav |of_thos_$ |of_win_$ |off_$
|off_$_$ |off_and_never |off_every |off_every_alarm |off_for_U |off_now_$ |off_th_Nduration
|offer_$ |offer_$_$ |old_money_fahrenheit |on_is_for |on_my_list |on_now_$ |on_quick |on_say_N:core
|on_seat |on_th_go |on_that |on_then_$ |on_tim_$ |on_to_N:oven |onc_it |open |other_room |our_$
|our_$_$ |out_Nduration_i |out_for_N:core |out_my_P |out_shut |out_shut_th |out_they_ar |out_would
|outsid_befor |outsid_befor_Nduration |oven_THING_N:some |oven_THING_w |oven_back_to |oven_door_now
|oven_is_not |oven_is_pack |oven_n |oven_n_to |oven_no_fan |oven_now_$ |oven_on_for |oven_with
|over_in_th |over_th_plac |over_th_shop |park |past_$ |past_$_$ |past_medium_U |peel_will |peel_will_not
|per_THING_$ |person_will |person_will_b |pescatarian_so |pescatarian_so_h |piec_of_sirloin
|pink_ar |pink_is_it |pink_w |pitch_in |plan_and |play_$ |play_$_$ |proper_rar |proper_rar_roast
|pur_raw |put_it_out |quick_th_oven |r_on_th |r_road |radio |rang_they_will |rar_N:few_to |rar_mean
|raw_insid_$ |read_Ndegrees:few |read_Ndegrees:few_mor |read_it_jump |ready_for_th |reason_for
|reduc_for |rest_for_$ |rib_Nweight_$ |rib_THING_roast |rib_on |rib_roast_Nweight |ring_off
|ring_off_for |ris_$ |ris_$_$ |roast_DISH_has |roast_DISH_too |roast_do |roast_fell |roast_fell_on
|roast_for |rol |roll_prov |roll_prov_Nduration |roll_up_her |room_temperatur |rump |run_behind_$
|run_cold |s_out |said_N:core_$ |said_it_wrong |said_to |salt_do_i |salt_th_THING |sam_tim_and
|sat_THING |sat_THING_th |say_N:core_in |sear_altogether |seat_$ |seat_$_$ |second_it_break
|second_it_touch |settl_N:some |settl_on |sh_carry |sh_carry_a |sh_has_DISH |shot |should_b_$
|shout_at_Ndegrees:core |show_Ndegrees:core_$ |sid_too |skim |sleep_in |sleep_in_th |slic |slip_on
|slip_on_th |slow_and |slow_chopper_THING |smok_it_is |smok_someth |smok_someth_U |so_N:some_mor
|so_do_not |so_far_bad |som_DISH_roll |som_help |som_help_work |soon_act |soon_act_as |sooner_not
|sooner_than_plan |sort_this |sort_this_out |sous |speak_in_celsius |stab |stand_rib_P |start_at
|steady_temperatur |sticker |still_at_th |still_park_$ |still_to_com |stop_bleed_$ |stov_is_up
|str_in_th |street_$ |street_$_$ |street_is_dark |strong |stuck_in_th |stuff_is |suggest_$
|suggest_$_$ |supper_club |tabl_for_m |tail_Nduration |talk_for_a |temperatur_am |temperatur_am_i
|temperatur_ar_w |temperatur_do_i |temperatur_is_medium |tent_loosely_$ |th_DISH_anymor |th_DISH_as
|th_DISH_pet |th_DISH_sid |th_DISH_up |th_THING_check |th_THING_must |th_THING_till |th_alternativ
|th_bank |th_belly |th_belly_of |th_best_way |th_bin_out |th_board_and |th_bon_skip |th_build_i
|th_cast_iron |th_corkscrew |th_cream_$ |th_dial_$ |th_dial_THING |th_dial_and |th_dog_back
|th_door_shut |th_driveway_$ |th_end |th_fast_on |th_finish_$ |th_flu_$ |th_fridg_$ |th_fridg_and
|th_fridg_i |th_full |th_greas |th_greas_and |th_green_DISH |th_heat |th_instant-read_$ |th_loo_$
|th_oven_mind |th_pac_slow |th_phon_they |th_phon_to |th_plac_$ |th_prawn |th_prep |th_roast_$
|th_roast_get |th_rundown_for |th_second_sear |th_shower_i |th_templ |th_thick_end |th_top
|th_top_off |th_whol_street |than_i_thought |than_i_told |than_it_is |than_it_say |than_plan_h
|than_sh |than_that_$ |that_dangerous |that_dangerous_$ |that_from_th |that_i_press |that_in_mind
|that_past |that_past_m |that_right_$ |that_ring |that_ring_off |their |them_THING |them_all_sat
|them_had |them_how |them_i |them_in_th |ther_a_good |ther_a_trick |ther_long_way |ther_someth
|ther_tell |ther_tell_m |ther_was_nut |they_hav_left |thick_do |thick_do_i |thick_grey |thickest_bit_$
|think_i_hav |think_i_will |think_in_kilo |think_my |think_no |think_ther |think_ther_was |this_THING
|this_at_again |this_is_right |this_moment |this_moment_$ |this_slow |this_slow_$ |till_dinner
|till_th_DISH |till_w |tim_U_i |tim_is_need |tim_what_you |timelin |to_DISH_th |to_N:core_and
|to_N:oven_$ |to_N:oven_U |to_N:oven_is |to_N:oven_th |to_Ngas-mark_$ |to_U_now |to_b_at |to_b_f
|to_bath |to_bath_th |to_buy_THING |to_carv_it |to_check_th |to_do_a |to_do_now |to_eat_N:oven
|to_eat_P |to_eat_at |to_f_god |to_flip |to_flip_th |to_heat_put |to_imperial |to_metric |to_n
|to_peel |to_se_about |to_tell_ya |to_temperatur_$ |to_th_shop |too_lat_$ |too_short |tough_as
|truss_th |truss_th_roast |trust_th |turn_on_th |under_way_sorry |unless_it |unless_it_is |up_flam_is
|up_i_am |up_i_will |up_on_th |up_to_N:few |up_to_heat |up_to_sp |us_do_it |us_do_th |us_eat
|us_eat_Nduration |us_eat_at |us_ghe |us_not_bother |us_skip |usual_$ |usual_$_$ |vegan_so
|villag |w_at_$ |w_eat_it |w_fin |w_hav_with |w_nearly |w_nearly_ther |w_skip_th |w_stand |w_tak_it
|wait_on_P |want_a_warn |want_degre |want_degre_c |want_drink |want_drink_first |want_for_N:few
|warm_plat |was_N:core_Nduration |was_N:core_not |was_hang |was_not_listen |was_th_last |water_so
|water_so_it |way_behind_$ |way_longer |way_longer_than |way_to |wean_hav |wean_hav_to |well_don_no
|well_th_rest |went_off_so |went_straight |went_straight_into |wer_$ |wer_$_$ |wer_lat |wer_w_$
|whatever_i_do |whatever_you_ask |when_it |when_th_middl |wher_th |wher_to |whil_i_nap |whil_it_is
|whil_yet |whip_so |whip_so_no |whisht |whol_way_$ |will_b_murder |will_forget_thes |will_not_com
|will_sear_first |wilt |with_b |with_b_ready |with_pastry |with_pastry_or |with_that |with_your_list
|work_in |would_P |would_P_to |would_say_$ |wrap |wrong |ya_and |year_it |yet_to |you_about_th
|you_again |you_again_$ |you_call_them |you_can_manag |you_count |you_explain |you_for_Nduration
|you_over |you_over_th |you_say |you_set_Nduration |you_tim |you_truss |you_truss_a |your_correction
-8 #after2 @106.3| @128.2| @13.7| @134| @135| @136.5| @137| @139.5| @14.1| @14.5| @140.4| @145|
@146| @17.2| @18.3| @18.5| @29.0| @29.6| @3.1| @30.3| @31.0| @32.13| @32.7| @32.8| @34.0| @4.10|
@4.6| @48.9| @49.3| @4| @59.5| @71.0| @72.1| @7| @85.7| @88.2| @90.5| @99.1| DISH_DISH_cook|
DISH_DISH_for| DISH_DISH_i| DISH_DISH_with| DISH_DISH|my DISH_and_th| DISH_and|cut DISH_and|they
DISH_ar|cancell DISH_ar|glaz DISH_bless| DISH_cook|down DISH_cream_w| DISH_do_i| DISH_don_in|
DISH_for|P DISH_for|us DISH_has_had| DISH_hav|been DISH_hit| DISH_hit|th DISH_how_many| DISH_into|
DISH_into|th DISH_is_raw| DISH_is_stuck| DISH_is|chop DISH_is|cut DISH_is|lik DISH_is|raw DISH_is|ready
DISH_is|stand DISH_is|stuck DISH_is|too DISH_i|am DISH_must_b| DISH_my|guest DISH_nobody|lik
DISH_now| DISH_n|longer DISH_or_DISH| DISH_our|on DISH_out|it DISH_over|th DISH_ready_they|
DISH_so_that| DISH_so|put DISH_so|they DISH_tast|of DISH_that|went DISH_ther_go| DISH_took|
DISH_took|th DISH_w_will| DISH_want|a DISH_will|do DISH_will|not DISH_with|that DISH_w|will
DISH|DISH_$ DISH|N:few DISH|and_THING DISH|and_th DISH|ar_off DISH|countdown DISH|countdown_any
DISH|cream_w DISH|for_m DISH|go_off DISH|n_mor DISH|solid_i DISH|tak DISH|to_nadia DISH|will
DISH|with N:core_about|right N:core_and_what| N:core_and_w| N:core_and|w N:core_bless| N:core_bottl|
N:core_bottl|of N:core_can_i| N:core_how_long| N:core_i_want| N:core_is|ther N:core_i|will
N:core_near|th N:core_without_tell| N:core_with| N:core|at N:core|com N:core|i N:core|repeat_N:core
N:core|th_roast N:few_and|N:few N:few_bon_it| N:few_bon|Nweight N:few_burner_work| N:few_hav|arriv
N:few_is_when| N:few_is|when N:few_lat|on N:few_littl| N:few_of|us N:few_peopl_drop| N:few_rather_than|
N:few_rib|Nweight N:few_short_U| N:few_till|N:few N:few_to_flip| N:few_too|much N:few|P_so
N:few|bon_and N:few|bon_from N:few|do_not N:few|ear N:few|ear_and N:few|has N:few|has_invit
N:few|inch_in N:few|lat_on N:few|less_now N:few|loop N:few|loop_of N:few|other_$ N:few|person_$
N:few|rib_Nweight N:few|stray N:few|stray_on N:few|under_so N:few|who N:few|would N:oven_about|
N:oven_about|Nduration N:oven_can_you| N:oven_w|will N:oven|N:few N:some_Ndegrees:few| N:some_Ndegrees:few|in
N:some_P|th N:some_and|N:few N:some_had_to| N:some_hot_turn| N:some_i|hop N:some_mor_befor|
N:some|cold N:some|hot_turn N:some|lat_with N:some|mor_befor N:some|mouth N:some|mouth_to N:some|person_for
Nclock_ahead| Nclock_ahead|of Nclock_and|th Nclock_it|was Nclock|i Nclock|instead_of Nclock|sam_as
Nclock|w_will Ndegrees:core_is_what| Ndegrees:core_is|what Ndegrees:core_it|is Ndegrees:core_let_m|
Ndegrees:core_on_th| Ndegrees:few_after| Ndegrees:few_after|i Ndegrees:few_less_than| Ndegrees:few_less|
Ndegrees:few_less|than Ndegrees:some_hotter| Ndegrees:some_hotter|than Ndegrees:some|cool Ndegrees:some|cool_alway
Ndegrees:some|hotter Ndegrees:some|hotter_than Ndegrees:some|in_Nduration Nduration_DISH_is|
Nduration_THING_is| Nduration_U| Nduration_after_th| Nduration_ago_not| Nduration_ago_or| Nduration_ago_sorry|
Nduration_ago_whil| Nduration_ago|it Nduration_ago|not Nduration_ago|now Nduration_and_then|
Nduration_and_w| Nduration_and|tell Nduration_earlier|than Nduration_how|do Nduration_on_for|
Nduration_sinc_it| Nduration_sooner_P| Nduration_tell|m Nduration_to|check Nduration_walk_th|
Nduration_w|ar Nduration_you|hav Nduration|ago_or Nduration|befor_$ Nduration|befor_th Nduration|behind_so
Nduration|countdown_$ Nduration|earlier_than Nduration|later_$ Nduration|tell Nduration|th_$
Nweight_leg_of| Nweight_not|N:few Nweight_rib| Nweight_very_THING| Nweight|very_THING P_ar|in
P_ar|join P_at|th P_com|too P_eat_by| P_eat|it P_els|is P_gav_m| P_has|been P_is_arm| P_is_bail|
P_is|allergic P_is|eat P_is|expect P_is|pregnant P_is|sat P_pet_has| P_so_that| P_still|moo
P_th_whol| P|ar_feral P|com_too P|eat_by P|is_arm P|is_bail P|is_go P|is_in P|is_join P|is_not
P|is_turn P|it_is P|mak_chemo P|slip P|slip_on P|th_whol P|us_up P|will_b THING_THING_U| THING_THING_would|
THING_THING|no THING_U| THING_U|from THING_after|all THING_and_i| THING_and_what| THING_ar|U
THING_by_th| THING_cast| THING_cast|iron THING_drop|Ndegrees:few THING_for|th THING_has|been
THING_has|fallen THING_has|gon THING_has|left THING_hav|not THING_in_a| THING_into| THING_is_pack|
THING_is_sinc| THING_is|THING THING_is|a THING_is|broken THING_is|in THING_is|pack THING_is|show
THING_is|slow THING_m_th| THING_mak|th THING_must| THING_now| THING_now|for THING_open| THING_out_of|
THING_piec_w| THING_to_b| THING_to|th THING_trim_not| THING_up_U| THING_whatever| THING_whatever|you
THING_what|is THING_what|temperatur THING_when_it| THING_which| THING_will|i THING_would_b|
THING|N:core_Nduration THING|Ndegrees:few_high THING|and_put THING|ar THING|com THING|get_to
THING|has_com THING|in THING|is_battery THING|leg_with THING|on THING|on_th THING|out THING|over_$
THING|per_person THING|piec_w THING|speak THING|speak_celsius THING|under_THING THING|when_it
THING|yes_and U_DISH_over| U_at_th| U_from|th U_has|com U_i_could| U_is_what| U_is|a U_is|bring
U_is|coeliac U_is|lot U_is|vegetarian U_i|hav U_i|mean U_of|THING U_or_lid| U_or|lid U_part_say|
U_th|whol U_want_his| U_w|hav U_you|ar U|DISH_over U|call_in U|from_previous U|has_com U|has_got
U|is_a U|of_th U|oven U|part U|part_say U|too U|too_soon U|who ^_DISH_cream| ^_DISH_hit| ^_DISH|
^_N:few|with ^_N:oven| ^_Nclock_i| ^_Nclock|i ^_Ndegrees:core_is| ^_Nduration_for| ^_Nweight_THING|
^_P|vot ^_THING_N:core| ^_THING_fell| ^_THING|for ^_THING|of ^_THING|say ^_U_has| ^_U|i ^_^_DISH|
^_^_N:oven| ^_^_alert| ^_^_barely| ^_^_battery| ^_^_had| ^_^_hang| ^_^_headcount| ^_^_head|
^_^_honestly| ^_^_includ| ^_^_instead| ^_^_kill| ^_^_might| ^_^_roast| ^_^_shov| ^_^_speak|
^_^_switch| ^_^_talk| ^_^_theo| ^_^_tick| ^_^_train| ^_^_vegan| ^_add|a ^_alert| ^_all_guest|
^_and_it| ^_anyth_i| ^_at_what| ^_a|boneless ^_barely| ^_battery_chang| ^_battery| ^_been_rest|
^_behind_by| ^_bin|th ^_bit|behind ^_boneless|rib ^_br_it| ^_breaker_trip| ^_bum_on| ^_bump_it|
^_burnt_my| ^_call|m ^_cancel|that ^_can|not ^_can|th ^_could|w ^_did|th ^_did|you ^_dinner|at
^_dinner|for ^_display_is| ^_dog|got ^_everyth|tak ^_excus|m ^_fan|is ^_first_guest| ^_first|slic
^_flam_ar| ^_flat|tyr ^_for_what| ^_forgot_to| ^_found_th| ^_fresh_out| ^_fresh|out ^_gas_is|
^_go_upstair| ^_got|th ^_go|upstair ^_h_has| ^_had| ^_hang| ^_hav|not ^_headcount| ^_headcount|has
^_head| ^_his|P ^_honestly| ^_how|ar ^_i_had| ^_i_switch| ^_if|i ^_if|you ^_includ| ^_includ|DISH
^_instead| ^_instead|of ^_is|ther ^_it_cam| ^_it|hit ^_it|r ^_i|am ^_i|hav ^_i|think ^_i|was
^_i|will ^_jess_is| ^_keep_an| ^_kill| ^_kill|th ^_kindly_remind| ^_leav_th| ^_light_ar| ^_light|ar
^_lit|th ^_lunch_at| ^_mak_m| ^_mak|it ^_might| ^_my_tim| ^_my|U ^_no_U| ^_no_still| ^_not|a
^_not|yet ^_no|P ^_nudg_m| ^_on_mor| ^_out_of| ^_oven_pack| ^_oven|is ^_plat|ar ^_plat|down
^_pound_and| ^_priya_is| ^_put|that ^_roast| ^_roast|is ^_roast|went ^_roll_ar| ^_roll|ar ^_run|a
^_serv_Nduration| ^_shoot|ther ^_shov| ^_shut_th| ^_smok_alarm| ^_smok|alarm ^_smok|is ^_so|lik
^_speak| ^_stand|rib ^_start|a ^_supper_is| ^_sur_i| ^_switch| ^_tak_that| ^_tak|th ^_talk_m|
^_talk| ^_talk|m ^_tell|your ^_temperatur|in ^_th_littl| ^_theo| ^_theo|want ^_ther|has ^_they_will|
^_think|roast ^_th|door ^_th|green ^_th|heat ^_th|lad ^_th|power ^_th|r ^_th|read ^_th|th ^_th|whol
^_tick| ^_took_her| ^_train_is| ^_train| ^_train|is ^_turn_it| ^_turn|that ^_vegan| ^_vegan|at
^_w_hit| ^_w_mak| ^_w_must| ^_w_put| ^_w_ran| ^_w_tak| ^_w_would| ^_whack_it| ^_what_am| ^_what|am
^_what|do ^_what|should ^_when_will| ^_when|i ^_whip|it ^_why_so| ^_w|hav ^_w|mak ^_w|prefer
^_yes|that a_N:core|repeat a_bag_of| a_cast| a_cast|iron a_crack|rib a_fan|assist a_good|un
a_green| a_green|DISH a_hot|start a_leg_of| a_proper|rar a_quarter| a_quarter|inch a_set| a_set|for
a_stand| a_warn|when a_whil_yet| a_whil|got about_th|chicken about|it_$ about|right_for actual_spark|
actual_spark|and add_th|green add|a_DISH after_Nduration_to| after_Nduration_you| after_a_proper|
after_all|so after_all|that after_go_up| after_i_wiggl| after_th|rest afternoon_shop_is| after|Nduration_to
after|Nduration_you after|all_$ after|i_wiggl after|th_sear after|w ag_this| ag_this|trim ag_to|heat
again_and|it again|what ago_it|was ago_i|put ago_not| ago_not|N:few ago_or| ago_or|so ago_sorry|
ago_whil| ago_whil|i ago|it ago|not ago|not_N:few ago|now ahead_of|m ahead|of_m aim_for_N:core|
airport_run_back| alert|at alert|at_N:core alert|at_Ndegrees:core alex|on alex|on_DISH all_go|wrong
all_my_stuff| all_my|stuff all_sat_down| all_sit| all_sit|down all_th|heat allergic|to_THING
all|U_wher all|go_wrong all|grey all|possibility all|possibility_ar all|right_i all|so already_in|my
alway_N:few| alway_N:few|under alway_com|in alway_lat| am_N:few_lat| am_N:few|lat am_about|
am_about|to am_away_to| am_away|to am_a|slow am_i_pull| am_lat|with am_leav_it| am_miss_th|
am_never_go| am_never|go am_nip|out am_not_do| am_not_french| am_not| am_not|french am_off|to
am_on_my| am_put_th| am_so| am_so|behind am_up|to am|N:few_$ am|away am|behind am|chas am|chas_my
am|drown_her am|get_N:core am|i_aim am|lagg am|lagg_by am|on_my am|out_of am|overwhelm am|slow_today
am|us_a and_DISH_hav| and_N:few|mor and_a_THING| and_alert_at| and_alert|at and_bob| and_bob|is
and_can|not and_do_th| and_eat|at and_hang| and_hav|i and_hit_my| and_how|is and_how|pink and_is_very|
and_is|very and_it_will| and_i|want and_never_com| and_never| and_onto| and_onto|th and_shout_when|
and_shut_th| and_skip|th and_tell|m and_then|noth and_ther_will| and_th|readout and_th|temperatur
and_took_it| and_wak_m| and_wak| and_wak|m and_what|ar and_w|ar and|a_P and|back and|cut_them
and|dust and|go_to and|if_i and|kilo and|left and|on and|on_a and|ounc and|out_th and|ris and|slow
another_N:few|has another_Nduration_and| another_go_not| another|way_$ any_THING_is| any_other|way
anyth_with| anyth_with|pastry an|alarm an|extra_pair an|oil ar_N:few_for| ar_N:few_of| ar_N:few|for
ar_N:few|tonight ar_N:some|lat ar_Nduration|behind ar_Nduration|off ar_ahead_of| ar_ahead|
ar_ahead|of ar_all|sat ar_com|than ar_feed|th ar_her_th| ar_in_boil| ar_into| ar_in|and ar_kill|
ar_nowher_near| ar_roll_DISH| ar_roll| ar_roll|DISH ar_set_th| ar_shy_a| ar_shy| ar_shy|a ar_sit|down
ar_wedg_and| ar_w|at arm_with| arm_with|th arm|is arm|is_burn ar|N:some_lat ar|U_through ar|all_in
ar|all_sat ar|bang_on ar|break ar|break_up ar|cancell ar|fix ar|fix_to ar|glaz ar|her_N:few
ar|her_U ar|into ar|lick ar|lick_up ar|my_choic ar|my_option ar|out_sh ar|swell ar|swell_up
ar|th ar|up ar|w_get ar|w_up ar|w_wait as_per|usual assist|oven as|anyth_$ as|i_typ as|if as|if_i
as|of as|per as|soon as|soon_as as|well_ay at_N:core_let| at_Nclock_ahead| at_Nclock_how| at_Nclock_in|
at_how| at_th|finish at_th|pub at_th|stor at_th|wall at|N:few_instead at|N:oven_feet at|Nclock_$
at|Nclock_DISH at|Nclock_instead at|Nclock_then at|my_ex at|th_finish at|th_start at|th_tabl
availabl_in| availabl_in|our away_to_f| away_to|th a|DISH_THING a|N:core_repeat a|Nweight_with
a|THING_and a|THING_no a|THING_truck a|U_for a|bit_Nduration a|bit_later a|blackout_her a|boneless_THING
a|boneless_rib a|crim a|few_THING a|few_minut a|final a|gap a|gap_right a|gas a|go_at a|good_un
a|half_THING a|jar_$ a|low_oven a|paus a|paus_$ a|pin a|pin_in a|plan a|rest_now a|rock a|second_$
a|singl_DISH a|slow_chopper a|we_whil a|word b_N:few_of| b_after| b_after|th b_back|in b_do_with|
b_do|now b_for|th b_f|at b_gon_got| b_gon|got b_handy_to| b_handy|to b_in_her| b_medium|cook
b_put_crumb| b_strain_th| b_upstair_for| back_carry| back_carry|on back_down_to| back|to_Ngas-mark
bad|it bag_of|DISH bail_so|knock bail|so_knock battery_chang_in| battery_chang| battery_chang|in
battery|is_flat becom_N:some_i| becom|soft becom|soft_still been_at|it been_in_Nduration| been_on_low|
been_on|low been_rest_th| been_taken| been|on been|on_sinc beep_so| beep_so|it beep|m_in begun_peel_th|
begun_peel| begun_peel|th behind_with|th behind|her_lad believ|it_$ best|way best|way_to bit|her
bit|her_too bit|of_sirloin blackout|her_th blaz| bless|her blew_actual_spark| blood_everywher_th|
blow| bob|for bob|for_th boil_for|th boil_water|on boil|water_on bon_Nweight|very bon_in|Nweight
bon_off_and| bon_skip| bon_skip|th bon|Nweight bother_don_ag| bother_sear_it| bottl|of_beer
bottom|of br_it|to brin_this_tim| bring_his_new| bring_his|P bring_his|new bring|his_new bring|th_DISH
brown|it_all br|it_to budg_for| budg_for|ag bump|it_up bung|som_roast burn_my_finger| burner_work|
burner_work|on bus|is_lat butter_for|th butter_i|can butter_so|no butter_th|roast buy| buzz_off|
buzz_off|th buzz|off buzz|off_th by|N:few by|for by|for_th b|Nduration_ago b|Nduration_later
b|an b|back_directly b|do_$ b|f b|handy b|lat b|nic_U b|put_crumb b|want c_put| c_put|it cam_out_of|
cam_outsid| cam_outsid|befor cam_out| can_check| can_check|th can_eat_Nduration| can_i_DISH|
can_i_rest| can_i|b can_leftover| can_not_keep| can_not_pictur| can_not_turn| can_not|hear
can_sit| can_sit|down can_th|P can_w_br| can_w_mak| can_w_rescu| cancell_they| cancell_they|will
can|i_se can|not_do can|not_put can|not_talk can|th_leftover can|w_add can|w_go can|you_giv
can|you_run careful_with|her cast_iron| celsius_giv| celsius_giv|m chair| chair|and chanc|
chang_in|th chang_to|imperial chang|in_th charg|of check_again_and| check|th_cupboard chemo_h_is|
chicken_b| chicken_b|back choir| chok_h| chok_h|can chop_an| chop_an|oil chopper_THING_whatever|
christma_dinner_at| chuck_a| chuck_som|roast chuck|it_on chuck|som_roast clock_for|th coeliac|my
coeliac|my_P cold_on|th com_down_with| com_down|with com_last_for| com_let_us| com_too_N:few|
completely_forgot_to| com|in_Ndegrees:some com|than com|than_i com|too_N:few convection_is|on
conventional|now cooker_is_conk| cooker_run_Ndegrees:some| cooker|is_conk cook|at_a cook|down
cook|down_and correction|N:core could_Nduration| could_Nduration|ago could_i|get could_not_get|
could_not|hear could_you|put could|dinner_b could|w_do could|w_push could|you_put could|you_tim
cover_it_with| crack_rib_of| crack|rib crack|rib_of crank_it|to crank_it|up crank|it_to crispy_at|
crispy_at|all crispy|on crowd|today crowd|today_so crumb| crumb|on crumb|on_th cut_it|open
cut_myself_with| cut_myself| cut_out| cut_th|oven cut|myself_with c|put c|put_it dan_offer|
dan_offer|to dan|offer dan|offer_to dav_is_lot| dead_it|will degre_c_put| degre_c|put degre|celsius
degre|celsius_i degre|f delay_it| delay_it|by diabet_and_is| dial_THING_show| did_i_tell| did|i_put
did|th_THING dinner_is_now| dinner_n_to| dinner|for_Nduration dinner|is_go dinner|up_by do_DISH_with|
do_DISH|go do_about|th do_hav| do_hav|a do_i_ask| do_i_tell| do_instead_of| do_it_lik| do_i|mak
do_medium_rar| do_medium|rar do_not_open| do_this_for| do_you_truss| dog_back| dog_back|in
dog_got_to| dog_has|had don_Nduration|ago don_ag| don_ag|ago don_and|dust don_in|tim don_th|butter
don|Nduration don|all don|it don|w don|you door_N:few| door_it|will door_of|th doorbell_they_hav|
doorbell_they|hav door|has_been door|is door|open_$ dough_is| dough_is|shap down_Nduration_earlier|
down_Nduration|earlier down_for|th down_i_can| down_in_th| down_i|can down|yet_$ do|DISH_with
do|i_DISH do|i_carv do|i_hav do|i_mak do|i_tell do|it_$ do|not_expect do|th_afternoon do|th_high
do|this_th do|us_a do|with_th do|you_mak drawer| drink| driv_that_is| driv|that driv|that_is
drop_Ndegrees:few_after| drop_th_oven| drop_th|green drop|Ndegrees:few_after drop|out_U drop|to_N:core
drop|to_N:oven dry_as_a| dry_as| dry|brin_this dry|it duck_out_for| duck_out|for earlier|than_plan
early_dinner_Nduration| early_so|shav eat_Nduration_later| eat_P_is| eat_at| eat_a|bit eat_it|pink
eat|Nduration_mor eat|by_Nclock eat|dairy eat|early_at electricity|is_aff end_N:core| enough_for|th
enough_to|coat enough_with| enough_with|th even|mean even|mean_$ everyth_tak|m everyth| everyth|tak
everywher_th|THING expect_in| expect_in|march extra_N:few|stray extra_for|dinner extra|N:few_stray
faff_with_th| fahrenheit_giv_it| fahrenheit_giv| fahrenheit_giv|it fallen_over| fallen_over|in
fallen|over fallen|over_in family|has family|has_arriv fan_assist|oven fancy_do|DISH fancy|do_DISH
fan|on_$ far|along fast|on fast|on_in fat_for_th| fat_for| fat_for|th fat_this|minut fat|cap_down
fat|end_$ fat|is_caught favour_and_shout| feed_N:some_P| feed|N:some_P feed|at feel| fell_on_th|
fell|on_th fewer_los| fewer_los|th final| finish_at|N:few finish_th|trim fir_in_th| first_N:few_hav|
first_alert| first_alert|at first_or| first_so_N:some| first_then|down flam_ar| flam_ar|lick
flight|land flip|th_DISH for_Nduration_how| for_Nduration|U for_a|bit for_a|final for_degre_c|
for_th_day| for_th|butter for_th|crust for_th|green for_th|tabl forerib_on_th| forget|thes
forget|thes_otherwis forgot_to_tell| forgot_to|buy forgot_to|salt for|DISH_$ for|N:core_after
for|P_nor for|a_bit for|a_whil for|her_U for|mop for|mop_up for|smok_in for|them for|us_medium
fre_from| fre_from|N:few freez|th freez|th_plan french_lif_is| french|it from_th|shop from|m_$
from|now front_room_with| front|room front|room_with full|hous_miss f|th_hors gang_is|all gary_is|
gav|m_a get_DISH_for| get_rid| get_rid|of get_th|THING get|DISH_for get|THING get|from get|th_DISH
get|ther_$ giv_it|m giv_m|thos giv_that_on| giv_that|on giv|it_a giv|it_m giv|m_a giv|m_fahrenheit
glass_and_th| gluten_is| gluten_is|out go_alongsid| go_lower_than| go_not|crispy go_ok_or|
go_ok| go_on_with| go_on|with go_out_for| go_straight_to| go_to_hav| go_to_look| go_to_pick|
go_to|b go_to|hav go_up|in go_with_medium| gon_dark| gon_got| gon_got|to gon_out_so| gon|all_dizzy
gon|from_N:few gon|got gon|got_to gon|in_and gon|ther gon|ther_is good_reason_w| good| good|for_N:few
good|un got_a_blackout| got_a_crack| got_a_nic| got_an| got_a|DISH got_a|second got_in|early
got_is_a| got_th|green got_to_that| got|a_blackout got|a_leave-in got|a_vegan got|an got|guest
got|guest_to got|in_early got|is_a got|left got|my_THING got|th_flu got|tim got|to_fetch go|ahead_$
go|in_as go|out_for go|to_bother go|to_eat go|to_help go|to_li go|to_se grab_th|handl grab_th|pan
grab|th_hot grab|th_pan grandson|is green_DISH_our| green_DISH_top| green_DISH| grey_and|sad
guest_hav|arriv guest_will|not guest| gym_back| gym_back|in h_has|had h_is_slip| h_is|off h_is|weak
h_pour_th| h_pour| h_pour|th h_will|not had_half| had_half|th had_to|guess hall_all| hall_all|of
handl_anyth_with| handl_it| handl_it|was handl_without| handl_without|a handy_to| handy_to|know
handy|to handy|to_know hanna_is| happen_at|onc happen_if|i happen|at_th has_been_sit| has_been_taken|
has_crept_up| has_drop|out has_fallen_over| has_fallen|over has_gon|way has_th|flu has|been_Nduration
has|been_sat has|chest has|chest_pain has|gon_everywher has|gon_from has|had_a has|not_thicken
hat_to| hat_to|miss haul_this| haul_this|th hav_DISH|with hav_N:core| hav_a_N:core| hav_a|N:core
hav_a|Nweight hav_a|boneless hav_a|helper hav_a|rest hav_begun_peel| hav_burn_my| hav_burn|my
hav_chang|my hav_cut|myself hav_drop_th| hav_finish_th| hav_gon|all hav_got_an| hav_got|an
hav_had|N:few hav_kill_th| hav_lost|my hav_medium| hav_no_notion| hav_not_kept| hav_pick_up|
hav_put_alex| hav_rop| hav_rop|in hav_rub|th hav_slic|my hav_switch| hav_taken|their hav_to_eat|
hav_to_tell| hav_to|DISH hav_to|b hav_to|get hav_to|hav hav_to|prepon hav_to|tak hav_to|tell
hav_turn_it| hav_turn|it hav_wip_th| hav|DISH_th hav|DISH_with hav|THING_without hav|a_jar
hav|a_rest hav|a_tast hav|been_at hav|been_turn hav|begun_peel hav|dairy hav|gon_power hav|got_DISH
hav|got_N:few hav|kept hav|no_notion hav|not_kept hav|nut_sh hav|plenty_of hav|put_alex hav|put_on
hav|rop hav|rop_in hav|sat hav|taken_their hav|to hav|to_rest hav|turn_up hav|you_seen headcount_has|gon
heat_at|all heat|N:oven held_up_i| help_my_P| help_th_parchment| help_ther| help_ther|is help_th|parchment
help|m_$ help|us_$ help|work help|work_you henderson_ar|her her_N:few_still| her_at_N:few|
her_lik_a| her_on_weight| her_th|rest her|can her|for_a her|sh_will high_heat_at| his_new|
his_new|P his|foot his|nam his|new his|new_P his|steak his|throat hit_my| hit_my|THING hit_th|tabl
hit|N:core_and hit|th_deck hit|th_oven hold_th|THING holler|at hom_crowd| hom_crowd|today honestly_drop_th|
honestly_let| honestly_let|us hop_that| hop_that|is hot_fat_this| hot_oven| hot_turn| hot_turn|out
hous_at|all hous|is how_do|th how_far|along how_long|mor how_many|day how_many|mor how_much|of
how_pink_ar| how_to_whip| how|far_along how|hot_is how|long_befor how|long_can how|long_do
how|long_has how|long_hav how|long_till how|many_DISH how|many_minut how|many_mor how|much_THING
how|much_butter how|much_longer how|much_of how|pink_is hurt_h_pour| i_DISH|out i_U|too i_am_about|
i_am_not| i_am_so| i_am|away i_am|behind i_am|chas i_am|lagg i_am|overwhelm i_b_do| i_b_tak|
i_bump_it| i_burn_my| i_can_check| i_can|us i_cook|at i_could_Nduration| i_crank_it| i_do_hav|
i_find_th| i_get_from| i_get|away i_got|tim i_go|out i_haul_this| i_hav_chang| i_hav_rop| i_hav_rub|
i_hav_switch| i_hav|an i_hav|kept i_hav|rop i_hav|sat i_knock_it| i_knock|it i_mak|proper i_pok_th|
i_said_th| i_say|to i_season_th| i_set| i_skip_th| i_stab_it| i_suppos| i_suppos|to i_switch|
i_think_my| i_think| i_ti|it i_told|him i_told|them i_turn|it i_want_P| i_want_for| i_wiggl|
i_wiggl|it i_will|b i_will|hav i_will|sear i_wrangl| i_wrangl|th ic_water| ic|water_test if_i_had|
if_it|go if|i_tak in_N:few| in_N:few|ear in_Nduration_for| in_U_i| in_a_good| in_and_i| in_and|th
in_as_i| in_as| in_a|half in_bit|her in_bob| in_bob|for in_charg| in_charg|of in_early_so|
in_i_shut| in_it|yet in_i|am in_march_so| in_our_hous| in_real_degre| in_sick_so| in_sinc|N:few
in_sinc|N:oven in_sinc|Nclock in_so|that in_th_front| in_th_pan| in_ther_as| in_ther_crispy|
in_ther_long| in_ther_th| in_ther|and in_th|cold in_th|end in_th|freezer in_th|hall in_th|shower
instead_of_a| instead_of|butter instead_of|dry instead|of_th instead|of_win instruction| into_th_driv|
into_th|driv into_th|plan into|it into|th_hot in|and_w in|early in|early_so in|i_forgot in|kilo_if
in|law_ar in|law_do in|law_has in|march_so in|my_liv in|our_market in|sinc_Nclock in|th_DISH
in|traffic_another in|yet_and is_N:core_about| is_N:core|and is_N:some_in| is_N:some|in is_Ndegrees:some_hotter|
is_Ndegrees:some|hotter is_Nduration| is_THING_say| is_a_Nweight| is_a_bag| is_all|U is_all|grey
is_alway_N:few| is_another|N:few is_arm| is_arm|is is_at_N:few| is_at|my is_a|U is_a|fir is_a|gap
is_a|lot is_a|vegan is_bail_so| is_bail| is_bail|so is_buzz_off| is_buzz| is_buzz|off is_cancell_they|
is_chok_h| is_chop_an| is_com_after| is_don|and is_do|th is_expect_in| is_flam_in| is_fre_from|
is_go|to is_grey_and| is_happen_at| is_hit|th is_in_my| is_it|at is_it|past is_join_th| is_lik_a|
is_load_with| is_look_so| is_mad_i| is_not_becom| is_not_th| is_not| is_not|in is_no|THING
is_no|win is_on|Ngas-mark is_oven_run| is_peel|th is_pink| is_plan_for| is_read|Ndegrees:few
is_saf| is_sat|down is_scrap_th| is_sinc|Nduration is_smok|com is_smok|everywher is_sort_N:few|
is_tent|loosely is_th_THING| is_th_reason| is_that|dangerous is_th|butter is_th|situation is|N:core_about
is|N:core_th is|N:few is|Ndate_sit is|Ndegrees:few_under is|Ndegrees:some_cooler is|THING_and
is|THING_lover is|a_good is|a_rental is|an_Nweight is|at is|at_N:core is|bring_his is|com_Nduration
is|com_after is|com_to is|cover_in is|cut_up is|delay_Nduration is|delay_minimum is|don_i is|don_it
is|empty_and is|enough_DISH is|expect_in is|fin_as is|flam_com is|flam_in is|fre_from is|french
is|french_$ is|go_in is|go_off is|hav_it is|help_with is|in_beer is|land is|lik_a is|lik_th
is|look_so is|lot_ar is|m_don is|mad_$ is|not_any is|not_becom is|not_eat is|not_mad is|on_$
is|on_N:oven is|on_Ngas-mark is|on_and is|on_at is|out_N:core is|overdon is|pack is|pack_in
is|point is|point_at is|possibl_$ is|pregnant_is is|remain is|ring_$ is|run_at is|sh_go is|shap_N:few
is|show_ji is|sleep is|slow_and is|smok_pour is|sort_N:few is|still_moo is|stuck_to is|taken_th
is|th is|th_last is|th_point is|th_ros is|th_schedul is|th_situation is|th_story is|th_trick
is|that_ok is|ther_at is|up_to is|vegetarian_and is|work it_Nduration_ago| it_Nduration| it_Nduration|earlier
it_a_hot| it_all|over it_all|right it_as| it_as|it it_at_th| it_b_if| it_beep_so| it_hav|to
it_is_Nduration| it_is_set| it_is|com it_is|overdon it_jump_Ndegrees:some| it_on|th it_open_and|
it_out|it it_saf|to it_said| it_should_th| it_slip_past| it_smell|amaz it_through_so| it_was|hang
it_will|b it_would|b it|again_at it|as_it it|b_if it|b_ready it|back_$ it|by_Nduration it|cam_out
it|go_in it|has_becom it|has_gon it|is_Ndegrees:some it|is_after it|is_boneless it|is_brown
it|is_cover it|is_mad it|is_on it|is_read it|is_thin it|m_in it|n_$ it|off_at it|onto it|onto_th
it|out_$ it|rar_P it|rest it|stuck_$ it|tell it|tell_m it|through_so it|up_$ it|was_N:core
it|was_Nduration it|was_hang it|was_hot it|with_salt it|yet_$ i|THING i|already i|am_all i|am_bleed
i|am_count i|am_pop i|am_yet i|ask_$ i|ask_th i|could_Nduration i|do_about i|got_tim i|got_to
i|haul i|hav_fallen i|hav_kill i|hav_knock i|hav_peel i|hav_trim i|hav_wip i|hop_nobody i|mak_proper
i|must_go i|n_from i|put_in i|said_N:core i|said_N:few i|said_that i|slic_it i|think_my i|took_out
i|turn_on i|us_DISH i|want_N:core i|want_P i|want_it i|will_giv i|will_start i|would_brown
i|wreck i|wreck_it jaysus_th_pan| jo_will|handl job_is_a| job_is| join_th|party joint|is_in
jump_Ndegrees:some|in keep_tell|m kindly_remind_after| knob| knock_it_down| knock_over_th|
knot| know_how|much know_th|american know_when|w lactos|intolerant_so lagg|by lagg|by_Nduration
last_car_pull| last_for| last_for|m last_th_i| last_year|and last|of_them last|year_and lat_so|they
lat_they_will| lat_with|th later_than|w lat|on_this lat|with_THING left_th|door leftover_ar|away
let|us_DISH let|us_finish let|us_hav lid| lid|th lid|th_THING lift_it|onto lift_it|out light_hav|
light_hav|gon lik_P|us lik_her_well| lik_it_still| lik_it|on lik_to_do| lik_to|do lik_water_will|
lik_your| lik|a_balloon lik|her_well lik|it_$ lik|your_plan lip_ar| lip_ar|swell list_for|us
list_nobody_eat| list|nobody list|nobody_eat list|what littl_N:few| littl_stick_in| liv_without|DISH
liv|without_DISH load_with| load_with|DISH load|shedd_start long_as|you long_can_leftover|
long_can|th long_do|th long_till|i long_way_to| longer|than_i long|till long|way_to look_after_th|
look_after| look_after|th look_lik_P| look_so| look_so|i loop_of_str| lost|Nduration_to lost|a
lot_will_not| lot_will|not lot|ar_go low_and|slow low_should_th| low_sinc| low_sinc|N:few lower_than|
lower_than|N:some lowest|was lowest|was_N:core low|sinc low|sinc_N:few lunch_Ndate|Nclock m_P|is
m_at_th| m_sort_this| m_th|THING m_th|missus m_th|next m_twic_as| m_up_to| mad_it|to mak_m|a
mak_that|Nduration mak_ther_is| mak_up| mak_up|th mak|U_a mak|it_loud mak|of mak|proper mak|proper_DISH
mak|th_cooky mak|that_on many_minut|till many|day many|mor march_so| march_so|go mean_in| mean_th|oven
meant_to|b medium|cook medium|rar_ok middl_and_i| middl_of_th| middl|and mind_th|timer miss_th|r
miss_th|train mor_befor|w mor_peopl|ar mor_person_will| mor_th_to| mor_than_it| mor_than|it
mor_th|to mor_tim_for| mor_timer| mor|person_com mor|tim_for mor|tim_slowly mouth_to| mouth_to|f
mov_it|to mov|to_a much_THING_do| much_i_am| much|longer_for much|of must_away_for| must|b_Nduration
must|i_do my_DISH| my_P_help| my_P_mak| my_P_want| my_THING_what| my_THING|speak my_arm_with|
my_finger_with| my_grandson|is my_lot_will| my_oven_will| my_oven| my_palm|is my_stuff| my_stuff|is
my_tim_hav| myself_peel_will| my|THING_what my|arm_on my|arm_with my|boss_keep my|cousin my|family
my|grandson my|guest_hat my|kne my|oven_will my|palm_try my|sous my|sous_THING my|stuff my|stuff_is
m|a_THING m|a_r m|a_sec m|about m|forever m|forever_U m|in_N:few m|it_is m|know_when m|thos
m|thos_number m|up_when m|with_no n_feed|at n_to_get| n_to_run| n_to|b n_to|buy nearly_full|
nearly_full|hous needl_is|point needl|is_point never_com| never_com|back never_did_get| never_did|th
never_go_to| never_own| never|know new_th|joint new|P_so new|dinner_tim next|job_$ nick|myself
nick|myself_peel nip_out_for| no_DISH_in| no_DISH_n| no_N:core|i no_dry| no_dry|brin no_i|am
no_i|did no_i|said no_no_i| no_notion_of| no_notion| no_still| no_th_green| no_they|ar no_undo|
no_you| nobody_is_go| nobody|is_eat nobody|told nobody|told_m not_N:some| not_availabl_in|
not_a|THING not_becom| not_becom|soft not_been|mad not_budg_for| not_b|put not_crispy_at| not_eat|dairy
not_get|DISH not_got|is not_hav|dairy not_hav|nut not_heat_at| not_in|i not_in|yet not_kept|
not_listen| not_open| not_open|th not_peel_th| not_pictur| not_pictur|pound not_pull|it not_put|that
not_right| not_se_for| not_that|on not_w_skip| not_whip_so| not_whip| not_whip|so noth_in_it|
notion_of| notion_of|fahrenheit not|availabl_in not|b_faff not|b_put not|believ_this not|bother_ty
not|crispy_at not|eat_dairy not|eat_nut not|find_in not|find_th not|finish_mash not|forgiv
not|forgiv_m not|go_near not|her_$ not|know_th not|mak_ther not|meant not|meant_for not|on_yet
not|quit_Nweight not|ready_$ not|se_for not|stay not|stay_clos not|th_hour not|touch_it not|want_remind
now_N:few| now_and_i| now_and_mak| now_i|must now_sorry_it| now_w|ar now|U now|at_N:few now|for_Nduration
no|bon_$ no|fan_$ no|wait nudg_m|in nudg|m number_on_th| number|of number|on_th nurs_hom_crowd|
n|another_go n|heat n|som n|som_DISH n|th_timer n|their n|their_supper n|to_run n|to_teach
of_THING_mak| of_butter_i| of_fahrenheit_giv| of_salt|so of_str|lik of_th_roast| of_them_that|
of_them_through| of_them|so of_them|through of_th|roast off_for|th off_so|it off_th|Nduration
of|a_th of|cours of|dry of|dry_THING of|fahrenheit_giv of|m_i of|my_THING of|th_sear of|them
of|top of|top_THING of|us_at ok_or|no ok_so|it ok_th_THING| ok|P ok|for_her ok|i ok|i_hav old_at|
old_at|th on_N:core_has| on_for|th on_is|look on_low_sinc| on_low|sinc on_seat_let| on_th|U
on_th|floor on_th|plat on_th|roast on_th|til on_th|way on_to|boil on_wash| on_wash|up on_weight|
on_weight|in on|a_miss on|is_for on|low_sinc on|th_U on|th_timer open_and|it or_lid| or_lid|th
or|N:few_$ or|lid or|lid_th or|mor other_room_for| ought_to|b our_hous| our|P_got out_and_i|
out_and|rest out_back_in| out_back|in out_for|N:core out_my|P out_of|DISH out_of|THING out_of|U
out_of|th out_sh_is| out_shut_th| out_sh| out_th|butter out_th|schedul outsid|befor outsid|befor_Nduration
out|already_$ out|for_m out|of_U out|overnight_$ out|yet_$ oven_alway_com| oven_and|it oven_at|Ndegrees:oven
oven_b_after| oven_beep_it| oven_for_th| oven_has|got oven_is|full oven_is|pack oven_is|smok
oven_lik|your oven_run_Ndegrees:some| oven_with|them oven|N:oven_$ oven|Nduration oven|alway_com
oven|b_after oven|b_at oven|door_now oven|down_in oven|has_been oven|has_got oven|li_it oven|now_at
oven|off_now oven|on_$ oven|temperatur_i over_th|pint over|th_lot own_a_cast| p_m|in pair_of_THING|
pan_handl_without| panick| pan|THING_hav pan|handl_without pan|is_after parchment|is_ignit
part_say| part_say|N:core part|N:core pass|out_on past_N:core| peel_will| peel_will|not pencil_in_DISH|
peopl_drop| peopl_drop|out peopl|ar_com peopl|ar_join per|usual per|usual_$ pet_has| pet_has|chest
phon_is_buzz| phon|call_$ pick_th|P pick_up|an pick|up_th pictur|pound pictur|pound_kilo piec_w|
piec_w|hav pink_ar|w pink_for|her pip|down_$ pitch_in| plan_for|Nclock plan_got_in| plan_got|
plan_got|in plan_h_has| plat_ar|warm plat_down|at plenty_of| point_of_salt| pok_th| pok_th|THING
pok|it pop|next pop|next_door pop|out postpon|of postpon|of_Nduration pound_and|ounc pour_th_boil|
pour_th|boil pour|th_boil power|is_back power|is_out power|went prefer|on prefer|on_th pregnant_by|
pregnant_by|th pregnant_in_th| pregnant|by pregnant|by_th press|it proper|THING_THING proper|rar
proper|rar_roast pull_into_th| pull_into| pull_into|th pull_this_at| pull_this| pull_this|at
pull|at_$ pull|it_$ pull|th_THING push|everyth push|everyth_back push|it_back put_alex| put_alex|on
put_a|pin put_crumb| put_crumb|on put_it|out put_th|kettl put|a_THING put|a_pin put|it_down
put|it_on put|it_to put|th_kettl put|th_small quarter|inch quarter|inch_as quid_a| quit| rar_P_still|
rar_for|all rar_is|a rar_ok| rar_ok|for rar|mean_in rar|so read_N:core_on| read_it_jump| ready_they_n|
ready_they|n read|Ndegrees:few read|Ndegrees:few_mor read|jump_about real_degre| real_degre|celsius
reckon_i|will reduc_enough_to| remind_about| remind_about|th remind_after| remind_after|Nduration
remov_th|roast rest_they| rest_they|ar rest_th|DISH rest|my rib_is|in rib|Nweight rid| rid|of
right_U_th| right_gym_back| right_i_am| right_so_that| righto_rib_is| right|DISH_ar right|i_am
roar|at_m roast_DISH_took| roast_cam_outsid| roast_cam|out roast_fell_on| roast_has|been roast_has|gon
roast_hit| roast_hit|N:core roast_i_hav| roast_is| roast_on_th| roast|THING rob_is| rob_is|com
rol_ar| rol_ar|in roll_DISH|is roll_ar|still roll_too_for| roll_up|her roll|DISH_is roll|ar_not
roll|ar_still room_for|N:some room_with|a rop_in_bob| rub_it| rub_it|with rub|it rub|it_with
rub|th_THING run_N:some|cold run_Ndegrees:some|cool run_a|bit run_m| run_m|through run_so_do|
run_that_by| run_that|past run|N:some_cold run|a_good run|lat_Nduration sack| said|that_$ salt_and|U
salt_do_i| salt_is|ther sam_is_hit| sam_is|on sam_tim_and| sam| sat|on_th sav|it_$ say_N:core_in|
say_it_has| say_th|sam say_to|you say|th_sam scald_my|arm scratch_that_i| se_about_th| se_for|
se_for|smok sear_it|again sear|in sear|in_this sear|is_don season_th|roast seat_let| seat_let|us
second_oven_lik| second_sear| second_sear|in second| set_an_alarm| set_it|to set|for_degre
set|th_roll sh_can_not| sh_go_ar| sh_is_bring| sh_is_do| sh_is|off sh_mak|th sh_will_hav| sh_will|hav
shall|b_at shift_everyth_by| shift_everyth| shift_everyth|by shoot_ther_is| shop_back|by shop_run_back|
short_U| should_b_medium| should_hav|been should_i_put| should_sh|grab should|hav_been should|it_com
should|sh_grab should|w_do shout_at|Ndegrees:core shout_when|it shov|it_back show_m_th| sho|
shut_off_th| shy_a| shy_a|few shy|a shy|a_few sh|grab sh|grab_$ sh|has_been sh|is_bring sh|is_not
sh|say_medium sh|will_hav sick_so| sick_so|N:few sid_fewer_los| simpl_DISH_will| sinc_it| sinc|Nclock_it
sinc|Nduration_ago sinc|Nduration_in sinc|it_was sinc|quarter sit_at_th| sit|at_th sit|down_$
sit|in_a skim_and_bob| skip_butter_th| skip_th|trim skip_th|truss skip|butter skip|butter_th
skip|th_truss skip|that_bit slic_th_tip| slic_th_top| slic_th| slic_th|tip slic_th|top slid_onto_th|
slip_on_th| slip_past| slip_past|N:core slow| small|on smok_com|from so_N:some|mor so_THING_is|
so_sh|is so_tak_that| so_watch_th| so_you|would som_help| som_help|work someth|is_burn sooner_P|
sooner_P|ar sorry_N:core|i sorry_it| sorry_what_is| sort_N:few| sort_N:few|loop sort_this|
sort_this|out sound| sound|right_for soup_go| soup_go|out so|N:few so|good so|good_$ so|i_hav
so|i_stab so|let so|lik_th so|no_that so|put_them so|shav so|shav_N:few so|slow so|tak so|you_would
spark_and_then| spark|and_then speak_celsius_giv| speak|to_m stag_ar| stag_ar|w stand|rib_roast
start_again_from| start|from_scratch stay|hom_$ steady_heat| steak|medium steak|medium_rar
stick_Nduration| stick_Nduration|on stick_in| stick_in|a still_crunchy| still_good|for still_sat|at
still_to|com still|cold_in still|good_for still|peel still|squeaky still|to still|work stor_back|
stor_back|in stor_what_should| stov_for_a| stov_for|N:few stov_is_up| str_in|this straight_into_my|
straight_into| straight_into|my straight|to_THING stray_on_th| str|lik str|lik_you stuck_in|th
stuck_th_fast| stuff|is_in sur_i|hav sur| swell_up_i| switch_on_th| switch|on switch|to tabl_w|said
tabl|by_N:few tabl|is tak_ag_this| tak_it|to tak_that|last taken_th_fat| tak|THING_$ tak|it_off
tak|it_that target_N:core_for| tast|of tast|of_bonfir teenager|hav teenager|hav_volunteer tell_on_mor|
tell_ya_and| tell_ya|and tell_you|about tell|m_again tell|m_that tell|m_when tell|you_when
temperatur_should|th tent|loosely test| th_DISH_a| th_DISH_bless| th_DISH_n| th_DISH_went|
th_DISH_what| th_DISH|countdown th_THING_must| th_THING_of| th_THING|and th_THING|is th_U_in|
th_U|N:core th_best_way| th_boil_water| th_boil|water th_bon_skip| th_bottom_of| th_butter_so|
th_cast|iron th_chicken_b| th_choir| th_clock_for| th_dog_back| th_door_N:few| th_door_of|
th_driv|that th_family|has th_fan|on th_fast|on th_fat_for| th_first| th_flight|is th_front|
th_front|room th_gang_is| th_guest|ar th_guest|is th_hall_all| th_handl_it| th_hous_at| th_last|
th_leave-in|on th_light_hav| th_list|nobody th_littl|on th_mak| th_mak|of th_middl|and th_number|on
th_oven_glov| th_oven_with| th_oven|now th_pair_of| th_parchment| th_parchment|is th_plan_got|
th_power_has| th_power|went th_prawn| th_rest_they| th_roast_hit| th_rol_ar| th_second_sear|
th_stor_back| th_tabl_w| th_teenager|hav th_thickest|part th_tim| th_tip|of th_top| th_to|go
th_twin_n| th_twin|n th_ty_is| th_we_needl| th_we|on th_whol|footy th_whol|hous th_whol|plan
th_whol|tim th_whol|way th_win| th_work| than_i_told| than|N:some_so than|actual than|plan
than|w that_Nduration_i| that_again_i| that_by| that_by|m that_can|not that_has_gon| that_i_press|
that_is|her that_is|wrong that_i|press that_on_a| that|bit_$ that|can that|dangerous that|dangerous_$
that|door_$ that|is_N:core that|is_join that|is_m that|is_not that|long_$ that|on_$ that|on_is
that|past that|past_m that|timer_$ that|timer_it that|work_$ their_coat_in| them_back|on them_has_drop|
them_how| them_that_is| them_that| them_that|is them_through| them_through|th them|so them|so_i
them|through them|through_th then|down then|down_low then|it then|noth ther_a_set| ther_as|
ther_as|well ther_crispy| ther_crispy|on ther_is|go ther_long|way ther_th|THING ther_will|
ther_will|b ther|a_set ther|is_enough ther|th ther|was_nut ther|yet_$ they_ar_go| they_ar|early
they_hav_been| they_hav_taken| they_hav|rung they_n|heat they_want|drink they|ar_THING they|ar_golden
they|ar_still they|com_$ they|hav_all they|hav_got they|n_heat they|sat they|text_Nduration
thick_part|N:core thickest|part_N:core thick|part_$ think_i_am| think_in|kilo think_i|am think_my|THING
think|it_is this_tim|ther this_trim_way| this|is_for this|morn_$ this|out_first this|th_$ this|th_out
this|tim_$ this|trim this|trim_way through_no|pink through_so_you| through_so| through_so|you
through|th_day th|DISH_P th|DISH_after th|DISH_anymor th|DISH_as th|DISH_countdown th|DISH_ready
th|DISH_sid th|DISH_sinc th|P_down th|P_up th|THING_DISH th|THING_a th|THING_and th|THING_slip
th|THING_so th|U_in th|afternoon th|alternativ th|american th|ball th|begin_$ th|board_and
th|boat th|boil_water th|bon_off th|butter_step th|cat_got th|chicken_b th|chip_pan th|church
th|cooker_work th|day_befor th|dial_THING th|dog_THING th|door_of th|driv_that th|end_th th|even
th|fan_set th|fat_end th|fat_off th|fella th|flight_is th|floor th|fridg_at th|fridg_i th|fridg_sinc
th|gang th|gang_is th|glass th|hall th|hood th|hood_was th|hot_handl th|ic th|lad_ar th|lad_hav
th|last_of th|lat th|leave-in_on th|left th|light_hav th|light_went th|lino_$ th|list_nobody
th|liv th|liv_room th|menu_and th|messag th|missus_and th|music th|other_th th|oven_beep th|oven_glov
th|oven_it th|pac_her th|pair th|pair_of th|pan_and th|parchment th|parchment_is th|party th|peopl
th|phon_they th|pint th|pint_of th|plan_and th|power_has th|readout th|readout_go th|remot
th|road th|roast_from th|roast_hit th|rol_ar th|roll_cam th|sam_$ th|schedul_$ th|second_sear
th|shop_floor th|shower th|sid th|situation th|small_oven th|stor_$ th|stor_Nduration th|stor_what
th|stov_for th|tabl_and th|tabl_get th|tablet th|teenager_hav th|telly th|to_go th|top_off
th|ty th|vicar th|whol_even th|whol_plan th|window_$ ti_it|is till_th|P till|Ndate tim_Nduration_for|
tim_hav|gon tim_is_lactos| timer_and|th timer_for|th timer|Nduration_$ tim|it tip|of tip|of_my
to_N:oven_about| to_N:some_Ndegrees:few| to_THING|up to_a_quarter| to_b_in| to_bath_th| to_b|f
to_carv|and to_do_th| to_do|now to_flip|th to_get|her to_jump_in| to_n|som to_pick_th| to_postpon|
to_postpon|th to_put_th| to_run_to| to_run|to to_sit|down to_skip|butter to_teach_m| to_tell|ya
to_that|yet to_th|shop to_whip| to_whip|butter today_so_w| too_N:few|month too_for|mop took_ag_to|
took_m|forever took|forever took|th_U too|high_$ too|low_to too|much_go top_oven_is| top|off_my
touch_it_if| touch|that_it to|N:few_now to|N:oven_Nduration to|N:oven_U to|N:oven_about to|N:oven_at
to|Ngas-mark_as to|THING_$ to|b_U to|b_careful to|b_f to|b_had to|b_her to|bast to|boil_for
to|check_DISH to|coat to|coat_a to|com_out to|death to|f_god to|f_th to|flip to|go_alongsid
to|guess to|guess_between to|heat_put to|imperial to|know_when to|li to|mak_a to|miss_N:core
to|my_THING to|n_som to|prepon to|prepon_by to|rest_it to|say_oven to|tak_this to|th_church
to|th_next to|th_tabl to|that_phon to|us_$ trim_not| trim_not|quit trim_way| trim_way|longer
trim|th truss|a_roast turn_down|to turn_it|over turn_th|U turn|out_th turn|out_w twin_n|their
twin|n_their ty_is| ty_is|sort tyr_Nduration_is| under_way| undo|it undo|it_$ up_U_is| up_U|is
up_after|th up_an_extra| up_as|w up_a|Nweight up_her| up_i_will| up_i|think up_th_DISH| up_th_back|
up_to_my| up_to|N:some up_to|heat up_to|sp up|an up|an_extra up|as_w up|her_sleev up|th_tim
up|to_my up|yet us_DISH|out us_THING|THING us_a_leave-in| us_do|th us_eat_a| us_go_straight|
us_mak_th| us_mak|th us_not_bother| us_skip|th us_som_help| us_th_last| us|eat_a us|go_medium
us|mak_th vegan|at vegan|at_th very_THING|piec volunteer_for|th w_ar_into| w_ar_roll| w_ar_shy|
w_ar_sit| w_ar|at w_ar|fix w_ar|into w_br_dinner| w_br| w_can_sit| w_go_for| w_hav_N:few| w_mak_up|
w_prefer|on w_push|everyth w_put|it w_rescu| w_rescu|it w_start|at w_took_it| w_will_serv|
w_would_b| wak_m|at wak_m|up walk_in|and walk|in_$ want_N:core_in| want_P| want_P|eat want_a_warn|
want_dinner| want_dinner|at want_remind_about| want_to_THING| want|drink want|drink_first want|it_at
want|to_THING want|to_do want|to_know warn_when_th| warn|when warn|when_th was_not_listen|
was_not|meant wash|up_$ was|N:core_and was|hang_open was|on_th was|that_last water_will|not
water|on_his way_do_i| way_to|go way|longer way|longer_than wedg_and| wedg_and|on weight|in_kilo
well_behind|her well_don_i| well_liv_without| well_liv| well_liv|without went_on_th| went|
went|on_th went|out_at we|on whack_it_down| what_all|possibility what_do_medium| what_is_after|
what_is_to| what_is|french what_is|go what_is|that what_quantity| what_quantity|of what_should_sh|
what_should|sh what_should|w what_stag_ar| what_weight| what_weight|of whatever|you_allow what|did_th
what|do_medium what|if_i what|is_Ndegrees:oven what|is_after what|is_my what|is_next what|is_to
what|temperatur_should what|tim_do what|w_open when_do_w| when_do|th when_is_it| when_it|get
when_it|hit when_sh_get| when_sh|get when_will_it| when_w|get when_you|check when|do_everyth
when|th_middl wher_do|th wher_w|left wher|w_left which|sid which|way whil_got|guest whil_i_wrangl|
whil_yet|it whil|got whil|i_U whil|i_nap whil|yet whip_so| whip_so|no whip|butter whip|butter_with
whip|so whip|so_no who_is_a| who_is|a whol|footy whol|footy_team whol|way why_am_i| why_do|not
why|U wiggl_it_i| wiggl|it wiggl|it_i will_b_out| will_b|her will_eat|early will_forget|thes
will_giv|th will_hav_her| will_hav|a will_hav|roast will_look_after| will_not_b| will_not_whip|
will_not|forgiv will_not|go will_not|stay will_serv| will_serv|it will_tak_th| will|b_an will|b_eat
will|b_join will|b_murder will|carv will|handl will|handl_anyth will|it_b will|not_bother will|not_forgiv
will|not_light will|not_se will|not_thicken will|sear_at wip_th|board wis_w_ar| wis| with_medium|well
with_salt| without_DISH_my| without_DISH| without_a_THING| without_tell|m without|DISH_THING
without|DISH_so without|a_mitt with|DISH_i with|THING_$ with|everyth_$ with|no with|pastry
with|pastry_or with|th_fan with|th_messag with|th_prep with|them work_that| would_b_sit| would_b|handy
would_hat_to| would_hat| would_non| would_non|of would_th|wrong would_you_i| would_you|th would|it_b
would|not_b would|not_mind would|you_$ wrangl|th wrangl|th_THING w|ar_all w|ar_clean w|ar_hav
w|ar_in w|ar_out w|at_at w|becom w|br_th w|do_about w|hav_DISH w|hav_had w|land w|left_off
w|lik w|lik_it w|miss w|push_everyth w|said_grac w|still_good w|want_it w|will_b w|will_eat
w|will_serv ya|and_m year_old_at| yes_P_i| yes|N:core yes|that you_DISH_th| you_ar_ahead| you_ar|a
you_ar|break you_ar|on you_call|them you_can_tell| you_for_Nduration| you_giv|m you_hav|to
you_n|a you_put|in you_run_that| you_think_i| you_truss| you_truss|a you_would_non| your|THING_$
you|allow_$ you|ar_ahead you|ar_out you|can_drop you|can_stop you|check_tell you|mak_th you|put_DISH
you|think_i you|understand you|understand_$ you|would_non |@10.6 |@100 |@103.2 |@103.5 |@103.6
|@105.5 |@119 |@120.1 |@126 |@15.0 |@19.3 |@21 |@22 |@22.2 |@32.2 |@34.2 |@39.3 |@39.6 |@4.8
|@50.0 |@57.0 |@59.0 |@59.7 |@60.1 |@62.7 |@71 |@72.1 |@77.0 |@79.4 |@84.2 |@99.5 |DISH_DISH_less
|DISH_DISH_went |DISH_Nduration |DISH_THING_DISH |DISH_THING_as |DISH_as_w |DISH_bless_him
|DISH_boil_and |DISH_can |DISH_countdown |DISH_cream_w |DISH_for_P |DISH_get |DISH_get_th |DISH_it_in
|DISH_my_THING |DISH_over |DISH_over_th |DISH_per_THING |DISH_ready_they |DISH_sid |DISH_th
|DISH_timer_and |DISH_under |DISH_went_off |DISH_whil_i |DISH_with_that |N:core_about_right
|N:core_after |N:core_after_rest |N:core_and_w |N:core_repeat_N:core |N:core_stop |N:core_then_i
|N:core_will_ya |N:few_already |N:few_day |N:few_off_and |N:few_rather_than |N:few_stray |N:few_stray_on
|N:few_tim |N:few_tonight_$ |N:few_w |N:oven_about |N:oven_about_Nduration |N:oven_and |N:oven_and_it
|N:oven_feet |N:some_P_th |N:some_cold |N:some_lat_with |N:some_so_N:some |Nclock_then |Nclock_then_$
|Ndate_sit |Ndate_sit_down |Ndegrees:few_after |Ndegrees:few_after_i |Ndegrees:few_mor_than
|Ndegrees:some_cooler |Ndegrees:some_cooler_than |Nduration_U |Nduration_do |Nduration_how_do
|Nduration_it |Nduration_sooner |Nduration_th_DISH |Nduration_to_check |Nduration_what_is |Nduration_would_ya
|Nduration_you_hav |Ngas-mark_as |Ngas-mark_as_th |Nweight_i_misread |Nweight_with_N:few |P_got_her
|P_is_com |P_non |P_nor |P_nor_money |P_put_th |P_so_N:few |P_so_that |P_who |THING_DISH_ar
|THING_THING_ar |THING_and_DISH |THING_and_what |THING_first |THING_for |THING_go_$ |THING_hav_Ndegrees:core
|THING_hav_all |THING_in_Nduration |THING_in_a |THING_let |THING_let_us |THING_lover |THING_lover_com
|THING_smok |THING_smok_com |THING_truck |THING_went_into |THING_what |THING_without_DISH |U_a
|U_for_this |U_my_P |U_out_of |U_through |U_through_U |a_DISH_as |a_THING_in |a_balloon |a_bath
|a_blackout_her |a_cast |a_cast_iron |a_crim_$ |a_few_THING |a_fir |a_joint |a_kidney |a_kidney_transplant
|a_leave-in |a_leave-in_THING |a_mitt |a_pin |a_pin_in |a_plank |a_r_DISH |a_r_win |a_rental
|a_rest_now |a_roast_$ |a_sauna |a_set |a_set_for |a_shower |a_slow |a_tast |a_timer_of |a_vegan_com
|about_th_guest |adult_$ |adult_$_$ |after_all |afternoon_look |again_at_th |again_from_scratch
|ago_or |ago_or_so |alarm_in_Nduration |all_behind_Nduration |all_dizzy |all_dizzy_and |all_her_it
|alon |already_com |already_in |already_in_th |alway_com_in |am_Nduration_off |am_after_a |am_all
|am_all_behind |am_away_behind |am_away_to |am_bleed |am_count |am_on_my |am_on_tim |am_pop
|am_put_th |am_run_lat |am_slow_today |am_yet |am_yet_to |an_Nweight |and_bon |and_do_not |and_everyth_in
|and_kilo_i |and_no_THING |and_not_a |and_salt |and_sh_still |and_then_noth |and_wak |and_wak_m
|and_will_not |another_go |another_go_not |any_THING_is |any_THING_left |anyth_$ |anyth_$_$
|ar_N:few_of |ar_N:some_lat |ar_Nduration_lat |ar_THING_$ |ar_THING_so |ar_ahead |ar_ahead_of
|ar_bang_on |ar_clean_out |ar_early_dinner |ar_feral |ar_golden |ar_hav_it |ar_her_and |ar_not_don
|ar_off_th |ar_on_to |ar_out_and |ar_run_lat |ar_starv |ar_still_THING |ar_still_cold |arm_on
|arm_on_th |arm_with |arm_with_th |as_if |as_if_i |at_N:few_th |at_N:oven_DISH |at_N:oven_i
|at_N:some |at_Nclock_or |at_Nclock_then |at_a_board |at_at |at_m_when |at_th_stor |availabl_in
|availabl_in_our |away_to |away_up |b_N:core |b_after |b_after_th |b_at_N:few |b_cook |b_f
|b_faff |b_faff_with |b_for_th |b_gon_Nduration |b_had |b_murder |b_no |b_put_crumb |b_ready_for
|b_sit |b_sit_down |b_tak |b_tak_it |b_with_th |back_directly |back_directly_Nduration |back_on_phew
|bail_so |bath_th_P |been_Nduration_$ |been_in_$ |been_on_low |been_turn |begun_peel |begun_peel_th
|behind_her_$ |behind_so_serv |believ_this |believ_this_THING |bit |bit_Nduration |bit_later
|bit_later_Nduration |bit_of_sirloin |blackout_her |blad |blad_tenderis |blast |board_and |boil_water_on
|bon_from |bon_from_th |bon_skip_th |boneless_THING |boneless_THING_THING |book |boss_keep
|boss_keep_THING |bother_with_th |br_th_whol |break_up |brin_this |brin_this_tim |bring_his
|butter_step |butter_th_roast |by_mistak |call |call_in |call_in_sick |cam_out_Nduration |can_drop
|can_drop_th |can_eat_Nduration |can_it_sit |can_not_stand |cap_down |cap_down_a |car_pull_into
|cat_got |cat_got_th |chas_my |chas_my_tail |check_DISH |check_tell |check_tell_m |chest_pain
|chicken_b |chicken_b_back |chip_pan |chip_pan_is |chok |coat_a |coat_a_spoon |coat_in |coat_in_th
|com_Nduration_after |com_after_this |com_now_$ |com_th_oven |com_too_N:few |com_w |command
|command_$ |command_$_$ |cooker_work |cool_alway |cool_alway_has |cornflour |could_Nduration
|could_Nduration_ago |countdown_any |countdown_any_mor |cousin_$ |cousin_$_$ |cover_in |cover_in_THING
|cream_is_mad |crim |crispy_at |crispy_at_all |cut_it_$ |cut_off |dangerous_$ |dangerous_$_$
|dark_and |day_befor |delay_minimum |dial_THING_show |did_i_put |did_th_THING |dinner_N:few
|do_DISH_with |do_i_haul |do_i_n |do_i_ti |do_medium_rar |dog_THING |dog_THING_th |don_i_hav
|door_now_sorry |door_of_th |door_open_Nduration |down_Nduration_earlier |down_and_cool |down_how
|down_in_Nduration |drink_first |drink_first_so |driv_that |driv_that_is |drown_her |dry_THING
|ear_and |ear_and_out |earlier_than |earlier_than_plan |early_at_N:few |early_so_shav |eat_a_bit
|eat_dairy |eat_nut |empty_and |end_th_other |everyth_back_Nduration |expect_in |expect_in_march
|f_god |f_god_help |faff_with_th |fahrenheit_giv |fahrenheit_giv_it |faint_$ |faint_$_$ |fan_$
|fan_$_$ |far_along |fat_end |fat_is_on |feed_th_nurs |few_THING |few_THING_N:few |fin_as |fin_as_it
|find_in_th |find_th_THING |finish_mash |first_at |first_then_down |flam_com_out |footy |footy_team
|for_P_and |for_degre |for_degre_c |for_m_it |for_th_templ |forever_U |forever_U_th |forgiv_m_without
|fre_from |fre_from_N:few |french_$ |french_$_$ |fridg_$ |fridg_$_$ |fridg_i |fridg_sinc |from_previous
|from_previous_dinner |full |gang_is_all |gap_right |gap_right_gym |get_N:core |get_THING_to
|get_from_th |get_on_$ |get_stuck |get_stuck_in |get_ther_$ |get_up |giv_it_Nduration |giv_m_thos
|glass |go_alongsid |go_alongsid_DISH |go_ar |go_ar_w |go_in_as |go_in_now |go_medium |go_medium_rar
|go_near |go_near_shellfish |go_to_church |go_to_hav |go_to_tak |go_wrong_$ |gon_cold_on |gon_everywher
|gon_in_and |gon_on_th |gon_out_so |gon_power |gon_power_cut |good_and |good_for_N:few |good_un
|good_un_don |got_a_DISH |got_a_shift |got_my_THING |got_no_THING |got_power_$ |got_th_flu
|got_tim_to |got_to_fetch |grab_$ |grab_$_$ |grandson |greas_fir |green_DISH_top |grow_$ |grow_$_$
|guess_between |guess_between_th |guest_com_Nduration |guest_hat |guest_hat_this |guest_to_greet
|h_will_b |half_THING |half_THING_THING |handl_anyth |handl_anyth_with |handl_without |handl_without_a
|hang_open_Nduration |happen_at_th |happen_if_i |has_been_out |has_been_sit |has_com_down |has_com_up
|has_got_th |has_invit |has_invit_themselv |hav_DISH_$ |hav_DISH_th |hav_N:core_in |hav_a_fan
|hav_a_leave-in |hav_a_monster |hav_a_pan |hav_any_DISH |hav_been_in |hav_bought |hav_bought_a
|hav_finish_with |hav_gon_and |hav_got_DISH |hav_got_an |hav_got_no |hav_got_th |hav_it_is
|hav_it_yet |hav_kept_insid |hav_kill |hav_kill_th |hav_knock |hav_knock_it |hav_lost_electricity
|hav_mad_th |hav_medium |hav_no_THING |hav_not_a |hav_overshot |hav_overshot_it |hav_peel |hav_peel_th
|hav_plenty_of |hav_put_it |hav_put_th |hav_rung_they |hav_slip_sorry |hav_th |hav_to_eat |hav_to_get
|hav_to_tell |hav_trim |hav_trim_it |hav_wip |hav_wip_th |heat_put |heat_put_m |her_Nduration_after
|her_U_my |her_lad |her_medium |her_sleev_and |her_th_whol |her_too |her_too_much |his_new
|his_new_P |hit_N:core_and |hood_was |hood_was_on |hop_nobody |hop_nobody_is |hot_by_N:some
|hot_handl |hot_handl_my |hot_is |hot_turn |hot_turn_out |hous_at |hous_miss |hous_miss_th
|how_to_whip |i_P |i_THING |i_THING_th |i_aim |i_aim_for |i_am_se |i_ask_$ |i_b_tak |i_ever
|i_hav_never |i_lat_$ |i_mak_th |i_measur |i_nap |i_open |i_put_my |i_reckon_$ |i_se |i_se_th
|i_stab |i_stab_it |i_tell_ya |i_thought_i |i_typ_$ |i_us_instead |i_wiggl |i_wiggl_it |if_it
|if_it_is |if_sh |ill |imperial |in_Ndegrees:some |in_Ndegrees:some_under |in_Nduration_ago
|in_Nduration_now |in_Nduration_th |in_as_i |in_beer |in_beer_is |in_coat |in_coat_on |in_early
|in_early_so |in_law_has |in_th_THING |in_their_chair |in_traffic_another |inch_as |inch_as_U
|inch_in |inch_in_not |insist_on |insist_on_DISH |instead_of_win |intolerant_so |intolerant_so_watch
|is_N:few_piec |is_Ndegrees:core_$ |is_Ndegrees:some_cooler |is_THING_at |is_U_at |is_a_greas
|is_a_tabl |is_a_vegan |is_aff |is_after_go |is_all_too |is_arm |is_arm_is |is_back_thank |is_bail
|is_bail_so |is_battery |is_battery_is |is_boneless |is_burn_by |is_com_out |is_dead_it |is_expect_$
|is_flat |is_flat_and |is_hav_it |is_ignit |is_in_DISH |is_in_a |is_in_metric |is_join_m |is_join_th
|is_lat_so |is_lik_seawater |is_m_now |is_my_P |is_next_then |is_no_win |is_not_U |is_off_th
|is_on_Ngas-mark |is_on_P |is_on_now |is_point |is_point_at |is_rest_under |is_sear_now |is_sh_go
|is_sit_at |is_still_THING |is_still_raw |is_tail_$ |is_th_lot |is_th_point |is_th_ros |is_th_schedul
|is_turn_up |is_under_THING |is_vegetarian_and |is_what_th |it_Nclock_$ |it_and_th |it_at_$
|it_b_if |it_b_this |it_back_how |it_com |it_down_a |it_is_THING |it_is_for |it_is_my |it_is_sleep
|it_loud |it_m_in |it_medium_well |it_off_and |it_otherwis_$ |it_with_DISH |it_with_salt |jar_$
|jar_$_$ |jar_of |joint_is_still |jump_about |keep_her |kettl_$ |kettl_$_$ |kilo |kilo_and_celsius
|kilo_if |kilo_if_you |know_about |know_how_long |know_when_i |know_when_it |lad_hav |lagg
|lagg_by |lagg_by_Nduration |last_of |last_on_back |lat_on_this |law_ar |law_do |law_has |leave-in_THING_$
|left_off |left_off_$ |leftover_sit |leftover_sit_out |leg_with |leg_with_th |li_it |li_it_is
|lick_th_spoon |lick_up |lick_up_th |lid_th |lid_th_THING |lif_is |lif_is_too |light |light_has
|light_has_gon |light_hav |light_went_out |lik_th_th |lik_to_do |lino_$ |lino_$_$ |lip_ar |lip_ar_swell
|list_nobody |list_nobody_eat |littl_screen_by |littl_screen_went |liv |liv_room |long_can
|long_do |long_do_th |long_has |long_hav |long_is |long_mor_will |long_till |long_till_i |longer_for
|longer_for_th |longer_than_you |look_so |look_so_i |loop |loop_of |loop_of_str |lot_will |loung
|low_sinc |low_sinc_N:few |low_to_tak |m_a_sec |m_a_timer |m_after_Nduration |m_don |m_i |m_in_N:some
|m_in_celsius |m_when_Nduration |m_when_it |mad_it_to |mak_a_not |mak_chemo |mak_chemo_h |mak_proper
|mak_proper_DISH |mak_ther |mak_ther_is |many_minut |many_mor |march_so |march_so_go |marri
|mean_N:core |mean_in |mean_in_degre |meant_for |meant_for_you |menu_and |mind_th_oven |mind_th_timer
|miss_N:core |miss_N:core_so |miss_th_train |missus_and |month_old_sh |mop_up |mor_$ |mor_$_$
|mor_befor_w |mor_guest_com |mor_plac_$ |mor_than_it |mor_will |much_butter |much_of |must_go
|must_go_out |my_P_bridi |my_THING_full |my_arm_with |my_ex |my_ex_is |my_liv |my_liv_room
|my_option_her |my_palm |my_sous |my_sous_THING |my_thumb |my_wrist |myself_peel |myself_peel_will
|myself_with |myself_with_th |n_DISH_DISH |n_a_timer |n_for_N:few |n_heat |n_som |n_som_DISH
|n_their |n_their_supper |n_to_jump |never_did_get |new_P_so |next_step_$ |nic_U_i |night_at_N:few
|no_DISH_butter |no_heat |no_notion |no_notion_of |no_sear_$ |nobody_eat_them |not_any |not_any_THING
|not_b_her |not_b_strain |not_becom |not_becom_soft |not_been_mad |not_bother_sear |not_breath_$
|not_eat_it |not_expect |not_expect_m |not_find_a |not_forgiv |not_forgiv_m |not_hav_THING
|not_i_carv |not_kept |not_kept_pac |not_light |not_mind_$ |not_mind_a |not_put_th |not_reduc_enough
|not_se_again |not_se_for |not_stop_bleed |not_thicken_whatever |not_touch_that |not_want_th
|now_and_i |number_do_i |number_on |nut_sh |of_DISH_w |of_beer |of_bonfir |of_m_i |of_salt_on
|of_th_cooker |of_that_blood |of_us_non |of_us_now |off_again_$ |off_my_finger |off_schedul_$
|on_N:few_peopl |on_N:some_$ |on_a_miss |on_at_N:oven |on_at_Nclock |on_his_foot |on_in_N:core
|on_out_$ |on_schedul_$ |on_seat_$ |on_seat_let |on_sinc |on_th_THING |on_th_greas |on_th_rarer
|on_what_was |open_and_it |open_it |or_what_$ |our_market |out_U_of |out_at_N:oven |out_back
|out_for_N:few |out_hot_$ |out_th_sear |out_th_ty |out_w_do |oven_alway_com |oven_and_no |oven_and_th
|oven_b_after |oven_b_at |oven_beep |oven_beep_it |oven_clock |oven_clock_is |oven_door_hang
|oven_down_$ |oven_glov_is |oven_li_it |oven_on_$ |over_N:core_$ |overdon_$ |overdon_$_$ |pac_her
|palm_try |palm_try_to |parchment_is_ignit |part_N:core_$ |part_say |part_say_N:core |past_m
|past_well |past_well_don |pastry_or |pastry_or_DISH |peopl_at_th |per_person |person_com |person_for
|person_for_th |phon_they |piec_w |piec_w_hav |pin_in |pin_in_it |pint_of |pint_of_cream |plac_of_THING
|plan_b |plan_for |point_at |point_at_N:core |possibility_ar |possibility_ar_ther |pound_kilo
|power_has_gon |pregnant_by |pregnant_by_th |pregnant_is |prepon_by |prepon_by_Nduration |proper_DISH_lik
|proper_THING_THING |public |push_everyth |push_everyth_back |put_alex |put_alex_on |put_crumb
|put_crumb_on |put_it_up |put_them_down |quarter_past |quit_Nweight |quit_Nweight_N:few |r_win_P
|rar |rar_mean_in |rar_roast |rar_roast_this |readout |readout_go |readout_go_N:core |reason_w_do
|remot |repeat_N:core |rescu_it |rescu_it_$ |rest_ar_park |right_for_pink |right_for_this |ring_$
|ring_$_$ |road_is |roast_DISH_hav |roast_DISH_with |roast_from |roast_from_th |roast_has_DISH
|roast_hit |roast_hit_N:core |roast_out_of |rock_up_already |rol_ar |rol_ar_in |roll_and_p
|roll_cam |roll_cam_out |roll_timer_$ |room_with |room_with_a |rop_in_bob |run_Nduration_behind
|saf_to_DISH |said_N:few_peopl |said_grac |said_sh |said_sh_would |said_that_$ |sam_$ |sam_$_$
|sam_as_alway |sav_it_$ |say_Nclock |say_oven_is |se_for |se_for_smok |se_what |second_oven_lik
|second_sear |second_sear_in |sh_go_ar |sh_grab |sh_grab_$ |sh_will_look |shap_N:few |shap_N:few_roll
|shav_N:few |shav_N:few_off |shedd_start |shop_floor |shop_floor_everywher |short_$ |short_$_$
|should_b_medium |should_i_ask |show_alway |show_ji |shower_$ |shower_$_$ |singl_DISH |situation_$
|situation_$_$ |slow_and_U |slow_chopper |smok_pour_out |so_cross |so_go |so_it |so_no_that
|soft_still |soft_still_crunchy |solid_i |solid_i_am |som_DISH_too |someth_i_can |someth_to
|soon_as |sort |sort_N:few |sort_N:few_loop |sound_right_for |sous_THING |speak_celsius_N:some
|stand_her |stay_$ |stay_$_$ |stay_clos |stay_hom_$ |steak_medium |steak_medium_rar |still_good_for
|stor_$ |stor_$_$ |stor_Nduration |stor_what |stor_what_should |stov_for |straight_in_th |strain_th
|strain_th_DISH |stray_on |stray_on_th |stuck_in |stuck_to |stuck_to_th |stuff_is_in |system_is_shot
|tabl_$ |tabl_$_$ |tabl_get |tabl_get_it |tabl_tonight_$ |tak_Nduration |tak_out |taken_th_fat
|teenager_hav |teenager_hav_volunteer |temperatur_i_hav |temperatur_should_th |th_DISH_boil
|th_DISH_countdown |th_DISH_giv |th_DISH_miracl |th_N:few_P |th_U_into |th_afternoon_look |th_board_now
|th_boil_water |th_bottom_shelf |th_chicken |th_cooker_work |th_cooky |th_day_$ |th_deck_out
|th_fast |th_fridg_uncover |th_full_schedul |th_hall_all |th_handl_it |th_high_heat |th_hors
|th_hors_for |th_hour |th_hour_for |th_lat |th_list_for |th_menu_as |th_messag_my |th_middl_get
|th_moment_$ |th_next_Nduration |th_number_i |th_out_THING |th_plan_for |th_plat |th_point
|th_road_$ |th_roast_DISH |th_roll_and |th_roll_off |th_roll_prov |th_ros_don |th_run_Ndegrees:some
|th_shop_Nduration |th_shower_giv |th_situation |th_sticker_$ |th_stor_$ |th_stor_Nduration
|th_stor_back |th_stov_till |th_str_$ |th_target_$ |th_timer_and |th_whol_footy |than_plan_$
|that_P_$ |that_ok |that_on_less |that_oven |that_phon_call |that_yet_$ |their_at_N:few |their_supper
|their_supper_at |them_got |ther_at_hom |ther_now |thes_otherwis |thes_otherwis_so |they_ar_golden
|think_i_am |think_my_THING |thinner |this_$ |this_$_$ |this_bit_$ |this_hous_$ |this_minut
|this_stag |this_stag_$ |this_work |thos_number |thos_number_in |through_U |through_no_pink
|through_so |through_so_you |tick_P |till_i_can |till_w_eat |tim_slowly |tim_slowly_$ |to_N:core_whil
|to_N:some_Ndegrees:few |to_THING_no |to_THING_up |to_b_N:few |to_b_her |to_b_in |to_bother
|to_bother_with |to_church_for |to_com_out |to_do_next |to_eat_Nduration |to_eat_them |to_fahrenheit_$
|to_go_alongsid |to_hav_a |to_hav_thes |to_know_when |to_li |to_metric_$ |to_n_som |to_nadia
|to_nadia_sh |to_rest_it |to_skip_butter |to_tak_th |to_teach |to_teach_m |to_tell_m |to_th_bottom
|to_th_church |to_th_stor |today_so |today_so_w |too_N:few_month |too_high_this |too_hot_to
|too_low_to |too_short_$ |too_soon_act |took_m_Nduration |top_off_my |topsid |traffic_another
|traffic_another_Nduration |trick_to |trim_way |trim_way_longer |truss |truss_a |ty_it_$ |under_so
|under_so_tak |us_DISH_out |us_Nduration_$ |us_a_favour |us_begin_again |us_finish_at |us_hav_DISH
|us_medium |us_now |us_up_all |vegetarian |vegetarian_and |very_THING_piec |vicar |w_add |w_add_DISH
|w_ar_on |w_fin_$ |w_get_on |w_left_off |w_mak_it |w_open_with |w_still_on |w_tak |w_up |w_up_to
|w_wait_$ |wait_$ |wait_$_$ |walk_th |want_Nduration |want_P |want_P_eat |want_another_few
|want_for |want_m |want_remind |want_remind_about |was_Nduration_ago |was_hang_open |was_hot_it
|was_nut |was_nut_in |wash_th |watch_th |water_now |water_on_his |way_$ |way_$_$ |way_THING_this
|way_is |way_past_well |way_th |way_through_no |way_to_go |we_whil |well_ay |went_on_Nduration
|went_out_at |what_did_you |what_was_th |whatever_that |when_th_roast |whil_i_U |whil_i_wrangl
|whol_even |will |will_b_N:core |will_b_an |will_b_her |will_hav_her |will_not_go |will_not_stay
|will_serv |will_serv_it |will_start_th |with_THING_Nduration |with_butter |with_no_DISH |without_DISH_THING
|work_you |work_you_$ |would_brown |would_brown_it |would_i_put |would_lik_it |would_non |would_non_of
|wrangl |wreck_it |wreck_it_$ |wrist_$ |wrist_$_$ |yes_and_a |yes_th |yet_Nduration |you_DISH_th
|you_ever_whisht |you_lik_$ |you_mak_th |you_put_DISH |you_se_th |you_seen |you_tim_Nduration
|you_watch_th |you_would_non |your_plan_U
-7 #before2 @103.6| @107.2| @123.0| @123.2| @124.2| @129.1| @13| @141.5| @147.0| @20.3| @23.0|
@27.6| @29.3| @3.2| @3.7| @32.12| @32.5| @36.2| @36.4| @36| @37.0| @37.4| @46.5| @54.2| @64.8|
@79.1| @8.2| @9.1| @95| @98.2| @99.6| DISH_DISH_from| DISH_DISH_how| DISH_and|all DISH_ar_peel|
DISH_bless|him DISH_butter_don| DISH_butter_for| DISH_cream| DISH_don|and DISH_for|a DISH_hav|com
DISH_hav|gon DISH_how|much DISH_is_cut| DISH_is|cover DISH_is|in DISH_is|it DISH_is|on DISH_is|strain
DISH_it_as| DISH_i|mean DISH_miracl| DISH_miracl|happen DISH_must| DISH_must|b DISH_n_to| DISH_per|THING
DISH_so_put| DISH_they|ar DISH_th| DISH_top_and| DISH_to|nadia DISH_with|this DISH|P_it DISH|ar_all
DISH|ar_up DISH|boil_and DISH|duty_$ DISH|for_P DISH|for_th DISH|has DISH|i_hav DISH|is_fin
DISH|miracl DISH|miracl_happen DISH|ok DISH|or DISH|tast_of DISH|tonight_$ N:core_DISH| N:core_already|and
N:core_and_it| N:core_and|frail N:core_as|w N:core_by|now N:core_how|long N:core_i|would N:core_kindly|
N:core_kindly|inform N:core_let|us N:core_stop_anyth| N:core_th|roast N:core_under_th| N:core_up_from|
N:core_up| N:core_up|from N:core_well_ill| N:core_we| N:core_we|isla N:core_when_it| N:core_when|you
N:core_will|ya N:core|and_then N:core|dead N:core|for N:core|i_think N:core|it_was N:core|to
N:core|was N:core|will_ya N:few_U_and| N:few_U_of| N:few_adult| N:few_and|sh N:few_and|th N:few_at|th
N:few_a| N:few_has| N:few_has|invit N:few_hav|cancell N:few_loop_of| N:few_loop| N:few_loop|of
N:few_mor_th| N:few_mor_to| N:few_mor|ar N:few_of|them N:few_on| N:few_piec|rib N:few_show|
N:few_show|up N:few_still|park N:few_stray| N:few_stray|on N:few_they|ar N:few_to|flip N:few|and_w
N:few|good N:few|instead N:few|month_pregnant N:few|person_will N:few|piec_rib N:few|sorry
N:few|tonight_$ N:few|with N:oven_and|th N:oven_for|m N:oven_lik_you| N:oven|for_th N:some_N:core|
N:some_P_th| N:some_THING| N:some_bless_his| N:some_bless| N:some_bless|his N:some_mouth_to|
N:some_person_for| N:some_so_it| N:some_so|N:some N:some_w|ar N:some|in_ic N:some|to_f Nclock_in_th|
Nclock_i|got Nclock_sam|as Nclock|sh Ndate_sit| Ndate_sit|down Ndate|sit Ndate|sit_down Ndegrees:core_it|say
Ndegrees:core_let|m Ndegrees:few_under_th| Ndegrees:few|after Ndegrees:few|after_i Ndegrees:few|high_$
Ndegrees:few|mor_than Ndegrees:few|under_th Ndegrees:some_cooler_than| Ndegrees:some_cooler|
Ndegrees:some_cooler|than Ndegrees:some_hotter_than| Ndegrees:some_under_whatever| Ndegrees:some|under_whatever
Nduration_DISH_i| Nduration_ago|i Nduration_and|th Nduration_and|then Nduration_earlier_than|
Nduration_how|much Nduration_is|that Nduration_i|would Nduration_lat_that| Nduration_let| Nduration_then_tell|
Nduration_what_is| Nduration_would|ya Nduration|behind_on Nduration|sooner_P Ngas-mark_as|th
Nweight_very|THING P_and|th P_gav|m P_get_ill| P_get|ill P_has_it| P_has|it P_h|is P_is_go|
P_is_starv| P_is_still| P_is|early P_is|her P_is|hurt P_is|join P_mess_with| P_mess| P_mess|with
P_n|to P_of_my| P_th|whol P_us|up P_want|her P_want|his P_will|b P_w|ar P_you| P|can_i P|eat_it
P|els_$ P|gon P|in P|is_bring P|is_pescatarian P|is_pregnant P|mess P|mess_with THING_DISH|instead
THING_N:few_in| THING_N:some|in THING_THING_N:some| THING_and|N:few THING_and|i THING_and|th
THING_and|ther THING_ar_U| THING_caught|light THING_crowd_N:some| THING_drop_Ndegrees:few|
THING_hang|in THING_has|com THING_her_it| THING_is|on THING_is|tough THING_leave-in| THING_leave-in|on
THING_leg_with| THING_leg| THING_of_DISH| THING_of|THING THING_out_Nduration| THING_pan_is|
THING_per|person THING_stuck_in| THING_truck_w| THING_yes_or| THING|DISH_is THING|a THING|cam_out
THING|in_th THING|is_sinc THING|it_is THING|slip_$ THING|this THING|will U_N:core_we| U_Ndegrees:few_less|
U_U|i U_and|nobody U_at|th U_call_in| U_com_out| U_doctor_told| U_fir_in| U_from_th| U_had_to|
U_h|is U_into| U_into|th U_is_N:few| U_is_a| U_is_roll| U_is|at U_it|say U_now_will| U_of_her|
U_oven_is| U_that|is U_they|reckon U_want|to U|and_nobody U|i_mean U|in U|into U|into_th U|it_on
U|no_DISH U|they U|through U|through_U U|work ^_N:few| ^_N:few|of ^_N:some_and| ^_Nclock_w|
^_Nclock| ^_Nclock|for ^_Nduration_i| ^_Nduration| ^_Nweight_rib| ^_Nweight|it ^_P|has ^_THING_say|
^_THING_slip| ^_U_w| ^_^_N:few| ^_^_Nclock| ^_^_Nduration| ^_^_aim| ^_^_br| ^_^_cupboard| ^_^_flick|
^_^_in| ^_^_landlord| ^_^_load| ^_^_marta| ^_^_non| ^_^_party| ^_^_pick| ^_^_push| ^_^_sack|
^_^_salt| ^_^_want| ^_add|another ^_aim| ^_aim|for ^_aim|to ^_another|N:few ^_at|th ^_a|Nweight
^_barely|N:core ^_battery|chang ^_been|rest ^_bram|is ^_br| ^_by|th ^_count_m| ^_cupboard|
^_cupboard|is ^_dinner|in ^_dinner|is ^_do|it ^_drop_to| ^_electric|is ^_everyth|is ^_flick|
^_flick|th ^_giv|th ^_gon_and| ^_got|a ^_got|it ^_grab_th| ^_her|lip ^_hold|on ^_how|do ^_how|pink
^_h|said ^_i_could| ^_i_go| ^_i_grab| ^_i_mak| ^_invit|N:few ^_in| ^_in|at ^_it_slid| ^_it_would|
^_it|is ^_it|was ^_i|know ^_i|said ^_i|want ^_joint|is ^_kindly|remind ^_landlord| ^_landlord|is
^_let|it ^_let|m ^_let|us ^_lift|th ^_load| ^_load|shedd ^_marta| ^_marta|tak ^_min|is ^_mov|on
^_no_that| ^_non_of| ^_non| ^_non|of ^_not_a| ^_not_go| ^_onc|it ^_on|th ^_out|of ^_oven_down|
^_oven_took| ^_oven|temperatur ^_oven|took ^_party| ^_party|of ^_pass|on ^_pick| ^_plat_ar|
^_pop_next| ^_power_went| ^_push| ^_put_DISH| ^_remind|m ^_roll|went ^_run_m| ^_sack| ^_sack|off
^_salt| ^_sam|heat ^_scrap|th ^_set_it| ^_shoot_ther| ^_shut|off ^_skip|th ^_skip|that ^_slic|my
^_som_of| ^_sorry_that| ^_still|peel ^_stop|nagg ^_strik|th ^_tak|a ^_tak|it ^_temperatur|is
^_th_read| ^_th_small| ^_ther_will| ^_ther|will ^_they|rang ^_think_roast| ^_th|butter ^_th|clock
^_th|flight ^_th|last ^_th|littl ^_th|peel ^_timer|for ^_tough|as ^_turn|down ^_us|th ^_wak_m|
^_want| ^_want|to ^_what|ar ^_what|is ^_what|temperatur ^_when|it ^_wher|ar ^_why_can| ^_why|did
^_why|not ^_w|n ^_w|want ^_w|will ^_yes|it a_DISH|as a_Nweight|forerib a_THING|and a_U_for|
a_boneless_THING| a_fir_in| a_gas_oven| a_good|reason a_grand_piec| a_littl| a_li| a_monster|
a_monster|this a_second| a_small| a_th_N:few| a_warn_when| a_whil|yet about_right| about|th_chicken
about|th_lat actual_spark_and| add_another_mouth| add_another|mouth add_th_green| adult_and|N:few
after_Nduration| after_go| after_it|is afternoon_shop| afternoon_shop|is after|go after|go_up
after|it after|this_bit again_at|th again_from_th| again_from|th again_i_had| again|and ago_and|i
ahead_of_m| aim_for|a alarm|in_th all_U| all_her_it| all_of|them all_th_THING| all_that| all_th|THING
all|behind_Nduration all|carv all|off all|off_Nduration alway|has_$ am_N:some| am_away_from|
am_away|up am_i_suppos| am_i|meant am_i|on am_lat_with| am_miss|th am_not|her am_run|a am_sorry_to|
am_stand|her am_suppos| am_suppos|to am_us|a am|Nduration am|about am|about_to am|after_a am|after_lift
am|at am|away_behind am|away_to am|away_up am|get_lat am|i_meant am|in_th am|not_do am|now
am|now_begin am|on am|out am|stand_her am|suppos am|suppos_to am|tell_you and_DISH| and_eat_at|
and_hav_i| and_how|long and_how|many and_how|much and_kilo|i and_left|th and_medium| and_mov|to
and_no|THING and_out_th| and_put|th and_rough| and_rough|up and_show|m and_stop|th and_th_temperatur|
and_that_ar| and_that_was| and_that|ar and_that|was and_they|hav and_ti_they| and_took|it and_why|do
and_you_ar| and_you|ar and|DISH_too and|U_$ and|cool and|frail and|gon_THING and|in and|it_will
and|kilo_$ and|never_com and|th_number and|th_readout and|th_temperatur and|then_noth and|ti_back
and|ti_them and|ti_they another_N:few_has| another_mouth| another_mouth|P another|Nduration_then
another|go another|go_not another|mouth another|mouth_P anymor|th anyth|grow anyth|grow_$ any|THING_$
an|alert an|alert_for an|extra_N:few ar_Nduration_behind| ar_THING| ar_U_they| ar_U|through
ar_all_sit| ar_at|th ar_com_than| ar_early|dinner ar_fix| ar_fix|to ar_hav|prim ar_her_so|
ar_in|i ar_my|choic ar_on_to| ar_out_sh| ar_say|grac ar_still|cold ar_ther_tell| ar_ther|tell
ar_up|and ar_w_nearly| ar_w_would| ar_w|get arra_no_i| ar|U_they ar|ahead ar|ahead_of ar|all_sit
ar|already ar|at_N:core ar|at_N:oven ar|boil_and ar|burnt_$ ar|com_than ar|early_dinner ar|fin_$
ar|go_in ar|hav_DISH ar|hav_prim ar|in ar|in_a ar|join ar|not ar|on_N:core ar|still_cold ar|trim_$
ar|w_talk ar|warm_now as_a|bon as_of|now as_w_hit| ask_how|long ask|how assist| as|alway_$
as|of_now as|old as|th_bishop as|well_and at_N:core_how| at_N:core_or| at_N:core_up| at_N:core|and
at_N:core|i at_N:core|let at_N:few_in| at_N:few|U at_N:oven_sharp| at_Nclock_sh| at_Nclock|sh
at_Ndegrees:core_let| at_m_onc| at_th_colour| at_th|colour at_th|dial at_th|end at_th|stov
at_which| at|N:core_then at|N:core_up at|N:few_th at|N:oven_i at|Ndegrees:oven_$ at|Ndegrees:oven_convection
at|a_board at|hom_plenty at|it_sinc at|m_when at|th_door at|th_moment availabl_in_our| away_from_th|
away_from|th away_to|get away|up_th a|DISH_as a|THING_$ a|U_com a|U_to a|bit_cold a|bit_lat
a|boot a|crisp a|favour a|favour_and a|fir a|fir_in a|good_reason a|grand a|greas a|greas_fir
a|plan_b a|rental a|rib_of a|shower a|tick_Nduration a|whil b_Nduration_behind| b_after_th|
b_at|N:few b_for_th| b_had_for| b_handy| b_her_Nduration| b_her| b_if|i b_out|of b_put|crumb
b_ready_for| b_this|slow b_worri|that back_Nduration|th back_a|tick back_to_N:few| back|on_$
back|to_N:few back|to_regular bad|road battery|chang battery|chang_in beautiful| becom_soft_still|
been_in|sinc been_us| been_us|up been|N:core been|N:core_obviously been|blad been|blad_tenderis
been|off_sinc been|taken_out been|us begin_from|zero begin|again bin| bit_of|a blast_it_at|
bless_his| bless_his|heart bless|his bless|his_heart blood_everywher| blood_everywher|th bob_is_your|
boil_and_rough| boil|water_$ bon_Nweight_very| bon_not|N:few boneless_THING| boneless_THING|THING
bon|i boss|keep boss|keep_THING bother_m_till| bother_with|th bother|m bother|m_till bottom_and|
bottom_and|gon bottom_oven|is bottom|of_th br_th|whol brin_this| brin_this|tim brought|a_loaf
brown_it_all| brown_it_off| brown_it|is brown|yet br|m_up burn_my|arm burn_my|finger burnt|myself
burnt|myself_on butter_all|over butter_don| butter_gon_ther| butter_i_can| by_N:some_bless|
by_Nclock_in| by_m|again by_th|way by|N:some_bless by|Nclock_in by|m_again b|N:few_$ b|a_monkey
b|at_Nclock b|do_with b|had_for b|had_today b|mor_Nclock b|ready_$ c_not_degre| c_not| c_not|degre
call_from| call_in| call_in|sick cam|out_Nduration can_check_th| can_do_th| can_w_los| can_you_giv|
can_you_run| can_you_shov| can_you|put can_you|talk cancel_DISH_my| cancel_that|alarm cancel|that_timer
can|carv can|carv_$ can|i_get can|miss can|miss_that can|you_fit can|you_shov can|you_talk
carv_it|yet cat_got_th| cat_is_knock| catch| cat| caught|light_on celsius_and|kilo celsius|and
chang_in_th| chang_it|to chang_w| chang_w|ar chang|it_to charg|of_th check_it| check_th|cupboard
chok_on|a chop|and church_hall| clean_out|of clock|for_Nduration clock|i coat_a| coat_a|spoon
coeliac_my| coeliac_my|P cold|by com_after|this com_back_to| com_from|th com_her| com_in_Ndegrees:some|
com_let| com_let|us com_than_i| com_than| com_than|i com_through| com|THING com|back_to convection_is|run
conventional_oven_no| cook_at| cook_at|a cook_down_and| cor_temperatur| cost| could_i_get|
could_i|swap could_you|tim could|not_get could|not_hear could|us_som could|w_hav count_m|down
cream_in_th| cream_w_hav| cri|off_N:few cross|it cross|it_off crowd_N:some| crowd_N:some|to
cupboard_is| cupboard_is|bar current|in current|in_th cut_into|it cut_myself|with cut_my|finger
cut_off_and| cut_th|trim cut|th cut|up_and cycl_off_and| dav_is|lot day| day|i degre_c_not|
degre|it degre|it_must delay_dinner|by dental|floss_count di_and_th| did_i|put did_i|tell did_not_turn|
did_not|ris did_not|salt did_you|ever did|get_THING dinner_b_at| dinner_back|to dinner_if_you|
dinner_if| dinner_if|you dinner_is_by| dinner_is_go| dinner_is|by dinner_n| dinner_n|to dinner|Nclock
dinner|is_by dinner|they divorc| do_a|DISH do_a|paus do_i_mak| do_in_plac| do_it_hav| do_i|ti
do_not|trust do_us_a| do_you|truss doctor_told|allergy don_all|through don_i|know don_with|that
don|and don|by door_back| door_back|in door_is_th| door_it_will| doorbell_they| down_and|cool
down_noth_U| down_to|eat down|th do|N:few do|a_paus do|about_th do|it_lik do|it_rest do|now_$
do|yet do|you_understand drink_first_so| drop_Ndegrees:few|after drop_th|roast dry_as|a dry_brin_this|
earlier_than|plan early|bird_N:few early|dinner early|dinner_Nduration eat_Nduration|mor eat_P|
eat_P|is eat|it_$ eat|pink eat|pink_so electric_keep| electric_keep|go electricity_sinc| electricity|has_gon
electric|is end_th|other enough_out_of| enough_with_th| eta_on_th| every_alarm| every_alarm|in
everyth_i|n everyth_slip| everyth_slip|by everyth|i everywher|th_THING every|tim_i exampl|
exampl|of exampl|of_what explain|to explain|to_m extra_N:few_stray| extra_pair_of| extra_pair|
extra_pair|of extra|pair extra|pair_of f_th_hors| faff_with|th fahrenheit|giv fahrenheit|giv_it
fair| fan_assist| fan_oven|and fancy|som fancy|som_roast fan|oven_and far_bad| far_bad|road
far|along_ar fat_splash| fat_splash|on fat_trim_down| feed_th_nurs| feed_th|nurs feed|at_Nclock
fella_behind_th| fetch_th|cak fetch|th_cak few|minut_$ find_th|other find|in finger_is| finger_is|bleed
finger_off_with| first_guest| first_guest|ar first_so|N:some flam_in_th| flight_is_delay| floor_sh|
folk_will_not| folk_will|not for_N:core| for_Nduration_what| for_a|we for_dinner|and for_th_green|
for_th_peopl| for_th|church for_th|last forget_check_th| forget_thes| forget_thes|otherwis
forget_th|green forgiv|m_without forgot_to_salt| forgot|to_mak forward|Nduration for|Nduration_now
for|Nduration_walk for|THING_$ for|a_final for|a_shower for|a_sid for|a_we for|m_th for|th_next
for|th_peopl found_th|str found|out french_lif| french_lif|is fresh_out_of| fresh_out|of fridg_sinc|
from_now_and| from_th|plan from_th|stor from|N:core_last from|her_on from|now_on from|th_top
from|work from|zero from|zero_$ gang|is gas_oven| gas| gas|has get_DISH|for get_ill| get_ill|from
get_it|to get_rid_of| get_roast| get_roast|DISH get|THING_to get|ill get|ill_from get|it_to
get|on_in get|to get|up giv_m_someth| giv_m|someth giv|m_Nduration giv|m_thos glass_and| glass_and|th
glov|is_burn gluten_for| go_careful_with| go_in_as| go_lower|than go_ok|or go_on|th go_to|pick
go_to|ti god| god|ther god|ther_is gon_to|se gon|and_overdon gon|to_N:core good_it_is| good|reason_w
good|un_don got_N:few|oven got_an|extra got_a|fan got_is|a got_my|THING got_th_green| got_th|butter
got_tim|for got_tim|to got_to_fetch| got_to_tak| got_to|th got|THING_to got|a_fan got|an_extra
got|from got|it_$ got|on got|that_on got|tim_for got|tim_to got|to_th go|in_no go|th_THING
go|to_do grand_piec| grand_piec|of granddad_is_not| grandson|is_scrap green|DISH_nobody green|DISH_top
grey|as grey|as_a guest_ar|already guest_ar|com guest_will_not| guest|ar_com guest|lat guest|lat_Nduration
h_has|diabet h_is|at h_mak_with| h_will|b had_for| had_for|P had_never| had_never|said handy_to_know|
handy| hand| hang_on_th| hang_on| hang|about hang|open_Nduration has_been_us| has_been|blad
has_com|to has_crept| has_crept|up has_gon|from has_had|a has_it|with has_left_th| has|U_DISH
has|a_nut has|arriv_$ has|been_blad has|been_taken has|com_for has|com_to has|diabet has|diabet_and
has|fallen_over has|gon_DISH has|got_N:few has|invit has|invit_themselv has|it_with has|left
hat|to hat|to_miss hav_N:core|in hav_THING_without| hav_a_leave-in| hav_a_monster| hav_a|THING
hav_a|jar hav_a|pan hav_been|N:core hav_chang_my| hav_gon|to hav_got| hav_kept|at hav_kept|insid
hav_kill| hav_kill|th hav_knock|it hav_lift|off hav_medium_sh| hav_medium|sh hav_not|N:few
hav_not|kept hav_no|THING hav_no|notion hav_nut_sh| hav_pick| hav_pick|up hav_prim| hav_prim|rib
hav_pull|it hav_set|it hav_switch_on| hav_taken_their| hav_their| hav_th|flu hav_to_hop| hav_to_prepon|
hav_to|rest hav_wip| hav_wip|th hav_with_it| hav|a_boneless hav|a_full hav|a_grand hav|a_pan
hav|already hav|been_vot hav|decid hav|gon_all hav|got_an hav|got_my hav|had_a hav|lost_Nduration
hav|lost_electricity hav|lost_power hav|not_any hav|not_peel hav|remov_th hav|slip hav|slip_sorry
hav|their hav|thes hav|thes_DISH hav|to_prepon hav|to_run hav|with hav|with_it headcount_has_gon|
heat_and_left| heat_th_whol| held|up_i help_ther_is| help_with|th helper|today_her her_U| her_and|i
her_eat| her_eat|pink her_immun| her_immun|system her_nam| her_nam|is her_on_th| her_sleev|and
her_so|far her|U her|it_is her|lip_ar his|P_so his|heart his|lip hit_th|wrong hit|th_wrong
hiv|if hiv|if_sh hold_your|hors holler_at|m holler_when_it| holler|when_w hop_in_th| hop_that_is|
hors_they_want| hors| hors|for hors|for_Nduration hot_fat_splash| hot_for_th| hot_for|th hot_then_turn|
hot|fat_this hot|sh hot|sh_is hour|for hour|for_it hous_afternoon_shop| hous_unless_dental|
how_hot|for how_long_for| how_long|till how_many|minut how_to|whip how|com_w how|far_off how|long_for
how|long_is how|long_mor how|low how|low_should how|many_day how|much_did how|much_salt hurt_h|
hurt_h|pour h|has h|is_not h|is_slip h|is_stay h|pour h|pour_th i_am_N:some| i_am_suppos| i_am|Nduration
i_am|about i_am|at i_am|now i_am|on i_am|out i_am|suppos i_ask_th| i_b_worri| i_bump| i_bump|it
i_burnt_my| i_b|do i_cook_at| i_cut_into| i_do|about i_fancy|som i_get|from i_had_never| i_had|th
i_hav_kill| i_hav_wip| i_hav|already i_hav|fallen i_hav|had i_hav|it i_hav|slip i_hav|to i_mak|it
i_miss| i_must_away| i_never| i_n|a i_pok|th i_press_th| i_press|it i_press|th i_pull_this|
i_pull| i_said_N:core| i_said| i_scald_my| i_should_hav| i_should|hav i_slic_my| i_stab| i_stab|it
i_thought|i i_took|it i_took|out i_us_instead| i_want_degre| i_would_hat| i_would|lik i_would|sooner
i_wreck|it if_someth|is if|someth_is ill_b|a ill|b_a ill|from ill|from_this in_N:few_to| in_Ndegrees:some|
in_Ndegrees:some|under in_and_it| in_as|i in_degre|c in_for|DISH in_from|th in_hiv|if in_it|whil
in_kilo_if| in_our|market in_real|degre in_so_that| in_th_shower| in_this|THING in_th|liv in_th|plac
in_too| inform| instead_of|th into|account into|it_and invit|themselv_$ in|U_and in|a_bit in|degre_$
in|her_and in|sick in|sick_so in|th_box in|th_night in|with_th is_N:few_of| is_N:few_piec|
is_N:few|piec is_N:few|rib is_Ndate_sit| is_Ndate|sit is_Ndegrees:some_cooler| is_U_at| is_after_go|
is_after|go is_all|carv is_ask|for is_at_th| is_at|th is_away| is_a|fan is_a|greas is_a|proper
is_a|rental is_beep_it| is_blood|everywher is_brought|a is_cut|up is_go|in is_go|on is_help_with|
is_her_sh| is_him|in is_hit|N:core is_hurt_h| is_in_their| is_in|and is_jump_all| is_knock|over
is_lat_so| is_lat_they| is_lot_cri| is_on_th| is_on|it is_out_of| is_out_shut| is_pack|up is_pass|out
is_pescatarian_so| is_read_Ndegrees:few| is_roll|up is_shot_it| is_sh|go is_sit|in is_starv|
is_still_raw| is_stuck|on is_taken|th is_ther_at| is_ther| is_th|go is_th|last is_too|salty
is|a_beauty is|a_gap is|a_greas is|a_liar is|a_proper is|a_stand is|at_Ndegrees:core is|at_th
is|back_thank is|bar_of is|bedlam_$ is|bleed_badly is|bring_N:few is|bring_th is|broken_so
is|burnt_all is|by_Nclock is|chok_on is|chop_an is|com_out is|complain is|dead_it is|delay_add
is|early_can is|faint is|finish_and is|for_th is|go_again is|happen is|her_U is|him is|him_in
is|hit_N:core is|hit_th is|hurt_h is|in_DISH is|in_and is|in_flam is|in_i is|in_my is|in_their
is|it_$ is|it_a is|it_look is|join_m is|jump_all is|lik_seawater is|lot_cri is|mad_and is|now_at
is|on_for is|out is|pack_up is|right_U is|sinc is|stay_hom is|strain is|stuff is|tail_$ is|tail_her
is|that_go is|that_saf is|vegetarian_i is|volunteer it_Nduration|later it_again_at| it_all|off
it_and_it| it_b_this| it_back_a| it_down_yet| it_for|m it_from_th| it_h| it_if|ther it_in_old|
it_jump|onto it_must_com| it_onto| it_onto|th it_roll_and| it_run_a| it_sat_on| it_slid| it_slid|off
it_still|moo it_was_hang| it_was|at it_will|stay it_with|salt it|b_$ it|com it|com_to it|cross
it|cross_N:core it|cycl it|cycl_off it|down_i it|is_$ it|is_at it|is_do it|is_preheat it|is_way
it|medium_rar it|or it|out_Nduration it|out_and it|out_befor it|pink_$ it|should_th it|slip
it|so_i it|to_that it|went it|with_everyth i|am_se i|am_us i|b_tak i|bast i|can_check i|did_$
i|fancy_do i|fancy_som i|had_th i|hav_DISH i|hav_bought i|hav_gon i|hav_overshot i|hav_start
i|hav_taken i|hav_turn i|know_it i|left_th i|mean_not i|mean_th i|on i|pull_this i|stab i|stab_it
i|swap_th i|thought_i i|us_instead i|want_$ i|will_hav i|would_hat i|would_quit i|wrangl i|wrangl_th
job_is|a joint_is_in| joint_is|still joint_slid_onto| joint_slid| joint|is_out join|us_$ jump_all|
jump_all|over jump_onto_th| jump|onto jump|onto_th jump|past_th keep_warm| keep|go_off keep|up
kept_pac_with| kept|insid_now kept|pac kept|pac_with kettl| kettl|on_tim kidney| kill_th|heat
kilo_if| kilo_if|you knock|over knock|over_th know_i|am know_when_it| know|when_i lactos|intolerant_$
landlord|is_oven last_of|them last|of lat_on_my| lat_so|everyth lat_that|is lat_with|THING
lat|and lat|so_w law_has|U law_has|com law_is|vegetarian leav_th|THING leave-in|say leave-in|say_N:core
leav|it_with left_on|it leg_with| leg_with|th leo_has| leo_has|a less_priya| less_priya|has
less_than|actual less|than_actual let_us|finish let_us|on let|us_$ let|us_aim li_down|for lift_it_onto|
lift|off_on light_on_th| lik_P_us| lik_a|THING lik_a|U lik_i|hav lik_to|eat lik_your|plan lik|a_THING
lik|his_rar limit| list_everyth_i| listen_who| listen_who|is littl_light_has| littl_light|has
littl_light|went littl_screen_by| littl|light_has long_can|it long_for_th| long_for| long_for|th
long_hav|th long_till_i| long_till|dinner longer_for_th| longer_than_i| longer_than|i longer|than_you
long|can_it long|mor_will long|till_dinner long|till_w look_so_i| loop_of| loop_of|str loop|
loop|of loop|of_str loo| los_th_r| lost_Nduration_to| los|th_r lot_ar_go| lot_cri| lot_cri|off
lover_com_let| lower_oven_sinc| lower|than lower|than_N:some lunch_Ndate| m_N:few_for| m_P_is|
m_a_N:few| m_about|th m_and|my m_lik_i| m_som_exampl| m_someth|to m_som|exampl m_to_turn| mac_and|
mac_and|DISH mad_it_to| mad|th mad|yet_$ mak_it_rar| mak_proper_DISH| mak_ther| mak_ther|is
mak_with|m mak|a_DISH mak|dinner_N:few mak|it_N:core mak|it_medium mak|m_a man_i_am| man_is_Nduration|
many_degre|it many_minut|left many|minut mark| mass_finish_at| measur|of measur|of_THING medium_rar_ok|
medium_rar_or| medium_sh|is medium_well_th| medium|sh_is mess_with| mess_with|th messag| mess|with
mess|with_th metric_peopl_so| metric_so_do| middl_of|th mind_th|oven miracl| miracl|happen
misread_th|label miss|th_r moment|N:core monster|of monster|of_a monster|this monster|this_year
month|old_sh mor_peopl_ar| mouth|P mouth|P_is much|i_am must_away| must_away|for must_com|
must_com|out my_P_is| my_P_lik| my_P_mess| my_P|lik my_P|mess my_P|want my_boss|keep my_finger_is|
my_finger|with my_folk_will| my_plac| my_thumb| my_thumb|pretty my_tod| my_tod|now my|P_bridi
my|P_mak my|P_mess my|THING_full my|U_U my|end my|finger_is my|grandson_is my|mind_let my|to
my|tod my|tod_now my|toddler_eat m|down_Nduration m|know_onc m|someth_to m|through_th n_another|go
n_for|N:few n_for|th n_their_supper| n_to_check| n_to_pick| n_to_teach| n_to|li n_to|rest n_to|teach
nadia_sh| nadia_sh|is near|enough_$ never|did_get never|said_don new_year| next_door_back|
next|hour_$ nip_and_that| nip|out_back no_THING_is| no_THING|can no_current| no_current|in
no_electricity_sinc| no_french_lif| no_gluten_for| no_undo|that nobody_her_eat| nobody_want|
nobody|els nobody|is_mind nora_can_not| nora_can| nora_can|not not_a|singl not_b_put| not_bother|m
not_brown_it| not_brown|yet not_cover| not_degre| not_degre|f not_eat_it| not_forgiv| not_forgiv|m
not_get_DISH| not_get|a not_go_lower| not_got_is| not_heat_th| not_keep|up not_kept|pac not_mak_ther|
not_n|th not_se|for not_talk_for| not_th_hour| not_to_b| not_tonight_Ndate| not_turn_th| not_up|to
not_what_i| noth_U| noth_U|work noth| notion_of_fahrenheit| not|b_her not|b_in not|b_near not|b_strain
not|been_mad not|brown_it not|budg_for not|carv_yet not|catch_that not|degre not|degre_f not|don_th
not|eat_it not|even_touch not|find_a not|go_lower not|got_is not|hear_you not|i not|it_$ not|kept
not|know_how not|mad_yet not|n_th not|ris not|speak_celsius not|thicken_whatever not|trust_that
not|trust_this not|up_to not|warm_$ now_and_how| now_and|how now_and|mak now_at|Ndegrees:oven
now_will| now_will|return now|my_P now|ther now|ther_is now|what no|P no|mor no|notion no|on
no|sorry no|undo_that number_in_real| number|again number|again_$ number|of_guest nurs|hom
nurs|hom_crowd nut_sh_carry| nut_sh| n|from n|from_th n|longer n|to_DISH n|to_eat n|to_pick
och| of_DISH_w| of_THING_for| of_a_th| of_a|U of_fahrenheit|giv of_m_i| of_my|THING of_m|i
of_smok|it of_them|that of_thos| off_and|never off_and|ti off_at|th off_every_alarm| off_for_th|
off_my_finger| off_th|menu off_th|worktop off|N:few off|my off|now of|DISH_w of|a_THING of|butter_i
of|now of|plan_w of|play of|salt_on of|smok_it of|str_lik of|th_even of|th_way of|that_blood
of|them_so of|ther of|us_non of|us_now ok_for_th| ok_i|hav ok_ready_when| ok_th|power ok|or_no
old_sh_will| on_N:oven|for on_less_priya| on_my_tod| on_my|arm on_my|end on_my|tod on_or| on_out_of|
on_th_back| on_th_r| on_th|hob on_th|joint onc_it|cross onc|it_cross on|Nduration_$ on|a_bit
on|for_Nduration on|is_look on|seat_let on|this_th on|top_$ on|yet_$ open_th|door open_with_b|
open_with| open_with|b or_N:few| or|near or|th_THING other_hav_th| other_th| otherwis_so_buzz|
our|lodger_had our|market out_Nduration_i| out_and_mov| out_and|i out_her| out_her|and out_it_jump|
out_of|ther out_shut| out_shut|th out_sh|com out_sh|is outsid_is_not| out|is out|whol oven_THING_hang|
oven_THING|w oven_and_no| oven_and|th oven_beep|it oven_b|at oven_has|di oven_is_go| oven_is|dead
oven_is|on oven_is|up oven_lik_your| oven_mind_your| oven_now_at| oven_no|fan oven_run|Ndegrees:some
oven_that|is oven|and_it oven|door_has oven|on over_N:core_when| over_th_pint| own_a_leave-in|
own|a_leave-in pac_with| pac_with|your pag| palm_try_to| pan_is_after| pan_is|alight pan_is|in
pass_out_on| pastry_or| pastry_or|DISH paus| peek_through_th| peek|through peek|through_th
peopl_at_th| peopl_so| peopl_so|celsius person_for| person_for|th person_will| person_will|b
pescatarian_so| pescatarian_so|h phon_to_my| pick|up_a pick|up_an piec|of_sirloin piec|rib
piec|rib_with pin_in_it| pint| pint|of pint|of_cream pip| plac_of|th plan_chang_w| plus_a|
plus_a|U pok_it| pok|th pok|th_THING pop_th_roll| pop_too_th| pop|th_roll position|of position|of_th
possibility_ar_ther| pour| pour|out_th power|went_out pregnant_by_th| prepon|by prepon|by_Nduration
present|and press_th|wrong priya_is_her| priya|has priya|has_got priya|is_her proper_DISH|lik
proper_rar_roast| pull_in_th| pull_it|at put_Nduration_on| put_in| put_it_all| put_it_in| put_it|on
put_th_small| put_th|small put|DISH put|crumb put|crumb_on put|in_$ put|it_all put|them_down
p|m_at quick_updat_i| quit_lik_to| r_or|THING rang_h_will| rar_for_th| rar_ok_for| rar_roast|
rar_roast|this rar|P_still raw|insid_$ read_Ndegrees:few| read_Ndegrees:few|mor read_it|jump
real|degre real|degre_celsius reason|for remind_about_th| remind_m_about| remind|m_to rest_ar|park
rest_it|for rest_sav| rest_sav|him rib_P| rib_P|Nweight rib_THING|roast rid_of| right_they|
right_wher| right_wher|wer righto_wher_to| righto_wher| righto_wher|to right|for_pink right|through_$
road_ar|U roast_DISH_with| roast_fell| roast_fell|on roast_is|go roast|DISH_with roast|this
roast|this_year roll_ar_go| roll_ar|in roll_cam| roll_cam|out roll_i_hav| roll|in_to roll|prov
roll|prov_Nduration roll|timer_$ roll|up_her room_with_a| rop|in_bob rough_up_in| rub_it_with|
run_to_th| rundown|for rundown|for_today run|Nduration run|behind_$ ruth_can_do| r|DISH_so
r|DISH_ther r|road saf|to_eat said_N:some| salt_and_THING| sam_is|hit sam_tim| sam|as_alway
sat_on_a| sav|him sav|him_som say_oven|is say_that|again say_they|ar say|oven scrap_that_last|
screen_by| screen_by|th screen_went_N:core| se_about| se_about|th sear_in| sear_in|this sear_it_at|
sear|first_$ second_sear_in| set_Nduration_for| set_an| set_an|alert set_clock| set_clock|for
set_it_back| set_th_number| set_th_roll| se|for se|for_smok sh_carry| sh_carry|a sh_is_brought|
sh_is_pass| sh_is|hit shall_b_at| shop|and shop|had_no shot_it| shot_it|cycl should_i_bast|
should_i_pull| should_not| should|b_medium should|b_on shower_Nduration| shower_giv| shower_giv|m
show|m_how show|up_so shut| shut|off shut|off_th sh|com sh|go_ar sh|is_brought sh|is_easy sh|is_offer
sh|is_pass sh|say_to sinc_it|was skip_th|ty sleev|and sleev|and_sh slic_my| slic_my|thumb slid_onto|
slid_onto|th slip_by_Nduration| slow|chopper_THING small_oven_set| small|oven_on so_N:some_it|
so_THING|is so_buzz| so_buzz|m so_celsius_and| so_do|it so_everyth_slip| so_far_bad| so_how|
so_i_stab| so_i|stab so_put|them so_tak|that so_th|henderson so_w|want soft_still| soft_still|crunchy
som_exampl| som_exampl|of som_of|them someth|is_wrong someth|to_do som|exampl som|exampl_of
sorry_i|am sorry_that|was sorry_to| sorry_to|say sorry|that sort_N:few_loop| sound_right|for
so|N:some_it so|N:some_mor so|celsius so|celsius_and so|everyth_slip so|plus so|plus_N:few
so|what_is spark_and|then speak_to|m splash_on_my| splash|on splash|on_my squint_at_th| stand_her_lik|
stand_rib_P| stand|her_lik start|it start|now_$ start|over_$ step|off_$ still_pal| still_raw|in
still|climb still|crunchy_it still|moo_$ still|sat still|to_com ston|cold_$ stop_anyth| stop_anyth|grow
stop|bleed_$ storm_took_th| stor|back stor|back_in stov_till_th| stov_till| stov_till|th str_lik_you|
straight_from| straight_to_THING| straight| straight|into straight|into_my stray|on stray|on_th
such_a|low supper| swap_th|cream swap|th_cream swell|up_$ switch|to_fahrenheit tabl_get_it|
tabl_get| tabl_get|it tablet_wip| tablet_wip|it tak_it|off tak_longer| tak_longer|than tak_that_into|
tak_that|into tak|a_shower tak|th_bin tak|that_into teenager_hav_volunteer| tell_N:few| tell_you|
tell|m_at tell|m_onc tell|you_about temperatur_is_up| temperatur_should_th| temperatur_wis_w|
temperatur|for_th temperatur|is_Ndegrees:core temperatur|wis_w th_DISH_cross| th_DISH_giv|
th_DISH_miracl| th_DISH_must| th_DISH_they| th_DISH_yes| th_DISH|N:oven th_DISH|as th_DISH|miracl
th_DISH|ok th_N:few_of| th_N:few|rib th_P_eat| th_P_in| th_P| th_P|has th_THING_gav| th_THING_leave-in|
th_THING_till| th_THING_went| th_U|has th_babysitter| th_best|way th_bon_in| th_bottom_and|
th_bottom|of th_bus_is| th_church_hall| th_current|has th_day| th_dinner_if| th_dinner| th_door_is|
th_electric_keep| th_electricity|has th_fridg_sinc| th_gas|has th_glass_and| th_heat_and| th_hors|
th_hors|for th_hot|fat th_hour|for th_i|hav th_last|of th_littl_N:few| th_messag| th_moment|N:core
th_new| th_number|of th_nurs| th_nurs|hom th_on| th_oven_beep| th_oven_pack| th_oven_sinc|
th_oven_up| th_peopl|at th_pint| th_pint|of th_plat_and| th_plat| th_reason|for th_rest_sav|
th_rest| th_road_ar| th_roast_fell| th_roll_cam| th_roll|prov th_rundown|for th_r|road th_shower_giv|
th_stor|back th_stov_till| th_tabl_get| th_tablet_wip| th_whol_THING| th_whol|even than_N:some_so|
than_i_thought| than_it|should than|w_said that_again|i that_ar|all that_go_to| that_into|
that_into|account that_is|at that_is|him that| that|again_i that|ar_all that|cam that|into
that|into_account that|is_U that|is_at that|number_$ that|off_$ that|roast their_supper| their_supper|at
them_so_i| them|that them|that_is then_drop| then_drop|it then_tell| then_tell|m then|it_stuck
ther_P| ther_a_good| ther_anyth_i| ther_at|hom ther_a|good ther_a|plan ther_is|pink ther_tell|
ther_tell|m ther_th_THING| ther_was|nut ther|is_go ther|tell ther|tell_m ther|yet_Nduration
thes|otherwis thes|otherwis_so they_hav|arriv they_want|it they_want|to they_will_not| they_will|
they|ar_early they|ar_out they|ar_stuck they|brought they|hav_com they|hav_rung they|sat_down
they|will_b thick_do_i| thick|part_N:core think|in_kilo this_is|right this_old|girl this_on_th|
this_read_it| this_tim_ther| this_year_N:few| this| this|at_again this|bit_$ this|is_too this|moment_$
this|on_$ this|slow this|slow_$ this|tim_ther thought_i|am thought|i_am through_th|glass thumb|pretty
thumb|pretty_good th|DISH_$ th|DISH_miracl th|DISH_ther th|DISH_under th|DISH_w th|Nduration_th
th|P_settl th|THING_N:few th|THING_bag th|THING_com th|THING_do th|THING_how th|THING_leave-in
th|THING_th th|U_of th|b_drink th|bag th|best_way th|bin_out th|birthday th|board_at th|bon_Nweight
th|box th|butter_gon th|cast th|clock_for th|colour_on th|cor_$ th|cousin th|cream_for th|dinner_by
th|dinner_if th|doctor_said th|dog_back th|dog_out th|door_and th|driveway th|fast th|fat_for
th|floor_and th|glass_and th|go_with th|guest_cam th|handl_it th|hour th|hous_afternoon th|ic_water
th|in_law th|joint_slid th|lin_down th|list_for th|messag_my th|middl_$ th|next_hour th|next_step
th|night th|night_befor th|number_is th|nurs th|nurs_hom th|other_$ th|other_again th|other_hav
th|oven_and th|oven_mind th|oven_will th|oven_with th|pac_slow th|phon_to th|plac th|plan_as
th|platter_$ th|rest_do th|rest_sav th|roast_get th|sea th|second th|shop_Nduration th|shop_back
th|shower_giv th|shower_i th|sticker th|stor_back th|stov_Nclock th|stov_till th|tabl_at th|tabl_by
th|tabl_it th|tabl_wait th|target_$ th|temperatur_has th|th_$ th|thick_part th|timer_and th|tip_of
th|tong_$ th|trifl th|ty_is th|water_$ th|way th|whol_footy th|work_$ th|worktop_$ th|wrong_THING
ti_it_is| ti_they| ti_they|said tick_that|off tim_and_i| tim_for|a tim_is|lactos timer_Nduration_for|
timer_they| timer|N:few timer|Nduration_for timer|i tim|what tip_of_my| to_N:core_kindly| to_N:core_under|
to_N:few_they| to_N:few|they to_N:oven|and to_Ngas-mark_as| to_P| to_a|crisp to_b|her to_b|lat
to_b|mor to_b|on to_b|out to_coat_a| to_do|yet to_eat_P| to_giv_m| to_hav|thes to_hop| to_hop|in
to_li_down| to_li| to_mak|a to_nadia_sh| to_prepon| to_prepon|by to_say_oven| to_se_about|
to_tak_th| to_teach| to_teach|m to_tell|m to_tell|you to_th|church today_her_nam| tod| tod|now
tod|now_U told_them| told|allergy tonight_Ndate| tonight_Ndate|night too_N:few_month| too_th|shop
took_th|lin took|ag_to took|her took|her_out took|it_down took|m_forever too|much_i too|salty_$
tough_as|old to|N:core_kindly to|U_now to|b_N:core to|b_N:few to|b_don to|b_th to|bath to|bath_th
to|buy_THING to|carv_$ to|dinner_$ to|do_now to|eat_$ to|eat_P to|flip_th to|from to|from_her
to|get_her to|hav_thes to|it_$ to|nadia to|nadia_sh to|regular to|regular_bak to|se_about to|teach
to|teach_m to|tell_you to|whip to|whip_butter to|you_$ trim_down| trim_down|to trim_to_do|
trim_way_longer| truck_w| truck_w|sell try_to|DISH turn_out_th| turn_that|down turn|it_up turn|on_th
twic_as|long twin_n_feed| twin_n|feed twin|n_feed under_so_tak| under_th|truth under_whatever|you
undo_that_i| unless_dental| unless_dental|floss up_from|N:core up_her_sleev| up_if| up_to|room
updat_i| updat_i|hav up|again_$ up|already_$ up|from_N:core up|in up|to_it us_DISH|THING us_THING_DISH|
us_a|favour us_get_roast| us_instead_of| us_instead| us_instead|of us_mak|dinner us|a_leave-in
us|do us|finish_at us|know_as us|up_all very|THING_piec volunteer_for_th| volunteer|for_th
w_ar_fix| w_ar_say| w_ar|bang w_br_th| w_br|dinner w_can|miss w_do_about| w_eat|it w_got|on
w_hav_N:core| w_hav_lift| w_hav_pick| w_hav|decid w_hav|had w_hav|with w_jump|past w_los| w_los|th
w_mak|it w_nearly| w_nearly|ther w_n|Nduration w_open_with| w_should|do w_still_good| w_still|good
w_still|on w_will|not w_would|lik w_would|you wak_m_when| wak|m_at wak|m_in wak|m_up want_a_whil|
want_degre| want_degre|c want_dinner_at| want_to| want|another_few want|to_giv warn_m|when
warn_when| warn_when|th warn|m_when was_hang|open was_it| was_my_P| wash|up_as was|nut was|nut_in
water_will_not| way_longer| way_longer|than way_too| way|through_$ well_ill_b| well_ill| well_ill|b
well_th|rest well|P well|behind_her well|don_i went_N:core| went_N:core|as went_off| went_out|whol
went_straight_into| went|in_Nduration went|into went|off_so went|on_at wet_floor_sh| wet|floor_sh
we|isla we|isla_is we|minut we|whil whack|it_down whack|it_up what_all_i| what_can_w| what_com_after|
what_if|w what_is|happen what_i|told what_measur| what_measur|of what_must| what_must|i what_should|b
what_should|it what_temperatur_for| what_w|open whatever_you_ask| whatever|you_ask what|ar_my
what|is_com what|number_am when_i|was when_th|roast when_w_get| when_will|it when_w|hit when|Nduration_ar
when|folk_say when|is_THING when|it_com when|it_get when|w_get when|you_check wher_i|should
wher_to|from wher|to_from which|on whil_it|is whil_i|U whil_i|was whil_i|wrangl whil|i_wrangl
whil|yet_it who_is|complain whol_gang| whol|even whol|th_back who|is_a who|is_complain who|is_hav
why_so|low why|did why|in why|in_th why|is_th will_P_get| will_b_N:core| will_b|an will_forget_thes|
will_hav_medium| will_hav_roast| will_not_forgiv| will_not|bother will_not|thicken will_sear_at|
will_start_th| will|b_N:core will|b_her will|b_no will|get_to will|hav_a will|hav_her will|i_us
will|not_stay will|not_whip will|return will|return_after will|sear_first will|stay will|y_roar
wip_th| wip|it wip|it_$ wip|th_board wis_w| wis_w|ar with_DISH|i with_a|drink with_b|ready
with_pastry_or| with_th|messag with|THING_Nduration with|a with|b_ready with|m_together with|th_sear
with|th_tablet with|that_$ with|your_list worri|that would_b_handy| would_hat|to would_lik|an
would_lik|to would_non_of| would|b_handy would|b_nic would|lik would|lik_to would|sooner would|you_say
wreck|it wreck|it_$ w|ar_$ w|ar_a w|ar_at w|ar_laugh w|ar_not w|ar_roll w|ar_shy w|ar_still
w|becom_N:some w|get_on w|get_to w|hav_electricity w|hav_it w|hav_with w|mak_up w|miss_out
w|n_to w|open_with w|ran w|ran_out w|run_behind w|sell_to w|want_th w|would_lik y_roar_at|
year_N:few| year_N:few|bon yes_and_a| yes_go|on yes|N:few yes|yes yet|Nduration_i you_ar|ahead
you_ask|for you_hav|had you_look|at you_shov| you_shov|it you_would|not your_P|and your|hors
your|man your|man_is your|plan_U you| you|ar_$ you|ar_go you|hav_been you|said_$ you|say_$
you|talk_in you|tim you|truss you|truss_a you|want_m |@100.2 |@104 |@109.0 |@112.2 |@114.1
|@115.4 |@12 |@120 |@128.0 |@129 |@131.2 |@141 |@142.1 |@144.6 |@2 |@22.3 |@23.2 |@28.7 |@3.1
|@32.12 |@33.2 |@34.6 |@4.4 |@4.9 |@47.0 |@5 |@5.2 |@52.1 |@54.5 |@57.6 |@58.0 |@59 |@67.4
|@72 |@77 |@86.2 |@88 |@88.1 |@91.5 |@92 |@96 |DISH_did |DISH_for_th |DISH_go_$ |DISH_go_on
|DISH_has_gon |DISH_is_cut |DISH_miracl |DISH_miracl_happen |DISH_th_hous |DISH_that_went |DISH_under_way
|DISH_w_hav |DISH_what |DISH_yet_$ |N:core_kindly |N:core_kindly_inform |N:core_last_i |N:core_now
|N:core_obviously |N:core_obviously_not |N:core_th_roast |N:core_up |N:core_up_from |N:core_whil_i
|N:core_whil_rest |N:core_you |N:few_less |N:few_of_thos |N:few_peopl_$ |N:few_person |N:few_so_w
|N:few_to_giv |N:few_to_go |N:oven_for_m |N:oven_lik_you |N:oven_so_aim |N:oven_th |N:some_bless
|N:some_bless_his |N:some_cold_$ |N:some_hot_turn |N:some_mor_befor |Nclock_instead_of |Nclock_sharp_$
|Ndegrees:few_under_th |Nduration_U_$ |Nduration_ar_up |Nduration_befor_dinner |Nduration_befor_w
|Nduration_then_tell |Nduration_walk |Nduration_walk_th |Ngas-mark_and |Nweight_bon |Nweight_bon_in
|Nweight_still |Nweight_very |P_ar_eat |P_ar_in |P_bridi |P_down |P_help |P_is_join |P_is_stay
|P_mess |P_mess_with |P_settl |P_settl_N:some |P_sh_do |P_still |P_still_moo |P_to |P_up_Nduration
|P_up_i |THING_DISH_instead |THING_THING_caught |THING_a_joint |THING_and_N:few |THING_by_th
|THING_caught |THING_com_out |THING_counter_$ |THING_do_i |THING_in |THING_is_on |THING_leave-in
|THING_leave-in_on |THING_now_for |THING_on_th |THING_pan_$ |THING_piec_w |THING_slip |THING_so_it
|THING_so_th |THING_stuck |THING_th_DISH |THING_that_U |THING_would_b |U_$ |U_$_$ |U_THING_THING
|U_stuck |U_th |U_they_reckon |U_tim |U_to_finish |U_w_will |U_wher_th |a_THING_giv |a_THING_up
|a_THING_yes |a_U_com |a_beauty |a_bit |a_blackout |a_board |a_board_school |a_boneless_THING
|a_drink_$ |a_final |a_full_hous |a_gap |a_gap_right |a_good_N:some |a_good_un |a_grand_piec
|a_greas |a_greas_fir |a_hot_oven |a_joint_do |a_liar |a_monkey |a_monkey_P |a_paus |a_paus_$
|a_problem |a_quarter |a_rental_$ |a_shout_in |a_stand_rib |a_we_whil |after_a_proper |after_i_wiggl
|after_lift |after_lift_th |ag_to_heat |ago_it_said |ahead_of |ahead_of_m |alarm_in |alert_for
|alert_for_Ndegrees:core |all_carv_$ |all_her_$ |all_in_THING |all_sit |all_sit_down |along_ar
|along_ar_w |already_carv |already_hav |alternativ_$ |alternativ_$_$ |am_N:few_$ |am_N:few_lat
|am_Nduration_behind |am_a_good |am_afraid_$ |am_at_it |am_away_from |am_back_$ |am_behind_$
|am_not_her |am_out_for |am_pop_too |am_se |am_still_N:few |am_tell_you |am_us |am_us_a |and_h_is
|and_in |and_it_was |and_overdon |and_overdon_it |and_tell |and_th_th |another_Nduration_i
|another_Nduration_then |another_few |another_few_minut |any_THING_$ |anyway_$ |anyway_$_$
|apparently |ar_N:few_person |ar_N:few_short |ar_Nduration_too |ar_all_her |ar_at_N:oven |ar_don_$
|ar_hav_prim |ar_in_i |ar_laugh |ar_laugh_for |ar_miss_th |ar_my_option |ar_not_ready |ar_out_of
|ar_roll |ar_roll_DISH |ar_shy |ar_shy_a |ar_still_pal |arm_$ |arm_$_$ |arriv_$ |arriv_$_$
|as_alway |as_i_look |as_you_reckon |at_N:core_now |at_Nclock_ahead |at_at_Nclock |away_behind
|away_behind_th |away_to_get |away_to_th |away_up_th |b_DISH_$ |b_N:few |b_N:few_of |b_Nduration_ago
|b_Nduration_behind |b_a_monkey |b_drink |b_drink_in |b_gon |b_had_for |b_handy |b_in_her |b_medium_cook
|b_near |b_near_th |b_nic |b_no_DISH |b_on_my |b_strain |b_strain_th |back_on |bar_of |bar_of_THING
|bast_it |becom_N:some_i |bedlam_$ |bedlam_$_$ |been_Nduration |been_at_it |been_blad |been_blad_tenderis
|been_in_sinc |been_mad |been_on_for |been_taken |been_taken_out |been_vot |been_vot_down |behind_Nduration_at
|behind_her_lad |behind_on_everyth |behind_on_th |berti |best_way |best_way_to |bin_out |bird_N:few_guest
|bit_cold |bit_cold_Ndegrees:few |bit_lat_in |bit_longer_$ |bleed_badly |board_at |board_at_Nclock
|boat_$ |boat_$_$ |boil_and_rough |boil_for_th |bon_N:core |bought_a |bring_N:few |bring_his_P
|bring_his_new |broken_so |brown_it_is |bubbl |budg_for |budg_for_ag |burnt_all |burnt_all_THING
|butter_gon |butter_gon_ther |butter_i_can |buy_THING |by_N:some_bless |by_Nclock_in |by_m_again
|call_them_i |can_check |can_check_th |can_it |can_manag_it |can_not_talk |cark_it_$ |carv_yet
|center |centr_it |centr_it_is |chang_in_th |check_DISH_$ |chicken |chop_an |chop_an_oil |chopper_THING
|chopper_THING_whatever |christma_$ |christma_$_$ |cold_on_m |colour |com_along_$ |com_down_to
|com_for_help |com_than |com_than_i |com_to |cook_it |cor_$ |cor_$_$ |could_do |could_not_hav
|cross_N:core |crumb_on |crumb_on_th |crunchy_it |crunchy_it_is |cycl_off |cycl_off_and |dead_it
|degre_c_not |degre_celsius |degre_celsius_i |degre_f |delay_add |delay_add_Nduration |di_on_m
|diabet |diabet_and |diabet_and_is |dial_and_swear |did_get |dinner_back_to |dishwater_$ |dishwater_$_$
|do_next_$ |do_not_they |do_roast |do_roast_DISH |do_this_for |do_with_th |do_without |do_without_th
|dog_back |dog_back_in |dog_out |don |don_for_P |don_th_DISH |don_th_butter |door_has |door_has_been
|down_to_N:oven |drank_it_$ |dress |driveway |early_can_w |early_dinner |early_dinner_Nduration
|eat_P_is |els_could_i |even_touch |even_touch_th |everyth_slip |everyth_slip_by |exampl |exampl_of
|exampl_of_what |extra_N:few |fac_$ |fac_$_$ |faff_with_french |fallen_over |fallen_over_in
|fancy_do |fancy_som |fancy_som_roast |far_along_ar |far_off |fat_end_of |fat_for |fat_for_th
|fat_this_minut |favour |favour_and |favour_and_shout |final_N:core_$ |find_a |find_a_THING
|finger_is |finger_is_bleed |finger_with |finger_with_th |finish_and_it |fir_alarm |first_N:few_hav
|flip_th_DISH |floor_sh |floor_th |floss_count |fold_chair |folk_say |for_N:some_and |for_Nclock
|for_Nduration_how |for_Nduration_th |for_my |for_smok_in |for_th_church |frail |from_N:core_last
|from_her_then |from_th_stor |get |get_N:core_$ |get_lat_by |get_th_messag |giv_it_m |glass_and
|glass_and_th |glov_is_burn |go_careful_with |go_lower_than |go_not_crispy |go_off_and |go_on
|go_on_with |go_to_look |go_up_in |gon_DISH |gon_DISH_and |gon_all_dizzy |gon_off_$ |gon_up_to
|good_reason_w |got_N:core_forgot |got_an |got_an_extra |got_is_a |got_no_DISH |got_tim |got_tim_for
|grandson_is |grandson_is_scrap |greas_fir_$ |grocer |guest_cam_U |h_has_had |had_for |had_for_P
|had_today |handl_it |handl_it_was |happen_when |happen_when_$ |has_been_us |has_com_to |has_gon_ston
|hav_DISH_DISH |hav_U_th |hav_a_grand |hav_a_tast |hav_begun_peel |hav_dairy_$ |hav_electricity
|hav_electricity_again |hav_fallen_behind |hav_got_N:core |hav_got_my |hav_no_notion |hav_nut_sh
|hav_put_DISH |hav_put_on |hav_slic_my |hav_taken_th |hav_th_THING |hav_th_trim |hav_thes |hav_thes_DISH
|hav_turn_it |hav_with |hav_with_it |hear_you_over |henderson_ar_her |him_som |his_heart |his_rar_$
|hit_th_deck |hit_th_wrong |hob_$ |hob_$_$ |hom_crowd |hom_crowd_today |hom_plenty |hous_afternoon
|hous_afternoon_shop |how_much_DISH |hurt_h |hurt_h_pour |i_DISH_th |i_am_hav |i_am_overwhelm
|i_b_do |i_do_now |i_had_th |i_hav_DISH |i_know_when |i_misread |i_pull_this |i_put |i_swap_THING
|i_tak |i_think_ther |i_will_tell |i_wrangl |i_wrangl_th |ignit_$ |ignit_$_$ |ill_from |ill_from_this
|in_N:few_to |in_Nduration_DISH |in_a_half |in_bob |in_bob_for |in_for_Nduration |in_her_for
|in_hiv_if |in_i_shut |in_kilo_if |in_no_they |in_th_build |in_th_middl |in_th_small |in_ther_long
|insid_now_itself |into_account |into_my_palm |intolerant_$ |intolerant_$_$ |is_N:few_to |is_U_in
|is_a_N:few |is_a_bag |is_a_fan |is_a_good |is_a_proper |is_a_rental |is_all_her |is_blood_everywher
|is_brought_a |is_by |is_by_Nclock |is_caught_alight |is_chok_on |is_com_up |is_complain |is_cut_th
|is_do_my |is_easy |is_enough_DISH |is_grey_and |is_her_sh |is_him_in |is_hit_N:core |is_in_their
|is_it_at |is_lat_they |is_lik_th |is_look_so |is_loud_$ |is_m_don |is_my_next |is_no_bon |is_no_second
|is_not_mor |is_not_th |is_on_chemo |is_oven_run |is_pass_out |is_pescatarian |is_pescatarian_so
|is_pregnant_is |is_read_Ndegrees:few |is_sat_on |is_scrap |is_scrap_th |is_set_at |is_show_Ndegrees:core
|is_show_ji |is_sinc_Nduration |is_smok_pour |is_smok_someth |is_th_go |is_th_scor |is_wrong_$
|isla_is |isla_is_THING |it_Nduration_sooner |it_U |it_all_off |it_at_N:some |it_b_ready |it_back_Nduration
|it_back_a |it_cross |it_cross_N:core |it_has_becom |it_is_bleed |it_is_loud |it_medium_instead
|it_must_com |it_on_U |it_pink_$ |it_still |it_tak |it_to_that |it_with_everyth |it_with_you
|join_m |join_m_at |join_us_$ |joint_do |joint_slid_onto |jump_all |jump_all_over |kept_insid
|kettl_on_tim |kindly_cancel |know_about_th |know_as |know_as_soon |know_it_is |know_onc |know_th_american
|lactos_intolerant_so |last_Nduration |lat_so_w |later_than_w |law_has_U |left_on_it |left_th_build
|left_th_door |let_it_slip |let_th |let_us_do |lid |light_hav_gon |light_on_th |lik_a_bonfir
|lik_it_rar |lik_it_still |lik_seawater |lik_that_$ |lin_down |lin_down_noth |list_for_us |littl_light_has
|lodger_had |lodger_had_a |long_can_it |long_can_leftover |long_do_it |long_for |long_for_th
|long_hav_th |long_is_left |long_till_dinner |long_till_w |longer_than_i |loosely |lost |lost_electricity
|lot_ar_go |lot_cri |lot_cri_off |low_oven_$ |low_should |low_should_th |lunch |m_a_THING |m_a_r
|m_again_$ |m_at_Nduration |m_forever |m_forever_U |m_i_hav |m_know_at |m_onc_$ |m_thos |m_thos_number
|m_to_bast |m_together |m_up_to |m_up_when |m_what_to |m_when_w |m_with_th |m_without |m_without_DISH
|mad |mad_i |mak_it_loud |mak_up |mak_up_th |man_is_Nduration |manag |manag_it_$ |many_day
|market_$ |market_$_$ |mean_N:core_$ |mean_not |mean_th |mess_with |mess_with_th |messag_my
|messag_my_phon |middl_and_i |mil_off |mind_let |mind_let_us |miracl_happen |miss |miss_that_on
|mix_and |month_pregnant |mor_Nclock |mor_person_will |mor_will_it |mouth_P |mouth_P_is |much_did
|much_salt_do |must |my_palm_try |myself_think_$ |n_mor_tim |n_th_timer |nadia_sh |nadia_sh_is
|never_com |never_com_back |next_door_back |next_hour |night_befor |no_DISH_th |non_of_them
|not_availabl_in |not_b_in |not_bother |not_budg_for |not_do_gluten |not_do_th |not_don_that
|not_eat_anyth |not_eat_nut |not_get_DISH |not_get_a |not_get_up |not_got_THING |not_got_is
|not_happen_$ |not_heat_at |not_light_$ |not_peel_th |not_shut_properly |not_stay |not_stay_clos
|not_touch |not_w_skip |not_whip |not_whip_so |now_U_had |now_begin |now_begin_with |now_my_P
|number_am |number_am_i |number_i |nurs_hom |nurs_hom_crowd |nut |nut_in_that |nut_sh_carry
|of_THING_now |of_cream_so |of_guest |of_guest_to |of_her_$ |of_now |of_str_lik |of_th_roast
|of_them_that |of_them_through |of_them_walk |of_what_to |off_N:few_fewer |off_and |off_sinc
|off_th |old_sh |old_sh_will |on_N:core_has |on_N:oven_for |on_N:oven_stop |on_N:some_had |on_my_arm
|on_tim_m |open_Nduration_$ |open_with |open_with_b |or_not_$ |other_again |other_again_$ |other_hav
|other_hav_th |other_oven_glov |other_room_for |otherwis_so |otherwis_so_buzz |our |out_and_sh
|out_and_th |out_at_$ |out_of_th |oven_b_$ |oven_i_hav |oven_mind_your |oven_off_$ |oven_off_and
|oven_set_to |oven_with_them |over_th_pint |pac_slow |pac_slow_day |pac_with |pac_with_your
|pan |pan_handl_without |party |pass_out_on |past_N:core_without |peel |peel_th |peel_th_DISH
|phon_to_my |piec_rib |piec_rib_with |plac_of_butter |plan_as |plan_as_well |plan_b_$ |plan_w
|platter_$ |platter_$_$ |plus |plus_U |position_of |position_of_th |pour |pour_th_boil |power_went_off
|pretty_good_it |properly |prov_Nduration_ago |put_it_on |r_win |ran_out_of |reach_N:core_$
|ready_for_that |real |reckon_Nduration_is |remov_th_roast |rest_do |rest_do_not |rest_sav
|rest_sav_him |return_after |return_after_Nduration |right_U |right_U_th |roast_DISH_in |roast_DISH_w
|roast_Nweight_i |roast_get |roast_get_to |roast_has_gon |roll_and |run_out |run_out_$ |said_don
|said_don_$ |salt_on_th |say_to_m |se_about |se_about_th |seat_let |seat_let_us |sell_to |sell_to_th
|sh_is_easy |sh_say_to |shop_Nduration |shop_back |shop_back_by |shop_back_in |shot_$ |shot_$_$
|should_b_on |show_N:core_right |shower_giv |shower_giv_m |shower_i |shower_i_am |sick_so |sick_so_N:few
|sinc_N:few |sit_at |sit_down_$ |slic_it_$ |slip_sorry |slow_today_Nduration |small_oven_on
|so_h |so_well |som_tim |someth_is_wrong |someth_to_do |sooner_P |sooner_P_ar |speak |stab_it
|stab_it_N:core |stand_her_lik |steep |step_off_$ |sticker_$ |sticker_$_$ |still_DISH |still_moo
|stir |stor_back |stor_back_in |stov_Nclock |stov_for_a |stov_till |stov_till_th |str_lik |str_lik_you
|stuff_with |such_a_low |sur |swap_th |tabl_by |tabl_by_N:few |tabl_it |tabl_it_is |tabl_wait
|tail_Nduration_behind |taken_out_and |tast_of |tast_of_bonfir |tell_m_onc |telly_$ |telly_$_$
|temperatur_has_reach |th_DISH_DISH |th_DISH_idea |th_DISH_under |th_P_is |th_P_settl |th_THING_bag
|th_THING_it |th_THING_slip |th_bishop |th_bishop_said |th_bon_N:core |th_box |th_box_is |th_chicken_b
|th_cream_for |th_door_behind |th_door_is |th_even_w |th_french_$ |th_hot_handl |th_joint |th_last_Nduration
|th_lat_guest |th_list_nobody |th_menu_and |th_middl |th_moment_N:core |th_peopl |th_peopl_at
|th_point_of |th_readout |th_readout_go |th_rest_ar |th_salt |th_sear |th_start_$ |th_tabl_w
|th_tablet_wip |th_tong_$ |th_way |th_whol_THING |than_N:some |than_N:some_so |than_actual
|than_actual_$ |than_you_allow |that_blood |that_go_to |that_into |that_into_account |that_is_join
|that_last_on |that_on_th |thaw |their_seat_$ |them_down_$ |them_is |them_so |them_so_i |themselv_$
|themselv_$_$ |then_$ |then_$_$ |then_noth |ther_someth_i |thes_DISH_don |they_ar_starv |they_hav_miss
|thick_part |thick_part_N:core |thicken_whatever |thicken_whatever_i |this |this_work_$ |this_year_N:few
|thought_i_am |through_th_glass |through_th_whol |ti_back_on |ti_it_$ |ti_it_is |ti_them |ti_them_back
|ti_they |ti_they_said |tick_Nduration |till_dinner_$ |tim_for_a |tim_is_your |timer_for_th
|tip_of |tip_of_my |to_N:few_they |to_a_quarter |to_a_warm |to_b_lat |to_b_mor |to_b_on |to_b_th
|to_fetch_th |to_from |to_from_her |to_giv_it |to_it_h |to_miss_N:core |to_my_THING |to_n_DISH
|to_prepon |to_prepon_by |to_scor |to_sp_$ |to_start_th |tod_now |tod_now_U |today_her |today_her_nam
|toddler_eat |toddler_eat_it |tong_$ |tong_$_$ |too_much_i |touch_N:core_$ |tough_as_old |trifl_$
|trifl_$_$ |truss_a_roast |trust_that |trust_this |trust_this_read |twic_as_long |ty_is |ty_is_sort
|un_don |under_th_truth |under_whatever_you |up_a_Nweight |up_all |up_all_th |up_an |up_an_extra
|up_from |up_her_sleev |up_so_far |up_th_road |up_to_it |up_to_my |us_a_cast |us_aim |us_aim_for
|us_get_roast |us_ghe_$ |us_instead |us_mak_th |us_non |us_som |us_som_help |us_start |vegetarian_i
|volunteer |w_ar_bang |w_br_th |w_get_to |w_go_for |w_on_schedul |w_push_everyth |walk_th_dog
|want_it_$ |want_it_at |want_th_THING |warm_now |warm_th_plat |warn |was_N:core_at |way_is_th
|when_i_will |whil_they |whip_butter |whip_butter_with |whol_footy |whol_footy_team |whol_plan_$
|whol_th_forward |why_th |will_b_gon |will_b_in |will_eat_$ |will_tak_th |wis_w |wis_w_ar |with_th_tablet
|wonder |work_is |worktop_$ |worktop_$_$ |would_hat_to |would_lik_a |would_quit |would_quit_lik
|would_th_wrong |wrangl_th |wrangl_th_THING |wrong_THING_$ |y_roar |y_roar_at |yok |you_ask_for
|you_check_tell |you_fit |you_fit_DISH |you_say_halfway |you_shov |you_shov_it |you_talk_in
|your_list |your_list_at
7 @101.0| @103.3| @119.0| @119.2| @128.1| @130.8| @132.2| @143| @38.0| @42.4| @53.2| @77.3|
@83.0| @9.0| @93.2| DISH_DISH|not DISH_U_U| DISH_all_over| DISH_it_alon| DISH|at_Nclock DISH|do_not
DISH|my_THING DISH|that N:core_it_is| N:core_sorry| N:core|i_hav N:core|my N:core|th_THING
N:few_P|so N:few_bon_Nweight| N:few_percent| N:few_rib_Nweight| N:few_rib| N:few|it Ndate|Nclock
Nduration_in| Nduration|how_do Nduration|what_is P_Nweight| P|so_that THING_N:core| THING_Nclock|
THING_fell_out| THING_is_THING| THING_no_THING| THING|N:some THING|THING_ar THING|could U_has_com|
U|N:few U|i_will ^_N:core_still| ^_N:few_peopl| ^_U_N:core| ^_^_and| ^_^_eta| ^_^_hi| ^_and|
^_eta| ^_hi| ^_no_do| ^_no_fan| ^_no|that ^_right_so| ^_roast|N:core ^_well_don| about_it|
all_N:few| alon| am_way_behind| and_mov| and_serv|it anywher| ar_early| ar_starv| at_th_door|
at_th_end| back_Nduration| back| back|it beep_at_m| beep| befor_w_sit| behind_her| behind|
bin_th_DISH| blister| boil_at| bring_her| build| caught_light| check| chook| climb_to_N:core|
com| com|how com|th cook|so cooler| cut_them| dinner_by_Nduration| di| do_not_understand| don|that
door_open| drop_out| enough_DISH| faff| fan_set| fell_out| finish| floor| for_Ndate| for_Nduration|what
for_cream| for_it| for_th_roast| for_us_medium| fridg_cold| from_th_oven| go_ahead| go_back_in|
gon_THING| gon_to_N:core| good_and_hot| goos_fat| grey_right_through| halfway_through| has_DISH|
hav_not_i| hav_put|it hav_seen| hav|it_is hello| her_tablet| hob| hot_by_N:some| hot_enough|
i_cut| i_will|forget in_th_door| in_th_roast| inch| in|i_hav in|that_is is_Ndegrees:few_under|
is_at_Nclock| is_blister| is_bring_her| is_don| is_driv| is_on| is_pregnant|is is_sak| is_th_lot|
is|N:core_i is|his it_alon| it_at_Nclock| it_hit_N:core| it_is_bleed| it_last| it_out| it_say|
it_should| it|away kettl_is_on| last_year| laugh| lick_th_spoon| littl_U| longer|is lover|
lunch_at_N:few| m_at_N:core| m_now| mak_it_medium| mayb| moment| mov_up| mov|on mush| no_DISH_butter|
no_cream| no_heat| not_gon_in| not_it| not_risen| not_thicken| not_ti| not_us| not|you no|th
no|they of_THING| of_sirloin_Nweight| on_second| on_th_board| open| out|that over_th_shop|
pink_U_not| plan|and point| pool| pregnant|is question| rar| rar|th remov| right_through| rob|
row| say_so| serv_N:few| short| sirloin_Nweight| slowly| so_sh_is| speech| teeth| tenderis|
text| th_DISH|did th_DISH|how th_DISH|th th_DISH|when th_DISH|you th_THING_Nduration| th_THING_go|
th_bon|N:core th_butter|and th_b| th_cooker| th_first|th th_guest_cam| th_instant-read| th_oven_off|
th_plan| th_road| th_ty| th_with_th| than_N:few| that|wrong them_out| ther|Nduration through|and
th|and timer|they to_N:few|and to_say| top_THING| touch_bon| trim| typo| ty| under_THING| up_th_wall|
us_medium| w_lik_it| was_N:core|and water_boil_at| went_in| whol_hous| year| yes_yes| you_want|
youngest| |@1.6 |@18.7 |@24.6 |@25.3 |@33.5 |@38.8 |@63.0 |@75.3 |@8.4 |@99.4 |DISH |DISH_DISH
|DISH_ar_in |DISH_cream_$ |DISH_don |DISH_go_in |DISH_in_at |DISH_n_another |DISH_n_longer
|DISH_roll |DISH_went_on |N:core_a |N:core_year |N:few_at_th |N:few_can |N:oven_fan |N:oven_now_$
|Nclock_for |Ndate_Nclock |Ndegrees:core_th |Nduration_$ |Nduration_$_$ |Nduration_ago_it |Nduration_at
|Nduration_i_will |Nduration_on_th |Nduration_timer_$ |Nweight_N:few_$ |Nweight_N:few_bon |Nweight_it
|P_a |P_n_to |P_never |P_on_th |P_scream |P_that |P_that_is |THING_and_all |U_should_th |U_ther_is
|U_was |a_P |a_moment_$ |aim_for |all_on |and_DISH_DISH |and_Nweight |and_ar |and_i |and_tak
|and_this |and_wait |ar_th |at_N:few_w |at_th_moment |away_for_Nduration |b_quiet_for |back_in_Nduration
|been_out |beep_at_m |biscuit |bon_in_$ |boneless |br_it |brown_it |burnt_my |burnt_my_THING
|check |chuck |coat_on_th |complet_$ |complet_$_$ |cook_in |cooker_is |cor_is |count_down |dial_say
|dial_say_N:oven |dinner_at_N:few |do_N:core |do_not_keep |do_they |drop |eat_Nduration_sooner
|electricity_has_gon |end_th |eta |eta_on |fahrenheit_$ |fahrenheit_$_$ |fan_is |fat_is |feel
|forgot_to_buy |found |get_your |giv_it_a |giv_m |giv_th_DISH |go_back_$ |god |god_help |gon_Nduration
|guest_hav |gwen |h_has |h_mak |help |holler_at_m |hot_THING_$ |how_THING_a |how_do_i |i_am_behind
|i_am_tell |i_do_not |i_hav_taken |i_left |i_took_it |if_i_hav |if_it_go |imagin_$ |imagin_$_$
|insid_is |is_it_N:few |is_it_saf |is_it_you |is_rar |is_th |is_this |it_is_com |it_run_a |it_should_b
|it_will_b |kettl |kill_th_heat |knock |last_tim |lay_N:few_mor |leav_th |leg_of |let_us |lik_$
|lik_$_$ |lowest |mak_DISH_cream |margarin |metric_$ |metric_$_$ |middl |middl_is |middl_shelf
|my_THING_is |nail |nearly_ther_$ |no_you |not_at |not_sur |now_is |now_it |nudg |off_th_pac
|ok_th |on_th_roll |or_do |out_i_hav |oven_is_go |oven_is_on |pardon |paus_everyth |pay_m |pet_$
|pet_$_$ |pictur |poor_th |power_di |push |quick_THING |rar_is |rest_on_th |rob |sam_is |say_th
|sear_it |send |serv |set_it_to |sh_has_been |shut |sit_down_Nclock |skip_it |skip_it_$ |so
|start_THING_$ |status |status_$ |status_$_$ |ston_cold_$ |strik_that |stuck_behind |stuck_behind_a
|supper_at |supper_at_Nclock |tak_N:few |tell |temperatur_is |th_cak |th_display |th_ferry
|th_flight |th_long |th_new |th_orang |th_stick |thank_you_$ |that_can |that_is_not |that_is_when
|they_will_not |this_on_is |timer_off |up_at_N:few |us_N:few |w_can_eat |w_do_not |well |what_els_$
|what_is_that |what_would |what_would_you |when |when_can |when_is_THING |wher_is |whol |whol_street
|whol_street_$ |why_can |why_can_not |will_th |wrong_number |yes |you_ar_break |you_do_th |you_will
8 @1.1| @107.0| @11.2| @114.3| @143.2| @148.2| @21| @26.0| @32.0| @33.2| @90.1| @99.7| DISH_away|
DISH_for_us| DISH_go| DISH_is_lumpy| DISH|out_it DISH|w_ar N:core_now|th N:core|and_i N:core|with
N:few_sorry| N:few|out N:few|roast N:oven_for_dinner| N:oven|th N:some|N:some Nclock|w_ar Nduration_DISH|
Nduration_away| Nduration_behind|and Nduration_earlier| Nduration_out| Nduration|N:core Nduration|i_hav
Nduration|not P_is_THING| P|sit THING_N:core|and THING_Nweight| THING_THING|th THING_and_all|
THING_at_Nclock| THING_left_in| THING_show_N:core| THING|first THING|my_P U_chok| U_is_on|
^_DISH_as| ^_DISH_peel| ^_DISH|on ^_DISH|out ^_N:few_bon| ^_N:few|and ^_^_get| ^_dinner_Nclock|
^_get| ^_in_at| ^_m|th ^_no|not ^_say_again| a_loaf| add_Nduration| aff| afraid| after_th_break|
ahead| all_her| all_th_DISH| allow| am_behind| american| and_dust| any_THING| ar_at_N:core|
ar_eat| ar_her| at_N:oven|DISH at_it| at_least| at_m| at_th_N:few| at|U b_N:some_person| bit|and
blender| blown| boil_for_DISH| bon_Nweight| bon_in| bonfir| by_th_bon| card| christma_dinner|
com_U| com_in| com|and cow_is_tail| cream| current_has_gon| cut|and dark| dinner_is| don_and_dust|
don| down_to_N:oven| drain| early| empty| fan_is|on for_N:few| for_Nduration|how for_that|
forerib|Nweight forgot_to_say| for|is fresh_DISH| gon_cold| got_N:few_THING| greet| has_reach_N:core|
her_for| her| hook| hot|N:oven i_am_behind| i_reckon| i_should_b| i_want_N:core| in_it| in_th_THING|
invit_themselv| is_THING|THING is_bad| is_bar| is_chewy| is_coeliac| is_empty| is_help| is_lumpy|
is_on_Ngas-mark| is_on|and is_reduc| is_stand| is_still_on| is_tail| is|N:core_and is|on_it
it_com| it_in| it_is_THING| it_is_chewy| it_is_out| it_is_ti| it_is|so it_is|what it_medium|
it_off| it_rest| it_well_don| it|no it|w jam| ji| joint_is_out| leave-in_on| letter| lik_it|
look_don| lost_Nduration| lou| lower_oven| lunch_Ndate_Nclock| m_N:some| m_Nduration| murder|
my_THING|and na| no_fan| no_pink| not_b_right| not_don| not_happen| not_out_yet| not_salt_it|
not|P not|no no|i_meant no|you of_U| of_th_fridg| off_now| off_schedul| on_a_THING| on_th_pan|
on_that| on|THING on|how on|w open_Nduration| open|and out_yet| out| out|they_ar power_di|
pretty_good| prim_rib| put_DISH_on| put_it_on| put|it_out r_win_DISH| rar|in rib|with schedul|
scream| seat| sea| set_Nduration| sh_is|N:core simmer| sit_down_Nclock| sit_down| so_i_hav|
someth_is_burn| sorry| stay| stuck_in_it| tabl_now| tent_it| th_DISH_on| th_Nduration_N:few|
th_THING|DISH th_THING|th th_break| th_cak| th_center| th_cow| th_driv| th_fridg| th_lower_oven|
th_market| th_new_P| th_roast_out| th_roll|and that_is|N:some themselv| them|got they_ar_out|
thick_end| this_on| this_second| thos| through_th_door| th|it_is to_N:core| to_N:some| today|
top_oven| touch_it| under_it| under|it undo_that| wait|i want_to_eat| want|rar weird| well|
when_i_cut| will_not_mak| win_DISH| year_old| you|and |@108 |@3.4 |@38.6 |@69.1 |DISH_cream
|DISH_in_DISH |DISH_is_lumpy |DISH_is_too |DISH_m_alon |DISH_or_DISH |DISH_them |DISH_went_in
|N:core_U_$ |N:core_in |N:few_P_and |N:few_adult_N:few |N:few_bon_$ |N:few_peopl |N:few_r |Nduration_ago_i
|Nduration_down_on |Nduration_in |Nduration_top |P_els_is |P_is_chok |THING_THING_Nweight |THING_U
|THING_ar |THING_for_N:few |THING_out |U_and_th |U_m |U_or |U_th_DISH |U_w |a_N:few |a_Nweight_N:few
|a_green |a_green_DISH |absolutely |all_th_THING |and_did |and_mak |and_pop |and_what_temperatur
|and_you |another_N:few |as_my |at_Nclock_i |b_quiet_$ |beautiful |behind_by_N:few |blu |br_dinner
|br_dinner_forward |br_it_forward |br_m |bump |can |com_in |could_i |count_down_Nduration |display_is
|do_not_let |do_not_talk |dog_got |drop_th_DISH |drop_that |enough_out |enough_out_of |everyth
|fan_off |fat_finger |finish_with_th |forgot_th |gap |go_back_N:few |gon_way |gon_way_past
|good |got_THING |got_a |guest_will |hold_at |honest |hot_fat |how_far |how_far_along |how_is
|how_much_salt |how_would_i |i_can_not |i_hav_cut |i_put_th |i_said_it |i_saw |i_want_N:core
|i_want_to |is_a_stand |is_not_it |it_is_don |it_is_not |it_is_read |it_n |it_was_Nduration
|it_was_th |kill |knock_it |knock_th |let |let_us_eat |m_and_my |mak_dinner_Nduration |meet
|min_is |mo |mov_on |my_P_h |never_got_th |nic |no_P |nobody |not |not_quit |not_th |not_th_DISH
|now_it_is |option_N:few |option_N:few_$ |oven_is_smok |paus |pick |pop_next |pop_next_door
|power_cut |pull_it_at |push_dinner_back |put_it |read_N:core |read_N:core_$ |rest_under_THING
|restor |roast_DISH |roast_went |roast_went_in |roll_ar |roll_in |run_a_bit |scrap_th |scrap_th_DISH
|sear_is |serv_it |sh |shop_list |shop_list_$ |should_i_turn |show_N:core_now |slic_my |slic_my_thumb
|smok_and |so_N:few |so_put |sorry |start_over |steam |stop_count |switch_everyth |switch_everyth_to
|tak_it_out |test_it |th_THING_THING |th_THING_hav |th_THING_was |th_electric |th_gas |th_man
|th_roast |thank_you |that_is_him |that_would |ther_is_a |ther_is_no |ther_is_smok |thermostat
|thermostat_is |this_is_for |timer_N:few |tom_is_do |top_of_th |wash |watch_it |went_to |what_all
|what_can_i |what_for |what_was_that |will_not_b |would_a |would_ya_$ |you_look |you_should
9 @1.3| @105.6| @118.3| @132.1| @21.0| @29.2| @34.3| @34.6| @38.7| @40.0| @62.0| @74.2| @99.4|
DISH_ar_burn| DISH_ar_out| DISH_don| DISH_drain| DISH_instead| DISH_no_DISH| DISH|and_i DISH|i_am
DISH|is_it N:core_even| N:core_to| N:core|near N:few_peopl| N:few|i N:oven_P| N:oven|DISH N:some_lat|
N:some|is Nclock_U_th| Nclock|th Nduration|ar Nduration|is_that Nweight_N:few| Nweight_N:some|
P_is_chok| P|N:few P|h_is THING_P| THING|do_it THING|not U|THING_is ^_DISH_Nduration| ^_DISH_finish|
^_Ndate_lunch| ^_Ndate|Nclock ^_P|i ^_THING_out| ^_^_doorbell| ^_^_pardon| ^_^_rar| ^_doorbell|
^_fan_oven| ^_no_pink| ^_ok_ok| ^_pardon| ^_pull_it| ^_rar| ^_school_run| ^_sear_it| ^_sorry_what|
a_THING_over| account| again| ajar| am_back| as_w_speak| at_N:core|can at_N:core|how at_N:few_instead|
at_N:oven_now| b_to_god| back|it_is behind|and bridg| brown_it_first| burn|and by_Nduration|
by_th_THING| by_th_way| can_you_believ| cancel| center| centr| check_th_THING| correct| count_down_Nduration|
cow| display_is_blank| do_th_DISH| drop_th_timer| dust| find_a_THING| for_N:some| for_Ndegrees:core|
for_her| for_smok| forward_Nduration| french_it| from_her_on| from_m| from_th_top| from_this|
girl| grand| h_say| hang_open| hav_brought| hav_lost_Nduration| her|is her|what hot|i i_am_back|
i_swear| in_a_U| in_th_center| in|P in|not is_U| is_blank| is_finish| is_go_in| is_not_finish|
is_off| is_on_DISH| is_shot| is_still_DISH| it_at_N:core| it|N:core_$ it|Nweight jar| lagg_by_Nduration|
lat_Nduration| later_than_plan| lik_that| littl_screen| loosely| m_Nduration|and mak_a_DISH|
middl_shelf| my_end| m|DISH need| no_tim| not_for| not_they| now|is no|not nut| of_salt| off_Nduration|
off|THING off|and_it off|it_is ok_ok| ok_ok|i on_N:some| on_my_end| on_say_N:core| on_th_bon|
on_th_b| on_top| on| on|it out|what oven_on| over_her| past_it| phon_call| public| quiet_now|
ready| rest_under_THING| resum| return| run_at_N:oven| s_out| said| say_N:core| set|off shower|Nduration
sinc_N:few| skip_this| so_no_THING| start_over| station| step_N:few| step_away| temperatur_is_N:core|
th_DISH_don| th_DISH|U th_DISH|do th_P|and th_bridg| th_button| th_corner| th_littl_screen|
th_lot| th_plumber| th_right| th_second_on| th_station| th_way_through| them_down| this_year|
to_b_lat| to_god| to_that| too_high| truss| up_early| us_it| w_ar_lat| w_din| w_hav_brought|
w_speak| want_degre_c| was_ther| wash_your_THING| watch_th_DISH| weak| what_to_do| whol_street|
will_start| yesterday| you_believ| you_said| |@0.0 |@141.2 |@33 |@49.5 |@49.7 |@53.6 |@94.3
|DISH_DISH_i |DISH_ar_still |DISH_is_THING |N:core_as |N:core_not |N:few_THING_th |N:few_adult_and
|N:few_bon_Nweight |N:few_oven |Ndate_at |Nduration_top_$ |Ngas-mark |Ngas-mark_$ |Ngas-mark_$_$
|Ngas-mark_now |Nweight_not_N:few |P_at |P_is_on |THING_N:core_$ |THING_on_a |U_U_$ |U_U_U
|U_on_DISH |airport |all_my_THING |and_burnt |and_drop |and_hav |and_hold |and_i_would |and_serv
|and_w_hav |and_what_is |and_will |ar_th_DISH |at_th_N:few |back_at |back_in_N:core |begin
|behind_by |bob |boss_$ |boss_$_$ |bottom_shelf |br |bung |by_$ |by_$_$ |can_w_eat |cancel_that_alarm
|did_i_ruin |did_i_say |ditch_th |don_with |every_singl |except |for_N:few_peopl |forgot_to_say
|go_ahead |granddad |grey_right |grey_right_through |guest_ar |h_say |hav_N:few_oven |hav_w
|how_long |how_many |how_to_get |i |i_am_don |i_check |i_forgot_to |i_got_th |i_would |ignor
|imagin |in_it_go |is_sh |it_alway |it_is_out |lad_ar |leg_of_THING |light_ar |lik_my |mass
|mind_th |misread_th |much_blood |no_DISH_$ |no_THING_THING |no_fan |no_i_meant |no_no |ok
|on_second |on_w |onc_mor |oven_at |pop_up |pull |pull_th |put_DISH_on |remind_m_of |roast_is_out
|se_you |set_a |set_it |should_i |should_it_b |shout_when_it |so_N:few_$ |sorry_what_i |stand_rib
|start_th |switch |switch_off |tak_your |tell_her |th_blu |th_current |th_in_law |th_leave-in
|th_littl |then_it |ther_is_blood |they_ar |typo |undo |w_ar_all |what |what_is_next |when_will
|wher_ar_w |wher_do_th |who |zip_it_$
10 @103.5| @12.2| @122.2| @147.1| @44.3| @6.0| N:core_would_you| N:core|N:core N:few|N:few
N:few|th N:some_past| Ndate| Ndegrees:few_under| Nduration_ago_now| Nduration_down| Nduration_for_m|
Nduration|it Nduration|th P|DISH THING_is_off| THING_was| THING|my THING|you U_not| U_with|
U|N:core_$ U|N:some U|it_was ^_DISH_on| ^_THING|N:core ^_greas_fir| ^_step_away| ^_stop_it|
a_DISH|and a_THING_no| add_DISH| ago_now| all_don| all_in| already|i and_on| ar_burn| as_well|and
back_N:some| back_on| back_to_N:oven| back|and bag| bank| behind_th_THING| blood| bon|th by_N:some|
celsius|it coach| com_on| convection| dinner_back_N:some| don_you| easter| eat_Nclock| expect|
fan_on| fan_oven| fat_end| for_a_bit| get|down gluten| go_Nduration| gorgeous| got_it_out|
grac| hav_a_jar| hav_any_THING| hav_sat| hav_tim| hi| hot_now| in_Nclock| in_Nduration|and
in|i in|it_is is_at_N:some| is_brown| is_delay_Nduration| is_good| is_offer| is_open| is_pregnant|
is_rest| it_after| it_go| it_now| it_out|th keep_THING| list|and m_Ndegrees:core| m_in_N:some|
mak_th_DISH| market| menu|and metric| month| my_P_U| nearly_ther| not_do_this| not_ready| not_touch_it|
now|and_how no|N:few of_blood| on_her| on_then| on|Nduration out|N:few oven_off| overdon| party_of_N:few|
plenty| plus_N:few| power_went_out| programm| quick| ravi| read_N:core| rock_up| run_N:some_hot|
run_Ndegrees:some_hot| run_Nduration_lat| said|i second_on| servic| sh_is_in| show_N:core|
sinc_Nclock| so_h_is| th_DISH_Nduration| th_DISH_so| th_THING_pan| th_barbecu| th_chop| th_cold|
th_fat_end| th_flu| th_garag| th_leave-in_on| th_left| th_menu|and th_plan|and th_roast| th_thick_end|
th_timer_off| th_train| th_whol_hous| that_on_out| that_on|th ther|no till_N:core| to_work|
too_much| too_salty| to|i upstair_for_Nduration| w_go| will_do| with_m| without_m| work| you_tell_m|
yourself| you|it_is |@108.3 |@26.1 |DISH_m |DISH_on |N:few_THING_no |N:few_of |N:few_oven_and
|N:oven_it |N:oven_w_will |N:some_N:some |Nclock_on |Nclock_that |Nduration_behind |Nduration_behind_$
|Nduration_behind_schedul |Nweight_forerib |Nweight_not |P_at_th |THING_is_at |THING_of |THING_should_b
|U_can |after_all_that |all_N:few |all_don |and_U_is |and_it_has |and_my_P |and_som |and_then_$
|ar_they |at_Nclock_it |beep_m |bon_in |butter_is |by_by |chang_to |cheer |com_THING |correction
|could_not |current_has |current_has_gon |do_that |door_is |down_that |draw |eta_on_th |explain_th
|finish_with |from_now_till |giv_that_on |has_not_mov |hot_THING |how_com_it |i_drop_th |i_hav_had
|i_never |i_will_get |is_th_THING |is_th_rest |is_that_go |it_cam |it_is_ti |it_say |jess_is
|ji_$ |ji_$_$ |left_oven |let_m |let_us_know |look_it |mor_or |mov_dinner |n_to_pick |nearly_ther
|next_$ |next_$_$ |nip |no_th |not_clean |not_go_to |not_now |not_that |not_to |not_warm |not_yet_$
|now_i |on_Nclock |on_mor |on_mor_tim |oven_has_gon |plat_ar_warm |pop_out |power_is_out |preheat_to
|priya |repeat_that |repeat_that_$ |run_m |run_m_through |run_that_by |sam |sam_as |scrap_it
|scratch_that |shout |skip_th |stand_THING |stand_THING_is |start_over_$ |still_no |strik |tabl_for
|talk_m_through |th_THING_cam |th_THING_is |th_THING_say |th_gas_has |th_rest_of |thank |that_is_all
|that_is_it |that_mak |that_was_not |then_it_is |ther_is_N:few |they |they_ar_go |thickest
|throw_in |tim_remain |tim_remain_$ |timer_Nduration |took_m |turn_out |w_must |w_will_b |wak_m_at
|well_don_all |wer_Nduration |what_ar_you |what_should_i |will_that |would_that |yes_i_am |you_ar_out
|you_could
11 @111.7| @140.7| @144.0| @23.4| @49.5| @57.2| DISH_DISH_don| DISH_bubbl| DISH_scrub| DISH_too|
DISH|DISH_and N:core|can_i N:core|do N:core|tak N:few_instead| N:few|is N:few|that_is N:some_DISH|
Nclock|THING Ndate|Nclock_$ Nduration_ago| Nduration_and_N:few| Nduration_is_delay| Nduration_lat|what
Nduration| Nduration|and_th Nduration|and_what Nduration|ther_is Nweight| P|a THING_is_in|
THING_say_N:oven| THING|DISH_ar THING|all THING|what U_is_coeliac| ^_DISH_boil| ^_^_celsius|
^_^_fahrenheit| ^_^_paus| ^_celsius| ^_fahrenheit| ^_paus| ^_read_N:core| about_th_roll| all|is
altogether| am_Nduration_down| at_Nclock| at_Nclock|DISH at_Ndegrees:core| b_lat| badly| bast_it|
bin_it| butter_is_mad| by|by can_not_talk| celsius_i_mean| chewy| chok| did_not_ris| dishwater|
duty| enough| fahrenheit|and fewer| for_now| for_th_P| further| golden| guest_com| h_go| hav_cancell|
herself| him| hot|th in_Nduration| in_at_Nclock| in_her_for| in_th_fridg| invit_N:few| is_Nweight_N:few|
is_need| it|N:core_in it|P it|that kaput| lat|what leav_it_uncover| let_it_rest| m_Nduration_behind|
matter| no_DISH|DISH no_THING_left| no_not_yet| no_wait| no_win| not_any| not_cook| not_mind|
not_ris| now_at_N:oven| of_us| on_th_THING| on_th_left| on|and otherwis| out_at_N:few| out_for_Nduration|
out_of_butter| oven_at_Nclock| oven_is_off| part| plat_ar_warm| rar|U rar|not reach_N:core|
rescu| rough_up| sh_say| shredd| sid_down| sing| skip_that| sooner| so|and stay_in| still_DISH|
summer| tabl_wait| tail_her| th_DISH_bubbl| th_DISH_go| th_DISH_roll| th_N:few_P| th_U_on|
th_door|and th_finger| th_tabl_wait| th_timer| th_whol_tim| that_is_P| that_went_in| that|w
their_P| them_ar_her| them| th|it to_N:oven| tonight| too_lat| too|th trim_it| turn_it_over|
way_behind| well_don_you| will_b_N:some| with_it| ya| yes| you_lik| you|i |@114.4 |@3.7 |@33.0
|DISH_DISH_is |DISH_DISH_still |DISH_ar_on |DISH_is_on |DISH_out_th |N:core_rather |N:few_bon_roast
|N:few_her |N:few_mor_person |N:some_year |Nclock_at |Ndate_at_N:few |Nduration_a |Nweight_prim
|Nweight_prim_rib |Nweight_th |P_has |P_has_got |P_is |P_is_go |P_is_peel |P_is_sat |THING_has_left
|THING_number |THING_should |U_right |all_U |all_of_it |am_i_on |and_DISH |and_i_hav |and_let
|and_my_THING |and_th_THING |and_turn |and_w |and_what_ar |any_U |at_how_many |back_up |been_rest
|begun_DISH |bin_th_timer |bon_ar |br_m_up |by_th_way |can_you_imagin |cancel_that |correct
|could_w_eat |did_you_do |dinner_Nduration_later |dinner_is_Nclock |do_i_tak |down_to_N:few
|gon_Nduration_$ |gon_for_Nduration |h_do |h_is_hav |half_of |happy |her_P |how_long_till |i_hav
|i_never_did |ingredient |is_it_a |is_water |it_has_gon |it_is_N:few |it_is_sear |it_was |it_went
|keep_it |los_th |lower_it |lunch_Ndate |mak_it |mak_it_Nduration |medium_for |my_P_is |my_boss
|my_oven |no_cream |no_i |no_str |not_quit_$ |other_half |out_sh |oven_down_to |oven_took |oven_took_ag
|power_is |put_DISH |put_Nduration |repeat_$ |repeat_$_$ |reset |roughly |run_a |said_th |scratch_that_$
|so_th_THING |start_a |start_a_Nduration |start_afresh |start_afresh_$ |start_again |stop_talk_$
|stop_th |switch_off_th |tabl_for_Nclock |th_P_sleep |th_THING_went |th_doctor |th_electricity
|th_wean |that_can_not |that_was_my |they_hav_all |timer_for_Nduration |tom_is |turn |w_ar
|w_ar_go |w_hav |what_ar |what_should |what_tim_ar |when_is_it |wher |whoever |why_ar_w |why_is_it
|without_bon |would_not_b |yes_so |zip_it
12 @48.8| @63.1| DISH_ar_trim| DISH_timer|and DISH|do DISH|th_THING DISH|you N:core_Nduration_ago|
N:core|and_is N:core|dinner N:core|is_ther N:core|that N:few_hav_arriv| N:few_of_us| N:few|and_what
N:few|sh N:some_hot| Nclock|and_what Ndegrees:core|is Nduration_after| Nduration_behind| Nduration_sooner|
Nduration|THING_is Nduration|no Nweight|roll P_is_pregnant| THING_at_all| THING|and_what THING|is_it
U_N:some| ^_Nduration_timer| ^_no|N:few a_pen| add_a_DISH| alight| and_climb| anyway| ar_not_ready|
ar_trim| ar_warm| arriv| as_U| burn_it| by_accident| carry_a_pen| chok|and down|P drop_it|
eat_at_Nclock| fat_finger| fin| for_a_whil| for_you| ha| hen| high| him|h hom| in_th_plan|
is_N:core_now| is_expect| is_pack_in| is_ti| is_vegetarian|and it_first| it_is_N:core| it_is_hot|
itself| it|and_th latest| lid_on| longer| mash| medium_instead| medium_well|and my_thumb_open|
not_N:few| on_DISH| on_out| on_th_U| on_th_way| over_th_DISH| over_ther| pet| power_cut| rar|lik
ready_yet| read|th revers_sear| roast_Nweight|i roast_is_in| roll_ar_in| run|Nduration_$ sak|
second_on|th so_non| so_well_don| temperatur|N:core th_THING_bag| th_cousin| th_hous| th_night|
th_pan_handl| th_roast_in| th_ros| thickest_part| till_N:few| timer_go| to_help| to_m| toast|
tonight_at_N:few| too_long| uncover| under_th_THING| up|it up|it_is vanish| very_much| w_said|
will_not_heat| yes|correct |@83.4 |DISH_away |DISH_hav_not |DISH_is_mad |DISH_went |N:core_in_th
|N:core_near |Nclock_on_th |THING_is_full |THING_m |after_th_break |aim_for_N:core |alway_has_$
|and_alert |and_forget_th |and_if_i |and_so |and_w_will |and_what_do |at_which |back_in |boneless_Nweight
|bottom |brb |can_i_swap |can_not_b |can_not_se |chuck_som |cor_temperatur |did_you_hear |dinner_Nclock
|dinner_Nclock_$ |do_not_U |do_not_you |drop_th |eejit |first_tim |flick_th |flick_th_oven
|giv |giv_m_a |giv_m_som |gon_for |grab_th_hot |half_th |hav_not_put |hold |hold_dinner |hold_dinner_for
|how_is_th |how_much_of |i_am_a |i_keep |i_want |is_it_tim |is_medium |it_is_already |it_n_to
|it_r |it_r_N:core |it_would_b |jess_is_on |let_it_rest |list |mak_m |medium_rar |never_mind
|no_do |no_do_not |not_don_yet |now_N:core_$ |now_what |onc_mor_$ |oven_down |oven_is_dead
|party_of |party_of_N:few |pip_down |pop_to |pop_to_th |preheat_to_N:oven |remind_m_what |repeat
|revers |roast_is_in |run_that |sack |set_an |sh_is_out |shout_when |skip_th_DISH |skip_th_truss
|smok_alarm |so_is |tell_m_th |th_chip |th_weight |th_work_$ |timer_off_$ |total |undo_that_last
|wer_eat |wer_eat_at |what_can_sh |what_can_you |what_hav_you |what_internal |what_internal_temperatur
|what_number_do |what_tim_do |wher_do_i |why
13 @24.4| DISH_Nduration| DISH_from_m| DISH_is_in| DISH_is_mad| DISH_is_on| DISH_is_out| DISH_n_longer|
DISH_roll| DISH|oven N:core| N:core|THING N:core|and_how N:core|and_what N:core|ar N:core|ar_w
N:core|what N:few_person| N:oven_now| N:some|THING Nclock|can Nduration_ago|DISH Nduration_back|
Nduration_lat| Nduration|and_w Nduration|th_DISH Nduration|ther Ngas-mark| Nweight_N:few_bon|
Nweight_of_U| P_U_chok| P|N:core P|no THING_is_finish| THING_roast_Nweight| U_right| U|you
^_THING_DISH| ^_^_medium| ^_^_righto| ^_all_don| ^_medium| ^_righto| a_jar| a_whil| ago|DISH
all_over| am_Nduration_off| and_golden| ar_away| ar_com| ar_park| as_anyth| at_Nclock|how at_Ndegrees:core|and
at_tabl| at_th_stov| away_for_Nduration| b_eat| banjax| believ_it| bit_of_THING| blanket| blank|
brok| btw| cor_has| do_fahrenheit_celsius| everywher| fahrenheit_celsius| few_minut| footy_team|
for_medium_well| for_us| go_on| gon_Nduration| gon_Nduration|and gon_everywher| has_gon_everywher|
hear_you| help_m| her_THING| hit_th_oven| i_look| in_at_N:oven| in_ther| in_this_hous| in_yet|and
includ_DISH| is_back| is_in|DISH is_shut| is_stay| it_medium_instead| it|and it|and_DISH it|how
lik_it_rar| liv_room| medium_well| n_longer| near_enough| nic_and_golden| not_U| not_heat|
now|oven of_Nduration| of_Nduration|and of_it|and of_th_oven| on_now| on_th_til| on_th_timer|
outsid_befor_Nduration| oven|do own_a_THING| platter| power_is_back| pregnant| pull_it| rest_U|
roast_in| roll_in| show_Ndegrees:core| split| start_at_N:few| step_back| street_is_dark| tabl_by_Nclock|
taken_their_seat| temperatur_Ndegrees:core| th_THING_THING| th_truth| th_way| their_seat| ther_go_on|
they_ar_her| they_said| this_THING| this_hous| to_U| to_nut| too_early| truth| walk_in| whol_THING_THING|
whol_footy_team| will_you| would_you| wrong_THING| wrong|N:core yet|what_is you_very_much|
|DISH_has_not |DISH_out |N:few_if |N:few_rib |Nclock_for_th |Ndate_lunch |Nduration_for_th
|Nduration_start |P_has_been |P_lik_his |P_vot |U_N:core |a_N:few_bon |a_Nweight_leg |add_DISH
|all_sort_$ |and_can |and_cancel |and_giv_m |and_show_m |and_ther_will |and_trim_th |and_what_was
|and_why_do |anyth_els |ar_w_still |b_quiet |begin_from |boneless_Nweight_$ |cancel_th |com_on
|could |cut_myself |dinner_at |everyth_is_happen |headcount |her_P_is |how |how_long_can |how_long_do
|how_many_THING |i_am_after |i_am_go |i_am_off |i_could_us |i_swear |it_is_in |it_is_too |it_went_up
|joint_is |knock_th_oven |let_us_skip |my_THING_THING |my_U |nip_to |nip_to_th |no_U_$ |oven_N:oven
|peopl_ar |pink_THING |press |put |reset_everyth |reset_everyth_$ |righto |sh_is_read |should_it
|skip |so_what_is |still_not |strik_th_DISH |switch_to |th_N:few_of |th_P |th_P_eat |th_chip_pan
|th_teenager |th_th_with |that_is_her |ther_will |ther_will_b |thickest_part |too_many |train_is_delay
|w_can |w_hav_run |w_must_eat |w_prefer |w_want_it |what_all_possibility |what_hav |what_is_th
|what_temperatur_am |what_tim_is |who_has |will_hold |yes_yes |your_P_is
14 @110.0| @149| @67.3| DISH_as_well| DISH_for_DISH| DISH_in| DISH_in|and N:core|and_can N:core|th
N:oven| N:oven|what_is N:some_N:some| N:some_for_dinner| Nclock_sharp| Nduration_later|and
Nduration|how Nduration|let Nduration|sh_is Nweight_bon_in| Nweight_boneless| P|th THING_bag|
THING_in_it| THING_pan|and THING_say_N:core| THING|let THING|let_us ^_boneless_Nweight| ^_cor_N:core|
^_hello_P| ^_not_don| ^_notify_N:core| a_row| accident| ago| all_carv| all_sid| am_Nduration_behind|
and_N:few_P| anymor| at_N:oven|i at_Nclock_sharp| at_Nclock|N:few at_Nclock|what at_th_start|
back_to_Ngas-mark| boneless_Nweight|and breath| dark|and dinner_forward_Nduration| do_not_mind|
do_w_do| down_Nclock| down_at_Nclock| down_for_Nduration| eat|i everyth_by_N:some| for_Nclock|
from_upstair| gon_for_Nduration| gon_in|and gon_to_THING| got_a_THING| guest_hav_arriv| half_past|
hav_overshot_it| hello_P| her|no his_heart| in_N:some|and in_a_row| in_th_end| in_th_hous|
in_to_warm| instead|and in|how in|what is_hot| is_m_don| is_not_any| is_preheat| is_right|
is_season| is_show_N:core| is_tick| it_medium_rar| it|DISH it|my_P la| leave-in_THING| leo_from_upstair|
m_don| measur_N:core| menu| my_THING_in| not_do_that| notify_N:core| on|do out_Nduration_ago|
out|how oven_is_fre| oven_pack_up| oven|how overshot_it| run_Nduration_behind| set_N:few| shot|
sid| sinc_Nclock|and smell_amaz| so_w_ar| som_roll| speaker| switch_to_metric| temperatur_N:core|
th_DISH_anymor| th_floor| th_menu| th_snow| th_top_oven| this_rental| thumb_open| th|how ti_it|
till_N:few|i timer_off| to_help_m| to_metric| too|i up_to_N:oven| us_celsius| vegetarian|and
well|N:few well|how with_th_THING| with_th_fat| yet|i_hav yet|what you_reckon| you|it |@115.1
|DISH_DISH_don |N:core_fan |N:core_fan_$ |N:few_adult |N:few_guest |N:some_on |N:some_peopl
|Nclock_is |THING_has |THING_say_N:core |THING_up |U_my_god |a_Nweight |again_slower |again_slower_$
|all_N:few_$ |and_alert_at |and_hav_i |and_how_long |and_let_m |and_serv_it |and_stop |and_stop_th
|and_trim |and_turn_th |and_who |at_how |at_what_temperatur |both |can_th |cor_N:core |could_dinner
|delay_it |delay_it_by |do_it |don_with_that |forget |forget_i_said |forget_th |from_fridg
|go_for |hang_on |hav_not_got |how_do_you |how_thick |i_am_tak |i_left_th |i_remov |i_remov_it
|i_would_lik |is_everyth |it_beep |it_cam_out |it_is_sit |it_is_under |it_run |kettl_is |knock_it_back
|lettuc |light_is |lit_it |low_and |medium_rar_$ |no_DISH_after |no_not |no_th_other |plat_ar
|pull_for |pull_th_roast |remind_m_in |rest_is |right_i |right_i_am |scrap_that |show_m_fahrenheit
|som_of |som_of_th |stop_talk |tabl_is |th_guest |th_on_with |that_is_what |total_N:few_person
|train_is |w_eat_at |wash_your |wash_your_THING |well_N:few |when_do_i |yes_i
15 @149.0| @21.5| @71.2| @78.1| DISH_ar_in| DISH_ar_on| DISH_boil| DISH_out|DISH DISH_yet|
N:few_low| N:few|what_is N:some_behind| Nclock|what Ndegrees:oven| Nduration_befor| Nduration_timer|and
Nduration|how_much Nweight|how THING|how THING|th_THING ^_^_kilo| ^_excus_m| ^_kilo| about_Nduration_ago|
am_drown_her| and_all| ar_her|and ar|and ask_for| at_N:few|what at_Nclock|th b_N:few_person|
b_had_today| behind_by_Nduration| bless_his_heart| board_now| boy| burnt_my_THING| careful_with_her|
cast_iron_THING| caught_alight| dinner_Nclock| dinner_in_Nduration| door_for_Nduration| down|how
drop_your_correction| drown_her| everyth_in_fahrenheit| family_has_arriv| for_Nduration|th
for_P| for_P|and for_THING| for_m| for_th_crust| from_convection| got_th_flu| go|how had_today|
halv_s_U| has_gon_in| has_gon_walkabout| her_medium| i_want_thos| in|DISH iron_THING| is_caught_alight|
is_complet| is_fre| is_out|N:core is_too_short| it_over| kill_th_timer| later| lay_th_tabl|
leave-in_say_N:core| leg_of_THING| less_for_dinner| lik_his_rar| mad| n_mor_tim| officer| on_it|
on_th_go| our_on| out_of_DISH| out_of_THING| overcook_it| part_N:core| pink_at_all| plan_as_well|
roast_is_season| s_U| sam_is_help| sat_down| serv_Nduration_later| skip_th_french| so|th stir_th_DISH|
stop_talk| system_is_shot| th_THING_was| th_THING|how th_other_sid| th_oven|th th_oven|what
th_trim| thank_you| that_is_it| they_hav_arriv| to_Ngas-mark| to_eat_Nclock| to_you| too_short|
ty_it| version| want_thos| you_believ_it| your_correction| |DISH_ar |N:core_N:core |N:few_coeliac
|N:few_mor_peopl |Nweight_of |P_is_N:core |P_lik |THING_m_th |THING_still |add_a |aim_to |all_sort
|am_i_behind |and_my |and_shop |and_shop_list |and_should_i |and_skip |and_w_ar |and_what_can
|and_when_do |anyth_i |can_i_rest |can_my |can_my_toddler |can_w |forget_i |got_it |half |his_lip
|hold_on_a |i_hav_begun |is_it_ok |it_can |it_has_been |it_is_a |it_is_tent |it_say_N:core
|list_everyth |ok_P |out_it |oven_at_N:oven |oven_up_to |pick_up |roast_is |say_that |sound_lik
|target |tell_on |th_on |th_power |th_twin |total_N:few |w_hav_lost |w_n |well_i |what_tim
16 DISH_and_DISH| DISH_finish| DISH_sid| DISH_th_bon| DISH_th_roast| N:core_now| N:core|is_it
N:few_off|and N:few_peopl_cancell| N:few_step_back| N:few|and_sh N:oven|my Nclock|how Ndate|th
Nduration|my_P Nweight_near_enough| THING|what_is U|Nduration ^_^_fin| ^_^_typo| ^_fin| ^_guest_seat|
^_skip_that| ^_timer_Nduration| ^_typo| ^_typo|N:core a_THING_pan| a_leave-in_THING| a_shift|
a_sid| a_treat| all_of_them| all|and at_N:few_sharp| at_N:few_tonight| at_N:few|i away_Nduration|
b_Nduration_lat| begin_with| behind_on_everyth| behind_with_everyth| cark_it| cor_temperatur_Ndegrees:core|
eat_Nduration_early| flam|and floor|th for_th_roll| french_th_bon| fre| fridg|and get_down|
gon_walkabout| got_a_shift| greas_fir| has_run_out| hat_this| hit_N:core| hit_my_THING| in_flam|
in_som_roll| in_th_middl| insist_on_DISH| instead_of_N:few| is_N:core|i is_N:core|what is_cark_it|
is_your_P| it_at_N:some| it_with_everyth| it|i_hav it|what m_at_Ndegrees:core| m_at_Nduration|
much_smok| no_second_oven| not_mak_it| not_ready_yet| now|DISH off_th_menu| off|what onto_th_floor|
other_sid| out|N:core oven_at_N:oven| pack_in| peopl_cancell| phon|i rest|U roast|and scratch_that|
sear_now| so_far| stov|and th_DISH_sid| th_fridg|and th_phon|i th_start| th_til| th_timer|and
th_whol_way| than_that| them_off| til| to_N:oven|th to_N:oven|what to_th_next| treat| walkabout|
warm|and way_no_sear| whol_way| would_ya| |DISH_butter_don |DISH_has_split |DISH_hav |DISH_not
|N:core_near_th |N:few_of_us |N:oven_it_is |THING_is_N:core |THING_out_th |am_i |am_i_lat |and_P
|and_THING |and_at |and_how_com |and_how_many |and_how_pink |and_is_N:core |and_right |and_set_a
|and_they_hav |and_what_should |ar_w_go |ar_w_on |ar_you |can_U |can_i |convection_is_run |cor
|dinner_Ndate |dinner_Ndate_at |dinner_is_at |doorbell |french_is |hav_not |how_do |i_am_away
|i_burn |i_hav_gon |i_n_a |is_ther_any |it_THING_N:core |kill_th |mak_dinner_N:oven |my_P_can
|never_again |no_DISH_tonight |remind |roast_DISH_ar |school_run |smash |start |start_from
|stop_nagg |strik_th |th_DISH_is |th_oven_THING |th_roll_ar |they_ar_stuck |w_ar_N:few |w_hav_N:few
|what_for_is |what_should_th |what_temperatur_for |what_temperatur_is |what_tim_should |when_do_th
|wher_do |who_is_com |who_want |will_THING_do |you_what |you_what_$
17 DISH_in|DISH DISH_split| DISH|that_is N:core|how_long N:few_off| N:few_tonight| N:oven|i_hav
Ndegrees:core_now| Nduration_mor_early| Nduration_off_schedul| Nduration|Nduration Nduration|it_is
Nduration|why P_gon_Nduration| ^_^_metric| ^_metric| ^_sear_last| a_moment| after_all|and already|
alway_has| ar_in| arriv|and bon_rib_roast| boneless_Nweight| can_go| door_open_Nduration| dress_th_DISH|
driveway| easy| f_at_Nclock| for_th_sear| giv_m_Nduration| has_di| has_invit_themselv| her|and_i
hous| in_th_night| in_th_oven| in|is is_on_fir| is_out| is_scream| it_is|and it_yet| it|i_am
it|th kill_it| less_now| medium|th money_fahrenheit| mor_early| non| not_m| no|DISH_it of_butter|and
old_money_fahrenheit| on_m| on_th_DISH| other_on| oven_off_now| pull_th_roast| read_is_N:core|
rental| rib_THING_Nweight| rib|it sear_last| sh_com| shop_Nduration| so_s_out| spar| start_THING|
stop_th_timer| text_Nduration_lat| th_U|th th_driveway| th_other_on| th_roast|and th_shop_Nduration|
th_thickest_part| than_it_say| to_DISH_it| to_Nclock| to_begin_with| to_tell_ya| to_th_tabl|
too|and with_DISH_DISH| would_you|and |DISH_has |all_my |and_am |and_am_i |and_kindly |and_lunch
|and_pull |and_remind |and_remind_m |ar_w_win |convection_is |go_for_medium |half_of_them |hav_i
|her_is |i_am_all |is_medium_rar |it_has |it_is |low_and_slow |m_and |p |p_m |quick_updat |remind_m
|say_that_again |scratch |set |show_m |silenc |stop_th_timer |th_guest_ar |that_is_a |this_oven
|what_heat |what_quantity |what_quantity_of |why_do |yes_no
18 DISH_and_all| DISH_anymor| DISH_on| DISH_peel| DISH|DISH_DISH N:core|let_us N:core|what_is
N:few_fewer| N:few_guest| N:oven_Nduration_ago| N:oven|THING Nclock| Nclock|i_am Ndegrees:core|
Nduration_early| Nduration_too_lat| Nduration|what ^_N:few_guest| ^_us_celsius| a_fall| again|th
am_run_lat| as_well| at_N:core|what beep_at_N:core| begun_DISH| bit_later_Nduration| bon_Nweight|and
butter_step| charcoal| church_for_Nduration| cor_N:core| don_for_P| eat_Nduration_befor| eat_at_N:oven|
for_DISH| gon_in| had_a_fall| hav_turn_up| her|how hit_N:core|and in_Nduration_back| in_i_forgot|
in_this_THING| is_dark| lat_in_her| later_Nduration| later|and lat|i los_th_DISH| nam_is_U|
no_THING|and now|Nduration on_everyth| on_th_clock| out_and_rest| out_it_com| pack_up| rib_Nweight|
tabl_for_Nclock| th_butter_step| th_end|and th_french| that|and them_walk_in| this|and up_at_Nclock|
well_don|and whol_tim| yet|and |DISH_DISH_ar |N:few_mor |THING_is |aim |and_aim |and_cancel_that
|and_how_much |and_so_what |and_timer |and_w_n |at_what |dinner_in |dinner_in_Nduration |dinner_is
|h_is_at |how_com |how_long_hav |jaysus |mak_dinner |my_P |never_again_$ |oven_up |right_so
|say_again |school_run_so |scrap |slic_th |so_th_henderson |supper_is |tak_that |th_DISH_ar
|us_celsius |what_can |what_go
19 N:few|what N:oven|how N:some|th Nclock_for_dinner| Nclock|DISH Ndegrees:few_high| Nduration_top|
THING_check| THING_left| THING_pan| THING_will_you| ^_medium_rar| alert_at_N:core| am_se| at_N:few|
back_Nduration|and been_vot_down| bon_roast_Nweight| boot| cast_iron_pan| dinner_for_Nduration|
door|i down_in_Nduration| dry|and electricity_has_gon| excus_m| for_th_THING| guest_seat| guest_to_N:few|
i_am_se| instead| in|i_am is_mad| it_weigh_Nweight| it|my m_a_THING| of_N:few| or_so| out_at_N:oven|
oven_has_di| oven_sinc_Nclock| oven|what so_plus_N:few| than_w_said| timer_of_Nduration| up_to_temperatur|
vot_down| well|and with|and yet|DISH you_allow| you|that |DISH_is |DISH_is_finish |N:few_peopl_cancell
|add |and_dinner |and_forget |and_hang |and_hav_not |and_is_it |and_show |and_tim |did_i |honestly
|how_long_is |i_fancy |i_want_degre |now_i_must |oven_is |pop |that_is |w_ar_sit |walk_m
20 N:core|can N:oven|no Nclock|N:few Nduration|my P_is_vegetarian| ^_scratch_that| ^_undo_that|
befor_Nduration| box_is_all| dinner_at_N:few| don|DISH for_Nduration| from_th_market| in_N:core|
in_N:some| in_it_go| is_in| is_sat_down| it_all_over| it|i lat|th lik_you_said| moo| now| offsid|
out_already| out|hav phew| quarter_past| ros| said|and so_they_ar| start_now| still_moo| th_plac|
understood| us|i wall| with_everyth| |@1.0 |U_and_DISH |and_THING_is |and_ar_w |and_dinner_is
|and_oven_is |and_sear |and_should |and_yes |com_again_$ |how_ar |how_much_longer |i_hav_turn
|instead_of_butter |so_what |tak_that_back |ther_is |w_hav_no |what_ar_my |when_is_th |which
|would_you_ever
21 N:core_already| Nweight_THING_THING| P_nor_money| ^_DISH_in| at_N:core|it back_in_N:some|
by_Nduration|and help_us| his_rar| iron_pan| is|and is|i m_fahrenheit| nobody_eat_them| nor_money|
oil| oven_door_open| say|and tell_m|and th_wall| them|and to_temperatur| |and_br |and_can_i
|and_if |and_wher |and_which |can_you |for_what |i_am_run |sorry_what |tell_m_when |th_DISH_went
|th_roast_has
22 DISH_with_it| add_DISH_DISH| back_in_Nduration| for_dinner| for_m|and hav_arriv| out_at_Nclock|
out|DISH |and |and_N:few_mor |and_how_do |and_power |com_again |explain |it_weigh_Nweight |no_wait
|th_oven_is |us_celsius_$
23 DISH_after_all| N:core|oven N:few|i_hav a_miss| any_mor| as_it_is| do|and in_Nduration_ago|
much_go_on| not_don_yet| of_THING|and of_it| without_bon| |and_Nduration |and_can_you |i_hav_a
|is_N:core_too |it_weigh |no |now_what_$ |step_away |th_THING_has |when_do |when_is |will_THING
|you_ar
24 N:core|DISH N:core|w eat_them| roast_Nweight| yet| |and_could |could_you |how_ar_w |that_was
25 is_my_P| oven_N:oven| |and_giv |and_let_us |everyth_is
26 |P_want |and_N:few_of |and_can_w |and_why |is_that |is_ther_a
27 after_all| th_DISH|what |giv_m_th |this_is
28 N:core|how |and_DISH_is |and_is |and_oven
29 start_th_DISH|
30 |and_when
31 |ar_w
34 at_all| |and_what |is_ther
38 |is_it
42 |and_how`);
