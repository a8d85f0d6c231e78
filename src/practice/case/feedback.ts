import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { Part } from '../../kernel/vocabulary.ts';
import type { Decision } from '../../visit/guide/decision.ts';
import { nextStep } from '../../visit/guide/next-step.ts';
import type { Proof } from '../../visit/guide/proofs.ts';
import type { StepId } from '../../visit/steps/ids.ts';
import type { MeasurementAnswer } from '../../visit/steps/measurements/question.ts';
import type { Answered, Answers, VisitAnswers } from '../../visit/steps/questions.ts';
import { Robot } from '../robot/robot.ts';
import { FieldMachine } from '../world/field-machine.ts';
import { asTold } from '../world/person.ts';
import { decodeCase } from './case-code.ts';
import type { CaseRun } from './case-run.ts';
import type { Conclusion, Judgement } from './conclusion.ts';
import { drawMachine } from './draw-machine.ts';
import { judgeConclusion } from './judge-conclusion.ts';
import type { Machine } from './machine.ts';
import type { Purpose } from './purpose.ts';
import { measuredSteps, type TimedAct, timeLine } from './time-line.ts';

type SettlingStep = 'bridge' | 'insulation' | 'isolation' | 'winding' | 'winding-motor';

/** The failed findings of a step whose readings carry a proof. */
export type Settled = {
  [Step in SettlingStep]: { step: Step; findings: Answers[Step]['assessment']['findings'] };
}[SettlingStep];

/** One step of the shortest sound way. */
export interface WayStep {
  step: StepId;
  /** True for a measurement that the person did not take. */
  leftOut: boolean;
  /** The readings of this step that settle the case, on an axis that nobody has damaged. */
  settled?: Settled;
}

export interface Feedback {
  conclusion: Conclusion;
  judgement: Judgement;
  truth: { label: string; bad: Part[] };
  over: Part[];
  missed: Part[];
  hurtDrive: boolean;
  /** Every act in order, with what it was worth. */
  line: TimedAct[];
  /** The shortest sound way: what the guide asks of a careful person on this case, in order. */
  way: WayStep[];
  /** What the guide decides at the end of that way. */
  decision: Decision;
}

/** The step whose readings carry a proof; proofs that are missing here need no reading. */
const stepOf: Partial<Record<Proof, SettlingStep>> = {
  'bridge-bad': 'bridge',
  'isolation-bad': 'isolation',
  'winding-bad-at-motor': 'winding-motor',
  'winding-good-without-cable': 'winding',
  'pe-broken': 'insulation',
};

/** The feedback at the end. The robot plays the same case again, on an axis that nobody has damaged. */
export function feedback(run: CaseRun, conclusion: Conclusion): Feedback {
  const key = decodeCase(run.code);
  if (key === undefined) throw new Error(`no case ${run.code}`);
  const sound = drawMachine(key.fault, key.seed, key.windingCelsius);
  const { decision, answers } = robotOf(sound).visit();
  const path = nextStep(answers).path.map(({ id }) => id);
  const { axis, hurtDrive } = run.machine;
  const wet = axis.leaks.some(({ a }) => a.startsWith('mated.'));
  const purposes = new Set<Purpose>(run.entries.flatMap(({ purpose }) => purpose ?? []));
  const settled = settledBy(decision, answers);
  return {
    conclusion,
    ...judgeConclusion(conclusion, { bad: axis.bad, hurtDrive, wet }, decision, purposes, neededOn(path)),
    truth: { label: axis.label, bad: axis.bad },
    hurtDrive,
    line: timeLine(run.entries, path, [...settled.keys()]),
    way: path.map((step) => {
      const here = settled.get(step);
      return {
        step,
        leftOut: measuredSteps.includes(step) && !purposes.has(step),
        ...(here && { settled: here }),
      };
    }),
    decision,
  };
}

/** On an axis of the field the robot works as a person without slips does. */
function robotOf(machine: Machine): Robot {
  return machine instanceof FieldMachine
    ? new Robot(machine, (id, act) => asTold(id, act, machine))
    : new Robot(machine);
}

/** The measurements that this path needs; its trials if it has no measurement. */
function neededOn(path: readonly StepId[]): StepId[] {
  const measured = measuredSteps.filter((id) => path.includes(id));
  return measured.length > 0 ? measured : path.filter((id) => id.startsWith('retry-'));
}

function settledBy({ replace }: Decision, answers: VisitAnswers): Map<StepId, Settled> {
  const steps = replace.flatMap(({ proofs }) => proofs.flatMap((proof) => stepOf[proof] ?? []));
  return new Map(steps.map((step) => [step, settledAt(step, answers)]));
}

function settledAt(step: SettlingStep, answers: VisitAnswers): Settled {
  switch (step) {
    case 'bridge':
      return { step, findings: failedIn(answers[step]) };
    case 'insulation':
      return { step, findings: failedIn(answers[step]) };
    case 'isolation':
      return { step, findings: failedIn(answers[step]) };
    default:
      return { step, findings: failedIn(answers[step]) };
  }
}

function failedIn<A extends Assessment>(given: Answered<MeasurementAnswer<A>> | undefined): A['findings'] {
  return given?.answer.assessment.findings.filter(({ severity }) => severity === 'fail') ?? [];
}
