import { snapshotDiffers } from '../../record/snapshot-differs.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { stepTexts } from '../../texts/guide-steps.ts';
import { snapshotOf } from './snapshot.ts';

/** Says where the record keeps another verdict than its readings give today. What counts is what they give today. */
export function StaleVerdicts({ visit }: { visit: VisitRecord }) {
  const steps = snapshotDiffers(visit, snapshotOf).filter(({ differs }) =>
    differs.some((what) => what !== 'sentences'),
  );
  if (steps.length === 0) return null;
  return (
    <div class="caution stale" role="note">
      <p class="caution-word">Kept and today’s verdict differ</p>
      <p>
        {steps.map(({ step }) => stepTexts[step].title).join('; ')}: the record was edited, or the limits have changed
        since. Shown is what the readings give today.
      </p>
    </div>
  );
}
