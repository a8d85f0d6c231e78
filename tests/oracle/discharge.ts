import { assessDischarge } from '../../src/calculators/discharge/rule/assess.ts';
import type { DischargeInput } from '../../src/calculators/discharge/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { instrument, reading } from './readings.ts';
import { having, type Subject } from './subject.ts';

const fields = [
  'startVoltage',
  'capacitance',
  'capacitanceTolerance',
  'bleeder',
  'bleederTolerance',
  'timeConstant',
  'first',
  'second',
  'elapsed',
  'label',
] as const;

export const discharge: Subject<DischargeInput> = {
  name: 'discharge',
  make: (dice) => {
    const some = (usual: number, unit: 'V' | 'F' | '%' | 'Ω' | 's'): Reading =>
      dice.chance(0.3) ? { kind: 'missing' } : reading(dice, () => usual * dice.between(0.5, 2), unit, 0.05);
    return {
      startVoltage: some(560, 'V'),
      capacitance: some(1.5e-3, 'F'),
      capacitanceTolerance: some(20, '%'),
      bleeder: some(20e3, 'Ω'),
      bleederTolerance: some(5, '%'),
      timeConstant: some(30, 's'),
      first: some(500, 'V'),
      second: some(200, 'V'),
      elapsed: some(30, 's'),
      label: some(300, 's'),
      ...(dice.chance(0.3) && { instrument: instrument(dice, [600, 1000]) }),
    };
  },
  verdict: (input) => assessDischarge(input).verdict,
  // A computed time never replaces the meter.
  mayGo: () => false,
  lacking: (input, dice) => having(input, dice.pick(fields), { kind: 'missing' }),
};
