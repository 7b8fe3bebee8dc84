/** What every card of the program owes the cook: plain lines, signs, mends, ways round, cautions. */
import { describe, expect, test } from 'vitest';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { methodSteps, reservedSteps } from '../../src/cards/roast-check.ts';
import { comesWith, lexiconOf } from '../../src/kitchen/card.ts';
import { spokenLines } from './lines.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const count = (kind: string): number => cards.filter((card) => card.card === kind).length;

test('there is enough to choose from', () => {
  expect(count('roast')).toBeGreaterThanOrEqual(6);
  expect(count('side')).toBeGreaterThanOrEqual(10);
  expect(count('sauce')).toBeGreaterThanOrEqual(6);
  expect(count('butter')).toBeGreaterThanOrEqual(3);
});

test.each(cards.filter((card) => card.card === 'roast').map((card) => card.id))(
  'the usual dinner of a %s has two sides, a sauce and a butter',
  (cut) => {
    const usual = cards.filter((card) => card.card !== 'roast' && comesWith(card, cut));
    expect(usual.map((card) => card.card).sort()).toEqual(['butter', 'sauce', 'side', 'side']);
  },
);

// Horseradish with beef, mint with lamb, apple with pork: common practice, no source.
test.each([
  ['rib-roast', 'horseradish-cream'],
  ['tenderloin', 'horseradish-cream'],
  ['leg-of-lamb', 'mint-sauce'],
  ['pork-loin', 'apple-sauce'],
])('the sauce that comes with a %s is %s', (cut, sauce) => {
  const sauces = cards.filter((card) => card.card === 'sauce' && comesWith(card, cut));
  expect(sauces.map((card) => card.id)).toEqual([sauce]);
});

describe.each(cards.map((card) => [card.id, card] as const))('%s', (_id, card) => {
  const lines = spokenLines(card);

  // Read aloud at 150 words a minute thirty words take twelve seconds: common practice, no source.
  // All lines were also spoken once with espeak-ng at its usual pace; the longest took 6.7 seconds.
  test('every spoken line is over within twelve seconds', () => {
    for (const { where, text } of lines)
      expect(text.split(/\s+/).length, `${where}: ${text}`).toBeLessThanOrEqual(30);
  });

  // A call and its caution are said in one breath.
  test('a call with its caution is over within thirty words, the way round too', () => {
    for (const step of card.steps)
      for (const call of [step.call, ...(step.without ?? []).map((way) => way.call)]) {
        const said = `${call} ${step.caution ?? ''}`.trim();
        expect(said.split(/\s+/).length, `${step.id}: ${said}`).toBeLessThanOrEqual(30);
      }
  });

  test('lines are words: no figures, no symbols, no temperatures, a full stop at the end', () => {
    for (const { where, text } of lines) {
      const said = text.replace(/\{\w+\}/g, '');
      expect(said, where).not.toMatch(/[0-9°%&/()*_<>]/);
      expect(said, where).not.toMatch(/\b(degrees|fahrenheit|celsius)\b/i);
      expect(said, where).toMatch(/[.?!]$/);
      expect(said[0], where).toBe(said[0]?.toUpperCase());
    }
  });

  test('titles and names are as a cook would say them', () => {
    for (const step of card.steps) {
      expect(step.title, step.id).toMatch(/^[a-z'’ -]+$/);
      expect(step.names?.length ?? 0, `${step.id} has names`).toBeGreaterThan(0);
    }
  });

  test('a title is an order, and each step can be told back as done', () => {
    for (const step of card.steps) {
      if (/ (in|out|on)$/.test(step.title))
        expect(step.title, step.id).toMatch(/^(put|take|turn|spread) /);
      expect(step.done, step.id).toMatch(/ (is|are|has|have) [a-z]/);
      expect(step.done, step.id).not.toMatch(/[.!?]$/);
    }
  });

  // The first of two beats before a move of the oven: what to have at hand.
  test('what goes into the oven is told ahead', () => {
    for (const step of card.steps)
      if (step.oven) expect(step.ready, `${card.id}.${step.id}`).toBeDefined();
  });

  test('no two steps of a card answer to one name', () => {
    const seen = new Map<string, string>();
    for (const step of lexiconOf([card]).steps)
      for (const name of step.names) {
        expect(seen.get(name) ?? step.id, `"${name}"`).toBe(step.id);
        seen.set(name, step.id);
      }
  });

  test('raw meat that waits goes back into the fridge', () => {
    const season = card.steps.find((step) => step.id === 'season');
    if (season) expect(season.call).toMatch(/back into the fridge/i);
  });

  test('every tool that is needed has a way round it', () => {
    for (const step of card.steps)
      for (const need of step.needs ?? [])
        expect(
          step.without?.map((way) => way.tool),
          `${step.id} without ${need}`,
        ).toContain(need);
  });

  test('every ingredient but the thing itself has a substitute', () => {
    for (const part of card.ingredients) expect(part.instead, part.item).toBeDefined();
  });

  test('knives that slip, fat that spits and water that boils carry a caution at the step', () => {
    for (const step of card.steps) {
      const doing = [step.call, ...step.how].join(' ');
      const risky =
        step.id === 'french' ||
        /hot fat|hot oil|boiling (water|cream)|mandoline/i.test(doing) ||
        (step.needs ?? []).includes('mandoline');
      if (risky) expect(step.caution, `${step.id}: ${doing}`).toBeDefined();
    }
  });

  test('no caution is said twice in one card', () => {
    const cautions = card.steps.flatMap((step) => (step.caution ? [step.caution] : []));
    expect(new Set(cautions).size).toBe(cautions.length);
  });

  test('hands-on minutes are a cook’s: nothing takes hands for an hour', () => {
    for (const step of card.steps)
      if (step.hands === 'throughout') expect(step.minutes[2], step.id).toBeLessThanOrEqual(40);
  });

  test('what waits has a hold that says how', () => {
    expect(card.hold.minutes).toBeGreaterThan(0);
    expect(card.hold.how.length).toBeGreaterThan(20);
  });
});

describe('ovens', () => {
  const ovenSteps = cards.flatMap((card) =>
    card.steps.flatMap((step) => (step.oven ? [{ card, step, oven: step.oven }] : [])),
  );

  // 325 F is the oven in which every roast's chart is given (foodsafety.gov roasting chart).
  test('a dish that shares the oven with the roast stands 325 degrees', () => {
    const shared = ovenSteps.filter(({ step }) => step.ends?.anchor === 'pull');
    expect(shared.length).toBeGreaterThanOrEqual(5);
    for (const { card, step, oven } of shared) {
      expect(oven.lowFahrenheit, `${card.id}.${step.id}`).toBeLessThanOrEqual(325);
      expect(oven.highFahrenheit, `${card.id}.${step.id}`).toBeGreaterThanOrEqual(325);
    }
  });

  test('a dish in a hotter oven ends after the pull', () => {
    for (const { card, step, oven } of ovenSteps)
      if (oven.lowFahrenheit > 325)
        expect(['carve', 'table'], `${card.id}.${step.id}`).toContain(step.ends?.anchor);
  });

  test('no household oven is asked for what it cannot do', () => {
    for (const { oven } of ovenSteps) {
      expect(oven.lowFahrenheit).toBeGreaterThanOrEqual(250);
      expect(oven.highFahrenheit).toBeLessThanOrEqual(500);
    }
  });
});

describe('roasts', () => {
  const roasts = cards.filter((card) => card.card === 'roast');

  test('all three ways of cooking, each with its own moments', () => {
    for (const roast of roasts) {
      expect(Object.keys(roast.methods).sort()).toEqual(['sear-first', 'sear-last', 'steady']);
      const ids = roast.steps.map((step) => step.id);
      for (const id of [
        ...reservedSteps,
        ...methodSteps['sear-first'],
        ...methodSteps['sear-last'],
      ])
        expect(ids).toContain(id);
    }
  });

  // Garlic and milk solids scorch at 450 F: common practice, no source.
  test('herb butter never meets the sear', () => {
    for (const roast of roasts) {
      const butter = roast.steps.find((step) => step.id === 'butter-roast');
      expect(butter?.only).not.toContain('sear-last');
      expect(butter?.ends?.anchor).toBe('oven-down');
      expect(butter?.ends?.earliestMinutes).toBeGreaterThan(0);
    }
  });

  test('before the pull the kitchen is cleared', () => {
    for (const roast of roasts) {
      const setup = roast.steps.find((step) => step.id === 'carving-setup');
      expect(setup?.ends?.anchor).toBe('pull');
      expect(setup?.ends?.latestMinutes).toBeLessThan(0);
      for (const word of ['sink', 'board', 'knife', 'strainer', 'plates'])
        expect(setup?.call).toContain(word);
    }
  });
});
