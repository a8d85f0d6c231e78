import { describe, expect, it } from 'vitest';
import { compareSets } from '../../../../../src/calculators/winding/rule/again.ts';
import { judgeBalance } from '../../../../../src/calculators/winding/rule/balance.ts';
import { mapPairs, oddDeltaWinding, type Pairs } from '../../../../../src/calculators/winding/rule/phases.ts';
import { judgeSet, type WindingSet } from '../../../../../src/calculators/winding/rule/set.ts';
import type { Interval } from '../../../../../src/kernel/reading/interval.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, celsius, find, high, pairs, said, usual } from './measured.ts';

const three = (...at: [Interval, Interval, Interval]): Pairs<Interval> => ({ UV: at[0], VW: at[1], WU: at[2] });
const exactly = (ohms: number): Interval => ({ lo: ohms, hi: ohms });
const none = exactly(0);

describe('two sets that fail', () => {
  const set = (UV: number, VW: number, WU: number, odd: 'UV' | 'VW' | 'WU' = 'WU'): WindingSet => {
    const intervals = three(exactly(UV), exactly(VW), exactly(WU));
    const finite = {
      ...{ intervals, lines: intervals, leads: { interval: none, value: 0, findings: [] } },
      odd: { name: odd, side: 'high' as const },
    };
    return { verdict: 'no-go', findings: [], open: [], finite };
  };

  it('are alike up to 5 %, with two leads up to a contact more, whichever is higher', () => {
    const one = set(1, 1, 1);
    const both = (other: number, twoLeads: boolean) => [
      compareSets(one, set(1, 1, other), twoLeads),
      compareSets(set(1, 1, other), one, twoLeads),
    ];
    expect(both(1.05, false)).toEqual(['confirms', 'confirms']);
    expect(both(1.06, false)).toEqual(['differs', 'differs']);
    expect(both(1.1, true)).toEqual(['confirms', 'confirms']);
    expect(both(1.11, true)).toEqual(['differs', 'differs']);
  });

  it('at another pair are not alike, though no reading moved far', () => {
    expect(compareSets(set(1, 1, 1), set(1, 1, 1, 'UV'), false)).toBe('differs');
    const first = { ...usual, readings: pairs('1.0000R | 1.0480R | 1.1200R') };
    expect(assess(first).verdict).toBe('no-go');
    const { cause, verdict } = assess({ ...first, again: pairs('0.9600R | 1.0500R | 1.0700R') });
    expect([verdict, cause]).toEqual(['no-go', 'contact']);
  });
});

describe('a set as far off to both sides', () => {
  const order = ['1.00R | 1.50R | 2.00R', '2.00R | 1.50R | 1.00R', '1.50R | 2.00R | 1.00R'];

  it('counts as low, whatever the order of its pairs: a contact may be in the two others', () => {
    for (const text of order) {
      const { finite } = judgeSet(pairs(text), {
        ...{ leads: 'zeroed', leadOhms: missing, meter: { counts: 1 } },
        goodLimit: 'winding-unbalance-good',
      });
      expect(finite?.odd.side).toBe('low');
      expect(assess({ readings: pairs(text), again: pairs(text), leads: 'zeroed' }).cause).toBe('open');
    }
  });
});

it('a single high pair is the winding, whichever it is, and a single low one may be a contact in the two others', () => {
  const cause = (text: string) => assess({ readings: pairs(text), again: pairs(text), leads: 'zeroed' }).cause;
  for (const [one, others] of [
    ['25.00 Ω', '20.00 Ω'],
    ['20.00 Ω', '25.00 Ω'],
  ]) {
    const causes = [
      `${one} | ${others} | ${others}`,
      `${others} | ${one} | ${others}`,
      `${others} | ${others} | ${one}`,
    ];
    expect(causes.map(cause)).toEqual(Array(3).fill(one === '25.00 Ω' ? 'winding' : 'open'));
  }
});

describe('the balance', () => {
  const judged = (lines: Pairs<Interval>, fourLeads = true, leads = none) =>
    judgeBalance({ intervals: lines, leads, fourLeads, goodLimit: 'winding-unbalance-good', net: undefined }).code;
  const points = (UV: number, VW: number, WU: number) => mapPairs({ UV, VW, WU }, exactly);

  it('exactly at the limit that fails, and at that which passes, is not beyond it', () => {
    expect(judged(points(95, 100, 105))).toBe('winding-between-limits');
    expect(judged(points(95, 100, 105), false)).toBe('winding-between-limits');
    expect(judged(points(98, 100, 102))).toBe('winding-balanced');
    // 2 % at least, and at most a little more: perhaps within the limit.
    expect(judged(three(exactly(98), exactly(100), { lo: 102, hi: 102.1 }))).toBe('winding-too-coarse');
  });

  it('that may be of equal windings is too coarse, not between the limits', () => {
    const wide = { lo: 1, hi: 1.05 };
    expect(judged(three(wide, wide, wide))).toBe('winding-too-coarse');
  });

  it('of nothing but zeros is not for want of leads', () => {
    expect(judged(points(0, 0, 0))).toBe('winding-too-coarse');
    expect(judged(points(1, 1, 1), true, { lo: 0, hi: 2 })).toBe('winding-too-coarse');
  });

  it('with two leads needs an ohm at each pair, and exactly one is enough', () => {
    const limits = (UV: number, leads: number) =>
      judgeBalance({
        intervals: points(UV, 20, 20),
        leads: exactly(leads),
        fourLeads: false,
        goodLimit: 'winding-unbalance-good',
        net: undefined,
      }).limits;
    expect(limits(20, 19)).not.toContain('winding-four-leads-below');
    expect(limits(19.99, 19)).toContain('winding-four-leads-below');
  });

  it('shows the deviation of the figures, not the most that it can be', () => {
    const { deviationPercent } = find({ readings: pairs('2.00 Ω | 2.00 Ω | 2.03 Ω') }, 'winding-balanced');
    expect(deviationPercent).toBeCloseTo(0.995, 3);
  });
});

describe('the mated connector', () => {
  const across = (text: string): Change => ({ acrossJoint: typed(text) });

  it('has no excess to explain once a second set has passed', () => {
    const first = pairs('0.440R | 0.440R | 0.400R');
    expect(assess({ readings: first, ...across('25.0 mΩ') }).joint).toBe('bad');
    const since = { readings: first, again: pairs('0.400R | 0.400R | 0.400R'), ...across('25.0 mΩ') };
    expect(assess(since).joint).toBe('good');
    expect(find(since, 'winding-joint-good').limitOhms).toBe(0.05);
    // The leads are in it all the same.
    const two: Change = { ...since, leads: 'subtract', leadOhms: typed('0.100 Ω'), ...across('0.180 Ω') };
    expect(
      assess({ ...two, readings: pairs('22.00 Ω | 22.00 Ω | 20.00 Ω'), again: pairs('20.00 Ω | 20.04 Ω | 20.02 Ω') })
        .joint,
    ).toBe('unclear');
  });

  it('read with two leads has their resistance and their contacts in it', () => {
    const two: Change = { ...high, leads: 'subtract', leadOhms: typed('0.100R') };
    expect(assess({ ...two, ...across('0.180R') }).joint).toBe('unclear');
    expect(assess({ ...two, ...across('0.220R') }).joint).toBe('bad');
  });

  it('that is unclear beside two alike sets asks for no other explanation', () => {
    const { readings } = usual;
    const lines = said({ readings, again: readings, ...across('0.1 Ω') });
    expect(lines).toContain('winding-joint-unclear undecided acrossJoint');
    expect(lines).not.toContain('winding-contact-possible note');
  });
});

describe('an earlier value', () => {
  const beside = (reading: string, reference: string, other: Change = {}) =>
    said({
      ...{ readings: pairs(`${reading} | ${reading} | ${reading}`), leads: 'subtract', leadOhms: typed('2.0 Ω') },
      ...{ reference: typed(reference), temperature: celsius('20'), referenceTemperature: celsius('20') },
      ...other,
    }).filter((one) => one.startsWith('winding-reference'));

  it('is compared without the leads', () => {
    expect(beside('22.0 Ω', '20.0 Ω')).toEqual(['winding-reference-matches pass reference']);
    expect(beside('20.0 Ω', '22.0 Ω')).toEqual(['winding-reference-differs undecided reference']);
  });

  it('that may be a tenth higher is too close to tell', () => {
    const coarse: Change = { leads: 'four', leadOhms: missing };
    expect(beside('20 Ω', '25.0 Ω', coarse)).toEqual(['winding-reference-differs undecided reference']);
    expect(beside('20 Ω', '22.5 Ω', coarse)).toEqual(['winding-reference-too-close undecided reference']);
    expect(beside('20 Ω', '17.7 Ω', coarse)).toEqual(['winding-reference-too-close undecided reference']);
  });
});

it('no winding of a delta is named if another one is odd at other ends of the readings', () => {
  expect(oddDeltaWinding(three({ lo: 2.2, hi: 3.9 }, { lo: 2.8, hi: 3 }, { lo: 1.6, hi: 1.8 }))).toBeUndefined();
  expect(oddDeltaWinding(three(exactly(2.2), exactly(2.8), exactly(1.6)))).toEqual({ name: 'VW', side: 'high' });
});
