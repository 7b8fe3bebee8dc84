/**
 * Slots of what is told, once the intent is settled: unlike a phrase or a frame these ask only what
 * the clause holds for the slots, not whether it means them. Undefined where a slot that cannot be
 * done without is not there.
 */
import type { HeardOf, Intent } from '../../kitchen/heard.ts';
import { comingTime, mealTime, minutesUntil, timeAfter } from '../moment.ts';
import { nameIn, stemOf, stemsOfNames } from '../names.ts';
import { faceOf, type Match, type Meaning, numberOf } from '../recogniser.ts';
import { persons } from './addressed.ts';
import { coreHigh, ofRoast } from './beside-reading.ts';
import { commonWords } from './common-words.ts';
import { dishesNamed, dishNamed } from './frames/dinner.ts';
import { peopleOnly } from './frames/notes.ts';
import { hourMark, minutesIn, tableAt, timedLabel } from './frames/time.ts';
import { troubleIn } from './frames/trouble.ts';
import { after, holds } from './frames/words.ts';
import { donenessOf } from './recognisers/doneness.ts';
import { inStep } from './recognisers/events.ts';
import { momentOf } from './recognisers/moment-of.ts';
import { oven, reading } from './recognisers/temperatures.ts';
import { dishStep, makingStep, meansRoast, prepStep, roastStep, stepIn } from './steps.ts';

type Filled = Meaning | readonly Meaning[] | undefined;
export type Fill = Partial<Record<Intent, (match: Match) => Filled>>;

/** The first of some shapes that a clause has, with what it stands for. */
function firstOf<T>(match: Match, shapes: readonly (readonly [RegExp, T])[]): T | undefined {
  const line = ` ${match.line}`;
  return shapes.find(([shape]) => shape.test(line))?.[1];
}

/** The one number or temperature of a clause, as the slot that reports are made of. */
function measured(match: Match): Match | undefined {
  const marks = match
    .marks('tn')
    .filter((mark) => !/^(bones?|people|of us)\b/.test(after(match, mark)));
  return marks.length === 1 ? match.withGroups({ temperature: `${marks[0]} ` }) : undefined;
}

const count = (match: Match): number | undefined => {
  // "four loops", "three places": counted, and no heads.
  const counted = match.marks('n').filter((mark) => !notHeads.test(after(match, mark)));
  const values = counted.map((mark) => numberOf(match.quantityOfMark(mark)));
  const [value] = values;
  return values.length === 1 && value !== undefined && Number.isInteger(value) && value < 100
    ? value
    : undefined;
};

const notHeads =
  /^(months|weeks|days|loops|places|spots|ways|turns|goes|seconds|layers|times|years|bones?|ribs?|potatoes|carrots|trays?|pans?|tins?|slices|dishes|ovens?|shelves|sprigs|cloves|racks?)\b/;

/** Minutes as said, or the one small number as minutes. */
function minutesOf(match: Match): number | undefined {
  const said = minutesIn(match);
  if (said !== undefined) return said;
  const face = match.marks('c')[0];
  const until = face ? faceOf(match.quantityOfMark(face)) : undefined;
  if (until) return minutesUntil(comingTime(until, match.context), match.context);
  const bare = count(match);
  if (bare !== undefined && bare > 1) return bare;
  // "off for a bath, fifteen minutes I won't be here": said once, in another clause.
  const spans = match.whole.match(/<d\d+>/g) ?? [];
  const once = spans.length === 1 ? match.quantityOfMark(spans[0]!) : undefined;
  return once?.kind === 'duration' ? once.minutes : undefined;
}

function personIn(match: Match): string | undefined {
  const said = peopleOnly.exec(` ${match.line}`)?.[1];
  const words = match.line.trim().split(' ');
  if (said) {
    // "uncle Farouk": the name goes with the kin.
    const name = words[words.indexOf(said) + 1] ?? '';
    return !said.includes(' ') && properNameIn([name], match) ? `${said} ${name}` : said;
  }
  return (
    words.find((word) => persons.test(word)) ?? properNameIn(words, match) ?? nameAtStart(words)
  );
}

const notNames =
  /^(i|we|it|that|this|there|they|he|she|you|the|a|an|my|our|one|two|some|no|not|is|are|can|will|got|put|with|for|and|have|everyone|everybody|someone|somebody|after|before|when|while|if|so|but|then|now|right|god|nobody|only|also|please|make|do|add)$/;
const nameAtStart = (words: readonly string[]): string | undefined =>
  words
    .slice(0, 3)
    .find((word) => /^[a-z]{2,}$/.test(word) && !notNames.test(word) && !commonWords.has(word));

/** A word that is nobody's but a name's: not common, no dish, no thing of the cards, no verb's form. */
function properNameIn(words: readonly string[], match: Match): string | undefined {
  const { dishes, ingredients, tools, cuts } = match.context.lexicon;
  return words.find(
    (word) =>
      /^[a-zà-ÿ]{3,}$/.test(word) &&
      !notNames.test(word) &&
      !commonWords.has(word) &&
      !/(ing|ed)$/.test(word) &&
      ![...dishes, ...ingredients, ...tools, ...cuts].some((thing) =>
        stemsOfNames(thing).some((stems) => stems.includes(stemOf(word))),
      ),
  );
}

const participle = /(ed|ing|en)$|^(cut|strung|made|tied|beaten|done|set|glaze|carve|baste)$/;

/** The step a clause speaks of: of the dish in it, of the roast, or by the name a card gives it. */
export function stepOf(match: Match, kind: 'started' | 'done'): string | undefined {
  const words = match.line.trim().split(' ');
  const verbs = words.filter((word) => participle.test(word));
  // "slicing spuds for the gratin": the dish they are for.
  const purpose = / for (?:the |my |our )?((?:[a-z]+ ){1,3})(?:now )?$/.exec(match.line)?.[1];
  const dish = dishNamed(purpose ?? '', match) ?? dishNamed(match.line, match);
  if (dish) {
    for (const verb of verbs) {
      const step = dishStep(dish, verb, match.context);
      if (step) return step;
    }
    if (kind === 'started') return inStep(dish, match);
    return verbs.some((verb) => /^(peel|scrub|chop|trim|cut|wash|slic|prep)/.test(verb))
      ? prepStep(dish, match.context)
      : makingStep(dish, match.context);
  }
  for (const verb of words) {
    const step = roastStep(verb);
    if (step) return step;
  }
  if (
    kind === 'done' &&
    / (fridge|freezer|wrapped|leftovers) /.test(` ${match.line}`) &&
    /^(carve|served|put-away)$/.test(match.context.stage ?? '')
  )
    return 'put-away';
  const named = nameIn(
    match.context.lexicon.steps,
    words
      .filter((word) => !/^(i|we|have|has|is|are|am|now|just|all|it|<\w+>)$/.test(word))
      .join(' '),
    match.context.openSteps,
  );
  return named ?? match.context.openSteps[0];
}

const troubles: readonly (readonly [RegExp, HeardOf<'report-trouble'>['trouble']])[] = [
  [
    / (power|electric|electricity|current|mains|lights?|fuse|breaker|blackout) .*(back|on again) /,
    'power-back',
  ],
  [/ (power|electric|electricity|current|mains|lights?|fuse|breaker|blackout) /, 'power-out'],
  [/ (oven|cooker|stove) .*(back|again|fixed) /, 'oven-back'],
  [/ door /, 'door-open'],
  [/ (smoke|smoking|smoky) /, 'smoking'],
  [
    / (probe|thermometer|thermometers|display|sensor|number|numbers|reading|readings) /,
    'probe-doubt',
  ],
  [/ (dropped|floor|fell|fallen|slid|slipped|spilled|spilt|tipped|knocked) /, 'dropped'],
  [/ (burnt|burned|burning|charred|scorched|black|blackened|cremated) /, 'burnt'],
  [/ (salt|salty) /, 'too-salty'],
  [/ (raw|undercooked|underdone|bleeding|bloody|pink) /, 'undercooked'],
  [
    / (overcooked|overdone|overshot|dry|dried|past|too far|over|too well done|too long|leather|boot|well done|cardboard|sawdust) /,
    'overcooked',
  ],
  [/ (grey|gray) /, 'grey'],
  [/ (tough|chewy|leather|boots) /, 'tough'],
  [/ (cold) /, 'gone-cold'],
  [/ (late|behind|slow) /, 'side-late'],
  [/ (oven|cooker|stove|gas|pilot|element) /, 'oven-out'],
  [
    / (cope|drowning|overwhelmed|panic|panicking|chaos|much|stressed|everything|help|crying|handle) /,
    'overwhelmed',
  ],
];

const emergencies: readonly (readonly [RegExp, HeardOf<'emergency'>['kind']])[] = [
  [/ (fire|flames?|alight|ablaze) /, 'fire'],
  [/ (chok\w+|throat|breathe|breathing) /, 'choking'],
  [/ (swell\w*|swollen|allergic|reaction|hives|rash|epipen) /, 'reaction'],
  [/ (collapsed|fainted|unconscious|passed|chest|heart|seizure) /, 'collapse'],
  [/ (burn\w*|scald\w*|blister\w*|hot) /, 'burn'],
  [/ (cut|bleed\w*|blood|knife|slic\w+|blade|gash\w*|stabbed|nicked) /, 'cut'],
  [/ (fall|fell|fallen|slipped|tripped) /, 'fall'],
];

const allergen =
  /(nuts?|peanuts?|dairy|milk|lactose|gluten|wheat|eggs?|shellfish|mustard|garlic|onions?|celery|soya?|sesame|fish|butter|cream|celiac|coeliac)/;

function noteOf(match: Match): Meaning | undefined {
  const who = personIn(match);
  const named = who ? { who } : {};
  const line = ` ${match.line}`;
  const note = (need: HeardOf<'note-guest'>['need'], value?: string): Meaning => ({
    intent: 'note-guest',
    ...named,
    need,
    ...(value === undefined ? {} : { value }),
  });
  const clock = hourMark(match);
  const face = clock ? faceOf(match.quantityOfMark(clock)) : undefined;
  if (face) return note('eats-at', mealTime(face, match.context));
  const minutes = minutesIn(match);
  if (minutes !== undefined && / (later|after|late) /.test(line))
    return note('comes-later', String(minutes));
  const diet = / (veg\w*|vegan|pescatarian|halal|kosher|plant) /.exec(line)?.[1];
  if (diet)
    return note(
      'diet',
      /vegan|plant/.test(diet) ? 'vegan' : /^veg/.test(diet) ? 'vegetarian' : diet,
    );
  if (/ (not|no|never|off) .*(meat|beef|pork|lamb) /.test(line)) return note('diet', 'vegetarian');
  const allergy = allergen.exec(line)?.[1];
  if (allergy) return note('allergy', allergy);
  const done = donenessOf(match.line);
  if (done) return note('doneness', done);
  return / (pregnant|expecting|chemo|immune|frail|baby|months|years|old|elderly|transplant|ill|toddler) /.test(
    line,
  )
    ? note('vulnerable')
    : undefined;
}

/** All that a clause says of how the roast is set up; its line as phrases see it. */
export function setupIn(clause: string): Meaning | undefined {
  const line = ` ${clause}`;
  const no = / (no|not|without) /.test(line);
  const pan =
    / (cast iron pan|cast iron skillet|cast iron|skillet|roasting tin|roasting pan|roasting tray|sheet pan|sheet tray|baking tray|baking sheet|half sheet|dutch oven|casserole|glass dish|roaster|tray|tin) /.exec(
      line,
    )?.[1];
  const shelf =
    / (top|middle|bottom|lower|lowest|upper|highest|centre|center|second|third|first) (third|half|shelf|rail|runner|rung|rack|level|position|slot|of the oven) /.exec(
      line,
    )?.[1];
  const which = / (top|bottom|upper|lower|left|right|second|small|main|big) oven /.exec(line)?.[1];
  const onShelf = / (upper|lower|middle|top|bottom) rack /.test(line);
  const setup = {
    ...(pan && !no ? { pan } : {}),
    ...(shelf ? { shelf } : {}),
    ...(which ? { oven: which } : {}),
    ...(/ rack /.test(line) && !onShelf
      ? { rack: !/ (no|without|not on a|not on the) (a |the )?rack /.test(line) }
      : {}),
    ...(/ (foil|tent|tented|covered|uncovered) /.test(line)
      ? { tent: !no && !/ uncovered /.test(line) }
      : {}),
    ...(/ (probe|leave-in|wireless|wired) /.test(line) ? { probe: !no } : {}),
    ...(/ (fan|convection|conventional|static) /.test(line)
      ? { fan: !/ (no|not|without) (a )?(fan|convection)| (conventional|static) /.test(line) }
      : {}),
  };
  return Object.keys(setup).length > 0 ? { intent: 'report-setup', ...setup } : undefined;
}

function roastOf(match: Match): Meaning | undefined {
  const line = ` ${match.line}`;
  const weighed = match.marks('w')[0];
  const weight = weighed ? match.quantityOfMark(weighed) : undefined;
  const boneMark = / (<n\d+>) (?:bones?|ribs?) /.exec(line)?.[1];
  const bones = boneMark ? numberOf(match.quantityOfMark(boneMark)) : undefined;
  const cut = match.context.lexicon.cuts.find((one) =>
    one.names.some((name) => line.includes(` ${name.toLowerCase()} `)),
  )?.id;
  const prepared = firstOf(match, [
    [/ rolled /, 'rolled'],
    [/ (tied|strung|trussed) /, 'tied-back'],
    [/ stuffed /, 'stuffed'],
    [/ (tenderised|tenderized|jaccarded|needled) /, 'tenderised'],
    [/ whole /, 'whole'],
  ] as const);
  const start = match.marks('t')[0] ?? / (<n\d+>) (?:in|out|from|at) /.exec(line)?.[1];
  const cold =
    start && / (fridge|start|cold|now|began) /.test(line)
      ? numberOf(match.quantityOfMark(start))
      : undefined;
  const roast = {
    ...(cut ? { cut } : {}),
    ...(weight?.kind === 'weight' ? { weight: weight.value, weightUnit: weight.unit } : {}),
    ...(bones !== undefined ? { bones } : {}),
    ...(/ (boneless|boned|off the bone|no bones?|without bones?) /.test(line)
      ? { boneless: true }
      : {}),
    ...(prepared ? { prepared } : {}),
    ...(/ (frozen|freezer) /.test(line) ? { frozen: true } : {}),
    ...(cold !== undefined && weight === undefined ? { startTemperature: cold } : {}),
  };
  return Object.keys(roast).length > 0 ? { intent: 'describe-roast', ...roast } : undefined;
}

function ovenOf(match: Match): Meaning | undefined {
  const line = ` ${match.line}`;
  const gas = match.marks('g')[0];
  const mark = gas ? match.quantityOfMark(gas) : undefined;
  if (mark?.kind === 'gas-mark')
    return { intent: 'report-oven', gasMark: mark.value, ...momentOf(match) };
  const one = measured(match);
  if (one) {
    const size = Math.abs(one.number('temperature'));
    if (
      size < 80 &&
      / (hot|hotter|cold|colder|cool|cooler|under|over|low|high|off|out) /.test(line)
    )
      return {
        intent: 'report-oven',
        bias: / (cold|colder|cooler|cool|under|low|below|less) /.test(line) ? -size : size,
      };
    return oven(one);
  }
  const state = firstOf(match, [
    // A pan that is off the heat leaves the oven as it was.
    [/ (off|out) (?!(the|of) )/, 'off'],
    [/ (preheated|hot|ready|beeped|pinged|temperature|warm|heated|there|up to) /, 'preheated'],
    [/ (on|lit|heating|preheating|started|fired|warming) /, 'on'],
  ] as const);
  const mode = / (fan|convection) /.test(line) ? ('fan' as const) : undefined;
  if (state) return { intent: 'report-oven', state, ...momentOf(match) };
  return mode ? { intent: 'report-oven', mode } : undefined;
}

function guestsOf(match: Match): Meaning | undefined {
  const value = count(match);
  const fewer = holds(
    match,
    / (not|less|fewer|cancelled|canceled|lost|lose|off|minus|dropped|out|short|down|bailed|ill|without) /,
  );
  const extra = holds(
    match,
    / (more|extra|another|plus|bringing|brings|also|add|additional|joining) /,
  );
  if (value === undefined) {
    if (/ (couple|two) /.test(` ${match.line}`) && extra)
      return { intent: 'set-guests', change: 2 };
    const who = personIn(match);
    if (fewer) return { intent: 'set-guests', change: -1, ...(who ? { who } : {}) };
    return extra ? { intent: 'set-guests', change: 1 } : undefined;
  }
  if (holds(match, / (now|down to|up to|left|makes?|total|altogether) /) || !(fewer || extra))
    return { intent: 'set-guests', count: value };
  return { intent: 'set-guests', change: extra && !fewer ? value : -value };
}

const minutes = (
  intent: 'set-timer' | 'shift-serving' | 'running-behind' | 'cook-away',
  match: Match,
): Meaning | undefined => {
  const value = minutesOf(match);
  if (intent === 'running-behind' || intent === 'cook-away')
    return { intent, ...(value === undefined ? {} : { minutes: value }) };
  if (value === undefined || value <= 0) return undefined;
  if (intent === 'set-timer')
    return {
      intent,
      minutes: value,
      ...timedLabel(
        match,
        / (?:for|on|about|of|check) (?:the |my |those )?([a-z]+(?: [a-z]+)?) | time the ([a-z]+) /,
      ),
    };
  const sooner =
    holds(match, / (earlier|sooner|early|forward|ahead|quicker) /) ||
    (holds(match, / (before|up) /) &&
      !holds(match, / (more|another|extra|need|late|held up|wait) /));
  return { intent, minutes: sooner ? -value : value };
};

function servingOf(match: Match): Meaning | undefined {
  const table = tableAt(match, hourMark(match) ?? match.marks('cn')[0]);
  if (table) return table;
  const wait = minutesIn(match);
  return wait === undefined
    ? undefined
    : { intent: 'set-serving-time', time: timeAfter(wait, match.context) };
}

const stepSlot = (step: string | undefined): { step?: string } => (step ? { step } : {});

export const fillTold: Fill = {
  'describe-roast': roastOf,
  'set-serving-time': servingOf,
  'set-guests': guestsOf,
  'report-guests': (match) => {
    const value = count(match);
    // "The guests aren't here yet" tells of nobody.
    if (holds(match, / (not|never) (all |quite )?(yet )?(here|arrived|come|turned up|there) /))
      return holds(match, / not all /)
        ? { intent: 'report-guests', state: 'partly-arrived' }
        : undefined;
    const state =
      firstOf(match, [
        [/ (seated|sat|sitting|table|seats?) /, 'seated'],
        [
          / (half|some|most|few|first|couple|part|start|starting|one|so far|still|missing|out of|except|bar|but|apart) /,
          'partly-arrived',
        ],
      ] as const) ?? (value === undefined ? 'arrived' : 'partly-arrived');
    return { intent: 'report-guests', state, ...(value === undefined ? {} : { count: value }) };
  },
  'note-guest': noteOf,
  'set-doneness': (match) => {
    const word = donenessOf(match.line.replace(/(instead of|rather than) .*/, ''));
    const one = measured(match);
    const asked = one?.temperature('temperature');
    // No roast is eaten at a child's age or an hour of the clock.
    if (asked && asked.temperature >= 40) return { intent: 'set-doneness', ...asked };
    return word ? { intent: 'set-doneness', doneness: word } : undefined;
  },
  'set-method': (match) => {
    const method = firstOf(match, [
      [
        / (no|not|without|skip) (any )?(sear\w*|brown\w*|blast)| (same|steady|constant|even|one temperature|all the way) /,
        'steady',
      ],
      [/ (end|last|finish|finishing|after|afterwards|reverse|final|later) /, 'sear-last'],
      [/ (first|start|starting|before|begin|beginning|initial) /, 'sear-first'],
    ] as const);
    return method ? { intent: 'set-method', method } : undefined;
  },
  'add-dish': (match) =>
    dishesNamed(match.line, match).map((dish) => ({ intent: 'add-dish', dish })),
  'drop-dish': (match) =>
    dishesNamed(match.line, match).map((dish) => ({ intent: 'drop-dish', dish })),
  'set-units': (match) => {
    const wanted = match.withLine(
      match.line.replace(
        /\b(no more|not|instead of|rather than|enough of|tired of|without|drop the|drop|from|no notion of|stop (?:with|using|giving me)) (?:know |understand |speak |use |do |like |want |have |need |give me |work in )?(?:the |in |with |any )?\w+ /g,
        '',
      ),
    );
    const temperature = firstOf(wanted, [
      [/ (celsius|metric|degrees c|c) /, 'C'],
      [/ (fahrenheit|imperial|degrees f|f) /, 'F'],
    ] as const);
    const weight = firstOf(wanted, [
      [/ (kilos|metric|grams) /, 'kg'],
      [/ (pounds|imperial) /, 'lb'],
    ] as const);
    if (!temperature && !weight) return undefined;
    return {
      intent: 'set-units',
      ...(temperature ? { temperature } : {}),
      ...(weight ? { weight } : {}),
    };
  },
  lack: (match) => {
    const line = ` ${match.line}`;
    const thing =
      / (?:no|any|out of|without|missing|forgot|lost|lack|find|short of|buy|need|not got|not have) (?:the |a |an |any |my |some |more |to buy |to get |left )*((?:[a-z-]+ ){1,2}?)(?:left|in|at|here|to|for|with|$)/.exec(
        line,
      )?.[1] ?? / (?:the|my|our) ((?:[a-z-]+ ){1,2}?)(?:is|are|has|have) /.exec(line)?.[1];
    return thing ? { intent: 'lack', thing: thing.trim() } : undefined;
  },
  'report-setup': (match) => setupIn(match.line),
  'add-hands': (match) => {
    const who = personIn(match);
    return { intent: 'add-hands', ...(who ? { who } : {}) };
  },
  'cook-away': (match) => minutes('cook-away', match),
  'report-reading': (match) => {
    const one = measured(match);
    const told = one?.temperature('temperature');
    // "200": the oven's, or a slip of the tongue; it is asked which.
    const tooHot =
      told !== undefined &&
      told.temperature >= coreHigh[told.unit ?? match.context.units.temperature] &&
      match.whole.search(ofRoast) < 0;
    return one && !tooHot ? reading(one) : undefined;
  },
  'report-oven': ovenOf,
  'report-started': (match) => {
    const step = stepOf(match, 'started') ?? 'roast-in';
    return { intent: 'report-started', step, ...momentOf(match, { lasting: true }) };
  },
  'report-out': (match) => {
    const dish = dishNamed(match.line, match);
    return { intent: 'report-out', ...(dish ? { what: dish } : {}), ...momentOf(match) };
  },
  'report-done': (match) => ({
    intent: 'report-done',
    ...stepSlot(stepOf(match, 'done')),
    ...momentOf(match),
  }),
  'report-not-done': (match) => ({ intent: 'report-not-done', ...stepSlot(stepOf(match, 'done')) }),
  'skip-step': (match) => ({
    intent: 'skip-step',
    ...stepSlot(stepOf(match, 'done') ?? stepIn(match.line.trim(), match.context)),
  }),
  'report-trouble': (match) => {
    const dish = dishNamed(match.line, match);
    const spent = minutesIn(match);
    return {
      intent: 'report-trouble',
      trouble: firstOf(match, troubles) ?? 'other',
      ...(dish && !meansRoast(dish) ? { step: dish } : {}),
      ...troubleIn(match),
      ...(spent === undefined ? {} : { minutes: spent }),
      ...momentOf(match),
    };
  },
  emergency: (match) => {
    const kind = firstOf(match, emergencies);
    return kind ? { intent: 'emergency', kind } : undefined;
  },
  'shift-serving': (match) => minutes('shift-serving', match),
  'running-behind': (match) => minutes('running-behind', match),
  'set-timer': (match) => minutes('set-timer', match),
  'cancel-timer': (match) => ({
    intent: 'cancel-timer',
    ...(minutesIn(match) === undefined ? {} : { minutes: minutesIn(match)! }),
    ...timedLabel(match, / (?:for|on) (?:the )?([a-z]+) |(?:the|my) ([a-z]+) (?:timer|alarm) /),
  }),
  watch: (match) => {
    const one = measured(match);
    return one && { intent: 'watch', ...one.temperature('temperature') };
  },
  correct: (match) => {
    const one = measured(match);
    const span = minutesIn(match);
    if (match.minutesAgo !== undefined) return { intent: 'correct', minutesAgo: match.minutesAgo };
    const face = match.marks('c').length === 1 ? match.mealTimeOf(match.marks('c')[0]!) : undefined;
    if (face && !one) return { intent: 'correct', time: face };
    if (span !== undefined) return { intent: 'correct', minutes: span };
    if (!one) return undefined;
    if (holds(match, / (people|guests|of us|heads) /))
      return { intent: 'correct', count: one.number('temperature') };
    if (/ (bones?|ribs?) /.test(` ${match.whole}`) && one.number('temperature') < 9)
      return { intent: 'correct', bones: one.number('temperature') };
    const { temperature, unit } = one.temperature('temperature');
    // "It's not 120" names what was wrong, and not what is right.
    return / not (at |really |actually )?<[nt]\d+> /.test(` ${match.line}`)
      ? { intent: 'correct', was: temperature, ...(unit ? { unit } : {}) }
      : { intent: 'correct', temperature, ...(unit ? { unit } : {}) };
  },
  choose: (match) => {
    // The one of "the second one" is no number.
    const option =
      firstOf(match, [
        [/ not (the )?first /, 2],
        [/ (first|1st|option a|plan a|former|top) /, 1],
        [/ (second|2nd|option b|plan b|middle|latter|other) /, 2],
        [/ (third|3rd|option c|plan c) /, 3],
        [/ (fourth|4th) /, 4],
      ] as const) ?? count(match);
    return option === undefined ? undefined : { intent: 'choose', option };
  },
};
