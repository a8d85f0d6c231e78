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

/** Steps that prove by measurement that the drive is dead. `prove-again`: after a break of the work. */
export type DeadProofId = LockoutId | 'prove-again';

/** Steps with a reading of the DC bus before hands go to it. `bus-again`: after something that can have charged it. */
export type BusProofId = DeadProofId | 'bus-again';

export type StepId =
  | 'find-drive'
  | 'symptom'
  | DeadProofId
  | 'bus-again'
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
  | 'support-again'
  | 'retry-leads-off'
  | 'bridge'
  | 'insulation'
  | 'isolation'
  | 'winding'
  | 'winding-motor'
  | 'connect-pe'
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
  /**
   * Whether any axis that this enable releases can fall: of the drive, and of a group with one enable. `unknown` is
   * treated as yes: support costs minutes. `own-no`: an older record, in which only the axis that tripped was asked for;
   * it can't fall, and of the others nothing is known.
   */
  gravityLoaded: 'yes' | 'no' | 'unknown' | 'own-no';
}

export interface LockoutAnswer {
  lockedOut: boolean;
  /** The time on the drive's warning label has passed. */
  waited: boolean;
  /** The meter was proved on a known source before and after. */
  meterProved: boolean;
  /** PE, against which is measured, was shown to be connected. */
  peProved: boolean;
  /** The highest reading at the supply terminals, to each other and to PE, AC and DC. */
  supplyVoltage: Reading;
  /** The highest reading at U, V, W, to each other and to PE, AC and DC. */
  outputVoltage: Reading;
  /** The highest of DC+ to DC−, DC+ to PE, DC− to PE, on a DC range. */
  busVoltage: Reading;
}

/** The bus measured once more under a lockout that holds. */
export type BusAnswer = Pick<LockoutAnswer, 'meterProved' | 'busVoltage'>;

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
  'prove-again': LockoutAnswer;
  'bus-again': BusAnswer;
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
  'support-again': DoneAnswer;
  'retry-leads-off': RetryAnswer;
  bridge: MeasurementAnswer<BridgeAssessment>;
  insulation: MeasurementAnswer<InsulationAssessment>;
  isolation: MeasurementAnswer<IsolationAssessment>;
  winding: MeasurementAnswer<WindingAssessment>;
  'winding-motor': MeasurementAnswer<WindingAssessment>;
  'connect-pe': DoneAnswer;
  reconnect: DoneAnswer;
  'retry-all': RetryAnswer;
}

/** `seq` grows with each answer that was given or changed; unlike a clock it can't be set back. */
export interface Answered<A> {
  seq: number;
  answer: A;
  /**
   * Given in an earlier stretch of work: before a break, on another day or another device. What was found then stays
   * found; that the drive is dead and the axis held is no longer known.
   */
  earlier?: boolean;
}

/** The record so far, as the guide sees it. */
export type VisitAnswers = { [Id in StepId]?: Answered<Answers[Id]> };
