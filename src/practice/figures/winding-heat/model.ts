import type { Verdict } from '../../../kernel/assessment/assessment.ts';
import { judgeWinding, severityOf, type WindingJudgement } from '../../../kernel/assessment/winding-insulation.ts';
import { correctionFactor } from '../../../kernel/electrics/temperature-correction.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { celsius, figureOf } from '../../../kernel/reading/reading.ts';
import { asFound, cableFree } from '../../simulator/axis-state.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { exactInstruments, middle, middleAxis } from '../middle-axis.ts';

export const reference = limitValue('reference-temperature-after-trip');
export const limit = limitValue('after-trip-point');

/** One motor at one temperature of its winding. */
export interface WarmReading {
  celsius: number;
  reading: Measurement;
  /** The reading carried to the reference by the halving rule, and the limit carried to this temperature, in Ω. */
  carried: number;
  limitHere: number;
  verdict: Verdict;
}

/** A motor alone: `ohms` of U, V and W joined at the reference; its insulation halves for each `kelvin` of rise. */
export function warmMotor(ohms: number, kelvin: number) {
  const each = 3 * ohms;
  return middleAxis({ frameInsulationOhms: { U: each, V: each, W: each }, kelvinPerHalving: kelvin });
}

/** The insulation tester on this motor with its winding at `temperature` (°C), and the judgement after a trip. */
export function warmReading(ohms: number, kelvin: number, temperature: number): WarmReading {
  const state = cableFree(asFound(temperature, 20));
  const leads = { red: 'motor.U', black: 'ground' };
  const reading = measure(warmMotor(ohms, kelvin), state, exactInstruments, 'insulation', leads, middle);
  const factor = correctionFactor('halving', temperature, reference) ?? Number.NaN;
  const { judgement } = judgeWinding(reading.reading, {
    occasion: 'after-trip',
    limit,
    reference,
    temperature: celsius(temperature),
    correction: 'halving',
  });
  return {
    celsius: temperature,
    reading,
    carried: (figureOf(reading.reading) ?? 0) * factor,
    limitHere: limit / factor,
    verdict: verdictOfJudgement(judgement),
  };
}

function verdictOfJudgement(judgement: WindingJudgement): Verdict {
  const severity = severityOf(judgement);
  if (severity === 'fail') return 'no-go';
  return severity === 'pass' ? 'go' : 'undecided';
}
