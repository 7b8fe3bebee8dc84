/** What is said is over within a breath; the session scripts are timed with the voice itself by `npm run aloud`. */
import { describe, expect, it, test } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import { emergencyKinds } from '../../src/kitchen/heard.ts';
import { safetyRuleIds } from '../../src/kitchen/safety.ts';
import { breathSeconds, fitsABreath, inOneBreath, secondsAloud } from '../../src/reply/breath.ts';
import { safetySentence } from '../../src/reply/de/safety.ts';
import { emergencyReply } from '../../src/reply/en/emergency.ts';
import { safetyRules } from '../../src/reply/en/safety.ts';
import type { Scene } from '../../src/reply/scene.ts';
import { at, factsOf } from '../harness/day.ts';

// Timed with espeak-ng 1.51 (-v en-us, its own pace).
describe('the estimate of a line aloud', () => {
  it.each([
    [2.5, 'First: take the butter out to soften.'],
    [3.3, "Roast in at five past four, dinner at seven o'clock."],
    [
      5.9,
      "First: french the bones. Cut across a thumb's length from the tips, and scrape them clean.",
    ],
    [
      9.3,
      'The USDA advises one hundred forty-five degrees and a three-minute rest for whole roasts; nothing pinker for anyone pregnant, very young, old or ill.',
    ],
    [
      13.0,
      'For ten, light eaters: about three point six kilos of rib roast, four ribs on the bone; two point six kilos off it. Yours, four kilos, feeds nine: one more dish beside it, or thinner slices.',
    ],
    [
      18.3,
      'I take one, oven down to two hundred fifty degrees, one hundred thirty degrees at the knife. Two: held at one hundred seventy degrees after the pull, one hundred thirty-one degrees at the knife. Three: oven as it is, more done, one hundred thirty-four degrees at the knife. Say a number to change it.',
    ],
  ])('%d s, within what it is allowed to be off', (seconds, line) => {
    expect(Math.abs(secondsAloud(line) - seconds)).toBeLessThan(0.7);
  });

  it('leaves no line that it passes longer than a breath', () => {
    expect(fitsABreath('word '.repeat(39))).toBe(true);
    expect(fitsABreath('word '.repeat(43))).toBe(false);
  });
});

describe('more than a breath', () => {
  const part = (name: string, must = false) => ({
    text: name,
    speech: `${name} ${'and so on '.repeat(8)}`.trim(),
    must,
  });

  it('is all there for eyes; the ear has what must be heard, and the first of the others', () => {
    const { text, speech } = inOneBreath([part('one'), part('two'), part('three', true)]);
    expect(text).toBe('one two three');
    expect(speech).toMatch(/^one .*three/);
    expect(speech).not.toContain('two');
  });

  it('is not silence where the only thing to say is long', () => {
    expect(inOneBreath([{ text: 'a', speech: 'word '.repeat(90).trim() }]).speech).not.toBe('');
  });
});

const scene = (names: string[]): Scene => {
  const helpers = names.map((who) => ({ who, does: [] }));
  const dinner = { ...dinnerOf('written', factsOf()), helpers };
  const pull = { id: 'pull', title: 'pull the roast', state: 'planned', startAt: at('17:54') };
  return {
    dinner,
    now: at('17:00'),
    stage: 'low-roast',
    dishes: new Map(),
    firstPlan: false,
    plan: { steps: [pull] } as unknown as Scene['plan'],
  };
};

test.each(emergencyKinds)('what is said to a %s is over within a breath', (kind) => {
  for (const helpers of [[], ['christopher']])
    expect(secondsAloud(emergencyReply(kind, scene(helpers)).speech)).toBeLessThanOrEqual(
      breathSeconds,
    );
});

test.each(safetyRuleIds)('the rule %s is over within a breath, as a caution sooner', (id) => {
  const { speech } = safetyRules[id].sentence(scene([]));
  const caution = safetyRules[id].caution(scene([])).speech;
  expect(secondsAloud(speech)).toBeLessThanOrEqual(breathSeconds);
  expect(secondsAloud(caution)).toBeLessThanOrEqual(secondsAloud(speech));
  expect(safetyRules[id].caution(scene([])).text).toBe(safetyRules[id].sentence(scene([])).text);
  expect(safetySentence(id, scene([])).speech).not.toMatch(/°/);
});
