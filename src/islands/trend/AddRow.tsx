import { useState } from 'preact/hooks';
import { readTrendTable, type TableReading } from '../../calc/index.ts';
import { keptOutReason } from '../../texts/trend-rows.ts';

interface Props {
  how: TableReading;
  onAdd: (cells: string[]) => void;
}

const parts = [
  { id: 'addDate', label: 'Date', type: 'date' },
  { id: 'addReading', label: 'Reading', type: 'text' },
  { id: 'addTemperature', label: 'Winding temperature', type: 'text' },
] as const;

const none = { addDate: '', addReading: '', addTemperature: '' };

/** One row at a time, for those who have no table. A row that can't be used is told before it is added. */
export function AddRow({ how, onAdd }: Props) {
  const [typed, setTyped] = useState<Record<string, string>>(none);
  const [wrong, setWrong] = useState<string>();
  const add = () => {
    const cells = parts.map(({ id }) => typed[id]?.trim() ?? '');
    const [bad] = readTrendTable([cells], how).keptOut;
    setWrong(bad && keptOutReason(bad));
    if (bad !== undefined) return;
    onAdd(cells);
    setTyped(none);
  };
  return (
    <fieldset class="reading-row">
      <legend>Add a row</legend>
      <p class="hint" id="trend-add-hint">
        Such as 450 MΩ, or &gt;550 MΩ for over-range, and 25 °C.
      </p>
      {parts.map(({ id, label, type }) => (
        <div class="field" key={id}>
          <label for={`trend-${id}`}>{label}</label>
          <input
            id={`trend-${id}`}
            type={type}
            autoComplete="off"
            spellcheck={false}
            aria-describedby={wrong ? 'trend-add-hint trend-add-error' : 'trend-add-hint'}
            value={typed[id]}
            onInput={(event) => setTyped({ ...typed, [id]: event.currentTarget.value })}
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
