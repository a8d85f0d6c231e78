import { type Instruments, insulationTester } from '../simulator/instruments.ts';
import type { Mode } from '../simulator/measure.ts';

/** How the person set the instrument for one measurement. */
export interface Setting {
  /** Full scale of a range chosen by hand, in ohms or volts; absent for automatic. */
  range?: number;
  /** Voltage of the insulation tester; 500 V if absent. */
  testVolts?: number;
  /** The leads were shorted first and their resistance is subtracted. */
  zeroed?: boolean;
  /** Seconds since the tips touched, of a multimeter reading taken before it stands still; absent: it stands still. */
  heldSeconds?: number;
  /** The leads stay on after an insulation test until the tester has discharged the winding. */
  discharge?: boolean;
}

/** A reading at a bus that a meter has charged stands still after this time, in seconds. */
const stillSeconds = 300;

/** How long the tips are held, if time matters: as set, or until the charge of an earlier reading has gone. */
export function heldFor({ heldSeconds }: Setting, busCharged: boolean): { heldSeconds?: number } {
  if (heldSeconds !== undefined) return { heldSeconds };
  return busCharged ? { heldSeconds: stillSeconds } : {};
}

/** The instruments with only this range, and with this test voltage. */
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
