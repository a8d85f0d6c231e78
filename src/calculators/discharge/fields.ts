import type { FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';

const usual = (id: 'capacitor-tolerance' | 'bleeder-tolerance') =>
  `Empty means ± ${formatRounded(limitValue(id), '%')}.`;

export const busFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'startVoltage',
    label: 'Voltage at the start',
    name: 'Bus voltage when the supply was cut',
    hint: 'The highest that it can have.',
    quantity: 'voltage',
  },
  {
    kind: 'reading',
    id: 'capacitance',
    label: 'Capacitance',
    name: 'Capacitance of the bus',
    hint: 'All on one bus added up: 1500 µF.',
    quantity: 'capacitance',
  },
  {
    kind: 'reading',
    id: 'bleeder',
    label: 'Bleeder',
    name: 'Bleeder resistance',
    hint: 'Across the whole bus: 33k.',
    quantity: 'resistance',
  },
  {
    kind: 'reading',
    id: 'timeConstant',
    label: 'Or time constant',
    name: 'Time constant',
    hint: 'If the manual states it: 50 s.',
    quantity: 'seconds',
  },
];

export const toleranceFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'capacitanceTolerance',
    label: 'Tolerance of the capacitance, ± %',
    name: 'Tolerance of the capacitance',
    hint: usual('capacitor-tolerance'),
    quantity: 'percent',
  },
  {
    kind: 'reading',
    id: 'bleederTolerance',
    label: 'Tolerance of the bleeder, ± %',
    name: 'Tolerance of the bleeder',
    hint: usual('bleeder-tolerance'),
    quantity: 'percent',
  },
];

export const pairFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'first',
    label: 'First reading',
    name: 'First reading of the bus',
    hint: 'DC+ to DC−, without the sign.',
    quantity: 'voltage',
  },
  {
    kind: 'reading',
    id: 'second',
    label: 'Second reading',
    name: 'Second reading of the bus',
    hint: 'Later, and lower.',
    quantity: 'voltage',
  },
  {
    kind: 'reading',
    id: 'elapsed',
    label: 'Time between them',
    name: 'Time between the two readings',
    hint: 'In seconds, as exactly as you took it: 60 s. A time in minutes counts as rounded to a minute, which decides little.',
    quantity: 'seconds',
  },
];

/** The meter's highest reading is not asked for: a bus is far below it. */
export const meterFields: ReadingField[] = instrumentFields('1000 V').filter(({ id }) => id !== 'upperLimit');

export const labelFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'label',
    label: 'Waiting time on the label of the drive',
    name: 'Waiting time on the label',
    hint: 'In seconds, or with min: 5 min.',
    quantity: 'seconds',
  },
];

export const dischargeFields: FormField[] = [
  ...busFields,
  ...toleranceFields,
  ...pairFields,
  ...meterFields,
  ...labelFields,
];
