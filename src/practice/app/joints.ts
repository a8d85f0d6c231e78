import { phases } from '../../kernel/electrics/phases.ts';
import type { Joint } from '../case/action.ts';
import type { AxisState, Core } from '../simulator/axis-state.ts';
import type { AxisParameters } from '../simulator/parameters.ts';

const always: readonly Joint[] = [
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

/** What can be taken off on this axis. */
export function jointsOf({ idleCores, brakingOhms, link, neighbour, filterOhms }: AxisParameters): readonly Joint[] {
  const fitted: [Joint, boolean][] = [
    ['idle-cores', idleCores.length > 0],
    ['braking-resistor', brakingOhms !== undefined],
    ['dc-link', link !== undefined],
    ['neighbour-leads', neighbour !== undefined],
    ['neighbour-feedback', neighbour !== undefined],
    ['filter', filterOhms !== undefined],
  ];
  return [...always, ...fitted.filter(([, is]) => is).map(([joint]) => joint)];
}

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
    case 'idle-cores':
      return state.idleCores === 'connected';
    case 'braking-resistor':
      return state.brakingResistor;
    case 'dc-link':
      return state.dcLink;
    case 'neighbour-leads':
      return state.neighbourLeads;
    case 'neighbour-feedback':
      return state.neighbourFeedback;
    case 'filter':
      return state.filter;
    default:
      return state.driveEnd[joint.slice('lead-'.length) as Core];
  }
}
