import { readTwice } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { CheckRows } from '../../ui/plot/CheckRows.tsx';
import { checkRows } from '../../ui/plot/check-rows.ts';
import { FormFrame } from '../frame/FormFrame.tsx';
import { inputCircuit } from './about.ts';
import { inputChecks } from './checks.ts';
import {
  allLines,
  busVoltage,
  climb,
  fuseFields,
  inputCircuitFields,
  isTypedAtL3,
  lines,
  linkFields,
  meterFields,
  others,
  precharge,
  prechargeFields,
  rectifierFields,
  supplyLeads,
} from './fields.ts';

const { name } = inputCircuit;
const calculator = {
  ...inputCircuit,
  fields: inputCircuitFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const terminals = ['DC+', 'DC−', ...allLines];

const rows = [
  {
    legend: 'Rectifier to DC+, conducting',
    hint: 'Diode test. Red on the line, black on DC+: 0.45, OL.',
    leads: { red: allLines, black: ['DC+'] },
    fields: rectifierFields('plusConducting'),
  },
  {
    legend: 'Rectifier to DC+, blocking',
    hint: 'Red on DC+, black on the line. Wait until it stands still.',
    leads: { red: ['DC+'], black: allLines },
    fields: rectifierFields('plusBlocking'),
  },
  {
    legend: 'Rectifier to DC−, conducting',
    hint: 'Red on DC−, black on the line.',
    leads: { red: ['DC−'], black: allLines },
    fields: rectifierFields('minusConducting'),
  },
  {
    legend: 'Rectifier to DC−, blocking',
    hint: 'Red on the line, black on DC−. Wait until it stands still.',
    leads: { red: allLines, black: ['DC−'] },
    fields: rectifierFields('minusBlocking'),
  },
];

/** Fuses, rectifier, bus and precharge of a drive that blows fuses or trips the breaker, measured dead. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const prechargeAsked =
    form.typed.precharge === 'reached' || prechargeFields.some(({ id }) => (form.typed[id] ?? '') !== '');
  const shown = (fields: ReturnType<typeof rectifierFields>) =>
    form.typed.lines === 'two' && !isTypedAtL3(form.typed) ? fields.slice(0, 2) : fields;
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) =>
        outcome.state === 'judged' && (
          <CheckRows
            name={name}
            title="What was found of bus and input"
            rows={checkRows(outcome.assessment.findings, inputChecks)}
            caption="The checks of bus and input, in the order of work."
          />
        )
      }
    >
      <ReadingInput name={name} field={busVoltage} form={form} />
      <Choices name={name} field={supplyLeads} form={form} />
      <Choices name={name} field={others} form={form} />
      <Choices name={name} field={lines} form={form} />
      <ReadingRow
        name={name}
        legend="Fuses"
        hint="Each out of its holder, lowest range, tips zeroed: 0.2 Ω, OL."
        fields={shown(fuseFields)}
        form={form}
      />
      {rows.map(({ legend, hint, leads, fields }) => (
        <ReadingRow
          key={legend}
          name={name}
          legend={legend}
          hint={hint}
          picture={<LeadPicture at="Drive" meter="V" terminals={terminals} {...leads} />}
          fields={shown(fields)}
          form={form}
        />
      ))}
      <ReadingRow
        name={name}
        legend="DC+ to DC−, both ways"
        hint="Diode test. The picture shows the conducting way: two drops in series. The other way climbs, because the meter charges the bus."
        picture={<LeadPicture at="Drive" meter="V" terminals={terminals} red={['DC−']} black={['DC+']} />}
        fields={linkFields}
        form={form}
      />
      <Choices name={name} field={climb} form={form} />
      <Choices name={name} field={precharge} form={form} />
      {prechargeAsked && <ReadingRow name={name} legend="Precharge" fields={prechargeFields} form={form} />}
      <Choices name={name} field={readTwice} form={form} />
      <MoreFields name={name} summary="Accuracy of the meter (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
