import type { Phases } from '../../kernel/electrics/phases.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { numberOf } from '../../kernel/form/instrument.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { bridge } from './about.ts';
import { bridgeFields } from './fields.ts';
import { bridgeHeadline } from './headline.ts';
import { assessBridge, type BridgeAssessment, type BridgeInput } from './rule/assess.ts';
import type { Rail } from './rule/switch-position.ts';
import { bridgeFindings, bridgeSteps } from './words.ts';

function rail(name: Rail, { readings }: ReadForm): Phases<Reading> {
  const of = (phase: string) => readings[`${name}${phase}`] ?? missing;
  return { U: of('U'), V: of('V'), W: of('W') };
}

const optional = ['plusAgain', 'minusAgain', 'plusExchanged', 'minusExchanged', 'worstAgain', 'dcBus'] as const;

/** Only what was read: a record without these fields means that nothing was. */
function secondReadings({ readings, choices }: ReadForm): Partial<BridgeInput> {
  const taken = optional.flatMap((id) => {
    const reading = readings[id] ?? missing;
    return reading.kind === 'missing' ? [] : [[id, reading] as const];
  });
  const { alsoOnBus, sister } = choices;
  return {
    ...Object.fromEntries(taken),
    ...((alsoOnBus === 'nothing' || alsoOnBus === 'something') && { alsoOnBus }),
    ...((sister === 'alike' || sister === 'differs') && { sister }),
  };
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
    ...secondReadings(read),
    ...(tolerancePercent !== undefined && { tolerancePercent }),
    instrument: instrumentOf(read),
  };
}

export const calculator = defineCalculator<BridgeAssessment>({
  ...bridge,
  fields: bridgeFields,
  assess: (read) => assessBridge(bridgeInput(read)),
  findingTexts: bridgeFindings,
  stepTexts: bridgeSteps,
  headline: bridgeHeadline,
  inSight: ['bridge-passed', 'bridge-suspect', 'bridge-failed'],
  opens: {
    'test-motor-and-cable': { calculator: 'isolation', words: 'Cable or motor' },
    'test-insulation-next': { calculator: 'insulation', words: 'Insulation' },
  },
});
