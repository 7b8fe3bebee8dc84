/** Where water boils at this height, for a thermometer tested in it. */
import { boilingCelsius, metresOfFeet } from '../../kitchen/boiling.ts';
import type { HeardOf } from '../../kitchen/heard.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences } from '../spoken.ts';
import { count, degrees } from './words.ts';

export function boilingAnswer(heard: HeardOf<'ask-temperature'>, { dinner }: Scene): Spoken {
  const { units } = dinner;
  const ice = say`Ice water is the better check: weather moves the boil by a degree or so.`;
  if (heard.altitude === undefined)
    return sentences([
      say`Water boils at ${degrees(boilingCelsius(0), units)} by the sea, and lower the higher you live. Tell me the height.`,
      ice,
    ]);
  const unit = heard.altitudeUnit ?? (units.weight === 'lb' ? 'ft' : 'm');
  const metres = unit === 'ft' ? metresOfFeet(heard.altitude) : heard.altitude;
  if (metres < -500 || metres > 6000)
    return say`Nobody roasts at that height. How high is the kitchen?`;
  return sentences([
    say`At ${count(heard.altitude)} ${unit === 'ft' ? 'feet' : 'metres'} water boils at about ${degrees(boilingCelsius(metres), units)}.`,
    ice,
  ]);
}
