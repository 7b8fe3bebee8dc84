/** The bodies HTTP takes, as zod: the one source for checking them and for the OpenAPI document. */
import { z } from 'zod';

const at = z.iso
  .datetime({ offset: true })
  .describe('ISO 8601 with offset; moves a simulated clock forward, refused with a real one');

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
