/** What a dinner taught of its kitchen opens the next one: a fact of it, shown, and told otherwise by a word. */
import { expect, test } from 'vitest';
import { Household } from '../../src/household/household.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { inThisThread } from '../../src/session/compute.ts';
import { learntBefore, learntOf } from '../../src/session/learnt.ts';
import { openSession } from '../../src/session/session.ts';
import { cards, opening } from '../harness/day.ts';

const noon = Date.parse('2026-12-19T18:00:00Z');
const minute = 60_000;

test('a slow roast in a kitchen opens the next dinner with a cooler oven', async () => {
  const journal = openMemoryJournal();
  const household = new Household({
    journal,
    clock: 'simulated',
    now: () => noon,
    opening: () => opening,
    open: (dinner, first) =>
      openSession({ dinner, journal, compute: inThisThread, cards, opening: first }),
    learnt: () => learntBefore(journal, inThisThread),
  });
  const say = (text: string, minutes: number): Promise<unknown> =>
    household.say({ text, at: noon + minutes * minute });
  await say('seven pound three bone rib roast, dinner at seven for six, medium rare', 0);
  await say('the roast is in', 1);
  // Some fifteen degrees behind what a roast of that weight does as called.
  for (const [at, fahrenheit] of [
    [61, 62],
    [76, 73],
    [91, 83],
    [106, 92],
    [121, 100],
  ] as const)
    await say(`it reads ${fahrenheit}`, at);
  await say("it's out", 150);
  const next = await household.create({ at: noon + 7 * 24 * 60 * minute });
  const opened = (await household.facts(next)).find((fact) => fact.type === 'dinner-opened');
  expect(opened?.kitchen?.ovenBiasKelvin.mean).toBeLessThan(-2.7);
  expect(opened?.kitchen?.ovenBiasKelvin.deviation).toBeLessThanOrEqual(9);
  await household.say({ text: 'six pound rib roast', at: noon + 8 * 24 * 60 * minute }, next.id);
  // Nothing is learnt from a dinner that was not read.
  expect(await learntOf(next.id, await household.facts(next), inThisThread)).toBeUndefined();
  await household.say(
    { text: 'dinner at seven for six, medium rare', at: noon + 8 * 24 * 60 * minute },
    next.id,
  );
  const said = (await household.facts(next)).filter((fact) => fact.type === 'replied');
  expect(
    said.filter((one) => one.text.includes('From earlier dinners, your oven runs')),
  ).toHaveLength(1);
  const assumed = async (): Promise<string> =>
    (await household.view(next)).forecast?.assumptions.join(' ') ?? '';
  expect(await assumed()).toMatch(/oven is taken to run .* cool/);
  const later = noon + 8 * 24 * 60 * minute;
  await household.say({ text: 'forget what you know of the oven', at: later }, next.id);
  expect(await assumed()).toMatch(/oven is taken to have stood as set/);
  const after = await learntOf(next.id, await household.facts(next), inThisThread);
  expect(after?.ovenBiasKelvin.mean).toBe(0);
  await household.say({ text: 'my oven runs 20 hot', at: later }, next.id);
  expect(await assumed()).toMatch(/oven is taken to run 20 °F hot/);
});
