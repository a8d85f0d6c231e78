import { expect, it } from 'vitest';
import { assessDischarge } from '../../../src/calculators/discharge/rule/assess.ts';
import { dischargeFindings } from '../../../src/calculators/discharge/words.ts';
import { trendFindings } from '../../../src/calculators/trend/words.ts';
import { missing, type Reading, volts } from '../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../src/kernel/words/sentences.ts';
import { found } from '../../support/found.ts';

const days = (date: string) => Date.parse(date) / 86_400_000;

it('without a second reading of the bus, no time from it is stated', () => {
  const timeConstant: Reading = { kind: 'value', value: 50, unit: 's', resolution: 1 };
  const nothing = { startVoltage: missing, capacitance: missing, capacitanceTolerance: missing, bleeder: missing };
  const unread = { ...nothing, bleederTolerance: missing, second: missing, elapsed: missing, label: missing };
  const { findings } = assessDischarge({ ...unread, first: volts(565, 1), timeConstant });
  const text = sentenceOf(dischargeFindings, found(findings, 'longest-wait-from-reading'));
  expect(text).toMatch(/The longest time counts\.$/);
});

it('a minimum that may be met beyond the days that a short record foretells is given no day', () => {
  const parts = { code: 'trend-meets-within', severity: 'undecided', readings: [], limits: [] } as const;
  const text = (meets: { earliestDay?: number; latestDay?: number }) =>
    sentenceOf(trendFindings, { ...parts, readings: [], limits: [], reachDay: days('2027-03-01'), ...meets });
  expect(text({})).toContain('before the next yearly reading: not before 2027-03-01.');
  const earliestDay = days('2027-01-15');
  expect(text({ earliestDay })).toContain('on 2027-01-15 at the earliest, or not before 2027-03-01.');
  expect(text({ earliestDay, latestDay: days('2027-02-20') })).toContain('between 2027-01-15 and 2027-02-20.');
});
