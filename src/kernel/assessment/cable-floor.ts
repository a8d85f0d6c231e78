import { type CableInsulation, coreInsulation } from '../electrics/cable-insulation.ts';
import { interpolate } from '../electrics/temperature-correction.ts';
import { type LimitId, limitPoints, limitRange, limitValue } from '../limits.ts';
import { everything, type Interval, times } from '../reading/interval.ts';
import { lastIn } from '../reading/last-in.ts';
import type { Reading } from '../reading/reading.ts';

export const cableConstantOf: Record<CableInsulation, LimitId> = {
  pvc: 'cable-constant-pvc',
  xlpe: 'cable-constant-xlpe',
};

/**
 * The factor from a cable's temperature (°C) to that of the cable tables. Only published factors are used: outside the
 * table, and for insulation without one, the rule uses only that a warmer cable reads lower.
 */
export function cableFactor(insulation: CableInsulation, temperature: Reading): Interval {
  if (temperature.kind !== 'value') return everything;
  const reference = limitValue('cable-reference-temperature');
  const { value } = temperature;
  if (insulation === 'xlpe') {
    if (value === reference) return { lo: 1, hi: 1 };
    return value > reference ? { lo: 1, hi: Number.POSITIVE_INFINITY } : { lo: 0, hi: 1 };
  }
  const points = limitPoints('cable-conversion-thermoplastic');
  const factor = interpolate(points, value);
  const first = points[0]?.[0] ?? reference;
  if (factor !== undefined && value >= first) return { lo: factor, hi: factor };
  if (value < first) return { lo: 0, hi: points[0]?.[1] ?? 1 };
  return { lo: lastIn(points)?.[1] ?? 1, hi: Number.POSITIVE_INFINITY };
}

/** What is known of a cable whose cores are measured alone: length in m, temperature in °C. */
export interface CableBuild {
  metres: Reading;
  material: CableInsulation | 'not-stated';
  temperature: Reading;
}

export interface CableFloor {
  /** The least that a sound core of this length and material in service has, in Ω at the temperature of the tables. */
  ohms: number;
  metres: number;
  factor: Interval;
  limits: LimitId[];
}

/** Undefined without a length and a material: then no length explains a reading. */
export function cableFloor({ metres, material, temperature }: CableBuild): CableFloor | undefined {
  if (metres.kind !== 'value' || !(metres.value > 0) || material === 'not-stated') return undefined;
  const id = cableConstantOf[material];
  const thinnest = 10 ** limitValue('cable-thin-wall');
  const ohms = coreInsulation(limitRange(id).from, thinnest, 1, metres.value) * limitValue('cable-in-service');
  const conversion: LimitId[] = material === 'pvc' ? ['cable-conversion-thermoplastic'] : [];
  const limits: LimitId[] = [id, 'cable-thin-wall', 'cable-in-service', ...conversion];
  return { ohms, metres: metres.value, factor: cableFactor(material, temperature), limits };
}

/**
 * Whether the length alone explains a reading (Ω) below the after-trip limit: the floor is below that limit, and the
 * reading, carried to the temperature of the tables, reaches it. Below the minimum of the machine standard no length
 * explains anything. A reading that no length explains is not proven bad by it: the constants of the floor are recalled.
 */
export function lengthExplains(reading: Interval, floor: CableFloor | undefined): boolean {
  if (floor === undefined || floor.ohms >= limitValue('after-trip-point')) return false;
  if (reading.lo < limitValue('machine-minimum-60204')) return false;
  return times(reading, floor.factor).lo >= floor.ohms;
}
