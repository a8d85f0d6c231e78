import { correction, temperatureUnit, testVoltage, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { cableEndsChecked, motorTemperature, stageFields, suspectedAnyway, tester } from './fields.ts';
import { calculator } from './form.ts';
import type { StageName } from './rule/stage.ts';
import { Stage } from './Stage.tsx';
import { contradicts, type LaterStage, stagesAsked } from './stages-asked.ts';

const { name } = calculator;
const loadDrawing = () => import('./PartsStrip.tsx').then((module) => module.PartsStrip);
const fields = {
  joined: stageFields('joined'),
  cable: stageFields('cable'),
  bonded: stageFields('bonded'),
  motor: stageFields('motor'),
};

/** Cable against motor, in three stages. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const { outcome, read } = form;
  const assessment = outcome.state === 'judged' ? outcome.assessment : undefined;
  const parts = assessment && { parts: assessment.parts, misfit: contradicts(assessment) };
  const asked = stagesAsked(assessment);
  const used = (...stages: StageName[]) =>
    stages.some((stage) => fields[stage].some(({ id }) => read.readings[id]?.kind !== 'missing' || read.errors[id]));
  const stage = (number: number, title: string, later: LaterStage, isUsed: boolean) => ({
    number,
    title,
    asked: asked.includes(later),
    used: isUsed,
  });
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={() => <LateDrawing load={loadDrawing} shows={parts} />}
    >
      <Choices name={name} field={suspectedAnyway} form={form} />
      <ReadingRow
        name={name}
        legend="Stage 1: at the drive end, joined"
        hint="Leads off the drive, the PE core last: left on, PE reads a dead short even when it is broken. Cable and motor joined. Each to machine ground. PE by multimeter on its lowest range: expect a dead short. Before anything is powered, the PE core goes on first."
        fields={fields.joined}
        form={form}
      />
      <ReadingInput name={name} field={testVoltage} form={form} />
      <ReadingInput name={name} field={windingTemperature} form={form} />
      <MoreFields name={name} summary="Temperature unit and correction" fields={[]} form={form}>
        <Choices name={name} field={temperatureUnit} form={form} />
        <Choices name={name} field={correction} form={form} />
      </MoreFields>
      <Stage {...stage(2, 'the cable alone', 'cable', used('cable', 'bonded'))}>
        <ReadingRow
          name={name}
          legend="Both ends free"
          hint="Off the drive and off the motor. Each core to machine ground. Expect PE isolated like the others."
          fields={fields.cable}
          form={form}
        />
        <Choices name={name} field={cableEndsChecked} form={form} />
        <ReadingRow
          name={name}
          legend="Once more, bonded"
          hint="Join the PE core, the screen and the cores that you are not measuring to ground. With both ends free, a core that leaks to them leaks into a dead end and does not show."
          fields={fields.bonded}
          form={form}
        />
      </Stage>
      <Stage {...stage(3, 'the motor alone', 'motor', used('motor'))}>
        <ReadingRow
          name={name}
          legend="At the motor connector"
          hint="Each pin to the motor shell. Exactly one, PE, reads a dead short; measure it by multimeter on its lowest range."
          fields={fields.motor}
          form={form}
        />
        <ReadingInput name={name} field={motorTemperature} form={form} />
      </Stage>
      <MoreFields name={name} summary="Accuracy of the tester (optional)" fields={tester} form={form} />
    </FormFrame>
  );
}
