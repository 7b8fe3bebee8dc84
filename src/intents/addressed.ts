/**
 * Whether a text is said to the helper at all. In a kitchen most talk is not, and much of it holds
 * the helper's own words: "mine was 125 last time", "pass the potatoes". Cues are drawn from a text
 * and from how it was understood; each has a learnt weight, and their sum is how likely the text is
 * meant for the helper. Pure and language-free: a language brings its kinds of words and its weights.
 */
import type { ReadContext } from '../kitchen/heard.ts';
import type { Clause } from './clause.ts';
import type { Opinion } from './opinion.ts';
import { howFound, type Placed } from './placed.ts';
import type { Quantity } from './quantity.ts';
import { isStop } from './token.ts';

/** A text as prepared, and what was heard in it. */
export interface Said {
  /** Every word of the whole text, each followed by one blank. */
  line: string;
  quantities: readonly Quantity[];
  placed: readonly Placed[];
  /** The clauses it falls into. */
  clauses: readonly Clause[];
  context: ReadContext;
  /** What the text as a whole is taken for by a second opinion. */
  opinions: readonly Opinion[];
}

/** A short word stands for itself in a pattern; of others only the kind counts. */
export type KindOfWord = (word: string, context: ReadContext) => string;

/** Whether a word has been said to the helper before, in the corpus the weights are learnt from. */
export type IsFamiliar = (word: string) => boolean;

/** Weights by cue; a cue that is not in it says nothing. */
export type Weights = ReadonlyMap<string, number>;

/** Weights as they are written down: twentieths, then the cues that have them, and so on. */
export function weightsFrom(learnt: string): Weights {
  const weights = new Map<string, number>();
  let weight = 0;
  for (const entry of learnt.split(/\s+/))
    if (/^-?\d+$/.test(entry)) weight = Number(entry) / 20;
    else if (entry) weights.set(entry, weight);
  return weights;
}

const mark = /^<([a-z])(\d+)>$/;

/** How likely `said` is meant for the helper, from 0 to 1. */
export function likelihoodOf(cues: readonly string[], weights: Weights): number {
  let sum = 0;
  for (const cue of cues) sum += weights.get(cue) ?? 0;
  return 1 / (1 + Math.exp(-sum));
}

/** What speaks for or against a text being meant for the helper; each cue once. */
export function cuesOf(said: Said, kindOf: KindOfWord, isFamiliar: IsFamiliar): string[] {
  const cues = new Set<string>(['always']);
  const words = said.line.split(' ').filter(Boolean);
  const names = words.map((word) => nameOf(word, said.quantities));
  const dishes = new Set(said.placed.flatMap(({ meaning }) => dishWordsOf(meaning)));
  const kinds = words.map((word) => {
    // What was heard as the name of a dish is the kitchen's, though no card has it.
    if (dishes.has(word)) return 'K';
    const kind = mark.exec(word)?.[1] ?? kindOf(word, said.context);
    return /^[cSV]$/.test(kind) && !isFamiliar(word) ? 'U' : kind;
  });
  for (const name of names) cues.add(name);
  for (const run of runsOf(kinds, 2)) cues.add(`~${run}`);
  const plain = words.filter((word) => !isStop(word));
  cues.add(`#words${plain.length < 8 ? plain.length : plain.length < 12 ? 8 : 12}`);
  for (const kind of ['K', 'O', 'P', 'S', 'U'])
    cues.add(`#${kind}${Math.min(3, kinds.filter((one) => one === kind).length)}`);
  addHeard(cues, said, plain.length, kinds);
  addOpinion(cues, said);
  return [...cues];
}

/** The words of a dish that is put on the menu or taken off it. */
export const dishWordsOf = (meaning: Placed['meaning']): string[] =>
  meaning.intent === 'add-dish' || meaning.intent === 'drop-dish' ? meaning.dish.split(/[ -]/) : [];

/** How likely a second opinion holds the text for talk, and whether it bears out what was heard. */
function addOpinion(cues: Set<string>, { opinions, placed }: Said): void {
  if (opinions.length === 0) return;
  const likelihood = (intent: string): number =>
    opinions.find((one) => one.intent === intent)?.likelihood ?? 0;
  cues.add(`?talk${stepOf(likelihood('unrelated'))}`);
  const best = Math.max(0, ...placed.map(({ meaning }) => borneOut(meaning.intent, likelihood)));
  cues.add(`?heard${stepOf(best)}`);
  for (const how of new Set(placed.map(howFound))) cues.add(`?heard${stepOf(best)}:${how}`);
}

/** What denies a deed is borne out by words of the deed. */
const borneOut = (intent: string, likelihood: (intent: string) => number): number =>
  intent === 'report-not-done'
    ? Math.max(
        ...['report-not-done', 'report-started', 'report-done', 'report-out'].map(likelihood),
      )
    : likelihood(intent);

const likelihoodSteps = [0.01, 0.03, 0.1, 0.25, 0.5, 0.75, 0.9, 0.97];
/** How likely something is, in steps that are finer towards both ends. */
export const stepOf = (likelihood: number): number =>
  likelihoodSteps.filter((step) => likelihood >= step).length;

function addHeard(cues: Set<string>, said: Said, count: number, kinds: readonly string[]): void {
  const taken = new Set(said.placed.flatMap((one) => one.tokens.map((token) => token.from)));
  const share = Math.min(1, taken.size / Math.max(1, count));
  const cover = share > 0.95 ? 'all' : share > 0.6 ? 'most' : share > 0.3 ? 'some' : 'few';
  const strange = Math.min(3, kinds.filter((kind) => /^[OSU]$/.test(kind)).length);
  for (const one of said.placed) {
    const { meaning } = one;
    const how = howFound(one);
    cues.add(`=${meaning.intent}`);
    cues.add(`=${meaning.intent}:${how}`);
    cues.add(`=${meaning.intent}:${cover}`);
    cues.add(`=${meaning.intent}:S${strange}`);
    cues.add(`#${how}:${cover}`);
    cues.add(`#${how}:S${strange}`);
    if (said.context.expecting) cues.add(`=${meaning.intent}:to-${said.context.expecting}`);
  }
  cues.add(`#heard${Math.min(3, said.placed.length)}`);
  cues.add(`#expecting:${said.context.expecting !== undefined}:${cover}`);
}

const runsOf = (words: readonly string[], length: number): string[] => {
  const padded = ['^', ...words, '$'];
  return padded
    .slice(0, Math.max(0, padded.length - length + 1))
    .map((_, at) => padded.slice(at, at + length).join('_'));
};

/** A word, or for a quantity its kind and about how much it is. */
function nameOf(word: string, quantities: readonly Quantity[]): string {
  const found = mark.exec(word);
  if (!found) return word;
  const quantity = quantities[Number(found[2])];
  const size = quantity && sizeOf(quantity);
  return size === undefined ? `<${found[1]}>` : `<${found[1]}:${size}>`;
}

const sizes = [12, 25, 40, 80, 100, 150, 200, 300, 550];

function sizeOf(quantity: Quantity): number | undefined {
  if (quantity.kind !== 'number' && quantity.kind !== 'temperature') return undefined;
  return sizes.find((size) => quantity.value < size) ?? 999;
}
