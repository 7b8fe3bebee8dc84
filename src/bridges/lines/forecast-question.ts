/**
 * The wire's question: its schema, which refuses what it does not know by name, and its way into the
 * kitchen's units. Every temperature has a Fahrenheit and a Celsius form, every weight pounds and
 * kilograms; one of the two may stand.
 */
import { z } from 'zod';
import { limits } from '../../base/limits.ts';
import {
  celsiusOfFahrenheit,
  kelvinOfFahrenheitDegrees,
  kilogramsOfPounds,
} from '../../base/units.ts';
import { type ForecastQuestion, type KitchenBelief, usualKitchen } from '../../kitchen/forecast.ts';
import { offsetFromCheck } from '../../planner/heat/thermometer-check.ts';
import { cutNames, cutOf } from './cuts.ts';

/** A thermometer for meat reads so far; beyond it a reading is a slip of tongue or unit. */
const readingFahrenheit = { low: 0, high: 250 };
const longest = limits.roastMinutesHigh;

const within = (low: number, high: number, unit: string) =>
  z
    .number()
    .min(low, `must be at least ${low} ${unit}`)
    .max(high, `must be at most ${high} ${unit}`);
const rounded = (value: number): number => Math.round(value * 10) / 10;
const celsiusWithin = (lowFahrenheit: number, highFahrenheit: number) =>
  within(
    rounded(celsiusOfFahrenheit(lowFahrenheit)),
    rounded(celsiusOfFahrenheit(highFahrenheit)),
    '°C',
  );
const minute = within(0, longest, 'minutes');

const roastSchema = z.strictObject({
  cut: z.string().optional(),
  pounds: within(
    rounded(limits.roastKilogramsLow / 0.45359237),
    rounded(limits.roastKilogramsHigh / 0.45359237),
    'pounds',
  ).optional(),
  kilograms: within(limits.roastKilogramsLow, limits.roastKilogramsHigh, 'kilograms').optional(),
  bones: z
    .int()
    .min(1, 'must be at least 1')
    .max(limits.bonesHigh, `must be at most ${limits.bonesHigh}`)
    .optional(),
  boneless: z.boolean().optional(),
  startFahrenheit: within(-20, 120, '°F').optional(),
  startCelsius: celsiusWithin(-20, 120).optional(),
  minutesOutOfFridge: within(0, longest, 'minutes').optional(),
  frozen: z.boolean().optional(),
});

const ovenSchema = z.strictObject({
  minute: within(-longest, longest, 'minutes'),
  fahrenheit: within(0, 575, '°F').optional(),
  celsius: within(-18, 302, '°C').optional(),
  event: z.enum(['door-open', 'out']).optional(),
});

const readingSchema = z.strictObject({
  minute,
  fahrenheit: within(readingFahrenheit.low, readingFahrenheit.high, '°F').optional(),
  celsius: celsiusWithin(readingFahrenheit.low, readingFahrenheit.high).optional(),
  where: z.string().optional(),
  thermometer: z.enum(['leave-in', 'quick']).optional(),
});

const meanAndDeviation = (most: number, unit: string) =>
  z.strictObject({ mean: within(-most, most, unit), deviation: within(0, most, unit) });

export const questionSchema = z.strictObject({
  roast: roastSchema,
  oven: z.array(ovenSchema).min(1, 'needs at least one setting').max(500),
  fan: z.boolean().optional(),
  onRack: z.boolean().optional(),
  readings: z.array(readingSchema).max(200, 'has room for 200 readings').optional(),
  now: minute.optional(),
  pullFahrenheit: within(40, 210, '°F').optional(),
  pullCelsius: celsiusWithin(40, 210).optional(),
  out: minute.optional(),
  rest: z.enum(['tented', 'open', 'low-oven']).optional(),
  kitchen: z
    .strictObject({
      ovenBiasFahrenheit: meanAndDeviation(120, '°F').optional(),
      ovenBiasKelvin: meanAndDeviation(67, 'K').optional(),
      thermometerOffsetFahrenheit: meanAndDeviation(40, '°F').optional(),
      thermometerOffsetKelvin: meanAndDeviation(22, 'K').optional(),
      /** What it says in ice slush, or in boiling water at a height, in place of an offset. */
      thermometerCheck: z
        .strictObject({
          readFahrenheit: within(-20, 250, '°F').optional(),
          readCelsius: celsiusWithin(-20, 250).optional(),
          in: z.enum(['ice', 'boiling-water']),
          feetAboveSea: within(-1500, 30_000, 'feet').optional(),
        })
        .optional(),
    })
    .optional(),
  seed: z.int().min(0).max(4_294_967_295).optional(),
  members: z.int().min(16).max(4096).optional(),
});
type Wire = z.infer<typeof questionSchema>;

export interface FieldError {
  field: string;
  message: string;
}

export type Asked = { question: ForecastQuestion; inCelsius: boolean } | { error: FieldError };

/** What a line asks, or the first field that is wrong, with a sentence. */
export function questionOfWire(value: unknown): Asked {
  const parsed = questionSchema.safeParse(value);
  if (!parsed.success) return { error: errorOfIssue(parsed.error.issues[0]!) };
  const wire = parsed.data;
  const clash = clashIn(wire);
  if (clash !== undefined) return { error: clash };
  const cut = cutOf(wire.roast.cut ?? 'rib-roast');
  if (cut === undefined)
    return refuse('roast.cut', `"${wire.roast.cut}" is not one of ${cutNames.join(', ')}`);
  const readings = wire.readings ?? [];
  const evidence = Math.max(0, wire.out ?? 0, ...readings.map((reading) => reading.minute));
  const now = wire.now ?? evidence;
  const { roast } = wire;
  return {
    inCelsius: wire.pullCelsius !== undefined,
    question: {
      roast: {
        shape: cut.shape,
        kilograms:
          roast.kilograms ??
          (roast.pounds === undefined ? undefined : kilogramsOfPounds(roast.pounds)),
        bones: roast.bones,
        boneless: roast.boneless ?? (cut.boneless ? true : undefined),
        startCelsius: roast.startCelsius ?? celsius(roast.startFahrenheit),
        minutesOutOfFridge: roast.minutesOutOfFridge,
        frozen: roast.frozen,
      },
      oven: wire.oven.map((setting) => ({
        minute: setting.minute,
        celsius: setting.celsius ?? celsiusOfFahrenheit(setting.fahrenheit!),
        event: setting.event,
      })),
      fan: wire.fan,
      onRack: wire.onRack,
      readings: readings.map((reading) => ({
        minute: reading.minute,
        celsius: reading.celsius ?? celsiusOfFahrenheit(reading.fahrenheit!),
        where: reading.where,
        thermometer: reading.thermometer,
      })),
      nowMinute: now,
      pullCelsius: wire.pullCelsius ?? celsiusOfFahrenheit(wire.pullFahrenheit!),
      outMinute: wire.out,
      rest: wire.rest ?? 'tented',
      kitchen: kitchenOf(wire.kitchen),
      seed: wire.seed ?? 1,
      members: wire.members,
    },
  };
}

const celsius = (fahrenheit: number | undefined): number | undefined =>
  fahrenheit === undefined ? undefined : celsiusOfFahrenheit(fahrenheit);
const refuse = (field: string, message: string): { error: FieldError } => ({
  error: { field, message: `${field} ${message}.` },
});

function kitchenOf(kitchen: Wire['kitchen']): KitchenBelief | undefined {
  if (kitchen === undefined) return undefined;
  const kelvin = (
    told: { mean: number; deviation: number } | undefined,
    inFahrenheit: { mean: number; deviation: number } | undefined,
    otherwise: { mean: number; deviation: number },
  ) =>
    told ??
    (inFahrenheit && {
      mean: kelvinOfFahrenheitDegrees(inFahrenheit.mean),
      deviation: kelvinOfFahrenheitDegrees(inFahrenheit.deviation),
    }) ??
    otherwise;
  return {
    ovenBiasKelvin: kelvin(
      kitchen.ovenBiasKelvin,
      kitchen.ovenBiasFahrenheit,
      usualKitchen.ovenBiasKelvin,
    ),
    thermometerOffsetKelvin: kelvin(
      kitchen.thermometerOffsetKelvin ?? checked(kitchen.thermometerCheck),
      kitchen.thermometerOffsetFahrenheit,
      usualKitchen.thermometerOffsetKelvin,
    ),
  };
}

const metresPerFoot = 0.3048;

function checked(check: NonNullable<Wire['kitchen']>['thermometerCheck']) {
  const readCelsius = check?.readCelsius ?? celsius(check?.readFahrenheit);
  if (check === undefined || readCelsius === undefined) return undefined;
  const { feetAboveSea } = check;
  return offsetFromCheck({
    readCelsius,
    in: check.in,
    metresAboveSea: feetAboveSea === undefined ? undefined : feetAboveSea * metresPerFoot,
  });
}

/** What a schema cannot say: two forms of one figure, none of a needed one, minutes out of order. */
function clashIn(wire: Wire): FieldError | undefined {
  const { roast } = wire;
  const both = (field: string, one: unknown, other: unknown, name: string): FieldError[] =>
    one !== undefined && other !== undefined
      ? [refuse(field, `stands beside ${name}: give one of the two`).error]
      : [];
  const needed = (field: string, one: unknown, other: unknown, name: string): FieldError[] =>
    one === undefined && other === undefined
      ? [refuse(field, `is missing: give it, or ${name}`).error]
      : both(field, one, other, name);
  const now = wire.now;
  const check = wire.kitchen?.thermometerCheck;
  const clashes: FieldError[] = [
    ...(check === undefined
      ? []
      : needed(
          'kitchen.thermometerCheck.readFahrenheit',
          check.readFahrenheit,
          check.readCelsius,
          'readCelsius',
        )),
    ...both('roast.pounds', roast.pounds, roast.kilograms, 'kilograms'),
    ...both('roast.startFahrenheit', roast.startFahrenheit, roast.startCelsius, 'startCelsius'),
    ...wire.oven.flatMap((one, index) =>
      needed(`oven[${index}].fahrenheit`, one.fahrenheit, one.celsius, 'celsius'),
    ),
    ...(wire.readings ?? []).flatMap((one, index) =>
      needed(`readings[${index}].fahrenheit`, one.fahrenheit, one.celsius, 'celsius'),
    ),
    ...needed('pullFahrenheit', wire.pullFahrenheit, wire.pullCelsius, 'pullCelsius'),
    ...(wire.readings ?? []).flatMap((one, index) =>
      now !== undefined && one.minute > now
        ? [refuse(`readings[${index}].minute`, `is ${one.minute}, later than now (${now})`).error]
        : [],
    ),
    ...(now !== undefined && wire.out !== undefined && wire.out > now
      ? [refuse('out', `is ${wire.out}, later than now (${now})`).error]
      : []),
  ];
  return clashes[0];
}

function errorOfIssue(issue: z.core.$ZodIssue): FieldError {
  const path = issue.path.reduce<string>(
    (text, part) =>
      typeof part === 'number'
        ? `${text}[${part}]`
        : text === ''
          ? String(part)
          : `${text}.${String(part)}`,
    '',
  );
  if (issue.code === 'unrecognized_keys') {
    const field = path === '' ? issue.keys[0]! : `${path}.${issue.keys[0]!}`;
    return refuse(field, 'is not a field of a forecast question').error;
  }
  const field = path === '' ? 'the line' : path;
  if (issue.code === 'invalid_type' && issue.input === undefined)
    return refuse(field, `is missing or not ${article(issue.expected)}`).error;
  if (issue.code === 'invalid_type')
    return refuse(field, `must be ${article(issue.expected)}`).error;
  if (issue.code === 'invalid_value')
    return refuse(field, `must be one of ${issue.values.map(String).join(', ')}`).error;
  return refuse(field, issue.message.replace(/\.$/, '')).error;
}

const article = (noun: string): string => {
  const plain = noun === 'int' ? 'whole number' : noun;
  return /^[aeiou]/.test(plain) ? `an ${plain}` : `a ${plain}`;
};
