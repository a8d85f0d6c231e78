import { phases } from '../../kernel/electrics/phases.ts';
import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { correction, temperatureUnit, testVoltage, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { stageNames } from './part-names.ts';
import type { StageName } from './rule/stage.ts';

const terminals: Record<StageName, readonly string[]> = {
  joined: [...phases, 'PE'],
  cable: [...phases, 'PE'],
  bonded: phases,
  motor: [...phases, 'PE'],
};

/** The readings of one stage: `joinedU` … `motorPE`. */
export const stageFields = (stage: StageName): ReadingField[] =>
  terminals[stage].map((terminal) => ({
    kind: 'reading',
    id: stage + terminal,
    label: terminal,
    name: `${stageNames[stage]}: ${terminal}`,
    quantity: 'resistance',
  }));

export const suspectedAnyway: ChoiceField = {
  kind: 'choice',
  id: 'suspectedAnyway',
  name: 'Does the symptom point at cable or motor?',
  hint: 'For example: it trips when the cable moves, at one position, or when the motor is hot.',
  options: [
    { value: 'no', label: 'No' },
    { value: 'yes', label: 'Yes, so a good joined reading is not enough' },
  ],
  initial: 'no',
};

export const cableEndsChecked: ChoiceField = {
  kind: 'choice',
  id: 'cableEndsChecked',
  name: 'Are both ends and the screen free?',
  hint: 'A PE core that reads low usually means an end that is still connected.',
  options: [
    { value: 'no', label: 'Not looked at' },
    { value: 'yes', label: 'Looked at: both ends and the screen are free' },
  ],
  initial: 'no',
};

export const motorTemperature: ReadingField = {
  kind: 'reading',
  id: 'motorTemperature',
  label: 'Winding temperature now',
  name: 'Winding temperature at the motor stage',
  hint: 'Empty means as at stage 1.',
  quantity: 'temperature',
  bareUnitFrom: 'temperatureUnit',
};

export const tester = instrumentFields('700 MΩ');

export const isolationFields: FormField[] = [
  suspectedAnyway,
  ...stageFields('joined'),
  testVoltage,
  windingTemperature,
  temperatureUnit,
  correction,
  ...stageFields('cable'),
  cableEndsChecked,
  ...stageFields('bonded'),
  ...stageFields('motor'),
  motorTemperature,
  ...tester,
];
