import { filterOf, idleCoresOf, rowKindOf } from '../../kernel/form/cable-end-fields.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import { sameFields } from '../../kernel/form/opening.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { correctionOf, frameEarthedOf, peConductorOf } from '../../kernel/form/shared-fields.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { insulation } from './about.ts';
import { insulationFields, tester } from './fields.ts';
import { insulationHeadline } from './headline.ts';
import { assessInsulation } from './rule/assess.ts';
import type { InsulationAssessment, InsulationInput } from './rule/input.ts';
import { insulationFindings, insulationSteps } from './words.ts';

export function insulationInput(read: ReadForm): InsulationInput {
  const of = (id: string) => read.readings[id] ?? missing;
  const group = read.choices.machineClass;
  return {
    occasion: read.choices.occasion === 'routine' ? 'routine' : 'after-trip',
    readings: { U: of('U'), V: of('V'), W: of('W') },
    rowKind: rowKindOf(read),
    together: of('together'),
    idleCores: idleCoresOf(read),
    filter: filterOf(read),
    pe: of('PE'),
    peConductor: peConductorOf(read),
    frameEarthed: frameEarthedOf(read),
    testVoltage: of('testVoltage'),
    ratedVoltage: of('ratedVoltage'),
    windingTemperature: of('windingTemperature'),
    ambient: of('ambient'),
    humidity: of('humidity'),
    machineClass: group === 'form-wound' || group === 'pre-1970' ? group : 'random-wound',
    correction: correctionOf(read),
    instrument: instrumentOf(read),
    testMinutes: of('testMinutes'),
  };
}

/** What the joined stage of cable and motor asks for in the same words. */
const testedAlike = sameFields(
  ...['rowKind', 'idleCores', 'filter', 'testVoltage', 'windingTemperature', 'temperatureUnit', 'correction'],
  ...['peMetres', 'peSection', 'peCurrent', 'frameEarthed'],
  ...tester.map(({ id }) => id),
);

export const calculator = defineCalculator<InsulationAssessment>({
  ...insulation,
  fields: insulationFields,
  assess: (read) => assessInsulation(insulationInput(read)),
  findingTexts: insulationFindings,
  stepTexts: insulationSteps,
  headline: insulationHeadline,
  inSight: ['insulation-passed', 'insulation-failed'],
  opens: {
    'separate-cable-and-motor': {
      calculator: 'isolation',
      words: 'Cable or motor',
      carries: {
        ...{ U: 'joinedU', V: 'joinedV', W: 'joinedW', together: 'joinedTogether', PE: 'joinedPE' },
        ...testedAlike,
      },
    },
    'use-insulation-tester': { calculator: 'test-voltage', words: 'Test voltage', carries: { ratedVoltage: 'rated' } },
    'keep-as-baseline': {
      calculator: 'winding',
      words: 'Winding resistance',
      carries: sameFields('windingTemperature', 'temperatureUnit'),
    },
  },
});
