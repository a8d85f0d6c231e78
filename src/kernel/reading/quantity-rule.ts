import type { LimitId } from '../limits.ts';
import type { Unit } from './reading.ts';
import type { UnitMeaning } from './unit-words.ts';

export type Quantity =
  | 'resistance'
  | 'voltage'
  | 'diode'
  | 'temperature'
  | 'percent'
  | 'counts'
  | 'duration'
  | 'seconds'
  | 'capacitance'
  | 'length'
  | 'diameter'
  | 'inductance'
  | 'current'
  | 'power';

export interface QuantityRule {
  unit: Unit;
  /** Shown in messages. */
  example: string;
  /** The range that a form accepts, in content/limits. */
  accepts: LimitId;
  /**
   * How many decimals a bare number must have to be understood in the base unit. `never` for resistance: k, M and Ω
   * are all usual. One for the diode test: meters show it in volts with two to four decimals, or in whole millivolts,
   * so that 0.512 can only be volts, and 2 is a blocking 2 V or a short of 2 mV.
   */
  bareDecimals: number;
  /** The units that instruments and labels show: the keys of a keypad, and the question. */
  units: readonly string[];
  /** A bare number may be in any of the units, so the person is asked. */
  asks?: true;
  /** May be negative: a diode test beside a charged bus reads below zero, which must be reported, not refused. */
  signed?: true;
  /** Taken from a label, a drawing or a clock, not from a display, whose point is always the decimal mark. */
  printed?: true;
  /** At or below is safe, above is dangerous: a figure that may be on either side is asked about. */
  dangerAbove?: LimitId[];
  /** The highest figure that such a machine has, if a form accepts more. */
  usualTo?: LimitId;
  /** Whether an instrument can show over-range for it. */
  overRange: boolean;
  meaning: (unitText: string) => UnitMeaning;
}

/** For a quantity that always needs a unit. */
export const never = Number.POSITIVE_INFINITY;
