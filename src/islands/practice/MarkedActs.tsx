import type { Entry } from '../../practice/session.ts';
import { actionText, resultText } from '../../texts/practice-acts.ts';
import { feedbackTexts } from '../../texts/practice-feedback.ts';

/** All that was done, with what was unsafe marked. */
export function MarkedActs({ entries }: { entries: readonly Entry[] }) {
  return (
    <section aria-labelledby="acts-done">
      <h2 id="acts-done">{feedbackTexts.acts}</h2>
      <ol class="acts-done">
        {entries.map((entry, position) => (
          <li key={String(position)}>
            {entry.unsafe.length > 0 && <strong class="unsafe-mark">{feedbackTexts.unsafeMark} </strong>}
            {actionText(entry.action)}. <strong>{resultText(entry.result)}</strong>
          </li>
        ))}
      </ol>
    </section>
  );
}
