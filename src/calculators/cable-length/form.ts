import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { cableLength } from './about.ts';
import { cableLengthFields } from './fields.ts';
import { cableLengthHeadline } from './headline.ts';
import { assessCableLength } from './rule/assess.ts';
import type { CableLengthAssessment, CableLengthInput } from './rule/input.ts';
import { cableLengthFindings, cableLengthSteps } from './words.ts';

export function cableLengthInput(read: ReadForm): CableLengthInput {
  const of = (id: string) => read.readings[id] ?? missing;
  return {
    insulation: read.choices.insulation === 'xlpe' ? 'xlpe' : 'pvc',
    insulationDiameter: of('insulationDiameter'),
    conductorDiameter: of('conductorDiameter'),
    length: of('length'),
    reading: of('reading'),
    temperature: of('temperature'),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<CableLengthAssessment>({
  ...cableLength,
  fields: cableLengthFields,
  assess: (read) => assessCableLength(cableLengthInput(read)),
  findingTexts: cableLengthFindings,
  stepTexts: cableLengthSteps,
  headline: cableLengthHeadline,
});
