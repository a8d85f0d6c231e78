import { limitRange } from '../limits.ts';

export const millisecondsADay = 86_400_000;

/** Which of two numbers is the day in an ambiguous date: 3/5/2021. */
export type DateOrder = 'day-first' | 'month-first';

export type DateErrorCode =
  | 'date-missing'
  | 'date-unreadable'
  | 'date-ambiguous'
  | 'date-against-order'
  | 'date-short-year'
  | 'date-no-day'
  | 'date-serial'
  | 'date-impossible'
  | 'date-out-of-range';

/** `day` counts days from 1970-01-01, with the time of day as its fraction if one was given. */
type DateResult = { ok: true; day: number } | { ok: false; code: DateErrorCode };

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const timeOfDay = /[ T]+(\d{1,2}):(\d{2})(?::\d{2}(?:[.,]\d+)?)?(?: ?(am|pm))?(?: ?(?:z|utc|[+-]\d{2}:?\d{2}))?$/i;

const fail = (code: DateErrorCode): DateResult => ({ ok: false, code });

/**
 * Reads a date as people and spreadsheets write it: 2021-05-03, 2021/5/3, 3 May 2021, May 3, 2021, and with `order`
 * also 3/5/2021, 3.5.2021 and 3-5-2021. Without `order` such a date is read only if both numbers are the same; an
 * unambiguous one (25/3/2021) is read, but not against the stated order. Never a guess.
 */
export function parseDate(text: string, order?: DateOrder): DateResult {
  const typed = text.trim().replaceAll(/\s+/g, ' ');
  if (typed === '' || /^[-–—]+$/.test(typed)) return fail('date-missing');
  const time = timeOfDay.exec(typed);
  const fraction = time === null ? 0 : fractionOf(time);
  if (fraction === undefined) return fail('date-unreadable');
  const date = time === null ? typed : typed.slice(0, time.index);
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(date);
  if (yearFirst) return dayOf(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]), fraction);
  const yearLast = /^(\d{1,2})([-/. ])(\d{1,2})\2 ?(\d{4})$/.exec(date.replaceAll('. ', '.'));
  if (yearLast) return inOrder(Number(yearLast[1]), Number(yearLast[3]), Number(yearLast[4]), fraction, order);
  const worded = wordedDate(date);
  if (worded) return dayOf(...worded, fraction);
  return fail(whyUnreadable(date));
}

function fractionOf([, hours, minutes, half]: RegExpExecArray): number | undefined {
  const [hour, minute] = [Number(hours), Number(minutes)];
  if (minute > 59 || hour > (half ? 12 : 24)) return undefined;
  const since = half ? (hour % 12) + (half.toLowerCase() === 'pm' ? 12 : 0) : hour;
  return (since * 60 + minute) / 1440;
}

function inOrder(first: number, second: number, year: number, fraction: number, order?: DateOrder): DateResult {
  if (first > 12 && second > 12) return fail('date-impossible');
  const unambiguous: DateOrder | undefined = first > 12 ? 'day-first' : second > 12 ? 'month-first' : undefined;
  if (unambiguous !== undefined && order !== undefined && unambiguous !== order) return fail('date-against-order');
  const known = unambiguous ?? order ?? (first === second ? 'day-first' : undefined);
  if (known === undefined) return fail('date-ambiguous');
  return known === 'day-first' ? dayOf(year, second, first, fraction) : dayOf(year, first, second, fraction);
}

/** "3 May 2021", "3-May-2021", "May 3, 2021". */
function wordedDate(date: string): [year: number, month: number, day: number] | undefined {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[-/. ]+([a-z]{3,9})[-/., ]+(\d{4})$/i.exec(date);
  const monthFirst = /^([a-z]{3,9})[. ]+(\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/i.exec(date);
  const [word, day, year] = dayFirst
    ? [dayFirst[2], dayFirst[1], dayFirst[3]]
    : [monthFirst?.[1], monthFirst?.[2], monthFirst?.[3]];
  const month = months.indexOf((word ?? '').slice(0, 3).toLowerCase());
  return month < 0 ? undefined : [Number(year), month + 1, Number(day)];
}

function whyUnreadable(date: string): DateErrorCode {
  if (/^\d{1,2}[-/. ]\d{1,2}[-/. ]\d{2}$/.test(date) || /[a-z][-/., ]+\d{2}$/i.test(date)) return 'date-short-year';
  if (/^\d{4}([-/.]\d{1,2})?$/.test(date) || /^(\d{1,2}[-/.]|[a-z]{3,9} )\d{4}$/i.test(date)) return 'date-no-day';
  return /^\d{5}([.,]\d+)?$/.test(date) ? 'date-serial' : 'date-unreadable';
}

function dayOf(year: number, month: number, day: number, fraction: number): DateResult {
  const date = new Date(Date.UTC(year, month - 1, day));
  const real = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  if (!real) return fail('date-impossible');
  const { from, to } = limitRange('trend-years');
  if (year < from || year > to) return fail('date-out-of-range');
  return { ok: true, day: date.getTime() / millisecondsADay + fraction };
}

/** Whether a record can have this day, in days from 1970-01-01; false for NaN. */
export function isDay(day: number): boolean {
  const { from, to } = limitRange('trend-years');
  const year = new Date(day * millisecondsADay).getUTCFullYear();
  return year >= from && year <= to;
}

/** `2021-05-03`. Throws a RangeError for a number that is not a day (`isDay`). */
export function formatDay(day: number): string {
  return new Date(Math.floor(day) * millisecondsADay).toISOString().slice(0, 10);
}
