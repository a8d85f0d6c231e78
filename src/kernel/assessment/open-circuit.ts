import { limitValue } from '../limits.ts';
import { type Instrument, intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';

/**
 * Whether an over-range reading shows an open circuit: more than `above` Ω, the most that a sound part has. Without a
 * noted range only if every multimeter shows `above` on its lowest one: OL on 200 Ω says nothing of a coil of 800 Ω.
 */
export function isOpenCircuit(reading: Reading, above: number, instrument: Instrument = {}): boolean {
  if (reading.kind !== 'over') return false;
  if (reading.atLeast === undefined && instrument.upperLimit === undefined) {
    return above <= limitValue('open-on-any-range');
  }
  return intervalOf(reading, instrument).lo > above;
}
