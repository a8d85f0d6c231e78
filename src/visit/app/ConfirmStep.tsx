import { shownTime } from '../../kernel/time/iso-time.ts';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';
import { holdsOneStretch } from '../steps/rules.ts';

interface Props {
  id: StepId;
  /** The numbers of the earlier steps that were changed. */
  numbers: readonly number[];
  /** When it was answered, as an ISO time. */
  provedAt: string | undefined;
  /** It was answered in an earlier stretch of work. */
  stale: boolean;
  /** A later answer has undone it. */
  undone: boolean;
  /** A later reading found the bus charged. */
  refuted: boolean;
  onConfirm: () => void;
  onRestart: () => void;
}

/**
 * Shown when something that this step rests on was changed after it. A lockout can't be confirmed by a click: it has to
 * be done again, and so does a step that a later one has undone.
 */
export function ConfirmStep({ id, numbers, provedAt, stale, undone, refuted, onConfirm, onRestart }: Props) {
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
  if (holdsOneStretch(id) && !id.startsWith('support-')) {
    return (
      <div class="look-again">
        <p>
          {refuted
            ? 'A later reading found the bus charged.'
            : `You changed ${steps} after this, and power may have been on since.`}{' '}
          Lock out, wait and measure again.
        </p>
        <button type="button" class="plain" onClick={onRestart}>
          Begin this step again
        </button>
      </div>
    );
  }
  const undoneText = undone ? questions[id].undone : undefined;
  if (undoneText !== undefined) {
    return (
      <div class="look-again">
        <p>{undoneText}</p>
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
