import {
  assessWinding,
  missing,
  type WindingCode,
  type WindingInput,
  type WindingPair,
  type WindingStepCode,
  windingPairs,
} from '../../calc/index.ts';
import { windingFindings, windingSteps } from '../../texts/winding.ts';
import type { CalculatorForm } from '../form/calculator-form.ts';
import type { ReadingField } from '../form/field.ts';
import { instrumentFields, instrumentOf } from '../form/instrument.ts';
import type { ReadForm } from '../form/read-form.ts';

const pairName = (pair: WindingPair) => pair.split('').join('–');

export const pairFields: ReadingField[] = windingPairs.map((pair) => ({
  kind: 'reading',
  id: pair,
  label: pairName(pair),
  name: pairName(pair),
  quantity: 'resistance',
}));

/** The highest reading is not asked: over-range between two terminals of a winding is an open circuit on any range. */
export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export function windingInput(read: ReadForm): WindingInput {
  const of = (pair: WindingPair) => read.readings[pair] ?? missing;
  return { readings: { UV: of('UV'), VW: of('VW'), WU: of('WU') }, instrument: instrumentOf(read) };
}

export const windingForm: CalculatorForm<WindingCode, WindingStepCode> = {
  name: 'winding',
  fields: [...pairFields, ...meterFields],
  assess: (read) => assessWinding(windingInput(read)),
  findingTexts: windingFindings,
  stepTexts: windingSteps,
};
