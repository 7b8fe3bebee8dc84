/** What the knife will meet: how far in it is brown, how much of it is pink; as planned, or if it came out now. */
import { minutesBetween } from '../../base/time.ts';
import {
  type Forecast,
  type SliceOutlook,
  sliceIfOutAt,
  sliceRested,
} from '../../kitchen/forecast.ts';
import type { HeardOf } from '../../kitchen/heard.ts';
import type { Plan } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { forEyes, type Spoken, say, sentences, silent } from '../spoken.ts';
import { noPlan } from './standing.ts';
import { clock, count, degrees, duration, ovenDegrees } from './words.ts';

/** Less between now and the pull than this is no other slice. */
const sameMillimetres = 1;

export function sliceAnswer(heard: HeardOf<'ask-slice'>, scene: Scene): Spoken {
  const { plan, forecast, dinner, now, stage } = scene;
  if (!plan || !forecast) return noPlan;
  const planned = sliceRested(forecast.slices, plan.restMinutes);
  if (heard.temperature !== undefined) return otherOven(scene, { plan, forecast, planned });
  if (heard.pulled === undefined)
    return sentences([
      say`${duration(planned.minutesAfterPull)} after the pull, most likely: ${faceWords(planned, scene)}.`,
      forEyes(lowerOven(scene)),
    ]);
  if (stage !== 'sear' && stage !== 'low-roast')
    return forecast.ifOut.length > 0
      ? say`It is not in the oven yet. As planned: ${faceWords(planned, scene)}.`
      : say`It is out already: ${faceWords(planned, scene)}.`;
  const slice = sliceIfOutAt(forecast, {
    outMinute: minutesBetween(plan.roastInAt, now),
    restMinutes: plan.restMinutes,
  });
  if (!slice) return say`It is out already: ${faceWords(planned, scene)}.`;
  const early = plan.serveCelsius - slice.profile[0]!.celsius.p50;
  return sentences([
    say`Pulled now and rested: ${faceWords(slice, scene)}.`,
    early > 1.5
      ? say`That is short of your ${degrees(plan.serveCelsius, dinner.units)}; the pull is likely at ${clock(plan.pullAt.p50, dinner)}.`
      : early < -1.5
        ? say`That is past your ${degrees(plan.serveCelsius, dinner.units)}: pull it.`
        : say`That is what you want: pull it.`,
    Math.abs(slice.greyBandMillimetres.p50 - planned.greyBandMillimetres.p50) > sameMillimetres &&
    early > 1.5
      ? forEyes(say`By then the brown goes ${millimetres(planned)} deep.`)
      : silent,
  ]);
}

/** At another heat, beside what is planned: how deep the brown, how much pink, how much later or sooner. */
function otherOven(
  scene: Scene,
  {
    plan: { restMinutes },
    forecast: asPlanned,
    planned,
  }: { plan: Plan; forecast: Forecast; planned: SliceOutlook },
): Spoken {
  const { supposed, dinner } = scene;
  if (!supposed) return say`It is out already: ${faceWords(planned, scene)}.`;
  const { forecast, ovenCelsius, pullCelsius } = supposed;
  const oven = ovenDegrees(ovenCelsius, dinner.units);
  if (forecast.neverReachedChance > 0.5)
    return say`At ${oven} it would never get to ${degrees(pullCelsius, dinner.units)}.`;
  const later = forecast.pullMinute.p50 - asPlanned.pullMinute.p50;
  return sentences([
    say`At ${oven} from now on: ${faceWords(sliceRested(forecast.slices, restMinutes), scene)}.`,
    forEyes(say`As planned the brown goes ${millimetres(planned)} deep.`),
    Math.abs(later) < 3
      ? say`The pull would come at about the same time, at ${degrees(pullCelsius, dinner.units)}.`
      : say`The pull would come about ${duration(Math.abs(later))} ${later > 0 ? 'later' : 'sooner'}${forEyes(say`, at ${degrees(pullCelsius, dinner.units)}`)}.`,
  ]);
}

/** "about 128 °F in the middle, brown and grey 9 mm deep, and some 70 percent of it as pink as the middle". */
function faceWords(slice: SliceOutlook, { dinner }: Scene): Spoken {
  const core = slice.profile[0]!.celsius.p50;
  const share = Math.round(10 * slice.pinkFraction.p50) * 10;
  const evenly = say`, and ${count(share)} percent of it within ${count(dinner.units.temperature === 'F' ? 5 : 3)} degrees of the middle`;
  return say`about ${degrees(core, dinner.units)} in the middle, brown and grey ${millimetres(slice)} deep${forEyes(evenly)}`;
}

const millimetres = ({ greyBandMillimetres: { p50 } }: SliceOutlook): Spoken => {
  const deep = Math.round(p50);
  return {
    text: `${deep} mm`,
    speech: `${count(deep).speech} ${deep === 1 ? 'millimetre' : 'millimetres'}`,
  };
};

/** What narrows the brown band, while it can still be had. */
const lowerOven = ({ stage }: Scene): Spoken =>
  stage === 'planning' || stage === 'prep' || stage === 'low-roast'
    ? say`A lower oven makes the brown thinner and the wait longer.`
    : silent;
