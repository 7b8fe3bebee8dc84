/** Who is at table, and what was noted of them. */
import type { Scene } from '../scene.ts';
import { list, type Spoken, say } from '../spoken.ts';
import { count } from './words.ts';

export function guestsAnswer(scene: Scene): Spoken {
  const { dinner } = scene;
  if (dinner.guests === undefined) return say`You have not said how many are coming.`;
  const notes = dinner.notes.map(
    (note) => say`${note.who ?? 'one guest'}: ${note.value ?? note.need}`,
  );
  return notes.length === 0
    ? say`${count(dinner.guests)} at table, and nothing noted about any of them.`
    : say`${count(dinner.guests)} at table. Noted: ${list(notes)}.`;
}
