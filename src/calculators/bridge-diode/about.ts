import type { About } from '../about.ts';

export const bridgeDiode = {
  name: 'bridge-diode',
  title: 'Bridge by diode test',
  question: 'Twelve readings of the diode test instead of six resistances, or beside them. Do the two say the same?',
} as const satisfies About;
