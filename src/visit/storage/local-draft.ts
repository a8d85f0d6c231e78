import { emptyDraft, isEmptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';
import { draftKey, localDraftText } from './local-draft-text.ts';

/** The draft of a visit in `localStorage`; an empty one if there is none or it can't be read. */
export function localDraft(id: string): VisitDraft {
  return readDraft(localDraftText(id));
}

/** Written before it returns. If the browser refuses this storage, the database still has the other copy. */
export function keepLocalDraft(id: string, draft: VisitDraft): void {
  try {
    if (isEmptyDraft(draft)) localStorage.removeItem(draftKey(id));
    else localStorage.setItem(draftKey(id), JSON.stringify(draft));
  } catch {
    // Refused or full.
  }
}

/** Removes the draft of a visit that is deleted or replaced. */
export function forgetLocalDraft(id: string): void {
  keepLocalDraft(id, emptyDraft);
}
