import { useState } from 'preact/hooks';
import type { EvaluatedVisit } from '../evaluate.ts';
import { isBusProof } from '../guide/dead-proofs.ts';
import type { PathStep } from '../guide/path.ts';
import { isPowerStep } from '../guide/power.ts';
import { triesNeededIn } from '../guide/tries.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { Form } from '../steps/fields.ts';
import type { StepId } from '../steps/ids.ts';
import { problemTexts } from '../steps/problems.ts';
import { isAsked, isMeasured, questions, type VisitAnswers } from '../steps/questions.ts';
import { holdsOneStretch } from '../steps/rules.ts';
import { symptomIn, symptomTexts } from '../steps/symptom/question.ts';
import { triesTexts } from '../words/visit.ts';
import { AskedStep } from './AskedStep.tsx';
import { ConfirmStep } from './ConfirmStep.tsx';
import { MeasuredStep } from './MeasuredStep.tsx';
import { StepPhotographs } from './photographs/StepPhotographs.tsx';
import { ReportedAnswer } from './ReportedAnswer.tsx';
import { StepWaits } from './StepWaits.tsx';
import type { Waits } from './use-waits.ts';

interface Props {
  id: StepId;
  evaluated: EvaluatedVisit;
  waits: Waits;
  /** Each key; `onEnter` comes once what was typed has settled. */
  onTyped: (form: Form) => void;
  onEnter: (form: Form) => void;
  onConfirm: () => void;
}

/** An open step: cautions first, then what to do and why, the questions or the calculator, and what is still missing. */
export function StepBody({ id, evaluated, waits, onTyped, onEnter, onConfirm }: Props) {
  const { instructions, why, caution, danger } = questions[id];
  const { visit, stretch } = evaluated;
  const { onWay, line, stale, refuted, undone, changedBefore } = evaluated.steps[id];
  const form = visit.steps[id]?.form ?? {};
  // What is measured once more is not shown as it was: nothing of it may be taken for measured now.
  const startsBlank = stale || refuted || (onWay?.status === 'check-again' && isBusProof(id));
  const [restarts, setRestarts] = useState(0);
  const restart = () => {
    onEnter({});
    setRestarts(restarts + 1);
  };
  const takeReported = (confirmed: Form) => {
    onEnter(confirmed);
    setRestarts(restarts + 1);
  };
  return (
    <>
      {stale && onWay?.status === 'done' && <p>Kept as it was found then: {line}.</p>}
      {onWay !== undefined && (onWay.status === 'check-again' || refuted || (stale && onWay.status !== 'done')) && (
        <ConfirmStep
          id={id}
          numbers={changedBefore}
          provedAt={visit.steps[id]?.at}
          stale={stale}
          undone={undone}
          refuted={refuted}
          onConfirm={onConfirm}
          onRestart={restart}
        />
      )}
      {onWay === undefined && (
        <p class="left-note">
          This step is not on the way now: something else comes first, or your answers lead elsewhere. It is kept in the
          record, and it does not count meanwhile.
        </p>
      )}
      {caution && (
        <div class="caution" data-kind={danger ? 'danger' : 'caution'} role="note">
          <p class="caution-word">{danger ? 'Danger' : 'Caution'}</p>
          <p>{caution}</p>
        </div>
      )}
      <ul class="step-instructions">
        {instructions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <StepWaits id={id} waits={waits} />
      <p class="step-why">{why}</p>
      {/* What holds for one stretch of work is proved here and now: nobody can report it. */}
      {isAsked(id) && !holdsOneStretch(id) && <ReportedAnswer id={id} visit={visit} onConfirm={takeReported} />}
      {isAsked(id) && !startsBlank && (
        <AskedStep
          // A break while the form is open ends it: what was ticked before it does not count after it.
          key={`${restarts} ${holdsOneStretch(id) ? stretch : ''}`}
          id={id}
          start={form}
          onTyped={onTyped}
          onSettled={onEnter}
        />
      )}
      {isMeasured(id) && (
        <MeasuredStep
          // So does a bus reading that was filled in before it.
          key={id === 'bridge' ? stretch : ''}
          id={id}
          evaluated={evaluated}
          askToLeaveOpen={
            // It takes two persons, so it may be left before anything is typed.
            id === 'bend-test' ||
            onWay?.problem === 'undecided' ||
            onWay?.problem === 'part-open' ||
            form.leftOpen === 'yes'
          }
          onTyped={onTyped}
          onSettled={onEnter}
        />
      )}
      <StepPhotographs step={id} />
      {isPowerStep(id) && <p class="likely">{triesText(evaluated.answers)}</p>}
      {id === 'symptom' && <Likely form={form} />}
      {(id === 'find-drive' || id === 'support-axis') && <Served visit={visit} />}
      <p class="step-problem" role="status">
        {onWay && !stale && missing(onWay, form)}
      </p>
    </>
  );
}

/** What keeps the visit from going on; nothing while the person has not begun. */
function missing({ id, status, problem }: PathStep, form: Form): string | undefined {
  if (problem !== undefined) return problemTexts[problem];
  const begun = Object.values(form).some((value) => value !== '');
  return status === 'due' && begun && isAsked(id) ? 'Answer the questions that are still open, then go on.' : undefined;
}

/** How often a retry is needed, so that its result says something. */
function triesText(answers: VisitAnswers): string {
  const { came, of, once } = answers.symptom?.answer ?? {};
  const needed = triesNeededIn(answers);
  if (needed !== undefined && came !== undefined && of !== undefined) return triesTexts.needed(came, of, needed);
  return once === true ? triesTexts.once : triesTexts.unknown;
}

function Likely({ form }: { form: Form }) {
  const moment = symptomIn(form);
  return moment === undefined ? null : (
    <p class="likely">
      <b>The moment:</b> {symptomTexts[moment].label}. <b>What it makes likely:</b> {symptomTexts[moment].likely}
    </p>
  );
}

function Served({ visit: { servedAxes } }: { visit: VisitRecord }) {
  return servedAxes.length === 0 ? null : (
    <p class="likely">
      <b>Noted:</b> {servedAxes.map(({ drive, axes }) => `${drive || 'A drive'} serves ${axes.join(', ')}`).join('; ')}.
    </p>
  );
}
