/**
 * A dinner as its facts tell it: the fold of the facts that still count. Nothing here is computed
 * from a clock, a plan or a forecast.
 */

import { assertNever } from '../base/assert.ts';
import { type Instant, minutesBetween } from '../base/time.ts';
import type { TemperatureUnit, WeightUnit } from '../base/units.ts';
import { type Card, comesWith, type DishCard, type RoastCard, stepIdOf } from './card.ts';
import type { Course, Fact, FactOf, Method, Option, Question } from './facts.ts';
import { Fold } from './fold.ts';
import { type KitchenBelief, usualKitchen } from './forecast.ts';
import type { DinnerClock, Doneness, GuestNeed } from './heard.ts';

/** What is known of one step. Instants in milliseconds. */
export interface StepRecord {
  startedAt?: number;
  doneAt?: number;
  skipped?: true;
  notDoneAt?: number;
  /** It was called and never begun: it is to be called anew. */
  notBegunAt?: number;
  /** How many minutes more it takes, as told: from then, or once it is begun anew. */
  moreMinutes?: number;
  /** The oven it stands in, where that was said. */
  oven?: number;
  /** Taken for granted since later reports imply it, or a call went unanswered. */
  presumed?: true;
}

export interface Reading {
  position: number;
  celsius: number;
  happenedAt: number;
  toldAt: number;
  where?: string | undefined;
  thermometer?: 'leave-in' | 'quick' | undefined;
}

export interface CallRecord {
  kind: string;
  step?: string | undefined;
  times: number;
  firstAt: number;
  lastAt: number;
  acknowledged: boolean;
}

export interface Timer {
  id: string;
  label?: string | undefined;
  dueAt: number;
}

export interface GuestNote {
  who?: string | undefined;
  need: GuestNeed;
  value?: string | undefined;
}

/** Another pair of hands, and when they are there. */
export interface Helper {
  who: string;
  /** Steps and dishes that are theirs. */
  does: readonly string[];
  comesAt?: Instant | undefined;
  leavesAt?: Instant | undefined;
}

export interface Dinner {
  id: string;
  openedAt: number;
  /** When the roast, the hour, the guests and the doneness were all known for the first time. */
  completeAt?: number | undefined;
  /** The latest `at` among its facts; a dinner's time never falls behind it. */
  lastAt: number;
  timeZone: string;
  language: string;
  units: { temperature: TemperatureUnit; weight: WeightUnit };
  seed: number;
  kitchen?: KitchenBelief | undefined;
  /** Something of the oven or the thermometer was told, or told to be forgotten. */
  kitchenTold?: true;
  cards: readonly Card[];
  roast: {
    cut?: string;
    kilograms?: number;
    bones?: number;
    boneless?: boolean;
    prepared?: string;
    frozen?: boolean;
    /** When it was last said to be frozen, or not to be. */
    frozenToldAt?: number;
    startCelsius?: number;
  };
  method: Method;
  servingAt?: number;
  /** The serving time as first wanted, before any shift. */
  servingFirstAt?: number;
  guests?: number;
  guestsArrived?: 'arrived' | 'partly-arrived' | 'seated';
  target?: { doneness?: Doneness | undefined; serveCelsius: number };
  dropped: readonly string[];
  added: readonly string[];
  lacks: readonly string[];
  /** Struck off the shopping list. */
  had: readonly string[];
  publicTable: boolean;
  notes: readonly GuestNote[];
  setup: {
    rack?: boolean;
    tent?: boolean;
    probe?: boolean;
    fan?: boolean;
    ovens?: number;
    rings?: number;
    carvers?: number;
  };
  helpers: readonly Helper[];
  /** How many times as long this cook takes: for whatever takes hands, and for single steps or dishes. */
  pace: number;
  paceOf: ReadonlyMap<string, number>;
  /** The dinner's other clocks: guests at the door, a first course. */
  clocks: ReadonlyMap<DinnerClock, Instant>;
  /** Dishes, steps and tools whose things are not in the house yet, and when they come. */
  coming: ReadonlyMap<string, Instant>;
  awayUntil?: number;
  readings: readonly Reading[];
  /** What the oven was set to, in order of when it happened; 0 is off. */
  oven: readonly { at: number; celsius: number; presumed: boolean; ownChoice: boolean }[];
  ovenHotAt?: number | undefined;
  ovenBiasKelvin?: number;
  /** What the cook's thermometer reads over the truth, by the ice test. */
  thermometerOffsetKelvin?: number;
  steps: ReadonlyMap<string, StepRecord>;
  troubles: readonly FactOf<'trouble-told'>[];
  emergencies: readonly FactOf<'emergency-told'>[];
  /** The emergency that still keeps the cook away: until somebody reports from the stove again. */
  emergency?: FactOf<'emergency-told'> | undefined;
  question?: Question | undefined;
  /** The last settled question, so that one is never asked twice. */
  settled: readonly { kind: string; how: string }[];
  options?: readonly Option[] | undefined;
  course?: Course | undefined;
  timers: readonly Timer[];
  watches: readonly { celsius: number; position: number }[];
  calls: ReadonlyMap<string, CallRecord>;
  announced: readonly FactOf<'announced'>[];
  delivered: ReadonlySet<string>;
  paused: boolean;
  quiet: boolean;
  told?: FactOf<'plan-told'> | undefined;
  /** When the cook was told of a pull well ahead though one had been called already. */
  pullPutOffAt: readonly Instant[];
  cautioned: ReadonlySet<string>;
  lastReply?: FactOf<'replied'> | undefined;
  /** Turns answered, by their unique key. */
  answered: ReadonlyMap<string, FactOf<'replied'>>;
  unclearInARow: number;
}

interface Mutable {
  dinner: Dinner;
  steps: Map<string, StepRecord>;
  calls: Map<string, CallRecord>;
  delivered: Set<string>;
  cautioned: Set<string>;
  answered: Map<string, FactOf<'replied'>>;
}

const unopened = (at: number): Dinner => ({
  id: '',
  openedAt: at,
  lastAt: at,
  timeZone: 'UTC',
  language: 'en',
  units: { temperature: 'F', weight: 'lb' },
  seed: 1,
  cards: [],
  roast: {},
  method: 'sear-first',
  dropped: [],
  added: [],
  lacks: [],
  had: [],
  publicTable: false,
  notes: [],
  setup: {},
  helpers: [],
  pace: 1,
  paceOf: new Map(),
  clocks: new Map(),
  coming: new Map(),
  readings: [],
  oven: [],
  steps: new Map(),
  troubles: [],
  emergencies: [],
  settled: [],
  timers: [],
  watches: [],
  pullPutOffAt: [],
  calls: new Map(),
  announced: [],
  delivered: new Set(),
  paused: false,
  quiet: false,
  cautioned: new Set(),
  answered: new Map(),
  unclearInARow: 0,
});

const fold = new Fold<Mutable>({
  begin: (facts) => ({
    dinner: unopened(facts[0]?.at ?? 0),
    steps: new Map(),
    calls: new Map(),
    delivered: new Set(),
    cautioned: new Set(),
    answered: new Map(),
  }),
  copy: ({ dinner, steps, calls, delivered, cautioned, answered }) => ({
    dinner,
    steps: new Map(steps),
    calls: new Map(calls),
    delivered: new Set(delivered),
    cautioned: new Set(cautioned),
    answered: new Map(answered),
  }),
  take: (state, fact) => {
    const { emergency } = state.dinner;
    if (emergency && (isReport(fact) || asksForWork(fact, emergency.at)))
      state.dinner = { ...state.dinner, emergency: undefined };
    state.dinner = evolve(state, fact);
    if (state.dinner.completeAt === undefined && missingOf(state.dinner).length === 0)
      state.dinner = { ...state.dinner, completeAt: fact.at };
  },
});

/** Folds facts, voided ones left out, into the dinner they tell of. */
export function dinnerOf(id: string, facts: readonly Fact[]): Dinner {
  const { dinner, ...told } = fold.over(facts);
  const lastAt = facts.reduce((latest, fact) => Math.max(latest, fact.at), dinner.lastAt);
  return { ...dinner, id, lastAt, ...told };
}

/** Somebody stands at the stove and tells of it; what is only taken for granted is no report. */
const isReport = (fact: Fact): boolean => {
  switch (fact.type) {
    case 'step-started':
    case 'step-done':
    case 'oven-stood':
      return fact.presumed !== true;
    case 'reading-taken':
    case 'step-not-done':
    case 'step-skipped':
      return true;
    default:
      return false;
  }
};

/** So soon after an emergency "what now" may still be about the burn. */
const shockMinutes = 5;

/** A pull told so far ahead is not the one that was called. */
const wellAheadMinutes = 5;

/** Whoever asks for the next step, and not from the next room, has come back to the work. */
const asksForWork = (fact: Fact, emergencyAt: Instant): boolean =>
  fact.type === 'words-heard' &&
  fact.source !== 'earshot' &&
  minutesBetween(emergencyAt, fact.at) >= shockMinutes &&
  fact.heard.some((one) => one.intent === 'ask-next' || one.intent === 'ask-how');

const afterPull = ['rest', 'hold', 'carve'];

/** A guest has one doneness and one hour; a second one told of the same guest replaces the first. */
function notedWith(notes: readonly GuestNote[], fact: FactOf<'guest-noted'>): GuestNote[] {
  const { who, need, value } = fact;
  const single = need === 'doneness' || need === 'eats-at' || need === 'comes-later';
  const kept = notes.filter(
    (note) =>
      note.who !== who || note.need !== need || !(single || note.value === value || !note.value),
  );
  return [...kept, { who, need, value }];
}

/** What is told anew of the same hands counts beside what was told before; who had left has come back. */
function helpersWith(helpers: readonly Helper[], fact: FactOf<'hands-added'>): Helper[] {
  const { who, does, comesAt, leavesAt } = fact;
  const known = helpers.find((one) => one.who === who && (one.leavesAt ?? Infinity) > fact.at);
  const told: Helper = {
    ...known,
    who,
    does: [...(known?.does ?? []), ...(does === undefined ? [] : [does])],
    ...defined({ comesAt, leavesAt }),
  };
  return known
    ? helpers.map((one) => (one === known ? told : one))
    : [...helpers.filter((one) => one.who !== who), told];
}

const defined = <T extends object>(value: T): Partial<T> =>
  Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as Partial<T>;

/** The dinner without what was believed, or told, of its oven or its thermometer. */
function forgetful(dinner: Dinner, about: 'oven' | 'thermometer'): Dinner {
  const { ovenBiasKelvin, thermometerOffsetKelvin, ...rest } = dinner;
  const believed = dinner.kitchen ?? usualKitchen;
  return about === 'oven'
    ? {
        ...rest,
        ...(thermometerOffsetKelvin === undefined ? {} : { thermometerOffsetKelvin }),
        kitchen: { ...believed, ovenBiasKelvin: usualKitchen.ovenBiasKelvin },
        kitchenTold: true,
      }
    : {
        ...rest,
        ...(ovenBiasKelvin === undefined ? {} : { ovenBiasKelvin }),
        kitchen: { ...believed, thermometerOffsetKelvin: usualKitchen.thermometerOffsetKelvin },
        kitchenTold: true,
      };
}

function evolve(state: Mutable, fact: Fact): Dinner {
  const dinner = state.dinner;
  const set = (change: Partial<Dinner>): Dinner => ({ ...dinner, ...change });
  switch (fact.type) {
    case 'dinner-opened':
      return set({
        openedAt: fact.at,
        timeZone: fact.timeZone,
        language: fact.language,
        units: { temperature: fact.temperatureUnit, weight: fact.weightUnit },
        seed: fact.seed,
        kitchen: fact.kitchen,
      });
    case 'card-taken':
      return set({
        cards: [...dinner.cards.filter((card) => card.id !== fact.card.id), fact.card],
      });
    case 'words-heard': {
      const unclear = fact.heard.some((one) => one.intent === 'unclear');
      return set({ unclearInARow: unclear ? dinner.unclearInARow + 1 : 0 });
    }
    case 'roast-described': {
      const { cut, kilograms, bones, boneless, prepared, frozen, startCelsius } = fact;
      const told = defined({ cut, kilograms, bones, boneless, prepared, frozen, startCelsius });
      const frozenToldAt = frozen === undefined ? {} : { frozenToldAt: fact.at };
      return set({ roast: { ...dinner.roast, ...told, ...frozenToldAt } });
    }
    case 'method-set':
      return set({ method: fact.method });
    case 'serving-time-set':
      return set({
        servingAt: fact.servingAt,
        servingFirstAt: dinner.servingFirstAt ?? fact.servingAt,
        // Ways to another hour are ways no more.
        options: undefined,
      });
    case 'guests-counted':
      return set({ guests: fact.count });
    case 'guests-arrived':
      return set({ guestsArrived: fact.state });
    case 'guest-noted':
      return set({ notes: notedWith(dinner.notes, fact) });
    case 'guest-gone':
      return set({ notes: dinner.notes.filter((note) => note.who !== fact.who) });
    case 'doneness-set':
      return set({ target: { doneness: fact.doneness, serveCelsius: fact.serveCelsius } });
    case 'dish-added':
      return set({
        added: [...dinner.added.filter((dish) => dish !== fact.dish), fact.dish],
        dropped: dinner.dropped.filter((dish) => dish !== fact.dish),
      });
    case 'dish-dropped':
      return set({
        added: dinner.added.filter((dish) => dish !== fact.dish),
        dropped: [...dinner.dropped, fact.dish],
      });
    case 'units-set':
      return set({
        units: {
          temperature: fact.temperatureUnit ?? dinner.units.temperature,
          weight: fact.weightUnit ?? dinner.units.weight,
        },
      });
    case 'thing-lacked':
      return set({
        lacks: [...dinner.lacks, fact.thing],
        had: dinner.had.filter((one) => one !== fact.thing),
      });
    case 'thing-had':
      return set({
        had: [...dinner.had.filter((one) => one !== fact.thing), fact.thing],
        lacks: dinner.lacks.filter((one) => one !== fact.thing),
      });
    case 'public-fed':
      return set({ publicTable: true });
    case 'setup-reported': {
      const { rack, tent, probe, fan, ovens, rings, carvers } = fact;
      const told = defined({ rack, tent, probe, fan, ovens, rings, carvers });
      return set({ setup: { ...dinner.setup, ...told } });
    }
    case 'hands-added':
      return set({ helpers: helpersWith(dinner.helpers, fact) });
    case 'pace-told':
      return fact.step === undefined
        ? set({ pace: fact.factor })
        : set({ paceOf: new Map(dinner.paceOf).set(fact.step, fact.factor) });
    case 'clock-set': {
      const clocks = new Map(dinner.clocks);
      if (fact.clockAt === undefined) clocks.delete(fact.clock);
      else clocks.set(fact.clock, fact.clockAt);
      return set({ clocks });
    }
    case 'thing-comes':
      return set({ coming: new Map(dinner.coming).set(fact.thing, fact.comesAt) });
    case 'cook-left':
      return set({ awayUntil: fact.until });
    case 'reading-taken':
      return set({
        readings: [
          ...dinner.readings,
          {
            position: fact.position,
            celsius: fact.celsius,
            happenedAt: fact.happenedAt,
            toldAt: fact.at,
            where: fact.where,
            thermometer: fact.thermometer,
          },
        ].sort((a, b) => a.happenedAt - b.happenedAt || a.position - b.position),
      });
    case 'oven-stood': {
      const setting = {
        at: fact.happenedAt,
        celsius: fact.celsius,
        presumed: fact.presumed ?? false,
        ownChoice: fact.ownChoice ?? false,
      };
      // A presumption gives way to what was really said of the same time.
      const kept = dinner.oven.filter((one) => !(one.presumed && one.at >= setting.at));
      const oven = [...kept, setting].sort((a, b) => a.at - b.at);
      // A preheat counts as long as the oven is lit.
      return set({ oven, ...(setting.celsius > 0 ? {} : { ovenHotAt: undefined }) });
    }
    case 'oven-preheated':
      return set({ ovenHotAt: fact.happenedAt });
    case 'thermometer-checked':
      return set({ thermometerOffsetKelvin: fact.offsetKelvin, kitchenTold: true });
    case 'oven-bias-told':
      return set({ ovenBiasKelvin: fact.kelvin, kitchenTold: true });
    case 'kitchen-forgotten':
      return forgetful(dinner, fact.about);
    case 'step-started': {
      const record = state.steps.get(fact.step);
      const { presumed: _, doneAt: __, ...rest } = record ?? {};
      state.steps.set(fact.step, {
        ...(fact.presumed ? record : rest),
        startedAt: fact.happenedAt,
        ...(fact.presumed ? { presumed: true as const } : {}),
        ...(fact.oven === undefined ? {} : { oven: fact.oven }),
      });
      return dinner;
    }
    case 'step-done': {
      const {
        presumed: _,
        notDoneAt: __,
        moreMinutes: ___,
        ...rest
      } = state.steps.get(fact.step) ?? {};
      state.steps.set(fact.step, {
        ...rest,
        doneAt: fact.happenedAt,
        ...(fact.presumed ? { presumed: true as const } : {}),
      });
      return dinner;
    }
    case 'step-not-done': {
      const { doneAt: _, presumed: __, ...rest } = state.steps.get(fact.step) ?? {};
      const more = fact.minutes === undefined ? {} : { moreMinutes: fact.minutes };
      if (fact.begun === false) {
        state.steps.set(fact.step, { notBegunAt: fact.at, ...more });
        return dinner;
      }
      state.steps.set(fact.step, { ...rest, notDoneAt: fact.at, ...more });
      // A roast that is not out is neither resting nor being carved.
      if (fact.step === 'pull') for (const later of afterPull) state.steps.delete(later);
      return dinner;
    }
    case 'step-skipped':
      state.steps.set(fact.step, { ...state.steps.get(fact.step), skipped: true });
      return dinner;
    case 'trouble-told':
      return set({ troubles: [...dinner.troubles, fact] });
    case 'emergency-told':
      return set({ emergencies: [...dinner.emergencies, fact], emergency: fact });
    case 'timer-set':
      return set({
        timers: [...dinner.timers, { id: fact.id, label: fact.label, dueAt: fact.dueAt }],
      });
    case 'timer-cancelled':
      return set({ timers: dinner.timers.filter((timer) => timer.id !== fact.id) });
    case 'watch-set':
      return set({
        watches: [...dinner.watches, { celsius: fact.celsius, position: fact.position }],
      });
    case 'question-asked':
      return set({ question: fact.question });
    case 'question-settled':
      return dinner.question
        ? set({
            question: undefined,
            settled: [...dinner.settled, { kind: dinner.question.kind, how: fact.how }],
          })
        : dinner;
    case 'options-offered':
      return set({ options: fact.options });
    case 'option-chosen':
      return set({ options: undefined });
    case 'course-set':
      return set({ course: fact.course });
    case 'talk-paused':
      return set({ paused: true });
    case 'talk-resumed':
      return set({
        paused: false,
        quiet: false,
        emergency: undefined,
        ...(dinner.awayUntil === undefined
          ? {}
          : { awayUntil: Math.min(dinner.awayUntil, fact.at) }),
      });
    case 'quiet-wished':
      return set({ quiet: true });
    case 'replied':
      if (fact.key) state.answered.set(fact.key, fact);
      return set({ lastReply: fact });
    case 'announced':
      callMade(state, fact.call, fact.kind, fact.step, fact.at);
      return set({ announced: [...dinner.announced, fact] });
    case 'step-called':
      callMade(state, fact.call, 'step-due', fact.step, fact.at);
      return dinner;
    case 'acknowledged': {
      const call = state.calls.get(fact.call);
      if (call) state.calls.set(fact.call, { ...call, acknowledged: true });
      return dinner;
    }
    case 'delivered':
      state.delivered.add(`${fact.id}@${fact.sink}`);
      return dinner;
    case 'plan-told': {
      const pull = fact.starts.find((one) => one.step === 'pull');
      const ahead = pull !== undefined && minutesBetween(fact.at, pull.at) > wellAheadMinutes;
      const putOff = ahead && state.calls.has('pull:pull');
      return set({
        told: fact,
        ...(putOff ? { pullPutOffAt: [...dinner.pullPutOffAt, fact.at] } : {}),
      });
    }
    case 'cautioned':
      state.cautioned.add(fact.rule);
      return dinner;
    case 'clock-jumped':
    case 'positions-voided':
      return dinner;
    default:
      return assertNever(fact);
  }
}

function callMade(
  state: Mutable,
  call: string,
  kind: string,
  step: string | undefined,
  at: number,
): void {
  const before = state.calls.get(call);
  state.calls.set(call, {
    kind,
    step,
    times: (before?.times ?? 0) + 1,
    firstAt: before?.firstAt ?? at,
    lastAt: at,
    acknowledged: false,
  });
}

/** The card of the roast, once the cut is known. */
export function roastCardOf(dinner: Dinner): RoastCard | undefined {
  const cut = dinner.roast.cut;
  return dinner.cards.find((card): card is RoastCard => card.card === 'roast' && card.id === cut);
}

/** The dishes beside the roast that are on the menu, in the order their cards were taken. */
export function menuOf(dinner: Dinner): DishCard[] {
  return dinner.cards.filter(
    (card): card is DishCard =>
      card.card !== 'roast' &&
      !dinner.dropped.includes(card.id) &&
      !wentWithItsCut(card, { ...dinner, cut: dinner.roast.cut, begun: begunOf(dinner, card) }),
  );
}

/** Dishes the cook told of in plain words, for which there is no card: nothing of them is planned. */
export const uncardedOf = ({ added, cards }: Dinner): string[] =>
  added.filter((dish) => !cards.some((card) => card.id === dish));

/** A dish that came with another cut unasked leaves with it, unless its work has begun. */
export const wentWithItsCut = (
  card: DishCard,
  so: { cut: string | undefined; added: readonly string[]; begun: boolean },
): boolean =>
  Array.isArray(card.usual) &&
  so.cut !== undefined &&
  !comesWith(card, so.cut) &&
  !so.added.includes(card.id) &&
  !so.begun;

/** Whether any of a dish's steps was begun or done. */
export const begunOf = (dinner: Pick<Dinner, 'steps'>, card: DishCard): boolean =>
  card.steps.some((step) => {
    const record = dinner.steps.get(stepIdOf(card, step));
    return record?.startedAt !== undefined || record?.doneAt !== undefined;
  });

/** Of a table whose number nobody has said. */
const usualGuests = 6;

export const guestsOf = ({ guests }: Pick<Dinner, 'guests'>): number => guests ?? usualGuests;

/** Who helps and has not left by then, come or still to come. */
export const helpersFrom = ({ helpers }: Pick<Dinner, 'helpers'>, at: Instant): Helper[] =>
  helpers.filter(({ leavesAt }) => leavesAt === undefined || leavesAt > at);

/** Who else stands in the kitchen then. */
export const helpersAt = (dinner: Pick<Dinner, 'helpers'>, at: Instant): Helper[] =>
  helpersFrom(dinner, at).filter(({ comesAt }) => comesAt === undefined || comesAt <= at);

/** Each carver's three minutes, and one for each guest of theirs, or what the card says. */
export function carveMinutesOf(dinner: Dinner, { carve }: Pick<RoastCard, 'carve'>): number {
  const each = Math.ceil(guestsOf(dinner) / Math.max(1, dinner.setup.carvers ?? 1));
  return (carve.fixedMinutes + carve.minutesPerGuest * each) * dinner.pace;
}

/** What is still missing before a plan can be made. */
export function missingOf(dinner: Dinner): ('roast' | 'serving-time' | 'guests' | 'doneness')[] {
  const roastKnown =
    dinner.roast.cut !== undefined &&
    (dinner.roast.kilograms !== undefined || dinner.roast.bones !== undefined);
  return [
    ...(roastKnown ? [] : (['roast'] as const)),
    ...(dinner.servingAt === undefined ? (['serving-time'] as const) : []),
    ...(dinner.guests === undefined ? (['guests'] as const) : []),
    ...(dinner.target === undefined ? (['doneness'] as const) : []),
  ];
}
