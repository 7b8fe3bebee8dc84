/** A small line chart as SVG: named lines of points, an optional band to lie in, both axes labelled. */
export interface PlotLine {
  name: string;
  colour: string;
  points: readonly { x: number; y: number }[];
}

export interface Plot {
  title: string;
  across: string;
  lines: readonly PlotLine[];
  top: number;
  between?: { low: number; high: number };
}

const width = 560;
const height = 330;
const left = 60;
const right = 530;
const floor = 270;
const ceiling = 60;

export function plot({ title, across, lines, top, between }: Plot): string {
  const most = Math.max(...lines.flatMap((line) => line.points.map((point) => point.x))) * 1.1;
  const x = (value: number): number => Math.round(left + (value / most) * (right - left));
  const y = (value: number): number => Math.round(floor - (value / top) * (floor - ceiling));
  const label = (px: number, py: number, text: string, anchor: string, colour = '#222'): string =>
    `<text x="${px}" y="${py}" text-anchor="${anchor}" fill="${colour}">${text}</text>`;
  const band = between
    ? `<rect x="${left}" y="${y(between.high)}" width="${right - left}" height="${y(between.low) - y(between.high)}" fill="#dfeedd"/>`
    : '';
  const drawn = lines.map(({ colour, points }) => {
    const path = points.map((point) => `${x(point.x)},${y(point.y)}`).join(' ');
    const dots = points
      .map((point) => `<circle cx="${x(point.x)}" cy="${y(point.y)}" r="4" fill="${colour}"/>`)
      .join('');
    return `<polyline points="${path}" fill="none" stroke="${colour}" stroke-width="2"/>${dots}`;
  });
  const names = lines.map((line, row) =>
    label(left + 12 + 130 * row, ceiling - 12, `● ${line.name}`, 'start', line.colour),
  );
  const ticks = [0, 0.25, 0.5, 0.75, 1].map((part) =>
    label(left - 8, y(part * top) + 4, String(Math.round(part * top * 10) / 10), 'end'),
  );
  const marks = lines[0]!.points.map((point) =>
    label(x(point.x), floor + 18, String(point.x), 'middle'),
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    band,
    `<path d="M${left} ${ceiling - 4}V${floor}H${right}" fill="none" stroke="#333"/>`,
    ...ticks,
    ...marks,
    ...drawn,
    ...names,
    label(width / 2, 24, title, 'middle'),
    label((left + right) / 2, floor + 42, across, 'middle'),
    '</svg>\n',
  ].join('');
}
