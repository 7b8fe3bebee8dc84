/** What is done with all that was heard in one text: merged, completed, and freed of what adds nothing. */
import type { Doneness, ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Refiner } from '../language.ts';
import type { Placed } from '../placed.ts';
import type { Meaning } from '../recogniser.ts';
import { placeOfReading, readingOfOven, thermometerOverDial } from './beside-reading.ts';
import { coreAsItIs } from './core-as-it-is.ts';
import { cutInText, forTheDish, ofDishBefore, whatIsNotDone, wholeSetup } from './named-after.ts';
import { donenessOf } from './recognisers/doneness.ts';

/** "it's on a rack, fan oven", "seven pounds, bone in", "celsius and kilos": one report in parts. */
const mergedIntents = [
  'report-setup',
  'describe-roast',
  'set-units',
  'cook-away',
  'running-behind',
] as const;

function mergeParts(heard: readonly Placed[]): Placed[] {
  return mergedIntents.reduce<Placed[]>((all, intent) => merged(all, intent), [...heard]);
}

function merged(heard: readonly Placed[], intent: Meaning['intent']): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const index =
      one.meaning.intent === intent
        ? out.findIndex((other) => other.meaning.intent === intent)
        : -1;
    const first = out[index];
    if (!first) out.push(one);
    else
      out[index] = {
        ...first,
        meaning: { ...first.meaning, ...one.meaning } as Meaning,
        tokens: [...first.tokens, ...one.tokens],
      };
  }
  return out;
}

/** "How much butter, for ten people": of how many it is asked, and nothing is set. */
const askedForHeads = (heard: readonly Placed[]): Placed[] =>
  heard.filter(
    ({ meaning }) =>
      meaning.intent !== 'set-guests' ||
      meaning.count === undefined ||
      !heard.some(
        (one) => one.meaning.intent === 'ask-amount' && one.meaning.guests === meaning.count,
      ),
  );

/** "Seven bones? No, it's three": what is set right in the same breath is what it is. */
function roastSetRight(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const at = out.findLastIndex(({ meaning }) => meaning.intent === 'describe-roast');
    const told = out[at]?.meaning;
    if (
      one.meaning.intent === 'correct' &&
      told?.intent === 'describe-roast' &&
      (one.meaning.bones ?? one.meaning.weight) !== undefined
    ) {
      const {
        bones = told.bones,
        weight = told.weight,
        weightUnit = told.weightUnit,
      } = one.meaning;
      out[at] = {
        ...out[at]!,
        meaning: {
          ...told,
          ...(bones === undefined ? {} : { bones }),
          ...(weight === undefined ? {} : { weight }),
          ...(weightUnit === undefined ? {} : { weightUnit }),
        },
      };
    } else out.push(one);
  }
  return out;
}

/** "lit the oven, 450": the oven and what it was set to, in two breaths. */
function mergeOven(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'report-oven' &&
      last?.meaning.intent === 'report-oven' &&
      one.meaning.mode !== undefined &&
      Object.keys(one.meaning).length === 2
    )
      // "at 140 but I've switched the fan off".
      out[out.length - 1] = { ...last, meaning: { ...last.meaning, mode: one.meaning.mode } };
    else if (
      one.meaning.intent === 'report-oven' &&
      last?.meaning.intent === 'report-oven' &&
      last.meaning.temperature === undefined &&
      last.meaning.gasMark === undefined &&
      last.meaning.bias === undefined &&
      last.meaning.state !== 'off' &&
      last.meaning.minutesAgo === undefined &&
      (one.meaning.temperature ?? one.meaning.gasMark) !== undefined
    ) {
      const { state: _, ...rest } = last.meaning;
      out[out.length - 1] = {
        ...last,
        meaning: { ...rest, ...one.meaning },
        tokens: [...last.tokens, ...one.tokens],
      };
    } else out.push(one);
  }
  return out;
}

/** "For the little ones we eat before, two children": they are counted already. */
const countedAmong = (heard: readonly Placed[]): Placed[] =>
  heard.filter(
    (one) =>
      !(
        one.meaning.intent === 'set-guests' &&
        /^ <n\d+> (children|kids|little ones|toddlers) $/.test(lineIn(one)) &&
        heard.some(({ meaning }) => meaning.intent === 'note-guest' && meaning.need === 'eats-at')
      ),
  );

/** "not 46, 64. Wait, glasses... 46, sorry": what is read in the end is what is meant. */
function correctedAgain(heard: readonly Placed[], _: ReadContext, whole: string): Placed[] {
  if (!/ (wait|sorry|glasses|misread|oops) /.test(` ${whole}`)) return [...heard];
  const out: Placed[] = [];
  for (const one of heard) {
    const at = out.findLastIndex(({ meaning }) => !/^(pause|deny|courtesy)$/.test(meaning.intent));
    const last = out[at];
    if (
      one.meaning.intent === 'report-reading' &&
      last?.meaning.intent === 'correct' &&
      last.meaning.temperature !== undefined
    )
      out[at] = {
        ...one,
        meaning: { intent: 'correct', temperature: one.meaning.temperature },
      };
    else out.push(one);
  }
  return out;
}

/** "Whole tenderloin, trimmed, four pounds": how it was bought, while the roast is described. */
const asBought = (heard: readonly Placed[], { stage, expecting }: ReadContext): Placed[] =>
  heard.filter(
    (one) =>
      one.meaning.intent !== 'report-done' ||
      !(stage === 'planning' || expecting === 'roast') ||
      !/^ (trimmed|tied|frenched|rolled|boned|cleaned|cut) (up |off |already )?$/.test(
        lineIn(one),
      ) ||
      !heard.some(({ meaning }) => meaning.intent === 'describe-roast'),
  );

const replaced =
  /^(report-oven|report-reading|watch|set-timer|set-guests|set-serving-time|set-doneness|add-dish|shift-serving|describe-roast)$/;

/** "mashed, no, strike that, roast potatoes", "on gas four, hang on, no, it's electric, 160": the first goes. */
function takenBack(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const { intent } = one.meaning;
    if (!replaced.test(intent)) {
      out.push(one);
      continue;
    }
    const last = out.findLastIndex((other) => !/^(undo|deny|pause)$/.test(other.meaning.intent));
    const denied =
      out.length - 1 > last ||
      /^(no (it|make|we|call|let|say)|wait|sorry|actually|rather) /.test(
        lineOf(one.clause?.tokens ?? []),
      );
    if (
      last >= 0 &&
      denied &&
      out[last]!.meaning.intent === intent &&
      out[last]!.clause !== one.clause &&
      // "96 there. No idea why, 98 at the bone": a number alone takes another's place.
      (intent !== 'report-reading' || /^ (it is |is )?<[nt]\d+> (degrees )?$/.test(lineIn(one)))
    )
      out.splice(last);
    out.push(one);
  }
  return out;
}

/** "I ain't frenching nothing, just skip it": what is left out is what was not done. */
function skipsWhatIsNotDone(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1)?.meaning;
    if (
      one.meaning.intent === 'skip-step' &&
      last?.intent === 'report-not-done' &&
      (one.meaning.step === undefined || one.meaning.step === last.step)
    ) {
      out.pop();
      const step = one.meaning.step ?? last.step;
      out.push({ ...one, meaning: { intent: 'skip-step', ...(step ? { step } : {}) } });
    } else out.push(one);
  }
  return out;
}

/** "I'm a little late. Maybe ten minutes.": the minutes are the cook's. */
function behindBy(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'shift-serving' &&
      one.meaning.minutes > 0 &&
      last?.meaning.intent === 'running-behind' &&
      last.meaning.minutes === undefined &&
      /^ (by |of )?<d\d+> $/.test(lineIn(one))
    )
      out[out.length - 1] = { ...last, meaning: { ...last.meaning, minutes: one.meaning.minutes } };
    else out.push(one);
  }
  return out;
}

/** The event a report tells of, if it tells of one, and whether it says when. */
function eventIn({ meaning }: Placed): { key: string; timed: boolean } | undefined {
  if (meaning.intent !== 'report-started' && meaning.intent !== 'report-out') return undefined;
  const of = meaning.intent === 'report-started' ? meaning.step : (meaning.what ?? '');
  return {
    key: `${meaning.intent} ${of}`,
    timed: (meaning.minutesAgo ?? meaning.time) !== undefined,
  };
}

/** "they're on the stove, I started them three minutes ago": one event, and when it was. */
function happenedOnce(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const event = eventIn(one);
    const at = event ? out.findIndex((other) => eventIn(other)?.key === event.key) : -1;
    if (at < 0 || (event?.timed && eventIn(out[at]!)?.timed)) out.push(one);
    else if (event?.timed) out[at] = { ...out[at]!, meaning: one.meaning };
  }
  return out;
}

const lineIn = (one: Placed): string => ` ${lineOf(one.clause?.tokens ?? one.tokens)}`;

/** "checked ten minutes ago, it was 88": the look and what was seen are one. */
function lookAndReading(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'report-reading' &&
      last?.meaning.intent === 'report-done' &&
      last.meaning.step === 'check'
    ) {
      const { minutesAgo, time } = last.meaning;
      const then = {
        ...(minutesAgo === undefined ? {} : { minutesAgo }),
        ...(time === undefined ? {} : { time }),
      };
      out[out.length - 1] = { ...one, meaning: { ...then, ...one.meaning } };
    } else out.push(one);
  }
  return out;
}

const otherOvens =
  / (small|little|wee|second|spare|other|countertop|toaster|top|bottom|upper|lower|big|main|large) (?:countertop |toaster )?oven /g;
const stoodIn =
  / (?:in|into) (?:the |my |our )?((?:little |small |wee )?(?:small|little|wee|second|spare|other|countertop|toaster)) (?:oven|one|won) /;

/** "I put the small oven on for the potatoes, 400": of which oven it is, named anywhere in the text. */
function whichOvenInText(heard: readonly Placed[], _: ReadContext, whole: string): Placed[] {
  const named = [...new Set([...` ${whole}`.matchAll(otherOvens)].map(([, which]) => which!))];
  const reports = heard.filter(({ meaning }) => meaning.intent === 'report-oven');
  return heard.map((one) => {
    const { meaning } = one;
    if (
      meaning.intent === 'report-oven' &&
      meaning.which === undefined &&
      meaning.bias === undefined &&
      named.length === 1 &&
      reports.length === 1
    )
      return { ...one, meaning: { ...meaning, which: named[0]! } };
    const which =
      meaning.intent === 'report-started' &&
      meaning.which === undefined &&
      meaning.step.includes('.')
        ? stoodIn.exec(lineIn(one))?.[1]
        : undefined;
    return which && meaning.intent === 'report-started'
      ? { ...one, meaning: { ...meaning, which } }
      : one;
  });
}

/** "Convection's on, 325": how it is heated, told before what it was set to. */
function fanThenOven(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const { meaning } = one;
    const last = out.at(-1);
    if (
      meaning.intent === 'report-oven' &&
      meaning.temperature !== undefined &&
      meaning.mode === undefined &&
      last?.meaning.intent === 'report-setup' &&
      last.meaning.fan === true &&
      Object.keys(last.meaning).length === 2 &&
      / (fan|convection) (is )?(now )?on $/.test(lineIn(last))
    )
      out[out.length - 1] = { ...one, meaning: { ...meaning, mode: 'fan' } };
    else out.push(one);
  }
  return out;
}

/** "230 on the dial, fan": how it is heated is part of what it was set to. */
function fanOfOven(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'report-setup' &&
      one.meaning.fan !== undefined &&
      one.clause !== undefined &&
      one.clause.tokens.length <= 6 &&
      Object.keys(one.meaning).length === 2 &&
      last?.meaning.intent === 'report-oven' &&
      last.meaning.temperature !== undefined
    )
      out[out.length - 1] = {
        ...last,
        meaning: { ...last.meaning, mode: one.meaning.fan ? 'fan' : 'still' },
      };
    else out.push(one);
  }
  return out;
}

/** "power's back, was off twelve minutes": how long it was is of the power, not of the cook. */
function powerMinutes(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'cook-away' &&
      last?.meaning.intent === 'report-trouble' &&
      /^power-/.test(last.meaning.trouble) &&
      !/ (i|we|me|my) /.test(lineIn(one))
    )
      out[out.length - 1] = {
        ...last,
        meaning: {
          ...last.meaning,
          ...(one.meaning.minutes === undefined ? {} : { minutes: one.meaning.minutes }),
        },
      };
    else out.push(one);
  }
  return out;
}

/** "the dial's in Fahrenheit, I've got her at 325 F": the unit is told with the number. */
const unitsOnce = (heard: readonly Placed[]): Placed[] =>
  heard.filter(
    ({ meaning }) =>
      !(
        meaning.intent === 'set-units' &&
        meaning.weight === undefined &&
        heard.some((other) => 'unit' in other.meaning && other.meaning.unit === meaning.temperature)
      ),
  );

/** "dad's here but the others are stuck": not all of them have come. */
const othersAwaited =
  / (others|rest|everyone else|other (car|lot|half|two|three)|remaining \w+|latecomers) (\w+ )?(broke|missed|got|is|are|has|have|will be) (\w+ )?(not|still|stuck|late|on|delayed|coming|running|behind|held|lost|down|<d\d+>) | well <n\d+> (of them )?(are|is) | , <n\d+> of them anyway /;

/** "first car's here, so three here, five to go": one arrival. */
function arrivedOnce(placed: readonly Placed[], _context: ReadContext, whole: string): Placed[] {
  const heard = othersAwaited.test(` ${whole}`)
    ? placed.map((one) =>
        one.meaning.intent === 'report-guests' && one.meaning.state === 'arrived'
          ? { ...one, meaning: { ...one.meaning, state: 'partly-arrived' as const } }
          : one,
      )
    : placed;
  const told = heard.filter(({ meaning }) => meaning.intent === 'report-guests');
  const counted = told.find(
    ({ meaning }) => meaning.intent === 'report-guests' && meaning.count !== undefined,
  );
  const partly = told.every(
    ({ meaning }) => meaning.intent === 'report-guests' && meaning.state === 'partly-arrived',
  );
  const counts = counted !== undefined && / of them /.test(lineIn(counted));
  return (partly || counts) && told.length > 1
    ? heard.filter((one) => !told.includes(one) || one === (counted ?? told[0]))
    : [...heard];
}

/** "way too rare, basically raw": what is named says more than that something is wrong, and twice is once. */
function oneTrouble(heard: readonly Placed[]): Placed[] {
  const troubles = heard.flatMap(({ meaning }) =>
    meaning.intent === 'report-trouble' ? [meaning] : [],
  );
  const has = (trouble: (typeof troubles)[number]['trouble']): boolean =>
    troubles.some((one) => one.trouble === trouble);
  const saidMore = (one: (typeof troubles)[number]): boolean =>
    (one.trouble === 'other' && troubles.some(({ trouble }) => trouble !== 'other')) ||
    (one.trouble === 'grey' && has('overcooked')) ||
    (one.trouble === 'gone-cold' && one.step === undefined && has('oven-out')) ||
    (one.step === undefined &&
      troubles.some(({ trouble, step }) => trouble === one.trouble && step !== undefined));
  return heard.filter(({ meaning }) => meaning.intent !== 'report-trouble' || !saidMore(meaning));
}

/** "no creme fraiche, would yogurt work": what is asked is the matter, the lack its reason. */
function besideSubstance(heard: readonly Placed[], { expecting }: ReadContext): Placed[] {
  const substance = (one: Placed): boolean =>
    !manners.test(one.meaning.intent) &&
    !/^(undo|start-over|quiet|unclear)$/.test(one.meaning.intent);
  return heard.filter((one, at) => {
    const { meaning } = one;
    const others = heard.filter((_, index) => index !== at).filter(substance);
    if (others.length === 0) return true;
    // A frame's guess at the talk itself, or at a step nobody named, is colour beside a report.
    if (one.framed && /^(undo|start-over|quiet|resume|pause|repeat)$/.test(meaning.intent))
      return false;
    const bare =
      (meaning.intent === 'report-done' || meaning.intent === 'report-not-done') &&
      meaning.step === undefined;
    if (bare && one.framed) return false;
    // "No, not yet", asked whether it shall be so.
    if (
      bare &&
      meaning.intent === 'report-not-done' &&
      (expecting === 'confirmation' || expecting === 'choice') &&
      heard[at - 1]?.meaning.intent === 'deny'
    )
      return false;
    // "it isn't at 120, it's 102": what it is not is told with what it is.
    if (
      bare &&
      / <[nt]\d+> | nowhere near | (moved|changed|budged|shifted|risen|climbed|gone up) /.test(
        lineIn(one),
      ) &&
      heard.some((other) => other.meaning.intent === 'report-reading')
    )
      return false;
    // "well done, no pinker than that": the note or the wish was said.
    const last = heard[at - 1]?.meaning;
    if (
      meaning.intent === 'set-doneness' &&
      last?.intent === 'note-guest' &&
      last.need === 'doneness'
    )
      return false;
    // "vegetarian, no meat no egg" lacks nothing.
    if (meaning.intent === 'lack' && last?.intent === 'note-guest')
      return !/^(meat|beef|egg|eggs|fish|dairy|milk|butter|cheese|gluten|nuts|pork|pink)/.test(
        meaning.thing,
      );
    if (meaning.intent === 'lack' && last?.intent === 'report-guests') return false;
    if (meaning.intent === 'report-setup' && last?.intent === 'report-oven' && last.mode === 'fan')
      return !(meaning.fan === true && Object.keys(meaning).length === 2);
    // One step is told once: "plated and on the table".
    if (
      'step' in meaning &&
      last !== undefined &&
      'step' in last &&
      meaning.step !== undefined &&
      last.step === meaning.step &&
      last.intent === 'report-done' &&
      meaning.intent === 'report-started'
    )
      return false;
    if (
      expecting === 'choice' &&
      one.framed &&
      heard.some((other) => other.meaning.intent === 'choose') &&
      /^(undo|set-doneness|report-)/.test(meaning.intent)
    )
      return false;
    return true;
  });
}

/** "we're bringing it forward to medium, medium well I suppose": of two wishes the last, unless it only denies. */
function lastWish(heard: readonly Placed[]): Placed[] {
  const wishes = heard.filter(({ meaning }) => meaning.intent === 'set-doneness');
  if (wishes.length < 2) return [...heard];
  const kept =
    wishes.find((one) => / (instead of|rather than) /.test(lineIn(one))) ??
    wishes.findLast((one) => !/ (no|not|never|without|hates?) /.test(lineIn(one))) ??
    wishes.at(-1);
  return heard.filter((one) => !wishes.includes(one) || one === kept);
}

/** "Dried", "that one": a kind of the thing, and not its name. */
const kindOnly =
  /^(the |some |a )*(dried|fresh|frozen|ground|tinned|canned|bottled|powdered|that|this|those|it|something|anything|another|other|else|one|ones| )+$/;

/** "Out of fresh rosemary, can I use dried": what is asked is the matter, and what is lacked its thing. */
function askedForLack(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1)?.meaning;
    if (one.meaning.intent !== 'ask-substitute' || last?.intent !== 'lack') out.push(one);
    else {
      const { ingredient } = one.meaning;
      const named = ingredient !== undefined && !kindOnly.test(ingredient);
      out[out.length - 1] = named
        ? one
        : { ...one, meaning: { intent: 'ask-substitute', ingredient: last.thing } };
    }
  }
  return out;
}

/** What stands beside another report and only says it again, or only colours it. */
function withoutEchoes(heard: readonly Placed[], context: ReadContext): Placed[] {
  return heard.filter((one, at) => {
    const { meaning } = one;
    const last = heard[at - 1]?.meaning;
    const any = (intent: Meaning['intent']): boolean =>
      heard.some((other) => other.meaning.intent === intent);
    switch (meaning.intent) {
      // "potatoes still pale, they need longer"
      case 'report-not-done':
        return !(last?.intent === 'report-not-done' && meaning.step === undefined);
      // "Priya doesn't eat meat, she's vegetarian"
      case 'note-guest':
        return !(
          last?.intent === 'note-guest' &&
          last.need === meaning.need &&
          // Two things that she must not have are two.
          (meaning.need !== 'allergy' || last.value === meaning.value) &&
          /^(he|she|they|him|her)$/.test(meaning.who ?? 'he')
        );
      // "scratch that, 97 not 79"
      case 'undo':
        return heard[at + 1]?.meaning.intent !== 'correct';
      // "I picked up the roast, it's a standing rib"
      case 'have':
        return !(/^(roast|joint|meat|beef)$/.test(meaning.thing) && any('describe-roast'));
      // "that's it carved, lovely and pink"; "pink but not bloody"
      case 'set-doneness':
        return (
          !(any('report-done') && /^(rest|hold|carve|served)$/.test(context.stage ?? '')) &&
          !(last?.intent === 'set-doneness' && / not /.test(lineIn(one)))
        );
      default:
        return true;
    }
  });
}

/** "Rare", taken for a dish. */
const wishIn = (meaning: Meaning): Doneness | undefined =>
  meaning.intent === 'add-dish' &&
  /^(medium|rare|bloody|pink|well done|medium rare|medium well)$/.test(meaning.dish)
    ? donenessOf(meaning.dish)
    : undefined;

/** What ends as a name does not is none: "more to the". */
const namedDishes = (heard: readonly Placed[]): Placed[] =>
  heard.filter(
    ({ meaning }) =>
      meaning.intent !== 'add-dish' || !/ (to|the|of|an?|and|with|for)$/.test(meaning.dish),
  );

/** How done it shall be was asked: "somewhere around 135 in the middle" is no reading. */
function asWished(heard: readonly Placed[], { expecting }: ReadContext): Placed[] {
  if (expecting !== 'doneness') return [...heard];
  // "nice and pink, more to the side of bloody": how it is wished, and no dishes.
  const wished = heard.some(
    ({ meaning }) => meaning.intent === 'set-doneness' || wishIn(meaning) !== undefined,
  );
  const told = wished
    ? heard.flatMap((one) => {
        if (one.meaning.intent !== 'add-dish') return [one];
        const doneness = wishIn(one.meaning);
        return doneness ? [{ ...one, meaning: { intent: 'set-doneness' as const, doneness } }] : [];
      })
    : heard;
  return told.map((one) =>
    one.meaning.intent === 'report-reading'
      ? {
          ...one,
          meaning: {
            intent: 'set-doneness',
            temperature: one.meaning.temperature,
            ...(one.meaning.unit ? { unit: one.meaning.unit } : {}),
          },
        }
      : one,
  );
}

/** "me and my husband and his parents so four": the sum that is said is the number. */
function headsOnce(heard: readonly Placed[]): Placed[] {
  const counted = heard.filter(
    ({ meaning }) => meaning.intent === 'set-guests' && meaning.count !== undefined,
  );
  const last = counted.at(-1);
  return heard.filter((one) => !counted.includes(one) || one === last);
}

/** "a timer for ten minutes to put the potatoes in": what a call is for has not happened. */
function callsAreForLater(heard: readonly Placed[]): Placed[] {
  const called = heard.some(({ meaning }) => /^(set-timer|watch)$/.test(meaning.intent));
  return heard.filter(
    (one) =>
      !called ||
      !/^report-(started|done|out)$/.test(one.meaning.intent) ||
      !/ to (put|get|take|turn|baste|check|pull|start|do|stir|drain|flip|move|carve|shove|pop|make|peel) /.test(
        lineIn(one),
      ),
  );
}

/** "seven of us, not eight, Bridie's cried off": who it is explains the number that was said. */
function changeOnce(heard: readonly Placed[]): Placed[] {
  const named = heard.find(
    ({ meaning }) =>
      (meaning.intent === 'correct' && meaning.count !== undefined) ||
      (meaning.intent === 'set-guests' &&
        meaning.change !== undefined &&
        meaning.who === undefined),
  );
  return heard.filter(
    (one) =>
      one === named ||
      named === undefined ||
      one.meaning.intent !== 'set-guests' ||
      one.meaning.change === undefined ||
      / <n\d+> /.test(lineIn(one)) ||
      (named.meaning.intent === 'set-guests' &&
        Math.sign(named.meaning.change ?? 0) !== Math.sign(one.meaning.change)),
  );
}

/** "it reads 125, fahrenheit I think": the unit is the reading's, not a wish. */
function unitOfReading(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const last = out.at(-1);
    if (
      one.meaning.intent === 'set-units' &&
      one.meaning.temperature !== undefined &&
      one.meaning.weight === undefined &&
      (last?.meaning.intent === 'report-reading' ||
        last?.meaning.intent === 'watch' ||
        last?.meaning.intent === 'report-oven') &&
      last.meaning.temperature !== undefined &&
      one.clause !== undefined &&
      one.clause.tokens.length <= 3
    )
      out[out.length - 1] = {
        ...last,
        meaning: { ...last.meaning, unit: one.meaning.temperature },
      };
    else out.push(one);
  }
  return out;
}

const manners = /^(courtesy|acknowledge|affirm|pause|deny|repeat|help|resume)$/;

const besideHarm =
  /^(report-setup|help|add-hands|report-trouble|report-out|have|lack|ask-next|ask-how|report-guests|report-done|unclear|ask-options|cook-away)$/;

function withoutManners(heard: readonly Placed[], context: ReadContext): Placed[] {
  const asked = context.expecting === 'confirmation' || context.expecting === 'choice';
  const urgent = heard.some((one) => one.meaning.intent === 'emergency');
  const substance = heard.some((one) => !manners.test(one.meaning.intent));
  return heard.filter((one, at) => {
    const { meaning } = one;
    const { intent } = meaning;
    // "scalded my arm on the tin" says nothing of the pan, "help" there wishes for no list.
    if (urgent && besideHarm.test(intent))
      return meaning.intent === 'report-trouble' && /^(power-out|dropped)$/.test(meaning.trouble);
    // What is made of a leftover word or of the clause as a whole is no report beside a fire.
    if (
      urgent &&
      (one.framed || one.tokens.length <= 2) &&
      /^report-(started|done|not-done)$/.test(intent)
    )
      return false;
    if (urgent && meaning.intent === 'report-oven' && meaning.temperature === undefined)
      return one.tokens.some((token) => /^(turned|switched|turn|shut|switch)$/.test(token.word));
    // "no, that's not right", said to a question, doubts what was heard and no thermometer.
    if (
      context.expecting === 'confirmation' &&
      meaning.intent === 'report-trouble' &&
      meaning.trouble === 'probe-doubt' &&
      heard.some((other) => other.meaning.intent === 'deny') &&
      !one.tokens.some((token) =>
        /^(probe|thermometer|instant-read|leave-in|reading)$/.test(token.word),
      )
    )
      return false;
    if (!manners.test(intent) || heard.length === 1) return true;
    // A no before the right value is part of setting it right; asked for, it is an answer.
    if (intent === 'deny' && heard.some((one) => one.meaning.intent === 'choose')) return false;
    if (intent === 'deny' || intent === 'affirm') {
      // "nah, you're all right, leave it": the first of yes and no is the answer.
      if (asked)
        return !heard.slice(0, at).some((one) => /^(affirm|deny)$/.test(one.meaning.intent));
      return !substance && heard[at + 1] === undefined;
    }
    // "go on, add some peas": a nudge, unless the talk was at rest.
    if (intent === 'resume')
      return (
        context.paused ||
        !substance ||
        one.tokens.length > 3 ||
        /^ (i am|we are) back (now )?$/.test(lineIn(one))
      );
    if (intent === 'pause' || intent === 'repeat' || intent === 'help')
      return !substance && at === heard.findIndex((one) => one.meaning.intent === intent);
    const before = heard.slice(0, at).map((one) => one.meaning.intent);
    // Greetings and nods beside something of substance are manners.
    return (
      !substance &&
      !before.some((one) => /^(courtesy|acknowledge)$/.test(one)) &&
      !heard.some((one) => /^(affirm|deny|pause|repeat|help)$/.test(one.meaning.intent))
    );
  });
}

/** "I pulled it and it's resting" is one event: the rest has begun. */
function outAndResting(heard: readonly Placed[]): Placed[] {
  return heard.filter(({ meaning }, at) => {
    const next = heard[at + 1]?.meaning;
    return !(
      meaning.intent === 'report-out' &&
      meaning.what === undefined &&
      next?.intent === 'report-started' &&
      next.step === 'rest'
    );
  });
}

/** "Tomek's on the potatoes, he's here till three": of the same hands. */
function sameHands(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const { meaning } = one;
    const at =
      meaning.intent === 'add-hands' && meaning.who !== undefined
        ? out.findIndex(
            (other) =>
              other.meaning.intent === 'add-hands' &&
              other.meaning.who === meaning.who &&
              (other.meaning.does === undefined ||
                meaning.does === undefined ||
                other.meaning.does === meaning.does),
          )
        : -1;
    if (at < 0) out.push(one);
    else out[at] = { ...out[at]!, meaning: { ...out[at]!.meaning, ...meaning } as Meaning };
  }
  return out;
}

/** "Jo can do the gravy" is of Jo: the dish is on the menu already, or is not put there by this. */
function handsNotDishes(heard: readonly Placed[]): Placed[] {
  return heard.filter(
    (one) =>
      !/^(add-dish|report-started|report-done)$/.test(one.meaning.intent) ||
      !heard.some(
        (other) =>
          other.meaning.intent === 'add-hands' && other.clause && other.clause === one.clause,
      ),
  );
}

/** "one of the lads is off meat, he's veggie" notes one thing; "my aunt is pregnant, she can't have nuts" two of her. */
function notesOfPronouns(heard: readonly Placed[]): Placed[] {
  const out: Placed[] = [];
  for (const one of heard) {
    const { meaning } = one;
    const last = out.findLast((other) => other.meaning.intent === 'note-guest')?.meaning;
    const pronoun = meaning.intent === 'note-guest' && /^(he|she|they)?$/.test(meaning.who ?? '');
    if (!pronoun || last?.intent !== 'note-guest') out.push(one);
    else if (
      last.need !== meaning.need ||
      (last.value !== meaning.value && meaning.need !== 'diet')
    )
      out.push(last.who === undefined ? one : { ...one, meaning: { ...meaning, who: last.who } });
  }
  return out;
}

/** "Fern's vegan, she'll just have the veg": what one guest eats is on the menu already. */
const ofOneGuest = (heard: readonly Placed[]): Placed[] =>
  heard.filter(
    (one, at) =>
      one.meaning.intent !== 'add-dish' ||
      !/^ (so |and )?(he|she) (will |can |could )?(just |only )?(have|has|eat|eats|gets?|take|takes) /.test(
        ` ${lineOf(one.clause?.tokens ?? [])}`,
      ) ||
      !heard.slice(0, at).some(({ meaning }) => meaning.intent === 'note-guest'),
  );

const askedOnce = /^ask-(safety|status|next|options|plan)$/;

/** What is said twice in one text is heard once; of two wishes for how done it is, the later. */
function oncePerMeaning(heard: readonly Placed[]): Placed[] {
  const seen = new Set<string>();
  const out: Placed[] = [];
  for (const one of heard) {
    const key = JSON.stringify(one.meaning);
    if (seen.has(key)) continue;
    seen.add(key);
    const last = out.at(-1);
    // "been out since noon, is it still safe": one question, in two clauses.
    const asked = out.findIndex(
      (other) => other.meaning.intent === one.meaning.intent && askedOnce.test(one.meaning.intent),
    );
    if (asked >= 0) {
      const first = out[asked]!;
      out[asked] = { ...first, meaning: { ...one.meaning, ...first.meaning } as Meaning };
      continue;
    }
    if (
      one.meaning.intent === 'set-doneness' &&
      last?.meaning.intent === 'set-doneness' &&
      last.clause === one.clause
    )
      continue;
    if (
      one.meaning.intent === 'set-serving-time' &&
      last?.meaning.intent === 'set-serving-time' &&
      last.meaning.of === one.meaning.of
    ) {
      // "half eight, nine at the outside", "8pm, the babysitter leaves at 10": the first is the table's.
      if (
        / (game|match|film|movie|show|kickoff|race|outside|latest|most|leaves?|leaving|bus|train|kids|film|bed) /.test(
          lineIn(one),
        )
      )
        continue;
      out[out.length - 1] = { ...one, meaning: { ...last.meaning, ...one.meaning } };
      continue;
    }
    out.push(one);
  }
  return out;
}

/** What a served core may be, in either scale. */
const servedCore = { F: [115, 170], C: [45, 77] } as const;

/** "Pink please, about 58": a number called after the word is the word's, whatever was asked for. */
function numberOfDoneness(heard: readonly Placed[], { units }: ReadContext): Placed[] {
  const [low, high] = servedCore[units.temperature];
  const isCore = (count: number): boolean => count >= low && count <= high;
  return heard.flatMap((one, index) => {
    const { meaning } = one;
    const bare = (of: Placed): boolean => / <n\d+> (degrees )?$/.test(lineIn(of));
    const next = heard[index + 1];
    const last = heard[index - 1];
    if (meaning.intent === 'set-doneness' && meaning.doneness !== undefined && next) {
      const { meaning: after } = next;
      if (after.intent === 'set-guests' && isCore(after.count ?? 0) && bare(next))
        return [{ ...one, meaning: { intent: 'set-doneness', temperature: after.count! } }];
    }
    const taken =
      meaning.intent === 'set-guests' &&
      last?.meaning.intent === 'set-doneness' &&
      isCore(meaning.count ?? 0) &&
      bare(one);
    return taken ? [] : [one];
  });
}

/** "scratch that, 97 not 79" and "b? no, option two" say what counts; what was taken back is in it. */
function withoutTakenBack(heard: readonly Placed[]): Placed[] {
  const has = (intent: string): boolean => heard.some((one) => one.meaning.intent === intent);
  return heard.filter(
    ({ meaning }) =>
      !(meaning.intent === 'undo' && has('correct')) &&
      !(meaning.intent === 'deny' && has('choose')),
  );
}

/** "Is it all right for my granny, pink": one question, and safety is what it asks. */
function safetyFirst(heard: readonly Placed[]): Placed[] {
  const safety = heard.some((one) => one.meaning.intent === 'ask-safety');
  return heard.filter((one) => !(safety && one.meaning.intent === 'ask-status'));
}

const ruin =
  /^(wreck\w*|ruin\w*|overcook\w*|overdone|spoil\w*|mess(ed)?|blown?|burn(t|ed)|screwed|killed|destroyed|lost|salvageable|sav(e|ed)|rescue)$/;

/** Fear for the roast in a question of how it stands: that is what is to be answered. */
const fears = (heard: readonly Placed[]): Placed[] =>
  heard.map((one) => {
    const afraid = [...one.tokens, ...(one.clause?.tokens ?? [])].some((token) =>
      ruin.test(token.word),
    );
    return one.meaning.intent === 'ask-status' && afraid
      ? { ...one, meaning: { ...one.meaning, about: 'ruined' as const } }
      : one;
  });

/** While paused only what is surely meant for the helper counts: a bare yes or okay means go on. */
function pausedFirst(heard: readonly Placed[], context: ReadContext): Placed[] {
  if (!context.paused) return [...heard];
  return heard.map((one) =>
    /^(affirm|acknowledge)$/.test(one.meaning.intent) && heard.length === 1
      ? { ...one, meaning: { intent: 'resume' as const } }
      : one,
  );
}

export const refiners: readonly Refiner[] = [
  takenBack,
  correctedAgain,
  countedAmong,
  asBought,
  skipsWhatIsNotDone,
  wholeSetup,
  mergeParts,
  roastSetRight,
  askedForHeads,
  mergeOven,
  numberOfDoneness,
  behindBy,
  happenedOnce,
  unitOfReading,
  lookAndReading,
  placeOfReading,
  readingOfOven,
  thermometerOverDial,
  fanThenOven,
  fanOfOven,
  whichOvenInText,
  askedForLack,
  oneTrouble,
  powerMinutes,
  unitsOnce,
  arrivedOnce,
  besideSubstance,
  lastWish,
  headsOnce,
  changeOnce,
  callsAreForLater,
  withoutEchoes,
  namedDishes,
  asWished,
  lastWish,
  ofDishBefore,
  forTheDish,
  whatIsNotDone,
  cutInText,
  outAndResting,
  sameHands,
  handsNotDishes,
  fears,
  pausedFirst,
  notesOfPronouns,
  ofOneGuest,
  safetyFirst,
  withoutTakenBack,
  withoutManners,
  oncePerMeaning,
  coreAsItIs,
];
