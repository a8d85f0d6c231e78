import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { intervalShown } from '../../../kernel/reading/interval.ts';
import { within } from '../../../kernel/reading/spread.ts';
import { type LoopId, loopIds, type Sweep, type SweepState } from './input.ts';

/** Whether nothing of this movement was typed. */
function isBlank({ rest, lowest, highest, after }: Sweep): boolean {
  return [rest, lowest, highest, after].every(({ kind }) => kind === 'missing');
}

/**
 * One movement of a loop, in Ω. The readings at rest before and after must agree, or the tips have moved. All four come
 * from one meter on one pair of leads, so that its constant errors cancel: what counts is the change, and the last digit.
 */
export function judgeSweep(sweep: Sweep): SweepState {
  const { rest, lowest, highest, after } = sweep;
  if (isBlank(sweep)) return 'missing';
  const noise = limitValue('bend-noise');
  if (isOpenCircuit(rest, limitValue('bend-rest-most'))) return 'open-at-rest';
  if (rest.kind === 'missing' || after.kind === 'missing' || highest.kind === 'missing') return 'incomplete';
  if (isOpenCircuit(after, limitValue('bend-rest-most'))) return 'tips-moved';
  if (rest.kind === 'over' || after.kind === 'over') return 'over-range';
  const before = intervalShown(rest);
  const later = intervalShown(after);
  if (!within(later.lo - before.hi, noise) || !within(before.lo - later.hi, noise)) return 'tips-moved';
  const top = Math.max(before.hi, later.hi);
  const bottom = Math.min(before.lo, later.lo);
  const most = intervalShown(highest);
  if (highest.kind === 'over') {
    return isOpenCircuit(highest, top + limitValue('bend-jump')) ? 'jumps' : 'over-range';
  }
  if (!within(most.lo - top, limitValue('bend-jump'))) return 'jumps';
  if (lowest.kind === 'missing') return 'incomplete';
  const least = intervalShown(lowest);
  // A hold that was on while the cable moved holds nothing that lies beyond the readings at rest.
  if (!within(bottom - most.hi, noise) || !within(least.lo - top, noise)) return 'contradicts';
  if (!within(bottom - least.hi, noise)) return 'dips';
  return within(most.hi - bottom, noise) && within(top - least.lo, noise) ? 'steady' : 'unclear';
}

/** Each loop of one movement. */
export function judgeLoops(loops: Record<LoopId, Sweep>): Record<LoopId, SweepState> {
  return Object.fromEntries(loopIds.map((id) => [id, judgeSweep(loops[id])])) as Record<LoopId, SweepState>;
}

/** The loops that are in this state. */
export const loopsWith = (states: Record<LoopId, SweepState>, state: SweepState): LoopId[] =>
  loopIds.filter((id) => states[id] === state);
