import type { About } from '../about.ts';

export const insulation = {
  name: 'insulation',
  title: 'Insulation go/no-go',
  question: 'U, V, W and PE with an insulation tester. After a trip, or in routine monitoring?',
} as const satisfies About;
