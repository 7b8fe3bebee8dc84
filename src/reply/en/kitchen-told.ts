/** What was told of the kitchen and its day: ovens, hands, how fast they are, the dinner's other clocks. */
import { minutesBetween } from '../../base/time.ts';
import { firstCourseMinutes } from '../../kitchen/chores.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { capital, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';
import { dishTitle, titleOf } from './steps.ts';
import { clock, count, duration } from './words.ts';

/** What a second oven takes off the first, or how little there is room for. */
export function setupWords(
  { ovens, rings, carvers }: OutcomeOf<'setup-noted'>,
  { plan, dinner }: Scene,
): Spoken {
  if (ovens !== undefined) {
    const first = plan?.steps.find((step) => step.oven?.index === 1 && step.state === 'planned');
    return first
      ? say`Two ovens: ${dishTitle(dinner, first.card)} in the second at ${clock(first.startAt, dinner)}, so the first is the roast's.`
      : say`Two ovens, noted: the second takes what the roast's cannot.`;
  }
  if (carvers !== undefined)
    return plan
      ? capital(say`${count(carvers)} carve: ${duration(plan.carveMinutes)} of it.`)
      : say`Noted.`;
  return rings === undefined
    ? say`Noted.`
    : say`${capital(count(rings))} rings: never more pots at once than that.`;
}

/** Whose hands, what they do, and until when. */
export function handsWords(
  { who: whose, does, comesAt, leavesAt }: OutcomeOf<'hands-added'>,
  { dinner, now, plan }: Scene,
): Spoken {
  const who = guestName(whose);
  if (leavesAt !== undefined && leavesAt <= now) {
    const next = plan?.steps.find((step) => step.state === 'planned' && step.handsOn !== 'none');
    return sentences([
      capital(say`${who} is off, so all that is left is yours.`),
      next ? say`Next: ${next.title}, at ${clock(next.startAt, dinner)}.` : silent,
    ]);
  }
  if (leavesAt !== undefined)
    return capital(say`${who} till ${clock(leavesAt, dinner)}: nothing is theirs after that.`);
  if (comesAt !== undefined)
    return capital(say`${who} from ${clock(comesAt, dinner)}: what can wait for them does.`);
  if (does === 'carve') {
    const carve = plan?.steps.find((step) => step.id === 'carve');
    return carve && carve.state === 'planned'
      ? capital(
          say`${who} carves, at ${clock(carve.startAt, dinner)}; your hands are free for the sauce.`,
        )
      : capital(say`${who} carves, then.`);
  }
  return capital(say`${who} can take what runs beside yours. I have shared it out.`);
}

const times = (factor: number): string => {
  if (factor === 2) return 'twice the time';
  if (factor === 1.5) return 'half as much time again';
  if (factor === 3) return 'three times the time';
  return factor < 1 ? 'less time' : factor === 1 ? 'the usual time' : 'more time';
};

/** The new pace and what it does to the day, in one sentence. */
export function paceWords(
  { factor, step }: OutcomeOf<'pace-told'>,
  { plan, dinner, now }: Scene,
): Spoken {
  const what = step === undefined ? 'whatever takes your hands' : titleOf(dinner, step);
  const head = say`I count ${times(factor)} for ${what} from now on`;
  if (!plan?.complete) return say`${head}.`;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  const next = plan.steps.find(
    (one) => one.state === 'planned' && one.handsOn === 'throughout' && one.startAt > now,
  );
  const table =
    late > 5
      ? say`dinner comes at ${clock(plan.serving.likelyAt, dinner)}`
      : say`dinner stays at ${clock(plan.serving.likelyAt, dinner)}`;
  return next
    ? say`${head}: ${next.title} at ${clock(next.startAt, dinner)}, and ${table}.`
    : say`${head}; ${table}.`;
}

/** Minutes a plan may stand off what was told and be the same time. */
const sameMinutes = 2;

/** Each clock with its own time, and what it does to the roast's. */
export function clockSetWords(
  { clock: which, clockAt }: OutcomeOf<'clock-set'>,
  { plan, dinner }: Scene,
): Spoken {
  const told = clock(clockAt, dinner);
  const table = plan?.complete ? plan.serving.likelyAt : dinner.servingAt;
  if (which === 'guests-arrive')
    return table === undefined
      ? say`Guests at ${told}.`
      : say`Guests at ${told}, dinner at ${clock(table, dinner)}.`;
  const at = plan?.firstCourseAt;
  if (!plan?.complete || at === undefined || table === undefined)
    return say`First course at ${told}.`;
  const roast = clock(table, dinner);
  const moved = Math.abs(minutesBetween(clockAt, at)) > sameMinutes;
  const head = moved
    ? say`First course at ${clock(at, dinner)}, not ${told}: your hands are on the roast then.`
    : silent;
  if (minutesBetween(plan.serving.wantedAt, table) > 5)
    return sentences([
      head,
      say`${moved ? 'It' : say`First course at ${told}: it`} wants ${duration(firstCourseMinutes)}, so the roast comes at ${roast}.`,
    ]);
  return moved
    ? sentences([head, say`The roast at ${roast}.`])
    : say`First course at ${told}, then the roast at ${roast}.`;
}
