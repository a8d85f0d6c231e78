import { formatQuantity, formatReading, type Reading } from '../../calc/index.ts';

/** What was understood, in full, so that the person can see a slip of the unit: "= 450 kΩ". Empty for no reading. */
export function echo(reading: Reading): string {
  switch (reading.kind) {
    case 'missing':
      return '';
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
