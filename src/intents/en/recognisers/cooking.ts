/** What has happened at the stove: readings, the oven, steps begun and ended, what is out, what is not. */
import { pastTime } from '../../moment.ts';
import { faceOf, type Match, type Meaning, type Recogniser } from '../../recogniser.ts';
import { dishIn, dishStep, makingStep, meansRoast, roastStep, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

type Moment = { minutesAgo?: number; time?: string };

/** When it happened, if the clause says: "five minutes ago", "at three", "since half past four". */
function momentOf(match: Match, options: { lasting?: boolean } = {}): Moment {
  const line = match.line;
  const ago = /(<[d]\d+>) (ago|back|since)/.exec(line)?.[1];
  const lasting = options.lasting
    ? /(?:for|been|in|resting|out) (?:in |out |resting |under foil )?(?:for )?(<d\d+>)/.exec(
        line,
      )?.[1]
    : undefined;
  const minutes = match.quantityOfMark(ago ?? lasting ?? '');
  if (minutes?.kind === 'duration') return { minutesAgo: minutes.minutes };
  // "it's at one ten in the middle": the number that is the temperature is no time.
  const reading = match.groups.temperature?.trim();
  const marks = line.matchAll(
    /(?:at|since|from|around|about|by) (<[cn]\d+>)(?! (?:degrees|pounds))|(<c\d+>)/g,
  );
  const clock = [...marks].map((mark) => mark[1] ?? mark[2]!).find((mark) => mark !== reading);
  if (clock) {
    const face = faceOf(match.quantityOfMark(clock));
    if (face) return { time: pastTime(face, match.context) };
  }
  return {};
}

/** Above this a core does not stand, below it an oven does not: in between the words decide. */
const ovenFrom = { F: 212, C: 100 } as const;

function looksLikeOven(match: Match, said: { temperature: number; unit?: 'F' | 'C' }): boolean {
  return said.temperature >= ovenFrom[said.unit ?? match.context.units.temperature];
}

function reading(match: Match): Meaning | undefined {
  const said = match.temperature('temperature');
  if (!Number.isFinite(said.temperature)) return undefined;
  const quantity = match.quantity('temperature');
  const line = ` ${match.line}`;
  const after = line.slice(
    line.indexOf(match.groups.temperature!) + match.groups.temperature!.length,
  );
  if (
    quantity?.kind === 'number' &&
    /^(minutes|hours|pounds|people|guests|bones?|%|percent|of us|kilos|more|oclock|each|dollars)/.test(
      after,
    )
  )
    return undefined;
  if (
    /(oven|dial)/.test(line) &&
    !/(oven thermometer says the|in the oven|roast|meat|joint|beef|middle|core|internal)/.test(line)
  )
    return oven(match);
  const worded =
    /(read|reed|red|core|middle|centre|center|internal|probe|thermometer|thickest|says|shows)/.test(
      line,
    );
  if (
    looksLikeOven(match, said) &&
    (!worded || said.temperature > 260) &&
    match.context.expecting !== 'reading'
  )
    return { intent: 'report-oven', ...said };
  if (
    looksLikeOven(match, said) &&
    match.context.stage === 'preheat' &&
    !/(core|middle|meat|roast)/.test(line)
  )
    return { intent: 'report-oven', ...said };
  const where =
    /(by the bone|near the bone|middle|centre|center|core|thickest part|thick end|thin end|edge|top)/.exec(
      line,
    )?.[1];
  const quick = /(instant|quick)/.test(line)
    ? ('quick' as const)
    : /(leave in|wired|wireless)/.test(line)
      ? ('leave-in' as const)
      : undefined;
  return {
    intent: 'report-reading',
    ...said,
    ...(where ? { where } : {}),
    ...(quick ? { thermometer: quick } : {}),
    ...momentOf(match),
  };
}

function oven(match: Match): Meaning | undefined {
  const said = match.temperature('temperature');
  if (!Number.isFinite(said.temperature)) return undefined;
  const line = ` ${match.line}`;
  const which = /(top|bottom|upper|lower|left|right|second|small|other|main) oven/.exec(line)?.[1];
  const mode =
    /fan/.test(line) && !/(no fan|not fan)/.test(line)
      ? ('fan' as const)
      : /(conventional|still|static)/.test(line)
        ? ('still' as const)
        : undefined;
  return {
    intent: 'report-oven',
    ...said,
    ...(mode ? { mode } : {}),
    ...(which ? { which } : {}),
    ...momentOf(match),
  };
}

export const ovenTalk: Recogniser = {
  name: 'oven',
  moods: ['statement', 'request'],
  phrases: [
    ...phrases(
      [
        '[@oven|it|mine] [always|tends to] (runs|run|is running|running) [about|a bit] {n:any} [degrees] (hot|hotter|over|high|too hot|warm|above|cold|cool|cooler|under|low|slow|below)',
        '@oven is [off by|out by|about] {n:any} [degrees] (hot|hotter|over|too hot|cold|cool|cooler|under|too cold|hotter than it says|above|below|out|high|low)',
        '[@oven] (runs|run|running) (hot|cold|cool|high|low|over|under) by [about] {n:any}',
      ],
      (match) => {
        const bias = match.number('n');
        return Number.isFinite(bias)
          ? {
              intent: 'report-oven',
              bias: /(cold|cool|under|low|slow|below)/.test(match.line) ? -bias : bias,
            }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(turned|knocked|dropped|lowered|brought|put|set|took|moved|raised|cranked) (it|@oven|the heat) [back|down|up|on] [to|at|on] {g:gas}',
        '[@oven|it] [is|at|on|up|down|to|set|turned|put|now|i have|i|have|the] [oven] [it] [is|at|on|up|down|to|set|turned|now] [at|on|to] {g:gas} [now|$]',
      ],
      (match) => {
        const gas = match.quantity('g');
        return gas?.kind === 'gas-mark'
          ? { intent: 'report-oven', gasMark: gas.value, ...momentOf(match) }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ [oven|the oven] [at|on] {temperature:number} fan',
        '(switched|gone|changed|turned|put|moved) [it|@oven|over] [over] (to|on|onto) fan $',
        '[@oven] fan is on $',
      ],
      (match) => (match.has('temperature') ? oven(match) : { intent: 'report-oven', mode: 'fan' }),
    ),
    ...phrases(
      [
        '(switched|gone|turned) [@oven|the|it] (fan off|off the fan|to conventional|to still|to static|over to conventional)',
      ],
      { intent: 'report-oven', mode: 'still' },
    ),
    ...phrases(
      [
        '@oven (is|reads|says|shows|is reading|is showing|is at|is on|is set to|is set at|is up to|is down to|is now at|is now|has come up to|has reached|has hit|has dropped to|thermometer says|thermometer reads|temperature is|sits at|is sitting at|hit|reached|at|on|to|down to|up to|set to|dial is at|is only at|is back to|is still at|is down at|is up at|came up to|went down to|went to) [at|to|about] {temperature}',
        '(turned|turn|turning|knocked|knock|dropped|drop|lowered|lower|brought|cranked|raised|set|put|bumped|upped|reduced|dialled|dialed|took|taken|eased|backed|nudged|whacked|stuck|switched|got|moved|pulled) [@oven|it|that|her|him|heat|the heat|the temperature|temperature|the dial] [back|down|up|on|over|right|way] [now|$] (to|at|on) {temperature}',
        '(turned|turn|knocked|dropped|lowered|lower|raised|reduced|dropped) [@oven|it|the heat] [down|up|back] {temperature} $',
        '(down|up|back down|back up) (to|at) {temperature} [now|$]',
        '(preheated|preheating|heating) [@oven|it] [to|at] {temperature}',
        '(it is|we are|i am|it) (on|set to|set at) {temperature} [fan]',
        '^ @oven {temperature} $',
      ],
      (match) => {
        const said = match.temperature('temperature');
        const unit = said.unit ?? match.context.units.temperature;
        // "the temperature's up to one nineteen" is the roast's.
        const named = /(oven|cooker|stove|turn|knock|drop|lower|rais|crank|dial|heat|set|fan)/;
        if (!looksLikeOven(match, said) && !named.test(match.line)) return undefined;
        if (said.temperature < (unit === 'F' ? 100 : 40) && !/oven/.test(match.line))
          return undefined;
        if (/(music|volume|dinner|serving|eat|guests)/.test(match.line)) return undefined;
        return oven(match);
      },
    ),
    ...phrases(
      [
        '@oven (is|has|has come|is now|is all|is nice and|is fully|has just|just) [up to temperature|to temperature|preheated|hot|ready|beeped|pinged|beeping|finished preheating|heated up|heated|reached temperature|at temperature|warmed up|up to heat|come up to temperature|done preheating|good to go] (up to temperature|at temperature|preheated|hot|ready|beeped|pinged|heated up|heated|$)',
        '@oven (beeped|pinged|has beeped|has pinged|is preheated|is hot|is ready|preheated|up to temperature|is up to temperature|is at temperature)',
        '^ (it|@oven) (is|has) (preheated|up to temperature|come up to temperature|at temperature) $',
        '^ preheated $',
      ],
      (match) =>
        /not/.test(match.line) ||
        !/(temperature|preheat|hot|ready|beep|ping|heat|warm|good)/.test(match.line)
          ? undefined
          : { intent: 'report-oven', state: 'preheated' },
    ),
    ...phrases(
      [
        '(@oven is on|turned on @oven|turned @oven on|switched on @oven|switched @oven on|put @oven on|lit @oven|lit the oven|oven on|oven is heating [up]|oven is preheating|started preheating|preheating [@oven|now]|i am preheating [@oven]|have put @oven on|started @oven|fired up @oven|oven is warming up|got @oven on|oven is lit|turned on the oven|switched on the oven|turned the oven on|put the oven on) [now|$]',
      ],
      (match) =>
        / off /.test(` ${match.line}`)
          ? undefined
          : { intent: 'report-oven', state: 'on', ...momentOf(match) },
    ),
    ...phrases(
      [
        '(@oven is off|turned off @oven|turned @oven off|switched off @oven|switched @oven off|oven off|the oven is off|turned the oven off|turned off the oven|switched the oven off|oven is switched off)',
      ],
      (match) => ({ intent: 'report-oven', state: 'off', ...momentOf(match) }),
    ),
    ...phrases(
      [
        '^ [i have|i|have|just|@oven is|@oven|it is|it|the heat is|heat is|temperature is] (turned it down|turned down|turned @oven down|turned the oven down|turned the heat down|lowered it|lowered @oven|lowered the oven|knocked it down|knocked it back|knocked the oven back|dropped it|dropped @oven|dropped the oven|turned down the oven|turned down @oven|down|down now|gone down|been turned down|has been turned down|dropped the temperature|dropped the heat|lowered the heat|lowered the temperature|brought the oven down|brought it down|oven down|oven is down|turned it right down) [{d:duration} ago] $',
      ],
      (match) => ({ intent: 'report-done', step: 'oven-down', ...momentOf(match) }),
    ),
  ],
};

export const readings: Recogniser = {
  name: 'readings',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '(@it|@thermometer|@middle|the core|the probe|core temperature|we|i|temperature|i have got|i have|now|@middle temperature|the reading|last reading|reading) [now|still|only] (@read|is at|is up to|is now|is on|is reading|is showing|is saying|is sitting at|sits at|has hit|hit|has reached|reached|is|was|was at|got|get|am getting|are getting|have got|are at|are up to|have hit|are reading|came out at|came up as|has got to|got to|has climbed to|climbed to|has come up to|is up at|have|is still|is still at|is only|is only at|is holding at|is hovering at|just hit|is pushing|are on|measured|measures|is coming up|stands at|is gone up to|has gone up to|went up to|is down to|is already at|is already|is now at|has made it to|is registering|is at about|at|is reading at) [at|a|about|only|now|exactly|up to] {temperature} [degrees|in the (middle|centre|core)|at the moment]',
        '(reads|reading|getting|reed|reeds|registering|registers|showing|probe|core|internal|thermometer|temperature|middle|centre|center|temp) [is|at|of|a|in the middle|says|reads] {temperature}',
        '{temperature} [degrees] (in the (middle|centre|center|roast|meat|core|beef|joint|thickest part|thick end)|internal|by the bone|at the (core|centre|center|middle|bone)|on the (probe|thermometer|dial|display|gauge)|near the bone|is what it reads|is what it says|is what i have got|is the reading|core)',
        '{temperature:degrees} [now|$] [{d:duration} ago] $',
        '(it red|it read|red) {temperature}',
        '(took|just took|i took|taken) (a|the|its|another) (reading|temperature) [,|and|of|it is] [it is|got|at|was] {temperature}',
      ],
      (match) => {
        if (
          /(gone|pounds|years|old|guests|people|oclock|minutes till|late)/.test(match.line) &&
          !/read|degrees|probe/.test(match.line)
        )
          return undefined;
        if (/fridge/.test(match.line)) return undefined;
        if (/^(pull|take|cook|bring|aim|stop|get|i want|we want|want|go|roast) /.test(match.line))
          return undefined;
        const said = match.quantity('temperature');
        if (said?.kind === 'number') {
          if (said.face && said.value < 24 && !Number.isInteger(said.value)) return undefined;
          if (/^(we|i|now) /.test(match.line) && said.value < 25) return undefined;
          if (
            / (is|was) <n\d+> $/.test(match.line) &&
            said.value < 25 &&
            match.context.units.temperature === 'F'
          )
            return undefined;
          if (/^(she|he) (is|was) (?!reading)/.test(match.line)) return undefined;
        }
        return reading(match);
      },
    ),
  ],
};

/** "it came out of the fridge at thirty eight degrees" gives a temperature, "at one" a time. */
function startsCold(match: Match): boolean {
  const mark = /(?:at|starts?|from) (<[nt]\d+>)/.exec(match.line)?.[1];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  return (
    quantity?.kind === 'temperature' ||
    (quantity?.kind === 'number' && quantity.value > 12 && !quantity.face)
  );
}

const lists = (words: string): string[] =>
  words.split(/ (?:and|plus) /).map((part) => part.replace(/^the /, '').trim());

/** Steps begun for each thing named: "the potatoes and the beans are in". */
function startedIn(match: Match): Meaning[] | undefined {
  const words = match.words('who');
  const moment = momentOf(match, { lasting: true });
  if (words === '' || meansRoast(words)) {
    if (/^(she|he)$/.test(words)) return undefined;
    return [{ intent: 'report-started', step: 'roast-in', ...moment }];
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
    return dish ? inStep(dish, match) : undefined;
  });
  if (steps.some((step) => step === undefined)) return undefined;
  return steps.map((step) => ({ intent: 'report-started' as const, step: step!, ...moment }));
}

function inStep(dish: string, match: Match): string {
  const own = match.context.lexicon.steps
    .filter((step) => step.id.startsWith(`${dish}.`))
    .map((step) => step.id);
  return (
    own.find((id) => /\.(in|roast|bake|in-oven)$/.test(id)) ??
    own.find((id) => /\.(cook|on|boil|steam|warm)$/.test(id)) ??
    `${dish}.in`
  );
}

function outOf(match: Match): Meaning[] | undefined {
  const words = match.words('who');
  const moment = momentOf(match);
  if (words === '' || meansRoast(words))
    return /^(she|he)$/.test(words) ? undefined : [{ intent: 'report-out', ...moment }];
  if (/^(they|them|both|these|those)$/.test(words)) {
    const open = match.context.openSteps.find((step) => step.endsWith('.out'));
    const said = match.before.findLast(
      (one) => 'step' in one && typeof one.step === 'string' && one.step.includes('.'),
    );
    const what =
      said && 'step' in said
        ? (said.step as string).split('.')[0]!
        : open
          ? open.split('.')[0]!
          : match.context.dishes.length >= 1
            ? match.context.dishes[0]!
            : 'sides';
    return [{ intent: 'report-out', what, ...moment }];
  }
  const named = lists(words).map((part) => dishIn(part, match.context));
  if (named.some((dish) => dish === undefined)) return undefined;
  return named.map((what) => ({ intent: 'report-out' as const, what: what!, ...moment }));
}

const subject = '{who:thing}';

export const progress: Recogniser = {
  name: 'progress',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '(leftovers|everything|the rest|the leftovers|the remains|it|all|what is left) (is|are|has been|have been) [all|now] (in the fridge|put away|away|wrapped and in the fridge|refrigerated|chilled|in the freezer)',
        '(put|putting|have put) [all] [the] (leftovers|rest|remains) (away|in the fridge)',
        '(cleared away|all cleared away|all put away)',
      ],
      (match) =>
        /keys|beer|wine|milk/.test(match.line)
          ? undefined
          : { intent: 'report-done', step: 'put-away', ...momentOf(match) },
    ),
    ...phrases(
      [
        '[@it|the roast] (is|has been|been|has come|came|took|taken|take|got|have|i have|i) [now|been|just|taken|got|took] [@it] (out of the fridge|on the counter|out of the refrigerator|out the fridge|on the side|on the bench|on the worktop|at room temperature|sitting out|coming to room temperature) [for|at|since|$]',
        'out of the fridge',
      ],
      (match) =>
        startsCold(match)
          ? undefined
          : { intent: 'report-done', step: 'out-of-fridge', ...momentOf(match, { lasting: true }) },
    ),
    ...phrases(
      [
        '[@it|the roast|we have it|i have it] (is|been|has been|is now|is all) [now|just|been] [a] (resting|rested|under foil|tented|covered in foil|wrapped in foil|having a rest|having its rest|at rest) [on the board|under foil|$]',
        '(resting it|letting it rest|let it rest|i am resting it|i am letting it rest|put it to rest|set it to rest|left it to rest|started resting|resting the roast|resting now|tented it|covered it with foil|put foil over it|tented @it|resting @it|^ resting)',
      ],
      (match) => ({
        intent: 'report-started',
        step: 'rest',
        ...momentOf(match, { lasting: true }),
      }),
    ),
    ...phrases(
      [
        '(we are|i am|dad is|{p:word} is|he is|she is|starting to|started|began|just started|i have started|started to) [now|just] (carving|carve|slicing|slice) [it|@it|up|now|$]',
        '^ carving [now|it|@it] $',
        '(carving has started|it is being carved)',
      ],
      (match) => ({ intent: 'report-started', step: 'carve', ...momentOf(match) }),
    ),
    ...phrases(
      [
        '(it is|@it is|@it has been|it has been|all|have|i have|we have|i|finished) [all] (carved|sliced|carving|finished carving|done carving) [up|@it|it] $',
      ],
      { intent: 'report-done', step: 'carve' },
    ),
    ...phrases(
      [
        '(dinner|supper|lunch|food|everything|it|the meal|tea) (is|has been) [now|all] (on the table|served|being served|on the plates|plated|plated up|dished up|up|going out) [now|everyone|$]',
        '(we are|i am|they are) [all|now] (eating|serving [up]|plating [up]|dishing up|tucking in|sitting down to eat)',
        '^ (serving up|serving|plating up|dishing up|served|dinner is served|we have served|everyone is eating|everybody is eating) [now|$]',
      ],
      (match) =>
        /(dinner|it|food) is up $/.test(match.line) && match.line.startsWith('it is')
          ? undefined
          : { intent: 'report-started', step: 'serve', ...momentOf(match) },
    ),
    ...phrases(
      [
        `^ ${subject} (is|are|was|were|has come|have come|came|has just come|is just|are just|is now|are now|have been|has been|have just come|just came|all|is all|are all|came out|is coming|are coming|has) [all|just|now] (out|taken out|pulled|off the heat) [now|of the oven|the oven|and on the board|on the board|and under foil|already] [{d:duration} ago|at {c:clock}] $`,
        `(took|taken|pulled|got|have taken|have pulled|have got|i took|i pulled|brought|lifted|hauled|whipped|fetched) ${subject} [out|from|off] [of] [the oven] [{d:duration} ago|at {c:clock}] [now|$] $`,
        `(taking|pulling|getting|lifting|bringing) ${subject} (out|out now|out of the oven|from the oven)`,
        `(took|taken|pulled|got|lifted|pulling) (out|it out of) [the] {who:thing} $`,
        '^ [i have|i|have|just] (pulled it|pulled the roast|taken it out|took it out|pulled|got it out|it out) ',
        '^ (out it comes|out it came|out it is|out of the oven|it is out of the oven|out) $',
        `^ ${subject} out $`,
        `^ ${subject} (came out|went out) [at {c:clock}|{d:duration} ago] $`,
      ],
      (match) => {
        if (
          /fridge|freezer|butter out|cupboard|drawer|garden|town|tonight|tomorrow/.test(match.line)
        )
          return undefined;
        if (!/\b(out|pulled|pulling|off the heat|oven)\b/.test(match.line)) return undefined;
        return outOf(match);
      },
    ),
    ...phrases(
      [
        `^ ${subject} (is|are|went|has gone|have gone|has been|have been|is now|are now|has just gone|have just gone|go|goes|just went|is back|are back|is going|are going|was put|were put|got put|got) [just|now|back] (in|in the oven|into the oven|in the pan|roasting|cooking|in there|on|in the roasting tin|on the hob|on the stove|boiling|steaming|baking|put in|in now|going in) [now|already|together] [for {d:duration}|{e:duration} ago|at {c:clock}|since {f:clock}|{g:duration}|about {h:duration}] $`,
        `(put|popped|stuck|shoved|bunged|slid|chucked|got|have put|have popped|have got|putting|popping|sliding|whacked|i have got|threw|just put|tossed|shoving|getting|loaded|i am putting) ${subject} (in|in the oven|into the oven|on|in now|back in|in there|on the hob|on the stove|inside the oven) [now|$] [{d:duration} ago|at {c:clock}] $`,
        `(in goes|in go|in went|put in|popped in) [the] {who:thing} [now|at {c:clock}] $`,
        '^ (in it goes|in it went|it is in|in the oven|it went in|in) $',
        `^ ${subject} (in|in the oven|in now) [{d:duration} ago|at {c:clock}] $`,
        `^ ${subject} (started|started cooking|started roasting|went on) [{d:duration} ago|at {c:clock}] $`,
      ],
      (match) => {
        if (
          /(in (the )?(garden|car|bed|bath|lounge|post|sink|living room|other room)|fridge|freezer|charge|hurry|love|trouble|oven on|on (telly|fire|holiday|call|again|about|my way))/.test(
            match.line,
          )
        )
          return undefined;
        if (
          /oven (is )?on/.test(match.line) ||
          /foil|probe|thermometer|lid|foil on/.test(match.words('who'))
        )
          return undefined;
        if (
          /^(it|that|this|she|he) (is|was|has been|have been|got|goes|went) (just |now |back )?on /.test(
            match.line,
          )
        )
          return undefined;
        return startedIn(match);
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has been|have been|all|is all|are all|got) [all|now|just|been] {verb:word} [up|now|together|$]',
        '(i have|we have|have|has|i|finished|done|just|all) [just|now|already|finished|all] {verb:word} [up|off] [the|all the|my|all] {who:thing} $',
        '(finished|done|done with|completed|finished off|through with) {step:thing} $',
        '{who:thing} {verb:word} $',
        '(i am|we are|i have started|started|starting|sam is|just started|beginning|now) [now|just] {doing:word} [the|up the|up|with the|my|our] [{who:thing}] $',
      ],
      (match) => doneMeaning(match),
    ),
    ...phrases(
      [
        '^ [all|that is|that is all|it is|i am|we are|ok|and|yes|now|i have|that one is|this one is|everything is|job|consider it] (done|finished|sorted|complete|completed|done that|did it|did that|done it|finished it|finished that|all done|that is done|it is done|job done|done and dusted|ready|all set|tick|check|that is sorted|that is that|done and done|done now|took care of it|taken care of) [now|already] $',
      ],
      (match) => {
        if (/(looks|nearly|almost|half)/.test(match.line)) return undefined;
        if (/^i am (ready|done)/.test(match.line) && match.context.paused) return undefined;
        const step = match.context.openSteps[0];
        return { intent: 'report-done', ...(step ? { step } : {}) };
      },
    ),
  ],
};

const finishing =
  /^(done|made|ready|finished|cooked|sorted|complete|prepared|mixed|whipped|good to go|set)$/;

function doneMeaning(match: Match): Meaning | readonly Meaning[] | undefined {
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
  if (
    /^(in|out|on|off|here|late|late|early|coming|ing)$/.test(verb) ||
    /not|nearly|almost/.test(match.line)
  )
    return undefined;
  if (/^(look|looks|looking|seem|seems)/.test(verb)) return undefined;
  // "the meat" names a thing and reports nothing.
  if (/^(the|a|an|my|our|this|that|some|all)$/.test(who)) return undefined;
  const steps = lists(who).map((part) => {
    const dish = dishIn(part, context);
    if (dish)
      return (
        dishStep(dish, verb, context) ??
        (finishing.test(verb) ? makingStep(dish, context) : undefined)
      );
    if (meansRoast(part) || /^(bones|ends|rib bones|everything|roast and bones)$/.test(part)) {
      if (/^(done|ready|finished|made|cooked)$/.test(verb)) return undefined;
      return /(ed|en|tented|strung)$/.test(verb) ? roastStep(verb) : undefined;
    }
    if (/(^| )(is|in|on|a|i|we|it|was)( |$)/.test(part) || part.split(' ').length > 3)
      return undefined;
    if (finishing.test(verb)) return stepIn(part, context);
    return /(ed|t|n)$/.test(verb) ? stepIn(`${verb} ${part}`, context) : undefined;
  });
  if (steps.some((step) => step === undefined)) return undefined;
  return steps.map((step) => ({ intent: 'report-done' as const, step: step!, ...moment }));
}

export const notDone: Recogniser = {
  name: 'not-done',
  moods: ['negative'],
  phrases: [
    ...phrases(
      [
        '(did not|have not|has not|do not|not|never) [yet|even|got round to|managed to] (turn|turned|lower|lowered|drop|dropped|knock|knocked) [it|@oven|the heat|the oven] (down|back|lower) ',
        '@oven is not down',
      ],
      { intent: 'report-not-done', step: 'oven-down' },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has|have|was|did) not [quite|yet|been|all|fully|even|nearly|really|anywhere near|gone|come|quite yet|finished] (done|ready|in|out|made|finished|cooked|started|resting|carved|on|{verb:word}) [yet|in the oven|of the oven|cooking|$]',
        '(i|we) (have|did|had) not [yet|even|finished|started|got round to|put|quite|actually|had time to] {verb:word} [the|up] [{who:thing}] [in|out|on] [yet|$]',
        '(do not|not) (put|take|turn|start|pull|get) {who:thing} (in|out|on|off) [yet|$]',
        '^ [no ,|no] not (yet|done|quite|done yet|finished|ready|quite yet|just yet|quite done|ready yet) $',
        '(have not|has not|did not) (started|done|finished|put|made|got to) {who:thing} [in|out|on] [yet|$]',
      ],
      (match) => {
        const who = match.words('who');
        const line = match.line;
        if (
          /^(i|we|they|guests|he|she|you|dad|mum)$/.test(who) &&
          /(in|out|here|coming) $/.test(line)
        )
          return undefined;
        const inOut = / out /.test(` ${line}`) ? 'out' : / in /.test(` ${line}`) ? 'in' : undefined;
        const dish = dishIn(who, match.context);
        const verb = match.words('verb');
        const step = dish
          ? (dishStep(dish, verb, match.context) ??
            (inOut === 'in'
              ? inStep(dish, match)
              : inOut === 'out'
                ? `${dish}.out`
                : makingStep(dish, match.context)))
          : meansRoast(who)
            ? (roastStep(verb) ??
              (inOut === 'in' ? 'roast-in' : inOut === 'out' ? 'pull' : undefined))
            : roastStep(verb);
        if (
          !step &&
          who !== '' &&
          !meansRoast(who) &&
          !/^(they|them|those|that|everything|i|we|dinner|food|these)$/.test(who) &&
          stepIn(who, match.context) === undefined
        )
          return undefined;
        return { intent: 'report-not-done', ...(step ? { step } : {}) };
      },
    ),
  ],
};

export const skip: Recogniser = {
  name: 'skip',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '(skip|skipping|miss out|leave out|forget|not bothering with|will not bother with|will not bother|not going to bother with|not bother with|never mind|do not bother with|no need for|pass on|do without|omit|not doing|no time for|i am not going to|i will not|skip past|i skipped|skipped|not going to|bypass|not bothering to|do not bother to) {thing} $',
      ],
      (match) => {
        const words = match.words('thing');
        if (
          /^(it|that|this|that one|this step|that step|this one|the step|ahead|to the next [\w ]*|that bit|this bit)$/.test(
            words,
          )
        ) {
          if (!/skip|miss out|leave out|omit|bypass/.test(match.line)) return undefined;
          const step = match.context.openSteps[0];
          return { intent: 'skip-step', ...(step ? { step } : {}) };
        }
        // "skip the frenching" leaves a step out, "skip the gravy" a dish.
        const dish = / step$/.test(words) ? undefined : dishIn(words, match.context);
        if (dish && words.split(' ').length <= 4 && !/ing\b/.test(words))
          return { intent: 'drop-dish', dish };
        const step = stepIn(words.replace(/ step$/, ''), match.context);
        return step ? { intent: 'skip-step', step } : undefined;
      },
    ),
    ...phrases(['^ skip $'], (match) => ({
      intent: 'skip-step',
      ...(match.context.openSteps[0] ? { step: match.context.openSteps[0] } : {}),
    })),
  ],
};
