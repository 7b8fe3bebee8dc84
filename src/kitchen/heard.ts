/**
 * The catalogue of intents: what a text can be taken to mean, with its slots and one example each.
 * Numbers are as said, in `unit` if one was said; turning them into SI is for whoever makes facts.
 */
import { z } from 'zod';

const temperatureUnit = z.enum(['F', 'C']);
const weightUnit = z.enum(['lb', 'kg']);
const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);
const calendarDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

export const donenessWords = ['rare', 'medium-rare', 'medium', 'medium-well', 'well-done'] as const;
export type Doneness = (typeof donenessWords)[number];
const doneness = z.enum(donenessWords);

export const preparedWords = ['whole', 'tied-back', 'rolled', 'stuffed', 'tenderised'] as const;
export const troubleWords = [
  'power-out',
  'power-back',
  'oven-out',
  'oven-back',
  'probe-doubt',
  'smoking',
  'overcooked',
  'undercooked',
  'dropped',
  'burnt',
  'door-open',
  'too-salty',
  'gone-cold',
  'grey',
  'tough',
  'side-late',
  'overwhelmed',
  'other',
] as const;

export const guestNeeds = [
  'vulnerable',
  'allergy',
  'diet',
  'doneness',
  'eats-at',
  'comes-later',
] as const;
export type GuestNeed = (typeof guestNeeds)[number];

export const emergencyKinds = [
  'fire',
  'burn',
  'cut',
  'fall',
  'choking',
  'collapse',
  'reaction',
] as const;
export type EmergencyKind = (typeof emergencyKinds)[number];

/** A dinner has three clocks: guests at the door, a first course, and the roast at the table. */
export const dinnerClocks = ['guests-arrive', 'first-course'] as const;
export type DinnerClock = (typeof dinnerClocks)[number];

export const appetites = ['light', 'usual', 'hearty'] as const;
export type Appetite = (typeof appetites)[number];

/** When something happened, if not just now: minutes before, or a clock time. */
const moment = { minutesAgo: z.number().optional(), time: clockTime.optional() };

/** The slots of each intent, without `intent` and `text`, which all of them have. */
const slots = {
  'describe-roast': {
    cut: z.string().optional(),
    weight: z.number().optional(),
    weightUnit: weightUnit.optional(),
    bones: z.number().int().optional(),
    boneless: z.boolean().optional(),
    prepared: z.enum(preparedWords).optional(),
    frozen: z.boolean().optional(),
    startTemperature: z.number().optional(),
    startTemperatureUnit: temperatureUnit.optional(),
  },
  /** `of`: another clock of the dinner than the roast's at the table. */
  'set-serving-time': {
    time: clockTime,
    date: calendarDate.optional(),
    of: z.enum(dinnerClocks).optional(),
  },
  'set-guests': {
    count: z.number().int().optional(),
    change: z.number().int().optional(),
    /** Who is not coming after all. */
    who: z.string().optional(),
  },
  'report-guests': {
    state: z.enum(['arrived', 'partly-arrived', 'seated']),
    count: z.number().int().optional(),
  },
  'note-guest': {
    who: z.string().optional(),
    need: z.enum(guestNeeds),
    /** The allergen, the diet, a doneness word, HH:MM, or minutes after the table. */
    value: z.string().optional(),
  },
  'set-doneness': {
    doneness: doneness.optional(),
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
  },
  'set-method': { method: z.enum(['sear-first', 'sear-last', 'steady']) },
  /** A card's id, or the cook's own words where there is no card. */
  'add-dish': { dish: z.string() },
  'drop-dish': { dish: z.string() },
  'set-units': { temperature: temperatureUnit.optional(), weight: weightUnit.optional() },
  lack: { thing: z.string() },
  'report-setup': {
    pan: z.string().optional(),
    rack: z.boolean().optional(),
    tent: z.boolean().optional(),
    probe: z.boolean().optional(),
    fan: z.boolean().optional(),
    shelf: z.string().optional(),
    oven: z.string().optional(),
    /** How many rings the hob has, and how many carve. */
    rings: z.number().int().optional(),
    carvers: z.number().int().optional(),
  },
  'add-hands': {
    who: z.string().optional(),
    /** What those hands do: a step or a dish. */
    does: z.string().optional(),
    /** From when and until when they help; `left`: they are gone. */
    from: clockTime.optional(),
    until: clockTime.optional(),
    untilMinutes: z.number().optional(),
    left: z.literal(true).optional(),
  },
  'cook-away': { minutes: z.number().optional() },
  'report-reading': {
    temperature: z.number(),
    unit: temperatureUnit.optional(),
    where: z.string().optional(),
    thermometer: z.enum(['leave-in', 'quick']).optional(),
    ...moment,
  },
  'report-oven': {
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
    gasMark: z.number().optional(),
    mode: z.enum(['fan', 'still']).optional(),
    which: z.string().optional(),
    state: z.enum(['on', 'off', 'preheated']).optional(),
    /** Degrees the oven runs hotter than its dial. */
    bias: z.number().optional(),
    ...moment,
  },
  /** Degrees the thermometer reads above the truth. */
  'report-thermometer': { bias: z.number(), unit: temperatureUnit.optional() },
  /** What earlier dinners taught of the oven or the thermometer is to count no more. */
  'forget-kitchen': { about: z.enum(['oven', 'thermometer']) },
  acknowledge: {},
  /** `which`: the oven it stands in, where that is not the roast's. */
  'report-started': { step: z.string(), which: z.string().optional(), ...moment },
  'report-out': { what: z.string().optional(), ...moment },
  'report-done': { step: z.string().optional(), ...moment },
  'report-not-done': { step: z.string().optional() },
  'skip-step': { step: z.string().optional() },
  'report-trouble': {
    trouble: z.enum(troubleWords),
    step: z.string().optional(),
    minutes: z.number().optional(),
    ...moment,
  },
  emergency: { kind: z.enum(emergencyKinds) },
  /** Later is positive, sooner negative. */
  'shift-serving': { minutes: z.number() },
  /** `factor`: how many times as long this cook takes, over all or for one step. */
  'running-behind': {
    minutes: z.number().optional(),
    factor: z.number().positive().optional(),
    step: z.string().optional(),
  },
  'ask-next': {},
  /** `ruined`: whether it is too late to save. */
  'ask-status': { about: z.enum(['ruined']).optional() },
  /** `menu`: what there is beside the roast. */
  'ask-plan': { about: z.enum(['menu']).optional() },
  /** `time`, `minutes`: another hour of dinner that is only supposed, or how much later than agreed. */
  'ask-options': { time: clockTime.optional(), minutes: z.number().optional() },
  /** `butcher`: what to ask the butcher for. */
  'ask-shopping': { about: z.enum(['butcher']).optional() },
  'ask-time-left': { about: z.string().optional() },
  /** A step, a dish, words of them, or one of `tradeTopics`. */
  'ask-how': { topic: z.string().optional() },
  'ask-why': { topic: z.string().optional() },
  'ask-amount': {
    /** `roast`: how big a one. */
    ingredient: z.string().optional(),
    guests: z.number().int().optional(),
    appetite: z.enum(appetites).optional(),
    cut: z.string().optional(),
  },
  'ask-substitute': { ingredient: z.string().optional() },
  'ask-temperature': {
    about: z.string().optional(),
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
    /** What the core is, rather than what it should be. */
    when: z.enum(['now']).optional(),
    /** What a word for it means. */
    doneness: z.enum(donenessWords).optional(),
    /** Where water boils: at so many feet or metres. */
    altitude: z.number().optional(),
    altitudeUnit: z.enum(['ft', 'm']).optional(),
  },
  /**
   * The cut face: how pink, how wide the grey; at the table, if it were pulled now, or if the oven stood at
   * so many degrees.
   */
  'ask-slice': {
    pulled: z.enum(['now']).optional(),
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
  },
  'ask-safety': {
    about: z.string().optional(),
    /** How long it stood out, if that is asked. */
    minutes: z.number().optional(),
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
  },
  /** `forgotten`: who has nothing noted, and what was never asked. */
  /** `eats`: what a guest may have of the menu, or of one dish. */
  'ask-guests': {
    about: z.enum(['forgotten', 'eats']).optional(),
    who: z.string().optional(),
    dish: z.string().optional(),
  },
  /** Something on the shopping list is in the house. */
  have: { thing: z.string() },
  /** The table is not a household's. */
  'feed-public': {},
  'set-timer': { minutes: z.number(), label: z.string().optional() },
  'cancel-timer': { label: z.string().optional(), minutes: z.number().optional() },
  watch: { temperature: z.number(), unit: temperatureUnit.optional() },
  affirm: {},
  deny: {},
  choose: { option: z.number().int() },
  /** Only the slots that change; `step` says which event of the day a time belongs to. */
  correct: {
    temperature: z.number().optional(),
    unit: temperatureUnit.optional(),
    was: z.number().optional(),
    weight: z.number().optional(),
    weightUnit: weightUnit.optional(),
    bones: z.number().int().optional(),
    count: z.number().int().optional(),
    minutes: z.number().optional(),
    doneness: doneness.optional(),
    dish: z.string().optional(),
    step: z.string().optional(),
    option: z.number().int().optional(),
    date: calendarDate.optional(),
    ...moment,
  },
  undo: {},
  repeat: {},
  pause: {},
  resume: {},
  'start-over': {},
  help: {},
  quiet: {},
  courtesy: {},
  unrelated: {},
  unclear: {
    /** What was understood of it, named in the question that follows. */
    temperature: z.number().optional(),
    time: clockTime.optional(),
    number: z.number().optional(),
    thing: z.string().optional(),
  },
} as const;

type Slots = typeof slots;
export type Intent = keyof Slots;

export const intents = Object.keys(slots) as Intent[];

/** An intent without slots adds nothing to its name and its words. */
type SlotsOf<I extends Intent> = keyof Slots[I] extends never
  ? unknown
  : z.infer<z.ZodObject<Slots[I]>>;

/** What one stretch of a text was taken to mean. */
export type Heard = {
  [I in Intent]: { intent: I; text: string } & SlotsOf<I>;
}[Intent];

export type HeardOf<I extends Intent> = Extract<Heard, { intent: I }>;

/** Validates what was heard; used where facts are written and read. */
export const heardSchema: z.ZodType<Heard> = z.discriminatedUnion(
  'intent',
  intents.map((intent) =>
    z.strictObject({ intent: z.literal(intent), ...slots[intent], text: z.string() }),
  ) as never,
) as never;

/** A thing with the words people use for it. */
export interface Named {
  id: string;
  names: readonly string[];
}

export const expectations = [
  'roast',
  'serving-time',
  'guests',
  'doneness',
  'reading',
  'step',
  'confirmation',
  'choice',
] as const;
export type Expectation = (typeof expectations)[number];

/** What cooks ask of the trade whatever the card: topics of ask-how that are no step's. */
const tradeTopics = ['baste', 'turn over', 'water in the pan', 'cover', 'which side up'] as const;
export type TradeTopic = (typeof tradeTopics)[number];
export const isTradeTopic = (topic: string | undefined): topic is TradeTopic =>
  tradeTopics.some((one) => one === topic);

export const stages = [
  'planning',
  'prep',
  'preheat',
  'sear',
  'low-roast',
  'rest',
  'hold',
  'carve',
  'served',
  'put-away',
] as const;
export type Stage = (typeof stages)[number];

/** What the reader of a text may know of the dinner; everything is optional in practice but named here. */
/** Languages a cook may speak; each is a folder of src/intents. */
export const languages = ['en', 'de'] as const;
export type SpokenLanguage = (typeof languages)[number];

export interface ReadContext {
  /** English where nothing is said. */
  language?: SpokenLanguage | undefined;
  /** Milliseconds since the epoch. */
  now: number;
  timeZone: string;
  stage?: Stage | undefined;
  expecting?: Expectation | undefined;
  units: { temperature: 'F' | 'C'; weight: 'lb' | 'kg' };
  paused: boolean;
  /** Dishes of this dinner, by id; those without a card by the cook's own words. */
  dishes: readonly string[];
  /** Who else cooks. */
  helpers?: readonly string[] | undefined;
  /** Steps that are open now, by id, the current first; settles what "done" and "it" mean. */
  openSteps: readonly string[];
  /** Every name the cards give: dishes, steps (ids "dish.step", or "step" for the roast), ingredients and tools. */
  lexicon: Lexicon;
}

export interface Lexicon {
  cuts: readonly Named[];
  dishes: readonly Named[];
  steps: readonly Named[];
  ingredients: readonly Named[];
  tools: readonly Named[];
}
