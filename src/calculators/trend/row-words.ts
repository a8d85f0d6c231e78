import { limitValue } from '../../kernel/limits.ts';
import type { KeptOutCode, KeptOutRow, TableProblem } from './rule/input.ts';

/** Why a row is not used, and what to do. */
const reasons: Record<KeptOutCode, string> = {
  'date-missing': 'No date. Add the day of the reading.',
  'date-unreadable': 'The date can’t be read. Write it like 2021-05-03 or 3 May 2021.',
  'date-ambiguous': 'Day first or month first? Both are possible: answer the question below the rows.',
  'date-against-order': 'This date has the other order of day and month than you said. Write it like 2021-05-03.',
  'date-short-year': 'Write the year with four digits: with two it is not certain which number is the year.',
  'date-no-day': 'The day is missing. If only the month is known, give the 15th, and say so in your record.',
  'date-serial':
    'This looks like a spreadsheet’s number for a day. Give the column the format of a date, then copy again.',
  'date-impossible': 'There is no such day. Check the figures.',
  'date-out-of-range': 'The year is out of range. Check it.',
  'date-in-future': 'This day has not come yet. Check the date.',
  'reading-missing': 'No reading. Leave the row out, or add what the tester showed.',
  'reading-unreadable': 'The reading can’t be read.',
  'bound-not-noted': 'Over- or under-range without the range: that is no bound. Write it like >700 MΩ.',
  'temperature-missing': 'No winding temperature: the reading can’t be carried to one temperature.',
  'temperature-unreadable': 'The temperature can’t be read.',
  'temperature-out-of-validity': 'The temperature lies outside what the chosen correction holds for.',
  'too-many-cells':
    'More cells than columns. A decimal comma may have split a number: choose another separator, or put quotation marks around it.',
  'same-as-before': 'The same day, reading and temperature stand above already. It counts once.',
};

/** The message of the cell's own reader is more exact, if there is one. */
export function keptOutReason({ code, detail }: KeptOutRow): string {
  return detail ?? reasons[code];
}

/** Why no row of the table could be read. */
export const tableProblems: Record<TableProblem, string> = {
  'too-many-rows': `The list is longer than ${limitValue('trend-rows')} rows. Nothing of it was used: keep one reading a week or a month.`,
  'quote-not-closed':
    'A quotation mark is opened and not closed, so that it is not certain where a cell ends. Nothing was used: mend it first.',
  'column-missing':
    'The heads do not name all three columns. Name them date, resistance and temperature; or leave the heads out and keep that order.',
  'column-twice':
    'Two columns are called alike, so that it is not certain which one is meant. Leave one date, one resistance and one temperature: for three phases, the lowest.',
  'unit-contradicts':
    'The head of the resistance column and your answer below the rows name different units. Correct one of them.',
};
