import type { Outcome } from '../../kernel/form/calculator-form.ts';
import { readForm } from '../../kernel/form/read-form.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { FormFrame } from '../frame/FormFrame.tsx';
import { bridge } from './about.ts';
import { BridgeSchematic } from './BridgeSchematic.tsx';
import {
  againField,
  bridgeFields,
  busVoltage,
  meterFields,
  motorLeads,
  railFields,
  secondChoices,
  secondFields,
  tipsTogether,
  tolerance,
} from './fields.ts';
import { bridgePositions } from './positions.ts';
import type { BridgeAssessment } from './rule/assess.ts';

const { name } = bridge;
const calculator = {
  ...bridge,
  fields: bridgeFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const plus = [...railFields('plus'), againField('plus')];
const minus = [...railFields('minus'), againField('minus')];
const phaseNames = ['U', 'V', 'W'];
const drive = { at: 'Drive', meter: 'Ω', terminals: ['DC+', 'DC−', ...phaseNames] };
const optional = [tipsTogether, tolerance, ...meterFields];

/** The six-reading check of a drive's output stage. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  // One bad reading convicts nothing: the second one is then in sight.
  const fails = form.outcome.state === 'judged' && form.outcome.verdict === 'no-go';
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
        hint="Resistance range. Red tip on DC+, black on the terminal. Hold on U until the figure stands still, then V, W, and U once more: the bus capacitor charges from the meter. Type the unit too: 450k, 1.2 MΩ, OL, >72M."
        picture={<LeadPicture {...drive} red={['DC+']} black={phaseNames} />}
        fields={plus}
        form={form}
      />
      <ReadingRow
        name={name}
        legend="DC− to each terminal"
        hint="Black tip on DC−, red on the terminal, so that the diodes block. U once more at the end here too."
        picture={<LeadPicture {...drive} red={phaseNames} black={['DC−']} />}
        fields={minus}
        form={form}
      />
      <MoreFields
        name={name}
        summary="Something is odd: second reading, leads exchanged, what else is on the bus, a sound sister (optional)"
        hint="A bad reading keeps the power off. It proves the drive bad only when it was taken twice and nothing else explains it."
        fields={secondFields}
        choices={secondChoices}
        form={form}
        answered={fails}
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
