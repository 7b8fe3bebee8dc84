/**
 * Where households, their dinners and who may come in are kept: a data folder for one process, or a
 * database for many. The rest of the program asks a store and cannot tell which it is.
 */
import { z } from 'zod';
import type { Drawers } from '../access/shelf.ts';
import { type Instant, isTimeZone } from '../base/time.ts';
import type { Agenda } from '../household/agenda.ts';
import type { Journal } from '../session/ports.ts';

export const home = 'home';
export const householdPattern = /^[a-z0-9][a-z0-9-]{0,39}$/;

export const settingsSchema = z.strictObject({
  timeZone: z.string().refine(isTimeZone, 'is no zone known here').optional(),
  temperature: z.enum(['F', 'C']).optional(),
  weight: z.enum(['lb', 'kg']).optional(),
  language: z.string().optional(),
});
/** How a household's dinners begin, where it is not as usual. */
export type HouseSettings = z.infer<typeof settingsSchema>;

export const faultOf = (error: z.ZodError): string =>
  error.issues
    .map((issue) => `${issue.path.join('.') || 'household'}: ${issue.message}`)
    .join('; ');

export interface DueDinner {
  household: string;
  dinner: string;
  at: Instant;
}

/** A process's share of what falls due. */
export interface Share {
  /** Looks at a due dinner; rejects when it cannot, and is asked again. */
  ring(due: DueDinner): Promise<void>;
  /** A dinner failed, and whether it is now set aside. */
  trouble(due: DueDinner, why: Error, setAside: boolean): void;
}

export interface Store {
  /** Every household there is, "home" first. */
  households(): Promise<string[]>;
  /** Undefined for a household that does not exist. Throws a Refusal when they cannot be read. */
  settings(household: string): Promise<HouseSettings | undefined>;
  /** Makes the household if there is none. */
  set(household: string, settings: HouseSettings): Promise<void>;
  /** The dinners of this household and of no other. */
  journal(household: string): Journal;
  /** A folder of cards of the household's own. */
  cards(household: string): string | undefined;
  /** Where tokens and pairing codes are kept. */
  drawers: Drawers;
  /**
   * Keeps a dinner, or the serving of all of them, for this process until it ends, where processes do
   * not share. Throws a Refusal when another has it.
   */
  hold(what: { household: string; dinner: string } | 'serving'): void;
  /** Undefined where processes do not share: then each household has a timer of its own. */
  shared: { agenda(household: string): Agenda; work(share: Share): void } | undefined;
  now(): Instant;
  /** The household with all that was ever said in it, for good; gives how many dinners that were. */
  erase(household: string): Promise<number>;
  close(): Promise<void>;
}
