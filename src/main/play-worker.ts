/** What a thread of the rehearsal does: one script after another, with the cards that the thread began with. */
import { workerData } from 'piscina';
import type { Card } from '../kitchen/card.ts';
import { type Play, type Played, play } from './play.ts';

// What the pool was made with is what each of its threads is given.
const cards = workerData as readonly Card[];

export default (one: Play): Promise<Played> => play(one, cards);
