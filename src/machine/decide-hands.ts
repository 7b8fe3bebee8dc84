/** Whose hands there are, from when until when, what they do, and how fast this cook's are. */
import { addMinutes, hourMilliseconds, instantOf, localTime } from '../base/time.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, said } from './context.ts';
import { stepMeant } from './decide-steps.ts';

/** Whoever came without a name. */
const unnamed = 'a second cook';

/** The next time that a clock shows it. */
function nextAt(time: string, { dinner, now }: Context): number {
  const at = instantOf(localTime(now, dinner.timeZone).date, time, dinner.timeZone);
  return (
    [at, at + 12 * hourMilliseconds, at + 24 * hourMilliseconds].find((one) => one > now) ?? at
  );
}

export function addHands(heard: HeardOf<'add-hands'>, context: Context): Decision {
  const { dinner, now } = context;
  const { does, left } = heard;
  const comesAt = heard.from === undefined ? undefined : nextAt(heard.from, context);
  const leavesAt = left
    ? now
    : heard.until !== undefined
      ? nextAt(heard.until, context)
      : heard.untilMinutes === undefined
        ? undefined
        : addMinutes(now, heard.untilMinutes);
  const [only, ...others] = dinner.helpers;
  const who = heard.who ?? (only && others.length === 0 ? only.who : unnamed);
  // Nobody who was not here can leave.
  if (left && dinner.helpers.every((one) => one.who !== who)) return said({ key: 'unrelated' });
  return decided([{ type: 'hands-added', who, does, comesAt, leavesAt }], {
    key: 'hands-added',
    who,
    does,
    comesAt,
    leavesAt,
  });
}

/** So many times as long at most, and as little. */
const factors = { least: 0.5, most: 4 };

/** How fast the cook is, of all that takes hands or of one thing, from now on. */
export function paceTold(
  heard: HeardOf<'running-behind'> & { factor: number },
  context: Context,
): Decision {
  const told = Math.min(factors.most, Math.max(factors.least, heard.factor));
  // Who says again that it is slow is no faster for it.
  const factor = told > 1 && heard.step === undefined ? Math.max(told, context.dinner.pace) : told;
  const meant = heard.step === undefined ? undefined : stepMeant(heard.step, context, 'finish');
  const fact: NewFact = { type: 'pace-told', factor, step: meant?.id };
  return decided([fact], { key: 'pace-told', factor, step: meant?.id });
}
