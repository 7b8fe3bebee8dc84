/** Learnt from the rules half of the corpus by scripts/train-hypotheses.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const hypothesisWeights: Weights = weightsFrom(`
-48 helper1
-44 talk:helper10
-43 helper2
-37 helper3
-34 helper0
-33 helper4
-29 slots:ask-amount: talk:helper11
-27 for:drop-dish>lack stage:low-roast:add-hands without:report-reading:frame:6
-26 stage:low-roast:add-dish stage:planning:report-started talk:helper9
-25 then:ask>deed
-24 mood:negative:report-reading stage:prep:ask-status text:repeat:0 without:lack without:report-trouble:phrase:3
-23 for:report-trouble>report-done lost:ask-options lost:running-behind stage:planning:skip-step
then:ask>add-dish without:report-done:phrase:5 without:set-doneness:phrase:4
-22 slots:correct:was stage:prep:report-guests stage:prep:report-out text:repeat:1 then:ask>ask
then:ask>cook-away without:report-reading:phrase:3 without:report-trouble:frame:4 without:report-trouble:phrase:2
without:report-trouble:phrase:5
-21 clause:affirm:guess:3 clause:emergency:guess:2 clause:set-serving-time:guess:2 for:add-dish>drop-dish
for:ask-plan>ask-why for:note-guest>set-serving-time mood:negative:report-guests mood:story:set-doneness
slots:ask-substitute: stage:planning:ask-how then:report-done>report-out then:report-oven>set-serving-time
without:ask-plan without:report-done:phrase:4 without:report-oven:phrase:4 without:report-trouble:phrase:6
without:set-guests:phrase:4
-20 clause:add-dish:phrase:1 clause:describe-roast:guess:5 clause:report-not-done:guess:2 clause:report-reading:guess:3
clause:start-over:guess:2 empty:drop-dish:3 empty:skip-step:5 for:report-started>drop-dish
mood:story:set-serving-time stage:planning:report-done stage:planning:report-reading stage:prep:cook-away
talk:stage:planning then:ask>lack then:ask>report-trouble then:correct>set-guests without:add-dish:phrase:4
without:add-dish:phrase:5 without:report-reading:frame:7 without:set-serving-time:phrase:6
-19 clause:note-guest:phrase:0 empty:ask-how:3 empty:report-reading:5 for:report-trouble>ask-options
for:set-serving-time>set-guests for:skip-step>report-not-done mood:negative:affirm stage:planning:ask-next
stage:planning:report-not-done stage:planning:report-out stage:planning:report-trouble stage:rest:add-dish
stage:rest:cook-away text:cancel-timer:2 then:ask>drop-dish then:ask>set-doneness then:set-doneness>report-trouble
without:ask-time-left:phrase:4 without:correct:across:0 without:report-not-done:phrase:4
-18 clause:pause:guess:3 clause:report-not-done:frame:0 clause:report-not-done:frame:1 clause:set-timer:guess:3
empty:ask-guests:3 empty:ask-next:4 empty:report-done:8 empty:report-setup:6 for:ask-temperature>report-reading
for:cook-away>set-serving-time for:note-guest>set-guests for:report-done>ask-status for:report-done>report-guests
for:report-oven>report-trouble for:report-reading>report-setup for:report-setup>report-trouble
for:set-guests>set-serving-time mood:intention:report-guests mood:negative:add-hands mood:question:pause
mood:request:deed slots:add-hands: slots:ask-why: stage:low-roast:ask-substitute stage:low-roast:help
stage:low-roast:running-behind stage:planning:correct stage:prep:quiet stage:prep:report-trouble
stage:rest:set-doneness stage:rest:set-guests then:ask>report-guests then:ask>report-reading
then:ask>set-guests then:ask>shift-serving then:correct>deed then:correct>report-started then:note-guest>report-done
then:report-out>report-done without:cook-away without:report-oven:frame:5 without:report-oven:phrase:6
without:set-doneness:phrase:3 without:set-method without:set-timer:phrase:4
-17 =add-hands:frame =ask-why:phrase =shift-serving:across clause:add-dish:phrase:0 clause:choose:guess:2
clause:report-guests:frame:1 clause:report-guests:guess:2 for:ask-substitute>add-dish for:report-guests>set-guests
for:report-out>drop-dish for:report-out>report-done for:report-started>ask-next for:set-timer>report-reading
lost0:gained3 lost:ask-shopping mood:intention:quiet mood:request:report-guests mood:statement:add-dish
slots:running-behind: stage:low-roast:start-over stage:planning:quiet stage:prep:help stage:rest:deny
talk:ask-plan talk:help text:choose:2 text:emergency:1 then:add-hands>set-guests then:ask>correct
then:ask>set-serving-time then:ask>skip-step then:correct>report-reading then:deny>deed then:deny>report-done
then:set-method>skip-step then:skip-step>skip-step twice:skip-step without:ask-amount without:ask-next
without:ask-plan:phrase:5 without:describe-roast:phrase:4 without:note-guest:phrase:5 without:report-not-done:frame:2
without:report-out:phrase:5 without:report-reading:phrase:6 without:report-started:frame:6
-16 clause:cancel-timer:guess:2 clause:correct:guess:5 clause:describe-roast:guess:8 clause:lack:frame:1
clause:lack:frame:2 clause:quiet:guess:4 clause:report-oven:frame:2 clause:set-serving-time:guess:6
empty:add-dish:0 empty:ask-how:6 empty:report-done:5 empty:shift-serving:4 empty:watch:2 expecting:doneness:note-guest
for:ask-how>ask-status for:ask-safety>ask-status for:ask-safety>set-doneness for:ask-temperature>set-doneness
for:note-guest>add-hands for:report-oven>report-done for:report-trouble>ask-status for:shift-serving>report-guests
for:shift-serving>set-timer gained:frame:5 lost:ask-temperature lost:undo many4:clauses3 mood:question:add-hands
mood:question:drop-dish mood:story:report-oven slots:correct:minutes slots:report-done: stage:low-roast:ask-shopping
stage:planning:ask-substitute stage:planning:cook-away stage:prep:shift-serving text:affirm:1
then:ask-temperature>ask-temperature then:describe-roast>report-done then:drop-dish>deed then:report-guests>set-serving-time
then:report-oven>report-setup twice:ask-temperature twice:set-guests without:add-dish:frame:2
without:ask-status without:cancel-timer without:lack:phrase:5 without:report-done:phrase:8
without:report-guests:phrase:4 without:report-oven:phrase:3 without:report-started:phrase:3
without:report-trouble:frame:5 without:report-trouble:phrase:1 without:set-guests:phrase:7
without:set-serving-time without:set-timer:phrase:2
-15 clause:choose:guess:3 clause:note-guest:guess:2 clause:report-reading:phrase:1 clause:resume:guess:2
clause:set-serving-time:phrase:1 clause:shift-serving:guess:2 empty:ask-time-left:5 empty:ask-why:4
empty:cancel-timer:3 empty:cook-away:1 empty:deny:6 empty:set-guests:0 expecting:reading:report-started
for:ask-temperature>ask-how for:cook-away>set-timer for:cook-away>shift-serving for:help>ask-next
for:report-guests>report-started for:report-not-done>lack for:report-oven>report-out for:report-reading>report-oven
for:report-trouble>cook-away for:set-doneness>set-serving-time helper6 lost:phrase:7 many2:clauses5
mood:story:report-not-done slots:set-units:weight stage:carve:set-doneness stage:hold:set-guests
stage:low-roast:set-doneness stage:prep:ask-shopping stage:prep:set-timer stage:rest:ask-amount
text:pause:3 text:report-guests:1 text:report-not-done:0 text:report-not-done:1 then:ask-how>report-out
then:ask-shopping>cook-away then:ask>report-setup then:ask>set-units then:choose>ask then:lack>ask-options
then:note-guest>set-guests then:report-guests>report-done then:report-guests>set-guests then:report-guests>shift-serving
then:report-setup>report-trouble without:add-hands:phrase:5 without:report-guests:phrase:6
without:report-reading:phrase:4 without:report-reading:phrase:7 without:report-setup:phrase:6
without:report-started:phrase:7 without:set-serving-time:phrase:2 without:set-serving-time:phrase:4
-14 =quiet:frame asked:false clause:choose:phrase:2 clause:lack:phrase:0 clause:pause:frame:2
clause:set-doneness:phrase:2 clause:set-guests:guess:8 clause:shift-serving:guess:6 clause:shift-serving:phrase:2
cover:add-dish:0 cover:lack:1 cover:report-started:0 empty:add-hands:0 empty:ask-amount:3 empty:ask-guests:2
empty:ask-next:6 empty:ask-safety:3 empty:ask-time-left:6 empty:cancel-timer:6 empty:correct:0
empty:lack:6 empty:watch:3 expecting:step:report-setup for:add-hands>add-dish for:add-hands>report-done
for:ask-next>report-out for:ask-why>report-out for:deny>report-done for:pause>report-guests
for:report-guests>report-out for:report-not-done>report-guests for:report-not-done>report-out
for:report-oven>ask-temperature for:report-reading>ask-next for:report-reading>ask-status for:report-reading>report-started
for:report-trouble>emergency for:report-trouble>report-reading for:report-trouble>set-doneness
for:set-doneness>report-done for:set-serving-time>ask-time-left for:set-timer>watch for:shift-serving>report-trouble
gained:describe-roast lost:ask-time-left lost:describe-roast lost:watch many1:long6 mood:intention:drop-dish
mood:request:ask mood:story:deny slots:describe-roast:cut slots:report-not-done: stage:low-roast:ask-amount
stage:low-roast:ask-guests stage:low-roast:lack stage:low-roast:set-method stage:low-roast:set-units
stage:planning:report-guests stage:planning:set-timer stage:preheat:set-serving-time stage:prep:start-over
stage:rest:set-serving-time talk:expecting:choice talk:found0 talk:undo text:add-dish:0 text:add-dish:1
text:choose:0 text:deny:1 text:help:0 text:start-over:2 then:add-hands>ask then:ask-time-left>report-reading
then:ask>note-guest then:ask>quiet then:ask>watch then:cook-away>set-timer then:correct>correct
then:deed>set-units then:describe-roast>add-dish then:drop-dish>report-out then:report-done>report-started
then:report-started>add-dish then:report-started>describe-roast twice:correct twice:report-trouble
without:add-hands:phrase:3 without:ask-next:phrase:7 without:ask-status:phrase:4 without:report-done:phrase:3
without:report-reading:phrase:5 without:report-setup:phrase:5 without:set-doneness:phrase:2
without:set-guests:phrase:3 without:set-serving-time:phrase:5
-13 clause:affirm:guess:2 clause:choose:guess:5 clause:cook-away:guess:2 clause:correct:guess:8
clause:deed:frame:0 clause:emergency:across:0 clause:lack:phrase:1 clause:repeat:guess:2 clause:undo:frame:2
empty:add-dish:7 empty:ask-guests:0 empty:ask-status:0 empty:ask-status:4 empty:ask-temperature:7
empty:ask-time-left:0 empty:cook-away:5 empty:drop-dish:5 empty:have:3 empty:help:0 empty:report-out:6
empty:report-reading:8 empty:report-setup:5 empty:report-started:0 expecting:reading:report-out
expecting:step:deny for:add-hands>report-started for:ask-how>ask-amount for:ask-next>ask-shopping
for:ask-safety>note-guest for:ask-substitute>lack for:ask-why>ask-how for:cook-away>pause for:cook-away>report-out
for:cook-away>report-reading for:lack>add-dish for:note-guest>ask-safety for:report-guests>report-reading
for:report-out>report-guests for:report-out>report-setup for:report-out>shift-serving for:report-started>report-guests
for:set-doneness>report-out for:set-timer>shift-serving for:shift-serving>cook-away for:skip-step>report-done
for:watch>report-reading gained:frame:1 gained:phrase:7 lost:frame:5 lost:phrase:6 many1:long5
mood:negative:set-timer mood:question:repeat stage:low-roast:describe-roast stage:planning:ask-why
stage:prep:affirm stage:put-away:ask-amount stage:rest:pause stage:sear:emergency talk:frame:4
text:cook-away:2 text:guess:0 text:set-timer:0 then:add-hands>add-dish then:add-hands>add-hands
then:ask-options>ask-next then:ask-temperature>report-started then:ask-temperature>set-doneness
then:cancel-timer>add-dish then:drop-dish>set-guests then:lack>skip-step then:report-done>skip-step
then:report-out>report-setup then:report-out>shift-serving then:set-guests>set-guests then:set-method>report-done
then:set-serving-time>report-reading twice twice:add-hands without:add-dish:phrase:0 without:affirm:phrase:7
without:ask-next:phrase:6 without:ask-time-left:phrase:6 without:ask-why:phrase:3 without:describe-roast:phrase:1
without:drop-dish without:drop-dish:phrase:6 without:lack:phrase:3 without:lack:phrase:6 without:lack:phrase:7
without:report-not-done:phrase:6 without:report-out:phrase:6 without:report-reading:frame:8
without:report-reading:phrase:2 without:shift-serving:frame:5 without:shift-serving:phrase:4
-12 =ask-time-left:frame breath2:true clause:add-dish:frame:2 clause:add-dish:guess:2 clause:choose:frame:6
clause:choose:phrase:3 clause:drop-dish:guess:5 clause:set-doneness:guess:8 clause:set-guests:guess:2
empty:ask-safety:4 empty:ask-status:5 empty:describe-roast:5 empty:describe-roast:6 empty:note-guest:5
empty:report-oven:3 empty:resume:7 empty:set-method:3 empty:set-serving-time:7 empty:set-timer:5
for:ask-amount>ask-guests for:ask-amount>ask-next for:ask-plan>ask-next for:ask-status>report-done
for:ask-substitute>drop-dish for:ask-substitute>report-done for:ask-temperature>ask-safety
for:cook-away>report-started for:drop-dish>report-done for:report-not-done>shift-serving for:report-out>ask-time-left
for:report-out>report-trouble for:report-oven>report-reading for:report-reading>report-done
for:report-started>ask-status for:report-started>lack for:report-trouble>ask-time-left for:report-trouble>shift-serving
for:running-behind>ask-plan for:running-behind>shift-serving for:set-guests>add-dish for:set-guests>correct
helper5 least0:many3 left3:many3 lost:ask-why mood:intention:ask mood:negative:ask mood:question:report-setup
slots:ask-temperature: slots:report-out:time,what slots:report-oven:mode stage:hold:report-oven
stage:hold:report-started stage:planning:deny stage:prep:ask-time-left stage:prep:report-started
stage:rest:correct stage:sear:report-setup talk:stage:preheat text:choose:1 text:choose:3 text:cook-away:0
text:lack:0 text:set-timer:1 text:shift-serving:0 then:ask-amount>ask-next then:ask-next>report-out
then:ask-plan>ask-how then:ask-why>report-done then:ask>report-not-done then:report-guests>add-hands
then:report-not-done>set-guests then:report-oven>cook-away then:running-behind>add-dish then:set-guests>ask-amount
then:set-guests>correct twice:shift-serving without:ask-options without:ask-time-left:phrase:5
without:drop-dish:phrase:3 without:drop-dish:phrase:4 without:drop-dish:phrase:5 without:note-guest:phrase:6
without:quiet without:report-guests:guess:5 without:report-guests:phrase:3 without:report-not-done:phrase:7
without:report-out:frame:6 without:report-oven:phrase:8 without:report-reading:guess:7 without:report-reading:phrase:8
without:running-behind:phrase:5 without:set-doneness:phrase:5 without:shift-serving:phrase:6
without:skip-step
-11 breath0:true clause:add-dish:phrase:2 clause:add-hands:frame:1 clause:add-hands:guess:3
clause:deny:guess:4 clause:deny:phrase:4 clause:lack:frame:0 clause:lack:phrase:3 clause:report-trouble:guess:4
clause:report-trouble:phrase:7 clause:resume:frame:1 empty:add-dish:2 empty:add-dish:4 empty:add-dish:5
empty:ask-how:5 empty:ask-safety:5 empty:ask-temperature:5 empty:ask-temperature:8 empty:emergency:1
empty:note-guest:7 empty:note-guest:8 empty:report-done:0 empty:report-oven:1 empty:report-reading:4
empty:report-setup:0 empty:report-setup:7 empty:report-setup:8 empty:set-doneness:1 empty:set-method:1
expecting:confirmation:report-done for:ask-amount>ask-time-left for:ask-how>help for:ask-status>report-guests
for:ask-temperature>report-started for:ask-time-left>ask-how for:note-guest>report-guests for:pause>quiet
for:report-done>skip-step for:report-guests>report-trouble for:report-not-done>correct for:report-not-done>pause
for:report-not-done>set-guests for:report-out>set-doneness for:report-oven>choose for:report-reading>cook-away
for:report-setup>report-done for:report-setup>report-oven for:report-trouble>running-behind
for:resume>repeat for:set-doneness>report-trouble for:set-serving-time>correct for:shift-serving>set-serving-time
gained:across:0 gained:ask-temperature gained:phrase:6 how:talk least1:many3 lost0:gained2
lost:ask-how lost:frame:7 lost:phrase:5 lost:set-units many2:long2 mood:negative:lack mood:question:lack
mood:question:resume mood:question:set-doneness mood:question:set-method mood:question:start-over
mood:statement:cook-away mood:story:deed slots:ask-time-left: slots:describe-roast:bones,cut
slots:report-started:step slots:report-trouble:minutes,step,trouble stage:carve:ask-next stage:carve:set-guests
stage:hold:ask-status stage:low-roast:ask-plan stage:low-roast:report-setup stage:planning:ask-temperature
stage:planning:ask-time-left stage:preheat:add-dish stage:prep:deny stage:rest:resume stage:sear:ask-next
stage:sear:cook-away stage:sear:report-out stage:served:add-dish stage:served:set-guests talk:expecting:confirmation
talk:lack talk:pause text:deed:2 text:repeat:3 text:report-setup:1 text:watch:2 then:add-dish>ask-amount
then:add-dish>deed then:ask-amount>add-dish then:ask-next>ask-how then:ask-next>report-trouble
then:ask-options>set-units then:ask-safety>report-out then:ask-status>set-guests then:ask-substitute>add-dish
then:ask-substitute>ask-substitute then:ask>report-oven then:choose>choose then:note-guest>lack
then:note-guest>running-behind then:report-not-done>report-trouble then:report-reading>describe-roast
then:report-reading>set-method then:report-setup>report-reading then:report-trouble>ask-time-left
then:report-trouble>report-trouble then:report-trouble>set-doneness then:running-behind>report-trouble
then:shift-serving>report-guests then:shift-serving>shift-serving twice:ask-substitute twice:choose
without:add-dish:guess:5 without:add-dish:phrase:7 without:ask-shopping without:ask-status:phrase:3
without:ask-temperature:frame:0 without:ask-temperature:phrase:8 without:cancel-timer:phrase:6
without:describe-roast:phrase:6 without:drop-dish:phrase:2 without:note-guest:phrase:7 without:note-guest:phrase:8
without:report-out:frame:5 without:report-setup:phrase:8 without:report-trouble:phrase:7 without:resume
without:running-behind without:set-doneness:phrase:8 without:set-guests:phrase:8 without:set-serving-time:phrase:8
without:set-timer without:set-units without:set-units:phrase:5 without:start-over without:undo
without:undo:across:0
-10 =ask-guests:guess =cancel-timer:frame =set-guests:guess =set-serving-time:across =set-serving-time:guess
clause:correct:guess:7 clause:lack:guess:8 clause:quiet:guess:3 clause:report-oven:frame:0
clause:set-serving-time:phrase:0 clause:set-timer:guess:2 clause:undo:guess:4 clause:undo:guess:5
cover:quiet:2 cover:report-out:0 empty:add-hands:5 empty:add-hands:7 empty:add-hands:8 empty:ask-amount:0
empty:ask-amount:2 empty:ask-amount:5 empty:ask-next:2 empty:ask-next:7 empty:ask-safety:6
empty:ask-substitute:5 empty:correct:2 empty:drop-dish:1 empty:quiet:7 empty:report-done:6
empty:report-guests:6 empty:report-not-done:5 empty:report-started:6 empty:resume:1 empty:shift-serving:6
expecting:confirmation:report-not-done expecting:guests:correct expecting:step:ask-status for:ask-amount>ask-substitute
for:ask-safety>report-started for:ask-temperature>ask-options for:ask-temperature>report-out
for:cook-away>ask-next for:correct>set-guests for:describe-roast>correct for:describe-roast>report-done
for:note-guest>drop-dish for:report-oven>lack for:report-oven>report-guests for:report-reading>report-out
for:report-trouble>add-dish for:set-doneness>ask-temperature for:set-timer>add-dish for:shift-serving>report-done
for:skip-step>report-out for:skip-step>report-started for:watch>ask-time-left gained:undo how:open
left:numbers1 many4:long6 mood:intention:set-timer mood:question:choose mood:question:describe-roast
mood:question:report-trouble mood:request:running-behind slots:cancel-timer:label,minutes slots:correct:
slots:report-out:minutesAgo,what slots:report-reading:temperature,time,where slots:skip-step:
stage::report-not-done stage:hold:report-out stage:hold:report-reading stage:low-roast:ask-safety
stage:low-roast:have stage:planning:ask-status stage:sear:ask-time-left talk:frame:0 talk:report-guests
talk:set-method text:frame:0 text:guess:1 text:have:0 text:quiet:1 then:add-dish>ask-substitute
then:add-hands>running-behind then:ask-how>add-dish then:ask-status>ask-time-left then:ask-temperature>report-reading
then:deed>report-setup then:deed>report-trouble then:lack>drop-dish then:quiet>deed then:report-done>report-trouble
then:report-oven>ask-safety then:report-setup>report-started then:report-trouble>report-started
then:set-guests>ask then:set-guests>report-guests without:add-dish:phrase:2 without:ask-next:phrase:4
without:ask-next:phrase:8 without:ask-substitute without:deny:phrase:7 without:report-done:phrase:0
without:report-oven:frame:4 without:skip-step:phrase:4
-9 =deny:phrase =start-over:frame clause:add-hands:frame:4 clause:add-hands:frame:5 clause:ask:frame:0
clause:choose:phrase:1 clause:deed:guess:5 clause:deed:phrase:0 clause:deny:guess:2 clause:describe-roast:phrase:4
clause:note-guest:guess:5 clause:pause:phrase:5 clause:repeat:phrase:4 clause:report-not-done:phrase:4
clause:report-trouble:guess:2 clause:resume:phrase:2 clause:set-doneness:guess:4 clause:set-serving-time:guess:7
clause:watch:guess:3 cover:drop-dish:0 cover:phrase:0 cover:report-done:1 empty:add-dish:6
empty:add-hands:4 empty:ask-substitute:4 empty:cook-away:0 empty:courtesy:1 empty:describe-roast:8
empty:emergency:2 empty:help:1 empty:quiet:0 empty:repeat:1 empty:report-not-done:7 empty:report-out:8
empty:report-started:7 empty:report-started:8 empty:report-trouble:7 empty:report-trouble:8
empty:set-serving-time:2 empty:set-timer:1 empty:skip-step:1 empty:skip-step:6 empty:undo:3
empty:undo:4 expecting:doneness:report-trouble expecting:reading:describe-roast expecting:step:lack
expecting:step:set-guests first:ask-next for:ask-guests>ask-status for:ask-how>report-done
for:ask-safety>ask-temperature for:ask-status>report-trouble for:ask-substitute>report-started
for:drop-dish>add-dish for:drop-dish>note-guest for:note-guest>report-done for:quiet>pause
for:repeat>report-oven for:report-reading>watch for:report-started>set-serving-time for:report-trouble>lack
for:running-behind>add-hands for:set-guests>report-done for:set-method>report-done for:set-serving-time>shift-serving
for:set-timer>set-guests for:shift-serving>report-reading for:skip-step>drop-dish gained:phrase:4
gained:report-reading lost1:gained2 lost:phrase:4 lost:report-thermometer mood:intention:affirm
mood:intention:report-reading mood:question:deny mood:question:watch mood:story:pause slots:ask-guests:
slots:correct:temperature slots:describe-roast:boneless slots:describe-roast:weight,weightUnit
slots:report-oven:state,time slots:report-setup:tent stage::report-reading stage::skip-step
stage:carve:ask-safety stage:carve:ask-status stage:hold:drop-dish stage:low-roast:repeat stage:low-roast:report-done
stage:low-roast:resume stage:low-roast:set-serving-time stage:low-roast:skip-step stage:planning:repeat
stage:planning:shift-serving stage:prep:report-oven stage:prep:set-guests stage:put-away:ask-status
stage:rest:ask-why talk:helper8 talk:quiet talk:set-guests talk:shift-serving talk:stage:prep
talk:stage:rest text:add-hands:2 text:quiet:3 text:resume:2 text:undo:2 then:add-dish>drop-dish
then:ask-how>ask-how then:ask-next>ask-safety then:ask-next>report-reading then:ask-time-left>report-started
then:ask-why>report-out then:describe-roast>report-reading then:drop-dish>ask-substitute then:lack>ask-safety
then:note-guest>report-guests then:report-reading>report-started then:report-started>drop-dish
then:report-started>set-guests then:set-guests>ask-guests then:set-serving-time>note-guest
then:set-timer>add-dish then:shift-serving>report-started then:skip-step>report-out then:watch>deed
twice:ask-how without:add-dish:frame:5 without:ask-guests without:ask-how:phrase:2 without:ask-safety
without:ask-temperature without:cook-away:phrase:2 without:deny without:describe-roast:phrase:5
without:describe-roast:phrase:7 without:report-guests:phrase:7 without:report-not-done without:report-out:phrase:8
without:report-trouble:frame:6 without:set-doneness:phrase:7
-8 =set-units:frame clause:affirm:phrase:4 clause:cook-away:guess:3 clause:correct:guess:3
clause:describe-roast:guess:3 clause:describe-roast:guess:7 clause:frame:3 clause:lack:guess:3
clause:pause:frame:1 clause:report-not-done:guess:3 clause:report-not-done:phrase:3 clause:set-guests:guess:3
clause:watch:guess:2 cover:ask-plan:0 cover:cook-away:2 cover:report-setup:2 cover:set-guests:1
empty:ask-amount:6 empty:ask-amount:7 empty:ask-how:7 empty:ask-status:1 empty:ask-temperature:3
empty:ask-why:8 empty:cancel-timer:4 empty:courtesy:2 empty:deny:1 empty:have:2 empty:lack:3
empty:pause:1 empty:report-done:3 empty:report-guests:2 empty:report-not-done:6 empty:report-started:1
empty:set-serving-time:1 empty:set-units:0 empty:shift-serving:8 empty:watch:5 expecting:confirmation:report-reading
expecting:reading:report-reading expecting:reading:set-serving-time expecting:step:report-guests
for:ask-amount>add-dish for:ask-status>report-started for:cook-away>report-trouble for:describe-roast>report-started
for:drop-dish>report-started for:drop-dish>skip-step for:repeat>drop-dish for:report-done>report-trouble
for:report-guests>choose for:report-oven>report-started for:report-oven>set-serving-time for:report-trouble>report-started
for:set-doneness>ask-safety for:set-timer>report-trouble gained:ask-substitute gained:guess:2
gained:help how:stop open lost2:gained0 lost:ask-substitute lost:report-oven lost:report-trouble
many2:clauses4 many2:long1 many4:clauses5 many4:long2 mood:intention:describe-roast mood:intention:running-behind
mood:negative:note-guest mood:negative:set-doneness slots:cancel-timer: slots:report-oven:state
stage:hold:correct stage:hold:set-serving-time stage:planning:ask-plan stage:preheat:choose
stage:preheat:report-done stage:prep:cancel-timer stage:served:report-started talk:deny talk:expecting:step
talk:frame:7 talk:likely5 talk:set-units talk:stage:sear talk:watch text:correct:3 text:deny:2
text:help:1 text:set-guests:2 text:set-method:1 text:set-serving-time:0 text:undo:0 then:ask-status>report-reading
then:choose>set-guests then:correct>ask then:describe-roast>deed then:lack>add-dish then:lack>lack
then:report-done>report-reading then:report-done>set-serving-time then:report-guests>report-guests
then:report-oven>ask-temperature then:report-setup>skip-step then:report-started>ask-status
then:report-started>report-out then:report-started>running-behind then:report-started>set-serving-time
then:set-doneness>report-started then:set-guests>report-reading then:set-serving-time>ask then:set-timer>cancel-timer
then:skip-step>deed twice:lack twice:report-guests without:ask-amount:phrase:6 without:ask-amount:phrase:7
without:ask-status:phrase:2 without:ask-temperature:phrase:4 without:ask-why:phrase:8 without:note-guest:phrase:3
without:report-done without:report-oven:frame:6 without:report-reading:guess:8 without:report-started:frame:4
without:report-started:phrase:6 without:set-units:phrase:6 without:shift-serving:phrase:7
-7 =affirm:phrase =lack:phrase =pause:frame =report-started:guess clause:cook-away:phrase:2
clause:cook-away:phrase:4 clause:deed:guess:4 clause:have:phrase:1 clause:lack:frame:5 clause:pause:phrase:4
clause:report-oven:guess:4 clause:report-oven:phrase:6 clause:report-reading:frame:5 clause:report-reading:phrase:4
clause:report-setup:phrase:4 clause:set-serving-time:guess:3 clause:set-serving-time:phrase:3
clause:set-timer:phrase:4 clause:set-units:frame:4 clause:shift-serving:phrase:5 clause:skip-step:guess:3
cover:ask-why:0 cover:choose:2 cover:note-guest:1 cover:phrase:1 cover:report-not-done:1 cover:report-reading:2
cover:set-guests:2 empty:affirm:0 empty:ask-next:0 empty:ask-options:0 empty:ask-time-left:2
empty:ask-time-left:7 empty:cook-away:2 empty:describe-roast:7 empty:quiet:4 empty:report-not-done:0
empty:report-out:5 empty:report-reading:2 empty:report-reading:7 empty:resume:4 empty:set-guests:5
empty:set-method:6 empty:set-serving-time:0 empty:set-timer:6 empty:set-units:2 empty:shift-serving:1
empty:shift-serving:7 empty:undo:2 empty:undo:7 expecting:reading:report-trouble expecting:reading:set-guests
expecting:roast:report-done expecting:serving-time:set-serving-time for:add-dish>ask-substitute
for:ask-how>report-started for:ask-time-left>report-started for:report-reading>ask-temperature
for:report-reading>shift-serving for:report-started>report-not-done for:running-behind>report-done
for:set-timer>report-started for:shift-serving>report-started gained:ask-how how:stop, clause
guessed least0:many2 least2:many2 left6:many2 lost2:gained1 lost:frame:6 lost:note-guest lost:phrase:8
lost:set-timer many0:long6 many1:clauses4 mood:negative:correct mood:negative:report-setup
mood:question:affirm mood:question:correct slots:ask-amount:cut,ingredient slots:report-reading:temperature
slots:set-guests:change,who slots:set-timer:minutes stage::watch stage:low-roast:pause stage:planning:undo
stage:planning:watch stage:prep:add-dish stage:prep:ask-options stage:rest:lack talk:ask-substitute
talk:long6 talk:phrase:0 talk:report-thermometer talk:stage: text:ask:0 text:cancel-timer:0
text:deny:4 text:help:2 text:pause:0 text:report-guests:0 text:resume:1 text:set-doneness:4
then:add-dish>ask-next then:ask-amount>ask-temperature then:ask-amount>set-guests then:ask-guests>ask-guests
then:ask-safety>note-guest then:ask-time-left>report-guests then:choose>deed then:deed>set-serving-time
then:describe-roast>ask then:describe-roast>ask-status then:describe-roast>report-trouble then:drop-dish>drop-dish
then:lack>ask then:lack>report-guests then:note-guest>add-dish then:report-not-done>report-guests
then:report-oven>ask-how then:report-oven>report-trouble then:report-reading>skip-step then:report-setup>deed
then:report-trouble>set-guests then:set-guests>report-started then:set-method>lack then:skip-step>add-dish
then:skip-step>report-done twice:ask-guests twice:drop-dish without:ask-safety:phrase:3 without:ask-time-left:phrase:7
without:cook-away:phrase:6 without:report-guests:phrase:8 without:report-oven:phrase:2 without:report-oven:phrase:7
without:set-method:phrase:6 without:set-timer:phrase:8 without:watch
-6 =affirm:guess =ask-substitute:guess =choose:frame =report-guests:guess =report-out:guess
=skip-step:guess breath1:true clause:ask:guess:3 clause:cook-away:guess:8 clause:frame:0 clause:frame:1
clause:help:guess:2 clause:repeat:guess:3 clause:repeat:phrase:2 clause:report-guests:guess:3
clause:report-guests:guess:4 clause:report-not-done:phrase:1 clause:report-oven:guess:6 clause:report-reading:frame:8
clause:report-setup:frame:3 clause:set-method:phrase:6 clause:set-timer:frame:1 clause:set-units:phrase:3
clause:skip-step:phrase:5 clause:watch:frame:6 cover:lack:0 cover:set-serving-time:1 empty:acknowledge:0
empty:ask-amount:8 empty:ask-temperature:4 empty:cancel-timer:7 empty:emergency:0 empty:report-guests:7
empty:report-oven:4 empty:running-behind:0 empty:set-guests:2 empty:set-serving-time:4 empty:set-timer:7
empty:set-timer:8 empty:shift-serving:0 empty:skip-step:7 empty:skip-step:8 empty:talk0 empty:watch:1
expecting:confirmation:set-guests expecting:roast:report-reading expecting:step:report-started
first:ask-guests for:ask-next>ask-how for:ask-time-left>ask-amount for:report-done>add-dish
for:report-not-done>add-dish for:report-setup>lack for:report-trouble>report-out for:set-timer>report-setup
gained:ask-safety gained:ask-why gained:deny gained:frame:7 gained:note-guest gained:report-oven
gained:watch helper7 least1:many2 left2:many3 lost1:gained0 lost:across:0 lost:frame:8 lost:guess:6
lost:guess:7 lost:help lost:report-out lost:resume lost:skip-step many1:clauses5 many1:long0
many1:long4 mood:intention:set-guests mood:negative:set-guests mood:request:help mood:request:report-reading
mood:statement:cancel-timer mood:statement:skip-step slots:cook-away: slots:report-out:what
slots:report-setup:pan slots:report-setup:probe stage::ask-status stage::ask-temperature stage::ask-time-left
stage::start-over stage:carve:ask-options stage:low-roast:quiet stage:planning:affirm stage:planning:lack
stage:preheat:ask-next stage:rest:drop-dish stage:rest:report-out stage:rest:set-method talk:add-dish
talk:ask-next talk:best1 talk:describe-roast talk:phrase:1 talk:stage:carve text:add-dish:2
text:add-hands:3 text:affirm:3 text:deed:7 text:guess:8 text:lack:1 text:lack:2 text:note-guest:2
text:phrase:1 text:set-units:0 then:add-hands>skip-step then:ask-temperature>report-out then:deed>choose
then:have>report-setup then:lack>ask-amount then:report-done>set-timer then:report-out>add-dish
then:report-reading>report-trouble then:report-reading>set-serving-time then:report-trouble>correct
then:set-serving-time>ask-plan then:set-serving-time>ask-status then:set-serving-time>lack
then:set-timer>report-started then:set-timer>running-behind without:ask-amount:phrase:8 without:ask-status:frame:3
without:cancel-timer:phrase:7 without:report-done:phrase:6 without:report-out:guess:6 without:report-started:phrase:8
without:report-trouble:frame:2 without:report-trouble:phrase:8 without:set-doneness without:set-method:phrase:5
without:shift-serving:phrase:8
-5 =add-dish:phrase =ask-amount:phrase =ask-guests =ask-how:frame =ask-next:phrase =ask-temperature:guess
=cook-away:across =emergency:across =help:phrase =report-done:guess =report-oven:guess =set-method:frame
=undo:guess breath3:true clause:across:0 clause:add-hands:guess:2 clause:affirm:phrase:5 clause:ask:guess:2
clause:ask:phrase:6 clause:correct:guess:6 clause:guess:2 clause:pause:frame:3 clause:quiet:phrase:3
clause:repeat:phrase:5 clause:report-not-done:guess:6 clause:report-oven:guess:2 clause:report-oven:guess:7
clause:report-oven:phrase:5 clause:report-reading:frame:1 clause:report-reading:guess:2 clause:report-setup:guess:4
clause:set-doneness:guess:7 clause:set-guests:guess:6 clause:set-method:frame:4 clause:set-timer:guess:7
clause:shift-serving:guess:3 clause:skip-step:guess:4 cover:ask-amount:3 cover:ask-status:2
cover:lack:2 cover:report-out:1 cover:shift-serving:1 cover:undo:3 empty:affirm:7 empty:ask-status:3
empty:ask-time-left:8 empty:courtesy:3 empty:describe-roast:3 empty:report-guests:5 empty:report-guests:8
empty:report-out:7 empty:report-started:3 empty:running-behind:6 empty:set-method:2 empty:set-timer:4
empty:skip-step:3 empty:talk6 expecting:reading:report-oven expecting:step:resume first:ask-status
first:report-oven first:set-timer for:ask-amount>ask-temperature for:ask-next>ask-options for:correct>report-reading
for:describe-roast>report-reading for:report-done>drop-dish for:report-reading>report-trouble
for:report-reading>set-serving-time for:report-started>cook-away for:set-doneness>report-reading
for:set-guests>report-guests for:set-timer>lack for:set-timer>report-done gained:add-hands
gained:ask-time-left gained:choose gained:guess:3 gained:guess:7 gained:report-trouble gained:running-behind
gained:shift-serving least0 left1:many2 left2:many2 lost0:gained1 lost3:gained0 lost:ask-slice
lost:drop-dish lost:forget-kitchen lost:guess:5 lost:phrase:3 lost:quiet lost:report-setup
lost:set-doneness lost:set-guests lost:set-serving-time mean2 mood:intention:deed mood:negative:report-not-done
mood:negative:set-method mood:statement:deny mood:statement:undo mood:story:ask stage::cook-away
stage:carve:report-started stage:low-roast:deny stage:low-roast:drop-dish stage:planning:add-hands
stage:planning:choose stage:planning:report-oven stage:preheat:ask-status stage:prep:correct
stage:prep:have stage:rest:describe-roast talk:ask-temperature talk:best2 talk:frame:8 talk:have
talk:phrase:8 talk:report-started talk:set-serving-time text:across:0 text:affirm:0 text:deed:0
text:note-guest:0 text:pause:1 text:resume:0 text:set-timer:3 text:skip-step:0 text:skip-step:6
text:start-over:1 text:undo:1 then:add-dish>lack then:add-dish>report-started then:ask-next>choose
then:ask>choose then:correct>report-oven then:deed>add-dish then:describe-roast>ask-next then:report-guests>report-reading
then:report-not-done>deed then:report-not-done>report-started then:report-out>report-guests
then:report-started>lack then:report-started>report-oven then:report-started>report-trouble
then:report-trouble>lack then:report-trouble>report-setup then:set-serving-time>ask-next then:set-serving-time>report-done
then:set-serving-time>set-doneness then:set-timer>set-serving-time twice:set-serving-time without:ask-time-left:phrase:8
without:ask-why without:cook-away:phrase:5 without:describe-roast:phrase:8 without:report-not-done:frame:6
without:report-trouble:phrase:4 without:set-serving-time:phrase:7 without:skip-step:phrase:5
-4 =ask-status =help:frame =report-done =report-done:phrase =report-setup:guess =set-timer:guess
acts:talk3 clause:add-hands:frame:2 clause:cancel-timer:phrase:3 clause:choose:phrase:8 clause:deed:frame:3
clause:deed:guess:3 clause:drop-dish:phrase:1 clause:help:frame:2 clause:lack:phrase:2 clause:note-guest:phrase:2
clause:report-not-done:frame:2 clause:report-trouble:frame:3 clause:report-trouble:frame:4
clause:set-guests:guess:4 clause:set-method:guess:2 clause:set-serving-time:guess:8 clause:skip-step:guess:2
clause:skip-step:guess:6 clause:skip-step:guess:8 clause:start-over:frame:2 cover:ask-guests:3
cover:ask-time-left:2 cover:deny:3 cover:report-done:2 cover:report-reading:0 cover:set-doneness:1
cover:set-timer:1 cover:skip-step:3 empty2 empty:add-hands:2 empty:affirm:4 empty:ask-next:5
empty:ask-options:3 empty:ask-plan:1 empty:ask-status:6 empty:ask-substitute:7 empty:best5
empty:best7 empty:best8 empty:cancel-timer:8 empty:choose:0 empty:courtesy:5 empty:lack:0 empty:lack:4
empty:report-out:4 empty:report-oven:2 empty:report-reading:0 empty:report-reading:3 empty:report-setup:2
empty:report-setup:4 empty:report-trouble:1 empty:set-doneness:6 empty:set-serving-time:5 empty:talk1
empty:words4 first:ask-how first:report-out for:ask-amount>set-guests for:ask-how>ask-options
for:ask-how>ask-plan for:lack>report-done for:lack>report-setup for:note-guest>report-reading
for:report-not-done>report-done for:report-not-done>report-started for:report-reading>lack
for:set-serving-time>report-done gained:ask-next gained:guess:6 gained:pause gained:report-out
gained:report-started gained:set-guests gained:set-method gained:start-over how:stop, less
least8 least8:many1 left3 left4 left4:many1 left6:many3 lost1:gained3 lost:ask-status lost:phrase:1
lost:report-not-done lost:report-reading lost:shift-serving many1:clauses3 many2:clauses3 many3:clauses4
many3:long1 many4:long4 mood:request:start-over mood:statement:choose mood:statement:repeat
mood:statement:shift-serving mood:story:report-trouble mood:story:set-guests slots:ask-how:
slots:report-setup:fan,shelf slots:report-setup:rack slots:report-trouble:trouble slots:set-guests:count
stage::report-done stage::report-out stage:hold:affirm stage:hold:report-guests stage:hold:report-trouble
stage:low-roast:note-guest stage:low-roast:undo stage:sear:ask-status stage:sear:ask-temperature
talk:add-hands talk:affirm talk:ask-shopping talk:ask-status talk:best3 talk:guess:5 talk:helper7
talk:likely0 talk:set-timer talk:start-over text:add-dish:3 text:cancel-timer:4 text:drop-dish:1
text:emergency:0 text:frame:1 text:guess:2 text:phrase:0 text:quiet:7 text:report-not-done:3
text:report-oven:1 text:report-trouble:3 text:running-behind:2 text:set-guests:0 text:set-method:0
text:set-units:1 text:undo:4 then:add-dish>report-done then:add-hands>report-guests then:ask-safety>set-doneness
then:report-done>choose then:report-not-done>ask-how then:report-not-done>describe-roast then:report-reading>ask-amount
then:report-reading>ask-plan then:report-reading>ask-time-left then:report-reading>report-setup
then:report-setup>report-done then:set-doneness>ask then:set-doneness>deed then:set-doneness>note-guest
then:set-serving-time>watch then:set-timer>report-oven then:watch>report-out without:affirm
without:ask-how without:ask-safety:phrase:4 without:ask-substitute:phrase:7 without:cancel-timer:phrase:8
without:lack:phrase:8 without:quiet:phrase:7 without:report-not-done:frame:5 without:report-setup:phrase:7
without:running-behind:phrase:8 without:set-guests:phrase:2 without:set-timer:phrase:6 without:set-timer:phrase:7
without:shift-serving:frame:6 without:skip-step:phrase:7 without:skip-step:phrase:8
-3 =ask-safety:guess =ask-status:frame =choose =correct:guess =deny =deny:guess =describe-roast:phrase
=pause =report-out =resume:guess =set-doneness:frame =set-guests:frame =shift-serving:guess
=undo:frame acts:talk1 acts:talk2 clause:add-dish:guess:4 clause:add-hands:phrase:5 clause:affirm:phrase:7
clause:ask:frame:1 clause:ask:phrase:5 clause:choose:guess:4 clause:cook-away:frame:5 clause:deed:frame:2
clause:deny:phrase:3 clause:deny:phrase:5 clause:emergency:guess:4 clause:frame:2 clause:guess:4
clause:lack:phrase:5 clause:quiet:phrase:6 clause:report-guests:guess:5 clause:report-guests:phrase:3
clause:report-setup:frame:1 clause:resume:guess:4 clause:running-behind:guess:3 clause:running-behind:guess:5
clause:running-behind:phrase:7 clause:set-guests:frame:5 clause:set-guests:guess:7 clause:set-serving-time:frame:7
clause:set-timer:guess:5 clause:start-over:phrase:3 clause:undo:guess:2 cover:add-dish:1 cover:add-dish:3
cover:affirm:3 cover:ask-safety:2 cover:ask-time-left:1 cover:describe-roast:1 cover:frame:2
cover:frame:3 cover:pause:3 cover:report-oven:0 cover:report-trouble:2 cover:set-timer:0 empty3
empty:ask-plan:2 empty:choose:2 empty:cook-away:3 empty:courtesy:7 empty:describe-roast:2 empty:help:4
empty:lack:8 empty:note-guest:0 empty:note-guest:3 empty:report-reading:6 empty:report-trouble:2
empty:running-behind:8 empty:set-doneness:3 empty:set-method:7 empty:set-serving-time:8 empty:set-units:7
empty:watch:6 empty:watch:7 expecting:confirmation:lack expecting:confirmation:set-serving-time
first:ask-time-left first:have first:report-not-done for:deny>lack for:repeat>add-dish for:report-not-done>repeat
for:report-reading>add-dish gained:ask-options gained:frame:3 least1 least3:many2 least3:many3
least7:many1 left0:many3 left3:many1 left4:many2 left6 lost:add-dish lost:ask-guests lost:deny
lost:frame:4 many1 many2 many3:clauses5 many3:long2 many3:long5 many4 mean8 mood:negative:undo
mood:negative:watch mood:question:note-guest mood:question:set-guests mood:request:watch mood:statement:affirm
mood:statement:ask slots:ask-safety:about slots:ask-status: slots:choose:option slots:deny:
slots:pause: slots:report-done:step,time slots:report-out: slots:report-oven:gasMark slots:set-serving-time:date,time
stage:low-roast:affirm stage:low-roast:ask-how stage:low-roast:ask-options stage:low-roast:emergency
stage:low-roast:report-started stage:prep:report-reading stage:put-away:set-guests stage:rest:report-oven
stage:rest:running-behind stage:sear:report-reading talk:ask-why talk:choose talk:guess:7 talk:guess:8
talk:likely4 talk:likely6 talk:likely7 talk:phrase:2 talk:phrase:6 talk:phrase:7 talk:report-trouble
talk:resume talk:skip-step text:affirm:2 text:ask:1 text:correct:8 text:describe-roast:6 text:lack:3
text:report-guests:2 text:report-guests:4 text:report-reading:6 text:running-behind:1 text:set-guests:3
text:set-serving-time:1 text:set-serving-time:2 then:add-dish>note-guest then:cancel-timer>report-out
then:cook-away>report-oven then:report-done>lack then:report-not-done>add-dish then:report-oven>ask
then:report-setup>report-oven then:report-started>add-hands then:running-behind>set-timer then:set-guests>report-done
then:set-serving-time>ask-time-left then:set-serving-time>deed then:set-serving-time>report-oven
then:watch>ask-time-left then:watch>report-reading without:cook-away:guess:7 without:set-method:phrase:7
without:set-timer:phrase:5 without:set-units:phrase:7 without:shift-serving:frame:7 without:watch:across:0
without:watch:frame:8
-2 =affirm =ask-next =ask-options:guess =ask-shopping:guess =choose:phrase =have =note-guest:frame
=pause:phrase =report-not-done:phrase =report-reading:frame =report-setup =report-setup:frame
=report-started =shift-serving:phrase clause:add-dish:frame:4 clause:ask:frame:3 clause:ask:phrase:3
clause:choose:frame:5 clause:choose:phrase:4 clause:correct:across:4 clause:deed:guess:6 clause:deed:phrase:4
clause:drop-dish:guess:2 clause:drop-dish:phrase:0 clause:guess:3 clause:phrase:1 clause:phrase:3
clause:repeat:guess:4 clause:report-guests:guess:6 clause:report-not-done:frame:4 clause:report-reading:frame:7
clause:report-setup:phrase:7 clause:report-trouble:guess:6 clause:running-behind:guess:4 clause:running-behind:guess:6
clause:running-behind:phrase:8 clause:set-doneness:phrase:3 clause:set-guests:frame:2 clause:set-guests:frame:3
clause:set-guests:phrase:2 clause:set-guests:phrase:7 clause:set-method:phrase:2 clause:set-units:guess:3
clause:skip-step:guess:7 clause:start-over:frame:1 clause:watch:across:7 clause:watch:frame:3
clause:watch:guess:5 cover:ask-next:2 cover:ask-status:1 cover:ask-status:3 cover:ask-substitute:3
cover:guess:3 cover:note-guest:2 cover:repeat:3 cover:report-out:3 cover:report-started:2 cover:set-serving-time:0
cover:set-timer:2 cover:start-over:1 empty1 empty:acknowledge:2 empty:acknowledge:4 empty:affirm:1
empty:ask-next:1 empty:ask-options:1 empty:ask-options:7 empty:ask-status:7 empty:ask-time-left:1
empty:cook-away:7 empty:cook-away:8 empty:deny:5 empty:drop-dish:4 empty:emergency:3 empty:report-oven:6
empty:report-started:2 empty:report-trouble:5 empty:resume:3 empty:running-behind:4 empty:running-behind:7
empty:set-doneness:5 empty:set-guests:7 empty:talk2 empty:watch:8 expecting:guests:set-guests
expecting:roast:set-units first:ask-why first:cancel-timer first:choose first:deny first:pause
first:quiet first:report-done for:ask-plan>ask-options for:ask-temperature>ask-next for:ask-temperature>ask-status
for:report-reading>report-guests for:report-started>report-done for:report-started>report-out
for:report-trouble>report-not-done for:shift-serving>report-out for:watch>set-timer gained:ask-shopping
gained:lack gained:phrase:5 gained:resume gained:set-timer how:clause guessed least2 least4:many2
least4:many3 left1:many1 left2 left5:many1 left:numbers2 lost:cook-away lost:correct lost:frame:2
lost:guess:8 lost:pause lost:phrase:2 lost:report-guests many0:long4 many3:long3 mean1 mood:negative:add-dish
mood:negative:deed mood:negative:pause mood:negative:shift-serving mood:question:report-oven
mood:request:set-guests mood:statement:have slots:affirm: slots:ask-next: slots:ask-plan: slots:describe-roast:cut,prepared,weight,weightUnit
slots:have:thing slots:report-guests:state slots:report-trouble:time,trouble stage::report-guests
stage:hold:report-not-done stage:low-roast:ask-next stage:low-roast:choose stage:prep:describe-roast
stage:rest:report-done talk:ask-time-left talk:best5 talk:cook-away talk:frame:2 talk:frame:5
talk:frame:6 talk:helper6 talk:long4 talk:report-done talk:report-out text:affirm:5 text:deny:0
text:describe-roast:0 text:frame:2 text:have:1 text:help:5 text:pause:4 text:report-reading:0
text:report-setup:2 text:report-setup:3 text:running-behind:3 text:set-doneness:1 text:set-doneness:2
text:set-guests:5 text:set-method:4 text:set-serving-time:6 text:shift-serving:4 text:undo:5
text:watch:3 then:cancel-timer>ask then:cancel-timer>report-reading then:deed>deed then:deed>note-guest
then:deed>skip-step then:lack>report-setup then:lack>set-doneness then:note-guest>describe-roast
then:note-guest>note-guest then:report-done>ask-next then:report-done>shift-serving then:report-guests>deed
then:report-out>ask-options then:report-out>report-not-done then:report-oven>note-guest then:report-setup>ask-next
then:report-setup>report-not-done then:report-started>ask-temperature then:report-started>report-done
then:report-trouble>ask-safety then:report-trouble>ask-status then:report-trouble>set-serving-time
then:set-guests>note-guest then:set-method>ask then:set-serving-time>report-guests then:set-serving-time>report-setup
twice:note-guest without:add-dish:phrase:6 without:ask-options:phrase:7 without:ask-temperature:phrase:7
without:cook-away:phrase:7 without:cook-away:phrase:8 without:report-not-done:frame:7 without:report-not-done:phrase:3
without:running-behind:phrase:7 without:set-doneness:phrase:6 without:set-serving-time:phrase:3
without:set-timer:guess:8 without:shift-serving without:skip-step:phrase:6
-1 =add-dish =ask-plan:guess =ask-safety =ask-status:phrase =help =lack =note-guest:phrase
=quiet:guess =report-not-done:frame =resume:frame =running-behind:guess =set-method:guess acts:talk8
clause:add-dish:guess:3 clause:add-dish:phrase:4 clause:add-hands:phrase:1 clause:add-hands:phrase:8
clause:cancel-timer:phrase:7 clause:cook-away:frame:2 clause:correct:guess:2 clause:deed:phrase:5
clause:deny:guess:3 clause:deny:guess:5 clause:describe-roast:phrase:6 clause:drop-dish:guess:6
clause:help:guess:4 clause:help:phrase:5 clause:lack:guess:2 clause:note-guest:guess:3 clause:phrase:0
clause:phrase:2 clause:phrase:4 clause:phrase:5 clause:report-oven:frame:3 clause:report-oven:frame:4
clause:report-setup:frame:4 clause:report-setup:guess:3 clause:report-setup:phrase:2 clause:report-setup:phrase:3
clause:report-trouble:frame:6 clause:report-trouble:phrase:5 clause:report-trouble:phrase:6
clause:resume:phrase:7 clause:running-behind:guess:2 clause:running-behind:phrase:3 clause:set-serving-time:guess:5
clause:shift-serving:phrase:1 clause:undo:guess:3 cover:add-hands:2 cover:ask-next:3 cover:ask-safety:0
cover:ask-safety:3 cover:ask-temperature:3 cover:correct:3 cover:drop-dish:3 cover:help:3 cover:phrase:2
cover:report-guests:3 cover:running-behind:1 cover:shift-serving:0 cover:shift-serving:2 empty0
empty:ask-how:2 empty:ask-shopping:3 empty:ask-substitute:3 empty:ask-why:2 empty:best2 empty:best4
empty:cancel-timer:2 empty:emergency:4 empty:help:2 empty:note-guest:1 empty:repeat:3 empty:report-not-done:4
empty:talk4 empty:undo:5 empty:words1 expecting:doneness:set-doneness expecting:roast:describe-roast
first:affirm first:ask-shopping first:ask-substitute first:cook-away first:help first:resume
first:set-guests for:ask-status>ask-next for:ask-substitute>ask-amount for:report-done>ask-safety
for:report-not-done>deny for:report-not-done>skip-step for:report-out>report-started for:report-reading>set-guests
gained:affirm gained:ask-amount gained:ask-guests gained:ask-status gained:correct gained:have
gained:phrase:1 gained:report-not-done gained:report-setup least2:many1 least6:many1 least7
left0:many1 left1 left3:many2 left5:many2 left:numbers0 lost:ask-next lost:ask-plan lost:ask-safety
lost:cancel-timer lost:choose many0:clauses2 many1:clauses1 many1:long1 many1:long3 many3 mood:intention:add-dish
mood:negative:cook-away mood:negative:report-oven mood:question:cook-away mood:question:help
mood:statement:add-hands mood:statement:pause mood:statement:quiet mood:statement:report-reading
mood:statement:set-doneness mood:statement:set-serving-time mood:story:quiet mood:story:report-guests
mood:story:report-reading mood:story:running-behind mood:story:set-timer mood:story:shift-serving
slots:add-dish:dish slots:add-hands:does,who slots:help: slots:lack:thing slots:report-oven:temperature
slots:set-doneness:doneness slots:set-serving-time:of,time stage::affirm stage::choose stage::deny
stage::drop-dish stage::repeat stage::report-oven stage::report-started stage::report-trouble
stage::set-timer stage:carve:report-guests stage:prep:ask-how stage:prep:ask-safety stage:rest:choose
talk:repeat text:add-hands:1 text:ask:2 text:choose:7 text:deny:3 text:emergency:2 text:guess:3
text:guess:7 text:phrase:2 text:quiet:5 text:repeat:2 text:report-reading:3 text:set-doneness:7
text:set-serving-time:3 text:set-timer:4 then:lack>report-trouble then:note-guest>deed then:report-done>note-guest
then:report-done>report-setup then:report-not-done>report-done then:report-not-done>report-out
then:report-out>set-doneness then:report-oven>report-started then:report-reading>correct then:report-reading>set-guests
then:report-started>report-setup then:report-trouble>cancel-timer then:set-doneness>report-reading
then:set-doneness>set-serving-time then:set-guests>ask-next then:set-serving-time>describe-roast
then:set-serving-time>set-serving-time then:set-timer>ask-temperature then:watch>lack then:watch>report-started
without:add-dish without:ask-time-left without:describe-roast without:note-guest:phrase:4 without:report-not-done:phrase:2
without:report-oven without:report-reading without:report-reading:frame:5 without:report-trouble
without:running-behind:frame:6 without:set-guests
1 =ask-how:guess =ask-next:guess =ask-shopping =ask-status:guess =ask-substitute:frame =choose:guess
=correct:across =describe-roast:guess =drop-dish:guess =note-guest =note-guest:guess =pause:guess
=repeat:guess =report-trouble:frame =report-trouble:guess =resume =running-behind =set-doneness:phrase
=set-serving-time =shift-serving =start-over =undo clause:add-hands:phrase:2 clause:ask:phrase:4
clause:ask:phrase:7 clause:choose:phrase:7 clause:correct:across:2 clause:deed:phrase:8 clause:describe-roast:phrase:3
clause:describe-roast:phrase:7 clause:drop-dish:frame:3 clause:drop-dish:guess:3 clause:guess:6
clause:guess:7 clause:note-guest:phrase:1 clause:report-guests:frame:3 clause:report-guests:guess:7
clause:report-guests:phrase:7 clause:report-oven:guess:5 clause:report-reading:frame:2 clause:report-reading:guess:8
clause:report-reading:phrase:3 clause:report-reading:phrase:7 clause:report-setup:frame:2 clause:report-setup:guess:7
clause:report-trouble:frame:5 clause:report-trouble:phrase:1 clause:report-trouble:phrase:4
clause:resume:frame:2 clause:set-timer:frame:4 clause:set-timer:frame:5 clause:set-units:guess:4
cover:add-hands:1 cover:ask-guests:2 cover:ask-options:3 cover:ask-plan:3 cover:ask-shopping:3
cover:cancel-timer:3 cover:describe-roast:2 cover:report-not-done:3 cover:resume:3 cover:set-doneness:3
cover:start-over:3 cover:watch:3 empty:acknowledge:1 empty:add-hands:6 empty:ask-how:4 empty:ask-safety:2
empty:best3 empty:choose:5 empty:describe-roast:4 empty:lack:7 empty:report-done:1 empty:report-started:4
empty:report-started:5 empty:running-behind:2 empty:set-doneness:7 empty:set-doneness:8 empty:set-guests:1
empty:set-guests:6 empty:shift-serving:3 empty:shift-serving:5 empty:skip-step:4 empty:talk3
empty:words3 expecting:step:ask-next first:running-behind first:set-method for:ask-how>add-dish
for:report-done>report-started for:report-guests>report-done for:report-started>add-dish for:report-started>report-trouble
gained:frame:6 gained:phrase:0 gained:phrase:8 gained:report-guests least0:many1 least1:many1
least3 least4 least5 least5:many1 least6 left4:many3 lost:add-hands lost:repeat many0:long1
many0:long2 many0:long3 many2:clauses2 many4:long5 mean0 mean4 mood:intention:report-trouble
mood:intention:shift-serving mood:negative:set-serving-time mood:question:quiet mood:request:drop-dish
mood:statement:set-units mood:story:add-hands mood:story:affirm mood:story:resume slots:ask-shopping:
slots:ask-temperature:about slots:cancel-timer:label slots:describe-roast:boneless,cut,weight,weightUnit
slots:note-guest:need,value,who slots:note-guest:need,who slots:report-done:step slots:report-oven:minutesAgo,temperature
slots:resume: slots:set-doneness:temperature slots:shift-serving:minutes slots:start-over:
slots:undo: stage::add-dish stage::correct stage:hold:shift-serving stage:low-roast:report-reading
stage:low-roast:shift-serving stage:preheat:cook-away stage:rest:ask-status stage:rest:report-setup
stage:rest:report-started stage:rest:report-trouble talk:ask-options talk:best6 talk:best8
talk:found2 talk:frame:1 talk:likely8 talk:long1 talk:long2 talk:long3 text:ask:5 text:frame:6
text:frame:8 text:phrase:3 text:report-oven:2 text:report-trouble:0 text:report-trouble:6 text:set-doneness:0
text:set-doneness:3 text:set-timer:2 text:set-units:3 text:shift-serving:3 text:skip-step:3
text:skip-step:5 text:watch:7 then:add-hands>drop-dish then:drop-dish>report-started then:note-guest>set-serving-time
then:report-out>running-behind then:report-oven>deed then:report-oven>lack then:report-reading>ask-options
then:report-started>ask-next then:report-trouble>report-reading then:report-trouble>set-timer
then:set-serving-time>report-not-done then:set-serving-time>shift-serving then:set-timer>report-out
without:ask-next:phrase:0 without:ask-why:phrase:6 without:correct without:report-out:phrase:3
without:report-started:frame:5 without:report-started:phrase:5
2 =add-hands =ask-how =ask-temperature =ask-time-left =ask-time-left:phrase =cook-away =repeat
=repeat:frame =report-oven:frame =report-reading:phrase =report-started:phrase =report-trouble
=set-doneness =set-timer acts:talk6 breath6:false clause:across:3 clause:add-dish:frame:1 clause:add-hands:phrase:7
clause:ask:frame:2 clause:ask:frame:4 clause:ask:guess:4 clause:ask:phrase:1 clause:correct:across:0
clause:correct:across:8 clause:deed:guess:7 clause:describe-roast:phrase:2 clause:drop-dish:guess:4
clause:report-guests:frame:4 clause:report-guests:phrase:2 clause:report-not-done:guess:4 clause:report-not-done:guess:7
clause:report-not-done:phrase:0 clause:report-reading:frame:4 clause:report-reading:phrase:2
clause:report-setup:phrase:0 clause:report-setup:phrase:1 clause:report-trouble:frame:2 clause:report-trouble:phrase:0
clause:resume:guess:3 clause:set-method:frame:3 clause:set-method:guess:3 clause:set-serving-time:phrase:8
clause:shift-serving:guess:5 clause:shift-serving:guess:7 clause:skip-step:phrase:2 cover:add-hands:3
cover:ask-why:3 cover:cancel-timer:2 cover:quiet:0 cover:repeat:0 cover:report-guests:0 cover:report-not-done:2
cover:report-setup:0 cover:report-setup:3 cover:report-trouble:3 cover:running-behind:3 cover:set-serving-time:3
cover:set-units:3 empty:acknowledge:3 empty:ask-guests:1 empty:ask-options:2 empty:ask-plan:3
empty:ask-plan:4 empty:ask-why:1 empty:best6 empty:pause:0 empty:report-not-done:1 empty:report-not-done:2
empty:set-timer:2 empty:talk5 empty:talk7 empty:watch:4 first:add-dish first:ask-amount first:set-serving-time
first:set-units first:start-over for:add-dish>report-done for:ask-status>ask-how for:ask-status>ask-temperature
for:note-guest>set-doneness for:report-oven>report-setup for:report-started>report-reading
for:report-trouble>report-setup for:set-doneness>note-guest for:set-serving-time>note-guest
for:set-timer>cancel-timer gained:frame:2 gained:frame:4 gained:report-done gained:set-doneness
gained:set-units how:less how:stop least2:many3 least3:many1 left0:many2 left2:many1 lost1:gained1
lost3:gained1 lost:affirm lost:have many0:clauses1 many1:long2 many2:long0 mean5 mood:intention:cook-away
mood:negative:deny mood:negative:quiet mood:question:set-timer mood:question:set-units mood:request:pause
mood:request:set-method mood:statement:correct mood:statement:note-guest mood:statement:report-guests
slots:ask-amount:ingredient slots:ask-temperature:temperature slots:ask-temperature:when slots:describe-roast:boneless,weight,weightUnit
slots:repeat: slots:report-reading:temperature,unit slots:report-setup:fan stage::ask-next
stage::set-guests stage:carve:ask-how stage:low-roast:correct stage:planning:report-setup stage:preheat:report-trouble
stage:prep:add-hands stage:prep:choose stage:prep:pause stage:rest:set-timer talk:ask-how talk:best0
talk:courtesy talk:drop-dish talk:expecting: talk:guess:6 talk:likely3 talk:phrase:3 talk:report-not-done
talk:report-setup text:across:3 text:choose:4 text:cook-away:4 text:correct:5 text:correct:6
text:deed:3 text:describe-roast:1 text:describe-roast:8 text:guess:4 text:help:3 text:lack:7
text:note-guest:1 text:note-guest:5 text:quiet:4 text:report-guests:3 text:report-oven:4 text:report-setup:7
text:report-trouble:4 text:report-trouble:7 text:shift-serving:5 text:shift-serving:7 then:add-dish>add-dish
then:ask-time-left>ask-temperature then:deed>lack then:deed>set-doneness then:deed>shift-serving
then:report-done>set-doneness then:report-guests>report-started then:report-reading>deed then:report-reading>report-guests
then:report-trouble>deed then:report-trouble>report-out then:report-trouble>report-oven then:set-guests>deed
then:shift-serving>report-not-done twice:add-dish without:add-hands:phrase:6 without:describe-roast:phrase:2
without:report-done:phrase:7 without:report-guests without:report-out:guess:5 without:report-started
3 =ask-safety:phrase =drop-dish:phrase =emergency =emergency:guess =help:guess =lack:frame
=set-timer:phrase =set-units =set-units:phrase =skip-step:frame acts:talk7 clause:across:2
clause:add-dish:guess:7 clause:affirm:phrase:3 clause:cancel-timer:phrase:6 clause:cook-away:guess:4
clause:cook-away:guess:6 clause:deed:phrase:1 clause:deny:phrase:6 clause:frame:4 clause:lack:guess:6
clause:note-guest:phrase:4 clause:pause:guess:2 clause:phrase:6 clause:report-guests:phrase:1
clause:report-oven:frame:5 clause:report-oven:guess:3 clause:report-reading:phrase:0 clause:report-setup:guess:2
clause:report-setup:guess:6 clause:running-behind:guess:7 clause:set-doneness:frame:5 clause:set-guests:frame:6
clause:set-guests:phrase:6 clause:set-timer:guess:6 clause:set-timer:phrase:5 clause:shift-serving:frame:5
clause:skip-step:frame:2 clause:undo:across:5 clause:undo:across:6 cover:ask-amount:2 cover:ask-substitute:1
cover:ask-time-left:3 cover:choose:1 cover:choose:3 cover:cook-away:1 cover:cook-away:3 cover:describe-roast:0
cover:drop-dish:1 cover:emergency:3 cover:set-method:2 cover:set-units:2 cover:shift-serving:3
empty:affirm:5 empty:ask-next:3 empty:ask-plan:0 empty:choose:1 empty:choose:4 empty:courtesy:4
empty:drop-dish:2 empty:pause:6 empty:report-guests:1 empty:report-guests:4 empty:report-out:0
empty:report-out:3 empty:report-oven:0 empty:report-trouble:0 empty:report-trouble:3 empty:resume:8
empty:running-behind:1 empty:set-units:3 empty:skip-step:2 expecting:step:report-out first:ask-options
first:ask-plan first:correct first:repeat first:report-setup first:report-started first:report-trouble
for:add-dish>add-hands for:ask-how>report-trouble for:ask-temperature>report-oven for:cook-away>running-behind
for:deny>affirm for:lack>report-trouble for:report-done>report-oven for:report-not-done>ask-why
for:report-not-done>drop-dish for:report-reading>set-doneness for:report-setup>report-out for:report-started>add-hands
for:report-trouble>drop-dish gained:cook-away gained:drop-dish gained:emergency gained:guess:4
gained:phrase:2 how:whole guessed lost:ask-amount lost:phrase:0 lost:report-done many0 many0:long5
many4:clauses4 many4:long3 mood:intention:set-serving-time mood:negative:set-units mood:question:shift-serving
mood:request:report-oven mood:statement:running-behind mood:statement:watch mood:story:add-dish
slots:ask-how:topic slots:ask-status:about slots:ask-substitute:ingredient slots:emergency:kind
slots:set-serving-time:time stage::ask-why stage:carve:report-not-done stage:hold:quiet stage:planning:ask-shopping
stage:planning:note-guest stage:planning:set-guests stage:preheat:ask-time-left stage:preheat:report-oven
stage:prep:ask-temperature stage:put-away:report-done stage:rest:ask-slice talk talk:across:0
talk:correct talk:long5 talk:stage:put-away text:across:2 text:add-dish:4 text:add-hands:0
text:describe-roast:4 text:frame:7 text:guess:5 text:guess:6 text:report-guests:5 text:report-not-done:7
text:report-oven:5 text:report-setup:4 text:running-behind:7 text:set-guests:4 text:set-serving-time:8
text:skip-step:2 text:watch:5 then:add-dish>set-serving-time then:cook-away>set-serving-time
then:deed>drop-dish then:note-guest>drop-dish then:report-done>add-dish then:report-done>ask-how
then:report-not-done>lack then:report-out>describe-roast then:report-oven>ask-status then:report-oven>ask-time-left
then:report-oven>report-out then:report-oven>set-timer then:report-reading>ask-next then:report-started>cook-away
then:report-started>report-guests then:report-started>set-doneness then:running-behind>ask
then:running-behind>shift-serving then:set-guests>add-dish then:set-serving-time>report-started
then:set-timer>ask-time-left then:skip-step>ask-time-left then:watch>shift-serving without:report-out:phrase:7
without:report-setup without:set-guests:phrase:5
4 =ask-amount:guess =ask-how:phrase =ask-options =ask-temperature:phrase =cancel-timer:guess
=cook-away:phrase =report-done:frame =report-reading:guess =report-started:frame =report-trouble:phrase
=set-doneness:guess =watch acts:talk0 clause:across:1 clause:add-hands:frame:7 clause:add-hands:phrase:0
clause:add-hands:phrase:3 clause:add-hands:phrase:6 clause:affirm:guess:5 clause:ask:guess:5
clause:choose:phrase:5 clause:correct:across:1 clause:drop-dish:guess:7 clause:drop-dish:guess:8
clause:drop-dish:phrase:2 clause:drop-dish:phrase:3 clause:note-guest:guess:4 clause:note-guest:phrase:5
clause:quiet:guess:2 clause:repeat:phrase:1 clause:repeat:phrase:3 clause:report-not-done:guess:8
clause:report-not-done:phrase:7 clause:report-oven:frame:1 clause:report-oven:guess:8 clause:report-reading:frame:6
clause:report-reading:phrase:6 clause:report-trouble:guess:7 clause:running-behind:phrase:4
clause:set-doneness:guess:3 clause:set-doneness:phrase:7 clause:set-guests:frame:4 clause:set-serving-time:phrase:6
clause:set-timer:phrase:3 cover:ask-next:1 cover:describe-roast:3 cover:note-guest:3 cover:report-guests:2
cover:report-oven:1 cover:report-reading:3 cover:running-behind:2 empty:acknowledge:5 empty:add-hands:3
empty:ask-options:4 empty:ask-shopping:4 empty:courtesy:0 empty:describe-roast:1 empty:lack:5
empty:pause:2 empty:quiet:1 empty:report-guests:0 empty:report-setup:1 empty:report-setup:3
empty:set-doneness:4 empty:set-method:5 empty:set-units:6 empty:shift-serving:2 empty:talk8
expecting:guests:report-guests expecting:roast:set-guests first:ask-slice first:emergency first:forget-kitchen
first:set-doneness for:add-dish>report-started for:ask-how>ask-next for:ask-plan>set-serving-time
for:ask-status>ask-options for:note-guest>add-dish for:report-not-done>report-oven for:report-out>add-dish
for:report-started>set-timer for:report-trouble>report-oven for:set-method>report-started gained:repeat
many3:clauses3 mood:intention:report-not-done mood:question:add-dish mood:question:ask mood:statement:describe-roast
mood:statement:resume mood:story:lack slots:ask-options: slots:ask-temperature:about,temperature
slots:correct:time slots:report-oven:minutesAgo,state stage::help stage:hold:choose stage:hold:set-timer
stage:planning:ask-options stage:planning:set-units stage:prep:lack stage:prep:running-behind
stage:rest:ask-temperature stage:served:ask-time-left stage:served:report-trouble talk:ask-safety
talk:helper4 talk:likely1 talk:likely2 text:across:1 text:ask:4 text:choose:5 text:correct:0
text:correct:2 text:deed:1 text:deed:8 text:describe-roast:2 text:frame:5 text:note-guest:3
text:phrase:6 text:report-not-done:2 text:report-oven:6 text:report-oven:7 text:report-reading:2
text:report-setup:6 text:running-behind:0 text:set-doneness:5 text:set-method:3 text:set-method:8
text:shift-serving:2 text:start-over:3 then:add-dish>report-setup then:add-hands>deed then:add-hands>report-done
then:add-hands>report-trouble then:drop-dish>ask then:lack>report-oven then:lack>report-started
then:note-guest>set-doneness then:report-done>report-done then:report-not-done>ask-next then:report-out>report-out
then:report-out>report-trouble then:report-oven>report-not-done then:report-reading>cook-away
then:report-setup>report-out then:running-behind>report-not-done then:set-method>deed then:set-method>report-reading
then:set-timer>set-timer then:shift-serving>ask then:watch>ask twice:report-out twice:report-reading
twice:set-timer without:add-dish:phrase:3 without:add-hands without:report-out without:report-trouble:frame:3
without:set-guests:phrase:6 without:shift-serving:phrase:5
5 =add-hands:phrase =ask-next:frame =ask-slice =ask-slice:across =ask-time-left:guess =ask-why:guess
=forget-kitchen =forget-kitchen:across =set-method:phrase =set-serving-time:phrase =start-over:phrase
acts:talk4 clause:add-dish:guess:5 clause:add-hands:across:5 clause:ask:guess:6 clause:choose:phrase:6
clause:cook-away:guess:5 clause:deed:frame:5 clause:deed:frame:8 clause:forget-kitchen:across:2
clause:frame:8 clause:guess:8 clause:help:guess:3 clause:lack:guess:5 clause:note-guest:guess:6
clause:note-guest:guess:8 clause:quiet:phrase:2 clause:quiet:phrase:8 clause:report-reading:frame:3
clause:report-setup:phrase:5 clause:report-trouble:phrase:2 clause:resume:phrase:3 clause:set-doneness:guess:2
clause:set-doneness:phrase:0 clause:set-guests:phrase:8 clause:set-serving-time:phrase:2 clause:set-timer:guess:8
clause:set-units:phrase:6 clause:shift-serving:frame:3 clause:shift-serving:phrase:3 clause:skip-step:frame:3
clause:undo:across:2 clause:watch:across:5 clause:watch:across:8 cover:ask-amount:1 cover:phrase:3
cover:quiet:1 cover:set-guests:3 cover:set-method:1 cover:skip-step:1 empty:add-hands:1 empty:ask-time-left:3
empty:best0 empty:repeat:0 empty:repeat:5 empty:report-out:1 empty:resume:2 empty:running-behind:3
empty:set-guests:3 empty:start-over:5 expecting:choice:affirm expecting:step:report-done first:describe-roast
for:add-hands>drop-dish for:ask-next>set-units for:ask-substitute>ask-status for:ask-time-left>ask-next
for:report-not-done>report-trouble for:report-reading>correct for:report-trouble>correct for:report-trouble>quiet
for:set-serving-time>report-started gained:add-dish gained:frame:0 gained:guess:5 gained:phrase:3
lost0:gained0 lost:guess:4 many2:long6 mood:intention:choose mood:intention:skip-step mood:negative:describe-roast
mood:negative:drop-dish mood:question:report-guests mood:request:cancel-timer mood:request:quiet
mood:statement:deed mood:statement:set-method mood:story:drop-dish slots:ask-slice: slots:ask-why:topic
slots:describe-roast:boneless,cut,prepared,weight,weightUnit slots:describe-roast:bones,cut,weight,weightUnit
slots:describe-roast:frozen slots:describe-roast:startTemperature,startTemperatureUnit slots:forget-kitchen:about
slots:note-guest:need,value slots:watch:temperature stage::ask-options stage::set-serving-time
stage::undo stage:hold:report-done stage:low-roast:ask-why stage:planning:describe-roast stage:planning:forget-kitchen
stage:preheat:ask-temperature stage:prep:note-guest stage:rest:report-guests talk:acknowledge
talk:note-guest text:add-dish:5 text:ask:3 text:drop-dish:4 text:forget-kitchen:2 text:frame:3
text:note-guest:4 text:phrase:4 text:phrase:7 text:phrase:8 text:repeat:5 text:report-oven:0
text:report-trouble:8 text:resume:4 text:resume:5 text:set-units:6 text:skip-step:8 then:add-dish>ask
then:correct>set-serving-time then:deed>describe-roast then:lack>report-done then:note-guest>add-hands
then:note-guest>report-trouble then:report-done>ask-status then:report-done>cook-away then:report-done>watch
then:report-not-done>ask-time-left then:report-not-done>report-oven then:report-out>ask-status
then:report-out>set-serving-time then:report-oven>describe-roast then:report-reading>report-reading
then:report-setup>describe-roast then:report-trouble>cook-away then:running-behind>report-oven
then:set-doneness>report-setup then:set-method>describe-roast then:set-serving-time>drop-dish
twice:report-oven without:report-oven:phrase:5
6 =lack:guess =resume:phrase clause:across:8 clause:add-dish:phrase:5 clause:ask:frame:7 clause:ask:guess:7
clause:cook-away:frame:4 clause:describe-roast:phrase:1 clause:drop-dish:frame:1 clause:drop-dish:frame:2
clause:drop-dish:phrase:4 clause:frame:7 clause:lack:phrase:7 clause:report-guests:phrase:6
clause:report-not-done:phrase:2 clause:report-not-done:phrase:6 clause:report-reading:guess:4
clause:report-trouble:frame:0 clause:resume:phrase:5 clause:set-guests:phrase:0 clause:set-guests:phrase:4
clause:set-serving-time:guess:4 clause:set-units:guess:5 clause:shift-serving:phrase:6 clause:skip-step:phrase:3
clause:undo:frame:4 cover:ask-options:0 cover:ask-shopping:1 cover:lack:3 cover:repeat:1 cover:report-trouble:0
cover:set-doneness:2 cover:set-guests:0 cover:set-units:1 empty:ask-substitute:1 empty:ask-substitute:2
empty:ask-time-left:4 empty:best1 empty:deny:4 empty:repeat:2 empty:repeat:4 empty:report-oven:8
empty:report-trouble:6 empty:set-guests:8 empty:undo:0 empty:undo:6 for:add-dish>ask-amount
for:drop-dish>ask-substitute for:report-started>ask-substitute for:skip-step>lack least6:many2
lost:frame:3 many0:long0 many3:long4 mood:question:report-not-done mood:statement:emergency
mood:statement:lack mood:statement:start-over mood:story:watch slots:cook-away:minutes slots:correct:weight,weightUnit
slots:describe-roast:startTemperature slots:report-guests:count,state slots:report-oven:temperature,unit
slots:report-oven:temperature,which slots:set-guests:change stage::add-hands stage::ask-plan
stage::note-guest stage::pause stage:low-roast:report-not-done stage:prep:resume stage:rest:shift-serving
talk:expecting:doneness talk:expecting:guests talk:expecting:roast talk:helper5 talk:long0
talk:report-oven text:across:8 text:add-hands:8 text:affirm:4 text:ask:7 text:cancel-timer:1
text:drop-dish:0 text:drop-dish:5 text:phrase:5 text:quiet:2 text:report-not-done:4 text:report-reading:5
text:resume:7 text:set-serving-time:4 text:set-units:4 text:set-units:8 text:shift-serving:1
text:skip-step:4 text:start-over:5 then:add-dish>set-guests then:add-hands>cook-away then:ask>set-timer
then:deed>report-oven then:deed>report-reading then:report-done>describe-roast then:report-guests>report-out
then:report-out>cook-away then:report-reading>ask then:report-reading>set-doneness then:report-reading>watch
then:report-setup>ask-time-left then:report-started>ask-substitute then:report-started>ask-time-left
then:report-started>report-not-done then:report-started>report-started then:report-started>shift-serving
then:report-trouble>ask-next then:set-doneness>report-done then:set-serving-time>set-timer
then:shift-serving>report-reading then:skip-step>add-hands then:skip-step>report-started then:undo>add-dish
twice:report-done twice:report-started
7 =add-dish:guess =cook-away:frame =report-guests:frame =report-guests:phrase =report-oven:phrase
=watch:frame clause:add-dish:phrase:3 clause:ask:frame:8 clause:ask:guess:8 clause:ask:phrase:2
clause:cook-away:frame:3 clause:cook-away:frame:8 clause:cook-away:phrase:3 clause:correct:across:5
clause:deed:phrase:3 clause:deed:phrase:7 clause:deny:frame:5 clause:emergency:guess:3 clause:pause:phrase:3
clause:phrase:7 clause:quiet:frame:2 clause:quiet:phrase:5 clause:repeat:frame:2 clause:repeat:phrase:7
clause:report-guests:frame:5 clause:report-not-done:frame:5 clause:report-not-done:guess:5
clause:report-oven:phrase:8 clause:report-reading:guess:7 clause:set-doneness:phrase:1 clause:set-guests:frame:7
clause:set-serving-time:frame:6 clause:set-serving-time:phrase:5 clause:set-units:phrase:4
clause:set-units:phrase:7 clause:shift-serving:frame:4 clause:shift-serving:phrase:4 clause:skip-step:phrase:6
clause:undo:across:4 clause:undo:across:7 clause:watch:across:0 clause:watch:across:4 clause:watch:across:6
clause:watch:frame:4 cover:ask-temperature:2 cover:cook-away:0 cover:pause:1 cover:report-done:0
cover:report-reading:1 cover:set-doneness:0 cover:set-serving-time:2 cover:set-timer:3 empty:ask-plan:5
empty:choose:6 empty:choose:7 empty:correct:1 empty:correct:5 empty:drop-dish:6 empty:help:5
empty:resume:6 empty:set-method:4 expecting:confirmation:affirm expecting:reading:ask-status
expecting:step:report-not-done for:cook-away>report-done for:report-done>ask-substitute for:report-setup>report-started
least5:many3 many2:long4 many3:clauses1 many3:clauses2 mood:question:cancel-timer mood:question:set-serving-time
mood:request:repeat mood:request:resume slots:add-hands:who slots:ask-shopping:about slots:ask-temperature:doneness
slots:correct:bones slots:describe-roast:prepared slots:report-reading:temperature,where slots:report-started:step,time
stage::lack stage:low-roast:ask-time-left stage:low-roast:report-trouble stage:preheat:ask-how
stage:preheat:report-started stage:prep:ask-substitute stage:prep:report-thermometer stage:rest:ask-substitute
stage:rest:undo stage:sear:report-not-done talk:found1 talk:frame:3 text:add-hands:4 text:add-hands:6
text:add-hands:7 text:lack:4 text:quiet:0 text:report-oven:8 text:report-reading:4 text:report-setup:0
text:report-trouble:5 text:set-serving-time:7 text:start-over:6 text:undo:7 then:cook-away>ask-time-left
then:deed>ask then:deed>running-behind then:describe-roast>set-doneness then:note-guest>ask-how
then:report-done>running-behind then:report-oven>report-done then:report-oven>report-oven then:report-reading>add-hands
then:report-reading>report-done then:report-reading>set-timer then:report-reading>shift-serving
then:report-started>skip-step then:set-guests>describe-roast then:set-guests>quiet then:set-guests>report-setup
then:set-method>ask-safety then:set-serving-time>report-trouble then:set-timer>deed then:set-units>report-trouble
then:skip-step>report-setup then:watch>report-oven without:choose without:deny:phrase:6 without:describe-roast:phrase:3
without:report-reading:frame:4 without:report-started:phrase:4
8 =add-hands:across =add-hands:guess =affirm:frame =ask-options:frame =deny:frame =set-guests:phrase
acts:talk5 breath4:true clause:cook-away:frame:7 clause:cook-away:guess:7 clause:deed:frame:1
clause:deed:frame:4 clause:deed:guess:8 clause:lack:frame:3 clause:note-guest:phrase:8 clause:phrase:8
clause:repeat:phrase:8 clause:report-reading:guess:5 clause:report-trouble:phrase:8 clause:resume:phrase:4
clause:set-doneness:phrase:4 clause:set-doneness:phrase:5 clause:set-serving-time:phrase:4
clause:set-timer:guess:4 clause:set-timer:phrase:7 clause:set-units:frame:5 clause:set-units:guess:6
clause:shift-serving:frame:2 clause:shift-serving:frame:7 clause:watch:across:1 clause:watch:across:2
cover:add-dish:2 cover:ask-how:1 cover:frame:1 cover:skip-step:0 cover:start-over:2 empty:ask-amount:4
empty:correct:4 empty:deny:3 empty:pause:3 empty:quiet:3 empty:report-guests:3 empty:report-oven:5
empty:start-over:3 expecting:choice:choose for:ask-how>ask-temperature for:ask-next>add-dish
for:lack>report-not-done for:set-timer>cook-away how:none many0:clauses4 many2:clauses1 mood:intention:set-method
mood:negative:report-trouble slots:ask-guests:about slots:ask-temperature:temperature,unit
slots:correct:count slots:describe-roast:cut,weight,weightUnit slots:report-done:minutesAgo,step
slots:report-oven:mode,temperature,unit slots:report-reading:temperature,thermometer,unit,where
slots:report-setup:pan,rack,shelf slots:report-setup:pan,shelf slots:report-trouble:minutes,trouble
slots:report-trouble:minutesAgo,trouble stage::report-setup stage::shift-serving stage:carve:report-done
stage:low-roast:report-out stage:low-roast:set-guests stage:low-roast:set-timer stage:planning:set-serving-time
stage:preheat:report-setup stage:prep:ask-plan stage:prep:repeat stage:prep:undo stage:rest:ask-next
stage:rest:ask-time-left talk:stage:hold text:deny:5 text:emergency:3 text:lack:8 text:repeat:4
text:repeat:6 text:skip-step:1 text:skip-step:7 text:watch:6 then:add-dish>ask-time-left then:cancel-timer>report-started
then:cook-away>shift-serving then:deed>report-guests then:deed>watch then:report-done>drop-dish
then:report-done>report-guests then:report-out>report-reading then:report-out>set-guests then:report-reading>running-behind
then:report-trouble>ask-why then:report-trouble>report-done then:report-trouble>shift-serving
then:set-guests>ask-substitute then:set-timer>set-guests then:skip-step>lack without:note-guest:phrase:2
without:report-setup:phrase:3
9 =ask-why:frame =describe-roast:frame =report-out:phrase =report-thermometer =report-thermometer:across
=set-units:guess =skip-step:phrase clause:across:5 clause:add-hands:guess:4 clause:ask:frame:5
clause:cancel-timer:guess:6 clause:cook-away:phrase:7 clause:deed:phrase:2 clause:frame:6 clause:lack:phrase:6
clause:note-guest:guess:7 clause:repeat:phrase:6 clause:report-oven:phrase:3 clause:running-behind:frame:6
clause:set-method:phrase:8 clause:skip-step:phrase:4 clause:skip-step:phrase:8 clause:start-over:phrase:5
clause:watch:frame:8 cover:ask-options:2 cover:ask-temperature:1 empty:add-dish:1 empty:choose:3
empty:note-guest:4 empty:repeat:7 empty:set-serving-time:6 expecting:confirmation:deny for:ask-status>ask-time-left
for:report-not-done>report-reading for:set-method>skip-step for:shift-serving>running-behind
helper8 least7:many2 mood:negative:repeat mood:request:skip-step mood:statement:report-not-done
slots:describe-roast:boneless,prepared,weight,weightUnit slots:describe-roast:bones,weight,weightUnit
slots:report-out:time slots:report-setup:fan,pan,rack,shelf slots:report-thermometer:bias stage::cancel-timer
stage::quiet stage::running-behind stage:carve:report-trouble stage:hold:ask-next stage:hold:ask-safety
stage:low-roast:report-oven stage:planning:drop-dish stage:prep:report-setup stage:prep:set-serving-time
stage:rest:ask-how stage:rest:ask-options stage:sear:report-trouble text:across:5 text:add-dish:6
text:add-dish:8 text:cancel-timer:6 text:cook-away:6 text:frame:4 text:have:2 text:set-guests:1
text:set-method:6 text:set-method:7 text:set-serving-time:5 text:start-over:4 text:start-over:7
text:watch:1 text:watch:8 then:deed>add-hands then:deny>correct then:lack>deed then:note-guest>ask-safety
then:note-guest>report-started then:report-not-done>report-reading then:report-out>report-started
then:report-oven>shift-serving then:report-oven>undo then:report-reading>report-out then:report-trouble>ask
then:set-doneness>set-guests then:set-serving-time>set-guests then:set-timer>ask-amount then:set-timer>report-done
then:shift-serving>ask-status then:shift-serving>set-guests without:report-setup:phrase:4 without:report-trouble:guess:6
10 =ask-safety:across =ask-temperature:frame =cancel-timer:phrase =quiet:phrase =set-timer:frame
clause:across:7 clause:add-dish:guess:6 clause:cancel-timer:guess:3 clause:correct:guess:4
clause:deed:frame:6 clause:describe-roast:phrase:5 clause:note-guest:phrase:7 clause:pause:frame:5
clause:report-guests:phrase:8 clause:report-oven:phrase:1 clause:report-reading:phrase:8 clause:report-trouble:guess:8
clause:resume:phrase:6 clause:running-behind:guess:8 clause:set-guests:across:5 clause:set-method:phrase:5
clause:set-timer:phrase:6 clause:set-units:phrase:5 clause:undo:across:8 clause:watch:across:3
clause:watch:frame:7 cover:repeat:2 cover:report-oven:2 empty:add-dish:3 empty:affirm:2 empty:ask-guests:4
empty:ask-why:3 empty:ask-why:5 empty:courtesy:6 empty:report-not-done:3 empty:report-out:2
first:report-thermometer for:ask-next>ask-status for:ask-status>ask-safety for:ask-time-left>ask-status
for:cook-away>cancel-timer for:help>ask-options for:report-started>ask-why for:report-started>report-setup
least6:many3 many2:long5 many3:long6 mood:intention:add-hands mood:negative:cancel-timer mood:negative:running-behind
mood:negative:skip-step mood:request:choose mood:request:set-doneness mood:request:set-units
mood:story:repeat slots:correct:minutesAgo slots:report-setup:oven slots:report-started:minutesAgo,step
stage::ask-shopping stage:low-roast:report-guests stage:prep:drop-dish stage:prep:report-not-done
talk:ask-amount talk:expecting:reading talk:guess:4 talk:stage:served text:across:7 text:ask:8
text:cancel-timer:3 text:deed:4 text:describe-roast:5 text:drop-dish:8 text:note-guest:6 text:report-trouble:1
text:resume:6 text:resume:8 text:running-behind:6 text:set-method:5 text:set-timer:7 text:set-units:7
text:shift-serving:6 text:undo:8 then:deed>cook-away then:deed>report-not-done then:describe-roast>set-guests
then:drop-dish>lack then:report-done>report-not-done then:report-out>report-oven then:report-reading>cancel-timer
then:report-setup>add-hands then:report-setup>lack then:report-trouble>ask-options then:set-guests>lack
then:set-guests>report-trouble then:set-guests>set-doneness then:set-guests>set-serving-time
then:shift-serving>ask-time-left then:shift-serving>watch then:watch>ask-status without:add-dish:phrase:1
without:report-done:frame:4 without:report-out:phrase:4 without:report-reading:frame:3
11 =ask-options:phrase =report-guests:across =undo:across clause:across:4 clause:cook-away:phrase:5
clause:cook-away:phrase:6 clause:deed:across:0 clause:describe-roast:guess:4 clause:have:phrase:2
clause:lack:phrase:8 clause:note-guest:frame:7 clause:report-guests:frame:2 clause:report-guests:frame:7
clause:report-not-done:frame:3 clause:report-reading:phrase:5 clause:running-behind:phrase:5
clause:set-method:phrase:7 clause:set-timer:phrase:2 clause:watch:guess:4 clause:watch:guess:7
cover:ask-substitute:2 cover:cancel-timer:1 cover:skip-step:2 empty:have:1 empty:help:6 empty:lack:2
empty:quiet:2 empty:report-done:2 empty:start-over:2 expecting:confirmation:correct for:ask-plan>add-dish
for:ask-plan>set-guests for:correct>set-serving-time for:drop-dish>have for:pause>cook-away
for:report-oven>set-method left1:many3 mood:intention:note-guest mood:request:cook-away slots:describe-roast:bones
slots:report-setup:pan,rack slots:report-setup:rings slots:report-setup:shelf stage::emergency
stage::resume stage::set-doneness stage:low-roast:ask-status stage:low-roast:ask-temperature
stage:low-roast:cook-away stage:planning:ask-guests stage:prep:report-done stage:rest:report-reading
stage:sear:report-done stage:sear:skip-step talk:expecting:serving-time talk:set-doneness text:across:4
text:choose:6 text:cook-away:8 text:correct:4 text:deed:5 text:deny:6 text:lack:6 text:repeat:8
text:report-not-done:8 text:report-oven:3 text:set-doneness:6 text:watch:0 text:watch:4 then:add-dish>running-behind
then:add-hands>report-reading then:lack>ask-why then:lack>describe-roast then:lack>report-reading
then:report-done>report-oven then:report-oven>report-guests then:report-reading>ask-why then:report-reading>note-guest
then:set-timer>ask-status then:set-timer>shift-serving then:shift-serving>set-timer then:skip-step>note-guest
then:watch>report-trouble without:report-reading:guess:6
12 clause:across:6 clause:add-dish:frame:7 clause:choose:frame:8 clause:correct:across:3 clause:describe-roast:phrase:8
clause:drop-dish:frame:4 clause:lack:phrase:4 clause:report-trouble:frame:1 clause:running-behind:frame:8
clause:set-serving-time:frame:5 clause:set-timer:frame:2 clause:set-timer:frame:6 clause:set-timer:phrase:8
clause:skip-step:phrase:7 clause:start-over:phrase:7 empty:set-doneness:2 empty:set-guests:4
empty:set-serving-time:3 empty:set-units:5 for:lack>ask-substitute least8:many2 lost:frame:0
mood:question:report-reading mood:question:skip-step mood:request:set-serving-time mood:request:set-timer
slots:ask-guests:about,who slots:set-timer:label,minutes stage:low-roast:watch stage:planning:help
stage:put-away:ask-safety stage:served:ask-how stage:served:ask-safety text:across:6 text:add-dish:7
text:cancel-timer:7 text:cook-away:7 text:correct:7 text:lack:5 text:note-guest:7 text:note-guest:8
text:report-not-done:5 text:set-guests:6 text:undo:6 then:deed>set-guests then:drop-dish>set-doneness
then:report-done>set-guests then:report-not-done>ask-why then:report-not-done>watch then:report-out>ask-time-left
then:report-reading>ask-how then:report-trouble>report-guests then:running-behind>deed then:set-timer>ask
then:shift-serving>report-out then:shift-serving>report-oven then:skip-step>ask then:skip-step>shift-serving
13 =ask-shopping:phrase =report-started:across clause:add-dish:frame:5 clause:add-dish:phrase:7
clause:correct:across:7 clause:lack:guess:7 clause:report-not-done:phrase:8 clause:report-oven:frame:7
clause:report-oven:phrase:7 clause:report-setup:phrase:6 clause:report-trouble:frame:7 clause:set-doneness:phrase:8
clause:set-guests:phrase:1 clause:set-serving-time:frame:4 clause:skip-step:frame:5 cover:deny:1
empty:ask-temperature:2 empty:correct:3 empty:correct:6 empty:resume:5 empty:undo:1 for:ask-next>shift-serving
for:repeat>note-guest for:set-serving-time>cook-away mood:story:note-guest slots:report-oven:temperature,time
stage::describe-roast stage::set-method stage::set-units stage:planning:set-doneness stage:planning:set-method
stage:rest:report-not-done talk:unclear text:report-reading:1 text:report-setup:8 text:running-behind:5
text:set-timer:8 text:set-units:5 text:shift-serving:8 then:cook-away>deed then:drop-dish>note-guest
then:report-guests>report-oven then:report-reading>ask-status then:set-guests>shift-serving
then:set-timer>ask-how then:set-timer>report-reading then:skip-step>ask-next then:watch>set-timer
14 =drop-dish:frame =set-guests:across =shift-serving:frame asked:true clause:add-dish:phrase:6
clause:add-hands:guess:8 clause:cancel-timer:phrase:8 clause:lack:frame:6 clause:note-guest:phrase:6
clause:report-guests:frame:6 clause:report-guests:phrase:4 clause:report-oven:frame:6 clause:report-setup:frame:6
clause:set-doneness:frame:3 clause:set-doneness:phrase:6 clause:set-method:frame:2 clause:set-timer:frame:7
clause:shift-serving:frame:6 clause:undo:across:3 clause:watch:frame:5 cover:ask-plan:1 cover:report-guests:1
empty:cook-away:4 empty:pause:4 empty:pause:5 empty:set-units:4 for:set-guests>add-hands gained:guess:8
mood:request:add-dish mood:story:cook-away slots:ask-plan:about slots:ask-time-left:about slots:cancel-timer:minutes
slots:skip-step:step stage::ask-amount stage:planning:add-dish stage:planning:ask-amount stage:prep:set-doneness
stage:rest:skip-step stage:sear:report-started text:choose:8 text:deny:7 text:deny:8 text:describe-roast:7
text:drop-dish:6 text:pause:5 text:running-behind:4 text:running-behind:8 text:set-doneness:8
then:deed>cancel-timer then:describe-roast>note-guest then:describe-roast>report-started then:drop-dish>add-dish
then:report-oven>set-doneness then:report-reading>ask-temperature then:report-trouble>describe-roast
then:report-trouble>running-behind then:set-guests>drop-dish then:set-units>set-serving-time
then:shift-serving>report-done
15 =ask-substitute:phrase =running-behind:frame clause:add-hands:guess:7 clause:add-hands:phrase:4
clause:ask:phrase:8 clause:cancel-timer:phrase:4 clause:cancel-timer:phrase:5 clause:choose:guess:6
clause:cook-away:frame:6 clause:correct:across:6 clause:drop-dish:phrase:5 clause:quiet:phrase:7
clause:report-setup:phrase:8 clause:running-behind:phrase:6 clause:set-guests:phrase:5 clause:shift-serving:guess:8
clause:shift-serving:phrase:8 cover:report-out:2 cover:set-method:0 left5:many3 mood:intention:set-doneness
slots:ask-amount:guests,ingredient slots:ask-safety:about,temperature slots:report-oven:bias
slots:report-reading:temperature,thermometer slots:report-reading:temperature,time,unit slots:report-trouble:step,trouble
slots:set-units:temperature,weight stage:planning:ask-safety stage:rest:ask-safety talk:stage:low-roast
text:cook-away:5 text:pause:7 text:pause:8 text:report-guests:8 text:report-setup:5 text:set-timer:6
text:set-units:2 then:note-guest>ask then:note-guest>ask-options then:report-not-done>ask then:report-setup>ask
16 =set-serving-time:frame breath6:true clause:add-hands:frame:6 clause:report-not-done:frame:6
clause:report-trouble:phrase:3 cover:ask-safety:1 many0:clauses5 slots:report-out:minutesAgo
stage:sear:report-oven text:cancel-timer:5 text:drop-dish:7 text:pause:6 text:report-guests:6
text:report-guests:7 then:cook-away>report-trouble then:report-guests>ask then:shift-serving>set-serving-time
17 =ask-guests:phrase =watch:across clause:ask:frame:6 clause:quiet:phrase:4 clause:set-doneness:guess:6
clause:set-serving-time:phrase:7 clause:shift-serving:phrase:7 clause:skip-step:frame:4 cover:drop-dish:2
empty:help:3 least7:many3 slots:correct:step,time slots:report-oven:mode,temperature slots:running-behind:factor
stage::ask-safety stage:planning:have stage:planning:start-over stage:prep:skip-step text:repeat:7
then:cook-away>report-reading then:deed>set-timer then:report-trouble>report-not-done then:shift-serving>report-trouble
18 clause:drop-dish:phrase:6 clause:report-not-done:frame:7 clause:report-oven:phrase:2 helper9
slots:report-reading:temperature,unit,where slots:running-behind:minutes talk:helper2 text:set-guests:8
then:report-reading>report-oven then:report-started>set-timer
19 =ask-safety:frame breath5:true slots:report-reading:temperature,time then:report-guests>report-trouble
then:report-oven>report-reading then:set-timer>report-trouble then:set-units>ask
20 clause:deed:frame:7 expecting:step:skip-step text:report-reading:7 then:report-reading>report-not-done
21 clause:cook-away:phrase:8 clause:set-serving-time:frame:3 slots:report-not-done:step text:report-not-done:6
then:report-oven>ask-next
23 helper10 mood:request:shift-serving
24 without:report-reading:frame:1
25 talk:helper3
26 slots:report-reading:minutesAgo,temperature
27 helper11
34 talk:helper1
41 talk:helper0`);
