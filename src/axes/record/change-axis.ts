import { type FieldId, fieldIds, type NoteId } from './axis-fields.ts';
import {
  type AxisRecord,
  axisFormat,
  axisVersion,
  type Entry,
  type NameEntry,
  type PartChange,
} from './axis-schema.ts';
import { newest, withEntry } from './entries.ts';
import { unitedChanges } from './merge-axes.ts';
import { type AxisNames, idOfNames, nameKey } from './names.ts';

/** What is noted about an axis, as it holds now. */
export type AxisNotes = Record<NoteId, string>;

/** A new record. `now`: ISO time with offset. `id`: that of the group of visits that it names, if there is one. */
export function newAxis(names: AxisNames, now: string, id = idOfNames(names)): AxisRecord {
  return {
    format: axisFormat,
    version: axisVersion,
    id,
    revision: 0,
    createdAt: now,
    names: withEntry<NameEntry>([], { machine: names.machine, axis: names.axis }, now),
    fields: {},
    changes: [],
  };
}

/**
 * The record of an axis among the stored ones, or a new one. One that was taken off the list is stored too: a change must
 * count on from what it holds, or the older text would hold on.
 */
export function recordOf(
  records: readonly AxisRecord[],
  { id, names }: { id: string; names: AxisNames },
  now: string,
): AxisRecord {
  return records.find((record) => record.id === id) ?? newAxis(names, now, id);
}

export function namesOf({ names }: AxisRecord): AxisNames {
  const present = newest(names);
  return { machine: present?.machine ?? '', axis: present?.axis ?? '' };
}

/** The value that holds now; empty if nothing was typed. */
export function textIn({ fields }: AxisRecord, id: FieldId): string {
  return newest(fields[id] ?? [])?.value ?? '';
}

/** The record with these texts; one that is the same already gets no entry. */
export function withValues(axis: AxisRecord, values: Partial<Record<FieldId, string>>, now: string): AxisRecord {
  const fields = { ...axis.fields };
  for (const id of fieldIds) {
    const value = values[id];
    if (value !== undefined && textIn(axis, id) !== value)
      fields[id] = withEntry<Entry>(fields[id] ?? [], { value }, now);
  }
  return { ...axis, fields };
}

/** The record under another name. The old one stays an alias, so that visits that use it are still found. */
export function renamed(axis: AxisRecord, { machine, axis: name }: AxisNames, now: string): AxisRecord {
  const present = namesOf(axis);
  if (present.machine === machine && present.axis === name) return axis;
  return { ...axis, names: withEntry(axis.names, { machine, axis: name }, now) };
}

/** The names that it had before, without those that differ only in spelling from the present one. */
export function aliasesOf(axis: AxisRecord): AxisNames[] {
  const known = new Set([nameKey(namesOf(axis))]);
  return axis.names.flatMap((names) => {
    const key = nameKey(names);
    if (known.has(key)) return [];
    known.add(key);
    return [{ machine: names.machine, axis: names.axis }];
  });
}

/** A part that was changed, or a correction of such a note if its id is known. */
export function withChange(axis: AxisRecord, change: Omit<PartChange, 'at' | 'count'>, now: string): AxisRecord {
  const count = axis.changes.find(({ id }) => id === change.id)?.count ?? 0;
  return { ...axis, changes: unitedChanges(axis.changes, [{ ...change, at: now, count: count + 1 }]) };
}
