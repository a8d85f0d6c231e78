import type { About } from '../about.ts';

export const bendTest = {
  name: 'bend-test',
  title: 'Cable while it bends',
  question: 'Whether a core opens or leaks while the cable is moved by hand, and what a quiet test leaves open.',
} as const satisfies About;
