import fc from 'fast-check';
import { expect, test } from 'vitest';
import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import type { TrendInput, TrendRow } from '../../../../../src/calculators/trend/rule/input.ts';
import { readTrendTable } from '../../../../../src/calculators/trend/rule/table.ts';
import { formatReading } from '../../../../../src/kernel/reading/format-reading.ts';
import { celsius, missing, ohms, underOhms } from '../../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

/** Years with a reading each, in decades around the minimum; scatter and temperatures as people have them. */
const records = fc
  .record({
    start: fc.double({ min: 6.2, max: 9.5, noNaN: true }),
    fall: fc.double({ min: -0.02, max: 0.25, noNaN: true }),
    scatter: fc.array(fc.double({ min: -0.08, max: 0.08, noNaN: true }), { minLength: 2, maxLength: 14 }),
    celsius: fc.array(fc.integer({ min: 33, max: 46 }), { minLength: 14, maxLength: 14 }),
  })
  .map(({ start, fall, scatter, celsius: temperatures }): TrendRow[] =>
    scatter.map((off, year) => ({
      line: year + 1,
      cells: [],
      day: 15_000 + year * 365,
      reading: ohms(10 ** (start - fall * year + off)),
      temperature: celsius(temperatures[year] ?? 40),
    })),
  );

const inputOf = (rows: TrendRow[]): TrendInput => ({
  table: { rows, keptOut: [], unused: [] },
  correction: 'halving',
  machineClass: 'random-wound',
  ratedVoltage: missing,
});

const ohmsOf = ({ reading }: TrendRow) => (reading.kind === 'value' ? reading.value : 0);

function earliestOf(rows: TrendRow[]): number {
  const { findings } = assessTrend(inputOf(rows));
  if (findings.some(({ code }) => code === 'trend-meets-now')) return Number.NEGATIVE_INFINITY;
  const days = findings.flatMap((one) => ('earliestDay' in one ? [one.earliestDay] : []));
  return days[0] ?? Number.POSITIVE_INFINITY;
}

test('readings that are worse by a factor that grows with time never raise the verdict nor put the meeting off', () => {
  const met = tally();
  fc.assert(
    fc.property(
      records,
      fc.array(fc.double({ min: 0.7, max: 1, noNaN: true }), { minLength: 14, maxLength: 14 }),
      (rows, steps) => {
        let factor = 1;
        const worse = rows.map((row, index) => {
          factor *= steps[index] ?? 1;
          return { ...row, reading: ohms(ohmsOf(row) * factor) };
        });
        const before = assessTrend(inputOf(rows));
        const after = assessTrend(inputOf(worse));
        met.add(before.verdict);
        expect(rank[after.verdict]).toBeLessThanOrEqual(rank[before.verdict]);
        if (before.fit && after.fit) expect(earliestOf(worse)).toBeLessThanOrEqual(earliestOf(rows) + 1e-6);
      },
    ),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

test('a newest reading that is lower, only bounded from above, or can’t be used never makes a go', () => {
  fc.assert(
    fc.property(records, fc.double({ min: 0.01, max: 1, noNaN: true }), (rows, factor) => {
      const last = rows.at(-1) as TrendRow;
      const before = rank[assessTrend(inputOf(rows)).verdict];
      const lower = [...rows.slice(0, -1), { ...last, reading: ohms(ohmsOf(last) * factor) }];
      expect(rank[assessTrend(inputOf(lower)).verdict]).toBeLessThanOrEqual(before);
      const bounded = [...rows.slice(0, -1), { ...last, reading: underOhms(ohmsOf(last)) }];
      expect(assessTrend(inputOf(bounded)).verdict).not.toBe('go');
      const lost = inputOf(rows.slice(0, -1));
      lost.table.keptOut = [{ line: last.line, cells: [], code: 'temperature-missing', day: last.day }];
      expect(assessTrend(lost).verdict).not.toBe('go');
    }),
    { numRuns: runs },
  );
});

test('the unit in which a reading is typed, and the order of the rows, change nothing', () => {
  fc.assert(
    fc.property(records, fc.boolean(), (rows, reversed) => {
      const cellsIn = (unit: 'kΩ' | 'MΩ', size: number) =>
        rows.map((row, index) => [
          `${2001 + index}-06-01`,
          `${Math.round(ohmsOf(row) / 1e3) / size} ${unit}`,
          formatReading(row.temperature),
        ]);
      const kilo = assessTrend({ ...inputOf([]), table: readTrendTable(cellsIn('kΩ', 1), { decimalMark: '.' }) });
      const mega = cellsIn('MΩ', 1000);
      const other = assessTrend({
        ...inputOf([]),
        table: readTrendTable(reversed ? mega.reverse() : mega, { decimalMark: '.' }),
      });
      expect(other.verdict).toBe(kilo.verdict);
      expect(other.fit?.slope ?? 0).toBeCloseTo(kilo.fit?.slope ?? 0, 9);
      expect(other.rows).toHaveLength(rows.length);
    }),
    { numRuns: runs },
  );
});

test('a later day never raises the verdict, and a go is gone when its year is over', () => {
  const lost = { go: 0 };
  fc.assert(
    fc.property(records, fc.double({ min: 0, max: 900, noNaN: true }), (rows, age) => {
      const lastDay = Math.max(...rows.map(({ day }) => day));
      const fresh = assessTrend({ ...inputOf(rows), today: lastDay });
      const old = assessTrend({ ...inputOf(rows), today: lastDay + age });
      expect(rank[old.verdict]).toBeLessThanOrEqual(rank[fresh.verdict]);
      if (age > 365.25) expect(old.verdict).not.toBe('go');
      if (fresh.verdict === 'go' && old.verdict !== 'go') lost.go++;
    }),
    { numRuns: runs },
  );
  expect(lost.go).toBeGreaterThan(runs / 50);
});
