import { findingMaker, type Verdict } from '../../../kernel/assessment/assessment.ts';
import { idleCoresTested } from '../../../kernel/assessment/cable-ends.ts';
import { judgePe, type PeJudgement } from '../../../kernel/assessment/protective-conductor.ts';
import type { Phase } from '../../../kernel/electrics/phases.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { IsolationAssessment, IsolationFinding, IsolationInput, IsolationPayloads, PartStatus } from './input.ts';
import type { FitFinding } from './parallel-check.ts';
import type { PartReadings } from './part-readings.ts';
import type { StageJudgement, StageStatus } from './stage.ts';

const finding = findingMaker<IsolationPayloads>();

/** What the readings show, before any conclusion. */
export interface IsolationState {
  input: IsolationInput;
  joined: StageJudgement;
  joinedPe: PeJudgement;
  /** A second reading of PE found the short that the first one missed. */
  peMended: boolean;
  /** Both readings of PE found no short. */
  peTwice: boolean;
  /** And the frame has another way to ground, so that they speak of the core. */
  peProvenBroken: boolean;
  cable: PartReadings;
  motor: PartReadings;
  /** Of the winding at the motor stage, in °C. */
  motorTemperature: Reading;
  /** Joined reads good, but cable and motor in parallel cannot. */
  joinedImplausible: boolean;
  /** Cores that fail with the other cores bonded to PE. */
  bondedBad: Phase[];
  /** The joined reading can't show the leak that the readings with bonded cores do: from core to core, or to an idle core. */
  leakInBondedRow: boolean;
}

/** Stage 1 with its protective conductor; undecided too if it was not taken, or read through a filter. */
export function joinedStatus({ joined, joinedPe }: IsolationState): StageStatus {
  if (joined.status === 'bad') return 'bad';
  return joined.status === 'good' && joinedPe === 'short' ? 'good' : 'undecided';
}

/**
 * A contradiction rules out `go` and never lifts a `no-go`: as long as one measurement is bad and no other explains it,
 * nothing new is connected. A good joined reading alone is not a `go`, since it can't show what those with bonded cores do; nor is
 * anything while a phase may leak to an idle core that hung free.
 */
export function verdictFrom(state: IsolationState): Verdict {
  const { cable, motor, joinedPe, input } = state;
  if (joinedPe === 'not-short' && !state.peMended) return 'no-go';
  const parts = [cable, motor];
  const bothGood = parts.every(({ status }) => status === 'good');
  switch (joinedStatus(state)) {
    case 'good': {
      if (state.bondedBad.length > 0 && cable.showsBad) return 'no-go';
      return bothGood && !state.joinedImplausible && idleCoresTested(input.idleCores) ? 'go' : 'undecided';
    }
    case 'bad':
      return parts.every(({ cleared }) => cleared) ? 'undecided' : 'no-go';
    default:
      return parts.some(({ showsBad }) => showsBad) ? 'no-go' : 'undecided';
  }
}

/** If all readings pass, figures that don't fit deserve a remark; otherwise they are a reason to measure again. */
export function weighs({ code }: FitFinding, verdict: Verdict, state: IsolationState): boolean {
  if (code === 'joined-too-high') return verdict !== 'go' && !explainedBetweenCores(state);
  if (code === 'joined-too-low' || code === 'joined-needs-bonded') return joinedStatus(state) !== 'good';
  return false;
}

/** Joined reads good, and the only contradiction is a leak that it can't show. */
function explainedBetweenCores(state: IsolationState): boolean {
  return joinedStatus(state) === 'good' && state.leakInBondedRow && !state.motor.showsBad;
}

/** Findings that compare the stages. */
export function conclusions(state: IsolationState): IsolationFinding[] {
  const { cable, motor, joinedPe, input } = state;
  const found: IsolationFinding[] = [];
  const status = joinedStatus(state);
  const parts = [cable, motor];
  if (explainedBetweenCores(state)) {
    const [phase, another] = state.bondedBad;
    const readings = state.bondedBad.map((core) => `bonded${core}`);
    if (another !== undefined) found.push(finding('cores-leak-to-each-other', 'caution', { readings }));
    else if (phase !== undefined) found.push(finding('core-leaks-to-idle-core', 'caution', { readings, phase }));
  } else if (status === 'good' && parts.some(({ showsBad }) => showsBad)) {
    found.push(finding('good-joined-bad-part', 'undecided'));
  }
  if (status === 'good' && parts.some((part) => part.status === 'not-taken')) {
    found.push(finding(input.suspectedAnyway ? 'symptom-outweighs-joined' : 'joined-good', 'undecided'));
  }
  if (status === 'bad') {
    if (parts.every((part) => part.status === 'good')) found.push(finding('bad-joined-good-parts', 'undecided'));
    else if (parts.every(({ showsBad }) => !showsBad)) found.push(finding('part-not-known', 'note'));
  }
  const untested = parts.some((part) => part.status === 'not-taken' || part.status === 'undecided');
  if (parts.some((part) => part.showsBad) && untested) found.push(finding('also-test-other-part', 'note'));
  if (state.peMended) found.push(finding('joined-pe-again-short', 'undecided', { readings: ['peAgain'] }));
  else if (joinedPe === 'not-short' && !state.peTwice) found.push(finding('joined-pe-suspect', 'caution'));
  if (joinedPe === 'not-short' && input.motor && judgePe(input.motor.PE) === 'short') {
    found.push(finding('cable-pe-broken-implied', 'caution', { readings: ['joinedPE', 'motorPE'] }));
  }
  return found;
}

/** What is proven of each part. A contradiction cancels a proof. */
export function partsFrom(state: IsolationState, fit: readonly FitFinding[]): IsolationAssessment['parts'] {
  const { cable, motor, joinedPe, input } = state;
  const status = joinedStatus(state);
  const unexplained =
    status === 'bad' && fit.some(({ code }) => code === 'joined-too-low' || code === 'joined-needs-bonded');
  const contradicted =
    status === 'good' &&
    !explainedBetweenCores(state) &&
    (state.joinedImplausible || [cable, motor].some(({ showsBad }) => showsBad));
  const bothGood = cable.status === 'good' && motor.status === 'good';
  const partStatus = (part: PartReadings): PartStatus => {
    if (part.status === 'not-taken')
      return status === 'good' && idleCoresTested(input.idleCores) && !input.suspectedAnyway && !contradicted
        ? 'not-suspect'
        : 'not-tested';
    if (contradicted || part.status === 'undecided') return 'undecided';
    if (part.status === 'bad') return part.convicted ? 'proven-bad' : 'suspect';
    if (!idleCoresTested(input.idleCores)) return 'undecided';
    return unexplained || (status === 'bad' && bothGood) ? 'undecided' : 'proven-good';
  };
  const peStatus: Record<PeJudgement, PartStatus> = {
    short: 'proven-good',
    'higher-than-expected': 'undecided',
    'not-short': state.peMended ? 'undecided' : state.peProvenBroken ? 'proven-bad' : 'suspect',
    'not-proven': 'undecided',
    missing: 'not-tested',
  };
  return { cable: partStatus(cable), motor: partStatus(motor), protectiveConductor: peStatus[joinedPe] };
}
