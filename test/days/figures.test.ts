import { describe, expect, it } from 'vitest';
import { fahrenheitOfCelsius, kilogramsOfPounds, poundsOfKilograms } from '../../src/base/units.ts';
import { boilingCelsius, metresOfFeet } from '../../src/kitchen/boiling.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import {
  saltGramsPerTeaspoon,
  saltShareHigh,
  saltShareLow,
  teaspoonsOf,
} from '../../src/kitchen/salt.ts';
import {
  feedsOf,
  servingsPerGuest,
  servingsPerPound,
  sizeOf,
} from '../../src/planner/days/size.ts';
import { thawMinutes, thawMinutesAtBest, waterThawMinutes } from '../../src/planner/days/thaw.ts';
import { cards, factsOf } from '../harness/day.ts';

const roastCard = (id: string) => {
  const card = cards.find((one) => one.id === id);
  if (card?.card !== 'roast') throw new Error(id);
  return card;
};
const dinner = dinnerOf('written', factsOf());

describe('thawing', () => {
  // USDA FSIS, safe defrosting methods: 24 hours for each 4 to 5 pounds in the fridge; 30 minutes a
  // pound in cold water. An 18-pound rib: three and a half days to four and a half.
  it.each([
    [4, 24, 19.2],
    [5, 30, 24],
    [18, 108, 86.4],
  ])('%d lb: %d hours at the slow rate, %d at the quick one', (pounds, slow, quick) => {
    const kilograms = kilogramsOfPounds(pounds);
    expect(thawMinutes(kilograms) / 60).toBeCloseTo(slow, 6);
    expect(thawMinutesAtBest(kilograms) / 60).toBeCloseTo(quick, 6);
  });

  it('in cold water a four-pound roast takes two hours, within the two to three published', () => {
    const hours = waterThawMinutes(kilogramsOfPounds(4)) / 60;
    expect(hours).toBeGreaterThanOrEqual(2);
    expect(hours).toBeLessThanOrEqual(3);
  });
});

describe('how big for how many', () => {
  // University of Idaho Extension 2016: two to three servings of three ounces from a bone-in pound,
  // three to four from a boneless one; most guests eat two or three; five pounds feed five or six.
  it('counts servings within the published ranges', () => {
    expect(servingsPerPound['bone-in']).toBeGreaterThanOrEqual(2);
    expect(servingsPerPound['bone-in']).toBeLessThanOrEqual(3);
    expect(servingsPerPound.boneless).toBeGreaterThanOrEqual(3);
    expect(servingsPerPound.boneless).toBeLessThanOrEqual(4);
    for (const servings of Object.values(servingsPerGuest)) {
      expect(servings).toBeGreaterThanOrEqual(2);
      expect(servings).toBeLessThanOrEqual(3);
    }
  });

  it('a five-pound rib feeds five or six', () => {
    const feeds = feedsOf(roastCard('rib-roast'), kilogramsOfPounds(5), false);
    expect(feeds).toBeGreaterThanOrEqual(5);
    expect(feeds).toBeLessThanOrEqual(6);
  });

  // A pound raw and half a rib for each: common practice. Ribs by weight (a beef-industry roasting
  // sheet): two at 4 to 6 lb, two to four at 6 to 8, four or five at 8 to 10.
  it.each([
    [2, 1, 1],
    [4, 2, 2],
    [6, 2, 4],
    [8, 3, 5],
    [10, 4, 5],
  ])('%d guests: a pound each, and %d to %d ribs', (guests, least, most) => {
    const size = sizeOf({ dinner, card: roastCard('rib-roast'), guests });
    expect(poundsOfKilograms(size.kilograms)).toBeGreaterThan(guests * 0.9);
    expect(poundsOfKilograms(size.kilograms)).toBeLessThan(guests * 1.1);
    expect(size.bones).toBeGreaterThanOrEqual(least);
    expect(size.bones).toBeLessThanOrEqual(most);
  });

  // Roseland 2015 (USDA): roasted ribeye keeps 76 % of its weight. The industry counts two and a half
  // three-ounce servings of a raw pound of rib, so the bone is the rest.
  it('leaves every usual appetite its servings after the oven', () => {
    const size = sizeOf({ dinner, card: roastCard('rib-roast'), guests: 8 });
    const boneless = (size.bonelessKilograms ?? 0) * 0.76;
    const wanted = 8 * servingsPerGuest.usual * 3 * 0.0283495;
    expect(boneless / wanted).toBeGreaterThan(0.9);
    expect(boneless / wanted).toBeLessThan(1.35);
  });

  it('grows with appetite, and leaves out those who eat no meat', () => {
    const card = roastCard('rib-roast');
    const of = (appetite: 'light' | 'usual' | 'hearty'): number =>
      sizeOf({ dinner, card, guests: 6, appetite }).kilograms;
    expect(of('light')).toBeLessThan(of('usual'));
    expect(of('usual')).toBeLessThan(of('hearty'));
    const withOla = {
      ...dinner,
      notes: [{ who: 'ola', need: 'diet' as const, value: 'vegetarian' }],
    };
    expect(sizeOf({ dinner: withOla, card, guests: 6 }).eaters).toBe(5);
  });
});

describe('salt', () => {
  // Kitchen writers' tables (secondary): table salt 5.7 to 6.0 g, dense kosher 4.8 to 5, light flaky
  // kosher 2.8 to 3: a spoon of one kosher salt is about half of another's.
  it('by the spoon depends on the salt by a factor of two', () => {
    const { table, 'dense kosher': dense, 'light flaky kosher': light } = saltGramsPerTeaspoon;
    expect(table).toBeGreaterThanOrEqual(5.7);
    expect(table).toBeLessThanOrEqual(6);
    expect(dense).toBeGreaterThanOrEqual(4.8);
    expect(dense).toBeLessThanOrEqual(5);
    expect(light).toBeGreaterThanOrEqual(2.8);
    expect(light).toBeLessThanOrEqual(3);
    expect(table / light).toBeGreaterThan(1.9);
    expect(teaspoonsOf(30, 'light flaky kosher')).toBe(10.5);
    expect(teaspoonsOf(30, 'table')).toBe(5);
    expect(teaspoonsOf(0.4, 'table')).toBe(0.5);
  });

  it.each(cards.filter((card) => card.card === 'roast').map((card) => [card.id]))(
    'of the %s lies within three quarters and one and a quarter per cent (from memory)',
    (id) => {
      const salt = roastCard(id).ingredients.find((part) => /\bsalt\b/.test(part.item));
      expect(salt?.per).toBe('kilogram');
      expect((salt?.amount ?? 0) / 1000).toBeGreaterThanOrEqual(saltShareLow);
      expect((salt?.amount ?? 0) / 1000).toBeLessThanOrEqual(saltShareHigh);
    },
  );
});

describe('boiling water', () => {
  // A published table of boiling points by height, for testing thermometers.
  it.each([
    [0, 212.0],
    [1000, 210.2],
    [2000, 208.4],
    [3000, 206.6],
    [4000, 204.8],
    [5000, 203.0],
    [6000, 201.1],
    [7000, 199.3],
    [8000, 197.4],
    [9000, 195.5],
    [10000, 193.6],
  ])('at %d feet: %d °F', (feet, fahrenheit) => {
    expect(fahrenheitOfCelsius(boilingCelsius(metresOfFeet(feet)))).toBeCloseTo(fahrenheit, 0);
    expect(
      Math.abs(fahrenheitOfCelsius(boilingCelsius(metresOfFeet(feet))) - fahrenheit),
    ).toBeLessThan(0.3);
  });
});
