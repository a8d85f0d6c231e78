import { fieldIds } from './axis-fields.ts';
import type { AxisRecord, PartChange } from './axis-schema.ts';
import { newest, united } from './entries.ts';

/**
 * Two records with the same id as one. Commutative, associative and idempotent in everything but `revision`, so that
 * devices may exchange them in any order and as often as they like.
 */
export function mergeAxes(a: AxisRecord, b: AxisRecord): AxisRecord {
  const fields = fieldIds.flatMap((id) => {
    const entries = united(a.fields[id] ?? [], b.fields[id] ?? []);
    return entries.length === 0 ? [] : [[id, entries] as const];
  });
  return {
    ...a,
    revision: Math.max(a.revision, b.revision),
    createdAt: Date.parse(b.createdAt) < Date.parse(a.createdAt) ? b.createdAt : a.createdAt,
    names: united(a.names, b.names),
    fields: Object.fromEntries(fields) as AxisRecord['fields'],
    changes: unitedChanges(a.changes, b.changes),
  };
}

/** Of each change the newest entry. */
export function unitedChanges(a: readonly PartChange[], b: readonly PartChange[]): PartChange[] {
  const ids = [...new Set([...a, ...b].map(({ id }) => id))];
  const kept = ids.flatMap((id) => newest([...a, ...b].filter((change) => change.id === id)) ?? []);
  return united(kept, []);
}
