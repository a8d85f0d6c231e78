import type { SnapshotDifference } from '../record/snapshot-differs.ts';
import { questions } from '../steps/questions.ts';

/** Names the steps whose stored verdict differs from today's. Today's counts. */
export function StaleVerdicts({ differs }: { differs: readonly SnapshotDifference[] }) {
  const steps = differs.filter((one) => one.differs.some((what) => what !== 'sentences'));
  if (steps.length === 0) return null;
  return (
    <div class="caution stale" role="note">
      <p class="caution-word">Kept and today’s verdict differ</p>
      <p>
        {steps.map(({ step }) => questions[step].title).join('; ')}: the record was edited, or the limits have changed
        since. You see today’s result.
      </p>
    </div>
  );
}
