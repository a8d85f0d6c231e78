import { useState } from 'preact/hooks';
import type { Axis, Register } from '../history/register.ts';
import { withValues } from '../record/change-axis.ts';
import { axisTitle, formTexts } from '../words/axis.ts';
import type { OpenRegister } from './use-register.ts';

interface Props {
  axis: Axis;
  open: OpenRegister;
  register: Register;
}

/** Brings another spelling of the same axis here, and takes it out again. */
export function MergeAxes({ axis, open, register }: Props) {
  const [chosen, choose] = useState('');
  const [isOpen, setOpen] = useState(false);
  // Sorted and drawn only when somebody wants to choose: there may be hundreds.
  const others = isOpen
    ? register.axes
        .filter(({ id }) => id !== axis.id)
        .map((one) => ({ ...one, title: axisTitle(one.names) }))
        .sort((a, b) => (a.title < b.title ? -1 : 1))
    : [];
  const setInto = (one: Axis, mergedInto: string) =>
    open.change(one, (record, now) => withValues(record, { mergedInto }, now));
  const other = others.find(({ id }) => id === chosen);
  return (
    <section aria-labelledby="merge">
      <h2 id="merge">Another spelling</h2>
      <p>{formTexts.merge}</p>
      {axis.merged.length > 0 && (
        <ul class="exchanges">
          {axis.merged.map((one) => (
            <li key={one.id}>
              {axisTitle(one.names)}{' '}
              <button type="button" class="plain" onClick={() => void setInto(one, '')}>
                Separate it again<span class="visually-hidden">: {axisTitle(one.names)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {register.axes.length > 1 && (
        <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>Merge a spelling into this one</summary>
          <div class="field">
            <label for="merge-axis">The other spelling</label>
            <select id="merge-axis" value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
              <option value="">Choose</option>
              {others.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
            </select>
          </div>
          <button
            type="button"
            class="plain"
            disabled={other === undefined}
            onClick={() => {
              if (other !== undefined) void setInto(other, axis.id).then(() => choose(''));
            }}
          >
            Merge it into this axis
          </button>
        </details>
      )}
    </section>
  );
}
