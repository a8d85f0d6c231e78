import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { insulationUnits } from '../../kernel/form/measured-units.ts';
import { temperatureUnit } from '../../kernel/form/shared-fields.ts';

export const insulationField: ChoiceField = {
  kind: 'choice',
  id: 'insulation',
  name: 'Insulation of the cores',
  hint: 'Printed on the sheath or in the data sheet. Not known: choose PVC, whose figures are the lower ones.',
  options: [
    { value: 'pvc', label: 'PVC' },
    { value: 'xlpe', label: 'Cross-linked polyethylene', hint: 'XLPE, also called VPE or PE-X.' },
  ],
  initial: 'pvc',
};

export const buildFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'insulationDiameter',
    label: 'Over the insulation',
    name: 'Diameter over the insulation of one core',
    hint: 'D, in mm.',
    quantity: 'diameter',
  },
  {
    kind: 'reading',
    id: 'conductorDiameter',
    label: 'Of the conductor',
    name: 'Diameter of the conductor',
    hint: 'd, in mm.',
    quantity: 'diameter',
  },
  {
    kind: 'reading',
    id: 'length',
    label: 'Length of the run',
    name: 'Length of the run',
    hint: 'In metres, or with ft.',
    quantity: 'length',
  },
];

export const testFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'reading',
    label: 'One core to all else',
    name: 'Reading of one core',
    hint: 'To the other cores, screen and PE joined.',
    quantity: 'resistance',
    units: insulationUnits,
  },
  {
    kind: 'reading',
    id: 'temperature',
    label: 'Cable temperature',
    name: 'Cable temperature',
    hint: 'Where most of it lies.',
    quantity: 'temperature',
    bareUnitFrom: temperatureUnit.id,
  },
];

export const testerFields = instrumentFields('700 MΩ');

export const cableLengthFields: FormField[] = [
  insulationField,
  ...buildFields,
  ...testFields,
  temperatureUnit,
  ...testerFields,
];
