/** Prints every rule of safety: who asks it, where it stands, its figures in both units, when it is said. */
import {
  authorities,
  type Figure,
  type SafetyRuleData,
  safetyData,
  safetyRuleIds,
  siOf,
} from '../src/kitchen/safety.ts';

const figureText = (figure: Figure): string => {
  const si = siOf(figure);
  const bound = figure.bound === 'at-least' ? '≥' : '≤';
  const unit = figure.unit === 'fahrenheit' ? '°F' : figure.unit;
  const household = `${figure.of} ${bound} ${figure.value} ${unit}`;
  return figure.unit === 'log'
    ? household
    : `${household} (${Number(si.value.toFixed(2))} ${si.unit})`;
};

const rows = safetyRuleIds.map((id) => {
  const rule: SafetyRuleData = safetyData[id];
  return [
    id,
    `${rule.authority} (${authorities[rule.authority].speaksTo})`,
    `${rule.text}; ${rule.edition}`,
    rule.known,
    rule.figures.map(figureText).join('<br>') || 'no figure',
    rule.said,
  ];
});
const heads = ['rule', 'authority', 'text and edition', 'known', 'threshold', 'said at'];
const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |\n`;
process.stdout.write(line(heads) + line(heads.map(() => '---')) + rows.map(line).join(''));
