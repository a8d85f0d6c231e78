import { lastIn } from '../../kernel/reading/last-in.ts';
import { axisNetwork } from './axis-network.ts';
import type { AxisState } from './axis-state.ts';
import { holding } from './discharge.ts';
import { type Displayed, showCount, showOver, withError } from './display.ts';
import type { FaultedAxis } from './faulted-axis.ts';
import type { Instruments, MeterFunction, Range } from './instruments.ts';
import { type Element, resistor, source } from './network.ts';
import { operatingPoint } from './operating-point.ts';
import type { Random } from './random.ts';

/** The nodes of the two leads; red is positive. */
export interface HookUp {
  red: string;
  black: string;
}

export interface Measurement extends Displayed {
  /** Voltage between the points before the leads touched them: a danger, and an error in resistances. */
  voltsPresent: number;
}

export type Mode = 'ohms' | 'diode' | 'volts' | 'milliohms' | 'insulation';

interface Options {
  /** Duration of the test voltage of an insulation tester, in seconds; the usual reading is at one minute. */
  testSeconds?: number;
  /** The leads were shorted first and their resistance is subtracted. */
  zeroed?: boolean;
}

/**
 * What the instrument shows between any two points of the axis as it is connected now. No hook-up is refused: on a live
 * bus, through the drive or with one end open, the leads give the reading that they really would.
 */
export function measure(
  axis: FaultedAxis,
  state: AxisState,
  instruments: Instruments,
  mode: Mode,
  leads: HookUp,
  random: Random,
  { testSeconds = 60, zeroed = false }: Options = {},
): Measurement {
  const network = holding(mode === 'insulation' ? axisNetwork(axis, state, testSeconds) : axisNetwork(axis, state));
  const voltsPresent = across(network, leads);
  const meter = instruments[mode];
  const leadOhms = mode === 'milliohms' || zeroed ? 0 : instruments.leadOhms;
  const shown =
    mode === 'volts'
      ? showVolts(network, leads, meter, instruments.error, random)
      : showTested(network, leads, mode, meter, leadOhms, instruments.error, random);
  return { ...shown, voltsPresent };
}

function across(network: Element[], { red, black }: HookUp): number {
  const volts = operatingPoint(network);
  return volts(red) - volts(black);
}

/** In the lowest range that can show the value, like an automatic range. */
function showVolts(network: Element[], leads: HookUp, meter: MeterFunction, error: number, random: Random): Displayed {
  for (const range of meter.ranges) {
    const volts = across([...network, resistor(leads.red, leads.black, range.sourceOhms)], leads);
    if (Math.abs(volts) > range.fullScale) continue;
    return showCount(withError(volts, range, meter, error, random), range, meter, 'V');
  }
  return showOver(lastIn(meter.ranges)?.fullScale ?? 0, 'V');
}

function showTested(
  network: Element[],
  leads: HookUp,
  mode: Exclude<Mode, 'volts'>,
  meter: MeterFunction,
  leadOhms: number,
  error: number,
  random: Random,
): Displayed {
  const unit = mode === 'diode' ? 'V' : 'Ω';
  for (const range of meter.ranges) {
    const value = tested(network, leads, range, mode);
    if (!(value + leadOhms <= range.fullScale)) continue;
    const count = withError(Math.max(0, value) + (mode === 'diode' ? 0 : leadOhms), range, meter, error, random);
    return showCount(Math.max(0, count), range, meter, unit);
  }
  return showOver(lastIn(meter.ranges)?.fullScale ?? 0, unit);
}

/** The network with the test source of this range across the leads. */
export function underTest(network: Element[], { red, black }: HookUp, range: Range): Element[] {
  return [...network, source(red, black, range.sourceVolts, range.sourceOhms)];
}

/** Resistance from voltage and current of the test source; the diode test shows the voltage itself. */
function tested(network: Element[], leads: HookUp, range: Range, mode: Mode): number {
  const volts = across(underTest(network, leads, range), leads);
  if (mode === 'diode') return volts;
  const amperes = (range.sourceVolts - volts) / range.sourceOhms;
  // A voltage from outside that stops or turns the current reads as open.
  return amperes > 0 ? volts / amperes : Number.POSITIVE_INFINITY;
}
