import type { ChoiceField, FormField, ReadingField, TextField } from '../../kernel/form/field.ts';
import { shownReading } from './kept-trace.ts';
import { columnFields } from './read/columns.ts';

/** What was read from the file, as the page keeps it; nobody types it. */
export const traceField: TextField = {
  kind: 'text',
  long: true,
  id: 'trace',
  name: 'Recording',
  inWords: shownReading,
};

const columnNames: Record<(typeof columnFields)[number], string> = {
  colTime: 'Time',
  colU: 'Current U',
  colV: 'Current V',
  colW: 'Current W',
  colBus: 'Bus voltage',
  colSpeed: 'Speed',
  colPosition: 'Position',
  colTorque: 'Torque command',
};

export const columns: TextField[] = columnFields.map((id) => ({ kind: 'text', id, name: columnNames[id] }));

const choice = (id: string, name: string, options: [string, string, string?][], hint?: string): ChoiceField => ({
  kind: 'choice',
  id,
  name,
  ...(hint !== undefined && { hint }),
  options: options.map(([value, label, more]) => ({ value, label, ...(more !== undefined && { hint: more }) })),
  initial: '',
});

export const timeUnit = choice('timeUnit', 'The time is in', [
  ['s', 's'],
  ['ms', 'ms'],
  ['us', 'µs'],
  ['samples', 'samples'],
]);

export const sampleTime: ReadingField = {
  kind: 'reading',
  id: 'sampleTime',
  label: 'Time from one sample to the next',
  name: 'Sample time',
  hint: 'As set in the recorder: 0.125 ms, 62.5 µs.',
  quantity: 'seconds',
  units: ['µs', 'ms'],
};

export const currentUnit = choice('currentUnit', 'The currents are in', [
  ['A', 'A', 'Momentary values'],
  ['rms', 'A rms', 'Momentary values by √2: a sine of 10 A shows peaks of 10'],
  ['mA', 'mA'],
  ['percent', '%'],
  ['raw', 'raw steps'],
]);

export const currentScale: TextField = {
  kind: 'text',
  id: 'currentScale',
  name: 'Amperes at 100 %, or amperes of one raw step',
  hint: 'From the drive manual. Peak value, not rms. Without it no rule that needs amperes makes a statement.',
  digits: true,
};

export const busUnit = choice('busUnit', 'The bus voltage is in', [
  ['V', 'V'],
  ['other', 'another unit'],
]);

export const speedUnit = choice('speedUnit', 'The speed is in', [
  ['rpm', 'min⁻¹'],
  ['rad/s', 'rad/s'],
  ['1/s', '1/s'],
  ['other', 'other'],
]);

export const decimalMark = choice(
  'decimalMark',
  'Decimal mark of the file',
  [
    ['.', 'Point'],
    [',', 'Comma'],
  ],
  'Only asked for a file that has both.',
);

export const tripTime: TextField = {
  kind: 'text',
  id: 'tripTime',
  name: 'Moment of the trip',
  hint: 'On the time scale of the file and in its unit. Left empty, it is looked for and marked in the drawing.',
  digits: true,
};

export const stored = choice('stored', 'How does the recorder store the currents?', [
  ['raw', 'Each sample as measured'],
  ['filtered', 'Filtered or averaged'],
  ['unknown', 'Not known'],
]);

export const inductanceIs = choice('inductanceIs', 'How many inductances does the data sheet state?', [
  ['one', 'One'],
  ['smaller', 'Two', 'Along the magnets and across them, direct and quadrature: the smaller one is entered.'],
  ['unknown', 'Not known'],
]);

export const sensors = choice(
  'sensors',
  'How many current sensors has the drive?',
  [
    ['three', 'Three'],
    ['two', 'Two'],
    ['unknown', 'Not known'],
  ],
  'With two the drive computes the third current, and the sum of the three is zero whatever happens.',
);

export const polePairs = choice(
  'polePairs',
  'Pole pairs of the motor',
  [...'12345678'].map((pairs): [string, string] => [pairs, pairs]),
  'Half the number of poles: a motor of 8 poles has 4 pairs.',
);

export const motorFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'inductance',
    label: 'Inductance, terminal to terminal',
    name: 'Inductance of the motor',
    hint: 'From the data sheet: 12.5 mH. Twice that of one phase. If it states two, enter the smaller one.',
    quantity: 'inductance',
  },
  {
    kind: 'reading',
    id: 'busVoltage',
    label: 'Bus voltage while it ran',
    name: 'Bus voltage while it ran',
    hint: 'Only if the file has no column for it: 560 V.',
    quantity: 'voltage',
    units: ['V'],
  },
  {
    kind: 'reading',
    id: 'tripCurrent',
    label: 'Current at which the drive trips',
    name: 'Trip level of the drive',
    hint: 'Its overcurrent level, as a peak value, from the drive manual: 28 A. The peak current that it controls to is lower; don’t enter that.',
    quantity: 'current',
  },
];

/** Answers about the file: with another answer it is measured again. */
export const fileFields: FormField[] = [
  ...columns,
  timeUnit,
  sampleTime,
  currentUnit,
  currentScale,
  busUnit,
  speedUnit,
  decimalMark,
  tripTime,
  polePairs,
];

export const tripTraceFields: FormField[] = [traceField, ...fileFields, ...motorFields, inductanceIs, stored, sensors];
