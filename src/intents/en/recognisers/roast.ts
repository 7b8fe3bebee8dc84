/** The roast itself: cut, weight, bones, how it was prepared, how cold it starts. */
import type { ReadContext } from '../../../kitchen/heard.ts';
import { nameIn } from '../../names.ts';
import type { Match, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const cutWords: readonly [RegExp, string][] = [
  [/strip ?loin|strip roast|new york strip/, 'strip-loin'],
  [/tenderloin|fillet/, 'tenderloin'],
  [/eye (of )?round/, 'eye-of-round'],
  [/top ?(round|side)/, 'top-round'],
  [/lamb|\b(?:gigot|hogget|mutton)\b/, 'leg-of-lamb'],
  [/pork/, 'pork-loin'],
  [/\brib|prime rib/, 'rib-roast'],
  [/sirloin/, 'strip-loin'],
];

export function cutOf(line: string, context: ReadContext): string | undefined {
  const found = cutWords.find(([shape]) => shape.test(line));
  if (!found) return undefined;
  const known = context.lexicon.cuts.some((cut) => cut.id === found[1]);
  if (known) return found[1];
  const named = nameIn(context.lexicon.cuts, found[0].exec(line)![0]);
  return named ?? (found[1] === 'eye-of-round' ? 'eye-round' : found[1]);
}

const prepared: readonly [RegExp, 'whole' | 'tied-back' | 'rolled' | 'stuffed' | 'tenderised'][] = [
  [
    /tied back|cut off and tied|bones? tied|cut off the bone and tied|tied (them|it|the bones) back|strung back/,
    'tied-back',
  ],
  [/rolled|boned and rolled/, 'rolled'],
  [/stuffed/, 'stuffed'],
  [/tenderised|needled|jaccarded/, 'tenderised'],
  [/\bwhole\b/, 'whole'],
];

/** What begins another matter in one breath: the hour, the heads, how it is liked. */
const leadsOn =
  /(?<= )(?:[|,.] |and )?(?:\||for <|at <|<[nc]\d+> (?:of us|people|guests|adults|persons|coming|eating)|(?:i|we|they) (?:want|like|would|need|eat|are|will)|(?:cooked|done|served|medium|rare|well|dinner|lunch|supper|eating|sitting|ready|serving|feeding|tonight|today|tomorrow) |on the table|to (?:eat|serve|feed)|there are|<y).*$/;
const leadsIn =
  /^.* (?=(?:(?:we are|i am) (?:having|doing|cooking|roasting|making)|(?:i|we) have(?: got)?|it is|doing|cooking|roasting) )/;

/** "I want it rare fillet of beef": how it is liked, told before what it is. */
const likedBefore =
  /^(?:.* )?(?:rare|medium|well done) (?:please )?(?=(?:an? )?(?:[a-z]+ ){0,2}(?:beef|lamb|pork|ribs?|roast|loin|round|side|topside|fillet|tenderloin|sirloin) )/;

/** Of "six of us we are having a pork loin at seven" what is told of the roast: taken words left gaps. */
const roastAlone = (line: string): string =>
  line
    .replace(/^(?:\| |, |and )+/, '')
    .replace(likedBefore, '')
    .replace(leadsIn, '')
    .replace(leadsOn, '');

/** "one kilo seven", "one kilo eight hundred": what follows whole kilos are parts of one. */
function withTenths(weight: { value: number; unit: string }, match: Match): number {
  if (weight.unit !== 'kg' || !Number.isInteger(weight.value)) return weight.value;
  const mark = /<w\d+> (?:and )?(<n\d+>) (?!bone|rib|people|of us|guests|adults)/.exec(
    match.line,
  )?.[1];
  const part = mark ? match.withGroups({ n: `${mark} ` }).number('n') : Number.NaN;
  if (part >= 1 && part < 10) return weight.value + part / 10;
  return part >= 100 && part < 1000 ? weight.value + part / 1000 : weight.value;
}

export const roast: Recogniser = {
  name: 'roast',
  moods: ['statement', 'intention', 'request', 'negative'],
  phrases: [
    // "rib, 3 bone, 6.8": a weight without its unit, beside the rest of the roast.
    ...phrases('^ {x:number} $', (match) => {
      const value = match.number('x');
      const roastHeard = match.before.some((one) => one.intent === 'describe-roast');
      return roastHeard && !Number.isInteger(value) && value > 1 && value < 40
        ? { intent: 'describe-roast', weight: value, weightUnit: match.context.units.weight }
        : undefined;
    }),
    // "six pounds and he threw in another two, so call it eight": what it comes to.
    ...phrases(
      '^ [call it|that is|so|it is|makes|that makes|which makes|say|make it] {x:number} [all in|all told|altogether|in all|in total|now|$] $',
      (match) => {
        const told = match.before.findLast(
          (one) => one.intent === 'describe-roast' && one.weight !== undefined,
        );
        const value = match.number('x');
        const sums =
          /^(call|that makes|makes|which)/.test(match.line) ||
          / so (?:call it |that is |it is |makes |now |that makes )*<n\d+> /.test(match.whole);
        return told?.intent === 'describe-roast' &&
          told.weightUnit !== undefined &&
          sums &&
          value > 0 &&
          value < 40
          ? { intent: 'describe-roast', weight: value, weightUnit: told.weightUnit }
          : undefined;
      },
    ),
    // "We're having lamb": of meat named so there is one roast.
    ...phrases(
      '^ (we are having|we are doing|it is|i am doing|i am roasting|i am cooking|doing|cooking|roasting|having|we have got|i have got) [some|roast] (lamb|pork) [tonight|today|this time|for dinner|$] $ ',
      (match) => {
        const cut = cutOf(match.line, match.context);
        return cut !== undefined &&
          /^(planning|prep)?$/.test(match.context.stage ?? '') &&
          !match.before.some((one) => one.intent === 'describe-roast')
          ? { intent: 'describe-roast', cut }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(in|from|out of) the freezer',
        '(hard as a (rock|brick)|rock hard|solid as a rock|a block of ice|like a brick|frozen through|icy in the middle)',
      ],
      (match) =>
        /^(planning|prep)?$/.test(match.context.stage ?? '') &&
        !/ (butter|peas|potatoes|puddings|pastry|put|leftovers|ice cream|stock|bread|rolls|space|room) /.test(
          ` ${match.whole}`,
        ) &&
        (match.before.some((one) => one.intent === 'describe-roast') ||
          / (it|roast|joint|meat|beef|lamb|pork|rib) /.test(` ${match.line}`))
          ? { intent: 'describe-roast', frozen: true }
          : undefined,
    ),
    ...phrases(
      [
        '[it is|we have|we have got|i have got|i have|i got|we got|i have bought|we have bought|i bought|we bought|i am doing|i am roasting|i am cooking|we are doing|we are having|got|bought|cooking|roasting|doing|starting with|the roast is|the joint is|the beef is|this is|with|it weighs|there is] [a|an|the|one|my|our] [about|big|nice|lovely|small|large|whole|beautiful|half|good|massive|boneless|frozen|bone in] [{w:weight}] [of|,|in weight] [a|,] [beef|bone in|boneless|boned and rolled|boned|rolled|whole|standing|tied|stuffed|frozen|grass fed|dry aged] [{n:number} (bone|bones|boned|rib|ribs|-) [in|,]] [bone in|boneless|boned|rolled|standing|beef|whole|stuffed|frozen|prime] @cut [roast|joint|of beef|of lamb|of pork|of meat] [,] [that is|at|weighing|weighs|is|about|of|it is|which is|with|,] [{v:weight}] [and|with|on] [{m:number} (bones|bone|ribs)]',
        '{n:number} (bone|bones|ribs|rib|boned|ribber|ribbers) [in] [rib|roast|joint|prime rib|standing rib roast|rib roast|$]',
        '{w:weight} [and|,] no bone',
        '(took|taken|cut|had|has taken|has cut) the (bones|bone) (off|out|away) [and tied [them|it] [back] [on]]',
        '(tied|strung) (them|the bones|it) back [on]',
        '(butterflied|butterflyed) [leg of lamb|leg|lamb] [boneless|$]',
        '^ [nicely|all|already] (boned|deboned|boned out) [out] $',
        '(bone in|boneless|boned and rolled|off the bone|on the bone|no bones|no bone|rolled|still frozen|still froze|(half|partly|part|partially|still half|semi) (frozen|froze)|it is (half|partly|still|part) froze|it is frozen|frozen solid|tied back|stuffed|tenderised|frozen in the middle)',
        '{w:weight} [of (beef|meat|lamb|pork)] [on the bone|bone in|boneless|$]',
        'without (bone|bones|the bone|the bones)',
        '{w:weight}',
        '(it is|@it is|comes out|starting|starts|start|it started) [still|at] (starting at|starts at|at|from|coming out of the fridge at|out of the fridge at) {s:temperature} (out of the fridge|from the fridge|to start|fridge cold|to start with|in the fridge|raw)',
        '(straight|just|right) [out|come] (from|of|out of) the fridge at {s:temperature}',
        '(from|out of|ex|off) [the] (fridge|refrigerator|cooler|chiller|cool box|coolbox|chilly bin|esky|larder) (at|with|is|it is|has|it has) {s:temperature}',
        '(from|out of) [the] (fridge|refrigerator|cooler|chiller) [,] {s:temperature} $',
        '(starting temperature|start temperature|it starts|starting|fridge temperature|it came out of the fridge|came out of the fridge|out of the fridge) (is|at|of|from|was) {s:temperature}',
      ],
      (match) => {
        const { line } = match;
        const weight = match.quantity('w') ?? match.quantity('v');
        const bones = match.has('n') ? match.count('n') : match.count('m');
        // "bit of topside, five pound odd": the cut may stand in another clause.
        const kind =
          cutOf(line, match.context) ??
          (weight && /^(planning)?$/.test(match.context.stage ?? '')
            ? cutOf(match.whole, match.context)
            : undefined);
        const start = match.has('s') ? match.temperature('s') : undefined;
        // "took it out of the fridge at one" tells a time.
        if (
          match.quantity('s')?.kind === 'number' &&
          (start?.temperature ?? 0) <= 12 &&
          (match.context.units.temperature === 'F' || / at <n/.test(` ${line}`))
        )
          return undefined;
        const boneless =
          /boneless|boned (?!rib)|off the bone|no bones?|without bones?|bones? (off|out|away|removed)|butterfl/.test(
            line,
          ) && !/tied (them |it |the bones )?back/.test(line)
            ? true
            : /bone in|on the bone/.test(line) &&
                !/ (had|was|were|been|held|reading|reads|probe|tip) (it )?(right )?on the bone/.test(
                  line,
                ) &&
                bones === undefined
              ? false
              : undefined;
        const how = prepared.find(([shape]) => shape.test(line))?.[1];
        const frozen = /not frozen|frozen peas|frozen (potatoes|beans|puddings|veg)/.test(line)
          ? undefined
          : /\bfrozen?\b/.test(line)
            ? true
            : undefined;
        const something =
          weight !== undefined ||
          bones !== undefined ||
          start !== undefined ||
          boneless === true ||
          boneless === false ||
          (how !== undefined && how !== 'whole') ||
          frozen;
        const alone = roastAlone(line);
        const bare =
          /^((it is|we have( got)?|i have( got)?|i am (doing|roasting|cooking|making)|we are (doing|having)|got|cooking|roasting|doing|having|making|with|this is|(i|we)( have)? (bought|got|picked up)) )?(a |an |the |my |our )?(\w+ ){1,5}(for <n\d+> (people |of us |guests )?)?$/.test(
            alone,
          );
        const named =
          kind !== undefined &&
          (match.context.expecting === 'roast' || bare) &&
          !/ (is|out|in|done|ready|burnt|resting|down|put|went|medium|well|rare|was|has) /.test(
            ` ${alone.replace(/^(it|this) is /, '').replace(/(bone in|we are|i am)/, '')}`,
          ) &&
          kind !== undefined &&
          /^((it is|we have( got)?|i have( got)?|i am (doing|roasting|cooking|making)|we are (doing|having)|got|cooking|roasting|doing|having|making|with|this is|bought|(i|we)( have)? (bought|got|picked up)) |a |an |boneless |bone in |beef |lamb |pork |roast |rib |prime |standing |leg |pork |strip |top |eye |whole |tender|fillet|sirloin|fore|topside|one )/.test(
            alone,
          );
        if (!something && !named) return undefined;
        // "everybody's stuffed", "the butter is still rock hard".
        if (
          how === 'stuffed' &&
          / (everybody|everyone|we are|i am|they are|guests are|all) (\w+ )?stuffed /.test(
            ` ${line}`,
          )
        )
          return undefined;
        // "he trimmed three hundred grams off": a part of it is not what it weighs.
        if (
          weight !== undefined &&
          / (off|in|another|extra) <w\d+> | <w\d+> (off|lighter|heavier|less|extra|short) |(trimmed|took|cut|lost) <w/.test(
            ` ${line}`,
          ) &&
          !/ (comes|came|weighs|weighing|coming) in /.test(` ${line}`)
        )
          return undefined;
        if (
          /(butter|potatoes|carrots|flour|cream|sprouts|beans|thyme|sugar|onions|guinea|lost|lose|weighs? (less|more)|how|each|per) /.test(
            line,
          ) &&
          weight !== undefined &&
          kind === undefined
        )
          return undefined;
        return {
          intent: 'describe-roast',
          ...(kind ? { cut: kind } : {}),
          ...(weight?.kind === 'weight'
            ? { weight: withTenths(weight, match), weightUnit: weight.unit }
            : {}),
          ...(bones === undefined ? {} : { bones }),
          ...(boneless === undefined ? {} : { boneless }),
          ...(how ? { prepared: how } : {}),
          ...(frozen ? { frozen } : {}),
          ...(start
            ? {
                startTemperature: start.temperature,
                ...(start.unit ? { startTemperatureUnit: start.unit } : {}),
              }
            : {}),
        };
      },
    ),
  ],
};
