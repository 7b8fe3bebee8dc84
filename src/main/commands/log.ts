/** `roastcall log`: what the journal holds of a dinner, as JSON lines or as a session script. */
import { scriptTextOf } from '../../rehearsal/write.ts';
import { dataFolder, journalOf } from '../household.ts';
import { Refusal } from '../refusal.ts';

export async function logCommand(
  dinner: string,
  options: { as: 'json' | 'script'; data?: string },
): Promise<number> {
  const journal = journalOf(dataFolder(options.data));
  const facts = await journal.read(dinner);
  const dinners = await journal.dinners();
  await journal.close();
  if (facts.length === 0) {
    const known = dinners.slice(0, 5).map((one) => one.id);
    const ask = known.length > 0 ? `the newest are ${known.join(', ')}` : 'there is none yet';
    throw new Refusal(`There is no dinner "${dinner}" in the journal; ${ask}.`, 1);
  }
  const json = facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');
  process.stdout.write(options.as === 'script' ? (scriptTextOf(facts) ?? '') : json);
  return 0;
}
