import { limitValue } from '../../kernel/limits.ts';
import { type Problem, succeeded } from '../../kernel/link/problem.ts';
import { copyOf } from '../record/change-visit.ts';
import { byteLength, readVisit } from '../record/read-visit.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { VisitRow } from './database.ts';
import { storageRefused } from './storage-problem.ts';

/** What the storage holds under the id of a visit. */
export type Stored =
  | { kind: 'nothing' }
  | { kind: 'visit'; visit: VisitRecord }
  | { kind: 'unreadable'; problem: Problem };
/** What is to be stored, or why nothing is. */
export type Decided = { ok: true; value: VisitRecord } | { ok: false; problem: Problem };

export function storedIn(row: VisitRow | undefined): Stored {
  if (row === undefined) return { kind: 'nothing' };
  const read = readVisit(row.record);
  return read.ok ? { kind: 'visit', visit: read.value } : { kind: 'unreadable', problem: read.problem };
}

/** Decides on a save: only over the revision that the visit was loaded from. */
export function nextRevision(mine: VisitRecord, stored: Stored): Decided {
  switch (stored.kind) {
    case 'unreadable':
      // It may be of a newer edition: an unreadable record is never overwritten.
      return { ok: false, problem: stored.problem };
    case 'nothing':
      return mine.revision === 0 ? succeeded({ ...mine, revision: 1 }) : storageRefused('deleted-elsewhere');
    case 'visit':
      return stored.visit.revision === mine.revision
        ? succeeded({ ...mine, revision: mine.revision + 1 })
        : storageRefused('conflict');
  }
}

/** Decides on an import: what is on this device is replaced only if the person chooses that. */
export function importDecision(
  mine: VisitRecord,
  stored: Stored,
  onDuplicate: 'replace' | 'keep-both' | undefined,
  newId: () => string,
): Decided {
  if (stored.kind === 'nothing') return succeeded({ ...mine, revision: Math.max(1, mine.revision) });
  if (onDuplicate === 'keep-both') return succeeded({ ...copyOf(mine, newId()), revision: 1 });
  if (onDuplicate === undefined || stored.kind === 'unreadable') return storageRefused('already-here');
  // Higher than both, so that a tab that has either of them open notices the change.
  return succeeded({ ...mine, revision: Math.max(mine.revision, stored.visit.revision) + 1 });
}

/** Why a visit can't be stored: it could not be read back. Undefined if it can. */
export function unfitToSave(visit: VisitRecord): Problem | undefined {
  const read = readVisit(visit);
  if (!read.ok) return storageRefused('not-savable', read.problem.where).problem;
  const size = byteLength(JSON.stringify(visit));
  return size > limitValue('record-file') ? storageRefused('visit-too-large').problem : undefined;
}
