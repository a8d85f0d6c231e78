import { describe, expect, it } from 'vitest';
import {
  type CableFloor,
  cableFactor,
  cableFloor,
  lengthExplains,
} from '../../../../src/kernel/assessment/cable-floor.ts';
import { judgeAfterTrip, judgeRoutine } from '../../../../src/kernel/assessment/judge-insulation.ts';
import { judgeWinding, severityOf } from '../../../../src/kernel/assessment/winding-insulation.ts';
import { limitPoints, limitValue } from '../../../../src/kernel/limits.ts';
import { celsius, missing, ohms, overOhms } from '../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../support/typed.ts';

const exactly = (value: number) => ({ lo: value, hi: value });
const point = 100e6;

describe('after a trip, just at the point', () => {
  const judge = (lo: number, hi: number, factor: number, to = factor) =>
    judgeAfterTrip(ohms(lo), { lo, hi }, point, { lo: factor, hi: to });

  it('a reading is not bad, and neither is its corrected value', () => {
    expect(judge(point, point, 1)).toBe('good');
    // As read just the point, corrected below: cold, not bad.
    expect(judge(point, point, 0.5)).toBe('cold');
    // As read below, corrected just the point: hot, not bad.
    expect(judge(50e6, 50e6, 2)).toBe('hot');
    expect(judge(25e6, 50e6, 2)).toBe('too-close');
    expect(judge(50e6, point, 0.1)).toBe('too-close');
    expect(judge(50e6, point - 1, 0.1)).toBe('bad');
  });

  it('in routine the corrected value is good', () => {
    const routine = (hi: number) => judgeRoutine(ohms(hi), { lo: hi / 2, hi }, point, exactly(1));
    expect(routine(point)).toBe('too-close');
    expect(routine(point - 1)).toBe('bad');
    expect(routine(2 * point)).toBe('good');
  });
});

describe('a winding', () => {
  const conditions = { limit: point, reference: 20, correction: 'halving', occasion: 'after-trip' } as const;

  it('that is not judged has no method that would judge otherwise', () => {
    expect(judgeWinding(ohms(1), { ...conditions, temperature: celsius(101) })).toEqual({
      judgement: 'temperature-needed',
      dissenting: [],
    });
    expect(judgeWinding(ohms(1), { ...conditions, temperature: missing })).toEqual({
      judgement: 'bad',
      dissenting: [],
    });
    expect(judgeWinding(ohms(1e9), { ...conditions, temperature: missing }).judgement).toBe('temperature-needed');
    expect(judgeWinding(ohms(60e6), { ...conditions, temperature: celsius(40) })).toEqual({
      judgement: 'hot',
      dissenting: [],
    });
  });

  it('is not doubted by a method that does not hold at its temperature', () => {
    const at = { ...conditions, temperature: celsius(90) };
    expect(judgeWinding(ohms(1e9), at)).toEqual({ judgement: 'good', dissenting: [] });
  });

  it('passes if it is good, fails if it is bad, and is undecided otherwise', () => {
    expect((['good', 'bad', 'hot', 'methods-differ'] as const).map(severityOf)).toEqual([
      'pass',
      'fail',
      'undecided',
      'undecided',
    ]);
  });

  it('is judged in routine by its corrected value alone', () => {
    // 60 MΩ at 40 °C, corrected to 20 °C by every method more than 70 MΩ.
    const at = { ...conditions, limit: 70e6, temperature: celsius(40) };
    expect(judgeWinding(ohms(60e6), at).judgement).toBe('hot');
    expect(judgeWinding(ohms(60e6), { ...at, occasion: 'routine' }).judgement).toBe('good');
  });
});

describe('the factor of a cable', () => {
  const points = limitPoints('cable-conversion-thermoplastic');
  const [first, last] = [points[0], points[points.length - 1]];

  it('without a published table is one at the temperature of the tables, and open beyond', () => {
    const reference = limitValue('cable-reference-temperature');
    expect(cableFactor('xlpe', celsius(reference))).toEqual({ lo: 1, hi: 1 });
    expect(cableFactor('xlpe', celsius(reference + 1))).toEqual({ lo: 1, hi: Number.POSITIVE_INFINITY });
    expect(cableFactor('xlpe', celsius(reference - 1))).toEqual({ lo: 0, hi: 1 });
    expect(cableFactor('xlpe', missing)).toEqual({ lo: 0, hi: Number.POSITIVE_INFINITY });
  });

  it('is that of the table at its ends, and open beyond them', () => {
    if (first === undefined || last === undefined) throw new Error('an empty table');
    expect(cableFactor('pvc', celsius(first[0]))).toEqual(exactly(first[1]));
    expect(cableFactor('pvc', celsius(last[0]))).toEqual(exactly(last[1]));
    expect(cableFactor('pvc', celsius(first[0] - 1))).toEqual({ lo: 0, hi: first[1] });
    expect(cableFactor('pvc', celsius(last[0] + 1))).toEqual({ lo: last[1], hi: Number.POSITIVE_INFINITY });
  });
});

describe('the floor of a cable', () => {
  const floor = (ohmsOf: number): CableFloor => ({ ohms: ohmsOf, metres: 100, factor: exactly(1), limits: [] });

  it('explains a reading that just reaches it, and is not above one', () => {
    expect(lengthExplains(exactly(40e6), floor(40e6))).toBe(true);
    expect(lengthExplains(exactly(40e6 - 1), floor(40e6))).toBe(false);
  });

  it('at the after-trip limit explains nothing, nor does any below the minimum of the machine', () => {
    expect(lengthExplains(exactly(point), floor(point))).toBe(false);
    expect(lengthExplains(exactly(point), floor(point - 1))).toBe(true);
    expect(lengthExplains(exactly(1e6), floor(0.5e6))).toBe(true);
    expect(lengthExplains(exactly(1e6 - 1), floor(0.5e6))).toBe(false);
  });

  it('needs a length', () => {
    const build = (metres: Parameters<typeof cableFloor>[0]['metres']) =>
      cableFloor({ metres, material: 'pvc', temperature: missing });
    expect(build(typed('100 m', 'length'))?.metres).toBe(100);
    for (const metres of [missing, overOhms(100), typed('0 m', 'length')]) expect(build(metres)).toBeUndefined();
  });
});
