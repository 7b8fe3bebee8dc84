/** Learnt from the rules half of the corpus by scripts/train-hypotheses.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const hypothesisWeights: Weights = weightsFrom(`
-40 helper1 helper2 helper3
-38 talk:helper10
-33 helper0 talk:helper9
-32 slots:ask-amount:
-31 helper4 talk:helper11
-29 for:drop-dish>lack
-27 without:report-reading:frame:6
-26 slots:ask-substitute: stage:prep:report-guests
-25 for:note-guest>set-serving-time stage:low-roast:add-dish stage:low-roast:add-hands without:report-done:phrase:5
without:report-reading:phrase:6
-24 clause:affirm:guess:3 clause:set-serving-time:guess:2 lost:running-behind stage:low-roast:help
stage:low-roast:set-doneness stage:planning:ask-how stage:prep:ask-status then:ask>ask
-23 clause:start-over:guess:2 stage:prep:help stage:prep:report-out without:report-done:phrase:4
without:report-trouble:phrase:3 without:report-trouble:phrase:6 without:set-guests:phrase:4
-22 empty:ask-guests:3 for:add-dish>drop-dish for:report-setup>report-trouble lost:ask-options
slots:correct:was text:repeat:0 then:ask>cook-away without:report-trouble:phrase:2
-21 clause:add-dish:phrase:0 clause:add-dish:phrase:1 clause:report-reading:guess:3 mood:negative:report-guests
mood:negative:report-reading stage:planning:ask-next stage:planning:report-guests stage:planning:report-started
text:emergency:1 then:ask>drop-dish without:report-trouble:phrase:5 without:set-doneness:phrase:4
-20 clause:correct:guess:5 clause:emergency:guess:2 for:report-trouble>report-done for:shift-serving>set-timer
stage:low-roast:ask-substitute stage:low-roast:running-behind then:ask>add-dish then:ask>set-doneness
then:ask>set-serving-time without:add-dish:phrase:4 without:add-dish:phrase:5 without:ask-next
-19 clause:cancel-timer:guess:2 clause:choose:guess:3 clause:set-timer:guess:3 empty:ask-next:4
for:ask-how>ask-status for:ask-temperature>set-doneness for:report-done>ask-status for:report-started>drop-dish
for:report-started>report-guests lost:ask-temperature mood:question:pause mood:story:report-oven
stage:planning:correct stage:planning:report-done stage:rest:add-dish then:ask-why>report-out
then:correct>deed then:correct>report-started then:report-oven>set-serving-time twice:ask-temperature
twice:set-guests without:add-hands:phrase:3 without:correct:across:0 without:lack without:report-not-done:phrase:4
without:report-oven:phrase:6 without:set-serving-time:phrase:6
-18 clause:report-oven:frame:2 empty:ask-why:4 empty:drop-dish:3 empty:report-done:8 empty:report-reading:5
empty:report-setup:6 empty:skip-step:5 for:ask-safety>ask-status for:ask-temperature>report-reading
for:note-guest>add-hands for:set-guests>set-serving-time lost:ask-shopping lost:frame:5 mood:intention:report-guests
mood:request:deed mood:story:deed mood:story:deny slots:running-behind: stage:low-roast:ask-safety
stage:low-roast:skip-step stage:planning:report-not-done stage:planning:report-trouble stage:planning:skip-step
stage:prep:quiet stage:rest:set-doneness then:ask>correct then:ask>lack then:ask>report-guests
then:ask>shift-serving then:report-guests>report-done without:add-hands:phrase:5 without:ask-plan
without:ask-time-left:phrase:4 without:report-oven:phrase:3 without:report-oven:phrase:4 without:report-reading:phrase:3
without:report-reading:phrase:4 without:report-trouble:frame:4
-17 =add-hands:frame clause:choose:guess:2 clause:deny:phrase:4 clause:note-guest:phrase:0
clause:pause:guess:3 clause:report-guests:guess:2 clause:report-not-done:frame:0 clause:report-not-done:guess:2
empty:add-dish:0 empty:ask-how:3 empty:ask-safety:4 for:ask-plan>ask-why for:ask-substitute>add-dish
for:ask-why>ask-how for:cook-away>shift-serving for:report-done>ask-next for:report-done>skip-step
for:report-guests>report-started for:report-oven>ask-temperature for:report-started>ask-status
gained:phrase:7 mood:intention:quiet mood:question:add-hands mood:question:drop-dish mood:story:set-serving-time
slots:correct:minutes stage:planning:ask-substitute stage:planning:deny talk:stage:planning
then:ask-temperature>ask-temperature then:ask>set-units then:correct>report-reading then:correct>set-guests
then:report-guests>shift-serving twice:report-trouble without:ask-amount without:describe-roast:phrase:4
without:report-guests:phrase:6 without:report-not-done:frame:2 without:report-oven:frame:5
without:report-reading:frame:7 without:report-reading:phrase:5 without:report-setup:phrase:6
without:set-doneness:phrase:5 without:set-method without:set-timer:phrase:4
-16 clause:pause:frame:2 clause:repeat:guess:2 clause:set-guests:guess:2 clause:shift-serving:guess:6
clause:shift-serving:phrase:2 empty:add-hands:0 empty:ask-safety:3 empty:ask-time-left:0 empty:lack:6
empty:set-method:3 empty:shift-serving:4 for:add-hands>report-started for:ask-amount>ask-time-left
for:ask-plan>ask-next for:ask-why>report-out for:cook-away>set-serving-time for:note-guest>set-guests
for:report-not-done>correct for:report-not-done>shift-serving for:report-out>drop-dish for:report-oven>report-done
for:report-started>ask-next for:report-trouble>ask-status for:report-trouble>emergency for:set-guests>correct
for:set-timer>report-reading for:skip-step>report-not-done gained:frame:5 lost:undo lost:watch
many4:clauses3 mood:negative:set-timer mood:request:report-guests mood:story:report-not-done
slots:ask-why: slots:report-done: stage:hold:set-guests stage:planning:report-reading stage:prep:cook-away
stage:prep:report-trouble stage:prep:set-timer then:add-hands>set-guests then:ask>deed then:ask>report-reading
then:ask>report-setup then:ask>report-trouble then:describe-roast>add-dish then:describe-roast>report-done
then:drop-dish>deed then:set-guests>set-guests without:add-dish:frame:2 without:ask-status
without:cook-away without:report-done:phrase:8 without:report-guests:phrase:4 without:report-setup:phrase:5
without:report-started:frame:6 without:set-doneness:phrase:3 without:set-serving-time:phrase:4
-15 =shift-serving:across clause:deed:frame:0 clause:deny:guess:2 clause:quiet:guess:4 clause:resume:guess:2
cover:report-started:0 empty:cancel-timer:3 empty:cook-away:1 empty:note-guest:5 empty:report-out:6
empty:watch:3 expecting:guests:correct for:ask-next>ask-shopping for:ask-temperature>ask-safety
for:ask-time-left>ask-how for:cook-away>pause for:cook-away>set-timer for:report-guests>report-out
for:report-guests>set-guests for:report-not-done>add-dish for:report-not-done>pause for:report-out>report-done
for:report-reading>ask-status for:report-reading>report-started for:report-trouble>ask-options
for:set-doneness>report-done for:set-doneness>report-out gained:describe-roast gained:frame:1
lost:phrase:6 mood:intention:drop-dish mood:story:pause slots:add-hands: slots:report-not-done:
stage:carve:set-doneness stage:low-roast:ask-shopping stage:prep:ask-shopping stage:prep:shift-serving
stage:prep:start-over stage:rest:ask-amount stage:sear:emergency text:affirm:1 text:pause:3
then:ask-substitute>ask-substitute then:cook-away>set-timer then:drop-dish>set-guests then:lack>ask-options
then:report-out>report-done then:report-oven>report-setup then:report-trouble>report-trouble
then:set-doneness>report-trouble then:set-method>skip-step then:set-serving-time>report-reading
then:skip-step>skip-step twice:ask-substitute twice:skip-step without:add-dish:phrase:0 without:ask-next:phrase:7
without:ask-plan:phrase:5 without:cancel-timer without:note-guest:phrase:5 without:report-trouble:phrase:1
without:set-guests:phrase:3 without:shift-serving:phrase:4 without:start-over
-14 =ask-why:phrase breath2:true clause:choose:phrase:2 clause:describe-roast:guess:8 clause:lack:frame:2
clause:lack:phrase:0 clause:report-reading:phrase:1 clause:resume:phrase:2 clause:set-guests:guess:8
empty:add-dish:7 empty:ask-guests:0 empty:ask-how:6 empty:cancel-timer:6 empty:repeat:1 empty:report-setup:5
expecting:doneness:note-guest for:add-hands>report-done for:ask-how>ask-amount for:ask-substitute>lack
for:ask-temperature>report-started for:cook-away>report-reading for:cook-away>report-started
for:describe-roast>report-done for:note-guest>ask-safety for:pause>quiet for:pause>report-guests
for:report-done>report-guests for:report-guests>report-reading for:report-not-done>report-guests
for:report-out>report-setup for:report-out>report-trouble for:report-oven>report-guests for:report-oven>report-reading
for:report-oven>report-trouble for:report-trouble>cook-away for:set-doneness>ask-temperature
for:set-serving-time>set-guests gained:across:0 lost0:gained2 mood:question:choose mood:question:set-method
mood:request:ask mood:story:set-doneness slots:correct: slots:skip-step: stage:hold:report-started
stage:low-roast:describe-roast stage:low-roast:lack stage:planning:ask-temperature stage:planning:ask-why
stage:preheat:set-serving-time stage:prep:deny stage:rest:deny stage:rest:set-guests stage:sear:report-setup
talk:help text:cancel-timer:2 text:deny:1 text:deny:2 then:ask-next>report-out then:ask>report-oven
then:ask>set-guests then:cancel-timer>add-dish then:choose>ask then:correct>correct then:deny>report-done
then:drop-dish>report-out then:note-guest>set-guests then:report-started>add-dish then:set-guests>ask
then:set-guests>ask-amount then:set-guests>correct twice:correct without:ask-next:phrase:4
without:drop-dish:phrase:2 without:lack:phrase:5 without:lack:phrase:7 without:report-guests:phrase:3
without:report-reading:frame:8 without:report-reading:phrase:7 without:report-started:phrase:7
without:set-guests:phrase:7 without:set-serving-time:phrase:5
-13 =cancel-timer:frame asked:false clause:correct:guess:8 clause:drop-dish:guess:5 clause:lack:frame:1
clause:lack:phrase:1 clause:report-guests:frame:1 clause:resume:frame:1 clause:set-serving-time:guess:6
clause:set-serving-time:phrase:1 clause:shift-serving:guess:2 cover:choose:2 cover:lack:1 empty:ask-status:1
empty:ask-status:4 empty:choose:0 empty:describe-roast:5 empty:emergency:1 empty:help:0 empty:report-not-done:5
empty:report-oven:1 empty:report-setup:0 empty:resume:4 empty:set-serving-time:7 expecting:reading:report-out
expecting:step:deny expecting:step:resume for:ask-amount>ask-guests for:ask-guests>ask-status
for:ask-safety>set-doneness for:ask-status>report-done for:ask-temperature>ask-how for:cook-away>report-out
for:lack>add-dish for:repeat>report-oven for:report-not-done>lack for:report-not-done>set-guests
for:report-out>ask-time-left for:report-oven>report-out for:report-trouble>add-dish for:report-trouble>set-doneness
for:set-doneness>set-serving-time for:set-timer>shift-serving for:shift-serving>report-trouble
helper5 helper6 left3:many3 lost:ask-time-left lost:describe-roast lost:phrase:5 lost:phrase:7
many2:clauses5 mood:intention:report-reading mood:question:describe-roast mood:question:repeat
mood:question:report-setup mood:question:start-over mood:question:watch stage:hold:report-out
stage:low-roast:set-method stage:low-roast:set-units stage:planning:ask-time-left stage:put-away:ask-amount
stage:rest:cook-away stage:rest:resume stage:rest:set-serving-time stage:served:report-started
talk:ask-plan talk:expecting:choice talk:frame:4 text:add-dish:0 text:guess:0 text:help:0 text:start-over:2
then:add-hands>ask then:ask-amount>ask-next then:ask-how>report-out then:ask-options>set-units
then:ask-shopping>cook-away then:ask-temperature>report-out then:ask-why>report-done then:ask>note-guest
then:ask>quiet then:ask>skip-step then:deny>deed then:note-guest>report-done then:report-done>skip-step
then:report-guests>add-hands then:report-guests>set-guests then:report-guests>set-serving-time
then:report-setup>report-reading then:set-method>report-done then:shift-serving>report-guests
without:affirm:phrase:7 without:ask-shopping without:ask-temperature:frame:0 without:ask-time-left:phrase:5
without:drop-dish:phrase:5 without:lack:phrase:3 without:quiet without:report-done:phrase:3
without:report-oven:phrase:8 without:report-reading:phrase:2 without:report-started:phrase:3
without:report-trouble:frame:5 without:set-doneness:phrase:8 without:set-serving-time without:set-serving-time:phrase:2
-12 =ask-time-left:frame =quiet:frame =set-guests:guess clause:add-hands:guess:3 clause:choose:frame:6
clause:choose:guess:5 clause:cook-away:guess:2 clause:deny:guess:4 clause:report-oven:guess:4
clause:set-doneness:guess:4 clause:set-doneness:guess:8 clause:set-guests:guess:3 clause:set-serving-time:phrase:0
clause:undo:frame:2 cover:add-dish:0 cover:lack:2 cover:quiet:2 empty:add-dish:4 empty:add-hands:8
empty:ask-next:6 empty:ask-status:5 empty:ask-substitute:4 empty:ask-temperature:3 empty:ask-temperature:7
empty:ask-time-left:5 empty:ask-time-left:6 empty:cook-away:5 empty:have:3 empty:report-done:5
empty:report-reading:8 expecting:confirmation:report-not-done expecting:doneness:report-trouble
for:ask-amount>ask-substitute for:ask-status>report-trouble for:ask-substitute>drop-dish for:note-guest>report-guests
for:report-not-done>report-out for:report-out>report-guests for:report-oven>choose for:report-oven>set-serving-time
for:report-reading>report-done for:report-reading>watch for:report-started>cook-away for:report-started>lack
for:running-behind>ask-plan for:set-doneness>report-trouble for:set-guests>add-dish for:set-method>report-done
for:shift-serving>report-guests lost:ask-substitute lost:guess:7 lost:phrase:4 many1:long5
many1:long6 many4:long6 mood:intention:set-timer mood:negative:add-hands mood:question:lack
mood:question:set-doneness mood:statement:add-dish slots:describe-roast:cut slots:report-trouble:minutes,step,trouble
stage::ask-temperature stage::skip-step stage:carve:set-guests stage:low-roast:start-over stage:planning:report-out
stage:preheat:ask-next stage:rest:correct stage:sear:cook-away talk:expecting:confirmation
talk:found0 talk:stage:preheat talk:undo text:choose:0 text:cook-away:2 text:report-not-done:0
text:report-not-done:1 then:add-hands>add-hands then:ask-how>add-dish then:ask-how>ask-how
then:ask-next>report-reading then:ask-status>set-guests then:ask-temperature>set-doneness then:ask-time-left>report-reading
then:deed>set-units then:lack>skip-step then:report-done>report-trouble then:report-setup>report-trouble
then:report-started>describe-roast then:report-started>set-guests then:report-trouble>report-started
then:report-trouble>set-doneness then:set-guests>ask-guests twice:add-hands twice:ask-how without:add-dish:frame:5
without:add-dish:phrase:7 without:ask-safety without:ask-status:phrase:3 without:ask-why:phrase:3
without:drop-dish without:drop-dish:phrase:4 without:lack:phrase:6 without:report-guests:guess:5
without:report-not-done without:report-not-done:phrase:6 without:report-out:frame:6 without:report-out:phrase:6
without:report-setup:phrase:7 without:report-trouble:frame:2 without:running-behind:phrase:5
without:set-doneness:phrase:2 without:set-timer:phrase:2 without:shift-serving:frame:5
-11 breath0:true clause:add-dish:phrase:2 clause:affirm:guess:2 clause:describe-roast:guess:5
clause:describe-roast:guess:7 clause:emergency:across:0 clause:note-guest:guess:2 clause:note-guest:guess:5
clause:report-oven:frame:0 clause:set-doneness:guess:7 clause:set-doneness:phrase:2 clause:watch:guess:2
cover:report-done:1 empty:add-dish:5 empty:add-dish:6 empty:ask-safety:6 empty:ask-temperature:5
empty:ask-temperature:8 empty:correct:0 empty:describe-roast:6 empty:note-guest:7 empty:note-guest:8
empty:quiet:7 empty:report-done:0 empty:report-guests:8 empty:report-oven:3 empty:report-reading:0
empty:report-trouble:8 empty:set-method:2 empty:undo:3 empty:watch:1 expecting:choice:set-guests
expecting:confirmation:report-done expecting:step:ask-status for:add-hands>add-dish for:ask-how>help
for:ask-how>report-started for:ask-safety>note-guest for:ask-status>report-guests for:ask-substitute>report-done
for:cook-away>ask-next for:drop-dish>skip-step for:note-guest>drop-dish for:report-oven>lack
for:report-reading>report-out for:report-reading>report-oven for:report-reading>report-setup
for:report-trouble>ask-time-left for:report-trouble>report-reading for:running-behind>shift-serving
for:set-serving-time>ask-time-left for:skip-step>report-out for:watch>report-reading least0:many3
lost:ask-why mood:intention:affirm mood:intention:ask mood:intention:running-behind mood:negative:affirm
mood:request:running-behind mood:story:ask slots:report-out:time,what slots:report-reading:temperature,time,where
stage:carve:ask-next stage:hold:report-oven stage:low-roast:report-setup stage:preheat:choose
stage:prep:report-started stage:sear:report-out stage:served:add-dish talk:helper8 talk:report-guests
text:choose:1 text:deed:2 text:lack:1 text:report-guests:1 text:shift-serving:0 then:ask-plan>ask-how
then:ask-status>report-reading then:ask-temperature>report-started then:ask>watch then:choose>deed
then:lack>add-dish then:report-done>report-started then:report-not-done>report-trouble then:report-out>shift-serving
then:report-oven>ask-safety then:report-reading>describe-roast then:report-reading>set-method
then:running-behind>add-dish then:running-behind>report-trouble twice without:add-dish:guess:5
without:ask-how:phrase:2 without:ask-next:phrase:6 without:ask-next:phrase:8 without:ask-temperature:phrase:8
without:ask-time-left:phrase:6 without:cancel-timer:phrase:6 without:describe-roast:phrase:1
without:describe-roast:phrase:6 without:drop-dish:phrase:3 without:drop-dish:phrase:6 without:note-guest:phrase:7
without:report-not-done:phrase:7 without:report-out:frame:5 without:report-reading:phrase:8
without:set-doneness:phrase:7
-10 =affirm:phrase =ask-guests:guess =set-units:frame clause:add-dish:frame:2 clause:add-dish:guess:2
clause:add-hands:frame:5 clause:choose:phrase:3 clause:correct:guess:7 clause:have:phrase:1
clause:lack:frame:0 clause:lack:phrase:3 clause:skip-step:phrase:5 clause:undo:guess:4 cover:drop-dish:0
cover:set-guests:1 empty:add-hands:4 empty:ask-amount:0 empty:ask-amount:3 empty:ask-guests:2
empty:ask-how:5 empty:ask-next:0 empty:ask-safety:5 empty:ask-substitute:5 empty:cancel-timer:4
empty:drop-dish:5 empty:report-guests:6 empty:report-not-done:6 empty:report-setup:7 empty:report-started:0
empty:resume:7 empty:set-timer:5 empty:skip-step:1 expecting:confirmation:ask-why expecting:confirmation:report-reading
expecting:confirmation:set-guests expecting:step:report-setup expecting:step:report-started
for:ask-amount>ask-next for:ask-substitute>report-started for:drop-dish>note-guest for:drop-dish>report-done
for:note-guest>report-done for:quiet>pause for:report-guests>report-trouble for:report-not-done>report-done
for:resume>repeat for:running-behind>add-hands for:set-doneness>ask-safety for:set-timer>set-guests
for:set-timer>watch for:shift-serving>cook-away for:shift-serving>report-done for:skip-step>report-done
gained:phrase:6 how:open left:numbers1 lost:ask-how lost:ask-slice many4:long2 mood:negative:lack
mood:question:resume slots:report-out:minutesAgo,what slots:report-oven:mode slots:report-setup:probe
slots:report-setup:tent stage::ask-time-left stage::watch stage:low-roast:ask-amount stage:low-roast:ask-plan
stage:low-roast:report-done stage:planning:shift-serving stage:preheat:add-dish stage:served:set-guests
talk:frame:7 text:add-dish:1 text:frame:0 text:repeat:3 then:add-dish>ask-substitute then:add-dish>deed
then:add-hands>running-behind then:ask-amount>add-dish then:ask-safety>report-out then:ask-status>ask-time-left
then:ask-temperature>report-reading then:ask>report-not-done then:choose>choose then:have>report-setup
then:note-guest>running-behind then:quiet>deed then:report-not-done>set-guests then:report-out>report-setup
then:set-guests>report-guests then:set-guests>report-reading then:shift-serving>shift-serving
twice:choose twice:shift-serving without:ask-substitute without:ask-temperature:phrase:4 without:note-guest:phrase:6
without:report-oven:frame:4 without:report-reading:guess:7 without:report-trouble:frame:6 without:report-trouble:phrase:7
without:resume without:running-behind without:set-guests:phrase:8 without:set-units:phrase:5
without:shift-serving:phrase:6
-9 =deny:phrase clause:affirm:phrase:4 clause:cook-away:phrase:2 clause:deed:guess:5 clause:deny:phrase:3
clause:describe-roast:phrase:4 clause:pause:phrase:5 clause:repeat:phrase:2 clause:report-not-done:phrase:4
clause:report-trouble:phrase:7 clause:undo:guess:5 cover:phrase:0 cover:set-guests:2 empty:add-hands:7
empty:affirm:6 empty:ask-amount:5 empty:ask-amount:6 empty:ask-how:7 empty:ask-next:5 empty:ask-options:0
empty:courtesy:2 empty:have:2 empty:help:1 empty:quiet:0 empty:report-done:3 empty:report-reading:7
empty:report-started:6 empty:report-started:7 empty:report-trouble:7 empty:set-guests:2 empty:set-method:1
empty:set-timer:1 empty:shift-serving:6 empty:undo:2 empty:undo:4 empty:watch:2 empty:watch:5
expecting:reading:set-serving-time expecting:roast:report-done for:ask-temperature>ask-options
for:deny>report-done for:describe-roast>correct for:help>ask-next for:report-out>set-doneness
for:report-out>shift-serving for:report-reading>cook-away for:report-setup>report-done for:report-trouble>report-started
for:report-trouble>running-behind for:report-trouble>shift-serving for:running-behind>report-done
for:set-serving-time>shift-serving for:shift-serving>report-reading for:shift-serving>set-serving-time
gained:frame:7 least1:many3 lost0:gained3 lost:frame:7 lost:note-guest lost:report-thermometer
many2:long2 mood:intention:describe-roast mood:negative:ask mood:question:deny mood:statement:cook-away
slots:ask-amount:cut,ingredient slots:ask-guests: slots:ask-time-left: slots:report-out:what
slots:set-units:weight stage:hold:ask-status stage:hold:correct stage:hold:set-serving-time
stage:low-roast:set-serving-time stage:planning:undo stage:prep:add-dish talk:expecting:step
talk:frame:0 talk:pause talk:set-method talk:watch text:affirm:0 text:affirm:2 text:ask:0 text:choose:2
text:correct:3 text:pause:0 text:quiet:3 text:repeat:1 text:set-doneness:4 text:set-timer:1
then:ask-amount>ask-temperature then:ask-next>ask-how then:ask-options>ask-next then:ask-substitute>add-dish
then:ask>choose then:choose>set-guests then:deed>add-dish then:describe-roast>report-reading
then:drop-dish>ask-substitute then:drop-dish>drop-dish then:lack>ask then:lack>ask-safety then:lack>drop-dish
then:report-done>report-out then:report-done>set-serving-time then:report-guests>report-guests
then:report-oven>report-trouble then:report-setup>report-started then:report-started>drop-dish
then:set-serving-time>ask then:set-timer>add-dish then:set-timer>cancel-timer then:skip-step>report-out
twice:drop-dish twice:report-guests without:ask-amount:phrase:6 without:ask-guests without:ask-safety:phrase:4
without:ask-status:phrase:4 without:cook-away:phrase:2 without:note-guest:phrase:8 without:report-guests:phrase:7
without:report-out:phrase:5 without:report-oven:frame:6 without:set-timer without:set-units
without:skip-step
-8 =report-started:guess =set-serving-time:across clause:add-hands:frame:1 clause:cook-away:guess:8
clause:deed:phrase:0 clause:frame:3 clause:help:frame:2 clause:pause:frame:1 clause:repeat:phrase:4
clause:report-not-done:frame:1 clause:report-reading:guess:2 clause:report-trouble:guess:2
clause:report-trouble:guess:4 clause:set-method:phrase:6 clause:set-serving-time:guess:3 clause:set-serving-time:guess:7
clause:set-timer:guess:2 clause:set-units:frame:4 clause:shift-serving:guess:3 clause:skip-step:guess:2
clause:watch:guess:3 clause:watch:guess:5 cover:ask-plan:0 cover:ask-status:2 cover:cook-away:2
cover:report-out:0 empty:ask-amount:2 empty:ask-next:7 empty:deny:6 empty:describe-roast:8
empty:emergency:2 empty:lack:3 empty:report-done:6 empty:report-guests:2 empty:report-not-done:7
empty:report-out:5 empty:report-out:8 empty:report-setup:8 empty:report-started:1 empty:report-trouble:1
empty:resume:1 empty:set-doneness:1 empty:set-method:6 empty:set-timer:6 empty:shift-serving:7
empty:skip-step:6 empty:undo:7 expecting:reading:describe-roast expecting:reading:report-trouble
expecting:step:set-guests for:ask-safety>ask-temperature for:ask-safety>report-started for:describe-roast>report-started
for:drop-dish>add-dish for:drop-dish>report-started for:report-reading>ask-next for:report-trouble>lack
for:set-guests>report-done for:set-serving-time>correct for:set-timer>add-dish for:set-timer>report-trouble
for:skip-step>drop-dish for:watch>ask-time-left gained:ask-how gained:ask-temperature gained:choose
gained:guess:2 gained:help gained:phrase:4 gained:report-reading gained:undo how:stop open
how:stop, clause guessed how:talk least0:many2 least2:many2 lost1:gained2 lost:frame:6 lost:help
lost:report-out lost:report-oven lost:report-trouble many1:clauses5 mood:negative:note-guest
mood:question:report-trouble slots:cook-away: slots:describe-roast:bones,cut slots:report-started:step
stage::ask-status stage::report-reading stage:carve:ask-status stage:hold:report-reading stage:low-roast:ask-guests
stage:low-roast:resume stage:planning:choose stage:planning:cook-away stage:planning:set-timer
stage:prep:ask-time-left stage:prep:cancel-timer stage:prep:set-guests stage:put-away:ask-status
stage:rest:pause stage:rest:set-method talk:ask-substitute talk:likely5 talk:phrase:0 talk:report-started
talk:set-guests talk:shift-serving talk:stage: talk:stage:prep talk:stage:rest text:cancel-timer:0
text:help:2 text:lack:0 text:resume:2 text:set-timer:0 text:skip-step:0 text:watch:2 then:add-dish>ask-amount
then:add-dish>ask-next then:add-dish>drop-dish then:add-hands>add-dish then:ask-next>choose
then:lack>lack then:report-oven>ask-how then:report-setup>skip-step then:report-started>report-out
then:set-doneness>report-started then:set-serving-time>note-guest then:skip-step>deed then:skip-step>report-done
then:watch>deed then:watch>report-started twice:lack without:add-dish:phrase:2 without:ask-options
without:ask-status:phrase:2 without:describe-roast:phrase:5 without:report-out:phrase:8 without:report-setup:phrase:8
without:set-method:phrase:6 without:shift-serving:phrase:7 without:skip-step:phrase:4 without:undo
without:undo:across:0
-7 =help:phrase =pause:frame clause:affirm:phrase:8 clause:ask:frame:0 clause:correct:guess:3
clause:deed:guess:4 clause:describe-roast:guess:3 clause:lack:guess:8 clause:report-oven:guess:2
clause:report-oven:guess:7 clause:report-setup:frame:3 clause:report-trouble:frame:3 clause:set-method:frame:4
clause:set-timer:frame:1 clause:set-units:phrase:3 clause:shift-serving:phrase:5 clause:skip-step:guess:6
clause:watch:frame:6 cover:ask-why:0 cover:phrase:1 empty:acknowledge:0 empty:add-hands:5 empty:ask-amount:7
empty:ask-next:2 empty:ask-plan:1 empty:ask-why:8 empty:cook-away:0 empty:courtesy:1 empty:courtesy:5
empty:drop-dish:1 empty:emergency:0 empty:report-reading:4 empty:report-started:8 empty:set-guests:0
empty:set-serving-time:0 empty:set-timer:8 empty:shift-serving:8 expecting:confirmation:lack
expecting:reading:report-reading expecting:reading:set-guests expecting:roast:report-reading
expecting:step:cook-away expecting:step:report-guests first:set-timer for:add-dish>ask-substitute
for:ask-amount>add-dish for:ask-how>report-done for:ask-next>ask-how for:ask-next>report-out
for:ask-status>report-started for:ask-temperature>report-out for:ask-time-left>report-started
for:cook-away>report-trouble for:lack>report-setup for:report-done>add-dish for:report-oven>report-started
for:report-started>set-serving-time for:set-doneness>report-reading for:set-timer>report-setup
for:set-timer>report-started for:shift-serving>report-started gained:ask-why left6:many2 lost2:gained0
lost:forget-kitchen lost:guess:5 lost:phrase:3 lost:quiet lost:resume lost:set-timer many2:clauses4
mood:intention:set-guests mood:negative:report-not-done mood:negative:report-setup mood:negative:set-doneness
mood:question:affirm mood:statement:skip-step slots:cancel-timer:label,minutes slots:describe-roast:weight,weightUnit
slots:report-oven:state slots:report-oven:state,time slots:set-timer:minutes stage::report-not-done
stage::start-over stage:carve:report-guests stage:hold:drop-dish stage:low-roast:deny stage:preheat:ask-status
stage:prep:ask-options stage:prep:report-oven stage:sear:ask-next talk:guess:8 talk:lack talk:quiet
talk:set-timer talk:set-units text:add-hands:2 text:describe-roast:0 text:guess:1 text:have:0
text:lack:2 text:note-guest:2 text:quiet:1 text:report-guests:0 text:report-setup:1 text:set-method:1
text:set-serving-time:0 text:undo:0 text:undo:1 then:add-dish>report-started then:add-hands>skip-step
then:ask-amount>set-guests then:ask-guests>ask-guests then:ask-next>ask-safety then:ask-safety>note-guest
then:correct>report-oven then:deed>choose then:deed>report-setup then:deed>report-trouble then:describe-roast>ask-next
then:describe-roast>ask-status then:describe-roast>deed then:note-guest>add-dish then:note-guest>lack
then:note-guest>report-guests then:report-done>report-reading then:report-guests>report-reading
then:report-oven>ask-temperature then:report-reading>report-started then:report-setup>deed
then:report-trouble>ask-time-left then:report-trouble>correct then:report-trouble>lack then:report-trouble>set-guests
then:set-serving-time>ask-status then:set-serving-time>report-done then:set-timer>running-behind
then:shift-serving>report-started then:skip-step>add-dish twice:ask-guests without:ask-amount:phrase:7
without:ask-status:frame:3 without:ask-temperature without:ask-time-left:phrase:7 without:ask-why:phrase:8
without:deny without:deny:phrase:7 without:describe-roast:phrase:8 without:report-oven:phrase:2
without:report-oven:phrase:7 without:report-started:frame:4 without:report-started:phrase:6
without:set-method:phrase:5 without:set-serving-time:phrase:8 without:set-timer:phrase:8 without:set-units:phrase:6
-6 =add-dish:phrase =choose:frame =set-serving-time:guess =start-over:frame breath1:true clause:ask:guess:3
clause:choose:frame:7 clause:frame:0 clause:help:guess:2 clause:lack:guess:3 clause:quiet:phrase:3
clause:repeat:guess:3 clause:repeat:phrase:5 clause:report-not-done:phrase:1 clause:report-reading:frame:1
clause:report-reading:phrase:4 clause:set-method:guess:2 clause:set-serving-time:guess:8 clause:set-timer:guess:7
clause:set-timer:phrase:4 clause:skip-step:guess:3 clause:skip-step:guess:4 cover:ask-time-left:1
cover:note-guest:1 cover:report-oven:0 empty:affirm:0 empty:ask-amount:8 empty:ask-substitute:3
empty:ask-temperature:4 empty:ask-time-left:2 empty:ask-time-left:7 empty:ask-time-left:8 empty:best8
empty:cancel-timer:7 empty:cook-away:3 empty:courtesy:3 empty:describe-roast:2 empty:report-oven:4
empty:report-reading:2 empty:set-guests:5 empty:set-serving-time:1 empty:set-serving-time:2
empty:set-serving-time:8 empty:set-timer:7 empty:set-units:2 empty:shift-serving:0 empty:skip-step:8
empty:talk0 empty:talk6 expecting:serving-time:set-serving-time expecting:step:lack for:ask-time-left>ask-amount
for:deny>lack for:repeat>drop-dish for:report-guests>choose for:report-not-done>deny for:report-reading>shift-serving
for:report-setup>lack for:report-trouble>report-out for:set-timer>lack for:skip-step>report-started
gained:deny gained:guess:6 gained:watch least8 left2:many3 left6:many3 lost1:gained3 lost:guess:6
lost:pause lost:phrase:8 lost:set-guests lost:set-serving-time lost:set-units lost:shift-serving
lost:skip-step many1:clauses4 many1:long4 many2:long1 many4:clauses5 mood:negative:correct
mood:request:report-reading mood:statement:cancel-timer slots:correct:temperature slots:describe-roast:boneless
slots:report-reading:temperature slots:set-guests:change,who stage:carve:ask-options stage:carve:ask-safety
stage:low-roast:drop-dish stage:low-roast:have stage:low-roast:note-guest stage:low-roast:quiet
stage:planning:add-hands stage:planning:ask-plan stage:planning:ask-status stage:planning:lack
stage:planning:watch stage:prep:correct stage:rest:ask-why stage:rest:drop-dish stage:sear:ask-status
stage:sear:ask-time-left talk:add-hands talk:cancel-timer talk:set-serving-time talk:stage:sear
text:add-dish:2 text:affirm:5 text:ask:1 text:drop-dish:1 text:phrase:1 text:set-units:0 text:start-over:1
text:undo:4 then:add-dish>lack then:add-dish>note-guest then:ask-time-left>report-guests then:correct>ask
then:deed>skip-step then:report-reading>ask-plan then:report-reading>ask-time-left then:report-reading>report-setup
then:report-reading>set-serving-time then:report-started>ask-status then:report-started>lack
then:report-started>running-behind then:report-started>set-serving-time then:report-trouble>report-setup
then:set-doneness>note-guest then:set-doneness>report-reading then:set-serving-time>ask-plan
then:set-serving-time>set-doneness without:ask-amount:phrase:8 without:ask-time-left:phrase:8
without:ask-why without:cancel-timer:phrase:7 without:cook-away:phrase:6 without:report-out:guess:6
without:set-serving-time:phrase:7 without:shift-serving:frame:6 without:shift-serving:phrase:8
without:watch
-5 =ask-guests =ask-safety:guess =ask-temperature:guess =help:frame =lack:phrase =report-guests:guess
=set-method:frame =skip-step:guess clause:across:0 clause:add-hands:frame:4 clause:add-hands:guess:2
clause:ask:phrase:5 clause:ask:phrase:6 clause:choose:phrase:1 clause:cook-away:guess:3 clause:cook-away:phrase:4
clause:deed:frame:3 clause:drop-dish:phrase:1 clause:quiet:guess:3 clause:report-guests:guess:3
clause:report-guests:phrase:3 clause:report-not-done:frame:3 clause:report-not-done:guess:6
clause:report-oven:phrase:5 clause:report-oven:phrase:6 clause:report-reading:frame:5 clause:report-setup:guess:4
clause:report-setup:phrase:4 clause:running-behind:phrase:7 clause:set-guests:frame:2 clause:set-guests:frame:3
clause:set-serving-time:phrase:3 clause:set-units:guess:3 clause:start-over:phrase:3 cover:ask-time-left:2
cover:report-out:1 cover:report-setup:2 empty:add-dish:2 empty:best7 empty:cancel-timer:8 empty:correct:2
empty:deny:1 empty:repeat:3 empty:report-guests:7 empty:report-not-done:0 empty:report-oven:2
empty:report-trouble:2 empty:running-behind:0 empty:running-behind:6 empty:set-serving-time:4
empty:set-timer:4 empty:set-units:0 empty:shift-serving:1 empty:skip-step:7 empty:words4 expecting:choice:ask-status
expecting:doneness:report-done expecting:reading:ask-temperature first:ask-guests for:ask-amount>ask-temperature
for:ask-how>ask-plan for:ask-next>ask-options for:describe-roast>report-reading for:report-done>drop-dish
for:report-done>report-trouble for:report-not-done>report-started for:report-not-done>skip-step
for:report-setup>report-oven for:report-started>report-not-done for:set-guests>report-guests
for:set-serving-time>report-done for:set-timer>report-done gained:ask-options gained:running-behind
gained:shift-serving gained:skip-step helper7 how:stop, less least3:many2 least8:many1 left1:many2
lost0:gained1 lost:across:0 lost:deny lost:guess:8 many0:long6 many1:long0 many3:long5 many4:long4
mean2 mood:negative:set-guests mood:question:note-guest mood:statement:repeat mood:statement:undo
slots:ask-how: stage::ask-guests stage::report-out stage:carve:report-started stage:low-roast:ask-how
stage:low-roast:ask-options stage:low-roast:pause stage:low-roast:undo stage:prep:have stage:rest:lack
talk:affirm talk:ask-shopping talk:best2 talk:helper7 talk:long6 talk:phrase:7 talk:report-trouble
talk:start-over text:across:0 text:cook-away:0 text:deed:0 text:deed:7 text:deny:0 text:note-guest:0
text:phrase:0 text:report-guests:4 text:resume:0 text:running-behind:2 text:undo:2 text:undo:5
then:ask-next>report-trouble then:ask-safety>set-doneness then:deed>set-serving-time then:describe-roast>ask
then:lack>report-guests then:lack>report-setup then:report-out>add-dish then:report-oven>cook-away
then:report-started>ask-temperature then:set-method>lack then:set-serving-time>ask-time-left
then:set-serving-time>lack twice:set-serving-time without:cancel-timer:phrase:8 without:cook-away:phrase:5
without:note-guest:phrase:3 without:report-done without:report-done:phrase:7 without:report-guests:phrase:8
without:report-not-done:frame:6 without:report-reading:guess:8 without:report-trouble:phrase:8
-4 =ask-how:frame =ask-substitute:guess =correct:guess =emergency:across =pause:phrase =report-done:guess
=report-out:guess =report-oven:guess =report-trouble:guess =resume:guess =running-behind:guess
=set-doneness:frame =set-guests:frame =set-timer:guess =undo:frame breath3:true clause:add-dish:guess:4
clause:add-hands:frame:2 clause:affirm:phrase:5 clause:ask:guess:2 clause:ask:phrase:3 clause:cancel-timer:phrase:3
clause:deny:guess:3 clause:frame:1 clause:guess:2 clause:pause:frame:3 clause:pause:phrase:2
clause:pause:phrase:4 clause:quiet:phrase:6 clause:report-not-done:phrase:3 clause:report-oven:guess:6
clause:report-setup:guess:2 clause:running-behind:guess:3 clause:running-behind:guess:4 clause:running-behind:guess:5
clause:running-behind:guess:6 clause:set-guests:guess:4 clause:undo:guess:2 cover:add-dish:3
cover:ask-guests:3 cover:ask-safety:3 cover:ask-temperature:3 cover:describe-roast:1 cover:frame:3
cover:lack:0 cover:report-done:2 cover:report-not-done:1 cover:report-reading:0 cover:report-reading:2
cover:report-started:2 cover:report-trouble:2 cover:set-serving-time:1 cover:set-timer:0 cover:undo:3
empty:add-hands:2 empty:affirm:7 empty:ask-status:0 empty:ask-substitute:7 empty:best5 empty:cook-away:2
empty:describe-roast:7 empty:drop-dish:4 empty:emergency:4 empty:report-reading:3 empty:report-reading:6
empty:report-started:3 empty:report-trouble:4 empty:report-trouble:5 empty:skip-step:3 empty:talk1
expecting:guests:set-guests expecting:reading:report-started expecting:roast:set-units first:ask-next
for:ask-amount>set-guests for:report-reading>add-dish for:report-reading>lack for:report-reading>set-serving-time
gained:affirm gained:ask-time-left gained:guess:7 gained:note-guest least0 least1:many2 least7:many1
left2:many2 left3 left4:many1 lost:affirm lost:ask-safety lost:drop-dish lost:frame:4 lost:report-reading
many3:clauses5 many4 mood:negative:add-dish mood:negative:deed mood:negative:watch mood:question:correct
mood:request:help mood:statement:choose mood:story:report-reading slots:ask-temperature: slots:cancel-timer:
slots:report-setup:fan,shelf slots:report-setup:pan slots:set-serving-time:of,time stage::cook-away
stage::report-done stage::report-guests stage::report-oven stage:hold:affirm stage:hold:report-guests
stage:low-roast:repeat stage:planning:quiet stage:planning:report-oven stage:preheat:cook-away
stage:rest:describe-roast stage:rest:report-done stage:rest:report-out talk:best1 talk:best8
talk:deny talk:likely4 talk:phrase:1 talk:phrase:8 talk:report-done talk:report-out talk:report-thermometer
talk:stage:carve text:affirm:3 text:deny:3 text:deny:4 text:drop-dish:2 text:drop-dish:3 text:frame:1
text:quiet:7 text:resume:1 text:set-guests:0 text:set-guests:2 text:set-units:1 text:skip-step:6
then:add-dish>report-done then:add-hands>report-guests then:cancel-timer>report-out then:deed>deed
then:describe-roast>report-trouble then:report-done>choose then:report-not-done>report-guests
then:report-not-done>report-started then:report-out>report-guests then:report-out>set-doneness
then:report-reading>skip-step then:report-setup>report-done then:report-setup>report-not-done
then:report-started>add-hands then:report-started>report-oven then:report-trouble>cancel-timer
then:report-trouble>set-serving-time then:set-serving-time>report-oven then:set-serving-time>report-setup
then:set-serving-time>watch then:set-timer>report-started then:set-timer>set-serving-time without:ask-how
without:ask-safety:phrase:3 without:ask-substitute:phrase:7 without:describe-roast:phrase:7
without:lack:phrase:8 without:quiet:phrase:7 without:report-done:phrase:0 without:report-not-done:phrase:5
without:report-started:phrase:8 without:running-behind:phrase:8 without:set-doneness without:set-doneness:phrase:6
without:set-timer:phrase:5 without:set-timer:phrase:7 without:set-units:phrase:7 without:skip-step:phrase:5
without:skip-step:phrase:7 without:skip-step:phrase:8
-3 =affirm =ask-next:phrase =choose:phrase =cook-away:across =pause =report-started =start-over:guess
=undo:guess =watch:guess acts:talk1 acts:talk2 acts:talk3 clause:deed:guess:2 clause:deed:guess:3
clause:deny:phrase:5 clause:drop-dish:guess:2 clause:guess:4 clause:lack:frame:5 clause:note-guest:phrase:2
clause:phrase:0 clause:phrase:1 clause:report-guests:guess:4 clause:report-guests:guess:5 clause:report-setup:guess:3
clause:report-trouble:frame:6 clause:resume:guess:4 clause:running-behind:guess:2 clause:set-guests:frame:5
clause:set-guests:guess:6 clause:set-guests:guess:7 clause:set-serving-time:frame:7 clause:set-timer:guess:5
clause:skip-step:frame:5 clause:skip-step:guess:8 cover:affirm:3 cover:ask-amount:3 cover:ask-safety:2
cover:ask-status:1 cover:ask-substitute:3 cover:pause:3 cover:set-timer:1 cover:set-timer:2
cover:shift-serving:0 empty2 empty:affirm:1 empty:ask-next:1 empty:ask-options:7 empty:ask-shopping:3
empty:ask-status:3 empty:ask-status:6 empty:choose:2 empty:choose:6 empty:cook-away:7 empty:cook-away:8
empty:deny:5 empty:quiet:4 empty:report-done:4 empty:report-guests:5 empty:report-out:7 empty:report-oven:7
empty:report-setup:2 empty:running-behind:2 empty:running-behind:8 empty:set-doneness:3 empty:set-doneness:6
empty:set-method:7 empty:talk2 empty:watch:6 empty:watch:7 expecting:reading:report-oven first:ask-status
first:have first:note-guest first:pause first:quiet first:report-not-done first:report-oven
first:shift-serving for:ask-how>ask-options for:ask-plan>ask-options for:correct>set-guests
for:lack>report-done for:note-guest>report-reading for:repeat>add-dish for:report-reading>ask-temperature
for:report-started>report-out gained:add-hands gained:ask-next gained:ask-safety gained:frame:6
gained:guess:3 gained:pause gained:phrase:1 gained:report-oven gained:report-started gained:report-trouble
gained:set-guests gained:set-method gained:set-serving-time gained:set-units how:clause guessed
least4:many2 left0:many3 left3:many1 left4 left4:many2 left5:many1 left:numbers2 lost2:gained1
lost:ask-next lost:ask-status lost:choose lost:frame:2 lost:phrase:1 lost:phrase:2 lost:report-guests
lost:set-doneness many0:long4 many1:clauses3 many2:long0 many3:clauses4 many3:long1 mean8 mood:negative:set-method
mood:request:watch mood:statement:ask mood:statement:deny mood:statement:shift-serving mood:story:running-behind
slots:affirm: slots:ask-safety:about slots:describe-roast:boneless,cut,weight,weightUnit slots:pause:
slots:report-guests:state slots:report-out: slots:report-setup:rack slots:report-trouble:trouble
slots:set-guests:count stage::ask-how stage::choose stage::report-trouble stage:hold:report-trouble
stage:low-roast:affirm stage:low-roast:emergency stage:planning:affirm stage:prep:describe-roast
talk:ask-why talk:best3 talk:best7 talk:describe-roast talk:frame:6 talk:likely0 talk:long4
talk:phrase:6 text:add-dish:3 text:cancel-timer:4 text:emergency:0 text:guess:2 text:guess:8
text:help:1 text:lack:3 text:pause:4 text:report-guests:2 text:report-not-done:3 text:report-oven:1
text:report-oven:4 text:report-reading:0 text:report-reading:3 text:set-guests:5 text:set-method:0
text:set-method:2 text:set-serving-time:1 text:set-serving-time:2 then:ask-time-left>report-started
then:cancel-timer>report-reading then:cook-away>report-oven then:lack>ask-amount then:lack>set-doneness
then:note-guest>deed then:note-guest>note-guest then:report-done>set-timer then:report-not-done>deed
then:report-reading>ask-amount then:report-reading>report-trouble then:report-setup>report-oven
then:report-started>report-setup then:running-behind>set-timer then:set-guests>report-done
then:set-guests>report-started then:set-serving-time>ask-next then:set-serving-time>set-serving-time
then:set-timer>report-oven then:watch>report-reading twice:note-guest without:ask-next:phrase:0
without:ask-options:phrase:7 without:ask-temperature:phrase:7 without:ask-time-left without:cook-away:guess:7
without:cook-away:phrase:8 without:report-done:phrase:6 without:report-not-done:frame:5 without:report-oven
without:report-reading:frame:5 without:running-behind:phrase:7 without:set-method:phrase:7
without:set-timer:phrase:6 without:shift-serving:frame:7 without:watch:across:0 without:watch:frame:8
-2 =ask-amount:phrase =ask-next =ask-status =choose =have =report-done =report-done:phrase
=report-out =report-reading:frame =report-trouble:frame clause:add-dish:frame:4 clause:add-hands:guess:6
clause:affirm:phrase:7 clause:cancel-timer:guess:4 clause:cancel-timer:phrase:7 clause:choose:phrase:8
clause:cook-away:frame:2 clause:correct:across:4 clause:correct:guess:6 clause:deed:frame:2
clause:deed:guess:6 clause:deed:phrase:4 clause:drop-dish:phrase:0 clause:help:guess:4 clause:lack:phrase:2
clause:lack:phrase:5 clause:note-guest:phrase:1 clause:phrase:3 clause:phrase:4 clause:report-not-done:guess:3
clause:report-reading:frame:2 clause:report-setup:frame:1 clause:report-setup:phrase:3 clause:report-setup:phrase:7
clause:report-trouble:frame:4 clause:report-trouble:guess:7 clause:running-behind:phrase:3
clause:set-method:phrase:2 clause:shift-serving:guess:4 clause:skip-step:guess:7 clause:watch:frame:3
cover:add-dish:1 cover:ask-next:2 cover:ask-next:3 cover:cancel-timer:3 cover:correct:3 cover:guess:3
cover:report-done:3 cover:report-guests:3 cover:report-out:3 cover:shift-serving:1 cover:watch:3
empty0 empty1 empty:acknowledge:2 empty:ask-how:4 empty:ask-options:3 empty:ask-plan:2 empty:ask-status:7
empty:ask-time-left:1 empty:best2 empty:best4 empty:cook-away:6 empty:courtesy:7 empty:emergency:3
empty:help:4 empty:lack:4 empty:lack:8 empty:note-guest:0 empty:report-done:1 empty:report-done:7
empty:report-out:4 empty:report-started:2 empty:running-behind:4 empty:running-behind:7 empty:set-guests:7
empty:set-units:6 empty:set-units:7 empty:skip-step:0 empty:skip-step:4 empty:watch:8 empty:words1
expecting:confirmation:set-serving-time expecting:doneness:set-doneness first:add-hands first:affirm
first:ask-how first:ask-why first:report-done first:undo for:affirm>deny for:ask-substitute>ask-amount
for:report-not-done>repeat for:report-oven>report-setup for:report-started>report-done for:report-trouble>report-setup
for:watch>set-timer gained:ask-amount gained:ask-substitute gained:frame:2 gained:report-out
gained:report-setup gained:resume gained:start-over least1 least2 least3:many3 least4:many3
least6:many1 left1:many1 left2 left6 lost1:gained0 lost:add-dish lost:ask-guests lost:report-not-done
lost:report-started lost:set-method many1 many1:clauses1 many2 many2:clauses3 many3:long2 many3:long3
many4:long5 mean7 mood:intention:deed mood:negative:cook-away mood:negative:deny mood:negative:pause
mood:negative:undo mood:question:set-guests mood:request:start-over mood:statement:affirm mood:statement:have
mood:statement:pause mood:statement:set-timer mood:story:quiet mood:story:report-trouble mood:story:set-guests
slots:ask-next: slots:ask-status: slots:choose:option slots:have:thing slots:report-oven:gasMark
slots:set-doneness:temperature slots:set-units:temperature stage:planning:repeat stage:preheat:report-trouble
stage:prep:ask-how stage:prep:ask-temperature stage:put-away:set-guests stage:sear:ask-temperature
stage:sear:report-reading talk:ask-next talk:choose talk:frame:5 talk:likely6 talk:likely7
talk:resume text:add-hands:1 text:ask:2 text:cook-away:3 text:correct:8 text:describe-roast:6
text:phrase:2 text:quiet:5 text:report-setup:2 text:running-behind:1 text:running-behind:3
text:set-doneness:1 text:set-doneness:2 text:set-timer:3 text:start-over:0 then:drop-dish>report-started
then:lack>report-trouble then:note-guest>describe-roast then:report-done>lack then:report-not-done>ask-how
then:report-not-done>describe-roast then:report-out>ask-options then:report-oven>ask then:report-oven>note-guest
then:report-reading>set-guests then:report-setup>ask-next then:report-trouble>set-timer then:set-doneness>deed
then:set-method>ask then:set-serving-time>describe-roast then:watch>ask-time-left without:affirm
without:cook-away:phrase:7 without:note-guest:phrase:4 without:report-trouble without:set-guests:phrase:2
without:set-timer:guess:8 without:skip-step:phrase:6
-1 =add-dish =add-dish:frame =ask-plan:guess =ask-status:frame =ask-status:guess =ask-substitute
=ask-substitute:frame =ask-why =cancel-timer =correct =deny =lack =note-guest:frame =quiet:guess
=repeat:phrase =report-not-done =report-reading =report-setup =report-setup:frame =shift-serving:guess
acts:talk8 clause:add-hands:phrase:5 clause:add-hands:phrase:6 clause:ask:frame:1 clause:ask:frame:3
clause:ask:guess:4 clause:choose:guess:4 clause:choose:phrase:4 clause:deed:phrase:5 clause:deed:phrase:6
clause:describe-roast:guess:6 clause:describe-roast:phrase:6 clause:drop-dish:guess:4 clause:frame:2
clause:frame:5 clause:guess:3 clause:help:phrase:5 clause:pause:guess:4 clause:phrase:2 clause:repeat:guess:4
clause:report-not-done:frame:2 clause:report-oven:frame:4 clause:report-oven:guess:5 clause:report-reading:frame:8
clause:report-setup:guess:5 clause:report-setup:phrase:2 clause:report-trouble:guess:6 clause:report-trouble:phrase:5
clause:report-trouble:phrase:6 clause:set-doneness:guess:5 clause:set-guests:phrase:2 clause:set-method:frame:3
clause:set-serving-time:phrase:8 clause:set-units:guess:4 clause:shift-serving:phrase:0 clause:shift-serving:phrase:1
clause:skip-step:phrase:2 clause:start-over:frame:2 clause:undo:guess:3 clause:watch:across:7
cover:add-hands:1 cover:ask-guests:2 cover:ask-status:3 cover:cancel-timer:2 cover:deny:3 cover:note-guest:2
cover:phrase:2 cover:quiet:3 cover:repeat:0 cover:report-oven:3 cover:report-started:1 cover:report-started:3
cover:running-behind:1 cover:set-serving-time:0 cover:shift-serving:2 cover:start-over:1 empty:affirm:4
empty:ask-options:1 empty:ask-why:2 empty:choose:1 empty:deny:2 empty:describe-roast:3 empty:lack:0
empty:lack:7 empty:report-not-done:4 empty:report-oven:6 empty:report-reading:1 empty:report-setup:4
empty:resume:3 empty:running-behind:5 empty:set-guests:6 empty:shift-serving:5 empty:talk4
empty:undo:5 expecting:roast:describe-roast first:ask-substitute first:ask-time-left first:choose
first:report-out first:resume first:set-serving-time for:add-dish>add-hands for:ask-status>ask-how
for:ask-temperature>ask-next for:ask-temperature>ask-status for:correct>report-reading for:report-done>ask-safety
for:report-done>report-not-done for:report-done>report-oven for:report-reading>report-guests
for:report-trouble>report-oven for:shift-serving>report-out gained:ask-plan gained:ask-shopping
gained:ask-status gained:frame:3 gained:have gained:lack gained:phrase:5 gained:phrase:8 gained:report-not-done
gained:set-timer least2:many1 least4 left0:many1 left1 left:numbers0 lost3:gained0 lost:ask-plan
lost:cook-away lost:frame:8 lost:lack lost:repeat lost:start-over many4:long3 mean1 mean3 mood:intention:report-trouble
mood:negative:shift-serving mood:question:cook-away mood:question:help mood:question:report-oven
mood:statement:add-hands mood:statement:drop-dish mood:statement:quiet mood:statement:report-reading
mood:story:set-timer slots:add-dish:dish slots:ask-plan: slots:deny: slots:describe-roast:cut,prepared,weight,weightUnit
slots:lack:thing slots:note-guest:need slots:report-setup:fan slots:set-doneness:doneness slots:set-serving-time:date,time
stage::ask-substitute stage::drop-dish stage::set-timer stage:hold:report-not-done stage:low-roast:ask-next
stage:preheat:report-guests stage:prep:report-reading stage:rest:ask-status stage:rest:report-trouble
talk:across:0 talk:add-dish talk:ask-options talk:ask-status talk:ask-temperature talk:ask-time-left
talk:best4 talk:best5 talk:cook-away talk:correct talk:frame:2 talk:guess:5 talk:guess:7 talk:phrase:2
talk:phrase:5 talk:report-reading talk:running-behind text:add-hands:3 text:ask:6 text:choose:6
text:choose:7 text:correct:1 text:frame:2 text:have:1 text:report-trouble:3 text:set-doneness:7
text:skip-step:3 then:cancel-timer>ask then:cancel-timer>deed then:choose>add-dish then:deed>lack
then:deed>note-guest then:lack>ask-guests then:report-done>note-guest then:report-done>report-done
then:report-done>shift-serving then:report-guests>deed then:report-not-done>add-dish then:report-started>ask-next
then:report-started>report-trouble then:report-trouble>report-reading then:set-doneness>ask
then:shift-serving>deed then:watch>lack then:watch>report-out without:report-not-done:frame:7
without:report-not-done:phrase:2 without:report-started:phrase:5 without:running-behind:frame:6
without:set-guests:phrase:6
1 =add-hands =ask-how:guess =ask-options:guess =ask-plan:frame =ask-plan:phrase =cook-away
=describe-roast =drop-dish =lack:frame =note-guest:guess =note-guest:phrase =repeat =repeat:guess
=report-guests =report-not-done:phrase =report-out:frame =report-started:phrase =resume =set-doneness
=set-doneness:phrase =set-method =set-serving-time =set-timer =shift-serving =shift-serving:phrase
=start-over =undo clause:add-hands:phrase:2 clause:add-hands:phrase:3 clause:ask:frame:2 clause:ask:frame:4
clause:ask:guess:5 clause:ask:phrase:0 clause:deed:guess:7 clause:deed:phrase:1 clause:deny:phrase:6
clause:guess:5 clause:note-guest:guess:3 clause:quiet:guess:2 clause:report-guests:frame:4
clause:report-guests:phrase:1 clause:report-not-done:phrase:5 clause:report-reading:guess:6
clause:report-reading:guess:8 clause:report-reading:phrase:0 clause:report-setup:guess:6 clause:report-setup:phrase:5
clause:report-trouble:frame:5 clause:report-trouble:guess:3 clause:running-behind:guess:7 clause:running-behind:phrase:8
clause:set-timer:phrase:5 clause:set-units:phrase:6 clause:skip-step:frame:2 cover:add-hands:2
cover:ask-how:3 cover:ask-shopping:3 cover:report-guests:0 cover:report-not-done:3 cover:report-setup:3
cover:resume:3 cover:running-behind:2 cover:set-doneness:3 cover:set-method:2 cover:set-units:3
empty:acknowledge:4 empty:add-hands:6 empty:affirm:3 empty:ask-options:4 empty:best6 empty:choose:5
empty:deny:4 empty:note-guest:3 empty:note-guest:6 empty:report-started:5 empty:set-timer:3
empty:talk3 expecting:choice:affirm expecting:guests:report-guests first:cook-away first:lack
first:set-doneness first:watch for:ask-time-left>ask-next for:report-done>report-out for:report-reading>report-trouble
for:report-setup>report-out for:report-started>add-dish for:report-started>set-timer gained:cancel-timer
gained:cook-away least0:many1 least3:many1 left4:many3 lost:ask-amount lost:cancel-timer lost:correct
many0:clauses1 many0:clauses3 many0:long5 many1:clauses2 many1:long1 many2:clauses2 many4:clauses4
mean4 mean5 mood:intention:add-dish mood:intention:shift-serving mood:negative:set-units mood:request:pause
mood:statement:correct mood:statement:deed mood:statement:report-oven mood:statement:report-setup
mood:statement:set-serving-time mood:statement:watch slots:ask-shopping: slots:ask-temperature:when
slots:drop-dish:dish slots:note-guest:need,value,who slots:note-guest:need,who slots:repeat:
slots:report-done:step slots:report-done:step,time slots:report-trouble:time,trouble slots:resume:
slots:set-method:method slots:shift-serving:minutes slots:start-over: slots:undo: slots:watch:temperature,unit
stage::affirm stage::set-guests stage:carve:report-reading stage:low-roast:report-reading stage:preheat:report-oven
stage:prep:choose stage:rest:running-behind stage:served:report-done talk:best6 talk:expecting:
talk:have talk:helper6 talk:likely3 talk:likely8 talk:long5 text:choose:4 text:cook-away:1
text:describe-roast:2 text:describe-roast:4 text:frame:6 text:guess:3 text:pause:2 text:phrase:3
text:repeat:2 text:report-setup:4 text:report-trouble:0 text:running-behind:7 text:set-method:4
text:set-timer:4 text:shift-serving:3 text:shift-serving:5 text:undo:3 then:ask-next>ask-status
then:deed>shift-serving then:describe-roast>set-serving-time then:lack>report-done then:report-done>add-dish
then:report-done>report-setup then:report-out>set-serving-time then:report-oven>lack then:report-reading>report-guests
then:report-trouble>ask-status then:running-behind>report-oven then:set-doneness>set-serving-time
then:set-serving-time>report-not-done then:watch>shift-serving without:add-dish without:report-guests
without:report-started:frame:5 without:set-guests without:shift-serving:phrase:5
2 =affirm:guess =ask-plan =ask-safety =ask-shopping =ask-status:phrase =ask-temperature =ask-temperature:phrase
=ask-time-left =cook-away:phrase =emergency =pause:guess =report-reading:phrase =report-trouble:phrase
=running-behind:phrase acts:talk6 acts:talk7 clause:add-dish:guess:3 clause:add-hands:frame:7
clause:add-hands:guess:5 clause:add-hands:phrase:7 clause:add-hands:phrase:8 clause:ask:guess:7
clause:choose:phrase:7 clause:correct:across:2 clause:deed:frame:5 clause:deed:phrase:8 clause:guess:7
clause:lack:guess:2 clause:lack:guess:4 clause:note-guest:phrase:5 clause:phrase:6 clause:report-guests:phrase:5
clause:report-oven:guess:3 clause:report-reading:frame:4 clause:report-reading:frame:7 clause:report-reading:phrase:2
clause:report-reading:phrase:3 clause:report-reading:phrase:7 clause:report-setup:phrase:0
clause:report-setup:phrase:1 clause:report-trouble:guess:5 clause:report-trouble:phrase:1 clause:resume:frame:2
clause:set-guests:phrase:3 clause:set-timer:frame:3 clause:set-timer:frame:5 cover:ask-amount:2
cover:ask-next:1 cover:choose:3 cover:cook-away:1 cover:cook-away:3 cover:describe-roast:0
cover:frame:2 cover:report-not-done:2 cover:report-setup:0 cover:report-trouble:3 cover:set-units:2
cover:start-over:3 empty:acknowledge:3 empty:ask-next:3 empty:ask-plan:0 empty:ask-plan:4 empty:ask-safety:2
empty:ask-why:1 empty:cancel-timer:2 empty:note-guest:1 empty:report-not-done:1 empty:report-out:1
empty:report-out:3 empty:set-guests:1 empty:set-guests:8 empty:start-over:5 empty:talk5 empty:watch:4
first:correct first:repeat first:report-guests first:set-units first:start-over for:add-dish>report-done
for:add-dish>report-started for:ask-how>add-dish for:ask-plan>set-serving-time for:ask-status>ask-next
for:ask-status>ask-temperature for:ask-temperature>report-oven for:report-not-done>drop-dish
for:report-trouble>report-not-done for:set-method>report-started for:set-timer>cancel-timer
gained:correct gained:emergency gained:report-done least1:many1 least2:many3 left2:many1 lost:frame:1
many2:long3 mood:question:quiet mood:question:set-timer mood:request:report-oven mood:request:set-guests
mood:statement:report-trouble mood:statement:set-doneness mood:story:report-guests mood:story:watch
slots:add-hands:does,who slots:ask-substitute:ingredient slots:describe-roast:bones,cut,weight,weightUnit
slots:describe-roast:frozen slots:describe-roast:startTemperature slots:emergency:kind slots:note-guest:need,value
slots:report-oven:minutesAgo,temperature stage::correct stage::report-started stage:carve:ask-how
stage:carve:report-not-done stage:hold:set-timer stage:low-roast:correct stage:preheat:ask-temperature
stage:prep:ask-why stage:rest:report-oven stage:rest:report-setup stage:served:report-trouble
talk:found2 talk:frame:1 text:add-hands:5 text:correct:5 text:correct:6 text:deed:3 text:describe-roast:3
text:note-guest:1 text:note-guest:5 text:phrase:7 text:report-oven:2 text:report-reading:8
text:set-doneness:3 text:set-units:8 text:watch:3 then:add-dish>report-setup then:add-hands>report-done
then:add-hands>report-started then:ask-time-left>ask-temperature then:deed>set-doneness then:drop-dish>ask
then:report-guests>report-started then:report-not-done>ask-next then:report-not-done>report-done
then:report-not-done>report-out then:report-out>report-not-done then:report-oven>ask-status
then:report-reading>quiet then:report-reading>report-reading then:report-trouble>ask-how then:report-trouble>ask-safety
then:running-behind>report-not-done then:set-guests>add-dish then:set-timer>ask-time-left then:shift-serving>report-not-done
twice:add-dish twice:report-reading without:describe-roast:phrase:2 without:note-guest without:report-out
without:report-out:guess:5 without:report-oven:phrase:5 without:report-started
3 =ask-how =ask-safety:phrase =ask-time-left:phrase =drop-dish:phrase =note-guest =report-done:frame
=report-oven:frame =report-trouble =set-units:phrase =skip-step =skip-step:frame acts:talk0
breath6:false clause:across:8 clause:add-dish:frame:1 clause:add-dish:guess:5 clause:add-dish:guess:7
clause:add-dish:phrase:4 clause:add-hands:across:5 clause:add-hands:phrase:1 clause:affirm:phrase:3
clause:choose:phrase:5 clause:choose:phrase:6 clause:describe-roast:phrase:2 clause:drop-dish:guess:8
clause:drop-dish:phrase:2 clause:note-guest:guess:8 clause:note-guest:phrase:3 clause:note-guest:phrase:4
clause:quiet:phrase:8 clause:report-guests:frame:3 clause:report-guests:phrase:6 clause:report-guests:phrase:7
clause:report-not-done:frame:4 clause:report-not-done:guess:7 clause:report-reading:frame:6
clause:report-setup:frame:4 clause:report-setup:guess:7 clause:report-trouble:phrase:0 clause:resume:guess:3
clause:set-guests:frame:6 clause:set-serving-time:guess:4 clause:set-serving-time:guess:5 clause:shift-serving:guess:7
clause:skip-step:frame:3 clause:undo:across:2 clause:watch:across:5 clause:watch:frame:4 cover:ask-why:3
cover:describe-roast:3 cover:report-guests:2 cover:set-doneness:1 cover:set-serving-time:3
empty:add-hands:1 empty:ask-options:2 empty:ask-plan:3 empty:ask-time-left:3 empty:ask-time-left:4
empty:ask-why:6 empty:best0 empty:choose:4 empty:lack:5 empty:report-not-done:2 empty:report-out:0
empty:report-started:4 empty:report-trouble:3 empty:running-behind:1 empty:set-doneness:5 empty:set-timer:2
empty:shift-serving:2 empty:shift-serving:3 empty:talk7 empty:talk8 first:add-dish first:ask-amount
first:ask-options first:ask-safety first:emergency first:report-trouble for:ask-status>ask-options
for:ask-substitute>ask-status for:report-out>add-dish for:report-started>report-reading for:set-doneness>note-guest
how:stop how:whole guessed left0:many2 lost3:gained1 lost:frame:3 lost:phrase:0 many0 many1:long2
many2:long6 mood:negative:drop-dish mood:negative:quiet mood:negative:set-serving-time mood:question:set-units
mood:request:repeat mood:statement:describe-roast mood:statement:lack mood:statement:report-guests
mood:story:add-hands mood:story:lack mood:story:resume slots:cancel-timer:label slots:correct:time
slots:report-oven:minutesAgo,state slots:set-serving-time:time stage::ask-next stage::ask-why
stage::deny stage::help stage:low-roast:choose stage:planning:ask-shopping stage:rest:choose
stage:rest:report-started talk talk:ask-how talk:best0 talk:courtesy talk:guess:6 talk:note-guest
talk:report-setup text:across:8 text:choose:3 text:deed:1 text:drop-dish:0 text:frame:7 text:guess:6
text:help:3 text:lack:4 text:phrase:6 text:quiet:4 text:repeat:5 text:report-guests:3 text:report-oven:7
text:report-oven:8 text:report-trouble:2 text:resume:3 text:resume:4 text:set-method:3 text:shift-serving:7
text:start-over:3 text:start-over:5 text:watch:7 then:add-dish>add-dish then:add-dish>set-guests
then:cook-away>set-serving-time then:deed>describe-roast then:deed>drop-dish then:note-guest>drop-dish
then:report-out>describe-roast then:report-out>report-trouble then:report-oven>set-timer then:report-reading>ask-next
then:report-setup>describe-roast then:report-started>report-guests then:set-method>report-reading
then:watch>ask twice:report-oven without:add-hands:phrase:6 without:report-out:phrase:3 without:report-trouble:frame:3
without:set-serving-time:phrase:3
4 =add-hands:across =add-hands:phrase =ask-how:phrase =ask-next:frame =ask-options =ask-time-left:guess
=emergency:guess =help:guess =report-reading:guess =report-setup:phrase =running-behind =set-doneness:guess
acts:talk4 clause:across:2 clause:across:3 clause:ask:frame:7 clause:ask:phrase:2 clause:cook-away:frame:4
clause:cook-away:guess:4 clause:describe-roast:phrase:1 clause:drop-dish:frame:1 clause:frame:4
clause:have:phrase:2 clause:note-guest:guess:4 clause:quiet:phrase:2 clause:report-guests:phrase:2
clause:report-not-done:phrase:0 clause:report-not-done:phrase:2 clause:report-trouble:phrase:2
clause:running-behind:phrase:4 clause:set-doneness:frame:5 clause:set-guests:phrase:7 clause:set-guests:phrase:8
clause:set-timer:phrase:3 clause:shift-serving:frame:2 clause:skip-step:phrase:3 clause:undo:across:6
clause:watch:across:2 cover:ask-options:3 cover:ask-substitute:1 cover:ask-time-left:3 cover:describe-roast:2
cover:drop-dish:1 cover:emergency:3 cover:note-guest:3 cover:quiet:1 cover:report-oven:1 cover:report-reading:3
empty:add-hands:3 empty:ask-amount:4 empty:ask-guests:1 empty:ask-shopping:4 empty:ask-substitute:1
empty:drop-dish:2 empty:pause:2 empty:pause:6 empty:quiet:1 empty:repeat:0 empty:repeat:5 empty:report-guests:0
empty:report-oven:0 empty:report-setup:1 empty:report-trouble:0 empty:set-doneness:4 empty:set-doneness:7
empty:set-doneness:8 empty:skip-step:2 first:ask-plan first:report-setup first:report-started
first:running-behind for:add-hands>drop-dish for:cook-away>running-behind for:drop-dish>ask-substitute
for:lack>report-trouble for:note-guest>add-dish for:report-guests>report-done for:report-reading>set-guests
for:report-trouble>quiet for:set-serving-time>note-guest gained:add-dish gained:guess:4 gained:phrase:2
gained:phrase:3 gained:repeat gained:set-doneness lost1:gained1 many0:long0 many3:clauses3
mood:intention:set-serving-time mood:intention:skip-step mood:statement:resume mood:statement:running-behind
mood:statement:set-units mood:statement:start-over slots:ask-options: slots:ask-status:about
slots:correct:count slots:report-trouble:minutes,trouble stage::undo stage:hold:shift-serving
stage:low-roast:ask-temperature stage:low-roast:ask-why stage:low-roast:cancel-timer stage:planning:note-guest
stage:planning:set-guests stage:planning:set-units stage:preheat:ask-time-left stage:preheat:report-done
stage:preheat:report-not-done stage:prep:add-hands stage:prep:affirm stage:prep:ask-substitute
stage:prep:pause stage:prep:report-thermometer stage:rest:ask-next stage:rest:cancel-timer
stage:served:ask-time-left talk:expecting:roast talk:likely1 talk:likely2 talk:long0 talk:report-not-done
talk:report-oven text:across:2 text:across:3 text:add-dish:4 text:ask:5 text:cook-away:4 text:correct:0
text:note-guest:3 text:note-guest:4 text:report-guests:5 text:report-reading:2 text:report-setup:7
text:report-trouble:6 text:report-trouble:7 text:running-behind:0 text:set-serving-time:8 text:set-units:3
then:add-dish>ask then:ask>set-timer then:cook-away>ask-status then:lack>report-started then:report-done>ask-how
then:report-done>ask-next then:report-not-done>ask-time-left then:report-oven>ask-time-left
then:report-oven>describe-roast then:report-oven>report-not-done then:report-reading>shift-serving
then:report-started>set-doneness then:report-trouble>cook-away then:running-behind>shift-serving
then:set-guests>deed then:set-serving-time>report-started then:set-serving-time>shift-serving
then:set-timer>report-out then:skip-step>ask-time-left then:undo>add-dish without:report-out:phrase:7
without:report-setup
5 =add-hands:guess =ask-amount:guess =lack:guess =report-guests:phrase =report-started:frame
=set-method:phrase =set-serving-time:phrase =set-timer:phrase clause:across:1 clause:affirm:guess:5
clause:ask:guess:6 clause:ask:guess:8 clause:cook-away:guess:5 clause:correct:across:1 clause:deed:guess:8
clause:drop-dish:phrase:4 clause:guess:8 clause:lack:frame:3 clause:lack:guess:5 clause:lack:guess:6
clause:note-guest:guess:7 clause:pause:guess:2 clause:repeat:phrase:1 clause:repeat:phrase:3
clause:report-not-done:guess:8 clause:report-not-done:phrase:6 clause:report-not-done:phrase:7
clause:report-oven:frame:5 clause:report-oven:guess:8 clause:report-oven:phrase:3 clause:report-reading:frame:3
clause:resume:phrase:5 clause:set-doneness:guess:3 clause:set-guests:phrase:0 clause:set-guests:phrase:4
clause:set-guests:phrase:6 clause:set-timer:guess:6 clause:shift-serving:frame:5 clause:shift-serving:phrase:3
clause:undo:frame:4 clause:watch:across:0 clause:watch:across:4 clause:watch:across:8 cover:choose:1
cover:phrase:3 cover:repeat:1 cover:report-done:0 cover:running-behind:3 cover:set-doneness:2
cover:set-method:1 cover:set-timer:3 cover:skip-step:0 empty:acknowledge:5 empty:ask-plan:5
empty:ask-substitute:2 empty:repeat:2 empty:report-setup:3 empty:resume:2 empty:resume:8 expecting:reading:ask-status
expecting:roast:set-guests first:ask-slice first:forget-kitchen first:skip-step for:ask-how>ask-temperature
for:ask-how>report-trouble for:ask-next>set-units for:deny>affirm for:note-guest>set-doneness
for:report-not-done>report-reading for:report-setup>report-started for:report-started>add-hands
for:report-started>report-trouble for:set-serving-time>report-started gained:frame:0 lost0:gained0
lost:guess:4 mood:intention:choose mood:question:add-dish mood:question:ask mood:question:report-guests
mood:question:shift-serving mood:statement:set-method mood:story:affirm slots:ask-how:topic
slots:ask-temperature:about,temperature slots:cook-away:minutes slots:describe-roast:cut,weight,weightUnit
stage::lack stage::pause stage:carve:report-done stage:hold:quiet stage:low-roast:ask-time-left
stage:low-roast:report-out stage:prep:lack stage:rest:report-guests stage:rest:set-timer stage:sear:report-not-done
talk:acknowledge talk:ask-safety talk:expecting:guests text:across:1 text:add-dish:5 text:ask:4
text:ask:7 text:correct:2 text:drop-dish:4 text:frame:3 text:frame:5 text:guess:5 text:lack:7
text:phrase:4 text:report-oven:0 text:report-oven:6 text:report-setup:0 text:set-doneness:5
text:set-method:8 text:set-serving-time:7 text:set-timer:2 text:skip-step:1 text:skip-step:5
then:add-dish>set-serving-time then:add-hands>deed then:correct>set-serving-time then:deed>report-oven
then:note-guest>report-trouble then:report-done>ask-status then:report-out>ask-status then:report-out>report-out
then:report-oven>report-oven then:report-reading>add-hands then:report-reading>watch then:report-setup>report-out
then:report-started>cook-away then:report-trouble>ask-next then:running-behind>ask then:set-doneness>report-done
then:set-guests>report-setup then:set-method>deed then:set-serving-time>report-trouble then:skip-step>report-started
twice:report-done twice:report-out twice:report-started without:deny:phrase:6 without:report-reading:frame:4
6 =add-dish:guess =describe-roast:frame =set-units =watch =watch:frame clause:add-dish:phrase:5
clause:cancel-timer:guess:3 clause:cook-away:guess:6 clause:deed:frame:6 clause:deny:guess:5
clause:drop-dish:guess:7 clause:drop-dish:phrase:3 clause:frame:7 clause:frame:8 clause:note-guest:guess:6
clause:note-guest:phrase:8 clause:quiet:frame:2 clause:report-oven:frame:1 clause:report-oven:phrase:1
clause:report-oven:phrase:8 clause:report-reading:guess:4 clause:resume:phrase:3 clause:set-guests:frame:4
clause:set-guests:frame:7 clause:set-timer:guess:8 clause:set-units:phrase:7 clause:shift-serving:frame:3
clause:shift-serving:phrase:4 clause:undo:across:5 cover:ask-amount:1 cover:ask-options:0 cover:report-trouble:0
cover:set-guests:0 cover:set-guests:3 cover:shift-serving:3 cover:skip-step:1 cover:start-over:2
empty:affirm:5 empty:best1 empty:correct:1 empty:courtesy:6 empty:drop-dish:6 empty:repeat:4
empty:report-guests:1 empty:report-guests:4 empty:report-oven:8 empty:set-guests:3 empty:start-over:3
expecting:confirmation:affirm expecting:step:ask-next first:describe-roast for:add-dish>ask-amount
for:ask-how>ask-next for:report-done>ask-substitute for:report-not-done>report-oven for:report-not-done>report-trouble
for:report-reading>set-doneness for:report-started>ask-substitute for:skip-step>lack gained:guess:5
least6:many2 least8:many2 mood:negative:describe-roast mood:story:add-dish slots:ask-why:topic
slots:describe-roast:startTemperature,startTemperatureUnit slots:report-reading:temperature,thermometer,unit,where
slots:report-reading:temperature,unit slots:report-trouble:minutesAgo,trouble slots:watch:temperature
stage::ask-plan stage::note-guest stage::set-doneness stage::set-serving-time stage::shift-serving
stage:low-roast:set-guests stage:planning:report-setup stage:preheat:ask-how stage:preheat:report-setup
stage:prep:undo stage:rest:shift-serving stage:rest:undo talk:ask-amount talk:drop-dish talk:helper4
talk:helper5 talk:stage:put-away text:add-hands:7 text:add-hands:8 text:ask:3 text:cancel-timer:1
text:choose:5 text:deed:4 text:drop-dish:5 text:guess:4 text:quiet:0 text:report-reading:4
text:report-setup:6 text:report-trouble:5 text:resume:7 text:resume:8 text:set-guests:1 text:set-units:6
text:shift-serving:1 text:skip-step:4 text:start-over:7 then:add-hands>report-trouble then:cancel-timer>report-started
then:cook-away>ask-time-left then:deed>ask then:deed>report-reading then:lack>report-oven then:note-guest>set-doneness
then:report-out>report-started then:report-reading>cook-away then:report-reading>running-behind
then:report-reading>set-doneness then:report-reading>set-timer then:report-started>report-started
then:report-trouble>deed then:report-trouble>report-oven then:set-guests>lack then:set-guests>quiet
then:set-method>describe-roast then:set-serving-time>drop-dish then:set-serving-time>set-timer
then:set-timer>set-timer then:set-units>report-trouble then:shift-serving>report-reading then:skip-step>add-hands
then:skip-step>lack twice:set-timer without:add-dish:phrase:3 without:add-hands without:ask-why:phrase:6
without:describe-roast:phrase:3 without:note-guest:phrase:2
7 =ask-why:frame =ask-why:guess =forget-kitchen =forget-kitchen:across =report-guests:frame
clause:deed:frame:4 clause:deed:phrase:2 clause:describe-roast:phrase:8 clause:emergency:guess:3
clause:forget-kitchen:across:2 clause:help:guess:3 clause:note-guest:phrase:7 clause:phrase:8
clause:quiet:phrase:5 clause:report-guests:frame:5 clause:report-reading:guess:5 clause:report-trouble:frame:0
clause:report-trouble:phrase:4 clause:running-behind:frame:6 clause:set-doneness:phrase:7 clause:set-method:phrase:8
clause:set-serving-time:phrase:5 clause:set-serving-time:phrase:6 clause:set-timer:guess:4
clause:set-units:guess:6 clause:shift-serving:phrase:6 clause:undo:across:7 clause:watch:across:3
cover:ask-temperature:2 cover:cancel-timer:1 cover:lack:3 cover:report-oven:2 cover:report-reading:1
empty:courtesy:4 empty:deny:3 empty:describe-roast:1 empty:resume:6 empty:set-units:3 for:correct>set-serving-time
for:report-trouble>correct for:shift-serving>running-behind many2:clauses1 many3:clauses1 many3:clauses2
many3:long4 many3:long6 mood:negative:report-trouble mood:question:report-not-done mood:question:report-reading
mood:question:set-serving-time mood:request:quiet mood:request:resume mood:statement:emergency
slots:add-hands:who slots:ask-temperature:about slots:forget-kitchen:about slots:report-guests:count,state
slots:report-reading:temperature,where stage::ask-shopping stage:low-roast:report-oven stage:low-roast:report-trouble
stage:planning:ask-options stage:planning:forget-kitchen stage:prep:repeat stage:prep:resume
stage:prep:running-behind stage:prep:set-serving-time stage:put-away:report-done stage:rest:ask-slice
stage:rest:ask-substitute stage:rest:ask-temperature stage:sear:report-trouble talk:frame:3
text:add-dish:8 text:deed:6 text:deed:8 text:describe-roast:5 text:forget-kitchen:2 text:frame:8
text:have:2 text:phrase:5 text:phrase:8 text:quiet:2 text:report-not-done:2 text:report-not-done:4
text:report-not-done:7 text:report-reading:5 text:resume:6 text:set-method:5 text:set-serving-time:4
text:start-over:4 text:undo:7 text:watch:1 text:watch:5 then:add-dish>ask-time-left then:deed>running-behind
then:describe-roast>set-doneness then:lack>report-reading then:note-guest>add-hands then:note-guest>ask-how
then:report-done>describe-roast then:report-done>running-behind then:report-done>watch then:report-oven>report-done
then:report-oven>shift-serving then:report-setup>ask-time-left then:report-setup>lack then:report-started>ask-time-left
then:report-started>shift-serving then:report-trouble>ask then:report-trouble>ask-why then:report-trouble>report-out
then:set-doneness>report-setup then:set-guests>describe-roast then:set-guests>set-doneness
then:set-guests>set-serving-time then:set-serving-time>set-guests then:set-timer>set-guests
then:shift-serving>watch without:report-reading:frame:3 without:report-setup:phrase:4
8 =cancel-timer:phrase =resume:phrase =set-guests:phrase acts:talk5 breath4:true clause:add-dish:phrase:3
clause:cook-away:phrase:5 clause:correct:guess:4 clause:deed:phrase:3 clause:deny:frame:5 clause:describe-roast:phrase:5
clause:drop-dish:frame:2 clause:lack:phrase:7 clause:phrase:7 clause:report-guests:frame:2
clause:report-not-done:guess:4 clause:report-reading:guess:7 clause:report-reading:phrase:5
clause:report-setup:frame:2 clause:running-behind:frame:8 clause:running-behind:phrase:5 clause:set-doneness:phrase:5
clause:set-serving-time:frame:8 clause:set-timer:frame:2 clause:set-timer:phrase:7 clause:set-units:guess:5
clause:shift-serving:frame:4 clause:watch:across:6 clause:watch:frame:8 cover:pause:1 empty:affirm:2
empty:ask-why:5 empty:choose:3 empty:courtesy:0 empty:running-behind:3 empty:set-method:4 empty:set-method:5
empty:undo:0 expecting:choice:choose expecting:step:report-done expecting:step:report-not-done
for:ask-next>ask-status for:lack>report-not-done for:report-reading>correct for:report-started>report-setup
for:set-method>skip-step least5:many3 least7:many2 many0:clauses4 many2:long4 mood:negative:repeat
mood:question:cancel-timer mood:request:skip-step mood:story:repeat slots:ask-temperature:temperature
slots:correct:bones slots:describe-roast:boneless,cut,prepared,weight,weightUnit slots:report-done:minutesAgo,step
slots:report-setup:pan,shelf slots:set-guests:change stage:hold:ask-next stage:hold:choose
stage:low-roast:set-timer stage:planning:describe-roast stage:prep:ask-plan stage:prep:drop-dish
stage:prep:note-guest stage:rest:ask-options stage:rest:ask-time-left talk:expecting:doneness
talk:found1 text:affirm:7 text:deed:5 text:deny:5 text:drop-dish:8 text:repeat:4 text:resume:5
text:running-behind:6 text:set-method:7 text:set-serving-time:5 text:shift-serving:6 text:watch:8
then:cook-away>shift-serving then:deed>report-guests then:describe-roast>set-guests then:note-guest>report-started
then:report-done>cook-away then:report-guests>report-out then:report-not-done>report-oven then:report-out>ask-time-left
then:report-out>cook-away then:report-reading>ask then:report-started>ask-substitute then:report-started>report-not-done
then:set-guests>ask-substitute then:set-guests>report-trouble then:set-method>ask-safety then:skip-step>report-setup
then:watch>report-oven then:watch>report-trouble without:choose without:report-out:phrase:4
without:report-setup:phrase:3
9 =ask-safety:across =cook-away:frame =report-oven:phrase =report-thermometer =report-thermometer:across
=set-timer:frame =set-units:guess clause:affirm:guess:4 clause:ask:frame:5 clause:ask:frame:8
clause:cancel-timer:phrase:4 clause:cook-away:frame:7 clause:correct:across:5 clause:deed:frame:1
clause:deed:phrase:7 clause:frame:6 clause:lack:phrase:6 clause:repeat:frame:2 clause:resume:phrase:4
clause:running-behind:guess:8 clause:set-doneness:guess:2 clause:set-doneness:phrase:0 clause:set-doneness:phrase:1
clause:set-doneness:phrase:4 clause:set-serving-time:phrase:4 clause:set-timer:phrase:2 clause:set-units:phrase:4
clause:skip-step:phrase:6 clause:skip-step:phrase:8 clause:watch:across:1 cover:ask-how:1 cover:ask-shopping:1
cover:ask-substitute:2 cover:ask-temperature:1 cover:deny:1 cover:set-doneness:0 cover:set-serving-time:2
cover:set-units:1 empty:correct:4 empty:correct:5 empty:correct:6 empty:note-guest:4 empty:quiet:3
empty:repeat:7 empty:report-not-done:3 first:report-thermometer for:ask-plan>set-guests for:drop-dish>have
for:set-timer>cook-away how:none least6:many3 left1:many3 mood:intention:add-hands mood:intention:report-not-done
mood:intention:set-method mood:negative:cancel-timer mood:request:choose mood:request:cook-away
slots:correct:weight,weightUnit slots:report-out:time slots:report-oven:mode,temperature,unit
slots:report-setup:oven slots:report-setup:pan,rack,shelf slots:report-thermometer:bias stage::add-hands
stage::report-setup stage:carve:report-trouble stage:low-roast:ask-status stage:planning:drop-dish
stage:planning:set-method stage:preheat:report-started stage:prep:report-done stage:rest:report-not-done
talk:stage:hold text:add-hands:4 text:cook-away:7 text:emergency:3 text:lack:8 text:note-guest:6
text:repeat:8 text:report-trouble:8 text:start-over:6 text:watch:0 text:watch:6 then:deny>correct
then:drop-dish>note-guest then:lack>deed then:report-out>report-reading then:report-reading>cancel-timer
then:report-started>skip-step then:report-trouble>shift-serving then:set-timer>ask-amount then:set-timer>ask-status
then:set-timer>deed then:shift-serving>ask then:watch>ask-status
10 =ask-slice =ask-slice:across =report-out:phrase =start-over:phrase =watch:across clause:across:5
clause:add-hands:guess:4 clause:add-hands:guess:8 clause:cook-away:frame:3 clause:cook-away:frame:8
clause:cook-away:guess:7 clause:deed:across:0 clause:lack:phrase:8 clause:note-guest:frame:7
clause:pause:phrase:3 clause:repeat:phrase:7 clause:report-not-done:frame:5 clause:report-not-done:guess:5
clause:set-guests:across:5 clause:set-timer:frame:7 clause:set-units:phrase:5 clause:skip-step:phrase:7
clause:start-over:phrase:5 cover:ask-options:2 cover:cook-away:0 cover:frame:1 cover:repeat:2
empty:add-dish:1 empty:ask-temperature:2 empty:choose:7 empty:help:6 empty:report-done:2 empty:report-guests:3
empty:set-serving-time:6 for:ask-time-left>ask-status for:cook-away>report-done for:pause>cook-away
for:report-started>ask-why gained:guess:8 many2:long5 mood:negative:skip-step mood:request:cancel-timer
mood:story:drop-dish slots:ask-guests:about slots:ask-shopping:about slots:ask-slice: slots:ask-temperature:doneness
slots:correct:minutesAgo slots:describe-roast:boneless,prepared,weight,weightUnit slots:describe-roast:prepared
slots:report-not-done:step slots:report-oven:temperature,unit slots:report-oven:temperature,which
slots:report-setup:fan,pan,rack,shelf slots:report-setup:rings slots:report-started:step,time
stage::ask-amount stage::emergency stage::resume stage::running-behind stage:hold:ask-safety
stage:hold:report-done stage:low-roast:report-guests stage:prep:report-setup stage:served:ask-safety
talk:expecting:serving-time talk:guess:4 talk:set-doneness text:across:5 text:affirm:6 text:lack:5
text:note-guest:8 text:report-oven:3 text:report-trouble:1 text:set-timer:8 text:set-units:4
text:shift-serving:8 then:add-hands>cook-away then:deed>add-hands then:deed>cook-away then:deed>watch
then:drop-dish>lack then:report-done>drop-dish then:report-done>report-guests then:report-done>set-guests
then:report-out>report-oven then:report-out>set-guests then:report-oven>report-guests then:report-oven>undo
then:report-reading>report-done then:report-trouble>ask-options then:set-doneness>set-guests
then:skip-step>ask without:add-dish:phrase:1
11 =ask-options:frame =deny:frame clause:across:6 clause:add-dish:frame:5 clause:add-dish:guess:6
clause:cancel-timer:guess:6 clause:choose:frame:3 clause:cook-away:phrase:3 clause:correct:across:3
clause:describe-roast:guess:4 clause:report-oven:frame:7 clause:report-setup:phrase:6 clause:report-setup:phrase:8
clause:report-trouble:phrase:8 clause:resume:phrase:6 clause:set-method:phrase:5 clause:set-method:phrase:7
clause:set-serving-time:frame:6 clause:set-units:frame:5 clause:shift-serving:frame:6 clause:undo:across:4
clause:undo:across:8 clause:watch:guess:7 cover:add-dish:2 empty:add-dish:3 empty:ask-guests:4
empty:cook-away:4 empty:pause:3 empty:report-out:2 empty:set-doneness:2 empty:undo:1 empty:undo:6
expecting:confirmation:correct for:ask-next>add-dish for:ask-plan>add-dish for:cook-away>cancel-timer
for:report-oven>set-method helper8 mood:intention:note-guest mood:negative:running-behind mood:question:skip-step
mood:statement:report-not-done mood:story:note-guest slots:describe-roast:bones stage::describe-roast
stage:planning:set-serving-time stage:rest:ask-how stage:rest:ask-safety talk:expecting:reading
talk:stage:served text:across:6 text:ask:8 text:cook-away:6 text:cook-away:8 text:correct:4
text:drop-dish:6 text:frame:4 text:repeat:6 text:running-behind:4 text:running-behind:8 text:set-method:6
text:set-units:7 text:skip-step:7 then:add-dish>running-behind then:add-hands>report-reading
then:deed>cancel-timer then:deed>report-not-done then:drop-dish>set-doneness then:report-done>report-oven
then:report-not-done>report-reading then:report-reading>ask-how then:report-reading>report-out
then:report-trouble>report-done then:report-trouble>report-guests then:set-timer>ask then:set-timer>ask-how
then:set-timer>report-reading then:shift-serving>ask-time-left then:skip-step>note-guest without:report-done:frame:4
without:report-reading:guess:6 without:report-started:phrase:4
12 =ask-temperature:frame =drop-dish:frame =quiet:phrase =report-started:across =skip-step:phrase
=undo:across clause:across:4 clause:across:7 clause:add-hands:guess:7 clause:add-hands:phrase:4
clause:cancel-timer:phrase:5 clause:cook-away:phrase:7 clause:drop-dish:frame:4 clause:lack:guess:7
clause:report-guests:frame:7 clause:report-reading:phrase:8 clause:report-trouble:guess:8 clause:set-doneness:phrase:6
clause:set-doneness:phrase:8 clause:set-guests:phrase:1 clause:set-guests:phrase:5 clause:set-timer:frame:6
clause:set-timer:phrase:8 clause:shift-serving:frame:7 clause:shift-serving:phrase:8 clause:skip-step:frame:4
clause:start-over:phrase:7 clause:watch:frame:7 empty:ask-why:3 empty:correct:3 empty:lack:2
empty:report-oven:5 empty:report-trouble:6 empty:set-serving-time:3 expecting:confirmation:deny
for:ask-status>ask-safety mood:request:set-serving-time mood:request:set-units mood:story:cook-away
slots:ask-guests:about,who slots:ask-plan:about slots:cancel-timer:minutes slots:report-started:minutesAgo,step
slots:set-timer:label,minutes stage::cancel-timer stage::quiet stage:planning:start-over stage:rest:report-reading
text:across:4 text:across:7 text:affirm:4 text:cancel-timer:3 text:cancel-timer:6 text:choose:8
text:correct:7 text:deny:6 text:deny:7 text:deny:8 text:set-doneness:6 text:set-doneness:8
text:set-timer:7 then:lack>ask-why then:lack>describe-roast then:note-guest>ask-safety then:report-not-done>ask-why
then:report-reading>ask-status then:report-reading>note-guest then:report-setup>ask then:set-timer>report-done
then:shift-serving>ask-status then:skip-step>ask-next
13 =affirm:frame =report-guests:across =shift-serving:frame clause:add-dish:frame:7 clause:add-dish:phrase:6
clause:choose:guess:6 clause:note-guest:phrase:6 clause:pause:frame:5 clause:quiet:phrase:7
clause:repeat:phrase:6 clause:repeat:phrase:8 clause:report-guests:phrase:8 clause:report-not-done:phrase:8
clause:report-oven:phrase:7 clause:report-trouble:frame:1 clause:running-behind:phrase:6 clause:set-serving-time:frame:5
clause:set-timer:phrase:6 clause:shift-serving:phrase:7 cover:ask-safety:1 cover:report-guests:1
empty:have:1 empty:help:5 empty:pause:4 empty:set-units:4 empty:set-units:5 for:ask-next>shift-serving
for:ask-status>ask-time-left for:help>ask-options for:repeat>note-guest lost:frame:0 slots:ask-safety:about,temperature
slots:ask-temperature:temperature,unit slots:ask-time-left:about slots:describe-roast:bones,weight,weightUnit
stage::set-method stage:low-roast:cook-away stage:planning:ask-amount stage:planning:help stage:planning:set-doneness
stage:sear:report-done stage:sear:report-started stage:sear:skip-step stage:served:ask-how
text:cancel-timer:7 text:note-guest:7 text:report-guests:8 text:report-setup:8 text:set-units:2
text:set-units:5 text:undo:8 then:cook-away>report-reading then:deed>set-guests then:describe-roast>note-guest
then:note-guest>ask then:note-guest>ask-options then:report-done>report-not-done then:running-behind>deed
then:set-guests>shift-serving then:set-timer>shift-serving then:shift-serving>report-oven then:shift-serving>set-timer
without:report-trouble:guess:6
14 =ask-options:phrase =set-guests:across asked:true clause:choose:frame:8 clause:cook-away:phrase:6
clause:correct:across:7 clause:lack:frame:6 clause:lack:phrase:4 clause:report-trouble:frame:7
clause:report-trouble:phrase:3 clause:set-doneness:frame:3 clause:set-method:frame:2 clause:undo:across:3
empty:pause:5 empty:quiet:2 empty:resume:5 empty:set-guests:4 empty:start-over:2 for:lack>ask-substitute
left5:many3 mood:intention:set-doneness mood:request:add-dish mood:request:set-timer slots:correct:step,time
slots:report-out:minutesAgo slots:report-setup:pan,rack slots:report-setup:shelf slots:report-trouble:step,trouble
stage:low-roast:watch stage:planning:ask-guests stage:planning:ask-safety stage:put-away:ask-safety
stage:rest:skip-step talk:stage:low-roast text:pause:7 text:report-guests:6 text:running-behind:5
text:set-timer:6 text:undo:6 text:watch:4 then:describe-roast>report-started then:drop-dish>add-dish
then:report-guests>ask then:report-not-done>ask then:report-not-done>watch then:report-oven>set-doneness
then:report-reading>ask-why then:report-setup>add-hands then:shift-serving>report-out then:shift-serving>set-guests
then:skip-step>shift-serving
15 =running-behind:frame clause:add-dish:phrase:7 clause:ask:frame:6 clause:ask:phrase:8 clause:cancel-timer:phrase:8
clause:deed:frame:8 clause:quiet:phrase:4 clause:report-oven:frame:6 clause:set-serving-time:frame:4
clause:skip-step:phrase:4 clause:watch:frame:5 cover:drop-dish:2 cover:report-out:2 cover:set-method:0
for:set-guests>add-hands for:set-serving-time>cook-away mood:request:set-doneness slots:report-oven:mode,temperature
slots:skip-step:step stage:planning:add-dish stage:planning:have stage:prep:set-doneness stage:sear:report-oven
talk:unclear text:add-dish:6 text:cancel-timer:5 text:drop-dish:7 text:pause:5 text:pause:8
then:cook-away>deed then:cook-away>report-trouble then:report-trouble>describe-roast then:report-trouble>running-behind
then:set-guests>drop-dish then:set-units>ask then:set-units>set-serving-time then:shift-serving>report-done
then:watch>set-timer
16 =ask-shopping:phrase clause:cook-away:frame:6 clause:cook-away:phrase:8 clause:correct:across:6
clause:drop-dish:phrase:5 clause:drop-dish:phrase:6 clause:report-guests:phrase:4 clause:report-oven:phrase:2
clause:set-doneness:guess:6 clause:set-serving-time:phrase:7 clause:shift-serving:guess:8 clause:watch:guess:4
many0:clauses5 slots:ask-amount:guests,ingredient slots:report-oven:bias stage::ask-safety
stage:prep:report-not-done text:add-hands:6 text:pause:6 text:report-not-done:8 text:report-reading:1
text:set-guests:8 then:report-guests>report-oven then:report-reading>ask-temperature then:report-started>set-timer
17 =ask-substitute:phrase =set-serving-time:frame clause:add-hands:frame:6 clause:report-guests:frame:6
clause:report-not-done:frame:6 clause:report-setup:frame:6 cover:ask-plan:1 expecting:step:skip-step
slots:report-oven:temperature,time slots:report-reading:temperature,unit,where slots:running-behind:minutes
slots:set-units:temperature,weight stage:prep:skip-step text:add-dish:7 text:cook-away:5 text:describe-roast:7
text:repeat:7 text:report-guests:7 text:report-not-done:5 text:report-setup:5 text:set-guests:6
then:report-reading>report-not-done then:shift-serving>set-serving-time
18 breath6:true empty:help:3 least7:many3 slots:report-reading:temperature,time,unit slots:running-behind:factor
talk:helper2 text:lack:6 then:deed>set-timer then:report-oven>report-reading then:report-trouble>report-not-done
19 =ask-guests:phrase cover:skip-step:2 helper9 slots:report-reading:temperature,time stage::set-units
text:report-reading:7 then:report-guests>report-trouble then:report-oven>ask-next
20 breath5:true clause:deed:frame:7 clause:report-not-done:frame:7 slots:report-reading:temperature,thermometer
then:report-reading>report-oven then:set-timer>report-trouble
21 =ask-safety:frame then:shift-serving>report-trouble without:report-reading:frame:1
23 clause:set-serving-time:frame:3 mood:request:shift-serving
24 talk:helper3 text:report-not-done:6
25 helper10
28 helper11 slots:report-reading:minutesAgo,temperature
31 talk:helper1
41 talk:helper0`);
