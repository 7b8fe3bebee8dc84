/** Guests who keep other hours than the table: a supper before it, a carving after it. */
import { addMinutes, type Instant } from '../../base/time.ts';
import { firstCourseMinutes } from '../../kitchen/chores.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Plan, PlannedStep, Reason } from '../../kitchen/plan.ts';
import { figureOf } from '../../kitchen/safety.ts';
import { type Chore, clockAt, toldAt } from './chore.ts';

/** A supper of their own is put on so long before they eat. */
const supperMinutes = 15;
/** Those who came later have eaten after so long. */
const lateMealMinutes = 30;

/** Guests who eat before the table, and those who come after it. */
export function otherHours(dinner: Dinner, plan: Plan): Chore[] {
  const table = plan.serving.likelyAt;
  const early = dinner.notes.filter((note) => note.need === 'eats-at' && note.value);
  const later = dinner.notes.filter((note) => note.need === 'comes-later' && note.value);
  const why: Reason[] = [{ key: 'told' }];
  return [
    ...early.flatMap((note, index): Chore[] => {
      const startAt = addMinutes(clockAt(dinner, table, 0, note.value ?? ''), -supperMinutes);
      if (startAt >= table || startAt < toldAt(dinner)) return [];
      return [
        {
          id: `feed-early-${index + 1}`,
          kind: 'feed-early',
          startAt,
          minutes: { p10: 10, p50: supperMinutes, p90: 30 },
          handsOn: 'start',
          latestAt: table,
          why,
        },
      ];
    }),
    ...later.flatMap((note, index): Chore[] => {
      const startAt = laterAt(note.value ?? '', dinner, table);
      if (startAt === undefined || startAt <= table) return [];
      return [
        {
          id: `carve-later-${index + 1}`,
          kind: 'carve-later',
          startAt,
          minutes: { p10: 3, p50: 6, p90: 10 },
          handsOn: 'start',
          latestAt: addMinutes(table, 120),
          why,
        },
      ];
    }),
  ];
}

/** Guests at the door, and the first course: by their own clocks, as the plan could keep them. */
export function otherClocks(dinner: Dinner, { guestsAt, firstCourseAt, serving }: Plan): Chore[] {
  const one = (
    kind: 'guests-arrive' | 'first-course',
    startAt: Instant,
    minutes: number,
  ): Chore => ({
    id: kind,
    kind,
    startAt,
    minutes: { p10: minutes, p50: minutes, p90: minutes },
    handsOn: 'start',
    latestAt: serving.likelyAt,
    why: [{ key: 'asked' }],
  });
  const served = dinner.steps.get('serve');
  const eating = served?.doneAt !== undefined || served?.startedAt !== undefined;
  return [
    ...(guestsAt === undefined ? [] : [one('guests-arrive', guestsAt, 5)]),
    ...(firstCourseAt === undefined || eating
      ? []
      : [one('first-course', firstCourseAt, firstCourseMinutes)]),
  ];
}

/** "HH:MM", or minutes after the table. */
function laterAt(value: string, dinner: Dinner, table: Instant): Instant | undefined {
  if (/^\d\d:\d\d$/.test(value)) return clockAt(dinner, table, 0, value);
  const minutes = Number(value);
  return Number.isFinite(minutes) ? addMinutes(table, minutes) : undefined;
}

/** The rest is put away once the last have eaten, and within two hours of the table all the same. */
export function withPutAwayAfter(
  steps: readonly PlannedStep[],
  laterAt: Instant,
  plan: Plan,
): PlannedStep[] {
  if (!Number.isFinite(laterAt)) return [...steps];
  const latest = addMinutes(plan.serving.likelyAt, figureOf('leftovers', 'out').value - 10);
  return steps.map((step) => {
    if (step.id !== 'put-away' || (step.state !== 'planned' && step.state !== 'due')) return step;
    const startAt = Math.max(step.startAt, Math.min(addMinutes(laterAt, lateMealMinutes), latest));
    return { ...step, startAt, endAt: startAt + (step.endAt - step.startAt) };
  });
}
