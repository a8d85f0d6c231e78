import { type CollectionEntry, getCollection } from 'astro:content';

export type ExerciseSet = CollectionEntry<'exercises'>;

/** The questions of an article; none where it has none yet, which is no fault worth a warning. */
export async function exercisesOf(article: string): Promise<ExerciseSet | undefined> {
  return (await getCollection('exercises', ({ id }) => id === article))[0];
}
