import { describe, expect, it } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import type { KeptOutCode, TrendInput, TrendTable } from '../../../../../src/calculators/trend/rule/input.ts';
import { celsius, missing, ohms, overOhms, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { changed, dayOf, record, said, steps } from './record-of.ts';

/** Ten per cent less each year from 1 GΩ, far above the 5 MΩ of a random-wound machine. */
const falling = Array.from({ length: 8 }, (_, year) => 1000 * 0.9 ** year);
const scattered = [900, 950, 880, 940, 890, 930];
const halved = Array.from({ length: 8 }, (_, year) => 50 * 0.8 ** year);

const tableOf = (table: Partial<TrendTable>, input = record(falling)): TrendInput => ({
  ...input,
  table: { ...input.table, ...table },
});
const keptOut = (...rows: [KeptOutCode, day?: number][]) =>
  tableOf({ keptOut: rows.map(([code, day]) => ({ line: 20, cells: [], code, ...(day !== undefined && { day }) })) });

const minimum = (of: string) => `${of} reference-temperature-routine halving-rule halving-validity`;
const above = `trend-last-above pass: ${minimum('ieee43-minimum-random-wound')}`;
const unknown = `trend-last-unknown undecided: ${minimum('ieee43-minimum-random-wound')}`;
const change = 'trend-change note: trend-confidence';
const both = 'trend-confidence trend-horizon';
const notWithin = `trend-not-within pass: ${both}`;
const holds = 'trend-holds-until note: trend-horizon';
const only = 'trend-only-the-record note';
const sound = [above, change, notWithin, holds, only];
const out = 'trend-rows-kept-out caution';
const newestOut = ['trend-newest-kept-out undecided', out, ...sound];
const drop = (which: string) => `trend-drop-${which}: trend-drop trend-drop-before`;

describe('which limits each finding names, and what comes next', () => {
  const rows: [what: string, TrendInput, verdict: string, lines: string[], next: string[]][] = [
    ['a slow fall', record(falling), 'go', sound, ['measure-yearly']],
    [
      'the same of a form-wound machine',
      record(falling, { machineClass: 'form-wound' }),
      'go',
      [`trend-last-above pass: ${minimum('ieee43-minimum-form-wound')}`, change, notWithin, holds, only],
      ['measure-yearly'],
    ],
    [
      'readings that scatter',
      record(scattered),
      'go',
      [above, change, 'trend-direction-unknown note', notWithin, holds, only],
      ['measure-yearly'],
    ],
    [
      'a fall that reaches the minimum within what the record can predict',
      record(halved),
      'go',
      [above, change, `trend-meets-later pass: ${both}`, holds, only],
      ['measure-yearly'],
    ],
    [
      'a fall that reaches it within the year',
      record([80, 50, 31, 20, 12, 7.6]),
      'undecided',
      [above, change, `trend-meets-within undecided: ${both}`, only],
      ['measure-again-soon', 'measure-at-one-temperature'],
    ],
    [
      'a line that may be there',
      record([80, 50, 31, 20, 12, 5.1]),
      'undecided',
      [above, change, `trend-meets-now undecided: ${both}`, drop('open undecided'), only],
      ['measure-again-soon', 'judge-reading-itself', 'find-cause-of-drop'],
    ],
    [
      'a last reading below the minimum',
      record([4.9]),
      'no-go',
      [`trend-last-below fail: ${minimum('ieee43-minimum-random-wound')}`, `trend-too-few undecided: ${both}`, only],
      ['judge-reading-itself', 'separate-and-repair', 'measure-yearly'],
    ],
    ['no rows', record([]), 'undecided', ['trend-no-rows undecided'], ['type-readings']],
    [
      'an old winding without its rated voltage',
      record(falling, { machineClass: 'pre-1970' }),
      'undecided',
      ['trend-rated-voltage-missing undecided'],
      ['state-trend-voltage'],
    ],
    [
      'an old winding with it',
      record(falling, { machineClass: 'pre-1970', ratedVoltage: volts(400) }),
      'go',
      [`trend-last-above pass: ${minimum('ieee43-minimum-pre-1970-base')}`, change, notWithin, holds, only],
      ['measure-yearly'],
    ],
    [
      'a table that can’t be read',
      tableOf({ problem: 'column-missing' }, record([])),
      'undecided',
      ['trend-table-problem undecided'],
      ['mend-table'],
    ],
    [
      'a column that is not used',
      tableOf({ unused: ['remark'] }),
      'go',
      ['trend-columns-unused note', ...sound],
      ['measure-yearly'],
    ],
    [
      'a date that can mean two days',
      keptOut(['date-ambiguous']),
      'undecided',
      ['trend-dates-ambiguous undecided', out, ...sound],
      ['state-date-order', 'measure-yearly'],
    ],
    [
      'a date that can mean two days, and one that is not there',
      keptOut(['date-ambiguous'], ['date-missing']),
      'undecided',
      ['trend-dates-ambiguous undecided', ...newestOut],
      ['state-date-order', 'mend-newest-row', 'measure-yearly'],
    ],
    [
      'a newer row that can’t be read',
      keptOut(['reading-unreadable', dayOf(8)]),
      'undecided',
      newestOut,
      ['mend-newest-row', 'measure-yearly'],
    ],
    [
      'a row of the newest day that can’t be read',
      keptOut(['reading-unreadable', dayOf(7)]),
      'undecided',
      newestOut,
      ['mend-newest-row', 'measure-yearly'],
    ],
    [
      'an older row that can’t be read',
      keptOut(['reading-unreadable', dayOf(3)]),
      'go',
      [out, ...sound],
      ['measure-yearly'],
    ],
    ['the newest row written twice', keptOut(['same-as-before', dayOf(7)]), 'go', [out, ...sound], ['measure-yearly']],
    [
      'the newest row without its temperature',
      changed(record(falling), 7, { temperature: missing }),
      'undecided',
      newestOut,
      ['mend-newest-row', 'measure-yearly'],
    ],
    [
      'the newest row over-range without its range',
      changed(record(falling), 7, { reading: overOhms() }),
      'undecided',
      newestOut,
      ['mend-newest-row', 'measure-yearly'],
    ],
    [
      'a row after today',
      record(falling, { today: dayOf(6) }),
      'undecided',
      newestOut,
      ['mend-newest-row', 'measure-yearly'],
    ],
    [
      'a newest bound above the line',
      changed(record(falling), 7, { reading: overOhms(1e9) }),
      'undecided',
      [above, change, notWithin, holds, 'trend-over-range-contradicts undecided', only],
      ['measure-yearly', 'note-range-of-over'],
    ],
    [
      'a newest bound below the line',
      changed(record(falling), 7, { reading: overOhms(100e6) }),
      'go',
      [above, change, notWithin, holds, 'trend-over-range note', only],
      ['measure-yearly'],
    ],
    [
      'a newest bound below the minimum',
      changed(record(falling), 7, { reading: overOhms(1e6) }),
      'undecided',
      [unknown, change, notWithin, holds, 'trend-over-range note', only],
      ['note-range-of-over', 'judge-reading-itself', 'measure-yearly'],
    ],
    [
      'an upper bound in between',
      changed(record([900, 880, 870, 860, 850, 840, 830, 820]), 3, { reading: underOhms(500e6) }),
      'go',
      [above, 'trend-under-range caution', change, notWithin, holds, only],
      ['judge-reading-itself', 'measure-yearly'],
    ],
    [
      'an upper bound as the newest',
      changed(record(falling), 7, { reading: underOhms(500e6) }),
      'undecided',
      [unknown, 'trend-under-range undecided', change, notWithin, holds, only],
      ['note-range-of-over', 'judge-reading-itself', 'measure-yearly'],
    ],
    [
      'a fall that stays',
      record([900, 880, 890, 870, 300, 290]),
      'undecided',
      [above, change, notWithin, holds, drop('open undecided'), only],
      ['measure-yearly', 'find-cause-of-drop'],
    ],
    [
      'a fall that came back',
      record([900, 880, 890, 870, 300, 880, 870]),
      'go',
      [above, change, 'trend-direction-unknown note', notWithin, holds, drop('recovered caution'), only],
      ['measure-yearly'],
    ],
    [
      'a go of more than a year ago',
      record(falling, { today: dayOf(8) + 2 }),
      'undecided',
      ['trend-go-expired undecided: trend-horizon', above, change, notWithin, only],
      ['take-a-reading-now', 'measure-yearly'],
    ],
    ['a go on its last day', record(falling, { today: dayOf(8) }), 'go', sound, ['measure-yearly']],
  ];
  it.each(rows)('%s', (_, input, verdict, lines, next) => {
    expect(assessTrend(input).verdict).toBe(verdict);
    expect(said(input)).toEqual(lines);
    expect(steps(input)).toEqual(next);
  });
});

describe('a figure or a day that can’t be is judged no further', () => {
  it.each<[string, TrendInput, string]>([
    ['a negative resistance', changed(record(falling), 2, { reading: ohms(-1) }), 'line 3'],
    ['a temperature that is no number', changed(record(falling), 4, { temperature: celsius(Number.NaN) }), 'line 5'],
    ['no day', changed(record(falling), 2, { day: Number.NaN }), 'line 3'],
    ['a negative voltage', record(falling, { ratedVoltage: volts(-1) }), 'ratedVoltage'],
    ['a clock that shows no day', record(falling, { today: Number.NaN }), 'date'],
    ['a row left out on no day', keptOut(['reading-missing', Number.NaN]), 'date'],
  ])('%s', (_, input, place) => {
    const { verdict, rows, next } = assessTrend(input);
    expect([verdict, rows, next]).toEqual(['undecided', [], [{ code: 'read-figure-again' }]]);
    expect(said(input)).toEqual([`figure-impossible undecided ${place}`]);
  });

  it('both are named', () => {
    const input = changed(record(falling, { today: Number.NaN }), 2, { reading: ohms(-1) });
    expect(said(input)).toEqual(['figure-impossible undecided line 3 date']);
  });
});

describe('correction rules for other insulation', () => {
  const at = (celsiusOf: number, list: number[]) =>
    list.reduce((input, _, index) => changed(input, index, { temperature: celsius(celsiusOf) }), record(list));

  it('that would pass it make a reading below the minimum undecided, and are named', () => {
    const input = at(20, [12, 11.8, 11.6, 11.5, 11.4, 11.3]);
    expect(assessTrend(input).verdict).toBe('undecided');
    expect(said(input)[0]).toBe('trend-methods-differ undecided: thermosetting-cool thermosetting-hot');
    expect(steps(input)[0]).toBe('measure-at-one-temperature');
    const cold = at(15, [30, 29.5, 29, 28.6, 28.2, 27.9]);
    expect(said(cold)[0]).toBe(
      'trend-methods-differ undecided: thermosetting-cool thermosetting-hot solid-insulation-to-20',
    );
  });

  it('that would fail it make a go undecided', () => {
    const input = { ...at(20, [12, 11.8, 11.6, 11.5, 11.4, 11.3]), correction: 'thermosetting' as const };
    expect(assessTrend(input).verdict).toBe('undecided');
    expect(said(input)[0]).toMatch(/^trend-last-above pass/);
    expect(said(input).at(-2)).toBe(
      'trend-methods-differ undecided: halving-rule halving-validity solid-insulation-to-20',
    );
  });
});
