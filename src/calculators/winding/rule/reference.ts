import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import {
  type Conductor,
  conductorLimit,
  isCorrectable,
  temperatureFactor,
} from '../../../kernel/electrics/conductor-temperature.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { Pairs } from './phases.ts';

interface Compared {
  /** The temperature of the reference. */
  atCelsius: number;
  tolerancePercent: number;
}

export interface ReferencePayloads {
  'winding-corrected': { ohms: Pairs<number>; fromCelsius: number; toCelsius: number };
  'winding-not-corrected': Nothing;
  'winding-reference-no-temperature': Nothing;
  'winding-reference-matches': Compared;
  /** `apartPercent`: by how much the mean is at least higher, or lower if negative; absent if no figure bounds it. */
  'winding-reference-differs': Compared & { apartPercent?: number };
  'winding-reference-too-close': Pick<Compared, 'tolerancePercent'>;
}

type ReferenceFinding = FindingOf<ReferencePayloads>;

const finding = findingMaker<ReferencePayloads>();

/** The temperature to which readings are corrected: 20 or 25 °C. */
export type CorrectTo = 'to-20' | 'to-25';

const correctToLimit: Record<CorrectTo, LimitId> = { 'to-20': 'winding-reference-20', 'to-25': 'winding-reference-25' };

/** The readings at the chosen temperature, as a note; empty without a winding temperature. */
export function correctedFinding(
  lines: Pairs<number>,
  temperature: Reading,
  conductor: Conductor,
  correctTo: CorrectTo,
): ReferenceFinding[] {
  if (temperature.kind !== 'value') return [];
  const readings = ['windingTemperature'];
  const toLimit = correctToLimit[correctTo];
  const to = limitValue(toLimit);
  const factor = temperatureFactor(conductor, temperature.value, to);
  if (factor === undefined) return [outside(readings)];
  const ohms = { UV: lines.UV * factor, VW: lines.VW * factor, WU: lines.WU * factor };
  const limits = [conductorLimit[conductor], toLimit];
  const celsius = { fromCelsius: temperature.value, toCelsius: to };
  return [finding('winding-corrected', 'note', { readings, limits, ohms, ...celsius })];
}

interface Comparison {
  /** The least and the greatest possible mean of the three readings, in Ω. */
  mean: Interval;
  temperature: Reading;
  conductor: Conductor;
  /** Nameplate or earlier value, line to line in Ω, and its temperature. */
  reference: Reading;
  referenceTemperature: Reading;
}

/**
 * The mean beside a nameplate or earlier value, at the temperature of that value. A difference never condemns: another
 * model, a cable in between or a wrong temperature have the same effect. It rules out go, and a measurement decides.
 */
export function compareWithReference(comparison: Comparison): ReferenceFinding[] {
  const { mean, temperature, conductor, reference, referenceTemperature } = comparison;
  if (reference.kind === 'missing') return [];
  const readings = ['reference'];
  if (temperature.kind !== 'value' || referenceTemperature.kind !== 'value') {
    return [finding('winding-reference-no-temperature', 'undecided', { readings })];
  }
  const factor = temperatureFactor(conductor, temperature.value, referenceTemperature.value);
  if (factor === undefined) {
    const bad = isCorrectable(temperature.value) ? 'referenceTemperature' : 'windingTemperature';
    return [{ ...outside([bad]), severity: 'undecided' }];
  }
  const stated = intervalOf(reference);
  const ratio = { lo: (mean.lo * factor) / stated.hi, hi: (mean.hi * factor) / stated.lo };
  const tolerance = limitValue('winding-reference-difference');
  const [least, most] = [(ratio.lo - 1) * 100, (ratio.hi - 1) * 100];
  const limits: LimitId[] = ['winding-reference-difference', conductorLimit[conductor]];
  const parts = { readings, limits, atCelsius: referenceTemperature.value, tolerancePercent: tolerance };
  if (least >= -tolerance && most <= tolerance) return [finding('winding-reference-matches', 'pass', parts)];
  const apart = least > tolerance ? least : most < -tolerance ? most : undefined;
  if (apart === undefined) return [finding('winding-reference-too-close', 'undecided', parts)];
  const shown = Number.isFinite(most) ? { apartPercent: apart } : {};
  return [finding('winding-reference-differs', 'undecided', { ...parts, ...shown })];
}

function outside(readings: string[]): ReferenceFinding {
  return finding('winding-not-corrected', 'caution', { readings, limits: ['winding-temperature-validity'] });
}
