/**
 * The second opinion at work: where nothing was heard in a clause it names an intent, if it is sure
 * enough and the clause has what that intent needs; where what was heard is most unlikely and
 * something else is most likely, it overrules.
 */
import { lineOf, type Mood } from '../clause.ts';
import type { Opinion } from '../opinion.ts';
import type { Placed } from '../placed.ts';
import type { Match, Meaning } from '../recogniser.ts';
import { fillAsked } from './fill-asked.ts';
import { fillTold } from './fill-told.ts';
import { mealWords } from './frames/words.ts';
import { moodOf } from './mood.ts';
import { uncardedDishIn } from './uncarded-dishes.ts';

const fill = { ...fillTold, ...fillAsked };

/** How likely an intent must be to be taken where nothing was heard, and to overrule what was. */
export const sureness = {
  alone: 0.3,
  /** In one clause of several: most of what is added to a report is colour. */
  beside: 0.6,
  against: 0.6,
  doubted: 0.05,
  /** What is found in one clause of several is let go when it is this unlikely and talk this likely. */
  colour: 0.3,
  stray: 0.02,
  /** One thing of several is let go when its clause and the whole text make it less likely than this. */
  aside: { inClause: 0.15, inText: 0.05 },
};

/** What is told or asked by the way, and is heard where it was only colour. */
const maybeColour =
  /^(report-(?!reading|oven|not-done)|repeat$|quiet$|pause$|resume$|undo$|start-over$|help$|lack$|skip-step$)/;

/** "I had it on the bone", beside a number, says which number is wrong: that is no colour. */
const doubtsANumber = ({ meaning, framed }: Placed): boolean =>
  !framed && meaning.intent === 'report-trouble' && meaning.trouble === 'probe-doubt';

/** "Seared it", "pulled it at 120": what the cook did to it, with no word left over, is no colour. */
const ownDeed =
  /^(?:i |we |have |just )*(?:seared|browned|pulled|took|tented|covered|carved|basted|drained|flipped) (?:it|them|her|the \w+) (?:out |off |at |up |down |over |in |foil |<[nt]\d+> |degrees |of |the |oven )*$/;
/** "It's back in", "they're going in now". */
const inAgain =
  /^(?:it|they|she) (?:is|are|went|has gone|have gone) (?:back |going )(?:in|out)(?: again| now| there)* $/;
/** "Sprouts are mush", "it's back on": a dish or the power and what has become of it, with no word left over. */
const ofADish = ({ tokens, clause, framed, meaning }: Placed): boolean =>
  !framed &&
  clause !== undefined &&
  tokens.length >= clause.tokens.length &&
  ((meaning.intent === 'report-trouble' &&
    (meaning.step !== undefined || meaning.trouble.startsWith('power-'))) ||
    meaning.intent === 'report-not-done');
const isOwnDeed = ({ clause, framed }: Placed): boolean =>
  !framed &&
  clause !== undefined &&
  (ownDeed.test(lineOf(clause.tokens)) || inAgain.test(lineOf(clause.tokens)));

/** Of several things heard in a text, those that neither their clause nor the text bears out are let go. */
export function withoutColour(
  placed: readonly Placed[],
  opinions: readonly Opinion[],
): readonly Placed[] {
  const { inClause, inText } = sureness.aside;
  const inWhole = (intent: string): number =>
    opinions.find((one) => one.intent === intent)?.likelihood ?? 0;
  const isColour = (one: Placed): boolean =>
    maybeColour.test(one.meaning.intent) &&
    !doubtsANumber(one) &&
    !isOwnDeed(one) &&
    !ofADish(one) &&
    one.likelihood !== undefined &&
    one.likelihood <= inClause &&
    inWhole(one.meaning.intent) <= inText;
  const kept = placed.filter((one) => !isColour(one));
  return kept.length > 0 ? kept : placed;
}

/** A denial heard as a deed would start what was not begun, and an emergency is never argued away. */
const standsWhatever = /^(report-not-done|emergency|unclear)$/;

/** A year, a price, a score: nothing in a kitchen has so high a number. */
const numberHigh = 999;

const isMeasurable = (match: Match): boolean =>
  match.line.split(' ').every((word) => {
    const quantity = match.quantityOfMark(word);
    return quantity?.kind !== 'number' && quantity?.kind !== 'temperature'
      ? true
      : quantity.value <= numberHigh;
  });

/** What an intent makes of a clause; undefined where a slot it needs is not there. */
function filled(intent: Opinion['intent'], match: Match): readonly Meaning[] | undefined {
  if (!isMeasurable(match)) return undefined;
  const made = fill[intent]?.(match);
  const list = made === undefined ? [] : [made].flat();
  return list.length > 0 ? list : undefined;
}

/** What an intent makes of a clause, if in its mood it may be guessed at all. */
export const guessed = (
  intent: Opinion['intent'],
  match: Match,
  mood: Mood,
): readonly Meaning[] | undefined =>
  mayBeGuessed(intent, match, mood) ? filled(intent, match) : undefined;

const explainsClause = (one: Placed, match: Match): boolean =>
  !one.framed && one.tokens.length >= match.line.trim().split(' ').length;

/**
 * "Now it's on a hundred": every word of the clause, and a number among them. "We want pigs in blankets": a dish
 * without a card has a name that nothing could be learnt of.
 */
const tellsWholeClause = (one: Placed, match: Match): boolean =>
  ((one.meaning.intent === 'report-oven' && one.meaning.temperature !== undefined) ||
    one.meaning.intent === 'have' ||
    one.meaning.intent === 'add-dish') &&
  explainsClause(one, match);

/** "Is it too early to turn the oven on" reports no oven, however like one the words are. */
const deed = /^(report-(oven|started|done|out|not-done|guests)|skip-step)$/;

/** "The leaflet says 145": a number that somebody else gives is no reading. */
const saidElsewhere =
  / (has|have) (written|noted|scribbled|marked|put) <[nt]| on the (paper|card|note|list|label|bag|wrapper) | (?:says|said) (?:here )?(?:on|in) the (?:packet|box|label|leaflet|website|recipe|book|instructions|side) | (says|said|reckons|recommends|told me to|swears) (to )?(pull|take|get|cook|bring|haul|carve|rest) | (leaflet|booklet|manual|instructions|guide|blurb|recipe|book|cookbook|website|internet|google|magazine|packet|blog|article|video|telly|programme) (\w+ ){0,5}(says|say|said|told|reckons|reckoned|swears|claims|thinks|thought|recommends|suggests) /;

/** "Last Christmas I pulled it at 135". */
const otherDay =
  / (last (year|time|week|christmas|month|sunday|thanksgiving|easter|weekend|summer)|the other (day|night)|years ago|used to|(i|we) once|back in the day|next (year|time|week)) /;

/** "If I whack it up to 350", "if I'd bought the four rib": what is only supposed has not happened. */
const supposed =
  /^(and |but |so |well |or )*(if|unless|in case|supposing|suppose|imagine|assuming|as if|say (it|the|we|they|there|that|you)) /;
const happened =
  /^(report-|describe-roast|skip-step|lack|have|set-guests|set-serving-time|cook-away|running-behind)/;

const inverted =
  /^(?:(?:so|and|but) )?(?:(?:what|why|how|when|which|where|who|whose) (?!an? |do you know )|(?:is|are|was|were|do|does|did|should|would|could|can|will|has) (?:not )?(?:i|it|we|you|they|he|she|that|this|there|the) |(?:do|does|did|can|could|will|would|should) (?:an?|my|our) )/;

/** What somebody is only about to do. */
const toCome =
  / (i|we) (am|are) (\w+ )?(going to|about to) | (i|we) (will|shall) (\w+ )?(turn|put|take|pull|set|drop|do|get|start|carve|knock|lower) /;

/** What changes something: never taken from a question that says nothing of the kind. */
const acts = new RegExp(`${happened.source}|^set-doneness|^(add|drop)-dish`);

/** "Wasn't it 110", and what hangs on it: "which goes in first, carrots or beans". */
const asksOutright = ({ line, whole }: Match): boolean =>
  inverted.test(line) ||
  (inverted.test(whole) && (/ if /.test(whole) || line.split(' ').length <= 4)) ||
  goesOnAsking(line, whole);

/** "When must I put the carrots and parsnips in?": the end of a question. */
const goesOnAsking = (line: string, whole: string): boolean =>
  whole
    .split(/(?<= )[.!?] /)
    .some(
      (sentence) =>
        / (?:and|or) $/.test(` ${sentence.slice(0, Math.max(0, sentence.indexOf(line)))}`) &&
        inverted.test(sentence.replace(/^(?:ok|right|so|now|well) ,? ?/, '')),
    );

/** Who makes a dish, or lets it fall, has not left it out. */
const keepsDish =
  /^(?:so |and )?(?:i|we) (?:am|are) (?:now |still |just )?(?:doing|making|cooking|on|stirring|finishing) | dropped (?:the|a|my|our|his|her) (?!.* (?:menu|list|plan) )/;

const ofSomebody =
  / (finger|fingers|hand|hands|thumb|arm|palm|wrist|leg|foot|face|eye|eyes|skin is|throat|tongue|lips|me|myself|himself|herself|i|he|she|gran\w*|grandad|grandpa|mum|dad|kid|kids|child|baby|somebody|someone|blood|bleeding|bleeds|fire|flames?|alight|smoke|chok\w+|breath\w*|collapsed|fainted|ambulance|hospital|burn|burns|help|rash|swelling|swollen|blister\w*|scald\w*) /;

/** Whether what a clause is like may be taken for what it tells. */
function mayBeGuessed(intent: Opinion['intent'], match: Match, mood: Mood): boolean {
  // While the menu is made, "is there room for red cabbage" wishes for it.
  const wished = match.context.stage === 'planning' && /^(add|drop)-dish$/.test(intent);
  if (mood === 'question' && acts.test(intent) && !wished && asksOutright(match))
    return match.context.expecting === 'reading' && intent === 'report-reading';
  if (supposed.test(match.line) && happened.test(intent)) return false;
  if (/ (joking|kidding|pulling your leg) /.test(match.whole)) return false;
  // "I was going to do asparagus but": what was meant once.
  if (
    acts.test(intent) &&
    / (was|were) (going|planning|about|meaning|supposed) to /.test(` ${match.line}`)
  )
    return false;
  // "nine, ten if Jack comes"; "me and six others" was counted as a whole.
  if (
    intent === 'set-guests' &&
    (/ if /.test(match.line) || match.before.some((one) => one.intent === 'set-guests'))
  )
    return false;
  // "From the fridge, plus four": degrees.
  if (intent === 'set-guests' && / (fridge|freezer|oven|degrees) /.test(` ${match.line}`))
    return false;
  // "skin and fat cut off": what is cut, burnt or fallen must be somebody.
  if (intent === 'emergency' && !ofSomebody.test(` ${match.line}`)) return false;
  // "don't tell me at 110", "not one of them's here".
  if (intent === 'watch' && / not (tell|call|shout|ring|warn) /.test(` ${match.line}`))
    return false;
  // "Walt dropped the gravy boat", "I'm doing the rolls".
  if (intent === 'drop-dish' && keepsDish.test(match.line)) return false;
  if (intent === 'note-guest' && /^(no one|nobody|none of (us|them|you)) /.test(match.line))
    return false;
  if (intent === 'report-guests' && / not <n\d+> of /.test(` ${match.line}`)) return false;
  if (
    acts.test(intent) &&
    / (nobody|no one|(i|we) never) (ever )?(said|mentioned|told) /.test(` ${match.line}`)
  )
    return false;
  if (
    intent === 'cancel-timer' &&
    /^(leave|keep|let) .*(running|going|on|run|go) /.test(match.line)
  )
    return false;
  if (
    /^report-(started|done|out)$/.test(intent) &&
    /^(remind|tell|shout|nudge|ping|wake) /.test(match.line)
  )
    return false;
  // "half six is too late" is the hour that it shall not be.
  if (
    intent === 'set-serving-time' &&
    / (too (late|early|soon)|no good|will not (do|work)) /.test(match.line)
  )
    return false;
  // A dish that no card knows is not the roast.
  if (
    /^report-(started|done|out)$/.test(intent) &&
    uncardedDishIn(match.line.replace(/ (are|is|have|has|went|gone) .*/, ''), match.context) !==
      undefined
  )
    return false;
  // "so 250 then", while the oven is hot: no hour of dinner.
  if (
    intent === 'set-serving-time' &&
    /^(preheat|sear|low-roast)$/.test(match.context.stage ?? '') &&
    match.context.expecting !== 'serving-time' &&
    match.marks('c').length === 0 &&
    match.marks('n').every((mark) => match.withGroups({ n: `${mark} ` }).number('n') >= 100) &&
    !mealWords.test(` ${match.line}`)
  )
    return false;
  // "I'm going to turn it down to 250": it is not down.
  if (
    mood === 'intention' &&
    /^report-(oven|started|out|done)$/.test(intent) &&
    toCome.test(` ${match.line}`)
  )
    return false;
  // "we need thyme" lacks it.
  if (intent === 'add-dish' && /^(i|we) (still )?need /.test(match.line)) return false;
  if (
    /^(report-(reading|oven|out|started|done|not-done|trouble)|describe-roast|set-guests)/.test(
      intent,
    ) &&
    otherDay.test(` ${match.line}`)
  )
    return false;
  if (
    intent === 'report-out' &&
    / (probe|thermometer|plug|cork|drawer|cable|wire|battery) (back )?out | (sat|stood|left|sitting|standing) out /.test(
      ` ${match.line}`,
    )
  )
    return false;
  // "so take it out, or?", "the big oven is at 80 with the meat".
  if (
    mood === 'question' &&
    happened.test(intent) &&
    /^(so )?(take|pull|put|turn|carve|serve|get|bring|leave|start|set) /.test(match.line)
  )
    return false;
  if (intent === 'report-reading' && / oven (is|at|on) /.test(` ${match.line}`)) return false;
  return !(/^report-(reading|oven)$/.test(intent) && saidElsewhere.test(` ${match.line}`));
}

export function overruled(
  match: Match,
  found: readonly Placed[],
  opinions: readonly Opinion[],
  { mood, clauses }: { mood: Mood; clauses: number },
): readonly Meaning[] | undefined {
  const [first] = opinions;
  if (!first) return undefined;
  const likelihood = (intent: string): number =>
    opinions.find((one) => one.intent === intent)?.likelihood ?? 0;
  // "and another one for twelve": more of what was said before is no colour.
  const before = match.before.at(-1)?.intent;
  const goesOn = found.every(
    ({ framed, meaning }) =>
      meaning.intent === before && (!framed || meaning.intent === 'report-reading'),
  );
  if (
    clauses > 1 &&
    found.length > 0 &&
    !goesOn &&
    likelihood('unrelated') >= sureness.colour &&
    found.every(
      (one) =>
        !doubtsANumber(one) &&
        // Who eats here is never by the way: other cautions hang on it.
        one.meaning.intent !== 'feed-public' &&
        !tellsWholeClause(one, match) &&
        !(one.meaning.intent.startsWith('ask-') && explainsClause(one, match)) &&
        likelihood(one.meaning.intent) <= sureness.stray,
    )
  )
    return [];
  if (/^(unrelated|unclear)$/.test(first.intent)) return undefined;
  if (deed.test(first.intent) && moodOf(match.line) === 'question') return undefined;
  if (!mayBeGuessed(first.intent, match, mood)) return undefined;
  // "it goes out at 55, yes?" reads nothing; "104 in the middle?" may.
  if (
    first.intent === 'report-reading' &&
    mood === 'question' &&
    / (goes|comes|out|pull|take|should|must|supposed) /.test(` ${match.line}`)
  )
    return undefined;
  if (found.length === 0)
    return first.likelihood >= (clauses > 1 ? sureness.beside : sureness.alone)
      ? filled(first.intent, match)
      : undefined;
  if (found.length > 1 || first.likelihood < sureness.against) return undefined;
  // A phrase that accounts for every word of the clause needs no second opinion.
  if (explainsClause(found[0]!, match)) return undefined;
  const said = found[0]!.meaning.intent;
  if (standsWhatever.test(said)) return undefined;
  return said !== first.intent && likelihood(said) <= sureness.doubted
    ? filled(first.intent, match)
    : undefined;
}
