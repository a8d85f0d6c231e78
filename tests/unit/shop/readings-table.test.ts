import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvOf } from '../../../src/kernel/words/csv.ts';
import { readingColumns, readingRows } from '../../../src/shop/file/readings-table.ts';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { driveOnly, visitOf } from '../../support/marrow-bay-visits.ts';

const rowsOf = (machine = 'Marrow Bay line 2 (invented)') => {
  const visit = visitOf(driveOnly, { machine });
  return readingRows(evaluate(visit, visit.changedAt));
};
const column = (name: (typeof readingColumns)[number]) => readingColumns.indexOf(name);

test('one row a reading: as typed, in base units, with time, step and verdict', () => {
  const short = rowsOf().find((row) => row[column('field')] === 'minusV');
  expect(short?.slice(0, 4)).toEqual(['marrow-bay-1', 'Marrow Bay line 2 (invented)', 'Lift', 'Marrow Bay Glassworks']);
  expect(short?.[column('typed')]).toBe('3.8 Ω');
  expect(short?.[column('value')]).toBe(3.8);
  expect(short?.[column('unit')]).toBe('Ω');
  expect(short?.[column('verdict of the step')]).toBe('no-go');
  const over = rowsOf().find((row) => row[column('typed')] === '>700M');
  expect(over?.slice(column('kind'), column('measured at'))).toEqual(['over range', '', 700e6, '']);
});

test('as many rows as readings that were typed', () => {
  const visit = visitOf(driveOnly);
  const timed = Object.values(visit.steps).flatMap((step) => Object.keys(step?.readAt ?? {}));
  expect(rowsOf()).toHaveLength(timed.length);
});

test.each([
  ['=HYPERLINK("x")', '"\'=HYPERLINK(""x"")"'],
  ['+1', "'+1"],
  ['-1 Ω', "'-1 Ω"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['  =1+1', "'  =1+1"],
  ['450k', '450k'],
])('%j is no formula in a spreadsheet', (typed, cell) => {
  expect(csvOf([[typed]])).toBe(`\uFEFF${cell}\r\n`);
});

test('any text comes back from the table, and none begins a formula', () => {
  fc.assert(
    fc.property(fc.array(fc.string(), { minLength: 2, maxLength: 5 }), (texts) => {
      const [row = []] = csvParseRows(csvOf([texts]).slice(1));
      expect(row.map((cell, index) => (cell === `'${texts[index]}` ? texts[index] : cell))).toEqual(texts);
      expect(row.filter((cell) => /^\s*[=+\-@]/.test(cell))).toEqual([]);
    }),
  );
});
