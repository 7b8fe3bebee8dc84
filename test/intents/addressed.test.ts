import { describe, expect, it } from 'vitest';
import { likelihoodOf } from '../../src/intents/addressed.ts';
import { gateOf } from '../../src/intents/en/gate.ts';
import { read } from '../../src/intents/read.ts';
import { contextOf, rulesRows } from '../corpus/score.ts';

const context = contextOf(rulesRows[0]!);

describe('whether a text is said to the helper', () => {
  it('adds the weights of its cues; an unknown cue says nothing', () => {
    const weights = new Map([
      ['a', 2],
      ['b', -2],
    ]);
    expect(likelihoodOf(['a', 'b', 'z'], weights)).toBe(0.5);
    expect(likelihoodOf(['a'], weights)).toBeGreaterThan(0.88);
    expect(likelihoodOf(['b'], weights)).toBeLessThan(0.12);
  });

  it('lets nothing but an emergency through where all speaks against it', () => {
    const gate = gateOf(() => 'c', new Map([['always', -9]]));
    const said = (intent: 'emergency' | 'report-done') => ({
      line: 'x ',
      quantities: [],
      clauses: [],
      opinions: [],
      context,
      placed: [
        {
          meaning: intent === 'emergency' ? { intent, kind: 'fire' as const } : { intent },
          tokens: [],
        },
      ],
    });
    expect(gate(said('report-done')).map((one) => one.meaning.intent)).toEqual(['unrelated']);
    expect(gate(said('emergency')).map((one) => one.meaning.intent)).toEqual(['emergency']);
  });

  it.each(['it reads 104', 'the roast is out', 'dinner at seven', 'fire'])('hears "%s"', (text) => {
    expect(read(text, context)[0]!.intent).not.toMatch(/^un/);
  });
});
