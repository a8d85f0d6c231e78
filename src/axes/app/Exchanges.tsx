import { useMemo, useState } from 'preact/hooks';
import { parseDate } from '../../kernel/reading/calendar-date.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { capital } from '../../kernel/words/sentences.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { oneAtATime } from '../../ui/one-at-a-time.ts';
import { newId } from '../../visit/storage/new-id.ts';
import { partNames } from '../../visit/words/parts.ts';
import type { Exchange } from '../history/changes.ts';
import type { Axis } from '../history/register.ts';
import { withChange } from '../record/change-axis.ts';
import type { OpenRegister } from './use-register.ts';

interface Props {
  axis: Axis;
  exchanges: readonly Exchange[];
  open: OpenRegister;
}

type Change = Pick<Exchange, 'part' | 'on' | 'note' | 'visit'>;

const names: Record<string, string> = partNames;
const parts = Object.keys(partNames);

/** Parts that were changed, and those that a visit decided to replace: one tap says that it was done. */
export function Exchanges({ axis, exchanges, open }: Props) {
  const today = isoTime(new Date()).slice(0, 10);
  const [{ part, on, note }, set] = useState({ part: 'drive', on: today, note: '' });
  const tap = useMemo(oneAtATime, []);
  const [undo, setUndo] = useState<Exchange>();
  const add = ({ part: which, on: day, note: text, visit }: Change, id: string, dropped: boolean) =>
    open.change(axis, (record, now) =>
      withChange(record, { id, part: which, on: day, note: text, dropped, ...(visit && { visit }) }, now),
    );
  const dayRead = parseDate(on).ok;
  return (
    <section aria-labelledby="exchanges">
      <h2 id="exchanges">Parts changed</h2>
      <ul class="exchanges">
        {exchanges.length === 0 && <li>None is noted.</li>}
        {exchanges.map((one) => (
          <li key={one.id ?? `${one.visit} ${one.part}`}>
            <b>{one.on}</b> {capital(names[one.part] ?? one.part)}
            {one.kind === 'decided' ? ': a visit decided to replace it.' : one.note === '' ? '.' : `: ${one.note}.`}{' '}
            {one.kind === 'decided' ? (
              <button type="button" class="plain" onClick={() => tap(() => add({ ...one, on: today }, newId(), false))}>
                It was changed today<span class="visually-hidden">: {names[one.part]}</span>
              </button>
            ) : (
              <button
                type="button"
                class="plain"
                onClick={() => {
                  setUndo(one);
                  void add(one, one.id ?? newId(), true);
                }}
              >
                Take it off
                <span class="visually-hidden">
                  : {names[one.part]}, {one.on}
                </span>
              </button>
            )}
          </li>
        ))}
      </ul>
      <p role="status">
        {undo && (
          <>
            Taken off: {names[undo.part]}, {undo.on}.{' '}
            <button
              type="button"
              class="plain"
              onClick={() => {
                void add(undo, undo.id ?? newId(), false);
                setUndo(undefined);
              }}
            >
              Undo
            </button>
          </>
        )}
      </p>
      <details class="more">
        <summary>Note a part that was changed</summary>
        <form {...formProps}>
          <div class="field">
            <label for="exchange-part">Part</label>
            <select
              id="exchange-part"
              value={part}
              onChange={(event) => set({ part: event.currentTarget.value, on, note })}
            >
              {parts.map((id) => (
                <option key={id} value={id}>
                  {capital(names[id] ?? id)}
                </option>
              ))}
            </select>
          </div>
          <div class="field">
            <label for="exchange-day">Day</label>
            <input
              id="exchange-day"
              type="date"
              max={today}
              value={on}
              onInput={(event) => set({ part, on: event.currentTarget.value, note })}
            />
          </div>
          <div class="field">
            <label for="exchange-note">Serial number, remark</label>
            <input
              id="exchange-note"
              type="text"
              maxLength={500}
              value={note}
              onInput={(event) => set({ part, on, note: event.currentTarget.value })}
            />
          </div>
          <button
            type="button"
            class="plain"
            disabled={!dayRead}
            onClick={() => {
              tap(() => add({ part, on, note }, newId(), false));
              set({ part, on: today, note: '' });
            }}
          >
            Save this change
          </button>
        </form>
      </details>
    </section>
  );
}
