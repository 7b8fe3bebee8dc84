import { readdirSync, readFileSync } from 'node:fs';
import { checkSync } from 'recheck';
import { describe, expect, it } from 'vitest';
import { patternOf } from '../../src/intents/phrase.ts';

const folder = new URL('../../src/intents/', import.meta.url);
const textsIn = (at: URL): string[] =>
  readdirSync(at, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? textsIn(new URL(`${entry.name}/`, at))
      : [readFileSync(new URL(entry.name, at), 'utf8')],
  );

const literal =
  /(?:[=(,:&|?!]\s*|return |^\s*)\/(?![*/])((?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+)\/[dgimsuy]*/gm;
/** A repetition within a repetition: the one shape that can take exponential time. */
const nested =
  /\((?:[^()\\]|\\.|\((?:[^()\\]|\\.)*\))*[+*}](?:[^()\\]|\\.|\((?:[^()\\]|\\.)*\))*\)(?:[+*]|\{\d+,)/;

const risky = [
  ...new Set(
    textsIn(folder)
      .flatMap((text) => [...text.matchAll(literal)].map((match) => match[1]!))
      .filter((source) => nested.test(source)),
  ),
];

/** Without looking back and ahead, which the checker does not follow. */
const checkable = (source: string): string =>
  source.replaceAll(/\(\?<?[=!](?:[^()]|\([^()]*\))*\)/g, '').replaceAll(/\(\?<[a-z]+>/g, '(');

/** Texts are cut off at 2,000 characters, so only what grows exponentially can hurt. */
function verdict(source: string): string {
  const found = checkSync(source, source.includes('\\p{') ? 'u' : '', { timeout: 1_500 });
  return found.status === 'vulnerable' ? found.complexity.type : found.status;
}

describe('regular expressions, checked by recheck', () => {
  it('finds the shape that backtracks badly, so that its silence means something', () => {
    expect(verdict('^(a+)+$')).toBe('exponential');
    expect(nested.test('^(a+)+$')).toBe(true);
  });

  it.each(risky)('%s', (source) => {
    expect(verdict(checkable(source))).not.toBe('exponential');
  });

  it.each(['{a:thing} b {c:thing}', '* {a:thing} $', '[@x] {r:rest}', '(a|{b:word}) {n:number} *'])(
    'what the phrase language makes of "%s"',
    (phrase) => {
      const source = patternOf(phrase, { x: '(a|b c|[d] e)' }).regex().source;
      expect(verdict(checkable(source))).not.toBe('exponential');
    },
  );
});
