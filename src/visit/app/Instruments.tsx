import { useState } from 'preact/hooks';
import { useOpening } from '../../ui/form/folded-parts.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { useEntries } from '../../ui/form/use-entries.ts';
import type { Instrument } from '../record/instrument-schema.ts';
import { deviceInstruments, keepDeviceInstruments } from '../storage/device-instruments.ts';
import { instrumentTexts } from '../words/visit.ts';
import {
  instrumentFields,
  instrumentLine,
  instrumentRows,
  notedInstruments,
  usualInstruments,
} from './details-fields.ts';
import { TextInput } from './TextInput.tsx';

interface Props {
  instruments: readonly Instrument[];
  /** The visit has just begun, so they are asked for. */
  isNew: boolean;
  onTyped: (instruments: Instrument[]) => void;
  onSettled: (instruments: Instrument[]) => void;
}

/**
 * The instruments of a visit, asked once and kept on the device for the next visits. The calculators take accuracy, highest
 * figure and test voltage from here.
 */
export function Instruments({ instruments, isNew, onTyped, onSettled }: Props) {
  const [kept, setKept] = useState(() => deviceInstruments().length > 0);
  const entries = useEntries({
    start: instrumentRows(instruments),
    onTyped: (typed) => onTyped(notedInstruments(typed)),
    onSettled: (settled) => {
      const noted = notedInstruments(settled);
      setKept(keepDeviceInstruments(noted) && noted.length > 0);
      onSettled(noted);
    },
  });
  const rows = entries.typed;
  const set = (index: number, part: Partial<Instrument>) =>
    entries.type((before) => before.map((row, position) => (position === index ? { ...row, ...part } : row)));
  const forget = () => {
    keepDeviceInstruments([]);
    setKept(false);
  };
  const named = notedInstruments(rows).map(({ what }) => what);
  return (
    <form {...formProps}>
      <details class="more visit-instruments" ref={useOpening(isNew && named.length === 0)}>
        <summary>Instruments: {named.length === 0 ? 'not noted' : named.join(', ')}</summary>
        <p class="hint">{instrumentTexts.asked}</p>
        {rows.map((row, index) => (
          // Rows are only added at the end, so the index is a stable key.
          <InstrumentRow
            key={index}
            index={index}
            row={row}
            onChange={(part) => set(index, part)}
            onLeave={entries.leave}
          />
        ))}
        <p class="banner-actions">
          <button
            type="button"
            class="plain"
            onClick={() => entries.type((before) => [...before, { what: '', identification: '', accuracy: '' }])}
          >
            Add an instrument
          </button>
          {kept && (
            <button type="button" class="plain" onClick={forget}>
              {instrumentTexts.forget}
            </button>
          )}
        </p>
        <p class="hint" role="status">
          {kept ? instrumentTexts.kept : named.length > 0 && instrumentTexts.ofThisVisit}
        </p>
      </details>
    </form>
  );
}

interface RowProps {
  index: number;
  row: Instrument;
  onChange: (part: Partial<Instrument>) => void;
  onLeave: () => void;
}

/** One instrument: a line that opens it. */
function InstrumentRow({ index, row, onChange, onLeave }: RowProps) {
  const isUsual = index < usualInstruments.length;
  return (
    <details class="visit-instrument" open={!isUsual}>
      <summary>
        {row.what || 'Other instrument'}: {instrumentLine(row) || 'not noted'}
      </summary>
      {!isUsual && (
        <TextInput
          id={`instrument-${index}-what`}
          label="Other instrument"
          value={row.what}
          onInput={(what) => onChange({ what })}
          onLeave={onLeave}
        />
      )}
      {instrumentFields(row.what).map(({ id, label, hint }) => (
        <TextInput
          key={id}
          id={`instrument-${index}-${id}`}
          label={isUsual && id === 'identification' ? row.what : label}
          hint={hint}
          value={row[id] ?? ''}
          onInput={(text) => onChange({ [id]: text })}
          onLeave={onLeave}
        />
      ))}
    </details>
  );
}
