import type { Interval } from '../reading/interval.ts';

/** Insulation of the cores; the tables have constants for these. */
export type CableInsulation = 'pvc' | 'xlpe';

const metresPerKilofoot = 304.8;
const ohmsPerMegohm = 1e6;

/**
 * Insulation resistance of one core in Ω at the reference temperature of the constant: R = K·log10(D/d) per length
 * (ICEA cable specifications). `constant` K in MΩ·1000 ft, diameters over the insulation and of the conductor in mm,
 * `metres` of cable. NaN unless 0 < conductor < insulation and metres > 0.
 */
export function coreInsulation(constant: number, insulationMm: number, conductorMm: number, metres: number): number {
  if (!(conductorMm > 0 && insulationMm > conductorMm && metres > 0)) return Number.NaN;
  return (constant * ohmsPerMegohm * Math.log10(insulationMm / conductorMm) * metresPerKilofoot) / metres;
}

/** All values of R = K·log10(D/d)/L for constants, diameters and lengths in these intervals (all above zero). */
export function coreInsulationInterval(
  constant: Interval,
  outer: Interval,
  inner: Interval,
  metres: Interval,
): Interval {
  return {
    lo: coreInsulation(constant.lo, outer.lo, inner.hi, metres.hi),
    hi: coreInsulation(constant.hi, outer.hi, inner.lo, metres.lo),
  };
}

/** Length in metres at which the expected insulation resistance of a core has fallen to `ohms`. */
export function lengthForResistance(constant: number, insulationMm: number, conductorMm: number, ohms: number): number {
  return coreInsulation(constant, insulationMm, conductorMm, 1) / ohms;
}
