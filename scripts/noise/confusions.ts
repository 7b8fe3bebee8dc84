/** Which words a recogniser wrote for which: the cheapest alignment of what was said and what was heard. */

export interface Confusion {
  /** Empty when a word was put in. */
  said: string;
  /** Empty when a word was lost. */
  heard: string;
}

export function confusions(said: string, heard: string): Confusion[] {
  const left = said.split(' ');
  const right = heard === '' ? [] : heard.split(' ');
  const cost = costs(left, right);
  const found: Confusion[] = [];
  let [i, j] = [left.length, right.length];
  while (i > 0 || j > 0) {
    const here = cost[i]![j]!;
    if (i > 0 && j > 0 && here === cost[i - 1]![j - 1]! + (left[i - 1] === right[j - 1] ? 0 : 1)) {
      i--;
      j--;
      if (left[i] !== right[j]) found.push({ said: left[i]!, heard: right[j]! });
    } else if (i > 0 && here === cost[i - 1]![j]! + 1) found.push({ said: left[--i]!, heard: '' });
    else found.push({ said: '', heard: right[--j]! });
  }
  return found.reverse();
}

/** Levenshtein's table over words. */
function costs(left: readonly string[], right: readonly string[]): number[][] {
  const table = left.map(() => [0]).concat([[0]]);
  for (let i = 0; i <= left.length; i++)
    for (let j = 0; j <= right.length; j++)
      table[i]![j] =
        i === 0 || j === 0
          ? i + j
          : Math.min(
              table[i - 1]![j - 1]! + (left[i - 1] === right[j - 1] ? 0 : 1),
              table[i - 1]![j]! + 1,
              table[i]![j - 1]! + 1,
            );
  return table;
}
