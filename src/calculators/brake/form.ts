import { coreSections } from '../../kernel/electrics/core-resistance.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { brake } from './about.ts';
import { brakeFields } from './fields.ts';
import { brakeHeadline } from './headline.ts';
import { assessBrake } from './rule/assess.ts';
import type { BrakeAssessment, BrakeInput } from './rule/input.ts';
import { brakeFindings, brakeSteps } from './words.ts';

function oneOf<T extends string>(value: string | undefined, known: readonly T[], otherwise: T): T {
  return known.find((one) => one === value) ?? otherwise;
}

export function brakeInput(read: ReadForm): BrakeInput {
  const { choices } = read;
  const of = (id: string) => read.readings[id] ?? missing;
  const squareMillimetres = coreSections.find((one) => String(one) === choices.section);
  return {
    axis: oneOf(choices.axis, ['held', 'not-held'], 'not-stated'),
    busVoltage: of('busVoltage'),
    leads: oneOf(choices.plugAndLeads, ['off', 'connected'], 'not-stated'),
    circuit: oneOf(choices.circuit, ['plain', 'electronics'], 'not-stated'),
    ratedVolts: of('ratedVolts'),
    ratedWatts: of('ratedWatts'),
    ratedOhms: of('ratedOhms'),
    coilTemperature: of('coilTemperature'),
    atMotor: of('atMotor'),
    atDrive: of('atDrive'),
    coresApart: of('coresApart'),
    toPhases: of('toPhases'),
    toPe: of('toPe'),
    plugVolts: of('plugVolts'),
    sourceVolts: of('sourceVolts'),
    supplyTolerance: of('supplyTolerance'),
    cable: { metres: of('metres'), ...(squareMillimetres !== undefined && { squareMillimetres }) },
    release: oneOf(choices.release, ['opens', 'drags', 'shut'], 'not-tried'),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<BrakeAssessment>({
  ...brake,
  judgesFrom: 'axis',
  fields: brakeFields,
  assess: (read) => assessBrake(brakeInput(read)),
  findingTexts: brakeFindings,
  stepTexts: brakeSteps,
  headline: brakeHeadline,
  inSight: ['brake-not-extra-low', 'brake-opens', 'brake-stays-shut', 'brake-drags', 'brake-core-path'],
  opens: {
    'separate-cable': { calculator: 'isolation', words: 'Cable or motor' },
  },
});
