/** What is found wrong at the plate: too salty, gone cold, grey, tough, a side that comes late. */
import type { HeardOf } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

/** Words for the meat in its slices, beside the names of the roast. */
const slices = /^(the )?(slices?|meat|middle|inside|ends?|it|they|plates?|food|everything)$/;

/** The dish or the roast that is spoken of; undefined for what is of no dinner. */
function about(words: string, match: Match): { step?: string } | undefined {
  const dish = dishIn(words, match.context);
  if (dish) return { step: dish };
  if (slices.test(words.trim())) return {};
  return meansRoast(words) ? { step: 'roast' } : undefined;
}

const told =
  (trouble: HeardOf<'report-trouble'>['trouble']) =>
  (match: Match): Meaning | undefined => {
    const of = about(match.words('who'), match);
    return of && { intent: 'report-trouble', trouble, ...of };
  };

const quite = '[a bit|a little|all|so|very|really|rather|quite|far|much|way|still|gone|going]';

export const plateTroubles: Recogniser = {
  name: 'plate-troubles',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        `^ {who:thing} (is|are|tastes|taste|came out|turned out) ${quite} (too salty|salty|over salted|oversalted|over salty)`,
        '(i|we) [have] [over] (oversalted|over salted|salted twice) {who:thing} $',
        '(too much salt|far too much salt) (in|on) {who:thing} $',
      ],
      told('too-salty'),
    ),
    ...phrases(
      [
        `^ {who:thing} (has|have|is|are) ${quite} (gone cold|going cold|gone lukewarm|lukewarm|stone cold|getting cold)`,
        `^ {who:thing} (went|got|turned) ${quite} (cold|stone cold|ice cold|lukewarm|tepid) [again|on me] $`,
      ],
      told('gone-cold'),
    ),
    ...phrases(
      [`^ {who:thing} (is|are|looks|look|came out|seems|seem) ${quite} (grey|gray|greyish)`],
      told('grey'),
    ),
    ...phrases(
      [
        '(slice|slices|meat|piece|middle|bit|one) (is|are|looks|look) still [a bit|quite|very|all] (pink|raw|bloody|red)',
      ],
      { intent: 'report-trouble', trouble: 'undercooked' },
    ),
    ...phrases(
      [`^ {who:thing} (is|are|came out|turned out) ${quite} (tough|chewy|leathery|stringy)`],
      told('tough'),
    ),
    ...phrases(
      [
        `^ {who:thing} (is|are|has|have|looks|look|tastes|came out|turned out) ${quite} [too|gone|come out] (thin|watery|runny|lumpy|curdled|bland|greasy|soggy|stodgy|limp|floppy|bitter|tasteless|claggy|gloopy|mush|mushy|dry|lumpy|sludge)`,
      ],
      (match) => {
        const step = dishIn(match.words('who'), match.context);
        return step === undefined
          ? undefined
          : { intent: 'report-trouble', trouble: 'other', step };
      },
    ),
    ...phrases(
      [
        '^ {who:thing} (will|is going to|are going to|is|are) (be late|not be ready in time|not be ready|not be done in time|running late|be another while)',
      ],
      (match) => {
        const step = dishIn(match.words('who'), match.context);
        return step === undefined
          ? undefined
          : { intent: 'report-trouble', trouble: 'side-late', step };
      },
    ),
  ],
};

/** "The spuds are going to be twenty minutes behind the meat". */
export const sideLate: Recogniser = {
  name: 'side-late',
  moods: ['statement', 'intention'],
  phrases: [
    ...phrases(
      '^ [the|my|our] {who:thing} (will be|is going to be|are going to be|are|is|will come|will be ready) [about|a good] {late:duration} (late|behind|after|later than) [the|our] [meat|roast|beef|lamb|pork|joint|rest|everything else|others] $',
      (match) => {
        const step = dishIn(match.words('who'), match.context);
        const minutes = match.minutes('late');
        return step === undefined || meansRoast(match.words('who'))
          ? undefined
          : { intent: 'report-trouble', trouble: 'side-late', step, minutes };
      },
    ),
  ],
};
