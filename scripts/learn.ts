/** What the two trainers share: seeded orders, and which words were said in other blocks than a line's own. */

/** Lines that stand together are of one make, so they are kept or left out together. */
export const blockLines = 6;
export const folds = 4;

export const blockOf = (at: number): number => Math.floor(at / blockLines);
export const foldOf = (at: number): number => (blockOf(at) * 7919) % folds;

/** A seeded order of 0 … n-1. */
export function shuffled(n: number, seed: number): number[] {
  let state = seed >>> 0;
  const order = Array.from({ length: n }, (_, at) => at);
  for (let at = n - 1; at > 0; at--) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const other = state % (at + 1);
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
  return order;
}

/** For every word, the blocks in which it stands: at most the first three. */
export function blocksOfWords(
  lines: readonly { words: readonly string[]; block: number }[],
): Map<string, Set<number>> {
  const blocks = new Map<string, Set<number>>();
  for (const { words, block } of lines)
    for (const word of words) {
      const at = blocks.get(word) ?? new Set<number>();
      if (at.size < 3) at.add(block);
      blocks.set(word, at);
    }
  return blocks;
}

/** A word is familiar to a line when it stands in another block than the line's. */
export const standsElsewhere =
  (blocks: ReadonlyMap<string, ReadonlySet<number>>, block: number) =>
  (word: string): boolean => {
    const at = blocks.get(word);
    return at !== undefined && at.size > (at.has(block) ? 1 : 0);
  };

export const wrapped = (text: string): string => text.replaceAll(/(.{90}\S*) /g, '$1\n');

export function option(name: string, fallback: number): number {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? fallback : Number(process.argv[at + 1]);
}

/** Every cue that stands in so many lists at least, numbered. */
export function cueIds(lists: Iterable<readonly string[]>, least: number): Map<string, number> {
  const seen = new Map<string, number>();
  for (const cues of lists) for (const cue of cues) seen.set(cue, (seen.get(cue) ?? 0) + 1);
  const ids = new Map<string, number>();
  for (const [cue, count] of seen) if (count >= least) ids.set(cue, ids.size);
  return ids;
}

/** One case to learn from: its cues, whether it is one, and how much it counts. */
export interface Case {
  cues: readonly string[];
  wanted: boolean;
  counts: number;
}

/** Logistic regression by stochastic descent, with steps that shrink for each cue by how often it has moved (AdaGrad). */
export function learnYesOrNo(
  cases: readonly Case[],
  { rounds, decay, least }: { rounds: number; decay: number; least: number },
): Map<string, number> {
  const ids = cueIds(
    cases.map(({ cues }) => cues),
    least,
  );
  const rows = cases.map((one) => one.cues.flatMap((cue) => ids.get(cue) ?? []));
  const weight = new Float64Array(ids.size);
  const moved = new Float64Array(ids.size).fill(1e-6);
  for (let round = 0; round < rounds; round++)
    for (const at of shuffled(cases.length, round + 1)) {
      const row = rows[at]!;
      const { wanted, counts } = cases[at]!;
      let sum = 0;
      for (const id of row) sum += weight[id]!;
      const error = (1 / (1 + Math.exp(-sum)) - (wanted ? 1 : 0)) * counts;
      for (const id of row) {
        const slope = error + decay * weight[id]!;
        moved[id] = moved[id]! + slope * slope;
        weight[id] = weight[id]! - (0.1 * slope) / Math.sqrt(moved[id]!);
      }
    }
  return new Map([...ids].map(([cue, id]) => [cue, weight[id]!]));
}

/** Weights in twentieths, each followed by its cues; those of fewer twentieths than `least` say too little to be kept. */
export function inTwentieths(weights: ReadonlyMap<string, number>, least: number): string {
  const byWeight = new Map<number, string[]>();
  for (const [cue, weight] of weights) {
    const twentieths = Math.round(weight * 20);
    // A cue that is a number would be read as a weight.
    if (Math.abs(twentieths) < least || /^-?\d+$/.test(cue)) continue;
    byWeight.set(twentieths, [...(byWeight.get(twentieths) ?? []), cue]);
  }
  return [...byWeight]
    .sort(([a], [b]) => a - b)
    .map(([twentieths, cues]) => wrapped(`${twentieths} ${cues.sort().join(' ')}`))
    .join('\n');
}
