import type { Phases } from '../../src/kernel/electrics/phases.ts';
import { parseReading } from '../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../src/kernel/reading/quantity.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';

/** The reading that a person typed. A text that can't be read is a mistake in the test. */
export function typed(text: string, quantity: Quantity = 'resistance'): Reading {
  const result = parseReading(text, quantity);
  if (!result.ok) throw new Error(`${text}: ${result.error.message}`);
  return result.reading;
}

/** Three readings, separated by bars: `450k | 2,2 MΩ | OL`; an empty part is a missing reading. */
export function typedPhases(text: string): Phases<Reading> {
  const [U, V, W] = text.split('|').map((one) => typed(one));
  if (U === undefined || V === undefined || W === undefined) throw new Error(`three readings wanted: ${text}`);
  return { U, V, W };
}
