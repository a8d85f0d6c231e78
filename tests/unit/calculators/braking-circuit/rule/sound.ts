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

const pair = (path: string) => `${path}Conducting ${path}Blocking: diode-short diode-blocking`;

/** The findings of the sound circuit part by part, each as a line with the limits that it rests on. */
const usual = {
  bus: ['bus-discharged pass busVoltage: resistance-residual-voltage'],
  resistor: ['resistor-fits pass ohms plate: braking-resistor-tolerance braking-resistor-off-plate'],
  housing: ['housing-free pass toHousing insulation: braking-resistor-to-pe machine-minimum-60204'],
  thermal: ['thermal-closed pass thermalOhms: tips-together'],
  upper: [`chopper-sound pass ${pair('upper')}`],
  lower: [`chopper-sound pass ${pair('lower')}`],
};

export type Lines = Partial<typeof usual>;

/** All lines of a circuit that differs from the sound one in these parts. */
export const linesWith = (instead: Lines) => Object.values({ ...usual, ...instead }).flat();
