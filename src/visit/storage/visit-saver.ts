import type { VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { SaveResult, VisitStore } from './visit-store.ts';

export interface VisitSaver {
  /** Saves this state of the visit, or a newer one that is given before this one is saved. */
  save(visit: VisitRecord): void;
  /** Resolves when everything given is saved or has failed. */
  idle(): Promise<void>;
}

/**
 * Saves one visit as it changes, one save after the other, so that a tab never conflicts with itself. It keeps track of
 * the revision and ignores that of the given visit. `onSaved` gets each result; after a problem the next `save` tries
 * again.
 *
 * @param draftBeside what is being typed and is not in the visit; stored with it, so that it replaces an older draft.
 * @param revision of the visit as it was loaded or last saved; 0 for a new one.
 */
export function visitSaver(
  store: Pick<VisitStore, 'save'>,
  revision: number,
  onSaved: (result: SaveResult) => void,
  draftBeside: (visit: VisitRecord) => VisitDraft | undefined = () => undefined,
): VisitSaver {
  let current = revision;
  let waiting: VisitRecord | undefined;
  let running: Promise<void> | undefined;

  const run = async () => {
    while (waiting !== undefined) {
      const visit: VisitRecord = { ...waiting, revision: current };
      waiting = undefined;
      const result = await store.save(visit, draftBeside(visit));
      if (result.ok) current = result.value.revision;
      onSaved(result);
    }
    running = undefined;
  };

  return {
    save(visit) {
      waiting = visit;
      running ??= run();
    },
    idle: () => running ?? Promise.resolve(),
  };
}
