import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ChoiceField, Option, ReadingField } from '../../kernel/form/field.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { testVoltage } from './about.ts';
import { testVoltageHeadline } from './headline.ts';
import { assessTestVoltage } from './rule/assess.ts';
import {
  type TestObject,
  type TestVoltageChoice,
  type TestVoltageInput,
  testObjects,
  type Whether,
} from './rule/input.ts';
import { testVoltageFindings, testVoltageSteps } from './words.ts';

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

function testVoltageInput({ readings, choices }: ReadForm): TestVoltageInput {
  return {
    object: testObjects.find((object) => object === choices.object) ?? 'feedback',
    rated: readings.rated ?? missing,
    set: readings.set ?? missing,
    drive: whetherOf(choices.drive),
    sensitive: whetherOf(choices.sensitive),
  };
}

function whetherOf(choice: string | undefined): Whether {
  return choice === 'off' || choice === 'connected' ? choice : 'unknown';
}

export const calculator = defineCalculator<TestVoltageChoice>({
  ...testVoltage,
  judgesFrom: objectField.id,
  fields: [objectField, ratedField, driveField, sensitiveField, setField],
  assess: (read) => assessTestVoltage(testVoltageInput(read)),
  findingTexts: testVoltageFindings,
  stepTexts: testVoltageSteps,
  headline: testVoltageHeadline,
  opens: {
    'set-the-tester': {
      calculator: 'insulation',
      words: 'Insulation',
      carries: { rated: 'ratedVoltage', set: 'testVoltage' },
    },
  },
});
