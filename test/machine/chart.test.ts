import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import {
  type ChartEvent,
  dinnerChart,
  type Region,
  regionEvents,
} from '../../src/machine/chart.ts';
import { chartDiagram } from '../../src/machine/diagram.ts';
import { dishChart, dishEvents } from '../../src/machine/dish-chart.ts';

const regions = Object.keys(regionEvents) as Region[];

const eventsOf = (region: Region): ChartEvent[] =>
  regionEvents[region].flatMap((type): ChartEvent[] =>
    type === 'ROAST_IN'
      ? [
          { type, searing: true },
          { type, searing: false },
        ]
      : [{ type } as ChartEvent],
  );

const statesOf = (region: Region) =>
  Object.entries(dinnerChart.states[region]?.states ?? {}) as unknown as [
    string,
    { meta?: { ignores: readonly string[] }; ownEvents: readonly string[] },
  ][];

describe('the dinner chart', () => {
  it.each(regions)('reaches every state of %s by its own events', (region) => {
    const paths = getShortestPaths(dinnerChart, {
      events: eventsOf(region),
      serializeState: (state) => JSON.stringify((state.value as Record<string, string>)[region]),
    });
    const reached = new Set(
      paths.map((path) => (path.state.value as Record<string, string>)[region]),
    );
    expect([...reached].sort()).toEqual(
      statesOf(region)
        .map(([state]) => state)
        .sort(),
    );
  });

  const pairs = regions.flatMap((a, index) => regions.slice(index + 1).map((b) => [a, b] as const));
  it.each(pairs)('reaches every combination of %s and %s', (a, b) => {
    const paths = getShortestPaths(dinnerChart, {
      events: [...eventsOf(a), ...eventsOf(b)],
      serializeState: (state) => {
        const value = state.value as Record<string, string>;
        return `${value[a]}+${value[b]}`;
      },
    });
    expect(paths.length).toBe(statesOf(a).length * statesOf(b).length);
  });

  it.each(regions)('handles or names as ignored every event in every state of %s', (region) => {
    for (const [state, node] of statesOf(region)) {
      const handled = new Set(node.ownEvents);
      const ignored = new Set(node.meta?.ignores ?? []);
      for (const event of regionEvents[region]) {
        expect([state, event, handled.has(event) !== ignored.has(event)]).toEqual([
          state,
          event,
          true,
        ]);
      }
      for (const event of handled) expect(regionEvents[region]).toContain(event);
    }
  });

  it('has no wildcard and no timer', () => {
    const text = JSON.stringify(dinnerChart.config);
    expect(text).not.toContain('"*"');
    expect(text).not.toContain('"after"');
    expect(text).not.toContain('"invoke"');
  });

  /** The transitions of a roast's day, so that deleting any one of them fails here. */
  const day: [string, ChartEvent['type'], string][] = [
    ['planning', 'PLAN_KNOWN', 'prep'],
    ['planning', 'ROAST_IN', 'sear'],
    ['prep', 'OVEN_LIT', 'preheat'],
    ['prep', 'ROAST_IN', 'sear'],
    ['preheat', 'OVEN_DARK', 'prep'],
    ['preheat', 'ROAST_IN', 'sear'],
    ['sear', 'SEARED', 'low-roast'],
    ['sear', 'ROAST_OUT', 'rest'],
    ['low-roast', 'SEAR_BEGUN', 'sear'],
    ['low-roast', 'ROAST_OUT', 'rest'],
    ['rest', 'ROAST_IN', 'low-roast'],
    ['rest', 'SEAR_BEGUN', 'sear'],
    ['rest', 'HOLD_BEGUN', 'hold'],
    ['rest', 'CARVING_BEGUN', 'carve'],
    ['hold', 'ROAST_IN', 'low-roast'],
    ['hold', 'SEAR_BEGUN', 'sear'],
    ['hold', 'CARVING_BEGUN', 'carve'],
    ['carve', 'ROAST_IN', 'low-roast'],
    ['carve', 'SERVED', 'served'],
    ['served', 'PUT_AWAY', 'put-away'],
  ];
  it.each(day)('from %s, %s leads to %s', (from, type, to) => {
    const path = getShortestPaths(dinnerChart, {
      events: eventsOf('roast'),
      serializeState: (state) => JSON.stringify((state.value as Record<string, string>).roast),
    }).find((one) => (one.state.value as Record<string, string>).roast === from);
    expect(path).toBeDefined();
    if (!path) return;
    const searing = to === 'sear';
    const event = (type === 'ROAST_IN' ? { type, searing } : { type }) as ChartEvent;
    const [next] = transition(dinnerChart, path.state, event);
    expect((next.value as Record<string, string>).roast).toBe(to);
  });

  it('lists every transition of the roast region above', () => {
    const written = statesOf('roast').flatMap(([state, node]) =>
      node.ownEvents.map((event) => `${state} ${event}`),
    );
    expect([...new Set(day.map(([from, type]) => `${from} ${type}`))].sort()).toEqual(
      written.sort(),
    );
  });
});

describe('the dish chart', () => {
  it('reaches every state and handles or ignores every event by name', () => {
    const paths = getShortestPaths(dishChart, { events: dishEvents.map((type) => ({ type })) });
    expect(paths.length).toBe(Object.keys(dishChart.states).length);
    for (const [state, node] of Object.entries(dishChart.states)) {
      const ignored = new Set((node.meta as { ignores: readonly string[] }).ignores);
      for (const event of dishEvents)
        expect([state, event, node.ownEvents.includes(event) !== ignored.has(event)]).toEqual([
          state,
          event,
          true,
        ]);
    }
  });

  it('takes a dish from the counter to the table', () => {
    let [snapshot] = initialTransition(dishChart);
    const states = (['BEGUN', 'IN', 'OUT', 'READY', 'NOT_READY'] as const).map((type) => {
      [snapshot] = transition(dishChart, snapshot, { type });
      return snapshot.value;
    });
    expect(states).toEqual(['preparing', 'in-oven', 'preparing', 'done', 'preparing']);
  });
});

describe('the diagram in DEVELOPERS.md', () => {
  it('is today’s chart', () => {
    expect(readFileSync('DEVELOPERS.md', 'utf8')).toContain(chartDiagram());
  });
});
