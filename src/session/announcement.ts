/** An announcement as sinks get it, from the fact that it was raised. */
import type { FactOf } from '../kitchen/facts.ts';
import type { Announcement } from './ports.ts';

export const announcementOf = (fact: FactOf<'announced'>): Announcement => ({
  id: fact.id,
  at: fact.at,
  kind: fact.kind,
  step: fact.step,
  text: fact.text,
  speech: fact.speech,
  urgency: fact.urgency,
  expiresAt: fact.expiresAt,
});
