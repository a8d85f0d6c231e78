import { coreSections } from '../../kernel/electrics/core-resistance.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { coreResistanceAbout } from './about.ts';
import { coreFields } from './fields.ts';
import { coreHeadline } from './headline.ts';
import { assessCore } from './rule/assess.ts';
import type { CoreAssessment, CoreEnd, CoreInput, CoreMeter, CoreWay } from './rule/input.ts';
import { coreFindings, coreSteps } from './words.ts';

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
  fields: coreFields,
  assess: (read) => assessCore(coreInput(read)),
  findingTexts: coreFindings,
  stepTexts: coreSteps,
  headline: coreHeadline,
  inSight: ['core-by-multimeter'],
});
