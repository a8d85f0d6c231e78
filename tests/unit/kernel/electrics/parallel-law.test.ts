import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besideKnown, parallel, parallelInterval } from '../../../../src/kernel/electrics/parallel-law.ts';
import { logUniform } from '../../../support/arbitrary-readings.ts';
import { runs } from '../../../support/runs.ts';

const unbounded = Number.POSITIVE_INFINITY;
const exactly = (value: number) => ({ lo: value, hi: value });

describe('parallel resistances', () => {
  it.each([
    [[100], 100],
    [[100, 100], 50],
    [[300, 150], 100],
    [[2e6, 5e9], 1.99920032e6],
    [[4e9, 4e9, 4e9, 3e9], 923.076923e6],
    [[100, unbounded], 100],
    [[unbounded, unbounded], unbounded],
    [[0, 100], 0],
    [[0, unbounded], 0],
    [[], unbounded],
  ])('%o make %d', (resistances, together) => {
    const made = parallel(resistances);
    if (Number.isFinite(together)) expect(made / (together || 1)).toBeCloseTo(together === 0 ? 0 : 1, 8);
    else expect(made).toBe(together);
  });

  it('are never more than the smallest', () => {
    const some = fc.array(logUniform(1, 1e12), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(some, (resistances) => {
        expect(parallel(resistances)).toBeLessThanOrEqual(Math.min(...resistances) * (1 + 1e-12));
      }),
      { numRuns: runs },
    );
  });

  it('as intervals range from all low ends to all high ends', () => {
    const made = parallelInterval([
      { lo: 100, hi: 200 },
      { lo: 100, hi: unbounded },
    ]);
    expect(made).toEqual({ lo: 50, hi: 200 });
  });
});

describe('the unknown resistance in parallel with known ones', () => {
  it('is exact if the others are', () => {
    const beside = besideKnown(exactly(100), [exactly(300)]);
    expect(beside.lo).toBeCloseTo(150, 9);
    expect(beside.hi).toBeCloseTo(150, 9);
  });

  it('undoes the parallel law', () => {
    fc.assert(
      fc.property(logUniform(1e3, 1e9), logUniform(1e3, 1e9), (known, other) => {
        const joined = exactly(parallel([known, other]));
        // If the known one explains nearly everything, hardly a digit of the other is left.
        if (other > known * 1e4) return;
        expect(besideKnown(joined, [exactly(known)]).lo / other).toBeCloseTo(1, 6);
      }),
      { numRuns: runs },
    );
  });

  it('is unbounded if the known ones alone may explain the joined reading', () => {
    expect(besideKnown({ lo: 90, hi: 110 }, [{ lo: 95, hi: 105 }])).toMatchObject({ hi: unbounded });
    expect(besideKnown(exactly(200), [exactly(100)])).toEqual({ lo: unbounded, hi: unbounded });
    expect(besideKnown({ lo: 100, hi: unbounded }, [exactly(300)]).hi).toBe(unbounded);
  });

  it('is zero if the joined reading may be zero', () => {
    expect(besideKnown({ lo: 0, hi: 10 }, [exactly(300)]).lo).toBe(0);
    expect(besideKnown(exactly(0), [exactly(300)])).toEqual({ lo: 0, hi: 0 });
  });

  it('counts each of several known ones', () => {
    expect(besideKnown(exactly(50), [exactly(200), exactly(200)]).lo).toBeCloseTo(100, 9);
    expect(besideKnown(exactly(50), []).lo).toBeCloseTo(50, 9);
  });
});
