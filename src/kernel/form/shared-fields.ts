import { type CorrectionMethod, validityOf } from '../electrics/temperature-correction.ts';
import { formatRounded } from '../reading/format-reading.ts';
import type { ChoiceField, ReadingField } from './field.ts';
import type { ReadForm } from './read-form.ts';

const within = (method: CorrectionMethod) => {
  const { from, to } = validityOf(method);
  return `Holds from ${formatRounded(from, '°C')} to ${formatRounded(to, '°C')}.`;
};

/** How a reading is carried to another winding temperature. */
export const correction: ChoiceField = {
  kind: 'choice',
  id: 'correction',
  name: 'Temperature correction',
  options: [
    { value: 'halving', label: 'Halving rule', hint: `Coarse, for any insulation. ${within('halving')}` },
    { value: 'thermosetting', label: 'Formulas for thermosetting insulation', hint: within('thermosetting') },
    { value: 'table', label: 'Conversion table for solid insulation', hint: within('table') },
  ],
  initial: 'halving',
};

export function correctionOf({ choices }: ReadForm): CorrectionMethod {
  const method = choices.correction;
  return method === 'thermosetting' || method === 'table' ? method : 'halving';
}

/** What a bare number is, for every temperature of the form. */
export const temperatureUnit: ChoiceField = {
  kind: 'choice',
  id: 'temperatureUnit',
  name: 'Temperatures without a unit are in',
  options: [
    { value: 'C', label: '°C' },
    { value: 'F', label: '°F' },
  ],
  initial: 'C',
};

export const windingTemperature: ReadingField = {
  kind: 'reading',
  id: 'windingTemperature',
  label: 'Winding temperature',
  name: 'Winding temperature',
  hint: 'From the built-in sensor, or from the housing once both have had hours to settle.',
  quantity: 'temperature',
  bareUnitFrom: 'temperatureUnit',
};

export const testVoltage: ReadingField = {
  kind: 'reading',
  id: 'testVoltage',
  label: 'Test voltage',
  name: 'Test voltage',
  hint: 'As set on the insulation tester.',
  quantity: 'voltage',
};

export const ratedVoltage: ReadingField = {
  kind: 'reading',
  id: 'ratedVoltage',
  label: 'Rated voltage',
  name: 'Rated voltage',
  hint: 'Line to line, from the name plate.',
  quantity: 'voltage',
};

export const machineClass: ChoiceField = {
  kind: 'choice',
  id: 'machineClass',
  name: 'Kind of winding',
  hint: 'Only routine monitoring asks for it.',
  options: [
    { value: 'random-wound', label: 'Random-wound', hint: 'Most servo motors; also form-wound below 1 kV.' },
    { value: 'form-wound', label: 'Form-wound, made after about 1970' },
    { value: 'pre-1970', label: 'Made before about 1970, or a field winding' },
  ],
  initial: 'random-wound',
};
