import type { VisitDetails } from '../record/change-visit.ts';
import type { Instrument } from '../record/instrument-schema.ts';

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

/** A row for each usual instrument, filled where it is noted, then the others. */
export function instrumentRows(instruments: readonly Instrument[]): Instrument[] {
  const usual = usualInstruments.map(
    (what) => instruments.find((one) => one.what === what) ?? { what, identification: '', accuracy: '' },
  );
  return [...usual, ...instruments.filter(({ what }) => !usualInstruments.includes(what))];
}

/** The rows in which something is noted. */
export function notedInstruments(rows: readonly Instrument[]): Instrument[] {
  return rows.filter(({ what, ...noted }) => {
    const isNoted = Object.values(noted).some((text) => text !== undefined && text.trim() !== '');
    return isNoted || (what.trim() !== '' && !usualInstruments.includes(what));
  });
}

export interface InstrumentField {
  id: Exclude<keyof Instrument, 'what'>;
  label: string;
  hint: string;
}

const limits = (smallest: string, largest: string): InstrumentField[] => [
  { id: 'smallest', label: 'Lowest figure', hint: `That it can show on the range you use, such as ${smallest}.` },
  { id: 'largest', label: 'Highest figure', hint: `Above it, it shows over-range. Such as ${largest}.` },
];

/** What is asked about an instrument. */
export function instrumentFields(what: string): InstrumentField[] {
  const isTester = what === 'Insulation tester';
  return [
    { id: 'identification', label: 'Which one', hint: 'Model, number, calibrated until.' },
    { id: 'accuracy', label: 'Accuracy', hint: 'From the data sheet, such as 2.1 % + 6 counts.' },
    ...(isTester
      ? limits('0.01 MΩ', '2 GΩ')
      : what === 'Milliohm meter'
        ? limits('0.1 mΩ', '20 Ω')
        : limits('0.1 Ω', '60 MΩ')),
    ...(isTester
      ? [{ id: 'testVoltages' as const, label: 'Test voltages', hint: 'Such as 250 V, 500 V, 1000 V.' }]
      : []),
  ];
}

/** An instrument in one line; empty if nothing is noted. */
export function instrumentLine({
  identification,
  accuracy,
  smallest = '',
  largest = '',
  testVoltages = '',
}: Instrument): string {
  const [low, high] = [smallest.trim(), largest.trim()];
  const range =
    low !== '' && high !== '' ? `${low} to ${high}` : high !== '' ? `up to ${high}` : low !== '' ? `from ${low}` : '';
  return [identification, accuracy, range, testVoltages]
    .map((text) => text.trim())
    .filter(Boolean)
    .join(', ');
}
