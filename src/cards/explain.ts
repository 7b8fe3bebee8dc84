/** A card gone over line by line: each fault under the line it stands in, with what the field is for. */
import { type CardError, pathOf } from './error.ts';
import { meaningOf } from './glossary.ts';
import { checkCard } from './load.ts';

/**
 * The explanation of a card's text: a line of thanks if all is well, or each faulty line with a mark
 * under the place, what is wrong, and what belongs there. `file` is only named, never opened. Errors
 * found elsewhere, such as among the other cards, may be passed in.
 */
export function explainCard(
  text: string,
  file: string,
  others: readonly CardError[] = [],
): { ok: boolean; text: string } {
  const read = checkCard(text, file);
  const errors = [...read.errors, ...others.filter((error) => error.file === file)];
  const fresh = errors.filter(
    (error, index) =>
      errors.findIndex((one) => one.line === error.line && one.sentence === error.sentence) ===
      index,
  );
  if (fresh.length === 0) {
    const steps = read.card?.steps.length ?? 0;
    return { ok: true, text: `${file}: the card "${read.id}" is in order, with ${steps} steps.\n` };
  }
  fresh.sort((a, b) => a.line - b.line || a.column - b.column);
  const lines = text.split('\n');
  const width = String(lines.length).length;
  const parts = fresh.map((error) => {
    const margin = `${String(error.line).padStart(width)} | `;
    const mark = `${' '.repeat(margin.length + error.column - 1)}^ ${error.sentence}`;
    const meaning = meaningOf(pathOf(error.field));
    const about = meaning ? [`${' '.repeat(margin.length)}${error.field}: ${meaning}`] : [];
    return [`${margin}${lines[error.line - 1] ?? ''}`, mark, ...about].join('\n');
  });
  const count = fresh.length === 1 ? 'one thing' : `${fresh.length} things`;
  return { ok: false, text: `${file}: ${count} to mend.\n\n${parts.join('\n\n')}\n` };
}
