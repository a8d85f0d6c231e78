import { assessInsulation } from '../../../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationFinding, InsulationInput } from '../../../../../src/calculators/insulation/rule/input.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

/** A winding that passes after a trip; each test changes one thing. */
export const sound: InsulationInput = {
  occasion: 'after-trip',
  readings: typedPhases('700M | 710M | 705M'),
  idleCores: 'to-pe',
  pe: typed('0.2 Ω'),
  testVoltage: typed('500 V', 'voltage'),
  ratedVoltage: typed('400 V', 'voltage'),
  windingTemperature: typed('20 °C', 'temperature'),
  ambient: missing,
  humidity: missing,
  machineClass: 'random-wound',
  correction: 'halving',
  testMinutes: typed('1 min', 'duration'),
};

export type Change = Partial<InsulationInput>;

export const assess = (change: Change) => assessInsulation({ ...sound, ...change });
export const codes = (change: Change) => assess(change).findings.map(({ code }) => code);
export const steps = (change: Change) => assess(change).next.map(({ code }) => code);
export const find = <Code extends InsulationFinding['code']>(change: Change, code: Code) =>
  found(assess(change).findings, code);

export const alike = (text: string) => ({ readings: typedPhases(`${text} | ${text} | ${text}`) });
export const winding = (text: string) => ({ windingTemperature: typed(text, 'temperature') });
export const air = (ambient: string, humidity: string) => ({
  ambient: typed(ambient, 'temperature'),
  humidity: typed(humidity, 'percent'),
});
