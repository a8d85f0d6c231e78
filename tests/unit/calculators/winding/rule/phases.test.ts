import { describe, expect, it } from 'vitest';
import {
  deltaPhases,
  oddDeltaWinding,
  oddPhase,
  type Pairs,
  sharedTerminal,
  starPhases,
  sumOfOthers,
} from '../../../../../src/calculators/winding/rule/phases.ts';
import type { Interval } from '../../../../../src/kernel/reading/interval.ts';

const within = (UV: number, VW: number, WU: number, error = 0.001): Pairs<Interval> => {
  const one = (value: number) => ({ lo: value - error, hi: value + error });
  return { UV: one(UV), VW: one(VW), WU: one(WU) };
};

describe('each winding by itself', () => {
  it('in a star of 1, 2 and 3 Ω, which reads 3, 5 and 4 Ω', () => {
    expect(starPhases({ UV: 3, VW: 5, WU: 4 })).toEqual({ U: 1, V: 2, W: 3 });
  });

  it('in a delta of three times 3 Ω, which reads 2 Ω everywhere', () => {
    expect(deltaPhases({ UV: 2, VW: 2, WU: 2 })).toEqual({ UV: 3, VW: 3, WU: 3 });
  });

  it('in a delta with one open winding: its pair reads both others in series', () => {
    expect(deltaPhases({ UV: 2, VW: 1, WU: 1 })).toEqual({ UV: Number.POSITIVE_INFINITY, VW: 1, WU: 1 });
  });

  it('negative if no star has these readings', () => {
    expect(starPhases({ UV: 5, VW: 1, WU: 1 }).W).toBeLessThan(0);
  });
});

describe('the winding that differs', () => {
  it('in a star is the one that the odd reading does not go through', () => {
    // U has lost turns: 0.8, 1, 1 Ω reads 1.8, 2.0, 1.8 Ω.
    expect(oddPhase(within(1.8, 2, 1.8))).toEqual({ name: 'U', side: 'low' });
    // A bad joint in W: 1, 1, 1.3 Ω reads 2.0, 2.3, 2.3 Ω.
    expect(oddPhase(within(2, 2.3, 2.3))).toEqual({ name: 'W', side: 'high' });
  });

  it('in a delta is the one between the terminals of the odd reading', () => {
    // U–V has 2 Ω, the others 3 Ω: 2·6/8 = 1.5 and 3·5/8 = 1.875 Ω.
    expect(oddDeltaWinding(within(1.5, 1.875, 1.875))).toEqual({ name: 'UV', side: 'low' });
  });

  it('is not named if the readings are too coarse', () => {
    expect(oddPhase(within(1.8, 2, 1.8, 0.2))).toBeUndefined();
  });

  it('is not named if all three differ', () => {
    expect(oddPhase(within(1.8, 2, 2.2))).toBeUndefined();
    expect(oddDeltaWinding(within(1.8, 2, 2.2))).toBeUndefined();
  });
});

it('a reading that may be the sum of the other two is found', () => {
  expect(sumOfOthers(within(2, 1, 1))).toEqual({ pair: 'UV', leftOut: 'W', more: false });
  expect(sumOfOthers(within(1, 2, 1))).toEqual({ pair: 'VW', leftOut: 'U', more: false });
  expect(sumOfOthers(within(1, 1, 2.5))).toEqual({ pair: 'WU', leftOut: 'V', more: true });
  // With an error of 0.001 Ω on each, 2.002 Ω need not be more than 1 + 1 Ω, and 2.004 Ω is.
  expect(sumOfOthers(within(1, 1, 2.002))?.more).toBe(false);
  expect(sumOfOthers(within(1, 1, 2.004))?.more).toBe(true);
  expect(sumOfOthers(within(1.9, 1, 1))).toBeUndefined();
});

it('two pairs share a terminal', () => {
  expect(sharedTerminal(['UV', 'WU'])).toBe('U');
  expect(sharedTerminal(['UV', 'VW'])).toBe('V');
  expect(sharedTerminal(['VW', 'WU'])).toBe('W');
  expect(sharedTerminal(['UV'])).toBeUndefined();
  expect(sharedTerminal(['UV', 'VW', 'WU'])).toBeUndefined();
});
