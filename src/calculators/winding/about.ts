import type { About } from '../about.ts';

export const winding = {
  name: 'winding',
  title: 'Winding resistance',
  question:
    'Three readings between the motor terminals. Are the windings alike, is one open, and which one is suspect?',
} as const satisfies About;
