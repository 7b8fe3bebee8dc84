/**
 * What HTTP takes and gives, as zod: the one source for checking bodies, for the OpenAPI document and
 * for the tests that hold the answers against it.
 */
import { z } from 'zod';
import { announcementKinds } from '../../kitchen/facts.ts';
import { stages } from '../../kitchen/heard.ts';
import { viewSchema } from '../../kitchen/view.ts';

const instant = z.iso.datetime({ offset: true });
const at = instant.describe('moves a simulated clock forward, refused with a real one');

export const openingBody = z.strictObject({
  at: at.optional(),
  timeZone: z.string().max(64).optional().describe('IANA name, such as America/Chicago'),
  units: z
    .strictObject({
      temperature: z.enum(['F', 'C']).optional(),
      weight: z.enum(['lb', 'kg']).optional(),
    })
    .optional(),
});

export const sayBody = z.strictObject({
  text: z.string(),
  at: at.optional(),
  source: z.string().max(100).optional().describe('who said it, or through what'),
  key: z.string().min(1).max(200).optional().describe('the same key twice acts once'),
});

export const clockBody = z.strictObject({ at });

export const problemAnswer = z.object({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string().describe('one sentence that names what to change'),
});

const announcement = z.object({
  id: z.string(),
  at: instant,
  kind: z.enum(announcementKinds),
  step: z.string().optional(),
  text: z.string(),
  speech: z.string(),
  urgency: z.enum(['low', 'normal', 'high']),
  expiresAt: instant,
});

export const turnAnswer = z.object({
  heard: z
    .array(z.looseObject({ intent: z.string(), text: z.string().optional() }))
    .describe('what the words were taken to mean, in the order of speech'),
  replies: z.array(z.object({ text: z.string(), speech: z.string(), key: z.string() })),
  announcements: z.array(announcement).describe('what fell due on the way'),
  view: viewSchema,
});

export const openedAnswer = z.object({ id: z.string(), view: viewSchema });

export const movedAnswer = z.object({ announcements: z.array(announcement), view: viewSchema });

export const listAnswer = z.array(
  z.object({
    id: z.string(),
    stage: z.enum(stages),
    serving: instant.optional(),
    current: z.boolean().describe("whether it is the household's open dinner"),
    openedAt: instant,
    lastAt: instant,
  }),
);

export const healthAnswer = z.object({ status: z.literal('ok') });

export const claimBody = z.strictObject({
  announcement: z.string().min(1).max(200).describe('the id of an announcement'),
});

export const claimAnswer = z.object({
  yours: z.boolean().describe('whether this page is the one to speak it'),
});

export const pageAnswer = z.object({
  version: z.string(),
  clock: z.enum(['real', 'simulated']),
  dinner: z.string().optional().describe('the open dinner, if there is one'),
});
