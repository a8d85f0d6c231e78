import { conductors } from '../../calc/conductor-temperature.ts';
import { missing, type Reading } from '../../calc/reading.ts';
import { assessWinding, type WindingAssessment, type WindingInput } from '../../calc/winding.ts';
import type { LeadHandling } from '../../calc/winding-leads.ts';
import type { WindingPair } from '../../calc/winding-phases.ts';
import type { Connection } from '../../calc/winding-suspect.ts';
import { windingFindings, windingSteps } from '../../texts/winding.ts';
import { defineCalculator } from '../form/calculator-form.ts';
import { temperatureUnit } from '../form/form-choices.ts';
import { instrumentOf } from '../form/instrument.ts';
import type { ReadForm } from '../form/read-form.ts';
import {
  conductor,
  connection,
  correctTo,
  leadOhms,
  leads,
  meterFields,
  pairFields,
  referenceFields,
  temperatureField,
  windingKind,
} from './fields.ts';

export function windingInput(read: ReadForm): WindingInput {
  const { readings, choices } = read;
  const of = (id: WindingPair | string): Reading => readings[id] ?? missing;
  return {
    readings: { UV: of('UV'), VW: of('VW'), WU: of('WU') },
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

export const windingForm = defineCalculator<WindingAssessment>({
  name: 'winding',
  fields: [
    ...pairFields,
    leads,
    leadOhms,
    connection,
    windingKind,
    temperatureField,
    temperatureUnit,
    conductor,
    correctTo,
    ...referenceFields,
    ...meterFields,
  ],
  assess: (read) => assessWinding(windingInput(read)),
  findingTexts: windingFindings,
  stepTexts: windingSteps,
});
