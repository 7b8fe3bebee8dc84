/**
 * What is said beside a number in a breath of its own: "47, quick thermometer, thickest part", "near the
 * edge is more, 58", "the oven's thermometer says 120 though the dial's on 140".
 */
import type { ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Placed } from '../placed.ts';
import { quickIn, whereIn } from './recognisers/temperatures.ts';

const placeWords =
  /^(?:(?:in|at|on|by|near|with|the|a|my|of|it|is|and|to|is|more|less|higher|lower|hotter|colder|deep|right|quick|instant-read|instant|leave-in|wired|wireless|hand|digital|thermometer|probe|stick|one|thick|thickest|thicker|thin|thinnest|part|bit|side|end|spot|middle|centre|center|core|edge|bone|outside|border|surface|top|roast|joint|meat|leg|piece) )+$/;

/** Where it was measured and with what, told before or after the number. */
export function placeOfReading(heard: readonly Placed[], _: ReadContext, whole: string): Placed[] {
  if (!heard.some(({ meaning }) => meaning.intent === 'report-reading')) return [...heard];
  const breaths = whole.split(/(?:[,.!?|]|but|and) /).map((breath) => breath.trimStart());
  const leads = placeWords.test(breaths[0] ?? '');
  return heard.map((one) => {
    const { meaning } = one;
    if (meaning.intent !== 'report-reading' || meaning.where !== undefined) return one;
    const mark = one.tokens.find(({ word }) => /^<[nt]\d+>$/.test(word))?.word;
    const at = breaths.findIndex((breath) => mark !== undefined && breath.includes(mark));
    if (at < 0) return one;
    const sides = leads ? [at - 1] : [at + 1, at - 1];
    const first = sides.find((side) => placeWords.test(breaths[side] ?? ''));
    if (first === undefined) return one;
    const next = breaths[first + 1] ?? '';
    const beside = `${breaths[first]!}${first > at && placeWords.test(next) ? next : ''}`;
    const where = whereIn(beside);
    const quick = meaning.thermometer ?? quickIn(beside);
    return {
      ...one,
      meaning: {
        ...meaning,
        ...(where === undefined ? {} : { where }),
        ...(quick === undefined ? {} : { thermometer: quick }),
      },
    };
  });
}

/** Hotter than this no core is that was not spoken of. */
export const coreHigh = { F: 180, C: 85 } as const;
const ofOven = / (?:oven|cooker|stove|dial|heat|door) /g;
export const ofRoast =
  / (?:roast|meat|beef|joint|lamb|pork|ribs?|core|middle|cent(?:re|er)|probe|thermometer|instant-read|leave-in|inside|internal|bone) /g;
const lastOf = (words: RegExp, line: string): number =>
  [...line.matchAll(words)].at(-1)?.index ?? -1;

/** "The oven lost heat, it's at 190": what shows so much is what was spoken of last. */
export function readingOfOven(
  heard: readonly Placed[],
  { units }: ReadContext,
  whole: string,
): Placed[] {
  return heard.map((one) => {
    const { meaning } = one;
    if (meaning.intent !== 'report-reading' || meaning.where !== undefined) return one;
    const mark = one.tokens.find(({ word }) => /^<[nt]\d+>$/.test(word))?.word;
    const line = ` ${whole}`;
    const before = line.slice(0, Math.max(0, line.indexOf(` ${mark} `)) + 1);
    const unit = meaning.unit ?? units.temperature;
    if (lastOf(ofOven, before) <= lastOf(ofRoast, before)) return one;
    if (meaning.temperature < coreHigh[unit]) return one;
    const { thermometer: _, ...rest } = meaning;
    return { ...one, meaning: { ...rest, intent: 'report-oven' } };
  });
}

/** Where the thermometer and the dial of an oven differ, it is as hot as its thermometer says. */
export function thermometerOverDial(heard: readonly Placed[]): Placed[] {
  const lineIn = (one: Placed): string => ` ${lineOf(one.clause?.tokens ?? one.tokens)}`;
  const isOven = (one: Placed): boolean =>
    one.meaning.intent === 'report-oven' && one.meaning.temperature !== undefined;
  return heard.some((one) => isOven(one) && / thermometer /.test(lineIn(one)))
    ? heard.filter((one) => !isOven(one) || !/ (dial|display|knob) /.test(lineIn(one)))
    : [...heard];
}
