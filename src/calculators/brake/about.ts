import type { About } from '../about.ts';

export const brake = {
  name: 'brake',
  title: 'Holding brake',
  question: 'Coil against its plate, cores, voltage at the plug, release. Does the brake stay shut, or drag, and why?',
} as const satisfies About;
