/** So many open dinners with a roast, an hour and a plan, written straight into a journal. */
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Journal } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';

/** Told once; every dinner then has the same words and a seed and an hour of its own. */
async function toldOnce(now: number): Promise<Fact[]> {
  const { cards } = loadCards([builtInCardsFolder()]);
  const opening = {
    timeZone: 'UTC',
    units: { temperature: 'F' as const, weight: 'lb' as const },
    seed: 5,
    language: 'en',
  };
  const journal = openMemoryJournal();
  const session = await openSession({
    dinner: 'd',
    journal,
    compute: inThisThread,
    cards,
    opening,
  });
  await session.hear({ text: 'seven pound rib roast, for six, medium rare', at: now });
  await session.hear({ text: 'dinner in five hours', at: now });
  return session.facts();
}

export async function roasts(journal: Journal, count: number): Promise<string[]> {
  const now = Date.now();
  const facts = await toldOnce(now);
  const ids: string[] = [];
  for (let n = 0; n < count; n += 1) {
    const id = `roast-${n}`;
    ids.push(id);
    await journal.append(
      id,
      0,
      now,
      facts.map((fact) => ofDinner(fact, n)),
    );
  }
  return ids;
}

function ofDinner(
  { dinner: _, position: __, at: ___, v: ____, ...fact }: Fact,
  n: number,
): NewFact {
  const one = fact as NewFact;
  if (one.type === 'dinner-opened') return { ...one, seed: n + 1 };
  if (one.type === 'serving-time-set')
    return { ...one, servingAt: one.servingAt + (n % 90) * 60_000 };
  return one;
}
