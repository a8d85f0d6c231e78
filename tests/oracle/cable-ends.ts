import type { EndFilter, IdleCores } from '../../src/kernel/assessment/cable-ends.ts';
import type { Dice } from './dice.ts';

interface Ends {
  idleCores?: IdleCores;
  filter?: EndFilter;
}

/** Mostly as a go needs them; sometimes nothing is stated. */
export function idleAndFilter(dice: Dice): Ends {
  return {
    ...(dice.chance(0.97) && { idleCores: dice.pick(['to-pe', 'to-pe', 'none', 'none', 'to-pe', 'free'] as const) }),
    ...(dice.chance(0.3) && { filter: dice.pick(['none', 'none', 'not-stated', 'fitted'] as const) }),
  };
}

/** Whether a phase core that is shorted to a brake or sensor core would have shown. */
export const idleCoresShown = ({ idleCores }: Ends) => idleCores === 'to-pe' || idleCores === 'none';
