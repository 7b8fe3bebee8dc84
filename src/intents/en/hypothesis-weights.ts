/** Learnt from the rules and learnt parts of the corpus by scripts/train-hypotheses.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const hypothesisWeights: Weights = weightsFrom(`
-40 helper1 helper3
-39 talk:helper11
-35 helper0
-33 helper2
-32 talk:helper10
-30 helper4 slots:correct:was without:correct:across:0
-28 empty:add-dish:6 then:ask>deed
-27 for:add-dish>drop-dish then:cook-away>set-timer
-26 helper6
-25 clause:resume:frame:2 for:drop-dish>report-trouble stage:planning:report-not-done then:ask>set-serving-time
without:report-reading:phrase:5
-24 clause:add-dish:guess:2 for:ask-substitute>ask-how stage:hold:set-guests stage:planning:report-started
then:ask>describe-roast then:ask>report-oven without:ask-options without:report-reading:phrase:6
without:report-trouble:guess:6
-23 for:ask-status>report-trouble then:ask-how>ask-next then:ask>add-dish then:ask>quiet then:describe-roast>report-done
then:report-oven>set-serving-time then:report-setup>report-trouble without:report-trouble:phrase:7
-22 clause:report-not-done:frame:0 empty:ask-options:5 for:ask-substitute>report-done for:ask-why>ask-how
for:cook-away>shift-serving for:correct>report-reading many0:long6 slots:add-hands: stage:low-roast:ask-shopping
stage:planning:report-trouble talk:helper9 talk:long6 text:affirm:2 without:set-doneness:phrase:4
-21 clause:add-hands:guess:2 empty:report-started:0 for:ask-how>report-done for:ask-substitute>lack
for:ask-temperature>report-reading for:report-guests>set-guests for:report-started>report-not-done
for:report-trouble>ask-time-left mood:question:start-over stage:planning:ask-next stage:rest:set-serving-time
stage:sear:emergency talk:expecting:choice talk:pause then:ask-options>ask-status then:ask>drop-dish
then:ask>report-trouble then:ask>shift-serving then:report-setup>ask-status without:report-guests:phrase:6
without:report-trouble:phrase:2 without:set-method without:set-serving-time:phrase:2 without:shift-serving:phrase:4
-20 clause:add-dish:phrase:1 clause:deny:guess:2 clause:drop-dish:frame:0 clause:pause:guess:4
clause:repeat:frame:2 clause:undo:frame:2 empty:ask-how:8 for:ask-next>report-done for:ask-substitute>drop-dish
for:note-guest>set-serving-time for:report-trouble>ask-next for:report-trouble>ask-options
for:set-guests>report-guests for:shift-serving>cook-away for:skip-step>ask-how lost:phrase:7
slots:report-not-done: stage:hold:drop-dish stage:planning:report-out then:ask-temperature>report-reading
then:ask>note-guest then:ask>set-doneness then:ask>skip-step then:correct>deed then:correct>report-started
then:report-setup>report-reading then:set-doneness>ask-time-left then:set-doneness>correct
without:ask-how:phrase:8 without:ask-status:phrase:4 without:lack:phrase:8 without:report-oven:guess:6
-19 clause:add-dish:phrase:2 clause:note-guest:phrase:0 clause:pause:frame:3 clause:start-over:guess:2
empty:ask-guests:0 empty:resume:0 for:ask-amount>ask-guests for:ask-next>repeat for:ask-safety>report-done
for:ask-status>ask-shopping for:ask-status>quiet for:ask-why>ask-temperature for:report-out>report-setup
for:skip-step>report-done for:skip-step>report-not-done mood:question:pause slots:report-oven:state
stage:planning:skip-step stage:preheat:report-out stage:rest:add-dish stage:served:report-not-done
text:help:0 then:ask>ask then:ask>cook-away then:ask>lack then:ask>report-guests then:correct>ask-status
then:correct>set-guests then:report-oven>report-trouble then:report-trouble>report-started
then:running-behind>set-timer without:report-guests:phrase:8 without:report-trouble:frame:8
without:set-guests:guess:6 without:set-units:phrase:6
-18 =add-hands:frame clause:affirm:guess:2 clause:quiet:guess:4 clause:resume:frame:0 clause:set-timer:frame:0
empty:drop-dish:3 empty:report-done:0 empty:report-setup:7 empty:set-serving-time:5 for:ask-guests>note-guest
for:ask-safety>set-doneness for:ask-temperature>ask-how for:describe-roast>report-not-done
for:lack>report-trouble for:note-guest>set-guests for:pause>quiet for:repeat>ask-next for:report-not-done>ask-time-left
for:report-not-done>lack for:report-not-done>report-done for:report-reading>report-out for:report-reading>report-setup
for:report-trouble>drop-dish for:running-behind>report-trouble for:set-serving-time>report-oven
for:set-serving-time>set-guests for:shift-serving>report-trouble for:shift-serving>set-timer
for:watch>ask-time-left left3:many3 stage:planning:repeat stage:planning:report-guests stage:prep:ask-status
stage:prep:report-out stage:sear:set-serving-time text:deny:1 then:ask-amount>ask-temperature
then:ask>report-setup then:ask>running-behind then:choose>choose then:correct>correct then:report-not-done>ask-amount
then:report-not-done>report-not-done then:skip-step>report-guests twice:choose twice:correct
without:add-dish:phrase:7 without:ask-safety:phrase:6 without:ask-shopping without:ask-time-left:phrase:4
without:deny without:note-guest:phrase:7 without:report-trouble:guess:7 without:set-serving-time:guess:6
-17 clause:affirm:phrase:3 clause:cook-away:guess:4 clause:deed:frame:0 clause:deed:phrase:0
clause:describe-roast:guess:5 clause:pause:frame:1 clause:set-guests:guess:2 clause:start-over:frame:1
empty:add-dish:8 empty:ask-how:2 empty:ask-next:8 empty:report-out:8 empty:set-guests:0 empty:shift-serving:0
expecting:guests:ask-guests for:ask-amount>ask-status for:ask-safety>ask-guests for:ask-safety>note-guest
for:ask-temperature>report-started for:ask-why>ask-status for:ask-why>ask-time-left for:cook-away>report-trouble
for:quiet>report-trouble for:report-done>report-setup for:report-trouble>quiet for:set-guests>ask-guests
lost:frame:6 mood:question:add-hands mood:question:quiet slots:report-setup:pan stage:low-roast:describe-roast
stage:put-away:report-started stage:rest:set-guests then:ask-amount>describe-roast then:ask-next>ask-status
then:ask-options>ask-how then:ask-safety>report-done then:ask-status>set-guests then:ask-temperature>ask-status
then:ask-temperature>set-doneness then:ask-time-left>ask-status then:ask-why>ask-status then:ask-why>report-out
then:ask>report-not-done then:ask>set-guests then:describe-roast>deed then:feed-public>ask
then:lack>ask-next then:report-started>add-dish then:set-serving-time>ask-time-left then:skip-step>ask-status
without:ask-next:phrase:7 without:ask-time-left:phrase:8 without:quiet without:report-guests:phrase:7
without:report-reading:frame:8 without:report-reading:phrase:4 without:report-started:frame:8
without:set-doneness:phrase:7 without:set-timer without:set-units:phrase:5 without:start-over
-16 =shift-serving:across clause:affirm:phrase:4 clause:correct:guess:3 clause:lack:frame:2
clause:repeat:guess:3 clause:set-method:guess:2 clause:set-serving-time:phrase:0 empty:ask-how:7
empty:ask-time-left:8 empty:choose:1 empty:choose:5 empty:deny:0 empty:drop-dish:6 empty:help:0
empty:report-not-done:8 empty:report-out:1 for:add-dish>add-hands for:add-dish>report-trouble
for:add-hands>report-started for:ask-amount>ask-substitute for:ask-safety>ask-options for:ask-safety>ask-temperature
for:ask-shopping>ask-next for:ask-status>ask-why for:ask-substitute>skip-step for:ask-temperature>report-trouble
for:note-guest>correct for:note-guest>report-trouble for:report-not-done>report-guests for:report-oven>set-guests
for:report-trouble>add-hands for:report-trouble>ask-how for:set-guests>report-reading for:set-timer>report-trouble
for:shift-serving>set-serving-time slots:correct: slots:running-behind: stage:carve:set-doneness
stage:hold:correct stage:low-roast:set-method stage:planning:cook-away stage:planning:quiet
stage:planning:watch stage:prep:report-guests stage:rest:cook-away stage:rest:set-doneness
stage:rest:watch stage:sear:ask-options stage:served:report-reading talk:helper8 text:correct:0
then:affirm>ask then:ask-guests>note-guest then:ask-how>ask-substitute then:ask-next>report-trouble
then:ask-options>ask-next then:ask-substitute>ask-substitute then:ask-substitute>report-done
then:ask-temperature>ask-next then:ask-temperature>ask-temperature then:ask-why>ask-options
then:ask>add-hands then:ask>set-units then:ask>watch then:correct>report-trouble then:quiet>deed
then:report-done>set-serving-time then:resume>repeat then:set-guests>correct twice:ask-substitute
twice:ask-temperature without:ask-time-left:guess:5 without:describe-roast:phrase:2 without:describe-roast:phrase:4
without:describe-roast:phrase:6 without:drop-dish:frame:2 without:lack:phrase:6 without:note-guest:phrase:8
without:report-done:guess:5 without:report-reading:phrase:7 without:report-started:across:0
without:shift-serving:phrase:5
-15 clause:affirm:guess:4 clause:choose:guess:3 clause:deny:guess:3 clause:have:phrase:0 clause:note-guest:guess:2
clause:report-not-done:phrase:1 clause:set-guests:guess:8 cover:note-guest:1 empty:add-dish:3
empty:ask-amount:0 empty:ask-substitute:8 empty:ask-temperature:1 empty:report-not-done:0 empty:report-out:0
empty:set-guests:7 expecting:step:running-behind for:ask-options>ask-plan for:ask-options>shift-serving
for:ask-safety>ask-how for:ask-temperature>ask-safety for:ask-temperature>watch for:ask-time-left>ask-how
for:ask-time-left>report-reading for:cancel-timer>set-timer for:cook-away>set-timer for:note-guest>add-dish
for:pause>report-done for:report-done>ask-status for:report-done>ask-time-left for:report-not-done>report-started
for:report-oven>ask-temperature for:report-oven>set-units for:report-reading>ask-status for:report-started>resume
for:report-trouble>report-out for:set-doneness>running-behind for:set-timer>shift-serving for:shift-serving>ask-options
for:skip-step>report-started helper5 how:open lost:deny lost:running-behind mood:intention:undo
mood:negative:start-over mood:question:correct mood:question:report-setup mood:request:correct
mood:story:set-serving-time stage:planning:cancel-timer stage:planning:report-done stage:planning:report-reading
stage:prep:ask-shopping stage:prep:cancel-timer stage:rest:ask-shopping stage:rest:pause stage:served:repeat
stage:served:report-started talk:stage:preheat text:affirm:1 text:resume:1 text:set-timer:1
text:shift-serving:1 then:add-dish>report-done then:affirm>deed then:ask-amount>ask-shopping
then:ask-how>add-dish then:ask-how>lack then:ask-how>report-trouble then:ask-options>ask-plan
then:ask-safety>report-started then:ask-status>report-guests then:ask-temperature>report-oven
then:ask-temperature>report-started then:ask-why>ask-why then:correct>describe-roast then:have>report-setup
then:lack>report-thermometer then:report-done>report-trouble then:report-out>shift-serving
then:report-setup>ask-substitute then:report-trouble>ask-plan then:report-trouble>report-trouble
then:set-doneness>ask twice twice:ask-why twice:report-trouble without:add-dish:frame:4 without:add-dish:phrase:3
without:add-hands:phrase:6 without:ask-next:guess:6 without:ask-plan:phrase:4 without:ask-status:frame:5
without:drop-dish:phrase:4 without:drop-dish:phrase:5 without:report-done:frame:8 without:report-done:guess:7
without:report-reading:phrase:2 without:report-trouble:frame:6 without:report-trouble:frame:7
without:set-guests:phrase:1 without:set-guests:phrase:7 without:set-timer:guess:6 without:shift-serving:guess:7
-14 =affirm:guess breath0:true clause:repeat:guess:2 clause:set-serving-time:phrase:1 empty:acknowledge:1
empty:ask-amount:7 empty:ask-shopping:4 empty:ask-shopping:7 empty:ask-status:0 empty:ask-temperature:0
empty:ask-temperature:7 empty:drop-dish:5 empty:pause:4 empty:report-setup:8 empty:resume:1
empty:set-units:2 expecting:confirmation:report-done expecting:confirmation:report-reading
expecting:reading:report-started expecting:roast:report-done expecting:step:deny expecting:step:report-setup
first:feed-public for:add-dish>ask-time-left for:ask-amount>ask-how for:ask-how>report-started
for:ask-options>repeat for:ask-safety>ask-substitute for:ask-status>ask-guests for:ask-status>set-serving-time
for:ask-time-left>report-started for:ask-time-left>report-trouble for:ask-why>report-out for:report-not-done>report-out
for:report-oven>ask-next for:report-oven>ask-time-left for:report-setup>report-done for:report-started>set-serving-time
for:report-trouble>set-doneness for:report-trouble>set-timer for:set-timer>ask-status for:set-timer>report-reading
for:set-timer>set-guests for:shift-serving>report-reading for:skip-step>ask-why lost0:gained2
mood:story:set-method slots:describe-roast:bones,cut slots:describe-roast:cut slots:report-done:time
slots:report-oven:state,time stage:carve:deny stage:carve:set-guests stage:hold:ask-plan stage:hold:skip-step
stage:put-away:report-reading stage:rest:ask-plan stage:sear:ask-next stage:sear:report-reading
stage:served:set-guests talk:found0 talk:lack talk:start-over text:add-dish:2 text:cancel-timer:0
text:report-not-done:0 then:ask-amount>ask-status then:ask-amount>ask-substitute then:ask-how>skip-step
then:ask-next>skip-step then:ask-plan>ask-why then:ask-plan>set-guests then:ask-substitute>ask-next
then:ask-temperature>set-units then:ask-time-left>report-reading then:ask-why>report-done then:ask>correct
then:correct>report-reading then:deed>drop-dish then:deed>report-thermometer then:deed>report-trouble
then:deny>deed then:drop-dish>report-done then:drop-dish>report-trouble then:note-guest>ask-plan
then:note-guest>report-done then:report-done>report-out then:report-guests>report-started then:report-oven>ask-safety
then:report-oven>ask-temperature then:report-reading>ask-substitute then:report-trouble>choose
then:report-trouble>deed then:set-doneness>ask-safety then:set-guests>ask-guests then:set-guests>ask-next
then:set-guests>ask-options then:set-guests>ask-safety then:set-serving-time>correct twice:set-guests
without:add-dish:frame:1 without:add-dish:frame:8 without:add-dish:guess:6 without:ask-next:phrase:8
without:ask-plan:phrase:2 without:ask-substitute:guess:5 without:ask-temperature:phrase:5 without:ask-temperature:phrase:6
without:ask-temperature:phrase:7 without:ask-time-left:guess:6 without:ask-why:phrase:8 without:feed-public
without:lack:phrase:7 without:report-done:frame:4 without:report-oven:frame:7 without:report-oven:frame:8
without:report-oven:phrase:0 without:report-reading:frame:4 without:report-reading:frame:6
without:report-setup:phrase:8 without:report-trouble:phrase:8 without:set-doneness:phrase:8
without:set-guests:phrase:8 without:set-serving-time without:set-serving-time:phrase:5 without:skip-step
without:skip-step:phrase:5
-13 asked:false clause:choose:guess:2 clause:lack:phrase:3 clause:quiet:phrase:2 clause:resume:frame:1
cover:note-guest:0 empty:add-hands:3 empty:ask-amount:3 empty:ask-guests:2 empty:ask-how:0
empty:ask-next:0 empty:ask-safety:5 empty:ask-slice:5 empty:ask-why:6 empty:deny:1 empty:quiet:7
empty:report-guests:7 empty:report-reading:7 empty:resume:8 empty:running-behind:0 empty:set-doneness:0
empty:set-doneness:6 empty:set-method:2 empty:set-timer:8 empty:watch:7 expecting:choice:affirm
expecting:doneness:note-guest for:ask-safety>report-trouble for:ask-temperature>report-done
for:cancel-timer>drop-dish for:describe-roast>report-guests for:describe-roast>set-guests for:drop-dish>report-started
for:pause>ask-options for:quiet>pause for:report-out>report-oven for:report-reading>report-done
for:report-reading>set-guests for:report-reading>set-timer for:report-setup>report-not-done
for:set-guests>add-dish for:set-guests>shift-serving for:set-method>report-done for:set-serving-time>cook-away
for:set-timer>report-not-done for:skip-step>deny for:start-over>report-started gained:frame:1
many1:clauses5 mood:intention:describe-roast mood:question:resume mood:question:set-method
slots:ask-amount: slots:report-trouble:minutesAgo,step,trouble slots:set-units:weight stage::correct
stage:carve:drop-dish stage:carve:repeat stage:carve:report-reading stage:low-roast:have stage:planning:emergency
stage:planning:undo stage:preheat:ask-next stage:preheat:cancel-timer stage:prep:affirm stage:put-away:report-out
stage:sear:ask-amount stage:sear:describe-roast talk:expecting:confirmation text:help:3 then:ask-how>ask-amount
then:ask-plan>ask-time-left then:ask-safety>ask-plan then:ask-safety>ask-time-left then:ask-status>report-started
then:ask-temperature>report-out then:ask-time-left>add-hands then:ask-time-left>ask-time-left
then:ask-time-left>shift-serving then:ask>report-reading then:choose>ask-options then:correct>note-guest
then:deed>set-serving-time then:describe-roast>add-dish then:note-guest>ask-guests then:report-not-done>report-setup
then:report-not-done>shift-serving then:report-oven>correct then:report-setup>set-guests then:report-started>ask-how
then:report-started>drop-dish then:report-started>report-trouble then:report-trouble>report-setup
then:report-trouble>watch then:set-doneness>report-started then:set-guests>report-guests then:set-guests>running-behind
then:set-guests>set-guests then:set-serving-time>report-reading then:skip-step>report-trouble
then:skip-step>running-behind twice:ask-how twice:ask-time-left without:ask-amount:phrase:4
without:ask-how:frame:4 without:ask-status:phrase:2 without:ask-substitute:phrase:5 without:ask-temperature:frame:8
without:choose:phrase:7 without:choose:phrase:8 without:drop-dish:phrase:6 without:lack:guess:8
without:report-not-done:frame:4 without:report-not-done:frame:6 without:report-not-done:phrase:7
without:report-not-done:phrase:8 without:report-oven:phrase:3 without:report-reading:frame:7
without:report-reading:phrase:1 without:report-setup:phrase:7 without:report-started:phrase:0
without:set-doneness:guess:5 without:set-guests:guess:5 without:set-serving-time:phrase:3 without:skip-step:guess:7
without:skip-step:phrase:6
-12 =ask-time-left:frame clause:add-dish:phrase:0 clause:add-hands:frame:0 clause:add-hands:guess:4
clause:drop-dish:frame:4 clause:drop-dish:guess:2 clause:emergency:guess:5 clause:lack:phrase:2
clause:pause:phrase:4 clause:set-timer:frame:1 clause:shift-serving:guess:3 clause:shift-serving:phrase:1
clause:start-over:phrase:5 empty:add-hands:5 empty:ask-amount:5 empty:ask-how:6 empty:ask-options:0
empty:ask-safety:7 empty:ask-slice:2 empty:describe-roast:5 empty:drop-dish:7 empty:emergency:1
empty:note-guest:8 empty:pause:2 empty:report-thermometer:4 empty:report-trouble:0 empty:set-serving-time:0
empty:skip-step:4 expecting:choice:correct expecting:reading:report-reading for:ask-amount>set-guests
for:ask-how>report-reading for:ask-plan>ask-why for:ask-safety>ask-next for:ask-safety>set-guests
for:ask-status>report-done for:ask-status>report-reading for:ask-substitute>note-guest for:ask-substitute>report-started
for:ask-temperature>correct for:ask-time-left>correct for:ask-why>report-done for:ask-why>report-started
for:note-guest>drop-dish for:pause>report-guests for:report-done>resume for:report-reading>ask-next
for:report-started>lack for:running-behind>shift-serving for:set-guests>choose for:set-timer>report-started
for:shift-serving>pause for:skip-step>report-out for:skip-step>set-method for:watch>cook-away
gained:add-hands gained:deny helper7 least1:many3 least3:many3 left:numbers2 lost:pause lost:phrase:6
lost:set-method many2:clauses5 many2:long1 mood:intention:report-reading mood:question:affirm
mood:story:deed slots:ask-why: stage::report-reading stage::report-trouble stage:carve:add-dish
stage:carve:set-serving-time stage:low-roast:lack stage:planning:ask-how stage:rest:ask-status
stage:rest:drop-dish stage:rest:help stage:served:add-dish talk:guess:8 talk:report-guests
text:correct:3 text:repeat:0 text:running-behind:0 text:set-method:2 text:set-timer:0 then:add-dish>ask-next
then:add-dish>skip-step then:affirm>report-started then:ask-amount>set-guests then:ask-guests>ask-status
then:ask-how>ask-how then:ask-how>report-done then:ask-how>report-out then:ask-how>report-setup
then:ask-next>report-reading then:ask-status>ask-how then:ask-status>report-not-done then:ask-time-left>report-done
then:ask-time-left>report-oven then:ask-why>report-oven then:ask>choose then:describe-roast>report-trouble
then:drop-dish>deed then:drop-dish>report-out then:drop-dish>undo then:lack>ask then:lack>ask-options
then:quiet>set-guests then:report-done>describe-roast then:report-not-done>ask-substitute then:report-out>ask-status
then:report-out>ask-why then:report-out>report-guests then:report-reading>describe-roast then:report-trouble>correct
then:report-trouble>set-guests then:running-behind>set-serving-time then:set-doneness>ask-status
then:set-method>skip-step then:set-serving-time>note-guest then:set-timer>report-started then:watch>deed
twice:shift-serving without:add-dish:phrase:8 without:add-hands:guess:6 without:add-hands:phrase:5
without:ask-how:guess:6 without:ask-next without:ask-substitute:phrase:0 without:ask-substitute:phrase:8
without:ask-time-left:phrase:3 without:cook-away:phrase:7 without:drop-dish without:note-guest:guess:5
without:note-guest:phrase:4 without:report-done:frame:7 without:report-done:phrase:6 without:report-not-done:guess:6
without:report-oven:frame:4 without:report-started:phrase:3 without:set-doneness:phrase:5 without:set-doneness:phrase:6
without:set-guests:guess:7 without:shift-serving:guess:6
-11 =choose:frame clause:deny:guess:4 clause:drop-dish:guess:7 clause:frame:1 clause:lack:frame:0
clause:quiet:guess:2 clause:report-not-done:phrase:0 clause:report-reading:frame:4 clause:report-setup:guess:5
clause:report-trouble:frame:1 clause:start-over:phrase:4 cover:add-hands:2 cover:ask-time-left:1
cover:lack:1 empty:affirm:7 empty:ask-options:1 empty:ask-safety:0 empty:ask-substitute:3 empty:ask-temperature:2
empty:cancel-timer:6 empty:describe-roast:1 empty:feed-public:2 empty:help:8 empty:lack:0 empty:report-setup:1
empty:running-behind:5 empty:set-method:0 empty:set-method:6 empty:set-method:7 empty:set-timer:0
empty:set-timer:1 empty:set-timer:7 empty:start-over:0 expecting:guests:ask-temperature expecting:reading:ask-temperature
first:set-timer for:ask-amount>describe-roast for:ask-amount>set-serving-time for:ask-next>report-out
for:ask-options>ask-status for:ask-safety>add-dish for:ask-temperature>ask-status for:ask-temperature>ask-time-left
for:ask-temperature>quiet for:ask-time-left>report-out for:cancel-timer>report-out for:cook-away>report-done
for:cook-away>report-out for:drop-dish>ask-how for:lack>add-hands for:lack>report-done for:report-guests>report-out
for:report-not-done>ask-amount for:report-not-done>ask-next for:report-out>ask-status for:report-out>report-started
for:report-oven>add-hands for:report-oven>report-out for:report-oven>set-timer for:report-reading>pause
for:report-started>ask-next for:report-started>ask-time-left for:report-trouble>lack for:resume>repeat
for:set-doneness>set-serving-time for:set-guests>report-done for:set-serving-time>ask-plan
for:undo>cook-away for:watch>correct gained:ask-why gained:resume least0:many3 lost:forget-kitchen
lost:frame:7 lost:phrase:8 lost:report-out mood:negative:report-oven mood:story:quiet slots:report-done:
slots:report-reading:temperature,time,where slots:skip-step: stage::choose stage::report-done
stage:hold:ask-status stage:preheat:add-hands stage:preheat:have stage:preheat:set-serving-time
stage:prep:ask-temperature stage:prep:report-trouble stage:rest:note-guest stage:rest:start-over
stage:sear:cancel-timer stage:sear:report-guests stage:served:report-guests talk:frame:1 talk:frame:2
talk:phrase:0 talk:set-method text:add-dish:0 text:drop-dish:0 text:guess:0 text:have:1 text:note-guest:0
then:add-dish>ask-how then:ask-how>ask-status then:ask-how>describe-roast then:ask-next>ask-safety
then:ask-options>report-reading then:ask-plan>ask-status then:ask-safety>ask-guests then:ask-safety>report-not-done
then:ask-safety>report-trouble then:ask-status>ask-options then:ask-status>ask-temperature
then:ask-status>running-behind then:ask-substitute>skip-step then:ask-temperature>report-trouble
then:ask-time-left>set-serving-time then:ask-time-left>set-timer then:ask-why>set-guests then:ask>set-method
then:choose>ask-time-left then:correct>set-doneness then:describe-roast>ask-status then:lack>ask-status
then:note-guest>drop-dish then:quiet>report-started then:report-done>report-thermometer then:report-not-done>quiet
then:report-out>watch then:report-started>ask-safety then:report-started>correct then:report-started>report-thermometer
then:report-trouble>lack then:running-behind>shift-serving then:set-guests>ask-time-left then:set-guests>cancel-timer
then:set-guests>report-started then:shift-serving>shift-serving then:skip-step>report-done
then:skip-step>set-method twice:drop-dish twice:report-not-done without:affirm:phrase:8 without:ask-amount:guess:5
without:ask-amount:phrase:7 without:ask-how:guess:7 without:ask-how:phrase:2 without:ask-how:phrase:4
without:ask-how:phrase:7 without:ask-next:guess:8 without:ask-options:phrase:8 without:ask-shopping:phrase:8
without:ask-status:guess:7 without:ask-why:phrase:6 without:cook-away:guess:5 without:drop-dish:phrase:3
without:have without:quiet:phrase:5 without:report-guests:frame:8 without:report-out:frame:7
without:report-out:guess:7 without:report-reading without:report-reading:guess:8 without:running-behind:guess:7
without:set-serving-time:guess:5 without:set-serving-time:guess:7 without:set-timer:phrase:3
without:set-timer:phrase:5 without:set-timer:phrase:7
-10 =ask-why:phrase =cancel-timer:frame clause:add-hands:frame:6 clause:add-hands:frame:7 clause:affirm:phrase:2
clause:ask:frame:0 clause:choose:phrase:0 clause:choose:phrase:1 clause:choose:phrase:2 clause:correct:guess:5
clause:deed:guess:2 clause:have:phrase:3 clause:lack:frame:3 clause:repeat:guess:4 clause:report-guests:phrase:0
clause:report-reading:frame:1 clause:report-reading:phrase:3 clause:resume:guess:2 clause:set-serving-time:guess:6
clause:skip-step:guess:8 cover:add-dish:0 cover:cancel-timer:0 cover:report-started:0 cover:start-over:2
empty:add-dish:7 empty:add-hands:1 empty:ask-next:6 empty:ask-options:8 empty:ask-safety:8
empty:ask-status:8 empty:ask-substitute:0 empty:ask-why:8 empty:choose:2 empty:cook-away:7
empty:describe-roast:0 empty:forget-kitchen:0 empty:report-done:8 empty:report-guests:8 empty:set-guests:2
empty:set-method:1 empty:skip-step:1 empty:skip-step:7 empty:watch:1 expecting:confirmation:ask-options
expecting:confirmation:report-not-done expecting:doneness:lack expecting:guests:report-not-done
for:ask-status>report-started for:cancel-timer>report-trouble for:cook-away>report-reading
for:cook-away>set-guests for:describe-roast>report-reading for:lack>report-started for:note-guest>report-oven
for:report-guests>shift-serving for:report-not-done>pause for:report-out>add-dish for:report-reading>report-not-done
for:report-trouble>cook-away for:report-trouble>report-done for:report-trouble>report-guests
for:report-trouble>skip-step for:resume>ask-status for:set-doneness>lack for:set-serving-time>set-timer
for:set-timer>report-setup for:set-units>ask-temperature for:skip-step>add-hands for:undo>report-done
for:watch>set-timer lost3:gained0 lost:ask-slice lost:ask-why lost:guess:3 lost:shift-serving
lost:watch mood:negative:lack mood:negative:report-guests mood:question:set-doneness mood:question:set-timer
slots:describe-roast:weight,weightUnit stage::ask-why stage:carve:ask-plan stage:carve:ask-status
stage:carve:report-out stage:hold:cook-away stage:hold:describe-roast stage:low-roast:add-dish
stage:low-roast:skip-step stage:low-roast:start-over stage:planning:ask-time-left stage:planning:pause
stage:planning:running-behind stage:preheat:note-guest stage:preheat:resume stage:prep:choose
stage:prep:correct stage:prep:shift-serving stage:put-away:ask-plan stage:put-away:cook-away
stage:rest:undo stage:sear:cook-away stage:sear:lack stage:served:note-guest talk:frame:5 talk:running-behind
talk:stage:hold talk:stage:planning talk:stage:prep text:add-hands:0 text:affirm:0 text:lack:1
text:lack:6 text:phrase:0 text:report-trouble:4 text:start-over:1 then:add-dish>set-timer then:add-hands>ask-how
then:ask-amount>add-dish then:ask-amount>set-serving-time then:ask-how>cook-away then:ask-options>ask-time-left
then:ask-plan>add-dish then:ask-plan>ask-next then:ask-plan>shift-serving then:ask-status>ask-shopping
then:ask-substitute>add-dish then:ask-substitute>drop-dish then:ask-temperature>correct then:ask-time-left>report-trouble
then:cook-away>ask-options then:deed>correct then:deny>report-reading then:describe-roast>ask-shopping
then:drop-dish>drop-dish then:drop-dish>set-guests then:lack>ask-plan then:lack>ask-safety
then:lack>report-guests then:note-guest>running-behind then:report-done>report-reading then:report-reading>correct
then:report-setup>add-dish then:report-trouble>ask-time-left then:report-trouble>report-oven
then:report-trouble>report-reading then:report-trouble>set-doneness then:running-behind>report-not-done
then:set-doneness>lack then:set-doneness>report-reading then:set-method>report-done then:set-serving-time>ask-status
then:set-timer>cook-away then:set-units>correct without:add-hands:phrase:8 without:ask-amount
without:ask-amount:phrase:6 without:ask-how:frame:8 without:ask-options:guess:5 without:ask-plan:phrase:6
without:ask-safety:guess:6 without:ask-safety:guess:7 without:ask-safety:phrase:5 without:ask-safety:phrase:7
without:ask-status:phrase:5 without:ask-why without:ask-why:guess:5 without:cancel-timer:phrase:6
without:cook-away:guess:8 without:deny:phrase:6 without:describe-roast:phrase:7 without:drop-dish:guess:7
without:report-trouble:phrase:3 without:set-method:phrase:5 without:set-serving-time:guess:8
without:set-serving-time:phrase:7 without:shift-serving:phrase:3
-9 =pause:frame =set-serving-time:guess breath1:true clause:add-dish:frame:0 clause:add-hands:guess:3
clause:choose:frame:8 clause:help:phrase:6 clause:note-guest:across:6 clause:note-guest:frame:4
clause:phrase:0 clause:report-guests:guess:6 clause:report-guests:phrase:1 clause:report-not-done:frame:3
clause:report-oven:frame:3 clause:report-reading:guess:3 clause:report-reading:guess:4 clause:report-reading:phrase:0
clause:report-setup:phrase:2 clause:report-setup:phrase:5 clause:running-behind:guess:2 clause:shift-serving:frame:4
cover:drop-dish:0 cover:quiet:2 cover:report-out:0 empty:acknowledge:4 empty:add-dish:1 empty:ask-amount:1
empty:ask-amount:6 empty:ask-guests:4 empty:ask-options:6 empty:ask-plan:5 empty:ask-plan:6
empty:ask-safety:4 empty:ask-status:7 empty:ask-why:2 empty:cancel-timer:7 empty:courtesy:8
empty:drop-dish:2 empty:feed-public:3 empty:note-guest:2 empty:quiet:6 empty:report-out:2 empty:report-started:6
empty:report-trouble:7 empty:running-behind:6 empty:set-timer:3 empty:set-timer:5 empty:set-units:7
empty:undo:5 empty:watch:0 expecting:doneness:report-trouble expecting:reading:report-out expecting:step:ask-how
first:ask-next for:add-dish>report-not-done for:ask-amount>quiet for:ask-amount>report-done
for:ask-amount>set-units for:ask-safety>ask-status for:ask-substitute>ask-amount for:ask-why>ask-options
for:cook-away>report-started for:feed-public>set-guests for:report-done>add-dish for:report-oven>ask-status
for:report-oven>lack for:report-started>ask-status for:running-behind>add-hands for:set-guests>report-started
for:set-serving-time>report-guests for:watch>ask-temperature for:watch>report-reading gained:report-out
left2:many3 left:numbers1 lost1:gained3 lost:frame:5 lost:phrase:3 lost:report-oven lost:set-units
mood:intention:report-guests mood:intention:set-timer mood:negative:correct mood:question:drop-dish
mood:request:ask mood:request:drop-dish slots:cancel-timer:label,minutes slots:describe-roast:boneless
slots:report-out:time,what stage:carve:report-started stage:hold:ask-guests stage:hold:lack
stage:hold:note-guest stage:hold:start-over stage:low-roast:deny stage:low-roast:help stage:low-roast:report-done
stage:preheat:repeat stage:preheat:set-timer stage:prep:set-units stage:put-away:report-trouble
stage:rest:ask-how stage:sear:add-hands stage:served:ask-time-left stage:served:deny stage:served:describe-roast
talk:have talk:likely5 talk:note-guest text:add-dish:1 text:deed:0 text:drop-dish:2 text:guess:8
text:quiet:2 text:set-doneness:0 text:start-over:4 text:undo:0 then:add-dish>ask-substitute
then:add-dish>deed then:add-dish>describe-roast then:add-hands>report-started then:add-hands>running-behind
then:affirm>choose then:ask-amount>ask-how then:ask-amount>ask-next then:ask-how>report-oven
then:ask-next>add-hands then:ask-next>report-oven then:ask-safety>note-guest then:ask-safety>set-doneness
then:ask-shopping>cook-away then:ask-shopping>report-trouble then:ask-status>report-done then:ask-status>set-serving-time
then:ask-substitute>report-started then:ask-substitute>report-trouble then:ask-temperature>ask-amount
then:ask>cancel-timer then:ask>set-timer then:choose>report-guests then:correct>choose then:deed>add-dish
then:feed-public>set-serving-time then:have>lack then:lack>ask-time-left then:lack>report-not-done
then:lack>report-trouble then:note-guest>add-dish then:report-guests>ask-temperature then:report-not-done>set-serving-time
then:report-oven>choose then:report-oven>report-setup then:report-reading>report-setup then:report-started>report-out
then:report-started>running-behind then:running-behind>add-dish then:running-behind>report-oven
then:set-doneness>report-trouble then:set-guests>ask-temperature then:set-method>deed then:set-serving-time>deed
then:set-timer>add-dish then:set-timer>running-behind then:shift-serving>report-started then:shift-serving>set-timer
then:undo>drop-dish then:watch>ask-next then:watch>report-guests without:add-dish without:ask-how:phrase:6
without:ask-options:phrase:6 without:ask-status:phrase:6 without:ask-substitute without:ask-temperature:guess:7
without:cancel-timer without:describe-roast:guess:8 without:describe-roast:phrase:3 without:describe-roast:phrase:5
without:report-not-done:guess:7 without:report-out:phrase:8 without:report-started:guess:8
without:set-guests:across:0 without:set-serving-time:phrase:6 without:set-units:phrase:7 without:set-units:phrase:8
without:skip-step:phrase:8
-8 =add-dish:phrase =ask-guests:guess =help:frame =report-guests:guess =report-trouble:guess
clause:add-hands:across:4 clause:add-hands:frame:2 clause:add-hands:phrase:8 clause:ask:phrase:0
clause:choose:frame:7 clause:deny:phrase:4 clause:help:guess:3 clause:lack:guess:3 clause:report-not-done:guess:2
clause:report-setup:frame:3 clause:resume:frame:3 clause:set-doneness:guess:8 clause:set-guests:guess:6
clause:set-guests:phrase:1 clause:set-method:guess:7 clause:set-serving-time:phrase:2 clause:set-timer:phrase:2
clause:shift-serving:across:0 clause:shift-serving:guess:7 clause:watch:guess:2 cover:set-guests:2
empty:ask-next:1 empty:ask-next:5 empty:ask-next:7 empty:ask-options:4 empty:ask-slice:6 empty:ask-time-left:6
empty:cook-away:8 empty:report-done:6 empty:report-not-done:7 empty:report-out:4 empty:report-reading:1
empty:report-reading:4 empty:report-started:8 empty:set-serving-time:8 empty:start-over:7 expecting:reading:set-guests
expecting:roast:add-dish expecting:roast:report-not-done expecting:roast:report-reading expecting:serving-time:set-serving-time
first:ask-why for:add-dish>report-out for:ask-amount>ask-time-left for:ask-status>ask-temperature
for:ask-substitute>set-doneness for:ask-temperature>ask-plan for:ask-temperature>report-out
for:cancel-timer>cook-away for:repeat>ask-status for:report-guests>report-reading for:report-guests>set-serving-time
for:report-not-done>deny for:report-reading>ask-why for:report-setup>report-oven for:report-started>report-done
for:report-started>report-reading for:report-trouble>ask-status for:running-behind>report-started
for:set-doneness>note-guest for:set-timer>ask-how for:shift-serving>report-done for:skip-step>add-dish
for:skip-step>report-trouble gained:guess:2 gained:phrase:0 lost:frame:8 lost:guess:7 lost:phrase:5
lost:quiet lost:set-timer many1:clauses3 mood:intention:ask mood:intention:report-oven mood:intention:set-guests
mood:intention:set-method mood:negative:choose mood:negative:note-guest mood:question:deed
mood:question:note-guest mood:question:report-not-done mood:statement:add-dish mood:story:report-not-done
mood:story:report-trouble mood:story:set-guests mood:story:skip-step slots:ask-temperature:
stage::ask-guests stage::start-over stage:hold:report-setup stage:low-roast:report-not-done
stage:planning:ask-status stage:prep:deny stage:prep:report-oven stage:put-away:ask-status
stage:put-away:set-guests stage:put-away:shift-serving stage:rest:lack talk:add-hands talk:ask-plan
talk:ask-status talk:frame:0 talk:frame:3 talk:frame:7 talk:frame:8 talk:likely6 talk:report-trouble
talk:skip-step talk:stage:rest talk:stage:sear talk:watch text:choose:1 text:lack:3 text:pause:0
text:pause:1 text:resume:0 text:skip-step:1 then:add-dish>add-hands then:ask-amount>report-done
then:ask-how>ask-time-left then:ask-next>ask-options then:ask-safety>add-dish then:ask-status>set-timer
then:ask-temperature>ask-how then:ask-time-left>report-started then:ask-why>report-reading
then:cook-away>ask-safety then:deny>report-done then:describe-roast>report-guests then:describe-roast>report-reading
then:note-guest>ask-shopping then:repeat>deny then:report-done>ask-options then:report-done>set-timer
then:report-guests>shift-serving then:report-not-done>set-guests then:report-not-done>undo
then:report-reading>choose then:report-reading>set-serving-time then:report-setup>ask-how then:report-started>ask-amount
then:report-started>set-serving-time then:running-behind>ask-how then:set-doneness>ask-next
then:set-serving-time>cook-away then:skip-step>ask-how then:skip-step>ask-why then:skip-step>report-reading
then:skip-step>set-serving-time then:watch>report-reading then:watch>report-started twice:report-reading
twice:skip-step without:add-dish:phrase:1 without:affirm:phrase:7 without:ask-how without:ask-next:phrase:6
without:ask-status:phrase:7 without:ask-status:phrase:8 without:ask-substitute:frame:0 without:cook-away:phrase:8
without:describe-roast:phrase:8 without:quiet:phrase:6 without:report-out:frame:5 without:report-oven:phrase:7
without:report-started:frame:2 without:report-started:guess:7 without:report-started:phrase:8
without:running-behind:phrase:6 without:set-serving-time:phrase:0 without:skip-step:phrase:7
without:watch:across:0 without:watch:frame:7
-7 =ask-substitute:guess =deny:guess =resume:frame =set-guests:guess =set-timer:across =start-over:frame
clause:add-dish:frame:3 clause:add-hands:frame:3 clause:ask:guess:2 clause:correct:across:3
clause:describe-roast:phrase:2 clause:frame:3 clause:guess:4 clause:help:guess:6 clause:lack:phrase:4
clause:lack:phrase:6 clause:quiet:frame:5 clause:report-guests:guess:3 clause:report-not-done:phrase:5
clause:report-oven:guess:5 clause:report-oven:guess:7 clause:set-doneness:phrase:4 clause:set-timer:guess:3
clause:set-units:phrase:4 clause:skip-step:phrase:4 cover:add-hands:1 cover:choose:2 cover:phrase:0
cover:set-guests:1 empty:add-dish:5 empty:affirm:1 empty:ask-shopping:2 empty:ask-status:6
empty:cancel-timer:8 empty:have:1 empty:note-guest:5 empty:pause:0 empty:report-oven:0 empty:report-reading:5
empty:report-started:2 empty:report-started:7 empty:report-thermometer:2 empty:set-doneness:5
empty:set-timer:6 empty:set-units:8 empty:skip-step:2 empty:start-over:4 empty:undo:8 empty:watch:2
expecting:confirmation:lack expecting:doneness:ask-safety expecting:guests:ask-amount expecting:step:add-hands
for:ask-amount>add-dish for:ask-amount>report-setup for:ask-next>ask-shopping for:ask-next>report-trouble
for:ask-temperature>set-serving-time for:cook-away>ask-status for:deny>lack for:deny>report-done
for:note-guest>add-hands for:report-done>drop-dish for:report-not-done>set-method for:report-started>correct
for:report-started>drop-dish for:report-trouble>add-dish for:report-trouble>shift-serving for:set-doneness>ask-time-left
for:set-doneness>watch for:set-method>report-reading for:shift-serving>report-started for:shift-serving>set-guests
gained:describe-roast gained:frame:7 gained:pause gained:phrase:8 gained:report-guests gained:set-method
gained:set-serving-time gained:shift-serving how:stop, clause guessed how:stop, less how:talk
least2:many2 lost2:gained2 lost:ask-amount lost:describe-roast lost:help lost:report-thermometer
lost:set-serving-time lost:skip-step many3:clauses4 mood:intention:deed mood:negative:set-guests
mood:question:cancel-timer mood:question:choose mood:question:report-oven mood:question:report-trouble
mood:request:deed mood:statement:cook-away mood:story:deny mood:story:pause mood:story:report-oven
mood:story:watch slots:ask-guests: slots:ask-temperature:temperature slots:ask-time-left: slots:cancel-timer:
slots:cook-away: slots:report-started:step stage::ask-how stage::watch stage:carve:ask-safety
stage:carve:ask-temperature stage:carve:choose stage:carve:quiet stage:hold:add-dish stage:hold:watch
stage:preheat:correct stage:prep:cook-away stage:prep:set-method stage:rest:describe-roast
stage:sear:quiet stage:sear:set-method talk:drop-dish talk:phrase:1 talk:phrase:6 talk:phrase:7
talk:phrase:8 talk:report-done talk:set-units text:choose:0 text:choose:2 text:choose:5 text:note-guest:1
text:quiet:0 text:report-guests:0 text:resume:2 text:set-method:1 text:set-serving-time:0 text:shift-serving:0
text:watch:2 then:add-dish>report-out then:add-dish>report-started then:add-hands>deed then:add-hands>report-out
then:ask-next>ask-how then:ask-next>ask-time-left then:ask-next>report-done then:ask-status>report-trouble
then:ask-time-left>watch then:ask-why>ask-temperature then:ask-why>report-started then:cook-away>running-behind
then:correct>set-serving-time then:deed>choose then:describe-roast>ask then:drop-dish>ask-substitute
then:note-guest>ask-substitute then:note-guest>lack then:report-done>ask-temperature then:report-not-done>running-behind
then:report-out>ask-options then:report-out>report-done then:report-setup>ask-time-left then:report-started>choose
then:report-started>describe-roast then:running-behind>report-started then:set-doneness>ask-temperature
then:set-method>ask then:set-serving-time>report-setup then:set-timer>report-not-done then:shift-serving>ask-temperature
then:shift-serving>report-guests then:shift-serving>report-not-done then:skip-step>ask-substitute
then:skip-step>skip-step then:undo>report-not-done then:watch>report-out without:add-dish:phrase:2
without:affirm without:describe-roast without:drop-dish:phrase:7 without:pause without:report-not-done:frame:3
without:report-out:frame:6 without:report-out:guess:5 without:report-out:guess:8 without:report-oven:phrase:2
without:report-started:phrase:6 without:report-started:phrase:7 without:set-timer:phrase:6
-6 =ask-amount:phrase =ask-next:across =choose:phrase =repeat:phrase =report-started:guess
=set-method:guess clause:choose:phrase:3 clause:choose:phrase:6 clause:cook-away:guess:6 clause:deed:guess:6
clause:describe-roast:guess:7 clause:describe-roast:phrase:1 clause:feed-public:phrase:8 clause:guess:2
clause:lack:guess:4 clause:lack:guess:8 clause:note-guest:guess:3 clause:note-guest:guess:5
clause:note-guest:phrase:2 clause:report-not-done:frame:1 clause:report-not-done:guess:3 clause:report-not-done:guess:7
clause:report-reading:frame:2 clause:report-trouble:guess:4 clause:report-trouble:guess:7 clause:running-behind:guess:4
clause:set-doneness:guess:2 clause:set-doneness:guess:3 clause:set-serving-time:guess:8 clause:shift-serving:phrase:6
clause:skip-step:frame:8 clause:start-over:guess:3 clause:undo:guess:4 cover:ask-next:2 cover:ask-status:2
cover:ask-why:0 cover:frame:3 empty:acknowledge:0 empty:add-dish:4 empty:add-hands:8 empty:ask-amount:4
empty:ask-next:2 empty:ask-why:5 empty:best8 empty:cancel-timer:5 empty:cook-away:5 empty:deny:7
empty:describe-roast:2 empty:describe-roast:6 empty:feed-public:0 empty:help:2 empty:lack:7
empty:report-done:3 empty:report-not-done:3 empty:report-started:1 empty:set-serving-time:1
empty:shift-serving:8 empty:talk0 expecting:confirmation:add-dish expecting:confirmation:shift-serving
expecting:guests:set-guests expecting:reading:report-oven expecting:roast:set-units first:ask-time-left
first:set-guests for:add-dish>ask-substitute for:ask-safety>ask-time-left for:ask-safety>report-out
for:ask-shopping>ask-plan for:cook-away>ask-next for:repeat>quiet for:report-not-done>set-timer
for:report-oven>cook-away for:report-oven>set-serving-time for:report-reading>ask-plan for:report-reading>report-started
for:report-started>add-dish for:report-trouble>set-serving-time for:set-serving-time>report-done
for:set-timer>add-dish for:set-timer>set-serving-time for:shift-serving>report-guests gained:frame:4
gained:help gained:report-reading least0:many2 least1:many2 least8:many1 lost0:gained3 lost2:gained0
lost3:gained1 lost:ask-status lost:guess:8 lost:report-reading lost:set-doneness many1:clauses4
many1:long4 many1:long5 many2:long0 many3:clauses5 many3:long2 many3:long5 many4:long6 mean1
mood:intention:report-trouble mood:question:deny mood:request:repeat mood:request:running-behind
mood:story:report-reading slots:ask-substitute: slots:report-oven:state,which slots:report-reading:temperature
slots:report-setup:probe slots:report-setup:rack stage:low-roast:report-setup stage:low-roast:resume
stage:prep:ask-options stage:prep:report-started stage:rest:report-oven stage:rest:resume stage:served:correct
stage:served:report-done talk:describe-roast talk:likely0 talk:phrase:4 talk:set-guests text:cancel-timer:3
text:frame:0 text:lack:0 text:pause:2 text:repeat:1 text:start-over:6 text:watch:5 then:add-dish>drop-dish
then:ask-amount>ask-time-left then:ask-how>report-started then:ask-next>report-out then:ask-options>set-units
then:ask-temperature>report-done then:ask-temperature>set-serving-time then:ask-time-left>report-not-done
then:deed>describe-roast then:describe-roast>set-serving-time then:have>drop-dish then:report-done>ask-plan
then:report-done>report-setup then:report-not-done>report-trouble then:report-out>add-dish
then:report-oven>report-not-done then:report-reading>add-hands then:report-reading>ask-safety
then:report-reading>report-started then:report-setup>report-oven then:report-started>ask-plan
then:report-started>cancel-timer then:report-trouble>ask-safety then:report-trouble>set-timer
then:set-guests>add-hands then:set-serving-time>report-done then:set-timer>ask-status then:set-units>describe-roast
then:shift-serving>running-behind then:skip-step>add-dish then:skip-step>report-out then:undo>report-trouble
then:watch>ask-safety without:add-dish:frame:0 without:ask-safety without:ask-safety:phrase:8
without:deny:phrase:7 without:drop-dish:phrase:8 without:report-done:phrase:5 without:report-not-done:frame:5
without:report-not-done:frame:7 without:report-not-done:guess:8 without:report-not-done:phrase:4
without:report-oven:phrase:8 without:report-reading:frame:5 without:report-reading:phrase:8
without:report-started:frame:6 without:set-guests:phrase:6 without:shift-serving:guess:8 without:watch
-5 =add-hands:across =ask-guests =ask-safety:frame =ask-status:frame =ask-temperature:guess
=cook-away:across =describe-roast:guess =start-over:guess breath2:true clause:add-dish:frame:2
clause:choose:phrase:5 clause:cook-away:frame:3 clause:cook-away:guess:2 clause:cook-away:phrase:2
clause:correct:guess:2 clause:correct:guess:6 clause:deed:phrase:1 clause:deny:guess:5 clause:frame:0
clause:help:frame:4 clause:note-guest:frame:2 clause:note-guest:phrase:6 clause:quiet:guess:3
clause:report-guests:guess:2 clause:report-guests:guess:5 clause:report-guests:phrase:5 clause:report-not-done:phrase:7
clause:report-oven:frame:6 clause:report-reading:phrase:4 clause:report-trouble:frame:5 clause:running-behind:phrase:3
clause:set-guests:frame:3 clause:set-guests:frame:6 clause:set-method:frame:4 clause:set-timer:frame:2
clause:set-timer:guess:5 clause:skip-step:phrase:6 clause:start-over:phrase:2 cover:add-dish:3
cover:ask-guests:3 cover:ask-plan:0 cover:guess:3 cover:report-oven:0 cover:report-setup:2
cover:set-serving-time:0 empty0 empty:acknowledge:5 empty:ask-next:4 empty:ask-plan:3 empty:ask-plan:8
empty:ask-substitute:5 empty:ask-substitute:6 empty:ask-time-left:3 empty:deny:8 empty:describe-roast:3
empty:drop-dish:0 empty:emergency:6 empty:have:4 empty:report-reading:2 empty:report-reading:6
empty:resume:4 empty:set-guests:6 empty:set-units:0 empty:shift-serving:2 empty:undo:1 empty:words4
expecting:choice:cook-away expecting:confirmation:report-guests expecting:doneness:ask-options
expecting:guests:note-guest expecting:step:report-started first:add-hands first:ask-status
for:add-hands>report-done for:ask-how>ask-status for:ask-next>ask-plan for:ask-next>ask-temperature
for:ask-safety>report-started for:ask-time-left>ask-status for:ask-why>set-method for:cancel-timer>report-done
for:describe-roast>report-trouble for:help>ask-shopping for:note-guest>report-done for:repeat>choose
for:repeat>report-not-done for:report-done>report-not-done for:report-done>report-out for:report-done>report-started
for:report-oven>choose for:report-reading>running-behind for:report-setup>lack for:report-started>add-hands
for:set-timer>add-hands for:watch>ask-status gained:affirm gained:ask-amount gained:ask-status
gained:drop-dish gained:frame:2 gained:frame:3 gained:guess:3 gained:report-trouble gained:set-doneness
least0 least1 least3 least4:many2 least7:many1 left3:many2 left4 left4:many1 lost0:gained1
lost:across:0 lost:note-guest lost:repeat lost:report-guests lost:resume many2:clauses1 many2:clauses4
many2:long2 many4 many4:clauses3 many4:clauses4 mood:intention:add-dish mood:intention:drop-dish
mood:intention:report-setup mood:negative:cancel-timer mood:negative:report-reading mood:question:add-dish
mood:question:watch mood:statement:ask mood:statement:skip-step mood:story:ask mood:story:running-behind
slots:correct:temperature,was slots:note-guest:need slots:report-out:what stage::add-dish stage::repeat
stage:carve:affirm stage:hold:add-hands stage:hold:ask-time-left stage:hold:undo stage:low-roast:ask-safety
stage:low-roast:report-guests stage:low-roast:set-doneness stage:preheat:ask-safety stage:preheat:skip-step
stage:prep:ask-guests stage:prep:help stage:put-away:ask-amount stage:rest:add-hands stage:rest:ask-amount
talk:ask-substitute talk:best2 talk:best4 talk:forget-kitchen talk:likely4 talk:report-not-done
talk:report-thermometer text:affirm:4 text:cancel-timer:2 text:deny:2 text:describe-roast:5
text:emergency:1 text:feed-public:0 text:guess:1 text:have:0 text:help:1 text:pause:3 text:pause:4
text:repeat:2 text:report-not-done:1 text:report-oven:0 text:report-setup:0 text:set-serving-time:6
text:watch:1 then:ask-amount>report-started then:ask-next>report-started then:ask-options>report-started
then:ask-why>ask-time-left then:cook-away>report-started then:describe-roast>ask-next then:drop-dish>report-not-done
then:note-guest>describe-roast then:quiet>ask then:report-done>drop-dish then:report-guests>report-done
then:report-not-done>ask-status then:report-not-done>report-guests then:report-reading>ask-amount
then:report-setup>lack then:report-setup>undo then:report-started>add-hands then:report-started>report-reading
then:report-trouble>ask-amount then:report-trouble>ask-substitute then:report-trouble>cancel-timer
then:running-behind>ask-next then:set-units>lack without:add-dish:phrase:6 without:ask-status
without:ask-time-left:phrase:6 without:ask-why:phrase:5 without:cancel-timer:phrase:7 without:quiet:phrase:7
without:report-out:frame:8 without:report-oven:guess:8 without:report-started:frame:7 without:report-thermometer
without:report-thermometer:across:0 without:report-trouble:frame:3 without:set-method:phrase:6
without:set-serving-time:frame:6 without:set-serving-time:frame:7 without:set-serving-time:phrase:8
without:set-timer:phrase:8 without:shift-serving:phrase:8 without:watch:guess:5
-4 =ask-shopping:guess =choose =cook-away:guess =correct:guess =deny:phrase =report-done:guess
=skip-step:guess =undo:guess acts:talk1 breath3:true clause:ask:phrase:3 clause:cancel-timer:guess:5
clause:cook-away:guess:3 clause:deed:frame:2 clause:deed:guess:7 clause:drop-dish:guess:6 clause:guess:3
clause:guess:5 clause:pause:phrase:5 clause:phrase:4 clause:repeat:phrase:5 clause:report-not-done:phrase:4
clause:report-setup:frame:4 clause:report-trouble:guess:3 clause:report-trouble:guess:5 clause:resume:phrase:4
clause:running-behind:guess:3 clause:set-guests:guess:3 clause:set-guests:phrase:4 clause:set-method:guess:6
clause:set-timer:guess:2 clause:set-timer:guess:4 clause:shift-serving:guess:6 clause:skip-step:frame:2
clause:skip-step:guess:3 clause:skip-step:phrase:7 cover:ask-how:3 cover:ask-options:2 cover:ask-safety:2
cover:ask-substitute:3 cover:cook-away:3 cover:describe-roast:0 cover:report-out:1 cover:report-reading:0
cover:skip-step:3 empty1 empty:acknowledge:3 empty:affirm:5 empty:ask-amount:2 empty:ask-next:3
empty:ask-shopping:5 empty:ask-time-left:1 empty:best4 empty:feed-public:1 empty:quiet:4 empty:repeat:8
empty:report-guests:1 empty:report-reading:8 empty:report-thermometer:3 empty:skip-step:8 empty:start-over:6
empty:watch:8 empty:words3 first:ask-guests first:cook-away first:set-serving-time for:add-dish>report-started
for:ask-how>add-dish for:ask-options>ask-next for:lack>ask-how for:report-done>skip-step for:report-not-done>report-oven
for:report-oven>report-guests for:report-reading>ask-time-left for:report-reading>report-oven
for:report-setup>report-started for:running-behind>add-dish for:set-guests>set-serving-time
for:set-timer>ask-temperature for:set-timer>report-done gained:choose gained:frame:0 gained:phrase:5
gained:report-oven gained:report-started gained:running-behind gained:skip-step least3:many2
least4:many3 least7 least8 left1 left2:many2 left3 left5:many2 left6:many2 lost2:gained3 lost:add-hands
lost:choose lost:frame:4 lost:have lost:lack lost:phrase:4 lost:report-setup lost:report-started
many2 many4:long5 mean2 mean4 mood:negative:pause mood:negative:set-timer mood:question:skip-step
mood:request:describe-roast mood:request:set-guests mood:statement:deny mood:story:resume mood:story:set-doneness
slots:ask-plan: slots:choose:option slots:correct:minutes slots:report-oven:mode slots:set-timer:minutes
stage::ask-time-left stage::quiet stage:carve:ask-why stage:carve:skip-step stage:hold:ask-amount
stage:low-roast:ask-amount stage:low-roast:choose stage:low-roast:repeat stage:low-roast:set-serving-time
stage:planning:add-hands stage:planning:ask-substitute stage:preheat:quiet stage:preheat:report-trouble
stage:prep:ask-time-left stage:prep:describe-roast stage:put-away:ask-next stage:put-away:ask-substitute
stage:sear:report-setup talk:ask-how talk:ask-time-left talk:correct talk:expecting:step talk:guess:7
talk:phrase:5 talk:report-started talk:shift-serving talk:stage:carve text:add-hands:4 text:cook-away:0
text:deny:0 text:deny:4 text:emergency:0 text:quiet:8 text:report-guests:3 text:report-oven:1
text:report-reading:0 text:running-behind:1 text:running-behind:2 text:set-method:3 text:start-over:0
text:start-over:2 text:undo:4 then:ask-amount>ask-amount then:ask-plan>report-started then:ask-safety>report-out
then:ask-safety>report-reading then:ask-status>report-reading then:cancel-timer>deed then:cancel-timer>report-out
then:lack>report-reading then:note-guest>set-guests then:report-done>ask-amount then:report-done>report-started
then:report-done>set-doneness then:report-out>set-timer then:report-oven>ask-how then:report-oven>describe-roast
then:report-oven>lack then:report-reading>report-reading then:report-reading>skip-step then:report-started>ask-shopping
then:report-started>report-oven then:report-started>watch then:set-guests>ask-how then:set-method>report-started
then:set-serving-time>ask-options then:set-timer>ask-time-left then:set-timer>cancel-timer
then:set-timer>report-out then:set-timer>report-oven then:shift-serving>note-guest twice:ask-amount
without:cancel-timer:phrase:8 without:cook-away:frame:7 without:cook-away:frame:8 without:note-guest:guess:8
without:note-guest:phrase:3 without:report-done:frame:6 without:report-not-done:frame:8 without:report-out:phrase:6
without:report-started:guess:6 without:report-trouble:frame:4 without:running-behind:phrase:8
without:set-doneness without:set-guests:phrase:5 without:set-method:phrase:7 without:set-timer:guess:8
-3 =add-dish =ask-options:frame =ask-plan:guess =ask-substitute =note-guest:across =note-guest:frame
=report-done:frame =report-not-done:phrase =report-out:guess =report-started =set-units:frame
=shift-serving:guess =skip-step clause:across:0 clause:add-dish:phrase:3 clause:add-hands:frame:8
clause:ask:frame:1 clause:ask:frame:5 clause:choose:frame:5 clause:choose:guess:6 clause:deed:guess:3
clause:deed:guess:5 clause:deed:phrase:5 clause:drop-dish:frame:2 clause:drop-dish:phrase:1
clause:have:phrase:1 clause:lack:frame:4 clause:note-guest:phrase:3 clause:pause:guess:2 clause:pause:guess:3
clause:pause:phrase:3 clause:quiet:phrase:7 clause:repeat:phrase:3 clause:report-guests:guess:8
clause:report-not-done:phrase:2 clause:report-reading:frame:3 clause:report-reading:phrase:5
clause:report-setup:guess:8 clause:report-setup:phrase:1 clause:resume:guess:5 clause:resume:phrase:2
clause:running-behind:phrase:7 clause:set-doneness:frame:7 clause:set-doneness:phrase:2 clause:set-guests:frame:8
clause:set-method:guess:3 clause:set-method:guess:5 clause:set-serving-time:guess:2 clause:set-units:frame:5
clause:set-units:phrase:6 clause:shift-serving:frame:6 clause:skip-step:guess:6 clause:skip-step:phrase:3
clause:undo:across:0 clause:undo:across:1 clause:undo:across:4 clause:undo:guess:2 clause:watch:across:7
cover:ask-guests:2 cover:ask-status:1 cover:correct:3 cover:describe-roast:3 cover:lack:2 cover:phrase:1
cover:report-guests:1 cover:report-not-done:1 cover:set-doneness:3 cover:set-timer:1 cover:skip-step:1
cover:start-over:3 empty:ask-time-left:4 empty:best5 empty:courtesy:2 empty:courtesy:5 empty:deny:6
empty:have:0 empty:lack:4 empty:note-guest:1 empty:quiet:8 empty:report-done:4 empty:report-done:5
empty:report-out:3 empty:report-oven:2 empty:report-oven:4 empty:report-oven:6 empty:report-setup:6
empty:report-trouble:5 empty:running-behind:8 empty:set-doneness:2 empty:talk1 empty:undo:4
expecting:confirmation:report-started expecting:roast:report-guests expecting:step:ask-next
expecting:step:report-guests first:add-dish first:cancel-timer first:lack first:report-not-done
first:shift-serving for:add-hands>add-dish for:ask-how>report-trouble for:ask-next>ask-why
for:ask-plan>ask-time-left for:drop-dish>add-dish for:drop-dish>ask-substitute for:note-guest>report-started
for:report-guests>choose for:report-guests>report-trouble for:report-oven>report-started for:report-oven>report-trouble
for:report-oven>set-method for:report-reading>lack for:report-started>report-oven for:report-trouble>report-setup
for:set-serving-time>ask-time-left for:skip-step>lack gained:ask-substitute gained:correct
gained:guess:4 gained:lack gained:phrase:6 gained:quiet gained:set-timer gained:undo how:stop
open least2 left0 left1:many1 left1:many2 left2 left4:many2 left6 lost1:gained0 lost1:gained2
lost:ask-temperature lost:ask-time-left lost:cancel-timer lost:frame:2 many1:long0 many2:clauses3
many3:clauses3 many3:long3 mean3 mood:intention:pause mood:negative:deed mood:request:help
mood:request:pause mood:statement:affirm mood:story:add-dish mood:story:feed-public mood:story:repeat
mood:story:set-timer slots:add-dish:dish slots:ask-amount:ingredient slots:ask-safety:about
slots:ask-status: slots:note-guest:need,who slots:report-guests:state slots:set-guests:change,who
slots:set-guests:count stage::ask-substitute stage::emergency stage::report-started stage:carve:ask-time-left
stage:hold:affirm stage:hold:ask-options stage:hold:repeat stage:low-roast:affirm stage:low-roast:ask-options
stage:planning:deny stage:preheat:ask-why stage:preheat:report-guests stage:rest:ask-guests
stage:sear:deny stage:sear:set-timer talk:ask-next talk:best6 talk:cancel-timer talk:set-timer
text:across:0 text:ask:1 text:cancel-timer:4 text:cook-away:1 text:cook-away:2 text:correct:2
text:deny:3 text:deny:5 text:quiet:4 text:report-oven:8 text:report-trouble:5 text:resume:3
text:set-guests:8 text:skip-step:0 text:skip-step:3 then:add-hands>drop-dish then:ask-options>set-doneness
then:ask-status>add-dish then:ask-temperature>ask-safety then:ask-time-left>report-guests then:cancel-timer>report-done
then:cook-away>ask-next then:cook-away>ask-temperature then:cook-away>shift-serving then:deed>set-doneness
then:drop-dish>skip-step then:lack>ask-how then:lack>report-setup then:lack>set-guests then:note-guest>deed
then:report-done>lack then:report-guests>report-guests then:report-not-done>report-oven then:report-out>ask-safety
then:report-out>set-doneness then:report-oven>note-guest then:report-oven>report-out then:report-setup>ask
then:report-started>note-guest then:report-started>set-guests then:report-trouble>add-hands
then:report-trouble>ask-how then:set-doneness>deed then:set-doneness>report-setup then:set-guests>report-reading
then:set-guests>set-timer then:set-serving-time>report-started then:set-serving-time>watch
then:set-timer>ask-next then:set-units>note-guest then:shift-serving>add-hands then:shift-serving>ask-time-left
then:shift-serving>report-setup then:watch>watch twice:report-guests twice:watch without:ask-plan
without:ask-slice without:ask-slice:across:0 without:cook-away without:note-guest:phrase:5
without:quiet:phrase:8 without:report-done:phrase:8 without:report-not-done:phrase:5 without:report-not-done:phrase:6
without:report-oven:phrase:4 without:report-setup:phrase:5 without:report-started:phrase:4
without:report-trouble without:report-trouble:phrase:6 without:running-behind:guess:8 without:set-guests
without:set-timer:frame:6 without:watch:frame:8
-2 =add-hands =add-hands:guess =affirm =ask-how:guess =ask-next =ask-options:guess =ask-safety
=ask-shopping =ask-why =note-guest:guess =quiet =quiet:frame =report-out =set-timer:guess =set-units:phrase
=start-over clause:add-dish:guess:3 clause:ask:guess:3 clause:ask:guess:4 clause:ask:guess:5
clause:ask:guess:6 clause:ask:phrase:2 clause:cancel-timer:guess:2 clause:cook-away:phrase:4
clause:deed:frame:1 clause:deed:frame:4 clause:deed:guess:4 clause:deny:phrase:3 clause:describe-roast:guess:3
clause:describe-roast:phrase:0 clause:drop-dish:frame:1 clause:drop-dish:phrase:4 clause:emergency:across:2
clause:emergency:guess:4 clause:lack:phrase:5 clause:phrase:5 clause:quiet:phrase:3 clause:repeat:guess:5
clause:report-guests:frame:2 clause:report-not-done:guess:5 clause:report-oven:phrase:3 clause:report-oven:phrase:7
clause:report-setup:frame:7 clause:report-trouble:frame:6 clause:report-trouble:guess:2 clause:resume:phrase:7
clause:running-behind:guess:5 clause:set-guests:phrase:0 clause:set-serving-time:guess:3 clause:set-serving-time:guess:5
clause:set-serving-time:guess:7 clause:set-timer:frame:6 clause:set-units:phrase:7 clause:shift-serving:guess:2
clause:start-over:frame:0 clause:start-over:phrase:7 clause:undo:across:5 clause:watch:frame:8
clause:watch:guess:3 clause:watch:guess:5 cover:affirm:3 cover:ask-options:3 cover:ask-shopping:3
cover:choose:0 cover:feed-public:0 cover:help:3 cover:quiet:3 cover:report-done:3 cover:report-reading:1
cover:report-started:3 cover:report-trouble:1 cover:resume:3 cover:set-units:2 cover:shift-serving:1
cover:undo:3 empty2 empty:acknowledge:2 empty:affirm:2 empty:ask-amount:8 empty:ask-status:2
empty:best3 empty:cancel-timer:2 empty:cancel-timer:4 empty:choose:0 empty:choose:8 empty:cook-away:6
empty:describe-roast:4 empty:describe-roast:7 empty:feed-public:4 empty:help:3 empty:lack:3
empty:report-done:1 empty:report-done:2 empty:report-done:7 empty:report-not-done:2 empty:report-setup:2
empty:report-setup:4 empty:report-started:4 empty:set-doneness:4 empty:set-doneness:7 empty:talk2
expecting:reading:ask-time-left expecting:roast:describe-roast expecting:step:report-done first:have
first:quiet first:report-done for:ask-how>ask-why for:ask-shopping>ask-options for:ask-substitute>ask-next
for:drop-dish>skip-step for:lack>report-setup for:note-guest>ask-guests for:pause>set-timer
for:quiet>cancel-timer for:report-done>report-guests for:report-guests>report-started for:report-not-done>ask-how
for:report-reading>report-trouble for:report-reading>set-serving-time for:report-started>ask-how
for:set-doneness>correct gained:ask-options gained:ask-time-left gained:note-guest gained:phrase:1
gained:start-over gained:watch how:less least5:many2 left0:many1 left5:many1 left6:many1 lost:affirm
lost:drop-dish lost:feed-public lost:guess:6 lost:phrase:2 lost:report-trouble lost:set-guests
many0:clauses2 many1 many1:clauses1 many1:long3 many3 many3:long1 many4:long2 many4:long4 mean5
mean6 mean8 mood:intention:start-over mood:intention:watch mood:negative:report-setup mood:negative:set-method
mood:request:quiet mood:statement:choose mood:statement:quiet mood:statement:set-doneness mood:statement:shift-serving
mood:statement:undo slots:affirm: slots:ask-how:topic slots:ask-next: slots:ask-shopping: slots:ask-temperature:about
slots:quiet: slots:report-out: slots:report-trouble:step,trouble slots:start-over: stage::deny
stage::report-not-done stage::skip-step stage:carve:ask-options stage:hold:ask-how stage:low-roast:report-started
stage:low-roast:running-behind stage:planning:ask-options stage:planning:note-guest stage:planning:shift-serving
stage:prep:add-dish stage:prep:add-hands stage:prep:have stage:prep:quiet stage:prep:report-reading
stage:prep:set-timer stage:rest:quiet stage:rest:repeat stage:sear:report-trouble talk:ask-slice
talk:ask-why talk:best1 talk:best5 talk:best7 talk:expecting:roast talk:frame:4 talk:frame:6
talk:help talk:likely8 talk:phrase:3 talk:quiet talk:report-setup talk:set-serving-time talk:stage:put-away
text:correct:5 text:deed:1 text:deed:2 text:drop-dish:1 text:frame:7 text:help:2 text:report-not-done:3
text:resume:5 text:set-guests:0 text:set-guests:6 text:set-method:0 text:shift-serving:3 then:add-dish>ask-amount
then:add-dish>note-guest then:add-dish>report-not-done then:add-hands>add-dish then:add-hands>lack
then:ask-next>add-dish then:choose>deed then:cook-away>report-reading then:deed>quiet then:describe-roast>ask-safety
then:drop-dish>ask then:drop-dish>report-started then:lack>add-dish then:report-done>ask-substitute
then:report-done>choose then:report-not-done>set-timer then:report-out>note-guest then:report-oven>cook-away
then:report-oven>report-started then:report-reading>cancel-timer then:report-reading>report-out
then:report-setup>add-hands then:report-setup>report-started then:report-started>report-guests
then:report-trouble>ask-next then:report-trouble>drop-dish then:set-guests>deed then:set-guests>report-done
then:set-serving-time>lack then:skip-step>add-hands then:watch>ask-how then:watch>ask-temperature
twice:report-oven without:ask-amount:phrase:8 without:ask-how:guess:5 without:ask-status:frame:4
without:ask-temperature without:cook-away:guess:6 without:note-guest without:note-guest:phrase:6
without:report-done without:report-done:phrase:7 without:report-out without:report-reading:guess:7
without:report-trouble:phrase:1 without:report-trouble:phrase:5 without:running-behind without:set-serving-time:phrase:4
without:set-timer:frame:8 without:shift-serving:frame:8 without:watch:frame:6
-1 =add-dish:frame =ask-how =ask-how:phrase =ask-status =ask-substitute:frame =describe-roast
=help =lack:phrase =quiet:guess =report-done =report-guests =report-not-done:frame =report-oven:frame
=report-reading =report-reading:phrase =report-setup:guess =resume:guess =set-guests =set-guests:frame
=set-method:frame =set-serving-time =undo acts:talk2 acts:talk3 clause:add-dish:phrase:6 clause:affirm:guess:3
clause:cancel-timer:guess:7 clause:cook-away:phrase:1 clause:correct:guess:8 clause:describe-roast:phrase:5
clause:drop-dish:frame:6 clause:drop-dish:phrase:2 clause:emergency:across:0 clause:frame:2
clause:guess:6 clause:lack:guess:2 clause:lack:phrase:0 clause:note-guest:phrase:5 clause:phrase:3
clause:quiet:guess:5 clause:repeat:phrase:6 clause:report-guests:guess:4 clause:report-not-done:phrase:3
clause:report-reading:guess:2 clause:report-reading:phrase:2 clause:report-setup:phrase:6 clause:report-trouble:frame:4
clause:report-trouble:phrase:1 clause:report-trouble:phrase:5 clause:report-trouble:phrase:6
clause:set-doneness:frame:4 clause:set-doneness:frame:8 clause:set-doneness:guess:5 clause:set-method:phrase:6
clause:set-method:phrase:8 clause:skip-step:phrase:5 clause:undo:guess:5 clause:undo:guess:6
clause:watch:guess:4 cover:ask-amount:3 cover:ask-next:1 cover:ask-next:3 cover:ask-shopping:1
cover:ask-status:3 cover:pause:3 cover:report-guests:3 cover:report-reading:2 cover:report-started:1
cover:report-trouble:3 cover:running-behind:1 cover:set-doneness:2 cover:set-method:2 cover:set-method:3
cover:set-serving-time:3 cover:start-over:1 empty:acknowledge:7 empty:acknowledge:8 empty:add-dish:2
empty:affirm:0 empty:ask-status:3 empty:ask-temperature:8 empty:choose:7 empty:cook-away:1
empty:correct:2 empty:courtesy:7 empty:deny:3 empty:emergency:0 empty:emergency:3 empty:emergency:5
empty:have:5 empty:report-out:6 empty:report-out:7 empty:report-setup:0 empty:report-thermometer:5
empty:report-trouble:2 empty:report-trouble:8 empty:set-method:8 empty:set-timer:4 empty:shift-serving:4
empty:skip-step:3 empty:talk3 empty:talk5 empty:talk6 empty:talk7 empty:undo:0 empty:undo:2
empty:undo:6 empty:watch:3 empty:watch:4 empty:watch:6 empty:words1 empty:words2 expecting:guests:report-guests
first:affirm first:ask-shopping first:pause first:report-oven first:report-reading first:watch
for:ask-how>ask-safety for:ask-how>ask-temperature for:ask-plan>ask-shopping for:ask-substitute>add-dish
for:ask-temperature>ask-next for:ask-temperature>report-oven for:choose>affirm for:lack>report-not-done
for:report-out>ask-time-left for:report-out>report-trouble for:report-reading>describe-roast
for:report-setup>report-out for:report-setup>skip-step for:set-doneness>ask-status for:set-doneness>report-started
for:set-method>lack for:set-method>skip-step for:set-serving-time>shift-serving gained:ask-guests
gained:ask-plan gained:ask-temperature gained:phrase:4 least2:many1 least4 least5 least5:many1
least6:many1 left0:many2 left3:many1 left5 left:numbers0 lost:cook-away lost:correct many0:long4
many0:long5 many2:long3 many3:long4 many4:clauses5 mean7 mood:negative:ask mood:negative:undo
mood:question:repeat mood:question:report-reading mood:request:report-oven mood:statement:report-trouble
slots:add-hands:who slots:ask-options: slots:describe-roast:boneless,weight,weightUnit slots:describe-roast:bones
slots:help: slots:report-oven:temperature slots:report-setup:tent slots:report-trouble:trouble
slots:set-doneness:doneness slots:set-serving-time:time slots:undo: stage::report-out stage::set-serving-time
stage:carve:ask-next stage:low-roast:ask-substitute stage:low-roast:set-guests stage:low-roast:undo
stage:prep:ask-next stage:prep:ask-substitute stage:prep:pause stage:prep:report-not-done stage:rest:emergency
stage:rest:report-trouble stage:sear:report-oven talk:ask-amount talk:best3 talk:likely3 talk:likely7
talk:long4 talk:long5 talk:repeat talk:undo text:ask:0 text:ask:2 text:correct:8 text:drop-dish:4
text:guess:2 text:guess:3 text:have:2 text:help:6 text:note-guest:2 text:phrase:1 text:repeat:3
text:repeat:5 text:report-oven:6 text:report-setup:1 text:set-doneness:1 text:set-serving-time:2
text:set-units:0 text:undo:1 then:add-hands>add-hands then:add-hands>ask then:add-hands>report-trouble
then:cook-away>report-done then:correct>ask then:deed>report-guests then:deed>watch then:drop-dish>add-hands
then:lack>set-doneness then:report-done>add-dish then:report-done>ask-time-left then:report-done>note-guest
then:report-guests>report-reading then:report-guests>set-doneness then:report-guests>set-guests
then:report-not-done>ask-how then:report-not-done>report-started then:report-oven>report-oven
then:report-reading>deed then:report-reading>report-not-done then:report-setup>ask-plan then:report-setup>ask-why
then:report-setup>describe-roast then:report-started>ask-status then:report-thermometer>report-reading
then:report-trouble>shift-serving then:set-guests>add-dish then:set-guests>ask then:set-serving-time>add-dish
then:set-serving-time>add-hands then:set-serving-time>ask then:set-serving-time>report-guests
then:set-serving-time>set-doneness then:set-timer>report-guests then:set-timer>set-serving-time
then:shift-serving>deed then:skip-step>deed twice:add-hands without:add-dish:frame:3 without:add-hands
without:ask-status:guess:5 without:ask-temperature:guess:5 without:deny:phrase:8 without:lack
without:report-done:phrase:0 without:report-not-done without:report-out:phrase:5 without:report-oven:phrase:5
without:report-oven:phrase:6 without:report-setup:phrase:6 without:report-trouble:phrase:4
without:set-guests:phrase:4 without:set-method:phrase:8 without:watch:guess:7 without:watch:guess:8
1 =ask-next:frame =ask-next:phrase =cancel-timer =drop-dish =emergency:guess =have:phrase =note-guest:phrase
=report-done:phrase =report-not-done =report-out:phrase =report-reading:frame =set-doneness:phrase
acts:talk8 clause:add-dish:guess:7 clause:add-hands:frame:4 clause:ask:frame:2 clause:cancel-timer:phrase:6
clause:choose:phrase:8 clause:correct:across:0 clause:correct:across:6 clause:deed:phrase:6
clause:deny:phrase:7 clause:describe-roast:guess:6 clause:describe-roast:guess:8 clause:drop-dish:frame:3
clause:drop-dish:guess:3 clause:frame:4 clause:help:guess:2 clause:pause:frame:2 clause:pause:phrase:7
clause:quiet:guess:6 clause:repeat:phrase:4 clause:repeat:phrase:7 clause:report-guests:frame:3
clause:report-not-done:frame:2 clause:report-oven:guess:2 clause:report-oven:guess:3 clause:report-oven:guess:8
clause:report-reading:phrase:1 clause:report-reading:phrase:7 clause:report-trouble:phrase:7
clause:running-behind:phrase:4 clause:set-doneness:guess:4 clause:set-doneness:phrase:5 clause:set-guests:guess:4
clause:set-guests:guess:5 clause:set-guests:phrase:2 clause:set-guests:phrase:5 clause:set-method:phrase:4
clause:set-serving-time:frame:5 clause:set-timer:phrase:3 clause:shift-serving:frame:3 clause:shift-serving:frame:5
clause:shift-serving:guess:5 clause:shift-serving:guess:8 clause:undo:frame:6 cover:ask-plan:3
cover:ask-temperature:1 cover:ask-time-left:3 cover:cancel-timer:3 cover:emergency:3 cover:have:3
cover:note-guest:2 cover:report-out:3 cover:report-setup:3 cover:set-timer:3 empty:affirm:8
empty:ask-how:3 empty:ask-safety:6 empty:ask-temperature:4 empty:ask-why:7 empty:best2 empty:cancel-timer:0
empty:choose:4 empty:cook-away:2 empty:correct:0 empty:correct:8 empty:courtesy:0 empty:drop-dish:8
empty:repeat:2 empty:report-guests:5 empty:report-setup:3 empty:resume:3 empty:set-method:3
empty:shift-serving:1 empty:start-over:2 expecting:confirmation:correct expecting:roast:set-guests
expecting:step:ask-why first:ask-options first:ask-safety first:correct first:describe-roast
first:drop-dish first:note-guest first:resume first:set-doneness for:add-dish>ask-how for:add-dish>report-done
for:add-hands>drop-dish for:ask-plan>ask-options for:ask-substitute>ask-options for:ask-time-left>ask-next
for:ask-time-left>ask-plan for:cook-away>running-behind for:correct>set-serving-time for:deny>affirm
for:report-not-done>running-behind for:report-oven>correct for:report-setup>ask-how for:set-serving-time>correct
gained:cook-away gained:frame:5 gained:guess:8 gained:have gained:set-guests gained:set-units
least0:many1 least1:many1 least5:many3 left2:many1 lost:ask-options lost:phrase:1 lost:report-not-done
lost:undo many0:clauses1 many0:long2 many1:long1 many2:long6 mood:intention:affirm mood:intention:choose
mood:intention:shift-serving mood:negative:report-not-done mood:negative:shift-serving mood:question:describe-roast
mood:question:lack mood:question:set-units mood:request:resume mood:request:set-method mood:request:skip-step
mood:statement:describe-roast mood:statement:have mood:statement:help mood:statement:note-guest
mood:statement:report-reading mood:story:note-guest slots:cancel-timer:label slots:drop-dish:dish
slots:note-guest:need,value,who stage::ask-next stage::ask-status stage::report-setup stage:carve:report-not-done
stage:hold:deny stage:hold:quiet stage:hold:report-oven stage:hold:report-started stage:low-roast:ask-time-left
stage:low-roast:correct stage:low-roast:report-out stage:low-roast:report-reading stage:low-roast:set-timer
stage:planning:report-oven stage:planning:set-units stage:preheat:shift-serving stage:prep:start-over
stage:rest:ask-time-left stage:rest:deny stage:rest:running-behind stage:rest:set-timer stage:sear:resume
stage:served:ask-how stage:served:quiet talk:ask-options talk:ask-shopping talk:best0 talk:helper7
talk:long2 talk:resume talk:stage: text:ask:3 text:choose:3 text:cook-away:4 text:describe-roast:1
text:frame:2 text:frame:6 text:note-guest:4 text:repeat:7 text:report-not-done:5 text:report-reading:1
text:report-reading:7 text:report-trouble:0 text:set-doneness:2 text:set-doneness:3 text:set-guests:1
text:set-units:1 then:add-dish>add-dish then:add-hands>ask-time-left then:add-hands>report-done
then:ask-safety>ask-how then:cook-away>ask-time-left then:cook-away>deed then:deed>note-guest
then:lack>drop-dish then:note-guest>note-guest then:note-guest>report-trouble then:report-done>add-hands
then:report-done>ask-next then:report-done>cook-away then:report-done>set-guests then:report-guests>ask
then:report-guests>ask-status then:report-guests>report-not-done then:report-guests>set-serving-time
then:report-not-done>ask-next then:report-oven>deed then:report-oven>quiet then:report-oven>set-guests
then:report-setup>report-out then:report-started>ask-temperature then:report-started>ask-why
then:report-started>set-doneness then:report-trouble>report-done then:report-trouble>undo then:running-behind>ask
then:running-behind>deed then:running-behind>lack then:set-doneness>note-guest then:set-guests>drop-dish
then:set-serving-time>ask-next then:set-serving-time>report-not-done then:set-timer>correct
then:set-units>ask then:set-units>report-trouble then:shift-serving>set-serving-time twice:report-done
without:add-dish:guess:7 without:add-dish:phrase:5 without:add-hands:guess:8 without:add-hands:phrase:7
without:ask-next:phrase:2 without:ask-temperature:phrase:2 without:ask-time-left:frame:3 without:report-guests:phrase:5
without:set-guests:phrase:3
2 =ask-amount:guess =ask-next:guess =ask-plan =ask-safety:guess =ask-safety:phrase =ask-temperature
=ask-time-left:phrase =cook-away:phrase =describe-roast:phrase =drop-dish:frame =drop-dish:guess
=emergency =emergency:across =have =lack:frame =lack:guess =repeat:frame =report-guests:phrase
=report-oven:guess =report-setup =report-setup:phrase =report-started:across =running-behind
=set-doneness =skip-step:phrase =watch:guess acts:talk7 breath6:false clause:across:1 clause:across:2
clause:add-dish:frame:1 clause:add-dish:frame:5 clause:add-hands:phrase:4 clause:ask:across:6
clause:ask:phrase:1 clause:ask:phrase:6 clause:cancel-timer:frame:7 clause:cancel-timer:guess:4
clause:cancel-timer:phrase:2 clause:cook-away:frame:7 clause:deed:frame:3 clause:deed:frame:5
clause:describe-roast:phrase:4 clause:drop-dish:phrase:0 clause:emergency:guess:2 clause:emergency:guess:3
clause:frame:6 clause:note-guest:phrase:1 clause:pause:frame:5 clause:quiet:frame:2 clause:quiet:frame:4
clause:quiet:phrase:5 clause:repeat:phrase:2 clause:report-oven:frame:2 clause:report-oven:phrase:8
clause:report-reading:frame:6 clause:report-thermometer:across:3 clause:report-trouble:phrase:8
clause:set-doneness:phrase:6 clause:set-serving-time:phrase:6 clause:set-timer:guess:6 clause:set-timer:phrase:4
clause:set-timer:phrase:7 clause:set-timer:phrase:8 clause:set-units:guess:6 clause:set-units:phrase:5
clause:shift-serving:guess:4 clause:shift-serving:phrase:4 clause:shift-serving:phrase:7 clause:skip-step:frame:5
clause:skip-step:guess:2 clause:skip-step:guess:4 cover:ask-safety:0 cover:cook-away:2 cover:describe-roast:2
cover:drop-dish:3 cover:frame:2 cover:pause:1 cover:report-not-done:3 cover:report-setup:1
cover:report-started:2 cover:report-trouble:0 cover:report-trouble:2 cover:running-behind:3
cover:set-units:0 cover:set-units:3 empty:ask-options:2 empty:ask-shopping:3 empty:ask-substitute:4
empty:ask-temperature:5 empty:ask-temperature:6 empty:best0 empty:best6 empty:best7 empty:choose:3
empty:correct:4 empty:correct:5 empty:correct:7 empty:help:1 empty:help:4 empty:help:6 empty:note-guest:4
empty:repeat:0 empty:repeat:3 empty:report-oven:8 empty:report-setup:5 empty:report-started:5
empty:set-serving-time:2 empty:shift-serving:3 empty:skip-step:5 empty:undo:3 expecting:choice:set-guests
expecting:confirmation:ask-status expecting:confirmation:pause expecting:reading:correct expecting:step:report-not-done
first:deny first:emergency first:report-guests first:set-method first:start-over for:ask-how>ask-next
for:ask-status>ask-next for:ask-temperature>set-units for:ask-why>add-dish for:report-not-done>report-trouble
for:report-out>report-reading for:report-started>ask-substitute for:report-started>report-out
for:report-started>report-trouble for:report-started>skip-step for:set-doneness>ask-safety
for:set-doneness>ask-temperature gained:across:0 gained:add-dish gained:emergency gained:guess:5
gained:guess:7 gained:report-done gained:report-setup how:whole guessed least2:many3 least4:many1
least6:many3 left5:many3 lost:ask-how lost:ask-substitute lost:guess:5 lost:report-done lost:start-over
many0:long1 many1:long2 mean0 mood:negative:help mood:statement:cancel-timer mood:statement:lack
mood:statement:report-oven mood:statement:running-behind mood:statement:set-guests mood:story:correct
slots:ask-amount:guests slots:ask-slice: slots:ask-temperature:about,temperature slots:correct:temperature
slots:describe-roast:boneless,prepared slots:emergency:kind slots:have:thing slots:note-guest:need,value
slots:report-done:step slots:report-setup:pan,rack,shelf slots:report-trouble:minutes,step,trouble
stage:carve:ask-how stage:carve:note-guest stage:hold:resume stage:low-roast:ask-temperature
stage:low-roast:note-guest stage:low-roast:set-units stage:planning:affirm stage:preheat:report-oven
stage:prep:ask-plan stage:prep:running-behind stage:prep:set-guests stage:put-away:ask-how
stage:rest:ask-safety stage:sear:repeat stage:sear:report-not-done talk:ask-safety talk:expecting:doneness
talk:feed-public talk:guess:6 talk:likely2 talk:long1 text:across:1 text:across:2 text:add-hands:1
text:ask:8 text:cook-away:6 text:describe-roast:0 text:describe-roast:2 text:drop-dish:3 text:drop-dish:6
text:emergency:2 text:guess:6 text:lack:7 text:phrase:7 text:report-guests:1 text:report-not-done:2
text:report-oven:4 text:report-reading:3 text:report-thermometer:3 text:report-trouble:1 text:resume:4
text:running-behind:4 text:set-serving-time:3 text:set-timer:2 text:set-units:2 text:shift-serving:2
text:shift-serving:4 text:skip-step:2 text:undo:5 then:add-dish>ask-plan then:add-dish>report-setup
then:add-hands>skip-step then:ask-how>ask-temperature then:ask-safety>set-timer then:ask-status>ask-next
then:correct>report-oven then:describe-roast>ask-substitute then:describe-roast>report-out
then:describe-roast>report-oven then:describe-roast>set-units then:drop-dish>set-doneness then:lack>ask-amount
then:lack>describe-roast then:lack>lack then:lack>report-out then:report-done>running-behind
then:report-not-done>add-dish then:report-not-done>ask then:report-not-done>cancel-timer then:report-out>ask-temperature
then:report-out>report-setup then:report-out>running-behind then:report-oven>ask-status then:report-oven>running-behind
then:report-started>quiet then:report-started>report-setup then:report-trouble>report-guests
then:report-trouble>set-serving-time then:set-guests>shift-serving then:set-method>lack then:set-timer>deed
then:set-timer>report-setup then:set-timer>set-guests then:set-timer>set-timer then:set-timer>watch
then:set-units>ask-amount then:skip-step>report-setup then:undo>report-reading then:watch>cook-away
twice:lack twice:set-timer without:add-dish:guess:5 without:ask-next:guess:5 without:note-guest:guess:6
without:report-done:phrase:4 without:report-not-done:phrase:0 without:report-out:phrase:7 without:report-oven
without:report-reading:guess:5 without:report-reading:guess:6 without:report-setup:phrase:2
without:report-started without:shift-serving without:shift-serving:phrase:2
3 =ask-status:phrase =ask-temperature:phrase =drop-dish:phrase =feed-public =feed-public:phrase
=help:phrase =note-guest =repeat =report-guests:frame =report-reading:guess =report-setup:frame
=report-started:frame =running-behind:phrase =set-timer:phrase =set-units =shift-serving =watch
clause:across:7 clause:ask:frame:3 clause:ask:phrase:4 clause:cancel-timer:guess:3 clause:cook-away:frame:6
clause:correct:guess:7 clause:deny:frame:8 clause:deny:guess:6 clause:drop-dish:guess:8 clause:note-guest:guess:6
clause:note-guest:guess:7 clause:note-guest:phrase:7 clause:quiet:phrase:6 clause:repeat:guess:6
clause:report-not-done:frame:4 clause:report-not-done:guess:8 clause:report-oven:guess:6 clause:report-oven:phrase:6
clause:report-reading:frame:7 clause:report-setup:frame:5 clause:report-setup:guess:7 clause:report-trouble:frame:3
clause:resume:guess:7 clause:resume:phrase:3 clause:running-behind:frame:6 clause:set-doneness:phrase:8
clause:set-timer:guess:8 clause:shift-serving:phrase:5 clause:skip-step:frame:3 clause:start-over:frame:3
clause:watch:frame:7 cover:ask-guests:1 cover:ask-time-left:2 cover:choose:1 cover:choose:3
cover:cook-away:0 cover:lack:0 cover:report-guests:2 cover:report-oven:3 cover:set-doneness:1
cover:set-guests:0 cover:set-timer:2 empty:ask-how:4 empty:ask-shopping:1 empty:ask-shopping:8
empty:courtesy:1 empty:help:5 empty:pause:3 empty:pause:8 empty:quiet:2 empty:quiet:3 empty:repeat:4
empty:report-guests:3 empty:report-not-done:5 empty:report-reading:3 empty:set-guests:1 empty:set-method:4
empty:set-serving-time:6 empty:set-timer:2 first:repeat first:report-setup for:add-dish>ask-amount
for:ask-how>ask-plan for:ask-options>ask-how for:ask-options>ask-temperature for:ask-plan>ask-how
for:ask-status>ask-amount for:ask-time-left>ask-why for:ask-time-left>lack for:describe-roast>add-dish
for:report-done>ask-next for:report-done>report-oven for:report-done>report-reading for:report-done>report-trouble
for:report-not-done>ask-why for:report-not-done>report-reading for:report-not-done>report-setup
for:report-oven>report-done for:report-reading>ask-safety for:report-reading>shift-serving
for:report-trouble>emergency for:set-doneness>report-reading for:set-doneness>report-trouble
for:set-guests>ask-amount for:set-guests>set-timer gained:frame:6 gained:guess:6 gained:repeat
helper8 lost:add-dish lost:ask-guests lost:frame:0 many0:long0 mood:negative:deny mood:question:help
mood:question:running-behind mood:statement:emergency mood:statement:report-setup slots:ask-how:
slots:ask-temperature:about,when slots:ask-why:topic slots:feed-public: slots:repeat: slots:report-oven:minutesAgo,temperature
slots:set-units:temperature slots:shift-serving:minutes slots:watch:temperature stage::ask-shopping
stage::pause stage::running-behind stage:hold:report-done stage:hold:report-out stage:hold:set-serving-time
stage:low-roast:ask-guests stage:low-roast:ask-plan stage:low-roast:cancel-timer stage:planning:ask-temperature
stage:planning:set-guests stage:preheat:ask-how stage:preheat:ask-status stage:preheat:ask-temperature
stage:preheat:report-done stage:preheat:set-guests stage:preheat:start-over stage:prep:ask-amount
stage:prep:lack stage:rest:choose stage:rest:shift-serving stage:sear:ask-temperature stage:sear:report-started
talk:ask-temperature talk:best8 talk:expecting: talk:long0 talk:stage:served text:across:7
text:add-dish:3 text:affirm:3 text:ask:5 text:correct:1 text:deed:3 text:feed-public:2 text:frame:1
text:phrase:5 text:report-guests:6 text:report-reading:4 text:report-setup:2 text:report-setup:4
text:report-trouble:2 text:report-trouble:6 text:report-trouble:7 text:set-doneness:5 text:skip-step:6
text:skip-step:7 text:skip-step:8 text:undo:6 text:watch:0 then:add-dish>set-guests then:add-hands>report-guests
then:add-hands>set-guests then:ask-safety>set-guests then:ask-temperature>set-guests then:choose>add-dish
then:deed>cook-away then:deed>report-setup then:deed>undo then:describe-roast>set-timer then:lack>ask-guests
then:note-guest>add-hands then:report-oven>ask-next then:report-reading>ask-options then:report-reading>report-trouble
then:report-setup>ask-temperature then:report-setup>deed then:report-setup>skip-step then:report-started>ask-next
then:report-started>shift-serving then:report-trouble>ask then:report-trouble>describe-roast
then:report-trouble>skip-step then:running-behind>cook-away then:running-behind>report-out
then:set-guests>report-oven then:set-guests>report-trouble then:set-method>set-serving-time
then:set-serving-time>drop-dish then:set-serving-time>report-oven then:set-serving-time>report-trouble
then:set-timer>ask-substitute then:set-units>ask-temperature then:skip-step>ask without:add-dish:phrase:0
without:ask-why:phrase:7 without:choose without:report-guests:guess:6 without:report-not-done:phrase:3
without:report-started:frame:4 without:report-trouble:frame:5 without:report-trouble:guess:5
4 =ask-plan:frame =ask-time-left:guess =cancel-timer:guess =choose:guess =pause:phrase =report-out:frame
=report-trouble:phrase =set-doneness:frame =set-timer =shift-serving:phrase acts:talk0 breath4:true
clause:add-dish:guess:6 clause:cancel-timer:guess:8 clause:choose:phrase:7 clause:cook-away:frame:5
clause:cook-away:phrase:6 clause:correct:across:8 clause:correct:guess:4 clause:deed:frame:8
clause:deed:phrase:4 clause:describe-roast:phrase:6 clause:drop-dish:guess:4 clause:frame:7
clause:guess:7 clause:have:phrase:2 clause:help:guess:4 clause:help:guess:5 clause:lack:guess:5
clause:pause:frame:0 clause:pause:guess:5 clause:pause:phrase:6 clause:phrase:7 clause:report-guests:phrase:2
clause:report-oven:phrase:1 clause:report-oven:phrase:4 clause:report-oven:phrase:5 clause:report-reading:frame:5
clause:report-setup:guess:3 clause:resume:phrase:6 clause:running-behind:phrase:6 clause:set-guests:frame:2
clause:set-guests:phrase:7 clause:set-method:frame:3 clause:set-serving-time:phrase:4 clause:set-serving-time:phrase:5
clause:undo:across:2 clause:watch:guess:7 clause:watch:guess:8 cover:lack:3 cover:note-guest:3
cover:phrase:3 cover:report-not-done:2 cover:report-reading:3 cover:report-setup:0 cover:set-guests:3
cover:shift-serving:3 cover:watch:2 empty:affirm:3 empty:ask-guests:3 empty:ask-shopping:0
empty:correct:6 empty:courtesy:3 empty:deny:4 empty:lack:2 empty:pause:6 empty:repeat:1 empty:repeat:5
empty:report-oven:3 empty:report-oven:7 empty:report-reading:0 empty:report-trouble:3 empty:set-guests:3
empty:set-guests:4 empty:shift-serving:7 empty:skip-step:6 empty:start-over:3 expecting:confirmation:quiet
expecting:reading:ask-status expecting:reading:report-trouble expecting:step:report-reading
first:running-behind for:affirm>deny for:ask-status>ask-substitute for:ask-substitute>ask-why
for:deny>skip-step for:drop-dish>report-out for:help>ask-next for:lack>report-out for:report-done>add-hands
for:report-trouble>report-not-done for:set-guests>report-not-done for:set-guests>report-trouble
for:set-serving-time>note-guest for:set-timer>cancel-timer for:start-over>ask-plan for:undo>correct
gained:ask-next gained:cancel-timer gained:frame:8 how:clause guessed left4:many3 lost0:gained0
lost2:gained1 lost:ask-shopping many0 mood:intention:correct mood:intention:running-behind
mood:negative:add-hands mood:question:ask mood:question:report-guests mood:statement:add-hands
mood:statement:drop-dish mood:statement:repeat mood:statement:start-over mood:story:choose
slots:add-hands:does,until,who slots:correct:count slots:describe-roast:startTemperature slots:report-guests:count,state
slots:report-out:minutesAgo,what slots:report-oven:gasMark slots:report-oven:minutesAgo,state
slots:report-setup:shelf stage::ask-temperature stage::report-oven stage:hold:ask-temperature
stage:hold:pause stage:hold:report-guests stage:hold:report-trouble stage:hold:shift-serving
stage:low-roast:ask-how stage:low-roast:cook-away stage:low-roast:report-trouble stage:low-roast:shift-serving
stage:planning:set-serving-time stage:preheat:report-started stage:prep:emergency stage:prep:report-setup
stage:put-away:ask-temperature stage:rest:ask-temperature stage:rest:report-reading stage:rest:report-started
stage:sear:report-out talk talk:guess:5 talk:set-doneness text:add-hands:2 text:correct:7 text:drop-dish:5
text:feed-public:5 text:guess:7 text:help:4 text:pause:6 text:phrase:8 text:report-trouble:3
text:running-behind:3 text:set-guests:2 text:set-timer:6 text:undo:2 then:add-dish>ask then:add-dish>ask-shopping
then:add-dish>ask-temperature then:add-dish>ask-time-left then:add-dish>report-trouble then:ask-amount>ask-safety
then:ask-time-left>ask-temperature then:deed>shift-serving then:lack>skip-step then:note-guest>ask-next
then:pause>resume then:report-done>report-done then:report-not-done>ask-time-left then:report-out>ask-next
then:report-out>describe-roast then:report-out>report-started then:report-out>set-serving-time
then:report-oven>ask-time-left then:report-oven>report-guests then:report-reading>ask-how then:set-doneness>report-done
then:set-method>report-reading then:shift-serving>ask-how then:watch>correct without:ask-safety:phrase:4
without:choose:phrase:3 without:lack:guess:5 without:repeat without:report-guests:phrase:4
without:report-oven:frame:5 without:report-oven:guess:5 without:set-guests:phrase:2 without:set-units
without:undo without:undo:across:0
5 =affirm:phrase =ask-how:frame =repeat:guess =set-guests:phrase =skip-step:frame clause:across:4
clause:across:6 clause:add-hands:guess:7 clause:add-hands:phrase:2 clause:add-hands:phrase:7
clause:cook-away:phrase:5 clause:deed:frame:7 clause:deny:phrase:6 clause:describe-roast:phrase:7
clause:frame:5 clause:have:across:2 clause:lack:guess:6 clause:report-guests:phrase:8 clause:report-reading:guess:5
clause:report-reading:guess:8 clause:report-setup:frame:1 clause:report-setup:guess:2 clause:report-thermometer:across:5
clause:report-trouble:frame:2 clause:running-behind:frame:8 clause:set-method:guess:4 clause:set-serving-time:frame:2
clause:set-units:guess:5 clause:skip-step:frame:7 cover:drop-dish:1 cover:repeat:0 cover:report-guests:0
cover:set-timer:0 empty:acknowledge:6 empty:add-hands:4 empty:add-hands:7 empty:affirm:6 empty:ask-how:1
empty:ask-temperature:3 empty:ask-time-left:7 empty:cancel-timer:3 empty:correct:1 empty:deny:5
empty:have:2 empty:lack:5 empty:note-guest:6 empty:note-guest:7 empty:pause:5 empty:repeat:7
empty:report-not-done:6 empty:running-behind:2 empty:running-behind:4 empty:set-guests:5 empty:set-method:5
empty:set-units:5 empty:set-units:6 empty:shift-serving:5 expecting:confirmation:set-timer
expecting:doneness:set-doneness first:ask-slice first:set-units for:ask-next>ask-how for:ask-options>ask-substitute
for:ask-status>ask-options for:ask-status>ask-plan for:ask-temperature>ask-amount for:deny>report-not-done
for:drop-dish>report-not-done for:help>ask-options for:repeat>report-started for:report-done>lack
for:report-not-done>add-dish for:report-oven>report-reading for:report-started>running-behind
gained:ask-shopping least6:many2 left1:many3 lost:frame:1 lost:phrase:0 many0:clauses3 mood:intention:skip-step
mood:negative:have mood:negative:watch mood:request:cancel-timer mood:request:start-over mood:statement:pause
mood:statement:report-not-done mood:statement:set-serving-time mood:statement:set-timer slots:ask-guests:about
slots:correct:doneness slots:correct:minutesAgo slots:describe-roast:cut,prepared slots:set-doneness:temperature
stage::ask-plan stage::set-guests stage:low-roast:ask-status stage:low-roast:ask-why stage:planning:help
stage:preheat:cook-away stage:preheat:pause stage:prep:report-thermometer stage:rest:ask-options
stage:rest:ask-slice stage:sear:ask-status stage:served:ask-next talk:likely1 text:across:4
text:across:6 text:ask:4 text:ask:6 text:cancel-timer:6 text:choose:7 text:deed:4 text:frame:5
text:guess:4 text:lack:2 text:pause:5 text:phrase:3 text:report-oven:5 text:report-thermometer:5
text:shift-serving:8 then:add-dish>ask-safety then:add-dish>lack then:add-hands>set-timer then:cancel-timer>report-reading
then:choose>ask then:cook-away>ask then:cook-away>correct then:deed>ask then:deed>deed then:deed>set-guests
then:describe-roast>ask-temperature then:drop-dish>note-guest then:emergency>ask then:lack>running-behind
then:note-guest>ask then:note-guest>cook-away then:report-out>cook-away then:report-out>lack
then:report-oven>skip-step then:report-setup>report-done then:report-started>cook-away then:report-started>report-started
then:report-started>skip-step then:report-trouble>cook-away then:set-guests>ask-status then:set-guests>ask-substitute
then:set-guests>describe-roast then:set-method>describe-roast then:set-timer>ask-amount then:set-timer>shift-serving
then:shift-serving>lack then:undo>deed then:watch>ask then:watch>report-trouble without:ask-next:phrase:0
without:ask-time-left:phrase:5 without:correct:guess:7 without:describe-roast:phrase:1 without:report-guests
without:report-oven:frame:6 without:report-setup:phrase:3 without:report-started:phrase:2 without:report-started:phrase:5
without:report-trouble:guess:8 without:shift-serving:phrase:6 without:watch:guess:6
6 =ask-options:phrase =ask-why:guess =report-started:phrase =report-trouble:frame =set-doneness:guess
acts:talk4 acts:talk6 clause:add-hands:phrase:6 clause:ask:across:4 clause:choose:frame:4 clause:choose:phrase:4
clause:deed:phrase:3 clause:deny:frame:5 clause:frame:8 clause:lack:phrase:1 clause:lack:phrase:8
clause:note-guest:across:3 clause:note-guest:guess:8 clause:pause:phrase:2 clause:phrase:8
clause:report-guests:frame:4 clause:report-not-done:phrase:6 clause:report-setup:guess:4 clause:report-thermometer:across:0
clause:report-thermometer:across:7 clause:report-thermometer:across:8 clause:report-trouble:frame:7
clause:report-trouble:phrase:3 clause:report-trouble:phrase:4 clause:set-doneness:frame:3 clause:set-doneness:phrase:0
clause:set-doneness:phrase:1 clause:set-doneness:phrase:3 clause:set-guests:across:3 clause:set-guests:frame:0
clause:set-serving-time:guess:4 clause:set-units:guess:4 clause:shift-serving:phrase:3 clause:watch:across:8
clause:watch:frame:2 cover:describe-roast:1 cover:feed-public:1 cover:report-out:2 cover:shift-serving:0
empty:add-dish:0 empty:ask-safety:3 empty:lack:1 empty:report-guests:0 empty:report-oven:1
empty:report-oven:5 empty:report-thermometer:7 empty:report-trouble:6 empty:set-doneness:8
empty:set-guests:8 empty:set-serving-time:7 empty:shift-serving:6 first:report-trouble for:ask-how>ask-amount
for:ask-next>ask-options for:ask-safety>report-reading for:ask-substitute>ask-status for:ask-substitute>watch
for:correct>set-guests for:pause>ask-time-left for:report-out>ask-why for:report-reading>ask-how
for:report-trouble>ask-safety for:report-trouble>report-started for:resume>report-trouble for:running-behind>ask-plan
for:set-method>ask-why for:set-timer>pause for:shift-serving>note-guest for:shift-serving>report-out
for:watch>set-doneness least7:many2 least8:many3 lost1:gained1 mood:intention:note-guest mood:intention:report-not-done
mood:intention:set-serving-time mood:negative:cook-away mood:negative:describe-roast mood:story:drop-dish
slots:correct:dish slots:describe-roast:startTemperature,startTemperatureUnit slots:report-out:time
slots:report-reading:temperature,where slots:report-started:step,which stage::help stage::report-guests
stage::shift-serving stage:low-roast:ask-next stage:low-roast:report-thermometer stage:planning:ask-plan
stage:prep:ask-how stage:prep:note-guest stage:prep:report-done stage:rest:ask-substitute stage:rest:cancel-timer
stage:sear:skip-step talk:choose talk:courtesy talk:expecting:guests talk:expecting:reading
talk:found1 talk:found2 text:add-hands:3 text:cancel-timer:8 text:cook-away:5 text:frame:3
text:lack:5 text:pause:7 text:phrase:4 text:repeat:4 text:report-guests:8 text:report-not-done:4
text:report-oven:3 text:report-setup:8 text:report-thermometer:0 text:report-thermometer:7
text:report-thermometer:8 text:running-behind:5 text:set-guests:4 text:set-guests:5 text:set-method:4
text:set-units:4 text:undo:3 then:cancel-timer>ask-status then:cancel-timer>ask-time-left then:cancel-timer>report-trouble
then:cook-away>note-guest then:cook-away>set-serving-time then:describe-roast>set-guests then:lack>ask-why
then:lack>report-oven then:lack>report-started then:note-guest>ask-safety then:note-guest>report-oven
then:report-guests>ask-time-left then:report-not-done>report-done then:report-not-done>report-reading
then:report-out>ask-time-left then:report-trouble>ask-options then:report-trouble>ask-status
then:report-trouble>report-out then:set-guests>note-guest then:set-timer>report-reading then:shift-serving>cook-away
then:skip-step>report-not-done then:watch>report-oven twice:report-started without:add-dish:phrase:4
without:ask-status:guess:6 without:ask-temperature:guess:6 without:ask-time-left without:ask-time-left:phrase:7
without:lack:phrase:5 without:report-done:frame:5 without:set-doneness:phrase:2 without:shift-serving:phrase:7
7 =ask-substitute:phrase =ask-why:frame =report-guests:across =report-oven:phrase =report-thermometer
=report-thermometer:across =resume:phrase =undo:across acts:talk5 clause:add-dish:guess:4 clause:add-dish:guess:8
clause:affirm:frame:4 clause:affirm:phrase:6 clause:affirm:phrase:7 clause:affirm:phrase:8
clause:ask:across:0 clause:cancel-timer:phrase:5 clause:choose:guess:8 clause:cook-away:across:8
clause:cook-away:frame:4 clause:correct:across:1 clause:correct:across:5 clause:deed:guess:8
clause:deed:phrase:7 clause:feed-public:phrase:2 clause:pause:guess:6 clause:quiet:frame:3
clause:repeat:phrase:1 clause:repeat:phrase:8 clause:report-guests:phrase:7 clause:report-setup:phrase:0
clause:report-setup:phrase:7 clause:report-thermometer:across:4 clause:resume:frame:8 clause:running-behind:phrase:5
clause:set-method:phrase:3 clause:set-method:phrase:5 clause:set-method:phrase:7 clause:set-serving-time:frame:3
clause:set-serving-time:frame:4 clause:set-serving-time:frame:6 clause:set-timer:phrase:6 clause:start-over:phrase:1
clause:start-over:phrase:3 clause:watch:across:4 cover:add-dish:1 cover:ask-next:0 cover:ask-substitute:2
cover:cook-away:1 cover:drop-dish:2 cover:feed-public:2 cover:running-behind:2 cover:skip-step:2
empty:ask-guests:1 empty:ask-safety:1 empty:ask-status:4 empty:ask-time-left:5 empty:cook-away:4
empty:courtesy:6 empty:deny:2 empty:lack:8 empty:report-guests:2 empty:report-guests:4 empty:report-not-done:1
empty:report-not-done:4 empty:running-behind:7 empty:set-doneness:3 empty:set-serving-time:3
empty:watch:5 expecting:choice:ask-options expecting:confirmation:drop-dish expecting:roast:lack
for:ask-how>help for:ask-next>ask-time-left for:ask-time-left>ask-safety for:ask-time-left>report-guests
for:drop-dish>have for:note-guest>ask-safety for:note-guest>set-doneness for:report-done>ask-safety
for:report-not-done>ask-substitute for:report-setup>report-trouble for:report-trouble>deny
for:set-serving-time>report-started for:shift-serving>running-behind gained:ask-safety how:none
many1:long6 mood:negative:set-units mood:question:cook-away mood:question:set-guests mood:statement:feed-public
mood:statement:set-method mood:story:shift-serving slots:describe-roast:cut,frozen,weight,weightUnit
slots:describe-roast:prepared slots:report-reading:temperature,thermometer,unit,where slots:report-setup:fan,pan,rack,shelf
slots:report-thermometer:bias stage::ask-amount stage:carve:shift-serving stage:planning:describe-roast
stage:planning:report-thermometer stage:planning:set-method stage:preheat:deny stage:prep:ask-why
stage:prep:resume stage:prep:set-serving-time stage:rest:report-out stage:rest:report-setup
stage:sear:set-guests stage:served:report-trouble talk:affirm talk:expecting:serving-time text:affirm:6
text:choose:6 text:deed:5 text:deed:7 text:describe-roast:6 text:describe-roast:7 text:frame:4
text:quiet:3 text:report-guests:4 text:report-thermometer:4 text:set-method:7 text:set-serving-time:7
text:set-units:3 then:add-dish>ask-why then:ask-how>ask-safety then:ask-how>ask-why then:ask-why>ask-how
then:cancel-timer>report-started then:cook-away>report-out then:cook-away>set-guests then:deed>report-oven
then:deny>ask then:describe-roast>report-started then:drop-dish>lack then:have>deed then:have>report-started
then:lack>add-hands then:lack>have then:lack>report-done then:lack>set-timer then:note-guest>ask-how
then:note-guest>report-started then:report-done>ask-how then:report-done>shift-serving then:report-guests>report-oven
then:report-guests>report-trouble then:report-guests>set-timer then:report-out>cancel-timer
then:report-reading>ask-time-left then:report-reading>set-guests then:report-trouble>ask-temperature
then:report-trouble>running-behind then:running-behind>report-trouble then:set-doneness>set-serving-time
then:set-guests>lack then:shift-serving>add-dish then:shift-serving>ask-next then:shift-serving>ask-options
then:shift-serving>report-reading then:undo>add-dish twice:set-serving-time without:ask-status:phrase:3
without:drop-dish:guess:8 without:note-guest:phrase:1 without:report-done:phrase:3 without:report-oven:guess:7
without:resume without:running-behind:phrase:7 without:set-doneness:phrase:3 without:skip-step:guess:8
8 =ask-temperature:across =set-method:phrase clause:across:8 clause:choose:guess:4 clause:correct:across:2
clause:deed:phrase:2 clause:deny:phrase:8 clause:describe-roast:guess:2 clause:describe-roast:phrase:8
clause:lack:frame:7 clause:note-guest:phrase:8 clause:repeat:guess:7 clause:report-not-done:guess:6
clause:report-reading:guess:6 clause:report-reading:phrase:6 clause:report-setup:frame:2 clause:set-guests:frame:7
clause:set-timer:frame:7 clause:set-units:guess:3 clause:set-units:phrase:8 clause:start-over:phrase:6
cover:ask-plan:2 cover:ask-safety:1 cover:ask-temperature:2 cover:cancel-timer:1 cover:deny:1
cover:quiet:0 cover:quiet:1 cover:set-units:1 empty:ask-safety:2 empty:ask-time-left:2 empty:ask-why:4
empty:emergency:2 empty:emergency:4 empty:note-guest:0 empty:pause:1 empty:report-trouble:1
empty:resume:5 empty:running-behind:3 expecting:confirmation:set-serving-time first:report-out
for:ask-temperature>ask-options for:describe-roast>correct for:repeat>ask-why for:report-not-done>undo
for:report-reading>report-guests for:report-started>set-timer for:report-started>shift-serving
for:set-guests>add-hands for:set-guests>note-guest for:set-serving-time>report-trouble gained:feed-public
lost:guess:4 many0:clauses4 mood:negative:quiet mood:negative:repeat mood:request:choose mood:statement:correct
mood:statement:resume slots:describe-roast:prepared,weight,weightUnit slots:report-reading:temperature,unit
slots:report-setup:oven,rings slots:report-setup:pan,shelf stage::ask-options stage::ask-safety
stage::cancel-timer stage::lack stage:carve:report-guests stage:carve:report-trouble stage:hold:choose
stage:hold:running-behind stage:low-roast:report-oven stage:planning:ask-amount stage:planning:ask-shopping
stage:preheat:ask-time-left stage:rest:correct talk:ask-guests text:across:8 text:ask:7 text:cook-away:3
text:deed:6 text:describe-roast:8 text:guess:5 text:note-guest:5 text:phrase:6 text:report-not-done:6
text:report-trouble:8 text:running-behind:6 text:set-doneness:7 text:set-timer:3 text:set-timer:4
then:ask-substitute>ask-amount then:cancel-timer>set-timer then:cook-away>report-guests then:describe-roast>feed-public
then:describe-roast>note-guest then:feed-public>set-guests then:note-guest>set-doneness then:report-done>cancel-timer
then:report-done>report-guests then:report-not-done>ask-options then:report-not-done>deed then:report-out>report-out
then:report-oven>report-done then:report-reading>ask-temperature then:report-reading>lack then:report-reading>report-done
then:set-guests>skip-step then:set-serving-time>describe-roast then:shift-serving>report-out
then:skip-step>lack without:ask-safety:phrase:1 without:ask-temperature:frame:0 without:ask-time-left:frame:2
without:correct without:correct:guess:5 without:note-guest:phrase:2 without:report-out:guess:6
without:report-setup:phrase:4
9 =add-dish:guess =shift-serving:frame clause:across:3 clause:add-dish:phrase:4 clause:affirm:frame:5
clause:cancel-timer:guess:6 clause:cook-away:guess:8 clause:cook-away:phrase:8 clause:deed:frame:6
clause:deny:guess:7 clause:deny:guess:8 clause:describe-roast:phrase:3 clause:drop-dish:phrase:5
clause:feed-public:phrase:5 clause:feed-public:phrase:7 clause:help:phrase:8 clause:lack:guess:7
clause:note-guest:guess:4 clause:pause:frame:4 clause:repeat:guess:8 clause:report-guests:phrase:4
clause:report-oven:phrase:0 clause:report-reading:guess:7 clause:report-reading:phrase:8 clause:report-setup:phrase:8
clause:report-thermometer:across:2 clause:running-behind:guess:7 clause:set-doneness:frame:5
clause:set-serving-time:phrase:8 clause:set-timer:across:1 clause:set-timer:frame:5 clause:set-timer:phrase:5
clause:watch:across:2 clause:watch:across:3 cover:ask-how:1 cover:ask-shopping:2 cover:report-done:0
cover:set-serving-time:2 empty:add-hands:6 empty:ask-substitute:2 empty:cancel-timer:1 empty:choose:6
empty:cook-away:3 empty:courtesy:4 empty:drop-dish:1 empty:forget-kitchen:2 empty:lack:6 empty:note-guest:3
empty:undo:7 expecting:choice:repeat expecting:doneness:ask-temperature first:forget-kitchen
for:ask-guests>ask-safety for:ask-how>report-setup for:ask-substitute>set-method for:report-not-done>quiet
for:report-not-done>skip-step for:report-trouble>ask-substitute how:stop mood:request:report-reading
mood:story:report-guests slots:add-hands:does,who slots:ask-amount:appetite,guests,ingredient
slots:ask-guests:about,dish,who slots:ask-time-left:about slots:report-done:step,time slots:report-setup:fan
slots:report-setup:oven slots:report-setup:rack,shelf stage::set-doneness stage:carve:emergency
stage:hold:ask-safety stage:hold:cancel-timer stage:hold:report-not-done stage:preheat:set-method
stage:prep:ask-safety stage:prep:drop-dish stage:prep:repeat stage:prep:undo stage:put-away:report-done
stage:rest:ask-next stage:sear:ask-why stage:sear:correct stage:served:ask-safety text:across:3
text:feed-public:6 text:help:5 text:report-oven:7 text:report-thermometer:2 text:set-serving-time:1
text:start-over:3 then:add-hands>ask-next then:add-hands>report-oven then:add-hands>report-reading
then:ask-status>ask-time-left then:ask-temperature>ask-time-left then:cook-away>quiet then:correct>ask-time-left
then:deed>cancel-timer then:deed>resume then:lack>deed then:report-not-done>report-out then:report-out>report-not-done
then:report-out>report-oven then:report-out>report-reading then:report-oven>undo then:report-reading>ask
then:report-reading>cook-away then:report-reading>drop-dish then:report-reading>set-doneness
then:report-setup>ask-amount then:report-setup>ask-next then:report-started>undo then:report-trouble>add-dish
then:running-behind>ask-time-left then:set-guests>ask-amount then:set-guests>quiet then:set-guests>set-doneness
then:set-serving-time>ask-plan then:skip-step>ask-time-left twice:report-out without:add-hands:phrase:4
without:ask-plan:phrase:3 without:correct:guess:6 without:report-done:guess:8 without:report-reading:phrase:3
without:report-started:guess:5
10 =ask-slice =ask-slice:across =running-behind:frame =set-serving-time:phrase =start-over:phrase
clause:add-hands:across:5 clause:add-hands:guess:6 clause:ask:across:1 clause:ask:frame:8 clause:ask:guess:7
clause:ask:phrase:5 clause:cook-away:frame:1 clause:cook-away:frame:8 clause:deed:across:0
clause:drop-dish:phrase:6 clause:feed-public:phrase:4 clause:have:phrase:4 clause:have:phrase:5
clause:note-guest:phrase:4 clause:report-guests:guess:7 clause:report-not-done:frame:8 clause:report-not-done:phrase:8
clause:running-behind:frame:5 clause:set-doneness:guess:6 clause:set-doneness:phrase:7 clause:set-guests:frame:4
clause:set-guests:phrase:8 clause:set-method:frame:5 clause:skip-step:frame:4 clause:start-over:phrase:8
clause:watch:guess:6 cover:add-dish:2 cover:ask-options:0 cover:set-method:1 empty:add-hands:2
empty:repeat:6 empty:set-serving-time:4 empty:set-units:4 expecting:step:report-out expecting:step:report-oven
for:ask-how>ask-options for:ask-how>ask-time-left for:ask-next>skip-step for:report-out>drop-dish
for:report-started>report-setup many0:clauses5 many2:long4 mood:negative:add-dish mood:question:shift-serving
mood:request:cook-away slots:ask-amount:cut,guests,ingredient slots:ask-slice:pulled slots:describe-roast:boneless,prepared,weight,weightUnit
slots:describe-roast:cut,weight,weightUnit slots:report-started:minutesAgo,step,which slots:set-guests:change
stage::cook-away stage::note-guest stage:carve:report-done stage:low-roast:ask-slice stage:planning:ask-safety
stage:planning:forget-kitchen stage:planning:have stage:planning:report-setup stage:preheat:report-not-done
stage:prep:set-doneness stage:rest:ask-why talk:helper5 text:add-dish:4 text:add-dish:5 text:affirm:7
text:deed:8 text:feed-public:4 text:have:4 text:have:8 text:set-doneness:4 text:set-guests:3
text:shift-serving:6 text:start-over:7 text:start-over:8 text:watch:4 then:choose>set-guests
then:report-done>ask-status then:report-done>ask-why then:report-done>report-not-done then:report-done>watch
then:report-out>report-trouble then:report-reading>quiet then:report-reading>report-oven then:report-reading>running-behind
then:report-setup>drop-dish then:report-started>ask-time-left then:report-thermometer>report-oven
then:set-timer>ask-temperature then:set-timer>report-done then:shift-serving>watch then:watch>set-timer
without:add-hands:guess:7 without:report-setup
11 =ask-status:guess =forget-kitchen =forget-kitchen:across clause:across:5 clause:affirm:guess:5
clause:ask:across:3 clause:ask:across:7 clause:drop-dish:frame:5 clause:drop-dish:phrase:7
clause:help:guess:8 clause:lack:frame:8 clause:pause:frame:8 clause:report-guests:frame:5 clause:report-guests:phrase:3
clause:report-oven:frame:5 clause:report-trouble:phrase:0 clause:resume:guess:8 clause:running-behind:guess:8
clause:running-behind:phrase:8 clause:set-doneness:guess:7 clause:set-timer:across:0 clause:skip-step:frame:6
clause:skip-step:guess:5 clause:undo:frame:4 cover:ask-plan:1 cover:ask-temperature:0 empty:ask-how:5
empty:ask-plan:4 empty:quiet:1 empty:quiet:5 empty:resume:6 expecting:choice:deny expecting:confirmation:set-guests
expecting:roast:ask-how expecting:step:ask-time-left for:ask-plan>set-guests for:describe-roast>report-done
for:repeat>ask-temperature for:report-oven>report-setup for:report-reading>correct for:report-reading>watch
for:report-trouble>report-reading for:start-over>set-timer many2:long5 many3:long6 mood:negative:set-serving-time
mood:request:set-serving-time slots:ask-guests:about,who slots:ask-shopping:about slots:ask-temperature:when
slots:correct:weight,weightUnit slots:describe-roast:boneless,cut,prepared,weight,weightUnit
slots:describe-roast:boneless,cut,weight,weightUnit slots:describe-roast:bones,cut,prepared
slots:forget-kitchen:about stage:planning:choose stage:planning:drop-dish stage:preheat:running-behind
stage:sear:ask-time-left text:across:5 text:choose:4 text:deny:7 text:feed-public:8 text:lack:4
text:report-not-done:7 text:report-oven:2 text:report-reading:8 text:report-setup:6 text:set-method:5
text:set-method:6 text:set-method:8 text:set-units:7 then:cancel-timer>ask then:cancel-timer>report-not-done
then:cook-away>ask-status then:cook-away>watch then:deny>correct then:report-guests>add-hands
then:report-guests>ask-next then:report-guests>report-out then:report-reading>report-guests
then:set-doneness>add-dish then:set-units>set-serving-time then:shift-serving>cancel-timer
then:shift-serving>report-oven then:shift-serving>undo without:report-guests:guess:5
12 =affirm:frame =ask-how:across =ask-shopping:phrase =ask-temperature:frame =set-timer:frame
=watch:across clause:add-dish:phrase:5 clause:ask:across:5 clause:ask:frame:6 clause:cancel-timer:phrase:7
clause:choose:guess:7 clause:cook-away:guess:5 clause:cook-away:phrase:3 clause:guess:8 clause:have:phrase:6
clause:help:frame:8 clause:note-guest:frame:8 clause:pause:guess:8 clause:report-guests:phrase:6
clause:report-oven:phrase:2 clause:resume:frame:7 clause:resume:phrase:5 clause:set-timer:frame:4
clause:watch:across:1 clause:watch:frame:5 cover:ask-how:2 cover:ask-options:1 cover:cancel-timer:2
cover:set-method:0 cover:shift-serving:2 cover:skip-step:0 empty:ask-slice:3 empty:forget-kitchen:3
empty:report-guests:6 empty:talk8 for:ask-amount>ask-temperature for:ask-how>ask-substitute
for:ask-next>ask-amount for:ask-plan>ask-status for:ask-time-left>ask-temperature for:drop-dish>report-done
for:report-oven>report-not-done for:report-started>report-guests for:skip-step>drop-dish many3:clauses2
slots:add-hands:left,who slots:correct:time slots:describe-roast:bones,cut,weight,weightUnit
slots:describe-roast:cut,prepared,weight,weightUnit slots:report-not-done:step slots:report-oven:mode,temperature,unit
slots:report-reading:minutesAgo,temperature,where slots:report-reading:temperature,time slots:report-setup:fan,probe,shelf
slots:report-setup:pan,probe,rack slots:report-setup:pan,rack slots:set-serving-time:of,time
slots:skip-step:step stage::set-units stage:carve:add-hands stage:hold:report-reading stage:low-roast:quiet
stage:preheat:report-setup stage:rest:skip-step stage:sear:ask-how talk:stage:low-roast talk:unclear
text:add-dish:6 text:add-hands:6 text:cancel-timer:1 text:correct:4 text:correct:6 text:report-reading:6
text:set-doneness:6 text:set-serving-time:5 text:set-units:8 then:add-dish>running-behind then:cancel-timer>watch
then:cook-away>add-hands then:deed>lack then:drop-dish>add-dish then:note-guest>set-serving-time
then:note-guest>set-units then:report-out>set-guests then:report-oven>ask-why then:report-oven>set-doneness
then:report-reading>note-guest then:report-reading>set-timer then:report-started>ask-substitute
then:set-guests>set-units then:set-serving-time>shift-serving then:set-timer>ask then:shift-serving>drop-dish
then:shift-serving>report-done then:skip-step>note-guest then:skip-step>report-started then:skip-step>shift-serving
without:report-done:guess:6
13 =deny:frame asked:true clause:add-dish:guess:5 clause:add-hands:phrase:3 clause:add-hands:phrase:5
clause:affirm:guess:7 clause:deed:phrase:8 clause:help:guess:7 clause:quiet:phrase:1 clause:set-guests:phrase:3
clause:set-serving-time:frame:7 clause:set-serving-time:phrase:3 clause:set-serving-time:phrase:7
clause:set-timer:guess:7 clause:shift-serving:phrase:8 clause:watch:across:5 cover:set-doneness:0
empty:ask-options:3 empty:ask-slice:4 empty:ask-why:3 empty:cook-away:0 expecting:confirmation:affirm
for:ask-status>ask-safety for:ask-status>ask-time-left for:report-done>describe-roast for:report-not-done>drop-dish
many3:clauses1 mood:request:shift-serving mood:request:watch slots:ask-options:minutes slots:ask-temperature:about,altitude,altitudeUnit
slots:describe-roast:cut,startTemperature,weight,weightUnit slots:describe-roast:frozen slots:report-setup:carvers
slots:report-setup:rings slots:set-timer:label,minutes stage:planning:start-over stage:prep:skip-step
stage:sear:report-done talk:acknowledge talk:guess:4 text:describe-roast:3 text:feed-public:3
text:quiet:7 text:set-serving-time:4 text:shift-serving:5 text:skip-step:5 text:start-over:5
then:add-dish>set-serving-time then:affirm>set-guests then:ask-safety>ask-temperature then:drop-dish>set-method
then:report-reading>shift-serving then:report-started>lack then:report-started>report-not-done
then:report-trouble>ask-why then:set-doneness>set-guests then:set-guests>set-serving-time then:set-serving-time>set-timer
then:set-timer>ask-how then:watch>ask-status then:watch>ask-time-left without:ask-time-left:frame:4
14 =cook-away:frame =undo:frame clause:add-dish:frame:4 clause:ask:guess:8 clause:cancel-timer:frame:5
clause:drop-dish:frame:7 clause:drop-dish:frame:8 clause:report-guests:frame:6 clause:report-setup:phrase:3
clause:report-trouble:frame:8 clause:resume:guess:6 clause:resume:phrase:8 clause:set-serving-time:frame:8
clause:set-units:guess:7 clause:watch:frame:4 cover:repeat:1 cover:report-oven:2 empty:pause:7
expecting:confirmation:deny for:lack>ask-substitute for:pause>cook-away for:repeat>ask-how
for:set-serving-time>set-doneness least8:many2 mood:request:set-doneness slots:ask-amount:guests,ingredient
slots:ask-safety:about,temperature slots:ask-status:about slots:ask-temperature:temperature,unit
slots:report-out:minutesAgo slots:report-oven:temperature,time slots:report-trouble:minutes,trouble
stage::resume stage::set-method text:quiet:5 text:quiet:6 text:resume:7 text:set-serving-time:8
text:set-timer:7 text:set-timer:8 text:set-units:6 then:add-hands>cook-away then:cook-away>report-oven
then:cook-away>report-trouble then:deed>set-timer then:report-reading>ask-why then:running-behind>ask-options
then:set-guests>cook-away then:set-serving-time>set-guests then:set-serving-time>set-serving-time
15 =set-units:guess clause:feed-public:phrase:3 clause:lack:phrase:7 clause:quiet:phrase:4
clause:set-doneness:frame:6 clause:set-timer:frame:3 clause:undo:across:6 clause:watch:across:0
clause:watch:across:6 for:ask-next>ask-status slots:report-started:minutesAgo,step slots:report-started:step,time
slots:set-doneness:temperature,unit slots:set-serving-time:date,time stage:hold:set-timer stage:low-roast:watch
stage:planning:ask-guests stage:rest:report-done text:affirm:5 text:cancel-timer:7 text:deny:6
text:help:7 text:running-behind:8 then:describe-roast>ask-amount then:drop-dish>running-behind
then:report-done>report-oven then:report-guests>cook-away then:report-oven>report-reading then:report-oven>set-timer
then:report-oven>shift-serving then:report-reading>ask-next then:shift-serving>ask then:shift-serving>report-trouble
then:skip-step>ask-next then:undo>ask then:watch>cancel-timer
16 =add-hands:phrase =ask-guests:phrase =cancel-timer:phrase clause:add-dish:frame:7 clause:add-dish:phrase:8
clause:ask:across:2 clause:ask:across:8 clause:cook-away:phrase:7 clause:report-guests:frame:7
clause:report-not-done:frame:7 clause:report-setup:frame:6 clause:report-trouble:frame:0 clause:running-behind:guess:6
clause:shift-serving:frame:7 clause:skip-step:phrase:1 for:report-reading>set-doneness helper9
least7:many3 mood:request:set-units slots:ask-options:time slots:cancel-timer:minutes slots:correct:bones
slots:report-reading:temperature,time,unit slots:report-reading:temperature,unit,where slots:running-behind:minutes
stage::undo stage:rest:report-not-done text:resume:8 text:running-behind:7 then:describe-roast>set-doneness
then:report-not-done>watch then:report-reading>undo then:report-trouble>report-not-done then:set-method>report-setup
then:shift-serving>set-guests then:watch>undo
17 =set-serving-time:frame clause:add-dish:phrase:7 clause:add-hands:phrase:1 clause:correct:across:4
clause:set-guests:frame:5 clause:skip-step:phrase:8 cover:ask-amount:1 empty:have:3 expecting:step:skip-step
first:report-thermometer mood:request:set-timer slots:add-hands:until,who slots:describe-roast:bones,weight,weightUnit
slots:report-done:minutesAgo,step stage:rest:report-guests talk:helper4 talk:helper6 text:resume:6
text:set-guests:7 text:skip-step:4 text:undo:7 then:report-not-done>ask-why then:report-reading>watch
18 =ask-safety:across =quiet:phrase breath5:true clause:cook-away:guess:7 clause:report-reading:frame:8
clause:undo:across:3 clause:undo:across:7 clause:undo:across:8 cover:frame:1 empty:resume:7
expecting:choice:choose mood:intention:set-doneness mood:request:add-dish slots:ask-plan:about
stage::describe-roast stage:hold:ask-next stage:planning:add-dish text:drop-dish:8 text:lack:8
text:note-guest:7 text:watch:8 then:note-guest>ask-options then:report-started>set-timer
19 clause:cancel-timer:phrase:8 clause:drop-dish:phrase:8 clause:set-method:frame:6 clause:watch:frame:6
slots:report-oven:mode,temperature slots:report-oven:temperature,which slots:report-reading:minutesAgo,temperature
slots:report-trouble:minutesAgo,trouble slots:set-units:temperature,weight stage:planning:set-doneness
talk:helper3 text:deny:8 text:drop-dish:7 text:help:8 text:pause:8 text:repeat:8 text:set-doneness:8
text:shift-serving:7
20 =ask-options:across breath6:true clause:add-dish:frame:8 clause:report-trouble:phrase:2
clause:set-guests:phrase:6 clause:shift-serving:frame:8 cover:repeat:2 for:report-trouble>running-behind
slots:correct:step,time text:add-dish:7 text:add-dish:8 text:add-hands:8 text:cancel-timer:5
text:cook-away:8 text:report-setup:7
21 =set-guests:across for:ask-plan>ask-next slots:ask-safety:about,minutes slots:ask-temperature:doneness
stage:planning:feed-public text:note-guest:6 text:note-guest:8 text:report-reading:5 text:watch:7
22 mood:story:cook-away text:watch:6 then:deed>report-not-done then:report-reading>ask-status
23 clause:add-hands:guess:8 slots:running-behind:factor text:report-guests:5 then:report-oven>watch
24 slots:report-oven:bias talk:helper1 talk:helper2 text:add-hands:7 text:cook-away:7
25 clause:set-timer:frame:8 helper10 stage:put-away:ask-safety text:report-not-done:8
26 clause:quiet:phrase:8
27 text:report-guests:7
28 text:choose:8
29 text:undo:8
31 helper11 slots:report-reading:temperature,thermometer
33 talk:helper0`);
