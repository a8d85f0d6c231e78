import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Problem } from '../../kernel/link/problem.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { settleEntries } from '../../ui/form/use-settling.ts';
import { type EvaluatedVisit, evaluate } from '../evaluate.ts';
import { stretchAt } from '../record/stretch.ts';
import { type DraftEntry, isEmptyDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { draftJournal } from '../storage/draft-journal.ts';
import { type VisitSaver, visitSaver } from '../storage/visit-saver.ts';
import type { SaveResult, VisitStore } from '../storage/visit-store.ts';
import { replayDraft } from './replay-draft.ts';
import { holdUnsaved, releaseUnsaved, trackSave, unsavedVisit } from './unsaved-visits.ts';
import { useClock } from './use-clock.ts';

export type Trouble = Extract<SaveResult, { ok: false }>;

export interface VisitSession {
  /** The visit as it is now, evaluated once for each change and when its stretch of work ends. */
  evaluated: EvaluatedVisit | undefined;
  /** Why the visit can't be opened. */
  missing: Problem | undefined;
  /** Time of the last save, such as `14:32`. */
  savedAt: string | undefined;
  /** Something typed is not part of the saved visit yet. */
  typing: boolean;
  /** The last save failed; what was typed is only in this window. */
  trouble: Trouble | undefined;
  /** Another tab has saved or removed this visit since. */
  changedElsewhere: 'saved' | 'removed' | undefined;
  /** Stores each keystroke before the entry settles and changes the visit. */
  draft: (entry: DraftEntry) => void;
  /** Number of loads; its forms restart when it grows. */
  loaded: number;
  /** The visit with all that is typed by now, for what takes it out of this window. */
  current: () => VisitRecord | undefined;
  /** Changes the visit and saves it. */
  change: (next: (before: EvaluatedVisit, now: string) => EvaluatedVisit) => void;
  retry: () => void;
  /** Loads the stored visit; offered only while this window has nothing unsaved. */
  reload: () => void;
}

const now = () => isoTime(new Date());
const clock = () => now().slice(11, 16);

/** One visit in this window: loaded, changed, saved at once; kept in the window while saving fails. */
export function useSession(store: VisitStore, id: string): VisitSession {
  const [evaluated, setEvaluated] = useState<EvaluatedVisit>();
  const [missing, setMissing] = useState<Problem>();
  const [savedAt, setSavedAt] = useState<string>();
  const [trouble, setTrouble] = useState<Trouble>();
  const [changedElsewhere, setChangedElsewhere] = useState<'saved' | 'removed'>();
  const latest = useRef<EvaluatedVisit>();
  const saver = useRef<VisitSaver>();
  const [loaded, setLoaded] = useState(0);
  const [typing, setTyping] = useState(false);
  const journal = useMemo(() => draftJournal(store, id), [store, id]);

  const onSaved = (result: SaveResult) => {
    if (result.ok) {
      releaseUnsaved(id);
      journal.saved(result.value);
      setTyping(!isEmptyDraft(journal.current()));
      setTrouble(undefined);
      setSavedAt(clock());
      // Take only the revision; the person may have gone on typing.
      const current = latest.current;
      if (current !== undefined) {
        latest.current = { ...current, visit: { ...current.visit, revision: result.value.revision } };
      }
    } else {
      if (latest.current !== undefined) holdUnsaved(latest.current.visit);
      if (result.problem.kind === 'conflict') journal.forget();
      setTrouble(result);
    }
  };

  const show = (next: EvaluatedVisit) => {
    latest.current = next;
    setEvaluated(next);
  };

  const begin = (visit: VisitRecord, previous?: EvaluatedVisit) => {
    saver.current = visitSaver(store, visit.revision, onSaved, journal.beside);
    show(evaluate(visit, now(), previous));
    setLoaded((count) => count + 1);
    setTrouble(undefined);
    setChangedElsewhere(undefined);
  };

  const load = async () => {
    const inWindow = unsavedVisit(id);
    if (inWindow !== undefined) {
      begin(inWindow);
      saver.current?.save(inWindow);
      return;
    }
    const result = await store.load(id);
    if (!result.ok) return setMissing(result.problem);
    const draft = await journal.load();
    const stored = evaluate(result.value, now());
    const typed = replayDraft(stored, draft);
    begin(typed, stored);
    if (typed !== result.value) saver.current?.save(typed);
  };

  // For browsers without a channel between tabs: look when the person returns to this tab.
  const lookInStorage = async () => {
    if (document.visibilityState !== 'visible') return;
    const stored = await store.load(id);
    await saver.current?.idle();
    const mine = latest.current?.visit;
    if (stored.ok && mine !== undefined && stored.value.revision > mine.revision) setChangedElsewhere('saved');
  };

  useEffect(() => {
    void load();
    // While this page was in the browser's cache, another page may have changed the visit.
    const loadAgain = ({ persisted }: PageTransitionEvent) => {
      if (persisted) void load();
    };
    addEventListener('pageshow', loadAgain);
    addEventListener('focus', lookInStorage);
    document.addEventListener('visibilitychange', lookInStorage);
    const stopListening = store.listen((change) => {
      if (change.id === id && change.change !== 'photographs') setChangedElsewhere(change.change);
    });
    return () => {
      removeEventListener('pageshow', loadAgain);
      removeEventListener('focus', lookInStorage);
      document.removeEventListener('visibilitychange', lookInStorage);
      stopListening();
    };
  }, [id]);

  useClock(() => {
    const current = latest.current;
    if (current !== undefined && stretchAt(current.visit, now()) !== current.stretch) {
      show(evaluate(current.visit, now(), current));
    }
  });

  return {
    evaluated,
    missing,
    savedAt,
    trouble,
    changedElsewhere,
    loaded,
    typing,
    draft(entry) {
      journal.enter(entry, now());
      setTyping(true);
    },
    current() {
      settleEntries();
      return latest.current?.visit;
    },
    change(next) {
      const before = latest.current;
      if (before === undefined) return;
      const changed = next(before, now());
      if (changed === before) {
        journal.saved(before.visit);
        return setTyping(!isEmptyDraft(journal.current()));
      }
      show(changed);
      saver.current?.save(changed.visit);
      if (saver.current !== undefined) trackSave(saver.current.idle());
    },
    retry() {
      if (latest.current !== undefined) saver.current?.save(latest.current.visit);
    },
    reload() {
      releaseUnsaved(id);
      void load();
    },
  };
}
