/**
 * Reads the labelled corpus. Two halves: `rules`, which the recognisers may be written against, and
 * `scored`, which is only counted. One utterance a line, as JSON; test/corpus/README.md has the fields.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod';
import { expectations, heardSchema, intents, stages } from '../../src/kitchen/heard.ts';

const value = z.union([z.string(), z.number(), z.boolean()]);
/** A slot that must be exact, one of several, or (null) absent. */
const slot = z.union([value, z.array(value).min(2), z.null()]);

const label = z
  .object({ intent: z.enum(intents as [string, ...string[]]) })
  .catchall(slot)
  .superRefine(({ intent, ...slots }, context) => {
    for (const [name, wanted] of Object.entries(slots))
      for (const one of Array.isArray(wanted) ? wanted : [wanted]) {
        const message = slotFault(intent, name, one);
        if (message) context.addIssue({ code: 'custom', message, path: [name] });
      }
  });

/** What the catalogue of intents has against this slot; whether other slots are missing is not asked. */
function slotFault(intent: string, name: string, wanted: unknown): string | undefined {
  const trial = { intent, text: '', ...(wanted === null ? {} : { [name]: wanted }) };
  const issues = heardSchema.safeParse(trial).error?.issues ?? [];
  const fault = issues.find(
    (issue) => issue.code === 'unrecognized_keys' || issue.path[0] === name,
  );
  return fault && `${intent}.${name} = ${JSON.stringify(wanted)}: ${fault.message}`;
}

const line = z.strictObject({
  text: z.string(),
  now: z.iso.datetime({ offset: true }).optional(),
  timeZone: z.string().optional(),
  stage: z.enum(stages).optional(),
  expecting: z.enum(expectations).optional(),
  units: z
    .strictObject({ temperature: z.enum(['F', 'C']), weight: z.enum(['lb', 'kg']) })
    .optional(),
  dishes: z.array(z.string()).optional(),
  paused: z.boolean().optional(),
  language: z.enum(['en', 'de']).optional(),
  heard: z.array(label).min(1),
  or: z.array(z.array(label).min(1)).optional(),
  origin: z.enum(['typed', 'recogniser', 'dialect', 'chatter']),
  family: z.string(),
});

export type Label = z.infer<typeof label>;
export type Row = z.infer<typeof line>;
export type Half = 'rules' | 'learnt' | 'scored' | 'waiting';

/** The files of one half with their rows, in order; a line that is not one is an error with file, line and field. */
export function filesOf(half: Half): { file: string; rows: Row[] }[] {
  const folder = new URL(`./${half}/`, import.meta.url);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.jsonl'))
    .sort()
    .map((file) => ({
      file,
      rows: parseRows(readFileSync(new URL(file, folder), 'utf8'), `${half}/${file}`),
    }));
}

/** Every row of one half, in file order. */
export const rowsOf = (half: Half): Row[] => filesOf(half).flatMap(({ rows }) => rows);

export function parseRows(text: string, name: string): Row[] {
  return text.split('\n').flatMap((raw, at) => {
    if (raw.trim() === '') return [];
    const parsed = line.safeParse(jsonOf(raw, `${name}:${at + 1}`));
    if (parsed.success) return [parsed.data];
    const { path, message } = parsed.error.issues[0]!;
    throw new Error(`${name}:${at + 1}: ${path.join('.')}: ${message}`);
  });
}

function jsonOf(raw: string, place: string): unknown {
  try {
    return JSON.parse(raw);
  } catch {
    throw new Error(`${place}: this line is not JSON`);
  }
}
