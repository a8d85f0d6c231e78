import { createContext } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { limitValue } from '../../../kernel/limits.ts';
import type { Problem } from '../../../kernel/link/problem.ts';
import { isoTime } from '../../../kernel/time/iso-time.ts';
import { inOrder, mergedPhotographs, type Photograph } from '../../record/photograph.ts';
import { overBudget, photographRefused } from '../../record/photograph-problem.ts';
import type { StepId } from '../../steps/ids.ts';
import { keepLocalCaption, localCaptions } from '../../storage/local-captions.ts';
import { newPhotographId } from '../../storage/new-id.ts';
import type { VisitStore } from '../../storage/visit-store.ts';
import { guarded, heldPhotographs, holdPhotograph, releasePhotograph } from './held-photographs.ts';
import { scaledPhotograph } from './scale-photograph.ts';

export interface VisitPhotographs {
  /** All of the visit: those that are stored, and those that only this window has. */
  photographs: readonly Photograph[];
  /** Ids of those that could not be stored. */
  unsaved: readonly string[];
  /** The step whose pictures are being scaled down. */
  working: StepId | undefined;
  /** What went wrong last, and at which step; `undefined` as a step: the photographs can't be read. */
  trouble: { step: StepId | undefined; problem: Problem } | undefined;
  attach: (step: StepId, files: readonly File[]) => void;
  /** Each key of a caption; `settled` once the person has paused. */
  typeCaption: (photograph: Photograph, caption: string) => void;
  settleCaption: (photograph: Photograph, caption: string) => void;
  remove: (photograph: Photograph) => void;
  /** Tries to store what only this window has. */
  retry: () => void;
}

/** The photographs of the open visit; undefined outside of one. */
export const PhotographsContext = createContext<VisitPhotographs | undefined>(undefined);

const now = () => isoTime(new Date());

/** The photographs of one visit in this window: loaded, attached, captioned; kept in the window while storing fails. */
export function usePhotographs({ photographs: store, listen }: VisitStore, visit: string): VisitPhotographs {
  const [photographs, setPhotographs] = useState<readonly Photograph[]>([]);
  const [working, setWorking] = useState<StepId>();
  const [trouble, setTrouble] = useState<VisitPhotographs['trouble']>();
  const latest = useRef(photographs);
  const queue = useRef<Promise<void>>(Promise.resolve());
  /** Grows with each change by this window, so that no older state is shown over it. */
  const changes = useRef(0);
  /** Ids of those whose caption is typed and not stored. */
  const unsettled = useRef(new Set<string>());

  const show = (next: readonly Photograph[]) => {
    latest.current = next;
    setPhotographs(next);
  };
  const showOne = (one: Photograph) => show(inOrder([...latest.current.filter(({ id }) => id !== one.id), one]));

  const load = async (): Promise<void> => {
    const before = changes.current;
    const stored = await store.of(visit);
    if (before !== changes.current) return load();
    if (!stored.ok) setTrouble({ step: undefined, problem: stored.problem });
    const all = mergedPhotographs(stored.ok ? stored.value : latest.current, heldPhotographs(visit));
    const typed = localCaptions(visit);
    const replayed = all.map((one) => {
      const { caption, changedAt } = typed[one.id] ?? one;
      const isNewer = caption !== one.caption && Date.parse(changedAt) >= Date.parse(one.changedAt);
      return isNewer ? { ...one, caption, changedAt } : one;
    });
    show(replayed);
    for (const one of replayed) if (!all.includes(one)) await put(one);
  };

  /** Stores a photograph or its new caption; if that fails it stays in this window. */
  const put = async (one: Photograph) => {
    const wasHeld = heldPhotographs(visit).some(({ id }) => id === one.id);
    changes.current += 1;
    const result = await store.put(visit, one);
    if (result.ok) {
      releasePhotograph(visit, one.id);
      // The person may have gone on typing.
      if (localCaptions(visit)[one.id]?.caption === one.caption) keepLocalCaption(visit, one.id, undefined);
      if (wasHeld) setTrouble(undefined);
    } else {
      holdPhotograph(visit, one);
      setTrouble({ step: one.step, problem: result.problem });
    }
    if (!unsettled.current.has(one.id)) showOne(one);
  };

  const attachOne = async (step: StepId, file: File) => {
    const refuse = (problem: Problem) => setTrouble({ step, problem });
    if (latest.current.length >= limitValue('photographs-number')) return refuse(photographRefused('too-many').problem);
    const scaled = await scaledPhotograph(file);
    if (!scaled.ok) return refuse(scaled.problem);
    const at = now();
    const one: Photograph = { id: newPhotographId(), step, at, changedAt: at, caption: '', jpeg: scaled.value };
    const problem = overBudget([...latest.current, one]);
    return problem === undefined ? put(one) : refuse(problem);
  };

  useEffect(() => {
    void load();
    const loadAgain = ({ persisted }: PageTransitionEvent) => {
      if (persisted) void load();
    };
    addEventListener('pageshow', loadAgain);
    // What another tab has deleted with the visit stays here: this window may put both back.
    const stopListening = listen(({ id, change }) => {
      if (id === visit && change !== 'removed') void load();
    });
    return () => {
      removeEventListener('pageshow', loadAgain);
      stopListening();
    };
  }, [visit]);

  return {
    photographs,
    unsaved: heldPhotographs(visit).map(({ id }) => id),
    working,
    trouble,
    attach(step, files) {
      setTrouble(undefined);
      setWorking(step);
      // One after the other: a tablet has memory for one large picture.
      queue.current = queue.current.then(async () => {
        for (const file of files) await guarded(() => attachOne(step, file));
        setWorking(undefined);
      });
    },
    typeCaption({ id }, caption) {
      const changedAt = now();
      unsettled.current.add(id);
      changes.current += 1;
      keepLocalCaption(visit, id, { caption, changedAt });
      const before = latest.current.find((one) => one.id === id);
      if (before !== undefined) showOne({ ...before, caption, changedAt });
    },
    settleCaption({ id }, caption) {
      const before = latest.current.find((one) => one.id === id);
      if (unsettled.current.delete(id) && before !== undefined) void put({ ...before, caption, changedAt: now() });
    },
    async remove(photograph) {
      const { id, step } = photograph;
      changes.current += 1;
      const result = await store.remove(visit, photograph);
      if (!result.ok && !heldPhotographs(visit).some((one) => one.id === id)) {
        return setTrouble({ step, problem: result.problem });
      }
      releasePhotograph(visit, id);
      keepLocalCaption(visit, id, undefined);
      show(latest.current.filter((one) => one.id !== id));
    },
    async retry() {
      for (const one of heldPhotographs(visit)) await put(one);
    },
  };
}
