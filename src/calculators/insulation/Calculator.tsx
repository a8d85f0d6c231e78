import { filter, idleCores, rowKind, rowKindOf } from '../../kernel/form/cable-end-fields.ts';
import {
  correction,
  frameEarthed,
  machineClass,
  peCurrent,
  peMetres,
  peSection,
  ratedVoltage,
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
import { insulation } from './about.ts';
import { air, insulationFields, occasion, pe, phaseFields, tester, testMinutes, together } from './fields.ts';

const { name } = insulation;
const calculator = {
  ...insulation,
  fields: insulationFields,
  rule: lateRule(() => import('./form.ts').then((module) => module.calculator)),
};
const peChoices = [peSection, peCurrent, frameEarthed];
const loadDrawing = () => import('./InsulationPlot.tsx').then((module) => module.JudgedInsulationPlot);

/** Insulation to PE, after a trip or in routine monitoring. */
export function Calculator(props: CalculatorProps) {
  const form = useForm(calculator, props);
  const filled = (id: string) => (form.typed[id] ?? '') !== '';
  const single = rowKindOf(form.read) === 'single';
  // An entry is never hidden, whichever way was chosen.
  const terminals = [
    ...(!single || filled(together.id) ? [together] : []),
    ...(single || phaseFields.some(({ id }) => filled(id)) ? phaseFields : []),
  ];
  return (
    <FormFrame
      {...props}
      calculator={calculator}
      form={form}
      drawing={(outcome) => (
        <LateDrawing load={loadDrawing} shows={outcome.state === 'judged' ? { read: outcome.read } : undefined} />
      )}
    >
      <ReadingRow
        name={name}
        legend="Readings"
        hint="Drive disconnected, read after the same time each: 3.2 MΩ, 1.4G, >700M."
        picture={
          <LeadPicture
            at="Cable"
            meter="MΩ"
            terminals={['U', 'V', 'W', 'PE']}
            red={single ? ['U', 'V', 'W'] : ['U']}
            black={['PE']}
            joined={single ? [] : ['U', 'V', 'W']}
          />
        }
        fields={[...terminals, pe]}
        form={form}
      />
      <p class="row-note">
        PE by multimeter, lowest range, with the PE core of the cable off the drive: left on, it shows continuity even
        when it is broken. Last lead off, first lead on, before anything is powered.
      </p>
      <Choices name={name} field={rowKind} form={form} />
      {/* A visit begins with a trip, so it does not ask for the occasion. */}
      {props.visit === undefined && <Choices name={name} field={occasion} form={form} />}
      <Choices name={name} field={idleCores} form={form} />
      <ReadingRow name={name} legend="Test" fields={[testVoltage, ratedVoltage, testMinutes]} form={form} />
      <ReadingInput name={name} field={windingTemperature} form={form} />
      {form.read.choices.occasion === 'routine' && <Choices name={name} field={machineClass} form={form} />}
      <MoreFields name={name} summary="Temperature unit and correction" fields={[]} form={form}>
        <Choices name={name} field={temperatureUnit} form={form} />
        <Choices name={name} field={correction} form={form} />
      </MoreFields>
      <MoreFields
        name={name}
        summary="Length and section of the PE core (optional)"
        hint="What PE should read follows from them."
        fields={[peMetres]}
        form={form}
        answered={peChoices.some(({ id, initial }) => (form.typed[id] ?? initial) !== initial)}
      >
        {peChoices.map((field) => (
          <Choices key={field.id} name={name} field={field} form={form} />
        ))}
      </MoreFields>
      <MoreFields
        name={name}
        summary="A filter or suppressor on the cable"
        fields={[]}
        form={form}
        answered={filled(filter.id)}
      >
        <Choices name={name} field={filter} form={form} />
      </MoreFields>
      <MoreFields
        name={name}
        summary="Air and humidity (optional)"
        hint="For the dew point: at or below it the winding is wet, and nothing is judged."
        fields={air}
        form={form}
      />
      <MoreFields name={name} summary="Accuracy of the tester (optional)" fields={tester} form={form} />
    </FormFrame>
  );
}
