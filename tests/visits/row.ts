import type { Part, Symptom } from '../../src/kernel/vocabulary.ts';
import type { DecisionKind, OpenItem } from '../../src/visit/guide/decision.ts';
import type { Proof } from '../../src/visit/guide/evidence.ts';
import type { Form } from '../../src/visit/steps/fields.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';
import { done, type Entry, locked, nothingSeen, retried } from '../support/marrow-bay-visits.ts';

/** The expected result of a visit, worked out by hand from its readings, and the reason in a line. */
export interface Expected {
  decision?: DecisionKind;
  /** The step that an unfinished visit waits for. */
  due?: StepId;
  replace?: Partial<Record<Part, Proof[]>>;
  stay?: Part[];
  open?: OpenItem[];
  /** Answered steps that are no longer on the way. */
  offPath?: StepId[];
  why: string;
}

/** A whole visit as it was typed, step by step. All of it is invented, at the Marrow Bay Glassworks. */
export interface Row extends Expected {
  typed: Entry[];
}

type Axis = 'Bridge' | 'Carriage' | 'Lift';

/** The Lift has a drive of its own and may fall; Bridge and Carriage share one. */
const indicated = {
  Bridge: { observation: 'looked', axesOnDrive: '2', indicatedAxis: '1' },
  Carriage: { observation: 'looked', axesOnDrive: '2', indicatedAxis: '2' },
  Lift: { observation: 'looked', axesOnDrive: '1', indicatedAxis: '1' },
};

/** From the indications of the drive to the inspection of its parts. */
export function begun(axis: Axis, when: Symptom, seen: Form = {}, found: Form = indicated[axis]): Entry[] {
  const falls = axis === 'Lift';
  return [
    ['find-drive', found],
    ['symptom', { when, gravityLoaded: falls ? 'yes' : 'no' }],
    ...(falls ? [doneWith('support-axis')] : []),
    ['lockout-1', locked],
    ['inspect', { ...nothingSeen, ...seen }],
  ];
}

export const doneWith = (step: StepId): Entry => [step, done];
export const leadsOff = doneWith('disconnect-leads');
export const mechanics = (found: 'free' | 'stiff' | 'brake-drags'): Entry => ['mechanics', { found }];
export const lockedAgain = (step: 'lockout-2' | 'lockout-3', busVoltage = '0.02 V'): Entry => [
  step,
  { ...locked, busVoltage },
];
export const retry = (step: StepId, result: 'trips' | 'no-trip' | 'not-done'): Entry => [
  step,
  result === 'not-done' ? { result } : retried(result),
];

/** The enable is tried with the motor leads off, then it is locked out again. */
export const leadsOffTried = (result: 'trips' | 'no-trip'): Entry[] => [
  leadsOff,
  retry('retry-leads-off', result),
  lockedAgain('lockout-2'),
];

/** Control off: it is tried with the feedback unplugged, then locked out again. */
export const feedbackOffTried = (result: 'trips' | 'no-trip'): Entry[] => [
  doneWith('unplug-feedback'),
  retry('retry-feedback-off', result),
  lockedAgain('lockout-2'),
];

/** Only the cable of the feedback is plugged in again, its device stays off. */
export const deviceOffTried = (result: 'trips' | 'no-trip' | 'not-done'): Entry[] => [
  doneWith('unplug-device-end'),
  retry('retry-device-end', result),
];

/** Six readings of a sound output stage, apart from the changes. */
export const bridge = (changes: Form = {}): Entry => [
  'bridge',
  {
    busVoltage: '0.02 V',
    motorLeads: 'off',
    ...{ plusU: '470k', plusV: '478k', plusW: '474k' },
    ...{ minusU: '45.8k', minusV: '46.2k', minusW: '46.0k' },
    ...changes,
  },
];

/** One reading for all phases, or one for each. */
type Phases = string | readonly [U: string, V: string, W: string];

const phases = (name: string, shown: Phases) => {
  const [U, V, W] = typeof shown === 'string' ? [shown, shown, shown] : shown;
  return { [`${name}U`]: U, [`${name}V`]: V, [`${name}W`]: W };
};

export const insulation = (shown: Phases, changes: Form = {}): Entry => [
  'insulation',
  {
    occasion: 'after-trip',
    ...phases('', shown),
    ...{ PE: '0.3 Ω', testVoltage: '500 V', ratedVoltage: '400 V', testMinutes: '1 min', windingTemperature: '22 °C' },
    ...changes,
  },
];

/** The joined readings again, then each part alone; the cable is sound if nothing else is said. */
export const isolation = (
  joined: Phases,
  { cable = soundCable, bonded = soundBonded, motor }: { cable?: Phases; bonded?: Phases; motor: Phases },
  changes: Form = {},
): Entry => [
  'isolation',
  {
    suspectedAnyway: 'no',
    ...phases('joined', joined),
    ...{ joinedPE: '0.3 Ω', testVoltage: '500 V', windingTemperature: '22 °C' },
    ...{ ...phases('cable', cable), cablePE: '1.9 GΩ', cableEndsChecked: 'yes' },
    ...phases('bonded', bonded),
    ...{ ...phases('motor', motor), motorPE: '0.2 Ω' },
    ...changes,
  },
];
const soundCable = ['2.4 GΩ', '2.6 GΩ', '2.3 GΩ'] as const;
const soundBonded = ['1.9 GΩ', '2.1 GΩ', '1.8 GΩ'] as const;

export const winding = (UV: string, VW: string, WU: string, changes: Form = {}): Entry => [
  'winding',
  { UV, VW, WU, leads: 'four', ...changes },
];
export const windingAtMotor = (UV: string, VW: string, WU: string): Entry => [
  'winding-motor',
  { UV, VW, WU, leads: 'four' },
];
