import { isolationSuspects } from '../guide/convictions.ts';
import { isolationClears, pointsAtCableOrMotor } from '../guide/evidence.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { reportTexts } from '../words/visit.ts';

export interface JoinedPart {
  part: 'Motor' | 'Motor cable';
  tested: boolean;
  text: string;
}

/**
 * Whether motor and cable were tested, in one sentence each: the next drive must not be joined to an untested part.
 */
export function joinedParts(answers: VisitAnswers): JoinedPart[] {
  return [line(answers, 'Motor', 'motor'), line(answers, 'Motor cable', 'cable')];
}

function line(answers: VisitAnswers, part: JoinedPart['part'], which: 'motor' | 'cable'): JoinedPart {
  const isolation = answers.isolation?.answer.assessment;
  const joined = answers.insulation?.answer.assessment.verdict;
  if (isolation?.parts[which] === 'proven-bad') {
    return { part, tested: true, text: reportTexts.aloneAndBad };
  }
  if (isolationSuspects(answers, which)) return { part, tested: true, text: reportTexts.aloneAndSuspect };
  if (isolation?.parts[which] === 'proven-good') return { part, tested: true, text: reportTexts.aloneAndPassed };
  const doubted = joined === 'go' && pointsAtCableOrMotor(answers);
  const clear = isolation === undefined ? joined === 'go' && !doubted : isolationClears(answers, which);
  if (clear) return { part, tested: true, text: reportTexts.togetherAndPassed };
  return { part, tested: false, text: reportTexts.missing(whyMissing(joined, doubted)) };
}

function whyMissing(joined: string | undefined, doubted: boolean): string {
  if (doubted) return reportTexts.doubted;
  if (joined === 'no-go') return reportTexts.joinedFails;
  return reportTexts.noTest;
}
