import { describe, expect, it } from 'vitest';
import {
  findingMaker,
  type Nothing,
  type Severity,
  step,
  type Verdict,
  verdictOf,
} from '../../../../src/kernel/assessment/assessment.ts';

const finding = findingMaker<{ alike: Nothing; short: { ohms: number } }>();

describe('the verdict of findings', () => {
  const rows: [Severity[], Verdict][] = [
    [[], 'undecided'],
    [['note'], 'undecided'],
    [['caution'], 'undecided'],
    [['caution', 'note'], 'undecided'],
    [['pass'], 'go'],
    [['pass', 'pass', 'pass'], 'go'],
    [['pass', 'caution'], 'go'],
    [['pass', 'note', 'caution'], 'go'],
    [['undecided'], 'undecided'],
    [['pass', 'undecided'], 'undecided'],
    [['undecided', 'pass', 'pass'], 'undecided'],
    [['fail'], 'no-go'],
    [['pass', 'fail'], 'no-go'],
    [['fail', 'undecided'], 'no-go'],
    [['undecided', 'fail', 'pass'], 'no-go'],
    [['stop'], 'undecided'],
    [['stop', 'pass'], 'undecided'],
    [['stop', 'fail'], 'undecided'],
    [['fail', 'pass', 'stop'], 'undecided'],
  ];

  it.each(rows)('%o is %s', (severities, verdict) => {
    expect(verdictOf(severities.map((severity) => finding('alike', severity)))).toBe(verdict);
  });

  it('does not depend on the order', () => {
    for (const [severities, verdict] of rows) {
      const reversed = [...severities].reverse();
      expect(verdictOf(reversed.map((severity) => finding('alike', severity)))).toBe(verdict);
    }
  });
});

describe('a finding', () => {
  it('has every part, empty by default', () => {
    expect(finding('alike', 'fail')).toEqual({ code: 'alike', severity: 'fail', readings: [], limits: [] });
  });

  it('keeps what was given', () => {
    const said = { readings: ['plusU'], limits: ['bridge-short' as const], ohms: 3.8 };
    expect(finding('short', 'fail', said)).toEqual({ code: 'short', severity: 'fail', ...said });
  });

  it('shares no part with another finding', () => {
    finding('alike', 'note').readings.push('plusU');
    expect(finding('alike', 'note').readings).toEqual([]);
  });
});

it('a step has a code', () => {
  expect(step('measure-bus')).toEqual({ code: 'measure-bus' });
});
