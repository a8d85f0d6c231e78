import type { ReadForm } from '../../kernel/form/read-form.ts';
import { limitValue } from '../../kernel/limits.ts';
import { ohms, type Reading } from '../../kernel/reading/reading.ts';
import { windingInput } from './form.ts';
import { type WindingPair, windingPairs } from './rule/pairs.ts';

export interface Bar {
  pair: WindingPair;
  /** Without the leads, if they are subtracted. */
  reading: Reading;
  /** Deviation from the mean in percent, with its sign. */
  deviation: number;
}

interface BarsData {
  bars: Bar[];
  /** The limits between which nothing is decided, in percent. */
  good: number;
  bad: number;
}

/** The deviation of each reading from the mean; undefined unless all three are plain values above that of the leads. */
export function windingBars(read: ReadForm): BarsData | undefined {
  const { readings, leads, leadOhms, kind } = windingInput(read);
  const taken = leads !== 'four' && leads !== 'zeroed' && leadOhms?.kind === 'value' ? leadOhms.value : 0;
  const values = windingPairs.flatMap((pair) => {
    const reading = readings[pair];
    if (reading.kind !== 'value' || reading.value <= taken) return [];
    const value = Number((reading.value - taken).toPrecision(12));
    return [{ pair, reading: ohms(value, reading.resolution), value }];
  });
  const mean = values.reduce((sum, { value }) => sum + value, 0) / values.length;
  if (values.length < windingPairs.length) return undefined;
  return {
    bars: values.map(({ pair, reading, value }) => ({ pair, reading, deviation: (value / mean - 1) * 100 })),
    good: limitValue(kind === 'form-wound' ? 'winding-unbalance-good-form' : 'winding-unbalance-good'),
    bad: limitValue('winding-unbalance-bad'),
  };
}
