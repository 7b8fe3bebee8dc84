/**
 * Facts: what has been told, asked, promised and called in one dinner, in the past tense, append-only.
 * `at` is when it was told, `happenedAt` when it happened. SI inside, beside the value as said.
 * Nothing derived is a fact; what was promised to the cook is one, with its numbers.
 */
import { z } from 'zod';
import { cardSchema } from './card.ts';
import {
  dinnerClocks,
  donenessWords,
  emergencyKinds,
  expectations,
  guestNeeds,
  heardSchema,
  preparedWords,
  troubleWords,
} from './heard.ts';

const instant = z.number().int();
const said = z.strictObject({ value: z.number(), unit: z.string() }).optional();
const doneness = z.enum(donenessWords);

export const announcementKinds = [
  'get-ready',
  'step-due',
  'oven-change',
  'side-in',
  'check-due',
  'pull',
  'rest-over',
  'carve',
  'serve',
  'put-away',
  'timer',
  'watch',
  'running-late',
  'plan-changed',
  'caution',
] as const;
export type AnnouncementKind = (typeof announcementKinds)[number];

export const methods = ['sear-first', 'sear-last', 'steady'] as const;
export type Method = (typeof methods)[number];

/** An oven program and what follows it: what a plan or an option commits to. */
const course = z.strictObject({
  /** From these instants on the oven is meant to stand at these temperatures; 0 is off. */
  oven: z.array(z.strictObject({ at: instant, celsius: z.number() })),
  /** Replaces the usual pull temperature. */
  pullCelsius: z.number().optional(),
  /** The roast goes in no sooner than this. */
  roastInAt: instant.optional(),
  rest: z.enum(['tented', 'open', 'low-oven']),
  servingAt: instant,
});
export type Course = z.infer<typeof course>;

const optionSchema = z.strictObject({
  n: z.number().int(),
  kind: z.enum([
    'start-later',
    'lower-oven',
    'pull-and-hold',
    'rest-longer',
    'raise-oven',
    'carry-on',
    'serve-later',
    'serve-sooner',
    'skip-rest',
    'skip-steps',
    'drop-dish',
  ]),
  title: z.string(),
  servingAt: instant,
  coreAtServingCelsius: z.strictObject({ p10: z.number(), p50: z.number(), p90: z.number() }),
  risk: z.string(),
  course,
  /** A dish left off the table with it, and steps left out. */
  drops: z.string().optional(),
  skips: z.array(z.string()).optional(),
  /** Dishes' steps taken out of the oven for it, that go in again for so many minutes. */
  takesOut: z.array(z.strictObject({ step: z.string(), minutes: z.number() })).optional(),
});
export type Option = z.infer<typeof optionSchema>;

export const questionKinds = [
  'roast',
  'serving-time',
  'guests',
  'doneness',
  'reading-improbable',
  'reading-contradicts',
  'reading-or-oven',
  'serving-past',
  'choice',
  'start-over',
] as const;

const question = z.strictObject({
  kind: z.enum(questionKinds),
  expecting: z.enum(expectations),
  text: z.string(),
  /** What an affirmation would make true: facts waiting for a yes. */
  pending: z.array(z.unknown()).optional(),
});
export type Question = z.infer<typeof question>;

const bodies = {
  'dinner-opened': {
    timeZone: z.string(),
    temperatureUnit: z.enum(['F', 'C']),
    weightUnit: z.enum(['lb', 'kg']),
    seed: z.number().int(),
    language: z.string(),
    /** What earlier dinners taught of this kitchen. */
    kitchen: z
      .strictObject({
        ovenBiasKelvin: z.strictObject({ mean: z.number(), deviation: z.number() }),
        thermometerOffsetKelvin: z.strictObject({ mean: z.number(), deviation: z.number() }),
      })
      .optional(),
  },
  /** A card the dinner uses, copied: a changed card file touches new dinners only. */
  'card-taken': { card: cardSchema },
  'words-heard': {
    text: z.string(),
    source: z.string(),
    key: z.string().optional(),
    heard: z.array(heardSchema),
  },
  'roast-described': {
    cut: z.string().optional(),
    kilograms: z.number().optional(),
    said,
    bones: z.number().int().optional(),
    boneless: z.boolean().optional(),
    prepared: z.enum(preparedWords).optional(),
    frozen: z.boolean().optional(),
    startCelsius: z.number().optional(),
  },
  'method-set': { method: z.enum(methods) },
  'serving-time-set': {
    servingAt: instant,
    because: z.enum(['said', 'shifted', 'corrected', 'chosen']),
  },
  /** When guests are at the door, or the first course is to be out; none: there is none any more. */
  'clock-set': { clock: z.enum(dinnerClocks), clockAt: instant.optional() },
  'guests-counted': { count: z.number().int() },
  'guests-arrived': {
    state: z.enum(['arrived', 'partly-arrived', 'seated']),
    count: z.number().int().optional(),
  },
  'guest-noted': {
    who: z.string().optional(),
    need: z.enum(guestNeeds),
    value: z.string().optional(),
  },
  /** Not coming after all: what was noted of them counts no more. */
  'guest-gone': { who: z.string() },
  'doneness-set': { doneness: doneness.optional(), serveCelsius: z.number(), said },
  /** A card's id, or plain words where there is no card. */
  'dish-added': { dish: z.string() },
  'dish-dropped': { dish: z.string() },
  'units-set': {
    temperatureUnit: z.enum(['F', 'C']).optional(),
    weightUnit: z.enum(['lb', 'kg']).optional(),
  },
  'thing-lacked': { thing: z.string() },
  /** In the house, so it need not be bought. */
  'thing-had': { thing: z.string() },
  /** The table is not a household's: local codes and licensed people come first. */
  'public-fed': {},
  'setup-reported': {
    rack: z.boolean().optional(),
    tent: z.boolean().optional(),
    probe: z.boolean().optional(),
    fan: z.boolean().optional(),
    /** How many ovens the kitchen has; one unless it was said. */
    ovens: z.number().int().optional(),
    /** How many rings its hob has; four unless it was said. */
    rings: z.number().int().optional(),
    /** How many carve, each with a board and a knife; one unless it was said. */
    carvers: z.number().int().optional(),
    note: z.string().optional(),
  },
  'hands-added': {
    who: z.string(),
    /** A step or a dish that these hands do. */
    does: z.string().optional(),
    comesAt: instant.optional(),
    leavesAt: instant.optional(),
  },
  /** How many times as long as its card says this cook takes: whatever takes hands, or one step or dish. */
  'pace-told': { factor: z.number().positive(), step: z.string().optional() },
  /** What a dish or a step is made of, or a tool, is not in the house before then. */
  'thing-comes': { thing: z.string(), comesAt: instant },
  'cook-left': { until: instant },
  'reading-taken': {
    celsius: z.number(),
    said,
    happenedAt: instant,
    where: z.string().optional(),
    thermometer: z.enum(['leave-in', 'quick']).optional(),
  },
  /** How much the thermometer reads over the truth: by ice water, or as the cook knows it. */
  'thermometer-checked': { offsetKelvin: z.number() },
  'oven-stood': {
    /** 0: off. */
    celsius: z.number(),
    said,
    happenedAt: instant,
    presumed: z.boolean().optional(),
    /** The dial was changed by the cook to something the plan did not ask for. */
    ownChoice: z.boolean().optional(),
  },
  'oven-preheated': { happenedAt: instant },
  'oven-bias-told': { kelvin: z.number() },
  /** What was believed of the oven or the thermometer counts no more. */
  'kitchen-forgotten': { about: z.enum(['oven', 'thermometer']) },
  'step-started': {
    step: z.string(),
    happenedAt: instant,
    presumed: z.boolean().optional(),
    /** The oven it stands in, where that was said; 0 is the roast's. */
    oven: z.number().int().optional(),
  },
  'step-done': { step: z.string(), happenedAt: instant, presumed: z.boolean().optional() },
  /** Not done yet, and by how much it runs behind where that was said. */
  'step-not-done': {
    step: z.string(),
    minutes: z.number().optional(),
    /** Not even begun, though it was called. */
    begun: z.literal(false).optional(),
  },
  'step-skipped': { step: z.string() },
  'trouble-told': {
    trouble: z.enum(troubleWords),
    step: z.string().optional(),
    happenedAt: instant,
    minutes: z.number().optional(),
  },
  'emergency-told': { kind: z.enum(emergencyKinds) },
  'timer-set': { id: z.string(), label: z.string().optional(), dueAt: instant },
  'timer-cancelled': { id: z.string() },
  'watch-set': { celsius: z.number(), said },
  'question-asked': { question },
  'question-settled': { how: z.enum(['answered', 'refused', 'dropped']) },
  'options-offered': { options: z.array(optionSchema), taken: z.number().int().optional() },
  'option-chosen': { n: z.number().int() },
  'course-set': { course },
  'talk-paused': {},
  'talk-resumed': {},
  'quiet-wished': {},
  replied: {
    text: z.string(),
    speech: z.string(),
    /** The wording key, so that rehearsals can tell which replies were ever given. */
    wording: z.array(z.string()),
    key: z.string().optional(),
  },
  announced: {
    /** Unique in the dinner; a repeated call has a new id and the same `call`. */
    id: z.string(),
    call: z.string(),
    repeat: z.number().int(),
    kind: z.enum(announcementKinds),
    step: z.string().optional(),
    text: z.string(),
    speech: z.string(),
    urgency: z.enum(['low', 'normal', 'high']),
    dueAt: instant,
    expiresAt: instant,
  },
  /** A step was called within a reply, so it need not be announced again. */
  'step-called': { call: z.string(), step: z.string().optional() },
  acknowledged: { call: z.string() },
  delivered: { id: z.string(), sink: z.string() },
  /** What the cook has been told of the day, so that a new plan can keep to it. */
  'plan-told': {
    servingAt: instant,
    pullCelsius: z.number().optional(),
    starts: z.array(z.strictObject({ step: z.string(), at: instant })),
  },
  /** Safety advice given once. */
  cautioned: { rule: z.string() },
  'clock-jumped': { from: instant, to: instant },
  /** Undo and correction: these positions no longer count. They are never deleted. */
  'positions-voided': {
    positions: z.array(z.number().int()),
    because: z.enum(['undo', 'correct']),
  },
} as const;

type Bodies = typeof bodies;
export type FactType = keyof Bodies;
export const factTypes = Object.keys(bodies) as FactType[];

/** What a type of fact holds; a type that holds nothing adds nothing. */
type Body<T extends FactType> = keyof Bodies[T] extends never
  ? unknown
  : z.infer<z.ZodObject<Bodies[T]>>;

/** A fact before the journal gave it its place. */
export type NewFact = { [T in FactType]: { type: T } & Body<T> }[FactType];

/** A fact in its place. `v` is the version of its type's shape. */
export type Fact = NewFact & { dinner: string; position: number; at: number; v: number };
export type FactOf<T extends FactType> = Extract<Fact, { type: T }>;

/** The newest version of each type; a shape that changes raises it and adds an upcaster. */
export const factVersion = 1;

const placed = {
  dinner: z.string(),
  position: z.number().int().nonnegative(),
  at: instant,
  v: z.number().int().positive(),
};

/** Checks a fact as it is written and again as it is read. */
export const factSchema: z.ZodType<Fact> = z.discriminatedUnion(
  'type',
  factTypes.map((type) =>
    z.strictObject({ type: z.literal(type), ...placed, ...bodies[type] }),
  ) as never,
) as never;
