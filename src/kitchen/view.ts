/**
 * The view: everything a screen, a bridge or a script may know of a dinner, derived anew each time.
 * The schema is the one source of its type and of its description on the wire.
 */
import { z } from 'zod';
import { stages } from './heard.ts';

const sideStates = ['waiting', 'preparing', 'in-oven', 'done', 'held'] as const;
export type SideState = (typeof sideStates)[number];

const instant = z.iso.datetime({ offset: true }).describe('ISO 8601 with offset');
/** The 10th, 50th and 90th percentile of what is believed. */
const band = z.object({ p10: z.number(), p50: z.number(), p90: z.number() });
export type FahrenheitBand = z.infer<typeof band>;

/** What the knife meets; rows from the core (0) to the nearest surface (1), see SliceOutlook. */
const slice = z.object({
  greyBandMillimetres: band,
  pinkFraction: band,
  minutesAfterPull: z.number(),
  radiusMillimetres: z.number(),
  profile: z.array(z.object({ outward: z.number(), fahrenheit: band, hottestFahrenheit: band })),
});

const forecast = z.object({
  pull: z.object({ p10: instant, p50: instant, p90: instant }),
  core: z.array(z.object({ at: instant, fahrenheit: band })),
  coreNowFahrenheit: band,
  coreAtServingFahrenheit: band,
  peak: z.object({ fahrenheit: band, at: instant }),
  afterRest: z.array(z.object({ minutesAfterPull: z.number(), fahrenheit: band })),
  slice,
  /** While it is in the oven. */
  sliceIfPulledNow: slice.optional(),
  assumptions: z.array(z.string()),
});

const step = z.object({
  id: z.string(),
  card: z.string(),
  title: z.string(),
  start: instant,
  end: instant,
  state: z.string(),
  hands: z.array(z.string()),
  /** Whether it takes those hands all the time, a minute or two at its start, or not at all. */
  handsOn: z.enum(['throughout', 'start', 'none']),
  needs: z.array(z.string()),
  why: z.string(),
  slackMinutes: z.number(),
});

const option = z.object({
  n: z.int(),
  kind: z.string(),
  title: z.string(),
  serving: instant,
  coreAtServing: band,
  risk: z.string(),
});

export const viewSchema = z.object({
  id: z.string(),
  at: instant,
  timeZone: z.string(),
  units: z.object({ temperature: z.enum(['F', 'C']), weight: z.enum(['lb', 'kg']) }),
  stage: z.enum(stages),
  sides: z.array(
    z.object({
      id: z.string(),
      title: z.string(),
      kind: z.enum(['side', 'sauce', 'butter']),
      state: z.enum(sideStates),
    }),
  ),
  serving: z.object({
    wanted: instant.optional(),
    likely: instant.optional(),
    earliest: instant.optional(),
    latest: instant.optional(),
    onTimeChance: z.number().optional(),
    /** The other clocks of the dinner, where they were told. */
    guestsArrive: instant.optional(),
    firstCourse: instant.optional(),
  }),
  guests: z.int().optional(),
  roast: z.object({
    cut: z.string().optional(),
    pounds: z.number().optional(),
    kilograms: z.number().optional(),
    bones: z.int().optional(),
    boneless: z.boolean().optional(),
    prepared: z.string().optional(),
    frozen: z.boolean().optional(),
  }),
  target: z.object({
    doneness: z.string().optional(),
    serveFahrenheit: z.number().optional(),
    pullFahrenheit: z.number().optional(),
  }),
  oven: z.object({
    setFahrenheit: z.number(),
    program: z.array(
      z.object({
        at: instant,
        fahrenheit: z.number(),
        why: z.string(),
        /** 1: the second oven; absent: the roast's own. */
        oven: z.number().optional(),
      }),
    ),
  }),
  readings: z.array(z.object({ at: instant, fahrenheit: z.number() })),
  forecast: forecast.optional(),
  steps: z.array(step),
  next: z.object({ id: z.string(), title: z.string(), at: instant }).optional(),
  checkAt: instant.optional(),
  asking: z.object({ kind: z.string(), expecting: z.string(), text: z.string() }).optional(),
  options: z.array(option).optional(),
  cautions: z.array(z.object({ text: z.string(), source: z.string() })),
  timers: z.array(z.object({ id: z.string(), label: z.string().optional(), at: instant })),
  /** What was noted of guests, as it was said. */
  guestNotes: z.array(
    z.object({ who: z.string().optional(), need: z.string(), value: z.string().optional() }),
  ),
  /** An emergency that still keeps the cook away. */
  emergency: z.object({ kind: z.string(), at: instant }).optional(),
  paused: z.boolean(),
  position: z.int().describe('The last log position the view rests on'),
});
export type View = z.infer<typeof viewSchema>;
