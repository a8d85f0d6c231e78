import type { Reading } from '../reading/reading.ts';
import type { ReadingField } from './field.ts';
import { upperLimitUnits } from './measured-units.ts';

/** The optional fields about the accuracy of an instrument; `example` is what its highest reading may be. */
export function instrumentFields(example: string): ReadingField[] {
  return [
    {
      kind: 'reading',
      id: 'accuracyPercent',
      label: 'Accuracy, ± % of reading',
      name: 'Accuracy, percent of reading',
      hint: 'From the data sheet, for the range that you used.',
      quantity: 'percent',
    },
    {
      kind: 'reading',
      id: 'accuracyCounts',
      label: '… and ± counts',
      name: 'Accuracy, counts',
      hint: 'Counts of the last digit, also called digits.',
      quantity: 'counts',
    },
    {
      kind: 'reading',
      id: 'upperLimit',
      label: 'Highest reading it can show',
      name: 'Highest reading that the instrument can show',
      hint: `For example ${example}. OL then counts as at least this much.`,
      quantity: 'resistance',
      units: upperLimitUnits,
      check: (reading) =>
        reading.kind === 'value' && reading.value > 0
          ? undefined
          : reading.kind === 'missing'
            ? undefined
            : 'An instrument’s highest reading is a plain value above zero. Type it like 72 MΩ.',
    },
  ];
}

/** The plain number of an optional field, if one stands in it. */
export function numberOf(reading: Reading | undefined): number | undefined {
  return reading?.kind === 'value' ? reading.value : undefined;
}
