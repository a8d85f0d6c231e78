import { changedBefore } from './changed-before.ts';
import { type EvaluatedForm, evaluateForm, isEmpty } from './evaluate-form.ts';
import { nextBaselineStep } from './guide/baseline.ts';
import { busProofProblem, isDeadProof } from './guide/dead-proofs.ts';
import { type GuideState, nextStep } from './guide/next-step.ts';
import type { PathStep } from './guide/path.ts';
import { type SnapshotDifference, snapshotDiffers } from './record/snapshot-differs.ts';
import { stretchAt } from './record/stretch.ts';
import type { VisitRecord } from './record/visit-schema.ts';
import { type StepId, stepIds } from './steps/ids.ts';
import { isMeasured, type VisitAnswers } from './steps/questions.ts';
import { holdsOneStretch, rules } from './steps/rules.ts';

/** One step of a visit: the meaning of its form, and its relation to the other steps. */
export interface EvaluatedStep extends EvaluatedForm {
  /** Its entry in the path; undefined while it is not on the way. */
  onWay: PathStep | undefined;
  /** It was proved in an earlier stretch of work and no longer holds. */
  stale: boolean;
  /** A lockout with a good answer, but a later reading found the bus charged. */
  refuted: boolean;
  /** A later answer has undone what this step did. */
  undone: boolean;
  /** The numbers on the way, from 1, of the steps that it rests on and that were changed after it. */
  changedBefore: number[];
  /** Earlier proofs, from earlier stretches of work, the oldest first: time and line. */
  provedBefore: { at: string; line: string }[];
}

/** Everything computed from the record of a visit; screen, report and decision use only this. */
export interface EvaluatedVisit {
  visit: VisitRecord;
  /** The stretch of work at the time of the evaluation. */
  stretch: number;
  answers: VisitAnswers;
  /** The way, the step that is due and what its answer lacks, the decision. */
  guide: GuideState;
  /** Every step, answered or not. */
  steps: Record<StepId, EvaluatedStep>;
  /** The steps whose stored verdict differs from what their readings give today. */
  differs: SnapshotDifference[];
}

/**
 * Evaluates a visit from its typed texts at `now`, an ISO time with offset; snapshots are ignored. Measured steps whose
 * form is the same object as in `previous` are not assessed again.
 */
export function evaluate(visit: VisitRecord, now: string, previous?: EvaluatedVisit): EvaluatedVisit {
  const stretch = stretchAt(visit, now);
  const forms = eachStep((id) => formOf(visit, id, previous));
  const answers = answersOf(visit, stretch, forms);
  const guide = visit.purpose === 'baseline' ? nextBaselineStep(answers) : nextStep(answers);
  return {
    ...{ visit, stretch, answers, guide },
    steps: eachStep((id) => ({ ...forms[id], ...relationsOf(visit, stretch, answers, guide, id) })),
    differs: snapshotDiffers(visit, (id) => forms[id].snapshot),
  };
}

function eachStep<T>(of: (id: StepId) => T): Record<StepId, T> {
  return Object.fromEntries(stepIds.map((id) => [id, of(id)])) as Record<StepId, T>;
}

function formOf(visit: VisitRecord, id: StepId, previous: EvaluatedVisit | undefined): EvaluatedForm {
  const { form = {}, readAt = {} } = visit.steps[id] ?? {};
  if (previous !== undefined && isMeasured(id) && previous.visit.steps[id]?.form === visit.steps[id]?.form) {
    const { answer, outcome, snapshot, line } = previous.steps[id];
    return { answer, outcome, snapshot, line };
  }
  return evaluateForm(id, form, readAt);
}

function answersOf(visit: VisitRecord, stretch: number, forms: Record<StepId, EvaluatedForm>): VisitAnswers {
  const answers = stepIds.flatMap((id) => {
    const step = visit.steps[id];
    const { answer } = forms[id];
    if (step === undefined || answer === undefined) return [];
    return [[id, { seq: step.seq, answer, ...(step.stretch < stretch && { earlier: true }) }] as const];
  });
  return Object.fromEntries(answers) as VisitAnswers;
}

function relationsOf(
  visit: VisitRecord,
  stretch: number,
  answers: VisitAnswers,
  { path }: GuideState,
  id: StepId,
): Omit<EvaluatedStep, keyof EvaluatedForm> {
  const step = visit.steps[id];
  const onWay = path.find((one) => one.id === id);
  return {
    onWay,
    stale: holdsOneStretch(id) && step !== undefined && !isEmpty(step.form) && step.stretch < stretch,
    refuted: isDeadProof(id) && onWay?.status === 'problem' && busProofProblem(answers, id) === undefined,
    undone: answers[id] !== undefined && rules[id].undone?.(answers) === true,
    changedBefore: changedBefore(visit, path, id),
    provedBefore: (step?.provedBefore ?? []).map(({ at, form }) => ({ at, line: evaluateForm(id, form).line })),
  };
}
