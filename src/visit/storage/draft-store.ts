import { emptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';
import type { Database } from './database.ts';

/** What was typed into a visit and is not part of it yet. No function throws or rejects. */
export interface DraftStore {
  /** An empty draft if there is none or the storage refuses. */
  loadDraft(id: string): Promise<VisitDraft>;
  /** Stores or removes the draft of a stored visit. Never fails: the window still has what was typed. */
  noteDraft(id: string, draft: VisitDraft | undefined): Promise<void>;
}

/** The drafts beside the visits of this browser. */
export function draftStore(db: Database): DraftStore {
  return {
    async loadDraft(id) {
      try {
        return readDraft(await db.run('readonly', async (visits) => (await visits.get(id))?.draft));
      } catch {
        return emptyDraft;
      }
    },
    async noteDraft(id, draft) {
      try {
        await db.run('readwrite', async (visits) => {
          const row = await visits.get(id);
          if (row === undefined) return;
          const { draft: _before, ...rest } = row;
          await visits.put({ ...rest, ...(draft && { draft }) });
        });
      } catch {
        // `localStorage` has the other copy, and a failed save is reported.
      }
    },
  };
}
