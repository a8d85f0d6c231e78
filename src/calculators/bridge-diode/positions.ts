import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import type { Position, PositionState } from '../bridge/positions.ts';
import { suspectPositions } from '../bridge/rule/suspect-positions.ts';
import { partsOfPosition, switchPositions } from '../bridge/rule/switch-position.ts';
import type { BridgeDiodeAssessment } from './rule/assess.ts';

/**
 * The six switch positions, each with its forward drop: suspect if the assessment names it, sound only if the whole
 * stage passes.
 */
export function positionStates({ readings }: ReadForm, assessment: BridgeDiodeAssessment | undefined): Position[] {
  const suspects = suspectPositions(assessment?.findings ?? []);
  return switchPositions.map((id): Position => {
    const { rail, phase } = partsOfPosition[id];
    const reading = readings[`${rail}Forward${phase}`] ?? missing;
    const measured = reading.kind !== 'missing' || (readings[`${rail}Reverse${phase}`] ?? missing).kind !== 'missing';
    const rest: PositionState = assessment?.verdict === 'go' ? 'sound' : 'unjudged';
    return { id, rail, phase, reading, state: suspects.includes(id) ? 'suspect' : measured ? rest : 'missing' };
  });
}
