import { describe, expect, it } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import {
  type Authority,
  authorities,
  type Figure,
  figureOf,
  meets,
  type SafetyRuleData,
  type SafetyRuleId,
  safetyData,
  safetyRuleIds,
  siOf,
} from '../../src/kitchen/safety.ts';
import { safetySentence as germanSentence } from '../../src/reply/de/safety.ts';
import { safetyRules } from '../../src/reply/en/safety.ts';
import { safetyAnswer } from '../../src/reply/en/safety-answer.ts';
import { isBelowConsumerMinimum } from '../../src/reply/en/safety-moments.ts';
import type { Scene } from '../../src/reply/scene.ts';
import { at, factsOf } from '../harness/day.ts';

const scene = (units: Scene['dinner']['units'] = { temperature: 'F', weight: 'lb' }): Scene => ({
  dinner: { ...dinnerOf('written', factsOf()), units },
  now: at('13:00'),
  stage: 'prep',
  dishes: new Map(),
  firstPlan: false,
});

describe('thresholds', () => {
  // USDA FSIS / foodsafety.gov, safe minimum internal temperatures (as revised in 2011).
  // FDA Food Code 2017: 3-401.11(B), 3-501.14, 3-501.16, 4-203.11.
  // USDA FSIS, safe defrosting methods: 24 hours for each 4 to 5 lb; cold water 30 minutes a pound.
  // foodsafety.gov, cold food storage: raw roasts 3 to 5 days, cooked meat 3 to 4, fridge 40 °F.
  it.each<[SafetyRuleId, string, Figure['bound'], number, Figure['unit']]>([
    ['below-145', 'core', 'at-least', 145, 'fahrenheit'],
    ['below-145', 'rest', 'at-least', 3, 'minutes'],
    ['surface-inside', 'stuffing', 'at-least', 165, 'fahrenheit'],
    ['poultry', 'poultry', 'at-least', 165, 'fahrenheit'],
    ['poultry', 'minced meat', 'at-least', 160, 'fahrenheit'],
    ['oven-325', 'oven', 'at-least', 325, 'fahrenheit'],
    ['hold', 'held', 'at-least', 140, 'fahrenheit'],
    ['hold', 'held for', 'at-most', 120, 'minutes'],
    ['hold-food-service', 'held', 'at-least', 135, 'fahrenheit'],
    ['hold-food-service', 'roast held', 'at-least', 130, 'fahrenheit'],
    ['cook-food-service', 'core', 'at-least', 130, 'fahrenheit'],
    ['cook-food-service', 'time at it', 'at-least', 112, 'minutes'],
    ['cool-food-service', 'after two hours', 'at-most', 70, 'fahrenheit'],
    ['cool-food-service', 'after six hours', 'at-most', 41, 'fahrenheit'],
    ['cool-food-service', 'in all', 'at-most', 360, 'minutes'],
    ['plant-lethality', 'counted from', 'at-least', 130, 'fahrenheit'],
    ['plant-lethality', 'reduction', 'at-least', 6.5, 'log'],
    ['plant-come-up', 'from 50 °F to 130 °F', 'at-most', 360, 'minutes'],
    ['leftovers', 'out', 'at-most', 120, 'minutes'],
    ['leftovers', 'in the fridge', 'at-most', 4, 'days'],
    ['leftovers', 'reheated', 'at-least', 165, 'fahrenheit'],
    ['out-of-fridge', 'out', 'at-most', 120, 'minutes'],
    ['out-of-fridge', 'out in a hot room', 'at-most', 60, 'minutes'],
    ['out-of-fridge', 'a room that is not hot', 'at-most', 90, 'fahrenheit'],
    ['raw-kept', 'in the fridge', 'at-most', 5, 'days'],
    ['raw-kept', 'fridge', 'at-most', 40, 'fahrenheit'],
    ['thaw-fridge', 'slowest', 'at-least', 6, 'hours per pound'],
    ['thaw-fridge', 'quickest', 'at-least', 4.8, 'hours per pound'],
    ['thaw-water', 'fresh water every', 'at-most', 30, 'minutes'],
    ['thaw-water', 'in all', 'at-least', 30, 'minutes per pound'],
    ['thermometer', 'off by', 'at-most', 2, 'fahrenheit'],
  ])('%s, %s: %s %d %s, and one either side', (rule, of, bound, value, unit) => {
    const figure = figureOf(rule, of);
    expect(figure).toEqual({ of, bound, value, unit });
    expect(meets(figure, value)).toBe(true);
    expect(meets(figure, value - 1)).toBe(bound === 'at-most');
    expect(meets(figure, value + 1)).toBe(bound === 'at-least');
  });

  it('stand in SI beside the household figure', () => {
    expect(siOf(figureOf('below-145', 'core')).value).toBeCloseTo(62.778, 3);
    expect(siOf(figureOf('thermometer', 'off by')).value).toBeCloseTo(1.111, 3);
    // A 4-lb roast thaws in a day at the slow rate: 24 h for 1.814 kg.
    expect(siOf(figureOf('thaw-fridge', 'slowest')).value * 1.81436948).toBeCloseTo(86_400, 3);
  });

  it('a core of 62 °C is below the consumer minimum and one of 63 °C is not', () => {
    expect(isBelowConsumerMinimum(62)).toBe(true);
    expect(isBelowConsumerMinimum(63)).toBe(false);
    expect(isBelowConsumerMinimum(((145 - 32) * 5) / 9)).toBe(false);
  });
});

const saidAs = (authority: Authority): string => authorities[authority].saidAs;

describe('sentences', () => {
  it.each(safetyRuleIds)('%s names its own authority and no other, with its own figures', (id) => {
    const rule: SafetyRuleData = safetyData[id];
    for (const units of [
      { temperature: 'F', weight: 'lb' },
      { temperature: 'C', weight: 'kg' },
    ] as const) {
      const { text, speech } = safetyRules[id].sentence(scene(units));
      const others = (Object.keys(authorities) as Authority[]).filter(
        (one) => one !== rule.authority,
      );
      if (rule.figures.length > 0)
        expect(text.toLowerCase()).toContain(saidAs(rule.authority).toLowerCase());
      for (const other of others)
        expect(text.toLowerCase()).not.toContain(saidAs(other).toLowerCase());
      const own = rule.figures
        .filter((figure) => figure.unit === 'fahrenheit')
        .map((figure) => figure.value);
      for (const [, shown] of text.matchAll(/(\d+) °F/g)) expect(own).toContain(Number(shown));
      for (const [, shown] of text.matchAll(/(\d+) °C/g))
        expect(own.map((value) => Math.round(((value - 32) * 5) / 9))).toContain(Number(shown));
      expect(speech).not.toMatch(/\d|°/);
    }
  });

  it.each(safetyRuleIds)('%s in German names the same authority, with the same figures', (id) => {
    const rule: SafetyRuleData = safetyData[id];
    const name = (authority: Authority): string =>
      authority === 'common practice' ? 'Küchenbrauch' : saidAs(authority).replace(/^the /, '');
    for (const units of [
      { temperature: 'F', weight: 'lb' },
      { temperature: 'C', weight: 'kg' },
    ] as const) {
      const { text } = germanSentence(id, scene(units));
      if (rule.figures.length > 0) expect(text).toContain(name(rule.authority));
      for (const other of Object.keys(authorities) as Authority[])
        if (other !== rule.authority) expect(text).not.toContain(name(other));
      const own = rule.figures
        .filter((figure) => figure.unit === 'fahrenheit')
        .map(({ value }) =>
          units.temperature === 'F' ? value : Math.round(((value - 32) * 5) / 9),
        );
      for (const [, shown] of text.matchAll(/(\d+) °[FC]/g)) expect(own).toContain(Number(shown));
      expect(text).not.toMatch(/\b(the|and|says|advises)\b/);
    }
  });

  it('never call a plant figure or a food-service figure safe at home', () => {
    for (const id of [
      'plant-lethality',
      'plant-come-up',
      'cook-food-service',
      'hold-food-service',
    ] as const)
      expect(safetyRules[id].sentence(scene()).text).not.toMatch(/\bsafe/i);
  });

  it('mark what is only remembered', () => {
    expect(safetyRules['plant-come-up'].source).toMatch(/from memory/);
    expect(safetyRules.rest.source).toBe('common practice, no source');
  });
});

describe('so long out of the fridge', () => {
  // USDA FSIS, two-hour rule; a minute either side.
  it.each([
    [119, /is within it/],
    [120, /is within it/],
    [121, /too long: do not eat it/],
  ])('%d minutes', (minutes, wanted) => {
    expect(safetyAnswer('it sat out', scene(), minutes).text).toMatch(wanted);
  });
});

describe('a question of safety', () => {
  it.each<[string, RegExp[]]>([
    [
      'how long can it hold warm',
      [/the USDA holds[^.]*140 °F/i, /Food Code[^.]*135 °F[^.]*130 °F/],
    ],
    ['can i serve this at the church supper', [/Local food codes/, /112 minutes/]],
    ['is it safe to thaw it on the counter', [/fridge/, /four to five pounds/]],
    ['should i rinse the roast', [/Do not rinse/]],
    ['how long do leftovers keep', [/three to four days/]],
    ['is rare fine for my pregnant sister', [/Not pink for them/]],
    ['does 130 kill the bacteria', [/145 °F/, /no promise/]],
  ])('%s', (question, wanted) => {
    const { text } = safetyAnswer(question, scene());
    for (const one of wanted) expect(text).toMatch(one);
  });
});
