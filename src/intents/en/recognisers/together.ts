/** Phrases whose parts a comma or an "and" would tear apart. */
import { comingTime, minutesUntil } from '../../moment.ts';
import type { Recogniser } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { phrases } from '../vocabulary.ts';

export const together: Recogniser = {
  name: 'together',
  moods: ['statement'],
  phrases: [
    ...phrases('^ (and|so|right|ok) then [?] $', { intent: 'ask-next' }),
    ...phrases(
      [
        '(popping|nipping|heading|going|off|running|stepping|dashing) [out|over|down|off] [to] [the|my] {place:word} , [i will be|will be|be|about|for|gone|back in|i will be back in|be back in] {d:duration}',
      ],
      (match) => ({ intent: 'cook-away', minutes: match.minutes('d') }),
    ),
    ...phrases(
      [
        '(helper|helpers|pair of hands|hands|sous chef|assistant|volunteer) [has] [arrived|here|today|tonight|now] , [it is|named|that is] [my|our] {who:thing} $',
      ],
      (match) =>
        /^(right|ok|now|then|there|here|and|so|we|i|please|good|great|thanks|they|it|the)\b/.test(
          match.words('who'),
        )
          ? undefined
          : { intent: 'add-hands', who: match.words('who') },
    ),
    ...phrases(
      [
        '^ [there is] [{n:number}] (coeliac|celiac|vegan|vegetarian|veggie|diabetic) [guest] , [that is] [my|our] {who:thing} $',
      ],
      (match) => {
        const who = match.words('who');
        if (/celiac|coeliac/.test(match.line))
          return { intent: 'note-guest', who, need: 'allergy', value: 'coeliac' };
        if (/diabetic/.test(match.line)) return { intent: 'note-guest', who, need: 'vulnerable' };
        return {
          intent: 'note-guest',
          who,
          need: 'diet',
          value: /vegan/.test(match.line) ? 'vegan' : 'vegetarian',
        };
      },
    ),
    ...phrases(
      [
        '^ {who:word} , no {x:word} [, [and] no {y:word}] [.] $',
        '^ {who:word} , (allergic to|allergy to|intolerant of) {x:word} [and {y:word}] [.] $',
      ],
      (match) => {
        const who = match.words('who');
        const values = ['x', 'y'].map((slot) => match.words(slot)).filter((word) => word !== '');
        const minded =
          /^(nuts?|peanuts?|dairy|milk|cheese|gluten|wheat|eggs?|shellfish|prawns|mustard|garlic|onions?|celery|soya?|sesame|fish|pork)$/;
        return commonWords.has(who) ||
          who.length < 3 ||
          !values.every((value) => minded.test(value))
          ? undefined
          : values.map((value) => ({
              intent: 'note-guest' as const,
              who,
              need: 'allergy' as const,
              value,
            }));
      },
    ),
    ...phrases(['between medium and (well|well done)', 'medium to well [done]'], {
      intent: 'set-doneness',
      doneness: 'medium-well',
    }),
    ...phrases(['between rare and medium'], { intent: 'set-doneness', doneness: 'medium-rare' }),
    ...phrases(
      [
        '{n:number} (adults|grown ups|grownups|big ones|grown) [and|,|plus|, and] {m:number} (kids|kiddies|children|little ones|littlies|wee ones|toddlers|babies|teenagers|teens|small ones)',
        '(us|we are|the|we) {n:number} [of us] (and|plus|, plus|, and) [my|the|our|her|his] {m:number} [guests|kids|more|children|parents|friends|others|neighbours] $',
      ],
      (match) => {
        const [n, m] = [match.count('n'), match.count('m')];
        return n !== undefined && m !== undefined && n + m < 60
          ? { intent: 'set-guests', count: n + m }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ [ok ,|ok|right ,|right] @it is out and (it is resting|resting|under foil|tented|on the board|covered)',
        '^ @it is out [,] [and] resting',
        '(pulled|taken) it [out] and (it is resting|resting it|it is under foil)',
      ],
      { intent: 'report-started', step: 'rest' },
    ),
    ...phrases(
      ['(remind|tell|shout|call|wake|nudge|ping) [me|at me] (at|when it is) {clock:face} [to * $]'],
      (match) => {
        const face = match.face('clock');
        return face
          ? {
              intent: 'set-timer',
              minutes: minutesUntil(comingTime(face, match.context), match.context),
            }
          : undefined;
      },
    ),
  ],
};
