/** A dinner written down for `roastcall plan`: its schema, and how such a file is read. */
import { LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { type Instant, instantOf, isTimeZone } from '../base/time.ts';
import { celsiusOf, kilogramsOf } from '../base/units.ts';
import { danglingAlias } from '../cards/alias.ts';
import { methods } from '../kitchen/facts.ts';
import { donenessWords, preparedWords } from '../kitchen/heard.ts';
import type { WrittenDinner } from '../session/day.ts';

const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time HH:MM, such as "19:00"');
const date = z.iso.date('a date YYYY-MM-DD');

export const planFileSchema = z
  .strictObject({
    date: date.describe('the day of the dinner'),
    serving: clockTime.describe('when it should be on the table'),
    timeZone: z
      .string()
      .refine(isTimeZone, 'a time zone, such as "America/Chicago"')
      .optional()
      .describe("default: this machine's"),
    units: z
      .strictObject({ temperature: z.enum(['F', 'C']), weight: z.enum(['lb', 'kg']) })
      .optional()
      .describe('default: F and lb'),
    from: z
      .strictObject({ date: date.optional(), time: clockTime })
      .optional()
      .describe('when the cook can begin; default: eight in the morning of the day'),
    guestsArrive: clockTime.optional().describe('when guests are at the door'),
    firstCourse: clockTime.optional().describe('when a first course is out; the roast follows it'),
    guests: z.number().int().positive().max(60),
    roast: z.strictObject({
      cut: z.string().describe('the id of a roast card, such as "rib-roast"'),
      weight: z.number().positive().optional().describe('in the unit of weight'),
      bones: z.number().int().min(0).max(8).optional(),
      boneless: z.boolean().optional(),
      prepared: z.enum(preparedWords).optional(),
      frozen: z.boolean().optional(),
      startTemperature: z.number().optional().describe('of the core when it goes in'),
    }),
    doneness: z.enum(donenessWords).optional(),
    serveTemperature: z.number().optional().describe('of the core on the plate'),
    method: z.enum(methods).optional(),
    dishes: z.array(z.string()).optional().describe('ids of cards; default: the usual ones'),
    helpers: z.array(z.string().min(1)).optional().describe('who else has hands free'),
    ovens: z.number().int().min(1).max(2).optional().describe('default: one'),
    rings: z.number().int().min(1).max(8).optional().describe('of the hob; default: four'),
    carvers: z
      .number()
      .int()
      .min(1)
      .max(4)
      .optional()
      .describe('who carve, each three minutes and one a guest of theirs; default: one'),
    comes: z
      .array(
        z.strictObject({
          what: z.string().min(1).describe('the id of a dish, of a step or of a tool'),
          date: date.optional(),
          at: clockTime,
        }),
      )
      .optional()
      .describe('what is not in the house yet: nothing is begun with it before'),
    without: z.array(z.string().min(1)).optional().describe('tools that are lacking'),
    seed: z.number().int().nonnegative().optional(),
  })
  .meta({ id: 'roastcall-plan', title: 'A dinner to be planned' });

type PlanFile = z.infer<typeof planFileSchema>;

/** What is wrong with a file, and where; lines and columns from 1. */
export interface PlanFault {
  line: number;
  column: number;
  sentence: string;
}

export function readPlanFile(
  text: string,
  home: { timeZone: string },
): { dinner: WrittenDinner; faults?: undefined } | { faults: PlanFault[]; dinner?: undefined } {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter });
  const place = (offset: number): { line: number; column: number } => {
    const { line, col } = counter.linePos(offset);
    return { line, column: col };
  };
  if (document.errors.length > 0) {
    return {
      faults: document.errors.map((error) => ({
        ...place(error.pos[0]),
        sentence: error.message.split('\n')[0]?.replace(/ at line.*$/, '') ?? 'not YAML',
      })),
    };
  }
  const alias = danglingAlias(document);
  if (alias !== undefined)
    return {
      faults: [{ ...place(alias), sentence: 'a star here stands for no name given earlier' }],
    };
  const checked = planFileSchema.safeParse(document.toJS());
  if (checked.success) return { dinner: writtenOf(checked.data, home) };
  return {
    faults: checked.error.issues.flatMap((issue) => {
      const path = issue.path.filter((key) => typeof key !== 'symbol');
      if (issue.code !== 'unrecognized_keys')
        return [
          { ...place(offsetOf(document, path)), sentence: `${field(path)}: ${issue.message}` },
        ];
      return issue.keys.map((key) => ({
        ...place(offsetOf(document, [...path, key])),
        sentence: `${field([...path, key])}: there is no such field; see roastcall plan --schema`,
      }));
    }),
  };
}

/** Where a field stands, or else the nearest thing around it that does stand in the file. */
function offsetOf(document: ReturnType<typeof parseDocument>, path: (string | number)[]): number {
  for (let depth = path.length; depth > 0; depth -= 1) {
    const node = document.getIn(path.slice(0, depth), true) as { range?: number[] } | undefined;
    if (node?.range?.[0] !== undefined) return node.range[0];
  }
  return 0;
}

const field = (path: (string | number)[]): string => path.join('.') || 'the file';

function writtenOf(file: PlanFile, home: { timeZone: string }): WrittenDinner {
  const timeZone = file.timeZone ?? home.timeZone;
  const units = file.units ?? ({ temperature: 'F', weight: 'lb' } as const);
  const at = (time: string, day: string): Instant => instantOf(day, time, timeZone);
  const hour = (time: string | undefined): Instant | undefined =>
    time === undefined ? undefined : at(time, file.date);
  const { weight, startTemperature, ...roast } = file.roast;
  const celsius = (value: number | undefined): number | undefined =>
    value === undefined ? undefined : celsiusOf(value, units.temperature);
  return {
    opening: { timeZone, units, seed: file.seed ?? 1, language: 'en' },
    now: at(file.from?.time ?? '08:00', file.from?.date ?? file.date),
    servingAt: at(file.serving, file.date),
    guestsArriveAt: hour(file.guestsArrive),
    firstCourseAt: hour(file.firstCourse),
    guests: file.guests,
    roast: {
      ...roast,
      kilograms: weight === undefined ? undefined : kilogramsOf(weight, units.weight),
      startCelsius: celsius(startTemperature),
    },
    doneness: file.doneness,
    serveCelsius: celsius(file.serveTemperature),
    method: file.method,
    dishes: file.dishes,
    helpers: file.helpers,
    lacks: file.without,
    ovens: file.ovens,
    rings: file.rings,
    carvers: file.carvers,
    comes: file.comes?.map(({ what, date: day, at: time }) => ({
      thing: what,
      comesAt: at(time, day ?? file.date),
    })),
  };
}
