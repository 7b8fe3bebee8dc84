/** `roastcall log`: what the journal holds of a dinner, as JSON lines or as a session script. */
import { scriptTextOf } from '../../rehearsal/write.ts';
import { factsOf } from '../household.ts';

export async function logCommand(
  dinner: string,
  options: { as: 'json' | 'script'; data?: string },
): Promise<number> {
  const facts = await factsOf(dinner, options.data);
  const json = facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');
  process.stdout.write(options.as === 'script' ? (scriptTextOf(facts) ?? '') : json);
  return 0;
}
