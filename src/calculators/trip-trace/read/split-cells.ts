/** What separates the cells of a row; `space` is any number of blanks. */
export type Separator = '\t' | ';' | ',' | '|' | 'space';

/** Whether a quotation mark is still open at the end of a line: the row goes on in the next one. */
export function isOpen(line: string): boolean {
  if (!line.includes('"')) return false;
  let marks = 0;
  for (let place = line.indexOf('"'); place >= 0; place = line.indexOf('"', place + 1)) marks++;
  return marks % 2 === 1;
}

/** The cells of a whole row, without the quotation marks around them. */
export function splitCells(row: string, separator: Separator): string[] {
  if (separator === 'space') return row.trim().split(/\s+/);
  if (!row.includes('"')) return row.split(separator);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let place = 0; place < row.length; place++) {
    const letter = row[place];
    if (quoted && letter === '"' && row[place + 1] === '"') {
      cell += '"';
      place++;
    } else if (letter === '"') quoted = !quoted;
    else if (letter === separator && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += letter;
  }
  return [...cells, cell];
}
