import type { About } from '../about.ts';

export const coreResistanceAbout = {
  name: 'core-resistance',
  title: 'PE and cores by length',
  question: 'What PE or a core of this length and cross-section should read, and whether yours has too much.',
} as const satisfies About;
