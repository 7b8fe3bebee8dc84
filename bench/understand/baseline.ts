/**
 * The baseline: @nlpjs/basic, a trainable classifier of the registry, trained on the rules half. It
 * knows one intent a text and no slots, so it is measured by the first intent alone, where the reader
 * is measured by that and by everything.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dockStart } from '@nlpjs/basic';
import type { Row } from '../../test/corpus/load.ts';
import { isPassive } from '../../test/corpus/score.ts';

export interface Judged {
  firstIntentRight: number;
  falseActions: number;
  passive: number;
  all: number;
  milliseconds: readonly number[];
}

const passive = new Set(['unrelated', 'unclear', 'courtesy', 'acknowledge', 'None']);
/** A score under which the classifier is taken not to know; its own default is 0.5. */
const sure = 0.5;

export async function baseline(train: readonly Row[], test: readonly Row[]): Promise<Judged> {
  const quiet = console.log;
  // Training prints every epoch, whatever its settings say.
  console.log = () => undefined;
  try {
    const dock = await dockStart({
      use: ['Basic'],
      autoTrain: false,
      settings: { nlp: { languages: ['en'], autoSave: false, forceNER: false } },
    });
    const nlp = dock.get('nlp');
    nlp.settings.autoSave = false;
    nlp.addLanguage('en');
    for (const row of train) nlp.addDocument('en', row.text, row.heard[0]!.intent);
    await nlp.train();
    const milliseconds: number[] = [];
    let firstIntentRight = 0;
    let falseActions = 0;
    for (const row of test) {
      const start = performance.now();
      const { intent, score } = await nlp.process('en', row.text);
      milliseconds.push(performance.now() - start);
      const said = score < sure ? 'None' : intent;
      const wanted = row.heard[0]!.intent;
      if (isPassive(row)) {
        if (passive.has(said)) firstIntentRight += 1;
        else falseActions += 1;
      } else if (said === wanted) firstIntentRight += 1;
    }
    return {
      firstIntentRight,
      falseActions,
      passive: test.filter(isPassive).length,
      all: test.length,
      milliseconds,
    };
  } finally {
    console.log = quiet;
  }
}

/** Bytes of a package as installed, with the packages of its scope that it brings. */
export function installedBytes(folder: string): number {
  let bytes = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) bytes += installedBytes(path);
    else if (entry.isFile()) bytes += statSync(path).size;
  }
  return bytes;
}

/** What the reader itself brings: the packages its folder imports. */
export function importedBytes(
  sources: string,
  modules: string,
): { bytes: number; names: string[] } {
  const names = new Set<string>();
  const walk = (folder: string): void => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) walk(path);
      else
        for (const [, name] of readFileSync(path, 'utf8').matchAll(/from '([a-z@][^']*)'/g))
          names.add(name!);
    }
  };
  walk(sources);
  return {
    bytes: [...names].reduce((sum, name) => sum + installedBytes(`${modules}/${name}`), 0),
    names: [...names],
  };
}
