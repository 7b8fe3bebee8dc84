/** What to do differently next time, from the figures of a record. Each threshold says what is worth it. */
import { minutesBetween } from '../../base/time.ts';
import type { DinnerRecord, Lesson } from '../../kitchen/record.ts';
import { figureOf, meets } from '../../kitchen/safety.ts';

/** A table that is not on time, a pull that was not at once; common practice, no source. */
const lateMinutes = 10;
const slowPullMinutes = 6;
/** A bias counts when it is beyond what an oven's cycling hides, and surely not nothing. */
const biasKelvin = 6;
const thermometerKelvin = 1.1;
/** Off by more than this at the knife, the word for its doneness changes. */
const offKelvin = 2.5;
const readingsWanted = 2;

export function lessonsOf(
  record: Omit<DinnerRecord, 'lessons'>,
  told: {
    pullCalledAt?: number | undefined;
    saltAheadCalled: boolean;
    saltAheadDone: boolean;
    frozen: boolean;
  },
): Lesson[] {
  const { serving, learnt } = record;
  const lessons: Lesson[] = [];
  const at = (step: string): number | undefined =>
    record.moments.find((one) => one.step === step && !one.presumed)?.happenedAt;
  if (serving.servedAt !== undefined && serving.wantedAt !== undefined) {
    const late = minutesBetween(serving.wantedAt, serving.servedAt);
    if (late > lateMinutes) lessons.push({ key: 'served-late', minutes: Math.round(late) });
    if (late < -lateMinutes) lessons.push({ key: 'served-early', minutes: Math.round(-late) });
  }
  const oven = learnt?.ovenBiasKelvin;
  if (
    oven &&
    record.readings.length > 0 &&
    Math.abs(oven.mean) > Math.max(biasKelvin, oven.deviation)
  )
    lessons.push({
      key: oven.mean > 0 ? 'oven-hot' : 'oven-cool',
      kelvin: Math.abs(oven.mean),
    });
  const stem = learnt?.thermometerOffsetKelvin;
  if (stem && Math.abs(stem.mean) > Math.max(thermometerKelvin, stem.deviation))
    lessons.push({ key: 'thermometer-off', kelvin: stem.mean });
  const pulledAt = at('pull');
  if (pulledAt !== undefined && told.pullCalledAt !== undefined) {
    const slow = minutesBetween(told.pullCalledAt, pulledAt);
    if (slow > slowPullMinutes) lessons.push({ key: 'pulled-late', minutes: Math.round(slow) });
  }
  if (record.coreAtKnifeCelsius && record.serveCelsius !== undefined) {
    const off = record.coreAtKnifeCelsius.p50 - record.serveCelsius;
    if (off > offKelvin) lessons.push({ key: 'more-done', kelvin: off });
    if (off < -offKelvin) lessons.push({ key: 'less-done', kelvin: -off });
  }
  const roasted = record.moments.some((one) => one.step === 'pull' && one.happenedAt !== undefined);
  if (roasted && record.readings.length < readingsWanted)
    lessons.push({ key: 'few-readings', count: record.readings.length });
  const awayAt = at('put-away');
  const servedAt = serving.servedAt;
  if (awayAt !== undefined && servedAt !== undefined) {
    const out = minutesBetween(servedAt, awayAt);
    if (!meets(figureOf('leftovers', 'out'), out))
      lessons.push({ key: 'left-out', minutes: Math.round(out) });
  } else if (servedAt !== undefined) lessons.push({ key: 'put-away-untold' });
  if (told.saltAheadCalled && !told.saltAheadDone) lessons.push({ key: 'salt-ahead-missed' });
  if (told.frozen) lessons.push({ key: 'still-frozen' });
  return lessons;
}
