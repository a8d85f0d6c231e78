import { describe, expect, it } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import type { TrendInput } from '../../../../../src/calculators/trend/rule/input.ts';
import { ranksLeftOut } from '../../../../../src/calculators/trend/rule/kendall.ts';
import { meetingOf } from '../../../../../src/calculators/trend/rule/line-fit.ts';
import { outlookOf } from '../../../../../src/calculators/trend/rule/outlook.ts';
import { correctRows } from '../../../../../src/calculators/trend/rule/rows.ts';
import { celsius, overOhms, underOhms } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { changed, dayOf, find, record, said } from './record-of.ts';

const falling = Array.from({ length: 8 }, (_, year) => 1000 * 0.9 ** year);

describe('an upper bound earlier in the record', () => {
  it('that widens the line as a value would gives no go', () => {
    const input = record([900, 880, 870, 860, 850, underOhms(6e6), 840]);
    expect(said(record([900, 880, 870, 860, 850, 840]))).toContain('trend-holds-until note: trend-horizon');
    expect(said(input)).toContain('trend-under-range undecided');
    expect(assessTrend(input).verdict).toBe('undecided');
  });

  /** One reading in twelve hardly moves the line. */
  const withBoundAt = (ohms: number) =>
    record([900, 895, 900, 890, underOhms(ohms), 890, 895, 885, 890, 885, 880, 885, 880, 885]);

  it('exactly at the minimum is not below it', () => {
    expect(said(withBoundAt(5e6))).toContain('trend-under-range caution');
    expect(said(withBoundAt(4.99e6))).toContain('trend-under-range undecided');
  });

  it('is not made worse by an earlier value below the minimum, which the line has', () => {
    const input = changed(withBoundAt(800e6), 6, { reading: { kind: 'value', value: 4e6, unit: 'Ω' } });
    expect(said(input)).toContain('trend-under-range caution');
  });
});

describe('several readings on the newest day', () => {
  const bounds = (...last: number[]) => {
    const input = record([...falling, ...last.map((ohms) => overOhms(ohms))]);
    return last.reduce((all, _, index) => changed(all, falling.length + index, { day: dayOf(8) }), input);
  };

  it('the lowest of two bounds is named, whichever was noted first', () => {
    for (const last of [
      [400e6, 100e6],
      [100e6, 400e6],
    ])
      expect(find(bounds(...last), 'trend-last-above').correctedOhms).toBe(100e6);
  });

  it('the lowest value is the start of the way down', () => {
    const slow = Array.from({ length: 8 }, (_, year) => 50 * 0.8 ** year);
    const alone = record([...slow, 8.4]);
    const day = (input: TrendInput) => find(input, 'trend-meets-later').earliestDay;
    const two = changed(record([...slow, 8.4, 7.5]), 9, { day: dayOf(8) });
    expect(day(two)).toBeLessThan(day(alone) ?? 0);
    const three = changed(changed(record([...slow, 7.5, 8.4, 8]), 9, { day: dayOf(8) }), 10, { day: dayOf(8) });
    expect(day(three)).toBeLessThan(day(alone) ?? 0);
  });

  it('a bound of the day of the last value is compared with that value, not with the line', () => {
    const input = changed(record([...falling.slice(0, 7), 300, overOhms(400e6)]), 8, { day: dayOf(7) });
    expect(said(input)).toContain('trend-over-range-contradicts undecided');
    const level = changed(record([...falling.slice(0, 7), 300, overOhms(300e6)]), 8, { day: dayOf(7) });
    expect(said(level)).toContain('trend-over-range note');
  });
});

describe('another correction rule', () => {
  it('that does not cover all temperatures has no say', () => {
    const hot = [0, 1, 2, 3].reduce(
      (input, index) => changed(input, index, { temperature: celsius(75) }),
      record([70, 69, 68, 67, 780, 770, 760, 750]),
    );
    // The table of factors ends at 70 °C, and the other four are too few for a line.
    expect(assessTrend(hot).verdict).toBe('go');
    expect(said(hot).join('\n')).not.toContain('trend-methods-differ');
  });
});

it('a go that another rule gives only with a bound as a value is none', () => {
  const celsiusOf = [48, 17, 60, 48, 28, 59, 59];
  const scattered = celsiusOf.reduce(
    (input, at, index) => changed(input, index, { temperature: celsius(at) }),
    record([underOhms(21e6), 7, 8, 41, 60, 7, 11]),
  );
  expect(find(scattered, 'trend-methods-differ').methods).toEqual(['thermosetting', 'table']);
  expect(assessTrend(scattered).verdict).toBe('undecided');
});

describe('exactly at a limit of the line', () => {
  /** A decade less each year, as many Ω as the power of ten, so that every figure is exact. */
  const decades = (...powers: number[]) => {
    const input = record(powers.map((power) => 10 ** power / 1e6));
    const { rows } = correctRows(input.table.rows, 'halving', 40);
    return outlookOf(rows, 1e6).findings;
  };

  it('the last day of its reach is within it', () => {
    const meets = found(decades(14, 13, 12, 11, 10), 'trend-meets-later');
    expect([meets.earliestDay, meets.latestDay, meets.reachDay]).toEqual([dayOf(8), dayOf(8), dayOf(8)]);
  });

  it('the day of the next reading is too early', () => {
    expect(decades(11, 10, 9, 8, 7).map(({ code }) => code)).toContain('trend-meets-within');
  });

  it('a record of a year is long enough for a year', () => {
    const quarters = [0, 1, 2, 3, 4].reduce(
      (input, quarter) => changed(input, quarter, { day: dayOf(quarter / 4) }),
      record([900, 900, 900, 900, 900]),
    );
    expect(assessTrend(quarters).verdict).toBe('go');
  });

  it('a line that stands is known not to fall, and so is one that rises or stands', () => {
    const unknown = (readings: number[]) => said(record(readings)).includes('trend-direction-unknown note');
    expect(unknown([900, 900, 900, 900, 900, 900, 900])).toBe(false);
    expect(unknown([900, 900, 900, 900, 900, 900, 910])).toBe(false);
    expect(unknown([900, 900, 900, 900, 900, 900, 890])).toBe(false);
    expect(unknown([900, 890, 910, 900, 890, 910, 900])).toBe(true);
  });

  it('a rising line that starts at the minimum meets it now', () => {
    const fit = {
      ...{ slope: 0.1, range: { lo: 0.1, hi: 0.1 }, firstDay: dayOf(0), lastDay: dayOf(5), count: 6 },
      heights: { middle: 6, lo: 6, hi: 6 },
    };
    expect(meetingOf(fit, 1e6, 1e6)).toEqual({ earliest: dayOf(5), latest: dayOf(5) });
  });
});

describe('how many slopes are left out at each end', () => {
  it('as many as have exactly the chance that may be left out: one order of 120 has no inversion', () => {
    expect(ranksLeftOut([1, 1, 1, 1, 1], 1 / 120, 2.394)).toBe(0);
    expect(ranksLeftOut([1, 1, 1, 1, 1], 1 / 121, 2.398)).toBe(-1);
  });

  it('of sixty points exactly, which is one more than the approximation by a normal distribution', () => {
    const approximate = Math.floor((60 * 59) / 4 - (1.959964 * Math.sqrt((60 * 59 * 125) / 18)) / 2) - 1;
    expect(ranksLeftOut(Array(60).fill(1), 0.025, 1.959964)).toBe(approximate + 1);
  });

  it('of eighty points, eight on each day, by the formula of Kendall (1975, recalled from memory)', () => {
    // 2880 pairs; variance (80·79·165 − 10·8·7·21) / 18 = 57280.
    expect(ranksLeftOut(Array(10).fill(8), 0.025, 1.959964)).toBe(Math.floor((2880 - 1.959964 * 57280 ** 0.5) / 2) - 1);
  });
});
