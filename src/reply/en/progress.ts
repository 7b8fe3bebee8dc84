/** What a report changes: the reading, the pull, the table, what is taken to be done. */
import { assertNever } from '../../base/assert.ts';
import { minutesBetween } from '../../base/time.ts';
import { doubtOf, lastLook, type RoastSeen } from '../../kitchen/core-told.ts';
import type { Reading } from '../../kitchen/dinner.ts';
import type { SuspectReason } from '../../kitchen/forecast.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { afterWords } from './after.ts';
import { offer } from './options.ts';
import { shortCoreWords } from './short-core.ts';
import { carveAt, coreNow, isInOven, isResting } from './standing.ts';
import { callWords, dishTitle, doneClause, findStep, pullShown } from './steps.ts';
import { between, clock, degrees, degreesApart, duration } from './words.ts';

/** Clauses on one subject are told together: "the potatoes are scrubbed and oiled". */
function clausesTold(clauses: readonly string[]): Spoken {
  const bySubject = new Map<string, string[]>();
  for (const clause of clauses) {
    const found = /^(.+?) (is|are|has|have) (.+)$/.exec(clause);
    const subject = found ? `${found[1]} ${found[2]}` : clause;
    bySubject.set(subject, [...(bySubject.get(subject) ?? []), ...(found?.[3] ? [found[3]] : [])]);
  }
  return list(
    [...bySubject].map(([subject, rest]) =>
      rest.length === 0 ? say`${subject}` : say`${subject} ${list(rest.map((one) => say`${one}`))}`,
    ),
  );
}

/** That a dish went into the oven goes without saying once it is out; its knife work does not. */
function isWorthSaying(id: string, scene: Scene): boolean {
  const found = findStep(scene.dinner, id);
  return found === undefined || found.card.card === 'roast' || found.step.hands === 'throughout';
}

/** "I take it that the potatoes are scrubbed and oiled." */
export function presumedWords(presumed: readonly string[], scene: Scene): Spoken {
  const worth = presumed.filter((step) => isWorthSaying(step, scene));
  if (worth.length === 0) return silent;
  const latest = worth.slice(-3).map((step) => doneClause(scene.dinner, step));
  return say`I take it that ${clausesTold(latest)}.`;
}

/** What was reported done, said back, so that a bare "done" cannot be misunderstood. */
export const doneTold = (steps: readonly string[], scene: Scene): Spoken =>
  say`Good: ${clausesTold(steps.map((step) => doneClause(scene.dinner, step)))}.`;

/** A reading of the last minutes that is short of the pull, and by how much. */
function shortOfPull(scene: Scene): number {
  const { plan, dinner, now } = scene;
  const last = lastLook(dinner.readings);
  const fresh = last !== undefined && minutesBetween(last.happenedAt, now) <= freshMinutes;
  const offset = dinner.thermometerOffsetKelvin ?? 0;
  return plan && fresh ? Math.max(0, plan.pullCelsius + offset - last.celsius) : 0;
}

/** A reading so young speaks for the roast as it is, whatever the forecast says. */
const freshMinutes = 3;
/** Further than this over the pull it is said by how much. */
const pastKelvin = 2;
/** Closer than this under the pull is the pull. */
const nearKelvin = 1;

/** No roast of these takes so long in an oven that is on. */
const neverMinutes = 14 * 60;

export function pullWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (!plan || plan.steps.find((step) => step.id === 'pull')?.state === 'done') return silent;
  const until = minutesBetween(now, plan.pullAt.p50);
  const short = shortOfPull(scene);
  if (until <= 1 && short > nearKelvin)
    return say`Not yet: ${degreesApart(short, dinner.units)} short of the pull at ${pullShown(plan, dinner)}. Leave it in.`;
  if (until > neverMinutes)
    return say`With the oven off the middle does not come to ${pullShown(plan, dinner)}. Tell me when it is on again.`;
  if (until <= 1) return say`Pull it now, at ${pullShown(plan, dinner)}.`;
  // The span is for eyes: spoken with every reading it takes four seconds.
  const span = say`, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}`;
  return say`Pull at ${pullShown(plan, dinner)}${pullMoved(scene)}, likely at ${clock(plan.pullAt.p50, dinner)}${forEyes(span)}.`;
}

/** A pull told so far off the one before is told with its reason. */
const pullMovedKelvin = 2;

/** The less it rests before the knife, the less it climbs: why the pull stands elsewhere than it was told. */
function pullMoved({ plan, before, dinner }: Scene): Spoken {
  if (!plan || !before?.complete || dinner.course?.pullCelsius !== undefined) return silent;
  const moved = plan.pullCelsius - before.pullCelsius;
  if (Math.abs(moved) < pullMovedKelvin) return silent;
  const rest =
    moved > 0 ? 'less rest is left, so it climbs less' : 'it rests longer, so it climbs more';
  return say` now${forEyes(say`, not ${pullShown(before, dinner)} (${rest})`)}`;
}

export function lookWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  const pulling = plan !== undefined && minutesBetween(now, plan.pullAt.p50) <= 1;
  if (plan?.checkAt === undefined || (pulling && shortOfPull(scene) <= nearKelvin)) return silent;
  return plan.checkAt > now + 90_000
    ? say`Look again at ${clock(plan.checkAt, dinner)}.`
    : say`Look again in a couple of minutes.`;
}

/** A tented roast waits so long and is none the worse. Common practice, no source. */
const waitsWellMinutes = 75;

/** No roast asks for a longer rest than this: what it stands beyond, it waits for something. */
const longestWantedRestMinutes = 45;

/** Where the roast stands about till a dish is ready, it is the dish that makes dinner late. */
export function heldUpWords({ plan, dinner }: Scene): Spoken {
  if (!plan || plan.restMinutes <= longestWantedRestMinutes) return silent;
  const last = plan.steps
    .filter((step) => step.oven && step.state !== 'done' && step.card !== dinner.roast.cut)
    .filter((step) => step.startAt >= plan.pullAt.p50 && findStep(dinner, step.id))
    .sort((one, other) => other.endAt - one.endAt)[0];
  return last
    ? say`What holds it up: ${dishTitle(dinner, last.card)}${forEyes(say`, in at ${clock(last.startAt, dinner)}`)}. Ask for my options.`
    : silent;
}

/** A roast that will stand about for long before its table: said while a slower oven can still help. */
export function earlyWords({ plan, dinner }: Scene): Spoken {
  if (!plan || dinner.servingAt === undefined || plan.restMinutes <= waitsWellMinutes)
    return silent;
  return say`That is early: it would wait ${duration(plan.restMinutes)} for the table. Ask for my options.`;
}

/** Whether the table has moved, and by how much, against what was told before. */
export function tableWords(scene: Scene): Spoken {
  const { plan, before, dinner } = scene;
  if (!plan) return silent;
  // A table that nobody named is not told as a fact: it is asked for.
  if (dinner.servingAt === undefined) return say`When is dinner?`;
  if (minutesBetween(scene.now, plan.pullAt.p50) > neverMinutes && isInOven(scene)) return silent;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  const was = before ? minutesBetween(before.serving.wantedAt, before.serving.likelyAt) : 0;
  if (late > 5 && was > 5 && Math.abs(late - was) < 3)
    return say`Dinner still at ${clock(plan.serving.likelyAt, dinner)}.`;
  if (late > 5)
    return sentences([
      say`That puts dinner at ${clock(plan.serving.likelyAt, dinner)}${forEyes(say`, ${duration(late)} late`)}.`,
      was > 5 ? silent : heldUpWords(scene),
    ]);
  if (was > 5) return say`Dinner is back at ${clock(plan.serving.likelyAt, dinner)}.`;
  return say`Dinner stays at ${clock(plan.serving.likelyAt, dinner)}.`;
}

/** A thermometer this near the ice point reads true, one as far as this is not to be trusted. */
const [trueKelvin, hopelessKelvin] = [0.6, 5];

/** What the ice test showed. */
export function thermometerWords(
  { offsetKelvin }: OutcomeOf<'thermometer-checked'>,
  { dinner }: Scene,
): Spoken {
  const shown = degrees(offsetKelvin, dinner.units);
  const off = degreesApart(Math.abs(offsetKelvin), dinner.units);
  if (Math.abs(offsetKelvin) <= trueKelvin)
    return capital(say`${shown} in ice water: it reads true.`);
  if (Math.abs(offsetKelvin) >= hopelessKelvin)
    return capital(
      say`${shown} in ice water is ${off} off. Stir the ice, change the battery, and try again; I would not trust it so.`,
    );
  return capital(
    say`${shown} in ice water: it reads ${off} ${offsetKelvin > 0 ? 'high' : 'low'}, and I count on that.`,
  );
}

export function readingWords({ celsius, again }: OutcomeOf<'reading-noted'>, scene: Scene): Spoken {
  const { plan, dinner } = scene;
  const offset = dinner.thermometerOffsetKelvin ?? 0;
  if (!plan || scene.stage === 'prep' || scene.stage === 'planning' || scene.stage === 'preheat')
    return capital(say`${degrees(celsius, dinner.units)} to start with, noted.`);
  if (isResting(scene)) {
    const short = shortCoreWords(scene);
    if (short) return sentences([say`It reads ${degrees(celsius, dinner.units)}.`, short]);
    return say`It reads ${degrees(celsius, dinner.units)}, resting. Carve at ${clock(carveAt(scene), dinner)}.`;
  }
  if (again)
    return sentences([say`${degrees(celsius, dinner.units)}, I have it.`, lookWords(scene)]);
  const past = celsius - offset - plan.pullCelsius;
  const reading = dinner.readings.findLast((one) => one.celsius === celsius);
  const doubt = doubtWords(reading, scene);
  // Two spots in one breath: the warmer one calls no pull, and the day is told after the last.
  const spot = sentences([capital(say`${degrees(celsius, dinner.units)}.`), doubt]);
  if (reading && doubtIn(reading, scene) === 'disagrees-with-another') return spot;
  if (past > pastKelvin)
    return sentences([
      capital(
        say`${degrees(celsius, dinner.units)}, ${degreesApart(past, dinner.units)} past the pull: out with it now, onto the board.`,
      ),
      say`Tell me when it is out.`,
    ]);
  if (past >= -0.3)
    return sentences([
      capital(say`${degrees(celsius, dinner.units)}.`),
      callWords('pull', scene),
      say`Tell me when it is out.`,
    ]);
  const choice =
    scene.options && scene.options.length > 0 ? offer(scene.options, scene) : undefined;
  const whyChosen =
    scene.options?.[0]?.kind === 'lower-oven'
      ? say`It is ahead of its hour.`
      : say`That may put dinner late.`;
  return sentences([
    capital(say`${degrees(celsius, dinner.units)}.`),
    doubt,
    choice ? whyChosen : doubted(pullWords(scene)),
    choice ?? (doubt === silent ? lookWords(scene) : silent),
    choice ? silent : doubted(tableWords(scene)),
  ]);
  // Beside a doubt nothing of the plan is news.
  function doubted(words: Spoken): Spoken {
    return doubt === silent ? words : forEyes(words);
  }
}

export const roastSeenIn = ({ plan, forecast, dinner }: Scene): RoastSeen | undefined =>
  plan && forecast && { dinner, forecast, roastInAt: plan.roastInAt };

function doubtIn(reading: Reading | undefined, scene: Scene): SuspectReason | undefined {
  const seen = roastSeenIn(scene);
  return seen && reading && doubtOf(reading, seen);
}

const pullIsDue = ({ plan, now }: Scene): boolean =>
  plan !== undefined && minutesBetween(now, plan.pullAt.p50) <= 1;

/** Why a reading does not count, and what would settle it; silent where it does. */
function doubtWords(reading: Reading | undefined, scene: Scene): Spoken {
  const why = doubtIn(reading, scene);
  if (why === undefined) return silent;
  const { dinner } = scene;
  const core = coreNow(scene);
  const about = core ? degrees(core.p50, dinner.units) : say`less`;
  switch (why) {
    case 'too-high':
    case 'moved-probe':
    case 'disagrees-with-another':
      return sentences([
        say`That does not fit the others: they say about ${about}, and a tip off the middle reads high.`,
        pullIsDue(scene)
          ? silent
          : say`Look again in a couple of minutes, the tip in the very middle.`,
      ]);
    case 'too-low':
    case 'falling':
      return say`That is lower than the others allow: they say about ${about}. Look again in a couple of minutes, a little deeper.`;
    case 'stuck':
      return say`It has not moved since the last one, though the core must have: try it in your hand, or take another thermometer.`;
    case 'wrong-unit':
      return say`The others say about ${about}. Was that in the other scale?`;
    default:
      return assertNever(why);
  }
}

/** Moments of the day that are answered in words of their own. */
export const hasOwnWords = (step: string): boolean =>
  step === 'oven-on' || step === 'oven-down' || step === 'serve' || step === 'put-away';

/** Said once, at the table: what was left on in the kitchen is seen by nobody there. */
export const heatOffWords = ({ dinner }: Scene): Spoken =>
  dinner.oven.at(-1)?.celsius === 0
    ? say`Is the hob off?`
    : say`Oven and hob off now, if they are done with.`;

export function stepDone({ step, presumed, again }: OutcomeOf<'step-done'>, scene: Scene): Spoken {
  if (again) return say`I have that already.`;
  const assumed = presumedWords(presumed, scene);
  switch (step) {
    case 'oven-on':
      return sentences([say`Oven on.`, assumed]);
    case 'oven-down':
      // With the next step called in the same breath, the pull can wait for the screen.
      return sentences([
        say`Down it is.`,
        assumed,
        scene.nextStep === undefined ? pullWords(scene) : forEyes(pullWords(scene)),
      ]);
    case 'serve':
      return sentences([
        say`Enjoy it.`,
        scene.dinner.calls.has('serve:serve') ? silent : heatOffWords(scene),
        assumed,
      ]);
    case 'put-away':
      return afterWords(scene);
    default:
      return sentences([doneTold([step], scene), assumed]);
  }
}

/** An hour that was asked for, and the soonest where it cannot be had. */
export function servingWords(servingAt: number, { plan, dinner }: Scene): Spoken {
  const late = plan?.complete ? minutesBetween(servingAt, plan.serving.likelyAt) : 0;
  return late < 5 || !plan
    ? say`Dinner at ${clock(servingAt, dinner)}.`
    : say`Dinner at ${clock(servingAt, dinner)} cannot be had: ${clock(plan.serving.likelyAt, dinner)} is the soonest${forEyes(say`, ${duration(late)} late`)}.`;
}

export function movedWords(
  { minutes, servingAt }: OutcomeOf<'serving-moved'>,
  scene: Scene,
): Spoken {
  const { dinner, plan } = scene;
  const head = say`Dinner at ${clock(servingAt, dinner)}, ${duration(Math.abs(minutes))} ${minutes >= 0 ? 'later' : 'sooner'}.`;
  if (!plan) return head;
  const soonest = scene.options?.map((option) => option.servingAt).sort((a, b) => a - b)[0];
  if (scene.options && soonest !== undefined && minutesBetween(servingAt, soonest) > 5)
    return sentences([
      capital(say`${clock(servingAt, dinner)} cannot be had.`),
      offer(scene.options, scene),
    ]);
  if (scene.options && scene.options.length > 0)
    return sentences([
      { text: head.text, speech: say`Dinner at ${clock(servingAt, dinner)}.`.speech },
      offer(scene.options, scene),
    ]);
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  if (late > 5)
    return sentences([
      say`Not quite: ${clock(plan.serving.likelyAt, dinner)} is the soonest for dinner.`,
    ]);
  if (scene.stage === 'prep' || scene.stage === 'preheat' || scene.stage === 'planning')
    return sentences([
      head,
      say`So everything starts ${minutes >= 0 ? 'later' : 'sooner'}: the roast goes in at ${clock(plan.roastInAt, dinner)}.`,
    ]);
  return head;
}
