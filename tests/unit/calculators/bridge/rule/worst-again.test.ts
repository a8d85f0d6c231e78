import { describe, expect, it } from 'vitest';
import { shortedTerminals } from '../../../../../src/calculators/bridge/rule/rail.ts';
import { isBelow, isSteady } from '../../../../../src/calculators/bridge/rule/rail-reading.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { assess, type Change, codes, find, minus, plus, said, worst } from './stage.ts';

describe('the worst terminal, read again', () => {
  it('is that of the rail that is clearly off, though the other rail reads less', () => {
    const change = { ...plus('450k | 455k | 200k'), ...minus('45k | 44k | 39k'), ...worst('460k') };
    expect(find(change, 'again-contradicts').position).toBe('plusW');
  });

  it('proves no other terminal, though it reads the same', () => {
    const change = { ...plus('450k | 455k | 9k'), ...minus('45k | 46k | 8k'), ...worst('9k') };
    expect(assess(change).drive).toBe('suspect');
    expect(find(change, 'bridge-suspect').lacking).toEqual(['second-reading']);
  });

  it('proves no leak beside a single other reading', () => {
    const change = { ...minus('45k | 9k | '), ...worst('9.1k') };
    expect(assess(change)).toMatchObject({ verdict: 'no-go', drive: 'suspect' });
    expect(find(change, 'bridge-suspect').lacking).toEqual(['sound-sister']);
  });

  it('is as short as it was, though it is not clearly below the others', () => {
    expect(codes({ ...plus('11 Ω | 9 Ω | 12 Ω'), ...worst('9 Ω') })).not.toContain('again-contradicts');
  });

  it('is odd again if it is off one of the others', () => {
    expect(codes({ ...plus('430k | 470k | 480k'), ...worst('431k') })).not.toContain('again-contradicts');
    expect(codes({ ...plus('430k | 470k | 480k'), ...worst('445k') })).toContain('again-contradicts');
  });

  it('below the range of the meter may be a short, so it fits no rail, open or not', () => {
    const open = { ...plus('OL | OL | OL'), ...minus('OL | OL | OL'), tipsTogether: typed('0.2 Ω') };
    expect(assess(open).verdict).toBe('go');
    for (const change of [open, {}]) {
      expect(codes({ ...change, ...worst('under range') })).toContain('again-does-not-fit');
      expect(assess({ ...change, ...worst('under range') }).verdict).toBe('undecided');
    }
  });
});

describe('a rail that a sister differs from', () => {
  it('is proven bad by one of its odd terminals that was read twice', () => {
    const change: Change = { ...plus('430k | 470k | 480k'), sister: 'differs' };
    expect(find(change, 'rail-unbalanced').suspects).toEqual(['plusU', 'plusW']);
    expect(assess(change).drive).toBe('convicted');
  });
});

describe('the order in which a rail was read', () => {
  const moves = (change: Change) => codes(change).filter((code) => /^rail-(first-odd|still-climbing)$/.test(code));

  it('does not matter once U stands', () => {
    expect(moves(plus('450k | 430k | 480k'))).toEqual([]);
    expect(codes(plus('450k | 430k | 480k'))).toContain('rail-uneven');
  });

  it('is that of V and W if U has no figure, or is a short', () => {
    expect(moves(plus('470k | 300k | 470k', 'under range'))).toEqual(['rail-first-odd']);
    expect(moves(plus('0.3 Ω | 300k | 470k', '0.5 Ω'))).toEqual(['rail-first-odd']);
  });

  it('goes on to the last reading of U if the first one had no figure', () => {
    expect(moves(plus('under range | 470k | 300k', '470k'))).toEqual([]);
    expect(moves(plus('under range | 300k | 400k', '470k'))).toEqual(['rail-still-climbing']);
  });

  it('leaves out a terminal that carries the short of the other rail', () => {
    const change = { ...minus('47k | 47k | 0.3 Ω'), ...plus('470k | 472k | 520k', '') };
    expect(moves(change)).toEqual([]);
    expect(moves(plus('470k | 472k | 520k', ''))).toEqual(['rail-first-odd']);
  });

  it('says nothing of a rail that has nothing left to compare', () => {
    expect(moves({ ...minus('47k | 47k | 0.3 Ω'), ...plus('0.3 Ω | 0.4 Ω | 520k', '') })).toEqual([]);
  });
});

describe('shorts', () => {
  const terminals = (row: string) =>
    shortedTerminals({ readings: typedPhases(row), again: missing, exchanged: missing }, {});

  it('are those of terminals beside one that is none', () => {
    expect(terminals('0.3 Ω | 45k | 46k')).toEqual(['U']);
    expect(terminals('0.3 Ω | 0.3 Ω | OL')).toEqual(['U', 'V']);
    expect(terminals('458 Ω | 457 Ω | 456 Ω')).toEqual([]);
    expect(terminals('458 Ω | 457 Ω | <5k')).toEqual([]);
  });

  it('one that is certain is enough for all of a rail that may be', () => {
    expect(said(plus('300 Ω | <5k | <5k'))).toEqual(['rail-all-short undecided plusU plusV plusW']);
  });
});

describe('two readings', () => {
  const steady = (first: string, again: string) => {
    const readings = { U: typed(first), V: missing, W: missing };
    return isSteady({ readings, again: typed(again), exchanged: missing }, 10, {});
  };

  it('of which one lacks, or has no figure, do not stand, open or not', () => {
    for (const none of ['', 'under range']) expect([steady(none, 'OL'), steady('OL', none)]).toEqual([false, false]);
    expect(steady('under range', 'under range')).toBe(false);
  });

  it('that are both open are not below each other', () => {
    const open = { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY };
    expect(isBelow(open, open, 10)).toBe(false);
  });
});

it('a way that reads exactly a tolerance more than the lowest still blocks', () => {
  const low = (exchanged: string) =>
    find({ ...minus('5.0k | 5.0k | 5.0k'), minusExchanged: typed(exchanged) }, 'rail-lower-than-usual').severity;
  expect([low('5.5k'), low('5.0k'), low('')]).toEqual(['caution', 'caution', 'undecided']);
});
