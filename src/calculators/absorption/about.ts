import type { About } from '../about.ts';

export const absorption = {
  name: 'absorption',
  title: 'Polarization index',
  question: 'The ten-minute test, with a stopwatch: polarization index, absorption ratio, and when they mean nothing.',
} as const satisfies About;
