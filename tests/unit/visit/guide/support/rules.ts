import type { Part } from '../../../../../src/kernel/vocabulary.ts';
import type { Decision } from '../../../../../src/visit/guide/decision.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import { against } from './against.ts';
import { machineAfter, powering, touching } from './machine.ts';
import { proven } from './proof.ts';
import { type Given, visitOf } from './visit.ts';

/** A rule in words, and whether it holds. */
export type Rule = [sentence: string, holds: boolean];

/**
 * What must be true of the machine and of the evidence before this step may be asked for. `visit`: the answers on the
 * way; `history`: every answer as it stands, in the order of its last change; `breakAt`: how many of them were given
 * before the last break.
 */
export function dueRules(due: StepId, visit: VisitAnswers, history: readonly Given[], breakAt = 0): Rule[] {
  const machine = machineAfter(history, breakAt);
  const record = visitOf(history);
  const rules: Rule[] = [];
  if (touching.has(due)) {
    rules.push(['conductors only after lockout, wait and low readings since the last power and break', machine.dead]);
    const undisturbed = [...machine.chargedBy].every((id) => id === due);
    rules.push(['conductors only after the bus is measured again since it can have been charged', undisturbed]);
  }
  if (touching.has(due) || powering.has(due)) {
    const held = !machine.mayFall || machine.supported;
    rules.push(['nothing is touched or switched on before every axis that may fall is supported', held]);
  }
  if (due === 'retry-all') {
    rules.push(['no axis is tried as a whole without its feedback', machine.feedbackIn]);
    rules.push(['no axis is tried while cores of brake and sensor are off or on PE', machine.idleCoresBack]);
    rules.push(['no axis is tried while something is still off the drive', !machine.stripped]);
  }
  if (powering.has(due)) {
    const facts = against(record, due, machine.leadsOn);
    rules.push([`no power while anything in the record speaks against it: ${facts.join(', ')}`, facts.length === 0]);
    rules.push(['no power with the PE core off', machine.peOn]);
    if (due === 'retry-leads-off' || due === 'retry-stripped')
      rules.push(['an enable without the motor only with its leads off', !machine.leadsOn]);
    // Stripped, the drive is enabled too, unless it trips with the control off.
    const enabledAlone = due === 'retry-stripped' && record.symptom?.answer.when !== 'control-off';
    if (due === 'retry-leads-off' || enabledAlone) {
      const passed = (['bridge', 'winding'] as const).every((id) => record[id]?.answer.assessment.verdict === 'go');
      rules.push(['an enable without the motor only if output stage and winding passed', passed]);
    }
    if (due === 'retry-stripped')
      rules.push(['a stripped drive is tried only after it was stripped', machine.stripped]);
  }
  // Nobody knows what was done in a break.
  if (powering.has(due)) rules.push(['power after a break only once it was proved dead', machine.seenSinceBreak]);
  if (due === 'reconnect' || due === 'retry-all') {
    // Its last result does not speak against repeating it.
    const { [due]: _own, ...others } = visit;
    const { passed, bad, suspect } = proven(others, record);
    rules.push(['motor connected and powered only if bridge, insulation and winding passed', passed]);
    rules.push(['motor connected and powered only if nothing is proven bad', bad.size === 0]);
    rules.push(['motor connected and powered only if nothing is suspect', suspect.size === 0]);
    const facts = against(record, 'retry-all', true);
    rules.push([`nothing is connected while the record speaks against it: ${facts.join(', ')}`, facts.length === 0]);
  }
  return rules;
}

/** What must be true of every decision. */
export function decisionRules(decision: Decision, visit: VisitAnswers, record: VisitAnswers): Rule[] {
  const { kind, replace, suspect, excluded, possible, good, open } = decision;
  const suspected = suspect.map(({ part }) => part);
  const evidence = proven(visit, record);
  const replaced = replace.map(({ part }) => part);
  const bad = (part: Part) => replaced.includes(part) || suspected.includes(part);
  const rules: Rule[] = [
    [`the kind of decision is what the evidence says: ${evidence.kind}, not ${kind}`, kind === evidence.kind],
    ['only a decision to replace names a part to replace', (kind === 'replace') === replaced.length > 0],
    ['no part is replaced without two readings against it', replaced.every((part) => evidence.bad.has(part))],
    [
      `what one reading speaks against is suspect: ${[...evidence.suspect]}, not ${suspected}`,
      [...evidence.suspect].sort().join() === [...suspected].sort().join(),
    ],
    ['a suspect part tells its reasons', suspect.every(({ reasons }) => reasons.length > 0)],
    ['no part is excluded that something speaks against', excluded.every(({ part }) => !bad(part))],
    ['every exclusion names its reading', excluded.every(({ by }) => by.length > 0 && by.every((id) => visit[id]))],
    ['without proof the possible causes are named', (possible.length === 0) === (kind === 'replace')],
    ['no proven part is missed', [...evidence.bad].every((part) => replaced.includes(part))],
    ['every part that is replaced tells its proof', replace.every(({ proofs }) => proofs.length > 0)],
    ['no part is good and replaced or suspect at once', good.every((part) => !bad(part))],
    ['good is only what was measured and nothing speaks against', good.every((part) => evidence.mayBeGood.has(part))],
    ['undecided names what is open or suspect', kind !== 'undecided' || open.length + suspect.length > 0],
    ['no fault found leaves nothing open', kind !== 'no-fault-found' || open.length === 0],
    [
      'no fault found only where nothing in the record speaks against power',
      kind !== 'no-fault-found' || against(record, 'retry-all', true).length === 0,
    ],
  ];
  const seen = visit.inspect?.answer.seen;
  const named = (part: 'motor' | 'motor-cable', own: 'motor-damaged' | 'cable-damaged') =>
    replaced.includes(part) || open.includes(own);
  if (seen?.motor !== 'nothing') rules.push(['a motor seen damaged is named', named('motor', 'motor-damaged')]);
  if (seen?.motorCable !== 'nothing') {
    rules.push(['a motor cable seen damaged is named', named('motor-cable', 'cable-damaged')]);
  }
  if (kind !== 'replace' || settledByFeedback(visit)) return rules;
  const told = (part: 'motor' | 'motor-cable', own: 'motor-open' | 'cable-open') =>
    bad(part) ||
    good.includes(part) ||
    open.some((item) =>
      [
        own,
        'insulation-open',
        'winding-open',
        'motor-damaged',
        'cable-damaged',
        'measure-hot',
        'bend-test-open',
      ].includes(item),
    );
  rules.push(['one bad part never excuses the motor', told('motor', 'motor-open')]);
  rules.push(['one bad part never excuses the motor cable', told('motor-cable', 'cable-open')]);
  return rules;
}

/** The feedback explains the trip, and motor and cable look sound: they need no test. */
function settledByFeedback(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen;
  const goneWithCable = visit['retry-feedback-off']?.answer.result === 'no-trip' && seen?.feedbackCable !== 'nothing';
  const told = visit['retry-device-end'] !== undefined || goneWithCable;
  return told && seen?.motor === 'nothing' && seen.motorCable === 'nothing';
}
