import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ChoiceField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields, instrumentOf } from '../../kernel/form/instrument.ts';
import { insulationUnits } from '../../kernel/form/measured-units.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { temperatureUnit, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { limitValue } from '../../kernel/limits.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { absorption } from './about.ts';
import { absorptionHeadline } from './headline.ts';
import { assessAbsorption } from './rule/assess.ts';
import { type AbsorptionAssessment, type AbsorptionInput, absorptionField, absorptionTimes } from './rule/input.ts';
import { markName } from './stopwatch.ts';
import { absorptionFindings, absorptionSteps } from './words.ts';

export const windingKindField: ChoiceField = {
  kind: 'choice',
  id: 'windingKind',
  name: 'Kind of winding',
  options: [
    { value: 'random-wound', label: 'Random-wound', hint: 'Most servo motors. The index decides nothing there.' },
    { value: 'form-wound', label: 'Form-wound', hint: 'Large machines with coils of rectangular wire.' },
  ],
  initial: 'random-wound',
};

export const thermalClassField: ChoiceField = {
  kind: 'choice',
  id: 'thermalClass',
  name: 'Insulation class',
  hint: 'From the name plate. Not known: leave the stricter one.',
  options: [
    { value: 'BFH', label: 'B, F or H', hint: `At least ${limitValue('polarization-index-bfh')}.` },
    { value: 'A', label: 'A', hint: `At least ${limitValue('polarization-index-a')}.` },
  ],
  initial: 'BFH',
};

export const timedFields: ReadingField[] = absorptionTimes.map((seconds) => ({
  kind: 'reading',
  id: absorptionField(seconds),
  label: markName(seconds),
  name: `Reading at ${markName(seconds)}`,
  quantity: 'resistance',
  units: insulationUnits,
  row: 'times',
}));

export const testerFields = instrumentFields('5 GΩ');

export function absorptionInput(read: ReadForm): AbsorptionInput {
  const of = (id: string) => read.readings[id] ?? missing;
  return {
    readings: Object.fromEntries(absorptionTimes.map((seconds) => [seconds, of(absorptionField(seconds))])),
    windingKind: read.choices.windingKind === 'form-wound' ? 'form-wound' : 'random-wound',
    thermalClass: read.choices.thermalClass === 'A' ? 'A' : 'BFH',
    temperature: of(windingTemperature.id),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<AbsorptionAssessment>({
  ...absorption,
  fields: [windingKindField, thermalClassField, ...timedFields, windingTemperature, temperatureUnit, ...testerFields],
  assess: (read) => assessAbsorption(absorptionInput(read)),
  findingTexts: absorptionFindings,
  stepTexts: absorptionSteps,
  headline: absorptionHeadline,
  opens: {
    'judge-one-minute': {
      calculator: 'insulation',
      words: 'Insulation',
      carries: { t60: 'together', windingTemperature: 'windingTemperature', temperatureUnit: 'temperatureUnit' },
    },
  },
});
