/** Frames of temperatures: what is to be called, what the oven does, what the roast reads. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { momentOf } from '../recognisers/moment-of.ts';
import { oven, reading } from '../recognisers/temperatures.ts';
import { dishNamed } from './dinner.ts';
import {
  after,
  before,
  callWords,
  coreWords,
  holds,
  mealWords,
  otherUnits,
  ovenWords,
} from './words.ts';

const report = ['statement'] as const;

/** The first mark that can be a temperature, with its number in Fahrenheit. */
function temperatureMark(match: Match): { mark: string; fahrenheit: number } | undefined {
  for (const mark of match.marks('tn')) {
    if (otherUnits.test(after(match, mark))) continue;
    const quantity = match.quantityOfMark(mark);
    if (quantity?.kind !== 'temperature' && quantity?.kind !== 'number') continue;
    const unit =
      (quantity.kind === 'temperature' ? quantity.unit : undefined) ??
      match.context.units.temperature;
    return { mark, fahrenheit: unit === 'F' ? quantity.value : quantity.value * 1.8 + 32 };
  }
  return undefined;
}

/** The same match with the mark as its slot, for what makes reports of phrases. */
const withTemperature = (match: Match, mark: string): Match =>
  match.withGroups({ temperature: `${mark} ` });

export const watchFrame: Frame = {
  name: 'watch',
  moods: ['statement', 'request', 'intention', 'story'],
  build(match) {
    const found = temperatureMark(match);
    if (!found || !holds(match, callWords) || found.fahrenheit < 40) return undefined;
    if (
      !holds(
        match,
        / (when|once|if|as soon as|at|till|comes to|reaches|gets to|hits|it is|moment|minute|second|reaching|before|goes) /,
      )
    )
      return undefined;
    if (match.marks('dc').length > 0) return undefined;
    return { intent: 'watch', ...withTemperature(match, found.mark).temperature('temperature') };
  },
};

export const ovenFrame: Frame = {
  name: 'oven',
  moods: ['statement', 'request'],
  build(match) {
    // "lit the oven, 450": what follows is the oven's.
    const lit = match.before.at(-1)?.intent === 'report-oven';
    const named = holds(match, ovenWords);
    const found = temperatureMark(match);
    // "top's at 225 and the bottom is 400": the other oven.
    const side =
      / (top|bottom|upper|lower|big|small|main|second|other|left|right) (one |oven )?(is |at |on |to )+<[nt]/.exec(
        ` ${match.line}`,
      )?.[1];
    if (found && side && lit && found.fahrenheit >= 160 && found.fahrenheit <= 600)
      return { ...oven(withTemperature(match, found.mark))!, which: side } as Meaning;
    const bias = / (runs|running|off|out|always|under|over|hotter|cooler) /;
    if (
      found &&
      holds(match, bias) &&
      holds(
        match,
        / (hot|cold|hotter|cooler|colder|under|over|cool|low|high|warm|slow|fast|above|below) /,
      )
    ) {
      const size = Math.abs(withTemperature(match, found.mark).number('temperature'));
      if ((named || / (it|mine|she|always) /.test(` ${match.line}`)) && size < 100)
        return {
          intent: 'report-oven',
          bias: holds(match, / (cold|cooler|colder|under|cool|low|slow|below) /) ? -size : size,
        };
    }
    if (
      holds(
        match,
        / (door|roast|meat|beef|core|middle|probe|potatoes|beans|in the oven|out of) /,
      ) &&
      !found
    )
      return undefined;
    if (found && found.fahrenheit >= 160 && found.fahrenheit <= 600) {
      if (
        holds(
          match,
          / (set|turn|turned|bump|bumped|crank|cranked|whack|whacked|dial|dialled|dropped|knocked|lit|preheat|preheating|heating|down|up|put) /,
        ) ||
        named ||
        (lit && /^<[nt]\d+> $/.test(match.line))
      )
        if (
          !holds(match, coreWords) ||
          holds(match, / (oven|cooker|stove|dial) /) ||
          found.fahrenheit > 212
        )
          if (!holds(match, / (people|guests|middle|core|music|volume) /))
            return oven(withTemperature(match, found.mark));
    }
    if (!named || found) return undefined;
    const gas = match.marks('g')[0];
    const quantity = gas ? match.quantityOfMark(gas) : undefined;
    if (quantity?.kind === 'gas-mark')
      return { intent: 'report-oven', gasMark: quantity.value, ...momentOf(match) };
    if (!holds(match, / (oven|cooker|stove|range|aga) /)) return undefined;
    // The thermostat's lamp goes off when it is hot.
    if (holds(match, / light /) && holds(match, / (off|out|gone) /))
      return { intent: 'report-oven', state: 'preheated' };
    if (holds(match, / (off|killed|kill) /) && !holds(match, / off by /))
      return { intent: 'report-oven', state: 'off', ...momentOf(match) };
    if (dishNamed(match.line, match)) return undefined;
    if (
      holds(
        match,
        / (preheated|beeped|pinged|hot|warm|up to|ready|warmed|came up|reached|heated|finished heating|done heating) /,
      )
    )
      return { intent: 'report-oven', state: 'preheated' };
    if (
      holds(match, / (on|lit|heating|preheating|warming|started|fired) /) &&
      !holds(match, / (fire|light) /)
    )
      return { intent: 'report-oven', state: 'on', ...momentOf(match) };
    return undefined;
  },
};

const lookWords =
  / (check|checked|checking|looked|look|reading|readings|probe|probed|thermometer|tested|temperature|poked|stuck|stabbed|measured|took) /;
const standing =
  / (at|on|up to|hit|hits|hitting|reached|marks|marking|does|doing|sits|sitting|crept|climbed|gone up|got|get|getting|makes|holds|holding|still|now|touching|over|under|around|past|above|below|see|seeing|is|are|was|climbing|have|has) /;

export const readingFrame: Frame = {
  name: 'reading',
  moods: report,
  build(match) {
    const found = temperatureMark(match);
    if (!found || holds(match, / between <[nt]/) || holds(match, mealWords)) return undefined;
    if (found.fahrenheit < 33 || found.fahrenheit > 212) return undefined;
    if (
      holds(
        match,
        / (oven|cooker|pounds|weigh|weighs|fridge|guests|people|gas|timer|number|house|road|page|channel|bus|flight|outside|fever) /,
      )
    )
      return undefined;
    if (
      /^(pull|take|cook|aim|go|bring|want|i want|we want|make|set|turn|stop|get it) /.test(
        match.line,
      )
    )
      return undefined;
    if (/ between </.test(` ${match.whole}`)) return undefined;
    const one = withTemperature(match, found.mark);
    const likely = plausible(match, found.fahrenheit);
    const roastIn = /^(sear|low-roast|rest|hold|carve)$/.test(match.context.stage ?? '');
    if (/^<[nt]\d+> $/.test(match.line))
      return likely && (roastIn || lookWords.test(` ${match.whole}`)) ? reading(one) : undefined;
    const says = / (says|shows|reads|read|reading) /;
    const led = /^\S+ (\S+ )?<[nt]\d+> /;
    if (
      holds(match, coreWords) &&
      (holds(match, standing) || led.test(match.line) || holds(match, says) || likely)
    )
      return reading(one);
    const words = match.line.split(' ').length;
    if (
      pronoun.test(match.line) &&
      holds(match, standing) &&
      likely &&
      words <= 9 &&
      !/^(he|she|it|that|this) (is|was) <n\d+> /.test(match.line)
    )
      return reading(one);
    // While the roast is in, a lone number in a few words of no other matter is what it reads.
    const lone = match.marks('nt').length === 1 && match.marks('cdwgy').length === 0;
    const goesOn = match.before.at(-1)?.intent === 'report-reading';
    if (goesOn && lone && likely && words <= 6 && !holds(match, otherMatters)) return reading(one);
    return roastIn && likely && lone && words <= 9 && !holds(match, otherMatters)
      ? reading(one)
      : undefined;
  },
};

const pronoun =
  /^(it|she|he|we|i|still|now|this|that|inside|all|only|says|shows|reads|getting|and|at|up|first|second|left|right|one|the|my|our) /;
/** What a number is of when it is not of the core. */
const otherMatters =
  / (people|guests|us|them|they|everyone|dinner|supper|lunch|eat|serve|serving|pull|carve|minutes|hours|pounds|kilos|option|number|choice|step|plan|timer|alarm|oven|late|early|more|less|fewer|extra|another|bones?|kids|he|his|her|you|your|who|year|years|old|page|half|time|please|add|potatoes|beans|make|made|want|wants|need|needs|take|go|aim|target|volume|channel|nil|score|won|lost|paid|cost|quid|dollars|written|wrote|paper|recipe|goes|comes|out) /;

/** Whether a number nobody gave a unit can be a core's: colder or hotter, and it may be anything. */
const plausible = (match: Match, fahrenheit: number): boolean =>
  fahrenheit >= (match.context.units.temperature === 'F' ? 40 : 50) &&
  fahrenheit <= 180 &&
  before(match, '<') !== '';
