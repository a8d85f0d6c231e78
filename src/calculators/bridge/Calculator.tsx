import type { Outcome } from '../../kernel/form/calculator-form.ts';
import { readForm } from '../../kernel/form/read-form.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { FormFrame } from '../frame/FormFrame.tsx';
import { BridgeSchematic } from './BridgeSchematic.tsx';
import { busVoltage, meterFields, motorLeads, railFields, tipsTogether, tolerance } from './fields.ts';
import { calculator } from './form.ts';
import { bridgePositions } from './positions.ts';
import type { BridgeAssessment } from './rule/assess.ts';

const { name } = calculator;
const plus = railFields('plus');
const minus = railFields('minus');
const optional = [tipsTogether, tolerance, ...meterFields];

/** The six-reading check of a drive's output stage. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => <BridgeSchematic positions={positionsOf(outcome)} />}
    >
      <ReadingInput name={name} field={busVoltage} form={form} />
      <Choices name={name} field={motorLeads} form={form} />
      <ReadingRow
        name={name}
        legend="DC+ to each terminal"
        hint="Resistance range. Red tip on DC+, black on the terminal. Type what the meter shows, with its unit: 450k, 1.2 MΩ, OL, >72M."
        fields={plus}
        form={form}
      />
      <ReadingRow
        name={name}
        legend="DC− to each terminal"
        hint="Black tip on DC−, red on the terminal, so that the diodes block. Reversed leads can show all three of a rail low and alike: exchange them and read again."
        fields={minus}
        form={form}
      />
      <MoreFields
        name={name}
        summary="Meter tips, allowed difference, accuracy of the meter (optional)"
        fields={optional}
        form={form}
      />
    </FormFrame>
  );
}

/** The server draws the schematic too, without readings. */
function positionsOf(outcome: Outcome<BridgeAssessment>) {
  const read = 'read' in outcome ? outcome.read : readForm(calculator.fields, {});
  return bridgePositions(read, outcome.state === 'judged' ? outcome.assessment : undefined);
}
