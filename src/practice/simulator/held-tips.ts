import type { BuiltAxis } from './axis-defects.ts';
import { axisNetwork } from './axis-network.ts';
import type { AxisState } from './axis-state.ts';
import { afterSeconds, busOf, charged, holding } from './discharge.ts';
import { busCapacitors } from './drive-network.ts';
import type { MeterFunction, Range } from './instruments.ts';
import { type Capacitor, type Element, partAround } from './network.ts';
import { across, type HookUp, type Mode, ranged, underTest } from './ranging.ts';

/** An automatic meter changes its range within this time, in seconds. */
const shortestLook = 0.4;
/** As long as it stays in its range, the time to the next look grows by this factor, as the reading slows. */
const rarer = 1.6;

/** The bus of an axis without supply: its capacitors, charged or empty, and all other elements. */
interface TimedNetwork {
  capacitors: readonly Capacitor[];
  rest: readonly Element[];
}

const asSources = ({ capacitors, rest }: TimedNetwork): Element[] => [...rest, ...holding(capacitors)];

/** A reading in time: the network as it is when the meter is read, its range, and what stood across the points before. */
export interface Held {
  network: Element[];
  range: Range;
  voltsPresent: number;
  bus: Pick<AxisState, 'busVolts' | 'lowerBusVolts'>;
}

/**
 * The axis after the tips of a multimeter were on these points for `seconds`: its test current has charged or discharged
 * the bus, in each range that it went through.
 */
export function heldOn(
  axis: BuiltAxis,
  state: AxisState,
  leads: HookUp,
  mode: Mode,
  meter: MeterFunction,
  leadOhms: number,
  seconds: number,
): Held {
  const before = around(axis, state, leads);
  let now = before.capacitors;
  const at = (capacitors: readonly Capacitor[], from?: Range): Range =>
    ranged(asSources({ ...before, capacitors }), leads, mode, meter, leadOhms, from).range;
  let range = at(now);
  for (let [time, look] = [0, shortestLook]; time < seconds && now.length > 0; ) {
    const step = Math.min(look, seconds - time);
    const later = charged(underTest(before.rest, leads, range), now, step, time === 0 ? 1 / 20 : 1 / 5);
    const next = at(later, range);
    if (next !== range && step > shortestLook) {
      // The change came somewhere within this look: look sooner.
      look = Math.max(shortestLook, step / 4);
      continue;
    }
    time += step;
    look = next === range ? look * rarer : shortestLook;
    [now, range] = [later, next];
  }
  return {
    network: asSources({ ...before, capacitors: now }),
    range,
    voltsPresent: across(asSources(before), leads),
    bus: now.length > 0 ? busOf(now) : busLater(axis, state, seconds),
  };
}

/** Only what the leads reach; without capacitors if they don't reach the bus. */
function around(axis: BuiltAxis, state: AxisState, { red, black }: HookUp): TimedNetwork {
  const all = [
    ...axisNetwork(axis, state).filter(({ kind }) => kind !== 'capacitor'),
    ...busCapacitors(axis.parameters, state),
  ];
  const part = partAround(all, [red, black]);
  return {
    capacitors: part.filter((element): element is Capacitor => element.kind === 'capacitor'),
    rest: part.filter(({ kind }) => kind !== 'capacitor'),
  };
}

function busLater(axis: BuiltAxis, state: AxisState, seconds: number): Held['bus'] {
  const { busVolts, lowerBusVolts } = afterSeconds(axis, state, axisNetwork(axis, state), seconds);
  return { busVolts, ...(lowerBusVolts !== undefined && { lowerBusVolts }) };
}
