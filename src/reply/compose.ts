/**
 * Outcomes to one reply: what happened, what it changes, what to do next. Pure: the same scene gives
 * the same words. It knows no clock, no chart and no planner, only what they handed up.
 */

import { minutesBetween } from '../base/time.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import type { Composed, Composing } from './composing.ts';
import { composeGerman } from './de/compose.ts';
import { emergencyReply } from './en/emergency.ts';
import { walkKey } from './en/how.ts';
import { tableWords } from './en/progress.ts';
import { answerableLater, questionWords } from './en/questions.ts';
import { rememberedWords } from './en/remembered.ts';
import { rulesSaidAt, type SafetyRuleId, safetyRules } from './en/safety.ts';
import { safetyMomentsOf } from './en/safety-moments.ts';
import { nextStepOf } from './en/standing.ts';
import { callWords, cautionWords, forHands } from './en/steps.ts';
import { wordsTogether } from './en/together.ts';
import { openingWords } from './en/wording.ts';
import { atTime, clock } from './en/words.ts';
import type { Scene } from './scene.ts';
import { forEyes, lower, type Spoken, say, sentences, silent } from './spoken.ts';

/** Outcomes after which the cook wants to hear what to do next. */
const leadsOn: ReadonlySet<Outcome['key']> = new Set<Outcome['key']>([
  'step-done',
  'step-skipped',
  'thermometer-checked',
  'oven-noted',
  'resumed',
  'lacked',
]);

export function compose(composing: Composing): Composed {
  const { outcomes, scene } = composing;
  return scene.dinner.language === 'de'
    ? composeGerman(composing, cautionsOf(outcomes, scene))
    : composeEnglish(composing);
}

function composeEnglish({ outcomes, scene, question, microphone }: Composing): Composed {
  const emergency = outcomes.find((outcome) => outcome.key === 'emergency');
  if (emergency?.key === 'emergency')
    return { ...emergencyReply(emergency.kind, scene), keys: ['emergency'], cautioned: [] };
  const keys = outcomes.map((outcome) => outcome.key as string);
  const parts: Spoken[] = [];
  const told = scene.firstPlan
    ? outcomes.filter(
        (one) =>
          ![
            'described',
            'serving-set',
            'guests-set',
            'doneness-set',
            'dish-added',
            'dish-dropped',
          ].includes(one.key),
      )
    : outcomes;
  if (scene.firstPlan) {
    parts.push(openingWords(scene));
    keys.push('the-day');
    const remembered = rememberedWords(scene.dinner);
    if (remembered !== silent) {
      parts.push(remembered);
      keys.push('kitchen-remembered');
    }
  }
  parts.push(...wordsTogether(told, scene));
  parts.push(tableTail(outcomes, parts, scene));
  const walk = walkKey(outcomes, scene);
  if (walk !== undefined) keys.push(walk);
  const cautioned = cautionsOf(outcomes, scene);
  for (const rule of cautioned) parts.push(safetyRules[rule].sentence(scene));
  if (question) {
    parts.push(questionWords(question, scene));
    keys.push(`ask-${question.kind}`);
  }
  const next = nextWords(outcomes, scene, question !== undefined);
  if (next.text !== '') {
    parts.push(next);
    keys.push('next');
  }
  const whole = sentences(
    parts.filter(
      (part, index) =>
        part.text !== parts[index - 1]?.text || part.speech !== parts[index - 1]?.speech,
    ),
  );
  const asks = question !== undefined || outcomes.some((outcome) => outcome.key === 'asked');
  const { text, speech } = asks && microphone === 'closes' ? answerableLater(whole) : whole;
  return { text: text.trim(), speech: speech.trim(), keys, cautioned };
}

/** A table this much later or sooner is said, whatever moved it. */
const tableMinutes = 5;

/** The table, where it moved and nothing said so far names its new time. */
function tableTail(outcomes: readonly Outcome[], said: readonly Spoken[], scene: Scene): Spoken {
  const { plan, before, dinner, firstPlan } = scene;
  if (firstPlan || !plan?.complete || !before?.complete) return silent;
  const told = ['answer', 'chosen', 'serving-moved'];
  if (outcomes.every((one) => told.includes(one.key)) || scene.stage === 'served') return silent;
  const moved = Math.abs(minutesBetween(before.serving.likelyAt, plan.serving.likelyAt));
  const time = clock(plan.serving.likelyAt, dinner).text;
  if (moved < tableMinutes || said.some((one) => one.text.includes(time))) return silent;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt) > tableMinutes;
  return late ? tableWords(scene) : say`Dinner at ${clock(plan.serving.likelyAt, dinner)}.`;
}

/** Cautions that these outcomes call for and that were not spoken before. */
function cautionsOf(outcomes: readonly Outcome[], scene: Scene): SafetyRuleId[] {
  const rules = rulesSaidAt(safetyMomentsOf(outcomes, scene));
  return rules.filter((rule) => !scene.dinner.cautioned.has(rule));
}

/** The next step, called within the reply when it is due now. */
function nextWords(outcomes: readonly Outcome[], scene: Scene, asking: boolean): Spoken {
  if (asking) return silent;
  if (scene.firstPlan && scene.nextStep === undefined) {
    const first = nextStepOf(scene);
    return first ? forEyes(say`First, ${atTime(first.startAt, scene)}: ${first.title}.`) : silent;
  }
  if (scene.nextStep === undefined) return silent;
  const lead = scene.firstPlan || outcomes.some((outcome) => leadsOn.has(outcome.key));
  if (!lead) return silent;
  const next = scene.plan?.steps.find((step) => step.id === scene.nextStep) ?? nextStepOf(scene);
  if (!next) return silent;
  // What was still open in the kitchen is past once dinner is on the table.
  if (scene.stage === 'served' && next.id !== 'put-away') return silent;
  const words = callWords(next.id, scene);
  const byName = forHands(words, next.id, scene);
  const called = byName.text === words.text ? lower(words) : byName;
  return sentences([
    scene.firstPlan ? say`First: ${called}` : say`Next: ${called}`,
    scene.firstPlan ? silent : cautionWords(next.id, scene),
  ]);
}

/** Whether outcomes like these call the next step in their reply. */
export const callsNext = (outcomes: readonly Outcome[], firstPlan: boolean): boolean =>
  firstPlan || outcomes.some((outcome) => leadsOn.has(outcome.key));
