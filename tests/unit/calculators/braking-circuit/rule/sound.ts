import { assessBrakingCircuit } from '../../../../../src/calculators/braking-circuit/rule/assess.ts';
import type { BrakingCircuitInput } from '../../../../../src/calculators/braking-circuit/rule/input.ts';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';

export const ol: Reading = { kind: 'over', unit: 'V' };

export const sound: BrakingCircuitInput = {
  busVoltage: volts(0.03),
  plate: ohms(47),
  plateTolerance: missing,
  ohms: ohms(46, 1),
  lead: 'steady',
  toHousing: overOhms(20e6),
  insulation: overOhms(500e6),
  thermal: 'opens-hot',
  thermalOhms: ohms(0.4, 0.1),
  upperConducting: volts(0.46, 0.001),
  upperBlocking: ol,
  lowerConducting: volts(0.47, 0.001),
  lowerBlocking: ol,
  again: false,
};

export type Change = Partial<BrakingCircuitInput>;
export const assess = (change: Change) => assessBrakingCircuit({ ...sound, ...change });
