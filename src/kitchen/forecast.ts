/**
 * What the heat forecast is asked and what it answers. Minutes count from when the roast went in,
 * so the same question can be asked of a roast that is still on the counter.
 */

/** The 10th, 50th and 90th percentile of what is believed. */
export interface Band {
  p10: number;
  p50: number;
  p90: number;
}

/** How a cut is built, for heat; a card's data. Cross-section and length follow from the mass. */
export interface CutShape {
  form: 'rib' | 'long-cylinder' | 'ellipsoid';
  /** Length over mean diameter for the long cylinder and the ellipsoid; a rib's follows its bones. */
  aspect?: number | undefined;
  /** Raw mass of one bone's width of the roast, where bones tell the size. */
  kilogramsPerBone?: number | undefined;
  /** Mass fractions of the raw meat (a published food-composition table names its row in the card). */
  composition: { water: number; protein: number; fat: number };
}

export type RestCover = 'tented' | 'open' | 'low-oven';

/**
 * How long of its rest a roast is held, in minutes after it came out. Until the low oven has come down, and from when
 * the dishes want it hot again, it rests under foil; a hold that ends when it begins is none.
 */
export interface HoldSpan {
  fromMinutes: number;
  toMinutes: number;
}

/** What the oven is set to from a minute on; 0 or below 40 °C means off, door shut. */
export interface OvenSetting {
  minute: number;
  celsius: number;
  /** The door stands open, or the roast is out of the oven for so long and goes back. */
  event?: 'door-open' | 'out' | undefined;
}

export interface ProbeReading {
  minute: number;
  celsius: number;
  where?: string | undefined;
  thermometer?: 'leave-in' | 'quick' | undefined;
}

/** What earlier dinners taught of this kitchen; means and standard deviations. */
export interface KitchenBelief {
  ovenBiasKelvin: { mean: number; deviation: number };
  thermometerOffsetKelvin: { mean: number; deviation: number };
}

/** Without a word about this kitchen: a household oven is some 10 K off, a thermometer half a kelvin. */
export const usualKitchen: KitchenBelief = {
  ovenBiasKelvin: { mean: 0, deviation: 9 },
  thermometerOffsetKelvin: { mean: 0, deviation: 0.7 },
};

export interface ForecastQuestion {
  roast: {
    shape: CutShape;
    kilograms?: number | undefined;
    bones?: number | undefined;
    boneless?: boolean | undefined;
    /** Core when it went in; absent: a refrigerator's, or what `minutesOutOfFridge` makes of it. */
    startCelsius?: number | undefined;
    minutesOutOfFridge?: number | undefined;
    frozen?: boolean | undefined;
  };
  /** At least one setting; the first holds from minute 0, the future ones are as planned. */
  oven: readonly OvenSetting[];
  fan?: boolean | undefined;
  onRack?: boolean | undefined;
  readings: readonly ProbeReading[];
  nowMinute: number;
  pullCelsius: number;
  /** When it came out, once it has. */
  outMinute?: number | undefined;
  rest: RestCover;
  /** Of a rest in a low oven, when it is in; all of it where nothing is said. */
  hold?: HoldSpan | undefined;
  /** How long the rest is followed; an hour unless it is to be longer. */
  restMinutes?: number | undefined;
  kitchen?: KitchenBelief | undefined;
  /** A recorded number: the same question with the same seed gives the same answer. */
  seed: number;
  /** Fewer members are quicker and coarser; the default is the room's own. */
  members?: number | undefined;
  /** What would come of another course, all that is believed being as under this question itself. */
  instead?: CourseAsked | undefined;
}

/** Another oven from now on, another pull, another rest. */
export interface CourseAsked {
  oven: readonly OvenSetting[];
  pullCelsius: number;
  rest: RestCover;
  hold?: HoldSpan | undefined;
  restMinutes?: number | undefined;
  outMinute?: number | undefined;
  /** Nothing of the slices is asked, at the pull or at other minutes; their lists are empty. */
  only?: 'core' | undefined;
}

export interface Forecast {
  /** When the true core reaches the pull temperature; past `limits` it is that limit. */
  pullMinute: Band;
  /** Chance that the true core never reaches it under this oven within the horizon. */
  neverReachedChance: number;
  /** Chance that the true core is at or past the pull temperature already. */
  pastPullChance: number;
  /** True core over time, at least every five minutes, from the start to an hour past the pull. */
  core: readonly { minute: number; celsius: Band }[];
  coreNowCelsius: Band;
  /** Core so many minutes after the pull (or after it came out), every five to sixty or as far as asked. */
  afterRest: readonly { minutesAfterPull: number; celsius: Band }[];
  peak: { celsius: Band; minutesAfterPull: Band };
  /** When to look next. */
  nextCheckMinute: number;
  /** Latest look with a chance under 5 % of having passed the pull. */
  latestLookMinute: number;
  /** Indices of readings that do not fit, with a sentence each. */
  suspectReadings: readonly { index: number; why: SuspectReason }[];
  /** Keys of what was taken for granted, for the words room to phrase. */
  assumptions: readonly ForecastAssumption[];
  /** What the knife meets after some rests, the shortest first; see `sliceRested`. */
  slices: readonly SliceOutlook[];
  /** The same if it came out at these minutes instead, rising; none once it is out. */
  ifOut: readonly { minute: number; slices: readonly SliceOutlook[] }[];
  weightLossFraction: Band;
  /** Base-ten reductions by the published table at the coldest point, so far and by the end of the rest. */
  lethality: { now: Band; afterRest: Band };
  /** What the readings say of this oven and thermometer. */
  learnt: KitchenBelief;
}

export interface SliceOutlook {
  /** Depth of the grey rim. */
  greyBandMillimetres: Band;
  /** Share of the slice's area that has never been hotter than 5 °F above its core. */
  pinkFraction: Band;
  minutesAfterPull: number;
  /** From the core to the nearest surface. */
  radiusMillimetres: number;
  /**
   * From the core (`outward` 0) to the surface (1), evenly: what it is then, and the hottest that it has
   * been, which decides its colour.
   */
  profile: readonly { outward: number; celsius: Band; hottestCelsius: Band }[];
}

/** The slice after a rest, between those that are known; the first and the last hold beyond them. */
export function sliceRested(slices: readonly SliceOutlook[], restMinutes: number): SliceOutlook {
  const { before, after, share } = placeAmong(
    slices.map((one) => one.minutesAfterPull),
    restMinutes,
  ) ?? { before: 0, after: 0, share: 0 };
  return mixedSlice(slices[before]!, slices[after]!, share);
}

/** The slice if it came out at a minute, between the forecast's points; undefined once it is out. */
export function sliceIfOutAt(
  { ifOut }: Forecast,
  { outMinute, restMinutes }: { outMinute: number; restMinutes: number },
): SliceOutlook | undefined {
  const place = placeAmong(
    ifOut.map((one) => one.minute),
    outMinute,
  );
  if (!place) return undefined;
  const rested = (row: number): SliceOutlook => sliceRested(ifOut[row]!.slices, restMinutes);
  return mixedSlice(rested(place.before), rested(place.after), place.share);
}

const mixedSlice = (one: SliceOutlook, other: SliceOutlook, share: number): SliceOutlook => ({
  greyBandMillimetres: mixed(one.greyBandMillimetres, other.greyBandMillimetres, share),
  pinkFraction: mixed(one.pinkFraction, other.pinkFraction, share),
  minutesAfterPull: one.minutesAfterPull + (other.minutesAfterPull - one.minutesAfterPull) * share,
  radiusMillimetres: one.radiusMillimetres,
  profile: one.profile.map(({ outward, celsius, hottestCelsius }, row) => ({
    outward,
    celsius: mixed(celsius, other.profile[row]!.celsius, share),
    hottestCelsius: mixed(hottestCelsius, other.profile[row]!.hottestCelsius, share),
  })),
});

export type SuspectReason =
  | 'too-high'
  | 'too-low'
  | 'wrong-unit'
  | 'stuck'
  | 'falling'
  | 'moved-probe'
  | 'disagrees-with-another';

export type ForecastAssumption =
  | { key: 'weight-from-bones'; kilograms: number }
  | { key: 'weight-typical'; kilograms: number }
  | { key: 'start-refrigerator'; celsius: number }
  | { key: 'start-frozen' }
  | { key: 'oven-as-set' }
  /** Kelvin above its dial, from earlier dinners or as told. */
  | { key: 'oven-biased'; kelvin: number }
  | { key: 'thermometer-biased'; kelvin: number }
  | { key: 'no-reading-yet' }
  | { key: 'reading-off-centre' }
  | { key: 'reading-down-weighted'; index: number }
  | { key: 'rest'; cover: RestCover };

export type ForecastFunction = (question: ForecastQuestion) => Forecast;

/** The true core so many minutes after the roast went in, between the forecast's points. */
export const coreAtMinute = (forecast: Forecast, minute: number): Band | undefined =>
  between(
    forecast.core.map((one) => [one.minute, one.celsius]),
    minute,
  );

/** The core so many minutes after the pull, or at the peak where the forecast says no more. */
export const coreAfterRest = (forecast: Forecast, restMinutes: number): Band =>
  between(
    forecast.afterRest.map((one) => [one.minutesAfterPull, one.celsius]),
    restMinutes,
  ) ?? forecast.peak.celsius;

/** Later than this past its temperature, a roast that is still in will be hotter for it. */
export const lateAtPullMinutes = 2;

/**
 * The core after a rest that begins at a minute. A roast that stays in past its pull climbs on: by as
 * much as its slice would be hotter if it came out then.
 */
export function coreRestedFrom(
  forecast: Forecast,
  { outMinute, restMinutes }: { outMinute: number; restMinutes: number },
): Band {
  const rested = coreAfterRest(forecast, restMinutes);
  const last = forecast.ifOut.at(-1);
  if (!last || outMinute <= forecast.pullMinute.p50 + lateAtPullMinutes) return rested;
  const known = Math.min(outMinute, last.minute);
  const slice = sliceIfOutAt(forecast, { outMinute: known, restMinutes });
  const core = slice?.profile[0]?.celsius.p50;
  if (slice === undefined || core === undefined) return rested;
  const beyond =
    (coreAtMinute(forecast, outMinute)?.p50 ?? 0) - (coreAtMinute(forecast, known)?.p50 ?? 0);
  const hotter = core - coreAfterRest(forecast, slice.minutesAfterPull).p50 + Math.max(0, beyond);
  const by = Math.max(0, hotter);
  return { p10: rested.p10 + by, p50: rested.p50 + by, p90: rested.p90 + by };
}

/** Linear between rows that ascend; the first and the last row hold beyond them. */
function between(rows: readonly (readonly [number, Band])[], at: number): Band | undefined {
  const place = placeAmong(
    rows.map(([minute]) => minute),
    at,
  );
  return place && mixed(rows[place.before]![1], rows[place.after]![1], place.share);
}

/** The two rows that a minute lies between, and how far on from the first to the second. */
function placeAmong(
  minutes: readonly number[],
  at: number,
): { before: number; after: number; share: number } | undefined {
  if (minutes.length === 0) return undefined;
  const following = minutes.findIndex((minute) => minute >= at);
  const after = following === -1 ? minutes.length - 1 : following;
  const before = Math.max(0, after - 1);
  const span = minutes[after]! - minutes[before]!;
  const share = span <= 0 ? 1 : Math.min(1, Math.max(0, (at - minutes[before]!) / span));
  return { before, after, share };
}

function mixed(one: Band, other: Band, share: number): Band {
  const mix = (low: number, high: number): number => low + (high - low) * share;
  return {
    p10: mix(one.p10, other.p10),
    p50: mix(one.p50, other.p50),
    p90: mix(one.p90, other.p90),
  };
}
