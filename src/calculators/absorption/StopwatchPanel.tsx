import { limitValue } from '../../kernel/limits.ts';
import { clockFace } from '../../kernel/reading/format-reading.ts';
import { absorptionField, absorptionTimes } from './rule/input.ts';
import { markName, type StopwatchState } from './stopwatch.ts';
import { useStopwatch } from './use-stopwatch.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  clock?: () => number;
}

/** Times the test and says when to read. It fills in nothing and clears nothing: the person types beside it. */
export function StopwatchPanel({ name, clock }: Props) {
  const { stage, start, stop } = useStopwatch(absorptionTimes, limitValue('stopwatch-lead'), clock);
  const mark = stage?.mark;
  return (
    <section class="stopwatch" aria-label="Stopwatch">
      <p class="stopwatch-face" role="timer" aria-live="off">
        {clockFace(stage?.elapsed ?? 0)}
      </p>
      {/* Changes only a few times a minute, so that it can be announced without talking over the person. */}
      <p class="stopwatch-call" role="status" data-phase={stage?.phase}>
        {callOf(stage)}
      </p>
      <p class="stopwatch-buttons">
        <button type="button" class={stage ? 'plain' : 'primary'} onClick={start}>
          {stage ? 'Start again from zero' : 'Start the stopwatch'}
        </button>
        {stage && (
          <button type="button" class="plain" onClick={stop}>
            Stop
          </button>
        )}
        {stage && mark !== undefined && stage.phase !== 'wait' && (
          <button
            type="button"
            class="primary"
            onClick={() => document.getElementById(`${name}-${absorptionField(mark)}`)?.focus()}
          >
            To the field {markName(mark)}
          </button>
        )}
      </p>
    </section>
  );
}

function callOf(stage: StopwatchState | undefined): string {
  if (stage === undefined) return '';
  const at = markName(stage.mark ?? 0);
  switch (stage.phase) {
    case 'wait':
      return `Next reading at ${at}.`;
    case 'soon':
      return `Get ready to read at ${at}.`;
    case 'now':
      return `Read now: ${at}.`;
    case 'over':
      return 'All readings are due. Switch the voltage off and discharge the winding.';
  }
}
