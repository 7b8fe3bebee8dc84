/**
 * Outcomes to one reply: what happened, what it changes, what to do next. Pure: the same scene gives
 * the same words. It knows no clock, no chart and no planner, only what they handed up.
 */

import { minutesBetween } from '../base/time.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import { fitsABreath, inOneBreath, type Part } from './breath.ts';
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
  const parts: Part[] = [];
  const told = scene.firstPlan ? outcomes.filter((one) => !toldByTheDay.has(one.key)) : outcomes;
  if (scene.firstPlan) {
    parts.push(openingWords(scene));
    keys.push('the-day');
  }
  parts.push(...wordsTogether(told, scene));
  if (scene.firstPlan) {
    const remembered = rememberedWords(scene.dinner);
    if (remembered !== silent) {
      parts.push(remembered);
      keys.push('kitchen-remembered');
    }
  }
  const roastIn = roastInTail(outcomes, parts, scene);
  if (roastIn !== silent) keys.push(dayMovedKey);
  parts.push(roastIn, tableTail(outcomes, parts, scene), firstCourseTail(outcomes, parts, scene));
  const walk = walkKey(outcomes, scene);
  if (walk !== undefined) keys.push(walk);
  const cautioned = cautionsOf(outcomes, scene);
  for (const rule of cautioned) parts.push({ ...safetyRules[rule].caution(scene), must: true });
  if (question) {
    parts.push({ ...questionWords(question, scene), must: true });
    keys.push(`ask-${question.kind}`);
  }
  const once = parts.filter(
    (part, index) =>
      part.text !== parts[index - 1]?.text || part.speech !== parts[index - 1]?.speech,
  );
  const list = outcomes.some((one) => one.key === 'answer' && lists.has(one.heard.intent));
  const said = list ? sentences(once) : inOneBreath(once);
  const next = nextWords(outcomes, scene, { asking: question !== undefined, said });
  if (next.speech !== '') keys.push(nextKey);
  const whole = sentences([said, next]);
  const asks = question !== undefined || outcomes.some((outcome) => outcome.key === 'asked');
  const { text, speech } = asks && microphone === 'closes' ? answerableLater(whole) : whole;
  return { text: text.trim(), speech: speech.trim(), keys, cautioned };
}

/** What the first plan's opening tells by itself. */
const toldByTheDay: ReadonlySet<Outcome['key']> = new Set<Outcome['key']>([
  'described',
  'serving-set',
  'guests-set',
  'doneness-set',
  'dish-added',
  'dish-dropped',
  'dish-unnamed',
]);

/** What is asked for as a list may take longer than a breath. */
const lists: ReadonlySet<string> = new Set([
  'ask-plan',
  'ask-shopping',
  'ask-guests',
  'ask-options',
]);

/** The key of a reply that calls the next step, and of one that tells when the roast goes in now. */
export const nextKey = 'next';
export const dayMovedKey = 'roast-in-moved';

/** The roast's way in, where it moved and nothing said so far tells it. */
function roastInTail(outcomes: readonly Outcome[], said: readonly Spoken[], scene: Scene): Spoken {
  const { plan, dinner, firstPlan } = scene;
  const was = dinner.told?.starts.find(({ step }) => step === 'roast-in')?.at;
  const step = plan?.steps.find((one) => one.id === 'roast-in');
  if (firstPlan || !plan?.complete || was === undefined || step?.state !== 'planned') return silent;
  if (!outcomes.some((one) => movesTheDay.has(one.key))) return silent;
  const moved = Math.abs(minutesBetween(was, step.startAt));
  const time = clock(step.startAt, dinner).text;
  if (moved < roastInMinutes || said.some((one) => one.text.includes(time))) return silent;
  return say`Roast in ${atTime(step.startAt, scene)} now.`;
}

/** What may move the roast's way in, or is heard of in the hour before it. */
const movesTheDay: ReadonlySet<Outcome['key']> = new Set<Outcome['key']>([
  'described',
  'doneness-set',
  'method-set',
  'guests-set',
  'dish-added',
  'dish-dropped',
  'dish-unnamed',
  'hands-added',
  'pace-told',
  'clock-set',
  'setup-noted',
  'oven-noted',
  'oven-hot',
  'thermometer-checked',
  'step-done',
  'step-skipped',
]);

/** A way in that moved by so much is told with what moved it. */
const roastInMinutes = 10;

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

/** A table that moved beside a first course still to come: where that stands now. */
function firstCourseTail(
  outcomes: readonly Outcome[],
  said: readonly Spoken[],
  { plan, dinner, now }: Scene,
): Spoken {
  const at = plan?.firstCourseAt;
  if (at === undefined || at <= now) return silent;
  if (!outcomes.some((one) => one.key === 'serving-moved' || one.key === 'serving-set'))
    return silent;
  const told = say`First course at ${clock(at, dinner)}.`;
  return said.some((one) => one.text.includes(told.text.slice(0, -1))) ? silent : told;
}

/**
 * Cautions that these outcomes call for and that were not spoken before. One of a gentle oven can wait for
 * the next words, where another stands beside it.
 */
function cautionsOf(outcomes: readonly Outcome[], scene: Scene): SafetyRuleId[] {
  // Another roast than before, or its preparation told now, is a case of its own.
  const anew = outcomes.some((one) => one.key === 'described') ? 'surface-inside' : undefined;
  const rules = rulesSaidAt(safetyMomentsOf(outcomes, scene)).filter(
    (rule) => rule === anew || !scene.dinner.cautioned.has(rule),
  );
  return rules.length > 1 ? rules.filter((rule) => rule !== 'oven-325') : rules;
}

/** The next step, called within the reply when it is due now. */
function nextWords(
  outcomes: readonly Outcome[],
  scene: Scene,
  { asking, said }: { asking: boolean; said: Spoken },
): Spoken {
  if (asking) return silent;
  if (scene.firstPlan && scene.nextStep === undefined) {
    const first = nextStepOf(scene);
    if (!first) return silent;
    return forEyes(
      first.startAt <= scene.now
        ? say`First: ${first.title}.`
        : say`First, ${atTime(first.startAt, scene)}: ${first.title}.`,
    );
  }
  if (scene.nextStep === undefined) return silent;
  const leads = scene.firstPlan || outcomes.some((outcome) => leadsOn.has(outcome.key));
  if (!leads) return silent;
  const next = scene.plan?.steps.find((step) => step.id === scene.nextStep) ?? nextStepOf(scene);
  if (!next) return silent;
  // What was still open in the kitchen is past once dinner is on the table.
  if (/^(served|put-away)$/.test(scene.stage) && next.id !== 'put-away') return silent;
  const words = callWords(next.id, scene);
  const byName = forHands(words, next.id, scene);
  const called = byName.text === words.text ? lower(words) : byName;
  const lead = scene.firstPlan ? 'First' : 'Next';
  const caution = cautionWords(next.id, scene);
  const whole = sentences([say`${lead}: ${called}`, caution]);
  const title = forHands(say`${next.title}.`, next.id, scene);
  const byTitle = sentences([say`${lead}: ${title}`, caution]);
  const fits = ({ speech }: Spoken): boolean => fitsABreath(`${said.speech} ${speech}`);
  if (fits(whole)) return whole;
  if (fits(byTitle)) return { text: whole.text, speech: byTitle.speech };
  // With no breath left for it, it is called by itself, right after; where to begin is written all the same.
  return scene.firstPlan ? forEyes(whole) : silent;
}

/** Whether outcomes like these call the next step in their reply. */
export const callsNext = (outcomes: readonly Outcome[], firstPlan: boolean): boolean =>
  firstPlan || outcomes.some((outcome) => leadsOn.has(outcome.key));
