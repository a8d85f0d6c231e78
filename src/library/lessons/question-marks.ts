/** What a reader marked after looking at the answer. */
export type QuestionMark = 'missed' | 'known';

/** The marks of one question by local day, `2026-11-28`: one a day. */
export type DayMarks = Readonly<Record<string, QuestionMark>>;

/** By article and question, as `questionKey` writes them. */
export type QuestionMarks = Readonly<Record<string, DayMarks>>;

/** `measuring/bridge-check#climbing-row` */
export const questionKey = (article: string, question: string) => `${article}#${question}`;

/** The marks with this one for the day; undefined takes the day's mark off. */
export function markedQuestion(
  marks: QuestionMarks,
  question: string,
  day: string,
  mark: QuestionMark | undefined,
): QuestionMarks {
  const others = Object.entries(marks[question] ?? {}).filter(([other]) => other !== day);
  const days = Object.fromEntries(mark === undefined ? others : [...others, [day, mark]]);
  return { ...marks, [question]: days };
}

/** The marks of two devices. If they differ on a day, the question was missed. */
export function unitedQuestions(one: QuestionMarks, other: QuestionMarks): QuestionMarks {
  let all = one;
  for (const [question, days] of Object.entries(other)) {
    for (const [day, mark] of Object.entries(days)) {
      if (all[question]?.[day] !== 'missed') all = markedQuestion(all, question, day, mark);
    }
  }
  return all;
}

/** Marks from a file; undefined if they are none. */
export function readQuestionMarks(value: unknown): QuestionMarks | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  let marks: QuestionMarks = {};
  for (const [question, days] of Object.entries(value)) {
    if (!/^[a-z-]+\/[a-z0-9-]+#[a-z0-9-]+$/.test(question)) return undefined;
    if (typeof days !== 'object' || days === null) return undefined;
    for (const [day, mark] of Object.entries(days)) {
      if (!isDay(day) || (mark !== 'missed' && mark !== 'known')) return undefined;
      marks = markedQuestion(marks, question, day, mark);
    }
  }
  return marks;
}

const isDay = (text: string) => /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text));
