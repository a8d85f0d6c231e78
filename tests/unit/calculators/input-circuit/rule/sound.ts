import { assessInputCircuit } from '../../../../../src/calculators/input-circuit/rule/assess.ts';
import type { InputCircuitInput, Lines } from '../../../../../src/calculators/input-circuit/rule/input.ts';
import { ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';

export const ol: Reading = { kind: 'over', unit: 'V' };
export const three = (L1: Reading, L2 = L1, L3 = L1): Lines<Reading> => ({ L1, L2, L3 });
export const drop = volts(0.46, 0.001);

export const sound: InputCircuitInput = {
  busVoltage: volts(0.03),
  supplyLeads: 'off',
  others: 'off',
  lines: 'three',
  fuses: three(ohms(0.2, 0.1)),
  plusConducting: three(drop),
  plusBlocking: three(ol),
  minusConducting: three(drop),
  minusBlocking: three(ol),
  linkConducting: volts(0.85, 0.001),
  linkBlocking: ol,
  climb: 'climbs',
  precharge: 'reached',
  prechargePlate: ohms(47),
  prechargeOhms: ohms(47.8, 0.1),
  again: false,
};

export type Change = Partial<InputCircuitInput>;
export const assess = (change: Change) => assessInputCircuit({ ...sound, ...change });
