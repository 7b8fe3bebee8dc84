import type { Weights } from '../addressed.ts';
export const weights: Weights = new Map([['always', 10]]);
export const familiar: ReadonlySet<string> = new Set();
