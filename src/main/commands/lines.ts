/** `roastcall understand` and `roastcall forecast`: JSON lines in, each answered as it is read. */
import { createInterface } from 'node:readline';
import { forecastLine } from '../../bridges/lines/forecast.ts';
import { plainSituation, understandLine } from '../../bridges/lines/understand.ts';
import { warmUp } from '../../intents/read.ts';
import { lexiconOf } from '../../kitchen/card.ts';
import { systemClock } from '../clock.ts';
import { cardsOf } from '../household.ts';

export function understandCommand(options: { cards?: string }): Promise<number> {
  const lexicon = lexiconOf(cardsOf(options.cards));
  const usual = {
    now: () => systemClock.now(),
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  };
  warmUp(plainSituation(lexicon, usual));
  return linesCommand((line) => understandLine(line, lexicon, usual));
}

export const forecastCommand = (): Promise<number> => linesCommand((line) => forecastLine(line));

/** Answers every line with what the function makes of it, until the input ends. */
async function linesCommand(answer: (line: string) => object | string): Promise<number> {
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  for await (const line of lines) {
    if (line.trim() === '') continue;
    const answered = answer(line);
    process.stdout.write(`${typeof answered === 'string' ? answered : JSON.stringify(answered)}\n`);
  }
  return 0;
}
