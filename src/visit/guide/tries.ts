import { limitValue } from '../../kernel/limits.ts';
import type { Symptom } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { PowerStepId, RetryAnswer } from '../steps/retry.ts';

/**
 * How many tries show whether a trip is still there, when it came `came` times `of` so many starts or moves: the least number
 * of tries in which it would stay away by chance in at most one of twenty visits. Its share is counted as if one more start
 * had brought no trip, and as at most 65 %, since few starts can't show that it comes every time. Undefined if it is not known how often it came: then tries prove
 * nothing.
 */
export function triesNeeded(came: number | undefined, of: number | undefined): number | undefined {
  if (came === undefined || of === undefined || came < 1 || of < came) return undefined;
  const share = Math.min(came / (of + 1), limitValue('retry-share-cap') / 100);
  return Math.ceil(Math.log(limitValue('retry-doubt') / 100) / Math.log(1 - share));
}

/** As `triesNeeded`, for the trip of this visit. */
export function triesNeededIn(visit: VisitAnswers): number | undefined {
  const symptom = visit.symptom?.answer;
  return triesNeeded(symptom?.came, symptom?.of);
}

const stageOf: Record<Symptom, NonNullable<RetryAnswer['stage']>> = {
  'control-off': 'at-power',
  'on-enable': 'at-enable',
  'on-acceleration': 'moving',
  'on-braking': 'moving',
  'position-or-cable': 'moving',
  'when-hot': 'moving',
  'now-and-then': 'moving',
};

/** The same message came at least once. */
export function trips(visit: VisitAnswers, id: PowerStepId): boolean {
  return visit[id]?.answer.result === 'trips';
}

/** The same message came in every one of enough tries, at the stage that the visit is about. */
export function tripsEveryTime(visit: VisitAnswers, id: PowerStepId): boolean {
  const answer = visit[id]?.answer;
  const symptom = visit.symptom?.answer;
  if (answer === undefined || symptom === undefined || answer.result !== 'trips') return false;
  const { tries = 1, trips: came = 1, stage } = answer;
  return came >= tries && enough(visit, tries) && symptom.when !== 'unknown' && stage === stageOf[symptom.when];
}

/** No try of enough tries brought the trip. */
export function staysAway(visit: VisitAnswers, id: PowerStepId): boolean {
  const answer = visit[id]?.answer;
  return answer?.result === 'no-trip' && enough(visit, answer.tries ?? 1);
}

function enough(visit: VisitAnswers, tries: number): boolean {
  const needed = triesNeededIn(visit);
  return needed !== undefined && tries >= needed;
}
