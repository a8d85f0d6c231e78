import { useState } from 'preact/hooks';
import { type FileResult, readVisitFile } from '../record/read-visit.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { visitHash } from './route.ts';
import { StoreImported } from './StoreImported.tsx';

/** Imports a visit from a file that was exported here or on another device. */
export function ImportVisit({ store }: { store: VisitStore }) {
  const [read, setRead] = useState<{ name: string; count: number; result: FileResult }>();
  const choose = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    const result = await readVisitFile(file);
    setRead((before) => ({ name: file.name, count: (before?.count ?? 0) + 1, result }));
    // Allows choosing the same file again after it was corrected.
    input.value = '';
  };
  return (
    <section aria-labelledby="import">
      <h2 id="import">From a file</h2>
      <div class="field words">
        <label for="import-file">Import a visit</label>
        <p class="hint" id="import-hint">
          A file that was exported here or on another device.
        </p>
        <input
          id="import-file"
          type="file"
          accept=".json,application/json,.txt,text/plain"
          aria-describedby="import-hint"
          onChange={(event) => void choose(event.currentTarget)}
        />
      </div>
      <div role="alert" class="import-problem">
        {read && !read.result.ok && (
          <p>
            <b>{read.name}</b>: {read.result.problem.message} Nothing was changed.
          </p>
        )}
      </div>
      {read?.result.ok && (
        <StoreImported
          key={read.count}
          visit={read.result.value.visit}
          photographs={read.result.value.photographs}
          store={store}
          onStored={(stored) => {
            location.hash = visitHash(stored.id);
          }}
        />
      )}
    </section>
  );
}
