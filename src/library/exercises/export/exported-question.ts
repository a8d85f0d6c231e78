import type { Question } from '../exercise-schema.ts';
import { fillQuestion, plainText, valuesOf } from '../fill.ts';

/** What a machine can compare with an answer. */
export type Key =
  /** One of the verdicts. */
  | { kind: 'choice'; value: Verdict }
  /** A figure as printed, with three digits, in the unit that is printed with it. */
  | { kind: 'figure'; value: number; unit: string };

export const verdictChoices = ['go', 'no-go', 'undecided'] as const;
type Verdict = (typeof verdictChoices)[number];

/** A question as it leaves the site: plain texts with ordinary spaces. */
export interface ExportedQuestion {
  /** Letters, digits, - and _; the same question of two sheets has two, unless its figures are the same. */
  id: string;
  /** `measuring/bridge-check`. */
  article: string;
  title: string;
  question: string;
  answer: string[];
  /** Undefined if only a person can judge the answer. */
  key: Key | undefined;
}

/** `mark` tells the sheets apart in the id. */
export function exportedQuestion(article: string, title: string, question: Question, mark = ''): ExportedQuestion {
  const filled = fillQuestion(question);
  return {
    id: `${article.replace('/', '_')}_${question.id}${mark}`,
    article,
    title,
    question: plain(plainText(filled.question)),
    answer: filled.answer.map((part) => plain(plainText(part))),
    key: keyOf(question),
  };
}

function keyOf({ id, asks, numbers = {} }: Question): Key | undefined {
  if (asks === undefined) return undefined;
  const text = plain(valuesOf(id, numbers).get(asks)?.text ?? '');
  const verdict = verdictChoices.find((choice) => choice === text);
  if (verdict !== undefined) return { kind: 'choice', value: verdict };
  const [, numeral = '', unit = ''] = /^(−?[\d.]+) (\S+)$/.exec(text) ?? [];
  if (unit === '')
    throw new Error(`question ${id} asks for “${asks}”, which is neither a verdict nor a figure: ${text}`);
  return { kind: 'figure', value: Number(numeral.replace('−', '-')), unit };
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
