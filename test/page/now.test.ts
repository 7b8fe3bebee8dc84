/** The sentence that matters, from what every page gets alike. No browser. */
import { expect, test } from 'vitest';
import { keepingOn } from '../../src/page/keep.ts';
import { split } from '../../src/page/now.ts';
import { clock, degrees, span } from '../../src/page/show.ts';
import { faceOf } from '../../src/page/slice.ts';
import { eventReader } from '../../src/page/stream.ts';

test.each([
  [
    'Truss the roast. One string between each pair of bones.',
    'Truss the roast.',
    'One string between each pair of bones.',
  ],
  [
    'Have you? Turn the oven down to 325 °F. Tell me.',
    'Have you? Turn the oven down to 325\u00a0°F.',
    'Tell me.',
  ],
  ['Carve', 'Carve', ''],
  ['', '', ''],
  [
    'Push the probe in from the end, tip in the middle, clear of bone and fat.',
    'Push the probe in from the end.',
    'Tip in the middle, clear of bone and fat.',
  ],
  [
    'If the thermometer reads more than that, it is done and comes out of the oven now.',
    'If the thermometer reads more than that, it is done and comes out of the oven now.',
    '',
  ],
  ['Weigh out 1.5 kg of potatoes. Peel them.', 'Weigh out 1.5\u00a0kg of potatoes.', 'Peel them.'],
])('what is read from afar: %s', (text, main, rest) => {
  expect(split(text)).toEqual({ main, rest });
});

test('events of the stream, however the network cuts them (HTML standard, 9.2.6)', () => {
  const text =
    'retry: 2000\n\n: here\n\nid: 3\nevent: turn\ndata: {"text":"ça va"}\n\nid: 4\r\nevent: view\r\ndata: {"a":\r\ndata: 1}\r\n\r\nevent: other\ndata: 1\n\n';
  const whole = eventReader()(text);
  expect(whole).toEqual([
    { event: 'turn', position: 3, data: { text: 'ça va' } },
    { event: 'view', position: 4, data: { a: 1 } },
  ]);
  for (let cut = 1; cut < text.length; cut += 1) {
    const read = eventReader();
    expect([...read(text.slice(0, cut)), ...read(text.slice(cut))]).toEqual(whole);
  }
});

const band = (p50: number) => ({ p10: p50 - 4, p50, p90: p50 + 4 });
const slice = (temperatures: number[], radiusMillimetres = 60) => ({
  radiusMillimetres,
  profile: temperatures.map((t, n) => ({
    outward: n / (temperatures.length - 1),
    fahrenheit: band(t),
    hottestFahrenheit: band(t),
  })),
});

test('the slice: zones where the straight line between two rings passes their limit', () => {
  // From 120 in the middle to 170 at the rim: 125, 149 and 160 lie at 0.1, 0.58 and 0.8 of 60 mm.
  const face = faceOf(slice([120, 170]))!;
  expect(
    face.zones.map(({ zone, radiusMillimetres }) => [zone, Math.round(radiusMillimetres)]),
  ).toEqual([
    ['brown', 60],
    ['grey', 48],
    ['pink', 35],
    ['red', 6],
  ]);
  expect(face).toMatchObject({ coreFahrenheit: 120 });
  expect(face.rimMillimetres).toBeCloseTo(25.2);
  expect(face.pinkMillimetres).toBeCloseTo(69.6);
});

test('the slice: a rim that has cooled stays grey; meat done through has no pink; no profile, no face', () => {
  const cooled = faceOf(slice([130, 150, 165, 138]))!;
  expect(cooled.zones.map((one) => one.zone)).toEqual(['brown', 'grey', 'pink']);
  expect(cooled.zones[0]?.radiusMillimetres).toBe(60);
  const through = faceOf(slice([165, 168, 172]))!;
  expect(through.zones).toEqual([{ zone: 'brown', radiusMillimetres: 60 }]);
  expect(through.pinkMillimetres).toBe(0);
  expect(faceOf(slice([110, 115, 120]))!.rimMillimetres).toBe(0);
  expect(faceOf({ radiusMillimetres: 60, profile: [] })).toBeUndefined();
});

test('hours, degrees and spans as the household reads them', () => {
  const manner = { timeZone: 'America/Chicago', temperature: 'F', hours: '12' } as const;
  expect(clock('2026-12-19T19:04:40-06:00', manner)).toBe('7:05');
  expect(clock('2026-12-20T00:00:00-06:00', manner)).toBe('12:00');
  expect(clock('2026-12-19T19:04:00-06:00', { ...manner, hours: '24' })).toBe('19:04');
  // NIST SP 811: 54.4 °C are 130 °F.
  expect(degrees(130, { ...manner, temperature: 'C' })).toBe('54\u00a0°C');
  expect([0, 29_000, 60_000, 3_600_000, 5_400_000].map(span)).toEqual([
    'now',
    'now',
    '1\u00a0min',
    '1\u00a0h',
    '1\u00a0h\u00a030',
  ]);
});

test('a storage that throws is a storage that keeps nothing', () => {
  const shut = keepingOn(() => {
    throw new Error('shut');
  });
  expect([shut.set('theme', 'dark'), shut.get('theme')]).toEqual([false, undefined]);
});
