import { describe, expect, it } from 'vitest';
import { columnsOf, isHead } from '../../../../../src/calculators/trend/rule/columns.ts';
import type { TableOptions } from '../../../../../src/calculators/trend/rule/input.ts';
import { readTrendTable } from '../../../../../src/calculators/trend/rule/table.ts';

const columns = (head: string) => columnsOf(head.split(';'));

describe('whether a first row is a head', () => {
  it.each<[row: string, is: boolean]>([
    ['Date;R (MΩ);Temp', true],
    ['Date;R (MΩ);;Temp', true],
    ['nothing;of;this', false],
    ['nothing;450 MΩ;25 °C', false],
    ['nothing;>1 GΩ;25 °C', false],
    ['2021-05-03;R 450M;temp 25', false],
    ['R 450M;temp 25;2021-05-03', false],
    ['3/5/2021;R 450M;temp 25', false],
    ['2021-02-30;R 450M;temp 25', false],
  ])('%s: %s', (row, is) => {
    expect(isHead(row.split(';'))).toBe(is);
  });
});

describe('which column is which', () => {
  it.each<[head: string, places: [date: number, reading: number, temperature: number]]>([
    ['Date;R;Temp', [0, 1, 2]],
    ['Tester;IR;Temp;Day', [3, 1, 2]],
    ['Ambient temp;Winding (stator) temp;Insulation;Date', [3, 2, 1]],
    ['Ambient temp;Temperature of winding;Insulation;Date', [3, 2, 1]],
    ['When;Riso;Temp at that time', [0, 1, 2]],
    ['Day;Reading;Celsius', [0, 1, 2]],
    ['Day;Value in ohm;°F', [0, 1, 2]],
    ['Date;Resistance;Fahrenheit', [0, 1, 2]],
  ])('%s', (head, places) => {
    const found = columns(head);
    expect('problem' in found ? found.problem : [found.date, found.reading, found.temperature]).toEqual(places);
  });

  it('the others are named, those without a head are not', () => {
    expect(columns('Date;R;;Temp;Remark')).toMatchObject({ width: 5, unused: ['Remark'] });
  });
});

describe('the unit in a head', () => {
  it.each<[head: string, ohms: string | undefined]>([
    ['R (MΩ)', 'MΩ'],
    ['R [GOhm]', 'GOhm'],
    ['R ( MΩ )', 'MΩ'],
    ['R, MΩ', 'MΩ'],
    ['R,MΩ', 'MΩ'],
    ['R/MΩ', 'MΩ'],
    ['R / MΩ', 'MΩ'],
    ['R in MΩ', 'MΩ'],
    ['R MΩ', 'MΩ'],
    ['R MΩ ', 'MΩ'],
    ['R  MΩ', 'MΩ'],
    ['R (U to PE) MΩ', 'MΩ'],
    ['R MΩ after 1 minute', undefined],
    ['R (U to PE)', undefined],
    ['R', undefined],
  ])('%j', (head, ohms) => {
    const found = columns(`Date;${head};Temp`);
    expect('problem' in found ? found.problem : found.bareOhms).toBe(ohms);
  });

  it('of the temperature', () => {
    expect(columns('Date;R;Temperature, °F')).toMatchObject({ bareTemperature: '°F' });
    expect(columns('Date;R;Temp')).not.toHaveProperty('bareTemperature');
  });
});

describe('a table with a head', () => {
  const read = (text: string, how: TableOptions = {}) =>
    readTrendTable(
      text.split('\n').map((line) => line.split(';')),
      how,
    );

  it('has no row of that name', () => {
    const { rows, keptOut } = read('Date;R (MΩ);Temp\n2021-05-03;800;20');
    expect([rows.length, keptOut]).toEqual([1, []]);
  });

  it('that names no unit does not contradict the chosen one', () => {
    const { rows, problem } = read('Date;R;Temp\n2021-05-03;800;20', { bareOhms: 'MΩ', bareTemperature: 'C' });
    expect([rows.length, problem]).toEqual([1, undefined]);
  });

  it('a row that is left out has a day only if it could be read', () => {
    expect(Object.keys(read('once;450M;25').keptOut[0] ?? {})).toEqual(['line', 'cells', 'code']);
  });
});
