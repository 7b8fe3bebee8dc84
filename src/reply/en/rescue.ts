/** What can still be done when something went wrong. */
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { pullWords, tableWords } from './progress.ts';
import { coreNow, currentStepOf, nextStepOf } from './standing.ts';
import { degrees } from './words.ts';

export const troubleWords: Record<string, (scene: Scene) => Spoken> = {
  'power-out': () =>
    sentences([
      say`Keep the oven shut: it holds its heat for a good while.`,
      say`Tell me when the power is back.`,
    ]),
  'oven-out': () => say`Keep the door shut, and tell me when the oven is back.`,
  'power-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'oven-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'probe-doubt': () =>
    say`Try another spot: from the end, in the middle, clear of bone and fat, and give me the lowest number. In ice water it should read freezing.`,
  smoking: () =>
    say`Open a window and pour a cup of water into the pan, door shut again quickly. If you see flames, tell me.`,
  overcooked: (scene) => {
    const core = coreNow(scene);
    return sentences([
      core
        ? say`It stands at about ${degrees(core.p50, scene.dinner.units)}, so all is not lost.`
        : say`All is not lost.`,
      say`Out now, no tent, slice it soon and thin, with warm juices over it.`,
    ]);
  },
  undercooked: () =>
    say`Nothing is lost: slices go back, half a minute a side in a hot pan, or the whole roast into the oven. Take a reading and tell me.`,
  dropped: () => say`Rinse nothing: trim what touched the floor, sear it again hot, and go on.`,
  burnt: (scene) =>
    sentences([
      say`Take out what is burnt, trim it, and lay foil over the rest.`,
      tableWords(scene),
    ]),
  'door-open': (scene) =>
    sentences([say`Door shut again: the oven needs some minutes to recover.`, pullWords(scene)]),
  overwhelmed: (scene) => {
    const current = currentStepOf(scene) ?? nextStepOf(scene);
    return sentences([
      say`One thing at a time; the roast does most of it by itself.`,
      current ? say`Just this now: ${current.title}.` : silent,
    ]);
  },
};
