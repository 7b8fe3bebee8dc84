/**
 * The ways through the charts: every transition that one may take, by its region, and no others. Read
 * from the charts themselves, for the diagram and for whoever asks what a dinner has been through.
 */
import { dinnerChart, regionEvents } from './chart.ts';
import { dishChart } from './dish-chart.ts';

/** One transition of one region of the dinner's chart, or of the chart of a dish (`dish`). */
export interface Passage {
  region: string;
  from: string;
  event: string;
  to: string;
}

export interface RegionOfChart {
  region: string;
  initial: string;
  states: readonly string[];
  passages: readonly Passage[];
}

interface Node {
  initial?: string;
  states?: Record<string, Node>;
  on?: Record<string, unknown>;
}

function targetsOf(transition: unknown): string[] {
  if (typeof transition === 'string') return [transition];
  if (Array.isArray(transition)) return transition.flatMap(targetsOf);
  if (typeof transition === 'object' && transition !== null && 'target' in transition)
    return targetsOf(transition.target);
  return [];
}

function regionOf(region: string, node: Node): RegionOfChart {
  const states = Object.entries(node.states ?? {});
  const passages = states.flatMap(([from, { on }]) =>
    Object.entries(on ?? {}).flatMap(([event, transition]) =>
      targetsOf(transition).map((to): Passage => ({ region, from, event, to })),
    ),
  );
  return {
    region,
    initial: node.initial ?? '',
    states: states.map(([state]) => state),
    passages,
  };
}

const regions = dinnerChart.config.states as unknown as Record<string, Node>;

/** The regions of the dinner's chart, in their order. */
export const dinnerRegions: readonly RegionOfChart[] = Object.keys(regionEvents).map((region) =>
  regionOf(region, regions[region] ?? {}),
);

/** The chart that every dish runs. */
export const dishRegion: RegionOfChart = regionOf('dish', dishChart.config as unknown as Node);
