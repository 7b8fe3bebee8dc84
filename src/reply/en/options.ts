/** Options in words: what each does, and what it costs. */
import { minutesBetween } from '../../base/time.ts';
import type { Course, Option } from '../../kitchen/facts.ts';
import { leavesOut } from '../../kitchen/option.ts';
import { secondsAloud } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { dishTitle, titleOf } from './steps.ts';
import { aloud, clock, degrees, duration, ovenDegrees } from './words.ts';

/** Figures of an option before it has its words. */
export interface OptionToWord {
  kind: Option['kind'];
  ovenCelsius?: number | undefined;
  servingAt: number;
  restMinutes: number;
  coreAtServingCelsius: { p10: number; p50: number; p90: number };
  minutesFromWanted: number;
  drops?: string | undefined;
  skips?: readonly string[] | undefined;
  without?: readonly string[] | undefined;
  takesOut?: Option['takesOut'];
  course?: Course | undefined;
}

/** A pull moved for the hold's sake is told with its number. */
function pulledAt({ course }: OptionToWord, { plan, dinner }: Scene): string {
  const celsius = course?.pullCelsius;
  return celsius === undefined || !plan || Math.abs(celsius - plan.pullCelsius) < 1
    ? 'pulled as planned'
    : `pulled at ${degrees(celsius, dinner.units).text}`;
}

/** The dishes that come out for it. */
const takenOut = ({ takesOut = [] }: Pick<OptionToWord, 'takesOut'>, { dinner }: Scene): string =>
  list(
    [...new Set(takesOut.map(({ step }) => step.split('.')[0] ?? step))].map(
      (dish) => say`${dishTitle(dinner, dish)}`,
    ),
  ).text;

export function optionTitle(option: OptionToWord, scene: Scene): string {
  const heat =
    option.ovenCelsius === undefined
      ? ''
      : ovenDegrees(option.ovenCelsius, scene.dinner.units).text;
  switch (option.kind) {
    case 'lower-oven': {
      const out = takenOut(option, scene);
      return out === ''
        ? `oven down to ${heat} now, pulled later`
        : `${out} out, oven down to ${heat} now; back in while the roast rests`;
    }
    case 'raise-oven':
      return `oven up to ${heat} now`;
    case 'pull-and-hold':
      return scene.stage === 'rest' || scene.stage === 'hold'
        ? `back in a ${heat} oven to hold, tented`
        : `${pulledAt(option, scene)}, then held at ${heat}`;
    case 'rest-longer':
      return `a longer rest, ${duration(option.restMinutes).text} under the tent`;
    case 'carry-on':
      if (scene.stage === 'rest' || scene.stage === 'hold')
        return `a rest of ${duration(option.restMinutes).text}`;
      if (option.course?.rest === 'low-oven')
        return `held as agreed, ${duration(option.restMinutes).text}`;
      return option.restMinutes > 45
        ? `oven as it is, ${pulledAt(option, scene)}, and a rest of ${duration(option.restMinutes).text}`
        : 'oven as it is';
    case 'skip-rest':
      return 'hardly any rest';
    case 'start-later':
      return 'a later start';
    case 'skip-steps':
      return `leave out what can be: ${(option.skips ?? []).map((id) => titleOf(scene.dinner, id)).join(', ')}`;
    case 'drop-dish':
      return `no ${dishTitle(scene.dinner, option.drops ?? '')}`;
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
  const late = [...new Set((option.without ?? []).map((id) => id.split('.')[0] ?? id))];
  if (late.length > 0)
    parts.push(
      `too late for the table: ${late.map((id) => dishTitle(scene.dinner, id)).join(', ')}`,
    );
  switch (option.kind) {
    case 'lower-oven':
      parts.push(
        option.takesOut === undefined
          ? 'sides that want a hot oven go in during the rest'
          : 'paler until they have had the hot oven again',
      );
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

/** Aloud, an offer shares its breath with the words that led to it, and with a caution where it means to hold. */
const offerSeconds = { usual: 8.6, withCaution: 5.2 };

const numbers = ['One', 'Two', 'Three'];

/**
 * The options told: the first is on already. Aloud in few words: as many of them as there is breath for,
 * the rest for whoever asks.
 */
export function offer(options: readonly Option[], scene: Scene): Spoken {
  const [first, ...others] = options;
  if (!first) return silent;
  const { dinner } = scene;
  const told = (option: Option): Spoken => ({
    text: say`${aloud(option.title)}: table ${clock(option.servingAt, dinner)}, ${degrees(option.coreAtServingCelsius.p50, dinner.units)} at the knife`
      .text,
    speech: [titleAloud(option, scene), lateAloud(option, scene), donenessAloud(option, scene)]
      .filter((part) => part !== '')
      .join(', '),
  });
  const lines = [
    leavesOut(first) ? say`One: ${told(first)}.` : say`I take one, ${told(first)}.`,
    ...others.map((option) => say`${numbers[option.n - 1] ?? String(option.n)}: ${told(option)}.`),
  ];
  const change =
    others.length > 0 || leavesOut(first)
      ? say`Say a number to ${leavesOut(first) ? 'take' : 'change'} it.`
      : silent;
  const written = sentences([...lines, change]).text;
  const caution = first.kind === 'pull-and-hold' && !dinner.cautioned.has('hold');
  const most = caution ? offerSeconds.withCaution : offerSeconds.usual;
  const all = sentences([...lines, change]).speech;
  if (secondsAloud(all) <= most) return { text: written, speech: all };
  const fitting = lines.filter(
    (_, index) =>
      index === 0 ||
      secondsAloud(sentences([...lines.slice(0, index + 1), askFor(others.length)]).speech) <= most,
  );
  return {
    text: written,
    speech: sentences([...fitting, askFor(lines.length - fitting.length)]).speech,
  };
}

const askFor = (more: number): Spoken =>
  more === 0 ? say`Say a number.` : say`Or ask for my options.`;

/** All of them aloud, for whoever asks. */
export function offerAsked(options: readonly Option[], scene: Scene): Spoken {
  const { text } = offer(options, scene);
  const lines = options.map((option, index) => {
    const told = [
      titleAloud(option, scene),
      lateAloud(option, scene),
      donenessAloud(option, scene),
      say`${degrees(option.coreAtServingCelsius.p50, scene.dinner.units)} at the knife`.speech,
    ].filter((part) => part !== '');
    return `${index === 0 && !leavesOut(option) ? 'I take one,' : `${numbers[option.n - 1] ?? String(option.n)}:`} ${told.join(', ')}.`;
  });
  return {
    text,
    speech: [...lines, options.length > 1 ? 'Say a number to change it.' : ''].join(' ').trim(),
  };
}

/** What an option does, in as few words as an ear needs. */
export function titleAloud(option: Option, scene: Scene): string {
  // A pull moved for the hold's sake has its number in the title too: the oven's is the last.
  const heat = aloud(option.title.match(/\d+ °[FC]/g)?.at(-1) ?? '').speech;
  switch (option.kind) {
    case 'lower-oven': {
      const out = takenOut(option, scene);
      return out === '' ? `oven down to ${heat}` : `${out} out, oven down to ${heat}`;
    }
    case 'raise-oven':
      return `oven up to ${heat}`;
    case 'pull-and-hold':
      return scene.stage === 'rest' || scene.stage === 'hold'
        ? `back in to hold at ${heat}`
        : `held at ${heat} after the pull`;
    case 'rest-longer':
      return 'a longer rest';
    case 'carry-on':
      return 'oven as it is';
    case 'skip-steps':
      return 'leave out what is for looks';
    default:
      return aloud(option.title).speech;
  }
}

function lateAloud(option: Option, { dinner, plan }: Scene): string {
  const wanted = dinner.servingAt ?? plan?.serving.wantedAt ?? option.servingAt;
  return minutesBetween(wanted, option.servingAt) > offMinutes
    ? say`dinner at ${clock(option.servingAt, dinner)}`.speech
    : '';
}

/** Empty where the core comes out as wanted. */
export function donenessAloud({ coreAtServingCelsius }: Option, { dinner }: Scene): string {
  const off = coreAtServingCelsius.p50 - (dinner.target?.serveCelsius ?? coreAtServingCelsius.p50);
  return Math.abs(off) <= offKelvin ? '' : `${off > 0 ? 'more' : 'less'} done`;
}
