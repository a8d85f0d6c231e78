import { useEffect, useRef, useState } from 'preact/hooks';
import { confirmStep, enterStep } from '../change-step.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { stepsAhead } from '../guide/next-step.ts';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';
import { useBackground } from './background.ts';
import { StepBody } from './StepBody.tsx';
import { StepItem, type StepMark } from './StepItem.tsx';
import type { VisitSession } from './use-session.ts';

interface Props {
  evaluated: EvaluatedVisit;
  session: VisitSession;
}

/** The steps so far, with the due one open; the steps that have left the way; and those that may follow. */
export function StepList({ evaluated, session: { change, draft, loaded } }: Props) {
  const { guide } = evaluated;
  const [open, setOpen] = useState<StepId | undefined>(guide.due);
  const focusOn = useRef<string>();
  const against = useBackground()?.against(evaluated) ?? [];
  const lineOf = (id: StepId) =>
    [evaluated.steps[id].line, against.find(({ step }) => step === id)?.short].filter(Boolean).join(', ');
  const { path, offPath, due } = guide;

  // The target of the focus exists only after the step has been drawn.
  useEffect(() => {
    if (focusOn.current === undefined) return;
    const target = document.getElementById(focusOn.current);
    focusOn.current = undefined;
    target?.scrollIntoView({ block: 'start' });
    target?.focus({ preventScroll: true });
  });

  const goOn = () => {
    setOpen(due);
    focusOn.current = due === undefined ? 'decision' : `step-${due}`;
  };

  const item = (id: StepId, number: number | undefined, mark: StepMark) => (
    <StepItem
      key={id}
      id={id}
      number={number}
      mark={mark}
      line={lineOf(id)}
      open={open === id}
      onToggle={() => setOpen(open === id ? undefined : id)}
    >
      <StepBody
        // Read from storage again, the form starts from what is stored; the step stays open.
        key={loaded}
        id={id}
        evaluated={evaluated}
        onTyped={(form) => draft({ step: id, form })}
        onEnter={(form) => change((before, at) => enterStep(before, id, form, at))}
        onConfirm={() => change((before, at) => confirmStep(before, id, at))}
      />
      {mark !== 'due' && mark !== 'problem' && mark !== 'check-again' && (
        <button type="button" class="primary go-on" onClick={goOn}>
          {due === undefined ? 'Go on to the decision' : `Go on: ${questions[due].title}`}
        </button>
      )}
    </StepItem>
  );

  const ahead = stepsAhead(guide);
  return (
    <section aria-labelledby="steps" class="visit-steps">
      <h2 id="steps">Steps</h2>
      <ol>{path.map(({ id, status }, index) => item(id, index + 1, status))}</ol>
      {offPath.length > 0 && (
        <>
          <h2>Not on the way now</h2>
          <p>
            Answered earlier, kept, and not counted. A step comes back by itself when your answers lead to it again.
          </p>
          <ul>{offPath.map((id) => item(id, undefined, 'left'))}</ul>
        </>
      )}
      {ahead.length > 0 && (
        <details class="more steps-ahead">
          <summary>What may follow</summary>
          <ul>
            {ahead.map((id) => (
              <li key={id}>
                <b>{questions[id].title}.</b> {questions[id].when}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
