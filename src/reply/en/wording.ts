/** Each outcome in words. The first sentence carries what the cook needs. */
import { roastCardOf } from '../../kitchen/dinner.ts';
import type { Outcome, OutcomeKey, OutcomeOf } from '../../kitchen/outcome.ts';
import { isHeld } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { answer } from './answers.ts';
import { carvingMap } from './carving.ts';
import { openingDay, stillFrozenWords, thawWords } from './day.ts';
import { emergencyReply } from './emergency.ts';
import { clockSetWords, handsWords, paceWords, setupWords } from './kitchen-told.ts';
import { lackedWords } from './lacking.ts';
import { cutChangedWords, uncardedWords } from './menu.ts';
import { offer } from './options.ts';
import {
  doneTold,
  earlyWords,
  movedWords,
  presumedWords,
  pullWords,
  readingWords,
  servingWords,
  stepDone,
  tableWords,
  thermometerWords,
} from './progress.ts';
import { badWords, questionWords } from './questions.ts';
import { rescueWords } from './rescue.ts';
import { hadWords } from './shopping.ts';
import { shortCoreWords } from './short-core.ts';
import { awayWords, behindWords, notDoneWords, skippedRest } from './slips.ts';
import { currentStepOf, nextStepOf } from './standing.ts';
import { cautionWords, dishTitle, doneClause, findStep, pullShown, titleOf } from './steps.ts';
import { guestNotedWords } from './table.ts';
import {
  aloud,
  clock,
  count,
  decimalWords,
  degrees,
  degreesApart,
  duration,
  ovenDegrees,
  weight,
} from './words.ts';

type Word<K extends OutcomeKey> = (outcome: OutcomeOf<K>, scene: Scene) => Spoken;

const joinNoted = (parts: Spoken[]): Spoken =>
  parts.length === 0 ? silent : capital(say`${list(parts)}.`);

/** How it was prepared, where that changes the carving or the safety. */
const preparedWords = (prepared: string | undefined): Spoken =>
  prepared === undefined || prepared === 'whole'
    ? silent
    : say`, ${prepared === 'tied-back' ? 'its bones tied back on' : prepared}`;

function roastNoted(scene: Scene): Spoken {
  const { roast, units } = scene.dinner;
  const bones = roast.bones !== undefined ? say`${count(roast.bones)}-bone ` : silent;
  const kilograms =
    roast.kilograms !== undefined ? say`${weight(roast.kilograms, units)}, ` : silent;
  const boneless = roast.boneless && roast.bones === undefined ? say`boneless ` : silent;
  const name = dishTitle(scene.dinner, roast.cut ?? 'roast');
  const through = roastCardOf(scene.dinner)?.pink === false;
  return sentences([
    joinNoted([say`${kilograms}${bones}${boneless}${name}${preparedWords(roast.prepared)}`]),
    through && scene.dinner.target
      ? say`It goes to ${degrees(scene.dinner.target.serveCelsius, units)} in the middle, not pink, and rests.`
      : silent,
  ]);
}

/** Until when it rests, and where its middle stands by then: higher, or after a long rest lower again. */
function restWords(carveAt: number, { plan, dinner }: Scene): Spoken {
  if (plan && dinner.course?.rest === 'low-oven' && isHeld(plan))
    return say`Tent it on the board; it goes back in to hold once the oven has come down. Carve at ${clock(carveAt, dinner)}.`;
  const core = plan?.coreAtServingCelsius.p50 ?? 0;
  const verb = core >= (plan?.pullCelsius ?? 0) ? 'climbs to' : 'will be back at';
  return say`Tent it loosely and let it rest till ${clock(carveAt, dinner)}; it ${verb} about ${degrees(core, dinner.units)}.`;
}

/** "The potatoes are in" is as true when a dish's step begins as when it is done. */
function isUnderWay(id: string, scene: Scene): boolean {
  const found = findStep(scene.dinner, id);
  return found !== undefined && found.card.card !== 'roast' && found.step.hands === 'start';
}

export const wording: { [K in OutcomeKey]: Word<K> } = {
  described: ({ before }, scene) =>
    stillFrozenWords(scene) ??
    sentences([roastNoted(scene), cutChangedWords(before, scene), thawWords(scene)]),
  'serving-set': ({ servingAt }, scene) => servingWords(servingAt, scene),
  'serving-moved': movedWords,
  'guests-set': ({ count: guests, change }, scene) => {
    const head =
      change === 0 ? say`${count(guests)} at table.` : say`${count(guests)} at table now.`;
    const carve =
      change !== 0 && scene.plan
        ? say`Carving takes ${duration(scene.plan.carveMinutes)}.`
        : silent;
    return sentences([capital(head), carve]);
  },
  'guests-arrived': ({ state }, scene) =>
    state === 'partly-arrived'
      ? say`Noted. Dinner stays at ${clock(scene.plan?.serving.likelyAt ?? scene.now, scene.dinner)} unless you say it moves.`
      : sentences([
          say`Good.`,
          scene.plan ? say`Dinner at ${clock(scene.plan.serving.likelyAt, scene.dinner)}.` : silent,
        ]),
  'guest-noted': ({ who, need, value }, scene) => guestNotedWords({ who, need, value }, scene),
  'doneness-set': ({ doneness, serveCelsius }, scene) =>
    capital(
      say`${doneness?.replace('-', ' ') ?? 'So'}, ${degrees(serveCelsius, scene.dinner.units)} at the table.`,
    ),
  'method-set': ({ method }) =>
    method === 'sear-last'
      ? say`A gentle oven first, the sear at the end.`
      : method === 'steady'
        ? say`One steady oven, no sear.`
        : say`Sear first, then a gentle oven.`,
  'dish-added': ({ dish }, scene) => capital(say`${dishTitle(scene.dinner, dish)}, noted.`),
  'dish-uncarded': ({ dish }, scene) => uncardedWords([say`${dish}`], scene),
  'dish-unknown': ({ dish }) =>
    say`I have no ${(dish.split('.')[0] ?? dish).replaceAll('-', ' ')} on the menu, so I have not noted it.`,
  'dish-unnamed': ({ dish }, scene) =>
    say`Without ${dishTitle(scene.dinner, dish)}, then; say if you want any.`,
  'dish-dropped': ({ dish }, scene) => say`No ${dishTitle(scene.dinner, dish)}.`,
  'dish-absent': ({ dish }, scene) =>
    say`No ${dishTitle(scene.dinner, dish)}: it was not on the menu.`,
  'units-set': (_, scene) =>
    scene.dinner.units.temperature === 'C'
      ? say`Celsius from now on.`
      : say`Fahrenheit from now on.`,
  lacked: lackedWords,
  'setup-noted': setupWords,
  'hands-added': handsWords,
  'pace-told': paceWords,
  'clock-set': clockSetWords,
  'cook-away': awayWords,
  'reading-noted': readingWords,
  'thermometer-checked': thermometerWords,
  'oven-noted': ({ celsius, down }, scene) => {
    if (celsius <= 0)
      return sentences([say`Oven off.`, scene.stage === 'low-roast' ? pullWords(scene) : silent]);
    const head = say`Oven at ${ovenDegrees(celsius, scene.dinner.units)}.`;
    return down ? sentences([head, pullWords(scene), tableWords(scene)]) : head;
  },
  'oven-mode': ({ fan }) =>
    fan ? say`Fan oven: it cooks a little faster, and I count on that.` : say`No fan, noted.`,
  'oven-bias': ({ kelvin }, scene) =>
    sentences([
      say`Your oven runs ${degreesApart(Math.abs(kelvin), scene.dinner.units)} ${kelvin >= 0 ? 'hot' : 'cool'}; I count on that.`,
      scene.stage === 'low-roast' || scene.stage === 'sear' ? pullWords(scene) : silent,
    ]),
  'thermometer-bias': ({ kelvin }, scene) =>
    say`Your thermometer reads ${degreesApart(Math.abs(kelvin), scene.dinner.units)} ${kelvin >= 0 ? 'high' : 'low'}; I count on that.`,
  'kitchen-forgotten': ({ about }, scene) =>
    sentences([
      say`Forgotten: I take your ${about} for what it says.`,
      scene.stage === 'low-roast' || scene.stage === 'sear' ? pullWords(scene) : silent,
    ]),
  'oven-hot': (_, scene) =>
    scene.plan && scene.stage === 'preheat'
      ? say`Good. The roast goes in at ${clock(scene.plan.roastInAt, scene.dinner)}.`
      : say`Good.`,
  acknowledged: ({ kind }) =>
    kind === 'pull'
      ? say`Tell me when it is out.`
      : kind === 'oven-change'
        ? say`Tell me when you have turned it.`
        : say`Good.`,
  'step-done': stepDone,
  'step-started': ({ step, presumed }, scene) => {
    const others = presumed.filter((one) => one !== step);
    const assumed = presumedWords(others, scene);
    if (step === 'roast-in')
      return presumed.includes('roast-in')
        ? say`I take it that it went in at ${clock(scene.plan?.roastInAt ?? scene.now, scene.dinner)}.`
        : sentences([
            say`In it is.`,
            assumed,
            scene.plan ? say`Likely out at ${clock(scene.plan.pullAt.p50, scene.dinner)}.` : silent,
            earlyWords(scene),
          ]);
    if (step === 'carve') {
      const called = scene.dinner.calls.has('carve:carve');
      const caution = called ? silent : cautionWords('carve', scene);
      return sentences([say`Carve away.`, assumed, carvingMap(scene), caution]);
    }
    if (step === 'first-course' && scene.plan)
      return say`Good. The roast follows at ${clock(scene.plan.serving.likelyAt, scene.dinner)}.`;
    if (presumed.includes(step)) return presumedWords(presumed, scene);
    return sentences([isUnderWay(step, scene) ? doneTold([step], scene) : say`Good.`, assumed]);
  },
  'step-moved': ({ step, happenedAt }, scene) =>
    sentences([
      // What was only taken for granted until now is plainly told.
      scene.now - happenedAt < 60_000
        ? step === 'oven-down'
          ? say`Down it is.`
          : doneTold([step], scene)
        : capital(
            say`${doneClause(scene.dinner, step)}: ${clock(happenedAt, scene.dinner)}, noted.`,
          ),
      step === 'roast-in' || step === 'oven-down' ? pullWords(scene) : silent,
    ]),
  'step-not-done': notDoneWords,
  'step-skipped': ({ step }, scene) =>
    step === 'rest' ? skippedRest(scene) : say`Left out: ${titleOf(scene.dinner, step)}.`,
  'step-needed': ({ step }, scene) =>
    say`There is no dinner without that: ${titleOf(scene.dinner, step)}. Tell me when it is done.`,
  'nothing-open': () => say`Nothing is open just now. Which step do you mean?`,
  'roast-out': ({ presumed }, scene) => {
    const { plan } = scene;
    const carveAt = plan?.steps.find((step) => step.id === 'carve')?.startAt;
    return sentences([
      say`Out it is.`,
      presumedWords(presumed, scene),
      shortCoreWords(scene) ?? (plan && carveAt !== undefined ? restWords(carveAt, scene) : silent),
      scene.options && scene.options.length > 0 ? offer(scene.options, scene) : silent,
    ]);
  },
  trouble: rescueWords,
  emergency: ({ kind }, scene) => emergencyReply(kind, scene),
  'thing-had': ({ thing }, scene) => hadWords(thing, scene),
  'public-noted': () => say`Noted.`,
  'running-behind': (_, scene) => behindWords(scene),
  'timer-set': ({ minutes, label }) =>
    minutes >= 1
      ? say`${capital(duration(minutes))}${label ? ` for the ${label.replace(/^the /, '')}` : ''}, from now.`
      : say`${count(Math.round(minutes * 60))} seconds, from now.`,
  'timer-cancelled': ({ label }) => say`Timer off${label ? `: ${label}` : ''}.`,
  'no-timer': () => say`No timer is running.`,
  'watch-set': ({ celsius }, scene) => {
    const row = scene.forecast?.core.find((one) => one.celsius.p50 >= celsius);
    return row && scene.plan
      ? say`I will call you when it should read ${degrees(celsius, scene.dinner.units)}, about ${clock(scene.plan.roastInAt + row.minute * 60_000, scene.dinner)}.`
      : say`I will call you when it should read ${degrees(celsius, scene.dinner.units)}.`;
  },
  chosen: ({ option }, scene) =>
    sentences([
      capital(say`${aloud(option.title)}: dinner at ${clock(option.servingAt, scene.dinner)}.`),
      capital(say`${degrees(option.coreAtServingCelsius.p50, scene.dinner.units)} at the knife.`),
    ]),
  'no-such-option': ({ count: size }) =>
    size === 1
      ? say`There is only the one. Say "yes" to take it.`
      : say`There are ${count(size)} to choose from. Which one?`,
  'no-choice': () => say`Nothing is waiting for a choice.`,
  corrected: ({ what }, scene) =>
    what === 'roast-described'
      ? roastNoted(scene)
      : what === 'guests-counted'
        ? capital(say`${count(scene.dinner.guests ?? 0)} at table.`)
        : say`Corrected.`,
  undone: ({ text }) => say`Taken back: "${text.length > 60 ? `${text.slice(0, 57)}…` : text}".`,
  'nothing-to-undo': () => say`There is nothing to take back.`,
  repeat: (_, scene) => {
    const last = scene.dinner.lastReply;
    const call = scene.dinner.announced.at(-1);
    if (call && (!last || call.at > last.at)) return { text: call.text, speech: call.speech };
    return last ? { text: last.text, speech: last.speech } : say`I have said nothing yet.`;
  },
  paused: () => say`I wait. Only the oven and the pull will make me speak.`,
  resumed: (_, scene) => {
    const { plan, stage, now } = scene;
    const pull = plan?.steps.find((step) => step.id === 'pull');
    if (plan && pull && /^(sear|low-roast)$/.test(stage) && pull.startAt <= now)
      return say`The roast first: it should be at the pull, ${pullShown(plan, scene.dinner)}. Take a reading.`;
    const next = currentStepOf(scene) ?? nextStepOf(scene);
    return next
      ? say`Here we are: ${next.title}, at ${clock(next.startAt, scene.dinner)}.`
      : say`I am with you.`;
  },
  quieted: () => say`Quiet, but for the oven, the pull and anything unsafe.`,
  courtesy: () => say`Any time.`,
  help: () =>
    say`Tell me what you do or what it reads: "it's in", "it reads one oh four", "guests are late half an hour". Or ask: what's next, how long, why, how.`,
  affirmed: () => say`Good.`,
  denied: (_, scene) =>
    scene.dinner.settled.at(-1)?.kind.startsWith('reading')
      ? say`Left out, then. Take another look and tell me.`
      : say`As you like.`,
  'started-over': () => say`A clean sheet. What is the roast?`,
  answer: ({ heard }, scene) => answer(heard, scene),
  asked: ({ question }, scene) => questionWords(question, scene),
  'bad-value': ({ bad }, scene) => badWords(bad, scene),
  unrelated: () => say`That is not one for me; I go on with the roast.`,
  unclear: ({ heard, again }, scene) => {
    const got =
      heard.temperature !== undefined
        ? { text: String(heard.temperature), speech: decimalWords(heard.temperature) }
        : heard.number !== undefined
          ? { text: String(heard.number), speech: decimalWords(heard.number) }
          : heard.time !== undefined
            ? say`${heard.time}`
            : heard.thing !== undefined
              ? say`${heard.thing}`
              : undefined;
    if (again) {
      const current = currentStepOf(scene) ?? nextStepOf(scene);
      return sentences([
        say`I still do not follow.`,
        current
          ? say`Is it "done" with ${current.title}, a reading, or a change of time?`
          : say`Is it a reading, a step done, or a change of time?`,
      ]);
    }
    return got
      ? say`I got ${got}, but not what of it. The roast, the oven, or the clock?`
      : say`I did not follow that. Say it another way?`;
  },
};

/** The words of one outcome. */
export function word<K extends OutcomeKey>(
  outcome: Extract<Outcome, { key: K }>,
  scene: Scene,
): Spoken {
  const phrase = wording[outcome.key as K] as Word<K>;
  return phrase(outcome, scene);
}

export const openingWords = (scene: Scene): Spoken => openingDay(scene);
