/** "Have I wrecked it?": a straight number and what it means, in a breath. */
import { assertNever } from '../../base/assert.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say } from '../spoken.ts';
import { coreNow } from './standing.ts';
import { degrees, degreesApart } from './words.ts';

/** Nobody at the table tastes less than this. Common practice, no source. */
const closeKelvin = 3;
/** So far over the wish it is another doneness, and still dinner. Common practice, no source. */
const anotherKelvin = 14;

/** Undefined before there is a core to speak of. */
export function comfortWords(scene: Scene): Spoken | undefined {
  const { plan, dinner, stage } = scene;
  if (!plan) return undefined;
  const core = coreNow(scene)?.p50;
  const ends = plan.coreAtServingCelsius.p50;
  const over = ends - plan.serveCelsius;
  const at = degrees(ends, dinner.units);
  switch (stage) {
    case 'planning':
    case 'prep':
    case 'preheat':
      return say`Nothing is lost: the roast is not in yet.`;
    case 'sear':
    case 'low-roast': {
      if (core === undefined) return undefined;
      const middle = degrees(core, dinner.units);
      const left = plan.pullCelsius - core;
      if (left > 1)
        return say`No: the middle is about ${middle}, ${degreesApart(left, dinner.units)} short of the pull. Nothing is lost.`;
      return over <= closeKelvin
        ? say`No: about ${middle} in the middle. Out with it now and it comes to the table at about ${at}, as you wanted it.`
        : say`${fate(over)}: about ${middle} in the middle. Out with it now it ends at about ${at}, for ${degrees(plan.serveCelsius, dinner.units)}. Thin slices and warm juices make up for much.`;
    }
    case 'rest':
    case 'hold':
    case 'carve':
      if (over < -closeKelvin)
        return say`No: it comes to the table at about ${at}, a little under. Slices can go back to a hot pan, half a minute a side.`;
      return over <= closeKelvin
        ? say`No: it comes to the table at about ${at}, for ${degrees(plan.serveCelsius, dinner.units)}. Leave it be.`
        : say`${fate(over)}: about ${at} at the table, for ${degrees(plan.serveCelsius, dinner.units)}. Slice it thin, the very middle first, with warm juices.`;
    case 'served':
    case 'put-away':
      return say`They are eating, so no. Warm juices over the slices help whatever is dry.`;
    default:
      return assertNever(stage);
  }
}

const fate = (over: number): string =>
  over <= anotherKelvin
    ? 'Not wrecked, only more done'
    : 'More done than you wanted, and still dinner';
