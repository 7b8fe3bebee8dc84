/**
 * Noisy copies of the scored corpus: espeak-ng says each line, kitchen noise goes under it, pocketsphinx
 * hears it with a language model built from the rules half. Writes what was heard as data; prints the
 * words taken for each other. The audio is thrown away. `npx tsx scripts/noise.ts`; see noise/README.md.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Row, rowsOf } from '../test/corpus/load.ts';
import { rulesRows, scoredRows, tellsNumber } from '../test/corpus/score.ts';
import { confusions } from './noise/confusions.ts';
import { kitchenNoise, mixed, say, voices, writeRaw } from './noise/kitchen.ts';
import { arpa } from './noise/language-model.ts';
import { spoken, spokenClock, spokenNumber } from './noise/spoken.ts';

const model = '/usr/share/pocketsphinx/model/en-us';
const output = new URL('../test/corpus/heard-noise.jsonl', import.meta.url);
/** Speech above noise, in decibels: a quiet room, the hood on low, the hood on full. */
const levels = { quiet: 25, kitchen: 15, loud: 6 } as const;
const wanted = { numbered: 90, other: 40, chatter: 30 } as const;

const known = new Set(
  readFileSync(join(model, 'cmudict-en-us.dict'), 'utf8')
    .split('\n')
    .map((entry) => entry.split(' ')[0]!),
);

interface Line {
  row: Row;
  said: string;
}

/** The line as said, if the recogniser's dictionary has every word of it. */
function sayable(row: Row, index: number): Line[] {
  const said = spoken(row.text, index % 3 === 0);
  return said?.split(' ').every((word) => known.has(word)) ? [{ row, said }] : [];
}

/** As many as wanted, spread evenly over the list. */
const spread = <T>(list: readonly T[], count: number): T[] =>
  list.length <= count
    ? [...list]
    : Array.from({ length: count }, (_, at) => list[Math.floor((at * list.length) / count)]!);

/** Dialect and homophones as a recogniser writes them are no text for an American synthesiser. */
const isPlain = (row: Row): boolean => row.origin === 'typed' || row.origin === 'chatter';

function chosen(): Line[] {
  const lines = scoredRows.filter(isPlain).flatMap(sayable);
  const talk = lines.filter(({ row }) => row.origin === 'chatter');
  const spokenTo = lines.filter(({ row }) => row.origin !== 'chatter');
  return [
    ...spread(
      spokenTo.filter(({ row }) => tellsNumber(row)),
      wanted.numbered,
    ),
    ...spread(
      spokenTo.filter(({ row }) => !tellsNumber(row)),
      wanted.other,
    ),
    ...spread(talk, wanted.chatter),
  ];
}

/** Differences that turn one figure into its neighbours. */
const neighbours = [-13, -6, 0, 5, 11];

/** The rules half, each also with neighbouring figures; then every number and clock time, both ways. */
function sentences(): string[] {
  const rules = rulesRows.flatMap((row, index) =>
    [...new Set(neighbours.map((step) => shifted(row.text, step)))].flatMap((text) =>
      sayable({ ...row, text }, index).map(({ said }) => said),
    ),
  );
  const numbers = Array.from({ length: 500 }, (_, value) => [
    spokenNumber(value),
    spokenNumber(value, true),
  ]);
  const clocks = Array.from({ length: 12 * 12 }, (_, at) =>
    spokenClock(1 + Math.floor(at / 12), 5 * (at % 12)),
  );
  return [...rules, ...numbers.flat(), ...clocks];
}

const shifted = (text: string, step: number): string =>
  text.replace(/\b\d{2,3}\b/g, (figures) => String(Math.max(10, +figures + step)));

function recognise(names: readonly string[], folder: string): string[] {
  const at = (name: string) => join(folder, name);
  writeFileSync(at('names'), `${names.join('\n')}\n`);
  writeFileSync(at('kitchen.arpa'), arpa(sentences()));
  const options = {
    hmm: join(model, 'en-us'),
    dict: join(model, 'cmudict-en-us.dict'),
    lm: at('kitchen.arpa'),
    ctl: at('names'),
    cepdir: folder,
    cepext: '.raw',
    adcin: 'yes',
    cmn: 'batch',
    lw: '10',
    hyp: at('heard'),
    logfn: at('log'),
  };
  const flags = Object.entries(options).flatMap(([name, value]) => [`-${name}`, value]);
  execFileSync('pocketsphinx_batch', flags, { stdio: 'ignore' });
  // A line of the result is "what was heard (name score)".
  const heard = readFileSync(at('heard'), 'utf8').trim().split('\n');
  return heard.map((line) =>
    line
      .replace(/ ?\([^()]*\)$/, '')
      .replace(/\(\d+\)/g, '')
      .trim(),
  );
}

function run(folder: string): void {
  const lines = chosen();
  const talk = rowsOf('rules')
    .filter((row) => row.family === 'guests')
    .slice(0, 12);
  const noise = kitchenNoise(
    talk.map((row) => row.text),
    folder,
  );
  const clips = lines.flatMap(({ row, said }, index) => {
    const voice = voices[index % voices.length]!;
    const speech = say(said, voice, folder);
    return Object.entries(levels).map(([level, decibels]) => {
      const name = `${index}-${level}`;
      writeRaw(join(folder, `${name}.raw`), mixed(speech, noise, index * 9_001, decibels));
      return { name, text: row.text, said, level, voice: voice.name };
    });
  });
  const heard = recognise(
    clips.map((clip) => clip.name),
    folder,
  );
  const results = clips.map(({ name: _, ...clip }, at) => ({ ...clip, heard: heard[at] ?? '' }));
  writeFileSync(output, results.map((one) => `${JSON.stringify(one)}\n`).join(''));
  report(results);
}

function report(results: readonly { said: string; heard: string; level: string }[]): void {
  for (const level of Object.keys(levels)) {
    const of = results.filter((one) => one.level === level);
    const words = of.reduce((sum, one) => sum + one.said.split(' ').length, 0);
    const wrong = of.reduce((sum, one) => sum + confusions(one.said, one.heard).length, 0);
    const exact = of.filter((one) => one.said === one.heard).length;
    const rate = ((100 * wrong) / words).toFixed(1);
    console.log(`${level.padEnd(8)} ${exact} of ${of.length} exact, word error rate ${rate} %`);
  }
  const tally = new Map<string, number>();
  for (const { said, heard } of results)
    for (const one of confusions(said, heard)) {
      const key = `${one.said || '(nothing)'} -> ${one.heard || '(nothing)'}`;
      tally.set(key, (tally.get(key) ?? 0) + 1);
    }
  const often = [...tally].sort((a, b) => b[1] - a[1]).slice(0, 60);
  console.log(often.map(([pair, times]) => `${times} ${pair}`).join('\n'));
}

const folder = mkdtempSync(join(tmpdir(), 'noise-'));
mkdirSync(folder, { recursive: true });
try {
  run(folder);
} finally {
  rmSync(folder, { recursive: true });
}
