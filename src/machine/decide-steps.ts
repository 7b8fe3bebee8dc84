/** Reports of steps: begun, done, not done, skipped, out; and what they imply. */
import { limits } from '../base/limits.ts';
import {
  addMinutes,
  hourMilliseconds,
  instantOf,
  localTime,
  minutesBetween,
} from '../base/time.ts';
import { celsiusOf, celsiusOfFahrenheit, fahrenheitOfGasMark } from '../base/units.ts';
import { type Card, stepIdOf } from '../kitchen/card.ts';
import { carveMinutesOf, type Dinner, menuOf, roastCardOf } from '../kitchen/dinner.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, said } from './context.ts';
import { choreMeant, madeAhead } from './decide-days.ts';
import { addDish } from './decide-told.ts';
import {
  eventOf,
  factsOf,
  impliedBefore,
  isMoment,
  type Moment,
  type OvenTold,
  overdueBefore,
} from './moments.ts';
import { can } from './stage.ts';
import { withFacts } from './with-facts.ts';

export interface When {
  minutesAgo?: number | undefined;
  time?: string | undefined;
}

/** The instant meant: so long ago, or the latest such clock time that is not in the future. */
export function happenedAt(when: When, context: Context): number {
  const { now, dinner } = context;
  if (when.minutesAgo !== undefined) return addMinutes(now, -when.minutesAgo);
  if (when.time === undefined) return now;
  const { date } = localTime(now, dinner.timeZone);
  const said = instantOf(date, when.time, dinner.timeZone);
  // "At three" in the afternoon is three o'clock just past, whichever half of the day was written.
  const candidates = [
    said,
    said - 12 * hourMilliseconds,
    said + 12 * hourMilliseconds,
    said - 24 * hourMilliseconds,
  ];
  const past = candidates.filter((at) => at <= now + 60_000);
  return past.length > 0 ? Math.max(...past) : now;
}

const aliases: Partial<Record<string, Moment>> = { rest: 'pull', check: 'roast-in' };

/** Which step is meant: an id, a dish (by what is open of it), or the current one. */
export function stepMeant(
  step: string | undefined,
  context: Context,
  doing: 'start' | 'finish',
): { card: Card; id: string } | undefined {
  const cards: Card[] = [...menuOf(context.dinner)];
  const roast = roastCardOf(context.dinner);
  if (roast) cards.unshift(roast);
  const all = cards.flatMap((card) =>
    card.steps.map((one) => ({ card, id: stepIdOf(card, one), one })),
  );
  const current = step === undefined ? currentStep(context) : undefined;
  const wanted = step ?? current;
  if (wanted === undefined) return undefined;
  const chore = roast && choreMeant(wanted, context);
  if (chore) return { card: roast, id: chore };
  const exact = all.find((one) => one.id === wanted) ?? twinOf(wanted, all, context);
  if (exact) return exact;
  // A step that no card has is still of its dish.
  const dish = wanted.split('.')[0];
  const ofDish = all.filter((one) => one.card.id === dish && one.card.card !== 'roast');
  const record = (id: string) => context.dinner.steps.get(id);
  // Of a step for another way of cooking nobody speaks.
  const planned = ofDish.filter((one) => context.expected.starts.has(one.id));
  const open = (planned.length > 0 ? planned : ofDish).filter(
    (one) => record(one.id)?.doneAt === undefined && !record(one.id)?.skipped,
  );
  if (doing === 'start') return open.find((one) => one.one.oven) ?? open[0];
  return open.find((one) => context.expected.open.includes(one.id)) ?? open.at(-1) ?? ofDish.at(-1);
}

/** Cards share steps by their words: the butter taken out is the one that is on the menu. */
function twinOf<Of extends { one: Card['steps'][number] }>(
  id: string,
  menu: readonly Of[],
  context: Context,
): Of | undefined {
  const meant = context.library
    .flatMap((card) => card.steps.map((one) => ({ id: stepIdOf(card, one), one })))
    .find((one) => one.id === id)?.one;
  return meant && menu.find(({ one }) => one.title === meant.title);
}

/** The step that was called last and is not finished, or the first open one. */
export function currentStep(context: Context): string | undefined {
  const { dinner, expected } = context;
  return lastCalled(dinner)?.step ?? expected.open.find((id) => !isFinished(dinner, id));
}

/** Carving ends when all are eating. */
function isFinished(dinner: Dinner, id: string): boolean {
  const record = dinner.steps.get(id);
  if (id === 'carve') return dinner.steps.get('serve')?.doneAt !== undefined;
  return record?.doneAt !== undefined || record?.skipped === true;
}

/** The call made last of a step that is not finished; a warning of one to come and a look ask for no "done". */
export function lastCalled(dinner: Dinner): { step: string; at: number } | undefined {
  const called = [...dinner.calls.values()]
    .filter(
      (call) => call.step !== undefined && call.kind !== 'get-ready' && call.kind !== 'check-due',
    )
    .filter((call) => !isFinished(dinner, call.step as string))
    // Of two calls in one minute, the one said last.
    .reverse()
    .sort((a, b) => b.lastAt - a.lastAt);
  const [last] = called;
  return last?.step === undefined ? undefined : { step: last.step, at: last.lastAt };
}

/** Earlier steps of the same dish are taken to be done when a later one is reported. */
function dishImplied(card: Card, id: string, at: number, context: Context): string[] {
  if (card.card === 'roast') return [];
  const index = card.steps.findIndex((one) => stepIdOf(card, one) === id);
  return card.steps
    .slice(0, Math.max(0, index))
    .map((one) => stepIdOf(card, one))
    .filter((one) => {
      const record = context.dinner.steps.get(one);
      return record?.doneAt === undefined && !record?.skipped && at > 0;
    });
}

/** A roast that sears at the end does so in an oven that was turned up for it. */
const ovenUpImplied = ({ dinner }: Context): string[] =>
  dinner.method === 'sear-last' && dinner.steps.get('oven-up')?.doneAt === undefined
    ? ['oven-up']
    : [];

/** A report that a step began or ended, by word of mouth. */
export function reportStep(
  meant: { card: Card; id: string },
  kind: 'started' | 'done',
  when: When,
  context: Context,
): Decision {
  const at = happenedAt(when, context);
  const moment = aliases[meant.id] ?? (isMoment(meant.id) ? meant.id : undefined);
  if (moment) return reportMoment(moment, at, context, { explicit: hasTime(when) });
  const record = context.dinner.steps.get(meant.id);
  if (meant.id === 'make-ahead' && kind === 'done') return madeAhead(at, context);
  const implied = [
    ...dishImplied(meant.card, meant.id, at, context),
    ...(meant.id === 'sear' ? ovenUpImplied(context) : []),
  ];
  const facts: NewFact[] = implied.map((step) => ({
    type: 'step-done',
    step,
    happenedAt: at,
    presumed: true,
  }));
  if (kind === 'started') {
    if (record?.startedAt !== undefined && hasTime(when)) {
      return decided([{ type: 'step-started', step: meant.id, happenedAt: at }], {
        key: 'step-moved',
        step: meant.id,
        happenedAt: at,
      });
    }
    const oven = meant.card.steps.find((one) => stepIdOf(meant.card, one) === meant.id)?.oven;
    const overdue =
      oven && context.standing.stage !== 'rest'
        ? overdueBefore('pull', context)
        : { facts: [], presumed: [] };
    return decided(
      [...overdue.facts, ...facts, { type: 'step-started', step: meant.id, happenedAt: at }],
      {
        key: 'step-started',
        step: meant.id,
        presumed: [...overdue.presumed, ...implied],
      },
    );
  }
  if (meant.id === 'sear') {
    return decided([...facts, { type: 'step-done', step: 'sear', happenedAt: at }], {
      key: 'step-done',
      step: 'sear',
      presumed: [],
      again: false,
    });
  }
  return decided([...facts, { type: 'step-done', step: meant.id, happenedAt: at }], {
    key: 'step-done',
    step: meant.id,
    presumed: implied,
    again: record?.doneAt !== undefined,
  });
}

const hasTime = (when: When): boolean => when.minutesAgo !== undefined || when.time !== undefined;

/**
 * "It's back in": held in a low oven where that was chosen, else its middle was not there yet and it
 * cooks on, so that it was not out after all.
 */
function backInOven(at: number, { standing, dinner }: Context): Decision | undefined {
  if (standing.stage === 'rest' && dinner.course?.rest === 'low-oven')
    return decided([{ type: 'step-started', step: 'hold', happenedAt: at }], {
      key: 'step-started',
      step: 'hold',
      presumed: [],
    });
  if (!/^(rest|hold|carve)$/.test(standing.stage)) return undefined;
  if (standing.stage === 'hold' && dinner.course?.rest === 'low-oven') return undefined;
  return decided([{ type: 'step-not-done', step: 'pull' }], {
    key: 'step-started',
    step: 'roast-in',
    presumed: [],
  });
}

/** A moment of the roast's day: the chart says whether it can be, else what must have come before. */
export function reportMoment(
  moment: Moment,
  at: number,
  context: Context,
  options: { explicit?: boolean } & OvenTold = {},
): Decision {
  const { dinner } = context;
  const record = dinner.steps.get(moment === 'carve' ? 'carve' : moment);
  const knownAt = record?.doneAt ?? record?.startedAt;
  if (knownAt !== undefined) {
    if (moment === 'roast-in' && !options.explicit) {
      const back = backInOven(at, context);
      if (back) return back;
    }
    // Told again: a time given, or a presumption made real, moves it; anything else changes nothing.
    if (options.explicit || record?.presumed) {
      const moved = factsOf(moment, at, context, { ...options, presumed: false });
      const confirms = moment !== 'oven-down' && !isNews(moment, knownAt, context);
      if (record?.presumed && !options.explicit && confirms)
        return said({ key: 'step-done', step: moment, presumed: [], again: true });
      return decided(moved, { key: 'step-moved', step: moment, happenedAt: at });
    }
    return said({ key: 'step-done', step: moment, presumed: [], again: true });
  }
  const implied = impliedBefore(moment, at, context);
  const facts = [
    ...implied.facts,
    ...factsOf(moment, at, context, { ...options, presumed: false }),
  ];
  if (moment === 'pull') return decided(facts, { key: 'roast-out', presumed: implied.presumed });
  const started = moment === 'carve' || moment === 'roast-in';
  return decided(facts, {
    key: started ? 'step-started' : 'step-done',
    step: moment,
    presumed: implied.presumed,
    ...(started ? {} : { again: false }),
  } as Decision['outcomes'][number]);
}

/** So much later than it was taken for granted, "it's in" is said of now. */
const confirmsMinutes = 12;

/** Nothing else was told of a roast since it was taken to be in: then it goes in when the cook says so. */
function isNews(moment: Moment, knownAt: number, { dinner, now }: Context): boolean {
  if (moment !== 'roast-in' || minutesBetween(knownAt, now) <= confirmsMinutes) return false;
  const since = (at: number | undefined): boolean => at !== undefined && at >= knownAt;
  const down = dinner.steps.get('oven-down');
  return !(
    dinner.readings.some((one) => since(one.happenedAt)) ||
    (since(down?.doneAt) && down?.presumed !== true)
  );
}

/** A dish that the cook cooks is on the menu, though nobody named it: undefined where it is there already. */
function cookedUnnamed(
  heard: HeardOf<'report-started' | 'report-done'>,
  context: Context,
): NewFact[] | undefined {
  const dish = heard.step?.split('.')[0];
  const card = context.library.find((one) => one.id === dish && one.card !== 'roast');
  if (!card || menuOf(context.dinner).some((one) => one.id === card.id)) return undefined;
  return addDish({ intent: 'add-dish', dish: card.id, text: heard.text }, context).facts;
}

export function reportStarted(heard: HeardOf<'report-started'>, context: Context): Decision {
  const added = cookedUnnamed(heard, context);
  if (added) {
    const begun = reportStarted(heard, withFacts(context, added));
    return { facts: [...added, ...begun.facts], outcomes: begun.outcomes };
  }
  const meant = stepMeant(heard.step, context, 'start');
  if (meant) return reportStep(meant, 'started', heard, context);
  if (isMoment(heard.step) || heard.step === 'rest')
    return reportMoment(
      heard.step === 'rest' ? 'pull' : (heard.step as Moment),
      happenedAt(heard, context),
      context,
      {
        explicit: hasTime(heard),
      },
    );
  return said({ key: 'dish-unknown', dish: heard.step });
}

/** What was begun stands in a second oven, so that there is one. */
export function inSecondOven({ facts, outcomes }: Decision, { dinner }: Context): Decision {
  const placed = facts.map((fact): NewFact => {
    if (fact.type !== 'step-started' || fact.presumed) return fact;
    // Told of one that is in already, it moves nothing but its place.
    const happenedAt = dinner.steps.get(fact.step)?.startedAt ?? fact.happenedAt;
    return { ...fact, happenedAt, oven: 1 };
  });
  const second: NewFact[] =
    (dinner.setup.ovens ?? 1) > 1 ? [] : [{ type: 'setup-reported', ovens: 2 }];
  return { facts: [...second, ...placed], outcomes };
}

export function reportDone(heard: HeardOf<'report-done'>, context: Context): Decision {
  const added = cookedUnnamed(heard, context);
  if (added) {
    const told = reportDone(heard, withFacts(context, added));
    return { facts: [...added, ...told.facts], outcomes: told.outcomes };
  }
  const meant = stepMeant(heard.step, context, 'finish');
  if (meant) {
    const begun = meant.id === 'first-course' ? isCarriedIn : hasOnlyBegun;
    return reportStep(meant, begun(meant, context) ? 'started' : 'done', heard, context);
  }
  if (heard.step === undefined) return said({ key: 'nothing-open' });
  if (isMoment(heard.step)) return reportMoment(heard.step, happenedAt(heard, context), context);
  return said({ key: 'dish-unknown', dish: heard.step });
}

/** No first course is eaten so fast. */
const eatenMinutes = 8;

/** "The first course is out" begins it; later on, they have eaten it. */
function isCarriedIn(_: { id: string }, { dinner, now }: Context): boolean {
  const begunAt =
    dinner.steps.get('first-course')?.startedAt ??
    dinner.calls.get('step-due:first-course')?.firstAt;
  return begunAt === undefined || now < addMinutes(begunAt, eatenMinutes);
}

/** "Done", so soon after the call of what goes on by itself: the cook's part is done, and it has begun. */
function hasOnlyBegun({ card, id }: { card: Card; id: string }, { dinner, now }: Context): boolean {
  const step = card.steps.find((one) => stepIdOf(card, one) === id);
  if (card.card === 'roast' || step?.hands !== 'start') return false;
  if (dinner.steps.get(id)?.startedAt !== undefined) return false;
  const called = [...dinner.calls.values()].find(
    (call) => call.step === id && call.kind !== 'get-ready',
  );
  return called !== undefined && now < addMinutes(called.firstAt, step.minutes[0]);
}

/** Whether a dish was put in the oven and has not come out. */
const stands = (card: Card, context: Context): boolean =>
  card.steps
    .filter((one) => one.oven)
    .some((one) => {
      const record = context.dinner.steps.get(stepIdOf(card, one));
      return record?.startedAt !== undefined && record.doneAt === undefined;
    });

/** The last of its steps that stands in the oven. */
const standingStep = (card: Card, context: Context): string | undefined =>
  card.steps
    .filter((one) => one.oven)
    .map((one) => stepIdOf(card, one))
    .findLast((id) => {
      const record = context.dinner.steps.get(id);
      return record?.startedAt !== undefined && record.doneAt === undefined;
    });

export function reportOut(heard: HeardOf<'report-out'>, context: Context): Decision {
  const what = heard.what;
  const at = happenedAt(heard, context);
  if (what === undefined || what === 'roast' || what === context.dinner.roast.cut) {
    if (context.standing.stage === 'sear' && context.dinner.method === 'sear-last')
      return reportStep(
        { card: roastCardOf(context.dinner) as Card, id: 'sear' },
        'done',
        heard,
        context,
      );
    return reportMoment('pull', at, context, { explicit: hasTime(heard) });
  }
  // "They're out": every side that stands in the oven.
  if (what === 'sides') {
    const inside = menuOf(context.dinner).filter((one) => stands(one, context));
    const parts = inside.map((one) => reportOut({ ...heard, what: one.id }, context));
    return parts.length === 0
      ? said({ key: 'nothing-open' })
      : decided(
          parts.flatMap((part) => part.facts),
          ...parts.flatMap((part) => part.outcomes),
        );
  }
  const card = menuOf(context.dinner).find((one) => one.id === what.split('.')[0]);
  if (!card) return said({ key: 'dish-unknown', dish: what });
  const ovenSteps = card.steps.filter((one) => one.oven).map((one) => stepIdOf(card, one));
  const inOven =
    ovenSteps
      .filter((id) => {
        const record = context.dinner.steps.get(id);
        const called = context.dinner.calls.has(`side-in:${id}`);
        return record?.doneAt === undefined && (record?.startedAt !== undefined || called);
      })
      .at(-1) ?? ovenSteps[0];
  const out = card.steps.map((one) => stepIdOf(card, one)).find((id) => id.endsWith('.out'));
  const isLeft = (id: string): boolean => {
    const record = context.dinner.steps.get(id);
    return record?.doneAt === undefined && record?.skipped !== true;
  };
  // Out only to go in again hotter, unless that is done or left out.
  const brownLeft =
    inOven !== undefined && ovenSteps.slice(ovenSteps.indexOf(inOven) + 1).some(isLeft);
  const id = inOven !== undefined && brownLeft ? inOven : (out ?? inOven);
  return id ? reportStep({ card, id }, 'done', heard, context) : said({ key: 'nothing-open' });
}

export function reportNotDone(heard: HeardOf<'report-not-done'>, context: Context): Decision {
  const meant = stepMeant(heard.step, context, 'finish');
  if (!meant) return said({ key: 'nothing-open' });
  const { dinner, expected, now } = context;
  const itsOven = meant.card.steps.some(
    (one) => stepIdOf(meant.card, one) === heard.step && one.oven,
  );
  const begunAt = context.dinner.steps.get(meant.id)?.startedAt;
  // Forgotten, not slow: "the potatoes are not in".
  if (itsOven && heard.step === meant.id && begunAt === undefined)
    return decided([{ type: 'step-not-done', step: meant.id, begun: false }], {
      key: 'step-not-done',
      step: meant.id,
    });
  const standing = stands(meant.card, context) ? standingStep(meant.card, context) : undefined;
  const step = standing ?? meant.id;
  const record = dinner.steps.get(step);
  const isDue = (expected.starts.get(step) ?? now) <= now + 60_000;
  const called = [...dinner.calls.values()].some((call) => call.step === step);
  // Nobody waits for what is not due: it keeps its time.
  if (record === undefined && !isDue && !called) return said({ key: 'step-not-done', step });
  return decided([{ type: 'step-not-done', step }], { key: 'step-not-done', step });
}

export function skipStep(heard: HeardOf<'skip-step'>, context: Context): Decision {
  const meant = stepMeant(heard.step, context, 'finish');
  if (!meant) return said({ key: 'nothing-open' });
  const vital = ['oven-on', 'roast-in', 'pull', 'carve', 'serve'];
  if (vital.includes(meant.id)) return said({ key: 'step-needed', step: meant.id });
  if (meant.id === 'rest') return skipRest(context);
  return decided([{ type: 'step-skipped', step: meant.id }], {
    key: 'step-skipped',
    step: meant.id,
  });
}

/** Nobody waits any longer: carved as soon as it is out, and the table set to that. */
function skipRest(context: Context): Decision {
  const { dinner, now, expected, standing } = context;
  const outcome = { key: 'step-skipped', step: 'rest' } as const;
  const skipped: NewFact = { type: 'step-skipped', step: 'rest' };
  const card = roastCardOf(dinner);
  if (!card || !/^(sear|low-roast|rest|hold)$/.test(standing.stage))
    return decided([skipped], outcome);
  const outAt = dinner.steps.get('pull')?.doneAt ?? expected.starts.get('pull') ?? now;
  const minutes = Math.round(carveMinutesOf(dinner, card));
  const servingAt = addMinutes(Math.max(now, outAt), minutes);
  return decided(
    [
      { type: 'course-set', course: { oven: dinner.course?.oven ?? [], rest: 'open', servingAt } },
      { type: 'serving-time-set', servingAt, because: 'shifted' },
      skipped,
    ],
    outcome,
  );
}

/** No oven roasts below the one in Fahrenheit, and none in a house goes above the other in Celsius. */
const [roastFahrenheitLow, dialCelsiusHigh] = [190, 300];

/** The scale that alone makes sense of a dial's number; the household's where both do. */
function dialScale(value: number | undefined, { dinner, standing }: Context): 'F' | 'C' {
  const household = dinner.units.temperature;
  if (value === undefined) return household;
  if (household === 'C') return value > dialCelsiusHigh ? 'F' : 'C';
  const roasting = /^(planning|prep|preheat|sear|low-roast)$/.test(standing.stage);
  return roasting && value >= 100 && value <= roastFahrenheitLow ? 'C' : 'F';
}

/**
 * The oven's dial. The scale it was told in, named or the only one that makes sense of the number, is the
 * household's from then on, and the reply says so.
 */
export function ovenDial(heard: HeardOf<'report-oven'>, context: Context): Decision | undefined {
  const unit = heard.unit ?? dialScale(heard.temperature, context);
  const moved = dialMoved({ ...heard, unit }, context);
  if (!moved || unit === context.dinner.units.temperature) return moved;
  return {
    facts: [{ type: 'units-set', temperatureUnit: unit }, ...moved.facts],
    outcomes: [{ key: 'units-set' }, ...moved.outcomes],
  };
}

/** Which of the day's moves it was, or a choice of the cook's own. */
function dialMoved(heard: HeardOf<'report-oven'>, context: Context): Decision | undefined {
  const { dinner, standing, expected } = context;
  const unit = heard.unit ?? dinner.units.temperature;
  const at = happenedAt(heard, context);
  if (heard.state === 'off') {
    if (standing.stage === 'sear' || standing.stage === 'low-roast') {
      return decided([{ type: 'oven-stood', celsius: 0, happenedAt: at, ownChoice: true }], {
        key: 'oven-noted',
        celsius: 0,
        down: false,
      });
    }
    return decided([{ type: 'oven-stood', celsius: 0, happenedAt: at }], {
      key: 'oven-noted',
      celsius: 0,
      down: false,
    });
  }
  const celsius =
    heard.gasMark !== undefined
      ? celsiusOfFahrenheit(fahrenheitOfGasMark(heard.gasMark))
      : heard.temperature !== undefined
        ? celsiusOf(heard.temperature, unit)
        : heard.state === 'on'
          ? standing.stage === 'low-roast'
            ? expected.roastCelsius
            : expected.searCelsius
          : undefined;
  if (celsius === undefined) return undefined;
  if (celsius < limits.ovenCelsiusLow || celsius > limits.ovenCelsiusHigh)
    return said({ key: 'bad-value', bad: { what: 'oven', celsius } });
  const inWords = heard.temperature === undefined ? undefined : { value: heard.temperature, unit };
  const stood: NewFact = { type: 'oven-stood', celsius, happenedAt: at, said: inWords };
  const told: OvenTold = { ovenCelsius: celsius, ovenSaid: inWords };
  const preheated: NewFact[] =
    heard.state === 'preheated' ? [{ type: 'oven-preheated', happenedAt: at }] : [];
  if (standing.stage === 'planning' || standing.stage === 'prep' || standing.stage === 'preheat') {
    const known = dinner.steps.get('oven-on')?.doneAt !== undefined;
    return decided(
      [
        ...(known ? [] : [{ type: 'step-done', step: 'oven-on', happenedAt: at } as NewFact]),
        stood,
        ...preheated,
      ],
      { key: 'oven-noted', celsius, down: false },
    );
  }
  const searDown =
    standing.stage === 'sear' &&
    dinner.method === 'sear-first' &&
    celsius < expected.searCelsius - 20;
  if (searDown) {
    const result = reportMoment('oven-down', at, context, told);
    return { facts: result.facts, outcomes: [{ key: 'oven-noted', celsius, down: true }] };
  }
  const pendingDown =
    dinner.calls.has('oven-change:oven-down') && dinner.steps.get('oven-down') === undefined;
  if (pendingDown && can(standing.chart, eventOf('oven-down', context)))
    return reportMoment('oven-down', at, context, told);
  // Called for the sear, an oven turned well up is that, whatever the dial's last mark.
  const upForSear =
    dinner.calls.has('oven-change:oven-up') &&
    ovenUpImplied(context).length > 0 &&
    celsius > expected.roastCelsius + upKelvin;
  if (upForSear)
    return decided([stood, { type: 'step-done', step: 'oven-up', happenedAt: at }], {
      key: 'oven-noted',
      celsius,
      down: false,
    });
  return decided([stood], { key: 'oven-noted', celsius, down: true });
}

/** So far over the roasting heat an oven is one that sears. */
const upKelvin = 60;
