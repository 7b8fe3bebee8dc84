/**
 * `npm run bench:heat:memory`: a six-hour dinner with a reading every five minutes, each asked about and
 * the oven turned once an hour; prints the heap after a forced collection at every hour. Flat is what is
 * wanted: what the forecast remembers is a few ensembles, however long the dinner.
 */
import type { ForecastQuestion, OvenSetting, ProbeReading } from '../../src/kitchen/forecast.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';
import { dice } from './kitchen/dice.ts';

const collect = globalThis.gc;
if (!collect) throw new Error('run it with node --expose-gc');

const hours = 6;
const everyMinutes = 5;
const { normal } = dice(1);
const oven: OvenSetting[] = [{ minute: 0, celsius: 107 }];
const readings: ProbeReading[] = [];
const asked = (nowMinute: number): ForecastQuestion => ({
  roast: {
    shape: {
      form: 'rib',
      kilogramsPerBone: 1.05,
      composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
    },
    kilograms: 7.3,
    bones: 7,
  },
  oven: [...oven],
  readings: [...readings],
  nowMinute,
  pullCelsius: 54,
  rest: 'tented',
  seed: 1,
});

const heapMegabytes = (): string => {
  collect();
  return (process.memoryUsage().heapUsed / 2 ** 20).toFixed(1);
};

console.log(`before: ${heapMegabytes()} MB`);
for (let minute = everyMinutes; minute <= hours * 60; minute += everyMinutes) {
  // A core that climbs as a large roast in a low oven does.
  const core = 5 + 49 * (minute / 380) ** 1.6;
  readings.push({ minute, celsius: core + 0.3 * normal() });
  if (minute % 60 === 0) oven.push({ minute, celsius: 107 + 3 * (minute / 60) });
  forecast(asked(minute));
  if (minute % 60 === 0)
    console.log(`after ${minute / 60} h, ${readings.length} readings: ${heapMegabytes()} MB`);
}
