import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScript } from '../../src/rehearsal/parse.ts';
import { faultSentence, type Script } from '../../src/rehearsal/script.ts';

const head = 'start 2026-12-19 13:30 America/Chicago\n';

function scriptOf(text: string): Script {
  const { script, fault } = parseScript(text, 'a.session.txt');
  if (!script) throw new Error(faultSentence(fault));
  return script;
}

const faultOf = (text: string): string => {
  const { fault } = parseScript(text, 'a.session.txt');
  return fault ? faultSentence(fault) : 'read';
};

const iso = (at: number): string => new Date(at).toISOString();

describe('what a script says', () => {
  it('reads the heading, in the units of the script', () => {
    const script = scriptOf(
      `# a supper\n\n${head}units C kg\nseed 7\nkitchen seed=9 kilograms=3.2 bones=3 core=5 oven=-8 # cool\n13:30 > hello\n`,
    );
    expect(iso(script.startAt)).toBe('2026-12-19T19:30:00.000Z');
    expect(script).toMatchObject({
      timeZone: 'America/Chicago',
      units: { temperature: 'C', weight: 'kg' },
      seed: 7,
      kitchen: { seed: 9, kilograms: 3.2, bones: 3, coreCelsius: 5, ovenBiasKelvin: -8 },
    });
  });

  it('turns Fahrenheit and pounds of the kitchen into SI, a bias without the offset', () => {
    const { kitchen } = scriptOf(`${head}kitchen pounds=10 core=41 oven=-18\n13:30 > hello\n`);
    expect(kitchen?.kilograms).toBeCloseTo(4.5359237, 7);
    expect(kitchen?.coreCelsius).toBeCloseTo(5, 9);
    expect(kitchen?.ovenBiasKelvin).toBeCloseTo(-10, 9);
  });

  it('reads every kind of line', () => {
    const { lines } = scriptOf(
      `${head}13:30 > one # two\n13:31:05 guest> three\n13:40 ! pull\n13:40..13:50 ! side-in\n` +
        '14:00 silent # so far\n14:01 restart\nunanswered 3m\n14:10 unanswered 1h30m10s\n' +
        'day 2026-12-20\n00:10 > four\n',
    );
    expect(lines.map((line) => [iso(line.at).slice(5, 19), line.deed.kind])).toEqual([
      ['12-19T19:30:00', 'says'],
      ['12-19T19:31:05', 'says'],
      ['12-19T19:40:00', 'announced'],
      ['12-19T19:50:00', 'announced'],
      ['12-19T20:00:00', 'silent'],
      ['12-19T20:01:00', 'restart'],
      ['12-19T20:04:00', 'unanswered'],
      ['12-19T21:40:10', 'unanswered'],
      ['12-20T06:10:00', 'says'],
    ]);
    expect(lines[0]?.deed).toEqual({ kind: 'says', who: 'cook', text: 'one # two' });
    expect(lines[3]?.deed).toMatchObject({ from: Date.parse('2026-12-19T19:40:00Z') });
  });

  it('opens a window over midnight on the day before', () => {
    const { lines } = scriptOf(`${head}day 2026-12-20\n23:50..00:10 ! carve\n`);
    const [line] = lines;
    expect(line?.deed).toMatchObject({ from: (line?.at ?? 0) - 20 * 60_000 });
  });

  it('knows the zone on the day the clocks change', () => {
    const { lines } = scriptOf(
      'start 2026-11-01 00:30 America/Chicago\n00:30 > before\n03:00 > after\n',
    );
    expect((lines[1]?.at ?? 0) - (lines[0]?.at ?? 0)).toBe(3.5 * 3_600_000);
  });

  it('reads every check', () => {
    const { lines } = scriptOf(
      `${head}13:30 > hello\n` +
        '  heard set-guests, affirm\n  only courtesy\n  stage low-roast\n  serving 19:30 ±5\n' +
        '  serving 2026-12-20 00:10\n  guests 6\n  says /fridge|\\/counter/i\n  silent-on /x/ # no\n' +
        '  asks nothing\n  oven 170..250\n  pull 110\n  core -2.5..3\n  options 2\n' +
        '  option 1 serving 19:20..19:40 core 122..130\n  option 2 core 120\n' +
        '  step roast-potatoes.in due\n  caution /usda/\n  sides roast-potatoes in-oven\n' +
        '  view serving.wanted=2026 # all of it\n  view steps[0].id = oven-on\n',
    );
    const demands = (lines[0]?.checks ?? []).map((check) => check.demand);
    expect(demands).toEqual([
      { verb: 'heard', intents: ['set-guests', 'affirm'] },
      { verb: 'only', intents: ['courtesy'] },
      { verb: 'stage', stage: 'low-roast' },
      { verb: 'serving', time: '19:30', withinMinutes: 5 },
      { verb: 'serving', date: '2026-12-20', time: '00:10', withinMinutes: 0 },
      { verb: 'guests', count: 6 },
      { verb: 'says', pattern: /fridge|\/counter/i },
      { verb: 'silent-on', pattern: /x/i },
      { verb: 'asks', what: 'nothing' },
      { verb: 'oven', range: { low: 170, high: 250 } },
      { verb: 'pull', range: { low: 109.5, high: 110.5 } },
      { verb: 'core', range: { low: -2.5, high: 3 } },
      { verb: 'options', count: 2 },
      {
        verb: 'option',
        n: 1,
        serving: { from: '19:20', to: '19:40' },
        core: { low: 122, high: 130 },
      },
      { verb: 'option', n: 2, core: { low: 119.5, high: 120.5 } },
      { verb: 'step', id: 'roast-potatoes.in', state: 'due' },
      { verb: 'caution', pattern: /usda/i },
      { verb: 'sides', id: 'roast-potatoes', state: 'in-oven' },
      { verb: 'view', path: ['serving', 'wanted'], value: '2026 # all of it' },
      { verb: 'view', path: ['steps', '0', 'id'], value: 'oven-on' },
    ]);
  });
});

describe('what a script may not say', () => {
  it.each([
    ['', '1:1: expected "start'],
    ['13:30 > hello', '1:1: expected "start'],
    [head, '2:1: expected at least one line'],
    ['start 2026-02-30 13:30 UTC', '1:7: expected a date of the calendar'],
    ['start 2026-12-19 25:30 UTC', '1:18: expected a time'],
    ['start 2026-12-19 13:30 Atlantis/Deep', '1:24: expected a time zone'],
    [`${head}units K lb`, '2:7: expected the unit of temperature: F, C'],
    [`${head}oven 325`, '2:1: expected a time HH:MM, "units"'],
    [`${head}13:30 says hello`, '2:7: expected >, guest>'],
    [`${head}13:30 >`, '2:8: expected what is said'],
    [`${head}13:30 ! pulled`, '2:9: expected the kind of an announcement: get-ready'],
    [`${head}13:30 ! pull now`, '2:14: expected the end of the line'],
    [`${head}13:30 > hi\n13:29 > ho`, '3:1: expected a time not before 13:30 of 2026-12-19'],
    [`${head}13:30 > hi\nday 2026-12-18`, '3:5: expected the same day or a later one'],
    [`${head}  stage prep`, '2:1: expected a line with a time'],
    [`${head}13:30 > hi\n  mood good`, '3:3: expected a check: heard'],
    [`${head}13:30 > hi\n  heard hello`, '3:9: expected an intent'],
    [`${head}13:30 > hi\n  stage frying`, '3:9: expected a stage: planning'],
    [`${head}13:30 > hi\n  oven 250..170`, '3:13: expected an upper end of 250'],
    [`${head}13:30 > hi\n  says fridge`, '3:8: expected a regular expression'],
    [`${head}13:30 > hi\n  says /(/`, '3:8: expected a regular expression that can be read'],
    [`${head}13:30 > hi\n  guests six`, '3:10: expected how many guests'],
    [`${head}13:30 > hi\n  option 1`, '3:11: expected "serving HH:MM'],
    [`${head}13:30 > hi\n  view paused`, '3:8: expected a path'],
    [`${head}13:30 silent\n  heard affirm`, '3:3: expected "heard" under a line on which'],
    [`${head}13:30 > it reads {core}`, '2:18: expected a "kitchen" line above'],
    [`${head}kitchen pounds=7\n13:30 > it reads {peak}`, '3:18: expected {core} or {oven}'],
    [`${head}kitchen bones=7\n13:30 > hi`, '2:16: expected pounds= or kilograms='],
    [`${head}kitchen pounds=7 colour=3`, '2:18: expected each once'],
    [`${head}13:30 > hi\nseed 4`, '3:1: expected "seed" above the first line'],
    [`${head}unanswered soon`, '2:12: expected how long'],
  ])('%j', (text, sentence) => {
    expect(faultOf(text)).toContain(`a.session.txt:${sentence}`);
  });

  it('holds for every script in the folder of unparsable ones, at the place each names', () => {
    const folder = join(import.meta.dirname, '../../transcripts-synthetic/unparsable');
    const names = readdirSync(folder);
    expect(names.length).toBeGreaterThan(5);
    for (const name of names) {
      const text = readFileSync(join(folder, name), 'utf8');
      const place = /^# refused at (\d+:\d+)$/m.exec(text)?.[1];
      const { fault } = parseScript(text, name);
      expect(`${name} ${fault?.line}:${fault?.column}`).toBe(`${name} ${place}`);
    }
  });

  it('is total: any text is a script or a fault inside of it', () => {
    const word = fc.constantFrom(
      ...[
        '13:30',
        '>',
        '!',
        'pull',
        'start',
        '2026-12-19',
        'UTC',
        'heard',
        '  ',
        '..',
        '±',
        '/',
        '#',
      ],
      ...['unanswered', '3m', 'view', 'a=b', 'kitchen', 'pounds=', '{core}', 'option', '1', 'day'],
    );
    const row = fc.array(word, { maxLength: 6 }).map((words) => words.join(' '));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 6 }), fc.boolean(), (rows, started) => {
        const text = (started ? head : '') + rows.join('\n');
        const { script, fault } = parseScript(text, 'a');
        if (script) return;
        expect(fault.line).toBeLessThanOrEqual(text.split('\n').length);
        expect(fault.column).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
