/** Runs a command of the program within this process, and gives what it printed. */
import { vi } from 'vitest';
import { run } from '../../src/main/program.ts';
import type { Ended } from './program.ts';

export async function ran(words: readonly string[]): Promise<Ended> {
  const printed = { out: '', err: '' };
  const keep = (what: 'out' | 'err') => (text: unknown) => {
    printed[what] += String(text);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation(keep('out')),
    vi.spyOn(process.stderr, 'write').mockImplementation(keep('err')),
  ];
  try {
    const code = await run(words);
    return { code, ...printed };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}
