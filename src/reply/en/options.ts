/** Options in words: what each does, and what it costs. */
import { minutesBetween } from '../../base/time.ts';
import type { Option } from '../../kitchen/facts.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { aloud, clock, degrees, duration, ovenDegrees } from './words.ts';

/** Figures of an option before it has its words. */
export interface OptionToWord {
  kind: Option['kind'];
  ovenCelsius?: number | undefined;
  servingAt: number;
  restMinutes: number;
  coreAtServingCelsius: { p10: number; p50: number; p90: number };
  minutesFromWanted: number;
}

export function optionTitle(option: OptionToWord, scene: Scene): string {
  const heat =
    option.ovenCelsius === undefined
      ? ''
      : ovenDegrees(option.ovenCelsius, scene.dinner.units).text;
  switch (option.kind) {
    case 'lower-oven':
      return `oven down to ${heat} now, pulled later`;
    case 'raise-oven':
      return `oven up to ${heat} now`;
    case 'pull-and-hold':
      return scene.stage === 'rest' || scene.stage === 'hold'
        ? `back in a ${heat} oven to hold, tented`
        : `pulled as planned, then held at ${heat}`;
    case 'rest-longer':
      return `a longer rest, ${duration(option.restMinutes).text} under the tent`;
    case 'carry-on':
      return option.restMinutes > 45
        ? `oven as it is, and a rest of ${duration(option.restMinutes).text}`
        : 'oven as it is';
    case 'skip-rest':
      return 'hardly any rest';
    case 'start-later':
      return 'a later start';
    case 'serve-later':
      return 'dinner later';
    case 'serve-sooner':
      return 'dinner sooner';
  }
}

export function optionRisk(option: OptionToWord, scene: Scene): string {
  const target = scene.dinner.target?.serveCelsius ?? 54;
  const off = option.coreAtServingCelsius.p50 - target;
  const parts: string[] = [];
  if (option.minutesFromWanted > 5)
    parts.push(`dinner ${duration(option.minutesFromWanted).text} late`);
  if (off > 2.5) parts.push('more done than you asked');
  if (off < -2.5) parts.push('less done or cooler than you asked');
  switch (option.kind) {
    case 'lower-oven':
      parts.push('sides that want a hot oven go in during the rest');
      break;
    case 'raise-oven':
      parts.push('a wider grey rim');
      break;
    case 'pull-and-hold':
      parts.push('hold it above 140 °F (USDA) or serve within two hours');
      break;
    case 'skip-rest':
      parts.push('it bleeds on the board');
      break;
    default:
      break;
  }
  return parts.length === 0 ? 'no cost I can see' : parts.join('; ');
}

/** How far a table or a core may be off what was wanted before it is worth saying aloud. */
const offMinutes = 5;
const offKelvin = 1.5;

/** The options told: the first is on already. Aloud, only where one differs from what was wanted. */
export function offer(options: readonly Option[], scene: Scene): Spoken {
  const [first, ...others] = options;
  if (!first) return silent;
  const { dinner, plan } = scene;
  const figures = (option: Option): Spoken => {
    const all = say`${aloud(option.title)}: table ${clock(option.servingAt, dinner)}, ${degrees(option.coreAtServingCelsius.p50, dinner.units)} at the knife`;
    const wanted = dinner.servingAt ?? plan?.serving.wantedAt ?? option.servingAt;
    const late = minutesBetween(wanted, option.servingAt) > offMinutes;
    const target = dinner.target?.serveCelsius ?? option.coreAtServingCelsius.p50;
    const off = option.coreAtServingCelsius.p50 - target;
    const told = [
      aloud(option.title).speech,
      ...(late ? [say`dinner at ${clock(option.servingAt, dinner)}`.speech] : []),
      ...(Math.abs(off) > offKelvin
        ? [
            say`${off > 0 ? 'more' : 'less'} done, ${degrees(option.coreAtServingCelsius.p50, dinner.units)}`
              .speech,
          ]
        : []),
    ];
    return { text: all.text, speech: told.join(', ') };
  };
  const numbers = ['One', 'Two', 'Three'];
  return sentences([
    say`I take one, ${figures(first)}.`,
    ...others.map(
      (option) => say`${numbers[option.n - 1] ?? String(option.n)}: ${figures(option)}.`,
    ),
    others.length > 0 ? say`Say a number to change it.` : silent,
  ]);
}
