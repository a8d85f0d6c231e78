import { voltageAfter } from '../../kernel/electrics/discharge-law.ts';
import type { BuiltAxis } from './axis-defects.ts';
import { axisNetwork } from './axis-network.ts';
import type { AxisState } from './axis-state.ts';
import { busCapacitors } from './drive-network.ts';
import { type Capacitor, type Element, partAround, source } from './network.ts';
import { operatingPoint } from './operating-point.ts';
import { chargesAfter } from './transient.ts';
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
  const rest = partAround(elements, [capacitor.a, capacitor.b]).filter((element) => element !== capacitor);
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

/**
 * The axis `seconds` later, at standstill: the winding has cooled; with the supply off, the bus has lost charge through
 * everything connected to it.
 */
export function afterWaiting(axis: BuiltAxis, before: AxisState, seconds: number): AxisState {
  const state = cooled(axis, before, seconds);
  const { balance, supplyVolts } = axis.parameters;
  if (state.supply) return withBus(state, supplyVolts);
  const network = axisNetwork(axis, state);
  if (balance) return afterSeconds(axis, state, network, seconds);
  const bus = network.find((element): element is Capacitor => element.kind === 'capacitor');
  return bus === undefined ? state : { ...state, busVolts: chargeAfter(network, bus, seconds) };
}

/** The same `seconds` later while the supply is off, whatever the capacitors are and however little they hold. */
export function afterSeconds(
  axis: BuiltAxis,
  state: AxisState,
  network: readonly Element[],
  seconds: number,
): AxisState {
  return { ...state, ...busOf(charged(network, busCapacitors(axis.parameters, state), seconds)) };
}

/** These capacitors `seconds` later, in a network that can have a meter in it. */
export function charged(
  network: readonly Element[],
  capacitors: readonly Capacitor[],
  seconds: number,
  firstShare?: number,
): readonly Capacitor[] {
  const volts = chargesAfter(network, capacitors, seconds, firstShare);
  return capacitors.map((capacitor, index) => ({ ...capacitor, volts: volts[index] ?? 0 }));
}

/** Voltage of the bus from its capacitors: one, or the upper and the lower of two in series. */
export function busOf([first, second]: readonly Capacitor[]): Pick<AxisState, 'busVolts' | 'lowerBusVolts'> {
  if (first?.b !== 'DC.mid') return { busVolts: first?.volts ?? 0 };
  const lower = second?.volts ?? 0;
  return { busVolts: first.volts + lower, lowerBusVolts: lower };
}

function cooled({ parameters: { coolingSeconds } }: BuiltAxis, state: AxisState, seconds: number): AxisState {
  if (coolingSeconds === Number.POSITIVE_INFINITY) return state;
  const { windingCelsius, airCelsius } = state;
  return { ...state, windingCelsius: airCelsius + (windingCelsius - airCelsius) * Math.exp(-seconds / coolingSeconds) };
}

function withBus({ lowerBusVolts: _, ...state }: AxisState, busVolts: number): AxisState {
  return { ...state, busVolts };
}

/** Supply on: the bus counts as charged at once, faster than a person can see, and both halves of it alike. */
export function switchedOn(axis: BuiltAxis, state: AxisState): AxisState {
  return { ...withBus(state, axis.parameters.supplyVolts), supply: true };
}
