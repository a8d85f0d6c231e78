import type { Phases } from '../../kernel/electrics/phases.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { instrumentOf } from '../../kernel/form/instrument-of.ts';
import { sameFields } from '../../kernel/form/opening.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { Rail } from '../bridge/rule/switch-position.ts';
import { bridgeDiode } from './about.ts';
import { bridgeDiodeFields, resistanceFields } from './fields.ts';
import { bridgeDiodeHeadline } from './headline.ts';
import { assessBridgeDiode, type BridgeDiodeAssessment, type BridgeDiodeInput } from './rule/assess.ts';
import type { DiodeRail } from './rule/rail.ts';
import { bridgeDiodeFindings, bridgeDiodeSteps } from './words.ts';

function bridgeDiodeInput(read: ReadForm): BridgeDiodeInput {
  const { readings, choices } = read;
  const three = (prefix: string): Phases<Reading> => ({
    U: readings[`${prefix}U`] ?? missing,
    V: readings[`${prefix}V`] ?? missing,
    W: readings[`${prefix}W`] ?? missing,
  });
  const rail = (name: Rail): DiodeRail => ({ forward: three(`${name}Forward`), reverse: three(`${name}Reverse`) });
  const taken = resistanceFields.some(({ id }) => (readings[id] ?? missing).kind !== 'missing');
  return {
    busVoltage: readings.busVoltage ?? missing,
    motorLeads: choices.motorLeads === 'off' || choices.motorLeads === 'connected' ? choices.motorLeads : 'not-stated',
    steadiness:
      choices.steadiness === 'steady' || choices.steadiness === 'drifting' ? choices.steadiness : 'not-stated',
    plus: rail('plus'),
    minus: rail('minus'),
    instrument: instrumentOf(read),
    ...(taken && { resistance: { dcPlus: three('plus'), dcMinus: three('minus') } }),
    ...(choices.resistanceOrder === 'first' && { resistanceOrder: 'first' }),
    ...(choices.resistanceOrder === 'bus-measured-between' && { resistanceOrder: 'bus-measured-between' }),
    ...(choices.resistanceOrder === 'after' && { resistanceOrder: 'after' }),
  };
}

export const calculator = defineCalculator<BridgeDiodeAssessment>({
  ...bridgeDiode,
  fields: bridgeDiodeFields,
  assess: (read) => assessBridgeDiode(bridgeDiodeInput(read)),
  findingTexts: bridgeDiodeFindings,
  stepTexts: bridgeDiodeSteps,
  headline: bridgeDiodeHeadline,
  inSight: ['diode-passed', 'diode-suspect', 'diode-failed'],
  opens: {
    'take-resistances': { calculator: 'bridge', words: 'Bridge balance' },
    'complete-resistances': {
      calculator: 'bridge',
      words: 'Bridge balance',
      carries: sameFields(...resistanceFields.map(({ id }) => id)),
    },
    'test-motor-and-cable': { calculator: 'isolation', words: 'Cable or motor' },
    'test-insulation-next': { calculator: 'insulation', words: 'Insulation' },
  },
});
