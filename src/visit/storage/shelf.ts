import type { Problem } from '../../kernel/link/problem.ts';
import { readVisit } from '../record/read-visit.ts';
import type { DecisionSnapshot } from '../record/snapshot-schema.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { VisitRow } from './database.ts';

/** What a list of visits shows of one. Times are shown, never sorted by. */
export interface VisitSummary extends Pick<VisitRecord, 'id' | 'machine' | 'axis' | 'createdAt' | 'changedAt'> {
  steps: number;
  decision: DecisionSnapshot['kind'] | undefined;
}

/** All that is stored. What can't be read is listed too: it may be of a newer edition, and it can be taken out raw. */
export interface Shelf {
  visits: VisitSummary[];
  unreadable: { id: string; problem: Problem }[];
}

/** `rows` in the order in which they were saved; the shelf has the last saved first. */
export function shelfOf(rows: readonly VisitRow[]): Shelf {
  const shelf: Shelf = { visits: [], unreadable: [] };
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
