import { secondsUntil } from '../../../kernel/electrics/discharge-law.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';

/** How long until one published limit. */
export interface Wait {
  limit: LimitId;
  /** The voltage that the limit means for this bus, in V. */
  volts: number;
  /** From the moment that the supply was cut, or from the first reading, in s. The longer end counts. */
  seconds: Interval;
  /** Longest time from the second voltmeter reading, in s. */
  afterReading?: number;
  /** The published time for it. */
  within?: LimitId;
}

export interface Charged {
  start: Interval;
  /** All times count from the first reading, because the voltage at the moment of the cut is unknown. */
  fromReading?: boolean;
  timeConstant: Interval;
  capacitance?: Interval | undefined;
  /** The highest voltage that the second reading allows, in V. */
  nowAtMost?: number | undefined;
}

/** The waits to all published limits, the one for the residual voltage of a machine first. */
export function waits(charged: Charged): Wait[] {
  const time: LimitId =
    charged.start.hi > limitValue('capacitor-rated-boundary') ? 'capacitor-time-high' : 'capacitor-time';
  const wanted: [limit: LimitId, volts: number, within?: LimitId][] = [
    ['residual-voltage-60', limitValue('residual-voltage-60'), 'residual-voltage-time'],
    ['capacitor-voltage-50', limitValue('capacitor-voltage-50'), time],
    ['touch-voltage', limitValue('touch-voltage')],
  ];
  if (charged.capacitance !== undefined) {
    // Q = C · V: with the largest capacitance the charge limit is reached at the lowest voltage.
    wanted.push(['residual-charge-exempt', limitValue('residual-charge-exempt') / charged.capacitance.hi]);
  }
  return wanted.map(([limit, volts, within]) => ({
    limit,
    volts,
    seconds: span(charged, volts),
    ...(charged.nowAtMost !== undefined && {
      afterReading: secondsUntil(charged.nowAtMost, volts, charged.timeConstant.hi),
    }),
    ...(within !== undefined && { within }),
  }));
}

/** Seconds from the start to `volts`: the shortest and the longest possible. */
export function span({ start, timeConstant }: Charged, volts: number): Interval {
  return {
    lo: secondsUntil(start.lo, volts, timeConstant.lo),
    hi: secondsUntil(start.hi, volts, timeConstant.hi),
  };
}
