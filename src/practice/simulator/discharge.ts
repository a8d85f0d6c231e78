import { voltageAfter } from '../../kernel/electrics/discharge-law.ts';
import { axisNetwork } from './axis-network.ts';
import type { AxisState } from './axis-state.ts';
import type { FaultedAxis } from './faulted-axis.ts';
import { type Capacitor, type Element, source } from './network.ts';
import { operatingPoint } from './operating-point.ts';
import { typical } from './typical.ts';

const steps = 8;

/** The network during a reading: each capacitor holds its charge, so it is replaced by a source of its voltage. */
export function holding(elements: readonly Element[]): Element[] {
  return elements.map((element) => (element.kind === 'capacitor' ? held(element, element.volts) : element));
}

const held = ({ a, b }: Capacitor, volts: number) => source(a, b, volts, typical.capacitorOhms);

/**
 * Voltage of the only capacitor after `seconds` without supply. From dV/dt = −I(V)/C: in each step V falls exponentially
 * at the rate I/(C·V) of its middle, which is exact for a linear network and nearly exact with diodes.
 */
export function chargeAfter(elements: readonly Element[], capacitor: Capacitor, seconds: number): number {
  const rest = elements.filter((element) => element !== capacitor);
  const rate = (volts: number): number => {
    if (volts === 0) return 0;
    const at = operatingPoint([...rest, held(capacitor, volts)]);
    const amperes = (volts - (at(capacitor.a) - at(capacitor.b))) / typical.capacitorOhms;
    return amperes / (capacitor.farads * volts);
  };
  const step = seconds / steps;
  let volts = capacitor.volts;
  for (let count = 0; count < steps; count += 1) {
    const middle = voltageAfter(volts, step / 2, 1 / rate(volts));
    volts = voltageAfter(volts, step, 1 / rate(middle));
  }
  return volts;
}

/** The axis `seconds` later: with the supply off, the bus loses charge through everything connected to it. */
export function afterWaiting(axis: FaultedAxis, state: AxisState, seconds: number): AxisState {
  if (state.supply) return { ...state, busVolts: axis.parameters.supplyVolts };
  const network = axisNetwork(axis, state);
  const bus = network.find((element): element is Capacitor => element.kind === 'capacitor');
  return bus === undefined ? state : { ...state, busVolts: chargeAfter(network, bus, seconds) };
}

/** Supply on: the bus counts as charged at once, faster than a person can see. */
export function switchedOn(axis: FaultedAxis, state: AxisState): AxisState {
  return { ...state, supply: true, busVolts: axis.parameters.supplyVolts };
}
