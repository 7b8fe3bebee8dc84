/** German frames of the talk: emergencies, yes and no, corrections, timers, calls, questions. */
import { mealTime } from '../moment.ts';
import type { Frame, Match, Meaning } from '../recogniser.ts';
import { cutIn, dishesIn, stepVerbs } from './names.ts';
import { callWords, holds } from './words.ts';

const every = ['statement', 'question', 'negative', 'story', 'intention', 'request'] as const;

const minutesIn = (match: Match): number | undefined => {
  const quantity = match.quantityOfMark(match.marks('d')[0] ?? '');
  return quantity?.kind === 'duration' ? quantity.minutes : undefined;
};

const degreesIn = (match: Match): { temperature: number; unit?: 'F' | 'C' } | undefined => {
  const mark = match.marks('tn')[0];
  return mark ? match.withGroups({ x: `${mark} ` }).temperature('x') : undefined;
};

export const emergencyFrame: Frame = {
  name: 'emergency',
  moods: every,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (/ (film|gestern|damals|letztes|früher) /.test(line)) return undefined;
    if (
      / (feuer|flammen|fettbrand|brand) /.test(line) ||
      / (ofen|fett|pfanne|küche|handtuch|geschirrtuch|es) brennt /.test(line) ||
      / brennt (der|das|die|es) /.test(line)
    )
      return { intent: 'emergency', kind: 'fire' };
    if (
      / (verbrannt|verbrüht) /.test(line) &&
      / (mich|mir|hand|finger|arm|daumen|mein|meine) /.test(line)
    )
      return { intent: 'emergency', kind: 'burn' };
    if (
      / (geschnitten|blutet|blute|blut) /.test(line) &&
      / (mich|mir|finger|hand|daumen|es|ich) /.test(line) &&
      !/ (braten|fleisch|scheiben) /.test(line)
    )
      return { intent: 'emergency', kind: 'cut' };
    if (
      / (gestürzt|hingefallen|umgefallen|umgekippt) /.test(line) &&
      / (oma|opa|mama|papa|ich|mein|meine|er|sie|jemand|gast) /.test(line)
    )
      return { intent: 'emergency', kind: 'fall' };
    if (/ (erstickt|verschluckt|bekommt keine luft|kriegt keine luft) /.test(line))
      return { intent: 'emergency', kind: 'choking' };
    if (/ (bewusstlos|ohnmächtig|atmet nicht) /.test(line))
      return { intent: 'emergency', kind: 'collapse' };
    return undefined;
  },
};

const short: readonly (readonly [RegExp, Meaning])[] = [
  [
    /^(fang|fangen|nochmal|noch mal|alles|wir)? ?.*(von vorn|von vorne|neu anfangen|neu starten|neustart|ganz neu) /,
    { intent: 'start-over' },
  ],
  [
    / (rückgängig|nimm das zurück|vergiss das|streich das|zurücknehmen|das war falsch|ignorier das) /,
    { intent: 'undo' },
  ],
  [
    / (wiederhol|wiederhole|wiederholen|wie bitte|sag das (noch mal|nochmal)|noch mal bitte|nochmal bitte|was hast du gesagt|nicht verstanden|bitte nochmal|noch einmal) /,
    { intent: 'repeat' },
  ],
  [
    /^ (still|leise|ruhe|ruhig|psst|klappe|schweig) |(sei|bitte) (mal )?(still|leise|ruhig) | halt (den mund|die klappe) /,
    { intent: 'quiet' },
  ],
  [/^ (hilfe|was kannst du|wie funktioniert|was kann ich (sagen|fragen)) /, { intent: 'help' }],
  [
    / (warte|moment|augenblick|sekunde|kleinen moment|pause|einen moment|gleich) (mal |bitte |kurz )?$/,
    { intent: 'pause' },
  ],
  [
    /^ (weiter|mach weiter|ich bin wieder da|bin wieder da|es geht weiter|wir machen weiter|bin zurück) /,
    { intent: 'resume' },
  ],
  [
    /^ (danke|dankeschön|vielen dank|hallo|guten (tag|abend)|grüß gott|servus|tschüss|super|klasse|toll|prima|wunderbar|moin) /,
    { intent: 'courtesy' },
  ],
  [/^ guten /, { intent: 'courtesy' }],
];

export const shortFrame: Frame = {
  name: 'short',
  moods: every,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const asked =
      match.context.expecting === 'confirmation' || match.context.expecting === 'choice';
    const few = match.line.split(' ').length <= 5 && match.marks('ntcdw').length === 0;
    if (few && /^ (nein|nö|nee|ne|falsch|auf keinen fall|lieber nicht|stimmt nicht) /.test(line))
      return { intent: 'deny' };
    if (
      few &&
      /^ (ja|jawohl|jep|genau|richtig|stimmt|klar|gerne|passt|mach das|korrekt|natürlich|jo) /.test(
        line,
      )
    )
      return { intent: 'affirm' };
    if (
      few &&
      /^ (ok|okay|alles klar|verstanden|mach ich|gut|in ordnung|wird gemacht|geht klar|na gut) /.test(
        line,
      )
    )
      return asked
        ? { intent: 'affirm' }
        : match.context.paused
          ? { intent: 'resume' }
          : { intent: 'acknowledge' };
    if (match.line.split(' ').length > 8) return undefined;
    return short.find(([shape]) => shape.test(line))?.[1];
  },
};

export const choiceFrame: Frame = {
  name: 'choice',
  moods: every,
  build(match): Meaning | undefined {
    if (match.context.expecting !== 'choice') return undefined;
    const words: readonly (readonly [RegExp, number])[] = [
      [/ (erste|ersten|erster|erstes) /, 1],
      [/ (zweite|zweiten|zweiter|zweites) /, 2],
      [/ (dritte|dritten|dritter|drittes) /, 3],
    ];
    const named = words.find(([shape]) => holds(match, shape))?.[1];
    const mark = match.marks('n')[0];
    const quantity = mark ? match.quantityOfMark(mark) : undefined;
    const option = named ?? (quantity?.kind === 'number' ? quantity.value : undefined);
    return option ? { intent: 'choose', option } : undefined;
  },
};

export const correctFrame: Frame = {
  name: 'correct',
  moods: every,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const taken =
      / (ich meinte|meinte|ich meine|quatsch|korrektur|falsch|verlesen|vertan|ich wollte sagen|doch nicht) /.test(
        line,
      ) ||
      (/^ (nein|nee|sorry|entschuldigung|halt) /.test(line) && match.marks('ntcdw').length > 0);
    if (!taken) return undefined;
    const mark = match.marks('ntcdw')[0];
    const quantity = mark ? match.quantityOfMark(mark) : undefined;
    switch (quantity?.kind) {
      case 'weight':
        return { intent: 'correct', weight: quantity.value, weightUnit: quantity.unit };
      case 'duration':
        return { intent: 'correct', minutes: quantity.minutes };
      case 'clock':
        return { intent: 'correct', time: mealTime(quantity.face, match.context) };
      case 'temperature':
        return {
          intent: 'correct',
          temperature: quantity.value,
          ...(quantity.unit ? { unit: quantity.unit } : {}),
        };
      case 'number':
        return / (personen|leute|gäste|wir sind) /.test(line)
          ? { intent: 'correct', count: quantity.value }
          : { intent: 'correct', temperature: quantity.value };
      default:
        return undefined;
    }
  },
};

export const callFrame: Frame = {
  name: 'call',
  moods: every,
  build(match): Meaning | undefined {
    const timer = holds(match, / (timer|wecker|eieruhr|küchenuhr|kurzzeitwecker|stoppuhr) /);
    const minutes = minutesIn(match);
    if (
      timer &&
      holds(
        match,
        / (stopp|stoppe|abbrechen|abbreche|aus|ausmachen|lösch|lösche|löschen|weg|beende|beenden|brich|kein|keinen) /,
      ) &&
      minutes === undefined
    )
      return { intent: 'cancel-timer' };
    if (minutes !== undefined && (timer || (holds(match, callWords) && holds(match, / in <d/)))) {
      const label = / (?:für|an) (?:die |den |das |der )?([a-zäöüß]+) /.exec(
        ` ${match.line.replaceAll(/<\w+> /g, '')}`,
      )?.[1];
      return { intent: 'set-timer', minutes, ...(label ? { label } : {}) };
    }
    const degrees = degreesIn(match);
    if (degrees && holds(match, callWords) && holds(match, / (wenn|sobald|bei|ab) /))
      return { intent: 'watch', ...degrees };
    return undefined;
  },
};

const topicOf = (match: Match): string | undefined =>
  stepVerbs.find(([shape]) => shape.test(match.line))?.[1] ??
  dishesIn(match.line, match.context)[0];

const aboutOf = (match: Match): { about?: string } => {
  const line = ` ${match.line}`;
  const about =
    dishesIn(match.line, match.context)[0] ??
    (/ (raus|rausholen|herausnehmen|rausnehmen) /.test(line)
      ? 'pull'
      : / (ruhen|ruht|ruhezeit) /.test(line)
        ? 'rest'
        : / (essen|essens|abendessen|mittagessen|tisch|gegessen) /.test(line)
          ? 'dinner'
          : / (ofen|backofen|rohr) /.test(line)
            ? 'oven'
            : / (braten|fleisch) /.test(line) || cutIn(match.line)
              ? 'roast'
              : undefined);
  return about ? { about } : {};
};

export const questionFrame: Frame = {
  name: 'question',
  moods: ['question'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const degrees = degreesIn(match);
    if (
      / (sicher|gefährlich|ungefährlich|schwanger|schwangere|schwangeren|krank|kleinkind|baby|bedenklich|unbedenklich|stehen lassen|über nacht|salmonellen|verdorben) /.test(
        line,
      )
    )
      return { intent: 'ask-safety', about: match.line.trim(), ...(degrees ?? {}) };
    if (
      / (statt|anstatt|anstelle|ersetzen|ersatz|stattdessen) /.test(line) ||
      (/^(kann|darf|könnte|können) (ich|man|wir) /.test(match.line) &&
        / (nehmen|verwenden|benutzen|nutzen) /.test(line))
    )
      return { intent: 'ask-substitute', ...ingredientOf(match) };
    if (/ (einkaufen|besorgen|einkaufsliste|einkaufszettel) /.test(line))
      return { intent: 'ask-shopping' };
    if (/ (plan|zeitplan|ablauf|ablaufplan|reihenfolge) /.test(line)) return { intent: 'ask-plan' };
    if (
      / (möglichkeiten|optionen|alternativen|auswahl) | was (kann|können|könnte) (ich|wir) (jetzt )?(tun|machen|da) /.test(
        line,
      )
    )
      return { intent: 'ask-options' };
    if (/ wie viele (gäste|leute|personen) /.test(line)) return { intent: 'ask-guests' };
    if (degrees && !/ (minuten|uhr|personen) /.test(line))
      return { intent: 'ask-temperature', ...degrees };
    if (
      / (temperatur|kerntemperatur|heiß|wie viel grad|wieviel grad|bei wie viel|bei wieviel|wie warm) /.test(
        line,
      )
    )
      return { intent: 'ask-temperature', ...aboutOf(match) };
    if (
      /^(wie lange|wann|wie viel zeit|wieviel zeit|um wie viel uhr|wie spät essen|in wie) /.test(
        match.line,
      ) ||
      / (wie lange|wie viel zeit) /.test(line)
    )
      return { intent: 'ask-time-left', ...aboutOf(match) };
    if (
      / (als nächstes|als nächster|nächste schritt|nächster schritt|was jetzt|was nun|wie geht es weiter|wie gehts weiter|wie geht's weiter|danach|was kommt|was muss ich|was soll ich|was mache ich|was mach ich|was tun|dran) /.test(
        line,
      )
    )
      return { intent: 'ask-next' };
    if (/^(warum|wieso|weshalb) /.test(match.line))
      return { intent: 'ask-why', ...(topicOf(match) ? { topic: topicOf(match)! } : {}) };
    if (/^(wie viel|wieviel|wie viele|wieviele) /.test(match.line))
      return { intent: 'ask-amount', ...ingredientOf(match) };
    if (
      / (läuft|sieht|stehen wir|steht es|wie weit|im zeitplan|in der zeit|pünktlich|ruiniert|verdorben|versaut|schon fertig|fertig|gar|klappt|alles gut|alles in ordnung) /.test(
        line,
      )
    )
      return { intent: 'ask-status' };
    if (
      /^wie (mache|mach|binde|schneide|tranchiere|würze|bereite|geht|brate|lege|putze|soll|kann|muss|reibe)/.test(
        match.line,
      )
    )
      return { intent: 'ask-how', ...(topicOf(match) ? { topic: topicOf(match)! } : {}) };
    return undefined;
  },
};

const ingredients: Record<string, string> = {
  butter: 'unsalted butter',
  salz: 'kosher salt',
  thymian: 'fresh thyme leaves',
  rosmarin: 'fresh rosemary leaves',
  petersilie: 'fresh parsley leaves',
  knoblauch: 'garlic',
  meerrettich: 'fresh horseradish',
  sahne: 'heavy cream',
  öl: 'olive oil',
  olivenöl: 'olive oil',
};

function ingredientOf(match: Match): { ingredient?: string } {
  for (const word of match.line.trim().split(' ')) {
    const wanted = Object.hasOwn(ingredients, word) ? ingredients[word] : undefined;
    if (!wanted) continue;
    const known = match.context.lexicon.ingredients.find(
      (one) => one.id === wanted || one.names.includes(wanted),
    );
    return { ingredient: known?.id ?? word };
  }
  return {};
}
