import { limitValue } from '../../kernel/limits.ts';
import { intervalOf } from '../../kernel/reading/interval.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import type { VisitAnswers } from '../steps/questions.ts';

/** Whether an idle core with this lowest reading, in Ω, is free of U, V, W and PE; `unclear` without a lower bound. */
export function idleCoreFree(lowest: Reading): 'free' | 'low' | 'unclear' {
  const { lo, hi } = intervalOf(lowest);
  const limit = limitValue('idle-core-free');
  if (lo >= limit) return 'free';
  return hi < limit ? 'low' : 'unclear';
}

/** A core of brake or sensor touches a phase or PE: then nothing gets power. */
export function idleCoreLow(record: VisitAnswers): boolean {
  const answer = record['idle-cores']?.answer;
  return answer?.cores === 'measured' && idleCoreFree(answer.lowest) === 'low';
}

/** Whether all idle cores were measured and are free, or the cable has none. */
export function idleCoresKnown(record: VisitAnswers): boolean {
  const answer = record['idle-cores']?.answer;
  return answer?.cores === 'none' || (answer?.cores === 'measured' && idleCoreFree(answer.lowest) === 'free');
}
