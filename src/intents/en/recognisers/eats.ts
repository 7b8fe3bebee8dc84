/** "What can Anna eat", "is the gravy all right for a coeliac", "are there nuts in it": asked of a dish or of all. */
import { allergensOf } from '../../../kitchen/allergens.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const nobody =
  /^(i|we|you|it|they|he|she|everyone|everybody|one|this|that|there|people|dog|cat)$|another|minute|hour|while|dinner|longer|later|now|</;

/** Whom it is asked of: a guest, or whoever must not have such a thing. */
function asked(match: Match, dish: string | undefined): Meaning | undefined {
  const who = match.words('who').replace(/^(a|an|the|my|our|any|some) /, '');
  if (who === '' || nobody.test(who) || who.split(' ').length > 3) return undefined;
  return { intent: 'ask-guests', about: 'eats', who, ...(dish ? { dish } : {}) };
}

/** "Which of them may have the mash", "can she have it": of nobody by name, but of a dish. */
const ofAnyone = (match: Match): Meaning | undefined => {
  const dish = dishIn(match.words('dish'), match.context);
  return dish ? { intent: 'ask-guests', about: 'eats', dish } : undefined;
};

const ofDish = (match: Match): Meaning | undefined => {
  const dish = dishIn(match.words('dish'), match.context);
  return dish ? asked(match, dish) : undefined;
};

export const eats: Recogniser = {
  name: 'eats',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(what|what all|what else|which dishes|which of it|how much of it) (can|could|may|should) {who:thing} [safely] (eat|have) [tonight|today|then|safely|of it|of this] [?] $',
        'is there (anything|something) {who:thing} can (eat|have) [tonight|today] [?] $',
      ],
      (match) => asked(match, undefined),
    ),
    // "My nephew's coeliac, can he have the stuffing": of whom it was just told.
    ...phrases(
      [
        '^ [and] (can|could|may|should) (he|she|they) (eat|have) [the|my|our|some|any of the|any] {dish:thing} [?] $',
        '^ [and|so] what (can|could|may) (he|she|they) (eat|have) [from|of|out of|then|tonight] [it|this|that|these|all this] [?] $',
      ],
      (match) => {
        const last = match.before.findLast(
          (one) => one.intent === 'note-guest' && !nobody.test(one.who ?? ''),
        );
        if (last?.intent !== 'note-guest') return undefined;
        const dish = match.has('dish') ? dishIn(match.words('dish'), match.context) : undefined;
        if (match.has('dish') && dish === undefined) return undefined;
        return {
          intent: 'ask-guests',
          about: 'eats',
          ...(last.who ? { who: last.who } : {}),
          ...(dish ? { dish } : {}),
        };
      },
    ),
    ...phrases(
      [
        '(can|could|may|should) {who:thing} (eat|have) [the|my|our|some|any of the] {dish:thing} [?] $',
        '(is|are) [the|my|our] {dish:thing} (ok|all right|safe|suitable|fine|good) for {who:thing} [?] $',
      ],
      ofDish,
    ),
    ...phrases(
      [
        '^ [so|and] (which|who|who all|how many) [of] [them|us|the guests|my guests|these|those|the table|the lot] (can|could|may|should|is able to|are able to) [all|not] (eat|have) [the|my|our|some|any of the] {dish:thing} [?] $',
        '^ [so|and] (can|could|may|should) (she|he|they) [all|both] (eat|have) [the|my|our|some|any of the] {dish:thing} [?] $',
      ],
      ofAnyone,
    ),
    ...phrases(
      [
        '(is|are) there [any] {who:thing} in [the|my|our] {dish:thing} [?] $',
        '(does|do) [the|my|our] {dish:thing} (have|contain) [any] {who:thing} [in it|in them] [?] $',
      ],
      (match) => (allergensOf(match.words('who')).length > 0 ? ofDish(match) : undefined),
    ),
  ],
};
