/** What can still be done when something went wrong, in the minutes that are left. */
import { minutesBetween } from '../../base/time.ts';
import { stepIdOf } from '../../kitchen/card.ts';
import { cooksOnFor } from '../../kitchen/circumstances.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';
import { pullWords, tableWords } from './progress.ts';
import { coreNow, isInOven, isResting } from './standing.ts';
import { dishTitle, fill } from './steps.ts';
import { stressWords } from './stress.ts';
import { authorityDegrees, degrees, duration } from './words.ts';

/** The rescue for a trouble; `step` is the dish or step it was told of, if one was named. */
export function rescueWords({ trouble, step, text }: OutcomeOf<'trouble'>, scene: Scene): Spoken {
  const mend = ofTheMeat.has(trouble) ? mendOf(step, text, scene) : undefined;
  if (mend) return sentences([mend, leftWords(scene)]);
  const rescue = rescues[trouble];
  return rescue ? rescue(scene, step) : say`Noted. Tell me what has changed.`;
}

/** Troubles whose general rescue is the meat's: a dish has its own, on its card. */
const ofTheMeat: ReadonlySet<string> = new Set(['overcooked', 'undercooked', 'other']);

/** What the dish's card says of it: the mend that speaks of what was told, else that of the step it stands at. */
function mendOf(about: string | undefined, text: string, scene: Scene): Spoken | undefined {
  const { dinner } = scene;
  const dish = dinner.cards.find((card) => card.id === about?.split('.')[0]);
  if (!dish || dish.card === 'roast') return undefined;
  const told = (text.toLowerCase().match(/[a-z]{4,}/g) ?? [])
    .filter((word) => !dish.names.some((name) => name.includes(word)))
    .map((word) => word.slice(0, 4));
  const steps = dish.steps.filter(({ wrong }) => wrong !== undefined);
  const named = steps.find(({ wrong }) => told.some((stem) => wrong.toLowerCase().includes(stem)));
  const begun = steps.findLast((step) => {
    const record = dinner.steps.get(stepIdOf(dish, step));
    return record?.startedAt !== undefined || record?.doneAt !== undefined;
  });
  const step = named ?? begun;
  return step && fill(step.wrong, scene, step);
}

type Rescue = (scene: Scene, about?: string) => Spoken;

/** How long there is until the table, or nothing once it is laid. */
function minutesLeft({ plan, now, stage }: Scene): number {
  if (!plan || stage === 'served' || stage === 'put-away') return 0;
  return Math.max(0, Math.round(minutesBetween(now, plan.serving.likelyAt)));
}

const leftWords = (scene: Scene): Spoken => {
  const minutes = minutesLeft(scene);
  return minutes < 2 ? silent : say`You have ${duration(minutes)} until dinner.`;
};

/** A whole roast put back gains a few degrees in so many minutes. Common practice, no source. */
const backInMinutes = 15;

const overdone: Rescue = (scene) => {
  const core = coreNow(scene);
  const stands = core
    ? say`The middle is at about ${degrees(core.p50, scene.dinner.units)}.`
    : silent;
  if (isInOven(scene))
    return sentences([
      say`Out with it now, onto a cool board, no foil. Nothing takes heat out again, so stop it here.`,
      stands,
      say`Then slice it thin and soon, with warm juices over it.`,
    ]);
  return sentences([
    say`Nothing takes heat out, so slice it thin, across the grain, and lay the slices in warm juices or gravy.`,
    say`Serve those from the very middle first.`,
    leftWords(scene),
  ]);
};

const underdone: Rescue = (scene) => {
  if (isInOven(scene))
    return sentences([
      say`Then it stays in. Shut the door and give me a reading.`,
      leftWords(scene),
    ]);
  const whole =
    scene.stage !== 'served' && minutesLeft(scene) >= backInMinutes
      ? say`Or put the whole roast back into the oven for ten minutes, and read it again.`
      : silent;
  const careful = cooksOnFor(scene.dinner).map((who) => guestName(who));
  return sentences([
    say`Slices can go back to the heat: half a minute a side in a hot pan, or two minutes in hot gravy.`,
    careful.length > 0
      ? capital(
          say`for ${list(careful)}, until the middle reads ${authorityDegrees(145, scene.dinner.units)}, says the USDA.`,
        )
      : silent,
    whole,
    leftWords(scene),
  ]);
};

const grey: Rescue = () =>
  say`A fresh cut can look grey, and it reddens over some minutes as air reaches it. Wait, and go by the thermometer: what did the middle read?`;

const cold: Rescue = (scene, about) => {
  const dish = scene.dinner.cards.find((card) => card.id === about?.split('.')[0]);
  if (dish && dish.card !== 'roast')
    return sentences([
      dish.card === 'side'
        ? say`Back to the heat with the ${dish.title}: lid on, a spoon of water, stirred, until it steams.`
        : say`Back on a low flame with the ${dish.title}, stirred, until it steams.`,
      leftWords(scene),
    ]);
  return sentences([
    isInOven(scene) || isResting(scene)
      ? say`Foil over it and a folded towel on the foil, by the warm stove.`
      : say`Hot plates, and boiling hot gravy or juices over the slices. Do not roast them again.`,
    say`A cold side goes back with its lid on and a spoon of water, until it steams.`,
    leftWords(scene),
  ]);
};

const salty: Rescue = (scene, about) => {
  const dish = scene.dinner.cards.find((card) => card.id === about?.split('.')[0]);
  const name = dish === undefined ? 'it' : `the ${dishTitle(scene.dinner, dish.id)}`;
  if (dish?.card === 'sauce')
    return sentences([
      say`Stretch ${name} with hot water or unsalted stock, a splash at a time, then a knob of butter or cream to round it.`,
      leftWords(scene),
    ]);
  if (dish?.card === 'side')
    return sentences([
      say`Toss ${name} with more of the same unsalted, or butter and lemon. Water on greens, drained at once, takes some away.`,
      leftWords(scene),
    ]);
  if (dish?.card === 'roast' || about === 'roast')
    return say`The salt sits in the crust. Trim the crust thin, slice thick, and leave the pan juices off.`;
  return sentences([
    say`A sauce takes hot water or unsalted stock, and then butter. Meat loses it with its crust. A side takes butter and lemon.`,
    leftWords(scene),
  ]);
};

const lateSide: Rescue = (scene, about) => {
  const dish = scene.dinner.cards.find((card) => card.id === about?.split('.')[0]);
  const left = minutesLeft(scene);
  const rest = isResting(scene) || isInOven(scene);
  return sentences([
    dish
      ? say`Go on with the ${dishTitle(scene.dinner, dish.id)}; smaller pieces and a hotter oven save minutes.`
      : say`Go on with it; smaller pieces and a hotter oven save minutes.`,
    rest && left > 0
      ? say`There are ${duration(left)} until dinner, and the roast rests well ten minutes more under its foil.`
      : say`Serve the meat, and bring it after.`,
  ]);
};

/** Nobody knows how long it lasts, so the plan says what it counts on. */
const outageWords = (scene: Scene): Spoken =>
  isInOven(scene) ? say`Till then I count on half an hour without heat.` : silent;

const rescues: Partial<Record<string, Rescue>> = {
  'power-out': (scene) =>
    sentences([
      say`Keep the oven shut: it holds its heat for a good while.`,
      say`Tell me when the power is back.`,
      outageWords(scene),
    ]),
  'oven-out': (scene) =>
    sentences([say`Keep the door shut, and tell me when the oven is back.`, outageWords(scene)]),
  'power-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'oven-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'probe-doubt': () =>
    say`Try another spot: from the end, in the middle, clear of bone and fat, and give me the lowest number. In ice water it should read freezing.`,
  smoking: () =>
    say`Open a window, fan on, oven door shut, and turn it down a little. No water on hot fat. If you see flames, tell me.`,
  overcooked: overdone,
  undercooked: underdone,
  grey,
  'gone-cold': cold,
  'too-salty': salty,
  'side-late': lateSide,
  tough: () =>
    say`Slice it thinner, straight across the grain, and lay the slices in hot gravy for a minute.`,
  dropped: () =>
    say`Trim off what touched the floor, sear that face in a hot pan, and go on. What cannot be trimmed goes in the bin.`,
  burnt: (scene) =>
    sentences([
      say`Take out what is burnt, trim it, and lay foil over the rest.`,
      tableWords(scene),
    ]),
  'door-open': (scene) =>
    sentences([say`Door shut again: the oven needs some minutes to recover.`, pullWords(scene)]),
  overwhelmed: stressWords,
};
