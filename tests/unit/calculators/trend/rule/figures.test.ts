import { describe, expect, it } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import { missing, ohms, overOhms, underOhms } from '../../../../../src/kernel/reading/reading.ts';
import { changed, dayOf, find, record, said } from './record-of.ts';

const falling = Array.from({ length: 8 }, (_, year) => 1000 * 0.9 ** year);
const halved = Array.from({ length: 8 }, (_, year) => 50 * 0.8 ** year);

describe('the figures', () => {
  it('of the newest reading: day, kind, corrected, and the minimum of 5 MΩ (IEEE 43, recalled from memory)', () => {
    const { day, kind, correctedOhms, minimumOhms } = find(record([900, 880, 7]), 'trend-last-above');
    expect([day, kind, correctedOhms, minimumOhms]).toEqual([dayOf(2), 'value', 7e6, 5e6]);
    const below = find(record([900, 4]), 'trend-last-below');
    expect([below.day, below.correctedOhms, below.minimumOhms]).toEqual([dayOf(1), 4e6, 5e6]);
    expect(find(record([900, overOhms(1e6)]), 'trend-last-unknown').kind).toBe('over');
  });

  it('of the change: how many readings, and percent per year', () => {
    const { count, changePercent, leastPercent, mostPercent } = find(record(falling), 'trend-change');
    expect([count, changePercent, leastPercent, mostPercent]).toEqual([8, ...Array(3).fill(expect.closeTo(-10, 6))]);
    const loose = find(record([900, 950, 880, 940, 890, 930]), 'trend-change');
    expect(loose.leastPercent).toBeLessThan(loose.changePercent);
    expect(loose.mostPercent).toBeGreaterThan(loose.changePercent);
  });

  it('of a fall without scatter: it meets 5 MΩ 3.3 years after the last reading, within the reach of 7 years', () => {
    const { earliestDay, latestDay, reachDay } = find(record(halved), 'trend-meets-later');
    const meets = dayOf(7) + (Math.log((50 * 0.8 ** 7) / 5) / -Math.log(0.8)) * 365.25;
    expect([earliestDay, latestDay, reachDay]).toEqual([expect.closeTo(meets, 3), expect.closeTo(meets, 3), dayOf(14)]);
  });

  it('beyond the reach of the record are not stated', () => {
    const finding = find(record(falling), 'trend-not-within');
    expect(finding.reachDay).toBe(dayOf(14));
    expect(Object.keys(finding)).not.toContain('earliestDay');
    expect(Object.keys(finding)).not.toContain('latestDay');
  });

  it('of a go: a year from the last value', () => {
    const { day, years } = find(record(falling), 'trend-holds-until');
    expect([day, years]).toEqual([dayOf(8), 1]);
    expect(find(record(falling, { today: dayOf(9) }), 'trend-go-expired').day).toBe(dayOf(8));
  });

  it('of a record that is too short: its years and those needed', () => {
    const weekly = [900, 910, 890, 905, 900].reduce(
      (input, _, week) => changed(input, week, { day: dayOf(0) + 7 * week }),
      record([900, 910, 890, 905, 900]),
    );
    const { years, neededYears } = find(weekly, 'trend-too-short');
    expect([years, neededYears]).toEqual([expect.closeTo(28 / 365.25, 6), 1]);
  });

  it('of too few readings: how many values there are, bounds left out', () => {
    expect(find(record([900, overOhms(5e8), 880]), 'trend-too-few').count).toBe(2);
  });

  it('of sudden falls: how many, the day of the last one, and the factor', () => {
    const twice = record([900, 880, 890, 870, 300, 900, 880, 890, 300, 290]);
    const open = find(twice, 'trend-drop-open');
    expect([open.count, open.day, open.factor]).toEqual([1, dayOf(8), 2]);
    const recovered = find(twice, 'trend-drop-recovered');
    expect([recovered.count, recovered.day, recovered.factor]).toEqual([1, dayOf(4), 2]);
  });

  it('of bounds: how many, and how many contradict the line', () => {
    const input = changed(changed(record(falling), 1, { reading: overOhms(2e9) }), 3, { reading: overOhms(1e7) });
    const { count, above } = find(input, 'trend-over-range-contradicts');
    expect([count, above]).toEqual([2, 1]);
    const low = changed(changed(record(falling), 1, { reading: overOhms(2e7) }), 3, { reading: overOhms(1e7) });
    expect(find(low, 'trend-over-range').count).toBe(2);
    const under = changed(record(falling), 3, { reading: underOhms(5e8) });
    expect(find(under, 'trend-under-range').count).toBe(1);
  });

  it('of rows left out: how many of them, and which columns', () => {
    const input = record(falling);
    const keptOut = [
      { line: 9, cells: [], code: 'date-ambiguous' as const },
      { line: 10, cells: [], code: 'reading-missing' as const, day: dayOf(1) },
    ];
    const table = { ...input.table, keptOut, unused: ['remark'] };
    expect(find({ ...input, table }, 'trend-rows-kept-out').count).toBe(2);
    expect(find({ ...input, table }, 'trend-dates-ambiguous').count).toBe(1);
    expect(find({ ...input, table }, 'trend-columns-unused').columns).toEqual(['remark']);
    const broken = { ...table, rows: [], problem: 'unit-contradicts' as const };
    expect(find({ ...input, table: broken }, 'trend-table-problem').problem).toBe('unit-contradicts');
  });
});

describe('what is kept for the plot', () => {
  it('rows in order of time, corrected, with sudden falls marked', () => {
    const [first, ...others] = record([900, 880, 890, 870, 300]).table.rows;
    const input = record([]);
    const rows = [...others, ...(first ? [first] : [])];
    const kept = assessTrend({ ...input, table: { ...input.table, rows } }).rows;
    expect(kept.map(({ day }) => day)).toEqual([0, 1, 2, 3, 4].map(dayOf));
    expect(kept.map(({ drop }) => drop)).toEqual([false, false, false, false, true]);
    expect(kept[0]?.corrected).toBe(900e6);
  });

  it('what was left out, in order of its lines, with its reason and day', () => {
    const input = changed(changed(record(falling, { today: dayOf(6) }), 1, { reading: missing }), 3, {
      temperature: missing,
    });
    expect(assessTrend(input).keptOut).toEqual([
      { line: 2, cells: ['row 2'], day: dayOf(1), code: 'reading-missing' },
      { line: 4, cells: ['row 4'], day: dayOf(3), code: 'temperature-missing' },
      { line: 8, cells: ['row 8'], day: dayOf(7), code: 'date-in-future' },
    ]);
  });

  it('the temperature of the limit, the minimum and the line, as far as they are known', () => {
    const { reference, minimum, fit } = assessTrend(record(falling));
    expect([reference, minimum, fit?.count]).toEqual([40, 5e6, 8]);
    expect(Object.keys(assessTrend(record([900])))).not.toContain('fit');
    expect(Object.keys(assessTrend(record([], { machineClass: 'pre-1970' })))).not.toContain('minimum');
    expect(assessTrend(record([])).minimum).toBe(5e6);
  });
});

describe('exactly at a limit', () => {
  it('5 MΩ is not below the minimum', () => {
    expect(said(record([5]))[0]).toMatch(/^trend-last-above/);
    expect(said(record([4.99]))[0]).toMatch(/^trend-last-below/);
    expect(said(record([underOhms(5e6)]))[0]).toMatch(/^trend-last-unknown/);
    expect(said(record([overOhms(5e6)]))[0]).toMatch(/^trend-last-above/);
  });

  it('today counts to its end', () => {
    const inDay = (part: number) => record(falling, { today: Math.floor(dayOf(7)) + part });
    const later = changed(inDay(0), 7, { day: Math.floor(dayOf(7)) + 0.9 });
    expect(said(later)).not.toContain('trend-rows-kept-out caution');
    const tomorrow = changed(inDay(0), 7, { day: Math.floor(dayOf(7)) + 1 });
    expect(said(tomorrow)).toContain('trend-rows-kept-out caution');
  });

  it('the lowest reading of the newest day is the one that is named', () => {
    const input = changed(record([900, 880, 870, 860, 700, 650]), 5, { day: dayOf(4) + 0.2 });
    expect(find(input, 'trend-last-above').correctedOhms).toBe(650e6);
    const turned = changed(record([900, 880, 870, 860, 650, 700]), 5, { day: dayOf(4) + 0.2 });
    expect(find(turned, 'trend-last-above').correctedOhms).toBe(650e6);
  });

  it('a reading below one step of its display is a bound, one step is a value', () => {
    const kind = (value: number) =>
      assessTrend(record([ohms(value, 1e6)])).rows.map((row) => `${row.kind} ${row.corrected}`)[0];
    expect([kind(0), kind(1e6), kind(0.9e6)]).toEqual(['under 1000000', 'value 1000000', 'under 1000000']);
    expect(assessTrend(record([ohms(0)])).rows[0]?.corrected).toBe(1);
  });
});
