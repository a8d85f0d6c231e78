import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addedRow } from '../../../../src/calculators/trend/added-row.ts';
import { inventedRecord } from '../../../../src/calculators/trend/example.ts';
import { trendFields } from '../../../../src/calculators/trend/fields.ts';
import { trendAt as trendForm } from '../../../../src/calculators/trend/form.ts';
import { trendInWords } from '../../../../src/calculators/trend/plot-words.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import { runs } from '../../../support/runs.ts';

/** Every example is judged on one day, so that none depends on the day of the test. */
const now = new Date('2024-02-01T12:00Z');
const form = trendForm(() => now.getTime());

const dates = ['2015-05-03', '2017-05-03', '2019-05-03', '2020-06-01', '2022-05-03', '3/5/2023', '2021', ''];
const readings = ['900M', '450 MΩ', '12', '>700M', '<1M', 'OL', '0', '4.9M', '1,250M', 'x', ''];
const temperatures = ['40', '25 °C', '77 °F', '5', '120', 'warm', ''];
const row = fc
  .tuple(fc.constantFrom(...dates), fc.constantFrom(...readings), fc.constantFrom(...temperatures))
  .map((cells) => cells.join(';'));
const choice = (id: string) => {
  const field = trendFields.find((one) => one.id === id);
  const values = field?.kind === 'choice' ? field.options.map(({ value }) => value) : [];
  return fc.constantFrom('', ...values);
};

test('any rows are judged in complete sentences', () => {
  const entries = fc.record({
    rows: fc.oneof(
      { weight: 9, arbitrary: fc.array(row, { minLength: 1, maxLength: 12 }).map((list) => list.join('\n')) },
      fc.string({ unit: 'binary' }),
    ),
    dateOrder: choice('dateOrder'),
    bareOhms: choice('bareOhms'),
    decimalMark: choice('decimalMark'),
    machineClass: choice('machineClass'),
    correction: choice('correction'),
  });
  fc.assert(
    fc.property(entries, (typed) => {
      const result = form.judge(typed);
      if (result.state === 'blank') return;
      if (result.state !== 'judged') throw new Error(result.state);
      const said = [
        ...result.findings.map(({ text }) => text),
        ...result.steps.map(({ text }) => text),
        trendInWords(result.assessment),
      ].join(' ');
      expect(said).not.toMatch(/NaN|undefined|Infinity|∞/);
    }),
    { numRuns: runs },
  );
});

test('the invented record is a go, with one bound, one sudden fall that was made good, and one row kept out', () => {
  const result = form.judge({ rows: inventedRecord(now) });
  if (result.state !== 'judged') throw new Error(result.state);
  expect(result.verdict).toBe('go');
  expect(result.assessment.rows.map(({ kind }) => kind).filter((kind) => kind !== 'value')).toEqual(['over']);
  expect(result.assessment.rows.filter(({ drop }) => drop)).toHaveLength(1);
  expect(result.assessment.keptOut.map(({ line, code }) => [line, code])).toEqual([[9, 'bound-not-noted']]);
});

test('the invented record ends some weeks before the day on which it is filled in', () => {
  const dates = inventedRecord(new Date('2028-03-01T12:00Z')).match(/^\d{4}-\d\d-\d\d/gm);
  expect([dates?.length, dates?.[0], dates?.at(-1)]).toEqual([12, '2017-01-03', '2028-01-08']);
});

test('a go of the invented record is undecided after its year, and a row dated two days ahead is excluded', () => {
  const rows = inventedRecord(now);
  const afterDays = (days: number) => {
    const result = trendForm(() => now.getTime() + days * 86_400_000).judge({ rows });
    if (result.state !== 'judged') throw new Error(result.state);
    return result;
  };
  expect([afterDays(300).verdict, afterDays(320).verdict]).toEqual(['go', 'undecided']);
  // The newest row is some weeks old: on an earlier day it is in the future.
  expect(afterDays(-60).assessment.keptOut.map(({ code }) => code)).toContain('date-in-future');
});

test('a row to add is read on the day of today', () => {
  const read = readForm(trendFields, {});
  const cells = (date: string) => [date, '450 MΩ', '25 °C'];
  expect(addedRow('', cells('2024-02-01'), read, now.getTime())).toEqual({ rows: '2024-02-01\t450 MΩ\t25 °C\n' });
  expect(addedRow('', cells('2024-02-04'), read, now.getTime())).toEqual({
    wrong: 'This day has not come yet. Check the date.',
  });
});

test.each(['19.7 MΩ', '0 MΩ', '0.0 MΩ', '<0.01 MΩ', '<1 MΩ'])(
  'a reading that leaves the line as a bound does not turn an undecided record into a go: %s',
  (second) => {
    const readings = [89, 79.7, 68.5, 61.3, 55, 49, 42.8, 37.4, 33.3, 30.3, 25.3, 22.2].map((value) => `${value} MΩ`);
    const temperatures = [25, 30, 40, 25, 25, 25, 40, 30, 25, 25, 40, 30, 25, 30];
    const rows = [...readings, second, '17 MΩ'].map((reading, index) => {
      const day = new Date(Date.UTC(2022, 9, 26) + Math.round(index * 114.6) * 86_400_000).toISOString().slice(0, 10);
      return `${day}\t${reading}\t${temperatures[index]}`;
    });
    const result = trendForm(() => Date.UTC(2026, 10, 27)).judge({ rows: rows.join('\n') });
    expect(result).toMatchObject({ state: 'judged', verdict: 'undecided' });
  },
);
