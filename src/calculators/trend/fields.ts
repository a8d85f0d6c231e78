import type { ChoiceField, FormField, TextField } from '../../kernel/form/field.ts';
import { correction, machineClass, ratedVoltage, temperatureUnit } from '../../kernel/form/shared-fields.ts';

export const rows: TextField = {
  kind: 'text',
  long: true,
  id: 'rows',
  name: 'Readings',
  hint: 'One row for each reading: date, resistance, winding temperature. Paste them from a spreadsheet, open a CSV file, or add them one by one.',
};

/** An ambiguous date is asked about; there is no default. */
export const dateOrder: ChoiceField = {
  kind: 'choice',
  id: 'dateOrder',
  name: 'A date like 3/5/2021 is',
  options: [
    { value: 'day-first', label: '3 May', hint: 'The day stands first.' },
    { value: 'month-first', label: '5 March', hint: 'The month stands first.' },
  ],
  initial: '',
};

export const bareOhms: ChoiceField = {
  kind: 'choice',
  id: 'bareOhms',
  name: 'Resistances without a unit are in',
  options: ['kΩ', 'MΩ', 'GΩ'].map((unit) => ({ value: unit, label: unit })),
  initial: '',
};

export const decimalMark: ChoiceField = {
  kind: 'choice',
  id: 'decimalMark',
  name: 'Decimal mark of the table',
  hint: 'Only asked for numbers like 1,250, which can be read in two ways.',
  options: [
    { value: 'comma', label: 'Comma' },
    { value: 'point', label: 'Point' },
  ],
  initial: '',
};

export const windingKind: ChoiceField = {
  kind: 'choice',
  id: machineClass.id,
  name: machineClass.name,
  options: machineClass.options,
  initial: machineClass.initial,
};

export const trendFields: FormField[] = [
  rows,
  dateOrder,
  bareOhms,
  temperatureUnit,
  decimalMark,
  windingKind,
  ratedVoltage,
  correction,
];
