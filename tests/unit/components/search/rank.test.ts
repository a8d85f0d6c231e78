import { expect, test } from 'vitest';
import { ranked } from '../../../../src/components/search/rank.ts';

const ids = (hits: readonly { id: string }[]) => hits.map(({ id }) => id);

test('an answer with all the words comes before one that has a single word often', () => {
  const brake = [
    { id: 'both', score: 3 },
    { id: 'brake only', score: 9 },
  ];
  const coil = [{ id: 'both', score: 3 }];
  expect(ids(ranked([brake, coil], []))).toEqual(['both', 'brake only']);
});

test('a word that is nowhere leaves the answers to the others', () => {
  expect(ids(ranked([[{ id: 'page', score: 2 }], []], []))).toEqual(['page']);
});

test('an extra brings an answer forward but makes none', () => {
  const volts = [
    { id: 'a', score: 3 },
    { id: 'b', score: 2 },
  ];
  const figure = [
    { id: 'b', score: 1 },
    { id: 'c', score: 1 },
  ];
  expect(ids(ranked([volts], [figure]))).toEqual(['b', 'a']);
});

test('what holds a word by chance is left out', () => {
  const hits = [
    { id: 'answer', score: 20 },
    { id: 'chance', score: 1 },
  ];
  expect(ids(ranked([hits], []))).toEqual(['answer']);
});

test('nothing gives nothing', () => {
  expect(ranked([[]], [])).toEqual([]);
});
