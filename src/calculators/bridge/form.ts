import type { Phases } from '../../kernel/electrics/phases.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf, numberOf } from '../../kernel/form/instrument.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { bridge } from './about.ts';
import { busVoltage, meterFields, motorLeads, railFields, tipsTogether, tolerance } from './fields.ts';
import { assessBridge, type BridgeAssessment, type BridgeInput } from './rule/assess.ts';
import type { Rail } from './rule/switch-position.ts';
import { bridgeFindings, bridgeSteps } from './words.ts';

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

export const calculator = defineCalculator<BridgeAssessment>({
  ...bridge,
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
