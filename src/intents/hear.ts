/**
 * One pass over a text: what every clause of it says by phrases, frames and a second opinion, as it stands
 * or with stops put where a new sentence may begin. Knows nothing of whom it is said to, nor which of
 * several ways to hear a text is the best.
 */
import { oncePer } from '../base/once.ts';
import type { ReadContext } from '../kitchen/heard.ts';
import type { Said } from './addressed.ts';
import { type Clause, lineOf, type Utterance } from './clause.ts';
import type { Hearing } from './hypothesis.ts';
import type { Language } from './language.ts';
import type { Opinion } from './opinion.ts';
import { mayMatch, wordsOfLine } from './phrase.ts';
import { PhraseIndex } from './phrase-index.ts';
import { inOrder, type Placed } from './placed.ts';
import { Match, type Recogniser } from './recogniser.ts';
import { type Token, tokensOf } from './token.ts';

/** A text is cut off here: nobody says more in one breath, and what is pasted is no report. */
const tokensHigh = 100;
/** What one text may be taken to mean at most; more is noise. */
const heardHigh = 12;

/** A text made ready to be heard in more than one way. */
export interface Hearings {
  tokens: readonly Token[];
  asItStands: Hearing;
  /** With a stop put before each of these tokens. */
  withStops(places: readonly number[]): Hearing;
  /** The same clauses with something else found in them. */
  withFound(hearing: Hearing, found: readonly Placed[]): Hearing;
  /** Some of its words as phrases and frames see them. */
  matchOf(clause: Clause): Match;
  /** What a second opinion takes them for. */
  opinionsOf(clause: Clause): readonly Opinion[];
}

/** A text, heard as it stands and ready to be heard otherwise; undefined where it has too many words. */
export function hearingsOf(
  language: Language,
  text: string,
  context: ReadContext,
): Hearings | undefined {
  const spoken = tokensOf(text);
  if (spoken.length > tokensHigh) return undefined;
  const { tokens, quantities } = language.prepare(spoken, context);
  const line = lineOf(tokens);
  const reader = new Reader(language, { text, quantities }, context);
  const refined = (found: readonly Placed[]): Placed[] =>
    language.refiners
      .reduce<Placed[]>((heard, refine) => refine(heard, context, line), [...found])
      .slice(0, heardHigh);
  const hearingOf = (cut: readonly Token[]): Hearing => {
    const { placed: found, clauses, opinions } = reader.heardIn(cut);
    return {
      said: { line, quantities, placed: refined(found), clauses, context, opinions },
      found,
    };
  };
  return {
    tokens,
    asItStands: hearingOf(tokens),
    withStops: (places) =>
      hearingOf(
        tokens.flatMap((token, at) =>
          places.includes(at) ? [{ word: '.', from: token.from, to: token.from }, token] : [token],
        ),
      ),
    withFound: ({ said }, found) => ({ said: { ...said, placed: refined(found) }, found }),
    matchOf: (clause) => reader.matchOf(clause),
    opinionsOf: (clause) => reader.opinionsOf(reader.matchOf(clause)),
  };
}

/** What was heard in a text as it stands, whoever it was said to. */
export const saidIn = (language: Language, text: string, context: ReadContext): Said | undefined =>
  hearingsOf(language, text, context)?.asItStands.said;

class Reader {
  private readonly language: Language;
  private readonly utterance: Utterance;
  private readonly context: ReadContext;
  private whole = '';
  private readonly opinions = new Map<string, readonly Opinion[]>();
  private readonly heard = new Map<string, Placed[]>();

  constructor(language: Language, utterance: Utterance, context: ReadContext) {
    this.language = language;
    this.utterance = utterance;
    this.context = context;
  }

  heardIn(tokens: readonly Token[]): {
    placed: Placed[];
    clauses: readonly Clause[];
    opinions: readonly Opinion[];
  } {
    this.whole = lineOf(tokens);
    const whole: Clause = { tokens: [...tokens], mood: 'statement' };
    const first = this.pass(this.language.across, whole, []);
    const heard = first.placed.filter((one) =>
      this.language.isForHelper(one, this.whole, this.context),
    );
    const clauses = this.clausesOf(first.rest);
    for (const clause of clauses)
      heard.push(...this.inClause(clause, inOrder(heard), clauses.length));
    const all = first.placed.length > 0 ? this.clausesOf(tokens) : clauses;
    if (all.length === 0) return { placed: inOrder(heard), clauses: [], opinions: [] };
    const together = joined(all);
    const opinions = this.opinionsOf(this.matchOf(together));
    // What no clause says by itself may be said by all of them.
    if (heard.length === 0 && all.length > 1) heard.push(...this.judged(together, [], [], 1));
    return { placed: inOrder(heard), clauses: all, opinions };
  }

  private clausesOf(tokens: readonly Token[]): Clause[] {
    return this.language.clausesOf(tokens, this.utterance.quantities, this.context);
  }

  /** The same words after the same are heard once, however often the text is cut anew. */
  private inClause(clause: Clause, before: readonly Placed[], clauses: number): Placed[] {
    const { tokens, mood, minutesAgo, at } = clause;
    const key = JSON.stringify([
      lineOf(tokens),
      tokens[0]?.from,
      mood,
      minutesAgo,
      at,
      clauses > 1,
      before.map(({ meaning }) => meaning),
    ]);
    const known = this.heard.get(key);
    if (known) return known.map((one) => ({ ...one, clause }));
    const heard = this.heardAnew(clause, before, clauses);
    this.heard.set(key, heard);
    return heard;
  }

  private heardAnew(clause: Clause, before: readonly Placed[], clauses: number): Placed[] {
    const found = oneQuestion(clause, this.phrasesIn(clause, before))
      .map((one) => ({ ...one, clause }))
      .filter((one) => this.language.isForHelper(one, this.whole, this.context));
    return this.judged(clause, found, before, clauses);
  }

  /** What was found in a clause, or what a second opinion puts in its place. */
  private judged(
    clause: Clause,
    found: readonly Placed[],
    before: readonly Placed[],
    clauses: number,
  ): Placed[] {
    const match = this.match(lineOf(clause.tokens), {}, clause, before);
    const opinions = this.opinionsOf(match);
    const instead = this.language.overruled(match, found, opinions, {
      mood: clause.mood,
      clauses,
    });
    const heard: readonly Placed[] =
      instead
        ?.map((meaning) => ({
          meaning,
          tokens: clause.tokens,
          clause,
          framed: true,
          guessed: true,
        }))
        .filter((one) => this.language.isForHelper(one, this.whole, this.context)) ?? found;
    return heard.map((one) => ({
      ...one,
      likelihood: opinions.find(({ intent }) => intent === one.meaning.intent)?.likelihood,
    }));
  }

  matchOf(clause: Clause): Match {
    return this.match(lineOf(clause.tokens), {}, clause, []);
  }

  /** The same words, of now or of a moment that was told, are judged as a clause and as a whole text. */
  opinionsOf(match: Match): readonly Opinion[] {
    const key = `${match.line}${match.isOfAMoment}`;
    const known = this.opinions.get(key);
    if (known) return known;
    const opinions = this.language.opinionsOf(match);
    this.opinions.set(key, opinions);
    return opinions;
  }

  private phrasesIn(clause: Clause, before: readonly Placed[]): Placed[] {
    if (clause.mood !== 'request') {
      const { placed } = this.pass(this.language.within, clause, before);
      return placed.length > 0 ? placed : this.framed(clause, before);
    }
    const asked = this.pass(this.language.within, { ...clause, mood: 'question' }, before).placed;
    if (asked.length > 0) return asked;
    const bare = { ...clause, tokens: this.language.withoutAsking(clause.tokens) };
    const { placed } = this.pass(this.language.within, bare, before);
    return placed.length > 0 ? placed : this.framed(bare, before);
  }

  /** The first frame that makes something of a clause as a whole. */
  private framed(clause: Clause, before: readonly Placed[]): Placed[] {
    const match = this.match(lineOf(clause.tokens), {}, clause, before);
    for (const frame of this.language.frames) {
      if (!frame.moods.includes(clause.mood)) continue;
      const meanings = frame.build(match);
      if (meanings !== undefined)
        return [meanings].flat().map((meaning) => ({
          meaning,
          tokens: clause.tokens,
          framed: true,
        }));
    }
    return [];
  }

  private match(
    line: string,
    groups: Record<string, string | undefined>,
    clause: Clause,
    before: readonly Placed[],
  ): Match {
    return new Match({
      groups,
      context: this.context,
      line,
      whole: this.whole,
      before: before.map((one) => one.meaning),
      quantities: this.utterance.quantities,
      minutesAgo: clause.minutesAgo,
      at: clause.at,
    });
  }

  /** Tries every phrase in turn; what one has taken is gone for the next. */
  private pass(
    recognisers: readonly Recogniser[],
    clause: Clause,
    before: readonly Placed[],
  ): { placed: Placed[]; rest: Token[] } {
    let rest = [...clause.tokens];
    let line = lineOf(rest);
    let words = wordsOfLine(line);
    const placed: Placed[] = [];
    for (const phrase of indexOf(recognisers).candidates(clause.mood, words)) {
      // What an earlier phrase has taken is no longer there.
      if (placed.length > 0 && !mayMatch(phrase.pattern, words)) continue;
      const regex = phrase.pattern.regex();
      let from = 0;
      for (let round = 0; round < 6; round++) {
        regex.lastIndex = from;
        const match = regex.exec(line);
        if (!match || match[0] === '') break;
        const meanings = phrase.build(
          this.match(line, match.groups ?? {}, clause, [...before, ...placed]),
        );
        if (meanings === undefined) {
          // Not here; the same words may stand again further on.
          from = match.index + 1;
          continue;
        }
        from = 0;
        const start = wordsBefore(line, match.index);
        const count = wordsBefore(line, match.index + match[0].length) - start;
        const taken = rest.slice(start, start + count);
        for (const meaning of [meanings].flat()) placed.push({ meaning, tokens: taken });
        const gap = taken[0]!;
        rest = [
          ...rest.slice(0, start),
          { word: '|', from: gap.from, to: gap.from },
          ...rest.slice(start + count),
        ];
        line = lineOf(rest);
        words = wordsOfLine(line);
      }
    }
    return { placed, rest };
  }
}

const indexOf = oncePer((recognisers: readonly Recogniser[]) => new PhraseIndex(recognisers));

/** All clauses of a text as one. */
export const joined = (clauses: readonly Clause[]): Clause => ({
  ...clauses[0]!,
  tokens: clauses.flatMap((clause, at) =>
    at === 0 ? clause.tokens : [{ ...clause.tokens[0]!, word: ',' }, ...clause.tokens],
  ),
  minutesAgo: clauses.find((clause) => clause.minutesAgo !== undefined)?.minutesAgo,
  at: clauses.find((clause) => clause.at !== undefined)?.at,
});

/** A clause asks one thing: what was found first is it, the rest is made of its leavings. */
function oneQuestion(clause: Clause, placed: readonly Placed[]): Placed[] {
  if (clause.mood !== 'question' && clause.mood !== 'request') return [...placed];
  const first = placed.find((one) => one.meaning.intent.startsWith('ask-'));
  return placed.filter((one) => one === first || !one.meaning.intent.startsWith('ask-'));
}

/** How many words of a line come before a place in it. */
function wordsBefore(line: string, index: number): number {
  let count = 0;
  for (let at = 0; at < index; at++) if (line[at] === ' ') count += 1;
  return count;
}
