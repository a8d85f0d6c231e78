import type { Finding } from './assessment.ts';
import type { Interval } from './interval.ts';
import { checkFit, type FitCode } from './isolation-fit.ts';
import type { IsolationAssessment, IsolationCode, IsolationInput } from './isolation-input.ts';
import { nextSteps } from './isolation-next.ts';
import { judgeCable, judgeMotor, leaksBetweenCores, peFinding } from './isolation-parts.ts';
import { judgeStage } from './isolation-stage.ts';
import { conclusions, type IsolationState, partsFrom, verdictFrom, weighs } from './isolation-verdict.ts';
import { limitRange, limitValue } from './limits.ts';
import { phases } from './phases.ts';
import { judgePe } from './protective-conductor.ts';
import { correctionFactor, factorIfUnknown } from './temperature-correction.ts';
import { testReminders } from './test-reminders.ts';
import { judgeTestVoltage } from './test-voltage.ts';

/** Separates cable from motor after a trip, in three stages, by the after-trip point and the parallel law. */
export function assessIsolation(input: IsolationInput): IsolationAssessment {
  const instrument = input.instrument ?? {};
  const testVoltage = judgeTestVoltage(input.testVoltage);
  const tested = testVoltage.length === 0;
  const factor = factorOf(input);
  const joinedPe = judgePe(input.joined.PE);
  const joined = judgeStage('joined', input.joined, instrument, factor, tested);
  const cable = judgeCable(input, instrument, tested);
  const motor = judgeMotor(input, instrument, factor, tested);
  const fit = checkFit(input);
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

function factorOf({ windingTemperature, correction }: IsolationInput): Interval | undefined {
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
