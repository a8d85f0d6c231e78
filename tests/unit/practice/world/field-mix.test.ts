import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { drawCause, fieldCauses, meets } from '../../../../src/practice/world/field-mix.ts';

test('causes come as often as their weights say', () => {
  const random = seeded(4);
  const draws = Array.from({ length: 20_000 }, () => drawCause(random));
  const total = fieldCauses.reduce((sum, { weight }) => sum + weight, 0);
  for (const { id, weight } of fieldCauses) {
    const expected = (draws.length * weight) / total;
    const count = draws.filter(({ cause }) => cause.id === id).length;
    // Five standard deviations of a count.
    expect(Math.abs(count - expected), id).toBeLessThan(5 * Math.sqrt(expected) + 1);
  }
});

test('the faults of a cause come equally often', () => {
  const random = seeded(5);
  const draws = Array.from({ length: 20_000 }, () => drawCause(random)).filter(
    ({ cause }) => cause.id === 'output-switch-shorted',
  );
  const faults = fieldCauses.find(({ id }) => id === 'output-switch-shorted')?.faults ?? [];
  expect(faults).toHaveLength(6);
  for (const one of faults) {
    const count = draws.filter(({ fault }) => fault === one).length;
    expect(count / draws.length).toBeCloseTo(1 / faults.length, 1);
  }
});

test('a slip comes as often as its share says', () => {
  const random = seeded(6);
  const count = Array.from({ length: 20_000 }, () => meets(random, 'moment-told-wrong')).filter(Boolean).length;
  expect(count / 20_000).toBeCloseTo(0.2, 1);
});
