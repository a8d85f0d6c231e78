import { type CollectionEntry, getCollection } from 'astro:content';

type ExerciseSet = CollectionEntry<'exercises'>;

/** The questions of an article. The whole collection is searched because asking for a missing entry would warn. */
export async function exercisesOf(article: string): Promise<ExerciseSet | undefined> {
  return (await getCollection('exercises', ({ id }) => id === article))[0];
}
