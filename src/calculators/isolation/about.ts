import type { About } from '../about.ts';

export const isolation = {
  name: 'isolation',
  title: 'Cable or motor',
  question: 'Three stages that separate the two. What is proven bad, what is proven good, what comes next?',
} as const satisfies About;
