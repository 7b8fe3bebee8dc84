/** `roastcall card`: a fresh card of one's own, and what is wrong with one. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { explainCard } from '../../cards/explain.ts';
import { type CardKind, idOfTitle, newCardText } from '../../cards/new.ts';
import { Refusal } from '../refusal.ts';

/** Writes the card to a file beside the cook, never over one that is there. */
export async function newCardCommand(
  kind: CardKind,
  title: string,
  options: { print?: boolean },
): Promise<number> {
  const text = newCardText(kind, title);
  if (options.print) {
    process.stdout.write(text);
    return 0;
  }
  const file = `${idOfTitle(title)}.yaml`;
  if (existsSync(file))
    throw new Refusal(`${file} is there already; move it away or choose another title.`, 1);
  writeFileSync(file, text, { flag: 'wx' });
  process.stdout.write(`Wrote ${file}; fill it in, then: roastcall card check ${file}\n`);
  return 0;
}

export async function checkCardCommand(files: readonly string[]): Promise<number> {
  let code = 0;
  for (const file of files) {
    if (!existsSync(file))
      throw new Refusal(`The card ${file} cannot be opened; check its name.`, 2);
    const { ok, text } = explainCard(readFileSync(file, 'utf8'), file);
    (ok ? process.stdout : process.stderr).write(text.endsWith('\n') ? text : `${text}\n`);
    if (!ok) code = 1;
  }
  return code;
}
