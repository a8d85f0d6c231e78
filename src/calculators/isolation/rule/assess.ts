import { step } from '../../../kernel/assessment/assessment.ts';
import { judgeFilter, judgeIdleCores } from '../../../kernel/assessment/cable-ends.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { isPeProvenBroken, judgePe, peLimits, peRemarks } from '../../../kernel/assessment/protective-conductor.ts';
import { testReminders } from '../../../kernel/assessment/test-reminders.ts';
import { judgeTestVoltage } from '../../../kernel/assessment/test-voltage.ts';
import { judgeWinding, type WindingJudgement } from '../../../kernel/assessment/winding-insulation.ts';
import { correctionMethods } from '../../../kernel/electrics/correction-validity.ts';
import { mapPhases, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { correctionFactor, limitsOfMethod } from '../../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { asRead, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { leakInBondedRow } from './bonded-row.ts';
import type { IsolationAssessment, IsolationFinding, IsolationInput, StageReadings } from './input.ts';
import { motorGrounds } from './motor-grounds.ts';
import { nextSteps } from './next.ts';
import { checkFit, type FitFinding } from './parallel-check.ts';
import { judgeCable, judgeMotor, peFinding } from './parts.ts';
import { judgeStage, type StageJudgement } from './stage.ts';
import { conclusions, type IsolationState, partsFrom, verdictFrom, weighs } from './verdict.ts';

/**
 * Separates cable from motor after a trip, in three stages, by the after-trip point and the parallel law. Go needs all
 * of them: joined, cable with the other cores bonded to PE, and motor, each good and without contradiction. So removing a reading or
 * row never makes a go; it may turn a no-go into undecided. There are two exceptions: without its own temperature the
 * motor stage takes that of the joined stage, and what is known of the tester is not a reading. An impossible figure
 * (not finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessIsolation(given: IsolationInput): IsolationAssessment {
  const impossible = impossibleFigures(given);
  if (impossible.length > 0) return refused(impossible);
  const input = singly(given);
  const instrument = input.instrument ?? {};
  const testVoltage = judgeTestVoltage(input.testVoltage);
  const tested = testVoltage.length === 0;
  const atMotor = atMotorStage(input);
  const corrections = correctionLimits(input);
  const { peConductor, frameEarthed = 'not-stated' } = input;
  const peFirst = judgePe(input.joined.PE, peConductor);
  const peAgain = judgePe(input.peAgain ?? missing, peConductor);
  // The worse of the two counts.
  const doubted = peFirst === 'short' && peAgain !== 'missing';
  const joinedPe = peAgain === 'not-short' || doubted ? peAgain : peFirst;
  const judge = windingJudge(input, input.windingTemperature);
  // What was read through a filter is the filter's.
  const joined: StageJudgement =
    input.filter === 'fitted'
      ? { status: 'not-taken', findings: [] }
      : judgeStage('joined', input.joined, judge, tested, corrections);
  const cable = judgeCable(input, instrument, tested);
  const grounds = motorGrounds(input, atMotor);
  const motor = judgeMotor(input, windingJudge(input, atMotor), tested, corrections, { instrument, grounds });
  const change = changeBetween(atMotor, input.windingTemperature);
  const fit = change === undefined || input.filter === 'fitted' ? [] : checkFit(withBounds(input), change);
  const state: IsolationState = {
    input,
    joined,
    joinedPe,
    peMended: peFirst === 'not-short' && peAgain === 'short',
    peTwice: peFirst === 'not-short' && peAgain === 'not-short',
    peProvenBroken: isPeProvenBroken(peFirst, peAgain, frameEarthed),
    cable,
    motor,
    motorTemperature: atMotor,
    joinedImplausible: impliedBad(fit),
    ...leakInBondedRow(input, instrument),
  };
  const verdict = verdictFrom(state);
  const findings: IsolationFinding[] = [
    ...joined.findings,
    { ...peFinding('joined', joinedPe), limits: peLimits(peConductor) },
    ...peRemarks(input.joined.PE, peConductor, frameEarthed, 'joinedPE'),
    ...cable.findings,
    ...motor.findings,
    judgeIdleCores(input.idleCores),
    ...judgeFilter(input.filter),
    ...testVoltage,
    ...fit.map((one) => (weighs(one, verdict, state) ? { ...one, severity: 'undecided' as const } : one)),
    ...conclusions(state),
    ...testReminders(),
  ];
  return { verdict, findings, next: nextSteps(state, findings), parts: partsFrom(state, fit) };
}

/** One reading of U, V and W joined stands for the three. Beside single readings the lower one counts; none may lack. */
function singly(input: IsolationInput): IsolationInput {
  const spread = ({ together = missing, ...row }: StageReadings): StageReadings => {
    if (together.kind === 'missing') return row;
    if (phases.every((phase) => row[phase].kind === 'missing')) {
      return { ...row, U: together, V: together, W: together };
    }
    const lower = (one: Reading) =>
      one.kind !== 'missing' && intervalOf(together).hi < intervalOf(one).hi ? together : one;
    return { ...row, ...mapPhases(row, lower) };
  };
  return { ...input, joined: spread(input.joined), ...(input.motor && { motor: spread(input.motor) }) };
}

/** The limits behind the temperature correction of a winding. */
function correctionLimits({ correction, windingTemperature }: IsolationInput): LimitId[] {
  const unknown: LimitId[] = windingTemperature.kind === 'value' ? [] : ['motor-temperature-unknown'];
  return ['reference-temperature-after-trip', ...limitsOfMethod[correction], ...unknown];
}

/** The temperature of the motor stage, or that of the joined stage if no other was given. */
function atMotorStage({ motorTemperature = missing, windingTemperature }: IsolationInput): Reading {
  return motorTemperature.kind === 'missing' ? windingTemperature : motorTemperature;
}

/**
 * Factors from the motor's temperature to that of the joined stage, over all methods; undefined if no method is valid.
 */
function changeBetween(motor: Reading, joined: Reading): Interval | undefined {
  if (motor.kind !== 'value' || joined.kind !== 'value' || motor.value === joined.value) return asRead;
  const factors = correctionMethods.flatMap((method) => correctionFactor(method, motor.value, joined.value) ?? []);
  return factors.length === 0 ? undefined : { lo: Math.min(...factors), hi: Math.max(...factors) };
}

/** A winding is judged as the insulation calculator judges it. */
function windingJudge({ correction, instrument }: IsolationInput, temperature: Reading) {
  const limit = limitValue('after-trip-point');
  const reference = limitValue('reference-temperature-after-trip');
  const conditions = { occasion: 'after-trip', limit, reference, temperature, correction, instrument } as const;
  return (reading: Reading): WindingJudgement => judgeWinding(reading, conditions).judgement;
}

/** Over-range on a tester whose limit is stated is at least that limit, for the parallel law as for the point. */
function withBounds({ joined, cable, bonded, motor, instrument }: IsolationInput) {
  const { upperLimit } = instrument ?? {};
  const bounded = (one: Reading): Reading =>
    one.kind === 'over' && upperLimit !== undefined
      ? { ...one, atLeast: Math.min(one.atLeast ?? upperLimit, upperLimit) }
      : one;
  const row = (readings: Phases<Reading> | undefined) => readings && mapPhases(readings, bounded);
  return { joined: mapPhases(joined, bounded), cable: row(cable), bonded: row(bonded), motor: row(motor) };
}

function refused(findings: IsolationFinding[]): IsolationAssessment {
  const parts = { cable: 'undecided', motor: 'undecided', protectiveConductor: 'undecided' } as const;
  return { verdict: 'undecided', findings, next: [step('read-figure-again')], parts };
}

/** A joined reading above what the parts allow matters if the parts together would be below the after-trip limit. */
function impliedBad(fit: readonly FitFinding[]): boolean {
  const point = limitValue('after-trip-point');
  return fit.some((one) => one.code === 'joined-too-high' && one.mostOhms < point);
}
