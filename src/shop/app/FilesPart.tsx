import { useState } from 'preact/hooks';
import { limitValue } from '../../kernel/limits.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { csvOf } from '../../kernel/words/csv.ts';
import { download } from '../../visit/app/download.ts';
import { evaluate } from '../../visit/evaluate.ts';
import { readingColumns, readingRows } from '../file/readings-table.ts';
import type { Folder } from '../merge/sync.ts';
import { inListOrder } from '../storage/this-device.ts';
import { shopTexts } from '../words.ts';
import { ExchangeResult } from './ExchangeResult.tsx';
import { exportShop, visitsHere } from './run-exchange.ts';
import { troubleOf, useExchange } from './use-exchange.ts';

/** Files that a person chose: they are read, and nothing is written. */
function chosenFiles(files: readonly File[]): Folder {
  const textOf = async (file: File) => {
    if (file.size > limitValue('shop-file')) return undefined;
    return file.text().catch(() => undefined);
  };
  return {
    files: () => Promise.all(files.map(async (file) => ({ name: file.name, text: await textOf(file) }))),
    write: () => Promise.resolve(),
  };
}

/** Everything as one file, out and in, and the readings as a table. */
export function FilesPart() {
  const { state, run } = useExchange('files');
  const [trouble, setTrouble] = useState('');
  const attempt = async (work: () => Promise<void>) => {
    setTrouble('');
    await work().catch((error: unknown) => setTrouble(troubleOf(error)));
  };
  const exportAll = () =>
    attempt(async () => {
      const text = await exportShop();
      download({ name: `fieldbook-shop-${isoTime(new Date()).slice(0, 10)}.json`, text });
    });
  const exportReadings = () =>
    attempt(async () => {
      const now = isoTime(new Date());
      const rows = inListOrder((await visitsHere()).values()).flatMap((visit) => readingRows(evaluate(visit, now)));
      download({ name: `fieldbook-readings-${now.slice(0, 10)}.csv`, text: csvOf([readingColumns, ...rows]) });
    });
  const read = (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    if (files.length === 0) return;
    void run(() => Promise.resolve(chosenFiles(files))).finally(() => {
      // Allows choosing the same file again.
      input.value = '';
    });
  };
  return (
    <>
      <p>{shopTexts.filesHint}</p>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={() => void exportAll()}>
          Export everything
        </button>
      </p>
      <div class="field words">
        <label for="shop-file">Read files of other tablets</label>
        <p class="hint" id="shop-file-hint">
          {shopTexts.importHint}
        </p>
        <input
          id="shop-file"
          type="file"
          accept=".json,application/json"
          multiple
          aria-describedby="shop-file-hint"
          onChange={(event) => read(event.currentTarget)}
        />
      </div>
      <ExchangeResult state={state} />
      <h2 id="readings">All readings as a table</h2>
      <p>{shopTexts.csvHint}</p>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={() => void exportReadings()}>
          Export the readings (CSV)
        </button>
      </p>
      <p role="alert">{trouble}</p>
    </>
  );
}
