/** German frames of what is told of the dinner: when, for whom, how done, which roast and dishes. */
import { mealTime, timeAfter } from '../moment.ts';
import { type Frame, faceOf, type Match, type Meaning } from '../recogniser.ts';
import { cutIn, dishesIn } from './names.ts';
import { guestWords, mealWords } from './words.ts';

const told = ['statement'] as const;
const toldOrNot = ['statement', 'negative'] as const;

export const minutesOf = (match: Match, mark: string | undefined): number | undefined => {
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  return quantity?.kind === 'duration' ? quantity.minutes : undefined;
};

export const shiftFrame: Frame = {
  name: 'shift',
  moods: told,
  build(match): Meaning | undefined {
    const minutes = minutesOf(match, match.marks('d')[0]);
    const line = ` ${match.line}`;
    const sooner = / (früher|eher|vorziehen|vorverlegen|nach vorne|zu früh) /.test(line);
    const later =
      / (später|verspäten|verspätet|verspätung|zu spät|nach hinten|verschieben|verschieb|verschiebe|verschoben|aufschieben|länger|stau|hinausschieben|warten|noch) /.test(
        line,
      );
    if (
      /^(ich|wir) (bin|sind|hänge|hängen|liege|liegen|hinke|hinken|habe|haben) /.test(match.line) &&
      / (hinterher|rückstand|verzug|spät dran|zu spät|hinten|zurück|verspätung) /.test(line)
    )
      return { intent: 'running-behind', ...(minutes === undefined ? {} : { minutes }) };
    if (minutes === undefined || / (ofen|timer|braten|ruht|drin|vor <d|seit <d) ?/.test(line))
      return undefined;
    if (
      !(sooner || later) ||
      !(
        guestWords.test(line) ||
        mealWords.test(line) ||
        / (um <d|verschieb\w*|alles|wir) /.test(line) ||
        match.line.split(' ').length <= 5
      )
    )
      return undefined;
    return { intent: 'shift-serving', minutes: sooner ? -minutes : minutes };
  },
};

export const servingFrame: Frame = {
  name: 'serving',
  moods: told,
  build(match): Meaning | Meaning[] | undefined {
    const line = ` ${match.line}`;
    if (
      / (ofen|drin|rein|raus|seit|gekommen|kinder|zug|ankommen|kommen|herausgenommen|reingeschoben|timer|wecker) /.test(
        line,
      )
    )
      return undefined;
    const asked = match.context.expecting === 'serving-time';
    if (!asked && !mealWords.test(line) && !/ (wollen|möchten|gibt|gibts) /.test(line))
      return undefined;
    const date = match.dateNearby();
    const mark =
      match.marks('c')[0] ??
      / (?:um|gegen|auf) (<n\d+>)/.exec(line)?.[1] ??
      (asked ? match.marks('n')[0] : undefined);
    const face = mark ? faceOf(match.quantityOfMark(mark)) : undefined;
    if (face) {
      const heads = match.quantityOfMark(/ für (<n\d+>)/.exec(line)?.[1] ?? '');
      return [
        {
          intent: 'set-serving-time',
          time: mealTime(face, match.context),
          ...(date ? { date } : {}),
        },
        ...(heads?.kind === 'number' && Number.isInteger(heads.value)
          ? [{ intent: 'set-guests' as const, count: heads.value }]
          : []),
      ];
    }
    const minutes = minutesOf(match, / in (<d\d+>)/.exec(line)?.[1]);
    return minutes === undefined
      ? undefined
      : { intent: 'set-serving-time', time: timeAfter(minutes, match.context) };
  },
};

export const guestsFrame: Frame = {
  name: 'guests',
  moods: toldOrNot,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (
      / (da|hier|angekommen|eingetroffen|gekommen) /.test(line) &&
      guestWords.test(line) &&
      !/ (nicht|noch) /.test(line)
    )
      return / (hälfte|einige|ein paar|manche) /.test(line)
        ? { intent: 'report-guests', state: 'partly-arrived' }
        : { intent: 'report-guests', state: 'arrived' };
    if (
      / (sitzen|am tisch|platz genommen|hingesetzt) /.test(line) &&
      / (alle|gäste|wir|leute) /.test(line)
    )
      return { intent: 'report-guests', state: 'seated' };
    // "Essen um sieben für sechs" is of the hour first.
    if (match.marks('c').length > 0 && mealWords.test(line)) return undefined;
    const mark = match.marks('n')[0];
    const quantity = mark ? match.quantityOfMark(mark) : undefined;
    const count =
      quantity?.kind === 'number' &&
      Number.isInteger(quantity.value) &&
      quantity.value > 0 &&
      quantity.value < 100
        ? quantity.value
        : undefined;
    if (count === undefined) return undefined;
    const people =
      / (personen|person|leute|gäste|gast|esser|erwachsene|köpfe|mann) /.test(line) ||
      / (wir sind|wir werden|sind wir|es kommen|kommen|für) (heute |insgesamt |dann |jetzt |noch )*<n/.test(
        line,
      ) ||
      / sind (wir )?<n\d+> $/.test(line) ||
      /^(<n\d+>) $/.test(match.line);
    if (!people && match.context.expecting !== 'guests') return undefined;
    if (/^<n\d+> $/.test(match.line) && match.context.expecting !== 'guests') return undefined;
    if (/ (grad|uhr|kilo|minuten|knochen|braten|thermometer|kern) /.test(line)) return undefined;
    if (/ (mehr|weitere|zusätzlich|dazu|noch) /.test(line))
      return { intent: 'set-guests', change: count };
    if (/ (weniger|abgesagt|absagen|nicht) /.test(line))
      return { intent: 'set-guests', change: -count };
    return { intent: 'set-guests', count };
  },
};

export const noteFrame: Frame = {
  name: 'note',
  moods: toldOrNot,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const who =
      /^(?:meine|mein|unsere|unser|die|der)? ?([a-zäöüß]+) (?:ist|hat|verträgt|darf|isst|will|möchte|mag|sind) /.exec(
        match.line,
      )?.[1];
    const named = who && !/^(es|er|sie|ich|wir|das|braten|fleisch|ofen)$/.test(who) ? { who } : {};
    if (/ (schwanger|chemo|immungeschwächt) /.test(line))
      return { intent: 'note-guest', ...named, need: 'vulnerable' };
    const allergy =
      / (?:allergisch (?:gegen|auf)|allergie gegen|verträgt keine?n?|darf keine?n?) ([a-zäöüß]+) /.exec(
        line,
      )?.[1] ??
      / ([a-zäöüß]+)allergie /.exec(line)?.[1] ??
      / (zöliakie|laktoseintolerant|glutenfrei) /.exec(line)?.[1];
    if (allergy) return { intent: 'note-guest', ...named, need: 'allergy', value: allergy };
    const diet = / (vegetarierin|vegetarier|vegetarisch|veganerin|veganer|vegan) /.exec(line)?.[1];
    if (diet)
      return {
        intent: 'note-guest',
        ...named,
        need: 'diet',
        value: diet.startsWith('vegan') ? 'vegan' : 'vegetarian',
      };
    return undefined;
  },
};

export const donenessFrame: Frame = {
  name: 'doneness',
  moods: told,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (
      / (ist|war|schon|fast|zu) (durch|blutig|rosa) /.test(line) &&
      match.context.expecting !== 'doneness'
    )
      return undefined;
    const doneness = / (medium rare|medium-rare|rosa blutig|leicht blutig) /.test(line)
      ? ('medium-rare' as const)
      : / (medium well|medium-well|halb durch|fast durch|leicht rosa) /.test(line)
        ? ('medium-well' as const)
        : / (durchgebraten|durch|well done|durchgegart) /.test(line)
          ? ('well-done' as const)
          : / (medium|rosa) /.test(line)
            ? ('medium' as const)
            : / (blutig|englisch|rare|bleu) /.test(line)
              ? ('rare' as const)
              : undefined;
    return doneness ? { intent: 'set-doneness', doneness } : undefined;
  },
};

export const dishFrame: Frame = {
  name: 'dish',
  moods: toldOrNot,
  build(match): Meaning[] | undefined {
    const dishes = dishesIn(match.line, match.context);
    const line = ` ${match.line}`;
    if (
      dishes.length === 0 ||
      / (ofen|drin|rein|raus|draußen|fertig|geschält|geputzt|gemacht|aufgesetzt|kochen|köcheln|verbrannt|angebrannt|gerieben|geschnitten|geschrubbt|gewaschen|noch nicht|gut|weich|runtergefallen|timer) /.test(
        line,
      )
    )
      return undefined;
    if (/ (keine|kein|keinen|ohne|streich|streiche|weglassen|doch nicht|nicht) /.test(line))
      return dishes.map((dish) => ({ intent: 'drop-dish' as const, dish }));
    return dishes.map((dish) => ({ intent: 'add-dish' as const, dish }));
  },
};

export const roastFrame: Frame = {
  name: 'roast',
  moods: toldOrNot,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const quantity = match.quantityOfMark(match.marks('w')[0] ?? '');
    const cut = cutIn(match.line);
    const bonesMark = /(<n\d+>) (?:knochen|rippen|knochiger)/.exec(match.line)?.[1];
    const bones = bonesMark ? match.quantityOfMark(bonesMark) : undefined;
    const boneless = / (ohne knochen|knochenlos|ausgelöst|entbeint) /.test(line);
    const frozen = / (gefroren|tiefgefroren|tiefgekühlt) /.test(line) && !/ nicht /.test(line);
    const bare =
      match.context.expecting === 'roast'
        ? match.quantityOfMark(match.marks('n')[0] ?? '')
        : undefined;
    const weight =
      quantity?.kind === 'weight'
        ? quantity.value
        : bare?.kind === 'number' && !bones && bare.value < 20
          ? bare.value
          : undefined;
    if (weight === undefined && !bones && !boneless && !frozen && !cut) return undefined;
    if (
      weight !== undefined &&
      quantity &&
      / (kartoffeln|bohnen|butter|mehl|möhren|karotten|zwiebeln|zucker) /.test(line)
    )
      return undefined;
    return {
      intent: 'describe-roast',
      ...(cut ? { cut } : {}),
      ...(weight === undefined ? {} : { weight, weightUnit: 'kg' as const }),
      ...(bones?.kind === 'number' ? { bones: bones.value } : {}),
      ...(boneless ? { boneless } : {}),
      ...(frozen ? { frozen } : {}),
    };
  },
};

export const restFrame: Frame = {
  name: 'rest',
  moods: toldOrNot,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const minutes = minutesOf(match, match.marks('d')[0]);
    if (
      minutes !== undefined &&
      / (weg|unterwegs|draußen|raus|einkaufen|zurück) /.test(line) &&
      / (ich|bin|in) /.test(line)
    )
      return { intent: 'cook-away', minutes };
    const lack =
      / (?:keine?n?|fehlt|ohne|kein) ([a-zäöüß]+) /.exec(line)?.[1] ??
      / ([a-zäöüß]+) (?:fehlt|ist alle|ist aus) /.exec(line)?.[1];
    if (
      lack &&
      !/^(ahnung|zeit|problem|lust|sorge|angst|frage|gäste)$/.test(lack) &&
      match.line.split(' ').length <= 8
    )
      return { intent: 'lack', thing: lack };
    if (/ (celsius|fahrenheit) /.test(line) && match.marks('tn').length === 0)
      return { intent: 'set-units', temperature: / fahrenheit /.test(line) ? 'F' : 'C' };
    if (/ (hilft|helfen|hilfe) /.test(line)) {
      const who = /(?:mein|meine|der|die)? ?([a-zäöüß]+) hilft /.exec(match.line)?.[1];
      return { intent: 'add-hands', ...(who ? { who } : {}) };
    }
    return undefined;
  },
};
