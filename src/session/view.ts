/** The view of an outlook: what screens, bridges and scripts may know. */
import { type Instant, isoWithOffset, minutesBetween } from '../base/time.ts';
import { fahrenheitOfCelsius, poundsOfKilograms } from '../base/units.ts';
import { type Dinner, menuOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import {
  type Band,
  type Forecast,
  type SliceOutlook,
  sliceIfOutAt,
  sliceRested,
} from '../kitchen/forecast.ts';
import type { Plan } from '../kitchen/plan.ts';
import type { FahrenheitBand, View } from '../kitchen/view.ts';
import { roastWentInAt } from '../planner/roast-day.ts';
import { assumptionWords } from '../reply/en/assumptions.ts';
import { questionWords } from '../reply/en/questions.ts';
import { type SafetyRuleId, safetyRules } from '../reply/en/safety.ts';
import { nextStepOf } from '../reply/en/standing.ts';
import { reasonWords } from '../reply/en/why.ts';
import type { Scene } from '../reply/scene.ts';
import { coreAt, type Outlook } from './outlook.ts';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const fahrenheit = (celsius: number): number => tenth(fahrenheitOfCelsius(celsius));
const band = (celsius: Band): FahrenheitBand => ({
  p10: fahrenheit(celsius.p10),
  p50: fahrenheit(celsius.p50),
  p90: fahrenheit(celsius.p90),
});
const rounded = (value: Band, digits: number): Band => {
  const scale = 10 ** digits;
  const round = (x: number): number => Math.round(x * scale) / scale;
  return { p10: round(value.p10), p50: round(value.p50), p90: round(value.p90) };
};

export function sceneOf(outlook: Outlook, more: Partial<Scene> = {}): Scene {
  return {
    dinner: outlook.dinner,
    now: outlook.now,
    stage: outlook.standing.stage,
    dishes: outlook.standing.dishes,
    plan: outlook.plan,
    forecast: outlook.forecast,
    firstPlan: false,
    ...more,
  };
}

export function viewOf(outlook: Outlook, facts: readonly Fact[]): View {
  const { dinner, plan, now } = outlook;
  const iso = (at: Instant): string => isoWithOffset(at, dinner.timeZone);
  const scene = sceneOf(outlook);
  const { question, roast } = dinner;
  const next = plan ? nextStepOf(scene) : undefined;
  const asking = question && {
    kind: question.kind,
    expecting: question.expecting,
    text: questionWords(question, scene).text,
  };
  return {
    id: dinner.id,
    at: iso(now),
    timeZone: dinner.timeZone,
    units: dinner.units,
    stage: outlook.standing.stage,
    sides: menuOf(dinner).map((card) => ({
      id: card.id,
      title: card.title,
      kind: card.card,
      state: outlook.standing.dishes.get(card.id) ?? 'waiting',
    })),
    serving: servingOf(dinner, plan, iso),
    ...(dinner.guests === undefined ? {} : { guests: dinner.guests }),
    roast: {
      ...(roast.cut === undefined ? {} : { cut: roast.cut }),
      ...(roast.kilograms === undefined
        ? {}
        : {
            kilograms: Math.round(roast.kilograms * 1000) / 1000,
            pounds: Math.round(poundsOfKilograms(roast.kilograms) * 100) / 100,
          }),
      ...(roast.bones === undefined ? {} : { bones: roast.bones }),
      ...(roast.boneless === undefined ? {} : { boneless: roast.boneless }),
      ...(roast.prepared === undefined ? {} : { prepared: roast.prepared }),
      ...(roast.frozen === undefined ? {} : { frozen: roast.frozen }),
    },
    target: {
      ...(dinner.target?.doneness ? { doneness: dinner.target.doneness } : {}),
      ...(dinner.target ? { serveFahrenheit: fahrenheit(dinner.target.serveCelsius) } : {}),
      ...(plan ? { pullFahrenheit: fahrenheit(plan.pullCelsius) } : {}),
    },
    oven: {
      setFahrenheit:
        plan && plan.ovenNowCelsius > 0 ? Math.round(fahrenheitOfCelsius(plan.ovenNowCelsius)) : 0,
      program: (plan?.oven ?? []).map((move) => ({
        at: iso(move.at),
        fahrenheit: move.celsius > 0 ? Math.round(fahrenheitOfCelsius(move.celsius)) : 0,
        why: move.why,
        ...(move.oven === undefined ? {} : { oven: move.oven }),
      })),
    },
    readings: dinner.readings.map((one) => ({
      at: iso(one.happenedAt),
      fahrenheit: fahrenheit(one.celsius),
    })),
    ...(plan && outlook.forecast
      ? { forecast: forecastOf(outlook, plan, outlook.forecast, iso) }
      : {}),
    steps: (plan?.steps ?? []).map((step) => ({
      id: step.id,
      card: step.card,
      title: step.title,
      start: iso(step.startAt),
      end: iso(step.endAt),
      state: step.state,
      hands: [...step.hands],
      handsOn: step.handsOn,
      needs: [...step.needs],
      why: reasonWords(step, scene).text,
      slackMinutes: step.slackMinutes,
    })),
    ...(next ? { next: { id: next.id, title: next.title, at: iso(next.startAt) } } : {}),
    ...(plan?.checkAt === undefined ? {} : { checkAt: iso(plan.checkAt) }),
    ...(asking ? { asking } : {}),
    ...(dinner.options
      ? {
          options: dinner.options.map((option) => ({
            n: option.n,
            kind: option.kind,
            title: option.title,
            serving: iso(option.servingAt),
            coreAtServing: band(option.coreAtServingCelsius),
            risk: option.risk,
          })),
        }
      : {}),
    cautions: [...dinner.cautioned]
      .filter((rule): rule is SafetyRuleId => rule in safetyRules)
      .map((rule) => ({
        text: safetyRules[rule].sentence(scene).text,
        source: safetyRules[rule].source,
      })),
    timers: dinner.timers
      .filter((timer) => timer.dueAt > now)
      .map((timer) => ({
        id: timer.id,
        ...(timer.label ? { label: timer.label } : {}),
        at: iso(timer.dueAt),
      })),
    guestNotes: dinner.notes.map(({ who, need, value }) => ({
      ...(who === undefined ? {} : { who }),
      need,
      ...(value === undefined ? {} : { value }),
    })),
    ...(dinner.emergency
      ? { emergency: { kind: dinner.emergency.kind, at: iso(dinner.emergency.at) } }
      : {}),
    paused: dinner.paused,
    position: facts.at(-1)?.position ?? -1,
  };
}

function servingOf(
  dinner: Dinner,
  plan: Plan | undefined,
  iso: (at: Instant) => string,
): View['serving'] {
  if (dinner.servingAt === undefined) return {};
  if (!plan) return { wanted: iso(dinner.servingAt) };
  return {
    wanted: iso(dinner.servingAt),
    likely: iso(plan.serving.likelyAt),
    earliest: iso(plan.serving.earliestAt),
    latest: iso(plan.serving.latestAt),
    onTimeChance: Math.round(plan.onTimeChance * 100) / 100,
    ...(plan.guestsAt === undefined ? {} : { guestsArrive: iso(plan.guestsAt) }),
    ...(plan.firstCourseAt === undefined ? {} : { firstCourse: iso(plan.firstCourseAt) }),
  };
}

function forecastOf(
  outlook: Outlook,
  plan: Plan,
  forecast: Forecast,
  iso: (at: Instant) => string,
): NonNullable<View['forecast']> {
  const at = (minute: number): string => iso(plan.roastInAt + Math.round(minute * 60_000));
  const ifPulled =
    roastWentInAt(outlook.dinner) === undefined
      ? undefined
      : sliceIfOutAt(forecast, {
          outMinute: minutesBetween(plan.roastInAt, outlook.now),
          restMinutes: plan.restMinutes,
        });
  const core = coreAt(outlook, outlook.now) ?? forecast.core[0]?.celsius ?? forecast.coreNowCelsius;
  return {
    pull: { p10: iso(plan.pullAt.p10), p50: iso(plan.pullAt.p50), p90: iso(plan.pullAt.p90) },
    core: forecast.core.map((one) => ({ at: at(one.minute), fahrenheit: band(one.celsius) })),
    coreNowFahrenheit: band(core),
    coreAtServingFahrenheit: band(plan.coreAtServingCelsius),
    peak: {
      fahrenheit: band(forecast.peak.celsius),
      at: iso(plan.pullAt.p50 + Math.round(forecast.peak.minutesAfterPull.p50 * 60_000)),
    },
    afterRest: forecast.afterRest.map((one) => ({
      minutesAfterPull: one.minutesAfterPull,
      fahrenheit: band(one.celsius),
    })),
    slice: sliceOf(sliceRested(forecast.slices, plan.restMinutes)),
    ...(ifPulled ? { sliceIfPulledNow: sliceOf(ifPulled) } : {}),
    assumptions: forecast.assumptions.map((one) => assumptionWords(one, outlook.dinner.units).text),
  };
}

const sliceOf = (slice: SliceOutlook): NonNullable<View['forecast']>['slice'] => ({
  greyBandMillimetres: rounded(slice.greyBandMillimetres, 1),
  pinkFraction: rounded(slice.pinkFraction, 2),
  minutesAfterPull: Math.round(slice.minutesAfterPull),
  radiusMillimetres: Math.round(slice.radiusMillimetres),
  profile: slice.profile.map(({ outward, celsius, hottestCelsius }) => ({
    outward,
    fahrenheit: band(celsius),
    hottestFahrenheit: band(hottestCelsius),
  })),
});
