import { useState } from 'preact/hooks';
import type { StepId } from '../../guide/answers.ts';
import { busProofProblem, isDeadProof } from '../../guide/dead-proofs.ts';
import type { GuideState, PathStep } from '../../guide/next-step.ts';
import { undoneSince } from '../../guide/power.ts';
import { definitions } from '../../guide/steps.ts';
import type { Form } from '../../record/step-answers.ts';
import { isMeasurement, provedInEachStretch, stepForms } from '../../record/step-forms.ts';
import { stretchAt } from '../../record/stretch.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { problemTexts, stepTexts, symptomTexts } from '../../texts/guide-steps.ts';
import { AskedStep } from './AskedStep.tsx';
import { changedBefore } from './changed-before.ts';
import { LookAgain } from './LookAgain.tsx';
import { MeasuredStep } from './MeasuredStep.tsx';
import { recordAnswers, stepAnswer } from './record-answers.ts';
import { isAsked } from './step-fields.ts';
import { stepLine } from './step-line.ts';

interface Props {
  id: StepId;
  visit: VisitRecord;
  guide: GuideState;
  /** Each key; `onEnter` comes once what was typed has settled. */
  onTyped: (form: Form) => void;
  /** When the page last looked at the clock. */
  now: string;
  onEnter: (form: Form) => void;
  onConfirm: () => void;
}

/** An open step: cautions first, then what to do and why, the questions or the calculator, and what is still missing. */
export function StepBody({ id, visit, guide, now, onTyped, onEnter, onConfirm }: Props) {
  const { instructions, why, caution } = stepTexts[id];
  const step = guide.path.find((one) => one.id === id);
  const stretch = stretchAt(visit, now);
  const form = visit.steps[id]?.form ?? {};
  const begun = Object.values(form).some((value) => value.trim() !== '');
  const stale = provedInEachStretch(id) && begun && (visit.steps[id]?.stretch ?? stretch) < stretch;
  // What is measured anew is not shown as it was: nothing of it may be taken for measured now.
  const record = recordAnswers(visit, now);
  // A lockout whose own answer is good, but a later reading found the bus charged.
  const refuted = isDeadProof(id) && step?.status === 'problem' && busProofProblem(record, id) === undefined;
  const anew = stale || refuted || (step?.status === 'check-again' && 'busVoltage' in stepForms[id]);
  const [restarts, setRestarts] = useState(0);
  const restart = () => {
    onEnter({});
    setRestarts(restarts + 1);
  };
  return (
    <>
      {stale && step !== undefined && step.status === 'done' && (
        <p>Kept as it was found then: {stepLine(id, visit.steps[id])}.</p>
      )}
      {step !== undefined && (step.status === 'check-again' || refuted || (stale && step.status !== 'done')) && (
        <LookAgain
          id={id}
          numbers={changedBefore(visit, guide.path, id)}
          provedAt={visit.steps[id]?.at}
          stale={stale}
          undone={undoneSince(record, id)}
          refuted={refuted}
          onConfirm={onConfirm}
          onRestart={restart}
        />
      )}
      {step === undefined && (
        <p class="left-note">
          This step is not on the way now: something else comes first, or your answers lead elsewhere. It is kept in the
          record, and it does not count meanwhile.
        </p>
      )}
      {caution && (
        <div class="caution" data-kind={givesPower(id) ? 'danger' : 'caution'} role="note">
          <p class="caution-word">{givesPower(id) ? 'Danger' : 'Caution'}</p>
          <p>{caution}</p>
        </div>
      )}
      <ul class="step-instructions">
        {instructions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p class="step-why">{why}</p>
      {isAsked(id) && !anew && (
        <AskedStep
          // A break while the form is open ends it: what was ticked before it does not count after it.
          key={`${restarts} ${provedInEachStretch(id) ? stretch : ''}`}
          id={id}
          start={form}
          onTyped={onTyped}
          onSettled={onEnter}
        />
      )}
      {isMeasurement(id) && (
        <MeasuredStep
          // So does a bus reading that was filled in before it.
          key={id === 'bridge' ? stretch : ''}
          id={id}
          visit={visit}
          now={now}
          askToLeaveOpen={step?.problem === 'undecided' || step?.problem === 'part-open' || form.leftOpen === 'yes'}
          onTyped={onTyped}
          onSettled={onEnter}
        />
      )}
      {id === 'symptom' && <Likely form={form} />}
      {(id === 'find-drive' || id === 'support-axis') && <Served visit={visit} />}
      <p class="step-problem" role="status">
        {step && !stale && missing(step, form)}
      </p>
    </>
  );
}

/** The steps that need power carry the heavier mark. */
function givesPower(id: StepId): boolean {
  return (
    id.startsWith('support-') || (id in definitions && definitions[id as keyof typeof definitions].energy !== 'none')
  );
}

/** What keeps the visit from going on; nothing while the person has not begun. */
function missing({ id, status, problem }: PathStep, form: Form): string | undefined {
  if (problem !== undefined) return problemTexts[problem];
  const begun = Object.values(form).some((value) => value !== '');
  return status === 'due' && begun && isAsked(id) ? 'Answer the questions that are still open, then go on.' : undefined;
}

function Likely({ form }: { form: Form }) {
  const answer = stepAnswer('symptom', { ...form, gravityLoaded: 'unknown' });
  return answer === undefined ? null : (
    <p class="likely">
      <b>The moment:</b> {symptomTexts[answer.when].label}. <b>What it makes likely:</b>{' '}
      {symptomTexts[answer.when].likely}
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
