import { expect, test } from 'vitest';
import { afterTripLimit } from '../../../../src/search/box/questions.ts';
import { wordsOf } from '../../../../src/search/box/words.ts';

test.each([
  '1 Mohm ok?',
  'is 1 meg good enough',
  '0.5 MΩ',
  '100 megohms',
  '300 kohm to ground',
  'insulation 4 megohm good or bad',
  'minimum insulation resistance',
  'how low can insulation be',
])('“%s” asks for the limit after a trip', (query) => {
  expect(wordsOf(query).names).toEqual([afterTripLimit]);
});

test.each([
  '1 megohm per kv',
  'megohm per 1000 ft',
  '450 kohm',
  'insulation test',
  'brake coil 1 Mohm',
  'megohm tester',
])('“%s” does not', (query) => {
  expect(wordsOf(query).names).toEqual([]);
});

test.each(['E-207', 'F07', 'AL.16', 'alarm 42', 'fault code 7', 'Err 21'])('“%s” is the code of an alarm', (query) => {
  const { words } = wordsOf(query);
  expect(words).toContain('alarm');
  expect(words).toContain('code');
  expect(words.filter((word) => /\d/.test(word))).toEqual([]);
});

test.each(['CAT 3', '50 volts', 'class 00 gloves', 'IEEE 43', 'axis 2'])('“%s” is not', (query) => {
  expect(wordsOf(query).words).not.toContain('code');
});
