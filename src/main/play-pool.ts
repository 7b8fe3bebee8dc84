/** Session scripts played side by side, as many at a time as there are processors. */
import { availableParallelism } from 'node:os';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { Card } from '../kitchen/card.ts';
import { type Play, type Played, play } from './play.ts';

/** Fewer scripts than this are played sooner than a thread has loaded. */
const worthThreads = 3;

/** What came of each, in the order in which they were given. */
export async function playAll(
  plays: readonly Play[],
  cards: readonly Card[],
  threads = availableParallelism(),
): Promise<Played[]> {
  if (threads < 2 || plays.length < worthThreads) {
    const played: Played[] = [];
    for (const one of plays) played.push(await play(one, cards));
    return played;
  }
  // The same file beside this one, built or not.
  const ending = extname(fileURLToPath(import.meta.url));
  const filename = new URL(`./play-worker${ending}`, import.meta.url).href;
  const pool = new Piscina<Play, Played>({ filename, maxThreads: threads, workerData: cards });
  try {
    return await Promise.all(plays.map((one) => pool.run(one)));
  } finally {
    await pool.destroy();
  }
}
