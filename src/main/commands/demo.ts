/** `roastcall demo`: a whole invented dinner in under a minute. */
import { fileURLToPath } from 'node:url';
import picocolors from 'picocolors';
import { localTime } from '../../base/time.ts';
import { faultSentence } from '../../rehearsal/script.ts';
import { pause } from '../clock.ts';
import { cardsOf } from '../household.ts';
import { rehearseScript } from '../play.ts';
import { Refusal } from '../refusal.ts';
import { readScript } from './rehearse.ts';

const demoScript = fileURLToPath(
  new URL('../../../transcripts-synthetic/demo.session.txt', import.meta.url),
);

/** The whole play lasts no longer than this, and no line waits longer than the other. */
const playMilliseconds = 50_000;
const lineMilliseconds = 1_500;

export async function demoCommand(options: { fast?: boolean }): Promise<number> {
  const { script, fault } = readScript(demoScript);
  if (!script) throw new Refusal(faultSentence(fault), 2);
  const paint = picocolors.createColors(
    process.stdout.isTTY === true && picocolors.isColorSupported,
  );
  const time = (at: number): string => localTime(at, script.timeZone).time;
  const lines: string[] = [];
  const result = await rehearseScript(script, cardsOf(undefined), {
    audience: {
      said: ({ at, who, text }) => {
        lines.push(`\n${time(at)}  ${paint.cyan(`${who === 'cook' ? 'you' : 'guest'}: ${text}`)}`);
      },
      replied: (turn) => {
        lines.push(...turn.replies.map((reply) => `       ${reply.text}`));
      },
      announced: (call) => {
        lines.push(`\n${time(call.at)}  ${paint.yellow(call.text)}`);
      },
    },
  });
  const paced = process.stdout.isTTY && !options.fast;
  const wait = Math.min(lineMilliseconds, playMilliseconds / lines.length);
  for (const line of lines) {
    process.stdout.write(`${line}\n`);
    if (paced) await pause(wait);
  }
  for (const { line, wanted, came } of result.failures)
    process.stderr.write(`${demoScript}:${line}: wanted ${wanted}, came ${came}\n`);
  return result.failures.length === 0 ? 0 : 1;
}
