import { axisNamed, type Register } from '../history/register.ts';
import { noteIds } from '../record/axis-fields.ts';
import { type AxisNotes, withValues } from '../record/change-axis.ts';
import { idOfNames } from '../record/names.ts';
import { AxisForm } from './AxisForm.tsx';
import { axisHash, listHash } from './route.ts';
import type { OpenRegister } from './use-register.ts';

interface Props {
  open: OpenRegister;
  register: Register;
}

const blank = Object.fromEntries(noteIds.map((id) => [id, ''])) as AxisNotes;

/** An axis that no visit has named yet. A name that is known already, a former one included, opens that axis. */
export function NewAxis({ open, register }: Props) {
  return (
    <>
      <p class="running-head">
        <a href={listHash}>All axes</a>
      </p>
      <h1 tabIndex={-1}>Note an axis</h1>
      <AxisForm
        start={{ names: { machine: '', axis: '' }, notes: blank }}
        save="Save the axis"
        onLeave={() => {
          location.hash = listHash;
        }}
        onSave={({ names, notes }) => {
          const known = axisNamed(register, names);
          const id = known?.id ?? idOfNames(names);
          const typed = Object.fromEntries(Object.entries(notes).filter(([, text]) => text.trim() !== ''));
          void open
            .change(known ?? { id, names, merged: [], visits: [] }, (record, now) =>
              withValues(record, { ...typed, removed: '' }, now),
            )
            .then(() => {
              location.hash = axisHash(id);
            });
        }}
      />
    </>
  );
}
