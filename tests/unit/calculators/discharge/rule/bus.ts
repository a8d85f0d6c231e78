import { assessDischarge } from '../../../../../src/calculators/discharge/rule/assess.ts';
import type { DischargeFinding, DischargeInput } from '../../../../../src/calculators/discharge/rule/input.ts';
import { missing, ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { line } from '../../../../support/lines.ts';

export type Change = Partial<DischargeInput>;

export const farads = (value: number): Reading => ({ kind: 'value', value, unit: 'F' });
export const seconds = (value: number, resolution = 1): Reading => ({ kind: 'value', value, unit: 's', resolution });
export const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });

export const nothing: DischargeInput = {
  startVoltage: missing,
  capacitance: missing,
  capacitanceTolerance: missing,
  bleeder: missing,
  bleederTolerance: missing,
  timeConstant: missing,
  first: missing,
  second: missing,
  elapsed: missing,
  label: missing,
};
/** 1.5 mF and 33 kΩ: a time constant of 49.5 s. */
export const values: Change = {
  startVoltage: volts(565, 1),
  capacitance: farads(1.5e-3),
  capacitanceTolerance: percent(0),
  bleeder: ohms(33e3),
  bleederTolerance: percent(0),
};
export const pair = (first: number, second: number, time: number): Change => ({
  first: volts(first, 1),
  second: volts(second, 1),
  elapsed: seconds(time),
});

export const assess = (change: Change) => assessDischarge({ ...nothing, ...change });
export const said = (change: Change) => assess(change).findings.map(line);
export const steps = (change: Change) => assess(change).next.map(({ code }) => code);
export const find = <Code extends DischargeFinding['code']>(change: Change, code: Code) =>
  found(assess(change).findings, code);
