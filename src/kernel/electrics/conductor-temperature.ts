import { type LimitId, limitRange, limitValue } from '../limits.ts';

/** What a winding is made of; `copper-iec` takes the constant of the machines standard. */
export type Conductor = 'copper' | 'copper-iec' | 'aluminium';

export const conductors: readonly Conductor[] = ['copper', 'copper-iec', 'aluminium'];

export const conductorLimit: Record<Conductor, LimitId> = {
  copper: 'winding-zero-copper',
  'copper-iec': 'winding-zero-copper-iec',
  aluminium: 'winding-zero-aluminium',
};

/**
 * Factor for a resistance when its metal changes from one temperature to another, in °C: R2 = R1·(k + t2)/(k + t1). NBS
 * Handbook 100 and IEC 60034-1, recalled. Undefined outside the range that content/limits gives.
 */
export function temperatureFactor(conductor: Conductor, from: number, to: number): number | undefined {
  const k = limitValue(conductorLimit[conductor]);
  return isCorrectable(from) && isCorrectable(to) ? (k + to) / (k + from) : undefined;
}

export function isCorrectable(celsius: number): boolean {
  const { from, to } = limitRange('winding-temperature-validity');
  return celsius >= from && celsius <= to;
}
