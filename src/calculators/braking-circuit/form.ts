import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { brakingCircuit } from './about.ts';
import { brakingCircuitFields } from './fields.ts';
import { brakingHeadline } from './headline.ts';
import { assessBrakingCircuit } from './rule/assess.ts';
import type { BrakingAssessment, BrakingCircuitInput } from './rule/input.ts';
import { brakingFindings, brakingSteps } from './words.ts';

function oneOf<T extends string>(value: string | undefined, known: readonly T[], otherwise: T): T {
  return known.find((one) => one === value) ?? otherwise;
}

function brakingCircuitInput(read: ReadForm): BrakingCircuitInput {
  const { choices } = read;
  const of = (id: string) => read.readings[id] ?? missing;
  return {
    busVoltage: of('busVoltage'),
    plate: of('plate'),
    plateTolerance: of('plateTolerance'),
    ohms: of('ohms'),
    lead: oneOf(choices.lead, ['steady', 'jumps'], 'not-stated'),
    toHousing: of('toHousing'),
    insulation: of('insulation'),
    thermal: oneOf(choices.thermal, ['none', 'opens-hot', 'other'], 'not-stated'),
    thermalOhms: of('thermalOhms'),
    upperConducting: of('upperConducting'),
    upperBlocking: of('upperBlocking'),
    lowerConducting: of('lowerConducting'),
    lowerBlocking: of('lowerBlocking'),
    again: choices.again === 'yes',
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<BrakingAssessment>({
  ...brakingCircuit,
  fields: brakingCircuitFields,
  assess: (read) => assessBrakingCircuit(brakingCircuitInput(read)),
  findingTexts: brakingFindings,
  stepTexts: brakingSteps,
  headline: brakingHeadline,
  inSight: ['chopper-sound', 'chopper-short', 'housing-path'],
});
