import { describe, expect, it } from 'vitest';
import { confusions } from '../../scripts/noise/confusions.ts';
import { arpa } from '../../scripts/noise/language-model.ts';
import { spoken } from '../../scripts/noise/spoken.ts';
import { read } from '../../src/intents/read.ts';
import { noisyRows, outcome } from './noisy.ts';
import { contextOf } from './score.ts';

/** Percent of all clips, just on the safe side of what stands. */
const floors = { right: 40, wrongActions: 29 };

describe('the corpus heard over kitchen noise', () => {
  const outcomes = noisyRows.map((noisy) =>
    outcome(noisy, read(noisy.heard, contextOf(noisy.row))),
  );
  const percent = (wanted: (typeof outcomes)[number]) =>
    (100 * outcomes.filter((one) => one === wanted).length) / outcomes.length;

  it(`is still wholly right on at least ${floors.right} %`, () => {
    expect(noisyRows.length).toBeGreaterThan(450);
    expect(percent('right')).toBeGreaterThanOrEqual(floors.right);
  });

  it(`leads to a wrong action on at most ${floors.wrongActions} %`, () => {
    expect(percent('wrong action')).toBeLessThanOrEqual(floors.wrongActions);
  });
});

describe('what makes the noisy copies', () => {
  it('says figures as a cook would', () => {
    expect(spoken('It reads 104.')).toBe('it reads one oh four');
    expect(spoken('It reads 104.', true)).toBe('it reads a hundred and four');
    expect(spoken('dinner at 6:05, 7 lb, 3.4kg, 52°C')).toBe(
      'dinner at six oh five seven pounds three point four kilos fifty two degrees celsius',
    );
    expect(spoken('fire 🔥')).toBeUndefined();
  });

  it('aligns what was said with what was heard', () => {
    expect(confusions('set it for fifteen minutes', 'set it four fifty minutes')).toEqual([
      { said: 'for', heard: 'four' },
      { said: 'fifteen', heard: 'fifty' },
    ]);
    expect(confusions('not done', 'done')).toEqual([{ said: 'not', heard: '' }]);
    expect(confusions('done', '')).toEqual([{ said: 'done', heard: '' }]);
  });

  it('writes a language model whose chances sum to one after every history', () => {
    const { chance, backOff, words } = parsed(arpa(['it is out', 'it is in', 'the roast is out']));
    const chanceAfter = (history: string[], word: string): number => {
      const known = chance.get([...history, word].join(' '));
      if (known !== undefined || history.length === 0) return known ?? 0;
      return (backOff.get(history.join(' ')) ?? 1) * chanceAfter(history.slice(1), word);
    };
    for (const history of [[], ['it'], ['is'], ['roast', 'is'], ['it', 'is'], ['<s>', 'the']]) {
      const sum = words.reduce((total, word) => total + chanceAfter(history, word), 0);
      expect(sum).toBeCloseTo(1, 2);
    }
  });
});

/** The grams of an ARPA file with their chances and back-off weights, no longer as logarithms. */
function parsed(text: string) {
  const grams = text.split('\n').filter((line) => line.includes('\t'));
  const chance = new Map<string, number>();
  const backOff = new Map<string, number>();
  for (const line of grams) {
    const [log = '', gram = '', weight] = line.split('\t');
    chance.set(gram, 10 ** Number(log));
    if (weight !== undefined) backOff.set(gram, 10 ** Number(weight));
  }
  return { chance, backOff, words: [...chance.keys()].filter((gram) => !gram.includes(' ')) };
}
