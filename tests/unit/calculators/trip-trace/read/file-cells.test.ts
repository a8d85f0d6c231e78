import { describe, expect, it } from 'vitest';
import { changed, head, plainNames, type ReadFile, readsEach, withLast, without } from './files.ts';
import { readText, rows } from './read-text.ts';

// No source: the shapes that exports of recorders, scopes and spreadsheets have, and files that are chosen by mistake.

/** Cells and lines, with what must have been understood. */
const read: ReadFile[] = [
  ['exponents', `${head}\n${rows().replace('0.125;', '1.25E-1;')}`, plainNames],
  ['a true minus sign', `${head}\n${rows().replaceAll('-', '−')}`, plainNames],
  [
    'groups of thousands',
    `${head}\n${rows(40, ';', ',')}\n5,000;1.234,5;-1.234,5;0,0`,
    ({ columns }) => expect(columns[1]?.[40]).toBe(1234.5),
  ],
  [
    'groups by narrow spaces',
    `${head}\n${rows()}\n5.0;1\u202f234.5;-1234.5;0`,
    ({ columns }) => expect(columns[1]?.[40]).toBe(1234.5),
  ],
  [
    'units in the cells',
    `${head}\n${rows()
      .split('\n')
      .map((row) =>
        row
          .split(';')
          .map((cell, i) => `${cell} ${i === 0 ? 'ms' : 'A'}`)
          .join(';'),
      )
      .join('\n')}`,
    plainNames,
  ],
  [
    'times of day',
    `${head}\n${rows()
      .split('\n')
      .map((row, i) => row.replace(/^[^;]*/, `12:03:04.${String(i).padStart(3, '0')}`))
      .join('\n')}`,
    ({ columns, clocks }) => {
      expect(clocks).toEqual([true, false, false, false]);
      expect(columns[0]?.[0]).toBe(12 * 3600 + 3 * 60 + 4);
      expect((columns[0]?.[39] ?? 0) - (columns[0]?.[0] ?? 0)).toBeCloseTo(0.039, 9);
    },
  ],
  [
    'dates before the times',
    `${head}\n${rows()
      .split('\n')
      .map((row, i) => row.replace(/^[^;]*/, `2026-03-24T08:00:${String(i).padStart(2, '0')}`))
      .join('\n')}`,
    ({ columns }) => expect(columns[0]?.[39]).toBe(8 * 3600 + 39),
  ],
  ['states in words', `${head};Enable\n${withLast(';ON')}`, ({ columns }) => expect(columns[4]?.[3]).toBe(1)],
  [
    'values that are not in every row',
    `${head};Bus\n${rows()
      .split('\n')
      .map((row, i) => `${row};${i % 4 === 0 ? '560' : ''}`)
      .join('\n')}`,
    ({ columns, blanks, rows: count }) => {
      expect([count, blanks, columns[4]?.[4]]).toEqual([40, 30, 560]);
      expect(columns[4]?.[5]).toBeNaN();
    },
  ],
  [
    'values that the recorder lacked',
    `${head}\n${changed(rows(), 5, '0.625;NaN;---;n/a')}`,
    ({ columns, blanks }) => {
      expect(blanks).toBe(3);
      expect(columns[1]?.[5]).toBeNaN();
    },
  ],
  [
    'values beyond the recorder’s range',
    `${head}\n${changed(rows(), 5, '0.625;Inf;-Infinity;1.#INF')}`,
    ({ columns, blanks, remarked }) => {
      expect([blanks, remarked]).toEqual([3, 0]);
      expect(columns[2]?.[5]).toBeNaN();
    },
  ],
  [
    'a figure that is too large to be computed with',
    `${head}\n${changed(rows(), 5, '0.625;1e999;-1e999;1')}`,
    ({ columns, blanks }) => {
      expect([blanks, columns[3]?.[5]]).toEqual([2, 1]);
      expect(columns[1]?.[5]).toBeNaN();
    },
  ],
  [
    'empty columns at the end',
    `${head};;\n${withLast(';;')}`,
    ({ columns, rows: count, remarked }) => {
      expect([count, remarked, columns[1]?.[0]]).toEqual([40, 0, 8]);
      expect(columns[4]?.every(Number.isNaN)).toBe(true);
    },
  ],
  [
    'an index of samples in place of a time',
    `Sample;iU;iV;iW\n${rows()
      .split('\n')
      .map((row, i) => row.replace(/^[^;]*/, String(i)))
      .join('\n')}`,
    ({ columns, names }) => expect([names[0], columns[0]?.[39]]).toEqual(['Sample', 39]),
  ],
  [
    'times in scientific notation with decimal commas',
    `${head}\n${rows(40, ';', ',').replace('0,125;', '1,25E-01;')}`,
    plainNames,
  ],
  [
    'cells in quotation marks, between commas',
    `"Time","iU","iV","iW"\n"${rows(40, '","', '.', '"\n"')}"\n`,
    plainNames,
  ],
  ['a summary behind the rows', `${head}\n${rows()}\n\nMax;8;8;8\nMin;-8;-8;-8`, without([43, 44], 'not-a-number', 40)],
  ['numbers in percent signs', `${head}\n${rows().replace(/;([^;\n]*)/g, ';$1 %')}`, plainNames],
  [
    'true and false',
    `${head};Enable\n${withLast(';TRUE')}`,
    ({ columns }) => expect([columns.length, columns[4]?.[7]]).toEqual([5, 1]),
  ],
  ['a blank that does not break, before the names', `\u00a0Time;iU;iV;iW\n${rows()}`, plainNames],
  ['a row in another base', `${head}\n${changed(rows(), 5, '0x1F;1;2;3')}`, without([7], 'not-a-number', 39)],
  ['a row that is cut short', `${head}\n${changed(rows(), 5, '0.625;4.3')}`, without([7], 'cells-missing', 39)],
  ['a row with too much', `${head}\n${changed(rows(), 5, '0.625;4.3;1;2;3')}`, without([7], 'cells-too-many', 39)],
  ['a message between the rows', `${head}\n${changed(rows(), 5, 'trip;F;0;1')}`, without([7], 'not-a-number', 39)],
  ['an export that broke off within a row', `${head}\n${rows()}\n5.0;1.2`, without([42], 'cells-missing', 40)],
  ['two recordings in one file', `${head}\n${rows()}\n${head}\n${rows()}`, without([42], 'second-recording', 40)],
  ['a line of noise after the rows', `${head}\n${rows()}\n${'x'.repeat(5000)}`, without([42], 'cells-missing', 40)],
];

describe('values are understood, and lines that are none are left out by name', () => readsEach(read));

it('reads 200,001 rows', () => {
  const file = readText(`${head}\n${'0.1;1;2;-3\n'.repeat(200_001)}`);
  expect(file).toMatchObject({
    ok: true,
    table: { rows: 200_001, remarked: 0 },
  });
});

it('takes the person’s answer for the decimal mark', () => {
  const mixed = `${head}\n${rows(20)}\n${rows(20, ';', ',')}`;
  const file = readText(mixed, undefined, ',');
  expect(file).toMatchObject({ ok: true, table: { mark: ',', rows: 20 } });
});

it('counts every line that it leaves out, and lists the first', () => {
  const text = `${head}\n${rows(60)}\n${Array.from({ length: 30 }, () => '1;2').join('\n')}`;
  const file = readText(text);
  if (!file.ok) throw new Error(file.problem);
  expect([file.table.rows, file.table.remarked, file.table.remarks.length]).toEqual([60, 30, 20]);
});
