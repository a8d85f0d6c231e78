import { Choices } from '../../ui/form/Choices.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { bendTest } from './about.ts';
import {
  badAgainFields,
  bendFields,
  end,
  idle,
  loopFields,
  loopNames,
  meter,
  metres,
  moved,
  movedAgain,
  places,
  positionFields,
  screen,
  section,
  testVoltage,
  whileOn,
} from './fields.ts';
import type { BendAssessment, LoopId } from './rule/input.ts';

const { name } = bendTest;
const calculator = {
  ...bendTest,
  fields: bendFields,
  rule: lateRule<BendAssessment>(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./BendRows.tsx').then((module) => module.BendRows);
const allLoops = Object.keys(loopNames) as LoopId[];
const always: readonly LoopId[] = ['UV', 'VW', 'WU', 'PE'];
const further: readonly LoopId[] = ['screen', 'brake', 'sensor'];
const hints: Partial<Record<LoopId, string>> = {
  UV: 'Cores joined at the far end. The clips stay put.',
  PE: 'There through PE, back through U.',
  screen: 'There through the screen, back through U.',
  brake: 'The two brake cores joined at the far end.',
  sensor: 'The two sensor cores joined at the far end. Never at 500 V.',
  feedback: 'The pair that moves most; each pair is watched. Never at 500 V.',
};

/** Loops of a cable at rest and while it is moved by hand, and its insulation at rest in several positions. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const { typed, outcome } = form;
  const isTyped = (fields: readonly { id: string }[]) => fields.some(({ id }) => (typed[id] ?? '') !== '');
  const repeat = outcome.state === 'judged' ? outcome.assessment.repeat : [];
  const asked: LoopId[] = [
    ...(typed.screen === 'fitted' ? (['screen'] as const) : []),
    ...(['brake', 'sensor'] as const).filter((pair) => typed.idle === pair || typed.idle === 'both'),
  ];
  const row = (loop: LoopId) => (
    <ReadingRow
      key={loop}
      name={name}
      legend={loopNames[loop]}
      {...(hints[loop] !== undefined && { hint: hints[loop] })}
      fields={loopFields(loop)}
      form={form}
    />
  );
  const again = allLoops.filter((loop) => repeat.includes(loop) || isTyped(loopFields(loop, true)));
  const fed = isTyped(loopFields('feedback'));
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(judged) => (
        <LateDrawing
          load={loadDrawing}
          shows={judged.state === 'judged' ? { assessment: judged.assessment } : undefined}
        />
      )}
    >
      {always.map(row)}
      <Choices name={name} field={end} form={form} />
      <Choices name={name} field={meter} form={form} />
      <Choices name={name} field={moved} form={form} />
      <Choices name={name} field={screen} form={form} />
      <Choices name={name} field={idle} form={form} />
      {further.filter((loop) => asked.includes(loop) || isTyped(loopFields(loop))).map(row)}
      <MoreFields name={name} summary="Feedback cable (optional)" fields={[]} form={form} answered={fed}>
        {row('feedback')}
      </MoreFields>
      {again.length > 0 && (
        <>
          <Choices name={name} field={movedAgain} form={form} />
          {again.map((loop) => (
            <ReadingRow
              key={loop}
              name={name}
              legend={`${loopNames[loop]}, second movement`}
              fields={loopFields(loop, true)}
              form={form}
            />
          ))}
        </>
      )}
      <Choices name={name} field={whileOn} form={form} />
      <ReadingInput name={name} field={testVoltage} form={form} />
      {places.slice(0, 3).map((place) => (
        <ReadingRow
          key={place}
          name={name}
          legend={`Insulation at rest, position ${place}`}
          hint={place === 1 ? 'Straight. Each core to all others, screen and PE: >2 GΩ.' : 'Bent, and fixed.'}
          fields={positionFields(place)}
          form={form}
        />
      ))}
      <MoreFields
        name={name}
        summary="More positions, and a bad one once more (optional)"
        fields={[]}
        form={form}
        answered={isTyped([...positionFields(4), ...positionFields(5), ...badAgainFields])}
      >
        {places.slice(3).map((place) => (
          <ReadingRow
            key={place}
            name={name}
            legend={`Insulation at rest, position ${place}`}
            fields={positionFields(place)}
            form={form}
          />
        ))}
        <ReadingRow
          name={name}
          legend="The bad position once more"
          hint="After the cable lay straight and read well."
          fields={badAgainFields}
          form={form}
        />
      </MoreFields>
      <MoreFields
        name={name}
        summary="Length and cross-section (optional)"
        fields={[metres]}
        choices={[section]}
        form={form}
      />
    </FormFrame>
  );
}
