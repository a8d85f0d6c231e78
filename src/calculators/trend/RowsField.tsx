import { useState } from 'preact/hooks';
import type { FormState } from '../../ui/form/use-form.ts';
import { inventedRecord } from './example.ts';
import { rows } from './fields.ts';
import { readTableFile } from './read-file.ts';
import type { TrendAssessment } from './rule/input.ts';

interface Props {
  form: FormState<TrendAssessment>;
}

/** The table of readings as text: pasted, typed or from a file. */
export function RowsField({ form }: Props) {
  const [refused, setRefused] = useState('');
  const replace = (text: string, said: string) => form.fill({ ...form.typed, rows: text }, said);
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    const read = await readTableFile(file);
    setRefused('refused' in read ? read.refused : '');
    if ('text' in read) replace(read.text, `Opened: ${file.name}.`);
  };
  return (
    <>
      <div class="field">
        <label for="trend-rows">{rows.name}</label>
        <p class="hint" id="trend-rows-hint">
          {rows.hint}
        </p>
        <textarea
          id="trend-rows"
          name="rows"
          rows={8}
          wrap="off"
          spellcheck={false}
          aria-describedby="trend-rows-hint trend-rows-echo"
          value={form.typed.rows}
          onInput={(event) => form.type('rows', event.currentTarget.value)}
          onBlur={form.leave}
        />
        <p class="echo" id="trend-rows-echo">
          {understood(form)}
        </p>
      </div>
      <div class="field">
        <label for="trend-file">Open a file (CSV or text)</label>
        <input
          id="trend-file"
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
          aria-describedby="trend-file-error"
          onChange={(event) => {
            const input = event.currentTarget;
            // Cleared, so that the same file can be opened again after a correction.
            void open(input.files?.[0]).then(() => {
              input.value = '';
            });
          }}
        />
        <p class="error" id="trend-file-error" role="alert">
          {refused}
        </p>
      </div>
      <p>
        <button
          type="button"
          class="plain"
          onClick={() => replace(inventedRecord(new Date()), 'Filled in: Marrow Bay, Lift axis (invented).')}
        >
          Fill in an example (Marrow Bay, Lift axis, invented)
        </button>
      </p>
    </>
  );
}

function understood({ outcome }: FormState<TrendAssessment>): string {
  if (outcome.state !== 'judged') return '';
  const { rows: used, keptOut } = outcome.assessment;
  return `= ${used.length} ${used.length === 1 ? 'row' : 'rows'} read, ${keptOut.length} kept out`;
}
