import { describe, expect, it } from 'vitest';
import { planPicture } from '../../src/main/plan-picture.ts';
import { viewOf } from '../../src/session/view.ts';
import { at, factsOf, lookAt } from '../harness/day.ts';

describe('the picture of a day', () => {
  it('has a lane for each pair of hands, each oven, the roast and each dish, and nothing off the page', async () => {
    const facts = factsOf({
      helpers: ['Robin'],
      ovens: 2,
      dishes: ['roast-potatoes', 'batter-puddings'],
    });
    const outlook = await lookAt(facts, at('12:00'));
    const svg = planPicture(viewOf(outlook, facts), outlook);
    for (const lane of [
      'your hands',
      'Robin’s hands',
      'oven',
      'roast',
      'roast potatoes',
      'batter puddings',
    ])
      expect(svg).toContain(`>${lane}</text>`);
    const [, width] = /viewBox="0 0 (\d+) /.exec(svg) ?? [];
    for (const [, x, w] of svg.matchAll(/<rect x="([\d.]+)" y="\d+" width="([\d.]+)"/g))
      expect(Number(x) + Number(w)).toBeLessThanOrEqual(Number(width));
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('brackets the pull from its tenth to its ninetieth percentile', async () => {
    const facts = factsOf();
    const outlook = await lookAt(facts, at('12:00'));
    const svg = planPicture(viewOf(outlook, facts), outlook);
    const pull = outlook.plan?.pullAt;
    const [, left, right] = /<path d="M([\d.]+) [\d.]+V[\d.]+H([\d.]+)V/.exec(svg) ?? [];
    const bar = /fill="url\(#roast\)"/.exec(svg);
    expect(bar).not.toBeNull();
    if (!pull) throw new Error('no plan');
    const minutes = (pull.p90 - pull.p10) / 60_000;
    // The scale from two half-hour lines of the grid.
    const lines = [...svg.matchAll(/<line x1="([\d.]+)" y1="46"/g)].map(([, x]) => Number(x));
    const perMinute = ((lines[1] ?? 0) - (lines[0] ?? 0)) / 30;
    expect(Number(right) - Number(left)).toBeCloseTo(minutes * perMinute, 0);
  });
});
