import type { InputAssessment } from '../../calculators/input-circuit/rule/input.ts';
import type { VisitAnswers } from '../steps/questions.ts';

function assessed(visit: VisitAnswers): InputAssessment | undefined {
  return visit['input-circuit']?.answer.assessment;
}

/** Fuses or the breaker opened with the trip. */
export function protectionOpened(visit: VisitAnswers): boolean {
  return visit.symptom?.answer.protection === 'opened';
}

/** The input is to be measured: something opened before it, or it was measured on another way and did not pass. */
export function wantsInput(visit: VisitAnswers, record: VisitAnswers): boolean {
  return protectionOpened(visit) || (assessed(record)?.verdict ?? 'go') !== 'go';
}

/** No power into what may be a short: a reading fails, or something opened and nothing shows that the input is sound. */
export function inputSpeaksAgainst(record: VisitAnswers): boolean {
  const verdict = assessed(record)?.verdict;
  return verdict === 'no-go' || (protectionOpened(record) && verdict !== 'go');
}

/** Something in the drive fails, not only a fuse before it. */
function failsInside(visit: VisitAnswers): boolean {
  return assessed(visit)?.findings.some(({ severity, code }) => severity === 'fail' && code !== 'fuse-open') === true;
}

/** A short of rectifier, bus or precharge, read twice, with all else off: the calculator asks for another drive then. */
export function inputConvicts(visit: VisitAnswers): boolean {
  const assessment = assessed(visit);
  return assessment?.verdict === 'no-go' && assessment.next.some(({ code }) => code === 'replace-drive');
}

export function inputSuspects(visit: VisitAnswers): boolean {
  return failsInside(visit) && !inputConvicts(visit);
}

/** Not known whether the input is sound, though something opened before it. */
export function inputOpen(visit: VisitAnswers): boolean {
  const verdict = assessed(visit)?.verdict;
  return verdict === 'undecided' || (protectionOpened(visit) && verdict === undefined);
}

/** A fuse is open and nothing in the drive says why. */
export function fusesOpen(visit: VisitAnswers): boolean {
  return assessed(visit)?.verdict === 'no-go' && !failsInside(visit);
}
