import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { BridgeSchematic } from '../bridge/BridgeSchematic.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { bridgeDiode } from './about.ts';
import {
  bridgeDiodeFields,
  busVoltage,
  diodeFields,
  meterFields,
  motorLeads,
  resistanceFields,
  resistanceOrder,
  steadiness,
} from './fields.ts';
import { positionStates } from './positions.ts';

const { name } = bridgeDiode;
const calculator = {
  ...bridgeDiode,
  fields: bridgeDiodeFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};

const phaseNames = ['U', 'V', 'W'];
const rows = [
  {
    legend: 'DC+, conducting',
    hint: 'Diode test. Red tip on the terminal, black on DC+. Type what the meter shows: 0.412, 412 mV, OL.',
    leads: { red: phaseNames, black: ['DC+'] },
    fields: diodeFields('plus', 'forward'),
  },
  {
    legend: 'DC+, blocking',
    hint: 'Red tip on DC+, black on the terminal.',
    leads: { red: ['DC+'], black: phaseNames },
    fields: diodeFields('plus', 'reverse'),
  },
  {
    legend: 'DC−, conducting',
    hint: 'Red tip on DC−, black on the terminal.',
    leads: { red: ['DC−'], black: phaseNames },
    fields: diodeFields('minus', 'forward'),
  },
  {
    legend: 'DC−, blocking',
    hint: 'Red tip on the terminal, black on DC−.',
    leads: { red: phaseNames, black: ['DC−'] },
    fields: diodeFields('minus', 'reverse'),
  },
];

/** The check of a drive's output stage by diode test: twelve readings, and the six resistances beside them. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) =>
        'read' in outcome && (
          <BridgeSchematic
            positions={positionStates(outcome.read, outcome.state === 'judged' ? outcome.assessment : undefined)}
            title="Output stage with the forward drops"
            caption="The forward drop of each diode, at the transistor that it belongs to."
          />
        )
      }
    >
      <ReadingInput name={name} field={busVoltage} form={form} />
      <Choices name={name} field={motorLeads} form={form} />
      {rows.map(({ legend, hint, leads, fields }) => (
        <ReadingRow
          key={legend}
          name={name}
          legend={legend}
          hint={hint}
          picture={<LeadPicture at="Drive" meter="V" terminals={['DC+', 'DC−', ...phaseNames]} {...leads} />}
          fields={fields}
          form={form}
        />
      ))}
      <Choices name={name} field={steadiness} form={form} />
      <MoreFields
        name={name}
        summary="Resistance readings, if you took them too (optional)"
        hint="Resistance range, diodes blocking: red on DC+ and black on the terminal, or black on DC− and red on the terminal. They show leaks that the diode test passes."
        fields={resistanceFields}
        choices={[resistanceOrder]}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the diode test (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
