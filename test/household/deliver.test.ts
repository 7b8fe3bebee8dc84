/** That a call arrived is a fact: what a restart finds of it, sink by sink. */
import { expect, test } from 'vitest';
import { deliverTo, type Sink } from '../../src/household/deliver.ts';
import { Household } from '../../src/household/household.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Journal, Opening } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { until } from '../bridges/fakes.ts';

const now = Date.parse('2026-12-19T18:00:00Z');
const opening: Opening = {
  timeZone: 'Europe/Lisbon',
  units: { temperature: 'C', weight: 'kg' },
  seed: 1,
  language: 'en',
};

const announced = (id: string, expiresAt = now + 600_000): NewFact => ({
  type: 'announced',
  id,
  call: id,
  repeat: 0,
  kind: 'timer',
  text: id,
  speech: id,
  urgency: 'normal',
  dueAt: now,
  expiresAt,
});

async function journalWith(...ids: NewFact[]): Promise<Journal> {
  const journal = openMemoryJournal();
  await journal.append('supper', 0, now, [
    {
      type: 'dinner-opened',
      timeZone: opening.timeZone,
      temperatureUnit: 'C',
      weightUnit: 'kg',
      seed: 1,
      language: 'en',
    },
    ...ids,
  ]);
  return journal;
}

/** One run of the program on the journal, with one sink, until the sink has tried so often. */
async function run(
  journal: Journal,
  sink: { name: string; fails?: (id: string) => boolean },
  tries: number,
): Promise<{ arrived: string[]; zones: Set<string> }> {
  const household = new Household({
    journal,
    clock: 'real',
    now: () => now,
    opening: () => opening,
    open: (dinner) => openSession({ dinner, journal, compute: inThisThread, cards: [], opening }),
  });
  const arrived: string[] = [];
  const zones = new Set<string>();
  let tried = 0;
  const one: Sink = {
    name: sink.name,
    async send({ id }, dinner) {
      tried += 1;
      zones.add(dinner.timeZone);
      if (sink.fails?.(id)) throw new Error('down');
      arrived.push(id);
    },
  };
  const delivery = await deliverTo(one, { household, ticks: () => performance.now() });
  await until(() => tried >= tries);
  await delivery.close();
  household.close();
  return { arrived, zones };
}

test('each run sends what no earlier one brought to this sink, in order; other sinks stand apart', async () => {
  const journal = await journalWith(announced('a'), announced('b'), announced('c'));
  const dies = await run(journal, { name: 'hook', fails: (id) => id !== 'a' }, 2);
  expect(dies.arrived).toEqual(['a']);
  expect(dies.zones).toEqual(new Set(['Europe/Lisbon']));
  expect((await run(journal, { name: 'hook' }, 2)).arrived).toEqual(['b', 'c']);
  expect((await run(journal, { name: 'hook' }, 0)).arrived).toEqual([]);
  expect((await run(journal, { name: 'bus' }, 3)).arrived).toEqual(['a', 'b', 'c']);
});

test('a dinner left open beside the newest one is not forgotten', async () => {
  const journal = await journalWith(announced('a'));
  const [opened] = await journal.read('supper');
  const { dinner: _, position: __, at: ___, v: ____, ...first } = opened!;
  await journal.append('late supper', 0, now + 1, [first as NewFact, announced('b')]);
  const { arrived } = await run(journal, { name: 'hook' }, 2);
  expect(arrived.sort()).toEqual(['a', 'b']);
});

test('what has expired is not sent after a restart', async () => {
  const journal = await journalWith(announced('old', now - 1), announced('new'));
  expect((await run(journal, { name: 'hook' }, 1)).arrived).toEqual(['new']);
});
