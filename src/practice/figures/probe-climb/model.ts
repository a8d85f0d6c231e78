import type { Phases } from '../../../kernel/electrics/phases.ts';
import type { BuiltAxis } from '../../simulator/axis-defects.ts';
import { diodeCurrent } from '../../simulator/diode-law.ts';
import { heldOn } from '../../simulator/held-tips.ts';
import { measure } from '../../simulator/measure.ts';
import { type Element, endsOf } from '../../simulator/network.ts';
import { operatingPoint, type Voltages } from '../../simulator/operating-point.ts';
import { type HookUp, underTest } from '../../simulator/ranging.ts';
import { exactInstruments, leadsOffAt20, middle, middleAxis } from '../middle-axis.ts';

/** Where the two tips are. The diodes block in the first two, and conduct in the third. */
export type Tips = 'plus-to-U' | 'U-to-minus' | 'U-to-plus';

/** What the meter shows after some seconds, and where its current goes then. */
export interface Held {
  seconds: number;
  text: string;
  /** The figure in Ω. */
  ohms: number;
  /** Test current in A, and the part of it that charges the bus capacitor. */
  amperes: number;
  chargingAmperes: number;
  busVolts: number;
}

const legOhms = { upper: 800e3, lower: 250e3 };

export const hookUps: Record<Tips, HookUp> = {
  'plus-to-U': { red: 'DC+', black: 'drive.U' },
  'U-to-minus': { red: 'drive.U', black: 'DC-' },
  'U-to-plus': { red: 'drive.U', black: 'DC+' },
};

/** The drive of this figure: its bus is empty, and no motor lead is on it. */
export function heldAxis(): BuiltAxis {
  const each = (ohms: number): Phases<number> => ({ U: ohms, V: ohms, W: ohms });
  return middleAxis({ upperOhms: each(legOhms.upper), lowerOhms: each(legOhms.lower) });
}

/** The tips on an empty bus for `seconds` (above 0). */
export function held(tips: Tips, seconds: number): Held {
  const axis = heldAxis();
  const leads = hookUps[tips];
  const { text, reading, bus } = measure(axis, leadsOffAt20, exactInstruments, 'ohms', leads, middle, {
    heldSeconds: seconds,
  });
  const { ohms: meter, leadOhms } = exactInstruments;
  const { network, range } = heldOn(axis, leadsOffAt20, leads, 'ohms', meter, leadOhms, seconds);
  const tested = underTest(network, leads, range);
  const at = operatingPoint(tested);
  const volts = at(leads.red) - at(leads.black);
  return {
    seconds,
    text,
    ohms: reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY,
    amperes: (range.sourceVolts - volts) / range.sourceOhms,
    chargingAmperes: Math.abs(intoCapacitor(tested, at)),
    busVolts: bus?.busVolts ?? 0,
  };
}

/** What flows into the bus capacitor: what the other elements at DC+ bring, by Kirchhoff's current law, in A. */
function intoCapacitor(network: readonly Element[], at: Voltages): number {
  return network
    .filter((element) => !(element.kind === 'source' && element.a === 'DC+' && element.b === 'DC-'))
    .reduce((sum, element) => {
      const [from, to] = endsOf(element);
      if (from === 'DC+') return sum - through(element, at);
      return to === 'DC+' ? sum + through(element, at) : sum;
    }, 0);
}

/** Current from the first end to the second, in A. */
function through(element: Element, at: Voltages): number {
  const [from, to] = endsOf(element);
  const volts = at(from) - at(to);
  switch (element.kind) {
    case 'resistor':
      return volts / element.ohms;
    case 'source':
      return (volts - element.volts) / element.ohms;
    case 'diode':
      return diodeCurrent(volts, element.saturation, element.slope);
    default:
      return 0;
  }
}
