import type { Finding } from './assessment.ts';
import { asRead, type Interval } from './interval.ts';
import { checkFit, type FitCode } from './isolation-fit.ts';
import type { IsolationAssessment, IsolationCode, IsolationInput } from './isolation-input.ts';
import { nextSteps } from './isolation-next.ts';
import { judgeCable, judgeMotor, leaksBetweenCores, peFinding } from './isolation-parts.ts';
import { judgeStage } from './isolation-stage.ts';
import { conclusions, type IsolationState, partsFrom, verdictFrom, weighs } from './isolation-verdict.ts';
import { type LimitId, limitRange, limitValue } from './limits.ts';
import { phases } from './phases.ts';
import { judgePe } from './protective-conductor.ts';
import { missing, type Reading } from './reading.ts';
import {
  type CorrectionMethod,
  correctionFactor,
  correctionMethods,
  factorIfUnknown,
  limitsOfMethod,
} from './temperature-correction.ts';
import { testReminders } from './test-reminders.ts';
import { judgeTestVoltage } from './test-voltage.ts';

/** Separates cable from motor after a trip, in three stages, by the after-trip point and the parallel law. */
export function assessIsolation(input: IsolationInput): IsolationAssessment {
  const instrument = input.instrument ?? {};
  const testVoltage = judgeTestVoltage(input.testVoltage);
  const tested = testVoltage.length === 0;
  const factor = factorOf(input.windingTemperature, input.correction);
  const atMotor = atMotorStage(input);
  const joinedPe = judgePe(input.joined.PE);
  const joined = judgeStage('joined', input.joined, instrument, factor, tested, correctionLimits(input));
  const cable = judgeCable(input, instrument, tested);
  const motor = judgeMotor(input, instrument, factorOf(atMotor, input.correction), tested, correctionLimits(input));
  const change = changeBetween(atMotor, input.windingTemperature);
  const fit = change === undefined ? [] : checkFit(input, change);
  const state: IsolationState = {
    input,
    joined,
    joinedPe,
    cable,
    motor,
    joinedImplausible: impliedBad(input, fit),
    leakBetweenCores: leaksBetweenCores(input, instrument),
  };
  const verdict = verdictFrom(state);
  const findings: Finding<IsolationCode>[] = [
    ...joined.findings,
    peFinding('joined', joinedPe),
    ...cable.findings,
    ...motor.findings,
    ...testVoltage,
    ...fit.map((one) => (weighs(one, verdict, state) ? { ...one, severity: 'undecided' as const } : one)),
    ...conclusions(state),
    ...testReminders(),
  ];
  return { verdict, findings, next: nextSteps(state, findings), parts: partsFrom(state, fit) };
}

/** What the correction of a winding rests on, for the list of limits. */
function correctionLimits({ correction, windingTemperature }: IsolationInput): LimitId[] {
  const unknown: LimitId[] = windingTemperature.kind === 'value' ? [] : ['motor-temperature-unknown'];
  return ['reference-temperature-after-trip', ...limitsOfMethod[correction], ...unknown];
}

/** The temperature of the motor stage, or that of the joined one where no other was given. */
function atMotorStage({ motorTemperature = missing, windingTemperature }: IsolationInput): Reading {
  return motorTemperature.kind === 'missing' ? windingTemperature : motorTemperature;
}

/** Factor from the motor's temperature to that of the joined stage, by whichever method; undefined where none is valid. */
function changeBetween(motor: Reading, joined: Reading): Interval | undefined {
  if (motor.kind !== 'value' || joined.kind !== 'value' || motor.value === joined.value) return asRead;
  const factors = correctionMethods.flatMap((method) => correctionFactor(method, motor.value, joined.value) ?? []);
  return factors.length === 0 ? undefined : { lo: Math.min(...factors), hi: Math.max(...factors) };
}

function factorOf(windingTemperature: Reading, correction: CorrectionMethod): Interval | undefined {
  const reference = limitValue('reference-temperature-after-trip');
  if (windingTemperature.kind !== 'value') {
    return factorIfUnknown(correction, limitRange('motor-temperature-unknown'), reference);
  }
  const factor = correctionFactor(correction, windingTemperature.value, reference);
  return factor === undefined ? undefined : { lo: factor, hi: factor };
}

/** A joined reading above what the parts allow matters where the parts together would be below the point. */
function impliedBad({ joined }: IsolationInput, fit: readonly Finding<FitCode>[]): boolean {
  const measured = phases.some((phase) => joined[phase].kind !== 'missing');
  const point = limitValue('after-trip-point');
  return measured && fit.some(({ code, numbers }) => code === 'joined-too-high' && (numbers.most ?? point) < point);
}
