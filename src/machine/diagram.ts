/** The statechart as a Mermaid diagram, for the developers' page. */
import { dinnerChart, regionEvents } from './chart.ts';

interface Node {
  initial?: string;
  states?: Record<string, Node>;
  on?: Record<string, unknown>;
}

const identifier = (region: string, state: string): string =>
  `${region}_${state.replace(/-/g, '_')}`;

function targetsOf(transition: unknown): string[] {
  if (typeof transition === 'string') return [transition];
  if (Array.isArray(transition)) return transition.flatMap(targetsOf);
  if (typeof transition === 'object' && transition !== null && 'target' in transition)
    return targetsOf(transition.target);
  return [];
}

/** One state diagram, regions side by side, every transition with its event. */
export function chartDiagram(): string {
  const lines = ['stateDiagram-v2', '  state dinner {'];
  const regions = dinnerChart.config.states as unknown as Record<string, Node>;
  Object.keys(regionEvents).forEach((region, index) => {
    const node = regions[region];
    if (!node?.states) return;
    if (index > 0) lines.push('    --');
    for (const state of Object.keys(node.states))
      lines.push(`    state "${state}" as ${identifier(region, state)}`);
    lines.push(`    [*] --> ${identifier(region, node.initial ?? '')}`);
    for (const [state, { on }] of Object.entries(node.states)) {
      for (const [event, transition] of Object.entries(on ?? {})) {
        for (const target of targetsOf(transition))
          lines.push(
            `    ${identifier(region, state)} --> ${identifier(region, target)} : ${event}`,
          );
      }
    }
  });
  lines.push('  }');
  return `${lines.join('\n')}\n`;
}
