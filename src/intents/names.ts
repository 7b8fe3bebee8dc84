/**
 * Names of dishes, steps, ingredients and cuts in the cook's own words: plural, partly said or
 * misspelt. The only file that knows of fuse.js: it proposes, and a judge here disposes, since at a
 * threshold loose enough to forgive a misspelling it also takes "time" for "lime".
 */
import Fuse from 'fuse.js';
import { oncePer } from '../base/once.ts';
import type { Named } from '../kitchen/heard.ts';

const articles =
  /^(the|a|an|some|my|our|your|his|her|their|of|any|those|these|that|this|all|both|more|few|other|lot|lots|bit|extra|fresh)$/;

/** "potatoes" and "potato", "leaves" and "leaf": compared without their ending. */
export function stemOf(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(oes|ches|shes|sses|xes)$/.test(word)) return word.slice(0, -2);
  if (word.length > 3 && word.endsWith('s') && !/(ss|us|is)$/.test(word)) return word.slice(0, -1);
  return word;
}

export const stemsOf = (words: string): string[] =>
  words
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\s-]/gu, '')
    .split(/[\s-]+/)
    .filter((word) => word !== '' && !articles.test(word))
    .map(stemOf);

/** The names of a thing as their stems: the cards' names are compared with in every reading. */
export const stemsOfNames = oncePer((thing: Named): readonly (readonly string[])[] =>
  thing.names.map(stemsOf),
);

interface Entry {
  id: string;
  key: string;
  stems: readonly string[];
  /** How its key sounds, from when that is first asked. */
  sound?: string;
}

interface Index {
  entries: Entry[];
  byKey: Map<string, string>;
  /** The search for misspellings, which is dear to make and seldom asked. */
  fuse(): Fuse<Entry>;
  /** The entries that hold a stem. */
  byStem: Map<string, Entry[]>;
  /** Answers already found; the same question always has the same answer. */
  asked: Map<string, string | undefined>;
}

const indexOf = oncePer((things: readonly Named[]): Index => {
  const entries: Entry[] = [];
  const byKey = new Map<string, string>();
  for (const thing of things) {
    for (const stems of [...stemsOfNames(thing), stemsOf(thing.id.replaceAll('-', ' '))]) {
      const key = stems.join(' ');
      if (key === '' || byKey.has(key)) continue;
      byKey.set(key, thing.id);
      entries.push({ id: thing.id, key, stems });
    }
  }
  const byStem = new Map<string, Entry[]>();
  for (const entry of entries)
    for (const stem of new Set(entry.stems)) {
      const known = byStem.get(stem);
      if (known) known.push(entry);
      else byStem.set(stem, [entry]);
    }
  let fuse: Fuse<Entry> | undefined;
  return {
    entries,
    byKey,
    byStem,
    fuse: () => {
      fuse ??= new Fuse(entries, {
        keys: ['key'],
        threshold: 0.3,
        ignoreLocation: true,
        includeScore: true,
      });
      return fuse;
    },
    asked: new Map(),
  };
});

/**
 * The thing that some words name: by the whole name, by a part of it that no other thing shares
 * (those preferred win over the rest), or by a near misspelling. Undefined when nothing or too much fits.
 */
export function nameIn(
  things: readonly Named[],
  words: string,
  preferred: readonly string[] = [],
): string | undefined {
  const stems = stemsOf(words);
  const key = stems.join(' ');
  if (key === '') return undefined;
  const index = indexOf(things);
  const exact = index.byKey.get(key);
  if (exact !== undefined) return exact;
  const part = partly(index, stems, preferred);
  if (part !== undefined) return part;
  // The same words are asked about by several phrases of one reading.
  const memory = `${key}|${preferred.join(',')}`;
  if (!index.asked.has(memory)) {
    if (index.asked.size >= askedHigh) index.asked.clear();
    index.asked.set(memory, nearly(index, key, preferred));
  }
  return index.asked.get(memory);
}

/** The same without misspellings: quick enough to be tried on every stretch of a clause. */
export function nameExactlyIn(
  things: readonly Named[],
  words: string,
  preferred: readonly string[] = [],
): string | undefined {
  const stems = stemsOf(words);
  if (stems.length === 0) return undefined;
  const index = indexOf(things);
  return index.byKey.get(stems.join(' ')) ?? partly(index, stems, preferred);
}

/** "potatoes" for roast potatoes, "creamy horseradish" for horseradish cream. */
function partly(
  index: Index,
  stems: readonly string[],
  preferred: readonly string[],
): string | undefined {
  if (stems.every((stem) => stem.length < 4)) return undefined;
  const holding = (stem: string): readonly Entry[] => index.byStem.get(stem) ?? [];
  const ids = new Set(
    holding(stems[0]!)
      .filter((entry) => stems.every((stem) => entry.stems.includes(stem)))
      .map((entry) => entry.id),
  );
  const own = [...ids].filter((id) => preferred.includes(id));
  if (own.length === 1) return own[0];
  if (ids.size === 1) return [...ids][0];
  // The name within the words: "the hot roast potatoes", longest name first.
  const within = [...new Set(stems.flatMap(holding))]
    .filter((entry) => entry.key.length >= 4 && entry.stems.every((stem) => stems.includes(stem)))
    .sort((a, b) => b.stems.length - a.stems.length);
  const best = within[0];
  if (!best || stems.length > best.stems.length + 2) return undefined;
  return within.every((entry) => entry.id === best.id || entry.stems.length < best.stems.length)
    ? best.id
    : undefined;
}

const askedHigh = 500;

/** Shortest text in which a misspelling is forgiven. */
const lengthFloor = 5;
/** A longer run of words is a sentence, and searching for it is slow. */
const lengthCeiling = 26;
/** How much better the best must be than the next of another name. */
const margin = 0.06;

/** Whether a key can be a misspelling of an entry: by a letter or two, or more where it sounds the same. */
function isNear(entry: Entry, key: string, sound: string): boolean {
  const length = Math.max(entry.key.length, key.length);
  entry.sound ??= soundOf(entry.key);
  const alike = entry.sound === sound;
  if (!alike && entry.key[0] !== key[0]) return false;
  const limit = alike ? Math.max(2, length / 3) : length < 8 ? 1 : 2;
  if (Math.abs(entry.key.length - key.length) > limit) return false;
  const distance = distanceOf(entry.key, key);
  return distance <= limit || (entry.key[0] === key[0] && distance <= (length < 8 ? 1 : 2));
}

function nearly(index: Index, key: string, preferred: readonly string[]): string | undefined {
  if (key.length < lengthFloor || key.length > lengthCeiling) return undefined;
  const sound = soundOf(key);
  // The search is slow and most words are near nothing: it is asked only where it can find something.
  if (!index.entries.some((entry) => isNear(entry, key, sound))) return undefined;
  const judged = index
    .fuse()
    .search(key, { limit: 6 })
    .map(({ item, score = 1 }) => ({ item, score }))
    .filter(({ item }) => isNear(item, key, sound));
  const [best, next] = [
    ...judged.filter(({ item }) => preferred.includes(item.id)),
    ...judged.filter(({ item }) => !preferred.includes(item.id)),
  ];
  if (!best) return undefined;
  const rival = next && next.item.id !== best.item.id ? next : undefined;
  if (rival && !preferred.includes(best.item.id) && rival.score - best.score < margin)
    return undefined;
  return best.item.id;
}

/** How a word sounds, crudely: consonants only, those alike drawn together. */
export function soundOf(word: string): string {
  return word
    .replaceAll(/ph/g, 'f')
    .replaceAll(/gh|h/g, '')
    .replaceAll(/ck|[cqk]/g, 'k')
    .replaceAll(/[szx]/g, 's')
    .replaceAll(/[dt]/g, 't')
    .replaceAll(/[bp]/g, 'p')
    .replaceAll(/[fv]/g, 'f')
    .replaceAll(/[gj]/g, 'j')
    .replaceAll(/[aeiouyw]/g, '')
    .replaceAll(/(.)\1+/g, '$1');
}

/** Edits between two words: letters put in, left out, changed, or two swapped. */
export function distanceOf(a: string, b: string): number {
  const width = b.length + 1;
  const table = new Uint16Array((a.length + 1) * width);
  for (let i = 0; i <= a.length; i++) table[i * width] = i;
  for (let j = 0; j <= b.length; j++) table[j] = j;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(
        table[(i - 1) * width + j]! + 1,
        table[i * width + j - 1]! + 1,
        table[(i - 1) * width + j - 1]! + change,
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, table[(i - 2) * width + j - 2]! + 1);
      table[i * width + j] = best;
    }
  }
  return table[a.length * width + b.length]!;
}
