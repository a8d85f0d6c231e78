import type { ExerciseNumber, Question } from '../exercise-schema.ts';
import { type ExerciseValue, givenValue } from '../exercise-value.ts';
import { valuesOf } from '../fill.ts';
import { accuracyOf } from './accuracy.ts';

type Numbers = Record<string, ExerciseNumber>;
type Values = ReadonlyMap<string, ExerciseValue>;

/** More drawn readings of one question would take too long: each one doubles the work. */
const mostReadings = 8;

/**
 * Whether the answer, which was written for the printed figures, is as right for the drawn ones:
 * - Figures of one unit come in the same order of size.
 * - Results in words, such as a verdict, are the same.
 * - Each figure lies on the same side of each limit.
 * The last two also hold when every drawn reading is off by the accuracy of its instrument, unless the question is about
 * a figure near a limit.
 */
export function keepsMeaning(question: Question, drawn: Question): boolean {
  const { id, numbers: printed = {}, nearLimit = false } = question;
  const numbers = drawn.numbers ?? {};
  const before = valuesOf(id, printed);
  const limits = Object.keys(printed).filter((name) => isLimit(printed[name] as ExerciseNumber));
  const figures = Object.keys(printed).filter((name) => !limits.includes(name));
  if (!sameSides(figures, figures, before, valuesOf(id, numbers))) return false;
  for (const values of corners(id, numbers, nearLimit ? [] : drawnReadings(printed))) {
    const words = figures.filter((name) => isWord(before.get(name)));
    if (words.some((name) => before.get(name)?.text !== values.get(name)?.text)) return false;
    if (!sameSides(figures, limits, before, values)) return false;
  }
  return true;
}

function isLimit(number: ExerciseNumber): boolean {
  return 'limit' in number || ('compute' in number && number.asLimit === true);
}

function drawnReadings(numbers: Numbers): string[] {
  return Object.keys(numbers).filter((name) => {
    const number = numbers[name] as ExerciseNumber;
    if (!('given' in number) || number.draw === undefined) return false;
    const { reading } = givenValue(number.given);
    return reading.kind === 'value' && accuracyOf(reading) > 0;
  });
}

/** All values with each of these readings too low or too high by its accuracy. */
function* corners(id: string, numbers: Numbers, readings: readonly string[]): Generator<Values> {
  if (readings.length > mostReadings) throw new Error(`question ${id} draws more than ${mostReadings} readings`);
  for (let corner = 0; corner < 2 ** readings.length; corner++) {
    yield valuesOf(id, numbers, (given, name) => {
      const place = readings.indexOf(name);
      const value = givenValue(given);
      return place < 0 ? value : offByAccuracy(value, Math.floor(corner / 2 ** place) % 2 === 0 ? -1 : 1);
    });
  }
}

function offByAccuracy(value: ExerciseValue, sign: number): ExerciseValue {
  const { reading } = value;
  if (reading.kind !== 'value') return value;
  const off = reading.value + sign * accuracyOf(reading);
  return { ...value, value: off, reading: { ...reading, value: off } };
}

function sameSides(names: readonly string[], others: readonly string[], before: Values, after: Values): boolean {
  return names.every((name) =>
    others.every((other) => {
      const side = sideOf(before.get(name), before.get(other));
      return side === 0 || side === sideOf(after.get(name), after.get(other));
    }),
  );
}

/** −1, 0 or 1: the first lies below, at or above the second. 0 also if they have no common unit. */
function sideOf(a: ExerciseValue | undefined, b: ExerciseValue | undefined): number {
  if (a?.reading.kind !== 'value' || b?.reading.kind !== 'value' || a.reading.unit !== b.reading.unit) return 0;
  return Math.sign(a.value - b.value);
}

function isWord(value: ExerciseValue | undefined): boolean {
  return value?.reading.kind === 'missing' && Number.isNaN(value.value);
}
