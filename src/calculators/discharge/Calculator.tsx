import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { discharge } from './about.ts';
import { busFields, dischargeFields, labelFields, meterFields, pairFields, toleranceFields } from './fields.ts';
import { WaitTable } from './WaitTable.tsx';

const { name } = discharge;
const calculator = {
  ...discharge,
  fields: dischargeFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./DischargePlot.tsx').then((module) => module.DischargePlot);

/** How long the bus takes to the published limits. It never says that the bus is discharged. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const assessment = form.outcome.state === 'judged' ? form.outcome.assessment : undefined;
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={() => (
        <>
          {assessment && assessment.waits.length > 0 && (
            <WaitTable waits={assessment.waits} fromReading={assessment.charged?.fromReading ?? false} />
          )}
          <LateDrawing load={loadDrawing} shows={assessment && { assessment }} />
        </>
      )}
    >
      <ReadingRow
        name={name}
        legend="The bus"
        hint="From the drive manual. Leave empty what you don't know."
        fields={busFields}
        form={form}
      />
      <ReadingRow
        name={name}
        legend="Two readings of the voltmeter"
        hint="With the supply locked out, and the meter left connected between them. Leave empty if you took none."
        picture={<LeadPicture at="Drive" meter="V" terminals={['DC+', 'DC−']} red={['DC+']} black={['DC−']} />}
        fields={pairFields}
        form={form}
      />
      {labelFields.map((field) => (
        <ReadingInput key={field.id} name={name} field={field} form={form} />
      ))}
      <MoreFields
        name={name}
        summary="Tolerances and accuracy (optional)"
        hint="A display is never taken for surer than one count of its last digit."
        fields={[...toleranceFields, ...meterFields]}
        form={form}
      />
    </FormFrame>
  );
}
