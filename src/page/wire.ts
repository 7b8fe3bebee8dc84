/** What comes over the wire besides the view. Types only; the page shares no code with the server. */
import type { View } from '../kitchen/view.ts';

export type { View };
export type Step = View['steps'][number];
export type Option = NonNullable<View['options']>[number];

export interface Announcement {
  id: string;
  at: string;
  kind: string;
  step?: string;
  text: string;
  speech: string;
  urgency: 'low' | 'normal' | 'high';
  expiresAt: string;
}

export interface Turn {
  text?: string;
  source?: string;
  heard: { intent: string }[];
  replies: { text: string; speech: string; key: string }[];
}

export type KitchenEvent =
  | { event: 'turn'; position: number; data: Turn }
  | { event: 'announcement'; position: number; data: Announcement }
  | { event: 'view'; position: number; data: View };

/** What the kitchen says of itself: which dinner is open, and whether its clock runs by itself. */
export interface KitchenNow {
  version: string;
  clock: 'real' | 'simulated';
  dinner?: string;
}
