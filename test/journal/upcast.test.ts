import { describe, expect, it } from 'vitest';
import { factOf } from '../../src/journal/record.ts';
import { type OldBody, upcast, upcasters } from '../../src/journal/upcast.ts';
import { type FactType, factVersion } from '../../src/kitchen/facts.ts';

/** One body of every old shape, by "type version"; a lift without a sample fails the last test. */
const samples: Record<string, OldBody> = {};

describe('lifting old facts', () => {
  it('lifts version by version and skips versions in which the shape stayed', () => {
    const invented = {
      'guests-counted': {
        1: ({ number }: OldBody) => ({ heads: number }),
        3: ({ heads }: OldBody) => ({ count: heads }),
      },
    };
    const lift = (version: number, body: OldBody): OldBody =>
      upcast({ type: 'guests-counted', version, body, newest: 4, upcasters: invented });
    expect(lift(1, { number: 6 })).toEqual({ count: 6 });
    expect(lift(2, { heads: 6 })).toEqual({ count: 6 });
    expect(lift(4, { count: 6 })).toEqual({ count: 6 });
  });

  it('gives a fact of an old version in the shape and version of today', () => {
    const row = {
      dinner: 'a',
      position: 0,
      at: 1,
      type: 'guests-counted',
      v: 1,
      body: '{"heads":6}',
    };
    const shapes = {
      newest: 2,
      upcasters: { 'guests-counted': { 1: ({ heads }: OldBody) => ({ count: heads }) } },
    };
    expect(factOf(row, shapes)).toMatchObject({ count: 6, v: 2 });
    expect(() => factOf(row, { newest: 2, upcasters: {} })).toThrow(/does not have the shape/);
  });

  it('has a sample of every old shape, and lifts it into a fact of today', () => {
    const known = Object.entries(upcasters).flatMap(([type, lifts]) =>
      Object.keys(lifts ?? {}).map((version) => ({ type: type as FactType, version })),
    );
    expect(Object.keys(samples).sort()).toEqual(
      known.map(({ type, version }) => `${type} ${version}`).sort(),
    );
    for (const { type, version } of known) {
      const body = JSON.stringify(samples[`${type} ${version}`]);
      const row = { dinner: 'a', position: 0, at: 1, type, v: Number(version), body };
      expect(factOf(row)).toMatchObject({ type, v: factVersion });
    }
    // Every version before today's has at least one changed shape, or it would not be one.
    expect(new Set(known.map((one) => one.version)).size).toBe(factVersion - 1);
  });
});
