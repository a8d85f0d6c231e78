import type { About } from '../about.ts';

export const tripTrace = {
  name: 'trip-trace',
  title: 'Trace of the trip',
  question:
    'The recording of the moment as CSV. What do the currents, the speed and the bus speak for? It points, and proves no part.',
} as const satisfies About;
