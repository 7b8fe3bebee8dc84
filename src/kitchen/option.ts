/** What can be told from an option itself. */
import type { Option } from './facts.ts';

/** A dish or steps left out of a dinner are the cook's to say: such an option is never taken unasked. */
export const leavesOut = ({ drops, skips = [] }: Option): boolean =>
  drops !== undefined || skips.length > 0;
