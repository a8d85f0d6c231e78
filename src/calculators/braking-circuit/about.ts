import type { About } from '../about.ts';

export const brakingCircuit = {
  name: 'braking-circuit',
  title: 'Braking circuit, dead',
  question: 'Resistor against its plate and its housing, chopper by diode test, thermal switch. Which one is suspect?',
} as const satisfies About;
