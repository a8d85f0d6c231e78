import { chance, type Random } from '../../kernel/random.ts';
import type { Symptom } from '../../kernel/vocabulary.ts';
import type { AxisState } from './axis-state.ts';
import type { Circuit } from './fault-types.ts';
import type { FaultedAxis } from './faulted-axis.ts';

/** How far a try goes: power with the control off, enable at rest, or everything that the machine does. */
export type Reach = 'power' | 'enable' | 'all';

/** How far the try had come when the drive tripped. */
export type Stage = 'at-power' | 'at-enable' | 'moving';

/** What stopped the drive: the message of the first trip, or another one. */
export interface Trip {
  stage: Stage;
  message: 'same' | 'other';
}

const stageOf: Record<Symptom, Stage> = {
  'control-off': 'at-power',
  'on-enable': 'at-enable',
  'on-acceleration': 'moving',
  'on-braking': 'moving',
  'position-or-cable': 'moving',
  'when-hot': 'moving',
  'now-and-then': 'moving',
};

const reached: Record<Reach, readonly Stage[]> = {
  power: ['at-power'],
  enable: ['at-power', 'at-enable'],
  all: ['at-power', 'at-enable', 'moving'],
};

/**
 * The trip of a try that goes as far as `reach`, with what is connected now; undefined if the drive runs. An overcurrent
 * comes before any other message of the same stage: it takes microseconds.
 */
export function tripOf(axis: FaultedAxis, state: AxisState, reach: Reach, random: Random): Trip | undefined {
  for (const stage of reached[reach]) {
    const trips = axis.trips.some(
      ({ circuit, moment, every }) => stageOf[moment] === stage && isConnected(circuit, state) && chance(random, every),
    );
    if (trips) return { stage, message: 'same' };
    if (otherMessage(axis, state, stage)) return { stage, message: 'other' };
  }
  return undefined;
}

/** What a drive that misses its feedback or its motor reports, if it watches for that. */
function otherMessage({ otherMessages }: FaultedAxis, state: AxisState, stage: Stage): boolean {
  if (stage === 'at-power') return otherMessages.withoutFeedback && !isConnected('feedback-device', state);
  return stage === 'at-enable' && otherMessages.withoutMotor && !isConnected('motor', state);
}

function isConnected(circuit: Circuit, state: AxisState): boolean {
  const { driveEnd, motorEnd, feedbackAtDrive, feedbackAtDevice } = state;
  const atDrive = driveEnd.U && driveEnd.V && driveEnd.W;
  const motor = atDrive && motorEnd.U && motorEnd.V && motorEnd.W;
  switch (circuit) {
    case 'drive':
    case 'supply':
      return true;
    case 'motor-cable':
      return atDrive;
    case 'motor':
      return motor;
    case 'position':
      return motor && feedbackAtDrive && feedbackAtDevice;
    case 'feedback-cable':
      return feedbackAtDrive;
    case 'feedback-device':
      return feedbackAtDrive && feedbackAtDevice;
    case 'idle-cores':
      return state.idleCores === 'connected';
    case 'braking-resistor':
      return state.brakingResistor;
    case 'neighbour-leads':
      return state.neighbourLeads;
    case 'neighbour-feedback':
      return state.neighbourFeedback;
  }
}
