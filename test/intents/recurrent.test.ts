/**
 * The network in TypeScript against PyTorch, which learnt it: a general-purpose reference from the registries
 * (the cases in recurrent-reference.json are its answers with the same rounded weights, written by
 * scripts/train-recurrent.py). And one worked out by hand.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { recurrentWeights } from '../../src/intents/en/recurrent-weights.ts';
import { networkFrom, type WrittenNetwork } from '../../src/intents/recurrent.ts';
import type { Intent } from '../../src/kitchen/heard.ts';

const reference = z
  .object({
    cases: z.array(
      z.object({
        words: z.array(z.object({ stem: z.string(), word: z.string(), kind: z.string() })),
        cues: z.array(z.string()),
        likeliest: z.string(),
        likelihood: z.number(),
      }),
    ),
  })
  .parse(JSON.parse(readFileSync(new URL('./recurrent-reference.json', import.meta.url), 'utf8')));

describe('the network as it was learnt', () => {
  const network = networkFrom(recurrentWeights);

  it.each(
    reference.cases.map((one) => [one.words.map(({ stem }) => stem).join(' '), one] as const),
  )('takes "%s" for what PyTorch takes it for', (_, { words, cues, likeliest, likelihood }) => {
    const likely = network.likelihoods(words, cues)!;
    expect(likely[network.intents.indexOf(likeliest as Intent)]).toBeCloseTo(likelihood, 3);
  });

  it('gives likelihoods that add up to one, and none for no words', () => {
    const likely = network.likelihoods([{ stem: 'qwertz', word: 'qwertz', kind: '' }], [])!;
    expect(likely.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    expect(network.likelihoods([], ['paused'])).toBeUndefined();
  });

  it('hears the order of words', () => {
    const word = (stem: string) => ({ stem, word: stem, kind: '' });
    const [first, second] = [
      ['is', 'it', 'in'],
      ['it', 'is', 'in'],
    ].map((words) => network.likelihoods(words.map(word), ['stage:prep', 'asked:']));
    expect(first).not.toEqual(second);
  });
});

/** Letters of six bits: "A" is the lowest number of the range, "_" the highest; twelve bits take two. */
const [low, high] = ['AA', '__'];

describe('a network of one unit worked out by hand', () => {
  // D = H = 1, two intents, no situation. "up" is 1, anything else -1. Every pre-activation is the word's own
  // number times 1 (fresh) and times -1 (keep), forward and backward alike.
  const middle = 'f_'; // as near to nought as an odd number of steps allows
  const taps = [
    ...[middle, middle, middle, middle],
    ...[high, high, low, low],
    ...[middle, middle, middle, middle],
  ].join('');
  const tiny: WrittenNetwork = {
    depth: 1,
    width: 1,
    intents: 'help undo',
    cues: 'none',
    stems: { high: 1, text: '? A\nup _' },
    words: { high: 1, text: '' },
    kinds: { high: 1, text: '' },
    taps: { high: 1, text: taps },
    bias: { high: 1, text: middle.repeat(4) },
    situation: { high: 1, text: middle.repeat(4) },
    // The first intent counts the greatest of the forward reading, the second nothing.
    outward: { high: 1, text: [high, middle, middle, middle, ...Array(4).fill(middle)].join('') },
    direct: { high: 1, text: middle.repeat(4) },
  };

  it('keeps and lets go as the equations say', () => {
    // "up": fresh 1/(1+1) = 0.5; keep = -1/6 + 0.5 = 1/3; state = 2/3 × 0.5 = 1/3.
    // then "?": fresh -0.5; keep = 1/6 + 0.5 = 2/3; state = 2/3 × 1/3 - 1/3 × 0.5 = 1/18. The greatest is 1/3.
    const words = ['up', 'down'].map((stem) => ({ stem, word: '', kind: '' }));
    const [help] = networkFrom(tiny).likelihoods(words, [])!;
    expect(help).toBeCloseTo(1 / (1 + Math.exp(-1 / 3)), 2);
  });

  it('takes an unknown stem for any unknown stem', () => {
    const of = (stem: string) => networkFrom(tiny).likelihoods([{ stem, word: '', kind: '' }], []);
    expect(of('never-said')).toEqual(of('nor-this'));
    expect(of('up')).not.toEqual(of('nor-this'));
    // Known as "?", which is -1: fresh -0.5, kept 2/3, so -1/6.
    expect(of('nor-this')![0]).toBeCloseTo(1 / (1 + Math.exp(1 / 6)), 2);
  });
});
