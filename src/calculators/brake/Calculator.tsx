import { temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { CheckRows } from '../../ui/plot/CheckRows.tsx';
import { checkRows } from '../../ui/plot/check-rows.ts';
import { FormFrame } from '../frame/FormFrame.tsx';
import { brake } from './about.ts';
import { brakeChecks } from './checks.ts';
import {
  axis,
  brakeFields,
  busVoltage,
  circuit,
  coilFields,
  isolationFields,
  leads,
  meterFields,
  metresField,
  plateFields,
  release,
  section,
  supplyFields,
  supplyTolerance,
} from './fields.ts';

const { name } = brake;
const calculator = {
  ...brake,
  fields: brakeFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const terminals = ['B+', 'B−', 'U', 'V', 'W', 'PE'];

/** Whether a holding brake is fed and opens, and what explains it if not. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) =>
        outcome.state === 'judged' && (
          <CheckRows
            name={name}
            title="What was found of the brake"
            rows={checkRows(outcome.assessment.findings, brakeChecks)}
            caption="The four checks of a holding brake. None of them is its holding torque."
          />
        )
      }
    >
      <ReadingRow name={name} legend="The plate" fields={plateFields} form={form} />
      <Choices name={name} field={axis} form={form} />
      <ReadingRow
        name={name}
        legend="Before the ohms"
        hint="Supply locked out. A bus that is charged falsifies the ohms."
        fields={[busVoltage]}
        form={form}
      />
      <Choices name={name} field={leads} form={form} />
      <Choices name={name} field={circuit} form={form} />
      <ReadingRow
        name={name}
        legend="Coil, dead"
        hint="Brake plug off the drive. Lowest range, tips zeroed: 47.6 Ω."
        picture={<LeadPicture at="Motor" meter="Ω" terminals={terminals} red={['B+']} black={['B−']} />}
        fields={coilFields}
        form={form}
      />
      <Choices name={name} field={temperatureUnit} form={form} />
      <ReadingRow
        name={name}
        legend="Brake cores, dead"
        hint="Multimeter, highest range, motor leads off the drive: >20 MΩ. No insulation tester: it destroys suppressors."
        picture={
          <LeadPicture at="Drive end" meter="Ω" terminals={terminals} red={['B+']} black={['U', 'V', 'W', 'PE']} />
        }
        fields={isolationFields}
        form={form}
      />
      <ReadingRow
        name={name}
        legend="Voltage under load"
        hint="Live, at extra-low voltage only, axis held, nobody in reach. The control releases the brake. Not permitted: leave it empty."
        fields={supplyFields}
        form={form}
      />
      <Choices name={name} field={release} form={form} />
      <MoreFields
        name={name}
        summary="Length of the cores, tolerance of the voltage (optional)"
        hint="Needed if the coil is read through the cable only."
        fields={[metresField, supplyTolerance]}
        choices={[section]}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the meter (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
