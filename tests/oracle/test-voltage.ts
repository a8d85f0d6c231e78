import { assessTestVoltage } from '../../src/calculators/test-voltage/rule/assess.ts';
import type { TestVoltageInput } from '../../src/calculators/test-voltage/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { figure, reading } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const objects = ['winding', 'wiring', 'machine-circuits', 'extra-low', 'brake-coil', 'feedback'] as const;

/** From and to in V by IEEE 43, IEC 60364-6 and IEC 60204-1 (recalled), typed once more on purpose. */
function wanted(object: TestVoltageInput['object'], rated: number): [from: number, to: number] | undefined {
  if (object === 'winding') {
    if (rated < 1000) return [500, 500];
    if (rated <= 2500) return [500, 1000];
    if (rated <= 5000) return [1000, 2500];
    return rated <= 12000 ? [2500, 5000] : [5000, 10000];
  }
  if (object === 'feedback' || rated > 1000) return undefined;
  if (object === 'extra-low') return rated <= 120 ? [250, 250] : undefined;
  if (object === 'machine-circuits') return [500, 500];
  if (object === 'brake-coil' && rated <= 50) return [250, 250];
  // From 50 to 120 V a coil may be fed from the mains through a rectifier: no expectation.
  if (object === 'brake-coil' && rated <= 120) return undefined;
  return rated <= 500 ? [500, 500] : [1000, 1000];
}

export const testVoltage: Subject<TestVoltageInput> = {
  name: 'test voltage',
  make: (dice) => ({
    object: dice.pick(objects),
    rated: reading(
      dice,
      () => dice.pick([24, 50, 51, 103, 120, 121, 230, 400, 500, 501, 690, 1000, 1001, 2500, 2501, 6000, 13000]),
      'V',
      0.1,
      5,
    ),
    drive: dice.chance(0.85) ? 'off' : dice.pick(['connected', 'unknown'] as const),
    sensitive: dice.chance(0.7) ? 'off' : dice.pick(['connected', 'connected', 'unknown'] as const),
    set: reading(dice, () => dice.pick([50, 100, 249, 250, 251, 500, 501, 1000, 2500, 5000, 10000]), 'V', 0.1, 5),
  }),
  verdict: (input) => assessTestVoltage(input).verdict,
  mayGo: ({ object, rated, drive, sensitive, set }) => {
    if (drive !== 'off' || (sensitive !== 'off' && sensitive !== 'connected') || !(figure(rated) > 0)) return false;
    const row = wanted(object, figure(rated));
    if (row === undefined) return false;
    const [from, to] = sensitive === 'connected' ? [250, 250] : row;
    return figure(set) >= from && figure(set) <= to;
  },
  lacking: (input, dice) => {
    const key = dice.pick(['rated', 'set', 'drive', 'sensitive'] as const);
    return key === 'rated' || key === 'set' ? having(input, key, missing) : having(input, key, 'unknown');
  },
};
