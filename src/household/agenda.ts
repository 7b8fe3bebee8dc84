/**
 * What falls due next in a household whose dinners several processes share. It is kept where the
 * journal is, by the journal's own clock, and hands each due dinner to one process at a time.
 */
import type { Due } from '../session/ports.ts';

export interface Sending {
  dinner: string;
  announcement: string;
  sink: string;
}

export interface Agenda {
  /** When the dinner is next to be looked at. Says nothing where it holds other facts by now. */
  settle(dinner: string, due: Due): Promise<void>;
  /** True for one process at a time, for a short while that each further true prolongs. */
  claim(sending: Sending): Promise<boolean>;
}
