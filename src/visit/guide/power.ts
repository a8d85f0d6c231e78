import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { PowerStepId } from '../steps/retry.ts';
import { brakingBad } from './braking.ts';
import { changeWrong } from './change.ts';
import { feedbackGone, looksBad, looksDamaged, peSpeaksAgainst } from './evidence.ts';
import { idleCoreLow, idleCoresKnown } from './idle-cores.ts';
import { inputSpeaksAgainst } from './input-circuit.ts';
import { trips } from './tries.ts';

/** Steps that only prepare a step with power: if power is refused, they are not asked for either. */
const preparations: Partial<Record<StepId, PowerStepId>> = {
  'unplug-feedback': 'retry-feedback-off',
  'unplug-device-end': 'retry-device-end',
  'plug-feedback': 'retry-feedback-on',
  'strip-drive': 'retry-stripped',
  reconnect: 'retry-all',
};

const powerSteps: readonly StepId[] = [
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-stripped',
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
  | 'input-not-sound'
  | 'trips-without-feedback'
  | 'trips-without-motor'
  | 'trips-stripped'
  | 'pe-broken'
  | 'idle-core-low'
  | 'braking-bad'
  | 'feedback-cable-damaged'
  | 'gone-without-feedback'
  | 'change-wrong'
  | 'motor-side'
  | 'not-passed'
  | 'hindered';

/**
 * What in the record speaks against power at this step. `record`: all answers, on the way or off it, since a correction
 * changes the way but makes no reading better.
 */
export function againstPower(record: VisitAnswers, step: PowerStepId): PowerObjection[] {
  const stripped = step === 'retry-stripped';
  const controlOff = record.symptom?.answer.when === 'control-off';
  const withFeedback = step !== 'retry-feedback-off' && !(stripped && controlOff);
  const enabled = step === 'retry-leads-off' || step === 'retry-all' || (stripped && !controlOff);
  // A trip speaks against every other step with power, but not against repeating its own, nor against taking more off.
  const tripped = (id: PowerStepId) => step !== id && !stripped && trips(record, id);
  const rules: [PowerObjection, boolean][] = [
    ['drive-damaged', record.inspect?.answer.seen.drive !== 'nothing'],
    ['bridge-bad', record.bridge?.answer.assessment.verdict === 'no-go'],
    ['input-not-sound', inputSpeaksAgainst(record)],
    ['trips-without-feedback', tripped('retry-feedback-off')],
    ['trips-without-motor', tripped('retry-leads-off')],
    ['trips-stripped', tripped('retry-stripped')],
    ['pe-broken', peSpeaksAgainst(record)],
    ['idle-core-low', idleCoreLow(record)],
    ['braking-bad', !stripped && brakingBad(record)],
    ['feedback-cable-damaged', withFeedback && looksBad(record, 'feedbackCable')],
    ['gone-without-feedback', enabled && feedbackGone(record)],
    // A wrong phase order or offset makes the axis run away.
    ['change-wrong', step === 'retry-all' && changeWrong(record)],
    // The feedback device is in the motor.
    ['motor-side', (step === 'retry-all' || step === 'retry-feedback-on') && motorSideSpeaksAgainst(record)],
    ['not-passed', step === 'retry-all' ? !allPassed(record) : enabled && !mayEnable(record)],
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
  const bad = (part: string | undefined) => part === 'proven-bad' || part === 'suspect';
  return failed || looksDamaged(record) || bad(parts?.cable) || bad(parts?.motor) || bendTestBad(record);
}

/** A core opens or leaks when the cable bends. */
export function bendTestBad(record: VisitAnswers): boolean {
  const result = record['bend-test']?.answer.result;
  return result === 'opens' || result === 'leaks';
}

/** An enable without the motor, stripped or not, needs an output stage and a winding that passed. */
export function mayEnable(record: VisitAnswers): boolean {
  return (['bridge', 'winding'] as const).every((id) => record[id]?.answer.assessment.verdict === 'go');
}

/** Whether every measurement that was ever taken passed, and no idle core can carry the voltage of the bus outside. */
function allPassed(record: VisitAnswers): boolean {
  if (!idleCoresKnown(record)) return false;
  return (['bridge', 'input-circuit', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).every(
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

/** The number of the last answer that unplugged the feedback; 0 if none. A stripped drive has none of it. */
export function feedbackOutAt(record: VisitAnswers): number {
  const strip = record['strip-drive'];
  const stripped = strip !== undefined && strip.answer.state !== 'not-allowed' ? strip.seq : 0;
  const unplugged = (['unplug-feedback', 'unplug-device-end'] as const).map((id) =>
    record[id]?.answer.done ? (record[id]?.seq ?? 0) : 0,
  );
  return Math.max(stripped, ...unplugged);
}
