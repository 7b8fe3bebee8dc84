/** What is said unasked. */
import { assertNever } from '../../base/assert.ts';
import type { AnnouncementKind } from '../../kitchen/facts.ts';
import type { Scene } from '../scene.ts';
import { capital, type Spoken, say, sentences, silent } from '../spoken.ts';
import { callWords, cautionWords, titleOf } from './steps.ts';
import { clock, degrees, duration, ovenDegrees } from './words.ts';

/** What a call is about; the same shape as the planner's, which this room may not import. */
export interface CallToWord {
  kind: AnnouncementKind;
  step?: string | undefined;
  repeat: number;
  presumes: readonly { step: string }[];
  about?:
    | { what: 'oven'; celsius: number; why: string }
    | { what: 'timer'; label?: string | undefined }
    | { what: 'watch'; celsius: number }
    | { what: 'late'; likelyAt: number; minutes: number }
    | { what: 'out-of-fridge'; hours: number }
    | { what: 'ready-in'; minutes: number }
    | undefined;
}

const readyWords: Partial<Record<string, (scene: Scene, minutes: Spoken) => Spoken>> = {
  'roast-in': (_, minutes) => say`The roast goes in in ${minutes}. Seasoned and on its pan?`,
  pull: (scene, minutes) =>
    say`The pull is likely in ${minutes}, at ${degrees(scene.plan?.pullCelsius ?? 50, scene.dinner.units)}. Board and foil ready, and start nothing new.`,
};

/** The sentence of one call. */
export function wordCall(call: CallToWord, scene: Scene): Spoken {
  const again = call.repeat > 0;
  const { dinner, plan } = scene;
  switch (call.kind) {
    case 'get-ready': {
      const minutes = duration(call.about?.what === 'ready-in' ? call.about.minutes : 10);
      const special = readyWords[call.step ?? '']?.(scene, minutes);
      return special ?? say`In ${minutes}: ${titleOf(dinner, call.step ?? '')}. Get it ready now.`;
    }
    case 'step-due':
    case 'side-in': {
      const words = callWords(call.step ?? '', scene);
      return again
        ? sentences([say`Once more:`, words])
        : sentences([
            words,
            call.kind === 'side-in' ? silent : cautionWords(call.step ?? '', scene),
          ]);
    }
    case 'oven-change':
      return ovenCall(call, scene);
    case 'check-due':
      return sentences([
        callWords('check', scene),
        plan ? say`The pull is at ${degrees(plan.pullCelsius, dinner.units)}.` : silent,
      ]);
    case 'pull':
      return again
        ? say`Is it out? Pull the roast now, at ${degrees(plan?.pullCelsius ?? 50, dinner.units)}, and tell me when it is out.`
        : sentences([
            callWords('pull', scene),
            say`Take a reading if you can; tell me when it is out.`,
          ]);
    case 'rest-over':
      return say`The rest is nearly over. Strings off, warm plates and the carving knife out.`;
    case 'carve':
      return sentences([callWords('carve', scene), cautionWords('carve', scene)]);
    case 'serve':
      return callWords('serve', scene);
    case 'put-away':
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
      return call.about?.what === 'late'
        ? say`Dinner looks like ${clock(call.about.likelyAt, dinner)} now, ${duration(call.about.minutes)} late. Ask for my options if that will not do.`
        : silent;
    case 'plan-changed':
      return plan
        ? say`The plan has moved: dinner at ${clock(plan.serving.likelyAt, dinner)}.`
        : silent;
    case 'caution':
      return say`The roast has been out of the fridge two hours. The USDA's limit for raw meat is two hours, one in a hot room: into the oven or back into the fridge.`;
    default:
      return assertNever(call.kind);
  }
}

function ovenCall(call: CallToWord, scene: Scene): Spoken {
  const { dinner } = scene;
  if (call.about?.what === 'oven') {
    const heat = ovenDegrees(call.about.celsius, dinner.units);
    if (call.about.why === 'hold')
      return say`Oven to ${heat}, and the roast back in to hold, tented. Above one hundred forty degrees inside it keeps, says the USDA.`;
    if (call.about.why === 'sides')
      return say`Oven to ${heat} for what goes in while the roast rests.`;
    return call.repeat > 0
      ? say`Is the oven at ${heat} yet? Turn it there and tell me.`
      : say`Turn the oven to ${heat} now, and tell me when it is.`;
  }
  const words = callWords(call.step ?? '', scene);
  if (call.repeat > 0) return sentences([say`Have you?`, words]);
  const tell = call.step === 'oven-down' ? say`Tell me when it is down.` : silent;
  return sentences([words, tell]);
}
