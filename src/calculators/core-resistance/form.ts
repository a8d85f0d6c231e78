import { coreSections } from '../../kernel/electrics/core-resistance.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ChoiceField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields, instrumentOf } from '../../kernel/form/instrument.ts';
import { conductorUnits } from '../../kernel/form/measured-units.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { peMetres, peSection, temperatureUnit } from '../../kernel/form/shared-fields.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { coreResistanceAbout } from './about.ts';
import { coreHeadline } from './headline.ts';
import { assessCore } from './rule/assess.ts';
import type { CoreAssessment, CoreEnd, CoreInput, CoreMeter, CoreWay } from './rule/input.ts';
import { coreFindings, coreSteps } from './words.ts';

export const way: ChoiceField = {
  kind: 'choice',
  id: 'way',
  name: 'What lies between the tips?',
  options: [
    { value: 'pe', label: 'PE, end to end', hint: 'With a long lead that is zeroed.' },
    { value: 'core', label: 'One core, end to end' },
    { value: 'pair', label: 'Two cores in series', hint: 'Joined at the far end: there and back. Length is one way.' },
  ],
  initial: '',
};

export const end: ChoiceField = {
  kind: 'choice',
  id: 'end',
  name: 'Is it off at one end at least, and the screen too?',
  hint: 'With both ends on, frame, conduit or screen carry the current beside it.',
  options: [
    { value: 'off', label: 'Off at one end or both' },
    { value: 'on', label: 'Still on at both ends' },
  ],
  initial: '',
};

export const meter: ChoiceField = {
  kind: 'choice',
  id: 'meter',
  name: 'Measured with',
  options: [
    { value: 'continuity-tester', label: 'Continuity tester, leads zeroed' },
    { value: 'four-leads', label: 'Milliohm meter with four leads' },
    { value: 'multimeter', label: 'Multimeter, lowest range, leads zeroed' },
  ],
  initial: '',
};

export const fields: ReadingField[] = [
  {
    ...{ kind: 'reading', id: 'reading', label: 'End to end', name: 'Reading, end to end', hint: '0.42 Ω, >200 Ω.' },
    ...{ quantity: 'resistance', units: conductorUnits },
  },
  { ...peMetres, id: 'metres', label: 'Length', name: 'Length of the core', hint: 'One way, in metres or with ft.' },
];

export const section: ChoiceField = { ...peSection, id: 'section', name: 'Cross-section of the core' };

export const temperature: ReadingField = {
  ...{ kind: 'reading', id: 'temperature', label: 'Cable temperature', name: 'Cable temperature' },
  ...{ hint: 'Only shows what the copper has at it.', quantity: 'temperature', bareUnitFrom: temperatureUnit.id },
};

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

const ways: readonly CoreWay[] = ['pe', 'core', 'pair'];
const ends: readonly CoreEnd[] = ['off', 'on'];
const meters: readonly CoreMeter[] = ['continuity-tester', 'four-leads', 'multimeter'];

export function coreInput(read: ReadForm): CoreInput {
  const of = (id: string) => read.readings[id] ?? missing;
  const squareMillimetres = coreSections.find((one) => String(one) === read.choices.section);
  return {
    way: ways.find((one) => one === read.choices.way) ?? 'not-stated',
    end: ends.find((one) => one === read.choices.end) ?? 'not-stated',
    meter: meters.find((one) => one === read.choices.meter) ?? 'not-stated',
    metres: of('metres'),
    ...(squareMillimetres !== undefined && { squareMillimetres }),
    reading: of('reading'),
    temperature: of('temperature'),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<CoreAssessment>({
  ...coreResistanceAbout,
  fields: [...fields, section, way, end, meter, temperature, temperatureUnit, ...meterFields],
  assess: (read) => assessCore(coreInput(read)),
  findingTexts: coreFindings,
  stepTexts: coreSteps,
  headline: coreHeadline,
  inSight: ['core-by-multimeter'],
});
