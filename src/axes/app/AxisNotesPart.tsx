import { useState } from 'preact/hooks';
import { knownOf } from '../history/known.ts';
import type { Axis } from '../history/register.ts';
import { noteIds } from '../record/axis-fields.ts';
import { renamed, withValues } from '../record/change-axis.ts';
import { rivals } from '../record/entries.ts';
import { formTexts, noteTexts } from '../words/axis.ts';
import { AxisForm } from './AxisForm.tsx';
import { listHash } from './route.ts';
import type { OpenRegister } from './use-register.ts';

/** What is known about the axis, and the form that changes it; a change of the name is a new name, the old one stays known. */
export function AxisNotesPart({ axis, open }: { axis: Axis; open: OpenRegister }) {
  const [editing, setEditing] = useState(false);
  const known = knownOf(axis);
  const noted = noteIds.filter((id) => known[id] !== '');
  const others = noteIds.flatMap((id) => {
    const texts = rivals(axis.record?.fields[id] ?? []).map(({ value }) => value);
    return texts.length < 2 ? [] : [[id, texts.slice(1)] as const];
  });
  return (
    <section aria-labelledby="known">
      <h2 id="known">What is known</h2>
      {editing ? (
        <AxisForm
          start={{ names: axis.names, notes: known }}
          rivals={Object.fromEntries(others)}
          save="Save"
          onLeave={() => setEditing(false)}
          onSave={({ names, notes }) => {
            setEditing(false);
            const changed = Object.fromEntries(
              noteIds.filter((id) => notes[id] !== known[id]).map((id) => [id, notes[id]]),
            );
            void open.change(axis, (record, now) => withValues(renamed(record, names, now), changed, now));
          }}
        />
      ) : (
        <>
          <dl class="axis-facts">
            {noted.map((id) => (
              <div key={id}>
                <dt>{noteTexts[id].label}</dt>
                <dd>{known[id]}</dd>
              </div>
            ))}
          </dl>
          {noted.length === 0 && <p>Nothing yet but its name.</p>}
          {others.length > 0 && <p>Two devices noted different texts. Open the form to choose.</p>}
          <button type="button" class="plain" onClick={() => setEditing(true)}>
            Change or rename
          </button>
          {axis.visits.length === 0 && (
            <>
              {' '}
              <button
                type="button"
                class="plain"
                onClick={() => {
                  void open.change(axis, (record, now) => withValues(record, { removed: 'yes' }, now));
                  location.hash = listHash;
                }}
              >
                Take it off the list
              </button>
              <p class="hint">{formTexts.takenOff}</p>
            </>
          )}
        </>
      )}
    </section>
  );
}
