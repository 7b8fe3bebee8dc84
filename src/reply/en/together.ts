/** Several outcomes of one utterance told together: steps done in one sentence, dishes in one menu. */
import { menuOf } from '../../kitchen/dinner.ts';
import type { Outcome, OutcomeOf } from '../../kitchen/outcome.ts';
import type { Part } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { besideWords, presumedDishes, uncardedWords } from './menu.ts';
import { doneTold, hasOwnWords, presumedWords } from './progress.ts';
import { dishTitle } from './steps.ts';
import { word } from './wording.ts';
import { degrees } from './words.ts';

/** Each outcome in words, those of one kind gathered where the first of them stands. */
export function wordsTogether(outcomes: readonly Outcome[], scene: Scene): Part[] {
  const done = outcomes.filter((one): one is OutcomeOf<'step-done'> => isPlainDone(one));
  const menu = outcomes.filter(isMenuChange);
  const readings = outcomes.filter(isReading);
  const news = outcomes.some((one) => one.key === 'step-done' && !one.again);
  return outcomes.flatMap((outcome): Part[] => {
    // What was known already goes unsaid beside what is new.
    if (outcome.key === 'step-done' && outcome.again && news) return [];
    if (isPlainDone(outcome)) return outcome === done[0] ? [doneTogether(done, scene)] : [];
    if (isReading(outcome) && readings.length > 1)
      return outcome === readings[0] ? [readingsTogether(readings, scene)] : [];
    if (isMenuChange(outcome)) return outcome === menu[0] ? [menuWords(menu, scene)] : [];
    // What is asked is said, whatever else there is no breath for.
    return [{ ...word(outcome, scene), must: outcome.key === 'asked' }];
  });
}

const isPlainDone = (one: Outcome): one is OutcomeOf<'step-done'> =>
  one.key === 'step-done' && !one.again && !hasOwnWords(one.step);

const isReading = (one: Outcome): one is OutcomeOf<'reading-noted'> => one.key === 'reading-noted';

/** Two spots, or two thermometers: the coldest is the core's, and what follows is said of it alone. */
function readingsTogether(readings: readonly OutcomeOf<'reading-noted'>[], scene: Scene): Spoken {
  const [lowest, ...others] = [...readings].sort((one, other) => one.celsius - other.celsius);
  if (!lowest) return silent;
  const { plan, dinner } = scene;
  const higher = others.map((one) => degrees(one.celsius, dinner.units));
  const both = say`${list(higher)} and ${degrees(lowest.celsius, dinner.units)}`;
  const apart = (others.at(-1)?.celsius ?? 0) - lowest.celsius > apartKelvin;
  const pulling = plan !== undefined && lowest.celsius >= plan.pullCelsius - 0.3;
  return sentences([
    {
      text: say`${both}: the lower is nearer the middle, so I go by it.`.text,
      speech: 'I go by the lower.',
    },
    apart && !pulling
      ? forEyes(say`Look again in a couple of minutes, in the very middle.`)
      : silent,
    word(lowest, scene),
  ]);
}

/** Two spots of one roast so far apart: one of them was not the middle. */
const apartKelvin = 5;

type MenuChange = OutcomeOf<'dish-added' | 'dish-uncarded' | 'dish-dropped' | 'dish-unnamed'>;

const isMenuChange = (one: Outcome): one is MenuChange =>
  one.key === 'dish-added' ||
  one.key === 'dish-uncarded' ||
  one.key === 'dish-dropped' ||
  one.key === 'dish-unnamed';

function doneTogether(done: readonly OutcomeOf<'step-done'>[], scene: Scene): Spoken {
  const steps = done.map((one) => one.step);
  const presumed = done.flatMap((one) => one.presumed).filter((step) => !steps.includes(step));
  return sentences([doneTold(steps, scene), presumedWords([...new Set(presumed)], scene)]);
}

function menuWords(changes: readonly MenuChange[], scene: Scene): Spoken {
  const titles = (key: MenuChange['key']): Spoken[] =>
    changes
      .filter((one) => one.key === key)
      .map((one) => say`${dishTitle(scene.dinner, one.dish)}`);
  const [added, dropped] = [titles('dish-added'), titles('dish-dropped')];
  const uncarded = titles('dish-uncarded');
  const unnamed = titles('dish-unnamed');
  const menu = menuOf(scene.dinner);
  const butters = menu.filter((card) => card.card === 'butter');
  const first = changes.some(
    (one) => one.key === 'dish-added' && butters.some((card) => card.id === one.dish),
  );
  return sentences([
    added.length > 0 ? capital(say`${list(added)}, noted.`) : silent,
    dropped.length > 0 ? capital(say`${list(dropped.map((title) => say`no ${title}`))}.`) : silent,
    unnamed.length > 0 ? say`Without ${list(unnamed)}, then; say if you want any.` : silent,
    uncarded.length > 0 ? uncardedWords(uncarded, scene) : silent,
    scene.firstPlan
      ? silent
      : unnamed.length > 0
        ? forEyes(besideWords(scene.dinner))
        : besideWords(scene.dinner),
    changes.length > 1 && !scene.firstPlan ? presumedDishes(scene.dinner) : silent,
    first && butters.length > 1 ? say`That makes two butters: which one goes?` : silent,
  ]);
}
