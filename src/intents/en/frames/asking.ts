/** Frames of questions: what is asked for by the words a question holds, wherever they stand. */
import { nameExactlyIn } from '../../names.ts';
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { wordMeant } from '../recognisers/ask-temperature.ts';
import { headsOf } from '../recognisers/days-asked.ts';
import { degrees } from '../recognisers/subjects.ts';
import { meansRoast, stepIn } from '../steps.ts';
import { dishNamed } from './dinner.ts';
import { callWords, holds } from './words.ts';

/** What a question is about: the roast, a dish, a moment of the day, or nothing that was named. */
export function subject(match: Match): string | undefined {
  const dish = dishNamed(match.line, match);
  if (dish) return dish;
  if (holds(match, / (pull|come out|take it out|comes out|coming out) /)) return 'pull';
  if (holds(match, / oven /) && holds(match, / (temperature|hot|heat|degrees|set|gas|mark) /))
    return 'oven';
  if (holds(match, / (sear|searing|browning) /)) return 'sear';
  if (holds(match, / (rest|resting) /)) return 'rest';
  if (holds(match, / (carve|carving) /)) return 'carve';
  if (holds(match, / (dinner|supper|lunch|eat|eating|table|serve) /)) return 'dinner';
  if (holds(match, / oven /)) return 'oven';
  return holds(match, / (roast|joint|meat|beef|rib|lamb|pork) /) ? 'roast' : undefined;
}

export const topicOf = (match: Match): string | undefined => {
  const words =
    /(?:how|why|what)(?: [a-z]+)? (?:do|does|should|can|could|would|must|is|are|to|did) (?:not )?(?:i|we|you|one|it|the|it is)? ?([a-z ]+) $/.exec(
      match.line,
    )?.[1];
  return words ? (stepIn(words, match.context) ?? words.trim()) : subject(match);
};

const aboutRoast =
  / (roast|joint|meat|beef|lamb|pork|rib|ribs|oven|it|that|this|they|them|core|middle|probe|thermometer|temperature|temp|dinner|supper|lunch|gravy|potatoes|rest|resting|carve|cook|cooked|cooking|step|steps|timer|guests|pan|foil|rack|bones?|butter|sauce|sear|degrees|heat|<[tn]\d+>|i|we) /;

/** Questions other people are asked. */
const others =
  / (you|your|he|she|him|her|his|they doing|who|whose|weather|score|time is it|day is it|film|song|wine|beer|drink|drinks|dessert|pudding|kids|dog|cat|school|work|news|name|live|corkscrew|keys|glasses|remote|door|loo|toilet|tomorrow|next week|weekend|pub|salt|water) /;

/** "Take it out?", "start the puddings?": whether that is what is to be done now. */
const deedAsked =
  /^(?:(?:so|and|now|then) )*(?:take|pull|start|turn|put|carve|cover|uncover|leave|serve|drop|knock|flip|baste|tent|begin|crank|open|bring|save|rescue|salvage) (?:(?:it|them|her|that|those|this|the \w+(?: \w+)?) )?(?:(?:out|off|in|on|up|down|back|now|over|yet|already|longer|a bit) )*(?:to <[tng]\d+> )?$/;

export const questionFrame: Frame = {
  name: 'question',
  moods: ['question'],
  build(match): Meaning | undefined {
    const short = match.line.split(' ').length <= 13;
    if (!short) return undefined;
    // "she's pregnant. Is medium rare okay for her": what is asked is whether it is safe.
    if (
      match.before.some((one) => one.intent === 'note-guest' && one.need === 'vulnerable') &&
      holds(match, / (pink|rare|medium|bloody|safe|raw) /) &&
      holds(match, / (ok|all right|fine|good|safe|bad|eat|have|she|he|her|him|they|them) /)
    )
      return { intent: 'ask-safety', about: spoken(match) };
    if (
      holds(match, / still (good|ok|fine|all right) /) &&
      holds(match, / (they|it|leftovers|slices|meat|roast|beef) /) &&
      /^(served|put-away)$/.test(match.context.stage ?? '')
    )
      return { intent: 'ask-safety', about: spoken(match) };
    if (/^is there (any|a) (point|reason|sense|use|benefit) (in|to|of) /.test(match.line)) {
      const topic = topicOf(match);
      return { intent: 'ask-why', ...(topic ? { topic } : {}) };
    }
    // "Too slow, or?", "all good?"
    if (
      /^(it is |is |this is |that is )?(too|still|a bit|bit|very|so) (slow|fast|late|behind|hot|cold|dark|pale|pink|dry|low|high) $/.test(
        match.line,
      )
    )
      return { intent: 'ask-status' };
    const before = match.before.at(-1)?.intent;
    if (deedAsked.test(match.line) && (before === undefined || before.startsWith('report-')))
      return {
        intent: /^(?:\w+ )?(save|rescue|salvage) /.test(match.line) ? 'ask-options' : 'ask-next',
      };
    if (
      /^(what|which) (steps?|herbs|spices|seasonings?) (has|have|does|do|go|goes|are|is) /.test(
        match.line,
      )
    ) {
      const topic = dishNamed(match.line, match) ?? topicOf(match);
      return { intent: 'ask-how', ...(topic ? { topic } : {}) };
    }
    if (/^(do|does) (the|my|our) .*need /.test(match.line) && match.marks('dnc').length === 0) {
      const topic = dishNamed(match.line, match);
      if (topic && !holds(match, / (longer|more|time|turning|to come|out|now|yet) /))
        return { intent: 'ask-how', topic };
    }
    if (
      /^(should|shall|do) (i|we) (crank|turn|bump|push|whack|raise|lower|drop|knock) (it|the oven|the heat|the temperature) (up|down|now|$)|^(should|shall) (i|we) crank it $/.test(
        match.line,
      )
    )
      return { intent: 'ask-options' };
    if (
      /^(can|could|should) (i|we) (tent|cover|wrap|line|tie) (it|them|the \w+) (with|in|using) /.test(
        match.line,
      )
    )
      return { intent: 'ask-substitute' };
    const safety =
      / (safe|unsafe|safely|dangerous|risk|risky|sick|ill|poisoning|pregnant|toddler|toddlers|baby|bacteria|salmonella|leftovers|overnight|room temperature|on the counter|reheat|refreeze|spoil|(go|gone|goes|going|went|smells?|smelling|tastes?|bit) off) /;
    if (holds(match, safety) && !holds(match, / (baby asleep|drive) /))
      return { intent: 'ask-safety', about: spoken(match), ...degrees(match) };
    if (
      holds(match, others) &&
      !holds(
        match,
        / (do you (think|reckon)|would you|can you|did you (get|hear)|are you|(do|would|should) you (make|cook|carve|tie|truss|french|rest|sear|do|slice|cut|baste)|you (make|carve|tie|truss|french|slice) (the|it|a)|salt|water|red wine|white wine|instead|telling me) /,
      )
    )
      return undefined;
    if (!holds(match, aboutRoast) && !dishNamed(match.line, match)) return undefined;
    const about = subject(match);
    const amount = amountIn(match);
    if (amount) return { intent: 'ask-amount', ingredient: amount, ...headsOf(match) };
    const ingredient =
      /^(can|could|would|will|may|should|is|does|do|must|has|what about|how about|what (else )?(can|could|would)) /.test(
        match.line,
      )
        ? ingredientIn(match)
        : undefined;
    if (
      ingredient &&
      holds(
        match,
        / (use|instead|ok|fine|work|works|do|substitute|swap|replace|sub|fresh|dried|have to be|has to be|must be|must it be|all right|get away|matter|any difference) /,
      ) &&
      !holds(match, / (in now|in yet|done|go in|how much|cover|wrap|tent|baste) /)
    )
      return { intent: 'ask-substitute', ingredient };
    const values = match.marks('t').length > 0 || match.marks('n').length > 0;
    if (
      values &&
      holds(
        match,
        / (too|ok|fine|enough|right|low|high|hot|cold|much|early|late|soon|gun|pulling|medium|rare|by now|normal|good|bad|done|happens|if|be|mean|need|hit|reach|pull|oven|all right|over|under|safe|should|about|at) /,
      ) &&
      match.marks('dc').length === 0
    )
      return {
        intent: 'ask-temperature',
        ...degrees(match),
        ...(about ? { about } : {}),
        ...wordMeant(match.line),
      };
    if (
      /^((at |by |until |till |for )?(how long|how much longer|how much time|how soon|when|what time|is it time|how many (more )?minutes|how close|how far)|eta )/.test(
        match.line,
      )
    )
      return { intent: 'ask-time-left', ...(about ? { about } : {}) };
    if (
      holds(
        match,
        / (temperature|temp|how hot|how warm|how high|degrees|what heat|what mark|core|number|internal|target|meant to be (on|at)|supposed to (be|read)|what gas) /,
      ) ||
      /^(what|where) (should|must|is) (it|the middle|the core) (at|read|be at|reading)/.test(
        match.line,
      )
    )
      return {
        intent: 'ask-temperature',
        ...(about ? { about } : {}),
        ...wordMeant(match.line),
      };
    if (
      /^(why|how come|what for|what is the (point|reason|purpose|use|sense|idea|logic)|for what|what does \w+ do |what good|what difference|what is \w+ for )/.test(
        match.line,
      )
    ) {
      const topic = topicOf(match);
      return { intent: 'ask-why', ...(topic ? { topic } : {}) };
    }
    if (
      /^(how (do|should|can|would|to|does|must|thick|thin|deep|high|fine|finely|often|is it|are they|you)|what is the (way|best|right|proper|trick|method|knack|secret|technique)|what do you mean|(in |on )?(what|which) (way|side|direction|end|part|order|shelf|position)|fat side|with (the fat|what)|should (it|the \w+) be (covered|uncovered|wrapped|on|in|tied)|am i (supposed|meant) to (cover|baste|turn|tent|wrap)|where (do|should|does|must)|which way|what (pan|tin|tray|knife|shelf|rack)|which (pan|shelf|tin|rack|knife)|should (i|we) (be )?(basting|covering|turning|cover|baste|tent|wrap|salt|turn|flip|open|stir|drain|dry)|do (i|we) (need to|have to) (cover|baste|tent|wrap|turn|flip|peel|salt|dry|drain|take)|can (i|we) (open|cover|baste|wrap))/.test(
        match.line,
      )
    ) {
      const topic = topicOf(match);
      return { intent: 'ask-how', ...(topic ? { topic } : {}) };
    }
    if (
      holds(match, / (next|now|first|start|begin|be doing|to do|doing now) /) &&
      /^(what|which|should|do|shall|am|is there|anything|so what|can)/.test(match.line) &&
      !holds(match, / (happening|temperature) /)
    )
      return { intent: 'ask-next' };
    if (
      /^(is|are|am|have|has|did|does|do|will|how|what about|how about|was) /.test(match.line) &&
      holds(
        match,
        / (it|that|this|everything|roast|joint|meat|beef|dinner|we|i|oven|they|potatoes|beans|gravy) /,
      ) &&
      holds(
        match,
        / (done|ready|ok|all right|fine|slow|fast|normal|enough|wrecked|ruined|burnt|overcooked|track|time|late|cooked|going|doing|look|looking|good|bad|right|worry|far|hot|behind|ahead|dry|raw|too|about|coming|rescue|save|saved|salvageable) /,
      )
    )
      return { intent: 'ask-status' };
    if (
      /^(what|how) about (the |my |our )?/.test(match.line) &&
      (about ||
        /^(what|how) about (them|it|him|her|those|these|the (other|others|rest|veg|vegetables|sides)) $/.test(
          match.line,
        ))
    )
      return { intent: 'ask-status' };
    return undefined;
  },
};

/** "Is two pounds of potatoes enough": an amount of something that a card asks for. */
function amountIn(match: Match): string | undefined {
  if (!holds(match, / (enough|too much|too many|too little|sufficient|plenty) /)) return undefined;
  if (match.marks('wn').length === 0 && !holds(match, / (much|many) /)) return undefined;
  const words = /(?:of|many|much|<[wn]\d+>) ([a-z]+(?: [a-z]+)?) /.exec(match.line)?.[1];
  if (words === undefined || /^(time|degrees|minutes|people|the|it)\b/.test(words))
    return undefined;
  const { lexicon } = match.context;
  const named =
    nameExactlyIn(lexicon.ingredients, words) ??
    nameExactlyIn(lexicon.ingredients, words.split(' ')[0]!) ??
    dishNamed(words, match);
  return named === undefined ? undefined : words.split(' ')[0];
}

export const spoken = (match: Match): string =>
  match.line
    .replaceAll(/<\w+> ?|[|?,.!]/g, '')
    .replaceAll(/ +/g, ' ')
    .trim();

export function ingredientIn(match: Match): string | undefined {
  const words = match.line
    .trim()
    .split(' ')
    .filter((word) => /^[a-z-]+$/.test(word));
  for (const length of [3, 2, 1])
    for (let at = 1; at + length <= words.length; at++) {
      const part = words.slice(at, at + length).join(' ');
      if (
        /^(the|a|it|i|we|is|do|to|use|ok|of|in|for|that|this|be|have|on|not|roast|meat|beef|fine)\b|\b(the|a|it|is|of|in|for|to|instead|ok)$/.test(
          part,
        ) ||
        meansRoast(part)
      )
        continue;
      const found = nameExactlyIn(match.context.lexicon.ingredients, part);
      if (found) return found;
    }
  return undefined;
}

/** Wishes for a call or a question put as a statement: "I'd like to know how long". */
export const wonderingFrame: Frame = {
  name: 'wondering',
  moods: ['statement', 'intention', 'request'],
  build(match): Meaning | undefined {
    if (
      !holds(
        match,
        / (how long|how much longer|what time|when|know|wonder|wondering|idea|no clue|not sure) /,
      )
    )
      return undefined;
    if (holds(match, / (how long|how much longer|what time) /) && !holds(match, callWords))
      return { intent: 'ask-time-left', ...(subject(match) ? { about: subject(match)! } : {}) };
    if (holds(match, / (what to do|what is next|what now|what comes next) /))
      return { intent: 'ask-next' };
    return undefined;
  },
};
