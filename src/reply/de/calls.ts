/** What is said unasked, in German. */
import type { CallToWord } from '../en/calls.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say } from '../spoken.ts';
import { stepName } from './names.ts';
import { clock, degrees, duration, ovenDegrees } from './words.ts';

/** The oven is lit or turned down by the plan: to what it should stand at now. */
function ovenStep(step: string | undefined, { dinner, plan, now }: Scene): Spoken {
  const why =
    step === 'oven-on' ? /^(preheat|sear)$/ : step === 'oven-up' ? /^finish-sear$/ : /^roast$/;
  const move = plan?.oven
    .filter((one) => why.test(one.why))
    .sort((a, b) => Math.abs(a.at - now) - Math.abs(b.at - now))[0];
  return move
    ? say`Ofen jetzt auf ${ovenDegrees(move.celsius, dinner.units)}.`
    : say`Jetzt: ${stepName(step ?? '', dinner)}.`;
}

export function wordCall(call: CallToWord, scene: Scene): Spoken {
  const { dinner, plan } = scene;
  const { about } = call;
  const step = stepName(call.step ?? '', dinner);
  switch (call.kind) {
    case 'get-ready':
      return say`In ${duration(about?.what === 'ready-in' ? about.minutes : 10)}: ${step}.`;
    case 'oven-change':
      return about?.what === 'oven'
        ? about.celsius <= 0
          ? say`Ofen ausschalten.`
          : say`Ofen jetzt auf ${ovenDegrees(about.celsius, dinner.units)}.`
        : ovenStep(call.step, scene);
    case 'check-due':
      return say`Bitte die Kerntemperatur messen, in der Mitte, weg vom Knochen.`;
    case 'pull':
      return plan
        ? say`Messen und herausnehmen: bei ${degrees(plan.pullCelsius, dinner.units)} im Kern.`
        : say`Jetzt: ${step}.`;
    case 'rest-over':
      return say`Die Ruhezeit ist um.`;
    case 'carve':
      return say`Jetzt aufschneiden.`;
    case 'serve':
      return say`Essen ist fertig. Ofen und Herd aus, falls nichts mehr darin oder darauf steht.`;
    case 'put-away':
      return say`Reste in den Kühlschrank, binnen zwei Stunden nach dem Herausnehmen, sagt das USDA.`;
    case 'timer':
      return about?.what === 'timer' && about.label
        ? say`Timer ${about.label}: um.`
        : say`Der Timer ist um.`;
    case 'watch':
      return about?.what === 'watch'
        ? say`${degrees(about.celsius, dinner.units)} sollten jetzt erreicht sein. Bitte messen.`
        : say`Bitte messen.`;
    case 'running-late':
    case 'plan-changed':
      return plan
        ? say`Neuer Plan: Essen um ${clock(plan.serving.likelyAt, dinner)}.`
        : say`Der Plan ändert sich.`;
    case 'caution':
      return say`Der Braten ist seit zwei Stunden aus dem Kühlschrank, die Grenze des USDA für rohes Fleisch: in den Ofen oder zurück in den Kühlschrank.`;
    case 'side-in':
    case 'step-due':
      return say`Jetzt: ${step}.`;
  }
}
