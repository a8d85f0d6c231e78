import { isolationClears, pointsAtCableOrMotor } from '../guide/evidence.ts';
import type { VisitAnswers } from '../steps/questions.ts';

export interface JoinedPart {
  part: 'Motor' | 'Motor cable';
  tested: boolean;
  text: string;
}

/**
 * Whether motor and cable were tested, in one sentence each. It says what the readings show, bad or good: the next drive
 * must not be joined to something that nobody knows.
 */
export function joinedParts(answers: VisitAnswers): JoinedPart[] {
  return [line(answers, 'Motor', 'motor'), line(answers, 'Motor cable', 'cable')];
}

function line(answers: VisitAnswers, part: JoinedPart['part'], which: 'motor' | 'cable'): JoinedPart {
  const isolation = answers.isolation?.answer.assessment;
  const joined = answers.insulation?.answer.assessment.verdict;
  if (isolation?.parts[which] === 'proven-bad') {
    return { part, tested: true, text: 'tested alone, and bad. It is not connected to a drive again.' };
  }
  if (isolation?.parts[which] === 'proven-good') return { part, tested: true, text: 'tested alone, and passed.' };
  const doubted = joined === 'go' && pointsAtCableOrMotor(answers);
  const clear = isolation === undefined ? joined === 'go' && !doubted : isolationClears(answers, which);
  if (clear) return { part, tested: true, text: 'tested together with the other, and passed.' };
  return { part, tested: false, text: `PROOF IS MISSING: ${whyMissing(joined, doubted)}` };
}

function whyMissing(joined: string | undefined, doubted: boolean): string {
  if (doubted)
    return 'the joined test passes, but the symptom or what was seen points here, and it was not tested alone.';
  if (joined === 'no-go') return 'the joined test fails, and whether it is this part was not decided.';
  return 'no test of it led to a decision.';
}
