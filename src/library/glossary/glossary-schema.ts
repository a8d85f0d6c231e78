import { z } from 'astro/zod';

const term = z.strictObject({
  /** The word that this fieldbook uses, as written within a sentence. */
  term: z.string().min(2),
  /**
   * Other words that people use for the same thing: shown beside the term, and the search finds it by them. Never a
   * maker's or brand's name.
   */
  otherWords: z.array(z.string().min(1)),
  /** What it means, in one to three plain sentences. No number with a unit: limits are in content/limits only. */
  definition: z.string().min(40).max(320),
  /** Ids of other terms that help. */
  related: z.array(z.string()),
  /** Id of the article that explains it, section/slug. */
  article: z.string(),
  /** Other forms that are linked in articles like the term itself: plurals, verbs, unambiguous abbreviations. */
  alsoInText: z.array(z.string()).optional(),
  /** False for words that every reader knows or that have other meanings: the articles don't link them. */
  linked: z.boolean().optional(),
});

/** A file of content/glossary: terms by id; the id is part of the published address, so it never changes. */
export const glossarySchema = z.record(z.string().regex(/^[a-z][a-z0-9-]*$/), term);

export type Term = z.infer<typeof term>;
