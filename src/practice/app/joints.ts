import { phases } from '../../kernel/electrics/phases.ts';
import type { Joint } from '../case/action.ts';
import type { AxisState, Core } from '../simulator/axis-state.ts';

export const joints: readonly Joint[] = [
  'leads',
  'lead-U',
  'lead-V',
  'lead-W',
  'lead-PE',
  'lead-screen',
  'motor-plug',
  'feedback-drive',
  'feedback-device',
];

/** Whether it is connected now; the three leads together count as on while any of them is. */
export function isOn(state: AxisState, joint: Joint): boolean {
  switch (joint) {
    case 'leads':
      return phases.some((phase) => state.driveEnd[phase]);
    case 'motor-plug':
      return state.motorEnd.U;
    case 'feedback-drive':
      return state.feedbackAtDrive;
    case 'feedback-device':
      return state.feedbackAtDevice;
    default:
      return state.driveEnd[joint.slice('lead-'.length) as Core];
  }
}
