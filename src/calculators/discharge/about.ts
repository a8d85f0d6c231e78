import type { About } from '../about.ts';

export const discharge = {
  name: 'discharge',
  title: 'DC-bus discharge',
  question: 'How long the bus takes to the published limits, and what it stores. It never replaces the meter.',
} as const satisfies About;
