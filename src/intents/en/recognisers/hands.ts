/** Who helps, and for how long the cook is away. */
import { mealTime } from '../../moment.ts';
import { nameExactlyIn } from '../../names.ts';
import { faceOf, type Match, type Recogniser } from '../../recogniser.ts';
import { persons } from '../addressed.ts';
import { commonWords } from '../common-words.ts';
import { dishExactlyIn, dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const any = ['statement', 'negative', 'intention', 'request'] as const;

/** Who helps nobody here: the cook, everyone, and things. */
const notHelpers =
  /^(it|that|this|what|he|she|they|i|we|you|there|who|which|everyone|everybody|nobody|oven|pan|pot|water|kettle|everything|all|them)$/;
const chores =
  /^(them|these|those|veg|vegetables|veggies|gravy|sides|sauce|salad|greens|potatoes|puddings|table|places|onions|herbs)$/;

/** The hour that was told apart from the rest of a clause: "she'll do the rolls from half six". */
const hourApart = ({ at, context }: Match): string | undefined => {
  const face = faceOf(at);
  return face && mealTime(face, context);
};

export const hands: Recogniser = {
  name: 'hands',
  moods: any,
  phrases: [
    // "mum's got the gravy till six", "Liv said she'd do the yorkies": with an hour beside it, if one is said.
    ...phrases(
      [
        '^ [my|our|her|his|their] {who:word} (has|has got|got|is on|is doing|is minding|is watching|is making|is tending|is handling|is looking after|is taking care of|is in charge of|will mind|will watch|will do) [the|my] {task:rest} (till|until) {clock} $',
        '^ [my|our|her|his|their] {who:word} is (minding|watching|tending|keeping an eye on) [the|my] {task:rest} $',
        '^ (her|his|their) {who:word} (has|has got|got|is on|is doing) [the|my] {task:rest} $',
        '^ [my|our|her|his|their] {who:word} (said|says|reckons|offered|promised|agreed) [that] [she|he|to] [would|will|can|could] (do|make|take|handle|look after|sort|sort out|take care of) [the|my] {task:rest} $',
        '^ [my|our|her|his|their] {who:word} (is|came|has come) (here|back|in|over|round) [to] (give|lend|giving|lending|help|helping) [me|us] [a] [hand] with [the|my] {task:rest} [(till|until) {clock}] $',
      ],
      (match) => {
        const who = match.words('who');
        const does = dishIn(match.words('task').replace(/ (till|until)$/, ''), match.context);
        if (does === undefined || notHelpers.test(who) || meansRoast(who)) return undefined;
        if (dishIn(who, match.context) !== undefined) return undefined;
        const mark = / (?:till|until) (<[cn]\d+>) $/.exec(match.line)?.[1];
        const until = mark === undefined ? undefined : match.mealTimeOf(mark);
        const from = hourApart(match);
        return {
          intent: 'add-hands',
          who,
          does,
          ...(from ? { from } : {}),
          ...(until ? { until } : {}),
        };
      },
    ),
    ...phrases(
      [
        '[my|our] {who:word} (is|will be|are) [on|doing|helping|helping me|helping out|helping with|going to help|here to help|making|peeling|taking care of|in charge of|handling|peeling|giving me a hand|lending a hand|looking after|sorting] (on|doing|helping|help|making|peeling|me|with|of|handling|sorting|out|after|$) [me|with] [the] [{rest:rest}]',
        '{who:word} (can|will|is going to|wants to) (help|give me a hand|lend a hand|pitch in|do the|take the|handle the|make the)',
        '(i have got|i have|we have|we have got|got|there is|there are) [a|an|some|two|another|extra|an extra|a pair of|two pairs of|an extra pair of|two of us] (help|helper|hands|sous chef|pair of hands|volunteer|extra hands|helping hands|of us cooking)',
        '(my|our) {who:thing} (is|are|will be|can|will) [here to|going to] (helping|help|giving me a hand|lend a hand|give me a hand|on {thing:word})',
      ],
      (match) => {
        const who = match.words('who');
        const line = match.line;
        if (
          /^(shop|store|supermarket|butcher|kettle|god|lord|after|it|that|this|what|he|she|they|i|we|you|dinner|roast|oven|food|meal|supper|lunch|foil|lid|plates|table|water|everyone|everybody|there|potatoes|beans|everything|beef|meat|who|which|guests|fan|pan|pot|tin|tray|kettle|hob|ring|lid|steamer|saucepan|grill)$/.test(
            who,
          ) ||
          / (is|are) on the (table|plates|board|counter|side|stove) /.test(` ${line}`) ||
          // "gravy's on the table".
          dishExactlyIn(who, match.context) !== undefined
        )
          return undefined;
        const task =
          / (?:on|doing|making|peeling|handling|after|of|sorting|do|take|handle|make) (?:the )?([a-z ]+) $/.exec(
            line,
          )?.[1];
        const helps = /(help|hand|volunteer|sous chef|of us cooking|pitch in)/.test(line);
        if (
          !helps &&
          !(
            task &&
            (dishIn(task, match.context) ||
              stepIn(task, match.context) ||
              /^(veg|vegetables|gravy|sides|spuds|washing up|sauce|dishes|carving|puddings)$/.test(
                task,
              ))
          )
        )
          return undefined;
        if (/(i need|need some|no help|can you help|not help)/.test(line)) return undefined;
        const does = task && (/^carving$/.test(task) ? 'carve' : dishIn(task, match.context));
        return {
          intent: 'add-hands',
          ...(who ? { who: who.replace(/^(my|our) /, '') } : {}),
          ...(does ? { does } : {}),
        };
      },
    ),
    ...phrases(
      [
        '^ [my|our] {who:word} [abi|bhai|bhaiya|didi|uncle|aunty] (peels|chops|trims|washes|scrubs|mashes|stirs|whisks|slices|shells|makes|does|cooks|lays|sets) [up|for me] [the|some|all the|my] {task:rest} $',
        '^ [my|our|the] {who:word} (is|are|is busy|is now|has started|started) (peeling|chopping|trimming|washing|scrubbing|mashing|stirring|whisking|topping|slicing|prepping|podding|shelling|making|cooking|boiling|setting|laying) [up|for me] [the|some|all the|my] {task:rest} $',
      ],
      (match) => {
        const who = match.words('who');
        const task = match.words('task').replace(/ (now|for me|already|right now)$/, '');
        if (notHelpers.test(who) || meansRoast(who) || dishIn(who, match.context) !== undefined)
          return undefined;
        const said = /^(them|these|those|they)$/.test(task)
          ? match.before.findLast((one) => 'dish' in one && one.dish !== undefined)
          : undefined;
        const does = said && 'dish' in said ? said.dish : dishIn(task, match.context);
        if (does === undefined && !chores.test(task)) return undefined;
        return { intent: 'add-hands', who, ...(does ? { does } : {}) };
      },
    ),
    // "Suzanne's here so she's on the spinach": whoever has just come.
    ...phrases(
      '^ (she|he) (is|will be) (on|doing|making|minding|peeling|looking after|in charge of|stirring) [the|my] {task:rest} $',
      (match) => {
        const before = match.whole.slice(0, Math.max(0, match.whole.indexOf(match.line)));
        const who =
          /(?:^| )([a-z]+) (?:is|has come|came) (?:here|back|home|over|in)(?: early| now| already| at last)*(?: to help)? (?:[,.] )?(?:so |and )?$/.exec(
            before,
          )?.[1];
        const does = dishIn(match.words('task'), match.context);
        return who === undefined || does === undefined || notHelpers.test(who) || meansRoast(who)
          ? undefined
          : { intent: 'add-hands', who, does };
      },
    ),
    ...phrases(
      '^ [my|our] {who:word} is (mashing|peeling|chopping|stirring|washing up|whisking|basting) [now|already|$] $',
      (match) => {
        const who = match.words('who');
        return (persons.test(who) || !commonWords.has(who)) &&
          !notHelpers.test(who) &&
          dishIn(who, match.context) === undefined
          ? { intent: 'add-hands', who }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(have|have got|got|put|set|asked|have put|stuck) [my|our|the] {who:word} (on|onto|doing|to do|making|peeling|stirring|scrubbing) [the] {task:rest} $',
        '^ [my|our] {who:word} (has|has got|is taking|takes|got|will take|can take) [the] {task:rest} $',
      ],
      (match) => {
        const who = match.words('who');
        const task = match.words('task').replace(/ (duty|now|tonight|for me)$/, '');
        const { lexicon } = match.context;
        const thing = [lexicon.dishes, lexicon.ingredients, lexicon.tools, lexicon.cuts].some(
          (things) => nameExactlyIn(things, who) !== undefined,
        );
        const dish = dishExactlyIn(task, match.context);
        const chore =
          /^(vegetables|gravy|sides|washing up|sauce|carving|puddings|drinks|table|starters|dishes)$/;
        if (/^to /.test(task)) return undefined;
        if (thing || meansRoast(who) || (dish === undefined && !chore.test(task))) return undefined;
        return /^(it|that|this|the|them|everything|lid|foil|salt|water|one|some|all|he|she|they|everyone|oven|heat|pan|tray|tin|a|an|who|we|i|you|what|which|nobody|dinner|lunch|food|more|fat|oil|butter|kettle|stuff|rest|put|taken|got|set|had|done|turned|been|gone|popped|moved|left|made|started|just|already)$/.test(
          who,
        )
          ? undefined
          : {
              intent: 'add-hands',
              who,
              ...(task === 'carving' ? { does: 'carve' } : dish ? { does: dish } : {}),
            };
      },
    ),
    ...phrases(
      [
        '(i am|i have to be|i will be|i need to be|going to be|we are|i have) [going|popping|heading|off|stepping|nipping|out|away|gone|just|running|ducking|got to go|busy|leaving] [out|away|off|upstairs|outside|to the (shop|shops|store|garden)|from the kitchen|next door|of the kitchen|of the house|shopping] (for|about|,|back in|gone) [about|be back in|another] {d:minutes}',
        '(popping|nipping|heading|stepping|going|off|leaving|running|ducking|out|away|gone|i will leave the kitchen|need to go|got to go|have to go|must go|need to step|need to pop|have to step|have to pop) [out|away|off|down|upstairs|next door|to the (shop|shops|store)|the kitchen] * [for|,|back in|be back in] {d:duration}',
        '[i will|i am|will] [be] back (in|after|within) [about] {d:minutes} $',
        '^ (away|afk|out|gone|brb) [for] {d:duration} $',
        '{d:duration} [for the] (round trip|there and back|return trip) ',
        '^ [i am] (popping|nipping|heading|going|off|running|stepping|ducking|dashing|driving) [out|off|over|down|round|up] to {what:thing} {d:duration} [tops|max|at most|$] ',
        '(be|gone|away|out) for {d:duration} $',
      ],
      (match) => {
        const minutes = match.minutes('d');
        if (
          /(it|potatoes|roast|they|oven|guests|power|that) (is|are|has|have|was)/.test(
            match.line,
          ) ||
          /(went|put|came|resting|behind|late|timer)/.test(match.line)
        )
          return undefined;
        return Number.isFinite(minutes) ? { intent: 'cook-away', minutes } : undefined;
      },
    ),
    ...phrases(
      [
        '^ (i am|i will be|i have got to|i have to|i need to|need to|have to|must) (going upstairs|going up|going outside|going downstairs|popping out|stepping out|heading out|going out|off to the shop|off to the shops|leaving the kitchen|pop out|step out|nip out|go out|leave the kitchen|step away|stepping away|pop to the shop|pop to the shops|nip to the shop|walk the dog|popping to the shop|popping to the shops|nipping out|away|out) [for (a bit|a while|a minutes|a moment|a sec|a little while)] $',
      ],
      { intent: 'cook-away' },
    ),
  ],
};
