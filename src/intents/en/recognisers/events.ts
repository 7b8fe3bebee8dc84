/** The steps that words name, begun, ended or brought out of the oven. */
import { minutesUntil, pastTime } from '../../moment.ts';
import { faceOf, type Match, type Meaning } from '../../recogniser.ts';
import {
  dishIn,
  dishStep,
  inStepAmong,
  inStepOf,
  makingStep,
  meansRoast,
  roastStep,
  stepIn,
  stepOfNamed,
} from '../steps.ts';
import { isSetting, momentOf } from './moment-of.ts';
import { looksLikeOven, whichOven } from './temperatures.ts';

export const lists = (words: string): string[] =>
  words.split(/ (?:and|plus) /).map((part) => part.replace(/^the /, '').trim());

/** Words of a call that is wished for. */
const errand = /(remind|timer|alarm|tell me|shout|let me know)/;

/** Nothing but the place was said: "in the oven", "in there". */
const placeAlone = (match: Match): boolean =>
  match.words('who') === '' && !/(put|popped|slid|went|goes|gone|got|shoved)/.test(match.line);

/** "It's in at two forty": what the oven is set to, told with the roast that went into it. */
function ovenBeside(match: Match): Meaning[] {
  const mark = / (?:in|oven) (?:at|on) (<[nt]\d+>) (?:degrees )?(?:now )?(?:$|[,.|])/.exec(
    ` ${match.line}`,
  )?.[1];
  if (mark === undefined) return [];
  const slot = match.withGroups({ temperature: `${mark} ` });
  const said = slot.temperature('temperature');
  const quantity = match.quantityOfMark(mark);
  const clock = quantity?.kind === 'number' && quantity.face?.hour !== undefined;
  const which = whichOven(match.line);
  return looksLikeOven(match, said) && (!clock || isSetting(quantity, match.context))
    ? [{ intent: 'report-oven', ...said, ...(which ? { which } : {}) }]
    : [];
}

/** Steps begun for each thing named: "the potatoes and the beans are in". */
export function startedIn(match: Match): Meaning[] | undefined {
  if (errand.test(match.line) || (match.groups.who ?? '').includes('<d')) return undefined;
  // "at 450 in the oven", "four twenty five in there": the oven's number, not the roast put in.
  // "basically raw | in there": the leavings of another report.
  if (placeAlone(match) && match.line.includes('|')) return undefined;
  if (placeAlone(match) && match.before.some((one) => one.intent === 'report-oven'))
    return undefined;
  // "gas mark 2 it's on": what is left beside the oven is the oven's.
  if (match.line.includes('|') && match.before.at(-1)?.intent === 'report-oven') return undefined;
  const words = match.words('who');
  // "127 in the oven" is a number, and puts nothing in.
  if (/^<n\d+>$/.test((match.groups.who ?? '').trim())) return undefined;
  const moment = momentOf(match, { lasting: true });
  if (words === '' || meansRoast(words)) {
    if (/^(she|he)$/.test(words)) return undefined;
    return [{ intent: 'report-started', step: 'roast-in', ...moment }, ...ovenBeside(match)];
  }
  if (/^(they|them|both|these|those)$/.test(words)) {
    const open = match.context.openSteps.find((step) => step.endsWith('.in'));
    const said = match.before.findLast((one) => 'dish' in one && one.dish !== undefined);
    const dish = said && 'dish' in said ? said.dish : match.context.dishes[0];
    const step = open ?? (dish ? inStep(dish, match) : undefined);
    return step ? [{ intent: 'report-started', step, ...moment }] : undefined;
  }
  const steps = lists(words).map((part) => {
    const dish = dishIn(part, match.context);
    return dish
      ? (inStepKnown(dish, match) ?? stepNamed(`${part} on`, match) ?? `${dish}.in`)
      : undefined;
  });
  if (steps.some((step) => step === undefined)) return undefined;
  return [
    ...steps.map((step) => ({ intent: 'report-started' as const, step: step!, ...moment })),
    ...ovenBeside(match),
  ];
}

/** "The butter is on": a step that goes by those words. */
const stepNamed = (words: string, match: Match): string | undefined =>
  match.context.lexicon.steps.find((step) => step.names.includes(words.replace(/^the /, '')))?.id;

export const inStep = (dish: string, match: Match): string => inStepOf(dish, match.context);

const inStepKnown = (dish: string, match: Match): string | undefined =>
  inStepAmong(dish, match.context);

/** "It's out at 124": how far it had come, unless the clock showed that just now. */
function coreAt(match: Match): { temperature: number; unit?: 'F' | 'C' } | undefined {
  const mark = / at (<[nt]\d+>)/.exec(` ${match.line}`)?.[1];
  if (!mark) return undefined;
  const slot = match.withGroups({ temperature: `${mark} ` });
  const said = slot.temperature('temperature');
  const inF = (said.unit ?? match.context.units.temperature) === 'F';
  const [low, high] = inF ? [95, 175] : [38, 80];
  if (!(said.temperature >= low && said.temperature <= high)) return undefined;
  const face = faceOf(match.quantityOfMark(mark));
  // With the roast in the oven, who pulls it says how far it had come.
  const [least, most] = inF ? [105, 145] : [40, 63];
  if (match.context.stage === 'low-roast' && said.temperature >= least && said.temperature <= most)
    return said;
  const ago =
    face?.hour === undefined
      ? 999
      : (1440 - minutesUntil(pastTime(face, match.context), match.context)) % 1440;
  return ago <= 45 ? undefined : said;
}

export function outOf(match: Match): Meaning[] | undefined {
  const words = match.words('who');
  const moment = momentOf(match);
  if (errand.test(match.line)) return undefined;
  // "it came out beautiful": how, not that.
  if (
    / (came|come|comes|turned) out (so |really |very |absolutely |all |nice and )?(beautiful|beautifully|perfect|perfectly|great|lovely|well|fine|raw|dry|tough|grey|nice|nicely|good|better|bad|delicious|pink|rare|medium|overdone|overcooked|undercooked|amazing|gorgeous|brilliant|wonderful)/.test(
      ` ${match.line}`,
    )
  )
    return undefined;
  // "it's been sat out since eleven": out of the fridge, before there is an oven to come out of.
  if (
    / (sat|stood|left|sitting|standing|been) out (since|for) | (sat|stood|sitting|standing) out /.test(
      ` ${match.line}`,
    )
  )
    return /^(planning|prep|preheat)$/.test(match.context.stage ?? '') &&
      (words === '' || meansRoast(words))
      ? [{ intent: 'report-done', step: 'out-of-fridge', ...moment }]
      : undefined;
  // "the toddler pulled the probe out": the roast is in.
  if (
    / (probe|thermometer|plug|cork|drawer|cable|wire|battery|splinter|tooth) (back )?out /.test(
      ` ${match.line}`,
    )
  )
    return undefined;
  // "smoke pouring | out of the oven": the leavings of another report.
  if (words === '' && match.line.includes('|')) return undefined;
  // "Out, out, out!" drives somebody from the kitchen.
  if (words === '' && /(^| )out ,? ?out /.test(match.whole)) return undefined;
  // "yorkshires are up and out".
  if (words === '' && /^out (now )?$/.test(match.line)) {
    const named = dishIn(/^(?:the )?(\S+)/.exec(match.whole)?.[1] ?? '', match.context);
    if (named) return [{ intent: 'report-out', what: named, ...moment }];
  }
  // "She's out": the roast, while it is in.
  const she = /^she$/.test(words) && /^(sear|low-roast)$/.test(match.context.stage ?? '');
  if (words === '' || she || meansRoast(words)) {
    const core = coreAt(match);
    // The number after "at" is the core's: only what stood apart in the clause says when.
    const then = match.minutesAgo === undefined && match.at === undefined ? {} : moment;
    return core
      ? [
          { intent: 'report-out', ...then },
          { intent: 'report-reading', ...core, ...then },
        ]
      : [{ intent: 'report-out', ...moment }];
  }
  if (/^(they|them|both|these|those)$/.test(words)) {
    const open = match.context.openSteps.find((step) => step.endsWith('.out'));
    const said = match.before.findLast(
      (one) => 'step' in one && typeof one.step === 'string' && one.step.includes('.'),
    );
    const labelled = match.before.findLast((one) => 'label' in one && one.label !== undefined);
    const label =
      labelled && 'label' in labelled ? dishIn(labelled.label ?? '', match.context) : undefined;
    const what = label
      ? label
      : said && 'step' in said
        ? (said.step as string).split('.')[0]!
        : open
          ? open.split('.')[0]!
          : match.context.dishes.length === 1
            ? match.context.dishes[0]!
            : 'sides';
    return [{ intent: 'report-out', what, ...moment }];
  }
  const named = lists(words).map((part) => dishIn(part, match.context));
  if (named.some((dish) => dish === undefined)) return undefined;
  return named.map((what) => ({ intent: 'report-out' as const, what: what!, ...moment }));
}

const isFinishing = (line: string): boolean => / (finished|done|stopped) \w+ing $/.test(` ${line}`);

const finishing =
  /^(done|made|ready|finished|cooked|sorted|complete|prepared|mixed|whipped|good to go|set|thickened|reduced|strained|mashed|glazed|roasted|boiled|steamed|drained|dressed|baked|plated)$/;

export function doneMeaning(match: Match): Meaning | readonly Meaning[] | undefined {
  // "the small oven is at 200 | for potatoes": what is left beside the oven is the oven's.
  if (/[|] (for|with) /.test(match.line) && match.before.at(-1)?.intent === 'report-oven')
    return undefined;
  const moment = momentOf(match);
  const { context } = match;
  if (/fridge/.test(match.line)) return undefined;
  if (/^(i|we) (am|are) (done|finished) (with )?(this|you|work|it all|talking)/.test(match.line))
    return undefined;
  if (match.has('step')) {
    const step = stepIn(match.words('step'), context);
    return step ? { intent: 'report-done', step, ...moment } : undefined;
  }
  if (match.has('doing')) {
    const verb = match.words('doing');
    const who = match.words('who');
    if (!/ing$/.test(verb)) return undefined;
    const dish = who === '' ? undefined : dishIn(who, context);
    const step = dish
      ? (dishStep(dish, verb, context) ??
        (/^(making|cooking|doing|roasting|preparing)$/.test(verb)
          ? verb === 'roasting'
            ? inStep(dish, match)
            : makingStep(dish, context)
          : undefined))
      : roastStep(verb);
    if (
      !step ||
      (dish === undefined &&
        who !== '' &&
        !meansRoast(who) &&
        !/^(bones|ends|rib bones)$/.test(who))
    )
      return undefined;
    return { intent: 'report-started', step, ...moment };
  }
  const verb = match.words('verb');
  const who = match.words('who');
  // "scrubbed the potatoes": what stands first must be a participle, or "have lunch" would do.
  if (match.line.startsWith(`${verb} `) && !/(ed|cut|made|done|beaten)$/.test(verb))
    return undefined;
  if (verb === 'roast' || verb === 'put' || /^(of|in|at|on|to|for)( |$)/.test(who))
    return undefined;
  if (
    /^(in|out|on|off|here|late|late|early|coming|ing)$/.test(verb) ||
    /not|nearly|almost/.test(match.line)
  )
    return undefined;
  if (/^(look|looks|looking|seem|seems)/.test(verb)) return undefined;
  // "I want plates down by seven" is a wish.
  if (/^(i|we|they) (want|would|need|like) /.test(match.line)) return undefined;
  // "the meat" names a thing and reports nothing.
  if (/^(the|a|an|my|our|this|that|some|all)$/.test(who)) return undefined;
  const steps = lists(who).map((part) => {
    const dish = dishIn(part, context);
    if (dish)
      return (
        stepOfNamed(part, verb, context) ??
        (finishing.test(verb) ? makingStep(dish, context) : undefined)
      );
    if (/^(it|that) (with|in|all)/.test(part) && roastStep(verb)) return roastStep(verb);
    if (
      meansRoast(part) ||
      /^(fat|fat cap|sinew|bones|ends|rib bones|everything|roast and bones)$/.test(part)
    ) {
      if (/^(done|ready|finished|made|cooked)$/.test(verb)) return undefined;
      return /(ed|en|tented|strung)$/.test(verb) ? roastStep(verb) : undefined;
    }
    if (/(^| )(is|in|on|a|i|we|it|was)( |$)/.test(part) || part.split(' ').length > 3)
      return undefined;
    if (finishing.test(verb)) return stepIn(part, context);
    return /(ed|t|n)$/.test(verb) ? stepIn(`${verb} ${part}`, context) : undefined;
  });
  if (steps.some((step) => step === undefined)) return undefined;
  // "the rolls are warming" has begun.
  const begun =
    (/ (is|are) (\w+ )?\w+ing $/.test(` ${match.line}`) && !isFinishing(match.line)) ||
    (/^(?:\w+ ){1,3}(simmering|boiling|warming|baking|steaming|braising|cooking|reducing|browning|roasting) $/.test(
      match.line,
    ) &&
      !isFinishing(match.line)) ||
    /^(begun|began|started)$/.test(verb);
  return steps.map((step) => ({
    intent: begun ? ('report-started' as const) : ('report-done' as const),
    step: step!,
    ...moment,
  }));
}
