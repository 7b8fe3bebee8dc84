/**
 * Emergencies in German: the first sentence is what to do. Usual first-aid cautions, from memory; 112
 * is the emergency number in the European Union and Switzerland. Trained help comes first.
 */
import type { EmergencyKind } from '../../kitchen/heard.ts';
import { type Spoken, say, sentences } from '../spoken.ts';

const firstAid: Record<EmergencyKind, Spoken> = {
  fire: say`Ofentür zu lassen und Ofen ausschalten. Kein Wasser auf brennendes Fett; einen Deckel auf die Pfanne. Wenn es nicht sofort ausgeht: alle hinaus und die 112 rufen.`,
  burn: say`Zwanzig Minuten unter kühles fließendes Wasser halten, Ringe ab, kein Eis, keine Butter. Ist sie groß, tief, voller Blasen oder im Gesicht: zum Arzt; im Zweifel 112.`,
  cut: say`Ein sauberes Tuch fest auf die Wunde drücken und hochhalten. Ist sie tief oder hört es nicht auf zu bluten: 112.`,
  fall: say`Liegen bleiben und prüfen, was weh tut. Nach einem Schlag auf Kopf oder Rücken, oder wenn Stehen nicht geht: nicht bewegen und 112 rufen.`,
  choking: say`Wer nicht husten oder sprechen kann: fünf kräftige Schläge zwischen die Schulterblätter, dann fünf Stöße in den Oberbauch, im Wechsel. Sofort 112 rufen lassen. Beim Baby Brustkorb statt Bauch.`,
  collapse: say`Sofort 112 rufen und prüfen, ob die Person atmet. Keine normale Atmung: fest und schnell auf die Mitte der Brust drücken. Atmet sie: stabile Seitenlage.`,
  reaction: say`Den Adrenalin-Pen sofort anwenden, wenn es einen gibt, und 112 rufen. Hinlegen, bei Atemnot sitzen, nicht allein lassen.`,
};

export const emergencyReply = (kind: EmergencyKind): Spoken =>
  sentences([
    firstAid[kind],
    kind === 'fire'
      ? say`Das Essen kann warten. Sag mir, wenn es aus ist und alle in Sicherheit sind.`
      : say`Wer kann übernehmen? Ich melde nur noch, was nicht warten kann, bis du wieder da bist.`,
  ]);
