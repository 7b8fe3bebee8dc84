/** What cannot breathe, lies down or swells up, and that it is over: tried before fire, burns and cuts. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

/** What is baked falls in on itself; only people collapse in earnest. */
const baked =
  /\b(puddings?|puds?|yorkshires?|souffl[eé]s?|cakes?|sponge|meringues?|pavlova|pastry|pie|crust|batter|rolls|bread|dough|popovers?|tower|chair|table|shelf|rack) (is|are|has|have|just|all|\w+ly)? ?(is|have|has|all|just)? ?(collapsed|passed out)\b/;

const kind =
  (emergency: 'choking' | 'collapse' | 'reaction') =>
  (match: Match): Meaning | undefined =>
    /\b(film|movie|book|story|song|joke|on tv|almost|nearly|laughing|smoke|worried|what if|if)\b/.test(
      match.line,
    ) || baked.test(match.line)
      ? undefined
      : { intent: 'emergency', kind: emergency };

export const urgent: Recogniser = {
  name: 'urgent',
  moods: ['statement', 'negative', 'question', 'intention', 'request', 'story'],
  phrases: [
    ...phrases(
      [
        '(allergic reaction|anaphylaxis|anaphylactic|anaphylactic shock)',
        '(face|lips|lip|tongue|throat|mouth|eyes) (is|are|has|have) [all|badly|really|started] (swelling|swollen|swelled|puffing) [up]',
      ],
      kind('reaction'),
    ),
    ...phrases(
      [
        '(is|are|am) [really|actually] choking',
        'choking on',
        '(stuck|caught|lodged) in (his|her|my|their|the) throat',
        '(he|she|they|gran|grandma|dad|mum|someone|somebody|the baby|the toddler) can not breathe',
      ],
      kind('choking'),
    ),
    ...phrases(
      [
        '(has|have|just|is) [just] (fainted|collapsed|passed out|blacked out)',
        '(fainted|collapsed|passed out) [on the floor|in the kitchen|$]',
        '(is|are) (unconscious|not breathing|not responding|unresponsive)',
        '(chest pains|chest pain|heart attack|having a stroke|having a seizure|having a fit)',
      ],
      kind('collapse'),
    ),
    ...phrases(
      [
        '(fire|flames) (is|are|has gone|have gone) [all|now] out',
        '(put|got) the (fire|flames) out',
        '^ [it was|it is|sorry ,|sorry] [a] false alarm',
        '(i am|we are|he is|she is|everyone is|everybody is) [all] (ok|fine|all right|safe|patched up|bandaged|bandaged up) [again] now',
      ],
      { intent: 'resume' },
    ),
  ],
};
