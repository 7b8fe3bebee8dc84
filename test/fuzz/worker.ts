/** What a thread of the search for trouble does: one random dinner, plain data in and out. */
import { type Broken, randomDinner } from './random-dinner.ts';

export interface Task {
  seed: number;
  turns: number;
}

export default function work({ seed, turns }: Task): Promise<Broken | undefined> {
  return randomDinner(seed, turns);
}
