import { describe, expect, it } from 'vitest';
import { byLastDigit, everything, intervalOf, limitOfError, times } from '../../../../src/kernel/reading/interval.ts';
import { missing, ohms, overOhms, underOhms } from '../../../../src/kernel/reading/reading.ts';

const unbounded = Number.POSITIVE_INFINITY;

describe('the interval of a reading without an instrument', () => {
  it('is the value alone', () => {
    expect(intervalOf(ohms(450e3))).toEqual({ lo: 450e3, hi: 450e3 });
    expect(intervalOf(ohms(450e3, 1e3))).toEqual({ lo: 450e3, hi: 450e3 });
    expect(intervalOf(ohms(0))).toEqual({ lo: 0, hi: 0 });
  });

  it('is open upwards for over-range, from the bound if it was noted', () => {
    expect(intervalOf(overOhms(700e6))).toEqual({ lo: 700e6, hi: unbounded });
    expect(intervalOf(overOhms())).toEqual({ lo: 0, hi: unbounded });
  });

  it('begins at zero for under-range, and has no end if none was noted', () => {
    expect(intervalOf(underOhms(1000))).toEqual({ lo: 0, hi: 1000 });
    expect(intervalOf(underOhms())).toEqual({ lo: 0, hi: unbounded });
  });

  it('is everything for a missing reading, with any instrument', () => {
    expect(intervalOf(missing)).toEqual(everything);
    expect(intervalOf(missing, { percent: 1, counts: 3, upperLimit: 1e6 })).toEqual({ lo: 0, hi: unbounded });
  });
});

describe('the stated accuracy', () => {
  it('widens a value by its percentage on both sides', () => {
    expect(intervalOf(ohms(200e6), { percent: 5 })).toEqual({ lo: 190e6, hi: 210e6 });
  });

  it('adds counts of the last digit that the display showed', () => {
    expect(intervalOf(ohms(450e3, 1e3), { counts: 3 })).toEqual({ lo: 447e3, hi: 453e3 });
    expect(intervalOf(ohms(450e3, 100), { percent: 1, counts: 5 })).toEqual({ lo: 445e3, hi: 455e3 });
  });

  it('never goes below zero', () => {
    expect(intervalOf(ohms(2, 1), { counts: 5 })).toEqual({ lo: 0, hi: 7 });
    expect(intervalOf(ohms(100), { percent: 100 })).toEqual({ lo: 0, hi: 200 });
  });

  it('lowers the bound of an over-range and raises that of an under-range, since the end of the range has an error too', () => {
    expect(intervalOf(overOhms(100e6), { percent: 5 })).toEqual({ lo: 95e6, hi: unbounded });
    expect(intervalOf(underOhms(1000), { percent: 5 })).toEqual({ lo: 0, hi: 1050 });
  });

  it('leaves an unknown bound unknown', () => {
    expect(intervalOf(overOhms(), { percent: 5 })).toEqual({ lo: 0, hi: unbounded });
    expect(intervalOf(underOhms(), { percent: 5 })).toEqual({ lo: 0, hi: unbounded });
  });
});

describe('the upper limit of the instrument', () => {
  it('is the bound of an over-range whose range was not noted', () => {
    expect(intervalOf(overOhms(), { upperLimit: 72e6 })).toEqual({ lo: 72e6, hi: unbounded });
  });

  it('replaces a noted bound that it cannot have shown', () => {
    expect(intervalOf(overOhms(700e6), { upperLimit: 72e6 })).toEqual({ lo: 72e6, hi: unbounded });
    expect(intervalOf(overOhms(10e6), { upperLimit: 72e6 })).toEqual({ lo: 10e6, hi: unbounded });
  });

  it('turns a value above it into an over-range at it', () => {
    expect(intervalOf(ohms(80e6), { upperLimit: 72e6 })).toEqual({ lo: 72e6, hi: unbounded });
    expect(intervalOf(ohms(72e6), { upperLimit: 72e6 })).toEqual({ lo: 72e6, hi: 72e6 });
  });

  it('never makes such a value firmer than its accuracy did', () => {
    const accuracy = { percent: 1, counts: 10 };
    const before = intervalOf(ohms(105e6, 1e6), accuracy);
    const after = intervalOf(ohms(105e6, 1e6), { ...accuracy, upperLimit: 101e6 });
    expect(before.lo).toBe(93.95e6);
    expect(after.lo).toBe(before.lo);
  });
});

describe('the limit of error', () => {
  it.each([
    [0, 1, { percent: 1 }, 0],
    [1000, undefined, {}, 0],
    [1000, undefined, { percent: 1 }, 10],
    [1000, 1, { counts: 3 }, 3],
    [1000, 1, { percent: 0.5, counts: 2 }, 7],
    [-40, 0.1, { percent: 10, counts: 1 }, 4.1],
  ])('of %d with step %d and %o is %d', (value, step, instrument, error) => {
    expect(limitOfError(value, step, instrument)).toBeCloseTo(error, 12);
  });

  it('uses the place of the last nonzero digit if the step is unknown: the widest', () => {
    expect(limitOfError(450e3, undefined, { counts: 1 })).toBe(10e3);
    expect(limitOfError(451e3, undefined, { counts: 1 })).toBe(1e3);
    expect(limitOfError(0.45, undefined, { counts: 2 })).toBeCloseTo(0.02, 12);
    expect(limitOfError(0, undefined, { counts: 2 })).toBe(0);
    expect(limitOfError(Number.MAX_VALUE, 1, { percent: 5 })).toBeLessThan(Number.MAX_VALUE);
  });
});

describe('the interval of the last digit', () => {
  it('is half a step to each side', () => {
    expect(byLastDigit(ohms(450e3, 1e3))).toEqual({ lo: 449.5e3, hi: 450.5e3 });
    expect(byLastDigit(ohms(1e9, 1e9))).toEqual({ lo: 0.5e9, hi: 1.5e9 });
    expect(byLastDigit(ohms(2.2e6))).toEqual({ lo: 2.2e6, hi: 2.2e6 });
  });

  it('of a zero is anything less than one step', () => {
    expect(byLastDigit(ohms(0, 1e4))).toEqual({ lo: 0, hi: 1e4 });
    expect(byLastDigit(ohms(0))).toEqual({ lo: 0, hi: 0 });
  });

  it('never reaches zero if a step is coarser than the figure, as after a conversion', () => {
    expect(byLastDigit(ohms(1, 5)).lo).toBe(0.5);
  });
});

describe('an interval times a factor', () => {
  it('multiplies both ends', () => {
    expect(times({ lo: 2, hi: 3 }, { lo: 4, hi: 5 })).toEqual({ lo: 8, hi: 15 });
    expect(times({ lo: 2, hi: unbounded }, { lo: 0.5, hi: 0.5 })).toEqual({ lo: 1, hi: unbounded });
  });

  it('keeps zero at zero, whatever the factor', () => {
    expect(times({ lo: 0, hi: 0 }, { lo: 1, hi: unbounded })).toEqual({ lo: 0, hi: 0 });
    expect(times({ lo: 0, hi: unbounded }, { lo: 0, hi: 0 })).toEqual({ lo: 0, hi: 0 });
  });
});
