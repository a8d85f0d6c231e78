import type { StepId, VisitAnswers } from '../../../../src/guide/answers.ts';
import type { Decision } from '../../../../src/guide/decision.ts';
import { machineAfter, powering, touching } from './machine.ts';
import { proven } from './proof.ts';
import type { Given } from './visit.ts';

/** A rule of issue 4 in words, and whether it holds. */
export type Rule = [sentence: string, holds: boolean];

/** What must be true of the machine and of the evidence before this step may be asked for. */
export function dueRules(due: StepId, visit: VisitAnswers, history: readonly Given[]): Rule[] {
  const machine = machineAfter(history);
  const rules: Rule[] = [];
  if (touching.has(due)) {
    rules.push(['conductors only after lockout, wait and a low bus since the last power', machine.safe]);
  }
  if (touching.has(due) || powering.has(due)) {
    const held = !machine.mayFall || machine.supported;
    rules.push(['nothing is touched or switched on before an axis that may fall is supported', held]);
  }
  if (due === 'retry-all') rules.push(['no axis is tried as a whole without its feedback', machine.feedbackIn]);
  if (powering.has(due)) {
    const drive = visit.inspect?.answer.seen.drive;
    rules.push(['only a drive that was looked at and looks sound is switched on', drive === 'nothing']);
  }
  if (due === 'reconnect' || due === 'retry-all') {
    const { passed, bad } = proven(visit);
    rules.push(['motor connected and powered only if bridge, insulation and winding passed', passed]);
    rules.push(['motor connected and powered only if nothing is proven bad', bad.size === 0]);
  }
  return rules;
}

/** What must be true of every decision. */
export function decisionRules(decision: Decision, visit: VisitAnswers): Rule[] {
  const { kind, replace, good, open } = decision;
  const evidence = proven(visit);
  const replaced = replace.map(({ part }) => part);
  const byExclusion = kind === 'inconclusive';
  const rules: Rule[] = [
    ['the kind of decision is what the evidence says', kind === evidence.kind],
    ['inconclusive replaces the drive alone', !byExclusion || replaced.join() === 'drive'],
    ['no part is replaced without proof', byExclusion || replaced.every((part) => evidence.bad.has(part))],
    ['no proven part is missed', [...evidence.bad].every((part) => replaced.includes(part))],
    ['every part that is replaced tells its proof', replace.every(({ proofs }) => proofs.length > 0)],
    ['no part is good and replaced at once', good.every((part) => !replaced.includes(part))],
    ['good is only what was measured and nothing speaks against', good.every((part) => evidence.mayBeGood.has(part))],
    ['undecided names what is open', kind !== 'undecided' || open.length > 0],
    ['no fault found leaves nothing open', kind !== 'no-fault-found' || open.length === 0],
  ];
  if (kind !== 'replace' || settledByFeedback(visit)) return rules;
  const told = (part: 'motor' | 'motor-cable', own: 'motor-open' | 'cable-open') =>
    replaced.includes(part) ||
    good.includes(part) ||
    open.some((item) => item === own || item === 'insulation-open' || item === 'winding-open');
  rules.push(['one bad part never excuses the motor', told('motor', 'motor-open')]);
  rules.push(['one bad part never excuses the motor cable', told('motor-cable', 'cable-open')]);
  return rules;
}

/** The feedback explains the trip, and motor and cable look sound: they need no test. */
function settledByFeedback(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen;
  return visit['retry-device-end'] !== undefined && seen?.motor === 'nothing' && seen.motorCable === 'nothing';
}
