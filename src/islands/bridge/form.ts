import { assessBridge, type BridgeAssessment, type BridgeInput } from '../../calc/bridge.ts';
import type { Phases } from '../../calc/phases.ts';
import { missing, type Reading } from '../../calc/reading.ts';
import type { Rail } from '../../calc/switch-position.ts';
import { bridgeFindings, bridgeSteps } from '../../texts/bridge.ts';
import { defineCalculator } from '../form/calculator-form.ts';
import { instrumentOf, numberOf } from '../form/instrument.ts';
import type { ReadForm } from '../form/read-form.ts';
import { busVoltage, meterFields, motorLeads, railFields, tipsTogether, tolerance } from './fields.ts';

function rail(name: Rail, { readings }: ReadForm): Phases<Reading> {
  const of = (phase: string) => readings[`${name}${phase}`] ?? missing;
  return { U: of('U'), V: of('V'), W: of('W') };
}

export function bridgeInput(read: ReadForm): BridgeInput {
  const tolerancePercent = numberOf(read.readings.tolerance);
  const leads = read.choices.motorLeads;
  return {
    busVoltage: read.readings.busVoltage ?? missing,
    motorLeads: leads === 'off' || leads === 'connected' ? leads : 'not-stated',
    dcPlus: rail('plus', read),
    dcMinus: rail('minus', read),
    tipsTogether: read.readings.tipsTogether ?? missing,
    ...(tolerancePercent !== undefined && { tolerancePercent }),
    instrument: instrumentOf(read),
  };
}

export const bridgeForm = defineCalculator<BridgeAssessment>({
  name: 'bridge',
  fields: [
    busVoltage,
    motorLeads,
    ...railFields('plus'),
    ...railFields('minus'),
    tipsTogether,
    tolerance,
    ...meterFields,
  ],
  assess: (read) => assessBridge(bridgeInput(read)),
  findingTexts: bridgeFindings,
  stepTexts: bridgeSteps,
});
