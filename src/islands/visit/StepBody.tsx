import type { StepId } from '../../guide/answers.ts';
import type { GuideState, PathStep } from '../../guide/next-step.ts';
import { definitions } from '../../guide/steps.ts';
import type { Form } from '../../record/step-answers.ts';
import { isMeasurement } from '../../record/step-forms.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { problemTexts, stepTexts, symptomTexts } from '../../texts/guide-steps.ts';
import { AskedStep } from './AskedStep.tsx';
import { changedBefore } from './changed-before.ts';
import { MeasuredStep } from './MeasuredStep.tsx';
import { stepAnswer } from './record-answers.ts';
import { isAsked } from './step-fields.ts';

interface Props {
  id: StepId;
  visit: VisitRecord;
  guide: GuideState;
  onEnter: (form: Form) => void;
  onConfirm: () => void;
}

/** An open step: cautions first, then what to do and why, the questions or the calculator, and what is still missing. */
export function StepBody({ id, visit, guide, onEnter, onConfirm }: Props) {
  const { instructions, why, caution } = stepTexts[id];
  const step = guide.path.find((one) => one.id === id);
  const form = visit.steps[id]?.form ?? {};
  return (
    <>
      {step?.status === 'check-again' && (
        <LookAgain numbers={changedBefore(visit, guide.path, id)} onConfirm={onConfirm} />
      )}
      {step === undefined && (
        <p class="left-note">
          Your answers no longer lead to this step. It is kept in the record, and it does not count.
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
      {isAsked(id) && <AskedStep id={id} start={form} onSettled={(typed) => onEnter({ ...typed })} />}
      {isMeasurement(id) && (
        <MeasuredStep
          id={id}
          visit={visit}
          lockedBy={guide.conditions.lockedBy}
          askToLeaveOpen={step?.problem === 'undecided' || form.leftOpen === 'yes'}
          onSettled={onEnter}
        />
      )}
      {id === 'symptom' && <Likely form={form} />}
      <p class="step-problem" role="status">
        {step && problemOf(step)}
      </p>
    </>
  );
}

/** The steps that need power carry the heavier mark. */
function givesPower(id: StepId): boolean {
  return id === 'support-axis' || (id in definitions && definitions[id as keyof typeof definitions].energy !== 'none');
}

function problemOf({ problem }: PathStep): string | undefined {
  return problem && problemTexts[problem];
}

function LookAgain({ numbers, onConfirm }: { numbers: number[]; onConfirm: () => void }) {
  const steps = numbers.length === 0 ? 'an earlier step' : `step ${numbers.join(' and step ')}`;
  return (
    <div class="look-again">
      <p>You changed {steps} after this. Look again, or say that it still holds.</p>
      <button type="button" class="plain" onClick={onConfirm}>
        It still holds
      </button>
    </div>
  );
}

function Likely({ form }: { form: Form }) {
  const answer = stepAnswer('symptom', { ...form, gravityLoaded: 'unknown' });
  return answer === undefined ? null : (
    <p class="likely">
      <b>What it makes likely:</b> {symptomTexts[answer.when].likely}
    </p>
  );
}
