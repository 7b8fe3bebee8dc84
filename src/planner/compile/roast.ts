/**
 * The roast's own moments as tasks: oven on, in, turned down, pulled, seared again, carved, served.
 * Before it is in, its going in is a choice; after, the pull is a date that the forecast gives.
 */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { celsiusOfFahrenheit } from '../../base/units.ts';
import { helpersFrom } from '../../kitchen/dinner.ts';
import { householdOven, trueHeatCelsius } from '../household-oven.ts';
import { startMinutes } from '../items.ts';
import { changeMinutes, origin, ovenNow, type Stay, weights } from '../problem.ts';
import {
  holdOvenCelsius,
  ovenMovesOf,
  preheatMinutes,
  roastTurns,
  settingsSoFar,
} from '../roast-day.ts';
import { type Day, minuteIn, searToCarveMinutes } from './day.ts';
import { type Draft, hands, point } from './draft.ts';

/** Nothing new is begun with the last free hands in the minutes before the pull. */
const quietBeforePullMinutes = 5;

/** A bigger roast leaves room for one dish less. */
const twoShelvesKilograms = 5;

export function draftRoast(draft: Draft, day: Day, pullAt: Instant | undefined): void {
  const { program } = day;
  draftIn(draft, day);
  if (day.cameOutAt !== undefined) draft.task('pull', 2, minuteIn(day, day.cameOutAt));
  else if (pullAt !== undefined) draft.task('pull', 2, minuteIn(day, pullAt));
  else {
    draft.task('pull', 2);
    draft.exactly(point('roast-in'), point('pull'), day.roastMinutes, 'roast');
  }
  if (day.cameOutAt === undefined) draft.use(hands, 'pull', -quietBeforePullMinutes, 2);
  draftTable(draft, day);
  // A roast under the knife is seared no more.
  const sear = day.dinner.steps.get('sear');
  const searBegun = (sear?.startedAt ?? sear?.doneAt) !== undefined;
  if (program.method === 'sear-last' && (day.carveBegunAt === undefined || searBegun))
    draftSearAgain(draft, day);
  draftRoastStays(draft, day);
}

function draftIn(draft: Draft, day: Day): void {
  const { dinner, program, wentInAt, grid } = day;
  const roastMinutes = day.roastMinutes;
  draft.task(
    'roast-in',
    roastMinutes,
    wentInAt === undefined ? undefined : minuteIn(day, wentInAt),
  );
  if (program.method === 'sear-first') {
    const calledAt = dinner.calls.get('oven-change:oven-down')?.firstAt;
    draft.task('oven-down', 1, calledAt === undefined ? undefined : minuteIn(day, calledAt));
    if (calledAt === undefined) {
      draft.exactly(point('roast-in'), point('oven-down'), program.searMinutes, 'roast');
      draft.use(hands, 'oven-down', 0, startMinutes);
    }
  }
  if (wentInAt !== undefined) return;
  draft.use(hands, 'roast-in', 0, startMinutes);
  draft.notBefore('roast-in', grid.now);
  const { notDoneAt, moreMinutes = 5 } = dinner.steps.get('roast-in') ?? {};
  if (notDoneAt !== undefined)
    draft.notBefore('roast-in', minuteIn(day, addMinutes(notDoneAt, moreMinutes)));
  const courseAt = dinner.course?.roastInAt;
  if (courseAt !== undefined) draft.notBefore('roast-in', minuteIn(day, courseAt), 'promise');
  if (day.ovenHotAt !== undefined)
    draft.notBefore('roast-in', minuteIn(day, day.ovenHotAt), 'roast');
  if (day.ovenLitAt !== undefined) {
    draft.task('oven-on', preheatMinutes, minuteIn(day, day.ovenLitAt));
    return;
  }
  draft.task('oven-on', preheatMinutes);
  draft.notBefore('oven-on', grid.now);
  draft.use(hands, 'oven-on', 0, startMinutes);
  draft.after(point('oven-on'), point('roast-in'), preheatMinutes, 'roast', weights.hard);
  draft.within(point('oven-on'), point('roast-in'), preheatMinutes, 'wish', 20);
}

function draftTable(draft: Draft, day: Day): void {
  const { grid, carveMinutes } = day;
  const fixed = (at: Instant | undefined): number | undefined =>
    at === undefined ? undefined : minuteIn(day, at);
  draft.task('carve', carveMinutes, fixed(day.carveBegunAt));
  draft.task('serve', 5, fixed(day.servedAt));
  draft.task('put-away', 15);
  draft.exactly(point('serve'), point('put-away'), 60, 'order');
  if (day.servedAt === undefined) draft.use(hands, 'serve', 0, 5);
  if (day.carveBegunAt === undefined) {
    const cooks = 1 + helpersFrom(day.dinner, day.wantedAt).length;
    for (let one = 0; one < Math.min(cooks, day.dinner.setup.carvers ?? 1); one += 1)
      draft.use(hands, 'carve', 0, carveMinutes);
    // Once called it stands where it was called, until something moves it.
    const calledAt = day.dinner.calls.get('carve:carve')?.firstAt;
    draft.notBefore('carve', calledAt === undefined ? grid.now : minuteIn(day, calledAt));
    draft.after(point('pull'), point('carve'), day.restLowMinutes, 'roast', weights.hard);
    if (day.cameOutAt === undefined)
      draft.after(point('pull'), point('carve'), day.restPlannedMinutes, 'wish', weights.rest);
    const longest = Math.max(day.rest.p90, day.restPlannedMinutes);
    draft.within(point('pull'), point('carve'), longest, 'wish', weights.rest);
  }
  if (day.servedAt === undefined) {
    draft.exactly(point('carve'), point('serve'), carveMinutes, 'roast');
    const wanted = minuteIn(day, day.wantedAt);
    draft.after(point(origin), point('serve'), wanted, 'table', weights.table);
    draft.within(point(origin), point('serve'), wanted, 'table', weights.table);
  }
}

/** Sear-last: it goes back into an oven as hot as it will go, just before the knife. */
function draftSearAgain(draft: Draft, day: Day): void {
  const { dinner, program, grid } = day;
  const begunAt = dinner.steps.get('sear')?.startedAt ?? dinner.steps.get('sear')?.doneAt;
  draft.task(
    'sear',
    program.searMinutes,
    begunAt === undefined ? undefined : minuteIn(day, begunAt),
  );
  if (begunAt !== undefined || day.carveBegunAt !== undefined) return;
  draft.use(hands, 'sear', 0, startMinutes);
  draft.notBefore('sear', grid.now);
  draft.after(point('pull'), point('sear'), day.restLowMinutes, 'roast', weights.hard);
  const gap = program.searMinutes + searToCarveMinutes;
  draft.after(point('sear'), point('carve'), gap, 'roast', weights.hard);
  draft.within(point('sear'), point('carve'), gap, 'wish', 200);
  draft.stays.push({
    task: 'sear',
    from: point('sear'),
    to: point('sear', program.searMinutes),
    lowCelsius: program.searCelsius,
    highCelsius: program.searCelsius,
    likelyCelsius: program.searCelsius,
    shelves: 1,
    doorShutMinutes: 0,
    oven: 0,
  });
}

/** The oven belongs to the roast while it is in: its program is no choice of the dishes. */
function draftRoastStays(draft: Draft, day: Day): void {
  const { program, dinner } = day;
  const shelves = day.kilograms > twoShelvesKilograms ? 2 : 1;
  const stay = (from: Stay['from'], to: Stay['to'], celsius: number): void => {
    draft.stays.push({
      task: 'roast-in',
      from,
      to,
      lowCelsius: celsius,
      highCelsius: celsius,
      likelyCelsius: celsius,
      shelves,
      doorShutMinutes: 0,
      oven: 0,
    });
  };
  if (day.cameOutAt === undefined && day.wentInAt === undefined) {
    if (program.method === 'sear-first') {
      stay(point('roast-in'), point('oven-down'), program.searCelsius);
      stay(point('oven-down'), point('pull'), program.roastCelsius);
    } else stay(point('roast-in'), point('pull'), program.roastCelsius);
  } else if (day.cameOutAt === undefined && day.wentInAt !== undefined) {
    for (const segment of segmentsOf(day, day.wentInAt))
      stay(segment.from, segment.to, segment.celsius);
  }
  if (day.cameOutAt !== undefined) draftHeatNow(draft, day);
  // A second oven is cold until it was called for.
  if ((dinner.setup.ovens ?? 1) > 1)
    draftHeat(draft, day, 1, trueHeatCelsius(settingsSoFar(dinner), 1, day.now));
  if (dinner.course?.rest === 'low-oven' && !holdIsOver(day)) draftHold(draft, day, shelves);
}

/** A held roast's box: above what the consumer rule asks of cooked meat, below what cooks it on fast. */
export const holdRange = {
  lowCelsius: celsiusOfFahrenheit(165),
  highCelsius: celsiusOfFahrenheit(175),
  likelyCelsius: holdOvenCelsius,
};

/** Once the oven was turned up again for the dishes, or the knife is in. */
function holdIsOver(day: Day): boolean {
  if (day.carveBegunAt !== undefined) return true;
  const last = settingsSoFar(day.dinner)
    .filter((move) => (move.oven ?? 0) === 0)
    .at(-1);
  if (day.cameOutAt === undefined || !last || last.at <= day.cameOutAt) return false;
  return last.celsius > holdRange.highCelsius + 1;
}

/** In the box from when the oven has come down to it until the knife, or until a dish needs the oven. */
function draftHold(draft: Draft, day: Day, shelves: number): void {
  const { grid, program } = day;
  const heat = (celsius: number): { lowCelsius: number; highCelsius: number } => ({
    lowCelsius: celsius,
    highCelsius: celsius,
  });
  const now = day.cameOutAt === undefined ? program.roastCelsius : heatNow(day);
  const change = changeMinutes(heat(now), holdRange, householdOven);
  draft.task('hold-in', 1);
  draft.task('hold-out', 1);
  // It waits for what is still in the oven and could not bear so little heat.
  if (day.cameOutAt === undefined)
    draft.after(point('pull'), point('hold-in'), change, 'order', weights.hard);
  else draft.notBefore('hold-in', grid.now + change, 'order');
  draft.within(point('pull'), point('hold-in'), change, 'wish', 1);
  draft.after(point('pull'), point('hold-out'), 0, 'order', weights.hard);
  // A hold that has not begun may be left out: then it is over before it begins.
  if (now <= holdRange.highCelsius + 1) draft.notBefore('hold-out', grid.now);
  draft.within(point('carve'), point('hold-out'), 0, 'order', weights.hard);
  draft.after(point('carve'), point('hold-out'), 0, 'wish', 1);
  draft.stays.push({
    task: 'hold-out',
    from: point('hold-in'),
    to: point('hold-out'),
    ...holdRange,
    shelves,
    doorShutMinutes: 0,
    oven: 0,
  });
}

/** As its dial was turned, by word or by the roast's own program. */
function heatNow({ dinner, program, wentInAt, now }: Day): number {
  const own = wentInAt === undefined ? [] : ovenMovesOf(dinner, program, wentInAt);
  const turns = roastTurns(dinner, own);
  const lit = turns.some((turn) => (turn.oven ?? 0) === 0);
  return lit ? trueHeatCelsius(turns, 0, now) : program.roastCelsius;
}

/** What the oven has already, once it is the dishes' own: from there it takes time to anywhere. */
function draftHeatNow(draft: Draft, day: Day): void {
  draftHeat(draft, day, 0, heatNow(day));
}

function draftHeat(draft: Draft, day: Day, oven: number, celsius: number): void {
  draft.stays.push({
    task: ovenNow,
    from: point(origin, day.grid.now - 1),
    to: point(origin, day.grid.now),
    lowCelsius: celsius,
    highCelsius: celsius,
    likelyCelsius: celsius,
    shelves: 0,
    doorShutMinutes: 0,
    oven,
  });
}

/** What the oven was set to and will be for the roast, piece by piece to the pull. */
function segmentsOf(
  day: Day,
  wentInAt: Instant,
): { from: Stay['from']; to: Stay['to']; celsius: number }[] {
  const { dinner, program } = day;
  const told = dinner.oven.map(({ at, celsius }) => ({ at, celsius }));
  const lastToldAt = told.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  const moves = ovenMovesOf(dinner, program, wentInAt).filter((move) => move.at > lastToldAt);
  const all = [...told, ...moves].sort((a, b) => a.at - b.at);
  return all.flatMap((one, index) => {
    const next = all[index + 1];
    if (one.celsius <= 0 || (next && next.at <= wentInAt)) return [];
    const from = point(origin, minuteIn(day, Math.max(one.at, wentInAt)));
    const to = next ? point(origin, minuteIn(day, next.at)) : point('pull');
    if (next && minutesBetween(day.now, next.at) < 0) return [];
    return [{ from, to, celsius: one.celsius }];
  });
}
