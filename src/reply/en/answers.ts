/** Answers to questions, from the plan, the forecast and the cards. The first sentence carries it. */
import { assertNever } from '../../base/assert.ts';
import { minutesBetween } from '../../base/time.ts';
import type { Heard } from '../../kitchen/heard.ts';
import type { Scene } from '../scene.ts';
import { capital, type Spoken, say, sentences, silent } from '../spoken.ts';
import { boilingAnswer } from './boiling.ts';
import { comfortWords } from './comfort.ts';
import { wholeDay } from './day.ts';
import { eatsAnswer } from './eats.ts';
import { howAnswer, walkOf, walkWords } from './how.ts';
import { menuAnswer } from './menu.ts';
import { offerAsked } from './options.ts';
import { amountAnswer, substituteAnswer } from './pantry.ts';
import { safetyRules } from './safety.ts';
import { safetyAnswer } from './safety-answer.ts';
import { butcherAnswer, shoppingWords, sizeAnswer } from './shopping.ts';
import { sliceAnswer } from './slice.ts';
import { carveAt, coreNow, currentStepOf, nextStepOf, noPlan, stepAbout } from './standing.ts';
import { callWords } from './steps.ts';
import { supposedHourWords } from './supposed.ts';
import { guestsAnswer } from './table.ts';
import { temperatureAnswer } from './temperatures.ts';
import { whyAnswer } from './why.ts';
import { atTime, between, clock, degrees, duration } from './words.ts';

export function answer(heard: Heard, scene: Scene): Spoken {
  switch (heard.intent) {
    case 'ask-next':
      return nextWords(scene);
    case 'ask-status':
      return (heard.about === 'ruined' ? comfortWords(scene) : undefined) ?? statusWords(scene);
    case 'ask-plan':
      if (heard.about === 'menu') return menuAnswer(scene.dinner);
      return scene.plan && hourKnown(scene)
        ? sentences([say`Dinner ${atTime(scene.plan.serving.likelyAt, scene)}.`, wholeDay(scene)])
        : (hourAsked(scene) ?? noPlan);
    case 'ask-options':
      if (scene.options && scene.options.length > 0) return offerAsked(scene.options, scene);
      return (
        supposedHourWords(scene) ??
        say`Nothing needs choosing: the plan holds. Tell me what should change, and I will say what it costs.`
      );
    case 'ask-shopping':
      return heard.about === 'butcher' ? butcherAnswer(scene) : shoppingWords(scene);
    case 'ask-time-left':
      return timeLeftWords(heard.about, scene);
    case 'ask-how':
      return howAnswer(heard.topic, scene);
    case 'ask-why':
      return whyAnswer(heard, scene);
    case 'ask-amount':
      return heard.ingredient === 'roast'
        ? sizeAnswer(heard, scene)
        : amountAnswer(heard.ingredient, scene);
    case 'ask-substitute':
      return substituteAnswer(heard.ingredient, scene);
    case 'ask-temperature':
      return heard.about === 'boiling'
        ? boilingAnswer(heard, scene)
        : temperatureAnswer(heard, scene);
    case 'ask-slice':
      return sliceAnswer(heard, scene);
    case 'ask-safety':
      return safetyAnswer(heard.about, scene, heard.minutes);
    case 'ask-guests':
      return heard.about === 'eats' ? eatsAnswer(heard, scene) : guestsAnswer(heard.about, scene);
    default:
      return silent;
  }
}

function nextWords(scene: Scene): Spoken {
  const { plan, dinner } = scene;
  const walk = walkOf(scene);
  if (walk) return walkWords(walk, scene);
  if (!plan) return noPlan;
  const next = nextStepOf(scene);
  if (!next) return say`Nothing more: that was the dinner.`;
  const look =
    plan.checkAt !== undefined && plan.checkAt < next.startAt && scene.stage !== 'prep'
      ? say`First a look at the core at ${clock(plan.checkAt, dinner)}.`
      : silent;
  if (minutesBetween(scene.now, next.startAt) <= 2) return sentences([callWords(next.id, scene)]);
  const current = currentStepOf(scene);
  return sentences([
    current ? say`Now: ${current.title}.` : silent,
    say`Next, ${atTime(next.startAt, scene)}: ${next.title}.`,
    look,
    current ? silent : say`Nothing for your hands until then.`,
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
        say`Roast in ${atTime(plan.roastInAt, scene)}${dinnerTold(scene)}.`,
        current ? say`You are to ${current.title}.` : silent,
      ]);
    }
    case 'sear':
    case 'low-roast': {
      const core = coreNow(scene);
      return sentences([
        core ? say`The core is about ${degrees(core.p50, dinner.units)}.` : silent,
        say`${outTold(scene)}${dinnerTold(scene)}.`,
      ]);
    }
    case 'rest':
    case 'hold':
      return say`It is resting; carve at ${clock(carveAt(scene), dinner)}${dinnerTold(scene)}.`;
    case 'carve':
      return say`You are carving${dinnerTold(scene)}.`;
    case 'served':
      return safetyRules.leftovers.sentence(scene);
    case 'put-away':
      return say`All done and put away.`;
    default:
      return assertNever(stage);
  }
}

/** A table that nobody named is not told as a fact: it is asked for. */
const hourKnown = ({ dinner }: Scene): boolean => dinner.servingAt !== undefined;

const hourAsked = (scene: Scene): Spoken | undefined =>
  scene.plan && !hourKnown(scene)
    ? say`No hour is set. When is dinner? Then I can lay out the rest.`
    : undefined;

const dinnerTold = (scene: Scene): Spoken =>
  scene.plan && hourKnown(scene)
    ? say`, dinner at ${clock(scene.plan.serving.likelyAt, scene.dinner)}`
    : silent;

/** When it comes out, with the span that is still open. */
function outTold({ plan, dinner, now }: Scene): Spoken {
  if (!plan || plan.pullAt.p50 <= now + 60_000) return say`It should come out about now`;
  const { p10, p50, p90 } = plan.pullAt;
  return say`Likely out at ${clock(p50, dinner)}, between ${between(clock(p10, dinner), clock(p90, dinner))}`;
}

function timeLeftWords(about: string | undefined, scene: Scene): Spoken {
  const { plan, dinner } = scene;
  if (!plan) return noPlan;
  const step = about === undefined ? undefined : stepAbout(about, scene);
  if (step && step.id !== 'serve') {
    const until = step.state === 'active' ? step.endAt : step.startAt;
    if (minutesBetween(scene.now, until) < 1)
      return capital(
        step.state === 'active' ? say`${step.title}: about done.` : say`${step.title}: now.`,
      );
    const word =
      step.state === 'active' ? say`${step.title}: done in about` : say`${step.title}: in`;
    return capital(
      say`${word} ${duration(minutesBetween(scene.now, until))}, ${atTime(until, scene)}.`,
    );
  }
  const noHour = hourAsked(scene);
  const roastOut =
    plan.steps.find((one) => one.id === 'pull')?.state !== 'done' && scene.stage !== 'rest';
  return sentences([
    noHour ??
      say`Dinner in ${duration(minutesBetween(scene.now, plan.serving.likelyAt))}, ${atTime(plan.serving.likelyAt, scene)}.`,
    roastOut && (noHour === undefined || scene.stage === 'sear' || scene.stage === 'low-roast')
      ? say`The roast likely comes out at ${clock(plan.pullAt.p50, dinner)}, between ${between(clock(plan.pullAt.p10, dinner), clock(plan.pullAt.p90, dinner))}.`
      : silent,
  ]);
}
