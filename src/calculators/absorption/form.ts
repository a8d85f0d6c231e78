import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { windingTemperature } from '../../kernel/form/shared-fields.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { absorption } from './about.ts';
import { absorptionFields } from './fields.ts';
import { absorptionHeadline } from './headline.ts';
import { assessAbsorption } from './rule/assess.ts';
import { type AbsorptionAssessment, type AbsorptionInput, absorptionField, absorptionTimes } from './rule/input.ts';
import { absorptionFindings, absorptionSteps } from './words.ts';

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
  fields: absorptionFields,
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
