import { describe, expect, it } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import { findDrops } from '../../../../../src/calculators/trend/rule/drops.ts';
import { ranksLeftOut } from '../../../../../src/calculators/trend/rule/kendall.ts';
import { lineAt, meetingOf, type TrendFit } from '../../../../../src/calculators/trend/rule/line-fit.ts';
import { celsius, overOhms, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { changed, dayOf, find, record, said, steps } from './record-of.ts';

const flat = [900, 890, 895, 885, 890, 880, 885, 880];
const falling = Array.from({ length: 8 }, (_, year) => 1000 * 0.9 ** year);
const codes = (...given: Parameters<typeof said>) => said(...given).map((text) => text.split(/[ :]/)[0]);

describe('evidence against the winding is not forgotten', () => {
  it('one reading of the newest day that may be below the minimum leaves it unknown', () => {
    const input = changed(record(flat), 7, { day: dayOf(6) + 0.2, reading: overOhms(1e6) });
    expect(codes(input)).toContain('trend-last-unknown');
    expect(assessTrend(input).verdict).toBe('undecided');
  });

  it('a bound below the minimum was a bad winding, however good the later readings are', () => {
    const input = changed(record(flat), 3, { reading: underOhms(4e6) });
    expect(said(input)).toContain('trend-under-range undecided');
    expect(assessTrend(input).verdict).toBe('undecided');
  });

  it('an upper bound that as a value would end the go ends it', () => {
    const low = changed(changed(record([900, 300, 100, 40, 20, 900, 890, 880]), 6, { reading: underOhms(9e6) }), 5, {
      reading: underOhms(12e6),
    });
    expect(said(low)).toContain('trend-under-range undecided');
  });

  it('the lowest reading of the last day starts the line to the minimum', () => {
    const input = changed(record([900, 890, 895, 885, 890, 880, 885, 6]), 7, { day: dayOf(6) + 0.2 });
    const turned = changed(record([900, 890, 895, 885, 890, 880, 6, 885]), 7, { day: dayOf(6) + 0.2 });
    expect(codes(input).filter((code) => code?.startsWith('trend-meets'))).toEqual(
      codes(turned).filter((code) => code?.startsWith('trend-meets')),
    );
    expect(find(input, 'trend-last-above').correctedOhms).toBe(6e6);
  });

  it('a bound above the middle of the later values hides a fall, though it is below the line', () => {
    const input = changed(record(falling), 1, { reading: overOhms(700e6) });
    expect(said(input)).toContain('trend-over-range-contradicts undecided');
    const last = changed(record(falling), 6, { reading: overOhms(500e6) });
    expect(said(last)).toContain('trend-over-range-contradicts undecided');
    const lower = changed(record(falling), 1, { reading: overOhms(570e6) });
    expect(said(lower)).toContain('trend-over-range note');
  });

  it('values before a bound say nothing about it', () => {
    const input = changed(record([100, 100, 100, 900, 890, 895, 885, 890]), 3, { reading: overOhms(500e6) });
    expect(said(input)).toContain('trend-over-range note');
  });
});

describe('readings that rise or stand', () => {
  it('never meet the minimum', () => {
    const rising = record([500, 550, 600, 660, 730, 800]);
    expect([assessTrend(rising).verdict, codes(rising).includes('trend-direction-unknown')]).toEqual(['go', false]);
    const still = record([900, 900, 900, 900, 900, 900]);
    expect([assessTrend(still).verdict, codes(still).includes('trend-direction-unknown')]).toEqual(['go', false]);
  });
});

describe('a record', () => {
  it('of weeks is too short, and asks for years', () => {
    const weekly = [900, 910, 890, 905, 900].reduce(
      (input, _, week) => changed(input, week, { day: dayOf(0) + 7 * week }),
      record([900, 910, 890, 905, 900]),
    );
    expect(said(weekly)).toContain('trend-too-short undecided: trend-confidence trend-horizon');
    expect(steps(weekly)).toContain('measure-yearly');
  });

  it('of an old winding has a minimum of a megohm and one more per kilovolt (IEEE 43, recalled)', () => {
    const { minimum } = assessTrend(record(flat, { machineClass: 'pre-1970', ratedVoltage: volts(400) }));
    expect(minimum).toBeCloseTo(1.4e6, 0);
  });

  it('names its rows that were left out in the order of their lines, whatever the reason', () => {
    const input = changed(record(flat, { today: dayOf(6) }), 1, { temperature: celsius(900) });
    const keptOut = [{ line: 20, cells: [], code: 'date-missing' as const }];
    const lines = assessTrend({ ...input, table: { ...input.table, keptOut } });
    expect(lines.keptOut.map(({ line, code }) => `${line} ${code}`)).toEqual([
      '2 temperature-out-of-validity',
      '8 date-in-future',
      '20 date-missing',
    ]);
    expect(lines.rows.map(({ line }) => line)).toEqual([1, 3, 4, 5, 6, 7]);
    const bound = changed(record(flat), 2, { reading: overOhms() });
    expect(assessTrend(bound).keptOut.map(({ code }) => code)).toEqual(['bound-not-noted']);
  });

  it('a row that begins its day with the newest reading may be the newest', () => {
    const input = record(flat);
    const keptOut = [{ line: 20, cells: [], code: 'reading-missing' as const, day: Math.floor(dayOf(7)) }];
    expect(codes({ ...input, table: { ...input.table, keptOut } })).toContain('trend-newest-kept-out');
  });

  it('names the methods that disagree', () => {
    const cool = [12, 11.8, 11.6, 11.5, 11.4, 11.3].reduce(
      (input, _, index) => changed(input, index, { temperature: celsius(20) }),
      record([12, 11.8, 11.6, 11.5, 11.4, 11.3]),
    );
    expect(find(cool, 'trend-methods-differ').methods).toEqual(['thermosetting']);
  });
});

describe('sudden falls at their border', () => {
  const of = (...values: number[]) => findDrops(values.map((value) => ({ least: value, most: value })));

  it('half of the least of three before is none yet', () => {
    expect(of(900, 880, 870, 435)).toEqual([]);
    expect(of(900, 880, 870, 434)).toEqual([{ index: 3, open: true }]);
  });

  it('a return to just half is a return', () => {
    expect(of(900, 880, 870, 300, 434)).toEqual([{ index: 3, open: true }]);
    expect(of(900, 880, 870, 300, 435)).toEqual([{ index: 3, open: false }]);
  });
});

describe('the line', () => {
  const fit: TrendFit = {
    slope: -0.1,
    range: { lo: -0.2, hi: -0.05 },
    heights: { middle: 8, lo: 7.9, hi: 8.1 },
    firstDay: dayOf(0),
    lastDay: dayOf(5),
    count: 6,
  };
  const years = ({ earliest, latest }: { earliest: number; latest: number }) =>
    [earliest, latest].map((day) => (day - dayOf(5)) / 365.25);

  it('meets the minimum at the earliest from the lower of line and reading, at the latest from the higher', () => {
    // A decade above 10 MΩ at a reading of 100 MΩ: 0.9 / 0.2 and 1.1 / 0.05 years.
    expect(years(meetingOf(fit, 1e8, 1e7))).toEqual([expect.closeTo(4.5, 6), expect.closeTo(22, 6)]);
    expect(years(meetingOf(fit, 1e7 * 10 ** 1.5, 1e7))).toEqual([expect.closeTo(4.5, 6), expect.closeTo(30, 6)]);
    expect(years(meetingOf(fit, 1e7 * 10 ** 0.2, 1e7))).toEqual([expect.closeTo(1, 6), expect.closeTo(22, 6)]);
  });

  it('has met it if the reading is there, and never does if it rises', () => {
    expect(years(meetingOf(fit, 9e6, 1e7))[0]).toBe(0);
    const rises = { ...fit, range: { lo: -0.2, hi: 0.01 } };
    expect(meetingOf(rises, 1e8, 1e7).latest).toBe(Number.POSITIVE_INFINITY);
    const stands = { ...fit, range: { lo: -0.2, hi: 0 } };
    expect(meetingOf(stands, 1e8, 1e7).latest).toBe(Number.POSITIVE_INFINITY);
  });

  it('had more before it fell', () => {
    expect(lineAt(fit, dayOf(5))).toBeCloseTo(1e8, 0);
    expect(lineAt(fit, dayOf(0))).toBeCloseTo(10 ** 8.5, 0);
  });
});

describe('the ranks left out of more than sixty points, by the normal deviate (Kendall 1975)', () => {
  const alone = (count: number) => Array.from({ length: count }, () => 1);

  it('61 points: 1830 pairs with a standard deviation of 160.7', () => {
    expect(ranksLeftOut(alone(61), 0.025, 1.96)).toBe(756);
  });

  it('59 points and three on one day: 1888 pairs with a standard deviation of 164.6', () => {
    expect(ranksLeftOut([...alone(59), 3], 0.025, 1.96)).toBe(781);
  });

  it('no interval if the deviate asks for more than all pairs', () => {
    expect(ranksLeftOut(alone(61), 0, 100)).toBe(-1);
  });
});
