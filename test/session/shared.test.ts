/** Two sessions of one dinner on one journal, as two processes have them. */
import { expect, test } from 'vitest';
import { addMinutes } from '../../src/base/time.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Session } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

async function two(): Promise<[Session, Session]> {
  const journal = openMemoryJournal();
  const [one, other] = [await opened(journal), await opened(journal)];
  await one.hear({
    text: 'seven pound rib roast, dinner at seven for six, medium rare',
    at: at('12:00'),
  });
  return [one, other];
}

test('turns taken at once on both are all taken, in one order that both see', async () => {
  const [one, other] = await two();
  const turns = await Promise.all(
    Array.from({ length: 8 }, (_, n) =>
      (n % 2 === 0 ? one : other).hear({ text: 'one more is coming', at: at('12:01') }),
    ),
  );
  expect(turns.map(({ view }) => view.guests).sort()).toEqual([10, 11, 12, 13, 14, 7, 8, 9]);
  const [ours, theirs] = [await one.view(at('12:02')), await other.view(at('12:02'))];
  expect(ours).toEqual(theirs);
  expect(ours.guests).toBe(14);
});

test('the same key on both acts once and answers the same', async () => {
  const [one, other] = await two();
  const words = { text: 'two more are coming', key: 'k', at: at('12:01') };
  const [first, second] = await Promise.all([one.hear(words), other.hear(words)]);
  expect(second.replies).toEqual(first.replies);
  expect((await other.view(at('12:02'))).guests).toBe(8);
});

test('what falls due is raised by one of them, and is marked as delivered by one of them', async () => {
  const [one, other] = await two();
  await one.hear({ text: 'set a timer for two minutes', at: at('12:01') });
  const later = addMinutes(at('12:01'), 3);
  const raised = await Promise.all([one.wake(later), other.wake(later)]);
  const ids = raised.flat().map(({ id }) => id);
  expect(ids.length).toBeGreaterThan(0);
  expect(new Set(ids).size).toBe(ids.length);
  const logged = (await one.facts()).flatMap((fact) =>
    fact.type === 'announced' ? [fact.id] : [],
  );
  expect(ids.sort()).toEqual(logged.sort());
  const marked = await Promise.all([one.delivered(ids, 'page'), other.delivered(ids, 'page')]);
  expect(marked.flat().sort()).toEqual(ids);
});

test('a turn that lost its place tells what it raised before it did', async () => {
  const [one, other] = await two();
  await one.hear({ text: 'set a timer for two minutes', at: at('12:01') });
  const said = at('12:04');
  const turns = await Promise.all(
    [one, other, one, other].map((session) =>
      session.hear({ text: 'one more is coming', at: said }),
    ),
  );
  const told = turns.flatMap(({ announcements }) => announcements.map(({ id }) => id));
  const logged = (await one.facts()).flatMap((fact) =>
    fact.type === 'announced' ? [fact.id] : [],
  );
  expect(told.sort()).toEqual(logged.sort());
  expect(told.length).toBeGreaterThan(0);
});
