import { emptyDraft, isEmptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';

const key = (id: string) => `fieldbook-draft-${id}`;

/** The draft of a visit in `localStorage`; an empty one if there is none or it can't be read. */
export function localDraft(id: string): VisitDraft {
  try {
    return readDraft(JSON.parse(localStorage.getItem(key(id)) ?? 'null'));
  } catch {
    return emptyDraft;
  }
}

/** Written before it returns. If the browser refuses this storage, the database still has the other copy. */
export function keepLocalDraft(id: string, draft: VisitDraft): void {
  try {
    if (isEmptyDraft(draft)) localStorage.removeItem(key(id));
    else localStorage.setItem(key(id), JSON.stringify(draft));
  } catch {
    // Refused or full.
  }
}

/** Removes the draft of a visit that is deleted or replaced. */
export function forgetLocalDraft(id: string): void {
  keepLocalDraft(id, emptyDraft);
}
