import { describe, expect, it } from 'vitest';
import { ended, printed, start } from './program.ts';

const question = {
  roast: { cut: 'rib-roast', pounds: 7.1, bones: 3, startFahrenheit: 42 },
  oven: [
    { minute: 0, fahrenheit: 450 },
    { minute: 20, fahrenheit: 325 },
  ],
  readings: [{ minute: 60, fahrenheit: 71 }],
  now: 66,
  pullFahrenheit: 110,
  rest: 'tented',
};

describe.each([
  ['understand', { text: 'it reads one oh four' }, /^\{"heard":\[\{"intent":"report-reading"/],
  ['forecast', question, /^\{"pull":\{"minute":\{"p10":\d/],
])('%s', (command, asked, answer) => {
  it('answers each line as soon as it is read, a bad one in its place', async () => {
    const child = start([command]);
    for (const [line, wanted] of [
      [JSON.stringify(asked), answer],
      ['{"text":', /^\{"error":/],
      ['{"colour":"red"}', /^\{"error":.*(colour|text|roast)/],
      [JSON.stringify(asked), answer],
    ] as const) {
      // The input stays open: only a line that is answered at once lets the test go on.
      const reply = printed(child, /\n/);
      child.stdin.write(`${line}\n`);
      expect(await reply).toMatch(wanted);
    }
    child.stdin.end();
    expect(await new Promise((resolve) => child.on('close', resolve))).toBe(0);
  });

  it('gives one answer a line, the last without its newline too', async () => {
    const { code, out, err } = await ended(
      [command],
      `${JSON.stringify(asked)}\nnonsense\n${JSON.stringify(asked)}`,
    );
    const kinds = out
      .trimEnd()
      .split('\n')
      .map((line) => 'error' in (JSON.parse(line) as object));
    expect({ code, kinds, err }).toEqual({ code: 0, kinds: [false, true, false], err: '' });
  });
});
