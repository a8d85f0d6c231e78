import type { Part, Symptom } from '../../src/kernel/vocabulary.ts';
import type { DecisionKind } from '../../src/visit/guide/decision.ts';
import type { OpenItem } from '../../src/visit/guide/open-items.ts';
import type { Proof } from '../../src/visit/guide/proofs.ts';
import type { Suspicion } from '../../src/visit/guide/suspicions.ts';
import type { Form } from '../../src/visit/steps/fields.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';
import type { MechanicsAnswer } from '../../src/visit/steps/mechanics/question.ts';
import type { RetryAnswer } from '../../src/visit/steps/retry.ts';
import { done, type Entry, locked, nothingSeen, retried } from '../support/marrow-bay-visits.ts';

/** The expected result of a visit, worked out by hand from its readings, and the reason in a line. */
export interface Expected {
  decision?: DecisionKind;
  /** The kind that its file keeps from the time when it was written, if it differs. */
  stored?: DecisionKind;
  /** The step that an unfinished visit waits for. */
  due?: StepId;
  replace?: Partial<Record<Part, Proof[]>>;
  /** What speaks against a part without proof. */
  suspect?: Partial<Record<Part, Suspicion[]>>;
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

/** It came in each of three starts. */
export const everyTime: Form = { came: '3', of: '3', changed: 'nothing' };

/** From the indications of the drive to the inspection of its parts. */
export function begun(axis: Axis, when: Symptom, seen: Form = {}, found: Form = indicated[axis]): Entry[] {
  const falls = axis === 'Lift';
  return [
    ['find-drive', found],
    ['symptom', { when, gravityLoaded: falls ? 'yes' : 'no', ...everyTime }],
    ...(falls ? [doneWith('support-axis')] : []),
    ['lockout-1', locked],
    ['inspect', { ...nothingSeen, ...seen }],
  ];
}

export const doneWith = (step: StepId): Entry => [step, done];
export const leadsOff = doneWith('disconnect-leads');
export const mechanics = (found: MechanicsAnswer['found']): Entry => ['mechanics', { found }];
export const lockedAgain = (step: 'lockout-2' | 'lockout-3', busVoltage = '0.02 V'): Entry => [
  step,
  { ...locked, busVoltage },
];
type Result = 'trips' | 'no-trip' | 'not-done';

/** Three tries, with the trip in all of them or in none. */
export const retry = (step: StepId, result: Result, stage?: RetryAnswer['stage']): Entry => {
  if (result === 'not-done') return [step, { result }];
  const state = step === 'retry-all' ? { asItTrips: 'yes' } : {};
  return [
    step,
    { ...retried(result), ...state, tries: '3', ...(result === 'trips' && { trips: '3', ...(stage && { stage }) }) },
  ];
};

/** Output stage and winding are measured, the enable is tried with the motor leads off, and it is locked out again. */
export const leadsOffTried = (result: Result, turns: Entry, stage: Entry = bridge()): Entry[] => [
  leadsOff,
  stage,
  busAgain,
  turns,
  retry('retry-leads-off', result, 'at-enable'),
  ...(result === 'not-done' ? [] : [lockedAgain('lockout-2')]),
];

/** Everything comes off the drive, and the same trip is looked for. */
export const strippedTried = (result: Result, stage: RetryAnswer['stage']): Entry[] => [
  ['strip-drive', { state: 'all-off' }],
  retry('retry-stripped', result, stage),
  lockedAgain('lockout-3'),
];

/** The bus is measured once more after readings at the output stage. */
export const busAgain: Entry = ['bus-again', { meterProved: 'yes', busVoltage: '0.03 V' }];

/** The cable bent core by core, the plugs held still, twice. */
export const bent = (result: 'steady' | 'opens' | 'leaks' | 'not-done', core = ''): Entry => [
  'bend-test',
  { result, ...(core !== '' && { core }), again: result === 'not-done' ? '' : 'yes' },
];

/** The cable has cores of brake and sensor, and they are free. */
export const idle: Entry = ['idle-cores', { cores: 'measured', lowest: '>20M' }];

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
    alsoOnBus: 'nothing',
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

/** The joined insulation, after the idle cores were found free. */
export const insulated = (...given: Parameters<typeof insulation>): Entry[] => [idle, insulation(...given)];

const insulation = (shown: Phases, changes: Form = {}): Entry => [
  'insulation',
  {
    occasion: 'after-trip',
    ...phases('', shown),
    ...{ idleCores: 'to-pe', filter: 'none' },
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
    ...{ joinedPE: '0.3 Ω', testVoltage: '500 V', windingTemperature: '22 °C', idleCores: 'to-pe', filter: 'none' },
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
export const windingAtMotor = (UV: string, VW: string, WU: string, changes: Form = {}): Entry => [
  'winding-motor',
  { UV, VW, WU, leads: 'four', ...changes },
];

/** The lowest terminal of a part once more, the leads taken off, cleaned and dried; and what its sister reads. */
export const again = (part: 'cable' | 'motor', shown: string, sister = ''): Form => ({
  [`${part}Again`]: shown,
  [`${part}Dried`]: 'yes',
  ...(sister !== '' && { [`${part}Sister`]: sister }),
});
