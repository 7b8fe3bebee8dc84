/** What can be told from an option itself. */

/** A dish or steps left out of a dinner are the cook's to say: such an option is never taken unasked. */
export const leavesOut = ({
  drops,
  skips = [],
}: {
  drops?: string | undefined;
  skips?: readonly string[] | undefined;
}): boolean => drops !== undefined || skips.length > 0;
