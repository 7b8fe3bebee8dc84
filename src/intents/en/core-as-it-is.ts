/** "What's it reading by now", "what should it be reading by now": asks what the core is, not what it is pulled at. */
import type { ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Refiner } from '../language.ts';

const inHeat: ReadonlySet<ReadContext['stage']> = new Set(['sear', 'low-roast', 'rest', 'hold']);

const asksWhatIs =
  /^ ?(so |and |um |ok )?(((what|where|how (hot|warm)) (is|are) |(what|which|how many) (temperature|degrees|number) (is|are) |(what|how (hot|warm)|where) (will|would|do you (think|reckon|guess)) ).*(now|moment|it|meat|roast|beef|lamb|pork|joint|middle|centre|center|core|inside|reading|at) |what is it (reading|at|on|up to) |what has it (got|come) (up )?to )/;

/** Where it should stand by this minute, which is what the forecast tells; the words for now are cut from a clause. */
const asksWhereByNow =
  /\b(should|ought|supposed|meant|expect|expected)\b[^?!]{0,50}\b(by now|by this (point|time)|at this (point|stage)|right now|just now|at the moment|now)\b/;

/** The heat that it is taken out at, or that of something else. */
const asksAnother =
  / (pull|pulled|take|taken|took|come out|comes out|coming out|served|ideal|safe|oven|dial|water|butter|fridge|target) /;

/** What it should be, or another thing's heat. */
const asksWhatShould =
  / (should|supposed|meant|need|needs|target|aim|aiming|pull|pulled|take|come|comes|coming|rare|medium|done|well|serve|served|ideal|right|best|safe|oven|dial|water|butter|fridge|final|finish|internal|for) /;

export const coreAsItIs: Refiner = (heard, context, whole) => {
  if (!inHeat.has(context.stage)) return [...heard];
  return heard.map((one) => {
    const { meaning } = one;
    if (meaning.intent !== 'ask-temperature' || meaning.temperature !== undefined) return one;
    if (meaning.about !== undefined && meaning.about !== 'roast') return one;
    const line = ` ${lineOf(one.clause?.tokens ?? one.tokens)}`;
    const asksNow =
      (asksWhatIs.test(line) && !asksWhatShould.test(line)) ||
      (asksWhereByNow.test(whole) && !asksAnother.test(line));
    return asksNow ? { ...one, meaning: { ...meaning, when: 'now' as const } } : one;
  });
};
