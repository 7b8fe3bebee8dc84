/** What came of rehearsals, in the XML that build servers read: a suite a script, a case a line. */
import Builder from 'fast-xml-builder';
import type { Failure, Rehearsal } from './run.ts';
import type { Script } from './script.ts';

export interface PlayedScript {
  script: Script;
  rehearsal: Rehearsal;
  /** How long each line waited for its answer, by its number in the file. */
  answerMilliseconds: ReadonlyMap<number, number>;
}

export function junitXml(played: readonly PlayedScript[]): string {
  const suites = played.map(suiteOf);
  const sum = (key: '@tests' | '@failures' | '@skipped'): number =>
    suites.reduce((total, suite) => total + suite[key], 0);
  const builder = new Builder({
    ignoreAttributes: false,
    attributeNamePrefix: '@',
    format: true,
  });
  return builder.build({
    '?xml': { '@version': '1.0', '@encoding': 'UTF-8' },
    testsuites: {
      '@name': 'rehearsal',
      '@tests': sum('@tests'),
      '@failures': sum('@failures'),
      '@skipped': sum('@skipped'),
      testsuite: suites,
    },
  });
}

function suiteOf({ script, rehearsal, answerMilliseconds }: PlayedScript) {
  const { lines, file } = script;
  const cases = lines.map((line, index) => {
    const until = lines[index + 1]?.line ?? Number.POSITIVE_INFINITY;
    const failures = rehearsal.failures.filter((one) => line.line <= one.line && one.line < until);
    return {
      '@classname': file,
      '@name': legible(`${line.line}: ${line.text}`),
      '@time': seconds(answerMilliseconds.get(line.line) ?? 0),
      ...(index >= rehearsal.played ? { skipped: '' } : {}),
      ...(failures.length > 0 ? { failure: failures.map(failureOf) } : {}),
    };
  });
  const waits = lines.map((line) => answerMilliseconds.get(line.line) ?? 0);
  return {
    '@name': file,
    '@tests': cases.length,
    '@failures': cases.filter((one) => one.failure !== undefined).length,
    '@skipped': cases.filter((one) => one.skipped !== undefined).length,
    '@time': seconds(waits.reduce((total, one) => total + one, 0)),
    testcase: cases,
  };
}

const failureOf = ({ file, line, column, wanted, came }: Failure) => ({
  '@message': legible(`wanted ${wanted}`),
  '#text': legible(`${file}:${line}:${column}: wanted ${wanted}, came ${came}`),
});

const seconds = (milliseconds: number): string => (milliseconds / 1000).toFixed(3);

/** Characters that XML 1.0 does not allow, in no escape either. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const unwritable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

const legible = (text: string): string => text.replace(unwritable, '\ufffd');
