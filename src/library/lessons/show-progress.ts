import { isoTime } from '../../kernel/time/iso-time.ts';
import { download } from '../../visit/app/download.ts';
import { keepProgress, keptProgress } from './kept-progress.ts';
import { doneOf, lessonSteps, progressFile, readProgress, united } from './progress.ts';

/** Writes beside each lesson how far it is, and makes the file buttons work. */
const place = document.querySelector<HTMLElement>('[data-path]');
const status = place?.querySelector<HTMLElement>('[role="status"]');
const input = place?.querySelector<HTMLInputElement>('input[type="file"]');

function show(): void {
  const { lessons } = keptProgress();
  for (const item of document.querySelectorAll<HTMLElement>('[data-of-lesson]')) {
    const steps = lessonSteps.filter((step) => item.dataset.steps?.split(' ').includes(step));
    const done = doneOf(lessons, item.dataset.ofLesson ?? '', steps);
    item.textContent = done === 0 ? '' : done === steps.length ? 'Done.' : `${done} of ${steps.length} steps done.`;
  }
}

async function takeOver(file: File): Promise<string> {
  const read = readProgress(await file.text());
  if (read === undefined) return 'This file is no progress of the lessons. Nothing was changed.';
  keepProgress(united(keptProgress(), read));
  show();
  return 'The progress in the file is now on this device too. Nothing was taken off.';
}

if (place && status && input) {
  place.querySelector('button')?.addEventListener('click', () => {
    const day = isoTime(new Date()).slice(0, 10);
    download({ name: `fieldbook-lessons-${day}.json`, text: progressFile(keptProgress()) });
  });
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    void takeOver(file)
      .catch(() => 'The file can’t be read. Nothing was changed.')
      .then((sentence) => {
        status.textContent = sentence;
        // Allows choosing the same file again.
        input.value = '';
      });
  });
  addEventListener('storage', show);
  addEventListener('pageshow', show);
  show();
  place.hidden = false;
}
