/**
 * The record of a dinner, from its facts: every reading against what was forecast for its minute
 * without it, what was planned against what happened.
 */
import { addMinutes } from '../base/time.ts';
import { type Dinner, dinnerOf, menuOf, roastCardOf, uncardedOf } from '../kitchen/dinner.ts';
import type { Fact, FactOf } from '../kitchen/facts.ts';
import { standing } from '../kitchen/fold.ts';
import { coreAfterRest } from '../kitchen/forecast.ts';
import type { DinnerRecord, RecordedMoment, RecordedReading } from '../kitchen/record.ts';
import { moments } from '../machine/moments.ts';
import { lessonsOf } from '../planner/days/lessons.ts';
import { roastCameOutAt, roastWentInAt } from '../planner/roast-day.ts';
import { titleOf } from '../reply/en/steps.ts';
import { remembering } from './compute.ts';
import { coreAt, type Outlook, outlookOf } from './outlook.ts';
import type { Compute } from './ports.ts';

/** The chores of the days before that change the roast, and then the moments of its day. */
const recordedSteps = ['thaw', 'salt-ahead', ...moments] as const;

export async function recordOf(
  id: string,
  facts: readonly Fact[],
  compute: Compute,
): Promise<DinnerRecord> {
  const asked = remembering(compute);
  const dinner = dinnerOf(id, facts);
  const outlook = await outlookOf(id, facts, dinner.lastAt, asked);
  const counting = standing(facts);
  const plans = counting.filter((fact): fact is FactOf<'plan-told'> => fact.type === 'plan-told');
  const record: Omit<DinnerRecord, 'lessons'> = {
    id,
    timeZone: dinner.timeZone,
    units: dinner.units,
    openedAt: dinner.openedAt,
    roast: {
      title: roastCardOf(dinner)?.title ?? 'roast',
      kilograms: dinner.roast.kilograms,
      bones: dinner.roast.bones,
    },
    method: dinner.method,
    doneness: dinner.target?.doneness,
    serveCelsius: dinner.target?.serveCelsius,
    pullCelsius: outlook.plan?.pullCelsius,
    guests: dinner.guests,
    notes: dinner.notes,
    menu: [...menuOf(dinner).map((card) => card.title), ...uncardedOf(dinner)],
    serving: {
      firstWantedAt: dinner.servingFirstAt,
      wantedAt: dinner.servingAt,
      promisedAt: plans[0]?.servingAt,
      servedAt: happenedAt(dinner, 'serve'),
    },
    moments: momentsOf(dinner, plans),
    readings: await readingsOf(id, facts, dinner, outlook, asked),
    core: curveOf(outlook),
    oven: dinner.oven.map(({ at, celsius }) => ({ at, celsius })),
    coreAtKnifeCelsius: atTheKnife(dinner, outlook),
    chosen: chosenOf(counting),
    troubles: dinner.troubles.map((one) => ({ trouble: one.trouble, at: one.happenedAt })),
    emergencies: dinner.emergencies.map((one) => ({ kind: one.kind, at: one.at })),
    learnt: dinner.readings.length > 0 ? outlook.forecast?.learnt : undefined,
  };
  const lessons = lessonsOf(record, {
    pullCalledAt: dinner.calls.get('pull:pull')?.firstAt,
    saltAheadCalled: dinner.calls.has('step-due:salt-ahead'),
    saltAheadDone:
      dinner.steps.get('salt-ahead')?.doneAt !== undefined ||
      dinner.steps.get('salt-ahead')?.skipped === true,
    frozen: outlook.question?.roast.frozen === true,
  });
  return { ...record, lessons };
}

function happenedAt(dinner: Dinner, step: string): number | undefined {
  const record = dinner.steps.get(step);
  return step === 'carve' || step === 'thaw'
    ? (record?.startedAt ?? record?.doneAt)
    : (record?.doneAt ?? record?.startedAt);
}

function lastBeforeRoast(
  plans: readonly FactOf<'plan-told'>[],
  dinner: Dinner,
): FactOf<'plan-told'> | undefined {
  const wentInAt = roastWentInAt(dinner) ?? Number.POSITIVE_INFINITY;
  return plans.filter((plan) => plan.at < wentInAt).at(-1) ?? plans[0];
}

function momentsOf(dinner: Dinner, plans: readonly FactOf<'plan-told'>[]): RecordedMoment[] {
  const plan = lastBeforeRoast(plans, dinner);
  return recordedSteps.flatMap((step): RecordedMoment[] => {
    const planned = plan?.starts.find((one) => one.step === step)?.at;
    const happened = happenedAt(dinner, step);
    if (planned === undefined && happened === undefined) return [];
    return [
      {
        step,
        title: titleOf(dinner, step),
        plannedAt: planned,
        lastToldAt: plans
          .filter((one) => happened === undefined || one.at < happened)
          .findLast((one) => one.starts.some((start) => start.step === step))
          ?.starts.find((start) => start.step === step)?.at,
        happenedAt: happened,
        presumed: dinner.steps.get(step)?.presumed === true,
      },
    ];
  });
}

/** Each reading beside the forecast that stood just before it was told. */
async function readingsOf(
  id: string,
  facts: readonly Fact[],
  dinner: Dinner,
  outlook: Outlook,
  compute: Compute,
): Promise<RecordedReading[]> {
  const wentInAt = roastWentInAt(dinner);
  const outAt = roastCameOutAt(dinner) ?? Number.POSITIVE_INFINITY;
  if (wentInAt === undefined) return [];
  const own = dinner.readings.filter((one) => one.happenedAt >= wentInAt);
  const suspects = new Set(outlook.forecast?.suspectReadings.map((one) => one.index));
  const recorded: RecordedReading[] = [];
  for (const [index, reading] of own.entries()) {
    const before = facts.filter((fact) => fact.position < reading.position);
    const then = await outlookOf(id, before, reading.toldAt, compute);
    recorded.push({
      at: reading.happenedAt,
      celsius: reading.celsius,
      forecast: reading.happenedAt <= outAt ? coreAt(then, reading.happenedAt) : undefined,
      suspect: suspects.has(index),
    });
  }
  return recorded;
}

function curveOf({ forecast, plan, dinner }: Outlook): DinnerRecord['core'] {
  if (!forecast || !plan || roastWentInAt(dinner) === undefined) return [];
  return forecast.core.map((one) => ({
    at: addMinutes(plan.roastInAt, one.minute),
    celsius: one.celsius,
  }));
}

/** The core when it was cut: as long after the pull as it rested. */
function atTheKnife(dinner: Dinner, { forecast }: Outlook): DinnerRecord['coreAtKnifeCelsius'] {
  const outAt = roastCameOutAt(dinner);
  const cutAt = happenedAt(dinner, 'carve') ?? happenedAt(dinner, 'serve');
  if (!forecast || outAt === undefined || cutAt === undefined) return undefined;
  return coreAfterRest(forecast, (cutAt - outAt) / 60_000);
}

/** Titles of the options that were taken, chosen or kept. */
function chosenOf(facts: readonly Fact[]): string[] {
  const chosen: string[] = [];
  let offered: FactOf<'options-offered'> | undefined;
  const take = (n: number | undefined): void => {
    const title = offered?.options.find((one) => one.n === n)?.title;
    if (title) chosen.push(title);
  };
  for (const fact of facts) {
    if (fact.type === 'options-offered') {
      offered = fact;
      take(fact.taken);
    }
    if (fact.type === 'option-chosen') {
      chosen.pop();
      take(fact.n);
    }
  }
  return chosen;
}
