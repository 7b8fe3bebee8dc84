/** The talk itself: answers to what was asked, corrections, undo, pauses, timers, choices. */
import { addMinutes, minutesBetween } from '../base/time.ts';
import { celsiusOf, kilogramsOf, type TemperatureUnit } from '../base/units.ts';
import { serveCelsiusOf } from '../kitchen/doneness.ts';
import type { Fact, FactType, NewFact, Question } from '../kitchen/facts.ts';
import { standing } from '../kitchen/fold.ts';
import type { Doneness, HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, said } from './context.ts';
import { happenedAt, reportMoment, stepMeant } from './decide-steps.ts';
import { isMoment } from './moments.ts';
import { withFacts } from './with-facts.ts';

/** Facts that only record the talk; undo looks past them for something that acted. */
const talk: ReadonlySet<FactType> = new Set<FactType>([
  'dinner-opened',
  'card-taken',
  'words-heard',
  'replied',
  'announced',
  'delivered',
  'plan-told',
  'cautioned',
  'acknowledged',
  'clock-jumped',
  'positions-voided',
  'step-called',
]);

/** The positions of the last turn that changed anything, and the words that did it. */
export function lastActingTurn(
  facts: readonly Fact[],
): { positions: number[]; text: string } | undefined {
  const counting = standing(facts);
  for (let end = counting.length; end > 0; ) {
    let start = end - 1;
    while (start >= 0 && counting[start]?.type !== 'words-heard') start -= 1;
    const words = counting[start];
    if (words?.type !== 'words-heard') return undefined;
    const turn = counting.slice(start + 1, end);
    const acting = turn.filter((fact) => !talk.has(fact.type) && !isPresumedByCall(fact));
    if (acting.length > 0) {
      const called = turn.filter((fact) => fact.type === 'step-called');
      return { positions: [...acting, ...called].map((fact) => fact.position), text: words.text };
    }
    end = start;
  }
  return undefined;
}

const isPresumedByCall = (fact: Fact): boolean => 'presumed' in fact && fact.presumed === true;

export function undo(context: Context): Decision {
  const turn = lastActingTurn(context.facts);
  if (!turn) return said({ key: 'nothing-to-undo' });
  return decided([{ type: 'positions-voided', positions: turn.positions, because: 'undo' }], {
    key: 'undone',
    text: turn.text,
  });
}

/** Facts of a type among those that still count, newest last. */
const ofType = <T extends FactType>(context: Context, type: T): Extract<Fact, { type: T }>[] =>
  standing(context.facts).filter((fact): fact is Extract<Fact, { type: T }> => fact.type === type);

const voiding = (positions: number[]): NewFact => ({
  type: 'positions-voided',
  positions,
  because: 'correct',
});

/** "No, I meant 94": what was said last of that kind no longer counts, and the new value does. */
export function correct(
  heard: HeardOf<'correct'>,
  context: Context,
  decide: DecideReport,
): Decision {
  const { dinner } = context;
  const facts: NewFact[] = [];
  if (heard.temperature !== undefined) return correctTemperature(heard, context, decide);
  if (heard.step !== undefined && (heard.time !== undefined || heard.minutesAgo !== undefined)) {
    const meant = stepMeant(heard.step, context, 'finish');
    const at = happenedAt(heard, context);
    const step = meant?.id ?? heard.step;
    if (isMoment(step)) return reportMoment(step, at, context, { explicit: true });
    return decided([{ type: 'step-started', step, happenedAt: at }], {
      key: 'step-moved',
      step,
      happenedAt: at,
    });
  }
  if (heard.weight !== undefined) {
    const unit = heard.weightUnit ?? dinner.units.weight;
    facts.push({
      type: 'roast-described',
      kilograms: kilogramsOf(heard.weight, unit),
      said: { value: heard.weight, unit },
    });
  }
  if (heard.bones !== undefined) facts.push({ type: 'roast-described', bones: heard.bones });
  if (heard.count !== undefined) facts.push({ type: 'guests-counted', count: heard.count });
  if (heard.doneness !== undefined)
    facts.push({
      type: 'doneness-set',
      doneness: heard.doneness,
      serveCelsius: serveCelsiusOf(heard.doneness),
    });
  if (facts.length > 0)
    return decided(facts, { key: 'corrected', what: facts[0]?.type ?? 'roast-described' });
  if (heard.option !== undefined) return choose(heard.option, context);
  // "It's not 120" takes that number back, whatever was told since.
  const named = heard.was === undefined ? undefined : temperatureTold(heard.was, context);
  if (named)
    return decided([voiding([named.position])], { key: 'undone', text: String(heard.was) });
  const turn = lastActingTurn(context.facts);
  if (!turn) return said({ key: 'nothing-to-undo' });
  return decided([{ type: 'positions-voided', positions: turn.positions, because: 'correct' }], {
    key: 'undone',
    text: turn.text,
  });
}

/** A temperature that was told, of the core or of the oven. */
type ToldTemperature = Extract<Fact, { type: 'reading-taken' | 'oven-stood' }>;

/** The temperatures that were told and still count. */
const temperaturesTold = (context: Context): ToldTemperature[] =>
  standing(context.facts).filter(
    (fact): fact is ToldTemperature =>
      fact.type === 'reading-taken' ||
      (fact.type === 'oven-stood' && fact.presumed !== true && fact.celsius > 0),
  );

/** The last that was told with this number. */
const temperatureTold = (value: number, context: Context): ToldTemperature | undefined =>
  temperaturesTold(context).findLast(
    (one) => Math.abs((one.said?.value ?? one.celsius) - value) < 0.5,
  );

/** The number that is corrected: the one that was named, else the last that was told. */
const numberMeant = (was: number | undefined, context: Context): ToldTemperature | undefined =>
  (was === undefined ? undefined : temperatureTold(was, context)) ??
  temperaturesTold(context).at(-1);

const scaleOf = ({ said }: Pick<ToldTemperature, 'said'>): TemperatureUnit | undefined =>
  said?.unit === 'F' || said?.unit === 'C' ? said.unit : undefined;

/** What was expected had learnt from the wrong number; it may only doubt one that is far from both. */
const farKelvin = 25;

/** How a report is decided on, whoever decides. */
export type DecideReport = (
  heard: HeardOf<'report-reading'> | HeardOf<'report-oven'>,
  context: Context,
) => Decision;

/**
 * The wrong number no longer counts, and the new one is taken as if it had been said so at first: of the
 * same thing, in the same scale, and doubted like any other.
 */
function correctTemperature(
  heard: HeardOf<'correct'>,
  context: Context,
  decide: DecideReport,
): Decision {
  const temperature = heard.temperature as number;
  const doubted = (context.dinner.question?.pending as NewFact[] | undefined)?.find(
    (fact) => fact.type === 'reading-taken',
  );
  if (doubted?.type === 'reading-taken') {
    // What was asked about once is not asked about again.
    const unit = heard.unit ?? scaleOf(doubted) ?? context.dinner.units.temperature;
    const celsius = celsiusOf(temperature, unit);
    const said = { value: temperature, unit };
    return decided(
      [
        { type: 'question-settled', how: 'answered' },
        { type: 'reading-taken', celsius, said, happenedAt: doubted.happenedAt },
      ],
      { key: 'reading-noted', celsius, again: false },
    );
  }
  const wrong = numberMeant(heard.was, context);
  const unit = heard.unit ?? (wrong && scaleOf(wrong));
  const minutesAgo = wrong === undefined ? 0 : minutesBetween(wrong.happenedAt, context.now);
  const again = {
    temperature,
    text: heard.text,
    ...(unit === undefined ? {} : { unit }),
    ...(minutesAgo > 0 ? { minutesAgo } : {}),
  };
  const voided: NewFact[] = wrong === undefined ? [] : [voiding([wrong.position])];
  const without = withFacts(context, voided);
  const learntFromIt =
    wrong?.type === 'reading-taken' &&
    Math.abs(celsiusOf(temperature, unit ?? context.dinner.units.temperature) - wrong.celsius) <
      farKelvin;
  const { facts, outcomes } = decide(
    wrong?.type === 'oven-stood'
      ? { intent: 'report-oven', ...again }
      : { intent: 'report-reading', ...again },
    learntFromIt
      ? { ...without, expected: { ...without.expected, coreNowCelsius: undefined } }
      : without,
  );
  return { facts: [...voided, ...facts], outcomes };
}

/** An oven's dial begins here, a core ends there; in between a bare number may be either's. */
const eitherLow = 45;
const eitherHigh = 100;

/**
 * A bare number that may be the roast's or the oven's, while both are hot: asked about with both
 * answers named, once. Undefined where it can be neither, or only one of them.
 */
export function whoseNumber(heard: HeardOf<'unclear'>, context: Context): Decision | undefined {
  const { dinner, standing, now } = context;
  const value = heard.temperature ?? heard.number;
  if (value === undefined || dinner.question?.kind === 'reading-or-oven') return undefined;
  if (!/^(preheat|sear|low-roast|rest|hold)$/.test(standing.stage)) return undefined;
  const unit = dinner.units.temperature;
  const celsius = celsiusOf(value, unit);
  if (celsius < eitherLow || celsius > eitherHigh) return undefined;
  const said = { value, unit };
  const question: Question = {
    kind: 'reading-or-oven',
    expecting: 'confirmation',
    text: '',
    pending: [
      { type: 'reading-taken', celsius, said, happenedAt: now },
      { type: 'oven-stood', celsius, said, happenedAt: now },
    ] satisfies NewFact[],
  };
  return decided([{ type: 'question-asked', question }], { key: 'asked', question });
}

/** "The roast" or "the oven", said to the question whose number it was. */
function eitherAnswered(option: 1 | 2, context: Context): Decision {
  const pending = (context.dinner.question?.pending ?? []) as NewFact[];
  const settled: NewFact = { type: 'question-settled', how: 'answered' };
  const reading = pending.find((fact) => fact.type === 'reading-taken');
  const stood = pending.find((fact) => fact.type === 'oven-stood');
  if (option === 1 && reading?.type === 'reading-taken')
    return decided([settled, reading], {
      key: 'reading-noted',
      celsius: reading.celsius,
      again: false,
    });
  if (option === 2 && stood?.type === 'oven-stood')
    return decided([settled, stood], { key: 'oven-noted', celsius: stood.celsius, down: false });
  return decided([settled], { key: 'denied' });
}

/** "That sounds good", said of the doneness that the words before it asked about. */
function donenessExplained({ facts }: Context): Doneness | undefined {
  const heard = facts.flatMap((fact) => (fact.type === 'words-heard' ? [fact.heard] : [])).at(-2);
  const asked = heard?.find((one) => one.intent === 'ask-temperature');
  return asked?.intent === 'ask-temperature' ? asked.doneness : undefined;
}

export function affirm(context: Context): Decision {
  const { question, options } = context.dinner;
  if (!question) return said({ key: 'affirmed' });
  if (question.kind === 'reading-or-oven') return eitherAnswered(1, context);
  if (question.expecting === 'choice')
    return options ? choose(1, context) : said({ key: 'affirmed' });
  const pending = (question.pending ?? []) as NewFact[];
  const settled: NewFact = { type: 'question-settled', how: 'answered' };
  const explained = question.kind === 'doneness' ? donenessExplained(context) : undefined;
  if (explained) {
    const serveCelsius = serveCelsiusOf(explained);
    return decided([settled, { type: 'doneness-set', doneness: explained, serveCelsius }], {
      key: 'doneness-set',
      doneness: explained,
      serveCelsius,
    });
  }
  if (question.kind === 'start-over') return decided([settled], { key: 'started-over' });
  const reading = pending.find((fact) => fact.type === 'reading-taken');
  if (reading?.type === 'reading-taken')
    // Of a number in two scales only the first was asked about; else all of it hangs together.
    return decided([settled, ...(question.text === 'unit' ? [reading] : pending)], {
      key: 'reading-noted',
      celsius: reading.celsius,
      again: false,
    });
  const serving = pending.find((fact) => fact.type === 'serving-time-set');
  if (serving?.type === 'serving-time-set')
    return decided([settled, ...pending], { key: 'serving-set', servingAt: serving.servingAt });
  return decided([settled, ...pending], { key: 'affirmed' });
}

export function deny(context: Context): Decision {
  const { question } = context.dinner;
  if (!question) return said({ key: 'denied' });
  const [, asSaid] = (question.pending ?? []) as NewFact[];
  if (question.text === 'unit' && asSaid?.type === 'reading-taken')
    return decided([{ type: 'question-settled', how: 'answered' }, asSaid], {
      key: 'reading-noted',
      celsius: asSaid.celsius,
      again: false,
    });
  return decided([{ type: 'question-settled', how: 'refused' }], { key: 'denied' });
}

export function choose(n: number, context: Context): Decision {
  if (context.dinner.question?.kind === 'reading-or-oven')
    return eitherAnswered(n === 2 ? 2 : 1, context);
  const { options } = context.dinner;
  if (!options || options.length === 0) return said({ key: 'no-choice' });
  const option = options.find((one) => one.n === n);
  if (!option) return said({ key: 'no-such-option', count: options.length });
  const settled: NewFact[] = context.dinner.question
    ? [{ type: 'question-settled', how: 'answered' }]
    : [];
  return decided(
    [
      { type: 'option-chosen', n },
      { type: 'course-set', course: option.course },
      ...(option.drops === undefined
        ? []
        : [{ type: 'dish-dropped' as const, dish: option.drops }]),
      ...(option.skips ?? []).map((step): NewFact => ({ type: 'step-skipped', step })),
      ...(option.takesOut ?? []).map(
        ({ step, minutes }): NewFact => ({ type: 'step-not-done', step, minutes, begun: false }),
      ),
      ...settled,
    ],
    { key: 'chosen', option },
  );
}

export function setTimer(heard: HeardOf<'set-timer'>, context: Context): Decision {
  if (!(heard.minutes > 0 && heard.minutes <= 24 * 60))
    return said({ key: 'bad-value', bad: { what: 'minutes', minutes: heard.minutes } });
  const count = ofType(context, 'timer-set').length + context.dinner.timers.length;
  const dueAt = addMinutes(context.now, heard.minutes);
  return decided([{ type: 'timer-set', id: `timer-${count + 1}`, label: heard.label, dueAt }], {
    key: 'timer-set',
    minutes: heard.minutes,
    label: heard.label,
  });
}

export function cancelTimer(heard: HeardOf<'cancel-timer'>, context: Context): Decision {
  const running = context.dinner.timers.filter((timer) => timer.dueAt > context.now);
  const found =
    (heard.label && running.find((timer) => timer.label?.includes(heard.label as string))) ||
    running.at(-1);
  if (!found) return said({ key: 'no-timer' });
  return decided([{ type: 'timer-cancelled', id: found.id }], {
    key: 'timer-cancelled',
    label: found.label,
  });
}

/** "Okay" to a call: heard, not done. */
export function acknowledge(context: Context): Decision {
  const last = [...context.dinner.calls.entries()].sort((a, b) => b[1].lastAt - a[1].lastAt)[0];
  if (!last) return said({ key: 'acknowledged' });
  return decided([{ type: 'acknowledged', call: last[0] }], {
    key: 'acknowledged',
    kind: last[1].kind,
  });
}
