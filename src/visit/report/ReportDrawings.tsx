import { BridgeSchematic } from '../../calculators/bridge/BridgeSchematic.tsx';
import { bridgePositions } from '../../calculators/bridge/positions.ts';
import type { BridgeAssessment } from '../../calculators/bridge/rule/assess.ts';
import { PartsStrip } from '../../calculators/isolation/PartsStrip.tsx';
import type { IsolationAssessment } from '../../calculators/isolation/rule/input.ts';
import { contradicts } from '../../calculators/isolation/stages-asked.ts';
import { badCores } from '../../calculators/isolation/suspect-cores.ts';
import type { Outcome } from '../../kernel/form/calculator-form.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { StepId } from '../steps/ids.ts';

/** Where the suspect transistor is, and which of cable and motor is bad; nothing if no reading says so. `ids`: the steps that count. */
export function ReportDrawings({ evaluated, ids }: { evaluated: EvaluatedVisit; ids: readonly StepId[] }) {
  const outcomeOf = <A,>(id: StepId) => {
    const outcome = ids.includes(id) ? evaluated.steps[id].outcome : undefined;
    return outcome?.state === 'judged'
      ? (outcome as Extract<Outcome, { state: 'judged' }> & { assessment: A })
      : undefined;
  };
  const bridge = outcomeOf<BridgeAssessment>('bridge');
  const isolation = outcomeOf<IsolationAssessment>('isolation');
  const positions = bridge && bridgePositions(bridge.read, bridge.assessment);
  const isSuspect = positions?.some(({ state }) => state === 'suspect') ?? false;
  const parts = isolation?.assessment.parts;
  const isOneBad = Object.values(parts ?? {}).some((status) => status === 'proven-bad' || status === 'suspect');
  if (!isSuspect && !isOneBad) return null;
  return (
    <div class="report-drawings">
      {isSuspect && positions && (
        <BridgeSchematic
          positions={positions}
          title="Output stage of the drive, as read"
          caption="Output stage of the drive. Each reading stands at the switch that it passes through."
        />
      )}
      {isOneBad && isolation && parts && (
        <PartsStrip
          parts={parts}
          badCores={badCores(isolation.assessment.findings)}
          misfit={contradicts(isolation.assessment)}
        />
      )}
    </div>
  );
}
