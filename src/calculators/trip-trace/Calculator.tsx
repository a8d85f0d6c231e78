import { Choices } from '../../ui/form/Choices.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { tripTrace } from './about.ts';
import { FileAnswers } from './FileAnswers.tsx';
import { FileField } from './FileField.tsx';
import { decimalMark, inductanceIs, motorFields, polePairs, sensors, stored, tripTraceFields } from './fields.ts';
import { keptTraceOf } from './kept-trace.ts';
import { useTraceFile } from './use-trace-file.ts';

const { name } = tripTrace;
const calculator = {
  ...tripTrace,
  fields: tripTraceFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./TracePlots.tsx').then((module) => module.TracePlots);

/** What the recording of a trip speaks for and against. It proves no part. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const state = useTraceFile(form);
  const { file, refused, problems } = state;
  const marksAsked = refused?.problem === 'marks-mixed' || (form.typed.decimalMark ?? '') !== '';
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => {
        const kept = outcome.state === 'judged' ? keptTraceOf(outcome.read) : undefined;
        return <LateDrawing load={loadDrawing} shows={kept && { kept }} />;
      }}
    >
      <FileField state={state} kept={form.typed.trace ?? ''} />
      {marksAsked && <Choices name={name} field={decimalMark} form={form} />}
      {file && <FileAnswers name={name} file={file} problems={problems} form={form} />}
      <fieldset>
        <legend>Motor and drive</legend>
        <p class="hint">
          From type plate, data sheet and drive manual. What is not stated costs only the rules that need it.
        </p>
        {motorFields.map((field) => (
          <ReadingInput key={field.id} name={name} field={field} form={form} />
        ))}
      </fieldset>
      <Choices name={name} field={polePairs} form={form} />
      <Choices name={name} field={inductanceIs} form={form} />
      <Choices name={name} field={sensors} form={form} />
      <Choices name={name} field={stored} form={form} />
    </FormFrame>
  );
}
