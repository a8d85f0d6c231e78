import { temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { coreResistanceAbout } from './about.ts';
import { coreFields, end, fields, meter, meterFields, section, temperature, way } from './fields.ts';

const { name } = coreResistanceAbout;
const calculator = {
  ...coreResistanceAbout,
  fields: coreFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./CoreScale.tsx').then((module) => module.JudgedCoreScale);

/** What a core of this length and cross-section should read, and whether it does. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => (
        <LateDrawing
          load={loadDrawing}
          shows={
            outcome.state === 'judged' && outcome.assessment.marks
              ? { read: outcome.read, marks: outcome.assessment.marks }
              : undefined
          }
        />
      )}
    >
      <ReadingRow
        name={name}
        legend="The core"
        hint="Dead, off at one end at least, tips zeroed. From end to end, or two cores joined at the far end."
        fields={fields}
        form={form}
      />
      <Choices name={name} field={way} form={form} />
      <Choices name={name} field={end} form={form} />
      <Choices name={name} field={meter} form={form} />
      <Choices name={name} field={section} form={form} />
      <MoreFields
        name={name}
        summary="Temperature of the cable (optional)"
        fields={[temperature]}
        choices={[temperatureUnit]}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the meter (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
