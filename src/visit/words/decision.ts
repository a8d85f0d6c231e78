import type { Shown } from '../../kernel/form/verdict-words.ts';
import type { Part } from '../../kernel/vocabulary.ts';
import { listed } from '../../kernel/words/sentences.ts';
import type { Decision, DecisionKind } from '../guide/decision.ts';
import { partNames } from './parts.ts';

export const neverSwap =
  'Never exchange parts between axes to find this fault. A bad motor or cable kills the good drive that you put on it, and then you have two.';

/** The shape beside the headline. */
export const decisionShapes: Record<DecisionKind, Shown> = {
  replace: 'no-go',
  inconclusive: 'undecided',
  'no-fault-found': 'go',
  mechanical: 'no-go',
  undecided: 'undecided',
};

const headlines: Record<DecisionKind, (parts: string) => string> = {
  replace: (parts) => `Replace: ${parts}.`,
  inconclusive: () => 'Inconclusive: it still trips, and these measurements do not find why. No part is replaced.',
  'no-fault-found': () => 'No fault found. Nothing is replaced.',
  mechanical: () => 'Mend the mechanics first. No part is replaced on this evidence.',
  undecided: () => 'Undecided. Do not order or replace anything yet.',
};

const correctedHeadline = 'Put right: what the change had left wrong. Nothing is replaced.';

export function decisionHeadline({ kind, replace, suspect, corrected }: Decision): string {
  if (kind === 'no-fault-found' && corrected) return correctedHeadline;
  const headline = headlines[kind](listed(replace.map(({ part }) => partNames[part])));
  if (kind !== 'undecided' || suspect.length === 0) return headline;
  return `${headline} Suspect, not proven: ${listed(suspect.map(({ part }) => partNames[part]))}.`;
}

/** The sentences after the headline: what follows from the decision, before power goes on again. */
export function decisionAdvice({ kind, replace, suspect, open, baseline, corrected }: Decision): string[] {
  const bad = (part: Part) => replace.some((one) => one.part === part);
  const advice: string[] = [];
  if (replace.length > 0) advice.push('Lock out again, wait, and measure the bus before any part is changed.');
  if (bad('drive')) {
    advice.push(
      'Replace the complete drive, not the power module alone: its control board is very likely damaged too.',
    );
  }
  if (bad('drive') && (bad('motor') || bad('motor-cable'))) {
    advice.push('Connect the new drive only after the bad motor and cable are replaced. They would destroy it.');
  }
  if (bad('motor') && bad('motor-cable')) advice.push('Replace motor and cable together: each would take the other.');
  if (bad('motor')) {
    advice.push(
      'Secure the axis before the motor comes off: its brake goes with it, and then nothing holds a hanging axis.',
    );
  }
  if (bad('motor') && !bad('motor-cable')) {
    advice.push(
      'Check the cores of the cable for continuity before the new motor is connected: the insulation test does not see a broken core.',
    );
  }
  if (bad('protective-conductor'))
    advice.push('Nothing is powered before the protective conductor is mended and measured.');
  if (kind === 'inconclusive') {
    advice.push(
      'No drive, motor or cable is ordered on this: most of what is left is none of them. Take the next measurement.',
    );
  }
  if (bad('drive')) {
    advice.push(
      'Before the new drive is enabled: parameters, safety functions with their test, and low limits of torque, speed and following error.',
    );
  }
  if (corrected) {
    advice.push(
      'Save the parameters as they are now, mark the leads, and write down what was wrong. If a safety function or its parameters were touched, have it tested by someone who may.',
    );
  }
  if (kind === 'no-fault-found') advice.push('If it trips again, start a new visit: compare its readings with these.');
  if (suspect.length > 0 && replace.length > 0) {
    advice.push('Nothing new is connected to a suspect part before it is measured again.');
  }
  if (open.length > 0 && kind === 'replace') advice.push('What is still open is settled before power goes on again.');
  if (baseline.length > 0) advice.push('Keep the readings of the parts that stay as the baseline of this axis.');
  return advice;
}
