import { type FindingOf, findingMaker, type Nothing, type Verdict } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { windingPairs } from './pairs.ts';
import type { WindingSet } from './set.ts';

export interface AgainPayloads {
  'winding-not-confirmed': Nothing;
  'winding-again-confirms': Nothing;
  'winding-again-passes': Nothing;
  'winding-again-fails': Nothing;
  'winding-again-differs': Nothing;
  'winding-again-unclear': Nothing;
}

type AgainFinding = FindingOf<AgainPayloads>;

const finding = findingMaker<AgainPayloads>();

/** What a second set of readings, its terminals cleaned and its tips put on again, says of the first. */
export type AgainState = 'not-taken' | 'confirms' | 'passes' | 'fails' | 'differs' | 'unclear';

/**
 * Two sets that fail alike confirm each other. If one passes and the other fails, a contact changed between them: a
 * terminal, a pin or a tip. That leaves it undecided, whichever came first. A set that can't be judged rules out go
 * and never lifts a no-go.
 */
export function compareSets(first: WindingSet, second: WindingSet | undefined, twoLeads: boolean): AgainState {
  if (second === undefined) return 'not-taken';
  const verdicts: `${Verdict}, ${Verdict}` = `${first.verdict}, ${second.verdict}`;
  switch (verdicts) {
    case 'no-go, no-go':
      return failAlike(first, second, twoLeads) ? 'confirms' : 'differs';
    case 'no-go, go':
      return 'passes';
    case 'go, go':
      return 'confirms';
    case 'go, no-go':
    case 'undecided, no-go':
      return 'fails';
    default:
      return 'unclear';
  }
}

/** The same pairs open, or the same one odd, and no reading moved by more than a contact moves it. */
function failAlike(first: WindingSet, second: WindingSet, twoLeads: boolean): boolean {
  if (first.finite === undefined || second.finite === undefined) {
    return first.open.length > 0 && first.open.join() === second.open.join();
  }
  const [one, two] = [first.finite, second.finite];
  const contact = twoLeads ? limitValue('winding-two-lead-contact') : 0;
  const apart = limitValue('winding-again-agreement') / 100;
  const moved = windingPairs.some((pair) => {
    const [a, b] = [one.intervals[pair], two.intervals[pair]];
    return b.lo > a.hi * (1 + apart) + contact || a.lo > b.hi * (1 + apart) + contact;
  });
  // A pair that is odd to the other side has moved.
  return one.odd.name === two.odd.name && !moved;
}

/** `first` is the verdict of the first set alone. */
export function againFindings(state: AgainState, first: Verdict): AgainFinding[] {
  const readings = windingPairs.map((pair) => `again${pair}`);
  switch (state) {
    case 'not-taken':
      return first === 'no-go' ? [finding('winding-not-confirmed', 'note')] : [];
    case 'confirms':
      return [finding('winding-again-confirms', 'note', { readings, limits: ['winding-again-agreement'] })];
    case 'passes':
      return [finding('winding-again-passes', 'undecided', { readings })];
    case 'fails':
      return [finding('winding-again-fails', first === 'go' ? 'undecided' : 'fail', { readings })];
    case 'differs':
      return [finding('winding-again-differs', 'caution', { readings, limits: ['winding-again-agreement'] })];
    case 'unclear':
      return [finding('winding-again-unclear', first === 'go' ? 'undecided' : 'note', { readings })];
  }
}
