import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { testVoltage } from './about.ts';
import { objectField, testVoltageFields } from './fields.ts';
import { testVoltageHeadline } from './headline.ts';
import { assessTestVoltage } from './rule/assess.ts';
import { type TestVoltageChoice, type TestVoltageInput, testObjects, type Whether } from './rule/input.ts';
import { testVoltageFindings, testVoltageSteps } from './words.ts';

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
  fields: testVoltageFields,
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
