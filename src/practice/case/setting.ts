import { type Instruments, insulationTester } from '../simulator/instruments.ts';
import type { Mode } from '../simulator/measure.ts';

/** How a person has set the instrument. */
export interface Setting {
  /** Full scale of a range chosen by hand, in ohms or volts; automatic without it. */
  range?: number;
  /** Of the insulation tester, in volts; 500 without it. */
  testVolts?: number;
  /** Leads shorted first and their resistance taken off. */
  zeroed?: boolean;
  /** The leads stay on after an insulation test until the tester has discharged the winding. */
  discharge?: boolean;
}

/** The instruments with this range alone, and this test voltage. */
export function withSetting(instruments: Instruments, mode: Mode, { range, testVolts }: Setting): Instruments {
  const { insulation } = instruments;
  const chosen = testVolts === undefined ? instruments : { ...instruments, insulation: tester(insulation, testVolts) };
  if (range === undefined) return chosen;
  const ranges = chosen[mode].ranges.filter(({ fullScale }) => fullScale === range);
  return ranges.length === 0 ? chosen : { ...chosen, [mode]: { ...chosen[mode], ranges } };
}

function tester({ upperLimit, percent }: Instruments['insulation'], volts: number): Instruments['insulation'] {
  return insulationTester(volts, upperLimit, percent);
}
