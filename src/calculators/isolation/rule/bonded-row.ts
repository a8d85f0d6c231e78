import { phases } from '../../../kernel/electrics/phases.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { IsolationInput } from './input.ts';
import { cableJudge, floorOf } from './parts.ts';
import type { IsolationState } from './verdict.ts';

/**
 * The cores that fail with the other cores bonded to PE, and whether the joined reading can't show that: a leak between two phases,
 * which the windings join anyway, or from one phase to an idle core or a neighbour that only this row grounds. A single
 * core that fails against ground with free ends too must show joined as well, so it is no such leak.
 */
export function leakInBondedRow(
  input: IsolationInput,
  instrument: Instrument,
): Pick<IsolationState, 'bondedBad' | 'leakInBondedRow'> {
  const { cable, bonded } = input;
  if (bonded === undefined) return { bondedBad: [], leakInBondedRow: false };
  const judge = cableJudge(floorOf(input), instrument);
  const bondedBad = phases.filter((phase) => judge(bonded[phase]) === 'bad');
  const toGround = bondedBad.some((phase) => cable !== undefined && judge(cable[phase]) === 'bad');
  return { bondedBad, leakInBondedRow: bondedBad.length > 1 || (bondedBad.length === 1 && !toGround) };
}
