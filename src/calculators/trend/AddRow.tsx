import { useLayoutEffect, useState } from 'preact/hooks';
import { storedTexts, storeTexts } from '../../ui/form/kept-entries.ts';
import type { FormState } from '../../ui/form/use-form.ts';
import { addedRow } from './added-row.ts';

interface Props {
  form: Pick<FormState, 'typed' | 'read' | 'choose'>;
}

const parts = [
  { id: 'addDate', label: 'Date', type: 'date' },
  { id: 'addReading', label: 'Reading', type: 'text' },
  { id: 'addTemperature', label: 'Winding temperature', type: 'text' },
] as const;

const name = 'trend-row';
const none = { addDate: '', addReading: '', addTemperature: '' };

/** One row at a time, for those who have no table. If a row can't be used, the form says so before it is added. */
export function AddRow({ form }: Props) {
  const [typed, setTyped] = useState<Record<string, string>>(none);
  // After the first drawing, which is the server's.
  useLayoutEffect(() => setTyped({ ...none, ...storedTexts(name, 'sessionStorage') }), []);
  const keep = (next: Record<string, string>) => {
    setTyped(next);
    storeTexts(name, next, 'sessionStorage');
  };
  const [wrong, setWrong] = useState<string>();
  const add = () => {
    const cells = parts.map(({ id }) => typed[id]?.trim() ?? '');
    const added = addedRow(form.typed.rows ?? '', cells, form.read, Date.now());
    setWrong('wrong' in added ? added.wrong : undefined);
    if ('wrong' in added) return;
    form.choose('rows', added.rows);
    keep(none);
  };
  return (
    <fieldset class="reading-row">
      <legend>Add a row</legend>
      <p class="hint" id="trend-add-hint">
        Such as 450 MΩ, or &gt;700 MΩ for over-range, and 25 °C.
      </p>
      {parts.map(({ id, label, type }) => (
        <div class="field" key={id}>
          <label for={`trend-${id}`}>{label}</label>
          <input
            id={`trend-${id}`}
            type={type}
            spellcheck={false}
            aria-describedby={wrong ? 'trend-add-hint trend-add-error' : 'trend-add-hint'}
            value={typed[id]}
            onInput={(event) => keep({ ...typed, [id]: event.currentTarget.value })}
          />
        </div>
      ))}
      <p class="error" id="trend-add-error" role="alert">
        {wrong}
      </p>
      <p>
        <button type="button" class="primary" onClick={add}>
          Add this row
        </button>
      </p>
    </fieldset>
  );
}
