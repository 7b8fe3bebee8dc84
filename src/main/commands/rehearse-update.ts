/** Takes what came for right, check by check, as the writer of the script says. */
import { readFileSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { differenceText } from '../../rehearsal/report.ts';
import type { Failure, Rehearsal } from '../../rehearsal/run.ts';

const question = 'Write what came? y yes, n no, a all of this script, q no more: ';

/**
 * Shows each change and asks on the terminal, or wherever the answers come from; the end of them is
 * a no to the rest. Writes the scripts and gives the names of those that changed.
 */
export async function takeAmendments(rehearsals: readonly Rehearsal[]): Promise<string[]> {
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  const answers = lines[Symbol.asyncIterator]();
  const changed: string[] = [];
  let more = true;
  for (const { file, failures } of rehearsals) {
    let all = false;
    const taken: Failure[] = [];
    for (const failure of failures) {
      if (!more || failure.amended === undefined) continue;
      process.stdout.write(`\n${differenceText(failure)}\n`);
      const answer: Answer = all ? 'y' : await answerOf(answers);
      if (answer === 'q') more = false;
      all ||= answer === 'a';
      if (all || answer === 'y') taken.push(failure);
    }
    if (taken.length === 0) continue;
    writeFileSync(file, amendedText(readFileSync(file, 'utf8'), taken));
    changed.push(file);
  }
  lines.close();
  return changed;
}

type Answer = 'y' | 'n' | 'a' | 'q';

async function answerOf(answers: AsyncIterator<string>): Promise<Answer> {
  for (;;) {
    process.stdout.write(question);
    const { value, done } = await answers.next();
    if (done) return 'q';
    const letter = String(value).trim().toLowerCase()[0];
    if (letter === 'y' || letter === 'n' || letter === 'a' || letter === 'q') return letter;
  }
}

/** The script with the checks replaced; indentation, line ends and all else as they were. */
export function amendedText(text: string, failures: readonly Failure[]): string {
  const rows = text.split('\n');
  for (const { line, wanted, amended } of failures) {
    const row = rows[line - 1];
    if (row !== undefined && amended !== undefined)
      rows[line - 1] = row.replace(wanted, () => amended);
  }
  return rows.join('\n');
}
