import { temperatureUnit, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { absorption } from './about.ts';
import { absorptionFields, testerFields, thermalClassField, timedFields, windingKindField } from './fields.ts';
import { PasteReadings } from './PasteReadings.tsx';
import { StopwatchPanel } from './StopwatchPanel.tsx';

const { name } = absorption;
const calculator = {
  ...absorption,
  fields: absorptionFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./AbsorptionPlot.tsx').then((module) => module.JudgedAbsorptionPlot);

/** Timed readings of one winding: the ratios, the curve, and how far they may be believed. */
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
      <StopwatchPanel name={name} />
      <ReadingRow
        name={name}
        legend="Winding to frame"
        hint="One test, one steady voltage. Leave empty what you missed: 85 MΩ, 1.4G, >5G."
        picture={
          <LeadPicture
            at="Motor"
            meter="MΩ"
            terminals={['U', 'V', 'W', 'frame']}
            red={['U']}
            black={['frame']}
            joined={['U', 'V', 'W']}
          />
        }
        fields={timedFields}
        form={form}
      />
      <p class="row-note">
        Start the stopwatch at the moment that the test voltage goes on. It says when to read. What you have typed
        stays.
      </p>
      <Choices name={name} field={windingKindField} form={form} />
      <Choices name={name} field={thermalClassField} form={form} />
      <PasteReadings name={name} form={form} />
      <ReadingInput name={name} field={windingTemperature} form={form} />
      <Choices name={name} field={temperatureUnit} form={form} />
      <MoreFields
        name={name}
        summary="Accuracy of the tester (optional)"
        hint="Both readings of a ratio are taken at their worst, and never as surer than half a step of the last digit."
        fields={testerFields}
        form={form}
      />
    </FormFrame>
  );
}
