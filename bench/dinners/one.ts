/** Prints one evening, seed given: what was said and done, and how it ended. */
import { drawEvening, targetFahrenheit } from './evening.ts';
import { helped } from './helped.ts';
import { rivals } from './rivals.ts';

const evening = drawEvening(Number(process.argv[2] ?? 1));
const { truth, ...told } = evening;
process.stdout.write(`${JSON.stringify(told)}\n${JSON.stringify(truth.oven)}\n`);
const from = performance.now();
const result = await helped(evening);
for (const line of result.talk) process.stdout.write(`${line}\n`);
const { coreFahrenheit, tableMinute, agreedMinute } = result;
process.stdout.write(
  `helper: core ${coreFahrenheit.toFixed(1)} °F (wanted ${targetFahrenheit}), table ${(tableMinute - agreedMinute).toFixed(0)} min from agreed, ${Math.round(performance.now() - from)} ms\n`,
);
for (const [name, rival] of Object.entries(rivals)) {
  const plated = rival(evening);
  process.stdout.write(
    `${name}: core ${plated.coreFahrenheit.toFixed(1)} °F, table ${(plated.tableMinute - evening.shifts.reduce((sum, one) => sum + one.minutes, evening.wantedMinute)).toFixed(0)} min\n`,
  );
}
