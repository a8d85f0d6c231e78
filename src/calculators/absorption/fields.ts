import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { insulationUnits } from '../../kernel/form/measured-units.ts';
import { temperatureUnit, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { limitValue } from '../../kernel/limits.ts';
import { absorptionField, absorptionTimes } from './rule/input.ts';
import { markName } from './stopwatch.ts';

export const windingKindField: ChoiceField = {
  kind: 'choice',
  id: 'windingKind',
  name: 'Kind of winding',
  options: [
    { value: 'random-wound', label: 'Random-wound', hint: 'Most servo motors. The index decides nothing there.' },
    { value: 'form-wound', label: 'Form-wound', hint: 'Large machines with coils of rectangular wire.' },
  ],
  initial: 'random-wound',
};

export const thermalClassField: ChoiceField = {
  kind: 'choice',
  id: 'thermalClass',
  name: 'Insulation class',
  hint: 'From the name plate. Not known: leave the stricter one.',
  options: [
    { value: 'BFH', label: 'B, F or H', hint: `At least ${limitValue('polarization-index-bfh')}.` },
    { value: 'A', label: 'A', hint: `At least ${limitValue('polarization-index-a')}.` },
  ],
  initial: 'BFH',
};

export const timedFields: ReadingField[] = absorptionTimes.map((seconds) => ({
  kind: 'reading',
  id: absorptionField(seconds),
  label: markName(seconds),
  name: `Reading at ${markName(seconds)}`,
  quantity: 'resistance',
  units: insulationUnits,
  row: 'times',
}));

export const testerFields = instrumentFields('5 GΩ');

export const absorptionFields: FormField[] = [
  windingKindField,
  thermalClassField,
  ...timedFields,
  windingTemperature,
  temperatureUnit,
  ...testerFields,
];
