import { useState } from 'preact/hooks';
import { coreSections } from '../../kernel/electrics/core-resistance.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { type NoteId, noteIds } from '../record/axis-fields.ts';
import type { AxisNotes } from '../record/change-axis.ts';
import type { AxisNames } from '../record/names.ts';
import { formTexts, noteTexts } from '../words/axis.ts';

export interface AxisEntries {
  names: AxisNames;
  notes: AxisNotes;
}

interface Props {
  start: AxisEntries;
  /** What two devices noted differently, by field: the texts that are not shown in it. */
  rivals?: Partial<Record<NoteId, string[]>>;
  save: string;
  onSave: (entries: AxisEntries) => void;
  onLeave: () => void;
}

const choices: Partial<Record<NoteId, { value: string; label: string }[]>> = {
  cableSection: coreSections.map((section) => ({ value: String(section), label: `${section} mm²` })),
  cableMaterial: [
    { value: 'pvc', label: 'PVC' },
    { value: 'xlpe', label: 'Polyethylene, cross-linked or not' },
  ],
};

/** What a person notes about an axis. Nothing is saved before the button: a name that is half typed makes no axis. */
export function AxisForm({ start, rivals = {}, save, onSave, onLeave }: Props) {
  const [{ names, notes }, set] = useState(start);
  const empty = names.machine.trim() === '' && names.axis.trim() === '';
  const field = (
    id: string,
    label: string,
    value: string,
    hint: string | undefined,
    onInput: (text: string) => void,
  ) => (
    <div class="field" key={id}>
      <label for={`axis-${id}`}>{label}</label>
      {hint && (
        <p class="hint" id={`axis-${id}-hint`}>
          {hint}
        </p>
      )}
      <input
        id={`axis-${id}`}
        type="text"
        maxLength={500}
        autoCapitalize="off"
        spellcheck={false}
        aria-describedby={hint && `axis-${id}-hint`}
        value={value}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </div>
  );
  return (
    <form class="axis-form" {...formProps}>
      {field('machine', 'Machine', names.machine, 'As the site calls it.', (machine) =>
        set({ notes, names: { ...names, machine } }),
      )}
      {field('axis', 'Axis', names.axis, undefined, (axis) => set({ notes, names: { ...names, axis } }))}
      {noteIds.map((id) => {
        const { label, hint } = noteTexts[id];
        const type = (text: string) => set({ names, notes: { ...notes, [id]: text } });
        const others = rivals[id] ?? [];
        const also = others.length === 0 ? undefined : formTexts.rivals(others);
        const options = choices[id];
        if (options === undefined)
          return field(id, label, notes[id], [hint, also].filter(Boolean).join(' ') || undefined, type);
        return (
          <div class="field" key={id}>
            <label for={`axis-${id}`}>{label}</label>
            {also && <p class="hint">{also}</p>}
            <select id={`axis-${id}`} value={notes[id]} onChange={(event) => type(event.currentTarget.value)}>
              <option value="">Not known</option>
              {options.map((option) => (
                <option key={option.value} value={option.value}>
                  {option.label}
                </option>
              ))}
            </select>
          </div>
        );
      })}
      <p class="banner-actions">
        <button type="button" class="primary" disabled={empty} onClick={() => onSave({ names, notes })}>
          {save}
        </button>
        <button type="button" class="plain" onClick={onLeave}>
          Leave it as it was
        </button>
      </p>
    </form>
  );
}
