/**
 * Recognisers: one family of phrases each. A phrase is a pattern and what it makes of a match; what it
 * makes may be nothing, and then the next phrase is tried. A recogniser knows in which moods it listens.
 */
import type { HeardOf, Intent, ReadContext } from '../kitchen/heard.ts';
import type { Mood } from './clause.ts';
import { mealTime, pastTime } from './moment.ts';
import { type Pattern, patternOf, type Vocabulary } from './phrase.ts';
import type { ClockFace, Quantity } from './quantity.ts';

type Unheard<I extends Intent> = I extends Intent ? Omit<HeardOf<I>, 'text'> : never;
/** What a phrase makes: a Heard without the words it rests on. */
export type Meaning = Unheard<Intent>;

interface MatchParts {
  groups: Record<string, string | undefined>;
  context: ReadContext;
  line: string;
  whole: string;
  before: readonly Meaning[];
  quantities: readonly Quantity[];
  minutesAgo?: number | undefined;
  at?: Quantity | undefined;
}

/** A match of one phrase, with its slots read as what they are needed for. */
export class Match {
  readonly groups: Record<string, string | undefined>;
  readonly context: ReadContext;
  /** The clause it was found in, as phrases see it, and what was heard before it in the same text. */
  readonly line: string;
  readonly before: readonly Meaning[];
  /** The whole text, as phrases see it. */
  readonly whole: string;
  /** How long ago it was, where the clause says so. */
  readonly minutesAgo: number | undefined;
  /** At what hour it was, likewise. */
  readonly at: Quantity | undefined;
  private readonly quantities: readonly Quantity[];
  private readonly parts: MatchParts;
  /** The marks of the clause, once they are asked for. */
  private allMarks: readonly string[] | undefined;

  constructor(options: MatchParts) {
    this.parts = options;
    this.groups = options.groups;
    this.context = options.context;
    this.line = options.line;
    this.whole = options.whole;
    this.before = options.before;
    this.quantities = options.quantities;
    this.minutesAgo = options.minutesAgo;
    this.at = options.at;
  }

  /** It tells of a moment that was named, not of now. */
  get isOfAMoment(): boolean {
    return this.minutesAgo !== undefined || this.at !== undefined;
  }

  has(slot: string): boolean {
    return this.groups[slot] !== undefined;
  }

  /** The words of a slot, without what stands for a quantity. */
  words(slot: string): string {
    return (this.groups[slot] ?? '').replaceAll(/<\w+> ?/g, '').trim();
  }

  quantity(slot: string): Quantity | undefined {
    const mark = /<\w(\d+)>/.exec(this.groups[slot] ?? '');
    return mark ? this.quantities[Number(mark[1])] : undefined;
  }

  quantityOfMark(mark: string): Quantity | undefined {
    const index = /<\w(\d+)>/.exec(mark);
    return index ? this.quantities[Number(index[1])] : undefined;
  }

  /** The same clause with other slots. */
  withGroups(groups: Record<string, string | undefined>): Match {
    return new Match({ ...this.parts, groups });
  }

  /** The same slots in another wording of the clause. */
  withLine(line: string): Match {
    return new Match({ ...this.parts, line });
  }

  /** The meal's time that a mark shows, if it shows one. */
  mealTimeOf(mark: string): string | undefined {
    const face = faceOf(this.quantityOfMark(mark));
    return face && mealTime(this.ofHourBefore(face), this.context);
  }

  /** "Guests at six, starters at half past": past the hour that was named before. */
  private ofHourBefore(face: ClockFace): ClockFace {
    if (face.hour !== undefined || face.minute > 30) return face;
    const last = this.before.findLast(({ intent }) => intent === 'set-serving-time');
    const said = last?.intent === 'set-serving-time' ? Number(last.time.slice(0, 2)) : undefined;
    return said === undefined ? face : { ...face, hour: said, half: 'day' };
  }

  /** The marks in the clause whose letter is one of these, in order. */
  marks(letters: string): string[] {
    this.allMarks ??= this.line.match(/<[a-z]\d+>/g) ?? [];
    return this.allMarks.filter((mark) => letters.includes(mark[1]!));
  }

  number(slot: string): number {
    return numberOf(this.quantity(slot)) ?? Number.NaN;
  }

  /** Whole and at least one: heads, bones. */
  count(slot: string): number | undefined {
    const value = this.number(slot);
    return Number.isInteger(value) && value >= 0 && value <= 999 ? value : undefined;
  }

  temperature(slot: string): { temperature: number; unit?: 'F' | 'C' } {
    const quantity = this.quantity(slot);
    return {
      temperature: numberOf(quantity) ?? Number.NaN,
      ...(quantity?.kind === 'temperature' && quantity.unit ? { unit: quantity.unit } : {}),
    };
  }

  /** A duration, or a bare number where the phrase makes minutes of it. */
  minutes(slot: string): number {
    const quantity = this.quantity(slot);
    return quantity?.kind === 'duration' ? quantity.minutes : (numberOf(quantity) ?? Number.NaN);
  }

  face(slot: string): ClockFace | undefined {
    return faceOf(this.quantity(slot));
  }

  mealTime(slot: string): string | undefined {
    const face = this.face(slot);
    return face && mealTime(this.ofHourBefore(face), this.context);
  }

  pastTime(slot: string): string | undefined {
    const face = this.face(slot);
    return face && pastTime(face, this.context);
  }

  date(slot: string): string | undefined {
    const quantity = this.quantity(slot);
    return quantity?.kind === 'date' ? quantity.date : undefined;
  }

  /** The first date anywhere in the clause, else in the text. */
  dateNearby(): string | undefined {
    const mark = (/<y\d+>/.exec(this.line) ?? /<y\d+>/.exec(this.whole))?.[0];
    const quantity = mark ? this.quantityOfMark(mark) : undefined;
    return quantity?.kind === 'date' ? quantity.date : undefined;
  }
}

export function numberOf(quantity: Quantity | undefined): number | undefined {
  if (!quantity) return undefined;
  return 'value' in quantity ? quantity.value : undefined;
}

/** A number as a clock's face, if it can be one. */
export function faceOf(quantity: Quantity | undefined): ClockFace | undefined {
  if (quantity?.kind === 'clock') return quantity.face;
  if (quantity?.kind !== 'number') return undefined;
  if (quantity.face) return quantity.face;
  const { value } = quantity;
  // "seven and a half", said of a meal, is half past seven.
  if (value % 1 === 0.5 && value > 1 && value < 13) return { hour: Math.floor(value), minute: 30 };
  if (!Number.isInteger(value) || value < 1 || value > 24) return undefined;
  return { hour: value % 24, minute: 0, ...(value > 12 ? { half: 'day' as const } : {}) };
}

export type Build = (match: Match) => Meaning | readonly Meaning[] | undefined;

export interface Phrase {
  pattern: Pattern;
  build: Build;
}

/** Reads a whole clause in which no phrase was found: by the words it holds, wherever they stand. */
export interface Frame {
  name: string;
  moods: readonly Mood[];
  build: Build;
}

export interface Recogniser {
  name: string;
  moods: readonly Mood[];
  phrases: readonly Phrase[];
}

/** Makes phrases of one language: many patterns, one meaning. */
export const phrasesIn =
  (vocabulary: Vocabulary) =>
  (patterns: string | readonly string[], build: Build | Meaning): Phrase[] =>
    [patterns].flat().map((pattern) => ({
      pattern: patternOf(pattern as string, vocabulary),
      build: typeof build === 'function' ? build : () => build,
    }));
