import { z } from 'astro/zod';

const names = z.array(z.string());
/** Significant digits of the drawn figure, as its instrument would show. */
const digits = z.int().min(1).max(4);

/** How another sheet of a class gets another figure. Names are those of numbers defined earlier in the question. */
const figureDraw = z.union([
  /** Between two readings, evenly in the logarithm, with this many digits. */
  z.strictObject({ from: z.string(), to: z.string(), digits }),
  /** Between two readings in equal steps from the first, for what a scale or a thermometer shows. */
  z.strictObject({ from: z.string(), to: z.string(), step: z.string() }),
  /** A number times a factor between these two. */
  z.strictObject({ times: z.string(), from: z.number().positive(), to: z.number().positive(), digits }),
  /** What a function of compute.ts gives, read by an instrument that is off by up to this percentage. */
  z.strictObject({ compute: z.string(), with: names, offPercent: z.number().min(0), digits }),
  /** One of these readings. */
  z.strictObject({ oneOf: z.array(z.string()).min(2) }),
]);

/** A number of a question or its answer, written there as `{name}`. */
const exerciseNumber = z.union([
  /**
   * A reading of the invented example, as a person would note it: "3 MΩ", "48 °C", ">700 MΩ". With `draw`, each sheet
   * of a class has its own.
   */
  z.strictObject({ given: z.string(), draw: figureDraw.optional() }),
  /** The figure of a limit: its id in content/limits. */
  z.strictObject({ limit: z.string() }),
  /**
   * A result: the name of a function in src/library/exercises/compute.ts, and the names of its arguments, in order:
   * numbers defined earlier in the same question. With `asLimit`, drawn figures keep off it as they do off a limit.
   */
  z.strictObject({ compute: z.string(), with: names, asLimit: z.literal(true).optional() }),
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
  /**
   * The name of the result that the question asks for, if a machine can compare it: a figure, or a verdict in one word.
   * The reasons are read by a person in any case.
   */
  asks: z.string().optional(),
  /**
   * True if the question is about a figure so near a limit that the accuracy of its instrument matters. Otherwise a
   * drawn figure keeps off every limit by that accuracy.
   */
  nearLimit: z.literal(true).optional(),
});

/** content/exercises/<section>/<slug>.json: the questions of the article with the same section and slug. */
export const exerciseSetSchema = z.strictObject({ questions: z.array(question).min(2) });

export type FigureDraw = z.infer<typeof figureDraw>;
export type ExerciseNumber = z.infer<typeof exerciseNumber>;
export type Question = z.infer<typeof question>;
