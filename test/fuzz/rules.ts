/** What must hold whatever is said and done in a dinner. */
import type { Fact } from '../../src/kitchen/facts.ts';
import type { Plan, PlannedStep } from '../../src/kitchen/plan.ts';
import { type View, viewSchema } from '../../src/kitchen/view.ts';
import { dinnerRegions } from '../../src/machine/passages.ts';
import { standingOf } from '../../src/machine/stage.ts';

export class Violation extends Error {
  readonly rule: string;
  constructor(rule: string, what: string) {
    super(what);
    this.rule = rule;
  }
}

export function holds(rule: string, condition: boolean, what: () => string): void {
  if (!condition) throw new Violation(rule, what());
}

export function wordsAreFit({ text, speech }: { text: string; speech: string }): void {
  holds('words are whole', !/undefined|NaN|\[object|Infinity/.test(text + speech), () => text);
  // What the cook said is given back as it came.
  holds('speech is words', !/[°\d]/.test(speech.replace(/"[^"]*"/g, '')), () => speech);
  holds(
    'no unsafe advice: nothing is called safe',
    !/\b(it|that|this|meat|roast|perfectly) (is )?safe\b|safe to eat/i.test(text),
    () => text,
  );
}

export const viewIsAsDescribed = (view: View): void => {
  const checked = viewSchema.safeParse(view);
  holds('the view is what it is said to be', checked.success, () => String(checked.error));
};

const isOver = ({ stage }: View): boolean => ['served', 'put-away'].includes(stage);
const minuteAgo = ({ at }: View): number => Date.parse(at) - 60_000;

export function nothingIsPast(view: View): void {
  const { likely } = view.serving;
  if (likely !== undefined && !isOver(view))
    holds(
      'the table is not in the past',
      Date.parse(likely) >= minuteAgo(view),
      () => `table ${likely}, now ${view.at}`,
    );
  for (const step of view.steps) {
    holds('a step ends after it starts', step.end >= step.start, () => step.id);
    if (step.state === 'planned')
      holds(
        'nothing is planned for the past',
        Date.parse(step.start) >= minuteAgo(view),
        () => `${step.id} planned for ${step.start}, now ${view.at}`,
      );
  }
}

/** The home figures that a view can be held against, °F: core without a word, held meat, the dial. */
const coreUnspokenLow = 145;
const heldLow = 140;
const dialHigh = 550;

export function adviceIsSafe(view: View): void {
  const { serveFahrenheit } = view.target;
  if (serveFahrenheit !== undefined && view.roast.cut !== undefined && view.steps.length > 0)
    holds(
      'no unsafe advice: a pink core is cautioned of',
      serveFahrenheit >= coreUnspokenLow - 0.1 || view.cautions.length > 0,
      () => `${view.roast.cut} to ${serveFahrenheit} °F without a word`,
    );
  for (const { fahrenheit, why, at } of view.oven.program) {
    holds(
      'no unsafe advice: the oven is no hotter than an oven gets',
      fahrenheit <= dialHigh || at <= view.at,
      () => `${fahrenheit} °F at ${at}`,
    );
    holds(
      'no unsafe advice: meat is held hot',
      why !== 'hold' || fahrenheit === 0 || fahrenheit >= heldLow || at <= view.at,
      () => `held at ${fahrenheit} °F from ${at}`,
    );
  }
}

/** A chart may take two steps at one fact: the plan is known, and the oven is lit already. */
const stepsOfOneFact = 2;

const reaches = (region: string, from: string, to: string, steps = stepsOfOneFact): boolean =>
  from === to ||
  (steps > 0 &&
    (dinnerRegions.find((one) => one.region === region)?.passages ?? []).some(
      (passage) => passage.from === from && reaches(region, passage.to, to, steps - 1),
    ));

/** Every fact moves the charts along their transitions; only what takes back something may leap. */
export function stageKeepsToTheChart(facts: readonly Fact[], from: number): void {
  let before = standingOf('fuzz', facts.slice(0, from)).chart.value as Record<string, string>;
  for (let end = from + 1; end <= facts.length; end += 1) {
    const now = standingOf('fuzz', facts.slice(0, end)).chart.value as Record<string, string>;
    const fact = facts[end - 1] as Fact;
    for (const [region, to] of Object.entries(now))
      holds(
        'the stage only moves along the chart',
        fact.type === 'positions-voided' || reaches(region, before[region] ?? '', to),
        () => `${region}: ${before[region]} to ${to} by ${fact.type}`,
      );
    before = now;
  }
}

/** Facts that take something back or tell it anew, so that what was done may stand elsewhere. */
const tellAnew: readonly Fact['type'][] = [
  'positions-voided',
  'step-done',
  'step-started',
  'step-not-done',
  'oven-stood',
  'card-taken',
  'roast-described',
];

/** What was done stays where it was, unless something was taken back or told anew. */
export function doneStays(before: View, view: View, added: readonly Fact[]): void {
  if (added.some(({ type }) => tellAnew.includes(type))) return;
  const now = new Map(view.steps.map((step) => [step.id, step]));
  for (const step of before.steps) {
    const later = now.get(step.id);
    if (step.state === 'done' && later?.state === 'done')
      // A bar may go on after the deed: the oven stays on, the roast stays in.
      holds(
        'no done step moves',
        step.start === later.start && (step.end === later.end || step.end >= before.at),
        () => `${step.id} ${step.start}–${step.end} became ${later.start}–${later.end}`,
      );
  }
}

const minutesToBegin = 2;
const isOpen = ({ state }: PlannedStep): boolean => state === 'planned' || state === 'due';

/** When the hands that a step takes are free again; a plan may say that a minute is made up there. */
const freeAt = ({ handsOn, startAt, endAt, handsSoonerMinutes = 0 }: PlannedStep): number =>
  handsOn === 'throughout' ? endAt : startAt + (minutesToBegin - handsSoonerMinutes) * 60_000;

/**
 * A plan can be done as it stands, or names what gives: one thing at a time for each pair of hands, the
 * knife after the rest, the table at its hour.
 */
export function planIsFeasible(plan: Plan): void {
  const gives = new Set(plan.shortfalls.map(({ constraint }) => constraint));
  const says = (...any: string[]): boolean => any.some((one) => gives.has(one));
  const busy = plan.steps
    .filter((step) => isOpen(step) && step.hands.length > 0)
    .sort((a, b) => a.startAt - b.startAt);
  for (const [row, step] of busy.entries())
    for (const other of busy.slice(row + 1)) {
      if (other.startAt >= freeAt(step)) break;
      holds(
        'a plan is feasible or says what gives: hands',
        step.hands[0] !== other.hands[0] || says('hands-once'),
        () => `${step.id} and ${other.id} by ${step.hands[0]}`,
      );
    }
  const rest = plan.steps.find(({ id }) => id === 'rest');
  const carve = plan.steps.find(({ id, state }) => id === 'carve' && state === 'planned');
  if (rest && carve)
    holds(
      'a plan is feasible or says what gives: rest',
      carve.startAt >= rest.endAt - 60_000 || says('rest-before-carve'),
      () => `carved at ${new Date(carve.startAt)}, rested until ${new Date(rest.endAt)}`,
    );
  const late = (plan.serving.likelyAt - plan.serving.wantedAt) / 60_000;
  holds(
    'a plan is feasible or says what gives: table',
    late <= 1.01 || says('table-on-time'),
    () => `${late} minutes late`,
  );
}
