/** Answers to questions, from the plan, the forecast and the cards. The first sentence carries it. */
import { assertNever } from '../../base/assert.ts';
import { minutesBetween } from '../../base/time.ts';
import { celsiusOf, celsiusOfFahrenheit, fahrenheitOfCelsius } from '../../base/units.ts';
import type { Card, Ingredient } from '../../kitchen/card.ts';
import { menuOf, roastCardOf } from '../../kitchen/dinner.ts';
import { type Band, coreAtMinute } from '../../kitchen/forecast.ts';
import type { Heard } from '../../kitchen/heard.ts';
import type { PlannedStep, Reason } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { nextTimes, wholeDay } from './day.ts';
import { offer } from './options.ts';
import { safetyRules } from './safety.ts';
import { callWords, dishTitle, findStep, howWords, titleOf } from './steps.ts';
import { between, clock, count, degrees, duration, ovenDegrees, weight } from './words.ts';

export function answer(heard: Heard, scene: Scene): Spoken {
  switch (heard.intent) {
    case 'ask-next':
      return nextWords(scene);
    case 'ask-status':
      return statusWords(scene);
    case 'ask-plan':
      return scene.plan
        ? sentences([
            say`Dinner at ${clock(scene.plan.serving.likelyAt, scene.dinner)}.`,
            wholeDay(scene),
          ])
        : noPlan;
    case 'ask-options':
      return scene.options && scene.options.length > 0
        ? offer(scene.options, scene)
        : say`Nothing needs choosing: the plan holds. Tell me what should change, and I will say what it costs.`;
    case 'ask-shopping':
      return shoppingWords(scene);
    case 'ask-time-left':
      return timeLeftWords(heard.about, scene);
    case 'ask-how':
      return howAnswer(heard.topic, scene);
    case 'ask-why':
      return whyAnswer(heard.topic, scene);
    case 'ask-amount':
      return amountAnswer(heard.ingredient, scene);
    case 'ask-substitute':
      return substituteAnswer(heard.ingredient, scene);
    case 'ask-temperature':
      return temperatureAnswer(heard, scene);
    case 'ask-safety':
      return safetyAnswer(heard.about, scene);
    case 'ask-guests':
      return guestsAnswer(scene);
    default:
      return silent;
  }
}

const noPlan = say`There is no plan yet: tell me the roast, the hour, how many, and how you like it.`;

export function currentStepOf(scene: Scene): PlannedStep | undefined {
  const steps = scene.plan?.steps ?? [];
  const open = steps.filter(
    (step) => step.state === 'active' && step.handsOn !== 'none' && step.id !== 'rest',
  );
  return (
    open.filter((step) => minutesBetween(step.startAt, scene.now) < 90).at(-1) ??
    steps.find((step) => step.state === 'due')
  );
}

export function nextStepOf(scene: Scene): PlannedStep | undefined {
  return scene.plan?.steps.find(
    (step) =>
      (step.state === 'planned' || step.state === 'due') &&
      step.id !== 'rest' &&
      step.id !== 'check',
  );
}

function nextWords(scene: Scene): Spoken {
  const { plan, dinner } = scene;
  if (!plan) return noPlan;
  const next = nextStepOf(scene);
  if (!next) return say`Nothing more: that was the dinner.`;
  const look =
    plan.checkAt !== undefined && plan.checkAt < next.startAt && scene.stage !== 'prep'
      ? say`First a look at the core at ${clock(plan.checkAt, dinner)}.`
      : silent;
  if (minutesBetween(scene.now, next.startAt) <= 2) return sentences([callWords(next.id, scene)]);
  return sentences([
    say`Next, at ${clock(next.startAt, dinner)}: ${next.title}.`,
    look,
    say`Nothing for your hands until then.`,
  ]);
}

function statusWords(scene: Scene): Spoken {
  const { plan, dinner, stage } = scene;
  if (!plan) return noPlan;
  switch (stage) {
    case 'planning':
    case 'prep':
    case 'preheat': {
      const current = currentStepOf(scene);
      return sentences([
        say`Roast in at ${clock(plan.roastInAt, dinner)}, dinner at ${clock(plan.serving.likelyAt, dinner)}.`,
        current ? say`You are to ${current.title}.` : silent,
      ]);
    }
    case 'sear':
    case 'low-roast': {
      const core = coreNow(scene);
      return sentences([
        core ? say`The core is about ${degrees(core.p50, dinner.units)}.` : silent,
        say`Likely out at ${clock(plan.pullAt.p50, dinner)}, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}, dinner at ${clock(plan.serving.likelyAt, dinner)}.`,
      ]);
    }
    case 'rest':
    case 'hold':
      return say`It is resting; carve at ${clock(carveAt(scene), dinner)}, dinner at ${clock(plan.serving.likelyAt, dinner)}.`;
    case 'carve':
      return say`You are carving; dinner at ${clock(plan.serving.likelyAt, dinner)}.`;
    case 'served':
      return safetyRules.leftovers.sentence(scene);
    case 'put-away':
      return say`All done and put away.`;
    default:
      return assertNever(stage);
  }
}

const carveAt = (scene: Scene): number =>
  scene.plan?.steps.find((step) => step.id === 'carve')?.startAt ?? scene.now;

/** The core now by the forecast. */
export const coreNow = ({ plan, forecast, now }: Scene): Band | undefined =>
  plan && forecast ? coreAtMinute(forecast, minutesBetween(plan.roastInAt, now)) : undefined;

function timeLeftWords(about: string | undefined, scene: Scene): Spoken {
  const { plan, dinner } = scene;
  if (!plan) return noPlan;
  const step = about === undefined ? undefined : stepAbout(about, scene);
  if (step && step.id !== 'serve') {
    const until = step.state === 'active' ? step.endAt : step.startAt;
    const word =
      step.state === 'active' ? say`${step.title}: done in about` : say`${step.title}: in`;
    return capital(
      say`${word} ${duration(minutesBetween(scene.now, until))}, at ${clock(until, dinner)}.`,
    );
  }
  const roastOut =
    plan.steps.find((one) => one.id === 'pull')?.state !== 'done' && scene.stage !== 'rest';
  return sentences([
    say`Dinner in ${duration(minutesBetween(scene.now, plan.serving.likelyAt))}, at ${clock(plan.serving.likelyAt, dinner)}.`,
    roastOut
      ? say`The roast likely comes out at ${clock(plan.pullAt.p50, dinner)}, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}.`
      : silent,
  ]);
}

/** The planned step that a topic names: its id, its dish, or words of its title. */
export function stepAbout(about: string, scene: Scene): PlannedStep | undefined {
  const steps = scene.plan?.steps ?? [];
  const roast = about === 'roast' || about === scene.dinner.roast.cut;
  if (roast)
    return (
      steps.find((step) => step.id === 'pull' && step.state !== 'done') ??
      steps.find((step) => step.id === 'carve')
    );
  if (about === 'dinner') return steps.find((step) => step.id === 'serve');
  return (
    steps.find((step) => step.id === about) ??
    steps.find((step) => step.card === about && step.state !== 'done') ??
    steps.find((step) => step.title.includes(about))
  );
}

function howAnswer(topic: string | undefined, scene: Scene): Spoken {
  const id = topic ?? currentStepOf(scene)?.id ?? nextStepOf(scene)?.id;
  const found = id === undefined ? undefined : stepForTopic(id, scene);
  if (!found)
    return say`I have no card for that${topic ? ` (${topic})` : ''}. Ask me about a step of this dinner.`;
  const lines = howWords(found.step, scene);
  return {
    text: sentences([...lines, say`Right: ${found.step.right}`, say`If not: ${found.step.wrong}`])
      .text,
    speech: sentences(lines.slice(0, 3)).speech,
  };
}

/** The card's step for an id, a dish or a word of its names. */
function stepForTopic(topic: string, scene: Scene): ReturnType<typeof findStep> {
  const exact = findStep(scene.dinner, topic);
  if (exact) return exact;
  for (const card of scene.dinner.cards) {
    if (card.id === topic && card.steps[0]) return { card, step: mainStep(card) };
    for (const step of card.steps)
      if (
        [step.title, ...(step.names ?? [])].some(
          (name) => name.includes(topic) || topic.includes(name),
        )
      )
        return { card, step };
  }
  return undefined;
}

const mainStep = (card: Card): Card['steps'][number] =>
  card.steps.reduce((best, step) => (step.how.length > best.how.length ? step : best));

function whyAnswer(topic: string | undefined, scene: Scene): Spoken {
  const { plan } = scene;
  if (!plan) return noPlan;
  const step = topic === undefined ? undefined : stepAbout(topic, scene);
  if (!step && topic !== undefined) {
    const found = stepForTopic(topic, scene);
    if (found?.step.why) return say`${found.step.why}`;
  }
  const meant = step ?? currentStepOf(scene) ?? nextStepOf(scene);
  if (!meant) return say`Nothing stands in the plan that wants a reason.`;
  const why = findStep(scene.dinner, meant.id)?.step.why;
  return sentences([reasonWords(meant, scene), why ? say`${why}` : silent]);
}

/** Why a step stands where it stands. */
export function reasonWords(step: PlannedStep, scene: Scene): Spoken {
  const { dinner, plan } = scene;
  const head = say`${step.title} at ${clock(step.startAt, dinner)}`;
  const parts = step.why
    .map((reason) => reasonPart(reason, step, scene))
    .filter((part) => part.text !== '');
  return parts.length === 0 || !plan
    ? capital(say`${head}.`)
    : capital(say`${head}, ${list(parts)}.`);
}

function reasonPart(reason: Reason, step: PlannedStep, scene: Scene): Spoken {
  const { dinner } = scene;
  switch (reason.key) {
    case 'told':
      return step.id === 'serve' ? say`since that is when you want it` : say`since it is under way`;
    case 'before-table':
      return say`since the table wants ${duration(reason.minutes)} after it`;
    case 'before-pull':
      return say`since the pull is likely at ${clock(reason.pullAt, dinner)} and it needs ${duration(reason.minutes)}`;
    case 'with-anchor':
      return say`since it has ${duration(Math.abs(reason.minutes))} to go ${reason.minutes >= 0 ? 'before' : 'after'} ${anchorWords(reason.anchor)} at ${clock(reason.anchorAt, dinner)}`;
    case 'after-step':
      return say`since it follows "${titleOf(dinner, reason.step)}"`;
    case 'before-step':
      return say`since "${titleOf(dinner, reason.step)}" comes ${duration(reason.minutes)} later`;
    case 'hands-free':
      return say`since your hands are free`;
    case 'hands-busy':
      return reason.step === 'away'
        ? say`since you are away until then`
        : say`since your hands are busy before it with "${titleOf(dinner, reason.step)}"`;
    case 'oven-too-cool':
      return say`since the oven at ${ovenDegrees(reason.celsius, dinner.units)} is no heat for it`;
    case 'oven-busy':
      return say`since the oven is taken by the ${dishTitle(dinner, reason.dish)}`;
    case 'roast-takes':
      return say`since the roast likely takes ${duration(reason.minutes)}`;
    case 'rest-takes':
      return say`since the rest takes ${duration(reason.minutes)}`;
    case 'as-soon-as-possible':
      return say`since your hands are free and it can be done ahead`;
    case 'course':
      return say`since that is the course you took`;
    default:
      return assertNever(reason);
  }
}

function anchorWords(anchor: string): string {
  const words: Record<string, string> = {
    'roast-in': 'the roast goes in',
    'oven-down': 'the oven goes down',
    pull: 'the pull',
    carve: 'the carving',
    table: 'dinner',
  };
  return words[anchor] ?? anchor;
}

const cardsOf = (scene: Scene): Card[] => {
  const roast = roastCardOf(scene.dinner);
  return [...(roast ? [roast] : []), ...menuOf(scene.dinner)];
};

/** How much of an ingredient this dinner takes, in its own unit. */
export function amountOf(part: Ingredient, scene: Scene): number {
  const { guests, roast } = scene.dinner;
  switch (part.per) {
    case 'guest':
      return part.amount * (guests ?? 6);
    case 'batch':
      return part.amount;
    case 'kilogram':
      return part.amount * (roast.kilograms ?? (roast.bones ?? 3) * 1.05);
    case 'bone':
      return part.amount * (roast.bones ?? 3);
    default:
      return assertNever(part.per);
  }
}

function measure(amount: number, unit: string, scene: Scene): Spoken {
  const { dinner } = scene;
  if (unit === 'g' && amount >= 450) return weight(amount / 1000, dinner.units);
  if (unit === 'g' && dinner.units.weight === 'lb') {
    const ounces = Math.max(0.5, Math.round((amount / 28.35) * 2) / 2);
    return {
      text: `${Math.round(amount)} g (${ounces} oz)`,
      speech: `${count(Math.round(amount)).speech} grams`,
    };
  }
  const shown = amount >= 10 ? Math.round(amount) : Math.round(amount * 2) / 2;
  const words: Record<string, string> = {
    g: 'grams',
    ml: 'millilitres',
    tsp: 'teaspoons',
    tbsp: 'tablespoons',
  };
  const word = words[unit] ?? (shown === 1 ? unit : unit.endsWith('h') ? `${unit}es` : `${unit}s`);
  const plain = unit === 'piece' ? '' : ` ${word}`;
  return {
    text: `${shown}${unit === 'g' || unit === 'ml' ? ` ${unit}` : plain}`,
    speech: `${count(shown).speech}${plain}`,
  };
}

function ingredientFor(name: string, scene: Scene): { card: Card; part: Ingredient } | undefined {
  const wanted = name.toLowerCase();
  const all = cardsOf(scene).flatMap((card) => card.ingredients.map((part) => ({ card, part })));
  return (
    all.find(({ part }) => part.item === wanted) ??
    all.find(({ part }) =>
      [part.item, ...(part.names ?? [])].some((one) => one.toLowerCase() === wanted),
    ) ??
    all.find(({ part }) =>
      [part.item, ...(part.names ?? [])].some(
        (one) => one.includes(wanted) || wanted.includes(one),
      ),
    )
  );
}

function amountAnswer(ingredient: string | undefined, scene: Scene): Spoken {
  const found = ingredient === undefined ? undefined : ingredientFor(ingredient, scene);
  if (!found)
    return ingredient
      ? say`None of this dinner's cards asks for ${ingredient}.`
      : say`How much of what? Name it and I will say.`;
  const amount = measure(amountOf(found.part, scene), found.part.unit, scene);
  return say`${amount} of ${found.part.item}, for the ${found.card.title}.`;
}

function substituteAnswer(ingredient: string | undefined, scene: Scene): Spoken {
  if (ingredient && /\bdried\b/.test(ingredient))
    return say`Yes: a third as much dried as fresh, by volume, and in earlier so that it softens.`;
  const found = ingredient === undefined ? undefined : ingredientFor(ingredient, scene);
  if (!found)
    return say`I know of no stand-in for ${ingredient ?? 'that'}. Leave it out, or tell me the dish to drop.`;
  return found.part.instead
    ? say`${found.part.instead}`
    : say`Nothing does the same as ${found.part.item}; the ${found.card.title} can go without it.`;
}

function shoppingWords(scene: Scene): Spoken {
  const lines = new Map<string, { amount: number; unit: string; shelf: string }>();
  for (const card of cardsOf(scene)) {
    for (const part of card.ingredients) {
      const key = `${part.item}|${part.unit}`;
      const known = lines.get(key);
      lines.set(key, {
        amount: (known?.amount ?? 0) + amountOf(part, scene),
        unit: part.unit,
        shelf: part.shelf,
      });
    }
  }
  const rows = [...lines].sort((a, b) =>
    a[1].shelf < b[1].shelf ? -1 : a[1].shelf > b[1].shelf ? 1 : 0,
  );
  if (rows.length === 0) return noPlan;
  const text = rows
    .map(([key, row]) => `${measure(row.amount, row.unit, scene).text} ${key.split('|')[0]}`)
    .join('\n');
  return {
    text: `${rows.length} things to buy:\n${text}`,
    speech: `${count(rows.length).speech} things; the list is on the screen.`,
  };
}

function temperatureAnswer(
  heard: Extract<Heard, { intent: 'ask-temperature' }>,
  scene: Scene,
): Spoken {
  const { plan, dinner } = scene;
  if (heard.temperature !== undefined && plan) {
    const celsius = celsiusOf(heard.temperature, heard.unit ?? dinner.units.temperature);
    const gap = plan.pullCelsius - celsius;
    if (gap > 1)
      return say`${degrees(celsius, dinner.units)} is short of the pull: that is ${degrees(plan.pullCelsius, dinner.units)}, likely at ${clock(plan.pullAt.p50, dinner)}.`;
    return say`${degrees(celsius, dinner.units)} is at or past the pull, ${degrees(plan.pullCelsius, dinner.units)}. If the core reads that, pull it.`;
  }
  const step = heard.about === undefined ? undefined : stepAbout(heard.about, scene);
  const oven = step ? findStep(dinner, step.id)?.step.oven : undefined;
  if (oven)
    return say`${ovenDegrees(celsiusOfFahrenheit(oven.likelyFahrenheit), dinner.units)} for the ${dishTitle(dinner, step?.card ?? '')}.`;
  if (heard.about === 'oven' && plan)
    return plan.ovenNowCelsius > 0
      ? say`The oven belongs at ${ovenDegrees(plan.ovenNowCelsius, dinner.units)} now.`
      : say`The oven is off for now; ${nextTimes(scene)}`;
  if (!plan) return noPlan;
  return say`Pull it at ${degrees(plan.pullCelsius, dinner.units)}; the rest carries it to about ${degrees(plan.coreAtServingCelsius.p50, dinner.units)}, for ${degrees(plan.serveCelsius, dinner.units)}.`;
}

function safetyAnswer(about: string | undefined, scene: Scene): Spoken {
  const { dinner } = scene;
  const topic = (about ?? '').toLowerCase();
  if (/pregnan|child|kid|baby|toddler|elder|old|grand|gran|ill|sick|immun|chemo/.test(topic))
    return safetyRules.vulnerable.sentence(scene);
  if (/left ?over|fridge|keep|next day|tomorrow|reheat/.test(topic))
    return safetyRules.leftovers.sentence(scene);
  if (/hold|warm|wait/.test(topic)) return safetyRules.hold.sentence(scene);
  if (/counter|out of|sat out|left out|overnight|room temp/.test(topic))
    return safetyRules['out-of-fridge'].sentence(scene);
  if (/chicken|turkey|poultry|stuffing|mince|ground/.test(topic))
    return safetyRules.poultry.sentence(scene);
  if (
    dinner.roast.prepared &&
    dinner.roast.prepared !== 'whole' &&
    dinner.roast.prepared !== 'tied-back'
  )
    return safetyRules['surface-inside'].sentence(scene);
  const serve = dinner.target?.serveCelsius;
  const below = serve !== undefined && fahrenheitOfCelsius(serve) < 144.5;
  return sentences([
    safetyRules['below-145'].sentence(scene),
    below && serve !== undefined
      ? say`Yours is set for ${degrees(serve, dinner.units)}: your choice to make.`
      : silent,
  ]);
}

function guestsAnswer(scene: Scene): Spoken {
  const { dinner } = scene;
  if (dinner.guests === undefined) return say`You have not said how many are coming.`;
  const notes = dinner.notes.map(
    (note) => say`${note.who ?? 'one guest'}: ${note.value ?? note.need}`,
  );
  return notes.length === 0
    ? say`${count(dinner.guests)} at table, and nothing noted about any of them.`
    : say`${count(dinner.guests)} at table. Noted: ${list(notes)}.`;
}
