import type { About } from '../about.ts';

export const cableLength = {
  name: 'cable-length',
  title: 'Cable insulation by length',
  question: 'What a sound cable of this length reads, so that a long run is not condemned by a limit for a short one.',
} as const satisfies About;
