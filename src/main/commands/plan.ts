/** `roastcall plan`: the day of a dinner that is written down. */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { inThisThread } from '../../session/compute.ts';
import { dayOf, UnknownCard } from '../../session/day.ts';
import { cardsOf, openingOf } from '../household.ts';
import { planFileSchema, readPlanFile } from '../plan-file.ts';
import { planPicture } from '../plan-picture.ts';
import { planTable } from '../plan-table.ts';
import { Refusal } from '../refusal.ts';

export async function planCommand(
  file: string | undefined,
  options: { json?: boolean; svg?: boolean; schema?: boolean; cards?: string },
): Promise<number> {
  if (options.schema) {
    const schema = z.toJSONSchema(planFileSchema, { io: 'input' });
    process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`);
    return 0;
  }
  if (file === undefined)
    throw new Refusal('Name the file of the dinner, or ask for its --schema.', 2);
  const { dinner, faults } = readPlanFile(textOf(file), openingOf(1));
  if (!dinner) {
    for (const { line, column, sentence } of faults)
      process.stderr.write(`${file}:${line}:${column}: ${sentence}\n`);
    return 2;
  }
  try {
    const { view, outlook } = await dayOf(dinner, cardsOf(options.cards), inThisThread);
    if (options.json) process.stdout.write(`${JSON.stringify(view)}\n`);
    else process.stdout.write(options.svg ? planPicture(view, outlook) : planTable(view, outlook));
    return 0;
  } catch (error) {
    if (!(error instanceof UnknownCard)) throw error;
    throw new Refusal(`${file}: there is no card "${error.card}"; name a folder with --cards.`, 2);
  }
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new Refusal(`The file ${file} cannot be opened; check its name.`, 2);
  }
}
