import type { Symptom } from '../../kernel/vocabulary.ts';
import type { AxisState } from './axis-state.ts';
import type { Circuit } from './fault-types.ts';
import type { FaultedAxis } from './faulted-axis.ts';
import { chance, type Random } from './random.ts';

/** How far a retry goes: power with the control off, enable at rest, or everything that the machine does. */
export type Reach = 'power' | 'enable' | 'all';

const reached: Record<Reach, readonly Symptom[]> = {
  power: ['control-off'],
  enable: ['control-off', 'on-enable'],
  all: ['control-off', 'on-enable', 'on-acceleration', 'position-or-cable', 'when-hot', 'now-and-then'],
};

/** Whether the drive trips in a retry that goes as far as `reach`, with what is connected now. */
export function tripsNow(axis: FaultedAxis, state: AxisState, reach: Reach, random: Random): boolean {
  return axis.trips.some(
    ({ circuit, moment, repeats }) =>
      connected(circuit, state) && reached[reach].includes(moment) && chance(random, repeats),
  );
}

function connected(circuit: Circuit, state: AxisState): boolean {
  const { driveEnd, motorEnd } = state;
  const atDrive = driveEnd.U && driveEnd.V && driveEnd.W;
  switch (circuit) {
    case 'drive':
      return true;
    case 'motor-cable':
      return atDrive;
    case 'motor':
      return atDrive && motorEnd.U && motorEnd.V && motorEnd.W;
    case 'feedback-cable':
      return state.feedbackAtDrive;
    case 'feedback-device':
      return state.feedbackAtDrive && state.feedbackAtDevice;
  }
}
