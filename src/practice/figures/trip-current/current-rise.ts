/** Volts across an inductance in H with a resistance in Ω, from no current on. */
export interface Loop {
  volts: number;
  henries: number;
  ohms: number;
}

/** Current in A after `seconds`: i = V/R·(1 − exp(−R·t/L)), the step response of an inductance (any textbook of circuits). */
export function loopAmperes({ volts, henries, ohms }: Loop, seconds: number): number {
  return -(volts / ohms) * Math.expm1((-ohms * seconds) / henries);
}

/** Seconds until the current of this loop reaches `amperes`; Infinity if it never does. */
export function loopSecondsTo({ volts, henries, ohms }: Loop, amperes: number): number {
  const share = (amperes * ohms) / volts;
  return share >= 1 ? Number.POSITIVE_INFINITY : -(henries / ohms) * Math.log1p(-share);
}

/** What a speed control asks for under a load, in A: it nears `most` with a time constant of `seconds` (first-order lag). */
export interface Demand {
  most: number;
  seconds: number;
}

export function demandedAmperes({ most, seconds: constant }: Demand, seconds: number): number {
  return -most * Math.expm1(-seconds / constant);
}

export function demandSecondsTo({ most, seconds: constant }: Demand, amperes: number): number {
  return amperes >= most ? Number.POSITIVE_INFINITY : -constant * Math.log1p(-amperes / most);
}
