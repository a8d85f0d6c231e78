import type { DecimalMark } from './number-cell.ts';
import type { Separator } from './split-cells.ts';

const zero = 48;
const nine = 57;
const plus = 43;
const minus = 45;
const blank = 32;

/** Digits whose number is exact, and with it its quotient by a power of ten. */
const mostDigits = 15;
const powers = Array.from({ length: mostDigits + 1 }, (_, power) => 10 ** power);

/**
 * Reads a row of plain numbers (`-12.345`, no exponent, nothing else) into `out`, without a text for each cell: nearly every row
 * of a recording is one, and there are hundreds of thousands. False if the row is anything else; `out` then has no meaning.
 * The numbers are those that `Number` makes of the same texts.
 */
export function readPlainRow(line: string, separator: Separator, mark: DecimalMark, out: Float64Array): boolean {
  if (separator === 'space') return false;
  const between = separator.charCodeAt(0);
  const point = mark.charCodeAt(0);
  let at = 0;
  for (let column = 0; column < out.length; column++) {
    while (line.charCodeAt(at) === blank) at++;
    const sign = line.charCodeAt(at);
    if (sign === minus || sign === plus) at++;
    let [figure, digits, decimals] = [0, 0, -1];
    for (; at < line.length; at++) {
      const code = line.charCodeAt(at);
      if (code >= zero && code <= nine) {
        figure = figure * 10 + code - zero;
        digits++;
        if (decimals >= 0) decimals++;
      } else if (code === point && decimals < 0) decimals = 0;
      else break;
    }
    if (digits === 0 || digits > mostDigits) return false;
    const value = decimals > 0 ? figure / (powers[decimals] ?? 1) : figure;
    out[column] = sign === minus ? -value : value;
    while (line.charCodeAt(at) === blank) at++;
    if (column + 1 < out.length && line.charCodeAt(at++) !== between) return false;
  }
  return at >= line.length;
}
