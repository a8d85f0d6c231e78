import { secondsUntil } from '../../../kernel/electrics/discharge-law.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';

/** How long until one published limit. */
export interface Wait {
  limit: LimitId;
  /** The voltage that it stands for, in V. */
  volts: number;
  /** From the moment that the supply was cut, or from the first reading, in s. The longer end counts. */
  seconds: Interval;
  /** From the second voltmeter reading at the longest, in s. */
  afterReading?: number;
  /** The published time for it. */
  within?: LimitId;
}

export interface Charged {
  start: Interval;
  /** All times run from the first reading: what the bus had when the supply was cut is not known. */
  fromReading?: boolean;
  timeConstant: Interval;
  capacitance?: Interval | undefined;
  /** What the second reading leaves at the most, in V. */
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
    // Q = C · V: the largest capacitance keeps the charge down to the lowest voltage.
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

/** Seconds from the start to `volts`, from the shortest to the longest that is possible. */
export function span({ start, timeConstant }: Charged, volts: number): Interval {
  return {
    lo: secondsUntil(start.lo, volts, timeConstant.lo),
    hi: secondsUntil(start.hi, volts, timeConstant.hi),
  };
}
