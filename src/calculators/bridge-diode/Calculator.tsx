import { useMemo } from 'preact/hooks';
import type { LateForm } from '../../kernel/form/calculator-form.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type IslandProps, useForm } from '../../ui/form/use-form.ts';
import { DrawnLater } from '../../ui/plot/DrawnLater.tsx';
import { BridgeSchematic } from '../bridge/BridgeSchematic.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import {
  bridgeDiodeFields,
  busVoltage,
  diodeFields,
  meterFields,
  motorLeads,
  resistanceFields,
  steadiness,
} from './fields.ts';
import { positionStates } from './positions.ts';
import type { BridgeDiodeAssessment } from './rule/assess.ts';

const name = 'bridge-diode';
const bridgeDiode: LateForm<BridgeDiodeAssessment> = {
  name,
  fields: bridgeDiodeFields,
  load: () => import('./form.ts').then((module) => module.calculator),
};

const rows = [
  {
    legend: 'DC+, conducting',
    hint: 'Diode test. Red tip on the terminal, black on DC+. Type what the meter shows: 0.412, 412 mV, OL.',
    fields: diodeFields('plus', 'forward'),
  },
  { legend: 'DC+, blocking', hint: 'Red tip on DC+, black on the terminal.', fields: diodeFields('plus', 'reverse') },
  {
    legend: 'DC−, conducting',
    hint: 'Red tip on DC−, black on the terminal.',
    fields: diodeFields('minus', 'forward'),
  },
  { legend: 'DC−, blocking', hint: 'Red tip on the terminal, black on DC−.', fields: diodeFields('minus', 'reverse') },
];

/** The check of a drive's output stage by diode test: twelve readings, and the six resistances beside them. */
export function Calculator(props: IslandProps) {
  const form = useForm(bridgeDiode, props);
  const { outcome } = form;
  const stage = useMemo(
    () =>
      'read' in outcome
        ? {
            positions: positionStates(outcome.read, outcome.state === 'judged' ? outcome.assessment : undefined),
            title: 'Output stage with the forward drops',
            caption: 'The forward drop of each diode, at the switch that it belongs to.',
          }
        : undefined,
    [outcome],
  );
  return (
    <FormFrame
      {...props}
      definition={bridgeDiode}
      label="Bridge by diode test"
      form={form}
      drawing={<DrawnLater drawing={BridgeSchematic} shows={stage} />}
    >
      <ReadingInput name={name} field={busVoltage} form={form} />
      <Choices name={name} field={motorLeads} form={form} />
      {rows.map(({ legend, hint, fields }) => (
        <ReadingRow key={legend} name={name} legend={legend} hint={hint} fields={fields} form={form} />
      ))}
      <Choices name={name} field={steadiness} form={form} />
      <MoreFields
        name={name}
        summary="Resistance readings, if you took them too (optional)"
        hint="Resistance range, diodes blocking: red on DC+ and black on the terminal, or black on DC− and red on the terminal. They show leaks that the diode test passes."
        fields={resistanceFields}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the diode test (optional)" fields={meterFields} form={form} />
    </FormFrame>
  );
}
