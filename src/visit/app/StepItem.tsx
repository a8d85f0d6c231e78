import type { ComponentChildren } from 'preact';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';

export type StepMark = 'done' | 'due' | 'problem' | 'check-again' | 'left';

const markWords: Record<StepMark, string> = {
  done: 'Done',
  due: 'Due now',
  problem: 'Not finished',
  'check-again': 'Look again',
  left: 'Not on the way',
};

interface Props {
  id: StepId;
  /** Its position on the way, from 1; undefined for a step that has left the way. */
  number: number | undefined;
  mark: StepMark;
  /** The answer in one line. */
  line: string;
  open: boolean;
  onToggle: () => void;
  /** The way on, once the step is answered: it stays at the lower edge of the window while the step is longer than that. */
  next: ComponentChildren;
  children: ComponentChildren;
}

/** One step: a line that opens it, and its instructions and questions while it is open. */
export function StepItem({ id, number, mark, line, open, onToggle, next, children }: Props) {
  return (
    <li class="visit-step" data-step={id} data-mark={mark}>
      <h3>
        <button type="button" id={`step-${id}`} aria-expanded={open} onClick={onToggle}>
          <span class="step-number" aria-hidden="true">
            {number ?? '–'}
          </span>
          <span class="step-title">
            {number !== undefined && <span class="visually-hidden">Step {number}: </span>}
            <span class="step-name">{questions[id].title}</span>
            <span class="step-line">
              {mark === 'done' && line !== '' ? (
                line
              ) : (
                <>
                  <b>{markWords[mark]}</b>
                  {line !== '' && `: ${line}`}
                </>
              )}
            </span>
          </span>
        </button>
      </h3>
      {open && (
        <div class={next ? 'step-body goes-on' : 'step-body'}>
          {children}
          {next && <div class="go-on-bar">{next}</div>}
        </div>
      )}
    </li>
  );
}
