import { getCollection } from 'astro:content';
import { type ArticleEntry, articlesInOrder } from '../articles/articles.ts';
import { sections } from '../articles/sections.ts';
import type { Question } from '../exercises/exercise-schema.ts';
import { type FilledQuestion, fillQuestion } from '../exercises/fill.ts';

export interface ExerciseSheet {
  section: (typeof sections)[number];
  /** Articles with their questions as written, and filled and numbered throughout the section. */
  parts: { article: ArticleEntry; written: Question[]; questions: (FilledQuestion & { number: number })[] }[];
  count: number;
}

/** The questions of each section that has any, in the order of its articles. */
export async function exerciseSheets(): Promise<ExerciseSheet[]> {
  const sets = new Map((await getCollection('exercises')).map(({ id, data }) => [id, data.questions]));
  const articles = await articlesInOrder();
  return sections.flatMap((section) => {
    let count = 0;
    const parts = articles
      .filter(({ id, data }) => data.section === section.id && sets.has(id))
      .map((article) => {
        const written = sets.get(article.id) ?? [];
        return {
          article,
          written,
          questions: written.map((question) => ({ ...fillQuestion(question), number: ++count })),
        };
      });
    return count === 0 ? [] : [{ section, parts, count }];
  });
}
