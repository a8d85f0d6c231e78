import type { VisitDetails } from '../record/change-visit.ts';
import { TextInput } from './TextInput.tsx';
import { useDraft } from './use-draft.ts';

type Served = VisitDetails['servedAxes'][number];

interface Props {
  rows: readonly Served[];
  onTyped: (rows: Served[]) => void;
  onSettled: (rows: Served[]) => void;
}

interface Row {
  drive: string;
  axes: string;
}

/** Which drive serves which axes, so that the next visit need not look again. */
export function ServedAxes({ rows, onTyped, onSettled }: Props) {
  const start = rows.map(({ drive, axes }) => ({ drive, axes: axes.join(', ') }));
  const draft = useDraft<Row[]>(
    start.length > 0 ? start : [{ drive: '', axes: '' }],
    (typed) => onTyped(served(typed)),
    (typed) => onSettled(served(typed)),
  );
  const set = (index: number, part: Partial<Row>) =>
    draft.set(draft.value.map((row, position) => (position === index ? { ...row, ...part } : row)));
  return (
    <fieldset>
      <legend>Which drive serves which axes</legend>
      <p class="hint">Axes in the order of the drive’s own indications, with a comma between.</p>
      {draft.value.map((row, index) => (
        // Rows are only added at the end, so the index is a stable key.
        <div class="reading-row" key={index}>
          <TextInput
            id={`served-${index}-drive`}
            label={`Drive ${index + 1}`}
            value={row.drive}
            onInput={(drive) => set(index, { drive })}
            onLeave={draft.leave}
          />
          <TextInput
            id={`served-${index}-axes`}
            label={`Axes of drive ${index + 1}`}
            value={row.axes}
            onInput={(axes) => set(index, { axes })}
            onLeave={draft.leave}
          />
        </div>
      ))}
      <button type="button" class="plain" onClick={() => draft.set([...draft.value, { drive: '', axes: '' }])}>
        Add a drive
      </button>
    </fieldset>
  );
}

function served(rows: readonly Row[]): Served[] {
  return rows
    .map(({ drive, axes }) => ({
      drive: drive.trim(),
      axes: axes
        .split(',')
        .map((axis) => axis.trim())
        .filter(Boolean),
    }))
    .filter(({ drive, axes }) => drive !== '' || axes.length > 0);
}
