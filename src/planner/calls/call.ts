/** A call: what must be said unasked, when, how often, and what it takes for granted. */
import { addMinutes, type Instant } from '../../base/time.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { AnnouncementKind } from '../../kitchen/facts.ts';
import type { OvenMove } from '../../kitchen/plan.ts';

/** A step taken for granted by a later call, since nobody reported it. */
export interface Presumption {
  step: string;
  happenedAt: Instant;
}

export interface Call {
  /** "kind:what"; repeats share it. */
  call: string;
  repeat: number;
  kind: AnnouncementKind;
  step?: string | undefined;
  dueAt: Instant;
  expiresAt: Instant;
  urgency: 'low' | 'normal' | 'high';
  presumes: Presumption[];
  /** What the words need to know beyond the plan. */
  about?: CallMatter | undefined;
}

export type CallMatter =
  | { what: 'oven'; celsius: number; why: OvenMove['why']; second?: boolean }
  | { what: 'timer'; label?: string | undefined }
  | { what: 'watch'; celsius: number }
  | { what: 'late'; likelyAt: Instant; minutes: number }
  | { what: 'out-of-fridge'; hours: number }
  | { what: 'moved'; moves: readonly { step: string; at: number; wasAt: number }[] }
  | { what: 'ready-in'; minutes: number };

/** After so many minutes each one that must not be missed is called again; other calls wait longer. */
const soonAgainMinutes = [3, 3, 4, 5];
const gentleRepeatMinutes = [6];

/** A call before its name, its repeats and what was made of it so far are known. */
export interface Wanted {
  kind: AnnouncementKind;
  what: string;
  step?: string;
  dueAt: Instant;
  expiryMinutes: number;
  urgency?: 'low' | 'normal' | 'high';
  repeats?: number;
  /** After how many minutes it is called again, one gap after the other; the last of them stands for all further ones. */
  againAfterMinutes?: readonly number[];
  /** The cook heard it otherwise by then, as from a reply; the next gap begins there. */
  heardAt?: Instant;
  about?: CallMatter;
  presumes?: Presumption[];
}

export function asCall(dinner: Dinner, wanted: Wanted): Call[] {
  const call = `${wanted.kind}:${wanted.what}`;
  const made = dinner.calls.get(call);
  const repeats = wanted.repeats ?? 0;
  const times = made?.times ?? 0;
  if (times > repeats) return [];
  const usual = wanted.urgency === 'high' ? soonAgainMinutes : gentleRepeatMinutes;
  const gaps = wanted.againAfterMinutes ?? usual;
  const after = gaps[Math.min(times, gaps.length) - 1] ?? 0;
  const gentler = made?.acknowledged ? 2 : 0;
  const dueAt = made
    ? addMinutes(Math.max(made.lastAt, wanted.heardAt ?? 0), after + gentler)
    : Math.max(wanted.dueAt, dinner.openedAt);
  return [
    {
      call,
      repeat: times,
      kind: wanted.kind,
      step: wanted.step,
      dueAt,
      expiresAt: addMinutes(dueAt, wanted.expiryMinutes),
      urgency: wanted.urgency ?? 'normal',
      presumes: made ? [] : (wanted.presumes ?? []),
      about: wanted.about,
    },
  ];
}

/** What an unreported but called roast moment is taken to have been, when a later one falls due. */
export function presumed(dinner: Dinner, steps: readonly string[]): Presumption[] {
  return steps.flatMap((step) => {
    const record = dinner.steps.get(step);
    if (record?.doneAt !== undefined || record?.startedAt !== undefined || record?.skipped)
      return [];
    if (record?.notDoneAt !== undefined) return [];
    const kinds = ['oven-change', 'step-due', 'carve', 'serve'];
    const call = kinds.map((kind) => dinner.calls.get(`${kind}:${step}`)).find((one) => one);
    return call ? [{ step, happenedAt: call.firstAt }] : [];
  });
}
