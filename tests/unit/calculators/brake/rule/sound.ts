import { assessBrake } from '../../../../../src/calculators/brake/rule/assess.ts';
import type { BrakeInput } from '../../../../../src/calculators/brake/rule/input.ts';
import {
  celsius,
  metres,
  missing,
  ohms,
  overOhms,
  type Reading,
  volts,
  watts,
} from '../../../../../src/kernel/reading/reading.ts';

/** 24 V and 12 W are 48 Ω. 20 m of 1 mm² have 2 · 20 · 19.5 / 1000 = 0.78 Ω, at most 0.78 · 1.25 + 0.3 = 1.275 Ω. */
export const sound: BrakeInput = {
  axis: 'held',
  busVoltage: volts(0.02),
  leads: 'off',
  circuit: 'plain',
  ratedVolts: volts(24),
  ratedWatts: watts(12),
  ratedOhms: missing,
  coilTemperature: celsius(20),
  atMotor: ohms(47.6, 0.1),
  atDrive: ohms(48.5, 0.1),
  coresApart: overOhms(20e6),
  toPhases: overOhms(20e6),
  toPe: overOhms(20e6),
  plugVolts: volts(23.4, 0.1),
  sourceVolts: volts(24.1, 0.1),
  supplyTolerance: missing,
  cable: { metres: metres(20), squareMillimetres: 1 },
  release: 'opens',
};

export type Change = Partial<BrakeInput>;
export const assess = (change: Change) => assessBrake({ ...sound, ...change });

export const coil = 'brake-coil-tolerance brake-coil-off-plate winding-zero-copper';
export const cores = 'pe-core-resistance pe-core-tolerance pe-contacts pe-dead-short';
export const plate = 'ratedVolts ratedWatts ratedOhms';
export const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });

/** The findings of the sound brake, each as a line with the limits that it rests on. */
export const usual = [
  'bus-discharged pass busVoltage: resistance-residual-voltage',
  `brake-coil-fits pass atMotor coilTemperature ${plate}: ${coil}`,
  `brake-cores-fit pass atDrive atMotor: ${cores}`,
  'brake-supply-fits pass plugVolts ratedVolts: brake-supply-tolerance brake-supply-off',
  'brake-drop-expected note metres: pe-core-resistance brake-supply-tolerance',
  'brake-drop note sourceVolts plugVolts',
  'brake-cores-free pass: idle-core-free',
  'brake-opens pass release',
];
