import { expect, test } from 'vitest';
import { readback } from '../../../../src/ui/form/readback.ts';
import { typed } from '../../../support/typed.ts';

test.each([
  ['450k', '= 450 kΩ'],
  ['2,2 MΩ', '= 2.2 MΩ'],
  ['2M2', '= 2.2 MΩ'],
  ['OL', 'over-range, range not noted'],
  ['>700M', 'over-range, at least 700 MΩ'],
  ['<1k', 'under-range, at most 1 kΩ'],
  ['under range', 'under-range, range not noted'],
  ['open', 'over-range, range not noted'],
  ['-', 'taken as no reading'],
  ['--', 'taken as no reading'],
  ['----', 'taken as no reading'],
  [' — ', 'taken as no reading'],
  ['', ''],
  ['  ', ''],
])('%s is read back as “%s”', (text, expected) => {
  expect(readback(typed(text), text)).toBe(expected);
});

test('a text that could not be read has no readback: its error says what is wrong', () => {
  expect(readback({ kind: 'missing' }, '450')).toBe('');
});
