import { phases } from '../../kernel/electrics/phases.ts';
import type { ChoiceField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { positionName } from './position-names.ts';
import type { Rail, SwitchPosition } from './rule/switch-position.ts';

export const busVoltage: ReadingField = {
  kind: 'reading',
  id: 'busVoltage',
  label: 'DC-bus voltage just before',
  name: 'DC-bus voltage',
  hint: `Between DC+ and DC−, on a DC range. At ${formatRounded(limitValue('touch-voltage'), 'V')} or more nothing is judged.`,
  quantity: 'voltage',
};

export const motorLeads: ChoiceField = {
  kind: 'choice',
  id: 'motorLeads',
  name: 'Motor leads at the drive',
  hint: 'The windings join U, V and W, so that a fault looks balanced while they are on.',
  options: [
    { value: 'off', label: 'Taken off U, V and W' },
    { value: 'connected', label: 'Still connected' },
  ],
  initial: '',
};

export const railFields = (rail: Rail): ReadingField[] =>
  phases.map((phase) => {
    const id: SwitchPosition = `${rail}${phase}`;
    return { kind: 'reading', id, label: `to ${phase}`, name: positionName(id), quantity: 'resistance' };
  });

export const tolerance: ReadingField = {
  kind: 'reading',
  id: 'tolerance',
  label: 'Allowed difference, %',
  name: 'Allowed difference',
  hint: `Empty means ${formatRounded(limitValue('bridge-tolerance'), '%')}. Change it only if the drive manual of your model does.`,
  quantity: 'percent',
  check: (reading) =>
    reading.kind === 'value' && reading.value === 0
      ? `No three readings agree to 0 %. Type more than 0, up to ${formatRounded(limitRange('entry-percent').to, '%')}, or leave it empty.`
      : undefined,
};

export const tipsTogether: ReadingField = {
  kind: 'reading',
  id: 'tipsTogether',
  label: 'Meter tips held together',
  name: 'Meter tips held together',
  hint: 'Asked for where all six readings are over-range: a broken lead shows the same.',
  quantity: 'resistance',
};

export const meterFields = instrumentFields('72 MΩ');
