import { expect, test } from 'vitest';
import { figureWords, withPlainUnits } from '../../../../src/search/box/unit-spellings.ts';
import { askedMeaning, wordsOf } from '../../../../src/search/box/words.ts';

test.each(['100 megohm', '100 megohms', '100 Mohm', '100MΩ', '100 M\u2126', '100\u00a0MΩ', '100 mega ohm', '100 meg'])(
  '“%s” is one hundred megohms',
  (typed) => {
    expect(wordsOf(typed)).toMatchObject({ words: ['100', 'mω'], exact: ['100megohm'] });
  },
);

test.each([
  ['50 volts', '50volt'],
  ['500 VDC', '500volt'],
  ['40 degrees celsius', '40celsius'],
  ['40 °C', '40celsius'],
  ['0.4 V', '0point4volt'],
  ['10 %', '10percent'],
  ['450 kohm', '450kilohm'],
])('“%s” is one figure', (typed, figure) => {
  expect(figureWords(withPlainUnits(typed))).toEqual([figure]);
});

test('a word that begins like a unit is not a unit', () => {
  expect(withPlainUnits('2 motors, 3 cables, 5 screws')).toBe('2 motors, 3 cables, 5 screws');
});

test('empty words are left out, unless there are no others', () => {
  expect(wordsOf('What do I do with the motor?').words).toEqual(['motor']);
  expect(wordsOf('which one is it').words).toEqual(['one']);
  expect(wordsOf('is it the').words).toEqual(['is', 'it', 'the']);
});

test('off, on and numbers are not empty words', () => {
  expect(wordsOf('safe torque off on axis 2').words).toEqual(['safe', 'torque', 'off', 'on', 'axis', '2']);
});

test.each(['what is PE', 'what does OL mean', 'meaning of star point'])('“%s” asks for a definition', (typed) => {
  expect(wordsOf(typed).exact).toEqual([askedMeaning]);
});
