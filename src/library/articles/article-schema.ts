import { z } from 'astro/zod';
import { hazardIds } from '../../site/parts/hazards.ts';

export const articleSchema = z.strictObject({
  /** Heading of the page, as a technician would say it. */
  title: z.string().max(70),
  /** Two or three sentences: what the reader can do after reading. Shown on top, in lists and in search. */
  summary: z.string().min(60).max(400),
  /** Who it is for, in one sentence. */
  audience: z.string().optional(),
  /**
   * What the page settles, in one sentence. Such a page has the steps first: `## Steps`, `## Results`, then the rest in
   * `Fold`s.
   */
  settles: z.string().max(140).optional(),
  /** How long the steps take, in minutes, without the waits that depend on the machine. */
  minutes: z.number().int().positive().optional(),
  section: z.enum(['trip', 'safety', 'measuring', 'deciding']),
  /** Place within its section, lowest first. */
  order: z.number(),
  /** What can hurt; drawn before the first step. Use an empty list only for pages that don't lead to work. */
  hazards: z.array(z.enum(hazardIds)),
  /** What must be true before the first step, one sentence each. */
  preconditions: z.array(z.string()),
  /** What this page cannot tell the reader, one sentence each; at least one. */
  cannotTell: z.array(z.string()).min(1),
  /** Ids in content/sources. */
  sources: z.array(z.string()),
  /** Ids of related articles, section/slug. */
  related: z.array(z.string()),
  /**
   * Words that people search for but the page does not contain: trade slang, abbreviations, other spellings. The search
   * finds the page by them. Never a maker's or brand's name.
   */
  otherWords: z.array(z.string()).optional(),
});

export type Article = z.infer<typeof articleSchema>;
