/** A small line chart as SVG: points joined, an optional band to lie in, both axes labelled. */
export interface Plot {
  title: string;
  across: string;
  points: readonly { x: number; y: number }[];
  top: number;
  between?: { low: number; high: number };
}

export function plot({ title, across, points, top, between }: Plot): string {
  const width = 560;
  const height = 320;
  const most = Math.max(...points.map((point) => point.x)) * 1.1;
  const x = (value: number): number => Math.round(60 + (value / most) * 470);
  const y = (value: number): number => Math.round(270 - (value / top) * 220);
  const label = (px: number, py: number, text: string, anchor: string): string =>
    `<text x="${px}" y="${py}" text-anchor="${anchor}">${text}</text>`;
  const band = between
    ? `<rect x="60" y="${y(between.high)}" width="470" height="${y(between.low) - y(between.high)}" fill="#dfeedd"/>`
    : '';
  const dots = points
    .map((point) => `<circle cx="${x(point.x)}" cy="${y(point.y)}" r="4" fill="#a33"/>`)
    .join('');
  const line = points.map((point) => `${x(point.x)},${y(point.y)}`).join(' ');
  const ticks = [0, 0.25, 0.5, 0.75, 1]
    .map((part) => label(52, y(part * top) + 4, String(Math.round(part * top * 10) / 10), 'end'))
    .join('');
  const marks = points.map((point) => label(x(point.x), 288, String(point.x), 'middle')).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12"><rect width="${width}" height="${height}" fill="#fff"/>${band}<path d="M60 50V270H530" fill="none" stroke="#333"/>${ticks}${marks}<polyline points="${line}" fill="none" stroke="#a33" stroke-width="2"/>${dots}${label(280, 28, title, 'middle')}${label(295, 310, across, 'middle')}</svg>
`;
}
