/** Ways to the table ranked by what they come to. The figures are made up; the order is by hand. */
import { expect, it } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { OptionFigures } from '../../src/planner/options/figures.ts';
import { rankOptions } from '../../src/planner/options/rank.ts';

const dinner = dinnerOf('ranked', []);
const right = 54.4;

const way = (
  kind: OptionFigures['kind'],
  { onTimeChance, pullAt = 0 }: { onTimeChance: number; pullAt?: number },
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
    coreAtServingCelsius: { p10: right - 1, p50: right, p90: right + 1 },
    minutesFromWanted: 0,
    onTimeChance,
    broken: [],
    without: [],
  },
});

const kinds = (ways: { figures: OptionFigures }[]): string[] =>
  rankOptions(ways, { dinner, sooner: false, behind: true }).map(({ figures }) => figures.kind);

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
