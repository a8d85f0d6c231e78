import { FormFrame } from '../form/FormFrame.tsx';
import { MoreFields } from '../form/MoreFields.tsx';
import { ReadingRow } from '../form/ReadingRow.tsx';
import { type IslandProps, useForm } from '../form/use-form.ts';
import { windingBars } from './bars.ts';
import { meterFields, pairFields, windingForm } from './form.ts';
import { WindingBars } from './WindingBars.tsx';

const { name } = windingForm;

/** Whether the three windings of a motor are alike, from the resistances between its terminals. */
export function WindingCalculator(props: IslandProps) {
  const form = useForm(windingForm, props);
  const bars = form.outcome.state === 'judged' ? windingBars(form.read) : undefined;
  return (
    <FormFrame
      {...props}
      definition={windingForm}
      label="Winding resistance"
      form={form}
      drawing={bars && <WindingBars {...bars} />}
    >
      <ReadingRow
        name={name}
        legend="Readings"
        hint="Lowest range, leads zeroed, or a milliohm meter with four leads. Type every digit that it shows: 1.82 Ω."
        fields={pairFields}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the meter (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
