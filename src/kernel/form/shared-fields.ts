import type { FrameEarthed, PeConductor } from '../assessment/protective-conductor.ts';
import { coreSections } from '../electrics/core-resistance.ts';
import { type CorrectionMethod, validityOf } from '../electrics/correction-validity.ts';
import { limitValue } from '../limits.ts';
import { formatRounded } from '../reading/format-reading.ts';
import { formatFigure } from '../words/format-limit.ts';
import type { ChoiceField, ReadingField } from './field.ts';
import { numberOf } from './instrument.ts';
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

/** One length of the protective conductor, for what it should read. */
export const peMetres: ReadingField = {
  kind: 'reading',
  id: 'peMetres',
  label: 'Length of the PE core',
  name: 'Length of the PE core',
  hint: 'One way, drive to motor. With the cross-section it tells what PE should read; without them one ohm is the mark.',
  quantity: 'length',
};

/** Cross-section of the protective conductor; the table lists no others. */
export const peSection: ChoiceField = {
  kind: 'choice',
  id: 'peSection',
  name: 'Cross-section of the PE core',
  hint: 'Printed on the jacket. 16, 14, 12 and 10 AWG are near 1.5, 2.5, 4 and 6 mm².',
  options: [
    { value: 'not-stated', label: 'Not known' },
    ...coreSections.map((section) => ({ value: String(section), label: `${section} mm²` })),
  ],
  initial: 'not-stated',
};

const atLeast = formatFigure(limitValue('continuity-current'), 'A');

/** What the protective conductor was measured with. */
export const peCurrent: ChoiceField = {
  kind: 'choice',
  id: 'peCurrent',
  name: 'What was PE measured with?',
  options: [
    {
      value: 'continuity-tester',
      label: 'Continuity tester',
      hint: `${atLeast} or more, leads zeroed: the usual instrument for this.`,
    },
    { value: 'multimeter', label: 'Multimeter', hint: 'Lowest range, leads zeroed. A film or one last strand passes.' },
    { value: 'not-stated', label: 'Not stated' },
  ],
  initial: 'not-stated',
};

/** Asked before a PE core is condemned. */
export const frameEarthed: ChoiceField = {
  kind: 'choice',
  id: 'frameEarthed',
  name: 'What connects the motor frame to the machine ground?',
  hint: 'Asked only if PE reads open. If nothing else does, a reading from the core to the machine ground is open although the core is sound.',
  options: [
    {
      value: 'also-otherwise',
      label: 'More than the PE core',
      hint: 'Bolted to bare bonded metal, or a bonding strap: measured from the frame to the machine ground.',
    },
    { value: 'only-pe', label: 'Only the PE core', hint: 'An insulating mount, paint, a plastic coupling.' },
    { value: 'not-stated', label: 'Not looked at' },
  ],
  initial: 'not-stated',
};

/** What the form says of the protective conductor. */
export function peConductorOf({ readings, choices }: ReadForm): PeConductor {
  const metres = numberOf(readings.peMetres);
  const squareMillimetres = coreSections.find((section) => String(section) === choices.peSection);
  return {
    ...(metres !== undefined && { metres }),
    ...(squareMillimetres !== undefined && { squareMillimetres }),
    ...(choices.peCurrent === 'continuity-tester' && { amperes: limitValue('continuity-current') }),
  };
}

export function frameEarthedOf({ choices }: ReadForm): FrameEarthed {
  const stated = choices.frameEarthed;
  return stated === 'only-pe' || stated === 'also-otherwise' ? stated : 'not-stated';
}

/** Whether a reading that looks odd stood when it was taken again. */
export const readTwice: ChoiceField = {
  kind: 'choice',
  id: 'again',
  name: 'Was what looks odd read a second time?',
  hint: 'With the tips lifted in between.',
  options: [
    { value: 'yes', label: 'Yes, and it was the same' },
    { value: 'no', label: 'Not yet' },
  ],
  initial: 'no',
};
