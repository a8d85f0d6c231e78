import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits, insulationUnits } from '../../kernel/form/measured-units.ts';
import { readTwice } from '../../kernel/form/shared-fields.ts';

export const busVoltage: ReadingField = {
  kind: 'reading',
  id: 'busVoltage',
  label: 'DC-bus voltage',
  name: 'DC-bus voltage',
  hint: 'DC+ to DC−, just before, with a meter that you have tried on a known source.',
  quantity: 'voltage',
};

const ohms = (id: string, label: string, name: string, hint: string, rest: Partial<ReadingField>): ReadingField => ({
  ...{ kind: 'reading', id, label, name, hint, quantity: 'resistance', ...rest },
});

export const resistorFields: ReadingField[] = [
  ohms('plate', 'On its plate', 'Ohms on the plate', 'All resistors together: 47 Ω.', { units: conductorUnits }),
  ohms('ohms', 'End to end', 'Resistor, end to end', 'Both leads off the drive, cool.', { units: conductorUnits }),
];

export const housingFields: ReadingField[] = [
  ohms('toHousing', 'By multimeter', 'Resistor to housing, by multimeter', 'The lower of both ends: >20 MΩ.', {
    units: insulationUnits,
  }),
  ohms(
    'insulation',
    'By insulation tester',
    'Resistor to housing, by insulation tester',
    'Both ends joined, drive off.',
    {
      units: insulationUnits,
      lowIsWorse: true,
    },
  ),
];

export const lead: ChoiceField = {
  kind: 'choice',
  id: 'lead',
  name: 'And while its lead is moved by hand?',
  options: [
    { value: 'steady', label: 'It stands still' },
    { value: 'jumps', label: 'It jumps or opens' },
  ],
  initial: '',
};

export const thermal: ChoiceField = {
  kind: 'choice',
  id: 'thermal',
  name: 'Its thermal switch',
  options: [
    { value: 'none', label: 'None fitted' },
    { value: 'opens-hot', label: 'Opens when hot' },
    { value: 'other', label: 'Closes when hot, or a sensor' },
  ],
  initial: '',
};

export const thermalOhms = ohms(
  'thermalOhms',
  'Thermal switch, cool',
  'Thermal switch, cool',
  'Its leads off: 0.3 Ω, OL.',
  {
    units: conductorUnits,
  },
);

const diode = (id: string, label: string, hint: string, row: string): ReadingField => ({
  ...{ kind: 'reading', id, label, name: label, hint, quantity: 'diode', row },
});

export const upperFields: ReadingField[] = [
  diode('upperConducting', 'B to DC+, conducting', 'Red on B, black on DC+.', 'upper'),
  diode('upperBlocking', 'B to DC+, blocking', 'Red on DC+, black on B.', 'upper'),
];

export const lowerFields: ReadingField[] = [
  diode('lowerConducting', 'B to DC−, conducting', 'Red on DC−, black on B.', 'lower'),
  diode('lowerBlocking', 'B to DC−, blocking', 'Red on B, black on DC−.', 'lower'),
];

export const plateTolerance: ReadingField = {
  kind: 'reading',
  id: 'plateTolerance',
  label: 'Tolerance of the resistor, ± %',
  name: 'Tolerance of the resistor',
  hint: 'From its plate or manual.',
  quantity: 'percent',
};

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const brakingCircuitFields: FormField[] = [
  busVoltage,
  ...resistorFields,
  lead,
  ...housingFields,
  thermal,
  thermalOhms,
  ...upperFields,
  ...lowerFields,
  readTwice,
  plateTolerance,
  ...meterFields,
];
