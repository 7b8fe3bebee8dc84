/** What is said unasked. */

import { assertNever } from '../../base/assert.ts';
import { minutesBetween } from '../../base/time.ts';
import { lastLookAt, mayCallPull } from '../../kitchen/core-told.ts';
import type { AnnouncementKind } from '../../kitchen/facts.ts';
import { inOneBreath } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { carvingMap } from './carving.ts';
import { heatOffWords, heldUpWords, roastSeenIn } from './progress.ts';
import { shortAtKnifeWords } from './short-core.ts';
import { callWords, cautionWords, fill, findStep, forHands, pullShown, titleOf } from './steps.ts';
import { servingWords } from './table.ts';
import { authorityDegrees, clock, degrees, duration, ovenDegrees } from './words.ts';

/** What a call is about; the same shape as the planner's, which this room may not import. */
export interface CallToWord {
  kind: AnnouncementKind;
  step?: string | undefined;
  repeat: number;
  presumes: readonly { step: string }[];
  about?:
    | { what: 'oven'; celsius: number; why: string; second?: boolean }
    | { what: 'timer'; label?: string | undefined }
    | { what: 'watch'; celsius: number }
    | { what: 'late'; likelyAt: number; minutes: number }
    | { what: 'out-of-fridge'; hours: number }
    | { what: 'moved'; moves: readonly { step: string; at: number; wasAt: number }[] }
    | { what: 'ready-in'; minutes: number }
    | undefined;
}

/** The first of two beats: what comes, in how many minutes, and what to have at hand for it. */
function readyWords(call: CallToWord, scene: Scene): Spoken {
  const { dinner, plan } = scene;
  const minutes = duration(call.about?.what === 'ready-in' ? call.about.minutes : 10);
  switch (call.step) {
    case 'roast-in':
      return say`Roast into the oven in ${minutes}. Is it seasoned, and on its pan?`;
    case 'oven-on':
      return say`Oven on in ${minutes}. Take out what is stored in it, and set the rack.`;
    case 'oven-down':
      return say`In ${minutes} the oven goes down. Stay near it.`;
    case 'oven-up':
      return say`In ${minutes} the oven goes up for the sear. Pour the fat off the pan first.`;
    case 'sear':
      return say`In ${minutes}, the roast goes back in to brown. Fan on, cloths dry.`;
    case 'guests-arrive':
      return say`Guests in ${minutes}. Sink empty, board clear, hands washed.`;
    case 'pull':
      return say`The pull is likely in ${minutes}, at ${plan ? pullShown(plan, dinner) : 'its temperature'}. Board and foil out, and begin nothing new.`;
    default: {
      const ready = findStep(dinner, call.step ?? '')?.step.ready;
      return sentences([
        say`In ${minutes}: ${titleOf(dinner, call.step ?? '')}.`,
        ready === undefined ? say`Get things ready.` : fill(ready, scene),
      ]);
    }
  }
}

/** The sentence of one call. */
export function wordCall(call: CallToWord, scene: Scene): Spoken {
  const again = call.repeat > 0;
  const { dinner } = scene;
  switch (call.kind) {
    case 'get-ready':
      return forHands(readyWords(call, scene), call.step, scene);
    case 'step-due':
    case 'side-in': {
      const words = ovenNamed(call.step, scene) ?? callWords(call.step ?? '', scene);
      return again
        ? forHands(say`Once more: ${lower(words)}`, call.step, scene)
        : sentences([
            forHands(words, call.step, scene),
            call.kind === 'side-in' ? silent : cautionWords(call.step ?? '', scene),
          ]);
    }
    case 'oven-change':
      return ovenCall(call, scene);
    case 'check-due':
      return checkWords(scene);
    case 'pull':
      return pullCall(scene, again);
    case 'rest-over':
      return sentences([
        say`The rest is nearly over. Warm plates and the carving knife out.`,
        carvingMap(scene),
      ]);
    case 'carve':
      return carveCall(scene);
    case 'serve':
      return inOneBreath([
        { ...callWords('serve', scene), must: true },
        { ...servingWords(scene), must: true },
        heatOffWords(scene),
      ]);
    case 'put-away':
      if (again) return say`Are the leftovers in the fridge yet? Within two hours, says the USDA.`;
      return sentences([
        callWords('put-away', scene),
        say`Within two hours of leaving the heat, says the USDA.`,
      ]);
    case 'timer':
      return call.about?.what === 'timer' && call.about.label
        ? capital(say`${call.about.label}: the time is up.`)
        : say`Your timer is up.`;
    case 'watch':
      return call.about?.what === 'watch'
        ? say`It should read about ${degrees(call.about.celsius, dinner.units)} now. Take a look.`
        : silent;
    case 'running-late':
      return call.about?.what === 'late' ? lateWords(call.about, scene) : silent;
    case 'plan-changed':
      return changedWords(call, scene);
    case 'caution':
      return say`The roast has been out of the fridge two hours, the USDA's limit for raw meat, one in a hot room: into the oven, or back into the fridge.`;
    default:
      return assertNever(call.kind);
  }
}

/** A middle that falls short goes before the knife, and is all that is said aloud. */
function carveCall(scene: Scene): Spoken {
  const short = shortAtKnifeWords(scene);
  const carve = sentences([
    forHands(callWords('carve', scene), 'carve', scene),
    cautionWords('carve', scene),
  ]);
  return short === silent ? carve : sentences([short, forEyes(carve)]);
}

/** A table later than it was told, and what it waits for where that is a dish. */
function lateWords(
  { likelyAt, minutes }: { likelyAt: number; minutes: number },
  scene: Scene,
): Spoken {
  const heldUp = heldUpWords(scene);
  const late = say`Dinner looks like ${clock(likelyAt, scene.dinner)} now, ${duration(minutes)} late.`;
  return sentences([
    late,
    heldUp === silent ? say`Ask for my options if that will not do.` : heldUp,
  ]);
}
/** A dish that goes in where its card does not expect it is called with its oven. */
const ovenNamed = (step: string | undefined, { plan }: Scene): Spoken | undefined => {
  const planned = plan?.steps.find((one) => one.id === step);
  return planned?.oven?.index === 1 ? say`Into the second oven: ${planned.title}.` : undefined;
};

/** What stands elsewhere than it was told, and whether the table does too. */
function changedWords({ about }: CallToWord, { dinner, plan }: Scene): Spoken {
  if (about?.what !== 'moved' || !plan) return silent;
  const moves = about.moves.map(
    ({ step, at, wasAt }) =>
      say`${titleOf(dinner, step)} at ${clock(at, dinner)}, not ${clock(wasAt, dinner)}`,
  );
  const table = clock(plan.serving.likelyAt, dinner);
  const stays = Math.abs(plan.serving.likelyAt - (dinner.told?.servingAt ?? 0)) < 3 * 60_000;
  return sentences([
    say`The plan has moved: ${list(moves)}.`,
    stays ? say`Dinner stays at ${table}.` : say`Dinner at ${table} now.`,
  ]);
}

/** A move of the oven that nobody answered is asked for in other words each time. */
const askedAgain: Partial<Record<string, readonly string[]>> = {
  'oven-on': ['Is the oven on?'],
  'oven-down': [
    'Is the oven down?',
    'As far as I know the oven is still hot.',
    'Say "it is down", or do it now.',
  ],
  'oven-up': ['Is the oven up?', 'As far as I know the oven is still low.'],
};

/** So near the pull a tip off the middle costs the most, and is looked for anew. */
const nearThePullMinutes = 30;

/** The first look is told in full, the ones after it in few words, one that was not answered in fewer. */
function checkWords(scene: Scene): Spoken {
  const { dinner, plan, now } = scene;
  const last = dinner.readings.at(-1)?.happenedAt ?? Number.NEGATIVE_INFINITY;
  const looked = plan !== undefined && last >= plan.roastInAt;
  const asked = dinner.announced.some((one) => one.kind === 'check-due' && one.at > last);
  const near = plan !== undefined && minutesBetween(now, plan.pullAt.p50) < nearThePullMinutes;
  const twoSpots = say`Try two spots; the lower counts.`;
  return sentences([
    asked
      ? sentences([
          say`A reading of the core, as soon as your hands are free.`,
          looked && !near ? silent : twoSpots,
        ])
      : !looked
        ? callWords('check', scene)
        : near
          ? sentences([say`Another reading, please.`, twoSpots])
          : say`Another reading, please, in the same spot.`,
    plan ? say`The pull is at ${pullShown(plan, dinner)}.` : silent,
  ]);
}

/** The forecast calls the pull; where there is a thermometer, it has the last word. */
function pullCall(scene: Scene, again: boolean): Spoken {
  const { dinner, plan } = scene;
  const at = plan ? pullShown(plan, dinner) : 'its temperature';
  if (dinner.lacks.some((one) => one.includes('thermometer')))
    return sentences([
      again ? say`Is it out?` : silent,
      callWords('pull', scene),
      say`Tell me when it is out.`,
    ]);
  const seen = roastSeenIn(scene);
  const look = seen && lastLookAt(seen);
  const atPull =
    plan && look && look.celsius - (dinner.thermometerOffsetKelvin ?? 0) >= plan.pullCelsius;
  // The answer to a number of the cook's own has called it already.
  if (atPull && (again || mayCallPull(look, seen)))
    return say`Is the roast out? It read ${degrees(look.celsius, dinner.units)}, and the pull is at ${at}. Tell me when it is on the board.`;
  if (again) return say`Is it out? At ${at} or more it comes out now; if it reads less, tell me.`;
  return sentences([
    say`It should be at the pull now, ${at}. Try two spots; if the lower is there, out with it, onto the board.`,
    say`Tell me what it reads, or that it is out.`,
  ]);
}

function ovenCall(call: CallToWord, scene: Scene): Spoken {
  const { dinner } = scene;
  if (call.about?.what === 'oven') {
    const heat = ovenDegrees(call.about.celsius, dinner.units);
    if (call.about.why === 'hold')
      return say`Oven to ${heat}, door ajar. Once it is down, shut it with the roast back in to hold, tented, its middle at ${authorityDegrees(140, dinner.units)} or more, says the USDA.`;
    if (call.about.second) return say`The second oven to ${heat}, for what goes in it.`;
    if (call.about.why === 'sides')
      return say`Oven to ${heat} for what goes in while the roast rests.`;
    return call.repeat > 0
      ? say`Is the oven at ${heat} yet? Turn it there and tell me.`
      : say`Turn the oven to ${heat} now, and tell me when it is.`;
  }
  const words = callWords(call.step ?? '', scene);
  if (call.repeat > 0) {
    const asked = askedAgain[call.step ?? ''] ?? [];
    const again = asked[call.repeat - 1] ?? asked.at(-1);
    return again === undefined
      ? say`Once more: ${lower(words)}`
      : sentences([say`${again}`, words]);
  }
  const tell = call.step === 'oven-down' ? say`Tell me when it is down.` : silent;
  return sentences([words, tell]);
}
