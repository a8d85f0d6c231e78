import { inspectedPartNames, stepTexts, symptomTexts } from '../../texts/guide-steps.ts';
import type { Damage, InspectedPart, StepId, Symptom } from '../../guide/answers.ts';
import { busVoltage } from '../bridge/form.ts';
import type { ChoiceField, Option, ReadingField } from '../form/field.ts';

/** A field that takes a text as it is; `digits` asks for a number keypad. */
export interface TextField {
  kind: 'text';
  id: string;
  name: string;
  hint?: string;
  digits?: true;
  long?: true;
}

export type StepField = ChoiceField | ReadingField | TextField;

/** The steps that are a few questions; the others are a calculator. */
export type AskedStepId = Exclude<StepId, MeasuredStepId>;
export type MeasuredStepId = 'bridge' | 'insulation' | 'isolation' | 'winding' | 'winding-motor';

const ask = (id: string, name: string, options: Option[], hint?: string): ChoiceField => ({
  kind: 'choice',
  id,
  name,
  options,
  initial: '',
  ...(hint !== undefined && { hint }),
});

const yesOrNo = (yes: string, no: string): Option[] => [
  { value: 'yes', label: yes },
  { value: 'no', label: no },
];

/** Free words about a step; the guide does not read them. */
export const remark: TextField = { kind: 'text', id: 'remark', name: 'Remark', long: true };

const lockoutFields: StepField[] = [
  ask('lockedOut', 'Is the supply locked out and tagged?', yesOrNo('Locked out and tagged', 'Not yet')),
  ask('waited', 'Has the time on the label passed?', yesOrNo('It has passed', 'Not yet')),
  ask('meterProved', 'Was the meter proved before and after?', yesOrNo('Proved before and after', 'Not yet')),
  { ...busVoltage, label: 'DC+ to DC−', hint: 'On a DC range. Type what the meter shows, such as 0.3 V.' },
];

const doneFields: StepField[] = [ask('done', 'Is it done?', yesOrNo('Done', 'Not yet'))];

const powerAllowed = ask(
  'powerAllowed',
  'May you switch the power on?',
  yesOrNo('Yes: qualified, permitted, covers shut, nobody near', 'No'),
);

const retryFields: StepField[] = [
  powerAllowed,
  ask('result', 'What happened?', [
    { value: 'trips', label: 'It trips again' },
    { value: 'no-trip', label: 'No trip' },
    { value: 'not-done', label: 'Not done', hint: 'The decision will list it as open.' },
  ]),
];

const damages: Record<Damage, string> = { nothing: 'Nothing', burnt: 'Burnt', wet: 'Wet', chafed: 'Chafed' };
const damageOptions = Object.entries(damages).map(([value, label]) => ({ value, label }));
const inspectedParts = Object.entries(inspectedPartNames) as [InspectedPart, string][];

const symptomOptions = (Object.keys(symptomTexts) as Symptom[]).map((value) => ({
  value,
  label: symptomTexts[value].label,
}));

/** What each step asks. The ids are the keys of the step's form in the record, and the values what is stored. */
export const stepFields: Record<AskedStepId, readonly StepField[]> = {
  'find-drive': [
    ask('observation', 'How did you find the drive?', [
      { value: 'looked', label: 'I looked at its indication while the trip stood' },
      { value: 'not-permitted', label: 'From the drawings: I am not permitted to look while energised' },
      { value: 'known', label: 'From an earlier record' },
    ]),
    { kind: 'text', id: 'axesOnDrive', name: 'How many axes does this drive have?', digits: true },
    {
      kind: 'text',
      id: 'indicatedAxis',
      name: 'Which of its axes does it indicate?',
      hint: 'Count from 1 at this drive. Leave it empty if you did not look.',
      digits: true,
    },
  ],
  symptom: [
    ask('when', 'When does it trip?', symptomOptions),
    ask('gravityLoaded', 'Can the axis fall, or is it pulled by gravity?', [
      { value: 'yes', label: 'Yes' },
      { value: 'no', label: 'No' },
      { value: 'unknown', label: 'I don’t know', hint: 'Treated as yes.' },
    ]),
  ],
  'lockout-1': lockoutFields,
  'lockout-2': lockoutFields,
  'lockout-3': lockoutFields,
  'lockout-4': lockoutFields,
  inspect: [
    ask('reseated', 'Are the control board and the connectors seated anew?', [
      { value: 'yes', label: 'Seated anew' },
      { value: 'none', label: 'It has no plug-in board; the connectors are seated anew' },
      { value: 'no', label: 'Not yet' },
    ]),
    ...inspectedParts.map(([id, name]) => ask(id, name, damageOptions)),
  ],
  'unplug-feedback': doneFields,
  'retry-feedback-off': retryFields,
  'unplug-device-end': doneFields,
  'retry-device-end': retryFields,
  mechanics: [
    ask('found', 'What did you find?', [
      { value: 'free', label: 'It moves freely, and the brake does not drag' },
      { value: 'stiff', label: 'It is stiff' },
      { value: 'brake-drags', label: 'The brake drags' },
      { value: 'not-checked', label: 'Not checked', hint: 'The decision will list it as open.' },
    ]),
  ],
  'disconnect-leads': doneFields,
  'support-axis': doneFields,
  'retry-leads-off': retryFields,
  reconnect: doneFields,
  'retry-all': retryFields,
};

/** The person goes on without a decision of the calculator. A key of the form, beside the calculator's own fields. */
export const leftOpenId = 'leftOpen';

export function isAsked(id: StepId): id is AskedStepId {
  return id in stepFields;
}

export const stepTitle = (id: StepId): string => stepTexts[id].title;
