import { isoTime } from '../../kernel/time/iso-time.ts';
import { keepProgress, keptProgress } from './kept-progress.ts';
import { markedQuestion, type QuestionMark } from './question-marks.ts';

/** Today on this device. */
export const today = () => isoTime(new Date()).slice(0, 10);

/**
 * Makes the two buttons of each question work: `data-question` names it, `data-mark` what a button marks. A second tap
 * takes the mark off, and the other button corrects it. `changed` is called after each change and at the start.
 */
export function mountQuestionMarks(changed: () => void = () => {}): void {
  const show = () => {
    const { questions } = keptProgress();
    for (const place of document.querySelectorAll<HTMLElement>('[data-question]')) {
      const mark = questions[place.dataset.question ?? '']?.[today()];
      for (const button of buttonsOf(place)) button.setAttribute('aria-pressed', String(button.dataset.mark === mark));
      place.hidden = false;
    }
    changed();
  };
  for (const place of document.querySelectorAll<HTMLElement>('[data-question]')) {
    for (const button of buttonsOf(place)) {
      button.addEventListener('click', () => {
        const pressed = button.getAttribute('aria-pressed') === 'true';
        const mark = pressed ? undefined : (button.dataset.mark as QuestionMark);
        const progress = keptProgress();
        const questions = markedQuestion(progress.questions, place.dataset.question ?? '', today(), mark);
        keepProgress({ ...progress, questions });
        show();
      });
    }
  }
  addEventListener('storage', show);
  addEventListener('pageshow', show);
  show();
}

const buttonsOf = (place: HTMLElement) => place.querySelectorAll<HTMLElement>('[data-mark]');
