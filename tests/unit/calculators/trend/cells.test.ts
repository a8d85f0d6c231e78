import { expect, test } from 'vitest';
import { cellsOf, withRow } from '../../../../src/calculators/trend/cells.ts';
import { decode } from '../../../../src/calculators/trend/read-file.ts';

test.each([
  ['from a spreadsheet', '2021-05-03\t450M\t25\n2022-05-03\t440M\t24'],
  ['semicolons', '2021-05-03;450M;25\r\n2022-05-03;440M;24'],
  ['commas', '2021-05-03,450M,25\n2022-05-03,440M,24'],
  ['quoted', '"2021-05-03","450M","25"\n"2022-05-03","440M","24"'],
  ['with a byte order mark', '\ufeff2021-05-03;450M;25\n2022-05-03;440M;24'],
])('%s', (_, text) => {
  expect(cellsOf(text)).toEqual([
    ['2021-05-03', '450M', '25'],
    ['2022-05-03', '440M', '24'],
  ]);
});

test('a quoted cell keeps its decimal comma, its line break and its quotation marks', () => {
  expect(cellsOf('2021-05-03,"2,2 MΩ","25 ""about"""')).toEqual([['2021-05-03', '2,2 MΩ', '25 "about"']]);
  expect(cellsOf('a;"b\nc";d')).toEqual([['a', 'b\nc', 'd']]);
});

test('with an unclosed quotation mark nothing is read, so that no rows are lost', () => {
  expect(cellsOf('2021-05-03;"450M;25\n2022-05-03;440M;24')).toBeUndefined();
});

test('a stated separator holds, and the numbers of the lines stay', () => {
  expect(cellsOf('sep=;\n2021-05-03;4,5 MΩ;25')).toEqual([[''], ['2021-05-03', '4,5 MΩ', '25']]);
});

test('an added row has the separator of the others', () => {
  expect(withRow('', ['a', 'b', 'c'])).toBe('a\tb\tc\n');
  expect(withRow('1;2;3', ['a', 'b', 'c'])).toBe('1;2;3\na;b;c\n');
  expect(withRow('1,2,3\n', ['a', '2,2', 'c'])).toBe('1,2,3\na,"2,2",c\n');
});

test('files of spreadsheets are decoded, whichever way they were written', () => {
  const text = '25 °C';
  const wide = new Uint8Array([0xff, 0xfe, ...new Uint8Array(Uint16Array.from(text, (c) => c.charCodeAt(0)).buffer)]);
  expect(decode(new TextEncoder().encode('25 °C, 3 MΩ'))).toBe('25 °C, 3 MΩ');
  expect(decode(wide).replace('\ufeff', '')).toBe(text);
  expect(decode(Uint8Array.from(text, (c) => c.charCodeAt(0)))).toBe(text);
});
