import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fc, test as property } from '@fast-check/vitest';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { explainCard } from '../../src/cards/explain.ts';
import { fieldNames, glossary } from '../../src/cards/glossary.ts';
import { builtInCardsFolder, cardErrorLine, checkCard, loadCards } from '../../src/cards/load.ts';
import { cardKinds, idOfTitle, newCardText } from '../../src/cards/new.ts';
import { cardSchema, comesWith, stepApplies } from '../../src/kitchen/card.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cards-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const side = newCardText('side', 'Squash');
const put = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

/** Line and column, from 1, of the first place the mark stands. */
function placeOf(text: string, mark: string): { line: number; column: number } {
  const offset = text.indexOf(mark);
  expect(offset, `"${mark}" should stand in the text`).toBeGreaterThanOrEqual(0);
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

describe('loading', () => {
  test('every card that comes with the program loads', () => {
    const { cards, errors } = loadCards([builtInCardsFolder()]);
    expect(errors.map(cardErrorLine)).toEqual([]);
    expect(cards.length).toBeGreaterThanOrEqual(25);
  });

  test("a cook's card replaces the built-in one of the same id, and new ones are added", () => {
    put('beans.yaml', newCardText('side', 'Green beans'));
    put('swede.yml', newCardText('side', 'Swede'));
    put('notes.txt', 'not a card');
    const { cards, errors } = loadCards([builtInCardsFolder(), folder]);
    expect(errors).toEqual([]);
    const beans = cards.filter((card) => card.id === 'green-beans');
    expect(beans).toHaveLength(1);
    expect(beans[0]?.steps.map((step) => step.id)).toEqual(['prepare', 'in', 'finish']);
    expect(cards.map((card) => card.id)).toContain('swede');
  });

  test('a broken card is left out, with the one it meant to replace, and the others load', () => {
    const file = put('beans.yaml', newCardText('side', 'Green beans').replace('right:', 'rihgt:'));
    const { cards, errors } = loadCards([builtInCardsFolder(), folder]);
    expect(errors.every((error) => error.file === file)).toBe(true);
    expect(cards.some((card) => card.id === 'green-beans')).toBe(false);
    expect(cards.some((card) => card.id === 'roast-potatoes')).toBe(true);
  });

  test('two cards of one id in a folder are refused, the second by name', () => {
    put('a.yaml', side);
    const second = put('b.yaml', side);
    const { cards, errors } = loadCards([folder]);
    expect(cards).toHaveLength(1);
    expect(errors).toMatchObject([{ file: second, field: 'id' }]);
    expect(errors[0]?.sentence).toContain('a.yaml');
  });

  test('a step of a dish that is not there is named, with a guess', () => {
    const text = side.replace('step: prepare', 'step: herb-buter.beat');
    put('a.yaml', text);
    const { errors, cards } = loadCards([builtInCardsFolder(), folder]);
    expect(errors).toMatchObject([
      { ...placeOf(text, 'step: herb-buter'), field: 'steps[1].after[0].step' },
    ]);
    expect(errors[0]?.sentence).toContain('did you mean "herb-butter"');
    expect(cards.some((card) => card.id === 'squash')).toBe(false);
  });

  test('a dish is usual with the roasts it names, and with none that there is no card of', () => {
    const lamb = side.replace('usual: false', 'usual: [leg-of-lamb]');
    put('a.yaml', lamb);
    const { cards } = loadCards([builtInCardsFolder(), folder]);
    const squash = cards.find((card) => card.id === 'squash');
    expect(squash?.card === 'side' && comesWith(squash, 'leg-of-lamb')).toBe(true);
    expect(squash?.card === 'side' && comesWith(squash, 'rib-roast')).toBe(false);
    const text = side.replace('usual: false', 'usual: [leg-of-lamb, rib-rost]');
    put('a.yaml', text);
    const { errors } = loadCards([builtInCardsFolder(), folder]);
    expect(errors).toMatchObject([{ line: placeOf(text, 'usual:').line, field: 'usual[1]' }]);
    expect(errors[0]?.sentence).toContain('did you mean "rib-roast"');
  });

  test('a folder that is not there is an error, not a throw', () => {
    const { cards, errors } = loadCards([join(folder, 'nowhere')]);
    expect(cards).toEqual([]);
    expect(errors).toHaveLength(1);
  });
});

const roast = newCardText('roast', 'Sirloin');
/** What is changed, where it is marked, which field is named, and what the sentence says. */
const broken: [string, string, string, string, string, string, RegExp][] = [
  // title, kind, from, to, mark, field, sentence
  ['an unknown field', side, 'serves:', 'servs:', 'servs:', 'servs', /did you mean "serves"/],
  [
    'a unit in a number',
    side,
    'amount: 150',
    'amount: 150g',
    'amount:',
    'ingredients[0].amount',
    /number/,
  ],
  [
    'an unknown choice',
    side,
    'per: guest',
    'per: person',
    'per:',
    'ingredients[0].per',
    /guest.*bone/,
  ],
  ['an unknown unit', side, 'unit: g', 'unit: grams', 'unit:', 'ingredients[0].unit', /tbsp/],
  [
    'an unknown allergen',
    side,
    'allergens: []',
    'allergens: [diary]',
    'diary',
    'ingredients[0].allergens[0]',
    /not an allergen/,
  ],
  [
    'a missing field',
    side,
    'right: Say',
    '# right: Say',
    'id: prepare',
    'steps[0].right',
    /missing/,
  ],
  [
    'falling minutes',
    side,
    '[5, 8, 12]',
    '[8, 5, 12]',
    'minutes: [8',
    'steps[0].minutes',
    /rising/,
  ],
  ['an id in capitals', side, 'id: squash', 'id: Squash', 'id: Squash', 'id', /lower-case/],
  [
    'falling oven heat',
    side,
    'highFahrenheit: 425',
    'highFahrenheit: 225',
    'oven:',
    'steps[1].oven',
    /rise/,
  ],
  [
    'usual with something that is no list',
    side,
    'usual: false',
    'usual: beef',
    'usual: beef',
    'usual',
    /true, false or a list of ids of roasts/,
  ],
  [
    'a step that is not there',
    side,
    'step: prepare',
    'step: preper',
    'step: preper',
    'steps[1].after[0].step',
    /did you mean "prepare"/,
  ],
  [
    'a step after itself',
    side,
    'step: prepare',
    'step: in',
    'step: in',
    'steps[1].after[0].step',
    /itself/,
  ],
  ['a step named twice', side, 'id: finish', 'id: in', '', 'steps[2].id', /already/],
  [
    'a window upside down',
    side,
    'earliestMinutes: -15',
    'earliestMinutes: 15',
    'ends:',
    'steps[1].ends',
    /rise/,
  ],
  [
    "the roast's own step",
    side,
    'id: prepare',
    'id: carve',
    'id: carve',
    'steps[0].id',
    /roast's own/,
  ],
  [
    'a placeholder unknown',
    side,
    'In it goes:',
    '{ovenTemprature}:',
    '',
    'steps[1].call',
    /did you mean "ovenTemperature"/,
  ],
  [
    'another kind of card',
    side,
    'card: side',
    'card: soup',
    'card: soup',
    'card',
    /roast, side, sauce or butter/,
  ],
  ['a roast without a pull', roast, '- id: pull', '- id: pulling', 'steps:', 'steps', /"pull"/],
  [
    'a roast seared last without its sear',
    roast,
    '- id: sear\n',
    '- id: seer\n',
    'steps:',
    'steps',
    /sear-last needs a step "sear"/,
  ],
  [
    'a rest that falls with weight',
    roast,
    'toKilograms: 1.8',
    'toKilograms: 18',
    '',
    'restMinutes[1]',
    /light to heavy/,
  ],
  [
    'an oven-down for every method',
    roast,
    'only: [sear-first]',
    'skippable: false',
    'id: oven-down',
    'steps[2].id',
    /only: \[sear-first\]/,
  ],
  [
    'percentages',
    roast,
    'water: 0.67',
    'water: 67',
    'composition:',
    'shape.composition',
    /fractions of one/,
  ],
  [
    'a ring of steps',
    roast,
    '    after:\n      - step: oven-on\n',
    '    after:\n      - step: put-away\n',
    '',
    'steps[1].after',
    /in turn/,
  ],
];

describe('errors name the line, the column and the field', () => {
  test.each(broken)('%s', (_title, kind, from, to, mark, field, sentence) => {
    expect(kind).toContain(from);
    const text = kind.replace(from, to);
    const { errors } = checkCard(text, 'mine.yaml');
    const error = errors.find((one) => one.field === field);
    expect(error, errors.map(cardErrorLine).join('\n')).toBeDefined();
    expect(error?.sentence).toMatch(sentence);
    if (mark) expect(error).toMatchObject(placeOf(text, mark));
    expect(cardErrorLine(error!)).toMatch(/^mine\.yaml:\d+:\d+ /);
  });

  test('tools: a need undeclared, a way round for a tool not needed', () => {
    const text = side.replace(
      '    how:',
      '    needs: [whisk]\n    without: [{ tool: fork, call: by hand, extraMinutes: 1 }]\n    how:',
    );
    const fields = checkCard(text, 'mine.yaml').errors.map((error) => error.field);
    expect(fields).toEqual(['steps[0].needs[0]', 'steps[0].without[0].tool']);
  });

  test.each([
    ['a tab', 'card: side\n\tid: x\n', 2],
    ['a colon in plain words', 'card: side\nid: x\ntitle: this: that\n', 3],
    ['a quote left open', 'card: side\nid: "x\n', 2],
    ['a field twice', 'card: side\nid: x\nid: y\n', 3],
  ])('writing that is not YAML: %s', (_title, text, line) => {
    const { errors, card } = checkCard(text, 'mine.yaml');
    expect(card).toBeUndefined();
    expect(errors).toHaveLength(1);
    expect(Math.abs((errors[0]?.line ?? 0) - line)).toBeLessThanOrEqual(1);
  });

  test('an empty file, a list and a word are errors at the first line', () => {
    for (const text of ['', '- a\n', 'beans'])
      expect(checkCard(text, 'mine.yaml').errors).toMatchObject([{ line: 1, column: 1 }]);
  });
});

describe('a card of one’s own', () => {
  test.each(cardKinds)('a fresh %s is in order and says what each field is for', (kind) => {
    const text = newCardText(kind, "Nan's Best 1-Pot");
    const { errors, card } = checkCard(text, 'mine.yaml');
    expect(errors.map(cardErrorLine)).toEqual([]);
    expect(card?.card).toBe(kind);
    expect(card?.id).toBe('nans-best-1-pot');
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(110);
    expect(text).toContain(glossary.hands);
  });

  test('any title makes an id', () => {
    expect(idOfTitle('Crème fraîche potatoes')).toBe('creme-fraiche-potatoes');
    expect(idOfTitle('50/50 mash')).toBe('mash');
    expect(idOfTitle('?!')).toBe('my-card');
  });

  test('a broken card is explained under the line that is wrong', () => {
    const text = side.replace('hands: start', 'hands: always');
    const { ok, text: explained } = explainCard(text, 'mine.yaml');
    expect(ok).toBe(false);
    const lines = explained.split('\n');
    const at = lines.findIndex((line) => line.includes('hands: always'));
    expect(lines[at]).toContain(`${placeOf(text, 'hands: always').line} |`);
    const caret = lines[at + 1] ?? '';
    expect(caret.indexOf('^')).toBe(lines[at]?.indexOf('hands'));
    expect(caret).toContain('throughout, start or none');
    expect(lines[at + 2]).toContain(glossary.hands);
  });

  test('a card in order is told so', () => {
    expect(explainCard(side, 'mine.yaml')).toEqual({
      ok: true,
      text: 'mine.yaml: the card "squash" is in order, with 3 steps.\n',
    });
  });

  test('every field of the schema has its sentence, and no sentence is without its field', () => {
    const names = new Set<string>();
    const walk = (node: unknown): void => {
      if (Array.isArray(node)) node.forEach(walk);
      else if (typeof node === 'object' && node !== null)
        for (const [key, value] of Object.entries(node)) {
          if (key === 'properties')
            for (const name of Object.keys(value as object)) names.add(name);
          walk(value);
        }
    };
    walk(z.toJSONSchema(cardSchema));
    expect([...names].sort()).toEqual([...fieldNames].sort());
  });
});

test('a step bound to a method or to bones applies only there', () => {
  const dinner = { method: 'sear-first', boneless: false } as const;
  expect(stepApplies({}, dinner)).toBe(true);
  expect(stepApplies({ only: ['sear-first', 'steady'] }, dinner)).toBe(true);
  expect(stepApplies({ only: ['sear-last'] }, dinner)).toBe(false);
  expect(stepApplies({ only: ['bone-in'] }, dinner)).toBe(true);
  expect(stepApplies({ only: ['boneless'] }, dinner)).toBe(false);
  expect(stepApplies({ only: ['sear-last', 'bone-in'] }, dinner)).toBe(false);
  expect(stepApplies({ only: ['boneless'] }, { method: 'steady', boneless: true })).toBe(true);
});

const whole = readFileSync(join(builtInCardsFolder(), 'batter-puddings.yaml'), 'utf8');

property.prop([fc.nat(whole.length), fc.nat(60), fc.string({ maxLength: 12 })], { numRuns: 300 })(
  'a card damaged anywhere never throws, and each error stands inside it',
  (at, cut, instead) => {
    const text = whole.slice(0, at) + instead + whole.slice(at + cut);
    const lines = text.split('\n').length;
    for (const error of checkCard(text, 'mine.yaml').errors) {
      expect(error.line).toBeGreaterThanOrEqual(1);
      expect(error.line).toBeLessThanOrEqual(lines + 1);
      expect(error.sentence.length).toBeGreaterThan(10);
    }
    expect(explainCard(text, 'mine.yaml').text.length).toBeGreaterThan(10);
  },
);

test('an alias that names nothing is a mistake at its place, not a crash', () => {
  const text = whole.replace(/minutes: \[.*\]/, 'minutes: *nowhere');
  const [error, ...others] = checkCard(text, 'mine.yaml').errors;
  expect(others).toEqual([]);
  expect(error?.line).toBe(text.split('\n').findIndex((line) => line.includes('*nowhere')) + 1);
  expect(error?.sentence).toMatch(/star/);
});

test('a bracket left open is told where it opens, not where the next field begins', () => {
  const lines = ['card: side', 'id: x', 'names: [beans, string beans', 'title: beans'];
  const { text } = explainCard(lines.join('\n'), 'x.yaml');
  expect(text).toMatch(/one thing to mend/);
  expect(text).toMatch(/^3 \| names: \[beans/m);
  expect(text).toMatch(/not closed/);
});

test('a tab is told once, without the nonsense that it makes of the lines below', () => {
  const lines = [
    'card: side',
    'steps:',
    '  - id: in',
    '\t title: put it in',
    '    call: In.',
    '    done: in',
  ];
  const { text } = explainCard(lines.join('\n'), 'x.yaml');
  expect(text).toMatch(/one thing to mend/);
  expect(text).toMatch(/a tab; use spaces/);
});
