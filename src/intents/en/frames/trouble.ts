/** The frame of trouble: what has gone wrong, by the thing and the word of its going wrong. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { momentOf } from '../recognisers/moment-of.ts';
import { type TroubleKind, troubleKinds } from '../trouble-kinds.ts';
import { dishNamed } from './dinner.ts';

/** These befall no dish, whichever is named beside them. */
const ofTheKitchen = /^(power|oven|probe|door|smoking|overwhelmed)/;

/** The trouble of a clause, with the dish that has it. */
export function troubleIn(match: Match): Meaning | undefined {
  const line = ` ${match.line}`;
  const dish = dishNamed(match.line, match);
  const kind = troubleKinds.find((one) => fits(one, line, dish));
  if (!kind) return undefined;
  return {
    intent: 'report-trouble',
    trouble: kind.trouble,
    ...(dish && !ofTheKitchen.test(kind.trouble) ? { step: dish } : {}),
    ...(/^power-/.test(kind.trouble) ? momentOf(match) : {}),
  };
}

function fits(
  { words, things, strict, not = [], wordsHigh }: TroubleKind,
  line: string,
  dish: string | undefined,
): boolean {
  return (
    words.every((one) => one.test(line)) &&
    (things === undefined || things.test(line) || (!strict && dish !== undefined)) &&
    !not.some((one) => one.test(line)) &&
    (wordsHigh === undefined || line.trim().split(' ').length <= wordsHigh)
  );
}

export const troubleFrame: Frame = {
  name: 'trouble',
  moods: ['statement', 'negative'],
  build: (match) =>
    match.marks('nt').length > 0 || elsewhere.test(` ${match.line}`) ? undefined : troubleIn(match),
};

const elsewhere =
  / (last|yesterday|their|his|her|neighbours|next door|work|school|office|counties|county|news|city|town|street|song|film|movie|phone|car|laptop|tv|washing|battery pack|candle|dishwasher|kettle|boiler|year|years|when i) /;
