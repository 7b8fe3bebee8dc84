/** What a guest may have is answered from the notes and from what the cards name. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { GuestNote } from '../../src/kitchen/dinner.ts';
import { eatsAnswer } from '../../src/reply/en/eats.ts';
import type { Scene } from '../../src/reply/scene.ts';
import { sceneOf } from '../../src/session/view.ts';
import { at, factsOf, lookAt } from '../harness/day.ts';

let scene: Scene;
beforeAll(async () => {
  scene = sceneOf(await lookAt(factsOf({ dishes: ['pan-gravy', 'roast-potatoes'] }), at('12:00')));
});

const ask = (who: string, dish: string | undefined, notes: GuestNote[]): string =>
  eatsAnswer(
    { intent: 'ask-guests', about: 'eats', who, dish, text: '' },
    { ...scene, dinner: { ...scene.dinner, notes } },
  ).text;

// Flour is gluten and pan drippings are meat by the gravy's card; Regulation (EU) No 1169/2011, annex II.
describe('a guest with a note', () => {
  const anna: GuestNote[] = [{ who: 'anna', need: 'allergy', value: 'coeliac' }];

  it('hears of a dish what rules it out, and what does in its place', () => {
    expect(ask('anna', 'pan-gravy', anna)).toMatch(
      /^No: there is plain flour .*Cornstarch|cornstarch/,
    );
    expect(ask('anna', 'roast-potatoes', anna)).toMatch(/^Yes: .* for Anna\. Read the labels/);
  });

  it('hears of the menu what is theirs as written and what is not', () => {
    const told = ask('anna', undefined, anna);
    expect(told).toMatch(/^As written, .*the roast potatoes/);
    expect(told).toMatch(/Not the pan gravy/);
  });

  it('of two things is kept from both', () => {
    const both: GuestNote[] = [...anna, { who: 'anna', need: 'allergy', value: 'celery' }];
    expect(ask('anna', 'pan-gravy', both)).toMatch(/plain flour and beef stock/);
  });
});

it('asked of nobody by name, whoever of those noted must not have it is named', () => {
  const notes: GuestNote[] = [
    { who: 'anna', need: 'allergy', value: 'coeliac' },
    { who: 'ben', need: 'diet', value: 'vegetarian' },
  ];
  const told = ask('', 'pan-gravy', notes);
  expect(told).toMatch(/Not Anna: there is plain flour/);
  expect(told).toMatch(/Not Ben: there is .*pan drippings/);
  expect(ask('', 'roast-potatoes', notes.slice(0, 1))).toMatch(/^Nothing in the roast potatoes/);
});

it('a need by its word is answered without a guest; of a name with no note it is said so', () => {
  expect(ask('coeliac', 'pan-gravy', [])).toMatch(/^No: there is plain flour/);
  expect(ask('vegetarian', 'pan-gravy', [])).toMatch(/pan drippings/);
  expect(ask('ben', undefined, [])).toMatch(/Nothing is noted of Ben/);
});
