/**
 * A day planned from a written dinner alone, without a talk: the facts that somebody would have told,
 * folded and looked at from one instant.
 */
import type { Instant } from '../base/time.ts';
import { type Card, comesWith } from '../kitchen/card.ts';
import { serveCelsiusOf } from '../kitchen/doneness.ts';
import { type Fact, factVersion, type Method, type NewFact } from '../kitchen/facts.ts';
import type { Doneness } from '../kitchen/heard.ts';
import type { View } from '../kitchen/view.ts';
import { type Outlook, outlookOf } from './outlook.ts';
import type { Compute, Opening } from './ports.ts';
import { viewOf } from './view.ts';

export interface WrittenDinner {
  opening: Opening;
  now: Instant;
  servingAt: Instant;
  guests: number;
  roast: {
    cut: string;
    kilograms?: number | undefined;
    bones?: number | undefined;
    boneless?: boolean | undefined;
    prepared?: 'whole' | 'tied-back' | 'rolled' | 'stuffed' | 'tenderised' | undefined;
    frozen?: boolean | undefined;
    startCelsius?: number | undefined;
  };
  doneness?: Doneness | undefined;
  serveCelsius?: number | undefined;
  method?: Method | undefined;
  /** Dish ids; absent: the usual ones. */
  dishes?: readonly string[] | undefined;
  helpers?: readonly string[] | undefined;
  /** The dinner's other clocks. */
  guestsArriveAt?: Instant | undefined;
  firstCourseAt?: Instant | undefined;
  lacks?: readonly string[] | undefined;
  ovens?: number | undefined;
  rings?: number | undefined;
  carvers?: number | undefined;
  /** Dishes, steps and tools whose things are not in the house yet. */
  comes?: readonly { thing: string; comesAt: Instant }[] | undefined;
}

/** A dish or a cut that no card describes. */
export class UnknownCard extends Error {
  readonly card: string;
  constructor(card: string) {
    super(`no card for "${card}"`);
    this.name = 'UnknownCard';
    this.card = card;
  }
}

/** The facts of a written dinner, as if told at `now`. */
export function factsOfWritten(dinner: WrittenDinner, cards: readonly Card[]): Fact[] {
  const cardOf = (id: string): Card => {
    const card = cards.find((one) => one.id === id);
    if (!card) throw new UnknownCard(id);
    return card;
  };
  const roast = cardOf(dinner.roast.cut);
  const dishes = dinner.dishes
    ? dinner.dishes.map(cardOf)
    : cards.filter((card) => card.card !== 'roast' && comesWith(card, roast.id));
  const serveCelsius =
    dinner.serveCelsius ??
    serveCelsiusOf(
      dinner.doneness ?? (roast.card === 'roast' && !roast.pink ? 'medium-well' : 'medium-rare'),
    );
  const { opening } = dinner;
  const told: NewFact[] = [
    {
      type: 'dinner-opened',
      timeZone: opening.timeZone,
      temperatureUnit: opening.units.temperature,
      weightUnit: opening.units.weight,
      seed: opening.seed,
      language: opening.language,
      kitchen: opening.kitchen,
    },
    { type: 'card-taken', card: roast },
    ...dishes.map((card): NewFact => ({ type: 'card-taken', card })),
    ...(dinner.dishes ?? []).map((dish): NewFact => ({ type: 'dish-added', dish })),
    { type: 'roast-described', ...dinner.roast },
    ...(dinner.method ? [{ type: 'method-set', method: dinner.method } as NewFact] : []),
    { type: 'serving-time-set', servingAt: dinner.servingAt, because: 'said' },
    { type: 'guests-counted', count: dinner.guests },
    { type: 'doneness-set', doneness: dinner.doneness, serveCelsius },
    ...(dinner.helpers ?? []).map((who): NewFact => ({ type: 'hands-added', who })),
    ...clocksTold(dinner),
    ...setupTold(dinner),
    ...(dinner.comes ?? []).map((one): NewFact => ({ type: 'thing-comes', ...one })),
    ...(dinner.lacks ?? []).map((thing): NewFact => ({ type: 'thing-lacked', thing })),
  ];
  return told.map(
    (fact, position): Fact =>
      ({ ...fact, dinner: 'written', position, at: dinner.now, v: factVersion }) as Fact,
  );
}

const clocksTold = ({ guestsArriveAt, firstCourseAt }: WrittenDinner): NewFact[] =>
  (
    [
      ['guests-arrive', guestsArriveAt],
      ['first-course', firstCourseAt],
    ] as const
  ).flatMap(([clock, clockAt]): NewFact[] =>
    clockAt === undefined ? [] : [{ type: 'clock-set', clock, clockAt }],
  );

const setupTold = ({ ovens, rings, carvers }: WrittenDinner): NewFact[] =>
  ovens === undefined && rings === undefined && carvers === undefined
    ? []
    : [{ type: 'setup-reported', ovens, rings, carvers }];

export async function dayOf(
  dinner: WrittenDinner,
  cards: readonly Card[],
  compute: Compute,
): Promise<{ outlook: Outlook; view: View }> {
  const facts = factsOfWritten(dinner, cards);
  const outlook = await outlookOf('written', facts, dinner.now, compute);
  return { outlook, view: viewOf(outlook, facts) };
}
