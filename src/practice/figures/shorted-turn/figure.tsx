import { limitValue } from '../../../kernel/limits.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { type Shorted, shortedWinding, spinning, turns } from './model.ts';
import { TurnsDrawing } from './TurnsDrawing.tsx';

const shorted = [0, 1, 2, 3, 5, 8, 12, 20, 40];
const frequencies = [100, 1000];
const good = limitValue('winding-unbalance-good');
const bad = limitValue('winding-unbalance-bad');
const millihenries = (henries: number) => `${(henries * 1000).toFixed(2)} mH`;

export const figure: SimulatedFigure<Shorted> = {
  id: 'shorted-turn',
  title: 'A winding with some of its turns in a closed ring, and what the meters show',
  caption:
    'Short one turn, then more. The resistances hardly differ, while the ring carries many times the current of a sound turn when the motor runs.',
  model: `resistances by the practice; ring and inductance as two coupled coils, of an invented motor of ${turns} turns a phase. The rotor’s own effect on the inductance, which can be larger, is left out.`,
  controls: [
    {
      id: 'turns',
      label: `Shorted turns of ${turns} in winding U`,
      stops: shorted.map(String),
      start: 1,
      as: 'slider',
    },
    {
      id: 'frequency',
      label: 'Frequency of the inductance meter',
      stops: frequencies.map((hertz) => `${hertz} Hz`),
      start: 1,
      as: 'choice',
    },
  ],
  compute: ([place = 0, frequency = 0]) => shortedWinding(shorted[place] ?? 0, frequencies[frequency] ?? 100),
  values: ({ ohms, unbalancePercent, henries, ring }) => [
    ['U–V', ohms['U–V'].text],
    ['V–W', ohms['V–W'].text],
    ['W–U', ohms['W–U'].text],
    ['Unbalance of the resistances', `${unbalancePercent.toFixed(1)} %`],
    ['Inductance U–V', millihenries(henries.bad)],
    ['Inductance V–W', millihenries(henries.sound)],
    [`Ring at ${spinning.perMinute} min⁻¹`, `${ring.amperes.toFixed(0)} A, ${ring.watts.toFixed(0)} W`],
  ],
  says: ({ turns: count, unbalancePercent }) => {
    if (count === 0) return 'No turn is shorted, and the three readings are alike.';
    if (unbalancePercent <= good)
      return `The resistances pass: they differ by no more than ${good} %. The ring stays hidden.`;
    if (unbalancePercent <= bad) return `Above ${good} % and not above ${bad} %: the resistances decide nothing.`;
    return `Above ${bad} %: now the resistances show it.`;
  },
  Drawing: TurnsDrawing,
  height: 330,
  rows: [0, 1, 3, 4, 6, 8].map((place) => [place, 1]),
};
