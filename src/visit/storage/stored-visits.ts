import type { Problem } from '../../kernel/link/problem.ts';
import { readVisit } from '../record/read-visit.ts';
import type { DecisionSnapshot } from '../record/snapshot-schema.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { VisitRow } from './database.ts';

/** A visit in a list. Its times are for display; the order comes from the storage. */
export interface VisitSummary extends Pick<VisitRecord, 'id' | 'machine' | 'axis' | 'createdAt' | 'changedAt'> {
  steps: number;
  decision: DecisionSnapshot['kind'] | undefined;
}

/** All that is stored. Unreadable records are listed too: they may be of a newer edition and can be exported. */
export interface StoredVisits {
  visits: VisitSummary[];
  unreadable: { id: string; problem: Problem }[];
}

/** `rows` in the order of their saves; the result has the last saved first. */
export function storedVisits(rows: readonly VisitRow[]): StoredVisits {
  const shelf: StoredVisits = { visits: [], unreadable: [] };
  for (const { id, record } of [...rows].reverse()) {
    const read = readVisit(record);
    if (read.ok) shelf.visits.push(summaryOf(read.value));
    else shelf.unreadable.push({ id, problem: read.problem });
  }
  return shelf;
}

function summaryOf({ id, machine, axis, createdAt, changedAt, steps, decision }: VisitRecord): VisitSummary {
  return { id, machine, axis, createdAt, changedAt, steps: Object.keys(steps).length, decision: decision?.kind };
}
