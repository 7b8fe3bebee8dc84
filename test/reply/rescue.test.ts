/** Rescues: what can still be done, with the minutes that are left, and nothing that takes heat out. */
import { beforeAll, describe, expect, it } from 'vitest';
import { addMinutes } from '../../src/base/time.ts';
import { troubleWords } from '../../src/kitchen/heard.ts';
import { rescueWords } from '../../src/reply/en/rescue.ts';
import type { Scene } from '../../src/reply/scene.ts';
import { sceneOf } from '../../src/session/view.ts';
import { at, factsOf, lookAt } from '../harness/day.ts';

let scene: Scene;

beforeAll(async () => {
  const outlook = await lookAt(factsOf({ dishes: ['pan-gravy', 'roast-potatoes'] }), at('12:00'));
  scene = sceneOf(outlook);
});

/** So many minutes before dinner, at that stage of the roast. */
const left = (minutes: number, stage: Scene['stage']): Scene => ({
  ...scene,
  stage,
  now: addMinutes(scene.plan?.serving.likelyAt ?? 0, -minutes),
});

const rescue = (trouble: string, of: Scene, step?: string, text = ''): string =>
  rescueWords({ key: 'trouble', trouble, step, text }, of).text;

describe('a rescue', () => {
  it('is there for every trouble but "other"', () => {
    for (const trouble of troubleWords)
      if (trouble !== 'other')
        expect(rescue(trouble, left(12, 'rest')), trouble).not.toMatch(/^Noted\./);
  });

  it('names the minutes left', () => {
    for (const trouble of ['undercooked', 'gone-cold', 'too-salty', 'side-late'])
      expect(rescue(trouble, left(12, 'rest')), trouble).toMatch(/12 minutes/);
    expect(rescue('undercooked', left(0, 'served'))).not.toMatch(/minutes until/);
  });

  it('of an overdone roast takes it out and never cools it', () => {
    const words = rescue('overcooked', left(30, 'low-roast'));
    expect(words).toMatch(/^Out with it now/);
    expect(words).toMatch(/Nothing takes heat out/);
    expect(words).not.toMatch(/cold water|\bice\b|fridge/i);
  });

  it('of an underdone one sends slices back, and the whole roast only with the time for it', () => {
    expect(rescue('undercooked', left(25, 'rest'))).toMatch(/whole roast back/);
    expect(rescue('undercooked', left(6, 'carve'))).toMatch(/half a minute a side/);
    expect(rescue('undercooked', left(6, 'carve'))).not.toMatch(/whole roast back/);
    expect(rescue('undercooked', left(40, 'low-roast'))).toMatch(/stays in/);
  });

  // After slicing, very rare to medium, redness still rises over twelve minutes (Prill 2019).
  it('of a grey slice waits and asks the thermometer', () => {
    expect(rescue('grey', left(5, 'carve'))).toMatch(/reddens over some minutes/);
    expect(rescue('grey', left(5, 'carve'))).toMatch(/thermometer/);
  });

  it('of salt depends on what is salty', () => {
    expect(rescue('too-salty', left(10, 'rest'), 'pan-gravy')).toMatch(/pan gravy with hot water/);
    expect(rescue('too-salty', left(10, 'rest'), 'roast')).toMatch(/crust/);
  });

  // Water on hot fat spits and spreads a fire (fire services' common advice).
  it('of smoke pours no water', () => {
    expect(rescue('smoking', left(60, 'sear'))).not.toMatch(/pour/i);
    expect(rescue('smoking', left(60, 'sear'))).toMatch(/No water on hot fat/);
  });

  it('of a dish is what its own card says, by the words that were said', () => {
    const told = (dish: string, text: string) => rescue('other', left(12, 'rest'), dish, text);
    expect(told('pan-gravy', 'the gravy is lumpy')).toMatch(/^If it lumps, whisk hard/);
    expect(told('pan-gravy', 'the gravy is too thin')).toMatch(/^If it is thin, boil it on/);
    expect(told('roast-potatoes', 'the potatoes are pale')).toMatch(
      /still pale .* under the grill/,
    );
    expect(rescue('overcooked', left(12, 'rest'), 'roast-potatoes', 'overcooked')).not.toMatch(
      /across the grain.*across the grain|Nothing takes heat out.*potatoes/,
    );
  });
});
