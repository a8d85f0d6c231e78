import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { coilResistance } from '../../../kernel/electrics/coil-resistance.ts';
import { isCorrectable, temperatureFactor } from '../../../kernel/electrics/conductor-temperature.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalShown, times } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type CoreSpan, less } from './cable.ts';
import type { BrakeFinding, BrakeInput, BrakePayloads } from './input.ts';

const finding = findingMaker<BrakePayloads>();

const plateReadings = ['ratedVolts', 'ratedWatts', 'ratedOhms'];

/** Ohms of the coil at 20 °C by its plate: as stated, or volts squared over watts. */
export function plateOhms({ ratedVolts, ratedWatts, ratedOhms }: BrakeInput): number | BrakeFinding {
  const stated = ratedOhms.kind === 'value' && ratedOhms.value > 0 ? ratedOhms.value : undefined;
  const both = ratedVolts.kind === 'value' && ratedWatts.kind === 'value';
  const byPower = both ? coilResistance(ratedVolts.value, ratedWatts.value) : undefined;
  const readings = plateReadings;
  if (stated !== undefined && byPower !== undefined) {
    const apart = Math.abs(byPower / stated - 1) * 100;
    const limits: LimitId[] = ['brake-coil-tolerance'];
    if (!(apart <= limitValue('brake-coil-tolerance')))
      return finding('brake-plate-contradicts', 'undecided', { readings, limits, byPower, stated });
  }
  return stated ?? byPower ?? finding('brake-plate-missing', 'undecided', { readings });
}

/** Factor that carries the coil to 20 °C; without its temperature, any that copper in service can have. */
function factorTo20(temperature: Reading): Interval {
  const to = limitValue('winding-reference-20');
  const known = temperature.kind === 'value' && isCorrectable(temperature.value);
  const { from, to: hottest } = limitRange('winding-temperature-validity');
  const factor = (celsius: number) => temperatureFactor('copper', celsius, to) ?? Number.NaN;
  if (known) return { lo: factor(temperature.value), hi: factor(temperature.value) };
  return { lo: factor(hottest), hi: factor(from) };
}

/**
 * The coil against its plate, at 20 °C: the reading at the motor, or that at the drive less what the cores have. A coil
 * passes only with its temperature; without it, it fails only if it does so at any temperature.
 */
export function judgeCoil(input: BrakeInput, expected: number, cores: CoreSpan | undefined): BrakeFinding[] {
  const { atMotor, atDrive, coilTemperature, instrument } = input;
  const direct = atMotor.kind !== 'missing';
  const readings = [direct ? 'atMotor' : 'atDrive', 'coilTemperature', ...plateReadings];
  const found: BrakeFinding[] = [];
  const known = coilTemperature.kind === 'value' && isCorrectable(coilTemperature.value);
  if (!known) found.push(finding('brake-coil-temperature-missing', 'undecided', { readings: ['coilTemperature'] }));
  if (!direct && atDrive.kind === 'missing') {
    return [...found, finding('brake-coil-missing', 'undecided', { readings: ['atMotor'] })];
  }
  const passes = limitValue('brake-coil-tolerance');
  const fails = limitValue('brake-coil-off-plate');
  const limits: LimitId[] = ['brake-coil-tolerance', 'brake-coil-off-plate', 'winding-zero-copper'];
  const factor = factorTo20(coilTemperature);
  const highest = expected * (1 + fails / 100);
  // An open core reads like an open coil from the drive.
  if (direct && isOpenCircuit(atMotor, highest / factor.lo, instrument)) {
    return [...found, finding('brake-coil-open', 'fail', { readings, limits: [...limits, 'open-on-any-range'] })];
  }
  const read = direct ? atMotor : atDrive;
  if (read.kind === 'over') {
    return [...found, finding('brake-coil-over-range', 'undecided', { readings: [direct ? 'atMotor' : 'atDrive'] })];
  }
  if (!direct && cores === undefined) {
    return [...found, finding('brake-cable-not-stated', 'undecided', { readings: ['metres', 'squareMillimetres'] })];
  }
  const raw = intervalShown(read, instrument);
  const coil = times(direct || cores === undefined ? raw : less(raw, { lo: 0, hi: cores.most }), factor);
  const figures = { readings, limits, ohms: coil.lo / 2 + coil.hi / 2, expectedOhms: expected };
  if (coil.hi < expected * (1 - fails / 100)) return [...found, finding('brake-coil-low', 'fail', figures)];
  if (coil.lo > highest && Number.isFinite(coil.hi)) return [...found, finding('brake-coil-high', 'fail', figures)];
  const fits = coil.lo >= expected * (1 - passes / 100) && coil.hi <= expected * (1 + passes / 100);
  if (fits && known) return [finding('brake-coil-fits', 'pass', { ...figures, tolerancePercent: passes })];
  const close = { readings, limits, expectedOhms: expected, tolerancePercent: passes };
  return [...found, finding('brake-coil-too-close', 'undecided', close)];
}
