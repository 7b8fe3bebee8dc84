/**
 * The one way in: what a text is taken to mean. Total: whatever the text, the answer holds at least
 * one Heard and nothing is thrown. Knows no plan, no stage machine and no wording of replies.
 */
import { limits } from '../base/limits.ts';
import {
  type Heard,
  heardSchema,
  intents,
  type ReadContext,
  type SpokenLanguage,
} from '../kitchen/heard.ts';
import { german } from './de/german.ts';
import { english } from './en/english.ts';
import { hearingsOf } from './hear.ts';
import { likeliest } from './hypotheses.ts';
import type { Language } from './language.ts';
import type { Meaning } from './recogniser.ts';
import { wordsBetween } from './token.ts';

/** Markup and code are nobody's speech. */
const code = /[<>{}]|\b(?:select|drop|insert)\b.*\b(?:from|table|into)\b.*[;*=]|https?:\/\//i;

const languages: Record<SpokenLanguage, Language> = { en: english, de: german };

/**
 * Reads a few sentences of every kind, so that what is made once (names, expressions) is made before
 * the first words are waited for.
 */
export function warmUp(context: ReadContext): void {
  const { across, within } = languages[context.language ?? 'en'];
  // An expression is translated when it is first run, which takes longer than running it.
  for (const recogniser of [...across, ...within])
    for (const { pattern } of recogniser.phrases) pattern.regex().test(' ');
  // A schema is made ready when it first parses, and each intent has its own.
  for (const intent of intents) heardSchema.safeParse({ intent, text: '' });
  // The second time is what quickens what was only understood the first time.
  for (const text of [...warming, ...warming]) read(text, context);
}

const warming = [
  'seven pound three bone rib roast, dinner at half past six tomorrow for six, medium rare',
  "it reads one oh four, the potatoes are in and the guests are thirty minutes late, what's next",
  'I turned the oven down to three hundred ten minutes ago and skipped the trussing',
  'no, I meant ninety four, set a timer for ten minutes for the carots',
  'how long do the potatoes need, can I use dried thyme, is it safe for my pregnant sister',
  "we haven't got a rack, the power went out and Sam is on gravy, tell me when it reads 110",
  'dinner on Saturday the nineteenth of December at 19:30, or lunch on the third of May',
  'it is carved and the carrots need turning, where do we stand, say that again please',
  'did you see the game last night',
] as const;

/** What `text` is taken to mean, in the order of speech. Never empty, never throws. */
export function read(text: string, context: ReadContext): Heard[] {
  return readIn(languages[context.language ?? 'en'], text, context);
}

function readIn(language: Language, text: string, context: ReadContext): Heard[] {
  if (text.length > limits.utteranceCharacters)
    return [{ intent: 'unclear', text: text.slice(0, 80) }];
  if (code.test(text)) return [{ intent: 'unrelated', text: text.slice(0, 80) }];
  const hearings = hearingsOf(language, text, context);
  if (hearings === undefined) return [{ intent: 'unclear', text: text.slice(0, 80) }];
  const { said } = hearings.asItStands;
  const heard = likeliest(language, hearings)
    .map(({ meaning, tokens }) => asHeard(meaning, wordsBetween(text, tokens) || text.trim()))
    .filter((one) => one !== undefined);
  if (heard.length > 0) return heard;
  const left = asHeard(language.leftOver(said), text.trim());
  return [left ?? { intent: 'unclear', text: text.trim() }];
}

/** A value no slot may hold (a head count of 2.5) makes what was heard worth nothing, not an error. */
export function asHeard(meaning: Meaning, text: string): Heard | undefined {
  const parsed = heardSchema.safeParse({ ...withoutGaps(meaning), text });
  return parsed.success ? parsed.data : undefined;
}

const withoutGaps = (meaning: Meaning): Meaning =>
  Object.fromEntries(Object.entries(meaning).filter(([, value]) => value !== undefined)) as Meaning;
