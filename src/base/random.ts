/** A seeded generator of numbers: the same seed gives the same numbers on every machine. */

export interface Random {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Standard normal, by the polar method. */
  normal(): number;
}

/** Mulberry32: 32 bits of state, enough for ensembles and tests; not for secrets. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = y * scale;
        return x * scale;
      }
    }
  };
  return { uniform, normal };
}
