import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { inputCircuit } from './about.ts';
import { inputCircuitFields } from './fields.ts';
import { inputHeadline } from './headline.ts';
import { assessInputCircuit } from './rule/assess.ts';
import type { InputAssessment, InputCircuitInput, Lines } from './rule/input.ts';
import { inputFindings, inputSteps } from './words.ts';

function oneOf<T extends string>(value: string | undefined, known: readonly T[], otherwise: T): T {
  return known.find((one) => one === value) ?? otherwise;
}

function inputCircuitInput(read: ReadForm): InputCircuitInput {
  const { choices } = read;
  const of = (id: string): Reading => read.readings[id] ?? missing;
  const three = (row: string): Lines<Reading> => ({ L1: of(`${row}L1`), L2: of(`${row}L2`), L3: of(`${row}L3`) });
  const hasL3 = Object.entries(read.readings).some(([id, { kind }]) => id.endsWith('L3') && kind !== 'missing');
  return {
    busVoltage: of('busVoltage'),
    supplyLeads: oneOf(choices.supplyLeads, ['off', 'connected'], 'not-stated'),
    others: oneOf(choices.others, ['off', 'connected'], 'not-stated'),
    // A reading at L3 contradicts two lines: then it is judged, and what is missing at L3 is asked for.
    lines: choices.lines === 'two' && !hasL3 ? 'two' : 'three',
    fuses: three('fuse'),
    plusConducting: three('plusConducting'),
    plusBlocking: three('plusBlocking'),
    minusConducting: three('minusConducting'),
    minusBlocking: three('minusBlocking'),
    linkConducting: of('linkConducting'),
    linkBlocking: of('linkBlocking'),
    climb: oneOf(choices.climb, ['climbs', 'at-once'], 'not-stated'),
    precharge: oneOf(choices.precharge, ['reached', 'none', 'inside'], 'not-stated'),
    prechargePlate: of('prechargePlate'),
    prechargeOhms: of('prechargeOhms'),
    again: choices.again === 'yes',
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<InputAssessment>({
  ...inputCircuit,
  fields: inputCircuitFields,
  assess: (read) => assessInputCircuit(inputCircuitInput(read)),
  findingTexts: inputFindings,
  stepTexts: inputSteps,
  headline: inputHeadline,
  inSight: ['fuse-open', 'rectifier-sound', 'lines-not-judged', 'precharge-inside'],
});
