import type { VisitDetails } from '../record/change-visit.ts';

export interface DetailField {
  id: 'machine' | 'axis' | 'drive' | 'motor' | 'controllerMessage' | 'site' | 'person';
  label: string;
  hint?: string;
  long?: true;
}

/** Which visit this is. All fields are free text and optional. */
export const nameFields: DetailField[] = [
  { id: 'machine', label: 'Machine', hint: 'As the site calls it.' },
  { id: 'axis', label: 'Axis' },
  { id: 'controllerMessage', label: 'Message of the controller', hint: 'Word for word.', long: true },
];

export const plateFields: DetailField[] = [
  { id: 'drive', label: 'Drive', hint: 'Model and serial number, from its plate.' },
  { id: 'motor', label: 'Motor', hint: 'Model and serial number, from its plate.' },
  { id: 'site', label: 'Site' },
  { id: 'person', label: 'Your name' },
];

export const conditionFields: { id: keyof VisitDetails['conditions']; label: string; hint?: string }[] = [
  { id: 'airTemperature', label: 'Air temperature' },
  { id: 'humidity', label: 'Humidity' },
  { id: 'surroundings', label: 'Surroundings', hint: 'Coolant, dust, wash-down, work nearby.' },
];

/** The instruments that the steps need; others can be added. */
export const usualInstruments = ['Multimeter', 'Insulation tester', 'Milliohm meter'];

type Instrument = VisitDetails['instruments'][number];

/** A row for each usual instrument, filled where it is noted, then the others. */
export function instrumentRows(instruments: readonly Instrument[]): Instrument[] {
  const usual = usualInstruments.map(
    (what) => instruments.find((one) => one.what === what) ?? { what, identification: '', accuracy: '' },
  );
  return [...usual, ...instruments.filter(({ what }) => !usualInstruments.includes(what))];
}

/** The rows in which something is noted. */
export function notedInstruments(rows: readonly Instrument[]): Instrument[] {
  return rows.filter(
    ({ what, identification, accuracy }) =>
      identification.trim() !== '' ||
      accuracy.trim() !== '' ||
      (what.trim() !== '' && !usualInstruments.includes(what)),
  );
}
