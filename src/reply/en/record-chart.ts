/** The record's drawing: the core as believed, the readings, the pull, the oven. Plain SVG. */
import { localTime } from '../../base/time.ts';
import { temperatureIn } from '../../base/units.ts';
import type { DinnerRecord } from '../../kitchen/record.ts';

const width = 720;
const height = 400;
const margin = { left: 56, right: 16, top: 28, bottom: 40 };

interface Scale {
  x(at: number): number;
  y(celsius: number): number;
}

/** Undefined while the roast never went in: there is nothing to draw. */
export function recordChart(record: DinnerRecord): string | undefined {
  const from = record.core[0]?.at;
  if (from === undefined) return undefined;
  const to = lastAt(record, from);
  const core = record.core.filter((one) => one.at <= to);
  const high = Math.max(
    ...core.map((one) => one.celsius.p90),
    ...record.readings.map((one) => one.celsius),
    (record.serveCelsius ?? 55) + 5,
  );
  const low = Math.min(0, ...core.map((one) => one.celsius.p10));
  const scale: Scale = {
    x: (at) => margin.left + ((at - from) / (to - from)) * (width - margin.left - margin.right),
    y: (celsius) =>
      height -
      margin.bottom -
      ((celsius - low) / (high - low)) * (height - margin.top - margin.bottom),
  };
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title desc" font-family="sans-serif" font-size="12">`,
    `<title id="title">Core temperature of the ${escaped(record.roast.title)}</title>`,
    `<desc id="desc">${escaped(described(record))}</desc>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    grid({ record, scale, from, to, low, high }),
    band(core, scale),
    mark(record, scale, from, to),
    readings(record, scale),
    legend(),
    '</svg>\n',
  ].join('\n');
}

/** Until it was served, or an hour past the pull. */
const lastAt = (record: DinnerRecord, from: number): number => {
  const pull = record.moments.find((one) => one.step === 'pull');
  const end = record.serving.servedAt ?? (pull?.happenedAt ?? pull?.plannedAt ?? from) + 3_600_000;
  const last = record.core.at(-1)?.at ?? end;
  return Math.max(from + 3_600_000, Math.min(end, last));
};

function described(record: DinnerRecord): string {
  const count = record.readings.length;
  const within = record.readings.filter(
    ({ celsius, forecast }) => forecast && celsius >= forecast.p10 && celsius <= forecast.p90,
  ).length;
  return `${count} ${count === 1 ? 'reading' : 'readings'}, ${within} of them within the band forecast before them.`;
}

interface Grid {
  record: DinnerRecord;
  scale: Scale;
  from: number;
  to: number;
  low: number;
  high: number;
}

function grid({ record, scale, from, to, low, high }: Grid): string {
  const unit = record.units.temperature;
  const step = unit === 'F' ? 20 : 10;
  const lines: string[] = [];
  const first = Math.ceil(temperatureIn(low, unit) / step) * step;
  for (let value = first; value <= temperatureIn(high, unit); value += step) {
    const celsius = unit === 'F' ? ((value - 32) * 5) / 9 : value;
    const y = at(scale.y(celsius));
    lines.push(
      `<line x1="${margin.left}" x2="${width - margin.right}" y1="${y}" y2="${y}" stroke="#ddd"/>`,
      `<text x="${margin.left - 8}" y="${y}" dy="4" text-anchor="end" fill="#444">${value} °${unit}</text>`,
    );
  }
  const half = 30 * 60_000;
  for (let time = Math.ceil(from / half) * half; time <= to; time += half) {
    const x = at(scale.x(time));
    lines.push(
      `<line x1="${x}" x2="${x}" y1="${margin.top}" y2="${height - margin.bottom}" stroke="#eee"/>`,
      `<text x="${x}" y="${height - margin.bottom + 18}" text-anchor="middle" fill="#444">${localTime(time, record.timeZone).time}</text>`,
    );
  }
  return lines.join('\n');
}

function band(core: DinnerRecord['core'], scale: Scale): string {
  const point = (one: DinnerRecord['core'][number], pick: 'p10' | 'p50' | 'p90'): string =>
    `${at(scale.x(one.at))},${at(scale.y(one.celsius[pick]))}`;
  const upper = core.map((one) => point(one, 'p90'));
  const lower = [...core].reverse().map((one) => point(one, 'p10'));
  const middle = core.map((one) => point(one, 'p50'));
  return [
    `<polygon points="${[...upper, ...lower].join(' ')}" fill="#c8d6e5"/>`,
    `<polyline points="${middle.join(' ')}" fill="none" stroke="#1f4e79" stroke-width="2"/>`,
  ].join('\n');
}

/** The moments of the oven's door, and the core that was wanted at the knife. */
function mark(record: DinnerRecord, scale: Scale, from: number, to: number): string {
  const lines: string[] = [];
  if (record.serveCelsius !== undefined) {
    const y = at(scale.y(record.serveCelsius));
    lines.push(
      `<line x1="${margin.left}" x2="${width - margin.right}" y1="${y}" y2="${y}" stroke="#7a1f1f" stroke-dasharray="6 4"/>`,
    );
  }
  const named: readonly (readonly [step: string, word: string])[] = [
    ['oven-down', 'down'],
    ['pull', 'out'],
    ['carve', 'carved'],
  ];
  for (const [step, word] of named) {
    const when = record.moments.find((one) => one.step === step)?.happenedAt;
    if (when === undefined || when < from || when > to) continue;
    const x = at(scale.x(when));
    lines.push(
      `<line x1="${x}" x2="${x}" y1="${margin.top}" y2="${height - margin.bottom}" stroke="#555" stroke-dasharray="2 3"/>`,
      `<text x="${x}" y="${margin.top - 6}" text-anchor="middle" fill="#333">${word}</text>`,
    );
  }
  return lines.join('\n');
}

/** Each reading as a ring, and a thin line to what was forecast for it. */
const readings = (record: DinnerRecord, scale: Scale): string =>
  record.readings
    .map(({ at: when, celsius, forecast }) => {
      const x = at(scale.x(when));
      const line = forecast
        ? `<line x1="${x}" x2="${x}" y1="${at(scale.y(celsius))}" y2="${at(scale.y(forecast.p50))}" stroke="#b35900"/>`
        : '';
      return `${line}<circle cx="${x}" cy="${at(scale.y(celsius))}" r="4" fill="#fff" stroke="#b35900" stroke-width="2"/>`;
    })
    .join('\n');

const legend = (): string =>
  `<text x="${margin.left}" y="${height - 6}" fill="#333">line: the core as believed, with its band; rings: readings; dashes: wanted at the knife</text>`;

const at = (value: number): string => String(Math.round(value * 10) / 10);

const escaped = (words: string): string =>
  words.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
