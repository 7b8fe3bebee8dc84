/** A roast that came out too soon: how far short of what was asked for it will be, and what mends it. */
import { type Dinner, roastCardOf } from '../../kitchen/dinner.ts';
import type { Plan } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { isResting } from './standing.ts';
import { degrees, degreesApart } from './words.ts';

/** Nobody is sent back to the oven for less; a sear that is still to come cooks on. */
const shortKelvin = 4;
const searedOnKelvin = 8;

/** Kelvin by which the likely core at the knife falls short of what was asked for, where that matters. */
function shortOf(scene: Scene): number | undefined {
  const { plan, dinner, stage } = scene;
  if (!plan || !(isResting(scene) || stage === 'carve')) return undefined;
  const sears = dinner.method === 'sear-last' && dinner.steps.get('sear')?.doneAt === undefined;
  const asked = isUnsafeShort({ dinner }) ? plan.serveCelsius : settledFor(plan, dinner);
  const short = asked - plan.coreAtServingCelsius.p50;
  return short >= (sears ? searedOnKelvin : shortKelvin) ? short : undefined;
}

/** What was asked for, or the less that the cook has taken with a way to be early. */
function settledFor({ serveCelsius }: Plan, { course, options }: Dinner): number {
  const taken =
    course && options?.find((one) => JSON.stringify(one.course) === JSON.stringify(course));
  return Math.min(serveCelsius, taken?.coreAtServingCelsius.p50 ?? serveCelsius);
}

/** "It comes to about 101 °F, 25 °F short of 126 °F. Put it back in, and tell me when it is in." */
export function shortCoreWords(scene: Scene): Spoken | undefined {
  const short = shortOf(scene);
  if (short === undefined || !scene.plan) return undefined;
  const { dinner, plan } = scene;
  const core = degrees(plan.coreAtServingCelsius.p50, dinner.units);
  return sentences([
    say`That is early: it comes to about ${core}, ${degreesApart(short, dinner.units)} short of ${degrees(plan.serveCelsius, dinner.units)}.`,
    isUnsafeShort(scene) ? say`Nobody should eat it so.` : silent,
    say`Put it back in, and tell me when it is in.`,
  ]);
}

/** Before the knife, where nothing was done about it. */
export function shortAtKnifeWords(scene: Scene): Spoken {
  const short = shortOf(scene);
  if (short === undefined || !scene.plan) return silent;
  const { units } = scene.dinner;
  return sentences([
    say`By my count the middle is ${degreesApart(short, units)} short of ${degrees(scene.plan.serveCelsius, units)}. Take a reading before you cut, and put it back if it is.`,
    isUnsafeShort(scene) ? say`Nobody should eat it so.` : silent,
  ]);
}

/** Meat that is never served pink, or somebody at table who must not have it so. */
const isUnsafeShort = ({ dinner }: Pick<Scene, 'dinner'>): boolean =>
  roastCardOf(dinner)?.pink === false || dinner.notes.some((note) => note.need === 'vulnerable');
