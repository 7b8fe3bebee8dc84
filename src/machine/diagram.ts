/** The statechart as a Mermaid diagram, for the developers' page. */
import { dinnerRegions } from './passages.ts';

const identifier = (region: string, state: string): string =>
  `${region}_${state.replace(/-/g, '_')}`;

/** One state diagram, regions side by side, every transition with its event. */
export function chartDiagram(): string {
  const lines = ['stateDiagram-v2', '  state dinner {'];
  dinnerRegions.forEach(({ region, initial, states, passages }, index) => {
    if (index > 0) lines.push('    --');
    for (const state of states) lines.push(`    state "${state}" as ${identifier(region, state)}`);
    lines.push(`    [*] --> ${identifier(region, initial)}`);
    for (const { from, event, to } of passages)
      lines.push(`    ${identifier(region, from)} --> ${identifier(region, to)} : ${event}`);
  });
  lines.push('  }');
  return `${lines.join('\n')}\n`;
}
