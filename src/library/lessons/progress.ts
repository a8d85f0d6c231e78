/** What belongs to a lesson, in its order. */
export const lessonSteps = ['page', 'figure', 'questions', 'case'] as const;
export type LessonStep = (typeof lessonSteps)[number];

/** ISO times at which a step was marked as done, by lesson and step. */
export type Progress = Readonly<Record<string, Readonly<Partial<Record<LessonStep, string>>>>>;

const format = 'overcurrent-fieldbook-progress';
const version = 1;

/** The progress after a step was marked or the mark was taken off. `at` is an ISO time; a mark keeps its first time. */
export function marked(progress: Progress, lesson: string, step: LessonStep, done: boolean, at: string): Progress {
  const others = Object.entries(progress[lesson] ?? {}).filter(([name]) => name !== step);
  const mark = done ? [[step, progress[lesson]?.[step] ?? at]] : [];
  return { ...progress, [lesson]: Object.fromEntries([...others, ...mark]) };
}

/** What is done on either of two devices, with the earlier time. Nothing is taken off. */
export function united(one: Progress, other: Progress): Progress {
  let all = one;
  for (const [lesson, steps] of Object.entries(other)) {
    for (const step of lessonSteps) {
      const at = steps[step];
      const known = all[lesson]?.[step];
      if (at !== undefined && (known === undefined || at < known)) {
        all = marked(marked(all, lesson, step, false, at), lesson, step, true, at);
      }
    }
  }
  return all;
}

/** The progress as the text of a file. */
export function progressFile(progress: Progress): string {
  return `${JSON.stringify({ format, version, lessons: progress }, null, 2)}\n`;
}

/** What a file or the storage holds. Undefined if it is no progress or one of a later version. */
export function readProgress(text: string): Progress | undefined {
  try {
    const file: unknown = JSON.parse(text);
    if (!isRecord(file) || file.format !== format || file.version !== version || !isRecord(file.lessons))
      return undefined;
    let progress: Progress = {};
    for (const [lesson, steps] of Object.entries(file.lessons)) {
      if (!isRecord(steps) || !/^[a-z][a-z0-9-]*$/.test(lesson)) return undefined;
      for (const step of lessonSteps) {
        const at = steps[step];
        if (at === undefined) continue;
        if (typeof at !== 'string' || !/^\d{4}-\d\d-\d\dT/.test(at)) return undefined;
        progress = marked(progress, lesson, step, true, at);
      }
    }
    return progress;
  } catch {
    return undefined;
  }
}

/** How many of these steps are done. */
export function doneOf(progress: Progress, lesson: string, steps: readonly LessonStep[]): number {
  return steps.filter((step) => progress[lesson]?.[step] !== undefined).length;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
