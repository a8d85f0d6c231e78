import { correction, ratedVoltage, temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { useOpening } from '../../ui/form/folded-parts.ts';
import { lateRule } from '../../ui/form/late-rule.ts';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { AddRow } from './AddRow.tsx';
import { trend } from './about.ts';
import { bareOhms, dateOrder, decimalMark, trendFields, windingKind } from './fields.ts';
import { RowsField } from './RowsField.tsx';

const { name } = trend;
const calculator = {
  ...trend,
  fields: trendFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./TrendDrawing.tsx').then((module) => module.TrendDrawing);

/** Whether the insulation of a machine is getting worse over the years. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const assessment = form.outcome.state === 'judged' ? form.outcome.assessment : undefined;
  const keptOut = assessment?.keptOut ?? [];
  const orderAsked = form.typed.dateOrder !== '' || keptOut.some(({ code }) => code === 'date-ambiguous');
  const answered = [bareOhms, decimalMark].some(({ id }) => (form.typed[id] ?? '') !== '');
  const reading = useOpening(answered || keptOut.some(({ code }) => code === 'reading-unreadable'));
  const voltageAsked = form.typed.machineClass === 'pre-1970' || (form.typed.ratedVoltage ?? '') !== '';
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={() => <LateDrawing load={loadDrawing} shows={assessment && { assessment }} />}
    >
      <RowsField form={form} />
      {orderAsked && <Choices name={name} field={dateOrder} form={form} />}
      <details class="more" ref={reading}>
        <summary>How the table is to be read (optional)</summary>
        <p class="hint">A unit in the cell or in the head of the column goes before these answers.</p>
        <Choices name={name} field={bareOhms} form={form} />
        <Choices name={name} field={temperatureUnit} form={form} />
        <Choices name={name} field={decimalMark} form={form} />
      </details>
      <AddRow form={form} />
      <Choices name={name} field={windingKind} form={form} />
      {voltageAsked && <ReadingInput name={name} field={ratedVoltage} form={form} />}
      <Choices name={name} field={correction} form={form} />
    </FormFrame>
  );
}
