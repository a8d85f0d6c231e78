import type { Random } from '../../kernel/random.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import type { BuiltAxis } from './axis-defects.ts';
import { axisNetwork } from './axis-network.ts';
import type { AxisState } from './axis-state.ts';
import { holding } from './discharge.ts';
import { type Displayed, showCount, showOver, withError } from './display.ts';
import { heldOn } from './held-tips.ts';
import type { Instruments, MeterFunction, Range } from './instruments.ts';
import { type Element, resistor } from './network.ts';
import { across, type HookUp, type Mode, ranged } from './ranging.ts';

export type { HookUp, Mode } from './ranging.ts';

export interface Measurement extends Displayed {
  /** Voltage between the points before the leads touched them: a danger, and an error in resistances. */
  voltsPresent: number;
  /** Only of a reading in time: what the meter left on the bus. */
  bus?: Pick<AxisState, 'busVolts' | 'lowerBusVolts'>;
}

interface Options {
  /** Duration of the test voltage of an insulation tester, in seconds; the usual reading is at one minute. */
  testSeconds?: number;
  /** The leads were shorted first and their resistance is subtracted. */
  zeroed?: boolean;
  /**
   * Seconds since the tips touched, at which a multimeter is read: the bus capacitor charges from the meter and keeps
   * what it has. Absent: settled, as after a very long time.
   */
  heldSeconds?: number;
}

/**
 * What the instrument shows between any two points of the axis as it is connected now. No hook-up is refused: on a live
 * bus, through the drive or with one end open, the leads give the reading that they really would.
 */
export function measure(
  axis: BuiltAxis,
  state: AxisState,
  instruments: Instruments,
  mode: Mode,
  leads: HookUp,
  random: Random,
  { testSeconds = 60, zeroed = false, heldSeconds }: Options = {},
): Measurement {
  const meter = instruments[mode];
  const leadOhms = mode === 'milliohms' || zeroed ? 0 : instruments.leadOhms;
  const show = (network: Element[], from?: Range) =>
    mode === 'volts'
      ? showVolts(network, leads, meter, instruments.error, random)
      : showTested(network, leads, mode, meter, leadOhms, instruments.error, random, from);
  if (heldSeconds !== undefined && !state.supply && mode !== 'volts' && mode !== 'insulation') {
    const held = heldOn(axis, state, leads, mode, meter, leadOhms, heldSeconds);
    return { ...show(held.network, held.range), voltsPresent: held.voltsPresent, bus: held.bus };
  }
  const network = holding(mode === 'insulation' ? axisNetwork(axis, state, testSeconds) : axisNetwork(axis, state));
  const voltsPresent = across(network, leads);
  return { ...show(network), voltsPresent };
}

/** In the lowest range that can show the value, like an automatic range. */
function showVolts(network: Element[], leads: HookUp, meter: MeterFunction, error: number, random: Random): Displayed {
  const loaded = new Map<number, number>();
  for (const range of meter.ranges) {
    const { sourceOhms } = range;
    // Most meters load the points alike in every range.
    const volts = loaded.get(sourceOhms) ?? across([...network, resistor(leads.red, leads.black, sourceOhms)], leads);
    loaded.set(sourceOhms, volts);
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
  from?: Range,
): Displayed {
  const unit = mode === 'diode' ? 'V' : 'Ω';
  const { range, value } = ranged(network, leads, mode, meter, leadOhms, from);
  if (value === Number.POSITIVE_INFINITY) return showOver(range.fullScale, unit);
  const count = withError(Math.max(0, value) + (mode === 'diode' ? 0 : leadOhms), range, meter, error, random);
  return showCount(Math.max(0, count), range, meter, unit);
}
