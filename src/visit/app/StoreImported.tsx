import { useEffect, useState } from 'preact/hooks';
import type { Photograph } from '../record/photograph.ts';
import { asNewStretch } from '../record/stretch.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { SaveResult, VisitStore } from '../storage/visit-store.ts';
import { visitProgress, visitTitle } from './visit-summary.ts';

interface Props {
  visit: VisitRecord;
  /** A file may have some; a link has none. */
  photographs?: readonly Photograph[];
  store: VisitStore;
  onStored: (stored: VisitRecord) => void;
}

/** Stores a visit from a file or a link; asks if it is already on this device. Its proofs of safety no longer hold here. */
export function StoreImported({ visit, photographs = [], store, onStored }: Props) {
  const [result, setResult] = useState<SaveResult>();
  const take = async (onDuplicate?: 'replace' | 'keep-both') => {
    const added = await store.add(asNewStretch(visit), onDuplicate, photographs);
    setResult(added);
    if (added.ok) onStored(added.value);
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
