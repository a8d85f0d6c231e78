import type { Occasion } from '../../../kernel/assessment/winding-insulation.ts';
import { validityOf } from '../../../kernel/electrics/correction-validity.ts';
import { limitOfClass, machineMinimum } from '../../../kernel/electrics/machine-minimum.ts';
import { correctionFactor } from '../../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { InsulationInput } from './input.ts';

/** The limit for the occasion. */
export interface Target {
  ohms: number;
  limits: LimitId[];
  /** Temperature in °C to which readings are corrected. */
  reference: number;
}

/** Undefined if the minimum depends on an unknown rated voltage. */
export function targetOf({ occasion, machineClass, ratedVoltage }: TargetInput): Target | undefined {
  if (occasion === 'after-trip') {
    const limits: LimitId[] = ['after-trip-point', 'reference-temperature-after-trip'];
    return { ohms: limitValue('after-trip-point'), limits, reference: limitValue('reference-temperature-after-trip') };
  }
  if (machineClass === 'pre-1970' && ratedVoltage.kind !== 'value') return undefined;
  const rated = ratedVoltage.kind === 'value' ? ratedVoltage.value : 0;
  const limits: LimitId[] = [limitOfClass[machineClass], 'reference-temperature-routine'];
  return { ohms: machineMinimum(machineClass, rated), limits, reference: limitValue('reference-temperature-routine') };
}

type TargetInput = Pick<InsulationInput, 'occasion' | 'machineClass' | 'ratedVoltage'>;

/** Temperature in °C to which the readings of this occasion are corrected. */
export function referenceOf(occasion: Occasion): number {
  return limitValue(occasion === 'after-trip' ? 'reference-temperature-after-trip' : 'reference-temperature-routine');
}

/**
 * For the plot: for each winding temperature in °C the reading from which the answer is go and the one below which it
 * is no-go, in Ω. Between them it is undecided. Empty if the minimum is unknown.
 */
export function limitCurve(
  input: TargetInput & Pick<InsulationInput, 'correction'>,
  stepCelsius = 2.5,
): { temperature: number; goFrom: number; noGoBelow: number }[] {
  const target = targetOf(input);
  if (target === undefined) return [];
  const { from, to } = validityOf(input.correction);
  const count = Math.round((to - from) / stepCelsius);
  return Array.from({ length: count + 1 }, (_, index) => {
    const temperature = from + ((to - from) * index) / count;
    const needed = target.ohms / (correctionFactor(input.correction, temperature, target.reference) ?? Number.NaN);
    if (input.occasion === 'routine') return { temperature, goFrom: needed, noGoBelow: needed };
    return { temperature, goFrom: Math.max(target.ohms, needed), noGoBelow: Math.min(target.ohms, needed) };
  });
}
