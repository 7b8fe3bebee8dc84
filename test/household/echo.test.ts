/** One sentence, several microphones. Windows are common practice, no source. */
import { expect, test } from 'vitest';
import { Echoes, unnamed } from '../../src/household/echo.ts';

/** Says words at instants; gives what each got and how often the house acted. */
async function said(
  ...words: [at: number, device: string, text: string, key?: string][]
): Promise<{ answers: string[]; acted: number }> {
  let ticks = 0;
  let acted = 0;
  const echoes = new Echoes<string>(() => ticks);
  const answers: string[] = [];
  for (const [at, device, text, key] of words) {
    ticks = at;
    answers.push(
      await echoes.once({ text, device, key }, async () => {
        acted += 1;
        return `answer ${acted}`;
      }),
    );
  }
  return { answers, acted };
}

test('two named devices within three seconds are one sentence, whatever the recogniser writes round it', async () => {
  const heard = await said([0, 'hall', 'It reads 104.'], [2_900, 'kitchen', 'it reads  104']);
  expect(heard).toEqual({ answers: ['answer 1', 'answer 1'], acted: 1 });
});

test.each([
  ['later', [0, 'hall', 'done'], [3_100, 'kitchen', 'done']],
  ['other words', [0, 'hall', 'it reads 104'], [100, 'kitchen', 'it reads 140']],
  ['a decimal point', [0, 'hall', 'it reads 10.4'], [100, 'kitchen', 'it reads 104']],
  ['the same device, later', [0, 'hall', 'done'], [1_600, 'hall', 'done']],
  ['numbered by the sender', [0, 'hall', 'done', '1'], [100, 'hall', 'done', '2']],
  ['no names, one after the other', [0, unnamed, 'done'], [100, unnamed, 'done']],
] as const)('%s: two sentences', async (_, first, second) => {
  expect((await said([...first], [...second])).acted).toBe(2);
});

test('a device that repeats itself at once is heard once', async () => {
  expect((await said([0, 'hall', 'done'], [400, 'hall', 'done'])).acted).toBe(1);
});

test('while the first is being answered, the same words are the same sentence from anywhere', async () => {
  let acted = 0;
  let answer: (words: string) => void = () => undefined;
  const echoes = new Echoes<string>(() => 0);
  const hear = (): Promise<string> => {
    acted += 1;
    return new Promise((resolve) => {
      answer = resolve;
    });
  };
  const all = Array.from({ length: 5 }, () => echoes.once({ text: 'done', device: unnamed }, hear));
  answer('yes');
  expect([await Promise.all(all), acted]).toEqual([Array(5).fill('yes'), 1]);
});

test('words that failed to be heard may be said again at once', async () => {
  const echoes = new Echoes<string>(() => 0);
  const words = { text: 'done', device: 'hall' };
  await expect(echoes.once(words, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await echoes.once(words, async () => 'yes')).toBe('yes');
});
