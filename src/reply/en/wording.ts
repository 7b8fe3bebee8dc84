/** Each outcome in words. The first sentence carries what the cook needs. */
import { minutesBetween } from '../../base/time.ts';
import { fahrenheitOfCelsius } from '../../base/units.ts';
import type { Question } from '../../kitchen/facts.ts';
import type { BadValue, Outcome, OutcomeKey } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { answer, coreNow, currentStepOf, nextStepOf } from './answers.ts';
import { openingDay } from './day.ts';
import { offer } from './options.ts';
import { emergencyWords } from './safety.ts';
import { callWords, cautionWords, dishTitle, titleOf } from './steps.ts';
import {
  between,
  clock,
  count,
  decimalWords,
  degrees,
  degreesApart,
  duration,
  ovenDegrees,
  weight,
} from './words.ts';

type Word<K extends OutcomeKey> = (outcome: Extract<Outcome, { key: K }>, scene: Scene) => Spoken;

/** "taking it that the roast went in and the oven is down". */
function presumedWords(presumed: readonly string[], scene: Scene): Spoken {
  if (presumed.length === 0) return silent;
  const words = presumed.slice(0, 3).map((step) => say`"${titleOf(scene.dinner, step)}"`);
  return say`I take it that ${list(words)} ${presumed.length === 1 ? 'is' : 'are'} done.`;
}

function pullWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (!plan || plan.steps.find((step) => step.id === 'pull')?.state === 'done') return silent;
  const until = minutesBetween(now, plan.pullAt.p50);
  if (until <= 1) return say`Pull it now, at ${degrees(plan.pullCelsius, dinner.units)}.`;
  return say`Pull at ${degrees(plan.pullCelsius, dinner.units)}, likely at ${clock(plan.pullAt.p50, dinner)}, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}.`;
}

function lookWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (plan?.checkAt === undefined || minutesBetween(now, plan.pullAt.p50) <= 1) return silent;
  return plan.checkAt > now + 90_000
    ? say`Look again at ${clock(plan.checkAt, dinner)}.`
    : say`Look again in a couple of minutes.`;
}

/** Whether the table has moved, and by how much, against what was told before. */
function tableWords(scene: Scene): Spoken {
  const { plan, before, dinner } = scene;
  if (!plan) return silent;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  if (late > 5)
    return say`That puts dinner at ${clock(plan.serving.likelyAt, dinner)}, ${duration(late)} late.`;
  const was = before ? minutesBetween(before.serving.wantedAt, before.serving.likelyAt) : 0;
  if (was > 5) return say`Dinner is back at ${clock(plan.serving.likelyAt, dinner)}.`;
  return say`Dinner stays at ${clock(plan.serving.likelyAt, dinner)}.`;
}

const badWords = (bad: BadValue, scene: Scene): Spoken => {
  const { units } = scene.dinner;
  switch (bad.what) {
    case 'reading':
      return say`I heard ${degrees(bad.celsius, units)}; no roast reads that, so I have not noted it. What does it read?`;
    case 'weight':
      return say`I heard ${weight(bad.kilograms, units)}; no household oven roasts that, so I have not noted it. What does it weigh?`;
    case 'bones':
      return say`I heard ${count(bad.count)} bones; a rib roast has one to seven. How many are there?`;
    case 'guests':
      return say`I heard ${count(bad.count)} guests; I plan for one to sixty. How many are coming?`;
    case 'oven':
      return say`I heard an oven at ${degrees(bad.celsius, units)}; no household dial goes there. What is it set to?`;
    case 'doneness':
      return say`I heard ${degrees(bad.celsius, units)} for the middle; roasts are served between rare and well done. How do you like it?`;
    case 'minutes':
      return say`I heard ${count(bad.minutes)} minutes; I can plan with up to a day. How long is it?`;
  }
};

export function questionWords(question: Question, scene: Scene): Spoken {
  const { dinner } = scene;
  const pending = (question.pending ?? []) as { type?: string; celsius?: number }[];
  const reading = pending.find((fact) => fact.type === 'reading-taken')?.celsius;
  switch (question.kind) {
    case 'roast':
      return dinner.roast.cut === undefined
        ? say`What is the roast: which cut, how heavy, how many bones?`
        : say`How heavy is it, or how many bones has it?`;
    case 'serving-time':
      return say`When is dinner?`;
    case 'guests':
      return say`How many are coming?`;
    case 'doneness':
      return say`How do you like it: rare, medium rare, medium, or well done?`;
    case 'reading-contradicts':
      return say`${degrees(reading ?? 0, dinner.units)}, after ${degrees(Number(question.text), dinner.units)} before? A core does not fall in the oven: is that right?`;
    case 'reading-improbable':
      return question.text === 'unit'
        ? say`${degrees(reading ?? 0, dinner.units)} would surprise me. Was that in the other scale?`
        : say`${degrees(reading ?? 0, dinner.units)} in the middle? I expected about ${degrees(Number(question.text), dinner.units)}. Is it right, clear of bone and fat?`;
    case 'reading-or-oven':
      return say`Is that the roast, or the oven?`;
    case 'which-step':
      return say`Which step do you mean?`;
    case 'serving-past':
      return say`That hour has gone today. Tomorrow, or another time?`;
    case 'roast-size':
      return say`How big is it?`;
    case 'choice':
      return silent;
    case 'start-over':
      return say`Forget this dinner and begin a new one? Yes or no.`;
    case 'unclear':
      return say`${question.text}`;
  }
}

const joinNoted = (parts: Spoken[]): Spoken =>
  parts.length === 0 ? silent : capital(say`${list(parts)}.`);

function roastNoted(scene: Scene): Spoken {
  const { roast, units } = scene.dinner;
  const bones = roast.bones !== undefined ? say`${count(roast.bones)}-bone ` : silent;
  const kilograms =
    roast.kilograms !== undefined ? say`${weight(roast.kilograms, units)}, ` : silent;
  const boneless = roast.boneless && roast.bones === undefined ? say`boneless ` : silent;
  const name = dishTitle(scene.dinner, roast.cut ?? 'roast');
  return joinNoted([say`${kilograms}${bones}${boneless}${name}`]);
}

const readingWords: Word<'reading-noted'> = ({ celsius, again }, scene) => {
  const { plan, dinner, now } = scene;
  if (!plan || scene.stage === 'prep' || scene.stage === 'planning' || scene.stage === 'preheat')
    return say`${degrees(celsius, dinner.units)} to start with, noted.`;
  if (scene.stage === 'rest' || scene.stage === 'hold')
    return say`${degrees(celsius, dinner.units)} on the board. Carve at ${clock(plan.steps.find((step) => step.id === 'carve')?.startAt ?? now, dinner)}.`;
  if (again)
    return sentences([say`${degrees(celsius, dinner.units)}, I have it.`, lookWords(scene)]);
  if (celsius >= plan.pullCelsius - 0.3)
    return sentences([
      say`${degrees(celsius, dinner.units)}: pull it now.`,
      callWords('pull', scene),
    ]);
  const pull = pullWords(scene);
  return sentences([
    say`${degrees(celsius, dinner.units)}.`,
    pull,
    lookWords(scene),
    tableWords(scene),
  ]);
};

const stepDone: Word<'step-done'> = ({ step, presumed, again }, scene) => {
  if (again) return say`I have that already.`;
  const assumed = presumedWords(presumed, scene);
  switch (step) {
    case 'oven-on':
      return sentences([say`Oven on.`, assumed]);
    case 'oven-down':
      return sentences([say`Down it is.`, assumed, pullWords(scene)]);
    case 'serve':
      return sentences([say`Enjoy it.`, assumed]);
    case 'put-away':
      return say`All put away. That was the dinner.`;
    default:
      return sentences([say`Good.`, assumed]);
  }
};

const movedWords: Word<'serving-moved'> = ({ minutes, servingAt }, scene) => {
  const { dinner, plan } = scene;
  const head = say`Dinner at ${clock(servingAt, dinner)}, ${duration(Math.abs(minutes))} ${minutes >= 0 ? 'later' : 'sooner'}.`;
  if (!plan) return head;
  if (scene.options && scene.options.length > 0)
    return sentences([head, offer(scene.options, scene)]);
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  if (late > 5)
    return sentences([
      say`Not quite: ${clock(plan.serving.likelyAt, dinner)} is the soonest for dinner.`,
    ]);
  if (scene.stage === 'prep' || scene.stage === 'preheat' || scene.stage === 'planning')
    return sentences([
      head,
      say`So everything starts later: the roast goes in at ${clock(plan.roastInAt, dinner)}.`,
    ]);
  return head;
};

const troubleWords: Record<string, (scene: Scene) => Spoken> = {
  'power-out': () =>
    sentences([
      say`Keep the oven shut: it holds its heat for a good while.`,
      say`Tell me when the power is back.`,
    ]),
  'oven-out': () => say`Keep the door shut, and tell me when the oven is back.`,
  'power-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'oven-back': (scene) =>
    sentences([say`Oven back on where it was.`, pullWords(scene), tableWords(scene)]),
  'probe-doubt': () =>
    say`Try another spot: from the end, in the middle, clear of bone and fat, and give me the lowest number. In ice water it should read freezing.`,
  smoking: () =>
    say`Open a window and pour a cup of water into the pan, door shut again quickly. If you see flames, tell me.`,
  overcooked: (scene) => {
    const core = coreNow(scene);
    return sentences([
      core
        ? say`It stands at about ${degrees(core.p50, scene.dinner.units)}, so all is not lost.`
        : say`All is not lost.`,
      say`Out now, no tent, slice it soon and thin, with warm juices over it.`,
    ]);
  },
  undercooked: () =>
    say`Nothing is lost: slices go back, half a minute a side in a hot pan, or the whole roast into the oven. Take a reading and tell me.`,
  dropped: () => say`Rinse nothing: trim what touched the floor, sear it again hot, and go on.`,
  burnt: (scene) =>
    sentences([
      say`Take out what is burnt, trim it, and lay foil over the rest.`,
      tableWords(scene),
    ]),
  'door-open': (scene) =>
    sentences([say`Door shut again: the oven needs some minutes to recover.`, pullWords(scene)]),
  overwhelmed: (scene) => {
    const current = currentStepOf(scene) ?? nextStepOf(scene);
    return sentences([
      say`One thing at a time; the roast does most of it by itself.`,
      current ? say`Just this now: ${current.title}.` : silent,
    ]);
  },
};

export const wording: { [K in OutcomeKey]: Word<K> } = {
  described: (_, scene) => roastNoted(scene),
  'serving-set': ({ servingAt }, scene) => say`Dinner at ${clock(servingAt, scene.dinner)}.`,
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
  'guest-noted': ({ who, need, value }) => {
    const name = who ?? 'that guest';
    switch (need) {
      case 'vulnerable':
        return say`Noted for ${name}.`;
      case 'allergy':
        return say`Noted: no ${value ?? 'such thing'} for ${name}. Check the labels too.`;
      case 'diet':
        return say`Noted: ${name}, ${value ?? 'a diet'}.`;
      case 'eats-at':
        return say`Noted: ${name} ${name === 'that guest' ? 'eats' : 'eat'} at ${value ?? 'another hour'}. The roast stays whole; feed them from the sides.`;
      default:
        return say`Noted: ${value ?? 'another doneness'} for ${name}. End slices, or a minute in hot gravy; the roast stays as it is.`;
    }
  },
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
  'dish-added': ({ dish }, scene) => capital(say`${dishTitle(scene.dinner, dish)} it is.`),
  'dish-unknown': ({ dish }) =>
    say`I have no card for ${dish.replace(/-/g, ' ')}, so I have not noted it.`,
  'dish-dropped': ({ dish }, scene) => say`No ${dishTitle(scene.dinner, dish)}, then.`,
  'units-set': (_, scene) =>
    scene.dinner.units.temperature === 'C'
      ? say`Celsius from now on.`
      : say`Fahrenheit from now on.`,
  lacked: ({ thing, step }, scene) =>
    step
      ? sentences([say`Another way, then.`, callWords(step, scene)])
      : say`No ${thing.replace(/-/g, ' ')}: noted. I will not count on it.`,
  'setup-noted': () => say`Noted.`,
  'hands-added': ({ who }) =>
    capital(say`${who} can take what runs beside yours. I have shared it out.`),
  'cook-away': ({ until, minutes }, scene) => {
    const due = (scene.plan?.steps ?? []).find(
      (step) =>
        step.state === 'planned' &&
        step.startAt > scene.now &&
        step.startAt < until &&
        step.handsOn !== 'none',
    );
    return due
      ? say`Before you are back, at ${clock(due.startAt, scene.dinner)}: ${due.title}. Somebody must do it, or do it now.`
      : say`Nothing needs you for ${duration(minutes)}. Be back by ${clock(until, scene.dinner)}.`;
  },
  'reading-noted': readingWords,
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
          ]);
    if (step === 'carve')
      return sentences([say`Carve away.`, assumed, cautionWords('carve', scene)]);
    return presumed.includes(step)
      ? presumedWords(presumed, scene)
      : sentences([say`Good.`, assumed]);
  },
  'step-moved': ({ step, happenedAt }, scene) =>
    sentences([
      capital(say`${titleOf(scene.dinner, step)}: ${clock(happenedAt, scene.dinner)}, noted.`),
      step === 'roast-in' || step === 'oven-down' ? pullWords(scene) : silent,
    ]),
  'step-not-done': ({ step }, scene) =>
    say`Take your time with it: ${titleOf(scene.dinner, step)}. Say when it is done.`,
  'step-skipped': ({ step }, scene) =>
    step === 'rest'
      ? say`Carve now, then. It will bleed a little on the board.`
      : say`We skip it: ${titleOf(scene.dinner, step)}.`,
  'step-needed': ({ step }, scene) =>
    say`There is no dinner without that: ${titleOf(scene.dinner, step)}. Tell me when it is done.`,
  'nothing-open': () => say`Nothing is open just now. Which step do you mean?`,
  'roast-out': ({ presumed }, scene) => {
    const { plan, dinner } = scene;
    const carveAt = plan?.steps.find((step) => step.id === 'carve')?.startAt;
    return sentences([
      say`Out it is.`,
      presumedWords(presumed, scene),
      plan && carveAt !== undefined
        ? say`Tent it loosely and let it rest till ${clock(carveAt, dinner)}; it climbs to about ${degrees(plan.coreAtServingCelsius.p50, dinner.units)}.`
        : silent,
      scene.options && scene.options.length > 0 ? offer(scene.options, scene) : silent,
    ]);
  },
  trouble: ({ trouble }, scene) =>
    troubleWords[trouble]?.(scene) ?? say`Noted. Tell me what has changed.`,
  emergency: ({ kind }) => emergencyWords[kind],
  'running-behind': ({ minutes }, scene) =>
    sentences([
      scene.plan &&
      minutesBetween(scene.plan.serving.wantedAt, scene.plan.serving.likelyAt) + (minutes ?? 0) > 10
        ? tableWords(scene)
        : say`There is room for that.`,
      scene.plan ? say`Dinner at ${clock(scene.plan.serving.likelyAt, scene.dinner)}.` : silent,
    ]),
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
      capital(say`${option.title}: dinner at ${clock(option.servingAt, scene.dinner)}.`),
      say`${degrees(option.coreAtServingCelsius.p50, scene.dinner.units)} at the knife.`,
    ]),
  'no-such-option': ({ count: size }) => say`There are ${count(size)} to choose from. Which one?`,
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

export const isBelowConsumerMinimum = (celsius: number): boolean =>
  fahrenheitOfCelsius(celsius) < 144.5;
