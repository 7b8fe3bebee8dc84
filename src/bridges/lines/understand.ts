/** The JSON-lines wire of `roastcall understand`: one text in, what it is taken to mean out. */
import { z } from 'zod';
import { isTimeZone } from '../../base/time.ts';
import { read } from '../../intents/read.ts';
import {
  expectations,
  type Lexicon,
  languages,
  type ReadContext,
  stages,
} from '../../kitchen/heard.ts';

const request = z.strictObject({
  text: z.string(),
  now: z.iso.datetime({ offset: true }).optional(),
  timeZone: z.string().refine(isTimeZone, 'no such time zone; try "Europe/London"').optional(),
  stage: z.enum(stages).optional(),
  expecting: z.enum(expectations).optional(),
  units: z
    .strictObject({
      temperature: z.enum(['F', 'C']).optional(),
      weight: z.enum(['lb', 'kg']).optional(),
    })
    .optional(),
  paused: z.boolean().optional(),
  dishes: z.array(z.string()).optional(),
  language: z.enum(languages).optional(),
});

const failure = (message: string, field?: string): string =>
  JSON.stringify({ error: { message, ...(field === undefined ? {} : { field }) } });

/** Where and when a line is said that does not say so itself. */
export interface UnderstandUsual {
  /** Milliseconds since the epoch. */
  now(): number;
  timeZone: string;
}

/** The situation of a line that says nothing of it. */
export const plainSituation = (lexicon: Lexicon, usual: UnderstandUsual): ReadContext => ({
  now: usual.now(),
  timeZone: usual.timeZone,
  units: { temperature: 'F', weight: 'lb' },
  paused: false,
  dishes: [],
  openSteps: [],
  lexicon,
});

/** Answers one line; a line that cannot be read is answered by an error that names the field. */
export function understandLine(line: string, lexicon: Lexicon, usual: UnderstandUsual): string {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return failure('This line is not JSON; write {"text": "it reads 104"}.');
  }
  const parsed = request.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0]!;
    const field =
      issue.code === 'unrecognized_keys' ? issue.keys[0]! : issue.path.map(String).join('.');
    const what =
      issue.code === 'unrecognized_keys' ? 'is not a field of this question' : issue.message;
    return failure(field === '' ? what : `${field}: ${what}`, field === '' ? undefined : field);
  }
  const { text, now, timeZone, stage, expecting, units, paused, dishes, language } = parsed.data;
  const offset = now === undefined ? undefined : fixedZone(now);
  const heard = read(text, {
    ...plainSituation(lexicon, usual),
    ...(now === undefined ? {} : { now: Date.parse(now) }),
    timeZone: timeZone ?? offset ?? usual.timeZone,
    language,
    stage,
    expecting,
    units: { temperature: units?.temperature ?? 'F', weight: units?.weight ?? 'lb' },
    paused: paused ?? false,
    dishes: dishes ?? [],
  });
  return JSON.stringify({ heard });
}

/** The offset an instant was written with, as a zone: whole hours only have a name everywhere. */
function fixedZone(iso: string): string | undefined {
  if (iso.endsWith('Z')) return 'UTC';
  const match = /([+-]\d\d:\d\d)$/.exec(iso);
  return match && isTimeZone(match[1]!) ? match[1] : undefined;
}
