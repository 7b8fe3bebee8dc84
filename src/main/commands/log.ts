/** `roastcall log`: what the journal holds of a dinner, as JSON lines or as a session script. */
import { scriptTextOf } from '../../rehearsal/write.ts';
import { factsOf } from '../household.ts';
import { type Place, withStore } from '../place.ts';
import { home } from '../store.ts';

export async function logCommand(
  dinner: string,
  options: Place & { as: 'json' | 'script' },
): Promise<number> {
  const facts = await withStore(options, (store) => factsOf(dinner, store.journal(home)));
  const json = facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');
  process.stdout.write(options.as === 'script' ? (scriptTextOf(facts) ?? '') : json);
  return 0;
}
