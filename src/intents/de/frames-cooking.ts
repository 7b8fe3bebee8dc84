/** German frames of what has happened at the stove: trouble, steps, the oven, readings. */
import { pastTime } from '../moment.ts';
import { type Frame, faceOf, type Match, type Meaning } from '../recogniser.ts';
import { minutesOf } from './frames-told.ts';
import { cutIn, dishesIn, stepVerbs } from './names.ts';
import { ovenWords, roastWords } from './words.ts';

const told = ['statement'] as const;
const toldOrNot = ['statement', 'negative'] as const;

/** "vor zehn Minuten", "seit halb fünf", "um drei". */
function momentOf(match: Match): { minutesAgo?: number; time?: string } {
  const ago = / (?:vor|seit) (?:etwa |ungefähr |rund |circa )?(<d\d+>)/.exec(` ${match.line}`)?.[1];
  const minutes = minutesOf(match, ago);
  if (minutes !== undefined) return { minutesAgo: minutes };
  const mark = / (?:um|seit|gegen) (<[cn]\d+>)/.exec(` ${match.line}`)?.[1] ?? match.marks('c')[0];
  const face = mark ? faceOf(match.quantityOfMark(mark)) : undefined;
  return face ? { time: pastTime(face, match.context) } : {};
}

/** Degrees said, with what they are in Celsius; a bare number is in the household's unit. */
function degrees(
  match: Match,
): { said: { temperature: number; unit?: 'F' | 'C' }; celsius: number } | undefined {
  for (const mark of match.marks('tn')) {
    const after = match.line.slice(match.line.indexOf(mark) + mark.length + 1);
    if (
      /^(personen|leute|gäste|knochen|rippen|minuten|stück|mehr|weitere|uhr|erwachsene|kinder)/.test(
        after,
      )
    )
      continue;
    if (
      / (um|gegen|zu) $/.test(` ${match.line.slice(0, match.line.indexOf(mark))}`) &&
      mark.startsWith('<n')
    )
      continue;
    const said = match.withGroups({ x: `${mark} ` }).temperature('x');
    const unit = said.unit ?? match.context.units.temperature;
    return { said, celsius: unit === 'C' ? said.temperature : (said.temperature - 32) / 1.8 };
  }
  return undefined;
}

export const troubleFrame: Frame = {
  name: 'trouble',
  moods: toldOrNot,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const of = (
      trouble:
        | 'power-out'
        | 'power-back'
        | 'oven-out'
        | 'smoking'
        | 'dropped'
        | 'burnt'
        | 'overcooked'
        | 'undercooked'
        | 'probe-doubt',
    ): Meaning => ({ intent: 'report-trouble', trouble });
    if (/ (strom|sicherung|stromausfall) /.test(line))
      return / (wieder da|wieder) /.test(line) ? of('power-back') : of('power-out');
    if (
      ovenWords.test(line) &&
      / (kaputt|ausgefallen|tot|geht nicht|heizt nicht|streikt|defekt|ausgegangen|wird nicht) /.test(
        line,
      )
    )
      return of('oven-out');
    if (/ (raucht|qualmt|rauch|qualm) /.test(line)) return of('smoking');
    if (
      / (runtergefallen|heruntergefallen|hingefallen|fallen lassen|fallengelassen|auf den boden) /.test(
        line,
      )
    )
      return of('dropped');
    if (/ (angebrannt|verbrannt|verkohlt|schwarz) /.test(line)) return of('burnt');
    if (/ (übergart|zu durch|zu trocken|zu lange) /.test(line)) return of('overcooked');
    if (/ (noch roh|roh|noch kalt innen|nicht durch) /.test(line)) return of('undercooked');
    if (
      / (thermometer|fühler|sonde) /.test(line) &&
      / (spinnt|kaputt|falsch|komisch|leer|nicht) /.test(line) &&
      match.marks('tn').length === 0
    )
      return of('probe-doubt');
    return undefined;
  },
};

const stepOf = (match: Match): string | undefined => {
  const dish = dishesIn(match.line, match.context)[0];
  if (dish) {
    const own = match.context.lexicon.steps
      .filter((step) => step.id.startsWith(`${dish}.`))
      .map((step) => step.id);
    if (/ (geschält|geputzt|geschrubbt|gewaschen|geschnitten|gerieben) /.test(` ${match.line}`))
      return own[0] ?? `${dish}.prep`;
    return own.at(-1) ?? `${dish}.done`;
  }
  return stepVerbs.find(([shape]) => shape.test(match.line))?.[1];
};

const inStep = (dish: string, match: Match): string => {
  const own = match.context.lexicon.steps
    .filter((step) => step.id.startsWith(`${dish}.`))
    .map((step) => step.id);
  return (
    own.find((id) => /\.(in|roast|bake)$/.test(id)) ??
    own.find((id) => /\.(cook|boil|on|warm)$/.test(id)) ??
    `${dish}.in`
  );
};

export const stepsFrame: Frame = {
  name: 'steps',
  moods: toldOrNot,
  build(match): Meaning | readonly Meaning[] | undefined {
    const line = ` ${match.line}`;
    const moment = momentOf(match);
    const dishes = dishesIn(match.line, match.context);
    const not = / (nicht|noch nicht|kein|keine) /.test(line);
    if (not) {
      if (
        !/ (fertig|drin|rein|raus|gemacht|geschält|so weit|soweit|im ofen|vorgeheizt|heiß) /.test(
          line,
        )
      )
        return undefined;
      const step = / (ofen|backofen) .*(vorgeheizt|heiß) /.test(line) ? 'oven-on' : stepOf(match);
      return { intent: 'report-not-done', ...(step ? { step } : {}) };
    }
    if (/ (überspringen|überspring|auslassen|weglassen|lassen wir weg|lass weg) /.test(line)) {
      const step =
        stepVerbs.find(([shape]) => shape.test(match.line))?.[1] ?? match.context.openSteps[0];
      return { intent: 'skip-step', ...(step ? { step } : {}) };
    }
    if (/ (ruht|ruhen|ruhe|rastet|rasten) /.test(line))
      return { intent: 'report-started', step: 'rest', ...moment };
    if (
      / (raus|draußen|heraus|herausgenommen|rausgeholt|rausgenommen|herausgeholt|aus dem ofen|aus dem rohr) /.test(
        line,
      ) &&
      !/ kühlschrank /.test(line)
    ) {
      if (dishes.length > 0)
        return dishes.map((what) => ({ intent: 'report-out' as const, what, ...moment }));
      return roastWords.test(line) || match.line.split(' ').length <= 5 || cutIn(match.line)
        ? { intent: 'report-out', ...moment }
        : undefined;
    }
    if (/ kühlschrank /.test(line) && / (aus|raus) /.test(line))
      return { intent: 'report-done', step: 'out-of-fridge', ...moment };
    if (/ (tranchiere|tranchieren|schneide auf|aufschneiden|schneide an|anschneiden) /.test(line))
      return { intent: 'report-started', step: 'carve', ...moment };
    if (/ (essen ist fertig|serviert|steht auf dem tisch|ist auf dem tisch) /.test(line))
      return { intent: 'report-started', step: 'serve', ...moment };
    const inside =
      / (drin|drinnen|im ofen|in den ofen|rein|reingeschoben|hineingeschoben|im rohr|ins rohr|aufgesetzt|auf dem herd|reingetan|reingestellt) /.test(
        line,
      ) && match.marks('t').length === 0;
    if (inside) {
      if (dishes.length > 0)
        return dishes.map((dish) => ({
          intent: 'report-started' as const,
          step: inStep(dish, match),
          ...moment,
        }));
      return roastWords.test(line) || cutIn(match.line) || match.line.split(' ').length <= 4
        ? { intent: 'report-started', step: 'roast-in', ...moment }
        : undefined;
    }
    if (ovenWords.test(line)) return undefined;
    if (
      / (fertig|erledigt|gemacht|geschafft|getan|geschält|geputzt|geschrubbt|gewaschen|gewürzt|gesalzen|gebunden|gerieben|gepfeffert|eingerieben|gebuttert|geschnürt|tranchiert|aufgeschnitten|angebraten) /.test(
        line,
      ) &&
      match.marks('tnd').length === 0
    ) {
      const step = stepOf(match) ?? match.context.openSteps[0];
      return { intent: 'report-done', ...(step ? { step } : {}), ...moment };
    }
    return undefined;
  },
};

export const ovenFrame: Frame = {
  name: 'oven',
  moods: told,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const named = ovenWords.test(line);
    const turned =
      / (gestellt|gedreht|runtergedreht|heruntergedreht|hochgedreht|runter|herunter|hoch|eingestellt|reduziert|vorgeheizt|heizt|aufgeheizt|drehe|stelle|zurückgedreht|gesenkt) /.test(
        line,
      );
    const found = degrees(match);
    const mode = / umluft /.test(line)
      ? ({ mode: 'fan' } as const)
      : / (ober unterhitze|unterhitze) /.test(line)
        ? ({ mode: 'still' } as const)
        : {};
    if (
      found &&
      (named || turned) &&
      found.celsius >= 50 &&
      !/ (kern|thermometer|braten hat|fleisch hat|innen) /.test(line)
    )
      return { intent: 'report-oven', ...found.said, ...mode, ...momentOf(match) };
    if (found) return undefined;
    if (!named && !turned) return undefined;
    if (/ (runtergedreht|heruntergedreht|runter|herunter|zurückgedreht|gesenkt) /.test(line))
      return { intent: 'report-done', step: 'oven-down', ...momentOf(match) };
    if (/ (vorgeheizt|heiß|aufgeheizt|bereit|auf temperatur) /.test(line))
      return { intent: 'report-oven', state: 'preheated' };
    if (/ (aus|ausgeschaltet|ausgemacht|abgeschaltet) /.test(line))
      return { intent: 'report-oven', state: 'off', ...momentOf(match) };
    if (/ (an|eingeschaltet|angemacht|angeschaltet|heizt|läuft) /.test(line))
      return { intent: 'report-oven', state: 'on', ...mode, ...momentOf(match) };
    return 'mode' in mode ? { intent: 'report-oven', ...mode } : undefined;
  },
};

export const readingFrame: Frame = {
  name: 'reading',
  moods: told,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const found = degrees(match);
    if (!found || ovenWords.test(line) || / zwischen /.test(line)) return undefined;
    const inOven = /^(sear|low-roast|rest|hold|carve)$/.test(match.context.stage ?? '');
    const likely = found.celsius >= 1 && found.celsius <= 100;
    const worded =
      / (kern|kerntemperatur|innen|mitte|thermometer|zeigt|misst|anzeige|sonde|fühler|messe|gemessen|braten|fleisch|temperatur|kernthermometer|einstichthermometer) /.test(
        line,
      ) || match.marks('t').length > 0;
    if (!likely || / (kühlschrank|personen|kilo|gäste|wetter) /.test(line)) return undefined;
    if (/^(ziel|bis|bei|hol|nimm|zieh) /.test(match.line)) return undefined;
    if (
      !worded &&
      match.context.expecting !== 'reading' &&
      !(inOven && match.line.split(' ').length <= 7)
    )
      return undefined;
    const where = / (mitte|kern|knochen) /.exec(line)?.[1];
    return {
      intent: 'report-reading',
      ...found.said,
      ...(where
        ? { where: where === 'kern' ? 'core' : where === 'mitte' ? 'middle' : 'bone' }
        : {}),
      ...momentOf(match),
    };
  },
};
