import { filterOf, idleCoresOf } from '../../kernel/form/cable-end-fields.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { correctionOf, frameEarthedOf, peConductorOf } from '../../kernel/form/shared-fields.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { isolation } from './about.ts';
import { isolationFields } from './fields.ts';
import { isolationHeadline } from './headline.ts';
import { assessIsolation } from './rule/assess.ts';
import type { MoreEvidence } from './rule/conviction.ts';
import type { IsolationAssessment, IsolationInput, StageReadings } from './rule/input.ts';
import type { StageName } from './rule/stage.ts';
import { isolationFindings, isolationSteps } from './words.ts';

function more(part: 'cable' | 'motor', { readings, choices }: ReadForm): MoreEvidence {
  const dried = choices[`${part}Dried`];
  return {
    again: readings[`${part}Again`] ?? missing,
    sister: readings[`${part}Sister`] ?? missing,
    ...((dried === 'yes' || dried === 'no') && { dried }),
  };
}

function stage(name: StageName, { readings }: ReadForm): StageReadings {
  const of = (terminal: string) => readings[name + terminal] ?? missing;
  return { U: of('U'), V: of('V'), W: of('W'), PE: of('PE'), together: of('Together') };
}

/** An empty stage counts as not taken; one with a single reading counts as begun. */
function takenStage(name: StageName, read: ReadForm): StageReadings | undefined {
  const readings = stage(name, read);
  return Object.values(readings).every(({ kind }) => kind === 'missing') ? undefined : readings;
}

function materialOf({ choices }: ReadForm): NonNullable<IsolationInput['cableMaterial']> {
  const { cableMaterial } = choices;
  return cableMaterial === 'pvc' || cableMaterial === 'xlpe' ? cableMaterial : 'not-stated';
}

export function isolationInput(read: ReadForm): IsolationInput {
  const cable = takenStage('cable', read);
  const bonded = takenStage('bonded', read);
  const motor = takenStage('motor', read);
  return {
    joined: stage('joined', read),
    ...(cable && { cable }),
    ...(bonded && { bonded: { U: bonded.U, V: bonded.V, W: bonded.W } }),
    ...(motor && { motor }),
    peAgain: read.readings.peAgain ?? missing,
    peConductor: peConductorOf(read),
    frameEarthed: frameEarthedOf(read),
    moreOfCable: more('cable', read),
    moreOfMotor: more('motor', read),
    idleCores: idleCoresOf(read),
    filter: filterOf(read),
    cableMetres: read.readings.cableMetres ?? missing,
    cableMaterial: materialOf(read),
    cableTemperature: read.readings.cableTemperature ?? missing,
    cableEndsChecked: read.choices.cableEndsChecked === 'yes',
    suspectedAnyway: read.choices.suspectedAnyway === 'yes',
    testVoltage: read.readings.testVoltage ?? missing,
    windingTemperature: read.readings.windingTemperature ?? missing,
    motorTemperature: read.readings.motorTemperature ?? missing,
    correction: correctionOf(read),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<IsolationAssessment>({
  ...isolation,
  fields: isolationFields,
  assess: (read) => assessIsolation(isolationInput(read)),
  findingTexts: isolationFindings,
  stepTexts: isolationSteps,
  headline: isolationHeadline,
  inSight: ['also-test-other-part', 'part-not-known'],
  opens: {
    'use-insulation-tester': { calculator: 'test-voltage', words: 'Test voltage' },
    'state-cable-length': {
      calculator: 'cable-length',
      words: 'Cable insulation by length',
      carries: { cableMetres: 'length', cableTemperature: 'temperature', temperatureUnit: 'temperatureUnit' },
    },
    'neither-suspect': { calculator: 'bridge', words: 'Bridge balance' },
  },
});
