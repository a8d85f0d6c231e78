import type { About } from '../about.ts';

export const inputCircuit = {
  name: 'input-circuit',
  title: 'DC bus and input, dead',
  question:
    'Fuses, rectifier, DC bus and precharge of a drive that blows fuses or trips the breaker. Which is suspect?',
} as const satisfies About;
