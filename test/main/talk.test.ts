import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ended, printed, start } from './program.ts';

let folder: string;
let data: string[];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'talk-'));
  data = ['--data', folder];
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('talk', () => {
  it('goes on with the same dinner after kill -9', async () => {
    const child = start(['talk', '--dinner', 'feast', ...data]);
    await printed(child, /Tell me about dinner/);
    const answered = printed(child, /Roast in .*dinner at 7:00/);
    child.stdin.write(
      'seven pound three bone rib roast, dinner tomorrow at 19:00 for six, medium rare\n',
    );
    await answered;
    const second = await ended(['talk', '--dinner', 'feast', ...data]);
    expect(second).toMatchObject({ code: 1, out: '' });
    expect(second.err).toMatch(/another roastcall/);

    child.kill('SIGKILL');
    await new Promise((resolve) => child.on('close', resolve));
    const again = await ended(['talk', ...data], 'how many guests\n');
    expect(again).toMatchObject({ code: 0, err: '' });
    expect(again.out).toMatch(/Back at your dinner|While I was away/);
    // Where the output is no terminal there is no colour, whatever the environment wishes.
    expect(again.out).not.toContain(String.fromCharCode(27));
    const facts = (await ended(['log', 'feast', ...data])).out.trimEnd().split('\n');
    const told = facts.map((line) => JSON.parse(line) as { type: string; count?: number });
    expect(told.map((fact) => fact.count)).toContain(6);
    expect(told.filter((fact) => fact.type === 'words-heard')).toHaveLength(2);
    expect(readdirSync(join(folder, 'locks'))).toEqual(['feast.lock']);
  });

  it('writes a log that plays the same dinner again', async () => {
    const script = await ended(['log', 'feast', '--as', 'script', ...data]);
    const path = join(folder, 'feast.session.txt');
    writeFileSync(path, script.out);
    expect(script.out).toContain(
      'heard describe-roast, set-serving-time, set-guests, set-doneness',
    );
    expect(await ended(['rehearse', path])).toMatchObject({ code: 0, err: '' });
  });

  it('names the dinners there are when asked for one that is not', async () => {
    const { code, err } = await ended(['log', 'famine', ...data]);
    expect({ code, err }).toEqual({
      code: 1,
      err: 'There is no dinner "famine" in the journal; the newest are feast.\n',
    });
  });
});
