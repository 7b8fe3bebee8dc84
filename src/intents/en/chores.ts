/** The chores of the days around the dinner, by the words for them. */

const calledSo: readonly (readonly [words: RegExp, chore: string])[] = [
  [/^(thaw|thawed|thawing|defrost|defrosted|defrosting)\b.*\bwater\b/, 'thaw-water'],
  [/^(thaw|thawed|thawing|defrost|defrosted|defrosting)\b/, 'thaw'],
  [/^(dry )?brin(e|ed|ing)\b/, 'salt-ahead'],
  [
    /^(salt|salted|salting|season|seasoned|seasoning)\b.*\b(ahead|overnight|night before|day before|tonight|last night|yesterday|in advance|early)\b/,
    'salt-ahead',
  ],
  [/^(reheat|reheated|reheating|warm up|heat up|warm (it|the leftovers|the rest) up)\b/, 'reheat'],
  [
    /^((make|making|boil) )?(the |a |some )?(bone )?(stock|broth) (from|with|out of) .*bones?\b/,
    'stock',
  ],
  [/^(make|making) (the |a |some )?(bone )?(stock|broth)$/, 'stock'],
  [
    /^(portion|portioning|store|storing|keep|box up|pack)\b.*\b(leftovers?|left over|rest|it)\b/,
    'portion',
  ],
  [/^(do (the )?)?shopping( done)?$/, 'shop'],
  [
    /^(serve |bring |plate |carry |take )?(in |out )?(the |our |my )?(first course|starters?)( in| out)?$/,
    'first-course',
  ],
];

/** The chore that words name, if they do. */
export const choreIn = (words: string): string | undefined =>
  calledSo.find(([shape]) => shape.test(words.trim()))?.[1];
