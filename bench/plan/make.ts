/**
 * Makes days.jsonl.gz: seeded days with their optimum proved. `npx tsx bench/plan/make.ts 500` goes on
 * where the file ends. A day that the solver cannot prove within its time is named and left out.
 */
import { solve } from '../../src/planner/solve/solve.ts';
import { keepProvedDays, provedDays } from './frozen.ts';
import { instanceOf, isLate } from './instances.ts';
import { prove } from './prove.ts';

const count = Number(process.argv[2] ?? 500);
const days = provedDays();
for (let seed = (days.at(-1)?.seed ?? 0) + 1; days.length < count; seed += 1) {
  const problem = instanceOf(seed);
  const ours = solve(problem, { work: 20_000 });
  const lastStart = Math.max(...ours.starts.values());
  const { optimum, seconds } = await prove(problem, { costAtMost: ours.cost, lastStart });
  console.log(seed, ours.cost, optimum ?? 'not proved', seconds.toFixed(1));
  if (optimum === undefined) continue;
  days.push({ seed, late: isLate(seed), problem, optimum });
  if (days.length % 20 === 0) keepProvedDays(days);
}
keepProvedDays(days);
