/**
 * Other ways to hear a text, and which of them is the likeliest. A text heard by its phrases alone, word for
 * word, is left as it is; any other is also heard with a stop where a new sentence may begin, with one thing
 * left out, with a clause taken for what the second opinion holds it for, and as talk. Language-free: a
 * language brings where a sentence may begin, what an intent makes of a clause, and what speaks for a way.
 */
import { oncePer } from '../base/once.ts';
import type { Clause } from './clause.ts';
import { type Hearings, joined } from './hear.ts';
import type { Hypothesis, Rescoring } from './hypothesis.ts';
import type { Language } from './language.ts';
import { asksNothing, inOrder, isFound, type Placed, talk } from './placed.ts';
import { isStop } from './token.ts';

/** So many places for a stop are tried, each this likely at least. */
const stopsHigh = 2;
const breathLow = 0.05;
/** Of a whole text, and of one clause of several: so many opinions are tried, each this likely at least. */
const guesses = { whole: { high: 3, low: 0.04 }, clause: { high: 2, low: 0.15 } };
/** A text of more clauses than this is not guessed at clause by clause. */
const clausesHigh = 6;

/** So few words, while something is asked, answer it. */
const wordsOfAnAnswer = 4;

/** What of a text may be acted on, heard in the likeliest way. */
export function likeliest(language: Language, hearings: Hearings): readonly Placed[] {
  const asItStands = language.addressed(hearings.asItStands.said);
  const { rescoring } = language;
  if (rescoring === undefined || isPlain(rescoring, hearings, asItStands)) return asItStands;
  let best = asItStands;
  let most = Number.NEGATIVE_INFINITY;
  const ways = hypothesesOf(language, rescoring, hearings, asItStands);
  if (ways.length === 1) return asItStands;
  for (const [at, way] of ways.entries()) {
    const worth = rescoring.worthOf(way, hearings.opinionsOf) + (at === 0 ? rescoring.head : 0);
    if (worth > most) {
      most = worth;
      best = way.placed;
    }
  }
  return best;
}

/** Nothing but an emergency goes before everything; phrases that explain every word that says something need no second hearing. */
export function isPlain(
  { isSmall }: Rescoring,
  { tokens, asItStands }: Hearings,
  placed: readonly Placed[],
): boolean {
  if (placed.some(({ meaning }) => meaning.intent === 'emergency')) return true;
  if (placed.length !== asItStands.said.placed.length) return false;
  // "The oven", when it was asked which: hardly a word, and the question says what it is.
  if (asItStands.said.context.expecting && placed.length > 0 && tokens.length <= wordsOfAnAnswer)
    return true;
  if (placed.length === 0 || !placed.every(isFound)) return false;
  const explained = new Set(placed.flatMap((one) => one.tokens.map(({ from }) => from)));
  return tokens.every(({ word, from }) => isStop(word) || explained.has(from) || isSmall(word));
}

/** All ways to hear a text that come to something else, the text as it stands first. */
export function hypothesesOf(
  language: Language,
  rescoring: Rescoring,
  hearings: Hearings,
  asItStands: readonly Placed[],
): Hypothesis[] {
  const { asItStands: first } = hearings;
  const ways: Hypothesis[] = [];
  const known = new Set<string>();
  const add = (way: Omit<Hypothesis, 'asItStands'>): void => {
    const [only, ...others] = way.placed;
    if (only && others.length === 0 && isSaidMoreOf(only, first.said.placed)) return;
    const key = keyOf(way.placed);
    if (known.has(key)) return;
    known.add(key);
    ways.push({ ...way, asItStands });
  };
  add({ difference: 'none', hearing: first, placed: asItStands, breath: 1 });
  add({ difference: 'open', hearing: first, placed: first.said.placed, breath: 1 });
  add({ difference: 'talk', hearing: first, placed: talk, breath: 1 });
  const stopped = stopsIn(rescoring, hearings).map(({ at, breath }) => ({
    hearing: hearings.withStops([at]),
    breath,
  }));
  for (const { hearing, breath } of stopped) {
    add({ difference: 'stop', hearing, placed: language.addressed(hearing.said), breath });
    add({ difference: 'stop open', hearing, placed: hearing.said.placed, breath });
  }
  const guessesOf = (clause: Clause, { high, low }: { high: number; low: number }): Placed[][] =>
    hearings
      .opinionsOf(clause)
      .slice(0, high)
      .filter(({ intent, likelihood }) => likelihood >= low && !/^un(related|clear)$/.test(intent))
      .map(({ intent, likelihood }) =>
        (rescoring.guessed(intent, hearings.matchOf(clause), clause.mood) ?? []).map((meaning) => ({
          meaning,
          tokens: clause.tokens,
          clause,
          framed: true,
          guessed: true,
          likelihood,
        })),
      )
      .filter((made) => made.length > 0);
  // What phrases found twice is more than one guess at it all.
  if (first.said.clauses.length > 0 && first.said.placed.filter(isFound).length <= 1)
    for (const found of guessesOf(joined(first.said.clauses), guesses.whole)) {
      const hearing = hearings.withFound(first, found);
      add({ difference: 'whole guessed', hearing, placed: hearing.said.placed, breath: 1 });
    }
  for (const { hearing, breath } of [{ hearing: first, breath: 1 }, ...stopped]) {
    const cut = hearing !== first;
    const { clauses, placed } = hearing.said;
    if (clauses.length > 1 && clauses.length <= clausesHigh)
      for (const clause of clauses)
        for (const guess of guessesOf(clause, guesses.clause)) {
          const here = hearing.found.filter((one) => one.clause === clause);
          if (here.length === 1 && here[0]!.meaning.intent === guess[0]!.meaning.intent) continue;
          const others = hearing.found.filter((one) => one.clause !== clause);
          const otherwise = hearings.withFound(hearing, inOrder([...others, ...guess]));
          add({
            difference: cut ? 'stop, clause guessed' : 'clause guessed',
            hearing: otherwise,
            placed: otherwise.said.placed,
            breath,
          });
        }
    if (placed.length > 1)
      for (const without of placed)
        add({
          difference: cut ? 'stop, less' : 'less',
          hearing,
          placed: placed.filter((one) => one !== without),
          breath,
          without,
        });
  }
  return ways;
}

/** The same was found with more said of it: a guess at less is no other way to hear it. */
function isSaidMoreOf({ meaning }: Placed, found: readonly Placed[]): boolean {
  const [only, ...others] = found;
  if (only === undefined || others.length > 0) return false;
  const said = new Map(Object.entries(only.meaning));
  const slots = Object.entries(meaning);
  return slots.length < said.size && slots.every(([name, value]) => said.get(name) === value);
}

/** The likeliest places for a stop inside a clause, the likeliest first. */
function stopsIn(
  rescoring: Rescoring,
  { tokens, asItStands, matchOf }: Hearings,
): { at: number; breath: number }[] {
  const spoken = [...tokens.keys()].filter((at) => !isStop(tokens[at]!.word));
  const clauseOf = new Map(
    asItStands.said.clauses.flatMap((clause) => clause.tokens.map(({ from }) => [from, clause])),
  );
  const explained = new Set(
    asItStands.found.filter(isFound).flatMap(({ tokens: words }) => words.map(({ from }) => from)),
  );
  const isExplained = oncePer((clause: Clause) =>
    clause.tokens.every(({ from }) => explained.has(from)),
  );
  return rescoring
    .breathsOf(
      matchOf({ tokens: [...tokens], mood: 'statement' }),
      spoken.map((at) => tokens[at]!.word),
    )
    .map((breath, gap) => ({ at: spoken[gap + 1]!, before: spoken[gap]!, breath }))
    .filter(({ at, before, breath }) => {
      if (breath < breathLow || at - before > 1) return false;
      const [one, other] = [before, at].map((each) => clauseOf.get(tokens[each]!.from));
      if (one !== undefined && one === other) return !isExplained(one);
      return one === undefined || other === undefined;
    })
    .sort((a, b) => b.breath - a.breath)
    .slice(0, stopsHigh);
}

/** What would be acted on; all that asks for nothing is the same. */
const keyOf = (placed: readonly Placed[]): string =>
  placed.every(asksNothing)
    ? ''
    : JSON.stringify(placed.map(({ meaning }) => Object.entries(meaning).sort()));
