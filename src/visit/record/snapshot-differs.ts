import type { Form } from '../steps/fields.ts';
import { type StepId, stepIds } from '../steps/ids.ts';
import type { Snapshot } from './snapshot-schema.ts';
import type { VisitRecord } from './visit-schema.ts';

/** A step whose stored verdict differs from what its readings give today. */
export interface SnapshotDifference {
  step: StepId;
  /** What differs; `unreadable`: today the readings give no verdict. */
  differs: ('verdict' | 'sentences' | 'limits' | 'parts' | 'unreadable')[];
  stored: Snapshot;
  today: Snapshot | undefined;
}

/**
 * Compares the snapshots of a record with `recompute` over its typed readings. A difference means that the record was
 * edited by hand, or that limits, rules or words have changed since.
 */
export function snapshotDiffers(
  visit: VisitRecord,
  recompute: (step: StepId, form: Form) => Snapshot | undefined,
): SnapshotDifference[] {
  return stepIds.flatMap((step): SnapshotDifference[] => {
    const record = visit.steps[step];
    if (record?.snapshot === undefined) return [];
    const { form, snapshot: stored } = record;
    const today = recompute(step, form);
    const differs = today === undefined ? (['unreadable'] as const) : differences(stored, today);
    return differs.length === 0 ? [] : [{ step, differs: [...differs], stored, today }];
  });
}

const compared = ['verdict', 'sentences', 'parts'] as const;

function differences(stored: Snapshot, today: Snapshot) {
  const different: SnapshotDifference['differs'] = compared.filter(
    (part) => canonical(stored[part]) !== canonical(today[part]),
  );
  return limitsDiffer(stored, today) ? [...different, 'limits' as const] : different;
}

/** Whether a limit that both name has another value now. Limits that only one of them names are ignored. */
function limitsDiffer(stored: Snapshot, today: Snapshot): boolean {
  return stored.limits.some((limit) => today.limits.some(({ id, value }) => id === limit.id && value !== limit.value));
}

/** JSON text that does not depend on the order of the keys. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, part) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
