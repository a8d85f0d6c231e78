import { expect, test } from 'vitest';
import { ranked } from '../../../../src/search/box/rank.ts';

const ids = (hits: readonly { id: string }[]) => hits.map(({ id }) => id);

test('an answer with all the words ranks above one with a single frequent word', () => {
  const brake = [
    { id: 'both', score: 3 },
    { id: 'brake only', score: 9 },
  ];
  const coil = [{ id: 'both', score: 3 }];
  expect(ids(ranked([brake, coil]))).toEqual(['both', 'brake only']);
});

test('a word without hits does not change the answers to the others', () => {
  expect(ids(ranked([[{ id: 'page', score: 2 }], []]))).toEqual(['page']);
});

test('an answer is the hit of its best word', () => {
  const brake = { id: 'page', score: 3, word: 'brake' };
  const coil = { id: 'page', score: 5, word: 'coil' };
  expect(ranked([[brake], [coil]])).toEqual([coil]);
});

test('an answer that contains a word by chance is left out', () => {
  const hits = [
    { id: 'answer', score: 20 },
    { id: 'chance', score: 1 },
  ];
  expect(ids(ranked([hits]))).toEqual(['answer']);
});

test('nothing gives nothing', () => {
  expect(ranked([[]])).toEqual([]);
});
