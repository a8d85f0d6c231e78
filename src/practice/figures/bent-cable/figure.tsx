import type { SimulatedFigure } from '../simulated-figure.ts';
import { CableDrawing } from './CableDrawing.tsx';
import { type Bent, bentCable, type CableFault } from './model.ts';

const faults: readonly [CableFault, string][] = [
  ['bent-open-U', 'core U breaks'],
  ['bent-leak-U', 'core U leaks to PE'],
];
const places = Array.from({ length: 11 }, (_, step) => step * 0.2);

export const figure: SimulatedFigure<Bent> = {
  id: 'bent-cable',
  title: 'A moving cable with one damaged place, measured with the bend at several places',
  caption:
    'Move the bend along the cable. The fault is there only while the bend stands at the damaged place, and at every other place the cable reads good.',
  model:
    'the cable of the practice, off at both ends, with one fault that is there only when bent; U, V and W are joined at the far end for the loops, and the rest is bonded for the insulation test.',
  controls: [
    { id: 'fault', label: 'When bent', stops: faults.map(([, name]) => name), start: 0, as: 'choice' },
    {
      id: 'bend',
      label: 'The bend is fixed at',
      stops: places.map((metres) => `${metres.toFixed(1)} m`),
      start: 6,
      as: 'slider',
    },
  ],
  compute: ([fault = 0, place = 0]) => bentCable(faults[fault]?.[0] ?? 'bent-open-U', places[place] ?? 0),
  values: ({ loops, insulation }) => [
    ['U–V', loops['U–V'].text],
    ['V–W', loops['V–W'].text],
    ['W–U', loops['W–U'].text],
    ['U to ground, rest bonded', insulation.text],
  ],
  says: ({ fault, overDamage }) => {
    if (!overDamage) return 'Here the cable reads good. That clears this place of the bend and no other.';
    return fault === 'bent-open-U'
      ? 'Both pairs with U are open. Read it again at the same place: twice proves the cable bad.'
      : 'The loops are good and the insulation is bad. Straight, gone; bent again, back: that proves the cable bad.';
  },
  Drawing: CableDrawing,
  height: 220,
  rows: [0, 1].flatMap((fault) => [0, 4, 6, 8].map((place) => [fault, place])),
};
