/** A journal alone: what an append costs, and how long a long dinner takes to open. */
import type { NewFact } from '../../src/kitchen/facts.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Journal } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { quantile } from '../measure.ts';
import { opened } from './opened.ts';

const turn: NewFact[] = Array.from({ length: 8 }, (_, n) => ({
  type: 'guests-counted',
  count: n + 1,
}));

const aloneAtMost = 300;
const togetherMilliseconds = 4_000;
const writers = 16;
const longFacts = 2_000;

export async function appendsASecond(journal: Journal) {
  const times: number[] = [];
  await journal.append('alone', 0, 1, [opened]);
  for (let n = 0; n < aloneAtMost; n += 1) {
    const from = performance.now();
    await journal.append('alone', 1 + n * turn.length, n, turn);
    times.push(performance.now() - from);
  }
  const until = performance.now() + togetherMilliseconds;
  const write = async (dinner: string): Promise<number> => {
    let held = 0;
    while (performance.now() < until) held += (await journal.append(dinner, held, 1, turn)).length;
    return held / turn.length;
  };
  const counts = await Promise.all(
    Array.from({ length: writers }, (_, n) => write(`together-${n}`)),
  );
  const sum = counts.reduce((all, one) => all + one, 0);
  return {
    alone: { p50: quantile(times, 0.5), p99: quantile(times, 0.99) },
    together: sum / (togetherMilliseconds / 1000),
  };
}

/** A dinner with a reading every few seconds for hours, as a leave-in thermometer sends them. */
export async function openingMilliseconds(journal: Journal) {
  const now = Date.now();
  await journal.append('long', 0, now, [opened]);
  for (let held = 1; held < longFacts; held += 1)
    await journal.append('long', held, now + held * 5_000, [
      {
        type: 'reading-taken',
        celsius: 20 + held / 60,
        happenedAt: now + held * 5_000,
        thermometer: 'leave-in',
      },
    ]);
  const from = performance.now();
  const opening = {
    timeZone: 'UTC',
    units: { temperature: 'F' as const, weight: 'lb' as const },
    seed: 3,
    language: 'en',
  };
  const session = await openSession({
    dinner: 'long',
    journal,
    compute: inThisThread,
    cards: [],
    opening,
  });
  const read = performance.now();
  await session.view(now + longFacts * 5_000);
  return {
    facts: (await session.facts()).length,
    readMilliseconds: read - from,
    viewMilliseconds: performance.now() - read,
  };
}
