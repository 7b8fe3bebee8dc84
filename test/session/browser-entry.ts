/** What a browser would load: a session over a journal in memory, cards handed in. */
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Card } from '../../src/kitchen/card.ts';
import { inThisThread } from '../../src/session/compute.ts';
import { openSession } from '../../src/session/session.ts';

export async function firstWords(cards: readonly Card[], at: number): Promise<string> {
  const session = await openSession({
    dinner: 'in a browser',
    journal: openMemoryJournal(),
    compute: {
      ...inThisThread,
      forecast: (question) => inThisThread.forecast({ ...question, members: 32 }),
    },
    cards,
    opening: {
      timeZone: 'America/Chicago',
      units: { temperature: 'F', weight: 'lb' },
      seed: 7,
      language: 'en',
    },
  });
  const turn = await session.hear({
    text: 'seven pound three bone rib roast, dinner at seven for six, medium rare',
    at,
  });
  return turn.replies.map((reply) => reply.text).join('\n');
}
