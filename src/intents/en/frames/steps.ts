/** Frames of what has happened to the roast and the dishes, where no phrase said it outright. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { inStep } from '../recognisers/events.ts';
import { momentOf } from '../recognisers/moment-of.ts';
import { dishStep, makingStep, partNamed, prepStep, roastStep } from '../steps.ts';
import { dishNamed } from './dinner.ts';
import { holds } from './words.ts';

const roastWords =
  / (roast|joint|beef|meat|rib|lamb|pork|loin|leg|tenderloin|fillet|topside|sirloin|it|he|she|her|him) /;
const more =
  / (need|needs|want|wants|wanting|needing|could do with|require|requires|take) .*(more|another|longer|a bit|a while|few|extra|yet|time) | needs? (another )?<d\d+> /;

/** The dish a clause is about: named in it, or "them" for the one last spoken of. */
function dishOf(match: Match): string | undefined {
  const named = dishNamed(match.line, match);
  if (named) return named;
  if (!holds(match, / (they|them|those|these) /)) return undefined;
  const said = match.before.findLast((one) => 'step' in one || 'dish' in one);
  const labelled = match.before.findLast((one) => 'label' in one && one.label !== undefined);
  const label =
    labelled && 'label' in labelled ? dishNamed(labelled.label ?? '', match) : undefined;
  const id =
    label ??
    (said && 'dish' in said
      ? said.dish
      : said && 'step' in said
        ? said.step
        : match.context.dishes.length === 1
          ? match.context.dishes[0]
          : undefined);
  return typeof id === 'string' ? id.split('.')[0] : undefined;
}

export const progressFrame: Frame = {
  name: 'progress',
  moods: ['statement'],
  build(match): Meaning | undefined {
    if (
      holds(
        match,
        / (if|when|love|like|fancy|would|wants|chuck|needs|let us|add|adding|menu|plan|market|shop|cost|last|recipe|who|everyone|people|guests) /,
      )
    )
      return undefined;
    // "We're doing green beans and gravy" is a menu, while there is one to be made.
    if (
      /^(we are|i am) (doing|having|making|going to do) /.test(match.line) &&
      /^(planning|prep)$/.test(match.context.stage ?? '')
    )
      return undefined;
    // "remind me to put the potatoes in": they are not.
    if (
      /^(remind|tell|shout|nudge|ping|wake|give me a|let me know|call) (me |us )?/.test(match.line)
    )
      return undefined;
    const moment = momentOf(match, { lasting: true });
    const dish = dishOf(match);
    const roast = !dish && holds(match, roastWords);
    if (more.test(` ${match.line}`)) {
      if (dish) return { intent: 'report-not-done', step: makingStep(dish, match.context) };
      return roast ? { intent: 'report-not-done' } : undefined;
    }
    // "ten more minutes on them".
    if (dish && /^<d\d+> (more )?(on|for) (it|them|the|those) /.test(match.line))
      return { intent: 'report-not-done', step: makingStep(dish, match.context) };
    const verb = verbIn(match);
    if (!dish && !roast) return ofVerb(match, verb, moment);
    if (dish) return ofDish(match, dish, verb, moment);
    return ofRoast(match, verb, moment);
  },
};

/** "frenched", "all carved": the participle alone is of the roast, or of the step it fits that is open. */
function ofVerb(
  match: Match,
  verb: string | undefined,
  moment: ReturnType<typeof momentOf>,
): Meaning | undefined {
  if (!verb || match.line.split(' ').length > 4 || match.marks('ntcdwg').length > 0)
    return undefined;
  const stem = verb.replace(/(ed|ing)$/, '');
  const open = match.context.openSteps.find((step) =>
    step.split('.').at(-1)!.startsWith(stem.slice(0, 4)),
  );
  const step = open ?? roastStep(verb);
  if (!step) return undefined;
  return verb.endsWith('ing')
    ? { intent: 'report-started', step, ...moment }
    : { intent: 'report-done', step, ...moment };
}

function ofDish(
  match: Match,
  dish: string,
  verb: string | undefined,
  moment: ReturnType<typeof momentOf>,
): Meaning | undefined {
  if (
    holds(match, / (out|off the heat|off the hob|drained) /) &&
    !holds(match, / (out of (potatoes|beans|cream|butter)|fridge|figure|ran|run) /)
  )
    return { intent: 'report-out', what: dish, ...moment };
  const doing = verb?.endsWith('ing') ? verb : undefined;
  if (doing) {
    const step = dishStep(dish, doing, match.context);
    if (step) return { intent: 'report-started', step, ...moment };
    if (
      /^(doing|making|starting|cooking|roasting|boiling|baking|steaming|simmering|frying|heating|warming|bubbling|going|browning)$/.test(
        doing,
      )
    )
      return {
        intent: 'report-started',
        step: /^(doing|making|starting)$/.test(doing)
          ? prepStep(dish, match.context)
          : inStep(dish, match),
        ...moment,
      };
    if (/^(peeling|scrubbing|washing|chopping|cutting|slicing|trimming)$/.test(doing))
      return { intent: 'report-started', step: prepStep(dish, match.context), ...moment };
  }
  if (holds(match, / (started|begun|began|starting) /) && !holds(match, / (in|on) $/))
    return {
      intent: 'report-started',
      step: dishStep(dish, 'start', match.context) ?? firstCooking(dish, match),
      ...moment,
    };
  if (verb && !doing) {
    const step = dishStep(dish, verb, match.context);
    if (step) return { intent: 'report-done', step, ...moment };
    if (
      /^(peeled|scrubbed|washed|chopped|cut|sliced|trimmed|topped|tailed|strung|prepped|prepared|halved|diced|shredded|picked|podded)$/.test(
        verb,
      )
    )
      return { intent: 'report-done', step: prepStep(dish, match.context), ...moment };
  }
  if (
    holds(match, / (in|inside|into|on|going) /) &&
    holds(
      match,
      / (in|inside|on|oven|put|popped|bunged|chucked|went|gone|stuck|whacked|hob|stove|pan|since|placed|fire) /,
    ) &&
    !holds(match, / (fridge|side|board|table|sink|cupboard|floor) /)
  )
    return { intent: 'report-started', step: inStep(dish, match), ...moment };
  if (
    holds(
      match,
      / (done|ready|made|finished|cooked|golden|crispy|crisp|tender|perfect|sorted|brown|browned|complete) /,
    )
  )
    return { intent: 'report-done', step: makingStep(dish, match.context), ...moment };
  return undefined;
}

/** Where a dish is started: the first of its steps that cooks, else its first. */
const firstCooking = (dish: string, match: Match): string => {
  const own = match.context.lexicon.steps.filter((step) => step.id.startsWith(`${dish}.`));
  return (
    own.find((step) => /\.(cook|boil|braise|reduce|warm-stock)$/.test(step.id))?.id ??
    own[0]?.id ??
    `${dish}.in`
  );
};

function ofRoast(
  match: Match,
  verb: string | undefined,
  moment: ReturnType<typeof momentOf>,
): Meaning | undefined {
  const named = holds(
    match,
    / (roast|joint|beef|meat|rib|lamb|pork|loin|leg|tenderloin|fillet|topside|sirloin) /,
  );
  // "tied it with the string in six places": led by its verb it may be longer.
  const led = verb !== undefined && match.line.startsWith(`${verb} `);
  const short = match.line.split(' ').length <= (led ? 10 : 8);
  if (!named && !short) return undefined;
  if (holds(match, / (probe|thermometer|plug|cork|drawer|cable|wire|battery) (back )?out /))
    return undefined;
  if (
    holds(
      match,
      / (on the (carving )?board|out of the oven|removed|taken away|took away|came outside|out the oven|having a (rest|kip|nap)|under (the )?foil|out now) /,
    ) ||
    (named && holds(match, / (out|outside) /) && !holds(match, / (fridge|freezer|bag|wrapper) /))
  )
    return { intent: 'report-out', ...moment };
  if (
    /^(she|that is her|that is it|it|her|he|got (it|her|him)|i got (it|her|him)|fished (it|her|him)|hauled (it|her)|we have had it) (is )?(out|out now|out and) /.test(
      match.line,
    )
  )
    return { intent: 'report-out', ...moment };
  if (
    holds(match, wentIn) &&
    holds(
      match,
      / (put|placed|went|gone|slid|popped|since|has been|been|stuck|bunged|banged|whacked|goes|kept|inserted|shoved|chucked|that is|away|is|got) /,
    ) &&
    holds(match, / (oven|in|inside) /) &&
    match.marks('tn').length === 0 &&
    !holds(match, / (fridge|foil|probe|pan|tin|tray|half|bag|garden|car|bed|bath) /)
  )
    return { intent: 'report-started', step: 'roast-in', ...moment };
  if (verb) {
    const step = roastStep(verb);
    if (step && (verb.endsWith('ing') || holds(match, / (started|start|begun|began|begin) to /)))
      return { intent: 'report-started', step, ...moment };
    if (step && /(ed|en|t)$/.test(verb) && short) return { intent: 'report-done', step, ...moment };
  }
  return undefined;
}

/** In the oven, not "in there" of a raw middle, nor "doing my head in". */
const wentIn =
  / (in|into|inside) (the |my |our )?(\w+ )?oven | (is|went|goes|been|put|popped|slid|got|gone|away|it|her|him|stuck|bunged|whacked|shoved|chucked|roast|joint|beef|meat|rib|lamb|pork|straight|back|all|safely|now) (in|inside|into it) (now |there |again |already |<d\d+> |at <\w+> |for <\w+> |ago )*(?=$|[|,])/;

const notVerbs =
  /^(in|need|red|bed|seed|feed|thing|something|anything|everything|nothing|evening|morning|king|ring|being|going|during|string|pudding|puddings|reading|roasting|rested|hundred|dressing|stuffing|carving|serving|ceiling|getting|having|baking|looking|been|instant-read|boned|aged|bread)$/;

/** The word of a clause that tells what was done: its participle. */
function verbIn(match: Match): string | undefined {
  const words = match.line.trim().split(' ');
  const all = words.filter(
    (word) =>
      (/(ed|ing)$/.test(word) || /^(cut|strung|made|tied|salt|beaten|brown)$/.test(word)) &&
      !notVerbs.test(word),
  );
  return (
    all.find(
      (word) =>
        roastStep(word) !== undefined ||
        /^(peel|scrub|chop|trim|wash|cut|slic|simmer|boil|steep|mix|whisk|whip|grat|mash|glaz|oil|dress|brais|shred|layer|stand|strain|reduc|string|strung|top)/.test(
          word,
        ),
    ) ?? all[0]
  );
}

export const notYetFrame: Frame = {
  name: 'not-yet',
  moods: ['negative', 'intention', 'statement'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const denied = / (not|never|still|yet to) /.test(line);
    if (
      / (oven) /.test(line) &&
      / not (hot|up|ready|on|preheated|there)/.test(line) &&
      !/ (work|working|heat|heating|turn) /.test(line)
    )
      return { intent: 'report-not-done', step: 'oven-on' };
    const toDo =
      / (still to do|still to|to go in|to be done|nowhere near|not there|far from) /.test(line);
    if (!denied && !toDo && !more.test(line)) return undefined;
    if (/ (clock|timer|alarm|traffic|stuck) /.test(line)) return undefined;
    const unfinished =
      / (done|finish|finished|ready|peeled|started|cooked|in|on|out|made|yet|scrubbed|carved|tied|trimmed|crunchy|hard|raw|pale|there|need to|have to|to do|near|do|get to) /;
    const unwilling = / (will|would|does|do|did) not (crisp|brown|soften|rise|thicken|set) /.test(
      line,
    );
    if (!unwilling && !unfinished.test(line) && !more.test(line)) return undefined;
    if (
      / (you|home|married|wedding|he|she|joking|serious|sure|hungry|listening|working|happy|worth|bad|fair|coming|here|late|know|think|want|like|homework) /.test(
        line,
      )
    )
      return undefined;
    if (match.marks('nt').length > 0) return undefined;
    const dish = dishOf(match);
    const verb = verbIn(match);
    const step = dish
      ? (partNamed(dish, match.line.trim().replace(/ yet$/, ''), match.context) ??
        (verb && dishStep(dish, verb, match.context)) ??
        (verb && /^(peel|scrub|chop|trim|cut|wash)/.test(verb)
          ? prepStep(dish, match.context)
          : / in /.test(line)
            ? inStep(dish, match)
            : makingStep(dish, match.context)))
      : verb
        ? roastStep(verb)
        : undefined;
    if (!dish && !step && match.line.split(' ').length > 8) return undefined;
    return { intent: 'report-not-done', ...(step ? { step } : {}) };
  },
};

export const skipFrame: Frame = {
  name: 'skip',
  moods: ['statement', 'request', 'intention', 'negative'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const leaving =
      / (skip|skipping|leave|leaving|not bother|can not be bothered|not going to|sack|ditch|miss out|leave out|omit|bypass|give (that|it|this)( one)? a miss|no time|never mind|forget|no need|not|no|pass on|without) /;
    if (!leaving.test(line) || match.line.split(' ').length > 9) return undefined;
    // "they're just sitting there, not browning": how they are, and nothing left out.
    if (
      / (is|are|still|sitting|there) (\w+ )?not \w+ing /.test(line) &&
      !/ (i|we) (am|are) /.test(line)
    )
      return undefined;
    if (/ not browning /.test(line) && dishOf(match)) return undefined;
    if (
      / (step|that one|this one|that bit|this bit|one a miss|it a miss) /.test(line) &&
      / (skip|sack|miss|never mind|bypass|leave|ditch|forget|pass) /.test(line)
    ) {
      const current = match.context.openSteps[0];
      return { intent: 'skip-step', ...(current ? { step: current } : {}) };
    }
    const verb = match.line
      .trim()
      .split(' ')
      .find(
        (word) => word.endsWith('ing') && (roastStep(word) !== undefined || word === 'checking'),
      );
    if (!verb || / (done|finished|yet|started|ready) /.test(line)) return undefined;
    return {
      intent: 'skip-step',
      step:
        verb === 'checking'
          ? /(thermometer|probe)/.test(line)
            ? 'check-thermometer'
            : 'check'
          : roastStep(verb)!,
    };
  },
};
