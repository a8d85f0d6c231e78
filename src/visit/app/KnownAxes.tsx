import { useKnownAxes } from './background.ts';

interface Names {
  machine: string;
  axis: string;
}

interface Props {
  typed: Names;
  onTake: (names: Names) => void;
}

/** As many as a person looks through quicker than they type a name. */
const mostShown = 6;

/** Names of the register to take with one press, the axis that was visited last first. */
export function KnownAxes({ typed, onTake }: Props) {
  const key = ({ machine, axis }: Names) => `${machine} ${axis}`.toLowerCase();
  const words = key(typed).split(' ').filter(Boolean);
  const fitting = useKnownAxes().filter((one) => words.every((word) => key(one).includes(word)));
  const shown = fitting.filter((one) => key(one).trim() !== key(typed).trim()).slice(0, mostShown);
  if (shown.length === 0) return null;
  return (
    <fieldset class="known-axes">
      <legend>An axis of the register</legend>
      <div class="suggestions">
        {shown.map((names) => (
          <button
            type="button"
            key={key(names)}
            onClick={({ currentTarget }) => {
              onTake(names);
              // The button goes away, and the focus would go with it.
              currentTarget.closest('details')?.querySelector('summary')?.focus({ preventScroll: true });
            }}
          >
            {[names.machine, names.axis].filter((name) => name.trim() !== '').join(', ')}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
