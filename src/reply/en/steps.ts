/** A card's own words for a step, with its blanks filled for this dinner. */

import { celsiusOfFahrenheit } from '../../base/units.ts';
import { type Card, type CardStep, stepIdOf, stepIn } from '../../kitchen/card.ts';
import { circumstancesOf, cooksOnFor } from '../../kitchen/circumstances.ts';
import { type Dinner, guestsOf, roastCardOf } from '../../kitchen/dinner.ts';
import type { Plan } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, list, lower, type Spoken, say, silent } from '../spoken.ts';
import { choreStep, seasonedOnce } from './chores.ts';
import { ovenAfter } from './day.ts';
import { guestName } from './names.ts';
import { authorityDegrees, count, degrees, ovenDegrees } from './words.ts';

/** The card's step of that id, in the words that fit this dinner. */
export function findStep(dinner: Dinner, id: string): { card: Card; step: CardStep } | undefined {
  const card = roastCardOf(dinner);
  for (const one of dinner.cards) {
    // A cut that was mended leaves its card behind, with steps of the same names.
    if (one.card === 'roast' && card !== undefined && one.id !== card.id) continue;
    for (const step of one.steps)
      if (stepIdOf(one, step) === id)
        return { card: one, step: seasonedOnce(stepIn(step, circumstancesOf(dinner)), dinner) };
  }
  const chore = card && choreStep(id, dinner);
  return chore && { card, step: chore };
}

/** The step's title, or its id in words where no card has it. */
export const titleOf = (dinner: Dinner, id: string): string =>
  findStep(dinner, id)?.step.title ?? id.replace(/[-.]/g, ' ');

/** The step once it is done, as a clause: "the potatoes are scrubbed". */
export const doneClause = (dinner: Dinner, id: string): string =>
  findStep(dinner, id)?.step.done ?? `"${titleOf(dinner, id)}" is done`;

export const dishTitle = (dinner: Dinner, id: string): string =>
  dinner.cards.find((card) => card.id === id)?.title ?? id.replace(/-/g, ' ');

/** What the cook's own thermometer shows when the core is at the pull; by the ice test it may be off. */
export const pullShown = ({ pullCelsius }: Pick<Plan, 'pullCelsius'>, dinner: Dinner): Spoken =>
  degrees(pullCelsius + (dinner.thermometerOffsetKelvin ?? 0), dinner.units);

/** Fills {searTemperature} and the like in a card's sentence. */
export function fill(sentence: string, scene: Scene, step?: CardStep): Spoken {
  const { plan, dinner } = scene;
  const parts = sentence.split(/(\{[a-zA-Z]+\})/);
  return parts.reduce<Spoken>((so, part) => {
    const value = blank(part, plan, scene, step);
    return { text: so.text + (value?.text ?? part), speech: so.speech + (value?.speech ?? part) };
  }, silent);

  function blank(
    part: string,
    known: Plan | undefined,
    at: Scene,
    of?: CardStep,
  ): Spoken | undefined {
    const roast = at.dinner.cards.find(
      (card) => card.card === 'roast' && card.id === at.dinner.roast.cut,
    );
    const method = roast?.card === 'roast' ? roast.methods[at.dinner.method] : undefined;
    switch (part) {
      case '{searTemperature}':
        return method && 'searFahrenheit' in method
          ? ovenDegrees(celsiusOfFahrenheit(Number(method.searFahrenheit)), dinner.units)
          : known
            ? ovenDegrees(ovenAfter(known, known.roastInAt), dinner.units)
            : say`its heat`;
      case '{roastTemperature}':
        return ovenDegrees(
          celsiusOfFahrenheit(Number(method?.roastFahrenheit ?? 325)),
          dinner.units,
        );
      case '{pullTemperature}':
        return known ? pullShown(known, dinner) : say`its pull`;
      case '{ovenTemperature}':
        return of ? ovenOf(of, known, dinner.units) : say`its heat`;
      case '{guests}':
        return count(guestsOf(dinner));
      case '{vulnerableGuests}':
        return list(cooksOnFor(dinner).map((who) => guestName(who)));
      case '{consumerMinimum}':
        return authorityDegrees(145, dinner.units);
      case '{coreTemperature}':
        return of ? coreOf(of, dinner) : undefined;
      default:
        return undefined;
    }
  }
}

/** What the middle of the step's dish must read. */
function coreOf(step: CardStep, dinner: Dinner): Spoken | undefined {
  const card = dinner.cards.find((one) => one.steps.some(({ title }) => title === step.title));
  return card === undefined || card.card === 'roast' || card.coreFahrenheit === undefined
    ? undefined
    : authorityDegrees(card.coreFahrenheit, dinner.units);
}

const startOf = (plan: Plan, step: CardStep): number | undefined =>
  plan.steps.find(
    (one) => one.title === step.title && (one.id === step.id || one.id.endsWith(`.${step.id}`)),
  )?.startAt;

/** The oven of a step: as the plan sets it then where the dish stands that, else as its card likes it. */
function ovenOf(step: CardStep, plan: Plan | undefined, units: Dinner['units']): Spoken {
  const startAt = plan && startOf(plan, step);
  const planned = plan && startAt !== undefined ? ovenAfter(plan, startAt) : 0;
  if (!step.oven) return planned > 0 ? ovenDegrees(planned, units) : say`its heat`;
  const { lowFahrenheit, likelyFahrenheit, highFahrenheit } = step.oven;
  const stands =
    planned >= celsiusOfFahrenheit(lowFahrenheit) - 3 &&
    planned <= celsiusOfFahrenheit(highFahrenheit) + 3;
  return ovenDegrees(stands ? planned : celsiusOfFahrenheit(likelyFahrenheit), units);
}

/** What is called when the step is due, the way round a missing tool included. */
export function callWords(id: string, scene: Scene): Spoken {
  const found = findStep(scene.dinner, id);
  if (!found) return say`${titleOf(scene.dinner, id)}.`;
  const around = (found.step.without ?? []).find((one) => scene.dinner.lacks.includes(one.tool));
  return fill(around?.call ?? found.step.call, scene, found.step);
}

export const howWords = (step: CardStep, scene: Scene): Spoken[] =>
  step.how.map((line) => fill(line, scene, step));

/** What to watch for, said once at the step. */
export const cautionWords = (id: string, scene: Scene): Spoken => {
  const caution = findStep(scene.dinner, id)?.step.caution;
  return caution === undefined ? silent : fill(caution, scene);
};

/** A step of somebody else's hands is called to them. */
export function forHands(words: Spoken, step: string | undefined, scene: Scene): Spoken {
  const who = scene.plan?.steps.find((one) => one.id === step)?.hands[0];
  return who === undefined || who === 'you' || scene.dinner.helpers.every((one) => one.who !== who)
    ? words
    : capital(say`${who}: ${lower(words)}`);
}
