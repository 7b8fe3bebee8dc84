/** Hands that come and go: who is not in the kitchen has none. */
import { addMinutes, type Instant } from '../../base/time.ts';
import { type Dinner, helpersFrom } from '../../kitchen/dinner.ts';
import { type Day, minuteIn } from './day.ts';
import { type Draft, hands } from './draft.ts';

/** The task of a cook who is away, and of a helper who has not come yet or has left. */
export const away = 'away';
export const absenceOf = (who: string): string => `${away} ${who}`;

/** Whoever left this day is not back for it. */
const gone = (day: Day): Instant => addMinutes(Math.max(day.now, day.wantedAt), 24 * 60);

export function draftHands(draft: Draft, day: Day): void {
  const { dinner, now } = day;
  if (dinner.awayUntil !== undefined) absent(draft, day, away, { from: now, to: dinner.awayUntil });
  for (const { who, comesAt, leavesAt } of helpersFrom(dinner, now)) {
    if (comesAt !== undefined) absent(draft, day, absenceOf(who), { from: now, to: comesAt });
    if (leavesAt !== undefined)
      absent(draft, day, `${absenceOf(who)} again`, { from: leavesAt, to: gone(day) });
  }
}

function absent(
  draft: Draft,
  day: Day,
  task: string,
  { from, to }: { from: Instant; to: Instant },
): void {
  const minutes = minuteIn(day, to) - minuteIn(day, from);
  if (minutes <= 0) return;
  draft.task(task, minutes, minuteIn(day, from));
  draft.use(hands, task, 0, minutes);
}

/** Whose hands are missing by such a task, in the order of the cooks; undefined for work. */
export function absentCook(task: string, { helpers }: Pick<Dinner, 'helpers'>): string | undefined {
  if (task === away) return 'you';
  return helpers.find(({ who }) => task === absenceOf(who) || task === `${absenceOf(who)} again`)
    ?.who;
}
