import { type QuestionMarks, readQuestionMarks, unitedQuestions } from './question-marks.ts';

/** What belongs to a lesson, in its order. */
export const lessonSteps = ['page', 'figure', 'questions', 'case'] as const;
export type LessonStep = (typeof lessonSteps)[number];

/** ISO times at which a step was marked as done, by lesson and step. */
export type LessonMarks = Readonly<Record<string, Readonly<Partial<Record<LessonStep, string>>>>>;

/** What a reader has marked on the path. */
export interface Progress {
  readonly lessons: LessonMarks;
  readonly questions: QuestionMarks;
}

export const noProgress: Progress = { lessons: {}, questions: {} };

const format = 'overcurrent-fieldbook-progress';
const version = 1;

/** The marks after a step was marked or the mark was taken off. `at` is an ISO time; a mark keeps its first time. */
export function marked(lessons: LessonMarks, lesson: string, step: LessonStep, done: boolean, at: string): LessonMarks {
  const others = Object.entries(lessons[lesson] ?? {}).filter(([name]) => name !== step);
  const mark = done ? [[step, lessons[lesson]?.[step] ?? at]] : [];
  return { ...lessons, [lesson]: Object.fromEntries([...others, ...mark]) };
}

/** What is marked on either of two devices, with the earlier time of a step. Nothing is taken off. */
export function united(one: Progress, other: Progress): Progress {
  return {
    lessons: unitedLessons(one.lessons, other.lessons),
    questions: unitedQuestions(one.questions, other.questions),
  };
}

function unitedLessons(one: LessonMarks, other: LessonMarks): LessonMarks {
  let all = one;
  for (const [lesson, steps] of Object.entries(other)) {
    for (const step of lessonSteps) {
      const at = steps[step];
      const known = all[lesson]?.[step];
      if (at !== undefined && (known === undefined || Date.parse(at) < Date.parse(known))) {
        all = marked(marked(all, lesson, step, false, at), lesson, step, true, at);
      }
    }
  }
  return all;
}

/** The progress as the text of a file. */
export function progressFile(progress: Progress): string {
  return `${JSON.stringify({ format, version, ...progress }, null, 2)}\n`;
}

/** What a file or the storage holds. Undefined if it is no progress or one of a later version. */
export function readProgress(text: string): Progress | undefined {
  try {
    const file: unknown = JSON.parse(text);
    if (!isRecord(file) || file.format !== format || file.version !== version) return undefined;
    const lessons = readLessons(file.lessons);
    const questions = readQuestionMarks(file.questions ?? {});
    return lessons && questions && { lessons, questions };
  } catch {
    return undefined;
  }
}

function readLessons(value: unknown): LessonMarks | undefined {
  if (!isRecord(value)) return undefined;
  let lessons: LessonMarks = {};
  for (const [lesson, steps] of Object.entries(value)) {
    if (!isRecord(steps) || !/^[a-z][a-z0-9-]*$/.test(lesson)) return undefined;
    for (const step of lessonSteps) {
      const at = steps[step];
      if (at === undefined) continue;
      if (typeof at !== 'string' || Number.isNaN(Date.parse(at))) return undefined;
      lessons = marked(lessons, lesson, step, true, at);
    }
  }
  return lessons;
}

/** How many of these steps are done. */
export function doneOf(lessons: LessonMarks, lesson: string, steps: readonly LessonStep[]): number {
  return steps.filter((step) => lessons[lesson]?.[step] !== undefined).length;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
