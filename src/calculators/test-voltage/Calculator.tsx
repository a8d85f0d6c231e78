import { Choices } from '../../ui/form/Choices.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { FormFrame } from '../frame/FormFrame.tsx';
import { testVoltage } from './about.ts';
import { driveField, objectField, ratedField, sensitiveField, setField, testVoltageFields } from './fields.ts';
import { TableRow } from './TableRow.tsx';

const { name } = testVoltage;
const calculator = {
  ...testVoltage,
  fields: testVoltageFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};

/** Which voltage an insulation test is made with, and whether what is set fits. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) =>
        outcome.state === 'judged' && outcome.assessment.row && <TableRow id={outcome.assessment.row} />
      }
    >
      <ReadingRow
        name={name}
        legend="Voltages"
        hint="Leave the second one empty to see what the table gives."
        fields={[ratedField, setField]}
        form={form}
      />
      <Choices name={name} field={objectField} form={form} />
      <Choices name={name} field={driveField} form={form} />
      <Choices name={name} field={sensitiveField} form={form} />
    </FormFrame>
  );
}
