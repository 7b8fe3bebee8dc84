/** What can be told from an option itself. */

/** What is left out of a dinner, or taken out of the oven, is the cook's to say: such an option is never taken unasked. */
export const leavesOut = ({
  drops,
  skips = [],
  takesOut = [],
}: {
  drops?: string | undefined;
  skips?: readonly string[] | undefined;
  takesOut?: readonly { step: string }[] | undefined;
}): boolean => drops !== undefined || skips.length > 0 || takesOut.length > 0;
