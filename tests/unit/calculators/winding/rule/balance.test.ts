import { describe, expect, it } from 'vitest';
import { judgeBalance } from '../../../../../src/calculators/winding/rule/balance.ts';
import { judgeJoint } from '../../../../../src/calculators/winding/rule/joint.ts';
import { mapPairs, type Pairs, sumOfOthers } from '../../../../../src/calculators/winding/rule/phases.ts';
import { judgeSet } from '../../../../../src/calculators/winding/rule/set.ts';
import type { Interval } from '../../../../../src/kernel/reading/interval.ts';
import { missing, ohms, overOhms } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, find, high, pairs, uneven } from './measured.ts';

const exactly = (UV: number, VW: number, WU: number): Pairs<Interval> =>
  mapPairs({ UV, VW, WU }, (value) => ({ lo: value, hi: value }));
const none: Interval = { lo: 0, hi: 0 };

function balance(UV: number, VW: number, WU: number, given: { leads?: Interval; fourLeads?: boolean } = {}) {
  const { leads = none, fourLeads = true } = given;
  const intervals = exactly(UV, VW, WU);
  return judgeBalance({ intervals, leads, fourLeads, goodLimit: 'winding-unbalance-good', net: undefined }).code;
}

describe('the limits of the balance', () => {
  const at = (percent: number) => {
    // One of three x per cent of the mean above it: m(1 + x), and the others m(1 − x / 2).
    const half = 100 * (1 - percent / 200);
    return balance(half, half, 100 * (1 + percent / 100));
  };

  it('pass up to 2 %, fail above 5 %, and are undecided between', () => {
    expect([at(1.99), at(2.01), at(4.99), at(5.01)]).toEqual([
      'winding-balanced',
      'winding-between-limits',
      'winding-between-limits',
      'winding-unbalanced',
    ]);
  });

  it('with two leads hold whatever contact the tips add', () => {
    const two = { fourLeads: false };
    expect(balance(20, 20, 20, two)).toBe('winding-balanced');
    expect(balance(3, 3, 3, two)).toBe('winding-needs-four-leads');
    // Above the fail as read, and not with a contact less.
    expect(balance(2, 2, 2.2, two)).toBe('winding-needs-four-leads');
    expect(balance(20, 20, 22, two)).toBe('winding-unbalanced');
    expect(balance(20, 20, 20.7, two)).toBe('winding-between-limits');
  });

  it('with two leads need an ohm at each pair, leads taken off', () => {
    const two = { fourLeads: false };
    const limits = (UV: number, leads: number) =>
      judgeBalance({
        intervals: exactly(UV, 20, 20),
        leads: { lo: leads, hi: leads },
        fourLeads: false,
        goodLimit: 'winding-unbalance-good',
        net: undefined,
      }).limits;
    expect(balance(0.99, 1.0, 1.0, two)).toBe('winding-needs-four-leads');
    expect(limits(20, 19.5)).toContain('winding-four-leads-below');
    expect(limits(20, 0)).not.toContain('winding-four-leads-below');
  });

  it('compare nothing if the leads explain a whole reading', () => {
    const leads = { lo: 0, hi: 2 };
    expect(balance(2, 2, 2, { leads })).not.toBe('winding-balanced');
    expect(balance(2.001, 2, 2.001, { leads })).not.toBe('winding-balanced');
  });
});

describe('the figures of the balance', () => {
  it('are the deviation from the mean and the range in percent of it', () => {
    // Mean 2.2667: 0.2667 from it, 0.4 in all.
    const found = find(uneven, 'winding-unbalanced');
    expect(found.deviationPercent).toBeCloseTo((100 * (2.26667 - 2)) / 2.26667, 2);
    expect(found.rangePercent).toBeCloseTo((100 * 0.4) / 2.26667, 2);
    expect(found.badPercent).toBe(5);
  });

  it('are those of the readings without leads', () => {
    const change: Change = { readings: pairs('20.0 Ω | 24.0 Ω | 24.0 Ω'), leads: 'subtract', leadOhms: typed('2.0 Ω') };
    expect(find(change, 'winding-unbalanced').rangePercent).toBeCloseTo((100 * 4) / 20.6667, 2);
  });

  it('are bounds if a reading is no plain figure', () => {
    const change: Change = { readings: { ...uneven.readings, ...pairs('<2 Ω | 3.400 Ω | 3.400 Ω') } };
    expect(find(change, 'winding-unbalanced')).not.toHaveProperty('rangePercent');
    expect(find(change, 'winding-unbalanced').deviationPercent).toBeGreaterThan(5);
  });

  it('are not shown for a reading that its leads explain', () => {
    const change: Change = { ...high, leads: 'subtract', leadOhms: typed('20.00 Ω') };
    const codes = assess(change).findings.map(({ code }) => code);
    expect(codes.filter((code) => code.startsWith('winding-phases'))).toEqual([]);
  });
});

describe('a set of three readings', () => {
  const set = (text: string, leadOhms = '') =>
    judgeSet(pairs(text), {
      leads: leadOhms === '' ? 'four' : 'subtract',
      leadOhms: leadOhms === '' ? missing : typed(leadOhms),
      meter: { counts: 1 },
      goodLimit: 'winding-unbalance-good',
    });

  it('has one pair that is farthest from the mean, below it or above', () => {
    expect(set('2.000 Ω | 2.400 Ω | 2.400 Ω').finite?.odd).toEqual({ name: 'UV', side: 'low' });
    expect(set('2.000 Ω | 2.000 Ω | 2.400 Ω').finite?.odd).toEqual({ name: 'WU', side: 'high' });
    expect(set('2.400 Ω | 2.000 Ω | 2.400 Ω').finite?.odd).toEqual({ name: 'VW', side: 'low' });
  });

  it('is without its leads as figures and as intervals', () => {
    const { finite } = set('20.0 Ω | 24.0 Ω | 24.0 Ω', '2.0 Ω');
    expect(finite?.net).toEqual({ UV: 18, VW: 22, WU: 22 });
    expect(finite?.lines.UV.lo).toBeCloseTo(17.9, 6);
    expect(finite?.lines.UV.hi).toBeCloseTo(18.1, 6);
    expect(set('<2 Ω | 3.400 Ω | 3.400 Ω').finite).not.toHaveProperty('net');
    expect(set('2.0 Ω | 24.0 Ω | 24.0 Ω', '2.0 Ω').finite).not.toHaveProperty('net');
  });

  it('may have had leads of up to its lowest reading', () => {
    const { finite } = judgeSet(pairs('2.000 Ω | 3.000 Ω | 4.000 Ω'), {
      leads: 'subtract',
      leadOhms: missing,
      meter: {},
      goodLimit: 'winding-unbalance-good',
    });
    expect(finite?.leads.interval).toEqual({ lo: 0, hi: 2 });
  });
});

describe('the sum of the other two', () => {
  it('is met by just as much, and exceeded by more', () => {
    expect(sumOfOthers(exactly(2, 1, 1))).toEqual({ pair: 'UV', leftOut: 'W', more: false });
    expect(sumOfOthers(exactly(2.01, 1, 1))).toEqual({ pair: 'UV', leftOut: 'W', more: true });
    expect(sumOfOthers(exactly(1.99, 1, 1))).toBeUndefined();
  });
});

describe('the connector', () => {
  const failing = judgeSet(pairs('2.000 Ω | 2.400 Ω | 2.400 Ω'), {
    leads: 'four',
    leadOhms: missing,
    meter: {},
    goodLimit: 'winding-unbalance-good',
  });
  const joint = (value: number, four: boolean) => judgeJoint(ohms(value), {}, four, failing);

  it('is good up to its limit with four leads, and bad above', () => {
    expect([joint(0.05, true), joint(0.051, true)]).toEqual(['good', 'bad']);
  });

  it('with two leads is bad only beyond their contact', () => {
    expect(joint(0.05, false)).toBe('unclear');
    expect(joint(5, false)).toBe('bad');
  });

  it('in over-range is bad above a noted range, and on any range that was not noted', () => {
    const over = (atLeast: number | undefined) => judgeJoint(overOhms(atLeast), {}, true, failing);
    expect([over(undefined), over(1), over(0.01)]).toEqual(['bad', 'bad', 'unclear']);
  });
});

describe('what a second set that passes leaves', () => {
  it('doubts what failed, and nothing else', () => {
    const change: Change = { readings: pairs('2.000 Ω | OL | 2.002 Ω'), again: pairs('2.000 Ω | 2.004 Ω | 2.002 Ω') };
    expect(find(change, 'winding-open').severity).toBe('undecided');
    expect(find(change, 'winding-open-alone').severity).toBe('caution');
  });
});

describe('a set that fails with its leads subtracted', () => {
  it('has its suspects as well', () => {
    const change: Change = { readings: pairs('20.0 Ω | 24.0 Ω | 24.0 Ω'), leads: 'subtract', leadOhms: typed('2.0 Ω') };
    expect(assess(change).findings.map(({ code }) => code)).toContain('winding-suspect-star');
  });

  it('and is open, judges the connector without them', () => {
    const change: Change = { readings: pairs('OL | OL | OL'), leads: 'zeroed', acrossJoint: typed('5 Ω') };
    expect(assess(change).joint).toBe('bad');
  });
});

describe('two sets', () => {
  const again = (first: string, second: string, other: Change = {}) =>
    assess({ readings: pairs(first), again: pairs(second), ...other }).findings.map(({ code }) => code);

  it('confirm each other if the same pair is odd to the same side', () => {
    expect(again('2.000 Ω | 2.400 Ω | 2.400 Ω', '2.010 Ω | 2.410 Ω | 2.410 Ω')).toContain('winding-again-confirms');
    // The same pair, to the other side.
    expect(again('2.200 Ω | 2.400 Ω | 2.400 Ω', '2.200 Ω | 2.000 Ω | 2.000 Ω')).toContain('winding-again-differs');
    // The same side, another pair.
    expect(again('2.000 Ω | 2.400 Ω | 2.400 Ω', '2.400 Ω | 2.000 Ω | 2.400 Ω')).toContain('winding-again-differs');
  });

  it('differ if a reading moved by more than a contact moves it', () => {
    expect(again('2.000 Ω | 2.400 Ω | 2.400 Ω', '4.000 Ω | 4.800 Ω | 4.800 Ω')).toContain('winding-again-differs');
    expect(again('4.000 Ω | 4.800 Ω | 4.800 Ω', '2.000 Ω | 2.400 Ω | 2.400 Ω')).toContain('winding-again-differs');
  });

  it('differ if one is open and the other is not', () => {
    expect(again('2.000 Ω | OL | OL', '2.000 Ω | 2.400 Ω | 2.400 Ω')).toContain('winding-again-differs');
    expect(again('2.000 Ω | 2.400 Ω | 2.400 Ω', '2.000 Ω | OL | OL')).toContain('winding-again-differs');
    expect(again('2.000 Ω | OL | OL', 'OL | 2.000 Ω | OL')).toContain('winding-again-differs');
  });
});
