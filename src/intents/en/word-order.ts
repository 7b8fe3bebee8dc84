/**
 * English in the order of other languages, put into its own: "when I must put", "the sauce of
 * horseradish, I made it", "the oven small", "put down it". Words move or are said otherwise; none that
 * says what happened is lost.
 */
import { lineOf } from '../clause.ts';
import type { Token } from '../token.ts';

interface Order {
  /** Its groups, one after the other, are the whole match. */
  shape: RegExp;
  /** Groups by number, and words in place of what was said. */
  instead: readonly (number | string)[];
}

const noun = '(?:(?:the|my|our|your|some|a|of) )?(?:[a-z]+ ){1,2}?';
const made =
  '(?:made|put|did|turned|switched|took|cooked|peeled|chopped|finished|started|prepared|washed|cut|left|moved|lowered|dropped|checked|measured|seasoned|salted|carved|covered|brought)';
const dishes =
  '(?:horseradish|mint|batter|bread|apple|cheese|herbs|garlic|potatoes|carrots|beans|cabbage|yorkshire|cream|wine|aluminium|aluminum|beef|lamb|pork|pan)';

const numbers = '(?:one|two|three|four|hundred|twenty|\\w+ty)';

const thought =
  '(?:(?:it|this|that|they|these|those|he|she|we|everyone|everything) |(?:the|my|our|your) (?:[a-z]+ ){1,3}?)';
const isOrHas = '(?:is|are|was|were|has|have|will|can|could|would) ';

const orders: readonly Order[] = [
  // "I don't think the potatoes are done", "I doubt it's ready": they are not.
  {
    shape: new RegExp(
      `(?<=^|[.!?,] |and |but |so |no |hmm |um )((?:(?:i|we) )?do not (?:really )?(?:think|reckon|believe|suppose) (?:that )?)(${thought})(${isOrHas})(?!not )`,
    ),
    instead: [2, 3, 'not'],
  },
  {
    shape: new RegExp(
      `(?<=^|[.!?,] |and |but |so )((?:i|we) (?:really )?doubt (?:if |that |whether )?)(${thought})(${isOrHas})(?!not )`,
    ),
    instead: [2, 3, 'not'],
  },
  // "the sauce of horseradish", "foil of aluminium": not "leg of lamb", which English says so.
  {
    shape: new RegExp(
      `(?<![^ ])((?:sauce|sauces|puddings?|cream|gratin|puree|mash|gravy|foil|salad|rolls) )(of )((?:the )?)(${dishes} )`,
    ),
    instead: [4, 1],
  },
  // "the gravy I made it already", "the fan, I switched it off": the thing is said again as "it".
  {
    shape: new RegExp(
      `(?<=^|[.!?,] |[.!?,] and )((?:the|my|our) ${noun})((?:, )?)((?:i|we) (?:have )?${made} )((?:down |up |off |on )?)((?:it|them) )`,
    ),
    instead: [3, 4, 1],
  },
  // "the fan I switched off", and nothing after it.
  {
    shape:
      /(?<=^|[.!?] )((?:the|my|our) [a-z]+ )((?:i|we) (?:have )?(?:switched|turned|put) (?:off|on|down|in|out|away) )(?=$|[.,!?])/,
    instead: [2, 1],
  },
  // "put down it at 100".
  {
    shape:
      /(?<![^ ])((?:put|turned|turn|took|switched|brought|set|take|bring) )((?:down|up|off|on|out|in|away) )((?:it|them) )/,
    instead: [1, 3, 2],
  },
  { shape: /(?<![^ ])(oven )(of (?:above|up) )/, instead: ['upper', 1] },
  { shape: /(?<![^ ])(oven )(of (?:below|down) )/, instead: ['lower', 1] },
  { shape: /(?<![^ ])((?:thermometer|probe|one|kind) )(that stays in )/, instead: ['leave-in', 1] },
  // "the oven small is at 200, the big is at 80".
  {
    // What follows is looked at first: looking back from every place takes long.
    shape:
      /(?=(?:the |my )?(?:big|small|large|little|other|main|top|bottom|upper|lower) )(?<= oven [^.]{0,60})((?:(?:the|my) )?(?:big|small|large|little|other|main|top|bottom|upper|lower) )((?:ones? )?)(?=(?:is at|at|is on|on|is off|off) )/,
    instead: [1, 'oven'],
  },
  { shape: /(?<![^ ])((?:i|we|you|it|they) must )(to )/, instead: [1] },
  {
    shape:
      /(?<![^ ])(how (?:many|much) times? )(?=(?:it|the|must|i|we|do|does|should|is|have|has|he|she) )/,
    instead: ['how', 'long'],
  },
  // "when I must put", "how long it must rest", "at what hour I must light".
  {
    shape:
      /(?<=^|[.!?,] |and |but )((?:at what (?:hour|time)|when|how long|how|what|where|how much|which \w+) )((?:i|we|it|they) )((?:must|can|should) )/,
    instead: [1, 3, 2],
  },
  { shape: /(?<![^ ])(at what hour )/, instead: ['when'] },
  // "how much lacks for the potatoes": time, where no thing was named.
  {
    shape:
      /(?<=^|[.!?,] |and |but |so )(how much )((?:time )?)((?:lacks|lack|misses|is missing|fails|remains|stays) )(?=(?:for|to|till|until|before|the) )/,
    instead: ['how', 'long'],
  },
  // "how is it that it rises so slowly".
  {
    shape: /(?<=^|[.!?,] |and |but |so )(how (?:is it|comes|comes it) that )/,
    instead: ['how', 'come'],
  },
  { shape: /(?<=^|[.!?,] )(what means )((?:the )?[a-z]+ )/, instead: ['what', 'does', 2, 'mean'] },
  {
    shape:
      /(?<![^ ])((?:the|my|our) )(oven )((?:small|big|large|little|other|second|main|upper|lower) )(?=is |at |has )/,
    instead: [1, 3, 2],
  },
  {
    shape: /(?<![^ ])((?:two|three|four|five|six|one|\d) )((?:persons?|people|guests?) )(more )/,
    instead: [1, 3, 2],
  },
  {
    shape:
      /(?<![^ ])((?:in|on) the whole )(?=(?:\w+teen|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+) )/,
    instead: ['total'],
  },
  // "I off the oven already", "on the gas now".
  {
    shape:
      /(?<=^|[.!?,] |and |(?:i|we|just|already|have) )((?:off|on) )((?:the )?(?:oven|gas|stove|hob) )(?=$|[.,!?]|already |now |at |to |and )/,
    instead: ['turned', 1, 2],
  },
  // "I have made the oven on": not "made up".
  {
    shape:
      /(?<![^ ])(made |make |making |opened |open )((?:the |my |our )?(?:oven|fan|gas|stove|light) )(on )/,
    instead: ['turned', 'on', 2],
  },
  // "opened the gas", "closed the fan": a door has neither.
  {
    shape: /(?<![^ ])(opened |open )(?=(?:the |my )?(?:gas|fan|stove|heat) )/,
    instead: ['turned', 'on'],
  },
  {
    shape: /(?<![^ ])(closed |shut |close )(?=(?:the |my )?(?:gas|fan|stove|heat|fire) )/,
    instead: ['turned', 'off'],
  },
  // "more fire", "on the fire": the stove's heat, and nothing burns.
  { shape: /(?<![^ ])(more |less |low |high |strong |slow |gentle )(fire )/, instead: [1, 'heat'] },
  { shape: /(?<=(?:put|is|are|still|back) )(on the fire )/, instead: ['on', 'the', 'hob'] },
  // "in the oven it is now 128".
  {
    shape: new RegExp(
      `(?<=^|[.!?,] |and )((?:in|inside) (?:the |my |our )?oven (?:it is|there is|there are|we have|i have) )((?:(?:now|at|only|still|about) )*)(?=\\d|${numbers} )`,
    ),
    instead: ['oven', 'is', 2],
  },
  // "the loin of the pig", "leg of the lamb".
  {
    shape: /(?<![^ ])((?:loin|leg|rib|shoulder|fillet) )(of (?:the )?(?:pig|pork|swine) )/,
    instead: ['pork', 1],
  },
  { shape: /(?<![^ ])((?:leg|loin|rib|fillet) )(of the )((?:lamb|beef) )/, instead: [1, 'of', 3] },
  // The heat of an oven without a fan.
  {
    shape:
      /(?<![^ ])((?:upper|top|over) (?:and )?(?:lower|bottom|under) (?:heat|element|elements) )/,
    instead: ['conventional'],
  },
  // "I have entered the roast in the oven", "introduced the potatoes".
  {
    shape:
      /(?<=(?:i|we|have|just) )((?:entered|introduced|inserted|ingressed|placed) )(?=(?:the |my |our )?(?:\w+ ){1,3}(?:in|into|inside) (?:the )?oven)/,
    instead: ['put'],
  },
];

const groupsOf = (match: RegExpExecArray): string[] => match.slice(1).map((group) => group ?? '');
const counted = (words: string): number => (words === '' ? 0 : words.trim().split(' ').length);

/** Each order is looked for once or twice in a text; where it stands, its words are set right. */
export function inOrder(tokens: readonly Token[]): Token[] {
  let said = [...tokens];
  let line = lineOf(said);
  for (const order of orders)
    for (let times = 0; times < 2; times++) {
      const moved = reordered(said, line, order);
      if (moved === undefined) break;
      said = moved;
      line = lineOf(said);
    }
  return said;
}

/** The words set right; undefined where they do not stand in this order. */
function reordered(tokens: Token[], line: string, { shape, instead }: Order): Token[] | undefined {
  const match = shape.exec(line);
  if (!match) return undefined;
  const start = counted(line.slice(0, match.index));
  const groups: Token[][] = [];
  let at = start;
  for (const group of groupsOf(match)) {
    groups.push(tokens.slice(at, at + counted(group)));
    at += counted(group);
  }
  const first = tokens[start]!;
  const moved = instead.flatMap((part) =>
    typeof part === 'number' ? groups[part - 1]! : [{ ...first, word: part }],
  );
  return [...tokens.slice(0, start), ...moved, ...tokens.slice(at)];
}
