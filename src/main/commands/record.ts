/** `roastcall record`: a dinner's record as a page, in Markdown, with its drawing in SVG. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { recordPage } from '../../reply/en/record.ts';
import { recordChart } from '../../reply/en/record-chart.ts';
import { inThisThread } from '../../session/compute.ts';
import { recordOf } from '../../session/record.ts';
import { factsOf } from '../household.ts';
import { type Place, withStore } from '../place.ts';
import { Refusal } from '../refusal.ts';
import { home } from '../store.ts';

export async function recordCommand(
  dinner: string,
  options: Place & { to?: string },
): Promise<number> {
  const facts = await withStore(options, (store) => factsOf(dinner, store.journal(home)));
  const record = await recordOf(dinner, facts, inThisThread);
  if (options.to === undefined) {
    process.stdout.write(recordPage(record));
    return 0;
  }
  const name = encodeURIComponent(dinner);
  const chart = recordChart(record);
  const written = [join(options.to, `${name}.md`)];
  try {
    mkdirSync(options.to, { recursive: true });
    if (chart) {
      written.push(join(options.to, `${name}.svg`));
      writeFileSync(join(options.to, `${name}.svg`), chart);
    }
    writeFileSync(
      join(options.to, `${name}.md`),
      recordPage(record, { chart: chart ? `${name}.svg` : undefined }),
    );
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Refusal(
      `The record cannot be written to ${options.to} (${why}); name another folder with --to.`,
      1,
    );
  }
  process.stdout.write(`${written.join('\n')}\n`);
  return 0;
}
