/** The day told: the whole of it for eyes, the next three times for ears. */
import { minutesBetween } from '../../base/time.ts';
import type { Plan, PlannedStep } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { isLore } from './chores.ts';
import { menuTitles } from './menu.ts';
import {
  atTime,
  between,
  clock,
  dayDate,
  degrees,
  duration,
  ovenDegrees,
  weekdayName,
} from './words.ts';

interface Line {
  at: number;
  words: Spoken;
  /** Worth saying aloud: a move that cannot wait. */
  aloud: boolean;
}

const moments = new Set([
  'oven-on',
  'roast-in',
  'oven-down',
  'oven-up',
  'pull',
  'sear',
  'carve',
  'serve',
]);

/** Every time of the day still to come, in order. */
export function dayLines(scene: Scene): Line[] {
  const { plan, dinner } = scene;
  if (!plan) return [];
  const lines: Line[] = [];
  for (const step of plan.steps) {
    if (step.state === 'done' || step.state === 'skipped') continue;
    if (step.id === 'check' || step.id === 'rest' || step.id === 'put-away') continue;
    // Called on a day gone by and never reported: nothing to plan with.
    if (step.state === 'active' && dayDate(step.startAt, dinner) < dayDate(scene.now, dinner))
      continue;
    lines.push({
      at: step.startAt,
      words: lineOf(step, plan, scene),
      aloud: moments.has(step.id) || isLore(step.id) || isOvenStep(scene, step),
    });
  }
  const stillIn = plan.steps.some((step) => step.id === 'pull' && step.state !== 'done');
  if (plan.checkAt !== undefined && stillIn)
    lines.push({ at: plan.checkAt, words: say`first look at the core`, aloud: false });
  for (const move of plan.oven) {
    if (move.why === 'course' && move.at > scene.now)
      lines.push({
        at: move.at,
        words: say`oven to ${ovenDegrees(move.celsius, dinner.units)}`,
        aloud: true,
      });
  }
  return lines.sort((a, b) => a.at - b.at);
}

export function isOvenStep(scene: Scene, step: PlannedStep): boolean {
  const card = scene.dinner.cards.find((one) => one.id === step.card);
  return (
    card?.card !== 'roast' &&
    card?.steps.some((one) => step.id === `${card.id}.${one.id}` && one.oven) === true
  );
}

function lineOf(step: PlannedStep, plan: Plan, scene: Scene): Spoken {
  const { dinner } = scene;
  switch (step.id) {
    case 'oven-on':
      return say`oven on, ${ovenDegrees(ovenAfter(plan, step.startAt), dinner.units)}`;
    case 'roast-in':
      return say`roast in`;
    case 'oven-down':
      return say`oven down to ${ovenDegrees(ovenAfter(plan, step.startAt), dinner.units)}`;
    case 'oven-up':
      return say`oven up to ${ovenDegrees(ovenAfter(plan, step.startAt), dinner.units)}`;
    case 'pull':
      return {
        text: `pull at ${degrees(plan.pullCelsius, dinner.units).text}, likely between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner)).text}; rest ${duration(plan.restMinutes).text}`,
        speech: `pull at ${degrees(plan.pullCelsius, dinner.units).speech}`,
      };
    case 'serve':
      return say`dinner`;
    default:
      return say`${step.title}`;
  }
}

export const ovenAfter = (plan: Plan, at: number): number =>
  plan.oven.filter((move) => move.at <= at + 60_000).at(-1)?.celsius ?? 0;

/** The next three moves worth hearing, with their times. */
export function nextTimes(scene: Scene): Spoken {
  const lines = dayLines(scene).filter((line) => line.aloud && line.at > scene.now - 60_000);
  const parts = lines.slice(0, 3).map((line) => say`${line.words} ${atTime(line.at, scene)}`);
  return parts.length === 0 ? silent : capital(say`${list(parts)}.`);
}

/** The whole day as a table for eyes; the next three times for ears. */
export function wholeDay(scene: Scene): Spoken {
  const { dinner } = scene;
  const lines = dayLines(scene);
  const days = [...new Set(lines.map((line) => dayDate(line.at, dinner)))];
  const rows = lines.flatMap((line, index) => {
    const row = `${clock(line.at, dinner).text.padStart(5)}  ${line.words.text}`;
    const before = lines[index - 1];
    const dayBegins = !before || dayDate(before.at, dinner) !== dayDate(line.at, dinner);
    // A heading only where the list runs over more days than one.
    return days.length > 1 && dayBegins ? [weekdayName(line.at, dinner), row] : [row];
  });
  return { text: `\n${rows.join('\n')}\n`, speech: nextTimes(scene).speech };
}

/** Opening words of the first plan: the times that matter and what is cooked; the steps are there to be asked for. */
export function openingDay(scene: Scene): Spoken {
  const { plan, dinner } = scene;
  if (!plan) return silent;
  const lateMinutes = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  const late =
    lateMinutes > 5
      ? say`Dinner can be ${clock(plan.serving.likelyAt, dinner)} at the soonest${forEyes(say`, not ${clock(plan.serving.wantedAt, dinner)}`)}.`
      : silent;
  const table = lateMinutes > 5 ? silent : say`, dinner at ${clock(plan.serving.likelyAt, dinner)}`;
  const roastIn = plan.steps.find((step) => step.id === 'roast-in');
  const head =
    roastIn && roastIn.state === 'planned'
      ? say`Roast in ${atTime(plan.roastInAt, scene)}${forEyes(say`, likely out at ${clock(plan.pullAt.p50, dinner)}`)}${table}.`
      : say`Likely out at ${clock(plan.pullAt.p50, dinner)}${table}.`;
  const menu = menuTitles(dinner);
  const told = new Set(dinner.added).size > 0;
  const beside =
    menu.length > 0
      ? forEyes(say`With it${told ? '' : ', unless you say otherwise'}: ${list(menu)}.`)
      : silent;
  const more = forEyes(say`Say "the whole plan" for every step.`);
  return sentences([late, head, beside, more, hopelessThaw(scene)]);
}

/** A frozen roast for whose thaw in the fridge there is no time left. */
function hopelessThaw({ dinner, plan }: Scene): Spoken {
  if (dinner.roast.frozen !== true || !plan || plan.steps.some((step) => step.id === 'thaw'))
    return silent;
  return say`No time is left to thaw it in the fridge. Ask me how to in cold water; else it goes in frozen, and takes longer.`;
}

/** Told to be frozen still while it thaws: no wonder yet, or as it is into the oven. */
export function stillFrozenWords(scene: Scene): Spoken | undefined {
  const { dinner, plan } = scene;
  const thaw = plan?.steps.find((step) => step.id === 'thaw');
  const begun = thaw?.state === 'active' || thaw?.state === 'done';
  if (!plan?.complete || !begun || dinner.roast.frozenToldAt !== scene.now) return undefined;
  const felt = plan.steps.find((step) => step.id === 'thaw-check');
  if (felt?.state === 'planned')
    return say`No wonder yet: it needs a day for every four to five pounds. Leave it in the fridge, and feel it again ${atTime(felt.startAt, scene)}.`;
  return say`Then I plan it as it is, with longer in the oven: roast in ${atTime(plan.roastInAt, scene)}. Or ask me how to thaw it in cold water.`;
}

/** What a frozen roast means, told after the day was: when it goes to the fridge, or that it cannot. */
export function thawWords(scene: Scene): Spoken {
  const { dinner, plan } = scene;
  if (dinner.roast.frozen !== true || !plan?.complete) return silent;
  const thaw = plan.steps.find((step) => step.id === 'thaw');
  if (thaw?.state === 'active' || thaw?.state === 'done') return silent;
  return thaw && (thaw.state === 'planned' || thaw.state === 'due')
    ? capital(say`${atTime(thaw.startAt, scene)} it goes into the fridge to thaw.`)
    : hopelessThaw(scene);
}
