/**
 * What a choice costs: every turn of the session scripts that simulates ways for a late or an early day, weighed
 * once more from the facts that stood before it. A choice begins where the session's does, the day's own
 * forecasts made.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact, FactOf } from '../../src/kitchen/facts.ts';
import type { Context } from '../../src/machine/context.ts';
import { decide } from '../../src/machine/decide.ts';
import { withFacts } from '../../src/machine/with-facts.ts';
import { parseScript } from '../../src/rehearsal/parse.ts';
import { rehearse } from '../../src/rehearsal/run.ts';
import { inThisThread, remembering } from '../../src/session/compute.ts';
import { type Offered, offer } from '../../src/session/offer.ts';
import { expectedOf, outlookOf } from '../../src/session/outlook.ts';
import type { Compute } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { line, processorMilliseconds, quantile } from '../measure.ts';

const folder = 'transcripts-synthetic';
const { cards } = loadCards([builtInCardsFolder()]);

/** A turn in which ways were simulated. */
interface Choice {
  script: string;
  text: string;
  known: readonly Fact[];
  told: FactOf<'words-heard'>;
}

interface Weighed {
  offered: Offered;
  /** Forecasts of ways asked for, none of them twice. */
  forecasts: number;
  /** Of the processor, by all threads of this process, and by the clock. */
  processorMilliseconds: number;
  milliseconds: number;
}

/** Scripts are played once to find the turns that simulate ways, whether or not any is then offered. */
export async function scriptedChoices(): Promise<Choice[]> {
  const choices: Choice[] = [];
  for (const file of readdirSync(folder).filter((one) => one.endsWith('.session.txt'))) {
    const { script } = parseScript(readFileSync(join(folder, file), 'utf8'), file);
    if (!script) continue;
    const counted = counting();
    const journal = openMemoryJournal();
    const chosen = new Set<string>();
    let facts: readonly Fact[] = [];
    let before = 0;
    await rehearse(script, {
      open: (opening) =>
        openSession({ dinner: 'bench', journal, compute: counted.compute, cards, opening }),
      audience: {
        said: () => {
          before = counted.ways();
        },
        replied: ({ heard }) => {
          if (counted.ways() > before) chosen.add(JSON.stringify(heard));
        },
        ended: (all) => {
          facts = all;
        },
      },
    });
    for (const told of facts)
      if (told.type === 'words-heard' && chosen.has(JSON.stringify(told.heard)))
        choices.push({
          script: file,
          text: told.text,
          known: facts.slice(0, told.position),
          told,
        });
  }
  return choices;
}

/** Computes here, and counts the forecasts of ways. */
function counting(): { compute: Compute; ways: () => number } {
  let ways = 0;
  const compute: Compute = {
    ...inThisThread,
    forecast: (question) => {
      if (question.instead) ways += 1;
      return inThisThread.forecast(question);
    },
  };
  return { compute, ways: () => ways };
}

export async function weighed({ known, told }: Choice): Promise<Weighed> {
  const counted = counting();
  const compute = remembering(counted.compute);
  const before = await outlookOf(told.dinner, known, told.at, compute);
  const context: Context = withFacts(
    {
      id: told.dinner,
      facts: [...known],
      dinner: before.dinner,
      standing: before.standing,
      now: told.at,
      expected: expectedOf(before),
      library: cards,
    },
    [told],
  );
  const decision = decide(told.heard, context);
  const { facts } = withFacts(context, decision.facts);
  const after = await outlookOf(told.dinner, facts, told.at, compute);
  const processorFrom = processorMilliseconds();
  const from = performance.now();
  const offered = await offer({ outcomes: decision.outcomes, before, after, known, compute });
  const milliseconds = performance.now() - from;
  const taken = processorMilliseconds() - processorFrom;
  const forecasts = counted.ways();
  return { offered, forecasts, processorMilliseconds: taken, milliseconds };
}

/** Prints what the choices of the scripts cost, each by the least of some rounds: what it takes, not what else the machine did. */
export async function timeChoices(rounds: number): Promise<void> {
  const choices = await scriptedChoices();
  const all: Weighed[][] = choices.map(() => []);
  for (let round = 0; round < rounds; round += 1)
    for (const [index, choice] of choices.entries()) all[index]?.push(await weighed(choice));
  // A way that was only supposed was simulated in that turn, but nothing is to be chosen there.
  const simulated = all.filter((one) => (one[0]?.forecasts ?? 0) > 0);
  const figures = (of: (one: Weighed) => number): string => {
    const least = simulated.map((one) => Math.min(...one.map(of)));
    return `p50 ${quantile(least, 0.5).toFixed(0)}, p90 ${quantile(least, 0.9).toFixed(0)}, the longest ${Math.max(...least).toFixed(0)}, ${least.filter((one) => one <= 300).length} within 300`;
  };
  line(`all options of a choice: ${simulated.length} of the scripts, least of ${rounds}`);
  line(`  processor        ${figures((one) => one.processorMilliseconds)} ms`);
  line(`  by the clock     ${figures((one) => one.milliseconds)} ms`);
  line(
    `  forecasts        p50 ${quantile(
      simulated.map((one) => one[0]?.forecasts ?? 0),
      0.5,
    )} a choice`,
  );
}
