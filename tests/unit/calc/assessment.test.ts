import { describe, expect, it } from 'vitest';
import { finding, type Severity, step, type Verdict, verdictOf } from '../../../src/calc/index.ts';

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
    expect(verdictOf(severities.map((severity) => finding('any', severity)))).toBe(verdict);
  });

  it('does not depend on the order', () => {
    for (const [severities, verdict] of rows) {
      const reversed = [...severities].reverse();
      expect(verdictOf(reversed.map((severity) => finding('any', severity)))).toBe(verdict);
    }
  });
});

describe('a finding', () => {
  it('has every part, empty where nothing was said', () => {
    expect(finding('rail-short', 'fail')).toEqual({
      code: 'rail-short',
      severity: 'fail',
      readings: [],
      limits: [],
      numbers: {},
      names: {},
    });
  });

  it('keeps what was said', () => {
    const said = { readings: ['plusU'], limits: ['bridge-short' as const], numbers: { a: 1 }, names: { rail: 'plus' } };
    expect(finding('rail-short', 'fail', said)).toEqual({ code: 'rail-short', severity: 'fail', ...said });
  });

  it('shares no part with another finding', () => {
    const one = finding('a', 'note');
    one.readings.push('plusU');
    expect(finding('a', 'note').readings).toEqual([]);
  });
});

describe('a step', () => {
  it('has a code and its names', () => {
    expect(step('measure-bus')).toEqual({ code: 'measure-bus', names: {} });
    expect(step('replace', { part: 'cable' })).toEqual({ code: 'replace', names: { part: 'cable' } });
  });
});
