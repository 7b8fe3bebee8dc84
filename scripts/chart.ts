/** Writes the statechart's diagram into DEVELOPERS.md, between its two marks. */
import { readFileSync, writeFileSync } from 'node:fs';
import { chartDiagram } from '../src/machine/diagram.ts';

const page = 'DEVELOPERS.md';
const marks = /(<!-- chart -->\n)[\s\S]*?(<!-- \/chart -->)/;
const before = readFileSync(page, 'utf8');
writeFileSync(page, before.replace(marks, `$1\`\`\`mermaid\n${chartDiagram()}\`\`\`\n$2`));
