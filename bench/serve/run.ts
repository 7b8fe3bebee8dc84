/**
 * The front door under load from a second process on loopback: so many dinners open at once, each
 * with a live stream and a turn every half minute. Prints latencies beside a calibration loop, the
 * server's memory and the worst lateness of an announcement; plots latency against open dinners.
 *
 * npm run build && npm run bench:serve [-- --dinners 50,150,300 --seconds 60]
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { plot } from '../heat/plot.ts';
import { calibration, pause, quantile } from '../measure.ts';
import { residentMegabytes, started, stopped } from '../process.ts';

const { values } = parseArgs({
  options: {
    dinners: { type: 'string', default: '50,150,300' },
    seconds: { type: 'string', default: '60' },
  },
});
const sizes = values.dinners.split(',').map(Number);
const seconds = Number(values.seconds);
/** Each dinner says something so often. */
const turnEverySeconds = 30;

const root = join(import.meta.dirname, '../..');

/** What a cook says over an afternoon, in an order that makes sense. */
const talk = [
  'what is next',
  'the bones are frenched',
  'how long till dinner',
  'the butter is made',
  'it went in five minutes ago',
  'it reads 58',
  'what do I pull it at',
  'it reads 66',
  'two more are coming',
  'guests are late 20 minutes',
  'set a timer for one minute',
];

interface Figures {
  dinners: number;
  turns: number;
  p50: number;
  p99: number;
  worst: number;
  failed: number;
  residentMegabytes: number;
  announcements: number;
  latestSeconds: number;
  calibrationP50: number;
}

const post = (url: string, body: object): Promise<Response> =>
  fetch(url, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

/** Follows a dinner's stream and notes how late each announcement came. */
async function follow(
  base: string,
  id: string,
  late: number[],
  signal: AbortSignal,
): Promise<void> {
  const response = await fetch(`${base}/api/dinners/${id}/stream`, { signal });
  let text = '';
  const decoder = new TextDecoder();
  for await (const part of response.body ?? []) {
    text += decoder.decode(part, { stream: true });
    let end = text.indexOf('\n\n');
    while (end !== -1) {
      const event = text.slice(0, end);
      text = text.slice(end + 2);
      end = text.indexOf('\n\n');
      const at = /^event: announcement\ndata: .*"at":"([^"]+)"/m.exec(event)?.[1];
      if (at) late.push((Date.now() - Date.parse(at)) / 1000);
    }
  }
}

async function measured(dinners: number): Promise<Figures> {
  const data = mkdtempSync(join(tmpdir(), 'bench-serve-'));
  const server = await started(['--data', data]);
  const { base } = server;
  const stop = new AbortController();
  const late: number[] = [];
  const ids: string[] = [];
  for (let n = 0; n < dinners; n += 1) {
    const opened = (await (await post(`${base}/api/dinners`, {})).json()) as { id: string };
    ids.push(opened.id);
    void follow(base, opened.id, late, stop.signal).catch(() => undefined);
    const table = new Date(Date.now() + (150 + (n % 90)) * 60_000);
    const clock = `${table.getHours()}:${String(table.getMinutes()).padStart(2, '0')}`;
    const text = `a ${5 + (n % 4)} pound rib roast, dinner at ${clock} for ${4 + (n % 5)}, medium rare`;
    await post(`${base}/api/dinners/${opened.id}/say`, { text });
  }
  late.length = 0;
  const times: number[] = [];
  const loops: number[] = [];
  let failed = 0;
  const until = Date.now() + seconds * 1000;
  const cook = async (id: string, n: number): Promise<void> => {
    await pause((n / dinners) * turnEverySeconds * 1000);
    for (let turn = n; Date.now() < until; turn += 1) {
      const from = performance.now();
      const text = talk[turn % talk.length];
      const answer = await post(`${base}/api/dinners/${id}/say`, { text }).catch(() => undefined);
      await answer?.text();
      if (answer?.status !== 200) failed += 1;
      times.push(performance.now() - from);
      await pause(Math.max(0, turnEverySeconds * 1000 - (performance.now() - from)));
    }
  };
  const beat = setInterval(() => loops.push(calibration()), 1_000);
  await Promise.race([Promise.all(ids.map(cook)), pause(seconds * 1000 + 2_000)]);
  clearInterval(beat);
  const resident = residentMegabytes(server);
  stop.abort();
  await stopped(server);
  rmSync(data, { recursive: true, force: true });
  times.sort((a, b) => a - b);
  loops.sort((a, b) => a - b);
  return {
    dinners,
    turns: times.length,
    p50: quantile(times, 0.5),
    p99: quantile(times, 0.99),
    worst: times.at(-1) ?? Number.NaN,
    failed,
    residentMegabytes: resident,
    announcements: late.length,
    latestSeconds: Math.max(0, ...late),
    calibrationP50: quantile(loops, 0.5),
  };
}

const rows: Figures[] = [];
for (const dinners of sizes) {
  const row = await measured(dinners);
  rows.push(row);
  process.stdout.write(
    `${row.dinners} dinners: ${row.turns} turns, p50 ${row.p50.toFixed(0)} ms, p99 ${row.p99.toFixed(0)} ms, worst ${row.worst.toFixed(0)} ms, ${row.failed} failed; ` +
      `${row.residentMegabytes.toFixed(0)} MB resident; ${row.announcements} announcements, the latest ${row.latestSeconds.toFixed(1)} s late; ` +
      `calibration loop p50 ${row.calibrationP50.toFixed(1)} ms\n`,
  );
}
const line = (name: string, colour: string, pick: (row: Figures) => number) => ({
  name,
  colour,
  points: rows.map((row) => ({ x: row.dinners, y: pick(row) })),
});
writeFileSync(
  join(root, 'docs/serve-latency.svg'),
  plot({
    title: 'Milliseconds from words to reply',
    across: `dinners open at once, each with a stream and a turn every ${turnEverySeconds} s`,
    top: Math.max(250, ...rows.map((row) => row.p99)) * 1.1,
    lines: [
      line('99 in 100 turns', '#7a1f1f', (row) => row.p99),
      line('half of the turns', '#1f4f7a', (row) => row.p50),
    ],
  }),
);
