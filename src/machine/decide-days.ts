/** What is told of the days around the dinner: who comes, what is in the house, who is fed. */
import type { HeardOf } from '../kitchen/heard.ts';
import { type Decision, decided } from './context.ts';

export function noteGuest(heard: HeardOf<'note-guest'>): Decision {
  const { who, need, value } = heard;
  return decided([{ type: 'guest-noted', who, need, value }], {
    key: 'guest-noted',
    need,
    who,
    value,
  });
}

/** In the house: off the shopping list, and lacking no more. */
export const have = ({ thing }: HeardOf<'have'>): Decision =>
  decided([{ type: 'thing-had', thing }], { key: 'thing-had', thing });

export const feedPublic = (): Decision =>
  decided([{ type: 'public-fed' }], { key: 'public-noted' });
