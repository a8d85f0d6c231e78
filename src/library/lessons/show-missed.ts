import { keptProgress } from './kept-progress.ts';
import { mountQuestionMarks, today } from './mark-questions.ts';
import { reviewDay } from './review-day.ts';

/** Leaves on the page what is due today, and says beside each marked question when it comes again. */
const page = document.querySelector<HTMLElement>('[data-missed]');
const status = page?.querySelector<HTMLElement>('[data-due]');
if (page && status) {
  const all = [...page.querySelectorAll<HTMLElement>('.question')];
  const keyOf = (question: HTMLElement) =>
    question.querySelector<HTMLElement>('[data-question]')?.dataset.question ?? '';
  // What was due when the page was opened stays on it, so that a mark can still be corrected.
  const shown = new Set<string>();
  mountQuestionMarks(() => {
    const { questions } = keptProgress();
    const now = today();
    const days: string[] = [];
    for (const question of all) {
      const key = keyOf(question);
      const day = reviewDay(questions[key] ?? {});
      if (day !== undefined) days.push(day);
      if (day !== undefined && day <= now) shown.add(key);
      question.hidden = !shown.has(key);
      const note = question.querySelector<HTMLElement>('[data-comes-again]');
      if (note) note.textContent = day === undefined || day <= now ? '' : `It comes again on ${day}.`;
    }
    for (const part of page.querySelectorAll<HTMLElement>('[data-questions]')) {
      part.hidden = part.querySelector('.question:not([hidden])') === null;
    }
    status.textContent = dueText(days, now);
  });
}

/** `days`: when each missed question comes again. */
function dueText(days: readonly string[], now: string): string {
  if (days.length === 0) return 'You have marked no question as missed.';
  const due = days.filter((day) => day <= now).length;
  if (due > 0) return due === 1 ? '1 question is due today.' : `${due} questions are due today.`;
  return `Nothing is due today. The next question comes on ${[...days].sort()[0]}.`;
}
