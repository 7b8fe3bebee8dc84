/** `roastcall rehearse`: session scripts on a simulated clock. */
import { readFileSync, writeFileSync } from 'node:fs';
import picocolors from 'picocolors';
import { coverageOf } from '../../rehearsal/coverage.ts';
import { coverageJson, coverageText } from '../../rehearsal/coverage-text.ts';
import { junitXml, type PlayedScript } from '../../rehearsal/junit.ts';
import { parseScript } from '../../rehearsal/parse.ts';
import { type Paint, reportJson, reportText } from '../../rehearsal/report.ts';
import { faultPointedAt, type Script, type ScriptFault } from '../../rehearsal/script.ts';
import { cardsOf } from '../household.ts';
import { playAll } from '../play-pool.ts';
import { Refusal } from '../refusal.ts';
import { takeAmendments } from './rehearse-update.ts';
import { watchFiles } from './rehearse-watch.ts';

export interface RehearseOptions {
  json?: boolean;
  restartEveryTurn?: boolean;
  cards?: string;
  /** Tell what the scripts reached of all there is to reach, and what they did not. */
  coverage?: boolean;
  /** Write the results there, as XML for a build server. */
  junit?: string;
  /** Milliseconds within which every line must be answered. */
  budget?: number;
  /** Ask of every check that fell short whether what came is right, and write it if so. */
  update?: boolean;
  /** Stay, and play a script again when its file changes. */
  watch?: boolean;
}

/** Exit code: 0 all hold, 1 some fall short, 2 a script cannot be read (then none is run). */
export async function rehearseCommand(
  files: readonly string[],
  options: RehearseOptions,
): Promise<number> {
  if (options.watch) {
    const show = (some: readonly string[]): Promise<number> => playFiles(some, options);
    return watchFiles(files, show);
  }
  return playFiles(files, options);
}

async function playFiles(files: readonly string[], options: RehearseOptions): Promise<number> {
  const scripts = scriptsOf(files);
  if (scripts.faults.length > 0) {
    for (const { fault, text } of scripts.faults)
      process.stderr.write(`${faultPointedAt(fault, text)}\n`);
    if (options.json)
      process.stdout.write(
        `${JSON.stringify({ faults: scripts.faults.map(({ fault }) => fault) })}\n`,
      );
    return 2;
  }
  const { restartEveryTurn = false, budget } = options;
  const plays = scripts.read.map((script) => ({ script, restartEveryTurn }));
  // A script that is timed has the machine to itself.
  const ended = await playAll(plays, cardsOf(options.cards), budget === undefined ? undefined : 1);
  const played = ended.map((one) => withinBudget(one, budget));
  const rehearsals = played.map((one) => one.rehearsal);
  if (options.junit !== undefined) writeResults(options.junit, junitXml(played));
  const reaches = options.coverage ? coverageOf(ended.map(({ facts }) => facts)) : undefined;
  const report = options.json
    ? JSON.stringify({
        ...reportJson(rehearsals),
        ...(reaches ? { coverage: coverageJson(reaches) } : {}),
      })
    : [reportText(rehearsals, screenPaint()), ...(reaches ? [coverageText(reaches)] : [])].join(
        '\n',
      );
  // What can be written otherwise is shown as it is asked about, and what is left after it.
  if (options.update && (await takeAmendments(rehearsals)).length > 0)
    return playFiles(files, { ...options, update: false });
  process.stdout.write(`${report}\n`);
  return rehearsals.every((one) => one.failures.length === 0) ? 0 : 1;
}

function writeResults(file: string, xml: string): void {
  try {
    writeFileSync(file, `${xml}\n`);
  } catch {
    throw new Refusal(
      `The results cannot be written to ${file}; name a file in a folder that is there.`,
      2,
    );
  }
}

function screenPaint(): Paint {
  const { red, green } = picocolors.createColors(
    process.stdout.isTTY === true && picocolors.isColorSupported,
  );
  return { wanted: red, came: green };
}

interface Unread {
  fault: ScriptFault;
  text: string;
}

function scriptsOf(files: readonly string[]): { read: Script[]; faults: Unread[] } {
  const read: Script[] = [];
  const faults: Unread[] = [];
  for (const file of files) {
    const text = textOf(file);
    const { script, fault } = parseScript(text, file);
    if (script) read.push(script);
    else faults.push({ fault, text });
  }
  return { read, faults };
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new Refusal(`The script ${file} cannot be opened; check its name.`, 2);
  }
}

export const readScript = (file: string): ReturnType<typeof parseScript> =>
  parseScript(textOf(file), file);

/** What a script fell short of, an answer that took longer than the budget among it. */
function withinBudget(played: PlayedScript, budget = Number.POSITIVE_INFINITY): PlayedScript {
  const { script, rehearsal, answerMilliseconds } = played;
  const slow = [...answerMilliseconds]
    .filter(([, milliseconds]) => milliseconds > budget)
    .map(([line, milliseconds]) => ({
      file: script.file,
      line,
      column: 1,
      wanted: `an answer within ${budget} ms`,
      came: `one after ${Math.round(milliseconds)} ms`,
    }));
  const failures = [...rehearsal.failures, ...slow].sort((one, two) => one.line - two.line);
  return { ...played, rehearsal: { ...rehearsal, failures } };
}
