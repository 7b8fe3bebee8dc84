/**
 * Cards: what the helper knows of a dish, as data. No dish is known to the code; a roast, a side, a
 * sauce or a butter is a file that passes this schema. A card's words are one language's.
 */
import { z } from 'zod';
import { type Lexicon, type Named, preparedWords } from './heard.ts';

const id = z
  .string()
  .regex(
    /^[a-z][a-z0-9-]*$/,
    'an id is lower-case words joined by hyphens, such as "roast-potatoes"',
  );
const sentence = z.string().min(3);
const names = z.array(z.string().min(2));

/** Low, likely and high minutes, in that order. */
const spread = z
  .tuple([z.number().nonnegative(), z.number().nonnegative(), z.number().nonnegative()])
  .refine(([low, likely, high]) => low <= likely && likely <= high, {
    message: 'three minutes in rising order: low, likely, high',
  });

const fahrenheitRange = z
  .strictObject({
    lowFahrenheit: z.number(),
    likelyFahrenheit: z.number(),
    highFahrenheit: z.number(),
  })
  .refine((r) => r.lowFahrenheit <= r.likelyFahrenheit && r.likelyFahrenheit <= r.highFahrenheit, {
    message: 'lowFahrenheit, likelyFahrenheit and highFahrenheit must rise',
  });

/** Moments of the roast's day that a dish's steps can hang on. */
export const anchors = ['roast-in', 'oven-down', 'pull', 'carve', 'table'] as const;
export type Anchor = (typeof anchors)[number];

/**
 * What a step can be bound to, a group each: how the roast is cooked, whether it is on the bone, how
 * the butcher prepared it, and whether somebody's slices are to be cooked on by themselves.
 */
const conditionGroups = {
  method: ['sear-first', 'sear-last', 'steady'],
  bone: ['bone-in', 'boneless'],
  prepared: preparedWords,
  slices: ['cook-on'],
} as const;
const conditions = [
  ...conditionGroups.method,
  ...conditionGroups.bone,
  ...conditionGroups.prepared,
  ...conditionGroups.slices,
] as const;
export type Condition = (typeof conditions)[number];
const only = z.array(z.enum(conditions)).min(1);

const ingredientSchema = z.strictObject({
  item: z.string(),
  names: names.optional(),
  amount: z.number().positive(),
  /** g, ml, tsp, tbsp, cup, clove, sprig, piece, bunch */
  unit: z.string(),
  per: z.enum(['guest', 'batch', 'kilogram', 'bone']),
  shelf: z.enum(['butcher', 'vegetables', 'dairy', 'dry', 'spices', 'bottles', 'household']),
  allergens: z.array(z.string()).optional(),
  /**
   * Of a slaughtered animal: meat, bones, drippings, meat stock. With the allergens (milk, egg,
   * fish …) it tells what a vegetarian or a vegan can eat.
   */
  meat: z.boolean().optional(),
  /** What else does, with its ratio and what changes, as one spoken sentence. */
  instead: sentence.optional(),
  /**
   * By an allergen of this ingredient, or "meat": what does for a guest who must not have that, or how
   * the dish goes without.
   */
  free: z.record(z.string(), sentence).optional(),
  /** Allergens that the stand-in may bring along, told where a guest must not have them. */
  insteadAllergens: z.array(z.string()).optional(),
});

const stepSchema = z.strictObject({
  id,
  /** Imperative, without a full stop: "scrub the potatoes". */
  title: z.string().min(3),
  /** What is called out when it is due: one or two short spoken sentences. */
  call: sentence,
  /** The step once it is done, as a clause without a full stop: "the potatoes are scrubbed". */
  done: z.string().min(3).optional(),
  /** What to have at hand, said ten minutes before a move of the oven. */
  ready: sentence.optional(),
  names: names.optional(),
  minutes: spread,
  /** throughout: needs one cook's hands all the time; start: a minute or two at the start; none. */
  hands: z.enum(['throughout', 'start', 'none']),
  /** Other steps of this card (or "dish.step") that must have ended, with lags in minutes. */
  after: z
    .array(
      z.strictObject({
        step: z.string(),
        minMinutes: z.number().optional(),
        maxMinutes: z.number().optional(),
      }),
    )
    .optional(),
  /**
   * When the step ends against a moment of the roast's day: `earliestMinutes` to `latestMinutes`
   * after it (negative is before). "in" with { anchor: pull, likelyMinutes: 0 } ends with the pull.
   */
  ends: z
    .strictObject({
      anchor: z.enum(anchors),
      earliestMinutes: z.number(),
      likelyMinutes: z.number(),
      latestMinutes: z.number(),
    })
    .optional(),
  /** This step puts the dish into the oven, at temperatures it tolerates. */
  oven: fahrenheitRange.optional(),
  /** It stands on a ring of the hob from its start to its end. */
  hob: z.boolean().optional(),
  /** It takes fat or juices from the roast's pan: the roast is out first, and one takes at a time. */
  drippings: z.boolean().optional(),
  /** Tools it needs; a tool that is lacking turns the step into its `without` variant. */
  needs: z.array(z.string()).optional(),
  without: z
    .array(z.strictObject({ tool: z.string(), call: sentence, extraMinutes: z.number() }))
    .optional(),
  /** How it is done, one spoken sentence at a time. */
  how: z.array(sentence).min(1),
  /** The sight, sound or feel that tells it is right; and what goes wrong and the mend. */
  right: sentence,
  wrong: sentence,
  why: sentence.optional(),
  caution: sentence.optional(),
  /**
   * The step belongs only to dinners that match: any one of each group named, of methods, of bone-in
   * and boneless, of prepared forms. `cook-on`: slices for a guest who must not have them pink.
   * Absent: to every dinner that needs no `cook-on`.
   */
  only: only.optional(),
  /** Other words for the step in dinners that match, in place of its own. The first that fits. */
  variants: z
    .array(
      z.strictObject({
        only,
        call: sentence.optional(),
        how: z.array(sentence).min(1).optional(),
        right: sentence.optional(),
        wrong: sentence.optional(),
      }),
    )
    .optional(),
  /** May be left out without spoiling the dish. */
  skippable: z.boolean().optional(),
});

const common = {
  id,
  title: z.string().min(3),
  names,
  serves: z.string().optional(),
  ingredients: z.array(ingredientSchema),
  tools: z.array(z.strictObject({ id, names })).optional(),
  steps: z
    .array(stepSchema)
    .min(1)
    .refine((steps) => steps.some((step) => step.hands !== 'none'), {
      message: 'some step must take hands; give it `hands: throughout` or `hands: start`',
    }),
};

/** How long and how a finished dish keeps. */
const hold = z.strictObject({
  minutes: z.number().positive(),
  how: sentence,
});

const roastSchema = z.strictObject({
  card: z.literal('roast'),
  ...common,
  /** For the forecast. */
  shape: z.strictObject({
    form: z.enum(['rib', 'long-cylinder', 'ellipsoid']),
    aspect: z.number().positive().optional(),
    kilogramsPerBone: z.number().positive().optional(),
    composition: z.strictObject({ water: z.number(), protein: z.number(), fat: z.number() }),
    source: sentence,
  }),
  /** How it is cooked, by method; sear-first is taken unless the cook says otherwise. */
  methods: z
    .strictObject({
      'sear-first': z
        .strictObject({
          searFahrenheit: z.number(),
          searMinutes: z.number(),
          roastFahrenheit: z.number(),
        })
        .optional(),
      'sear-last': z
        .strictObject({
          roastFahrenheit: z.number(),
          searFahrenheit: z.number(),
          searMinutes: z.number(),
        })
        .optional(),
      steady: z.strictObject({ roastFahrenheit: z.number() }).optional(),
    })
    .refine((methods) => Object.keys(methods).length > 0, {
      message: 'a roast wants one way of cooking at least, with its oven',
    }),
  restMinutes: z.array(z.strictObject({ toKilograms: z.number(), minutes: spread })).min(1),
  /** What to ask the butcher for, one spoken sentence at a time: grade, which end, how it is cut. */
  butcher: z.array(sentence).min(1).optional(),
  /** Served pink by custom; otherwise the consumer minimum is the target. */
  pink: z.boolean(),
  carve: z.strictObject({ fixedMinutes: z.number(), minutesPerGuest: z.number() }),
  hold,
});

const dishSchema = z.strictObject({
  card: z.enum(['side', 'sauce', 'butter']),
  ...common,
  hold,
  /** What its middle must read before it is served, where that is a matter of safety. */
  coreFahrenheit: z.number().positive().optional(),
  /** Served unless the cook says otherwise: with every roast, or with the roasts of these ids. */
  usual: z.union([z.boolean(), z.array(id).min(1)]).optional(),
});

export const cardSchema = z.discriminatedUnion('card', [roastSchema, dishSchema]);

export type RoastCard = z.infer<typeof roastSchema>;
export type DishCard = z.infer<typeof dishSchema>;
export type Card = z.infer<typeof cardSchema>;
export type CardStep = z.infer<typeof stepSchema>;
export type Ingredient = z.infer<typeof ingredientSchema>;

/** Whether a dish comes with such a roast without being asked for. */
export const comesWith = ({ usual }: DishCard, cut: string): boolean =>
  typeof usual === 'object' ? usual.includes(cut) : usual === true;

/** Steps whose instants the roast itself decides; everything else is placed around them. */
export const roastMoments = [
  'oven-on',
  'roast-in',
  'oven-down',
  'check',
  'pull',
  'rest',
  'oven-up',
  'sear',
  'carve',
  'serve',
  'put-away',
] as const;

export const isRoastMoment = (id: string): boolean =>
  (roastMoments as readonly string[]).includes(id);

/** The id a step goes by in a dinner: bare for the roast's, "dish.step" for the others. */
export const stepIdOf = (card: Card, step: { id: string }): string =>
  card.card === 'roast' ? step.id : `${card.id}.${step.id}`;

/** What of a dinner steps can be bound to. */
export interface Circumstances {
  method: (typeof conditionGroups.method)[number];
  boneless: boolean;
  /** Default: whole. */
  prepared?: (typeof preparedWords)[number] | undefined;
  /** Slices for somebody are cooked on by themselves. */
  cookOn?: boolean | undefined;
}

/** Whether what is bound so belongs to such a dinner: any one of each group that it names. */
export function applies(
  bound: readonly Condition[] | undefined,
  { method, boneless, prepared, cookOn }: Circumstances,
): boolean {
  const holding: readonly Condition[] = [
    method,
    boneless ? 'boneless' : 'bone-in',
    prepared ?? 'whole',
    ...(cookOn ? (['cook-on'] as const) : []),
  ];
  return Object.values(conditionGroups).every((group: readonly Condition[]) => {
    const named = (bound ?? []).filter((one) => group.includes(one));
    return named.length === 0 || named.some((one) => holding.includes(one));
  });
}

export const stepApplies = (step: Pick<CardStep, 'only'>, dinner: Circumstances): boolean =>
  applies(step.only, dinner);

/** The step in the words that such a dinner wants. */
export function stepIn(step: CardStep, dinner: Circumstances): CardStep {
  const variant = step.variants?.find((one) => applies(one.only, dinner));
  if (!variant) return step;
  const { only: _, ...words } = variant;
  return { ...step, ...words };
}

/** Every name the cards give, for whoever reads a text. */
export function lexiconOf(cards: readonly Card[]): Lexicon {
  const merge = (things: Named[]): Named[] => {
    const byId = new Map<string, Set<string>>();
    for (const thing of things) {
      const known = byId.get(thing.id) ?? new Set<string>();
      for (const name of thing.names) known.add(name);
      byId.set(thing.id, known);
    }
    return [...byId].map(([key, set]) => ({ id: key, names: [...set] }));
  };
  const named = (card: Card): Named => ({ id: card.id, names: [card.title, ...card.names] });
  return {
    cuts: merge(cards.filter((card) => card.card === 'roast').map(named)),
    dishes: merge(cards.filter((card) => card.card !== 'roast').map(named)),
    steps: merge(
      cards.flatMap((card) =>
        card.steps.map((step) => ({
          id: stepIdOf(card, step),
          names: [
            step.title,
            ...(step.done === undefined ? [] : [step.done]),
            ...(step.names ?? []),
          ],
        })),
      ),
    ),
    ingredients: merge(
      cards.flatMap((card) =>
        card.ingredients.map((part) => ({
          id: part.item,
          names: [part.item, ...(part.names ?? [])],
        })),
      ),
    ),
    tools: merge(
      cards.flatMap((card) =>
        (card.tools ?? []).map((tool) => ({ id: tool.id, names: tool.names })),
      ),
    ),
  };
}
