/** The queue in front of one door, on ticks moved by hand. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { NotNow, Outbox, type OutboxOptions } from '../../src/household/outbox.ts';

let ticks = 0;
beforeEach(() => {
  ticks = 0;
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = async (milliseconds: number): Promise<void> => {
  for (let left = milliseconds; left > 0; left -= 50) {
    ticks += Math.min(50, left);
    await vi.advanceTimersByTimeAsync(Math.min(50, left));
  }
};

function door(options: Partial<OutboxOptions<string>> = {}) {
  const tried: string[] = [];
  const arrived: string[] = [];
  const troubles: (string | undefined)[] = [];
  const state: { fails: Error | undefined } = { fails: undefined };
  const outbox = new Outbox<string>({
    send: async (item) => {
      tried.push(item);
      if (state.fails) throw state.fails;
    },
    arrived: async (item) => void arrived.push(item),
    ticks: () => ticks,
    patienceMilliseconds: 10_000,
    trouble: (why) => troubles.push(why?.message),
    ...options,
  });
  const add = (item: string, more: { live?: number; urgent?: boolean } = {}): void =>
    outbox.add({
      item,
      name: item,
      liveMilliseconds: more.live ?? 600_000,
      urgent: more.urgent ?? false,
    });
  return { outbox, add, tried, arrived, troubles, state };
}

test('parcels arrive in order, each once, however often they are handed in', async () => {
  const { add, arrived } = door();
  for (const item of ['a', 'b', 'a', 'c', 'b']) add(item);
  await pass(10);
  add('a');
  await pass(10);
  expect(arrived).toEqual(['a', 'b', 'c']);
});

test('waits grow from half a second to half a minute, and begin anew after an arrival', async () => {
  const times: number[] = [];
  const { add, state, tried } = door({
    send: async () => {
      times.push(ticks);
      if (state.fails) throw state.fails;
    },
  });
  state.fails = new Error('down');
  add('a');
  await pass(200_000);
  const waits = times.map((time, n) => time - (times[n - 1] ?? 0)).slice(1);
  expect(waits.slice(0, 8)).toEqual([500, 1000, 2000, 4000, 8000, 16000, 30000, 30000]);
  state.fails = undefined;
  await pass(31_000);
  state.fails = new Error('down again');
  const before = times.length;
  add('b');
  await pass(700);
  expect(times.length - before).toBe(2);
  expect(tried).toEqual([]);
});

test('nothing is lost, doubled or turned round by a door that was shut for a while', async () => {
  const { add, arrived, state, troubles } = door();
  state.fails = new Error('shut');
  for (const item of ['a', 'b', 'c']) add(item);
  await pass(20_000);
  add('d');
  expect(arrived).toEqual([]);
  state.fails = undefined;
  await pass(40_000);
  expect(arrived).toEqual(['a', 'b', 'c', 'd']);
  expect(troubles).toEqual(['shut', undefined]);
});

test('what expired while the door was shut is dropped, what lives on still arrives', async () => {
  const { add, arrived, state } = door();
  state.fails = new Error('shut');
  add('short', { live: 5_000 });
  add('long', { live: 300_000 });
  await pass(60_000);
  state.fails = undefined;
  await pass(60_000);
  expect(arrived).toEqual(['long']);
});

test('a door that hangs is given up after its patience and tried again', async () => {
  let hangs = true;
  const signals: AbortSignal[] = [];
  const { add, arrived, troubles } = door({
    patienceMilliseconds: 2_000,
    send: (_, signal) => {
      signals.push(signal);
      return hangs ? new Promise(() => undefined) : Promise.resolve();
    },
  });
  add('a');
  await pass(2_400);
  expect(signals.map((one) => one.aborted)).toEqual([true]);
  hangs = false;
  await pass(200);
  expect(arrived).toEqual(['a']);
  expect(troubles).toEqual(['gave no answer in time', undefined]);
});

test('an urgent parcel ends a wait; where it may go first it does, after earlier urgent ones', async () => {
  for (const [urgentFirst, order] of [
    [false, ['a', 'b', 'urgent 1', 'urgent 2']],
    [true, ['urgent 1', 'urgent 2', 'a', 'b']],
  ] as const) {
    const { add, arrived, state } = door({ urgentFirst });
    state.fails = new Error('shut');
    add('a');
    add('b');
    await pass(20_000);
    state.fails = undefined;
    add('urgent 1', { urgent: true });
    add('urgent 2', { urgent: true });
    // Far less than the wait that had begun.
    await pass(100);
    expect(arrived).toEqual(order);
  }
});

test('a door in use is come back to when it says, and that is no trouble', async () => {
  const { add, arrived, state, troubles, tried } = door();
  state.fails = new NotNow('talking', 1_000);
  add('a');
  await pass(5_500);
  expect(tried).toHaveLength(6);
  state.fails = undefined;
  await pass(1_000);
  expect(arrived).toEqual(['a']);
  expect(troubles).toEqual([]);
});

test('closing lets what is half way out arrive within the grace, and sends nothing more', async () => {
  let finish: (() => void) | undefined;
  const { add, outbox, arrived } = door({
    send: () =>
      new Promise((resolve) => {
        finish = resolve;
      }),
  });
  add('a');
  add('b');
  await pass(10);
  const closed = outbox.close(1_000);
  finish?.();
  await pass(50);
  await closed;
  expect(arrived).toEqual(['a']);
  add('c');
  await pass(5_000);
  expect(arrived).toEqual(['a']);
});
