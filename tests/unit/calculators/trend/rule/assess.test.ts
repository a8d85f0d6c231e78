import { describe, expect, test } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import { findDrops } from '../../../../../src/calculators/trend/rule/drops.ts';
import type { TrendInput, TrendRow } from '../../../../../src/calculators/trend/rule/input.ts';
import { meetingOf, percentPerYear } from '../../../../../src/calculators/trend/rule/line-fit.ts';
import { formatDay } from '../../../../../src/kernel/reading/calendar-date.ts';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
} from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';

const firstDay = 16_000;

/** A reading per year from 2013-10, at the temperature of the limit; numbers are in MΩ. */
function record(readings: (number | Reading)[], more: Partial<TrendInput> = {}): TrendInput {
  const rows = readings.map((one, year): TrendRow => {
    const reading = typeof one === 'number' ? ohms(one * 1e6) : one;
    return { line: year + 1, cells: [], day: firstDay + year * 365.25, reading, temperature: celsius(40) };
  });
  const table = { rows, keptOut: [], unused: [] };
  return { table, correction: 'halving', machineClass: 'random-wound', ratedVoltage: missing, ...more };
}

const codes = (input: TrendInput) => assessTrend(input).findings.map(({ code }) => code);

/** Ten per cent less each year from 1000 MΩ: 0.0458 decades. */
const falling = Array.from({ length: 8 }, (_, year) => 1000 * 0.9 ** year);

describe('a steady fall', () => {
  test('is stated in percent per year, and a line without scatter has a range of zero', () => {
    const { fit } = assessTrend(record(falling));
    expect(percentPerYear(fit?.slope ?? 0)).toBeCloseTo(-10, 9);
    expect(percentPerYear(fit?.range.lo ?? 0)).toBeCloseTo(-10, 9);
  });

  test('meets the minimum where the line does: 478 MΩ to 5 MΩ at 10 % a year takes 43.3 years', () => {
    const { fit } = assessTrend(record(falling));
    if (fit === undefined) throw new Error('no fit');
    const { earliest, latest } = meetingOf(fit, 1e9 * 0.9 ** 7, 5e6);
    const years = Math.log(0.9 ** 7 * 200) / -Math.log(0.9);
    expect((earliest - fit.lastDay) / 365.25).toBeCloseTo(years, 6);
    expect((latest - fit.lastDay) / 365.25).toBeCloseTo(years, 6);
  });

  test('far above the minimum is a go for a year', () => {
    const { verdict, findings } = assessTrend(record(falling));
    expect(verdict).toBe('go');
    expect(formatDay(found(findings, 'trend-holds-until').day)).toBe(formatDay(firstDay + 8 * 365.25));
  });

  test('that meets the minimum within the year is undecided', () => {
    expect(codes(record([80, 50, 31, 20, 12, 7.6]))).toContain('trend-meets-within');
    expect(assessTrend(record([80, 50, 31, 20, 12, 7.6])).verdict).toBe('undecided');
  });

  test('below the minimum is a no-go, with few readings too', () => {
    expect(assessTrend(record([80, 50, 31, 20, 12, 4.9])).verdict).toBe('no-go');
    expect(assessTrend(record([4.9])).verdict).toBe('no-go');
  });
});

describe('it cannot decide', () => {
  test('from four readings, or from less than a year', () => {
    expect(codes(record([900, 880, 870, 860]))).toContain('trend-too-few');
    const weekly = record([900, 910, 890, 905, 900]);
    weekly.table.rows.forEach((row, week) => {
      row.day = firstDay + 7 * week;
    });
    expect(codes(weekly)).toContain('trend-too-short');
    expect(assessTrend(weekly).verdict).toBe('undecided');
  });

  test('whether it falls, if scatter allows both', () => {
    expect(codes(record([900, 950, 880, 940, 890, 930]))).toContain('trend-direction-unknown');
  });

  test('if the newest row or one without a date is excluded', () => {
    const keptOut = { line: 9, cells: [], code: 'temperature-missing' } as const;
    const withRow = (day: number | undefined) => {
      const input = record(falling);
      input.table.keptOut = [day === undefined ? keptOut : { ...keptOut, day }];
      return assessTrend(input).verdict;
    };
    expect(withRow(firstDay + 9 * 365)).toBe('undecided');
    expect(withRow(undefined)).toBe('undecided');
    expect(withRow(firstDay + 365)).toBe('go');
  });

  test('an old winding without its rated voltage', () => {
    expect(codes(record(falling, { machineClass: 'pre-1970' }))).toContain('trend-rated-voltage-missing');
  });

  test('if another correction method puts the newest bound on the other side of the minimum', () => {
    // At 20 °C: more than 25 MΩ is more than 6.25 MΩ by the halving rule, and above it by the formulas.
    const readings = [90, 89, 88, 87, 86, overOhms(25e6)];
    const input = record(readings, { correction: 'thermosetting' });
    for (const row of input.table.rows) row.temperature = celsius(20);
    expect(assessTrend(input).verdict).toBe('go');
    const low = record([...readings.slice(0, -1), overOhms(18e6)], { correction: 'thermosetting' });
    for (const row of low.table.rows) row.temperature = celsius(20);
    expect(codes(low)).toContain('trend-methods-differ');
    expect(assessTrend(low).verdict).toBe('undecided');
  });

  test('if the correction methods differ', () => {
    // At 20 °C: 16 MΩ is 4 MΩ by the halving rule, and 12 MΩ by the formulas.
    const input = record([17, 17, 16.5, 16.5, 16]);
    for (const row of input.table.rows) row.temperature = celsius(20);
    expect(codes(input)).toContain('trend-methods-differ');
    expect(assessTrend(input).verdict).toBe('undecided');
  });
});

describe('sudden falls', () => {
  const known = (...values: number[]) => values.map((value) => ({ least: value, most: value }));

  test.each([
    [[100, 90, 95, 40], [{ index: 3, open: true }]],
    [[100, 90, 95, 46], []],
    [[100, 90, 95, 40, 92], [{ index: 3, open: false }]],
    [[100, 300, 90, 95], []],
    [[100, 30], [{ index: 1, open: true }]],
    [[100], []],
  ])('%j', (values, drops) => {
    expect(findDrops(known(...values))).toEqual(drops);
  });

  test('one without recovery prevents a go', () => {
    expect(assessTrend(record([900, 880, 890, 870, 880, 300])).verdict).toBe('undecided');
    expect(codes(record([900, 880, 890, 300, 880, 870, 860]))).toContain('trend-drop-recovered');
  });
});

describe('bounds are not values', () => {
  test('over-range is not part of the line', () => {
    const plain = assessTrend(record(falling));
    const input = record([...falling]);
    input.table.rows.splice(3, 0, {
      ...(input.table.rows[2] as TrendRow),
      day: firstDay + 800,
      reading: overOhms(1e8),
    });
    const found = assessTrend(input);
    expect(found.fit?.slope).toBe(plain.fit?.slope);
    expect(found.findings.map(({ code }) => code)).toContain('trend-over-range');
  });

  test('one above the line contradicts it', () => {
    const early = record([overOhms(5e9), ...falling]);
    expect(codes(early)).toContain('trend-over-range-contradicts');
    expect(assessTrend(early).verdict).toBe('undecided');
  });

  test('the newest one proves only its bound', () => {
    expect(codes(record([...falling, overOhms(1e6)]))).toContain('trend-last-unknown');
    expect(codes(record([...falling, overOhms(1e8)]))).toContain('trend-last-above');
    expect(assessTrend(record([...falling, underOhms(1e6)])).verdict).toBe('no-go');
    expect(assessTrend(record([...falling, underOhms(1e8)])).verdict).toBe('undecided');
  });
});

describe('zero', () => {
  const zero = (resolution?: number): Reading => ({ ...ohms(0), ...(resolution !== undefined && { resolution }) });

  test('is less than one step of the display, and is shown so', () => {
    const { rows } = assessTrend(record([...falling, zero(1e6)]));
    expect(rows.at(-1)).toMatchObject({ kind: 'under', reading: { kind: 'under', atMost: 1e6 }, corrected: 1e6 });
  });

  test('is the worst newest reading there is: no-go, as a hair above it', () => {
    for (const last of [ohms(5e-324), zero(), zero(0), zero(1e5)]) {
      const { verdict, findings } = assessTrend(record([...falling, last]));
      expect([verdict, findings[0]?.code]).toEqual(['no-go', 'trend-last-below']);
    }
  });

  test('of a display whose step is coarser than the minimum is undecided, and so is all below one step', () => {
    for (const value of [0, 5e-324, 3e6]) {
      expect(assessTrend(record([...falling, { ...ohms(value), resolution: 1e8 }])).verdict).toBe('undecided');
    }
  });

  test('earlier in the record is a sudden fall, and no part of the line', () => {
    const { fit } = assessTrend(record([900, 880, 890, 870, 880]));
    const found = assessTrend(record([900, 880, 890, 870, 880, zero(1e5)]));
    expect(found.fit).toEqual(fit);
    expect(found.rows.at(-1)?.drop).toBe(true);
  });
});

test('a reading that its correction would make infinite is not worse than half of it', () => {
  const verdict = (last: number) => {
    const input = record([...falling, ohms(last)]);
    for (const row of input.table.rows) row.temperature = celsius(45);
    return assessTrend(input).verdict;
  };
  expect(verdict(Number.MAX_VALUE)).toBe(verdict(Number.MAX_VALUE / 4));
});

describe('a bound that is newer than the last value', () => {
  test('puts off the next yearly reading: the line must stay above the minimum until then', () => {
    // 20 % less each year: 6.99 MΩ meets 5 MΩ in a year and a half.
    const values = [21.3, 17.1, 13.7, 10.9, 8.74, 6.99];
    expect(assessTrend(record(values)).verdict).toBe('go');
    const bounded = record([...values, overOhms(5.5e6)]);
    expect(codes(bounded)).toContain('trend-meets-within');
    expect(assessTrend(bounded).verdict).toBe('undecided');
  });

  test('makes the record of values too short if it covers less than it must predict', () => {
    const quarterly = (readings: (number | Reading)[]) => {
      const input = record(readings);
      input.table.rows.forEach((row, quarter) => {
        row.day = firstDay + 95 * quarter;
      });
      return input;
    };
    const values = [900, 890, 880, 870, 860];
    expect(assessTrend(quarterly(values)).verdict).toBe('go');
    const bounded = assessTrend(quarterly([...values, overOhms(500e6)]));
    expect(bounded.verdict).toBe('undecided');
    const short = found(bounded.findings, 'trend-too-short');
    expect([short.years, short.neededYears]).toEqual([380 / 365.25, 1 + 95 / 365.25]);
  });
});

describe('the newest day', () => {
  const sameDay = (minutes: number, low: number) => {
    const input = record([...falling, low, 480]);
    const last = input.table.rows.at(-1);
    const before = input.table.rows.at(-2);
    if (last === undefined || before === undefined) throw new Error('no rows');
    before.day = Math.floor(before.day);
    last.day = before.day + minutes / 1440;
    return assessTrend(input);
  };

  test('counts by its lowest reading, whichever was noted last, with times of day too', () => {
    for (const minutes of [0, 5, 600]) {
      const { verdict, findings } = sameDay(minutes, 1);
      expect([verdict, found(findings, 'trend-last-below').correctedOhms]).toEqual(['no-go', 1e6]);
    }
  });

  test('that is older than a go lasts gives no go, and a new reading is asked for', () => {
    const lastDay = firstDay + 7 * 365.25;
    const fresh = assessTrend(record(falling, { today: lastDay + 300 }));
    expect(fresh.verdict).toBe('go');
    expect(codes(record(falling, { today: lastDay + 300 }))).not.toContain('trend-go-expired');
    const old = assessTrend(record(falling, { today: lastDay + 400 }));
    expect(old.verdict).toBe('undecided');
    expect(old.findings[0]?.code).toBe('trend-go-expired');
    expect(old.findings.map(({ code }) => code)).not.toContain('trend-holds-until');
    expect(old.next[0]?.code).toBe('take-a-reading-now');
    expect(codes(record([80, 50, 31, 20, 12, 4.9], { today: lastDay + 4000 }))).not.toContain('trend-go-expired');
  });

  test('and so does one whose newest row, more than a year after the last value, is only a bound', () => {
    expect(assessTrend(record([...falling, overOhms(400e6)])).verdict).toBe('go');
    const late = record([...falling, overOhms(400e6)]);
    const bound = late.table.rows[falling.length] as TrendRow;
    bound.day += 30;
    expect(assessTrend(late).findings.map(({ code }) => code)).toContain('trend-go-expired');
    expect(assessTrend(late).verdict).toBe('undecided');
  });
});
