import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { run } from '../../src/main/program.ts';
import { ended, printed, start } from './program.ts';

let folder: string;
const file = (name: string): string => join(folder, `${name}.session.txt`);
const head = 'start 2026-12-19 13:30 Europe/Dublin\n';
const words = '13:30 > seven pound three bone rib roast, dinner at seven for six, medium rare\n';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rehearse-'));
  writeFileSync(file('good'), `${head}${words}  serving 19:00\n  guests 6\n13:31 restart\n`);
  writeFileSync(file('short'), `${head}${words}  serving 19:30\n  guests 6\n`);
  writeFileSync(file('odd'), `${head}13:30 > hello\n13:40 shout\n`);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('rehearse', () => {
  it('ends with 0 when all hold, straight and with restarts', async () => {
    const straight = await ended(['rehearse', file('good')]);
    expect(straight).toMatchObject({ code: 0, err: '' });
    expect(straight.out).toMatch(/3 held, 0 not\)\n1 hold, 0 fall short\n$/);
    const restarted = await ended(['rehearse', '--restart-every-turn', file('good')]);
    expect(restarted.out).toContain('4 held, 0 not');
  });

  it('ends with 1 when one falls short, and says where, what was wanted and what came', async () => {
    const { code, out } = await ended(['rehearse', file('good'), file('short')]);
    expect(code).toBe(1);
    expect(out).toContain(
      `${file('short')}:3:3: ${words}    - wanted serving 19:30\n    + came   serving 19:00`,
    );
    expect(out).toContain('1 hold, 1 fall short');
  });

  it('shows a long answer by its beginning and its end', async () => {
    writeFileSync(file('long'), `${head}${words}13:31 > the whole plan\n  says /nowhere/\n`);
    const { out } = await ended(['rehearse', file('long')]);
    expect(out).toMatch(/french the bones[\s\S]*\n +… \d+ lines more\n[\s\S]*dinner/);
    expect(out.split('\n').length).toBeLessThan(17);
  });

  it('says the same as JSON', async () => {
    const { code, out } = await ended(['rehearse', '--json', file('short')]);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual({
      scripts: [
        {
          file: file('short'),
          held: 1,
          holds: false,
          failures: [
            {
              file: file('short'),
              line: 3,
              column: 3,
              beneath: words.trim(),
              wanted: 'serving 19:30',
              came: '2026-12-19 19:00',
              amended: 'serving 19:00',
            },
          ],
        },
      ],
      hold: 0,
      fallShort: 1,
    });
  });

  it('ends with 2 when a script cannot be read, with its place and what was expected', async () => {
    const { code, out, err } = await ended(['rehearse', file('good'), file('odd')]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      `${file('odd')}:3:7: expected >, guest>, !, silent, probe, doubled, restart or unanswered\n` +
        '  13:40 shout\n        ^\n',
    );
  });

  it('writes what came where the writer says so, and plays the script again', async () => {
    const path = file('amended');
    copyFileSync(file('short'), path);
    const refused = await ended(['rehearse', '--update', path], 'n\n');
    expect(refused.code).toBe(1);
    expect(readFileSync(path, 'utf8')).toContain('  serving 19:30\n');
    const taken = await ended(['rehearse', '--update', path], 'what\ny\n');
    expect(taken.code).toBe(0);
    expect(taken.out).toContain('1 hold, 0 fall short');
    expect(taken.out.match(/wanted serving 19:30/g)).toHaveLength(1);
    expect(readFileSync(path, 'utf8')).toBe(`${head}${words}  serving 19:00\n  guests 6\n`);
  });

  it('writes a suite a script and a case a line for build servers', async () => {
    const path = join(folder, 'results.xml');
    expect((await ended(['rehearse', '--junit', path, file('good'), file('short')])).code).toBe(1);
    const xml = readFileSync(path, 'utf8');
    expect(xml).toContain('<testsuites name="rehearsal" tests="3" failures="1" skipped="0">');
    expect(xml).toContain('13:30 &gt; seven pound');
    expect(xml.match(/<failure message="wanted serving 19:30">/g)).toHaveLength(1);
    const nowhere = await ended(['rehearse', '--junit', join(folder, 'no', 'x.xml'), file('good')]);
    expect(nowhere.err).toMatch(/cannot be written/);
  });

  it('holds every answer to the budget', async () => {
    const tight = await ended(['rehearse', '--budget', '0.001', file('good')]);
    expect(tight.code).toBe(1);
    expect(tight.out).toMatch(/good\.session\.txt:2:1:\n {4}- wanted an answer within 0\.001 ms/);
    expect((await ended(['rehearse', '--budget', '600000', file('good')])).code).toBe(0);
  });

  it('plays a script again when its file changes', async () => {
    const path = file('watched');
    copyFileSync(file('short'), path);
    const child = start(['rehearse', '--watch', path]);
    await printed(child, /0 hold, 1 fall short\n+Watching/);
    copyFileSync(file('good'), path);
    await printed(child, /1 hold, 0 fall short/);
    const closed = new Promise((resolve) => child.on('close', resolve));
    child.kill('SIGINT');
    expect(await closed).toBe(0);
  });
});

describe('usage', () => {
  it.each([
    [['roast']],
    [['rehearse']],
    [['rehearse', '--loud', 'x']],
    [['rehearse', 'no-such-file']],
    [['log']],
    [['log', 'x', '--as', 'song']],
    [['plan']],
    [['plan', 'no-such-file']],
    [['card', 'new']],
    [['understand', 'this']],
  ])('refuses %j in one sentence that says what to do', async (line) => {
    const out = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    const err = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const code = await run(line);
    const said = err.mock.calls.map(([text]) => String(text)).join('');
    const printed = out.mock.calls.length;
    vi.restoreAllMocks();
    expect({ code, printed }).toEqual({ code: 2, printed: 0 });
    expect(said).toMatch(/^[^\n]+[;,.][^\n]+\.\n$/);
  });

  it('keeps its refusals on stderr, as a process too', async () => {
    const { code, out, err } = await ended(['roast']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^There is no command "roast"; there are help, talk, /);
  });

  it('shows help and version for the program and for a command', async () => {
    for (const line of [['--help'], ['rehearse', '--help'], ['talk', '--help']])
      expect(await ended(line)).toMatchObject({ code: 0, out: expect.stringMatching(/^Usage: /) });
    for (const line of [['--version'], ['plan', '--version']])
      expect(await ended(line)).toMatchObject({ code: 0, out: '0.1.0\n' });
  });
});

describe('plan', () => {
  const dinner = {
    date: '2026-12-19',
    serving: '19:00',
    timeZone: 'Europe/Dublin',
    guests: 6,
    roast: { cut: 'rib-roast', weight: 7, bones: 3 },
  };

  it('prints the day as a table, and as JSON, from YAML or JSON', async () => {
    writeFileSync(join(folder, 'dinner.json'), JSON.stringify(dinner));
    const table = await ended(['plan', join(folder, 'dinner.json')]);
    expect(table).toMatchObject({ code: 0, err: '' });
    // One clock form on the page: twelve hours where the household counts in Fahrenheit.
    expect(table.out).toMatch(/^Table at 7:00, .*for 6, pull at 1\d\d °F/);
    expect(table.out).not.toMatch(/\b1[3-9]:\d\d/);
    expect(table.out).toMatch(/\n\d\d?:\d\d +oven +450 °F/);
    const json = await ended(['plan', '--json', join(folder, 'dinner.json')]);
    expect(JSON.parse(json.out)).toMatchObject({
      serving: { wanted: '2026-12-19T19:00:00+00:00' },
      guests: 6,
    });
  });

  it('names line, column and field of what is wrong, and a card that is not there', async () => {
    const path = join(folder, 'wrong.yaml');
    writeFileSync(
      path,
      'date: 2026-12-19\nserving: 7pm\nguests: 6\nmood: fine\nroast:\n  cut: rib-roast\n',
    );
    const { code, err } = await ended(['plan', path]);
    expect(code).toBe(2);
    expect(err).toBe(
      `${path}:2:10: serving: a time HH:MM, such as "19:00"\n` +
        `${path}:4:7: mood: there is no such field; see roastcall plan --schema\n`,
    );
    writeFileSync(path, JSON.stringify({ ...dinner, dishes: ['moon-cheese'] }));
    expect((await ended(['plan', path])).err).toContain('there is no card "moon-cheese"');
  });

  it('publishes its schema', async () => {
    const schema = JSON.parse((await ended(['plan', '--schema'])).out) as { $schema: string };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });
});
