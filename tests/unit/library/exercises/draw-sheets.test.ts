import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { drawFigure } from '../../../../src/library/exercises/drawing/draw-figure.ts';
import { canBeDrawn, drawSheets } from '../../../../src/library/exercises/drawing/draw-sheets.ts';
import { keepsMeaning } from '../../../../src/library/exercises/drawing/same-meaning.ts';
import type { ExerciseNumber, Question } from '../../../../src/library/exercises/exercise-schema.ts';
import { givenValue } from '../../../../src/library/exercises/exercise-value.ts';

const nobody = () => {
  throw new Error('needs no other number');
};
const question = (numbers: Record<string, ExerciseNumber>): Question => ({
  id: 'about',
  question: 'The motor of line 2 of the Marrow Bay Glassworks reads {reading}. Good?',
  answer: ['The limit is {point}.'],
  numbers,
});
const point = { limit: 'after-trip-point' };
const below = question({
  reading: { given: '40 MΩ', draw: { from: '20 MΩ', to: '99 MΩ', digits: 2 } },
  point,
});
const readings = (questions: Question[]) =>
  questions.map(({ numbers = {} }) => {
    const { reading } = numbers;
    return reading !== undefined && 'given' in reading ? givenValue(reading.given).value : Number.NaN;
  });

test('a figure has the digits that its instrument shows, in the unit of its range', () => {
  const random = seeded(1);
  const many = (draw: Parameters<typeof drawFigure>[0]) =>
    Array.from({ length: 200 }, () => drawFigure(draw, nobody, random));
  for (const text of many({ from: '20 MΩ', to: '70 MΩ', digits: 2 })) expect(text).toMatch(/^[2-7]\d MΩ$/);
  for (const text of many({ from: '0.12 MΩ', to: '0.9 MΩ', digits: 2 })) expect(text).toMatch(/^0\.\d\d MΩ$/);
  for (const text of many({ from: '900 MΩ', to: '4 GΩ', digits: 2 })) expect(text).toMatch(/^(9\d0 MΩ|\d\.\d GΩ)$/);
  for (const text of many({ from: '1.2 Ω', to: '8.8 Ω', digits: 2 })) expect(text).toMatch(/^\d\.\d Ω$/);
});

test('steps reach both ends', () => {
  const random = seeded(2);
  const draw = { from: '15 m', to: '30 m', step: '5 m' };
  const drawn = new Set(Array.from({ length: 100 }, () => drawFigure(draw, nobody, random)));
  expect([...drawn].sort()).toEqual(['15 m', '20 m', '25 m', '30 m']);
});

test('a reading keeps off a limit by the 30 % of IEC 61557-2, on its own side', () => {
  expect(Math.max(...readings(drawSheets(below, 1, 30)))).toBeLessThanOrEqual(76e6);
});

test('a question about a figure near a limit keeps only the side', () => {
  const near: Question = { ...below, nearLimit: true };
  expect(Math.max(...readings(drawSheets(near, 1, 30)))).toBeGreaterThan(77e6);
});

test('figures that change a verdict or the order of two readings are not taken', () => {
  const given = (u: string, v: string) =>
    question({
      u: { given: u, draw: { from: '1 kΩ', to: '9 MΩ', digits: 2 } },
      v: { given: v, draw: { from: '1 kΩ', to: '9 MΩ', digits: 2 } },
      bus: { given: '0.02 V' },
      verdict: {
        compute: 'bridgeVerdict',
        with: ['bus', 'u', 'u', 'u', 'v', 'v', 'v'],
      },
    });
  const sound = given('450 kΩ', '44 kΩ');
  expect(keepsMeaning(sound, given('460 kΩ', '45 kΩ'))).toBe(true);
  expect(keepsMeaning(sound, given('44 kΩ', '450 kΩ'))).toBe(false);
  expect(keepsMeaning(sound, given('460 kΩ', '0.4 kΩ'))).toBe(false);
});

test('more sheets do not change the first ones', () => {
  expect(drawSheets(below, 7, 30).slice(0, 5)).toEqual(drawSheets(below, 7, 5));
});

test('a question without draws is the same on every sheet; one with too few figures is named', () => {
  const fixed = question({ reading: { given: '40 MΩ' }, point });
  expect(canBeDrawn(fixed)).toBe(false);
  expect(drawSheets(fixed, 1, 2)).toEqual([fixed, fixed]);
  const few = question({
    reading: { given: '40 MΩ', draw: { oneOf: ['40 MΩ', '50 MΩ'] } },
    point,
  });
  expect(() => drawSheets(few, 1, 3)).toThrow('question about: no other figures found for sheet 3');
});
