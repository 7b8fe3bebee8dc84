/**
 * Reads every line aloud with espeak-ng and times it: each line of each card with its blanks filled, and
 * every reply and call of the session scripts. Longer lines than a breath are named, those that were asked
 * for as a list apart; one that was not asked for so fails, as does a voice that is not there or nothing to
 * read, or a script that does not hold. `tsx scripts/read-aloud.ts [--cards] [--restart-every-turn] [FILE…]`,
 * default all; with restarts every script's dinner is opened anew from its log after each line.
 */
import { execFile } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { promisify } from 'node:util';
import type { Card } from '../src/kitchen/card.ts';
import { readScript } from '../src/main/commands/rehearse.ts';
import { cardsOf } from '../src/main/household.ts';
import type { Play } from '../src/main/play.ts';
import { playAll } from '../src/main/play-pool.ts';
import { faultSentence } from '../src/rehearsal/script.ts';
import { breathSeconds, secondsAloud } from '../src/reply/breath.ts';

interface Line {
  where: string;
  speech: string;
  /** The cook asked for a list, which may take longer than a breath. */
  list: boolean;
}

/** What is asked for as a list. */
const listed = /^(ask-plan|ask-shopping|ask-guests|ask-options)$/;

/** What a blank says in a usual household; the longest of its usual values. */
const blanks: Record<string, string> = {
  searTemperature: 'four hundred fifty degrees',
  roastTemperature: 'three hundred twenty-five degrees',
  pullTemperature: 'one hundred twenty-one degrees',
  ovenTemperature: 'four hundred seventy-five degrees',
  guests: 'twelve',
  vulnerableGuests: 'your granny and the children',
  consumerMinimum: 'one hundred forty-five degrees',
  coreTemperature: 'one hundred sixty-five degrees',
};
const filled = (text: string): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => blanks[name] ?? whole);

/** Every line of a card that may be said by itself; a call goes with its caution. */
function linesOfCard(card: Card): Line[] {
  const said = (where: string, ...parts: (string | undefined)[]): Line => ({
    where: `${card.id} ${where}`,
    speech: filled(parts.filter((part) => part !== undefined).join(' ')),
    list: false,
  });
  return [
    said('hold', card.hold.how),
    ...card.ingredients.flatMap((part) => [
      ...(part.instead === undefined ? [] : [said(`${part.item} instead`, part.instead)]),
      ...Object.entries(part.free ?? {}).map(([key, text]) => said(`${part.item} ${key}`, text)),
    ]),
    ...card.steps.flatMap((step) =>
      [step, ...(step.variants ?? [])].flatMap((words) => [
        ...(words.call === undefined ? [] : [said(step.id, words.call, step.caution)]),
        ...(words.how ?? []).map((text) => said(`${step.id} how`, text)),
        ...(words.right === undefined ? [] : [said(`${step.id} right`, words.right)]),
        ...(words.wrong === undefined ? [] : [said(`${step.id} wrong`, words.wrong)]),
      ]),
    ),
    ...card.steps.flatMap((step) => [
      ...(step.without ?? []).map((way) => said(`${step.id} ${way.tool}`, way.call, step.caution)),
      ...(step.why === undefined ? [] : [said(`${step.id} why`, step.why)]),
      ...(step.ready === undefined ? [] : [said(`${step.id} ready`, step.ready)]),
    ]),
  ];
}

/** Every reply and call of session scripts. */
async function linesOfScripts(
  files: readonly string[],
  cards: readonly Card[],
  playing: Pick<Play, 'restartEveryTurn'>,
): Promise<Line[]> {
  const plays = files.map((file) => {
    const { script, fault } = readScript(file);
    if (!script) throw new Error(faultSentence(fault));
    return { script, ...playing };
  });
  const played = await playAll(plays, cards);
  const short = played.filter(({ rehearsal }) => rehearsal.failures.length > 0);
  if (short.length > 0)
    throw new Error(
      `These do not hold; rehearse tells why: ${short.map(({ script }) => script.file).join(', ')}`,
    );
  return played.flatMap(({ script, spoken }) => {
    const where = script.file.replace(/^.*\//, '');
    return spoken.map(({ speech, answers, call }) => ({
      where: call === undefined ? where : `${where} ${call}`,
      speech,
      list: answers.some((intent) => listed.test(intent)),
    }));
  });
}

const run = promisify(execFile);

/** Seconds that espeak-ng takes at its usual pace: 16-bit mono samples at 22 050 a second. */
async function secondsOf(speech: string): Promise<number> {
  const { stdout } = await run('espeak-ng', ['-v', 'en-us', '--stdout', speech], {
    maxBuffer: 1 << 26,
    encoding: 'buffer',
  }).catch((error: NodeJS.ErrnoException) => {
    throw error.code === 'ENOENT'
      ? new Error('espeak-ng is not installed: apt-get install espeak-ng')
      : error;
  });
  const seconds = (stdout.length - 44) / (2 * 22_050);
  if (seconds <= 0) throw new Error(`espeak-ng said nothing of: ${speech}`);
  return seconds;
}

/** Every line with its seconds, a voice for each processor. */
async function timedAloud(lines: readonly Line[]): Promise<(Line & { seconds: number })[]> {
  const waiting = lines.values();
  const timed: (Line & { seconds: number })[] = [];
  const voice = async (): Promise<void> => {
    for (const line of waiting) timed.push({ ...line, seconds: await secondsOf(line.speech) });
  };
  await Promise.all(Array.from({ length: availableParallelism() }, voice));
  return timed;
}

const words = process.argv.slice(2);
const named = words.filter((word) => !word.startsWith('--'));
const folder = 'transcripts-synthetic';
const files =
  named.length > 0
    ? named
    : words.includes('--cards')
      ? []
      : readdirSync(folder)
          .filter((name) => name.endsWith('.session.txt'))
          .map((name) => `${folder}/${name}`);
const cards = cardsOf(undefined);
const playing = words.includes('--restart-every-turn') ? { restartEveryTurn: true } : {};
const ofCards = named.length > 0 ? [] : cards.flatMap(linesOfCard);
const lines = [...ofCards, ...(await linesOfScripts(files, cards, playing))];

const once = [...new Map(lines.map((line) => [line.speech, line])).values()];
const timed = (await timedAloud(once.filter((line) => line.speech !== ''))).sort(
  (a, b) => b.seconds - a.seconds,
);
const long = timed.filter((line) => line.seconds > breathSeconds);
for (const { seconds, where, speech, list } of long)
  process.stdout.write(`${seconds.toFixed(1)} s${list ? ' (a list)' : ''}  ${where}: ${speech}\n`);
const middle = timed[Math.floor(timed.length / 2)]?.seconds ?? 0;
const over = long.filter((line) => !line.list).length;
const off = Math.max(...timed.map((line) => line.seconds - secondsAloud(line.speech)));
process.stdout.write(
  `${timed.length} lines, half of them under ${middle.toFixed(1)} s; ${over} over ${breathSeconds} s, and ${long.length - over} lists; the estimate is short by ${off.toFixed(1)} s at most\n`,
);
if (timed.length === 0) throw new Error('There was nothing to read aloud.');
process.exitCode = over > 0 ? 1 : 0;
