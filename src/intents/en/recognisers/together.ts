/** Phrases whose parts a comma or an "and" would tear apart. */
import { comingTime, minutesUntil } from '../../moment.ts';
import { nameExactlyIn } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { headsIn } from '../frames/answer.ts';
import { goodsOf } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { startedIn } from './events.ts';
import { ingredient } from './subjects.ts';

const headWords =
  /^(me|myself|i|my|our|the|her|his|their|a|an|and|plus|with|,|us|kids?|children|adults?|grown|ups|little|ones?|people|wife|husband|partner|mum|dad|mother|father|parents|grandparents|sister|brother|son|daughter|gran|grandma|grandad|granddad|nan|nana|friends?|girlfriend|boyfriend|aunt|auntie|uncle|cousins?|neighbours?|baby|toddler|missus|couple|twins|in|laws?|toddlers|babies|teenagers?|boys|girls|lads|old|<n\d+>)$/;

const guestsDelayed =
  / (stuck|stranded|held up|puncture|flat tyre|flat tire|blow out|broken down|broke down|breakdown|lorry|truck|motorway|traffic|jam|queue|tailback|diversion|roadworks|accident|crash|cancelled|missed|delayed|snowed in|lost|detour|running late|overslept|behind|late|road is closed|bridge|ferry|train|flight|bus|taxi) /;
const whoComes =
  / (they|them|he|she|guests|everyone|everybody|family|parents|in laws|lot|mum|dad|gran|granny|nan|nana|grandma|sister|brother|aunt|auntie|uncle|cousins?|son|daughter|friends?|neighbours?|mate|boss|folks|train|flight|bus|taxi|kids|husband|wife|partner|girlfriend|boyfriend|others|rest of them|relatives|crew) /;
const notOfGuests =
  / (first (guests?|lot|few|ones|of them)|oven|roast|joint|beef|meat|potatoes|beans|gravy|carrots|puddings|timer|alarm|resting|rest|probe|ago|i am|we are|reads|turned|pulled|sear|carve|early|earlier|sooner|last|yesterday|match|film|always|used to|gone|back in|went|work|meeting|school|delivery|parcel|game|concert|holiday|airport last|bins?|if|when|remember) /;

/** One delay, of people on their way, and nothing of the stove. */
function lateness(match: Match): Meaning | undefined {
  const line = ` ${match.line}`;
  if (match.marks('d').length !== 1 || match.marks('ntwgcy').length > 0) return undefined;
  if (!guestsDelayed.test(line) || !whoComes.test(line) || notOfGuests.test(line)) return undefined;
  // "Half of them come an hour late": the others eat at the hour.
  if (
    / (half|some|two|three|four|five|a (few|couple)|most|one) (of )?(the |them|us|our |my )/.test(
      line,
    )
  )
    return undefined;
  if (/[?]/.test(line) || match.line.split(' ').length > 28) return undefined;
  if (/ (did|do|can|could|what|why|how|will you|are you) /.test(line)) return undefined;
  const mark = match.marks('d')[0]!;
  const quantity = match.quantityOfMark(mark);
  return quantity?.kind === 'duration' && quantity.minutes >= 5 && quantity.minutes <= 240
    ? { intent: 'shift-serving', minutes: quantity.minutes }
    : undefined;
}

/** Whether the words of a slot name something the cards ask for. */
function ingredientNamed(match: Match): boolean {
  const words = match.words('thing');
  return (
    words.split(' ').length <= 4 &&
    [words, words.split(' ').slice(-1).join(' ')].some(
      (one) => nameExactlyIn(goodsOf(match.context.lexicon), one) !== undefined,
    )
  );
}

/** Who is late or the heat turned: supposed of these, what is asked is what would become of dinner. */
const changesTheEvening =
  / (((they|guests|everyone|mum|dad|parents|laws|lot|train|flight|he|she|people|company|family|folks) .*(late|later|behind|stuck|held up|delayed|ring|rings|call|calls|early|earlier|cancel|text|not (make|turn|get|come)))|(i|we) (\w+ )?(whack|crank|bump|turn|knock|shove|push|put|move|delay|raise|drop|lower) (it|the oven|the heat|dinner|everything|things|the temperature) (up|down|back|on|off|later|forward)) /;
const asksOfItself = / (safe|safely|poison|sick|thyme|instead of|use) /;

export const together: Recogniser = {
  name: 'together',
  moods: ['statement'],
  phrases: [
    // "Fat side up or down?": the trade's answer, which an "or" would tear apart.
    ...phrases(
      '(fat|fat cap|bone|bones|skin|rind|meat) [side|facing|facing it] (up|down|upwards|downwards|on top) or [{other:thing}] (up|down|upwards|downwards|on top|underneath) ',
      { intent: 'ask-how', topic: 'which side up' },
    ),
    // "Eight of us but now it's ten", "we were six, now it's eight": the last is how many.
    ...phrases(
      [
        '[there|it|we|i] [were|was|are|is|said] {was:number} [of us|people|guests|coming|for dinner] [,|, but|but|and|, and|, so|so] now (it is|we are|there is|there are|we will be|make it) [up to|down to] {n:number} [of us|people|guests|coming] ',
      ],
      (match) => {
        const [was, count] = [match.count('was'), match.count('n')];
        const counted =
          / (of us|people|guests|coming|for dinner|we (were|are)|there (were|are)) /.test(
            ` ${match.line}`,
          ) && !/ (oven|degrees|minutes|hours|core|reads|pounds|kilos) /.test(` ${match.line}`);
        return counted && was !== undefined && count !== undefined && was <= 40 && count <= 40
          ? { intent: 'set-guests', count }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ (and|so|right|ok) then [?] $',
        '^ (and|so|right|ok) [what|what about] after (that|this|those|them) [?] $',
      ],
      { intent: 'ask-next' },
    ),
    // "if they ring to say they're half an hour behind, what goes wrong first": nothing has happened yet.
    ...phrases(
      [
        '^ [and|so|but|right ,|ok ,] (if|supposing|suppose|say) {cond:whole} (how long (can|could|will|would|does)|what (goes|happens|would|will|do|should|can|could|gets|suffers)|(will|would|does) (that|it) |is (that|it) going to|(can|could|should|do|will) (i|we|it)) {ask:whole} ',
      ],
      (match) =>
        changesTheEvening.test(` ${match.groups.cond}`) &&
        !asksOfItself.test(` ${match.groups.ask} `)
          ? { intent: 'ask-options' }
          : undefined,
    ),
    // "six here, two still on the road": some have come.
    ...phrases(
      [
        '{n:number} [of them|guests|people] (here|arrived|in|at the door|inside) [now|so far|already|,] [,|and|but|with] {m:number} [more] [are|is] [still] (to come|to go|on the way|on the road|yet to come|missing|left|outstanding|coming|on their way|not here|still) ',
      ],
      (match) => {
        const count = match.count('n');
        return count === undefined
          ? undefined
          : { intent: 'report-guests', state: 'partly-arrived', count };
      },
    ),
    // "120, is that rare or medium rare": the number is what is asked about.
    ...phrases(
      [
        '^ {temperature} [degrees] , is (that|it|this) [more] (rare|medium rare|medium|well done|medium well|overdone|overcooked) [or {x:rest}] ',
      ],
      (match) =>
        match.context.expecting === 'reading'
          ? undefined
          : { intent: 'ask-temperature', ...match.temperature('temperature') },
    ),
    // "it's the gratin that's in there, not the rolls".
    ...phrases(
      [
        '[no ,|no|wrong ,|i told you wrong|i told you wrong ,] [it is|it was] the {who:thing} that (is|are|went) [gone] (in|on) [there|the oven] [now] [,] not the {other:thing} $',
      ],
      (match) => startedIn(match),
    ),
    // "nine adults, four bairns".
    ...phrases(
      '^ [we are|there are|it is|we have] {n:number} (adults|grown ups|grownups|big ones|old ones) [,] [and|plus] {m:number} (kids|children|little ones|toddlers|babies|teenagers|bairns|weans|tots|nippers|kiddies|youngsters) $',
      (match) => ({ intent: 'set-guests', count: match.number('n') + match.number('m') }),
    ),
    // "me, the wife, two kids and her mum", when asked how many.
    ...phrases(['^ {all:whole} $'], (match) => {
      if (match.context.expecting !== 'guests' || !/^[a-z<>0-9, -]+$/.test(match.line))
        return undefined;
      const words = match.line.trim().split(' ');
      if (words.length < 3 || !words.every((word) => headWords.test(word))) return undefined;
      if (/ (so|makes|altogether|total|that is) <n\d+> /.test(` ${match.line}`)) return undefined;
      if ((match.line.match(/[^<n\d> ,]/g) ?? []).length === 0) return undefined;
      const count = headsIn(match);
      return count === undefined ? undefined : { intent: 'set-guests', count };
    }),
    // "stuck behind a lorry, at least forty five minutes": guests' lateness, told as a story.
    ...phrases(['^ {all:whole} $'], lateness),
    // "I've only got dried rosemary, is that all right": what is asked is whether it will do.
    ...phrases(
      [
        '(i|we) [have] [got|found|have] [some|a|an] {thing:thing} [here|in the cupboard|left] , [and|so] (is that|will that|would that|does that|can i use that|is it|will it|would it|is that going to|can that) [be] (ok|all right|fine|do|work|good enough|enough|matter|any good|a problem|instead|$) ',
      ],
      (match) =>
        ingredientNamed(match) ? { intent: 'ask-substitute', ...ingredient(match) } : undefined,
    ),
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
    ...phrases(
      [
        '^ (give|leave|allow) (it|them|that|@it|the {what:word}) [another] {m:minutes} [more] (and|then|and then|, then) (beep|ping|call|shout|ring|buzz|warn|nudge|remind|poke|tell) (me|us) $',
        '^ {m:minutes} [more] (and|then|and then|, then) (beep|ping|call|shout|ring|buzz|warn|nudge|poke) (me|us) $',
      ],
      (match) => {
        const minutes = match.minutes('m');
        return minutes > 0 && minutes <= 240 ? { intent: 'set-timer', minutes } : undefined;
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
