/** Learnt from the rules and learnt parts of the corpus by scripts/train-hypotheses.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const hypothesisWeights: Weights = weightsFrom(`
-46 talk:helper10
-42 helper3
-41 talk:helper11
-40 helper1
-39 helper0
-38 helper2 talk:helper9
-34 helper4 slots:correct:was
-31 then:correct>report-reading
-29 clause:set-serving-time:guess:2 for:ask-temperature>ask-time-left
-28 then:cook-away>set-timer
-27 text:pause:1 without:report-oven:guess:6
-26 empty:add-dish:8 for:ask-next>report-trouble for:ask-safety>note-guest stage:rest:set-serving-time
text:help:0 then:ask-how>ask-next then:ask-options>ask-status then:ask>note-guest then:ask>running-behind
without:lack:phrase:4
-25 clause:report-not-done:phrase:2 for:note-guest>set-serving-time stage:planning:report-not-done
text:choose:0 then:ask>deed then:ask>drop-dish then:choose>choose
-24 clause:add-dish:phrase:1 clause:report-not-done:frame:1 for:cook-away>report-started for:note-guest>set-guests
for:report-guests>report-trouble for:report-not-done>ask-time-left for:report-setup>ask-how
then:describe-roast>report-done then:report-oven>report-trouble without:add-dish:phrase:6 without:add-dish:phrase:7
-23 for:ask-options>ask-plan for:report-trouble>report-setup for:running-behind>report-trouble
for:skip-step>report-not-done stage:hold:set-guests stage:planning:report-trouble text:help:1
then:ask-how>ask-status then:ask>skip-step then:correct>describe-roast without:report-guests:phrase:8
-22 clause:set-serving-time:phrase:0 for:ask-how>report-started for:report-not-done>set-timer
for:report-started>set-serving-time many2:long1 slots:describe-roast:cut stage:prep:ask-guests
text:pause:0 then:ask-status>report-trouble then:ask-time-left>ask-status then:ask>set-doneness
then:drop-dish>report-trouble then:report-started>ask-safety without:lack:phrase:7 without:report-trouble:phrase:4
-21 clause:add-dish:frame:3 clause:add-dish:guess:4 clause:affirm:phrase:3 clause:choose:phrase:2
clause:report-reading:guess:2 for:ask-safety>set-doneness for:ask-status>report-done for:ask-status>running-behind
for:report-guests>set-guests for:report-not-done>lack for:report-not-done>report-out slots:add-hands:
slots:report-oven:state stage:planning:report-out stage:rest:set-doneness text:help:2 then:ask-temperature>ask-status
then:ask>add-hands then:ask>correct then:ask>describe-roast then:correct>report-started then:describe-roast>deed
then:lack>ask-next then:set-guests>set-guests twice:choose twice:drop-dish twice:set-guests
without:ask-status:phrase:8 without:describe-roast:phrase:6 without:report-started:guess:8
without:set-doneness:phrase:8
-20 clause:deny:guess:3 clause:have:phrase:0 clause:watch:guess:3 empty:ask-guests:3 empty:ask-guests:5
empty:drop-dish:8 empty:lack:0 for:ask-substitute>ask-how for:lack>report-trouble for:report-oven>ask-status
for:report-setup>skip-step for:report-started>ask-status for:running-behind>set-timer stage:planning:repeat
stage:prep:report-guests then:ask-options>ask-next then:ask-status>ask-temperature then:ask-substitute>ask-options
then:ask-substitute>ask-substitute then:ask-temperature>report-out then:ask-temperature>set-doneness
then:ask>cook-away then:ask>set-units then:drop-dish>drop-dish then:note-guest>ask-guests then:resume>repeat
without:ask-shopping without:correct:across:0 without:drop-dish:phrase:3 without:drop-dish:phrase:4
without:drop-dish:phrase:6 without:report-oven:frame:4 without:report-reading:frame:8 without:report-reading:phrase:3
without:set-method:phrase:6 without:set-serving-time:phrase:6 without:watch:across:0
-19 clause:cancel-timer:guess:2 clause:note-guest:phrase:1 clause:repeat:guess:2 clause:report-not-done:frame:0
empty:ask-next:7 expecting:step:deny for:ask-shopping>ask-next for:ask-why>report-reading for:describe-roast>set-guests
for:report-oven>ask-time-left for:report-trouble>running-behind many4:long1 mood:negative:shift-serving
mood:question:pause mood:story:report-oven stage:planning:report-started stage:put-away:report-trouble
text:have:0 text:repeat:0 then:ask-how>ask-substitute then:ask-how>ask-temperature then:ask-next>report-done
then:ask-plan>set-serving-time then:ask-status>report-guests then:ask-time-left>set-timer then:ask>set-method
then:deed>report-thermometer then:report-not-done>report-trouble twice:ask-substitute twice:report-trouble
without:ask-options without:drop-dish:frame:5 without:report-reading:phrase:5 without:skip-step
-18 clause:add-hands:guess:2 clause:choose:phrase:1 clause:deny:phrase:4 clause:report-reading:guess:4
clause:shift-serving:guess:3 empty:ask-next:8 empty:drop-dish:7 empty:set-timer:7 for:ask-amount>ask-guests
for:ask-how>ask-status for:ask-how>report-setup for:ask-options>help for:ask-options>report-trouble
for:ask-safety>ask-options for:ask-safety>ask-substitute for:ask-safety>report-started for:ask-status>report-setup
for:ask-time-left>report-started for:describe-roast>report-trouble for:drop-dish>report-trouble
for:help>ask-next for:note-guest>report-trouble for:report-done>ask-status for:report-guests>report-out
for:report-started>correct for:set-doneness>note-guest helper6 slots:describe-roast:boneless
slots:report-done:time stage:carve:ask-options stage:hold:add-dish stage:hold:drop-dish stage:low-roast:set-method
stage:prep:cancel-timer stage:put-away:ask-plan stage:rest:ask-plan stage:sear:running-behind
stage:sear:set-serving-time talk:stage:preheat text:cook-away:0 text:guess:0 text:note-guest:0
then:add-dish>ask-how then:ask-amount>set-guests then:ask-next>ask-how then:ask-next>ask-options
then:ask-next>ask-safety then:ask-next>ask-why then:ask-options>shift-serving then:ask-safety>report-done
then:ask-status>ask-why then:ask-temperature>ask-next then:ask-why>report-out then:ask>ask
then:ask>quiet then:cook-away>ask-next then:deed>correct then:drop-dish>report-done then:report-not-done>ask-substitute
then:report-reading>describe-roast then:report-trouble>ask-time-left then:report-trouble>lack
then:report-trouble>report-trouble then:set-doneness>ask then:set-guests>correct then:set-timer>running-behind
then:shift-serving>shift-serving twice:shift-serving without:add-dish:guess:6 without:ask-next:phrase:7
without:ask-next:phrase:8 without:ask-temperature:phrase:7 without:feed-public without:note-guest:phrase:6
without:report-done:guess:5 without:report-not-done:frame:3 without:report-out:frame:6 without:report-started:across:0
without:report-started:frame:8 without:report-trouble:frame:7 without:report-trouble:frame:8
without:report-trouble:phrase:5 without:report-trouble:phrase:8 without:set-doneness:phrase:7
without:set-serving-time:guess:6 without:set-timer:phrase:6
-17 =shift-serving:across clause:add-dish:phrase:0 clause:deed:frame:0 clause:emergency:guess:3
clause:emergency:guess:7 empty:ask-amount:4 empty:feed-public:1 empty:help:0 empty:report-out:7
empty:running-behind:0 for:ask-how>add-dish for:ask-next>repeat for:ask-status>shift-serving
for:ask-temperature>report-started for:report-oven>report-started for:report-reading>ask-next
for:report-reading>set-guests for:report-trouble>ask-options for:report-trouble>quiet for:set-serving-time>ask-options
for:start-over>set-guests for:watch>ask-temperature helper5 many0:long6 mood:intention:report-trouble
mood:question:running-behind slots:report-trouble:minutesAgo,step,trouble stage:preheat:report-out
stage:prep:report-out stage:put-away:ask-status stage:served:ask-status talk:found0 talk:long6
then:ask-amount>ask-substitute then:ask-guests>note-guest then:ask-next>report-oven then:ask-plan>ask-status
then:ask-safety>note-guest then:ask-status>ask-options then:ask-status>ask-substitute then:ask-status>set-serving-time
then:ask-status>shift-serving then:ask-temperature>report-started then:ask>report-oven then:ask>undo
then:correct>set-guests then:correct>shift-serving then:lack>ask-status then:note-guest>ask-safety
then:report-done>report-out then:report-done>report-trouble then:report-reading>set-serving-time
then:report-trouble>ask-guests then:set-units>correct twice:correct without:add-hands:frame:7
without:ask-status:phrase:4 without:ask-temperature:frame:8 without:describe-roast:phrase:2
without:drop-dish:phrase:8 without:note-guest:phrase:3 without:report-done:frame:5 without:report-guests:phrase:7
without:report-not-done:frame:7 without:report-not-done:phrase:6 without:report-setup:guess:5
without:report-started:phrase:8 without:set-doneness:phrase:6 without:set-serving-time:phrase:5
without:set-units:phrase:7
-16 =start-over:frame breath0:true clause:add-dish:frame:1 clause:emergency:guess:2 clause:help:guess:2
clause:lack:guess:3 clause:quiet:guess:3 clause:report-guests:frame:3 clause:report-setup:frame:1
clause:resume:frame:0 clause:resume:frame:1 clause:resume:frame:2 clause:shift-serving:guess:2
clause:shift-serving:phrase:2 clause:skip-step:guess:2 clause:start-over:frame:2 empty:ask-guests:8
empty:ask-how:8 empty:ask-slice:1 empty:ask-temperature:0 expecting:choice:affirm expecting:choice:ask-status
for:add-dish>set-guests for:ask-next>ask-guests for:ask-status>ask-guests for:ask-temperature>ask-how
for:ask-why>ask-options for:ask-why>ask-temperature for:describe-roast>report-not-done for:help>ask-how
for:lack>running-behind for:pause>quiet for:pause>report-started for:report-guests>ask-next
for:report-started>drop-dish for:report-trouble>correct for:report-trouble>drop-dish for:report-trouble>note-guest
for:report-trouble>shift-serving for:running-behind>report-started for:set-doneness>set-serving-time
for:set-guests>correct for:set-guests>report-guests for:set-guests>set-doneness for:set-method>report-oven
for:set-method>report-trouble for:set-serving-time>report-trouble for:skip-step>report-trouble
for:undo>skip-step many1:clauses5 many1:long5 mood:intention:quiet mood:negative:affirm mood:question:affirm
mood:story:set-serving-time slots:describe-roast:bones,cut slots:report-setup:pan stage:carve:drop-dish
stage:carve:set-doneness stage:hold:correct stage:planning:quiet stage:planning:report-guests
stage:planning:report-reading stage:preheat:set-serving-time stage:put-away:ask-time-left stage:rest:help
stage:rest:note-guest stage:served:report-out text:shift-serving:0 then:ask-amount>ask-status
then:ask-how>ask-plan then:ask-how>report-started then:ask-next>add-hands then:ask-next>report-trouble
then:ask-options>set-serving-time then:ask-safety>report-started then:ask-status>report-not-done
then:ask-status>running-behind then:ask-status>set-guests then:ask-substitute>add-dish then:ask-time-left>ask-how
then:ask-why>ask-next then:ask>report-not-done then:cancel-timer>report-done then:choose>ask-status
then:correct>correct then:correct>report-trouble then:correct>set-serving-time then:deny>deed
then:drop-dish>undo then:report-done>set-timer then:report-out>ask-how then:report-setup>report-trouble
then:set-doneness>ask-options then:skip-step>ask-how then:undo>report-trouble twice without:ask-next:phrase:0
without:ask-status:frame:7 without:ask-substitute:phrase:8 without:drop-dish:phrase:2 without:report-done:guess:8
without:report-done:phrase:0 without:report-guests:phrase:3 without:report-reading:phrase:4
without:set-doneness:phrase:1 without:set-guests:frame:8 without:set-guests:phrase:7 without:set-serving-time:guess:5
without:set-units:phrase:5 without:skip-step:guess:6 without:start-over
-15 =ask-substitute:across clause:add-dish:frame:0 clause:choose:guess:3 clause:drop-dish:frame:0
clause:emergency:guess:5 clause:report-oven:frame:1 clause:resume:phrase:3 clause:set-method:phrase:5
clause:set-serving-time:frame:1 clause:set-timer:frame:0 clause:set-units:guess:3 clause:skip-step:phrase:0
cover:note-guest:1 empty:ask-why:5 empty:ask-why:6 empty:cancel-timer:0 empty:note-guest:1
empty:report-thermometer:8 empty:set-timer:1 for:add-hands>add-dish for:add-hands>report-started
for:ask-amount>report-done for:ask-next>report-done for:ask-next>report-out for:ask-plan>running-behind
for:ask-safety>report-reading for:ask-substitute>report-done for:ask-why>report-done for:feed-public>set-guests
for:help>ask-status for:lack>report-started for:note-guest>add-hands for:note-guest>correct
for:pause>ask-status for:pause>report-done for:quiet>cook-away for:quiet>report-trouble for:repeat>report-reading
for:repeat>report-trouble for:report-done>ask-why for:report-out>report-started for:report-reading>add-hands
for:report-trouble>report-guests for:running-behind>report-not-done for:running-behind>shift-serving
for:set-guests>report-done for:set-serving-time>report-guests for:set-timer>shift-serving for:shift-serving>set-guests
for:skip-step>ask-next for:watch>cook-away for:watch>set-timer how:open lost:phrase:7 mood:intention:deed
mood:intention:resume mood:intention:set-method slots:report-trouble:step,time,trouble stage::ask-how
stage::start-over stage:low-roast:describe-roast stage:planning:resume stage:planning:set-timer
stage:preheat:ask-plan stage:put-away:report-out stage:sear:ask-options stage:sear:shift-serving
stage:sear:undo stage:served:report-reading stage:served:set-guests talk:stage:hold text:deny:2
text:repeat:2 text:report-guests:0 then:add-dish>report-reading then:ask-amount>ask-how then:ask-how>skip-step
then:ask-next>skip-step then:ask-next>watch then:ask-options>ask-how then:ask-options>ask-time-left
then:ask-plan>ask-next then:ask-plan>ask-time-left then:ask-safety>ask-time-left then:ask-status>report-done
then:ask-status>report-started then:ask-status>watch then:ask-substitute>ask-status then:ask-temperature>set-units
then:ask-why>ask-why then:ask-why>report-setup then:ask-why>set-method then:ask>report-trouble
then:drop-dish>deed then:have>report-oven then:note-guest>emergency then:note-guest>report-done
then:quiet>deed then:report-not-done>report-setup then:report-started>correct then:report-started>report-out
then:report-trouble>report-setup then:set-doneness>ask-time-left then:set-doneness>report-trouble
then:set-guests>add-hands twice:ask-why without:ask-next:frame:0 without:ask-next:guess:8 without:ask-safety:phrase:6
without:choose:phrase:7 without:lack:guess:7 without:repeat without:report-done:phrase:8 without:report-guests:phrase:6
without:report-not-done:frame:4 without:report-oven:frame:7 without:report-started:frame:5
without:set-timer:frame:8 without:set-timer:guess:7 without:set-timer:phrase:5 without:skip-step:phrase:6
-14 clause:add-dish:phrase:2 clause:affirm:phrase:4 clause:cancel-timer:frame:4 clause:lack:phrase:4
clause:pause:frame:0 clause:report-guests:guess:5 clause:set-timer:frame:1 empty:add-hands:5
empty:ask-amount:0 empty:ask-plan:0 empty:choose:0 empty:skip-step:8 expecting:guests:ask-guests
for:add-dish>ask-plan for:ask-next>ask-shopping for:ask-plan>ask-temperature for:ask-plan>cancel-timer
for:ask-safety>shift-serving for:ask-status>quiet for:ask-substitute>lack for:ask-substitute>report-started
for:ask-temperature>correct for:ask-time-left>report-not-done for:ask-time-left>report-trouble
for:ask-why>report-not-done for:correct>ask-status for:describe-roast>add-dish for:describe-roast>report-reading
for:have>report-done for:note-guest>ask-temperature for:note-guest>shift-serving for:pause>shift-serving
for:quiet>report-started for:repeat>report-not-done for:report-reading>report-not-done for:report-setup>report-out
for:report-started>ask-temperature for:report-trouble>add-dish for:report-trouble>set-doneness
for:resume>ask-status for:set-guests>add-dish for:set-method>report-done for:set-serving-time>ask-plan
for:set-timer>report-done for:set-timer>report-not-done for:set-units>report-setup for:shift-serving>ask-status
many3:long1 mood:request:lack stage::report-done stage:carve:set-serving-time stage:hold:ask-how
stage:planning:emergency stage:preheat:running-behind stage:rest:add-dish stage:rest:ask-how
stage:rest:set-guests stage:served:ask-plan stage:served:lack text:add-dish:0 text:affirm:0
text:shift-serving:1 then:add-dish>ask-next then:ask-amount>add-dish then:ask-how>ask-options
then:ask-how>describe-roast then:ask-next>ask-substitute then:ask-options>ask-amount then:ask-options>set-doneness
then:ask-plan>set-method then:ask-status>ask-plan then:ask-status>report-out then:ask-temperature>ask-why
then:ask-temperature>cook-away then:ask-temperature>report-reading then:ask-time-left>cook-away
then:ask-time-left>report-trouble then:ask>lack then:ask>set-serving-time then:choose>affirm
then:choose>ask-time-left then:correct>ask-status then:correct>running-behind then:have>ask
then:note-guest>lack then:quiet>ask-status then:report-done>ask-amount then:report-oven>correct
then:report-reading>set-method then:report-setup>choose then:report-started>add-dish then:report-trouble>ask-plan
then:running-behind>ask-how then:running-behind>ask-plan then:set-method>set-method then:shift-serving>running-behind
then:skip-step>ask-shopping then:skip-step>report-trouble then:undo>start-over then:watch>set-doneness
twice:set-method without:add-dish:frame:7 without:add-dish:frame:8 without:add-hands:frame:8
without:add-hands:phrase:7 without:affirm:phrase:8 without:ask-how:phrase:8 without:ask-status:guess:7
without:ask-substitute:phrase:5 without:ask-temperature:guess:5 without:ask-why:guess:8 without:ask-why:phrase:6
without:cook-away:phrase:7 without:drop-dish:guess:7 without:drop-dish:phrase:7 without:lack:guess:8
without:pause without:report-guests:frame:7 without:report-guests:guess:8 without:report-out:frame:7
without:report-out:frame:8 without:report-out:guess:8 without:report-setup:guess:8 without:running-behind:guess:7
without:set-doneness:phrase:0 without:set-timer:phrase:7 without:shift-serving:guess:5 without:shift-serving:phrase:3
-13 asked:false clause:add-hands:frame:3 clause:affirm:guess:5 clause:affirm:phrase:1 clause:choose:phrase:0
clause:drop-dish:guess:2 clause:repeat:phrase:4 clause:report-guests:frame:1 clause:report-guests:guess:4
clause:report-not-done:guess:4 clause:report-oven:guess:2 clause:report-reading:phrase:2 clause:set-guests:frame:2
clause:set-method:frame:3 clause:start-over:phrase:2 clause:watch:guess:2 cover:add-hands:1
empty:affirm:0 empty:ask-next:0 empty:ask-safety:4 empty:ask-shopping:7 empty:report-started:0
empty:resume:0 empty:running-behind:7 expecting:choice:correct expecting:roast:report-not-done
for:ask-guests>ask-amount for:ask-how>report-reading for:ask-options>choose for:ask-plan>report-done
for:ask-substitute>ask-safety for:ask-substitute>note-guest for:ask-substitute>report-not-done
for:ask-temperature>note-guest for:ask-time-left>quiet for:cook-away>set-guests for:describe-roast>ask-safety
for:drop-dish>correct for:lack>ask-shopping for:pause>report-guests for:repeat>ask-time-left
for:report-done>shift-serving for:report-guests>ask-status for:report-not-done>add-hands for:report-oven>set-serving-time
for:report-reading>quiet for:report-reading>set-timer for:report-setup>report-oven for:report-started>cook-away
for:report-started>emergency for:report-started>report-done for:report-trouble>cook-away for:resume>start-over
for:running-behind>ask-plan for:set-doneness>report-started for:set-guests>ask-guests for:set-guests>ask-options
for:set-guests>quiet for:set-serving-time>report-oven for:shift-serving>ask-options for:skip-step>add-dish
for:skip-step>report-out for:skip-step>report-reading for:undo>ask-status for:undo>repeat for:watch>report-reading
lost:describe-roast many2:long0 mood:question:correct mood:question:deny mood:question:quiet
mood:question:report-setup mood:request:add-hands mood:story:deed mood:story:emergency mood:story:note-guest
slots:report-done: slots:report-not-done: slots:running-behind: stage::correct stage:carve:ask-amount
stage:hold:add-hands stage:hold:cook-away stage:planning:cook-away stage:planning:report-oven
stage:preheat:add-hands stage:preheat:ask-options stage:prep:affirm stage:prep:emergency stage:put-away:cook-away
stage:rest:add-hands stage:rest:set-method stage:rest:start-over stage:sear:ask-amount stage:served:help
talk:helper8 talk:undo text:affirm:1 text:deny:3 text:help:3 text:set-method:2 text:undo:0
text:undo:1 then:add-dish>report-not-done then:add-hands>ask-plan then:add-hands>report-started
then:ask-amount>ask-guests then:ask-amount>ask-next then:ask-amount>describe-roast then:ask-guests>set-serving-time
then:ask-next>ask-plan then:ask-next>report-started then:ask-next>running-behind then:ask-options>add-dish
then:ask-options>ask-shopping then:ask-options>report-not-done then:ask-shopping>set-guests
then:ask-status>ask-amount then:ask-status>cook-away then:ask-substitute>ask-next then:ask-substitute>ask-why
then:ask-temperature>report-setup then:ask-time-left>report-not-done then:ask-why>ask-options
then:ask-why>report-done then:ask-why>report-trouble then:ask>cancel-timer then:ask>shift-serving
then:choose>ask-options then:cook-away>ask-shopping then:correct>ask-how then:deed>report-trouble
then:deny>report-done then:describe-roast>ask-status then:drop-dish>ask-how then:drop-dish>report-not-done
then:drop-dish>report-out then:feed-public>correct then:forget-kitchen>report-trouble then:lack>ask-safety
then:quiet>report-started then:repeat>deny then:report-guests>correct then:report-guests>report-guests
then:report-not-done>add-hands then:report-not-done>set-serving-time then:report-oven>ask-safety
then:report-oven>set-serving-time then:report-reading>ask-amount then:report-reading>ask-guests
then:report-setup>report-out then:report-setup>set-guests then:report-started>ask-plan then:report-started>report-thermometer
then:report-thermometer>deed then:report-trouble>deed then:report-trouble>report-oven then:report-trouble>report-started
then:running-behind>shift-serving then:set-doneness>ask-status then:set-guests>report-started
then:set-method>ask then:set-serving-time>ask-time-left then:set-timer>add-dish then:shift-serving>report-guests
then:skip-step>skip-step twice:report-guests twice:skip-step without:add-dish:phrase:4 without:add-hands:phrase:6
without:ask-how:across:0 without:ask-next:guess:7 without:ask-plan:phrase:3 without:ask-safety:frame:5
without:ask-safety:frame:6 without:ask-safety:guess:8 without:ask-safety:phrase:7 without:ask-shopping:guess:6
without:ask-status:frame:3 without:ask-status:frame:8 without:drop-dish:frame:0 without:feed-public:phrase:7
without:note-guest:phrase:8 without:report-done:phrase:2 without:report-not-done:frame:5 without:report-not-done:frame:8
without:report-not-done:phrase:8 without:report-out:guess:7 without:report-oven:phrase:3 without:report-started:frame:7
without:set-doneness:phrase:3 without:set-guests:phrase:4 without:set-serving-time:phrase:7
without:shift-serving:frame:8 without:skip-step:guess:5 without:skip-step:phrase:8
-12 =add-hands:frame =note-guest:across clause:add-hands:frame:0 clause:cook-away:phrase:2
clause:cook-away:phrase:5 clause:drop-dish:phrase:0 clause:help:guess:3 clause:lack:frame:0
clause:lack:frame:2 clause:lack:phrase:0 clause:pause:phrase:5 clause:repeat:guess:3 clause:report-guests:guess:2
clause:report-guests:phrase:0 clause:report-guests:phrase:3 clause:report-reading:phrase:0
clause:set-method:frame:2 clause:start-over:frame:0 cover:add-dish:0 empty:affirm:7 empty:ask-how:1
empty:ask-safety:3 empty:ask-safety:5 empty:ask-safety:8 empty:cancel-timer:4 empty:cancel-timer:6
empty:choose:7 empty:cook-away:0 empty:deny:8 empty:describe-roast:1 empty:have:7 empty:help:8
empty:report-out:8 empty:report-reading:8 empty:set-units:3 empty:start-over:6 expecting:reading:pause
expecting:reading:report-done expecting:reading:report-started for:add-hands>report-guests
for:add-hands>report-reading for:ask-amount>set-serving-time for:ask-how>lack for:ask-how>skip-step
for:ask-options>report-oven for:ask-plan>ask-why for:ask-safety>ask-how for:ask-safety>lack
for:ask-status>ask-shopping for:ask-substitute>drop-dish for:ask-time-left>ask-amount for:ask-time-left>cancel-timer
for:ask-time-left>report-reading for:ask-why>ask-status for:ask-why>report-out for:ask-why>report-started
for:ask-why>set-method for:cancel-timer>report-out for:cook-away>ask-next for:cook-away>ask-status
for:cook-away>ask-time-left for:cook-away>report-trouble for:drop-dish>cancel-timer for:report-not-done>ask-safety
for:report-not-done>ask-temperature for:report-oven>set-guests for:report-reading>drop-dish
for:report-reading>running-behind for:report-setup>have for:report-setup>note-guest for:report-trouble>set-timer
for:resume>repeat for:set-guests>set-serving-time for:set-method>report-started for:set-serving-time>shift-serving
for:set-timer>cook-away for:set-timer>report-started for:shift-serving>set-timer for:skip-step>report-started
for:undo>report-not-done for:watch>report-trouble how:talk least0:many2 lost0:gained2 lost3:gained1
many1:long4 many3:long2 mood:negative:report-oven mood:question:resume slots:report-setup:probe
stage:carve:pause stage:hold:ask-guests stage:planning:pause stage:planning:report-done stage:planning:running-behind
stage:preheat:report-reading stage:preheat:set-timer stage:prep:correct stage:prep:report-oven
stage:put-away:ask-amount stage:rest:cook-away stage:rest:pause stage:sear:emergency stage:sear:repeat
stage:served:report-started talk:expecting:confirmation talk:watch text:choose:2 text:set-serving-time:0
then:add-dish>deed then:add-hands>ask then:ask-amount>ask-plan then:ask-amount>report-done
then:ask-guests>ask-options then:ask-how>add-hands then:ask-how>set-timer then:ask-next>note-guest
then:ask-next>set-serving-time then:ask-options>ask-plan then:ask-options>ask-safety then:ask-options>ask-substitute
then:ask-safety>set-doneness then:ask-shopping>ask-status then:ask-shopping>note-guest then:ask-substitute>report-done
then:ask-temperature>report-trouble then:ask-time-left>ask-why then:ask>set-guests then:ask>start-over
then:cancel-timer>cancel-timer then:cancel-timer>deed then:choose>report-guests then:correct>ask-why
then:correct>deed then:correct>report-out then:emergency>ask-time-left then:lack>report-reading
then:note-guest>ask-temperature then:quiet>describe-roast then:repeat>resume then:report-done>report-thermometer
then:report-guests>ask-substitute then:report-guests>running-behind then:report-not-done>ask-status
then:report-not-done>skip-step then:report-reading>ask-substitute then:report-setup>ask-why
then:report-thermometer>ask then:report-thermometer>report-done then:running-behind>report-setup
then:running-behind>report-started then:set-method>ask-plan then:set-serving-time>ask-guests
then:set-serving-time>ask-temperature then:set-serving-time>skip-step then:skip-step>report-guests
then:start-over>ask then:start-over>resume twice:cancel-timer without:add-hands:across:0 without:ask-plan:phrase:5
without:ask-why:guess:6 without:cancel-timer without:drop-dish without:have:phrase:7 without:note-guest:phrase:1
without:report-guests:frame:6 without:report-not-done:frame:6 without:report-oven:phrase:5
without:report-reading:phrase:8 without:report-setup:phrase:8 without:running-behind:frame:8
without:set-doneness:guess:6 without:set-doneness:guess:8 without:set-serving-time without:set-serving-time:frame:7
without:set-serving-time:guess:7 without:set-timer:phrase:8 without:shift-serving:frame:5 without:skip-step:phrase:7
-11 clause:ask:guess:2 clause:ask:phrase:1 clause:choose:phrase:4 clause:deny:phrase:7 clause:lack:phrase:6
clause:pause:phrase:4 clause:report-oven:frame:4 clause:report-reading:frame:0 clause:report-trouble:guess:4
clause:resume:across:0 clause:resume:guess:2 clause:shift-serving:phrase:0 clause:skip-step:phrase:4
clause:undo:guess:4 empty:add-dish:3 empty:ask-amount:6 empty:ask-options:0 empty:ask-plan:6
empty:ask-safety:7 empty:ask-slice:0 empty:ask-temperature:1 empty:ask-time-left:6 empty:cancel-timer:2
empty:cook-away:4 empty:have:6 empty:pause:1 empty:report-done:5 empty:report-guests:8 empty:report-setup:8
empty:skip-step:1 empty:watch:1 expecting:confirmation:report-done expecting:confirmation:undo
expecting:doneness:report-trouble expecting:guests:set-guests expecting:step:ask-how expecting:step:running-behind
for:add-dish>ask-options for:ask-amount>add-dish for:ask-how>drop-dish for:ask-how>report-out
for:ask-next>ask-temperature for:ask-safety>ask-temperature for:ask-safety>set-timer for:ask-status>report-reading
for:ask-status>set-serving-time for:ask-time-left>report-setup for:ask-why>ask-how for:ask-why>report-oven
for:ask-why>report-setup for:cancel-timer>cook-away for:cancel-timer>drop-dish for:cook-away>ask-safety
for:cook-away>lack for:correct>describe-roast for:correct>report-reading for:describe-roast>ask-how
for:drop-dish>add-dish for:drop-dish>report-reading for:drop-dish>set-guests for:note-guest>add-dish
for:note-guest>ask-shopping for:report-done>add-hands for:report-done>set-serving-time for:report-guests>report-reading
for:report-not-done>ask-why for:report-out>ask-time-left for:report-out>report-guests for:report-out>report-not-done
for:report-oven>report-out for:report-reading>ask-how for:report-reading>ask-temperature for:report-reading>cancel-timer
for:report-reading>report-oven for:report-reading>report-started for:running-behind>report-reading
for:set-guests>cancel-timer for:set-serving-time>set-timer for:set-timer>ask-how for:set-timer>ask-time-left
for:set-timer>lack for:set-timer>report-trouble for:set-units>lack for:shift-serving>pause
for:shift-serving>report-started for:skip-step>undo for:undo>report-out for:undo>report-started
gained:ask-why gained:deny gained:phrase:5 lost:set-guests lost:set-serving-time lost:set-timer
lost:undo lost:watch mood:question:add-hands mood:question:report-oven mood:question:report-trouble
mood:question:start-over slots:describe-roast:bones stage::ask-status stage:carve:skip-step
stage:hold:emergency stage:preheat:cancel-timer stage:preheat:note-guest stage:prep:shift-serving
stage:put-away:add-dish stage:put-away:deny stage:put-away:pause stage:sear:drop-dish stage:served:ask-guests
stage:served:ask-time-left stage:served:repeat talk:likely5 talk:stage:sear text:correct:0
text:emergency:1 text:note-guest:3 text:phrase:0 text:repeat:1 text:resume:1 text:set-units:0
then:add-dish>report-started then:add-dish>skip-step then:affirm>choose then:affirm>correct
then:ask-amount>report-started then:ask-guests>ask-status then:ask-how>report-setup then:ask-how>running-behind
then:ask-next>ask-temperature then:ask-next>report-guests then:ask-options>report-guests then:ask-options>watch
then:ask-plan>ask-how then:ask-plan>ask-safety then:ask-safety>report-out then:ask-status>cancel-timer
then:ask-status>report-oven then:ask-status>set-units then:ask-substitute>ask-time-left then:ask-substitute>lack
then:ask-substitute>report-started then:ask-temperature>ask-amount then:ask-temperature>ask-how
then:ask-temperature>correct then:ask-temperature>report-guests then:ask-temperature>report-oven
then:ask-why>ask-substitute then:ask-why>report-oven then:ask>add-dish then:ask>affirm then:describe-roast>add-dish
then:describe-roast>ask-temperature then:feed-public>ask then:have>report-done then:report-done>ask-plan
then:report-guests>set-guests then:report-out>report-guests then:report-started>drop-dish then:report-trouble>ask-next
then:report-trouble>report-guests then:report-trouble>shift-serving then:set-doneness>ask-plan
then:set-doneness>report-not-done then:set-guests>ask-next then:set-guests>ask-safety then:set-serving-time>report-done
then:set-serving-time>set-method then:set-timer>ask-safety then:set-units>deed then:skip-step>ask-status
then:skip-step>running-behind then:undo>quiet then:undo>skip-step then:watch>deed then:watch>report-done
without:add-dish:frame:0 without:ask-how:guess:8 without:ask-how:phrase:0 without:ask-options:phrase:8
without:ask-plan:guess:7 without:ask-plan:phrase:4 without:ask-plan:phrase:8 without:ask-safety:phrase:4
without:ask-safety:phrase:8 without:ask-shopping:phrase:8 without:ask-status:frame:6 without:ask-status:guess:8
without:ask-status:phrase:7 without:ask-temperature:guess:6 without:ask-time-left:guess:5 without:cancel-timer:guess:6
without:cook-away:guess:8 without:cook-away:phrase:8 without:describe-roast without:drop-dish:phrase:0
without:have without:lack without:report-done:frame:3 without:report-not-done:guess:5 without:report-setup:frame:6
without:report-started:phrase:3 without:set-doneness:guess:5 without:set-doneness:guess:7 without:set-guests:frame:7
without:set-serving-time:phrase:1
-10 breath2:true clause:add-dish:guess:2 clause:add-dish:phrase:3 clause:add-hands:across:0
clause:add-hands:frame:4 clause:ask:phrase:0 clause:cook-away:frame:4 clause:correct:guess:4
clause:deny:guess:4 clause:deny:phrase:2 clause:emergency:guess:6 clause:frame:2 clause:note-guest:across:7
clause:note-guest:across:8 clause:note-guest:frame:6 clause:note-guest:guess:2 clause:pause:frame:2
clause:report-guests:frame:0 clause:report-guests:guess:3 clause:report-not-done:phrase:1 clause:report-setup:guess:6
clause:running-behind:guess:6 clause:set-doneness:frame:6 clause:set-method:guess:7 clause:set-units:phrase:0
clause:undo:frame:2 cover:drop-dish:0 cover:report-trouble:0 empty:add-dish:7 empty:ask-how:2
empty:ask-options:8 empty:ask-plan:2 empty:ask-shopping:8 empty:cook-away:8 empty:correct:0
empty:courtesy:0 empty:deny:2 empty:describe-roast:0 empty:emergency:4 empty:quiet:7 empty:report-started:8
empty:running-behind:1 empty:set-units:0 empty:undo:6 empty:watch:2 expecting:confirmation:report-not-done
expecting:doneness:report-done expecting:reading:report-out expecting:roast:report-done expecting:step:report-guests
expecting:step:set-guests for:add-dish>report-started for:ask-how>report-not-done for:ask-how>report-oven
for:ask-safety>skip-step for:ask-shopping>ask-plan for:ask-shopping>cook-away for:ask-status>set-timer
for:ask-substitute>report-trouble for:ask-temperature>quiet for:ask-time-left>ask-how for:ask-time-left>report-out
for:ask-time-left>set-timer for:cancel-timer>report-started for:cancel-timer>report-trouble
for:choose>affirm for:cook-away>add-hands for:describe-roast>set-serving-time for:drop-dish>add-hands
for:drop-dish>ask-how for:lack>add-dish for:note-guest>report-done for:pause>set-timer for:report-done>report-out
for:report-not-done>ask-shopping for:report-not-done>pause for:report-not-done>set-guests for:report-out>report-oven
for:report-oven>lack for:report-reading>report-out for:report-started>report-out for:report-trouble>ask-status
for:report-trouble>ask-time-left for:report-trouble>set-serving-time for:set-doneness>ask-time-left
for:set-serving-time>report-done for:set-serving-time>report-reading for:set-timer>ask-status
for:set-timer>pause for:set-timer>set-guests for:shift-serving>correct for:undo>report-trouble
for:watch>ask-plan for:watch>ask-why gained:report-oven gained:set-serving-time gained:undo
least0 lost0:gained3 lost:ask-slice lost:frame:7 lost:guess:2 lost:have lost:resume mood:intention:describe-roast
mood:intention:report-reading mood:negative:lack mood:negative:pause mood:negative:set-doneness
mood:negative:undo mood:story:report-not-done slots:ask-why: slots:cook-away: stage:carve:ask-how
stage:hold:describe-roast stage:preheat:add-dish stage:preheat:resume stage:put-away:quiet
stage:put-away:repeat stage:put-away:undo stage:rest:affirm stage:sear:report-guests stage:served:correct
talk:affirm talk:ask-plan talk:best2 talk:frame:5 talk:frame:7 talk:have talk:phrase:7 talk:report-setup
talk:running-behind talk:stage:prep talk:start-over text:deed:0 text:frame:0 text:guess:1 text:report-guests:1
text:running-behind:0 text:set-method:1 text:shift-serving:2 text:skip-step:0 then:add-dish>ask-substitute
then:add-dish>set-timer then:add-hands>ask-temperature then:add-hands>cancel-timer then:add-hands>note-guest
then:affirm>report-done then:ask-amount>set-units then:ask-how>set-doneness then:ask-next>cook-away
then:ask-next>lack then:ask-next>report-out then:ask-options>report-started then:ask-options>set-method
then:ask-plan>add-hands then:ask-safety>ask-how then:ask-status>ask-shopping then:ask-time-left>report-reading
then:ask>report-reading then:ask>report-setup then:ask>watch then:correct>note-guest then:correct>set-timer
then:deed>set-method then:have>report-setup then:lack>ask-plan then:lack>set-units then:note-guest>ask-time-left
then:report-done>ask-shopping then:report-guests>shift-serving then:report-not-done>set-guests
then:report-out>add-dish then:report-out>report-thermometer then:report-setup>ask-substitute
then:report-setup>ask-time-left then:report-started>report-reading then:running-behind>ask-next
then:running-behind>set-method then:set-guests>ask-temperature then:set-units>ask-status then:set-units>report-setup
then:shift-serving>add-hands then:shift-serving>report-started then:skip-step>ask-guests then:skip-step>ask-safety
then:start-over>ask-plan then:start-over>undo then:watch>report-reading then:watch>report-setup
twice:report-reading without:add-dish:guess:5 without:ask-amount without:ask-next without:ask-next:phrase:3
without:ask-plan without:ask-plan:phrase:6 without:ask-safety:frame:7 without:ask-status:frame:4
without:ask-time-left:phrase:7 without:deny:phrase:8 without:describe-roast:guess:5 without:describe-roast:phrase:7
without:describe-roast:phrase:8 without:have:across:0 without:have:phrase:5 without:lack:guess:6
without:report-not-done:phrase:2 without:report-reading:frame:7 without:running-behind:frame:6
without:running-behind:guess:8 without:set-doneness without:set-method:guess:6 without:set-timer:frame:6
without:shift-serving:guess:6 without:shift-serving:phrase:4 without:shift-serving:phrase:6
without:start-over:phrase:7
-9 =add-hands:across =ask-why:phrase =repeat:frame clause:add-hands:guess:3 clause:add-hands:guess:4
clause:ask:phrase:2 clause:choose:frame:5 clause:frame:0 clause:note-guest:phrase:0 clause:pause:frame:4
clause:repeat:frame:1 clause:repeat:frame:2 clause:report-trouble:guess:3 clause:set-guests:frame:4
clause:set-serving-time:guess:4 clause:start-over:phrase:3 clause:undo:frame:3 clause:watch:frame:5
cover:report-done:1 empty:ask-amount:7 empty:ask-how:7 empty:ask-next:2 empty:ask-shopping:2
empty:ask-slice:3 empty:ask-status:0 empty:cancel-timer:7 empty:choose:6 empty:emergency:3
empty:have:1 empty:report-done:2 empty:report-done:8 empty:report-not-done:8 empty:report-reading:5
empty:running-behind:4 empty:shift-serving:2 empty:skip-step:5 expecting:choice:ask-next expecting:guests:ask-amount
expecting:reading:ask-status expecting:reading:set-timer for:ask-how>ask-amount for:ask-plan>set-serving-time
for:ask-safety>report-setup for:ask-status>report-started for:ask-status>set-guests for:ask-temperature>report-done
for:ask-temperature>report-guests for:ask-temperature>report-trouble for:ask-temperature>watch
for:ask-time-left>report-guests for:cancel-timer>set-timer for:cook-away>report-out for:cook-away>set-serving-time
for:repeat>ask-next for:report-guests>choose for:report-guests>report-not-done for:report-out>add-dish
for:report-out>ask-status for:report-out>report-trouble for:report-reading>note-guest for:report-reading>report-guests
for:report-trouble>ask-how for:report-trouble>report-oven for:set-doneness>add-dish for:set-doneness>drop-dish
for:set-guests>note-guest for:set-method>choose for:set-timer>report-setup for:set-units>ask-shopping
for:shift-serving>report-reading for:watch>ask-options for:watch>ask-time-left for:watch>set-doneness
gained:add-hands gained:phrase:6 gained:skip-step how:stop open least3:many3 lost1:gained3
lost:ask-shopping lost:deny lost:forget-kitchen lost:frame:6 lost:phrase:8 lost:shift-serving
many1:clauses4 mood:question:deed mood:question:emergency mood:question:set-units slots:ask-substitute:
slots:ask-temperature:temperature slots:report-setup:oven,probe slots:set-guests:change,who
slots:skip-step: stage:carve:report-setup stage:hold:report-guests stage:low-roast:skip-step
stage:planning:undo stage:planning:watch stage:preheat:report-trouble stage:prep:ask-status
stage:rest:ask-amount stage:rest:ask-time-left stage:served:choose stage:served:describe-roast
stage:served:drop-dish talk:cancel-timer talk:phrase:1 talk:report-guests talk:set-method talk:stage:rest
text:add-hands:2 text:deny:0 text:drop-dish:0 text:report-not-done:1 text:resume:0 text:set-timer:0
then:add-dish>add-hands then:add-hands>ask-status then:ask-amount>ask-options then:ask-guests>add-dish
then:ask-guests>report-reading then:ask-how>report-done then:ask-next>correct then:ask-next>report-reading
then:ask-options>report-out then:ask-options>report-oven then:ask-options>set-guests then:ask-plan>describe-roast
then:ask-plan>running-behind then:ask-safety>add-dish then:ask-shopping>add-dish then:ask-shopping>ask-how
then:ask-shopping>describe-roast then:ask-shopping>lack then:ask-status>report-setup then:ask-substitute>drop-dish
then:ask-temperature>ask-safety then:ask-time-left>ask-options then:ask-time-left>ask-safety
then:ask-time-left>report-done then:ask-time-left>report-guests then:ask-time-left>report-out
then:ask-time-left>running-behind then:ask-time-left>set-serving-time then:ask-why>ask-plan
then:ask-why>ask-temperature then:ask-why>set-guests then:ask>emergency then:cook-away>running-behind
then:correct>ask-next then:correct>ask-safety then:correct>set-doneness then:describe-roast>ask-amount
then:help>repeat then:lack>report-out then:note-guest>ask then:note-guest>running-behind then:quiet>undo
then:report-done>ask-safety then:report-done>ask-status then:report-done>ask-why then:report-not-done>undo
then:report-out>ask-status then:report-oven>ask-amount then:report-oven>ask-how then:report-oven>report-oven
then:report-setup>report-guests then:report-started>ask-status then:report-started>report-setup
then:report-started>set-serving-time then:report-trouble>ask-substitute then:report-trouble>note-guest
then:set-doneness>ask-temperature then:set-guests>cancel-timer then:set-guests>report-guests
then:set-guests>report-oven then:set-timer>drop-dish then:set-units>report-started then:skip-step>report-out
then:watch>ask-temperature without:add-dish without:add-dish:guess:8 without:ask-amount:guess:7
without:ask-amount:guess:8 without:ask-amount:phrase:6 without:ask-guests:phrase:7 without:ask-next:phrase:1
without:ask-next:phrase:2 without:ask-safety:guess:7 without:ask-temperature:frame:5 without:ask-temperature:phrase:4
without:ask-why:phrase:4 without:lack:phrase:8 without:note-guest:phrase:7 without:report-reading
without:report-reading:frame:3 without:report-setup:frame:8 without:report-trouble:phrase:2
without:running-behind:phrase:7 without:set-serving-time:frame:8
-8 =report-guests:guess =set-guests:frame clause:add-dish:guess:3 clause:add-hands:across:7
clause:affirm:frame:5 clause:ask:frame:3 clause:deed:frame:3 clause:deed:guess:4 clause:deny:phrase:5
clause:describe-roast:phrase:3 clause:drop-dish:phrase:1 clause:note-guest:phrase:2 clause:pause:guess:3
clause:report-not-done:frame:2 clause:resume:phrase:0 clause:running-behind:guess:4 clause:set-doneness:frame:8
clause:set-doneness:phrase:1 clause:set-method:guess:2 clause:set-serving-time:phrase:3 clause:set-timer:guess:2
clause:set-timer:guess:5 clause:set-units:phrase:5 clause:skip-step:phrase:3 cover:ask-status:1
cover:frame:1 cover:lack:0 cover:note-guest:0 cover:set-guests:2 cover:start-over:2 empty:add-dish:5
empty:add-dish:6 empty:ask-status:5 empty:ask-temperature:3 empty:ask-temperature:6 empty:ask-why:1
empty:courtesy:1 empty:describe-roast:4 empty:describe-roast:7 empty:repeat:5 empty:report-done:6
empty:report-out:2 empty:report-out:3 empty:shift-serving:6 expecting:choice:ask-options expecting:confirmation:resume
expecting:doneness:ask-options expecting:guests:ask-temperature expecting:reading:cook-away
expecting:reading:report-not-done expecting:reading:watch expecting:roast:add-dish expecting:step:report-started
expecting:step:set-timer first:set-guests for:ask-amount>ask-options for:ask-guests>set-guests
for:ask-options>set-timer for:ask-plan>report-started for:ask-safety>report-done for:ask-slice>ask-status
for:ask-substitute>ask-status for:ask-temperature>report-oven for:ask-time-left>cook-away for:cancel-timer>report-oven
for:deny>report-done for:describe-roast>ask-temperature for:lack>report-not-done for:lack>report-out
for:report-done>add-dish for:report-not-done>watch for:report-oven>have for:report-oven>report-done
for:report-reading>ask-why for:report-setup>ask-substitute for:report-setup>choose for:report-setup>report-started
for:report-started>ask-time-left for:report-trouble>add-hands for:report-trouble>report-out
for:running-behind>report-guests for:set-doneness>ask-plan for:set-serving-time>add-dish for:set-serving-time>ask-temperature
for:set-serving-time>set-guests for:shift-serving>report-done for:undo>resume gained:frame:0
left:numbers1 lost:ask-temperature lost:quiet lost:report-out lost:report-thermometer lost:skip-step
many2:clauses4 many2:long2 many4:long6 mood:intention:drop-dish mood:negative:report-guests
mood:question:add-dish mood:question:set-doneness mood:statement:ask mood:story:cancel-timer
mood:story:report-reading mood:story:set-timer slots:ask-amount: slots:describe-roast:boneless,cut
slots:report-oven:state,time slots:report-setup:oven,pan slots:set-units:weight stage:carve:choose
stage:carve:repeat stage:hold:ask-plan stage:hold:note-guest stage:low-roast:set-doneness stage:planning:ask-time-left
stage:planning:lack stage:preheat:have stage:prep:report-trouble stage:put-away:report-setup
stage:rest:ask-safety stage:rest:ask-why stage:rest:describe-roast stage:rest:running-behind
stage:rest:undo stage:rest:watch stage:sear:add-hands stage:sear:cancel-timer stage:sear:report-reading
stage:served:add-dish stage:served:ask-options stage:served:set-timer talk:lack talk:report-trouble
talk:skip-step text:add-hands:0 text:affirm:2 text:cancel-timer:2 text:have:2 text:pause:2
text:report-reading:1 text:report-trouble:1 text:resume:2 text:start-over:0 text:start-over:3
then:add-dish>ask-options then:add-dish>report-out then:add-hands>running-behind then:ask-amount>ask-time-left
then:ask-guests>ask-safety then:ask-guests>set-doneness then:ask-how>add-dish then:ask-how>note-guest
then:ask-how>report-out then:ask-safety>skip-step then:ask-status>lack then:ask-substitute>skip-step
then:ask-time-left>shift-serving then:ask-why>skip-step then:choose>ask-next then:cook-away>ask-options
then:correct>add-dish then:correct>ask-temperature then:correct>report-oven then:correct>report-setup
then:deed>add-dish then:deed>set-units then:describe-roast>report-guests then:describe-roast>report-out
then:drop-dish>ask-substitute then:drop-dish>report-reading then:drop-dish>set-guests then:lack>report-trouble
then:note-guest>add-dish then:quiet>report-not-done then:quiet>report-trouble then:repeat>help
then:report-guests>ask-why then:report-not-done>report-not-done then:report-out>ask-why then:report-out>set-serving-time
then:report-out>watch then:report-oven>ask-why then:report-setup>lack then:report-started>ask-shopping
then:report-started>note-guest then:report-started>running-behind then:report-trouble>report-out
then:report-trouble>set-doneness then:running-behind>ask-guests then:running-behind>report-not-done
then:set-guests>ask-guests then:set-serving-time>lack then:set-timer>cook-away then:undo>drop-dish
then:watch>add-hands twice:ask-how twice:report-oven without:add-hands:phrase:2 without:ask-amount:guess:6
without:ask-amount:phrase:7 without:ask-guests:phrase:5 without:ask-next:frame:8 without:ask-options:guess:5
without:ask-safety without:ask-status:guess:5 without:ask-status:guess:6 without:ask-temperature:frame:6
without:ask-time-left:phrase:4 without:deny:phrase:6 without:drop-dish:frame:4 without:feed-public:phrase:8
without:quiet:phrase:7 without:report-guests:phrase:5 without:report-not-done:guess:8 without:report-oven:frame:5
without:report-reading:frame:6 without:set-serving-time:guess:8 without:set-units:guess:8 without:shift-serving:phrase:5
without:shift-serving:phrase:8
-7 =ask-time-left:frame clause:add-hands:frame:8 clause:affirm:phrase:2 clause:cancel-timer:frame:3
clause:cancel-timer:guess:3 clause:choose:phrase:3 clause:correct:guess:5 clause:deed:guess:2
clause:deed:guess:3 clause:deny:guess:2 clause:describe-roast:guess:6 clause:lack:phrase:1
clause:note-guest:guess:3 clause:note-guest:guess:5 clause:phrase:0 clause:report-not-done:frame:3
clause:report-not-done:phrase:4 clause:report-setup:guess:3 clause:report-setup:guess:4 clause:report-trouble:frame:5
clause:report-trouble:guess:5 clause:report-trouble:phrase:5 clause:set-doneness:frame:3 clause:set-doneness:guess:4
clause:set-doneness:phrase:6 clause:set-method:guess:3 clause:set-method:guess:5 clause:set-timer:guess:4
clause:shift-serving:frame:4 clause:skip-step:guess:4 clause:start-over:guess:4 clause:undo:across:3
cover:ask-safety:2 cover:phrase:0 cover:set-guests:1 empty:ask-how:0 empty:ask-options:5 empty:ask-safety:1
empty:ask-time-left:7 empty:ask-why:2 empty:correct:1 empty:help:1 empty:quiet:1 empty:report-not-done:1
empty:resume:6 empty:set-doneness:0 empty:start-over:1 expecting:confirmation:ask-plan expecting:confirmation:report-reading
expecting:guests:note-guest expecting:guests:report-not-done first:ask-next for:add-dish>drop-dish
for:add-dish>report-done for:ask-amount>ask-status for:ask-how>report-done for:ask-next>ask-status
for:ask-next>ask-time-left for:ask-plan>ask-guests for:ask-plan>ask-safety for:ask-safety>ask-next
for:ask-status>ask-plan for:ask-substitute>add-dish for:ask-substitute>report-setup for:describe-roast>ask-shopping
for:describe-roast>report-done for:lack>ask-how for:pause>report-trouble for:report-not-done>ask-next
for:report-out>drop-dish for:report-oven>report-guests for:report-oven>report-not-done for:report-setup>report-trouble
for:report-trouble>report-done for:set-timer>watch for:skip-step>ask-how for:skip-step>ask-safety
for:watch>cancel-timer gained:affirm gained:ask-amount gained:ask-plan gained:describe-roast
gained:report-reading gained:set-method helper7 how:stop, clause guessed least0:many3 least2:many2
least3:many2 least4:many2 least8:many1 left4:many2 lost2:gained0 lost:affirm lost:frame:5 lost:report-oven
many0:long5 mood:negative:set-guests mood:question:describe-roast mood:request:repeat mood:story:ask
stage:carve:ask-status stage:hold:report-setup stage:low-roast:report-setup stage:planning:ask-how
stage:planning:skip-step stage:put-away:report-started stage:put-away:skip-step stage:rest:deny
stage:rest:quiet stage:sear:quiet stage:served:deny stage:served:report-guests talk:add-hands
talk:ask-options talk:ask-temperature talk:deny talk:frame:8 talk:long5 talk:phrase:0 talk:phrase:3
talk:report-done text:deed:1 text:feed-public:0 text:guess:2 text:lack:0 text:report-setup:0
text:running-behind:1 then:add-dish>ask-safety then:add-hands>lack then:add-hands>report-trouble
then:ask-how>ask-how then:ask-how>cook-away then:ask-how>correct then:ask-next>set-units then:ask-plan>cook-away
then:ask-safety>report-trouble then:ask-shopping>report-done then:ask-status>add-dish then:ask-status>note-guest
then:ask-status>set-doneness then:ask-substitute>add-hands then:ask-time-left>ask-time-left
then:ask-why>report-started then:ask>choose then:correct>report-guests then:deed>drop-dish
then:describe-roast>report-reading then:describe-roast>report-trouble then:drop-dish>report-started
then:lack>report-guests then:lack>undo then:note-guest>ask-plan then:note-guest>drop-dish then:note-guest>report-out
then:report-done>correct then:report-guests>ask-safety then:report-out>ask-options then:report-out>note-guest
then:report-oven>choose then:report-oven>lack then:report-reading>add-hands then:report-reading>correct
then:report-setup>ask-how then:report-setup>ask-options then:report-setup>note-guest then:report-started>ask-amount
then:report-started>describe-roast then:report-started>report-trouble then:report-started>set-method
then:running-behind>skip-step then:set-doneness>ask-safety then:set-doneness>report-started
then:set-guests>set-timer then:set-serving-time>add-hands then:set-serving-time>report-setup
then:set-timer>report-guests then:set-timer>report-out then:shift-serving>report-not-done then:skip-step>add-dish
then:skip-step>set-serving-time twice:ask-time-left twice:note-guest without:ask-how without:ask-plan:phrase:2
without:ask-shopping:guess:5 without:ask-status without:ask-substitute:phrase:0 without:ask-time-left:phrase:5
without:describe-roast:phrase:5 without:forget-kitchen without:forget-kitchen:across:0 without:report-not-done:phrase:0
without:report-out:phrase:6 without:report-reading:guess:5 without:set-timer:frame:7 without:shift-serving:frame:6
without:shift-serving:guess:8 without:watch:frame:7 without:watch:frame:8
-6 =affirm:frame =cancel-timer:frame =report-started:guess =report-trouble:guess =resume:frame
clause:add-hands:frame:6 clause:add-hands:guess:5 clause:add-hands:guess:6 clause:choose:guess:7
clause:deed:frame:5 clause:drop-dish:phrase:8 clause:emergency:across:0 clause:frame:4 clause:guess:2
clause:guess:5 clause:have:phrase:4 clause:lack:frame:6 clause:lack:guess:4 clause:lack:guess:6
clause:note-guest:guess:4 clause:pause:guess:5 clause:report-not-done:phrase:5 clause:report-reading:frame:6
clause:report-reading:phrase:1 clause:report-setup:frame:2 clause:running-behind:phrase:0 clause:running-behind:phrase:2
clause:set-doneness:guess:2 clause:set-guests:guess:3 clause:set-guests:guess:5 clause:set-guests:guess:7
clause:set-method:guess:4 clause:set-method:phrase:3 clause:set-serving-time:guess:3 clause:set-units:frame:3
clause:shift-serving:frame:5 clause:shift-serving:phrase:1 clause:undo:across:2 clause:undo:guess:5
clause:watch:across:0 cover:ask-time-left:2 cover:choose:2 cover:describe-roast:0 cover:lack:2
cover:report-out:0 cover:report-oven:0 cover:report-oven:1 cover:report-reading:0 empty:add-dish:4
empty:affirm:8 empty:ask-guests:2 empty:ask-options:7 empty:ask-safety:6 empty:ask-why:0 empty:deny:4
empty:describe-roast:2 empty:emergency:0 empty:emergency:6 empty:feed-public:4 empty:forget-kitchen:7
empty:note-guest:3 empty:report-reading:7 empty:report-setup:3 empty:report-thermometer:6 empty:report-trouble:8
empty:shift-serving:3 expecting:choice:set-timer expecting:confirmation:shift-serving expecting:doneness:set-doneness
expecting:guests:correct expecting:reading:correct expecting:reading:report-reading expecting:roast:set-units
for:add-dish>ask-amount for:ask-amount>lack for:ask-guests>ask-status for:ask-how>ask-substitute
for:ask-status>report-trouble for:ask-substitute>describe-roast for:ask-time-left>shift-serving
for:ask-why>skip-step for:cancel-timer>report-done for:cook-away>report-reading for:cook-away>set-timer
for:deny>report-reading for:describe-roast>lack for:describe-roast>report-started for:note-guest>ask-guests
for:note-guest>report-guests for:pause>skip-step for:report-done>have for:report-done>report-guests
for:report-done>report-started for:report-not-done>repeat for:report-not-done>report-done for:report-not-done>report-guests
for:report-started>ask-how for:set-doneness>report-reading for:set-doneness>watch for:set-timer>ask-temperature
for:set-units>note-guest for:shift-serving>report-trouble for:shift-serving>set-serving-time
gained:frame:5 gained:guess:2 gained:phrase:3 gained:phrase:8 gained:report-out gained:set-guests
gained:watch least1:many3 least2:many3 left6 left6:many3 lost3:gained0 lost:ask-why lost:help
lost:phrase:5 lost:start-over mean1 mean4 mood:intention:ask mood:intention:cook-away mood:question:cancel-timer
mood:question:watch mood:request:deed mood:request:report-oven mood:statement:repeat mood:story:add-hands
mood:story:watch slots:ask-temperature: slots:ask-time-left: slots:correct: slots:describe-roast:cut,prepared,weight,weightUnit
slots:note-guest:need,value slots:report-out:what slots:report-setup:pan,tent slots:set-timer:minutes
stage::report-reading stage:carve:report-started stage:hold:report-oven stage:low-roast:ask-options
stage:low-roast:ask-safety stage:low-roast:report-done stage:low-roast:report-out stage:planning:help
stage:prep:ask-shopping stage:put-away:correct stage:sear:lack talk:ask-shopping talk:expecting:step
talk:help talk:likely4 talk:set-units talk:stage:planning text:add-dish:1 text:ask:0 text:cancel-timer:7
text:choose:3 text:emergency:0 text:lack:1 text:phrase:1 text:quiet:7 text:report-not-done:0
text:set-doneness:3 text:start-over:1 text:undo:2 text:watch:3 then:add-dish>describe-roast
then:add-dish>report-done then:add-hands>ask-how then:add-hands>deed then:ask-amount>choose
then:ask-how>drop-dish then:ask-next>report-not-done then:ask-next>set-doneness then:ask-next>set-guests
then:ask-options>set-units then:ask-plan>set-doneness then:ask-temperature>note-guest then:ask-temperature>report-not-done
then:ask-why>ask-status then:ask-why>correct then:ask>report-guests then:ask>set-timer then:cook-away>set-serving-time
then:deed>set-serving-time then:drop-dish>skip-step then:feed-public>set-serving-time then:lack>report-oven
then:lack>skip-step then:report-not-done>report-guests then:report-out>correct then:report-out>report-done
then:report-oven>ask-temperature then:report-oven>deed then:report-oven>describe-roast then:report-oven>note-guest
then:report-oven>report-guests then:report-oven>report-started then:report-reading>set-doneness
then:report-setup>skip-step then:report-started>set-guests then:report-trouble>report-done
then:report-trouble>set-timer then:set-doneness>ask-next then:set-doneness>lack then:set-serving-time>deed
then:set-serving-time>set-units then:set-timer>report-not-done then:set-timer>shift-serving
then:set-units>report-reading then:shift-serving>lack then:skip-step>drop-dish then:skip-step>report-done
then:undo>report-not-done then:watch>report-started twice:ask-temperature twice:report-not-done
without:add-dish:phrase:8 without:ask-amount:guess:5 without:ask-guests:guess:5 without:ask-how:frame:8
without:ask-options:guess:8 without:ask-temperature:phrase:5 without:cancel-timer:guess:8 without:cook-away:frame:7
without:cook-away:frame:8 without:drop-dish:frame:1 without:drop-dish:frame:2 without:note-guest:phrase:5
without:report-done:frame:4 without:report-done:phrase:7 without:report-oven:guess:8 without:report-oven:phrase:8
without:report-started:phrase:0 without:report-trouble:phrase:7 without:set-guests:across:0
without:set-guests:phrase:6 without:set-units:frame:6 without:shift-serving:frame:7
-5 =ask-guests:guess =help:frame clause:affirm:phrase:5 clause:cook-away:frame:6 clause:correct:across:5
clause:deed:frame:2 clause:deed:guess:5 clause:deed:guess:6 clause:deny:frame:7 clause:deny:guess:7
clause:describe-roast:phrase:2 clause:feed-public:phrase:5 clause:frame:3 clause:guess:3 clause:pause:guess:2
clause:quiet:phrase:6 clause:report-not-done:guess:6 clause:report-setup:phrase:3 clause:report-setup:phrase:4
clause:report-trouble:frame:2 clause:report-trouble:frame:6 clause:report-trouble:phrase:3
clause:set-doneness:guess:5 clause:set-guests:guess:2 clause:set-guests:guess:8 clause:set-guests:phrase:0
clause:set-serving-time:guess:8 clause:shift-serving:across:0 clause:skip-step:frame:3 clause:skip-step:guess:3
clause:skip-step:guess:7 clause:start-over:phrase:0 clause:start-over:phrase:4 clause:start-over:phrase:5
clause:undo:across:1 cover:add-hands:2 cover:ask-plan:0 cover:ask-status:2 cover:feed-public:2
cover:frame:3 cover:note-guest:2 cover:phrase:1 cover:report-guests:2 cover:running-behind:1
empty1 empty:affirm:2 empty:ask-amount:5 empty:ask-next:6 empty:ask-time-left:4 empty:best6
empty:cancel-timer:8 empty:correct:6 empty:quiet:3 empty:report-done:0 empty:report-done:3
empty:report-guests:7 empty:report-out:5 empty:report-oven:0 empty:talk0 empty:talk1 empty:undo:1
empty:words4 expecting:choice:add-dish expecting:doneness:ask-safety expecting:serving-time:set-serving-time
first:set-timer for:ask-guests>lack for:ask-plan>ask-options for:ask-safety>ask-why for:ask-status>ask-why
for:ask-status>report-oven for:ask-substitute>ask-shopping for:ask-temperature>ask-options
for:ask-temperature>ask-status for:cook-away>quiet for:describe-roast>ask-status for:drop-dish>lack
for:drop-dish>report-not-done for:drop-dish>skip-step for:report-done>skip-step for:report-guests>report-started
for:report-not-done>report-started for:report-not-done>shift-serving for:report-out>set-serving-time
for:report-oven>report-reading for:report-oven>set-timer for:report-reading>lack for:report-started>set-timer
for:report-thermometer>report-trouble for:set-doneness>report-done for:set-serving-time>cook-away
for:set-serving-time>correct for:shift-serving>ask-time-left for:shift-serving>set-doneness
for:skip-step>add-hands for:undo>report-done for:watch>correct for:watch>report-done for:watch>report-out
gained:ask-temperature gained:frame:8 gained:guess:3 gained:set-timer least1:many2 lost:cancel-timer
lost:frame:8 lost:guess:8 lost:report-reading lost:set-units many1:long3 many2 many3:clauses4
mood:negative:correct mood:negative:note-guest mood:question:choose mood:question:drop-dish
mood:request:set-method mood:request:skip-step slots:ask-safety:about slots:ask-status: slots:report-done:minutesAgo
slots:report-oven:mode slots:report-started:step stage:carve:report-done stage:carve:report-reading
stage:hold:report-done stage:hold:start-over stage:low-roast:add-dish stage:low-roast:set-timer
stage:planning:add-hands stage:prep:report-started stage:prep:resume stage:prep:set-units stage:put-away:ask-safety
stage:rest:ask-next stage:rest:resume stage:served:cancel-timer talk:across:0 talk:forget-kitchen
talk:frame:3 talk:likely6 talk:resume text:choose:7 text:cook-away:1 text:describe-roast:0
text:drop-dish:2 text:feed-public:4 text:lack:2 text:report-setup:1 text:report-trouble:0 text:report-trouble:4
text:set-doneness:1 text:set-guests:0 text:set-guests:4 text:watch:0 text:watch:2 then:add-hands>add-hands
then:add-hands>ask-time-left then:ask-amount>ask-amount then:ask-amount>ask-shopping then:ask-amount>report-trouble
then:ask-plan>ask-shopping then:ask-plan>report-started then:ask-why>ask-how then:cancel-timer>report-oven
then:cancel-timer>set-guests then:choose>deed then:correct>ask then:deed>choose then:deed>have
then:describe-roast>ask-shopping then:lack>add-dish then:lack>ask-time-left then:lack>note-guest
then:note-guest>ask-amount then:note-guest>correct then:note-guest>describe-roast then:note-guest>note-guest
then:note-guest>report-not-done then:quiet>ask then:quiet>report-reading then:report-done>ask-substitute
then:report-done>choose then:report-guests>drop-dish then:report-guests>report-done then:report-guests>set-doneness
then:report-guests>set-serving-time then:report-not-done>ask-how then:report-not-done>ask-plan
then:report-out>ask-safety then:report-out>ask-temperature then:report-out>choose then:report-out>set-timer
then:report-oven>ask-status then:report-reading>ask-safety then:report-reading>choose then:report-started>ask-how
then:report-trouble>ask-status then:report-trouble>report-thermometer then:running-behind>ask-substitute
then:set-method>skip-step then:set-serving-time>cancel-timer then:set-serving-time>report-guests
then:shift-serving>set-timer then:skip-step>deed twice:add-hands twice:ask-amount without:add-hands:guess:5
without:affirm without:ask-how:guess:5 without:ask-how:guess:6 without:ask-how:guess:7 without:ask-safety:guess:5
without:ask-slice without:ask-slice:across:0 without:ask-temperature:phrase:8 without:ask-time-left:guess:6
without:drop-dish:phrase:5 without:note-guest:frame:8 without:report-done without:report-done:phrase:4
without:report-oven:guess:7 without:report-oven:phrase:4 without:report-setup:phrase:5 without:report-started
without:report-started:guess:5 without:report-started:guess:7 without:report-trouble:frame:3
without:running-behind:phrase:5 without:set-guests:phrase:1 without:set-serving-time:phrase:8
without:shift-serving
-4 =add-dish:phrase =ask-how:guess =ask-next:across =choose =drop-dish:phrase =note-guest:frame
=note-guest:guess =set-doneness:frame =set-guests:guess =set-method:guess =set-serving-time:guess
breath1:true breath3:true clause:across:0 clause:ask:frame:5 clause:cancel-timer:guess:7 clause:cook-away:guess:2
clause:deed:frame:4 clause:frame:6 clause:guess:4 clause:have:across:0 clause:phrase:5 clause:quiet:guess:2
clause:repeat:frame:5 clause:repeat:phrase:6 clause:repeat:phrase:7 clause:report-not-done:guess:3
clause:report-not-done:phrase:0 clause:report-oven:guess:3 clause:report-oven:guess:7 clause:report-reading:frame:3
clause:report-reading:guess:5 clause:report-setup:phrase:7 clause:report-trouble:frame:7 clause:report-trouble:guess:6
clause:running-behind:phrase:4 clause:set-doneness:frame:5 clause:set-units:guess:4 clause:shift-serving:frame:2
clause:shift-serving:frame:3 clause:start-over:guess:2 clause:start-over:guess:7 cover:add-dish:3
cover:ask-guests:2 cover:ask-options:2 cover:ask-time-left:1 cover:ask-why:0 cover:feed-public:0
cover:phrase:2 cover:report-done:0 cover:set-doneness:1 empty0 empty3 empty:add-dish:2 empty:add-hands:7
empty:add-hands:8 empty:ask-amount:8 empty:ask-next:5 empty:ask-options:1 empty:ask-options:2
empty:ask-options:4 empty:ask-shopping:4 empty:ask-slice:5 empty:ask-slice:8 empty:ask-why:8
empty:choose:3 empty:choose:8 empty:cook-away:3 empty:correct:4 empty:courtesy:5 empty:drop-dish:4
empty:forget-kitchen:0 empty:lack:3 empty:note-guest:8 empty:pause:4 empty:repeat:7 empty:report-done:1
empty:report-done:7 empty:report-out:1 empty:report-reading:0 empty:report-reading:4 empty:running-behind:8
empty:set-doneness:6 empty:set-doneness:7 empty:set-guests:1 empty:set-units:4 empty:talk2
empty:undo:0 empty:undo:7 empty:undo:8 empty:watch:8 expecting:guests:report-guests first:add-hands
first:ask-why first:drop-dish first:emergency first:feed-public first:quiet for:ask-amount>ask-safety
for:ask-amount>ask-time-left for:ask-how>ask-time-left for:ask-options>repeat for:ask-safety>add-dish
for:ask-safety>ask-amount for:ask-time-left>ask-next for:ask-time-left>watch for:cancel-timer>report-reading
for:note-guest>report-started for:report-done>ask-options for:report-done>drop-dish for:report-not-done>report-oven
for:report-oven>choose for:report-thermometer>report-oven for:report-trouble>ask-next for:report-trouble>ask-temperature
for:running-behind>cook-away for:set-doneness>lack for:set-guests>lack for:set-timer>add-dish
for:set-timer>correct for:shift-serving>cook-away for:start-over>set-method for:watch>ask-how
for:watch>ask-status gained:ask-how gained:cancel-timer gained:pause gained:phrase:1 gained:set-doneness
gained:start-over how:clause guessed least2 least3 least4:many3 least8 left1 left2:many2 left3:many2
left6:many2 left:numbers2 lost0:gained1 lost:ask-amount lost:ask-guests lost:ask-options lost:ask-plan
lost:ask-safety lost:cook-away lost:note-guest lost:pause lost:set-doneness many1 many2:clauses5
mean2 mood:intention:set-guests mood:intention:set-timer mood:question:report-not-done mood:story:set-doneness
slots:ask-guests: slots:ask-shopping: slots:ask-slice: slots:cancel-timer: slots:choose:option
slots:describe-roast:weight,weightUnit slots:note-guest:need slots:note-guest:need,who slots:report-guests:state
stage::ask-time-left stage::report-started stage:carve:report-not-done stage:low-roast:lack
stage:planning:ask-options stage:planning:ask-status stage:planning:drop-dish stage:preheat:repeat
stage:preheat:start-over stage:prep:quiet stage:rest:repeat talk:best1 talk:cook-away talk:correct
talk:describe-roast talk:likely7 talk:pause talk:phrase:4 talk:stage:served text:across:0 text:affirm:3
text:deed:2 text:describe-roast:5 text:guess:7 text:quiet:0 text:quiet:5 text:report-oven:2
text:report-reading:0 text:set-method:3 then:add-dish>ask-amount then:add-dish>ask-plan then:add-dish>report-oven
then:add-hands>drop-dish then:ask-guests>set-units then:ask-options>report-trouble then:ask-plan>report-setup
then:ask-status>drop-dish then:ask-temperature>ask-temperature then:ask-time-left>set-doneness
then:cancel-timer>ask-next then:choose>set-timer then:deed>undo then:describe-roast>ask-next
then:note-guest>add-hands then:report-done>set-serving-time then:report-guests>report-started
then:report-not-done>report-out then:report-not-done>shift-serving then:report-out>add-hands
then:report-out>ask-shopping then:report-oven>report-setup then:report-reading>report-reading
then:report-reading>report-started then:report-setup>ask-temperature then:report-started>ask-options
then:report-started>shift-serving then:report-trouble>correct then:running-behind>add-dish
then:set-guests>running-behind then:set-serving-time>ask-status then:set-serving-time>choose
then:set-serving-time>report-not-done then:set-serving-time>report-oven then:set-serving-time>report-reading
then:set-serving-time>watch then:set-timer>ask-status then:set-timer>ask-why then:set-timer>report-started
then:set-timer>set-guests then:set-units>lack then:skip-step>ask-why then:undo>deed then:watch>report-out
without:ask-guests without:ask-how:phrase:5 without:ask-how:phrase:7 without:ask-plan:phrase:7
without:ask-shopping:guess:8 without:cancel-timer:phrase:7 without:describe-roast:guess:8 without:describe-roast:phrase:4
without:lack:phrase:6 without:report-done:guess:6 without:report-done:phrase:1 without:report-done:phrase:6
without:report-not-done without:report-not-done:guess:7 without:report-not-done:phrase:7 without:report-oven:phrase:6
without:report-reading:guess:8 without:report-thermometer without:report-thermometer:across:0
without:running-behind:guess:5 without:running-behind:phrase:8 without:set-guests:phrase:5
without:shift-serving:phrase:2 without:watch:guess:8
-3 =affirm:guess =ask-next:phrase =ask-safety:phrase =ask-substitute =ask-substitute:guess
=choose:frame =cook-away:across =correct:guess =emergency:across =lack:phrase =quiet:guess
=repeat:phrase =report-done =report-done:frame =report-done:guess =report-started =report-started:across
=set-doneness:phrase =set-timer:across =shift-serving:guess =undo:frame acts:talk1 acts:talk2
clause:add-dish:frame:2 clause:add-hands:frame:2 clause:add-hands:phrase:5 clause:ask:frame:4
clause:ask:guess:3 clause:ask:guess:5 clause:ask:guess:6 clause:ask:phrase:5 clause:cancel-timer:guess:8
clause:cancel-timer:phrase:7 clause:cook-away:frame:2 clause:describe-roast:guess:4 clause:describe-roast:phrase:0
clause:describe-roast:phrase:7 clause:drop-dish:guess:3 clause:drop-dish:guess:7 clause:feed-public:phrase:7
clause:frame:1 clause:guess:6 clause:help:phrase:6 clause:lack:phrase:3 clause:note-guest:across:0
clause:note-guest:guess:6 clause:phrase:1 clause:quiet:phrase:5 clause:repeat:guess:5 clause:repeat:phrase:3
clause:repeat:phrase:8 clause:report-not-done:guess:2 clause:report-oven:frame:3 clause:report-oven:phrase:7
clause:report-reading:phrase:4 clause:report-setup:phrase:5 clause:report-trouble:guess:7 clause:resume:guess:3
clause:resume:guess:4 clause:set-doneness:frame:4 clause:set-guests:across:4 clause:set-guests:frame:0
clause:set-guests:phrase:1 clause:set-serving-time:phrase:2 clause:set-timer:frame:4 clause:set-units:phrase:8
clause:shift-serving:phrase:3 clause:undo:across:8 clause:undo:guess:2 clause:watch:across:2
clause:watch:guess:6 cover:ask-substitute:3 cover:quiet:2 cover:report-guests:0 cover:report-not-done:1
cover:report-setup:1 cover:report-started:3 cover:set-doneness:3 cover:set-method:3 cover:start-over:1
empty2 empty:acknowledge:1 empty:affirm:1 empty:ask-next:3 empty:ask-next:4 empty:ask-status:7
empty:ask-substitute:5 empty:ask-temperature:7 empty:ask-time-left:8 empty:best3 empty:best5
empty:cook-away:2 empty:cook-away:7 empty:have:2 empty:note-guest:6 empty:note-guest:7 empty:repeat:0
empty:report-setup:6 empty:running-behind:5 empty:set-doneness:8 empty:shift-serving:5 empty:talk6
empty:words3 expecting:doneness:note-guest expecting:step:ask-next first:ask-substitute first:ask-temperature
first:ask-time-left first:cancel-timer first:choose first:cook-away first:watch for:add-dish>add-hands
for:add-dish>ask-substitute for:ask-options>ask-how for:ask-safety>ask-status for:ask-safety>report-trouble
for:ask-temperature>ask-why for:ask-temperature>report-reading for:ask-time-left>ask-plan for:ask-why>add-dish
for:note-guest>ask-status for:note-guest>ask-substitute for:report-done>ask-how for:report-not-done>ask-options
for:report-oven>ask-temperature for:report-started>ask-safety for:report-started>report-trouble
for:resume>report-started for:set-doneness>ask-safety for:set-doneness>report-trouble for:set-guests>ask-amount
for:set-timer>report-out for:set-timer>report-oven gained:ask-guests gained:feed-public gained:frame:1
gained:help gained:phrase:0 gained:report-guests gained:running-behind gained:shift-serving
how:stop, less least0:many1 least4 least5:many2 least7:many1 left1:many1 left2 left2:many3
left3 left3:many3 left4 left4:many1 left5 left5:many1 left6:many1 lost1:gained0 lost:across:0
lost:ask-time-left lost:frame:3 lost:guess:7 lost:lack lost:phrase:3 lost:repeat lost:report-guests
lost:running-behind many1:clauses1 many1:clauses3 many3:clauses3 many4:clauses4 mean0 mean3
mean8 mood:intention:report-setup mood:intention:skip-step mood:negative:ask mood:negative:cancel-timer
mood:negative:report-not-done mood:negative:running-behind mood:question:cook-away mood:question:help
mood:question:note-guest mood:question:set-timer mood:request:ask mood:request:running-behind
mood:request:start-over mood:statement:cook-away mood:statement:drop-dish mood:statement:quiet
mood:statement:running-behind slots:ask-amount:ingredient slots:ask-plan: slots:report-out:time,what
slots:report-reading:temperature slots:report-trouble:trouble stage::add-dish stage::report-out
stage::report-trouble stage:carve:add-dish stage:hold:affirm stage:hold:quiet stage:hold:repeat
stage:low-roast:deny stage:low-roast:help stage:low-roast:repeat stage:low-roast:report-guests
stage:low-roast:set-serving-time stage:planning:deny stage:planning:shift-serving stage:put-away:ask-next
stage:put-away:report-not-done stage:sear:report-trouble stage:served:ask-amount talk:ask-slice
talk:expecting: talk:frame:0 talk:quiet talk:report-not-done talk:report-thermometer talk:set-serving-time
talk:set-timer text:add-dish:2 text:affirm:4 text:ask:1 text:cancel-timer:0 text:drop-dish:1
text:drop-dish:4 text:emergency:2 text:emergency:3 text:guess:8 text:note-guest:1 text:quiet:1
text:report-oven:0 text:set-doneness:6 text:set-serving-time:2 text:set-timer:1 then:add-dish>cancel-timer
then:add-hands>report-oven then:affirm>deed then:ask-guests>ask-guests then:ask-next>ask-status
then:ask-options>report-reading then:ask-safety>ask-next then:ask-status>ask-time-left then:ask-status>set-timer
then:choose>report-done then:choose>report-trouble then:cook-away>report-reading then:describe-roast>report-setup
then:describe-roast>set-serving-time then:drop-dish>ask-amount then:drop-dish>set-serving-time
then:lack>set-guests then:note-guest>ask-next then:pause>deny then:report-done>cancel-timer
then:report-done>running-behind then:report-guests>ask-temperature then:report-guests>ask-time-left
then:report-not-done>ask-time-left then:report-not-done>report-reading then:report-out>shift-serving
then:report-oven>report-done then:report-reading>ask-options then:report-reading>lack then:report-reading>undo
then:report-setup>report-reading then:report-started>ask-guests then:report-started>report-oven
then:report-thermometer>report-trouble then:running-behind>ask then:running-behind>report-done
then:running-behind>report-oven then:set-doneness>set-timer then:set-serving-time>ask-amount
then:set-serving-time>ask-next then:set-serving-time>ask-shopping then:set-serving-time>correct
then:set-serving-time>note-guest then:set-serving-time>running-behind then:set-timer>report-trouble
then:set-units>describe-roast then:shift-serving>ask-options then:shift-serving>ask-safety
then:shift-serving>ask-temperature then:watch>ask-options then:watch>running-behind twice:ask-guests
without:add-hands:phrase:8 without:ask-amount:phrase:8 without:ask-guests:guess:6 without:ask-how:phrase:3
without:ask-next:guess:6 without:ask-next:phrase:6 without:ask-status:phrase:3 without:ask-time-left:guess:7
without:ask-why:phrase:5 without:ask-why:phrase:8 without:cancel-timer:phrase:8 without:describe-roast:guess:7
without:note-guest without:note-guest:guess:8 without:report-guests without:report-not-done:phrase:5
without:report-out:phrase:5 without:report-reading:phrase:0 without:report-reading:phrase:7
without:report-started:frame:3 without:report-started:frame:6 without:report-trouble:phrase:6
without:set-doneness:phrase:5 without:set-guests:phrase:8 without:set-serving-time:phrase:0
without:set-units:phrase:8 without:skip-step:guess:8
-2 =add-hands =ask-amount:phrase =ask-next:guess =ask-plan:guess =ask-shopping:guess =ask-status:frame
=ask-temperature:guess =cook-away:guess =deny:guess =drop-dish =emergency =lack =pause:frame
=report-not-done:frame =report-out:guess =report-oven:guess =report-setup:frame =report-setup:guess
=running-behind =running-behind:guess =set-serving-time:across =set-timer:guess =set-units:phrase
=skip-step acts:talk8 clause:add-hands:phrase:4 clause:affirm:guess:2 clause:affirm:guess:3
clause:affirm:guess:4 clause:cancel-timer:guess:6 clause:choose:frame:8 clause:cook-away:guess:3
clause:correct:guess:2 clause:deed:phrase:3 clause:describe-roast:phrase:4 clause:drop-dish:frame:4
clause:drop-dish:phrase:5 clause:help:guess:5 clause:lack:guess:2 clause:note-guest:phrase:3
clause:pause:frame:3 clause:quiet:guess:5 clause:quiet:phrase:2 clause:report-oven:guess:6
clause:report-oven:phrase:1 clause:report-reading:phrase:6 clause:report-setup:frame:4 clause:report-setup:frame:5
clause:report-setup:phrase:1 clause:resume:phrase:2 clause:set-timer:frame:6 clause:shift-serving:guess:7
clause:start-over:guess:3 clause:undo:frame:7 cover:ask-amount:3 cover:ask-how:3 cover:ask-plan:3
cover:cancel-timer:0 cover:choose:1 cover:cook-away:3 cover:correct:3 cover:guess:3 cover:quiet:3
cover:report-done:2 cover:report-done:3 cover:report-reading:2 cover:report-setup:3 cover:report-started:0
cover:report-started:1 cover:report-trouble:3 cover:skip-step:1 cover:skip-step:3 empty:acknowledge:4
empty:acknowledge:8 empty:add-hands:4 empty:ask-guests:0 empty:ask-guests:7 empty:ask-status:4
empty:ask-substitute:4 empty:ask-substitute:8 empty:ask-temperature:5 empty:ask-time-left:1
empty:correct:2 empty:deny:6 empty:emergency:2 empty:quiet:4 empty:report-oven:2 empty:report-started:3
empty:resume:1 empty:set-doneness:1 empty:set-guests:0 empty:set-guests:7 empty:set-serving-time:4
empty:set-units:8 empty:start-over:4 empty:start-over:7 empty:talk5 empty:undo:4 expecting:choice:deny
expecting:confirmation:correct expecting:confirmation:lack expecting:confirmation:report-guests
expecting:reading:ask-temperature expecting:roast:describe-roast expecting:step:report-done
first:add-dish first:ask-amount first:ask-how first:ask-status first:lack first:note-guest
first:report-not-done first:skip-step for:add-hands>set-guests for:ask-amount>ask-substitute
for:ask-how>ask-next for:ask-how>ask-safety for:ask-options>ask-next for:ask-temperature>ask-amount
for:ask-time-left>correct for:deny>lack for:lack>report-done for:note-guest>report-not-done
for:pause>running-behind for:repeat>report-oven for:report-not-done>ask-substitute for:report-not-done>correct
for:report-reading>cook-away for:report-reading>report-done for:report-started>report-oven
for:report-thermometer>report-started for:set-method>lack for:shift-serving>report-out gained:across:0
gained:choose gained:emergency gained:frame:3 gained:phrase:2 gained:phrase:7 gained:report-not-done
gained:report-trouble how:less least1 least2:many1 least5 least6:many1 least7 left0 left0:many1
left0:many3 left2:many1 left5:many2 left:numbers0 lost:add-hands lost:ask-status lost:phrase:4
lost:phrase:6 lost:report-not-done many1:long0 many2:clauses2 many2:clauses3 many3 many4:clauses3
many4:clauses5 many4:long3 mean5 mean6 mood:intention:affirm mood:negative:add-dish mood:negative:help
mood:negative:report-setup mood:negative:set-serving-time mood:question:report-reading mood:question:set-guests
mood:statement:add-dish mood:story:set-method mood:story:skip-step slots:ask-guests:about,who
slots:drop-dish:dish slots:emergency:kind slots:lack:thing slots:set-doneness:doneness slots:set-guests:change
stage::repeat stage::report-not-done stage::set-doneness stage::watch stage:hold:undo stage:low-roast:choose
stage:low-roast:report-not-done stage:planning:ask-next stage:preheat:ask-next stage:preheat:ask-safety
stage:preheat:ask-status stage:preheat:lack stage:prep:have stage:prep:note-guest stage:prep:start-over
stage:prep:undo stage:rest:report-oven stage:sear:ask-status stage:sear:ask-why stage:served:report-done
talk:add-dish talk:ask-why talk:best8 talk:phrase:6 talk:repeat talk:report-started talk:stage:carve
talk:stage:put-away text:add-dish:4 text:add-hands:1 text:add-hands:3 text:ask:2 text:correct:3
text:describe-roast:1 text:help:6 text:phrase:2 text:report-not-done:3 text:report-setup:2
text:start-over:2 then:add-dish>ask-shopping then:add-dish>note-guest then:add-dish>set-guests
then:add-hands>ask-substitute then:ask-how>lack then:ask-next>add-dish then:ask-next>ask-shopping
then:ask-shopping>ask-next then:ask-slice>ask-time-left then:ask-status>add-hands then:cancel-timer>report-not-done
then:cook-away>report-started then:describe-roast>ask then:describe-roast>correct then:describe-roast>report-oven
then:drop-dish>correct then:lack>ask-options then:note-guest>ask-shopping then:report-done>drop-dish
then:report-done>report-setup then:report-not-done>add-dish then:report-not-done>correct then:report-oven>report-not-done
then:report-reading>report-setup then:report-reading>report-thermometer then:report-setup>report-not-done
then:report-setup>report-oven then:report-started>ask-temperature then:report-started>watch
then:report-trouble>cook-away then:report-trouble>skip-step then:running-behind>set-serving-time
then:set-guests>report-reading then:set-guests>report-setup then:set-serving-time>report-started
then:set-serving-time>shift-serving then:set-timer>report-setup then:skip-step>report-not-done
then:undo>report-reading then:watch>report-guests without:add-dish:phrase:5 without:ask-next:phrase:5
without:ask-options:across:0 without:ask-options:guess:6 without:ask-status:frame:5 without:cancel-timer:phrase:6
without:cook-away:guess:5 without:lack:phrase:5 without:note-guest:guess:7 without:report-out:phrase:4
without:report-oven:phrase:7 without:report-reading:frame:5 without:report-reading:guess:7
without:report-reading:phrase:2 without:report-setup:guess:6 without:report-setup:phrase:3
without:report-started:phrase:6 without:report-trouble without:set-guests:guess:8 without:set-guests:phrase:0
without:set-serving-time:phrase:3 without:set-serving-time:phrase:4
-1 =add-hands:guess =ask-options:guess =ask-safety =ask-status =ask-status:phrase =ask-time-left
=ask-why =choose:guess =deny:phrase =describe-roast:guess =describe-roast:phrase =report-reading
=report-trouble =set-guests =set-method:phrase =skip-step:guess clause:add-hands:frame:5 clause:add-hands:phrase:1
clause:affirm:guess:7 clause:affirm:phrase:6 clause:ask:phrase:4 clause:cancel-timer:frame:8
clause:cancel-timer:phrase:6 clause:choose:guess:6 clause:correct:guess:3 clause:correct:guess:6
clause:correct:guess:8 clause:deed:frame:1 clause:deed:phrase:7 clause:drop-dish:guess:6 clause:guess:7
clause:have:phrase:1 clause:help:frame:5 clause:help:guess:4 clause:help:guess:6 clause:help:phrase:7
clause:lack:frame:7 clause:lack:guess:5 clause:lack:phrase:7 clause:pause:phrase:1 clause:phrase:4
clause:phrase:6 clause:quiet:guess:7 clause:report-guests:guess:7 clause:report-guests:phrase:4
clause:report-oven:frame:8 clause:report-oven:guess:5 clause:report-reading:guess:3 clause:running-behind:guess:2
clause:set-doneness:phrase:5 clause:set-serving-time:frame:7 clause:shift-serving:guess:4 clause:shift-serving:guess:5
clause:shift-serving:phrase:5 clause:skip-step:guess:6 clause:start-over:phrase:6 clause:start-over:phrase:7
clause:undo:across:0 cover:ask-guests:3 cover:ask-next:2 cover:ask-options:3 cover:ask-shopping:1
cover:ask-shopping:3 cover:ask-temperature:3 cover:pause:1 cover:pause:2 cover:report-guests:3
cover:report-out:3 cover:report-reading:1 cover:report-trouble:1 cover:running-behind:3 cover:set-timer:1
cover:set-units:0 cover:shift-serving:1 empty:add-hands:1 empty:add-hands:6 empty:ask-guests:6
empty:ask-how:4 empty:ask-options:6 empty:ask-shopping:5 empty:ask-slice:4 empty:ask-status:3
empty:ask-substitute:3 empty:ask-temperature:4 empty:ask-why:4 empty:best1 empty:choose:4 empty:courtesy:2
empty:deny:7 empty:describe-roast:8 empty:drop-dish:5 empty:emergency:5 empty:feed-public:8
empty:have:0 empty:have:8 empty:repeat:3 empty:report-done:4 empty:report-oven:4 empty:set-guests:3
empty:set-guests:4 empty:set-timer:3 empty:skip-step:3 empty:talk4 empty:watch:5 expecting:choice:shift-serving
first:ask-plan first:report-oven first:report-reading first:running-behind first:set-serving-time
for:add-dish>report-not-done for:add-hands>running-behind for:ask-amount>set-guests for:ask-next>ask-why
for:ask-options>set-serving-time for:ask-shopping>report-started for:ask-status>ask-next for:ask-time-left>ask-status
for:ask-why>ask-next for:cook-away>running-behind for:correct>set-guests for:lack>report-setup
for:quiet>pause for:report-done>report-not-done for:report-done>report-reading for:report-done>report-trouble
for:report-done>running-behind for:report-not-done>ask-status for:report-not-done>deny for:report-not-done>set-serving-time
for:report-oven>report-trouble for:report-reading>ask-time-left for:report-reading>report-trouble
for:report-setup>report-done for:report-setup>report-reading for:report-started>ask-why for:report-started>shift-serving
for:report-thermometer>report-done for:report-thermometer>report-reading for:report-trouble>report-reading
for:set-doneness>ask-status for:set-serving-time>ask-status for:set-serving-time>skip-step
for:set-timer>cancel-timer for:skip-step>report-done for:undo>correct for:undo>report-reading
for:watch>report-started gained:add-dish gained:ask-options gained:ask-safety gained:ask-time-left
gained:drop-dish gained:frame:2 gained:lack gained:note-guest gained:quiet gained:resume least3:many1
least6 least6:many2 least6:many3 left0:many2 left1:many2 left3:many1 lost2:gained3 lost:feed-public
lost:frame:4 lost:phrase:2 lost:report-setup lost:report-trouble many3:clauses5 many4:long5
mood:intention:report-guests mood:negative:add-hands mood:negative:set-timer mood:statement:deny
mood:statement:describe-roast mood:statement:report-guests mood:statement:skip-step mood:story:feed-public
mood:story:pause mood:story:report-guests slots:ask-how: slots:ask-options: slots:ask-temperature:doneness,when
slots:ask-why:topic slots:cancel-timer:label,minutes slots:describe-roast:cut,weight,weightUnit
slots:describe-roast:frozen,weight,weightUnit slots:report-out: slots:report-setup:tent slots:set-serving-time:time
stage::add-hands stage::ask-guests stage::ask-safety stage::ask-why stage::emergency stage:carve:report-out
stage:hold:ask-status stage:hold:ask-time-left stage:low-roast:ask-shopping stage:low-roast:ask-substitute
stage:low-roast:pause stage:low-roast:report-started stage:low-roast:resume stage:low-roast:running-behind
stage:low-roast:shift-serving stage:preheat:report-guests stage:prep:add-dish stage:prep:ask-next
stage:prep:ask-options stage:prep:set-guests stage:rest:drop-dish stage:rest:emergency stage:rest:shift-serving
stage:sear:ask-next stage:sear:report-setup stage:sear:resume stage:served:report-trouble talk:ask-how
talk:frame:1 talk:frame:4 talk:likely0 talk:likely3 talk:likely8 talk:note-guest talk:phrase:2
talk:phrase:5 talk:report-out text:add-hands:4 text:correct:5 text:describe-roast:3 text:feed-public:3
text:report-guests:2 text:report-guests:3 text:report-not-done:2 text:report-oven:5 text:report-setup:3
text:report-setup:5 text:report-trouble:2 text:report-trouble:3 text:running-behind:2 text:skip-step:7
then:add-dish>set-doneness then:add-dish>undo then:add-hands>ask-next then:add-hands>report-done
then:add-hands>report-guests then:add-hands>report-reading then:ask-guests>set-guests then:ask-next>set-timer
then:ask-plan>add-dish then:ask-shopping>ask-shopping then:ask-shopping>set-serving-time then:ask-status>ask-next
then:ask-time-left>report-started then:choose>report-started then:cook-away>ask-safety then:cook-away>shift-serving
then:deed>deed then:deed>note-guest then:deny>report-reading then:drop-dish>ask-shopping then:drop-dish>set-doneness
then:lack>ask then:lack>ask-how then:lack>report-not-done then:note-guest>ask-status then:report-done>add-dish
then:report-done>set-doneness then:report-not-done>ask then:report-not-done>ask-temperature
then:report-not-done>describe-roast then:report-not-done>lack then:report-reading>set-guests
then:report-setup>add-dish then:resume>deny then:set-doneness>ask-guests then:set-guests>ask-options
then:set-method>report-trouble then:set-serving-time>report-out then:set-timer>correct then:set-units>ask-next
then:shift-serving>ask-substitute then:shift-serving>ask-time-left then:shift-serving>correct
then:shift-serving>deed then:skip-step>ask-substitute then:skip-step>set-method then:start-over>set-serving-time
then:watch>lack twice:add-dish twice:ask-shopping twice:watch without:add-dish:frame:4 without:add-dish:phrase:0
without:add-hands without:ask-temperature without:ask-time-left:frame:3 without:ask-time-left:phrase:6
without:report-oven:frame:6 without:report-reading:phrase:6 without:report-setup:guess:7 without:report-trouble:frame:6
without:set-guests:guess:5 without:set-method without:set-timer without:shift-serving:phrase:7
1 =ask-guests =ask-next =ask-options =ask-plan =ask-temperature =ask-time-left:phrase =help
=lack:guess =pause:guess =quiet =report-guests =report-not-done =report-not-done:guess =report-oven
=report-oven:frame =report-reading:phrase =report-setup =resume =set-timer =set-units =start-over
=undo:across clause:ask:frame:0 clause:cook-away:guess:7 clause:correct:across:0 clause:correct:across:8
clause:deed:frame:7 clause:deed:phrase:5 clause:deed:phrase:6 clause:deny:guess:8 clause:describe-roast:guess:7
clause:forget-kitchen:across:2 clause:have:across:4 clause:note-guest:phrase:6 clause:pause:phrase:2
clause:phrase:7 clause:report-guests:guess:6 clause:report-guests:phrase:2 clause:report-not-done:frame:7
clause:report-oven:frame:2 clause:report-oven:frame:6 clause:report-oven:frame:7 clause:report-setup:phrase:2
clause:report-setup:phrase:6 clause:resume:phrase:8 clause:running-behind:phrase:3 clause:running-behind:phrase:6
clause:set-guests:frame:3 clause:set-method:frame:5 clause:set-method:phrase:8 clause:set-serving-time:frame:8
clause:set-timer:frame:2 clause:set-timer:guess:3 clause:set-units:frame:4 clause:shift-serving:guess:6
clause:start-over:guess:6 clause:watch:across:7 clause:watch:frame:8 clause:watch:guess:5 cover:ask-next:3
cover:ask-safety:0 cover:ask-time-left:3 cover:cancel-timer:3 cover:deny:3 cover:describe-roast:3
cover:drop-dish:2 cover:drop-dish:3 cover:help:3 cover:pause:3 cover:phrase:3 cover:repeat:0
cover:report-setup:0 cover:set-timer:3 cover:set-units:2 cover:start-over:3 empty:add-hands:2
empty:ask-next:1 empty:ask-status:2 empty:ask-substitute:2 empty:ask-substitute:7 empty:ask-why:3
empty:best7 empty:cook-away:5 empty:correct:5 empty:courtesy:4 empty:describe-roast:3 empty:feed-public:0
empty:help:5 empty:help:7 empty:lack:2 empty:lack:4 empty:lack:5 empty:lack:7 empty:pause:2
empty:report-not-done:2 empty:report-not-done:5 empty:report-not-done:6 empty:report-out:0
empty:report-reading:1 empty:report-started:1 empty:report-started:4 empty:report-started:6
empty:report-trouble:7 empty:resume:3 empty:running-behind:2 empty:running-behind:6 empty:set-method:2
empty:set-method:8 empty:set-serving-time:5 empty:shift-serving:0 empty:shift-serving:8 empty:talk7
empty:watch:7 expecting:confirmation:quiet expecting:step:report-oven first:ask-slice first:help
first:start-over first:undo for:add-dish>ask-status for:add-dish>set-serving-time for:add-hands>drop-dish
for:ask-guests>note-guest for:ask-status>ask-options for:ask-status>ask-safety for:ask-status>ask-temperature
for:ask-temperature>set-doneness for:drop-dish>report-out for:drop-dish>report-started for:lack>drop-dish
for:pause>report-not-done for:quiet>cancel-timer for:repeat>skip-step for:report-not-done>note-guest
for:report-out>report-reading for:report-out>report-setup for:report-oven>report-setup for:report-reading>shift-serving
for:report-started>ask-next for:running-behind>report-done for:running-behind>set-guests for:set-guests>report-reading
for:set-guests>shift-serving for:set-timer>report-reading for:start-over>ask-plan gained:ask-status
gained:correct gained:have gained:phrase:4 gained:repeat gained:report-setup gained:report-started
least1:many1 least5:many1 left1:many3 left4:many3 left5:many3 lost:ask-substitute lost:guess:6
lost:set-method many0:clauses1 many2:clauses1 many3:long3 mood:question:ask mood:request:choose
mood:request:watch mood:statement:choose mood:statement:pause mood:statement:set-timer mood:statement:shift-serving
mood:statement:undo mood:statement:watch mood:story:set-guests slots:ask-next: slots:correct:minutes
slots:correct:temperature,was slots:help: slots:quiet: slots:report-oven:minutesAgo,temperature
slots:report-setup:fan,oven slots:report-setup:rack slots:report-started:step,which slots:report-trouble:minutes,step,trouble
slots:resume: slots:start-over: stage::deny stage::pause stage::set-guests stage::set-timer
stage:carve:quiet stage:carve:report-trouble stage:carve:running-behind stage:hold:ask-next
stage:hold:ask-safety stage:hold:report-trouble stage:low-roast:ask-next stage:low-roast:ask-temperature
stage:low-roast:ask-time-left stage:low-roast:note-guest stage:low-roast:report-reading stage:low-roast:start-over
stage:planning:set-serving-time stage:preheat:deny stage:preheat:report-done stage:prep:add-hands
stage:prep:ask-why stage:rest:correct stage:rest:report-done stage:sear:ask-how stage:served:quiet
talk:ask-substitute talk:courtesy talk:guess:5 talk:guess:8 talk:likely2 talk:phrase:8 talk:report-oven
text:add-dish:5 text:ask:3 text:cook-away:5 text:deny:1 text:deny:6 text:forget-kitchen:2 text:frame:1
text:frame:5 text:have:3 text:lack:4 text:repeat:7 text:report-oven:1 text:report-reading:3
text:report-trouble:7 text:running-behind:3 text:set-guests:2 text:set-serving-time:1 text:set-units:3
text:set-units:5 text:undo:4 then:add-dish>ask then:add-dish>report-trouble then:add-hands>add-dish
then:add-hands>report-out then:add-hands>set-serving-time then:ask-how>report-oven then:ask-temperature>set-serving-time
then:ask-why>ask-time-left then:ask-why>report-reading then:cancel-timer>ask-temperature then:cook-away>deed
then:deed>describe-roast then:deed>running-behind then:describe-roast>lack then:have>deed then:lack>ask-shopping
then:lack>describe-roast then:lack>report-setup then:lack>set-doneness then:note-guest>report-guests
then:report-done>ask-how then:report-guests>ask-next then:report-guests>report-reading then:report-guests>report-trouble
then:report-not-done>cancel-timer then:report-out>report-trouble then:report-oven>add-dish
then:report-oven>ask-next then:report-oven>running-behind then:report-reading>cancel-timer
then:report-setup>cook-away then:report-setup>running-behind then:report-started>ask-why then:report-trouble>set-guests
then:set-doneness>describe-roast then:set-doneness>report-reading then:set-guests>ask-how then:set-guests>ask-plan
then:set-guests>lack then:set-units>ask-temperature then:set-units>report-trouble then:skip-step>note-guest
then:skip-step>report-started without:ask-how:phrase:6 without:ask-status:phrase:2 without:cook-away:guess:7
without:correct:guess:5 without:drop-dish:guess:8 without:emergency without:report-done:guess:7
without:report-guests:guess:5 without:report-guests:phrase:4 without:report-out:phrase:8 without:report-setup:phrase:7
without:running-behind without:running-behind:phrase:6 without:set-method:phrase:8 without:set-units
without:shift-serving:guess:7 without:watch:guess:5
2 =ask-amount =ask-next:frame =ask-options:frame =ask-status:guess =ask-substitute:phrase =cancel-timer:guess
=have:across =have:phrase =pause =quiet:frame =repeat =report-done:phrase =report-out:frame
=report-oven:phrase =report-reading:frame =report-trouble:frame =resume:guess =resume:phrase
=set-method =set-method:frame =set-units:guess =shift-serving =shift-serving:frame =undo:guess
acts:talk0 clause:across:5 clause:add-hands:phrase:3 clause:affirm:guess:6 clause:ask:across:2
clause:ask:across:6 clause:ask:frame:1 clause:ask:frame:2 clause:ask:phrase:7 clause:cancel-timer:frame:7
clause:cook-away:guess:4 clause:cook-away:phrase:3 clause:correct:across:4 clause:deed:frame:6
clause:deed:phrase:0 clause:deed:phrase:1 clause:deed:phrase:2 clause:deny:frame:8 clause:describe-roast:phrase:1
clause:drop-dish:frame:1 clause:lack:guess:7 clause:lack:phrase:2 clause:pause:frame:1 clause:report-not-done:guess:7
clause:report-oven:guess:4 clause:report-reading:frame:7 clause:report-reading:guess:6 clause:report-reading:phrase:7
clause:report-setup:guess:2 clause:resume:frame:4 clause:resume:guess:8 clause:running-behind:guess:3
clause:set-guests:across:3 clause:set-guests:guess:4 clause:set-method:guess:8 clause:set-method:phrase:4
clause:set-serving-time:guess:5 clause:set-timer:phrase:3 clause:set-timer:phrase:4 clause:set-units:phrase:7
cover:add-hands:3 cover:ask-safety:3 cover:ask-substitute:1 cover:have:3 cover:repeat:3 cover:report-guests:1
cover:report-not-done:3 cover:report-reading:3 cover:running-behind:2 cover:set-guests:3 cover:set-serving-time:0
cover:shift-serving:3 cover:undo:3 cover:watch:3 empty:ask-plan:5 empty:ask-time-left:3 empty:deny:0
empty:describe-roast:6 empty:forget-kitchen:4 empty:help:4 empty:note-guest:4 empty:note-guest:5
empty:pause:3 empty:repeat:8 empty:report-guests:1 empty:report-guests:2 empty:report-trouble:1
empty:report-trouble:2 empty:set-guests:2 empty:set-serving-time:3 empty:set-timer:0 empty:set-timer:2
empty:shift-serving:4 empty:start-over:8 empty:undo:2 expecting:confirmation:pause expecting:confirmation:repeat
expecting:reading:ask-time-left first:ask-options first:ask-shopping first:pause first:repeat
first:report-guests first:resume for:add-dish>ask-shopping for:add-hands>report-trouble for:ask-how>ask-temperature
for:ask-how>help for:ask-options>ask-why for:ask-status>ask-how for:ask-status>ask-time-left
for:ask-time-left>ask-temperature for:ask-why>ask-time-left for:choose>set-guests for:lack>skip-step
for:note-guest>report-reading for:note-guest>set-doneness for:pause>ask-next for:repeat>ask-plan
for:repeat>report-started for:report-done>ask-plan for:report-done>set-timer for:report-guests>set-serving-time
for:report-not-done>quiet for:report-oven>ask-next for:report-started>add-dish for:report-started>lack
for:report-started>report-reading for:report-started>skip-step for:report-trouble>report-started
for:report-trouble>skip-step for:set-timer>set-serving-time for:set-units>ask-temperature gained:ask-substitute
gained:guess:5 gained:guess:7 least5:many3 lost0:gained0 lost1:gained2 lost:frame:1 lost:guess:5
lost:phrase:1 many0:clauses2 many0:long0 many0:long3 many2:long3 many3:long4 mood:intention:choose
mood:intention:correct mood:negative:report-trouble mood:statement:affirm mood:statement:correct
mood:statement:emergency mood:statement:have mood:statement:lack mood:statement:note-guest
mood:statement:set-units mood:story:report-trouble mood:story:resume slots:ask-amount:guests
slots:correct:temperature slots:note-guest:need,value,who slots:pause: slots:repeat: slots:report-setup:pan,rack
slots:report-trouble:step,trouble slots:set-guests:count slots:set-method:method slots:shift-serving:minutes
stage::drop-dish stage::report-setup stage:carve:affirm stage:carve:ask-substitute stage:carve:ask-temperature
stage:hold:deny stage:low-roast:ask-amount stage:low-roast:cook-away stage:low-roast:set-guests
stage:planning:ask-temperature stage:planning:correct stage:planning:report-setup stage:planning:set-units
stage:preheat:ask-how stage:preheat:choose stage:preheat:cook-away stage:preheat:correct stage:preheat:pause
stage:preheat:set-guests stage:prep:ask-amount stage:prep:ask-plan stage:prep:deny stage:prep:describe-roast
stage:prep:lack stage:prep:report-reading stage:prep:report-setup stage:rest:ask-guests stage:rest:lack
stage:rest:report-trouble stage:sear:ask-substitute stage:sear:ask-temperature stage:sear:cook-away
talk:ask-amount talk:ask-safety talk:best0 talk:best5 talk:choose talk:feed-public talk:long0
talk:long3 talk:set-guests talk:shift-serving text:across:5 text:cook-away:2 text:cook-away:7
text:correct:1 text:describe-roast:4 text:feed-public:8 text:frame:8 text:guess:3 text:phrase:3
text:repeat:8 text:report-reading:2 text:set-guests:1 text:set-method:0 text:set-timer:3 text:shift-serving:3
text:skip-step:1 text:skip-step:8 then:add-dish>ask-guests then:affirm>ask then:ask-how>report-guests
then:ask-how>report-trouble then:ask-safety>set-guests then:ask-time-left>watch then:ask>have
then:cancel-timer>report-out then:cancel-timer>report-trouble then:cancel-timer>shift-serving
then:cook-away>ask-amount then:cook-away>report-not-done then:cook-away>set-guests then:cook-away>watch
then:deed>report-guests then:deed>skip-step then:describe-roast>ask-plan then:describe-roast>ask-why
then:lack>add-hands then:lack>cook-away then:lack>running-behind then:report-done>describe-roast
then:report-done>report-reading then:report-guests>ask then:report-guests>ask-how then:report-guests>ask-status
then:report-not-done>ask-amount then:report-not-done>ask-next then:report-not-done>report-started
then:report-out>lack then:report-oven>report-out then:report-reading>deed then:report-setup>ask
then:report-setup>ask-status then:report-setup>deed then:report-started>report-done then:report-trouble>ask-amount
then:report-trouble>ask-how then:running-behind>ask-temperature then:running-behind>deed then:set-guests>ask-substitute
then:set-guests>deed then:set-method>report-done then:set-timer>ask-time-left then:set-timer>deed
then:set-units>ask-how without:ask-guests:guess:7 without:ask-substitute:guess:6 without:ask-substitute:guess:7
without:ask-time-left:phrase:8 without:choose:phrase:8 without:cook-away:guess:6 without:cook-away:phrase:3
without:deny without:note-guest:guess:6 without:quiet without:report-not-done:frame:0 without:report-out:guess:5
without:report-trouble:phrase:1 without:set-guests:phrase:2 without:undo without:undo:across:0
3 =ask-amount:guess =ask-how:frame =ask-plan:phrase =ask-safety:guess =cancel-timer =cook-away:phrase
=correct:across =have =help:guess =help:phrase =report-guests:across =report-not-done:phrase
=report-setup:phrase =running-behind:phrase =watch:frame acts:talk3 acts:talk4 breath6:false
clause:add-dish:frame:6 clause:add-dish:frame:7 clause:add-dish:phrase:8 clause:add-hands:across:8
clause:add-hands:frame:7 clause:ask:across:0 clause:ask:guess:4 clause:ask:phrase:6 clause:ask:phrase:8
clause:deny:phrase:3 clause:describe-roast:guess:2 clause:drop-dish:frame:6 clause:emergency:guess:4
clause:pause:frame:8 clause:quiet:frame:2 clause:quiet:phrase:4 clause:repeat:frame:3 clause:repeat:frame:4
clause:repeat:guess:4 clause:repeat:guess:7 clause:report-guests:frame:2 clause:report-guests:phrase:6
clause:report-not-done:phrase:7 clause:report-oven:phrase:4 clause:report-setup:frame:3 clause:report-setup:guess:7
clause:report-trouble:guess:2 clause:resume:frame:5 clause:running-behind:guess:5 clause:set-doneness:guess:6
clause:set-doneness:guess:8 clause:set-guests:frame:5 clause:set-guests:phrase:3 clause:set-serving-time:phrase:6
clause:set-timer:phrase:5 clause:shift-serving:phrase:7 clause:undo:frame:8 clause:watch:guess:7
cover:add-dish:2 cover:drop-dish:1 cover:frame:2 cover:lack:3 cover:note-guest:3 cover:report-not-done:2
cover:running-behind:0 empty:acknowledge:5 empty:ask-guests:4 empty:ask-plan:7 empty:ask-safety:2
empty:ask-status:6 empty:ask-time-left:5 empty:deny:5 empty:feed-public:7 empty:repeat:1 empty:repeat:2
empty:report-guests:5 empty:report-oven:8 empty:report-trouble:3 empty:report-trouble:4 empty:set-doneness:2
empty:set-method:3 empty:set-method:6 empty:set-serving-time:7 empty:set-timer:5 empty:shift-serving:7
empty:skip-step:0 empty:skip-step:2 empty:skip-step:7 empty:talk3 expecting:roast:ask-amount
expecting:roast:lack first:affirm first:report-setup first:set-units for:add-hands>ask-next
for:ask-how>ask-plan for:ask-next>ask-how for:ask-options>ask-substitute for:ask-options>shift-serving
for:ask-plan>ask-shopping for:ask-safety>ask-time-left for:ask-shopping>help for:ask-substitute>ask-amount
for:ask-substitute>ask-options for:ask-substitute>skip-step for:ask-temperature>report-out
for:correct>shift-serving for:deny>affirm for:deny>correct for:repeat>quiet for:repeat>report-done
for:report-done>ask-time-left for:report-out>ask-safety for:report-out>report-done for:report-reading>correct
for:report-reading>describe-roast for:report-reading>set-serving-time for:report-started>add-hands
for:report-trouble>lack for:running-behind>ask-time-left for:set-doneness>correct for:set-serving-time>report-started
for:watch>report-oven gained:ask-next gained:guess:6 lost2:gained2 lost:ask-next lost:report-done
lost:report-started many0:long2 many1:long6 mood:negative:deed mood:negative:skip-step mood:negative:watch
mood:request:cancel-timer mood:request:help mood:request:pause mood:statement:help mood:statement:report-oven
mood:statement:report-setup mood:statement:set-serving-time mood:story:help mood:story:repeat
slots:ask-temperature:when slots:describe-roast:boneless,prepared slots:describe-roast:cut,prepared
slots:have:thing slots:report-done:step,time slots:report-reading:temperature,where slots:report-setup:oven
slots:report-setup:pan,rack,shelf slots:watch:temperature stage::choose stage::cook-away stage:hold:running-behind
stage:hold:skip-step stage:low-roast:add-hands stage:low-roast:correct stage:low-roast:report-oven
stage:planning:ask-shopping stage:planning:ask-why stage:planning:set-guests stage:prep:report-not-done
stage:sear:deny stage:sear:pause stage:sear:report-out stage:sear:set-method stage:sear:set-timer
stage:served:ask-how talk:ask-time-left talk:expecting:choice talk:likely1 talk:long2 text:add-hands:7
text:ask:5 text:correct:8 text:deny:4 text:describe-roast:2 text:frame:2 text:frame:6 text:note-guest:2
text:phrase:6 text:report-guests:4 text:running-behind:7 text:set-doneness:2 text:set-guests:8
text:set-serving-time:8 text:watch:1 then:ask-how>ask-safety then:ask-substitute>have then:cancel-timer>ask-plan
then:cancel-timer>report-guests then:cook-away>add-dish then:cook-away>ask then:deed>cancel-timer
then:deed>report-setup then:drop-dish>ask then:drop-dish>cancel-timer then:lack>ask-substitute
then:pause>resume then:report-done>report-guests then:report-guests>ask-options then:report-oven>ask
then:report-oven>set-guests then:report-reading>report-guests then:report-reading>watch then:report-setup>add-hands
then:report-setup>have then:report-started>ask-time-left then:report-started>skip-step then:report-trouble>add-dish
then:report-trouble>ask then:running-behind>describe-roast then:running-behind>drop-dish then:running-behind>set-timer
then:set-serving-time>ask-how then:set-timer>forget-kitchen then:set-timer>report-reading then:shift-serving>ask-guests
then:shift-serving>ask-how then:shift-serving>drop-dish then:shift-serving>note-guest then:undo>ask
then:watch>ask-next twice:set-serving-time without:add-dish:phrase:3 without:add-hands:phrase:5
without:ask-substitute:guess:8 without:ask-temperature:phrase:6 without:ask-time-left:phrase:2
without:note-guest:phrase:4 without:report-trouble:guess:7 without:resume without:set-guests
without:set-timer:guess:6 without:skip-step:guess:7
4 =affirm:phrase =ask-why:frame =ask-why:guess =drop-dish:guess =note-guest:phrase =report-guests:frame
=skip-step:phrase =start-over:guess =watch breath4:true clause:ask:frame:6 clause:ask:phrase:3
clause:cancel-timer:guess:5 clause:deny:guess:5 clause:forget-kitchen:across:4 clause:forget-kitchen:across:7
clause:frame:7 clause:lack:frame:5 clause:lack:phrase:5 clause:note-guest:frame:5 clause:note-guest:phrase:4
clause:phrase:8 clause:quiet:phrase:3 clause:quiet:phrase:8 clause:report-not-done:frame:5
clause:report-oven:guess:8 clause:report-oven:phrase:8 clause:report-reading:frame:2 clause:report-reading:phrase:5
clause:report-setup:guess:8 clause:report-thermometer:across:6 clause:report-trouble:phrase:6
clause:report-trouble:phrase:7 clause:report-trouble:phrase:8 clause:running-behind:frame:8
clause:set-doneness:phrase:2 clause:set-doneness:phrase:8 clause:set-serving-time:frame:6 clause:set-timer:guess:6
clause:set-units:guess:6 clause:set-units:guess:8 clause:skip-step:guess:8 clause:start-over:frame:3
clause:watch:across:1 cover:ask-next:1 cover:choose:3 cover:report-out:1 cover:report-trouble:2
cover:set-timer:0 cover:watch:2 empty:affirm:4 empty:ask-status:8 empty:best0 empty:best2 empty:cook-away:1
empty:cook-away:6 empty:courtesy:8 empty:describe-roast:5 empty:drop-dish:2 empty:feed-public:6
empty:pause:5 empty:pause:8 empty:quiet:0 empty:repeat:6 empty:report-not-done:4 empty:report-setup:0
empty:report-trouble:0 empty:report-trouble:5 empty:set-serving-time:6 empty:set-units:7 empty:undo:5
empty:watch:3 expecting:confirmation:ask-time-left expecting:confirmation:set-serving-time
expecting:step:add-hands expecting:step:report-out first:ask-guests first:deny first:report-out
first:shift-serving for:add-hands>ask-status for:ask-guests>add-dish for:ask-next>ask-options
for:ask-options>ask-temperature for:ask-plan>ask-how for:ask-time-left>lack for:describe-roast>ask-amount
for:describe-roast>ask-plan for:note-guest>lack for:repeat>ask-temperature for:report-not-done>drop-dish
for:report-not-done>report-reading for:report-not-done>report-trouble for:report-out>set-timer
for:report-oven>running-behind for:report-reading>set-doneness for:report-trouble>ask-safety
for:report-trouble>ask-substitute for:set-guests>report-started gained:ask-shopping least7:many2
lost:add-dish lost:correct many0 many0:long1 mood:negative:deny mood:question:report-guests
mood:statement:deed mood:statement:report-not-done mood:statement:start-over mood:story:correct
mood:story:drop-dish slots:cook-away:minutes slots:describe-roast:boneless,cut,weight,weightUnit
slots:report-setup:fan,rack slots:report-trouble:time,trouble slots:skip-step:step stage::ask-shopping
stage:hold:ask-temperature stage:hold:pause stage:low-roast:quiet stage:planning:ask-substitute
stage:planning:note-guest stage:planning:set-method stage:preheat:quiet stage:prep:ask-time-left
stage:prep:report-done stage:prep:set-method stage:sear:report-not-done stage:sear:skip-step
stage:served:report-oven talk talk:expecting:roast talk:frame:6 talk:guess:6 talk:long1 talk:report-reading
talk:set-doneness talk:stage: text:cook-away:3 text:correct:6 text:deed:7 text:drop-dish:8
text:forget-kitchen:4 text:forget-kitchen:7 text:guess:5 text:lack:3 text:lack:6 text:note-guest:4
text:phrase:4 text:phrase:5 text:phrase:7 text:phrase:8 text:report-not-done:4 text:report-not-done:5
text:report-oven:8 text:report-thermometer:6 text:set-serving-time:4 text:skip-step:3 text:undo:3
then:ask-how>ask-why then:ask-how>report-not-done then:ask-how>report-reading then:ask-why>ask-safety
then:choose>report-oven then:deed>ask then:deed>report-reading then:deed>shift-serving then:deny>ask
then:describe-roast>ask-how then:describe-roast>set-units then:drop-dish>report-guests then:lack>report-started
then:lack>set-timer then:note-guest>deed then:note-guest>shift-serving then:repeat>pause then:report-done>ask-time-left
then:report-done>report-started then:report-guests>add-hands then:report-not-done>set-timer
then:report-out>ask-next then:report-out>cancel-timer then:report-reading>add-dish then:report-reading>report-done
then:report-setup>describe-roast then:report-setup>set-serving-time then:report-started>add-hands
then:report-started>lack then:report-thermometer>report-reading then:report-trouble>cancel-timer
then:report-trouble>watch then:set-doneness>report-guests then:set-doneness>report-setup then:set-guests>ask-amount
then:set-guests>quiet then:set-guests>report-not-done then:set-guests>shift-serving then:set-method>report-reading
then:set-method>report-started then:set-serving-time>cook-away then:set-serving-time>describe-roast
then:set-timer>add-hands then:set-timer>ask-amount then:set-timer>ask-options then:set-timer>ask-temperature
then:set-timer>report-done then:set-units>report-oven then:shift-serving>add-dish then:skip-step>ask
then:skip-step>lack then:watch>ask-slice then:watch>report-trouble then:watch>shift-serving
twice:report-started without:add-dish:phrase:1 without:ask-safety:guess:6 without:ask-substitute
without:ask-time-left:frame:4 without:cook-away without:cook-away:phrase:6 without:correct:guess:7
without:report-done:frame:8 without:report-guests:guess:7 without:report-not-done:phrase:4
without:report-out without:report-out:phrase:7 without:report-setup without:report-started:phrase:7
without:report-trouble:guess:6 without:running-behind:guess:6 without:set-doneness:phrase:4
without:set-method:phrase:5 without:set-timer:guess:8 without:set-timer:phrase:4
5 =ask-options:phrase =set-doneness:guess =set-guests:phrase =start-over:phrase =watch:across
acts:talk7 clause:across:3 clause:ask:guess:7 clause:cook-away:phrase:0 clause:deed:guess:7
clause:deny:phrase:8 clause:drop-dish:guess:4 clause:frame:8 clause:guess:8 clause:have:phrase:7
clause:note-guest:guess:7 clause:pause:guess:4 clause:quiet:frame:3 clause:repeat:guess:8 clause:report-not-done:guess:5
clause:report-oven:phrase:2 clause:report-reading:frame:4 clause:report-thermometer:across:1
clause:report-thermometer:across:2 clause:report-thermometer:across:4 clause:report-thermometer:across:5
clause:report-thermometer:across:7 clause:report-trouble:frame:3 clause:running-behind:frame:7
clause:set-guests:frame:7 clause:set-guests:guess:6 clause:set-guests:phrase:2 clause:set-guests:phrase:6
clause:set-guests:phrase:7 clause:set-serving-time:phrase:1 clause:watch:across:5 clause:watch:across:8
clause:watch:frame:3 cover:describe-roast:2 cover:set-guests:0 cover:set-serving-time:2 cover:start-over:0
empty:acknowledge:2 empty:ask-plan:3 empty:ask-shopping:3 empty:ask-temperature:2 empty:ask-why:7
empty:choose:1 empty:forget-kitchen:3 empty:help:2 empty:lack:1 empty:note-guest:0 empty:pause:0
empty:report-not-done:7 empty:report-out:4 empty:report-setup:5 empty:resume:4 empty:set-method:7
empty:set-serving-time:1 empty:set-timer:4 empty:set-units:5 empty:set-units:6 empty:start-over:2
empty:watch:6 expecting:reading:report-trouble first:ask-safety for:add-hands>report-out for:ask-amount>report-started
for:ask-guests>ask-temperature for:ask-plan>start-over for:ask-status>ask-substitute for:ask-substitute>ask-next
for:ask-temperature>ask-safety for:report-done>ask-substitute for:report-done>lack for:report-guests>report-done
for:report-not-done>ask-how for:report-reading>watch for:report-started>ask-substitute for:report-started>report-not-done
for:report-trouble>set-guests for:set-serving-time>ask-time-left gained:frame:7 how:none lost:guess:4
many0:clauses3 many0:clauses4 many4:clauses2 mood:intention:note-guest mood:negative:describe-roast
mood:question:skip-step mood:request:note-guest mood:request:report-trouble mood:statement:add-hands
mood:story:add-dish mood:story:quiet mood:story:shift-serving mood:story:undo slots:describe-roast:boneless,frozen,prepared,weight,weightUnit
slots:report-oven:minutesAgo,state slots:report-oven:temperature stage::affirm stage::ask-options
stage::cancel-timer stage::lack stage::set-serving-time stage:hold:report-reading stage:hold:resume
stage:low-roast:ask-why stage:low-roast:emergency stage:low-roast:report-trouble stage:low-roast:watch
stage:planning:ask-plan stage:planning:feed-public stage:planning:forget-kitchen stage:planning:have
stage:planning:report-thermometer stage:planning:start-over stage:preheat:drop-dish stage:preheat:report-oven
stage:prep:ask-how stage:prep:drop-dish stage:prep:skip-step stage:put-away:ask-how stage:rest:report-not-done
stage:sear:ask-time-left stage:served:ask-next stage:served:ask-temperature stage:served:report-not-done
talk:best6 talk:expecting:serving-time talk:frame:2 text:across:3 text:affirm:5 text:affirm:7
text:deed:3 text:frame:3 text:lack:5 text:repeat:3 text:report-not-done:6 text:report-thermometer:1
text:report-thermometer:2 text:report-thermometer:4 text:report-thermometer:5 text:report-thermometer:7
text:set-doneness:0 text:set-timer:4 text:shift-serving:5 then:add-dish>drop-dish then:add-dish>report-setup
then:add-hands>correct then:affirm>set-guests then:ask-next>ask-guests then:ask-shopping>have
then:ask-time-left>ask-plan then:ask-time-left>ask-temperature then:choose>add-dish then:choose>ask
then:cook-away>ask-temperature then:cook-away>report-trouble then:deed>add-hands then:deed>set-guests
then:deed>watch then:emergency>ask then:note-guest>report-reading then:note-guest>report-setup
then:note-guest>set-doneness then:report-done>add-hands then:report-done>note-guest then:report-guests>report-out
then:report-out>ask-time-left then:report-out>set-guests then:report-oven>ask-options then:report-reading>quiet
then:report-started>report-started then:report-started>undo then:report-trouble>ask-safety
then:running-behind>cancel-timer then:set-doneness>report-done then:set-guests>ask then:set-guests>ask-status
then:set-guests>drop-dish then:set-guests>report-done then:set-serving-time>ask then:set-serving-time>ask-substitute
then:set-serving-time>report-trouble then:set-timer>cancel-timer then:set-timer>set-timer then:set-units>ask
then:set-units>set-doneness twice:report-done twice:set-timer without:ask-next:phrase:4 without:ask-temperature:guess:7
without:ask-time-left without:report-done:frame:7 without:report-out:guess:6 without:report-oven:guess:5
without:report-setup:phrase:6 without:set-method:guess:8 without:set-serving-time:phrase:2
without:watch:guess:7
6 =lack:frame =repeat:guess =report-out:phrase =shift-serving:phrase clause:across:2 clause:across:6
clause:ask:guess:8 clause:choose:frame:7 clause:choose:guess:8 clause:correct:across:3 clause:describe-roast:guess:3
clause:describe-roast:phrase:6 clause:have:phrase:5 clause:note-guest:frame:3 clause:quiet:guess:6
clause:quiet:guess:8 clause:report-guests:frame:7 clause:report-not-done:phrase:3 clause:report-setup:guess:5
clause:report-setup:phrase:0 clause:report-thermometer:across:8 clause:report-trouble:frame:0
clause:report-trouble:frame:1 clause:running-behind:phrase:7 clause:set-doneness:across:0 clause:set-timer:frame:3
clause:set-timer:frame:5 clause:shift-serving:frame:6 clause:skip-step:frame:2 clause:skip-step:frame:4
clause:skip-step:frame:7 clause:start-over:frame:4 clause:undo:guess:3 clause:undo:guess:7
clause:watch:guess:4 cover:ask-amount:2 cover:ask-status:0 cover:report-oven:3 cover:report-started:2
cover:set-method:1 cover:set-serving-time:1 cover:skip-step:2 empty:acknowledge:3 empty:add-hands:0
empty:ask-amount:3 empty:ask-options:3 empty:ask-safety:0 empty:ask-shopping:6 empty:ask-slice:6
empty:ask-temperature:8 empty:drop-dish:3 empty:feed-public:2 empty:quiet:5 empty:quiet:6 empty:report-not-done:3
empty:report-oven:1 empty:report-setup:7 empty:report-started:2 empty:set-doneness:5 empty:start-over:5
empty:talk8 expecting:choice:ask-plan expecting:roast:set-guests expecting:step:report-setup
first:correct first:forget-kitchen first:report-trouble first:set-method for:add-dish>ask-how
for:add-dish>note-guest for:add-hands>report-done for:ask-how>ask-why for:ask-how>report-trouble
for:ask-next>report-started for:ask-time-left>ask-options for:ask-time-left>report-oven for:describe-roast>correct
for:help>ask-plan for:help>ask-shopping for:note-guest>ask-options for:repeat>ask-status for:report-done>describe-roast
for:report-not-done>report-setup for:report-reading>ask-safety for:set-guests>set-timer for:set-method>skip-step
for:skip-step>running-behind helper8 how:stop lost2:gained1 many2:long6 mood:intention:pause
mood:intention:set-serving-time mood:negative:drop-dish mood:question:shift-serving mood:request:describe-roast
mood:request:shift-serving mood:statement:cancel-timer mood:statement:set-method mood:story:affirm
mood:story:describe-roast slots:correct:date slots:describe-roast:boneless,frozen,weight,weightUnit
slots:describe-roast:boneless,weight,weightUnit slots:report-oven:temperature,unit slots:report-reading:temperature,thermometer,unit,where
slots:report-started:minutesAgo,step slots:running-behind:minutes slots:set-units:temperature
stage::describe-roast stage::help stage:carve:emergency stage:carve:note-guest stage:hold:report-out
stage:low-roast:ask-plan stage:low-roast:ask-status stage:low-roast:cancel-timer stage:planning:ask-amount
stage:prep:ask-temperature stage:prep:cook-away stage:prep:help stage:prep:report-thermometer
stage:prep:running-behind stage:prep:set-timer stage:rest:report-setup stage:sear:ask-safety
stage:sear:set-guests talk:expecting:doneness text:across:2 text:across:6 text:ask:4 text:ask:6
text:cancel-timer:1 text:cancel-timer:4 text:deed:4 text:deed:6 text:feed-public:6 text:guess:6
text:quiet:2 text:report-reading:4 text:report-thermometer:8 text:resume:4 text:set-guests:3
text:set-guests:7 text:set-method:4 text:set-units:1 text:skip-step:4 then:add-hands>report-setup
then:add-hands>skip-step then:ask-amount>ask-temperature then:ask-next>ask-time-left then:ask-shopping>ask-plan
then:ask-temperature>set-guests then:ask-time-left>describe-roast then:cancel-timer>report-reading
then:cook-away>correct then:correct>report-done then:deed>quiet then:drop-dish>add-hands then:drop-dish>lack
then:have>lack then:lack>ask-temperature then:note-guest>ask-substitute then:note-guest>cook-away
then:report-done>cook-away then:report-done>lack then:report-done>report-done then:report-guests>report-oven
then:report-guests>report-setup then:report-not-done>cook-away then:report-not-done>running-behind
then:report-out>report-out then:report-out>report-oven then:report-oven>ask-plan then:report-reading>report-not-done
then:report-setup>ask-plan then:report-started>ask-next then:report-started>report-guests then:report-trouble>undo
then:set-guests>skip-step then:set-method>deed then:set-timer>note-guest then:set-units>ask-amount
then:set-units>set-guests then:shift-serving>resume then:skip-step>add-hands twice:report-out
without:ask-how:frame:6 without:ask-safety:phrase:3 without:ask-status:phrase:5 without:report-not-done:guess:6
without:report-oven:frame:8 without:report-reading:guess:6 without:report-setup:phrase:4 without:resume:phrase:4
without:running-behind:phrase:4 without:set-units:guess:6
7 =ask-how:phrase =deny:frame =drop-dish:frame =report-started:frame =resume:across =set-units:frame
acts:talk6 clause:add-hands:phrase:8 clause:affirm:phrase:7 clause:choose:guess:4 clause:cook-away:guess:6
clause:correct:across:1 clause:deed:across:2 clause:deed:phrase:4 clause:describe-roast:phrase:8
clause:drop-dish:phrase:4 clause:forget-kitchen:across:8 clause:have:across:7 clause:pause:frame:5
clause:pause:guess:7 clause:pause:guess:8 clause:quiet:phrase:1 clause:report-guests:frame:4
clause:report-guests:phrase:8 clause:report-not-done:frame:4 clause:report-reading:guess:8
clause:report-trouble:guess:8 clause:report-trouble:phrase:2 clause:resume:phrase:5 clause:resume:phrase:6
clause:resume:phrase:7 clause:running-behind:phrase:5 clause:set-doneness:phrase:0 clause:set-doneness:phrase:7
clause:set-method:frame:6 clause:set-method:frame:8 clause:set-method:phrase:7 clause:undo:across:6
cover:describe-roast:1 cover:report-oven:2 cover:set-units:1 cover:shift-serving:2 empty:acknowledge:7
empty:add-hands:3 empty:affirm:6 empty:ask-guests:1 empty:ask-how:3 empty:correct:8 empty:courtesy:3
empty:feed-public:3 empty:forget-kitchen:2 empty:have:5 empty:lack:6 empty:pause:7 empty:report-guests:0
empty:report-not-done:0 empty:report-oven:7 empty:report-setup:1 empty:report-thermometer:3
empty:report-thermometer:7 empty:report-trouble:6 empty:resume:2 empty:set-doneness:3 empty:set-doneness:4
empty:set-method:5 empty:set-serving-time:8 expecting:choice:set-serving-time expecting:confirmation:report-oven
expecting:confirmation:report-started expecting:reading:ask-how expecting:reading:ask-next
expecting:reading:report-oven expecting:step:ask-time-left for:ask-next>ask-amount for:ask-next>ask-plan
for:ask-next>pause for:ask-plan>ask-status for:ask-temperature>set-units for:cook-away>ask-shopping
for:drop-dish>ask-substitute for:running-behind>ask-status for:set-doneness>ask-temperature
for:skip-step>ask-why lost1:gained1 lost:phrase:0 many3:clauses2 many3:long5 many4:long4 mood:intention:shift-serving
mood:negative:cook-away mood:question:set-method slots:add-hands:does,until,who slots:correct:doneness
slots:describe-roast:startTemperature slots:describe-roast:startTemperature,startTemperatureUnit
slots:report-not-done:step slots:report-setup:fan,probe,shelf slots:set-doneness:temperature
stage::ask-next stage::set-method stage:carve:shift-serving stage:hold:ask-options stage:hold:cancel-timer
stage:hold:choose stage:hold:shift-serving stage:low-roast:ask-slice stage:low-roast:drop-dish
stage:low-roast:forget-kitchen stage:planning:ask-safety stage:preheat:report-setup stage:preheat:shift-serving
stage:put-away:ask-temperature stage:put-away:report-oven stage:put-away:set-timer stage:put-away:start-over
stage:rest:report-reading stage:rest:skip-step stage:sear:report-oven talk:drop-dish talk:found1
talk:found2 text:cook-away:4 text:correct:4 text:drop-dish:3 text:emergency:4 text:forget-kitchen:8
text:pause:7 text:report-guests:5 text:report-oven:4 text:report-trouble:5 text:resume:3 text:resume:8
text:set-units:2 text:set-units:4 text:watch:7 then:add-dish>ask-time-left then:add-dish>ask-why
then:add-hands>set-timer then:ask-shopping>ask-amount then:cancel-timer>set-timer then:cancel-timer>watch
then:deed>report-oven then:deed>resume then:describe-roast>feed-public then:lack>deed then:lack>report-done
then:quiet>report-guests then:report-done>ask-temperature then:report-done>set-guests then:report-guests>quiet
then:report-guests>set-timer then:report-guests>watch then:report-out>running-behind then:report-oven>cook-away
then:report-oven>quiet then:report-oven>report-thermometer then:report-oven>skip-step then:report-setup>ask-amount
then:report-started>cancel-timer then:report-trouble>ask-temperature then:report-trouble>report-not-done
then:report-trouble>set-serving-time then:running-behind>report-out then:running-behind>set-guests
then:set-doneness>skip-step then:set-method>describe-roast then:set-method>note-guest then:set-timer>lack
then:set-timer>set-serving-time then:shift-serving>ask-status then:skip-step>cook-away then:skip-step>describe-roast
then:skip-step>report-setup then:skip-step>set-timer then:undo>ask-next then:watch>ask-status
then:watch>cancel-timer without:add-dish:guess:7 without:ask-time-left:frame:2 without:ask-why
without:ask-why:guess:7 without:correct without:report-reading:frame:2 without:report-trouble:guess:5
without:report-trouble:phrase:3
8 =forget-kitchen =forget-kitchen:across =report-guests:phrase =report-started:phrase =report-thermometer
=report-thermometer:across =report-trouble:phrase clause:across:4 clause:across:8 clause:add-dish:frame:4
clause:add-dish:frame:8 clause:add-dish:guess:5 clause:affirm:frame:6 clause:cook-away:phrase:8
clause:correct:guess:7 clause:drop-dish:frame:8 clause:drop-dish:phrase:2 clause:forget-kitchen:across:6
clause:have:across:3 clause:lack:frame:3 clause:lack:frame:4 clause:note-guest:frame:7 clause:note-guest:frame:8
clause:pause:guess:6 clause:quiet:frame:0 clause:quiet:frame:5 clause:report-guests:guess:8
clause:report-oven:phrase:3 clause:set-guests:across:5 clause:set-serving-time:phrase:5 clause:set-timer:guess:7
clause:set-timer:phrase:1 clause:set-units:phrase:4 clause:skip-step:frame:8 clause:skip-step:guess:5
clause:skip-step:phrase:6 clause:start-over:phrase:1 clause:watch:frame:6 cover:ask-guests:1
cover:ask-safety:1 cover:ask-temperature:2 cover:cook-away:1 cover:deny:1 cover:have:2 cover:quiet:0
cover:quiet:1 cover:report-setup:2 cover:set-timer:2 cover:shift-serving:0 empty:ask-time-left:0
empty:choose:2 empty:choose:5 empty:emergency:1 empty:have:3 empty:lack:8 empty:quiet:2 empty:report-thermometer:4
empty:set-guests:6 empty:set-method:4 empty:shift-serving:1 expecting:choice:report-reading
expecting:confirmation:affirm expecting:confirmation:set-guests expecting:roast:ask-how expecting:step:report-not-done
for:add-dish>ask-temperature for:ask-next>ask-substitute for:ask-time-left>ask-safety for:cancel-timer>pause
for:correct>set-serving-time for:lack>set-guests for:note-guest>drop-dish for:repeat>ask-how
for:report-guests>ask-how for:report-not-done>cancel-timer for:report-setup>lack for:report-started>report-setup
for:set-timer>running-behind mood:intention:report-oven mood:intention:running-behind mood:intention:start-over
mood:negative:repeat mood:request:set-serving-time slots:ask-time-left:about slots:correct:dish
slots:correct:minutesAgo slots:describe-roast:boneless,bones,weight,weightUnit slots:describe-roast:bones,cut,weight,weightUnit
slots:describe-roast:prepared slots:forget-kitchen:about slots:report-setup:fan slots:report-thermometer:bias
stage::note-guest stage::report-guests stage::report-oven stage::running-behind stage:hold:ask-why
stage:low-roast:ask-guests stage:low-roast:report-thermometer stage:preheat:ask-why stage:preheat:report-started
stage:preheat:set-method stage:prep:set-serving-time stage:rest:set-timer stage:sear:correct
text:across:4 text:across:8 text:describe-roast:6 text:forget-kitchen:6 text:frame:4 text:guess:4
text:have:6 text:have:7 text:help:4 text:pause:3 text:repeat:4 text:repeat:6 text:report-guests:8
text:report-oven:7 text:report-setup:4 text:running-behind:4 text:running-behind:8 text:set-doneness:4
text:set-guests:5 text:set-method:5 text:set-timer:5 text:shift-serving:4 text:skip-step:5
text:start-over:4 then:add-hands>ask-amount then:ask-amount>ask-safety then:ask-substitute>report-reading
then:cancel-timer>cook-away then:cook-away>ask-time-left then:cook-away>report-done then:cook-away>report-guests
then:cook-away>report-out then:correct>watch then:drop-dish>ask-status then:drop-dish>describe-roast
then:drop-dish>set-timer then:note-guest>ask-how then:note-guest>report-oven then:note-guest>report-started
then:note-guest>set-units then:report-guests>report-not-done then:report-not-done>ask-options
then:report-not-done>deed then:report-not-done>report-done then:report-out>report-reading then:report-out>report-setup
then:report-oven>ask-time-left then:report-oven>cancel-timer then:report-reading>ask then:report-reading>ask-why
then:running-behind>ask-amount then:running-behind>lack then:set-guests>set-units then:set-method>lack
then:set-timer>ask-substitute then:set-timer>set-units then:shift-serving>ask then:shift-serving>report-trouble
then:shift-serving>set-serving-time then:watch>correct without:add-dish:phrase:2 without:ask-status:frame:2
without:ask-substitute:guess:5 without:ask-temperature:guess:8 without:ask-time-left:frame:5
without:note-guest:across:0 without:report-done:frame:6 without:report-not-done:phrase:3 without:report-started:frame:4
without:report-started:guess:6 without:report-trouble:frame:4 without:report-trouble:frame:5
without:watch:guess:6
9 =ask-guests:phrase =choose:phrase =running-behind:frame acts:talk5 clause:add-dish:phrase:4
clause:ask:across:4 clause:cancel-timer:phrase:4 clause:cook-away:phrase:4 clause:deed:frame:8
clause:describe-roast:phrase:5 clause:drop-dish:guess:5 clause:feed-public:phrase:3 clause:have:phrase:8
clause:note-guest:across:4 clause:note-guest:phrase:8 clause:pause:phrase:6 clause:pause:phrase:8
clause:quiet:frame:7 clause:report-thermometer:across:3 clause:report-trouble:phrase:1 clause:set-doneness:guess:3
clause:set-guests:phrase:5 clause:set-serving-time:guess:7 clause:set-timer:frame:8 clause:set-units:frame:6
clause:set-units:guess:7 clause:start-over:guess:5 clause:watch:across:6 cover:cook-away:2
cover:feed-public:1 cover:set-method:0 empty:acknowledge:6 empty:affirm:3 empty:affirm:5 empty:ask-amount:2
empty:ask-status:1 empty:ask-time-left:2 empty:cancel-timer:3 empty:help:3 empty:report-guests:3
empty:report-guests:4 expecting:choice:repeat expecting:guests:set-serving-time for:add-dish>ask-next
for:ask-how>watch for:ask-plan>add-dish for:ask-plan>ask-next for:ask-substitute>ask-why for:help>ask-options
for:repeat>resume for:report-done>report-oven for:report-not-done>running-behind for:shift-serving>report-guests
lost:frame:0 many3:long6 mood:intention:add-dish mood:negative:choose mood:negative:have mood:negative:set-units
mood:request:quiet slots:ask-amount:cut,guests,ingredient slots:ask-temperature:about,when
slots:correct:count slots:correct:time slots:describe-roast:bones,cut,prepared slots:report-reading:temperature,unit
slots:report-setup:oven,rings slots:report-setup:pan,shelf slots:report-setup:probe,rack slots:set-timer:label,minutes
stage:carve:add-hands stage:low-roast:ask-how stage:low-roast:undo stage:planning:add-dish
stage:planning:set-doneness stage:preheat:ask-time-left stage:rest:ask-slice stage:rest:cancel-timer
stage:sear:report-started stage:sear:watch talk:helper7 text:ask:8 text:choose:1 text:choose:6
text:deed:5 text:deny:5 text:help:5 text:quiet:3 text:quiet:4 text:report-oven:3 text:report-reading:6
text:report-thermometer:3 text:set-timer:6 then:add-dish>running-behind then:ask-substitute>ask-amount
then:cancel-timer>ask-status then:correct>ask-time-left then:deed>cook-away then:describe-roast>ask-safety
then:describe-roast>skip-step then:drop-dish>ask-next then:lack>ask-amount then:lack>drop-dish
then:lack>have then:lack>set-method then:note-guest>set-serving-time then:report-done>ask-guests
then:report-done>quiet then:report-done>shift-serving then:report-reading>ask-how then:report-reading>ask-next
then:report-reading>ask-status then:report-reading>drop-dish then:report-reading>report-out
then:report-setup>ask-next then:report-started>ask-substitute then:report-trouble>ask-options
then:report-trouble>quiet then:running-behind>report-trouble then:set-method>set-units then:set-serving-time>ask-plan
then:set-serving-time>set-timer then:set-timer>ask-next then:set-units>note-guest then:shift-serving>report-done
then:skip-step>cancel-timer without:report-done:phrase:3 without:report-reading:frame:4 without:set-timer:guess:5
10 =add-dish:frame =ask-slice =ask-slice:across =ask-temperature:across =quiet:phrase =set-doneness:across
=set-serving-time:frame =set-serving-time:phrase =set-timer:frame clause:across:7 clause:affirm:guess:8
clause:ask:across:3 clause:cancel-timer:phrase:5 clause:deny:phrase:6 clause:drop-dish:frame:3
clause:drop-dish:frame:5 clause:help:phrase:8 clause:repeat:guess:6 clause:report-guests:frame:5
clause:report-guests:frame:6 clause:report-not-done:frame:6 clause:report-reading:frame:1 clause:report-trouble:frame:4
clause:resume:guess:6 clause:running-behind:frame:6 clause:set-guests:across:6 clause:set-guests:frame:1
clause:set-guests:frame:6 clause:set-method:phrase:6 clause:set-timer:frame:7 clause:set-units:frame:5
clause:set-units:phrase:3 clause:skip-step:frame:6 clause:undo:guess:8 cover:ask-plan:2 cover:ask-temperature:1
cover:cancel-timer:1 empty:ask-plan:4 empty:cancel-timer:5 empty:deny:3 empty:running-behind:3
empty:set-serving-time:2 empty:start-over:3 expecting:confirmation:cancel-timer expecting:confirmation:set-timer
expecting:serving-time:set-guests for:ask-status>ask-amount for:ask-temperature>ask-next for:ask-why>report-trouble
for:cook-away>report-done for:pause>choose for:report-guests>shift-serving for:report-not-done>skip-step
for:report-started>report-guests for:set-serving-time>set-doneness for:skip-step>lack many2:long4
mood:negative:quiet mood:request:report-reading slots:report-out:minutesAgo,what slots:report-oven:mode,temperature,unit
slots:report-trouble:minutesAgo,trouble stage::ask-amount stage:carve:ask-time-left stage:hold:watch
stage:preheat:skip-step stage:prep:pause stage:prep:repeat stage:rest:report-guests talk:helper5
talk:stage:low-roast text:across:7 text:choose:4 text:deny:7 text:describe-roast:8 text:feed-public:5
text:have:8 text:lack:8 text:report-trouble:8 text:running-behind:5 text:shift-serving:8 text:start-over:7
text:undo:6 then:ask-how>ask-time-left then:cook-away>quiet then:drop-dish>add-dish then:feed-public>set-guests
then:lack>quiet then:report-done>report-oven then:report-reading>ask-time-left then:report-reading>set-timer
then:report-reading>skip-step then:set-doneness>add-dish then:set-guests>cook-away then:set-guests>note-guest
then:set-method>ask-amount then:set-serving-time>set-serving-time then:shift-serving>undo then:skip-step>set-guests
then:skip-step>shift-serving then:watch>ask-why without:ask-next:guess:5 without:ask-status:phrase:6
without:drop-dish:guess:6 without:note-guest:phrase:2 without:set-guests:frame:6
11 =set-timer:phrase =skip-step:frame clause:add-dish:guess:6 clause:add-hands:phrase:7 clause:ask:across:1
clause:ask:frame:7 clause:ask:frame:8 clause:choose:frame:6 clause:choose:phrase:7 clause:correct:across:2
clause:deed:across:0 clause:deed:phrase:8 clause:deny:frame:6 clause:feed-public:phrase:2 clause:help:guess:8
clause:lack:guess:8 clause:note-guest:guess:8 clause:note-guest:phrase:5 clause:report-guests:phrase:7
clause:resume:guess:5 clause:resume:guess:7 clause:resume:phrase:4 clause:set-guests:across:8
clause:set-method:guess:6 clause:set-timer:phrase:7 clause:skip-step:phrase:5 clause:skip-step:phrase:8
clause:undo:across:7 clause:watch:frame:7 cover:add-dish:1 cover:ask-shopping:0 cover:report-out:2
empty:correct:3 empty:report-guests:6 empty:report-setup:2 empty:report-started:5 expecting:choice:cook-away
expecting:confirmation:deny expecting:confirmation:drop-dish expecting:step:skip-step for:add-hands>note-guest
for:ask-amount>ask-temperature for:ask-next>help for:drop-dish>ask-safety for:lack>ask-substitute
for:lack>report-reading for:report-not-done>undo for:report-trouble>report-not-done for:undo>cancel-timer
for:undo>start-over least7:many3 lost:frame:2 mood:intention:report-not-done mood:question:undo
slots:add-hands:does,who slots:ask-shopping:about slots:report-guests:count,state slots:report-oven:gasMark
slots:report-setup:pan,probe,rack slots:report-setup:probe,tent slots:report-setup:shelf slots:report-trouble:minutes,trouble
stage::undo stage:carve:ask-guests stage:prep:choose stage:rest:ask-substitute stage:rest:ask-temperature
stage:rest:report-out stage:sear:report-done talk:acknowledge talk:guess:4 text:choose:8 text:feed-public:1
text:report-reading:5 text:report-reading:8 text:resume:6 text:set-timer:8 text:undo:5 then:add-dish>set-serving-time
then:ask-safety>ask-temperature then:ask-temperature>ask-time-left then:describe-roast>set-doneness
then:drop-dish>running-behind then:have>have then:report-done>watch then:report-guests>note-guest
then:report-reading>ask-slice then:report-reading>note-guest then:report-thermometer>report-oven
then:report-trouble>describe-roast then:set-guests>add-dish then:set-timer>ask then:set-timer>quiet
then:set-timer>report-oven then:shift-serving>report-out then:skip-step>ask-time-left then:watch>set-timer
twice:have without:add-dish:frame:3 without:ask-plan:guess:5 without:choose without:drop-dish:guess:5
without:lack:guess:5 without:report-guests:guess:6 without:set-guests:phrase:3
12 =ask-shopping:phrase clause:add-dish:guess:7 clause:add-dish:phrase:6 clause:add-dish:phrase:7
clause:ask:across:7 clause:cook-away:frame:5 clause:drop-dish:guess:8 clause:feed-public:phrase:8
clause:quiet:phrase:0 clause:repeat:phrase:5 clause:report-oven:frame:5 clause:report-reading:guess:7
clause:report-trouble:phrase:0 clause:running-behind:guess:7 clause:running-behind:guess:8
clause:running-behind:phrase:8 clause:set-method:phrase:2 clause:set-serving-time:frame:3 clause:shift-serving:phrase:6
clause:skip-step:frame:5 clause:watch:across:4 cover:ask-how:1 cover:ask-options:1 cover:choose:0
cover:set-doneness:2 empty:cancel-timer:1 empty:have:4 empty:report-thermometer:5 expecting:doneness:ask-temperature
for:affirm>deny for:ask-amount>ask-shopping for:ask-plan>ask-time-left for:pause>cook-away
for:repeat>correct for:report-guests>add-hands for:shift-serving>note-guest least8:many2 mood:intention:cancel-timer
mood:intention:watch mood:question:set-serving-time mood:request:cook-away mood:story:running-behind
slots:add-hands:until,who slots:ask-slice:pulled slots:ask-substitute:ingredient slots:correct:step,time
slots:describe-roast:boneless,bones,cut slots:describe-roast:frozen slots:report-out:time slots:report-reading:temperature,thermometer,where
slots:report-reading:temperature,time,where slots:report-setup:rack,shelf slots:report-started:minutesAgo,step,which
slots:running-behind:factor,minutes slots:watch:temperature,unit stage:preheat:report-not-done
stage:rest:choose talk:expecting:reading text:cancel-timer:6 text:feed-public:7 text:have:4
text:pause:4 text:pause:6 text:report-setup:8 text:shift-serving:6 then:cancel-timer>ask-time-left
then:cancel-timer>quiet then:cook-away>report-oven then:describe-roast>report-started then:report-done>ask-next
then:report-out>cook-away then:report-reading>ask-temperature then:report-reading>running-behind
then:running-behind>add-hands then:set-doneness>drop-dish then:set-guests>describe-roast then:set-method>report-setup
then:set-serving-time>drop-dish then:set-units>set-serving-time then:shift-serving>report-reading
then:shift-serving>set-guests then:skip-step>report-reading then:watch>undo without:ask-why:guess:5
13 =add-hands:phrase =describe-roast:frame clause:affirm:phrase:8 clause:cancel-timer:guess:4
clause:choose:guess:5 clause:cook-away:frame:8 clause:deny:guess:6 clause:repeat:phrase:2 clause:report-not-done:guess:8
clause:report-oven:phrase:6 clause:report-reading:phrase:8 clause:report-setup:frame:7 clause:resume:frame:8
clause:set-serving-time:frame:4 clause:set-serving-time:phrase:7 clause:set-timer:guess:8 clause:set-timer:phrase:8
clause:shift-serving:guess:8 clause:undo:across:4 clause:undo:across:5 cover:ask-guests:0 cover:ask-how:2
cover:ask-next:0 cover:ask-shopping:2 cover:ask-substitute:2 cover:cancel-timer:2 cover:repeat:2
empty:report-setup:4 empty:resume:5 empty:undo:3 expecting:confirmation:ask-status for:report-oven>correct
for:report-setup>report-not-done for:set-guests>report-trouble many0:clauses5 mood:story:choose
slots:ask-temperature:temperature,unit slots:describe-roast:prepared,weight,weightUnit slots:report-reading:minutesAgo,temperature,where
slots:report-setup:carvers slots:report-started:step,time slots:set-serving-time:of,time stage:carve:lack
stage:carve:report-guests stage:hold:report-not-done talk:expecting:guests text:note-guest:5
text:note-guest:7 text:report-reading:7 text:resume:5 text:set-doneness:5 text:set-units:8
text:start-over:6 then:add-dish>set-method then:cook-away>ask-status then:deed>lack then:note-guest>cancel-timer
then:report-oven>undo then:report-started>report-not-done then:running-behind>cook-away then:set-timer>ask-how
then:set-timer>skip-step then:shift-serving>cook-away then:skip-step>ask-next then:watch>drop-dish
then:watch>quiet then:watch>report-oven without:report-started:phrase:4
14 =cook-away:frame asked:true clause:drop-dish:frame:7 clause:feed-public:phrase:6 clause:pause:phrase:3
clause:shift-serving:phrase:4 cover:ask-options:0 expecting:step:lack for:report-done>report-setup
for:report-oven>set-method least8:many3 slots:describe-roast:boneless,prepared,weight,weightUnit
slots:describe-roast:cut,startTemperature,weight,weightUnit slots:report-reading:temperature,time
slots:report-setup:fan,pan,rack,shelf stage::set-units stage:hold:set-serving-time stage:planning:describe-roast
stage:put-away:report-done talk:unclear text:add-dish:6 text:cancel-timer:5 text:deny:8 text:have:5
text:lack:7 text:pause:8 text:report-oven:6 text:report-setup:6 text:set-serving-time:3 text:set-timer:2
text:set-units:6 text:shift-serving:7 text:watch:5 then:cook-away>add-hands then:deny>correct
then:describe-roast>set-guests then:drop-dish>note-guest then:note-guest>ask-options then:report-not-done>watch
then:report-setup>report-done then:running-behind>ask-options then:set-serving-time>set-doneness
then:set-timer>watch then:shift-serving>cancel-timer then:watch>ask-plan
15 =ask-safety:across =cancel-timer:phrase clause:add-hands:guess:8 clause:cancel-timer:frame:6
clause:cook-away:frame:7 clause:help:frame:8 clause:help:guess:7 clause:report-not-done:phrase:6
clause:report-setup:frame:6 clause:set-serving-time:phrase:8 clause:start-over:frame:8 clause:start-over:phrase:8
clause:watch:frame:4 cover:cook-away:0 expecting:serving-time:ask-options for:set-guests>add-hands
for:shift-serving>running-behind many2:long5 mood:request:set-units mood:story:cook-away slots:ask-safety:about,minutes
slots:ask-temperature:about,temperature slots:describe-roast:boneless,cut,prepared,weight,weightUnit
slots:describe-roast:cut,frozen,weight,weightUnit slots:report-reading:temperature,thermometer
slots:report-reading:temperature,unit,where slots:report-setup:fan,shelf stage:carve:ask-why
text:affirm:6 text:affirm:8 text:drop-dish:5 text:feed-public:2 text:repeat:5 text:set-guests:6
then:deed>set-timer then:drop-dish>set-method then:report-done>report-not-done then:report-guests>cook-away
then:report-oven>set-timer then:report-oven>shift-serving then:set-guests>set-doneness then:set-guests>set-method
then:set-serving-time>set-guests then:start-over>set-guests then:watch>ask
16 =ask-temperature:frame clause:ask:across:8 clause:drop-dish:phrase:6 clause:drop-dish:phrase:7
clause:pause:frame:6 clause:quiet:phrase:7 clause:report-not-done:phrase:8 clause:report-oven:phrase:0
clause:set-doneness:guess:7 clause:set-method:frame:7 clause:set-serving-time:guess:6 cover:ask-temperature:0
cover:set-doneness:0 empty:courtesy:6 helper9 mood:request:add-dish slots:ask-guests:about,dish,who
slots:ask-status:about slots:report-out:minutesAgo slots:report-reading:temperature,time,unit
slots:set-doneness:temperature,unit stage:hold:set-timer stage:planning:choose talk:helper4
talk:helper6 text:add-hands:5 text:cancel-timer:8 text:describe-roast:7 text:help:7 text:report-guests:6
text:set-serving-time:6 text:set-units:7 text:skip-step:6 then:add-hands>cook-away then:cancel-timer>ask
then:describe-roast>note-guest then:report-oven>set-doneness then:report-reading>cook-away
then:report-setup>drop-dish then:set-doneness>set-serving-time then:set-guests>set-serving-time
then:shift-serving>report-oven then:watch>ask-time-left then:watch>report-not-done
17 clause:add-dish:frame:5 clause:lack:frame:8 clause:report-guests:phrase:5 clause:report-setup:frame:8
clause:set-doneness:frame:2 clause:set-serving-time:frame:5 clause:set-units:phrase:6 clause:undo:guess:6
empty:courtesy:7 empty:help:6 empty:set-guests:5 slots:ask-options:minutes slots:ask-temperature:about,altitude,altitudeUnit
slots:correct:weight,weightUnit slots:report-oven:temperature,time stage:served:ask-safety
text:correct:7 text:report-not-done:7 text:report-trouble:6 text:resume:7 text:set-doneness:7
then:report-not-done>ask-why then:set-doneness>set-guests then:watch>ask-how
18 breath5:true breath6:true clause:add-hands:phrase:2 clause:cancel-timer:phrase:8 clause:choose:phrase:8
clause:correct:across:7 clause:lack:phrase:8 clause:report-trouble:phrase:4 clause:set-doneness:frame:7
clause:set-guests:phrase:8 clause:set-method:frame:4 empty:resume:8 for:note-guest>ask-safety
many3:clauses1 slots:ask-amount:guests,ingredient slots:correct:bones slots:running-behind:factor
slots:set-serving-time:date,time stage::resume stage:prep:set-doneness text:ask:7 text:set-timer:7
then:report-oven>report-reading then:shift-serving>watch without:correct:guess:8
19 clause:cook-away:phrase:7 clause:report-setup:phrase:8 clause:report-trouble:frame:8 clause:watch:across:3
mood:request:set-timer slots:ask-amount:appetite,guests,ingredient slots:ask-guests:about slots:ask-options:time
slots:ask-safety:about,temperature slots:report-oven:mode,temperature text:help:8 text:undo:8
then:report-trouble>ask-why then:set-method>set-doneness
20 clause:ask:across:5 clause:shift-serving:phrase:8 clause:watch:guess:8 cover:ask-amount:1
first:report-thermometer slots:add-hands:left,who slots:report-setup:rings talk:helper3 text:choose:5
text:cook-away:6 text:drop-dish:7 text:note-guest:8 text:report-not-done:8 text:set-serving-time:7
text:undo:7 then:report-started>set-timer
21 =set-guests:across clause:add-hands:phrase:6 cover:ask-plan:1 mood:intention:set-doneness
slots:ask-temperature:doneness text:running-behind:6 text:set-method:8 then:report-reading>report-oven
22 clause:add-dish:guess:8 clause:report-not-done:frame:8 clause:report-reading:frame:8 clause:set-units:frame:7
helper10 mood:request:set-doneness slots:report-oven:bias text:set-method:6 then:deed>report-not-done
23 clause:cook-away:guess:8 clause:shift-serving:frame:7 clause:shift-serving:frame:8 slots:ask-plan:about
slots:report-done:minutesAgo,step slots:report-oven:temperature,which slots:report-reading:minutesAgo,temperature
text:deed:8 text:quiet:6 text:start-over:8 text:watch:8 then:report-reading>shift-serving
24 =ask-how:across text:set-method:7
25 =ask-options:across slots:describe-roast:bones,weight,weightUnit text:add-hands:8 text:watch:6
then:report-oven>watch
27 slots:cancel-timer:minutes talk:helper1 text:report-setup:7
28 for:set-serving-time>note-guest helper11 text:add-dish:8
29 talk:helper2
32 slots:set-units:temperature,weight
33 talk:helper0 text:add-dish:7 text:report-guests:7
35 text:cook-away:8
36 text:drop-dish:6
37 text:set-doneness:8`);
