import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDay, parseDate } from '../../../../src/kernel/reading/calendar-date.ts';

const iso = (text: string, order?: 'day-first' | 'month-first') => {
  const result = parseDate(text, order);
  return result.ok ? formatDay(result.day) : result.code;
};

describe('unambiguous dates', () => {
  test.each([
    '2021-05-03',
    '2021/5/3',
    '2021.05.03',
    '3 May 2021',
    '03-May-2021',
    '3. May 2021',
    'May 3, 2021',
    'May 3rd 2021',
    ' 2021-05-03 14:30 ',
    '2021-05-03T14:30:05Z',
    '2021-05-03 2:30 pm',
  ])('%s', (text) => {
    expect(iso(text)).toBe('2021-05-03');
  });

  test('the time of day is a fraction of the day', () => {
    expect(parseDate('1970-01-02 06:00')).toEqual({ ok: true, day: 1.25 });
    expect(parseDate('1970-01-02 6:00 pm')).toEqual({ ok: true, day: 1.75 });
  });
});

describe('day or month first', () => {
  test.each(['3/5/2021', '03.05.2021', '3-5-2021', '3. 5. 2021'])('%s is asked about, never guessed', (text) => {
    expect(iso(text)).toBe('date-ambiguous');
    expect(iso(text, 'day-first')).toBe('2021-05-03');
    expect(iso(text, 'month-first')).toBe('2021-03-05');
  });

  test('an unambiguous date is read, but not against the stated order', () => {
    expect(iso('25/3/2021')).toBe('2021-03-25');
    expect(iso('3/25/2021', 'month-first')).toBe('2021-03-25');
    expect(iso('25/3/2021', 'month-first')).toBe('date-against-order');
    expect(iso('5/5/2021')).toBe('2021-05-05');
  });
});

test.each([
  ['', 'date-missing'],
  ['–', 'date-missing'],
  ['soon', 'date-unreadable'],
  ['3/5/21', 'date-short-year'],
  ['3 May 21', 'date-short-year'],
  ['2021', 'date-no-day'],
  ['2021-05', 'date-no-day'],
  ['May 2021', 'date-no-day'],
  ['44319', 'date-serial'],
  ['2021-02-29', 'date-impossible'],
  ['31/31/2021', 'date-impossible'],
  ['1066-10-14', 'date-out-of-range'],
  ['2021-05-03 25:61', 'date-unreadable'],
])('%s: %s', (text, code) => {
  expect(iso(text)).toBe(code);
});

test('a day written as ISO is read back, and both orders agree with it', () => {
  fc.assert(
    fc.property(fc.integer({ min: -7000, max: 47_000 }), (day) => {
      const [year, month, date] = formatDay(day).split('-');
      expect(parseDate(formatDay(day))).toEqual({ ok: true, day });
      expect(parseDate(`${date}/${month}/${year}`, 'day-first')).toEqual({ ok: true, day });
      expect(parseDate(`${month}/${date}/${year}`, 'month-first')).toEqual({ ok: true, day });
    }),
  );
});

test('no text throws', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => typeof parseDate(text).ok === 'boolean'));
});
