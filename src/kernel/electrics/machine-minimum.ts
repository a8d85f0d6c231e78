import { type LimitId, limitValue } from '../limits.ts';

/** Classes of IEEE 43: most servo motors are random-wound. */
export type MachineClass = 'random-wound' | 'form-wound' | 'pre-1970';

export const limitOfClass: Record<MachineClass, LimitId> = {
  'random-wound': 'ieee43-minimum-random-wound',
  'form-wound': 'ieee43-minimum-form-wound',
  'pre-1970': 'ieee43-minimum-pre-1970-base',
};

/**
 * Minimum insulation resistance in Ω at 40 °C after 1 min; old windings need 1 MΩ more for each kilovolt of rated
 * voltage.
 */
export function machineMinimum(machineClass: MachineClass, ratedVolts: number): number {
  const base = limitValue(limitOfClass[machineClass]);
  return machineClass === 'pre-1970' ? base * (1 + ratedVolts / 1000) : base;
}
