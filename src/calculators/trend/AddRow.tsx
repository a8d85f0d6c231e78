import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { insulationUnits } from '../../kernel/form/measured-units.ts';
import { storedTexts, storeTexts } from '../../ui/form/kept-entries.ts';
import type { FormState } from '../../ui/form/use-form.ts';
import { AddedReading } from './AddedReading.tsx';

interface Props {
  form: Pick<FormState, 'typed' | 'read' | 'choose'>;
}

const readings = [
  { id: 'addReading', label: 'Reading', quantity: 'resistance', units: insulationUnits },
  { id: 'addTemperature', label: 'Winding temperature', quantity: 'temperature', units: ['°C', '°F'] },
] as const;

const ids = ['addDate', 'addReading', 'addTemperature'] as const;

const name = 'trend-row';
const notLoaded =
  'The row could not be checked: there is no network. It is kept here: load the page again once there is one.';
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
  const described = wrong ? 'trend-add-hint trend-add-error' : 'trend-add-hint';
  const latest = useRef(form);
  latest.current = form;
  const add = async () => {
    const cells = ids.map((id) => typed[id]?.trim() ?? '');
    // What reads a row comes with the first one, and the table may have been typed in meanwhile.
    const reader = await import('./added-row.ts').catch(() => undefined);
    const { typed: entries, read } = latest.current;
    const added = reader?.addedRow(entries.rows ?? '', cells, read, Date.now()) ?? { wrong: notLoaded };
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
      <div class="field">
        <label for="trend-addDate">Date</label>
        <input
          id="trend-addDate"
          type="date"
          aria-describedby={described}
          value={typed.addDate}
          onInput={(event) => keep({ ...typed, addDate: event.currentTarget.value })}
        />
      </div>
      {readings.map((one) => (
        <AddedReading
          key={one.id}
          {...one}
          describedBy={described}
          typed={typed}
          onType={(text) => keep({ ...typed, [one.id]: text })}
        />
      ))}
      <p class="error" id="trend-add-error" role="alert">
        {wrong}
      </p>
      <p>
        <button type="button" class="primary" onClick={() => void add()}>
          Add this row
        </button>
      </p>
    </fieldset>
  );
}
