import { phases } from '../../../kernel/electrics/phases.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { inOhms } from '../../../kernel/reading/format-reading.ts';
import { figureOf } from '../../../kernel/reading/reading.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { EndsDrawing, type EndsShown } from './EndsDrawing.tsx';
import { coreReadings, type Ends } from './model.ts';

const ends: readonly [Ends, string][] = [
  ['free', 'free'],
  ['bonded', 'bonded to ground'],
];
const leaks = [Number.POSITIVE_INFINITY, 1e9, 300e6, 100e6, 30e6, 10e6, 1e6, 100e3, 1e3];
const limit = limitValue('after-trip-point');

export const figure: SimulatedFigure<EndsShown> = {
  id: 'free-ends',
  title: 'A leak from core U to core V, tested with the other cores free and bonded',
  caption:
    'Keep the leak, and bond the other cores. Free, the tester sees nothing of it, however bad it is. Bonded, both leaky cores show it.',
  model:
    'the cable of the practice, off at both ends, with one leak from core to core; a tester of 500 V without error, read after one minute.',
  controls: [
    {
      id: 'ends',
      label: 'The other cores, PE and screen',
      stops: ends.map(([, name]) => name),
      start: 0,
      as: 'choice',
    },
    {
      id: 'leak',
      label: 'Leak from U to V',
      stops: leaks.map((ohms) => (Number.isFinite(ohms) ? inOhms(ohms) : 'none')),
      start: 5,
      as: 'slider',
    },
  ],
  compute: ([kind = 0, leak = 0]) => {
    const chosen = ends[kind]?.[0] ?? 'free';
    const ohms = leaks[leak] ?? Number.POSITIVE_INFINITY;
    return { ends: chosen, leakOhms: ohms, readings: coreReadings(chosen, ohms) };
  },
  values: ({ readings }) => phases.map((phase) => [`${phase} to ground`, readings[phase].text] as const),
  says: ({ ends: chosen, leakOhms, readings }) => {
    const low = phases.filter((phase) => (figureOf(readings[phase].reading) ?? 0) < limit);
    if (low.length > 0)
      return `${low.join(' and ')} read below the after-trip limit of ${inOhms(limit)}: the leak shows.`;
    if (!Number.isFinite(leakOhms)) return 'There is no leak, and all three pass.';
    if (chosen === 'free') return 'All three pass although the cable leaks: the current finds no way back.';
    return `All three are at or above the after-trip limit of ${inOhms(limit)}.`;
  },
  Drawing: EndsDrawing,
  height: 300,
  rows: [0, 1].flatMap((kind) => [0, 3, 5, 7].map((leak) => [kind, leak])),
};
