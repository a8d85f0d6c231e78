import { useEffect, useRef, useState } from 'preact/hooks';
import { isoTime } from '../../record/iso-time.ts';
import type { Problem } from '../../record/problem.ts';
import { type VisitSaver, visitSaver } from '../../record/visit-saver.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import type { SaveResult, VisitStore } from '../../record/visit-store.ts';
import { track } from './pending-saves.ts';
import { heldVisit, hold, letGo } from './window-visits.ts';

export type Trouble = Extract<SaveResult, { ok: false }>;

export interface Session {
  visit: VisitRecord | undefined;
  /** Why the visit can't be opened. */
  missing: Problem | undefined;
  /** When it was last saved, for people: `14:32`. */
  savedAt: string | undefined;
  /** The last save failed; what was typed is in this window. */
  trouble: Trouble | undefined;
  /** Another tab has saved or removed this visit since. */
  changedElsewhere: 'saved' | 'removed' | undefined;
  /** Changes the visit and saves it. */
  change: (next: (visit: VisitRecord, now: string) => VisitRecord) => void;
  retry: () => void;
  /** Takes what the storage has; only offered while this window holds nothing that is not saved. */
  reload: () => void;
}

const now = () => isoTime(new Date());
const clock = () => now().slice(11, 16);

/** One visit as this window works on it: loaded, changed, saved at once; held in the window while saving fails. */
export function useSession(store: VisitStore, id: string): Session {
  const [visit, setVisit] = useState<VisitRecord>();
  const [missing, setMissing] = useState<Problem>();
  const [savedAt, setSavedAt] = useState<string>();
  const [trouble, setTrouble] = useState<Trouble>();
  const [changedElsewhere, setChangedElsewhere] = useState<'saved' | 'removed'>();
  const latest = useRef<VisitRecord>();
  const saver = useRef<VisitSaver>();

  const told = (result: SaveResult) => {
    if (result.ok) {
      letGo(id);
      setTrouble(undefined);
      setSavedAt(clock());
      // Only the revision is news; the person may have typed on meanwhile.
      const current = latest.current;
      if (current !== undefined) latest.current = { ...current, revision: result.value.revision };
    } else {
      if (latest.current !== undefined) hold(latest.current);
      setTrouble(result);
    }
  };

  const begin = (loaded: VisitRecord) => {
    latest.current = loaded;
    saver.current = visitSaver(store, loaded.revision, told);
    setVisit(loaded);
    setTrouble(undefined);
    setChangedElsewhere(undefined);
  };

  const load = async () => {
    const inWindow = heldVisit(id);
    if (inWindow !== undefined) {
      begin(inWindow);
      saver.current?.save(inWindow);
      return;
    }
    const result = await store.load(id);
    if (result.ok) begin(result.value);
    else setMissing(result.problem);
  };

  useEffect(() => {
    void load();
    return store.listen((change) => {
      if (change.id === id) setChangedElsewhere(change.change);
    });
  }, [id]);

  return {
    visit,
    missing,
    savedAt,
    trouble,
    changedElsewhere,
    change(next) {
      const before = latest.current;
      if (before === undefined) return;
      const changed = next(before, now());
      if (changed === before) return;
      latest.current = changed;
      setVisit(changed);
      saver.current?.save(changed);
      if (saver.current !== undefined) track(saver.current.idle());
    },
    retry() {
      if (latest.current !== undefined) saver.current?.save(latest.current);
    },
    reload() {
      letGo(id);
      void load();
    },
  };
}
