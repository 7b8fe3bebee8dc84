/** Forecasts and plans in threads of their own, so that one dinner never keeps another waiting. */
import { availableParallelism } from 'node:os';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { Compute } from '../session/ports.ts';
import type { Work } from './compute-worker.ts';

export interface ComputePool extends Compute {
  close(): Promise<void>;
}

export function computePool(threads = Math.min(4, availableParallelism())): ComputePool {
  // The same file beside this one, built or not.
  const ending = extname(fileURLToPath(import.meta.url));
  const filename = new URL(`./compute-worker${ending}`, import.meta.url).href;
  // All of them from the start: a cook's first words should not wait for a thread to load.
  const pool = new Piscina({ filename, minThreads: threads, maxThreads: threads });
  // What a worker answers to a kind of question is that kind's answer.
  const run = <Answer>(work: Work): Promise<Answer> => pool.run(work);
  return {
    forecast: (question) => run({ kind: 'forecast', question }),
    plan: (question) => run({ kind: 'plan', question }),
    close: () => pool.destroy(),
  };
}
