import { useMemo } from 'preact/hooks';
import { temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type IslandProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import {
  conductor,
  connection,
  correctTo,
  leadOhms,
  leads,
  meterFields,
  pairFields,
  referenceFields,
  temperatureField,
  windingKind,
} from './fields.ts';
import { calculator as windingForm } from './form.ts';

const { name } = windingForm;
const drawing = () => import('./WindingBars.tsx').then((module) => module.WindingBars);

/** Whether the three windings of a motor are alike, from the resistances between its terminals. */
export function Calculator(props: IslandProps) {
  const form = useForm(windingForm, props);
  const { outcome } = form;
  const shows = useMemo(() => (outcome.state === 'judged' ? { read: outcome.read } : undefined), [outcome]);
  // Also shown if it holds an entry: nothing that counts is hidden.
  const leadsAsked = form.read.choices.leads === 'subtract' || (form.typed.leadOhms ?? '') !== '';
  return (
    <FormFrame
      {...props}
      definition={windingForm}
      label="Winding resistance"
      form={form}
      drawing={<LateDrawing load={drawing} shows={shows} />}
    >
      <ReadingRow
        name={name}
        legend="Readings"
        hint="Milliohm meter, or the lowest range of a multimeter. Type every digit that it shows: 1.820 Ω, 842 mΩ."
        fields={pairFields}
        form={form}
      />
      <Choices name={name} field={leads} form={form} />
      {leadsAsked && <ReadingInput name={name} field={leadOhms} form={form} />}
      <Choices name={name} field={connection} form={form} />
      <MoreFields
        name={name}
        summary="Winding temperature, and a value to compare with (optional)"
        hint="Copper gains about four percent in ten kelvins: a value for another temperature must be corrected before it is compared."
        fields={[temperatureField, ...referenceFields]}
        form={form}
      >
        <Choices name={name} field={temperatureUnit} form={form} />
        <Choices name={name} field={conductor} form={form} />
        <Choices name={name} field={correctTo} form={form} />
      </MoreFields>
      <Choices name={name} field={windingKind} form={form} />
      <MoreFields name={name} summary="Accuracy of the meter (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
