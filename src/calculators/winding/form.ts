import { conductors } from '../../kernel/electrics/conductor-temperature.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { winding } from './about.ts';
import { windingFields } from './fields.ts';
import { windingHeadline } from './headline.ts';
import { assessWinding, type WindingAssessment, type WindingInput } from './rule/assess.ts';
import type { LeadHandling } from './rule/leads.ts';
import type { WindingPair } from './rule/pairs.ts';
import type { Connection } from './rule/suspect.ts';
import { windingFindings, windingSteps } from './words.ts';

export function windingInput(read: ReadForm): WindingInput {
  const { readings, choices } = read;
  const of = (id: WindingPair | string): Reading => readings[id] ?? missing;
  return {
    readings: { UV: of('UV'), VW: of('VW'), WU: of('WU') },
    again: { UV: of('UVagain'), VW: of('VWagain'), WU: of('WUagain') },
    acrossJoint: of('acrossJoint'),
    instrument: instrumentOf(read),
    leads: oneOf<LeadHandling>(choices.leads, ['four', 'zeroed', 'subtract'], 'not-stated'),
    leadOhms: of('leadOhms'),
    kind: choices.windingKind === 'form-wound' ? 'form-wound' : 'random-wound',
    connection: oneOf<Connection>(choices.connection, ['star', 'delta'], 'unknown'),
    conductor: oneOf(choices.conductor, conductors, 'copper'),
    temperature: of('windingTemperature'),
    correctTo: choices.correctTo === 'to-25' ? 'to-25' : 'to-20',
    reference: of('reference'),
    referenceTemperature: of('referenceTemperature'),
  };
}

function oneOf<T extends string>(value: string | undefined, known: readonly T[], otherwise: T): T {
  return known.find((one) => one === value) ?? otherwise;
}

export const calculator = defineCalculator<WindingAssessment>({
  ...winding,
  fields: windingFields,
  assess: (read) => assessWinding(windingInput(read)),
  findingTexts: windingFindings,
  stepTexts: windingSteps,
  headline: windingHeadline,
  inSight: ['winding-passed', 'winding-failed', 'winding-not-confirmed'],
});
