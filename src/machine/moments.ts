/**
 * The order in which a roast's day must have happened: a report of one moment implies those before
 * it, which are then taken for granted at the likeliest time and said so.
 */
import { stepIdOf } from '../kitchen/card.ts';
import { roastCardOf } from '../kitchen/dinner.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { RoastEvent } from './chart.ts';
import type { Context } from './context.ts';
import { after, type ChartSnapshot, can } from './stage.ts';

/** In the order of the day. */
export const moments = [
  'oven-on',
  'roast-in',
  'oven-down',
  'pull',
  'carve',
  'serve',
  'put-away',
] as const;
export type Moment = (typeof moments)[number];

export const isMoment = (step: string): step is Moment =>
  (moments as readonly string[]).includes(step);

/** The chart's event of a moment. */
export function eventOf(moment: Moment, context: Context): RoastEvent {
  switch (moment) {
    case 'oven-on':
      return { type: 'OVEN_LIT' };
    case 'roast-in':
      return { type: 'ROAST_IN', searing: context.dinner.method === 'sear-first' };
    case 'oven-down':
      return { type: 'SEARED' };
    case 'pull':
      return { type: 'ROAST_OUT' };
    case 'carve':
      return { type: 'CARVING_BEGUN' };
    case 'serve':
      return { type: 'SERVED' };
    case 'put-away':
      return { type: 'PUT_AWAY' };
  }
}

/** What the oven was told to stand at, and in what words; where nothing was told it is what was called. */
export interface OvenTold {
  ovenCelsius?: number | undefined;
  ovenSaid?: { value: number; unit: string } | undefined;
}

/** The facts that make a moment true. */
export function factsOf(
  moment: Moment,
  happenedAt: number,
  context: Context,
  options: { presumed: boolean } & OvenTold,
): NewFact[] {
  const presumed = options.presumed ? { presumed: true } : {};
  const done = (step: string): NewFact => ({ type: 'step-done', step, happenedAt, ...presumed });
  const stood = (likely: number): NewFact => ({
    type: 'oven-stood',
    celsius: options.ovenCelsius ?? likely,
    said: options.ovenSaid,
    happenedAt,
    ...presumed,
  });
  const { searCelsius, roastCelsius } = context.expected;
  switch (moment) {
    case 'oven-on':
      return [done('oven-on'), stood(searCelsius)];
    case 'oven-down':
      return [done('oven-down'), stood(roastCelsius)];
    case 'roast-in':
      return [
        ...workBehind(context).map(
          (step): NewFact => ({ type: 'step-done', step, happenedAt, presumed: true }),
        ),
        done('roast-in'),
      ];
    case 'pull':
      return [done('pull'), { type: 'step-started', step: 'rest', happenedAt, ...presumed }];
    case 'carve':
      return [done('rest'), { type: 'step-started', step: 'carve', happenedAt, ...presumed }];
    case 'serve':
      return [done('carve'), done('serve')];
    case 'put-away':
      return [done('put-away')];
  }
}

/** The raw roast's own work that nobody reported: in the oven it is behind the cook, done or not. */
function workBehind(context: Context): string[] {
  const card = roastCardOf(context.dinner);
  if (!card) return [];
  const behind = new Set(['out-of-fridge']);
  const goBack = (id: string): void => {
    for (const { step } of card.steps.find((one) => one.id === id)?.after ?? []) {
      if (isMoment(step) || behind.has(step)) continue;
      behind.add(step);
      goBack(step);
    }
  };
  goBack('roast-in');
  return card.steps
    .map((one) => stepIdOf(card, one))
    .filter((step) => behind.has(step) && context.dinner.steps.get(step)?.doneAt === undefined)
    .filter((step) => context.dinner.steps.get(step)?.skipped !== true);
}

const known = (context: Context, step: string): boolean => {
  const record = context.dinner.steps.get(step);
  return (
    record?.doneAt !== undefined || record?.startedAt !== undefined || record?.skipped === true
  );
};

/** When an unreported moment likely happened: when called, else as planned, and not after `by`. */
function likelyAt(moment: Moment, by: number, context: Context): number {
  for (const kind of ['step-due', 'oven-change', 'pull', 'carve', 'serve']) {
    const call = context.dinner.calls.get(`${kind}:${moment}`);
    if (call) return Math.min(call.firstAt, by);
  }
  const planned = context.expected.starts.get(moment);
  const rest = moment === 'pull' ? context.expected.restLowMinutes * 60_000 : 0;
  return Math.min(planned ?? by, by - rest);
}

/** The moments before this one that the chart needs and nobody reported, as facts. */
export function impliedBefore(
  moment: Moment,
  happenedAt: number,
  context: Context,
): { facts: NewFact[]; presumed: Moment[] } {
  const facts: NewFact[] = [];
  const presumed: Moment[] = [];
  let chart: ChartSnapshot = context.standing.chart;
  const wanted = eventOf(moment, context);
  const isPast = (step: Moment): boolean =>
    (context.expected.starts.get(step) ?? Number.POSITIVE_INFINITY) <= happenedAt;
  for (const before of moments.slice(0, moments.indexOf(moment))) {
    // A cold oven cannot have taken the roast, and a sear past its time was surely turned down.
    const needed =
      !can(chart, wanted) ||
      (before === 'oven-on' && context.standing.oven === 'off') ||
      (before === 'oven-down' && isPast('oven-down'));
    if (!needed) continue;
    if (known(context, before)) continue;
    if (before === 'oven-down' && context.dinner.method !== 'sear-first') continue;
    const event = eventOf(before, context);
    if (!can(chart, event)) continue;
    chart = after(chart, event);
    facts.push(
      ...factsOf(before, likelyAt(before, happenedAt, context), context, { presumed: true }),
    );
    presumed.push(before);
  }
  return { facts, presumed };
}

/** Moments that were called or are past their planned time but never reported, up to one. */
export function overdueBefore(
  moment: Moment,
  context: Context,
): { facts: NewFact[]; presumed: Moment[] } {
  const facts: NewFact[] = [];
  const presumed: Moment[] = [];
  let chart: ChartSnapshot = context.standing.chart;
  for (const before of moments.slice(0, moments.indexOf(moment))) {
    if (known(context, before)) continue;
    if (before === 'oven-down' && context.dinner.method !== 'sear-first') continue;
    const at = likelyAt(before, context.now, context);
    const planned = context.expected.starts.get(before);
    const called = at < context.now || (planned !== undefined && planned <= context.now);
    if (!called || !can(chart, eventOf(before, context))) continue;
    chart = after(chart, eventOf(before, context));
    facts.push(...factsOf(before, at, context, { presumed: true }));
    presumed.push(before);
  }
  return { facts, presumed };
}
