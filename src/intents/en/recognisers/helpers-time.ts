/** Hands that come and go, and who carves. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { persons } from '../addressed.ts';
import { commonWords } from '../common-words.ts';
import { phrases } from '../vocabulary.ts';

const anyHelper = /^(helper|sous chef|assistant|second cook|pair of hands|kitchen help|help)$/;

const nameOf = (match: Match): string =>
  match.words('who').replace(/^(my|our|the|and|but|so|well) /, '');

/** Somebody of whom it is known, or said in the same breath, that they help. */
function isHelper(who: string, match: Match): boolean {
  const known = match.context.helpers ?? [];
  return (
    anyHelper.test(who) ||
    known.some((one) => one.toLowerCase() === who) ||
    / (help|helping|helps|lend a hand|cook with me|in the kitchen) /.test(` ${match.line}`)
  );
}

/** From one hour until another. */
const between = (match: Match): Meaning | undefined => {
  const who = nameOf(match);
  const [from, to] = [match.mealTime('from'), match.mealTime('to')];
  return nobody.test(who) || from === undefined || to === undefined
    ? undefined
    : { intent: 'add-hands', ...named(who), from, until: to };
};

const nobody =
  /^(i|we|you|it|they|he|she|that|this|who|guests|everyone|everybody|dinner|roast|what)$/;

const named = (who: string): { who?: string } => (anyHelper.test(who) ? {} : { who });

/** Until a clock time, or for so long. */
const until = (match: Match): Meaning | undefined => {
  const who = nameOf(match);
  if (nobody.test(who) || !isHelper(who, match)) return undefined;
  if (match.has('minutes')) {
    const untilMinutes = match.minutes('minutes');
    return Number.isFinite(untilMinutes) && untilMinutes > 0
      ? { intent: 'add-hands', ...named(who), untilMinutes }
      : undefined;
  }
  const time = match.mealTime('clock');
  return time === undefined ? undefined : { intent: 'add-hands', ...named(who), until: time };
};

const carver = (match: Match): Meaning | undefined => {
  const who = nameOf(match);
  if (nobody.test(who) || /\b(not|can not|when|how|if|before|let|would|should)\b/.test(match.line))
    return undefined;
  return { intent: 'add-hands', ...named(who), does: 'carve' };
};

/** "He has time till three", "she's here from two": of who was said just before to help. */
const ofThem = (match: Match): Meaning | undefined => {
  const last = match.before.at(-1);
  if (last?.intent !== 'add-hands') return undefined;
  const [from, until] = [match.mealTime('from'), match.mealTime('until')];
  return from === undefined && until === undefined
    ? undefined
    : { ...last, ...(from ? { from } : {}), ...(until ? { until } : {}) };
};

export const helpersTime: Recogniser = {
  name: 'helpers-time',
  moods: ['statement', 'intention', 'request', 'negative'],
  phrases: [
    ...phrases(
      [
        '^ [but|and] (he|she|they) (has|have|is|are|can|will|must|has got|have got|needs|need) [only] [to] [time|here|free|be here|stay|help|leave|go|be off|be gone] [only] (till|until|by) {until:clock} $',
        '^ [but|and] (he|she|they) [has to|have to|must|will] (leaves|leave|goes|go|is off|goes home|knocks off) [home] (at|by|around) {until:clock} $',
        '^ (she|he|they) (leaves|leave|has to leave|have to leave|is leaving|has to go|goes|is off|is only here|can only stay|has to be off) [for] [home|work|home again|early|again] (at|by|around|before|till|until) {until:clock} $',
        '^ [but|and] (he|she|they) (is|are|will be|comes|come|arrives|can) [only] [coming|here|free|help|be here|start|arriving] (from|at|after) {from:clock} $',
      ],
      ofThem,
    ),
    ...phrases(
      [
        '^ [my|our|the] {who:thing} (is|can|will|can only|will only|comes|is coming|will be|can be|could|works|helps) [here|help|helping|be here|around|free|in] [to (help|lend a hand|cook|give me a hand)|help|helping|me|out|with me|in the kitchen] [from|between] {from:clock} (till|to|and) {to:clock} ',
      ],
      between,
    ),
    ...phrases(
      [
        '[my|our|the] {who:thing} (has to|needs to|must|is going to|will|has got to|will have to|wants to|is|have to|should) (leave|go|be off|be gone|head off|head home|go home|be away|leaving|going|off) [home|early|again|off] (at|by|around|before) {clock}',
        '[my|our|the] {who:thing} (leaves|goes|goes home|heads off|heads home|knocks off) (at|by|around|before) {clock}',
        '[my|our|the] {who:thing} (can|can only|is only|is|will|will only|only) [only] (help|helping|helps|stay|staying|here|with me|free|be here|here to help) [me|out|on|in the kitchen] (till|until|to|up to) {clock}',
        '[my|our|the] {who:thing} (has to|needs to|must|is going to|will|has got to) (leave|go|be off|head off|go home) [home|early|off] (in|after) {minutes:duration}',
        '[my|our|the] {who:thing} (can|can only|is only|is|will|will only) [only] (help|helping|stay|here|with me|free|be here|here to help) [me|out|in the kitchen] for [another|only|about] {minutes:duration}',
      ],
      until,
    ),
    ...phrases(
      [
        '[my|our|the] {who:thing} (can|will|is going to|could) (help|help me|help out|lend a hand|give me a hand) [out|in the kitchen] (from|after) {clock}',
        '[my|our|the] {who:thing} (comes|is coming|will come|gets here|will be here|turns up) [over|round] (at|around|from) {clock} (to help|to lend a hand|and helps|and will help|to give me a hand|to cook)',
      ],
      (match) => {
        const who = nameOf(match);
        const from = match.mealTime('clock');
        return nobody.test(who) || from === undefined
          ? undefined
          : { intent: 'add-hands', ...named(who), from };
      },
    ),
    ...phrases(
      [
        '^ [my|our|the] {who:thing} (has|is) [just|now|already] (left|gone|gone home|off home|off|had to go|had to leave|had to run) [now|home|early|already|$] $',
        '^ [my|our|the] {who:thing} (left|went home|had to go|had to leave|had to run) [now|early|already|home|$] $',
      ],
      (match) => {
        const who = nameOf(match);
        const known =
          (match.context.helpers ?? []).some((one) => one.toLowerCase() === who) ||
          // Of somebody by name it is true whoever it is: nothing changes for who never helped.
          (/ (left|home|had to go|had to leave|had to run) /.test(` ${match.line}`) &&
            /^[a-z]{3,}$/.test(who) &&
            !commonWords.has(who) &&
            !persons.test(who) &&
            !/^(bus|train|taxi|cab|plane|ferry|car|van|postman|plumber|delivery|courier|builder|builders)$/.test(
              who,
            ));
        return known || (anyHelper.test(who) && who !== 'help')
          ? { intent: 'add-hands', ...named(who), left: true }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ [we are] carving with [{k:number} knives and] {n:number} (people|knives|carvers|of us|pairs of hands)',
        '^ {n:number} of us (can|will|are going to|are|could) (carve|carving) ',
        '^ (both of us|we both|we can both|we will both|we are both) (can|will|are going to|are|carve|carving) [carve|carving|$] ',
        '^ {who:word} and (i|me|myself) (can|will|are going to|are|both) [both] (carve|carving) ',
        '^ [my|our] {who:word} (can|will) (carve|help carve|help me carve|carve too|carve as well|carve with me|help with the carving) [too|as well|with me|alongside me] $',
      ],
      (match) => {
        if (!/ (carve|carving) /.test(` ${match.line}`)) return undefined;
        const n = match.has('n') ? match.count('n') : 2;
        const two =
          / (too|as well|with me|alongside me|help|both|and|of us|people|knives|carvers|pairs of hands) /.test(
            ` ${match.line}`,
          );
        return two && n !== undefined && n > 1 && n <= 4
          ? { intent: 'report-setup', carvers: n }
          : carver(match);
      },
    ),
    ...phrases(
      [
        '^ [and|so|then] [my|our] {who:thing} (can|will|is going to|wants to|has offered to|offered to|is happy to|would like to|does|is doing|is in charge of|will do|can do|takes care of) [do] [the] (carve|carving|carve it|carve the roast|carve the joint|carve the meat|cut the meat|cut the roast|cut it up|cutting|cutting of the meat|slice it|slice the meat|slice the roast|slicing) [tonight|for me|for us|then|at (the table|table)|$] $',
        '^ [right] [,] [our|my] {who:word} (has|has got|is holding|has taken|took|takes|holds) the [carving|big|sharp|long] knife [tonight|now|already|$] $',
      ],
      carver,
    ),
  ],
};
