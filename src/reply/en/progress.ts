/** What a report changes: the reading, the pull, the table, what is taken to be done. */
import { minutesBetween } from '../../base/time.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { offer } from './options.ts';
import { callWords, titleOf } from './steps.ts';
import { between, clock, degrees, duration } from './words.ts';

/** "taking it that the roast went in and the oven is down". */
export function presumedWords(presumed: readonly string[], scene: Scene): Spoken {
  if (presumed.length === 0) return silent;
  const words = presumed.slice(0, 3).map((step) => say`"${titleOf(scene.dinner, step)}"`);
  return say`I take it that ${list(words)} ${presumed.length === 1 ? 'is' : 'are'} done.`;
}

export function pullWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (!plan || plan.steps.find((step) => step.id === 'pull')?.state === 'done') return silent;
  const until = minutesBetween(now, plan.pullAt.p50);
  if (until <= 1) return say`Pull it now, at ${degrees(plan.pullCelsius, dinner.units)}.`;
  return say`Pull at ${degrees(plan.pullCelsius, dinner.units)}, likely at ${clock(plan.pullAt.p50, dinner)}, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}.`;
}

export function lookWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (plan?.checkAt === undefined || minutesBetween(now, plan.pullAt.p50) <= 1) return silent;
  return plan.checkAt > now + 90_000
    ? say`Look again at ${clock(plan.checkAt, dinner)}.`
    : say`Look again in a couple of minutes.`;
}

/** Whether the table has moved, and by how much, against what was told before. */
export function tableWords(scene: Scene): Spoken {
  const { plan, before, dinner } = scene;
  if (!plan) return silent;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  if (late > 5)
    return say`That puts dinner at ${clock(plan.serving.likelyAt, dinner)}, ${duration(late)} late.`;
  const was = before ? minutesBetween(before.serving.wantedAt, before.serving.likelyAt) : 0;
  if (was > 5) return say`Dinner is back at ${clock(plan.serving.likelyAt, dinner)}.`;
  return say`Dinner stays at ${clock(plan.serving.likelyAt, dinner)}.`;
}

export function readingWords({ celsius, again }: OutcomeOf<'reading-noted'>, scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (!plan || scene.stage === 'prep' || scene.stage === 'planning' || scene.stage === 'preheat')
    return say`${degrees(celsius, dinner.units)} to start with, noted.`;
  if (scene.stage === 'rest' || scene.stage === 'hold')
    return say`${degrees(celsius, dinner.units)} on the board. Carve at ${clock(plan.steps.find((step) => step.id === 'carve')?.startAt ?? now, dinner)}.`;
  if (again)
    return sentences([say`${degrees(celsius, dinner.units)}, I have it.`, lookWords(scene)]);
  if (celsius >= plan.pullCelsius - 0.3)
    return sentences([
      say`${degrees(celsius, dinner.units)}: pull it now.`,
      callWords('pull', scene),
    ]);
  const pull = pullWords(scene);
  return sentences([
    say`${degrees(celsius, dinner.units)}.`,
    pull,
    lookWords(scene),
    tableWords(scene),
  ]);
}

export function stepDone({ step, presumed, again }: OutcomeOf<'step-done'>, scene: Scene): Spoken {
  if (again) return say`I have that already.`;
  const assumed = presumedWords(presumed, scene);
  switch (step) {
    case 'oven-on':
      return sentences([say`Oven on.`, assumed]);
    case 'oven-down':
      return sentences([say`Down it is.`, assumed, pullWords(scene)]);
    case 'serve':
      return sentences([say`Enjoy it.`, assumed]);
    case 'put-away':
      return say`All put away. That was the dinner.`;
    default:
      return sentences([say`Good.`, assumed]);
  }
}

export function movedWords(
  { minutes, servingAt }: OutcomeOf<'serving-moved'>,
  scene: Scene,
): Spoken {
  const { dinner, plan } = scene;
  const head = say`Dinner at ${clock(servingAt, dinner)}, ${duration(Math.abs(minutes))} ${minutes >= 0 ? 'later' : 'sooner'}.`;
  if (!plan) return head;
  if (scene.options && scene.options.length > 0)
    return sentences([head, offer(scene.options, scene)]);
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  if (late > 5)
    return sentences([
      say`Not quite: ${clock(plan.serving.likelyAt, dinner)} is the soonest for dinner.`,
    ]);
  if (scene.stage === 'prep' || scene.stage === 'preheat' || scene.stage === 'planning')
    return sentences([
      head,
      say`So everything starts later: the roast goes in at ${clock(plan.roastInAt, dinner)}.`,
    ]);
  return head;
}
