import { describe, expect, it } from 'vitest';
import { fileProblems, type lineRemarks } from '../../../../../src/calculators/trip-trace/read/file-problems.ts';
import type { ReadProblem, TraceFile, TraceTable } from '../../../../../src/calculators/trip-trace/read/trace-table.ts';
import { readBytes, readText, rows } from './read-text.ts';

// No source: the shapes that exports of recorders, scopes and spreadsheets have, and files that are chosen by mistake.

const head = 'Time;iU;iV;iW';
const bytes = (...values: number[]) => Uint8Array.from(values);
const utf16 = (text: string, mark: boolean) => {
  const codes = [...(mark ? '\ufeff' : ''), ...text].map((letter) => letter.charCodeAt(0));
  return Uint8Array.from(codes.flatMap((code) => [code & 255, code >> 8]));
};
const joined = (first: Uint8Array, text: string) => Uint8Array.from([...first, ...new TextEncoder().encode(text)]);
const changed = (text: string, line: number, into: string) =>
  text
    .split('\n')
    .map((one, i) => (i === line ? into : one))
    .join('\n');
const withLast = (ends: string) =>
  rows()
    .split('\n')
    .map((row) => `${row}${ends}`)
    .join('\n');

type Check = (table: TraceTable) => void;
const whole: Check = ({ rows: count, remarked, columns }) => {
  expect([count, remarked, columns.length]).toEqual([40, 0, 4]);
  expect(columns[0]?.[39]).toBeCloseTo(4.875, 9);
  expect(columns[1]?.[0]).toBeCloseTo(8, 9);
  expect(columns[2]?.[0]).toBeCloseTo(-4, 9);
};
const named =
  (names: string[], units: string[]): Check =>
  (table) => {
    expect([table.names, table.units]).toEqual([names, units]);
    whole(table);
  };
const plainNames = named(['Time', 'iU', 'iV', 'iW'], ['', '', '', '']);
const without =
  (lines: number[], remark: keyof typeof lineRemarks, count: number): Check =>
  (table) => {
    expect(table.remarks).toEqual(lines.map((line) => ({ line, remark })));
    expect(table.rows).toBe(count);
  };

/** Files that are read, with what must have been understood. */
const read: [string, string | Uint8Array, Check][] = [
  ['semicolons and points', `${head}\n${rows()}\n`, plainNames],
  ['semicolons and decimal commas', `${head}\n${rows(40, ';', ',')}\n`, plainNames],
  ['commas and points', `Time,iU,iV,iW\n${rows(40, ',')}\n`, plainNames],
  ['tabs and points', `Time\tiU\tiV\tiW\n${rows(40, '\t')}\n`, plainNames],
  ['tabs and decimal commas', `Time\tiU\tiV\tiW\n${rows(40, '\t', ',')}\n`, plainNames],
  ['bars', `Time|iU|iV|iW\n${rows(40, '|')}\n`, plainNames],
  ['blanks', `${rows(40, '   ')}\n`, whole],
  [
    'no head',
    `${rows()}\n`,
    (table) => {
      whole(table);
      expect(table.names).toEqual(['', '', '', '']);
    },
  ],
  ['no line end at the end', `${head}\n${rows()}`, plainNames],
  ['line ends of other systems', `Time;iU;iV;iW\r\n${rows(40, ';', '.', '\r\n')}\r\n`, plainNames],
  ['carriage returns alone', `Time;iU;iV;iW\r${rows(40, ';', '.', '\r')}\r`, plainNames],
  ['blank lines between the rows', `${head}\n\n${rows(40, ';', '.', '\n\n')}\n\n`, plainNames],
  [
    'units in a row of their own',
    `${head}\ns;A;A;A\n${rows()}`,
    named(['Time', 'iU', 'iV', 'iW'], ['s', 'A', 'A', 'A']),
  ],
  [
    'units in brackets, in a row',
    `${head}\n[ms];[A];[A];[A]\n${rows()}`,
    named(['Time', 'iU', 'iV', 'iW'], ['ms', 'A', 'A', 'A']),
  ],
  [
    'units in the names',
    `Time [ms];iU [A];iV (A);iW/A\n${rows()}`,
    named(['Time [ms]', 'iU [A]', 'iV (A)', 'iW/A'], ['ms', 'A', 'A', 'A']),
  ],
  [
    'a preamble of a recorder',
    `Recorder of the Marrow Bay Glassworks\nDate;2026-03-24\nRate;8 kHz\n\n${head}\n${rows()}`,
    plainNames,
  ],
  [
    'comment lines',
    `# axis Bridge\n# invented\n${head}\n${rows()}\n# end\n`,
    (table) => {
      plainNames(table);
      expect(table.comments).toBe(1);
    },
  ],
  ['names in a comment line', `# Time;iU;iV;iW\n${rows()}`, plainNames],
  ['a byte order mark', joined(bytes(0xef, 0xbb, 0xbf), `${head}\n${rows()}`), plainNames],
  ['UTF-16 with a mark', utf16(`${head}\r\n${rows()}`, true), plainNames],
  ['UTF-16 without one', utf16(`${head}\n${rows()}`, false), plainNames],
  [
    'an older Western text',
    Uint8Array.from([...`Zeit;St\xf6rung;iV;iW\n${rows()}`].map((one) => one.charCodeAt(0))),
    named(['Zeit', 'Störung', 'iV', 'iW'], ['', '', '', '']),
  ],
  ['a line that states the separator', `sep=;\n${head}\n${rows()}`, plainNames],
  ['quoted names', `"Time";"iU";"iV";"iW"\n${rows()}`, plainNames],
  [
    'a separator within a quoted name',
    `"Time; s";iU;iV;iW\n${rows()}`,
    named(['Time; s', 'iU', 'iV', 'iW'], ['', '', '', '']),
  ],
  [
    'everything quoted, with decimal commas between commas',
    `Time,iU,iV,iW\n${rows(40, '","', ',')
      .split('\n')
      .map((row) => `"${row}"`)
      .join('\n')}`,
    plainNames,
  ],
  ['a separator at the end of every row', `${head};\n${withLast(';')}`, plainNames],
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

const readOf = (content: string | Uint8Array, piece?: number): TraceFile =>
  typeof content === 'string' ? readText(content, piece) : readBytes(content, piece);

it('says which line is too long', () => {
  expect(readText(`${head}\n${rows()}\n${'x'.repeat(1_000_000)}`)).toMatchObject({ line: 42 });
});

it('reads 200,001 rows', () => {
  const file = readText(`${head}\n${'0.1;1;2;-3\n'.repeat(200_001)}`);
  expect(file).toMatchObject({ ok: true, table: { rows: 200_001, remarked: 0 } });
});

it('there are at least eighty files', () => {
  expect(read.length + refused.length).toBeGreaterThanOrEqual(80);
});

describe('is read', () => {
  it.each(read)('%s', (_, content, check) => {
    const file = readOf(content);
    expect(file).toMatchObject({ ok: true });
    if (file.ok) check(file.table);
  });

  it.each(read)('the same in small pieces: %s', (_, content) => {
    expect(readOf(content, 4096)).toEqual(readOf(content));
    // The first piece must hold enough to tell what the file is; the others may be of any size.
    expect(readOf(content, 997)).toEqual(readOf(content));
  });
});

describe('is refused with a reason that says what to do', () => {
  it.each(refused)('%s', (_, content, problem) => {
    expect(readOf(content)).toMatchObject({ ok: false, problem });
    expect(fileProblems[problem]).toMatch(/^[A-Z].{30,}[.;]?/);
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

it('refuses a file with more rows than it takes, whole', () => {
  const line = '0.1;1;2;-3\n';
  expect(readText(`${head}\n${line.repeat(500_001)}`)).toMatchObject({ ok: false, problem: 'too-many-rows' });
});
