import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits } from '../../kernel/form/measured-units.ts';
import { peMetres, peSection, temperatureUnit } from '../../kernel/form/shared-fields.ts';

export const way: ChoiceField = {
  kind: 'choice',
  id: 'way',
  name: 'What lies between the tips?',
  options: [
    { value: 'pe', label: 'PE, end to end', hint: 'With a long lead that is zeroed.' },
    { value: 'core', label: 'One core, end to end' },
    { value: 'pair', label: 'Two cores in series', hint: 'Joined at the far end: there and back. Length is one way.' },
  ],
  initial: '',
};

export const end: ChoiceField = {
  kind: 'choice',
  id: 'end',
  name: 'Is it off at one end at least, and the screen too?',
  hint: 'With both ends on, frame, conduit or screen carry the current beside it.',
  options: [
    { value: 'off', label: 'Off at one end or both' },
    { value: 'on', label: 'Still on at both ends' },
  ],
  initial: '',
};

export const meter: ChoiceField = {
  kind: 'choice',
  id: 'meter',
  name: 'Measured with',
  options: [
    { value: 'continuity-tester', label: 'Continuity tester, leads zeroed' },
    { value: 'four-leads', label: 'Milliohm meter with four leads' },
    { value: 'multimeter', label: 'Multimeter, lowest range, leads zeroed' },
  ],
  initial: '',
};

export const fields: ReadingField[] = [
  {
    ...{ kind: 'reading', id: 'reading', label: 'End to end', name: 'Reading, end to end', hint: '0.42 Ω, >200 Ω.' },
    ...{ quantity: 'resistance', units: conductorUnits },
  },
  { ...peMetres, id: 'metres', label: 'Length', name: 'Length of the core', hint: 'One way, in metres or with ft.' },
];

export const section: ChoiceField = { ...peSection, id: 'section', name: 'Cross-section of the core' };

export const temperature: ReadingField = {
  ...{ kind: 'reading', id: 'temperature', label: 'Cable temperature', name: 'Cable temperature' },
  ...{ hint: 'Only shows what the copper has at it.', quantity: 'temperature', bareUnitFrom: temperatureUnit.id },
};

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const coreFields: FormField[] = [
  ...fields,
  section,
  way,
  end,
  meter,
  temperature,
  temperatureUnit,
  ...meterFields,
];
