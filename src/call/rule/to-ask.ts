import type { Symptom } from '../../kernel/vocabulary.ts';
import { type CallFacts, changedBefore } from './facts.ts';

/** What is still to be asked. */
export type Question =
  | 'can-fall'
  | 'propped'
  | 'moment'
  | `detail-${Symptom}`
  | 'again'
  | 'count'
  | 'changed'
  | 'shared-drive'
  | 'message'
  | 'tried'
  | 'seen'
  | 'plates'
  | 'switcher'
  | 'high'
  | 'spares'
  | 'until';

/** In the order of what the answers decide: who could be hurt, what is suspect, what to bring, when to come. */
export function openQuestions(facts: CallFacts): Question[] {
  const { moment, again, came, of, canFall, propped, noted, seen, nothingSeen } = facts;
  const asked: [Question, boolean][] = [
    ['can-fall', canFall === undefined],
    ['propped', canFall !== 'no' && propped === undefined],
    ['moment', moment === undefined && !facts.momentUnseen],
    [`detail-${moment ?? 'now-and-then'}`, moment !== undefined && !noted.detail],
    ['again', again === undefined],
    ['count', (came === undefined || of === undefined) && again !== 'once'],
    ['changed', changedBefore(facts) === undefined],
    ['shared-drive', facts.sharedDrive === undefined],
    ['message', !noted.message],
    ['tried', Object.keys(facts.tried).length === 0],
    ['seen', seen.length === 0 && !nothingSeen],
    ['plates', !noted.plates],
    ['switcher', facts.switcher === undefined],
    ['high', facts.high === undefined],
    ['spares', !noted.spares],
    ['until', !noted.until],
  ];
  return asked.filter(([, open]) => open).map(([question]) => question);
}
