import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { spreadInterval, within } from '../../../kernel/reading/spread.ts';

/**
 * The readings of one rail in Ω, in the order in which they are taken: U, V, W, then U `again`. `exchanged` is U with
 * the two leads exchanged.
 */
export interface RailRow {
  readings: Phases<Reading>;
  again: Reading;
  exchanged: Reading;
}

export interface RailReading {
  phase: Phase;
  reading: Reading;
  interval: Interval;
  /** Over-range without a noted range. */
  rangeUnknown: boolean;
}

/** The three figures that count. While the bus capacitor charges, the last reading of U is nearest to the truth. */
export function settled({ readings, again }: RailRow): Phases<Reading> {
  return isTaken(again) && isTaken(readings.U) ? { ...readings, U: again } : readings;
}

export const isTaken = ({ kind }: Reading) => kind !== 'missing';

export function railReading(phase: Phase, reading: Reading, instrument: Instrument): RailReading {
  const rangeUnknown = reading.kind === 'over' && reading.atLeast === undefined && instrument.upperLimit === undefined;
  return { phase, reading, interval: intervalOf(reading, instrument), rangeUnknown };
}

export function takenReadings(readings: Phases<Reading>, instrument: Instrument): RailReading[] {
  return phases
    .filter((phase) => isTaken(readings[phase]))
    .map((phase) => railReading(phase, readings[phase], instrument));
}

/** Beside a finite reading, an over-range without a noted range counts as open, which it usually is. */
export function counted({ interval, rangeUnknown }: RailReading): Interval {
  return rangeUnknown ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : interval;
}

/** Under-range without a figure can't be compared. */
export const isComparable = ({ reading, interval }: RailReading) =>
  reading.kind !== 'under' || Number.isFinite(interval.hi);

export const isShort = ({ hi }: Interval) => hi <= limitValue('bridge-short');
/** An over-range is far above a short on any range, even if none was noted. */
export const mayBeShort = ({ reading, interval }: Pick<RailReading, 'reading' | 'interval'>) =>
  reading.kind !== 'over' && interval.lo <= limitValue('bridge-short');
export const isMetal = ({ hi }: Interval) => hi <= limitValue('bridge-metal');

/** Whether `low` is below `high` by more than `percent`, whatever values the two can have. */
export function isBelow(low: Interval, high: Interval, percent: number): boolean {
  return high.lo > low.hi && !within(spreadInterval([low, high]).lo, percent);
}

/** Whether two readings differ by more than `percent`, whatever values they can have. */
export function disagree(one: Interval, other: Interval, percent: number): boolean {
  return isBelow(one, other, percent) || isBelow(other, one, percent);
}

/** Whether two readings agree within `percent`, whatever values they can have. Open and open agree. */
export function agree(one: Interval, other: Interval, percent: number): boolean {
  const open = one.hi === Number.POSITIVE_INFINITY && other.hi === Number.POSITIVE_INFINITY;
  return open || within(spreadInterval([one, other]).hi, percent);
}

/** U was read again after V and W, and stands where it stood. */
export function isSteady({ readings, again }: RailRow, percent: number, instrument: Instrument): boolean {
  if (!isTaken(readings.U) || !isTaken(again)) return false;
  const [first, last] = [railReading('U', readings.U, instrument), railReading('U', again, instrument)];
  return isComparable(first) && isComparable(last) && agree(counted(first), counted(last), percent);
}
