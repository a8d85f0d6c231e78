import { expect, test } from 'vitest';
import { conversions } from '../../../../src/library/tables/conversions.ts';

const cell = (table: string, at: number, column: number) => {
  const found = conversions.find(({ id }) => id === table);
  return found?.rows.find((row) => row.at === at)?.cells[column];
};

test.each([
  // Halving rule, by hand: 40 °C to 20 °C is four times, 70 °C to 40 °C eight times.
  ['insulation', 70, 0, '8'],
  ['insulation', 40, 2, '4'],
  ['insulation', 20, 3, '1'],
  // Copper, 234.5 + 20 over 234.5 + 75 (NBS Handbook 100, recalled).
  ['winding', 20, 0, '1.000'],
  ['winding', 120, 0, ((234.5 + 20) / (234.5 + 120)).toFixed(3)],
  // 25 °C and 50 % give 13.9 °C: common dew-point tables (recalled). At 100 % air is at its dew point.
  ['dew-point', 25, 2, '13.9'],
  ['dew-point', 30, 7, '30.0'],
])('%s at %i °C, column %i: %s', (table, at, column, expected) => {
  expect(cell(table, at, column)).toBe(expected);
});

test('outside its range a method gives no figure', () => {
  expect(cell('insulation', 0, 1)).toBe('');
  expect(cell('insulation', 100, 1)).toBe('');
});

test('each row has a cell for each column', () => {
  for (const { head, rows } of conversions) {
    expect(rows.filter(({ cells }) => cells.length !== head.length - 1)).toEqual([]);
  }
});
