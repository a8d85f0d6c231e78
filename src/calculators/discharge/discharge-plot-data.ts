import { voltageAfter } from '../../kernel/electrics/discharge-law.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded, formatSeconds } from '../../kernel/reading/format-reading.ts';
import type { DischargeAssessment } from './rule/assess.ts';

type Pair = readonly [seconds: number, volts: number];

interface DischargePlotData {
  /** The slowest and the fastest discharge, in V over s. */
  slow: Pair[];
  fast: Pair[];
  machine: number;
  touch: number;
  rows: string[][];
  fromReading: boolean;
}

const parts = 10;
const curve = 60;

/** Undefined if the discharge has no end that could be drawn. */
export function dischargePlotData({ charged, waits }: DischargeAssessment): DischargePlotData | undefined {
  const touch = limitValue('touch-voltage');
  const end = waits.find(({ limit }) => limit === 'touch-voltage')?.seconds.hi ?? 0;
  if (charged === undefined || !Number.isFinite(end) || end <= 0) return undefined;
  const { start, timeConstant, fromReading = false } = charged;
  // Far enough beyond the limit that the curve crosses it left of the limit's name.
  const last = end * 1.5;
  const times = (count: number) => Array.from({ length: count + 1 }, (_, index) => (index * last) / count);
  const slowAt = (time: number) => voltageAfter(start.hi, time, timeConstant.hi);
  const fastAt = (time: number) => voltageAfter(start.lo, time, timeConstant.lo);
  return {
    slow: times(curve).map((time) => [time, slowAt(time)]),
    fast: times(curve).map((time) => [time, fastAt(time)]),
    machine: limitValue('residual-voltage-60'),
    touch,
    fromReading,
    rows: times(parts).map((time) => [
      formatSeconds(time),
      formatRounded(slowAt(time), 'V'),
      formatRounded(fastAt(time), 'V'),
    ]),
  };
}
