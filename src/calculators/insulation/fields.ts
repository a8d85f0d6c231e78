import { phases } from '../../kernel/electrics/phases.ts';
import { filter, idleCores, rowKind } from '../../kernel/form/cable-end-fields.ts';
import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits, insulationUnits } from '../../kernel/form/measured-units.ts';
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
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';

const reference = formatRounded(limitValue('reference-temperature-routine'), '°C');
const point = formatRounded(limitValue('after-trip-point'), 'Ω');

/** No default answer: the two limits are far apart, and the wrong one passes a damaged motor. */
export const occasion: ChoiceField = {
  kind: 'choice',
  id: 'occasion',
  name: 'Why do you measure?',
  options: [
    { value: 'after-trip', label: 'After a trip', hint: `Is anything damaged? Judged against ${point}, as read.` },
    {
      value: 'routine',
      label: 'Routine monitoring',
      hint: `Is a healthy machine ageing? Judged by IEEE 43, at ${reference}.`,
    },
  ],
  initial: '',
  required: true,
};

export const phaseFields: ReadingField[] = phases.map((phase) => ({
  kind: 'reading',
  id: phase,
  label: `${phase} to PE`,
  name: `${phase} to PE`,
  quantity: 'resistance',
  units: insulationUnits,
  row: 'phases',
  lowIsWorse: true,
}));

/** The windings join the three anyway, so one reading is enough and has no charge of the one before in it. */
export const together: ReadingField = {
  kind: 'reading',
  id: 'together',
  label: 'U, V, W joined to PE',
  name: 'U, V and W joined, to PE',
  quantity: 'resistance',
  units: insulationUnits,
};

export const pe: ReadingField = {
  kind: 'reading',
  id: 'PE',
  label: 'PE pin to frame',
  name: 'PE pin to frame',
  quantity: 'resistance',
  units: conductorUnits,
};

export const testMinutes: ReadingField = {
  kind: 'reading',
  id: 'testMinutes',
  label: 'Test duration',
  name: 'Test duration',
  hint: `Empty means ${formatRounded(limitValue('reading-time'), 'min')}. Type 60 s or 1 min.`,
  quantity: 'duration',
};

export const air: ReadingField[] = [
  {
    kind: 'reading',
    id: 'ambient',
    label: 'Air temperature',
    name: 'Air temperature',
    quantity: 'temperature',
    bareUnitFrom: 'temperatureUnit',
  },
  {
    kind: 'reading',
    id: 'humidity',
    label: 'Relative humidity, %',
    name: 'Relative humidity',
    quantity: 'percent',
  },
];

export const tester = instrumentFields('700 MΩ');

export const insulationFields: FormField[] = [
  occasion,
  rowKind,
  together,
  ...phaseFields,
  pe,
  frameEarthed,
  peMetres,
  peSection,
  peCurrent,
  idleCores,
  filter,
  testVoltage,
  ratedVoltage,
  testMinutes,
  windingTemperature,
  temperatureUnit,
  machineClass,
  correction,
  ...air,
  ...tester,
];
