import type { Problem } from '../../kernel/link/problem.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { evaluate } from '../evaluate.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { unsavedVisits } from './unsaved-visits.ts';
import { visitState } from './visit-summary.ts';

export interface ListEntry {
  visit: VisitRecord;
  /** The decision, or the step that is due. */
  state: string;
  /** Only in this window; it could not be stored. */
  unsaved: boolean;
}

export interface VisitEntries {
  entries: ListEntry[];
  unreadable: { id: string; problem: Problem }[];
  /** Why the storage can't be read. */
  problem: Problem | undefined;
}

/** The visits of this device, those that only this window has first, then the last saved. */
export async function listEntries(store: VisitStore): Promise<VisitEntries> {
  const inWindow = unsavedVisits();
  const now = isoTime(new Date());
  const entry = (visit: VisitRecord, unsaved: boolean) => ({ visit, state: visitState(evaluate(visit, now)), unsaved });
  const unsaved = inWindow.map((visit) => entry(visit, true));
  const stored = await store.list();
  if (!stored.ok) return { entries: unsaved, unreadable: [], problem: stored.problem };
  const ids = stored.value.visits.map(({ id }) => id).filter((id) => !inWindow.some((one) => one.id === id));
  const loaded = await Promise.all(ids.map((id) => store.load(id)));
  const saved = loaded.flatMap((result) => (result.ok ? [entry(result.value, false)] : []));
  return { entries: [...unsaved, ...saved], unreadable: stored.value.unreadable, problem: undefined };
}
