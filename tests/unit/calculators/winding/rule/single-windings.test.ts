import { describe, expect, it } from 'vitest';
import { mapPairs, oddDeltaWinding, oddPhase } from '../../../../../src/calculators/winding/rule/phases.ts';
import { assess, type Change, find, pairs, uneven } from './measured.ts';

const codes = (change: Change) =>
  assess(change)
    .findings.map(({ code }) => code)
    .filter((code) => /suspect|phases/.test(code));

describe('the windings by themselves', () => {
  it('are given for the connection, or for both if it is not known', () => {
    expect(codes({})).toEqual(['winding-phases-star', 'winding-phases-delta']);
    expect(codes({ connection: 'star' })).toEqual(['winding-phases-star']);
    expect(codes({ connection: 'delta' })).toEqual(['winding-phases-delta']);
    expect(codes({ ...uneven, connection: 'star' })).toEqual(['winding-suspect-star', 'winding-phases-star']);
    expect(codes({ ...uneven, connection: 'delta' })).toEqual(['winding-suspect-delta', 'winding-phases-delta']);
  });

  it('of a star are U + V and so on', () => {
    const { ohms, severity } = find({ readings: pairs('2.300 Ω | 2.500 Ω | 2.400 Ω') }, 'winding-phases-star');
    expect(severity).toBe('note');
    // 1.1 + 1.2, 1.2 + 1.3, 1.3 + 1.1
    expect([ohms.U, ohms.V, ohms.W].map((value) => value.toFixed(6))).toEqual(['1.100000', '1.200000', '1.300000']);
  });

  it('of a delta each lie beside the other two in series', () => {
    const { ohms, severity } = find({ readings: pairs('2.300 Ω | 2.500 Ω | 2.400 Ω') }, 'winding-phases-delta');
    expect(severity).toBe('note');
    const line = (one: number, other: number, third: number) => 1 / (1 / one + 1 / (other + third));
    expect(line(ohms.UV, ohms.VW, ohms.WU)).toBeCloseTo(2.3, 9);
    expect(line(ohms.VW, ohms.WU, ohms.UV)).toBeCloseTo(2.5, 9);
    expect(line(ohms.WU, ohms.UV, ohms.VW)).toBeCloseTo(2.4, 9);
  });

  it('are not given if the readings fit none', () => {
    expect(codes({ readings: pairs('2.0000 Ω | 1.0000 Ω | 1.0000 Ω') })).toEqual([]);
    expect(codes({ readings: pairs('2.5000 Ω | 1.0000 Ω | 1.0000 Ω') })).toEqual([]);
  });
});

describe('the suspect', () => {
  it('is one phase of a star, or one winding of a delta', () => {
    expect(find(uneven, 'winding-suspect-star')).toMatchObject({ severity: 'note', name: 'W', side: 'high' });
    expect(find(uneven, 'winding-suspect-delta')).toMatchObject({ severity: 'note', name: 'UV', side: 'low' });
    const other = { readings: pairs('2.000 Ω | 2.000 Ω | 2.600 Ω') };
    expect(find(other, 'winding-suspect-star')).toMatchObject({ name: 'V', side: 'low' });
    expect(find(other, 'winding-suspect-delta')).toMatchObject({ name: 'WU', side: 'high' });
    expect(codes({ readings: pairs('2.000 Ω | 2.200 Ω | 2.400 Ω') }).filter((code) => /suspect/.test(code))).toEqual([
      'winding-no-single-suspect',
    ]);
  });

  it('of a sum is the terminal left out, with the connection that was stated', () => {
    const sum = { readings: pairs('2.0000 Ω | 1.0000 Ω | 1.0000 Ω') };
    expect(find({ ...sum, connection: 'star' }, 'winding-sum-of-others')).toMatchObject({
      pair: 'UV',
      leftOut: 'W',
      connection: 'star',
    });
    expect(find({ readings: pairs('2.5000 Ω | 1.0000 Ω | 1.0000 Ω') }, 'winding-more-than-others').pair).toBe('UV');
  });

  it('is more than twice as far from the middle one as the third', () => {
    const exactly = (UV: number, VW: number, WU: number) =>
      mapPairs({ UV, VW, WU }, (value) => ({ lo: value, hi: value }));
    // Phases of a star 1, 2, 4: twice as far is not more than twice.
    expect(oddPhase(exactly(3, 6, 5))).toBeUndefined();
    expect(oddPhase(exactly(3, 6.5, 5.5))).toEqual({ name: 'W', side: 'high' });
    // 1, 3, 4.
    expect(oddPhase(exactly(4, 7, 5))).toBeUndefined();
    expect(oddPhase(exactly(4.5, 7.5, 5))).toEqual({ name: 'U', side: 'low' });
    expect(oddPhase(exactly(9, 3, 3))).toBeUndefined();
    expect(oddDeltaWinding(exactly(2, 2, 2))).toBeUndefined();
  });

  it('has to be the same for all values within the errors, on the same side', () => {
    const wide = mapPairs({ UV: 2, VW: 2.02, WU: 2.02 }, (value) => ({ lo: value - 0.05, hi: value + 0.05 }));
    expect(oddPhase(wide)).toBeUndefined();
    const one = { UV: { lo: 1.9, hi: 2.1 }, VW: { lo: 2, hi: 2 }, WU: { lo: 2, hi: 2 } };
    expect(oddPhase(one)).toBeUndefined();
  });

  it('is named for the pair that is mapped', () => {
    expect(mapPairs({ UV: 1, VW: 2, WU: 3 }, (value, pair) => `${pair}${value}`)).toEqual({
      UV: 'UV1',
      VW: 'VW2',
      WU: 'WU3',
    });
  });
});
