/** The oven's wall against Newton's law of cooling, and its dial. */
import { describe, expect, it } from 'vitest';
import { OvenWalk, roomCelsius } from '../../src/planner/heat/oven.ts';

const habit = {
  biasKelvin: 0,
  wanderSineKelvin: 0,
  wanderCosineKelvin: 0,
  heatingMinutes: 7,
  coolingMinutes: 62,
};
const [hot, roasting] = [232.2, 162.8];

function walked(settings: { minute: number; celsius: number }[], until: number): OvenWalk {
  const walk = new OvenWalk(settings, habit);
  for (let minute = 0; minute < until; minute += 0.5) walk.advance(minute, 0.5);
  return walk;
}

describe('an oven turned down', () => {
  const turned = [
    { minute: 0, celsius: hot },
    { minute: 0.25, celsius: roasting },
  ];

  it('cools toward the room, not toward its dial', () => {
    // Newton: the excess over the room falls by the same share in every minute. Half a minute at the first dial.
    const excess = (hot - roomCelsius) * Math.exp(-9.5 / habit.coolingMinutes);
    expect(walked(turned, 10).state.wallCelsius).toBeCloseTo(roomCelsius + excess, 1);
  });

  it('is at its new dial after some twenty-five minutes from 450 to 325 °F, and stays there', () => {
    // Common practice, no source.
    expect(walked(turned, 20).state.wallCelsius).toBeGreaterThan(roasting + 5);
    expect(walked(turned, 30).state.wallCelsius).toBeCloseTo(roasting, 6);
    expect(walked(turned, 90).state.wallCelsius).toBeCloseTo(roasting, 6);
  });
});

describe('an oven turned up', () => {
  it('comes up to its dial and never past it', () => {
    const settings = [
      { minute: 0, celsius: roasting },
      { minute: 0.25, celsius: hot },
    ];
    const early = walked(settings, 7).state.wallCelsius;
    expect(early).toBeGreaterThan((roasting + hot) / 2);
    expect(early).toBeLessThan(hot);
    expect(walked(settings, 60).state.wallCelsius).toBeLessThanOrEqual(hot);
  });
});
