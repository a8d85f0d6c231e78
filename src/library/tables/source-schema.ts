import { z } from 'astro/zod';

export const sourceSchema = z.strictObject({
  /** Short form beside a number, e.g. "IEEE 43". */
  short: z.string(),
  /** Full title. */
  title: z.string(),
  /** Standards body, authority or publisher. */
  publisher: z.string(),
  /** Editions of the figures used here, e.g. "2000, 2013". */
  editions: z.string(),
  kind: z.enum(['standard', 'regulation', 'handbook', 'textbook', 'paper']),
  /** How the project knows its figures: read in it, in a text that quotes it, or recalled from memory. */
  read: z.enum(['publication', 'secondary', 'memory', 'secondary-and-memory']),
  /** What the reader should know about it. */
  note: z.string().optional(),
});

export type Source = z.infer<typeof sourceSchema>;
