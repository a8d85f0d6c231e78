import type { ChoiceField, FormField, Option, ReadingField } from '../../kernel/form/field.ts';
import { type TestObject, testObjects } from './rule/input.ts';

const objectTexts: Record<TestObject, Omit<Option, 'value'>> = {
  winding: { label: 'A motor winding', hint: 'Alone, or through its cable.' },
  wiring: { label: 'A cable or fixed wiring', hint: 'Unplugged or disconnected at both ends.' },
  'machine-circuits': {
    label: 'The power circuits of a whole machine',
    hint: 'To its protective bonding, as when it is put into service.',
  },
  'extra-low': { label: 'A control circuit, SELV or PELV', hint: 'Wires only, such as 24 V.' },
  'brake-coil': { label: 'The coil of a holding brake' },
  feedback: { label: 'A feedback device, or its cable with the device on it' },
};

export const objectField: ChoiceField = {
  kind: 'choice',
  id: 'object',
  name: 'What do you want to test?',
  options: testObjects.map((value) => ({ value, ...objectTexts[value] })),
  initial: '',
  required: true,
};

export const ratedField: ReadingField = {
  kind: 'reading',
  id: 'rated',
  label: 'Rated or nominal voltage',
  name: 'Rated or nominal voltage',
  hint: 'From the name plate or the drawing: 400 V, 24.',
  quantity: 'voltage',
};

export const setField: ReadingField = {
  kind: 'reading',
  id: 'set',
  label: 'Set on the tester',
  name: 'Voltage set on the tester',
  hint: 'What the tester shows as its test voltage.',
  quantity: 'voltage',
};

const whether = (id: string, name: string, hint: string): ChoiceField => ({
  kind: 'choice',
  id,
  name,
  hint,
  options: [
    { value: 'off', label: 'Off' },
    { value: 'connected', label: 'Still on' },
    { value: 'unknown', label: 'Not known' },
  ],
  initial: 'unknown',
});

export const driveField = whether(
  'drive',
  'Drives, rectifiers and line filters',
  'Off means that no conductor under test reaches one.',
);

export const sensitiveField = whether(
  'sensitive',
  'Suppressors, sensors and other electronics',
  'On the conductors under test, or between them and PE.',
);

export const testVoltageFields: FormField[] = [objectField, ratedField, driveField, sensitiveField, setField];
