import { phases } from '../../kernel/electrics/phases.ts';
import type { StepId } from '../../visit/steps/ids.ts';
import type { AxisState } from '../simulator/axis-state.ts';
import type { Action } from './action.ts';

/** Hook-ups that show nothing of what they seem to measure. */
export type VoidPurpose = 'through-the-drive' | 'pe-still-on' | 'multimeter-as-tester' | 'tells-nothing';

/** What an act is for: a step of the guide, the bus, or nothing. */
export type Purpose = StepId | 'bus' | VoidPurpose;

export const voidPurposes: readonly string[] = [
  'through-the-drive',
  'pe-still-on',
  'multimeter-as-tester',
  'tells-nothing',
] satisfies VoidPurpose[];

/** `state`: before the act. Undefined for an act that only prepares. */
export function purposeOf(state: AxisState, action: Action): Purpose | undefined {
  switch (action.act) {
    case 'measure':
      return ofMeasurement(state, action);
    case 'look':
      return 'inspect';
    case 'mechanics':
      return 'mechanics';
    case 'support':
      return 'support-axis';
    case 'switch-on':
    case 'reset':
    case 'enable':
    case 'run':
      return ofPower(state, action.act);
    default:
      return undefined;
  }
}

function ofPower(state: AxisState, act: 'switch-on' | 'reset' | 'enable' | 'run'): Purpose | undefined {
  if (!state.feedbackAtDrive) return 'retry-feedback-off';
  if (!state.feedbackAtDevice) return 'retry-device-end';
  if (act === 'switch-on' || act === 'reset') return state.driveEnd.U ? 'retry-feedback-on' : undefined;
  if (phases.every((phase) => !state.driveEnd[phase])) return 'retry-leads-off';
  return 'retry-all';
}

type Kind = 'rail' | 'phase' | 'earth' | 'drive-phase';

function kindOf(node: string): Kind {
  if (node === 'DC+' || node === 'DC-') return 'rail';
  if (node.startsWith('drive.')) return 'drive-phase';
  return phases.some((phase) => node.endsWith(`.${phase}`)) ? 'phase' : 'earth';
}

function ofMeasurement(state: AxisState, { mode, red, black }: Extract<Action, { act: 'measure' }>): Purpose {
  const pair = [kindOf(red), kindOf(black)].sort().join();
  const are = (one: Kind, other: Kind) => pair === [one, other].sort().join();
  const throughDrive = phases.some((phase) => state.driveEnd[phase]);
  if (mode === 'volts') return pair.includes('rail') ? 'bus' : 'tells-nothing';
  const place = `${red} ${black}`;
  if (place.includes('braking.')) return 'braking';
  if (mode !== 'insulation' && /\.(brake|sensor)[+-]/.test(place))
    return throughDrive ? 'through-the-drive' : 'idle-cores';
  if (are('rail', 'drive-phase') || are('rail', 'phase')) {
    if (throughDrive) return 'through-the-drive';
    return mode !== 'insulation' && are('rail', 'drive-phase') ? 'bridge' : 'tells-nothing';
  }
  if (are('phase', 'earth')) return toEarth(state, mode, place, throughDrive);
  if (are('phase', 'phase')) {
    if (throughDrive && !separated(state, place)) return 'through-the-drive';
    if (place.includes('cable.') && !state.motorEnd.U) return 'isolation';
    // For a tester the windings are one conductor.
    if (mode === 'insulation') return 'tells-nothing';
    return place.includes('cable.') ? 'winding' : 'winding-motor';
  }
  if (are('earth', 'earth') && place.includes('PE')) {
    if (!place.includes('motor.PE') && state.driveEnd.PE) return 'pe-still-on';
    return separated(state, place) ? 'isolation' : 'insulation';
  }
  return 'tells-nothing';
}

function toEarth(state: AxisState, mode: string, place: string, throughDrive: boolean): Purpose {
  const apart = separated(state, place);
  if (throughDrive && !apart) return 'through-the-drive';
  if (mode !== 'insulation') return 'multimeter-as-tester';
  return apart ? 'isolation' : 'insulation';
}

/** Whether one part is measured alone: the cable off at both ends, or the motor off its cable. */
function separated({ motorEnd, driveEnd }: AxisState, place: string): boolean {
  if (motorEnd.U) return false;
  return place.includes('cable.') ? phases.every((phase) => !driveEnd[phase]) : place.includes('motor.');
}
