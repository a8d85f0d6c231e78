import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inventedRecord } from '../../../../src/islands/trend/example.ts';
import { trendForm } from '../../../../src/islands/trend/form.ts';
import { trendInWords } from '../../../../src/texts/trend-plot.ts';
import { runs } from '../../../support/runs.ts';

const dates = ['2015-05-03', '2017-05-03', '2019-05-03', '2020-06-01', '2022-05-03', '3/5/2023', '2021', ''];
const readings = ['900M', '450 MΩ', '12', '>700M', '<1M', 'OL', '0', '4.9M', '1,250M', 'x', ''];
const temperatures = ['40', '25 °C', '77 °F', '5', '120', 'warm', ''];
const row = fc
  .tuple(fc.constantFrom(...dates), fc.constantFrom(...readings), fc.constantFrom(...temperatures))
  .map((cells) => cells.join(';'));
const choice = (id: string) => {
  const field = trendForm.fields.find((one) => one.id === id);
  const values = field?.kind === 'choice' ? field.options.map(({ value }) => value) : [];
  return fc.constantFrom('', ...values);
};

test('whatever rows are put in are judged in sentences that are whole', () => {
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
      const result = trendForm.judge(typed);
      if (result.state === 'blank') return;
      if (result.state !== 'judged') throw new Error(result.state);
      const said = [...result.findings.map(({ text }) => text), ...result.steps, trendInWords(result.assessment)].join(
        ' ',
      );
      expect(said).not.toMatch(/NaN|undefined|Infinity|∞/);
    }),
    { numRuns: runs },
  );
});

test('the invented record is a go, with one bound, one sudden fall that was made good, and one row kept out', () => {
  const result = trendForm.judge({ rows: inventedRecord() });
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
