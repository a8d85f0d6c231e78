import type {
  Damage,
  FindDriveAnswer,
  InspectAnswer,
  MechanicsAnswer,
  RetryAnswer,
  StepId,
  SymptomAnswer,
} from '../guide/answers.ts';

/**
 * What a field of a step's form holds, always as text. An array: one of these answers, or '' for none yet. `tick`:
 * 'yes' or ''. `count`: a whole number as typed. `reading`: as typed, for `parseReading`. `calculator`: this step's
 * other fields are those of the calculator of that name, under their own ids.
 */
export type StepField = readonly string[] | 'tick' | 'count' | 'reading' | 'calculator';

const given = <Answer extends string>(...answers: Answer[]): readonly Answer[] => answers;

const damage = given<Damage>('nothing', 'burnt', 'wet', 'chafed');
const yes: StepField = 'tick';
const lockout = {
  lockedOut: yes,
  waited: yes,
  meterProved: yes,
  peProved: yes,
  supplyVoltage: 'reading',
  outputVoltage: 'reading',
  busVoltage: 'reading',
} as const;
const done = { done: given('yes', 'no') };
const retry = { powerAllowed: yes, result: given<RetryAnswer['result']>('trips', 'no-trip', 'not-done') };
const measurement = { readings: 'calculator', leftOpen: yes } as const;

/** The one list of what each step's form is made of: the record stores these fields, the guide's answers come from them. */
export const stepForms = {
  'find-drive': {
    observation: given<FindDriveAnswer['observation']>('looked', 'not-permitted', 'known'),
    axesOnDrive: 'count',
    indicatedAxis: 'count',
  },
  symptom: {
    when: given<SymptomAnswer['when']>(
      'control-off',
      'on-enable',
      'on-acceleration',
      'position-or-cable',
      'when-hot',
      'now-and-then',
    ),
    gravityLoaded: given<SymptomAnswer['gravityLoaded']>('yes', 'no', 'unknown', 'own-no'),
  },
  'lockout-1': lockout,
  'lockout-2': lockout,
  'lockout-3': lockout,
  'prove-again': lockout,
  'bus-again': { meterProved: yes, busVoltage: 'reading' },
  inspect: {
    reseated: given<InspectAnswer['reseated']>('yes', 'no', 'none'),
    seenDrive: damage,
    seenMotor: damage,
    seenMotorCable: damage,
    seenFeedbackCable: damage,
  },
  'unplug-feedback': done,
  'retry-feedback-off': retry,
  'unplug-device-end': done,
  'retry-device-end': retry,
  'plug-feedback': done,
  'retry-feedback-on': retry,
  mechanics: { found: given<MechanicsAnswer['found']>('free', 'stiff', 'brake-drags', 'not-checked') },
  'disconnect-leads': done,
  'support-axis': done,
  'support-again': done,
  'retry-leads-off': retry,
  bridge: measurement,
  insulation: measurement,
  isolation: measurement,
  winding: measurement,
  'winding-motor': measurement,
  'connect-pe': done,
  reconnect: done,
  'retry-all': retry,
} as const satisfies Record<StepId, Record<string, StepField>>;

/**
 * 'yes' in a lockout of version 1: its one reading was the highest of all points. No form asks for it, and it goes
 * with the first change, so that what is proved anew is measured point by point.
 */
export const oneReadingField = 'oneReading';

export const stepIds = Object.keys(stepForms) as StepId[];

/** Steps that show the drive dead or the axis held: what they say holds for one stretch of work. */
export function provedInEachStretch(id: StepId): boolean {
  return 'busVoltage' in stepForms[id] || id === 'support-axis' || id === 'support-again';
}

/** Steps whose fields are those of a calculator. */
export type MeasurementStepId = 'bridge' | 'insulation' | 'isolation' | 'winding' | 'winding-motor';

export function isMeasurement(id: StepId): id is MeasurementStepId {
  return 'readings' in stepForms[id];
}
