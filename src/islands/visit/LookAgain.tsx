import type { StepId } from '../../guide/answers.ts';

interface Props {
  id: StepId;
  /** The earlier steps that were changed, by their numbers. */
  numbers: readonly number[];
  onConfirm: () => void;
  onRestart: () => void;
}

/** Something that this step rests on was changed after it. A lockout is never confirmed by a word: it is done again. */
export function LookAgain({ id, numbers, onConfirm, onRestart }: Props) {
  const steps = numbers.length === 0 ? 'an earlier step' : numbers.map((number) => `step ${number}`).join(' and ');
  if (id.startsWith('lockout')) {
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
