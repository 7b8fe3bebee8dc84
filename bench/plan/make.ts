/**
 * Makes days.jsonl: seeded days with their optimum proved. `npx tsx bench/plan/make.ts 500`; goes on
 * where the file ends. A day that the solver cannot prove within its time is named and left out.
 */
import { appendFileSync, existsSync, writeFileSync } from 'node:fs';
import { solve } from '../../src/planner/solve/solve.ts';
import { lineOf, provedDays } from './frozen.ts';
import { instanceOf, isLate } from './instances.ts';
import { prove } from './prove.ts';

const file = new URL('days.jsonl', import.meta.url);
const count = Number(process.argv[2] ?? 500);
if (!existsSync(file)) writeFileSync(file, '');
const known = provedDays();
let made = known.length;
for (let seed = (known.at(-1)?.seed ?? 0) + 1; made < count; seed += 1) {
  const problem = instanceOf(seed);
  const ours = solve(problem, { work: 20_000 });
  const lastStart = Math.max(...ours.starts.values());
  const { optimum, seconds } = await prove(problem, { costAtMost: ours.cost, lastStart });
  console.log(seed, ours.cost, optimum ?? 'not proved', seconds.toFixed(1));
  if (optimum === undefined) continue;
  made += 1;
  appendFileSync(file, `${lineOf({ seed, late: isLate(seed), problem, optimum })}\n`);
}
