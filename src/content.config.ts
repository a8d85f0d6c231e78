import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { articleSchema } from './schemas/article.ts';
import { visitCaseSchema } from './schemas/case.ts';
import { exerciseSetSchema } from './schemas/exercise.ts';
import { glossarySchema } from './schemas/glossary.ts';
import { limitTopicSchema } from './schemas/limit.ts';
import { sourceSchema } from './schemas/source.ts';

export const collections = {
  articles: defineCollection({
    loader: glob({ base: 'content/articles', pattern: '**/*.mdx' }),
    schema: articleSchema,
  }),
  glossary: defineCollection({ loader: glob({ base: 'content/glossary', pattern: '*.json' }), schema: glossarySchema }),
  limits: defineCollection({ loader: glob({ base: 'content/limits', pattern: '*.json' }), schema: limitTopicSchema }),
  sources: defineCollection({ loader: file('content/sources/sources.json'), schema: sourceSchema }),
  exercises: defineCollection({
    loader: glob({ base: 'content/exercises', pattern: '**/*.json' }),
    schema: exerciseSetSchema,
  }),
  cases: defineCollection({ loader: glob({ base: 'content/cases', pattern: '*.json' }), schema: visitCaseSchema }),
};
