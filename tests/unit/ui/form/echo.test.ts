import { expect, test } from 'vitest';
import { echo } from '../../../../src/ui/form/echo.ts';
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
])('%s is echoed as “%s”', (text, expected) => {
  expect(echo(typed(text), text)).toBe(expected);
});

test('a text that could not be read is echoed by nothing: its error says what is wrong', () => {
  expect(echo({ kind: 'missing' }, '450')).toBe('');
});
