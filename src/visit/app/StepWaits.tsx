import type { StepId } from '../steps/ids.ts';
import { waitsOf } from '../steps/waits.ts';
import type { Waits } from './use-waits.ts';

/** The waits of one step, as keys that start them. */
export function StepWaits({ id, waits }: { id: StepId; waits: Waits }) {
  return (
    <>
      {waitsOf(id).map((kind) => (
        <fieldset key={kind.id} class="step-wait">
          <legend>Timer: {kind.name}</legend>
          {kind.minutes.map((minutes) => (
            <button key={minutes} type="button" class="plain" onClick={() => waits.start(kind, minutes)}>
              {minutes} min
            </button>
          ))}
        </fieldset>
      ))}
    </>
  );
}
