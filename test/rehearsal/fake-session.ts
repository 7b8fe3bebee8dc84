/** A session whose every announcement and view is set by the test; the runner can't tell. */
import { isoWithOffset } from '../../src/base/time.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import type { Heard } from '../../src/kitchen/heard.ts';
import type { View } from '../../src/kitchen/view.ts';
import type { Announcement, Session } from '../../src/session/ports.ts';

export const zone = 'UTC';
export const at = (time: string): number => Date.parse(`2026-12-19T${time}:00Z`);

export const call = (
  time: string,
  kind: Announcement['kind'],
  more: Partial<Announcement> = {},
): Announcement => ({
  id: `${kind}@${time}`,
  at: at(time),
  kind,
  text: `${kind} now`,
  speech: `${kind} now`,
  urgency: 'normal',
  expiresAt: at(time) + 600_000,
  ...more,
});

export const viewAt = (now: number, change: Partial<View> = {}): View => ({
  id: 'fake',
  at: isoWithOffset(now, zone),
  timeZone: zone,
  units: { temperature: 'F', weight: 'lb' },
  stage: 'planning',
  sides: [],
  serving: {},
  roast: {},
  target: {},
  oven: { setFahrenheit: 0, program: [] },
  readings: [],
  steps: [],
  cautions: [],
  timers: [],
  guestNotes: [],
  paused: false,
  position: 0,
  ...change,
});

/** What a fake session knows; shared by every opening of it, as a journal would be. */
export interface FakeWorld {
  calls: Announcement[];
  heard?: (text: string) => Heard[];
  reply?: (text: string) => string;
  view?: Partial<View>;
  facts?: Fact[];
  said?: { text: string; at: number; source?: string | undefined; key?: string | undefined }[];
  sensed?: { temperature: number; unit?: 'F' | 'C' | undefined; at: number }[];
  /** Changes the view of every session after the first: what a restart must notice. */
  forgetful?: Partial<View>;
}

export function fakeOpener(world: FakeWorld): () => Promise<Session> {
  const raised = new Set<string>();
  const delivered = new Set<string>();
  let openings = 0;
  return async () => {
    openings += 1;
    const change = openings > 1 ? { ...world.view, ...world.forgetful } : world.view;
    const wake = async (now: number): Promise<Announcement[]> => {
      const due = world.calls.filter((one) => one.at <= now && !raised.has(one.id));
      for (const one of due) raised.add(one.id);
      return due;
    };
    return {
      id: 'fake',
      wake,
      sense: async (reading) => {
        world.sensed?.push(reading);
        return wake(reading.at);
      },
      hear: async ({ text, at: now, source, key }) => {
        world.said?.push({ text, at: now, source, key });
        const words = world.reply?.(text) ?? 'yes';
        return {
          heard: world.heard?.(text) ?? [],
          replies: [{ text: words, speech: words, key: 'said' }],
          announcements: await wake(now),
          view: viewAt(now, change),
        };
      },
      nextDue: async () => ({ held: 0, at: world.calls.find((one) => !raised.has(one.id))?.at }),
      view: async (now) => viewAt(now, change),
      undelivered: async () =>
        world.calls.filter((one) => raised.has(one.id) && !delivered.has(one.id)),
      delivered: async (ids) => {
        const fresh = ids.filter((id) => !delivered.has(id));
        for (const id of fresh) delivered.add(id);
        return fresh;
      },
      glance: async () => undefined,
      facts: async () => world.facts ?? [],
    };
  };
}
