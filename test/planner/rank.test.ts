/** Ways to the table ranked by what they come to. The figures are made up; the order is by hand. */
import { expect, it } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { OptionFigures } from '../../src/planner/options/figures.ts';
import { kindsRuledOut, rankOptions } from '../../src/planner/options/rank.ts';

const dinner = dinnerOf('ranked', []);
const right = 54.4;

const way = (
  kind: OptionFigures['kind'],
  {
    onTimeChance,
    pullAt = 0,
    unsureKelvin = 1,
  }: { onTimeChance: number; pullAt?: number; unsureKelvin?: number },
): { figures: OptionFigures } => ({
  figures: {
    kind,
    course: {
      oven: kind === 'carry-on' ? [] : [{ at: 0, celsius: 204 }],
      rest: 'tented',
      servingAt: 0,
    },
    pullAt,
    servingAt: 0,
    restMinutes: 25,
    coreAtServingCelsius: { p10: right - unsureKelvin, p50: right, p90: right + unsureKelvin },
    minutesFromWanted: 0,
    onTimeChance,
    broken: [],
    without: [],
  },
});

const kinds = (ways: { figures: OptionFigures }[], behind = true): string[] =>
  rankOptions(ways, { dinner, sooner: false, behind }).map(({ figures }) => figures.kind);

it('a hotter oven that makes a doubtful table sure stands before carrying on', () => {
  const ways = [
    way('carry-on', { onTimeChance: 0.6 }),
    way('raise-oven', { onTimeChance: 0.95, pullAt: -600_000 }),
  ];
  expect(kinds(ways)).toEqual(['raise-oven', 'carry-on']);
});

it('one that makes it no surer is no way at all', () => {
  const ways = [
    way('carry-on', { onTimeChance: 0.6 }),
    way('raise-oven', { onTimeChance: 0.65, pullAt: -600_000 }),
  ];
  expect(kinds(ways)).toEqual(['carry-on']);
});

it('of two ways to the same table the surer core stands first, and trouble decides between equals', () => {
  const carryOn = way('carry-on', { onTimeChance: 1, unsureKelvin: 4 });
  const slower = (unsureKelvin: number) =>
    way('lower-oven', { onTimeChance: 1, pullAt: 600_000, unsureKelvin });
  expect(kinds([carryOn, slower(2)], false)).toEqual(['lower-oven', 'carry-on']);
  expect(kinds([carryOn, slower(4)], false)).toEqual(['carry-on', 'lower-oven']);
});

it('kinds that a day rules out may be left unsimulated: what is told is the same', () => {
  const plain = [way('carry-on', { onTimeChance: 0.6 })];
  const others = (['lower-oven', 'pull-and-hold', 'raise-oven', 'skip-rest'] as const).map((kind) =>
    way(kind, { onTimeChance: 0.95, pullAt: -600_000 }),
  );
  for (const behind of [true, false])
    for (const sooner of [true, false]) {
      const ranking = { dinner, sooner, behind };
      const isRuledOut = kindsRuledOut(plain, ranking);
      const left = others.filter(({ figures }) => !isRuledOut(figures.kind));
      expect(left.length).toBeLessThan(others.length);
      expect(rankOptions([...plain, ...left], ranking)).toEqual(
        rankOptions([...plain, ...others], ranking),
      );
    }
});
