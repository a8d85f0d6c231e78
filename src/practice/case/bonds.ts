import type { Phase } from '../../kernel/electrics/phases.ts';
import { cores } from '../simulator/axis-state.ts';

/** Wires from ground to every conductor at the drive end but one: what makes a bonded row. */
export function bondedExcept(phase: Phase): [string, string][] {
  return cores.filter((core) => core !== phase).map((core) => [`cable.drive.${core}`, 'ground']);
}
