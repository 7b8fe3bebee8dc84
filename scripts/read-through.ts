/**
 * Prints session scripts as talks, to be read from end to end by somebody who has not seen the code:
 * `tsx scripts/read-through.ts transcripts-synthetic/menu-*.session.txt`. With --speech, what is said
 * aloud stands under what is written wherever the two differ in more than figures.
 */
import { localTime } from '../src/base/time.ts';
import { readScript } from '../src/main/commands/rehearse.ts';
import { cardsOf } from '../src/main/household.ts';
import { rehearseScript } from '../src/main/play.ts';
import { faultSentence } from '../src/rehearsal/script.ts';

const words = process.argv.slice(2);
const speech = words.includes('--speech');
const write = (line: string): void => void process.stdout.write(`${line}\n`);

for (const file of words.filter((word) => !word.startsWith('--'))) {
  const { script, fault } = readScript(file);
  if (!script) throw new Error(faultSentence(fault));
  const time = (at: number): string => localTime(at, script.timeZone).time;
  const told = (line: { text: string; speech: string }): void => {
    write(`       ${line.text.replace(/\n/g, '\n       ')}`);
    if (speech) write(`     » ${line.speech}`);
  };
  write(`\n== ${file}`);
  const result = await rehearseScript(script, cardsOf(undefined), {
    audience: {
      said: ({ at, who, text }) => write(`\n${time(at)}  ${who}: ${text}`),
      replied: (turn) => turn.replies.forEach(told),
      announced: (call) => {
        write(`\n${time(call.at)}  [${call.kind}]`);
        told(call);
      },
    },
  });
  for (const { line, wanted, came } of result.failures)
    write(`\n${file}:${line}: wanted ${wanted}\n  came ${came}`);
}
