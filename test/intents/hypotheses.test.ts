import { describe, expect, it } from 'vitest';
import { oncePer } from '../../src/base/once.ts';
import { english } from '../../src/intents/en/english.ts';
import { hearingsOf } from '../../src/intents/hear.ts';
import { hypothesesOf, isPlain, likeliest } from '../../src/intents/hypotheses.ts';
import type { Language } from '../../src/intents/language.ts';
import { asHeard, read } from '../../src/intents/read.ts';
import type { Heard } from '../../src/kitchen/heard.ts';
import type { Row } from '../corpus/load.ts';
import { actsFalsely, contextOf, isPassive, right, scoredRows } from '../corpus/score.ts';

const rescoring = english.rescoring!;
const asItStands: Language = { ...english, rescoring: undefined };

const rowOf = (text: string, change: Partial<Row> = {}): Row => ({
  text,
  heard: [{ intent: 'unrelated' }],
  origin: 'typed',
  family: 'hypotheses',
  stage: 'low-roast',
  ...change,
});

function heardBy(language: Language, row: Row) {
  const hearings = hearingsOf(language, row.text, contextOf(row))!;
  const heard = likeliest(language, hearings).flatMap(({ meaning }) => asHeard(meaning, '') ?? []);
  return heard.length > 0 ? heard : [{ intent: 'unrelated' as const, text: '' }];
}

function waysOf(row: Row) {
  const hearings = hearingsOf(english, row.text, contextOf(row))!;
  const first = english.addressed(hearings.asItStands.said);
  return {
    plain: isPlain(rescoring, hearings, first),
    first,
    ways: hypothesesOf(english, rescoring, hearings, first),
  };
}

describe('a text heard in more than one way', () => {
  it('is heard as it stands first, as talk too, and never twice alike', () => {
    for (const text of [
      'spuds went in a moment back and the middle shows 104 what now',
      'Dad rang, twenty late, meat looks fine to me',
      'skip the sauce I burnt the butter just tell me what is next',
    ]) {
      const { first, ways } = waysOf(rowOf(text));
      expect(ways[0]!.placed).toEqual(first);
      const meanings = ways.map(({ placed }) => JSON.stringify(placed.map((one) => one.meaning)));
      expect(new Set(meanings).size).toBe(meanings.length);
      const asTalk = ways.filter(({ placed }) =>
        placed.every(({ meaning }) => meaning.intent === 'unrelated'),
      );
      expect(asTalk).toHaveLength(1);
    }
  });

  it('is left as it stands where phrases explain every word that says something', () => {
    expect(waysOf(rowOf('it reads 104')).plain).toBe(true);
    expect(waysOf(rowOf('turn the page it is lovely and it reads 104')).plain).toBe(false);
  });

  it('keeps an emergency whatever else it may be', () => {
    const text = 'I have cut my hand badly and the potatoes are still in';
    expect(waysOf(rowOf(text)).plain).toBe(true);
    expect(read(text, contextOf(rowOf(text))).map(({ intent }) => intent)).toContain('emergency');
  });

  it('answers what was asked in a few words', () => {
    const row = rowOf('the oven', { expecting: 'choice' });
    const { plain, first } = waysOf(row);
    expect(plain).toBe(first.length > 0);
    expect(heardBy(english, row)).toEqual(heardBy(asItStands, row));
  });
});

describe('the scored half, which taught none of the weights', { timeout: 120_000 }, () => {
  const ways = {
    chosen: oncePer((row: Row) => heardBy(english, row)),
    asItStands: oncePer((row: Row) => heardBy(asItStands, row)),
  };
  type Ways = keyof typeof ways;
  const share = (
    of: readonly Row[],
    how: Ways,
    holds: (row: Row, heard: readonly Heard[]) => boolean,
  ): number => (100 * of.filter((row) => holds(row, ways[how](row))).length) / of.length;

  it('is wholly right more often than as it stands, of several things too', () => {
    const gain = (of: readonly Row[]): number =>
      share(of, 'chosen', right) - share(of, 'asItStands', right);
    expect(gain(scoredRows)).toBeGreaterThan(0.8);
    expect(gain(scoredRows.filter(({ heard }) => heard.length > 1))).toBeGreaterThan(0.8);
  });

  it('acts on overheard talk less often than as it stands', () => {
    const talk = scoredRows.filter(isPassive);
    const falsely = (how: Ways): number => share(talk, how, actsFalsely);
    expect(falsely('chosen')).toBeLessThan(falsely('asItStands') - 1);
  });
});
