/** Marks a place no value may reach; the compiler proves that a switch over a union is exhaustive. */
export function assertNever(value: never): never {
  throw new Error(`unexpected value: ${JSON.stringify(value)}`);
}
