/** "Spuds went in at twenty past, the parsnips just now": what happened is said once, of one after the other. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { outOf, startedIn } from './events.ts';

/** Steps by which a thing goes into the heat. */
const entering = /\.(in|roast|bake|cook|boil|steam|on)$|^roast-in$/;

/** Whether the clause is tied to what was told before it: by its own moment, or by a word. */
function goesOn(match: Match): boolean {
  if (match.isOfAMoment || match.has('clock')) return true;
  const after = match.whole.split(`${match.words('who')} `)[1] ?? '';
  return /^(now|too|as well|also|likewise|straight after|this minute) /.test(after);
}

function likewiseOf(match: Match): Meaning[] | undefined {
  const last = match.before.at(-1);
  const words = match.words('who');
  if (!last || !goesOn(match) || /^(done|finished|sorted|through) /.test(words)) return undefined;
  if (dishIn(words, match.context) === undefined && !meansRoast(words)) return undefined;
  const time = match.has('clock') ? match.pastTime('clock') : undefined;
  const timed = (meanings: Meaning[] | undefined): Meaning[] | undefined =>
    time === undefined ? meanings : meanings?.map((one) => ({ ...one, time }) as Meaning);
  if (last.intent === 'report-started' && entering.test(last.step)) return timed(startedIn(match));
  if (last.intent === 'report-out') return timed(outOf(match));
  const step = last.intent === 'report-done' ? stepIn(words, match.context) : undefined;
  return step === undefined ? undefined : [{ intent: 'report-done', step }];
}

export const likewise: Recogniser = {
  name: 'likewise',
  moods: ['statement'],
  phrases: phrases(
    ['^ [the|my|our] {who:thing} (at|since|from) {clock} $', '^ [the|my|our] {who:thing} $'],
    likewiseOf,
  ),
};
