import { clockFace, secondsLeft } from '../waiting.ts';
import type { Waits } from './use-waits.ts';

/** The waits that run, in sight on every step. What has passed is announced; the seconds are not. */
export function WaitBar({ waits: { running, now, remove } }: { waits: Waits }) {
  return (
    <>
      {running.length > 0 && (
        <ul class="wait-bar" aria-label="Waits">
          {running.map((wait) => {
            const left = secondsLeft(wait, now);
            return (
              <li key={wait.id} data-over={left === 0 ? '' : undefined}>
                <span>
                  {wait.name}: <b role="timer">{left === 0 ? 'time is up' : clockFace(left)}</b>
                  {left === 0 && ` ${wait.after}`}
                </span>
                <button type="button" class="plain" onClick={() => remove(wait.id)}>
                  {left === 0 ? 'Seen' : 'Stop'}
                  <span class="visually-hidden">: {wait.name}</span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <p class="visually-hidden" role="status">
        {running
          .filter((wait) => secondsLeft(wait, now) === 0)
          .map(({ name, after }) => `${name}: time is up. ${after}`)
          .join(' ')}
      </p>
    </>
  );
}
