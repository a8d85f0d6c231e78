import type { Problem } from '../../../kernel/link/problem.ts';
import { type ExportedFile, exportVisit } from '../../record/export-visit.ts';
import { mergedPhotographs } from '../../record/photograph.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import type { VisitStore } from '../../storage/visit-store.ts';
import { heldPhotographs } from './held-photographs.ts';

/** The file of a visit that is not open, with its photographs; `problem`: why those that are stored are not in it. */
export async function wholeFile(
  store: VisitStore,
  visit: VisitRecord,
): Promise<{ file: ExportedFile; problem?: Problem }> {
  const stored = await store.photographs.of(visit.id);
  const held = heldPhotographs(visit.id);
  if (!stored.ok) return { file: exportVisit(visit, held), problem: stored.problem };
  return { file: exportVisit(visit, mergedPhotographs(stored.value, held)) };
}
