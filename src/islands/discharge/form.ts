import { assessDischarge, type DischargeAssessment } from '../../calc/discharge.ts';
import type { DischargeInput } from '../../calc/discharge-input.ts';
import { missing } from '../../calc/reading.ts';
import { dischargeFindings, dischargeSteps } from '../../texts/discharge.ts';
import { defineCalculator } from '../form/calculator-form.ts';
import { instrumentOf } from '../form/instrument.ts';
import type { ReadForm } from '../form/read-form.ts';
import { busFields, labelFields, meterFields, pairFields, toleranceFields } from './fields.ts';

export function dischargeInput(read: ReadForm): DischargeInput {
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

export const dischargeForm = defineCalculator<DischargeAssessment>({
  name: 'discharge',
  fields: [...busFields, ...toleranceFields, ...pairFields, ...meterFields, ...labelFields],
  assess: (read) => assessDischarge(dischargeInput(read)),
  findingTexts: dischargeFindings,
  stepTexts: dischargeSteps,
});
