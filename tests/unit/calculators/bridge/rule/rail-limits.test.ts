import { describe, expect, it } from 'vitest';
import {
  agree,
  disagree,
  isBelow,
  isComparable,
  isMetal,
  isShort,
  isSteady,
  mayBeShort,
  railReading,
} from '../../../../../src/calculators/bridge/rule/rail-reading.ts';
import { diodeField, diodeWays, switchPositions } from '../../../../../src/calculators/bridge/rule/switch-position.ts';
import { missing, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, codes, find, plus, said } from './stage.ts';

const at = (ohms: number) => ({ lo: ohms, hi: ohms });
const open = { lo: 1e6, hi: Number.POSITIVE_INFINITY };

describe('a short', () => {
  it('ends at its limit, and so does metal', () => {
    expect([isShort(at(1000)), isShort(at(1001))]).toEqual([true, false]);
    expect([isMetal(at(10)), isMetal(at(10.1))]).toEqual([true, false]);
    const may = (text: string) => mayBeShort(railReading('U', typed(text), {}));
    expect([may('1000 Ω'), may('1001 Ω'), may('OL'), may('<1M')]).toEqual([true, false, false, true]);
  });

  it('of 10 Ω beside more is metal, of more than 10 Ω is like the others', () => {
    expect(said(plus('400 Ω | 500 Ω | 10 Ω'))).toContain('rail-short fail plusW');
    expect(said(plus('400 Ω | 500 Ω | 10 Ω'))).toContain('rail-all-short caution plusU plusV plusW');
    expect(said(plus('10 Ω | 10 Ω | 10 Ω'))).toEqual(['rail-all-short undecided plusU plusV plusW']);
    expect(said(plus('400 Ω | 500 Ω | 11 Ω'))).toEqual(['rail-all-short undecided plusU plusV plusW']);
  });

  it('both ways is metal only if both are', () => {
    const metal = (row: string, exchanged: string) =>
      find({ ...plus(row), plusExchanged: typed(exchanged) }, 'rail-short-both-ways');
    expect(metal('8 Ω | 8 Ω | 8 Ω', '9 Ω')).toMatchObject({ metal: true, suspects: ['plusU'] });
    expect(metal('8 Ω | 8 Ω | 8 Ω', '500 Ω').metal).toBe(false);
    expect(metal('500 Ω | 500 Ω | 500 Ω', '8 Ω').metal).toBe(false);
  });

  it('is not judged with exchanged leads if U itself is none, or was not read', () => {
    const alone = ['rail-all-short undecided plusV plusW'];
    const change = { ...plus(' | 8 Ω | 8 Ω', ''), plusExchanged: typed('8 Ω') };
    expect(said(change)).toEqual(['rail-incomplete undecided plusU', ...alone]);
    expect(said({ ...plus('8 Ω | 8 Ω | 8 Ω'), plusExchanged: typed('<5k') })).toEqual([
      'rail-all-short undecided plusU plusV plusW',
    ]);
  });

  it('that all three may be and none certainly is stays possible', () => {
    expect(said(plus('<5k | <5k | <5k'))).toEqual([
      'rail-first-contradicts undecided plusU plusAgain',
      'rail-short-possible undecided plusU plusV plusW',
    ]);
  });

  it('that was metal at first and is none at the end contradicts itself', () => {
    expect(codes(plus('10 Ω | 470k | 471k', '470k'))).toContain('rail-first-contradicts');
    expect(codes(plus('11 Ω | 470k | 471k', '470k'))).not.toContain('rail-first-contradicts');
    expect(codes(plus('OL | 470k | 471k', '470k'))).not.toContain('rail-first-contradicts');
  });
});

describe('two readings', () => {
  it('agree within the tolerance, and open agrees with open only', () => {
    expect(agree(at(100), at(110), 10)).toBe(true);
    expect(agree(at(100), at(111), 10)).toBe(false);
    expect(agree(open, open, 10)).toBe(true);
    expect(agree(open, at(1e6), 10)).toBe(false);
    expect(agree(at(1e6), open, 10)).toBe(false);
  });

  it('are below each other only beyond the tolerance', () => {
    expect(isBelow(at(100), at(111), 10)).toBe(true);
    expect(isBelow(at(100), at(110), 10)).toBe(false);
    expect(isBelow(at(111), at(100), 10)).toBe(false);
    expect(disagree(at(111), at(100), 10)).toBe(true);
    expect(isBelow(at(0), at(0), 10)).toBe(false);
  });

  it('can’t be compared without a figure', () => {
    const comparable = (text: string) => isComparable(railReading('U', typed(text), {}));
    expect([comparable('under range'), comparable('<5k'), comparable('5k'), comparable('OL')]).toEqual([
      false,
      true,
      true,
      true,
    ]);
  });

  it('of U stand if both were taken, can be compared and agree', () => {
    const steady = (first: Reading, again: Reading) => {
      const readings = { U: first, V: typed('1k'), W: typed('1k') };
      return isSteady({ readings, again, exchanged: missing }, 10, {});
    };
    expect(steady(typed('1k'), typed('1.1k'))).toBe(true);
    expect(steady(typed('1k'), typed('1.2k'))).toBe(false);
    expect(steady(missing, typed('1k'))).toBe(false);
    expect(steady(typed('1k'), missing)).toBe(false);
    expect(steady(missing, missing)).toBe(false);
    expect(steady(typed('under range'), typed('1k'))).toBe(false);
    expect(steady(typed('1k'), typed('under range'))).toBe(false);
    expect(steady(typed('OL'), typed('OL'))).toBe(true);
  });
});

describe('the six switches', () => {
  it('are named by rail and terminal, in the order in which they are read', () => {
    expect(switchPositions).toEqual(['plusU', 'plusV', 'plusW', 'minusU', 'minusV', 'minusW']);
  });

  it('have two readings each in a diode test', () => {
    const fields = switchPositions.flatMap((position) => diodeWays.map((way) => diodeField({ position, way })));
    expect(fields.slice(0, 2)).toEqual(['plusForwardU', 'plusReverseU']);
    expect(fields.slice(-2)).toEqual(['minusForwardW', 'minusReverseW']);
    expect(fields).toHaveLength(12);
    expect(diodeWays).toEqual(['forward', 'reverse']);
  });
});

describe('a rail of which two readings are shorts', () => {
  it('is judged by what is left, which is nothing to compare', () => {
    expect(said(plus('470k | 0.3 Ω | 0.4 Ω'))).toEqual([
      'rail-short fail plusV plusW',
      'bridge-more-than-one caution',
      'bridge-suspect note',
    ]);
    expect(assess(plus('470k | 0.3 Ω | 0.4 Ω')).verdict).toBe('no-go');
  });
});
