/** A household whose calls are set by the test, and time that moves by hand. */
import { Household } from '../../src/household/household.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Glance } from '../../src/session/glance.ts';
import type { Announcement, Journal, Session } from '../../src/session/ports.ts';
import { at, call, type FakeWorld, fakeOpener } from '../rehearsal/fake-session.ts';

export const start = at('12:00');

/** A wall clock that can be set wrong, and ticks that cannot. Both follow real time besides. */
export function clocks() {
  const began = performance.now();
  let ahead = 0;
  const ticks = (): number => performance.now() - began;
  return {
    ticks,
    now: () => Math.round(start + ahead + ticks()),
    /** Sets the wall clock on, or back. */
    step: (milliseconds: number) => {
      ahead += milliseconds;
    },
  };
}

export interface FakeHouse {
  household: Household;
  world: FakeWorld;
  clock: ReturnType<typeof clocks>;
  dinner: string;
  /** Makes these calls due at once and rings them. */
  raise(calls: readonly Announcement[]): Promise<void>;
}

export async function fakeHouse(world: FakeWorld = { calls: [] }): Promise<FakeHouse> {
  const clock = clocks();
  const journal: Journal = openMemoryJournal();
  const open = fakeOpener(world);
  const glance: Glance = { stage: 'planning', timeZone: 'UTC', openedAt: start, lastAt: start };
  const household = new Household({
    journal,
    clock: 'real',
    now: clock.now,
    ticks: clock.ticks,
    opening: () => ({
      timeZone: 'UTC',
      units: { temperature: 'F', weight: 'lb' },
      seed: 1,
      language: 'en',
    }),
    open: async (): Promise<Session> => ({ ...(await open()), glance: async () => glance }),
  });
  const { id } = await household.create({});
  world.facts ??= await journal.read(id);
  return {
    household,
    world,
    clock,
    dinner: id,
    raise: async (calls) => {
      world.calls.push(...calls);
      // Hearing anything raises what is due.
      await household.say({ text: 'so' }, id);
    },
  };
}

/** A call that is due now and good for so long. */
export const dueNow = (
  house: FakeHouse,
  id: string,
  more: Partial<Announcement> & { liveMilliseconds?: number } = {},
): Announcement => {
  const now = house.household.now();
  const { liveMilliseconds = 60_000, ...rest } = more;
  return {
    ...call('12:00', 'step-due'),
    id,
    text: id,
    speech: `${id} spoken`,
    at: now,
    expiresAt: now + liveMilliseconds,
    ...rest,
  };
};

/** Waits until it holds, or fails with what there is. */
export async function until(holds: () => boolean, saw: () => unknown = () => ''): Promise<void> {
  const deadline = performance.now() + 45_000;
  while (!holds()) {
    if (performance.now() > deadline) throw new Error(`never came about: ${JSON.stringify(saw())}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}
