import type { BuiltAxis } from '../../simulator/axis-defects.ts';
import { axisNetwork } from '../../simulator/axis-network.ts';
import type { AxisState } from '../../simulator/axis-state.ts';
import { charged } from '../../simulator/discharge.ts';
import { busCapacitors } from '../../simulator/drive-network.ts';
import { leadsOffAt20, middleAxis } from '../middle-axis.ts';

export type Resistors = 'whole' | 'lower-open' | 'upper-open';

/** The two capacitors of the bus `seconds` after switch-off, in V. */
export interface Halves {
  seconds: number;
  upper: number;
  lower: number;
}

/** Each balancing resistor, in Ω; the bus has two capacitors in series, each with twice `busFarads`. */
const balanceOhms = 100e3;
const openOhms = 1e9;

/** The drive of this figure: no other way but the balancing resistors empties its bus in minutes. */
export function balancedAxis(resistors: Resistors): BuiltAxis {
  const open = { U: 100e6, V: 100e6, W: 100e6 };
  return middleAxis({
    busFarads: 600e-6,
    balance: {
      upperOhms: resistors === 'upper-open' ? openOhms : balanceOhms,
      lowerOhms: resistors === 'lower-open' ? openOhms : balanceOhms,
    },
    upperOhms: open,
    lowerOhms: open,
  });
}

/** The bus at each of `times` (seconds, rising from 0): from one to the next by the transient solver of the simulator. */
export function discharge(resistors: Resistors, times: readonly number[]): Halves[] {
  const axis = balancedAxis(resistors);
  const state: AxisState = { ...leadsOffAt20, busVolts: axis.parameters.supplyVolts };
  const network = axisNetwork(axis, state);
  let now = busCapacitors(axis.parameters, state);
  let before = 0;
  return times.map((seconds) => {
    now = [...charged(network, now, seconds - before, 1 / 30)] as typeof now;
    before = seconds;
    return { seconds, upper: now[0]?.volts ?? 0, lower: now[1]?.volts ?? 0 };
  });
}
