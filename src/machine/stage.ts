/**
 * Drives the charts by a dinner's facts: the stage, the dishes' states and what may happen next are
 * read from the charts' snapshots and from nowhere else.
 */
import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import { type Card, type DishCard, stepIdOf } from '../kitchen/card.ts';
import { dinnerOf, menuOf, missingOf, wentWithItsCut } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import { Fold, standing } from '../kitchen/fold.ts';
import type { Stage } from '../kitchen/heard.ts';
import type { SideState } from '../kitchen/view.ts';
import { type ChartEvent, dinnerChart, type RoastEvent } from './chart.ts';
import { type DishChartEvent, dishChart } from './dish-chart.ts';
import type { Passage } from './passages.ts';

export type ChartSnapshot = SnapshotFrom<typeof dinnerChart>;
type DishSnapshot = SnapshotFrom<typeof dishChart>;

export interface Standing {
  chart: ChartSnapshot;
  stage: Stage;
  oven: 'off' | 'heating' | 'hot' | 'lost';
  talk: 'listening' | 'asking' | 'confirming' | 'choosing' | 'paused';
  dishes: ReadonlyMap<string, SideState>;
}

const step = (chart: ChartSnapshot, event: ChartEvent): ChartSnapshot =>
  transition(dinnerChart, chart, event)[0];

/** Whether the chart takes the event where it stands. */
export const can = (chart: ChartSnapshot, event: RoastEvent): boolean => chart.can(event);

/** The chart after the event, for asking "what if". */
export const after = step;

interface Known {
  complete: boolean;
  method: string;
  /** The roast went in: a better time for that is no second going in. */
  in: boolean;
}

/** What a fact means to the roast's region. */
function roastEventsOf(fact: Fact, { method, in: isIn }: Known): ChartEvent[] {
  switch (fact.type) {
    case 'step-started':
      return isIn && fact.step === 'roast-in' ? [] : roastStepBegun(fact.step, method);
    case 'step-done':
      return isIn && fact.step === 'roast-in' ? [] : roastStepDone(fact.step, method);
    case 'step-not-done':
      // Not out after all, or back in because its middle is not there yet.
      return fact.step === 'pull' ? [{ type: 'ROAST_IN', searing: false }] : [];
    case 'step-skipped':
      return fact.step === 'oven-down' ? [{ type: 'SEARED' }] : [];
    case 'oven-stood':
      return fact.celsius > 0
        ? [{ type: 'OVEN_SET' }, { type: 'OVEN_LIT' }]
        : [{ type: 'OVEN_OFF' }, { type: 'OVEN_DARK' }];
    case 'oven-preheated':
      return [{ type: 'OVEN_HOT' }];
    case 'trouble-told':
      if (fact.trouble === 'power-out' || fact.trouble === 'oven-out')
        return [{ type: 'OVEN_LOST' }];
      if (fact.trouble === 'power-back' || fact.trouble === 'oven-back')
        return [{ type: 'OVEN_BACK' }];
      return [];
    case 'question-asked':
      return [
        fact.question.expecting === 'confirmation'
          ? { type: 'CONFIRMATION_ASKED' }
          : fact.question.expecting === 'choice'
            ? { type: 'CHOICE_OFFERED' }
            : { type: 'ASKED' },
      ];
    case 'options-offered':
      return [{ type: 'CHOICE_OFFERED' }];
    case 'question-settled':
    case 'option-chosen':
      return [{ type: 'SETTLED' }];
    case 'talk-paused':
      return [{ type: 'PAUSED' }];
    case 'talk-resumed':
      return [{ type: 'RESUMED' }];
    default:
      return [];
  }
}

function roastStepBegun(id: string, method: string): ChartEvent[] {
  switch (id) {
    case 'roast-in':
      return [{ type: 'ROAST_IN', searing: method === 'sear-first' }];
    case 'sear':
      return [{ type: 'SEAR_BEGUN' }];
    case 'rest':
      return [{ type: 'ROAST_OUT' }];
    case 'hold':
      return [{ type: 'HOLD_BEGUN' }];
    case 'carve':
      return [{ type: 'CARVING_BEGUN' }];
    case 'serve':
      return [{ type: 'SERVED' }];
    default:
      return [];
  }
}

function roastStepDone(id: string, method: string): ChartEvent[] {
  switch (id) {
    case 'oven-down':
      return [{ type: 'SEARED' }];
    case 'pull':
    case 'sear':
      return [{ type: 'ROAST_OUT' }];
    case 'serve':
      return [{ type: 'SERVED' }];
    case 'put-away':
      return [{ type: 'PUT_AWAY' }];
    default:
      return roastStepBegun(id, method).filter((event) => event.type === 'ROAST_IN');
  }
}

/** What a fact means to one dish: its card says which step goes into the oven and which is last. */
function dishEventsOf(card: DishCard, fact: Fact): DishChartEvent[] {
  if (fact.type !== 'step-started' && fact.type !== 'step-done' && fact.type !== 'step-not-done')
    return [];
  const found = card.steps.find((one) => stepIdOf(card, one) === fact.step);
  if (!found) return [];
  if (fact.type === 'step-not-done') return [{ type: 'NOT_READY' }];
  const last = card.steps.at(-1) === found;
  if (fact.type === 'step-started')
    return [{ type: 'BEGUN' }, ...(found.oven ? [{ type: 'IN' } as const] : [])];
  if (last) return [{ type: 'BEGUN' }, { type: 'READY' }];
  return [{ type: 'BEGUN' }, ...(found.oven ? [{ type: 'OUT' } as const] : [])];
}

/**
 * The transitions that a dinner went through, in order: those of what was taken back later too, up to
 * where it was taken back.
 */
export function passagesOf(facts: readonly Fact[]): Passage[] {
  const ends = facts.flatMap((fact, index) => (fact.type === 'positions-voided' ? [index] : []));
  return [...ends, facts.length].flatMap((end) => {
    const passages: Passage[] = [];
    const charts = unmoved();
    for (const fact of standing(facts.slice(0, end)))
      takeFact(charts, fact, (passage) => passages.push(passage));
    return passages;
  });
}

/** Tells of each transition that an event led to. */
type Watcher = (passage: Passage) => void;

function tellPassages(
  before: ChartSnapshot,
  event: ChartEvent,
  next: ChartSnapshot,
  watcher: Watcher,
) {
  for (const [region, from] of Object.entries(before.value)) {
    const to = next.value[region as keyof typeof next.value];
    if (to !== from) watcher({ region, from, event: event.type, to });
  }
}

/** What a dinner's facts have made of the charts so far, and what of them the next one means by. */
interface Charts {
  chart: ChartSnapshot;
  dishes: Map<string, DishSnapshot>;
  known: Known;
  /** Facts, while they do not make a plan yet. */
  taken: Fact[];
  cards: Card[];
  dropped: Set<string>;
  added: string[];
  cut: string | undefined;
}

const unmoved = (): Charts => ({
  chart: initialTransition(dinnerChart)[0],
  dishes: new Map(),
  known: { complete: false, method: 'sear-first', in: false },
  taken: [],
  cards: [],
  dropped: new Set(),
  added: [],
  cut: undefined,
});

const fold = new Fold<Charts>({
  begin: unmoved,
  copy: (charts) => ({
    ...charts,
    dishes: new Map(charts.dishes),
    known: { ...charts.known },
    taken: [...charts.taken],
    cards: [...charts.cards],
    dropped: new Set(charts.dropped),
    added: [...charts.added],
  }),
  take: (charts, fact) => takeFact(charts, fact),
});

/** Moves the charts by one fact. */
function takeFact(charts: Charts, fact: Fact, watcher?: Watcher): void {
  const { dishes, known, taken, cards, dropped, added } = charts;
  const take = (event: ChartEvent): void => {
    const next = step(charts.chart, event);
    if (watcher) tellPassages(charts.chart, event, next, watcher);
    charts.chart = next;
  };
  if (!known.complete) taken.push(fact);
  if (fact.type === 'card-taken') cards.push(fact.card);
  if (fact.type === 'dish-dropped') dropped.add(fact.dish);
  if (fact.type === 'dish-added') {
    dropped.delete(fact.dish);
    added.push(fact.dish);
  }
  if (fact.type === 'roast-described') charts.cut = fact.cut ?? charts.cut;
  if (fact.type === 'method-set') known.method = fact.method;
  for (const event of roastEventsOf(fact, known)) {
    take(event);
    known.in ||= event.type === 'ROAST_IN';
  }
  if (!known.complete && describes(fact)) {
    known.complete = missingOf(dinnerOf('', [...taken])).length === 0;
    if (known.complete) {
      charts.taken = [];
      take({ type: 'PLAN_KNOWN' });
      // An oven that was lit before the plan was known is part of the preheat from here on.
      if (charts.chart.matches({ oven: 'heating' }) || charts.chart.matches({ oven: 'hot' }))
        take({ type: 'OVEN_LIT' });
    }
  }
  const menu = cards.filter(
    (card) =>
      card.card !== 'roast' &&
      !dropped.has(card.id) &&
      !wentWithItsCut(card, { cut: charts.cut, added, begun: dishes.has(card.id) }),
  );
  for (const event of dishFact(dishes, menu, fact, watcher)) take(event);
}

/** Where a dinner's facts leave the charts. */
export function standingOf(id: string, facts: readonly Fact[]): Standing {
  const { chart, dishes } = fold.over(facts);
  const states = new Map<string, SideState>();
  for (const card of menuOf(dinnerOf(id, facts)))
    states.set(card.id, (dishes.get(card.id)?.value ?? 'waiting') as SideState);
  const value = chart.value as { roast: Stage; oven: Standing['oven']; talk: Standing['talk'] };
  return { chart, stage: value.roast, oven: value.oven, talk: value.talk, dishes: states };
}

const describes = (fact: Fact): boolean =>
  fact.type === 'roast-described' ||
  fact.type === 'serving-time-set' ||
  fact.type === 'guests-counted' ||
  fact.type === 'doneness-set';

/** Moves the dishes of a fact along their charts; gives what that means to the dinner's. */
function dishFact(
  dishes: Map<string, DishSnapshot>,
  cards: readonly Card[],
  fact: Fact,
  watcher?: Watcher,
): ChartEvent[] {
  const means: ChartEvent[] = [];
  for (const card of cards) {
    if (card.card === 'roast') continue;
    const events = dishEventsOf(card, fact);
    if (events.length === 0) continue;
    let snapshot = dishes.get(card.id) ?? initialTransition(dishChart)[0];
    for (const event of events) {
      const next = transition(dishChart, snapshot, event)[0];
      if (next.value !== snapshot.value)
        watcher?.({ region: 'dish', from: snapshot.value, event: event.type, to: next.value });
      snapshot = next;
    }
    dishes.set(card.id, snapshot);
    const sauce = card.card === 'sauce';
    const ready = cards
      .filter((one) => one.card !== 'roast' && (one.card === 'sauce') === sauce)
      .every((one) => {
        const value = dishes.get(one.id)?.value;
        return value === 'done';
      });
    const event: ChartEvent['type'] = ready
      ? sauce
        ? 'SAUCE_READY'
        : 'DISHES_READY'
      : fact.type === 'step-not-done'
        ? sauce
          ? 'SAUCE_OPEN'
          : 'DISHES_OPEN'
        : sauce
          ? 'SAUCE_BEGUN'
          : 'DISH_BEGUN';
    means.push({ type: event } as ChartEvent);
  }
  return means;
}
