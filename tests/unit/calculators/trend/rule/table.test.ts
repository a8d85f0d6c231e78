import { describe, expect, test } from 'vitest';
import type { TableOptions } from '../../../../../src/calculators/trend/rule/input.ts';
import { readTrendTable } from '../../../../../src/calculators/trend/rule/table.ts';
import { formatDay } from '../../../../../src/kernel/reading/calendar-date.ts';
import { formatReading } from '../../../../../src/kernel/reading/format-reading.ts';

const read = (text: string, how: TableOptions = {}) =>
  readTrendTable(
    text.split('\n').map((line) => line.split(';')),
    how,
  );
const rowsOf = (text: string, how: TableOptions = {}) =>
  read(text, how).rows.map(
    (row) => `${formatDay(row.day)} ${formatReading(row.reading)} ${formatReading(row.temperature)}`,
  );
const reasonsOf = (text: string, how: TableOptions = {}) =>
  read(text, how).keptOut.map(({ line, code }) => `${line} ${code}`);

describe('columns', () => {
  test('without heads: date, reading, temperature', () => {
    expect(rowsOf('2021-05-03;450M;25')).toEqual(['2021-05-03 450 MΩ 25 °C']);
  });

  test('heads name the columns in any order, and their units', () => {
    const text = 'Tester;Winding temp. (°F);Insulation [GOhm];Date of test\nA;77;1.2;2021-05-03';
    expect(rowsOf(text)).toEqual(['2021-05-03 1.2 GΩ 25.0 °C']);
    expect(read(text).unused).toEqual(['Tester']);
  });

  test('a unit in the cell takes precedence over that of the head', () => {
    expect(rowsOf('Date;R (MΩ);Temp\n2021-05-03;800 kΩ;20')).toEqual(['2021-05-03 800 kΩ 20 °C']);
  });

  test.each([
    ['Date;R (MΩ)\n2021-05-03;800', 'column-missing'],
    ['Date;R1 (MΩ);R2 (MΩ);Temp\n2021-05-03;800;700;20', 'column-twice'],
  ])('%j: nothing is read', (text, problem) => {
    expect(read(text)).toEqual({ rows: [], keptOut: [], unused: [], problem });
  });

  test('a head and an answer that name different units stop everything', () => {
    const text = 'Date;R (MΩ);Temp\n2021-05-03;800;20';
    expect(read(text, { bareOhms: 'kΩ' }).problem).toBe('unit-contradicts');
    expect(read(text, { bareOhms: 'MΩ' }).problem).toBeUndefined();
  });

  test('a list that is too long is refused whole', () => {
    const rows = (count: number) => Array.from({ length: count }, () => ['2021-05-03', '1M', '20']);
    expect(readTrendTable(rows(1000)).problem).toBeUndefined();
    expect(readTrendTable(rows(1001))).toEqual({ rows: [], keptOut: [], unused: [], problem: 'too-many-rows' });
  });
});

describe('excluded rows', () => {
  test.each([
    ['3/5/2021;450M;25', '1 date-ambiguous'],
    ['2021-05-03;450;25', '1 reading-unreadable'],
    ['2021-05-03;;25', '1 reading-missing'],
    ['2021-05-03;OL;25', '1 bound-not-noted'],
    ['2021-05-03;450M', '1 temperature-missing'],
    ['2021-05-03;450M;warm', '1 temperature-unreadable'],
    ['2021-05-03;450;5;25', '1 too-many-cells'],
    ['nothing', '1 date-unreadable'],
  ])('%s: %s', (text, reason) => {
    expect(reasonsOf(text)).toEqual([reason]);
  });

  test('a future day, and the same row twice', () => {
    expect(reasonsOf('2021-05-03;450M;25', { today: 18_000 })).toEqual(['1 date-in-future']);
    expect(reasonsOf('2021-05-03;450M;25\n\n2021-05-03;0.45 GΩ;25')).toEqual([]);
    expect(reasonsOf('2021-05-03;450M;25\n\n2021-05-03;450M;25')).toEqual(['3 same-as-before']);
  });

  test('every line is read, kept out or blank', () => {
    const text = '2021-05-03;450M;25\n;;\n2020-05-03;x;25\n2019-05-03;1G;25';
    const { rows, keptOut } = read(text);
    expect(rows.map(({ line }) => line)).toEqual([4, 1]);
    expect(keptOut.map(({ line }) => line)).toEqual([3]);
  });
});

describe('numbers', () => {
  test('a comma before three digits is asked about until the mark is known', () => {
    expect(reasonsOf('2021-05-03;1,250 MΩ;25')).toEqual(['1 reading-unreadable']);
    expect(rowsOf('2021-05-03;1,250 MΩ;25', { decimalMark: ',' })).toEqual(['2021-05-03 1.250 MΩ 25 °C']);
    expect(rowsOf('2021-05-03;1,250 MΩ;25', { decimalMark: '.' })).toEqual(['2021-05-03 1.250 GΩ 25 °C']);
    expect(rowsOf('2021-05-03;1.250,5 kΩ;25,5', { decimalMark: ',' })).toEqual(['2021-05-03 1.2505 MΩ 25.5 °C']);
  });

  test('with a known mark no point is in doubt, and the other mark only separates thousands', () => {
    expect(reasonsOf('2021-05-03;450.000 MΩ;25')).toEqual(['1 reading-unreadable']);
    expect(rowsOf('2021-05-03;450.000 MΩ;25', { decimalMark: '.' })).toEqual(['2021-05-03 450.000 MΩ 25 °C']);
    expect(rowsOf('2021-05-03;450.000 MΩ;25', { decimalMark: ',' })).toEqual(['2021-05-03 450.000 GΩ 25 °C']);
    expect(rowsOf('2021-05-03;>450,000 MΩ;25', { decimalMark: ',' })).toEqual(['2021-05-03 >450 MΩ 25 °C']);
    // Half a megohm, or five hundred: the file says one thing and the cell another.
    expect(reasonsOf('2021-05-03;0.500 MΩ;25', { decimalMark: ',' })).toEqual(['1 reading-unreadable']);
    expect(reasonsOf('2021-05-03;0,500 MΩ;25', { decimalMark: '.' })).toEqual(['1 reading-unreadable']);
    expect(reasonsOf('2021-05-03;2,2 MΩ;25', { decimalMark: '.' })).toEqual(['1 reading-unreadable']);
  });
});

describe('what is kept of a row that is left out', () => {
  const kept = (text: string, how: TableOptions = {}) => read(text, how).keptOut[0];

  test('its line, its cells, and its day if that could be read', () => {
    const day = rowsDay('2021-05-03;450M;25');
    expect(kept('2021-05-03;;25')).toEqual({ line: 1, cells: ['2021-05-03', '', '25'], code: 'reading-missing', day });
    expect(kept('once;450M;25')).toEqual({ line: 1, cells: ['once', '450M', '25'], code: 'date-unreadable' });
  });

  test('what the reader of its cell says', () => {
    expect(kept('2021-05-03;good;25')?.detail).toContain('good');
    expect(kept('2021-05-03;450M;warm')?.detail).toContain('warm');
    expect(Object.keys(kept('2021-05-03;;25') ?? {})).not.toContain('detail');
  });

  test('a date after today is in the future, today is not', () => {
    const today = rowsDay('2021-05-03;450M;25');
    expect(kept('2021-05-04;450M;25', { today })?.code).toBe('date-in-future');
    expect(kept('2021-05-03;450M;25', { today })).toBeUndefined();
  });

  test('an under-range has a figure above zero', () => {
    expect(reasonsOf('2021-05-03;<1M;25')).toEqual([]);
    expect(reasonsOf('2021-05-03;<0;25')).toEqual(['1 bound-not-noted']);
  });

  test('an empty text is a table without rows', () => {
    expect(read('')).toEqual({ rows: [], keptOut: [], unused: [] });
    expect(read(' ; ;\n;')).toEqual({ rows: [], keptOut: [], unused: [] });
  });

  test('spaces around a cell say nothing', () => {
    expect(rowsOf('  2021-05-03 ; 450M ; 25 ; ')).toEqual(['2021-05-03 450 MΩ 25 °C']);
  });
});

const rowsDay = (text: string) => read(text).rows[0]?.day ?? Number.NaN;
