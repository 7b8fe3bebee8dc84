/** What was true and what was believed at the moments that decide a dinner; °F and minutes. */
export interface Trace {
  /** The pull, when last called anew. */
  called?: Believed | undefined;
  out?: Believed | undefined;
  knife?: Believed | undefined;
  /** When the roast went in, and when the plan then said it would come out. */
  inMinute?: number | undefined;
  plannedInMinute?: number | undefined;
  plannedPullMinute?: number | undefined;
}

export interface Believed {
  minute: number;
  core: number;
  probe: number;
  lastReading: number | undefined;
  readingMinute: number | undefined;
  believedCore: number | undefined;
  believedKnife: number;
  pull: number;
  restMinutes: number;
  likelyTable: number;
}
