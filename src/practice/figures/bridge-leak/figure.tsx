import type { Rail } from '../../../calculators/bridge/rule/switch-position.ts';
import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import { verdictWords } from '../../../kernel/form/verdict-words.ts';
import { inOhms } from '../../../kernel/reading/format-reading.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { BridgeDrawing } from './BridgeDrawing.tsx';
import { type Leak, type SixReadings, sixReadings } from './model.ts';

const transistors: readonly [Rail, Phase][] = (['plus', 'minus'] as const).flatMap((rail) =>
  phases.map((phase): [Rail, Phase] => [rail, phase]),
);
const leaks = [Number.POSITIVE_INFINITY, 3e6, 1e6, 300e3, 100e3, 30e3, 10e3, 3e3, 1e3, 100, 1];
const names: Record<Rail, string> = { plus: 'DC+', minus: 'DC−' };
const places: Record<Rail, string> = { plus: 'upper', minus: 'lower' };

function leakAt(transistor: number, leak: number): Leak {
  const [rail, phase] = transistors[transistor] ?? ['plus', 'V'];
  return { rail, phase, ohms: leaks[leak] ?? Number.POSITIVE_INFINITY };
}

export const figure: SimulatedFigure<SixReadings> = {
  id: 'bridge-leak',
  title: 'The six readings of an output stage with one leaky transistor',
  caption:
    'Make one transistor leaky, and watch how its reading leaves the other two of its rail. The other rail may move as well.',
  model:
    'the output stage of the practice, with resistors, diodes and a leak, read with a meter without error after the figures stand still.',
  controls: [
    {
      id: 'transistor',
      label: 'Transistor',
      stops: transistors.map(([rail, phase]) => `${places[rail]} ${phase}`),
      start: 1,
      as: 'choice',
    },
    {
      id: 'leak',
      label: 'Its leak',
      stops: leaks.map((ohms) => (Number.isFinite(ohms) ? inOhms(ohms) : 'none, it is sound')),
      start: 4,
      as: 'slider',
    },
  ],
  compute: ([transistor = 1, leak = 0]) => sixReadings(leakAt(transistor, leak)),
  values: ({ readings }) =>
    transistors.map(([rail, phase]) => [`${names[rail]} to ${phase}`, readings[rail][phase].text] as const),
  says: ({ leak, spreadPercent, verdict }) => {
    const spread = `The three readings of ${names[leak.rail]} differ by ${percent(spreadPercent)}.`;
    const hides = verdict === 'go' && Number.isFinite(leak.ohms) ? ' So small a leak hides within the tolerance.' : '';
    return `${spread} From these six alone the calculator says: ${verdictWords[verdict].toLowerCase()}.${hides}`;
  },
  Drawing: BridgeDrawing,
  height: 356,
  rows: [0, 2, 4, 5, 7, 10].map((leak) => [1, leak]),
};

function percent(value: number): string {
  if (!Number.isFinite(value) || value > 1000) return 'more than 1000 %';
  return value < 10 ? `${value.toFixed(1)} %` : `${value.toFixed(0)} %`;
}
