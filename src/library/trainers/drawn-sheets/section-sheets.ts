import { canBeDrawn, drawSheets } from '../../exercises/drawing/draw-sheets.ts';
import type { Question } from '../../exercises/exercise-schema.ts';
import type { SheetOrder } from './sheet-order.ts';

/** The questions of a section, by article. */
export interface SectionQuestions {
  /** Part of the addresses: `measuring`. */
  section: string;
  title: string;
  articles: { slug: string; title: string; questions: Question[] }[];
}

export interface SheetQuestion {
  /** Of its article, as in `SectionQuestions`. */
  slug: string;
  /** Counts up through the sheet. */
  number: number;
  question: Question;
}

/** One sheet of a class. */
export interface DrawnSheet {
  number: number;
  questions: SheetQuestion[];
}

/** The questions that an order puts on each sheet, with their printed figures. */
export function orderedQuestions({ articles }: SectionQuestions, { article, all }: SheetOrder): SheetQuestion[] {
  return articles
    .filter(({ slug }) => article === undefined || slug === article)
    .flatMap(({ slug, questions }) => questions.map((question) => ({ slug, question })))
    .filter(({ question }) => all || canBeDrawn(question))
    .map((one, i) => ({ ...one, number: i + 1 }));
}

/**
 * The sheets of an order. `pause` is awaited after each question, so that a page stays alive while a large class is
 * drawn.
 */
export async function drawnSheets(
  section: SectionQuestions,
  order: SheetOrder,
  pause: () => Promise<void> = () => Promise.resolve(),
): Promise<DrawnSheet[]> {
  const sheets = Array.from({ length: order.sheets }, (_, i): DrawnSheet => ({ number: i + 1, questions: [] }));
  for (const { question, ...rest } of orderedQuestions(section, order)) {
    const drawn = drawSheets(question, order.draw, order.sheets);
    sheets.forEach(({ questions }, i) => {
      questions.push({ ...rest, question: drawn[i] ?? question });
    });
    await pause();
  }
  return sheets;
}
