import type { About } from '../about.ts';

export const bridge = {
  name: 'bridge',
  title: 'Bridge balance',
  question: 'Six resistance readings at the drive. Is the output stage sound, and which switch is suspect?',
} as const satisfies About;
