import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { discharge } from './about.ts';
import { dischargeFields } from './fields.ts';
import { dischargeHeadline } from './headline.ts';
import { assessDischarge, type DischargeAssessment } from './rule/assess.ts';
import type { DischargeInput } from './rule/input.ts';
import { dischargeFindings, dischargeSteps } from './words.ts';

function dischargeInput(read: ReadForm): DischargeInput {
  const of = (id: string) => read.readings[id] ?? missing;
  return {
    startVoltage: of('startVoltage'),
    capacitance: of('capacitance'),
    capacitanceTolerance: of('capacitanceTolerance'),
    bleeder: of('bleeder'),
    bleederTolerance: of('bleederTolerance'),
    timeConstant: of('timeConstant'),
    first: of('first'),
    second: of('second'),
    elapsed: of('elapsed'),
    label: of('label'),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<DischargeAssessment>({
  ...discharge,
  fields: dischargeFields,
  assess: (read) => assessDischarge(dischargeInput(read)),
  findingTexts: dischargeFindings,
  stepTexts: dischargeSteps,
  headline: dischargeHeadline,
});
