import { suspectPositions } from '../../calc/bridge.ts';
import type { BridgeDiodeAssessment } from '../../calc/bridge-diode.ts';
import { missing } from '../../calc/reading.ts';
import { partsOfPosition, switchPositions } from '../../calc/switch-position.ts';
import type { Position, PositionState } from '../bridge/positions.ts';
import type { ReadForm } from '../form/read-form.ts';

/** The six switch positions, each with its forward drop; suspect as the assessment says, sound only in a stage that passes. */
export function diodePositions({ readings }: ReadForm, assessment: BridgeDiodeAssessment | undefined): Position[] {
  const suspects = suspectPositions(assessment?.findings ?? []);
  return switchPositions.map((id): Position => {
    const { rail, phase } = partsOfPosition[id];
    const reading = readings[`${rail}Forward${phase}`] ?? missing;
    const measured = reading.kind !== 'missing' || (readings[`${rail}Reverse${phase}`] ?? missing).kind !== 'missing';
    const rest: PositionState = assessment?.verdict === 'go' ? 'sound' : 'unjudged';
    return { id, rail, phase, reading, state: suspects.includes(id) ? 'suspect' : measured ? rest : 'missing' };
  });
}
