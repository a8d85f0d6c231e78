import type { Problem } from '../../kernel/link/problem.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { type EvaluatedVisit, evaluate } from '../evaluate.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { questions } from '../steps/questions.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { decisionHeadline } from '../words/decision.ts';
import { heldVisits } from './window-visits.ts';

export interface ListEntry {
  visit: VisitRecord;
  /** The decision, or the step that is due. */
  state: string;
  /** Only in this window: the storage has not taken it. */
  unsaved: boolean;
}

export interface VisitEntries {
  entries: ListEntry[];
  unreadable: { id: string; problem: Problem }[];
  /** Why the storage can't be read. */
  problem: Problem | undefined;
}

/** The visits of this device, the last saved first; before them those that only this window has. */
export async function listEntries(store: VisitStore): Promise<VisitEntries> {
  const held = heldVisits();
  const now = isoTime(new Date());
  const entry = (visit: VisitRecord, unsaved: boolean) => ({ visit, state: visitState(evaluate(visit, now)), unsaved });
  const unsaved = held.map((visit) => entry(visit, true));
  const shelf = await store.list();
  if (!shelf.ok) return { entries: unsaved, unreadable: [], problem: shelf.problem };
  const ids = shelf.value.visits.map(({ id }) => id).filter((id) => !held.some((one) => one.id === id));
  const loaded = await Promise.all(ids.map((id) => store.load(id)));
  const saved = loaded.flatMap((result) => (result.ok ? [entry(result.value, false)] : []));
  return { entries: [...unsaved, ...saved], unreadable: shelf.value.unreadable, problem: undefined };
}

export function visitState({ guide: { decision, due, path } }: EvaluatedVisit): string {
  if (decision !== undefined) return decisionHeadline(decision);
  return due === undefined ? '' : `Step ${path.length} is due: ${questions[due].title}.`;
}
