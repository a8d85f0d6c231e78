import { emptyDraft, isEmptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';

const key = (id: string) => `fieldbook-draft-${id}`;

/** What was typed into a visit, as `localStorage` has it. */
export function localDraft(id: string): VisitDraft {
  try {
    return readDraft(JSON.parse(localStorage.getItem(key(id)) ?? 'null'));
  } catch {
    return emptyDraft;
  }
}

/** Written before it returns. A browser that refuses this storage still has the other copy. */
export function keepLocalDraft(id: string, draft: VisitDraft): void {
  try {
    if (isEmptyDraft(draft)) localStorage.removeItem(key(id));
    else localStorage.setItem(key(id), JSON.stringify(draft));
  } catch {
    // Refused or full: see above.
  }
}

/** Forgets what was typed into a visit that is deleted or replaced. */
export function forgetLocalDraft(id: string): void {
  keepLocalDraft(id, emptyDraft);
}
