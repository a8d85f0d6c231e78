import { z } from 'astro/zod';

/** A number of a question or its answer, written there as `{name}`. */
const exerciseNumber = z.union([
  /** A reading of the invented example, as a person would note it: "3 MΩ", "48 °C", ">700 MΩ". */
  z.strictObject({ given: z.string() }),
  /** The figure of a limit: its id in content/limits. */
  z.strictObject({ limit: z.string() }),
  /**
   * A result: the name of a function in src/library/exercises/compute.ts, and the names of its arguments, in order:
   * numbers defined earlier in the same question.
   */
  z.strictObject({ compute: z.string(), with: z.array(z.string()) }),
]);

const question = z.strictObject({
  /** Part of the question's published address, so it never changes later; unique in the article. */
  id: z.string().regex(/^[a-z][a-z0-9-]*$/),
  /** What is asked, as a situation if possible. Plain text; `{name}` is replaced by a number. */
  question: z.string().min(20),
  /** The answer with its reason, in paragraphs. Plain text; `{name}` is replaced by a number. */
  answer: z.array(z.string().min(2)).min(1),
  /** Numbers by their name in braces. The text itself has no typed number with a unit. */
  numbers: z.record(z.string().regex(/^[a-z][A-Za-z0-9]*$/), exerciseNumber).optional(),
});

/** content/exercises/<section>/<slug>.json: the questions of the article with the same section and slug. */
export const exerciseSetSchema = z.strictObject({ questions: z.array(question).min(2) });

export type ExerciseNumber = z.infer<typeof exerciseNumber>;
export type Question = z.infer<typeof question>;
