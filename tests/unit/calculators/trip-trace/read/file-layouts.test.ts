import { describe, expect } from 'vitest';
import { bytes, head, joined, named, plainNames, type ReadFile, readsEach, utf16, whole, withLast } from './files.ts';
import { rows } from './read-text.ts';

// No source: the shapes that exports of recorders, scopes and spreadsheets have, and files that are chosen by mistake.

/** Layouts, with what must have been understood. */
const read: ReadFile[] = [
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
];

describe('separators, names, line ends and letters are understood', () => readsEach(read));
