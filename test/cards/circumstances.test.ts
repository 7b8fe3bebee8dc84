/** Which steps a dinner has, and in which words: by the bones, by the butcher, by who is at table. */
import { describe, expect, test } from 'vitest';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { circumstancesOf, cooksOnFor } from '../../src/kitchen/circumstances.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Doneness } from '../../src/kitchen/heard.ts';
import { callWords, findStep } from '../../src/reply/en/steps.ts';
import type { WrittenDinner } from '../../src/session/day.ts';
import type { Outlook } from '../../src/session/outlook.ts';
import { sceneOf } from '../../src/session/view.ts';
import { at, factsOf, lookAt, withMore } from '../harness/day.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const roasts = cards.filter((card) => card.card === 'roast');

const looked = (dinner: Partial<WrittenDinner>, vulnerable?: string): Promise<Outlook> =>
  lookAt(
    withMore(
      factsOf({ dishes: [], ...dinner }),
      vulnerable === undefined
        ? []
        : [{ type: 'guest-noted', who: vulnerable, need: 'vulnerable', at: at('12:00') }],
    ),
    at('12:00'),
  );

const idsOf = (outlook: Outlook): string[] => (outlook.plan?.steps ?? []).map((step) => step.id);

describe('what the butcher did', () => {
  const rib = { cut: 'rib-roast', kilograms: 3.2, bones: 3 };

  test.each([
    ['whole', true, true],
    ['tied-back', false, false],
    ['stuffed', false, true],
  ] as const)('%s: frenched %s, tied here %s', async (prepared, french, truss) => {
    const ids = idsOf(await looked({ roast: { ...rib, prepared } }));
    expect(ids.includes('french')).toBe(french);
    expect(ids.includes('truss')).toBe(truss);
  });

  test('a rolled rib comes tied and has no bones to french', async () => {
    const outlook = await looked({
      roast: { cut: 'rib-roast', kilograms: 2.5, prepared: 'rolled' },
    });
    const ids = idsOf(outlook);
    expect(ids).not.toContain('french');
    expect(ids).not.toContain('truss');
    expect(callWords('carve', sceneOf(outlook)).text).not.toMatch(/bone/);
    expect(callWords('roast-in', sceneOf(outlook)).text).toMatch(/rack/);
  });

  test('tied back, the bones are lifted away before a slice is cut', async () => {
    const outlook = await looked({ roast: { ...rib, prepared: 'tied-back' } });
    expect(callWords('carve', sceneOf(outlook)).text).toMatch(/Strings off, lift the bones away/);
  });

  test('a boneless leg of lamb is carved straight across', async () => {
    const roast = { cut: 'leg-of-lamb', kilograms: 2, boneless: true };
    const outlook = await looked({ roast });
    expect(callWords('carve', sceneOf(outlook)).text).not.toMatch(/shank|bone/);
  });
});

// USDA FSIS: whole roasts to 145 °F and a three-minute rest, for whoever should not eat them pink.
describe('slices cooked on for a guest who must not have them pink', () => {
  test.each(roasts.map((card) => [card.id]))('%s has the step, measured and rested', (id) => {
    const step = roasts.find((card) => card.id === id)?.steps.find((one) => one.id === 'cook-on');
    expect(step?.only).toEqual(['cook-on']);
    expect(step?.call).toContain('{consumerMinimum}');
    expect(step?.how.join(' ')).toMatch(/rest three minutes/);
    expect(step?.right).toMatch(/measured/);
  });

  test.each<[Doneness, string | undefined, boolean]>([
    ['medium-rare', 'granny', true],
    ['medium', 'granny', true],
    ['medium-rare', undefined, false],
    ['medium-well', 'granny', false],
    ['well-done', 'granny', false],
  ])('%s with %s at table: %s', async (doneness, who, wanted) => {
    const outlook = await looked({ doneness }, who);
    expect(idsOf(outlook).includes('cook-on')).toBe(wanted);
    const step = outlook.plan?.steps.find((one) => one.id === 'cook-on');
    const serve = outlook.plan?.steps.find((one) => one.id === 'serve');
    const pull = outlook.plan?.steps.find((one) => one.id === 'pull');
    if (!wanted || !step || !serve || !pull) return;
    expect(step.startAt).toBeGreaterThan(pull.startAt);
    expect(step.endAt - serve.startAt).toBeLessThanOrEqual(10 * 60_000);
    expect(callWords('cook-on', sceneOf(outlook)).text).toMatch(/your granny .* 145 °F/);
  });

  test('a doneness of the consumer minimum makes it needless', () => {
    const facts = factsOf({ serveCelsius: 62.8, doneness: undefined });
    const noted = withMore(facts, [
      { type: 'guest-noted', who: 'ella', need: 'vulnerable', at: at('12:00') },
    ]);
    expect(cooksOnFor(dinnerOf('written', noted))).toEqual([]);
    expect(circumstancesOf(dinnerOf('written', noted)).cookOn).toBe(false);
  });
});

test('words of a variant replace only what they name', () => {
  const dinner = dinnerOf(
    'written',
    factsOf({ roast: { cut: 'rib-roast', kilograms: 2.5, boneless: true } }),
  );
  const truss = findStep(dinner, 'truss')?.step;
  const plain = roasts
    .find((card) => card.id === 'rib-roast')
    ?.steps.find((one) => one.id === 'truss');
  expect(truss?.call).not.toBe(plain?.call);
  expect(truss?.right).toBe(plain?.right);
});
