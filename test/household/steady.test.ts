/** Household time on a wall clock that is set wrong, and the calls that come by it. */
import { expect, test } from 'vitest';
import { steadyClock } from '../../src/household/steady.ts';
import { dueNow, fakeHouse, until } from '../bridges/fakes.ts';

const hour = 3_600_000;

test('set back it runs on, set on it follows, and small steps back are not seen', () => {
  let wall = 10 * hour;
  let ticks = 0;
  const clock = steadyClock({ now: () => wall, ticks: () => ticks });
  const pass = (milliseconds: number): void => {
    wall += milliseconds;
    ticks += milliseconds;
  };
  pass(1_000);
  expect(clock.now()).toBe(10 * hour + 1_000);
  wall -= hour;
  pass(5_000);
  expect(clock.now()).toBe(10 * hour + 6_000);
  pass(5_000);
  expect(clock.now()).toBe(10 * hour + 11_000);
  wall += 2 * hour;
  expect(clock.now()).toBe(11 * hour + 11_000);
  wall -= 40;
  expect(clock.now()).toBe(11 * hour + 11_000);
});

test('an earlier run may have been further on, but not by days', () => {
  const clock = steadyClock({ now: () => 10 * hour, ticks: () => 0 });
  clock.notBefore(100 * hour);
  expect(clock.now()).toBe(10 * hour);
  clock.notBefore(11 * hour);
  expect(clock.now()).toBe(11 * hour);
});

test('a call due in a second comes, though the clock is set back an hour meanwhile', async () => {
  const house = await fakeHouse();
  const rung: string[] = [];
  house.household.listen(({ announcements }) => rung.push(...announcements.map((one) => one.id)));
  house.world.calls.push(dueNow(house, 'soon', { at: house.clock.now() + 900 }));
  await house.household.say({ text: 'so' });
  expect(rung).toEqual([]);
  house.clock.step(-hour);
  await until(() => rung.length > 0);
  expect(rung).toEqual(['soon']);
  house.household.close();
});
