/** "What if I roasted it at 250": the same roast in an oven of that heat from now on, simulated for the answer. */
import { minutesBetween } from '../base/time.ts';
import { celsiusOf } from '../base/units.ts';
import { type Forecast, type OvenSetting, sliceRested } from '../kitchen/forecast.ts';
import { type Outcome, questionIn } from '../kitchen/outcome.ts';
import { roastCameOutAt, roastOf, roastWentInAt } from '../planner/roast-day.ts';
import type { Scene } from '../reply/scene.ts';
import type { Outlook } from './outlook.ts';
import type { Compute } from './ports.ts';

/** Below this a dial is off, and this near the sear's heat it is the sear. */
const offBelowCelsius = 40;
const sameHeatKelvin = 3;
/** Each time the pull comes nearer to what ends at the wanted core. */
const aimedAtMost = 2;

export async function supposed(
  outcomes: readonly Outcome[],
  { dinner, question, forecast, plan, now }: Outlook,
  compute: Compute,
): Promise<Scene['supposed']> {
  const asked = questionIn(outcomes, 'ask-slice');
  const roast = roastOf(dinner);
  if (asked?.temperature === undefined || !question || !forecast || !plan || !roast)
    return undefined;
  if (roastCameOutAt(dinner) !== undefined) return undefined;
  const unit = asked.unit ?? dinner.units.temperature;
  const ovenCelsius = celsiusOf(asked.temperature, unit);
  const { method, searCelsius } = roast.program;
  const wentInAt = roastWentInAt(dinner);
  const oven = roastedAt(question.oven, {
    from: wentInAt === undefined ? 0 : minutesBetween(wentInAt, now),
    celsius: ovenCelsius,
    searCelsius: method === 'steady' ? undefined : searCelsius,
  });
  const { rest, hold, restMinutes } = question;
  let { pullCelsius } = question;
  const atPull = (): Promise<Forecast> =>
    compute.forecast({ ...question, instead: { oven, pullCelsius, rest, hold, restMinutes } });
  const coreOf = ({ slices }: Forecast): number =>
    sliceRested(slices, plan.restMinutes).profile[0]?.celsius.p50 ?? pullCelsius;
  let found = await atPull();
  // A gentler oven climbs less in the rest: held against the plan, both end at the same core.
  for (let round = 0; round < aimedAtMost; round += 1) {
    pullCelsius += coreOf(forecast) - coreOf(found);
    found = await atPull();
  }
  return { ovenCelsius, pullCelsius, forecast: found };
}

/** The settings with another heat wherever from a minute on it roasts: the sear and an oven that is off stay. */
function roastedAt(
  settings: readonly OvenSetting[],
  {
    from,
    celsius,
    searCelsius,
  }: { from: number; celsius: number; searCelsius?: number | undefined },
): OvenSetting[] {
  const roasts = (setting: OvenSetting): boolean =>
    setting.celsius > offBelowCelsius &&
    (searCelsius === undefined || Math.abs(setting.celsius - searCelsius) > sameHeatKelvin);
  const changed = settings.map((one) =>
    one.minute >= from && roasts(one) ? { ...one, celsius } : one,
  );
  const standing = settings.findLast((one) => one.minute < from);
  return standing && roasts(standing) ? [...changed, { minute: from, celsius }] : changed;
}
