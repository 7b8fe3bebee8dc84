/** Cooks who talk without a pause, so many at once, each next turn at the next dinner. */
import { type Process, residentMegabytes } from './process.ts';
import { calibration, quantile } from './say.ts';

/** As many talk at once as keep the machine busy; more would only wait. */
const cooks = 8;

const talk = [
  'what is next',
  'two more are coming',
  'how long till dinner',
  'one is not coming',
  'what do I pull it at',
];

export interface Talk {
  processes: readonly Process[];
  ids: readonly string[];
  seconds: number;
  /** `own`: a dinner's turns go to one process; `any`: to each in turn. */
  route: 'any' | 'own';
}

export async function talked({ processes, ids, seconds, route }: Talk) {
  const times: number[] = [];
  const loops: number[] = [];
  const answered = new Map<string, string[]>(ids.map((id) => [id, []]));
  let failed = 0;
  let turn = 0;
  const cook = async (goesOn: () => boolean, measured: boolean): Promise<void> => {
    while (goesOn()) {
      const n = turn;
      turn += 1;
      const id = ids[n % ids.length] ?? '';
      const round = Math.floor(n / ids.length);
      const at = processes[(route === 'own' ? n % ids.length : n + round) % processes.length];
      const key = `turn-${n}`;
      const from = performance.now();
      const answer = await fetch(`${at?.base}/api/dinners/${id}/say`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ text: talk[n % talk.length], key }),
      }).catch(() => undefined);
      await answer?.text();
      if (answer?.status === 200) answered.get(id)?.push(key);
      if (!measured) continue;
      if (answer?.status !== 200) failed += 1;
      times.push(performance.now() - from);
    }
  };
  const all = (goesOn: () => boolean, measured: boolean) =>
    Promise.all(Array.from({ length: cooks }, () => cook(goesOn, measured)));
  // Every dinner once, so that all are held open as on an evening under way.
  await all(() => turn < ids.length, false);
  const until = Date.now() + seconds * 1000;
  const beat = setInterval(() => loops.push(calibration()), 1_000);
  await all(() => Date.now() < until, true);
  clearInterval(beat);
  return {
    turns: times.length,
    failed,
    answered,
    p50: quantile(times, 0.5),
    p99: quantile(times, 0.99),
    megabytes: processes.map(residentMegabytes),
    calibration: quantile(loops, 0.5),
  };
}
