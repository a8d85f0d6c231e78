import { describe, expect, it } from 'vitest';
import { assessTestVoltage } from '../../src/calculators/test-voltage/rule/assess.ts';
import type { TestObject } from '../../src/calculators/test-voltage/rule/input.ts';
import { limitRange, limitValue } from '../../src/kernel/limits.ts';
import { missing, volts } from '../../src/kernel/reading/reading.ts';

const spanFor = (object: TestObject, rated: number) => {
  const { row } = assessTestVoltage({ object, rated: volts(rated), set: missing, drive: 'off', sensitive: 'off' });
  return row === undefined ? undefined : [limitRange(row).from, limitRange(row).to];
};

/** Source: IEEE 43-2000, table 1; read in texts that reproduce it. */
describe('windings', () => {
  it.each([
    [230, 500, 500],
    [400, 500, 500],
    [999, 500, 500],
    [1000, 500, 1000],
    [2500, 500, 1000],
    [2501, 1000, 2500],
    [5000, 1000, 2500],
    [5001, 2500, 5000],
    [12_000, 2500, 5000],
    [13_800, 5000, 10_000],
  ])('rated %d V: %d to %d V DC', (rated, from, to) => {
    expect(spanFor('winding', rated)).toEqual([from, to]);
  });
});

/** Source: IEC 60364-6, table 6A (the British wiring rules, 643.3, say the same); read. */
describe('low-voltage installations', () => {
  it.each<[TestObject, number, number]>([
    ['extra-low', 24, 250],
    ['wiring', 230, 500],
    ['wiring', 500, 500],
    ['wiring', 690, 1000],
  ])('%s of %d V: %d V DC', (object, rated, test) => {
    expect(spanFor(object, rated)).toEqual([test, test]);
  });

  it('the minima are 0.5, 1 and 1 MΩ', () => {
    expect(limitValue('installation-minimum-extra-low')).toBe(0.5e6);
    expect(limitValue('installation-minimum-500')).toBe(1e6);
    expect(limitValue('installation-minimum-above-500')).toBe(1e6);
  });
});

/** Source: IEC 60204-1, cl. 18.3: 500 V DC and 1 MΩ; clause from memory, figures also read in a secondary text. */
it('the power circuits of a machine', () => {
  expect(spanFor('machine-circuits', 400)).toEqual([500, 500]);
  expect(limitValue('machine-minimum-60204')).toBe(1e6);
});
