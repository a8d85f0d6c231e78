import type { Random } from '../../kernel/random.ts';
import type { BuiltAxis } from '../simulator/axis-defects.ts';
import { type AxisState, asFound, leadsOff } from '../simulator/axis-state.ts';
import { drawInstruments, type Instruments } from '../simulator/instruments.ts';
import { type AxisParameters, drawAxis } from '../simulator/parameters.ts';

/** Always the middle of a range, and no noise: a figure shows the same each time. */
export const middle: Random = () => 0.5;

/** The axis in the middle of every range of the simulator, with what a figure changes of it. */
export function middleAxis(changes: Partial<AxisParameters> = {}): BuiltAxis {
  return {
    parameters: { ...drawAxis(middle), ...changes },
    leaks: [],
    broken: [],
    contacts: [],
    motor: { shortedShare: {}, insulationFactor: 1 },
  };
}

/** Instruments without error, apart from the last digit of the display. */
export const exactInstruments: Instruments = drawInstruments(middle);

/** Motor leads off the drive, supply off, everything at 20 °C. */
export const leadsOffAt20: AxisState = leadsOff(asFound(20, 20));
