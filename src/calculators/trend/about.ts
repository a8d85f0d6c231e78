import type { About } from '../about.ts';

export const trend = {
  name: 'trend',
  title: 'Trend over the years',
  question:
    'Readings over years with their temperatures. Is the insulation getting worse, and when does it meet the minimum?',
} as const satisfies About;
