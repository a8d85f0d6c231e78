import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { feedbackGone, looksBad, looksDamaged, peProofs } from './evidence.ts';

export type PowerStepId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-all';

/** What is only done for the sake of a step with power: where power is refused, this is not asked for either. */
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

/** What was found that speaks against power. */
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
 * What in the record speaks against power at this step. `record` is all that was ever answered, on the way or off it: a
 * correction changes the way, and no reading becomes better by it.
 */
export function againstPower(record: VisitAnswers, step: PowerStepId): PowerObjection[] {
  const withFeedback = step !== 'retry-feedback-off';
  const enabled = step === 'retry-leads-off' || step === 'retry-all';
  const result = (id: 'retry-feedback-off' | 'retry-leads-off') => record[id]?.answer.result;
  const rules: [PowerObjection, boolean][] = [
    ['drive-damaged', record.inspect?.answer.seen.drive !== 'nothing'],
    ['bridge-bad', record.bridge?.answer.assessment.verdict === 'no-go'],
    // A trip speaks against every other step with power, not against its own repetition.
    ['trips-without-feedback', step !== 'retry-feedback-off' && result('retry-feedback-off') === 'trips'],
    ['trips-without-motor', step !== 'retry-leads-off' && result('retry-leads-off') === 'trips'],
    ['pe-broken', peProofs(record).length > 0],
    ['feedback-cable-damaged', withFeedback && looksBad(record, 'feedbackCable')],
    ['gone-without-feedback', enabled && feedbackGone(record)],
    // The feedback device sits in the motor.
    ['motor-side', (step === 'retry-all' || step === 'retry-feedback-on') && motorSideSpeaksAgainst(record)],
    ['not-passed', step === 'retry-all' && !allPassed(record)],
    ['hindered', step === 'retry-all' && hindered(record)],
  ];
  return rules.filter(([, holds]) => holds).map(([objection]) => objection);
}

export function powerRefused(record: VisitAnswers, step: PowerStepId): boolean {
  return againstPower(record, step).length > 0;
}

/** Seen damaged, or with readings that fail: motor or motor cable get no voltage. */
export function motorSideSpeaksAgainst(record: VisitAnswers): boolean {
  const failed = (['insulation', 'isolation', 'winding', 'winding-motor'] as const).some(
    (id) => record[id]?.answer.assessment.verdict === 'no-go',
  );
  const parts = record.isolation?.answer.assessment.parts;
  return failed || looksDamaged(record) || parts?.cable === 'proven-bad' || parts?.motor === 'proven-bad';
}

/** Every measurement that was ever taken passed. */
function allPassed(record: VisitAnswers): boolean {
  return (['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).every(
    (id) => (record[id]?.answer.assessment.verdict ?? 'go') === 'go',
  );
}

/** A stiff axis is mended before it is tried: a trip of it would tell nothing. */
export function hindered(record: VisitAnswers): boolean {
  const mechanics = record.mechanics?.answer.found;
  return mechanics === 'stiff' || mechanics === 'brake-drags';
}

/** Whether U, V and W are on the drive after the answer number `seq`, as far as the record tells. */
export function leadsOnAt(record: VisitAnswers, seq: number): boolean {
  const off = doneAt(record, 'disconnect-leads', seq);
  return off === 0 || doneAt(record, 'reconnect', seq) > off;
}

/** Whether the PE core is off the drive: it comes off with each test of the insulation. */
export function peCoreOff(record: VisitAnswers): boolean {
  const off = Math.max(record.insulation?.seq ?? 0, record.isolation?.seq ?? 0);
  return off > Math.max(doneAt(record, 'reconnect'), doneAt(record, 'connect-pe'));
}

/** The number of the answer by which this was done, at the latest as number `seq`; 0 where it was not. */
function doneAt(record: VisitAnswers, id: 'disconnect-leads' | 'reconnect' | 'connect-pe', seq = Infinity): number {
  const answered = record[id];
  return answered?.answer.done && answered.seq <= seq ? answered.seq : 0;
}
