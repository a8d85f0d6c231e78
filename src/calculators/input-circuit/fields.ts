import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits } from '../../kernel/form/measured-units.ts';
import { readTwice } from '../../kernel/form/shared-fields.ts';
import type { Line } from './rule/input.ts';

export const allLines: readonly Line[] = ['L1', 'L2', 'L3'];

export const busVoltage: ReadingField = {
  kind: 'reading',
  id: 'busVoltage',
  label: 'DC-bus voltage',
  name: 'DC-bus voltage',
  hint: 'DC+ to DC−, just before, with a meter that you have tried on a known source.',
  quantity: 'voltage',
};

const offOrOn = (id: string, name: string, hint: string): ChoiceField => ({
  kind: 'choice',
  id,
  name,
  hint,
  options: [
    { value: 'off', label: 'Off' },
    { value: 'connected', label: 'Still on' },
  ],
  initial: '',
});

export const supplyLeads = offOrOn('supplyLeads', 'Supply leads at the drive', 'L1, L2, L3, marked and capped.');
export const others = offOrOn('others', 'All else on the bus', 'Braking resistor, motor leads, links to neighbours.');

export const lines: ChoiceField = {
  kind: 'choice',
  id: 'lines',
  name: 'Lines of the supply',
  options: [
    { value: 'three', label: 'Three' },
    { value: 'two', label: 'Two', hint: 'One phase: L and N are L1 and L2 here.' },
  ],
  initial: 'three',
};

export const fuseFields: ReadingField[] = allLines.map((line) => ({
  ...{ kind: 'reading', id: `fuse${line}`, label: line, name: `Fuse of ${line}`, quantity: 'resistance' },
  ...{ units: conductorUnits, row: 'fuses' },
}));

/** Whether there is an entry at L3, by the entries of the form: it is shown and judged, whatever is said of the lines. */
export const isTypedAtL3 = (entries: Readonly<Record<string, string>>): boolean =>
  Object.entries(entries).some(([id, text]) => id.endsWith('L3') && text !== '');

type Row = 'plusConducting' | 'plusBlocking' | 'minusConducting' | 'minusBlocking';

const rowNames: Record<Row, string> = {
  plusConducting: 'to DC+, conducting',
  plusBlocking: 'to DC+, blocking',
  minusConducting: 'to DC−, conducting',
  minusBlocking: 'to DC−, blocking',
};

export const rectifierFields = (row: Row): ReadingField[] =>
  allLines.map((line) => ({
    ...{ kind: 'reading', id: `${row}${line}`, label: line, name: `${line} ${rowNames[row]}`, quantity: 'diode', row },
  }));

export const linkFields: ReadingField[] = [
  {
    ...{
      kind: 'reading',
      id: 'linkConducting',
      label: 'Conducting',
      name: 'DC+ to DC−, conducting',
      quantity: 'diode',
    },
    ...{ hint: 'Red on DC−, black on DC+.', row: 'link' },
  },
  {
    ...{ kind: 'reading', id: 'linkBlocking', label: 'Blocking', name: 'DC+ to DC−, blocking', quantity: 'diode' },
    ...{ hint: 'Red on DC+, black on DC−, once it stands still.', row: 'link' },
  },
];

export const climb: ChoiceField = {
  kind: 'choice',
  id: 'climb',
  name: 'How did the blocking reading get there?',
  options: [
    { value: 'climbs', label: 'It climbed', hint: 'The meter charges the capacitor.' },
    { value: 'at-once', label: 'OL at once' },
  ],
  initial: '',
};

export const precharge: ChoiceField = {
  kind: 'choice',
  id: 'precharge',
  name: 'Precharge resistor',
  options: [
    { value: 'reached', label: 'Measured' },
    { value: 'inside', label: 'Out of reach' },
    { value: 'none', label: 'None fitted' },
  ],
  initial: '',
};

export const prechargeFields: ReadingField[] = [
  {
    ...{ kind: 'reading', id: 'prechargePlate', label: 'On its plate', name: 'Precharge, on its plate' },
    ...{ hint: 'Or in the manual: 47 Ω.', quantity: 'resistance', units: conductorUnits },
  },
  {
    ...{ kind: 'reading', id: 'prechargeOhms', label: 'Measured', name: 'Precharge, measured' },
    ...{ hint: 'Across resistor and contact, cool.', quantity: 'resistance', units: conductorUnits },
  },
];

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const inputCircuitFields: FormField[] = [
  busVoltage,
  supplyLeads,
  others,
  lines,
  ...fuseFields,
  ...rectifierFields('plusConducting'),
  ...rectifierFields('plusBlocking'),
  ...rectifierFields('minusConducting'),
  ...rectifierFields('minusBlocking'),
  ...linkFields,
  climb,
  precharge,
  ...prechargeFields,
  readTwice,
  ...meterFields,
];
