import { expect, test } from 'vitest';
import { between, betweenDecades, chance, oneOf, seeded } from '../../../src/kernel/random.ts';

const many = (seed: number, count = 20_000) => {
  const random = seeded(seed);
  return Array.from({ length: count }, random);
};

test('the same seed gives the same stream, another seed another', () => {
  expect(many(7, 5)).toEqual(many(7, 5));
  expect(many(7, 5)).not.toEqual(many(8, 5));
});

test.each([0, 1, 2, 12345])(
  'seed %d spreads evenly: each tenth gets a tenth, within four standard deviations',
  (seed) => {
    const drawn = many(seed);
    const expected = drawn.length / 10;
    const deviation = Math.sqrt(drawn.length * 0.1 * 0.9);
    for (let tenth = 0; tenth < 10; tenth += 1) {
      const count = drawn.filter((value) => Math.floor(value * 10) === tenth).length;
      expect(Math.abs(count - expected)).toBeLessThan(4 * deviation);
    }
  },
);

test('neighbouring seeds do not start alike', () => {
  const first = Array.from({ length: 1000 }, (_, seed) => seeded(seed)());
  const mean = first.reduce((sum, value) => sum + value, 0) / first.length;
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.04);
  expect(new Set(first).size).toBe(1000);
});

test('draws stay in their range', () => {
  const random = seeded(3);
  for (let count = 0; count < 1000; count += 1) {
    const evenly = between(random, -2, 3);
    expect(evenly >= -2 && evenly < 3).toBe(true);
    const decades = betweenDecades(random, 1e3, 1e9);
    expect(decades >= 1e3 && decades < 1e9).toBe(true);
    expect(['a', 'b']).toContain(oneOf(random, ['a', 'b']));
  }
  expect([chance(random, 0), chance(random, 1)]).toEqual([false, true]);
});

test('decades are equally likely: half of the values are below the geometric mean', () => {
  const random = seeded(4);
  const below = Array.from({ length: 4000 }, () => betweenDecades(random, 1, 1e6)).filter(
    (value) => value < 1e3,
  ).length;
  expect(below / 4000).toBeCloseTo(0.5, 1);
});
