import { compute } from './compute.ts';
import type { ExerciseNumber, Question } from './exercise-schema.ts';
import { type ExerciseValue, givenValue, limitFigure, wordValue } from './exercise-value.ts';

/** A piece of a text: words, or a number, which may link to its limit. */
export interface Piece {
  text: string;
  limit?: string;
}

export interface FilledQuestion {
  id: string;
  question: Piece[];
  answer: Piece[][];
}

/** A question with its numbers filled in. Throws if a name, a limit, a function or a result is missing. */
export function fillQuestion({ id, question, answer, numbers = {} }: Question): FilledQuestion {
  const values = valuesOf(id, numbers);
  const fill = (text: string) => pieces(id, text, numbers, values);
  return { id, question: fill(question), answer: answer.map(fill) };
}

/** The value of each number by its name. `read` gives that of a noted reading. */
export function valuesOf(
  id: string,
  numbers: Record<string, ExerciseNumber>,
  read: (given: string, name: string) => ExerciseValue = givenValue,
): Map<string, ExerciseValue> {
  const values = new Map<string, ExerciseValue>([['-', wordValue('')]]);
  for (const [name, number] of Object.entries(numbers)) {
    const value =
      'given' in number ? read(number.given, name) : worth(number, namedIn(values, `question ${id}: “${name}”`));
    if (/NaN|∞|undefined/.test(value.text)) throw new Error(`question ${id}: “${name}” is ${value.text}`);
    values.set(name, value);
  }
  return values;
}

/** Looks a value up by its name; `user` is named if there is none. */
export function namedIn(values: ReadonlyMap<string, ExerciseValue>, user: string): (name: string) => ExerciseValue {
  return (wanted) => {
    const found = values.get(wanted);
    if (found === undefined) throw new Error(`${user} uses “${wanted}”, which is not defined above it`);
    return found;
  };
}

function worth(
  number: Exclude<ExerciseNumber, { given: string }>,
  named: (name: string) => ExerciseValue,
): ExerciseValue {
  return 'limit' in number ? limitFigure(number.limit) : computed(number.compute, number.with.map(named));
}

/** What the function of compute.ts with this name gives. */
export function computed(name: string, values: readonly ExerciseValue[]): ExerciseValue {
  const result = compute[name]?.(...values);
  if (result === undefined) throw new Error(`no function “${name}” in exercises/compute.ts`);
  return result;
}

function pieces(
  id: string,
  text: string,
  numbers: Record<string, ExerciseNumber>,
  values: Map<string, ExerciseValue>,
): Piece[] {
  // Every second part was in braces.
  return text.split(/\{([^{}]*)\}/).map((part, i) => {
    if (i % 2 === 0) return { text: part };
    const number = numbers[part];
    const value = values.get(part);
    if (number === undefined || value === undefined) throw new Error(`question ${id} has no number “${part}”`);
    return 'limit' in number ? { text: value.text, limit: number.limit } : { text: value.text };
  });
}

/** The text without links, for tests, lists and search. */
export function plainText(filled: readonly Piece[]): string {
  return filled.map(({ text }) => text).join('');
}
