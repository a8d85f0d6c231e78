import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessTestVoltage } from '../../../../../src/calculators/test-voltage/rule/assess.ts';
import {
  type TestObject,
  type TestVoltageInput,
  testObjects,
  type Whether,
} from '../../../../../src/calculators/test-voltage/rule/input.ts';
import { limitRange } from '../../../../../src/kernel/limits.ts';
import { missing, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { runs } from '../../../../support/runs.ts';
import { rank } from '../../../../support/verdict-rank.ts';

const choose = (object: TestObject, rated?: number, set?: number, drive: Whether = 'off', sensitive: Whether = 'off') =>
  assessTestVoltage({
    object,
    rated: rated === undefined ? missing : volts(rated),
    set: set === undefined ? missing : volts(set),
    drive,
    sensitive,
  });

const codes = (assessment: ReturnType<typeof choose>) => assessment.findings.map(({ code }) => code);

describe('the row of the table', () => {
  it.each<[TestObject, number, string | undefined]>([
    ['winding', 24, 'test-voltage-below-1000'],
    ['winding', 400, 'test-voltage-below-1000'],
    ['winding', 1000, 'test-voltage-1000-2500'],
    ['winding', 2500, 'test-voltage-1000-2500'],
    ['winding', 4160, 'test-voltage-2501-5000'],
    ['winding', 6600, 'test-voltage-5001-12000'],
    ['winding', 13_800, 'test-voltage-above-12000'],
    ['wiring', 400, 'test-voltage-wiring-500'],
    ['wiring', 500, 'test-voltage-wiring-500'],
    ['wiring', 690, 'test-voltage-wiring-above-500'],
    ['wiring', 1000, 'test-voltage-wiring-above-500'],
    ['wiring', 1500, undefined],
    ['machine-circuits', 400, 'test-voltage-machine-circuits'],
    ['machine-circuits', 690, 'test-voltage-machine-circuits'],
    ['machine-circuits', 3000, undefined],
    ['extra-low', 24, 'test-voltage-extra-low'],
    ['extra-low', 120, 'test-voltage-extra-low'],
    ['extra-low', 230, undefined],
    ['brake-coil', 24, 'test-voltage-extra-low'],
    // 103 V DC comes from the mains through a half-wave rectifier: that circuit is no SELV.
    ['brake-coil', 103, undefined],
    ['brake-coil', 205, 'test-voltage-wiring-500'],
  ])('%s at %d V: %s', (object, rated, row) => {
    expect(choose(object, rated).row).toBe(row);
  });

  it('is the lower voltage if something sensitive stays connected', () => {
    expect(choose('wiring', 400, undefined, 'off', 'connected').row).toBe('test-voltage-sensitive');
  });

  it('does not exist for electronics', () => {
    expect(choose('feedback', 5)).toMatchObject({ verdict: 'no-go' });
    expect(choose('feedback', 5).row).toBeUndefined();
  });
});

describe('what is set on the tester', () => {
  it.each<[TestObject, number, number, string, string]>([
    ['winding', 400, 500, 'go', 'set-fits'],
    ['winding', 400, 1000, 'no-go', 'set-too-high'],
    ['winding', 400, 250, 'undecided', 'set-too-low'],
    ['winding', 2300, 750, 'go', 'set-fits'],
    ['wiring', 400, 500, 'go', 'set-fits'],
    ['wiring', 690, 500, 'undecided', 'set-too-low'],
    ['extra-low', 24, 500, 'no-go', 'set-too-high'],
    ['extra-low', 24, 250, 'go', 'set-fits'],
    ['machine-circuits', 690, 1000, 'no-go', 'set-too-high'],
  ])('%s at %d V with %d V: %s by %s', (object, rated, set, verdict, code) => {
    expect(choose(object, rated, set).verdict).toBe(verdict);
    expect(codes(choose(object, rated, set))).toContain(code);
  });

  it('is asked for, with the figure of the table beside it', () => {
    const { from, to } = limitRange('test-voltage-below-1000');
    const { fromVolts, toVolts } = found(choose('winding', 400).findings, 'set-voltage-missing');
    expect([fromVolts, toVolts]).toEqual([from, to]);
  });

  it('over-range does not count as stated', () => {
    const input: TestVoltageInput = {
      object: 'winding',
      rated: volts(400),
      set: overOhms(),
      drive: 'off',
      sensitive: 'off',
    };
    expect(assessTestVoltage(input).verdict).toBe('undecided');
  });
});

describe('a circuit between the AC and the DC end of extra-low voltage', () => {
  it('is extra-low if its owner says so, with a caution; for a brake coil the supply stays open', () => {
    expect(codes(choose('extra-low', 110, 250))).toContain('extra-low-only-dc');
    expect(codes(choose('extra-low', 50, 250))).not.toContain('extra-low-only-dc');
    const brake = choose('brake-coil', 103, 250);
    expect([brake.verdict, codes(brake).includes('brake-supply-unknown')]).toEqual(['undecided', true]);
    expect(brake.next.map(({ code }) => code)).toContain('choose-by-supply');
    expect(choose('brake-coil', 24, 250).verdict).toBe('go');
  });
});

describe('what is connected to the conductors', () => {
  it('a drive stops everything, even beside a voltage that is too high', () => {
    expect(choose('winding', 400, 500, 'connected').verdict).toBe('undecided');
    expect(choose('winding', 400, 500, 'connected').findings.some(({ severity }) => severity === 'stop')).toBe(true);
    expect(choose('winding', 400, 5000, 'connected').findings.some(({ severity }) => severity === 'stop')).toBe(true);
  });

  it('not stated is undecided, with the check that decides', () => {
    expect(choose('winding', 400, 500, 'unknown').verdict).toBe('undecided');
    expect(choose('winding', 400, 500, 'unknown').next.map(({ code }) => code)).toContain('take-drive-off');
    expect(choose('winding', 400, 500, 'unknown').next.map(({ code }) => code)).not.toContain('set-the-tester');
    expect(choose('winding', 400, 500, 'off', 'unknown').verdict).toBe('undecided');
    expect(choose('winding', 400, 500, 'off', 'unknown').next.map(({ code }) => code)).toContain('take-sensitive-off');
  });

  it('sensitive parts that stay on: 500 V is too high, 250 V fits with a caution and a repeat', () => {
    expect(choose('wiring', 400, 500, 'off', 'connected').verdict).toBe('no-go');
    const reduced = choose('wiring', 400, 250, 'off', 'connected');
    expect(reduced.verdict).toBe('go');
    expect(codes(reduced)).toContain('lower-for-sensitive');
    expect(reduced.next.map(({ code }) => code)).toEqual([
      'join-conductors',
      'set-the-tester',
      'discharge-afterwards',
      'repeat-at-full-voltage',
    ]);
  });
});

const anyVolts = fc.oneof(
  fc.constant(missing),
  fc.constantFrom(24, 103, 120, 205, 250, 400, 500, 690, 1000, 2500, 13_800).map((value) => volts(value)),
);
const anyInput: fc.Arbitrary<TestVoltageInput> = fc.record({
  object: fc.constantFrom(...testObjects),
  rated: anyVolts,
  set: anyVolts,
  drive: fc.constantFrom<Whether>('off', 'connected', 'unknown'),
  sensitive: fc.constantFrom<Whether>('off', 'connected', 'unknown'),
});

describe('monotone safety', () => {
  it('go needs everything stated, and a voltage within the row', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { verdict, row } = assessTestVoltage(input);
        if (verdict !== 'go') return;
        expect(input.drive).toBe('off');
        expect(input.sensitive).not.toBe('unknown');
        expect(input.set.kind).toBe('value');
        const { from, to } = limitRange(row ?? 'test-voltage-extra-low');
        const set = input.set.kind === 'value' ? input.set.value : Number.NaN;
        expect(set >= from && set <= to).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('less is stated, or a drive is on: never nearer to go', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const before = rank[assessTestVoltage(input).verdict];
        for (const worse of [
          { ...input, drive: 'connected' as const },
          { ...input, drive: 'unknown' as const },
          { ...input, rated: missing },
          { ...input, set: missing },
        ]) {
          const after = assessTestVoltage(worse).verdict;
          expect(rank[after]).toBeLessThanOrEqual(Math.max(before, 1));
        }
      }),
      { numRuns: runs },
    );
  });
});
