import { ToWords } from 'to-words/en-US';
import { describe, expect, it } from 'vitest';
import type { Dinner } from '../../src/kitchen/dinner.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import {
  aloud,
  clock,
  decimalWords,
  degrees,
  duration,
  numberWords,
} from '../../src/reply/en/words.ts';
import { at, factsOf } from '../harness/day.ts';

const fahrenheit = { temperature: 'F', weight: 'lb' } as const;
const dinner: Dinner = dinnerOf('written', factsOf());

describe('numbers for ears', () => {
  // Against to-words, a general-purpose library from the registry.
  it('agree with to-words from 0 to 999', () => {
    const library = new ToWords();
    for (let value = 0; value < 1000; value += 1)
      expect(numberWords(value)).toBe(
        library
          .convert(value)
          .toLowerCase()
          .replace(/(ty) (?=[a-z])/g, '$1-'),
      );
  });

  it('keep one decimal', () => {
    expect(decimalWords(98.6)).toBe('ninety-eight point six');
    expect(decimalWords(7)).toBe('seven');
  });
});

describe('temperatures, times and durations', () => {
  it('are figures for eyes and words for ears', () => {
    expect(degrees(40, fahrenheit)).toEqual({ text: '104 °F', speech: 'one hundred four degrees' });
    expect(degrees(40, { temperature: 'C', weight: 'kg' }).text).toBe('40 °C');
    expect(duration(90)).toEqual({
      text: '1 hour 30 minutes',
      speech: 'an hour and thirty minutes',
    });
    expect(aloud('held at 170 °F for 20 minutes').speech).toBe(
      'held at one hundred seventy degrees for twenty minutes',
    );
  });

  it.each([
    ['18:00', '6:00', "six o'clock"],
    ['18:10', '6:10', 'ten past six'],
    ['18:45', '6:45', 'quarter to seven'],
    ['18:07', '6:07', 'six oh seven'],
    ['12:30', '12:30', 'half past twelve'],
  ])('%s is %s and %s', (time, text, speech) => {
    expect(clock(at(time), dinner)).toEqual({ text, speech });
  });
});
