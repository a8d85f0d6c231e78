import { type Phase, phases } from '../../kernel/electrics/phases.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { BridgeAssessment } from './rule/assess.ts';
import { suspectPositions } from './rule/suspect-positions.ts';
import { type Rail, rails, type SwitchPosition } from './rule/switch-position.ts';

/** `unjudged`: measured, but nothing can be said about it yet. */
export type PositionState = 'sound' | 'suspect' | 'unjudged' | 'missing';

export interface Position {
  id: SwitchPosition;
  rail: Rail;
  phase: Phase;
  reading: Reading;
  state: PositionState;
}

/** The six switch positions as assessed; without an assessment, all are unjudged. */
export function bridgePositions({ readings }: ReadForm, assessment: BridgeAssessment | undefined): Position[] {
  const findings = assessment?.findings ?? [];
  const suspects = suspectPositions(findings);
  return rails.flatMap((rail) => {
    const measured = phases.filter((phase) => (readings[rail + phase] ?? missing).kind !== 'missing');
    const own = findings.filter((finding) => 'rail' in finding && finding.rail === rail);
    const failed = own.some(({ severity }) => severity === 'fail');
    const open = own.some(({ severity }) => severity === 'undecided');
    const clear = measured.filter((phase) => !suspects.includes(`${rail}${phase}`));
    // Beside a bad one, two that agree are sound; a single one has nothing to compare with.
    const soundRest = failed ? clear.length > 1 && !open : own.some(({ severity }) => severity === 'pass');
    return phases.map((phase): Position => {
      const id: SwitchPosition = `${rail}${phase}`;
      const reading = readings[id] ?? missing;
      const state = stateOf(reading, suspects.includes(id), soundRest);
      return { id, rail, phase, reading, state };
    });
  });
}

function stateOf(reading: Reading, suspect: boolean, soundRest: boolean): PositionState {
  if (reading.kind === 'missing') return 'missing';
  if (suspect) return 'suspect';
  return soundRest ? 'sound' : 'unjudged';
}
