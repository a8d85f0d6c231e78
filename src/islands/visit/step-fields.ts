import type { Damage, InspectedPart, StepId, Symptom } from '../../guide/answers.ts';
import type { MeasurementStepId } from '../../record/step-forms.ts';
import { inspectedPartNames, symptomTexts } from '../../texts/guide-steps.ts';
import { busVoltage } from '../bridge/fields.ts';
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

const lockout: StepField[] = [
  tick('lockedOut', 'The supply is locked out and tagged. I keep the key.'),
  tick('waited', 'The time on the drive’s warning label has passed.'),
  tick('meterProved', 'The meter was proved on a known source before and after.'),
  { ...busVoltage, label: 'DC+ to DC−, measured', hint: 'On a DC range. Type what the meter shows, such as 0.03 V.' },
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
    ask('gravityLoaded', 'Can the axis fall, or is it pulled by gravity?', [
      { value: 'yes', label: 'Yes' },
      { value: 'no', label: 'No' },
      { value: 'unknown', label: 'I don’t know', hint: 'Treated as yes: support costs minutes.' },
    ]),
  ],
  'lockout-1': lockout,
  'lockout-2': lockout,
  'lockout-3': lockout,
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
  'retry-leads-off': retry,
  reconnect: done,
  'retry-all': retry,
};

export function isAsked(id: StepId): id is AskedStepId {
  return id in stepFields;
}
