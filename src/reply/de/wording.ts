/** Each outcome in German, short; the first sentence carries what the cook needs. */
import { minutesBetween } from '../../base/time.ts';
import { temperatureIn } from '../../base/units.ts';
import type { Question } from '../../kitchen/facts.ts';
import type { Heard } from '../../kitchen/heard.ts';
import type { Outcome, OutcomeKey, OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { emergencyReply } from './emergency.ts';
import { dishName, stepName } from './names.ts';
import { clock, degrees, duration, ovenDegrees, weight } from './words.ts';

const doneness: Record<string, string> = {
  rare: 'Blutig',
  'medium-rare': 'Medium rare',
  medium: 'Medium',
  'medium-well': 'Halb durch',
  'well-done': 'Durchgebraten',
};

/** When the roast comes out and at what: while it is still to come. */
function pullWords({ plan, dinner }: Scene): Spoken {
  const pull = plan?.steps.find((step) => step.id === 'pull');
  if (!plan || !pull || pull.state === 'done') return silent;
  return say`Heraus bei ${degrees(plan.pullCelsius, dinner.units)} im Kern, voraussichtlich um ${clock(pull.startAt, dinner)}.`;
}

const tableWords = ({ plan, dinner }: Scene): Spoken =>
  plan ? say`Essen um ${clock(plan.serving.likelyAt, dinner)}.` : silent;

function roastWords({ dinner }: Scene): Spoken {
  const { roast, units } = dinner;
  const bones = roast.bones === undefined ? silent : say`, ${roast.bones} Knochen`;
  const kilograms =
    roast.kilograms === undefined ? silent : say`, ${weight(roast.kilograms, units)}`;
  return say`${dishName(roast.cut ?? 'Braten')}${kilograms}${bones}.`;
}

/** The whole day, told once all four things are known. */
export function openingWords(scene: Scene): Spoken {
  const { dinner, plan } = scene;
  const target = dinner.target
    ? say`${doneness[dinner.target.doneness ?? ''] ?? 'Gar'}: ${degrees(dinner.target.serveCelsius, dinner.units)} am Tisch.`
    : silent;
  return sentences([
    roastWords(scene),
    target,
    plan
      ? say`Der Braten kommt um ${clock(plan.roastInAt, dinner)} in den Ofen, Essen um ${clock(plan.serving.likelyAt, dinner)} für ${dinner.guests ?? 0}.`
      : silent,
  ]);
}

export function questionWords(question: Question, scene: Scene): Spoken {
  const { dinner } = scene;
  const pending = question.pending?.find(
    (fact): fact is { celsius: number } =>
      typeof fact === 'object' && fact !== null && 'celsius' in fact,
  );
  const value = pending ? degrees(pending.celsius, dinner.units) : say`Die Zahl`;
  switch (question.kind) {
    case 'roast':
      return say`Was für ein Braten ist es, und wie schwer?`;
    case 'serving-time':
      return say`Wann soll gegessen werden?`;
    case 'serving-past':
      return say`Diese Zeit ist schon vorbei. Ist morgen gemeint?`;
    case 'guests':
      return say`Für wie viele?`;
    case 'doneness':
      return say`Wie soll er werden: blutig, medium oder durch?`;
    case 'reading-improbable':
      if (question.text === 'not-in')
        return say`${value}, und der Braten ist meines Wissens noch nicht im Ofen. Ist er schon drin?`;
      return say`${value} im Kern? Das wäre überraschend. Stimmt es?`;
    case 'reading-contradicts':
      return say`${value}? Vorhin war es mehr. Stimmt es?`;
    case 'reading-or-oven':
      return say`${value} im Braten, oder im Ofen?`;
    case 'choice':
      return say`Welche Möglichkeit soll es sein?`;
    case 'start-over':
      return say`Wirklich alles von vorn?`;
  }
}

type Word<K extends OutcomeKey> = (outcome: OutcomeOf<K>, scene: Scene) => Spoken;

const wording: { [K in OutcomeKey]: Word<K> } = {
  described: (_, scene) => roastWords(scene),
  'serving-set': ({ servingAt }, { dinner }) => say`Essen um ${clock(servingAt, dinner)}.`,
  'serving-moved': ({ servingAt }, scene) =>
    sentences([say`Essen um ${clock(servingAt, scene.dinner)}.`, optionsWords(scene)]),
  'guests-set': ({ count }) => say`${count} am Tisch.`,
  'guests-arrived': (_, scene) => sentences([say`Gut.`, tableWords(scene)]),
  'guest-noted': ({ who, need, value }) =>
    need === 'vulnerable'
      ? say`Notiert${who ? say`: ${who}` : silent}. Diese Scheiben werden nachgegart; oder sag: den ganzen Braten durch.`
      : say`Notiert${who ? say`: ${who}` : silent}${value ? say`, ${value}` : silent}. Prüfe bei jeder Beilage die Zutaten.`,
  'doneness-set': ({ doneness: word, serveCelsius }, { dinner }) =>
    say`${doneness[word ?? ''] ?? 'So'}, ${degrees(serveCelsius, dinner.units)} am Tisch.`,
  'method-set': ({ method }) =>
    method === 'sear-last'
      ? say`Erst sanft garen, am Ende bräunen.`
      : method === 'steady'
        ? say`Gleichmäßige Hitze, ohne Bräunen.`
        : say`Erst bräunen, dann sanft garen.`,
  'dish-added': ({ dish }) => say`${dishName(dish)}, notiert.`,
  'dish-uncarded': ({ dish }) =>
    say`Für ${dishName(dish)} habe ich keine Karte, also plane ich es nicht: stell einen Timer, wenn es hineingeht, oder schreib eine Karte.`,
  'dish-unknown': ({ dish }) => say`Für ${dishName(dish)} habe ich keine Karte.`,
  'dish-unnamed': ({ dish }) => say`Dann ohne ${dishName(dish)}; sag, wenn doch.`,
  'dish-dropped': ({ dish }) => say`Ohne ${dishName(dish)}.`,
  'dish-absent': ({ dish }) => say`Ohne ${dishName(dish)}: das stand nicht auf dem Menü.`,
  'units-set': (_, { dinner }) =>
    dinner.units.temperature === 'C' ? say`Ab jetzt in Celsius.` : say`Ab jetzt in Fahrenheit.`,
  lacked: ({ thing }) => say`Ohne ${thing}: notiert.`,
  'pace-told': (_, scene) =>
    sentences([say`Notiert: ich rechne mit deinem Tempo.`, tableWords(scene)]),
  'clock-set': ({ clock: which, clockAt }, { dinner }) =>
    say`${which === 'first-course' ? 'Vorspeise' : 'Gäste'} um ${clock(clockAt, dinner)}.`,
  'setup-noted': () => say`Notiert.`,
  'hands-added': ({ who }) => say`${who} hilft mit: notiert.`,
  'cook-away': ({ until }, { dinner }) => say`Bis ${clock(until, dinner)} also.`,
  'reading-noted': ({ celsius }, scene) =>
    sentences([
      say`${degrees(celsius, scene.dinner.units)} im Kern.`,
      pullWords(scene),
      optionsWords(scene),
    ]),
  'thermometer-checked': () => say`Das Thermometer ist geprüft.`,
  'oven-noted': ({ celsius, down }, scene) =>
    celsius <= 0
      ? say`Ofen aus.`
      : sentences([
          say`Ofen auf ${ovenDegrees(celsius, scene.dinner.units)}.`,
          down ? pullWords(scene) : silent,
        ]),
  'oven-mode': ({ fan }) => (fan ? say`Umluft, notiert.` : say`Ohne Umluft, notiert.`),
  'oven-bias': ({ kelvin }) =>
    say`Der Ofen ist ${kelvin >= 0 ? 'heißer' : 'kühler'} als angezeigt: ich rechne damit.`,
  'thermometer-bias': ({ kelvin }) =>
    say`Das Thermometer zeigt zu ${kelvin >= 0 ? 'viel' : 'wenig'}: ich rechne damit.`,
  'kitchen-forgotten': () => say`Vergessen: ich nehme wieder, was angezeigt wird.`,
  'oven-hot': () => say`Gut, der Ofen ist heiß.`,
  acknowledged: () => say`Gut.`,
  'step-done': ({ step }, { dinner }) => say`Erledigt: ${stepName(step, dinner)}.`,
  'step-started': ({ step }, { dinner }) => say`Notiert: ${stepName(step, dinner)}.`,
  'step-moved': ({ step, happenedAt }, { dinner }) =>
    say`${stepName(step, dinner)}: um ${clock(happenedAt, dinner)}, notiert.`,
  'step-not-done': ({ step }, { dinner }) => say`Noch nicht: ${stepName(step, dinner)}. Gut.`,
  'step-skipped': ({ step }, { dinner }) => say`Übersprungen: ${stepName(step, dinner)}.`,
  'step-needed': ({ step }, { dinner }) => say`Das geht nicht ohne: ${stepName(step, dinner)}.`,
  'nothing-open': () => say`Gerade ist nichts offen.`,
  'roast-out': (_, scene) => sentences([say`Der Braten ist draußen und ruht.`, tableWords(scene)]),
  trouble: ({ trouble }, scene) =>
    trouble === 'power-out' || trouble === 'oven-out'
      ? sentences([say`Ofentür zu lassen: er hält die Wärme. Ich rechne neu.`, pullWords(scene)])
      : say`Notiert. Sag mir die Kerntemperatur, dann sehen wir weiter.`,
  emergency: ({ kind }) => emergencyReply(kind),
  'thing-had': ({ thing }) => say`${thing} ist da: notiert.`,
  'public-noted': () =>
    say`Für die Öffentlichkeit gelten die Regeln eurer Behörde. Frag dort nach.`,
  'running-behind': (_, scene) => sentences([say`Keine Sorge.`, tableWords(scene)]),
  'timer-set': ({ minutes, label }) =>
    say`${duration(minutes)}${label ? say` für ${label}` : silent}, ich melde mich.`,
  'timer-cancelled': () => say`Timer gelöscht.`,
  'no-timer': () => say`Es läuft kein Timer.`,
  'watch-set': ({ celsius }, { dinner }) =>
    say`Ich sage Bescheid bei ${degrees(celsius, dinner.units)}, sobald du sie meldest oder ich sie erwarte.`,
  chosen: ({ option }, { dinner }) => say`Gut: Essen um ${clock(option.servingAt, dinner)}.`,
  'no-such-option': ({ count }) => say`Es gibt ${count} Möglichkeiten.`,
  'no-choice': () => say`Gerade gibt es nichts zu wählen.`,
  corrected: (_, scene) => sentences([say`Berichtigt.`, tableWords(scene)]),
  undone: ({ text }) => say`Zurückgenommen: „${text}“.`,
  'nothing-to-undo': () => say`Es gibt nichts zurückzunehmen.`,
  repeat: (_, { dinner }) => say`${dinner.lastReply?.text ?? 'Ich habe noch nichts gesagt.'}`,
  paused: () => say`Ich warte.`,
  resumed: () => say`Weiter.`,
  quieted: () => say`Ich bin still. Nur Ofen, Herausnehmen und Sicherheit melde ich noch.`,
  courtesy: () => say`Gern.`,
  help: () =>
    say`Sag mir, was passiert ist: „Der Braten ist drin“, „es hat 48 Grad“, „die Gäste kommen später“. Oder frag: „Was kommt als Nächstes?“`,
  affirmed: () => say`Gut.`,
  denied: () => say`Gut, dann nicht.`,
  'started-over': () => say`Neu. Was für ein Braten ist es?`,
  answer: ({ heard }, scene) => answerWords(heard, scene),
  asked: ({ question }, scene) => questionWords(question, scene),
  'bad-value': () => say`Das kann nicht stimmen. Sag es noch einmal?`,
  unrelated: () => say`Das überlasse ich euch.`,
  unclear: ({ heard, again }) =>
    again
      ? say`Sag zum Beispiel: „es hat 48 Grad“, „die Kartoffeln sind drin“ oder „was kommt als Nächstes?“`
      : heard.number !== undefined || heard.temperature !== undefined
        ? say`${String(heard.number ?? heard.temperature)}: im Braten, im Ofen, oder Minuten?`
        : say`Das habe ich nicht verstanden.`,
};

function optionsWords({ options, dinner }: Scene): Spoken {
  if (!options || options.length < 2) return silent;
  return sentences(
    options.map(
      (one) =>
        say`${one.n}: Essen um ${clock(one.servingAt, dinner)}, ${degrees(one.coreAtServingCelsius.p50, dinner.units)} am Tisch.`,
    ),
  );
}

function nextWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  const next = plan?.steps.find((step) => step.state === 'planned' || step.state === 'due');
  if (!next) return say`Gerade nichts.`;
  return next.startAt <= now + 60_000
    ? say`Jetzt: ${stepName(next.id, dinner)}.`
    : say`Um ${clock(next.startAt, dinner)}: ${stepName(next.id, dinner)}.`;
}

function answerWords(heard: Heard, scene: Scene): Spoken {
  const { dinner, plan, now } = scene;
  switch (heard.intent) {
    case 'ask-next':
      return nextWords(scene);
    case 'ask-status':
      return sentences([pullWords(scene), tableWords(scene)]);
    case 'ask-time-left':
      return plan
        ? say`Noch ${duration(minutesBetween(now, plan.serving.likelyAt))} bis zum Essen, um ${clock(plan.serving.likelyAt, dinner)}.`
        : say`Das weiß ich, wenn Braten und Uhrzeit feststehen.`;
    case 'ask-plan':
      return plan
        ? sentences(
            plan.steps
              .filter((step) => step.state === 'planned' || step.state === 'due')
              .slice(0, 8)
              .map((step) => say`${clock(step.startAt, dinner)} ${stepName(step.id, dinner)}.`),
          )
        : say`Noch gibt es keinen Plan.`;
    case 'ask-temperature':
      return plan
        ? say`Heraus bei ${degrees(plan.pullCelsius, dinner.units)}; am Tisch ${degrees(dinner.target?.serveCelsius ?? plan.pullCelsius, dinner.units)}.`
        : say`Medium sind ${Math.round(temperatureIn(60, dinner.units.temperature))} Grad am Tisch.`;
    case 'ask-safety':
      return say`Für ganze Stücke nennt das USDA 63 °C und drei Minuten Ruhe; darunter bleibt ein Risiko. Für Schwangere, Kleinkinder, Alte und Kranke: nichts Rosafarbenes. Warmes bleibt höchstens zwei Stunden stehen. Im Zweifel gilt der Rat eurer Behörde.`;
    case 'ask-guests':
      return say`${dinner.guests ?? 'Noch unbekannt wie viele'} am Tisch.`;
    default:
      return say`Darauf kann ich auf Deutsch noch nicht antworten.`;
  }
}

/** One outcome in German. */
export const wordOutcome = (outcome: Outcome, scene: Scene): Spoken =>
  (wording[outcome.key] as Word<OutcomeKey>)(outcome as OutcomeOf<OutcomeKey>, scene);
