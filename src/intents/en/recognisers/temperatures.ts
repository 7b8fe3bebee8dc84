/** Which of roast and oven a bare temperature is of, and the report it makes. */
import type { Match, Meaning } from '../../recogniser.ts';
import { momentOf } from './moment-of.ts';

/** Above this a core does not stand, below it an oven does not: in between the words decide. */
const ovenFrom = { F: 212, C: 100 } as const;

export function looksLikeOven(
  match: Match,
  said: { temperature: number; unit?: 'F' | 'C' },
): boolean {
  return said.temperature >= ovenFrom[said.unit ?? match.context.units.temperature];
}

/** What has four figures is a joke or a slip; what has three, however hot, is told what is wrong with it. */
const inKitchen = ({ temperature }: { temperature: number }): boolean =>
  temperature > -40 && temperature < 1000;

const opinionOf =
  / (?:says?|said|reckons?|thinks?|claims?|swears|insists) (?:that )?(<[tn]\d+>) (?:degrees )?(?:is|was|would be|will be) (?:\w+ ){0,2}(?:raw|rare|medium|done|overdone|undercooked|underdone|low|high|hot|cold|fine|ok|safe|plenty|enough|right|wrong|perfect|best|better) /;

/** Where in the roast it was measured, if the words say. */
export const whereIn = (words: string): string | undefined => places.exec(words)?.[1];
const places =
  /(iced? water|ice bath|ice slush|(?:by|near|nearer|beside|next to|close to|closer to|against|along|at) (?:to )?the bone|middle|centre|center|core|thick(?:est|er)? (?:part|bit|end|side|spot|place|piece)|thin(?:nest|ner)? (?:part|bit|end|side|spot|place|piece)|(?:fat|small|big|far|other) (?:end|side)|edge|border|outside|surface|top\b|\btip\b|\btail\b|\bends?\b(?! up)|deepest (?:part|bit|spot)|\binside\b|\b(?:left|right) (?:side|end)|\b(?:front|back)\b(?! (?:in|on|to|up|down)))/;

/** Which thermometer it was measured with. */
export const quickIn = (words: string): 'quick' | 'leave-in' | undefined =>
  quickWords.test(words) ? 'quick' : leftIn.test(words) ? 'leave-in' : undefined;
const quickWords =
  /(instant| (quick|fast) (one|thermometer|probe)|quick|\bhand (?:probe|thermometer|one)|handheld|stick (?:thermometer|one))/;
const leftIn =
  /(leave-in|wired|wireless|stays in|with the (?:cable|wire)|\bwire (?:one|probe|thermometer)|cable (?:one|probe))/;

export function reading(match: Match): Meaning | undefined {
  const said = match.temperature('temperature');
  if (!Number.isFinite(said.temperature) || !inKitchen(said)) return undefined;
  const quantity = match.quantity('temperature');
  const line = ` ${match.line}`;
  // "My friend says 120 is raw": what somebody thinks of a number.
  const [, thought] = opinionOf.exec(` ${match.whole}`) ?? [];
  if (thought === match.groups.temperature!.trim()) return undefined;
  // Two numbers in a row are no reading.
  if (line.includes(`${match.groups.temperature!.trim()} <n`)) return undefined;
  const mark = match.groups.temperature!.trim();
  // "another six degrees", "ten degrees hotter than it was": how far, not where it stands.
  if (
    line.includes(` another ${mark} `) ||
    line.includes(` a further ${mark} `) ||
    new RegExp(
      `${mark} (degrees )?(hotter|colder|warmer|cooler|higher|lower|more|less|short|shy|to go) `,
    ).test(` ${match.whole}`)
  )
    return undefined;
  // "either 98 or 89": whoever says so does not know.
  if (
    / (either|between) </.test(line) ||
    new RegExp(`<[nt]\\d+> (degrees )?or ${mark}|${mark} (degrees )?or <[nt]`).test(line)
  )
    return undefined;
  if ((match.whole.match(/ ?(might|may|could) be /g) ?? []).length > 1) return undefined;
  // "I'm fifty two today".
  if (
    /^ (i am|i will be|he is|she is) <n\d+> (today|tomorrow|next|on|in|this|years|soon|$)/.test(
      line,
    ) &&
    match.context.expecting !== 'reading'
  )
    return undefined;
  const after = line.slice(
    line.indexOf(match.groups.temperature!) + match.groups.temperature!.length,
  );
  if (
    quantity?.kind === 'number' &&
    /^(temperature|minutes|hours|pounds|people|guests|bones?|ribs?|ribbers?|%|percent|of us|of them|of you|of those|kilos|more|oclock|each|dollars)/.test(
      after,
    )
  )
    return undefined;
  if (
    (/oven/.test(line) || (/ dial /.test(line) && looksLikeOven(match, said))) &&
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
  const where = whereIn(line);
  const whole = match.whole.match(/<[nt]\d+>/g)?.length === 1 ? ` ${match.whole}` : line;
  const quick = / the (quick|instant|fast) (one|thermometer|probe) /.test(whole)
    ? ('quick' as const)
    : quickIn(line);
  return {
    intent: 'report-reading',
    ...said,
    ...(where ? { where } : {}),
    ...(quick ? { thermometer: quick } : {}),
    ...momentOf(match),
  };
}

/** Which of the ovens, where there are several. */
export const whichOven = (words: string): string | undefined =>
  /(top|bottom|upper|lower|left|right|second|small|little|wee|big|large|other|main|grill|countertop|toaster) oven/.exec(
    words,
  )?.[1] ?? / ovens .*(top|bottom|upper|lower|left|right) (?:one )?(?:is|at|on) /.exec(words)?.[1];

export function oven(match: Match): Meaning | undefined {
  const said = match.temperature('temperature');
  if (!Number.isFinite(said.temperature) || !inKitchen(said)) return undefined;
  const line = ` ${match.line}`;
  // "The oven's gas, I have it on four": no oven is so cold.
  if (said.temperature <= 10 && said.unit === undefined)
    return / gas /.test(` ${match.whole}`) && said.temperature > 0
      ? { intent: 'report-oven', gasMark: said.temperature, ...momentOf(match) }
      : undefined;
  // "I put it down from 230": what it no longer is.
  if (line.includes(` from ${match.groups.temperature!.trim()} `) && !/ to </.test(line))
    return undefined;
  const which = whichOven(line);
  const mode =
    / (fan|convection|air circulation|circulating air|hot air) /.test(line) &&
    !/(no|not|without|without the|not the) fan /.test(line)
      ? ('fan' as const)
      : /(conventional|still|static|(no|not|without|without the) fan )/.test(line)
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
