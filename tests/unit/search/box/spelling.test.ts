import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestTerms } from '../../../../src/search/box/nearest-terms.ts';
import { editDistance, Vocabulary } from '../../../../src/search/box/spelling.ts';

const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 6 });

test('editDistance: counted by hand', () => {
  expect(editDistance('insualtion', 'insulation')).toBe(1);
  expect(editDistance('acuracy', 'accuracy')).toBe(1);
  expect(editDistance('moter', 'motor')).toBe(1);
  expect(editDistance('', 'abc')).toBe(3);
});

test('editDistance: symmetric, zero only between equal words, at most the number of letters', () => {
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(editDistance(a, b)).toBe(editDistance(b, a));
      expect(editDistance(a, b) === 0).toBe(a === b);
      expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(editDistance(a, b)).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
  );
});

// The most frequent first, as the build writes them.
const vocabulary = new Vocabulary(['motor', 'meter', 'insulation', 'discharge', 'release', 'resolver']);

test.each([
  ['moter', 'motor'],
  ['insualtion', 'insulation'],
  ['resolvr', 'resolver'],
  ['dischrge', 'discharge'],
])('“%s” is read as “%s”', (typed, meant) => {
  expect(vocabulary.corrected(typed)).toBe(meant);
});

test.each(['motors', 'releasing', 'igbt1', 'pe', 'xyzzyq', 'turbine'])('“%s” stays as it is', (typed) => {
  expect(vocabulary.corrected(typed)).toBe(typed);
});

test('only a frequent word with the same first letter is meant', () => {
  const site = new Vocabulary(['insulation', 'label', 'defeat'], 2);
  expect(site.corrected('insulaton')).toBe('insulation');
  expect(site.corrected('kabel')).toBe('kabel');
  expect(site.corrected('defekt')).toBe('defekt');
  expect(site.corrected('ınsulation')).toBe('ınsulation');
});

test('the beginning of a word is correct while somebody may still be typing', () => {
  expect(vocabulary.corrected('resol', true)).toBe('resol');
  expect(vocabulary.corrected('dischrge', true)).toBe('discharge');
});

test('terms with similar spelling are offered, nearest first; others are not', () => {
  const terms = ['drag chain', 'megohmmeter', 'two-pole tester', 'hipot', 'PE'];
  expect(nearestTerms('dragchane', terms)[0]).toBe('drag chain');
  expect(nearestTerms('hyppot', terms)[0]).toBe('hipot');
  expect(nearestTerms('xyzzyq', terms)).toEqual([]);
});
