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
import { brakingCircuit } from './about.ts';
import { brakingChecks } from './checks.ts';
import {
  brakingCircuitFields,
  busVoltage,
  housingFields,
  lead,
  lowerFields,
  meterFields,
  plateTolerance,
  resistorFields,
  thermal,
  thermalOhms,
  upperFields,
} from './fields.ts';

const { name } = brakingCircuit;
const calculator = {
  ...brakingCircuit,
  fields: brakingCircuitFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const terminals = ['DC+', 'B', 'DC−'];

/** Resistor, housing, thermal switch and chopper of a braking circuit, measured dead. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const switchAsked = form.typed.thermal === 'opens-hot' || (form.typed.thermalOhms ?? '') !== '';
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) =>
        outcome.state === 'judged' && (
          <CheckRows
            name={name}
            title="What was found of the braking circuit"
            rows={checkRows(outcome.assessment.findings, brakingChecks)}
            caption="The checks of a braking circuit, in the order of work."
          />
        )
      }
    >
      <ReadingInput name={name} field={busVoltage} form={form} />
      <ReadingRow
        name={name}
        legend="Braking resistor"
        hint="Both its leads off the drive, lowest range, tips zeroed."
        fields={resistorFields}
        form={form}
      />
      <Choices name={name} field={lead} form={form} />
      <ReadingRow
        name={name}
        legend="Resistor to its housing"
        hint="Each end by multimeter on the highest range. Then both ends joined by insulation tester, drive off."
        fields={housingFields}
        form={form}
      />
      <Choices name={name} field={thermal} form={form} />
      {switchAsked && <ReadingInput name={name} field={thermalOhms} form={form} />}
      <ReadingRow
        name={name}
        legend="Chopper, freewheel diode"
        hint="Diode test at the drive, resistor off. B is the brake terminal that is not DC+ itself. Wait until the figure stands still: 0.45, OL."
        picture={<LeadPicture at="Drive" meter="V" terminals={terminals} red={['B']} black={['DC+']} />}
        fields={upperFields}
        form={form}
      />
      <ReadingRow
        name={name}
        legend="Chopper, transistor"
        hint="The picture shows the conducting way. Exchange the leads for the other."
        picture={<LeadPicture at="Drive" meter="V" terminals={terminals} red={['DC−']} black={['B']} />}
        fields={lowerFields}
        form={form}
      />
      <Choices name={name} field={readTwice} form={form} />
      <MoreFields
        name={name}
        summary="Tolerance of the resistor, accuracy of the meter (optional)"
        fields={[plateTolerance, ...meterFields]}
        form={form}
      />
    </FormFrame>
  );
}
