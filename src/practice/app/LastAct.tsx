import type { Entry } from '../case/session.ts';
import { actionText, resultText } from '../words/acts.ts';

/** Where the bar leads, by the ids of headings. The address names the case, so these are no links. */
const places: [id: string, name: string][] = [
  ['acts', 'Machine'],
  ['bench', 'Measure'],
  ['acts-done', 'Notes'],
  ['decide', 'Decide'],
];

/** What the last act brought, in sight wherever the person is, and said aloud; and the way to the parts of the page. */
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
