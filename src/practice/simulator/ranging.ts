import type { MeterFunction, Range } from './instruments.ts';
import { type Element, partAround, source } from './network.ts';
import { operatingPoint } from './operating-point.ts';

/** The nodes of the two leads; the reading is that of red against black. */
export interface HookUp {
  red: string;
  black: string;
}

export type Mode = 'ohms' | 'diode' | 'volts' | 'milliohms' | 'insulation';

/** What a range shows of these points: ohms without the leads, or volts in a diode test. Infinite if over-range. */
export interface Ranged {
  range: Range;
  value: number;
}

/** Voltage of red against black, in volts. */
export function across(network: readonly Element[], { red, black }: HookUp): number {
  const volts = operatingPoint(partAround(network, [red, black]));
  return volts(red) - volts(black);
}

/** The network with the test source of this range across the leads. */
export function underTest(network: readonly Element[], { red, black }: HookUp, range: Range): Element[] {
  return [...network, source(red, black, range.sourceVolts, range.sourceOhms)];
}

/** An automatic meter goes a range down below this share of the present one, so that it does not hunt. */
const downShare = 0.09;

/**
 * The range that an automatic meter ends in, with what it shows there; the value is infinite if even the last is too
 * small. It starts at `from`, a range it is in already, or where this meter begins. `leadOhms` takes part in the choice.
 * On a part that is not linear, the way through the ranges matters.
 */
export function ranged(
  network: readonly Element[],
  leads: HookUp,
  mode: Mode,
  { ranges, ranging }: MeterFunction,
  leadOhms: number,
  from?: Range,
): Ranged {
  const last = ranges.length - 1;
  const start = ranging === 'down' ? last : 0;
  // The test source joins the two leads, so this part is the same in every range.
  const part = partAround(network, [leads.red, leads.black]);
  const shown = (position: number): Ranged => {
    const range = ranges[position] as Range;
    return { range, value: tested(part, leads, range, mode) };
  };
  const share = ({ range, value }: Ranged) => (value + leadOhms) / range.fullScale;
  let position = from ? ranges.indexOf(from) : start;
  let now = shown(position);
  while (position > 0 && share(now) < downShare) {
    position -= 1;
    now = shown(position);
  }
  while (!(share(now) <= 1)) {
    if (position === last) return { range: now.range, value: Number.POSITIVE_INFINITY };
    position += 1;
    now = shown(position);
  }
  return now;
}

/** Resistance from voltage and current of the test source; the diode test shows the voltage itself. */
function tested(network: readonly Element[], leads: HookUp, range: Range, mode: Mode): number {
  const at = operatingPoint(underTest(network, leads, range));
  const volts = at(leads.red) - at(leads.black);
  if (mode === 'diode') return volts;
  const amperes = (range.sourceVolts - volts) / range.sourceOhms;
  // A voltage from outside that stops or turns the current reads as open.
  return amperes * range.sourceVolts > 0 ? volts / amperes : Number.POSITIVE_INFINITY;
}
