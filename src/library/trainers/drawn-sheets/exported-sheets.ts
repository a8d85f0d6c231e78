import { canBeDrawn } from '../../exercises/drawing/draw-sheets.ts';
import { exportedQuestion } from '../../exercises/export/exported-question.ts';
import type { SheetOfQuestions } from '../../exercises/export/questions-csv.ts';
import type { DrawnSheet, SectionQuestions } from './section-sheets.ts';

/** The sheets of a draw as they leave the site. A question that is the same on every sheet has one id on all of them. */
export function exportedSheets(
  { section, articles }: SectionQuestions,
  draw: number,
  sheets: readonly DrawnSheet[],
): SheetOfQuestions[] {
  const drawable = drawableIds(articles);
  return sheets.map(({ number, questions }) => ({
    number,
    questions: questions.map(({ slug, question }) => {
      const title = articles.find((article) => article.slug === slug)?.title ?? slug;
      const mark = drawable.has(`${slug} ${question.id}`) ? `_draw${draw}_sheet${number}` : '';
      return exportedQuestion(`${section}/${slug}`, title, question, mark);
    }),
  }));
}

/** A drawn question no longer says how it was drawn, so the section is asked. */
function drawableIds(articles: SectionQuestions['articles']): Set<string> {
  return new Set(
    articles.flatMap(({ slug, questions }) => questions.filter(canBeDrawn).map(({ id }) => `${slug} ${id}`)),
  );
}
