import { type CollectionEntry, getCollection } from 'astro:content';
import { encodeCase, windingTemperatures } from '../../practice/case/case-code.ts';
import { memoPerBuild } from '../../site/memo-per-build.ts';
import type { Question } from '../exercises/exercise-schema.ts';
import { exercisesOf } from '../exercises/exercises-of.ts';
import type { Lesson } from './lesson-schema.ts';

export type LessonEntry = CollectionEntry<'lessons'>;

/** The path, from its first lesson. */
export const lessonsInOrder = memoPerBuild(async (): Promise<readonly LessonEntry[]> => {
  const lessons = await getCollection('lessons');
  return lessons.sort((a, b) => a.data.order - b.data.order);
});

/** The questions of a lesson in its order. Throws if its article has no such question. */
export async function questionsOf({ article, questions }: Lesson): Promise<Question[]> {
  const set = await exercisesOf(article);
  return questions.map((id) => {
    const question = set?.data.questions.find((one) => one.id === id);
    if (question === undefined) throw new Error(`${article} has no question ${id}`);
    return question;
  });
}

/** The code of a lesson's practice case. */
export function caseCode({ fault, seed, temperatureStep }: Lesson['case']): string {
  return encodeCase({ fault, seed, windingCelsius: windingTemperatures[temperatureStep] ?? 20 });
}
