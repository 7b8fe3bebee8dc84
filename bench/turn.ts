/**
 * How long a turn takes, part by part: parse, machine, forecast, plan, whole turn; p50 and p99 in
 * milliseconds, each beside a fixed loop of arithmetic timed in the same run, since machines drift.
 */
import { instantOf } from '../src/base/time.ts';
import { builtInCardsFolder, loadCards } from '../src/cards/load.ts';
import { read } from '../src/intents/read.ts';
import { openMemoryJournal } from '../src/journal/memory.ts';
import { lexiconOf } from '../src/kitchen/card.ts';
import { standingOf } from '../src/machine/stage.ts';
import { forecast } from '../src/planner/heat/forecast.ts';
import { plan } from '../src/planner/plan.ts';
import { inThisThread } from '../src/session/compute.ts';
import { outlookOf } from '../src/session/outlook.ts';
import { openSession } from '../src/session/session.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const lexicon = lexiconOf(cards);
const zone = 'America/Chicago';
const at = (time: string): number => instantOf('2026-12-19', time, zone);
const compute = inThisThread;

const times = new Map<string, number[]>();
function note(name: string, milliseconds: number): void {
  times.set(name, [...(times.get(name) ?? []), milliseconds]);
}
async function timed<T>(name: string, work: () => T | Promise<T>): Promise<T> {
  const from = performance.now();
  const result = await work();
  note(name, performance.now() - from);
  return result;
}

/** A million square roots and sums: what this machine does today. */
function calibration(): number {
  let sum = 0;
  for (let i = 1; i <= 1_000_000; i += 1) sum += Math.sqrt(i);
  return sum;
}

const told: [string, string][] = [
  ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
  ['13:45', 'done'],
  ['14:10', 'the roast is tied and seasoned'],
  ['16:10', 'oven is on'],
  ['16:40', 'the roast is in'],
  ['17:00', 'I turned it down to 325'],
  ['17:30', 'it reads 70'],
  ['17:40', 'what is next'],
  ['17:50', 'it reads 84'],
  ['18:00', 'guests are late 30 minutes'],
  ['18:10', 'how long till dinner'],
  ['18:20', 'it reads 103'],
  ['18:40', "it's out"],
  ['19:20', "we're carving"],
  ['19:30', "dinner's on the table"],
];

const rounds = Number(process.argv[2] ?? 12);
for (let round = 0; round < rounds; round += 1) {
  const opening = {
    timeZone: zone,
    units: { temperature: 'F' as const, weight: 'lb' as const },
    seed: round + 1,
    language: 'en',
  };
  const session = await openSession({
    dinner: `bench-${round}`,
    journal: openMemoryJournal(),
    compute,
    cards,
    opening,
  });
  for (const [time, text] of told) {
    await timed('calibration', calibration);
    // What fell due on the way was called when it was due; the turn is the words alone.
    await session.wake(at(time));
    const kind = text.startsWith('guests are late') ? 'with options' : 'whole turn';
    const turn = await timed(kind, () => session.hear({ text, at: at(time) }));
    await timed('parse', () =>
      read(text, {
        now: at(time),
        timeZone: zone,
        stage: turn.view.stage,
        units: opening.units,
        paused: false,
        dishes: turn.view.sides.map((side) => side.id),
        openSteps: [],
        lexicon,
      }),
    );
    const facts = await session.facts();
    await timed('machine', () => standingOf(session.id, facts));
    const outlook = await outlookOf(session.id, facts, at(time), compute);
    const { question, dinner, plan: made } = outlook;
    if (!question || !made) continue;
    const heat = await timed('forecast', () =>
      forecast({ ...question, seed: question.seed + 1000 }),
    );
    await timed('plan', () =>
      plan({ dinner, forecast: heat, pullCelsius: made.pullCelsius, now: at(time) }),
    );
  }
}

const quantile = (sorted: number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
console.log('part            p50 ms    p99 ms   p50 / calibration');
const base = quantile(
  [...(times.get('calibration') ?? [1])].sort((a, b) => a - b),
  0.5,
);
for (const [name, all] of times) {
  const sorted = [...all].sort((a, b) => a - b);
  const p50 = quantile(sorted, 0.5);
  console.log(
    `${name.padEnd(14)}${p50.toFixed(2).padStart(8)}${quantile(sorted, 0.99).toFixed(2).padStart(10)}${(p50 / base).toFixed(2).padStart(12)}`,
  );
}
