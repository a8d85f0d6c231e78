import { useEntries } from '../../ui/form/use-entries.ts';
import type { VisitDetails } from '../record/change-visit.ts';
import { TextInput } from './TextInput.tsx';

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
  const entries = useEntries<Row[]>({
    start: start.length > 0 ? start : [{ drive: '', axes: '' }],
    onTyped: (typed) => onTyped(served(typed)),
    onSettled: (settled) => onSettled(served(settled)),
  });
  const set = (index: number, part: Partial<Row>) =>
    entries.type((before) => before.map((row, position) => (position === index ? { ...row, ...part } : row)));
  return (
    <fieldset>
      <legend>Which drive serves which axes</legend>
      <p class="hint">Axes in the order of the drive’s own indications, with a comma between.</p>
      {entries.typed.map((row, index) => (
        // Rows are only added at the end, so the index is a stable key.
        <div class="reading-row" key={index}>
          <TextInput
            id={`served-${index}-drive`}
            label={`Drive ${index + 1}`}
            value={row.drive}
            onInput={(drive) => set(index, { drive })}
            onLeave={entries.leave}
          />
          <TextInput
            id={`served-${index}-axes`}
            label={`Axes of drive ${index + 1}`}
            value={row.axes}
            onInput={(axes) => set(index, { axes })}
            onLeave={entries.leave}
          />
        </div>
      ))}
      <button
        type="button"
        class="plain"
        onClick={() => entries.type((before) => [...before, { drive: '', axes: '' }])}
      >
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
