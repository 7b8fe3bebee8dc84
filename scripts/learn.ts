/** What the two trainers share: seeded orders, and which words were said in other blocks than a line's own. */

/** Lines that stand together are of one make, so they are kept or left out together. */
export const blockLines = 6;
export const folds = 8;

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
