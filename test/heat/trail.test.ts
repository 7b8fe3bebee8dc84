/**
 * Courses that share a member's way, against each followed alone from the start: two ways to the same numbers,
 * so that no source is needed.
 */
import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { ForecastQuestion, OvenSetting, RestCover } from '../../src/kitchen/forecast.ts';
import { believe, project } from '../../src/planner/heat/forecast.ts';
import { gridSizeOf } from '../../src/planner/heat/grid.ts';
import { drawNormals, memberOf } from '../../src/planner/heat/prior.ts';
import {
  follow,
  recordMinutes,
  type TrackOptions,
  type Trail,
} from '../../src/planner/heat/track.ts';
import { Weighted } from '../../src/planner/heat/weighted.ts';

const question: ForecastQuestion = {
  roast: {
    shape: {
      form: 'rib',
      kilogramsPerBone: 1.05,
      composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
    },
    kilograms: 3.2,
    bones: 3,
    startCelsius: 4.4,
  },
  oven: [{ minute: 0, celsius: 163 }],
  readings: [
    { minute: 62, celsius: 20 },
    { minute: 75, celsius: 27 },
  ],
  nowMinute: 75,
  pullCelsius: 46,
  rest: 'tented',
  seed: 5,
  members: 24,
};

const turns = fc
  .array(
    fc.record({
      minute: fc.integer({ min: 1, max: 150 }),
      celsius: fc.constantFrom(0, 77, 121, 163, 230),
      event: fc.constantFrom<OvenSetting['event']>(undefined, undefined, 'door-open', 'out'),
    }),
    { maxLength: 3 },
  )
  .map((all): OvenSetting[] => [
    { minute: 0, celsius: 163 },
    ...all.toSorted((a, b) => a.minute - b.minute),
  ]);
const course = fc.record({
  oven: turns,
  pullCelsius: fc.integer({ min: 0, max: 70 }),
  rest: fc.constantFrom<RestCover>('tented', 'open', 'low-oven'),
  outMinute: fc.oneof(fc.constant(undefined), fc.integer({ min: 0, max: 160 })),
  enoughMinute: fc.integer({ min: 0, max: 200 }),
});

describe('courses on one trail', () => {
  property.prop([fc.array(course, { minLength: 2, maxLength: 5 }), fc.boolean(), fc.nat(9)], {
    numRuns: 60,
  })('come to what each comes to alone', (courses, frozen, row) => {
    const member = memberOf(question, drawNormals(10, 3), row);
    const size = gridSizeOf(member.cylinder);
    const trail: Trail = [];
    for (const one of courses) {
      const options: TrackOptions = { ...one, size, frozen, enoughMinute: undefined };
      const alone = follow(member, options);
      const shared = follow(member, { ...options, enoughMinute: one.enoughMinute }, trail);
      const { core, curvature, ...rest } = shared;
      expect(rest).toEqual({ ...alone, core: undefined, curvature: undefined });
      // What is left out of the way lies past the pull and past the minute asked for.
      expect(core).toEqual(alone.core.subarray(0, core.length));
      expect(curvature).toEqual(alone.curvature.subarray(0, core.length));
      if (core.length < alone.core.length)
        expect((core.length - 1) * recordMinutes).toBeGreaterThanOrEqual(
          Math.max(shared.pullMinute, one.enoughMinute),
        );
    }
  });

  property.prop([fc.array(course, { minLength: 2, maxLength: 3 })], { numRuns: 8 })(
    'forecast the same, and the core alone is the whole without its slices',
    (courses) => {
      const belief = believe(question);
      const trails = new Map();
      for (const { oven, pullCelsius, rest, outMinute } of courses) {
        const asked = { oven, pullCelsius, rest, outMinute };
        const whole = project(belief, asked, { count: 12 });
        expect(project(belief, asked, { count: 12, trails })).toEqual(whole);
        const only = project(belief, { ...asked, only: 'core' }, { count: 12, trails });
        expect(only).toEqual({ ...whole, slices: [], ifOut: [] });
      }
    },
  );

  it('end where an oven that went out leaves nothing to wait for, though another was lit again', () => {
    const member = memberOf(question, drawNormals(10, 3), 0);
    const out = [
      { minute: 0, celsius: 163 },
      { minute: 40, celsius: 0 },
    ];
    const options = {
      size: gridSizeOf(member.cylinder),
      pullCelsius: 70,
      rest: 'tented' as const,
      outMinute: undefined,
      frozen: false,
    };
    const trail: Trail = [];
    follow(member, { ...options, oven: [...out, { minute: 600, celsius: 163 }] }, trail);
    expect(follow(member, { ...options, oven: out }, trail)).toEqual(
      follow(member, { ...options, oven: out }),
    );
  });

  it('are gone over once: a trail holds the way that they share', () => {
    const member = memberOf(question, drawNormals(10, 3), 0);
    const options = {
      size: gridSizeOf(member.cylinder),
      pullCelsius: 46,
      rest: 'tented' as const,
      outMinute: undefined,
      frozen: false,
    };
    const trail: Trail = [];
    follow(member, { ...options, oven: [{ minute: 0, celsius: 163 }] }, trail);
    const known = trail.length;
    expect(known).toBeGreaterThan(5);
    follow(member, { ...options, pullCelsius: 40, oven: [{ minute: 0, celsius: 163 }] }, trail);
    expect(trail).toHaveLength(known);
  });
});

property.prop([fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 30 })])(
  'equal weights, sorted as numbers alone, give the quantiles of the general way',
  (values) => {
    const even = new Weighted(
      values,
      values.map(() => 0.1),
    );
    // A sample of no weight changes nothing but the way that is gone.
    const general = new Weighted([...values, 0], [...values.map(() => 0.1), 0]);
    for (const p of [0, 0.1, 0.33, 0.5, 0.9, 1]) expect(even.quantile(p)).toBe(general.quantile(p));
  },
);

property.prop([
  fc.array(
    fc.tuple(
      fc.double({ noNaN: true }),
      fc.double({ noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    ),
    { minLength: 2, maxLength: 30 },
  ),
])('sorted from where another one of theirs lay, samples give the same quantiles', (samples) => {
  const weights = samples.map(([, , weight]) => weight + 0.01);
  const before = new Weighted(
    samples.map(([first]) => first),
    weights,
  );
  const values = samples.map(([, second]) => second);
  const alone = new Weighted(values, weights);
  const after = new Weighted(values, weights, before);
  for (const p of [0, 0.1, 0.33, 0.5, 0.9, 1]) expect(after.quantile(p)).toBe(alone.quantile(p));
});
