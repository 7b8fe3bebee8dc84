/** What another hour of dinner would make of the day: whether it can be had, how, and what it costs. Nothing is changed. */
import { minutesBetween } from '../../base/time.ts';
import type { Option } from '../../kitchen/facts.ts';
import type { Scene } from '../scene.ts';
import { forEyes, type Spoken, say, sentences, silent } from '../spoken.ts';
import { donenessAloud, titleAloud } from './options.ts';
import { aloud, clock, degrees, duration } from './words.ts';

/** A table so much off the hour is another hour. */
const sameMinutes = 5;

export function supposedHourWords(scene: Scene): Spoken | undefined {
  const { supposedHour, dinner } = scene;
  if (!supposedHour) return undefined;
  const [first, ...others] = supposedHour.options;
  return sentences([
    first ? wayThere(first, scene) : asPlanned(scene),
    forEyes(
      sentences(
        others.map(
          (one) =>
            say`Or ${aloud(one.title)}: table ${clock(one.servingAt, dinner)}, ${degrees(one.coreAtServingCelsius.p50, dinner.units)} at the knife.`,
        ),
      ),
    ),
    say`Nothing is changed: say "dinner at ${clock(supposedHour.wantedAt, dinner)}" to have it so.`,
  ]);
}

/** With a way to be chosen: the one that would be taken. */
function wayThere(option: Option, scene: Scene): Spoken {
  const { supposedHour, dinner } = scene;
  const wanted = supposedHour?.wantedAt ?? option.servingAt;
  const hour =
    Math.abs(minutesBetween(wanted, option.servingAt)) <= sameMinutes
      ? say`Dinner at ${clock(wanted, dinner)} would do`
      : say`Not at ${clock(wanted, dinner)}; the nearest is ${clock(option.servingAt, dinner)}`;
  const doneness = donenessAloud(option, scene);
  const off = doneness === '' ? '' : `, ${doneness} than you asked`;
  const core = degrees(option.coreAtServingCelsius.p50, dinner.units);
  return {
    text: say`${hour}: ${aloud(option.title)}; ${core} at the knife${off}.`.text,
    speech: say`${hour}: ${titleAloud(option, scene)}${off}.`.speech,
  };
}

/** Where nothing has to be chosen: the day as it would be planned. */
function asPlanned(scene: Scene): Spoken {
  const { supposedHour, plan: now, dinner, stage } = scene;
  if (!supposedHour) return silent;
  const { plan, wantedAt } = supposedHour;
  if (minutesBetween(wantedAt, plan.serving.likelyAt) > sameMinutes)
    return say`Not at ${clock(wantedAt, dinner)}: ${clock(plan.serving.likelyAt, dinner)} is the soonest.`;
  const inOven = stage !== 'planning' && stage !== 'prep' && stage !== 'preheat';
  if (inOven)
    return say`Dinner at ${clock(wantedAt, dinner)} would do, with a rest of ${duration(plan.restMinutes)}.`;
  const was = now && Math.abs(minutesBetween(now.roastInAt, plan.roastInAt)) > sameMinutes;
  return was
    ? say`Dinner at ${clock(wantedAt, dinner)} would do: the roast in at ${clock(plan.roastInAt, dinner)}, not ${clock(now.roastInAt, dinner)}.`
    : say`Dinner at ${clock(wantedAt, dinner)} would do as things stand.`;
}
