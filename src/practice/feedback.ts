import type { Finding } from '../calc/index.ts';
import type { StepId, VisitAnswers } from '../guide/answers.ts';
import type { Decision } from '../guide/decision.ts';
import type { Part, Proof } from '../guide/evidence.ts';
import { nextStep } from '../guide/next-step.ts';
import { decodeCase } from './case-code.ts';
import type { Conclusion, Judgement } from './conclusion.ts';
import type { Unsafe } from './judge.ts';
import { judge } from './judgement.ts';
import { type Purpose, type Void, voidPurposes } from './purpose.ts';
import { Robot } from './robot/robot.ts';
import type { Session } from './session.ts';
import { setUp } from './set-up.ts';

/** What happened, and in which acts, counted from 1. */
export interface Noted<Code> {
  code: Code;
  at: number[];
}

export interface Feedback {
  conclusion: Conclusion;
  judgement: Judgement;
  truth: { label: string; bad: Part[] };
  over: Part[];
  missed: Part[];
  unsafe: Noted<Unsafe>[];
  hurtDrive: boolean;
  /** Hook-ups that told nothing, and measurements repeated with nothing changed. */
  unneeded: Noted<Void | 'again'>[];
  /** Measurements that this case did not need. */
  notAsked: Noted<StepId>[];
  /** Measured steps of the shortest sound path that the person did not take. */
  leftOut: StepId[];
  /** The shortest sound path: what the guide asks of a careful person on this case, in order. */
  path: StepId[];
  acts: number;
  /** What the guide decides at its end. */
  decision: Decision;
  /** The readings that settled it on that path, as findings. */
  settled: { step: StepId; findings: Finding[] }[];
}

const measuredSteps: readonly StepId[] = ['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'];

/** The step whose readings carry a proof; the other proofs need no reading. */
const stepOf: Partial<Record<Proof, StepId>> = {
  'bridge-bad': 'bridge',
  'isolation-bad': 'isolation',
  'winding-bad-at-motor': 'winding-motor',
  'winding-good-without-cable': 'winding',
  'pe-broken': 'insulation',
};

/** What a person is told at the end. The guide plays the same case anew, on an axis that nobody has hurt. */
export function feedback(session: Session, conclusion: Conclusion): Feedback {
  const key = decodeCase(session.code);
  if (key === undefined) throw new Error(`no case ${session.code}`);
  const sound = setUp(key.fault, key.seed, key.windingCelsius);
  const { decision, answers } = new Robot(sound).visit();
  const path = nextStep(answers).path.map(({ id }) => id);
  const { axis, hurtDrive } = session.world;
  const wet = axis.leaks.some(({ a }) => a.startsWith('mated.'));
  const purposes = new Set<Purpose>(session.entries.flatMap(({ purpose }) => purpose ?? []));
  const notAsked = measuredSteps.filter((id) => purposes.has(id) && !path.includes(id));
  return {
    conclusion,
    ...judge(conclusion, { bad: axis.bad, hurtDrive, wet }, decision, purposes, neededOn(path)),
    truth: { label: axis.label, bad: axis.bad },
    unsafe: noted(session, ({ unsafe }) => unsafe),
    hurtDrive,
    unneeded: noted(session, ({ purpose, again }) => {
      if (purpose !== undefined && voidPurposes.includes(purpose)) return [purpose as Void];
      return again ? ['again'] : [];
    }),
    notAsked: noted(session, ({ purpose }) => notAsked.filter((id) => id === purpose)),
    leftOut: measuredSteps.filter((id) => path.includes(id) && !purposes.has(id)),
    path,
    acts: session.entries.length,
    decision,
    settled: settledBy(decision, answers),
  };
}

function noted<Code extends string>(
  session: Session,
  of: (entry: Session['entries'][number]) => Code[],
): Noted<Code>[] {
  const all = new Map<Code, number[]>();
  session.entries.forEach((entry, position) => {
    for (const code of new Set(of(entry))) all.set(code, [...(all.get(code) ?? []), position + 1]);
  });
  return [...all].map(([code, at]) => ({ code, at }));
}

/** What has to be measured on this path, or tried where it measures nothing. */
function neededOn(path: readonly StepId[]): StepId[] {
  const measured = measuredSteps.filter((id) => path.includes(id));
  return measured.length > 0 ? measured : path.filter((id) => id.startsWith('retry-'));
}

function settledBy({ replace }: Decision, answers: VisitAnswers): Feedback['settled'] {
  const steps = new Set(replace.flatMap(({ proofs }) => proofs.flatMap((proof) => stepOf[proof] ?? [])));
  return [...steps].map((step) => {
    const answer = answers[step]?.answer;
    const findings: Finding[] = answer !== undefined && 'assessment' in answer ? answer.assessment.findings : [];
    return { step, findings: findings.filter(({ severity }) => severity === 'fail') };
  });
}
