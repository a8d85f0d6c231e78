import { filter, idleCores, rowKind, rowKindOf } from '../../kernel/form/cable-end-fields.ts';
import {
  correction,
  frameEarthed,
  peCurrent,
  peMetres,
  peSection,
  temperatureUnit,
  testVoltage,
  windingTemperature,
} from '../../kernel/form/shared-fields.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { LeadPicture } from '../../ui/form/LeadPicture.tsx';
import { lateRule } from '../../ui/form/late-rule.ts';
import { MoreFields } from '../../ui/form/MoreFields.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { ReadingRow } from '../../ui/form/ReadingRow.tsx';
import { type CalculatorProps, useForm } from '../../ui/form/use-form.ts';
import { LateDrawing } from '../../ui/plot/LateDrawing.tsx';
import { FormFrame } from '../frame/FormFrame.tsx';
import { isolation } from './about.ts';
import {
  cableBuild,
  cableEndsChecked,
  cableMaterial,
  driedField,
  isolationFields,
  moreFields,
  motorTemperature,
  peAgain,
  stageFields,
  suspectedAnyway,
  tester,
  togetherField,
} from './fields.ts';
import type { StageName } from './rule/stage.ts';
import { Stage } from './Stage.tsx';
import { contradicts, type LaterStage, stagesAsked } from './stages-asked.ts';
import { badCores } from './suspect-cores.ts';

const { name } = isolation;
const calculator = {
  ...isolation,
  fields: isolationFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const loadDrawing = () => import('./PartsStrip.tsx').then((module) => module.PartsStrip);
const together = { joined: togetherField('joined'), motor: togetherField('motor') };
const more = { cable: moreFields('cable'), motor: moreFields('motor') };
const dried = { cable: driedField('cable'), motor: driedField('motor') };
const peChoices = [peSection, peCurrent, frameEarthed];
const fields = {
  joined: stageFields('joined'),
  cable: stageFields('cable'),
  bonded: stageFields('bonded'),
  motor: stageFields('motor'),
};

const phaseNames = ['U', 'V', 'W'];
/** Each core to ground, or to the shell of the motor. */
const tested = (at: string, ground = 'ground') => ({
  at,
  meter: 'MΩ',
  terminals: [...phaseNames, 'PE', ground],
  black: [ground],
});

const fieldsOf = (stage: StageName) =>
  stage === 'joined' || stage === 'motor' ? [...fields[stage], together[stage]] : fields[stage];

/** Cable against motor, in three stages. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const { outcome, read } = form;
  const assessment = outcome.state === 'judged' ? outcome.assessment : undefined;
  const parts = assessment && {
    parts: assessment.parts,
    badCores: badCores(assessment.findings),
    misfit: contradicts(assessment),
  };
  const asked = stagesAsked(assessment);
  const used = (...stages: StageName[]) =>
    stages.some((stage) => fieldsOf(stage).some(({ id }) => read.readings[id]?.kind !== 'missing' || read.errors[id]));
  const asksAgain = (part: 'cable' | 'motor') =>
    assessment?.next.some(({ code }) => code === `read-${part}-again`) === true;
  const filled = (id: string) => (form.typed[id] ?? '') !== '';
  const single = rowKindOf(read) === 'single';
  // An entry is never hidden, whichever way was chosen.
  const row = (stage: 'joined' | 'motor') => {
    const [pe, phases] = [fields[stage].slice(-1), fields[stage].slice(0, -1)];
    return [
      ...(!single || filled(together[stage].id) ? [together[stage]] : []),
      ...(single || phases.some(({ id }) => filled(id)) ? phases : []),
      ...pe,
    ];
  };
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
      <ReadingRow
        name={name}
        legend="Stage 1: at the drive end, joined"
        hint="Cable and motor joined, all leads off the drive. Each to machine ground."
        picture={
          <LeadPicture {...tested('Drive end')} red={single ? phaseNames : ['U']} joined={single ? [] : phaseNames} />
        }
        fields={row('joined')}
        form={form}
      />
      <p class="row-note">
        The PE core comes off last and goes on first: left on, PE shows continuity even when it is broken. PE by
        multimeter, lowest range.
      </p>
      <Choices name={name} field={rowKind} form={form} />
      <Choices name={name} field={idleCores} form={form} />
      <Choices name={name} field={suspectedAnyway} form={form} />
      <MoreFields
        name={name}
        summary="If PE shows no continuity: read again, length, frame"
        fields={[peAgain, peMetres]}
        form={form}
        answered={peChoices.some(({ id, initial }) => (form.typed[id] ?? initial) !== initial)}
      >
        {peChoices.map((field) => (
          <Choices key={field.id} name={name} field={field} form={form} />
        ))}
      </MoreFields>
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
          picture={<LeadPicture {...tested('Cable')} red={[...phaseNames, 'PE']} />}
          fields={fields.cable}
          form={form}
        />
        <Choices name={name} field={cableEndsChecked} form={form} />
        <ReadingRow
          name={name}
          legend="Once more, bonded"
          hint="Join the PE core, the screen, all idle cores and the cores that you are not measuring to ground. With both ends free, a core that leaks to them leaks into a dead end and does not show."
          picture={<LeadPicture {...tested('Cable')} red={['U']} joined={['V', 'W', 'PE', 'ground']} />}
          fields={fields.bonded}
          form={form}
        />
        <Choices name={name} field={filter} form={form} />
        <MoreFields
          name={name}
          summary="Length, insulation and temperature of the cable (optional)"
          hint="A long or warm cable reads low without a fault."
          fields={cableBuild}
          form={form}
          answered={filled(cableMaterial.id)}
        >
          <Choices name={name} field={cableMaterial} form={form} />
        </MoreFields>
        <MoreFields
          name={name}
          summary="If the cable fails: read again, compared"
          hint="One reading proves nothing bad."
          fields={more.cable}
          form={form}
          answered={filled(dried.cable.id) || asksAgain('cable')}
        >
          <Choices name={name} field={dried.cable} form={form} />
        </MoreFields>
      </Stage>
      <Stage {...stage(3, 'the motor alone', 'motor', used('motor'))}>
        <ReadingRow
          name={name}
          legend="At the motor connector"
          hint="Each pin to the motor shell, brake and sensor pins joined to the shell. Of U, V, W and PE only PE shows continuity; measure it by multimeter on its lowest range."
          picture={
            <LeadPicture
              {...tested('Motor', 'shell')}
              red={single ? phaseNames : ['U']}
              joined={single ? [] : phaseNames}
            />
          }
          fields={row('motor')}
          form={form}
        />
        <ReadingInput name={name} field={motorTemperature} form={form} />
        <MoreFields
          name={name}
          summary="If the motor fails: read again, compared"
          hint="One reading proves nothing bad. A sound old motor may read tens of megohms."
          fields={more.motor}
          form={form}
          answered={filled(dried.motor.id) || asksAgain('motor')}
        >
          <Choices name={name} field={dried.motor} form={form} />
        </MoreFields>
      </Stage>
      <MoreFields name={name} summary="Accuracy of the tester (optional)" fields={tester} form={form} />
    </FormFrame>
  );
}
