/** So many calls due within one minute, shared by three processes, one of them killed half way if so wished. */
import { openPostgres } from '../../src/journal/postgres/open.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { calibration, pause, quantile } from '../measure.ts';
import { started, stopped } from '../process.ts';
import { opened } from './opened.ts';

const minute = 60_000;
const leadMilliseconds = 15_000;
/** A call later than this counts as held up by the kill. */
const heldUpMilliseconds = 2_000;

export async function callsInOneMinute(
  url: string,
  { calls, kill, folder }: { calls: number; kill: boolean; folder(): string },
): Promise<string> {
  const store = await openPostgres({ url });
  const journal = store.journal('home');
  const processes = [];
  for (let n = 0; n < 3; n += 1)
    processes.push(await started(['--journal', url, '--data', folder()]));
  const began = store.now() + leadMilliseconds + calls * 2;
  const dueAt = new Map<string, number>();
  const calledAt = new Map<string, number>();
  journal.follow((change) => {
    // Two facts open such a dinner; the third is the call.
    if (change && change.held > 2 && !calledAt.has(change.dinner))
      calledAt.set(change.dinner, store.now());
  });
  for (let n = 0; n < calls; n += 1) {
    const id = `timer-${n}`;
    const due = Math.round(began + (n / calls) * minute);
    dueAt.set(id, due);
    await journal.append(id, 0, store.now(), withTimer(due));
  }
  await pause(began + minute / 2 - store.now());
  const killedAt = store.now();
  if (kill && processes[0]) await stopped(processes[0], 'SIGKILL');
  const loop = calibration();
  const deadline = began + 2 * minute;
  while (calledAt.size < calls && store.now() < deadline) await pause(200);
  await pause(2_000);
  let [lost, doubled] = [0, 0];
  for (const id of dueAt.keys()) {
    const announced = (await journal.read(id)).filter((fact) => fact.type === 'announced').length;
    if (announced === 0) lost += 1;
    doubled += Math.max(0, announced - 1);
  }
  for (const one of processes) await stopped(one);
  await store.close();
  const late = [...calledAt].map(([id, at]) => ({ at, late: at - (dueAt.get(id) ?? 0) }));
  const heldUp = late.filter((one) => one.at >= killedAt && one.late > heldUpMilliseconds);
  const recovered = Math.max(killedAt, ...heldUp.map(({ at }) => at)) - killedAt;
  const worst = (some: typeof late): string =>
    (Math.max(0, ...some.map((one) => one.late)) / 1000).toFixed(2);
  const lates = late.map((one) => one.late);
  return (
    `${calls} calls due in one minute, three processes${kill ? ', one killed -9 half way' : ''}: ${lost} lost, ${doubled} doubled; ` +
    `p50 ${quantile(lates, 0.5).toFixed(0)} ms late, p99 ${quantile(lates, 0.99).toFixed(0)} ms, the latest ${worst(late)} s` +
    (kill
      ? ` (before the kill ${worst(late.filter((one) => one.at < killedAt))} s); ${heldUp.length} held up by the kill, all of them made ${(recovered / 1000).toFixed(1)} s after it`
      : '') +
    `; calibration loop ${loop.toFixed(1)} ms`
  );
}

const withTimer = (dueAt: number): NewFact[] => [opened, { type: 'timer-set', id: 'eggs', dueAt }];
