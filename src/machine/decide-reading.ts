/** Readings of the core: taken, doubted once, corrected. */
import { limits } from '../base/limits.ts';
import { type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOf, celsiusOfFahrenheit } from '../base/units.ts';
import type { Reading } from '../kitchen/dinner.ts';
import type { NewFact, Question } from '../kitchen/facts.ts';
import { standing } from '../kitchen/fold.ts';
import type { HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, said } from './context.ts';
import { happenedAt } from './decide-steps.ts';
import { factsOf, overdueBefore } from './moments.ts';

type ReadingTaken = Extract<NewFact, { type: 'reading-taken' }>;

/** A core does not fall in the oven; more than this under an earlier reading wants a word. */
const fallKelvin = 5;

/** A roast out of the freezer reads no less. */
const frozenCelsiusLow = -20;

/** Beyond the forecast's band by more than this a number is asked about before it counts. */
const improbableKelvin = 14;

/** The first number of a roast is one spot's: a tip off the middle reads high by as much. */
const offMiddleKelvin = 3;

export function reportReading(heard: HeardOf<'report-reading'>, context: Context): Decision {
  const { dinner, standing: charts } = context;
  const unit = heard.unit ?? dinner.units.temperature;
  const celsius = celsiusOf(heard.temperature, unit);
  if (celsius < frozenCelsiusLow || celsius > limits.readingCelsiusHigh)
    return said({ key: 'bad-value', bad: { what: 'reading', celsius } });
  const at = happenedAt(heard, context);
  const reading: ReadingTaken = {
    type: 'reading-taken',
    celsius,
    said: { value: heard.temperature, unit },
    happenedAt: at,
    where: heard.where,
    thermometer: heard.thermometer,
  };
  const before =
    charts.stage === 'planning' || charts.stage === 'prep' || charts.stage === 'preheat';
  if (before && inIceWater(celsius, heard, context)) return thermometerChecked(celsius, at);
  if (before) {
    const implied = overdueBefore('oven-down', context);
    const searPast = overdueBefore('pull', context);
    const wentIn = searPast.presumed.includes('roast-in') || implied.presumed.includes('roast-in');
    if (!wentIn && celsius <= celsiusOfFahrenheit(60))
      return decided([{ type: 'roast-described', startCelsius: celsius }], {
        key: 'reading-noted',
        celsius,
        again: false,
      });
    if (!wentIn && charts.stage !== 'planning') {
      // A warm core before anybody said it is in: it must be in.
      const likely = context.expected.starts.get('roast-in');
      const inAt = Math.min(likely ?? at, at - 30 * 60_000);
      const wentInThen = factsOf('roast-in', inAt, context, { presumed: true });
      if (!couldBeIn(context)) {
        const question: Question = {
          kind: 'reading-improbable',
          expecting: 'confirmation',
          text: 'not-in',
          pending: [...wentInThen, reading],
        };
        return decided([{ type: 'question-asked', question }], { key: 'asked', question });
      }
      return decided(
        [...wentInThen, reading],
        {
          key: 'step-started',
          step: 'roast-in',
          presumed: ['roast-in'],
        },
        { key: 'reading-noted', celsius, again: false },
      );
    }
  }
  const doubt = doubtOf(celsius, reading, context, unit);
  if (doubt)
    return decided([{ type: 'question-asked', question: doubt }], {
      key: 'asked',
      question: doubt,
    });
  const implied = overdueBefore('pull', context);
  // An earlier look that this one bears out was right.
  const borneOut = doubtedReadings(context).filter(
    (one) => at - one.happenedAt >= apartMinutes * 60_000 && bearsOut(celsius, one, at),
  );
  const last = dinner.readings.at(-1);
  const fell = last !== undefined && celsius < last.celsius - fallKelvin;
  const wrong = takenBack(context) && fell ? lastReadingPosition(context) : undefined;
  const voided: NewFact[] =
    wrong === undefined
      ? []
      : [{ type: 'positions-voided', positions: [wrong], because: 'correct' }];
  return decided(
    [...voided, ...implied.facts, ...borneOut.slice(0, 1), reading],
    ...(implied.presumed.length > 0
      ? [
          {
            key: 'step-started' as const,
            step: implied.presumed.at(-1) as string,
            presumed: implied.presumed,
          },
        ]
      : []),
    {
      key: 'reading-noted',
      celsius,
      again: last?.celsius === celsius && at - last.happenedAt < 60_000,
    },
  );
}

/** A roast is not in an oven that nobody lit, an hour and more before it is to go in. */
const [aheadMinutes, openMinutes] = [60, 30];

/** Whether the roast may have gone in without a word: else a number may be meant as how done it is to be. */
function couldBeIn({ dinner, standing: charts, expected, now }: Context): boolean {
  if (charts.oven !== 'off') return true;
  if (minutesBetween(dinner.openedAt, now) < openMinutes) return false;
  const likely = expected.starts.get('roast-in');
  return likely === undefined || minutesBetween(now, likely) < aheadMinutes;
}

const lastReadingPosition = ({ facts }: Context): number | undefined =>
  standing(facts).findLast((fact) => fact.type === 'reading-taken')?.position;

/** A call for the ice test is answered within so long, by a number no further from the ice point. */
const iceTestMinutes = 20;
const iceTestKelvin = 8;

/** Whether a number is the answer to the ice test, and not the roast's. */
function inIceWater(
  celsius: number,
  heard: HeardOf<'report-reading'>,
  { dinner, now }: Context,
): boolean {
  const calls = [...dinner.calls.values()].filter((call) => call.step === 'check-thermometer');
  const asked = calls.some((call) => minutesBetween(call.lastAt, now) <= iceTestMinutes);
  const open = dinner.steps.get('check-thermometer')?.doneAt === undefined;
  const named = /ice|water/.test(heard.where ?? '');
  return Math.abs(celsius) <= iceTestKelvin && (named || (asked && open && !heard.where));
}

const thermometerChecked = (celsius: number, at: Instant): Decision =>
  decided(
    [
      { type: 'thermometer-checked', offsetKelvin: celsius },
      { type: 'step-done', step: 'check-thermometer', happenedAt: at },
    ],
    { key: 'thermometer-checked', offsetKelvin: celsius },
  );

/** Whether the words of this turn doubt the thermometer's earlier place or number. */
function takenBack({ facts }: Context): boolean {
  const words = facts.findLast((fact) => fact.type === 'words-heard');
  if (words?.type !== 'words-heard') return false;
  return words.heard.some(
    (one) => one.intent === 'report-trouble' && one.trouble === 'probe-doubt',
  );
}

/** Two looks so far apart are two points of a climb; nearer, the later one says it all. */
const apartMinutes = 5;

/** No core of these roasts climbs faster, and two looks differ by no more in their spot. */
const [climbKelvinPerMinute, spotKelvin] = [1.2, 4];

const highestAfter = (last: { celsius: number; happenedAt: Instant }, now: Instant): number =>
  last.celsius + spotKelvin + climbKelvinPerMinute * minutesBetween(last.happenedAt, now);

/** The same number, meant in the other scale. */
const inUnit = (reading: ReadingTaken, unit: 'F' | 'C'): ReadingTaken => {
  const value = reading.said?.value ?? reading.celsius;
  return { ...reading, celsius: celsiusOf(value, unit), said: { value, unit } };
};

/** Two spots within so many minutes are two looks at one roast; the forecast tells them apart. */
const besideMinutes = 4;

const besideIt = (other: Reading, { where, happenedAt }: ReadingTaken): boolean =>
  where !== other.where && minutesBetween(other.happenedAt, happenedAt) <= besideMinutes;

/** Numbers that were asked about and stand unanswered. */
const doubtedReadings = ({ dinner: { question } }: Context): ReadingTaken[] =>
  question?.kind === 'reading-improbable' || question?.kind === 'reading-contradicts'
    ? ((question.pending ?? []) as NewFact[]).flatMap((fact) =>
        fact.type === 'reading-taken' ? [fact] : [],
      )
    : [];

/** The same again, or what a roast that read so then has climbed to by now. */
const bearsOut = (celsius: number, earlier: ReadingTaken, now: Instant): boolean =>
  celsius >= earlier.celsius - spotKelvin && celsius <= highestAfter(earlier, now);

/** A number that contradicts an earlier one or the forecast is asked about, once. */
function doubtOf(
  celsius: number,
  reading: ReadingTaken,
  context: Context,
  unit: 'F' | 'C',
): Question | undefined {
  const { dinner, expected, standing: charts } = context;
  // Said a second time, or borne out by a later look, it counts.
  if (doubtedReadings(context).some((one) => bearsOut(celsius, one, context.now))) return undefined;
  const other = unit === 'F' ? 'C' : 'F';
  const ask = (kind: 'reading-improbable' | 'reading-contradicts', text: string): Question => ({
    kind,
    expecting: 'confirmation',
    text,
    // Said no to the other scale, the number counts as it was said.
    pending: text === 'unit' ? [inUnit(reading, other), reading] : [reading],
  });
  // The cook who says why the earlier number was wrong has answered the question already.
  if (takenBack(context)) return undefined;
  const readings = dinner.readings.filter((one) => one.celsius < 150);
  if (readings.some((one) => besideIt(one, reading))) return undefined;
  const last = readings.findLast((one) => one.where === reading.where);
  const inOven = charts.stage === 'sear' || charts.stage === 'low-roast';
  if (last && inOven && celsius < last.celsius - fallKelvin)
    return ask('reading-contradicts', String(last.celsius));
  const band = expected.coreNowCelsius;
  const swapped = unit === 'F' ? celsius * 1.8 + 32 : (celsius - 32) / 1.8;
  // "38" in a house of Fahrenheit, where 38 °C is just what it should be by now.
  if (band && inOven && celsius < band.p10 && swapped > band.p10 - 8 && swapped < band.p90 + 8)
    return ask('reading-improbable', 'unit');
  const leapt = last !== undefined && celsius > highestAfter(last, context.now);
  const first = readings.length === 0;
  const high = leapt ? 0 : first ? offMiddleKelvin : improbableKelvin;
  // No roast comes out by a single number, unless it is just what was to be expected.
  const pulls = first && celsius >= (expected.pullCelsius ?? Number.POSITIVE_INFINITY);
  if (
    band &&
    inOven &&
    (celsius > band.p90 + high ||
      celsius < band.p10 - improbableKelvin ||
      (pulls && celsius > band.p50 + offMiddleKelvin))
  ) {
    const swapFits = unit === 'F' && swapped > band.p10 - 40 && swapped < band.p90 + 40;
    return ask('reading-improbable', swapFits ? 'unit' : String(band.p50));
  }
  return undefined;
}
