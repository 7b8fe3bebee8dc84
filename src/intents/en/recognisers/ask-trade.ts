/** What is asked of the trade at the stove, whatever the card: whether to baste it, to turn it over, to cover it. */
import type { TradeTopic } from '../../../kitchen/heard.ts';
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const roast =
  '(it|the roast|roast|the meat|meat|the joint|joint|the beef|the lamb|the pork|this|this thing|the thing|this roast|this joint|this meat|her|him)';
const whether =
  '((do|should|shall|must|can|could|may|would) (i|we|you) [not] [really|actually|still|also] [need to|have to|bother to|be]|(am|are|was|were) (i|we) [supposed to|meant to] [be])';
/** How a question put as a statement ends: "water in the tin, yes or no". */
const orNot =
  '[,] (yes or no|yes no|or not|or no|or what|or is it (needless|unnecessary)|needed or not|worth it|worth it or not|is (it|that) (needed|necessary|worth it|wise|right)) $';
const liquid = '(water|stock|wine|liquid|broth)';
const under =
  '(in|into|to|under) [the|its|it|my] [roasting|bottom of the] (pan|tin|tray|meat|roast|joint)';
const covers = '(foil|tinfoil|tin foil|cover|covering|lid|tent|tenting)';
const worth = '(is it worth|is there any point in|any point|do you bother|what about|how about)';

/** A deed at the roast, after the word by which the trade's answer to it is found. */
const deeds: Record<Exclude<TradeTopic, 'which side up'>, string> = {
  baste: `(baste|basting|spoon|spooning|(water|watering|wet|wetting|moisten|bathe) ${roast} [now|again] with [the|its|it is] [own|pan]) [${roast}|the fat|the juices|fat|juice|juices|drippings] `,
  'turn over': `(turn|turning|flip|flipping|rotate|rotating) ${roast} (over|around|round|upside down|halfway|half way|$) [halfway|half way|half way through|at half time] `,
  'water in the pan': `(add|adding|put|putting|pour|pouring) [some|a bit of|a cup of|any|a splash of|a little] ${liquid} (in|into|to|under) [the|its|it] [roasting|bottom of the] [pan|tin|tray|meat|roast|joint] `,
  cover: `(cover|covering|tent|wrap|wrapping) ${roast} [with foil|in foil|up] [while it cooks|while it roasts|in the oven] $ `,
};

/** "Should I turn it down", "flip the potatoes": of something else. */
const ofOther =
  / (dial|hob|potatoes|spuds|carrots|puddings|sprouts|parsnips|gravy|sauce|jus|slices|fridge|plate|board|down|off|<[a-z]\d+>) /;

/** A deed put as a statement, and asked by how it ends; or two ways between which it is asked. */
export const eitherWay: Recogniser = {
  name: 'either-way',
  moods: ['statement'],
  phrases: [
    ...Object.entries({
      ...deeds,
      'water in the pan': `[some|a bit of|any|a little|a splash of|a cup of] ${liquid} ${under} [under (it|the meat|the roast|the joint)] `,
    }).flatMap(([topic, deed]) =>
      phrases(
        `^ [so|and|ok|but] [i|we] [am|are|would|will|should|must|to] [now|still] ${deed} [now|every {often:duration}|every so often|while it (cooks|roasts|rests)] ${orNot}`,
        (match) => (ofOther.test(` ${match.line}`) ? undefined : { intent: 'ask-how', topic }),
      ),
    ),
    ...phrases(
      [
        `^ [so|and|ok] [with] ${covers} [on] [,] or (no|without|not|no more|none) [${covers}] [on|now|then|while it rests|while it cooks] $`,
        `^ [so|and|ok] [with] ${covers} (on [or] off|or no|or not|yes or no|or without) [now|then|while it (rests|cooks|roasts)|for the rest] $`,
        '^ [so|and|ok] [do i] [leave|keep] [it] (covered|tented|wrapped) [,] or (uncovered|not|open|bare|unwrapped|without) [now|then|for this] $',
      ],
      { intent: 'ask-how', topic: 'cover' },
    ),
    ...phrases(
      [
        `^ [so|and|ok] (do|should|shall|must|can) (i|we) (leave|put|place|keep|have|set|roast|cook) [${roast}] [with] [the|its] (fat|fat cap|bone|bones|skin|fat side|bone side) [side] (up|down|on top|underneath) [[,] or {other:rest}] $`,
        '^ [so|and|ok] [is it] [the] [with] (fat|skin|bone|bones|fat side|fat cap|skin side|bone side) [side] (up|down|on top) [,] or (up|down|underneath|under|on the bottom|not|the other way) [now|then] $',
      ],
      { intent: 'ask-how', topic: 'which side up' },
    ),
    // "I take it out at 52 or wait?", "is 49 still rare or medium rare?"
    ...phrases(
      [
        '^ [so|and|ok] [do|should|shall] (i|we) (take|pull|bring|get|have) [it|@it] [out|off] (at|with|on|by) {temperature} [degrees] [,] or {other:rest} $',
        '^ [so|and|ok] (is|does|would) {temperature} [degrees] [inside] [still|already|count as|mean] (rare|medium rare|medium|medium well|well done|pink) [,] or [still|already|is it|more] (rare|medium rare|medium|medium well|well done|pink|not|raw) $',
      ],
      (match) =>
        match.number('temperature') >= 35
          ? { intent: 'ask-temperature', ...match.temperature('temperature') }
          : undefined,
    ),
    // "Any water in the pan?"
    ...phrases(
      `^ [so|and|ok|but] [is there|do (i|we) (need|want)] any ${liquid} ${under} [at all|or not|then] $`,
      { intent: 'ask-how', topic: 'water in the pan' },
    ),
    ...phrases(
      [
        '^ [so|and|ok] [is it] [a|do (i|we) (cut|slice|carve|go)] [it] (with|along|across|against) the grain [,] or (with|along|across|against) [it|the grain] [situation|thing|job] $',
      ],
      { intent: 'ask-how', topic: 'carve' },
    ),
  ],
};

export const askTrade: Recogniser = {
  name: 'ask-trade',
  moods: ['question', 'request'],
  phrases: [
    ...Object.entries(deeds).flatMap(([topic, deed]) =>
      phrases(
        [`^ [so|and|ok|but] ${whether} ${deed}`, `^ [so|and|ok|but] ${worth} ${deed}`],
        (match) => (ofOther.test(` ${match.line}`) ? undefined : { intent: 'ask-how', topic }),
      ),
    ),
    ...phrases(
      [
        `^ [so|and] (does|should|is|do i put|would) ${roast} [go|be|sit] (fat|bone|bones|skin) [side] (up|down) `,
        '^ [so|and] (which|what) (side|way) (up|is up|goes up|should be up|faces up) ',
        `^ [so|and] (which|what) (side|way) (does|should|do i put) ${roast} (go|be|face|sit|in) `,
      ],
      { intent: 'ask-how', topic: 'which side up' },
    ),
  ],
};
