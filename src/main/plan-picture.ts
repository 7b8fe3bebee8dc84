/**
 * A day's plan as a picture to pin to the fridge: time from left to right, a lane for each pair of
 * hands, each oven, the roast and each dish. Black on white, told apart by pattern, not by colour.
 */
import { addMinutes, type Instant, localTime, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { Plan, PlannedStep } from '../kitchen/plan.ts';
import type { View } from '../kitchen/view.ts';
import { clock as clockWords } from '../reply/en/words.ts';
import type { Outlook } from '../session/outlook.ts';

interface Bar {
  from: Instant;
  to: Instant;
  label: string;
  fill: 'busy' | 'oven' | 'wait' | 'roast' | 'none';
}

interface Lane {
  name: string;
  bars: Bar[];
  /** The pull may fall anywhere between these; drawn as a bracket under the bars. */
  bracket?: { from: Instant; likely: Instant; to: Instant; label: string };
}

const page = { width: 1500, left: 150, right: 20, top: 58, bottom: 26 };
const barHeight = 13;
const rowHeight = 12;
const letterWidth = 5.2;
const fills = {
  busy: '#333',
  oven: 'url(#oven)',
  wait: 'url(#wait)',
  roast: 'url(#roast)',
  none: 'none',
} as const;

export function planPicture(view: View, outlook: Outlook): string {
  const { plan, dinner } = outlook;
  if (!plan) return '';
  const shown = plan.steps.filter((step) => step.id !== 'put-away' && onTheDay(step, plan));
  const from = floorTo(Math.min(...shown.map((step) => step.startAt)), 30);
  const to = floorTo(addMinutes(plan.serving.likelyAt, 44), 30);
  const scale = (page.width - page.left - page.right) / minutesBetween(from, to);
  const x = (at: Instant): number =>
    page.left + minutesBetween(from, Math.min(Math.max(at, from), to)) * scale;
  const clock = (at: Instant): string => clockWords(at, dinner).text;
  const lanes = lanesOf(view, plan, shown, clock, to);
  const parts: string[] = [];
  let y = page.top;
  for (const lane of lanes) {
    const drawn = drawLane(lane, y, x);
    parts.push(drawn.svg);
    y += drawn.height;
    parts.push(
      `<line x1="8" y1="${y - 3}" x2="${page.width - 8}" y2="${y - 3}" stroke="#bbb" stroke-width="0.5"/>`,
    );
  }
  const height = y + page.bottom;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${page.width} ${height}" width="${page.width}" height="${height}" font-family="sans-serif" font-size="9.5" paint-order="stroke" stroke-linejoin="round" role="img" aria-label="${escaped(headline(view, plan, clock))}">`,
    patterns,
    `<rect width="${page.width}" height="${height}" fill="#fff"/>`,
    `<text x="8" y="20" font-size="15" font-weight="bold">${escaped(headline(view, plan, clock))}</text>`,
    `<text x="8" y="34">${escaped(legend)}</text>`,
    ...grid(from, to, x, { top: page.top - 12, bottom: y }, clock),
    marker(x(plan.serving.likelyAt), page.top - 12, y, 'table'),
    ...parts,
    '</svg>',
    '',
  ].join('\n');
}

const legend =
  'Black: hands busy. Slanted: in the oven. Dots: by itself. Bracket: the pull, nine times in ten not before its left end, nine in ten not after its right.';

/** What is done days before has its own list; the picture is of the day. */
const onTheDay = (step: PlannedStep, plan: Plan): boolean =>
  minutesBetween(step.startAt, plan.serving.likelyAt) < 14 * 60 && step.id !== 'check';

const floorTo = (at: Instant, minutes: number): Instant =>
  Math.floor(at / (minutes * 60_000)) * minutes * 60_000;

function headline(view: View, plan: Plan, clock: (at: Instant) => string): string {
  const date = localTime(plan.serving.wantedAt, view.timeZone).date;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  const table =
    late > 1
      ? `${clock(plan.serving.likelyAt)}, ${Math.round(late)} minutes late`
      : clock(plan.serving.wantedAt);
  return `${date} · table at ${table}${view.guests === undefined ? '' : ` for ${view.guests}`} · roast in ${clock(plan.roastInAt)}, out about ${clock(plan.pullAt.p50)} at ${degreesOf(view, view.target.pullFahrenheit ?? 0)}`;
}

const degreesOf = (view: View, fahrenheit: number): string =>
  view.units.temperature === 'F'
    ? `${Math.round(fahrenheit)} °F`
    : `${Math.round(celsiusOfFahrenheit(fahrenheit))} °C`;

function lanesOf(
  view: View,
  plan: Plan,
  steps: readonly PlannedStep[],
  clock: (at: Instant) => string,
  to: Instant,
): Lane[] {
  const busyTo = (step: PlannedStep): Instant =>
    step.handsOn === 'throughout' ? step.endAt : addMinutes(step.startAt, 2);
  const names = [...new Set(steps.flatMap((step) => step.hands))].sort(
    (a, b) => Number(b === 'you') - Number(a === 'you') || (a < b ? -1 : 1),
  );
  const hands = names.map(
    (name): Lane => ({
      name: name === 'you' ? 'your hands' : `${name}’s hands`,
      bars: steps
        .filter((step) => step.hands.includes(name))
        .map((step) => ({
          from: step.startAt,
          to: busyTo(step),
          label: `${clock(step.startAt)} ${step.title}`,
          fill: 'busy',
        })),
    }),
  );
  const roast = steps.filter((step) => ['roast-in', 'rest', 'sear', 'carve'].includes(step.id));
  const dishes = [...new Set(steps.map((step) => step.card))].filter(
    (card) => steps.some((step) => step.card === card) && card !== view.roast.cut,
  );
  return [
    ...hands,
    ...ovenLanes(view, plan, to),
    {
      name: 'roast',
      bars: roast.map((step) => ({
        from: step.startAt,
        to: step.id === 'carve' ? plan.serving.likelyAt : step.endAt,
        label: step.id === 'roast-in' ? 'in the oven' : step.id,
        fill: step.id === 'rest' ? 'wait' : step.id === 'carve' ? 'busy' : 'roast',
      })),
      bracket: {
        from: plan.pullAt.p10,
        likely: plan.pullAt.p50,
        to: plan.pullAt.p90,
        label: `pull ${clock(plan.pullAt.p10)} to ${clock(plan.pullAt.p90)}, likely ${clock(plan.pullAt.p50)}`,
      },
    },
    ...dishes.map(
      (card): Lane => ({
        name: view.sides.find((side) => side.id === card)?.title ?? card,
        bars: steps
          .filter((step) => step.card === card)
          .map((step) => ({
            from: step.startAt,
            to: step.endAt,
            label: step.oven || step.handsOn === 'none' ? step.title : '',
            fill: step.oven ? 'oven' : step.handsOn === 'throughout' ? 'busy' : 'wait',
          })),
      }),
    ),
  ];
}

/** What each dial stands at, from turn to turn. */
function ovenLanes(view: View, plan: Plan, to: Instant): Lane[] {
  const ovens = [...new Set([0, ...plan.oven.map((move) => move.oven ?? 0)])];
  return ovens.map((index): Lane => {
    const moves = plan.oven.filter((move) => (move.oven ?? 0) === index);
    return {
      name: index === 0 ? 'oven' : 'second oven',
      bars: moves.map((move, turn) => ({
        from: move.at,
        to: moves[turn + 1]?.at ?? Math.min(to, plan.serving.likelyAt),
        label: move.celsius > 0 ? degreesOf(view, (move.celsius * 9) / 5 + 32) : 'off',
        fill: 'none',
      })),
    };
  });
}

/** Bars on a line, their words in rows beneath so that none lies over another. */
function drawLane(
  lane: Lane,
  top: number,
  x: (at: Instant) => number,
): { svg: string; height: number } {
  const rowEnds: number[] = [];
  const parts: string[] = [];
  const middle = top + barHeight - 3;
  for (const bar of [...lane.bars].sort((a, b) => a.from - b.from)) {
    const left = x(bar.from);
    const width = Math.max(1.5, x(bar.to) - left);
    parts.push(
      `<rect x="${left.toFixed(1)}" y="${top}" width="${width.toFixed(1)}" height="${barHeight}" fill="${fills[bar.fill]}" stroke="#000" stroke-width="0.7"/>`,
    );
    if (bar.label === '') continue;
    const words = bar.label.length * letterWidth;
    if (bar.fill === 'none' && words < width - 4) {
      parts.push(`<text x="${(left + 3).toFixed(1)}" y="${middle}">${escaped(bar.label)}</text>`);
      continue;
    }
    const start = Math.min(left, page.width - page.right - words);
    let row = rowEnds.findIndex((end) => end + 6 <= start);
    if (row < 0) row = rowEnds.length;
    rowEnds[row] = start + words;
    const base = top + barHeight + rowHeight * (row + 1) - 2;
    parts.push(
      `<line x1="${left.toFixed(1)}" y1="${top + barHeight}" x2="${left.toFixed(1)}" y2="${base - 7}" stroke="#999" stroke-width="0.4"/>`,
      `<text x="${start.toFixed(1)}" y="${base}" stroke="#fff" stroke-width="2.5">${escaped(bar.label)}</text>`,
    );
  }
  let height = barHeight + rowHeight * rowEnds.length + 10;
  if (lane.bracket) {
    parts.push(drawBracket(lane.bracket, top + height - 4, x));
    height += 26;
  }
  parts.push(
    `<text x="8" y="${middle}" font-size="11" font-weight="bold">${escaped(lane.name)}</text>`,
  );
  return { svg: parts.join('\n'), height };
}

function drawBracket(
  bracket: NonNullable<Lane['bracket']>,
  y: number,
  x: (at: Instant) => number,
): string {
  const [left, middle, right] = [x(bracket.from), x(bracket.likely), x(bracket.to)].map((one) =>
    one.toFixed(1),
  );
  return [
    `<path d="M${left} ${y - 6}V${y}H${right}V${y - 6}M${middle} ${y}V${y + 5}" fill="none" stroke="#000" stroke-width="1.4"/>`,
    `<text x="${middle}" y="${y + 15}" text-anchor="middle" font-weight="bold" stroke="#fff" stroke-width="2.5">${escaped(bracket.label)}</text>`,
  ].join('\n');
}

function grid(
  from: Instant,
  to: Instant,
  x: (at: Instant) => number,
  { top, bottom }: { top: number; bottom: number },
  clock: (at: Instant) => string,
): string[] {
  const lines: string[] = [];
  for (let at = from; at <= to; at = addMinutes(at, 30)) {
    const whole = at % 3_600_000 === 0;
    const place = x(at).toFixed(1);
    lines.push(
      `<line x1="${place}" y1="${top}" x2="${place}" y2="${bottom}" stroke="#ccc" stroke-width="${whole ? 0.8 : 0.4}"/>`,
    );
    lines.push(`<text x="${place}" y="${top - 3}" text-anchor="middle">${clock(at)}</text>`);
  }
  return lines;
}

const marker = (place: number, top: number, bottom: number, label: string): string =>
  `<line x1="${place.toFixed(1)}" y1="${top}" x2="${place.toFixed(1)}" y2="${bottom}" stroke="#000" stroke-width="1.2" stroke-dasharray="5 3"/><text x="${(place + 3).toFixed(1)}" y="${bottom + 12}" font-weight="bold">${label}</text>`;

const patterns = `<defs>
<pattern id="oven" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#fff"/><rect width="2" height="6" fill="#777"/></pattern>
<pattern id="wait" width="5" height="5" patternUnits="userSpaceOnUse"><rect width="5" height="5" fill="#fff"/><circle cx="2.5" cy="2.5" r="0.9" fill="#555"/></pattern>
<pattern id="roast" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#fff"/><rect width="3.4" height="6" fill="#444"/></pattern>
</defs>`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
