import { phases } from '../../kernel/electrics/phases.ts';
import { filter, idleCores, rowKind } from '../../kernel/form/cable-end-fields.ts';
import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits, insulationUnits } from '../../kernel/form/measured-units.ts';
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
import { stageNames } from './part-names.ts';
import type { StageName } from './rule/stage.ts';

const terminals: Record<StageName, readonly string[]> = {
  joined: [...phases, 'PE'],
  cable: [...phases, 'PE'],
  bonded: phases,
  motor: [...phases, 'PE'],
};

/** PE shows continuity beside its neighbours' megohms, but where both ends are free it must read as they do. */
const measuredAt = (stage: StageName, terminal: string) =>
  terminal === 'PE' && stage !== 'cable' ? { units: conductorUnits } : { units: insulationUnits, row: stage };

/** The readings of one stage: `joinedU` … `motorPE`. */
export const stageFields = (stage: StageName): ReadingField[] =>
  terminals[stage].map((terminal) => ({
    ...measuredAt(stage, terminal),
    kind: 'reading',
    id: stage + terminal,
    label: terminal,
    name: `${stageNames[stage]}: ${terminal}`,
    quantity: 'resistance',
  }));

/** One reading of U, V and W joined, where the windings join them anyway. */
export const togetherField = (stage: 'joined' | 'motor'): ReadingField => ({
  kind: 'reading',
  id: `${stage}Together`,
  label: 'U, V, W joined',
  name: `${stageNames[stage]}: U, V and W joined`,
  quantity: 'resistance',
  units: insulationUnits,
});

export const peAgain: ReadingField = {
  kind: 'reading',
  id: 'peAgain',
  label: 'PE again',
  name: 'PE once more',
  hint: 'Only if PE shows no continuity: contacts cleaned, leads zeroed.',
  quantity: 'resistance',
  units: conductorUnits,
};

/** What can convict or clear a part that fails. */
export const moreFields = (part: 'cable' | 'motor'): ReadingField[] => [
  {
    kind: 'reading',
    id: `${part}Again`,
    label: 'Lowest terminal again',
    name: `Lowest terminal of the ${part}, read again`,
    hint: 'Leads off and on again in between.',
    quantity: 'resistance',
    units: insulationUnits,
  },
  {
    kind: 'reading',
    id: `${part}Sister`,
    label: 'Before the trip, or a sound one',
    name: `The ${part} before the trip, or a sound one of the same kind`,
    hint: 'Of the same age, at about the same temperature.',
    quantity: 'resistance',
    units: insulationUnits,
  },
];

export const driedField = (part: 'cable' | 'motor'): ChoiceField => ({
  kind: 'choice',
  id: `${part}Dried`,
  name: 'Cleaned and dried before it was read again?',
  options: [
    { value: 'yes', label: 'Yes' },
    { value: 'no', label: 'No' },
  ],
  initial: '',
});

export const cableBuild: ReadingField[] = [
  {
    kind: 'reading',
    id: 'cableMetres',
    label: 'Length',
    name: 'Length of the cable',
    hint: 'In metres, or with ft.',
    quantity: 'length',
  },
  {
    kind: 'reading',
    id: 'cableTemperature',
    label: 'Temperature',
    name: 'Temperature of the cable',
    hint: 'Where most of it lies.',
    quantity: 'temperature',
    bareUnitFrom: 'temperatureUnit',
  },
];

export const cableMaterial: ChoiceField = {
  kind: 'choice',
  id: 'cableMaterial',
  name: 'Insulation of the cores',
  hint: 'Printed on the sheath or in the data sheet.',
  options: [
    { value: 'pvc', label: 'PVC' },
    { value: 'xlpe', label: 'Polyethylene, cross-linked or not' },
  ],
  initial: '',
};

export const suspectedAnyway: ChoiceField = {
  kind: 'choice',
  id: 'suspectedAnyway',
  name: 'Does the symptom point at cable or motor?',
  hint: 'For example: it trips when the cable moves, at one position, or when the motor is hot.',
  options: [
    { value: 'no', label: 'No' },
    { value: 'yes', label: 'Yes, so a good joined reading is not enough' },
  ],
  initial: 'no',
};

export const cableEndsChecked: ChoiceField = {
  kind: 'choice',
  id: 'cableEndsChecked',
  name: 'Are both ends and the screen free?',
  hint: 'A PE core that reads low usually means an end that is still connected.',
  options: [
    { value: 'no', label: 'Not looked at' },
    { value: 'yes', label: 'Looked at: both ends and the screen are free' },
  ],
  initial: 'no',
};

export const motorTemperature: ReadingField = {
  kind: 'reading',
  id: 'motorTemperature',
  label: 'Winding temperature now',
  name: 'Winding temperature at the motor stage',
  hint: 'Empty means as at stage 1.',
  quantity: 'temperature',
  bareUnitFrom: 'temperatureUnit',
};

export const tester = instrumentFields('700 MΩ');

export const isolationFields: FormField[] = [
  suspectedAnyway,
  idleCores,
  rowKind,
  togetherField('joined'),
  ...stageFields('joined'),
  peAgain,
  frameEarthed,
  peMetres,
  peSection,
  peCurrent,
  testVoltage,
  windingTemperature,
  temperatureUnit,
  correction,
  ...stageFields('cable'),
  cableEndsChecked,
  ...stageFields('bonded'),
  filter,
  ...cableBuild,
  cableMaterial,
  ...moreFields('cable'),
  driedField('cable'),
  togetherField('motor'),
  ...stageFields('motor'),
  motorTemperature,
  ...moreFields('motor'),
  driedField('motor'),
  ...tester,
];
