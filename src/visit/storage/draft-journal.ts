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

/** At most so long what was typed is held in memory alone, once the browser is not simply left but killed. */
const writeEveryMilliseconds = 200;

export interface DraftJournal {
  /** What was typed into this visit in an earlier window, or in this one before it was left. */
  load(): Promise<VisitDraft>;
  /** Keeps a key that was typed. */
  enter(entry: DraftEntry, now: string): void;
  /** The visit was saved: what it holds leaves the draft. */
  saved(visit: VisitRecord): void;
  /** What is typed and not in this state of the visit; undefined if there is nothing. */
  beside(visit: VisitRecord): VisitDraft | undefined;
  /** What is typed and not saved at this moment. */
  current(): VisitDraft;
  /** Another window has saved this visit meanwhile: what was typed here must not turn up in theirs. */
  forget(): void;
}

/**
 * Keeps each key that is typed into a visit until it is part of the saved visit. Two copies, since each covers what the
 * other can't: `localStorage` is written before the key's event ends, so that leaving the page loses nothing, but it
 * reaches the disk seconds later; the store writes to the disk at once, but what is under way is dropped with the page.
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
