/** `roastcall rehearse`: session scripts on a simulated clock. */
import { readFileSync } from 'node:fs';
import { openMemoryJournal } from '../../journal/memory.ts';
import type { Card } from '../../kitchen/card.ts';
import type { Fact } from '../../kitchen/facts.ts';
import { coverageOf } from '../../rehearsal/coverage.ts';
import { coverageJson, coverageText } from '../../rehearsal/coverage-text.ts';
import { parseScript } from '../../rehearsal/parse.ts';
import { reportJson, reportText } from '../../rehearsal/report.ts';
import { type Audience, type Rehearsal, rehearse } from '../../rehearsal/run.ts';
import { faultSentence, type Script, type ScriptFault } from '../../rehearsal/script.ts';
import { inThisThread } from '../../session/compute.ts';
import { openSession } from '../../session/session.ts';
import { cardsOf } from '../household.ts';
import { Refusal } from '../refusal.ts';

export interface RehearseOptions {
  json?: boolean;
  restartEveryTurn?: boolean;
  cards?: string;
  /** Tell what the scripts reached of all there is to reach, and what they did not. */
  coverage?: boolean;
}

/** Exit code: 0 all hold, 1 some fall short, 2 a script cannot be read (then none is run). */
export async function rehearseCommand(
  files: readonly string[],
  options: RehearseOptions,
): Promise<number> {
  const read = files.map(readScript);
  const faults = read.flatMap((one) => (one.fault ? [one.fault] : []));
  if (faults.length > 0) {
    for (const fault of faults) process.stderr.write(`${faultSentence(fault)}\n`);
    if (options.json) process.stdout.write(`${JSON.stringify({ faults })}\n`);
    return 2;
  }
  const cards = cardsOf(options.cards);
  const rehearsals: Rehearsal[] = [];
  const dinners: { id: string; facts: readonly Fact[] }[] = [];
  for (const { script } of read) {
    if (!script) continue;
    const ended = (facts: readonly Fact[]): void => {
      dinners.push({ id: script.file, facts });
    };
    const restart = options.restartEveryTurn ? { restartEveryTurn: true } : {};
    rehearsals.push(await rehearseScript(script, cards, { ...restart, audience: { ended } }));
  }
  const reaches = options.coverage ? coverageOf(dinners) : undefined;
  const report = options.json
    ? JSON.stringify({
        ...reportJson(rehearsals),
        ...(reaches ? { coverage: coverageJson(reaches) } : {}),
      })
    : [reportText(rehearsals), ...(reaches ? [coverageText(reaches)] : [])].join('\n');
  process.stdout.write(`${report}\n`);
  return rehearsals.every((one) => one.failures.length === 0) ? 0 : 1;
}

export function readScript(
  file: string,
): { script: Script; fault?: undefined } | { fault: ScriptFault; script?: undefined } {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    throw new Refusal(`The script ${file} cannot be opened; check its name.`, 2);
  }
  return parseScript(text, file);
}

/** Plays one script in a journal of its own. */
export function rehearseScript(
  script: Script,
  cards: readonly Card[],
  options: { restartEveryTurn?: boolean; audience?: Audience } = {},
): Promise<Rehearsal> {
  const journal = openMemoryJournal();
  return rehearse(script, {
    open: (opening) =>
      openSession({ dinner: 'rehearsal', journal, compute: inThisThread, cards, opening }),
    ...(options.restartEveryTurn ? { restartEveryTurn: true } : {}),
    ...(options.audience ? { audience: options.audience } : {}),
  });
}
