import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { articleSchema } from './library/articles/article-schema.ts';
import { visitCaseSchema } from './library/cases/case-schema.ts';
import { exerciseSetSchema } from './library/exercises/exercise-schema.ts';
import { glossarySchema } from './library/glossary/glossary-schema.ts';
import { lessonSchema } from './library/lessons/lesson-schema.ts';
import { fieldSchema } from './library/tables/field-schema.ts';
import { limitTopicSchema } from './library/tables/limit-schema.ts';
import { sourceSchema } from './library/tables/source-schema.ts';

export const collections = {
  articles: defineCollection({
    loader: glob({ base: 'content/articles', pattern: '**/*.mdx' }),
    schema: articleSchema,
  }),
  glossary: defineCollection({ loader: glob({ base: 'content/glossary', pattern: '*.json' }), schema: glossarySchema }),
  limits: defineCollection({ loader: glob({ base: 'content/limits', pattern: '*.json' }), schema: limitTopicSchema }),
  field: defineCollection({ loader: glob({ base: 'content/field', pattern: '*.json' }), schema: fieldSchema }),
  sources: defineCollection({ loader: file('content/sources/sources.json'), schema: sourceSchema }),
  exercises: defineCollection({
    loader: glob({ base: 'content/exercises', pattern: '**/*.json' }),
    schema: exerciseSetSchema,
  }),
  lessons: defineCollection({ loader: glob({ base: 'content/lessons', pattern: '*.json' }), schema: lessonSchema }),
  cases: defineCollection({ loader: glob({ base: 'content/cases', pattern: '*.json' }), schema: visitCaseSchema }),
};
