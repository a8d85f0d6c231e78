import { describe, expect, it } from 'vitest';
import { fileProblems } from '../../../../../src/calculators/trip-trace/read/file-problems.ts';
import type { ReadProblem } from '../../../../../src/calculators/trip-trace/read/trace-table.ts';
import { bytes, changed, head, joined, readOf } from './files.ts';
import { readText, rows } from './read-text.ts';

// No source: the shapes that exports of recorders, scopes and spreadsheets have, and files that are chosen by mistake.

/** Files that are refused, with the reason. */
const refused: [string, string | Uint8Array, ReadProblem][] = [
  ['an empty file', bytes(), 'empty'],
  ['blank lines only', '\n\n  \n', 'empty'],
  ['a workbook', joined(bytes(0x50, 0x4b, 3, 4), '....[Content_Types].xml....'), 'spreadsheet'],
  ['an old workbook', bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1), 'spreadsheet'],
  ['a zip archive', joined(bytes(0x50, 0x4b, 3, 4), '....trip.csv....'), 'compressed'],
  ['a gzip file', bytes(0x1f, 0x8b, 8, 0, 1, 2), 'compressed'],
  ['a PDF', '%PDF-1.7\n1 0 obj', 'pdf'],
  ['a picture', bytes(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10), 'picture'],
  ['a photograph', bytes(0xff, 0xd8, 0xff, 0xe0, 0, 16), 'picture'],
  ['a web page', '<!doctype html><html><body>1;2;3', 'web-page'],
  ['an XML file', '<?xml version="1.0"?><trace><s>1</s></trace>', 'web-page'],
  ['a JSON file', '{ "samples": [[0, 1, 2], [1, 2, 3]] }', 'json'],
  ['a list in JSON', '[\n  [0, 1, 2],\n  [1, 2, 3]\n]', 'json'],
  ['a recorder’s own format', bytes(1, 2, 3, 0, 0, 0, 200, 17, 5, 6, 7, 0, 1, 9), 'binary'],
  ['a letter', 'Dear Ines,\nthe recording is on the stick.\nYours\n', 'no-numbers'],
  ['names without rows', `${head}\n`, 'no-numbers'],
  ['one column', Array.from({ length: 40 }, (_, i) => (i / 8).toFixed(3)).join('\n'), 'one-column'],
  ['commas for both', `Time,iU,iV,iW\n${rows(40, ',', ',')}`, 'commas-both-ways'],
  ['commas for both, without names', rows(40, ',', ','), 'commas-both-ways'],
  ['both decimal marks', `${head}\n${rows(20)}\n${rows(20, ';', ',')}`, 'marks-mixed'],
  ['signals in rows', Array.from({ length: 4 }, () => rows(400).replace(/[\n]/g, ';')).join('\n'), 'too-many-columns'],
  ['a quotation mark that stays open', `${head}\n${changed(rows(), 3, '0.375;"5.1;1;2')}`, 'quote-not-closed'],
  ['a line of thirty megabytes', `${head}\n${rows()}\n${'x'.repeat(30_000_000)}`, 'line-too-long'],
  ['all samples in one line', '1.5;'.repeat(200_000), 'line-too-long'],
  ['zeros behind the rows, as a full card leaves them', `${head}\n${rows()}\n${'\0'.repeat(3000)}`, 'binary'],
  ['a table of a web page', '<table><tr><td>0.1</td><td>1</td></tr></table>', 'web-page'],
  ['a formatted letter', '{\\rtf1\\ansi the recording}', 'no-numbers'],
  ['a big archive of a recorder', joined(bytes(0x37, 0x7a, 0xbc, 0xaf, 0x27, 0x1c), 'x'), 'compressed'],
  ['numbers in words', Array.from({ length: 40 }, () => 'one;two;three').join('\n'), 'no-numbers'],
  ['a handful of rows', `${head}\n${rows(6)}`, 'too-few-rows'],
];

describe('is refused with a reason that says what to do', () => {
  it.each(refused)('%s', (_, content, problem) => {
    expect(readOf(content)).toMatchObject({ ok: false, problem });
    expect(fileProblems[problem]).toMatch(/^[A-Z].{30,}[.;]?/);
  });

  it('a file with more rows than are taken, whole', () => {
    const line = '0.1;1;2;-3\n';
    expect(readText(`${head}\n${line.repeat(500_001)}`)).toMatchObject({
      ok: false,
      problem: 'too-many-rows',
    });
  });

  it('a line that is too long, with its number', () => {
    expect(readText(`${head}\n${rows()}\n${'x'.repeat(1_000_000)}`)).toMatchObject({ line: 42 });
  });
});
