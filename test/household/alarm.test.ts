/** The household's one timer, on a clock that the test moves. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Alarm } from '../../src/household/alarm.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: 0 });
});
afterEach(() => {
  vi.useRealTimers();
});

const alarm = () => {
  const rung: number[] = [];
  const made = new Alarm(
    () => Date.now(),
    async () => {
      rung.push(Date.now());
    },
  );
  return { rung, made };
};

test('what is due rings although the alarm is set anew with every word said', async () => {
  const { rung, made } = alarm();
  for (let at = 0; at < 5_000; at += 100) {
    made.set(2_000);
    await vi.advanceTimersByTimeAsync(100);
  }
  expect(rung[0]).toBe(2_000);
  expect(rung.length).toBeGreaterThanOrEqual(3);
});

test('something sooner rings sooner', async () => {
  const { rung, made } = alarm();
  made.set(20_000);
  made.set(3_000);
  await vi.advanceTimersByTimeAsync(4_000);
  expect(rung).toEqual([3_000]);
});

test('a long sleep is slept in pieces, and nothing due is never rung for', async () => {
  const { rung, made } = alarm();
  made.set(100_000);
  await vi.advanceTimersByTimeAsync(31_000);
  expect(rung).toEqual([30_000]);
  made.set(50_000);
  made.set(undefined);
  await vi.advanceTimersByTimeAsync(60_000);
  expect(rung).toEqual([30_000]);
});

test('a failure is tried again, and a stopped alarm is silent', async () => {
  let tries = 0;
  const made = new Alarm(
    () => Date.now(),
    async () => {
      tries += 1;
      throw new Error('the disk is full');
    },
  );
  made.set(1_000);
  await vi.advanceTimersByTimeAsync(12_000);
  expect(tries).toBe(3);
  made.stop();
  await vi.advanceTimersByTimeAsync(60_000);
  expect(tries).toBe(3);
});
