import type { About } from '../about.ts';

export const testVoltage = {
  name: 'test-voltage',
  title: 'Test voltage',
  question: 'Which voltage an insulation test is made with, and what comes off the conductors first.',
} as const satisfies About;
