/** A dinner of the tests' own, planned with the real cards and the real forecast. */
import { instantOf } from '../../src/base/time.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import { factVersion } from '../../src/kitchen/facts.ts';
import type { Plan, PlannedStep } from '../../src/kitchen/plan.ts';
import { inThisThread, remembering } from '../../src/session/compute.ts';
import { factsOfWritten, type WrittenDinner } from '../../src/session/day.ts';
import { type Outlook, outlookOf } from '../../src/session/outlook.ts';
import type { Compute, Journal, Opening, Session } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';

export const zone = 'America/Chicago';
export const at = (time: string, date = '2026-12-19'): number => instantOf(date, time, zone);

export const { cards } = loadCards([builtInCardsFolder()]);

/** A coarser ensemble than the product's own: these tests are about plans, not about heat. */
export const compute: Compute = remembering({
  ...inThisThread,
  forecast: (question) => inThisThread.forecast({ ...question, members: 48 }),
});

export const opening: Opening = {
  timeZone: zone,
  units: { temperature: 'F', weight: 'lb' },
  seed: 7,
  language: 'en',
};

/** A dinner that can be talked to; several may share its journal. */
export const opened = (journal: Journal = openMemoryJournal()): Promise<Session> =>
  openSession({ dinner: 'd', journal, compute, cards, opening });

export const usualDinner: WrittenDinner = {
  opening,
  now: at('12:00'),
  servingAt: at('19:00'),
  guests: 6,
  roast: { cut: 'rib-roast', kilograms: 3.2, bones: 3 },
  doneness: 'medium-rare',
};

/** Facts with more of them appended, each told at its own instant. */
export function withMore(
  facts: readonly Fact[],
  more: readonly (NewFact & { at: number })[],
): Fact[] {
  return [
    ...facts,
    ...more.map(
      (fact, index): Fact =>
        ({ ...fact, dinner: 'written', position: facts.length + index, v: factVersion }) as Fact,
    ),
  ];
}

export const factsOf = (dinner: Partial<WrittenDinner> = {}): Fact[] =>
  factsOfWritten({ ...usualDinner, ...dinner }, cards);

/** A step that must stand in the plan. */
export function stepOf(plan: Plan, id: string): PlannedStep {
  const step = plan.steps.find((one) => one.id === id);
  if (!step) throw new Error(`no step ${id}`);
  return step;
}

export const lookAt = (facts: readonly Fact[], now: number): Promise<Outlook> =>
  outlookOf('written', facts, now, compute);
