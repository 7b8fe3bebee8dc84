/** Marks a place no value may reach; the compiler proves that a switch over a union is exhaustive. */
export function assertNever(value: never): never {
  throw new Error(`unexpected value: ${JSON.stringify(value)}`);
}

/** States what must hold here. A failure is a mistake in this program, never in what a cook said. */
export function assert(condition: boolean, sentence: string): asserts condition {
  if (!condition) throw new Error(`broken promise: ${sentence}`);
}
