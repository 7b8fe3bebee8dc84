/** "What's it reading by now, do you reckon": asks what the core is, not what it should come to. */
import type { ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Placed } from '../placed.ts';

const inHeat: ReadonlySet<ReadContext['stage']> = new Set(['sear', 'low-roast', 'rest', 'hold']);

const asksWhatIs =
  /^ ?(so |and |um |ok )?(((what|where|how (hot|warm)) (is|are) |(what|which|how many) (temperature|degrees|number) (is|are) |(what|how (hot|warm)|where) (will|would|do you (think|reckon|guess)) ).*(now|moment|it|meat|roast|beef|lamb|pork|joint|middle|centre|center|core|inside|reading|at) |what is it (reading|at|on|up to) |what has it (got|come) (up )?to )/;

/** What it should be, or another thing's heat. */
const asksWhatShould =
  / (should|supposed|meant|need|needs|target|aim|aiming|pull|pulled|take|come|comes|coming|rare|medium|done|well|serve|served|ideal|right|best|safe|oven|dial|water|butter|fridge|final|finish|internal|for) /;

export function coreAsItIs(heard: readonly Placed[], context: ReadContext): Placed[] {
  if (!inHeat.has(context.stage)) return [...heard];
  return heard.map((one) => {
    const { meaning } = one;
    if (meaning.intent !== 'ask-temperature' || meaning.temperature !== undefined) return one;
    if (meaning.about !== undefined && meaning.about !== 'roast') return one;
    const line = ` ${lineOf(one.clause?.tokens ?? one.tokens)}`;
    return asksWhatIs.test(line) && !asksWhatShould.test(line)
      ? { ...one, meaning: { ...meaning, when: 'now' as const } }
      : one;
  });
}
