import { temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { useOpening } from '../../ui/form/folded-parts.ts';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { winding } from './about.ts';
import {
  acrossJoint,
  againFields,
  conductor,
  connection,
  correctTo,
  leadOhms,
  leads,
  meterFields,
  pairFields,
  referenceFields,
  temperatureField,
  windingFields,
  windingKind,
} from './fields.ts';

const { name } = winding;
const calculator = {
  ...winding,
  fields: windingFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./WindingBars.tsx').then((module) => module.WindingBars);

/** Whether the three windings of a motor are alike, from the resistances between its terminals. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  // Shown as well where an entry stands in it: nothing that counts is hidden.
  const leadsAsked = form.read.choices.leads === 'subtract' || (form.typed.leadOhms ?? '') !== '';
  const { outcome, typed } = form;
  // Once it fails, one set of readings is not enough.
  const asked = outcome.state === 'judged' && outcome.verdict === 'no-go';
  const used = [...againFields, acrossJoint].some(({ id }) => (typed[id] ?? '') !== '');
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => (
        <LateDrawing load={loadDrawing} shows={outcome.state === 'judged' ? { read: outcome.read } : undefined} />
      )}
    >
      <ReadingRow
        name={name}
        legend="Readings"
        hint="Milliohm meter, or the lowest range of a multimeter. Type every digit that it shows: 1.820 Ω, 842 mΩ."
        picture={<LeadPicture at="Motor" meter="mΩ" terminals={['U', 'V', 'W']} red={['U', 'V']} black={['V', 'W']} />}
        fields={pairFields}
        form={form}
      />
      <Choices name={name} field={leads} form={form} />
      {leadsAsked && <ReadingInput name={name} field={leadOhms} form={form} />}
      <Choices name={name} field={connection} form={form} />
      <details class="more" ref={useOpening(asked || used)}>
        <summary>Second set, and the connector</summary>
        <ReadingRow
          name={name}
          legend="Second set"
          hint="If the readings fail. Leads off, terminals cleaned, leads on again: all three once more. One set alone proves no part bad."
          fields={againFields}
          form={form}
        />
        <ReadingInput name={name} field={acrossJoint} form={form} />
      </details>
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
