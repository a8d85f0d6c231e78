import { formatQuantity, formatReading } from '../../kernel/reading/format-reading.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import { isDash } from '../../kernel/reading/typed-text.ts';

/**
 * What was understood, in full, so that the person can see a slip of the unit: "= 450 kΩ". `typed` is the text that
 * was read: a dash is said to be no reading, and nothing typed is echoed by nothing.
 */
export function readback(reading: Reading, typed = ''): string {
  switch (reading.kind) {
    case 'missing':
      return isDash(typed) ? 'taken as no reading' : '';
    case 'over':
      return reading.atLeast === undefined
        ? 'over-range, range not noted'
        : `over-range, at least ${formatQuantity(reading.atLeast, reading.unit)}`;
    case 'under':
      return reading.atMost === undefined
        ? 'under-range, range not noted'
        : `under-range, at most ${formatQuantity(reading.atMost, reading.unit)}`;
    case 'value':
      return `= ${formatReading(reading)}`;
  }
}
