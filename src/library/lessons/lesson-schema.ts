import { z } from 'astro/zod';
import { windingTemperatures } from '../../practice/case/case-code.ts';

/**
 * content/lessons/<slug>.json: a quarter of an hour of self-study. The slug is part of an address and of the progress
 * on devices, so it never changes.
 */
export const lessonSchema = z.strictObject({
  /** Place on the path, from 1. */
  order: z.int().min(1),
  title: z.string().min(5),
  /** What the reader can do afterwards, in one sentence. */
  aim: z.string().min(20),
  /** The article to read: section and slug. */
  article: z.string(),
  /** A folder of src/practice/figures, and what to try with it. */
  figure: z.strictObject({ name: z.string(), task: z.string().min(20) }).optional(),
  /** Ids of questions of that article. */
  questions: z.array(z.string()).min(2),
  /** A practice case that needs what was learned. The task does not give its fault away. */
  case: z.strictObject({
    /** Id of a fault of the simulator. */
    fault: z.string(),
    seed: z.int().min(0),
    /** Place in `windingTemperatures`. */
    temperatureStep: z
      .int()
      .min(0)
      .max(windingTemperatures.length - 1),
    task: z.string().min(20),
  }),
});

export type Lesson = z.infer<typeof lessonSchema>;
