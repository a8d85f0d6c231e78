import type { StepId } from '../../guide/answers.ts';
import { shownTime } from '../../record/iso-time.ts';
import { provedInEachStretch } from '../../record/step-forms.ts';

interface Props {
  id: StepId;
  /** The earlier steps that were changed, by their numbers. */
  numbers: readonly number[];
  /** When it was answered, as an ISO time. */
  provedAt: string | undefined;
  /** It was answered in an earlier stretch of work. */
  stale: boolean;
  onConfirm: () => void;
  onRestart: () => void;
}

/** Something that this step rests on was changed after it. A lockout is never confirmed by a word: it is done again. */
export function LookAgain({ id, numbers, provedAt, stale, onConfirm, onRestart }: Props) {
  const steps = numbers.length === 0 ? 'an earlier step' : numbers.map((number) => `step ${number}`).join(' and ');
  if (stale || id === 'bus-again') {
    return (
      <div class="look-again">
        <p>
          {stale ? 'This is of an earlier stretch of work' : 'The bus can have been charged since'}
          {provedAt && ` (${shownTime(provedAt)})`}. {stale ? 'It no longer holds: do it again now.' : 'Measure again.'}
        </p>
        <button type="button" class="plain" onClick={onRestart}>
          Begin this step again
        </button>
      </div>
    );
  }
  if (provedInEachStretch(id) && !id.startsWith('support-')) {
    return (
      <div class="look-again">
        <p>You changed {steps} after this, and power may have been on since. Lock out, wait and measure again.</p>
        <button type="button" class="plain" onClick={onRestart}>
          Begin this step again
        </button>
      </div>
    );
  }
  return (
    <div class="look-again">
      <p>You changed {steps} after this. Look again, or say that it still holds.</p>
      <button type="button" class="plain" onClick={onConfirm}>
        It still holds
      </button>
    </div>
  );
}
