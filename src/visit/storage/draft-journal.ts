import {
  type DraftEntry,
  emptyDraft,
  isEmptyDraft,
  newerDraft,
  unsavedPart,
  type VisitDraft,
  withEntry,
} from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { keepLocalDraft, localDraft } from './local-draft.ts';
import type { VisitStore } from './visit-store.ts';

/** If the browser is killed, at most the keystrokes of this time are lost. */
const writeEveryMilliseconds = 200;

export interface DraftJournal {
  /** What was typed into this visit in an earlier window, or in this one before it was left, and not saved. */
  load(): Promise<VisitDraft>;
  /** Stores one more keystroke. `now`: ISO time with offset. */
  enter(entry: DraftEntry, now: string): void;
  /** Removes from the draft what the saved visit now contains. */
  saved(visit: VisitRecord): void;
  /** What is typed and not in this state of the visit; undefined if that is nothing. */
  beside(visit: VisitRecord): VisitDraft | undefined;
  /** What is typed and not saved now. */
  current(): VisitDraft;
  /** Clears the draft after another window has saved the visit: it must not appear there. */
  forget(): void;
}

/**
 * Stores each keystroke in a visit until it is part of the saved visit. There are two copies, since each covers what the
 * other can't: `localStorage` is written before the key's event ends, so that leaving the page loses nothing, but it
 * reaches the disk seconds later; the store writes to the disk at once, but leaving the page aborts a write in progress.
 */
export function draftJournal(store: Pick<VisitStore, 'loadDraft' | 'noteDraft'>, id: string): DraftJournal {
  let draft: VisitDraft = emptyDraft;
  let running = false;
  let changed = false;

  const write = async () => {
    changed = true;
    if (running) return;
    running = true;
    while (changed) {
      changed = false;
      await store.noteDraft(id, isEmptyDraft(draft) ? undefined : draft);
      await new Promise((go) => setTimeout(go, writeEveryMilliseconds));
    }
    running = false;
  };

  const keep = (next: VisitDraft) => {
    const nothingToDo = isEmptyDraft(draft) && isEmptyDraft(next);
    draft = next;
    if (nothingToDo) return;
    keepLocalDraft(id, draft);
    void write();
  };

  return {
    async load() {
      draft = newerDraft(localDraft(id), await store.loadDraft(id));
      return draft;
    },
    enter(entry, now) {
      keep(withEntry(draft, entry, now));
    },
    saved(visit) {
      keep(unsavedPart(draft, visit));
    },
    beside(visit) {
      const open = unsavedPart(draft, visit);
      return isEmptyDraft(open) ? undefined : open;
    },
    current: () => draft,
    forget() {
      keep({ ...emptyDraft, count: draft.count });
    },
  };
}
