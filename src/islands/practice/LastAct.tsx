import type { Entry } from '../../practice/session.ts';
import { actionText, resultText } from '../../texts/practice-acts.ts';

/** What the last act brought, in sight wherever the person is, and said aloud. */
export function LastAct({ entry, number }: { entry: Entry | undefined; number: number }) {
  return (
    <p class="practice-last" role="status">
      {entry && (
        <>
          {number}. {actionText(entry.action)}. <strong>{resultText(entry.result)}</strong>
        </>
      )}
    </p>
  );
}
