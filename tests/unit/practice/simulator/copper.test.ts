import { expect, test } from 'vitest';
import { copperOhms } from '../../../../src/practice/simulator/copper.ts';

// Source: NBS Handbook 100, copper wire tables (recalled, see content/sources): 0.393 % per kelvin at 20 °C.
test('copper gains 0.393 % per kelvin from 20 °C', () => {
  expect(copperOhms(1, 20)).toBe(1);
  expect(copperOhms(1, 21) - 1).toBeCloseTo(0.00393, 5);
  expect(copperOhms(100, 75)).toBeCloseTo(121.6, 1);
  expect(copperOhms(1, -234.5)).toBe(0);
});
