import { nextStep } from '../../guide/next-step.ts';
import { isoTime } from '../../record/iso-time.ts';
import type { Problem } from '../../record/problem.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import type { VisitStore } from '../../record/visit-store.ts';
import { decisionHeadline } from '../../texts/decision.ts';
import { stepTexts } from '../../texts/guide-steps.ts';
import { recordAnswers } from './record-answers.ts';
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
  const unsaved = held.map((visit) => ({ visit, state: visitState(visit), unsaved: true }));
  const shelf = await store.list();
  if (!shelf.ok) return { entries: unsaved, unreadable: [], problem: shelf.problem };
  const ids = shelf.value.visits.map(({ id }) => id).filter((id) => !held.some((one) => one.id === id));
  const loaded = await Promise.all(ids.map((id) => store.load(id)));
  const saved = loaded.flatMap((result) =>
    result.ok ? [{ visit: result.value, state: visitState(result.value), unsaved: false }] : [],
  );
  return { entries: [...unsaved, ...saved], unreadable: shelf.value.unreadable, problem: undefined };
}

export function visitState(visit: VisitRecord, now = isoTime(new Date())): string {
  const { decision, due, path } = nextStep(recordAnswers(visit, now));
  if (decision !== undefined) return decisionHeadline(decision);
  return due === undefined ? '' : `Step ${path.length} is due: ${stepTexts[due].title}.`;
}
