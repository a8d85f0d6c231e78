import { type Cell, csvOf } from '../../../kernel/words/csv.ts';
import type { ExportedQuestion } from './exported-question.ts';

const columns = ['sheet', 'number', 'article', 'id', 'question', 'answer', 'kind', 'result', 'unit'] as const;

/** Questions of one sheet. */
export interface SheetOfQuestions {
  number: number;
  questions: readonly ExportedQuestion[];
}

/** One row a question and sheet, for a spreadsheet or another learning system. Paragraphs of an answer are lines. */
export function questionsCsv(sheets: readonly SheetOfQuestions[]): string {
  const rows = sheets.flatMap(({ number, questions }) =>
    questions.map(({ id, title, question, answer, key }, i): Cell[] => [
      ...[number, i + 1, title, id, question, answer.join('\n')],
      ...(key === undefined ? ['open', '', ''] : [key.kind, key.value, key.kind === 'figure' ? key.unit : '']),
    ]),
  );
  return csvOf([columns, ...rows]);
}
