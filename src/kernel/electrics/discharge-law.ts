/**
 * A capacitor that discharges into a resistance: V(t) = V0 · exp(−t/τ) with τ = R · C (any textbook of circuits).
 * Volts, seconds, ohms, farads, joules and coulombs throughout; all arguments ≥ 0. Shared with the simulator.
 */

/** Voltage after `seconds`. An infinite time constant keeps the charge forever. */
export function voltageAfter(start: number, seconds: number, timeConstant: number): number {
  return start * Math.exp(-seconds / timeConstant);
}

/**
 * Two equal capacitors in series, one of them without its resistor: that half keeps its charge, so the bus falls to half
 * of `start` and stands. `timeConstant` is that of the half with its resistor, in s.
 */
export function voltageHalfOpen(start: number, seconds: number, timeConstant: number): number {
  return start / 2 + voltageAfter(start / 2, seconds, timeConstant);
}

/** Seconds from `start` down to `end` volts; 0 if it is already there, Infinity if `end` is 0. */
export function secondsUntil(start: number, end: number, timeConstant: number): number {
  return start <= end ? 0 : timeConstant * Math.log(start / end);
}

/** Time constant from two voltages `seconds` apart, in s; Infinity unless the second is lower. */
export function timeConstantBetween(first: number, second: number, seconds: number): number {
  return second >= first ? Number.POSITIVE_INFINITY : seconds / Math.log(first / second);
}

/** E = C · V² / 2, in J. */
export function storedEnergy(farads: number, volts: number): number {
  return (farads * volts ** 2) / 2;
}
