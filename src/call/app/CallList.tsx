import { useEffect, useState } from 'preact/hooks';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { visitTitle } from '../../visit/app/visit-summary.ts';
import { textOf } from '../../visit/steps/fields.ts';
import { forgetCall, type KeptCall, keepCall, keptCalls } from './kept-calls.ts';
import { callHash } from './route.ts';

interface Props {
  /** The call above, which the list leaves out. */
  open: string;
  onBegin: () => void;
}

/** The other calls that are kept on this device. */
export function CallList({ open, onBegin }: Props) {
  const [calls, setCalls] = useState<KeptCall[]>([]);
  const [deleted, setDeleted] = useState<KeptCall>();
  const show = () => setCalls(keptCalls().filter(({ id }) => id !== open));
  useEffect(() => {
    show();
    addEventListener('storage', show);
    return () => removeEventListener('storage', show);
  }, [open]);
  const remove = (call: KeptCall) => {
    forgetCall(call.id);
    setDeleted(call);
    show();
  };
  const undo = () => {
    if (deleted !== undefined) keepCall(deleted);
    setDeleted(undefined);
    show();
  };
  return (
    <section class="call-list" aria-labelledby="calls">
      <h2 id="calls">Other calls on this device</h2>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={onBegin}>
          New call
        </button>
      </p>
      <p role="status" class="list-message">
        {deleted && `Deleted: ${titleOf(deleted)}. `}
        {deleted && (
          <button type="button" class="plain" onClick={undo}>
            Undo
          </button>
        )}
      </p>
      {calls.length === 0 && <p>No other calls.</p>}
      <ul class="visit-list">
        {calls.map((call) => (
          <li key={call.id}>
            <a href={callHash(call.id)}>{titleOf(call)}</a>
            <p>
              <span class="when">Call of {shownTime(call.at)}.</span>
            </p>
            <p class="banner-actions">
              <button type="button" class="plain" onClick={() => remove(call)}>
                Delete<span class="visually-hidden"> {titleOf(call)}</span>
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function titleOf({ form }: KeptCall): string {
  const [machine, axis] = [textOf(form, 'machine'), textOf(form, 'axis')];
  return machine.trim() + axis.trim() === '' ? 'Call without a name' : visitTitle({ machine, axis });
}
