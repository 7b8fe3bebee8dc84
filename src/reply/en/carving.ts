/** The carving map: which slices go to whom, from what was noted of the guests. */
import { cooksOnFor } from '../../kitchen/circumstances.ts';
import type { GuestNote } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';

/** From the ends inward: what is done first, what is pink last, what stays whole. Empty: no notes. */
export function carvingMap(scene: Scene): Spoken {
  const { notes } = scene.dinner;
  const done = whoWants(notes, /well/);
  const pink = whoWants(notes, /rare/);
  const own = cooksOnFor(scene.dinner).map((who) => guestName(who));
  const later = namesOf(notes.filter((note) => note.need === 'comes-later'));
  const meatless = namesOf(
    notes.filter((note) => note.need === 'diet' && /^(veg|pesc)/.test(note.value ?? '')),
  );
  return sentences([
    done.length > 0 ? say`Ends first, for ${list(done)}.` : silent,
    pink.length > 0 ? say`From the middle for ${list(pink)}.` : silent,
    own.length > 0 ? capital(say`for ${list(own)} only what was cooked on.`) : silent,
    later.length > 0 ? say`Leave whole what is for ${list(later)}.` : silent,
    meatless.length > 0 ? say`No slice for ${list(meatless)}.` : silent,
  ]);
}

/** Guests who asked for such a doneness; "medium" is the middle of the roast and nobody's wish. */
const whoWants = (notes: readonly GuestNote[], doneness: RegExp): Spoken[] =>
  namesOf(notes.filter((note) => note.need === 'doneness' && doneness.test(note.value ?? '')));

const namesOf = (notes: readonly GuestNote[]): Spoken[] => notes.map((note) => guestName(note.who));
