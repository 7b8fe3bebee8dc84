/** One dinner from one journal to another, as it was told: the same facts in the same places. */
import type { Fact, NewFact } from '../kitchen/facts.ts';
import type { Journal } from '../session/ports.ts';
import { JournalTrouble } from './trouble.ts';

/**
 * Copies what is not there yet, so a copy that was cut off goes on; gives how many facts that were.
 * Throws JournalTrouble when something else is there.
 */
export async function copyDinner(from: Journal, to: Journal, dinner: string): Promise<number> {
  const facts = await from.read(dinner);
  const there = await to.read(dinner);
  if (!sameFacts(facts.slice(0, there.length), there)) throw other(dinner);
  for (let held = there.length; held < facts.length; ) {
    const turn = toldAtOnce(facts, held);
    await to.append(dinner, held, turn[0]?.at ?? 0, turn.map(withoutPlace));
    held += turn.length;
  }
  if (!sameFacts(await to.read(dinner), facts)) throw other(dinner);
  return facts.length - there.length;
}

/** An append has one instant for all its facts. */
function toldAtOnce(facts: readonly Fact[], from: number): Fact[] {
  const end = facts.findIndex((fact, n) => n > from && fact.at !== facts[from]?.at);
  return facts.slice(from, end === -1 ? undefined : end);
}

function withoutPlace({ dinner: _, position: __, at: ___, v: ____, ...fact }: Fact): NewFact {
  return fact as NewFact;
}

const sameFacts = (one: readonly Fact[], other: readonly Fact[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

const other = (dinner: string): JournalTrouble =>
  new JournalTrouble(
    'other-dinner',
    `Another dinner ${dinner} is there already; nothing of it was changed. Copy to an empty place, or erase that one.`,
  );
