import { deltaPhases, starPhases } from '../../calculators/winding/rule/phases.ts';
import { testVoltageRow } from '../../kernel/assessment/test-voltage.ts';
import { coreInsulation, lengthForResistance } from '../../kernel/electrics/cable-insulation.ts';
import { temperatureFactor } from '../../kernel/electrics/conductor-temperature.ts';
import type { CorrectionMethod } from '../../kernel/electrics/correction-validity.ts';
import { dewPoint } from '../../kernel/electrics/dew-point.ts';
import { secondsUntil, timeConstantBetween } from '../../kernel/electrics/discharge-law.ts';
import { machineMinimum } from '../../kernel/electrics/machine-minimum.ts';
import { besideKnown, parallel } from '../../kernel/electrics/parallel-law.ts';
import { correctionFactor } from '../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitRange, limitValue } from '../../kernel/limits.ts';
import { intervalOf } from '../../kernel/reading/interval.ts';
import { deviationFromMean, pairwiseSpread } from '../../kernel/reading/spread.ts';
import { type Compute, type ExerciseValue, limitFigure, numberValue } from './exercise-value.ts';
import { verdicts } from './verdicts.ts';

const figures = (values: ExerciseValue[]) => values.map(({ value }) => value);
const lines = ([UV = Number.NaN, VW = Number.NaN, WU = Number.NaN]: number[]) => ({ UV, VW, WU });
const ownError = ({ reading }: ExerciseValue, percent: ExerciseValue, counts?: ExerciseValue) =>
  intervalOf(reading, { percent: percent.value, counts: counts?.value ?? 0 });
const factor = (method: CorrectionMethod, from: ExerciseValue, to: ExerciseValue) =>
  correctionFactor(method, from.value, to.value) ?? Number.NaN;
const corrected =
  (method: CorrectionMethod): Compute =>
  (reading, from, to) =>
    numberValue(reading.value * factor(method, from, to), 'Ω');

/**
 * What a question may compute, by name; each comment lists the arguments in order. Every function uses the calculators'
 * own rules, so that an answer can't differ from what they say.
 */
export const compute: Record<string, Compute> = {
  ...verdicts,
  /** Readings: largest pairwise difference against the smaller, in percent. */
  spread: (...readings) => numberValue(pairwiseSpread(figures(readings)), '%'),
  /** Readings: largest deviation from their mean, in percent. */
  deviation: (...readings) => numberValue(deviationFromMean(figures(readings)), '%'),
  /** Resistances in parallel. */
  parallel: (...resistances) => numberValue(parallel(figures(resistances)), 'Ω'),
  /** Joined reading, known part: the resistance in parallel with it. */
  besideKnown: (joined, known) =>
    numberValue(besideKnown(intervalOf(joined.reading), [intervalOf(known.reading)]).lo, 'Ω'),
  /** Winding temperature, reference temperature: the correction factor. */
  factorHalving: (from, to) => numberValue(factor('halving', from, to), '×'),
  factorThermosetting: (from, to) => numberValue(factor('thermosetting', from, to), '×'),
  factorTable: (from, to) => numberValue(factor('table', from, to), '×'),
  /** Reading, winding temperature, reference temperature: the corrected reading. */
  correctedHalving: corrected('halving'),
  correctedThermosetting: corrected('thermosetting'),
  correctedTable: corrected('table'),
  /** Resistance, its temperature, another temperature: the resistance of copper there. */
  copperAt: (resistance, from, to) =>
    numberValue(resistance.value * (temperatureFactor('copper', from.value, to.value) ?? Number.NaN), 'Ω'),
  /** Resistances U–V, V–W, W–U: one winding of a star (U, V, W) or of a delta (UV, VW, WU). */
  starU: (...pairs) => numberValue(starPhases(lines(figures(pairs))).U, 'Ω'),
  starV: (...pairs) => numberValue(starPhases(lines(figures(pairs))).V, 'Ω'),
  starW: (...pairs) => numberValue(starPhases(lines(figures(pairs))).W, 'Ω'),
  deltaUV: (...pairs) => numberValue(deltaPhases(lines(figures(pairs))).UV, 'Ω'),
  deltaVW: (...pairs) => numberValue(deltaPhases(lines(figures(pairs))).VW, 'Ω'),
  deltaWU: (...pairs) => numberValue(deltaPhases(lines(figures(pairs))).WU, 'Ω'),
  /** Reading, percent of reading, and counts if stated: the least and the greatest true value. */
  least: (reading, percent, counts) => numberValue(ownError(reading, percent, counts).lo, unitOf(reading)),
  greatest: (reading, percent, counts) => numberValue(ownError(reading, percent, counts).hi, unitOf(reading)),
  /** Air temperature, relative humidity. */
  dewPoint: (air, humidity) => numberValue(dewPoint(air.value, humidity.value) ?? Number.NaN, '°C'),
  /** Rated voltage: the routine minimum of an old winding. */
  minimumPre1970: (rated) => numberValue(machineMinimum('pre-1970', rated.value), 'Ω'),
  /** Rated voltage: the test voltage of the published table. */
  testVoltage: (rated) => limitFigure(testVoltageRow(rated.value)),
  /** Two bus voltages, the minutes between them, another voltage: minutes from the second reading to that voltage. */
  waitUntil: (first, second, elapsed, end) => {
    const timeConstant = timeConstantBetween(first.value, second.value, elapsed.value);
    return numberValue(secondsUntil(second.value, end.value, timeConstant), 'min');
  },
  /** Test time in minutes: the least discharge time. */
  dischargeTime: (time) => numberValue(time.value * limitValue('discharge-after-test'), 'min'),
  /**
   * Diameter over the insulation, conductor diameter, length: resistance of a core with the lowest specified constant.
   */
  corePvc: (...cable) => core('cable-constant-pvc', figures(cable)),
  coreXlpe: (...cable) => core('cable-constant-xlpe', figures(cable)),
  /**
   * Diameter over the insulation, conductor diameter, resistance: the length at which a PVC core has that resistance.
   */
  lengthPvc: (outer, inner, resistance) => {
    const constant = limitRange('cable-constant-pvc').from;
    return numberValue(lengthForResistance(constant, outer.value, inner.value, resistance.value), 'm');
  },
};

function core(constant: LimitId, [outer = Number.NaN, inner = Number.NaN, length = Number.NaN]: number[]) {
  return numberValue(coreInsulation(limitRange(constant).from, outer, inner, length), 'Ω');
}

function unitOf({ reading }: ExerciseValue) {
  if (reading.kind !== 'value') throw new Error('an error is stated for a reading that is a plain figure');
  return reading.unit;
}
