/**
 * One evening that fell short, as a session script: the fewest turns with which the helper still calls the
 * pull at a wrong moment, by the core that this roast really had. Where the pull is called well the script
 * holds every turn, and the cause lies elsewhere.
 *
 * npx tsx bench/dinners/shrink.ts SEED > transcripts-synthetic/dinner-NAME.session.txt
 */
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { inThisThread, remembering } from '../../src/session/compute.ts';
import { openSession } from '../../src/session/session.ts';
import { causeOf } from './cause.ts';
import { drawEvening, targetFahrenheit } from './evening.ts';
import { clockOf, helped, instantOf, openingOf, type Said } from './helped.ts';

const wrongFahrenheit = 4;
/** A call at another time is another mistake. */
const sameMinutes = 5;

interface Called {
  minute: number;
  offFahrenheit: number;
}

const seed = Number(process.argv[2] ?? 1);
const evening = drawEvening(seed);
const ended = await helped(evening);
const compute = remembering(inThisThread, 512);

/** The first call of the pull, announced or replied, against the core of that minute. */
async function calledWith(turns: readonly Said[]): Promise<Called | undefined> {
  const session = await openSession({
    ...openingOf(evening),
    journal: openMemoryJournal(),
    compute,
  });
  const end = (turns.at(-1)?.minute ?? 0) + 30;
  for (const { minute, text } of [...turns, { minute: end, text: '' }]) {
    for (;;) {
      const { at: due } = await session.nextDue();
      if (due === undefined || due > instantOf(minute)) break;
      const raised = await session.wake(due);
      const call = raised.find((one) => one.kind === 'pull');
      if (call) return found(call.at);
      if (raised.length === 0) break;
    }
    if (text === '') break;
    const { replies } = await session.hear({ text, at: instantOf(minute) });
    if (replies.some((one) => /^.*Pull the roast now/.test(one.text)))
      return found(instantOf(minute));
  }
  return undefined;

  async function found(at: number): Promise<Called> {
    const minute = Math.round((at - instantOf(0)) / 60_000);
    const { target } = await session.view(at);
    const core = ended.cores.get(minute) ?? Number.NaN;
    return { minute, offFahrenheit: core - (target.pullFahrenheit ?? 0) };
  }
}

const isWrong = (called: Called | undefined): boolean =>
  called !== undefined && Math.abs(called.offFahrenheit) > wrongFahrenheit;

/** Takes away halves, quarters and at last single turns, as long as the call stays wrong. */
async function shrunk(turns: readonly Said[], first: Called): Promise<Said[]> {
  const stillWrong = (one: Called | undefined): boolean =>
    isWrong(one) && Math.abs((one?.minute ?? 0) - first.minute) <= sameMinutes;
  let kept = [...turns];
  for (
    let size = Math.ceil(kept.length / 2);
    size >= 1;
    size = size === 1 ? 0 : Math.ceil(size / 2)
  ) {
    for (let from = 1; from < kept.length; ) {
      const fewer = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (stillWrong(await calledWith(fewer))) kept = fewer;
      else from += size;
    }
  }
  return kept;
}

const called = await calledWith(ended.said);
const turns = called && isWrong(called) ? await shrunk(ended.said, called) : ended.said;
const last = await calledWith(turns);
const coreOff = ended.coreFahrenheit - targetFahrenheit;
const tableOff = ended.tableMinute - ended.agreedMinute;
const lines = [
  `# Evening ${seed} of the dinners bench: ${causeOf({ ...ended, coreOff, tableOff })}.`,
  `# Core ${coreOff.toFixed(0)} °F off at the knife, table ${tableOff.toFixed(0)} minutes off.`,
  'start 2026-12-19 12:00 America/Chicago',
  'units F lb',
  `seed ${seed}`,
  '',
  ...turns.map(({ minute, text }) => `${clockOf(minute)} > ${text}`),
  ...(last
    ? [`# The pull was called at ${clockOf(last.minute)}, ${last.offFahrenheit.toFixed(0)} °F off.`]
    : []),
];
process.stdout.write(`${lines.join('\n')}\n`);
