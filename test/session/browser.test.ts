import { builtinModules } from 'node:module';
import vm from 'node:vm';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { at, cards } from '../harness/day.ts';

/** Everything below the journal, in one script, as a browser would get it. */
async function bundled(): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      lib: { entry: 'test/session/browser-entry.ts', formats: ['iife'], name: 'roastcall' },
    },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (!output || !('output' in output)) throw new Error('vite built nothing');
  const chunk = output.output[0];
  return chunk.code;
}

describe('the session and all below it', () => {
  it('runs a dinner where there is no Node', { timeout: 120_000 }, async () => {
    const code = await bundled();
    for (const name of builtinModules) expect(code).not.toContain(`from "${name}"`);
    expect(code).not.toMatch(/require\("(node:)?(fs|path|crypto|os)"\)/);
    const sandbox = vm.createContext({ console, performance });
    vm.runInContext(`${code}\nglobalThis.roastcall = roastcall;`, sandbox);
    sandbox.cards = JSON.parse(JSON.stringify(cards));
    sandbox.at = at('13:30');
    const text = await vm.runInContext('roastcall.firstWords(cards, at)', sandbox);
    expect(text).toMatch(/dinner at 7:00/);
  });
});
