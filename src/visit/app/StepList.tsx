import { useEffect, useRef, useState } from 'preact/hooks';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { confirmStep, enterStep } from '../change-step.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { stepsAhead } from '../guide/next-step.ts';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';
import { sharesSheet } from '../steps/sheets.ts';
import { sheetTexts } from '../words/visit.ts';
import { useBackground } from './background.ts';
import { StepBody } from './StepBody.tsx';
import { StepItem, type StepMark } from './StepItem.tsx';
import type { VisitSession } from './use-session.ts';
import type { Waits } from './use-waits.ts';

interface Props {
  evaluated: EvaluatedVisit;
  session: VisitSession;
  waits: Waits;
}

/** The steps so far, with the due one open; the steps that have left the way; and those that may follow. */
export function StepList({ evaluated, session: { change, draft, loaded }, waits }: Props) {
  const { guide } = evaluated;
  const [open, setOpen] = useState<readonly StepId[]>(guide.due === undefined ? [] : [guide.due]);
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

  // The next step of the same sheet opens below the one that was just answered.
  const last = lastIn(open);
  const follows = due !== undefined && last !== undefined && !open.includes(due) && sharesSheet(last, due);
  useEffect(() => {
    if (follows) setOpen((before) => [...before, due]);
  }, [follows, due]);

  const goOn = () => {
    setOpen(due === undefined ? [] : [due]);
    focusOn.current = due === undefined ? 'decision' : `step-${due}`;
  };

  // One way on a screen: below the last step that is open.
  const onScreen = path.map(({ id }) => id).filter((id) => open.includes(id));
  const next = (id: StepId) => {
    const below = onScreen.includes(id) ? onScreen[onScreen.indexOf(id) + 1] : undefined;
    if (below !== undefined) return <p role="status">{sheetTexts.below(questions[below].title)}</p>;
    return (
      <button type="button" class="primary go-on" onClick={goOn}>
        {due === undefined ? 'Go on to the decision' : `Go on: ${questions[due].title}`}
      </button>
    );
  };

  const item = (id: StepId, number: number | undefined, mark: StepMark) => (
    <StepItem
      key={id}
      id={id}
      number={number}
      mark={mark}
      line={lineOf(id)}
      open={open.includes(id)}
      onToggle={() => setOpen(open.includes(id) ? open.filter((one) => one !== id) : [id])}
      next={isAnswered(mark) && next(id)}
    >
      <StepBody
        // Read from storage again, the form starts from what is stored; the step stays open.
        key={loaded}
        id={id}
        evaluated={evaluated}
        waits={waits}
        onTyped={(form) => draft({ step: id, form })}
        onEnter={(form) => change((before, at) => enterStep(before, id, form, at))}
        onConfirm={() => change((before, at) => confirmStep(before, id, at))}
      />
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

/** A step with an open problem, or one to look at again, does not lead on. */
function isAnswered(mark: StepMark): boolean {
  return mark === 'done' || mark === 'left';
}
