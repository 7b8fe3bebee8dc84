/**
 * Several things in one breath: whatever a kitchen says singly is put together in any order, with the
 * stops a typist writes and without them, as recognisers write. The sentences are the project's own; what
 * is checked is that a thing said among others means what it means alone.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import type { Heard, Intent } from '../../src/kitchen/heard.ts';
import type { Row } from '../corpus/load.ts';
import { contextOf } from '../corpus/score.ts';

/** What is said and what it means; of one kind a breath holds one. */
type Part = readonly [text: string, meaning: { intent: Intent } & Record<string, unknown>];

interface Scene {
  name: string;
  context: Partial<Row>;
  kinds: readonly (readonly Part[])[];
  /** A question may end a breath. */
  questions: readonly Part[];
}

const numbered = (
  frames: readonly string[],
  values: readonly (readonly [string, unknown])[],
  meaning: (value: unknown) => Part[1],
): Part[] =>
  frames.flatMap((frame) =>
    values.map(([said, value]): Part => [frame.replace('#', said), meaning(value)]),
  );

const next: Part = ["what's next", { intent: 'ask-next' }];
const onTime: Part = ['how are we doing', { intent: 'ask-status' }];

const planning: Scene = {
  name: 'before it begins',
  context: { stage: 'planning' },
  kinds: [
    numbered(
      ["we're having a #", "it's a #", "I've got a #", 'doing a #', '#'],
      [
        ['rib roast', 'rib-roast'],
        ['leg of lamb', 'leg-of-lamb'],
        ['pork loin', 'pork-loin'],
        ['fillet of beef', 'tenderloin'],
        ['topside', 'top-round'],
      ],
      (cut) => ({ intent: 'describe-roast', cut }),
    ),
    numbered(
      [
        '# of us',
        '# people',
        '# guests',
        'there are # of us',
        '# coming',
        'serving #',
        'feeding #',
      ],
      [
        ['five', 5],
        ['eight', 8],
        ['10', 10],
      ],
      (count) => ({ intent: 'set-guests', count }),
    ),
    numbered(
      ['dinner at #', 'eating at #', 'on the table at #', 'we eat at #', 'ready for #'],
      [
        ['seven', '19:00'],
        ['half past six', '18:30'],
        ['7pm', '19:00'],
        ['18:30', '18:30'],
      ],
      (time) => ({ intent: 'set-serving-time', time }),
    ),
    numbered(
      ['#', 'we like it #', 'cooked #', 'I want it #'],
      [
        ['rare', 'rare'],
        ['medium rare', 'medium-rare'],
        ['well done', 'well-done'],
      ],
      (doneness) => ({ intent: 'set-doneness', doneness }),
    ),
  ],
  questions: [],
};

const preparing: Scene = {
  name: 'while it is made ready',
  context: { stage: 'prep' },
  kinds: [
    [
      ['the roast is tied', { intent: 'report-done', step: 'truss' }],
      ["I've tied it", { intent: 'report-done', step: 'truss' }],
    ],
    [
      ['bones are scraped', { intent: 'report-done', step: 'french' }],
      ["I've scraped the bones", { intent: 'report-done', step: 'french' }],
    ],
    [
      ["it's seasoned", { intent: 'report-done', step: 'season' }],
      ["I've salted it", { intent: 'report-done', step: 'season' }],
      ['the meat is salted', { intent: 'report-done', step: 'season' }],
    ],
    [
      ["oven's on", { intent: 'report-oven', state: 'on' }],
      ["I've turned the oven on", { intent: 'report-oven', state: 'on' }],
    ],
    [
      ["I haven't got a rack", { intent: 'lack', thing: 'rack' }],
      ["there's no twine", { intent: 'lack', thing: 'twine' }],
    ],
    [['Sam is helping', { intent: 'add-hands', who: 'sam' }]],
    [
      [
        'the kids are eating at five',
        { intent: 'note-guest', who: 'kids', need: 'eats-at', value: '17:00' },
      ],
      [
        'dad wants his well done',
        { intent: 'note-guest', who: 'dad', need: 'doneness', value: 'well-done' },
      ],
      [
        'my sister is vegetarian',
        { intent: 'note-guest', who: 'sister', need: 'diet', value: 'vegetarian' },
      ],
    ],
    [["we'll have roast potatoes", { intent: 'add-dish', dish: 'roast-potatoes' }]],
  ],
  questions: [next, onTime],
};

const roasting: Scene = {
  name: 'while it roasts',
  context: { stage: 'low-roast', dishes: ['roast-potatoes', 'pan-gravy'] },
  kinds: [
    numbered(
      [
        'it reads #',
        "it's at #",
        '# in the middle',
        "we're at #",
        "the roast's at #",
        'probe says #',
      ],
      [
        ['96', 96],
        ['104', 104],
        ['112', 112],
      ],
      (temperature) => ({ intent: 'report-reading', temperature }),
    ),
    numbered(
      ["oven's at #", 'turned the oven down to #', "I've put the oven up to #"],
      [
        ['250', 250],
        ['325', 325],
      ],
      (temperature) => ({ intent: 'report-oven', temperature }),
    ),
    [
      ['the potatoes are in', { intent: 'report-started', step: 'roast-potatoes.in' }],
      ["I've put the potatoes in", { intent: 'report-started', step: 'roast-potatoes.in' }],
      ['the potatoes are out', { intent: 'report-out', what: 'roast-potatoes' }],
      ['spuds are in', { intent: 'report-started', step: 'roast-potatoes.in' }],
    ],
    numbered(
      ['guests are late #', "they're running # late", "they'll be # late"],
      [
        ['half an hour', 30],
        ['45 minutes', 45],
      ],
      (minutes) => ({ intent: 'shift-serving', minutes }),
    ),
    numbered(
      ['set a timer for #', 'timer for #', '# on the timer', 'start a # timer'],
      [
        ['ten minutes', 10],
        ['five minutes', 5],
      ],
      (minutes) => ({ intent: 'set-timer', minutes }),
    ),
    [
      ['two more are coming', { intent: 'set-guests', change: 2 }],
      ['the first guests are here', { intent: 'report-guests', state: 'partly-arrived' }],
    ],
  ],
  questions: [next, onTime],
};

/** The same sequence every time (Numerical Recipes' constants). */
function dice(seed: number): <T>(from: readonly T[]) => T {
  let state = seed;
  return (from) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return from[Math.floor((state / 2 ** 32) * from.length)]!;
  };
}

function breathOf(scene: Scene, stops: readonly string[], pick: ReturnType<typeof dice>) {
  const kinds = [...scene.kinds];
  const parts: Part[] = [];
  for (let left = pick([2, 3]); left > 0; left--) {
    const [kind] = kinds.splice(kinds.indexOf(pick(kinds)), 1);
    parts.push(pick(kind!));
  }
  if (scene.questions.length > 0 && pick([true, false, false])) parts.push(pick(scene.questions));
  const text = parts.map(([said], at) => (at === 0 ? said : `${pick(stops)}${said}`)).join('');
  return { text, meanings: parts.map(([, meaning]) => meaning) };
}

/** What is told, without the words, where it was measured and what a timer is called. */
const plain = (one: Heard): string =>
  JSON.stringify(
    Object.entries(one)
      .filter(([slot]) => !/^(text|where|label)$/.test(slot))
      .sort(([a], [b]) => a.localeCompare(b)),
  );

const blank: Row = { text: '', heard: [], origin: 'typed', family: 'breath' };

describe.each([planning, preparing, roasting])('$name', (scene) => {
  it.each([
    ['with stops', [', ', ' and ', '. ', ', and ']],
    ['without', [' ']],
  ])('each thing is heard among others, %s', (_, stops) => {
    const pick = dice(1);
    const breaths = Array.from({ length: 300 }, () => breathOf(scene, stops, pick));
    const amiss = breaths.filter(({ text, meanings }) => {
      const heard = read(text, contextOf({ ...blank, ...scene.context, text }));
      const wanted = meanings.map((meaning) => plain({ text: '', ...meaning } as Heard)).sort();
      return JSON.stringify(heard.map(plain).sort()) !== JSON.stringify(wanted);
    });
    const share = 1 - amiss.length / breaths.length;
    expect(share, amiss.map(({ text }) => text).join('\n')).toBeGreaterThan(0.95);
  });
});
