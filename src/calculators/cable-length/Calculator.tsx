import { temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { cableLength } from './about.ts';
import { buildFields, cableLengthFields, insulationField, testerFields, testFields } from './fields.ts';

const { name } = cableLength;
const calculator = {
  ...cableLength,
  fields: cableLengthFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./LengthPlot.tsx').then((module) => module.JudgedLengthPlot);

/** What a sound cable of this length reads, and whether this one does. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => (
        <LateDrawing load={loadDrawing} shows={outcome.state === 'judged' ? { read: outcome.read } : undefined} />
      )}
    >
      <ReadingRow name={name} legend="One core of the cable" fields={buildFields} form={form} />
      <Choices name={name} field={insulationField} form={form} />
      <ReadingRow
        name={name}
        legend="The test"
        hint="Insulation tester, both ends disconnected, read after one minute: 85 MΩ, 1.4G, >700M."
        fields={testFields}
        form={form}
      />
      <Choices name={name} field={temperatureUnit} form={form} />
      <MoreFields name={name} summary="Accuracy of the tester (optional)" fields={testerFields} form={form} />
    </FormFrame>
  );
}
