import { limitValue, missing, type Reading, type WindingPair, windingPairs } from '../../calc/index.ts';
import type { ReadForm } from '../form/read-form.ts';

export interface Bar {
  pair: WindingPair;
  reading: Reading;
  /** Deviation from the mean in percent, with its sign. */
  deviation: number;
}

export interface BarsData {
  bars: Bar[];
  /** The limits between which nothing is decided, in percent. */
  good: number;
  bad: number;
}

/** The deviation of each reading from the mean; undefined unless all three are plain values. */
export function windingBars({ readings }: ReadForm): BarsData | undefined {
  const values = windingPairs.flatMap((pair) => {
    const reading = readings[pair] ?? missing;
    return reading.kind === 'value' ? [{ pair, reading, value: reading.value }] : [];
  });
  const mean = values.reduce((sum, { value }) => sum + value, 0) / values.length;
  if (values.length < windingPairs.length || mean === 0) return undefined;
  return {
    bars: values.map(({ pair, reading, value }) => ({ pair, reading, deviation: (value / mean - 1) * 100 })),
    good: limitValue('winding-unbalance-good'),
    bad: limitValue('winding-unbalance-bad'),
  };
}
