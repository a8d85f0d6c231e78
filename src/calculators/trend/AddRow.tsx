import { useLayoutEffect, useState } from 'preact/hooks';
import { keepTyped, keptTyped } from '../../ui/form/keep.ts';
import type { FormState } from '../../ui/form/use-form.ts';

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

/** One row at a time, for those who have no table. A row that can't be used is refused before it is added. */
export function AddRow({ form }: Props) {
  const [typed, setTyped] = useState<Record<string, string>>(none);
  // After the first render, which must equal the server's.
  useLayoutEffect(() => setTyped({ ...none, ...keptTyped(name, 'sessionStorage') }), []);
  const keep = (next: Record<string, string>) => {
    setTyped(next);
    keepTyped(name, next, 'sessionStorage');
  };
  const [wrong, setWrong] = useState<string>();
  const put = async () => {
    const cells = parts.map(({ id }) => typed[id]?.trim() ?? '');
    const { addedRow } = await import('./added-row.ts');
    const added = addedRow(form.typed.rows ?? '', cells, form.read, Date.now());
    setWrong('wrong' in added ? added.wrong : undefined);
    if ('wrong' in added) return;
    form.choose('rows', added.rows);
    keep(none);
  };
  const add = () => {
    put().catch(() =>
      setWrong('The reader of rows could not be loaded. The row stays here: load the page again later.'),
    );
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
