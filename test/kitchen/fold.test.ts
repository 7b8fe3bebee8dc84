/** A fold that goes on from an earlier one must give what a fold from the first fact on gives. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import { standingOf } from '../../src/machine/stage.ts';
import { at, factsOf, withMore } from '../harness/day.ts';

const begun = factsOf();
const now = at('15:00');

const told: readonly NewFact[] = [
  { type: 'oven-stood', celsius: 230, happenedAt: now },
  { type: 'oven-preheated', happenedAt: now },
  { type: 'step-started', step: 'roast-in', happenedAt: now },
  { type: 'step-done', step: 'oven-down', happenedAt: now },
  { type: 'step-started', step: 'roast-potatoes.in', happenedAt: now },
  { type: 'step-not-done', step: 'roast-potatoes.in' },
  { type: 'step-done', step: 'pull', happenedAt: now },
  { type: 'step-not-done', step: 'pull' },
  { type: 'emergency-told', kind: 'burn' } as NewFact,
  { type: 'dish-dropped', dish: 'green-beans' },
  { type: 'dish-added', dish: 'green-beans' },
  { type: 'positions-voided', positions: [], because: 'undo' },
];

/** The same facts as other objects, of which no fold knows. */
const unknown = (facts: readonly Fact[]): Fact[] => structuredClone([...facts]);

const looked = (facts: readonly Fact[]): object => {
  const { chart, ...standing } = standingOf('written', facts);
  return { dinner: dinnerOf('written', facts), standing, chart: chart.value };
};

/** What is written, what is tried on and given up again, and what takes back the last few. */
const turn = fc.record({
  written: fc.subarray([...told.keys()], { minLength: 1, maxLength: 3 }),
  triedOn: fc.subarray([...told.keys()], { maxLength: 3 }),
  takesBack: fc.nat(4),
});

it('goes on from where the same facts were folded before, whatever was tried on between', () => {
  fc.assert(
    fc.property(fc.array(turn, { minLength: 1, maxLength: 8 }), (turns) => {
      let facts: readonly Fact[] = factsOf();
      const more = (rows: readonly number[], takesBack: number): Fact[] =>
        withMore(
          facts,
          rows.map((row) => {
            const fact = told[row] as NewFact;
            const { length } = facts;
            const positions = Array.from({ length: takesBack }, (_, back) => length - 1 - back);
            return {
              ...(fact.type === 'positions-voided'
                ? { ...fact, positions: positions.filter((one) => one >= begun.length) }
                : fact),
              at: now + facts.length * 60_000,
            };
          }),
        );
      for (const { written, triedOn, takesBack } of turns) {
        const trial = more(triedOn, takesBack);
        expect(looked(trial)).toEqual(looked(unknown(trial)));
        facts = more(written, takesBack);
        expect(looked(facts)).toEqual(looked(unknown(facts)));
      }
    }),
    { seed: 11, numRuns: 60 },
  );
});
