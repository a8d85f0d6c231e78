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

function valuesOf(id: string, numbers: Record<string, ExerciseNumber>): Map<string, ExerciseValue> {
  const values = new Map<string, ExerciseValue>([['-', wordValue('')]]);
  for (const [name, number] of Object.entries(numbers)) {
    const value = worth(number, (wanted) => {
      const found = values.get(wanted);
      if (found === undefined)
        throw new Error(`question ${id}: “${name}” uses “${wanted}”, which is not defined above it`);
      return found;
    });
    if (/NaN|∞|undefined/.test(value.text)) throw new Error(`question ${id}: “${name}” is ${value.text}`);
    values.set(name, value);
  }
  return values;
}

function worth(number: ExerciseNumber, named: (name: string) => ExerciseValue): ExerciseValue {
  if ('given' in number) return givenValue(number.given);
  if ('limit' in number) return limitFigure(number.limit);
  const result = compute[number.compute]?.(...number.with.map(named));
  if (result === undefined) throw new Error(`no function “${number.compute}” in exercises/compute.ts`);
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
