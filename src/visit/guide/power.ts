import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { feedbackGone, looksBad, looksDamaged, peProofs } from './evidence.ts';

export type PowerStepId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-all';

/** Steps that only prepare a step with power: if power is refused, they are not asked for either. */
const preparations: Partial<Record<StepId, PowerStepId>> = {
  'unplug-feedback': 'retry-feedback-off',
  'unplug-device-end': 'retry-device-end',
  'plug-feedback': 'retry-feedback-on',
  reconnect: 'retry-all',
};

const powerSteps: readonly StepId[] = [
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-all',
] satisfies PowerStepId[];

export function isPowerStep(id: StepId): id is PowerStepId {
  return powerSteps.includes(id);
}

/** The step with power that this one is, or prepares. */
export function powerOf(id: StepId): PowerStepId | undefined {
  return isPowerStep(id) ? id : preparations[id];
}

/** A finding that speaks against power. */
export type PowerObjection =
  | 'drive-damaged'
  | 'bridge-bad'
  | 'trips-without-feedback'
  | 'trips-without-motor'
  | 'pe-broken'
  | 'feedback-cable-damaged'
  | 'gone-without-feedback'
  | 'motor-side'
  | 'not-passed'
  | 'hindered';

/**
 * What in the record speaks against power at this step. `record`: all answers, on the way or off it, since a correction
 * changes the way but makes no reading better.
 */
export function againstPower(record: VisitAnswers, step: PowerStepId): PowerObjection[] {
  const withFeedback = step !== 'retry-feedback-off';
  const enabled = step === 'retry-leads-off' || step === 'retry-all';
  const result = (id: 'retry-feedback-off' | 'retry-leads-off') => record[id]?.answer.result;
  const rules: [PowerObjection, boolean][] = [
    ['drive-damaged', record.inspect?.answer.seen.drive !== 'nothing'],
    ['bridge-bad', record.bridge?.answer.assessment.verdict === 'no-go'],
    // A trip speaks against every other step with power, but not against repeating its own.
    ['trips-without-feedback', step !== 'retry-feedback-off' && result('retry-feedback-off') === 'trips'],
    ['trips-without-motor', step !== 'retry-leads-off' && result('retry-leads-off') === 'trips'],
    ['pe-broken', peProofs(record).length > 0],
    ['feedback-cable-damaged', withFeedback && looksBad(record, 'feedbackCable')],
    ['gone-without-feedback', enabled && feedbackGone(record)],
    // The feedback device is in the motor.
    ['motor-side', (step === 'retry-all' || step === 'retry-feedback-on') && motorSideSpeaksAgainst(record)],
    ['not-passed', step === 'retry-all' && !allPassed(record)],
    ['hindered', step === 'retry-all' && hindered(record)],
  ];
  return rules.filter(([, holds]) => holds).map(([objection]) => objection);
}

export function powerRefused(record: VisitAnswers, step: PowerStepId): boolean {
  return againstPower(record, step).length > 0;
}

/** Motor or motor cable look damaged or fail a reading: then they get no voltage. */
export function motorSideSpeaksAgainst(record: VisitAnswers): boolean {
  const failed = (['insulation', 'isolation', 'winding', 'winding-motor'] as const).some(
    (id) => record[id]?.answer.assessment.verdict === 'no-go',
  );
  const parts = record.isolation?.answer.assessment.parts;
  return failed || looksDamaged(record) || parts?.cable === 'proven-bad' || parts?.motor === 'proven-bad';
}

/** Whether every measurement that was ever taken passed. */
function allPassed(record: VisitAnswers): boolean {
  return (['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).every(
    (id) => (record[id]?.answer.assessment.verdict ?? 'go') === 'go',
  );
}

/** A stiff axis is mended before it is tried: its trip would show nothing. */
export function hindered(record: VisitAnswers): boolean {
  const mechanics = record.mechanics?.answer.found;
  return mechanics === 'stiff' || mechanics === 'brake-drags';
}

/** Whether U, V and W are on the drive after answer number `seq`, according to the record. */
export function leadsOnAt(record: VisitAnswers, seq: number): boolean {
  const off = doneAt(record, 'disconnect-leads', seq);
  return off === 0 || doneAt(record, 'reconnect', seq) > off;
}

/** Whether the PE core is off the drive: each test of the insulation takes it off. */
export function peCoreOff(record: VisitAnswers): boolean {
  const off = Math.max(record.insulation?.seq ?? 0, record.isolation?.seq ?? 0);
  return off > Math.max(doneAt(record, 'reconnect'), doneAt(record, 'connect-pe'));
}

/** The number of the answer that says it was done, if not later than `seq`; otherwise 0. */
function doneAt(record: VisitAnswers, id: 'disconnect-leads' | 'reconnect' | 'connect-pe', seq = Infinity): number {
  const answered = record[id];
  return answered?.answer.done && answered.seq <= seq ? answered.seq : 0;
}
