import type { Instrument, Interval } from '../../../kernel/reading/interval.ts';
import { spreadInterval, within } from '../../../kernel/reading/spread.ts';
import {
  counted,
  isBelow,
  isComparable,
  isSteady,
  isTaken,
  type RailReading,
  type RailRow,
  railReading,
} from './rail-reading.ts';

/**
 * Whether the bus capacitor, which charges from the meter, may explain that the readings of a rail do not agree. It only
 * ever makes a later reading higher. Then `rail-first-odd` asks for U once more, and `rail-still-climbing` for the
 * whole row. Undefined if they
 * agree, if U stands where it stood, or if a later reading is lower than an earlier one and U is not the only odd one. `own` are the figures that
 * count, without shorts.
 */
export function stillMoves(
  row: RailRow,
  own: readonly RailReading[],
  tolerance: number,
  instrument: Instrument,
): 'rail-first-odd' | 'rail-still-climbing' | undefined {
  const list = own.filter(isComparable);
  if (list.length < 2 || within(spreadInterval(list.map(counted)).lo, tolerance)) return undefined;
  if (isSteady(row, tolerance, instrument)) return undefined;
  const readAgain = isTaken(row.again) && list.some(({ phase }) => phase === 'U');
  const falls = fallsInTime(inTime(row, list, readAgain, instrument), tolerance);
  if (readAgain) return falls ? undefined : 'rail-still-climbing';
  return falls && !onlyFirstIsOdd(list, tolerance) ? undefined : 'rail-first-odd';
}

/** The readings in the order in which they were taken, U first and once more at the end. */
function inTime(row: RailRow, list: readonly RailReading[], readAgain: boolean, instrument: Instrument): Interval[] {
  const later = list.filter(({ phase }) => phase !== 'U').map(counted);
  const last = list.filter(({ phase }) => phase === 'U').map(counted);
  if (!readAgain) return [...last, ...later];
  const first = railReading('U', row.readings.U, instrument);
  return isComparable(first) ? [counted(first), ...later, ...last] : [...later, ...last];
}

function fallsInTime(sequence: readonly Interval[], tolerance: number): boolean {
  return sequence.some((later, index) =>
    sequence.slice(0, index).some((earlier) => isBelow(later, earlier, tolerance)),
  );
}

/** A first contact is the one that is bad most often. */
function onlyFirstIsOdd(list: readonly RailReading[], tolerance: number): boolean {
  const later = list.filter(({ phase }) => phase !== 'U').map(counted);
  return within(spreadInterval(later).lo, tolerance);
}
