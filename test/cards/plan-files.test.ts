/**
 * Every card in a written dinner, alone and in a full one, planned with the real forecast as `roastcall
 * plan` does: the file is read, the day is planned, and each step of the card has its place in it.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { type Card, comesWith, stepApplies, stepIdOf } from '../../src/kitchen/card.ts';
import type { View } from '../../src/kitchen/view.ts';
import { readPlanFile } from '../../src/main/plan-file.ts';
import { dayOf } from '../../src/session/day.ts';
import { compute } from '../harness/day.ts';
import { ended } from '../main/program.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const usualWith = (cut: string): string[] =>
  cards.filter((card) => card.card !== 'roast' && comesWith(card, cut)).map((card) => card.id);

/** A plan file, as a cook would write it. */
const written = (cut: string, dishes: readonly string[]): string => `
date: 2026-12-19
serving: "19:00"
timeZone: America/Chicago
from: { time: "10:00" }
guests: 6
roast: { cut: ${cut}, weight: 6.5 }
doneness: medium-rare
dishes: [${dishes.join(', ')}]
helpers: [Sam]
`;

async function planned(cut: string, dishes: readonly string[]): Promise<View> {
  const { dinner, faults } = readPlanFile(written(cut, dishes), { timeZone: 'America/Chicago' });
  expect(faults).toBeUndefined();
  return (await dayOf(dinner!, cards, compute)).view;
}

/** The steps of a card that such a dinner has, but the reading, which the forecast calls for. */
function stepsOf(card: Card, dishes: readonly string[]): string[] {
  const onMenu = new Set(dishes);
  return card.steps
    .filter((step) => stepApplies(step, { method: 'sear-first', boneless: false }))
    .filter((step) =>
      (step.after ?? []).every(
        ({ step: before }) => !before.includes('.') || onMenu.has(before.split('.')[0] ?? ''),
      ),
    )
    .map((step) => stepIdOf(card, step))
    .filter((id) => id !== 'check');
}

describe.each(cards.map((card) => [card.id, card] as const))('%s', (id, card) => {
  const alone = card.card === 'roast' ? [] : [id];
  const cut = card.card === 'roast' ? id : 'rib-roast';
  test.each([
    ['alone', alone],
    ['in a full dinner', [...new Set([...usualWith(cut), ...alone])]],
  ])('is planned from its file, %s', async (_title, dishes) => {
    const view = await planned(cut, dishes);
    const starts = new Map(view.steps.map((step) => [step.id, step.start]));
    for (const step of stepsOf(card, dishes)) expect([...starts.keys()]).toContain(step);
    // A step begins no sooner than the one written above it, unless it says what it waits for.
    for (const [index, step] of card.steps.entries()) {
      const before = card.steps[index - 1];
      const [from, to] = [
        before && starts.get(stepIdOf(card, before)),
        starts.get(stepIdOf(card, step)),
      ];
      if (card.card !== 'roast' && step.after === undefined && from && to)
        expect(from <= to, `${before?.id} before ${step.id}`).toBe(true);
    }
    expect(view.serving.likely?.slice(0, 16), 'at the hour wanted').toBe('2026-12-19T19:00');
  });
});

test('the command prints such a day as a table', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'roastcall-plan-'));
  const file = join(folder, 'dinner.yaml');
  writeFileSync(file, written('pork-loin', ['potato-gratin', 'braised-red-cabbage', 'pan-gravy']));
  const { code, out, err } = await ended(['plan', file]);
  rmSync(folder, { recursive: true });
  expect(err).toBe('');
  expect(code).toBe(0);
  for (const words of [/put the gratin in/, /put the cabbage on/, /strain and season the gravy/])
    expect(out).toMatch(words);
});

test('a first course and guests at the door keep their own time in a file', async () => {
  const clocks = 'guestsArrive: "18:00"\nfirstCourse: "18:30"\n';
  const { dinner } = readPlanFile(`${written('rib-roast', [])}${clocks}`, {
    timeZone: 'America/Chicago',
  });
  const { serving } = (await dayOf(dinner!, cards, compute)).view;
  expect(serving.guestsArrive?.slice(11, 16)).toBe('18:00');
  expect(serving.firstCourse?.slice(11, 16)).toBe('18:30');
  expect(serving.likely?.slice(11, 16)).toBe('19:00');
});
