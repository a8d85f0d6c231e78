import { useEntries } from '../../ui/form/use-entries.ts';
import type { VisitDetails } from '../record/change-visit.ts';
import { instrumentRows, notedInstruments, usualInstruments } from './details-fields.ts';
import { TextInput } from './TextInput.tsx';

type Instrument = VisitDetails['instruments'][number];

interface Props {
  instruments: readonly Instrument[];
  onTyped: (instruments: Instrument[]) => void;
  onSettled: (instruments: Instrument[]) => void;
}

/** The instruments of a visit. The calculators take their accuracy from here. */
export function Instruments({ instruments, onTyped, onSettled }: Props) {
  const entries = useEntries({
    start: instrumentRows(instruments),
    onTyped: (typed) => onTyped(notedInstruments(typed)),
    onSettled: (settled) => onSettled(notedInstruments(settled)),
  });
  const rows = entries.typed;
  const set = (index: number, part: Partial<Instrument>) =>
    entries.type((before) => before.map((row, position) => (position === index ? { ...row, ...part } : row)));
  return (
    <fieldset>
      <legend>Instruments</legend>
      {rows.map((row, index) => (
        // Rows are only added at the end, so the index is a stable key.
        <div class="visit-instrument" key={index}>
          {index >= usualInstruments.length && (
            <TextInput
              id={`instrument-${index}-what`}
              label="Other instrument"
              value={row.what}
              onInput={(what) => set(index, { what })}
              onLeave={entries.leave}
            />
          )}
          <TextInput
            id={`instrument-${index}-identification`}
            label={row.what || 'Which one'}
            hint="Model, number, calibrated until."
            value={row.identification}
            onInput={(identification) => set(index, { identification })}
            onLeave={entries.leave}
          />
          <TextInput
            id={`instrument-${index}-accuracy`}
            label={`${row.what || 'Instrument'}: accuracy`}
            hint="From the data sheet, such as 2.1 % + 6 counts. The calculators take it from here."
            value={row.accuracy}
            onInput={(accuracy) => set(index, { accuracy })}
            onLeave={entries.leave}
          />
        </div>
      ))}
      <button
        type="button"
        class="plain"
        onClick={() => entries.type((before) => [...before, { what: '', identification: '', accuracy: '' }])}
      >
        Add an instrument
      </button>
    </fieldset>
  );
}
