import { useMemo } from 'preact/hooks';
import { temperatureUnit, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type IslandProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import {
  calculator as absorptionForm,
  absorptionInput,
  testerFields,
  thermalClassField,
  timedFields,
  windingKindField,
} from './form.ts';
import { PasteReadings } from './PasteReadings.tsx';
import { StopwatchPanel } from './StopwatchPanel.tsx';

const { name } = absorptionForm;
const drawing = () => import('./AbsorptionPlot.tsx').then((module) => module.AbsorptionPlot);

/** Timed readings of one winding: the ratios, the curve, and how far they can be trusted. */
export function Calculator(props: IslandProps) {
  const form = useForm(absorptionForm, props);
  const { outcome } = form;
  const shows = useMemo(
    () => (outcome.state === 'judged' ? { input: absorptionInput(outcome.read) } : undefined),
    [outcome],
  );
  return (
    <FormFrame
      {...props}
      definition={absorptionForm}
      label="Polarization index"
      form={form}
      drawing={<LateDrawing load={drawing} shows={shows} />}
    >
      <Choices name={name} field={windingKindField} form={form} />
      <Choices name={name} field={thermalClassField} form={form} />
      <StopwatchPanel name={name} />
      <ReadingRow
        name={name}
        legend="Winding to frame"
        hint="One test, one steady voltage. Leave empty what you missed: 85 MΩ, 1.4G, >5G."
        fields={timedFields}
        form={form}
      />
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
