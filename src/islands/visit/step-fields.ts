import type { Damage, InspectedPart, StepId, Symptom } from '../../guide/answers.ts';
import type { MeasurementStepId } from '../../record/step-forms.ts';
import { inspectedPartNames, symptomTexts } from '../../texts/guide-steps.ts';
import type { ChoiceField, Option, ReadingField } from '../form/field.ts';

/** A field that takes a text as it is; `digits` asks for a number keypad, `long` for several lines. */
export interface TextField {
  kind: 'text';
  id: string;
  name: string;
  hint?: string;
  digits?: true;
  long?: true;
}

/** Something that is confirmed: 'yes' or ''. */
export interface TickField {
  kind: 'tick';
  id: string;
  name: string;
}

export type StepField = ChoiceField | ReadingField | TextField | TickField;

/** The steps that are a few questions; the others are a calculator. */
export type AskedStepId = Exclude<StepId, MeasurementStepId>;

const ask = (id: string, name: string, options: Option[]): ChoiceField => ({
  kind: 'choice',
  id,
  name,
  options,
  initial: '',
});

const tick = (id: string, name: string): TickField => ({ kind: 'tick', id, name });

/** One field for many points: the highest figure decides, and a tired hand types one. */
const highest = (id: string, label: string, hint: string): ReadingField => ({
  kind: 'reading',
  id,
  label,
  name: label,
  hint,
  quantity: 'voltage',
});

const bus = highest('busVoltage', 'DC+, DC−, highest', 'DC+ to DC−, each to PE. On a DC range, such as 0.03 V.');

const lockout: StepField[] = [
  tick('lockedOut', 'The supply is locked out and tagged. I keep the key.'),
  tick('waited', 'The time on the drive’s warning label has passed.'),
  tick('meterProved', 'The meter was proved on a known source before and after, on AC and on DC.'),
  tick('peProved', 'PE at the drive is proved: a dead short to bare metal of the machine.'),
  highest('supplyVoltage', 'Supply terminals, highest', 'Each to each, each to PE. AC, then DC: filters keep DC.'),
  highest('outputVoltage', 'U, V, W, highest', 'Each to each, each to PE. AC, then DC: a motor that turns feeds them.'),
  bus,
];

const done: StepField[] = [
  ask('done', 'Is it done?', [
    { value: 'yes', label: 'Done' },
    { value: 'no', label: 'Not yet' },
  ]),
];

const retry: StepField[] = [
  tick('powerAllowed', 'I am qualified and permitted to switch on. Covers are shut, and nobody is near the machine.'),
  ask('result', 'What happened?', [
    { value: 'trips', label: 'It trips again' },
    { value: 'no-trip', label: 'No trip' },
    { value: 'not-done', label: 'Not done', hint: 'The decision lists it as open.' },
  ]),
];

/** Free words; the guide does not read them. */
const remark: TextField = { kind: 'text', id: 'remark', name: 'What you see, in your words', long: true };

const damages: Record<Damage, string> = { nothing: 'Nothing', burnt: 'Burnt', wet: 'Wet', chafed: 'Chafed' };
const damageOptions = Object.entries(damages).map(([value, label]) => ({ value, label }));

const seen = (part: InspectedPart, id: string): ChoiceField =>
  ask(id, `${inspectedPartNames[part]}: what do you see?`, damageOptions);

const symptomOptions = (Object.keys(symptomTexts) as Symptom[]).map((value) => ({
  value,
  label: symptomTexts[value].live,
}));

/** What each step asks, in words; ids and values are those of src/record/step-forms.ts. */
export const stepFields: Record<AskedStepId, readonly StepField[]> = {
  'find-drive': [
    ask('observation', 'How did you find the drive?', [
      { value: 'looked', label: 'I looked at its indication while the trip stood' },
      { value: 'not-permitted', label: 'From the drawings', hint: 'I am not permitted to look while energised.' },
      { value: 'known', label: 'From an earlier record' },
    ]),
    {
      kind: 'text',
      id: 'axesOnDrive',
      name: 'How many motor outputs does this drive have?',
      hint: 'Count its groups of motor terminals.',
      digits: true,
    },
    {
      kind: 'text',
      id: 'indicatedAxis',
      name: 'Which of these outputs does its indication name?',
      hint: 'Count from 1, as the manual counts. Leave it empty if you did not look.',
      digits: true,
    },
    {
      kind: 'text',
      id: 'outputLabel',
      name: 'Label at the motor terminals of this output',
      hint: 'From the drawings or the housing. Touch nothing.',
    },
  ],
  symptom: [
    ask('when', 'What was live or moving when it tripped?', symptomOptions),
    ask('gravityLoaded', 'Can any axis fall whose brake opens with this enable?', [
      { value: 'yes', label: 'Yes', hint: 'Of this drive, or of a group that is enabled together.' },
      { value: 'no', label: 'No, none of them' },
      { value: 'unknown', label: 'I don’t know', hint: 'Treated as yes: support costs minutes.' },
    ]),
  ],
  'lockout-1': lockout,
  'lockout-2': lockout,
  'lockout-3': lockout,
  'prove-again': lockout,
  'bus-again': [tick('meterProved', 'The meter was proved on a known DC source before and after.'), bus],
  inspect: [
    seen('drive', 'seenDrive'),
    seen('motor', 'seenMotor'),
    seen('motorCable', 'seenMotorCable'),
    seen('feedbackCable', 'seenFeedbackCable'),
    ask('reseated', 'Last: did you seat plugs or boards anew?', [
      { value: 'yes', label: 'Seated anew' },
      { value: 'none', label: 'Left as they are' },
    ]),
    remark,
  ],
  'unplug-feedback': done,
  'retry-feedback-off': retry,
  'unplug-device-end': done,
  'retry-device-end': retry,
  'plug-feedback': done,
  'retry-feedback-on': retry,
  mechanics: [
    ask('found', 'What did you find?', [
      { value: 'free', label: 'It moves freely, and the brake does not drag' },
      { value: 'stiff', label: 'It is stiff' },
      { value: 'brake-drags', label: 'The brake drags' },
      { value: 'not-checked', label: 'Not checked', hint: 'The decision lists it as open.' },
    ]),
    remark,
  ],
  'disconnect-leads': done,
  'support-axis': done,
  'support-again': done,
  'retry-leads-off': retry,
  'connect-pe': done,
  reconnect: done,
  'retry-all': retry,
};

export function isAsked(id: StepId): id is AskedStepId {
  return id in stepFields;
}
