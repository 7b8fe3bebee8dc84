/** How done the roast is to be, by word or by the number to pull it at. */
import { type Doneness, donenessWords } from '../../../kitchen/heard.ts';
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

/** "Can't have it pink", "hates any blood": what is refused is what the words for it name. */
const pinkRefused =
  /\b(not|no|never|nothing|without|hates?|dislikes?) (?!(too|so|very) )(\w+ ){0,4}?(pink|blush\w*|blood\w*)/;

/** "One notch rarer than medium", "a shade past rare". */
const beside =
  /(?:notch|step|shade|touch|bit|tad|little|hair|smidge) (rarer|under|below|less|pinker|more|over|above|past|beyond|up from) (?:done )?(?:than |of )?(medium rare|medium well|medium|rare|well done)/;

function besideOf(words: string): Doneness | undefined {
  const [, way = '', word = ''] = beside.exec(words) ?? [];
  const at = donenessWords.indexOf(word.replace(' ', '-') as Doneness);
  if (at < 0) return undefined;
  return donenessWords[at + (/^(rarer|under|below|less|pinker)$/.test(way) ? -1 : 1)];
}

/** "Medium, not medium rare": what it is not to be goes. */
const notThat =
  /(?<=(?:rare|medium|well|done|pink) ,? ?)(?:but )?(?:not|rather than|instead of) (?:medium (?:rare|well)|medium|rare|well done)(?= |$)/;

export function donenessOf(said: string): Doneness | undefined {
  const words = said.replace(notThat, '');
  const neighbour = besideOf(words);
  if (neighbour) return neighbour;
  // "Pink inside but without blood": pink all the same.
  if (
    /\b(pink|rosy|ros[eé]|blush\w*)\b.*\b(no|not|without|never)\b (\w+ ){0,2}?(blood\w*|bleeding|red|raw)/.test(
      words,
    ) &&
    !/\b(not|no|never|without|nothing|hates?) (\w+ ){0,3}?(pink|ros|blush)/.test(words)
  )
    return 'medium';
  if (pinkRefused.test(words) && !/medium|rare|well/.test(words)) return 'well-done';
  if (
    /medium( |-)?rare|medium (but |, )?(leaning|more|towards?|on the) (rare|rare side)|(more|past|over|beyond|a bit up from|done more) (than )?rare|\bros(?:y|é|e|ee)\b|between (?:the |a )?(?:medium|rare) and (?:the |a )?(?:medium|rare)|pink|blush/.test(
      words,
    ) &&
    !/no pink|not pink|no pinker|not? (take|eat|want|like|do) pink|squeamish about|(does|do|will|can) not (take|eat|want|like|do|stand|stomach) (it |any )?(pink|rare|blood)|medium( |-)?well|fully cooked|without pink|any pink/.test(
      words,
    )
  )
    return 'medium-rare';
  if (/medium( |-)?well/.test(words)) return 'medium-well';
  if (
    /cremated|incinerated|burnt to a crisp|fully cooked|cooked right through|(does|do|will|can) not (take|eat|want|like|do|stand|stomach) (it |any )?(pink|rare|blood)|squeamish about pink|well( |-)?(done|cooked|roasted)|cooked through|no pink|all the way through|no blood|no red|grey all/.test(
      words,
    )
  )
    return 'well-done';
  if (/medium/.test(words)) return 'medium';
  if (/rare|bloody|mooing|blue/.test(words)) return 'rare';
  return undefined;
}

/** What cooks from elsewhere call it at their own stove. */
const calledElsewhere: readonly (readonly [string, Doneness])[] = [
  ['(saignant|blutig|al sangue|sangrante|poco hecho|poco hecha)', 'rare'],
  ['(rosé|rosee|rose|rosa|rosig|a point|à point|al punto|punto)', 'medium-rare'],
  ['(bien cuit|bien cuite|ben cotta|durchgebraten|bien hecho|bien hecha)', 'well-done'],
];

const saidWords =
  '(medium rare|medium well [done]|medium|rare|well done|pink|nice and pink|a bit pink|a little pink|pink in the middle|blushing|blushing pink|cooked through|blue|still mooing|rare to medium rare|no pink)';

export const doneness: Recogniser = {
  name: 'doneness',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...calledElsewhere.flatMap(([words, value]) =>
      phrases(
        `^ [i would say|we want|we like|i want|for us|nicely|please] [it] [it] ${words} [inside|please|for all|in the middle|$] $`,
        (match) =>
          match.context.expecting === 'doneness'
            ? { intent: 'set-doneness', doneness: value }
            : undefined,
      ),
    ),
    ...phrases(
      [
        '(pull|take|take it out|pull it|pull it out|have|take the roast out|pull the roast|cook it|bring it|cook|i pull|i want to pull it|we will pull it|out) [it|@it|out|up] (at|to|when it hits|when it reads|for) {temperature} [degrees|internal|in the middle|instead|$]',
        '(aim|aiming|go|going|shooting|shoot|target|i am aiming|we are aiming|let us go|let us aim) [up] (for|is|of|at|until|till|to|up to) {temperature} (in the (middle|centre|center|core)|internal|core|at the table|in the meat|served|degrees|$)',
        '(i want|we want|i would like|we like|we would like|want) [@it|it|the middle|a core of|the core] (at|to be|to reach|to get to|to come out at|done to|cooked to) {temperature}',
        '(target|serving|core|internal|final) temperature [of|is|to|at] {temperature}',
        '^ [my|our|the] (target|goal|aim) [temperature] [is|of|at|for it is] {temperature} [for the core|in the middle|degrees|$]',
        '(whip|haul|yank|pull|take|get|fetch|lift|whisk) (it|her|him|@it) out at {temperature} ',
        '^ (pulling|taking) [it|her|this|@it] [out|off] at {temperature} [degrees] (this time|today|instead|rather|not) ',
        '(are|am|will be) (pulling|taking) (it|this|her|@it) [out] at {temperature} ',
        '(i|we) (like|want|prefer|have) (it|the meat|the beef|the roast|@it|ours|mine) (at|done to|pulled at) {temperature:degrees} ',
      ],
      (match) => {
        const said = match.temperature('temperature');
        const low = match.context.units.temperature === 'C' && said.unit !== 'F' ? 40 : 90;
        if (
          !(said.temperature >= low) ||
          said.temperature > (said.unit === 'C' ? 100 : 200) ||
          / (oven|turned) /.test(` ${match.line}`)
        )
          return undefined;
        return { intent: 'set-doneness', ...said };
      },
    ),
    ...phrases(
      [
        `[pull|cook|i want|we want|we like|i like|we would like|i would like|make|do|have|let us do|let us go|let us have|go|going|aim|aiming|we will have|we will go|can we have|served|i think|everyone likes|everybody likes|everyone wants|we all like|most like|done|bring] [it|@it|ours|that|mine|theirs] [to be|for|out|at|a|done|with|on the|to|up] ${saidWords} [all round|in the middle|instead|for everyone|side|$]`,
      ],
      (match) => {
        const said = match.line.replace(/ (instead of|rather than|not|but not) .*/, ' ');
        const value = donenessOf(said) ?? donenessOf(match.line);
        const line = ` ${match.line}`;
        if (/^(not|no) (?!pink|blood)/.test(match.line)) return undefined;
        // "between the medium and the rare": the other end of it was heard.
        if (/(^| )between .*\|/.test(match.line)) return undefined;
        // "carved, lovely and pink" tells how it came out.
        if (
          /^(carve|served|put-away)$/.test(match.context.stage ?? '') &&
          !/ (want|like|would|prefer|make|wants|likes|take) /.test(` ${match.line}`)
        )
          return undefined;
        if (!value) return undefined;
        if (
          /well done (you|everyone|everybody|mate|team|all|that|son|to)/.test(line) ||
          /rarely|medium (heat|size|potatoes|sized|bowl|flame|hob|eggs|wave)|rare (book|bird|thing|occasion|treat|breed|gas)|pink (flowers|shirt|dress|gin|wine|socks|paint|floyd|jumper)|how rare/.test(
            line,
          )
        )
          return undefined;
        if (
          value === 'well-done' &&
          /^well done $/.test(match.line) &&
          match.context.expecting !== 'doneness' &&
          match.context.stage !== undefined &&
          match.context.stage !== 'planning'
        )
          return { intent: 'courtesy' };
        if (
          /(is|was|looks|looking|still|too|bit|gone|a tad|came out|seems) (\w+ )?(rare|pink|well done|medium)/.test(
            line,
          ) &&
          !/(want|like|pull|make)/.test(line)
        )
          return undefined;
        return { intent: 'set-doneness', doneness: value };
      },
    ),
  ],
};
