import type {
  BridgeAssessment,
  InsulationAssessment,
  IsolationAssessment,
  Reading,
  WindingAssessment,
} from '../calc/index.ts';

/** When the trip comes. */
export type Symptom =
  | 'control-off'
  | 'on-enable'
  | 'on-acceleration'
  | 'position-or-cable'
  | 'when-hot'
  | 'now-and-then';

export type LockoutId = 'lockout-1' | 'lockout-2' | 'lockout-3';

export type StepId =
  | 'find-drive'
  | 'symptom'
  | LockoutId
  | 'inspect'
  | 'unplug-feedback'
  | 'retry-feedback-off'
  | 'unplug-device-end'
  | 'retry-device-end'
  | 'plug-feedback'
  | 'retry-feedback-on'
  | 'mechanics'
  | 'disconnect-leads'
  | 'support-axis'
  | 'retry-leads-off'
  | 'bridge'
  | 'insulation'
  | 'isolation'
  | 'winding'
  | 'winding-motor'
  | 'reconnect'
  | 'retry-all';

/**
 * How the drive was found. `looked`: at its indication while the trip stands, energised, by a permitted person;
 * `not-permitted` and `known`: from drawings or an earlier record. `indicatedAxis` counts the drive's axes from 1.
 */
export interface FindDriveAnswer {
  observation: 'looked' | 'not-permitted' | 'known';
  axesOnDrive: number;
  indicatedAxis?: number;
}

export interface SymptomAnswer {
  when: Symptom;
  /** `unknown` is treated as yes: support costs minutes. */
  gravityLoaded: 'yes' | 'no' | 'unknown';
}

export interface LockoutAnswer {
  lockedOut: boolean;
  /** The time on the drive's warning label has passed. */
  waited: boolean;
  /** The meter was proved on a known source before and after. */
  meterProved: boolean;
  busVoltage: Reading;
}

export type Damage = 'nothing' | 'burnt' | 'wet' | 'chafed';

export type InspectedPart = 'drive' | 'motor' | 'motorCable' | 'feedbackCable';

export interface InspectAnswer {
  /** The plug-in control board and the connectors were seated anew; `none` where the drive has no such board. */
  reseated: 'yes' | 'no' | 'none';
  seen: Record<InspectedPart, Damage>;
}

export interface DoneAnswer {
  done: boolean;
}

/** A retry with power. `powerAllowed` is asked each time; without it the retry is `not-done`. */
export interface RetryAnswer {
  powerAllowed: boolean;
  result: 'trips' | 'no-trip' | 'not-done';
}

export interface MechanicsAnswer {
  found: 'free' | 'stiff' | 'brake-drags' | 'not-checked';
}

/** `leftOpen`: the person can't get a decision here and goes on; the decision lists it as open. */
export interface MeasurementAnswer<A> {
  assessment: A;
  leftOpen: boolean;
}

export interface Answers {
  'find-drive': FindDriveAnswer;
  symptom: SymptomAnswer;
  'lockout-1': LockoutAnswer;
  'lockout-2': LockoutAnswer;
  'lockout-3': LockoutAnswer;
  inspect: InspectAnswer;
  'unplug-feedback': DoneAnswer;
  'retry-feedback-off': RetryAnswer;
  'unplug-device-end': DoneAnswer;
  'retry-device-end': RetryAnswer;
  'plug-feedback': DoneAnswer;
  'retry-feedback-on': RetryAnswer;
  mechanics: MechanicsAnswer;
  'disconnect-leads': DoneAnswer;
  'support-axis': DoneAnswer;
  'retry-leads-off': RetryAnswer;
  bridge: MeasurementAnswer<BridgeAssessment>;
  insulation: MeasurementAnswer<InsulationAssessment>;
  isolation: MeasurementAnswer<IsolationAssessment>;
  winding: MeasurementAnswer<WindingAssessment>;
  'winding-motor': MeasurementAnswer<WindingAssessment>;
  reconnect: DoneAnswer;
  'retry-all': RetryAnswer;
}

/** `seq` grows with each answer that was given or changed; unlike a clock it can't be set back. */
export interface Answered<A> {
  seq: number;
  answer: A;
}

/** The record so far, as the guide sees it. */
export type VisitAnswers = { [Id in StepId]?: Answered<Answers[Id]> };
