import type { Entry } from '../case/case-run.ts';
import { actionText, resultText } from '../words/acts.ts';

/** Headings that the bar leads to. Buttons, not links: the fragment of the address names the case. */
const places: [id: string, name: string][] = [
  ['acts', 'Machine'],
  ['bench', 'Measure'],
  ['acts-done', 'Notes'],
  ['decide', 'Decide'],
];

/** A bar that stays in sight: the result of the last act, announced, and buttons to the parts of the page. */
export function LastAct({ entry, number }: { entry: Entry | undefined; number: number }) {
  return (
    <div class="practice-last">
      <p role="status">
        {entry && (
          <>
            {number}. {actionText(entry.action)}. <strong>{resultText(entry.result)}</strong>
          </>
        )}
      </p>
      <div class="practice-places">
        {places.map(([id, name]) => (
          <button key={id} type="button" class="plain" onClick={() => goTo(id)}>
            {name}
          </button>
        ))}
      </div>
    </div>
  );
}

function goTo(id: string): void {
  const heading = document.getElementById(id);
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}
