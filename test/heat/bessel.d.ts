/** The package ships no types; this is the one function that is used. */
declare module 'bessel' {
  /** Bessel function of the first kind; the order is the second argument. */
  export function besselj(x: number, order: number): number;
}
