import type { BridgeAssessment } from '../../../../../src/calculators/bridge/rule/assess.ts';
import type { InsulationAssessment } from '../../../../../src/calculators/insulation/rule/input.ts';
import type { IsolationAssessment } from '../../../../../src/calculators/isolation/rule/input.ts';
import type { WindingAssessment } from '../../../../../src/calculators/winding/rule/assess.ts';
import type { Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { AfterChangeAnswer } from '../../../../../src/visit/steps/after-change/question.ts';
import type { BendTestAnswer } from '../../../../../src/visit/steps/bend-test/answer.ts';
import type { FindDriveAnswer } from '../../../../../src/visit/steps/find-drive/question.ts';
import type { IdleCoresAnswer } from '../../../../../src/visit/steps/idle-cores/question.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import type { LockoutAnswer, LockoutId } from '../../../../../src/visit/steps/lockout/question.ts';
import type { MechanicsAnswer } from '../../../../../src/visit/steps/mechanics/question.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import type { StripAnswer } from '../../../../../src/visit/steps/strip-drive/question.ts';
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

/** It came every time, if nothing else is said. */
export const trips = (
  when: Symptom,
  gravityLoaded: SymptomAnswer['gravityLoaded'] = 'no',
  often: Partial<SymptomAnswer> = { came: 5, of: 5 },
): Given => ['symptom', { when, gravityLoaded, ...often }];

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

type RetryId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-stripped'
  | 'retry-all';

/** A trip at the stage of this step, unless another is given; three tries, as a trip that comes every time needs. */
export const retry = (id: RetryId, result: RetryAnswer['result'], other: Partial<RetryAnswer> = {}): Given => {
  const stage = id === 'retry-all' ? 'moving' : id === 'retry-leads-off' ? 'at-enable' : 'at-power';
  const tries = result === 'not-done' ? {} : { tries: 3, trips: result === 'trips' ? 3 : 0 };
  const at = result === 'trips' ? { stage } : {};
  const state = id === 'retry-all' ? { asItTrips: true } : {};
  return [id, { powerAllowed: result !== 'not-done', result, ...tries, ...at, ...state, ...other }] as Given;
};

export const strip = (state: StripAnswer['state'] = 'all-off'): Given => ['strip-drive', { state }];

export const idle = (cores: IdleCoresAnswer['cores'] = 'none', lowest = ''): Given => [
  'idle-cores',
  { cores, lowest: typed(lowest) },
];

export const bend = (result: BendTestAnswer['result'], again = true, core?: BendTestAnswer['core']): Given => [
  'bend-test',
  { result, again, ...(core !== undefined && { core }) },
];

/** Plate, end to end, to PE, switched terminal to DC−. */
export const brake = (texts: string, again = true): Given => {
  const [plate = '', ohms = '', toPe = '', toBus = ''] = texts.split('|').map((text) => text.trim());
  const read = { plate: typed(plate), ohms: typed(ohms), toPe: typed(toPe), toBus: typed(toBus) };
  return ['braking', { fitted: 'external', ...read, again }];
};

export const compared = (found: AfterChangeAnswer['found']): Given => ['after-change', { found }];
export const mechanics = (state: MechanicsAnswer['found']): Given => ['mechanics', { found: state }];

type Open = 'left open' | undefined;
const given = <A>(assessment: A, open: Open, celsius = 20) => ({ assessment, leftOpen: open === 'left open', celsius });
export const bridgeIs = (a: BridgeAssessment, open?: Open): Given => ['bridge', given(a, open)];
export const insulationIs = (a: InsulationAssessment, open?: Open, celsius?: number): Given => [
  'insulation',
  given(a, open, celsius),
];
export const isolationIs = (a: IsolationAssessment, open?: Open): Given => ['isolation', given(a, open)];
export const windingIs = (a: WindingAssessment, open?: Open): Given => ['winding', given(a, open)];
export const motorWindingIs = (a: WindingAssessment, open?: Open): Given => ['winding-motor', given(a, open)];
