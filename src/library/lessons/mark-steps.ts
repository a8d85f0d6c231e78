import { isoTime } from '../../kernel/time/iso-time.ts';
import { keepProgress, keptProgress } from './kept-progress.ts';
import { mountQuestionMarks } from './mark-questions.ts';
import { type LessonStep, lessonSteps, marked } from './progress.ts';

/** Makes the boxes of a lesson work: `data-lesson` names it, `data-step` the step. */
const place = document.querySelector<HTMLElement>('[data-lesson]');
if (place !== null) {
  const lesson = place.dataset.lesson ?? '';
  const show = () => {
    const { lessons } = keptProgress();
    for (const box of place.querySelectorAll<HTMLInputElement>('[data-step]')) {
      box.checked = lessons[lesson]?.[box.dataset.step as LessonStep] !== undefined;
      box.disabled = false;
    }
  };
  place.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const step = lessonSteps.find((one) => one === target.dataset.step);
    if (step === undefined) return;
    const progress = keptProgress();
    const lessons = marked(progress.lessons, lesson, step, target.checked, isoTime(new Date()));
    keepProgress({ ...progress, lessons });
  });
  // Another tab may have marked a step, and a page from the browser's cache shows what was.
  addEventListener('storage', show);
  addEventListener('pageshow', show);
  show();
  mountQuestionMarks();
}
