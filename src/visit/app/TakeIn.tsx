import { useEffect, useState } from 'preact/hooks';
import { takenOver } from '../record/stretch.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { SaveResult, VisitStore } from '../storage/visit-store.ts';
import { visitProgress } from './progress.ts';
import { visitTitle } from './visit-title.ts';

interface Props {
  visit: VisitRecord;
  store: VisitStore;
  onTaken: (stored: VisitRecord) => void;
}

/** Stores a visit from a file or a link; asks where it is here already. What it says was proved, was proved elsewhere. */
export function TakeIn({ visit, store, onTaken }: Props) {
  const [result, setResult] = useState<SaveResult>();
  const take = async (whenHere?: 'replace' | 'keep-both') => {
    const added = await store.add(takenOver(visit), whenHere);
    setResult(added);
    if (added.ok) onTaken(added.value);
  };
  useEffect(() => {
    void take();
  }, []);
  if (result === undefined || result.ok) return null;
  return (
    <div class="save-trouble" role="alert">
      <p>
        <b>{visitTitle(visit)}</b>: {result.problem.message}
      </p>
      {result.problem.kind === 'already-here' && result.stored && (
        <ul>
          <li>
            <b>The one that is here:</b> {visitProgress(result.stored)}.
          </li>
          <li>
            <b>The new one:</b> {visitProgress(visit)}.
          </li>
        </ul>
      )}
      {result.problem.kind === 'already-here' && (
        <p class="banner-actions">
          <button type="button" class="primary" onClick={() => void take('keep-both')}>
            Keep both
          </button>
          <button type="button" class="plain" onClick={() => void take('replace')}>
            Replace the one that is here
          </button>
        </p>
      )}
    </div>
  );
}
