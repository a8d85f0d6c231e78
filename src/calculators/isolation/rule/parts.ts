import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { judgeAfterTrip } from '../../../kernel/assessment/judge-insulation.ts';
import { judgePe, type PeJudgement } from '../../../kernel/assessment/protective-conductor.ts';
import type { WindingJudgement } from '../../../kernel/assessment/winding-insulation.ts';
import { phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { asRead, type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import type { IsolationFinding, IsolationInput, IsolationPayloads } from './input.ts';
import { judgeStage, type StageStatus } from './stage.ts';

/** What the readings of cable or motor alone show. `showsBad` also counts readings of a doubtful hook-up. */
export interface PartReadings {
  status: StageStatus;
  showsBad: boolean;
  findings: IsolationFinding[];
}

const finding = findingMaker<IsolationPayloads>();

const notTaken: PartReadings = { status: 'not-taken', showsBad: false, findings: [] };

/** Whether a protective conductor, joined or the motor's own, reads its dead short. */
export function peFinding(stage: 'joined' | 'motor', judgement: PeJudgement): IsolationFinding {
  const severity = {
    short: 'pass',
    'higher-than-expected': 'undecided',
    'not-short': 'fail',
    'not-proven': 'undecided',
    missing: 'undecided',
  } as const;
  return finding(`${stage}-pe-${judgement}`, severity[judgement], {
    readings: [`${stage}PE`],
    limits: ['pe-dead-short'],
  });
}

export function judgeCable(
  { cable, bonded, cableEndsChecked }: IsolationInput,
  instrument: Instrument,
  tested: boolean,
): PartReadings {
  if (cable === undefined && bonded === undefined) return notTaken;
  const point = limitValue('after-trip-point');
  // A cable has no warm winding, so its readings are not corrected.
  const judge = (reading: Reading) => judgeAfterTrip(reading, intervalOf(reading, instrument), point, asRead);
  const rows = [
    ...(cable ? [judgeStage('cable', cable, judge, tested)] : []),
    ...(bonded ? [judgeStage('bonded', bonded, judge, tested)] : []),
  ];
  const findings: IsolationFinding[] = rows.flatMap((row) => row.findings);
  // With both ends free, the tester does not see a leak from a core to its own PE core or screen.
  if (bonded === undefined) findings.push(finding('bonded-row-missing', 'undecided'));
  const core = judgeCablePe(cable?.PE ?? missing, instrument, cableEndsChecked);
  findings.push(core);
  const hookUpDoubtful = core.code === 'cable-pe-low';
  const showsBad = rows.some(({ status }) => status === 'bad') || core.severity === 'fail';
  const complete = rows.length === 2 && rows.every(({ status }) => status === 'good') && core.severity === 'pass';
  const status = hookUpDoubtful ? 'undecided' : showsBad ? 'bad' : complete ? 'good' : 'undecided';
  return { status, showsBad, findings };
}

/**
 * At least two cores read bad in the bonded row: a leak between two cores shows at both. The joined reading can't show
 * it, since the windings join the cores anyway, so a good joined reading does not contradict it.
 */
export function leaksBetweenCores({ bonded }: IsolationInput, instrument: Instrument): boolean {
  if (bonded === undefined) return false;
  const point = limitValue('after-trip-point');
  return phases.filter((phase) => intervalOf(bonded[phase], instrument).hi < point).length >= 2;
}

/**
 * On the free cable the PE core is isolated like the others. A low reading usually means an end that is still
 * connected.
 */
function judgeCablePe(reading: Reading, instrument: Instrument, endsChecked: boolean): IsolationFinding {
  const parts = { readings: ['cablePE'], limits: ['after-trip-point' as const] };
  if (reading.kind === 'missing') return finding('cable-pe-missing', 'undecided', parts);
  const { lo, hi } = intervalOf(reading, instrument);
  const point = limitValue('after-trip-point');
  if (lo >= point) return finding('cable-pe-isolated', 'pass', parts);
  if (hi >= point) return finding('cable-pe-unclear', 'undecided', parts);
  return endsChecked
    ? finding('cable-pe-low-ends-checked', 'fail', parts)
    : finding('cable-pe-low', 'undecided', parts);
}

export function judgeMotor(
  { motor }: IsolationInput,
  judge: (reading: Reading) => WindingJudgement,
  tested: boolean,
  corrections: LimitId[] = [],
): PartReadings {
  if (motor === undefined) return notTaken;
  const row = judgeStage('motor', motor, judge, tested, corrections);
  const ownPe = judgePe(motor.PE);
  const shorts = phases.filter((phase) => judgePe(motor[phase]) === 'short').length;
  const findings: IsolationFinding[] = [...row.findings, peFinding('motor', ownPe)];
  const readings = phases.map((phase) => `motor${phase}`);
  if (shorts > 0 && ownPe === 'short')
    findings.push(finding('motor-two-shorts', 'fail', { readings, limits: ['pe-dead-short'] }));
  // Exactly one dead short, as it should be, but at another pin: the pins may have been confused.
  const pinsMistaken = shorts === 1 && ownPe === 'not-short';
  if (pinsMistaken) findings.push(finding('motor-pins-mistaken', 'undecided', { readings }));
  const showsBad = row.status === 'bad' || ownPe === 'not-short';
  const good = row.status === 'good' && ownPe === 'short';
  return { status: pinsMistaken ? 'undecided' : showsBad ? 'bad' : good ? 'good' : 'undecided', showsBad, findings };
}
