/** Every bound on what may enter, with its reason. */
export const limits = {
  /** Longer texts are pasted by accident; a spoken sentence is under 300 characters. */
  utteranceCharacters: 2_000,
  /** A kitchen thermometer's range; outside it a reading is a slip of the tongue or of the unit. */
  readingCelsiusLow: 0,
  readingCelsiusHigh: 250,
  /** What a household can buy and an oven can hold. */
  roastKilogramsLow: 0.4,
  roastKilogramsHigh: 16,
  bonesHigh: 8,
  guestsHigh: 60,
  /** A household oven's dial. */
  ovenCelsiusLow: 40,
  ovenCelsiusHigh: 300,
  /** The forecast looks no further than this after the roast went in. */
  roastMinutesHigh: 24 * 60,
} as const;
