import type { BridgeAssessment } from '../../../../../src/calculators/bridge/rule/assess.ts';
import type { InsulationAssessment } from '../../../../../src/calculators/insulation/rule/input.ts';
import type { IsolationAssessment } from '../../../../../src/calculators/isolation/rule/input.ts';
import type { WindingAssessment } from '../../../../../src/calculators/winding/rule/assess.ts';
import type { Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { FindDriveAnswer } from '../../../../../src/visit/steps/find-drive/question.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import type { LockoutAnswer, LockoutId } from '../../../../../src/visit/steps/lockout/question.ts';
import type { MechanicsAnswer } from '../../../../../src/visit/steps/mechanics/question.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import type { SymptomAnswer } from '../../../../../src/visit/steps/symptom/question.ts';
import { typed } from '../../../../support/typed.ts';
import type { Given } from './visit.ts';

/** Answers with a name each, so that a visit in a test is easy to read. */
export const looked = (axesOnDrive = 2, indicatedAxis = 1): Given => [
  'find-drive',
  { observation: 'looked', axesOnDrive, indicatedAxis },
];

export const found = (observation: FindDriveAnswer['observation']): Given => [
  'find-drive',
  { observation, axesOnDrive: 2 },
];

export const trips = (when: Symptom, gravityLoaded: SymptomAnswer['gravityLoaded'] = 'no'): Given => [
  'symptom',
  { when, gravityLoaded },
];

export const soundLockout: LockoutAnswer = {
  lockedOut: true,
  waited: true,
  meterProved: true,
  peProved: true,
  supplyVoltage: typed('0.1 V', 'voltage'),
  outputVoltage: typed('0.05 V', 'voltage'),
  busVoltage: typed('0.02 V', 'voltage'),
};

export const lockout = (number: 1 | 2 | 3 | 4, change: Partial<LockoutAnswer> = {}): Given => [
  `lockout-${number}` as LockoutId,
  { ...soundLockout, ...change },
];

export const proveAgain = (change: Partial<LockoutAnswer> = {}): Given => [
  'prove-again',
  { ...soundLockout, ...change },
];

export const busAgain = (bus = '0.02 V'): Given => [
  'bus-again',
  { meterProved: true, busVoltage: typed(bus, 'voltage') },
];

export const seen = (
  damage: Partial<InspectAnswer['seen']> = {},
  reseated: InspectAnswer['reseated'] = 'yes',
): Given => [
  'inspect',
  {
    reseated,
    seen: { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing', ...damage },
  },
];

type DoneId =
  | 'unplug-feedback'
  | 'unplug-device-end'
  | 'plug-feedback'
  | 'disconnect-leads'
  | 'support-axis'
  | 'support-again'
  | 'connect-pe'
  | 'reconnect';
export const done = (id: DoneId): Given => [id, { done: true }] as Given;

type RetryId = 'retry-feedback-off' | 'retry-device-end' | 'retry-feedback-on' | 'retry-leads-off' | 'retry-all';
export const retry = (id: RetryId, result: RetryAnswer['result']): Given =>
  [id, { powerAllowed: result !== 'not-done', result }] as Given;

export const mechanics = (state: MechanicsAnswer['found']): Given => ['mechanics', { found: state }];

type Open = 'left open' | undefined;
const given = <A>(assessment: A, open: Open) => ({ assessment, leftOpen: open === 'left open' });
export const bridgeIs = (a: BridgeAssessment, open?: Open): Given => ['bridge', given(a, open)];
export const insulationIs = (a: InsulationAssessment, open?: Open): Given => ['insulation', given(a, open)];
export const isolationIs = (a: IsolationAssessment, open?: Open): Given => ['isolation', given(a, open)];
export const windingIs = (a: WindingAssessment, open?: Open): Given => ['winding', given(a, open)];
export const motorWindingIs = (a: WindingAssessment, open?: Open): Given => ['winding-motor', given(a, open)];
